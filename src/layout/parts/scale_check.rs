//! The scale check: a 100 mm bar, a 50 mm square and the outline of a bank card, with what to do when they differ.

use kurbo::{Rect, RoundedRect, Shape as _};

use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::{BODY, CAPTION, Grid};
use crate::layout::sheet::{Fill, Node, Role, Tone};
use crate::layout::{Book, Draft};
use crate::units::plain;

use super::{foot, opening, section, words};

/// Length and height of the bar, mm.
pub(crate) const BAR: (f64, f64) = (100.0, 4.0);
/// Side of the square, mm.
const SQUARE: f64 = 50.0;
/// A bank card: ISO/IEC 7810 ID-1, mm, with a corner radius inside its tolerance.
const CARD: (f64, f64) = (85.60, 53.98);
const CARD_CORNER: f64 = 3.18;
/// Width of the outlines, mm; they lie inside the measure, so that outer edges are what counts.
const LINE: f64 = 0.4;

/// The one scale sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "scale-check".to_owned();
    let paper = words::on_paper(book.edition);
    let lead = if paper {
        "Measure the bar with a ruler, and lay a bank card on its outline. Depths are right only at true size."
    } else {
        "Hold a ruler to the bar, or a bank card to its outline. Change the zoom until they match, in full screen."
    };
    let lead = format!(
        "{lead}{}",
        words::off_base(composer.tongue, book.set, "it is measured, not looked at through the glasses")
    );
    let (mut nodes, top) = opening(composer, grid, "Check the size", &lead);
    let x = grid.safe.x0;
    nodes.extend(bar(composer).moved(x, top).nodes);
    nodes.extend(square(composer).moved(x, top + 17.0).nodes);
    nodes.extend(card(composer).moved(x + SQUARE + 18.0, top + 17.0).nodes);
    let text_area = if grid.beside {
        Rect::new(x + 172.0, top, grid.safe.x1, foot(grid))
    } else {
        Rect::new(x, top + 17.0 + CARD.1 + 12.0, grid.safe.x1, foot(grid))
    };
    let table = table(composer, book, text_area.width().min(122.0));
    let mut column = crate::layout::compose::Column::new(text_area);
    column.add(table, 0.0);
    column.add(advice(composer, text_area.width(), paper), 4.0);
    nodes.extend(column.finish(composer));
    Draft {
        id: "scale-check".to_owned(),
        title: "Check the size".to_owned(),
        description: "A bar of 100 mm, a square of 50 mm and the outline of a bank card, to measure.".to_owned(),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
    .into_one()
}

fn bar(composer: &mut Composer<'_>) -> Piece {
    let mut fills = vec![fill(Rect::new(0.0, 0.0, BAR.0, BAR.1))];
    // Marks every centimetre, below the bar.
    fills.extend((0..=10).map(|cm| {
        let at = f64::from(cm) * 10.0;
        let middle = at.clamp(LINE / 2.0, BAR.0 - LINE / 2.0);
        fill(Rect::new(middle - LINE / 2.0, BAR.1 + 1.0, middle + LINE / 2.0, BAR.1 + 3.5))
    }));
    measured(
        composer,
        fills,
        Rect::new(0.0, 0.0, BAR.0, BAR.1 + 3.5),
        "Bar: 100 mm from end to end",
        "A bar of 100 mm.",
    )
}

fn square(composer: &mut Composer<'_>) -> Piece {
    let area = Rect::new(0.0, 0.0, SQUARE, SQUARE);
    let mut path = area.to_path(0.01);
    path.extend(area.inset(-LINE).to_path(0.01).reverse_subpaths());
    let fills = vec![Node::Fill(Fill { path, tone: Tone::FULL })];
    measured(composer, fills, area, "Square: 50 mm each way", "A square of 50 mm.")
}

fn card(composer: &mut Composer<'_>) -> Piece {
    let area = Rect::new(0.0, 0.0, CARD.0, CARD.1);
    let mut path = RoundedRect::from_rect(area, CARD_CORNER).to_path(0.001);
    path.extend(RoundedRect::from_rect(area.inset(-LINE), CARD_CORNER - LINE).to_path(0.001).reverse_subpaths());
    let fills = vec![Node::Fill(Fill { path, tone: Tone::FULL })];
    measured(composer, fills, area, "Bank card: 85.6 × 54 mm", "The outline of a bank card, 85.60 by 53.98 mm.")
}

fn fill(area: Rect) -> Node {
    Node::Fill(Fill { path: area.to_path(0.01), tone: Tone::FULL })
}

/// A measure as a figure with its caption below.
fn measured(composer: &mut Composer<'_>, mut fills: Vec<Node>, area: Rect, caption: &str, alt: &str) -> Piece {
    let caption = composer.lines(caption, &CAPTION, area.width()).role(Role::Caption).moved(0.0, area.y1 + 1.0);
    let height = area.y1 + 1.0 + caption.height;
    fills.extend(caption.nodes);
    Piece { height, nodes: vec![Node::Group(Role::Figure { alt: alt.to_owned(), area }, fills)] }
}

/// "If the bar measures … view from …": the demand in prism dioptres stays right when the distance follows the scale.
fn table(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Piece {
    let distance = book.set.viewer.distance.0;
    let rows: Vec<Vec<String>> = [94.0, 96.0, 98.0, 100.0, 102.0, 104.0, 106.0]
        .iter()
        .map(|&bar: &f64| {
            vec![format!("{} mm", plain(bar, 1)), format!("{} cm", plain(distance * bar / BAR.0 / 10.0, 1))]
        })
        .collect();
    let table = composer.table(&["Bar measures", "View from"], &rows, &[width / 2.0, width / 2.0], &BODY);
    section(composer.heading("If the size is off", width), [table])
}

fn advice(composer: &mut Composer<'_>, width: f64, paper: bool) -> Piece {
    let heading = composer.heading("What to do", width);
    let items: &[&str] = if paper {
        &[
            "Print again at 100 %, “actual size”, without “fit to page”.",
            "If you can’t, keep the page and change the distance as in the table.",
            "Off by more than 6 mm? Do not use the print.",
        ]
    } else {
        &[
            "Set the zoom so that the bar is 100 mm long.",
            "If you can’t, change the distance as in the table.",
            "Off by more than 6 mm? Use a larger screen or the paper edition.",
        ]
    };
    section(heading, [composer.bullets(items, width)])
}
