//! Integration tests in one binary: what the rooms do together, seen from outside.

mod oracles;
mod references;
mod render_png;
mod render_vector;
//! The one integration binary: a module per file.

mod bad_specs;
mod demo_set;
mod reading;
mod spec_reference;
