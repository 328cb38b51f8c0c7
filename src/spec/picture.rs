//! Pictures that an exercise file names. The bytes come from outside: this room never reads a disk.

use std::fmt;
use std::sync::Arc;

use crate::diagnostics::{Diagnostic, codes};
use crate::scene::{Drawing, Grid, Picture};

use super::read::{Raw, Read, Slot};
use super::reader::Reader;
use super::text::shown;

/// Where the pictures of a set come from. Paths are as written: from the folder of the set, and checked to stay in it.
pub trait Pictures: fmt::Debug {
    /// A drawing: all of the picture as one outline.
    fn drawing(&self, path: &str) -> Result<Arc<Drawing>, Refusal>;

    /// A picture in parts: one outline for each group that stands at the top.
    fn parts(&self, path: &str) -> Result<Arc<Picture>, Refusal>;

    /// A grid of shares from the greys of a picture: white is 1, black is 0.
    fn grid(&self, path: &str) -> Result<Arc<Grid>, Refusal>;
}

/// What keeps a picture from being used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// What was seen, against which limit.
    pub message: String,
    /// One way out.
    pub help: String,
}

impl Refusal {
    /// A message and its way out.
    pub fn new(message: impl Into<String>, help: impl Into<String>) -> Self {
        Self { message: message.into(), help: help.into() }
    }
}

/// Reads the path of a picture, then the picture; what is wrong with it is said at the path.
fn read<T>(
    reader: &mut Reader<'_>,
    slot: Slot<'_>,
    raw: Raw<'_>,
    get: impl FnOnce(&dyn Pictures, &str) -> Result<Arc<T>, Refusal>,
) -> Option<Arc<T>> {
    let path = String::read(reader, slot, raw)?;
    let nowhere = || Refusal::new(format!("there is no file `{}`", shown(&path)), "put the file there");
    match reader.pictures().ok_or_else(nowhere).and_then(|pictures| get(pictures, &path)) {
        Ok(picture) => Some(picture),
        Err(Refusal { message, help }) => {
            let problem = Diagnostic::error(codes::FILE, raw.place(reader), message);
            reader.push(problem.with_label("named here").with_help(help));
            None
        }
    }
}

impl Read for Arc<Drawing> {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        read(reader, slot, raw, |pictures, path| pictures.drawing(path))
    }
}

impl Read for Arc<Picture> {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        read(reader, slot, raw, |pictures, path| pictures.parts(path))
    }
}

impl Read for Arc<Grid> {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        read(reader, slot, raw, |pictures, path| pictures.grid(path))
    }
}
