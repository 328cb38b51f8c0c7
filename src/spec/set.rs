//! `set.toml`: its tables and how they are read.

use std::collections::BTreeMap;

use crate::diagnostics::Place;
use crate::language::Language;
use crate::optics::Viewer;
use crate::plan::Practice;
use crate::units::Mm;

use super::colours::{self, InksRead, read_glasses, read_inks};
use super::data::DataRef;
use super::document::Document;
use super::editions::{ANSWERS, EDITION, PLACES, Shared, read_editions};
use super::field::{Field, TableForm, TableSpec, Takes};
use super::matrix::MATRIX;
use super::parts::{
    BACK, CONTACT, FRONT, LICENCE, Licence, RELEASE, Release, read_back, read_front, read_licence, read_releases,
};
use super::plan::{PLAN, read_plan};
use super::publish::{PUBLISH, check_edition, read_publish};
use super::read::{Named, Placed};
use super::reader::{Reader, SeriesPart};
use super::readers::{READER, ReadersRead};
use super::table::Table;
use super::translation::{TRANSLATION, Translation, read_translations};
use super::viewer::{Known, VIEWER, read_viewer};
use super::{Edition, Publish, SetSpec};

/// `[set]`.
pub const SET: TableSpec = TableSpec {
    name: "set",
    form: TableForm::Single,
    groups: &[&[
        Field::required("id", Takes::Id, "Names the output folder and files."),
        Field::required("title", Takes::Text(80), "Title of the book.").said(),
        Field::optional("summary", Takes::Text(300), "A sentence or two for the cover.").said(),
        Field::optional("author", Takes::Text(120), "Who made the set, for the cover."),
        Field::required("version", Takes::Version, "Version of the set, printed on every page."),
        Field::required("date", Takes::Date, "The only date that is ever printed. It must exist in the calendar."),
        Field::required(
            "language",
            Takes::Choice(&Language::TAGS),
            "The language that the set is written in, and that of the words that come with the program.",
        ),
        Field::required(
            "exercises",
            Takes::List { of: &Takes::File, min: 1, max: 300 },
            "The exercise files in the order of the book, as paths from the folder of `set.toml`. The stem of a file \
             name is the id of the exercise: `a`-`z`, `0`-`9` and `-`, unique in the set.",
        ),
        Field::optional(
            "readers",
            Takes::Data(&[]),
            "A file of readers, one a line, for `render --readers`: the first row names the columns, in any order: \
             `id`, and any of `distance`, `ipd`, `ipd_low`, `ipd_high`, `norms`, `toward_blur`, `toward_break`, \
             `toward_recovery`, `away_blur`, `away_break`, `away_recovery`, `phoria` (as `4 pd exo`), `near_point`, \
             `zone`, `base`, `base_vertical` (as `1 pd left`), `left` and `right` (the colours of the glasses) and \
             `language`. Cells are written as in `[[reader]]`, without quotes; an empty one is left out. Left out: \
             the readers are those of the `[[reader]]` tables.",
        ),
        Field::default(
            "order",
            Takes::Choice(&["rising", "free"]),
            r#""rising""#,
            "`rising`: each page is at least as hard as the one before it of its strand, and not much harder. `free`: the \
             pages are a collection, and no order is checked.",
        ),
        Field::default(
            "answers",
            ANSWERS,
            r#""turned""#,
            "Where the answers stand, if any page asks something: `turned` on the last pages, upside down; `file` in \
             files of their own, beside the book; `none` in `report.json` alone.",
        ),
        FRONT,
        BACK,
        CONTACT,
    ]],
    doc: "The book as a whole.",
};

/// `[gate]`.
pub const GATE: TableSpec = TableSpec {
    name: "gate",
    form: TableForm::Single,
    groups: &[&[Field::required(
        "set_by",
        Takes::Text(80),
        "The eye-care professional who decided it; printed on every page it is about.",
    )]],
    doc: "Opens what is for an eye-care professional to decide: unequal eyes (`balance`), kinds that say so, and in \
          `[viewer]` the whole zone and a base. Left out: a set that asks for any of these is refused.",
};

/// `[[series]]`.
pub const SERIES: TableSpec = TableSpec {
    name: "series",
    form: TableForm::Many,
    groups: &[&[
        Field::required("id", Takes::Id, "The name that ramps call it by; unique in the set."),
        Field::required("from", Takes::Text(60), "Value on its first level, as the ramped key takes it."),
        Field::required("to", Takes::Text(60), "Value on its last level."),
        Field::default(
            "curve",
            Takes::Choice(&["even", "geometric", "difficulty"]),
            r#""even""#,
            "How its levels are spaced, as for a ramp.",
        ),
    ]],
    doc: "A ramp that runs on through several exercises, of one kind or of several, in the order of the book: each takes its \
          own number of levels of it.",
};

/// The tables of `set.toml`, in the order of the reference.
pub const TABLES: &[&TableSpec] = &[
    &SET,
    &VIEWER,
    &colours::GLASSES,
    &colours::INKS,
    &GATE,
    &PLAN,
    &SERIES,
    &PUBLISH,
    &EDITION,
    &MATRIX,
    &TRANSLATION,
    &READER,
    &LICENCE,
    &RELEASE,
];

/// What `set.toml` gives: the exercises can be read even where the rest is broken.
#[derive(Debug, Clone)]
pub struct SetRead {
    /// The set, if all of it could be read.
    pub set: Option<SetSpec>,
    /// The paths of the exercises as written, with their places; those that cannot be paths are left out, each with
    /// its problem.
    pub exercises: Vec<Placed<String>>,
    /// The ramps that run on through several exercises, by id, their levels still to be counted.
    pub series: BTreeMap<String, SeriesPart>,
    /// Whether it has a `[gate]`, readable or not.
    pub gated: bool,
    /// Its readers, but for those in a file.
    pub readers: ReadersRead,
    /// The files of its words in other languages.
    pub translations: Vec<Translation>,
    /// Files of numbers that the set names: what they hold still has to be [applied](super::data::apply).
    pub data: Vec<DataRef>,
}

/// Reads `set.toml`. Problems go to the reader.
pub fn read_set(reader: &mut Reader<'_>) -> SetRead {
    reader.family = TABLES.to_vec();
    let document = Document::parse(reader);
    document.check_tables(reader, |_| None);
    let head = document.table(reader, &SET).map(|mut t| {
        t.check_keys(reader);
        t
    });
    let exercises = head.as_ref().map(|t| read_exercises(reader, t)).unwrap_or_default();
    let answers = head.as_ref().and_then(|t| t.one_of(reader, "answers", &PLACES));
    let file = head.as_ref().and_then(|t| read_readers_file(reader, t));
    let parts = head.as_ref().map(|t| (read_front(reader, t), read_back(reader, t, &document)));
    let head = head.and_then(|t| read_head(reader, &t)).zip(parts);
    let head = head.and_then(|(head, (front, back))| Some(SetSpec { front: front?, back: back?, ..head }));
    let licence = read_licence(reader, &document);
    let issued = head.as_ref().map(|head| (head.version.as_str(), head.date.as_str()));
    let releases = read_releases(reader, &document, issued);
    let head = head.and_then(|head| Some(SetSpec { licence: licence?, releases: releases?, ..head }));
    let gated = document.has(GATE.name);
    let known = document.table(reader, &VIEWER).and_then(|t| read_viewer(reader, t, gated));
    let glasses = document.table(reader, &colours::GLASSES).and_then(|t| read_glasses(reader, t));
    let inks = match document.optional_table(reader, &colours::INKS) {
        Some(table) => read_inks(reader, table),
        None => Some(InksRead::default()),
    };
    let gate = read_gate(reader, &document);
    let plan = read_plan(reader, &document);
    let publish = read_publish(reader, &document);
    let series = read_series(reader, &document);
    let mut data = Vec::new();
    let language = head.as_ref().map(|head| head.language);
    let translations = read_translations(reader, &document, language);
    let shared = Shared { glasses, inks, answers, language };
    let editions = read_editions(reader, &document, &shared, &mut data);
    let readers = ReadersRead::tables(reader, &document, (known, gated), file, &mut data);
    let publish = publish.filter(|publish| editions.as_ref().is_none_or(|all| check_edition(reader, publish, all)));
    let head = head.zip(publish).map(|(head, publish)| SetSpec { publish, ..head });
    let set = assemble(head, known, (gate, plan), editions).filter(|_| series.is_some());
    SetRead { set, exercises, series: series.unwrap_or_default(), gated, readers, translations, data }
}

fn assemble(
    head: Option<SetSpec>,
    known: Option<Known>,
    (gate, plan): (Option<Option<String>>, Option<Option<Placed<Practice>>>),
    editions: Option<Vec<Edition>>,
) -> Option<SetSpec> {
    let known = known?;
    Some(SetSpec { viewer: known.viewer()?, known, gate: gate?, plan: plan?, editions: editions?, ..head? })
}

/// The series of the set. `None`: a problem has been pushed.
fn read_series(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<BTreeMap<String, SeriesPart>> {
    let (mut names, mut series, mut fine) = (BTreeMap::new(), BTreeMap::new(), true);
    for mut table in document.tables(reader, &SERIES) {
        table.check_keys(reader);
        let id: Option<Placed<String>> = table.get(reader, "id");
        let id = id.and_then(|id| super::unique(reader, "series", id, &mut names));
        let (from, to): (Option<String>, Option<String>) = (table.get(reader, "from"), table.get(reader, "to"));
        let curve = table.one_of(reader, "curve", &["even", "geometric", "difficulty"]);
        match (id, from, to, curve) {
            (Some(id), Some(from), Some(to), Some(curve)) => {
                let part = SeriesPart {
                    from: quoted(&from),
                    to: quoted(&to),
                    curve: curve.to_owned(),
                    first: 0,
                    of: 0,
                    place: table.place(),
                };
                series.insert(id, part);
            }
            _ => fine = false,
        }
    }
    fine.then_some(series)
}

/// A text as a TOML value.
fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}

/// Who decided what is for a professional to decide. `None`: a problem has been pushed.
fn read_gate(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Option<String>> {
    if !document.has(GATE.name) {
        return Some(None);
    }
    let mut table = document.optional_table(reader, &GATE)?;
    table.check_keys(reader);
    table.get(reader, "set_by").map(Some)
}

/// The file of readers, if the set names one that can be a path.
fn read_readers_file(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Placed<String>> {
    let Placed { value, place } = table.maybe::<Placed<Named>>(reader, "readers")??;
    match value {
        Named::File(path) => Some(Placed { value: path, place }),
        Named::Word(_) => None,
    }
}

/// The list of exercises, entry by entry, so that one bad path does not hide the other files.
fn read_exercises(reader: &mut Reader<'_>, table: &Table<'_>) -> Vec<Placed<String>> {
    let lenient: Option<Vec<Lenient>> = table.get(reader, "exercises");
    lenient.unwrap_or_default().into_iter().filter_map(|entry| entry.0).collect()
}

/// An entry that may be unreadable, its problem pushed.
struct Lenient(Option<Placed<String>>);

impl super::read::Read for Lenient {
    fn read(reader: &mut Reader<'_>, slot: super::read::Slot<'_>, raw: super::read::Raw<'_>) -> Option<Self> {
        Some(Lenient(Placed::read(reader, slot, raw)))
    }
}

/// `[set]`, with the viewer and editions still to be filled in.
fn read_head(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<SetSpec> {
    let id = table.get(reader, "id");
    let title = table.get(reader, "title");
    let summary = table.maybe(reader, "summary");
    let author = table.maybe(reader, "author");
    let contact = table.maybe(reader, "contact");
    let version = table.get(reader, "version");
    let date = table.get(reader, "date");
    let language = table.one_of(reader, "language", &Language::ALL);
    let free_order = table.one_of(reader, "order", &[false, true]);
    Some(SetSpec {
        id: id?,
        title: title?,
        summary: summary?,
        author: author?,
        version: version?,
        date: date?,
        language: language?,
        free_order: free_order?,
        viewer: Viewer::new(Mm(0.0), Mm(0.0), (Mm(0.0), Mm(0.0))),
        known: Known::default(),
        reader: None,
        gate: None,
        plan: None,
        licence: None,
        releases: Vec::new(),
        contact: contact?,
        front: Vec::new(),
        back: Vec::new(),
        publish: Publish::default(),
        editions: Vec::new(),
    })
}

/// What the set says of itself, in one language.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SetWords {
    /// Title of the book.
    pub title: String,
    /// One sentence for the cover.
    pub summary: Option<String>,
    /// What a reader may do with the book.
    pub licence: Option<Licence>,
    /// The versions, with what changed.
    pub releases: Vec<Release>,
    /// The texts of the translation, those of the exercises too, each where it stands.
    pub texts: Vec<(String, Place)>,
}

/// Reads the words of `set.toml` alone, in the language of the reader. `None`: a problem has been pushed.
pub fn read_words(reader: &mut Reader<'_>) -> Option<SetWords> {
    reader.family = TABLES.to_vec();
    let document = Document::parse(reader);
    let table = document.table(reader, &SET)?;
    let (title, summary) = (table.get(reader, "title"), table.maybe(reader, "summary"));
    let (licence, releases) = (read_licence(reader, &document), read_releases(reader, &document, None));
    Some(SetWords { title: title?, summary: summary?, licence: licence?, releases: releases?, texts: Vec::new() })
}

impl SetSpec {
    /// The set in another language.
    pub fn told(&self, language: Language, words: &SetWords) -> Self {
        let SetWords { title, summary, licence, releases, .. } = words.clone();
        Self { language, title, summary, licence, releases, ..self.clone() }
    }
}
