//! Reads, solves and checks the sets of a command, and tells what was found.

use std::path::PathBuf;

use crate::bundle::error::count;
use crate::bundle::load::load;
use crate::bundle::prepare::{Book, Prepared, gather, prepare};
use crate::bundle::shard::inputs;
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

    /// Reads every set and solves nothing.
    pub(super) fn gather(paths: &[PathBuf], ppi: Option<Ppi>) -> Result<Self, Stop> {
        paths.iter().map(|path| Ok(gather(load(path)?, ppi))).collect::<Result<_, Stop>>().map(Self)
    }

    /// What a run with these arguments is made from.
    pub(super) fn inputs(&self, arguments: &str) -> String {
        let read: Vec<_> = self.0.iter().map(|set| &set.exercises).collect();
        inputs(arguments, self.0.iter().flat_map(|set| set.sources.texts()), &read)
    }

    /// The sets as books; `None` while there is an error in any file of any set.
    pub(super) fn books(&self) -> Option<Vec<Book<'_>>> {
        self.0.iter().map(Prepared::book).collect()
    }

    /// Tells what was found down to this severity, or errors alone when quiet.
    pub(super) fn tell(&self, console: &Console, down_to: Severity) {
        let paint = if console.colour() { Paint::Ansi } else { Paint::Plain };
        let down_to = if console.quiet() { Severity::Error } else { down_to };
        for set in &self.0 {
            let found = set.diagnostics.sorted();
            let told: Vec<&Diagnostic> = found.into_iter().filter(|d| d.severity <= down_to).collect();
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

    /// "2 errors, 1 warning, 3 notes", down to this severity.
    pub(super) fn tally(&self, down_to: Severity) -> String {
        let severities = [Severity::Error, Severity::Warning, Severity::Note];
        let told = severities.into_iter().filter(|severity| *severity <= down_to);
        told.map(|severity| count(self.count(severity), severity.name())).collect::<Vec<_>>().join(", ")
    }

    /// Whether there are errors.
    pub(super) fn status(&self) -> Status {
        if self.0.iter().any(|set| set.diagnostics.has_errors()) { Status::Errors } else { Status::Fine }
    }
}
