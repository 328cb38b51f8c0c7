//! `who`: who sees what. Rings for the left eye, crosses for the right eye and squares for both, in three sizes.

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{Depth, Eyes, Feature, Scene, Shape, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::parts::{Part, Point};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `who` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Who {
    /// The side of the largest square.
    pub size: Ramp<Mm>,
    /// Where it is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "who",
    gated: false,
    strand: Strand::Check,
    doc: "A brief check of who sees what: rings for the left eye, crosses for the right eye, squares for both, in three \
          sizes on the page.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[Field::required(
        "size",
        Takes::Ramp(&Takes::Length(mm(8.0, 32.0))),
        "The side of the largest square and the width of the largest ring and cross. Those of the middle size are \
             half as large, the smallest a quarter. At 40 cm 7 mm are a degree.",
    )],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "who"
title = "Who sees what"
size = { values = ["32 mm", "24 mm", "16 mm"] }
"#;

/// The groups: their size against the largest, and the height of their foot below the middle of the field, mm.
const GROUPS: [(f64, f64); 3] = [(1.0, 34.0), (0.5, 34.0), (0.25, 34.0)];
/// Width of a group against its size.
const WIDTH: f64 = 2.5;
/// Half the width of the field that the groups share, mm.
const HALF_FIELD: f64 = 84.0;
/// The most space between two groups, mm.
const FARTHEST: f64 = 24.0;

impl Draws for Who {
    fn levels(&self) -> Option<u32> {
        self.size.levels()
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    Some(Body::Who(Who { size: exercise.get(reader, "size")?, place: exercise.place() }))
}

impl Who {
    fn scene(&self, level: u32) -> Scene {
        let largest = self.size.at(level).0;
        let wide: f64 = GROUPS.iter().map(|(share, _)| share * largest * WIDTH).sum();
        let gap = ((2.0 * HALF_FIELD - wide) / 2.0).min(FARTHEST);
        let mut left = -(wide + 2.0 * gap) / 2.0;
        let mut features = Vec::new();
        for ((share, foot), number) in GROUPS.into_iter().zip(1..) {
            let size = share * largest;
            features.extend(self.group(number, (left + size * WIDTH / 2.0, foot), size));
            left += size * WIDTH + gap;
        }
        Scene { features }
    }

    /// A square with a ring at its upper left and a cross at its upper right.
    fn group(&self, number: u32, (x, foot): Point, size: f64) -> [Feature; 3] {
        let weight = (size / 9.0).max(0.6);
        let part = |name: &str, eyes, shape, dx: f64, dy: f64| {
            Part::target(format!("{name}-{number}"), eyes, &Depth::Page, self.place).shape(
                shape,
                (x + dx * size, foot - dy * size),
                size,
                weight,
            )
        };
        [
            part("square", Eyes::Both, Shape::Square, 0.0, 0.5),
            part("ring", Eyes::Left, Shape::Ring, -0.75, 1.7),
            part("cross", Eyes::Right, Shape::Cross, 0.75, 1.7),
        ]
    }
}

fn words(tongue: &Tongue) -> Words {
    Words {
        goal: tongue.say("who-goal"),
        setup: String::new(),
        steps: vec![tongue.say("who-largest"), tongue.say("who-cover"), tongue.say("who-note")],
        see: tongue.say("who-see"),
        one_part: words::say_rows(
            &[
                ("who-only-rings", "kinds-right-out-look"),
                ("who-only-crosses", "kinds-left-out-look"),
                ("who-only-turns", "who-turns"),
            ],
            tongue,
        ),
    }
}
