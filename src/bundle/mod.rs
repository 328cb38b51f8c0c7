//! From the files of a set to the files of its editions: read, solve, lint, lay out, render in parallel, write.
//!
//! This is the only room that reads or writes files. It computes no offset, picks no colour and draws nothing: it calls
//! the rooms that do, in order, and carries their results. Nothing is written while any file of any set has an error,
//! and what an earlier run wrote survives every failure (see [`mod@write`]).

pub mod chart_report;
pub mod charts;
pub mod colour_report;
pub mod compare;
pub mod demand;
mod document;
mod entry;
pub mod error;
pub mod extent;
mod grade_report;
pub mod inked;
pub mod issue;
pub mod json;
pub mod load;
mod orphans;
pub mod pictures;
mod planned;
pub mod prepare;
pub mod publish;
pub mod readers;
mod reading_report;
pub mod report;
pub mod run;
pub mod shard;
pub mod summary;
pub mod swatch;
pub mod translate;
pub mod write;
