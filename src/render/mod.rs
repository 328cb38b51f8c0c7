//! Sheets in, bytes out: one room per format, each walking the same [`Sheet`](crate::layout::sheet::Sheet). None of
//! them knows a spec, computes an offset or picks a colour, and none knows another.

pub mod pdf;
pub mod png;
pub mod svg;
