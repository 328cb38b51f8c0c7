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

use kurbo::Rect;

use super::compose::{Column, Composer, Piece};
use super::grid::Grid;
use super::sheet::Node;
use super::{Book, Draft};
use crate::spec::{Back, Front, TextSize};
use answers::Key;
pub(super) use exercise::size;

/// A part of the book that needs to know nothing of the others.
type Part = fn(&mut Composer<'_>, &Grid, &Book<'_>) -> Vec<Draft>;

/// A part before the exercises. The contents need every sheet after them, and the map every number: they come when these
/// are known.
const fn front(part: Front) -> Option<Part> {
    Some(match part {
        Front::Cover | Front::Contents | Front::Map => return None,
        Front::Audience => audience::drafts,
        Front::Cautions => cautions::drafts,
        Front::HowToUse => how_to_use::drafts,
        Front::Needs => needs::drafts,
        Front::GlassesCheck => glasses_check::drafts,
        Front::GhostCheck => ghost_check::drafts,
        Front::ScaleCheck => scale_check::drafts,
    })
}

/// Back matter, between the exercises and the answer key, as far as the set has it.
const fn back(part: Back) -> Part {
    match part {
        Back::Plan => plan::drafts,
        Back::Log => log_page::drafts,
        Back::Glossary => glossary::drafts,
        Back::Professional => professional::drafts,
        Back::Sources => sources::drafts,
        Back::Licence => licence::drafts,
        Back::Versions => versions::drafts,
    }
}

/// Names of the book's own sheets. A part that needs more sheets than one numbers them: `contents-2`.
const OWN: &[&str] = &[
    "cover",
    "contents",
    "audience",
    "cautions",
    "how-to-use",
    "needs",
    "glasses-check",
    "ghost-check",
    "scale-check",
    "map",
    "words",
    "plan",
    "log",
    "glossary",
    "professional",
    "sources",
    "licence",
    "versions",
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
    let key = Key::new(composer, grid, book);
    let mut front = Opened::new(composer, (whole, grid), book);
    let back: Vec<Draft> = book.set.back.iter().flat_map(|&part| back(part)(composer, grid, book)).collect();
    let first = 1 + front.sheets(composer, grid, book.pages.len() + back.len() + key.in_book());
    front.number(composer, grid, book, &|page| first + page);
    let key_at = first + book.pages.len() + back.len();
    let exercises = exercise::drafts(composer, whole, book, |page| key.of_page(page, key_at));
    let is_bound = 0 < key.in_book();
    let answers = key.drafts(composer, grid, book, first);
    let (bound, answers) = if is_bound { (answers, Vec::new()) } else { (Vec::new(), answers) };
    let after: Vec<Draft> = exercises.into_iter().chain(back).chain(bound).collect();
    let front = front.with_contents(composer, grid, &after);
    let pages = front.into_iter().chain(after).collect();
    Drafts { pages, answers }
}

/// The front matter of a book, as far as it is known.
struct Opened {
    /// Each part with its sheets; the contents are still empty.
    parts: Vec<(Front, Vec<Draft>)>,
}

impl Opened {
    /// Every part but the contents; the map with no numbers yet.
    fn new(composer: &mut Composer<'_>, (whole, grid): (&Grid, &Grid), book: &Book<'_>) -> Self {
        let drafts = |part: Front, composer: &mut Composer<'_>| match (part, front(part)) {
            (_, Some(part)) => part(composer, grid, book),
            (Front::Cover, None) => cover::drafts(composer, whole, book),
            (_, None) => Vec::new(),
        };
        let parts = book.set.front.iter().map(|&part| (part, drafts(part, composer))).collect();
        let mut opened = Self { parts };
        // As large as with its numbers; its problems are told when it has them.
        let told = composer.problems.len();
        opened.number(composer, grid, book, &|_| 1);
        composer.problems.truncate(told);
        opened
    }

    /// Draws the map with the numbers of the exercise pages.
    fn number(&mut self, composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, number: &dyn Fn(usize) -> usize) {
        for (_, drafts) in self.parts.iter_mut().filter(|(part, _)| *part == Front::Map) {
            *drafts = level_map::drafts(composer, grid, book, number);
        }
    }

    /// Where the contents stand.
    fn contents(&self) -> Option<usize> {
        self.parts.iter().position(|(part, _)| *part == Front::Contents)
    }

    /// How many sheets there are, the contents with them; so many stand `after` the front matter.
    fn sheets(&self, composer: &mut Composer<'_>, grid: &Grid, after: usize) -> usize {
        let count = |parts: &[(Front, Vec<Draft>)]| parts.iter().map(|(_, drafts)| drafts.len()).sum::<usize>();
        let listed = self.contents().map(|at| count(&self.parts[at + 1..]) + after);
        count(&self.parts) + listed.map_or(0, |listed| contents::sheets(composer, grid, listed))
    }

    /// Every sheet, and the contents with what comes after them.
    fn with_contents(mut self, composer: &mut Composer<'_>, grid: &Grid, after: &[Draft]) -> Vec<Draft> {
        if let Some(at) = self.contents() {
            let before = self.parts[..at].iter().map(|(_, drafts)| drafts.len()).sum();
            let later = self.parts[at + 1..].iter().flat_map(|(_, drafts)| drafts);
            let rest: Vec<&Draft> = later.chain(after).collect();
            self.parts[at].1 = contents::drafts(composer, grid, before, &rest);
        }
        self.parts.into_iter().flat_map(|(_, drafts)| drafts).collect()
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
