//! `order`: rows of a few shapes, each at a depth of its own: put them in order from far to near.
//!
//! Each shape is drawn aside by lot as far as its room allows, so that its place tells one eye little: see
//! `board::spread`. Sizes are equal, or drawn by lot whatever the depth, so that size tells nothing at all.

use crate::chance::Dice;
use crate::language::Tongue;
use crate::scene::{Scene, Side, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::choice::board::{self, Board, Look};
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung};

/// The parameters of an `order` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Order {
    /// How the shapes look and how far neighbours in depth stand apart.
    pub look: Look,
    /// How many shapes an item has, 3 to 5.
    pub shapes: u32,
    /// How large they are drawn.
    pub sizes: Sizes,
    /// The pass mark of a page.
    pub pass: Pass,
}

/// How large the shapes of an item are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sizes {
    /// All alike.
    Equal,
    /// Each of its own size, by lot: a larger one may stand farther.
    Drawn,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "order",
    gated: false,
    strand: Strand::Depth,
    doc: "Rows of a few shapes, each at a depth of its own, to be put in order from far to near. The answers stand in the \
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
        &[
            Field::default("questions", Takes::Count { min: 1, max: 12 }, "6", "How many items a page has."),
            Field::default("shapes", Takes::Count { min: 3, max: 5 }, "3", "How many shapes an item has."),
            Field::default(
                "sizes",
                Takes::Choice(&["equal", "drawn"]),
                r#""equal""#,
                "`equal`: all shapes have the same size. `drawn`: each shape of an item has another size by lot, down to \
                 two thirds of `size`, so that size works against depth as often as with it.",
            ),
        ],
        board::LOOK,
    ],
    doc: "What kind of exercise it is, its questions and its words.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "order"
title = "Which boat is last"
questions = 6
shapes = 3
shape = "triangle"
step = "800 arcsec toward"
sizes = "drawn"
"#;

/// The smallest size of an item whose sizes are drawn, as a share of the largest.
const SMALLEST: f64 = 2.0 / 3.0;

impl Draws for Order {
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
        let mut ranks_dice = Dice::new(&format!("{}/answers", rung.key));
        let mut dice = Dice::new(&format!("{}/places", rung.key));
        let mut scene = Scene { features: board::watch_marks().into() };
        let mut questions = Vec::new();
        for item in 0..self.pass.of {
            // The rank of each shape in the order of the letters: 0 is the farthest.
            let mut ranks: Vec<u32> = (0..self.shapes).collect();
            ranks_dice.shuffle(&mut ranks);
            self.item(&mut scene, &mut dice, board, (rung.level, item, &ranks));
            questions.push(self.question(item, &ranks));
        }
        Drawn { quiz: Some(Quiz { questions, pass: Some(self.pass) }), ..Drawn::plain(scene, self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let questions: Option<u32> = exercise.get(reader, "questions");
    let shapes: Option<u32> = exercise.get(reader, "shapes");
    let sizes = exercise.one_of(reader, "sizes", &[Sizes::Equal, Sizes::Drawn]);
    let board = questions.zip(shapes).map(|(questions, shapes)| (Board::new(questions, 2), shapes));
    let look = board::read_look(reader, exercise, board);
    let (questions, shapes) = (questions?, shapes?);
    let orders = (1..=shapes).product();
    let pass = Pass::of(reader, exercise.place_of(reader, "questions"), questions, orders);
    Some(Body::Order(Order { look: look?, shapes, sizes: sizes?, pass: pass? }))
}

impl Order {
    fn item(&self, scene: &mut Scene, dice: &mut Dice, board: Board, (level, item, ranks): (u32, u32, &[u32])) {
        let step = self.look.step.at(level);
        scene.features.push(board.number(item, -3.0));
        for ((shape, &rank), size) in (0..).zip(ranks).zip(self.sizes(dice)) {
            let mut place = board.slot(item, shape, self.shapes);
            let free = board.free(self.shapes, self.look.size.0);
            let (x, aside) = board::spread(dice, &step, free, self.most());
            place.x.0 += x;
            let look = Look { size, ..self.look.clone() };
            let deep = self.deep(rank, step.side());
            scene.features.push(board::shape(&look, &step, board::shape_id(item, shape), place, (deep, aside)));
            scene.features.push(board.letter(item, shape, self.shapes, self.look.size));
        }
    }

    /// The depth of a rank in steps of the written side: neighbours one step apart, about the page, none on it.
    fn deep(&self, rank: u32, side: Option<Side>) -> f64 {
        let nearer = f64::from(rank) - self.middle();
        if side == Some(Side::Away) { self.lean() - nearer } else { self.lean() + nearer }
    }

    /// The deepest that a shape stands, in steps.
    fn most(&self) -> f64 {
        self.middle() + self.lean()
    }

    fn middle(&self) -> f64 {
        f64::from(self.shapes - 1) / 2.0
    }

    fn lean(&self) -> f64 {
        if self.shapes % 2 == 1 { 0.5 } else { 0.0 }
    }

    fn sizes(&self, dice: &mut Dice) -> Vec<Mm> {
        let last = f64::from(self.shapes - 1);
        let share = |i: u32| match self.sizes {
            Sizes::Equal => 1.0,
            Sizes::Drawn => SMALLEST + (1.0 - SMALLEST) * f64::from(i) / last,
        };
        let mut sizes: Vec<Mm> = (0..self.shapes).map(|i| Mm(self.look.size.0 * share(i))).collect();
        dice.shuffle(&mut sizes);
        sizes
    }

    fn question(&self, item: u32, ranks: &[u32]) -> Question {
        let mut letters: Vec<(u32, String)> = ranks.iter().copied().zip((0..).map(board::letter)).collect();
        letters.sort_unstable();
        let letters: Vec<String> = letters.into_iter().map(|(_, letter)| letter).collect();
        Question {
            id: (item + 1).to_string(),
            choices: Vec::new(),
            answer: letters.join(" "),
            features: (0..self.shapes).map(|shape| board::shape_id(item, shape)).collect(),
        }
    }

    fn words(&self, tongue: &Tongue) -> Words {
        let shape = words::shape_noun(&self.look.shape, tongue);
        let of_shape = |id: &str| tongue.tell(id, &[("shape", (&shape).into())]);
        let see = match self.sizes {
            Sizes::Equal => "order-see-equal",
            Sizes::Drawn => "order-see-drawn",
        };
        Words {
            goal: of_shape("order-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(board::CHECK),
                tongue.say("order-ask"),
                tongue.say("order-write"),
                tongue.say(board::REST),
                board::score_step(&self.pass, tongue),
            ],
            see: board::see(&of_shape(see), tongue),
            one_part: board::one_part(tongue),
        }
    }
}
