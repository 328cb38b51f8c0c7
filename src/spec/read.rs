//! Single values, read from TOML against what their key takes. Every problem is pushed, with the exact bytes it is
//! about; nothing is guessed, clamped or dropped.

use toml::Spanned;
use toml::de::DeValue;

use crate::colour::Srgb8;
use crate::diagnostics::{Diagnostic, Place, codes};

use super::field::{Takes, choices};
use super::reader::Reader;
use super::suggest::nearest;
use super::text::shown;

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
    pub(super) fn of_entry(self, takes: &'a Takes) -> Self {
        Self { key: self.key, takes, entry: true }
    }

    /// "`depths`", or "an entry of `depths`".
    pub(super) fn name(self) -> String {
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
    pub(super) fn mismatch(self, reader: &mut Reader<'_>, slot: Slot<'_>) {
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

/// One of the words that a key takes, or the path of a file of numbers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Named {
    /// One of the words.
    Word(&'static str),
    /// A path from the folder of the set.
    File(String),
}

impl Read for Named {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Data(words) = *slot.takes else { return None };
        let written = text(reader, slot, raw)?;
        if let Some(word) = words.iter().find(|word| **word == written) {
            return Some(Named::Word(word));
        }
        if words.is_empty() || written.contains(['.', '/', '\\']) {
            return String::read(reader, slot, raw).map(Named::File);
        }
        let message = format!("{} takes {}, found `{}`", slot.name(), slot.takes.words(), shown(written));
        let problem = Diagnostic::error(codes::CHOICE, raw.place(reader), message).with_label("unknown word");
        reader.push(match nearest(written, words.iter().copied()) {
            Some(near) => problem.with_help(format!("did you mean `{near}`?")).with_replacement(format!("\"{near}\"")),
            None => problem.with_help(format!("write {}", slot.takes.words())),
        });
        None
    }
}

impl Read for Srgb8 {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let written = text(reader, slot, raw)?;
        let digits = written.strip_prefix('#').filter(|d| d.len() == 6 && d.bytes().all(|b| b.is_ascii_hexdigit()));
        let number = digits.and_then(|digits| u32::from_str_radix(digits, 16).ok());
        if let Some(number) = number {
            let [_, red, green, blue] = number.to_be_bytes();
            return Some(Srgb8([red, green, blue]));
        }
        let message = format!("{} takes {}, found `{}`", slot.name(), slot.takes.words(), shown(written));
        let problem = Diagnostic::error(codes::TEXT, raw.place(reader), message)
            .with_label("not a colour")
            .with_help("write two digits of `0`-`9` and `a`-`f` for each of red, green and blue, as in `\"#00ffff\"`");
        reader.push(problem);
        None
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
pub(super) fn text<'a>(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'a>) -> Option<&'a str> {
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
