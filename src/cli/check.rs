//! `check`: read, solve, check and lay out; write nothing. Prints the ladder of each set.

use std::path::PathBuf;

use serde::Serialize;

use crate::bundle::inked::Inked;
use crate::bundle::prepare::Prepared;
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;

use super::console::Console;
use super::findings::Sets;
use super::ladder::{Rung, rungs, table};
use super::options::sets;
use super::{Status, Stop, readers};

/// Read, solve and check sets; write nothing
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// A folder with set.toml, or the file [default: specs/harbour-lights]
    #[arg(value_name = "SET")]
    pub(super) sets: Vec<PathBuf>,
    /// The sets of the readers, one line each, in place of the ladder
    #[arg(long)]
    readers: bool,
    /// The set of this reader alone; may be given more than once
    #[arg(long = "reader", value_name = "ID")]
    pub(super) ids: Vec<String>,
    /// Print the ladder and the findings as JSON
    #[arg(long)]
    pub(super) json: bool,
}

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    if args.readers || !args.ids.is_empty() {
        return readers::check(args, console);
    }
    let mut sets = Sets::read(&sets(&args.sets), None)?;
    let ladders: Vec<_> = sets.0.iter_mut().map(ladder).collect();
    if args.json {
        console.print_json(&report(&sets, ladders))?;
    } else {
        sets.tell(console, Severity::Note);
        for (set, rungs) in sets.0.iter().zip(&ladders) {
            console.print(&page(set, rungs))?;
        }
        console.say(&sets.tally(Severity::Note));
    }
    Ok(sets.status())
}

/// Lays out every edition, keeps what does not fit, and builds the ladder with the page numbers of the first edition.
fn ladder(set: &mut Prepared) -> Vec<Rung> {
    let (mut numbers, mut problems) = (None, Vec::new());
    if let Some(book) = set.draft() {
        for edition in &book.set.editions {
            match book.lay_out(edition, &Inked::of(edition)) {
                Ok(laid) => {
                    numbers
                        .get_or_insert_with(|| laid.sheets.into_iter().map(|s| (s.id, s.number)).collect::<Vec<_>>());
                }
                Err(more) => problems.extend(more),
            }
        }
    }
    problems.into_iter().for_each(|problem| set.diagnostics.push(problem));
    let numbers = numbers.unwrap_or_default();
    rungs(set, |id| numbers.iter().find(|(sheet, _)| sheet == id).map(|(_, number)| *number))
}

/// One set for people; nothing where not even its name could be read.
fn page(set: &Prepared, rungs: &[Rung]) -> String {
    let Some(spec) = &set.set else { return String::new() };
    let (distance, ipd) = (spec.viewer.distance.0, spec.viewer.ipd.0);
    format!("{} {}, for {distance} mm and an ipd of {ipd} mm\n{}", spec.title, spec.version, table(rungs))
}

#[derive(Serialize)]
struct Report {
    schema: u32,
    sets: Vec<SetPart>,
    errors: usize,
    warnings: usize,
}

#[derive(Serialize)]
struct SetPart {
    id: Option<String>,
    version: Option<String>,
    editions: Vec<String>,
    pages: Vec<Rung>,
    findings: Vec<Record>,
}

fn report(sets: &Sets, ladders: Vec<Vec<Rung>>) -> Report {
    let part = |(set, pages): (&Prepared, _)| SetPart {
        id: set.set.as_ref().map(|s| s.id.clone()),
        version: set.set.as_ref().map(|s| s.version.clone()),
        editions: set.set.iter().flat_map(|s| &s.editions).map(|e| e.id.clone()).collect(),
        pages,
        findings: Sets::records(set),
    };
    Report {
        schema: 1,
        sets: sets.0.iter().zip(ladders).map(part).collect(),
        errors: sets.count(Severity::Error),
        warnings: sets.count(Severity::Warning),
    }
}
