//! Whether a version was raised by as much as its changes are worth.
//!
//! Versions are three numbers, as `[set]` takes them. Raising one sets those after it back to 0.
//! Source: `[SemVer2]`, items 6 to 8 and 11. Its item 4 asks nothing of 0.x. Here a major or
//! minor difference then raises the second number and a patch the third. Design choice: a book that is not finished yet
//! still must not hide that its depths are others.

use std::fmt;

use serde::Serialize;

use super::class::Class;

/// A version of a set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Version {
    /// Raised where a depth, an ink or an answer changes.
    pub major: u32,
    /// Raised where pages or editions come in.
    pub minor: u32,
    /// Raised where words change.
    pub patch: u32,
}

/// How a raise of the version and the differences go together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Outcome {
    /// Nothing changed, the version neither.
    Same,
    /// Nothing changed, and the version was raised: it may be.
    RaisedForNothing,
    /// Raised by enough.
    Fits,
    /// There are differences, and the version is the old one.
    NotRaised,
    /// Raised by too little.
    TooLittle,
    /// The new version is lower than the old one.
    Lower,
}

/// What is to be said of the two versions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Verdict {
    /// The old version.
    pub old: Version,
    /// The new version.
    pub new: Version,
    /// The weightiest difference; `None` where there is none.
    pub class: Option<Class>,
    /// How they go together.
    pub outcome: Outcome,
    /// The lowest version that would do.
    pub lowest: Version,
}

impl Version {
    /// Reads `x.y.z`; `None` where it is not that.
    pub fn parse(text: &str) -> Option<Self> {
        let mut parts = text.split('.').map(|part| part.parse().ok());
        let version = Self { major: parts.next()??, minor: parts.next()??, patch: parts.next()?? };
        parts.next().is_none().then_some(version)
    }

    /// The lowest version that says a difference of this class.
    fn raised(self, class: Class) -> Self {
        let Self { major, minor, patch } = self;
        match class {
            Class::Major if 0 < major => Self { major: major + 1, minor: 0, patch: 0 },
            Class::Major | Class::Minor => Self { major, minor: minor + 1, patch: 0 },
            Class::Patch => Self { major, minor, patch: patch + 1 },
        }
    }
}

impl fmt::Display for Version {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}.{}.{}", self.major, self.minor, self.patch)
    }
}

impl Verdict {
    /// Judges two versions by the weightiest difference.
    pub fn new(old: Version, new: Version, class: Option<Class>) -> Self {
        let lowest = class.map_or(old, |class| old.raised(class));
        let outcome = match class {
            _ if new < old => Outcome::Lower,
            None if new == old => Outcome::Same,
            None => Outcome::RaisedForNothing,
            Some(_) if new == old => Outcome::NotRaised,
            Some(_) if new < lowest => Outcome::TooLittle,
            Some(_) => Outcome::Fits,
        };
        Self { old, new, class, outcome, lowest }
    }

    /// Whether the new version may stand.
    pub const fn fits(&self) -> bool {
        matches!(self.outcome, Outcome::Same | Outcome::RaisedForNothing | Outcome::Fits)
    }

    /// One plain sentence without a final stop.
    pub fn words(&self) -> String {
        let Self { old, new, lowest, .. } = self;
        let class = self.class.map_or("no", Class::name);
        match self.outcome {
            Outcome::Same => format!("nothing changed, and the version is still `{new}`"),
            Outcome::RaisedForNothing => format!("nothing changed, though the version went from `{old}` to `{new}`"),
            Outcome::Fits => {
                format!("version `{new}` fits: after `{old}`, {class} differences ask for `{lowest}` or higher")
            }
            Outcome::NotRaised => {
                format!(
                    "version `{new}` is the old one, but there are {class} differences; raise it to `{lowest}` or higher"
                )
            }
            Outcome::TooLittle => {
                format!(
                    "version `{new}` is too low after `{old}` for {class} differences; raise it to `{lowest}` or higher"
                )
            }
            Outcome::Lower => {
                format!(
                    "version `{new}` is lower than the old one, `{old}`; with {class} differences, `{lowest}` or higher would do"
                )
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn verdict(old: &str, new: &str, class: Option<Class>) -> (Outcome, String) {
        let verdict = Verdict::new(Version::parse(old).unwrap(), Version::parse(new).unwrap(), class);
        (verdict.outcome, verdict.lowest.to_string())
    }

    /// Source of the raises from 1.0.0 on: `[SemVer2]`, items 6 to 8.
    #[test]
    fn the_lowest_version_that_would_do() {
        for (old, class, lowest) in [
            ("1.2.3", Class::Patch, "1.2.4"),
            ("1.2.3", Class::Minor, "1.3.0"),
            ("1.2.3", Class::Major, "2.0.0"),
            ("0.2.3", Class::Patch, "0.2.4"),
            ("0.2.3", Class::Minor, "0.3.0"),
            ("0.2.3", Class::Major, "0.3.0"),
        ] {
            assert_eq!(verdict(old, lowest, Some(class)), (Outcome::Fits, lowest.to_owned()));
            assert_eq!(verdict(old, old, Some(class)).0, Outcome::NotRaised);
        }
    }

    #[test]
    fn a_raise_may_be_larger_but_not_smaller() {
        assert_eq!(verdict("1.2.3", "3.0.0", Some(Class::Patch)).0, Outcome::Fits);
        assert_eq!(verdict("1.2.3", "1.3.0", Some(Class::Major)).0, Outcome::TooLittle);
        assert_eq!(verdict("1.9.0", "1.10.0", Some(Class::Minor)).0, Outcome::Fits);
        assert_eq!(verdict("1.2.3", "1.2.2", Some(Class::Patch)).0, Outcome::Lower);
        assert_eq!(verdict("1.2.3", "1.2.2", None), (Outcome::Lower, "1.2.3".to_owned()));
    }

    #[test]
    fn without_a_difference_any_version_from_the_old_one_on_will_do() {
        assert_eq!(verdict("1.2.3", "1.2.3", None).0, Outcome::Same);
        assert_eq!(verdict("1.2.3", "1.2.4", None).0, Outcome::RaisedForNothing);
    }

    #[test]
    fn a_version_is_three_numbers() {
        for bad in ["", "1", "1.2", "1.2.3.4", "1.2.x", "1.2.-3"] {
            assert_eq!(Version::parse(bad), None, "{bad}");
        }
    }
}
