//! `tour`: targets of unlike demand in the corners of the page, visited along a numbered route; the reader counts the
//! stops of a minute.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Depth, Feature, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm, seconds};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, Seconds};

use crate::exercise::ramp::Ramp;
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `tour` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Tour {
    /// A depth for each target, four or more, no two alike.
    pub depths: Vec<Ramp<Depth>>,
    /// From the middle of the left to the middle of the right corner.
    pub width: Ramp<Mm>,
    /// From the middle of the upper to the middle of the lower corner.
    pub height: Ramp<Mm>,
    /// The order in which the places are visited, each once; without one it is drawn by lot.
    pub route: Option<Vec<u32>>,
    /// What stands at each place; its own place is the middle of the tour and its depth is not used.
    pub target: Target,
    /// How long to go round, for the words.
    pub time: Seconds,
    /// Where the `[tour]` table is written.
    pub place: Place,
}

/// The places, as shares of half the width and half the height: the corners clockwise from the upper left, then the
/// middle, and the middles of the upper, lower, left and right edge.
const PLACES: [(f64, f64); 9] =
    [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0), (0.0, 0.0), (0.0, -1.0), (0.0, 1.0), (-1.0, 0.0), (1.0, 0.0)];

/// The kind.
pub const KIND: Kind = Kind {
    id: "tour",
    gated: false,
    strand: Strand::Jump,
    doc: "Targets of unlike demand stand in the four corners, with up to five more between them. They are visited along \
          a numbered route, and the reader counts the stops.",
    tables: &[&EXERCISE, &TOUR],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[Field::default("time", Takes::Time(seconds(10.0, 300.0)), r#""60 s""#, "How long to go round, for the words.")],
]);

const SPREAD: Takes = Takes::Ramp(&Takes::Length(mm(20.0, 170.0)));

const TOUR: TableSpec = TableSpec {
    name: "tour",
    form: TableForm::Single,
    groups: &[
        &[
            Field::required(
                "depths",
                Takes::List { of: &Takes::Ramp(&Takes::Depth), min: 4, max: 9 },
                "A depth for each target, no two alike: upper left, upper right, lower right, lower left; then the \
                 middle, and the middles of the upper, lower, left and right edge.",
            ),
            Field::required("width", SPREAD, "From the middles of the left to the middles of the right corners."),
            Field::required("height", SPREAD, "From the middles of the upper to the middles of the lower corners."),
            Field::optional(
                "route",
                Takes::List { of: &Takes::Count { min: 1, max: 9 }, min: 4, max: 9 },
                "The order in which the places are visited, each once: `[1, 3, 2, 4]`. Left out: drawn by lot.",
            ),
        ],
        target::LOOK,
        target::FREE,
    ],
    doc: "The targets and their route, around `at`.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "tour"
title = "Round the basin"

[tour]
shape = "ring"
size = "20 mm"
at = ["0 mm", "-4 mm"]
width = "126 mm"
height = "58 mm"
depths = ["3 pd toward", "1 pd away", "1 pd toward", "0.5 pd away"]
"#;

impl Draws for Tour {
    fn levels(&self) -> Option<u32> {
        let depths = self.depths.iter().find_map(Ramp::levels);
        depths.or(self.width.levels()).or(self.height.levels()).or(self.target.size.levels())
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(self.time)
    }

    fn is_seeded(&self) -> bool {
        self.route.is_none()
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let time = exercise.get(reader, "time");
    let mut table = document.table(reader, &TOUR)?;
    table.check_keys(reader);
    let depths: Option<Vec<Placed<Ramp<Depth>>>> = table.get(reader, "depths");
    let depths = depths.and_then(|list| check_unlike(reader, list));
    let (width, height) = (table.get(reader, "width"), table.get(reader, "height"));
    let route: Option<Option<Vec<Placed<u32>>>> = table.maybe(reader, "route");
    let target = target::read_look(reader, &table);
    let depths = depths?;
    let route = match route? {
        Some(route) => Some(super::check_once(reader, table.place_of(reader, "route"), ROUTE, &route, depths.len())?),
        None => None,
    };
    Some(Body::Tour(Tour {
        depths,
        width: width?,
        height: height?,
        route,
        target: target?,
        time: time?,
        place: table.place(),
    }))
}

/// What a route is made of, for messages.
const ROUTE: (&str, &str) = ("route", "place");

/// No two depths are written alike: each stop asks for a change.
fn check_unlike(reader: &mut Reader<'_>, list: Vec<Placed<Ramp<Depth>>>) -> Option<Vec<Ramp<Depth>>> {
    let again = (1..list.len()).find(|&i| list[..i].iter().any(|before| before.value == list[i].value));
    let Some(again) = again else { return Some(list.into_iter().map(|depth| depth.value).collect()) };
    let problem = Diagnostic::error(codes::DUPLICATE, list[again].place, "two targets of a `tour` have the same depth")
        .with_label("there already")
        .with_help("give each target a depth of its own");
    reader.push(problem);
    None
}

impl Tour {
    /// The art of one page: the targets in the order of the route, each with its number.
    fn scene(&self, rung: &Rung<'_>) -> Scene {
        let stops = (1..).zip(self.route(rung.key));
        Scene { features: stops.map(|(number, place)| self.stop(number, place as usize - 1, rung.level)).collect() }
    }

    /// The places in the order of the route, from 1.
    fn route(&self, key: &str) -> Vec<u32> {
        let mut route: Vec<u32> = (1..).take(self.depths.len()).collect();
        match &self.route {
            Some(listed) => listed.clone(),
            None => {
                Dice::new(&format!("{key}/route")).shuffle(&mut route);
                route
            }
        }
    }

    /// The target at a place, counted from 0, which has this number on the route.
    fn stop(&self, number: u32, place: usize, level: u32) -> Feature {
        let (across, down) = PLACES[place % PLACES.len()];
        let target = Target {
            label: format!("stop-{number}"),
            at: At {
                x: Mm(self.target.at.x.0 + across * self.width.at(level).0 / 2.0),
                y: Mm(self.target.at.y.0 + down * self.height.at(level).0 / 2.0),
            },
            depth: self.depths[place].clone(),
            place: self.place,
            ..self.target.clone()
        };
        let mut feature = target.feature(level);
        feature.companions.number = Some(number);
        feature
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = self.target.watch;
        Words {
            goal: tongue.say("tour-goal"),
            setup: tongue.say("tour-setup"),
            steps: vec![
                tongue.say("steps-number-one"),
                tongue.tell("tour-check", &[words::marks(watch)]),
                tongue.say("tour-again"),
                tongue.tell("tour-count", &[words::time(self.time, tongue)]),
                tongue.say("tour-far"),
            ],
            see: words::with_marks(tongue.say("steps-see-stop"), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}
