//! Reads, solves and checks the sets of a command, and tells what was found.

use std::path::PathBuf;

use crate::bundle::error::count;
use crate::bundle::load::load;
use crate::bundle::prepare::{Book, Prepared, prepare};
use crate::diagnostics::render::{Paint, Record, records, text};
use crate::diagnostics::{Diagnostic, Severity};
use crate::units::Ppi;

use super::console::Console;
use super::{Status, Stop};

/// The sets of one command, as far as they could be prepared.
pub(super) struct Sets(pub(super) Vec<Prepared>);

impl Sets {
    /// Reads, solves and checks every set.
    pub(super) fn read(paths: &[PathBuf], ppi: Option<Ppi>) -> Result<Self, Stop> {
        paths.iter().map(|path| Ok(prepare(load(path)?, ppi))).collect::<Result<_, Stop>>().map(Self)
    }

    /// The sets as books; `None` while there is an error in any file of any set.
    pub(super) fn books(&self) -> Option<Vec<Book<'_>>> {
        self.0.iter().map(Prepared::book).collect()
    }

    /// Tells what was found: everything, or errors alone when quiet.
    pub(super) fn tell(&self, console: &Console) {
        let paint = if console.colour() { Paint::Ansi } else { Paint::Plain };
        for set in &self.0 {
            let found = set.diagnostics.sorted();
            let told: Vec<&Diagnostic> = match console.quiet() {
                true => found.into_iter().filter(|d| d.severity == Severity::Error).collect(),
                false => found,
            };
            if !told.is_empty() {
                console.insist(&text(told, &set.sources, paint));
            }
        }
    }

    /// What was found in one set, for programs.
    pub(super) fn records(set: &Prepared) -> Vec<Record> {
        records(set.diagnostics.sorted(), &set.sources)
    }

    /// How many problems of one severity there are.
    pub(super) fn count(&self, severity: Severity) -> usize {
        self.0.iter().map(|set| set.diagnostics.count(severity)).sum()
    }

    /// "2 errors, 1 warning".
    pub(super) fn tally(&self) -> String {
        let (errors, warnings) = (self.count(Severity::Error), self.count(Severity::Warning));
        format!("{}, {}", count(errors, "error"), count(warnings, "warning"))
    }

    /// Whether there are errors.
    pub(super) fn status(&self) -> Status {
        if self.0.iter().any(|set| set.diagnostics.has_errors()) { Status::Errors } else { Status::Fine }
    }
}
