//! A file of readers: one row each, with the columns by name in any order. An empty cell is left out.
//!
//! A row becomes the table that it stands for, each value at the bytes of its cell, so that limits, words and problems
//! are those of `[[reader]]`.

use std::collections::BTreeMap;
use std::ops::Range;

use toml::Spanned;
use toml::de::{DeArray, DeString, DeTable, DeValue};

use crate::diagnostics::{Diagnostic, codes};
use crate::spec::field::choices;
use crate::spec::reader::Reader;
use crate::spec::suggest::nearest;
use crate::spec::table::Table;
use crate::spec::text::shown;

use super::{READER, ReadersRead};

/// What the cells of a column are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Is {
    /// A key.
    Key,
    /// A key of an inline table: table, key.
    Part(&'static str, &'static str),
    /// The low end of a list of two.
    Low(&'static str),
    /// The high end.
    High(&'static str),
    /// An inline table as an amount and a word: the keys of both.
    Words(&'static str, &'static str),
}

/// The columns.
const COLUMNS: &[(&str, Is)] = &[
    ("id", Is::Key),
    ("distance", Is::Key),
    ("ipd", Is::Key),
    ("ipd_low", Is::Low("ipd_range")),
    ("ipd_high", Is::High("ipd_range")),
    ("norms", Is::Key),
    ("toward_blur", Is::Part("toward", "blur")),
    ("toward_break", Is::Part("toward", "break")),
    ("toward_recovery", Is::Part("toward", "recovery")),
    ("away_blur", Is::Part("away", "blur")),
    ("away_break", Is::Part("away", "break")),
    ("away_recovery", Is::Part("away", "recovery")),
    ("phoria", Is::Words("amount", "direction")),
    ("near_point", Is::Key),
    ("balance", Is::Words("share", "stronger")),
    ("zone", Is::Key),
    ("base", Is::Key),
    ("base_vertical", Is::Words("amount", "higher")),
    ("left", Is::Part("glasses", "left")),
    ("right", Is::Part("glasses", "right")),
    ("language", Is::Key),
];

/// The bytes of a cell and its text.
type Cell<'d> = (Range<usize>, &'d str);

/// Reads every row; problems go to the reader.
pub(super) fn read(reader: &mut Reader<'_>, readers: &mut ReadersRead) {
    reader.bare = true;
    let mut rows = rows(reader.text()).into_iter();
    let Some(head) = rows.next() else { return };
    let Some(columns) = columns(reader, &head) else { return };
    for row in rows {
        let cells = cells(reader.text(), &row);
        let place = reader.place(row);
        if cells.len() != columns.len() {
            let (found, wanted) = (count(cells.len()), columns.len());
            let message = format!("a row has {found}, the first row names {wanted}");
            let problem = Diagnostic::error(codes::DATA, place, message)
                .with_label(format!("{wanted} expected"))
                .with_help("put a comma between cells, and leave a cell empty for what is not known");
            reader.push(problem);
            continue;
        }
        let table = table(&columns, cells);
        // Cells name no file of numbers, so nothing is left to be read.
        readers.one(reader, Table::new(&READER, &table, place), &mut Vec::new());
    }
}

/// The bytes of every row, but for blank lines and lines that begin with `#`.
fn rows(text: &str) -> Vec<Range<usize>> {
    let mut rows = Vec::new();
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        let inner = line.trim_start_matches('\u{feff}').trim();
        if !inner.is_empty() && !inner.starts_with('#') {
            let from = start + line.find(inner).unwrap_or(0);
            rows.push(from..from + inner.len());
        }
        start += line.len();
    }
    rows
}

/// The cells of a row, without the blanks and the double quotes around them.
fn cells<'d>(text: &'d str, row: &Range<usize>) -> Vec<Cell<'d>> {
    let mut start = row.start;
    let mut cells = Vec::new();
    for part in text[row.clone()].split(',') {
        let inner = part.trim();
        let value = inner.strip_prefix('"').and_then(|inner| inner.strip_suffix('"')).unwrap_or(inner).trim();
        let from = start + part.find(value).unwrap_or(0);
        cells.push((from..from + value.len(), value));
        start += part.len() + 1;
    }
    cells
}

/// The columns that the first row names; `None`, with its problems, where one of them is none.
fn columns(reader: &mut Reader<'_>, head: &Range<usize>) -> Option<Vec<(&'static str, Is)>> {
    let mut columns: Vec<(&'static str, Is)> = Vec::new();
    let mut bad = false;
    for (at, name) in cells(reader.text(), head) {
        let place = reader.place(at);
        let problem = match COLUMNS.iter().find(|(known, _)| *known == name) {
            Some(column) if !columns.contains(column) => {
                columns.push(*column);
                continue;
            }
            Some(_) => Diagnostic::error(codes::DUPLICATE, place, format!("the column `{name}` is there twice"))
                .with_label("again")
                .with_help("leave one of them out"),
            None => unknown(name, Diagnostic::error(codes::DATA, place, format!("unknown column `{}`", shown(name)))),
        };
        reader.push(problem);
        bad = true;
    }
    if !bad && columns.iter().all(|(name, _)| *name != "id") {
        let problem = Diagnostic::error(codes::DATA, reader.place(head.clone()), "there is no column `id`")
            .with_label("names of columns")
            .with_help("name the columns in the first row, `id` among them");
        reader.push(problem);
        bad = true;
    }
    (!bad).then_some(columns)
}

/// The way out of an unknown column.
fn unknown(name: &str, problem: Diagnostic) -> Diagnostic {
    let names: Vec<&str> = COLUMNS.iter().map(|(name, _)| *name).collect();
    let problem = problem.with_label("unknown column");
    if name.contains([';', '\t']) {
        return problem.with_help("put commas between the names of the columns, and between the cells of each row");
    }
    match nearest(name, names.iter().copied()) {
        Some(near) => problem.with_help(format!("did you mean `{near}`?")).with_replacement(near),
        None => problem.with_help(format!("a column is {}", choices(&names))),
    }
}

fn count(cells: usize) -> String {
    if cells == 1 { "1 cell".to_owned() } else { format!("{cells} cells") }
}

/// The table that a row stands for.
fn table<'d>(columns: &[(&'static str, Is)], cells: Vec<Cell<'d>>) -> DeTable<'d> {
    let mut table = DeTable::new();
    let mut inner: BTreeMap<&'static str, (Range<usize>, DeTable<'d>)> = BTreeMap::new();
    let mut ends: BTreeMap<&'static str, Vec<Spanned<DeValue<'d>>>> = BTreeMap::new();
    for ((name, is), (at, text)) in columns.iter().zip(cells).filter(|(_, (_, text))| !text.is_empty()) {
        match is {
            Is::Key => insert(&mut table, name, value(at, text)),
            Is::Part(owner, key) => {
                let (_, owner) = inner.entry(owner).or_insert_with(|| (at.clone(), DeTable::new()));
                insert(owner, key, value(at, text));
            }
            Is::Low(list) => ends.entry(list).or_default().insert(0, value(at, text)),
            Is::High(list) => ends.entry(list).or_default().push(value(at, text)),
            Is::Words(first, second) => {
                inner.insert(name, (at.clone(), words((first, second), (at, text))));
            }
        }
    }
    // A problem of several cells together points at the first of them.
    for (key, (at, owner)) in inner {
        insert(&mut table, key, Spanned::new(at, DeValue::Table(owner)));
    }
    for (key, list) in ends {
        let at = list.first().map_or(0..0, Spanned::span);
        insert(&mut table, key, Spanned::new(at, DeValue::Array(DeArray::from_iter(list))));
    }
    table
}

/// An amount and a word as the table of both; a missing word is missing there too.
fn words<'d>((first, second): (&'static str, &'static str), (at, text): Cell<'d>) -> DeTable<'d> {
    let split = text.rfind(char::is_whitespace);
    let (amount, word) = split.map_or((text, ""), |split| (text[..split].trim_end(), text[split..].trim()));
    let mut table = DeTable::new();
    insert(&mut table, first, value(at.start..at.start + amount.len(), amount));
    if !word.is_empty() {
        insert(&mut table, second, value(at.end - word.len()..at.end, word));
    }
    table
}

fn value<'d>(at: Range<usize>, text: &'d str) -> Spanned<DeValue<'d>> {
    Spanned::new(at, DeValue::String(DeString::Borrowed(text)))
}

fn insert<'d>(table: &mut DeTable<'d>, key: &'static str, value: Spanned<DeValue<'d>>) {
    table.insert(Spanned::new(value.span(), DeString::Borrowed(key)), value);
}
