//! Text that runs on: sections poured into the columns of as many sheets as they take.
//!
//! A section may be divided between its pieces; its heading stays with the first of them. The last sheet is balanced: its
//! columns are as short as they can be. Where it would be nearly empty, the sheet before it is balanced with it.

use std::collections::VecDeque;

use kurbo::Rect;

use super::Draft;
use super::compose::{Column, Composer, Piece};
use super::grid::{Grid, LEADING};
use super::parts;
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
/// How closely the columns of a last sheet are balanced, mm.
const STEP: f64 = 0.5;
/// The highest that two pieces of a section may be to stay together at its beginning and at its end, mm.
const KEPT: f64 = 70.0;
/// Between the pieces of a section, mm.
const WITHIN: f64 = 0.8;

impl Section {
    /// A section with a heading.
    pub fn new(heading: Piece, body: impl IntoIterator<Item = Piece>) -> Self {
        Self { heading, body: body.into_iter().collect() }
    }

    /// Its height in one column, mm.
    pub fn height(&self) -> f64 {
        let heights = heights_of(self);
        heights.iter().map(|(gap, height)| gap + height).sum::<f64>() - heights.first().map_or(0.0, |(gap, _)| *gap)
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

/// Pours sections, set as wide as `parts::text_width` says, into the text columns of as many sheets as they take.
pub fn pour(composer: &mut Composer<'_>, grid: &Grid, opening: &Opening, sections: Vec<Section>) -> Vec<Draft> {
    pour_after(composer, grid, opening, 0, sections)
}

/// The same for a part that has so many sheets already.
pub(super) fn pour_after(
    composer: &mut Composer<'_>,
    grid: &Grid,
    opening: &Opening,
    before: usize,
    sections: Vec<Section>,
) -> Vec<Draft> {
    let place = |composer: &mut Composer<'_>, _, top| (Vec::new(), parts::text_columns(composer, grid, top));
    pour_onto(composer, grid, (opening, before), sections, place)
}

/// The same below what else stands on a sheet: `place` takes the number of a sheet, from 0, and where the space below its
/// title begins, and gives what stands there and the columns that are left for text, all of one width.
pub(super) fn pour_below(
    composer: &mut Composer<'_>,
    grid: &Grid,
    opening: &Opening,
    sections: Vec<Section>,
    place: impl FnMut(&mut Composer<'_>, usize, f64) -> (Vec<Node>, Vec<Rect>),
) -> Vec<Draft> {
    pour_onto(composer, grid, (opening, 0), sections, place)
}

fn pour_onto(
    composer: &mut Composer<'_>,
    grid: &Grid,
    (opening, before): (&Opening, usize),
    sections: Vec<Section>,
    mut place: impl FnMut(&mut Composer<'_>, usize, f64) -> (Vec<Node>, Vec<Rect>),
) -> Vec<Draft> {
    let mut blocks: VecDeque<Block> = sections.into_iter().flat_map(blocks_of).collect();
    let mut drafts = Vec::new();
    while drafts.is_empty() || !blocks.is_empty() {
        let number = before + drafts.len();
        composer.sheet = parts::sheet_id(opening.id, number);
        let lead = if number == 0 { opening.lead.as_str() } else { "" };
        let (mut nodes, top) = parts::opening(composer, grid, &opening.title, lead);
        let (above, areas) = place(composer, number, top);
        // Below a picture there may be room for nothing: the text begins on the next sheet.
        let may_be_empty = !above.is_empty();
        nodes.extend(above);
        nodes.extend(next(composer, &areas, &mut blocks, may_be_empty));
        drafts.push(parts::sheet(composer, opening.id, (&opening.title, &opening.description), number, nodes));
    }
    drafts
}

/// Sections in these columns, none longer than it needs to be; gives the sections back where they need more room.
pub(super) fn within(
    composer: &mut Composer<'_>,
    areas: &[Rect],
    sections: Vec<Section>,
) -> Result<Vec<Node>, Vec<Section>> {
    let heights: Vec<(f64, f64)> = sections.iter().flat_map(heights_of).collect();
    let rooms: Vec<f64> = areas.iter().map(Rect::height).collect();
    if fill(&heights, &rooms).iter().sum::<usize>() < heights.len() {
        return Err(sections);
    }
    let mut blocks = sections.into_iter().flat_map(blocks_of).collect();
    Ok(next(composer, areas, &mut blocks, false))
}

/// Sections in columns like these, on as many sheets as they take: what stands on each.
pub(super) fn divided(composer: &mut Composer<'_>, areas: &[Rect], sections: Vec<Section>) -> Vec<Vec<Node>> {
    let mut blocks: VecDeque<Block> = sections.into_iter().flat_map(blocks_of).collect();
    let mut sheets = Vec::new();
    while sheets.is_empty() || !blocks.is_empty() {
        sheets.push(next(composer, areas, &mut blocks, false));
    }
    sheets
}

/// A section as one piece.
pub(super) fn stacked(section: Section) -> Piece {
    let mut piece = Piece::default();
    for block in blocks_of(section) {
        let mut gap = block.gap;
        for (within, own) in block.pieces {
            let above = if piece.height == 0.0 { 0.0 } else { gap + within };
            piece.stack(own, above);
            gap = 0.0;
        }
    }
    Piece { nodes: lists(piece.nodes), ..piece }
}

/// What of the blocks stands in the columns of a sheet: at least one, unless the sheet may stay empty.
fn next(composer: &mut Composer<'_>, areas: &[Rect], blocks: &mut VecDeque<Block>, may_be_empty: bool) -> Vec<Node> {
    let rooms: Vec<f64> = areas.iter().map(Rect::height).collect();
    let mut taken = take(blocks, &rooms);
    if !may_be_empty && taken.iter().all(Vec::is_empty) {
        // Higher than a whole column: the column says so.
        taken[0].extend(blocks.pop_front());
    }
    areas.iter().zip(taken).flat_map(|(area, blocks)| column(composer, *area, blocks)).collect()
}

/// The pieces of a section: its heading with the first of its body, then one by one, and in pairs at both ends.
fn blocks_of(section: Section) -> Vec<Block> {
    let kept = kept(&section);
    let mut first = Block { gap: BETWEEN, pieces: Vec::new() };
    if 0.0 < section.heading.height {
        first.pieces.push((0.0, section.heading));
    }
    let mut blocks = vec![first];
    let mut body = section.body.into_iter();
    for (index, group) in kept.into_iter().enumerate() {
        let mut pieces: Vec<(f64, Piece)> = Vec::new();
        for piece in body.by_ref().take(group.count) {
            pieces.push((gap_above(&piece), piece));
        }
        let gap = pieces.first().map_or(0.0, |(gap, _)| *gap);
        if let Some(first) = pieces.first_mut() {
            first.0 = 0.0;
        }
        match blocks.last_mut() {
            Some(first) if index == 0 => {
                let gap = if first.pieces.is_empty() { 0.0 } else { WITHIN };
                first.pieces.extend(
                    pieces.into_iter().enumerate().map(|(at, (own, piece))| (if at == 0 { gap } else { own }, piece)),
                );
            }
            _ => blocks.push(Block { gap, pieces }),
        }
    }
    blocks
}

/// Pieces of the body of a section that stay together.
struct Kept {
    /// Above them, mm.
    gap: f64,
    /// All of them with the gaps between them, and with the heading above the first, mm.
    height: f64,
    count: usize,
}

/// Which pieces of a section stay together: no column begins or ends with a single one of them, unless two are high.
fn kept(section: &Section) -> Vec<Kept> {
    let single = |piece: &Piece| Kept { gap: gap_above(piece), height: piece.height, count: 1 };
    let mut kept: Vec<Kept> = section.body.iter().map(single).collect();
    if let Some(first) = kept.first_mut() {
        first.gap = BETWEEN;
        first.height += if 0.0 < section.heading.height { section.heading.height + WITHIN } else { 0.0 };
    }
    join(&mut kept, 0);
    if let Some(last) = kept.len().checked_sub(2) {
        join(&mut kept, last);
    }
    kept
}

/// Keeps a group with the one after it, unless both are high.
fn join(kept: &mut Vec<Kept>, at: usize) {
    let (Some(one), Some(other)) = (kept.get(at), kept.get(at + 1)) else { return };
    let height = one.height + other.gap + other.height;
    if height <= KEPT {
        let other = kept.remove(at + 1);
        kept[at].height = height;
        kept[at].count += other.count;
    }
}

/// Gap and height of the blocks that a section is divided into.
fn heights_of(section: &Section) -> Vec<(f64, f64)> {
    if section.body.is_empty() {
        return vec![(BETWEEN, section.heading.height)];
    }
    kept(section).iter().map(|kept| (kept.gap, kept.height)).collect()
}

/// Items of a list follow one another without a gap.
fn gap_above(piece: &Piece) -> f64 {
    if matches!(piece.nodes.as_slice(), [Node::Group(Role::ListItem, _)]) { 0.0 } else { WITHIN }
}

/// What of the blocks stands in each of the columns of a sheet, which have room for this much: all that fits, and of the
/// last sheet no column longer than it needs to be. A last sheet with little more than a few lines gets some of this one.
fn take(blocks: &mut VecDeque<Block>, rooms: &[f64]) -> Vec<Vec<Block>> {
    let heights: Vec<(f64, f64)> = blocks.iter().map(|block| (block.gap, block.height())).collect();
    let mut counts = fill(&heights, rooms);
    let taken = counts.iter().sum::<usize>();
    let rest: f64 = heights[taken..].iter().map(|(gap, height)| gap + height).sum();
    if taken == heights.len() {
        counts = shortest(&heights, rooms).unwrap_or(counts);
    } else if 0 < taken && rest < NEARLY_EMPTY * rooms.iter().sum::<f64>() {
        let both = shortest(&heights, &[rooms, rooms].concat());
        counts = both.map_or(counts, |both| both[..rooms.len()].to_vec());
    }
    counts.into_iter().map(|count| blocks.drain(..count).collect()).collect()
}

/// How much of a sheet a last sheet has to hold at least, as a share of its columns, where the sheet before can help it.
const NEARLY_EMPTY: f64 = 0.25;

/// How many blocks each of the columns holds where they hold all and are as short as they can be. From above: the first
/// step down that does not hold all is the end.
fn shortest(heights: &[(f64, f64)], rooms: &[f64]) -> Option<Vec<usize>> {
    let longest = rooms.iter().copied().fold(0.0, f64::max);
    let steps = (0..).map(|step| longest - f64::from(step) * STEP).take_while(|cap| 0.0 < *cap);
    let capped = steps.map(|cap| fill(heights, &rooms.iter().map(|room| room.min(cap)).collect::<Vec<_>>()));
    capped.take_while(|own| own.iter().sum::<usize>() == heights.len()).last()
}

/// How many blocks, in their order, each of the columns holds.
fn fill(heights: &[(f64, f64)], rooms: &[f64]) -> Vec<usize> {
    let mut from = 0;
    let fitting = rooms.iter().map(|room| {
        let mut used = 0.0;
        let fits = |(index, (gap, height)): (usize, &(f64, f64))| {
            used += height + if index == 0 { 0.0 } else { *gap };
            used <= room + 1e-6
        };
        let count = heights[from..].iter().enumerate().map(fits).take_while(|fits| *fits).count();
        from += count;
        count
    });
    fitting.collect()
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Language, Tongue};
    use crate::layout::sheet;
    use crate::layout::text::Typesetter;
    use crate::spec::{PageFormat, TextSize};

    fn poured(text: TextSize, format: PageFormat, sections: usize, words: usize) -> (Vec<Draft>, usize) {
        let mut setter = Typesetter::new();
        let mut composer = Composer::new(&mut setter, Tongue::of(Language::En), text);
        let grid = Grid::of(format);
        let width = parts::text_width(&composer, &grid);
        let section = |index: usize, composer: &mut Composer<'_>| {
            let heading = composer.heading(&format!("Heading {index}"), width);
            let body = format!("Piece {index} {}", "word ".repeat(words));
            let items: Vec<String> = (0..5).map(|item| format!("Item {index} {item}")).collect();
            let paragraph = composer.paragraph(&body, width);
            Section::new(heading, std::iter::once(paragraph).chain(composer.items(&items, width)))
        };
        let sections = (0..sections).map(|index| section(index, &mut composer)).collect();
        let opening = Opening { id: "walk", title: "Walk".into(), lead: "Along.".into(), description: "Words.".into() };
        let drafts = pour(&mut composer, &grid, &opening, sections);
        (drafts, composer.problems.len())
    }

    /// The content below the title in reading order: what it is, its words, and its first baseline.
    fn content(draft: &Draft) -> Vec<(Role, String, f64)> {
        let of = |node: &Node| {
            let Node::Group(role, inner) = node else { panic!("a node without a role") };
            (role.clone(), sheet::words(inner), first_run(inner).expect("words").y)
        };
        draft.nodes.iter().filter(|node| !matches!(node, Node::Group(Role::Heading(1), _))).map(of).collect()
    }

    fn first_run(nodes: &[Node]) -> Option<kurbo::Point> {
        nodes.iter().find_map(|node| match node {
            Node::Text(run) => Some(run.origin),
            Node::Group(_, inner) => first_run(inner),
            _ => None,
        })
    }

    #[test]
    fn everything_that_is_poured_arrives_once_and_in_order() {
        for (text, format) in [
            (TextSize::Standard, PageFormat::A4),
            (TextSize::Large, PageFormat::A4),
            (TextSize::Standard, PageFormat::Wide),
            (TextSize::Large, PageFormat::Wide),
        ] {
            let (drafts, problems) = poured(text, format, 24, 30);
            assert_eq!(problems, 0);
            assert!(1 < drafts.len());
            let all: String = drafts.iter().flat_map(content).map(|(_, words, _)| format!("{words} ")).collect();
            let mut at = 0;
            for index in 0..24 {
                let items = (0..5).map(|item| format!("Item {index} {item}"));
                for words in [format!("Heading {index} "), format!("Piece {index} ")].into_iter().chain(items) {
                    at += all[at..].find(&words).unwrap_or_else(|| panic!("`{words}` is not after `{}`", &all[..at]));
                }
            }
            assert_eq!(all.matches("Item").count(), 24 * 5);
        }
    }

    #[test]
    fn a_heading_stays_with_the_first_piece_below_it() {
        for sections in 5..24 {
            let (drafts, _) = poured(TextSize::Standard, PageFormat::Letter, sections, 33);
            for draft in &drafts {
                let content = content(draft);
                for (index, (role, words, y)) in content.iter().enumerate() {
                    if *role == Role::Heading(2) {
                        let below = content.get(index + 1).unwrap_or_else(|| panic!("{} ends with {words}", draft.id));
                        assert!(*y < below.2, "{}: {words} is the last of its column", draft.id);
                    }
                }
            }
        }
    }

    #[test]
    fn columns_break_between_the_items_of_a_section() {
        let divided = (5..12).any(|sections| {
            let (drafts, _) = poured(TextSize::Standard, PageFormat::A4, sections, 30);
            let lists = drafts.iter().flat_map(content).filter(|(role, ..)| *role == Role::List).count();
            sections < lists
        });
        assert!(divided);
    }

    #[test]
    fn the_columns_of_the_last_sheet_are_balanced() {
        let (drafts, _) = poured(TextSize::Standard, PageFormat::A4, 21, 30);
        let last = content(drafts.last().expect("a sheet"));
        let second = last.windows(2).position(|pair| pair[1].2 < pair[0].2).expect("two columns") + 1;
        let ends = [&last[..second], &last[second..]].map(|column| column.last().expect("a piece").2);
        // A section is 62 mm high, an item 5.2 mm: they end within a paragraph of one another.
        assert!((ends[0] - ends[1]).abs() < 40.0, "{ends:?}");
    }

    #[test]
    fn no_last_sheet_is_nearly_empty() {
        for sections in 20..60 {
            let (drafts, _) = poured(TextSize::Standard, PageFormat::A4, sections, 5);
            let last = drafts.last().map_or(0, |draft| content(draft).len());
            assert!(drafts.len() == 1 || 8 <= last, "{sections}: {last}");
        }
    }

    #[test]
    fn nothing_runs_past_its_column() {
        let grid = Grid::of(PageFormat::A4);
        for words in [10, 60, 200] {
            let (drafts, problems) = poured(TextSize::Large, PageFormat::A4, 12, words);
            assert_eq!(problems, 0);
            let lowest = drafts.iter().flat_map(content).map(|(.., y)| y).fold(0.0, f64::max);
            assert!(lowest < grid.safe.y1 - 10.8, "{lowest}");
        }
    }

    #[test]
    fn a_piece_higher_than_a_column_is_a_problem_and_still_there() {
        let (drafts, problems) = poured(TextSize::Large, PageFormat::Wide, 1, 900);
        assert_eq!(problems, 1);
        assert!(drafts.iter().any(|draft| sheet::words(&draft.nodes).contains("Piece 0")));
    }
}
