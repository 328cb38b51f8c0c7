//! `inset`: a dot for the right eye inside a frame for the left eye, with corner ticks for both.

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{Depth, Eyes, Role, Scene, Shape, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::parts::{self, Part, Point};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of an `inset` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Inset {
    /// The side of the frame.
    pub size: Ramp<Mm>,
    /// How deep everything stands.
    pub depth: Ramp<Depth>,
    /// Where it is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "inset",
    gated: false,
    strand: Strand::Check,
    doc: "A brief check with unlike pictures laid together: an open frame for the left eye, a solid dot for the right \
          eye, corner ticks for both.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::required(
            "size",
            Takes::Ramp(&Takes::Length(mm(7.0, 70.0))),
            "The side of the frame. The dot is a third of it. At 40 cm 7 mm are a degree.",
        ),
        parts::DEPTH,
    ],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "inset"
title = "The lamp in the window"
size = { values = ["70 mm", "45 mm", "28 mm", "14 mm"] }
"#;

/// From the middle to the inner and the outer end of a corner tick, along each axis, against the side of the frame.
const TICK: (f64, f64) = (0.58, 0.72);
/// The dot against the frame.
const DOT: f64 = 1.0 / 3.0;

impl Draws for Inset {
    fn levels(&self) -> Option<u32> {
        self.size.levels().or(self.depth.levels())
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let size = exercise.get(reader, "size");
    let depth = parts::ramp_or(reader, exercise, "depth", Depth::Page);
    Some(Body::Inset(Inset { size: size?, depth: depth?, place: exercise.place() }))
}

impl Inset {
    fn scene(&self, level: u32) -> Scene {
        let (size, depth) = (self.size.at(level).0, self.depth.at(level));
        let weight = (size / 18.0).max(0.6);
        let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
        let on = |(x, y): Point, share: f64| (x * size * share, y * size * share);
        let ticks = corners.map(|corner| (on(corner, TICK.0), on(corner, TICK.1))).to_vec();
        let part = |id, eyes| Part::target(id, eyes, &depth, self.place);
        let features = vec![
            part("frame", Eyes::Left).shape(Shape::Square, (0.0, 0.0), size, weight),
            part("dot", Eyes::Right).shape(Shape::Disc, (0.0, 0.0), size * DOT, weight),
            part("corner-ticks", Eyes::Both).role(Role::Reference).strokes(ticks, weight),
        ];
        Scene { features }
    }
}

fn words(tongue: &Tongue) -> Words {
    Words {
        goal: tongue.say("inset-goal"),
        setup: String::new(),
        steps: vec![tongue.say("inset-corners"), tongue.say("inset-middle"), tongue.say("kinds-watch-ten")],
        see: tongue.say("inset-see"),
        one_part: words::say_rows(
            &[
                ("inset-only-frame", "kinds-right-out-look"),
                ("inset-only-dot", "kinds-left-out-look"),
                ("inset-only-drift", "inset-drift"),
            ],
            tongue,
        ),
    }
}
