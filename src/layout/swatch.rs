//! The swatch sheet of an edition.

use crate::diagnostics::Diagnostic;

use super::{Book, LaidOut, lay_out as lay_out_book};

/// Lays out the swatch sheets of an edition.
pub fn lay_out(book: &Book<'_>) -> Result<LaidOut, Vec<Diagnostic>> {
    lay_out_book(book)
}
