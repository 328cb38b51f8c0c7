//! Single values, read from TOML against what their key takes. Every problem is pushed, with the exact bytes it is
//! about; nothing is guessed, clamped or dropped.

use std::collections::BTreeSet;
use std::ops::Range;

use toml::Spanned;
use toml::de::DeValue;

use crate::diagnostics::{Diagnostic, Diagnostics, FileId, Place, codes};
use crate::scene::{At, Depth, Size};
use crate::units::{Dimension, Mm, Quantity, QuantityError, Seconds};

use super::depth::parse_depth;
use super::field::{Limits, TableSpec, Takes, amount, base, choices};
use super::suggest::nearest;

/// Reads one file and collects what is wrong with it.
#[derive(Debug)]
pub struct Reader<'d> {
    file: FileId,
    text: &'d str,
    out: &'d mut Diagnostics,
    /// Where values point while a default is read: the header of their table.
    pinned: Option<Place>,
    /// Lines that are no TOML: what else is wrong on them is only an echo.
    broken: Vec<Range<usize>>,
    /// The tables of this file, for hints about keys in the wrong one.
    pub family: Vec<&'static TableSpec>,
    /// Where a key that a table does not have belongs, in files of another kind.
    pub key_hint: fn(&TableSpec, &str) -> Option<String>,
    /// Missing tables that an unknown one was taken for: they are not reported twice.
    pub(super) mended_tables: BTreeSet<&'static str>,
    ramps: Vec<RampSeen>,
}

/// A ramp that was read: all ramps of one exercise have the same number of levels.
#[derive(Debug, Clone, Copy)]
pub struct RampSeen {
    /// Its key.
    pub key: &'static str,
    /// Its value.
    pub place: Place,
    /// How many levels it has.
    pub levels: u32,
}

impl<'d> Reader<'d> {
    /// A reader for one file, its text and the list that takes its problems.
    pub fn new(file: FileId, text: &'d str, out: &'d mut Diagnostics) -> Self {
        Self {
            file,
            text,
            out,
            pinned: None,
            broken: Vec::new(),
            family: Vec::new(),
            key_hint: |_, _| None,
            mended_tables: BTreeSet::new(),
            ramps: Vec::new(),
        }
    }

    /// The file.
    pub fn file(&self) -> FileId {
        self.file
    }

    /// The whole text.
    pub(super) fn text(&self) -> &'d str {
        self.text
    }

    /// Adds a problem, unless it is the echo of a line that is no TOML.
    pub fn push(&mut self, problem: Diagnostic) {
        let echo = problem.place.is_some_and(|p| self.broken.iter().any(|line| line.contains(&(p.start as usize))));
        if !echo {
            self.out.push(problem);
        }
    }

    /// Adds a problem of syntax and remembers its line. One line is reported once.
    pub(super) fn push_syntax(&mut self, problem: Diagnostic, at: usize) {
        if self.mark_broken(at) {
            self.out.push(problem);
        }
    }

    /// Remembers that a line is no TOML. Whether it is the first time.
    pub(super) fn mark_broken(&mut self, at: usize) -> bool {
        if self.broken.iter().any(|line| line.contains(&at)) {
            return false;
        }
        let at = at.min(self.text.len());
        let bytes = self.text.as_bytes();
        let start = bytes[..at].iter().rposition(|&b| b == b'\n').map_or(0, |i| i + 1);
        let end = bytes[at..].iter().position(|&b| b == b'\n').map_or(bytes.len(), |i| at + i);
        self.broken.push(start..end + 1);
        true
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
        self.text.get(place.range()).unwrap_or("")
    }

    /// The line of a place, from 1.
    pub fn line(&self, place: Place) -> usize {
        let before = self.text.get(..place.start as usize).unwrap_or(self.text);
        before.bytes().filter(|&b| b == b'\n').count() + 1
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

    /// Notes a ramp, for the check that all have the same number of levels.
    pub fn note_ramp(&mut self, ramp: RampSeen) {
        self.ramps.push(ramp);
    }

    /// The ramps noted so far.
    pub fn ramps(&self) -> &[RampSeen] {
        &self.ramps
    }
}

/// The key that a value belongs to, and what it takes.
#[derive(Debug, Clone, Copy)]
pub struct Slot<'a> {
    /// The key.
    pub key: &'static str,
    /// What it takes.
    pub takes: &'a Takes,
    /// Whether the value is one of a list that the key takes.
    pub entry: bool,
}

impl<'a> Slot<'a> {
    /// The same key for an entry of its list.
    fn of_entry(self, takes: &'a Takes) -> Self {
        Self { key: self.key, takes, entry: true }
    }

    /// "`depths`", or "an entry of `depths`".
    fn name(self) -> String {
        if self.entry { format!("an entry of `{}`", self.key) } else { format!("`{}`", self.key) }
    }
}

/// A value as it stands in the file.
#[derive(Debug, Clone, Copy)]
pub struct Raw<'a> {
    pub(super) value: &'a Spanned<DeValue<'a>>,
}

impl<'a> Raw<'a> {
    pub(super) fn new(value: &'a Spanned<DeValue<'a>>) -> Self {
        Self { value }
    }

    /// Its bytes.
    pub fn place(self, reader: &Reader<'_>) -> Place {
        reader.place(self.value.span())
    }

    /// Whether it is a table.
    pub fn is_table(self) -> bool {
        self.value.get_ref().is_table()
    }

    /// What it is, for messages: "the number `40`".
    fn found(self, reader: &Reader<'_>) -> String {
        let written = shown(reader.written(self.place(reader)));
        match self.value.get_ref() {
            DeValue::String(text) => format!("the text `{}`", shown(text)),
            DeValue::Integer(_) | DeValue::Float(_) => format!("the number `{written}`"),
            DeValue::Boolean(flag) => format!("`{flag}`"),
            DeValue::Datetime(date) => format!("the bare date or time `{}`", shown(&date.to_string())),
            DeValue::Array(_) => "a list".to_owned(),
            DeValue::Table(_) => "a table".to_owned(),
        }
    }

    /// Pushes that the value is of another type than the key takes.
    fn mismatch(self, reader: &mut Reader<'_>, slot: Slot<'_>) {
        let message = format!("{} takes {}, found {}", slot.name(), slot.takes.noun(), self.found(reader));
        let problem = Diagnostic::error(codes::TYPE, self.place(reader), message)
            .with_label(format!("takes {}", slot.takes.noun()))
            .with_help(format!("write for example `{}`", slot.takes.example()));
        reader.push(problem);
    }
}

/// A type that can be read from a value.
pub trait Read: Sized {
    /// Reads the value, or pushes what is wrong with it.
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self>;
}

impl Read for String {
    /// Any of the text forms, checked against the one that the key takes.
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let text = text(reader, slot, raw)?;
        match super::text::check(slot.takes, text) {
            Ok(()) => Some(text.to_owned()),
            Err(wrong) => {
                let message = format!("{} {}", slot.name(), wrong.message);
                let problem = Diagnostic::error(codes::TEXT, raw.place(reader), message)
                    .with_label(wrong.label)
                    .with_help(wrong.help);
                reader.push(problem);
                None
            }
        }
    }
}

impl Read for bool {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let flag = raw.value.get_ref().as_bool();
        if flag.is_none() {
            raw.mismatch(reader, slot);
        }
        flag
    }
}

impl Read for u32 {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Some(integer) = raw.value.get_ref().as_integer() else {
            raw.mismatch(reader, slot);
            return None;
        };
        let Takes::Count { min, max } = *slot.takes else { return None };
        let digits = integer.as_str().replace('_', "");
        let count = i128::from_str_radix(&digits, integer.radix()).ok().and_then(|n| u32::try_from(n).ok());
        if let Some(count) = count.filter(|n| (min..=max).contains(n)) {
            return Some(count);
        }
        let (limit, side) = if digits.starts_with('-') || count.is_some_and(|n| n < min) {
            (min, "below the least")
        } else {
            (max, "above the most")
        };
        let seen = shown(reader.written(raw.place(reader)));
        let message = format!("{} is `{seen}`, {side} it takes, {limit}", slot.name());
        let problem = Diagnostic::error(codes::RANGE, raw.place(reader), message)
            .with_label(format!("limit {limit}"))
            .with_help(format!("{} takes {}", slot.name(), slot.takes.words()));
        reader.push(problem);
        None
    }
}

/// One of the words that a key takes, by its number in [`Takes::Choice`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Word(pub usize);

impl Read for Word {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Choice(words) = *slot.takes else { return None };
        let text = text(reader, slot, raw)?;
        let found = words.iter().position(|w| *w == text).map(Word);
        if found.is_none() {
            let message = format!("{} takes {}, found `{}`", slot.name(), choices(words), shown(text));
            let problem = Diagnostic::error(codes::CHOICE, raw.place(reader), message);
            reader.push(match (nearest(text, words.iter().copied()), words) {
                (Some(near), _) => problem
                    .with_label("unknown word")
                    .with_help(format!("did you mean `{near}`?"))
                    .with_replacement(format!("\"{near}\"")),
                (None, [only]) => {
                    let help = format!("this version takes `\"{only}\"` alone");
                    problem.with_label(format!("only `{only}`")).with_help(help)
                }
                _ => problem.with_label("unknown word").with_help(format!("write {}", choices(words))),
            });
        }
        found
    }
}

impl Read for Mm {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Length(limits) = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Length])?;
        within(reader, slot, raw, seen, limits).then(|| seen.to_mm()).flatten()
    }
}

impl Read for Seconds {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Time(limits) = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Time])?;
        within(reader, slot, raw, seen, limits).then(|| seen.to_seconds()).flatten()
    }
}

impl Read for Size {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Size { length, angle } = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Length, Dimension::Angle])?;
        let limits = if seen.unit.dimension() == Dimension::Length { length } else { angle };
        if !within(reader, slot, raw, seen, limits) {
            return None;
        }
        seen.to_mm().map(Size::Length).or(seen.to_angle().map(Size::Angle))
    }
}

impl Read for Depth {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        if is_number(raw) {
            unitless(reader, slot, raw, "a depth");
            return None;
        }
        let text = text(reader, slot, raw)?;
        match parse_depth(text) {
            Ok(depth) => Some(depth),
            Err(wrong) => {
                let problem = Diagnostic::error(codes::DEPTH, raw.place(reader), wrong.message)
                    .with_label("not a depth")
                    .with_help(wrong.help);
                reader.push(problem);
                None
            }
        }
    }
}

impl Read for At {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Point(reach) = *slot.takes else { return None };
        let least = Quantity { value: -reach.value, ..reach };
        let takes = Takes::Length(Limits { min: least, max: reach });
        match raw.value.get_ref().as_array().map(|list| &**list) {
            Some([x, y]) => {
                let slot = slot.of_entry(&takes);
                let (x, y) = (Mm::read(reader, slot, Raw::new(x)), Mm::read(reader, slot, Raw::new(y)));
                Some(At { x: x?, y: y? })
            }
            Some(list) => {
                let message = format!("`{}` takes two lengths, found a list of {}", slot.key, list.len());
                let problem = Diagnostic::error(codes::LIST, raw.place(reader), message)
                    .with_label("two lengths")
                    .with_help("the first goes to the right of the middle of the art field, the second down");
                reader.push(problem);
                None
            }
            None => {
                raw.mismatch(reader, slot);
                None
            }
        }
    }
}

impl<T: Read> Read for Vec<T> {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::List { of, min, max } = *slot.takes else { return None };
        let Some(list) = raw.value.get_ref().as_array() else {
            raw.mismatch(reader, slot);
            return None;
        };
        let entry = slot.of_entry(of);
        let read: Vec<Option<T>> = list.iter().map(|v| T::read(reader, entry, Raw::new(v))).collect();
        if !(min as usize..=max as usize).contains(&list.len()) {
            let wanted = if min == max { entries(min as usize) } else { format!("{min} to {max} entries") };
            let message = format!("`{}` takes {wanted}, found {}", slot.key, list.len());
            let problem = Diagnostic::error(codes::LIST, raw.place(reader), message)
                .with_label(entries(list.len()))
                .with_help(format!("`{}` takes {}", slot.key, slot.takes.words()));
            reader.push(problem);
            return None;
        }
        read.into_iter().collect()
    }
}

fn entries(count: usize) -> String {
    if count == 1 { "1 entry".to_owned() } else { format!("{count} entries") }
}

/// A value together with where it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed<T> {
    /// The value.
    pub value: T,
    /// Its bytes.
    pub place: Place,
}

impl<T: Read> Read for Placed<T> {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let value = T::read(reader, slot, raw)?;
        Some(Placed { value, place: raw.place(reader) })
    }
}

/// The text of a value, or a problem. A bare TOML date can be mended by quotes.
fn text<'a>(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'a>) -> Option<&'a str> {
    match raw.value.get_ref() {
        DeValue::String(text) => Some(text),
        DeValue::Datetime(date) if matches!(slot.takes, Takes::Date) => {
            let message = format!("{} takes {}, found {}", slot.name(), slot.takes.noun(), raw.found(reader));
            let problem = Diagnostic::error(codes::TYPE, raw.place(reader), message)
                .with_label("no quotes")
                .with_help("put the date in quotes")
                .with_replacement(format!("\"{date}\""));
            reader.push(problem);
            None
        }
        _ => {
            raw.mismatch(reader, slot);
            None
        }
    }
}

fn is_number(raw: Raw<'_>) -> bool {
    matches!(raw.value.get_ref(), DeValue::Integer(_) | DeValue::Float(_))
}

fn unitless(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>, wanted: &str) {
    let seen = shown(reader.written(raw.place(reader)));
    let message = format!("{} takes {wanted}, found the bare number `{seen}`", slot.name());
    let problem = Diagnostic::error(codes::UNIT, raw.place(reader), message)
        .with_label("no unit")
        .with_help(format!("write it in quotes with its unit, for example `{}`", slot.takes.example()));
    reader.push(problem);
}

/// A quantity of one of the wanted dimensions.
fn quantity(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>, wanted: &[Dimension]) -> Option<Quantity> {
    let names: Vec<_> = wanted.iter().map(|d| d.name()).collect();
    let names = names.join(" or ");
    if is_number(raw) {
        unitless(reader, slot, raw, &names);
        return None;
    }
    let text = text(reader, slot, raw)?;
    let units: Vec<_> = wanted.iter().map(|d| format!("{} takes {}", d.name(), d.units())).collect();
    let units = units.join("; ");
    let problem = match Quantity::parse(text) {
        Ok(seen) if wanted.contains(&seen.unit.dimension()) => return Some(seen),
        Ok(seen) => {
            let of = seen.unit.dimension().name();
            let message = format!("`{}` is {of}; {} takes {names}", shown(text), slot.name());
            Diagnostic::error(codes::UNIT, raw.place(reader), message).with_label(format!("takes {names}"))
        }
        Err(wrong) => {
            let code = match wrong {
                QuantityError::NoUnit | QuantityError::UnknownUnit(_) => codes::UNIT,
                QuantityError::NoNumber | QuantityError::BadNumber(_) => codes::NUMBER,
            };
            let message = format!("{} takes {names}: {}", slot.name(), quantity_problem(&wrong, text, &names));
            Diagnostic::error(code, raw.place(reader), message).with_label(format!("not {names}"))
        }
    };
    reader.push(problem.with_help(units));
    None
}

/// Why a text is no quantity, in words.
pub(super) fn quantity_problem(problem: &QuantityError, text: &str, wanted: &str) -> String {
    match problem {
        QuantityError::NoNumber => format!("`{}` does not start with a number", shown(text)),
        QuantityError::BadNumber(number) => format!("`{}` is not a number that {wanted} can have", shown(number)),
        QuantityError::NoUnit => format!("`{}` has no unit", shown(text)),
        QuantityError::UnknownUnit(unit) if unit.starts_with(',') => {
            format!("`{}` has a decimal comma, decimals have a point", shown(text))
        }
        QuantityError::UnknownUnit(unit) => format!("unknown unit `{}`", shown(unit)),
    }
}

/// Whether a quantity is inside its limits, which have its dimension; pushes a problem where it is not.
fn within(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>, seen: Quantity, limits: &Limits) -> bool {
    if limits.contain(seen) {
        return true;
    }
    let low = base(seen) < base(limits.min);
    let (limit, side) = if low { (limits.min, "below the least") } else { (limits.max, "above the most") };
    let same = if seen.unit == limit.unit { String::new() } else { format!(" ({})", in_unit_of(seen, limit)) };
    let message = format!("{} is `{}`{same}, {side} it takes, {}", slot.name(), amount(seen), amount(limit));
    let problem = Diagnostic::error(codes::RANGE, raw.place(reader), message)
        .with_label(format!("limit {}", amount(limit)))
        .with_help(format!("{} takes {}", slot.name(), slot.takes.words()));
    reader.push(problem);
    false
}

/// A quantity in the unit of another of the same dimension.
fn in_unit_of(quantity: Quantity, other: Quantity) -> String {
    let one = base(Quantity { value: 1.0, unit: other.unit });
    amount(Quantity { value: base(quantity) / one, unit: other.unit })
}

/// An author's text for a message: control characters escaped, cut after 40 characters.
pub fn shown(text: &str) -> String {
    let mut out = String::new();
    for (i, c) in text.chars().enumerate() {
        if i == 40 {
            out.push('…');
            break;
        }
        if c.is_control() { out.extend(c.escape_default()) } else { out.push(c) }
    }
    out
}
