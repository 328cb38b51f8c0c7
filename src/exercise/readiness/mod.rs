//! Brief checks before the first exercise: each eye sees its own part, both together, and the parts meet.

pub mod halves;
pub mod inset;
pub mod nonius;
pub mod who;
