//! `report.json` of a bundle: what is in it. What is on the pages tells the report of each edition.
//!
//! The structs here are the file format and nothing else uses them.

use serde::Serialize;

use crate::spec::{Edition, SetSpec};

use super::super::error::Error;
use super::super::extent::REPORT;
use super::super::json;
use super::super::report::Tool;
use super::super::run::Written;
use super::preview::{CONTACT_SHEET, Preview};
use super::{EDITIONS, Names};

/// Version of the format: raised when a key changes its meaning or goes away.
const SCHEMA: u32 = 1;

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    tool: Tool,
    set: SetPart<'a>,
    /// Whether these are all editions of the set.
    whole: bool,
    editions: Vec<EditionPart<'a>>,
    previews: Vec<PreviewPart<'a>>,
    contact_sheet: &'static str,
    /// The files of the set, as they were read.
    spec: &'a [String],
    /// The zip of the whole bundle.
    zip: String,
}

#[derive(Serialize)]
struct SetPart<'a> {
    id: &'a str,
    title: &'a str,
    version: &'a str,
    date: &'a str,
    language: &'static str,
}

#[derive(Serialize)]
struct EditionPart<'a> {
    id: &'a str,
    page: &'static str,
    ground: &'static str,
    glasses: GlassesPart,
    language: &'static str,
    text: &'static str,
    hand: &'static str,
    pages: u32,
    /// Its files, below the folder of the bundle.
    files: Vec<String>,
    /// What tells every number of its pages.
    report: String,
    zip: String,
}

#[derive(Serialize)]
struct GlassesPart {
    left: &'static str,
    right: &'static str,
}

#[derive(Serialize)]
struct PreviewPart<'a> {
    page: &'a str,
    file: &'a str,
}

/// The report as JSON.
pub(super) fn report(
    set: &SetSpec,
    editions: &[(&Edition, &Written)],
    previews: &[Preview],
    spec: &[String],
    names: &Names,
) -> Result<Vec<u8>, Error> {
    let report = Report {
        schema: SCHEMA,
        tool: Tool::THIS,
        set: SetPart {
            id: &set.id,
            title: &set.title,
            version: &set.version,
            date: &set.date,
            language: set.language.tag(),
        },
        whole: editions.len() == set.editions.len(),
        editions: editions.iter().map(|(edition, written)| EditionPart::new(edition, written, names)).collect(),
        previews: previews.iter().map(|preview| PreviewPart { page: &preview.page, file: &preview.file }).collect(),
        contact_sheet: CONTACT_SHEET,
        spec,
        zip: names.zip(None),
    };
    json::to_vec(&report).map_err(Error::Report)
}

impl<'a> EditionPart<'a> {
    fn new(edition: &'a Edition, written: &Written, names: &Names) -> Self {
        let below = |name: &str| format!("{EDITIONS}/{}/{name}", edition.id);
        Self {
            id: &edition.id,
            page: edition.page.name(),
            ground: edition.ground.name(),
            glasses: GlassesPart { left: edition.glasses.left.name(), right: edition.glasses.right.name() },
            language: edition.language.tag(),
            text: edition.text.name(),
            hand: edition.hand.name(),
            pages: written.book_pages,
            files: written.files.iter().map(|(name, _)| below(name)).collect(),
            report: below(REPORT),
            zip: names.zip(Some(&edition.id)),
        }
    }
}
