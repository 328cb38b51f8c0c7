//! One file while it is read: its text, its problems, and what hints need to know about it.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

use toml::de::DeValue;

use crate::diagnostics::{Diagnostic, Diagnostics, FileId, Place, Sources, codes};

use super::field::TableSpec;
use super::picture::Pictures;
use super::read::{Raw, Read, Slot};
use super::translation::Speech;

/// Broken lines of one file that are quoted; past these a file is no TOML at all. Design choice.
const MOST_SYNTAX: usize = 50;

/// Reads one file and collects what is wrong with it.
#[derive(Debug)]
pub struct Reader<'d> {
    file: FileId,
    sources: &'d Sources,
    out: &'d mut Diagnostics,
    /// Where values point while a default is read: the header of their table.
    pinned: Option<Place>,
    /// Lines that are no TOML: what else is wrong on them is only an echo.
    broken: BTreeSet<usize>,
    /// The tables of this file, for hints about keys in the wrong one.
    pub family: Vec<&'static TableSpec>,
    /// Where a key that a table does not have belongs, in files of another kind.
    pub key_hint: fn(&TableSpec, &str) -> Option<String>,
    /// Whether values stand without quotes, as in rows; what would mend them does too.
    pub(super) bare: bool,
    /// Whether a problem is told once, however often its value is read.
    pub(super) once: bool,
    /// Missing tables that an unknown one was taken for: they are not reported twice.
    pub(super) mended_tables: BTreeSet<&'static str>,
    ramps: Vec<RampSeen>,
    /// The author's words that were read, and in which language they are wanted.
    pub(super) speech: Speech<'d>,
    pictures: Option<&'d dyn Pictures>,
    /// How the ramps of the file stand to one another and to those of other files.
    pub plan: Plan,
}

/// How ramps stand to one another: all at once, or one after the other; and the series that they are parts of.
#[derive(Debug, Clone, Default)]
pub struct Plan {
    /// Keys whose ramps change one after the other, each with the levels that pass before it; empty: all change at once.
    pub turns: BTreeMap<&'static str, u32>,
    /// The levels of the whole file, where ramps go in turn.
    pub levels: Option<u32>,
    /// The series of the set, by id.
    pub series: BTreeMap<String, SeriesPart>,
}

/// A series, and which part of it this file has.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SeriesPart {
    /// Its first value, as TOML.
    pub from: String,
    /// Its last value, as TOML.
    pub to: String,
    /// The word of its curve.
    pub curve: String,
    /// The place of this file's first level, from 0.
    pub first: u32,
    /// All its levels; 0 while they are still counted.
    pub of: u32,
    /// Its `[[series]]` header.
    pub place: Place,
}

/// The turn of a ramp.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn {
    /// Levels that pass before it.
    pub after: u32,
    /// Levels of the whole file.
    pub levels: u32,
}

impl Plan {
    /// The turn of the ramp of a key that has so many levels of its own.
    pub fn turn(&self, key: &str, own: u32) -> Turn {
        Turn { after: self.turns.get(key).copied().unwrap_or(0), levels: self.levels.unwrap_or(own) }
    }
}

/// A ramp that was read: all ramps of one exercise have the same number of levels.
#[derive(Debug, Clone)]
pub struct RampSeen {
    /// Its key.
    pub key: &'static str,
    /// Its value.
    pub place: Place,
    /// How many levels it has of its own.
    pub levels: u32,
    /// The series that it is a part of.
    pub series: Option<String>,
}

impl<'d> Reader<'d> {
    /// A reader for one file and the list that takes its problems.
    pub fn new(sources: &'d Sources, file: FileId, out: &'d mut Diagnostics) -> Self {
        Self {
            file,
            sources,
            out,
            pinned: None,
            broken: BTreeSet::new(),
            family: Vec::new(),
            key_hint: |_, _| None,
            bare: false,
            once: false,
            mended_tables: BTreeSet::new(),
            ramps: Vec::new(),
            speech: Speech::default(),
            pictures: None,
            plan: Plan::default(),
        }
    }

    /// The same with the pictures that the file may name; without, there are none.
    pub fn with_pictures(mut self, pictures: &'d dyn Pictures) -> Self {
        self.pictures = Some(pictures);
        self
    }

    /// The pictures that the file may name.
    pub(super) fn pictures(&self) -> Option<&'d dyn Pictures> {
        self.pictures
    }

    /// The file.
    pub fn file(&self) -> FileId {
        self.file
    }

    /// The whole text.
    pub(super) fn text(&self) -> &'d str {
        self.sources.text(self.file)
    }

    /// Adds a problem, unless it is the echo of a line that is no TOML.
    pub fn push(&mut self, mut problem: Diagnostic) {
        if self.bare {
            problem.replacement = problem.replacement.map(|text| text.trim_matches('"').to_owned());
        }
        let echo = problem.place.is_some_and(|p| p.file == self.file && self.broken.contains(&self.line(p)));
        let told = || self.once && self.out.iter().any(|known| *known == problem);
        if !echo && !told() {
            self.out.push(problem);
        }
    }

    /// Adds a problem of syntax and remembers its line. One line is reported once, and a file that is no TOML at all
    /// is not quoted whole.
    pub(super) fn push_syntax(&mut self, problem: Diagnostic) {
        if problem.place.is_some_and(|p| self.mark_broken(p)) && self.broken.len() <= MOST_SYNTAX {
            self.out.push(problem);
        }
    }

    /// Remembers that a line is no TOML. Whether it is the first time.
    pub(super) fn mark_broken(&mut self, place: Place) -> bool {
        self.broken.insert(self.line(place))
    }

    /// Says how many lines of broken syntax were not quoted.
    pub(super) fn close_syntax(&mut self) {
        let more = self.broken.len().saturating_sub(MOST_SYNTAX);
        if 0 < more {
            let lines = if more == 1 { "1 more line is".to_owned() } else { format!("{more} more lines are") };
            let message = format!("`{}`: {lines} not valid TOML", self.sources.path(self.file));
            let problem =
                Diagnostic::error(codes::SYNTAX, None, message).with_help("mend the first ones and run again");
            self.out.push(problem);
        }
    }

    /// Whether parts of the file could not be read, so that what seems missing may not be.
    pub(super) fn is_broken(&self) -> bool {
        !self.broken.is_empty()
    }

    pub(super) fn place(&self, span: Range<usize>) -> Place {
        let byte = |i: usize| u32::try_from(i).unwrap_or(u32::MAX);
        self.pinned.unwrap_or(Place { file: self.file, start: byte(span.start), end: byte(span.end) })
    }

    /// The bytes of the file at a place, as written.
    pub fn written(&self, place: Place) -> &'d str {
        self.sources.text(place.file).get(place.range()).unwrap_or("")
    }

    /// The line of a place, from 1.
    pub fn line(&self, place: Place) -> usize {
        self.sources.line(place).map_or(1, |line| line.number)
    }

    /// Reads a default as if it stood in the file; problems and places point at `header`.
    pub(super) fn read_default<T: Read>(&mut self, slot: Slot<'_>, text: &str, header: Place) -> Option<T> {
        let outer = self.pinned.replace(header);
        let read = match DeValue::parse(text) {
            Ok(value) => T::read(self, slot, Raw::new(&value)),
            Err(problem) => {
                self.push(Diagnostic::error(codes::SYNTAX, header, problem.message()));
                None
            }
        };
        self.pinned = outer;
        read
    }

    /// Reads a value that is written in another file as if it stood at `place` of this one.
    pub fn read_elsewhere<T: Read>(&mut self, slot: Slot<'_>, text: &str, place: Place) -> Option<T> {
        self.read_default(slot, text, place)
    }

    /// A reader of the same file that tells its problems to `out` alone: to look ahead.
    pub fn ahead<'x>(&self, out: &'x mut Diagnostics) -> Reader<'x>
    where
        'd: 'x,
    {
        let mut ahead = Reader::new(self.sources, self.file, out);
        ahead.plan = self.plan.clone();
        ahead
    }

    /// Reads a value that stands in another file, whose problems and places are there.
    pub(super) fn read_in<T: Read>(&mut self, file: FileId, slot: Slot<'_>, raw: Raw<'_>) -> Option<T> {
        let home = std::mem::replace(&mut self.file, file);
        let read = T::read(self, slot, raw);
        self.file = home;
        read
    }

    /// Notes a ramp, for the check that all have the same number of levels.
    pub fn note_ramp(&mut self, ramp: RampSeen) {
        self.ramps.push(ramp);
    }

    /// The ramps noted so far.
    pub fn ramps(&self) -> &[RampSeen] {
        &self.ramps
    }
}
