//! Two sheets side by side, and their difference, as one picture: to see what changed from one issue to the next.
//!
//! The pictures are for the eye alone: nothing is measured in them. Sheets are rendered as ever, and read back. The
//! tones of the difference come from outside: this room picks none.

use std::io::{Cursor, Error as IoError};

use super::{PngError, Scratch, png};
use crate::colour::Srgb8;
use crate::layout::sheet::Sheet;
use crate::units::Ppi;

/// Between panels and around them, pixels.
pub const GAP: usize = 8;

/// The colours of a difference.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tones {
    /// The empty page.
    pub ground: Srgb8,
    /// Around the panels.
    pub margin: Srgb8,
    /// What both have, alike.
    pub same: Srgb8,
    /// What the old sheet alone has.
    pub old: Srgb8,
    /// What the new sheet alone has.
    pub new: Srgb8,
    /// What both have in different inks.
    pub other: Srgb8,
}

/// Pixels of a picture, row by row.
struct Pixels {
    width: usize,
    height: usize,
    rows: Vec<Srgb8>,
}

/// The old sheet, the new one and their difference from left to right, below a strip of words. `strip` makes its sheet
/// for so many pixels of width.
///
/// # Errors
/// As [`png()`].
pub fn panels(
    (old, new): (&Sheet, &Sheet),
    strip: impl FnOnce(usize) -> Sheet,
    tones: &Tones,
    ppi: Ppi,
    scratch: &mut Scratch,
) -> Result<Vec<u8>, PngError> {
    let (before, after) = (pixels(old, ppi, scratch)?, pixels(new, ppi, scratch)?);
    let difference = difference((&before, old.inks.ground), (&after, new.inks.ground), tones);
    let side = |of: fn(&Pixels) -> usize| of(&before).max(of(&after));
    let (width, height) = (side(|p| p.width), side(|p| p.height));
    let words = pixels(&strip(3 * width + 4 * GAP), ppi, scratch)?;
    let mut canvas = Pixels::new(3 * width + 4 * GAP, words.height + height + GAP, tones.margin);
    canvas.lay(&words, 0, 0);
    for (panel, index) in [&before, &after, &difference].into_iter().zip(0..) {
        canvas.lay(panel, GAP + index * (width + GAP), words.height);
    }
    canvas.file(&new.title)
}

impl Pixels {
    fn new(width: usize, height: usize, colour: Srgb8) -> Self {
        Self { width, height, rows: vec![colour; width * height] }
    }

    /// Puts another picture on this one; what does not fit is cut.
    fn lay(&mut self, other: &Self, x: usize, y: usize) {
        let width = other.width.min(self.width.saturating_sub(x));
        for row in 0..other.height.min(self.height.saturating_sub(y)) {
            let (from, to) = (row * other.width, (y + row) * self.width + x);
            self.rows[to..to + width].copy_from_slice(&other.rows[from..from + width]);
        }
    }

    fn at(&self, x: usize, y: usize) -> Option<Srgb8> {
        (x < self.width && y < self.height).then(|| self.rows[y * self.width + x])
    }

    fn file(&self, title: &str) -> Result<Vec<u8>, PngError> {
        let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
        let mut out = Vec::new();
        let mut encoder = png::Encoder::new(&mut out, side(self.width), side(self.height));
        encoder.set_color(png::ColorType::Rgb);
        encoder.set_depth(png::BitDepth::Eight);
        encoder.set_source_srgb(png::SrgbRenderingIntent::RelativeColorimetric);
        encoder.add_itxt_chunk("Title".to_owned(), title.to_owned()).map_err(PngError::Write)?;
        let bytes: Vec<u8> = self.rows.iter().flat_map(|pixel| pixel.0).collect();
        let mut writer = encoder.write_header().map_err(PngError::Write)?;
        writer.write_image_data(&bytes).map_err(PngError::Write)?;
        writer.finish().map_err(PngError::Write)?;
        Ok(out)
    }
}

/// A sheet as pixels: rendered, and read back.
fn pixels(sheet: &Sheet, ppi: Ppi, scratch: &mut Scratch) -> Result<Pixels, PngError> {
    let file = png(sheet, ppi, scratch)?;
    let unread = |error: png::DecodingError| PngError::Write(png::EncodingError::IoError(IoError::other(error)));
    let mut decoder = png::Decoder::new(Cursor::new(file));
    decoder.set_transformations(png::Transformations::EXPAND);
    let mut reader = decoder.read_info().map_err(unread)?;
    let mut bytes = vec![0; reader.output_buffer_size().unwrap_or_default()];
    let frame = reader.next_frame(&mut bytes).map_err(unread)?;
    let rows = bytes.chunks_exact(3).map(|pixel| Srgb8([pixel[0], pixel[1], pixel[2]])).collect();
    Ok(Pixels { width: frame.width as usize, height: frame.height as usize, rows })
}

/// The difference of two pictures, each with the colour of its empty page.
fn difference((old, bare): (&Pixels, Srgb8), (new, new_bare): (&Pixels, Srgb8), tones: &Tones) -> Pixels {
    let (width, height) = (old.width.max(new.width), old.height.max(new.height));
    let mut out = Pixels::new(width, height, tones.ground);
    for y in 0..height {
        for x in 0..width {
            let before = old.at(x, y).unwrap_or(bare);
            let after = new.at(x, y).unwrap_or(new_bare);
            out.rows[y * width + x] = pixel((before, off(before, bare)), (after, off(after, new_bare)), tones);
        }
    }
    out
}

/// One pixel of a difference, from the two pixels and how far each stands off its ground.
fn pixel((before, a): (Srgb8, f64), (after, b): (Srgb8, f64), tones: &Tones) -> Srgb8 {
    let common = a.min(b);
    // Soft edges of the same ink differ less than two inks do.
    let other = if 0.25 < off(before, after) - (a - b).abs() { common } else { 0.0 };
    let pixel = mix(tones.ground, tones.same, common - other);
    let pixel = mix(pixel, tones.other, other);
    let pixel = mix(pixel, tones.old, (a - b).max(0.0));
    mix(pixel, tones.new, (b - a).max(0.0))
}

/// How far two colours stand apart, 0 to 1: in the channel where they do most.
fn off(a: Srgb8, b: Srgb8) -> f64 {
    let channel = |i: usize| f64::from(a.0[i].abs_diff(b.0[i])) / 255.0;
    channel(0).max(channel(1)).max(channel(2))
}

/// Between two colours, by a share of the second.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "rounded and clamped to what eight bits hold"
)]
fn mix(a: Srgb8, b: Srgb8, share: f64) -> Srgb8 {
    let channel = |i: usize| {
        let (a, b) = (f64::from(a.0[i]), f64::from(b.0[i]));
        (a + (b - a) * share).round().clamp(0.0, 255.0) as u8
    };
    Srgb8([channel(0), channel(1), channel(2)])
}

#[cfg(test)]
mod tests {
    use super::*;

    const TONES: Tones = Tones {
        ground: Srgb8([255; 3]),
        margin: Srgb8([200; 3]),
        same: Srgb8([220; 3]),
        old: Srgb8([200, 100, 0]),
        new: Srgb8([0, 0, 200]),
        other: Srgb8([90, 0, 90]),
    };

    fn picture(pixels: &[[u8; 3]]) -> Pixels {
        Pixels { width: pixels.len(), height: 1, rows: pixels.iter().map(|pixel| Srgb8(*pixel)).collect() }
    }

    #[test]
    fn each_tone_says_what_it_says() {
        let (white, black, red, cyan) = ([255; 3], [0; 3], [255, 0, 0], [0, 255, 255]);
        let old = picture(&[white, black, black, white, red]);
        let new = picture(&[white, black, white, black, cyan]);
        let found = difference((&old, Srgb8(white)), (&new, Srgb8(white)), &TONES);
        assert_eq!(found.rows, [TONES.ground, TONES.same, TONES.old, TONES.new, TONES.other]);
    }

    #[test]
    fn a_ground_of_another_colour_is_no_mark() {
        let (old, new) = (picture(&[[255; 3]]), picture(&[[0; 3]]));
        assert_eq!(difference((&old, Srgb8([255; 3])), (&new, Srgb8([0; 3])), &TONES).rows, [TONES.ground]);
    }

    #[test]
    fn pictures_of_different_size_are_laid_at_one_corner() {
        let (old, new) = (picture(&[[255; 3]]), picture(&[[255; 3], [0; 3]]));
        let found = difference((&old, Srgb8([255; 3])), (&new, Srgb8([255; 3])), &TONES);
        assert_eq!((found.width, found.rows[1]), (2, TONES.new));
    }
}
