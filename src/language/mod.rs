//! What the built-in words are in each language: Fluent files, and how a message is told with its numbers and nouns.
//!
//! A message is called by its id; its words stand in `src/language/<language>/*.ftl` and nowhere in the code. The room
//! knows no page and no exercise, and chooses no language: an edition names its own. It measures too how easy words are.

mod files;
mod noun;
pub mod reading;
mod syllables;
mod tongue;

pub use noun::Noun;
pub use tongue::{Arg, Tongue};

/// A language of the built-in words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Language {
    /// English.
    En,
    /// German.
    De,
    /// Spanish.
    Es,
    /// French.
    Fr,
}

impl Language {
    /// All of them, in the order of [`Language::TAGS`].
    pub const ALL: [Language; 4] = [Language::En, Language::De, Language::Es, Language::Fr];

    /// How specs, reports and documents write them: BCP 47 tags.
    pub const TAGS: [&str; 4] = ["en", "de", "es", "fr"];

    /// Its BCP 47 tag.
    pub const fn tag(self) -> &'static str {
        Self::TAGS[self as usize]
    }

    /// Its name in its own words.
    pub const fn name(self) -> &'static str {
        match self {
            Language::En => "English",
            Language::De => "Deutsch",
            Language::Es => "Español",
            Language::Fr => "Français",
        }
    }

    /// The decimal mark: the International System of Units takes the point or the comma, as is customary in the
    /// language. Source: si-brochure (5.4.4).
    const fn decimal_mark(self) -> &'static str {
        match self {
            Language::En => ".",
            Language::De | Language::Es | Language::Fr => ",",
        }
    }
}
