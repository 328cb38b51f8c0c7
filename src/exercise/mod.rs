//! Kinds of exercise: one file each, with its parameters and its words; spec → scene.
//!
//! A kind knows depth, never offsets or colours.

pub mod artwork;
pub mod balance;
pub mod choice;
pub mod dots;
pub mod fusion;
pub mod gated;
mod ladder;
pub mod lines;
pub mod pace;
pub mod parts;
pub mod quiz;
pub mod ramp;
pub mod readiness;
pub mod readings;
pub mod reference;
pub mod solids;
pub mod steps;
pub mod target;
pub mod words;

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{Effort, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::read::{Placed, Word};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Seconds;

use balance::{Balance, BalanceRamp};
use quiz::Quiz;
use readings::Readings;
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
    pub balance: Option<Placed<BalanceRamp>>,
    /// Gives other draws of what is drawn by lot.
    pub seed: u32,
    /// What it draws.
    pub body: Body,
    /// Its `[exercise]` header.
    pub place: Place,
}

/// What every kind can do with its parameters.
pub trait Draws {
    /// How many levels its ramps have; `None` without a ramp.
    fn levels(&self) -> Option<u32>;

    /// How many seeded variants of each level there are: the same task with other answers.
    fn variants(&self) -> u32 {
        1
    }

    /// Whether anything on its pages is drawn by lot, so that the seed belongs in the footer.
    fn is_seeded(&self) -> bool {
        false
    }

    /// The numbers that depend on the viewer, where its pages show some.
    fn readings(&self) -> Option<Readings> {
        None
    }

    /// How long the words of a level ask for, rests within the page included, where it has keys for times or repeats.
    fn time(&self, _level: u32) -> Option<Seconds> {
        None
    }

    /// The art and the words of one page.
    fn draw(&self, rung: &Rung<'_>) -> Drawn;
}

/// Which page of an exercise is drawn.
#[derive(Debug, Clone, Copy)]
pub struct Rung<'a> {
    /// The level, from 1.
    pub level: u32,
    /// The variant, from 1.
    pub variant: u32,
    /// Names the page for [`crate::chance::Dice`]: set, page and seed. Pages of the same name get the same draws.
    pub key: &'a str,
    /// The language of its words.
    pub tongue: &'a Tongue,
}

/// What a kind makes of one page.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn {
    /// What stands where.
    pub scene: Scene,
    /// What is said.
    pub words: Words,
    /// What is asked, with the answers.
    pub quiz: Option<Quiz>,
    /// What the art does not say of the effort.
    pub effort: Effort,
}

impl Drawn {
    /// A page that asks nothing and of whose effort the art says all.
    pub fn plain(scene: Scene, words: Words) -> Self {
        Self { scene, words, quiz: None, effort: Effort::default() }
    }
}

/// Makes [`Body`], [`IDS`] and [`KINDS`] from one line a kind.
macro_rules! kinds {
    ($($id:literal: $room:ident::$module:ident::$name:ident),* $(,)?) => {
        /// The parameters of an exercise, by kind.
        #[derive(Debug, Clone, PartialEq)]
        pub enum Body {
            $(#[doc = concat!("See [`", stringify!($module), "`](", stringify!($room), "::", stringify!($module), ").")]
            $name($room::$module::$name),)*
        }

        /// The words of `kind = "…"`, in the order of the book of kinds.
        pub const IDS: &[&str] = &[$($id),*];

        /// Every kind, in the same order.
        pub const KINDS: &[Kind] = &[$($room::$module::KIND),*];

        /// The family of each kind, in the same order: the folder it stands in.
        const ROOMS: &[&str] = &[$(stringify!($room)),*];

        impl Body {
            /// The id of its kind.
            pub fn kind(&self) -> &'static str {
                match self { $(Body::$name(_) => $id,)* }
            }

            fn inner(&self) -> &dyn Draws {
                match self { $(Body::$name(inner) => inner,)* }
            }
        }

        $(impl From<$room::$module::$name> for Body {
            fn from(inner: $room::$module::$name) -> Self {
                Body::$name(inner)
            }
        })*
    };
}

// From the first checks to the last steps: the order of the spec reference and of `depthpress kinds`.
kinds! {
    "who": readiness::who::Who,
    "inset": readiness::inset::Inset,
    "nonius": readiness::nonius::Nonius,
    "halves": readiness::halves::Halves,
    "dealt": fusion::dealt::Dealt,
    "patch": fusion::patch::Patch,
    "words": fusion::words::Lettering,
    "columns": fusion::columns::Columns,
    "hold": fusion::hold::Hold,
    "hoop": steps::hoop::Hoop,
    "tiles": steps::tiles::Tiles,
    "posts": steps::posts::Posts,
    "solids": steps::solids::Solids,
    "nest": steps::nest::Nest,
    "rungs": steps::rungs::Rungs,
    "jump": steps::jump::Jump,
    "pairs": steps::pairs::Pairs,
    "tour": steps::tour::Tour,
    "trail": steps::trail::Trail,
    "walk": steps::walk::Walk,
    "point": steps::point::Point,
    "odd": choice::odd::Odd,
    "side": choice::side::Side,
    "order": choice::order::Order,
    "match": choice::matching::Match,
    "hidden": dots::hidden::Hidden,
    "gap": dots::gap::Gap,
    "planes": dots::planes::Planes,
    "board": dots::board::Board,
    "hills": dots::hills::Hills,
    "waves": dots::waves::Waves,
    "relief": dots::relief::Relief,
    "layers": artwork::layers::Layers,
    "scene": artwork::scene::Stage,
    "contrast": gated::contrast::Contrast,
    "shared": gated::shared::Shared,
}

impl Exercise {
    /// How many levels it has: as many as its ramps, or one.
    pub fn levels(&self) -> u32 {
        let of_balance = || self.balance.as_ref().and_then(|balance| balance.value.share.levels());
        self.body.inner().levels().or_else(of_balance).unwrap_or(1)
    }

    /// How many variants each level has.
    pub fn variants(&self) -> u32 {
        self.body.inner().variants()
    }

    /// Its kind.
    pub fn kind(&self) -> Option<&'static Kind> {
        KINDS.iter().find(|kind| kind.id == self.body.kind())
    }
}

/// A kind of exercise.
#[derive(Debug)]
pub struct Kind {
    /// Its word in `kind = "…"`.
    pub id: &'static str,
    /// Whether it needs a `[gate]`: a kind that only a professional may set.
    pub gated: bool,
    /// What its pages work on.
    pub strand: Strand,
    /// What it is, for the spec reference.
    pub doc: &'static str,
    /// Its tables; the first is its `[exercise]`.
    pub tables: &'static [&'static TableSpec],
    /// Reads its parameters. `None`: a problem has been pushed.
    pub read: fn(&mut Reader<'_>, &Document<'_>, &Table<'_>) -> Option<Body>,
    /// A whole exercise file, for the spec reference.
    pub example: &'static str,
}

/// A family of kinds.
#[derive(Debug)]
pub struct Family {
    /// Its name: that of the folder in which its kinds stand.
    pub id: &'static str,
    /// What its kinds have in common, one sentence.
    pub doc: &'static str,
}

/// The families, from the first checks to what a professional sets.
pub const FAMILIES: &[Family] = &[
    Family { id: "readiness", doc: "Whether everything is ready: both eyes at work, glasses the right way round." },
    Family { id: "fusion", doc: "One thing is held single." },
    Family { id: "steps", doc: "The eyes change between depths." },
    Family { id: "choice", doc: "A question is answered by depth alone." },
    Family { id: "dots", doc: "A form appears in dots, and only to both eyes together." },
    Family { id: "artwork", doc: "Pictures that authors bring along get depth." },
    Family { id: "gated", doc: "What an eye-care professional sets, under `[gate]`." },
];

impl Kind {
    /// The id of its family.
    pub fn family(&self) -> &'static str {
        let room = KINDS.iter().zip(ROOMS).find(|(kind, _)| kind.id == self.id);
        room.map_or("", |(_, room)| room)
    }

    /// The keys of its `[exercise]` that not every kind has.
    pub fn own_keys(&self) -> impl Iterator<Item = &'static Field> {
        let exercise = self.tables.first().into_iter().flat_map(|table| table.fields());
        exercise.filter(|field| COMMON.iter().all(|common| common.key != field.key))
    }
}

/// Keys of `[exercise]` that every kind has.
pub const COMMON: &[Field] = &[
    Field::required("kind", Takes::Choice(IDS), "The kind of exercise."),
    Field::required("title", Takes::Text(60), "Title of its pages.").said(),
    Field::optional(
        "goal",
        Takes::Text(200),
        "One sentence that says what it is for; in place of the kind's own words.",
    )
    .said(),
    Field::optional(
        "setup",
        Takes::Text(300),
        "What to prepare beyond distance and glasses; in place of the kind's own words.",
    )
    .said(),
    Field::optional(
        "do",
        Takes::List { of: &Takes::Text(200), min: 1, max: 5 },
        "The steps; in place of the kind's own words.",
    )
    .said(),
    Field::optional("see", Takes::Text(300), "What both eyes together should see; in place of the kind's own words.")
        .said(),
    Field::optional(
        "in_turn",
        Takes::List { of: &Takes::Text(20), min: 2, max: 6 },
        "Keys whose ramps change one after the other, in this order, so that one thing gets harder at a time: the page \
         after the last level of one ramp has the second level of the next. Left out: all change together.",
    ),
    Field::default(
        "seed",
        Takes::Count { min: 1, max: 999_999 },
        "1",
        "Another number gives other draws, where anything on the pages is drawn by lot.",
    ),
    Field::optional(
        "balance",
        Takes::Table(&balance::BALANCE),
        "What the stronger eye keeps. Only under `[gate]` in `set.toml`: whether one eye gets less is for an eye-care \
         professional to decide. Left out: both eyes get the same.",
    ),
];

/// The `[exercise]` table of a kind, with these keys.
pub(crate) const fn exercise_table(groups: &'static [&'static [Field]]) -> TableSpec {
    TableSpec { name: "exercise", form: TableForm::Single, groups, doc: "What kind of exercise it is, and its words." }
}

/// `[exercise]` as far as it is the same for every kind.
const HEAD: TableSpec = exercise_table(&[COMMON]);

/// The series that an exercise file takes part in, each with its levels of it. Problems of the file are left for
/// [`read_exercise`] to tell.
pub fn parts_of_series(reader: &mut Reader<'_>) -> Vec<(String, u32)> {
    let document = Document::parse(reader);
    let kind = document.table(reader, &HEAD).and_then(|head| {
        let Word(number) = head.get(reader, "kind")?;
        Some((head, KINDS.get(number)?))
    });
    let Some((head, kind)) = kind else { return Vec::new() };
    let Some(spec) = kind.tables.first() else { return Vec::new() };
    let mut parts: Vec<(String, u32)> = Vec::new();
    for ramp in ladder::look_ahead(reader, &document, kind, &head.read_as(spec)) {
        let Some(series) = ramp.series else { continue };
        // Several ramps of one file may follow one series side by side.
        if parts.iter().all(|(known, _)| *known != series) {
            parts.push((series, ramp.levels));
        }
    }
    parts
}

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
    let in_turn = ladder::plan(reader, &document, kind, &table);
    let words = read_words(reader, &table);
    let balance = balance::read(reader, &table);
    let seed = table.get(reader, "seed");
    let body = (kind.read)(reader, &document, &table);
    let even = in_turn && ladder::check(reader);
    let (id, place) = (id.to_owned(), table.place());
    let exercise = Exercise { id, title: title?, words: words?, balance: balance?, seed: seed?, body: body?, place };
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
    /// Its letter among the variants of its level; `None` where there is but one.
    pub variant: Option<char>,
    /// The seed, where anything on the page is drawn by lot.
    pub seed: Option<u32>,
    /// What is asked, with the answers.
    pub quiz: Option<Quiz>,
    /// The numbers that depend on the viewer, where it shows some.
    pub readings: Option<Readings>,
    /// How long it takes, s: an estimate, for the plan of the book.
    pub time: u32,
    /// Whether its kind needs a `[gate]`.
    pub gated: bool,
    /// What its kind works on.
    pub strand: Strand,
    /// What the art does not say of its effort.
    pub effort: Effort,
    /// What stands where.
    pub scene: Scene,
    /// What is said.
    pub words: Words,
    /// What the stronger eye keeps, where a professional set it.
    pub balance: Option<Balance>,
    /// The `[exercise]` that it comes from.
    pub place: Place,
}

impl Page {
    /// Its title with level and variant, where there is more than one: "Two buoys, level 2 · B".
    pub fn full_title(&self) -> String {
        let level = if self.levels == 1 { String::new() } else { format!(", level {}", self.level) };
        format!("{}{level}{}", self.title, self.variant_words())
    }

    /// " · B", or nothing where there is but one variant.
    pub fn variant_words(&self) -> String {
        self.variant.map_or(String::new(), |letter| format!(" · {}", letter.to_ascii_uppercase()))
    }
}

/// Every page of the exercises, one a level and variant, in the order of the book, in the words of a language. `set` is
/// the id of the set: it goes into every draw.
pub fn pages(exercises: &[Exercise], set: &str, tongue: &Tongue) -> Vec<Page> {
    exercises.iter().flat_map(|exercise| exercise.rungs().map(|(l, v)| exercise.page((l, v), set, tongue))).collect()
}

impl Exercise {
    /// The levels and variants of its pages, from 1, in the order of the book.
    fn rungs(&self) -> impl Iterator<Item = (u32, u32)> + use<> {
        let variants = self.variants();
        (1..=self.levels()).flat_map(move |level| (1..=variants).map(move |variant| (level, variant)))
    }

    /// The ids of its pages in the order of the book.
    pub fn page_ids(&self) -> impl Iterator<Item = String> {
        self.rungs().map(|(level, variant)| self.page_id(level, variant))
    }

    /// The id of a page: its own, with the level and the letter of the variant where there is more than one.
    fn page_id(&self, level: u32, variant: u32) -> String {
        let level = if self.levels() == 1 { String::new() } else { format!("-{level}") };
        let variant = self.letter(variant).map_or(String::new(), |letter| format!("-{letter}"));
        format!("{}{level}{variant}", self.id)
    }

    /// The letter of a variant, where there is more than one.
    fn letter(&self, variant: u32) -> Option<char> {
        let letter = char::from_u32(u32::from('a') + variant - 1)?;
        (1 < self.variants()).then_some(letter)
    }

    fn page(&self, (level, variant): (u32, u32), set: &str, tongue: &Tongue) -> Page {
        let id = self.page_id(level, variant);
        let body = self.body.inner();
        let key = format!("{set}/{id}/{}", self.seed);
        let Drawn { scene, words, quiz, effort } = body.draw(&Rung { level, variant, key: &key, tongue });
        let family = self.kind().map_or("", Kind::family);
        Page {
            id,
            time: pace::page(body.time(level), quiz.as_ref(), family),
            kind: self.body.kind(),
            title: self.title.clone(),
            level,
            levels: self.levels(),
            variant: self.letter(variant),
            seed: body.is_seeded().then_some(self.seed),
            quiz,
            readings: body.readings(),
            gated: self.kind().is_some_and(|kind| kind.gated),
            strand: self.kind().map_or(Strand::Check, |kind| kind.strand),
            effort,
            scene,
            words: words.with(&self.words),
            balance: self.balance.as_ref().map(|balance| balance.value.at(level)),
            place: self.place,
        }
    }
}
