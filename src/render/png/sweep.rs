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
    /// Edges by the row they start in: the row in the upper half, the index of the edge in the lower.
    queue: Vec<u64>,
    next: usize,
    rows: Range<usize>,
    /// Edges of the present row, cut to it, from left to right.
    live: Vec<Piece>,
    /// Level edges of the present row.
    level: Vec<Piece>,
    /// No edge of the present row leans.
    upright: bool,
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
    /// Change of x a row.
    slope: f64,
    edge: u32,
    path: u32,
    turn: i32,
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
        (coverage * steps + 0.5).min(steps) as u8 * self.unit
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
        if self.edges.iter().all(|edge| edge.turn == 0 || edge.is_upright()) {
            // Level edges only matter where something leans: see `advance`.
            self.edges.retain(|edge| edge.turn != 0);
        }
        let edges = &self.edges;
        self.queue.clear();
        self.queue.extend(edges.iter().zip(0u64..).map(|(edge, i)| (index(edge.y0) as u64) << 32 | i));
        self.queue.sort_unstable();
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

    /// Writes the coverage of row `y` and tells to which pixels; there is none beyond them, and nothing is written there.
    ///
    /// Rows are asked for from the top down; rows that [`Sweep::same_until`] calls the same may be left out.
    pub(super) fn row(&mut self, y: usize, pad: &mut Pad, out: &mut [u8], levels: Levels) -> Range<usize> {
        if !self.rows.contains(&y) {
            return 0..0;
        }
        self.advance(y);
        pad.open(out.len());
        let Self { live, winding, upright, .. } = self;
        if *upright {
            cover_upright(live, winding, pad);
        } else {
            let mut rest = live.as_slice();
            while !rest.is_empty() {
                let (cluster, after) = rest.split_at(cluster_len(rest));
                cover(cluster, winding, pad);
                rest = after;
            }
        }
        live.iter().for_each(|piece| winding.of[piece.path as usize] = 0);
        winding.inside = 0;
        pad.close(out, levels)
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
        if !self.upright || !self.live.iter().all(Piece::is_whole) {
            return y + 1;
        }
        let ends = self.live.iter().map(|p| index(self.edges[p.edge as usize].y1)).min();
        let starts = self.queue.get(self.next).map(|&entry| unpack(entry).0);
        ends.into_iter().chain(starts).min().unwrap_or(usize::MAX).max(y + 1)
    }

    /// Drops the edges that ended, admits those that start, cuts all to the row and sorts them.
    fn advance(&mut self, y: usize) {
        let top = real(y);
        let Self { edges, live, level, queue, next, upright, .. } = self;
        live.retain_mut(|piece| {
            let edge = &edges[piece.edge as usize];
            piece.advance(edge, top);
            edge.y1 > top && piece.turn != 0
        });
        sort_nearly_sorted(live);
        let old = live.len();
        level.clear();
        while let Some((row, i)) = queue.get(*next).copied().map(unpack) {
            if row > y {
                break;
            }
            *next += 1;
            let piece = Piece::new(i, &edges[i as usize], top);
            if piece.turn == 0 { level.push(piece) } else { live.push(piece) }
        }
        *upright = live.iter().all(|piece| piece.slope == 0.0);
        if !*upright {
            live.append(level);
        }
        if live.len() - old < 16 {
            sort_nearly_sorted(live);
        } else {
            live[old..].sort_by(by_left);
            live.sort_by(by_left);
        }
    }
}

/// Row and edge of an entry of the queue.
#[allow(clippy::cast_possible_truncation, reason = "the halves are taken apart")]
fn unpack(entry: u64) -> (usize, u32) {
    ((entry >> 32) as usize, entry as u32)
}

fn by_left(a: &Piece, b: &Piece) -> std::cmp::Ordering {
    a.left.total_cmp(&b.left)
}

/// Sorts pieces of which few stand far from their place: those that were sorted in the row above.
fn sort_nearly_sorted(pieces: &mut [Piece]) {
    for i in 1..pieces.len() {
        if pieces[i].left < pieces[i - 1].left {
            let at = pieces[..i].partition_point(|other| other.left <= pieces[i].left);
            pieces[at..=i].rotate_right(1);
        }
    }
}

impl Piece {
    /// The part of an edge in the row that starts at `top`, the first row of the page that the edge is in.
    fn new(number: u32, edge: &Edge, top: f64) -> Self {
        let Edge { x0, y0, path, turn, .. } = *edge;
        let slope = if turn == 0 { 0.0 } else { (edge.x1 - x0) / (edge.y1 - y0) };
        let mut piece = Self { left: x0, right: x0, x0, x1: x0, y0: 0.0, y1: 0.0, slope, edge: number, path, turn };
        if y0 < top {
            piece.x1 = piece.x_at(top, edge);
        }
        piece.advance(edge, top);
        piece.y0 = (y0 - top).max(0.0);
        piece
    }

    /// Goes on to the row that starts at `top`. Ends inside the row are kept exactly, so that chains stay joined.
    fn advance(&mut self, edge: &Edge, top: f64) {
        self.x0 = self.x1;
        self.y0 = 0.0;
        (self.x1, self.y1) =
            if top + 1.0 < edge.y1 { (self.x_at(top + 1.0, edge), 1.0) } else { (edge.x1, edge.y1 - top) };
        self.left = self.x0.min(self.x1);
        self.right = self.x0.max(self.x1);
    }

    fn x_at(&self, y: f64, edge: &Edge) -> f64 {
        (edge.x0 + (y - edge.y0) * self.slope).max(edge.x0.min(edge.x1)).min(edge.x0.max(edge.x1))
    }

    /// Whether it crosses the whole height of the row.
    #[allow(clippy::float_cmp, reason = "`cut` sets these very numbers")]
    fn is_whole(&self) -> bool {
        self.y0 == 0.0 && self.y1 == 1.0
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

/// Adds the coverage that starts or ends within a cluster, and moves the winding numbers to its right side.
fn cover(cluster: &[Piece], winding: &mut Winding, pad: &mut Pad) {
    if let [piece] = cluster
        && piece.is_whole()
    {
        pad.touch(piece.left, piece.right);
        let change = winding.pass(piece.path, piece.turn);
        pad.add(piece.x0, piece.x1, change);
        return;
    }
    for piece in cluster {
        pad.touch(piece.left, piece.right);
    }
    if let Some((path, turn)) = single_chain(cluster) {
        let change = winding.pass(path, turn);
        for piece in cluster {
            pad.add(piece.x0, piece.x1, (piece.y1 - piece.y0) * change);
        }
    } else {
        cover_strips(cluster, winding, pad);
    }
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

/// Adds the coverage of a whole row in which all edges are upright: in each strip they stand in the order of the row.
fn cover_upright(pieces: &[Piece], winding: &mut Winding, pad: &mut Pad) {
    let mut cuts = std::mem::take(&mut pad.cuts);
    find_cuts(pieces, &mut cuts);
    for piece in pieces {
        pad.touch(piece.left, piece.right);
    }
    for (&top, &bottom) in cuts.iter().zip(cuts.iter().skip(1)) {
        for piece in pieces.iter().filter(|p| p.y0 <= top && bottom <= p.y1) {
            let change = winding.pass(piece.path, piece.turn);
            pad.add(piece.x0, piece.x0, (bottom - top) * change);
        }
    }
    pad.cuts = cuts;
}

/// The heights at which pieces begin or end, sorted.
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

/// The general case of [`cover`]: strips between the ends of edges, each walked from left to right.
fn cover_strips(cluster: &[Piece], winding: &mut Winding, pad: &mut Pad) {
    let mut cuts = std::mem::take(&mut pad.cuts);
    let mut strip = std::mem::take(&mut pad.strip);
    find_cuts(cluster, &mut cuts);
    strip.clear();
    for (&top, &bottom) in cuts.iter().zip(cuts.iter().skip(1)) {
        fill_strip(cluster, (top, bottom), &mut strip);
        walk_strip(&mut strip, bottom - top, winding, pad);
        strip.iter().for_each(|cut| winding.turn(cut.path, -cut.turn));
    }
    strip.iter().for_each(|cut| winding.turn(cut.path, cut.turn));
    pad.cuts = cuts;
    pad.strip = strip;
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

impl Pad {
    fn open(&mut self, width: usize) {
        self.steps.resize(width + 2, 0.0);
        self.touched.clear();
    }

    /// Marks the pixels that an edge from `left` to `right` may change. Called with rising `left`.
    fn touch(&mut self, left: f64, right: f64) {
        let width = self.steps.len() - 2;
        let (first, end) = (index(left).min(width), (index(right) + 2).min(width + 1));
        match self.touched.last_mut() {
            Some(last) if first <= last.end => last.end = last.end.max(end),
            _ => self.touched.push(first..end),
        }
    }

    /// Adds the coverage of all that lies right of an edge piece between `x0` and `x1` of this height, which is
    /// negative where the shape ends.
    ///
    /// The coverage of a pixel right of the piece is the height; of a pixel that the piece crosses, the area right of
    /// the piece. With u the distance from the left end and L the extent of the piece, the area up to u is u²/2L within
    /// the piece and u - L/2 beyond it; a pixel takes the difference of two such areas.
    fn add(&mut self, x0: f64, x1: f64, height: f64) {
        let width = self.steps.len() - 2;
        let (left, right) = (x0.min(x1), x0.max(x1));
        if right <= 0.0 {
            self.steps[0] += height;
            return;
        }
        if height == 0.0 || real(width) <= left {
            return;
        }
        let (first, extent) = (index(left), right - left);
        if 0.0 <= left && right <= real(first + 1) {
            let beyond = height * (0.5 * (left + right) - real(first));
            self.steps[first] += height - beyond;
            self.steps[first + 1] += beyond;
            return;
        }
        let area = |u: f64| if u < extent { u * u / (2.0 * extent) } else { u - 0.5 * extent };
        let (mut before, mut last) = (area((real(first) - left).max(0.0)), 0.0);
        let end = index(right).min(width - 1) + 1;
        for x in first..end {
            let after = area(real(x + 1) - left);
            let cover = height * (after - before);
            self.steps[x] += cover - last;
            (before, last) = (after, cover);
        }
        self.steps[end] += height - last;
    }

    /// Sums the steps to coverage, writes it, tells from which pixel to which, and leaves the pad clean.
    fn close(&mut self, out: &mut [u8], levels: Levels) -> Range<usize> {
        let width = out.len();
        let start = self.touched.first().map_or(0, |touched| touched.start);
        let (mut cover, mut x) = (0.0, start);
        for touched in self.touched.drain(..) {
            out[x..touched.start].fill(levels.of(cover));
            x = touched.end.min(width);
            for (step, pixel) in self.steps[touched.start..x].iter_mut().zip(&mut out[touched.start..x]) {
                cover += std::mem::take(step);
                *pixel = levels.of(cover);
            }
        }
        self.steps[width..].fill(0.0);
        if levels.of(cover) > 0 {
            // The shape goes on beyond the right edge of the page.
            out[x..].fill(levels.of(cover));
            x = width;
        }
        start..x
    }
}
