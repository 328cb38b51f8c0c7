//! Words that pages of dots share: what the frame tells, and what to do where nothing shows.

use std::cmp::Ordering;

/// What to look for before the dots: the frame tells whether both eyes take part.
pub const FRAME_STEP: &str = "Look softly at the middle. Check that the frame is whole all round.";

/// Where to wait and what for.
pub fn wait_step(what: &str) -> String {
    format!("Wait up to half a minute, until {what}.")
}

/// The last step.
pub const REST_STEP: &str = "Then look far away for five seconds.";

/// What should be seen, with the frame that tells of both eyes.
pub fn with_frame(see: &str) -> String {
    format!("{see} The frame is whole all round: both eyes take part.")
}

/// What it means when one eye's part is missing, or when nothing stands out.
pub fn one_part() -> Vec<(String, String)> {
    [
        ("every second dash", "One eye has dropped out. Blink, look far away, try again."),
        ("flat dots", "Look at the frame and wait. Still flat? Take an easier page."),
        ("two frames", "Rest, then go one page easier."),
    ]
    .map(|(seen, then)| (seen.to_owned(), then.to_owned()))
    .to_vec()
}

/// Where something seems to stand against the dots around it.
pub fn against_the_rest(nearer: Option<Ordering>) -> &'static str {
    match nearer {
        Some(Ordering::Greater) => "in front of the other dots",
        Some(Ordering::Less) => "behind the other dots, as if seen through a hole",
        _ => "in front of the other dots or behind them",
    }
}

/// "one star", "a star, a disc and a square".
pub fn list(names: &[String]) -> String {
    match names.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, rest)) => format!("{} and {last}", rest.join(", ")),
        None => String::new(),
    }
}
