//! What the reader needs: glasses, paper or a screen, light, a place and time.

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::{text_width, words};

/// The sheets of the part.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "needs",
        title: composer.say("needs-title"),
        lead: composer.say("needs-lead"),
        description: composer.say("needs-description"),
    };
    let width = text_width(composer, grid);
    let mut sections = Vec::new();
    for (heading, items) in lists(composer, book) {
        let heading = composer.heading(&composer.say(heading), width);
        sections.push(Section::new(heading, composer.items(&items, width)));
    }
    pour(composer, grid, &opening, sections)
}

/// Each heading with what stands below it.
fn lists(composer: &Composer<'_>, book: &Book<'_>) -> Vec<(&'static str, Vec<String>)> {
    let glasses = words::glasses(composer.tongue, book.edition);
    let distance = composer.tongue.cm(book.set.viewer.distance, 1);
    let told = |ids: &[&str]| ids.iter().map(|id| composer.say(id)).collect::<Vec<_>>();
    let mut eyes = vec![composer.tell("needs-glasses", &[("glasses", glasses.into())])];
    eyes.extend(told(&["needs-own-glasses", "needs-clean"]));
    let pages = if words::on_paper(book.edition) {
        ("needs-paper", told(&["needs-paper-1", "needs-paper-2", "needs-paper-3", "needs-paper-4"]))
    } else {
        ("needs-screen", told(&["needs-screen-1", "needs-screen-2", "needs-screen-3"]))
    };
    let mut desk = vec![composer.tell("needs-ruler", &[("distance", distance.into())])];
    desk.extend(told(&["needs-pencil", "needs-flat", "needs-upright"]));
    let minutes = match &book.set.plan {
        Some(plan) => composer.tell("needs-minutes", &[("minutes", plan.value.minutes.into())]),
        None => composer.say("needs-time-usual"),
    };
    let mut time = vec![minutes];
    time.extend(told(&["needs-distance-rest", "needs-aloud"]));
    vec![
        ("needs-eyes", eyes),
        pages,
        ("needs-light", told(&["needs-light-1", "needs-light-2"])),
        ("needs-desk", desk),
        ("needs-time", time),
    ]
}
