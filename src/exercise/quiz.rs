//! Questions that a page asks, with their answers: for the answer key, the boxes on the page and the report.
//!
//! The answers come from the same draw as the art. Nothing here says how well anyone sees: a pass mark only keeps lucky
//! guesses from counting as a step up.

/// The questions of a page.
#[derive(Debug, Clone, PartialEq)]
pub struct Quiz {
    /// In the order of the page.
    pub questions: Vec<Question>,
    /// How many right answers are more than luck; `None` where nothing is to be guessed, as in a row of words.
    pub pass: Option<Pass>,
}

/// One question.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Question {
    /// What stands beside it on the page and in its box: "1", "2", …
    pub id: String,
    /// The answers to choose from, in the order of the page; empty where there is no choice.
    pub choices: Vec<String>,
    /// The right one.
    pub answer: String,
    /// The features that it asks about, by id, in the order of the choices or of the page.
    pub features: Vec<String>,
}

/// A pass mark from the exact binomial distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pass {
    /// The fewest right answers that count.
    pub right: u32,
    /// Of how many.
    pub of: u32,
    /// The chance that guesses alone reach it.
    pub luck: f64,
}
