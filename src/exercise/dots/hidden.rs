//! `hidden`: figures that two eyes together see in a field of random dots.

use std::cmp::Ordering;

use crate::exercise::ramp::Ramp;
use crate::exercise::words::{Words, shape_noun};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::language::Tongue;
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
        Drawn { effort, ..Drawn::plain(Scene { features }, self.words(rung.level, rung.tongue)) }
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
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let of_count = |id: &str| tongue.tell(id, &[("n", self.figures.len().into())]);
        Words {
            goal: of_count("hidden-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(words::FRAME_STEP),
                of_count("hidden-wait"),
                of_count("hidden-follow"),
                tongue.say(words::REST_STEP),
            ],
            see: words::with_frame(&self.see(level, tongue), tongue),
            one_part: words::one_part(tongue),
        }
    }

    /// What stands out, and where against the other dots.
    fn see(&self, level: u32, tongue: &Tongue) -> String {
        let ground = self.ground.at(level);
        let mut sides = self.figures.iter().map(|figure| depths::compare(&figure.depth.at(level), &ground));
        let first = sides.next().flatten();
        let alike = first.filter(|_| sides.all(|other| other == first));
        let id = match alike {
            Some(Ordering::Greater) => "hidden-see-front",
            Some(Ordering::Less) => "hidden-see-behind",
            None if 1 < self.figures.len() => "hidden-see-mixed",
            _ => "hidden-see-either",
        };
        let one = |figure: &Figure| shape_noun(&figure.shape, tongue).form("a").to_owned();
        let shapes = match self.figures.len() {
            1..=3 => tongue.list(&self.figures.iter().map(one).collect::<Vec<_>>()),
            count => tongue.tell("hidden-shapes", &[("n", count.into())]),
        };
        tongue.tell(id, &[("shapes", capital(&shapes).into())])
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}
