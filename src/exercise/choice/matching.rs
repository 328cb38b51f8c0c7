//! `match`: a post above five numbered ones of different depth: which of the five stands as deep as the single one?
//!
//! Every post is drawn aside by lot as far as its room allows, so that its place tells one eye little: see
//! `board::spread`. The depths stand in no order.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Depth, Eyes, Feature, Form, Role, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, plain};

use crate::exercise::choice::board::{self, Board};
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung};

/// The parameters of a `match` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Match {
    /// Between neighbouring depths of the numbered posts.
    pub step: Ramp<Depth>,
    /// The height of a post.
    pub height: Mm,
    /// Its width.
    pub weight: Mm,
    /// How many variants each level has.
    pub variants: u32,
    /// The pass mark of a page.
    pub pass: Pass,
    /// Where the step is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "match",
    gated: false,
    strand: Strand::Depth,
    doc: "A post above five numbered ones of different depth. Which of the five stands as deep as the single one? The \
          answers stand in the key.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = TableSpec {
    name: "exercise",
    form: TableForm::Single,
    groups: &[
        COMMON,
        &[
            Field::default("questions", Takes::Count { min: 1, max: 8 }, "6", "How many items a page has."),
            Field::required(
                "step",
                Takes::Ramp(&Takes::Depth),
                "From one depth of the numbered posts to the next. Which post stands nearer is drawn by lot; the item \
                 leans to the written side by half a step, so that no post lies on the page.",
            ),
            Field::default("height", Takes::Length(mm(4.0, 15.0)), r#""9 mm""#, "The height of a post."),
            Field::default("weight", Takes::Length(mm(0.4, 3.0)), r#""1.4 mm""#, "The width of a post."),
            board::VARIANTS,
        ],
    ],
    doc: "What kind of exercise it is, its questions and its words.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "match"
title = "Five piles and a mast"
questions = 6
step = { from = "800 arcsec toward", to = "400 arcsec toward", levels = 2 }
"#;

/// How many numbered posts an item has.
const POSTS: u32 = 5;
const COLUMNS: u32 = 2;
/// The depths of the numbered posts, in steps of the written side: about the page, none on it.
const DEPTHS: [f64; POSTS as usize] = [-1.5, -0.5, 0.5, 1.5, MOST];
const MOST: f64 = 2.5;
/// Clear height between the single post and the numbered ones, mm, and what an item needs beside two posts.
const BETWEEN: f64 = 5.0;
const ROW_ROOM: f64 = 12.0;
/// Height of a number below a post and the clear space above it, mm.
const NUMBER: f64 = 3.0;
const NUMBER_GAP: f64 = 1.8;

impl Draws for Match {
    fn levels(&self) -> Option<u32> {
        self.step.levels()
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let board = Board::new(self.pass.of, COLUMNS);
        let mut answers_dice = Dice::new(&format!("{}/answers", rung.key));
        let answers = board::balanced(&mut answers_dice, self.pass.of, POSTS);
        let mut dice = Dice::new(&format!("{}/places", rung.key));
        let mut features: Vec<Feature> = board::watch_marks().into();
        let mut questions = Vec::new();
        for (item, &answer) in (0..).zip(&answers) {
            let mut depths = DEPTHS;
            answers_dice.shuffle(&mut depths);
            let id = item + 1;
            features.push(board.number(item, 0.0));
            let single = depths[answer as usize % depths.len()];
            features.push(self.post(&mut dice, board, (rung.level, item, None), single));
            for (post, &deep) in (0..).zip(&depths) {
                features.push(self.post(&mut dice, board, (rung.level, item, Some(post)), deep));
                features.push(self.number(board, item, post));
            }
            let posts = (1..=POSTS).map(|post| format!("{id}-post-{post}"));
            questions.push(Question {
                id: id.to_string(),
                choices: (1..=POSTS).map(|post| post.to_string()).collect(),
                answer: (answer + 1).to_string(),
                features: std::iter::once(format!("{id}-single")).chain(posts).collect(),
            });
        }
        let quiz = Quiz { questions, pass: Some(self.pass) };
        Drawn { quiz: Some(quiz), ..Drawn::plain(Scene { features }, self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let questions: Option<u32> = exercise.get(reader, "questions");
    let step = board::read_step(reader, exercise);
    let height: Option<Placed<Mm>> = exercise.get(reader, "height");
    let (weight, variants) = (exercise.get(reader, "weight"), exercise.get(reader, "variants"));
    let questions = questions?;
    let height = height.filter(|height| has_room(reader, height, questions));
    let pass = Pass::of(reader, exercise.place_of(reader, "questions"), questions, POSTS);
    let place = exercise.place_of(reader, "step");
    Some(Body::Match(Match {
        step: step?,
        height: height?.value,
        weight: weight?,
        variants: variants?,
        pass: pass?,
        place,
    }))
}

/// Whether two posts find room one above the other in an item; pushes a problem where they do not.
fn has_room(reader: &mut Reader<'_>, height: &Placed<Mm>, questions: u32) -> bool {
    let most = (Board::new(questions, COLUMNS).cell().1 - ROW_ROOM) / 2.0;
    if height.value.0 <= most {
        return true;
    }
    let (seen, most) = (plain(height.value.0, 3), plain(most, 1));
    let message = format!("`height` is `{seen} mm`: {questions} items leave room for posts of at most `{most} mm`");
    let problem = Diagnostic::error(codes::RANGE, height.place, message)
        .with_label(format!("limit {most} mm"))
        .with_help("make the posts shorter, or ask fewer questions");
    reader.push(problem);
    false
}

impl Match {
    /// The place of a post: numbered ones in a row, the single one above their middle.
    fn place(&self, board: Board, item: u32, post: Option<u32>) -> At {
        let (_, middle) = board.corner(item);
        let half = self.height.0 / 2.0;
        let slot = board.slot(item, post.unwrap_or(POSTS / 2), POSTS);
        let y = if post.is_some() { middle + half - 1.0 } else { middle - half - 1.0 - BETWEEN };
        board::at(slot.x.0, y)
    }

    fn post(&self, dice: &mut Dice, board: Board, (level, item, post): (u32, u32, Option<u32>), deep: f64) -> Feature {
        let step = self.step.at(level);
        let At { x, y } = self.place(board, item, post);
        let (moved, aside) = board::spread(dice, &step, board.free(POSTS, self.weight.0), MOST);
        let (x, half) = (x.0 + moved, self.height.0 / 2.0);
        let ends = (board::at(x, y.0 - half), board::at(x, y.0 + half));
        let form = Form::Strokes { strokes: vec![ends], weight: self.weight, depth: board::steps(&step, deep) };
        let form = Form::Aside { form: Box::new(form), by: board::steps(&step, aside) };
        let name = post.map_or_else(|| "single".to_owned(), |post| format!("post-{}", post + 1));
        let feature = board::feature(format!("{}-{name}", item + 1), Role::Target, Eyes::Both, form);
        Feature { place: Some(self.place), ..feature }
    }

    /// The number below a post, at its fixed place.
    fn number(&self, board: Board, item: u32, post: u32) -> Feature {
        let At { x, y } = self.place(board, item, Some(post));
        let below = board::at(x.0, y.0 + self.height.0 / 2.0 + NUMBER_GAP + NUMBER / 2.0);
        let number = (post + 1).to_string();
        board::label(format!("{}-post-{number}-number", item + 1), &number, NUMBER, below)
    }

    fn words(&self, tongue: &Tongue) -> Words {
        Words {
            goal: tongue.say("match-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(board::CHECK),
                tongue.say("match-look"),
                tongue.say("match-ask"),
                tongue.say(board::REST),
                board::score_step(&self.pass, tongue),
            ],
            see: board::see(&tongue.say("match-see"), tongue),
            one_part: board::one_part(tongue),
        }
    }
}
