//! `words`: a word or a few short lines at one depth, read by both eyes.

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{Depth, Eyes, Role, Scene, Side, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::lines;
use crate::exercise::parts::{self, Part};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `words` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Lettering {
    /// The lines, at least one.
    pub lines: Vec<String>,
    /// The height of a capital letter.
    pub size: Ramp<Mm>,
    /// How deep they stand.
    pub depth: Ramp<Depth>,
    /// Whether watch marks ride with them.
    pub marks: bool,
    /// Whether a lock frame rides with them.
    pub lock: bool,
    /// Where they are written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "words",
    gated: false,
    strand: Strand::Hold,
    doc: "A word, or a few short lines, stand at one depth and are read with both eyes.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::required("lines", Takes::List { of: &Takes::Text(40), min: 1, max: 8 }, "The lines, from the top.")
            .said(),
        lines::SIZE,
        lines::LARGE,
        Field::required("depth", Takes::Ramp(&Takes::Depth), "How deep they stand."),
        Field::default("marks", Takes::Flag, "true", "Whether watch marks ride with them, one for each eye."),
        Field::default("lock", Takes::Flag, "true", "Whether a lock frame rides with them."),
    ],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "words"
title = "The sign at the slipway"
lines = ["Slow boats", "keep to the", "left"]
size = "6.6 mm"
depth = { from = "1 pd toward", to = "4 pd toward", levels = 4 }
"#;

/// Clear space between the text with its marks and the lock frame, mm.
const FRAME_GAP: f64 = 5.0;
/// The most room for a line, mm: the art field less its frame and what depth takes.
const ROOM: f64 = 150.0;

impl Draws for Lettering {
    fn levels(&self) -> Option<u32> {
        self.size.levels().or(self.depth.levels())
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.level, rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let lines: Option<Vec<Placed<String>>> = exercise.get(reader, "lines");
    let size = lines::read_size(reader, exercise);
    let depth = exercise.get(reader, "depth");
    let (marks, lock) = (exercise.get(reader, "marks"), exercise.get(reader, "lock"));
    let (lines, size) = (lines?, size?);
    let fine = lines::can_be_set(reader, &lines) && lines::fit(reader, &lines, &size, ROOM);
    let lines = lines.into_iter().map(|line| line.value).collect();
    let lettering = Lettering { lines, size, depth: depth?, marks: marks?, lock: lock?, place: exercise.place() };
    fine.then_some(Body::Lettering(lettering))
}

impl Lettering {
    fn scene(&self, level: u32) -> Scene {
        let (size, depth) = (self.size.at(level).0, self.depth.at(level));
        let width = self.lines.iter().map(|line| lines::line_width(line, size)).fold(0.0, f64::max);
        // The lower wedge is higher than the bar: the whole block stands in the middle of the field.
        let (above, below) = parts::WATCH_ROOM;
        let middle = if self.marks { (above - below) / 2.0 } else { 0.0 };
        let count = self.lines.len();
        let mut features = Vec::new();
        for ((line, baseline), number) in self.lines.iter().zip(lines::baselines(count, size, middle)).zip(1..) {
            let part = Part::target(format!("text-line-{number}"), Eyes::Both, &depth, self.place);
            features.push(lines::line(part, line, (-width / 2.0, baseline), size));
        }
        let half = (size * lines::PITCH * (count as f64 - 1.0) + size) / 2.0;
        // Some letters reach below the baseline.
        let (top, bottom) = (middle - half, middle + half + size * 0.3);
        if self.marks {
            features.extend(parts::watch_marks((0.0, top), &depth, bottom, &depth, self.place));
        }
        if self.lock {
            let (above, below) = if self.marks { (above, below) } else { (0.0, 0.0) };
            let (top, bottom) = (top - above - FRAME_GAP, bottom + below + FRAME_GAP);
            let middle = (0.0, (top + bottom) / 2.0);
            let (strokes, weight) = parts::lock_frame(middle, width / 2.0 + FRAME_GAP, (bottom - top) / 2.0);
            let part = Part::target("frame", Eyes::Both, &depth, self.place).role(Role::Lock);
            features.push(part.strokes(strokes, weight));
        }
        Scene { features }
    }

    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let lines = [("lines", self.lines.len().into())];
        let see = match self.depth.at(level).side() {
            Some(Side::Toward) => tongue.tell("words-see-toward", &lines),
            Some(Side::Away) => tongue.tell("words-see-away", &lines),
            None => tongue.tell("words-see-page", &lines),
        };
        Words {
            goal: tongue.tell("words-goal", &lines),
            setup: String::new(),
            steps: vec![
                tongue.say("words-middle"),
                words::check_both(self.marks, tongue),
                tongue.say("words-aloud"),
                tongue.say("words-rest"),
            ],
            see: words::with_marks(see, self.marks, tongue),
            one_part: words::one_part(self.marks, tongue),
        }
    }
}
