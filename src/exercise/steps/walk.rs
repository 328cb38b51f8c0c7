//! `walk`: one target on a page that stays where it is, looked at from several distances. The print fixes the offset, so
//! the demand falls as the reader steps back; a table on the page tells how much.

use crate::diagnostics::{Diagnostic, codes};
use crate::language::Tongue;
use crate::scene::{Effort, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm, seconds};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, Seconds, plain};

use crate::exercise::readings::{Readings, ReadingsForm};
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `walk` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Walk {
    /// The one target. Its depth and its angles are those at the viewing distance of the set.
    pub target: Target,
    /// From where it is looked at, eye plane to page, rising.
    pub distances: Vec<Mm>,
    /// How long to stay at each, for the words.
    pub stay: Seconds,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "walk",
    gated: false,
    strand: Strand::Hold,
    doc: "One target on a page that stays where it is, looked at from several distances. The offset on the page is fixed, \
          so the demand falls as the reader steps back; a table on the page tells the demand and the place at each \
          distance. Whether the eyes would turn to parallel depends on the offset and the ipd alone, so a target that is \
          within the limit at one distance is so at all.",
    tables: &[&EXERCISE, &TARGET],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::required(
            "distances",
            Takes::List { of: &Takes::Length(mm(200.0, 4000.0)), min: 2, max: 5 },
            "From where the page is looked at, rising: `[\"30 cm\", \"40 cm\", \"60 cm\", \"1 m\"]`.",
        ),
        Field::default(
            "stay",
            Takes::Time(seconds(1.0, 60.0)),
            r#""10 s""#,
            "How long to stay at each distance, for the words.",
        ),
    ],
]);

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::FREE],
    doc: "The one target. The table takes the lowest 20 mm of the art field, so it stands above the middle.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "walk"
title = "Back along the jetty"
distances = ["30 cm", "40 cm", "60 cm", "1 m"]

[[target]]
label = "lamp"
shape = "ring"
size = "48 mm"
at = ["0 mm", "-12 mm"]
depth = "2 pd toward"
"#;

impl Draws for Walk {
    fn levels(&self) -> Option<u32> {
        self.target.levels()
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds((2.0 * self.distances.len() as f64 - 1.0) * self.stay.0))
    }

    fn readings(&self) -> Option<Readings> {
        let form = ReadingsForm::Distances(self.distances.clone());
        Some(Readings { target: self.target.label.clone(), form })
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn {
            effort: Effort::held(self.stay),
            ..Drawn::plain(Scene { features: vec![self.target.feature(rung.level)] }, self.words(rung.tongue))
        }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let distances: Option<Vec<Placed<Mm>>> = exercise.get(reader, "distances");
    let distances = distances.and_then(|list| check_distances(reader, &list));
    let stay = exercise.get(reader, "stay");
    let target = target::read_all(reader, document, &TARGET, KIND.id, (1, 1));
    let target = target.and_then(|all| all.into_iter().next());
    Some(Body::Walk(Walk { target: target?, distances: distances?, stay: stay? }))
}

/// The distances rise: the reader walks back.
fn check_distances(reader: &mut Reader<'_>, list: &[Placed<Mm>]) -> Option<Vec<Mm>> {
    let Some(pair) = list.windows(2).find(|pair| pair[1].value <= pair[0].value) else {
        return Some(list.iter().map(|distance| distance.value).collect());
    };
    let cm = |distance: &Placed<Mm>| plain(distance.value.0 / 10.0, 2);
    let message = format!("`distances` go from `{} cm` to `{} cm`: they do not rise", cm(&pair[0]), cm(&pair[1]));
    let problem = Diagnostic::error(codes::LIST, pair[1].place, message)
        .with_label("not farther than the one before")
        .with_help("list the distances from the nearest to the farthest, each once");
    reader.push(problem);
    None
}

impl Walk {
    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = self.target.watch;
        let shape = words::shape_noun(&self.target.shape, tongue);
        let distance = |mm: Option<&Mm>| ("distance", mm.map_or(String::new(), |&mm| tongue.cm(mm, 1)).into());
        let (first, last) = (distance(self.distances.first()), distance(self.distances.last()));
        let start = tongue.tell("walk-start", &[first, ("shape", (&shape).into())]);
        let shape = [("shape", (&shape).into())];
        Words {
            goal: tongue.tell("walk-goal", &shape),
            setup: tongue.say("walk-setup"),
            steps: vec![
                start,
                tongue.tell("walk-check", &[words::marks(watch), words::time(self.stay, tongue)]),
                tongue.tell("walk-back", &[last]),
                tongue.say("walk-return"),
            ],
            see: words::with_marks(tongue.tell("walk-see", &shape), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}
