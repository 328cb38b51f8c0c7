//! `tiles`: outlines of growing size, one inside the other, each a step deeper or higher than the one around it.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Scene, Shape, Size, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, deg, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::ramp::{Blend, Ramp};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `tiles` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Tiles {
    /// The outline of every tile.
    pub shape: Shape,
    /// How many, at least 3.
    pub count: u32,
    /// Size of the outermost tile, which lies on the page.
    pub outer: Ramp<Size>,
    /// Size of the innermost tile, which stands `count - 1` steps off the page.
    pub inner: Ramp<Size>,
    /// From one tile to the next one inside: toward makes a tower, away a pit.
    pub step: Ramp<Depth>,
    /// Width of the lines.
    pub weight: Mm,
    /// Whether the innermost tile carries watch marks.
    pub watch: bool,
    /// Where the `[tiles]` table is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "tiles",
    gated: false,
    strand: Strand::Depth,
    doc: "Outlines of growing size lie one inside the other, with depth in equal steps: a pit or a tower.",
    tables: &[&EXERCISE, &TILES],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const SIZE: Takes = Takes::Ramp(&Takes::Size { length: mm(10.0, 120.0), angle: deg(1.0, 17.0) });

const TILES: TableSpec = TableSpec {
    name: "tiles",
    form: TableForm::Single,
    groups: &[&[
        Field::default(
            "shape",
            Takes::Choice(&["square", "ring", "diamond"]),
            r#""square""#,
            "The outline of every tile.",
        ),
        Field::default("count", Takes::Count { min: 3, max: 7 }, "5", "How many tiles."),
        Field::required("outer", SIZE, "Size of the outermost tile, which lies on the page."),
        Field::required("inner", SIZE, "Size of the innermost tile. Those between are even steps."),
        Field::required(
            "step",
            Takes::Ramp(&Takes::Depth),
            "From one tile to the next one inside, even in demand: `toward` makes a tower, `away` a pit.",
        ),
        Field::default("weight", Takes::Length(mm(0.4, 6.0)), r#""1.6 mm""#, "Width of the lines."),
        Field::default("marks", Takes::Flag, "true", "Whether the innermost tile carries watch marks."),
    ]],
    doc: "The tiles, about the middle of the art field.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "tiles"
title = "Steps into the dock"

[tiles]
shape = "square"
count = 5
outer = "112 mm"
inner = "24 mm"
step = { from = "0.6 pd away", to = "0.2 pd away", levels = 3 }
"#;

impl Draws for Tiles {
    fn levels(&self) -> Option<u32> {
        self.step.levels().or(self.outer.levels()).or(self.inner.levels())
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.level, rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let mut table = document.table(reader, &TILES)?;
    table.check_keys(reader);
    let shapes = [0_usize, 1, 2];
    let shape = table.one_of(reader, "shape", &shapes).map(|number| match number {
        0 => Shape::Square,
        1 => Shape::Ring,
        _ => Shape::Diamond,
    });
    let count = table.get(reader, "count");
    let outer: Option<Ramp<Size>> = table.get(reader, "outer");
    let inner: Option<Ramp<Size>> = table.get(reader, "inner");
    let step = super::read_step(reader, &table);
    let (weight, watch) = (table.get(reader, "weight"), table.get(reader, "marks"));
    let (outer, inner) = (outer?, inner?);
    check_growth(reader, &table, &outer, &inner)?;
    Some(Body::Tiles(Tiles {
        shape: shape?,
        count: count?,
        outer,
        inner,
        step: step?,
        weight: weight?,
        watch: watch?,
        place: table.place(),
    }))
}

/// The outermost tile is larger than the innermost on every level, both lengths or both angles.
fn check_growth(reader: &mut Reader<'_>, table: &Table<'_>, outer: &Ramp<Size>, inner: &Ramp<Size>) -> Option<()> {
    let levels = 1..=outer.levels().or(inner.levels()).unwrap_or(1);
    let grows = |level| match (inner.at(level), outer.at(level)) {
        (Size::Length(small), Size::Length(large)) => small < large,
        (Size::Angle(small), Size::Angle(large)) => small < large,
        _ => false,
    };
    if levels.clone().all(grows) {
        return Some(());
    }
    let mixed = levels.clone().any(|level| !inner.at(level).blends_with(&outer.at(level)));
    let (code, message, help) = if mixed {
        let message = "`outer` and `inner` of `[tiles]` mix a length and an angle";
        (codes::UNIT, message, "write both as lengths, or both as angles")
    } else {
        let message = "`inner` of `[tiles]` is not smaller than `outer`";
        (codes::RANGE, message, "write a smaller `inner`, or a larger `outer`")
    };
    let label = if mixed { "not like `outer`" } else { "not smaller" };
    let place = table.place_of(reader, "inner");
    reader.push(Diagnostic::error(code, place, message).with_label(label).with_help(help));
    None
}

impl Tiles {
    /// The art of one level, from the outermost tile to the innermost.
    fn scene(&self, level: u32) -> Scene {
        Scene { features: (0..self.count).map(|index| self.tile(index, level)).collect() }
    }

    /// A tile, counted from 0 at the outermost, which lies on the page.
    fn tile(&self, index: u32, level: u32) -> Feature {
        let share = f64::from(index) / f64::from(self.count - 1);
        let watch = self.watch && index + 1 == self.count;
        Feature {
            id: format!("tile-{}", index + 1),
            role: Role::Target,
            eyes: Eyes::Both,
            form: Form::Shape {
                shape: self.shape.clone(),
                at: At::default(),
                size: self.outer.at(level).blend(&self.inner.at(level), share),
                weight: self.weight,
                depth: Depth::Times(Box::new(self.step.at(level)), f64::from(index)),
            },
            scaling: Scaling::ConstantAngle,
            companions: Companions { watch, ..Companions::default() },
            solid: false,
            place: Some(self.place),
        }
    }

    /// The words of one level.
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let shape = words::shape_noun(&self.shape, tongue);
        let shape = [("shape", (&shape).into())];
        let see = tongue.tell("tiles-see", &[words::side(self.step.at(level).side())]);
        Words {
            goal: tongue.tell("tiles-goal", &shape),
            setup: String::new(),
            steps: vec![
                tongue.tell("tiles-largest", &shape),
                tongue.tell("tiles-in", &shape),
                tongue.say("tiles-say"),
                tongue.tell("tiles-check", &[words::marks(self.watch)]),
                tongue.say("tiles-out"),
            ],
            see: words::with_marks(see, self.watch, tongue),
            one_part: words::one_part(self.watch, tongue),
        }
    }
}
