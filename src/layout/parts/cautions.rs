//! The caution page: before anything is looked at. The points follow the trade's safety notes; the words are ours.

use crate::layout::base;
use crate::layout::compose::Composer;
use crate::layout::compose::flow;
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::{columns, opening, section, words};

const ASK: &[&str] = &[
    "Have your eyes checked within the year. Ask: “Is it safe for me to practise using both eyes together?”",
    "Ask first if you have an eye turn, one much weaker eye, double vision, shaky eyes or a new prism. Ask first after \
     eye surgery or a head injury.",
    "Ask first with thyroid, nerve or muscle illness, seizures, migraine set off by patterns, dizziness, or sickness in \
     pregnancy.",
    "Large studies left out many people with an eye turn or eye surgery. Nobody can say what practice will do for you.",
    "Under 18: only with an adult beside you, five minutes at most, at a level set by a professional.",
];

const HELP: &str = "New or sudden double vision, even if it passes. A drooping lid, unequal pupils, loss of sight. A new or \
     very bad headache. Weakness in face or arm, trouble speaking, pain in jaw or scalp. Any of these after a blow to the \
     head. Call your emergency number; this is never part of practice.";

const SAFE: &[&str] = &[
    "Do not practise while or before you drive, cycle, climb, swim, cook or use machines. Wait at least 30 minutes, until \
     sight is single and clear.",
    "Not after alcohol or calming medicine, not with a fever, not when very tired.",
    "At most 10 to 15 minutes a day. Look far away for half a minute after each page.",
    "If the colours or patterns trouble you, take the glasses off and stop. That is fine.",
];

const ABOUT: &str = "This book is for information only and comes without any guarantee. It is a set of practice pages, not a \
     test and not a treatment. What your licensed eye-care professional and the rules where you live say comes first.";

/// Whose the book is, where it has a base.
fn base(book: &Book<'_>) -> Option<String> {
    let set_by = book.set.gate.as_ref().filter(|_| !book.set.viewer.base.is_none())?;
    Some(format!(
        "All pictures ride on a base ({}), set by {set_by} for one reader. Do not use, lend or copy it for anyone else. It holds at \
         {} alone. Change nothing yourself.",
        base::amounts(book.set.viewer.base, book.tongue),
        words::distance(book.set)
    ))
}

/// The one caution sheet.
pub(crate) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = "cautions".to_owned();
    let (mut nodes, top) = opening(composer, grid, "Please read this first", "");
    let areas = columns(grid, top);
    let width = areas[0].width();
    let mut sections = Vec::new();
    let ask = composer.heading("Ask before you start", width);
    sections.push(section(ask, [composer.bullets(ASK, width)]));
    let stop = composer.heading("Stop rule", width);
    sections.push(section(stop, [composer.paragraph(words::STOP, width)]));
    let help = composer.heading("Get medical help now", width);
    sections.push(section(help, [composer.paragraph(HELP, width)]));
    let safe = composer.heading("Keep safe", width);
    sections.push(section(safe, [composer.bullets(SAFE, width)]));
    let about = composer.heading("About this book", width);
    let base = base(book).map(|words| composer.paragraph(&words, width));
    sections.push(section(about, [composer.paragraph(ABOUT, width)].into_iter().chain(base)));
    nodes.extend(flow(composer, areas, sections));
    Draft {
        id: "cautions".to_owned(),
        title: "Please read this first".to_owned(),
        description: "Cautions: whom to ask, when to get help, when to stop.".to_owned(),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
    .into_one()
}
