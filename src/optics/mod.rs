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
pub mod limits;
pub mod vergence;

#[doc = include_str!("../references.md")]
pub mod references {}

pub use geometry::Viewing;

use crate::units::Mm;

/// One viewer: the pair of eyes and the distance that a page is computed for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Viewer {
    /// Eye plane to page, D.
    pub distance: Mm,
    /// Interpupillary distance, E.
    pub ipd: Mm,
    /// Smallest and largest interpupillary distance of the audience.
    pub ipd_range: (Mm, Mm),
}

impl Viewer {
    /// The viewing that pages are computed for; `None` where [`Viewing::new`] refuses it.
    pub fn viewing(&self) -> Option<Viewing> {
        Viewing::new(self.distance, self.ipd)
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
