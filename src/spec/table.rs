//! Files and their tables, checked against the language: unknown and missing tables and keys.

use std::collections::BTreeSet;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::diagnostics::{Diagnostic, Place, codes};

use super::field::{Field, Need, TableForm, TableSpec, Takes, choices};
use super::read::{Raw, Read, Reader, Slot, Word, shown};
use super::suggest::nearest;

/// A file, parsed as far as it is TOML.
#[derive(Debug)]
pub struct Document<'t> {
    root: Spanned<DeTable<'t>>,
}

impl<'t> Document<'t> {
    /// Parses a file; pushes every problem of syntax, and keeps what can be read.
    pub fn parse(reader: &mut Reader<'t>) -> Self {
        let text = reader.text();
        let (root, mut problems) = DeTable::parse_recoverable(text);
        problems.sort_by_key(|p| p.span().map_or(usize::MAX, |s| s.start));
        // In a list that is not closed every line after it fails: the first of them says it for all.
        let open = problems.iter().position(|p| p.message().contains("array"));
        let unclosed = problems.iter().rposition(|p| p.message().starts_with("unclosed array"));
        let echoes = open.zip(unclosed).map_or(0..0, |(open, unclosed)| open..unclosed + 1);
        for (i, problem) in problems.iter().enumerate() {
            let span = problem.span().unwrap_or(text.len()..text.len());
            let (start, place) = (span.start, reader.place(span));
            if echoes.contains(&i) && i != echoes.start {
                reader.mark_broken(start);
                continue;
            }
            let message = if i == echoes.start && !echoes.is_empty() { UNCLOSED } else { problem.message() };
            reader.push_syntax(syntax(message, place, reader.written(place)), start);
        }
        Self { root }
    }

    /// Opens a `[table]`; pushes where it is missing or written in another form.
    pub fn table<'a>(&'a self, reader: &mut Reader<'_>, spec: &'static TableSpec) -> Option<Table<'a>> {
        if !self.has(spec.name) {
            self.missing_table(reader, spec);
        }
        self.tables(reader, spec).into_iter().next()
    }

    /// Opens a `[table]` that may be left out.
    pub fn optional_table<'a>(&'a self, reader: &mut Reader<'_>, spec: &'static TableSpec) -> Option<Table<'a>> {
        self.tables(reader, spec).into_iter().next()
    }

    /// Opens all `[[table]]`s in the order of the file; pushes what is no table.
    pub fn tables<'a>(&'a self, reader: &mut Reader<'_>, spec: &'static TableSpec) -> Vec<Table<'a>> {
        let Some(value) = self.root.get_ref().get(spec.name) else { return Vec::new() };
        let place = Raw::new(value).place(reader);
        match (value.get_ref(), spec.form) {
            (DeValue::Table(entries), TableForm::Many) => {
                let message = format!("`[{}]` needs double brackets", spec.name);
                let problem = Diagnostic::error(codes::UNKNOWN_TABLE, place, message)
                    .with_label("single brackets")
                    .with_help(format!("write {}", spec.title()));
                let single = reader.written(place) == format!("[{}]", spec.name);
                let double = format!("[[{}]]", spec.name);
                reader.push(if single { problem.with_replacement(double) } else { problem });
                vec![Table::new(spec, entries, place)]
            }
            (DeValue::Table(entries), _) => vec![Table::new(spec, entries, place)],
            (DeValue::Array(list), form) => {
                if form != TableForm::Many {
                    let message = format!("`[[{}]]`: there is one {} in a file", spec.name, spec.title());
                    let problem = Diagnostic::error(codes::UNKNOWN_TABLE, place, message)
                        .with_label("double brackets")
                        .with_help(format!("write {}, once", spec.title()));
                    reader.push(problem);
                }
                list.iter().filter_map(|entry| open(reader, spec, Raw::new(entry))).collect()
            }
            _ => open(reader, spec, Raw::new(value)).into_iter().collect(),
        }
    }

    /// Whether the file has a table of this name.
    pub fn has(&self, name: &str) -> bool {
        self.root.get_ref().contains_key(name)
    }

    /// Pushes every table, and every key outside a table, that the file does not have. `elsewhere` may say where a
    /// table does belong.
    pub fn check_tables(&self, reader: &mut Reader<'_>, elsewhere: impl Fn(&str) -> Option<String>) {
        let family = reader.family.clone();
        for (key, value) in self.root.get_ref().iter() {
            let name: &str = key.get_ref();
            if family.iter().any(|spec| spec.name == name) {
                continue;
            }
            let place = reader.place(key.span());
            if value.get_ref().is_table() || is_table_list(value.get_ref()) {
                let near = nearest(name, family.iter().map(|spec| spec.name).filter(|n| !self.has(n)));
                let near = near.and_then(|near| family.iter().find(|spec| spec.name == near));
                reader.push(unknown_table(name, place, near, elsewhere(name), &family));
                reader.mended_tables.extend(near.map(|spec| spec.name));
            } else {
                let message = format!("the key `{}` stands outside any table", shown(name));
                let problem = Diagnostic::error(codes::UNKNOWN_KEY, place, message).with_label("outside any table");
                reader.push(problem.with_help(match family.iter().find(|spec| spec.field(name).is_some()) {
                    Some(owner) => format!("move it under {}", owner.title()),
                    None => format!("this file has {}", headers(&family)),
                }));
            }
        }
    }

    fn missing_table(&self, reader: &mut Reader<'_>, spec: &'static TableSpec) {
        if reader.mended_tables.contains(spec.name) || reader.is_broken() {
            return;
        }
        let stray = self.root.get_ref().iter().find(|(key, value)| {
            let known = reader.family.iter().any(|spec| spec.name == *key.get_ref());
            !known && value.get_ref().is_table() && nearest(key.get_ref(), [spec.name]).is_some()
        });
        if let Some((key, _)) = stray {
            let place = reader.place(key.span());
            return reader.push(unknown_table(key.get_ref(), place, Some(&spec), None, &[]));
        }
        let keys: Vec<_> = spec.fields().filter(|f| f.need == Need::Required).map(|f| f.key).collect();
        let place = Place::start_of(reader.file());
        let problem = Diagnostic::error(codes::MISSING_TABLE, place, format!("this file has no {}", spec.title()))
            .with_help(format!("add {} with {}", spec.title(), all(&keys)));
        reader.push(problem);
    }
}

const UNCLOSED: &str = "a list is not closed, `]` is missing before this";

/// A problem of syntax in our words where the parser's are short, with the mended text where it is certain.
fn syntax(message: &str, place: Place, written: &str) -> Diagnostic {
    let quotable = !written.is_empty() && !written.contains(['"', '\\', '\n']);
    if message.starts_with("string values must be quoted") && quotable {
        return Diagnostic::error(codes::SYNTAX, place, format!("`{}` is text without quotes", shown(written)))
            .with_label("no quotes")
            .with_help("put text and quantities in quotes")
            .with_replacement(format!("\"{written}\""));
    }
    let message = match message {
        _ if message.starts_with("string values must be quoted") => "no value after `=`",
        "invalid basic string, expected `\"`" => "a text is not closed, `\"` is missing",
        other => other,
    };
    Diagnostic::error(codes::SYNTAX, place, format!("not valid TOML: {message}"))
        .with_label("here")
        .with_help("each line is `key = value`, `[table]` or a comment; texts and quantities stand in quotes")
}

fn is_table_list(value: &DeValue<'_>) -> bool {
    value.as_array().is_some_and(|list| list.first().is_some_and(|v| v.get_ref().is_table()))
}

fn headers(family: &[&'static TableSpec]) -> String {
    let names: Vec<_> = family.iter().map(|spec| spec.title()).collect();
    names.join(", ")
}

/// "`a`, `b` and `c`".
fn all(keys: &[&str]) -> String {
    choices(keys).replace("` or `", "` and `")
}

fn unknown_table(
    name: &str,
    place: Place,
    near: Option<&&'static TableSpec>,
    elsewhere: Option<String>,
    family: &[&'static TableSpec],
) -> Diagnostic {
    let problem = Diagnostic::error(codes::UNKNOWN_TABLE, place, format!("unknown table `{}`", shown(name)))
        .with_label("unknown table");
    match (elsewhere, near) {
        (Some(hint), _) => problem.with_help(hint),
        (None, Some(spec)) => problem.with_help(format!("did you mean {}?", spec.title())).with_replacement(spec.name),
        (None, None) => problem.with_help(format!("this file has {}", headers(family))),
    }
}

fn open<'a>(reader: &mut Reader<'_>, spec: &'static TableSpec, raw: Raw<'a>) -> Option<Table<'a>> {
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

/// A table of a file.
#[derive(Debug)]
pub struct Table<'a> {
    spec: &'static TableSpec,
    entries: &'a DeTable<'a>,
    header: Place,
    /// Missing keys that an unknown key was taken for: they are not reported twice.
    mended: BTreeSet<&'static str>,
}

impl<'a> Table<'a> {
    fn new(spec: &'static TableSpec, entries: &'a DeTable<'a>, header: Place) -> Self {
        Self { spec, entries, header, mended: BTreeSet::new() }
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
        self.entries.get(key).map_or(self.header, |value| Raw::new(value).place(reader))
    }

    /// Whether the key is written.
    pub fn has(&self, key: &str) -> bool {
        self.entries.contains_key(key)
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
        match (self.entries.get(key), self.spec.field(key)?.need) {
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

    /// An inline table that may be left out, as for [`Table::maybe`]; its keys are not checked yet.
    pub fn inline_table(&self, reader: &mut Reader<'_>, key: &'static str) -> Option<Option<Table<'a>>> {
        let Some(value) = self.entries.get(key) else { return Some(None) };
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
