//! From a solved field of dots to the bars that each ink draws.
//!
//! Places come from the solver. Here dots give way to what else stands on the field, for both eyes alike, so that no
//! hole tells a depth; and what both eyes get is told from what one eye gets.
//!
//! With a vertical base the rows of the two eyes stand at different heights: a row of one eye then meets two of the
//! other, each over a part of its height.

use kurbo::{BezPath, PathEl, Point};

use crate::scene::Eye;
use crate::solve::{DotRow, SolvedDots, SolvedFeature, half_x};

use super::base::Ride;
use super::sheet::{Bar, Bars, Dots};

/// Clear space around what stands on a field, mm (design choice: about a dot of the usual size).
pub(super) const HALO: f64 = 0.6;
/// Accuracy of flattened outlines, mm.
const ACCURACY: f64 = 0.004;

/// Rows that meet over less of their height do not meet: the grid of the solver, mm.
const GRID: f64 = 1e-6;

/// From and to, mm.
type Span = (f64, f64);

/// The share of the height of its dots that each eye gets: left, right.
pub(super) type Shares = [f64; 2];

/// The bars of a field whose middle stands at its place about `middle`, page mm, on a base; later ones are drawn over
/// earlier ones.
pub(super) fn bars(
    feature: &SolvedFeature,
    dots: &SolvedDots,
    middle: Point,
    (shares, ride): (Shares, Ride),
    cover: &Cover,
) -> Vec<Dots> {
    let heights = shares.map(|share| dots.dot * share);
    let rows = dots.rows.iter().map(|row| placed(feature, row, dots.dot, middle, cover));
    if ride.is_none() { vec![level(rows, dots.dot, heights)] } else { apart(rows.collect(), dots.dot, heights, ride) }
}

/// A row on its page: its middle as without a base, and what each eye gets.
struct Row {
    y: f64,
    left: Vec<Span>,
    right: Vec<Span>,
}

fn placed(feature: &SolvedFeature, row: &DotRow, dot: f64, middle: Point, cover: &Cover) -> Row {
    let y = row.y + middle.y;
    let cleared = cover.spans(y - dot / 2.0, y + dot / 2.0);
    let seen = |eye: Eye, runs: &[Span]| -> Vec<Span> {
        if !feature.eyes.include(eye) {
            return Vec::new();
        }
        let runs = runs.iter().map(|run| (run.0 + middle.x, run.1 + middle.x)).collect();
        subtract(runs, &cover.for_eye(eye, &cleared))
    };
    Row { y, left: seen(Eye::Left, &row.left), right: seen(Eye::Right, &row.right) }
}

/// Rows of both eyes at the same heights.
fn level(rows: impl Iterator<Item = Row>, dot: f64, heights: Shares) -> Dots {
    let [left, right] = heights;
    let alike = dot <= left && dot <= right;
    let mut out = Dots { left: empty(left), right: empty(right), overlap: empty(left.min(right)), flat: empty(dot) };
    for Row { y, mut left, mut right } in rows {
        if alike {
            put(&mut out.flat, y, &take_same(&mut left, &mut right));
        }
        put(&mut out.overlap, y, &intersect(&left, &right));
        put(&mut out.left, y, &left);
        put(&mut out.right, y, &right);
    }
    out
}

/// Rows of the left eye moved down and of the right eye moved up, by half of the rise each. What they share has a list for
/// each height, and comes after all rows: a row of one eye would else cover what it shares with an earlier one.
fn apart(rows: Vec<Row>, dot: f64, [left, right]: Shares, ride: Ride) -> Vec<Dots> {
    let mut out = vec![Dots { left: empty(left), right: empty(right), ..Dots::default() }];
    for row in &rows {
        put(&mut out[0].left, row.y + ride.rise / 2.0, &row.left);
        put(&mut out[0].right, row.y - ride.rise / 2.0, &row.right);
    }
    // A row of the left eye meets the row of the right eye that is so many rows further down.
    let nearest = (ride.rise / dot).round();
    for steps in [nearest - 1.0, nearest, nearest + 1.0] {
        let below = steps * dot - ride.rise;
        let (top, bottom) = ((-left / 2.0).max(below - right / 2.0), (left / 2.0).min(below + right / 2.0));
        if bottom - top <= GRID {
            continue;
        }
        let mut overlap = empty(bottom - top);
        for (row, index) in rows.iter().zip(0_u32..) {
            if let Some(other) = row_at(&rows, f64::from(index) + steps) {
                let y = row.y + ride.rise / 2.0 + (top + bottom) / 2.0;
                put(&mut overlap, y, &intersect(&row.left, &other.right));
            }
        }
        out.push(Dots { overlap, ..Dots::default() });
    }
    out
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a whole number within the rows")]
fn row_at(rows: &[Row], index: f64) -> Option<&Row> {
    if (0.0..rows.len() as f64).contains(&index) { rows.get(index as usize) } else { None }
}

fn empty(height: f64) -> Bars {
    Bars { height, bars: Vec::new() }
}

fn put(bars: &mut Bars, y: f64, runs: &[Span]) {
    bars.bars.extend(runs.iter().map(|&(x0, x1)| Bar { y, x0, x1 }));
}

/// What stands on a field, counted from the base: dots give way to it in both eyes alike.
#[derive(Debug, Default)]
pub(super) struct Cover {
    ride: Ride,
    sides: Vec<Side>,
    paths: usize,
}

/// A straight side of an outline.
#[derive(Debug, Clone, Copy)]
struct Side {
    from: Point,
    to: Point,
    /// Which path it belongs to: paths wind for themselves.
    path: usize,
    /// Clear space around it, mm.
    halo: f64,
}

impl Cover {
    /// Nothing yet, on a base.
    pub(super) fn new(ride: Ride) -> Self {
        Self { ride, ..Self::default() }
    }

    /// Takes outlines of an eye, not yet lifted, that clear dots under them, with so much space around.
    pub(super) fn add(&mut self, eye: Eye, paths: &[BezPath], halo: f64) {
        let moved = half_x(0.0, self.ride.parallax, eye);
        for outline in paths {
            let path = self.paths;
            let from_base = |at: Point| Point::new(at.x - moved, at.y);
            let mut side =
                |from: Point, to: Point| self.sides.push(Side { from: from_base(from), to: from_base(to), path, halo });
            let (mut start, mut at) = (Point::ZERO, Point::ZERO);
            kurbo::flatten(outline.elements().iter().copied(), ACCURACY, |element| match element {
                PathEl::MoveTo(to) => (start, at) = (to, to),
                PathEl::LineTo(to) => {
                    side(at, to);
                    at = to;
                }
                _ => {
                    side(at, start);
                    at = start;
                }
            });
            self.paths += 1;
        }
    }

    /// Spans where they lie in an eye's row.
    fn for_eye(&self, eye: Eye, spans: &[Span]) -> Vec<Span> {
        let moved = half_x(0.0, self.ride.parallax, eye);
        spans.iter().map(|(from, to)| (from + moved, to + moved)).collect()
    }

    /// What is cleared between two heights: everything within an outline there, and the space about each side.
    fn spans(&self, top: f64, bottom: f64) -> Vec<Span> {
        let mut spans: Vec<Span> = Vec::new();
        let mut crossings: Vec<(usize, f64, i32)> = Vec::new();
        let middle = (top + bottom) / 2.0;
        for &Side { from, to, path, halo } in &self.sides {
            let (top, bottom) = (top - halo, bottom + halo);
            let (turn, low, high) = if from.y < to.y { (1, from, to) } else { (-1, to, from) };
            if high.y < top || bottom < low.y {
                continue;
            }
            let x_at = |y: f64| {
                let share = ((y - low.y) / (high.y - low.y)).clamp(0.0, 1.0);
                if low.y < high.y { low.x + (high.x - low.x) * share } else { low.x }
            };
            let ends = if low.y < high.y { (x_at(top), x_at(bottom)) } else { (low.x, high.x) };
            spans.push((ends.0.min(ends.1) - halo, ends.0.max(ends.1) + halo));
            if low.y <= middle && middle < high.y {
                crossings.push((path, x_at(middle), turn));
            }
        }
        crossings.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        let mut winding = 0;
        for pair in crossings.windows(2) {
            winding += pair[0].2;
            if winding != 0 {
                spans.push((pair[0].1, pair[1].1));
            }
        }
        merged(spans)
    }
}

/// Spans from left to right, each touching no other.
fn merged(mut spans: Vec<Span>) -> Vec<Span> {
    spans.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut out: Vec<Span> = Vec::new();
    for span in spans {
        match out.last_mut() {
            Some(last) if span.0 <= last.1 => last.1 = last.1.max(span.1),
            _ => out.push(span),
        }
    }
    out
}

/// Runs without what is cleared; both from left to right.
fn subtract(runs: Vec<Span>, cleared: &[Span]) -> Vec<Span> {
    if cleared.is_empty() {
        return runs;
    }
    let mut out = Vec::with_capacity(runs.len());
    for (mut from, to) in runs {
        let first = cleared.partition_point(|hole| hole.1 <= from);
        for hole in cleared[first..].iter().take_while(|hole| hole.0 < to) {
            if from < hole.0 {
                out.push((from, hole.0));
            }
            from = hole.1;
        }
        if from < to {
            out.push((from, to));
        }
    }
    out
}

/// Takes the runs that both lists have, end for end, out of them.
fn take_same(left: &mut Vec<Span>, right: &mut Vec<Span>) -> Vec<Span> {
    let order = |a: &Span, b: &Span| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1));
    let same: Vec<Span> =
        left.iter().copied().filter(|run| right.binary_search_by(|b| order(b, run)).is_ok()).collect();
    for runs in [left, right] {
        runs.retain(|run| same.binary_search_by(|b| order(b, run)).is_err());
    }
    same
}

/// Where runs of both lists cover the same ground.
fn intersect(left: &[Span], right: &[Span]) -> Vec<Span> {
    let (mut out, mut rest) = (Vec::new(), right);
    for &(from, to) in left {
        rest = &rest[rest.partition_point(|run| run.1 <= from)..];
        let meets = rest.iter().take_while(|run| run.0 < to);
        out.extend(meets.map(|run| (run.0.max(from), run.1.min(to))));
    }
    out
}

#[cfg(test)]
mod tests {
    use kurbo::{Rect, Shape as _};
    use proptest::prelude::*;

    use super::*;

    fn any_runs() -> impl Strategy<Value = Vec<Span>> {
        let steps = prop::collection::vec((1..5_u32, 1..5_u32), 0..8);
        steps.prop_map(|steps| {
            let mut x = 0;
            let run = |(gap, length): (u32, u32)| {
                let from = x + gap;
                x = from + length;
                (f64::from(from), f64::from(x))
            };
            steps.into_iter().map(run).collect()
        })
    }

    fn inside(runs: &[Span], x: f64) -> bool {
        runs.iter().any(|run| run.0 <= x && x < run.1)
    }

    proptest! {
        /// Held against membership, place by place: the definitions of the set operations.
        #[test]
        fn runs_are_sets(left in any_runs(), right in any_runs()) {
            let (both, less) = (intersect(&left, &right), subtract(left.clone(), &right));
            let (mut a, mut b) = (left.clone(), right.clone());
            let same = take_same(&mut a, &mut b);
            for x in (0..80).map(|i| f64::from(i) + 0.5) {
                let (l, r) = (inside(&left, x), inside(&right, x));
                prop_assert_eq!(inside(&both, x), l && r);
                prop_assert_eq!(inside(&less, x), l && !r);
                prop_assert_eq!(inside(&a, x) || inside(&same, x), l);
                prop_assert_eq!(inside(&b, x) || inside(&same, x), r);
                prop_assert!(!(inside(&same, x) && (inside(&a, x) || inside(&b, x))));
            }
        }
    }

    /// What of a list of bars covers a place.
    fn covers(bars: &Bars, x: f64, y: f64) -> bool {
        bars.bars.iter().map(|bar| bar.area(bars.height)).any(|area| area.contains(Point::new(x, y)))
    }

    proptest! {
        /// Held against membership, place by place: an overlap is where bars of both eyes lie.
        #[test]
        fn rows_at_two_heights_overlap_where_both_lie(
            all in prop::collection::vec((any_runs(), any_runs()), 1..6),
            rise in -2.7..2.7_f64,
            shares in prop::sample::select(vec![[1.0, 1.0], [0.6, 1.0], [1.0, 0.5]]),
        ) {
            let row = |(y, (left, right)): (f64, (Vec<Span>, Vec<Span>))| Row { y, left, right };
            let rows: Vec<Row> = [0.5, 1.5, 2.5, 3.5, 4.5].into_iter().zip(all).map(row).collect();
            let drawn = apart(rows, 1.0, shares, Ride { parallax: 0.0, rise });
            for x in (0..70).map(|i| f64::from(i) + 0.5) {
                for y in (-40..90).map(|i| f64::from(i) * 0.1 + 0.013) {
                    let both = covers(&drawn[0].left, x, y) && covers(&drawn[0].right, x, y);
                    prop_assert_eq!(drawn[1..].iter().any(|dots| covers(&dots.overlap, x, y)), both, "{} {}", x, y);
                }
            }
        }
    }

    #[test]
    fn what_stands_on_a_field_is_cleared_with_its_halo() {
        let mut cover = Cover::default();
        cover.add(Eye::Left, &[Rect::new(10.0, 10.0, 20.0, 20.0).to_path(0.1)], 0.6);
        assert_eq!(cover.spans(14.0, 14.5), [(9.4, 20.6)]);
        assert_eq!(cover.spans(9.0, 9.5), [(9.4, 20.6)]);
        assert!(cover.spans(8.0, 9.3).is_empty() && cover.spans(20.7, 21.0).is_empty());
    }
}
