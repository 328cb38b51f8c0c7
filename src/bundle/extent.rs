//! How much of an edition a run writes, and the names of its files.

use std::ops::RangeInclusive;

use crate::layout::sheet::Sheet;
use crate::spec::{Edition, Formats};

/// What a run writes of one edition.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Extent {
    /// The formats.
    pub formats: Formats,
    /// First and last page, numbered as in the whole book.
    pub pages: RangeInclusive<u32>,
    /// Every page in at least the edition's own formats: the folder is replaced as a whole.
    pub whole: bool,
    /// Every page: the answers that are a book of their own are written with it.
    pub answers: bool,
}

impl Extent {
    /// The extent of an edition with so many pages. `None` unless the pages asked for are all in the book.
    pub fn new(
        edition: &Edition,
        book_pages: u32,
        formats: Option<Formats>,
        pages: Option<&RangeInclusive<u32>>,
    ) -> Option<Self> {
        let formats = formats.unwrap_or(edition.formats);
        let pages = pages.cloned().unwrap_or(1..=book_pages);
        let inside = 1 <= *pages.start() && pages.start() <= pages.end() && *pages.end() <= book_pages;
        let answers = pages == (1..=book_pages);
        let whole = answers && covers(formats, edition.formats);
        inside.then_some(Self { formats, pages, whole, answers })
    }

    /// The SVG file of a sheet, if this run writes it.
    pub fn svg(&self, sheet: &Sheet) -> Option<String> {
        (self.formats.svg && self.pages.contains(&sheet.number)).then(|| page_file(sheet, "svg"))
    }

    /// The PNG file of a sheet, if this run writes it.
    pub fn png(&self, sheet: &Sheet) -> Option<String> {
        (self.formats.png && self.pages.contains(&sheet.number)).then(|| page_file(sheet, "png"))
    }

    /// The PDF of the answers, where they are a book of their own with these sheets and this run writes it.
    pub fn answers_pdf(&self, sheets: &[Sheet], set_id: &str) -> Option<String> {
        (self.formats.pdf && self.answers && !sheets.is_empty()).then(|| answers_file(set_id))
    }

    /// The SVG and the PNG file of a sheet of such a book, if this run writes them.
    pub fn answers_page(&self, sheet: &Sheet, set_id: &str) -> [Option<String>; 2] {
        let name = |format: &str| format!("{format}/answers-{:03}-{set_id}.{format}", sheet.number);
        [(self.formats.svg, "svg"), (self.formats.png, "png")]
            .map(|(is_on, format)| (is_on && self.answers).then(|| name(format)))
    }

    /// All files of such a book that this run writes: PDF, then SVG and PNG page by page.
    pub fn answers_files(&self, sheets: &[Sheet], set_id: &str) -> Vec<String> {
        let pages = sheets.iter().flat_map(|sheet| self.answers_page(sheet, set_id)).flatten();
        self.answers_pdf(sheets, set_id).into_iter().chain(pages).collect()
    }
}

/// True where `formats` holds every format of `own`.
fn covers(formats: Formats, own: Formats) -> bool {
    own.pdf <= formats.pdf && own.svg <= formats.svg && own.png <= formats.png
}

/// The file of a sheet, below the folder of the edition: `svg/007-mooring-rings-2.svg`.
fn page_file(sheet: &Sheet, format: &str) -> String {
    format!("{format}/{:03}-{}.{format}", sheet.number, sheet.id)
}

/// The PDF of a set, below the folder of the edition.
pub fn pdf_file(set_id: &str) -> String {
    format!("{set_id}.pdf")
}

/// The PDF of the answers of a set, where they are a book of their own.
pub fn answers_file(set_id: &str) -> String {
    format!("{set_id}-answers.pdf")
}

/// The folder of the swatches, below the folder of the edition.
pub const INKS: &str = "inks";

/// The report, below the folder of the edition.
pub const REPORT: &str = "report.json";

#[cfg(test)]
mod tests {
    use super::*;
    use crate::colour::{Filter, Glasses, Ground};
    use crate::diagnostics::{FileId, Place};
    use crate::spec::{Answers, Colours, PageFormat};
    use crate::units::Ppi;

    const ALL: Formats = Formats { pdf: true, svg: true, png: true };
    const PDF: Formats = Formats { pdf: true, svg: false, png: false };

    fn edition(formats: Formats) -> Edition {
        Edition {
            id: "a4".into(),
            page: PageFormat::A4,
            ground: Ground::White,
            glasses: Glasses::ideal(Filter::Cyan, Filter::Red),
            colour: Colours::default(),
            ppi: Ppi(300),
            formats,
            answers: Answers::Turned,
            language: crate::language::Language::En,
            text: crate::spec::TextSize::Standard,
            hand: crate::spec::Hand::Right,
            gated: true,
            place: Place::start_of(FileId(0)),
        }
    }

    fn whole(own: Formats, formats: Option<Formats>, pages: Option<RangeInclusive<u32>>) -> Option<bool> {
        Extent::new(&edition(own), 9, formats, pages.as_ref()).map(|e| e.whole)
    }

    #[test]
    fn a_run_is_whole_with_every_page_in_every_own_format() {
        assert_eq!(whole(ALL, None, None), Some(true));
        assert_eq!(whole(ALL, Some(ALL), Some(1..=9)), Some(true));
        assert_eq!(whole(PDF, Some(ALL), None), Some(true));
        assert_eq!(whole(ALL, Some(PDF), None), Some(false));
        assert_eq!(whole(ALL, None, Some(2..=9)), Some(false));
    }

    #[test]
    fn pages_outside_the_book_have_no_extent() {
        assert_eq!(whole(ALL, None, Some(0..=3)), None);
        assert_eq!(whole(ALL, None, Some(9..=10)), None);
        assert_eq!(whole(ALL, None, Some(RangeInclusive::new(5, 4))), None);
        assert_eq!(whole(ALL, None, Some(9..=9)), Some(false));
    }
}
