//! The charts of a set as files: its ladder, and a plan view of each page, beside its editions.
//!
//! They go into `plot/` in the folder of the set. With every page and both formats the folder is replaced as a whole;
//! else each file takes the place of its own earlier version.

use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};

use crate::diagnostics::Diagnostic;
use crate::layout::charts::{ChartPage, Charts, Spot, ladder, plan, spots};
use crate::layout::sheet::Sheet;
use crate::render::png::{Scratch, png};
use crate::render::svg::svg;
use crate::spec::editions::PLOT;
use crate::spec::suggest::nearest;
use crate::units::Ppi;

use super::chart_report::report;
use super::error::Error;
use super::extent::REPORT;
use super::inked::Inked;
use super::prepare::Book;
use super::write::{Output, Stage};

/// Which pages get a plan view.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Asked {
    /// Those with these numbers in the book.
    Numbers(RangeInclusive<u32>),
    /// The one with this id.
    Id(String),
}

/// What to draw, and where to.
#[derive(Debug)]
pub struct ChartRequest<'a> {
    /// The folder for the folders of the sets.
    pub out: &'a Path,
    /// Whether SVG files are written.
    pub svg: bool,
    /// Whether PNG files are written.
    pub png: bool,
    /// The pages with a plan view; none: all.
    pub pages: &'a [Asked],
    /// Resolution of the PNG files.
    pub ppi: Ppi,
}

/// What was written.
#[derive(Debug, Clone, PartialEq)]
pub struct Charted {
    /// The folder.
    pub folder: PathBuf,
    /// Whether it was replaced as a whole.
    pub whole: bool,
    /// The files, by their names below the folder, with their sizes in bytes: the report last.
    pub files: Vec<(String, u64)>,
    /// The pages of the book, with what their plan views show.
    pub pages: Vec<Charting>,
}

/// What the charts show of a page.
#[derive(Debug, Clone, PartialEq)]
pub struct Charting {
    /// Its number in the book.
    pub number: u32,
    /// Its id.
    pub id: String,
    /// The name of its strand.
    pub strand: &'static str,
    /// 0 to 100.
    pub difficulty: Option<f64>,
    /// What is looked at.
    pub spots: Vec<Spot>,
}

/// Draws and writes the charts of a book. `set` is its index, for errors.
pub fn write(set: usize, book: &Book<'_>, request: &ChartRequest<'_>) -> Result<Charted, Error> {
    let refused = |diagnostics: Vec<Diagnostic>| Error::Layout { set, diagnostics };
    let pages = numbered(book).map_err(refused)?;
    let chosen = choose(book, &pages, request.pages)?;
    let charts = Charts { set: book.set, pages: &pages };
    let mut sheets: Vec<(String, Sheet)> =
        ladder(&charts).map_err(refused)?.into_iter().map(|sheet| (sheet.id.clone(), sheet)).collect();
    for page in chosen {
        let sheet = plan(&charts, page).map_err(refused)?;
        sheets.push((format!("plan-{:03}-{}", page.number, page.page.id), sheet));
    }
    let whole = request.pages.is_empty() && request.svg && request.png;
    let output = Output::open(request.out, &book.set.id, None)?;
    let stage = output.stage(PLOT, whole)?;
    let mut files = write_sheets(&stage, &sheets, request)?;
    let charted = pages.iter().map(|page| charting(book, page)).collect::<Vec<_>>();
    let bytes = report(book.set, &charted).map_err(Error::Report)?;
    files.push(written(&stage, REPORT.to_owned(), &bytes)?);
    output.commit()?;
    Ok(Charted { folder: request.out.join(&book.set.id).join(PLOT), whole, files, pages: charted })
}

/// The exercise pages with their numbers in the first edition.
fn numbered<'a>(book: &Book<'a>) -> Result<Vec<ChartPage<'a>>, Vec<Diagnostic>> {
    let Some(edition) = book.set.editions.first() else { return Ok(Vec::new()) };
    let laid = book.lay_out(edition, &Inked::of(edition))?;
    let number = |id: &str| laid.sheets.iter().find(|sheet| sheet.id == id).map(|sheet| sheet.number);
    let pages = book.pages.iter().filter_map(|solved| {
        Some(ChartPage {
            number: number(&solved.page.id)?,
            page: &solved.page,
            solved: &solved.features,
            strand: solved.strand,
            difficulty: solved.difficulty.as_ref().map(|difficulty| difficulty.total),
        })
    });
    Ok(pages.collect())
}

/// The pages asked for, in the order of the book; all if none was.
fn choose<'a, 'b>(
    book: &Book<'_>,
    pages: &'a [ChartPage<'b>],
    asked: &[Asked],
) -> Result<Vec<&'a ChartPage<'b>>, Error> {
    let is = |page: &ChartPage<'_>, asked: &Asked| match asked {
        Asked::Numbers(range) => range.contains(&page.number),
        Asked::Id(id) => page.page.id == *id,
    };
    if let Some(missing) = asked.iter().find(|asked| !pages.iter().any(|page| is(page, asked))) {
        let (what, nearest) = match missing {
            Asked::Numbers(range) if range.start() == range.end() => {
                (format!("page `{}` is no exercise", range.start()), None)
            }
            Asked::Numbers(range) => (format!("pages `{}-{}` are no exercises", range.start(), range.end()), None),
            Asked::Id(id) => {
                let ids = pages.iter().map(|page| page.page.id.as_str());
                (format!("page `{id}` is no exercise"), nearest(id, ids).map(str::to_owned))
            }
        };
        let span = pages.first().zip(pages.last()).map(|(first, last)| (first.number, last.number));
        return Err(Error::NoExercise { set: book.set.id.clone(), what, span, nearest });
    }
    Ok(pages.iter().filter(|page| asked.is_empty() || asked.iter().any(|asked| is(page, asked))).collect())
}

fn write_sheets(
    stage: &Stage,
    sheets: &[(String, Sheet)],
    request: &ChartRequest<'_>,
) -> Result<Vec<(String, u64)>, Error> {
    let (mut files, mut scratch) = (Vec::new(), Scratch::default());
    for (name, sheet) in sheets {
        if request.svg {
            files.push(written(stage, format!("{name}.svg"), svg(sheet).as_bytes())?);
        }
        if request.png {
            let drawn = png(sheet, request.ppi, &mut scratch);
            let bytes = drawn.map_err(|source| Error::Png { page: sheet.id.clone(), source })?;
            files.push(written(stage, format!("{name}.png"), &bytes)?);
        }
    }
    Ok(files)
}

fn written(stage: &Stage, name: String, bytes: &[u8]) -> Result<(String, u64), Error> {
    stage.write(&name, bytes)?;
    Ok((name, bytes.len() as u64))
}

fn charting(book: &Book<'_>, page: &ChartPage<'_>) -> Charting {
    Charting {
        number: page.number,
        id: page.page.id.clone(),
        strand: page.strand,
        difficulty: page.difficulty,
        spots: spots(page.solved, &book.set.viewer).unwrap_or_default(),
    }
}
