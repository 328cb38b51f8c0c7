//! The log: a line a day to write into. A screen page has nothing to write into: it says what to note on paper.

use std::ops::Range;

use kurbo::Rect;

use crate::layout::compose::{CELL_PAD, Composer, Piece, RULE, rule};
use crate::layout::grid::{CAPTION, Grid, LEADING, SMALL};
use crate::layout::sheet::{Face, Furniture, Node, Role, Tone};
use crate::layout::text::Style;
use crate::layout::{Book, Draft};
use crate::spec::Hand;

use super::back::{sheet, sheet_id};
use super::plan::{TICK, tick_box};
use super::{foot, opening, words};

const ID: &str = "log";

/// Lines. Design choice: four weeks and a little more, what a professional is shown at a first review.
const DAYS: u32 = 30;
/// Height of what is written into a line, mm: with the space of a cell, a line for handwriting.
const LINE: f64 = 5.0;
/// From a column to the rule before the next, mm.
const BEFORE_RULE: f64 = 1.2;

/// From the left edge of a cell to the box to tick, and to letters to circle, mm.
const TICK_AT: f64 = 3.0;
const WORDS_AT: f64 = 0.6;

/// A column: its head, its width and what stands in it.
type Column = (&'static str, f64, Cell);

/// What a line holds: its head, its width in mm of a portrait page, and what stands in it.
const COLUMNS: &[Column] = &[
    ("log-head-day", 9.0, Cell::Number),
    ("log-head-date", 14.5, Cell::Blank),
    ("log-head-page", 24.0, Cell::Blank),
    ("log-head-glasses", 15.0, Cell::Tick),
    ("log-head-minutes", 9.5, Cell::Blank),
    ("log-head-single", 14.0, Cell::Words("log-circle-single")),
    ("log-head-marks", 13.5, Cell::Words("log-circle-marks")),
    ("log-head-answers", 15.5, Cell::Blank),
    ("log-head-before", 16.0, Cell::Blank),
    ("log-head-after", 16.0, Cell::Blank),
    ("log-head-stayed", 14.0, Cell::Words("log-circle-stayed")),
    ("log-head-note", 19.0, Cell::Blank),
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

/// The sheets of the log: as many as its lines take.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = ID.to_owned();
    let title = composer.say("log-title");
    let description = composer.tell("log-description", &[("n", DAYS.into())]);
    if !words::on_paper(book.edition) {
        let nodes = on_screen(composer, grid, &title);
        return sheet(composer, ID, (&title, &description), 0, nodes).into_one();
    }
    let lead = composer.tell(
        "log-lead",
        &[
            ("edition", (&book.edition.id).into()),
            ("distance", words::distance(composer.tongue, book.set).into()),
            ("glasses", words::glasses(composer.tongue, book.edition).into()),
        ],
    );
    let note = composer.say("log-stays-double");
    let below = foot(grid) - composer.paragraph(&note, grid.safe.width()).height;
    let tables = Tables::new(composer, grid, book.edition.hand);
    let (mut drafts, mut next) = (Vec::new(), 1);
    while next <= DAYS {
        composer.sheet = sheet_id(ID, drafts.len());
        let lead = if drafts.is_empty() { lead.as_str() } else { "" };
        let (mut nodes, top) = opening(composer, grid, &title, lead);
        let days = tables.days(composer, next, below - LEADING / 2.0 - top);
        nodes.extend(tables.of(composer, next..next + days).moved(grid.safe.x0, top).nodes);
        nodes.extend(composer.paragraph(&note, grid.safe.width()).moved(grid.safe.x0, below).nodes);
        drafts.push(sheet(composer, ID, (&title, &description), drafts.len(), nodes));
        next += days;
    }
    drafts
}

/// The columns of the log with their heads and widths: in one table, or in two below one another where the heads leave no
/// room for one.
struct Tables(Vec<Vec<(String, f64, Cell)>>);

/// How the heads are set.
const HEADS: Style = Style { tone: Tone::FULL, ..SMALL };
/// The columns that stand in the first of two tables besides the day; the others stand in the second.
const FIRST: &[&str] = &["log-head-date", "log-head-page", "log-head-glasses", "log-head-minutes", "log-head-answers"];

impl Tables {
    /// For the left hand the columns stand the other way round, so that the hand covers nothing that is written.
    fn new(composer: &mut Composer<'_>, grid: &Grid, hand: Hand) -> Self {
        let width = grid.safe.width();
        let (first, second) = COLUMNS[1..].iter().partition(|(head, ..)| FIRST.contains(head));
        let whole = fitted(composer, COLUMNS, width).map(|table| vec![table]);
        let tables = whole.unwrap_or_else(|| {
            let with_day = |rest: Vec<Column>| [vec![COLUMNS[0]], rest].concat();
            let tables = [with_day(first), with_day(second)];
            tables.iter().filter_map(|columns| fitted(composer, columns, width)).collect()
        });
        let mirrored = |mut table: Vec<_>| {
            table.reverse();
            table
        };
        Self(if hand == Hand::Left { tables.into_iter().map(mirrored).collect() } else { tables })
    }

    /// How many days from this one on have room on a sheet; at least one.
    fn days(&self, composer: &mut Composer<'_>, from: u32, room: f64) -> u32 {
        let fits = |days: &u32, composer: &mut Composer<'_>| self.of(composer, from..from + days).height <= room;
        let left = DAYS + 1 - from;
        if fits(&left, composer) {
            return left;
        }
        // Rows are of one height: what two of them take tells how many there are.
        let [one, two] = [1, 2].map(|days| self.of(composer, from..from + days).height);
        let more = ((room - one) / (two - one)).max(0.0);
        (1..left).take_while(|days| f64::from(*days) <= more + 1e-6).last().unwrap_or(0) + 1
    }

    /// The lines of these days.
    fn of(&self, composer: &mut Composer<'_>, days: Range<u32>) -> Piece {
        let mut all = Piece::default();
        for columns in &self.0 {
            let heads: Vec<&str> = columns.iter().map(|(head, ..)| head.as_str()).collect();
            let widths: Vec<f64> = columns.iter().map(|(_, width, _)| *width).collect();
            let rows = days
                .clone()
                .map(|day| columns.iter().map(|(_, width, cell)| set(composer, *cell, day, *width)).collect());
            let rows = rows.collect();
            let table = composer.tables((&heads, &HEADS), rows, &widths, f64::INFINITY).pop().unwrap_or_default();
            all.stack(ruled(table, &widths), if all.height == 0.0 { 0.0 } else { LEADING });
        }
        all
    }
}

/// Columns that fill this width, none narrower than what stands in it: what the words leave is divided as the
/// columns are meant. `None` where the words alone are wider.
fn fitted(composer: &mut Composer<'_>, columns: &[Column], width: f64) -> Option<Vec<(String, f64, Cell)>> {
    let bold = Style { face: Face::Bold, ..HEADS };
    let mut table = Vec::new();
    for &(head, meant, cell) in columns {
        let head = composer.say(head);
        let widest = head.split(' ').map(|word| composer.width_of(word, &bold)).fold(0.0, f64::max);
        let needs = (widest + CELL_PAD + 0.2).max(cell.needs(composer));
        table.push((head, meant, cell, needs));
    }
    let spare = width - table.iter().map(|(.., needs)| needs).sum::<f64>();
    // A table of some of the columns has room for all to grow.
    let wish = |meant: f64, needs: f64| if columns.len() == COLUMNS.len() { (meant - needs).max(0.0) } else { meant };
    let wanted: f64 = table.iter().map(|(_, meant, _, needs)| wish(*meant, *needs)).sum();
    let own = |meant: f64, needs: f64| needs + spare * wish(meant, needs) / wanted.max(f64::MIN_POSITIVE);
    let widened = table.into_iter().map(|(head, meant, cell, needs)| (head, own(meant, needs), cell));
    (0.0 <= spare).then(|| widened.collect())
}

impl Cell {
    /// The width of what stands in it, mm.
    fn needs(self, composer: &mut Composer<'_>) -> f64 {
        match self {
            Cell::Number => composer.width_of(&DAYS.to_string(), &CAPTION) + CELL_PAD,
            Cell::Blank => 0.0,
            Cell::Tick => TICK_AT + TICK + CELL_PAD,
            Cell::Words(id) => composer.width_of(&composer.say(id), &CAPTION) + WORDS_AT + CELL_PAD,
        }
    }
}

/// The table with rules between its columns.
fn ruled(mut table: Piece, widths: &[f64]) -> Piece {
    let mut x = 0.0;
    let between = widths.iter().take(widths.len() - 1).map(|width| {
        x += width;
        rule(Rect::new(x - BEFORE_RULE - RULE / 2.0, 0.0, x - BEFORE_RULE + RULE / 2.0, table.height))
    });
    let lines = between.collect();
    table.nodes.push(Node::Group(Role::Artifact(Furniture::Layout), lines));
    table
}

fn set(composer: &mut Composer<'_>, cell: Cell, day: u32, width: f64) -> Piece {
    let nodes = match cell {
        Cell::Number => composer.lines(&day.to_string(), &CAPTION, width).nodes,
        Cell::Blank => Vec::new(),
        Cell::Tick => tick_box(composer).moved(TICK_AT, 0.0).nodes,
        Cell::Words(id) => composer.lines(&composer.say(id), &CAPTION, width).moved(WORDS_AT, 0.0).nodes,
    };
    Piece { height: LINE * composer.scale(), nodes }
}

fn on_screen(composer: &mut Composer<'_>, grid: &Grid, title: &str) -> Vec<Node> {
    let lead = composer.say("log-screen-lead");
    let (mut nodes, top) = opening(composer, grid, title, &lead);
    let items = [
        composer.say("log-screen-date"),
        composer.say("log-screen-seen"),
        composer.say("log-screen-answers"),
        composer.say("log-screen-comfort"),
        composer.say("log-screen-other"),
    ];
    let items: Vec<&str> = items.iter().map(String::as_str).collect();
    let mut text = composer.bullets(&items, grid.safe.width());
    text.stack(composer.paragraph(&composer.say("log-stays-double"), grid.safe.width()), 4.0);
    if foot(grid) < top + text.height {
        let message = format!("its text is {:.1} mm longer than the page", top + text.height - foot(grid));
        composer.problem(message, "choose `text = \"standard\"`");
    }
    nodes.extend(text.moved(grid.safe.x0, top).nodes);
    nodes
}
