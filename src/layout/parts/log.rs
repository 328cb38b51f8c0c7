//! Where the reader writes: one line of the log, and on a page that asks something a box for each answer.

use kurbo::Rect;

use crate::exercise::quiz::Quiz;
use crate::layout::compose::{Composer, Piece, outline_box};
use crate::layout::grid::{BODY, CAPTION, SMALL};
use crate::layout::sheet::{Furniture, Node, Role};

/// Height of the line of the log, and of a box with its label in its corner, mm: a page that asks something in one row
/// of boxes has as much room for its words as any other.
const ROW: f64 = 7.2;
/// Between two boxes, mm.
const GAP: f64 = 1.2;
/// The narrowest box for an answer, mm: a letter or a figure beside its label. Design choice.
const LEAST: f64 = 7.0;
/// What a box needs besides its letters, mm.
const EDGE: f64 = 3.0;
/// A letter written by hand, mm. Design choice.
const LETTER: f64 = 2.6;
/// What else is noted on a page with questions: its label and the width of its box, mm.
const NOTES: [(&str, f64); 2] = [("Date", 24.0), ("Comfort 0–10", 22.0)];

/// The line of the log, or the boxes for the answers of a page: wide enough for its longest answer. Where they are
/// higher than the room that the words of the page leave, the answers belong into the reader's own log.
pub(super) fn boxes(composer: &mut Composer<'_>, quiz: Option<&Quiz>, (width, room): (f64, f64)) -> Piece {
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
    if room < ROW + rows as f64 * (GAP + ROW) {
        let line = composer
            .lines(&format!("Write {} in your log.", answers(quiz)), &BODY, width - notes - GAP)
            .role(Role::Paragraph);
        piece.nodes.extend(line.moved(notes + GAP, (ROW - BODY.leading.0) / 2.0).nodes);
        return piece;
    }
    let columns = ids.len().div_ceil(rows);
    for row in ids.chunks(columns) {
        let each = share(width, columns);
        piece.stack(labelled(composer, row.iter().map(|&id| (id, each))), GAP);
    }
    piece
}

/// What a page without boxes says of the log, in one line.
pub(super) fn line(quiz: Option<&Quiz>) -> String {
    match quiz {
        Some(quiz) => format!("Log: date, comfort 0–10, {}.", answers(quiz)),
        None => "Log: date, minutes, single, both marks, comfort 0–10.".to_owned(),
    }
}

/// "your answers 1 to 10"
fn answers(quiz: &Quiz) -> String {
    match quiz.questions.as_slice() {
        [first, .., last] => format!("your answers {} to {}", first.id, last.id),
        _ => "your answer".to_owned(),
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
        boxes.push(outline_box(Rect::from_origin_size((x, 0.0), (width, ROW))));
        x += width + GAP;
    }
    let nodes = vec![Node::Group(Role::Paragraph, text), Node::Group(Role::Artifact(Furniture::Layout), boxes)];
    Piece { height: ROW, nodes }
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
    Piece { height: ROW, nodes }
}
