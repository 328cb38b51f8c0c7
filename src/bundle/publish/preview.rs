//! Previews of a set and its contact sheet: small, marked across, and with the words “not to scale”, so that nothing that is
//! given away can be practised with. Answers are on none of them.

use std::collections::BTreeMap;

use kurbo::{Point, Size};

use crate::diagnostics::{Diagnostic, codes};
use crate::language::Tongue;
use crate::layout::LaidOut;
use crate::layout::preview::{Label, card, watermark};
use crate::layout::sheet::Sheet;
use crate::layout::text::MissingGlyph;
use crate::render::png::Scratch;
use crate::spec::publish::{FEWEST_PREVIEWS, MOST_PREVIEWS};
use crate::spec::{Edition, SetSpec};
use crate::units::{Ppi, Pt};

use super::super::error::Error;
use super::super::issue::Issue;
use super::super::prepare::SolvedPage;
use super::super::write::Stage;
use super::picture::Picture;

/// Pixels of a preview. Design choice: what shop pages commonly take.
pub const SIZE: (u32, u32) = (1600, 1200);
/// Cards are drawn at this resolution: 100 pixels an inch make card units of 0.254 mm a pixel.
const CARD: Ppi = Ppi(100);
/// The highest resolution of a page on a preview: on a screen of 96 pixels an inch it is at most five sixths of its true size.
const MOST_PPI: u32 = 80;
/// The most pixels that a page on a preview takes.
const ROOM: (f64, f64) = (1100.0, 950.0);
/// The watermark: this grey, by this share of 255. Seen on white and on black, and quiet on both.
const SHADE: (u8, u8) = (128, 96);
/// The line around a page.
const EDGE: u8 = 0xb4;

/// Width of the contact sheet and the most of its height, pixels.
const CONTACT: (f64, f64) = (2000.0, 2400.0);
/// Around the pages of the contact sheet, and between them.
const MARGIN: f64 = 100.0;
const BETWEEN: f64 = 30.0;
/// Below each page, for its number.
const NUMBER: f64 = 34.0;
/// Above and below the pages.
const HEAD: f64 = 190.0;
const FOOT: f64 = 170.0;

/// One preview.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Preview {
    /// Its file, below the folder of the bundle.
    pub file: String,
    /// The id of the page that it shows.
    pub page: String,
}

/// The contact sheet, below the folder of the bundle.
pub const CONTACT_SHEET: &str = "contact-sheet.png";

/// The ids of the exercise pages to preview, in the order of the book: those asked for, or some from each strand. The error is
/// about one that the edition leaves out.
fn chosen<'a>(issue: &Issue<'a>, edition: &Edition) -> Result<Vec<&'a str>, Box<Diagnostic>> {
    let asked = &issue.set.publish.previews;
    if asked.is_empty() {
        let strands: Vec<&str> = issue.pages.iter().map(|page| page.strand).collect();
        return Ok(evenly(&strands).into_iter().map(|at| issue.pages[at].page.id.as_str()).collect());
    }
    if let Some(missing) = asked.iter().find(|one| issue.pages.iter().all(|page| page.page.id != one.value)) {
        let message = format!("edition `{}` has no page `{}` to preview", edition.id, missing.value);
        let problem = Diagnostic::error(codes::CONFLICT, missing.place, message)
            .with_label("not in that edition")
            .with_help("name a page that the edition has, or preview another `edition`");
        return Err(Box::new(problem));
    }
    let is_asked = |page: &&&SolvedPage| asked.iter().any(|one| one.value == page.page.id);
    Ok(issue.pages.iter().filter(is_asked).map(|page| page.page.id.as_str()).collect())
}

/// Some pages, given the strand of each: from each strand a number that differs by one at most while it has enough, spread over
/// it. Indices, from the lowest.
fn evenly(pages: &[&str]) -> Vec<usize> {
    let mut strands: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
    for (at, strand) in pages.iter().enumerate() {
        strands.entry(strand).or_default().push(at);
    }
    let most = strands.len().clamp(FEWEST_PREVIEWS as usize, MOST_PREVIEWS as usize).min(pages.len());
    let (mut shares, mut given) = (vec![0; strands.len()], 0);
    while given < most {
        for (share, own) in shares.iter_mut().zip(strands.values()) {
            if given < most && *share < own.len() {
                *share += 1;
                given += 1;
            }
        }
    }
    let spread = |(own, share): (&Vec<usize>, &usize)| -> Vec<usize> {
        (0..*share).map(|i| own[(2 * i + 1) * own.len() / (2 * share)]).collect()
    };
    let mut chosen: Vec<usize> = strands.values().zip(&shares).flat_map(spread).collect();
    chosen.sort_unstable();
    chosen
}

/// Draws the previews and the contact sheet of an edition and leaves them waiting; the previews in the order of the book. `index`
/// is the set, for errors.
pub(super) fn write(
    index: usize,
    issue: &Issue<'_>,
    (edition, laid): (&Edition, &LaidOut),
    stage: &Stage,
) -> Result<Vec<Preview>, Error> {
    let set = issue.set;
    let problem = |problem: Diagnostic| Error::Layout { set: index, diagnostics: vec![problem] };
    let refused = |missing: MissingGlyph| problem(unwritable(set, &missing));
    let chosen = chosen(issue, edition).map_err(|missing| problem(*missing))?;
    let mark = set.publish.watermark.as_ref().map_or(set.title.as_str(), |mark| &mark.value);
    let stamp = Tongue::of(edition.language).say("bundle-not-to-scale");
    let mut studio = Studio { title: &set.title, mark, stamp, refused: &refused, scratch: Scratch::default() };
    let mut previews = Vec::new();
    let is_shown = |sheet: &&Sheet| sheet.id == "cover" || chosen.contains(&sheet.id.as_str());
    for (number, sheet) in laid.sheets.iter().filter(is_shown).enumerate() {
        let file = format!("previews/{number}-{}.png", sheet.id);
        stage.write(&file, &studio.preview(sheet)?.to_png(&sheet.id)?)?;
        previews.push(Preview { file, page: sheet.id.clone() });
    }
    let sheets: Vec<&Sheet> = laid.sheets.iter().filter(|sheet| !tells_answers(sheet)).collect();
    stage.write(CONTACT_SHEET, &studio.contact(&sheets)?.to_png(CONTACT_SHEET)?)?;
    Ok(previews)
}

/// Whether it is a sheet of the answer key.
fn tells_answers(sheet: &Sheet) -> bool {
    sheet.id == "answers" || sheet.id.starts_with("answers-")
}

fn unwritable(set: &SetSpec, missing: &MissingGlyph) -> Diagnostic {
    let place = set.publish.watermark.as_ref().map(|mark| mark.place);
    Diagnostic::error(codes::TEXT, place, missing.to_string())
        .with_label("on the previews")
        .with_help("write it with letters of the Latin alphabet")
}

/// Draws cards.
struct Studio<'a> {
    title: &'a str,
    /// Across the pages.
    mark: &'a str,
    /// Below them.
    stamp: String,
    /// The error of a letter without a glyph.
    refused: &'a dyn Fn(MissingGlyph) -> Error,
    scratch: Scratch,
}

impl Studio<'_> {
    /// A page with the watermark across it, and below it the stamp and the title: one block in the middle.
    fn preview(&mut self, sheet: &Sheet) -> Result<Picture, Error> {
        let (width, height) = (f64::from(SIZE.0), f64::from(SIZE.1));
        let ppi = fitting(sheet.size, ROOM, MOST_PPI);
        let mut page = Picture::of(sheet, ppi, &mut self.scratch)?;
        let across = watermark(self.mark, sheet.size).map_err(self.refused)?;
        page.shade(&Picture::of(&across, ppi, &mut self.scratch)?, SHADE.0, SHADE.1);
        let top = ((height - real(page.height) - 124.0) / 2.0).floor();
        let (middle, below) = (width / 2.0, top + real(page.height));
        let labels = [
            label(&self.stamp, (middle, below + 64.0), 18.0, true, true),
            label(self.title, (middle, below + 124.0), 14.0, true, false),
        ];
        let mut picture = self.card((width, height), &labels)?;
        let at = ((picture.width - page.width) / 2, whole(top));
        picture.lay(&page, at);
        picture.frame(at, (page.width, page.height), EDGE);
        Ok(picture)
    }

    /// All pages in rows, each with its number.
    fn contact(&mut self, sheets: &[&Sheet]) -> Result<Picture, Error> {
        let page = sheets.iter().fold(Size::ZERO, |most, sheet| {
            Size::new(most.width.max(sheet.size.width), most.height.max(sheet.size.height))
        });
        let grid = Rows::of(sheets.len(), page);
        let (width, height) = (CONTACT.0, (HEAD + real(grid.rows) * grid.pitch.1 - BETWEEN + FOOT).ceil());
        let mut labels = vec![
            label(self.title, (width / 2.0, 105.0), 30.0, true, false),
            label(&self.stamp, (width / 2.0, height - 70.0), 18.0, true, true),
        ];
        for (index, sheet) in sheets.iter().enumerate() {
            let (x, y) = grid.at(index);
            labels.push(label(&sheet.number.to_string(), (x, y + grid.cell.1 + 24.0), 11.0, false, false));
        }
        let mut picture = self.card((width, height), &labels)?;
        for (index, sheet) in sheets.iter().enumerate() {
            let page = Picture::of(sheet, grid.ppi, &mut self.scratch)?;
            let (x, y) = grid.at(index);
            let at = (whole(x), whole(y));
            picture.lay(&page, at);
            picture.frame(at, (page.width, page.height), EDGE);
        }
        Ok(picture)
    }

    /// A card of so many pixels with these words.
    fn card(&mut self, (width, height): (f64, f64), labels: &[Label]) -> Result<Picture, Error> {
        let card = card(Size::new(mm(width), mm(height)), labels).map_err(self.refused)?;
        Picture::of(&card, CARD, &mut self.scratch)
    }
}

/// How the pages of a contact sheet stand.
#[derive(Debug)]
struct Rows {
    ppi: Ppi,
    columns: usize,
    rows: usize,
    /// Pixels of a page.
    cell: (f64, f64),
    /// From page to page.
    pitch: (f64, f64),
    /// Left end of the first column.
    left: f64,
}

impl Rows {
    /// The largest pages with which so many of this size fit; very many get the smallest, and a sheet as high as it must be.
    fn of(count: usize, page: Size) -> Self {
        let fits = |rows: &Self| HEAD + real(rows.rows) * rows.pitch.1 + FOOT <= CONTACT.1;
        let all = (6..=40).rev().map(|ppi| Self::at_ppi(Ppi(ppi), count, page));
        all.into_iter().find(fits).unwrap_or_else(|| Self::at_ppi(Ppi(6), count, page))
    }

    fn at_ppi(ppi: Ppi, count: usize, page: Size) -> Self {
        let pixels = |mm: f64| (mm / 25.4 * f64::from(ppi.0)).round();
        let cell = (pixels(page.width), pixels(page.height));
        let pitch = (cell.0 + BETWEEN, cell.1 + NUMBER + BETWEEN);
        let columns = whole(((CONTACT.0 - 2.0 * MARGIN + BETWEEN) / pitch.0).floor()).clamp(1, count.max(1));
        let left = ((CONTACT.0 - (real(columns) * pitch.0 - BETWEEN)) / 2.0).floor();
        Self { ppi, columns, rows: count.div_ceil(columns), cell, pitch, left }
    }

    /// The upper left corner of a page.
    fn at(&self, index: usize) -> (f64, f64) {
        let (row, column) = (index / self.columns, index % self.columns);
        (self.left + real(column) * self.pitch.0, HEAD + real(row) * self.pitch.1)
    }
}

/// A line of words; places and size in pixels of the card and points.
fn label(words: &str, (x, y): (f64, f64), size: f64, strong: bool, boxed: bool) -> Label {
    let at = Point::new(mm(x), mm(y));
    Label { words: words.to_owned(), at, width: mm(1300.0), size: Pt(size), strong, boxed }
}

/// The highest resolution at which a page fits, at most `most`.
fn fitting(page: Size, room: (f64, f64), most: u32) -> Ppi {
    let fits = |ppi: &u32| {
        let scale = f64::from(*ppi) / 25.4;
        page.width * scale <= room.0 && page.height * scale <= room.1
    };
    Ppi((1..=most).rev().find(fits).unwrap_or(1))
}

/// Pixels of a card in mm.
fn mm(pixels: f64) -> f64 {
    pixels * 25.4 / f64::from(CARD.0)
}

#[expect(clippy::cast_precision_loss, reason = "pixels and pages are far below 2^53")]
fn real(whole: usize) -> f64 {
    whole as f64
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "places on a card, whole and not negative")]
fn whole(real: f64) -> usize {
    real as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn previews_come_from_every_strand() {
        // A page from the middle of each; where there are few strands, more from each.
        assert_eq!(evenly(&["toward", "toward", "toward", "away", "jump", "depth"]), [1, 3, 4, 5]);
        assert_eq!(evenly(&["toward", "toward", "toward", "toward", "away"]), [1, 3, 4]);
        assert_eq!(evenly(&["jump"; 9]), [1, 4, 7]);
        assert_eq!(evenly(&["jump", "away"]), [0, 1]);
        assert_eq!(evenly(&[]), Vec::<usize>::new());
    }

    #[test]
    fn a_page_on_a_preview_is_smaller_than_true_on_a_common_screen() {
        for page in [Size::new(210.0, 297.0), Size::new(215.9, 279.4), Size::new(320.0, 180.0)] {
            assert!(fitting(page, ROOM, MOST_PPI).0 <= 80);
        }
    }

    #[test]
    fn contact_sheets_keep_to_their_size_until_their_pages_are_smallest() {
        for count in [1, 7, 37, 120, 400] {
            let rows = Rows::of(count, Size::new(210.0, 297.0));
            assert!(rows.columns * rows.rows >= count);
            let is_higher = CONTACT.1 < HEAD + real(rows.rows) * rows.pitch.1 + FOOT;
            assert_eq!(is_higher, count == 400, "{count}: {rows:?}");
            assert!(!is_higher || rows.ppi == Ppi(6), "{count}");
            let (x, _) = rows.at(rows.columns - 1);
            assert!(MARGIN <= rows.left + 1.0 && x + rows.cell.0 <= CONTACT.0 - MARGIN + 1.0, "{count}");
        }
    }
}
