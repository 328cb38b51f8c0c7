//! Viewing geometry and the limits of two eyes: published formulas, one place each.
//!
//! Everything here is plain mathematics over `units`: no scene, no page, no colour. Each formula names its source by a
//! key of `src/references.md`, shown in [`references`].
//!
//! # Signs
//!
//! `p = x_R - x_L` is the page parallax: negative is crossed and stands toward the reader, positive is uncrossed and
//! stands away. Demand in prism dioptres is `-100 p / D`: positive toward (base-out), negative away (base-in).
//!
//! # Numbers that are not numbers
//!
//! Each function says what it accepts. Outside of that, and wherever a result would not be finite, it gives `None`:
//! nothing here panics, clamps or returns NaN.

pub mod geometry;
pub mod grading;
pub mod limits;
pub mod reserves;
pub mod vergence;

#[doc = include_str!("../references.md")]
pub mod references {}

pub use geometry::Viewing;
pub use reserves::Zone;

use crate::units::{Mm, PrismDioptre};

/// One viewer: the pair of eyes and the distance that a page is computed for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Viewer {
    /// Eye plane to page, D.
    pub distance: Mm,
    /// Interpupillary distance, E.
    pub ipd: Mm,
    /// Smallest and largest interpupillary distance of the audience.
    pub ipd_range: (Mm, Mm),
    /// What pages may ask, where the author named reserves or norms.
    pub zone: Option<Zone>,
    /// The offset that the whole page rides on, for an eye turn.
    pub base: Base,
}

/// An offset of the whole page that makes up for an eye turn: for a professional to set.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Base {
    /// Horizontal, positive toward (base-out).
    pub horizontal: PrismDioptre,
    /// Vertical, positive where the right eye's picture lies higher.
    pub vertical: PrismDioptre,
}

impl Base {
    /// Whether there is none.
    pub fn is_none(self) -> bool {
        self == Self::default()
    }
}

impl Viewer {
    /// A viewer without a zone and without a base.
    pub const fn new(distance: Mm, ipd: Mm, ipd_range: (Mm, Mm)) -> Self {
        let none = PrismDioptre(0.0);
        Self { distance, ipd, ipd_range, zone: None, base: Base { horizontal: none, vertical: none } }
    }

    /// The viewing that pages are computed for; `None` where [`Viewing::new`] refuses it.
    pub fn viewing(&self) -> Option<Viewing> {
        Viewing::new(self.distance, self.ipd)
    }

    /// The parallax of the base: that of the page itself, and part of every parallax that is drawn.
    /// Source: `[ISO13666]`, a prism dioptre moves by 1 cm at 1 m.
    pub fn base_parallax(&self) -> Mm {
        Mm(0.0 - self.base.horizontal.0 * self.distance.0 / 100.0)
    }

    /// How much higher the right eye's picture lies than the left eye's.
    /// Source: `[ISO13666]`, a prism dioptre moves by 1 cm at 1 m.
    pub fn base_rise(&self) -> Mm {
        Mm(self.base.vertical.0 * self.distance.0 / 100.0)
    }

    /// The same page before the smallest interpupillary distance of the audience.
    pub fn smallest(&self) -> Option<Viewing> {
        Viewing::new(self.distance, self.ipd_range.0)
    }

    /// The same page before the largest interpupillary distance of the audience.
    pub fn largest(&self) -> Option<Viewing> {
        Viewing::new(self.distance, self.ipd_range.1)
    }
}

/// Lets a number through if it is finite.
fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}

/// Numbers that are not numbers, for the tests of this room.
#[cfg(test)]
const NOT_FINITE: [f64; 3] = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY];
