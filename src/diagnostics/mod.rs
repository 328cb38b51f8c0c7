//! Problems found in an author's files: what, where, what was seen, the limit, and one way out.
//!
//! Diagnostics are plain data, collected and never thrown; `render` turns them into text or JSON. This room knows no
//! spec and reads no files.

pub mod codes;
pub mod render;

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
    /// The start of a file, for what is missing from it as a whole.
    pub const fn start_of(file: FileId) -> Self {
        Self { file, start: 0, end: 0 }
    }

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

impl Severity {
    /// The word that text and JSON show.
    pub const fn name(self) -> &'static str {
        match self {
            Severity::Error => "error",
            Severity::Warning => "warning",
            Severity::Note => "note",
        }
    }
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
    /// A few words for the caret; may be empty.
    pub label: String,
    /// One way out; may be empty.
    pub help: String,
    /// Text that would mend it, put in place of the marked bytes.
    pub replacement: Option<String>,
}

impl Diagnostic {
    /// An error; label, help and replacement are added by the `with_` methods.
    pub fn error(code: &'static str, place: impl Into<Option<Place>>, message: impl Into<String>) -> Self {
        Self::new(Severity::Error, code, place.into(), message.into())
    }

    /// A warning.
    pub fn warning(code: &'static str, place: impl Into<Option<Place>>, message: impl Into<String>) -> Self {
        Self::new(Severity::Warning, code, place.into(), message.into())
    }

    /// A note.
    pub fn note(code: &'static str, place: impl Into<Option<Place>>, message: impl Into<String>) -> Self {
        Self::new(Severity::Note, code, place.into(), message.into())
    }

    fn new(severity: Severity, code: &'static str, place: Option<Place>, message: String) -> Self {
        Self { severity, code, place, message, label: String::new(), help: String::new(), replacement: None }
    }

    /// The same with a few words for the caret.
    pub fn with_label(mut self, label: impl Into<String>) -> Self {
        self.label = label.into();
        self
    }

    /// The same with one way out.
    pub fn with_help(mut self, help: impl Into<String>) -> Self {
        self.help = help.into();
        self
    }

    /// The same with text that would mend it in place of the marked bytes.
    pub fn with_replacement(mut self, text: impl Into<String>) -> Self {
        self.replacement = Some(text.into());
        self
    }
}

/// The problems of one run, collected from every file before anything is shown.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Diagnostics {
    list: Vec<Diagnostic>,
}

impl Diagnostics {
    /// None yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds one.
    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.list.push(diagnostic);
    }

    /// Adds many.
    pub fn extend(&mut self, more: impl IntoIterator<Item = Diagnostic>) {
        self.list.extend(more);
    }

    /// Adds those that are not there yet.
    pub fn extend_new(&mut self, more: impl IntoIterator<Item = Diagnostic>) {
        for diagnostic in more {
            if !self.list.contains(&diagnostic) {
                self.list.push(diagnostic);
            }
        }
    }

    /// Keeps those that the test wants.
    pub fn retain(&mut self, keep: impl FnMut(&Diagnostic) -> bool) {
        self.list.retain(keep);
    }

    /// Whether any of them stops the run.
    pub fn has_errors(&self) -> bool {
        self.count(Severity::Error) > 0
    }

    /// How many there are of one severity.
    pub fn count(&self, severity: Severity) -> usize {
        self.list.iter().filter(|d| d.severity == severity).count()
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.list.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// In the order they were found.
    pub fn iter(&self) -> impl Iterator<Item = &Diagnostic> {
        self.list.iter()
    }

    /// By file and place; those without a place last; equal places in the order they were found.
    pub fn sorted(&self) -> Vec<&Diagnostic> {
        let mut list: Vec<_> = self.list.iter().collect();
        list.sort_by_key(|d| (d.place.is_none(), d.place, d.severity));
        list
    }
}

impl IntoIterator for Diagnostics {
    type Item = Diagnostic;
    type IntoIter = std::vec::IntoIter<Diagnostic>;

    fn into_iter(self) -> Self::IntoIter {
        self.list.into_iter()
    }
}

/// The files of a set, kept so that problems can quote their lines.
#[derive(Debug, Clone, Default)]
pub struct Sources {
    files: Vec<Source>,
}

/// One file with the first byte of each of its lines.
#[derive(Debug, Clone)]
struct Source {
    path: String,
    text: String,
    lines: Vec<usize>,
}

/// A line of a file, with the place of something on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Line<'a> {
    /// Its number, from 1.
    pub number: usize,
    /// Its text without the line end.
    pub text: &'a str,
    /// Bytes of `text` before the place.
    pub start: usize,
    /// Bytes of `text` up to the end of the place, or of the line where the place runs on.
    pub end: usize,
}

impl Line<'_> {
    /// The column in characters, from 1.
    pub fn column(&self) -> usize {
        self.text[..self.start].chars().count() + 1
    }
}

impl Sources {
    /// Keeps a file under the path that messages show.
    pub fn add(&mut self, path: impl Into<String>, text: impl Into<String>) -> FileId {
        let text = text.into();
        let lines = std::iter::once(0).chain(text.match_indices('\n').map(|(i, _)| i + 1)).collect();
        self.files.push(Source { path: path.into(), text, lines });
        FileId(u32::try_from(self.files.len() - 1).unwrap_or(u32::MAX))
    }

    /// The path of a file, as shown.
    pub fn path(&self, file: FileId) -> &str {
        self.files.get(file.0 as usize).map_or("", |f| &f.path)
    }

    /// The text of a file.
    pub fn text(&self, file: FileId) -> &str {
        self.files.get(file.0 as usize).map_or("", |f| &f.text)
    }

    /// The texts of all files, in the order they were added.
    pub fn texts(&self) -> impl Iterator<Item = &str> {
        self.files.iter().map(|file| file.text.as_str())
    }

    /// The paths and texts of all files, in the order they were added.
    pub fn files(&self) -> impl Iterator<Item = (&str, &str)> {
        self.files.iter().map(|file| (file.path.as_str(), file.text.as_str()))
    }

    /// The line on which a place starts. Places outside the file, or inside a character, move to the nearest character
    /// before them.
    pub fn line(&self, place: Place) -> Option<Line<'_>> {
        let file = self.files.get(place.file.0 as usize)?;
        let at = floor_char(&file.text, place.start as usize);
        let number = file.lines.partition_point(|&start| start <= at);
        let first = *file.lines.get(number - 1)?;
        let last = file.lines.get(number).map_or(file.text.len(), |next| next - 1);
        let text = file.text[first..last].trim_end_matches('\r');
        let start = (at - first).min(text.len());
        let end = floor_char(&file.text, place.end as usize).saturating_sub(first).clamp(start, text.len());
        Some(Line { number, text, start, end })
    }
}

/// The start of the character that byte `at` belongs to, or the end of the text.
fn floor_char(text: &str, at: usize) -> usize {
    let at = at.min(text.len());
    (0..=at).rev().find(|&i| text.is_char_boundary(i)).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_is_found_from_any_byte_of_it() {
        let mut sources = Sources::default();
        let file = sources.add("a.toml", "one\r\nzwölf\nlast");
        let line = |start, end| sources.line(Place { file, start, end });
        assert_eq!(line(0, 3), Some(Line { number: 1, text: "one", start: 0, end: 3 }));
        // Byte 8 lies inside the two bytes of the umlaut.
        assert_eq!(line(8, 11), Some(Line { number: 2, text: "zwölf", start: 2, end: 6 }));
        assert_eq!(line(8, 11).map(|l| l.column()), Some(3));
        assert_eq!(line(12, 999), Some(Line { number: 3, text: "last", start: 0, end: 4 }));
        assert_eq!(line(999, 999), Some(Line { number: 3, text: "last", start: 4, end: 4 }));
        assert_eq!(sources.line(Place::start_of(FileId(7))), None);
    }

    #[test]
    fn sorted_goes_by_file_then_place_and_leaves_the_placeless_last() {
        let at = |file, start| Place { file: FileId(file), start, end: start };
        let mut all = Diagnostics::new();
        all.push(Diagnostic::error("E", None, "nowhere"));
        all.push(Diagnostic::error("E", at(1, 0), "second file"));
        all.push(Diagnostic::note("N", at(0, 9), "later"));
        all.push(Diagnostic::error("E", at(0, 2), "first"));
        let order: Vec<_> = all.sorted().iter().map(|d| d.message.as_str()).collect();
        assert_eq!(order, ["first", "later", "second file", "nowhere"]);
        assert!(all.has_errors());
    }
}
