//! Which parts a book has and in what order, and what its author says of it besides the exercises: `front` and `back` of
//! `[set]`, `[licence]` and `[[release]]`.
//!
//! Cautions and checks cannot be left out, and nothing that is looked at through the glasses comes before the cautions.

use crate::diagnostics::{Diagnostic, codes};

use super::document::Document;
use super::field::{Field, TableForm, TableSpec, Takes};
use super::plan::PLAN;
use super::read::{Placed, Word};
use super::reader::Reader;
use super::table::Table;

/// A part before the exercises.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Front {
    /// Title, edition and a picture.
    Cover,
    /// Every page after it, with its number.
    Contents,
    /// Who the book is for, and who it is not for.
    Audience,
    /// Whom to ask, when to get help, when to stop.
    Cautions,
    /// How a page works, and when to move on.
    HowToUse,
    /// What the reader needs besides the book.
    Needs,
    /// Which way round the glasses are worn.
    GlassesCheck,
    /// How much of the other eye's marks shows.
    GhostCheck,
    /// Whether the page has its true size.
    ScaleCheck,
    /// Every exercise page by strand, to tick.
    Map,
}

impl Front {
    /// All of them, in the order of [`Front::WORDS`].
    pub const ALL: [Front; 10] = [
        Front::Cover,
        Front::Contents,
        Front::Audience,
        Front::Cautions,
        Front::HowToUse,
        Front::Needs,
        Front::GlassesCheck,
        Front::GhostCheck,
        Front::ScaleCheck,
        Front::Map,
    ];

    /// As specs write them.
    pub const WORDS: [&str; 10] = [
        "cover",
        "contents",
        "audience",
        "cautions",
        "how-to-use",
        "needs",
        "glasses-check",
        "ghost-check",
        "scale-check",
        "map",
    ];

    /// Those of a book that names none.
    pub const USUAL: [Front; 7] = [
        Front::Cover,
        Front::Contents,
        Front::Cautions,
        Front::HowToUse,
        Front::GlassesCheck,
        Front::GhostCheck,
        Front::ScaleCheck,
    ];

    /// Those that no book goes without.
    pub const NEEDED: [Front; 4] = [Front::Cautions, Front::GlassesCheck, Front::GhostCheck, Front::ScaleCheck];

    /// As specs write it.
    pub const fn word(self) -> &'static str {
        Self::WORDS[self as usize]
    }

    /// Whether it holds anything that is looked at through the glasses; the cover, which is first, is left out.
    const fn is_looked_at(self) -> bool {
        matches!(self, Front::HowToUse | Front::GlassesCheck | Front::GhostCheck | Front::ScaleCheck)
    }
}

/// A part after the exercises; the answer key, which has a key of its own, comes last.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Back {
    /// The words of every exercise once more, in black only.
    Words,
    /// Which pages come when, and when to go on or back.
    Plan,
    /// Where the reader writes, day by day.
    Log,
    /// What the words of the trade mean.
    Glossary,
    /// Every number of every page.
    Professional,
    /// What the book rests on.
    Sources,
    /// What a reader may do with it, and whose work is in it.
    Licence,
    /// What changed from version to version.
    Versions,
}

impl Back {
    /// All of them, in the order of [`Back::WORDS`].
    pub const ALL: [Back; 8] = [
        Back::Words,
        Back::Plan,
        Back::Log,
        Back::Glossary,
        Back::Professional,
        Back::Sources,
        Back::Licence,
        Back::Versions,
    ];

    /// As specs write them.
    pub const WORDS: [&str; 8] = ["words", "plan", "log", "glossary", "professional", "sources", "licence", "versions"];

    /// Those of a book with a plan that names none.
    pub const PLANNED: [Back; 3] = [Back::Plan, Back::Log, Back::Professional];

    /// As specs write it.
    pub const fn word(self) -> &'static str {
        Self::WORDS[self as usize]
    }

    /// The table that it prints, as it is written and what stands in it.
    const fn table(self) -> Option<(&'static TableSpec, &'static str)> {
        match self {
            Back::Plan => Some((&PLAN, "`weeks`, `days` and `minutes`")),
            Back::Licence => Some((&LICENCE, "`name`")),
            Back::Versions => Some((&RELEASE, "`version`, `date` and `changes`")),
            _ => None,
        }
    }
}

/// `front` of `[set]`.
pub(super) const FRONT: Field = Field::default(
    "front",
    Takes::List { of: &Takes::Choice(&Front::WORDS), min: 1, max: 10 },
    r#"["cover", "contents", "cautions", "how-to-use", "glasses-check", "ghost-check", "scale-check"]"#,
    "Parts before the exercises, in the order of the list: `cover`, always first; `contents`, the pages after it; `audience`, who the \
     book is for and not for; `cautions`; `how-to-use`; `needs`, what the reader needs; the checks `glasses-check`, \
     `ghost-check` and `scale-check`; `map`, every exercise page by strand, to tick. The cautions and the three checks are \
     not optional, and nothing that is looked at through the glasses comes before the cautions.",
);

/// `back` of `[set]`.
pub(super) const BACK: Field = Field::optional(
    "back",
    Takes::List { of: &Takes::Choice(&Back::WORDS), min: 0, max: 8 },
    "Parts after the exercises, in the order of the list: `words`, the words of every exercise once more, in black only; `plan`, which pages come when, only with a `[plan]`; `log`, to write into \
     for 30 days; `glossary`, what the words mean; `professional`, every number of every page for an eye-care \
     professional; `sources`, what the book rests on; `licence`, only with a `[licence]`; `versions`, only with a \
     `[[release]]`. Left out: `plan`, `log` and `professional` in a set with a `[plan]`, else none.",
);

/// `contact` of `[set]`.
pub(super) const CONTACT: Field = Field::optional(
    "contact",
    Takes::Text(120),
    "Where to write about errors in the book, for the pages `licence` and `versions`. Printed as it is.",
);

/// `[licence]`.
pub const LICENCE: TableSpec = TableSpec {
    name: "licence",
    form: TableForm::Single,
    groups: &[&[
        Field::required("name", Takes::Text(80), "Its name, such as `CC BY-NC 4.0`."),
        Field::optional("text", Takes::Text(600), "What a reader may do with the book, in one paragraph.").said(),
        Field::optional(
            "credits",
            Takes::List { of: &Takes::Text(200), min: 1, max: 40 },
            "Whose work is in the book, a line each.",
        )
        .said(),
    ]],
    doc: "What a reader may do with the book, and whose work is in it. Left out: the book says nothing of it.",
};

/// `[[release]]`.
pub const RELEASE: TableSpec = TableSpec {
    name: "release",
    form: TableForm::Many,
    groups: &[&[
        Field::required("version", Takes::Version, "The version that came out."),
        Field::required("date", Takes::Date, "Its date."),
        Field::required(
            "changes",
            Takes::List { of: &Takes::Text(300), min: 1, max: 40 },
            "What changed, and which errors were put right, a sentence each.",
        )
        .said(),
    ]],
    doc: "A version of the set and what changed in it, the newest first: that is the `version` and the `date` of `[set]`.",
};

/// What a reader may do with the book.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Licence {
    /// Its name.
    pub name: String,
    /// What it allows, one paragraph.
    pub text: Option<String>,
    /// Whose work is in the book.
    pub credits: Vec<String>,
}

/// A version of the set.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Release {
    /// Its number.
    pub version: String,
    /// Its date, `YYYY-MM-DD`.
    pub date: String,
    /// What changed, at least one.
    pub changes: Vec<String>,
}

/// Reads `front` of `[set]`. `None`: a problem has been pushed.
pub(super) fn read_front(reader: &mut Reader<'_>, set: &Table<'_>) -> Option<Vec<Front>> {
    let words = set.get(reader, "front")?;
    let parts = once(reader, "front", words, &Front::ALL)?;
    let problems = [missing(reader, set, &parts), before_the_cautions(&parts), cover_not_first(&parts)].concat();
    let is_fine = problems.is_empty();
    for problem in problems {
        reader.push(problem);
    }
    is_fine.then(|| parts.into_iter().map(|part| part.value).collect())
}

/// The parts that no book goes without.
fn missing(reader: &Reader<'_>, set: &Table<'_>, parts: &[Placed<Front>]) -> Vec<Diagnostic> {
    let lacks = |part: &Front| !parts.iter().any(|listed| listed.value == *part);
    let lacking = Front::NEEDED.into_iter().filter(lacks).map(|part| {
        let message = format!("`front` leaves out `{}`, which is not optional", part.word());
        Diagnostic::error(codes::LIST, set.place_of(reader, "front"), message)
            .with_label(format!("`{}` is missing", part.word()))
            .with_help(format!("add `\"{}\"`: cautions and checks keep readers safe", part.word()))
    });
    lacking.collect()
}

/// What is looked at before the cautions are read.
fn before_the_cautions(parts: &[Placed<Front>]) -> Vec<Diagnostic> {
    let Some(cautions) = parts.iter().position(|part| part.value == Front::Cautions) else { return Vec::new() };
    let early = parts[..cautions].iter().filter(|part| part.value.is_looked_at()).map(|part| {
        let message = format!("`front` puts `{}` before `cautions`", part.value.word());
        Diagnostic::error(codes::CONFLICT, part.place, message)
            .with_label("before the cautions")
            .with_help("put `cautions` before everything that is looked at through the glasses")
    });
    early.collect()
}

fn cover_not_first(parts: &[Placed<Front>]) -> Vec<Diagnostic> {
    let late = parts.iter().skip(1).filter(|part| part.value == Front::Cover).map(|part| {
        Diagnostic::error(codes::CONFLICT, part.place, "`front` does not begin with `cover`")
            .with_label("not first")
            .with_help("put `cover` first, or leave it out")
    });
    late.collect()
}

/// Reads `back` of `[set]`. `None`: a problem has been pushed.
pub(super) fn read_back(reader: &mut Reader<'_>, set: &Table<'_>, document: &Document<'_>) -> Option<Vec<Back>> {
    let Some(words): Option<Vec<Placed<Word>>> = set.maybe(reader, "back")? else {
        return Some(if document.has(PLAN.name) { Back::PLANNED.to_vec() } else { Vec::new() });
    };
    let parts = once(reader, "back", words, &Back::ALL)?;
    let mut is_fine = true;
    for part in &parts {
        let Some((table, keys)) = part.value.table().filter(|(table, _)| !document.has(table.name)) else { continue };
        let (word, title) = (part.value.word(), table.title());
        let message = format!("`back` lists `{word}`, but the set has no {title}");
        let problem = Diagnostic::error(codes::MISSING_TABLE, part.place, message)
            .with_label(format!("no {} to print", table.name))
            .with_help(format!("add {title} with {keys}, or leave `{word}` out"));
        reader.push(problem);
        is_fine = false;
    }
    is_fine.then(|| parts.into_iter().map(|part| part.value).collect())
}

/// The parts that words stand for, each at most once. `None`: a problem has been pushed.
fn once<T: Copy + PartialEq>(
    reader: &mut Reader<'_>,
    key: &str,
    words: Vec<Placed<Word>>,
    all: &[T],
) -> Option<Vec<Placed<T>>> {
    let mut parts: Vec<Placed<T>> = Vec::new();
    let mut is_fine = true;
    for Placed { value: Word(number), place } in words {
        let value = *all.get(number)?;
        if parts.iter().any(|part| part.value == value) {
            let message = format!("`{key}` lists {} twice", reader.written(place));
            let problem = Diagnostic::error(codes::DUPLICATE, place, message)
                .with_label("listed before")
                .with_help("leave one of them out");
            reader.push(problem);
            is_fine = false;
        }
        parts.push(Placed { value, place });
    }
    is_fine.then_some(parts)
}

/// Reads `[licence]`. `None`: a problem has been pushed; `Some(None)`: there is none.
pub(super) fn read_licence(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Option<Licence>> {
    if !document.has(LICENCE.name) {
        return Some(None);
    }
    let mut table = document.optional_table(reader, &LICENCE)?;
    table.check_keys(reader);
    let (name, text) = (table.get(reader, "name"), table.maybe(reader, "text"));
    let credits: Option<Option<Vec<String>>> = table.maybe(reader, "credits");
    Some(Some(Licence { name: name?, text: text?, credits: credits?.unwrap_or_default() }))
}

/// Reads every `[[release]]`; the newest must be what `[set]` says. `None`: a problem has been pushed.
pub(super) fn read_releases(
    reader: &mut Reader<'_>,
    document: &Document<'_>,
    set: Option<(&str, &str)>,
) -> Option<Vec<Release>> {
    let mut releases: Vec<Release> = Vec::new();
    let mut is_fine = true;
    for mut table in document.tables(reader, &RELEASE) {
        table.check_keys(reader);
        let (version, date) = (table.get(reader, "version"), table.get(reader, "date"));
        let changes = table.get(reader, "changes");
        let (Some(version), Some(date), Some(changes)) = (version, date, changes) else {
            is_fine = false;
            continue;
        };
        let release = Release { version, date, changes };
        is_fine &= match releases.last() {
            _ if !is_fine => true,
            None => set.is_none_or(|set| is_of_set(reader, &table, &release, set)),
            Some(later) => is_older(reader, &table, &release, later),
        };
        releases.push(release);
    }
    is_fine.then_some(releases)
}

/// Whether the newest release is the set as it stands; else a problem is pushed for what differs.
fn is_of_set(reader: &mut Reader<'_>, table: &Table<'_>, newest: &Release, (version, date): (&str, &str)) -> bool {
    let differ = [("version", &newest.version, version), ("date", &newest.date, date)];
    let mut is_same = true;
    for (key, found, of_set) in differ {
        if found != of_set {
            let message = format!("the newest `[[release]]` has the {key} `{found}`, `[set]` has `{of_set}`");
            let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, key), message)
                .with_label(format!("not `{of_set}`"))
                .with_help("put a `[[release]]` with the version and the date of `[set]` before the others");
            reader.push(problem);
            is_same = false;
        }
    }
    is_same
}

/// Whether a release has a lower version than the one before it in the file, and no later date.
fn is_older(reader: &mut Reader<'_>, table: &Table<'_>, release: &Release, later: &Release) -> bool {
    let problem = if numbers(&later.version) <= numbers(&release.version) {
        let message = format!("version `{}` stands below version `{}`", release.version, later.version);
        Diagnostic::error(codes::CONFLICT, table.place_of(reader, "version"), message)
            .with_label("not lower than the one above it")
            .with_help("list every version once, the newest first")
    } else if later.date < release.date {
        let message =
            format!("version `{}` is of `{}`, after version `{}`", release.version, release.date, later.version);
        Diagnostic::error(codes::CONFLICT, table.place_of(reader, "date"), message)
            .with_label(format!("later than `{}`", later.date))
            .with_help("list the versions with their own dates, the newest first")
    } else {
        return true;
    };
    reader.push(problem);
    false
}

/// The numbers of a version, to compare.
fn numbers(version: &str) -> Vec<u32> {
    version.split('.').filter_map(|part| part.parse().ok()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::field::Need;

    #[test]
    fn a_book_that_names_no_parts_has_the_usual_ones() {
        let words = Front::USUAL.map(|part| format!("\"{}\"", part.word())).join(", ");
        assert_eq!(FRONT.need, Need::Default(Box::leak(format!("[{words}]").into_boxed_str())));
    }

    #[test]
    fn every_part_has_its_own_word() {
        for (index, part) in Front::ALL.into_iter().enumerate() {
            assert_eq!(part as usize, index);
        }
        for (index, part) in Back::ALL.into_iter().enumerate() {
            assert_eq!(part as usize, index);
        }
    }

    #[test]
    fn versions_are_compared_by_their_numbers() {
        assert!(numbers("1.9.0") < numbers("1.10.0"));
    }
}
