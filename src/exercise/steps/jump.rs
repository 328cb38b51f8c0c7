//! `jump`: two or more targets at different depths, looked at in turn along a numbered route.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Depth, Effort, Feature, Scene, Strand};
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

/// The parameters of a `jump` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Jump {
    /// The stops in the order of the route: written out as `[[target]]`, or laid out by an arrangement.
    pub stops: Stops,
    /// Whether each stop carries its number in the route.
    pub numbers: bool,
    /// How long to stay at each stop, for the words.
    pub stay: Seconds,
    /// How many rounds, for the words.
    pub rounds: u32,
}

/// Where the stops come from.
#[expect(clippy::large_enum_variant, reason = "there is one per exercise; a box would gain nothing")]
#[derive(Debug, Clone, PartialEq)]
pub enum Stops {
    /// Each written out; at least two.
    Listed(Vec<Target>),
    /// Copies of one target, laid out evenly.
    Arranged(Arrangement),
}

/// An `[arrangement]`: copies of one target in a row, a column or a ring, with depths that cycle along the route.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrangement {
    /// The layout.
    pub form: ArrangementForm,
    /// How many stops, at least 2.
    pub count: Ramp<u32>,
    /// Between the middles of neighbours; for a ring: its radius.
    pub spacing: Ramp<Mm>,
    /// The order in which the places are visited, each place from 1 to `count` once. Without one: in the order of the
    /// places (left to right, top to bottom, clockwise from the top).
    pub route: Option<Vec<u32>>,
    /// Depths taken in turn along the places; at least 2.
    pub depths: Vec<Ramp<Depth>>,
    /// The target that is copied; its place is the middle of the arrangement and its depth is not used.
    pub target: Target,
    /// Where it is written.
    pub place: Place,
}

/// The layouts of an [`Arrangement`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ArrangementForm {
    /// Left to right.
    Row,
    /// Top to bottom.
    Column,
    /// Clockwise from the top.
    Ring,
}

/// The most stops of a route. Design choice.
const MOST_STOPS: u32 = 12;

/// The kind.
pub const KIND: Kind = Kind {
    id: "jump",
    gated: false,
    strand: Strand::Jump,
    doc: "Two or more targets at different depths are looked at in turn along a numbered route. They are written out \
          as `[[target]]`s, in the order of the route, or laid out by one `[arrangement]`.",
    tables: &[&EXERCISE, &TARGET, &ARRANGEMENT],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::default("numbers", Takes::Flag, "true", "Whether each stop carries its number in the route."),
        Field::default(
            "stay",
            Takes::Time(seconds(0.5, 60.0)),
            r#""3 s""#,
            "How long to stay at each stop, for the words.",
        ),
        Field::default("rounds", Takes::Count { min: 1, max: 50 }, "10", "How many rounds, for the words."),
    ],
]);

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::FREE],
    doc: "The stops, two to twelve, in the order of the route.",
};

const ARRANGEMENT: TableSpec = TableSpec {
    name: "arrangement",
    form: TableForm::Single,
    groups: &[
        &[
            Field::required(
                "form",
                Takes::Choice(&["row", "column", "ring"]),
                "The layout: left to right, top to bottom, or clockwise from the top.",
            ),
            Field::required("count", Takes::Ramp(&Takes::Count { min: 2, max: MOST_STOPS }), "How many stops."),
            Field::required(
                "spacing",
                Takes::Ramp(&Takes::Length(mm(5.0, 170.0))),
                "Between the middles of neighbours; in a ring: its radius.",
            ),
            Field::optional(
                "route",
                Takes::List { of: &Takes::Count { min: 1, max: MOST_STOPS }, min: 2, max: MOST_STOPS },
                "The order in which the places are visited, each once: `[1, 3, 2]`. Left out: in the order of the places. A `count` that \
                 changes from level to level has no route.",
            ),
            Field::required(
                "depths",
                Takes::List { of: &Takes::Ramp(&Takes::Depth), min: 2, max: MOST_STOPS },
                "Depths, taken in turn along the places; not more than `count`.",
            ),
        ],
        target::LOOK,
        target::FREE,
    ],
    doc: "Copies of one target, laid out evenly around `at`; in place of `[[target]]`s.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "jump"
title = "Mooring rings"
goal = "Look from the near ring to the far ring and back, and feel your eyes change."

[[target]]
label = "near"
shape = "ring"
size = "34 mm"
at = ["-45 mm", "0 mm"]
depth = { from = "1 pd toward", to = "4 pd toward", levels = 4 }

[[target]]
label = "far"
shape = "ring"
size = "34 mm"
at = ["45 mm", "0 mm"]
depth = "1 pd away"
"#;

impl Draws for Jump {
    fn levels(&self) -> Option<u32> {
        match &self.stops {
            Stops::Listed(targets) => targets.iter().find_map(Target::levels),
            Stops::Arranged(a) => {
                let place = a.spacing.levels().or(a.count.levels());
                a.depths.iter().find_map(Ramp::levels).or(a.target.size.levels()).or(place)
            }
        }
    }

    fn time(&self, level: u32) -> Option<Seconds> {
        let stops = match &self.stops {
            Stops::Listed(targets) => targets.len(),
            Stops::Arranged(arrangement) => {
                arrangement.route.as_ref().map_or(arrangement.count.at(level) as usize, Vec::len)
            }
        };
        Some(Seconds(f64::from(self.rounds) * stops as f64 * self.stay.0))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn { effort: Effort::held(self.stay), ..Drawn::plain(self.scene(rung.level), self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let numbers = exercise.get(reader, "numbers");
    let stay = exercise.get(reader, "stay");
    let rounds = exercise.get(reader, "rounds");
    let stops = read_stops(reader, document);
    Some(Body::Jump(Jump { stops: stops?, numbers: numbers?, stay: stay?, rounds: rounds? }))
}

fn read_stops(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Stops> {
    let Some(table) = document.optional_table(reader, &ARRANGEMENT) else {
        let most = MOST_STOPS as usize;
        return target::read_all(reader, document, &TARGET, KIND.id, (2, most)).map(Stops::Listed);
    };
    let place = table.place();
    let arrangement = read_arrangement(reader, table);
    if document.has(TARGET.name) {
        let message = "a `jump` has `[[target]]`s or an `[arrangement]`, not both";
        let problem = Diagnostic::error(codes::CONFLICT, place, message)
            .with_label("beside `[[target]]`")
            .with_help("leave out one of them");
        reader.push(problem);
        target::read_all(reader, document, &TARGET, KIND.id, (1, MOST_STOPS as usize));
        return None;
    }
    arrangement.map(Stops::Arranged)
}

fn read_arrangement(reader: &mut Reader<'_>, mut table: Table<'_>) -> Option<Arrangement> {
    table.check_keys(reader);
    let forms = [ArrangementForm::Row, ArrangementForm::Column, ArrangementForm::Ring];
    let form = table.one_of(reader, "form", &forms);
    let count: Option<Ramp<u32>> = table.get(reader, "count");
    let spacing = table.get(reader, "spacing");
    let route: Option<Option<Vec<Placed<u32>>>> = table.maybe(reader, "route");
    let depths: Option<Vec<Ramp<Depth>>> = table.get(reader, "depths");
    let place = table.place_of(reader, "depths");
    let look = target::read_look(reader, &table);
    let (count, depths) = (count?, depths?);
    let fewest = (1..=count.levels().unwrap_or(1)).map(|level| count.at(level)).min().unwrap_or(0);
    if fewest < u32::try_from(depths.len()).unwrap_or(u32::MAX) {
        let message = format!("{} depths for {fewest} stops: some would never be used", depths.len());
        let problem = Diagnostic::error(codes::LIST, place, message)
            .with_label(format!("at most {fewest}"))
            .with_help("leave out depths, or raise `count`");
        reader.push(problem);
        return None;
    }
    let route = match route? {
        Some(_) if count.levels().is_some() => {
            let message =
                "`route` visits each place once: it does not go with a `count` that changes from level to level";
            let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "route"), message)
                .with_label("how many places?")
                .with_help("leave out `route`, or give `count` one number");
            reader.push(problem);
            return None;
        }
        Some(route) => Some(super::check_once(
            reader,
            table.place_of(reader, "route"),
            ("route", "place"),
            &route,
            fewest as usize,
        )?),
        None => None,
    };
    let target = Target { label: "stop".to_owned(), place, ..look? };
    Some(Arrangement { form: form?, count, spacing: spacing?, route, depths, target, place })
}

impl Jump {
    /// The art of one level: the stops in the order of the route.
    fn scene(&self, level: u32) -> Scene {
        let mut features = match &self.stops {
            Stops::Listed(targets) => targets.iter().map(|target| target.feature(level)).collect(),
            Stops::Arranged(arrangement) => arrangement.features(level),
        };
        if self.numbers {
            for (number, feature) in (1..).zip(&mut features) {
                feature.companions.number = Some(number);
            }
        }
        Scene { features }
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = match &self.stops {
            Stops::Listed(targets) => targets.iter().any(|target| target.watch),
            Stops::Arranged(arrangement) => arrangement.target.watch,
        };
        let (start, next) = match &self.stops {
            _ if self.numbers => (tongue.say("steps-number-one"), tongue.say("jump-next-number")),
            Stops::Listed(targets) => (
                tongue.tell("jump-start-name", &[("name", (&targets[0].label).into())]),
                tongue.tell("jump-next-name", &[("name", (&targets[1].label).into())]),
            ),
            Stops::Arranged(_) => (tongue.say("jump-start-shape"), tongue.say("jump-next-shape")),
        };
        Words {
            goal: tongue.say("jump-goal"),
            setup: String::new(),
            steps: vec![
                start,
                next,
                tongue.tell("jump-check", &[words::marks(watch), words::time(self.stay, tongue)]),
                tongue.tell("jump-round", &[words::times(self.rounds, tongue)]),
            ],
            see: words::with_marks(tongue.say("steps-see-stop"), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}

impl Arrangement {
    /// The stops on a level, in the order of the route.
    fn features(&self, level: u32) -> Vec<Feature> {
        let in_place_order = (1..=self.count.at(level)).collect::<Vec<_>>();
        let route = self.route.as_ref().unwrap_or(&in_place_order);
        route.iter().zip(1..).map(|(&place, stop): (&u32, u32)| self.stop(place, stop, level)).collect()
    }

    /// The copy of the target at a place (from 1), which is this stop (from 1) of the route.
    fn stop(&self, place: u32, stop: u32, level: u32) -> Feature {
        let index = place as usize - 1;
        let (dx, dy) = self.offset(index, level);
        let target = Target {
            label: format!("{}-{stop}", self.target.label),
            at: At { x: Mm(self.target.at.x.0 + dx), y: Mm(self.target.at.y.0 + dy) },
            depth: self.depths[index % self.depths.len()].clone(),
            ..self.target.clone()
        };
        target.feature(level)
    }

    /// From the middle of the arrangement to a place, mm.
    fn offset(&self, index: usize, level: u32) -> (f64, f64) {
        let (count, spacing) = (f64::from(self.count.at(level)), self.spacing.at(level).0);
        let along = (index as f64 - (count - 1.0) / 2.0) * spacing;
        match self.form {
            ArrangementForm::Row => (along, 0.0),
            ArrangementForm::Column => (0.0, along),
            ArrangementForm::Ring => {
                let angle = (360.0 * index as f64 / count - 90.0).to_radians();
                (spacing * libm::cos(angle), spacing * libm::sin(angle))
            }
        }
    }
}
