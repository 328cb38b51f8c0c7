//! All integration tests in one binary.

mod oracles;
mod references;
