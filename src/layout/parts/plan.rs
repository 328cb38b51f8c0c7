//! The plan: which pages come on which week and day, and when to go on, to take an easier page, to stop and to ask.

use kurbo::Rect;

use crate::language::Tongue;
use crate::layout::compose::{CELL_PAD, Composer, Piece, outline_box};
use crate::layout::flow::{Opening, Section, pour_after, within};
use crate::layout::grid::{CAPTION, Grid, LEADING};
use crate::layout::sheet::{Face, Furniture, Node, Role};
use crate::layout::text::Style;
use crate::layout::{Book, Draft};
use crate::plan::{COMFORT_TO_GO_ON, COMFORT_TO_STEP_BACK, DAYS_TO_GO_ON, Day, Practice, schedule};
use crate::spec::{Hand, PageFormat};

use super::back::{sheet, sheet_id, time};
use super::{foot, opening, text_columns, text_width, words};

const ID: &str = "plan";

/// The narrowest columns besides the pages, mm of standard text.
const WEEK: f64 = 26.0;
const MINUTES: f64 = 20.0;
const DONE: f64 = 14.0;
/// A box to tick, mm.
pub(super) const TICK: f64 = 3.4;
/// Between two ids in a line, mm.
const BLANK: f64 = 1.2;

/// The sheets of the plan; none where the set has no plan.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = ID.to_owned();
    let times: Vec<u32> = book.pages.iter().map(|page| page.page.time).collect();
    let Some(practice) = book.set.plan.as_ref().map(|plan| plan.value) else { return Vec::new() };
    // A plan that does not hold its pages has been refused before anything is laid out.
    let Ok(days) = schedule(&practice, &times) else { return Vec::new() };
    let (title, description) = (composer.say("plan-title"), composer.say("plan-description"));
    let lead = lead(composer.tongue, &practice);
    let (_, top) = opening(composer, grid, &title, &lead);
    let room = foot(grid) - top;
    let tables = tables(composer, book, &days, (grid.safe.width(), room));
    let mut drafts = Vec::new();
    let mut end = top;
    for table in tables {
        composer.sheet = sheet_id(ID, drafts.len());
        let (mut nodes, top) = opening(composer, grid, &title, &lead);
        end = top + table.height;
        nodes.extend(table.moved(grid.safe.x0, top).nodes);
        drafts.push(sheet(composer, ID, (&title, &description), drafts.len(), nodes));
    }
    rules(composer, grid, (book, &practice), (&title, &description), (&mut drafts, end + LEADING));
    drafts
}

fn lead(tongue: &Tongue, practice: &Practice) -> String {
    let count = |id: &str, n: u32| tongue.tell(id, &[("n", n.into())]);
    tongue.tell(
        "plan-lead",
        &[
            ("weeks", count("time-weeks", practice.weeks).into()),
            ("days", count("time-days", practice.days).into()),
            ("minutes", count("time-minutes", practice.minutes).into()),
        ],
    )
}

/// A row a day, on as many sheets as they need.
fn tables(composer: &mut Composer<'_>, book: &Book<'_>, days: &[Day], (width, room): (f64, f64)) -> Vec<Piece> {
    let heads = ["plan-when", "plan-pages", "plan-minutes", "plan-done"].map(|id| composer.say(id));
    let when = |composer: &Composer<'_>, day: &Day| {
        composer.tell("plan-day", &[("week", day.week.into()), ("day", day.day.into())])
    };
    let bold = Style { face: Face::Bold, ..CAPTION };
    let needs = |composer: &mut Composer<'_>, text: &str, style| composer.width_of(text, style) + CELL_PAD + 0.5;
    let dates: Vec<String> = days.iter().map(|day| when(composer, day)).collect();
    let week = dates.iter().map(|date| needs(composer, date, &CAPTION)).fold(WEEK, f64::max);
    let minutes = needs(composer, &heads[2], &bold).max(MINUTES);
    let done = needs(composer, &heads[3], &bold).max(DONE);
    let mut widths = [week, width - week - minutes - done, minutes, done];
    let [_, own, least, _] = widths;
    let rows = days.iter().zip(&dates).map(|(day, date)| {
        let minutes = day.seconds.div_ceil(60).to_string();
        vec![
            composer.lines(date, &CAPTION, week - CELL_PAD),
            pages(composer, book, day, own - CELL_PAD),
            composer.lines(&minutes, &CAPTION, least - CELL_PAD),
            tick_box(composer),
        ]
    });
    let mut rows: Vec<Vec<Piece>> = rows.collect();
    let mut heads: Vec<&str> = heads.iter().map(String::as_str).collect();
    if book.edition.hand == Hand::Left && book.edition.page != PageFormat::Wide {
        // What is ticked stands first, as in the log, so that the hand covers nothing. No hand writes on a screen.
        rows.iter_mut().for_each(|row| row.rotate_right(1));
        heads.rotate_right(1);
        widths.rotate_right(1);
    }
    composer.tables((&heads, &CAPTION), rows, &widths, room)
}

/// The ids of the pages of a day, as links.
fn pages(composer: &mut Composer<'_>, book: &Book<'_>, day: &Day, width: f64) -> Piece {
    let (mut x, mut y, mut nodes) = (0.0, 0.0, Vec::new());
    let leading = composer.leading(&CAPTION);
    for index in day.pages.clone() {
        let id = &book.pages[index].page.id;
        let style = if day.new <= index { Style { face: Face::Bold, ..CAPTION } } else { CAPTION };
        let text = if index + 1 < day.pages.end { format!("{id},") } else { id.clone() };
        let own = composer.width_of(&text, &style) + BLANK;
        if 0.0 < x && width < x + own {
            (x, y) = (0.0, y + leading);
        }
        let area = Rect::new(0.0, 0.0, own - BLANK, leading);
        let link = Role::Link { target: id.clone(), area, alt: composer.tell("page-go-to", &[("page", id.into())]) };
        // The blank keeps the ids apart for those who hear the page.
        nodes.extend(composer.lines(&format!("{text} "), &style, own.max(width - x)).role(link).moved(x, y).nodes);
        x += own;
    }
    Piece { height: y + leading, nodes }
}

/// An empty box to tick.
pub(super) fn tick_box(composer: &Composer<'_>) -> Piece {
    let height = composer.leading(&CAPTION);
    let top = (height - TICK) / 2.0 + 0.1;
    let area = Rect::new(0.0, top, TICK, top + TICK);
    let nodes = vec![Node::Group(Role::Artifact(Furniture::Layout), vec![outline_box(area)])];
    Piece { height, nodes }
}

/// The rules: beneath the last table, which ends here, where there is room, else on sheets of their own.
fn rules(
    composer: &mut Composer<'_>,
    grid: &Grid,
    (book, practice): (&Book<'_>, &Practice),
    (title, description): (&str, &str),
    (drafts, start): (&mut Vec<Draft>, f64),
) {
    let width = text_width(composer, grid);
    let sections = sections(composer, (book, practice), width);
    let beneath = text_columns(composer, grid, start);
    match (within(composer, &beneath, sections), drafts.last_mut()) {
        (Ok(nodes), Some(draft)) => draft.nodes.extend(nodes),
        (Ok(_), None) => {}
        (Err(sections), _) => {
            let (title, description) = (title.to_owned(), description.to_owned());
            let opening = Opening { id: ID, title, lead: String::new(), description };
            drafts.extend(pour_after(composer, grid, &opening, drafts.len(), sections));
        }
    }
}

fn sections(composer: &mut Composer<'_>, (book, practice): (&Book<'_>, &Practice), width: f64) -> Vec<Section> {
    let tongue = composer.tongue;
    let (block, rest) = (time(tongue, practice.block), time(tongue, practice.rest));
    let mut each_day = vec![
        tongue.say("plan-easy-to-hard"),
        tongue.tell("plan-rest", &[("block", block.into()), ("rest", rest.into())]),
        tongue.say("plan-again"),
        tongue.say("plan-end"),
    ];
    if book.pages.len() < practice.all_days() {
        each_day.push(tongue.say("plan-come-again"));
    }
    if book.pages.iter().any(|page| page.page.gated || page.page.balance.is_some()) {
        each_day.push(tongue.say("plan-framed"));
    }
    let go_on = tongue.tell("plan-go-on", &[("days", DAYS_TO_GO_ON.into())]);
    let comfort = tongue.tell("plan-good-comfort", &[("most", COMFORT_TO_GO_ON.into())]);
    let mut good = vec![tongue.say("plan-good-marks"), comfort];
    if book.pages.iter().any(|page| page.page.quiz.is_some()) {
        good.insert(0, tongue.say("plan-good-answers"));
    }
    let back = tongue.tell("plan-bad-comfort", &[("least", COMFORT_TO_STEP_BACK.into())]);
    let bad = [tongue.say("plan-bad-marks"), back, tongue.say("plan-bad-easier")];
    let stop = vec![composer.paragraph(&words::stop(tongue), width)];
    let ask = vec![composer.paragraph(&tongue.say("plan-ask-words"), width)];
    let bodies = [
        (tongue.say("plan-each-day"), composer.items(&each_day, width)),
        (go_on, composer.items(&good, width)),
        (tongue.say("plan-step-back"), composer.items(&bad, width)),
        (tongue.say("plan-stop"), stop),
        (tongue.say("plan-ask"), ask),
    ];
    bodies.into_iter().map(|(heading, body)| Section::new(composer.heading(&heading, width), body)).collect()
}
