//! Pictures of sheets: laid on one another, shaded, written as PNG. Whole numbers alone, so equal sheets give equal bytes.
//!
//! It knows no page and no bundle.

use std::io::Cursor;

use crate::layout::sheet::Sheet;
use crate::render::png::{self as raster, Scratch};
use crate::units::Ppi;

use super::super::error::Error;

/// A picture of red, green and blue, a byte each, row by row from the top.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Picture {
    pub(super) width: usize,
    pub(super) height: usize,
    rgb: Vec<u8>,
}

impl Picture {
    /// A sheet at this resolution.
    pub(super) fn of(sheet: &Sheet, ppi: Ppi, scratch: &mut Scratch) -> Result<Self, Error> {
        let bytes = raster::png(sheet, ppi, scratch);
        let bytes = bytes.map_err(|source| Error::Png { page: sheet.id.clone(), source })?;
        Self::read(&bytes).map_err(|source| Error::Picture { page: sheet.id.clone(), source: source.into() })
    }

    fn read(bytes: &[u8]) -> Result<Self, png::DecodingError> {
        let mut decoder = png::Decoder::new(Cursor::new(bytes));
        decoder.set_transformations(png::Transformations::EXPAND);
        let mut reader = decoder.read_info()?;
        let mut rgb = vec![0; reader.output_buffer_size().unwrap_or(0)];
        let info = reader.next_frame(&mut rgb)?;
        Ok(Self { width: info.width as usize, height: info.height as usize, rgb })
    }

    /// Lays a picture on this one, its upper left corner at `(x, y)`. What does not fit is left out.
    pub(super) fn lay(&mut self, other: &Self, (x, y): (usize, usize)) {
        let wide = other.width.min(self.width.saturating_sub(x)) * 3;
        for row in 0..other.height.min(self.height.saturating_sub(y)) {
            let (to, from) = (((y + row) * self.width + x) * 3, row * other.width * 3);
            self.rgb[to..to + wide].copy_from_slice(&other.rgb[from..from + wide]);
        }
    }

    /// Mixes a grey into this picture where another of the same size is dark: `share` of 255 where that is black.
    pub(super) fn shade(&mut self, mask: &Self, grey: u8, share: u8) {
        for (value, mask) in self.rgb.iter_mut().zip(&mask.rgb) {
            let part = u32::from(share) * u32::from(255 - mask);
            let mixed = (u32::from(*value) * (65_025 - part) + u32::from(grey) * part + 32_512) / 65_025;
            // A mean of two bytes is a byte.
            *value = mixed.to_le_bytes()[0];
        }
    }

    /// Draws a line of one pixel in a grey around a field of this picture.
    pub(super) fn frame(&mut self, (x, y): (usize, usize), (width, height): (usize, usize), grey: u8) {
        for row in y.saturating_sub(1)..=y + height {
            for column in x.saturating_sub(1)..=x + width {
                let inside = (x..x + width).contains(&column) && (y..y + height).contains(&row);
                if !inside && column < self.width && row < self.height {
                    let at = (row * self.width + column) * 3;
                    self.rgb[at..at + 3].fill(grey);
                }
            }
        }
    }

    /// The picture as a PNG file, in sRGB.
    pub(super) fn to_png(&self, page: &str) -> Result<Vec<u8>, Error> {
        self.write().map_err(|source| Error::Picture { page: page.to_owned(), source: source.into() })
    }

    fn write(&self) -> Result<Vec<u8>, png::EncodingError> {
        let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
        let mut out = Vec::new();
        let mut encoder = png::Encoder::new(&mut out, side(self.width), side(self.height));
        encoder.set_color(png::ColorType::Rgb);
        encoder.set_depth(png::BitDepth::Eight);
        encoder.set_compression(png::Compression::Balanced);
        encoder.set_source_srgb(png::SrgbRenderingIntent::RelativeColorimetric);
        let mut writer = encoder.write_header()?;
        writer.write_image_data(&self.rgb)?;
        writer.finish()?;
        Ok(out)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plain(width: usize, height: usize, value: u8) -> Picture {
        Picture { width, height, rgb: vec![value; width * height * 3] }
    }

    #[test]
    fn a_picture_is_read_as_written() {
        let mut picture = plain(5, 3, 200);
        picture.lay(&plain(2, 2, 7), (3, 2));
        assert_eq!(Picture::read(&picture.write().unwrap()).unwrap(), picture);
        assert_eq!(picture.rgb.iter().filter(|&&value| value == 7).count(), 2 * 3);
    }

    #[test]
    fn a_shade_is_full_under_black_and_none_under_white() {
        let shaded = |mask| {
            let mut page = plain(1, 1, 255);
            page.shade(&plain(1, 1, mask), 100, 51);
            page.rgb[0]
        };
        // A fifth of the way from 255 to 100.
        assert_eq!([shaded(0), shaded(255)], [224, 255]);
    }

    #[test]
    fn a_frame_lies_around_its_field() {
        let mut picture = plain(4, 4, 255);
        picture.frame((1, 1), (2, 2), 0);
        let dark = picture.rgb.chunks(3).filter(|pixel| pixel[0] == 0).count();
        assert_eq!((dark, picture.rgb[(4 + 1) * 3]), (12, 255));
    }
}
