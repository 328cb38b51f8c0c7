//! From a solved field of dots to the bars that each ink draws.
//!
//! Places come from the solver. Here dots give way to what else stands on the field, for both eyes alike, so that no
//! hole tells a depth; and what both eyes get is told from what one eye gets.

use kurbo::{BezPath, PathEl, Point};

use crate::scene::Eye;
use crate::solve::{SolvedDots, SolvedFeature};

use super::sheet::{Bar, Bars, Dots};

/// Clear space around what stands on a field, mm (design choice: about a dot of the usual size).
pub(super) const HALO: f64 = 0.6;
/// Accuracy of flattened outlines, mm.
const ACCURACY: f64 = 0.004;

/// From and to, mm.
type Span = (f64, f64);

/// The share of the height of its dots that each eye gets: left, right.
pub(super) type Shares = [f64; 2];

/// The bars of a field whose middle stands at its place about `middle`, page mm.
pub(super) fn bars(feature: &SolvedFeature, dots: &SolvedDots, middle: Point, shares: Shares, cover: &Cover) -> Dots {
    let of = |share: f64| Bars { height: dots.dot * share, bars: Vec::new() };
    let [left, right] = shares;
    let alike = 1.0 <= left && 1.0 <= right;
    let mut out = Dots { left: of(left), right: of(right), overlap: of(left.min(right)), flat: of(1.0) };
    for row in &dots.rows {
        let y = row.y + middle.y;
        let cleared = cover.spans(y - dots.dot / 2.0, y + dots.dot / 2.0);
        let placed = |runs: &[Span], seen: bool| -> Vec<Span> {
            let runs: Vec<Span> = runs.iter().map(|run| (run.0 + middle.x, run.1 + middle.x)).collect();
            if seen { subtract(runs, &cleared) } else { Vec::new() }
        };
        let mut left = placed(&row.left, feature.eyes.include(Eye::Left));
        let mut right = placed(&row.right, feature.eyes.include(Eye::Right));
        let put = |bars: &mut Bars, runs: &[Span]| bars.bars.extend(runs.iter().map(|&(x0, x1)| Bar { y, x0, x1 }));
        if alike {
            let same = take_same(&mut left, &mut right);
            put(&mut out.flat, &same);
        }
        put(&mut out.overlap, &intersect(&left, &right));
        put(&mut out.left, &left);
        put(&mut out.right, &right);
    }
    out
}

/// What stands on a field.
#[derive(Debug, Default)]
pub(super) struct Cover {
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
    /// Takes outlines that clear dots under them, with so much space around.
    pub(super) fn add<'a>(&mut self, paths: impl IntoIterator<Item = &'a BezPath>, halo: f64) {
        for outline in paths {
            let path = self.paths;
            let mut side = |from: Point, to: Point| self.sides.push(Side { from, to, path, halo });
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

    #[test]
    fn what_stands_on_a_field_is_cleared_with_its_halo() {
        let mut cover = Cover::default();
        cover.add([&Rect::new(10.0, 10.0, 20.0, 20.0).to_path(0.1)], 0.6);
        assert_eq!(cover.spans(14.0, 14.5), [(9.4, 20.6)]);
        assert_eq!(cover.spans(9.0, 9.5), [(9.4, 20.6)]);
        assert!(cover.spans(8.0, 9.3).is_empty() && cover.spans(20.7, 21.0).is_empty());
    }
}
