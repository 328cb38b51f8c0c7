//! `[publish]`: what a bundle shows of a set before anyone has it. Which pages there are is known when all exercises are
//! read; `bundle::load` looks for the ids then.

use std::collections::BTreeMap;

use crate::diagnostics::{Diagnostic, Place, codes};

use super::document::Document;
use super::field::{Field, TableForm, TableSpec, Takes};
use super::read::Placed;
use super::reader::Reader;
use super::suggest::nearest;
use super::text::shown;
use super::{Edition, unique};

/// The fewest pages that a bundle previews, where the set has so many. Design choice.
pub const FEWEST_PREVIEWS: u32 = 3;
/// The most pages that a bundle previews. Design choice: a look, not the book.
pub const MOST_PREVIEWS: u32 = 6;

/// `[publish]`.
pub const PUBLISH: TableSpec = TableSpec {
    name: "publish",
    form: TableForm::Single,
    groups: &[&[
        Field::optional(
            "previews",
            Takes::List { of: &Takes::Text(80), min: 1, max: MOST_PREVIEWS },
            "The ids of the exercise pages to preview, such as `mooring-rings-2`. Left out: 3 to 6 pages, as many from each \
             strand as can be.",
        ),
        Field::optional(
            "watermark",
            Takes::Text(40),
            "What stands across every preview. Left out: the title of the set.",
        ),
        Field::optional("edition", Takes::Id, "The edition whose pages are previewed. Left out: the first of the set."),
    ]],
    doc: "What `bundle` shows of the set before anyone has it: previews of the cover and of some exercise pages, reduced, with a \
          watermark and the words “not to scale”. Answers are never shown. May be left out.",
};

/// What `[publish]` says.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Publish {
    /// The ids of the pages to preview, each once; empty: chosen evenly over the strands.
    pub previews: Vec<Placed<String>>,
    /// What stands across previews; without: the title.
    pub watermark: Option<Placed<String>>,
    /// The id of the edition whose pages are previewed; without: the first.
    pub edition: Option<Placed<String>>,
}

/// Reads `[publish]`. `None`: a problem has been pushed.
pub(super) fn read_publish(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Publish> {
    if !document.has(PUBLISH.name) {
        return Some(Publish::default());
    }
    let mut table = document.optional_table(reader, &PUBLISH)?;
    table.check_keys(reader);
    let previews: Option<Option<Vec<Placed<String>>>> = table.maybe(reader, "previews");
    let (watermark, edition) = (table.maybe(reader, "watermark"), table.maybe(reader, "edition"));
    let mut seen: BTreeMap<String, Place> = BTreeMap::new();
    let mut once = Vec::new();
    for page in previews?.unwrap_or_default() {
        let place = page.place;
        once.push(Placed { value: unique(reader, "preview", page, &mut seen)?, place });
    }
    Some(Publish { previews: once, watermark: watermark?, edition: edition? })
}

/// Pushes that the previewed edition is none of the set's; gives whether it is one.
pub(super) fn check_edition(reader: &mut Reader<'_>, publish: &Publish, editions: &[Edition]) -> bool {
    let Some(asked) = &publish.edition else { return true };
    if editions.iter().any(|edition| edition.id == asked.value) {
        return true;
    }
    let message = format!("`[publish]` previews edition `{}`, which the set does not have", shown(&asked.value));
    let ids = editions.iter().map(|edition| edition.id.as_str());
    reader.push(unknown(
        message,
        asked,
        nearest(&asked.value, ids),
        "name one of the editions, or leave `edition` out",
    ));
    false
}

/// The problems of previews that are no exercise page; `pages` are the ids of all pages.
pub fn unknown_previews(publish: &Publish, pages: &[String]) -> Vec<Diagnostic> {
    let missing = publish.previews.iter().filter(|asked| !pages.contains(&asked.value));
    missing
        .map(|asked| {
            let message = format!("`previews` names page `{}`, which is no exercise page", shown(&asked.value));
            let near = nearest(&asked.value, pages.iter().map(String::as_str));
            unknown(message, asked, near, "`depthpress check` lists the ids of the pages")
        })
        .collect()
}

/// A name that is not there, with the nearest one that is.
fn unknown(message: String, asked: &Placed<String>, near: Option<&str>, help: &str) -> Diagnostic {
    let problem = Diagnostic::error(codes::CHOICE, asked.place, message).with_label("unknown");
    match near {
        Some(near) => problem.with_help(format!("did you mean `{near}`?")).with_replacement(format!("\"{near}\"")),
        None => problem.with_help(help),
    }
}
