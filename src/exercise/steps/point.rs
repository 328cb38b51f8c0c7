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
        let name = words::shape_name(&self.target.shape);
        let away = self.target.depth.at(level).side() == Some(Side::Away);
        let (setup, hold, see) = if away {
            (
                "Let the page stand up at the edge of a table, so that your hand can reach behind it.",
                format!("Hold a pencil beside the page, as far behind it as the {name} seems to be."),
                format!("One {name} that lies behind the page. The pencil is as deep as the {name}."),
            )
        } else {
            (
                "Have a pencil at hand.",
                format!("Bring a pencil in from the side, to where the {name} seems to float."),
                format!("One {name} that floats before the page. The pencil meets it in the air."),
            )
        };
        Words {
            goal: format!("Point to the place where the {name} seems to stand."),
            setup: setup.to_owned(),
            steps: vec![
                format!("Look at the {name} until it is single. Do not look at the ruler yet."),
                words::check_step(self.target.watch, "Check that", "are both there."),
                hold,
                "Keep the pencil still. How far is it from the page? Now look at the ruler.".to_owned(),
                format!("Look far away. Do this {}.", words::times(self.repeats, tongue)),
            ],
            see: words::with_marks(see, self.target.watch, tongue),
            one_part: words::one_part(self.target.watch, tongue),
        }
    }
}
