//! `halves`: two halves make one. The parts of one outline, some for the left eye and some for the right, about a dot
//! for both.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{Depth, Eyes, Feature, Scene, Shape, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, plain};

use crate::exercise::parts::{self, Part, Point};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `halves` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Halves {
    /// The outline that is parted.
    pub shape: Outline,
    /// Its width.
    pub size: Ramp<Mm>,
    /// Clear space between neighbouring parts.
    pub gap: Ramp<Mm>,
    /// How many parts, an even number.
    pub parts: u32,
    /// Who gets which.
    pub deal: Deal,
    /// How deep everything stands.
    pub depth: Ramp<Depth>,
    /// Where it is written.
    pub place: Place,
}

/// The outline of a [`Halves`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outline {
    /// A circle.
    Ring,
    /// A square on a side.
    Square,
    /// A square on a corner.
    Diamond,
}

/// Who gets which part of a [`Halves`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Deal {
    /// The left eye those on the left, the right eye those on the right.
    Sides,
    /// By turns all the way round.
    Turns,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "halves",
    gated: false,
    strand: Strand::Check,
    doc: "A brief check: the parts of one outline, some for the left eye and some for the right, make a whole about a \
          dot for both.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::default(
            "shape",
            Takes::Choice(&["ring", "square", "diamond"]),
            r#""ring""#,
            "The outline that is parted.",
        ),
        Field::required("size", Takes::Ramp(&Takes::Length(mm(14.0, 100.0))), "Its width. At 40 cm 7 mm are a degree."),
        Field::required(
            "gap",
            Takes::Ramp(&Takes::Length(mm(0.0, 40.0))),
            "Clear space between neighbouring parts, along the outline.",
        ),
        Field::default("parts", PARTS, "2", "How many parts; an even number."),
        Field::default(
            "deal",
            Takes::Choice(&["sides", "turns"]),
            r#""sides""#,
            "`sides`: the left eye gets the parts on the left, the right eye those on the right. `turns`: they get \
                 the parts by turns.",
        ),
        parts::DEPTH,
    ],
]);

const PARTS: Takes = Takes::Count { min: 2, max: 16 };

const EXAMPLE: &str = r#"[exercise]
kind = "halves"
title = "The life ring in two halves"
size = { from = "84 mm", to = "28 mm", levels = 3 }
gap = "6 mm"
parts = 2
"#;

/// Between the points of an arc, mm at most.
const STEP: f64 = 2.0;
/// The shortest part that is drawn, mm (design choice: as long as it is wide on most pages).
const SHORTEST: f64 = 2.0;

impl Draws for Halves {
    fn levels(&self) -> Option<u32> {
        self.size.levels().or(self.gap.levels()).or(self.depth.levels())
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let shape = exercise.one_of(reader, "shape", &[Outline::Ring, Outline::Square, Outline::Diamond]);
    let (size, gap) = (exercise.get(reader, "size"), exercise.get(reader, "gap"));
    let parts = read_parts(reader, exercise);
    let deal = exercise.one_of(reader, "deal", &[Deal::Sides, Deal::Turns]);
    let depth = parts::ramp_or(reader, exercise, "depth", Depth::Page);
    let place = exercise.place();
    let halves = Halves { shape: shape?, size: size?, gap: gap?, parts: parts?, deal: deal?, depth: depth?, place };
    check_gap(reader, exercise, &halves).then_some(Body::Halves(halves))
}

/// An even number of parts.
fn read_parts(reader: &mut Reader<'_>, exercise: &Table<'_>) -> Option<u32> {
    let parts: u32 = exercise.get(reader, "parts")?;
    if parts.is_multiple_of(2) {
        return Some(parts);
    }
    let message = format!("`parts` is `{parts}`: each eye gets as many, so it takes an even number");
    let problem = Diagnostic::error(codes::RANGE, exercise.place_of(reader, "parts"), message)
        .with_label("odd")
        .with_help(format!("write `{}` or `{}`", parts - 1, parts + 1));
    reader.push(problem);
    None
}

/// Pushes the first level on which the gaps leave too little of the parts.
fn check_gap(reader: &mut Reader<'_>, exercise: &Table<'_>, halves: &Halves) -> bool {
    for level in 1..=halves.levels().unwrap_or(1) {
        let left = halves.part_length(level);
        if left < SHORTEST {
            let message = format!(
                "on level {level} the gaps leave `{}` mm of each part, limit `{}` mm",
                plain(left.max(0.0), 2),
                plain(SHORTEST, 2)
            );
            let problem = Diagnostic::error(codes::RANGE, exercise.place_of(reader, "gap"), message)
                .with_label("too wide for so many parts")
                .with_help("write a smaller `gap`, fewer `parts` or a larger `size`");
            reader.push(problem);
            return false;
        }
    }
    true
}

impl Halves {
    fn weight(size: f64) -> f64 {
        (size / 22.0).max(1.2)
    }

    /// Length of the whole outline, mm.
    fn length(&self, size: f64) -> f64 {
        match self.shape {
            Outline::Ring => std::f64::consts::PI * size,
            Outline::Square => 4.0 * size,
            Outline::Diamond => 4.0 * size * std::f64::consts::FRAC_1_SQRT_2,
        }
    }

    /// Length of the line through the middle of a part; the round ends of lines come on top of it. mm.
    fn part_length(&self, level: u32) -> f64 {
        let size = self.size.at(level).0;
        self.length(size - Self::weight(size)) / f64::from(self.parts) - self.gap.at(level).0 - Self::weight(size)
    }

    fn scene(&self, level: u32) -> Scene {
        let (size, depth) = (self.size.at(level).0, self.depth.at(level));
        let dot = (size / 9.0).max(2.5);
        let middle = Part::target("dot", Eyes::Both, &depth, self.place).shape(Shape::Disc, (0.0, 0.0), dot, dot);
        let parts = (0..self.parts).map(|index| self.part(index, level, &depth));
        Scene { features: std::iter::once(middle).chain(parts).collect() }
    }

    /// A part, counted clockwise from the top.
    fn part(&self, index: u32, level: u32, depth: &Depth) -> Feature {
        let size = self.size.at(level).0;
        let weight = Self::weight(size);
        let across = size - weight;
        let (each, half) = (1.0 / f64::from(self.parts), self.part_length(level) / self.length(across) / 2.0);
        let middle = (f64::from(index) + 0.5) * each;
        let is_right = match self.deal {
            Deal::Sides => middle < 0.5,
            Deal::Turns => index.is_multiple_of(2),
        };
        let eyes = if is_right { Eyes::Right } else { Eyes::Left };
        let points: Vec<Point> =
            self.shares(middle - half, middle + half, across).into_iter().map(|share| self.at(share, across)).collect();
        let name = if self.shape == Outline::Ring { "arc" } else { "part" };
        Part::target(format!("{name}-{}", index + 1), eyes, depth, self.place).line(
            &points,
            self.shape == Outline::Ring,
            weight,
        )
    }

    /// Where the line of a part has its points: close together on a ring, at the ends and corners elsewhere.
    fn shares(&self, from: f64, to: f64, across: f64) -> Vec<f64> {
        let inner: Vec<f64> = match self.shape {
            Outline::Ring => {
                let steps = libm::ceil((to - from) * self.length(across) / STEP).max(1.0);
                let within = |share: f64| from + (to - from) * share / steps;
                (1..).map(f64::from).take_while(|&i| i < steps).map(within).collect()
            }
            Outline::Square => [0.125, 0.375, 0.625, 0.875].to_vec(),
            Outline::Diamond => [0.25, 0.5, 0.75].to_vec(),
        };
        let inner = inner.into_iter().filter(|share| from + 1e-9 < *share && *share < to - 1e-9);
        std::iter::once(from).chain(inner).chain([to]).collect()
    }

    /// The point at a share of the outline, clockwise from the top.
    fn at(&self, share: f64, across: f64) -> Point {
        let half = across / 2.0;
        let corners: &[Point] = match self.shape {
            Outline::Ring => {
                let turn = std::f64::consts::TAU * share;
                return (half * libm::sin(turn), -half * libm::cos(turn));
            }
            // From the middle of the upper side, in eighths.
            Outline::Square => {
                &[(0.0, -1.0), (1.0, -1.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0), (-1.0, 1.0), (-1.0, 0.0), (-1.0, -1.0)]
            }
            Outline::Diamond => &[(0.0, -1.0), (1.0, 0.0), (0.0, 1.0), (-1.0, 0.0)],
        };
        let count = corners.len();
        let along = share * count as f64;
        let whole = libm::floor(along);
        let first = (0..count).rfind(|&i| i as f64 <= whole).unwrap_or(0);
        let (a, b, t) = (corners[first], corners[(first + 1) % count], along - first as f64);
        (half * (a.0 + (b.0 - a.0) * t), half * (a.1 + (b.1 - a.1) * t))
    }

    fn words(&self, tongue: &Tongue) -> Words {
        let shape = tongue.noun(match self.shape {
            Outline::Ring => "shape-ring",
            Outline::Square => "shape-square",
            Outline::Diamond => "shape-diamond",
        });
        let shape = [("shape", (&shape).into())];
        let deal = [("deal", if self.deal == Deal::Sides { "sides" } else { "turns" }.into())];
        Words {
            goal: tongue.tell("halves-goal", &shape),
            setup: String::new(),
            steps: vec![
                tongue.say("halves-dot"),
                tongue.tell("halves-cover", &shape),
                tongue.tell("halves-close", &shape),
                tongue.say("kinds-watch-ten"),
            ],
            see: tongue.tell("halves-see", &shape),
            one_part: vec![
                (tongue.tell("halves-only-left", &deal), tongue.say("kinds-right-out-look")),
                (tongue.tell("halves-only-right", &deal), tongue.say("kinds-left-out-look")),
                (tongue.say("halves-only-apart"), tongue.say("halves-apart")),
            ],
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::diagnostics::Sources;

    use super::*;

    fn place() -> Place {
        Place::start_of(Sources::default().add("a.toml", ""))
    }

    fn halves(shape: Outline, parts: u32, deal: Deal) -> Halves {
        let (size, gap, depth) = (Ramp::Same(Mm(70.0)), Ramp::Same(Mm(6.0)), Ramp::Same(Depth::Page));
        Halves { shape, size, gap, parts, deal, depth, place: place() }
    }

    fn parts(halves: &Halves) -> Vec<(Eyes, Vec<Point>)> {
        let points = |f: &Feature| match &f.form {
            crate::scene::Form::Path { vertices, .. } => {
                Some((f.eyes, vertices.iter().map(|v| (v.at.x.0, v.at.y.0)).collect()))
            }
            _ => None,
        };
        halves.scene(1).features.iter().filter_map(points).collect()
    }

    #[test]
    fn the_left_eye_has_the_left_half_and_the_right_eye_the_right_half() {
        for shape in [Outline::Ring, Outline::Square, Outline::Diamond] {
            for count in [2, 6] {
                for (eyes, points) in parts(&halves(shape, count, Deal::Sides)) {
                    let side = if eyes == Eyes::Left { -1.0 } else { 1.0 };
                    assert!(points.iter().all(|p| 0.0 < side * p.0), "{shape:?} {count} {eyes:?}");
                }
            }
        }
    }

    #[test]
    fn parts_lie_on_the_outline_with_the_gap_between_them() {
        let ring = halves(Outline::Ring, 4, Deal::Turns);
        let across = 70.0 - Halves::weight(70.0);
        let all = parts(&ring);
        assert_eq!(
            all.iter().map(|(eyes, _)| *eyes).collect::<Vec<_>>(),
            [Eyes::Right, Eyes::Left, Eyes::Right, Eyes::Left]
        );
        for (index, (_, points)) in all.iter().enumerate() {
            assert!(points.iter().all(|p| (libm::hypot(p.0, p.1) - across / 2.0).abs() < 1e-9));
            // Along the circle from the end of this part to the start of the next: the gap and a round end of each.
            let (end, start) = (points[points.len() - 1], all[(index + 1) % 4].1[0]);
            let chord = libm::hypot(end.0 - start.0, end.1 - start.1);
            let along = across * libm::asin(chord / across);
            assert!((along - 6.0 - Halves::weight(70.0)).abs() < 1e-9, "{along}");
        }
        for shape in [Outline::Square, Outline::Diamond] {
            for (_, points) in parts(&halves(shape, 8, Deal::Turns)) {
                let off = |p: &Point| match shape {
                    Outline::Square => p.0.abs().max(p.1.abs()),
                    _ => p.0.abs() + p.1.abs(),
                };
                assert!(points.iter().all(|p| (off(p) - across / 2.0).abs() < 1e-9), "{shape:?} {points:?}");
            }
        }
    }
}
