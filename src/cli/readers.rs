//! `render` and `check` for the readers of a set: what is told of them, one line each at most.

use std::path::Path;

use serde::Serialize;

use crate::bundle::error::count;
use crate::bundle::readers::{self, Done, Whom};
use crate::bundle::run::Request;
use crate::bundle::summary::{ReaderSummary, ViewerSummary};
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;
use crate::spec::readers::FOLDER;
use crate::units::plain;

use super::console::Console;
use super::findings::Sets;
use super::ladder::demand_words;
use super::options::sets;
use super::render::{jobs, now, watched};
use super::{Status, Stop, check, render};

/// Renders the sets of readers, or joins the shards of such a run.
pub(super) fn render(args: &render::Args, console: &Console) -> Result<Status, Stop> {
    let start = now();
    let mut sets = Sets::gather(&sets(&args.sets), args.ppi)?;
    let mut done = Vec::new();
    if sets.status() == Status::Fine {
        let request = args.request(&sets);
        let made = if args.merge {
            readers::merge(&sets.0, args.whom(), &request, &args.inputs(&sets))
        } else {
            watched(console.watched() && !args.json, |watch| readers::run(&sets.0, args.whom(), &request, watch))
        };
        done = made?;
    }
    let failed = done.iter().any(Done::has_errors);
    take_findings(&mut sets, &mut done);
    if args.json {
        console.print_json(&report(&sets, &done))?;
    } else {
        sets.tell(console, Severity::Warning);
    }
    let status = if failed { Status::Errors } else { sets.status() };
    if status == Status::Errors && !(args.whom().keep_going && failed) {
        console.say(&format!("{}; nothing was written", sets.tally(Severity::Warning)));
        return Ok(status);
    }
    for (set, done) in sets.0.iter().filter_map(|set| set.set.as_ref()).zip(&done) {
        console.say(&summary(&done.readers, &args.out.join(&set.id).join(FOLDER)));
    }
    console.say(&format!("done in {} s", plain(start.elapsed().as_secs_f64(), 2)));
    Ok(status)
}

/// Solves, checks and lays out the sets of readers; prints a line for each.
pub(super) fn check(args: &check::Args, console: &Console) -> Result<Status, Stop> {
    let mut sets = Sets::gather(&sets(&args.sets), None)?;
    let mut done = Vec::new();
    if sets.status() == Status::Fine {
        let request =
            Request { out: Path::new(""), editions: &[], formats: None, pages: None, jobs: jobs(None), sharded: None };
        done = readers::check(&sets.0, Whom { ids: &args.ids, keep_going: false }, &request)?;
    }
    take_findings(&mut sets, &mut done);
    if args.json {
        console.print_json(&report(&sets, &done))?;
    } else {
        sets.tell(console, Severity::Note);
        for (set, done) in sets.0.iter().filter_map(|set| set.set.as_ref()).zip(&done) {
            let of = count(done.readers.len(), "reader");
            console.print(&format!("{} {}, for {of}\n{}", set.title, set.version, table(&done.readers)))?;
        }
        console.say(&sets.tally(Severity::Note));
    }
    Ok(sets.status())
}

/// Puts what was found for readers to what was found in the files.
fn take_findings(sets: &mut Sets, done: &mut [Done]) {
    for (set, done) in sets.0.iter_mut().zip(done) {
        set.diagnostics.extend(std::mem::take(&mut done.findings));
    }
}

/// "12 readers, 24 editions, 312 pages in out/harbour-lights/readers; 1 reader left out".
fn summary(readers: &[ReaderSummary], folder: &Path) -> String {
    let editions: usize = readers.iter().map(|reader| reader.editions.len()).sum();
    let pages: u64 = readers.iter().flat_map(|reader| &reader.editions).map(|edition| edition.pages).sum();
    let left_out = readers.iter().filter(|reader| 0 < reader.errors).count();
    let pages = format!("{pages} page{}", if pages == 1 { "" } else { "s" });
    let made = count(readers.len() - left_out, "reader");
    let mut text = format!("{made}, {}, {pages} in {}", count(editions, "edition"), folder.display());
    if 0 < left_out {
        text.push_str(&format!("; {} left out", count(left_out, "reader")));
    }
    text
}

/// Readers as a table for people.
fn table(readers: &[ReaderSummary]) -> String {
    let head = ["reader", "distance", "ipd", "zone, pd", "demand, pd", "findings"].map(str::to_owned);
    let rows: Vec<_> = std::iter::once(head).chain(readers.iter().map(cells)).collect();
    let width = |column: usize| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0);
    let widths: [usize; 6] = std::array::from_fn(width);
    let line = |row: &[String; 6]| {
        let cells = row.iter().zip(widths).map(|(cell, width)| format!("{cell:<width$}"));
        format!("{}\n", cells.collect::<Vec<_>>().join("  ").trim_end())
    };
    rows.iter().map(line).collect()
}

fn cells(reader: &ReaderSummary) -> [String; 6] {
    let ViewerSummary { distance_mm, ipd_mm, zone, .. } = &reader.viewer;
    let zone = zone.as_ref().map(|zone| demand_words([0.0 - zone.away_pd, zone.toward_pd]));
    let found = [(reader.errors, "error"), (reader.warnings, "warning")];
    let found = found.into_iter().filter(|(n, _)| 0 < *n);
    let found = found.map(|(n, noun)| count(usize::try_from(n).unwrap_or(usize::MAX), noun)).collect::<Vec<_>>();
    [
        reader.id.clone(),
        format!("{} mm", plain(*distance_mm, 1)),
        format!("{} mm", plain(*ipd_mm, 1)),
        zone.unwrap_or_else(|| "not known".to_owned()),
        reader.demand_pd.map_or_else(|| "-".to_owned(), demand_words),
        if found.is_empty() { "-".to_owned() } else { found.join(", ") },
    ]
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    sets: Vec<SetPart<'a>>,
    errors: usize,
    warnings: usize,
}

#[derive(Serialize)]
struct SetPart<'a> {
    id: Option<&'a str>,
    version: Option<&'a str>,
    readers: &'a [ReaderSummary],
    findings: Vec<Record>,
}

fn report<'a>(sets: &'a Sets, done: &'a [Done]) -> Report<'a> {
    let readers = |index: usize| done.get(index).map_or(&[][..], |done| &done.readers);
    let part = |(index, set): (usize, &'a crate::bundle::prepare::Prepared)| SetPart {
        id: set.set.as_ref().map(|s| s.id.as_str()),
        version: set.set.as_ref().map(|s| s.version.as_str()),
        readers: readers(index),
        findings: Sets::records(set),
    };
    Report {
        schema: 1,
        sets: sets.0.iter().enumerate().map(part).collect(),
        errors: sets.count(Severity::Error),
        warnings: sets.count(Severity::Warning),
    }
}
