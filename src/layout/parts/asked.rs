//! What a page that asks something says of itself: its caption and its alternative text give no answer away.

use crate::exercise::quiz::{Question, Quiz};
use crate::layout::alt;
use crate::optics::Viewer;
use crate::solve::SolvedFeature;
use crate::spec::Answers;

/// The caption under the art: the range of its depths alone.
pub(super) fn caption(features: &[SolvedFeature], viewer: &Viewer) -> String {
    alt::range_caption(features, viewer)
}

/// Alternative text for the art: what is asked, and where the answers stand.
pub(super) fn picture(quiz: &Quiz, goal: &str, answers: Answers) -> String {
    let count = match quiz.questions.len() {
        1 => "1 question".to_owned(),
        n => format!("{n} questions"),
    };
    let key = match answers {
        Answers::Turned => " The answers stand in the key at the end of the book.",
        Answers::File => " The answers stand in a file of their own.",
        Answers::None => "",
    };
    format!("A picture for both eyes together, with {count}. {goal}{}{key}", choices(&quiz.questions))
}

/// The answers to choose from, where they are the same for every question.
fn choices(questions: &[Question]) -> String {
    let Some(first) = questions.first().filter(|question| !question.choices.is_empty()) else { return String::new() };
    let same = questions.iter().all(|question| question.choices == first.choices);
    if same { format!(" To choose from: {}.", first.choices.join(", ")) } else { String::new() }
}
