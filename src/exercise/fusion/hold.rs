//! `hold`: one large target held single and clear at one demand; a ramp over levels makes a slow slide from page to page.

use crate::language::Tongue;
use crate::scene::{Effort, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, seconds};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Seconds;

use crate::exercise::pace;
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `hold` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Hold {
    /// The one target.
    pub target: Target,
    /// How long to hold it, for the words.
    pub hold: Seconds,
    /// How often, for the words.
    pub repeats: u32,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "hold",
    gated: false,
    strand: Strand::Hold,
    doc: "One large target is held single and clear at one demand. A ramp over levels makes a slow slide from page to \
          page.",
    tables: &[&EXERCISE, &TARGET],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::default(
            "hold",
            Takes::Time(seconds(1.0, 60.0)),
            r#""10 s""#,
            "How long to hold the target, for the words.",
        ),
        Field::default("repeats", Takes::Count { min: 1, max: 20 }, "5", "How often, for the words."),
    ],
]);

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::FREE],
    doc: "The one target.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "hold"
title = "The lamp on the pier"
hold = "12 s"

[[target]]
label = "lamp"
shape = "ring"
size = "45 mm"
depth = { from = "1 pd toward", to = "4 pd toward", levels = 4 }
"#;

impl Draws for Hold {
    fn levels(&self) -> Option<u32> {
        self.target.levels()
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds(f64::from(self.repeats) * (self.hold.0 + pace::FAR_LOOK)))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn {
            effort: Effort::held(self.hold),
            ..Drawn::plain(self.scene(rung.level), self.words(rung.level, rung.tongue))
        }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let hold = exercise.get(reader, "hold");
    let repeats = exercise.get(reader, "repeats");
    let target = target::read_all(reader, document, &TARGET, KIND.id, (1, 1));
    let target = target.and_then(|all| all.into_iter().next());
    Some(Body::Hold(Hold { target: target?, hold: hold?, repeats: repeats? }))
}

impl Hold {
    /// The art of one level.
    fn scene(&self, level: u32) -> Scene {
        Scene { features: vec![self.target.feature(level)] }
    }

    /// The words of one level.
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let shape = words::shape_noun(&self.target.shape, tongue);
        let side = words::side(self.target.depth.at(level).side());
        let see = tongue.tell("hold-see", &[("shape", (&shape).into()), side]);
        let shape = [("shape", (&shape).into())];
        Words {
            goal: tongue.tell("hold-goal", &shape),
            setup: String::new(),
            steps: vec![
                tongue.tell("hold-look", &shape),
                words::check_both(self.target.watch, tongue),
                tongue.tell("hold-hold", &[words::time(self.hold, tongue)]),
                tongue.tell("hold-rest", &[words::times(self.repeats, tongue)]),
            ],
            see: words::with_marks(see, self.target.watch, tongue),
            one_part: words::one_part(self.target.watch, tongue),
        }
    }
}
