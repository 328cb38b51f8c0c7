//! Questions that a page asks, with their answers: for the answer key, the boxes on the page and the report.
//!
//! The answers come from the same draw as the art. Nothing here says how well anyone sees: a pass mark only keeps lucky
//! guesses from counting as a step up.

use crate::chance::{self, MOST_LUCK, Weak};
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::spec::reader::Reader;
use crate::units::plain;

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

impl Pass {
    /// The pass mark of `of` questions with `choices` equally likely answers each. `None`: the design is weak, and a
    /// problem has been pushed that says how many questions would do. `place` is where the number of questions is
    /// written, or the header where it is not.
    pub fn of(reader: &mut Reader<'_>, place: Place, of: u32, choices: u32) -> Option<Self> {
        match chance::pass_mark(of, choices) {
            Ok(mark) => Some(Self { right: mark.right, of, luck: mark.luck }),
            Err(weak) => {
                reader.push(weak_design(place, of, choices, weak));
                None
            }
        }
    }
}

fn weak_design(place: Place, of: u32, choices: u32, weak: Weak) -> Diagnostic {
    let limit = plain(MOST_LUCK * 100.0, 3);
    let questions = if of == 1 { "`1` question".to_owned() } else { format!("`{of}` questions") };
    let message = format!(
        "{questions} of `{choices}` choices: no pass mark that forgives one slip keeps lucky guesses at or below \
         `{limit} %`"
    );
    let help = match weak.would_do {
        Some(n) => format!("ask at least `{n}` questions of `{choices}` choices"),
        None => "give at least `2` choices".to_owned(),
    };
    Diagnostic::error(codes::LUCK, place, message).with_label("luck alone would pass it").with_help(help)
}
