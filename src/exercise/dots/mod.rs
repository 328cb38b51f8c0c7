//! Kinds whose figures are seen by two eyes together alone: fields of random dots.

pub mod board;
pub mod border;
pub mod depths;
pub mod field;
pub mod figure;
pub mod gap;
pub mod hidden;
pub mod hills;
pub mod planes;
pub mod relief;
pub mod waves;
pub mod words;

#[cfg(test)]
mod tests;
