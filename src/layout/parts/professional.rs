//! For an eye-care professional: what the book is, whom and what it was computed for, and every number of every page.

mod facts;
mod numbers;

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, pour};
use crate::layout::grid::Grid;
use crate::layout::sheet::Node;
use crate::layout::{Book, Draft};

use super::{columns, foot, opening};

/// The id of the first sheet; a second one is `professional-2`.
const ID: &str = "professional";

/// Sheets about the book, then the table of its pages on as many sheets as it needs.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = ID.to_owned();
    let [title, lead, description] =
        ["professional-title", "professional-lead", "professional-description"].map(|id| composer.say(id));
    let (_, top) = opening(composer, grid, &title, &lead);
    let column = columns(grid, top)[0];
    let sections = facts::sections(composer, book, column.size());
    let words = Opening { id: ID, title: title.clone(), lead: lead.clone(), description };
    let facts = pour(composer, grid, &words, sections).into_iter().zip(0..);
    let mut drafts: Vec<Draft> = facts.map(|(facts, sheet)| draft(composer, &words, sheet, facts.nodes)).collect();
    let room = foot(grid) - top;
    for table in numbers::tables(composer, book, (grid.safe.width(), room)) {
        composer.sheet = id(drafts.len());
        let (mut nodes, top) = opening(composer, grid, &title, &lead);
        nodes.extend(table.moved(grid.safe.x0, top).nodes);
        drafts.push(draft(composer, &words, drafts.len(), nodes));
    }
    drafts
}

/// The id of a sheet, counted from 0.
fn id(sheet: usize) -> String {
    if sheet == 0 { ID.to_owned() } else { format!("{ID}-{}", sheet + 1) }
}

/// A sheet with this content; in the contents a later one has its number.
fn draft(composer: &Composer<'_>, words: &Opening, sheet: usize, nodes: Vec<Node>) -> Draft {
    let later = || composer.tell("professional-later", &[("number", (sheet + 1).into())]);
    Draft {
        id: id(sheet),
        title: if sheet == 0 { words.title.clone() } else { later() },
        description: words.description.clone(),
        outline_level: u8::from(0 < sheet),
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
}
