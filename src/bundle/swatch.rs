//! The inks of a set without its pages: the forecast of each edition, and its swatch and spectra sheets as files.
//!
//! They go into `inks/` in the folder of the edition, beside its pages; nothing else there is touched. A whole run of
//! `render` replaces the folder, and the swatches with it.

use std::path::{Path, PathBuf};

use crate::diagnostics::Diagnostic;
use crate::language::Tongue;
use crate::layout::{self, LaidOut, swatch};
use crate::render::png::{Scratch, png};
use crate::render::svg::svg;
use crate::spec::{Edition, SetSpec};

use super::colour_report::ColourPart;
use super::document::{Part, document};
use super::error::Error;
use super::extent::{INKS, REPORT};
use super::inked::Inked;
use super::json;
use super::run::choose;
use super::write::{Output, Stage};

/// An edition with its inks.
#[derive(Debug)]
pub struct Swatch<'a> {
    /// The edition.
    pub edition: &'a Edition,
    /// Its inks, judged.
    pub inked: Inked,
}

/// The inks of the editions asked for, in the order of the set; of all if none was. An error names one that is not
/// there.
pub fn swatches<'a>(set: &'a SetSpec, asked: &[String]) -> Result<Vec<Swatch<'a>>, Error> {
    let editions = choose(set, asked)?;
    Ok(editions.into_iter().map(|edition| Swatch { edition, inked: Inked::of(edition) }).collect())
}

/// Writes the sheets of each edition into `inks/` in its folder below `out`. Gives the folders. `index` is the set, for
/// errors.
pub fn write(out: &Path, index: usize, set: &SetSpec, swatches: &[Swatch<'_>]) -> Result<Vec<PathBuf>, Error> {
    let output = Output::open(out, &set.id, None)?;
    for one in swatches {
        let refused = |diagnostics| Error::Layout { set: index, diagnostics };
        let laid = lay_out(set, one).map_err(refused)?;
        let stage = output.stage(&one.edition.id, false)?;
        files(set, one, &laid, &stage)?;
    }
    output.commit()?;
    Ok(swatches.iter().map(|one| out.join(&set.id).join(&one.edition.id).join(INKS)).collect())
}

fn lay_out(set: &SetSpec, one: &Swatch<'_>) -> Result<LaidOut, Vec<Diagnostic>> {
    let Inked { plan, views } = &one.inked;
    swatch::lay_out(&layout::Book {
        set,
        edition: one.edition,
        plan,
        views,
        pages: &[],
        tongue: Tongue::of(one.edition.language),
    })
}

fn files(set: &SetSpec, one: &Swatch<'_>, laid: &LaidOut, stage: &Stage) -> Result<(), Error> {
    let mut scratch = Scratch::default();
    for sheet in &laid.sheets {
        let drawn = png(sheet, one.edition.ppi, &mut scratch);
        let bytes = drawn.map_err(|source| Error::Png { page: sheet.id.clone(), source })?;
        stage.write(&format!("{INKS}/{}.png", sheet.id), &bytes)?;
        stage.write(&format!("{INKS}/{}.svg", sheet.id), svg(sheet).as_bytes())?;
    }
    let pdf = document(set, (one.edition, &one.inked.plan), Part::Book, (&laid.sheets, &laid.sheets))?;
    stage.write(&format!("{INKS}/{INKS}.pdf"), &pdf)?;
    let report = json::to_vec(&ColourPart::new(one.edition, &one.inked.plan, &[])).map_err(Error::Report)?;
    stage.write(&format!("{INKS}/{REPORT}"), &report)
}
