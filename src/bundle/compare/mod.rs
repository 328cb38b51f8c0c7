//! Two issues of a set compared: what changed, page by page and in plain numbers, what that is worth, and whether the
//! version says so.
//!
//! Both are read and solved anew by this version of the program, so that what is compared is what the specs say. They are
//! compared in the languages that both have and for the viewer of the set; the books of readers follow from both and are
//! not compared one by one. Nothing here judges whether a change is good.
//!
//! # Classes
//!
//! | class | what changed | version |
//! |---|---|---|
//! | major | a depth, a place, a size, a shape or an eye; a draw of dots, its density or correlation; what appears or disappears | 1.4.2 → 2.0.0 |
//! | | an answer, the choices, a pass mark | |
//! | | an ink, the ground, the glasses, process inks | |
//! | | distance, ipd, range, base or balance of the viewer, or anything else that is known of them | |
//! | | a page or an edition that is gone (its id is not used again); another id of the set | |
//! | minor | a page or an edition that is new, a page that moved | 1.4.2 → 1.5.0 |
//! | | page format, size of text, language, hand, formats or place of the answers of an edition; plan; list of readers | |
//! | patch | words, title, author, parts, licence, gate; resolution; medium and forecast where inks stay; seed where draws and answers stay; what follows from the rest: grade, strand, time | 1.4.2 → 1.4.3 |
//!
//! A new number of a page is told, and no difference. In 0.x a major difference raises the second number: see
//! [`version`]. Source: `[SemVer2]` for what the three numbers mean; which change of a book is which is a
//! design choice.

pub mod class;
pub mod diff;
pub mod erratum;
pub mod facts;
mod name;
pub mod pictures;
pub mod place;
pub mod release;
pub mod version;
pub mod words;

use std::path::{Path, PathBuf};

/// Where the spec of a set or of a bundle is: a bundle keeps it in `spec/`.
pub fn spec_of(path: &Path) -> PathBuf {
    let inner = path.join("spec");
    if !path.join("set.toml").exists() && inner.join("set.toml").exists() { inner } else { path.to_owned() }
}
