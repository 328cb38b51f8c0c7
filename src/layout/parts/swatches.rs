//! The swatch sheet: the inks of an edition, what each eye sees of them, and what was traded for them.

use kurbo::{Rect, Shape as _};

use crate::colour::judge::IMBALANCE_WARN;
use crate::colour::plan::{self, Trade};
use crate::colour::srgb::encode;
use crate::colour::{Cmyk, EyeReport, FilterModel, Ghost, Ground, InkPlan, Inks, Srgb8, View};
use crate::language::{Arg, Tongue};
use crate::layout::base::Ride;
use crate::layout::compose::{Column, Composer, Piece, RULE, outline_box};
use crate::layout::grid::{BODY, CAPTION, Grid, LEADING};
use crate::layout::sheet::{Face, Node, Patch, Role};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft, swatch};
use crate::scene::{Eyes, Shape};
use crate::spec::Edition;
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
/// What the swatches are of, as ids of messages, in the order of the page.
const COLUMNS: [&str; 5] = ["inks-ground", "inks-left-mark", "inks-right-mark", "inks-overlap", "inks-words"];

/// The one swatch sheet.
pub(crate) fn draft(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Draft {
    composer.sheet = "ink-swatches".to_owned();
    let title = composer.tell("inks-title", &[("id", (&book.edition.id).into())]);
    let lead = seen_on(book.edition, composer.tongue);
    let (mut nodes, top) = opening(composer, grid, &title, &lead);
    let [left, right] = if grid.beside {
        columns(grid, top)
    } else {
        let whole = Rect::new(grid.safe.x0, top, grid.safe.x1, foot(grid));
        [whole, whole]
    };
    let mut first = Column::new(left);
    first.add(marks(left.width(), composer.tongue), 0.0);
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
        description: composer.say("inks-description"),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: words::glasses(composer.tongue, book.edition),
        placed: Vec::new(),
    }
}

/// What the colours of an edition are seen through and on: "Cyan left, red right; white ground; screen lcd."
pub(super) fn seen_on(edition: &Edition, tongue: &Tongue) -> String {
    let filter = |filter: &FilterModel| tongue.say(&format!("filter-{}", filter.name()));
    let args = [
        ("left", filter(&edition.glasses.left).into()),
        ("right", filter(&edition.glasses.right).into()),
        ("medium", swatch::medium(&edition.colour.source, tongue).into()),
    ];
    words::sentence(&match edition.ground {
        Ground::White => tongue.tell("inks-lead-white", &args),
        Ground::Black => tongue.tell("inks-lead-black", &args),
    })
}

/// Marks for each eye on the ground, two of them overlapping.
fn marks(width: f64, tongue: &Tongue) -> Piece {
    let (y, size) = (PICTURE / 2.0, 28.0);
    let mark = |id, shape, eyes, x| Mark { id, shape, eyes, at: (x, y), size, weight: 5.0 };
    let alt = tongue.say("inks-marks-picture");
    let marks = [
        mark("bar", Shape::Bar, Eyes::Left, width * 0.16),
        mark("left-ring", Shape::Ring, Eyes::Left, width * 0.5 - 8.0),
        mark("right-ring", Shape::Ring, Eyes::Right, width * 0.5 + 8.0),
        mark("wedge", Shape::Wedge, Eyes::Right, width * 0.84),
    ];
    figure(width, PICTURE, &alt, &marks, Ride::NONE)
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
    let mut all = Piece::default();
    for (id, index) in COLUMNS.iter().zip(0_u32..) {
        let head = composer.say(id);
        let head = composer.lines(&head, &bold, step - GAP);
        all.height = all.height.max(head.height);
        all.nodes.extend(head.moved(NAMES + f64::from(index) * step, 0.0).nodes);
    }
    let codes = inks.map(|ink| code(book, ink));
    let name = composer.say("inks-on-page");
    all.stack(row(composer, &name, inks, &codes, step), 0.6);
    for (id, view) in [("inks-to-left", &book.views.left), ("inks-to-right", &book.views.right)] {
        let shares = inks.map(|ink| share(view, ink));
        let greys = shares.map(|share| Srgb8([encode(share); 3]));
        let captions = shares.map(|share| percent(share, composer.tongue));
        let name = composer.say(id);
        all.stack(row(composer, &name, greys, &captions, step), 2.0);
    }
    let note = composer.say("inks-swatches-note");
    all.stack(composer.lines(&note, &CAPTION, width), 1.2);
    let codes = codes.join(", ").replace('\n', " ");
    let alt = composer.tell("inks-swatches-picture", &[("codes", codes.into())]);
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

fn percent(share: f64, tongue: &Tongue) -> String {
    tongue.tell("inks-percent", &[("n", tongue.number(share * 100.0, 1).into())])
}

/// The predicted table, one row an eye.
fn predicted(composer: &mut Composer<'_>, plan: &InkPlan, width: f64) -> Piece {
    let tongue = composer.tongue;
    let row = |name: &str, eye: &EyeReport| {
        let shares = [eye.contrast, eye.ghost, eye.overlap_ghost, eye.brightness];
        std::iter::once(tongue.say(name)).chain(shares.map(|share| percent(share, tongue))).collect::<Vec<_>>()
    };
    let rows = [row("inks-eye-left", &plan.left), row("inks-eye-right", &plan.right)];
    let widths = [0.16, 0.21, 0.19, 0.2, 0.24].map(|share| share * width);
    let style = Style { align: Align::Start, ..BODY };
    let head =
        ["inks-eye", "inks-contrast", "inks-ghost", "inks-crossing", "inks-brightness"].map(|id| composer.say(id));
    let table = composer.table(&head.each_ref().map(String::as_str), &rows, &widths, &style);
    let [note, heading] = ["inks-expect-note", "inks-expect"].map(|id| composer.say(id));
    let note = composer.lines(&note, &CAPTION, width).role(Role::Paragraph);
    section(composer.heading(&heading, width), [table, note])
}

/// Go, fix or ask.
fn verdict(composer: &mut Composer<'_>, plan: &InkPlan, width: f64) -> Piece {
    let (name, ghost) = match plan.verdict() {
        Ghost::Fine => ("inks-go", "inks-ghost-fine"),
        Ghost::Faint => ("inks-go", "inks-ghost-faint"),
        Ghost::Strong => ("inks-fix", "inks-ghost-strong"),
        Ghost::Refused => ("inks-fix", "inks-ghost-refused"),
    };
    let imbalance = [("n", composer.tongue.number(plan.imbalance, 1).into())];
    let contrast = [("n", composer.tongue.number(plan.text_contrast, 1).into())];
    let sentences = [
        composer.say(ghost),
        if IMBALANCE_WARN < plan.imbalance {
            composer.tell("inks-imbalance-more", &imbalance)
        } else {
            composer.tell("inks-imbalance", &imbalance)
        },
        composer.tell("inks-text-contrast", &contrast),
    ];
    let heading = composer.say(name);
    section(composer.heading(&heading, width), [composer.paragraph(&sentences.join(" "), width)])
}

/// What was given up for these inks.
fn traded(composer: &mut Composer<'_>, plan: &InkPlan, width: f64) -> Piece {
    let heading = composer.say("inks-traded");
    let heading = composer.heading(&heading, width);
    if plan.traded.is_empty() {
        let words = composer.say("inks-traded-nothing");
        return section(heading, [composer.paragraph(&words, width)]);
    }
    let sentences: Vec<String> = plan.traded.iter().map(|one| words::sentence(&trade(one, composer.tongue))).collect();
    let sentences: Vec<&str> = sentences.iter().map(String::as_str).collect();
    section(heading, [composer.bullets(&sentences, width)])
}

/// What was given up, as a sentence without its capital letter and its stop; per cents with their decimal even where
/// that is 0.
fn trade(trade: &Trade, tongue: &Tongue) -> String {
    let percent = |share: f64| {
        let number = format!("{:.1}", share * 100.0).replace('.', tongue.decimal_mark());
        tongue.tell("inks-percent", &[("n", number.into())])
    };
    match *trade {
        Trade::Tint { ground, left, right, ghost_before, ghost_after } => {
            let args = [
                ("ground", ground.hex().into()),
                ("left", percent(left).into()),
                ("right", percent(right).into()),
                ("before", percent(ghost_before).into()),
                ("after", percent(ghost_after).into()),
            ];
            tongue.tell("inks-traded-tint", &args)
        }
        Trade::Ink { role, full, signal_full, signal } => {
            let args = [
                ("ink", ink(role, tongue).into()),
                ("full", full.hex().into()),
                ("signal", percent(signal).into()),
                ("whole", percent(signal_full).into()),
            ];
            tongue.tell("inks-traded-ink", &args)
        }
        Trade::Pinned { role, solved, ghost_solved, ghost_pinned } => {
            let args = [
                ("ink", ink(role, tongue).into()),
                ("solved", solved.hex().into()),
                ("ghost", percent(ghost_solved).into()),
                ("pinned", percent(ghost_pinned).into()),
            ];
            tongue.tell("inks-traded-pinned", &args)
        }
        Trade::Ghost { left, right, limit, tinted } => {
            let mut args: Vec<(&str, Arg<'_>)> = vec![
                ("left", percent(left).into()),
                ("right", percent(right).into()),
                ("limit", percent(limit).into()),
            ];
            let Some(tinted) = tinted else { return tongue.tell("inks-traded-ghost", &args) };
            args.push(("tinted", percent(tinted).into()));
            tongue.tell("inks-traded-ghost-tinted", &args)
        }
    }
}

/// An ink of the plan.
fn ink(role: plan::Role, tongue: &Tongue) -> String {
    tongue.say(match role {
        plan::Role::Left => "inks-role-left",
        plan::Role::Right => "inks-role-right",
        plan::Role::Both => "inks-role-overlap",
        plan::Role::Ground => "inks-role-ground",
    })
}
