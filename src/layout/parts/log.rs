//! Where the reader writes: one line of the log, and on a page that asks something a box for each answer.

use kurbo::Rect;

use crate::exercise::quiz::Quiz;
use crate::layout::compose::{Composer, Piece, outline_box};
use crate::layout::grid::{BODY, CAPTION, SMALL};
use crate::layout::sheet::{Furniture, Node, Role};

/// Height of a box with its label in its corner, mm.
const BOX: f64 = 8.6;
/// Between two boxes, mm.
const GAP: f64 = 1.2;
/// The narrowest box for an answer, mm: a letter or a figure beside its label. Design choice.
const LEAST: f64 = 7.0;
/// What a box needs besides its letters, mm.
const EDGE: f64 = 3.0;
/// A letter written by hand, mm. Design choice.
const LETTER: f64 = 2.6;
/// Rows of answers at most; where they need more, they belong into the reader's own log.
const MOST_ROWS: usize = 2;

/// What else is noted on a page with questions: its label and the width of its box, mm.
const NOTES: [(&str, f64); 2] = [("Date", 24.0), ("Comfort 0–10", 22.0)];

/// The line of the log, or the boxes for the answers of a page.
pub(super) fn boxes(composer: &mut Composer<'_>, quiz: Option<&Quiz>, width: f64) -> Piece {
    let Some(quiz) = quiz else { return plain_row(composer, width) };
    let ids: Vec<&str> = quiz.questions.iter().map(|question| question.id.as_str()).collect();
    let least = (EDGE + LETTER * longest(quiz) as f64).max(LEAST);
    let notes: f64 = NOTES.iter().map(|(_, width)| width + GAP).sum();
    if ids.len() <= fitting(width - notes, least) {
        let each = share(width - notes, ids.len());
        return labelled(composer, NOTES.into_iter().chain(ids.into_iter().map(|id| (id, each))));
    }
    let mut piece = labelled(composer, NOTES.into_iter());
    let rows = ids.len().div_ceil(fitting(width, least).max(1));
    if MOST_ROWS < rows {
        let line = composer.lines(&line(Some(quiz)), &BODY, width - notes - GAP).role(Role::Paragraph);
        piece.height = piece.height.max(line.height);
        piece.nodes.extend(line.moved(notes + GAP, 0.0).nodes);
        return piece;
    }
    let columns = ids.len().div_ceil(rows);
    for row in ids.chunks(columns) {
        let each = share(width, columns);
        piece.stack(labelled(composer, row.iter().map(|&id| (id, each))), GAP);
    }
    piece
}

/// What a page without boxes says of the log.
pub(super) fn line(quiz: Option<&Quiz>) -> String {
    match quiz.map(|quiz| quiz.questions.as_slice()) {
        Some([first, .., last]) => {
            format!("Write your answers {} to {} in your log, with date and comfort 0–10.", first.id, last.id)
        }
        Some([only]) => format!("Write your answer {} in your log, with date and comfort 0–10.", only.id),
        Some([]) | None => "Log: date, minutes, single, both marks, comfort 0–10.".to_owned(),
    }
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

/// Boxes in a row, each with its label in its upper left corner.
fn labelled<'a>(composer: &mut Composer<'_>, fields: impl Iterator<Item = (&'a str, f64)>) -> Piece {
    let (mut x, mut text, mut boxes) = (0.0, Vec::new(), Vec::new());
    for (label, width) in fields {
        // The blank keeps the labels apart for those who hear the page.
        text.extend(composer.lines(&format!("{label} "), &SMALL, width).moved(x + 0.8, 0.3).nodes);
        boxes.push(outline_box(Rect::from_origin_size((x, 0.0), (width, BOX))));
        x += width + GAP;
    }
    let nodes = vec![Node::Group(Role::Paragraph, text), Node::Group(Role::Artifact(Furniture::Layout), boxes)];
    Piece { height: BOX, nodes }
}

/// One line of the log of a page without questions.
fn plain_row(composer: &mut Composer<'_>, width: f64) -> Piece {
    let fields: [(&str, f64); 5] =
        [("Date", 2.4), ("Minutes", 1.2), ("Single", 0.8), ("Both marks", 0.8), ("Comfort 0–10", 1.2)];
    let labels: Vec<f64> = fields.iter().map(|(label, _)| composer.width_of(label, &CAPTION)).collect();
    let gaps = 1.4 * fields.len() as f64 + 3.0 * (fields.len() - 1) as f64;
    let share = (width - labels.iter().sum::<f64>() - gaps) / fields.iter().map(|(_, share)| share).sum::<f64>();
    let (mut x, mut text, mut boxes) = (0.0, Vec::new(), Vec::new());
    for ((label, weight), label_width) in fields.iter().zip(&labels) {
        // The blank keeps the labels apart for those who hear the page.
        text.extend(composer.lines(&format!("{label} "), &CAPTION, label_width + 1.0).moved(x, 1.4).nodes);
        x += label_width + 1.4;
        boxes.push(outline_box(Rect::from_origin_size((x, 0.2), (weight * share, 6.6))));
        x += weight * share + 3.0;
    }
    let nodes = vec![Node::Group(Role::Paragraph, text), Node::Group(Role::Artifact(Furniture::Layout), boxes)];
    Piece { height: 7.2, nodes }
}
