//! How to use the book: what is needed, how a page works, when to move on.

use crate::layout::base::Ride;
use crate::layout::compose::{Composer, Piece};
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};
use crate::scene::{Eyes, Shape};

use super::marks::{Mark, figure};
use super::{text_width, words};

/// Height of the picture, mm.
const PICTURE: f64 = 22.0;

/// The sheets of the part.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "how-to-use",
        title: composer.say("how-title"),
        lead: String::new(),
        description: composer.say("how-description"),
    };
    let width = text_width(composer, grid);
    let said = |composer: &Composer<'_>, ids: &[&str]| ids.iter().map(|id| composer.say(id)).collect::<Vec<_>>();
    let (needs, steps) = (needs(composer, book), steps(composer, book));
    let (on, back) =
        (said(composer, &["how-move-on-1", "how-move-on-2"]), said(composer, &["how-step-back-1", "how-step-back-2"]));
    let bodies = [
        ("how-needs", composer.items(&needs, width)),
        ("how-each-day", composer.numbered(&steps, width)),
        ("how-works", works(composer, book, width)),
        ("how-move-on", composer.items(&on, width)),
        ("how-step-back", composer.items(&back, width)),
    ];
    let sections =
        bodies.map(|(heading, body)| Section::new(composer.heading(&composer.say(heading), width), body)).into();
    pour(composer, grid, &opening, sections)
}

fn needs(composer: &Composer<'_>, book: &Book<'_>) -> Vec<String> {
    let page = if words::on_paper(book.edition) { "how-needs-paper" } else { "how-needs-screen" };
    vec![
        composer.tell("how-needs-glasses", &[("glasses", words::glasses(composer.tongue, book.edition).into())]),
        composer.say(page),
        composer.tell("how-needs-ruler", &[("distance", words::distance(composer.tongue, book.set).into())]),
        composer.say("how-needs-light"),
    ]
}

fn steps(composer: &Composer<'_>, book: &Book<'_>) -> Vec<String> {
    vec![
        composer.say("how-day-check"),
        composer.tell("how-day-start", &[("distance", words::distance(composer.tongue, book.set).into())]),
        composer.say("how-day-practise"),
        composer.say("how-day-end"),
    ]
}

/// How a page works, with a picture of a ring and both watch marks.
fn works(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Vec<Piece> {
    let mark = |id, shape, eyes, y, size, weight| Mark { id, shape, eyes, at: (width / 2.0, y), size, weight };
    let marks = [
        mark("ring", Shape::Ring, Eyes::Both, PICTURE / 2.0, 20.0, 1.6),
        mark("bar", Shape::Bar, Eyes::Left, 7.0, 4.2, 4.2),
        mark("wedge", Shape::Wedge, Eyes::Right, 15.0, 4.2, 4.2),
    ];
    let mut pictures = composer.paragraph(&composer.say("how-works-pictures"), width);
    pictures.stack(figure(width, PICTURE, &composer.say("how-picture"), &marks, Ride::of(&book.set.viewer)), 0.8);
    let said = |composer: &mut Composer<'_>, id: &str| composer.paragraph(&composer.say(id), width);
    vec![pictures, said(composer, "how-works-marks"), said(composer, "how-works-grade")]
}
