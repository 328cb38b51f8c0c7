//! The author's words in another language: `[[translation]]` names a file of them, and a reader of the author's files takes
//! them in place of what is written.
//!
//! What is written decides which words there are; a translation adds none and leaves none out.

use std::collections::{BTreeMap, BTreeSet};

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::diagnostics::{Diagnostic, FileId, Place, codes};
use crate::language::Language;

use super::document::Document;
use super::field::{Field, TableForm, TableSpec, Takes};
use super::read::{Placed, Raw, Read, Slot};
use super::reader::Reader;
use super::suggest::nearest;
use super::table::all;
use super::text::shown;

/// `[[translation]]`.
pub const TRANSLATION: TableSpec = TableSpec {
    name: "translation",
    form: TableForm::Many,
    groups: &[&[
        Field::required("language", Takes::Choice(&Language::TAGS), "The language; not that of the set."),
        Field::required(
            "file",
            Takes::File,
            "The file with the author's words in that language, such as `words/de.toml`: see below.",
        ),
    ]],
    doc: "The words of the author in another language. An edition in that language has every text that an exercise writes \
          from there, and one that is missing is an error. The words that come with the program need no translation.",
};

/// What a file of translations holds, for the spec reference.
pub const FILES: &str = "\
A file of translations holds `[set]` with the `title` and the `summary` of the set; `[licence]` with its `text` and its
`credits`; `[release]` with the changes of each version; and a table for each exercise by its id, with the keys of its `[exercise]` that are words: `title`, `goal`, `setup`, `do`, `see`, and what its kind draws as
letters (`words`, `lines`). Labels and the `text` of other tables stand as they are written, with their translation; the
`lines` of each `[[column]]` stand by its number, from 1.
What the author left out stays left out.

```toml
[set]
title = \"Hafenlichter\"

[release]
\"1.0.0\" = [\"Erste Ausgabe.\"]

[exercise.mooring-rings]
title = \"Festmacherringe\"
goal = \"Sehen Sie vom nahen Ring zum fernen und zurück.\"
labels = { near = \"nah\", far = \"fern\" }

[exercise.boat-name]
title = \"Das Boot kommt heim\"
texts = { PETREL = \"PETREL\" }

[exercise.quay-steps]
title = \"Die Kaitreppe hinab\"
columns = { 1 = [\"Das letzte Boot\", \"kommt am Abend.\"], 2 = [\"Eine Lampe\", \"brennt am Kai.\"] }
```
";

/// The longest translation of a label, in characters: like the longest label.
const LABEL: Takes = Takes::Text(40);

/// A `[[translation]]`.
#[derive(Debug, Clone, PartialEq)]
pub struct Translation {
    /// Into which language.
    pub language: Language,
    /// The path of its file.
    pub file: Placed<String>,
    /// Its header.
    pub place: Place,
}

/// Reads the `[[translation]]`s; `own` is the language of the set.
pub(super) fn read_translations(
    reader: &mut Reader<'_>,
    document: &Document<'_>,
    own: Option<Language>,
) -> Vec<Translation> {
    let mut known: BTreeMap<&'static str, Place> = BTreeMap::new();
    let mut read = Vec::new();
    for mut table in document.tables(reader, &TRANSLATION) {
        table.check_keys(reader);
        let language = table.one_of(reader, "language", &Language::ALL);
        let file: Option<Placed<String>> = table.get(reader, "file");
        let (Some(language), Some(file)) = (language, file) else { continue };
        let place = table.place_of(reader, "language");
        let problem = if own == Some(language) {
            let message = format!("the set is written in `{}`", language.tag());
            Diagnostic::error(codes::CONFLICT, place, message)
                .with_label("the language of the set")
                .with_help("leave this `[[translation]]` out, and write the words in the exercises")
        } else if let Some(first) = known.insert(language.tag(), place) {
            let message = format!("`{}` is translated by the file on line {}", language.tag(), reader.line(first));
            Diagnostic::error(codes::DUPLICATE, place, message)
                .with_label("again")
                .with_help("put all words of a language into one file")
        } else {
            read.push(Translation { language, file, place: table.place() });
            continue;
        };
        reader.push(problem);
    }
    read
}

/// The words of one exercise, or of the set, in the language that is read.
#[derive(Debug, Clone, Copy)]
pub struct Words<'d> {
    /// The file they stand in.
    pub file: FileId,
    /// Their table, where there is one; of the set: all of the file.
    pub table: Option<&'d DeTable<'d>>,
    /// Whether they are those of the set.
    pub of_set: bool,
}

impl<'d> Words<'d> {
    /// A value by the names of the tables and the key that it stands under.
    fn find(&self, path: &[&str]) -> Option<&'d Spanned<DeValue<'d>>> {
        let (last, tables) = path.split_last()?;
        let table = tables.iter().try_fold(self.table?, |table, name| table.get(*name)?.get_ref().as_table());
        table?.get(*last)
    }
}

/// The author's words while a file is read.
#[derive(Debug, Default)]
pub(super) struct Speech<'d> {
    words: Option<Words<'d>>,
    said: Vec<Said>,
    texts: Vec<Placed<String>>,
}

/// Words of the author that a file holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Said {
    /// The key that a translation has them by: `goal`, or `labels.near`.
    pub key: String,
    /// As written.
    pub written: String,
    /// Whether a translation has them.
    pub translated: bool,
}

impl<'d> Reader<'d> {
    /// The same in another language: what a translation has stands in for what is written.
    pub fn in_words(mut self, words: Words<'d>) -> Self {
        self.speech.words = Some(words);
        self
    }

    /// The author's words read so far, each key once.
    pub fn said(&self) -> &[Said] {
        &self.speech.said
    }

    /// The same as texts, as they will be printed, each where it stands.
    pub fn texts(&self) -> &[Placed<String>] {
        &self.speech.texts
    }
}

/// Reads a value that holds words of the author, in the language that is asked for; `name` tells its table from the others
/// of its form.
pub(super) fn read_said<T: Read>(
    reader: &mut Reader<'_>,
    (spec, name): (&TableSpec, &str),
    slot: Slot<'_>,
    raw: Raw<'_>,
) -> Option<T> {
    let words = reader.speech.words;
    let of_set = words.is_some_and(|words| words.of_set);
    let plural = |word: &str| format!("{word}s");
    let (keys, tables) = (plural(slot.key), plural(spec.name));
    let path = match (spec.form, raw.value.get_ref().as_str()) {
        (TableForm::Single, _) if of_set => vec![spec.name, slot.key],
        (TableForm::Single, _) => vec![slot.key],
        (_, Some(word)) => vec![keys.as_str(), word],
        (_, None) if of_set => vec![spec.name, name],
        (_, None) => vec![tables.as_str(), name],
    };
    let found = words.and_then(|words| words.find(&path));
    note(reader, path.iter().map(|part| in_key(part)).collect::<Vec<_>>().join("."), raw, found.is_some());
    let (Some(words), Some(found)) = (words, found) else {
        let file = reader.file();
        keep_texts(reader, file, raw);
        return T::read(reader, slot, raw);
    };
    let found = Raw::new(found);
    keep_texts(reader, words.file, found);
    let takes = if matches!(slot.takes, Takes::Id) { &LABEL } else { slot.takes };
    reader.read_in(words.file, Slot { takes, ..slot }, found)
}

/// A key of TOML as it is written: bare where it can be.
fn in_key(word: &str) -> String {
    let bare = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
    if !word.is_empty() && word.chars().all(bare) { word.to_owned() } else { format!("{word:?}") }
}

fn note(reader: &mut Reader<'_>, key: String, raw: Raw<'_>, translated: bool) {
    if reader.speech.said.iter().all(|said| said.key != key) {
        let written = reader.written(raw.place(reader)).to_owned();
        reader.speech.said.push(Said { key, written, translated });
    }
}

/// Keeps the texts of a value, for the check that the typeface has all of their letters.
fn keep_texts(reader: &mut Reader<'_>, file: FileId, raw: Raw<'_>) {
    let value = raw.value.get_ref();
    let single = value.as_str().is_some().then_some(raw);
    let list = value.as_array().into_iter().flat_map(|list| list.iter().map(Raw::new));
    for one in single.into_iter().chain(list) {
        if let Some(text) = one.value.get_ref().as_str() {
            let place = Place { file, ..one.place(reader) };
            reader.speech.texts.push(Placed { value: text.to_owned(), place });
        }
    }
}

/// A file of translations.
#[derive(Debug)]
pub struct WordsFile<'t> {
    document: Document<'t>,
    file: FileId,
}

/// Its tables.
const IN_WORDS: &[&TableSpec] = &[
    &TableSpec { name: "set", form: TableForm::Single, groups: &[], doc: "" },
    &TableSpec { name: "licence", form: TableForm::Single, groups: &[], doc: "" },
    &TableSpec { name: "release", form: TableForm::Single, groups: &[], doc: "" },
    &TableSpec { name: "exercise", form: TableForm::Single, groups: &[], doc: "" },
];

impl<'t> WordsFile<'t> {
    /// Parses a file; `ids` are those of the exercises of the set. Problems of syntax and of names go to the reader.
    pub fn parse(reader: &mut Reader<'t>, ids: &[&str]) -> Self {
        reader.family = IN_WORDS.to_vec();
        let document = Document::parse(reader);
        document.check_tables(reader, |_| None);
        let words = Self { document, file: reader.file() };
        for spec in IN_WORDS {
            words.document.tables(reader, spec);
        }
        for (id, value) in words.table("exercise").into_iter().flatten() {
            let (name, place): (&str, _) = (id.get_ref(), reader.place(id.span()));
            if !ids.contains(&name) {
                reader.push(unknown_exercise(name, place, ids));
            } else if !value.get_ref().is_table() {
                let problem = Diagnostic::error(codes::TYPE, place, format!("`exercise.{name}` is a table of words"))
                    .with_label("not a table")
                    .with_help(format!("write `[exercise.{name}]` and its words below it"));
                reader.push(problem);
            }
        }
        words
    }

    fn table(&self, name: &str) -> Option<&DeTable<'t>> {
        self.document.root().get(name)?.get_ref().as_table()
    }

    /// The words of the set.
    pub fn of_set(&self) -> Words<'_> {
        Words { file: self.file, table: Some(self.document.root()), of_set: true }
    }

    /// The words of an exercise.
    pub fn of_exercise(&self, id: &str) -> Words<'_> {
        let table = self.table("exercise").and_then(|table| table.get(id)?.get_ref().as_table());
        Words { file: self.file, table, of_set: false }
    }
}

fn unknown_exercise(name: &str, place: Place, ids: &[&str]) -> Diagnostic {
    let message = format!("the set has no exercise `{}`", shown(name));
    let problem = Diagnostic::error(codes::UNKNOWN_KEY, place, message).with_label("unknown exercise");
    match nearest(name, ids.iter().copied()) {
        Some(near) => problem.with_help(format!("did you mean `{near}`?")).with_replacement(near),
        None => problem.with_help("write the id of an exercise, which is the stem of its file, or leave the table out"),
    }
}

/// The problems of words that nothing asks for; `whose` is "the set" or "exercise `lamp`", and `said` is what it holds.
pub fn stray(reader: &Reader<'_>, words: Words<'_>, whose: &str, said: &[Said]) -> Vec<Diagnostic> {
    let known: BTreeSet<&str> = said.iter().map(|said| said.key.as_str()).collect();
    let mut problems = Vec::new();
    for (key, value) in words.table.into_iter().flatten() {
        let name: &str = key.get_ref();
        let is_inner = if words.of_set { name != "exercise" } else { PLURALS.contains(&name) };
        let inner = value.get_ref().as_table().filter(|_| is_inner);
        if words.of_set && inner.is_none() {
            continue;
        }
        let of = |key: String, span| (key, Place { file: words.file, ..reader.place(span) });
        let keys: Vec<_> = match inner {
            Some(inner) => {
                inner.keys().map(|word| of(format!("{name}.{}", in_key(word.get_ref())), word.span())).collect()
            }
            None => vec![of(name.to_owned(), key.span())],
        };
        for (key, place) in keys.into_iter().filter(|(key, _)| !known.contains(key.as_str())) {
            let message = format!("{whose} has no `{}` to translate", shown(&key));
            let problem = Diagnostic::error(codes::UNKNOWN_KEY, place, message).with_label("nothing to translate");
            let last = |key: &str| key.split_once('.').map_or(key, |(_, inner)| inner).to_owned();
            problems.push(match nearest(&key, known.iter().copied()) {
                Some(near) => problem.with_help(format!("did you mean `{near}`?")).with_replacement(last(near)),
                None => problem.with_help(match known.iter().copied().collect::<Vec<_>>().as_slice() {
                    [] => "leave it out".to_owned(),
                    keys => format!("its words are {}", all(keys)),
                }),
            });
        }
    }
    problems
}

/// The tables in the words of an exercise: of labels and texts as they are written, and of lists of lines by the number of
/// the table that holds them.
pub const PLURALS: &[&str] = &["labels", "texts", "columns"];
