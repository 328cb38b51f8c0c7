//! Who the book is for, and who it is not for. It repeats no caution: those stand on a page of their own.

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::text_width;

const FOR: &[&str] = &["audience-for-1", "audience-for-2", "audience-for-3", "audience-for-4"];
const ASK: &[&str] = &["audience-ask-1", "audience-ask-2", "audience-ask-3"];
const NOT: &[&str] =
    &["audience-not-1", "audience-not-2", "audience-not-3", "audience-not-4", "audience-not-5", "audience-not-6"];

/// The sheets of the part.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "audience",
        title: composer.say("audience-title"),
        lead: composer.say("audience-lead"),
        description: composer.say("audience-description"),
    };
    let width = text_width(composer, grid);
    let mut sections = Vec::new();
    if let Some(set_by) = book.set.gate.as_ref().filter(|_| !book.set.viewer.base.is_none()) {
        let heading = composer.heading(&composer.say("audience-one-heading"), width);
        let words = composer.tell("audience-one", &[("by", set_by.into())]);
        sections.push(Section::new(heading, [composer.paragraph(&words, width)]));
    }
    for (heading, ids) in [("audience-for", FOR), ("audience-ask", ASK), ("audience-not", NOT)] {
        let heading = composer.heading(&composer.say(heading), width);
        let items: Vec<String> = ids.iter().map(|id| composer.say(id)).collect();
        sections.push(Section::new(heading, composer.items(&items, width)));
    }
    let heading = composer.heading(&composer.say("audience-expect"), width);
    let expect = ["audience-expect-1", "audience-expect-2"].map(|id| composer.say(id));
    sections.push(Section::new(heading, expect.map(|words| composer.paragraph(&words, width))));
    pour(composer, grid, &opening, sections)
}
