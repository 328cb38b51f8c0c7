//! The table of contents: every page with its number, as links.

use kurbo::Rect;

use crate::layout::Draft;
use crate::layout::compose::{Column, Composer, Piece};
use crate::layout::grid::{BODY, Grid, LEADING};
use crate::layout::sheet::{Node, Role};
use crate::layout::text::{Align, Style};

use super::{columns, opening};

const TITLE: &str = "Contents";

/// Height of a line of the list, mm.
const LINE: f64 = 6.6;
/// Width of a list that fits in one column, mm.
const WIDTH: f64 = 120.0;

/// As many sheets as the list needs; `before` sheets stand in front of it.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, before: usize, rest: &[&Draft]) -> Vec<Draft> {
    let areas = areas(composer, grid, rest.len());
    let lines = lines_in(areas[0]);
    let sheets = sheets(composer, grid, rest.len());
    let first_number = before + sheets + 1;
    let entries: Vec<(usize, &Draft)> = (first_number..).zip(rest.iter().copied()).collect();
    let sheets = entries.chunks(areas.len() * lines).enumerate();
    sheets.map(|(index, entries)| sheet(composer, grid, index, entries.chunks(lines).zip(&areas))).collect()
}

/// How many sheets a list of so many entries needs.
pub(crate) fn sheets(composer: &mut Composer<'_>, grid: &Grid, entries: usize) -> usize {
    let areas = areas(composer, grid, entries);
    entries.div_ceil(areas.len() * lines_in(areas[0]))
}

/// The columns of a sheet: one where the list fits in it.
fn areas(composer: &mut Composer<'_>, grid: &Grid, entries: usize) -> Vec<Rect> {
    let (_, top) = opening(composer, grid, TITLE, "");
    let [left, right] = columns(grid, top);
    if entries <= lines_in(left) { vec![Rect { x1: left.x0 + WIDTH, ..left }] } else { vec![left, right] }
}

fn sheet<'a>(
    composer: &mut Composer<'_>,
    grid: &Grid,
    index: usize,
    columns: impl Iterator<Item = (&'a [(usize, &'a Draft)], &'a Rect)>,
) -> Draft {
    composer.sheet = if index == 0 { "contents".to_owned() } else { format!("contents-{}", index + 1) };
    let (mut nodes, _) = opening(composer, grid, TITLE, "");
    let mut items = Vec::new();
    for (entries, area) in columns {
        let mut column = Column::new(*area);
        for &(number, draft) in entries {
            let entry = entry(composer, number, draft, column.width());
            column.add(entry, LINE - LEADING);
        }
        items.extend(column.finish(composer));
    }
    nodes.push(Node::Group(Role::List, items));
    Draft {
        id: composer.sheet.clone(),
        title: TITLE.to_owned(),
        description: "Every page of the book with its number.".to_owned(),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
}

/// How many lines a column holds.
#[expect(clippy::cast_possible_truncation, reason = "a page holds a few dozen lines")]
fn lines_in(column: Rect) -> usize {
    (column.height() / LINE) as usize
}

/// One line: title on the left, page number on the right.
fn entry(composer: &mut Composer<'_>, number: usize, draft: &Draft, width: f64) -> Piece {
    let indent = if draft.outline_level == 0 { 0.0 } else { 4.0 };
    let title = composer.lines(&format!("{} ", draft.title), &BODY, width - indent - 12.0);
    let right = Style { align: Align::End, ..BODY };
    let number = composer.lines(&number.to_string(), &right, 10.0);
    let height = title.height;
    let mut nodes = title.moved(indent, 0.0).nodes;
    nodes.extend(number.moved(width - 10.0, 0.0).nodes);
    let link = Role::Link {
        target: draft.id.clone(),
        area: Rect::new(0.0, 0.0, width, height),
        alt: format!("Go to {}", draft.title),
    };
    let body = Node::Group(Role::ListBody, vec![Node::Group(link, nodes)]);
    Piece { height, nodes: vec![Node::Group(Role::ListItem, vec![body])] }
}
