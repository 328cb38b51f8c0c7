//! The TOML files of a set as written, read into checked values. All problems of all files are collected in one run.
//!
//! This room knows keys, quantities and places in files; what an exercise means is the business of `exercise`.
//!
//! The language is data ([`field`]): tables of keys with what each takes. Reading ([`document`], [`table`],
//! [`read`]), hints and spec reference all work from it. Text that is TOML only in part is read as far as it goes.

pub mod colours;
pub mod data;
pub mod depth;
pub mod document;
pub mod editions;
pub mod field;
pub mod matrix;
pub mod parts;
pub mod picture;
pub mod plan;
pub mod publish;
mod quantity;
pub mod read;
pub mod reader;
pub mod readers;
pub mod reference;
pub mod set;
pub mod suggest;
pub mod table;
pub mod text;
pub mod translation;
pub mod viewer;

use std::collections::BTreeMap;

use crate::colour::{Glasses, Ground};
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Language;
use crate::optics::Viewer;
use crate::plan::Practice;
use crate::units::Ppi;

pub use colours::{Accepted, Colours, MediumSource};
pub use parts::{Back, Front, Licence, Release};
pub use publish::Publish;
pub use quantity::Share;

/// Everything in `set.toml`, checked.
#[derive(Debug, Clone, PartialEq)]
pub struct SetSpec {
    /// Name of the output folder and files.
    pub id: String,
    /// Title of the book.
    pub title: String,
    /// One sentence for the cover.
    pub summary: Option<String>,
    /// Who wrote the set, for the cover.
    pub author: Option<String>,
    /// Semantic version, major.minor.patch.
    pub version: String,
    /// The only date that is printed, `YYYY-MM-DD`.
    pub date: String,
    /// Language of the words.
    pub language: Language,
    /// Whether the pages stand in no order of difficulty.
    pub free_order: bool,
    /// The viewer that pages are computed for.
    pub viewer: Viewer,
    /// What is known of the viewer's eyes, as written.
    pub known: viewer::Known,
    /// The id of the reader it is made for, where it is made for one.
    pub reader: Option<String>,
    /// The professional who decided what is theirs to decide, if one did.
    pub gate: Option<String>,
    /// Over how many weeks and days its pages come, if it has a plan.
    pub plan: Option<read::Placed<Practice>>,
    /// What a reader may do with it, if the author says so.
    pub licence: Option<Licence>,
    /// Its versions, the newest first; may be empty.
    pub releases: Vec<Release>,
    /// Where to write about errors.
    pub contact: Option<String>,
    /// The parts before its exercises, in the order of the book.
    pub front: Vec<Front>,
    /// The parts after its exercises, in the order of the book.
    pub back: Vec<Back>,
    /// What a bundle shows of it beforehand.
    pub publish: Publish,
    /// The editions, at least one, with unique ids.
    pub editions: Vec<Edition>,
}

/// One edition of the set.
#[derive(Debug, Clone, PartialEq)]
pub struct Edition {
    /// Name of its folder.
    pub id: String,
    /// Page format.
    pub page: PageFormat,
    /// Colour of the empty page.
    pub ground: Ground,
    /// Glasses as worn; the set's own unless the edition says otherwise.
    pub glasses: Glasses,
    /// Medium and inks.
    pub colour: Colours,
    /// Resolution of its PNG pages.
    pub ppi: Ppi,
    /// What is written.
    pub formats: Formats,
    /// Where its answers stand; the set's own place unless the edition says otherwise.
    pub answers: Answers,
    /// The language of its words; the set's own unless the edition says otherwise.
    pub language: Language,
    /// How large its words are.
    pub text: TextSize,
    /// The hand that the reader writes with.
    pub hand: Hand,
    /// Whether the pages that need the `[gate]` are in it.
    pub gated: bool,
    /// Its `[[edition]]` or `[[matrix]]` header.
    pub place: Place,
}

/// Page formats.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PageFormat {
    /// 210 × 297 mm, portrait.
    A4,
    /// 8.5 × 11 in (215.9 × 279.4 mm), portrait.
    Letter,
    /// 320 × 180 mm, a 16:9 screen page that fits a 15-inch laptop at true size.
    Wide,
}

impl PageFormat {
    /// As specs and covers write it.
    pub const fn name(self) -> &'static str {
        match self {
            PageFormat::A4 => "A4",
            PageFormat::Letter => "Letter",
            PageFormat::Wide => "16:9",
        }
    }
}

/// How large the words of an edition are. Art never grows: its size is its depth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum TextSize {
    /// Body text of 12 pt.
    #[default]
    Standard,
    /// Large print: body text of 18 pt, the words of an exercise on a sheet of their own.
    Large,
}

impl TextSize {
    /// All of them, in the order of [`TextSize::NAMES`].
    pub const ALL: [TextSize; 2] = [TextSize::Standard, TextSize::Large];
    /// As specs and reports write them.
    pub const NAMES: [&str; 2] = ["standard", "large"];

    /// As specs and reports write it.
    pub const fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}

/// The hand that the reader of an edition writes with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Hand {
    /// Boxes and tables for writing are laid out for the right hand.
    #[default]
    Right,
    /// The same mirrored, so that the left hand covers nothing. Art is never mirrored.
    Left,
}

impl Hand {
    /// All of them, in the order of [`Hand::NAMES`].
    pub const ALL: [Hand; 2] = [Hand::Right, Hand::Left];
    /// As specs and reports write them.
    pub const NAMES: [&str; 2] = ["right", "left"];

    /// As specs and reports write it.
    pub const fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}

/// Where the answers to the questions of a set stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Answers {
    /// On the last pages of the book, upside down.
    #[default]
    Turned,
    /// In files of their own.
    File,
    /// Nowhere but in the report.
    None,
}

impl Answers {
    /// As specs and reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            Answers::Turned => "turned",
            Answers::File => "file",
            Answers::None => "none",
        }
    }
}

/// Which files an edition is written as.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Formats {
    /// One PDF.
    pub pdf: bool,
    /// One SVG a page.
    pub svg: bool,
    /// One PNG a page.
    pub png: bool,
}

/// Keeps a name that must be unique, or pushes where the first one stands.
pub fn unique(
    reader: &mut reader::Reader<'_>,
    what: &str,
    name: read::Placed<String>,
    seen: &mut BTreeMap<String, Place>,
) -> Option<String> {
    if let Some(first) = seen.get(&name.value) {
        let message = format!("{what} `{}` is taken by the one on line {}", name.value, reader.line(*first));
        let problem = Diagnostic::error(codes::DUPLICATE, name.place, message)
            .with_label("the same name again")
            .with_help("give each its own name");
        reader.push(problem);
        return None;
    }
    seen.insert(name.value.clone(), name.place);
    Some(name.value)
}
