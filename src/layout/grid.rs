//! One grid and one type scale for every sheet.
//!
//! The art field is the same on every page format, 180 × 120 mm, so that one scene fits them all. Text stands on lines
//! of one leading, so that columns share their baselines.

use kurbo::{Point, Rect, Size, Vec2};

use crate::spec::{PageFormat, TextSize};
use crate::units::{Mm, Pt};

use super::sheet::{Face, Tone};
use super::text::{Align, Style};

/// Size of the art field, mm: fits between the margins of A4 and Letter, and beside the text of a 16:9 page.
pub const ART_FIELD: Size = Size::new(180.0, 120.0);
/// Distance between the baselines of body text, mm.
pub const LEADING: f64 = 5.2;
/// Between two columns, mm.
pub const GUTTER: f64 = 8.0;

/// Where things stand on a page of one format, page mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grid {
    /// The page.
    pub size: Size,
    /// Inside its margins.
    pub safe: Rect,
    /// The art field of exercise pages.
    pub art: Rect,
    /// Whether text stands beside the art, not below it.
    pub beside: bool,
}

impl Grid {
    /// The grid of a page format.
    pub fn of(format: PageFormat) -> Self {
        match format {
            PageFormat::A4 => Self::portrait(Size::new(210.0, 297.0), 12.0, 34.0),
            PageFormat::Letter => Self::portrait(Size::new(215.9, 279.4), 8.0, 26.5),
            PageFormat::Wide => {
                let size = Size::new(320.0, 180.0);
                let safe = Rect::new(10.0, 6.0, 310.0, 176.0);
                Self { size, safe, art: Rect::from_origin_size((safe.x0, safe.y0 + 27.0), ART_FIELD), beside: true }
            }
        }
    }

    /// A portrait page with margins of `edge` at top and foot and a head of this height above the art, mm.
    fn portrait(size: Size, edge: f64, head: f64) -> Self {
        let side = (size.width - ART_FIELD.width) / 2.0;
        let safe = Rect::new(side, edge, size.width - side, size.height - edge);
        let art = Rect::from_origin_size((side, safe.y0 + head), ART_FIELD);
        Self { size, safe, art, beside: false }
    }

    /// The same grid with the art moved down, for a page whose head takes more lines.
    pub fn lowered(self, by: f64) -> Self {
        Self { art: self.art + Vec2::new(0.0, by), ..self }
    }

    /// The middle of the art field.
    pub fn middle(&self) -> Point {
        self.art.center()
    }

    /// Two text columns between these heights.
    pub fn columns(&self, top: f64, bottom: f64) -> [Rect; 2] {
        let width = (self.safe.width() - GUTTER) / 2.0;
        let left = Rect::new(self.safe.x0, top, self.safe.x0 + width, bottom);
        [left, Rect::new(self.safe.x1 - width, top, self.safe.x1, bottom)]
    }
}

const fn style(face: Face, points: f64, leading: f64, tone: Tone) -> Style {
    Style { face, size: Pt(points), leading: Mm(leading), tone, align: Align::Start }
}

/// Title of the book, on the cover.
pub const COVER_TITLE: Style = style(Face::Bold, 38.0, 16.0, Tone::FULL);
/// Title of a page.
pub const TITLE: Style = style(Face::Bold, 20.0, 8.4, Tone::FULL);
/// Heading inside a page.
pub const HEADING: Style = style(Face::Bold, 12.5, LEADING, Tone::FULL);
/// Body text: 12 pt, the smallest size of clear print for instructions.
pub const BODY: Style = style(Face::Regular, 12.0, LEADING, Tone::FULL);
/// Captions and small notes.
pub const CAPTION: Style = style(Face::Regular, 10.0, 4.4, Tone::FULL);
/// The footer and the line above a title.
pub const SMALL: Style = style(Face::Regular, 8.5, 3.7, Tone::QUIET);

/// A style as it is set in this size of text. Large print: body text of 18 pt; words that are small in standard print grow
/// to 16 pt, and titles, large already, grow less. Source: design choice, after the clear print sizes that are common
/// practice (12 pt, and 16 pt or more for large print).
pub fn scaled(style: &Style, text: TextSize) -> Style {
    let factor = match text {
        TextSize::Standard => return *style,
        TextSize::Large if HEADING.size.0 < style.size.0 => 1.2,
        TextSize::Large => (1.5_f64).max(16.0 / style.size.0),
    };
    Style { size: Pt(style.size.0 * factor), leading: Mm(style.leading.0 * factor), ..*style }
}
