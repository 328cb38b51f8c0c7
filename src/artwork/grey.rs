//! Grey PNG → a grid of shares: white is 1, black is 0, in straight proportion to the numbers in the file.

use std::io::Cursor;

use png::{BitDepth, ColorType, Decoder, DecodingError, Limits, Transformations};

use crate::scene::Grid;
use crate::spec::picture::Refusal;
use crate::spec::text::shown;

/// The most pixels of a picture. Design choice: five to a millimetre over the whole art field and more.
const MOST_PIXELS: u64 = 1_000_000;
/// The most memory that reading may take, in bytes.
const MOST_MEMORY: usize = 16 << 20;

/// A PNG as a grid of shares. `name` is what pages call it.
///
/// Colour and transparency are refused: how bright a colour is, and what lies behind a clear place, is the author's
/// to say.
pub fn grid(name: &str, bytes: &[u8]) -> Result<Grid, Refusal> {
    let mut decoder = Decoder::new_with_limits(Cursor::new(bytes), Limits { bytes: MOST_MEMORY });
    decoder.set_ignore_text_chunk(true);
    decoder.set_ignore_iccp_chunk(true);
    decoder.set_transformations(Transformations::IDENTITY);
    let header = decoder.read_header_info().map_err(|problem| unreadable(&problem))?;
    let (width, height, depth) = (header.width, header.height, header.bit_depth);
    check(width, height, header.color_type)?;
    let mut reader = decoder.read_info().map_err(|problem| unreadable(&problem))?;
    let mut buffer = vec![0; reader.output_buffer_size().unwrap_or_default()];
    let frame = reader.next_frame(&mut buffer).map_err(|problem| unreadable(&problem))?;
    let rows = buffer.chunks_exact(frame.line_size.max(1)).take(height as usize);
    let shares = rows.flat_map(|row| shares(row, width as usize, depth)).collect();
    Ok(Grid { name: name.to_owned(), columns: width as usize, shares })
}

fn check(width: u32, height: u32, colour: ColorType) -> Result<(), Refusal> {
    if MOST_PIXELS < u64::from(width) * u64::from(height) {
        let message = format!("has {width} by {height} pixels, above the limit of {MOST_PIXELS} in all");
        return Err(Refusal::new(message, "scale it down: depth changes slowly from place to place"));
    }
    if width.min(height) < 2 {
        let message = format!("has {width} by {height} pixels, below the least, 2 by 2");
        return Err(Refusal::new(message, "make it larger"));
    }
    let found = match colour {
        ColorType::Grayscale => return Ok(()),
        ColorType::GrayscaleAlpha => "is grey with transparency",
        ColorType::Rgb => "is in colour",
        ColorType::Rgba => "is in colour with transparency",
        ColorType::Indexed => "has a palette",
    };
    Err(Refusal::new(found, "save it as grey without transparency, 8 or 16 bits"))
}

fn unreadable(problem: &DecodingError) -> Refusal {
    Refusal::new(format!("cannot be read as PNG: {}", shown(&problem.to_string())), "save it again as PNG")
}

/// The shares of a row of so many grey pixels.
fn shares(row: &[u8], width: usize, depth: BitDepth) -> Vec<f64> {
    if depth == BitDepth::Sixteen {
        let pairs = row.chunks_exact(2).take(width);
        return pairs.map(|pair| f64::from(u16::from_be_bytes([pair[0], pair[1]])) / f64::from(u16::MAX)).collect();
    }
    let bits = match depth {
        BitDepth::One => 1,
        BitDepth::Two => 2,
        BitDepth::Four => 4,
        BitDepth::Eight | BitDepth::Sixteen => 8,
    };
    let (in_byte, white) = (8 / bits, (1_u16 << bits) - 1);
    let grey = |i: usize| u16::from(row[i / in_byte]) >> (8 - bits - bits * (i % in_byte)) & white;
    (0..width.min(row.len() * in_byte)).map(|i| f64::from(grey(i)) / f64::from(white)).collect()
}
