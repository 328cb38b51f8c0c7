//! How long a page takes: an estimate from its keys, for the plan of a book. It shapes nothing on the page itself.

use crate::units::Seconds;

use super::quiz::Quiz;

/// To read a page and settle on it, s. Design choice.
const SETTLE: f64 = 20.0;
/// A question with its look away, s. Design choice: a look of a few seconds, an answer, and the far look that pages ask
/// for after every third.
const QUESTION: f64 = 10.0;
/// A brief check, s: its words say that one minute is enough.
const CHECK: f64 = 60.0;
/// A page that says nothing of its time, s. Design choice: the shorter end of a block of two to three minutes.
const PLAIN: f64 = 120.0;

/// To look far away and come back, s: the words say five seconds.
pub(super) const FAR_LOOK: f64 = 5.0;
/// Once along a trail, s. Design choice: slowly, as its words ask.
pub(super) const ALONG: f64 = 10.0;
/// To bring a pencil to a place and read the ruler, s. Design choice.
pub(super) const POINTING: f64 = 15.0;

/// The whole seconds of a page: from the times and repeats of its kind, else from its questions, else from its family.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "the limits of all keys keep it far below")]
pub(super) fn page(own: Option<Seconds>, quiz: Option<&Quiz>, family: &str) -> u32 {
    let work = match (own, quiz) {
        (Some(Seconds(own)), _) => own,
        (None, Some(quiz)) => QUESTION * quiz.questions.len() as f64,
        (None, None) if family == "readiness" => CHECK,
        (None, None) => PLAIN,
    };
    (SETTLE + work).ceil() as u32
}
