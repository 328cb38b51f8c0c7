//! Sheets: what stands where on a page.

pub mod sheet;
