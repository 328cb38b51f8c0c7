//! `rungs`: one target again and again on one page, at demands that rise in even steps; each rung carries its number and
//! its demand.

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{At, Depth, Effort, Feature, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm, seconds};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, Seconds};

use crate::exercise::ramp::{Blend, Ramp};
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `rungs` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Rungs {
    /// Depth of the first rung.
    pub from: Ramp<Depth>,
    /// Depth of the last.
    pub to: Ramp<Depth>,
    /// How many rungs, at least 2.
    pub count: u32,
    /// How many stand side by side.
    pub columns: u32,
    /// Between the middles of neighbours in a row.
    pub spacing: Mm,
    /// Between the middles of two rows.
    pub row_spacing: Mm,
    /// What stands on each rung; its place is the middle of them all and its depth is not used.
    pub target: Target,
    /// How long to stay on each rung, for the words.
    pub stay: Seconds,
    /// Where the `[rungs]` table is written.
    pub place: Place,
}

/// The most rungs of a page. Design choice.
const MOST: u32 = 10;

/// The kind.
pub const KIND: Kind = Kind {
    id: "rungs",
    gated: false,
    strand: Strand::Jump,
    doc: "One target stands again and again on one page, at demands that rise in even steps. Each rung carries its number \
          and its demand: the last one that stays single is the rung to write down.",
    tables: &[&EXERCISE, &RUNGS],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[Field::default(
        "stay",
        Takes::Time(seconds(1.0, 60.0)),
        r#""5 s""#,
        "How long to stay on each rung, for the words.",
    )],
]);

const RUNGS: TableSpec = TableSpec {
    name: "rungs",
    form: TableForm::Single,
    groups: &[
        &[
            Field::required("from", Takes::Ramp(&Takes::Depth), "Depth of the first rung."),
            Field::required(
                "to",
                Takes::Ramp(&Takes::Depth),
                "Depth of the last rung. Those between are even steps in demand.",
            ),
            Field::required("count", Takes::Count { min: 2, max: MOST }, "How many rungs."),
            Field::default("columns", Takes::Count { min: 1, max: MOST }, "3", "How many stand side by side."),
            Field::default(
                "spacing",
                Takes::Length(mm(10.0, 120.0)),
                r#""58 mm""#,
                "Between the middles of neighbours in a row.",
            ),
            Field::default(
                "row_spacing",
                Takes::Length(mm(10.0, 120.0)),
                r#""58 mm""#,
                "Between the middles of two rows.",
            ),
        ],
        target::LOOK,
        target::FREE,
    ],
    doc: "The rungs, row by row around `at`, in the order of reading.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "rungs"
title = "Rope ladder"

[rungs]
shape = "ring"
size = "22 mm"
at = ["0 mm", "-6 mm"]
from = "0.5 pd toward"
to = "3 pd toward"
count = 6
"#;

impl Draws for Rungs {
    fn levels(&self) -> Option<u32> {
        self.from.levels().or(self.to.levels()).or(self.target.size.levels())
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds(f64::from(self.count) * self.stay.0))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let words = self.words(rung.tongue);
        Drawn { effort: Effort::held(self.stay), ..Drawn::plain(self.scene(rung.level, rung.tongue), words) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let stay = exercise.get(reader, "stay");
    let mut table = document.table(reader, &RUNGS)?;
    table.check_keys(reader);
    let (from, to) = (table.get(reader, "from"), table.get(reader, "to"));
    let (count, columns) = (table.get(reader, "count"), table.get(reader, "columns"));
    let (spacing, row_spacing) = (table.get(reader, "spacing"), table.get(reader, "row_spacing"));
    let target = target::read_look(reader, &table);
    Some(Body::Rungs(Rungs {
        from: from?,
        to: to?,
        count: count?,
        columns: columns?,
        spacing: spacing?,
        row_spacing: row_spacing?,
        target: target?,
        stay: stay?,
        place: table.place(),
    }))
}

impl Rungs {
    /// The art of one level: the rungs in order.
    fn scene(&self, level: u32, tongue: &Tongue) -> Scene {
        Scene { features: (0..self.count).map(|index| self.rung(index, level, tongue)).collect() }
    }

    /// A rung, counted from 0.
    fn rung(&self, index: u32, level: u32, tongue: &Tongue) -> Feature {
        let share = f64::from(index) / f64::from(self.count - 1);
        let depth = self.from.at(level).blend(&self.to.at(level), share);
        let target = Target {
            label: format!("rung-{}", index + 1),
            at: self.at(index),
            depth: Ramp::Same(depth),
            place: self.place,
            ..self.target.clone()
        };
        let mut feature = target.feature(level);
        feature.companions.number = Some(index + 1);
        feature.companions.demand = Some(words::demand_words(tongue));
        feature
    }

    /// The middle of a rung: row by row, each row about the middle.
    fn at(&self, index: u32) -> At {
        let columns = self.columns.min(self.count);
        let (row, rows) = (index / columns, self.count.div_ceil(columns));
        let in_row = columns.min(self.count - row * columns);
        let across = f64::from(index % columns) - f64::from(in_row - 1) / 2.0;
        let down = f64::from(row) - f64::from(rows - 1) / 2.0;
        At {
            x: Mm(self.target.at.x.0 + across * self.spacing.0),
            y: Mm(self.target.at.y.0 + down * self.row_spacing.0),
        }
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = self.target.watch;
        let shape = words::shape_noun(&self.target.shape, tongue);
        let shape = [("shape", (&shape).into())];
        Words {
            goal: tongue.tell("rungs-goal", &[("last", self.count.into())]),
            setup: String::new(),
            steps: vec![
                tongue.tell("rungs-look", &shape),
                words::check_both(watch, tongue),
                tongue.tell("rungs-stay", &[words::time(self.stay, tongue)]),
                tongue.say("rungs-stop"),
                tongue.say("rungs-write"),
            ],
            see: words::with_marks(tongue.tell("rungs-see", &shape), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}
