//! Integration tests in one binary: what the rooms do together, seen from outside.

mod oracles;
mod references;
mod render_png;
mod render_vector;
