//! `compare`: what changed between two issues of a set, what that is worth, and whether the version says so.

use std::path::{Path, PathBuf};

use serde::Serialize;

use crate::bundle::compare::diff::{Comparison, compare};
use crate::bundle::compare::erratum::{erratum, text};
use crate::bundle::compare::facts::{SetFacts, facts};
use crate::bundle::compare::pictures::pictures;
use crate::bundle::compare::place::refuse;
use crate::bundle::compare::release::{release, sentences};
use crate::bundle::compare::spec_of;
use crate::bundle::compare::version::{Outcome, Verdict, Version};
use crate::bundle::error::{Error, count};
use crate::bundle::prepare::{Book, Prepared};
use crate::bundle::write::put;
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;
use crate::units::Ppi;

use super::console::Console;
use super::findings::Sets;
use super::options::picture_ppi;
use super::{Status, Stop};

/// Tell what changed from one issue of a set to the next, and whether its version says so
///
/// Both are read and solved anew. Exit code 1: a spec has errors, or the version was not raised by
/// enough.
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// The old set or bundle: a folder, or its set.toml
    #[arg(value_name = "OLD")]
    old: PathBuf,
    /// The new set or bundle
    #[arg(value_name = "NEW")]
    new: PathBuf,
    /// Write what changed for the reader as Markdown; replaces an earlier erratum and nothing else
    #[arg(long, value_name = "FILE")]
    erratum: Option<PathBuf>,
    /// Write a picture of each page that changed: before, after, difference
    #[arg(long, value_name = "DIR")]
    pictures: Option<PathBuf>,
    /// Pixels per inch of the pictures
    #[arg(long, value_name = "N", value_parser = picture_ppi, default_value = "60")]
    ppi: Ppi,
    /// Print everything as JSON
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    if let Some(path) = &args.erratum {
        refuse(path, [&args.old, &args.new])?;
    }
    let paths = [spec_of(&args.old), spec_of(&args.new)];
    let mut sets = Sets::read(&paths, None)?;
    let told = (0..2).map(|index| read(&mut sets, index)).collect::<Option<Vec<_>>>();
    let Some([old, new]) = told.as_deref() else {
        sets.tell(console, Severity::Error);
        if args.json {
            console.print_json(&Report::unread(&sets))?;
        }
        console.error(&format!("nothing was compared: {}", sets.tally(Severity::Error)));
        return Ok(Status::Errors);
    };
    let comparison = compare(old, new);
    let verdict = verdict(&comparison)?;
    let drawn = draw(args, &sets, &comparison)?;
    if let Some(path) = &args.erratum {
        put(path, erratum(&comparison, &verdict).as_bytes())?;
    }
    if args.json {
        console.print_json(&Report::new(&sets, &comparison, &verdict, &drawn))?;
    } else {
        sets.tell(console, Severity::Error);
        if !console.quiet() {
            console.print(&text(&comparison, &verdict))?;
        } else if !verdict.fits() {
            console.error(&verdict.words());
        }
    }
    written(args, &drawn, console);
    Ok(if verdict.fits() { Status::Fine } else { Status::Errors })
}

/// The facts of one of the two sets; `None` where it does not read or cannot be laid out, with the problems added to it.
/// What the checks find wrong with its pages is no hindrance: an old set may be older than a check.
fn read(sets: &mut Sets, index: usize) -> Option<SetFacts> {
    let set = sets.0.get_mut(index)?;
    match facts(&set.draft()?, &set.readers) {
        Ok(facts) => Some(facts),
        Err(problems) => {
            problems.into_iter().for_each(|problem| set.diagnostics.push(problem));
            None
        }
    }
}

fn verdict(comparison: &Comparison) -> Result<Verdict, Stop> {
    let version = |text: &str| Version::parse(text).ok_or_else(|| Stop(format!("`{text}` is no version")));
    Ok(Verdict::new(version(&comparison.old.version)?, version(&comparison.new.version)?, comparison.class))
}

/// The pictures, where they are asked for.
fn draw(args: &Args, sets: &Sets, comparison: &Comparison) -> Result<Vec<PathBuf>, Error> {
    let books: Vec<Book<'_>> = sets.0.iter().filter_map(Prepared::draft).collect();
    match (&args.pictures, &books[..]) {
        (Some(folder), [old, new]) => pictures((old, new), comparison, folder, args.ppi),
        _ => Ok(Vec::new()),
    }
}

/// Says which files there are now.
fn written(args: &Args, drawn: &[PathBuf], console: &Console) {
    if let Some(path) = &args.erratum {
        console.say(&format!("erratum: {}", path.display()));
    }
    if let Some(folder) = &args.pictures {
        console.say(&format!("pictures: {} in {}", count(drawn.len(), "file"), folder.display()));
    }
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    /// Null where one of the sets does not read.
    version: Option<VersionPart>,
    comparison: Option<&'a Comparison>,
    /// A table for `set.toml`; null where nothing changed.
    release: Option<ReleasePart>,
    pictures: Vec<&'a Path>,
    findings: Vec<Record>,
}

#[derive(Serialize)]
struct VersionPart {
    fits: bool,
    outcome: Outcome,
    /// The lowest version that would do.
    lowest: String,
    message: String,
}

#[derive(Serialize)]
struct ReleasePart {
    changes: Vec<String>,
    toml: String,
}

impl<'a> Report<'a> {
    fn new(sets: &Sets, comparison: &'a Comparison, verdict: &Verdict, drawn: &'a [PathBuf]) -> Self {
        let release = || ReleasePart { changes: sentences(comparison), toml: release(comparison, verdict) };
        Self {
            version: Some(VersionPart {
                fits: verdict.fits(),
                outcome: verdict.outcome,
                lowest: verdict.lowest.to_string(),
                message: verdict.words(),
            }),
            comparison: Some(comparison),
            release: comparison.class.map(|_| release()),
            pictures: drawn.iter().map(PathBuf::as_path).collect(),
            ..Self::unread(sets)
        }
    }

    fn unread(sets: &Sets) -> Self {
        let findings = sets.0.iter().flat_map(Sets::records).collect();
        Self { schema: 1, version: None, comparison: None, release: None, pictures: Vec::new(), findings }
    }
}
