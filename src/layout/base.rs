//! The base on the page: what the whole art rides on, for an eye turn, and what every page of the book says of it.
//!
//! Solved features come with the horizontal base in their parallax. Pictures of the front pages take it from here, and
//! so does the vertical base of all art.

use crate::language::Tongue;
use crate::optics::{Base, Viewer};
use crate::spec::SetSpec;

use super::{alt, balance};

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
pub fn words(base: Base, tongue: &Tongue) -> String {
    tongue.tell("base-words", &[("amounts", amounts(base, tongue).into())])
}

/// "3 pd toward, right picture 1 pd higher"
pub fn amounts(base: Base, tongue: &Tongue) -> String {
    let across = alt::side(base.horizontal.0, tongue);
    let pd = || [("pd", tongue.pd(base.vertical, 2).into())];
    let down = match base.vertical.0 {
        0.0 => None,
        right if 0.0 < right => Some(tongue.tell("base-right-higher", &pd())),
        _ => Some(tongue.tell("base-left-higher", &pd())),
    };
    across.into_iter().chain(down).collect::<Vec<_>>().join(", ")
}

/// What every footer of a book with a base says: the base, and who set it. Empty without one.
pub fn note(set: &SetSpec, tongue: &Tongue) -> String {
    match &set.gate {
        Some(name) if !set.viewer.base.is_none() => {
            format!("{}, {}", words(set.viewer.base, tongue), balance::set_by(name, tongue))
        }
        _ => String::new(),
    }
}

/// The same with a note of the page, which may name who set it as well: the name is said once, last.
pub fn with_note(set: &SetSpec, note: &str, tongue: &Tongue) -> String {
    let set_by = set.gate.as_ref().map(|name| balance::set_by(name, tongue));
    let has_name = set_by.as_ref().is_some_and(|set_by| note.ends_with(set_by));
    let base = match has_name && !set.viewer.base.is_none() {
        true => words(set.viewer.base, tongue),
        false => self::note(set, tongue),
    };
    if base.is_empty() || note.is_empty() {
        return format!("{base}{note}");
    }
    let joint = if set_by.is_some_and(|set_by| note == set_by) { ", " } else { " · " };
    format!("{base}{joint}{note}")
}

/// What alternative text says besides; empty without a base.
pub fn sentence(base: Base, tongue: &Tongue) -> String {
    if base.is_none() {
        return String::new();
    }
    format!(" {}", tongue.tell("base-sentence", &[("amounts", amounts(base, tongue).into())]))
}

#[cfg(test)]
mod tests {
    use crate::language::Language;
    use crate::units::PrismDioptre;

    use super::*;

    #[test]
    fn a_base_is_told_in_words() {
        let told = |horizontal, vertical| {
            let base = Base { horizontal: PrismDioptre(horizontal), vertical: PrismDioptre(vertical) };
            words(base, Tongue::of(Language::En))
        };
        assert_eq!(told(3.0, 1.0), "base 3 pd toward, right picture 1 pd higher");
        assert_eq!(told(-2.0, 0.0), "base 2 pd away");
        assert_eq!(told(0.0, -0.5), "base left picture 0.5 pd higher");
    }
}
