//! Exact coverage of filled shapes, one row of pixels at a time.
//!
//! A shape is a union of paths, each filled by the non-zero rule. The coverage of a pixel is the area of the shape
//! within it: not sampled, and right where paths touch, overlap, repeat each other or run in opposite directions. So
//! shared borders do not show and no border is counted twice.
//!
//! How: in one row the edges are sorted from left to right and fall into clusters that do not overlap in x. Between
//! clusters the winding number is the same over the whole height of the row. Most clusters are one edge, or the pieces
//! of one chain that crosses the row once: then the winding changes by one step, and the coverage follows from signed
//! areas. The others are cut into strips at the ends of their edges, and each strip is walked in order. Only where
//! edges cross inside a strip is it cut into [`CUTS`] parts a row, each in the order of its middle.

use std::ops::Range;

use super::outline::{Edge, index, real};

/// Parts a row is cut into where edges cross.
const CUTS: f64 = 16.0;

/// Distances below this many pixels count as touching: far above rounding, far below what a pixel can show.
const TOUCH: f64 = 1e-6;

/// A shape on its way down the page.
#[derive(Debug, Default)]
pub(super) struct Sweep {
    edges: Vec<Edge>,
    paths: u32,
    /// Edges by the row they start in.
    queue: Vec<u32>,
    next: usize,
    rows: Range<usize>,
    /// Edges of the present row, cut to it, from left to right.
    live: Vec<Piece>,
    winding: Winding,
}

/// The work space of a row, shared by all shapes of a page.
#[derive(Debug, Default)]
pub(super) struct Pad {
    /// By how much the coverage of a pixel differs from its left neighbour.
    steps: Vec<f64>,
    /// Pixels where `steps` may differ from zero, from left to right.
    touched: Vec<Range<usize>>,
    cuts: Vec<f64>,
    strip: Vec<Cut>,
}

/// An edge within one row.
#[derive(Debug, Clone, Copy)]
struct Piece {
    left: f64,
    right: f64,
    /// Upper and lower end; y from the top of the row, 0 to 1.
    x0: f64,
    x1: f64,
    y0: f64,
    y1: f64,
    edge: u32,
    slope: f64,
}

/// An edge within one strip of a row: its x at the top and the bottom.
#[derive(Debug, Clone, Copy)]
struct Cut {
    x0: f64,
    x1: f64,
    path: u32,
    turn: i32,
}

/// Winding numbers of the paths of a shape at one place.
#[derive(Debug, Default)]
struct Winding {
    of: Vec<i32>,
    /// How many paths have a winding number other than 0.
    inside: u32,
}

/// How coverage becomes bytes: `unit` times the nearest of the whole numbers 0 to `steps`.
#[derive(Debug, Clone, Copy)]
pub(super) struct Levels {
    pub(super) steps: u8,
    pub(super) unit: u8,
}

impl Levels {
    /// Plain 8-bit coverage.
    pub(super) const FULL: Levels = Levels { steps: 255, unit: 1 };

    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "bounded by `steps`; rounding is meant")]
    fn of(self, coverage: f64) -> u8 {
        let steps = f64::from(self.steps);
        (coverage * steps + 0.5).clamp(0.0, steps) as u8 * self.unit
    }
}

impl Sweep {
    /// Forgets the shape and keeps its buffers.
    pub(super) fn clear(&mut self) {
        self.edges.clear();
        self.paths = 0;
    }

    /// The edges so far, to append those of one more path to, and the number of that path.
    pub(super) fn add_path(&mut self) -> (&mut Vec<Edge>, u32) {
        self.paths += 1;
        (&mut self.edges, self.paths - 1)
    }

    /// Puts the shape at the top of a page of so many rows. Call after the last path and before the first row.
    pub(super) fn rewind(&mut self, height: usize) {
        let edges = &self.edges;
        self.queue.clear();
        self.queue.extend((0u32..).zip(edges).map(|(i, _)| i));
        self.queue.sort_by_key(|&i| index(edges[i as usize].y0));
        self.next = 0;
        let top = edges.iter().map(|e| index(e.y0)).min().unwrap_or(0);
        let bottom = edges.iter().map(|e| index(e.y1.ceil())).max().unwrap_or(0);
        self.rows = top..bottom.min(height);
        self.live.clear();
        self.winding.of.clear();
        self.winding.of.resize(self.paths as usize, 0);
        self.winding.inside = 0;
    }

    /// The rows in which the shape may show.
    pub(super) fn rows(&self) -> Range<usize> {
        self.rows.clone()
    }

    /// Writes the coverage of row `y` where the shape may show; other pixels are left as they are. True if it wrote.
    ///
    /// Rows are asked for from the top down; rows that [`Sweep::same_until`] calls the same may be left out.
    pub(super) fn row(&mut self, y: usize, pad: &mut Pad, out: &mut [u8], levels: Levels) -> bool {
        if !self.rows.contains(&y) {
            return false;
        }
        self.advance(y);
        pad.open(out.len());
        let Self { live, edges, winding, .. } = self;
        let mut rest = live.as_slice();
        while !rest.is_empty() {
            let (cluster, after) = rest.split_at(cluster_len(rest));
            rest = after;
            cover(cluster, edges, winding, pad);
        }
        for piece in live.iter() {
            winding.of[edges[piece.edge as usize].path as usize] = 0;
        }
        winding.inside = 0;
        pad.close(out, levels);
        true
    }

    /// The first row after `y` that may differ from row `y`, which was drawn last.
    #[expect(
        clippy::float_cmp,
        reason = "an upright piece is made with exactly these values; anything else is redrawn"
    )]
    pub(super) fn same_until(&self, y: usize) -> usize {
        if y < self.rows.start {
            return self.rows.start;
        }
        if self.rows.end <= y {
            return usize::MAX;
        }
        let upright = |p: &Piece| p.x0 == p.x1 && p.slope == 0.0 && p.y0 == 0.0 && p.y1 == 1.0;
        if !self.live.iter().all(upright) {
            return y + 1;
        }
        let ends = self.live.iter().map(|p| index(self.edges[p.edge as usize].y1)).min();
        let starts = self.queue.get(self.next).map(|&i| index(self.edges[i as usize].y0));
        ends.into_iter().chain(starts).min().unwrap_or(usize::MAX).max(y + 1)
    }

    /// Drops the edges that ended, admits those that start, cuts all to the row and sorts them.
    fn advance(&mut self, y: usize) {
        let top = real(y);
        let Self { edges, live, queue, next, .. } = self;
        live.retain(|p| edges[p.edge as usize].y1 > top);
        while let Some(&i) = queue.get(*next) {
            let edge = &edges[i as usize];
            if index(edge.y0) > y {
                break;
            }
            *next += 1;
            if edge.y1 > top {
                live.push(Piece::new(i, edge));
            }
        }
        for piece in live.iter_mut() {
            piece.cut(&edges[piece.edge as usize], top);
        }
        live.sort_by(|a, b| a.left.total_cmp(&b.left));
    }
}

impl Piece {
    fn new(number: u32, edge: &Edge) -> Self {
        let slope = if edge.turn == 0 { 0.0 } else { (edge.x1 - edge.x0) / (edge.y1 - edge.y0) };
        Self { left: 0.0, right: 0.0, x0: 0.0, x1: 0.0, y0: 0.0, y1: 0.0, edge: number, slope }
    }

    /// Cuts the edge to the row that starts at `top`. Ends inside the row are kept exactly, so that chains stay joined.
    fn cut(&mut self, edge: &Edge, top: f64) {
        let bounds = (edge.x0.min(edge.x1), edge.x0.max(edge.x1));
        let x_at = |y: f64| (edge.x0 + (y - edge.y0) * self.slope).clamp(bounds.0, bounds.1);
        (self.x0, self.y0) = if edge.y0 < top { (x_at(top), 0.0) } else { (edge.x0, edge.y0 - top) };
        (self.x1, self.y1) = if top + 1.0 < edge.y1 { (x_at(top + 1.0), 1.0) } else { (edge.x1, edge.y1 - top) };
        self.left = self.x0.min(self.x1);
        self.right = self.x0.max(self.x1);
    }
}

/// How many pieces from the first on hang together in x.
fn cluster_len(pieces: &[Piece]) -> usize {
    let mut right = f64::NEG_INFINITY;
    for (i, piece) in pieces.iter().enumerate() {
        if i > 0 && right + TOUCH < piece.left {
            return i;
        }
        right = right.max(piece.right);
    }
    pieces.len()
}

/// Adds the coverage that starts or ends within a cluster, and moves the winding numbers to its right side.
fn cover(cluster: &[Piece], edges: &[Edge], winding: &mut Winding, pad: &mut Pad) {
    for piece in cluster {
        pad.touch(piece.left, piece.right);
    }
    if let Some((path, turn)) = single_chain(cluster, edges) {
        let change = winding.pass(path, turn);
        for piece in cluster {
            pad.add(piece.x0, piece.x1, piece.y1 - piece.y0, change);
        }
    } else {
        cover_strips(cluster, edges, winding, pad);
    }
}

/// Path and turn of a cluster whose pieces cross each height of the row once, all in one direction.
///
/// The winding number just left and just right of a cluster is the same at all heights, so at each height the turns
/// add up to the same number: where all turns are alike, the pieces cover every height equally often.
fn single_chain(cluster: &[Piece], edges: &[Edge]) -> Option<(u32, i32)> {
    let mut found = None;
    let mut height = 0.0;
    for piece in cluster {
        let edge = &edges[piece.edge as usize];
        if edge.turn == 0 {
            continue;
        }
        if *found.get_or_insert((edge.path, edge.turn)) != (edge.path, edge.turn) {
            return None;
        }
        height += piece.y1 - piece.y0;
    }
    found.filter(|_| (height - 1.0).abs() < TOUCH)
}

/// The general case of [`cover`]: strips between the ends of edges, each walked from left to right.
fn cover_strips(cluster: &[Piece], edges: &[Edge], winding: &mut Winding, pad: &mut Pad) {
    let mut cuts = std::mem::take(&mut pad.cuts);
    let mut strip = std::mem::take(&mut pad.strip);
    cuts.clear();
    cuts.extend(cluster.iter().flat_map(|p| [p.y0, p.y1]));
    cuts.sort_by(f64::total_cmp);
    cuts.dedup();
    strip.clear();
    for (&top, &bottom) in cuts.iter().zip(cuts.iter().skip(1)) {
        fill_strip(cluster, edges, (top, bottom), &mut strip);
        walk_strip(&mut strip, bottom - top, winding, pad);
        strip.iter().for_each(|cut| winding.turn(cut.path, -cut.turn));
    }
    strip.iter().for_each(|cut| winding.turn(cut.path, cut.turn));
    pad.cuts = cuts;
    pad.strip = strip;
}

/// The edges of a cluster that pass through a strip.
fn fill_strip(cluster: &[Piece], edges: &[Edge], (top, bottom): (f64, f64), strip: &mut Vec<Cut>) {
    strip.clear();
    for piece in cluster.iter().filter(|p| p.y0 <= top && bottom <= p.y1) {
        let Edge { path, turn, .. } = edges[piece.edge as usize];
        let x_at = |y: f64| piece.x0 + (piece.x1 - piece.x0) * ((y - piece.y0) / (piece.y1 - piece.y0));
        strip.push(Cut { x0: x_at(top), x1: x_at(bottom), path, turn });
    }
}

/// Adds the coverage of one strip and leaves the winding numbers at its right side.
fn walk_strip(strip: &mut [Cut], height: f64, winding: &mut Winding, pad: &mut Pad) {
    strip.sort_by(|a, b| a.at(0.5).total_cmp(&b.at(0.5)));
    let crossing = |w: &[Cut]| w[1].x0 + TOUCH < w[0].x0 || w[1].x1 + TOUCH < w[0].x1;
    let parts = if strip.windows(2).any(crossing) { (height * CUTS).ceil().max(1.0) } else { 1.0 };
    for part in 0..index(parts) {
        let (from, to) = (real(part) / parts, real(part + 1) / parts);
        if part > 0 {
            strip.iter().for_each(|cut| winding.turn(cut.path, -cut.turn));
        }
        let middle = 0.5 * (from + to);
        strip.sort_by(|a, b| a.at(middle).total_cmp(&b.at(middle)));
        for cut in strip.iter() {
            let change = winding.pass(cut.path, cut.turn);
            pad.add(cut.at(from), cut.at(to), height / parts, change);
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
    fn pass(&mut self, path: u32, turn: i32) -> i32 {
        let before = self.inside;
        self.turn(path, turn);
        i32::from(self.inside > 0) - i32::from(before > 0)
    }

    /// Changes the winding number of a path.
    fn turn(&mut self, path: u32, turn: i32) {
        let winding = &mut self.of[path as usize];
        self.inside -= u32::from(*winding != 0);
        *winding += turn;
        self.inside += u32::from(*winding != 0);
    }
}

impl Pad {
    fn open(&mut self, width: usize) {
        self.steps.resize(width + 2, 0.0);
        self.touched.clear();
    }

    /// Marks the pixels that an edge from `left` to `right` may change. Called with rising `left`.
    fn touch(&mut self, left: f64, right: f64) {
        let width = self.steps.len() - 2;
        let (first, end) = (index(left).min(width), index(right.ceil()).max(index(left) + 1).min(width) + 1);
        match self.touched.last_mut() {
            Some(last) if first <= last.end => last.end = last.end.max(end),
            _ => self.touched.push(first..end),
        }
    }

    /// Adds `change` times the coverage of all that lies right of an edge piece of this height, which runs between
    /// `x0` and `x1`.
    ///
    /// The coverage of a pixel right of the piece is its height; of a pixel that the piece crosses, the area between.
    /// With u the distance from the left end and L the extent of the piece, the area up to u is u²/2L within the piece
    /// and u - L/2 beyond it; a pixel takes the difference of two such areas.
    fn add(&mut self, x0: f64, x1: f64, height: f64, change: i32) {
        if change == 0 {
            return;
        }
        let width = real(self.steps.len() - 2);
        let (left, right) = (x0.min(x1), x0.max(x1));
        let (height, extent) = (height * f64::from(change), right - left);
        if right <= 0.0 {
            self.steps[0] += height;
            return;
        }
        if width <= left {
            return;
        }
        let first = index(left);
        let area = |x: f64| {
            let u = x - left;
            if u <= 0.0 {
                0.0
            } else if u < extent {
                u * u / (2.0 * extent)
            } else {
                u - 0.5 * extent
            }
        };
        let (mut before, mut last) = (area(real(first)), 0.0);
        for x in first..index(right.ceil().min(width)).max(first + 1) {
            let after = area(real(x + 1));
            let cover = height * (after - before);
            self.steps[x] += cover - last;
            (before, last) = (after, cover);
        }
        self.steps[index(right.ceil().min(width)).max(first + 1)] += height - last;
    }

    /// Sums the steps to coverage, writes it and leaves the pad clean.
    fn close(&mut self, out: &mut [u8], levels: Levels) {
        let width = out.len();
        let (mut cover, mut x) = (0.0, 0);
        for touched in self.touched.drain(..) {
            out[x..touched.start].fill(levels.of(cover));
            for x in touched.clone() {
                cover += std::mem::take(&mut self.steps[x]);
                if let Some(pixel) = out.get_mut(x) {
                    *pixel = levels.of(cover);
                }
            }
            x = touched.end.min(width);
        }
        out[x..].fill(levels.of(cover));
    }
}
