//! The glasses check: which way round they are worn, whether each eye sees its own mark, and how much ghost is left.

use kurbo::{Point, Vec2};

use crate::layout::compose::Composer;
use crate::layout::grid::{BODY, Grid};
use crate::layout::{Book, Draft, Placed};
use crate::scene::{Eyes, Role, Shape};
use crate::solve::{self, SolvedFeature, SolvedForm};
use crate::units::Mm;

use super::marks::{Mark, figure};
use super::{columns, opening, section, words};

/// Height of the picture, mm.
const PICTURE: f64 = 58.0;

/// The one glasses sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "glasses-check".to_owned();
    let lead = format!(
        "Put the glasses on: {}. Close one eye at a time and look at the three shapes.",
        words::glasses(book.edition)
    );
    let (mut nodes, top) = opening(composer, grid, "Check your glasses", &lead);
    let areas = columns(grid, top);
    // Portrait pages show the picture over both columns; wide pages over the left one.
    let width = if grid.beside { areas[0].width() } else { grid.safe.width() };
    let marks = marks(width);
    let alt =
        "Left eye: a flat bar and a ring. Right eye: a ring and a wedge. Both eyes together: bar, ring and wedge.";
    let picture = figure(width, PICTURE, alt, &marks);
    nodes.extend(picture.moved(grid.safe.x0, top).nodes);
    let below = top + PICTURE + 5.0;
    let [left, right] = areas;
    let [left, right] = if grid.beside {
        [kurbo::Rect { y0: below, ..left }, right]
    } else {
        [kurbo::Rect { y0: below, ..left }, kurbo::Rect { y0: below, ..right }]
    };
    nodes.extend(text(composer, book, left, right));
    let origin = Point::new(grid.safe.x0, top);
    let placed = marks.iter().filter_map(|mark| placed(mark, origin, book)).collect();
    Draft {
        id: "glasses-check".to_owned(),
        title: "Check your glasses".to_owned(),
        description: alt.to_owned(),
        outline_level: 0,
        nodes,
        footer: String::new(),
        placed,
    }
    .into_one()
}

fn marks(width: f64) -> [Mark; 3] {
    let y = PICTURE / 2.0;
    let step = width / 3.0;
    [
        Mark { id: "left-bar", shape: Shape::Bar, eyes: Eyes::Left, at: (step * 0.5, y), size: 36.0, weight: 36.0 },
        Mark { id: "ring", shape: Shape::Ring, eyes: Eyes::Both, at: (step * 1.5, y), size: 36.0, weight: 4.0 },
        Mark {
            id: "right-wedge",
            shape: Shape::Wedge,
            eyes: Eyes::Right,
            at: (step * 2.5, y),
            size: 36.0,
            weight: 36.0,
        },
    ]
}

fn text(
    composer: &mut Composer<'_>,
    book: &Book<'_>,
    left: kurbo::Rect,
    right: kurbo::Rect,
) -> Vec<crate::layout::sheet::Node> {
    let width = left.width();
    let rows: Vec<Vec<String>> =
        [["Left eye open", "bar and ring"], ["Right eye open", "ring and wedge"], ["Both open", "bar, ring and wedge"]]
            .iter()
            .map(|row| row.map(str::to_owned).to_vec())
            .collect();
    let table = composer.table(&["Look with", "You should see"], &rows, &[width * 0.45, width * 0.55], &BODY);
    let mut sections = vec![section(composer.heading("What you should see", width), [table])];
    let turned = format!(
        "Bar and wedge changed places? The glasses are the wrong way round: {} belongs before the left eye.",
        book.edition.glasses.left.name()
    );
    let fix = [
        turned.as_str(),
        "One shape is never there? Clean the glasses, use more light, and try again.",
        "With both eyes open a shape comes and goes? Blink and wait a little.",
        "Still missing? Do not go on. Ask your eye-care professional.",
    ];
    let ghost = if words::on_paper(book.edition) {
        "With one eye closed, the shape of the other eye should be gone or very pale. If it is still easy to see, use another \
         paper, printer setting or lamp. A strong ghost lets one eye see what only the other should."
    } else {
        "With one eye closed, the shape of the other eye should be gone or very faint. If it is still easy to see, switch off \
         night colours and lower the brightness. A strong ghost lets one eye see what only the other should."
    };
    sections.push(section(composer.heading("Look for a ghost", width), [composer.paragraph(ghost, width)]));
    let go = "All three shapes there, ghost pale, colours comfortable for half a minute? Go on to the next page.";
    sections.push(section(composer.heading("If it is not so", width), [composer.bullets(&fix, width)]));
    sections.push(section(composer.heading("Go", width), [composer.paragraph(go, width)]));
    crate::layout::compose::flow(composer, [left, right], sections)
}

/// A mark at page depth, as the report lists it.
fn placed(mark: &Mark, origin: Point, book: &Book<'_>) -> Option<Placed> {
    let extent = crate::outline::extent(&mark.shape, mark.size);
    let stand = solve::stand(Mm(0.0), &book.set.viewer)?;
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
