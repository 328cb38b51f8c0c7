//! Integration tests in one binary: what the rooms do together, seen from outside.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::disallowed_methods,
    clippy::disallowed_types,
    clippy::float_cmp,
    reason = "tests may unwrap, write files of their own and compare with literals"
)]

mod architecture;
mod bundle;
mod oracles;
mod references;
mod render_png;
mod render_vector;
