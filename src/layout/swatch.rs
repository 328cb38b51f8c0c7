//! The inks of an edition by themselves: swatches with what each eye sees of them, and the spectra behind that.

use super::compose::Composer;
use super::grid::Grid;
use super::{Book, LaidOut, TYPESETTER, finish, parts};
use crate::diagnostics::Diagnostic;
use crate::language::Tongue;
use crate::spec::{MediumSource, TextSize};

/// What colours are seen on: "screen lcd", "print fogra39l under lamp d50".
pub fn medium(source: &MediumSource, tongue: &Tongue) -> String {
    match source {
        MediumSource::Unsaid => tongue.say("medium-unsaid"),
        MediumSource::Screen(name) => tongue.tell("medium-screen", &[("name", name.to_string().into())]),
        MediumSource::Print { solids, lamp } => {
            let args = [("solids", solids.to_string().into()), ("lamp", lamp.name().into())];
            tongue.tell("medium-print", &args)
        }
    }
}

/// Lays out the sheets `ink-swatches` and `ink-spectra`; the book needs no pages.
///
/// # Errors
/// What does not fit, with the sheet.
pub fn lay_out(book: &Book<'_>) -> Result<LaidOut, Vec<Diagnostic>> {
    TYPESETTER.with_borrow_mut(|setter| {
        let mut composer = Composer::new(setter, book.tongue, TextSize::Standard);
        let grid = Grid::of(book.edition.page);
        let drafts = parts::of_inks(&mut composer, &grid, book);
        let laid_out = finish(&mut composer, &grid, book, drafts);
        if composer.problems.is_empty() { Ok(laid_out) } else { Err(composer.problems) }
    })
}
