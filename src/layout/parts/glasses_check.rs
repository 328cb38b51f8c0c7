//! The glasses check: which way round they are worn, what each eye sees alone, and what both see together.

use kurbo::{Point, Vec2};

use crate::layout::base::{self, Ride};
use crate::layout::compose::{Composer, Piece};
use crate::layout::flow::{Opening, Section, pour_below};
use crate::layout::grid::{BODY, CAPTION, Grid};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft, Placed};
use crate::outline;
use crate::scene::{Eyes, Role, Shape};
use crate::solve::{self, SolvedFeature, SolvedForm};
use crate::units::plain;

use super::marks::{Mark, figure};
use super::{text_columns, text_width, words};

/// Height of the picture on portrait and on wide pages, mm.
const PICTURE: [f64; 2] = [66.0, 50.0];

/// The longer side of a mark, and the least space between two of them, mm.
const SIZE: f64 = 36.0;
const CLEAR: f64 = 2.0;

/// The glasses sheet; text that it has no room for stands on further ones.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    // Portrait pages show the picture over both columns; wide pages over the left one.
    let width = if grid.beside { text_width(composer, grid) } else { grid.safe.width() };
    let height = PICTURE[usize::from(grid.beside)];
    let ride = Ride::of(&book.set.viewer);
    let marks = marks(width, height, ride);
    let alt = format!("{}{}", composer.say("glasses-picture"), base::sentence(book.set.viewer.base, book.tongue));
    let opening = Opening {
        id: "glasses-check",
        title: composer.say("glasses-title"),
        lead: composer.tell("glasses-lead", &[("glasses", words::glasses(composer.tongue, book.edition).into())]),
        description: alt.clone(),
    };
    let sections = text(composer, book, text_width(composer, grid));
    let mut origin = Point::ORIGIN;
    let mut drafts = pour_below(composer, grid, &opening, sections, |composer, sheet, top| {
        if 0 < sheet {
            return (Vec::new(), text_columns(composer, grid, top));
        }
        origin = Point::new(grid.safe.x0, top);
        fits(composer, &marks, ride);
        let mut picture = figure(width, height, &alt, &marks, ride);
        picture.stack(names(composer, &marks), 1.0);
        let below = top + picture.height + 5.0;
        let mut areas = text_columns(composer, grid, below);
        if let (true, Some(beside)) = (grid.beside, areas.last_mut()) {
            beside.y0 = top;
        }
        (picture.moved(origin.x, origin.y).nodes, areas)
    });
    if let Some(first) = drafts.first_mut() {
        first.placed = marks.iter().filter_map(|mark| placed(mark, origin, book)).collect();
    }
    drafts
}

/// Three marks in a row; on a base they stand closer, so that the pictures of both eyes stay inside.
fn marks(width: f64, height: f64, ride: Ride) -> [Mark; 3] {
    let y = height / 2.0;
    let aside = ride.parallax.abs() / 2.0;
    let step = (width - 2.0 * aside) / 3.0;
    let at = |column: f64| (aside + step * column, y);
    let mark = |id, shape, eyes, column, weight| Mark { id, shape, eyes, at: at(column), size: SIZE, weight };
    [
        mark("left-bar", Shape::Bar, Eyes::Left, 0.5, SIZE),
        mark("ring", Shape::Ring, Eyes::Both, 1.5, 4.0),
        mark("right-wedge", Shape::Wedge, Eyes::Right, 2.5, SIZE),
    ]
}

/// A problem where a base leaves the marks no room: they would run into one another, or out of their picture.
fn fits(composer: &mut Composer<'_>, marks: &[Mark; 3], ride: Ride) {
    let short = SIZE + CLEAR - (marks[1].at.0 - marks[0].at.0);
    let low = ride.rise.abs() / 2.0 + SIZE / 2.0 - marks[0].at.1;
    if 0.0 < short.max(low) {
        let message = format!(
            "a base of `{}` mm across and `{}` mm up leaves its marks no room: `{}` mm are missing",
            plain(ride.parallax.abs(), 1),
            plain(ride.rise.abs(), 1),
            plain(short.max(low), 1)
        );
        composer.problem(message, "set a smaller `base`, or a shorter `distance`");
    }
}

/// What the shapes are called and whose they are, below the picture.
fn names(composer: &mut Composer<'_>, marks: &[Mark; 3]) -> Piece {
    let style = Style { align: Align::Center, ..CAPTION };
    let step = marks[1].at.0 - marks[0].at.0 - CLEAR;
    let mut names = Piece::default();
    for (id, mark) in ["glasses-bar", "glasses-ring", "glasses-wedge"].into_iter().zip(marks) {
        let name = composer.lines(&composer.say(id), &style, step);
        names.height = names.height.max(name.height);
        let name = name.role(crate::layout::sheet::Role::Paragraph);
        names.nodes.extend(name.moved(mark.at.0 - step / 2.0, 0.0).nodes);
    }
    names
}

/// What each eye should see, and go, fix or ask.
fn text(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Vec<Section> {
    let said = |composer: &mut Composer<'_>, id: &str| composer.paragraph(&composer.say(id), width);
    let rows = [
        ["glasses-left-alone", "glasses-left-alone-see"],
        ["glasses-right-alone", "glasses-right-alone-see"],
        ["glasses-both", "glasses-both-see"],
    ];
    let rows = rows.map(|row| row.map(|id| composer.say(id)).to_vec());
    let [with, see] = ["glasses-with", "glasses-see"].map(|id| composer.say(id));
    let table = composer.table(&[&with, &see], &rows, &[width * 0.4, width * 0.6], &BODY);
    let [left, right] = [&book.edition.glasses.left, &book.edition.glasses.right]
        .map(|filter| words::filter(composer.tongue, filter.colour()));
    let mut fix = vec![composer.tell("glasses-fix-swapped", &[("left", left.into()), ("right", right.into())])];
    fix.extend(["glasses-fix-missing", "glasses-fix-comes", "glasses-fix-ghost"].map(|id| composer.say(id)));
    let bodies = [
        ("glasses-should", vec![said(composer, "glasses-close"), table]),
        ("check-go", vec![said(composer, "glasses-go")]),
        ("check-fix", composer.numbered(&fix, width)),
        ("check-ask", vec![said(composer, "glasses-ask")]),
    ];
    bodies.map(|(heading, body)| Section::new(composer.heading(&composer.say(heading), width), body)).into()
}

/// A mark at the depth of the page, as the report lists it.
fn placed(mark: &Mark, origin: Point, book: &Book<'_>) -> Option<Placed> {
    let extent = outline::extent(&mark.shape, mark.size);
    let stand = solve::stand(book.set.viewer.base_parallax(), &book.set.viewer)?;
    let at = origin + Vec2::from(mark.at);
    let form = SolvedForm::Shape { shape: mark.shape.clone(), size: mark.size, extent, weight: mark.weight };
    let feature = SolvedFeature {
        id: mark.id.to_owned(),
        role: Role::Target,
        eyes: mark.eyes,
        form,
        at: (at.x, at.y),
        stand,
        solid: false,
        place: None,
    };
    Some(Placed { feature, at, size: extent.into() })
}
