//! The pictures of a set from disk, each read and drawn out once. Nothing below this room opens a file.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::fs::File;
use std::io::{self, Read as _};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::artwork;
use crate::scene::{Drawing, Grid, Picture};
use crate::spec::picture::{Pictures, Refusal};
use crate::spec::text::shown;

/// The largest picture that is read, in bytes (4 MiB). Design choice: a hundred times a busy drawing.
pub const MOST_BYTES: u64 = 4 << 20;

/// What came of each path, so that a picture named twice is read once.
type Known<T> = RefCell<BTreeMap<String, Result<Arc<T>, Refusal>>>;

/// The pictures in the folder of a set.
#[derive(Debug)]
pub struct Folder {
    /// The folder of `set.toml`; empty for the working folder.
    home: PathBuf,
    drawings: Known<Drawing>,
    parts: Known<Picture>,
    grids: Known<Grid>,
}

impl Folder {
    /// The pictures below this folder. Nothing is read yet.
    pub fn new(home: &Path) -> Self {
        let home = home.to_owned();
        Self { home, drawings: Known::default(), parts: Known::default(), grids: Known::default() }
    }

    /// The paths of the pictures that were asked for, from the folder of the set.
    pub fn paths(&self) -> BTreeSet<String> {
        let (drawings, parts, grids) = (self.drawings.borrow(), self.parts.borrow(), self.grids.borrow());
        drawings.keys().chain(parts.keys()).chain(grids.keys()).cloned().collect()
    }

    /// A picture by its path: as known, or read now by `make`, which gets its name and its bytes.
    fn get<T>(
        &self,
        known: &Known<T>,
        path: &str,
        make: impl FnOnce(&str, &[u8]) -> Result<T, Refusal>,
    ) -> Result<Arc<T>, Refusal> {
        if let Some(seen) = known.borrow().get(path) {
            return seen.clone();
        }
        let made = self.bytes(path).and_then(|bytes| make(&name_of(path), &bytes)).map(Arc::new);
        let made = made.map_err(|refusal| Refusal { message: format!("`{path}`: {}", refusal.message), ..refusal });
        known.borrow_mut().insert(path.to_owned(), made.clone());
        made
    }

    /// The bytes of a picture, or why it cannot be used.
    fn bytes(&self, listed: &str) -> Result<Vec<u8>, Refusal> {
        let path = self.home.join(listed);
        let unreadable = |problem: io::Error| {
            if problem.kind() == io::ErrorKind::NotFound {
                Refusal::new("there is no such file", "put the file there, or correct the path")
            } else {
                Refusal::new(format!("cannot be read: {problem}"), "make the file readable")
            }
        };
        if !inside(&self.home, &path).map_err(unreadable)? {
            let message = "is a link that leads out of the folder of the set";
            return Err(Refusal::new(message, "copy the file into the folder"));
        }
        let meta = path.metadata().map_err(unreadable)?;
        if !meta.is_file() {
            return Err(Refusal::new("is not a plain file", "put a picture there"));
        }
        let mut bytes = Vec::new();
        // The file may grow after its size was asked for.
        let file = File::open(path).map_err(unreadable)?;
        if meta.len() <= MOST_BYTES {
            file.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(unreadable)?;
        }
        let length = meta.len().max(bytes.len() as u64);
        if MOST_BYTES < length {
            let message = format!("has {length} bytes, above the limit of {MOST_BYTES} bytes");
            return Err(Refusal::new(message, "simplify the picture"));
        }
        Ok(bytes)
    }
}

impl Pictures for Folder {
    fn drawing(&self, path: &str) -> Result<Arc<Drawing>, Refusal> {
        self.get(&self.drawings, path, artwork::drawing)
    }

    fn parts(&self, path: &str) -> Result<Arc<Picture>, Refusal> {
        self.get(&self.parts, path, artwork::parts)
    }

    fn grid(&self, path: &str) -> Result<Arc<Grid>, Refusal> {
        self.get(&self.grids, path, artwork::grid)
    }
}

/// Whether a path, its links followed, stays in a folder; an empty one is the working folder.
pub(super) fn inside(home: &Path, path: &Path) -> io::Result<bool> {
    let home = if home.as_os_str().is_empty() { Path::new(".") } else { home };
    Ok(path.canonicalize()?.starts_with(home.canonicalize()?))
}

/// What pages call a picture: the stem of its file, with blanks for hyphens.
fn name_of(path: &str) -> String {
    let name = path.rsplit('/').next().unwrap_or(path);
    shown(name.split('.').next().unwrap_or(name)).replace('-', " ")
}
