//! The words of an exercise page: what to do, what should be seen, and what it means when one eye's part is missing.

/// Words for one page, already chosen for its level.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Words {
    /// One sentence.
    pub goal: String,
    /// What to prepare beyond distance and glasses; may be empty.
    pub setup: String,
    /// At most five steps.
    pub steps: Vec<String>,
    /// What both eyes together should see.
    pub see: String,
    /// "If you see only …" with what it means and what to do.
    pub one_part: Vec<(String, String)>,
    /// What the picture shows, for those who do not see it.
    pub alt: String,
}

/// Words that an author gave in `[exercise]`; each takes the place of the kind's own.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct AuthorWords {
    /// `goal`.
    pub goal: Option<String>,
    /// `setup`.
    pub setup: Option<String>,
    /// `do`.
    pub steps: Option<Vec<String>>,
    /// `see`.
    pub see: Option<String>,
}
