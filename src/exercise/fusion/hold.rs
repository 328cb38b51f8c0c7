//! `hold`: one large target held single and clear at one demand; a ramp over levels makes a slow slide from page to page.

use crate::language::Tongue;
use crate::scene::{Effort, Scene, Side, Strand};
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
        let name = words::shape_name(&self.target.shape);
        let see = match self.target.depth.at(level).side() {
            Some(Side::Toward) => format!("One {name} that seems to float in front of the page."),
            Some(Side::Away) => format!("One {name} that seems to lie behind the page, as if seen through a window."),
            None => format!("One {name}, flat on the page."),
        };
        Words {
            goal: format!("Keep one {name} single and clear while your eyes hold still."),
            setup: String::new(),
            steps: vec![
                format!("Look softly at the {name} until you see only one."),
                words::check_step(self.target.watch, "Check that", "are both there."),
                format!("Hold it single and clear for {}.", words::seconds(self.hold, tongue)),
                format!("Look far away for five seconds. Do this {}.", words::times(self.repeats, tongue)),
            ],
            see: words::with_marks(see, self.target.watch, tongue),
            one_part: words::one_part(self.target.watch, tongue),
        }
    }
}
