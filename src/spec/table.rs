//! A table and its keys, checked against the language: unknown, missing and misplaced keys.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::diagnostics::{Diagnostic, Place, codes};

use super::field::{Field, Need, TableSpec, Takes, choices};
use super::read::{Raw, Read, Slot, Word};
use super::reader::Reader;
use super::suggest::nearest;
use super::text::shown;
use super::translation::read_said;

/// Values by their keys, from other tables of the same file.
pub(super) type Layer<'a> = BTreeMap<&'a str, &'a Spanned<DeValue<'a>>>;

/// A table of a file.
#[derive(Debug)]
pub struct Table<'a> {
    spec: &'static TableSpec,
    entries: &'a DeTable<'a>,
    header: Place,
    /// Which of its form it is in the file, from 1.
    number: usize,
    /// Values that stand in for what the table writes.
    over: Layer<'a>,
    /// Values of keys that the table leaves out.
    under: Layer<'a>,
    /// Missing keys that an unknown key was taken for: they are not reported twice.
    mended: BTreeSet<&'static str>,
}

impl<'a> Table<'a> {
    pub(super) fn new(spec: &'static TableSpec, entries: &'a DeTable<'a>, header: Place) -> Self {
        Self { spec, entries, header, number: 1, over: Layer::new(), under: Layer::new(), mended: BTreeSet::new() }
    }

    /// The same table as one of several of its form, from 1.
    pub(super) fn numbered(self, number: usize) -> Self {
        Self { number, ..self }
    }

    /// The same table with values of other tables: `over` in place of its own, `under` where it has none.
    pub(super) fn layered(mut self, over: Layer<'a>, under: Layer<'a>) -> Self {
        (self.over, self.under) = (over, under);
        self
    }

    /// The same table as one that another header asks for.
    pub(super) fn at(&self, header: Place) -> Self {
        Self { mended: self.mended.clone(), ..Self::new(self.spec, self.entries, header).numbered(self.number) }
    }

    /// Takes keys that are missing as told: where they would come from is a problem of its own.
    pub(super) fn forgive_missing(&mut self) {
        self.mended.extend(self.spec.fields().map(|field| field.key));
    }

    /// Whether it writes nothing at all.
    pub(super) fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// Every value that it writes itself, by key.
    pub(super) fn written(&self) -> Layer<'a> {
        self.entries.iter().map(|(key, value)| (&**key.get_ref(), value)).collect()
    }

    /// The value of a key: what stands in for it, what is written, or what stands below.
    fn value(&self, key: &str) -> Option<&'a Spanned<DeValue<'a>>> {
        let over = self.over.get(key).copied();
        over.or_else(|| self.entries.get(key)).or_else(|| self.under.get(key).copied())
    }

    /// What tells it from the others of its form: the text of its first key, or else its number.
    fn name(&self) -> Cow<'a, str> {
        let first = self.spec.fields().next().and_then(|field| self.value(field.key));
        let text = first.and_then(|value| value.get_ref().as_str());
        text.map_or_else(|| self.number.to_string().into(), Cow::from)
    }

    /// The entries of a list that it writes, without any check.
    pub(super) fn list(&self, key: &str) -> Vec<Raw<'a>> {
        let list = self.value(key).and_then(|value| value.get_ref().as_array());
        list.map(|list| list.iter().map(Raw::new).collect()).unwrap_or_default()
    }

    /// The table inside an inline table value, its keys checked.
    pub fn inline(reader: &mut Reader<'_>, spec: &'static TableSpec, raw: Raw<'a>) -> Option<Self> {
        let mut table = open(reader, spec, raw)?;
        table.check_keys(reader);
        Some(table)
    }

    /// The same table, read as another one.
    pub fn read_as(&self, spec: &'static TableSpec) -> Self {
        Self::new(spec, self.entries, self.header)
    }

    /// The bytes of its header.
    pub fn place(&self) -> Place {
        self.header
    }

    /// The bytes of the value of a key, or of the header where it is left out.
    pub fn place_of(&self, reader: &Reader<'_>, key: &str) -> Place {
        self.value(key).map_or(self.header, |value| Raw::new(value).place(reader))
    }

    /// Whether the key is written.
    pub fn has(&self, key: &str) -> bool {
        self.value(key).is_some()
    }

    /// Pushes every key that the table does not have.
    pub fn check_keys(&mut self, reader: &mut Reader<'_>) {
        for key in self.entries.keys() {
            let name: &str = key.get_ref();
            if self.spec.field(name).is_some() {
                continue;
            }
            let free = self.spec.fields().map(|f| f.key).filter(|k| !self.entries.contains_key(*k));
            let near = nearest(name, free).and_then(|near| self.spec.field(near));
            let problem = self.unknown_key(reader, name, reader.place(key.span()), near);
            reader.push(problem);
            self.mended.extend(near.map(|f| f.key));
        }
    }

    fn unknown_key(&self, reader: &Reader<'_>, name: &str, place: Place, near: Option<&Field>) -> Diagnostic {
        let message = format!("unknown key `{}` in {}", shown(name), self.spec.title());
        let problem = Diagnostic::error(codes::UNKNOWN_KEY, place, message).with_label("unknown key");
        let owner = reader.family.iter().find(|spec| spec.name != self.spec.name && spec.field(name).is_some());
        match (owner, near) {
            (Some(owner), _) => problem.with_help(format!("`{name}` is a key of {}", owner.title())),
            (None, Some(near)) => problem.with_help(format!("did you mean `{}`?", near.key)).with_replacement(near.key),
            (None, None) => {
                let keys: Vec<_> = self.spec.fields().map(|f| f.key).collect();
                let takes = || format!("{} takes {}", self.spec.title(), all(&keys));
                problem.with_help((reader.key_hint)(self.spec, name).unwrap_or_else(takes))
            }
        }
    }

    /// Pushes every key that belongs to another form of the table than this one.
    pub fn check_form(&self, reader: &mut Reader<'_>, form: &str) {
        for field in self.spec.fields().filter(|f| !f.forms.is_empty() && !f.forms.contains(&form)) {
            let Some((key, _)) = self.entries.get_key_value(field.key) else { continue };
            let message = format!("`{}` belongs to form {}, this is a `{form}`", field.key, choices(field.forms));
            let problem = Diagnostic::error(codes::CONFLICT, reader.place(key.span()), message)
                .with_label(format!("not for a `{form}`"))
                .with_help(format!("leave it out, or write `form = \"{}\"`", field.forms.first().unwrap_or(&"")));
            reader.push(problem);
        }
    }

    /// The value of a key that is required or has a default. `None`: a problem has been pushed.
    pub fn get<T: Read>(&self, reader: &mut Reader<'_>, key: &'static str) -> Option<T> {
        let field = self.spec.field(key)?;
        self.get_as(reader, key, &field.takes)
    }

    /// The same with something else to take than the language says; for ramps, which are tables of what they ramp.
    pub fn get_as<T: Read>(&self, reader: &mut Reader<'_>, key: &'static str, takes: &Takes) -> Option<T> {
        let slot = Slot { key, takes, entry: false };
        let field = self.spec.field(key)?;
        match (self.value(key), field.need) {
            (Some(value), _) if field.said => read_said(reader, (self.spec, &self.name()), slot, Raw::new(value)),
            (Some(value), _) => T::read(reader, slot, Raw::new(value)),
            (None, Need::Default(text)) => reader.read_default(slot, text, self.header),
            (None, _) => {
                self.missing(reader, slot);
                None
            }
        }
    }

    /// The value of a key that may be left out. `None`: a problem has been pushed; `Some(None)`: it is left out.
    pub fn maybe<T: Read>(&self, reader: &mut Reader<'_>, key: &'static str) -> Option<Option<T>> {
        if self.has(key) { self.get(reader, key).map(Some) } else { Some(None) }
    }

    /// The one of `values` whose word is written; `values` stand in the order of the words in [`Takes::Choice`].
    pub fn one_of<T: Copy>(&self, reader: &mut Reader<'_>, key: &'static str, values: &[T]) -> Option<T> {
        let Word(number) = self.get(reader, key)?;
        values.get(number).copied()
    }

    /// The word that is written, of a key that takes [`Takes::Choice`].
    pub fn word(&self, reader: &mut Reader<'_>, key: &'static str) -> Option<&'static str> {
        let Word(number) = self.get(reader, key)?;
        let Takes::Choice(words) = self.spec.field(key)?.takes else { return None };
        words.get(number).copied()
    }

    /// Whether the table has such a key at all.
    pub fn knows(&self, key: &str) -> bool {
        self.spec.field(key).is_some()
    }

    /// An inline table that may be left out, as for [`Table::maybe`]; its keys are not checked yet.
    pub fn inline_table(&self, reader: &mut Reader<'_>, key: &'static str) -> Option<Option<Table<'a>>> {
        let Some(value) = self.value(key) else { return Some(None) };
        let Takes::Table(spec) = self.spec.field(key)?.takes else { return None };
        open(reader, spec, Raw::new(value)).map(Some)
    }

    fn missing(&self, reader: &mut Reader<'_>, slot: Slot<'_>) {
        if self.mended.contains(slot.key) || reader.is_broken() {
            return;
        }
        let stray = self
            .entries
            .keys()
            .find(|k| self.spec.field(k.get_ref()).is_none() && nearest(k.get_ref(), [slot.key]).is_some());
        if let Some(stray) = stray {
            let place = reader.place(stray.span());
            let problem = self.unknown_key(reader, stray.get_ref(), place, self.spec.field(slot.key));
            return reader.push(problem);
        }
        let message = format!("{} has no `{}`", self.spec.title(), slot.key);
        let problem = Diagnostic::error(codes::MISSING_KEY, self.header, message)
            .with_label(format!("`{}` is missing", slot.key))
            .with_help(format!("add `{}`: {}", slot.key, slot.takes.words()));
        reader.push(problem);
    }
}

/// Opens a value as a table, or pushes that it is none.
pub(super) fn open<'a>(reader: &mut Reader<'_>, spec: &'static TableSpec, raw: Raw<'a>) -> Option<Table<'a>> {
    let place = raw.place(reader);
    match raw.value.get_ref() {
        DeValue::Table(entries) => Some(Table::new(spec, entries, place)),
        _ => {
            let message = format!("`{}` is a table, found `{}`", spec.name, shown(reader.written(place)));
            let problem = Diagnostic::error(codes::TYPE, place, message)
                .with_label("not a table")
                .with_help(format!("write {} and its keys below it", spec.title()));
            reader.push(problem);
            None
        }
    }
}

/// "`a`, `b` and `c`".
pub(super) fn all(keys: &[&str]) -> String {
    choices(keys).replace("` or `", "` and `")
}
