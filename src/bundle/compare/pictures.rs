//! Before, after and difference of each page that changed, as pictures: in the first edition that both sets have.
//!
//! The files are small copies to look at: no page of the book, not to scale and not for the glasses. They say so.

use std::path::{Path, PathBuf};

use crate::bundle::error::Error;
use crate::bundle::inked::Inked;
use crate::bundle::prepare::Book;
use crate::bundle::write::put;
use crate::colour::{Inks, Srgb8};
use crate::layout::LaidOut;
use crate::layout::compared::{Column, strip};
use crate::layout::sheet::Sheet;
use crate::render::png::Scratch;
use crate::render::png::panels::{Tones, panels};
use crate::spec::Edition;
use crate::units::Ppi;

use super::class::Class;
use super::diff::{Comparison, Happened};

/// Dark and light enough to be told apart without colour: design choice.
const TONES: Tones = Tones {
    ground: Srgb8([255; 3]),
    margin: Srgb8([234; 3]),
    same: Srgb8([198; 3]),
    old: Srgb8([224, 138, 24]),
    new: Srgb8([22, 58, 140]),
    other: Srgb8([122, 70, 122]),
};
const BLACK: Srgb8 = Srgb8([0; 3]);
/// The strip has no art.
const INKS: Inks = Inks { left: BLACK, right: BLACK, both: BLACK, ground: TONES.margin, text: BLACK };

/// Writes a picture for each page that differs in the first edition that both books have, and gives the files. Where that
/// edition itself differs in more than words, all pages that both have are drawn.
///
/// # Errors
/// What cannot be laid out, rendered or written.
pub fn pictures(
    (old, new): (&Book<'_>, &Book<'_>),
    comparison: &Comparison,
    folder: &Path,
    ppi: Ppi,
) -> Result<Vec<PathBuf>, Error> {
    let Some((before, after)) = common(old, new) else { return Ok(Vec::new()) };
    let (old_laid, new_laid) = (lay_out(0, old, before)?, lay_out(1, new, after)?);
    let (mut files, mut scratch) = (Vec::new(), Scratch::default());
    for id in chosen(new, comparison, &after.id) {
        let (Some(was), Some(is)) = (sheet(&old_laid, id), sheet(&new_laid, id)) else { continue };
        let columns = columns((old, was), (new, is));
        let mut problems = Vec::new();
        let strip = |pixels: usize| {
            let width = f64::from(u32::try_from(pixels).unwrap_or(u32::MAX)) * 25.4 / f64::from(ppi.0);
            strip(&columns, width, INKS).unwrap_or_else(|found| {
                problems = found;
                is.clone()
            })
        };
        let drawn = panels((was, is), strip, &TONES, ppi, &mut scratch);
        if !problems.is_empty() {
            return Err(Error::Layout { set: 1, diagnostics: problems });
        }
        let path = folder.join(format!("{:03}-{id}.png", is.number));
        put(&path, &drawn.map_err(|source| Error::Png { page: id.to_owned(), source })?)?;
        files.push(path);
    }
    Ok(files)
}

/// The first edition of the new book that the old one has too.
fn common<'a>(old: &Book<'a>, new: &Book<'a>) -> Option<(&'a Edition, &'a Edition)> {
    new.set.editions.iter().find_map(|after| Some((old.set.editions.iter().find(|e| e.id == after.id)?, after)))
}

fn lay_out(set: usize, book: &Book<'_>, edition: &Edition) -> Result<LaidOut, Error> {
    let laid = book.lay_out(edition, &Inked::of(edition));
    laid.map_err(|diagnostics| Error::Layout { set, diagnostics })
}

fn sheet<'a>(laid: &'a LaidOut, id: &str) -> Option<&'a Sheet> {
    laid.sheets.iter().find(|sheet| sheet.id == id)
}

/// The ids of the pages to draw, in the order of the new book.
fn chosen<'a>(new: &Book<'a>, comparison: &Comparison, edition: &str) -> Vec<&'a str> {
    let other = |item: &super::diff::ItemChange| item.id == edition && Class::Patch < item.class;
    let all = comparison.editions.iter().any(other);
    let differs = |id: &str| {
        comparison.pages.iter().any(|page| {
            let facts = !page.differences.is_empty() || !page.features.is_empty() || !page.questions.is_empty();
            page.id == id && page.happened == Happened::Changed && facts
        })
    };
    new.pages.iter().map(|page| page.page.id.as_str()).filter(|id| all || differs(id)).collect()
}

/// The words over the three panels.
fn columns((old, was): (&Book<'_>, &Sheet), (new, is): (&Book<'_>, &Sheet)) -> [Column; 3] {
    let head = |word: &str, book: &Book<'_>, sheet: &Sheet| {
        format!("{word}: version {}, page {}", book.set.version, sheet.number)
    };
    let note = |colour: Srgb8, words: &str| (Some(colour), words.to_owned());
    let small = || vec![(None, "Small copy: not to scale, not for the glasses.".to_owned())];
    [
        Column { head: head("Before", old, was), notes: small() },
        Column { head: head("After", new, is), notes: small() },
        Column {
            head: "Difference".to_owned(),
            notes: vec![
                note(TONES.old, "before"),
                note(TONES.new, "after"),
                note(TONES.other, "other ink"),
                note(TONES.same, "alike"),
            ],
        },
    ]
}
