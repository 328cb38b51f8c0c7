//! `trail`: a path whose depth changes all along it, followed by eye from bead to bead.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::scene::{At, Depth, Size};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, deg, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use super::ramp::Ramp;
use super::target::REACH;
use super::{Body, COMMON, Kind};

/// The parameters of a `trail` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Trail {
    /// The path on the page.
    pub path: TrailPath,
    /// Depths along the path, at least two: spread evenly by length from its start to its end; on a polyline with as
    /// many depths as points, one at each point. A loop returns to its first depth by itself.
    pub depths: Vec<Ramp<Depth>>,
    /// Width of the line.
    pub weight: Mm,
    /// How many beads sit on the path, its ends included; 0 for none, else at least 2.
    pub beads: u32,
    /// The size of a bead.
    pub bead_size: Size,
    /// Whether the beads at the two ends carry watch marks.
    pub watch: bool,
    /// How many times to follow the path, for the words.
    pub rounds: u32,
    /// Where the `[trail]` table is written.
    pub place: Place,
}

/// The path of a trail, in mm from the middle of the art field.
#[derive(Debug, Clone, PartialEq)]
pub enum TrailPath {
    /// A straight line at any angle.
    Line {
        /// Its start.
        from: At,
        /// Its end.
        to: At,
    },
    /// A wave about a straight line.
    Wave {
        /// Its start.
        from: At,
        /// Its end.
        to: At,
        /// How many whole waves.
        waves: u32,
        /// From crest to trough.
        height: Mm,
    },
    /// A spiral about the middle of the field, from its outer to its inner end.
    Spiral {
        /// How many turns.
        turns: u32,
        /// Radius at the start.
        outer: Mm,
        /// Radius at the end.
        inner: Mm,
    },
    /// An oval about the middle of the field, clockwise from its top, back to its start.
    Loop {
        /// Its width.
        width: Mm,
        /// Its height.
        height: Mm,
    },
    /// Straight pieces from point to point.
    Polyline {
        /// At least two points.
        points: Vec<At>,
    },
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "trail",
    doc: "A path whose depth changes all along it is followed by eye from bead to bead.",
    tables: &[&EXERCISE, &TRAIL],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = TableSpec {
    name: "exercise",
    form: TableForm::Single,
    groups: &[
        COMMON,
        &[Field::default(
            "rounds",
            Takes::Count { min: 1, max: 50 },
            "3",
            "How many times to follow the path, for the words.",
        )],
    ],
    doc: "What kind of exercise it is, and its words.",
};

const FORMS: &[&str] = &["line", "wave", "spiral", "loop", "polyline"];

const TRAIL: TableSpec = TableSpec {
    name: "trail",
    form: TableForm::Single,
    groups: &[&[
        Field::required("form", Takes::Choice(FORMS), "The path. Each form has its own keys."),
        Field::required("from", Takes::Point(REACH), "Its start.").only(&["line", "wave"]),
        Field::required("to", Takes::Point(REACH), "Its end.").only(&["line", "wave"]),
        Field::required("waves", Takes::Count { min: 1, max: 12 }, "How many whole waves.").only(&["wave"]),
        Field::required("height", Takes::Length(mm(2.0, 160.0)), "From crest to trough, or of the oval.")
            .only(&["wave", "loop"]),
        Field::required("turns", Takes::Count { min: 1, max: 8 }, "How many turns about the middle of the art field.")
            .only(&["spiral"]),
        Field::required("outer", Takes::Length(mm(2.0, 160.0)), "Radius at its start.").only(&["spiral"]),
        Field::required("inner", Takes::Length(mm(0.0, 160.0)), "Radius at its end, less than `outer`.")
            .only(&["spiral"]),
        Field::required(
            "width",
            Takes::Length(mm(2.0, 180.0)),
            "Of the oval about the middle of the art field, clockwise from its top.",
        )
        .only(&["loop"]),
        Field::required(
            "points",
            Takes::List { of: &Takes::Point(REACH), min: 2, max: 40 },
            "Straight pieces from point to point.",
        )
        .only(&["polyline"]),
        Field::required(
            "depths",
            Takes::List { of: &Takes::Ramp(&Takes::Depth), min: 2, max: 40 },
            "Depths along the path, spread evenly by length from start to end. On a polyline with as many depths as \
             points: one at each point. A loop returns to its first depth by itself.",
        ),
        Field::default("weight", Takes::Length(mm(0.2, 10.0)), r#""1.6 mm""#, "Width of the line."),
        Field::default(
            "beads",
            Takes::Count { min: 0, max: 60 },
            "9",
            "How many beads sit on the path, its ends included: 0 for none, else at least 2.",
        ),
        Field::default(
            "bead_size",
            Takes::Size { length: mm(1.0, 20.0), angle: deg(0.1, 3.0) },
            r#""6 mm""#,
            "Size of a bead.",
        ),
        Field::default("marks", Takes::Flag, "true", "Whether the beads at the ends carry watch marks."),
    ]],
    doc: "The path, its depths and its beads.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "trail"
title = "The heaving line"

[trail]
form = "wave"
from = ["-75 mm", "0 mm"]
to = ["75 mm", "0 mm"]
waves = 2
height = "50 mm"
depths = ["1 pd away", "page", "3 pd toward"]
"#;

impl Trail {
    /// How many levels its ramps have; `None` without a ramp.
    pub fn levels(&self) -> Option<u32> {
        self.depths.iter().find_map(Ramp::levels)
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let rounds = exercise.get(reader, "rounds");
    let mut table = document.table(reader, &TRAIL)?;
    table.check_keys(reader);
    let path = read_path(reader, &table);
    let depths = table.get(reader, "depths");
    let weight = table.get(reader, "weight");
    let beads = read_beads(reader, &table);
    let bead_size = table.get(reader, "bead_size");
    let watch = table.get(reader, "marks");
    let place = table.place_of(reader, "depths");
    Some(Body::Trail(Trail {
        path: path?,
        depths: depths?,
        weight: weight?,
        beads: beads?,
        bead_size: bead_size?,
        watch: watch?,
        rounds: rounds?,
        place,
    }))
}

fn read_beads(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<u32> {
    let beads = table.get(reader, "beads")?;
    if beads == 1 {
        let message = "`beads` is `1`; beads sit at both ends, so there are at least 2, or 0 for none";
        let problem = Diagnostic::error(codes::RANGE, table.place_of(reader, "beads"), message)
            .with_label("0, or at least 2")
            .with_help("write 0, or a number from 2 to 60");
        reader.push(problem);
        return None;
    }
    Some(beads)
}

fn read_path(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<TrailPath> {
    let form = table.one_of(reader, "form", FORMS)?;
    table.check_form(reader, form);
    match form {
        "line" => {
            let (from, to) = (table.get(reader, "from"), table.get(reader, "to"));
            let (from, to) = apart(reader, table, from?, to?)?;
            Some(TrailPath::Line { from, to })
        }
        "wave" => {
            let (from, to) = (table.get(reader, "from"), table.get(reader, "to"));
            let (waves, height) = (table.get(reader, "waves"), table.get(reader, "height"));
            let (from, to) = apart(reader, table, from?, to?)?;
            Some(TrailPath::Wave { from, to, waves: waves?, height: height? })
        }
        "spiral" => read_spiral(reader, table),
        "loop" => {
            let (width, height) = (table.get(reader, "width"), table.get(reader, "height"));
            Some(TrailPath::Loop { width: width?, height: height? })
        }
        _ => {
            let points: Vec<Placed<At>> = table.get(reader, "points")?;
            let twice = points.iter().zip(points.iter().skip(1)).find(|(a, b)| a.value == b.value);
            if let Some((_, &Placed { value: twice, place })) = twice {
                reader.push(same_place(
                    place,
                    format!("`points` lists ({}, {}) mm twice in a row", twice.x.0, twice.y.0),
                ));
                return None;
            }
            Some(TrailPath::Polyline { points: points.into_iter().map(|p| p.value).collect() })
        }
    }
}

fn read_spiral(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<TrailPath> {
    let turns = table.get(reader, "turns");
    let (outer, inner): (Option<Mm>, Option<Mm>) = (table.get(reader, "outer"), table.get(reader, "inner"));
    let (outer, inner) = (outer?, inner?);
    if outer <= inner {
        let message = format!("`inner` is {} mm, not less than `outer`, {} mm", inner.0, outer.0);
        let problem = Diagnostic::error(codes::RANGE, table.place_of(reader, "inner"), message)
            .with_label(format!("limit {} mm", outer.0))
            .with_help("a spiral runs inward: lower `inner` or raise `outer`");
        reader.push(problem);
        return None;
    }
    Some(TrailPath::Spiral { turns: turns?, outer, inner })
}

/// The ends of a line, which must not be the same place.
fn apart(reader: &mut Reader<'_>, table: &Table<'_>, from: At, to: At) -> Option<(At, At)> {
    if from == to {
        reader.push(same_place(table.place_of(reader, "to"), "`to` is the same place as `from`".to_owned()));
        return None;
    }
    Some((from, to))
}

fn same_place(place: Place, message: String) -> Diagnostic {
    Diagnostic::error(codes::RANGE, place, message)
        .with_label("no way between them")
        .with_help("move one of the two places")
}
