//! `nonius`: a line in two halves, one for each eye, on either side of a scale for both. It shows whether the halves meet.
//!
//! It only shows: no word of it asks a reader to set an offset by what is read.

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{Companions, Depth, Eyes, Feature, Form, Role, Scale, Scaling, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::parts::{Part, Point, place};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `nonius` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Nonius {
    /// Which way the line runs.
    pub form: NoniusForm,
    /// From tick to tick of the scale.
    pub step: Ramp<Mm>,
    /// How many ticks stand on each side of the zero.
    pub ticks: u32,
    /// Where it is written.
    pub place: Place,
}

/// Which way the line of a [`Nonius`] runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoniusForm {
    /// From top to bottom: the upper half for the left eye. Shows whether the halves meet sideways.
    Upright,
    /// From left to right: the left half for the left eye. Shows whether they meet in height.
    Level,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "nonius",
    gated: false,
    strand: Strand::Check,
    doc: "A brief check with a line in two halves: one for the left eye, one for the right, and a scale for both between \
          them, in prism dioptres and millimetres. It shows whether the halves meet; what to do about it is for a \
          professional.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::default(
            "form",
            Takes::Choice(&["upright", "level"]),
            r#""upright""#,
            "Which way the line runs. `upright`: its upper half is for the left eye, and the scale shows how far \
                 apart the halves stand sideways. `level`: its left half is for the left eye, and the scale shows it in \
                 height.",
        ),
        Field::required(
            "step",
            Takes::Ramp(&Takes::Length(mm(1.0, 10.0))),
            "From tick to tick of the scale. At 40 cm 4 mm are a prism dioptre.",
        ),
        Field::default(
            "ticks",
            Takes::Count { min: 4, max: 40 },
            "10",
            "How many ticks stand on each side of the zero.",
        ),
    ],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "nonius"
title = "The split mast"
form = "upright"
step = { values = ["4 mm", "2 mm"] }
"#;

/// From the scale to the near and the far end of a half, mm: beyond the numbers, and nearly to the edge of the field.
const HALF: Point = (9.5, 52.0);
/// The same along a level line: the numbers are wider than high.
const LEVEL_HALF: Point = (15.0, 78.0);
/// Width of the line, mm.
const WEIGHT: f64 = 1.6;

impl Draws for Nonius {
    fn levels(&self) -> Option<u32> {
        self.step.levels()
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let form = exercise.one_of(reader, "form", &[NoniusForm::Upright, NoniusForm::Level]);
    let (step, ticks) = (exercise.get(reader, "step"), exercise.get(reader, "ticks"));
    Some(Body::Nonius(Nonius { form: form?, step: step?, ticks: ticks?, place: exercise.place() }))
}

impl Nonius {
    fn scene(&self, level: u32) -> Scene {
        let half = |name: &str, eyes, sign: f64| {
            let along = |distance: f64| match self.form {
                NoniusForm::Upright => (0.0, sign * distance),
                NoniusForm::Level => (sign * distance, 0.0),
            };
            let (near, far) = if self.form == NoniusForm::Level { LEVEL_HALF } else { HALF };
            Part::target(name, eyes, &Depth::Page, self.place).strokes(vec![(along(far), along(near))], WEIGHT)
        };
        let [first, second] = self.halves();
        let features =
            vec![half(first, Eyes::Left, -1.0), half(second, Eyes::Right, 1.0), self.scale(self.step.at(level))];
        Scene { features }
    }

    /// The names of the left eye's and the right eye's half.
    fn halves(&self) -> [&'static str; 2] {
        match self.form {
            NoniusForm::Upright => ["upper-half", "lower-half"],
            NoniusForm::Level => ["left-half", "right-half"],
        }
    }

    /// It lies across the line.
    fn scale(&self, step: Mm) -> Feature {
        let scale =
            Scale { zero: place((0.0, 0.0)), is_level: self.form == NoniusForm::Upright, step, ticks: self.ticks };
        Feature {
            id: "scale".to_owned(),
            role: Role::Reference,
            eyes: Eyes::Both,
            form: Form::Scale(scale),
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }

    fn words(&self, tongue: &Tongue) -> Words {
        let form = [("form", if self.form == NoniusForm::Upright { "upright" } else { "level" }.into())];
        Words {
            goal: tongue.tell("nonius-goal", &form),
            setup: String::new(),
            steps: vec![
                tongue.say("nonius-zero"),
                tongue.tell("nonius-ticks", &form),
                tongue.say("nonius-note"),
                tongue.say("nonius-tell"),
            ],
            see: tongue.tell("nonius-see", &form),
            one_part: vec![
                (tongue.tell("nonius-only-first", &form), tongue.say("kinds-right-out-look")),
                (tongue.tell("nonius-only-second", &form), tongue.say("kinds-left-out-look")),
                (tongue.say("nonius-only-apart"), tongue.say("nonius-apart")),
            ],
        }
    }
}
