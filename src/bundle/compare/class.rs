//! The class of a difference: what a change of a fact is worth. The table of classes stands in [the room's own
//! words](super).
//!
//! Rules go by the name of a fact, the longest match first. A fact that no rule names is major: what is new in the
//! report and forgotten here is then never taken for a small thing.

use serde::Serialize;

/// What a difference is worth, and which part of the version has to be raised for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Class {
    /// Words, parts, resolution: whoever has the older edition misses nothing that is looked at.
    Patch,
    /// Pages or editions added, pages moved, an edition laid out otherwise.
    Minor,
    /// Anything that changes what the eyes are asked, or what is right.
    Major,
}

impl Class {
    /// All of them, the weightiest first.
    pub const ALL: [Class; 3] = [Class::Major, Class::Minor, Class::Patch];

    /// As reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            Class::Major => "major",
            Class::Minor => "minor",
            Class::Patch => "patch",
        }
    }
}

/// A rule: facts of this name, or whose name begins with it and a point, have this class.
type Rule = (&'static str, Class);

/// Facts of the whole set.
pub(super) const SET: &[Rule] = &[
    ("title", Class::Patch),
    ("summary", Class::Patch),
    ("author", Class::Patch),
    ("order", Class::Patch),
    ("gate", Class::Patch),
    ("parts", Class::Patch),
    ("licence", Class::Patch),
    ("contact", Class::Patch),
    ("releases", Class::Patch),
    ("publish", Class::Patch),
    ("language", Class::Minor),
    ("plan", Class::Minor),
    ("readers", Class::Minor),
    ("viewer", Class::Major),
];

/// Facts of an edition.
pub(super) const EDITION: &[Rule] = &[
    ("inks", Class::Major),
    ("glasses", Class::Major),
    ("ground", Class::Major),
    ("cmyk", Class::Major),
    ("recipes", Class::Major),
    // What the eyes are forecast to see of inks that are told by themselves.
    ("colour", Class::Patch),
    ("page", Class::Minor),
    ("language", Class::Minor),
    ("text", Class::Minor),
    ("hand", Class::Minor),
    ("answers", Class::Minor),
    ("formats", Class::Minor),
    ("ppi", Class::Patch),
];

/// Facts of a page; those of its features and questions are all major.
pub(super) const PAGE: &[Rule] = &[
    ("title", Class::Patch),
    ("words", Class::Patch),
    ("time_s", Class::Patch),
    // Both follow from what is told by itself.
    ("difficulty", Class::Patch),
    ("strand", Class::Patch),
    // Alone it changes no more than a number in the footer: other draws and answers are told by themselves.
    ("seed", Class::Patch),
];

/// Facts of features and questions.
pub(super) const ART: &[Rule] = &[];

/// The class of a fact.
pub(super) fn of(rules: &[Rule], name: &str) -> Class {
    let fits = |rule: &&Rule| name.strip_prefix(rule.0).is_some_and(|rest| rest.is_empty() || rest.starts_with('.'));
    rules.iter().filter(fits).max_by_key(|(prefix, _)| prefix.len()).map_or(Class::Major, |(_, class)| *class)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_met_whole_and_what_no_rule_names_is_major() {
        assert_eq!(of(SET, "plan.weeks"), Class::Minor);
        assert_eq!(of(SET, "title"), Class::Patch);
        assert_eq!(of(SET, "titles"), Class::Major);
        assert_eq!(of(PAGE, "balance.share"), Class::Major);
        assert_eq!(of(ART, "parallax_mm"), Class::Major);
    }

    #[test]
    fn classes_rise() {
        assert!(Class::Patch < Class::Minor && Class::Minor < Class::Major);
    }
}
