//! The words of an exercise page: what to do, what should be seen, and what it means when one eye's part is missing.

use crate::language::{Noun, Tongue};
use crate::scene::{DemandWords, Shape};
use crate::units::{Seconds, plain};

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

/// A shape in one or two plain words.
pub fn shape_name(shape: &Shape) -> &str {
    match shape {
        Shape::Ring => "ring",
        Shape::Disc => "disc",
        Shape::Square => "square",
        Shape::Diamond => "diamond",
        Shape::Star => "star",
        Shape::Cross => "cross",
        Shape::Triangle => "triangle",
        Shape::Bar => "bar",
        Shape::Wedge => "wedge",
        Shape::Brackets => "frame",
        Shape::OpenRing(_) => "open ring",
        Shape::Polygon(3) => "solid triangle",
        Shape::Polygon(4) => "solid square",
        Shape::Polygon(6) => "hexagon",
        Shape::Polygon(8) => "octagon",
        Shape::Polygon(_) => "polygon",
        Shape::Drawing(drawing) => &drawing.name,
        Shape::Outline(inner) => shape_name(inner),
        Shape::Text(text) if text.chars().count() == 1 => "letter",
        Shape::Text(text) if text.contains(' ') => "line of words",
        Shape::Text(_) => "word",
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

/// What a brief check says at its end.
pub const BRIEF: &str = "One minute is enough.";

/// What a page of a kind that a professional sets says first.
pub const AS_TOLD: &str = "Do this only as your professional told you.";

/// Rows of "If you see only …", written out.
pub fn rows(rows: &[(&str, &str)]) -> Vec<(String, String)> {
    rows.iter().map(|&(seen, then)| (seen.to_owned(), then.to_owned())).collect()
}

/// A time in words: "10 seconds".
pub fn seconds(time: Seconds) -> String {
    match plain(time.0, 1).as_str() {
        "1" => "1 second".to_owned(),
        number => format!("{number} seconds"),
    }
}

/// A count of repeats in words: "once", "5 times".
pub fn times(count: u32) -> String {
    match count {
        1 => "once".to_owned(),
        2 => "twice".to_owned(),
        n => format!("{n} times"),
    }
}

/// A step that checks the watch marks, or, on a page without them, that the shape is single.
pub fn check_step(watch: bool, before: &str, after: &str) -> String {
    if watch { format!("{before} the bar and the wedge {after}") } else { format!("{before} all parts {after}") }
}

/// What should be seen, with the watch marks where a page has them.
pub fn with_marks(see: String, watch: bool) -> String {
    if watch { format!("{see} The bar and the wedge are both there.") } else { see }
}

/// What it means when one eye's part is missing. The bar belongs to the left eye, the wedge to the right eye.
pub fn one_part(watch: bool) -> Vec<(String, String)> {
    rows(if watch {
        &[
            ("the bar", "Your right eye has dropped out. Blink, look far away, try again."),
            ("the wedge", "Your left eye has dropped out. Blink, look far away, try again."),
            ("two of each", "Rest, then go one page easier."),
        ]
    } else {
        &[
            ("one flat picture", "One eye has dropped out. Cover each eye in turn, then try again."),
            ("two of each", "Rest, then go one page easier."),
        ]
    })
}
