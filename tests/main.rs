//! The one integration binary: a module per file.

mod bad_specs;
mod demo_set;
mod reading;
mod spec_reference;
