//! `side`: one shape beside a post on the page: is it nearer or farther than the post?
//!
//! The post is drawn in the inks of the shape: a stroke for both eyes between one for the left eye and one for the right
//! eye, all in line, so that a shifted print shifts shape and post alike and shows in the post itself. The shape stands
//! at a drawn distance from the post, so that its sideways place tells one eye little: see `board::spread`.

use crate::chance::Dice;
use crate::language::Tongue;
use crate::scene::{At, Depth, Eyes, Feature, Form, Role, Scene, Side as DepthSide, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::choice::board::{self, Board, Look};
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung};

/// The parameters of a `side` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Side {
    /// How the shapes look and how far they stand from the post.
    pub look: Look,
    /// The pass mark of a page.
    pub pass: Pass,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "side",
    gated: false,
    strand: Strand::Depth,
    doc: "Shapes, each beside a post on the page. Is the shape nearer or farther than its post? The answers stand in the \
          key.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = TableSpec {
    name: "exercise",
    form: TableForm::Single,
    groups: &[
        COMMON,
        &[Field::default("questions", Takes::Count { min: 1, max: 24 }, "12", "How many items a page has.")],
        board::LOOK,
    ],
    doc: "What kind of exercise it is, its questions and its words.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "side"
title = "Before or behind the pile"
questions = 12
shape = "diamond"
step = { values = ["1600 arcsec toward", "800 arcsec toward"] }
"#;

/// What may be answered: ids of messages.
const CHOICES: [&str; 2] = ["side-near", "side-far"];
const COLUMNS: u32 = 4;
/// From the left edge of an item to its post, mm.
const POST_AT: f64 = 10.5;
/// Clear space between the post and the half-images of its shape, and between these and the next item, mm.
const BESIDE: f64 = 2.0;
/// Half the length of a post, and half that of its middle stroke, mm; between strokes, mm.
const POST: f64 = 7.0;
const POST_MIDDLE: f64 = 2.0;
const POST_GAP: f64 = 0.8;

impl Draws for Side {
    fn levels(&self) -> Option<u32> {
        self.look.step.levels()
    }

    fn variants(&self) -> u32 {
        self.look.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let board = Board::new(self.pass.of, COLUMNS);
        let answers = board::balanced(&mut Dice::new(&format!("{}/answers", rung.key)), self.pass.of, 2);
        let mut dice = Dice::new(&format!("{}/places", rung.key));
        let mut features: Vec<Feature> = board::watch_marks().into();
        let choices = CHOICES.map(|id| rung.tongue.say(id));
        let mut questions = Vec::new();
        for (item, &answer) in (0..).zip(&answers) {
            let id = item + 1;
            features.push(board.number(item, 0.0));
            features.push(self.shape(&mut dice, board, (rung.level, item, answer)));
            features.extend(self.post(board, item));
            questions.push(Question {
                id: id.to_string(),
                choices: choices.to_vec(),
                answer: choices[answer as usize % 2].clone(),
                features: vec![format!("{id}-shape"), format!("{id}-post")],
            });
        }
        let quiz = Quiz { questions, pass: Some(self.pass) };
        Drawn { quiz: Some(quiz), ..Drawn::plain(Scene { features }, self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let questions: Option<u32> = exercise.get(reader, "questions");
    let look = board::read_look(reader, exercise, questions.map(|questions| (Board::new(questions, COLUMNS), 2)));
    let pass = Pass::of(reader, exercise.place_of(reader, "questions"), questions?, 2);
    Some(Body::Side(Side { look: look?, pass: pass? }))
}

impl Side {
    fn shape(&self, dice: &mut Dice, board: Board, (level, item, answer): (u32, u32, u32)) -> Feature {
        let step = self.look.step.at(level);
        // Near is toward: the written side, or its mirror.
        let toward = if step.side() == Some(DepthSide::Toward) { 1.0 } else { -1.0 };
        let deep = if answer == 0 { toward } else { -toward };
        let (left, middle) = board.corner(item);
        let (first, last) = (left + POST_AT + BESIDE, left + board.cell().0 - BESIDE);
        let (x, aside) = board::spread(dice, &step, (last - first - self.look.size.0) / 2.0, 1.0);
        let place = board::at((first + last) / 2.0 + x, middle);
        board::shape(&self.look, &step, format!("{}-shape", item + 1), place, (deep, aside))
    }

    /// The post of an item, on the page: its middle stroke for both eyes, the upper for the left, the lower for the
    /// right.
    fn post(&self, board: Board, item: u32) -> [Feature; 3] {
        let (left, middle) = board.corner(item);
        let x = left + POST_AT;
        let stroke = |name: &str, eyes, from: f64, to: f64| {
            let ends: (At, At) = (board::at(x, middle + from), board::at(x, middle + to));
            let form = Form::Strokes { strokes: vec![ends], weight: Mm(self.look.weight.0), depth: Depth::Page };
            let feature = board::feature(format!("{}-{name}", item + 1), Role::Reference, eyes, form);
            Feature { place: Some(self.look.place), ..feature }
        };
        let inner = POST_MIDDLE + POST_GAP;
        [
            stroke("post", Eyes::Both, -POST_MIDDLE, POST_MIDDLE),
            stroke("post-left", Eyes::Left, -POST, -inner),
            stroke("post-right", Eyes::Right, inner, POST),
        ]
    }

    fn words(&self, tongue: &Tongue) -> Words {
        let shape = words::shape_noun(&self.look.shape, tongue);
        let of_shape = |id: &str| tongue.tell(id, &[("shape", (&shape).into())]);
        Words {
            goal: of_shape("side-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(board::CHECK),
                tongue.say("side-look"),
                of_shape("side-ask"),
                tongue.say(board::REST),
                board::score_step(&self.pass, tongue),
            ],
            see: board::see(&of_shape("side-see"), tongue),
            one_part: board::one_part(tongue),
        }
    }
}
