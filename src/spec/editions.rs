//! The editions of a set: `[[edition]]`, and what one takes from another.
//!
//! Every value keeps the place where it is written, also where another edition takes it.

use std::collections::BTreeMap;

use crate::colour::{Glasses, Ground};
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Language;
use crate::units::Ppi;

use super::colours::{self, GlassesRead, InksRead, read_colours, read_glasses, read_inks};
use super::data::{DataKind, DataRef};
use super::document::Document;
use super::field::{Field, TableForm, TableSpec, Takes, choices};
use super::matrix::{self, MATRIX};
use super::read::{Placed, Word};
use super::reader::Reader;
use super::readers::FOLDER;
use super::suggest::nearest;
use super::table::{Layer, Table};
use super::{Answers, Edition, Formats, Hand, PageFormat, TextSize, unique};

/// Where the answers stand, in the order of [`PLACES`].
pub(super) const ANSWERS: Takes = Takes::Choice(&["turned", "file", "none"]);
pub(super) const PLACES: [Answers; 3] = [Answers::Turned, Answers::File, Answers::None];

/// `[[edition]]`.
pub const EDITION: TableSpec = TableSpec {
    name: "edition",
    form: TableForm::Many,
    groups: &[EDITION_KEYS, colours::MEDIUM_KEYS],
    doc: "One way in which the set is issued. At least one; with those of `[[matrix]]` at most 200.",
};

const EDITION_KEYS: &[Field] = &[
    Field::required("id", Takes::Id, "Names the folder of the edition; unique in the set."),
    FROM,
    Field::required(
        "page",
        Takes::Choice(&["A4", "Letter", "16:9"]),
        "Page format: 210 × 297 mm, 8.5 × 11 in, or a screen page of 320 × 180 mm.",
    ),
    Field::required("ground", Takes::Choice(&["white", "black"]), "Colour of the empty page: `white` for paper."),
    Field::required("ppi", Takes::Count { min: 72, max: 1200 }, "Pixels per inch of the PNG pages."),
    Field::optional(
        "glasses",
        Takes::Table(&colours::EDITION_GLASSES),
        "Glasses of this edition. Left out: those of `[glasses]`.",
    ),
    Field::optional(
        "inks",
        Takes::Table(&colours::EDITION_INKS),
        "What this edition asks of its inks, in place of the whole of `[inks]`.",
    ),
    Field::default(
        "formats",
        Takes::List { of: &Takes::Choice(&["pdf", "svg", "png"]), min: 1, max: 3 },
        r#"["pdf", "svg", "png"]"#,
        "What is written.",
    ),
    Field::optional("answers", ANSWERS, "Where the answers of this edition stand. Left out: as `[set]` says."),
    Field::optional(
        "language",
        Takes::Choice(&Language::TAGS),
        "The language of the words of this edition. Another one than that of the set needs the author's words in it: see \
         `[[translation]]`. Left out: that of the set.",
    ),
    Field::default(
        "text",
        Takes::Choice(&TextSize::NAMES),
        r#""standard""#,
        "How large the words are: `standard`, 12 pt, or `large`, 18 pt, with the words of an exercise on a sheet of their \
         own. The art keeps its size, since its size is its depth.",
    ),
    Field::default(
        "hand",
        Takes::Choice(&Hand::NAMES),
        r#""right""#,
        "The hand that the reader writes with: for `left`, what is written into is mirrored. The art never is.",
    ),
    Field::default(
        "gated",
        Takes::Choice(&GATED),
        r#""in""#,
        "Whether the pages that need the `[gate]` are in this edition: `in`, or `out` for one without them, to be used \
         alone.",
    ),
];

/// `from` of `[[edition]]`.
const FROM: Field = Field::optional(
    "from",
    Takes::Id,
    "Another `[[edition]]`, wherever it stands in the file: every key that is left out here is taken from it. An edition \
     with a `medium` of its own takes no `screen`, `solids`, `lamp` or `cmyk`. Left out: nothing is taken.",
);

/// Whether gated pages are in an edition.
pub(super) const GATED: [&str; 2] = ["in", "out"];

/// The most editions of a set. Design choice.
const MOST_EDITIONS: usize = 200;

/// What editions take where they have none of their own.
pub(super) struct Shared {
    pub(super) glasses: Option<GlassesRead>,
    pub(super) inks: Option<InksRead>,
    pub(super) answers: Option<Answers>,
    pub(super) language: Option<Language>,
}

/// Reads all editions: the `[[edition]]`s in their order, then those of each `[[matrix]]`. `None`: a problem has been
/// pushed.
pub(super) fn read_editions(
    reader: &mut Reader<'_>,
    document: &Document<'_>,
    shared: &Shared,
    data: &mut Vec<DataRef>,
) -> Option<Vec<Edition>> {
    if !document.has(EDITION.name) {
        document.table(reader, &EDITION);
        return None;
    }
    // A value that several editions take is read for each of them, and its problem told once.
    reader.once = true;
    let mut names = BTreeMap::new();
    let bases = read_bases(reader, document, &mut names);
    let mut fine = bases.iter().all(|base| base.id.is_some() && base.under.is_some());
    let mut wanted = Vec::new();
    for table in document.tables(reader, &MATRIX) {
        match matrix::read(reader, table, &bases, &mut names) {
            Some(made) => wanted.extend(made),
            None => fine = false,
        }
    }
    let own = bases.into_iter().map(|base| {
        let under = base.under.unwrap_or_default();
        (base.id.map(|id| id.value).unwrap_or_default(), base.table.layered(Layer::new(), under))
    });
    let wanted: Vec<_> = own.chain(wanted).collect();
    let editions = read_all(reader, wanted, shared, data);
    reader.once = false;
    editions.filter(|_| fine)
}

/// An `[[edition]]` before its values are read.
pub(super) struct Base<'a> {
    /// Its name, where it has one of its own.
    pub(super) id: Option<Placed<String>>,
    pub(super) table: Table<'a>,
    /// What it takes from others; `None` where that cannot be told.
    pub(super) under: Option<Layer<'a>>,
}

/// The `[[edition]]`s of the file, each with what it takes from others.
fn read_bases<'a>(
    reader: &mut Reader<'_>,
    document: &'a Document<'a>,
    names: &mut BTreeMap<String, Place>,
) -> Vec<Base<'a>> {
    let mut bases = Vec::new();
    for mut table in document.tables(reader, &EDITION) {
        table.check_keys(reader);
        let id = table.get(reader, "id").and_then(|id| named(reader, id, names));
        bases.push(Base { id, table, under: None });
    }
    let parents: Vec<_> = (0..bases.len()).map(|index| parent(reader, &bases, index)).collect();
    for index in 0..bases.len() {
        let Some(line) = ancestors(reader, &bases, &parents, index) else {
            bases[index].table.forgive_missing();
            continue;
        };
        let under = line.iter().rev().fold(Layer::new(), |under, older| heir(&bases[*older].table, under, true));
        bases[index].under = Some(heir(&bases[index].table, under, false));
    }
    bases
}

/// What is left of the values below a table, with its own or without: a medium of its own keeps what goes with another
/// one away.
fn heir<'a>(table: &Table<'a>, mut under: Layer<'a>, with_own: bool) -> Layer<'a> {
    let own = table.written();
    under.retain(|key, _| !own.contains_key(key) && !["id", FROM.key].contains(key));
    if own.contains_key("medium") {
        under.retain(|key, _| colours::MEDIUM_KEYS.iter().all(|field| field.key != *key));
    }
    if with_own {
        under.extend(own);
    }
    under
}

/// The edition that `from` of an edition names: `None` where there is no such key, `Some(None)` where it names none.
fn parent(reader: &mut Reader<'_>, bases: &[Base<'_>], index: usize) -> Option<Option<usize>> {
    let table = &bases[index].table;
    table.has(FROM.key).then(|| base_of(reader, table, bases))
}

/// The edition that `from` of a table names, or a problem.
pub(super) fn base_of(reader: &mut Reader<'_>, table: &Table<'_>, bases: &[Base<'_>]) -> Option<usize> {
    let from: Placed<String> = table.get(reader, FROM.key)?;
    let ids = || bases.iter().filter_map(|base| base.id.as_ref()).map(|id| id.value.as_str());
    let found = bases.iter().position(|base| base.id.as_ref().is_some_and(|id| id.value == from.value));
    if found.is_none() {
        let message = format!("`from` names `{}`, and there is no such `[[edition]]`", from.value);
        let problem = Diagnostic::error(codes::CHOICE, from.place, message).with_label("unknown edition");
        reader.push(match nearest(&from.value, ids()) {
            Some(near) => problem.with_help(format!("did you mean `{near}`?")).with_replacement(format!("\"{near}\"")),
            None => problem.with_help(format!("name one of {}", choices(&ids().collect::<Vec<_>>()))),
        });
    }
    found
}

/// The editions that one takes from, the next of kin first. `None`: a problem has been pushed; that of a circle for the
/// first edition of it.
fn ancestors(
    reader: &mut Reader<'_>,
    bases: &[Base<'_>],
    parents: &[Option<Option<usize>>],
    index: usize,
) -> Option<Vec<usize>> {
    let (mut line, mut at) = (Vec::new(), index);
    while let Some(next) = parents.get(at).copied().flatten() {
        at = next?;
        if at == index && line.iter().any(|other| *other < index) {
            return None;
        }
        if at == index {
            let table = &bases[index].table;
            let message = if line.is_empty() {
                "`from` names the edition itself".to_owned()
            } else {
                let way: Vec<_> = line.iter().chain([&index]).map(|i| format!("`{}`", name_of(&bases[*i]))).collect();
                format!("`from` goes round in a circle: {} takes from {}", way[way.len() - 1], way.join(", then "))
            };
            let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, FROM.key), message)
                .with_label("leads back here")
                .with_help("leave `from` out of one of them, and write its keys there");
            reader.push(problem);
            return None;
        }
        if line.contains(&at) {
            return None;
        }
        line.push(at);
    }
    Some(line)
}

fn name_of<'b>(base: &'b Base<'_>) -> &'b str {
    base.id.as_ref().map_or("", |id| &id.value)
}

/// Keeps the name of an edition, or pushes that it is taken, by another one or by the folder of something else.
pub(super) fn named(
    reader: &mut Reader<'_>,
    id: Placed<String>,
    names: &mut BTreeMap<String, Place>,
) -> Option<Placed<String>> {
    let place = id.place;
    let value = unique(reader, "edition id", id, names)?;
    let taken = [(FOLDER, "the sets of the readers have"), (PLOT, "the charts of the set have")];
    let Some((_, whose)) = taken.into_iter().find(|(folder, _)| *folder == value) else {
        return Some(Placed { value, place });
    };
    let message = format!("an edition cannot be `{value}`: {whose} that folder");
    let problem = Diagnostic::error(codes::DUPLICATE, place, message)
        .with_label("taken")
        .with_help("give the edition another name");
    reader.push(problem);
    None
}

/// Reads the editions of these names and tables.
fn read_all(
    reader: &mut Reader<'_>,
    wanted: Vec<(String, Table<'_>)>,
    shared: &Shared,
    data: &mut Vec<DataRef>,
) -> Option<Vec<Edition>> {
    if let Some((_, extra)) = wanted.get(MOST_EDITIONS) {
        let message = format!("a set has at most {MOST_EDITIONS} editions, found {}", wanted.len());
        let problem = Diagnostic::error(codes::LIST, extra.place(), message)
            .with_label("too many from here")
            .with_help("split the set, or leave out editions");
        reader.push(problem);
    }
    let (mut of_set, mut editions) = (Vec::new(), Vec::new());
    for (index, (id, table)) in wanted.iter().take(MOST_EDITIONS).enumerate() {
        if !table.has("glasses") {
            of_set.push(index);
        }
        editions.push(read_edition(reader, (id, table), index, shared, data));
    }
    if let Some((path, words)) = shared.glasses.as_ref().and_then(|glasses| glasses.table.clone()) {
        data.push(DataRef::new(path, DataKind::Filters(words), of_set));
    }
    if editions.is_empty() {
        return None;
    }
    editions.into_iter().collect()
}

fn read_edition(
    reader: &mut Reader<'_>,
    (id, table): (&str, &Table<'_>),
    index: usize,
    shared: &Shared,
    data: &mut Vec<DataRef>,
) -> Option<Edition> {
    let page = table.one_of(reader, "page", &[PageFormat::A4, PageFormat::Letter, PageFormat::Wide]);
    let ground = table.one_of(reader, "ground", &[Ground::White, Ground::Black]);
    let ppi = table.get(reader, "ppi").map(Ppi);
    let glasses = edition_glasses(reader, table, index, shared, data);
    let inks = match table.inline_table(reader, "inks") {
        Some(Some(own)) => read_inks(reader, own),
        Some(None) => shared.inks.clone(),
        None => None,
    };
    let colour = read_colours(reader, table, inks.clone().unwrap_or_default(), index, data);
    let formats = read_formats(reader, table);
    let answers = if table.has("answers") { table.one_of(reader, "answers", &PLACES) } else { shared.answers };
    let language = match table.has("language") {
        true => table.one_of(reader, "language", &Language::ALL),
        false => shared.language,
    };
    let text = table.one_of(reader, "text", &TextSize::ALL);
    let hand = table.one_of(reader, "hand", &Hand::ALL);
    let gated = table.one_of(reader, "gated", &[true, false]);
    let (id, page, ground, ppi) = (id.to_owned(), page?, ground?, ppi?);
    let (glasses, formats, place) = (glasses?, formats?, table.place());
    inks?;
    let (language, text, hand, answers, colour) = (language?, text?, hand?, answers?, colour?);
    let gated = gated?;
    Some(Edition { id, page, ground, glasses, colour, ppi, formats, answers, language, text, hand, gated, place })
}

/// The folder of the charts of a set, beside those of its editions.
pub const PLOT: &str = "plot";

/// The glasses of an edition: its own, or those of the set.
fn edition_glasses(
    reader: &mut Reader<'_>,
    table: &Table<'_>,
    index: usize,
    shared: &Shared,
    data: &mut Vec<DataRef>,
) -> Option<Glasses> {
    let Some(own) = table.inline_table(reader, "glasses")? else {
        return shared.glasses.as_ref().map(|shared| shared.glasses.clone());
    };
    let GlassesRead { glasses, table } = read_glasses(reader, own)?;
    data.extend(table.map(|(path, words)| DataRef::new(path, DataKind::Filters(words), vec![index])));
    Some(glasses)
}

fn read_formats(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Formats> {
    let words: Vec<Placed<Word>> = table.get(reader, "formats")?;
    let mut formats = [false; 3];
    for Placed { value: Word(number), place } in words {
        let slot = formats.get_mut(number)?;
        if *slot {
            let message = format!("`formats` lists {} twice", reader.written(place));
            let problem = Diagnostic::error(codes::DUPLICATE, place, message)
                .with_label("listed before")
                .with_help("leave one of them out");
            reader.push(problem);
            return None;
        }
        *slot = true;
    }
    let [pdf, svg, png] = formats;
    Some(Formats { pdf, svg, png })
}
