//! The ghost check: numbered patches, each with a mark for the other eye. The number on which the mark fades most says
//! how much leaks through this eye's filter.

use kurbo::{Affine, BezPath, Point, Rect, Shape as _};

use crate::colour::Ground;
use crate::colour::judge::{GHOST_REFUSE, GHOST_WARN};
use crate::layout::compose::{Composer, Piece, RULE, flow, outline_box};
use crate::layout::ghost::{self, GhostPatch};
use crate::layout::grid::{CAPTION, GUTTER, Grid, LEADING};
use crate::layout::sheet::{Face, Node, Patch, Role};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft};
use crate::outline;
use crate::scene::{Eye, Shape};
use crate::units::plain;

use super::{columns, opening, section, words};

const TITLE: &str = "Check for a ghost";

/// Height of a patch, mm.
const PATCH: f64 = 19.0;
/// Between two patches, mm.
const GAP: f64 = 1.6;
/// The mark, as a share of the width of its patch.
const MARK: f64 = 0.62;

/// The one ghost sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "ghost-check".to_owned();
    let lead = "A ghost is a trace of the other eye’s mark. It shows where filter, colours and light do not match.";
    let lead = format!("{lead}{}", words::off_base(composer.tongue, book.set, "one eye looks at a time"));
    let (mut nodes, top) = opening(composer, grid, TITLE, &lead);
    let all = ghost::of(book);
    let (left, right): (Vec<GhostPatch>, Vec<GhostPatch>) = all.iter().partition(|patch| patch.eye == Eye::Left);
    let mut head = rows(composer, grid, &left, &right);
    head.stack(table(composer, &left, &right, grid.safe.width()), 3.0);
    let below = top + head.height + LEADING;
    nodes.extend(head.moved(grid.safe.x0, top).nodes);
    let areas = columns(grid, below);
    let sections = text(composer, book, &all, areas[0].width());
    nodes.extend(flow(composer, areas, sections));
    Draft {
        id: "ghost-check".to_owned(),
        title: TITLE.to_owned(),
        description: "Numbered patches for each eye, to find how much of the other eye's marks shows.".to_owned(),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
    .into_one()
}

/// The patches for both eyes: one below the other on portrait pages, side by side on wide ones.
fn rows(composer: &mut Composer<'_>, grid: &Grid, left: &[GhostPatch], right: &[GhostPatch]) -> Piece {
    let full = grid.safe.width();
    let width = if grid.beside { (full - GUTTER) / 2.0 } else { full };
    let (mut first, second) = (row(composer, Eye::Left, left, width), row(composer, Eye::Right, right, width));
    if grid.beside {
        first.nodes.extend(second.moved(full - width, 0.0).nodes);
    } else {
        first.stack(second, 4.0);
    }
    first
}

/// The patches for one eye under their heading.
fn row(composer: &mut Composer<'_>, eye: Eye, patches: &[GhostPatch], width: f64) -> Piece {
    let (heading, alt) = match eye {
        Eye::Left => (
            "Left eye open, right eye closed",
            "Numbered patches. On each stands a wedge for the right eye. To the left eye it fades on one of them.",
        ),
        Eye::Right => (
            "Right eye open, left eye closed",
            "Numbered patches. On each stands a bar for the left eye. To the right eye it fades on one of them.",
        ),
    };
    let step = (width + GAP) / patches.len().max(1) as f64;
    let mut nodes = Vec::new();
    let mut height = PATCH;
    for (patch, index) in patches.iter().zip(0_u32..) {
        let area = Rect::new(0.0, 0.0, step - GAP, PATCH);
        let cell = cell(composer, patch, area);
        height = height.max(cell.height);
        nodes.extend(cell.moved(f64::from(index) * step, 0.0).nodes);
    }
    let figure = Role::Figure { alt: alt.to_owned(), area: Rect::new(0.0, 0.0, width, PATCH) };
    let picture = Piece { height, nodes: vec![Node::Group(figure, nodes)] };
    section(composer.heading(heading, width), [picture])
}

/// One patch: the tinted ground, the mark of the other eye, a thin border and the number below.
fn cell(composer: &mut Composer<'_>, patch: &GhostPatch, area: Rect) -> Piece {
    let mut nodes = vec![
        Node::Patch(Patch { path: area.to_path(0.1), colour: patch.patch }),
        Node::Patch(Patch { path: mark(patch.eye, area.center(), area.width() * MARK), colour: patch.mark }),
        // The border reaches a little over the patch, so that no bare line shows between them.
        outline_box(area.inset(RULE / 2.0)),
    ];
    let style = Style { face: Face::Bold, align: Align::Center, ..CAPTION };
    let number = composer.lines(&format!("{} ", patch.number), &style, area.width());
    let height = area.height() + 0.8 + number.height;
    nodes.extend(number.moved(0.0, area.height() + 0.8).nodes);
    Piece { height, nodes }
}

/// The other eye's mark.
fn mark(eye: Eye, middle: Point, size: f64) -> BezPath {
    let shape = match eye {
        Eye::Left => Shape::Wedge,
        Eye::Right => Shape::Bar,
    };
    let extent = outline::extent(&shape, size);
    Affine::translate(middle.to_vec2()) * outline::path(&shape, size, extent, size)
}

/// What each number stands for.
fn table(composer: &mut Composer<'_>, left: &[GhostPatch], right: &[GhostPatch], width: f64) -> Piece {
    let first = width * 0.16;
    let other = (width - first) / left.len().max(1) as f64;
    let widths: Vec<f64> = std::iter::once(first).chain(left.iter().map(|_| other)).collect();
    let numbers: Vec<String> =
        std::iter::once("Number".to_owned()).chain(left.iter().map(|patch| patch.number.to_string())).collect();
    let head: Vec<&str> = numbers.iter().map(String::as_str).collect();
    let leaks = |name: &str, row: &[GhostPatch]| -> Vec<String> {
        std::iter::once(name.to_owned()).chain(row.iter().map(|patch| plain(patch.leak * 100.0, 1))).collect()
    };
    composer.table(&head, &[leaks("Left eye, %", left), leaks("Right eye, %", right)], &widths, &CAPTION)
}

fn percent(share: f64) -> String {
    format!("{} %", plain(share * 100.0, 1))
}

/// How to look, what to write down, and go, fix or ask.
fn text(composer: &mut Composer<'_>, book: &Book<'_>, patches: &[GhostPatch], width: f64) -> Vec<Piece> {
    let mut sections = Vec::new();
    let glasses = words::glasses(composer.tongue, book.edition);
    let steps = [
        format!("Glasses on: {glasses}. Use the light you practise in."),
        "Close your right eye. On which patch of the left eye’s row does the wedge fade most? Note the number."
            .to_owned(),
        "Close your left eye. Find the number for the bars in the other row. Between two numbers, take the higher."
            .to_owned(),
    ];
    let hint = composer.lines(hint(book.edition.ground), &CAPTION, width).role(Role::Paragraph);
    let steps = composer.steps(&steps, width);
    sections.push(section(composer.heading("How to look", width), [steps, hint]));
    for (name, words) in [("Go", go(patches)), ("Fix", fix(book)), ("Ask", ask().to_owned())] {
        sections.push(section(composer.heading(name, width), [composer.paragraph(&words, width)]));
    }
    let (note, line) = note(book, patches);
    let note = [composer.paragraph(&note, width), composer.paragraph(&line, width)];
    sections.push(section(composer.heading("For whoever makes the pages", width), note));
    sections
}

/// What the eye sees: its own tint is a dimmer ground, in which the ghost sinks.
fn hint(ground: Ground) -> &'static str {
    match ground {
        Ground::White => {
            "Through its filter the open eye sees each patch as a ground a little dimmer than the one before. On low \
             numbers the mark is darker than its patch, on high ones lighter; between them it sinks in."
        }
        Ground::Black => {
            "Through its filter the open eye sees each patch as a ground a little lighter than the one before. On low \
             numbers the mark is lighter than its patch, on high ones darker; between them it sinks in."
        }
    }
}

/// The numbers of an eye with which the pages show at most this much ghost: "1 to 3"; `None` if there are none.
fn fitting(patches: &[GhostPatch], eye: Eye, limit: f64) -> Option<String> {
    let fits = |patch: &&GhostPatch| patch.eye == eye && patch.ghost <= limit;
    let numbers = || patches.iter().filter(fits).map(|patch| patch.number);
    let (first, last) = (numbers().min()?, numbers().max()?);
    Some(if first == last { first.to_string() } else { format!("{first} to {last}") })
}

fn go(patches: &[GhostPatch]) -> String {
    let both = |limit| Some((fitting(patches, Eye::Left, limit)?, fitting(patches, Eye::Right, limit)?));
    let little = both(GHOST_WARN).map(|numbers| (numbers, "little or no ghost"));
    match little.or_else(|| both(GHOST_REFUSE).map(|numbers| (numbers, "a weak ghost at most"))) {
        Some(((left, right), ghost)) => format!(
            "Your number is {left} for the left eye and {right} for the right: these pages show you {ghost}. Go on to the \
             next page."
        ),
        None => "With no number is the ghost weak on these pages: whoever made them accepted a strong one. See below."
            .to_owned(),
    }
}

fn fix(book: &Book<'_>) -> String {
    let way = if words::printed(book.edition) {
        "Print again in colour and best quality, on matt paper. Try another lamp."
    } else {
        "Switch off night colours, lower the brightness, wipe screen and filters. Look at the screen straight on."
    };
    format!("Another number: a ghost may show. {way} Then look again.")
}

fn ask() -> &'static str {
    "Still another number, or the mark fades on none? Do not practise with these pages. Ask whoever made them for pages inked \
     for your numbers."
}

/// What goes into the spec, with an example from this very table: its words and its line.
fn note(book: &Book<'_>, patches: &[GhostPatch]) -> (String, String) {
    let leak = |eye: Eye, number: u32| {
        let found = patches.iter().find(|patch| patch.eye == eye && patch.number == number);
        percent(found.map_or(0.0, |patch| patch.leak))
    };
    let holds = if words::printed(book.edition) {
        "The patches are printed tints: numbers hold for this paper, printer and lamp. Note all three."
    } else {
        "Numbers hold for this screen at this brightness."
    };
    let words =
        format!("{holds} Write the per cents below [glasses] in set.toml and render again. For left 3, right 6:");
    (words, format!("leak = {{ left = \"{}\", right = \"{}\" }}", leak(Eye::Left, 3), leak(Eye::Right, 6)))
}
