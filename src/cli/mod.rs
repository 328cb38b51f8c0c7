//! The command line: reads arguments, calls the other rooms, and says what came of it. One file per command.
//!
//! Data goes to stdout, talk to stderr. Exit codes: 0 fine, 1 the spec or a check has errors, 2 usage or I/O. Nothing
//! here solves, draws or writes a page.

mod bundle;
mod check;
mod compare;
mod console;
mod convert;
mod findings;
mod inks;
mod kinds;
mod ladder;
mod options;
mod plot;
mod readers;
mod render;

use std::ffi::OsString;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

use console::Console;

/// Practice pages for two eyes and red/cyan glasses: TOML specs in, PDF, SVG and PNG out.
///
/// These are practice pages, not a test and not a treatment.
#[derive(Debug, Parser)]
#[command(name = "depthpress", version, disable_help_subcommand = true)]
struct Args {
    #[command(subcommand)]
    command: Command,
    /// Say nothing but errors
    #[arg(short, long, global = true)]
    quiet: bool,
}

#[derive(Debug, Subcommand)]
enum Command {
    Render(render::Args),
    Bundle(bundle::Args),
    Check(check::Args),
    Compare(compare::Args),
    Convert(convert::Args),
    Inks(inks::Args),
    Kinds(kinds::Args),
    Plot(plot::Args),
}

/// How a command ended, if nothing stopped it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Status {
    /// As asked.
    Fine,
    /// The spec or a check has errors.
    Errors,
}

/// Why a command stopped: usage or I/O, in words for the user.
#[derive(Debug)]
struct Stop(String);

impl<E: std::error::Error> From<E> for Stop {
    fn from(error: E) -> Self {
        Self(error.to_string())
    }
}

/// Runs the program with these arguments, the first being its own name.
pub fn run(args: impl IntoIterator<Item = OsString>) -> ExitCode {
    let args = match Args::try_parse_from(args) {
        Ok(args) => args,
        Err(error) => {
            // Help and version go to stdout, errors to stderr; a reader who left is no failure.
            drop(error.print());
            return ExitCode::from(u8::from(error.use_stderr()) * 2);
        }
    };
    let console = Console::new(args.quiet);
    let done = match &args.command {
        Command::Render(args) => render::run(args, &console),
        Command::Bundle(args) => bundle::run(args, &console),
        Command::Check(args) => check::run(args, &console),
        Command::Compare(args) => compare::run(args, &console),
        Command::Convert(args) => convert::run(args, &console),
        Command::Inks(args) => inks::run(args, &console),
        Command::Kinds(args) => kinds::run(args, &console),
        Command::Plot(args) => plot::run(args, &console),
    };
    match done {
        Ok(Status::Fine) => ExitCode::SUCCESS,
        Ok(Status::Errors) => ExitCode::from(1),
        Err(Stop(message)) => {
            console.error(&message);
            ExitCode::from(2)
        }
    }
}
