//! Sheets: what stands where on a page.

pub mod fonts;
pub mod sheet;
pub mod text;
