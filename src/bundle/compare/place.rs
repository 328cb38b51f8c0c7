//! Where an erratum may be written: not among the files that are compared, and not over a file that is none. Nothing is
//! written here.

use std::fmt;
use std::path::{Component, Path, PathBuf};

use super::erratum::is_erratum;
use crate::bundle::write::read_text;

/// Why an erratum is not written to a path.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Refusal {
    /// The path lies inside one of the sets.
    Inside {
        /// The path.
        path: PathBuf,
        /// The folder of the set or bundle, as it was given.
        set: PathBuf,
    },
    /// There is something at the path that is no erratum.
    Foreign(PathBuf),
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Inside { path, set } => write!(
                f,
                "the erratum `{}` would lie inside `{}`, which is compared; nothing was written; name a file outside it",
                path.display(),
                set.display()
            ),
            Self::Foreign(path) => write!(
                f,
                "`{}` is there and is no erratum, so it is not replaced; nothing was written; name another file, or \
                 move this one away",
                path.display()
            ),
        }
    }
}

impl std::error::Error for Refusal {}

/// Says why an erratum must not be written to a path, with the two sets or bundles that are compared.
pub fn refuse(path: &Path, sets: [&Path; 2]) -> Result<(), Refusal> {
    let mut places = vec![whole(path)];
    // The place of the file itself as well, where it is a link to another.
    if let (Some(folder), Some(name)) = (path.parent(), path.file_name()) {
        places.push(whole(folder).join(name));
    }
    for set in sets {
        let folder = whole(if set.is_file() { set.parent().unwrap_or(set) } else { set });
        if places.iter().any(|place| place.starts_with(&folder)) {
            return Err(Refusal::Inside { path: path.to_owned(), set: set.to_owned() });
        }
    }
    let is_free = path.symlink_metadata().is_err();
    let is_ours = || path.is_file() && matches!(read_text(path), Ok(Some(text)) if is_erratum(&text));
    if is_free || is_ours() { Ok(()) } else { Err(Refusal::Foreign(path.to_owned())) }
}

/// A path from the root, without links and steps back as far as it is there.
fn whole(path: &Path) -> PathBuf {
    let path = if path.as_os_str().is_empty() { Path::new(".") } else { path };
    let path = if path.is_absolute() { path.to_owned() } else { Path::new(".").join(path) };
    let known = path.ancestors().find_map(|above| Some((above, above.canonicalize().ok()?)));
    let Some((above, mut found)) = known else { return path };
    for part in path.strip_prefix(above).unwrap_or(&path).components() {
        match part {
            Component::ParentDir => {
                found.pop();
            }
            Component::Normal(name) => found.push(name),
            Component::CurDir | Component::RootDir | Component::Prefix(_) => {}
        }
    }
    found
}
