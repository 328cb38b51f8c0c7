//! Shapes as the spec reference describes them, drawn anew from school geometry and apart from `src/outline`; the
//! samples along an outline at which its edge is looked for; and the areas that a feature may touch.

/// A shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shape {
    /// Ring or disc.
    Round,
    Square,
    /// A square on a corner.
    Diamond,
    /// A regular five-pointed star, one point up.
    Star,
    /// Two bars.
    Cross,
    /// Equal sides, one point up; small and solid, it is the wedge.
    Triangle,
    /// A rectangle.
    Bar,
    /// Four corner brackets.
    Brackets,
}

/// A place on an outline, about the middle of its box, with the direction that leads out of the shape.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sample {
    pub(super) at: [f64; 2],
    pub(super) normal: [f64; 2],
}

/// Sides of a circle where it is an area to keep away from: with a radius of 30 mm they lie within 0.02 mm of it.
const SIDES: usize = 90;
/// From sample to sample along a side, mm.
const STEP: f64 = 0.4;
/// From a corner to the nearest sample, mm: the edge is looked for 0.35 mm deep, and in the point of a star, 36 degrees
/// wide, the shape is that deep from 0.48 mm on.
const CORNER: f64 = 0.8;
/// How much of the sides of a lock frame is looked at, from each corner, mm: its arms are longer.
const ARM: f64 = 3.0;

type Polygon = Vec<[f64; 2]>;

impl Shape {
    /// The outer outlines, about the middle of the box of this size. `weight` is the width of lines.
    pub(super) fn outlines(self, [w, h]: [f64; 2], weight: f64) -> Vec<Polygon> {
        let (x, y) = (w / 2.0, h / 2.0);
        match self {
            Shape::Round => vec![around(SIDES, |_| 1.0).iter().map(|p| [p[0] * x, p[1] * y]).collect()],
            Shape::Square | Shape::Bar => vec![vec![[-x, -y], [x, -y], [x, y], [-x, y]]],
            Shape::Diamond => vec![vec![[0.0, -y], [x, 0.0], [0.0, y], [-x, 0.0]]],
            Shape::Triangle => vec![vec![[0.0, -y], [x, y], [-x, y]]],
            Shape::Star => vec![into_box(&star(), [w, h])],
            Shape::Cross => {
                let t = weight / 2.0;
                let quarter = [[t, -y], [t, -t], [x, -t]];
                let turn = |sx: f64, sy: f64| quarter.map(|[a, b]| [sx * a, sy * b]);
                let back = |mut corners: [[f64; 2]; 3]| {
                    corners.reverse();
                    corners
                };
                vec![[turn(1.0, 1.0), back(turn(1.0, -1.0)), turn(-1.0, -1.0), back(turn(-1.0, 1.0))].concat()]
            }
            Shape::Brackets => {
                // For masks alone: arms a little longer than they are drawn.
                let arm = 0.25 * w.min(h);
                let corner = [[0.0, 0.0], [arm, 0.0], [arm, weight], [weight, weight], [weight, arm], [0.0, arm]];
                let signs = [(1.0, 1.0), (-1.0, 1.0), (-1.0, -1.0), (1.0, -1.0)];
                signs.map(|(sx, sy)| corner.map(|[a, b]| [sx * (x - a), sy * (y - b)]).to_vec()).to_vec()
            }
        }
    }

    /// Where to look for the edge.
    pub(super) fn samples(self, size: [f64; 2], weight: f64) -> Vec<Sample> {
        if self == Shape::Round {
            return circle(size[0] / 2.0);
        }
        let reach = if self == Shape::Brackets { ARM } else { f64::INFINITY };
        // The outer sides of the brackets are those of their box.
        let sides = if self == Shape::Brackets { Shape::Square } else { self };
        let mut samples = Vec::new();
        for outline in sides.outlines(size, weight) {
            for (i, &from) in outline.iter().enumerate() {
                along(from, outline[(i + 1) % outline.len()], reach, &mut samples);
            }
        }
        samples
    }
}

/// Samples all round a circle.
fn circle(radius: f64) -> Vec<Sample> {
    let count = (std::f64::consts::TAU * radius / STEP).ceil() as usize;
    let directions = around(count, |_| 1.0).into_iter();
    directions.map(|normal| Sample { at: normal.map(|n| n * radius), normal }).collect()
}

/// Samples on the side of an outline that runs clockwise (y down), not nearer to its ends than a corner needs and not
/// farther from them than `reach`.
fn along([x0, y0]: [f64; 2], [x1, y1]: [f64; 2], reach: f64, samples: &mut Vec<Sample>) {
    let (dx, dy) = (x1 - x0, y1 - y0);
    let length = dx.hypot(dy);
    let clear = CORNER.min(length / 4.0);
    let count = ((length - 2.0 * clear) / STEP).floor().max(0.0);
    for i in 0..=count as usize {
        let from_start = if count == 0.0 { length / 2.0 } else { clear + (length - 2.0 * clear) * i as f64 / count };
        if from_start <= reach || length - from_start <= reach {
            let t = from_start / length;
            samples.push(Sample { at: [x0 + dx * t, y0 + dy * t], normal: [dy / length, -dx / length] });
        }
    }
}

/// Corners clockwise from the top, at a radius that depends on the corner.
fn around(count: usize, radius: impl Fn(usize) -> f64) -> Polygon {
    let corner = |i: usize| {
        let angle = (360.0 * i as f64 / count as f64).to_radians();
        [radius(i) * angle.sin(), -radius(i) * angle.cos()]
    };
    (0..count).map(corner).collect()
}

/// A pentagram: its inner corners lie where the lines from point to second next point cross, at the share
/// (3 - √5) / 2 of the outer radius.
fn star() -> Polygon {
    around(10, |i| if i % 2 == 0 { 1.0 } else { (3.0 - 5_f64.sqrt()) / 2.0 })
}

/// Moves and stretches a figure so that it fills a box about the origin.
fn into_box(figure: &[[f64; 2]], size: [f64; 2]) -> Polygon {
    let span = |axis: usize| {
        let values = || figure.iter().map(|p| p[axis]);
        (values().fold(f64::INFINITY, f64::min), values().fold(f64::NEG_INFINITY, f64::max))
    };
    let spans = [span(0), span(1)];
    let fit = |p: &[f64; 2], axis: usize| {
        let (low, high) = spans[axis];
        ((p[axis] - low) / (high - low) - 0.5) * size[axis]
    };
    figure.iter().map(|p| [fit(p, 0), fit(p, 1)]).collect()
}

/// A part of the page that a feature may touch: near a line, or inside an outline down to some depth.
#[derive(Debug, Clone)]
pub(super) struct Area {
    line: Polygon,
    joined: bool,
    /// How far it reaches from the line to the inside, mm; without an inside, as far as to the outside.
    depth: f64,
    /// How far it reaches from the line to the outside, mm.
    reach: f64,
    low: [f64; 2],
    high: [f64; 2],
}

impl Area {
    /// Of an outline about `at`.
    pub(super) fn closed(outline: &[[f64; 2]], at: [f64; 2], depth: f64, reach: f64) -> Self {
        let line = outline.iter().map(|p| [p[0] + at[0], p[1] + at[1]]).collect();
        Self::new(line, true, depth, reach)
    }

    /// Of a line.
    pub(super) fn line(line: Polygon, joined: bool, reach: f64) -> Self {
        Self::new(line, joined, reach, reach)
    }

    fn new(line: Polygon, joined: bool, depth: f64, reach: f64) -> Self {
        let end = |axis: usize, start: f64, pick: fn(f64, f64) -> f64| line.iter().map(|p| p[axis]).fold(start, pick);
        let low = [0, 1].map(|axis| end(axis, f64::INFINITY, f64::min) - reach);
        let high = [0, 1].map(|axis| end(axis, f64::NEG_INFINITY, f64::max) + reach);
        Self { line, joined, depth, reach, low, high }
    }

    /// Its box: low and high corner.
    pub(super) fn bounds(&self) -> ([f64; 2], [f64; 2]) {
        (self.low, self.high)
    }

    /// Whether a place lies in it or within `margin` of it, mm.
    pub(super) fn holds(&self, [x, y]: [f64; 2], margin: f64) -> bool {
        let near = |axis: usize, v: f64| self.low[axis] - margin <= v && v <= self.high[axis] + margin;
        if !(near(0, x) && near(1, y)) {
            return false;
        }
        let count = self.line.len();
        // The square of the distance to the line.
        let (mut nearest, mut inside) = (f64::INFINITY, false);
        for i in 0..if self.joined { count } else { count - 1 } {
            let (a, b) = (self.line[i], self.line[(i + 1) % count]);
            nearest = nearest.min(square_distance([x, y], a, b));
            // An even number of crossings to the right means outside.
            if (a[1] <= y) != (b[1] <= y) && x < a[0] + (y - a[1]) / (b[1] - a[1]) * (b[0] - a[0]) {
                inside = !inside;
            }
        }
        nearest.sqrt() <= margin + if self.joined && inside { self.depth } else { self.reach }
    }
}

/// The square of the distance from a place to the nearest point between `a` and `b`.
fn square_distance(p: [f64; 2], a: [f64; 2], b: [f64; 2]) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    let (px, py) = (p[0] - a[0], p[1] - a[1]);
    let square = dx * dx + dy * dy;
    let t = if square == 0.0 { 0.0 } else { ((px * dx + py * dy) / square).clamp(0.0, 1.0) };
    let (x, y) = (px - t * dx, py - t * dy);
    x * x + y * y
}
