//! What ramps can hold, and the values between two of a kind.

use super::Blend;
use crate::scene::{Depth, Side, Size};
use crate::spec::Share;
use crate::units::{Angle, Mm, PrismDioptre, Quantity, Unit};

/// The number at share `t` of the way in equal ratios; `None` unless both are above 0.
fn in_ratios(from: f64, to: f64, t: f64) -> Option<f64> {
    (0.0 < from && 0.0 < to).then(|| from * libm::pow(to / from, t))
}

/// The amount of a depth in its own unit.
fn amount(depth: &Depth) -> f64 {
    match depth {
        Depth::Page | Depth::Between(..) | Depth::Times(..) => 0.0,
        Depth::Place(mm, _) | Depth::Parallax(mm, _) => mm.0,
        Depth::Demand(demand, _) => demand.0,
        Depth::Disparity(angle, _) => angle.to_radians(),
        Depth::Range(share, _) => *share,
    }
}

/// A depth as an amount that counts toward the reader, with the unit it is written in; the page has every unit.
fn signed(depth: &Depth, unit: Unit) -> Option<f64> {
    let (amount, side) = match (depth, unit) {
        (Depth::Page, _) => return Some(0.0),
        (Depth::Demand(amount, side), Unit::Pd) => (amount.0, *side),
        (Depth::Disparity(angle, side), Unit::Arcsec) => (angle.to_arcsec(), *side),
        (Depth::Place(mm, side), Unit::Mm) => (mm.0, *side),
        (Depth::Range(share, side), Unit::Percent) => (share * 100.0, *side),
        _ => return None,
    };
    Some(if side == Side::Toward { amount } else { -amount })
}

impl Blend for Depth {
    fn blend(&self, to: &Self, t: f64) -> Self {
        if t <= 0.0 {
            self.clone()
        } else if 1.0 <= t {
            to.clone()
        } else {
            Depth::Between(Box::new((self.clone(), to.clone())), t)
        }
    }

    /// Any two depths have a way between them, even in demand.
    fn blends_with(&self, _: &Self) -> bool {
        true
    }

    fn geometric(&self, to: &Self, t: f64) -> Option<Self> {
        if t <= 0.0 || 1.0 <= t {
            in_ratios(amount(self), amount(to), t)?;
            return (self.side() == to.side()).then(|| self.blend(to, t));
        }
        Some(match (self, to) {
            _ if self.side() != to.side() => return None,
            (Depth::Place(a, side), Depth::Place(b, _)) => Depth::Place(Mm(in_ratios(a.0, b.0, t)?), *side),
            (Depth::Demand(a, side), Depth::Demand(b, _)) => {
                Depth::Demand(PrismDioptre(in_ratios(a.0, b.0, t)?), *side)
            }
            (Depth::Parallax(a, side), Depth::Parallax(b, _)) => Depth::Parallax(Mm(in_ratios(a.0, b.0, t)?), *side),
            (Depth::Disparity(a, side), Depth::Disparity(b, _)) => {
                Depth::Disparity(Angle::from_radians(in_ratios(a.to_radians(), b.to_radians(), t)?), *side)
            }
            (Depth::Range(a, side), Depth::Range(b, _)) => Depth::Range(in_ratios(*a, *b, t)?, *side),
            _ => return None,
        })
    }

    /// Disparities in angles go in equal ratios, as the steps of depth perception do; demands in equal steps.
    fn by_difficulty(&self, to: &Self, t: f64) -> Self {
        let angles = matches!((self, to), (Depth::Disparity(..), Depth::Disparity(..)));
        let ratios = if angles { self.geometric(to, t) } else { None };
        ratios.unwrap_or_else(|| self.blend(to, t))
    }

    fn steps(&self, to: &Self, step: Quantity) -> Option<f64> {
        let (unit, size) = match (step.to_mm(), step.to_angle(), step.unit) {
            (Some(mm), ..) => (Unit::Mm, mm.0),
            (_, Some(angle), _) => (Unit::Arcsec, angle.to_arcsec()),
            (.., unit) => (unit, step.value),
        };
        let (from, to) = (signed(self, unit)?, signed(to, unit)?);
        (0.0 < size).then(|| (to - from).abs() / size)
    }
}

impl Blend for Size {
    /// Sizes of one kind blend evenly. The reader refuses a ramp from a length to an angle, so the last arm only ever
    /// holds the start.
    fn blend(&self, to: &Self, t: f64) -> Self {
        match (*self, *to) {
            (Size::Length(a), Size::Length(b)) => Size::Length(Mm(a.0 + (b.0 - a.0) * t)),
            (Size::Angle(a), Size::Angle(b)) => {
                Size::Angle(Angle::from_radians(a.to_radians() + (b.to_radians() - a.to_radians()) * t))
            }
            (from, _) => from,
        }
    }

    fn geometric(&self, to: &Self, t: f64) -> Option<Self> {
        match (*self, *to) {
            _ if t <= 0.0 => Some(*self),
            _ if 1.0 <= t => Some(*to),
            (Size::Length(a), Size::Length(b)) => in_ratios(a.0, b.0, t).map(|mm| Size::Length(Mm(mm))),
            (Size::Angle(a), Size::Angle(b)) => {
                in_ratios(a.to_radians(), b.to_radians(), t).map(|angle| Size::Angle(Angle::from_radians(angle)))
            }
            _ => None,
        }
    }

    fn by_difficulty(&self, to: &Self, t: f64) -> Self {
        self.geometric(to, t).unwrap_or_else(|| self.blend(to, t))
    }

    fn steps(&self, to: &Self, step: Quantity) -> Option<f64> {
        match (*self, *to) {
            (Size::Length(a), Size::Length(b)) => step.to_mm().filter(|s| 0.0 < s.0).map(|s| (b.0 - a.0).abs() / s.0),
            (Size::Angle(a), Size::Angle(b)) => {
                let size = step.to_angle().filter(|s| 0.0 < s.to_radians())?;
                Some((b.to_radians() - a.to_radians()).abs() / size.to_radians())
            }
            _ => None,
        }
    }

    fn blends_with(&self, to: &Self) -> bool {
        matches!((self, to), (Size::Length(_), Size::Length(_)) | (Size::Angle(_), Size::Angle(_)))
    }
}

impl Blend for Share {
    fn blend(&self, to: &Self, t: f64) -> Self {
        Share(self.0 + (to.0 - self.0) * t)
    }

    fn geometric(&self, to: &Self, t: f64) -> Option<Self> {
        in_ratios(self.0, to.0, t).map(Share)
    }

    fn steps(&self, to: &Self, step: Quantity) -> Option<f64> {
        (step.unit == Unit::Percent && 0.0 < step.value).then(|| (to.0 - self.0).abs() * 100.0 / step.value)
    }

    fn blends_with(&self, _: &Self) -> bool {
        true
    }
}

impl Blend for u32 {
    /// The nearest whole number; halfway, the one farther from 0.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between two numbers of this type")]
    fn blend(&self, to: &Self, t: f64) -> Self {
        let (from, to) = (f64::from(*self), f64::from(*to));
        (from + (to - from) * t.clamp(0.0, 1.0)).round() as u32
    }

    fn blends_with(&self, _: &Self) -> bool {
        true
    }
}

impl Blend for Mm {
    fn blend(&self, to: &Self, t: f64) -> Self {
        if 1.0 <= t { *to } else { Mm(self.0 + (to.0 - self.0) * t) }
    }

    fn blends_with(&self, _: &Self) -> bool {
        true
    }

    fn geometric(&self, to: &Self, t: f64) -> Option<Self> {
        in_ratios(self.0, to.0, t).map(Mm)
    }

    fn steps(&self, to: &Self, step: Quantity) -> Option<f64> {
        step.to_mm().filter(|s| 0.0 < s.0).map(|s| (to.0 - self.0).abs() / s.0)
    }
}
