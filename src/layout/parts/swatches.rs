//! The swatch sheet: the inks of an edition, what each eye sees of them, and what was traded for them.

use kurbo::{Rect, Shape as _};

use crate::colour::judge::IMBALANCE_WARN;
use crate::colour::srgb::encode;
use crate::colour::{Cmyk, EyeReport, Ghost, InkPlan, Inks, Srgb8, View};
use crate::layout::base::Ride;
use crate::layout::compose::{Column, Composer, Piece, RULE, outline_box};
use crate::layout::grid::{BODY, CAPTION, Grid, LEADING};
use crate::layout::sheet::{Face, Node, Patch, Role};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft};
use crate::scene::{Eyes, Shape};
use crate::units::plain;

use super::marks::{Mark, figure};
use super::{columns, foot, opening, section, words};

/// Height of the picture of the marks, mm.
const PICTURE: f64 = 34.0;
/// Height of a swatch, mm.
const SWATCH: f64 = 17.0;
/// Between two swatches, mm.
const GAP: f64 = 3.0;
/// Width of the names of the rows, mm.
const NAMES: f64 = 21.0;
/// What the swatches are of, in the order of the page.
const COLUMNS: [&str; 5] = ["Ground", "Left mark", "Right mark", "Overlap", "Words"];

/// The one swatch sheet.
pub(crate) fn draft(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Draft {
    composer.sheet = "ink-swatches".to_owned();
    let title = format!("Inks of edition {}", book.edition.id);
    let lead = words::seen_on(composer.tongue, book.edition);
    let (mut nodes, top) = opening(composer, grid, &title, &lead);
    let [left, right] = if grid.beside {
        columns(grid, top)
    } else {
        let whole = Rect::new(grid.safe.x0, top, grid.safe.x1, foot(grid));
        [whole, whole]
    };
    let mut first = Column::new(left);
    first.add(marks(left.width()), 0.0);
    first.add(swatches(composer, book, left.width()), LEADING * 0.8);
    let mut second =
        if grid.beside { Column::new(right) } else { Column::new(Rect { y0: first.y + LEADING * 0.8, ..right }) };
    second.add(predicted(composer, book.plan, second.width()), 0.0);
    second.add(verdict(composer, book.plan, second.width()), LEADING * 0.8);
    second.add(traded(composer, book.plan, second.width()), LEADING * 0.8);
    nodes.extend(first.finish(composer));
    nodes.extend(second.finish(composer));
    Draft {
        id: "ink-swatches".to_owned(),
        title,
        description: "The inks as swatches, how light each eye sees them, and the contrast and ghost to expect."
            .to_owned(),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: words::glasses(composer.tongue, book.edition),
        placed: Vec::new(),
    }
}

/// Marks for each eye on the ground, two of them overlapping.
fn marks(width: f64) -> Piece {
    let (y, size) = (PICTURE / 2.0, 28.0);
    let mark = |id, shape, eyes, x| Mark { id, shape, eyes, at: (x, y), size, weight: 5.0 };
    let alt = "A flat bar for the left eye, two rings that cross, one for each eye, and a wedge for the right eye.";
    let marks = [
        mark("bar", Shape::Bar, Eyes::Left, width * 0.16),
        mark("left-ring", Shape::Ring, Eyes::Left, width * 0.5 - 8.0),
        mark("right-ring", Shape::Ring, Eyes::Right, width * 0.5 + 8.0),
        mark("wedge", Shape::Wedge, Eyes::Right, width * 0.84),
    ];
    figure(width, PICTURE, alt, &marks, Ride::NONE)
}

/// The inks in the order of [`COLUMNS`].
fn in_order(inks: &Inks) -> [Srgb8; 5] {
    [inks.ground, inks.left, inks.right, inks.both, inks.text]
}

/// Three rows of swatches: the page, and what each eye sees of it in greys.
fn swatches(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Piece {
    let inks = in_order(&book.plan.inks);
    let step = (width - NAMES + GAP) / 5.0;
    let bold = Style { face: Face::Bold, ..CAPTION };
    let mut all = Piece { height: CAPTION.leading.0, nodes: Vec::new() };
    for (name, index) in COLUMNS.iter().zip(0_u32..) {
        let head = composer.lines(name, &bold, step - GAP);
        all.nodes.extend(head.moved(NAMES + f64::from(index) * step, 0.0).nodes);
    }
    let codes = inks.map(|ink| code(book, ink));
    all.stack(row(composer, "On the page", inks, &codes, step), 0.6);
    for (name, view) in [("To the left eye", &book.views.left), ("To the right eye", &book.views.right)] {
        let shares = inks.map(|ink| share(view, ink));
        let greys = shares.map(|share| Srgb8([encode(share); 3]));
        let captions = shares.map(|share| format!("{} %", plain(share * 100.0, 1)));
        all.stack(row(composer, name, greys, &captions, step), 2.0);
    }
    let note = "Greys and per cents: how light each eye sees a colour, counted from white behind its own filter.";
    all.stack(composer.lines(note, &CAPTION, width), 1.2);
    let alt = format!("Swatches of the inks: {}.", codes.join(", ").replace('\n', " "));
    let area = Rect::new(0.0, 0.0, width, all.height);
    all.role(Role::Figure { alt, area })
}

/// How light this eye sees a colour, as a share of its white.
fn share(view: &View, colour: Srgb8) -> f64 {
    let white = view.white();
    if 0.0 < white { view.luminance(colour) / white } else { 0.0 }
}

/// A colour as the page files hold it, with its process inks where it is printed.
fn code(book: &Book<'_>, colour: Srgb8) -> String {
    if !words::printed(book.edition) {
        return colour.hex();
    }
    let Cmyk { c, m, y, k } = Cmyk::of(colour);
    let [c, m, y, k] = [c, m, y, k].map(|part| plain(part * 100.0, 0));
    format!("{}\nC {c} M {m}\nY {y} K {k}", colour.hex())
}

/// One row of swatches with a name before it and words below each.
fn row(composer: &mut Composer<'_>, name: &str, colours: [Srgb8; 5], captions: &[String; 5], step: f64) -> Piece {
    let mut row = composer.lines(name, &CAPTION, NAMES - 2.0).moved(0.0, SWATCH / 2.0 - CAPTION.leading.0);
    row.height = SWATCH;
    for ((colour, caption), index) in colours.into_iter().zip(captions).zip(0_u32..) {
        let x = NAMES + f64::from(index) * step;
        let area = Rect::new(x, 0.0, x + step - GAP, SWATCH);
        row.nodes.push(Node::Patch(Patch { path: area.to_path(0.1), colour }));
        row.nodes.push(outline_box(area.inset(RULE / 2.0)));
        let caption = composer.lines(caption, &CAPTION, step - GAP).moved(x, SWATCH + 0.6);
        row.height = row.height.max(SWATCH + 0.6 + caption.height);
        row.nodes.extend(caption.nodes);
    }
    row
}

fn percent(share: f64) -> String {
    format!("{} %", plain(share * 100.0, 1))
}

/// The predicted table, one row an eye.
fn predicted(composer: &mut Composer<'_>, plan: &InkPlan, width: f64) -> Piece {
    let row = |name: &str, eye: &EyeReport| {
        vec![
            name.to_owned(),
            percent(eye.contrast),
            percent(eye.ghost),
            percent(eye.overlap_ghost),
            percent(eye.brightness),
        ]
    };
    let rows = [row("Left", &plan.left), row("Right", &plan.right)];
    let widths = [0.16, 0.21, 0.19, 0.2, 0.24].map(|share| share * width);
    let style = Style { align: Align::Start, ..BODY };
    let head = ["Eye", "Contrast", "Ghost", "Overlap", "Brightness"];
    let table = composer.table(&head, &rows, &widths, &style);
    let note = "Contrast: how far the own mark stands off the ground. Ghost: how far the other eye’s mark does, as a share of \
        the own. Overlap: how far a crossing stands off the own mark. Brightness: the lightest this eye sees, of the page’s \
        white without a filter.";
    let note = composer.lines(note, &CAPTION, width).role(Role::Paragraph);
    section(composer.heading("What to expect", width), [table, note])
}

/// Go, fix or ask.
fn verdict(composer: &mut Composer<'_>, plan: &InkPlan, width: f64) -> Piece {
    let (name, words) = match plan.verdict() {
        Ghost::Fine => ("Go", "The ghost stays within 2 %."),
        Ghost::Faint => ("Go", "The ghost is over 2 % but within 5 %: readers may notice it."),
        Ghost::Strong => (
            "Fix",
            "The ghost is over 5 %. Tint the ground, or try other glasses, paper or light; then look at the ghost page.",
        ),
        Ghost::Refused => ("Fix", "The ghost is over 15 %. These glasses do not part the two marks on this medium."),
    };
    let words = format!(
        "{words} The two eyes’ brightness differs {} to 1{}. Words stand off the ground {} to 1.",
        plain(plan.imbalance, 1),
        if IMBALANCE_WARN < plan.imbalance { ", more than the 2 to 1 to aim for" } else { "" },
        plain(plan.text_contrast, 1)
    );
    section(composer.heading(name, width), [composer.paragraph(&words, width)])
}

/// What was given up for these inks.
fn traded(composer: &mut Composer<'_>, plan: &InkPlan, width: f64) -> Piece {
    let heading = composer.heading("What was traded", width);
    if plan.traded.is_empty() {
        let words = "Nothing: these are the full inks of the glasses.";
        return section(heading, [composer.paragraph(words, width)]);
    }
    let sentences: Vec<String> = plan.traded.iter().map(|trade| words::sentence(&trade.to_string())).collect();
    let sentences: Vec<&str> = sentences.iter().map(String::as_str).collect();
    section(heading, [composer.bullets(&sentences, width)])
}
