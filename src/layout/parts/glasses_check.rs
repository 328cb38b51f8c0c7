//! The glasses check: which way round they are worn, what each eye sees alone, and what both see together.

use kurbo::{Point, Rect, Vec2};

use crate::layout::base::{self, Ride};
use crate::layout::compose::{Composer, Piece, flow};
use crate::layout::grid::{BODY, CAPTION, Grid};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft, Placed};
use crate::outline;
use crate::scene::{Eyes, Role, Shape};
use crate::solve::{self, SolvedFeature, SolvedForm};
use crate::units::plain;

use super::marks::{Mark, figure};
use super::{columns, opening, section, words};

/// Height of the picture on portrait and on wide pages, mm.
const PICTURE: [f64; 2] = [66.0, 50.0];

/// The longer side of a mark, and the least space between two of them, mm.
const SIZE: f64 = 36.0;
const CLEAR: f64 = 2.0;

const ALT: &str =
    "Left eye: a flat bar and a ring. Right eye: a ring and a wedge. Both eyes together: bar, ring and wedge.";

/// The one glasses sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "glasses-check".to_owned();
    let lead = format!("Put the glasses on: {}. Look at the three shapes.", words::glasses(book.edition));
    let (mut nodes, top) = opening(composer, grid, "Check your glasses", &lead);
    let areas = columns(grid, top);
    // Portrait pages show the picture over both columns; wide pages over the left one.
    let width = if grid.beside { areas[0].width() } else { grid.safe.width() };
    let height = PICTURE[usize::from(grid.beside)];
    let ride = Ride::of(&book.set.viewer);
    let marks = marks(width, height, ride);
    let alt = format!("{ALT}{}", base::sentence(book.set.viewer.base, book.tongue));
    let mut picture = figure(width, height, &alt, &marks, ride);
    picture.stack(names(composer, width, &marks), 1.0);
    fits(composer, &marks, ride);
    let below = top + picture.height + 5.0;
    nodes.extend(picture.moved(grid.safe.x0, top).nodes);
    let [left, right] = areas;
    let left = Rect { y0: below, ..left };
    let right = if grid.beside { right } else { Rect { y0: below, ..right } };
    let sections = text(composer, book, left.width());
    nodes.extend(flow(composer, [left, right], sections));
    let origin = Point::new(grid.safe.x0, top);
    let placed = marks.iter().filter_map(|mark| placed(mark, origin, book)).collect();
    Draft {
        id: "glasses-check".to_owned(),
        title: "Check your glasses".to_owned(),
        description: alt,
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed,
    }
    .into_one()
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
fn names(composer: &mut Composer<'_>, width: f64, marks: &[Mark; 3]) -> Piece {
    let style = Style { align: Align::Center, ..CAPTION };
    let step = width / 3.0;
    let mut names = Piece::default();
    for (name, mark) in ["bar: left eye", "ring: both eyes", "wedge: right eye"].into_iter().zip(marks) {
        let name = composer.lines(name, &style, step);
        names.height = name.height;
        names.nodes.extend(name.moved(mark.at.0 - step / 2.0, 0.0).nodes);
    }
    names.role(crate::layout::sheet::Role::Paragraph)
}

fn text(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Vec<Piece> {
    let glasses = &book.edition.glasses;
    let rows: Vec<Vec<String>> = [
        ["Left eye alone", "bar and ring, no wedge"],
        ["Right eye alone", "ring and wedge, no bar"],
        ["Both eyes", "bar, ring and wedge"],
    ]
    .iter()
    .map(|row| row.map(str::to_owned).to_vec())
    .collect();
    let table = composer.table(&["Look with", "You should see"], &rows, &[width * 0.4, width * 0.6], &BODY);
    let close = composer.paragraph("Close one eye at a time; do not press on it.", width);
    let fix = [
        format!(
            "Bar and wedge changed places? The glasses are the wrong way round: {} belongs before the left eye, {} before \
             the right.",
            glasses.left.name(),
            glasses.right.name()
        ),
        "A shape is missing for its own eye? Clean the glasses, use more light, and look again.".to_owned(),
        "With both eyes open a shape comes and goes? Blink, wait a little, look at the ring.".to_owned(),
        "A pale trace of the other eye’s shape? That is a ghost: the next page measures it.".to_owned(),
    ];
    let go = "All as in the table, and the colours comfortable for half a minute? Go on to the next page.";
    let ask = "Still a shape missing, or the colours trouble you? Take the glasses off and do not go on. Ask your eye-care \
        professional. This is common and not your fault.";
    let mut sections = vec![section(composer.heading("What you should see", width), [close, table])];
    sections.push(section(composer.heading("Go", width), [composer.paragraph(go, width)]));
    sections.push(section(composer.heading("Fix", width), [composer.steps(&fix, width)]));
    sections.push(section(composer.heading("Ask", width), [composer.paragraph(ask, width)]));
    sections
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
