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
mod words_pages;

use kurbo::Rect;

use super::compose::{Column, Composer, Piece};
use super::grid::Grid;
use super::sheet::Node;
use super::{Book, Draft};
use crate::spec::{Back, TextSize};
use answers::Key;
pub(super) use back::{sheet, sheet_id};
use contents::{Contents, Entry};

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
        Back::Words => words_pages::drafts,
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
    "words",
    "answers",
];

/// Whether a page of this name would clash with a sheet of the book's own.
pub fn is_own(id: &str) -> bool {
    OWN.contains(&id) || OWN.contains(&stem(id))
}

/// The page whose words would have a sheet of this name, if there is one.
pub fn page_of_words(id: &str) -> Option<&str> {
    id.strip_suffix(WORDS).or_else(|| stem(id).strip_suffix(WORDS))
}

/// What the name of the sheet of words of a page ends with.
const WORDS: &str = "-words";

/// The sheets of an edition.
pub(super) struct Drafts {
    /// Every sheet of the book.
    pub pages: Vec<Draft>,
    /// The answer key where it is a book of its own.
    pub answers: Vec<Draft>,
}

/// Every sheet of an edition. Exercises and key are divided into sheets first; then all numbers are known.
pub(super) fn all(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Drafts {
    // Exercise pages see to their own footer, which may say more, and the cover has none.
    let (whole, mut grid) = (grid, *grid);
    grid.safe.y1 -= footer::rise(composer, &grid, book, ("", ""));
    let grid = &grid;
    let front: Vec<Draft> = FRONT.iter().flat_map(|part| part(composer, grid, book)).collect();
    let cover = cover::drafts(composer, whole, book);
    let key = Key::new(composer, grid, book);
    // As long as numbers come: whether all has room on one sheet must not hang on a digit.
    let tongue = composer.tongue;
    let at = |index: usize, first: usize| key.of_page(tongue, index, first);
    let made = |index: usize, composer: &mut Composer<'_>| {
        exercise::Made::new(composer, whole, book, index, at(index, 888).as_ref())
    };
    let made: Vec<_> = (0..book.pages.len()).map(|index| made(index, composer)).collect();
    let before = cover.len() + front.len();
    let (back, contents) = back(composer, grid, book, (&front, before), (&made, &key));
    let exercise_sheets: usize = made.iter().map(exercise::Made::sheets).sum();
    let key_at = before + contents.sheets() + exercise_sheets + back.len() + 1;
    let mut exercises = Vec::new();
    for (index, made) in made.into_iter().enumerate() {
        let number = composer.numbers[index];
        exercises.extend(made.drafts(composer, number, at(index, key_at).as_ref()));
    }
    let is_bound = 0 < key.in_book();
    let answers = key.drafts(composer, grid, book);
    let (bound, answers) = if is_bound { (answers, Vec::new()) } else { (Vec::new(), answers) };
    let rest: Vec<Draft> = front.into_iter().chain(exercises).chain(back).chain(bound).collect();
    let first = cover.len() + contents.sheets() + 1;
    let number = |entry: &Entry| first + rest.iter().position(|draft| draft.id == entry.id).unwrap_or_default();
    let contents = contents.drafts(composer, grid, number);
    Drafts { pages: cover.into_iter().chain(contents).chain(rest).collect(), answers }
}

/// The parts after the exercises, and the contents. Parts name pages by their numbers, which hang on how many sheets the
/// contents take, which hang on the titles of the parts: so they are set until they agree, nearly always at once.
fn back(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    (front, before): (&[Draft], usize),
    (made, key): (&[exercise::Made<'_>], &Key),
) -> (Vec<Draft>, Contents) {
    let mut entries: Vec<Entry> = front.iter().filter(|draft| !is_later(&draft.id)).map(Entry::of).collect();
    entries.extend(made.iter().map(|made| made.entry(composer.tongue)));
    let fixed = entries.len();
    let empty = || Entry { id: String::new(), title: String::new(), inside: false };
    entries.extend(book.set.back.iter().map(|_| empty()).chain(key.entry(composer.tongue)));
    let mut sheets = Contents::new(composer, grid, &entries).sheets();
    let known = composer.problems.len();
    loop {
        let mut next = before + sheets + 1;
        composer.numbers.clear();
        for made in made {
            composer.numbers.push(next);
            next += made.sheets();
        }
        let back: Vec<Draft> = book.set.back.iter().flat_map(|&back| part(back)(composer, grid, book)).collect();
        entries.truncate(fixed);
        entries
            .extend(back.iter().filter(|draft| !is_later(&draft.id)).map(Entry::of).chain(key.entry(composer.tongue)));
        let contents = Contents::new(composer, grid, &entries);
        // What the contents list hangs on no number: the second time they agree.
        if contents.sheets() == sheets {
            return (back, contents);
        }
        sheets = contents.sheets();
        composer.problems.truncate(known);
    }
}

/// Whether a sheet of this id is no first sheet of its part: the contents lead to the first.
fn is_later(id: &str) -> bool {
    stem(id) != id && OWN.contains(&stem(id))
}

/// An id without the number of its sheet.
fn stem(id: &str) -> &str {
    id.rsplit_once('-').filter(|(_, n)| n.bytes().all(|b| b.is_ascii_digit())).map_or(id, |(stem, _)| stem)
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

/// The text columns of a page of running text below its opening: two, or one where large text on a portrait page would
/// stand in lines of a few words.
pub(super) fn text_columns(composer: &Composer<'_>, grid: &Grid, top: f64) -> Vec<Rect> {
    let [left, right] = columns(grid, top);
    if grid.beside || composer.text == TextSize::Standard { vec![left, right] } else { vec![left.union(right)] }
}

/// The width of a text column of a page of running text, mm.
pub(super) fn text_width(composer: &Composer<'_>, grid: &Grid) -> f64 {
    text_columns(composer, grid, grid.safe.y0).first().map_or(grid.safe.width(), Rect::width)
}

/// A heading with what belongs to it, kept together.
fn section(heading: Piece, body: impl IntoIterator<Item = Piece>) -> Piece {
    let mut section = heading;
    for piece in body {
        section.stack(piece, 0.8);
    }
    section
}
