//! What the choice pages share: their keys, the grid of items with numbers and letters, the draws of answers, and
//! shapes whose sideways place does not tell one eye alone how deep they stand.
//!
//! Depths are counted in steps of one depth, half a step off the page, so that no shape lies flat on it: a flat shape is
//! one dark mark, and a colour, a ghost or a shifted print would then tell it from the others. Letters and numbers lie
//! on the page at fixed places.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Shape, Side, Size};
use crate::spec::field::{Field, Takes, mm};
use crate::spec::read::{Placed, Word};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, plain};

use crate::exercise::quiz::Pass;
use crate::exercise::ramp::Ramp;
use crate::exercise::words;

/// Width and height of the art field, mm.
const FIELD: (f64, f64) = (180.0, 120.0);
/// Between the two middle columns, mm: room for the watch marks.
const MIDDLE: f64 = 9.0;
/// Height of the number of an item and of a letter below a shape, mm.
const NUMBER: f64 = 4.0;
const LETTER: f64 = 3.0;
/// Width kept for the number at the left of an item, mm.
const NUMBER_ROOM: f64 = 9.0;
/// Clear height that a row of shapes needs beside the shapes: letters, and space to the next row, mm.
const ROW_ROOM: f64 = 8.0;
/// Clear width that a shape needs beside itself, mm.
const SHAPE_ROOM: f64 = 4.0;
/// Width of a watch mark and the distance of each from the middle, mm.
const MARK: f64 = 4.2;
const MARK_AT: f64 = 5.0;

/// The keys that all choice pages share.
pub(super) const LOOK: &[Field] = &[
    Field::required(
        "step",
        Takes::Ramp(&Takes::Depth),
        "From one depth to the next of an item; in a `side`: from the post to the shape. What stands nearer is drawn by \
         lot, whichever side is written; where a shape would lie on the page, its item leans to the written side by half \
         a step.",
    ),
    Field::default("shape", Takes::Choice(&SHAPES), r#""ring""#, "The outline of all shapes. A `disc` is solid."),
    Field::default("size", Takes::Length(mm(4.0, 30.0)), r#""11 mm""#, "The longer side of a shape."),
    Field::default("weight", Takes::Length(mm(0.4, 3.0)), r#""1.2 mm""#, "Width of its lines."),
    VARIANTS,
];

/// How many seeded variants there are of each page.
pub(super) const VARIANTS: Field = Field::default(
    "variants",
    Takes::Count { min: 1, max: 26 },
    "1",
    "How many pages of each level there are, A, B and so on: the same task with other answers.",
);

const SHAPES: [&str; 6] = ["ring", "disc", "square", "diamond", "triangle", "star"];

/// How the shapes of a choice page look, and how deep they stand.
#[derive(Debug, Clone, PartialEq)]
pub struct Look {
    /// Between neighbouring depths of an item.
    pub step: Ramp<Depth>,
    /// The outline of all shapes.
    pub shape: Shape,
    /// The longer side of a shape.
    pub size: Mm,
    /// Width of its lines.
    pub weight: Mm,
    /// How many variants each level has.
    pub variants: u32,
    /// Where the step is written.
    pub place: Place,
}

/// Reads the keys of [`LOOK`]; a shape that finds no room on `board` beside as many others is a problem.
pub(super) fn read_look(reader: &mut Reader<'_>, table: &Table<'_>, board: Option<(Board, u32)>) -> Option<Look> {
    let step = read_step(reader, table);
    let shape: Option<Word> = table.get(reader, "shape");
    let size: Option<Placed<Mm>> = table.get(reader, "size");
    let (weight, variants) = (table.get(reader, "weight"), table.get(reader, "variants"));
    let outlines = [Shape::Ring, Shape::Disc, Shape::Square, Shape::Diamond, Shape::Triangle, Shape::Star];
    let shape = shape.and_then(|Word(number)| outlines.into_iter().nth(number));
    let size = size?;
    let fits = board.is_none_or(|(board, shapes)| has_room(reader, &size, board, shapes));
    let look = Look {
        step: step?,
        shape: shape?,
        size: size.value,
        weight: weight?,
        variants: variants?,
        place: table.place_of(reader, "step"),
    };
    fits.then_some(look)
}

/// Reads `step`: on every level off the page, and on the same side.
pub(super) fn read_step(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Ramp<Depth>> {
    let step: Ramp<Depth> = table.get(reader, "step")?;
    let sides = || (1..=step.levels().unwrap_or(1)).map(|level| (level, step.at(level).side()));
    let first = step.at(1).side();
    let (message, label) = if let Some((level, _)) = sides().find(|(_, side)| side.is_none()) {
        (format!("`step` is zero on level `{level}`: between two depths there is a step"), "no step")
    } else if let Some((level, _)) = sides().find(|(_, side)| *side != first) {
        (format!("`step` changes sides on level `{level}`: it keeps the side of the first"), "changes sides")
    } else {
        return Some(step);
    };
    let problem = Diagnostic::error(codes::DEPTH, table.place_of(reader, "step"), message)
        .with_label(label)
        .with_help("write for example `\"800 arcsec toward\"`; which shape stands nearer is drawn by lot in any case");
    reader.push(problem);
    None
}

fn has_room(reader: &mut Reader<'_>, size: &Placed<Mm>, board: Board, shapes: u32) -> bool {
    let most = board.largest(shapes);
    if size.value.0 <= most {
        return true;
    }
    let message = format!(
        "`size` is `{} mm`: {} items of {shapes} shapes leave room for at most `{} mm`",
        plain(size.value.0, 3),
        board.items,
        plain(most, 1),
    );
    let problem = Diagnostic::error(codes::RANGE, size.place, message)
        .with_label(format!("limit {} mm", plain(most, 1)))
        .with_help("make the shapes smaller, or ask fewer questions");
    reader.push(problem);
    false
}

/// A grid of items on the art field, row by row from the top left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Board {
    items: u32,
    columns: u32,
}

impl Board {
    /// A grid of so many items in so many columns, both at least 1.
    pub(super) fn new(items: u32, columns: u32) -> Self {
        Self { items, columns: columns.max(1) }
    }

    fn rows(self) -> u32 {
        self.items.div_ceil(self.columns).max(1)
    }

    /// Width and height of an item, mm.
    pub(super) fn cell(self) -> (f64, f64) {
        ((FIELD.0 - MIDDLE) / f64::from(self.columns), FIELD.1 / f64::from(self.rows()))
    }

    /// The left edge and the middle height of an item, counted from 0.
    pub(super) fn corner(self, item: u32) -> (f64, f64) {
        let (width, height) = self.cell();
        let (column, row) = (item % self.columns, item / self.columns);
        // An odd number of columns has no gap in the middle: half of it lies on each side.
        let gap = match (2 * column).cmp(&self.columns) {
            _ if self.columns % 2 == 1 => MIDDLE / 2.0,
            std::cmp::Ordering::Less => 0.0,
            _ => MIDDLE,
        };
        (f64::from(column) * width + gap - FIELD.0 / 2.0, (f64::from(row) + 0.5) * height - FIELD.1 / 2.0)
    }

    /// Between the middles of `shapes` shapes in a row, mm.
    pub(super) fn pitch(self, shapes: u32) -> f64 {
        (self.cell().0 - NUMBER_ROOM) / f64::from(shapes.max(1))
    }

    /// The middle of a shape in the row of an item; both are counted from 0.
    pub(super) fn slot(self, item: u32, shape: u32, shapes: u32) -> At {
        let (left, middle) = self.corner(item);
        at(left + NUMBER_ROOM + (f64::from(shape) + 0.5) * self.pitch(shapes), middle - LETTER)
    }

    /// How far a half-image may lie from its place in a row without touching the room of the next, mm.
    pub(super) fn free(self, shapes: u32, size: f64) -> f64 {
        (self.pitch(shapes) - size - 1.0) / 2.0
    }

    /// The largest shape that `shapes` in a row leave room for, mm, in whole tenths.
    pub(super) fn largest(self, shapes: u32) -> f64 {
        let most = (self.pitch(shapes) - SHAPE_ROOM).min(self.cell().1 - ROW_ROOM);
        (most * 10.0).floor() / 10.0
    }

    /// The number of an item, counted from 0, at the height of its shapes.
    pub(super) fn number(self, item: u32, y: f64) -> Feature {
        let (left, middle) = self.corner(item);
        let number = (item + 1).to_string();
        label(format!("{number}-number"), &number, NUMBER, at(left + NUMBER_ROOM / 2.0 - 1.0, middle + y))
    }

    /// The letter below a shape in the row of an item, at its fixed place.
    pub(super) fn letter(self, item: u32, shape: u32, shapes: u32, size: Mm) -> Feature {
        let slot = self.slot(item, shape, shapes);
        let below = at(slot.x.0, slot.y.0 + size.0 / 2.0 + 1.8 + LETTER / 2.0);
        label(format!("{}-letter", shape_id(item, shape)), &letter(shape), LETTER, below)
    }
}

/// The letter of a shape, counted from 0.
pub(super) fn letter(shape: u32) -> String {
    char::from_u32(u32::from('A') + shape).map(String::from).unwrap_or_default()
}

/// The id of a shape of an item, both counted from 0: "3-b".
pub(super) fn shape_id(item: u32, shape: u32) -> String {
    format!("{}-{}", item + 1, letter(shape).to_lowercase())
}

/// A place in the art field, mm.
pub(super) fn at(x: f64, y: f64) -> At {
    At { x: Mm(x), y: Mm(y) }
}

/// A letter or number on the page.
pub(super) fn label(id: String, text: &str, height: f64, at: At) -> Feature {
    let shape = Shape::Text(text.to_owned());
    let form = Form::Shape { shape, at, size: Size::Length(Mm(height)), weight: Mm(height), depth: Depth::Page };
    feature(id, Role::Number, Eyes::Both, form)
}

/// A feature without companions that hides nothing.
pub(super) fn feature(id: String, role: Role, eyes: Eyes, form: Form) -> Feature {
    Feature {
        id,
        role,
        eyes,
        form,
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    }
}

/// The watch marks in the middle of the page: a bar for the left eye alone above a wedge for the right eye alone.
pub(super) fn watch_marks() -> [Feature; 2] {
    let mark = |id: &str, eyes, shape, y| {
        let form =
            Form::Shape { shape, at: at(0.0, y), size: Size::Length(Mm(MARK)), weight: Mm(MARK), depth: Depth::Page };
        feature(id.to_owned(), Role::Watch, eyes, form)
    };
    [mark("middle-bar", Eyes::Left, Shape::Bar, -MARK_AT), mark("middle-wedge", Eyes::Right, Shape::Wedge, MARK_AT)]
}

/// So many steps toward the written side, or away from it below 0.
pub(super) fn steps(step: &Depth, count: f64) -> Depth {
    Depth::Times(Box::new(step.clone()), count)
}

/// A shape `deep` steps deep, moved aside by half the parallax of `aside` steps.
pub(super) fn shape(look: &Look, step: &Depth, id: String, place: At, (deep, aside): (f64, f64)) -> Feature {
    let form = Form::Shape {
        shape: look.shape.clone(),
        at: place,
        size: Size::Length(look.size),
        weight: look.weight,
        depth: steps(step, deep),
    };
    let form = Form::Aside { form: Box::new(form), by: steps(step, aside) };
    Feature { place: Some(look.place), ..feature(id, Role::Target, Eyes::Both, form) }
}

/// The answers of a page, each a number below `choices`: each as often as the count allows, in a drawn order. Which
/// ones come once more than others is drawn too, so that each answer of each question is as likely as any other.
pub(super) fn balanced(dice: &mut Dice, questions: u32, choices: u32) -> Vec<u32> {
    let mut names: Vec<u32> = (0..choices).collect();
    dice.shuffle(&mut names);
    let mut answers: Vec<u32> = names.into_iter().cycle().take(questions as usize).collect();
    dice.shuffle(&mut answers);
    answers
}

/// Draws how far something is moved aside: mm, and steps whose half parallax takes some of it back.
///
/// Together evenly anywhere between -(free - h) and free - h, where h is half the parallax of `most` steps: then a
/// half-image of anything at most that deep stays within `free` mm of its place. What is drawn so tells one eye little
/// of its depth: two depths whose half parallaxes differ by d are told apart by one eye with a chance of at most
/// 1/2 + d / (4 (free - h)). Source: derived; the two even distributions overlap but for d of 2 (free - h).
pub(super) fn spread(dice: &mut Dice, step: &Depth, free: f64, most: f64) -> (f64, f64) {
    let share = swing(dice);
    // The half parallax of a depth toward moves to the left.
    let back = if step.side() == Some(Side::Toward) { most } else { -most };
    (free * share, back * share)
}

/// A drawn number from -1 to 1.
pub(super) fn swing(dice: &mut Dice) -> f64 {
    2.0 * dice.unit() - 1.0
}

/// -1 or 1, each as likely.
pub(super) fn sign(dice: &mut Dice) -> f64 {
    if dice.below(2) == 0 { -1.0 } else { 1.0 }
}

/// What it means when one eye's part is missing, on a page of questions.
pub(super) fn one_part(tongue: &Tongue) -> Vec<(String, String)> {
    words::one_part(true, tongue)
}

/// The first step of every choice page, and that for the eyes' rest.
pub(super) const CHECK: &str = "choice-check";
pub(super) const REST: &str = "choice-rest";

/// What should be seen on a choice page, and what the page is not.
pub(super) fn see(see: &str, tongue: &Tongue) -> String {
    format!("{see} {}", tongue.say("choice-no-test"))
}

/// What the pass mark means.
pub(super) fn score_step(pass: &Pass, tongue: &Tongue) -> String {
    tongue.tell("choice-score", &[("right", pass.right.into()), ("of", pass.of.into())])
}
