//! `shared`: a path in two parts. One eye sees the walls of a small maze, the other its start, goal and hazards; the outer
//! edge is for both. The route is drawn by lot.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{Depth, Eye, Eyes, Role, Scene, Shape, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::parts::{self, Part, Point};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

mod maze;

use maze::{Cell, Maze};

/// The parameters of a `shared` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Shared {
    /// The eye that sees the walls; the other sees the marks.
    pub walls: Eye,
    /// Cells in a row.
    pub columns: u32,
    /// Rows of cells.
    pub rows: u32,
    /// How many hazards.
    pub hazards: u32,
    /// The width of the walls.
    pub weight: Ramp<Mm>,
    /// Whether the route runs from right to left.
    pub left_handed: bool,
    /// How many variants of each level.
    pub variants: u32,
    /// Where it is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "shared",
    gated: true,
    strand: Strand::Check,
    doc: "A simple route in two parts, traced with a pencil: one eye sees the walls, the other its start, its goal and its \
          hazards; the outer edge is for both. Only under `[gate]` in `set.toml`.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::default(
            "walls",
            Takes::Choice(&["left", "right"]),
            r#""left""#,
            "The eye that sees the walls; the other eye sees start, goal and hazards.",
        ),
        Field::default("columns", Takes::Count { min: 3, max: 12 }, "7", "Cells in a row."),
        Field::default("rows", Takes::Count { min: 3, max: 8 }, "5", "Rows of cells."),
        Field::default(
            "hazards",
            Takes::Count { min: 0, max: 8 },
            "3",
            "How many hazards stand beside the route, in cells that it does not need.",
        ),
        Field::optional(
            "weight",
            Takes::Ramp(&Takes::Length(mm(0.5, 4.0))),
            "The width of the walls. Left out: 1.6 mm.",
        ),
        Field::default(
            "left_handed",
            Takes::Flag,
            "false",
            "Whether the route runs from right to left, so that a left hand does not cover what comes next.",
        ),
        Field::default(
            "variants",
            Takes::Count { min: 1, max: 9 },
            "1",
            "How many pages each level has: the same task with other draws.",
        ),
    ],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "shared"
title = "Way through the moorings"
walls = "left"
weight = { values = ["2 mm", "1.4 mm", "1 mm"] }
"#;

/// Room for the cells, mm: the art field less its edge.
const ROOM: Point = (172.0, 112.0);
/// The largest cell, mm.
const LARGEST: f64 = 26.0;
/// How much wider than the mean every other cell is, as a share: even walls would be stripes.
const UNEVEN: f64 = 0.13;
/// The width of a mark against its cell, and of its lines against the mark.
const MARK: f64 = 0.42;
const MARK_WEIGHT: f64 = 0.16;

impl Draws for Shared {
    fn levels(&self) -> Option<u32> {
        self.weight.levels()
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let walls = exercise.one_of(reader, "walls", &[Eye::Left, Eye::Right]);
    let (columns, rows): (Option<u32>, _) = (exercise.get(reader, "columns"), exercise.get(reader, "rows"));
    let hazards: Option<u32> = exercise.get(reader, "hazards");
    let weight = parts::ramp_or(reader, exercise, "weight", Mm(1.6));
    let left_handed = exercise.get(reader, "left_handed");
    let variants = exercise.get(reader, "variants");
    let (columns, rows, hazards) = (columns?, rows?, hazards?);
    // The route takes many of the cells of a small maze.
    if columns * rows < 5 * hazards {
        let message = format!("`{hazards}` hazards are too many for {columns} by {rows} cells");
        let problem = Diagnostic::error(codes::RANGE, exercise.place_of(reader, "hazards"), message)
            .with_label("too crowded")
            .with_help(format!("write at most `{}`, or more `columns` or `rows`", columns * rows / 5));
        reader.push(problem);
        return None;
    }
    Some(Body::Shared(Shared {
        walls: walls?,
        columns,
        rows,
        hazards,
        weight: weight?,
        left_handed: left_handed?,
        variants: variants?,
        place: exercise.place(),
    }))
}

impl Shared {
    fn maze(&self, rung: &Rung<'_>) -> Maze {
        let mut dice = Dice::new(&format!("{}/maze", rung.key));
        // At most a fifth of the cells are hazards: a route that leaves so many free comes soon.
        loop {
            let maze = Maze::new(&mut dice, self.columns, self.rows);
            if self.hazards as usize <= maze.cells().count() - maze.route().len() {
                return maze;
            }
        }
    }

    /// The mean side of a cell, mm.
    fn cell(&self) -> f64 {
        (ROOM.0 / uneven(f64::from(self.columns))).min(ROOM.1 / uneven(f64::from(self.rows))).min(LARGEST)
    }

    /// A place in cells from the upper left corner, as a point; turned round where the route runs from right to left.
    fn at(&self, x: f64, y: f64) -> Point {
        let cell = self.cell();
        let across = (uneven(x) - uneven(f64::from(self.columns)) / 2.0) * cell;
        (if self.left_handed { -across } else { across }, (uneven(y) - uneven(f64::from(self.rows)) / 2.0) * cell)
    }

    /// Half the width of so many cells, mm.
    fn far_end(&self, cells: u32) -> f64 {
        uneven(f64::from(cells)) / 2.0 * self.cell()
    }

    fn middle(&self, (column, row): Cell) -> Point {
        self.at(f64::from(column) + 0.5, f64::from(row) + 0.5)
    }

    fn scene(&self, rung: &Rung<'_>) -> Scene {
        let maze = self.maze(rung);
        let (walls_eye, marks_eye) = match self.walls {
            Eye::Left => (Eyes::Left, Eyes::Right),
            Eye::Right => (Eyes::Right, Eyes::Left),
        };
        let weight = self.weight.at(rung.level).0;
        let part = |id: String, eyes| Part::target(id, eyes, &Depth::Page, self.place);
        let size = self.cell() * MARK;
        let (half_width, half_height) = (self.far_end(self.columns), self.far_end(self.rows));
        let edge = parts::rectangle((0.0, 0.0), half_width, half_height, weight);
        let mark =
            |id: String, shape, at: Cell| part(id, marks_eye).shape(shape, self.middle(at), size, size * MARK_WEIGHT);
        let mut features = vec![part("outer-edge".to_owned(), Eyes::Both).role(Role::Reference).strokes(edge, weight)];
        features.push(part("walls".to_owned(), walls_eye).strokes(self.walls(&maze, weight), weight));
        features.push(mark("start".to_owned(), Shape::Ring, maze.start()));
        features.push(mark("goal".to_owned(), Shape::Star, maze.goal()));
        let hazards = self.hazards(&maze, rung);
        features.extend((1..).zip(hazards).map(|(n, at)| mark(format!("hazard-{n}"), Shape::Cross, at)));
        Scene { features }
    }

    /// The inner walls. Each is drawn a little longer than its cell, so that corners are full.
    fn walls(&self, maze: &Maze, weight: f64) -> Vec<(Point, Point)> {
        let past = weight / 2.0 / self.cell();
        let wall = |(from, to): (Cell, Cell)| {
            let (x0, y0, x1, y1) = (f64::from(from.0), f64::from(from.1), f64::from(to.0), f64::from(to.1));
            if from.0 == to.0 {
                (self.at(x0, y0 - past), self.at(x1, y1 + past))
            } else {
                (self.at(x0 - past, y0), self.at(x1 + past, y1))
            }
        };
        maze.walls().into_iter().map(wall).collect()
    }

    /// Cells beside the route, drawn by lot.
    fn hazards(&self, maze: &Maze, rung: &Rung<'_>) -> Vec<Cell> {
        let route = maze.route();
        let mut free: Vec<Cell> = maze.cells().filter(|cell| !route.contains(cell)).collect();
        Dice::new(&format!("{}/hazards", rung.key)).shuffle(&mut free);
        free.truncate(self.hazards as usize);
        free
    }

    fn words(&self, tongue: &Tongue) -> Words {
        // Who sees no marks has lost the eye of the marks.
        let (no_marks, no_walls) = match self.walls {
            Eye::Left => ("shared-right-out", "shared-left-out"),
            Eye::Right => ("shared-left-out", "shared-right-out"),
        };
        let rows =
            [("shared-walls", no_marks), ("shared-marks", no_walls), ("kinds-only-doubled", "gated-double-then")];
        let of_hazards = |id: &str| tongue.tell(id, &[("hazards", self.hazards.into())]);
        Words {
            goal: tongue.say("shared-goal"),
            setup: String::new(),
            steps: vec![
                format!("{} {}", tongue.say("kinds-as-told"), tongue.say("shared-pencil")),
                tongue.say("shared-look"),
                of_hazards("shared-draw"),
                tongue.say("shared-fade"),
                tongue.say("shared-rest"),
            ],
            see: of_hazards("shared-see"),
            one_part: words::say_rows(&rows, tongue),
        }
    }
}

/// Where a place counted in cells lies when every other border between cells is moved on by [`UNEVEN`].
fn uneven(place: f64) -> f64 {
    let border = |k: f64| if k % 2.0 == 0.0 { k } else { k + UNEVEN };
    let below = place.floor();
    border(below) + (place - below) * (border(below + 1.0) - border(below))
}

#[cfg(test)]
mod tests;
