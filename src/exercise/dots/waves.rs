//! `waves`: a field of random dots that rises and falls in smooth waves.

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

/// The parameters of a `waves` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Waves {
    /// The field.
    pub dots: Dots,
    /// The depth of the crests.
    pub near: Ramp<Depth>,
    /// The depth of the troughs.
    pub far: Ramp<Depth>,
    /// How many waves.
    pub count: Ramp<u32>,
    /// Whether they follow one another downwards instead of to the right.
    pub down: bool,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "waves",
    gated: false,
    strand: Strand::Depth,
    doc: "A field of random dots rises and falls in smooth waves, from left to right or from top to bottom.",
    tables: &[&EXERCISE, &DOTS],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const DOTS: TableSpec = TableSpec {
    name: "dots",
    form: TableForm::Single,
    groups: &[
        &[
            Field::required("near", Takes::Ramp(&Takes::Depth), "The depth of the crests."),
            Field::required("far", Takes::Ramp(&Takes::Depth), "The depth of the troughs."),
            Field::default("count", Takes::Ramp(&Takes::Count { min: 1, max: 6 }), "2", "How many whole waves."),
            Field::default(
                "follow",
                Takes::Choice(&["right", "down"]),
                r#""down""#,
                "Whether they follow one another to the right or downwards.",
            ),
        ],
        field::KEYS,
    ],
    doc: "The field of dots.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "waves"
title = "Waves at the harbour mouth"

[dots]
near = "600 arcsec toward"
far = "300 arcsec away"
count = 3
"#;

impl Draws for Waves {
    fn levels(&self) -> Option<u32> {
        self.near.levels().or(self.far.levels()).or(self.count.levels()).or(self.dots.levels())
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let count = self.count.at(rung.level);
        let relief = Relief::Between {
            from: self.far.at(rung.level),
            to: self.near.at(rung.level),
            share: Surface::Waves { count, down: self.down },
        };
        let scene = Scene { features: self.dots.with_relief(rung, relief) };
        Drawn { effort: Effort::cued(0), ..Drawn::plain(scene, self.words(count, rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let mut table = document.table(reader, &DOTS)?;
    table.check_keys(reader);
    let dots = Dots::read(reader, &table);
    let depths = depths::near_and_far(reader, &table);
    let count = table.get(reader, "count");
    let down = table.one_of(reader, "follow", &[false, true]);
    let (near, far) = depths?;
    Some(Body::Waves(Waves { dots: dots?, near, far, count: count?, down: down? }))
}

impl Waves {
    fn words(&self, count: u32, tongue: &Tongue) -> Words {
        let (follow, see) =
            if self.down { ("waves-follow-down", "waves-see-down") } else { ("waves-follow-right", "waves-see-right") };
        Words {
            goal: tongue.say("waves-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(words::FRAME_STEP),
                tongue.say("waves-wait"),
                tongue.say(follow),
                tongue.say(words::REST_STEP),
            ],
            see: words::with_frame(&tongue.tell(see, &[("n", count.into())]), tongue),
            one_part: words::one_part(tongue),
        }
    }
}
