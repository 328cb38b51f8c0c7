//! Choice pages: many small items, each with a question, so that luck can be told from seeing depth.
//!
//! Nothing but depth may give an answer away: see [`board`]. How well anyone sees is not said here or on any page.

pub mod board;
pub mod matching;
pub mod odd;
pub mod order;
pub mod side;
