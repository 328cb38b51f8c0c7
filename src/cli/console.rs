//! The two streams: data to stdout, talk to stderr.

use std::io::{self, ErrorKind, IsTerminal, Write};

use serde::Serialize;

use crate::bundle::json;

use super::Stop;

/// Where a command speaks.
#[derive(Debug, Clone, Copy)]
pub(super) struct Console {
    quiet: bool,
    colour: bool,
    terminal: bool,
}

impl Console {
    /// Looks at stderr and `NO_COLOR` once.
    pub(super) fn new(quiet: bool) -> Self {
        let terminal = io::stderr().is_terminal();
        Self { quiet, colour: terminal && !no_colour(), terminal }
    }

    /// Whether talk may be coloured.
    pub(super) fn colour(&self) -> bool {
        self.colour
    }

    /// Whether there is someone to watch progress.
    pub(super) fn watched(&self) -> bool {
        self.terminal && !self.quiet
    }

    /// Whether only errors are said.
    pub(super) fn quiet(&self) -> bool {
        self.quiet
    }

    /// Talk: not said when quiet.
    pub(super) fn say(&self, text: &str) {
        if !self.quiet {
            talk(text);
        }
    }

    /// An error: always said.
    pub(super) fn error(&self, message: &str) {
        let (red, plain) = if self.colour { ("\x1b[1;31m", "\x1b[0m") } else { ("", "") };
        talk(&format!("{red}error{plain}: {message}"));
    }

    /// Text that is worth saying even when quiet.
    pub(super) fn insist(&self, text: &str) {
        talk(text);
    }

    /// Data, on stdout.
    pub(super) fn print(&self, text: &str) -> Result<(), Stop> {
        data(text.as_bytes())
    }

    /// Data as JSON, on stdout.
    pub(super) fn print_json<T: Serialize>(&self, value: &T) -> Result<(), Stop> {
        data(&json::to_vec(value)?)
    }
}

/// Writes a line to stderr. Where nobody can hear it, nothing can be said about that either.
fn talk(text: &str) {
    drop(writeln!(io::stderr().lock(), "{}", text.trim_end_matches('\n')));
}

/// Writes to stdout. A reader who has seen enough and left is no failure.
fn data(bytes: &[u8]) -> Result<(), Stop> {
    let mut out = io::stdout().lock();
    match out.write_all(bytes).and_then(|()| out.flush()) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => Err(Stop(format!("cannot write to stdout: {error}"))),
        _ => Ok(()),
    }
}

/// True where `NO_COLOR` is set and not empty, or the terminal knows no colours.
#[expect(clippy::disallowed_methods, reason = "colour of messages is the one thing that the environment decides")]
fn no_colour() -> bool {
    std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty())
        || std::env::var_os("TERM").is_some_and(|term| term == "dumb")
}
