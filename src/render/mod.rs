//! The formats. Stand-in.

pub mod pdf;
pub mod png;
pub mod svg;
