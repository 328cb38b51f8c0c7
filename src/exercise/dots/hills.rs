//! `hills`: smooth upright ridges of random dots; the question is how many.

use std::cmp::Ordering;

use crate::chance::Dice;
use crate::exercise::quiz::{Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::language::Tongue;
use crate::scene::{Depth, Effort, Relief, Scene, Strand, Surface};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use super::field::{self, Dots};
use super::{depths, words};

/// The parameters of a `hills` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Hills {
    /// The field.
    pub dots: Dots,
    /// The depth at their feet.
    pub ground: Ramp<Depth>,
    /// The depth of their crests.
    pub crest: Ramp<Depth>,
    /// Whether the crests are nearer than the ground.
    pub rise: bool,
    /// How many; without it, by lot.
    pub count: Option<u32>,
    /// How many variants.
    pub variants: u32,
}

/// The most ridges of a page.
const MOST: u32 = 5;
/// The width of a ridge at its foot, as a share of the field's width: the same for every count, so that it does not give
/// the count away (design choice).
const FOOT: f64 = 0.15;
/// Flat ground between two ridges, at least, as a share of the field's width (design choice).
const FLAT: f64 = 0.03;

/// The kind.
pub const KIND: Kind = Kind {
    id: "hills",
    gated: false,
    strand: Strand::Depth,
    doc: "One to five smooth upright ridges of random dots rise from their ground, or sink into it, at places drawn by \
          lot. The question is how many.",
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
            field::GROUND,
            Field::required(
                "crest",
                Takes::Ramp(&Takes::Depth),
                "The depth of the crests: nearer than the ground makes hills, farther makes hollows.",
            ),
            Field::optional("count", Takes::Count { min: 1, max: MOST }, "How many ridges. Left out: by lot."),
        ],
        field::KEYS,
    ],
    doc: "The field of dots.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "hills"
title = "Swell under the mist"

[dots]
ground = "page"
crest = "700 arcsec toward"
"#;

/// The goal, what to wait for, what to count and what should be seen: ids of messages.
const HILLS: [&str; 4] = ["hills-goal", "hills-wait", "hills-count", "hills-see"];
const HOLLOWS: [&str; 4] = ["hollows-goal", "hollows-wait", "hollows-count", "hollows-see"];

impl Draws for Hills {
    fn levels(&self) -> Option<u32> {
        self.crest.levels().or(self.ground.levels()).or(self.dots.levels())
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let mut dice = Dice::new(&format!("{}/layer", rung.key));
        let lot = dice.below(MOST) + 1;
        let count = self.count.unwrap_or(lot);
        let relief = Relief::Between {
            from: self.ground.at(rung.level),
            to: self.crest.at(rung.level),
            share: Surface::Ridges { middles: middles(count, &mut dice), width: FOOT },
        };
        let question = Question {
            id: "1".to_owned(),
            choices: (1..=MOST).map(|n| n.to_string()).collect(),
            answer: count.to_string(),
            features: vec!["dots".to_owned()],
        };
        let scene = Scene { features: self.dots.with_relief(rung, relief) };
        let quiz = Some(Quiz { questions: vec![question], pass: None });
        Drawn { effort: Effort::cued(0), quiz, ..Drawn::plain(scene, self.words(rung.tongue)) }
    }
}

/// The middles of so many ridges from left to right, none over another, every such row of places as likely: the free
/// ground is dealt by points thrown on it at even chance.
fn middles(count: u32, dice: &mut Dice) -> Vec<f64> {
    let pitch = FOOT + FLAT;
    let free = 1.0 - FLAT - pitch * f64::from(count);
    let mut thrown: Vec<f64> = (0..count).map(|_| dice.unit() * free).collect();
    thrown.sort_by(f64::total_cmp);
    (0..count).zip(thrown).map(|(before, free)| FLAT + FOOT / 2.0 + pitch * f64::from(before) + free).collect()
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let variants = exercise.get(reader, "variants");
    let mut table = document.table(reader, &DOTS)?;
    table.check_keys(reader);
    let dots = Dots::read(reader, &table);
    let (ground, crest) = (table.get(reader, "ground"), table.get(reader, "crest"));
    let count = table.maybe(reader, "count");
    let (ground, crest): (Ramp<Depth>, Ramp<Depth>) = (ground?, crest?);
    let rise = depths::order(reader, &table, ("crest", &crest), ("ground", &ground))? == Ordering::Greater;
    Some(Body::Hills(Hills { dots: dots?, ground, crest, rise, count: count?, variants: variants? }))
}

impl Hills {
    /// The words; they are the same on every level and give nothing away.
    fn words(&self, tongue: &Tongue) -> Words {
        let [goal, wait, count, see] = if self.rise { HILLS } else { HOLLOWS };
        Words {
            goal: tongue.say(goal),
            setup: String::new(),
            steps: vec![
                tongue.say(words::FRAME_STEP),
                tongue.say(wait),
                tongue.tell(count, &[("most", MOST.into())]),
                tongue.say(words::REST_STEP),
            ],
            see: words::with_frame(&tongue.say(see), tongue),
            one_part: words::one_part(tongue),
        }
    }
}
