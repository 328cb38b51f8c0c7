//! `trail`: a path whose depth changes all along it, followed by eye from bead to bead.

mod track;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Scene, Shape, Size, Strand, Vertex};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, deg, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, Seconds};

use crate::exercise::pace;
use crate::exercise::ramp::{Blend, Ramp};
use crate::exercise::target::REACH;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use track::Track;

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
    gated: false,
    strand: Strand::Smooth,
    doc: "A path whose depth changes all along it is followed by eye from bead to bead.",
    tables: &[&EXERCISE, &TRAIL],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[Field::default(
        "rounds",
        Takes::Count { min: 1, max: 50 },
        "3",
        "How many times to follow the path, for the words.",
    )],
]);

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
            "How many beads sit on the path, its ends included: 0 for none, else at least 2. A polyline has a bead at \
             each of its points if there are enough.",
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

impl Draws for Trail {
    fn levels(&self) -> Option<u32> {
        self.depths.iter().find_map(Ramp::levels)
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds(f64::from(self.rounds) * 2.0 * pace::ALONG))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.tongue))
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

impl Trail {
    /// The art of one level: the line, then its beads from start to end.
    fn scene(&self, level: u32) -> Scene {
        let track = Track::of(&self.path);
        let depths = self.depths_along(&track, level);
        let count = track.steps();
        let stations: Vec<f64> = match &self.path {
            // Straight pieces need their corners only, and the places where the depth turns.
            TrailPath::Polyline { .. } | TrailPath::Line { .. } => track.stations_with(&depths),
            // A closed line joins its last point to its first by itself.
            _ if self.closed() => (0..count).map(|i| f64::from(i) / f64::from(count)).collect(),
            _ => (0..=count).map(|i| f64::from(i) / f64::from(count)).collect(),
        };
        let vertices = stations.into_iter().map(|share| vertex(&track, &depths, share)).collect();
        let line = Feature {
            id: "trail".to_owned(),
            role: Role::Trail,
            eyes: Eyes::Both,
            form: Form::Path { vertices, closed: self.closed(), smooth: self.smooth(), weight: self.weight },
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        };
        let mut features = vec![line];
        let shares = self.bead_shares(&track);
        features.extend((0..).zip(&shares).map(|(i, &share): (u32, _)| self.bead(i, vertex(&track, &depths, share))));
        Scene { features }
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let (start, along) = if self.beads == 0 {
            ("trail-start-line", "trail-along-line")
        } else {
            ("trail-start-bead", "trail-along-beads")
        };
        let back = if self.closed() { "trail-back-round" } else { "trail-back" };
        let watch = self.watch && 0 < self.beads;
        Words {
            goal: tongue.say("trail-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(start),
                tongue.say(along),
                tongue.tell("trail-check", &[words::marks(watch)]),
                tongue.tell(back, &[words::times(self.rounds, tongue)]),
            ],
            see: words::with_marks(tongue.say("trail-see"), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }

    fn closed(&self) -> bool {
        matches!(self.path, TrailPath::Loop { .. })
    }

    fn smooth(&self) -> bool {
        matches!(self.path, TrailPath::Wave { .. } | TrailPath::Spiral { .. } | TrailPath::Loop { .. })
    }

    /// The depths of a level with their share of the length, from 0 to 1.
    fn depths_along(&self, track: &Track, level: u32) -> Vec<(f64, Depth)> {
        let mut depths: Vec<Depth> = self.depths.iter().map(|depth| depth.at(level)).collect();
        if self.closed() {
            depths.push(depths[0].clone());
        }
        let shares = match &self.path {
            TrailPath::Polyline { points } if points.len() == depths.len() => track.corner_shares(),
            _ => (0..depths.len()).map(|i| i as f64 / (depths.len() - 1) as f64).collect(),
        };
        shares.into_iter().zip(depths).collect()
    }

    /// Where the beads sit, as shares of the length: evenly spaced, on a loop without meeting at the end. A polyline with
    /// at least as many beads as points has one at each point, and the others evenly on its longest pieces.
    fn bead_shares(&self, track: &Track) -> Vec<f64> {
        let corners = track.corner_shares();
        if matches!(self.path, TrailPath::Polyline { .. }) && corners.len() <= self.beads as usize {
            return spread(&corners, self.beads as usize);
        }
        let steps = if self.closed() { self.beads } else { self.beads.saturating_sub(1) };
        (0..self.beads).map(|i| f64::from(i) / f64::from(steps)).collect()
    }

    /// A bead, counted from 0.
    fn bead(&self, index: u32, Vertex { at, depth }: Vertex) -> Feature {
        let is_end = index == 0 || (index == self.beads - 1 && !self.closed());
        Feature {
            id: format!("bead-{}", index + 1),
            role: Role::Bead,
            eyes: Eyes::Both,
            form: Form::Shape { shape: Shape::Disc, at, size: self.bead_size, weight: self.weight, depth },
            scaling: Scaling::ConstantAngle,
            companions: Companions { watch: self.watch && is_end, ..Companions::default() },
            solid: true,
            place: Some(self.place),
        }
    }
}

/// `count` shares: the corners, and the rest one by one where the gap between neighbours is widest.
fn spread(corners: &[f64], count: usize) -> Vec<f64> {
    let mut parts = vec![1_u32; corners.len() - 1];
    let step = |i: usize, parts: u32| (corners[i + 1] - corners[i]) / f64::from(parts);
    for _ in corners.len()..count {
        let widest = (0..parts.len()).max_by(|&a, &b| step(a, parts[a]).total_cmp(&step(b, parts[b])));
        widest.into_iter().for_each(|i| parts[i] += 1);
    }
    let pieces = parts.iter().enumerate();
    let mut shares: Vec<f64> =
        pieces.flat_map(|(i, &n)| (0..n).map(move |j| corners[i] + step(i, n) * f64::from(j))).collect();
    shares.push(1.0);
    shares
}

/// The point of a trail at a share of its length.
fn vertex(track: &Track, depths: &[(f64, Depth)], share: f64) -> Vertex {
    let (x, y) = track.at(share);
    let next = depths.iter().position(|&(s, _)| share <= s).unwrap_or(depths.len() - 1).max(1);
    let ((from_share, from), (to_share, to)) = (&depths[next - 1], &depths[next]);
    let depth = from.blend(to, (share - from_share) / (to_share - from_share));
    Vertex { at: At { x: Mm(x), y: Mm(y) }, depth }
}

#[cfg(test)]
mod tests {
    use crate::diagnostics::FileId;
    use crate::scene::Side;
    use crate::units::PrismDioptre;

    use super::*;

    fn at(x: f64, y: f64) -> At {
        At { x: Mm(x), y: Mm(y) }
    }

    fn trail(path: TrailPath, beads: u32) -> Trail {
        let pd = |amount, side| Ramp::Same(Depth::Demand(PrismDioptre(amount), side));
        Trail {
            path,
            depths: vec![pd(2.0, Side::Toward), pd(1.0, Side::Away)],
            weight: Mm(1.6),
            beads,
            bead_size: Size::Length(Mm(6.0)),
            watch: true,
            rounds: 3,
            place: Place { file: FileId(0), start: 0, end: 0 },
        }
    }

    fn beads(trail: &Trail) -> Vec<(f64, f64)> {
        let features = trail.scene(1).features;
        let places = features.iter().filter(|f| f.role == Role::Bead).map(|f| match &f.form {
            Form::Shape { at, .. } => (at.x.0, at.y.0),
            _ => unreachable!(),
        });
        places.collect()
    }

    #[test]
    fn beads_of_a_line_are_even_and_reach_both_ends() {
        let line = trail(TrailPath::Line { from: at(-40.0, 10.0), to: at(40.0, -10.0) }, 5);
        assert_eq!(beads(&line), [(-40.0, 10.0), (-20.0, 5.0), (0.0, 0.0), (20.0, -5.0), (40.0, -10.0)]);
    }

    #[test]
    fn a_polyline_has_a_bead_at_each_point() {
        let points = vec![at(-50.0, 0.0), at(-20.0, 0.0), at(-20.0, 40.0), at(50.0, 40.0)];
        let beads = beads(&trail(TrailPath::Polyline { points: points.clone() }, 6));
        assert_eq!(beads.len(), 6);
        for point in points {
            let near = |&(x, y): &(f64, f64)| libm::hypot(x - point.x.0, y - point.y.0) < 1e-9;
            assert!(beads.iter().any(near), "{point:?} in {beads:?}");
        }
    }

    #[test]
    fn beads_of_a_loop_do_not_meet() {
        let beads = beads(&trail(TrailPath::Loop { width: Mm(100.0), height: Mm(60.0) }, 8));
        assert_eq!(beads.len(), 8);
        let gaps = beads.iter().zip(beads.iter().cycle().skip(1)).map(|(a, b)| libm::hypot(a.0 - b.0, a.1 - b.1));
        assert!(gaps.fold(f64::INFINITY, f64::min) > 20.0);
    }

    #[test]
    fn depth_runs_from_the_first_to_the_last_and_a_loop_returns() {
        let features = trail(TrailPath::Spiral { turns: 2, outer: Mm(50.0), inner: Mm(10.0) }, 0).scene(1).features;
        let Form::Path { vertices, closed: false, smooth: true, .. } = &features[0].form else { unreachable!() };
        assert_eq!(vertices[0].depth, Depth::Demand(PrismDioptre(2.0), Side::Toward));
        assert_eq!(vertices[vertices.len() - 1].depth, Depth::Demand(PrismDioptre(1.0), Side::Away));
        let looped = trail(TrailPath::Loop { width: Mm(100.0), height: Mm(60.0) }, 0).scene(1).features;
        let Form::Path { vertices, closed: true, .. } = &looped[0].form else { unreachable!() };
        let middle = &vertices[vertices.len() / 2].depth;
        let away = Depth::Demand(PrismDioptre(1.0), Side::Away);
        let late =
            matches!(middle, Depth::Between(ends, t) if (ends.1 == away && 0.98 < *t) || (ends.0 == away && *t < 0.02));
        assert!(*middle == away || late, "{middle:?}");
    }
}
