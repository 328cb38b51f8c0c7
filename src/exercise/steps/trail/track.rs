//! A trail's path measured by its length, so that depths and beads can be spaced along it.

use crate::scene::Depth;

use super::TrailPath;

/// Distance between the points of a curved path, mm (design choice: at the tightest curve an author can ask for, the
/// smooth line through such points stays within a hundredth of a millimetre of the true curve).
const STEP: f64 = 2.0;
/// How finely a curve is measured before its points are spaced evenly.
const FINE: u32 = 2000;

/// A path measured by its length.
pub(super) struct Track {
    /// Corners, or fine points of a curve.
    points: Vec<(f64, f64)>,
    /// Length from the start to each point, mm.
    reach: Vec<f64>,
}

impl Track {
    pub(super) fn of(path: &TrailPath) -> Self {
        let points = match path {
            TrailPath::Line { from, to } => vec![(from.x.0, from.y.0), (to.x.0, to.y.0)],
            TrailPath::Polyline { points } => points.iter().map(|at| (at.x.0, at.y.0)).collect(),
            _ => (0..=FINE).map(|i| curve_at(path, f64::from(i) / f64::from(FINE))).collect(),
        };
        let mut reach = vec![0.0];
        for pair in points.windows(2) {
            let step = libm::hypot(pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
            reach.push(reach[reach.len() - 1] + step);
        }
        Self { points, reach }
    }

    pub(super) fn length(&self) -> f64 {
        self.reach[self.reach.len() - 1]
    }

    /// How many steps of at most [`STEP`] make the track.
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a track on a page is a few metres at the most, far below the largest u32"
    )]
    pub(super) fn steps(&self) -> u32 {
        libm::ceil(self.length() / STEP).max(1.0) as u32
    }

    /// The shares of the length at which the corners lie.
    pub(super) fn corner_shares(&self) -> Vec<f64> {
        self.reach.iter().map(|reach| reach / self.length()).collect()
    }

    /// Corners and depth turns, in order, each once.
    pub(super) fn stations_with(&self, depths: &[(f64, Depth)]) -> Vec<f64> {
        let mut shares = self.corner_shares();
        shares.extend(depths.iter().map(|&(share, _)| share));
        shares.sort_by(f64::total_cmp);
        shares.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        shares
    }

    /// The point at a share of the length.
    pub(super) fn at(&self, share: f64) -> (f64, f64) {
        let wanted = share * self.length();
        let next = self.reach.partition_point(|&reach| reach < wanted).clamp(1, self.reach.len() - 1);
        let (from, to) = (self.points[next - 1], self.points[next]);
        let step = self.reach[next] - self.reach[next - 1];
        let t = if 0.0 < step { (wanted - self.reach[next - 1]) / step } else { 0.0 };
        (from.0 + (to.0 - from.0) * t, from.1 + (to.1 - from.1) * t)
    }
}

/// A curved path at share `t` of its parameter, mm.
fn curve_at(path: &TrailPath, t: f64) -> (f64, f64) {
    use std::f64::consts::TAU;
    match path {
        TrailPath::Wave { from, to, waves, height } => {
            let (dx, dy) = (to.x.0 - from.x.0, to.y.0 - from.y.0);
            let length = libm::hypot(dx, dy);
            let swing = height.0 / 2.0 * libm::sin(TAU * f64::from(*waves) * t);
            // The swing stands at right angles to the line from start to end.
            (from.x.0 + dx * t - dy / length * swing, from.y.0 + dy * t + dx / length * swing)
        }
        TrailPath::Spiral { turns, outer, inner } => {
            let radius = outer.0 + (inner.0 - outer.0) * t;
            let angle = TAU * (f64::from(*turns) * t - 0.25);
            (radius * libm::cos(angle), radius * libm::sin(angle))
        }
        TrailPath::Loop { width, height } => {
            let angle = TAU * (t - 0.25);
            (width.0 / 2.0 * libm::cos(angle), height.0 / 2.0 * libm::sin(angle))
        }
        TrailPath::Line { from, to } => (from.x.0 + (to.x.0 - from.x.0) * t, from.y.0 + (to.y.0 - from.y.0) * t),
        TrailPath::Polyline { points } => points.first().map_or((0.0, 0.0), |at| (at.x.0, at.y.0)),
    }
}
