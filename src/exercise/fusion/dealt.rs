//! `dealt`: rows of words whose letters are dealt to the left eye, the right eye or both by lot. Only both eyes together
//! can read them; the key says what each eye had.

use std::fmt::Write as _;

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::outline;
use crate::scene::{Depth, Eye, Eyes, Feature, Role, Scene, Shape};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::lines;
use crate::exercise::parts::{self, Part, Point};
use crate::exercise::quiz::{Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung};

/// The parameters of a `dealt` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Dealt {
    /// Where the words come from.
    pub source: Source,
    /// The height of a capital letter.
    pub size: Ramp<Mm>,
    /// How deep the rows stand.
    pub depth: Ramp<Depth>,
    /// How many variants of each level.
    pub variants: u32,
    /// Where it is written.
    pub place: Place,
}

/// Where the words of a [`Dealt`] come from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Source {
    /// The author; one a row.
    Listed(Vec<String>),
    /// Words without a meaning, made by lot.
    Made {
        /// How many rows.
        rows: u32,
        /// How many letters each has.
        letters: u32,
    },
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "dealt",
    gated: false,
    doc: "A brief check with rows of words whose letters are dealt to the left eye, the right eye or both by lot. Only \
          both eyes together can read them; the answer key says what each eye had.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

/// The fewest letters that can be dealt: one to each eye and one to both.
const FEWEST: u32 = 3;

const EXERCISE: TableSpec = TableSpec {
    name: "exercise",
    form: TableForm::Single,
    groups: &[
        COMMON,
        &[
            Field::optional(
                "words",
                Takes::List { of: &Takes::Text(14), min: 1, max: 8 },
                "The words, one a row, each of 3 letters or more. Left out: words without a meaning are made by lot.",
            ),
            Field::default(
                "rows",
                Takes::Count { min: 1, max: 8 },
                "6",
                "How many words are made by lot; not beside `words`.",
            ),
            Field::default(
                "letters",
                Takes::Count { min: FEWEST, max: 9 },
                "5",
                "How many letters each word that is made by lot has; not beside `words`.",
            ),
            lines::SIZE,
            lines::LARGE,
            parts::DEPTH,
            Field::default(
                "variants",
                Takes::Count { min: 1, max: 9 },
                "1",
                "How many pages each level has: the same task with other draws.",
            ),
        ],
    ],
    doc: "What kind of exercise it is, and its words.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "dealt"
title = "Names on the boats"
words = ["harbour", "lantern", "rudder", "anchor", "compass"]
size = { values = ["9 mm", "6.6 mm", "4.3 mm"] }
"#;

/// Extra space between letters, in heights of a capital: letters of two eyes must not touch.
const TRACKING: f64 = 0.22;
/// From row to row, in heights of a capital (design choice: neighbouring rows do not crowd a missing letter).
const ROW: f64 = 1.9;
/// The left edge of the words and the middle of the row numbers, mm.
const LEFT: f64 = -52.0;
const NUMBERS: f64 = -66.0;
/// The height of a row number, mm.
const NUMBER: f64 = 3.6;
/// Letters of words without a meaning: none is easily taken for another (design choice).
const CONSONANTS: &[u8] = b"dhlmnrvz";
const VOWELS: &[u8] = b"aeiou";

impl Draws for Dealt {
    fn levels(&self) -> Option<u32> {
        self.size.levels().or(self.depth.levels())
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let rows = self.rows(rung);
        let questions = (1..).zip(&rows).map(|(number, row)| question(number, row)).collect();
        Drawn { scene: self.scene(&rows, rung.level), words: words(), quiz: Some(Quiz { questions, pass: None }) }
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let source = read_source(reader, exercise);
    let size = lines::read_size(reader, exercise);
    let depth = parts::ramp_or(reader, exercise, "depth", Depth::Page);
    let variants = exercise.get(reader, "variants");
    let place = exercise.place();
    Some(Body::Dealt(Dealt { source: source?, size: size?, depth: depth?, variants: variants?, place }))
}

fn read_source(reader: &mut Reader<'_>, exercise: &Table<'_>) -> Option<Source> {
    let (rows, letters) = (exercise.get(reader, "rows"), exercise.get(reader, "letters"));
    let Some(words) = exercise.maybe::<Vec<Placed<String>>>(reader, "words")? else {
        return Some(Source::Made { rows: rows?, letters: letters? });
    };
    if let Some(other) = ["rows", "letters"].into_iter().find(|key| exercise.has(key)) {
        let message = format!("`{other}` is for words made by lot: it does not go with `words`");
        let problem = Diagnostic::error(codes::CONFLICT, exercise.place_of(reader, other), message)
            .with_label("beside `words`")
            .with_help(format!("leave out `{other}`, or leave out `words`"));
        reader.push(problem);
        return None;
    }
    let mut fine = lines::can_be_set(reader, &words);
    for word in words.iter().filter(|word| outline::letters(&word.value).len() < FEWEST as usize) {
        let count = outline::letters(&word.value).len();
        let message = format!("`{}` has {count} letters, below the least, {FEWEST}", word.value);
        let problem = Diagnostic::error(codes::TEXT, word.place, message)
            .with_label("too short to be dealt")
            .with_help("each eye needs a letter, and both need one: write a longer word");
        reader.push(problem);
        fine = false;
    }
    fine.then(|| Source::Listed(words.into_iter().map(|word| word.value).collect()))
}

/// A word with the eyes that see each of its letters, blanks left out.
struct Row {
    word: String,
    deal: Vec<Eyes>,
}

impl Dealt {
    fn rows(&self, rung: &Rung<'_>) -> Vec<Row> {
        let words = match &self.source {
            Source::Listed(words) => words.clone(),
            Source::Made { rows, letters } => {
                let mut dice = Dice::new(&format!("{}/words", rung.key));
                (0..*rows).map(|_| made(&mut dice, *letters)).collect()
            }
        };
        let mut dice = Dice::new(&format!("{}/deal", rung.key));
        let dealt = |word: String| Row { deal: deal(&mut dice, outline::letters(&word).len()), word };
        words.into_iter().map(dealt).collect()
    }

    fn scene(&self, rows: &[Row], level: u32) -> Scene {
        let (size, depth) = (self.size.at(level).0, self.depth.at(level));
        let pitch = size * ROW;
        let first = size / 2.0 - pitch * (rows.len() as f64 - 1.0) / 2.0;
        let mut features = Vec::new();
        for (row, index) in rows.iter().zip(0..) {
            let baseline = first + pitch * f64::from(index);
            let number = Shape::Text((index + 1).to_string());
            let part = Part::target(format!("row-{}", index + 1), Eyes::Both, &depth, self.place).role(Role::Number);
            features.push(part.shape(number, (NUMBERS, baseline - size / 2.0), NUMBER, NUMBER));
            features.extend(self.letters(row, index + 1, (LEFT, baseline), size, &depth));
        }
        Scene { features }
    }

    fn letters(&self, row: &Row, number: u32, (left, baseline): Point, size: f64, depth: &Depth) -> Vec<Feature> {
        let letters = outline::letters(&row.word);
        let start = letters.first().map_or(0.0, |letter| letter.area.x0);
        let feature = |((index, letter), &eyes): ((usize, &outline::Letter), &Eyes)| {
            let middle = letter.area.center();
            let at = (left + (middle.x - start + TRACKING * index as f64) * size, baseline + middle.y * size);
            Part::target(letter_id(number, index), eyes, depth, self.place).shape(
                Shape::Text(letter.character.to_string()),
                at,
                size,
                size,
            )
        };
        letters.iter().enumerate().zip(&row.deal).map(feature).collect()
    }
}

fn letter_id(row: u32, index: usize) -> String {
    format!("row-{row}-letter-{}", index + 1)
}

/// A word without a meaning: consonants and vowels by turns.
fn made(dice: &mut Dice, letters: u32) -> String {
    let pick = |index: u32, dice: &mut Dice| {
        let from = if index.is_multiple_of(2) { CONSONANTS } else { VOWELS };
        let count = u32::try_from(from.len()).unwrap_or(u32::MAX);
        char::from(from[dice.below(count) as usize])
    };
    (0..letters).map(|index| pick(index, dice)).collect()
}

/// Deals so many letters: as many to the left eye as to the right, about a third each, the others to both.
fn deal(dice: &mut Dice, letters: usize) -> Vec<Eyes> {
    let each = ((letters + 1) / 3).max(1);
    let of = |eyes, count: usize| std::iter::repeat_n(eyes, count);
    let both = letters.saturating_sub(2 * each);
    let mut deal: Vec<Eyes> = of(Eyes::Left, each).chain(of(Eyes::Right, each)).chain(of(Eyes::Both, both)).collect();
    dice.shuffle(&mut deal);
    deal
}

/// What a row asks, and what each eye alone had of it: "lantern: left l·nt··n, right ·an·er·".
fn question(number: u32, row: &Row) -> Question {
    let mut answer = format!("{}:", row.word);
    for (eye, name) in [(Eye::Left, " left "), (Eye::Right, ", right ")] {
        answer.push_str(name);
        let mut deal = row.deal.iter();
        for character in row.word.chars() {
            let seen = character == ' ' || deal.next().is_some_and(|eyes| eyes.include(eye));
            let _ = write!(answer, "{}", if seen { character } else { '·' });
        }
    }
    let features = (0..row.deal.len()).map(|index| letter_id(number, index)).collect();
    Question { id: number.to_string(), choices: Vec::new(), answer, features }
}

fn words() -> Words {
    Words {
        goal: "Read words whose letters are shared out between your eyes.".to_owned(),
        setup: String::new(),
        steps: vec![
            "Look at the first letter of a row until it is clear.".to_owned(),
            "Read the row aloud, letter by letter, or write it down.".to_owned(),
            format!("Go on to the last row, then look far away. {}", words::BRIEF),
            "Look up the rows in the answer key: it says which eye had which letter.".to_owned(),
        ],
        see: "Rows of whole words, all letters side by side, none missing.".to_owned(),
        one_part: words::rows(&[
            ("some letters", "The key says which eye had those that you missed. Blink, look far away, read again."),
            ("letters that come and go", "The eyes take turns. Rest, then go one page easier."),
        ]),
    }
}
