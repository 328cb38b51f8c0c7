//! `hold`: one large target held single and clear at one demand; a ramp over levels makes a slow slide from page to page.

use crate::units::Seconds;

use super::target::Target;

/// The parameters of a `hold` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Hold {
    /// The one target.
    pub target: Target,
    /// How long to hold it, for the words.
    pub hold: Seconds,
    /// How often, for the words.
    pub repeats: u32,
}
