//! The table of contents: every part and every exercise with its page number, as links.

use kurbo::Rect;

use crate::layout::Draft;
use crate::layout::compose::{Column, Composer, Piece};
use crate::layout::grid::{BODY, Grid};
use crate::layout::sheet::{Node, Role};
use crate::layout::text::{Align, Style};

use super::back::{sheet, sheet_id};
use super::{opening, text_columns};

/// Name of the first sheet; later ones are numbered.
const ID: &str = "contents";
/// Between two entries, mm.
const GAP: f64 = 1.4;
/// Width of a list that fits in one column, mm.
const WIDTH: f64 = 120.0;
/// Room for a page number, and for it with the space before it, mm of standard text.
const NUMBER: f64 = 10.0;
const BESIDE: f64 = 12.0;
/// How far an exercise is set in, mm.
const INDENT: f64 = 4.0;

/// A line of the list before its number is known.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Entry {
    /// Id of the sheet it leads to.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Whether it stands in a part of the book and is set in.
    pub inside: bool,
}

impl Entry {
    /// The entry of a sheet.
    pub(super) fn of(draft: &Draft) -> Self {
        Self { id: draft.id.clone(), title: draft.title.clone(), inside: draft.outline_level != 0 }
    }
}

/// The list, divided into columns.
#[derive(Debug)]
pub(super) struct Contents {
    /// The columns of a sheet.
    areas: Vec<Rect>,
    /// The columns of all sheets with their entries, each with its title set.
    columns: Vec<Vec<(Entry, Piece)>>,
}

impl Contents {
    /// One column where the list fits in it, else as many as text has.
    pub(super) fn new(composer: &mut Composer<'_>, grid: &Grid, entries: &[Entry]) -> Self {
        composer.sheet = ID.to_owned();
        let title = composer.say("contents-title");
        let (_, top) = opening(composer, grid, &title, "");
        let many = text_columns(composer, grid, top);
        let width = (WIDTH * composer.scale()).min(grid.safe.width());
        let one = many.iter().take(1).map(|area| Rect { x1: area.x0 + width, ..*area }).collect();
        let known = composer.problems.len();
        let contents = Self::within(composer, one, entries);
        if contents.columns.len() <= 1 || many.len() == 1 {
            return contents;
        }
        composer.problems.truncate(known);
        Self::within(composer, many, entries)
    }

    fn within(composer: &mut Composer<'_>, areas: Vec<Rect>, entries: &[Entry]) -> Self {
        let (width, height) = areas.first().map_or((0.0, 0.0), |area| (area.width(), area.height()));
        let mut columns: Vec<Vec<(Entry, Piece)>> = Vec::new();
        let mut used = 0.0;
        for entry in entries {
            let room = width - indent(entry) - BESIDE * composer.scale();
            let title = composer.lines(&format!("{} ", entry.title), &BODY, room);
            used += GAP + title.height;
            match columns.last_mut() {
                Some(column) if used <= height => column.push((entry.clone(), title)),
                _ => {
                    used = title.height;
                    columns.push(vec![(entry.clone(), title)]);
                }
            }
        }
        Self { areas, columns }
    }

    /// How many sheets it takes.
    pub(super) fn sheets(&self) -> usize {
        self.columns.len().div_ceil(self.areas.len().max(1))
    }

    /// The sheets; `number` tells the page number of each entry.
    pub(super) fn drafts(
        self,
        composer: &mut Composer<'_>,
        grid: &Grid,
        number: impl Fn(&Entry) -> usize,
    ) -> Vec<Draft> {
        let title = composer.say("contents-title");
        let description = composer.say("contents-description");
        let mut columns = self.columns.into_iter().peekable();
        let mut drafts = Vec::new();
        while columns.peek().is_some() {
            composer.sheet = sheet_id(ID, drafts.len());
            let (mut nodes, _) = opening(composer, grid, &title, "");
            let mut items = Vec::new();
            for (area, entries) in self.areas.iter().zip(columns.by_ref().take(self.areas.len())) {
                let mut column = Column::new(*area);
                for (entry, set) in entries {
                    let line = line(composer, (&entry, set), number(&entry), column.width());
                    column.add(line, GAP);
                }
                items.extend(column.finish(composer));
            }
            nodes.push(Node::Group(Role::List, items));
            drafts.push(sheet(composer, ID, (&title, &description), drafts.len(), nodes));
        }
        drafts
    }
}

fn indent(entry: &Entry) -> f64 {
    if entry.inside { INDENT } else { 0.0 }
}

/// One entry: its title on the left, its page number on the right.
fn line(composer: &mut Composer<'_>, (entry, title): (&Entry, Piece), number: usize, width: f64) -> Piece {
    let room = NUMBER * composer.scale();
    let right = Style { align: Align::End, ..BODY };
    let number = composer.lines(&number.to_string(), &right, room);
    let height = title.height;
    let mut nodes = title.moved(indent(entry), 0.0).nodes;
    // Beside the last line of a long title.
    nodes.extend(number.moved(width - room, height - composer.leading(&BODY)).nodes);
    let link = Role::Link {
        target: entry.id.clone(),
        area: Rect::new(0.0, 0.0, width, height),
        alt: composer.tell("contents-link", &[("title", (&entry.title).into())]),
    };
    let body = Node::Group(Role::ListBody, vec![Node::Group(link, nodes)]);
    Piece { height, nodes: vec![Node::Group(Role::ListItem, vec![body])] }
}
