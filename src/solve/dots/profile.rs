//! The parallax of a surface place by place, and where it bends.

use crate::scene::{Grid, Relief, Surface};
use crate::solve::depth::Solver;
use crate::solve::problem::ProblemKind;

/// Straight pieces that a wave or a ridge is counted in. They set how finely the stretch of a row is evened out; dots
/// themselves stand at their exact parallax.
const PIECES: u32 = 64;

/// A box, mm.
#[derive(Debug, Clone, Copy)]
pub(super) struct Area {
    /// Left edge.
    pub(super) left: f64,
    /// Upper edge.
    pub(super) top: f64,
    /// Width, above 0.
    pub(super) width: f64,
    /// Height, above 0.
    pub(super) height: f64,
}

impl Area {
    /// The box of this width and height about a middle.
    pub(super) fn about(middle: (f64, f64), extent: (f64, f64)) -> Self {
        Self { left: middle.0 - extent.0 / 2.0, top: middle.1 - extent.1 / 2.0, width: extent.0, height: extent.1 }
    }

    /// Right edge.
    pub(super) fn right(&self) -> f64 {
        self.left + self.width
    }

    /// Lower edge.
    pub(super) fn bottom(&self) -> f64 {
        self.top + self.height
    }
}

/// The parallax over a box, counted from the base; beyond the box it stays as at its edge.
#[derive(Debug)]
pub(super) struct Profile<'a> {
    area: Area,
    /// Parallax where the share is 0 and where it is 1, mm.
    ends: (f64, f64),
    share: Option<&'a Surface>,
    /// Where along a row the parallax bends, mm, from left to right.
    bends: Vec<f64>,
}

impl<'a> Profile<'a> {
    /// The profile of a relief over a box.
    pub(super) fn new(relief: &'a Relief, area: Area, solver: &Solver) -> Result<Self, ProblemKind> {
        let (from, to, share) = match relief {
            Relief::Flat(depth) => (depth, depth, None),
            Relief::Between { from, to, share } if is_known(share) => (from, to, Some(share)),
            Relief::Between { .. } => return Err(ProblemKind::NotFinite),
        };
        let ends = (solver.intended(from)?.0, solver.intended(to)?.0);
        let mut bends: Vec<f64> = share.map(bends).unwrap_or_default();
        bends.retain(|u| (0.0..=1.0).contains(u));
        bends.iter_mut().for_each(|u| *u = area.left + *u * area.width);
        bends.sort_by(f64::total_cmp);
        bends.dedup();
        Ok(Self { area, ends, share, bends })
    }

    /// The parallax at a place, mm.
    pub(super) fn parallax(&self, x: f64, y: f64) -> f64 {
        let Some(surface) = self.share else { return self.ends.0 };
        let u = ((x - self.area.left) / self.area.width).clamp(0.0, 1.0);
        let v = ((y - self.area.top) / self.area.height).clamp(0.0, 1.0);
        // Linear in parallax is even in demand.
        self.ends.0 + (self.ends.1 - self.ends.0) * share_at(surface, u, v)
    }

    /// Where along a row the parallax bends, mm, from left to right.
    pub(super) fn bends(&self) -> &[f64] {
        &self.bends
    }

    /// The nearest and the farthest parallax, mm.
    pub(super) fn range(&self) -> (f64, f64) {
        let (low, high) = self.share.map_or((0.0, 0.0), share_range);
        let at = |share: f64| self.ends.0 + (self.ends.1 - self.ends.0) * share;
        (at(low).min(at(high)), at(low).max(at(high)))
    }
}

/// Whether a surface has a share from 0 to 1 everywhere.
fn is_known(surface: &Surface) -> bool {
    match surface {
        Surface::Tilt(_) | Surface::Waves { .. } => true,
        Surface::Ridges { middles, width } => {
            width.is_finite() && 0.0 < *width && middles.iter().all(|middle| middle.is_finite())
        }
        Surface::Grid(grid) => {
            let whole = 0 < grid.columns && !grid.shares.is_empty() && grid.shares.len() % grid.columns == 0;
            whole && grid.shares.iter().all(|share| (0.0..=1.0).contains(share))
        }
    }
}

/// The share of a surface.
fn share_at(surface: &Surface, u: f64, v: f64) -> f64 {
    use crate::scene::Direction::{Down, Left, Right, Up};
    match surface {
        Surface::Tilt(Right) => u,
        Surface::Tilt(Left) => 1.0 - u,
        Surface::Tilt(Down) => v,
        Surface::Tilt(Up) => 1.0 - v,
        Surface::Ridges { middles, width } => {
            // Where two meet, the higher one counts.
            middles.iter().map(|middle| ridge((u - middle) / width)).fold(0.0, f64::max)
        }
        Surface::Waves { count, down } => {
            let along = if *down { v } else { u };
            raised(f64::from(*count) * along + 0.5)
        }
        Surface::Grid(grid) => grid_at(grid, u, v),
    }
}

/// A ridge from -0.5 to 0.5 about its middle.
fn ridge(from_middle: f64) -> f64 {
    if from_middle.abs() < 0.5 { raised(from_middle) } else { 0.0 }
}

/// A raised cosine: 1 at whole turns, 0 half a turn away.
fn raised(turns: f64) -> f64 {
    (1.0 + libm::cos(std::f64::consts::TAU * turns)) / 2.0
}

/// A grid read off in straight lines along its rows and between them.
fn grid_at(grid: &Grid, u: f64, v: f64) -> f64 {
    let rows = grid.shares.len() / grid.columns;
    let (column, x) = cell(u, grid.columns);
    let (row, y) = cell(v, rows);
    let at = |row: usize, column: usize| grid.shares[row.min(rows - 1) * grid.columns + column.min(grid.columns - 1)];
    let along = |row: usize| at(row, column) + (at(row, column + 1) - at(row, column)) * x;
    along(row) + (along(row + 1) - along(row)) * y
}

/// The point of a line of points before a place, 0 to 1, and the share of the way to the next.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 0 to the number of points")]
fn cell(place: f64, points: usize) -> (usize, f64) {
    let steps = place * (points - 1) as f64;
    (steps as usize, steps - steps.trunc())
}

/// Where a surface bends along a row, as `u`; a smooth bend is counted in straight pieces.
fn bends(surface: &Surface) -> Vec<f64> {
    match surface {
        Surface::Tilt(_) => vec![0.0, 1.0],
        Surface::Ridges { middles, width } => {
            let of = |middle: &f64| {
                let left = middle - width / 2.0;
                let width = *width;
                (0..=PIECES).map(move |i| left + width * f64::from(i) / f64::from(PIECES))
            };
            middles.iter().flat_map(of).collect()
        }
        Surface::Waves { down: true, .. } => Vec::new(),
        Surface::Waves { count, down: false } => {
            let pieces = count.saturating_mul(PIECES);
            (0..=pieces).map(|i| f64::from(i) / f64::from(pieces.max(1))).collect()
        }
        Surface::Grid(grid) => (0..grid.columns).map(|i| i as f64 / (grid.columns.max(2) - 1) as f64).collect(),
    }
}

/// The smallest and the largest share of a surface.
fn share_range(surface: &Surface) -> (f64, f64) {
    match surface {
        Surface::Tilt(_) => (0.0, 1.0),
        Surface::Waves { count, .. } => (0.0, if *count == 0 { 0.0 } else { 1.0 }),
        Surface::Ridges { middles, .. } => {
            let seen = |u: &f64| (0.0..=1.0).contains(u);
            // At their middles, or at the edge of the box that cuts them.
            let tops = middles.iter().copied().filter(seen).chain([0.0, 1.0]);
            (0.0, tops.map(|u| share_at(surface, u, 0.0)).fold(0.0, f64::max))
        }
        Surface::Grid(grid) => {
            grid.shares.iter().fold((1.0, 0.0), |(low, high), &share| (f64::min(low, share), f64::max(high, share)))
        }
    }
}
