//! Where a row passes through the figures of a field.

use kurbo::{Affine, BezPath, PathEl, Point, Vec2};

use crate::outline;
use crate::scene::Shape;

/// Accuracy of flattened outlines, mm: far below any device dot.
const ACCURACY: f64 = 1e-3;
/// Width of the bars of a cross and of brackets, as a share of the size (design choice: several dots across).
const CROSS: f64 = 1.0 / 3.0;
const BRACKETS: f64 = 0.2;

/// The straight sides of a figure.
#[derive(Debug)]
pub(super) struct Outline(Vec<(Point, Point)>);

impl Outline {
    /// The outline of a shape of this size about a middle: what is a line elsewhere is filled without its hole.
    pub(super) fn new(shape: &Shape, size: f64, middle: (f64, f64)) -> Self {
        let path = Affine::translate(Vec2::from(middle)) * filled(shape, size);
        let (mut sides, mut start, mut at) = (Vec::new(), Point::ZERO, Point::ZERO);
        kurbo::flatten(path, ACCURACY, |element| match element {
            PathEl::MoveTo(to) => {
                // A contour that was left open closes by itself.
                sides.push((at, start));
                (start, at) = (to, to);
            }
            PathEl::LineTo(to) => {
                sides.push((at, to));
                at = to;
            }
            _ => {
                sides.push((at, start));
                at = start;
            }
        });
        sides.push((at, start));
        sides.retain(|(a, b)| a.y.total_cmp(&b.y).is_ne());
        Self(sides)
    }

    /// The stretches of a row that lie inside, from left to right, by the non-zero rule.
    pub(super) fn inside(&self, y: f64) -> Vec<(f64, f64)> {
        let mut crossings: Vec<(f64, i32)> = Vec::new();
        for &(a, b) in &self.0 {
            let (up, low, high) = if a.y < b.y { (1, a, b) } else { (-1, b, a) };
            // The upper end belongs to a side, the lower one does not: corners count once.
            if low.y <= y && y < high.y {
                crossings.push((low.x + (high.x - low.x) * ((y - low.y) / (high.y - low.y)), up));
            }
        }
        crossings.sort_by(|a, b| a.0.total_cmp(&b.0));
        let (mut out, mut winding, mut start) = (Vec::new(), 0, 0.0);
        for (x, turn) in crossings {
            if winding == 0 {
                start = x;
            }
            winding += turn;
            if winding == 0 && start < x {
                out.push((start, x));
            }
        }
        out
    }
}

/// A shape as a filled area about its middle.
fn filled(shape: &Shape, size: f64) -> BezPath {
    let extent = outline::extent(shape, size);
    let weight = match shape {
        Shape::Cross => CROSS * size,
        Shape::Brackets => BRACKETS * size,
        _ => size,
    };
    match shape {
        Shape::Ring
        | Shape::Disc
        | Shape::Square
        | Shape::Diamond
        | Shape::Star
        | Shape::Triangle
        | Shape::Polygon(_) => outline::silhouette(shape, size, extent, 0.0),
        Shape::Cross
        | Shape::Bar
        | Shape::Wedge
        | Shape::Brackets
        | Shape::OpenRing(_)
        | Shape::Drawing(_)
        | Shape::Outline(_)
        | Shape::Text(_) => outline::path(shape, size, extent, weight),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::Direction;

    /// Chords of a circle: 2 √(r² - y²), a textbook formula of plane geometry.
    #[test]
    fn a_disc_is_cut_by_its_chords() {
        for shape in [Shape::Disc, Shape::Ring] {
            let disc = Outline::new(&shape, 20.0, (3.0, -5.0));
            for y in [-14.9, -9.0, -5.0, 0.3, 4.9] {
                let [(a, b)] = disc.inside(y)[..] else { panic!("{y}") };
                let half = libm::sqrt(100.0 - (y + 5.0) * (y + 5.0));
                assert!((b - a - 2.0 * half).abs() < 0.02 && (a + b - 6.0).abs() < 0.02, "{y}");
            }
            assert!(disc.inside(-15.1).is_empty() && disc.inside(5.1).is_empty());
        }
    }

    #[test]
    fn the_gap_of_an_open_ring_stays_open() {
        let ring = Outline::new(&Shape::OpenRing(Direction::Left), 50.0, (0.0, 0.0));
        // Across the middle: the gap on the left, the hole, and the line on the right.
        let [(a, b)] = ring.inside(0.0)[..] else { panic!("{:?}", ring.inside(0.0)) };
        assert!((a - 15.0).abs() < 0.01 && (b - 25.0).abs() < 0.01);
        assert_eq!(ring.inside(10.0).len(), 2);
    }

    #[test]
    fn a_square_is_one_stretch_a_row_whatever_its_line() {
        let square = Outline::new(&Shape::Square, 30.0, (0.0, 0.0));
        for y in [-14.999, 0.0, 14.999] {
            let [(a, b)] = square.inside(y)[..] else { panic!("{y}") };
            assert!((a + 15.0).abs() < 1e-9 && (b - 15.0).abs() < 1e-9);
        }
    }
}
