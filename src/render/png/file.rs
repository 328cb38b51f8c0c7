//! The PNG container: filtered and compressed rows, and the chunks that say what the numbers mean.
//!
//! There are no time stamps, and the same rows give the same bytes.

use std::borrow::Cow;
use std::io::{Result, Write};

use flate2::Compression;
use flate2::write::ZlibEncoder;

use super::palette::Palette;
use crate::units::Ppi;

/// Effort of the compressor.
const LEVEL: u32 = 2;

/// The gAMA value that ISO/IEC 15948, 11.3.3.5 gives for sRGB: 1/2.2 in hundred-thousandths.
const SRGB_GAMMA: u32 = 45455;

/// Filter type "None" of ISO/IEC 15948, 9.2: the bytes as they are.
pub(super) const NONE: u8 = 0;

/// Filter type "Up" of ISO/IEC 15948, 9.2: each byte less the byte above it.
const UP: u8 = 2;

/// Filters and compresses the rows of a page.
///
/// Rows go unfiltered: runs of one index and letters that come again are what the compressor finds best. A row equal to
/// the one above goes as "Up" with zeros.
#[derive(Debug)]
pub(super) struct Packer {
    zlib: ZlibEncoder<Vec<u8>>,
    same: Vec<u8>,
}

impl Default for Packer {
    fn default() -> Self {
        Self { zlib: ZlibEncoder::new(Vec::new(), Compression::new(LEVEL)), same: Vec::new() }
    }
}

impl Packer {
    /// Begins a page of lines of this many bytes.
    pub(super) fn start(&mut self, line: usize) -> Result<()> {
        self.zlib.reset(Vec::with_capacity(1 << 17))?;
        self.same.clear();
        self.same.resize(line, 0);
        self.same[0] = UP;
        Ok(())
    }

    /// Adds a row: its filter type, [`NONE`], and its palette indices.
    pub(super) fn row(&mut self, line: &[u8]) -> Result<()> {
        self.zlib.write_all(line)
    }

    /// Adds rows equal to the last one.
    pub(super) fn repeat(&mut self, rows: usize) -> Result<()> {
        (0..rows).try_for_each(|_| self.zlib.write_all(&self.same))
    }

    /// The compressed rows of the page.
    pub(super) fn finish(&mut self) -> Result<Vec<u8>> {
        self.zlib.reset(Vec::new())
    }
}

/// Bytes of a row: its filter type and its indices.
pub(super) fn line_len(width: usize, palette: &Palette) -> usize {
    1 + if palette.is_small() { width.div_ceil(2) } else { width }
}

/// What stands before the pixels in the file.
#[derive(Debug)]
pub(super) struct Head<'a> {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) ppi: Ppi,
    pub(super) palette: &'a Palette,
    pub(super) title: &'a str,
}

/// The whole file: the head in its chunks, then the compressed rows.
///
/// Colours are sRGB with relative colorimetric intent, with the gAMA and cHRM chunks for readers that know no sRGB.
/// pHYs says the resolution in pixels a metre.
pub(super) fn container(head: &Head, data: &[u8]) -> std::result::Result<Vec<u8>, png::EncodingError> {
    let mut out = Vec::with_capacity(data.len() + 2048);
    let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
    let mut encoder = png::Encoder::new(&mut out, side(head.width), side(head.height));
    encoder.set_color(png::ColorType::Indexed);
    encoder.set_depth(if head.palette.is_small() { png::BitDepth::Four } else { png::BitDepth::Eight });
    encoder.set_palette(Cow::Owned(head.palette.bytes()));
    encoder.set_source_srgb(png::SrgbRenderingIntent::RelativeColorimetric);
    encoder.set_source_gamma(png::ScaledFloat::from_scaled(SRGB_GAMMA));
    encoder.set_source_chromaticities(srgb_chromaticities());
    let per_metre = pixels_per_metre(head.ppi);
    encoder.set_pixel_dims(Some(png::PixelDimensions { xppu: per_metre, yppu: per_metre, unit: png::Unit::Meter }));
    encoder.add_itxt_chunk("Title".to_owned(), head.title.to_owned())?;
    let mut writer = encoder.write_header()?;
    writer.write_chunk(png::chunk::IDAT, data)?;
    writer.finish()?;
    Ok(out)
}

/// White point and primaries of sRGB as ISO/IEC 15948, 11.3.3.5 gives them for cHRM.
fn srgb_chromaticities() -> png::SourceChromaticities {
    png::SourceChromaticities {
        white: scaled(31270, 32900),
        red: scaled(64000, 33000),
        green: scaled(30000, 60000),
        blue: scaled(15000, 6000),
    }
}

fn scaled(x: u32, y: u32) -> (png::ScaledFloat, png::ScaledFloat) {
    (png::ScaledFloat::from_scaled(x), png::ScaledFloat::from_scaled(y))
}

/// 300 ppi are 11 811 pixels a metre: an inch is 0.0254 m, and the chunk holds whole numbers.
fn pixels_per_metre(ppi: Ppi) -> u32 {
    let nearest = (u64::from(ppi.0) * 10_000 + 127) / 254;
    u32::try_from(nearest).unwrap_or(u32::MAX)
}
