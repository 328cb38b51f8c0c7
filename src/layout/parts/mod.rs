//! The parts of a book, one file each, in the order of the book.
//!
//! A part takes the book and gives drafts of its sheets; numbers and footers come last, when all are known.

mod answers;
mod asked;
mod back;
mod cautions;
mod contents;
mod cover;
mod exercise;
pub mod footer;
mod ghost_check;
mod glasses_check;
mod how_to_use;
mod log;
mod log_page;
mod marks;
mod plan;
mod professional;
pub mod readings;
mod scale_check;
mod spectra;
mod swatches;
mod words;

use kurbo::Rect;

use super::compose::{Column, Composer, Piece};
use super::grid::Grid;
use super::sheet::Node;
use super::{Book, Draft};
use crate::spec::Back;
use answers::Key;
pub(super) use exercise::size;

/// A part of the book besides the cover, the contents and the exercises.
type Part = fn(&mut Composer<'_>, &Grid, &Book<'_>) -> Vec<Draft>;

/// Front matter after the contents. The caution page comes before anything that is looked at; the checks come before
/// the first exercise.
const FRONT: &[Part] =
    &[cautions::drafts, how_to_use::drafts, glasses_check::drafts, ghost_check::drafts, scale_check::drafts];

/// Back matter, between the exercises and the answer key, as far as the set has it.
const fn part(back: Back) -> Part {
    match back {
        Back::Plan => plan::drafts,
        Back::Log => log_page::drafts,
        Back::Professional => professional::drafts,
    }
}

/// Names of the book's own sheets. A part that needs more sheets than one numbers them: `contents-2`.
const OWN: &[&str] = &[
    "cover",
    "contents",
    "cautions",
    "how-to-use",
    "glasses-check",
    "ghost-check",
    "scale-check",
    "plan",
    "log",
    "professional",
    "answers",
];

/// Whether a page of this name would clash with a sheet of the book's own.
pub fn is_own(id: &str) -> bool {
    let stem = id.rsplit_once('-').filter(|(_, n)| n.bytes().all(|b| b.is_ascii_digit())).map_or(id, |(stem, _)| stem);
    OWN.contains(&id) || OWN.contains(&stem)
}

/// The sheets of an edition.
pub(super) struct Drafts {
    /// Every sheet of the book.
    pub pages: Vec<Draft>,
    /// The answer key where it is a book of its own.
    pub answers: Vec<Draft>,
}

/// Every sheet of an edition. The key is divided into sheets first, then all numbers are known.
pub(super) fn all(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Drafts {
    // Exercise pages see to their own footer, which may say more, and the cover has none.
    let (whole, mut grid) = (grid, *grid);
    grid.safe.y1 -= footer::rise(composer, &grid, book, "");
    let grid = &grid;
    let front: Vec<Draft> = FRONT.iter().flat_map(|part| part(composer, grid, book)).collect();
    let cover = cover::drafts(composer, whole, book);
    let key = Key::new(composer, grid, book);
    let back: Vec<Draft> = book.set.back.iter().flat_map(|&back| part(back)(composer, grid, book)).collect();
    let entries = front.len() + book.pages.len() + back.len() + key.in_book();
    let first = cover.len() + contents::sheets(composer, grid, entries) + front.len() + 1;
    let key_at = first + book.pages.len() + back.len();
    let exercises = exercise::drafts(composer, whole, book, |page| key.of_page(page, key_at));
    let is_bound = 0 < key.in_book();
    let answers = key.drafts(composer, grid, book, first);
    let (bound, answers) = if is_bound { (answers, Vec::new()) } else { (Vec::new(), answers) };
    let rest: Vec<&Draft> = front.iter().chain(&exercises).chain(&back).chain(&bound).collect();
    let contents = contents::drafts(composer, grid, cover.len(), &rest);
    let pages = cover.into_iter().chain(contents).chain(front).chain(exercises).chain(back).chain(bound).collect();
    Drafts { pages, answers }
}

/// The sheets of the inks by themselves, without a book around them.
pub(super) fn of_inks(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    [swatches::draft(composer, grid, book), spectra::draft(composer, grid, book)].into()
}

/// The title of a front page at its top; gives the nodes and the height at which its text may start.
pub(super) fn opening(composer: &mut Composer<'_>, grid: &Grid, title: &str, lead: &str) -> (Vec<Node>, f64) {
    let mut column = Column::new(grid.safe);
    let width = column.width();
    column.add(composer.title(title, width), 0.0);
    if !lead.is_empty() {
        column.add(composer.paragraph(lead, width), 1.5);
    }
    let top = column.y + 5.0;
    (column.nodes, top)
}

/// Where the text of a front page may end: above the footer.
fn foot(grid: &Grid) -> f64 {
    grid.safe.y1 - footer::HEIGHT
}

/// The two text columns of a front page below its opening.
pub(super) fn columns(grid: &Grid, top: f64) -> [Rect; 2] {
    grid.columns(top, foot(grid))
}

/// A heading with what belongs to it, kept together.
fn section(heading: Piece, body: impl IntoIterator<Item = Piece>) -> Piece {
    let mut section = heading;
    for piece in body {
        section.stack(piece, 0.8);
    }
    section
}
