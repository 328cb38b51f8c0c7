//! Kinds in which one thing is held single.

pub mod columns;
pub mod dealt;
pub mod hold;
pub mod patch;
pub mod words;
