//! `hidden`: figures that two eyes together see in a field of random dots.

use std::cmp::Ordering;

use crate::exercise::ramp::Ramp;
use crate::exercise::words::{Words, shape_name};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::scene::{Depth, Effort, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{TableForm, TableSpec};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use super::field::{self, Dots, Numbers};
use super::figure::{self, Figure};
use super::{depths, words};

/// The parameters of a `hidden` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Hidden {
    /// The field.
    pub dots: Dots,
    /// The depth of the ground.
    pub ground: Ramp<Depth>,
    /// What is hidden in it, at least one.
    pub figures: Vec<Figure>,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "hidden",
    gated: false,
    strand: Strand::Depth,
    doc: "Figures stand in a field of random dots at another depth than the dots around them. Neither eye alone can see \
          them; a cue, a drawn line along their edges, makes them easier.",
    tables: &[&EXERCISE, &DOTS, &figure::FIGURE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const DOTS: TableSpec = TableSpec {
    name: "dots",
    form: TableForm::Single,
    groups: &[&[field::GROUND, field::CUE], field::KEYS],
    doc: "The field of dots.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "hidden"
title = "Star over the breakwater"

[dots]
ground = "page"
cue = { values = [2, 1, 0] }

[[figure]]
label = "star"
shape = "star"
size = "64 mm"
depth = "600 arcsec toward"
"#;

impl Draws for Hidden {
    fn levels(&self) -> Option<u32> {
        let own = self.ground.levels().or(self.dots.levels());
        own.or_else(|| self.figures.iter().find_map(Figure::levels))
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let figures = self.figures.iter().map(|figure| figure.on(rung.level)).collect();
        let features = self.dots.with_figures(rung, self.ground.at(rung.level), figures, &Numbers::default());
        let effort = Effort::cued(self.dots.cue.at(rung.level));
        Drawn { effort, ..Drawn::plain(Scene { features }, self.words(rung.level)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let table = document.table(reader, &DOTS);
    let (dots, ground) = table.map_or((None, None), |mut table| {
        table.check_keys(reader);
        (Dots::read(reader, &table), table.get(reader, "ground"))
    });
    let figures = figure::read_all(reader, document);
    Some(Body::Hidden(Hidden { dots: dots?, ground: ground?, figures: figures? }))
}

impl Hidden {
    fn words(&self, level: u32) -> Words {
        let ground = self.ground.at(level);
        let nearer: Vec<Option<Ordering>> =
            self.figures.iter().map(|figure| depths::compare(&figure.depth.at(level), &ground)).collect();
        let alike = nearer.first().copied().flatten().filter(|first| nearer.iter().all(|other| *other == Some(*first)));
        let many = 1 < self.figures.len();
        let names: Vec<String> = self.figures.iter().map(|f| format!("a {}", shape_name(&f.shape))).collect();
        let side = match alike {
            None if many => "some in front of the other dots, some behind them",
            side => words::against_the_rest(side),
        };
        let see = match names.len() {
            1..=3 => capital(&format!("{} {side}.", words::list(&names))),
            count => format!("{count} shapes, {side}."),
        };
        let (goal, wait, follow) = if many {
            ("shapes", "shapes stand out", "each shape")
        } else {
            ("shape", "a shape stands out", "the shape")
        };
        Words {
            goal: format!("Find the {goal} that only two eyes together can see."),
            setup: String::new(),
            steps: vec![
                words::FRAME_STEP.to_owned(),
                words::wait_step(wait),
                format!("Follow the edge of {follow} with your eyes."),
                words::REST_STEP.to_owned(),
            ],
            see: words::with_frame(&see),
            one_part: words::one_part(),
        }
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}
