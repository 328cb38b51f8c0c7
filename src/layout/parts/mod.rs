//! The parts of a book, one file each, in the order of the book.
//!
//! A part takes the book and gives drafts of its sheets; numbers and footers come last, when all are known.

mod answers;
mod asked;
mod audience;
mod back;
mod cautions;
mod contents;
mod cover;
mod exercise;
pub mod footer;
mod ghost_check;
mod glasses_check;
mod glossary;
mod how_to_use;
mod level_map;
mod licence;
mod log;
mod log_page;
mod marks;
mod needs;
mod plan;
mod professional;
pub mod readings;
mod scale_check;
mod sources;
mod spectra;
mod swatches;
mod versions;
mod words;
mod words_pages;

use kurbo::Rect;

use super::compose::{Column, Composer, Piece};
use super::grid::Grid;
use super::sheet::Node;
use super::{Book, Draft};
use crate::spec::{Back, Front, TextSize};
use answers::Key;
pub(super) use back::{sheet, sheet_id};
use contents::{Contents, Entry};
pub(super) use exercise::size;

/// A part of the book that needs to know nothing of the others.
type Part = fn(&mut Composer<'_>, &Grid, &Book<'_>) -> Vec<Draft>;

/// A part before the exercises; the contents come when all the others are known.
const fn before(part: Front) -> Option<Part> {
    Some(match part {
        Front::Cover => cover::drafts,
        Front::Contents => return None,
        Front::Audience => audience::drafts,
        Front::Cautions => cautions::drafts,
        Front::HowToUse => how_to_use::drafts,
        Front::Needs => needs::drafts,
        Front::GlassesCheck => glasses_check::drafts,
        Front::GhostCheck => ghost_check::drafts,
        Front::ScaleCheck => scale_check::drafts,
        Front::Map => level_map::drafts,
    })
}

/// Back matter, between the exercises and the answer key, as far as the set has it.
const fn after(part: Back) -> Part {
    match part {
        Back::Plan => plan::drafts,
        Back::Log => log_page::drafts,
        Back::Glossary => glossary::drafts,
        Back::Professional => professional::drafts,
        Back::Words => words_pages::drafts,
        Back::Sources => sources::drafts,
        Back::Licence => licence::drafts,
        Back::Versions => versions::drafts,
    }
}

/// Whether a name is that of a part of the book. A part that needs more sheets than one numbers them: `contents-2`.
fn is_part(name: &str) -> bool {
    Front::WORDS.contains(&name) || Back::WORDS.contains(&name) || name == answers::ID
}

/// Whether a page of this name would clash with a sheet of the book's own.
pub fn is_own(id: &str) -> bool {
    is_part(id) || is_part(stem(id))
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

/// Every sheet of an edition. The key is divided into sheets first, then all numbers are known.
pub(super) fn all(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Drafts {
    // Exercise pages see to their own footer, which may say more, and the cover has none.
    let (whole, mut grid) = (grid, *grid);
    grid.safe.y1 -= footer::rise(composer, &grid, book, ("", ""));
    let grid = &grid;
    let key = Key::new(composer, grid, book);
    // As long as numbers come: whether all has room on one sheet must not hang on a digit.
    let tongue = composer.tongue;
    let at = |index: usize, first: usize| key.of_page(tongue, index, first);
    composer.numbers = vec![LONG_NUMBER; book.pages.len()];
    let mut opened = Opened::new(composer, (whole, grid), book);
    let made = |index: usize, composer: &mut Composer<'_>| {
        exercise::Made::new(composer, whole, book, index, at(index, LONG_NUMBER).as_ref())
    };
    let made: Vec<_> = (0..book.pages.len()).map(|index| made(index, composer)).collect();
    let (back, contents) = back(composer, grid, book, &opened, (&made, &key));
    let exercise_sheets: usize = made.iter().map(exercise::Made::sheets).sum();
    let front_sheets = opened.sheets() + contents.as_ref().map_or(0, Contents::sheets);
    let key_at = front_sheets + exercise_sheets + back.len() + 1;
    opened.number(composer, grid, book);
    let mut exercises = Vec::new();
    for (index, made) in made.into_iter().enumerate() {
        let number = composer.numbers[index];
        exercises.extend(made.drafts(composer, number, at(index, key_at).as_ref()));
    }
    let is_bound = 0 < key.in_book();
    let answers = key.drafts(composer, grid, book);
    let (bound, answers) = if is_bound { (answers, Vec::new()) } else { (Vec::new(), answers) };
    let (mut pages, listed) = opened.divided();
    let rest: Vec<Draft> = listed.into_iter().chain(exercises).chain(back).chain(bound).collect();
    if let Some(contents) = contents {
        let first = pages.len() + contents.sheets() + 1;
        let number = |entry: &Entry| first + rest.iter().position(|draft| draft.id == entry.id).unwrap_or_default();
        pages.extend(contents.drafts(composer, grid, number));
    }
    pages.extend(rest);
    Drafts { pages, answers }
}

/// A page number as long as they come.
const LONG_NUMBER: usize = 888;

/// The parts after the exercises, and the contents where the book has them. Parts name pages by their numbers, which hang on
/// how many sheets the contents take, which hang on the titles of the parts: so they are set until they agree, nearly
/// always at once.
fn back(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    opened: &Opened,
    (made, key): (&[exercise::Made<'_>], &Key),
) -> (Vec<Draft>, Option<Contents>) {
    let mut entries: Vec<Entry> = opened.listed().filter(|draft| !is_later(&draft.id)).map(Entry::of).collect();
    entries.extend(made.iter().map(|made| made.entry(composer.tongue)));
    let fixed = entries.len();
    let empty = || Entry { id: String::new(), title: String::new(), inside: false };
    entries.extend(book.set.back.iter().map(|_| empty()).chain(key.entry(composer.tongue)));
    let mut sheets = if opened.contents().is_some() { Contents::new(composer, grid, &entries).sheets() } else { 0 };
    let known = composer.problems.len();
    loop {
        let mut next = opened.sheets() + sheets + 1;
        composer.numbers.clear();
        for made in made {
            composer.numbers.push(next);
            next += made.sheets();
        }
        let back: Vec<Draft> = book.set.back.iter().flat_map(|&part| after(part)(composer, grid, book)).collect();
        if opened.contents().is_none() {
            return (back, None);
        }
        entries.truncate(fixed);
        entries
            .extend(back.iter().filter(|draft| !is_later(&draft.id)).map(Entry::of).chain(key.entry(composer.tongue)));
        let contents = Contents::new(composer, grid, &entries);
        // What the contents list hangs on no number: the second time they agree.
        if contents.sheets() == sheets {
            return (back, Some(contents));
        }
        sheets = contents.sheets();
        composer.problems.truncate(known);
    }
}

/// Whether a sheet of this id is no first sheet of its part: the contents lead to the first.
fn is_later(id: &str) -> bool {
    stem(id) != id && is_part(stem(id))
}

/// An id without the number of its sheet.
fn stem(id: &str) -> &str {
    id.rsplit_once('-').filter(|(_, n)| n.bytes().all(|b| b.is_ascii_digit())).map_or(id, |(stem, _)| stem)
}

/// The front matter of a book, without its contents.
struct Opened {
    /// Each part with its sheets; the contents have none.
    parts: Vec<(Front, Vec<Draft>)>,
}

impl Opened {
    /// Every part but the contents; the map with numbers still to come.
    fn new(composer: &mut Composer<'_>, (whole, grid): (&Grid, &Grid), book: &Book<'_>) -> Self {
        let mut parts = Vec::new();
        for &part in &book.set.front {
            let told = composer.problems.len();
            let grid = if part == Front::Cover { whole } else { grid };
            parts.push((part, before(part).map_or_else(Vec::new, |part| part(composer, grid, book))));
            if part == Front::Map {
                // Its problems are told when it has its numbers.
                composer.problems.truncate(told);
            }
        }
        Self { parts }
    }

    /// Draws the map with the numbers of the exercise pages.
    fn number(&mut self, composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) {
        for (_, drafts) in self.parts.iter_mut().filter(|(part, _)| *part == Front::Map) {
            *drafts = level_map::drafts(composer, grid, book);
        }
    }

    /// Where the contents stand.
    fn contents(&self) -> Option<usize> {
        self.parts.iter().position(|(part, _)| *part == Front::Contents)
    }

    /// How many sheets there are.
    fn sheets(&self) -> usize {
        self.parts.iter().map(|(_, drafts)| drafts.len()).sum()
    }

    /// The sheets after the contents.
    fn listed(&self) -> impl Iterator<Item = &Draft> {
        let from = self.contents().unwrap_or(self.parts.len());
        self.parts[from..].iter().flat_map(|(_, drafts)| drafts)
    }

    /// The sheets before the contents, and those after them.
    fn divided(mut self) -> (Vec<Draft>, Vec<Draft>) {
        let from = self.contents().unwrap_or(self.parts.len());
        let listed = self.parts.split_off(from);
        let drafts = |parts: Vec<(Front, Vec<Draft>)>| parts.into_iter().flat_map(|(_, drafts)| drafts).collect();
        (drafts(self.parts), drafts(listed))
    }
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
