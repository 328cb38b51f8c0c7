//! `relief`: a field of random dots with the depth of the author's own grey picture.

use std::sync::Arc;

use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::language::Tongue;
use crate::scene::{Depth, Effort, Grid, Relief as Surfaced, Scene, Strand, Surface};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use super::field::{self, Dots};
use super::{depths, words};

/// The parameters of a `relief` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Relief {
    /// The field.
    pub dots: Dots,
    /// The picture, white near.
    pub map: Arc<Grid>,
    /// The depth of its white.
    pub near: Ramp<Depth>,
    /// The depth of its black.
    pub far: Ramp<Depth>,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "relief",
    gated: false,
    strand: Strand::Depth,
    doc: "A field of random dots takes its depth from a grey picture: its white is near, its black is far, and greys lie \
          between, even in demand.",
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
            Field::required("file", Takes::Picture("png"), "The grey picture, stretched over the field."),
            Field::required("near", Takes::Ramp(&Takes::Depth), "The depth of its white."),
            Field::required("far", Takes::Ramp(&Takes::Depth), "The depth of its black."),
        ],
        field::KEYS,
    ],
    doc: "The field of dots.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "relief"
title = "Sand banks at low tide"

[dots]
file = "art/sand-banks.png"
near = "500 arcsec toward"
far = "500 arcsec away"
"#;

impl Draws for Relief {
    fn levels(&self) -> Option<u32> {
        self.near.levels().or(self.far.levels()).or(self.dots.levels())
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let relief = Surfaced::Between {
            from: self.far.at(rung.level),
            to: self.near.at(rung.level),
            share: Surface::Grid(self.map.clone()),
        };
        let scene = Scene { features: self.dots.with_relief(rung, relief) };
        Drawn { effort: Effort::cued(0), ..Drawn::plain(scene, words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let mut table = document.table(reader, &DOTS)?;
    table.check_keys(reader);
    let map = table.get(reader, "file");
    let dots = Dots::read(reader, &table);
    let (near, far) = depths::near_and_far(reader, &table)?;
    Some(Body::Relief(Relief { dots: dots?, map: map?, near, far }))
}

/// The words; they are the same for every picture, for nobody knows what an author has drawn.
fn words(tongue: &Tongue) -> Words {
    Words {
        goal: tongue.say("relief-goal"),
        setup: String::new(),
        steps: vec![
            tongue.say(words::FRAME_STEP),
            tongue.say("relief-wait"),
            tongue.say("relief-wander"),
            tongue.say(words::REST_STEP),
        ],
        see: words::with_frame(&tongue.say("relief-see"), tongue),
        one_part: words::one_part(tongue),
    }
}
