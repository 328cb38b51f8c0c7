//! PNG pages: one index a pixel into a palette of exact mixes of the edition's inks.
//!
//! Words and furniture win over art wherever both stand; the overlap regions of the vector formats are not needed, for
//! overlap follows from the two coverages of each pixel.
//!
//! A page is made row by row and no page-sized buffer exists: the coverage of the left eye's art, of the right eye's
//! art and of the words is found for one row of pixels (`sweep`, `words`), packed into palette indices
//! (`palette`) and handed to the compressor (`file`). Memory therefore does not grow with the resolution, nor with
//! the number of pages.
//!
//! Nothing here may pick a colour, move a mark or know why it stands where it does.

mod bars;
mod cover;
mod file;
mod glyphs;
mod outline;
mod pad;
mod page;
mod palette;
pub mod panels;
mod patches;
mod sweep;
mod words;

use std::fmt;

use kurbo::Size;

use crate::layout::sheet::{Patch, Sheet};
use crate::units::{Mm, Ppi};

/// The longest side of a page in pixels.
pub const MAX_SIDE: u32 = 65_535;

/// The reusable buffers of one thread. Any sheet may follow any other; what a sheet leaves behind changes no byte of
/// the next one.
#[derive(Debug, Default)]
pub struct Scratch {
    page: page::Page,
    rows: page::Rows,
    glyphs: glyphs::Cache,
    packer: file::Packer,
}

/// Why a sheet has no PNG.
#[derive(Debug)]
pub enum PngError {
    /// The page would have no pixels, or more than [`MAX_SIDE`] on a side.
    Side {
        /// Page size of the sheet, mm.
        size: Size,
        /// Resolution that was asked for.
        ppi: Ppi,
    },
    /// An outline has a coordinate that is not a number or is beyond all bounds.
    Coordinate {
        /// Id of the sheet.
        sheet: String,
    },
    /// The patches of a sheet have more than [`Patch::MOST`] colours.
    Colours {
        /// Id of the sheet.
        sheet: String,
    },
    /// The container could not be written.
    Write(png::EncodingError),
}

impl fmt::Display for PngError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Side { size, ppi } => write!(
                f,
                "a page of `{} x {}` mm at `{}` ppi has no pixels or more than {MAX_SIDE} on a side; choose another `ppi`",
                size.width, size.height, ppi.0
            ),
            Self::Coordinate { sheet } => {
                write!(f, "an outline of sheet `{sheet}` has a coordinate that is not finite or is out of all bounds")
            }
            Self::Colours { sheet } => {
                write!(f, "the patches of sheet `{sheet}` have more than `{}` colours", Patch::MOST)
            }
            Self::Write(_) => write!(f, "the png file could not be written"),
        }
    }
}

impl std::error::Error for PngError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Self::Write(error) => Some(error),
            _ => None,
        }
    }
}

/// Renders one sheet. The same sheet and resolution give the same bytes on every run and machine.
///
/// The page has `round(mm / 25.4 * ppi)` pixels a side; positions keep the exact factor `ppi / 25.4`, so a part of a
/// pixel is kept as coverage and never rounded away. Content beyond the page is clipped.
///
/// Errors: [`PngError::Side`] for a page without pixels or with too many, [`PngError::Coordinate`] for outlines that
/// are not finite, [`PngError::Colours`] for too many colours of patches, [`PngError::Write`] if the container refuses its data. Never panics.
pub fn png(sheet: &Sheet, ppi: Ppi, scratch: &mut Scratch) -> Result<Vec<u8>, PngError> {
    let (width, height) = size_in_pixels(sheet.size, ppi).ok_or(PngError::Side { size: sheet.size, ppi })?;
    let Scratch { page, rows, glyphs, packer } = scratch;
    page.load(sheet, ppi, (width, height), glyphs)
        .map_err(|outline::NotFinite| PngError::Coordinate { sheet: sheet.id.clone() })?;
    if Patch::MOST < page.patch_colours().len() {
        return Err(PngError::Colours { sheet: sheet.id.clone() });
    }
    let palette = palette::Palette::new(&sheet.inks, page.has_art(), page.patch_colours());
    packer.start(file::line_len(width, &palette)).map_err(write_error)?;
    page.draw(rows, glyphs, &palette, packer).map_err(write_error)?;
    let data = packer.finish().map_err(write_error)?;
    let head = file::Head { width, height, ppi, palette: &palette, title: &sheet.title };
    file::container(&head, &data).map_err(PngError::Write)
}

fn write_error(error: std::io::Error) -> PngError {
    PngError::Write(png::EncodingError::IoError(error))
}

/// Pixels of a page: the nearest whole number of each side. `None` where a side has none or too many.
fn size_in_pixels(size: Size, ppi: Ppi) -> Option<(usize, usize)> {
    let side = |mm: f64| {
        let pixels = Mm(mm).to_pixels(ppi).round();
        (1.0..=f64::from(MAX_SIDE)).contains(&pixels).then(|| outline::index(pixels))
    };
    Some((side(size.width)?, side(size.height)?))
}
