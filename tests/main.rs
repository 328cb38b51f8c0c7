//! Integration tests in one binary: what the rooms do together, seen from outside.

mod bad_specs;
mod demo_set;
mod oracles;
mod reading;
mod references;
mod render_png;
mod render_vector;
mod spec_reference;
