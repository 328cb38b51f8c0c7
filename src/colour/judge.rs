//! What the inks do to each eye: contrast, ghost, brightness.

use super::view::{View, Views};
use super::{Ground, Inks, Srgb8};

/// A ghost that a solver should stay below, a share of the eye's own contrast.
/// Source: design choice; `[Woods2012]` reviews levels from which ghosts are seen.
pub const GHOST_AIM: f64 = 0.02;
/// A ghost from which to warn.
/// Source: design choice, from the levels of `[Seuntiens2005]`.
pub const GHOST_WARN: f64 = 0.05;
/// A ghost from which to refuse.
/// Source: design choice, the highest of the levels of `[Seuntiens2005]`.
pub const GHOST_REFUSE: f64 = 0.15;
/// How much brighter the world of one eye may be than that of the other.
/// Source: design choice; `[PacificU1984]` measured up to 1.33:1 and links imbalance to suppression.
pub const IMBALANCE_WARN: f64 = 2.0;

/// How bad a ghost is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ghost {
    /// At most [`GHOST_AIM`].
    Fine,
    /// At most [`GHOST_WARN`].
    Faint,
    /// At most [`GHOST_REFUSE`].
    Strong,
    /// Above all limits.
    Refused,
}

/// What one eye sees of the inks. All luminances are shares of the medium's white without a filter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EyeReport {
    /// The luminance of the ground.
    pub ground: f64,
    /// The luminance of this eye's own mark.
    pub own: f64,
    /// The luminance of the other eye's mark, which should be that of the ground.
    pub other: f64,
    /// The luminance of an overlap, which should be that of the own mark.
    pub overlap: f64,
    /// How far the own mark stands off the ground: 0 to 1 of the lighter of the two.
    pub contrast: f64,
    /// How far the own mark stands off the ground, as a share of white behind this filter: what the mark is worth.
    pub signal: f64,
    /// How far the other eye's mark stands off the ground, as a share of how far the own mark does.
    pub ghost: f64,
    /// How far an overlap stands off the own mark, as a share of how far the own mark stands off the ground.
    pub overlap_ghost: f64,
    /// The luminance of the lighter of ground and own mark: how bright this eye's world is.
    pub brightness: f64,
}

impl Ghost {
    /// Judges a ghost.
    pub fn of(ghost: f64) -> Self {
        if ghost <= GHOST_AIM {
            Ghost::Fine
        } else if ghost <= GHOST_WARN {
            Ghost::Faint
        } else if ghost <= GHOST_REFUSE {
            Ghost::Strong
        } else {
            Ghost::Refused
        }
    }
}

impl EyeReport {
    /// Looks at inks with one eye.
    ///
    /// ```text
    /// contrast = |L(own) - L(ground)| / max(L(own), L(ground))
    /// ghost    = |L(other) - L(ground)| / |L(own) - L(ground)|
    /// ```
    ///
    /// The ghost is infinite when the own mark does not show at all.
    /// Source: `[Woods2012]`, crosstalk as leakage over signal, black level subtracted.
    pub fn new(view: &View, own: Srgb8, other: Srgb8, overlap: Srgb8, ground: Srgb8) -> Self {
        let [own, other, overlap, ground] = [own, other, overlap, ground].map(|ink| view.luminance(ink));
        let (step, lighter, white) = ((own - ground).abs(), own.max(ground), view.white());
        let share = |part: f64, whole: f64| if 0.0 < whole { part / whole } else { 0.0 };
        let of_step = |part: f64| if part.abs() < NOTHING { 0.0 } else { part.abs() / step };
        Self {
            ground,
            own,
            other,
            overlap,
            contrast: share(step, lighter),
            signal: share(step, white),
            ghost: of_step(other - ground),
            overlap_ghost: of_step(overlap - own),
            brightness: lighter,
        }
    }

    /// Whether the own mark stands off the ground to the side that the ground asks for: darker on white, lighter on
    /// black.
    pub fn shows_on(&self, ground: Ground) -> bool {
        match ground {
            Ground::White => self.own < self.ground,
            Ground::Black => self.ground < self.own,
        }
    }
}

/// Rounding of a sum of luminances.
const NOTHING: f64 = 1e-12;

/// The reports of the left and of the right eye.
pub fn judge(views: &Views, inks: &Inks) -> [EyeReport; 2] {
    let Inks { left, right, both, ground, .. } = *inks;
    [EyeReport::new(&views.left, left, right, both, ground), EyeReport::new(&views.right, right, left, both, ground)]
}

/// How much brighter one eye's world is than the other's: 1 for equal, never below.
///
/// Infinite when one eye is dark.
/// Source: `[PacificU1984]`, luminous flux behind the two filters.
pub fn imbalance(left: f64, right: f64) -> f64 {
    if left.min(right) <= 0.0 { f64::INFINITY } else { left.max(right) / left.min(right) }
}

/// The crosstalk of one eye on a screen: the light of the other eye's channels over that of its own.
///
/// ```text
/// red eye: X = (F_G + F_B) / F_R;  cyan eye: X = F_R / (F_G + F_B)
/// ```
///
/// `None` when the eye's own channels give no light.
/// Source: `[Woods2012]`, leakage over signal.
pub fn crosstalk(seen: [f64; 3], own: [bool; 3], other: [bool; 3]) -> Option<f64> {
    let sum = |which: [bool; 3]| -> f64 { (0..3).filter(|c| which[*c]).map(|c| seen[c]).sum() };
    (0.0 < sum(own)).then(|| sum(other) / sum(own))
}
