//! PDF. Stand-in.

use std::fmt;

use crate::layout::sheet::Sheet;

/// What the document says about itself.
#[derive(Debug, Clone)]
pub struct PdfBook<'a> {
    /// Title.
    pub title: &'a str,
    /// Author.
    pub author: Option<&'a str>,
    /// Subject.
    pub subject: Option<&'a str>,
    /// Language tag.
    pub language: &'a str,
    /// `YYYY-MM-DD`.
    pub date: &'a str,
    /// Tells documents apart.
    pub id: &'a str,
}

/// Why a document could not be written.
#[derive(Debug)]
pub struct PdfError;

impl fmt::Display for PdfError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("document refused")
    }
}

impl std::error::Error for PdfError {}

/// The sheets as one document.
pub fn pdf(book: &PdfBook, sheets: &[Sheet]) -> Result<Vec<u8>, PdfError> {
    Ok(format!("%PDF-1.7 {} {}\n", book.title, sheets.len()).into_bytes())
}
