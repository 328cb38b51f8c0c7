//! `patch`: a locked patch. A ring with two small marks in its middle, and a rough border that rides with it.

use crate::chance::Dice;
use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{Depth, Eyes, Feature, Role, Scene, Shape, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::parts::{self, Part, Point};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `patch` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Patch {
    /// The width of the disc.
    pub size: Ramp<Mm>,
    /// How deep disc and border stand.
    pub depth: Ramp<Depth>,
    /// The width of the border.
    pub border: Mm,
    /// Where it is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "patch",
    gated: false,
    strand: Strand::Check,
    doc: "A disc with an open middle is held single by a rough border that rides with it. In its middle stand two small \
          marks, one for each eye.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::required(
            "size",
            Takes::Ramp(&Takes::Length(mm(10.0, 70.0))),
            "The width of the disc. At 40 cm 7 mm are a degree.",
        ),
        parts::DEPTH,
        Field::default("border", Takes::Length(mm(5.0, 20.0)), r#""13 mm""#, "The width of the border."),
    ],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "patch"
title = "The porthole"
size = { values = ["60 mm", "40 mm", "24 mm", "12 mm"] }
"#;

/// The open middle of the disc against its width.
const OPEN: f64 = 0.56;
/// The width of a centre mark against that of the disc, and its limits, mm: visible, and small enough to stay in the
/// middle of sight (design choice).
const MARK: (f64, f64, f64) = (0.13, 1.4, 4.2);
/// Clear space between the disc and its border, mm.
const CLEAR: f64 = 5.0;
/// The side of the cells of the border, each with one stroke, mm.
const CELL: f64 = 4.2;
/// Length of a stroke against its cell, shortest and longest, and its width, mm.
const STROKE: (f64, f64) = (0.5, 0.95);
const WEIGHT: f64 = 0.8;

impl Draws for Patch {
    fn levels(&self) -> Option<u32> {
        self.size.levels().or(self.depth.levels())
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung), self.words(rung.level, rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let size = exercise.get(reader, "size");
    let depth = parts::ramp_or(reader, exercise, "depth", Depth::Page);
    let border = exercise.get(reader, "border");
    Some(Body::Patch(Patch { size: size?, depth: depth?, border: border?, place: exercise.place() }))
}

impl Patch {
    fn scene(&self, rung: &Rung<'_>) -> Scene {
        let (size, depth) = (self.size.at(rung.level).0, self.depth.at(rung.level));
        let part = |id: &str, eyes| Part::target(id, eyes, &depth, self.place);
        let disc = part("disc", Eyes::Both).shape(Shape::Ring, (0.0, 0.0), size, size * (1.0 - OPEN) / 2.0);
        let border = part("border", Eyes::Both).role(Role::Lock).strokes(self.border(rung, size), WEIGHT);
        let [bar, wedge] = marks(&depth, size, self.place);
        Scene { features: vec![disc, bar, wedge, border] }
    }

    /// Short strokes at random angles, one in each cell of a square band about the disc: rough, and nowhere in step.
    fn border(&self, rung: &Rung<'_>, size: f64) -> Vec<(Point, Point)> {
        let mut dice = Dice::new(&format!("{}/border", rung.key));
        let inner = size / 2.0 + CLEAR;
        let outer = inner + self.border.0;
        let cells = libm::floor(2.0 * outer / CELL);
        let side = 2.0 * outer / cells;
        let middles: Vec<f64> =
            (0..).map(f64::from).take_while(|&i| i < cells).map(|i| (i + 0.5) * side - outer).collect();
        let mut strokes = Vec::new();
        for &y in &middles {
            for &x in &middles {
                // A row of cells that comes up to a quarter of a cell closer than the border still belongs to it.
                if inner <= x.abs().max(y.abs()) - side / 4.0 {
                    strokes.push(stroke(&mut dice, (x, y), side));
                }
            }
        }
        strokes
    }

    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        Words {
            goal: tongue.say("patch-goal"),
            setup: String::new(),
            steps: vec![tongue.say("patch-border"), tongue.say("patch-middle"), tongue.say("patch-hold")],
            see: tongue.tell("patch-see", &[words::side(self.depth.at(level).side())]),
            one_part: words::one_part(true, tongue),
        }
    }
}

/// The centre marks: the left eye's bar above the right eye's wedge.
fn marks(depth: &Depth, size: f64, place: Place) -> [Feature; 2] {
    let (share, least, most) = MARK;
    let width = (size * share).clamp(least, most);
    let mark = |id: &str, eyes, shape, y: f64| {
        Part::target(id, eyes, depth, place).role(Role::Watch).shape(shape, (0.0, y), width, width)
    };
    [mark("bar", Eyes::Left, Shape::Bar, -0.65 * width), mark("wedge", Eyes::Right, Shape::Wedge, 0.65 * width)]
}

/// A stroke at a random angle and of random length in the cell about a point.
fn stroke(dice: &mut Dice, (x, y): Point, side: f64) -> (Point, Point) {
    let turn = std::f64::consts::PI * dice.unit();
    let half = side * (STROKE.0 + (STROKE.1 - STROKE.0) * dice.unit()) / 2.0;
    let (dx, dy) = (half * libm::cos(turn), half * libm::sin(turn));
    ((x - dx, y - dy), (x + dx, y + dy))
}
