//! Words that pages of dots share: what the frame tells, what to do where nothing shows, and the sides of a page.

use crate::exercise::words;
use crate::language::Tongue;
use crate::scene::Direction;

/// What to look for before the dots: the frame tells whether both eyes take part.
pub const FRAME_STEP: &str = "dots-frame";

/// The last step.
pub const REST_STEP: &str = "dots-rest";

/// What should be seen, with the frame that tells of both eyes.
pub fn with_frame(see: &str, tongue: &Tongue) -> String {
    format!("{see} {}", tongue.say("dots-whole"))
}

/// What it means when one eye's part is missing, or when nothing stands out.
pub fn one_part(tongue: &Tongue) -> Vec<(String, String)> {
    let rows =
        [("dots-one-eye", "dots-one-eye-then"), ("dots-flat", "dots-flat-then"), ("dots-double", "kinds-easier")];
    words::say_rows(&rows, tongue)
}

/// A side of the page in a word.
pub fn way(side: Direction, tongue: &Tongue) -> String {
    tongue.say(match side {
        Direction::Up => "way-up",
        Direction::Right => "way-right",
        Direction::Down => "way-down",
        Direction::Left => "way-left",
    })
}

/// All sides of the page, in the order of [`Direction::ALL`]: what a question of sides lets choose from.
pub fn ways(tongue: &Tongue) -> Vec<String> {
    Direction::ALL.map(|side| way(side, tongue)).to_vec()
}
