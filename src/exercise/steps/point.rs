//! `point`: one floating target and a ruler in true size. The reader holds a pencil where the target seems to stand,
//! then looks at the ruler for the place where it should be.

use crate::diagnostics::{Diagnostic, codes};
use crate::language::Tongue;
use crate::scene::{Scene, Side, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use crate::exercise::pace;
use crate::exercise::readings::{Readings, ReadingsForm};
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::units::Seconds;

/// The parameters of a `point` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Point {
    /// The one target, off the page on every level.
    pub target: Target,
    /// How often, for the words.
    pub repeats: u32,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "point",
    gated: false,
    strand: Strand::Hold,
    doc: "One target floats off the page over a ruler in true size. The reader holds a pencil where it seems to stand, \
          then reads on the ruler where it should be, over the ipds of the audience.",
    tables: &[&EXERCISE, &TARGET],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[Field::default("repeats", Takes::Count { min: 1, max: 20 }, "5", "How often, for the words.")],
]);

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::FREE],
    doc: "The one target. The ruler takes the lowest 20 mm of the art field, so it stands above the middle. The ruler is \
          as long as the field is wide: it has room for places up to 160 mm from the page.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "point"
title = "Where is the float?"

[[target]]
label = "float"
shape = "ring"
size = "36 mm"
at = ["0 mm", "-14 mm"]
depth = { from = "1 pd toward", to = "4 pd toward", levels = 4 }
"#;

impl Draws for Point {
    fn levels(&self) -> Option<u32> {
        self.target.levels()
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds(f64::from(self.repeats) * (pace::POINTING + pace::FAR_LOOK)))
    }

    fn readings(&self) -> Option<Readings> {
        Some(Readings { target: self.target.label.clone(), form: ReadingsForm::Ruler })
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(Scene { features: vec![self.target.feature(rung.level)] }, self.words(rung.level, rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let repeats = exercise.get(reader, "repeats");
    let target = target::read_all(reader, document, &TARGET, KIND.id, (1, 1));
    let target = target.and_then(|all| all.into_iter().next())?;
    if (1..=target.levels().unwrap_or(1)).any(|level| target.depth.at(level).side().is_none()) {
        let problem = Diagnostic::error(codes::DEPTH, target.place, "the target of a `point` stands off the page")
            .with_label("on the page")
            .with_help("write an amount above 0 and a side, for example `\"2 pd toward\"`");
        reader.push(problem);
        return None;
    }
    Some(Body::Point(Point { target, repeats: repeats? }))
}

impl Point {
    /// The words of one level.
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let watch = self.target.watch;
        let shape = words::shape_noun(&self.target.shape, tongue);
        let shape = [("shape", (&shape).into())];
        let (setup, pencil, see) = if self.target.depth.at(level).side() == Some(Side::Away) {
            ("point-setup-away", "point-pencil-away", "point-see-away")
        } else {
            ("point-setup-toward", "point-pencil-toward", "point-see-toward")
        };
        Words {
            goal: tongue.tell("point-goal", &shape),
            setup: tongue.say(setup),
            steps: vec![
                tongue.tell("point-look", &shape),
                words::check_both(watch, tongue),
                tongue.tell(pencil, &shape),
                tongue.say("point-ruler"),
                tongue.tell("point-again", &[words::times(self.repeats, tongue)]),
            ],
            see: words::with_marks(tongue.tell(see, &shape), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}
