//! The fixed English words of the book parts. Short sentences, plain words, no promises.

use crate::spec::{Edition, MediumSource, SetSpec};
use crate::units::plain;

/// The stop rule: the same words on every exercise page.
pub(crate) const STOP: &str = "Stop at once if you feel pain, headache, sickness or dizziness. Stop too if sight stays blurred \
    or double after 5 to 10 minutes of rest, looking far away. If it lasts until the next day or comes back twice, put \
    the book away and ask your eye-care professional.";

/// How the glasses are worn: "cyan left, red right".
pub(crate) fn glasses(edition: &Edition) -> String {
    format!("{} left, {} right", edition.glasses.left.name(), edition.glasses.right.name())
}

/// The viewing distance: "40 cm".
pub(crate) fn distance(set: &SetSpec) -> String {
    format!("{} cm", plain(set.viewer.distance.0 / 10.0, 1))
}

/// Why a check page does not ride on the base; empty where there is none.
pub(crate) fn off_base(set: &SetSpec, why: &str) -> String {
    if set.viewer.base.is_none() { String::new() } else { format!(" This page does not ride on the base: {why}.") }
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
