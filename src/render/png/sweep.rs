//! Shapes on their way down a page: which edges are in a row, and in which order.
//!
//! A shape is a union of paths, each filled by the non-zero rule. What that covers is found by [`super::cover`].

use std::ops::Range;

use super::cover::Walker;
use super::outline::{Edge, index, real};
use super::pad::{Levels, Pad};

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
    walker: Walker,
}

/// An edge within one row.
#[derive(Debug, Clone, Copy)]
pub(super) struct Piece {
    pub(super) left: f64,
    pub(super) right: f64,
    /// Upper and lower end; y from the top of the row, 0 to 1.
    pub(super) x0: f64,
    pub(super) x1: f64,
    pub(super) y0: f64,
    pub(super) y1: f64,
    /// Change of x a row.
    slope: f64,
    edge: u32,
    pub(super) path: u32,
    pub(super) turn: i32,
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
        self.walker.start(self.paths);
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
        pad.open(out.len());
        self.cover(y, pad);
        pad.close(out, levels)
    }

    /// Adds the coverage of row `y` to an open pad. Rows as for [`Sweep::row`].
    pub(super) fn cover(&mut self, y: usize, pad: &mut Pad) {
        if self.rows.contains(&y) {
            self.advance(y);
            self.walker.row(&self.live, self.upright, pad);
        }
    }

    /// The first row after `y` that may differ from row `y`, which was drawn last.
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
