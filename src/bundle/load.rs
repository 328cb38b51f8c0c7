//! Reads the files of a set. Stand-in: the reader of the spec language takes its place.

use std::fmt;
use std::path::{Path, PathBuf};

use crate::diagnostics::{Diagnostics, Sources};
use crate::exercise::Exercise;
use crate::spec::SetSpec;

/// A set as read: what could be understood, and every problem found.
#[derive(Debug, Clone, Default)]
pub struct Loaded {
    /// `set.toml`, where it could be understood.
    pub set: Option<SetSpec>,
    /// The exercises that could be understood, in book order.
    pub exercises: Vec<Exercise>,
    /// The texts of all files.
    pub sources: Sources,
    /// Every problem of every file.
    pub diagnostics: Diagnostics,
}

/// Why a set could not be read at all.
#[derive(Debug)]
pub struct LoadError {
    /// The file.
    pub path: PathBuf,
    /// What the system said.
    pub source: std::io::Error,
}

impl fmt::Display for LoadError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "cannot read `{}`: {}", self.path.display(), self.source)
    }
}

impl std::error::Error for LoadError {}

/// Reads a set: a folder with `set.toml`, or the file.
pub fn load(path: &Path) -> Result<Loaded, LoadError> {
    let file = if path.is_dir() { path.join("set.toml") } else { path.to_owned() };
    std::fs::read_to_string(&file).map_err(|source| LoadError { path: file, source })?;
    Ok(Loaded::default())
}
