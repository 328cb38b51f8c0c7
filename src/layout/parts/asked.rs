//! What a page that asks something says of itself: its caption and its alternative text give no answer away.

use crate::exercise::quiz::{Question, Quiz};
use crate::language::Tongue;
use crate::layout::alt;
use crate::optics::Viewer;
use crate::solve::SolvedFeature;
use crate::spec::Answers;

/// The caption under the art: the range of its depths alone.
pub(super) fn caption(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    alt::range_caption(features, viewer, tongue)
}

/// Alternative text for the art: what is asked, and where the answers stand.
pub(super) fn picture(quiz: &Quiz, goal: &str, answers: Answers, tongue: &Tongue) -> String {
    let count = quiz.questions.len();
    let mut sentences = vec![tongue.tell("asked-picture", &[("count", count.into()), ("goal", goal.into())])];
    sentences.extend(choices(&quiz.questions, tongue));
    match answers {
        Answers::Turned => sentences.push(tongue.say("asked-key-turned")),
        Answers::File => sentences.push(tongue.say("asked-key-file")),
        Answers::None => {}
    }
    sentences.join(" ")
}

/// The answers to choose from, where they are the same for every question.
fn choices(questions: &[Question], tongue: &Tongue) -> Option<String> {
    let first = questions.first().filter(|question| !question.choices.is_empty())?;
    let same = questions.iter().all(|question| question.choices == first.choices);
    same.then(|| tongue.tell("asked-choices", &[("choices", first.choices.join(", ").into())]))
}
