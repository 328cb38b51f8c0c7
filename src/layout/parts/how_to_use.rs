//! How to use the book: what is needed, how a page works, when to move on.

use crate::layout::base::Ride;
use crate::layout::compose::{Composer, flow};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};
use crate::scene::{Eyes, Shape};

use super::marks::{Mark, figure};
use super::{columns, opening, section, words};

/// The one how-to sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "how-to-use".to_owned();
    let (mut nodes, top) = opening(composer, grid, "How to use these pages", "");
    let areas = columns(grid, top);
    let width = areas[0].width();
    let distance = words::distance(composer.tongue, book.set);
    let glasses = words::glasses(composer.tongue, book.edition);
    let page =
        if words::on_paper(book.edition) { "A page printed at 100 %" } else { "A screen that shows the page at 100 %" };
    let needs = [
        format!("Glasses: {glasses}. Wear your own glasses under them."),
        format!("{page}, flat and level."),
        format!("A ruler or string of {distance}."),
        "Even light without glare, and a pencil for the log.".to_owned(),
    ];
    let steps = [
        "Check glasses, ghost and size (next three pages).".to_owned(),
        format!("Start with the first exercise. Keep {distance} from eyes to page."),
        "Practise two or three minutes, look far away, then go on.".to_owned(),
        "End each time by looking into the distance.".to_owned(),
    ];
    let move_on = [
        "It was easy on three different days and both marks were there.",
        "Comfort stayed good: 0 to 2 of 10, where 10 is bad.",
    ];
    let step_back =
        ["A mark goes missing, or all is double.", "Comfort reaches 4 of 10. Rest, then take an easier page."];
    let needs: Vec<&str> = needs.iter().map(String::as_str).collect();
    let mut sections = Vec::new();
    let heading = composer.heading("What you need", width);
    sections.push(section(heading, [composer.bullets(&needs, width)]));
    let heading = composer.heading("Each day", width);
    sections.push(section(heading, [composer.steps(&steps, width)]));
    let heading = composer.heading("How a page works", width);
    let works = "Each eye gets its own picture. Your brain joins the two. Shapes that are moved apart seem to stand toward \
        you or away from you. A frame rides with a shape and helps your eyes to stay on it.";
    let marks =
        "The flat bar is only for your left eye, the wedge only for your right. If you see both, both eyes take part.";
    let grade = "The grade at the head of a page, 1 to 10, tells how much the page asks. It is no mark for you.";
    let picture = figure(
        width,
        22.0,
        "Left eye: a ring with a flat bar in it. Right eye: the same ring with a wedge in it. Both eyes together: one ring \
         with bar and wedge.",
        &[
            Mark { id: "ring", shape: Shape::Ring, eyes: Eyes::Both, at: (width / 2.0, 11.0), size: 20.0, weight: 1.6 },
            Mark { id: "bar", shape: Shape::Bar, eyes: Eyes::Left, at: (width / 2.0, 7.0), size: 4.2, weight: 4.2 },
            Mark {
                id: "wedge",
                shape: Shape::Wedge,
                eyes: Eyes::Right,
                at: (width / 2.0, 15.0),
                size: 4.2,
                weight: 4.2,
            },
        ],
        Ride::of(&book.set.viewer),
    );
    let body =
        [composer.paragraph(works, width), picture, composer.paragraph(marks, width), composer.paragraph(grade, width)];
    sections.push(section(heading, body));
    let heading = composer.heading("Move on when", width);
    sections.push(section(heading, [composer.bullets(&move_on, width)]));
    let heading = composer.heading("Step back when", width);
    sections.push(section(heading, [composer.bullets(&step_back, width)]));
    nodes.extend(flow(composer, areas, sections));
    Draft {
        id: "how-to-use".to_owned(),
        title: "How to use these pages".to_owned(),
        description: "What is needed, how a page works, when to move on and when to step back.".to_owned(),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
    .into_one()
}
