//! Outlines as straight edges in pixels: scaling, flattening of curves, closing of sub-paths.
//!
//! Plain arithmetic only, so that every machine finds the same edges. It fills nothing; see [`super::sweep`].

use kurbo::{BezPath, PathEl, Point, Vec2};

/// How far a flattened curve may stand from the true one, pixels. At 300 ppi this is 0.85 µm.
const FLATNESS: f64 = 0.01;

/// The most pieces one curve is cut into.
const MAX_PIECES: usize = 1024;

/// Coordinates beyond this many pixels are refused; far beyond any page, well within exact row numbers.
pub(super) const BOUND: f64 = 1e9;

/// A coordinate is not finite or is beyond [`BOUND`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct NotFinite;

/// From sheet units to pixels: scale, then shift.
#[derive(Debug, Clone, Copy)]
pub(super) struct ToPixels {
    pub(super) scale: f64,
    pub(super) shift: Vec2,
}

/// A straight piece of an outline, from its upper to its lower end, pixels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Edge {
    pub(super) x0: f64,
    pub(super) y0: f64,
    pub(super) x1: f64,
    pub(super) y1: f64,
    /// Which path of the shape it belongs to.
    pub(super) path: u32,
    /// Change of the winding number from left to right: +1 drawn downward, -1 upward, 0 for a level edge, which
    /// changes nothing but joins the edges at its ends.
    pub(super) turn: i32,
}

impl Edge {
    /// Whether it stands exactly upright.
    #[allow(clippy::float_cmp, reason = "only exactly upright edges are upright")]
    pub(super) fn is_upright(&self) -> bool {
        self.x0 == self.x1
    }
}

/// Appends the edges of one path that touch the rows `0..height`.
pub(super) fn edges(
    path: &BezPath,
    to: ToPixels,
    height: f64,
    number: u32,
    out: &mut Vec<Edge>,
) -> Result<(), NotFinite> {
    let mut line = |a: Point, b: Point| out.extend(edge(a, b, height, number));
    let (mut start, mut last) = (Point::ZERO, Point::ZERO);
    for element in path.elements() {
        match *element {
            PathEl::MoveTo(p) => {
                line(last, start);
                start = to.apply(p)?;
                last = start;
            }
            PathEl::LineTo(p) => last = step(&mut line, last, to.apply(p)?),
            PathEl::QuadTo(c, p) => last = quad(&mut line, [last, to.apply(c)?, to.apply(p)?]),
            PathEl::CurveTo(c, d, p) => last = cubic(&mut line, [last, to.apply(c)?, to.apply(d)?, to.apply(p)?]),
            PathEl::ClosePath => last = step(&mut line, last, start),
        }
    }
    line(last, start);
    Ok(())
}

impl ToPixels {
    fn apply(self, p: Point) -> Result<Point, NotFinite> {
        let q = Point::new(p.x * self.scale + self.shift.x, p.y * self.scale + self.shift.y);
        // Written so that NaN is refused as well.
        if q.x.abs() <= BOUND && q.y.abs() <= BOUND { Ok(q) } else { Err(NotFinite) }
    }
}

/// One edge, or nothing where it cannot show: outside the rows, without extent, or level on the border of two rows.
#[allow(clippy::float_cmp, reason = "only exactly level edges are level")]
fn edge(a: Point, b: Point, height: f64, path: u32) -> Option<Edge> {
    let (turn, p, q) = if a.y < b.y { (1, a, b) } else { (-1, b, a) };
    if q.y <= 0.0 || height <= p.y {
        return None;
    }
    let level = p.y == q.y;
    if level && (p.x == q.x || p.y == real(index(p.y))) {
        return None;
    }
    Some(Edge { x0: p.x, y0: p.y, x1: q.x, y1: q.y, path, turn: if level { 0 } else { turn } })
}

fn step(line: &mut impl FnMut(Point, Point), from: Point, to: Point) -> Point {
    line(from, to);
    to
}

fn quad(line: &mut impl FnMut(Point, Point), [a, b, c]: [Point; 3]) -> Point {
    let bend = (a.to_vec2() - 2.0 * b.to_vec2() + c.to_vec2()).hypot2().sqrt();
    let n = pieces(bend / 4.0);
    curve(line, n, a, c, |t| {
        let s = 1.0 - t;
        (s * s * a.to_vec2() + 2.0 * s * t * b.to_vec2() + t * t * c.to_vec2()).to_point()
    })
}

fn cubic(line: &mut impl FnMut(Point, Point), [a, b, c, d]: [Point; 4]) -> Point {
    let first = (a.to_vec2() - 2.0 * b.to_vec2() + c.to_vec2()).hypot2();
    let second = (b.to_vec2() - 2.0 * c.to_vec2() + d.to_vec2()).hypot2();
    let n = pieces(first.max(second).sqrt() * 0.75);
    curve(line, n, a, d, |t| {
        let s = 1.0 - t;
        let ends = s * s * s * a.to_vec2() + t * t * t * d.to_vec2();
        (ends + 3.0 * s * s * t * b.to_vec2() + 3.0 * s * t * t * c.to_vec2()).to_point()
    })
}

/// How many equal steps of the parameter keep a curve within [`FLATNESS`].
///
/// A curve of degree n stands at most n(n-1)/8 · M / k² from its chords, M the largest second difference of its control
/// points, k the number of steps; `deviation` is n(n-1)/8 · M.
///
/// Source: `[Goldman2003]`, section 5.6.3, Wang's bound.
fn pieces(deviation: f64) -> usize {
    index((deviation / FLATNESS).sqrt().ceil()).clamp(1, MAX_PIECES)
}

fn curve(
    line: &mut impl FnMut(Point, Point),
    pieces: usize,
    from: Point,
    to: Point,
    at: impl Fn(f64) -> Point,
) -> Point {
    let mut last = from;
    for i in 1..pieces {
        last = step(line, last, at(real(i) / real(pieces)));
    }
    step(line, last, to)
}

/// A pixel, row or count as a whole number. Negative numbers and NaN give 0.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the cast saturates, which is what is meant"
)]
pub(super) fn index(x: f64) -> usize {
    x as usize
}

/// A pixel, row or count as a number to compute with; exact, for none reaches 2^53.
#[allow(clippy::cast_precision_loss, reason = "counts of pixels and edges are far below 2^53")]
pub(super) fn real(i: usize) -> f64 {
    i as f64
}
