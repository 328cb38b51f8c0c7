//! `dealt`: rows of words whose letters are dealt to the left eye, the right eye or both by lot. Only both eyes together
//! can read them; the key says what each eye had.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::outline;
use crate::scene::{Depth, Eye, Eyes, Feature, Role, Scene, Shape, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::lines;
use crate::exercise::parts::{self, Part, Point};
use crate::exercise::quiz::{Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `dealt` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Dealt {
    /// Where the words come from.
    pub source: WordSource,
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
pub enum WordSource {
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
    strand: Strand::Check,
    doc: "A brief check with rows of words whose letters are dealt to the left eye, the right eye or both by lot. Only \
          both eyes together can read them; the answer key says what each eye had.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

/// The fewest letters that can be dealt: one to each eye and one to both.
const FEWEST: u32 = 3;

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::optional(
            "words",
            Takes::List { of: &Takes::Text(14), min: 1, max: 8 },
            "The words, one a row, each of 3 letters or more. Left out: words without a meaning are made by lot.",
        )
        .said(),
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
]);

const EXAMPLE: &str = r#"[exercise]
kind = "dealt"
title = "Names on the boats"
words = ["harbour", "lantern", "rudder", "anchor", "compass"]
size = { values = ["9 mm", "6.6 mm", "4.3 mm"] }
"#;

/// Extra space between letters, in heights of a capital: letters of two eyes must not touch.
const TRACKING: f64 = 0.22;
/// From row to row, in heights of a capital, and at least, mm (design choice: neighbouring rows do not crowd a missing
/// letter, and small letters are found again after a look at the key).
const ROW: (f64, f64) = (1.9, 9.0);
/// From the middle of the row numbers to the left edge of the words, mm.
const NUMBERS: f64 = 14.0;
/// The height of a row number, mm; never higher than the letters.
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
        let questions = (1..).zip(&rows).map(|(number, row)| question(number, row, rung.tongue)).collect();
        Drawn {
            quiz: Some(Quiz { questions, pass: None }),
            ..Drawn::plain(self.scene(&rows, rung.level), words(rung.tongue))
        }
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

fn read_source(reader: &mut Reader<'_>, exercise: &Table<'_>) -> Option<WordSource> {
    let (rows, letters) = (exercise.get(reader, "rows"), exercise.get(reader, "letters"));
    let Some(words) = exercise.maybe::<Vec<Placed<String>>>(reader, "words")? else {
        return Some(WordSource::Made { rows: rows?, letters: letters? });
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
    fine.then(|| WordSource::Listed(words.into_iter().map(|word| word.value).collect()))
}

/// A word with the eyes that see each of its letters, blanks left out.
struct Row {
    word: String,
    deal: Vec<Eyes>,
}

impl Row {
    /// Its width in heights of a capital.
    fn width(&self) -> f64 {
        outline::line_box(&self.word).width() + TRACKING * (self.deal.len() as f64 - 1.0)
    }

    /// The letters that an eye has of it, with a point for each of the others.
    fn seen_by(&self, eye: Eye) -> String {
        let mut deal = self.deal.iter();
        let mut is_seen = |character| character == ' ' || deal.next().is_some_and(|eyes| eyes.include(eye));
        self.word.chars().map(|character| if is_seen(character) { character } else { '·' }).collect()
    }
}

impl Dealt {
    fn rows(&self, rung: &Rung<'_>) -> Vec<Row> {
        let words = match &self.source {
            WordSource::Listed(words) => words.clone(),
            WordSource::Made { rows, letters } => {
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
        let pitch = (size * ROW.0).max(ROW.1);
        let first = size / 2.0 - pitch * (rows.len() as f64 - 1.0) / 2.0;
        let width = rows.iter().map(|row| row.width() * size).fold(0.0, f64::max);
        let left = (NUMBERS - width) / 2.0;
        let mut features = Vec::new();
        for (row, index) in rows.iter().zip(0..) {
            let baseline = first + pitch * f64::from(index);
            let number = Shape::Text((index + 1).to_string());
            let part = Part::target(format!("row-{}", index + 1), Eyes::Both, &depth, self.place).role(Role::Number);
            features.push(part.shape(number, (left - NUMBERS, baseline - size / 2.0), NUMBER.min(size), NUMBER));
            features.extend(self.letters(row, index + 1, (left, baseline), size, &depth));
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
fn question(number: u32, row: &Row, tongue: &Tongue) -> Question {
    let answer = tongue.tell(
        "dealt-answer",
        &[
            ("word", (&row.word).into()),
            ("left", row.seen_by(Eye::Left).into()),
            ("right", row.seen_by(Eye::Right).into()),
        ],
    );
    let features = (0..row.deal.len()).map(|index| letter_id(number, index)).collect();
    Question { id: number.to_string(), choices: Vec::new(), answer, features }
}

fn words(tongue: &Tongue) -> Words {
    Words {
        goal: tongue.say("dealt-goal"),
        setup: String::new(),
        steps: vec![
            tongue.say("dealt-first"),
            tongue.say("dealt-aloud"),
            tongue.say("dealt-last"),
            tongue.say("dealt-note"),
        ],
        see: tongue.say("dealt-see"),
        one_part: words::say_rows(&[("dealt-only-some", "dealt-some"), ("dealt-only-turns", "dealt-turns")], tongue),
    }
}

#[cfg(test)]
mod tests {
    use crate::diagnostics::Sources;
    use crate::language::{Language, Tongue};

    use super::*;

    fn place() -> Place {
        Place::start_of(Sources::default().add("a.toml", ""))
    }

    fn dealt(source: WordSource) -> Dealt {
        let size = Ramp::Same(Mm(6.6));
        Dealt { source, size, depth: Ramp::Same(Depth::Page), variants: 1, place: place() }
    }

    fn rows(source: WordSource, key: &str) -> Vec<Row> {
        dealt(source).rows(&Rung { level: 1, variant: 1, key, tongue: Tongue::of(Language::En) })
    }

    fn listed(words: &[&str]) -> WordSource {
        WordSource::Listed(words.iter().map(|&word| word.to_owned()).collect())
    }

    #[test]
    fn each_eye_has_as_many_letters_and_every_letter_is_seen() {
        for letters in FEWEST..=9 {
            for row in rows(WordSource::Made { rows: 8, letters }, "quay") {
                let count = |eyes| row.deal.iter().filter(|&&seen| seen == eyes).count();
                assert_eq!(row.deal.len(), letters as usize);
                assert_eq!(count(Eyes::Left), count(Eyes::Right), "{}", row.word);
                assert!(0 < count(Eyes::Left) && 0 < count(Eyes::Both), "{}", row.word);
            }
        }
    }

    /// What the eyes see together is the word, and the key says what each has alone.
    #[test]
    fn the_key_holds_what_each_eye_had() {
        for (number, row) in (1..).zip(rows(listed(&["harbour", "the pier", "anchor"]), "quay")) {
            let question = question(number, &row, Tongue::of(Language::En));
            let (word, deal) = question.answer.split_once(": left ").unwrap();
            let (left, right) = deal.split_once(", right ").unwrap();
            let both: String = left.chars().zip(right.chars()).map(|(l, r)| if l == '·' { r } else { l }).collect();
            assert_eq!((word, both.as_str()), (row.word.as_str(), row.word.as_str()));
            assert!(left.contains('·') && right.contains('·'), "{}", question.answer);
            assert_eq!(question.features.len(), row.deal.len());
        }
    }

    #[test]
    fn letters_of_the_scene_spell_the_words_in_order_and_do_not_touch() {
        let drawn = dealt(listed(&["harbour", "lantern"])).draw(&Rung {
            level: 1,
            variant: 1,
            key: "quay",
            tongue: Tongue::of(Language::En),
        });
        let letters: Vec<&Feature> = drawn.scene.features.iter().filter(|f| f.role == Role::Target).collect();
        let shape = |f: &Feature| match &f.form {
            crate::scene::Form::Shape { shape: Shape::Text(text), at, .. } => (text.clone(), at.x.0),
            other => panic!("{other:?}"),
        };
        let text: String = letters.iter().map(|f| shape(f).0).collect();
        assert_eq!(text, "harbourlantern");
        for pair in letters.windows(2).filter(|pair| pair[0].id.starts_with("row-1") == pair[1].id.starts_with("row-1"))
        {
            let ([a, b], half) = ([shape(pair[0]), shape(pair[1])], |text: &str| outline::line_box(text).width() * 3.3);
            assert!(a.1 + half(&a.0) + 0.5 < b.1 - half(&b.0), "{a:?} {b:?}");
        }
        let asked: Vec<_> = drawn.quiz.unwrap().questions.into_iter().flat_map(|q| q.features).collect();
        assert_eq!(asked, letters.iter().map(|f| f.id.clone()).collect::<Vec<_>>());
    }

    #[test]
    fn the_same_name_deals_the_same_letters_and_another_name_others() {
        let deals = |key| -> Vec<(String, Vec<Eyes>)> {
            rows(WordSource::Made { rows: 6, letters: 6 }, key).into_iter().map(|row| (row.word, row.deal)).collect()
        };
        assert_eq!(deals("quay/a-1/1"), deals("quay/a-1/1"));
        assert_ne!(deals("quay/a-1/1"), deals("quay/a-2/1"));
        assert_ne!(deals("quay/a-1/1"), deals("quay/a-1/2"));
    }
}
