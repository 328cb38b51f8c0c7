//! The scale check: a 100 mm bar, a 50 mm square and the outline of a bank card, with what to do when they differ.

use kurbo::{Rect, RoundedRect, Shape as _};

use crate::layout::compose::{Composer, Piece};
use crate::layout::flow::{Opening, Section, pour_below};
use crate::layout::grid::{BODY, CAPTION, Grid};
use crate::layout::sheet::{Fill, Node, Role, Tone};
use crate::layout::{Book, Draft};
use crate::units::Mm;

use super::{foot, text_columns, words};

/// Length and height of the bar, mm.
pub(crate) const BAR: (f64, f64) = (100.0, 4.0);
/// Side of the square, mm.
const SQUARE: f64 = 50.0;
/// A bank card: ISO/IEC 7810 ID-1, mm, with a corner radius inside its tolerance.
const CARD: (f64, f64) = (85.60, 53.98);
const CARD_CORNER: f64 = 3.18;
/// Width of the outlines, mm; they lie inside the measure, so that outer edges are what counts.
const LINE: f64 = 0.4;

/// Clear space between the measures, mm.
const CLEAR: f64 = 4.1;
/// From the left edge to the text beside the measures of a wide page, mm.
const BESIDE: f64 = 172.0;

/// The scale sheet; text that it has no room for stands on further ones.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let paper = words::on_paper(book.edition);
    let opening = Opening {
        id: "scale-check",
        title: composer.say("scale-title"),
        lead: lead(composer, book, paper),
        description: composer.say("scale-description"),
    };
    // One column: beside the measures on a wide page, else below them.
    let width = grid.safe.width() - if grid.beside { BESIDE } else { 0.0 };
    let sections = text(composer, book, width);
    pour_below(composer, grid, &opening, sections, |composer, sheet, top| {
        if 0 < sheet && grid.beside {
            return (Vec::new(), text_columns(composer, grid, top));
        }
        let whole = Rect { y0: top, y1: foot(grid), ..grid.safe };
        if 0 < sheet {
            return (Vec::new(), vec![whole]);
        }
        let measures = measures(composer);
        let text = if grid.beside {
            Rect { x0: grid.safe.x0 + BESIDE, ..whole }
        } else {
            Rect { y0: top + measures.height + 6.6, ..whole }
        };
        (measures.moved(grid.safe.x0, top).nodes, vec![text])
    })
}

/// What to do here, and why the page does not ride on a base.
fn lead(composer: &Composer<'_>, book: &Book<'_>, paper: bool) -> String {
    composer.say(match (paper, book.set.viewer.base.is_none()) {
        (true, true) => "scale-lead-paper",
        (false, true) => "scale-lead-screen",
        (true, false) => "scale-lead-paper-off-base",
        (false, false) => "scale-lead-screen-off-base",
    })
}

/// The bar, and below it the square and the card.
fn measures(composer: &mut Composer<'_>) -> Piece {
    let mut all = bar(composer);
    let square = square(composer);
    let card = card(composer).moved(SQUARE + 18.0, 0.0);
    let mut pair = Piece { height: square.height.max(card.height), nodes: square.nodes };
    pair.nodes.extend(card.nodes);
    all.stack(pair, CLEAR);
    all
}

fn bar(composer: &mut Composer<'_>) -> Piece {
    let mut fills = vec![fill(Rect::new(0.0, 0.0, BAR.0, BAR.1))];
    // Marks every centimetre, below the bar.
    fills.extend((0..=10).map(|cm| {
        let at = f64::from(cm) * 10.0;
        let middle = at.clamp(LINE / 2.0, BAR.0 - LINE / 2.0);
        fill(Rect::new(middle - LINE / 2.0, BAR.1 + 1.0, middle + LINE / 2.0, BAR.1 + 3.5))
    }));
    measured(composer, fills, Rect::new(0.0, 0.0, BAR.0, BAR.1 + 3.5), ("scale-bar", "scale-bar-picture"))
}

fn square(composer: &mut Composer<'_>) -> Piece {
    let area = Rect::new(0.0, 0.0, SQUARE, SQUARE);
    let mut path = area.to_path(0.01);
    path.extend(area.inset(-LINE).to_path(0.01).reverse_subpaths());
    let fills = vec![Node::Fill(Fill { path, tone: Tone::FULL })];
    measured(composer, fills, area, ("scale-square", "scale-square-picture"))
}

fn card(composer: &mut Composer<'_>) -> Piece {
    let area = Rect::new(0.0, 0.0, CARD.0, CARD.1);
    let mut path = RoundedRect::from_rect(area, CARD_CORNER).to_path(0.001);
    path.extend(RoundedRect::from_rect(area.inset(-LINE), CARD_CORNER - LINE).to_path(0.001).reverse_subpaths());
    let fills = vec![Node::Fill(Fill { path, tone: Tone::FULL })];
    measured(composer, fills, area, ("scale-card", "scale-card-picture"))
}

fn fill(area: Rect) -> Node {
    Node::Fill(Fill { path: area.to_path(0.01), tone: Tone::FULL })
}

/// A measure as a figure with its caption below.
fn measured(composer: &mut Composer<'_>, mut fills: Vec<Node>, area: Rect, (caption, alt): (&str, &str)) -> Piece {
    let caption = composer.say(caption);
    let caption = composer.lines(&caption, &CAPTION, area.width()).role(Role::Caption).moved(0.0, area.y1 + 1.0);
    let height = area.y1 + 1.0 + caption.height;
    fills.extend(caption.nodes);
    Piece { height, nodes: vec![Node::Group(Role::Figure { alt: composer.say(alt), area }, fills)] }
}

/// Go, fix and ask; with what to fix goes the table of distances.
fn text(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Vec<Section> {
    let (fix, ask): (&[&str], &str) = if words::on_paper(book.edition) {
        (&["scale-fix-print", "scale-fix-keep"], "scale-ask-paper")
    } else {
        (&["scale-fix-zoom", "scale-fix-distance"], "scale-ask-screen")
    };
    let fix: Vec<String> = fix.iter().map(|id| composer.say(id)).collect();
    let said = |composer: &mut Composer<'_>, id: &str| composer.paragraph(&composer.say(id), width);
    let bodies = [
        ("check-go", vec![said(composer, "scale-go")]),
        ("check-fix", composer.numbered(&fix, width)),
        ("scale-off", vec![table(composer, book, width.min(122.0))]),
        ("check-ask", vec![said(composer, ask)]),
    ];
    bodies.map(|(heading, body)| Section::new(composer.heading(&composer.say(heading), width), body)).into()
}

/// "If the bar measures … view from …": the demand in prism dioptres stays right when the distance follows the scale.
fn table(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Piece {
    let distance = book.set.viewer.distance.0;
    let row = |bar: f64| vec![composer.tongue.mm(Mm(bar), 1), composer.tongue.cm(Mm(distance * bar / BAR.0), 1)];
    let rows = [94.0, 96.0, 98.0, 100.0, 102.0, 104.0, 106.0].map(row);
    let [measures, from] = ["scale-measures", "scale-from"].map(|id| composer.say(id));
    composer.table(&[&measures, &from], &rows, &[width / 2.0, width / 2.0], &BODY)
}
