//! The ladder: every page of a set in book order, with its difficulty above and its demand below.

use kurbo::{Point, Rect};

use super::marks::hair;
use super::view::{Spot, spots};
use super::{ChartPage, Charts, FOOT, Frame, SAFE, TOP, climb, demand, short};
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::{CAPTION, SMALL};
use crate::layout::sheet::{Face, Node, Sheet, Tone};
use crate::layout::text::{Align, Style};

/// The most pages on one sheet.
const MOST: usize = 40;
/// Columns of the key of page ids.
const COLUMNS: usize = 4;
/// Room for the numbers of an upright axis, mm.
const LEFT: f64 = 10.0;
/// The least room for the names of lines at the right end of a chart, mm.
const RIGHT: f64 = 15.0;
/// Between the parts of the sheet, mm.
const GAP: f64 = 3.5;
/// Between a legend and its chart, mm.
const LEGEND: f64 = 2.4;
/// The share of the difficulty in the height of both charts.
const UPPER: f64 = 0.38;

/// A page of the ladder with what is measured of it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Rung {
    pub(super) number: u32,
    pub(super) id: String,
    pub(super) strand: &'static str,
    /// 0 to 100.
    pub(super) difficulty: Option<f64>,
    /// The least and the most demand, pd, toward positive; `None` where nothing is looked at.
    pub(super) demand: Option<(f64, f64)>,
}

/// Where the pages of one sheet stand in a chart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Slots {
    pub(super) frame: Rect,
    pub(super) count: usize,
}

impl Slots {
    /// The middle of a slot, mm across.
    #[expect(clippy::cast_precision_loss, reason = "a sheet has few pages")]
    pub(super) fn x(&self, index: usize) -> f64 {
        self.frame.x0 + self.width() * (index as f64 + 0.5)
    }

    /// The width of a slot, mm.
    #[expect(clippy::cast_precision_loss, reason = "a sheet has few pages")]
    pub(super) fn width(&self) -> f64 {
        self.frame.width() / self.count.max(1) as f64
    }
}

/// The sheets, each with as many pages as the others or one less.
pub(super) fn sheets(composer: &mut Composer<'_>, charts: &Charts<'_>) -> Vec<Sheet> {
    let rungs: Vec<Rung> = charts.pages.iter().map(|page| rung(charts, page)).collect();
    let scale = demand::Scale::of(charts.set, &rungs);
    let count = rungs.len().div_ceil(MOST).max(1);
    let parts: Vec<&[Rung]> =
        (0..count).map(|i| &rungs[i * rungs.len() / count..(i + 1) * rungs.len() / count]).collect();
    let numbered = (1..).zip(parts);
    numbered.map(|(number, part)| sheet(composer, charts, &scale, part, (number, count))).collect()
}

fn rung(charts: &Charts<'_>, page: &ChartPage<'_>) -> Rung {
    Rung {
        number: page.number,
        id: page.page.id.clone(),
        strand: page.strand,
        difficulty: page.difficulty,
        demand: demand_of(charts, page),
    }
}

/// The least and the most demand of what is looked at.
fn demand_of(charts: &Charts<'_>, page: &ChartPage<'_>) -> Option<(f64, f64)> {
    let (viewing, spots) = (charts.set.viewer.viewing()?, spots(page.solved, &charts.set.viewer)?);
    let ends = |value: fn(&Spot) -> f64, pick: fn(f64, f64) -> f64| spots.iter().map(value).reduce(pick);
    let demand = |parallax: f64| viewing.demand_of_parallax(crate::units::Mm(parallax)).map(|pd| pd.0);
    Some((demand(ends(|spot| spot.parallax.1, f64::max)?)?, demand(ends(|spot| spot.parallax.0, f64::min)?)?))
}

fn sheet(
    composer: &mut Composer<'_>,
    charts: &Charts<'_>,
    scale: &demand::Scale,
    rungs: &[Rung],
    (number, count): (u32, usize),
) -> Sheet {
    let id = if count == 1 { "ladder".to_owned() } else { format!("ladder-{number}") };
    composer.sheet.clone_from(&id);
    let tongue = composer.tongue;
    let span = match rungs {
        [] => tongue.say("chart-span-none"),
        [only] => tongue.tell("chart-span-one", &[("number", only.number.into())]),
        [first, .., last] => {
            tongue.tell("chart-span-many", &[("first", first.number.into()), ("last", last.number.into())])
        }
    };
    let set = ("title", (&charts.set.title).into());
    let title = match count {
        1 => tongue.tell("chart-ladder", &[set]),
        _ => tongue.tell("chart-ladder-sheet", &[set, ("number", number.into()), ("count", count.into())]),
    };
    let lead = tongue.tell("chart-ladder-lead", &[("span", (&span).into())]);
    let args = [("span", span.into()), ("range", scale.words(tongue).into())];
    let alt = tongue.tell("chart-ladder-picture", &args);
    let nodes = chart(composer, scale, rungs);
    Frame { id, number, title, lead, alt, set: charts.set }.sheet(composer, nodes)
}

/// Both charts with their legends, and the key of the page numbers.
fn chart(composer: &mut Composer<'_>, scale: &demand::Scale, rungs: &[Rung]) -> Vec<Node> {
    let width = SAFE.width();
    let head = CAPTION.leading.0;
    let (upper, lower, key) =
        (climb::legend(composer, rungs, width), scale.legend(composer, width), key(composer, rungs));
    let fixed =
        2.0 * head + upper.height + lower.height + 2.0 * SMALL.leading.0 + key.height + 3.0 * GAP + 2.0 * LEGEND;
    let room = FOOT - TOP - fixed;
    let right = scale.names(composer).max(RIGHT);
    let across = |y: f64, height: f64| Slots {
        frame: Rect::new(SAFE.x0 + LEFT, y, SAFE.x1 - right, y + height),
        count: rungs.len(),
    };
    let mut nodes = Vec::new();
    let mut y = TOP;
    for (is_upper, name, legend, share) in
        [(true, "chart-difficulty", upper, UPPER), (false, "chart-demand", lower, 1.0 - UPPER)]
    {
        let bold = Style { face: Face::Bold, ..CAPTION };
        let name = composer.say(name);
        nodes.extend(composer.lines(&name, &bold, width).moved(SAFE.x0, y).nodes);
        y += head;
        let height = legend.height;
        nodes.extend(legend.moved(SAFE.x0, y).nodes);
        let slots = across(y + height + LEGEND, room * share);
        if is_upper {
            nodes.extend(climb::draw(composer, &slots, rungs));
        } else {
            nodes.extend(scale.draw(composer, &slots, rungs));
        }
        nodes.extend(numbers(composer, &slots, rungs));
        y = slots.frame.y1 + SMALL.leading.0 + GAP;
    }
    nodes.extend(key.moved(SAFE.x0, y).nodes);
    nodes
}

/// The page numbers below a chart, with a fine line up to the foot of the frame.
fn numbers(composer: &mut Composer<'_>, slots: &Slots, rungs: &[Rung]) -> Vec<Node> {
    let style = Style { align: Align::Center, tone: Tone::FULL, ..SMALL };
    let mut nodes = Vec::new();
    for (rung, index) in rungs.iter().zip(0..) {
        let (x, y) = (slots.x(index), slots.frame.y1);
        nodes.push(hair(Point::new(x, y), Point::new(x, y + 0.8), Tone::QUIET));
        let room = slots.width().min(12.0);
        nodes.extend(composer.lines(&rung.number.to_string(), &style, room).moved(x - room / 2.0, y + 0.8).nodes);
    }
    nodes
}

/// Which page a number is, in columns.
fn key(composer: &mut Composer<'_>, rungs: &[Rung]) -> Piece {
    let style = Style { tone: Tone::FULL, ..SMALL };
    let (rows, leading) = (rungs.len().div_ceil(COLUMNS).max(1), SMALL.leading.0);
    let column = SAFE.width() / 4.0;
    let (number, mut piece) = (8.0, Piece::default());
    for (entries, index) in rungs.chunks(rows).zip(0_u32..) {
        let x = column * f64::from(index);
        for (rung, row) in entries.iter().zip(0_u32..) {
            let y = leading * f64::from(row);
            let id = short(composer, &rung.id, &style, column - number - 3.0);
            piece.nodes.extend(composer.lines(&rung.number.to_string(), &style, number).moved(x, y).nodes);
            piece.nodes.extend(composer.lines(&id, &style, column).moved(x + number, y).nodes);
            piece.height = piece.height.max(y + leading);
        }
    }
    piece
}
