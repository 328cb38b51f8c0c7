//! Kinds of exercise: one file each, with its parameters and its words; spec → scene.
//!
//! A kind knows depth, never offsets or colours.

pub mod balance;
pub mod hold;
pub mod jump;
pub mod nest;
pub mod ramp;
pub mod reference;
pub mod target;
pub mod trail;
pub mod words;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::scene::Scene;
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::read::{Placed, Word};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use balance::Balance;
use words::{AuthorWords, Words};

/// One exercise of the set, read and checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Exercise {
    /// The stem of its file name, unique in the set.
    pub id: String,
    /// Its title.
    pub title: String,
    /// The author's own words.
    pub words: AuthorWords,
    /// What the stronger eye keeps, where a professional set it.
    pub balance: Option<Placed<Balance>>,
    /// What it draws.
    pub body: Body,
    /// Its `[exercise]` header.
    pub place: Place,
}

/// The parameters of an exercise, by kind.
#[derive(Debug, Clone, PartialEq)]
pub enum Body {
    /// See [`hold`].
    Hold(hold::Hold),
    /// See [`jump`].
    Jump(jump::Jump),
    /// See [`trail`].
    Trail(trail::Trail),
    /// See [`nest`].
    Nest(nest::Nest),
}

impl Exercise {
    /// How many levels, and so pages, it has: as many as its ramps, or one.
    pub fn levels(&self) -> u32 {
        let levels = match &self.body {
            Body::Hold(hold) => hold.levels(),
            Body::Jump(jump) => jump.levels(),
            Body::Trail(trail) => trail.levels(),
            Body::Nest(nest) => nest.levels(),
        };
        levels.unwrap_or(1)
    }
}

/// A kind of exercise.
#[derive(Debug)]
pub struct Kind {
    /// Its word in `kind = "…"`.
    pub id: &'static str,
    /// What it is, for the spec reference.
    pub doc: &'static str,
    /// Its tables; the first is its `[exercise]`.
    pub tables: &'static [&'static TableSpec],
    /// Reads its parameters. `None`: a problem has been pushed.
    pub read: fn(&mut Reader<'_>, &Document<'_>, &Table<'_>) -> Option<Body>,
    /// A whole exercise file, for the spec reference.
    pub example: &'static str,
}

/// Every kind.
pub const KINDS: &[Kind] = &[hold::KIND, jump::KIND, trail::KIND, nest::KIND];

/// Keys of `[exercise]` that every kind has.
pub const COMMON: &[Field] = &[
    Field::required("kind", Takes::Choice(&["hold", "jump", "trail", "nest"]), "The kind of exercise."),
    Field::required("title", Takes::Text(60), "Title of its pages."),
    Field::optional(
        "goal",
        Takes::Text(200),
        "One sentence that says what it is for; in place of the kind's own words.",
    ),
    Field::optional(
        "setup",
        Takes::Text(300),
        "What to prepare beyond distance and glasses; in place of the kind's own words.",
    ),
    Field::optional(
        "do",
        Takes::List { of: &Takes::Text(200), min: 1, max: 5 },
        "The steps; in place of the kind's own words.",
    ),
    Field::optional("see", Takes::Text(300), "What both eyes together should see; in place of the kind's own words."),
    Field::optional(
        "balance",
        Takes::Table(&balance::BALANCE),
        "What the stronger eye keeps. Only under `[gate]` in `set.toml`: whether one eye gets less is for an eye-care \
         professional to decide. Left out: both eyes get the same.",
    ),
];

/// `[exercise]` as far as it is the same for every kind.
const HEAD: TableSpec = TableSpec {
    name: "exercise",
    form: TableForm::Single,
    groups: &[COMMON],
    doc: "What kind of exercise it is, and its words.",
};

/// Reads an exercise file; `id` is the stem of its name. `None`: the problems have been pushed.
pub fn read_exercise(reader: &mut Reader<'_>, id: &str) -> Option<Exercise> {
    let document = Document::parse(reader);
    reader.family = vec![&HEAD];
    let head = document.table(reader, &HEAD)?;
    let Word(number) = head.get(reader, "kind")?;
    let kind = KINDS.get(number)?;
    reader.family = kind.tables.to_vec();
    reader.key_hint = key_of_other_kinds;
    document.check_tables(reader, |name| other_kinds(kind, name));
    let mut table = head.read_as(kind.tables.first()?);
    table.check_keys(reader);
    let title = table.get(reader, "title");
    let words = read_words(reader, &table);
    let balance = balance::read(reader, &table);
    let body = (kind.read)(reader, &document, &table);
    let even = check_ramps(reader);
    let (id, place) = (id.to_owned(), table.place());
    let exercise = Exercise { id, title: title?, words: words?, balance: balance?, body: body?, place };
    even.then_some(exercise)
}

fn read_words(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<AuthorWords> {
    let goal = table.maybe(reader, "goal");
    let setup = table.maybe(reader, "setup");
    let steps = table.maybe(reader, "do");
    let see = table.maybe(reader, "see");
    Some(AuthorWords { goal: goal?, setup: setup?, steps: steps?, see: see? })
}

/// Where a table that this kind does not have belongs, if anywhere.
fn other_kinds(kind: &Kind, table: &str) -> Option<String> {
    let owners: Vec<_> = KINDS.iter().filter(|k| k.tables.iter().any(|t| t.name == table)).collect();
    let title = owners.first()?.tables.iter().find(|t| t.name == table)?.title();
    let names: Vec<_> = owners.iter().map(|k| format!("`{}`", k.id)).collect();
    Some(format!("a `{}` has no {title}; kinds with one: {}", kind.id, names.join(", ")))
}

/// Which kinds have a key in their table of this name, if any.
fn key_of_other_kinds(table: &TableSpec, key: &str) -> Option<String> {
    let has = |kind: &&Kind| kind.tables.iter().any(|t| t.name == table.name && t.field(key).is_some());
    let names: Vec<_> = KINDS.iter().filter(has).map(|k| format!("`{}`", k.id)).collect();
    (!names.is_empty()).then(|| format!("`{key}` is a key of another kind: {}", names.join(", ")))
}

/// All ramps of an exercise have the same number of levels; pushes each that differs from the first.
fn check_ramps(reader: &mut Reader<'_>) -> bool {
    let ramps = reader.ramps().to_vec();
    let Some((first, rest)) = ramps.split_first() else { return true };
    let wrong: Vec<_> = rest.iter().filter(|ramp| ramp.levels != first.levels).collect();
    for ramp in &wrong {
        let message = format!(
            "this ramp of `{}` has {} levels, the ramp of `{}` on line {} has {}",
            ramp.key,
            ramp.levels,
            first.key,
            reader.line(first.place),
            first.levels
        );
        let problem = Diagnostic::error(codes::RAMP, ramp.place, message)
            .with_label(format!("{} levels", ramp.levels))
            .with_help("give all ramps of an exercise the same number of levels");
        reader.push(problem);
    }
    wrong.is_empty()
}

/// One page of an exercise: one level.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// Unique in the book: the exercise id, with the level where there is more than one.
    pub id: String,
    /// The kind's id.
    pub kind: &'static str,
    /// The exercise title.
    pub title: String,
    /// From 1.
    pub level: u32,
    /// How many levels the exercise has.
    pub levels: u32,
    /// What stands where.
    pub scene: Scene,
    /// What is said.
    pub words: Words,
    /// What the stronger eye keeps, where a professional set it.
    pub balance: Option<Balance>,
}

impl Body {
    /// The id of its kind.
    pub fn kind(&self) -> &'static str {
        match self {
            Body::Hold(_) => "hold",
            Body::Jump(_) => "jump",
            Body::Trail(_) => "trail",
            Body::Nest(_) => "nest",
        }
    }

    fn scene(&self, level: u32) -> Scene {
        match self {
            Body::Hold(hold) => hold.scene(level),
            Body::Jump(jump) => jump.scene(level),
            Body::Trail(trail) => trail.scene(level),
            Body::Nest(nest) => nest.scene(level),
        }
    }

    fn words(&self, level: u32) -> Words {
        match self {
            Body::Hold(hold) => hold.words(level),
            Body::Jump(jump) => jump.words(level),
            Body::Trail(trail) => trail.words(level),
            Body::Nest(nest) => nest.words(level),
        }
    }
}

/// Every page of the exercises, one a level, in the order of the book.
pub fn pages(exercises: &[Exercise]) -> Vec<Page> {
    let of_one = |exercise: &Exercise| {
        let levels = exercise.levels();
        (1..=levels).map(|level| exercise.page(level, levels)).collect::<Vec<_>>()
    };
    exercises.iter().flat_map(of_one).collect()
}

impl Exercise {
    /// The id of its page of a level: its own, with the level where there is more than one.
    pub fn page_id(&self, level: u32) -> String {
        if self.levels() == 1 { self.id.clone() } else { format!("{}-{level}", self.id) }
    }

    fn page(&self, level: u32, levels: u32) -> Page {
        Page {
            id: self.page_id(level),
            kind: self.body.kind(),
            title: self.title.clone(),
            level,
            levels,
            scene: self.body.scene(level),
            words: self.body.words(level).with(&self.words),
            balance: self.balance.as_ref().map(|balance| balance.value),
        }
    }
}
