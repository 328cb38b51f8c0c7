//! The scale check: the bar of 100 mm, the square of 50 mm and the bank card, found on the page by their long straight
//! edges and measured from edge to edge.
//!
//! A bank card is 85.60 by 53.98 mm: ISO/IEC 7810, ID-1.

use super::page::EYES;
use super::place::edge;
use super::seen::{Picture, Seen, View};

/// What was found, mm.
#[derive(Debug)]
pub(super) struct Scale {
    /// Length of the bar.
    pub(super) bar: f64,
    /// Width and height of the square.
    pub(super) square: [f64; 2],
    /// Width and height of the card.
    pub(super) card: [f64; 2],
}

/// A rectangle of full ink: its low and high corner, page mm, to the nearest look.
#[derive(Debug, Clone, Copy)]
struct Block {
    low: [f64; 2],
    high: [f64; 2],
}

impl Block {
    fn length(&self) -> f64 {
        self.high[0] - self.low[0]
    }

    fn height(&self) -> f64 {
        self.high[1] - self.low[1]
    }
}

/// How far from its true length a line is still taken for what it should be, mm.
const ABOUT: f64 = 3.0;
/// How far outside of a measure the search for its edge begins, mm.
const OUTSIDE: f64 = 0.7;
/// Radius of the corners of a card at the most, mm (ISO/IEC 7810: 2.88 to 3.48).
const CORNER: f64 = 3.48;

/// Measures the scale page. Every line on it is for both eyes, so the two eyes must agree.
pub(super) fn measure(picture: &Picture, view: &View) -> Scale {
    let [left, right] = EYES.map(|eye| seen(&picture.seen(view, eye)));
    for (a, b) in [(left.bar, right.bar), (left.square[0], right.square[0]), (left.card[0], right.card[0])] {
        assert!((a - b).abs() < 0.01, "{left:?} {right:?}");
    }
    left
}

fn seen(seen: &Seen<'_>) -> Scale {
    let blocks = long_blocks(seen);
    // A bar has a body, an outline only lines.
    let bar = the_one(&blocks, |b| 1.0 < b.height() && (b.length() - 100.0).abs() < ABOUT);
    let lines = |low: f64, high: f64| {
        let is_it = |b: &&Block| b.height() < 1.0 && low < b.length() && b.length() < high;
        let found: Vec<_> = blocks.iter().filter(is_it).collect();
        assert_eq!(found.len(), 2, "upper and lower line of {low} to {high} mm in {blocks:?}");
        outline(seen, found[0], found[1])
    };
    let middle = (bar.low[1] + bar.high[1]) / 2.0;
    Scale {
        bar: across(seen, 0, [bar.low[0], bar.high[0]], middle),
        square: lines(50.0 - ABOUT, 50.0 + ABOUT),
        // Lines between round corners.
        card: lines(85.60 - 2.0 * CORNER, 85.60),
    }
}

fn the_one(blocks: &[Block], is_it: impl Fn(&Block) -> bool) -> Block {
    let found: Vec<_> = blocks.iter().filter(|b| is_it(b)).collect();
    assert_eq!(found.len(), 1, "{blocks:?}");
    *found[0]
}

/// Width and height of a rectangle with this upper and lower line, from outer edge to outer edge.
fn outline(seen: &Seen<'_>, upper: &Block, lower: &Block) -> [f64; 2] {
    let [column, row] = [(upper.low[0] + upper.high[0]) / 2.0, (upper.low[1] + lower.high[1]) / 2.0];
    // The sides may lie beyond the ends of the lines, by the radius of a corner.
    let sides = [upper.low[0] - CORNER, upper.high[0] + CORNER];
    [across(seen, 0, sides, row), across(seen, 1, [upper.low[1], lower.high[1]], column)]
}

/// From the outer edge near one end to the outer edge near the other, along a row (axis 0) or a column (1).
fn across(seen: &Seen<'_>, axis: usize, [low, high]: [f64; 2], beside: f64) -> f64 {
    let end = |at: f64, sign: f64| {
        let mut from = [beside; 2];
        from[axis] = at - sign * OUTSIDE;
        edge(seen, from, axis, sign, 2.0 * CORNER).unwrap_or_else(|| panic!("no edge near {from:?}"))
    };
    end(high, -1.0) - end(low, 1.0)
}

/// From look to look along a row and from row to row, mm: far finer than what is looked for, coarser than a dot.
const LOOK: [f64; 2] = [0.4, 0.1];

/// All rectangles of full ink that are longer than 40 mm: rows with such a run, one below the other.
fn long_blocks(seen: &Seen<'_>) -> Vec<Block> {
    let [width, height] = seen.size();
    let step = LOOK.map(|mm| (mm / seen.dot()).floor() as usize);
    let mut blocks: Vec<Block> = Vec::new();
    for y in (0..height).step_by(step[1]) {
        let mut start = None;
        for x in (0..width).step_by(step[0]) {
            if 128 <= seen.ink(x, y) {
                start.get_or_insert(x);
            } else if let Some(first) = start.take() {
                let run = Block { low: seen.middle(first, y), high: seen.middle(x - step[0], y) };
                if 40.0 <= run.length() {
                    add(&mut blocks, run, 1.5 * step[1] as f64 * seen.dot());
                }
            }
        }
    }
    blocks
}

/// Adds a run to the block that it continues, not farther below it than `near`, or begins a block.
fn add(blocks: &mut Vec<Block>, run: Block, near: f64) {
    let continues = |b: &&mut Block| run.low[1] - b.high[1] < near && b.low[0] < run.high[0] && run.low[0] < b.high[0];
    match blocks.iter_mut().find(continues) {
        Some(block) => {
            block.high = [block.high[0].max(run.high[0]), run.high[1]];
            block.low[0] = block.low[0].min(run.low[0]);
        }
        None => blocks.push(run),
    }
}
