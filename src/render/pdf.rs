//! PDF: all sheets as one tagged book, conforming to PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1) at once.
//!
//! Colours are solid and device independent (sRGB), so inks keep their values; nothing blends. A book for a print shop
//! has process inks instead, as it is handed them. PDF/A takes those only with a profile of the press (ISO 19005-2,
//! 6.2.4.3), and none is bundled: such a book conforms to PDF/UA-1 alone. Text is drawn by glyph
//! and told by its words; every other mark belongs to a figure with words or is page furniture. The file asks viewers
//! to show its title. It cannot ask them to print at 100 %: the PDF library (krilla 0.8.2) has no `PrintScaling`
//! viewer preference, so the scale check page and the words beside it have to.

mod ink;
mod page;
mod tags;

use std::collections::BTreeMap;
use std::fmt;

use krilla::configure::{Accessibility, Archival, Configuration, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::error::KrillaError;
use krilla::geom::Point;
use krilla::metadata::{DateTime, Metadata};
use krilla::outline::{Outline, OutlineNode};
use krilla::tagging::TagTree;
use krilla::{Document, SerializeSettings};

use self::ink::{Fonts, Style};
use crate::colour::{Cmyk, Srgb8};
use crate::layout::sheet::Sheet;

/// What a PDF says about itself.
#[derive(Debug, Clone, PartialEq)]
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
    /// Draws in process inks: those of each ink and each patch on the sheets. `None`: draws in sRGB.
    pub process: Option<BTreeMap<Srgb8, Cmyk>>,
}

/// Why a book cannot be written. All but `Refused` name a fault in the sheets.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PdfError {
    /// There are no sheets.
    Empty,
    /// Two sheets have the same id.
    DuplicateSheet {
        /// The id.
        id: String,
    },
    /// A link leads to no sheet.
    UnknownTarget {
        /// The sheet with the link.
        sheet: String,
        /// The id it leads to.
        target: String,
    },
    /// Content stands where a tagged document has no place for it.
    Structure {
        /// The sheet.
        sheet: String,
        /// What stands where.
        problem: &'static str,
    },
    /// A number that cannot be drawn, or a glyph that does not fit its text or font.
    Content {
        /// The sheet.
        sheet: String,
        /// What is wrong.
        problem: &'static str,
    },
    /// The result would not conform; the library's reasons.
    Refused(String),
}

impl fmt::Display for PdfError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            PdfError::Empty => write!(f, "the book has no sheets"),
            PdfError::DuplicateSheet { id } => write!(f, "two sheets have the id `{id}`"),
            PdfError::UnknownTarget { sheet, target } => {
                write!(f, "sheet `{sheet}`: a link leads to `{target}`, which is no sheet of the book")
            }
            PdfError::Structure { sheet, problem } | PdfError::Content { sheet, problem } => {
                write!(f, "sheet `{sheet}`: {problem}")
            }
            PdfError::Refused(reasons) => write!(f, "the pdf would not conform to its standards: {reasons}"),
        }
    }
}

impl std::error::Error for PdfError {}

/// Writes the sheets, in order, as one PDF 1.7. The same input gives the same bytes.
pub fn pdf(book: &PdfBook, sheets: &[Sheet]) -> Result<Vec<u8>, PdfError> {
    let places = places(sheets)?;
    let style = Style { fonts: Fonts::new()?, process: book.process.as_ref() };
    let settings =
        SerializeSettings { configuration: configuration(book.process.is_none())?, ..SerializeSettings::default() };
    let mut document = Document::new_with(settings);
    let mut tree = TagTree::new().with_lang(Some(book.language.clone()));
    for (index, sheet) in sheets.iter().enumerate() {
        for node in page::write(&mut document, sheet, index, &places, &style)? {
            tree.push(node);
        }
    }
    document.set_metadata(metadata(book));
    document.set_outline(outline(sheets));
    document.set_tag_tree(tree);
    document.finish().map_err(refused)
}

/// Page indices by sheet id.
fn places(sheets: &[Sheet]) -> Result<BTreeMap<&str, usize>, PdfError> {
    if sheets.is_empty() {
        return Err(PdfError::Empty);
    }
    let mut places = BTreeMap::new();
    for (index, sheet) in sheets.iter().enumerate() {
        if places.insert(sheet.id.as_str(), index).is_some() {
            return Err(PdfError::DuplicateSheet { id: sheet.id.clone() });
        }
    }
    Ok(places)
}

/// PDF/UA-1, and PDF/A-2a where the book is to be `archival`.
fn configuration(archival: bool) -> Result<Configuration, PdfError> {
    let accessible = ConfigurationBuilder::new().with_accessibility_validator(Accessibility::UA1);
    let builder = if archival { accessible.with_archival_validator(Archival::A2_A) } else { accessible };
    builder.finish().map_err(|error| PdfError::Refused(format!("{error:?}")))
}

fn metadata(book: &PdfBook) -> Metadata {
    let (year, month, day) = book.date;
    let date = DateTime::new(year).month(month).day(day).hour(0).minute(0).second(0);
    let maker = concat!("depthpress ", env!("CARGO_PKG_VERSION"));
    Metadata::new()
        .title(book.title.clone())
        .authors(book.author.iter().cloned().collect())
        .description(book.subject.clone())
        .keywords(book.keywords.clone())
        .language(book.language.clone())
        .creation_date(date.utc_offset_hour(0).utc_offset_minute(0))
        .document_id(book.id.clone())
        .creator(maker.to_owned())
        .producer(maker.to_owned())
}

/// Bookmarks: sheets of level 0, each with the sheets of a higher level that follow it.
fn outline(sheets: &[Sheet]) -> Outline {
    let node = |index: usize, sheet: &Sheet| {
        OutlineNode::new(sheet.title.clone(), XyzDestination::new(index, Point::from_xy(0.0, 0.0)))
    };
    let mut outline = Outline::new();
    let mut part: Option<OutlineNode> = None;
    for (index, sheet) in sheets.iter().enumerate() {
        match &mut part {
            Some(part) if 0 < sheet.outline_level => part.push_child(node(index, sheet)),
            _ => part.replace(node(index, sheet)).into_iter().for_each(|done| outline.push_child(done)),
        }
    }
    part.into_iter().for_each(|done| outline.push_child(done));
    outline
}

fn refused(error: KrillaError) -> PdfError {
    PdfError::Refused(match error {
        KrillaError::Validation(reasons) => {
            let mut reasons: Vec<String> = reasons.iter().map(|(reason, _)| format!("{reason:?}")).collect();
            reasons.sort();
            reasons.join("; ")
        }
        other => other.to_string(),
    })
}
