//! One intended depth → one parallax, and one parallax → how it stands in every unit.
//!
//! A base, where a professional set one, comes in here and nowhere else: intended depths count from it, and every
//! parallax that leaves this file for the page has it in it. How a feature stands is told of what is drawn.

use super::Stand;
use super::problem::ProblemKind;
use crate::optics::{Viewer, Viewing, Zone, limits};
use crate::scene::{Depth, Side};
use crate::units::{Angle, Mm, PrismDioptre};

/// Grid of all numbers that leave the solver: 1e-6 mm, far below any device dot.
const STEPS_PER_MM: f64 = 1e6;

/// A viewer, checked once.
pub(super) struct Solver {
    /// The viewing that pages are computed for.
    pub(super) own: Viewing,
    smallest: Viewing,
    largest: Viewing,
    /// What pages may ask of the reader, where that is known.
    zone: Option<Zone>,
    /// What the page rides on: its own parallax, and part of all others.
    base: Mm,
    /// The same as a demand.
    pub(super) base_demand: PrismDioptre,
}

/// How a parallax as drawn stands before a viewer, in every unit; a base is part of what is drawn.
///
/// `None` for a parallax that is not finite and for a viewer whose distance and ipds are not finite, greater than 0
/// and in order (smallest, own, largest).
pub fn stand(parallax: Mm, viewer: &Viewer) -> Option<Stand> {
    Solver::new(viewer).ok()?.stand(Mm(quantise(parallax.0)?))
}

/// How an intended depth stands before a viewer, in every unit: one depth converted to all others.
///
/// Refuses what [`solve`](super::solve) refuses.
pub fn stand_of(depth: &Depth, viewer: &Viewer) -> Result<Stand, ProblemKind> {
    let solver = Solver::new(viewer)?;
    solver.stand(solver.parallax(depth)?).ok_or(ProblemKind::NotFinite)
}

impl Solver {
    /// Checks the viewer.
    pub(super) fn new(viewer: &Viewer) -> Result<Self, ProblemKind> {
        let (low, high) = viewer.ipd_range;
        let in_order = low <= viewer.ipd && viewer.ipd <= high;
        match (viewer.viewing(), viewer.smallest(), viewer.largest()) {
            (Some(own), Some(smallest), Some(largest)) if in_order => {
                let (base, base_demand) = (viewer.base_parallax(), viewer.base.horizontal);
                Ok(Self { own, smallest, largest, zone: viewer.zone, base, base_demand })
            }
            _ => Err(ProblemKind::BadViewer { viewer: *viewer }),
        }
    }

    /// The parallax that is drawn for an intended depth, on the grid, refused past parallel eyes.
    pub(super) fn parallax(&self, depth: &Depth) -> Result<Mm, ProblemKind> {
        self.drawn(self.intended(depth)?)
    }

    /// The parallax of an intended depth counted from the base, on the grid; refused where, with the base, it is past
    /// parallel eyes.
    pub(super) fn intended(&self, depth: &Depth) -> Result<Mm, ProblemKind> {
        let intended = quantise(self.exact(depth)?.0).map(Mm).ok_or(ProblemKind::NotFinite)?;
        let parallax = self.drawn(intended)?;
        if limits::within_parallel(parallax, self.smallest.ipd()) {
            return Ok(intended);
        }
        Err(ProblemKind::PastParallel {
            parallax,
            base: self.base_demand,
            distance: self.own.distance(),
            smallest_ipd: self.smallest.ipd(),
        })
    }

    /// What is drawn for a parallax counted from the base, on the grid: the one place where the base comes in.
    pub(super) fn drawn(&self, intended: Mm) -> Result<Mm, ProblemKind> {
        quantise(intended.0 + self.base.0).map(Mm).ok_or(ProblemKind::NotFinite)
    }

    /// Half the parallax of a depth on the grid, mm: how far it moves what is drawn aside.
    pub(super) fn half(&self, by: &Depth) -> Result<f64, ProblemKind> {
        quantise(self.exact(by)?.0 / 2.0).ok_or(ProblemKind::NotFinite)
    }

    /// The parallax of an intended depth as the formulas give it.
    fn exact(&self, depth: &Depth) -> Result<Mm, ProblemKind> {
        match depth {
            Depth::Page => Ok(Mm(0.0)),
            Depth::Place(amount, side) => self.of_place(amount_of(amount.0)?, *side),
            Depth::Demand(demand, side) => {
                let demand = PrismDioptre(toward(amount_of(demand.0)?, *side));
                self.own.parallax_of_demand(demand).ok_or(ProblemKind::NotFinite)
            }
            Depth::Disparity(angle, side) => {
                let eta = toward(amount_of(angle.to_radians())?, *side);
                self.own.parallax_of_disparity(Angle::from_radians(eta)).ok_or(ProblemKind::TooMuchDisparity {
                    amount: *angle,
                    side: *side,
                    limit: self.largest_disparity(*side),
                })
            }
            Depth::Range(share, side) => self.of_range(*share, *side),
            Depth::Parallax(amount, side) => Ok(Mm(-toward(amount_of(amount.0)?, *side))),
            // A multiple in parallax is one in demand, as below.
            Depth::Between(ends, share) => {
                let share = if (0.0..=1.0).contains(share) { *share } else { return Err(ProblemKind::NotFinite) };
                let (from, to) = (self.exact(&ends.0)?.0, self.exact(&ends.1)?.0);
                // Linear in parallax is even in demand: one is a fixed multiple of the other.
                Ok(Mm(from + (to - from) * share))
            }
            Depth::Times(depth, times) => Ok(Mm(self.exact(depth)?.0 * times)),
        }
    }

    /// The parallax of a share of the reader's zone on this side.
    fn of_range(&self, share: f64, side: Side) -> Result<Mm, ProblemKind> {
        let zone = self.zone.ok_or(ProblemKind::NoRange { share, side })?;
        let end = match side {
            Side::Toward => zone.toward,
            Side::Away => zone.away,
        };
        let demand = PrismDioptre(toward(amount_of(share)? * end.0, side));
        self.own.parallax_of_demand(demand).ok_or(ProblemKind::NotFinite)
    }

    /// The parallax of a distance from the page.
    fn of_place(&self, amount: f64, side: Side) -> Result<Mm, ProblemKind> {
        let distance = self.own.distance();
        let place = Mm(distance.0 - toward(amount, side));
        if place.0 <= 0.0 {
            return Err(ProblemKind::BehindEyes { amount: Mm(amount), distance });
        }
        self.own.parallax_of_place(place).ok_or(ProblemKind::NotFinite)
    }

    /// The disparity that no depth on this side reaches: eyes turned by 180 degrees towards or away from each other.
    fn largest_disparity(&self, side: Side) -> Angle {
        let page = self.own.vergence(Mm(0.0)).unwrap_or_default().to_radians();
        Angle::from_radians(std::f64::consts::PI - toward(page, side))
    }

    /// How a parallax as drawn stands, in every unit.
    pub(super) fn stand(&self, parallax: Mm) -> Option<Stand> {
        Some(Stand {
            parallax,
            demand: self.own.demand_of_parallax(parallax)?,
            disparity: self.own.disparity_of_parallax(parallax)?,
            place: self.own.place_of_parallax(parallax),
            place_range: (self.smallest.place_of_parallax(parallax), self.largest.place_of_parallax(parallax)),
        })
    }
}

/// An amount that counts toward the reader: positive toward, negative away.
fn toward(amount: f64, side: Side) -> f64 {
    match side {
        Side::Toward => amount,
        Side::Away => -amount,
    }
}

/// An amount of depth: finite and 0 or more, for the side says which way.
fn amount_of(amount: f64) -> Result<f64, ProblemKind> {
    match amount {
        a if !a.is_finite() => Err(ProblemKind::NotFinite),
        a if a < 0.0 => Err(ProblemKind::NegativeAmount),
        a => Ok(a),
    }
}

/// The nearest number on the grid, never -0; `None` where there is none.
pub(super) fn quantise(mm: f64) -> Option<f64> {
    let steps = mm * STEPS_PER_MM;
    steps.is_finite().then(|| steps.round() / STEPS_PER_MM + 0.0)
}
