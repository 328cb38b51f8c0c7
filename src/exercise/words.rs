//! The words of an exercise page: what to do, what should be seen, and what it means when one eye's part is missing.

use crate::language::{Arg, Noun, Tongue};
use crate::scene::{DemandWords, Shape, Side};
use crate::units::Seconds;

/// Words for one page, already chosen for its level.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Words {
    /// One sentence.
    pub goal: String,
    /// What to prepare beyond distance and glasses; may be empty.
    pub setup: String,
    /// At most five steps.
    pub steps: Vec<String>,
    /// What both eyes together should see.
    pub see: String,
    /// "If you see only …" with what it means and what to do.
    pub one_part: Vec<(String, String)>,
}

/// Words that an author gave in `[exercise]`; each takes the place of the kind's own.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct AuthorWords {
    /// `goal`.
    pub goal: Option<String>,
    /// `setup`.
    pub setup: Option<String>,
    /// `do`.
    pub steps: Option<Vec<String>>,
    /// `see`.
    pub see: Option<String>,
}

impl Words {
    /// These words with the author's own in place of the kind's.
    pub fn with(self, author: &AuthorWords) -> Self {
        Self {
            goal: author.goal.clone().unwrap_or(self.goal),
            setup: author.setup.clone().unwrap_or(self.setup),
            steps: author.steps.clone().unwrap_or(self.steps),
            see: author.see.clone().unwrap_or(self.see),
            one_part: self.one_part,
        }
    }
}

/// A shape as a noun of a language. Only the shape's kind is named: what an author's drawing shows, nobody but the author
/// knows.
pub fn shape_noun(shape: &Shape, tongue: &Tongue) -> Noun {
    let id = match shape {
        Shape::Ring => "shape-ring",
        Shape::Disc => "shape-disc",
        Shape::Square => "shape-square",
        Shape::Diamond => "shape-diamond",
        Shape::Star => "shape-star",
        Shape::Cross => "shape-cross",
        Shape::Triangle => "shape-triangle",
        Shape::Bar => "shape-bar",
        Shape::Wedge => "shape-wedge",
        Shape::Brackets => "shape-frame",
        Shape::OpenRing(_) => "shape-open-ring",
        Shape::Polygon(3) => "shape-solid-triangle",
        Shape::Polygon(4) => "shape-solid-square",
        Shape::Polygon(6) => "shape-hexagon",
        Shape::Polygon(8) => "shape-octagon",
        Shape::Polygon(_) => "shape-polygon",
        Shape::Drawing(_) => "shape-drawing",
        Shape::Outline(inner) => return shape_noun(inner, tongue),
        Shape::Text(text) if text.chars().count() == 1 => "shape-letter",
        Shape::Text(text) if text.contains(' ') => "shape-line-of-words",
        Shape::Text(_) => "shape-word",
    };
    tongue.noun(id)
}

/// How a demand is worded in a picture: "2 pd toward".
pub fn demand_words(tongue: &Tongue) -> DemandWords {
    // The amount is known to the solver alone: a mark stands in for it.
    let amount = tongue.tell("unit-pd", &[("n", "\u{1}".into())]);
    let around =
        |words: String| words.split_once('\u{1}').map_or_else(Default::default, |(a, b)| [a.to_owned(), b.to_owned()]);
    DemandWords {
        page: tongue.say("demand-on-page"),
        toward: around(tongue.tell("demand-toward", &[("pd", (&amount).into())])),
        away: around(tongue.tell("demand-away", &[("pd", (&amount).into())])),
        decimal_mark: tongue.decimal_mark(),
    }
}

/// Rows of "If you see only …" from the ids of their messages: what is seen, and what to do.
pub fn say_rows(rows: &[(&str, &str)], tongue: &Tongue) -> Vec<(String, String)> {
    rows.iter().map(|(seen, then)| (tongue.say(seen), tongue.say(then))).collect()
}

/// The variable `time` of messages, in words: "10 seconds".
pub fn time(time: Seconds, tongue: &Tongue) -> (&'static str, Arg<'static>) {
    // Tenths, as they are written, decide whether it is one second.
    let count = libm::round(time.0 * 10.0) / 10.0;
    let written = tongue.number(time.0, 1).into();
    ("time", tongue.tell("kinds-seconds", &[("count", count.into()), ("n", written)]).into())
}

/// The variable `times` of messages, a count of repeats in words: "once", "5 times".
pub fn times(count: u32, tongue: &Tongue) -> (&'static str, Arg<'static>) {
    ("times", tongue.tell("kinds-times", &[("n", count.into())]).into())
}

/// The variable `side` of messages: where something stands against the page.
pub fn side(side: Option<Side>) -> (&'static str, Arg<'static>) {
    let side = match side {
        Some(Side::Toward) => "toward",
        Some(Side::Away) => "away",
        None => "page",
    };
    ("side", side.into())
}

/// The variable `marks` of messages that speak of the watch marks, or of all parts on a page without them.
pub fn marks(watch: bool) -> (&'static str, Arg<'static>) {
    ("marks", if watch { "yes" } else { "no" }.into())
}

/// The step that checks that both watch marks are there.
pub fn check_both(watch: bool, tongue: &Tongue) -> String {
    tongue.tell("kinds-check-both", &[marks(watch)])
}

/// The step that checks the watch marks of a page that may have several.
pub fn check_there(watch: bool, tongue: &Tongue) -> String {
    tongue.tell("kinds-check-there", &[marks(watch)])
}

/// What should be seen, with the watch marks where a page has them.
pub fn with_marks(see: String, watch: bool, tongue: &Tongue) -> String {
    if watch { tongue.tell("kinds-see-marks", &[("see", see.into())]) } else { see }
}

/// What it means when one eye's part is missing. The bar belongs to the left eye, the wedge to the right eye.
pub fn one_part(watch: bool, tongue: &Tongue) -> Vec<(String, String)> {
    let rows: &[_] = if watch {
        &[
            ("kinds-only-bar", "kinds-right-out-try"),
            ("kinds-only-wedge", "kinds-left-out-try"),
            ("kinds-only-doubled", "kinds-easier"),
        ]
    } else {
        &[("kinds-only-flat", "kinds-one-out"), ("kinds-only-doubled", "kinds-easier")]
    };
    say_rows(rows, tongue)
}
