//! The readers of a set: `[[reader]]` tables and the rows of a file, and the set made over for one of them.
//!
//! A reader is an id and what differs from `[viewer]`. Nothing here asks who they are, and nothing of it is needed.

mod rows;

use std::collections::BTreeMap;

use crate::colour::{FilterModel, Glasses};
use crate::diagnostics::{Diagnostic, Place, codes};

use super::colours::{self, GlassesRead, read_glasses};
use super::data::{DataKind, DataRef};
use super::document::Document;
use super::field::{Field, TableForm, TableSpec, Takes};
use super::read::Placed;
use super::reader::Reader;
use super::table::Table;
use super::viewer::{EYES, Known, PLACE, read_known};
use super::{Edition, SetSpec};
use crate::language::Language;

/// The largest file of readers that is read, in bytes (8 MiB). Design choice: several times what the most readers need.
pub const MOST_BYTES: u64 = 8 << 20;

/// The most readers of a set. Design choice.
pub const MOST_READERS: usize = 10_000;

/// The folder of the readers, below the folder of the set: no edition has this name.
pub const FOLDER: &str = "readers";

/// `[[reader]]`.
pub const READER: TableSpec = TableSpec {
    name: "reader",
    form: TableForm::Many,
    groups: &[NAME, &left_out::<{ PLACE.len() }>(PLACE), &left_out::<{ EYES.len() }>(EYES), OWN],
    doc: "Someone the set is made for, by an id that you choose: no name, no age, no date of birth is needed, and none \
          belongs here. What a reader leaves out is as in `[viewer]`; an `ipd` without an `ipd_range` is that one \
          distance, and reserves go together: a reader with a reserve or `norms` of their own takes none from \
          `[viewer]`. May be left out; at most 10 000, and more may stand in the file that `readers` of `[set]` names.",
};

const NAME: &[Field] =
    &[Field::required("id", Takes::Id, "Names the reader's folder, and stands on the pages; unique in the set.")];

const OWN: &[Field] = &[
    Field::optional(
        "glasses",
        Takes::Table(&colours::EDITION_GLASSES),
        "The reader's glasses, in every edition. The two colours of an edition keep what is known of its filters, \
         either way round. Inks change sides with the filters; the art is never mirrored. Left out: those of each \
         edition.",
    ),
    Field::optional(
        "language",
        Takes::Choice(&Language::TAGS),
        "The language of their books, in place of that of the set; an edition in another language keeps it. It needs the \
         author's words in it: see `[[translation]]`. Left out: that of the set.",
    ),
];

/// Keys that are required elsewhere, here free to be left out.
const fn left_out<const N: usize>(fields: &[Field]) -> [Field; N] {
    let mut out = [fields[0]; N];
    let mut i = 0;
    while i < N {
        out[i] = fields[i].left_out();
        i += 1;
    }
    out
}

/// A reader, read and checked.
#[derive(Debug, Clone, PartialEq)]
pub struct ReaderSpec {
    /// Unique in the set.
    pub id: String,
    /// What is known of them; what they left out is left out here too.
    pub known: Known,
    /// Their glasses, where they have their own.
    pub glasses: Option<Glasses>,
    /// Their language, where it is another one.
    pub language: Option<Language>,
    /// Where they are written.
    pub place: Place,
}

/// The readers of a set while its files are read.
#[derive(Debug, Clone, Default)]
pub struct ReadersRead {
    /// Tables first, then rows.
    pub list: Vec<ReaderSpec>,
    /// The file that holds more of them.
    pub file: Option<Placed<String>>,
    ids: BTreeMap<String, Place>,
    known: Option<Known>,
    gated: bool,
}

impl ReadersRead {
    /// Reads the `[[reader]]` tables of `set.toml`; `known` is its viewer.
    pub(super) fn tables(
        reader: &mut Reader<'_>,
        document: &Document<'_>,
        (known, gated): (Option<Known>, bool),
        file: Option<Placed<String>>,
        data: &mut Vec<DataRef>,
    ) -> Self {
        let mut read = Self { known, gated, file, ..Self::default() };
        for table in document.tables(reader, &READER) {
            read.one(reader, table, data);
        }
        read
    }

    /// Reads the rows of the file.
    pub fn rows(&mut self, reader: &mut Reader<'_>) {
        rows::read(reader, self);
    }

    /// Reads one reader and keeps it, or pushes its problems.
    fn one(&mut self, reader: &mut Reader<'_>, mut table: Table<'_>, data: &mut Vec<DataRef>) {
        table.check_keys(reader);
        let id: Option<Placed<String>> = table.get(reader, "id");
        let id = id.and_then(|id| super::unique(reader, "reader id", id, &mut self.ids));
        let known = read_known(reader, &table, self.known.as_ref(), self.gated);
        let glasses = match table.inline_table(reader, "glasses") {
            Some(Some(own)) => read_glasses(reader, own).map(Some),
            other => other.map(|_| None),
        };
        let language = match table.has("language") {
            true => table.one_of(reader, "language", &Language::ALL).map(Some),
            false => Some(None),
        };
        self.check_count(reader, table.place());
        let (Some(id), Some(known), Some(glasses), Some(language)) = (id, known, glasses, language) else { return };
        let glasses = glasses.map(|GlassesRead { glasses, table }| {
            let file = |(path, words)| DataRef::of_reader(path, DataKind::Filters(words), self.list.len());
            data.extend(table.map(file));
            glasses
        });
        self.list.push(ReaderSpec { id, known, glasses, language, place: table.place() });
    }

    /// Pushes the one reader that is too many.
    fn check_count(&self, reader: &mut Reader<'_>, place: Place) {
        if self.list.len() != MOST_READERS {
            return;
        }
        let problem = Diagnostic::error(codes::LIST, place, format!("a set has at most {MOST_READERS} readers"))
            .with_label("one too many")
            .with_help("split the readers over several sets");
        reader.push(problem);
    }
}

impl SetSpec {
    /// The set made over for a reader.
    pub fn made_for(&self, reader: &ReaderSpec) -> Self {
        let known = reader.known.or(self.known);
        let language = reader.language.unwrap_or(self.language);
        let worn = |edition: &Edition| {
            let glasses = reader.glasses.as_ref().map(|own| worn(own, &edition.glasses));
            let own = edition.language != self.language;
            Edition {
                glasses: glasses.unwrap_or_else(|| edition.glasses.clone()),
                language: if own { edition.language } else { language },
                ..edition.clone()
            }
        };
        Self {
            // What a reader leaves out is known of the set, so there is always a viewer.
            viewer: known.viewer().unwrap_or(self.viewer),
            known,
            language,
            reader: Some(reader.id.clone()),
            editions: self.editions.iter().map(worn).collect(),
            ..self.clone()
        }
    }
}

/// The glasses as a reader wears them. Of the same two colours it is the same pair, either way round, unless the reader
/// has measured their own.
fn worn(own: &Glasses, edition: &Glasses) -> Glasses {
    let plain = |filter: &FilterModel| matches!(filter, FilterModel::Ideal(_));
    let colours = |glasses: &Glasses| (glasses.left.colour(), glasses.right.colour());
    let (left, right) = colours(edition);
    if !plain(&own.left) || !plain(&own.right) {
        own.clone()
    } else if colours(own) == (left, right) {
        edition.clone()
    } else if colours(own) == (right, left) {
        Glasses { left: edition.right.clone(), right: edition.left.clone() }
    } else {
        own.clone()
    }
}
