//! The base on the page: what the whole art rides on, for an eye turn, and what every page of the book says of it.
//!
//! Solved features come with the horizontal base in their parallax. Pictures of the front pages take it from here, and
//! so does the vertical base of all art.

use crate::optics::{Base, Viewer};
use crate::spec::SetSpec;
use crate::units::plain;

/// How far the pictures of the two eyes are moved against each other, mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Ride {
    /// Horizontal: the parallax of the page itself.
    pub parallax: f64,
    /// How much higher the right eye's picture lies.
    pub rise: f64,
}

impl Ride {
    /// No base.
    pub const NONE: Ride = Ride { parallax: 0.0, rise: 0.0 };

    /// The base of a viewer.
    pub fn of(viewer: &Viewer) -> Self {
        Self { parallax: viewer.base_parallax().0, rise: viewer.base_rise().0 }
    }

    /// Whether nothing is moved.
    pub fn is_none(self) -> bool {
        self == Self::NONE
    }
}

/// "base 3 pd toward, right picture 1 pd higher"
pub fn words(base: Base) -> String {
    format!("base {}", amounts(base))
}

/// "3 pd toward, right picture 1 pd higher"
pub fn amounts(base: Base) -> String {
    let across = match base.horizontal.0 {
        0.0 => None,
        pd => Some(format!("{} pd {}", plain(pd.abs(), 2), if 0.0 < pd { "toward" } else { "away" })),
    };
    let down = match base.vertical.0 {
        0.0 => None,
        pd => Some(format!("{} picture {} pd higher", if 0.0 < pd { "right" } else { "left" }, plain(pd.abs(), 2))),
    };
    across.into_iter().chain(down).collect::<Vec<_>>().join(", ")
}

/// What every footer of a book with a base says: the base, and who set it. Empty without one.
pub fn note(set: &SetSpec) -> String {
    match &set.gate {
        Some(set_by) if !set.viewer.base.is_none() => format!("{}, set by {set_by}", words(set.viewer.base)),
        _ => String::new(),
    }
}

/// The same with a note of the page, which may name who set it as well: the name is said once, last.
pub fn with_note(set: &SetSpec, note: &str) -> String {
    let base = note_of(set, note);
    if base.is_empty() || note.is_empty() {
        return format!("{base}{note}");
    }
    let joint = if note.starts_with(SET_BY) { ", " } else { " · " };
    format!("{base}{joint}{note}")
}

/// The base before a note: without a name where the note ends with it.
fn note_of(set: &SetSpec, note: &str) -> String {
    match &set.gate {
        Some(set_by) if note.ends_with(&format!("{SET_BY}{set_by}")) && !set.viewer.base.is_none() => {
            words(set.viewer.base)
        }
        _ => self::note(set),
    }
}

/// Before the name of who set a page.
const SET_BY: &str = "set by ";

/// What alternative text says besides; empty without a base.
pub fn sentence(base: Base) -> String {
    if base.is_none() { String::new() } else { format!(" All of it rides on a base: {}.", amounts(base)) }
}

#[cfg(test)]
mod tests {
    use crate::units::PrismDioptre;

    use super::*;

    #[test]
    fn a_base_is_told_in_words() {
        let told = |horizontal, vertical| {
            words(Base { horizontal: PrismDioptre(horizontal), vertical: PrismDioptre(vertical) })
        };
        assert_eq!(told(3.0, 1.0), "base 3 pd toward, right picture 1 pd higher");
        assert_eq!(told(-2.0, 0.0), "base 2 pd away");
        assert_eq!(told(0.0, -0.5), "base left picture 0.5 pd higher");
    }
}
