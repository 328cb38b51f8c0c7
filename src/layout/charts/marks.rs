//! The pieces that charts are drawn from: bars, lines, markers, hatching, scales, and labels that keep apart.
//!
//! Tones, line styles and shapes tell things apart, never a colour.

use kurbo::{BezPath, Circle, Point, Rect, Shape as _};

use crate::layout::plot::{self, Line, polyline, stroked};
use crate::layout::sheet::{Node, Tone};

/// Width of axes, leaders and lines across a chart, mm.
pub(super) const HAIR: f64 = 0.15;
/// Accuracy of curves, mm.
const ACCURACY: f64 = 0.02;
/// Half the width of a marker, mm.
pub(super) const MARKER: f64 = 1.1;
/// Between the lines of a hatched area, mm.
const HATCH: f64 = 2.4;

/// A shape that stands for a strand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Marker {
    /// A disc.
    Disc,
    /// A circle.
    Circle,
    /// A filled square.
    Square,
    /// The outline of a diamond.
    Diamond,
    /// A filled triangle on its base.
    Triangle,
    /// Two crossing bars.
    Cross,
}

/// A filled box.
pub(super) fn bar(area: Rect, tone: Tone) -> Node {
    plot::fill(area.to_path(ACCURACY), tone)
}

/// A line through points.
pub(super) fn line(points: &[Point], style: Line, weight: f64, tone: Tone) -> Node {
    plot::fill(stroked(&polyline(points), style, weight), tone)
}

/// A thin straight line.
pub(super) fn hair(from: Point, to: Point, tone: Tone) -> Node {
    line(&[from, to], Line::Solid, HAIR, tone)
}

/// A marker about its middle.
pub(super) fn marker(at: Point, marker: Marker) -> Node {
    let (r, full) = (MARKER, Tone::FULL);
    let closed = |corners: &[(f64, f64)]| {
        let mut path = polyline(&corners.iter().map(|&(x, y)| at + (x, y)).collect::<Vec<_>>());
        path.close_path();
        path
    };
    match marker {
        Marker::Disc => plot::fill(Circle::new(at, r).to_path(ACCURACY), full),
        Marker::Circle => ring(at, r, 0.4),
        Marker::Square => bar(Rect::from_center_size(at, (1.8 * r, 1.8 * r)), full),
        Marker::Triangle => plot::fill(closed(&[(0.0, -1.2 * r), (1.15 * r, 0.8 * r), (-1.15 * r, 0.8 * r)]), full),
        Marker::Diamond => {
            let tips = |r: f64| [(0.0, -r), (r, 0.0), (0.0, r), (-r, 0.0)];
            let mut path = closed(&tips(1.3 * r));
            path.extend(closed(&tips(0.75 * r)).reverse_subpaths());
            plot::fill(path, full)
        }
        Marker::Cross => {
            let arm = |x: f64, y: f64| stroked(&polyline(&[at + (-x, -y), at + (x, y)]), Line::Solid, 0.45);
            let mut path = arm(0.9 * r, 0.9 * r);
            path.extend(arm(0.9 * r, -0.9 * r));
            plot::fill(path, full)
        }
    }
}

/// A circle with a line of this width inside its radius.
pub(super) fn ring(at: Point, radius: f64, weight: f64) -> Node {
    let mut path = Circle::new(at, radius).to_path(ACCURACY);
    path.extend(Circle::new(at, radius - weight).to_path(ACCURACY).reverse_subpaths());
    plot::fill(path, Tone::FULL)
}

/// Slanting hairlines over an area.
pub(super) fn hatch(area: Rect) -> Node {
    let mut path = BezPath::new();
    let (mut x, end) = (area.x0 - area.height() + HATCH, area.x1);
    while x < end {
        // From the foot at x upwards to the right, cut off at both sides of the area.
        let (from, to) = (x.max(area.x0), (x + area.height()).min(area.x1));
        if 0.05 < to - from {
            let at = |along: f64| Point::new(along, area.y1 - (along - x));
            path.extend(stroked(&polyline(&[at(from), at(to)]), Line::Solid, 0.12));
        }
        x += HATCH;
    }
    plot::fill(path, Tone::LINE)
}

/// The round steps of a scale so that a span has at most so many: 1, 2 or 5 times a power of ten, at least 0.1.
pub(super) fn step(span: f64, most: f64) -> f64 {
    let steps = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0];
    steps.into_iter().find(|step| span / step <= most).unwrap_or(1000.0)
}

/// The multiples of a step between two ends.
pub(super) fn ticks(low: f64, high: f64, step: f64) -> Vec<f64> {
    let (mut ticks, mut number) = (Vec::new(), (low / step - 1e-9).ceil());
    while number * step <= high + 1e-9 {
        ticks.push(number * step + 0.0);
        number += 1.0;
    }
    ticks
}

/// The tops of boxes that want their middles at given heights, moved apart so that none overlaps another and all stay
/// between `low` and `high`, as far as they fit there. `wanted` is (middle, height), from the top on.
pub(super) fn apart(wanted: &[(f64, f64)], (low, high): (f64, f64)) -> Vec<f64> {
    let mut tops: Vec<f64> = Vec::with_capacity(wanted.len());
    let mut free = low;
    for &(middle, height) in wanted {
        let top = (middle - height / 2.0).max(free);
        tops.push(top);
        free = top + height;
    }
    let mut free = high;
    for (top, &(_, height)) in tops.iter_mut().zip(wanted).rev() {
        *top = top.min(free - height);
        free = *top;
    }
    tops
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn labels_move_apart_and_stay_inside() {
        assert_eq!(apart(&[(10.0, 4.0), (30.0, 4.0)], (0.0, 50.0)), [8.0, 28.0]);
        assert_eq!(apart(&[(10.0, 4.0), (11.0, 4.0), (12.0, 4.0)], (0.0, 50.0)), [8.0, 12.0, 16.0]);
        assert_eq!(apart(&[(48.0, 4.0), (49.0, 4.0)], (0.0, 50.0)), [42.0, 46.0]);
        assert_eq!(apart(&[(-3.0, 4.0)], (0.0, 50.0)), [0.0]);
    }

    #[test]
    fn scales_count_in_round_steps() {
        assert_eq!((step(9.0, 10.0), step(11.0, 10.0), step(42.0, 10.0)), (1.0, 2.0, 5.0));
        assert_eq!(ticks(-4.5, 6.0, 2.0), [-4.0, -2.0, 0.0, 2.0, 4.0, 6.0]);
        assert_eq!(ticks(0.0, 0.3, 0.1).len(), 4);
    }
}
