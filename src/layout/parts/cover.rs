//! The cover: title, edition, and harbour lights over the water as a small scene of its own, solved like any other.

use kurbo::{Point, Rect, Vec2};

use crate::layout::base::{self, Ride};
use crate::layout::compose::{Column, Composer, Piece};
use crate::layout::grid::{ART_FIELD, BODY, COVER_TITLE, Grid, LEADING, SMALL};
use crate::layout::sheet::{Furniture, Node, Role, Tone};
use crate::layout::text::Style;
use crate::layout::{Book, Draft, art};
use crate::scene::{self, At, Companions, Depth, Eyes, Feature, Form, Scaling, Scene, Shape, Side, Size};
use crate::solve;
use crate::units::{Mm, PrismDioptre, Pt};

use super::words;

/// The lights: place from the middle of the picture, mm, diameter, mm, and demand, pd toward.
const LIGHTS: [(f64, f64, f64, f64); 5] = [
    (-66.0, -14.0, 13.0, 1.5),
    (-38.0, -34.0, 9.0, 0.5),
    (-4.0, -22.0, 11.0, 1.0),
    (30.0, -42.0, 7.0, 0.0),
    (62.0, -18.0, 15.0, 2.0),
];
/// Height of the water line below the middle, mm.
const WATER: f64 = 8.0;

/// Clear space above the title, as a share of the page; large text takes of it.
const ABOVE_TITLE: f64 = 0.1;
/// From the middle of the picture to the clear space above its highest light and below its last reflection, mm.
const LIGHTS_ABOVE: f64 = 53.0;
const LIGHTS_BELOW: f64 = 34.0;

/// The one cover sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "cover".to_owned();
    let (set, safe) = (book.set, grid.safe);
    let width = if grid.beside { 112.0 } else { safe.width() };
    let mut column = Column::new(Rect::new(
        safe.x0,
        safe.y0 + safe.height() * ABOVE_TITLE / composer.scale(),
        safe.x0 + width,
        safe.y1,
    ));
    column.add(composer.lines(&set.title, &COVER_TITLE, width).role(Role::Heading(1)), 0.0);
    if let Some(summary) = &set.summary {
        column.add(composer.lines(summary, &SUMMARY, width * 0.85).role(Role::Paragraph), 4.0);
    }
    let [first, second] = book.edition.glasses.pair().map(|filter| words::filter(composer.tongue, filter));
    let facts = composer.tell(
        "cover-facts",
        &[
            ("first", first.into()),
            ("second", second.into()),
            ("n", book.pages.len().into()),
            ("distance", words::distance(composer.tongue, set).into()),
        ],
    );
    column.add(composer.paragraph(&facts, width * 0.85), LEADING);
    let imprint = imprint(composer, grid, book);
    let imprint_top = safe.y1 - imprint.height;
    let (middle, end) = if grid.beside {
        (Point::new(safe.x1 - ART_FIELD.width / 2.0, safe.center().y), column.y)
    } else {
        // Long words move the picture down.
        let y = (safe.y0 + safe.height() * 0.6).max(column.y + LIGHTS_ABOVE);
        (Point::new(safe.center().x, y), y + LIGHTS_BELOW)
    };
    if imprint_top < end {
        let message = format!("its words are {:.1} mm longer than the page", end - imprint_top);
        composer.problem(message, "shorten `title` or `summary`");
    }
    let mut nodes = column.nodes;
    nodes.push(picture(book, middle));
    nodes.extend(imprint.moved(safe.x0, imprint_top).nodes);
    Draft {
        id: "cover".to_owned(),
        title: set.title.clone(),
        description: composer.tell("cover-description", &[("title", (&set.title).into())]),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
    .into_one()
}

/// Larger than body text, for the sentence under the title.
const SUMMARY: Style = Style { size: Pt(15.0), leading: Mm(6.6), ..BODY };

fn picture(book: &Book<'_>, middle: Point) -> Node {
    let ride = Ride::of(&book.set.viewer);
    // The demands are far inside what any viewer of a checked set can be given, so this scene always solves.
    let solved = solve::solve(&lights(ride), &book.set.viewer).unwrap_or_default();
    let mut nodes = vec![Node::Art(art::page(&solved, middle, None, ride))];
    let water = Rect::from_center_size(middle + Vec2::new(0.0, WATER), (ART_FIELD.width, 0.4));
    nodes.push(crate::layout::compose::rule(water));
    Node::Group(Role::Artifact(Furniture::Layout), nodes)
}

/// Each light with its reflection: shorter and shorter bars below the water line, at the depth of the light. On a base they
/// stand closer, so that the pictures of both eyes stay inside.
fn lights(ride: Ride) -> Scene {
    let mut features = Vec::new();
    let closer = 1.0 - ride.parallax.abs() / ART_FIELD.width;
    for (index, &(x, y, diameter, demand)) in LIGHTS.iter().enumerate() {
        let x = x * closer;
        let depth = Depth::Demand(PrismDioptre(demand), Side::Toward);
        features.push(mark(format!("light-{index}"), Shape::Disc, (x, y), diameter, &depth));
        for (step, share) in [1.0, 0.75, 0.5].into_iter().enumerate() {
            let below = WATER + 6.0 + step as f64 * 7.0;
            let id = format!("light-{index}-reflection-{step}");
            features.push(mark(id, Shape::Bar, (x, below), diameter * share, &depth));
        }
    }
    Scene { features }
}

fn mark(id: String, shape: Shape, at: (f64, f64), size: f64, depth: &Depth) -> Feature {
    let (at, size) = (At { x: Mm(at.0), y: Mm(at.1) }, Size::Length(Mm(size)));
    Feature {
        id,
        role: scene::Role::Guide,
        eyes: Eyes::Both,
        form: Form::Shape { shape, at, size, weight: Mm(1.0), depth: depth.clone() },
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    }
}

/// What the edition is for, at the foot of the cover.
fn imprint(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Piece {
    let (set, edition) = (book.set, book.edition);
    let tongue = composer.tongue;
    let ground = words::ground(tongue, edition.ground);
    let mut args = vec![
        ("edition", (&edition.id).into()),
        ("page", edition.page.name().into()),
        ("ground", ground.into()),
        ("version", (&set.version).into()),
        ("date", (&set.date).into()),
    ];
    let id = if let Some(reader) = &set.reader {
        args.push(("reader", reader.into()));
        "cover-edition-reader"
    } else {
        "cover-edition"
    };
    let made = match &set.author {
        Some(author) => {
            args.push(("author", author.into()));
            tongue.tell("cover-author", &args)
        }
        None => tongue.tell("cover-version", &args),
    };
    let lines = [
        tongue.tell(id, &args),
        tongue.tell("cover-glasses", &[("glasses", words::glasses(tongue, edition).into())]),
        made,
        tongue.say("cover-practice"),
    ];
    let base = base::note(set, book.tongue);
    let base = (!base.is_empty()).then(|| words::sentence(&base));
    let lines: Vec<String> = lines.into_iter().chain(base).collect();
    let width = grid.safe.width();
    let style = Style { tone: Tone::FULL, size: Pt(10.5), leading: Mm(4.8), ..SMALL };
    let mut imprint = Piece::default();
    for line in &lines {
        imprint.stack(composer.lines(line, &style, width).role(Role::Paragraph), 0.0);
    }
    imprint
}
