//! What a reader may do with the book, and whose work is in it: as the author says, and the typeface.

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::{BODY, Grid};
use crate::layout::{Book, Draft};

use super::text_width;

/// Who made the typeface, as its licence asks to say.
const TYPEFACE: &str = "Copyright 2020–2024 The Atkinson Hyperlegible Next Project Authors";

/// The sheets of the part; none where the set says nothing, which its reader refuses.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let Some(licence) = &book.set.licence else { return Vec::new() };
    let opening = Opening {
        id: "licence",
        title: composer.say("licence-title"),
        lead: String::new(),
        description: composer.say("licence-description"),
    };
    let width = text_width(composer, grid);
    let set = book.set;
    let mut body = Vec::new();
    body.push(composer.lead(&licence.name, "", &BODY, width));
    if let Some(author) = &set.author {
        let author = composer.tell("licence-author", &[("author", author.into()), ("title", (&set.title).into())]);
        body.push(composer.paragraph(&author, width));
    }
    body.extend(licence.text.as_ref().map(|text| composer.paragraph(text, width)));
    let mut sections = vec![Section::new(composer.heading(&composer.say("licence-book"), width), body)];
    if !licence.credits.is_empty() {
        let heading = composer.heading(&composer.say("licence-credits"), width);
        sections.push(Section::new(heading, composer.items(&licence.credits, width)));
    }
    let heading = composer.heading(&composer.say("licence-typeface"), width);
    let typeface = composer.say("licence-typeface-words");
    sections.push(Section::new(heading, [composer.paragraph(&typeface, width), composer.paragraph(TYPEFACE, width)]));
    if let Some(contact) = &set.contact {
        let heading = composer.heading(&composer.say("licence-contact"), width);
        let words = composer.tell("licence-contact-words", &[("contact", contact.into())]);
        sections.push(Section::new(heading, [composer.paragraph(&words, width)]));
    }
    pour(composer, grid, &opening, sections)
}
