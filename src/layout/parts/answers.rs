//! The answer key: on the last sheets of the book, upside down so that nobody reads it by accident, or as a book of its
//! own. It tells what the exercise pages ask, from the same questions, and adds nothing.

use kurbo::Rect;

use crate::exercise::Page;
use crate::exercise::quiz::{Pass, Question, Quiz};
use crate::language::Tongue;
use crate::layout::compose::{Column, Composer, Piece, rule, turn};
use crate::layout::grid::{BODY, CAPTION, Grid, SMALL};
use crate::layout::sheet::{Face, Furniture, HeadScope, Node, Role};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft};
use crate::spec::Answers;

use super::back::{sheet, sheet_id};
use super::{contents, opening, text_columns, words};

/// Name of the first sheet; later ones are numbered.
pub(super) const ID: &str = "answers";
/// Below the answers of a page, mm.
const GAP: f64 = 4.6;
/// Clear space beside an answer, mm.
const PAD: f64 = 2.4;
/// The narrowest cell of a strip, mm.
const LEAST: f64 = 6.6;
/// An answer so long that a strip has fewer cells than this stands on a line of its own.
const FEWEST: usize = 3;
/// The least room for the page number beside a title, mm.
const NUMBER: f64 = 20.0;
/// A page number as wide as they come.
const WIDE: usize = 888;

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
    /// For each sheet its columns.
    sheets: Vec<Vec<Vec<Entry>>>,
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
        let columns = divide(entries, areas[0].height());
        let mut columns = columns.into_iter().peekable();
        let mut sheets = Vec::new();
        while columns.peek().is_some() {
            sheets.push(columns.by_ref().take(areas.len()).collect());
        }
        Self { place, sheets }
    }

    /// How many sheets of the book it takes.
    pub(super) fn in_book(&self) -> usize {
        if self.place == Answers::Turned { self.sheets.len() } else { 0 }
    }

    /// Where the answers of an exercise page stand, if it has any; `first` is the number of the first sheet of the key.
    pub(super) fn of_page(&self, tongue: &Tongue, page: usize, first: usize) -> Option<KeyAt> {
        let on = |sheet: &[Vec<Entry>]| sheet.iter().flatten().any(|entry| entry.page == page);
        let sheet = self.sheets.iter().position(|sheet| on(sheet))?;
        Some(match self.place {
            Answers::Turned => KeyAt { words: page_words(tongue, first + sheet), sheet: Some(sheet_id(ID, sheet)) },
            Answers::File | Answers::None => KeyAt { words: tongue.say("page-key-apart"), sheet: None },
        })
    }

    /// The entry of the contents, where it is in the book.
    pub(super) fn entry(&self, tongue: &Tongue) -> Option<contents::Entry> {
        let entry = || contents::Entry { id: ID.to_owned(), title: tongue.say("answers-title"), inside: false };
        (0 < self.in_book()).then(entry)
    }

    /// The sheets; the composer knows the numbers of the exercise pages.
    pub(super) fn drafts(self, composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
        let place = self.place;
        let sheets = self.sheets.into_iter().enumerate();
        sheets.map(|(index, columns)| draft(composer, grid, book, (place, index), columns)).collect()
    }
}

/// "page 31"
fn page_words(tongue: &Tongue, number: usize) -> String {
    tongue.tell("page-number", &[("n", number.to_string().into())])
}

/// The line at the top, which always stands upright.
fn head(composer: &Composer<'_>, place: Answers) -> String {
    composer.say(if place == Answers::Turned { "answers-turn" } else { "answers-title" })
}

/// The text columns below the line at the top.
fn areas(composer: &mut Composer<'_>, grid: &Grid, place: Answers) -> Vec<Rect> {
    let head = head(composer, place);
    let (_, top) = opening(composer, grid, &head, "");
    text_columns(composer, grid, top)
}

/// Fills columns of this height, in order.
fn divide(entries: Vec<Entry>, height: f64) -> Vec<Vec<Entry>> {
    let mut columns: Vec<Vec<Entry>> = Vec::new();
    let mut used = 0.0;
    for entry in entries {
        used += GAP + entry.piece.height;
        match columns.last_mut() {
            Some(column) if used <= height => column.push(entry),
            _ => {
                used = entry.piece.height;
                columns.push(vec![entry]);
            }
        }
    }
    columns
}

fn draft(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    (place, index): (Answers, usize),
    columns: Vec<Vec<Entry>>,
) -> Draft {
    composer.sheet = sheet_id(ID, index);
    let head = head(composer, place);
    let (mut nodes, _) = opening(composer, grid, &head, "");
    let areas = areas(composer, grid, place);
    let mut answers = Vec::new();
    for (area, entries) in areas.iter().zip(columns) {
        let mut column = Column::new(*area);
        for Entry { page, piece } in entries {
            let id = (place == Answers::Turned).then(|| book.pages[page].page.id.clone());
            let number = composer.numbers.get(page).copied().unwrap_or_default();
            let piece = numbered(composer, piece, number, id, area.width());
            column.add(piece, GAP);
        }
        answers.extend(column.finish(composer));
    }
    if place == Answers::Turned {
        let whole = areas.iter().copied().reduce(|all, area| all.union(area)).unwrap_or_default();
        turn(&mut answers, whole.center());
    }
    nodes.extend(answers);
    let (title, description) = (composer.say("answers-title"), composer.say("answers-description"));
    sheet(composer, ID, (&title, &description), index, nodes)
}

/// Room for the page number beside a title, mm.
fn number_room(composer: &mut Composer<'_>) -> f64 {
    let widest = page_words(composer.tongue, WIDE);
    (composer.width_of(&widest, &CAPTION) + 2.0).max(NUMBER)
}

/// Adds the number of its page to an entry, and the way there where both are in one book.
fn numbered(composer: &mut Composer<'_>, piece: Piece, number: usize, target: Option<String>, width: f64) -> Piece {
    let end = Style { align: Align::End, ..CAPTION };
    let words = page_words(composer.tongue, number);
    let room = number_room(composer);
    let below = (composer.leading(&BODY) - composer.leading(&CAPTION)) * 0.6;
    let line = composer.lines(&format!("{words} "), &end, room).moved(width - room, below).role(Role::Paragraph);
    let area = Rect::new(width - room, 0.0, width, composer.leading(&BODY));
    let line = match target {
        Some(target) => {
            let alt = composer.tell("page-go-to", &[("page", number.to_string().into())]);
            line.role(Role::Link { target, area, alt })
        }
        None => line,
    };
    let mut nodes = line.nodes;
    nodes.splice(0..0, piece.nodes);
    Piece { height: piece.height, nodes }
}

/// Title, id and pass mark of a page, and its answers.
fn block(composer: &mut Composer<'_>, page: &Page, quiz: &Quiz, width: f64) -> Piece {
    let bold = Style { face: Face::Bold, ..BODY };
    let title = words::full_title(composer.tongue, page);
    let room = number_room(composer);
    let mut piece = composer.lines(&title, &bold, width - room).role(Role::Heading(2));
    let facts = match &quiz.pass {
        Some(pass) => format!("{} · {}", page.id, pass_words(composer.tongue, pass)),
        None => page.id.clone(),
    };
    piece.stack(composer.lines(&facts, &CAPTION, width).role(Role::Paragraph), 0.0);
    piece.stack(answers(composer, &quiz.questions, width), 0.8);
    piece
}

/// "9 of 12 or more: more than luck".
fn pass_words(tongue: &Tongue, pass: &Pass) -> String {
    tongue.tell("answers-pass", &[("right", pass.right.to_string().into()), ("of", pass.of.to_string().into())])
}

/// Strips of questions with their answers below them; long answers a line each.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a column holds a few cells")]
fn answers(composer: &mut Composer<'_>, questions: &[Question], width: f64) -> Piece {
    let longest = questions.iter().map(|question| composer.width_of(&question.answer, &BODY)).fold(0.0, f64::max);
    let least = (longest + PAD).max(LEAST * composer.scale());
    let fits = (width / least) as usize;
    if fits < FEWEST.min(questions.len()) {
        return lines(composer, questions, width);
    }
    let rows = questions.len().div_ceil(fits.max(1));
    let columns = questions.len().div_ceil(rows.max(1));
    // Cells of one width, wide enough to be calm and no wider than the column allows.
    let cell = (width / columns.max(1) as f64).min(least * 1.5);
    let mut piece = Piece::default();
    for row in questions.chunks(columns.max(1)) {
        piece.stack(strip(composer, row, cell), if piece.height == 0.0 { 0.0 } else { 2.2 });
    }
    piece
}

/// A table of two rows: questions, and their answers.
fn strip(composer: &mut Composer<'_>, questions: &[Question], cell: f64) -> Piece {
    let (mut heads, mut cells) = (Vec::new(), Vec::new());
    let (small, body) = (composer.leading(&SMALL), composer.leading(&BODY));
    let mut x = 0.0;
    for question in questions {
        let head = composer.lines(&question.id, &SMALL, cell - PAD / 2.0).moved(x, 0.0);
        heads.push(Node::Group(Role::HeadCell(HeadScope::Column), head.nodes));
        let answer = composer.lines(&question.answer, &BODY, cell).moved(x, small + 0.4);
        cells.push(Node::Group(Role::Cell, answer.nodes));
        x += cell;
    }
    let rows = vec![Node::Group(Role::Row, heads), Node::Group(Role::Row, cells)];
    let line = rule(Rect::new(0.0, small + 0.1, x - PAD / 2.0, small + 0.3));
    let nodes = vec![Node::Group(Role::Table, rows), Node::Group(Role::Artifact(Furniture::Layout), vec![line])];
    Piece { height: small + 0.4 + body, nodes }
}

/// A table with a row for each question.
fn lines(composer: &mut Composer<'_>, questions: &[Question], width: f64) -> Piece {
    let ids = questions.iter().map(|question| composer.width_of(&question.id, &SMALL)).fold(0.0, f64::max);
    let indent = ids + PAD;
    let below = (composer.leading(&BODY) - composer.leading(&SMALL)) * 0.55;
    let mut piece = Piece::default();
    for question in questions {
        let id = composer.lines(&question.id, &SMALL, indent).moved(0.0, below);
        let answer = composer.lines(&question.answer, &BODY, width - indent).moved(indent, 0.0);
        let height = answer.height;
        let cells = vec![Node::Group(Role::HeadCell(HeadScope::Row), id.nodes), Node::Group(Role::Cell, answer.nodes)];
        piece.stack(Piece { height, nodes: vec![Node::Group(Role::Row, cells)] }, 0.0);
    }
    piece.role(Role::Table)
}
