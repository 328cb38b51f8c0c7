//! Problems found in an author's files: what, where, what was seen, the limit, and one way out.
//!
//! Diagnostics are plain data, collected and never thrown; `render` turns them into text or JSON. This room knows no
//! spec and reads no files.

use std::ops::Range;

/// A file of the set, by its index in [`Sources`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct FileId(pub u32);

/// A stretch of bytes in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// Which file.
    pub file: FileId,
    /// First byte.
    pub start: u32,
    /// One past the last byte.
    pub end: u32,
}

impl Place {
    /// The bytes as a range.
    pub fn range(self) -> Range<usize> {
        self.start as usize..self.end as usize
    }
}

/// How bad a problem is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// The set is not rendered.
    Error,
    /// The set is rendered; the author should look.
    Warning,
    /// Something the author should know, such as a default that shapes depth.
    Note,
}

/// One problem.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Diagnostic {
    /// How bad it is.
    pub severity: Severity,
    /// Stable code, for example `E-UNKNOWN-KEY`.
    pub code: &'static str,
    /// Where, if it has a place.
    pub place: Option<Place>,
    /// What is wrong: value seen and limit with its unit. Lower case, no final stop.
    pub message: String,
    /// A few words for the caret.
    pub label: String,
    /// One way out.
    pub help: String,
    /// Text that would mend it, put in place of the marked bytes.
    pub replacement: Option<String>,
}

/// The files of a set, kept so that problems can quote their lines.
#[derive(Debug, Clone, Default)]
pub struct Sources {
    files: Vec<(String, String)>,
}

impl Sources {
    /// Keeps a file under the path that messages show.
    pub fn add(&mut self, path: impl Into<String>, text: impl Into<String>) -> FileId {
        self.files.push((path.into(), text.into()));
        FileId(u32::try_from(self.files.len() - 1).unwrap_or(u32::MAX))
    }

    /// The path of a file, as shown.
    pub fn path(&self, file: FileId) -> &str {
        self.files.get(file.0 as usize).map_or("", |f| &f.0)
    }

    /// The text of a file.
    pub fn text(&self, file: FileId) -> &str {
        self.files.get(file.0 as usize).map_or("", |f| &f.1)
    }
}
