//! `planes`: flat planes of random dots, side by side or one inside the other, each at its own depth.

use std::cmp::Ordering;

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::exercise::quiz::{Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::language::Tongue;
use crate::scene::{At, Depth, DotFigure, Effort, Scene, Size, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use super::field::{self, Dots, Numbers};
use super::{depths, figure, words};

/// The parameters of a `planes` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Planes {
    /// The field.
    pub dots: Dots,
    /// The depth of the ground around the planes.
    pub ground: Ramp<Depth>,
    /// How the planes lie.
    pub form: PlanesForm,
    /// Their depths.
    pub depths: Vec<Ramp<Depth>>,
    /// Whether their order is asked for, and drawn by lot.
    pub asks: bool,
    /// How many variants.
    pub variants: u32,
}

/// How the planes of a page lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlanesForm {
    /// Side by side, from left to right.
    Row,
    /// One inside the other, from the outside in.
    Nest,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "planes",
    gated: false,
    strand: Strand::Depth,
    doc: "A staircase of flat planes of random dots, side by side or one inside the other. The question may be their \
          order: then the depths are dealt to the planes by lot.",
    tables: &[&EXERCISE, &DOTS, &PLANES],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON, &[field::VARIANTS]]);

const DOTS: TableSpec = TableSpec {
    name: "dots",
    form: TableForm::Single,
    groups: &[&[field::GROUND, field::CUE], field::KEYS],
    doc: "The field of dots.",
};

const PLANES: TableSpec = TableSpec {
    name: "planes",
    form: TableForm::Single,
    groups: &[&[
        Field::default("form", Takes::Choice(&["row", "nest"]), r#""row""#, "Side by side, or one inside the other."),
        Field::required(
            "depths",
            Takes::List { of: &Takes::Ramp(&Takes::Depth), min: 2, max: 7 },
            "The depth of each plane: from left to right, or from the outside in.",
        ),
        Field::default(
            "question",
            Takes::Choice(&["none", "order"]),
            r#""none""#,
            "`order`: the planes of a `row` have numbers, the depths are dealt to them by lot, and the answer is their \
             order from the nearest to the farthest.",
        ),
    ]],
    doc: "The planes.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "planes"
title = "Steps down to the water"

[dots]
ground = "page"

[planes]
depths = ["600 arcsec toward", "300 arcsec toward", "300 arcsec away", "600 arcsec away"]
"#;

/// Between the edge of the field and the planes, mm: the half-images of a plane stay inside the field.
const RIM: f64 = 9.0;

impl Draws for Planes {
    fn levels(&self) -> Option<u32> {
        self.depths.iter().find_map(Ramp::levels).or(self.ground.levels()).or(self.dots.levels())
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let mut dealt: Vec<Depth> = self.depths.iter().map(|depth| depth.at(rung.level)).collect();
        if self.asks {
            Dice::new(&format!("{}/layer", rung.key)).shuffle(&mut dealt);
        }
        let (figures, numbers) = match self.form {
            PlanesForm::Row => self.row(&dealt),
            PlanesForm::Nest => (self.nest(&dealt), Numbers::default()),
        };
        let features = self.dots.with_figures(rung, self.ground.at(rung.level), figures, &numbers);
        let quiz = self.asks.then(|| quiz(&dealt));
        let effort = Effort::cued(self.dots.cue.at(rung.level));
        Drawn { effort, quiz, ..Drawn::plain(Scene { features }, self.words(rung.tongue)) }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let variants = exercise.get(reader, "variants");
    let variants_place = exercise.place_of(reader, "variants");
    let table = document.table(reader, &DOTS);
    let (dots, ground) = table.map_or((None, None), |mut table| {
        table.check_keys(reader);
        (Dots::read(reader, &table), table.get(reader, "ground"))
    });
    let mut table = document.table(reader, &PLANES)?;
    table.check_keys(reader);
    let form = table.one_of(reader, "form", &[PlanesForm::Row, PlanesForm::Nest]);
    let depths = table.get(reader, "depths");
    let asks = table.one_of(reader, "question", &[false, true]);
    let planes =
        Planes { dots: dots?, ground: ground?, form: form?, depths: depths?, asks: asks?, variants: variants? };
    let place = table.place_of(reader, "depths");
    let asked = planes.check_question(reader, table.place_of(reader, "question"), variants_place);
    (asked & planes.check_depths(reader, place)).then_some(Body::Planes(planes))
}

impl Planes {
    /// Numbers go beside a row alone, and variants need something to vary.
    fn check_question(&self, reader: &mut Reader<'_>, question: Place, variants: Place) -> bool {
        let problem = if self.asks && self.form == PlanesForm::Nest {
            Diagnostic::error(codes::CONFLICT, question, "`question = \"order\"` goes with `form = \"row\"` alone")
                .with_label("a nest has no numbers")
                .with_help("write `form = \"row\"`, or leave out `question`")
        } else if !self.asks && 1 < self.variants {
            let message = format!("`variants` asks for `{}` pages with nothing to vary", self.variants);
            Diagnostic::error(codes::CONFLICT, variants, message)
                .with_label("no question")
                .with_help("write `question = \"order\"`, or leave out `variants`")
        } else {
            return true;
        };
        reader.push(problem);
        false
    }

    /// Where their order is asked for, any two can be told apart on every level.
    fn check_depths(&self, reader: &mut Reader<'_>, place: Place) -> bool {
        let levels = self.levels().unwrap_or(1);
        let apart = |a: &Ramp<Depth>, b: &Ramp<Depth>| {
            (1..=levels).all(|l| depths::compare(&a.at(l), &b.at(l)).is_some_and(|order| order != Ordering::Equal))
        };
        let pairs = (0..self.depths.len()).flat_map(|a| (0..a).map(move |b| (b, a)));
        let alike = pairs.into_iter().find(|&(a, b)| !apart(&self.depths[a], &self.depths[b]));
        let Some((a, b)) = alike.filter(|_| self.asks) else { return true };
        let message =
            format!("planes `{}` and `{}` are the same depth, or which is nearer cannot be told", a + 1, b + 1);
        let problem = Diagnostic::error(codes::CONFLICT, place, message)
            .with_label("their order is asked for")
            .with_help("write all depths in one unit, each of its own");
        reader.push(problem);
        false
    }

    /// Width and height of the part of the field that the planes fill, mm.
    fn inner(&self) -> (f64, f64) {
        let (width, height) = self.dots.extent(u32::from(self.asks));
        (width - 2.0 * RIM, height - 2.0 * RIM)
    }

    fn row(&self, dealt: &[Depth]) -> (Vec<DotFigure>, Numbers) {
        let (width, height) = self.inner();
        let count = dealt.len() as f64;
        let strip = width / count;
        let x = |index: f64| (index - (count - 1.0) / 2.0) * strip;
        let mut numbers = Numbers::default();
        let mut figures = Vec::new();
        for (number, depth) in (1_u32..).zip(dealt) {
            let x = x(f64::from(number - 1));
            figures.push(plane(number, (x, 0.0), (strip, height), depth));
            if self.asks {
                numbers.above.push((x, number.to_string()));
            }
        }
        (figures, numbers)
    }

    fn nest(&self, dealt: &[Depth]) -> Vec<DotFigure> {
        let (width, height) = self.inner();
        let step = width.min(height) / dealt.len() as f64;
        let one = |(number, depth): (u32, &Depth)| {
            let less = step * f64::from(number - 1);
            plane(number, (0.0, 0.0), (width - less, height - less), depth)
        };
        (1_u32..).zip(dealt).map(one).collect()
    }

    /// The words; they are the same on every level and give nothing away.
    fn words(&self, tongue: &Tongue) -> Words {
        let see = match self.form {
            PlanesForm::Row => "planes-see-row",
            PlanesForm::Nest => "planes-see-nest",
        };
        let task = match (self.asks, self.form) {
            (true, _) => "planes-order",
            (false, PlanesForm::Row) => "planes-step-row",
            (false, PlanesForm::Nest) => "planes-step-nest",
        };
        Words {
            goal: tongue.say("planes-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(words::FRAME_STEP),
                tongue.say("planes-wait"),
                tongue.say(task),
                tongue.say(words::REST_STEP),
            ],
            see: words::with_frame(&tongue.tell(see, &[("n", self.depths.len().into())]), tongue),
            one_part: words::one_part(tongue),
        }
    }
}

fn plane(number: u32, (x, y): (f64, f64), (width, height): (f64, f64), depth: &Depth) -> DotFigure {
    let shape = figure::rectangle(width, height);
    let at = At { x: Mm(x), y: Mm(y) };
    figure::flat(format!("plane-{number}"), shape, at, Size::Length(Mm(width.max(height))), depth.clone())
}

/// One question: the numbers of the planes from the nearest to the farthest.
fn quiz(dealt: &[Depth]) -> Quiz {
    let mut order: Vec<(usize, &Depth)> = (1..).zip(dealt).collect();
    order.sort_by(|(_, a), (_, b)| depths::compare(b, a).unwrap_or(Ordering::Equal));
    let answer: Vec<String> = order.iter().map(|(number, _)| number.to_string()).collect();
    let question = Question {
        id: "1".to_owned(),
        choices: Vec::new(),
        answer: answer.join(" "),
        features: (1..=dealt.len()).map(|number| format!("plane-{number}")).collect(),
    };
    Quiz { questions: vec![question], pass: None }
}
