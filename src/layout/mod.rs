//! Sheets: what stands where on a page. Stand-in for the layout of the book.

pub mod fonts;
pub mod sheet;
pub mod text;

use kurbo::{Point, Size};

use crate::colour;
use crate::diagnostics::Diagnostic;
use crate::exercise;
use crate::solve::SolvedFeature;
use crate::spec::{Edition, PageFormat, SetSpec};

use sheet::Sheet;

/// One edition of the book, ready to lay out.
#[derive(Debug)]
pub struct Book<'a> {
    /// The set.
    pub set: &'a SetSpec,
    /// The edition.
    pub edition: &'a Edition,
    /// Its exercise pages.
    pub pages: &'a [BookPage<'a>],
}

/// An exercise page with its offsets.
#[derive(Debug)]
pub struct BookPage<'a> {
    /// The page.
    pub page: &'a exercise::Page,
    /// Its features.
    pub solved: &'a [SolvedFeature],
}

/// The sheets of one edition.
#[derive(Debug)]
pub struct LaidOut {
    /// Page 1 first.
    pub sheets: Vec<Sheet>,
    /// For each sheet, what of it goes into the report.
    pub placed: Vec<Vec<Placed>>,
}

/// A feature as it stands on a sheet.
#[derive(Debug, Clone)]
pub struct Placed {
    /// The feature.
    pub feature: SolvedFeature,
    /// Middle between its half-images, page mm.
    pub at: Point,
    /// Its drawn bounding box, page mm.
    pub size: Size,
}

/// Lays out one edition.
pub fn lay_out(book: &Book) -> Result<LaidOut, Vec<Diagnostic>> {
    let (w, h) = match book.edition.page {
        PageFormat::A4 => (210.0, 297.0),
        PageFormat::Letter => (215.9, 279.4),
        PageFormat::Wide => (320.0, 180.0),
    };
    let sheet = |number: usize, id: &str| Sheet {
        number: u32::try_from(number).unwrap_or(u32::MAX),
        id: id.to_owned(),
        title: id.to_owned(),
        description: String::new(),
        outline_level: 0,
        size: Size::new(w, h),
        inks: colour::inks(book.edition.glasses, book.edition.ground),
        nodes: Vec::new(),
    };
    let mut laid =
        LaidOut { sheets: vec![sheet(1, "cover"), sheet(2, "cautions")], placed: vec![Vec::new(), Vec::new()] };
    for (i, page) in book.pages.iter().enumerate() {
        laid.sheets.push(sheet(i + 3, &page.page.id));
        laid.placed.push(
            page.solved
                .iter()
                .map(|f| Placed {
                    feature: f.clone(),
                    at: Point::new(w / 2.0 + f.at.0, h / 2.0 + f.at.1),
                    size: Size::new(30.0, 30.0),
                })
                .collect(),
        );
    }
    Ok(laid)
}
