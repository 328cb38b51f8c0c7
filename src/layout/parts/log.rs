//! Where the reader writes: one line of the log, and on a page that asks something a box for each answer.

use kurbo::Rect;

use crate::exercise::quiz::Quiz;
use crate::language::Tongue;
use crate::layout::compose::{Composer, Piece, outline_box};
use crate::layout::grid::{BODY, CAPTION, SMALL};
use crate::layout::sheet::{Furniture, Node, Role};
use crate::layout::text::{Align, Style};
use crate::spec::Hand;

/// Height of the line of the log, and of a box with its label in its corner, mm: a page that asks something in one row
/// of boxes has as much room for its words as any other. All lengths are for standard text and grow with it.
const ROW: f64 = 7.2;
/// Between two boxes, mm.
const GAP: f64 = 1.2;
/// The narrowest box for an answer, mm: a letter or a figure beside its label. Design choice.
const LEAST: f64 = 7.0;
/// What a box needs besides its letters, mm.
const EDGE: f64 = 3.0;
/// A letter written by hand, mm, whatever the size of the text. Design choice.
const LETTER: f64 = 2.6;
/// What else is noted on a page with questions: its label and the width of its box, mm.
const NOTES: [(&str, f64); 2] = [("log-date", 24.0), ("log-comfort", 22.0)];
/// From the edge of a box to its label, mm.
const INSET: f64 = 0.8;
/// Room for the blank after a label, mm.
const BLANK: f64 = 1.0;
/// The fields of a page without questions, each with the share of its box in what the labels leave.
const FIELDS: [(&str, f64); 5] =
    [("log-date", 2.4), ("log-minutes", 1.2), ("log-single", 0.8), ("log-marks", 0.8), ("log-comfort", 1.2)];
/// The narrowest box of a share of 1, mm: below it the fields stand in two rows.
const NARROW: f64 = 8.0;

/// The line of the log, or the boxes for the answers of a page: wide enough for its longest answer. Where they are
/// higher than the room that the words of the page leave, the answers belong into the reader's own log.
///
/// For the left hand every label stands at the right of what is written, so that the hand covers none.
pub(super) fn boxes(
    composer: &mut Composer<'_>,
    (quiz, hand): (Option<&Quiz>, Hand),
    (width, room): (f64, f64),
) -> Piece {
    let Some(quiz) = quiz else { return plain(composer, hand, width) };
    let scale = composer.scale();
    let notes = NOTES.map(|(id, width)| {
        let label = composer.say(id);
        let needs = composer.width_of(&label, &SMALL) + 2.0 * INSET + BLANK * scale;
        (label, needs.max(width))
    });
    let beside: f64 = notes.iter().map(|(_, width)| width + GAP).sum();
    let ids: Vec<String> = quiz.questions.iter().map(|question| question.id.clone()).collect();
    let least = (EDGE * scale + LETTER * longest(quiz) as f64).max(LEAST * scale);
    if ids.len() <= fitting(width - beside, least) {
        let each = share(width - beside, ids.len());
        return labelled(composer, hand, notes.into_iter().chain(ids.into_iter().map(|id| (id, each))));
    }
    let mut piece = labelled(composer, hand, notes.into_iter());
    let row = piece.height;
    let rows = ids.len().div_ceil(fitting(width, least).max(1));
    if room < row + rows as f64 * (GAP + row) {
        let line = told(composer.tongue, "log-write", quiz);
        let line = composer.lines(&line, &BODY, width - beside - GAP).role(Role::Paragraph);
        let below = ((row - line.height) / 2.0).max(0.0);
        piece.height = row.max(line.height);
        piece.nodes.extend(line.moved(beside + GAP, below).nodes);
        return piece;
    }
    let columns = ids.len().div_ceil(rows);
    for row in ids.chunks(columns) {
        let each = share(width, columns);
        piece.stack(labelled(composer, hand, row.iter().map(|id| (id.clone(), each))), GAP);
    }
    piece
}

/// The least height that the boxes take, mm.
pub(super) fn least(composer: &mut Composer<'_>, asked: (Option<&Quiz>, Hand), width: f64) -> f64 {
    boxes(composer, asked, (width, 0.0)).height
}

/// What a page without boxes says of the log, in one line.
pub(super) fn line(tongue: &Tongue, quiz: Option<&Quiz>) -> String {
    quiz.map_or_else(|| tongue.say("log-line"), |quiz| told(tongue, "log-line-answers", quiz))
}

/// A message about the answers of a page, with the first and the last of them.
fn told(tongue: &Tongue, id: &str, quiz: &Quiz) -> String {
    let at = |question: Option<&crate::exercise::quiz::Question>| question.map_or("", |q| q.id.as_str()).to_owned();
    let (first, last) = (at(quiz.questions.first()), at(quiz.questions.last()));
    tongue.tell(id, &[("n", quiz.questions.len().into()), ("first", first.into()), ("last", last.into())])
}

/// Letters of the longest answer that may be written.
fn longest(quiz: &Quiz) -> usize {
    let answers = quiz.questions.iter().flat_map(|question| question.choices.iter().chain([&question.answer]));
    answers.map(|answer| answer.chars().count()).max().unwrap_or(0)
}

/// How many boxes of at least this width stand in a row.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a row holds a few dozen boxes")]
fn fitting(room: f64, least: f64) -> usize {
    ((room + GAP) / (least + GAP)).max(0.0) as usize
}

/// The width of each of so many boxes that fill a row.
fn share(room: f64, boxes: usize) -> f64 {
    (room + GAP) / boxes.max(1) as f64 - GAP
}

/// Boxes in a row, each with its label in its upper left corner; for the left hand in the right one.
fn labelled(composer: &mut Composer<'_>, hand: Hand, fields: impl Iterator<Item = (String, f64)>) -> Piece {
    let height = ROW * composer.scale();
    let align = if hand == Hand::Left { Align::End } else { Align::Start };
    let style = Style { align, ..SMALL };
    let (mut x, mut text, mut boxes) = (0.0, Vec::new(), Vec::new());
    for (label, width) in fields {
        // The blank keeps the labels apart for those who hear the page.
        let label = composer.lines(&format!("{label} "), &style, width - 2.0 * INSET);
        text.extend(label.moved(x + INSET, 0.3).nodes);
        boxes.push(outline_box(Rect::from_origin_size((x, 0.0), (width, height))));
        x += width + GAP;
    }
    let nodes = vec![Node::Group(Role::Paragraph, text), Node::Group(Role::Artifact(Furniture::Layout), boxes)];
    Piece { height, nodes }
}

/// The log of a page without questions: one line, or two where the labels leave no room for the boxes.
fn plain(composer: &mut Composer<'_>, hand: Hand, width: f64) -> Piece {
    let fields = FIELDS.map(|(id, share)| {
        let label = composer.say(id);
        let needs = composer.width_of(&label, &CAPTION);
        Field { label, needs, share }
    });
    if NARROW <= unit(&fields, width) {
        return row(composer, hand, &fields, width);
    }
    let (first, second) = fields.split_at(2);
    let mut piece = row(composer, hand, first, width);
    piece.stack(row(composer, hand, second, width), GAP);
    piece
}

/// A field of the log: its label, the width of that, and its share of the room for boxes.
struct Field {
    label: String,
    needs: f64,
    share: f64,
}

/// Between a label and its box, and between two fields, mm.
const BESIDE: f64 = 1.4;
const BETWEEN: f64 = 3.0;

/// The width of a box of a share of 1 in a row of these fields.
fn unit(fields: &[Field], width: f64) -> f64 {
    let gaps = BESIDE * fields.len() as f64 + BETWEEN * (fields.len() - 1) as f64;
    let labels: f64 = fields.iter().map(|field| field.needs).sum();
    (width - labels - gaps) / fields.iter().map(|field| field.share).sum::<f64>()
}

fn row(composer: &mut Composer<'_>, hand: Hand, fields: &[Field], width: f64) -> Piece {
    let unit = unit(fields, width);
    let height = ROW * composer.scale();
    let (mut x, mut text, mut boxes) = (0.0, Vec::new(), Vec::new());
    for Field { label, needs, share } in fields {
        let own = unit * share;
        let (label_x, box_x) = if hand == Hand::Left { (x + own + BESIDE, x) } else { (x, x + needs + BESIDE) };
        // The blank keeps the labels apart for those who hear the page; it takes no line of its own.
        let label = composer.lines(&format!("{label} "), &CAPTION, width);
        let below = (height - label.height) / 2.0;
        text.extend(label.moved(label_x, below).nodes);
        boxes.push(outline_box(Rect::from_origin_size((box_x, 0.2), (own, height - 0.6))));
        x += needs + BESIDE + own + BETWEEN;
    }
    let nodes = vec![Node::Group(Role::Paragraph, text), Node::Group(Role::Artifact(Furniture::Layout), boxes)];
    Piece { height, nodes }
}
