//! The versions of the book, the newest first, with what changed and which errors were put right.

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::text_width;

/// The sheets of the part; none where the set names no versions, which its reader refuses.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let set = book.set;
    if set.releases.is_empty() {
        return Vec::new();
    }
    let opening = Opening {
        id: "versions",
        title: composer.say("versions-title"),
        lead: composer.tell("versions-lead", &[("version", (&set.version).into()), ("date", (&set.date).into())]),
        description: composer.say("versions-description"),
    };
    let width = text_width(composer, grid);
    let mut sections = Vec::new();
    for release in &set.releases {
        let told = [("version", (&release.version).into()), ("date", (&release.date).into())];
        let heading = composer.heading(&composer.tell("versions-release", &told), width);
        sections.push(Section::new(heading, composer.items(&release.changes, width)));
    }
    let heading = composer.heading(&composer.say("versions-error"), width);
    let mut body = vec![composer.paragraph(&composer.say("versions-error-words"), width)];
    if let Some(contact) = &set.contact {
        let words = composer.tell("versions-contact", &[("contact", contact.into())]);
        body.push(composer.paragraph(&words, width));
    }
    sections.push(Section::new(heading, body));
    pour(composer, grid, &opening, sections)
}
