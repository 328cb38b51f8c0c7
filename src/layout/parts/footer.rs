//! The running footer, and the step from a draft to a numbered sheet.

use kurbo::Rect;

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
        nodes.push(footer(composer, grid, book, number, &draft.footer));
    }
    let sheet = Sheet {
        number,
        id: draft.id,
        title: draft.title,
        description: draft.description,
        outline_level: draft.outline_level,
        size: grid.size,
        inks: draft.inks.unwrap_or(book.plan.inks),
        nodes,
    };
    (sheet, draft.placed)
}

fn footer(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, number: u32, facts: &str) -> Node {
    let (set, edition) = (book.set, book.edition);
    let top = grid.safe.y1 - HEIGHT + 2.4;
    let line = rule(Rect::new(grid.safe.x0, top - 0.1, grid.safe.x1, top + 0.1));
    let set_line = format!("{} {} · edition {} · {}", set.title, set.version, edition.id, set.date);
    let width = grid.safe.width();
    let right = Style { align: Align::End, ..SMALL };
    let mut nodes = vec![line];
    nodes.extend(composer.lines(facts, &SMALL, width).moved(grid.safe.x0, top + 0.9).nodes);
    nodes
        .extend(composer.lines(&set_line, &SMALL, width - 20.0).moved(grid.safe.x0, top + 0.9 + SMALL.leading.0).nodes);
    let number = composer.lines(&number.to_string(), &right, width);
    nodes.extend(number.moved(grid.safe.x0, top + 0.9 + SMALL.leading.0).nodes);
    Node::Group(Role::Artifact(Furniture::Footer), nodes)
}
