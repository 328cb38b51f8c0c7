//! Kinds in which one thing is held single.

pub mod hold;
