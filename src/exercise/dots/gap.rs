//! `gap`: open rings that two eyes together see in a field of random dots; the question is where each is open.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, codes};
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::exercise::ramp::Ramp;
use crate::exercise::words::Words;
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};
use crate::language::Tongue;
use crate::scene::{At, Depth, Direction, Effort, Scene, Shape, Size, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, deg, mm};
use crate::spec::read::Word;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, plain};

use super::field::{self, Dots, Numbers};
use super::{figure, words};

/// The parameters of a `gap` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// The field.
    pub dots: Dots,
    /// The depth of the ground.
    pub ground: Ramp<Depth>,
    /// How many rings: 1, 2, 4, 6 or 8.
    pub rings: u32,
    /// Their outer diameter.
    pub size: Ramp<Size>,
    /// How deep they stand.
    pub depth: Ramp<Depth>,
    /// Where they are open, one for each ring; without it, by lot.
    pub gaps: Option<Vec<Direction>>,
    /// How many variants.
    pub variants: u32,
    /// How many right answers are more than luck; few rings have no such number.
    pub pass: Option<Pass>,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "gap",
    gated: false,
    strand: Strand::Depth,
    doc: "Rings with a gap towards one side stand in a field of random dots, in the proportions of ISO 8596: line and \
          gap are a fifth of the diameter. The question is where each ring is open; the gaps are drawn by lot, each side \
          as often as the number of rings allows.",
    tables: &[&EXERCISE, &DOTS, &RING],
    read,
    example: EXAMPLE,
};

const COUNTS: &[&str] = &["1", "2", "4", "6", "8"];

const EXERCISE: TableSpec = exercise_table(&[COMMON, &[field::VARIANTS]]);

const DOTS: TableSpec = TableSpec {
    name: "dots",
    form: TableForm::Single,
    groups: &[&[field::GROUND, field::CUE], field::KEYS],
    doc: "The field of dots.",
};

const SIDES: Takes = Takes::Choice(&["up", "right", "down", "left"]);

const RING: TableSpec = TableSpec {
    name: "ring",
    form: TableForm::Single,
    groups: &[&[
        Field::default("count", Takes::Choice(COUNTS), r#""1""#, "How many rings, in one row or two."),
        Field::required(
            "size",
            Takes::Ramp(&Takes::Size { length: mm(10.0, 100.0), angle: deg(1.0, 14.0) }),
            "The outer diameter.",
        ),
        Field::required("depth", Takes::Ramp(&Takes::Depth), "How deep the rings stand."),
        Field::optional(
            "gaps",
            Takes::List { of: &SIDES, min: 1, max: 8 },
            "Where each ring is open, row by row. Left out: by lot.",
        ),
    ]],
    doc: "The rings.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "gap"
title = "Open life rings"

[dots]
ground = "page"

[ring]
count = "4"
size = "34 mm"
depth = "500 arcsec toward"
"#;

impl Draws for Gap {
    fn levels(&self) -> Option<u32> {
        self.depth.levels().or(self.size.levels()).or(self.ground.levels()).or(self.dots.levels())
    }

    fn variants(&self) -> u32 {
        self.variants
    }

    fn is_seeded(&self) -> bool {
        true
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        let gaps =
            self.gaps.clone().unwrap_or_else(|| deal(self.rings, &mut Dice::new(&format!("{}/layer", rung.key))));
        let (size, depth) = (self.size.at(rung.level), self.depth.at(rung.level));
        let (places, numbers) = self.places();
        let figures = (1..)
            .zip(gaps.iter().zip(places))
            .map(|(n, (side, at))| figure::flat(format!("ring-{n}"), Shape::OpenRing(*side), at, size, depth.clone()));
        let features = self.dots.with_figures(rung, self.ground.at(rung.level), figures.collect(), &numbers);
        let effort = Effort::cued(self.dots.cue.at(rung.level));
        let quiz = Some(Quiz { questions: questions(&gaps, rung.tongue), pass: self.pass });
        Drawn { effort, quiz, ..Drawn::plain(Scene { features }, self.words(rung.tongue)) }
    }
}

/// As many gaps as rings, each side as often as can be; which sides come once more, and their order, by lot.
fn deal(rings: u32, dice: &mut Dice) -> Vec<Direction> {
    let mut sides = Direction::ALL;
    dice.shuffle(&mut sides);
    let mut gaps: Vec<Direction> = sides.into_iter().cycle().take(rings as usize).collect();
    dice.shuffle(&mut gaps);
    gaps
}

fn questions(gaps: &[Direction], tongue: &Tongue) -> Vec<Question> {
    let question = |(number, side): (u32, &Direction)| Question {
        id: number.to_string(),
        choices: words::ways(tongue),
        answer: words::way(*side, tongue),
        features: vec![format!("ring-{number}")],
    };
    (1..).zip(gaps).map(question).collect()
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let variants = exercise.get(reader, "variants");
    let table = document.table(reader, &DOTS);
    let (dots, ground) = table.map_or((None, None), |mut table| {
        table.check_keys(reader);
        (Dots::read(reader, &table), table.get(reader, "ground"))
    });
    let mut table = document.table(reader, &RING)?;
    table.check_keys(reader);
    let rings = table.one_of(reader, "count", &[1, 2, 4, 6, 8]);
    let (size, depth) = (table.get(reader, "size"), table.get(reader, "depth"));
    let gaps: Option<Option<Vec<Word>>> = table.maybe(reader, "gaps");
    let side = |Word(number): &Word| Direction::ALL.into_iter().nth(*number);
    let gaps = gaps?.map(|words| words.iter().filter_map(side).collect());
    // Luck passes pages of fewer rings too often: they have no mark.
    let pass = match rings? {
        many if MARKED <= many => Some(Pass::of(reader, table.place_of(reader, "count"), many, 4)?),
        _ => None,
    };
    let gap = Gap {
        dots: dots?,
        ground: ground?,
        rings: rings?,
        size: size?,
        depth: depth?,
        gaps,
        variants: variants?,
        pass,
    };
    (gap.check_gaps(reader, &table) & gap.check_room(reader, &table)).then_some(Body::Gap(gap))
}

impl Gap {
    /// Given gaps are as many as the rings, and leave nothing to vary.
    fn check_gaps(&self, reader: &mut Reader<'_>, table: &Table<'_>) -> bool {
        let Some(gaps) = &self.gaps else { return true };
        let place = table.place_of(reader, "gaps");
        let problem = if gaps.len() != self.rings as usize {
            let message = format!("`gaps` has {} entries for {} rings", gaps.len(), self.rings);
            Diagnostic::error(codes::LIST, place, message)
                .with_label(format!("{} entries", gaps.len()))
                .with_help("give one side for each ring, or leave out `gaps` and let the lot decide")
        } else if 1 < self.variants {
            let message = format!("`gaps` gives all {} variants the same answers", self.variants);
            Diagnostic::error(codes::CONFLICT, place, message)
                .with_label("beside `variants`")
                .with_help("leave out `gaps`, or leave out `variants`")
        } else {
            return true;
        };
        reader.push(problem);
        false
    }

    /// Rings of a written length have room beside one another.
    fn check_room(&self, reader: &mut Reader<'_>, table: &Table<'_>) -> bool {
        let room = self.cell().0.min(self.cell().1) - ROOM;
        let length = |level: u32| match self.size.at(level) {
            Size::Length(Mm(length)) => length,
            Size::Angle(_) => 0.0,
        };
        let largest = (1..=self.size.levels().unwrap_or(1)).map(length).fold(0.0, f64::max);
        if largest <= room {
            return true;
        }
        let message = format!(
            "`{}` rings of `{} mm` do not fit into the field: each has room for `{} mm`",
            self.rings,
            plain(largest, 2),
            plain(room, 2)
        );
        let problem = Diagnostic::error(codes::RANGE, table.place_of(reader, "size"), message)
            .with_label("too large")
            .with_help("ask for smaller or fewer rings, or for a larger field");
        reader.push(problem);
        false
    }

    /// Columns and rows of the page.
    fn grid(&self) -> (u32, u32) {
        match self.rings {
            1 => (1, 1),
            2 => (2, 1),
            many => (many / 2, 2),
        }
    }

    /// Width and height of the part of the field that each ring has, mm.
    fn cell(&self) -> (f64, f64) {
        let (columns, rows) = self.grid();
        let (width, height) = self.dots.extent(u32::from(1 < self.rings));
        (width / f64::from(columns), height / f64::from(rows))
    }

    /// The middle of each ring, row by row, and the numbers beside the field; a ring alone has none.
    fn places(&self) -> (Vec<At>, Numbers) {
        let (columns, rows) = self.grid();
        let (width, height) = self.cell();
        let middle = |index: u32, count: u32, pitch: f64| (f64::from(index) - f64::from(count - 1) / 2.0) * pitch;
        let x = |column: u32| middle(column, columns, width);
        let place = |row: u32, column: u32| At { x: Mm(x(column)), y: Mm(middle(row, rows, height)) };
        let places = (0..rows).flat_map(|row| (0..columns).map(move |column| place(row, column))).collect();
        let numbers = |first: u32| (0..columns).map(|column| (x(column), (first + column).to_string())).collect();
        let numbers = match (self.rings, rows) {
            (1, _) => Numbers::default(),
            (_, 1) => Numbers { above: numbers(1), below: Vec::new() },
            _ => Numbers { above: numbers(1), below: numbers(1 + columns) },
        };
        (places, numbers)
    }

    /// The words; they are the same on every level and give nothing away.
    fn words(&self, tongue: &Tongue) -> Words {
        let of_rings = |id: &str| tongue.tell(id, &[("n", self.rings.into())]);
        Words {
            goal: of_rings("gap-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say(words::FRAME_STEP),
                of_rings("gap-wait"),
                of_rings("gap-write"),
                tongue.say(words::REST_STEP),
            ],
            see: words::with_frame(&of_rings("gap-see"), tongue),
            one_part: words::one_part(tongue),
        }
    }
}

/// The fewest rings with a pass mark: the least that [`Pass::of`] takes with four choices.
const MARKED: u32 = 6;
/// Clear space that a ring needs in its part of the field, mm: its half-images move apart, and each ring stays by itself.
const ROOM: f64 = 6.0;
