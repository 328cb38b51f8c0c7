//! The author's own pictures: SVG → outlines of one ink, grey PNG → grids of shares.
//!
//! Pictures come from anywhere, so nothing here trusts them: a picture that is too large, too deep or too dense, or that
//! asks for what an outline cannot show, is refused with the reason before much is spent on it. No file is opened here
//! and nothing outside the bytes is ever followed: no link, script, font, image or document type.

mod check;
mod expand;
mod grey;
mod merge;
mod outline;
mod scan;
mod sheet;

pub use grey::grid;
pub use outline::{drawing, parts};

/// The most elements of an SVG, before and after every `use` is written out. Design choice.
const MOST_ELEMENTS: usize = 20_000;
/// How deep elements may stand in one another, every `use` written out. Design choice.
const MOST_DEPTH: usize = 64;
/// The most numbers in the coordinates of an SVG, every `use` written out. Design choice: far more than a hand draws.
const MOST_NUMBERS: usize = 200_000;
/// The greatest coordinate of an SVG, in its own units. Design choice: beyond it single precision loses hundredths.
const FARTHEST: f64 = 1e5;
/// The most corners of an outline once its curves are straight pieces. Design choice: as much as two dozen pages of
/// the largest set can carry.
const MOST_POINTS: usize = 50_000;
