//! Text that runs on: sections poured into the columns of as many sheets as they take.
//!
//! A section may be divided between its pieces; its heading stays with the first of them. The last sheet is balanced: its
//! columns are as short as they can be.

use kurbo::Rect;

use super::Draft;
use super::compose::{Column, Composer, Piece};
use super::grid::{Grid, LEADING};
use super::parts::columns;
use super::sheet::{Node, Role};

/// A heading with what belongs to it, as pieces between which a column may end.
#[derive(Debug, Default)]
pub struct Section {
    /// The heading; empty without one.
    pub heading: Piece,
    /// What stands below it.
    pub body: Vec<Piece>,
}

/// What a part of the book says of itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Opening {
    /// Its name; a second sheet is `name-2`.
    pub id: &'static str,
    /// Its title.
    pub title: String,
    /// What stands below the title; may be empty.
    pub lead: String,
    /// One sentence for those who do not see the page.
    pub description: String,
}

/// Between two sections of a column, mm.
const BETWEEN: f64 = LEADING * 0.8;
/// Between the pieces of a section, mm.
const WITHIN: f64 = 0.8;

impl Section {
    /// A section with a heading.
    pub fn new(heading: Piece, body: impl IntoIterator<Item = Piece>) -> Self {
        Self { heading, body: body.into_iter().collect() }
    }
}

/// A piece with the gap above it, which the first piece of a column does not take. Those of one block stay together.
struct Block {
    gap: f64,
    pieces: Vec<(f64, Piece)>,
}

impl Block {
    fn height(&self) -> f64 {
        self.pieces.iter().map(|(gap, piece)| gap + piece.height).sum()
    }
}

/// Pours sections into two columns a sheet, as many sheets as they take.
pub fn pour(composer: &mut Composer<'_>, grid: &Grid, opening: &Opening, sections: Vec<Section>) -> Vec<Draft> {
    let mut blocks: std::collections::VecDeque<Block> = sections.into_iter().flat_map(blocks_of).collect();
    let mut drafts = Vec::new();
    while drafts.is_empty() || !blocks.is_empty() {
        let number = drafts.len() + 1;
        composer.sheet = if number == 1 { opening.id.to_owned() } else { format!("{}-{number}", opening.id) };
        let lead = if number == 1 { opening.lead.as_str() } else { "" };
        let (mut nodes, top) = super::parts::opening(composer, grid, &opening.title, lead);
        let areas = columns(grid, top);
        let taken = take(&mut blocks, areas);
        if taken.iter().all(Vec::is_empty) && !blocks.is_empty() {
            // Higher than a whole column: the column says so.
            let over = blocks.pop_front();
            nodes.extend(column(composer, areas[0], over.into_iter().collect()));
        }
        for (area, blocks) in areas.into_iter().zip(taken) {
            nodes.extend(column(composer, area, blocks));
        }
        drafts.push(Draft {
            id: composer.sheet.clone(),
            title: opening.title.clone(),
            description: opening.description.clone(),
            outline_level: 0,
            inks: None,
            note: String::new(),
            nodes,
            footer: String::new(),
            placed: Vec::new(),
        });
    }
    drafts
}

/// The pieces of a section: its heading with the first of its body, then one by one.
fn blocks_of(section: Section) -> Vec<Block> {
    let mut blocks = Vec::new();
    let mut body = section.body.into_iter();
    let mut first = Block { gap: BETWEEN, pieces: Vec::new() };
    if 0.0 < section.heading.height {
        first.pieces.push((0.0, section.heading));
    }
    if let Some(piece) = body.next() {
        let gap = if first.pieces.is_empty() { 0.0 } else { WITHIN };
        first.pieces.push((gap, piece));
    }
    blocks.push(first);
    blocks.extend(body.map(|piece| Block { gap: gap_above(&piece), pieces: vec![(0.0, piece)] }));
    blocks
}

/// Items of a list follow one another without a gap.
fn gap_above(piece: &Piece) -> f64 {
    if matches!(piece.nodes.as_slice(), [Node::Group(Role::ListItem, _)]) { 0.0 } else { WITHIN }
}

/// What of the blocks stands in each of the two columns of a sheet: all that fits, and of the last sheet no column longer
/// than it needs to be.
fn take(blocks: &mut std::collections::VecDeque<Block>, areas: [Rect; 2]) -> [Vec<Block>; 2] {
    let heights: Vec<(f64, f64)> = blocks.iter().map(|block| (block.gap, block.height())).collect();
    let fitting = |from: usize, room: f64| {
        let mut used = 0.0;
        let fits = |(index, (gap, height)): (usize, &(f64, f64))| {
            used += height + if index == 0 { 0.0 } else { *gap };
            used <= room + 1e-6
        };
        heights[from..].iter().enumerate().map(fits).take_while(|fits| *fits).count()
    };
    let rooms = areas.map(|area| area.height());
    let first = fitting(0, rooms[0]);
    let both = first + fitting(first, rooms[1]);
    let split = if both == heights.len() {
        let height = |part: &[(f64, f64)]| {
            let gaps: f64 = part.iter().skip(1).map(|(gap, _)| gap).sum();
            gaps + part.iter().map(|(_, height)| height).sum::<f64>()
        };
        let longer = |split: &usize| (height(&heights[..*split]) - rooms[0]).max(height(&heights[*split..]) - rooms[1]);
        (0..=both).min_by(|a, b| longer(a).total_cmp(&longer(b))).unwrap_or(both)
    } else {
        first
    };
    let left = blocks.drain(..split).collect();
    let right = blocks.drain(..both - split).collect();
    [left, right]
}

/// The blocks in a column, items of a list that follow one another as one list.
fn column(composer: &mut Composer<'_>, area: Rect, blocks: Vec<Block>) -> Vec<Node> {
    let mut column = Column::new(area);
    for block in blocks {
        let mut gap_before = block.gap;
        for (gap, piece) in block.pieces {
            column.add(piece, gap_before + gap);
            gap_before = 0.0;
        }
    }
    lists(column.finish(composer))
}

/// Items of a list that follow one another, as one list.
fn lists(nodes: Vec<Node>) -> Vec<Node> {
    let mut grouped: Vec<Node> = Vec::with_capacity(nodes.len());
    for node in nodes {
        let is_item = matches!(node, Node::Group(Role::ListItem, _));
        match grouped.last_mut() {
            Some(Node::Group(Role::List, items)) if is_item => items.push(node),
            _ if is_item => grouped.push(Node::Group(Role::List, vec![node])),
            _ => grouped.push(node),
        }
    }
    grouped
}
