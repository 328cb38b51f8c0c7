//! `pairs`: targets in a column or a row that stand toward and away in turn.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::{Arg, Tongue};
use crate::scene::{At, Depth, Effort, Feature, Scene, Side, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm, seconds};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, Seconds};

use crate::exercise::ramp::Ramp;
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `pairs` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Pairs {
    /// The layout.
    pub form: PairsForm,
    /// How many pairs.
    pub count: u32,
    /// Depth of the first of each pair, on the toward side.
    pub near: Ramp<Depth>,
    /// Depth of the second of each pair, on the away side.
    pub far: Ramp<Depth>,
    /// Between the middles of neighbours.
    pub spacing: Mm,
    /// What is repeated; its place is the middle of them all and its depth is not used.
    pub target: Target,
    /// How long to stay at each, for the words.
    pub stay: Seconds,
    /// How many rounds, for the words.
    pub rounds: u32,
    /// Where the `[pairs]` table is written.
    pub place: Place,
}

/// The layouts of [`Pairs`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PairsForm {
    /// Top to bottom.
    Column,
    /// Left to right.
    Row,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "pairs",
    gated: false,
    strand: Strand::Jump,
    doc: "Targets in a column or a row stand toward and away in turn, so that each step is a jump in and a jump out. \
          Most people manage two to four times as much toward as away.",
    tables: &[&EXERCISE, &PAIRS],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::default("stay", Takes::Time(seconds(0.5, 60.0)), r#""3 s""#, "How long to stay at each, for the words."),
        Field::default("rounds", Takes::Count { min: 1, max: 50 }, "5", "How many rounds, for the words."),
    ],
]);

const PAIRS: TableSpec = TableSpec {
    name: "pairs",
    form: TableForm::Single,
    groups: &[
        &[
            Field::required("form", Takes::Choice(&["column", "row"]), "Top to bottom, or left to right."),
            Field::required("count", Takes::Count { min: 1, max: 6 }, "How many pairs."),
            Field::required(
                "near",
                Takes::Ramp(&Takes::Depth),
                "Depth of the first of each pair, on the `toward` side.",
            ),
            Field::required("far", Takes::Ramp(&Takes::Depth), "Depth of the second of each pair, on the `away` side."),
            Field::required("spacing", Takes::Length(mm(5.0, 150.0)), "Between the middles of neighbours."),
        ],
        target::LOOK,
        target::FREE,
    ],
    doc: "The pairs, around `at`.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "pairs"
title = "Buoys in the swell"

[pairs]
form = "row"
count = 2
shape = "ring"
size = "20 mm"
spacing = "45 mm"
near = "3 pd toward"
far = "1 pd away"
"#;

impl Draws for Pairs {
    fn levels(&self) -> Option<u32> {
        self.near.levels().or(self.far.levels()).or(self.target.size.levels())
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds(f64::from(self.rounds * self.count * 2) * self.stay.0))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn { effort: Effort::held(self.stay), ..Drawn::plain(self.scene(rung.level), self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let (stay, rounds) = (exercise.get(reader, "stay"), exercise.get(reader, "rounds"));
    let mut table = document.table(reader, &PAIRS)?;
    table.check_keys(reader);
    let form = table.one_of(reader, "form", &[PairsForm::Column, PairsForm::Row]);
    let count = table.get(reader, "count");
    let near = read_side(reader, &table, "near", Side::Toward);
    let far = read_side(reader, &table, "far", Side::Away);
    let spacing = table.get(reader, "spacing");
    let target = target::read_look(reader, &table);
    Some(Body::Pairs(Pairs {
        form: form?,
        count: count?,
        near: near?,
        far: far?,
        spacing: spacing?,
        target: target?,
        stay: stay?,
        rounds: rounds?,
        place: table.place(),
    }))
}

/// A depth that stands on one side of the page on every level.
fn read_side(reader: &mut Reader<'_>, table: &Table<'_>, key: &'static str, side: Side) -> Option<Ramp<Depth>> {
    let depth: Ramp<Depth> = table.get(reader, key)?;
    let levels = 1..=depth.levels().unwrap_or(1);
    if levels.clone().all(|level| depth.at(level).side() == Some(side)) {
        return Some(depth);
    }
    let message = format!("`{key}` of `[pairs]` stands on the {} side", side.name());
    let problem = Diagnostic::error(codes::DEPTH, table.place_of(reader, key), message)
        .with_label(format!("not {}", side.name()))
        .with_help(format!("write an amount above 0 and `{}`", side.name()));
    reader.push(problem);
    None
}

impl Pairs {
    /// The art of one level: near and far in turn.
    fn scene(&self, level: u32) -> Scene {
        Scene { features: (0..self.count * 2).map(|index| self.stop(index, level)).collect() }
    }

    /// One of the targets, counted from 0.
    fn stop(&self, index: u32, level: u32) -> Feature {
        let along = (f64::from(index) - f64::from(self.count * 2 - 1) / 2.0) * self.spacing.0;
        let (dx, dy) = match self.form {
            PairsForm::Column => (0.0, along),
            PairsForm::Row => (along, 0.0),
        };
        let (name, depth) = if index.is_multiple_of(2) { ("in", &self.near) } else { ("out", &self.far) };
        let target = Target {
            label: format!("{name}-{}", index / 2 + 1),
            at: At { x: Mm(self.target.at.x.0 + dx), y: Mm(self.target.at.y.0 + dy) },
            depth: depth.clone(),
            place: self.place,
            ..self.target.clone()
        };
        target.feature(level)
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = self.target.watch;
        let shape = words::shape_noun(&self.target.shape, tongue);
        let form: Arg<'_> = if self.form == PairsForm::Column { "column" } else { "row" }.into();
        Words {
            goal: tongue.say("pairs-goal"),
            setup: String::new(),
            steps: vec![
                tongue.tell("pairs-start", &[("form", form.clone()), ("shape", (&shape).into())]),
                tongue.tell("pairs-go", &[("form", form)]),
                tongue.tell("pairs-check", &[words::marks(watch), words::time(self.stay, tongue)]),
                tongue.tell("pairs-round", &[words::times(self.rounds, tongue)]),
            ],
            see: words::with_marks(tongue.say("pairs-see"), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}
