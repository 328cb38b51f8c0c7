//! The caution page: before anything is looked at. The points follow the trade's safety notes; the words are ours.

use crate::layout::base;
use crate::layout::compose::{Composer, Piece};
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::{text_width, words};

const ASK: &[&str] = &["cautions-ask-1", "cautions-ask-2", "cautions-ask-3", "cautions-ask-4", "cautions-ask-5"];
const SAFE: &[&str] = &["cautions-safe-1", "cautions-safe-2", "cautions-safe-3", "cautions-safe-4"];

/// Whose the book is, where it has a base.
fn base(composer: &Composer<'_>, book: &Book<'_>) -> Option<String> {
    let set_by = book.set.gate.as_ref().filter(|_| !book.set.viewer.base.is_none())?;
    let told = [
        ("base", base::amounts(book.set.viewer.base, book.tongue).into()),
        ("by", set_by.into()),
        ("distance", words::distance(composer.tongue, book.set).into()),
    ];
    Some(composer.tell("cautions-base", &told))
}

/// The caution sheets.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "cautions",
        title: composer.say("cautions-title"),
        lead: String::new(),
        description: composer.say("cautions-description"),
    };
    let width = text_width(composer, grid);
    let paragraph = |composer: &mut Composer<'_>, words: &str| vec![composer.paragraph(words, width)];
    let items = |composer: &mut Composer<'_>, ids: &[&str]| -> Vec<Piece> {
        let items: Vec<String> = ids.iter().map(|id| composer.say(id)).collect();
        composer.items(&items, width)
    };
    let mut about = paragraph(composer, &composer.say("cautions-about-words"));
    if let Some(words) = base(composer, book) {
        about.extend(paragraph(composer, &words));
    }
    let bodies = [
        ("cautions-ask", items(composer, ASK)),
        ("cautions-stop", paragraph(composer, &words::stop(composer.tongue))),
        ("cautions-help", paragraph(composer, &composer.say("cautions-help-words"))),
        ("cautions-safe", items(composer, SAFE)),
        ("cautions-about", about),
    ];
    let sections =
        bodies.map(|(heading, body)| Section::new(composer.heading(&composer.say(heading), width), body)).into();
    pour(composer, grid, &opening, sections)
}
