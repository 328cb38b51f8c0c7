//! Fusional reserves: how far two eyes can turn from the page before a target blurs, breaks in two, and comes back; and
//! the zone of demands that follows from them.
//!
//! Reserves are a professional's findings, or a published norm that the author names. They bound what a page may ask;
//! nothing here measures anyone.

use super::limits::percival_zone;
use crate::units::{Angle, Mm, PrismDioptre};

/// The reserve on one side, as demands of 0 or more against the page.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reserve {
    /// Where the target blurs, if it does before it breaks.
    pub blur: Option<PrismDioptre>,
    /// Where it breaks in two.
    pub breaks: PrismDioptre,
    /// Where it becomes one again on the way back, if that is known.
    pub recovery: Option<PrismDioptre>,
}

impl Reserve {
    /// Where clear single vision ends: the blur, else the break.
    /// Source: `[Sheard1930]`, blur, else break.
    pub fn clear(&self) -> PrismDioptre {
        self.blur.unwrap_or(self.breaks)
    }
}

/// Both reserves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reserves {
    /// Base-in: away.
    pub away: Reserve,
    /// Base-out: toward.
    pub toward: Reserve,
}

/// A published set of norms.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Norms {
    /// Near, 40 cm: base-out 17/21/11, base-in 13/21/13.
    MorganNear,
    /// Far, 6 m: base-out 9/19/10, base-in without a blur, 7/4.
    MorganFar,
}

impl Norms {
    /// The words of specs, in the order of [`Norms::ALL`].
    pub const WORDS: &[&str] = &["morgan near", "morgan far"];
    /// All of them.
    pub const ALL: [Norms; 2] = [Norms::MorganNear, Norms::MorganFar];

    /// As specs write it.
    pub const fn name(self) -> &'static str {
        match self {
            Norms::MorganNear => "morgan near",
            Norms::MorganFar => "morgan far",
        }
    }

    /// The reserves: means of a group of people, in prism dioptres.
    /// Source: `[Morgan1944]`; the near base-in row is from memory.
    pub fn reserves(self) -> Reserves {
        let reserve = |blur: Option<f64>, breaks, recovery| Reserve {
            blur: blur.map(PrismDioptre),
            breaks: PrismDioptre(breaks),
            recovery: Some(PrismDioptre(recovery)),
        };
        match self {
            Norms::MorganNear => {
                Reserves { away: reserve(Some(13.0), 21.0, 13.0), toward: reserve(Some(17.0), 21.0, 11.0) }
            }
            Norms::MorganFar => Reserves { away: reserve(None, 7.0, 4.0), toward: reserve(Some(9.0), 19.0, 10.0) },
        }
    }
}

/// A resting turn of the eyes that fusion holds in check: positive outward (exo), negative inward (eso).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Phoria(pub PrismDioptre);

/// What bounds one end of a zone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bound {
    /// The middle third of clear single vision.
    Percival,
    /// A reserve of twice the phoria.
    Sheard,
    /// The whole of clear single vision.
    Reserve,
}

impl Bound {
    /// As pages and report name it.
    pub const fn name(self) -> &'static str {
        match self {
            Bound::Percival => "percival",
            Bound::Sheard => "sheard",
            Bound::Reserve => "reserve",
        }
    }
}

/// The demands that a page may ask of a reader, against the page; both ends are amounts of 0 or more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Zone {
    /// The most away.
    pub away: PrismDioptre,
    /// What bounds it.
    pub away_bound: Bound,
    /// The most toward.
    pub toward: PrismDioptre,
    /// What bounds it.
    pub toward_bound: Bound,
}

impl Zone {
    /// The zone for everyday practice: the middle third, and on the side that works against a phoria no more than leaves
    /// a reserve of twice the turn. An end that would lie on the other side of the page is 0. `None` for numbers that are
    /// none.
    ///
    /// A demand d toward takes d from the reserve R and adds d to the turn f that it works against, so
    /// `R - d >= 2 (f + d)`, which is `d <= (R - 2 f) / 3`: the same step as the prism that [`super::limits::sheard_prism`]
    /// gives, with the other sign.
    ///
    /// Source: `[Percival1928]`, `[Sheard1930]`; the demand form is derived.
    pub fn everyday(reserves: &Reserves, phoria: Option<Phoria>) -> Option<Self> {
        let (away, toward) = percival_zone(reserves.away.clear(), reserves.toward.clear())?;
        let mut zone = Self {
            away: PrismDioptre((0.0 - away.0).max(0.0)),
            away_bound: Bound::Percival,
            toward: PrismDioptre(toward.0.max(0.0)),
            toward_bound: Bound::Percival,
        };
        let turn = phoria.map_or(0.0, |phoria| phoria.0.0);
        if !turn.is_finite() {
            return None;
        }
        let (reserve, end, bound) = if 0.0 < turn {
            (reserves.toward.clear(), &mut zone.toward, &mut zone.toward_bound)
        } else {
            (reserves.away.clear(), &mut zone.away, &mut zone.away_bound)
        };
        let sheard = PrismDioptre(((reserve.0 - 2.0 * turn.abs()) / 3.0).max(0.0));
        if turn.abs() > 0.0 && sheard < *end {
            (*end, *bound) = (sheard, Bound::Sheard);
        }
        Some(zone)
    }

    /// The whole of clear single vision: for a professional to open.
    pub fn whole(reserves: &Reserves) -> Self {
        Self {
            away: reserves.away.clear(),
            away_bound: Bound::Reserve,
            toward: reserves.toward.clear(),
            toward_bound: Bound::Reserve,
        }
    }

    /// Whether a demand (toward positive) lies in the zone, with room for rounding.
    pub fn holds(&self, demand: PrismDioptre) -> bool {
        -self.away.0 - ROUNDING <= demand.0 && demand.0 <= self.toward.0 + ROUNDING
    }

    /// The end on the side of a demand, toward positive.
    pub fn end_beside(&self, demand: PrismDioptre) -> PrismDioptre {
        if demand.0 < 0.0 { self.away } else { self.toward }
    }
}

/// Rounding that a demand may have against its limit, pd: the grid of the solver at any distance of a page.
const ROUNDING: f64 = 1e-6;

/// Disparity that a target of this size fuses over without a movement of the eyes: a quarter of the period whose half
/// it is, at least the smallest limit found at the fovea.
///
/// `size` is the angle of its longer side. Source: `[Schor1984]`, 90 degree phase limit; `[Qin2006]`; that a target
/// counts as half a period is a design choice.
pub fn fusion_of_target(size: Angle) -> Option<Angle> {
    let degrees = 2.0 * size.to_degrees();
    let coarse = super::limits::fusion_of_detail(1.0 / degrees)?;
    let fine = super::limits::fusion_horizontal().0;
    Some(if coarse.to_radians() < fine.to_radians() { fine } else { coarse })
}

/// Whether a place is nearer than the near point of the two eyes.
pub fn is_nearer_than_near_point(place: Mm, near_point: Mm) -> bool {
    place.0 < near_point.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pd(value: f64) -> PrismDioptre {
        PrismDioptre(value)
    }

    fn plain(away: f64, toward: f64) -> Reserves {
        let reserve = |blur| Reserve { blur: Some(pd(blur)), breaks: pd(blur + 4.0), recovery: None };
        Reserves { away: reserve(away), toward: reserve(toward) }
    }

    /// P32: near limits of 13 and 17 give 3 away to 7 toward.
    #[test]
    fn the_everyday_zone_is_the_middle_third_of_the_norms() {
        let zone = Zone::everyday(&Norms::MorganNear.reserves(), None).unwrap();
        assert!((zone.away.0 - 3.0).abs() < 1e-9 && (zone.toward.0 - 7.0).abs() < 1e-9, "{zone:?}");
        assert_eq!((zone.away_bound, zone.toward_bound), (Bound::Percival, Bound::Percival));
        assert!(zone.holds(pd(7.0)) && zone.holds(pd(-3.0)) && !zone.holds(pd(7.01)) && !zone.holds(pd(-3.01)));
    }

    /// Where the page already needs Sheard's prism (P30: 9 exo, 12 base-out, 2 prism dioptres), nothing toward is left;
    /// where it needs none (P31: 3 eso, 8 base-in), two thirds of a prism dioptre away are.
    #[test]
    fn sheard_narrows_the_side_that_works_against_the_turn() {
        let exo = Zone::everyday(&plain(10.0, 12.0), Some(Phoria(pd(9.0)))).unwrap();
        assert_eq!((exo.toward, exo.toward_bound), (pd(0.0), Bound::Sheard));
        assert_eq!(exo.away_bound, Bound::Percival);
        let eso = Zone::everyday(&plain(8.0, 9.0), Some(Phoria(pd(-3.0)))).unwrap();
        assert!((eso.away.0 - 2.0 / 3.0).abs() < 1e-9, "{eso:?}");
        assert_eq!(eso.away_bound, Bound::Sheard);
    }

    /// At the bound the reserve left is twice the turn that is then to be held.
    #[test]
    fn at_the_bound_the_criterion_just_holds() {
        for (reserve, turn) in [(17.0, 4.0), (20.0, 1.0), (12.0, 2.5)] {
            let zone = Zone::everyday(&plain(40.0, reserve), Some(Phoria(pd(turn)))).unwrap();
            let left = reserve - zone.toward.0;
            assert!(2.0 * (turn + zone.toward.0) <= left + 1e-9, "{zone:?}");
        }
    }

    /// The quarter-period rule at 1 cycle a degree (P67: 15 arcmin) is below the foveal limit; a target of 4 degrees
    /// fuses over 2 degrees of arc.
    #[test]
    fn large_targets_fuse_over_more() {
        let of = |degrees| fusion_of_target(Angle::from_degrees(degrees)).unwrap().to_arcmin();
        assert!((of(0.5) - 32.0).abs() < 1e-9);
        assert!((of(4.0) - 120.0).abs() < 1e-9);
        assert_eq!(fusion_of_target(Angle::from_degrees(0.0)), None);
    }
}
