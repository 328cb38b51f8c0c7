//! The plan: which pages come on which week and day, and when to go on, to take an easier page, to stop and to ask.

use kurbo::Rect;

use crate::layout::compose::{CELL_PAD, Composer, Piece, flow, flow_height, outline_box};
use crate::layout::grid::{CAPTION, Grid, LEADING};
use crate::layout::sheet::{Face, Furniture, Node, Role};
use crate::layout::text::Style;
use crate::layout::{Book, Draft};
use crate::plan::{COMFORT_TO_GO_ON, COMFORT_TO_STEP_BACK, DAYS_TO_GO_ON, Day, Practice, schedule};

use super::back::{BackPart, time};
use super::{columns, foot, opening, section, words};

const PART: BackPart = BackPart {
    id: "plan",
    title: "Your plan",
    later: "Your plan",
    description: "Which pages come on which week and day, and when to go on, to take an easier page, to stop and to ask.",
};

/// Widths of the columns besides the pages, mm.
const WEEK: f64 = 26.0;
const MINUTES: f64 = 20.0;
const DONE: f64 = 14.0;
/// A box to tick, mm.
const TICK: f64 = 3.4;
/// Between two ids in a line, mm.
const BLANK: f64 = 1.2;

/// The sheets of the plan; none where the set has no plan.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = PART.id(0);
    let times: Vec<u32> = book.pages.iter().map(|page| page.page.time).collect();
    let Some(practice) = book.set.plan.as_ref().map(|plan| plan.value) else { return Vec::new() };
    // A plan that does not hold its pages has been refused before anything is laid out.
    let Ok(days) = schedule(&practice, &times) else { return Vec::new() };
    let lead = lead(&practice);
    let (_, top) = opening(composer, grid, PART.title, &lead);
    let room = foot(grid) - top;
    let tables = tables(composer, book, &days, (grid.safe.width(), room));
    let mut sheets: Vec<(Vec<Node>, f64)> = Vec::new();
    for table in tables {
        composer.sheet = PART.id(sheets.len());
        let (mut nodes, top) = opening(composer, grid, PART.title, &lead);
        let end = top + table.height;
        nodes.extend(table.moved(grid.safe.x0, top).nodes);
        sheets.push((nodes, end));
    }
    rules(composer, grid, (book, &practice), &mut sheets);
    sheets.into_iter().enumerate().map(|(index, (nodes, _))| PART.draft(index, nodes)).collect()
}

fn lead(practice: &Practice) -> String {
    let count = |n: u32, unit: &str| format!("{n} {unit}{}", if n == 1 { "" } else { "s" });
    format!(
        "{}, {} a week, at most {} a day. It is an offer: go at your own pace.",
        count(practice.weeks, "week"),
        count(practice.days, "day"),
        count(practice.minutes, "minute")
    )
}

/// A row a day, on as many sheets as they need.
fn tables(composer: &mut Composer<'_>, book: &Book<'_>, days: &[Day], (width, room): (f64, f64)) -> Vec<Piece> {
    let widths = [WEEK, width - WEEK - MINUTES - DONE, MINUTES, DONE];
    let rows = days.iter().map(|day| {
        let when = format!("Week {}, day {}", day.week, day.day);
        let minutes = day.seconds.div_ceil(60).to_string();
        vec![
            composer.lines(&when, &CAPTION, WEEK - CELL_PAD),
            pages(composer, book, day, widths[1] - CELL_PAD),
            composer.lines(&minutes, &CAPTION, MINUTES - CELL_PAD),
            tick_box(),
        ]
    });
    let rows = rows.collect();
    composer.tables((&["When", "Pages, new ones bold", "Minutes", "Done"], &CAPTION), rows, &widths, room)
}

/// The ids of the pages of a day, as links.
fn pages(composer: &mut Composer<'_>, book: &Book<'_>, day: &Day, width: f64) -> Piece {
    let (mut x, mut y, mut nodes) = (0.0, 0.0, Vec::new());
    for index in day.pages.clone() {
        let id = &book.pages[index].page.id;
        let style = if day.new <= index { Style { face: Face::Bold, ..CAPTION } } else { CAPTION };
        let text = if index + 1 < day.pages.end { format!("{id},") } else { id.clone() };
        let own = composer.width_of(&text, &style) + BLANK;
        if 0.0 < x && width < x + own {
            (x, y) = (0.0, y + CAPTION.leading.0);
        }
        let area = Rect::new(0.0, 0.0, own - BLANK, CAPTION.leading.0);
        let link = Role::Link { target: id.clone(), area, alt: format!("Go to page {id}") };
        // The blank keeps the ids apart for those who hear the page.
        nodes.extend(composer.lines(&format!("{text} "), &style, own.max(width - x)).role(link).moved(x, y).nodes);
        x += own;
    }
    Piece { height: y + CAPTION.leading.0, nodes }
}

/// An empty box to tick.
pub(super) fn tick_box() -> Piece {
    let area = Rect::new(0.0, 0.6, TICK, 0.6 + TICK);
    let nodes = vec![Node::Group(Role::Artifact(Furniture::Layout), vec![outline_box(area)])];
    Piece { height: CAPTION.leading.0, nodes }
}

/// The rules: beneath the last table where there is room, else on a sheet of their own.
fn rules(
    composer: &mut Composer<'_>,
    grid: &Grid,
    (book, practice): (&Book<'_>, &Practice),
    sheets: &mut Vec<(Vec<Node>, f64)>,
) {
    composer.sheet = PART.id(sheets.len());
    let (nodes, top) = opening(composer, grid, PART.title, &lead(practice));
    let width = columns(grid, top)[0].width();
    let sections = sections(composer, (book, practice), width);
    let height = flow_height(&sections);
    let beneath = sheets.last().map(|(_, end)| end + LEADING).filter(|start| start + height <= foot(grid));
    if let (Some(start), Some((nodes, _))) = (beneath, sheets.last_mut()) {
        nodes.extend(flow(composer, columns(grid, start), sections));
    } else {
        let text = flow(composer, columns(grid, top), sections);
        sheets.push((nodes.into_iter().chain(text).collect(), foot(grid)));
    }
}

fn sections(composer: &mut Composer<'_>, (book, practice): (&Book<'_>, &Practice), width: f64) -> Vec<Piece> {
    let rest = format!(
        "After each {} at most, rest for {}: look far away. The minutes count these rests.",
        time(practice.block),
        time(practice.rest)
    );
    let mut each_day = vec![
        "The pages of a day go from easy to hard. The bold ones are new.",
        &rest,
        "A page is not easy yet? Take it again. The new ones can wait.",
        "End each day by looking into the distance.",
    ];
    if book.pages.len() < practice.all_days() {
        each_day.push("There are more days than pages: pages that you know come again.");
    }
    if book.pages.iter().any(|page| page.page.gated || page.page.balance.is_some()) {
        each_day.push("A page in a frame: only as your eye-care professional told you.");
    }
    let go_on = format!("Go on when, on {DAYS_TO_GO_ON} different days");
    let comfort = format!("comfort stayed at 0 to {COMFORT_TO_GO_ON} of 10, where 10 is bad.");
    let mut good = vec!["bar and wedge were both there, and", &comfort];
    if book.pages.iter().any(|page| page.page.quiz.is_some()) {
        good.insert(0, "on a page that asks, you had as many right answers as its answers ask for,");
    }
    let back = format!("comfort reaches {COMFORT_TO_STEP_BACK} of 10. Rest first, looking far away.");
    let bad = ["bar or wedge goes missing, or all stays double, or", &back, "Each page names its easier one."];
    let ask = "Show your log to your eye-care professional after four weeks, and sooner if anything worries you. What they \
        say counts more than this plan.";
    let bodies = [
        ("Each day", composer.bullets(&each_day, width)),
        (go_on.as_str(), composer.bullets(&good, width)),
        ("Take the easier page when", composer.bullets(&bad, width)),
        ("Stop rule", composer.paragraph(words::STOP, width)),
        ("Ask", composer.paragraph(ask, width)),
    ];
    bodies.into_iter().map(|(heading, body)| section(composer.heading(heading, width), [body])).collect()
}
