//! The cover: title, edition and a calm emblem: two rings, one for each eye, that belong together.

use kurbo::{Affine, Point, Rect};

use crate::layout::compose::{Column, Composer};
use crate::layout::grid::{BODY, COVER_TITLE, Grid, LEADING, SMALL};
use crate::layout::sheet::{Art, Furniture, Node, Role};
use crate::layout::text::Style;
use crate::layout::{Book, Draft, art};
use crate::outline;
use crate::scene::Shape;
use crate::units::Mm;

use super::words;

/// Radius of the rings of the emblem, mm, and how far apart their middles stand.
const RING: f64 = 34.0;
const APART: f64 = 26.0;

/// The one cover sheet.
pub fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "cover".to_owned();
    let (set, safe) = (book.set, grid.safe);
    let width = if grid.beside { 150.0 } else { safe.width() };
    let mut column = Column::new(Rect::new(safe.x0, safe.y0 + safe.height() * 0.1, safe.x0 + width, safe.y1));
    column.add(composer.lines(&set.title, &COVER_TITLE, width).role(Role::Heading(1)), 0.0);
    if let Some(summary) = &set.summary {
        column.add(composer.lines(summary, &SUMMARY, width * 0.85).role(Role::Paragraph), 4.0);
    }
    let exercises = book.pages.len();
    let facts = format!(
        "Practice pages for two-eyed seeing, with red and cyan glasses. {exercises} exercise pages, made for {} from your eyes.",
        words::distance(set)
    );
    column.add(composer.paragraph(&facts, width * 0.85), LEADING);
    let mut nodes = column.nodes;
    let middle = if grid.beside {
        Point::new(safe.x1 - 66.0, safe.center().y)
    } else {
        Point::new(safe.center().x, safe.y0 + safe.height() * 0.58)
    };
    nodes.push(emblem(middle));
    nodes.extend(imprint(composer, grid, book));
    Draft {
        id: "cover".to_owned(),
        title: set.title.clone(),
        description: format!("Cover of {}.", set.title),
        outline_level: 0,
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
    .into_one()
}

/// Larger than body text, for the sentence under the title.
const SUMMARY: Style = Style { size: crate::units::Pt(15.0), leading: Mm(6.6), ..BODY };

fn emblem(middle: Point) -> Node {
    let ring = outline::path(&Shape::Ring, 2.0 * RING, (2.0 * RING, 2.0 * RING), 4.0);
    let at = |dx: f64| Affine::translate(middle.to_vec2() + kurbo::Vec2::new(dx, 0.0)) * ring.clone();
    let (left, right) = (vec![at(-APART / 2.0)], vec![at(APART / 2.0)]);
    let overlap = art::overlap(&left, &right);
    let art = Art { left, right, overlap, flat: Vec::new() };
    Node::Group(Role::Artifact(Furniture::Layout), vec![Node::Art(art)])
}

/// What the edition is for, at the foot of the cover.
fn imprint(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Node> {
    let (set, edition) = (book.set, book.edition);
    let lines = [
        format!("Edition {}: {}, {} ground", edition.id, edition.page.name(), edition.ground.name()),
        format!("Glasses: {}", words::glasses(edition)),
        match &set.author {
            Some(author) => format!("{author} · version {} · {}", set.version, set.date),
            None => format!("Version {} · {}", set.version, set.date),
        },
        "Practice pages. Not a test and not a treatment: read the caution page first.".to_owned(),
    ];
    let width = grid.safe.width();
    let style =
        Style { tone: crate::layout::sheet::Tone::FULL, size: crate::units::Pt(10.5), leading: Mm(4.8), ..SMALL };
    let top = grid.safe.y1 - lines.len() as f64 * style.leading.0;
    let mut column = Column::new(Rect::new(grid.safe.x0, top, grid.safe.x1, grid.safe.y1));
    for line in &lines {
        column.add(composer.lines(line, &style, width).role(Role::Paragraph), 0.0);
    }
    column.finish(composer)
}
