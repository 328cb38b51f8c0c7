//! `odd`: rows of equal shapes, one of which stands at another depth: which?
//!
//! One eye alone cannot tell: the odd shape moves half a step one way for one eye and half a step the other way for the
//! other eye, drawn by lot; every other shape moves by as much, by lot to one side or the other, for both eyes alike. So
//! each eye finds every shape of a row as likely to the left of its place as to the right, whichever is the odd one.

use crate::chance::Dice;
use crate::language::Tongue;
use crate::scene::{Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use crate::exercise::choice::board::{self, Board, Look};
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung};

/// The parameters of an `odd` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Odd {
    /// How the shapes look and how far the odd one stands from the others.
    pub look: Look,
    /// How many shapes an item has, 3 to 5.
    pub choices: u32,
    /// The pass mark of a page.
    pub pass: Pass,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "odd",
    gated: false,
    strand: Strand::Depth,
    doc: "Rows of equal shapes; in each row one stands nearer or farther than the others. Which one? The answers stand in \
          the key.",
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
            Field::default("questions", Takes::Count { min: 1, max: 12 }, "10", "How many items a page has."),
            Field::default("choices", Takes::Count { min: 3, max: 5 }, "4", "How many shapes an item has."),
        ],
        board::LOOK,
    ],
    doc: "What kind of exercise it is, its questions and its words.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "odd"
title = "The loose float"
questions = 10
choices = 4
step = { values = ["1600 arcsec toward", "800 arcsec toward"] }
variants = 2
"#;

/// The depth of most shapes, in steps, and how far the odd one stands from it.
const MOST: f64 = 0.5;
const APART: f64 = 1.0;

impl Draws for Odd {
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
        let board = Board::new(self.pass.of, 2);
        let answers = board::balanced(&mut Dice::new(&format!("{}/answers", rung.key)), self.pass.of, self.choices);
        let mut dice = Dice::new(&format!("{}/places", rung.key));
        let mut scene = Scene { features: board::watch_marks().into() };
        for (item, &odd) in (0..).zip(&answers) {
            self.item(&mut scene, &mut dice, board, (rung.level, item, odd));
        }
        let question = |(item, &odd): (u32, &u32)| Question {
            id: (item + 1).to_string(),
            choices: (0..self.choices).map(board::letter).collect(),
            answer: board::letter(odd),
            features: (0..self.choices).map(|shape| board::shape_id(item, shape)).collect(),
        };
        let questions = (0..).zip(&answers).map(question).collect();
        Drawn { quiz: Some(Quiz { questions, pass: Some(self.pass) }), ..Drawn::plain(scene, self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let questions: Option<u32> = exercise.get(reader, "questions");
    let choices: Option<u32> = exercise.get(reader, "choices");
    let board = questions.zip(choices).map(|(questions, choices)| (Board::new(questions, 2), choices));
    let look = board::read_look(reader, exercise, board);
    let (questions, choices) = (questions?, choices?);
    let pass = Pass::of(reader, exercise.place_of(reader, "questions"), questions, choices);
    Some(Body::Odd(Odd { look: look?, choices, pass: pass? }))
}

impl Odd {
    /// One row; `odd` is the place of the odd shape in it.
    fn item(&self, scene: &mut Scene, dice: &mut Dice, board: Board, (level, item, odd): (u32, u32, u32)) {
        let step = self.look.step.at(level);
        let free = (board.pitch(self.choices) - self.look.size.0) / 8.0;
        let apart = APART * board::sign(dice);
        scene.features.push(board.number(item, -3.0));
        for shape in 0..self.choices {
            let mut place = board.slot(item, shape, self.choices);
            place.x.0 += free * board::swing(dice);
            let aside = board::sign(dice);
            let stand = if shape == odd { (MOST + apart, 0.0) } else { (MOST, APART * aside) };
            scene.features.push(board::shape(&self.look, &step, board::shape_id(item, shape), place, stand));
            scene.features.push(board.letter(item, shape, self.choices, self.look.size));
        }
    }

    fn words(&self, tongue: &Tongue) -> Words {
        let shape = words::shape_noun(&self.look.shape, tongue);
        let of_shape = |id: &str| tongue.tell(id, &[("shape", (&shape).into())]);
        Words {
            goal: of_shape("odd-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(board::CHECK),
                of_shape("odd-look"),
                tongue.say("odd-write"),
                tongue.say(board::REST),
                board::score_step(&self.pass, tongue),
            ],
            see: board::see(&of_shape("odd-see"), tongue),
            one_part: board::one_part(tongue),
        }
    }
}
