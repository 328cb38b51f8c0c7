//! The log: a line a day to write into. A screen page has nothing to write into: it says what to note on paper.

use kurbo::Rect;

use crate::layout::compose::{Composer, Piece, RULE, rule};
use crate::layout::grid::{CAPTION, Grid, SMALL};
use crate::layout::sheet::{Furniture, Node, Role, Tone};
use crate::layout::text::Style;
use crate::layout::{Book, Draft};

use super::back::BackPart;
use super::plan::tick_box;
use super::{foot, opening, words};

const PART: BackPart = BackPart {
    id: "log",
    title: "Your log",
    later: "Your log",
    description: "A line for each of 30 days, to write into.",
};

/// Lines. Design choice: four weeks and a little more, what a professional is shown at a first review.
const DAYS: u32 = 30;
/// Height of what is written into a line, mm: with the space of a cell, a line for handwriting.
const LINE: f64 = 5.0;

/// What a line holds: its head, its width in mm of a portrait page, and what stands in it.
const COLUMNS: &[(&str, f64, Cell)] = &[
    ("Day", 9.0, Cell::Number),
    ("Date", 14.5, Cell::Blank),
    ("Page", 24.0, Cell::Blank),
    ("Glasses right way", 15.0, Cell::Tick),
    ("Min", 9.5, Cell::Blank),
    ("Single, double", 14.0, Cell::Words("s   d")),
    ("Bar, wedge", 13.5, Cell::Words("b   w")),
    ("Right answers", 15.5, Cell::Blank),
    ("Comfort before", 16.0, Cell::Blank),
    ("Comfort after", 16.0, Cell::Blank),
    ("Stayed double", 14.0, Cell::Words("y   n")),
    ("Note", 19.0, Cell::Blank),
];

/// What stands in a cell.
#[derive(Clone, Copy)]
enum Cell {
    /// The number of the day.
    Number,
    /// Nothing: it is written into.
    Blank,
    /// A box to tick.
    Tick,
    /// Letters to circle.
    Words(&'static str),
}

/// The one sheet of the log.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = PART.id(0);
    if !words::on_paper(book.edition) {
        return on_screen(composer, grid).into_one();
    }
    let lead = format!(
        "A line a day. These pages: edition {}, {} from your eyes, {}. Comfort: 0 is good, 10 is bad. Circle what you saw.",
        book.edition.id,
        words::distance(book.set),
        words::glasses(book.edition)
    );
    let (mut nodes, top) = opening(composer, grid, PART.title, &lead);
    let table = table(composer);
    let end = top + table.height;
    nodes.extend(table.moved(grid.safe.x0, top).nodes);
    let note = composer.paragraph(STAYS_DOUBLE, grid.safe.width());
    let below = foot(grid) - note.height;
    if below < end {
        let message = format!("its {DAYS} lines are {:.1} mm longer than the page", end - below);
        composer.problem(message, "shorten the id of the edition");
    }
    nodes.extend(note.moved(grid.safe.x0, below).nodes);
    PART.draft(0, nodes).into_one()
}

const STAYS_DOUBLE: &str = "Comfort 4 or more: rest, then take an easier page. Stayed double after a rest: stop, write it \
    down, and ask your eye-care professional. Show them this log.";

fn table(composer: &mut Composer<'_>) -> Piece {
    let style = Style { tone: Tone::FULL, ..SMALL };
    let heads: Vec<&str> = COLUMNS.iter().map(|(head, ..)| *head).collect();
    let widths: Vec<f64> = COLUMNS.iter().map(|(_, width, _)| *width).collect();
    let rows = (1..=DAYS).map(|day| COLUMNS.iter().map(|(_, width, cell)| set(composer, *cell, day, *width)).collect());
    let rows = rows.collect();
    let mut table = composer.tables((&heads, &style), rows, &widths, f64::INFINITY).pop().unwrap_or_default();
    let mut x = 0.0;
    let between = widths.iter().take(widths.len() - 1).map(|width| {
        x += width;
        rule(Rect::new(x - 1.2 - RULE / 2.0, 0.0, x - 1.2 + RULE / 2.0, table.height))
    });
    let lines = between.collect();
    table.nodes.push(Node::Group(Role::Artifact(Furniture::Layout), lines));
    table
}

fn set(composer: &mut Composer<'_>, cell: Cell, day: u32, width: f64) -> Piece {
    let nodes = match cell {
        Cell::Number => composer.lines(&day.to_string(), &CAPTION, width).nodes,
        Cell::Blank => Vec::new(),
        Cell::Tick => tick_box().moved(3.0, 0.0).nodes,
        Cell::Words(words) => composer.lines(words, &CAPTION, width).moved(0.6, 0.0).nodes,
    };
    Piece { height: LINE, nodes }
}

fn on_screen(composer: &mut Composer<'_>, grid: &Grid) -> Draft {
    let lead = "Keep a log on paper, a line for each day. Note:";
    let (mut nodes, top) = opening(composer, grid, PART.title, lead);
    let items = [
        "the date, the page and this edition; and that the glasses were on the right way;",
        "the minutes; whether all was single or double; whether bar and wedge were both there;",
        "how many answers were right, if the page asks;",
        "comfort before and after, from 0 (good) to 10 (bad);",
        "whether anything stayed double after a rest, and what else you noticed.",
    ];
    let mut text = composer.bullets(&items, grid.safe.width());
    text.stack(composer.paragraph(STAYS_DOUBLE, grid.safe.width()), 4.0);
    nodes.extend(text.moved(grid.safe.x0, top).nodes);
    PART.draft(0, nodes)
}
