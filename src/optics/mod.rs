//! Viewing geometry and the limits of two eyes: published formulas, one place each.
//!
//! Everything here is plain mathematics over `units`: no scene, no page, no colour. Each formula names its source by a
//! key of `src/references.md`.
//!
//! # Signs
//!
//! `p = x_R - x_L` is the page parallax: negative is crossed and stands toward the reader, positive is uncrossed and
//! stands away. Demand in prism dioptres is `-100 p / D`: positive toward (base-out), negative away (base-in).

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
