//! For an eye-care professional: what the book is, whom and what it was computed for, and every number of every page.

mod facts;
mod numbers;

use crate::layout::compose::{Composer, flow};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::back::BackPart;
use super::{columns, foot, opening};

const PART: BackPart = BackPart {
    id: "professional",
    title: "For your eye-care professional",
    later: "For your professional",
    description: "What the book is, what it was computed for, and the numbers of every exercise page.",
};

/// Tells whom the sheets are for.
const LEAD: &str = "Please show these sheets to whoever looks after your eyes.";

/// A sheet about the book, then the table of its pages on as many sheets as it needs.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = PART.id(0);
    let (mut nodes, top) = opening(composer, grid, PART.title, LEAD);
    let areas = columns(grid, top);
    let sections = facts::sections(composer, book, areas[0].width());
    nodes.extend(flow(composer, areas, sections));
    let mut drafts = vec![PART.draft(0, nodes)];
    let room = foot(grid) - top;
    for table in numbers::tables(composer, book, (grid.safe.width(), room)) {
        composer.sheet = PART.id(drafts.len());
        let (mut nodes, top) = opening(composer, grid, PART.title, LEAD);
        nodes.extend(table.moved(grid.safe.x0, top).nodes);
        drafts.push(PART.draft(drafts.len(), nodes));
    }
    drafts
}
