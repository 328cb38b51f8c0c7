//! Words that several parts say: how the glasses are worn, the distance, what a page is called.

use crate::colour::{Filter, Ground};
use crate::exercise::Page;
use crate::language::Tongue;
use crate::spec::{Edition, MediumSource, SetSpec};

/// The stop rule: the same words on every exercise page.
pub(crate) fn stop(tongue: &Tongue) -> String {
    tongue.say("page-stop")
}

/// How the glasses are worn: "cyan left, red right".
pub(crate) fn glasses(tongue: &Tongue, edition: &Edition) -> String {
    let [left, right] = [&edition.glasses.left, &edition.glasses.right].map(|eye| filter(tongue, eye.colour()));
    tongue.tell("page-glasses", &[("left", left.into()), ("right", right.into())])
}

/// The colour of a filter.
pub(crate) fn filter(tongue: &Tongue, filter: Filter) -> String {
    tongue.say(&format!("filter-{}", filter.name()))
}

/// The ground: "white ground".
pub(crate) fn ground(tongue: &Tongue, ground: Ground) -> String {
    match ground {
        Ground::White => tongue.say("page-ground-white"),
        Ground::Black => tongue.say("page-ground-black"),
    }
}

/// The viewing distance: "40 cm".
pub(crate) fn distance(tongue: &Tongue, set: &SetSpec) -> String {
    tongue.cm(set.viewer.distance, 1)
}

/// An exercise page by its title, with level and variant where there is more than one: "Two buoys, level 2 · B".
pub(crate) fn full_title(tongue: &Tongue, page: &Page) -> String {
    let title = match page.levels {
        1 => page.title.clone(),
        _ => tongue.tell("page-title-level", &[("title", (&page.title).into()), ("n", page.level.into())]),
    };
    format!("{title}{}", page.variant_words())
}

/// Whether its colours are printed, and not shown on a screen. Where nothing is said, a sheet of paper is printed.
pub(crate) fn printed(edition: &Edition) -> bool {
    match edition.colour.source {
        MediumSource::Print { .. } => true,
        MediumSource::Screen(_) => false,
        MediumSource::Unsaid => on_paper(edition),
    }
}

/// Whether the edition is a sheet of paper, and not a screen page.
pub(crate) fn on_paper(edition: &Edition) -> bool {
    edition.page != crate::spec::PageFormat::Wide
}

/// A message as a sentence: with a capital letter and a full stop.
pub(crate) fn sentence(message: &str) -> String {
    let mut letters = message.chars();
    let first: String = letters.next().into_iter().flat_map(char::to_uppercase).collect();
    format!("{first}{}.", letters.as_str())
}
