//! `contrast`: a ladder of rows, each with a mark for either eye. From row to row the mark of the stronger eye loses
//! weight: its lines get thinner, its ink stays solid.
//!
//! A tint would be halftoned in print, and its dots are edges of their own: weight alone goes down.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{Depth, Eye, Eyes, Feature, Role, Scene, Shape, Strand};
use crate::spec::Share;
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, mm, percent};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::parts::{Part, Point};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `contrast` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Contrast {
    /// The eye whose marks lose weight.
    pub stronger: Eye,
    /// What its mark keeps in the last row, 0.1 to 1.
    pub share: f64,
    /// How many rows.
    pub rows: u32,
    /// The width of a mark.
    pub size: Mm,
    /// Where it is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "contrast",
    gated: true,
    strand: Strand::Check,
    doc: "A ladder of rows, each with a ring for the left eye and a cross for the right eye. From row to row the stronger \
          eye's mark has thinner lines, in solid ink. Only under `[gate]` in `set.toml`.",
    tables: &[&EXERCISE],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        Field::required("stronger", Takes::Choice(&["left", "right"]), "The stronger eye: its marks lose weight."),
        Field::default(
            "share",
            Takes::Share(percent(10.0, 100.0)),
            r#""20 %""#,
            "What the lines of its mark keep of their width in the last row. The first row keeps all, those between \
                 step evenly.",
        ),
        Field::default("rows", Takes::Count { min: 3, max: 10 }, "8", "How many rows."),
        Field::default("size", Takes::Length(mm(5.0, 12.0)), r#""9 mm""#, "The width of a mark."),
    ],
]);

const EXAMPLE: &str = r#"[exercise]
kind = "contrast"
title = "Eight rungs of a rope ladder"
stronger = "right"
"#;

/// The height that the rows share, mm.
const HEIGHT: f64 = 116.0;
/// From the middle of the field to the marks and to the row numbers at both sides, mm.
const MARKS: f64 = 26.0;
const NUMBERS: f64 = 62.0;
/// The height of a row number, mm.
const NUMBER: f64 = 3.6;
/// Width of full lines against the mark.
const WEIGHT: f64 = 0.2;

impl Draws for Contrast {
    fn levels(&self) -> Option<u32> {
        None
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, _document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let stronger = exercise.one_of(reader, "stronger", &[Eye::Left, Eye::Right]);
    let share: Option<Share> = exercise.get(reader, "share");
    let (rows, size) = (exercise.get(reader, "rows"), exercise.get(reader, "size"));
    if exercise.has("balance") {
        let problem = Diagnostic::error(
            codes::CONFLICT,
            exercise.place_of(reader, "balance"),
            "a `contrast` has a share of its own in every row: `balance` would take from it once more",
        )
        .with_label("beside `share`")
        .with_help("leave out `balance`");
        reader.push(problem);
        return None;
    }
    let place = exercise.place();
    Some(Body::Contrast(Contrast { stronger: stronger?, share: share?.0, rows: rows?, size: size?, place }))
}

impl Contrast {
    /// What the stronger eye's mark keeps in a row, counted from 0.
    fn share_of(&self, row: u32) -> f64 {
        1.0 - (1.0 - self.share) * f64::from(row) / f64::from(self.rows - 1)
    }

    fn scene(&self) -> Scene {
        let pitch = HEIGHT / f64::from(self.rows);
        let row = |row: u32| self.row(row, (f64::from(row) + 0.5) * pitch - HEIGHT / 2.0);
        Scene { features: (0..self.rows).flat_map(row).collect() }
    }

    fn row(&self, row: u32, y: f64) -> [Feature; 4] {
        let part = |name: &str, eyes| Part::target(format!("{name}-{}", row + 1), eyes, &Depth::Page, self.place);
        let full = self.size.0 * WEIGHT;
        let mark = |name: &str, eye, eyes, shape, x: f64| {
            let weight = if eye == self.stronger { full * self.share_of(row) } else { full };
            part(name, eyes).shape(shape, (x, y), self.size.0, weight)
        };
        let number = |name: &str, at: Point| {
            let text = Shape::Text((row + 1).to_string());
            part(name, Eyes::Both).role(Role::Number).shape(text, at, NUMBER, NUMBER)
        };
        [
            number("row", (-NUMBERS, y)),
            mark("ring", Eye::Left, Eyes::Left, Shape::Ring, -MARKS),
            mark("cross", Eye::Right, Eyes::Right, Shape::Cross, MARKS),
            number("row-end", (NUMBERS, y)),
        ]
    }

    fn words(&self, tongue: &Tongue) -> Words {
        let (begin, see) = match self.stronger {
            Eye::Left => ("contrast-begin-ring-thins", "contrast-see-ring-thins"),
            Eye::Right => ("contrast-begin-cross-thins", "contrast-see-cross-thins"),
        };
        let rows = [
            ("contrast-rings", "contrast-rings-then"),
            ("contrast-crosses", "contrast-crosses-then"),
            ("kinds-only-doubled", "gated-double-then"),
        ];
        Words {
            goal: tongue.say("contrast-goal"),
            setup: String::new(),
            steps: ["kinds-as-told", begin, "contrast-down", "contrast-note", "contrast-rest"]
                .map(|id| tongue.say(id))
                .to_vec(),
            see: tongue.say(see),
            one_part: words::say_rows(&rows, tongue),
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::diagnostics::Sources;

    use super::*;

    fn place() -> Place {
        Place::start_of(Sources::default().add("a.toml", ""))
    }

    #[test]
    fn the_stronger_eyes_mark_loses_weight_in_even_steps_and_the_other_keeps_all() {
        for (stronger, loses) in [(Eye::Left, Eyes::Left), (Eye::Right, Eyes::Right)] {
            let ladder = Contrast { stronger, share: 0.2, rows: 5, size: Mm(10.0), place: place() };
            let scene = ladder.scene();
            let weights = |eyes: Eyes| -> Vec<f64> {
                let marks = scene.features.iter().filter(|f| f.eyes == eyes);
                let weight = |f: &Feature| match &f.form {
                    crate::scene::Form::Shape { weight, .. } => weight.0,
                    other => panic!("{other:?}"),
                };
                marks.map(weight).collect()
            };
            let keeps = if loses == Eyes::Left { Eyes::Right } else { Eyes::Left };
            assert_eq!(weights(keeps), [2.0; 5]);
            let thin = weights(loses);
            assert!(thin.iter().zip([2.0, 1.6, 1.2, 0.8, 0.4]).all(|(w, told)| (w - told).abs() < 1e-9), "{thin:?}");
        }
    }
}
