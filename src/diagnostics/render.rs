//! Problems as text for people and as data for programs. Nothing here decides what is wrong.

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Origin, Patch, Renderer, Snippet};
use serde::Serialize;

use super::{Diagnostic, Line, Severity, Sources};

/// Whether text carries terminal colours.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paint {
    /// Bare text, for files, pipes and `NO_COLOR`.
    Plain,
    /// ANSI colours.
    Ansi,
}

/// Longest part of a line that is quoted, in bytes. Design choice: fits the width the text is laid out for.
const QUOTED: usize = 200;
/// How much of a long line is quoted before the marked place, in bytes.
const QUOTED_BEFORE: usize = 60;

/// The problems as text in the order given, one blank line between them.
pub fn text<'a>(problems: impl IntoIterator<Item = &'a Diagnostic>, sources: &Sources, paint: Paint) -> String {
    let renderer = match paint {
        Paint::Plain => Renderer::plain(),
        Paint::Ansi => Renderer::styled(),
    };
    let renderer = renderer.decor_style(DecorStyle::Ascii);
    let mut out = String::new();
    for problem in problems {
        if !out.is_empty() {
            out.push('\n');
        }
        let page = renderer.render(&report(problem, sources));
        for line in page.lines() {
            out.push_str(line.trim_end());
            out.push('\n');
        }
    }
    out
}

/// One problem for programs.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Record {
    /// The code.
    pub code: &'static str,
    /// `error`, `warning` or `note`.
    pub severity: &'static str,
    /// The file, as shown in text; null for a problem without a place.
    pub file: Option<String>,
    /// The line, from 1.
    pub line: Option<usize>,
    /// The column in characters, from 1.
    pub column: Option<usize>,
    /// What is wrong.
    pub message: String,
    /// A few words on the marked place.
    pub label: String,
    /// One way out.
    pub help: String,
    /// Text that would mend it, in place of the marked bytes.
    pub replacement: Option<String>,
}

/// The problems for programs, in the order given.
pub fn records<'a>(problems: impl IntoIterator<Item = &'a Diagnostic>, sources: &Sources) -> Vec<Record> {
    problems.into_iter().map(|p| record(p, sources)).collect()
}

fn record(problem: &Diagnostic, sources: &Sources) -> Record {
    let line = problem.place.and_then(|p| sources.line(p));
    Record {
        code: problem.code,
        severity: problem.severity.name(),
        file: problem.place.map(|p| sources.path(p.file).to_owned()),
        line: line.map(|l| l.number),
        column: line.map(|l| l.column()),
        message: problem.message.clone(),
        label: problem.label.clone(),
        help: problem.help.clone(),
        replacement: problem.replacement.clone(),
    }
}

fn level(severity: Severity) -> Level<'static> {
    match severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Note => Level::NOTE,
    }
}

/// The problem as groups of the text renderer: title, quoted line with its caret, way out.
fn report<'a>(problem: &'a Diagnostic, sources: &'a Sources) -> Vec<Group<'a>> {
    let title = level(problem.severity).primary_title(&problem.message).id(problem.code);
    let mut group = Group::with_title(title);
    let line = problem.place.and_then(|place| Some((place, sources.line(place)?)));
    let quote = line.map(|(place, line)| (sources.path(place.file), Quote::of(&line)));
    if let Some((path, quote)) = &quote {
        let mark = AnnotationKind::Primary.span(quote.start..quote.end);
        let mark = if problem.label.is_empty() { mark } else { mark.label(&problem.label) };
        let mut snippet = Snippet::source(quote.text.clone()).line_start(quote.number).annotation(mark);
        if quote.shifted {
            group = group.element(Origin::path(*path).line(quote.number).char_column(quote.column));
        } else {
            snippet = snippet.path(*path);
        }
        group = group.element(snippet);
    }
    match (&problem.replacement, quote) {
        (Some(patch), Some((_, quote))) if quote.whole => {
            let help = if problem.help.is_empty() { "write this instead" } else { &problem.help };
            let patched = Snippet::source(quote.text)
                .line_start(quote.number)
                .patch(Patch::new(quote.start..quote.end, patch.as_str()));
            vec![group, Level::HELP.secondary_title(help).element(patched)]
        }
        _ if problem.help.is_empty() => vec![group],
        _ => vec![group.element(Level::HELP.message(&problem.help))],
    }
}

/// The part of a line that is shown.
struct Quote {
    number: usize,
    /// Of the whole line.
    column: usize,
    text: String,
    start: usize,
    end: usize,
    /// Whether the marked bytes are all inside.
    whole: bool,
    /// Whether the start of the line is cut off, so that the renderer cannot count the column by itself.
    shifted: bool,
}

impl Quote {
    /// Cuts a long line to a window around the marked bytes.
    fn of(line: &Line<'_>) -> Self {
        let (number, column) = (line.number, line.column());
        if line.text.len() <= QUOTED {
            let (text, start, end) = (line.text.to_owned(), line.start, line.end);
            return Self { number, column, text, start, end, whole: true, shifted: false };
        }
        let from = super::floor_char(line.text, line.start.saturating_sub(QUOTED_BEFORE));
        let to = super::floor_char(line.text, from + QUOTED);
        let (head, tail) = (if 0 < from { "… " } else { "" }, if to < line.text.len() { " …" } else { "" });
        let shift = |i: usize| i - from + head.len();
        Self {
            number,
            column,
            text: format!("{head}{}{tail}", &line.text[from..to]),
            start: shift(line.start),
            end: shift(line.end.min(to)),
            whole: line.end <= to,
            shifted: 0 < from,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Place;
    use super::*;

    fn sample() -> (Sources, Diagnostic) {
        let mut sources = Sources::default();
        let file = sources.add("a.toml", "[target]\ndpeth = \"page\"\n");
        let place = Place { file, start: 9, end: 14 };
        let problem = Diagnostic::error("E-UNKNOWN-KEY", place, "unknown key `dpeth` in `[target]`")
            .with_label("unknown key")
            .with_help("did you mean `depth`?")
            .with_replacement("depth");
        (sources, problem)
    }

    #[test]
    fn text_shows_line_caret_and_mended_line() {
        let (sources, problem) = sample();
        let expected = "\
error[E-UNKNOWN-KEY]: unknown key `dpeth` in `[target]`
 --> a.toml:2:1
  |
2 | dpeth = \"page\"
  | ^^^^^ unknown key
  |
help: did you mean `depth`?
  |
2 - dpeth = \"page\"
2 + depth = \"page\"
  |
";
        assert_eq!(text([&problem], &sources, Paint::Plain), expected);
        assert!(text([&problem], &sources, Paint::Ansi).contains("\u{1b}["));
    }

    #[test]
    fn a_problem_without_place_prints_too() {
        let problem = Diagnostic::warning("W-X", None, "nothing to draw").with_help("add an exercise");
        assert_eq!(
            text([&problem], &Sources::default(), Paint::Plain),
            "warning[W-X]: nothing to draw\n |\n = help: add an exercise\n"
        );
    }

    #[test]
    fn records_hold_line_and_column() {
        let (sources, problem) = sample();
        let record = &records([&problem], &sources)[0];
        assert_eq!((record.file.as_deref(), record.line, record.column), (Some("a.toml"), Some(2), Some(1)));
        let json = serde_json::to_value(record).unwrap();
        let expected = serde_json::json!({
            "code": "E-UNKNOWN-KEY", "severity": "error", "file": "a.toml", "line": 2, "column": 1,
            "message": "unknown key `dpeth` in `[target]`", "label": "unknown key", "help": "did you mean `depth`?",
            "replacement": "depth",
        });
        assert_eq!(json, expected);
    }

    #[test]
    fn a_megabyte_line_is_cut_around_the_mark() {
        let mut sources = Sources::default();
        let line = format!("{}MARK{}", "ä".repeat(300_000), "z".repeat(600_000));
        let file = sources.add("a.toml", line);
        let place = Place { file, start: 600_000, end: 600_004 };
        let shown = text([&Diagnostic::error("E-X", place, "seen").with_label("here")], &sources, Paint::Plain);
        assert!(shown.len() < 1000, "{}", shown.len());
        assert!(shown.contains("a.toml:1:300001"), "{shown}");
        assert!(shown.contains("MARK") && shown.contains("^^^^ here"), "{shown}");
    }
}
