//! The answer key: on the last sheets of the book, upside down so that nobody reads it by accident, or as a book of its
//! own. It tells what the exercise pages ask, from the same questions, and adds nothing.

use kurbo::Rect;

use crate::exercise::Page;
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::layout::compose::{Column, Composer, Piece, rule, turn};
use crate::layout::grid::{BODY, CAPTION, Grid, SMALL};
use crate::layout::sheet::{Face, Furniture, HeadScope, Node, Role};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft};
use crate::spec::Answers;

use super::{columns, opening};

/// Name of the first sheet; later ones are numbered.
const ID: &str = "answers";
/// Below the answers of a page, mm.
const GAP: f64 = 4.6;
/// Clear space beside an answer, mm.
const PAD: f64 = 2.4;
/// The narrowest cell of a strip, mm.
const LEAST: f64 = 6.6;
/// An answer so long that a strip has fewer cells than this stands on a line of its own.
const FEWEST: usize = 3;
/// Room for the page number beside a title, mm.
const NUMBER: f64 = 20.0;

/// Where an exercise page finds its answers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct KeyAt {
    /// "page 31", "a file apart".
    pub words: String,
    /// Id of the sheet, where it is in the book.
    pub sheet: Option<String>,
}

/// The answers of the pages that ask something, divided into sheets.
#[derive(Debug, Default)]
pub(super) struct Key {
    place: Answers,
    /// For each sheet its two columns.
    sheets: Vec<[Vec<Entry>; 2]>,
}

/// The answers of one page.
#[derive(Debug)]
struct Entry {
    /// Index of the exercise page.
    page: usize,
    piece: Piece,
}

impl Key {
    /// Sets the answers of every page that asks something, and divides them into sheets. Empty where the edition has no
    /// answers.
    pub(super) fn new(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Self {
        let place = book.edition.answers;
        if place == Answers::None {
            return Self { place, sheets: Vec::new() };
        }
        composer.sheet = ID.to_owned();
        let areas = areas(composer, grid, place);
        let mut entries = Vec::new();
        for (index, page) in book.pages.iter().enumerate() {
            if let Some(quiz) = &page.page.quiz {
                entries.push(Entry { page: index, piece: block(composer, page.page, quiz, areas[0].width()) });
            }
        }
        Self { place, sheets: divide(entries, areas[0].height()) }
    }

    /// How many sheets of the book it takes.
    pub(super) fn in_book(&self) -> usize {
        if self.place == Answers::Turned { self.sheets.len() } else { 0 }
    }

    /// Where the answers of an exercise page stand, if it has any; `first` is the number of the first sheet of the key.
    pub(super) fn of_page(&self, page: usize, first: usize) -> Option<KeyAt> {
        let on = |sheet: &[Vec<Entry>; 2]| sheet.iter().flatten().any(|entry| entry.page == page);
        let sheet = self.sheets.iter().position(on)?;
        Some(match self.place {
            Answers::Turned => KeyAt { words: format!("page {}", first + sheet), sheet: Some(id(sheet)) },
            Answers::File | Answers::None => KeyAt { words: "a file apart".to_owned(), sheet: None },
        })
    }

    /// The sheets; `first` is the number of the first exercise page.
    pub(super) fn drafts(self, composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, first: usize) -> Vec<Draft> {
        let place = self.place;
        let sheets = self.sheets.into_iter().enumerate();
        sheets.map(|(index, columns)| sheet(composer, grid, book, (place, index, first), columns)).collect()
    }
}

fn id(sheet: usize) -> String {
    if sheet == 0 { ID.to_owned() } else { format!("{ID}-{}", sheet + 1) }
}

/// The line at the top, which always stands upright.
fn head(place: Answers) -> &'static str {
    if place == Answers::Turned { "Answers: turn the page round." } else { "Answers" }
}

/// The two text columns below the line at the top.
fn areas(composer: &mut Composer<'_>, grid: &Grid, place: Answers) -> [Rect; 2] {
    let (_, top) = opening(composer, grid, head(place), "");
    columns(grid, top)
}

/// Fills columns of this height, two a sheet, in order.
fn divide(entries: Vec<Entry>, height: f64) -> Vec<[Vec<Entry>; 2]> {
    let mut columns: Vec<(f64, Vec<Entry>)> = Vec::new();
    for entry in entries {
        let needs = entry.piece.height;
        match columns.last_mut() {
            Some((used, column)) if *used + GAP + needs <= height => {
                *used += GAP + needs;
                column.push(entry);
            }
            _ => columns.push((needs, vec![entry])),
        }
    }
    let mut columns = columns.into_iter().map(|(_, column)| column);
    let mut sheets = Vec::new();
    while let Some(left) = columns.next() {
        sheets.push([left, columns.next().unwrap_or_default()]);
    }
    sheets
}

fn sheet(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    (place, index, first): (Answers, usize, usize),
    columns: [Vec<Entry>; 2],
) -> Draft {
    composer.sheet = id(index);
    let (mut nodes, _) = opening(composer, grid, head(place), "");
    let areas = areas(composer, grid, place);
    let mut answers = Vec::new();
    for (area, entries) in areas.into_iter().zip(columns) {
        let mut column = Column::new(area);
        for Entry { page, piece } in entries {
            let id = (place == Answers::Turned).then(|| book.pages[page].page.id.clone());
            let piece = numbered(composer, piece, first + page, id, area.width());
            column.add(piece, GAP);
        }
        answers.extend(column.finish(composer));
    }
    if place == Answers::Turned {
        turn(&mut answers, areas[0].union(areas[1]).center());
    }
    nodes.extend(answers);
    Draft {
        id: composer.sheet.clone(),
        title: if index == 0 { "Answers".to_owned() } else { format!("Answers, sheet {}", index + 1) },
        description: "The answers to what the exercise pages ask.".to_owned(),
        outline_level: u8::from(0 < index),
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
}

/// Adds the number of its page to an entry, and the way there where both are in one book.
fn numbered(composer: &mut Composer<'_>, piece: Piece, number: usize, target: Option<String>, width: f64) -> Piece {
    let end = Style { align: Align::End, ..CAPTION };
    let words = format!("page {number} ");
    let line = composer.lines(&words, &end, NUMBER).moved(width - NUMBER, 0.5).role(Role::Paragraph);
    let area = Rect::new(width - NUMBER, 0.0, width, BODY.leading.0);
    let line = match target {
        Some(target) => line.role(Role::Link { target, area, alt: format!("Go to page {number}") }),
        None => line,
    };
    let mut nodes = line.nodes;
    nodes.splice(0..0, piece.nodes);
    Piece { height: piece.height, nodes }
}

/// Title, id and pass mark of a page, and its answers.
fn block(composer: &mut Composer<'_>, page: &Page, quiz: &Quiz, width: f64) -> Piece {
    let bold = Style { face: Face::Bold, ..BODY };
    let mut piece = composer.lines(&page.full_title(), &bold, width - NUMBER).role(Role::Heading(2));
    let facts = match &quiz.pass {
        Some(pass) => format!("{} · {}", page.id, pass_words(pass)),
        None => page.id.clone(),
    };
    piece.stack(composer.lines(&facts, &CAPTION, width).role(Role::Paragraph), 0.0);
    piece.stack(answers(composer, &quiz.questions, width), 0.8);
    piece
}

/// "9 of 12 or more: more than luck".
fn pass_words(pass: &Pass) -> String {
    format!("{} of {} or more: more than luck", pass.right, pass.of)
}

/// Strips of questions with their answers below them; long answers a line each.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a column holds a few cells")]
fn answers(composer: &mut Composer<'_>, questions: &[Question], width: f64) -> Piece {
    let longest = questions.iter().map(|question| composer.width_of(&question.answer, &BODY)).fold(0.0, f64::max);
    let fits = (width / (longest + PAD).max(LEAST)) as usize;
    if fits < FEWEST.min(questions.len()) {
        return lines(composer, questions, width);
    }
    let rows = questions.len().div_ceil(fits.max(1));
    let columns = questions.len().div_ceil(rows.max(1));
    // Cells of one width, wide enough to be calm and no wider than the column allows.
    let cell = (width / columns.max(1) as f64).min((longest + PAD).max(LEAST) * 1.5);
    let mut piece = Piece::default();
    for row in questions.chunks(columns.max(1)) {
        piece.stack(strip(composer, row, cell), if piece.height == 0.0 { 0.0 } else { 2.2 });
    }
    piece
}

/// A table of two rows: questions, and their answers.
fn strip(composer: &mut Composer<'_>, questions: &[Question], cell: f64) -> Piece {
    let (mut heads, mut cells) = (Vec::new(), Vec::new());
    let mut x = 0.0;
    for question in questions {
        let head = composer.lines(&question.id, &SMALL, cell - PAD / 2.0).moved(x, 0.0);
        heads.push(Node::Group(Role::HeadCell(HeadScope::Column), head.nodes));
        let answer = composer.lines(&question.answer, &BODY, cell).moved(x, SMALL.leading.0 + 0.4);
        cells.push(Node::Group(Role::Cell, answer.nodes));
        x += cell;
    }
    let rows = vec![Node::Group(Role::Row, heads), Node::Group(Role::Row, cells)];
    let line = rule(Rect::new(0.0, SMALL.leading.0 + 0.1, x - PAD / 2.0, SMALL.leading.0 + 0.3));
    let nodes = vec![Node::Group(Role::Table, rows), Node::Group(Role::Artifact(Furniture::Layout), vec![line])];
    Piece { height: SMALL.leading.0 + 0.4 + BODY.leading.0, nodes }
}

/// A table with a row for each question.
fn lines(composer: &mut Composer<'_>, questions: &[Question], width: f64) -> Piece {
    let ids = questions.iter().map(|question| composer.width_of(&question.id, &SMALL)).fold(0.0, f64::max);
    let indent = ids + PAD;
    let mut piece = Piece::default();
    for question in questions {
        let id = composer.lines(&question.id, &SMALL, indent).moved(0.0, 0.8);
        let answer = composer.lines(&question.answer, &BODY, width - indent).moved(indent, 0.0);
        let height = answer.height;
        let cells = vec![Node::Group(Role::HeadCell(HeadScope::Row), id.nodes), Node::Group(Role::Cell, answer.nodes)];
        piece.stack(Piece { height, nodes: vec![Node::Group(Role::Row, cells)] }, 0.0);
    }
    piece.role(Role::Table)
}
