//! The running footer, and the step from a draft to a numbered sheet.

use kurbo::Rect;

use crate::layout::base;
use crate::layout::compose::{Composer, rule};
use crate::layout::grid::{Grid, SMALL};
use crate::layout::sheet::{Furniture, Node, Role, Sheet};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft, Placed};

/// Height of the footer with the clear space above it, mm.
pub const HEIGHT: f64 = 10.8;

/// Gives a draft its number and its footer.
pub fn finish(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    number: u32,
    draft: Draft,
) -> (Sheet, Vec<Placed>) {
    let mut nodes = draft.nodes;
    if draft.id != "cover" {
        nodes.push(footer(composer, grid, book, number, &draft.footer, &draft.note));
    }
    let sheet = Sheet {
        number,
        id: draft.id,
        title: draft.title,
        description: draft.description,
        language: composer.tongue.language().tag(),
        outline_level: draft.outline_level,
        size: grid.size,
        inks: draft.inks.unwrap_or(book.plan.inks),
        nodes,
    };
    (sheet, draft.placed)
}

/// Room for the page number at the end of the last line, mm.
const NUMBER: f64 = 20.0;

/// The line of the set, with its base and the note of a page.
fn set_line(book: &Book<'_>, note: &str) -> String {
    let (set, edition) = (book.set, book.edition);
    let reader = set.reader.as_ref().map_or(String::new(), |reader| format!(" · reader {reader}"));
    let line = format!("{} {} · edition {}{reader} · {}", set.title, set.version, edition.id, set.date);
    let note = base::with_note(set, note, book.tongue);
    if note.is_empty() { line } else { format!("{line} · {note}") }
}

/// How much higher than [`HEIGHT`] the footer is, mm: a base, or a balance with a long name, takes a line more.
pub fn rise(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, note: &str) -> f64 {
    if note.is_empty() && book.set.reader.is_none() && book.set.viewer.base.is_none() {
        return 0.0;
    }
    composer.lines(&set_line(book, note), &SMALL, grid.safe.width() - NUMBER).height - SMALL.leading.0
}

fn footer(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, number: u32, facts: &str, note: &str) -> Node {
    let top = grid.safe.y1 - HEIGHT - rise(composer, grid, book, note) + 2.4;
    let line = rule(Rect::new(grid.safe.x0, top - 0.1, grid.safe.x1, top + 0.1));
    let set_line = set_line(book, note);
    let width = grid.safe.width();
    let right = Style { align: Align::End, ..SMALL };
    let mut nodes = vec![line];
    nodes.extend(composer.lines(facts, &SMALL, width).moved(grid.safe.x0, top + 0.9).nodes);
    nodes.extend(
        composer.lines(&set_line, &SMALL, width - NUMBER).moved(grid.safe.x0, top + 0.9 + SMALL.leading.0).nodes,
    );
    let number = composer.lines(&number.to_string(), &right, width);
    nodes.extend(number.moved(grid.safe.x0, top + 0.9 + SMALL.leading.0).nodes);
    Node::Group(Role::Artifact(Furniture::Footer), nodes)
}
