//! A file and its tables: syntax, unknown tables, missing tables, tables written in another form.

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::diagnostics::{Diagnostic, Place, codes};

use super::field::{Need, TableForm, TableSpec};
use super::read::Raw;
use super::reader::Reader;
use super::suggest::nearest;
use super::table::{Table, all, open};
use super::text::shown;

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
            let place = reader.place(span);
            if echoes.contains(&i) && i != echoes.start {
                reader.mark_broken(place);
                continue;
            }
            let message = if i == echoes.start && !echoes.is_empty() { UNCLOSED } else { problem.message() };
            reader.push_syntax(syntax(message, place, reader.written(place)));
        }
        reader.close_syntax();
        Self { root }
    }

    /// Everything in the file.
    pub(super) fn root(&self) -> &DeTable<'t> {
        self.root.get_ref()
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
                let numbered = (1..).zip(list.iter());
                numbered.filter_map(|(n, entry)| Some(open(reader, spec, Raw::new(entry))?.numbered(n))).collect()
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
