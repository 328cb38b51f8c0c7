//! Exact coverage within one row: from the edges of a shape, sorted from left to right, to signed areas.
//!
//! The coverage of a pixel is the area of the shape within it, not a count of samples, and it is right where paths
//! touch, overlap, repeat each other or run in opposite directions. So shared borders do not show and no border is
//! counted twice.
//!
//! How: the edges fall into clusters that do not overlap in x. Between clusters the winding numbers are the same over
//! the whole height of the row. Most clusters are one edge, or the pieces of one chain that crosses the row once: then a
//! winding number changes by one step, and the coverage follows from signed areas. The others are cut into strips at
//! the ends of their edges, and each strip is walked in order. Only where edges cross inside a strip is it cut into
//! [`PARTS`] parts a row, each in the order of its middle.

use super::outline::{index, real};
use super::pad::Pad;
use super::sweep::Piece;

/// Parts a row is cut into where edges cross.
const PARTS: f64 = 16.0;

/// Distances below this many pixels count as touching: far above rounding, far below what a pixel can show.
const TOUCH: f64 = 1e-6;

/// Walks rows from left to right.
#[derive(Debug, Default)]
pub(super) struct Walker {
    winding: Winding,
    /// Buffers of one cluster: where its strips begin and end, and the edges of one strip.
    cuts: Vec<f64>,
    strip: Vec<Cut>,
}

/// Winding numbers of the paths of a shape at one place.
#[derive(Debug, Default)]
struct Winding {
    of: Vec<i32>,
    /// How many paths have a winding number other than 0.
    inside: u32,
}

/// An edge within one strip of a row: its x at the top and the bottom.
#[derive(Debug, Clone, Copy)]
struct Cut {
    x0: f64,
    x1: f64,
    path: u32,
    turn: i32,
}

impl Walker {
    /// Begins a shape of so many paths.
    pub(super) fn start(&mut self, paths: u32) {
        self.winding.of.clear();
        self.winding.of.resize(paths as usize, 0);
        self.winding.inside = 0;
    }

    /// Adds the coverage of a row to a pad. The pieces are sorted from left to right; `upright` says that none leans and
    /// that level ones are left out.
    pub(super) fn row(&mut self, pieces: &[Piece], upright: bool, pad: &mut Pad) {
        if upright {
            self.cover_upright(pieces, pad);
        } else {
            let mut rest = pieces;
            while !rest.is_empty() {
                let (cluster, after) = rest.split_at(cluster_len(rest));
                self.cover(cluster, pad);
                rest = after;
            }
        }
        pieces.iter().for_each(|piece| self.winding.of[piece.path as usize] = 0);
        self.winding.inside = 0;
    }

    /// Adds the coverage that starts or ends within a cluster, and moves the winding numbers to its right side.
    fn cover(&mut self, cluster: &[Piece], pad: &mut Pad) {
        for piece in cluster {
            pad.touch(piece.left, piece.right);
        }
        if let Some((path, turn)) = single_chain(cluster) {
            let change = self.winding.pass(path, turn);
            for piece in cluster {
                pad.add(piece.x0, piece.x1, (piece.y1 - piece.y0) * change);
            }
        } else {
            self.cover_strips(cluster, pad);
        }
    }

    /// Adds the coverage of a whole row in which all edges are upright: in each strip they stand in the order of the
    /// row.
    fn cover_upright(&mut self, pieces: &[Piece], pad: &mut Pad) {
        let Self { winding, cuts, .. } = self;
        for piece in pieces {
            pad.touch(piece.left, piece.right);
        }
        find_cuts(pieces, cuts);
        for (&top, &bottom) in cuts.iter().zip(cuts.iter().skip(1)) {
            for piece in pieces.iter().filter(|p| p.y0 <= top && bottom <= p.y1) {
                let change = winding.pass(piece.path, piece.turn);
                pad.add(piece.x0, piece.x0, (bottom - top) * change);
            }
        }
    }

    /// The general case of [`Walker::cover`]: strips between the ends of edges, each walked from left to right.
    fn cover_strips(&mut self, cluster: &[Piece], pad: &mut Pad) {
        let Self { winding, cuts, strip } = self;
        find_cuts(cluster, cuts);
        strip.clear();
        for (&top, &bottom) in cuts.iter().zip(cuts.iter().skip(1)) {
            fill_strip(cluster, (top, bottom), strip);
            walk_strip(strip, bottom - top, winding, pad);
            strip.iter().for_each(|cut| winding.turn(cut.path, -cut.turn));
        }
        strip.iter().for_each(|cut| winding.turn(cut.path, cut.turn));
    }
}

/// How many pieces from the first on hang together in x.
fn cluster_len(pieces: &[Piece]) -> usize {
    let mut right = f64::NEG_INFINITY;
    for (i, piece) in pieces.iter().enumerate() {
        if right + TOUCH < piece.left && i > 0 {
            return i;
        }
        right = right.max(piece.right);
    }
    pieces.len()
}

/// Path and turn of a cluster whose pieces cross each height of the row once, all in one direction.
///
/// The winding number just left and just right of a cluster is the same at all heights, so at each height the turns
/// add up to the same number: where all turns are alike, the pieces cover every height equally often.
fn single_chain(cluster: &[Piece]) -> Option<(u32, i32)> {
    let mut found = None;
    let mut height = 0.0;
    for piece in cluster.iter().filter(|piece| piece.turn != 0) {
        if *found.get_or_insert((piece.path, piece.turn)) != (piece.path, piece.turn) {
            return None;
        }
        height += piece.y1 - piece.y0;
    }
    found.filter(|_| (height - 1.0).abs() < TOUCH)
}

/// The heights at which pieces begin or end, sorted.
#[expect(clippy::float_cmp, reason = "equal heights are copies of one value; others are cuts of their own")]
fn find_cuts(pieces: &[Piece], cuts: &mut Vec<f64>) {
    cuts.clear();
    cuts.extend([0.0, 1.0]);
    let mut last = 0.0;
    for y in pieces.iter().flat_map(|p| [p.y0, p.y1]) {
        // Most pieces begin and end where the row or their neighbours do.
        if y != 0.0 && y != 1.0 && y != last {
            cuts.push(y);
            last = y;
        }
    }
    cuts.sort_by(f64::total_cmp);
    cuts.dedup();
}

/// The edges of a cluster that pass through a strip.
fn fill_strip(cluster: &[Piece], (top, bottom): (f64, f64), strip: &mut Vec<Cut>) {
    strip.clear();
    for piece in cluster.iter().filter(|p| p.turn != 0 && p.y0 <= top && bottom <= p.y1) {
        let x_at = |y: f64| piece.x0 + (piece.x1 - piece.x0) * ((y - piece.y0) / (piece.y1 - piece.y0));
        strip.push(Cut { x0: x_at(top), x1: x_at(bottom), path: piece.path, turn: piece.turn });
    }
}

/// Adds the coverage of one strip and leaves the winding numbers at its right side.
fn walk_strip(strip: &mut [Cut], height: f64, winding: &mut Winding, pad: &mut Pad) {
    strip.sort_by(|a, b| a.at(0.5).total_cmp(&b.at(0.5)));
    let crossing = |w: &[Cut]| w[1].x0 + TOUCH < w[0].x0 || w[1].x1 + TOUCH < w[0].x1;
    let parts = if strip.windows(2).any(crossing) { (height * PARTS).ceil().max(1.0) } else { 1.0 };
    for part in 0..index(parts) {
        let (from, to) = (real(part) / parts, real(part + 1) / parts);
        if part > 0 {
            strip.iter().for_each(|cut| winding.turn(cut.path, -cut.turn));
        }
        let middle = 0.5 * (from + to);
        strip.sort_by(|a, b| a.at(middle).total_cmp(&b.at(middle)));
        for cut in strip.iter() {
            let change = winding.pass(cut.path, cut.turn);
            pad.add(cut.at(from), cut.at(to), height / parts * change);
        }
    }
}

impl Cut {
    /// Its x at a share of the height of the strip.
    fn at(&self, share: f64) -> f64 {
        self.x0 + (self.x1 - self.x0) * share
    }
}

impl Winding {
    /// Crosses an edge from left to right: +1 where this enters the shape, -1 where it leaves it, else 0.
    fn pass(&mut self, path: u32, turn: i32) -> f64 {
        let before = self.inside;
        self.turn(path, turn);
        f64::from(i32::from(self.inside > 0) - i32::from(before > 0))
    }

    /// Changes the winding number of a path.
    fn turn(&mut self, path: u32, turn: i32) {
        let winding = &mut self.of[path as usize];
        self.inside -= u32::from(*winding != 0);
        *winding += turn;
        self.inside += u32::from(*winding != 0);
    }
}

#[cfg(test)]
mod tests {
    use kurbo::{Affine, BezPath, Circle, PathEl, Point, Rect, Shape, Vec2};
    use proptest::prelude::*;

    use super::super::outline::{self, ToPixels, real};
    use super::super::pad::{Levels, Pad};
    use super::super::sweep::Sweep;

    const SIDE: usize = 24;

    /// Coverage of the union of paths on a small page, 0 to 255 a pixel.
    fn coverage(paths: &[BezPath]) -> Vec<u8> {
        let mut sweep = Sweep::default();
        for path in paths {
            let (edges, number) = sweep.add_path();
            let to = ToPixels { scale: 1.0, shift: Vec2::ZERO };
            outline::edges(path, to, real(SIDE), number, edges).unwrap();
        }
        sweep.rewind(SIDE);
        let mut page = vec![0; SIDE * SIDE];
        let mut pad = Pad::default();
        let mut y = 0;
        while y < SIDE {
            sweep.row(y, &mut pad, &mut page[y * SIDE..(y + 1) * SIDE], Levels::FULL);
            let next = sweep.same_until(y).min(SIDE);
            for row in y + 1..next {
                page.copy_within(y * SIDE..(y + 1) * SIDE, row * SIDE);
            }
            y = next;
        }
        page
    }

    fn at(page: &[u8], x: usize, y: usize) -> u8 {
        page[y * SIDE + x]
    }

    fn rect(x0: f64, y0: f64, x1: f64, y1: f64) -> BezPath {
        Rect::new(x0, y0, x1, y1).to_path(0.1)
    }

    fn turned(path: BezPath, degrees: f64) -> BezPath {
        Affine::rotate_about(f64::to_radians(degrees), Point::new(12.0, 12.0)) * path
    }

    #[test]
    fn coverage_is_the_area_within_each_pixel() {
        let page = coverage(&[rect(2.25, 3.5, 4.75, 5.75)]);
        assert_eq!(
            [at(&page, 1, 4), at(&page, 2, 4), at(&page, 3, 4), at(&page, 4, 4), at(&page, 5, 4)],
            [0, 191, 255, 191, 0]
        );
        assert_eq!([at(&page, 2, 3), at(&page, 3, 3), at(&page, 3, 5), at(&page, 4, 5)], [96, 128, 191, 143]);
        let mut triangle = BezPath::new();
        triangle.move_to((4.0, 4.0));
        triangle.line_to((8.0, 4.0));
        triangle.line_to((4.0, 6.0));
        // Row 4 has the area between x = 4 and x = 8 - 2 (y - 4).
        let page = coverage(&[triangle]);
        assert_eq!([at(&page, 4, 4), at(&page, 5, 4), at(&page, 6, 4), at(&page, 7, 4)], [255, 255, 191, 64]);
    }

    #[test]
    fn holes_are_empty_and_turned_holes_are_not() {
        let outer = Circle::new((12.0, 12.0), 9.0).to_path(1e-3);
        let inner = Circle::new((12.0, 12.0), 5.0).to_path(1e-3);
        let with = |inner: BezPath| outer.iter().chain(inner).collect::<BezPath>();
        assert_eq!(at(&coverage(&[with(inner.reverse_subpaths())]), 12, 12), 0);
        assert_eq!(at(&coverage(&[with(inner.clone())]), 12, 12), 255);
        assert_eq!(at(&coverage(&[outer.clone(), inner]), 12, 12), 255);
    }

    /// Two areas that meet along a line show no seam, at any angle, whichever way round each is drawn.
    #[test]
    fn shared_borders_do_not_show() {
        for degrees in [0.0, 1.0, 17.0, 45.0, 73.0, 90.0] {
            let left = turned(rect(1.0, 1.0, 10.3, 23.0), degrees);
            let right = turned(rect(10.3, 1.0, 23.0, 23.0), degrees);
            for right in [right.clone(), right.reverse_subpaths()] {
                let page = coverage(&[left.clone(), right]);
                assert!((6..18).all(|y| (6..18).all(|x| at(&page, x, y) == 255)), "{degrees}");
            }
        }
    }

    #[test]
    fn drawing_a_path_twice_or_both_ways_changes_nothing() {
        for degrees in [0.0, 8.0, 30.0] {
            let once = turned(rect(3.3, 4.4, 15.6, 17.7), degrees);
            let page = coverage(std::slice::from_ref(&once));
            assert_eq!(coverage(&[once.clone(), once.clone()]), page);
            assert_eq!(coverage(&[once.clone(), once.reverse_subpaths()]), page);
            let doubled: BezPath = once.iter().chain(once.iter()).collect();
            assert_eq!(coverage(&[doubled]), page);
        }
    }

    #[test]
    fn shapes_beyond_the_page_are_clipped() {
        let page = coverage(&[rect(-9.0, -9.0, 2.5, 2.5), turned(rect(20.0, -100.0, 400.0, 100.0), 20.0)]);
        assert_eq!([at(&page, 0, 0), at(&page, 2, 0), at(&page, 2, 2), at(&page, 3, 0)], [255, 128, 64, 0]);
        assert_eq!([at(&page, 23, 23), at(&page, 23, 0)], [255, 0]);
        let (whole, cut) = (rect(-3.0, 5.0, 8.0, 30.0), rect(0.0, 5.0, 8.0, 24.0));
        assert_eq!(coverage(&[whole]), coverage(&[cut]));
    }

    fn any_paths() -> impl Strategy<Value = Vec<BezPath>> {
        let point = (-6.0..30.0f64, -6.0..30.0f64).prop_map(Point::from);
        let element = (0..4u8, point.clone(), point.clone(), point.clone()).prop_map(|(kind, a, b, c)| match kind {
            0 => PathEl::QuadTo(a, b),
            1 => PathEl::CurveTo(a, b, c),
            _ => PathEl::LineTo(a),
        });
        let path = (point, prop::collection::vec(element, 2..6))
            .prop_map(|(start, elements)| std::iter::once(PathEl::MoveTo(start)).chain(elements).collect::<BezPath>());
        prop::collection::vec(path, 1..4)
    }

    /// Coverage by another rasteriser, 16 times as fine: 64 by 64 samples in each of our pixels.
    fn reference(paths: &[BezPath]) -> Vec<f64> {
        const FINE: usize = 16;
        let side = (SIDE * FINE) as u32;
        let mut mask = tiny_skia::Mask::new(side, side).unwrap();
        for path in paths {
            let mut builder = tiny_skia::PathBuilder::new();
            let xy = |p: Point| ((p.x * FINE as f64) as f32, (p.y * FINE as f64) as f32);
            for element in path.elements() {
                match *element {
                    PathEl::MoveTo(a) => builder.move_to(xy(a).0, xy(a).1),
                    PathEl::LineTo(a) => builder.line_to(xy(a).0, xy(a).1),
                    PathEl::QuadTo(a, b) => builder.quad_to(xy(a).0, xy(a).1, xy(b).0, xy(b).1),
                    PathEl::CurveTo(a, b, c) => {
                        builder.cubic_to(xy(a).0, xy(a).1, xy(b).0, xy(b).1, xy(c).0, xy(c).1);
                    }
                    PathEl::ClosePath => builder.close(),
                }
            }
            if let Some(path) = builder.finish() {
                mask.fill_path(&path, tiny_skia::FillRule::Winding, true, tiny_skia::Transform::identity());
            }
        }
        let mut page = vec![0.0; SIDE * SIDE];
        for (i, &sample) in mask.data().iter().enumerate() {
            let (x, y) = (i % (SIDE * FINE) / FINE, i / (SIDE * FINE) / FINE);
            page[y * SIDE + x] += f64::from(sample) / 255.0 / (FINE * FINE) as f64;
        }
        page
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 150, ..ProptestConfig::default() })]

        /// One border through a pixel may differ by 1/64, the step of the samples of the reference, by 0.01 for the
        /// flattening of curves and by 1/510 for bytes: 0.028. Pixels with more than three borders are too rare here to
        /// meet in any number of runs.
        #[test]
        fn coverage_agrees_with_another_rasteriser(paths in any_paths()) {
            for (i, (&ours, theirs)) in coverage(&paths).iter().zip(reference(&paths)).enumerate() {
                let error = (f64::from(ours) / 255.0 - theirs).abs();
                prop_assert!(error < 3.0 * 0.028, "pixel {} {}: {error}", i % SIDE, i / SIDE);
            }
        }
    }
}
