//! PDF. Stand-in.

use std::fmt;

use crate::layout::sheet::Sheet;

/// What a PDF says about itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PdfBook {
    /// Title, shown by viewers; not empty.
    pub title: String,
    /// Author, if there is one to name.
    pub author: Option<String>,
    /// One sentence about the book.
    pub subject: String,
    /// Words to find it by.
    pub keywords: Vec<String>,
    /// Language of the text, as a BCP 47 tag such as `en`.
    pub language: String,
    /// Year, month from 1, day from 1: the only date in the file.
    pub date: (u16, u8, u8),
    /// Tells this document from others: same id for the same edition of the same version.
    pub id: String,
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
