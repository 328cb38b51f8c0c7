//! PNG. Stand-in.

use std::fmt;

use crate::layout::sheet::Sheet;
use crate::units::Ppi;

/// Buffers that are used again from page to page.
#[derive(Debug, Default)]
pub struct Scratch {
    bytes: Vec<u8>,
}

/// Why a page could not be drawn.
#[derive(Debug)]
pub struct PngError;

impl fmt::Display for PngError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("page too large")
    }
}

impl std::error::Error for PngError {}

/// One sheet as PNG.
pub fn png(sheet: &Sheet, ppi: Ppi, scratch: &mut Scratch) -> Result<Vec<u8>, PngError> {
    scratch.bytes.clear();
    scratch.bytes.extend_from_slice(b"\x89PNG\r\n\x1a\n");
    scratch.bytes.extend_from_slice(format!("{} {}", sheet.id, ppi.0).as_bytes());
    Ok(scratch.bytes.clone())
}
