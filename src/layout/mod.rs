//! Sheets: what stands where on a page.

pub mod art;
pub mod sheet;
pub mod text;
