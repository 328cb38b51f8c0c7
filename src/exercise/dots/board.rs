//! `board`: a board of random dots tilted in depth; the question is which of its edges is nearest.

use crate::chance::Dice;
use crate::exercise::quiz::{Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::language::Tongue;
use crate::scene::{Depth, Direction, Effort, Relief, Scene, Strand, Surface};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use super::field::{self, Dots};
use super::{depths, words};

/// The parameters of a `board` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Board {
    /// The field.
    pub dots: Dots,
    /// The depth of the near edge.
    pub near: Ramp<Depth>,
    /// The depth of the far edge.
    pub far: Ramp<Depth>,
    /// Which edge is near; without it, by lot.
    pub edge: Option<Direction>,
    /// How many variants.
    pub variants: u32,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "board",
    gated: false,
    strand: Strand::Depth,
    doc: "A field of random dots is a board that tilts in depth, evenly from its far edge to its near edge. The question \
          is which edge is near.",
    tables: &[&EXERCISE, &DOTS],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON, &[field::VARIANTS]]);

const DOTS: TableSpec = TableSpec {
    name: "dots",
    form: TableForm::Single,
    groups: &[
        &[
            Field::required("near", Takes::Ramp(&Takes::Depth), "The depth of the near edge."),
            Field::required("far", Takes::Ramp(&Takes::Depth), "The depth of the far edge."),
            Field::optional(
                "edge",
                Takes::Choice(&["up", "right", "down", "left"]),
                "Which edge is near. Left out: by lot.",
            ),
        ],
        field::KEYS,
    ],
    doc: "The field of dots.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "board"
title = "The loading ramp"

[dots]
near = "700 arcsec toward"
far = "700 arcsec away"
edge = "down"
"#;

impl Draws for Board {
    fn levels(&self) -> Option<u32> {
        self.near.levels().or(self.far.levels()).or(self.dots.levels())
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let lot = Dice::new(&format!("{}/layer", rung.key)).below(4) as usize;
        let edge = self.edge.unwrap_or(Direction::ALL[lot]);
        let relief =
            Relief::Between { from: self.far.at(rung.level), to: self.near.at(rung.level), share: Surface::Tilt(edge) };
        let question = Question {
            id: "1".to_owned(),
            choices: words::ways(rung.tongue),
            answer: words::way(edge, rung.tongue),
            features: vec!["dots".to_owned()],
        };
        let scene = Scene { features: self.dots.with_relief(rung, relief) };
        let quiz = Some(Quiz { questions: vec![question], pass: None });
        Drawn { effort: Effort::cued(0), quiz, ..Drawn::plain(scene, words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let variants = exercise.get(reader, "variants");
    let mut table = document.table(reader, &DOTS)?;
    table.check_keys(reader);
    let dots = Dots::read(reader, &table);
    let depths = depths::near_and_far(reader, &table);
    let edge = if table.has("edge") { table.one_of(reader, "edge", &Direction::ALL).map(Some) } else { Some(None) };
    let (near, far) = depths?;
    Some(Body::Board(Board { dots: dots?, near, far, edge: edge?, variants: variants? }))
}

/// The words; they are the same on every level and give nothing away.
fn words(tongue: &Tongue) -> Words {
    Words {
        goal: tongue.say("board-goal"),
        setup: String::new(),
        steps: vec![
            tongue.say(words::FRAME_STEP),
            tongue.say("board-wait"),
            tongue.say("board-write"),
            tongue.say(words::REST_STEP),
        ],
        see: words::with_frame(&tongue.say("board-see"), tongue),
        one_part: words::one_part(tongue),
    }
}
