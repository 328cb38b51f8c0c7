//! The `depthpress` program: everything it does is in the library's `cli` room.

use std::process::ExitCode;

fn main() -> ExitCode {
    depthpress::cli::run(std::env::args_os())
}
