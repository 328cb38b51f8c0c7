//! Sheets: what stands where on a page, its words and its furniture.
//!
//! The room takes solved pages and gives finished sheets. It computes no offset: where a half-image stands is the
//! solver's business. It chooses no ink: colours are named by role and come from `colour`.

pub mod alt;
pub mod apart;
pub mod art;
pub mod balance;
pub mod base;
pub mod charts;
pub mod compared;
pub mod compose;
mod dots;
pub mod flow;
pub mod ghost;
pub mod grid;
pub mod parts;
pub mod plot;
pub mod preview;
pub mod sheet;
pub mod swatch;
pub mod text;
pub mod things;

use std::cell::RefCell;

use kurbo::{Point, Size};

pub use crate::outline::fonts;

use crate::colour::{InkPlan, Inks, Views};
use crate::diagnostics::Diagnostic;
use crate::exercise;
use crate::language::Tongue;
use crate::solve::SolvedFeature;
pub use ghost::GhostPatch;

use crate::spec::{Edition, SetSpec};

use compose::Composer;
use grid::Grid;
use parts::Drafts;
use sheet::{Node, Sheet};
use text::Typesetter;

/// What an edition of a book is laid out from.
#[derive(Debug, Clone, Copy)]
pub struct Book<'a> {
    /// The set.
    pub set: &'a SetSpec,
    /// The edition.
    pub edition: &'a Edition,
    /// Its inks, with what each eye sees of them.
    pub plan: &'a InkPlan,
    /// What each eye sees of any colour of its medium.
    pub views: &'a Views,
    /// Its exercise pages in the order of the book.
    pub pages: &'a [BookPage<'a>],
    /// The language of its words.
    pub tongue: &'a Tongue,
}

/// An exercise page with its solved art.
#[derive(Debug, Clone, Copy)]
pub struct BookPage<'a> {
    /// The page as the exercise gave it.
    pub page: &'a exercise::Page,
    /// Its features with their offsets, from the middle of the art field.
    pub solved: &'a [SolvedFeature],
    /// The strand in which it stands.
    pub strand: &'static str,
    /// The level of its difficulty, 1 to 10, where it is known.
    pub grade: Option<u32>,
}

/// The finished sheets of an edition.
#[derive(Debug, Clone)]
pub struct LaidOut {
    /// One a page, in the order of the book; the first has number 1.
    pub sheets: Vec<Sheet>,
    /// For each sheet: what of it goes into the report.
    pub placed: Vec<Vec<Placed>>,
    /// The sheets of the answer key where it is a book of its own, numbered from 1; else empty.
    pub answers: Vec<Sheet>,
    /// What the numbers of the ghost page stand for; empty where there is none.
    pub ghost: Vec<GhostPatch>,
}

/// A feature as it stands on its page.
#[derive(Debug, Clone)]
pub struct Placed {
    /// The feature, about the middle of the art field.
    pub feature: SolvedFeature,
    /// The middle between its half-images, page mm.
    pub at: Point,
    /// Width and height of its drawn bounding box, mm; of a path: of its cyclopean line and its weight.
    pub size: Size,
}

impl Placed {
    /// A feature with its middle at a place.
    pub fn new(feature: &SolvedFeature, at: Point) -> Self {
        Self { feature: feature.clone(), at, size: parts::size(feature) }
    }
}

/// A sheet before it has its number.
pub struct Draft {
    /// Unique in the book.
    pub id: String,
    /// For bookmarks and the SVG title.
    pub title: String,
    /// For the SVG description.
    pub description: String,
    /// Bookmark level.
    pub outline_level: u8,
    /// Its own inks; without: those of the edition.
    pub inks: Option<Inks>,
    /// What its footer says besides: of a balance between the eyes, of a seed; may be empty.
    pub note: String,
    /// Content in reading order, without the footer.
    pub nodes: Vec<Node>,
    /// What stands in the footer besides the set's own line.
    pub footer: String,
    /// For the report.
    pub placed: Vec<Placed>,
}

impl Draft {
    /// For parts that have one sheet.
    fn into_one(self) -> Vec<Self> {
        vec![self]
    }
}

thread_local! {
    /// A typesetter holds parsed fonts and work buffers: one a thread, kept.
    static TYPESETTER: RefCell<Typesetter> = RefCell::new(Typesetter::new());
}

/// Lays out every sheet of an edition. Errors name the page and what does not fit.
pub fn lay_out(book: &Book<'_>) -> Result<LaidOut, Vec<Diagnostic>> {
    TYPESETTER.with_borrow_mut(|setter| {
        let mut composer = Composer::new(setter, book.tongue, book.edition.text);
        let grid = Grid::of(book.edition.page);
        let Drafts { pages, answers } = parts::all(&mut composer, &grid, book);
        let mut laid_out = finish(&mut composer, &grid, book, pages);
        laid_out.answers = finish(&mut composer, &grid, book, answers).sheets;
        laid_out.ghost = ghost::of(book);
        if composer.problems.is_empty() { Ok(laid_out) } else { Err(each_once(composer.problems)) }
    })
}

/// A page that is set more than once, until all fits, has the same problem each time.
fn each_once(problems: Vec<Diagnostic>) -> Vec<Diagnostic> {
    let mut told: Vec<Diagnostic> = Vec::new();
    for problem in problems {
        if !told.contains(&problem) {
            told.push(problem);
        }
    }
    told
}

/// Numbers the drafts and gives them their footers.
fn finish(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, drafts: Vec<Draft>) -> LaidOut {
    let mut laid_out = LaidOut { sheets: Vec::new(), placed: Vec::new(), answers: Vec::new(), ghost: Vec::new() };
    for (number, draft) in (1..).zip(drafts) {
        composer.sheet.clone_from(&draft.id);
        let (sheet, placed) = parts::footer::finish(composer, grid, book, number, draft);
        laid_out.sheets.push(sheet);
        laid_out.placed.push(placed);
    }
    laid_out
}
