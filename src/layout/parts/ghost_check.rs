//! The ghost check: numbered patches, each with a mark for the other eye. The number on which the mark fades most says
//! how much leaks through this eye's filter.

use kurbo::{Affine, BezPath, Point, Rect, Shape as _};

use crate::colour::Ground;
use crate::colour::judge::{GHOST_REFUSE, GHOST_WARN};
use crate::layout::compose::{Composer, Piece, RULE, outline_box};
use crate::layout::flow::{Opening, Section, pour_below};
use crate::layout::ghost::{self, GhostPatch};
use crate::layout::grid::{BODY, CAPTION, GUTTER, Grid, LEADING};
use crate::layout::sheet::{Face, Node, Patch, Role};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft};
use crate::outline;
use crate::scene::{Eye, Shape};
use crate::spec::TextSize;
use crate::units::plain;

use super::{text_columns, text_width, words};

/// Height of a patch, mm.
const PATCH: f64 = 19.0;
/// Between two patches, mm.
const GAP: f64 = 1.6;
/// The mark, as a share of the width of its patch.
const MARK: f64 = 0.62;

/// The ghost sheet; text that it has no room for stands on further ones.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let lead = if book.set.viewer.base.is_none() { "ghost-lead" } else { "ghost-lead-off-base" };
    let opening = Opening {
        id: "ghost-check",
        title: composer.say("ghost-title"),
        lead: composer.say(lead),
        description: composer.say("ghost-description"),
    };
    let all = ghost::of(book);
    let (left, right): (Vec<GhostPatch>, Vec<GhostPatch>) = all.iter().partition(|patch| patch.eye == Eye::Left);
    let width = text_width(composer, grid);
    let mut sections = text(composer, book, &all, width);
    // Large numbers do not stand side by side: the table stands on end, after the words.
    let is_large = composer.text == TextSize::Large;
    if is_large {
        let body = vec![upright_table(composer, &left, &right, width)];
        sections.push(Section { body, ..Section::default() });
    }
    pour_below(composer, grid, &opening, sections, |composer, sheet, top| {
        if 0 < sheet {
            return (Vec::new(), text_columns(composer, grid, top));
        }
        let mut head = rows(composer, grid, &left, &right);
        if !is_large {
            head.stack(table(composer, &left, &right, grid.safe.width()), 3.0);
        }
        let below = top + head.height + LEADING;
        (head.moved(grid.safe.x0, top).nodes, text_columns(composer, grid, below))
    })
}

/// The patches for both eyes: one below the other on portrait pages, side by side on wide ones.
fn rows(composer: &mut Composer<'_>, grid: &Grid, left: &[GhostPatch], right: &[GhostPatch]) -> Piece {
    let full = grid.safe.width();
    let width = if grid.beside { (full - GUTTER) / 2.0 } else { full };
    let [mut heads, mut pictures] = [Vec::new(), Vec::new()];
    for (eye, patches) in [(Eye::Left, left), (Eye::Right, right)] {
        let heading = if eye == Eye::Left { "ghost-left-open" } else { "ghost-right-open" };
        heads.push(composer.heading(&composer.say(heading), width));
        pictures.push(row(composer, eye, patches, width));
    }
    // Side by side, both rows of patches stand at one height.
    let tallest = heads.iter().map(|head| head.height).fold(0.0, f64::max);
    let mut all = Piece::default();
    for (index, (mut head, picture)) in heads.into_iter().zip(pictures).enumerate() {
        if grid.beside {
            head.height = tallest;
        }
        head.stack(picture, 0.8);
        match (index, grid.beside) {
            (0, _) => all = head,
            (_, true) => {
                all.height = all.height.max(head.height);
                all.nodes.extend(head.moved(full - width, 0.0).nodes);
            }
            (_, false) => all.stack(head, 4.0),
        }
    }
    all
}

/// The patches for one eye.
fn row(composer: &mut Composer<'_>, eye: Eye, patches: &[GhostPatch], width: f64) -> Piece {
    let alt = composer.say(if eye == Eye::Left { "ghost-left-picture" } else { "ghost-right-picture" });
    let step = (width + GAP) / patches.len().max(1) as f64;
    let mut nodes = Vec::new();
    let mut height = PATCH;
    for (patch, index) in patches.iter().zip(0_u32..) {
        let area = Rect::new(0.0, 0.0, step - GAP, PATCH);
        let cell = cell(composer, patch, area);
        height = height.max(cell.height);
        nodes.extend(cell.moved(f64::from(index) * step, 0.0).nodes);
    }
    let figure = Role::Figure { alt, area: Rect::new(0.0, 0.0, width, PATCH) };
    Piece { height, nodes: vec![Node::Group(figure, nodes)] }
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

/// What each number stands for, a column a number.
fn table(composer: &mut Composer<'_>, left: &[GhostPatch], right: &[GhostPatch], width: f64) -> Piece {
    let [number, of_left, of_right] = heads(composer);
    let first = width * 0.16;
    let other = (width - first) / left.len().max(1) as f64;
    let widths: Vec<f64> = std::iter::once(first).chain(left.iter().map(|_| other)).collect();
    let numbers: Vec<String> =
        std::iter::once(number).chain(left.iter().map(|patch| patch.number.to_string())).collect();
    let head: Vec<&str> = numbers.iter().map(String::as_str).collect();
    let leaks = |name: String, row: &[GhostPatch]| -> Vec<String> {
        std::iter::once(name).chain(row.iter().map(|patch| leak(composer, patch))).collect()
    };
    let rows = [leaks(of_left, left), leaks(of_right, right)];
    composer.table(&head, &rows, &widths, &CAPTION)
}

/// The same with a row a number.
fn upright_table(composer: &mut Composer<'_>, left: &[GhostPatch], right: &[GhostPatch], width: f64) -> Piece {
    let heads = heads(composer);
    let row = |(left, right): (&GhostPatch, &GhostPatch)| {
        vec![left.number.to_string(), leak(composer, left), leak(composer, right)]
    };
    let rows: Vec<Vec<String>> = left.iter().zip(right).map(row).collect();
    let widths = [0.28, 0.36, 0.36].map(|share| share * width);
    composer.table(&[&heads[0], &heads[1], &heads[2]], &rows, &widths, &CAPTION)
}

fn heads(composer: &Composer<'_>) -> [String; 3] {
    ["ghost-number", "ghost-left-percent", "ghost-right-percent"].map(|id| composer.say(id))
}

/// The leak that a patch stands for, in per cent.
fn leak(composer: &Composer<'_>, patch: &GhostPatch) -> String {
    composer.tongue.number(patch.leak * 100.0, 1)
}

/// How to look, what to write down, and go, fix or ask.
fn text(composer: &mut Composer<'_>, book: &Book<'_>, patches: &[GhostPatch], width: f64) -> Vec<Section> {
    let mut look =
        vec![composer.tell("ghost-look-on", &[("glasses", words::glasses(composer.tongue, book.edition).into())])];
    look.extend(["ghost-look-left", "ghost-look-right"].map(|id| composer.say(id)));
    let mut looks = composer.numbered(&look, width);
    let hint = match book.edition.ground {
        Ground::White => "ghost-hint-white",
        Ground::Black => "ghost-hint-black",
    };
    // What the eye sees: its own tint is a dimmer ground, in which the ghost sinks.
    looks.push(composer.lines(&composer.say(hint), &CAPTION, width).role(Role::Paragraph));
    let said = |composer: &mut Composer<'_>, words: &str| composer.paragraph(words, width);
    let go = go(composer, patches);
    let mut fix = vec![said(composer, &composer.say("ghost-fix"))];
    fix.extend(composer.numbered(&ways(composer, book), width));
    let bodies = [
        ("ghost-look", looks),
        ("check-go", vec![said(composer, &go)]),
        ("check-fix", fix),
        ("check-ask", vec![said(composer, &composer.say("ghost-ask"))]),
        ("ghost-maker", note(composer, book, patches, width)),
    ];
    bodies.map(|(heading, body)| Section::new(composer.heading(&composer.say(heading), width), body)).into()
}

/// The numbers of an eye with which the pages show at most this much ghost: "1 to 3"; `None` if there are none.
fn fitting(composer: &Composer<'_>, patches: &[GhostPatch], eye: Eye, limit: f64) -> Option<String> {
    let fits = |patch: &&GhostPatch| patch.eye == eye && patch.ghost <= limit;
    let numbers = || patches.iter().filter(fits).map(|patch| patch.number);
    let (first, last) = (numbers().min()?, numbers().max()?);
    Some(if first == last {
        first.to_string()
    } else {
        composer.tell("ghost-range", &[("first", first.to_string().into()), ("last", last.to_string().into())])
    })
}

fn go(composer: &Composer<'_>, patches: &[GhostPatch]) -> String {
    let both =
        |limit| Some((fitting(composer, patches, Eye::Left, limit)?, fitting(composer, patches, Eye::Right, limit)?));
    let little = both(GHOST_WARN).map(|numbers| ("ghost-go-little", numbers));
    match little.or_else(|| both(GHOST_REFUSE).map(|numbers| ("ghost-go-weak", numbers))) {
        Some((id, (left, right))) => composer.tell(id, &[("left", left.into()), ("right", right.into())]),
        None => composer.say("ghost-go-none"),
    }
}

/// What to do about a ghost, in order.
fn ways(composer: &Composer<'_>, book: &Book<'_>) -> Vec<String> {
    let ways: &[&str] = if words::printed(book.edition) {
        &["ghost-fix-print", "ghost-fix-lamp", "ghost-fix-again"]
    } else {
        &["ghost-fix-colours", "ghost-fix-wipe", "ghost-fix-straight", "ghost-fix-again"]
    };
    ways.iter().map(|id| composer.say(id)).collect()
}

/// What goes into the spec, with an example from this very table: its words and its line.
fn note(composer: &mut Composer<'_>, book: &Book<'_>, patches: &[GhostPatch], width: f64) -> Vec<Piece> {
    // As specs write it, in every language.
    let leak = |eye: Eye, number: u32| {
        let found = patches.iter().find(|patch| patch.eye == eye && patch.number == number);
        format!("{} %", plain(found.map_or(0.0, |patch| patch.leak) * 100.0, 1))
    };
    let line = format!("leak = {{ left = \"{}\", right = \"{}\" }}", leak(Eye::Left, 3), leak(Eye::Right, 6));
    let holds = if words::printed(book.edition) { "ghost-holds-print" } else { "ghost-holds-screen" };
    let words = format!("{} {}", composer.say(holds), composer.say("ghost-write"));
    vec![composer.lines(&words, &BODY, width).role(Role::Paragraph), composer.paragraph(&line, width)]
}
