//! `render`: sets in, the files of their editions out.

use std::num::NonZeroUsize;
use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};
use std::time::Instant;

use clap::ValueEnum;
use indicatif::{ProgressBar, ProgressStyle};
use serde::Serialize;

use crate::bundle::error::{Error, count};
use crate::bundle::readers::Whom;
use crate::bundle::run::{self, Request, Step, Written};
use crate::bundle::shard::{self, Shard, Sharded};
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;
use crate::spec::Formats;
use crate::units::{Ppi, plain};

use super::console::Console;
use super::findings::Sets;
use super::options::{page_range, ppi, sets, shard};
use super::{Status, Stop, readers};

/// Render sets: every edition as PDF, SVG and PNG
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// A folder with set.toml, or the file [default: specs/harbour-lights]
    #[arg(value_name = "SET")]
    pub(super) sets: Vec<PathBuf>,
    /// Where the folders of the sets go; a whole run of an edition replaces its folder there
    #[arg(long, value_name = "DIR", default_value = "out")]
    pub(super) out: PathBuf,
    /// This edition alone; may be given more than once [default: all]
    #[arg(long = "edition", value_name = "ID")]
    editions: Vec<String>,
    /// These formats [default: those of each edition]
    #[arg(long = "format", value_name = "FORMAT", value_delimiter = ',')]
    formats: Vec<Format>,
    /// Pixels per inch of the PNG pages [default: that of each edition]
    #[arg(long, value_name = "N", value_parser = ppi)]
    pub(super) ppi: Option<Ppi>,
    /// These pages alone, numbered as in the whole book; the PDF then holds no others
    #[arg(long = "page", value_name = "N|A-B", value_parser = page_range)]
    pages: Option<RangeInclusive<u32>>,
    /// The set of each reader, in place of the set's own
    #[arg(long)]
    readers: bool,
    /// The set of this reader alone; may be given more than once
    #[arg(long = "reader", value_name = "ID")]
    ids: Vec<String>,
    /// Write the readers without errors, though others have some [default: write nothing then]
    #[arg(long)]
    keep_going: bool,
    /// Share K of N of the run, for machines side by side; each leaves a report of its own
    #[arg(long, value_name = "K/N", value_parser = shard)]
    pub(super) shard: Option<Shard>,
    /// Join the reports of all shards; give the other arguments as to them
    #[arg(long, conflicts_with = "shard")]
    pub(super) merge: bool,
    /// How many threads [default: one for each processor]
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=512))]
    jobs: Option<u16>,
    /// Print what was written as JSON
    #[arg(long)]
    pub(super) json: bool,
}

/// A kind of output file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Format {
    /// One PDF an edition
    Pdf,
    /// One SVG a page
    Svg,
    /// One PNG a page
    Png,
}

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    if args.for_readers() {
        return readers::render(args, console);
    }
    let start = now();
    if args.keep_going {
        return Err(Stop("`--keep-going` is for the readers of a set; add `--readers`".to_owned()));
    }
    if args.merge {
        return merge(args, console);
    }
    let mut sets = Sets::read(&sets(&args.sets), args.ppi)?;
    let written = match write(args, console, &sets) {
        Ok(written) => written,
        Err(Error::Layout { set, diagnostics }) => {
            diagnostics.into_iter().for_each(|problem| sets.0[set].diagnostics.push(problem));
            Vec::new()
        }
        Err(error) => {
            sets.tell(console, Severity::Warning);
            return Err(error.into());
        }
    };
    if args.json {
        console.print_json(&Report::new(&sets, &written))?;
    } else {
        sets.tell(console, Severity::Warning);
    }
    let status = sets.status();
    match status {
        Status::Errors => console.say(&format!("{}; nothing was written", sets.tally(Severity::Warning))),
        Status::Fine => {
            written.iter().for_each(|edition| console.say(&summary(edition)));
            let notes = sets.count(Severity::Note);
            if 0 < notes {
                console.say(&format!("`depthpress check` has {}", count(notes, "note")));
            }
            console.say(&format!("done in {} s", plain(start.elapsed().as_secs_f64(), 2)));
        }
    }
    Ok(status)
}

/// Renders and writes all sets, or nothing while any has an error.
fn write(args: &Args, console: &Console, sets: &Sets) -> Result<Vec<Written>, Error> {
    let Some(books) = sets.books() else { return Ok(Vec::new()) };
    watched(console.watched() && !args.json, |watch| run::run(&books, &args.request(sets), watch))
}

/// Goes on with a bar, if there is someone to watch it.
pub(super) fn watched<T>(is_watched: bool, go: impl FnOnce(&(dyn Fn(Step) + Sync)) -> T) -> T {
    let bar = progress(is_watched);
    let done = go(&|step| match step {
        Step::Planned(files) => bar.inc_length(files),
        Step::Made => bar.inc(1),
    });
    bar.finish_and_clear();
    done
}

/// Joins the shards of a run for the sets themselves.
fn merge(args: &Args, console: &Console) -> Result<Status, Stop> {
    let sets = Sets::gather(&sets(&args.sets), args.ppi)?;
    if sets.status() == Status::Errors {
        sets.tell(console, Severity::Warning);
        return Ok(Status::Errors);
    }
    let specs: Vec<_> = sets.0.iter().filter_map(|set| set.set.as_ref()).collect();
    shard::merge(&args.out, &specs, &args.inputs(&sets))?;
    console.say("all shards are there");
    Ok(Status::Fine)
}

impl Args {
    /// Whether the sets are those of readers.
    fn for_readers(&self) -> bool {
        self.readers || !self.ids.is_empty()
    }

    /// What to render of these sets.
    pub(super) fn request(&self, sets: &Sets) -> Request<'_> {
        Request {
            out: &self.out,
            editions: &self.editions,
            formats: formats(&self.formats),
            pages: self.pages.clone(),
            jobs: jobs(self.jobs),
            sharded: self.shard.map(|shard| Sharded { shard, inputs: self.inputs(sets) }),
        }
    }

    /// Whom to render it for.
    pub(super) fn whom(&self) -> Whom<'_> {
        Whom { ids: &self.ids, keep_going: self.keep_going }
    }

    /// What the run is made from: shards of other inputs are not joined.
    pub(super) fn inputs(&self, sets: &Sets) -> String {
        let Self { editions, ppi, pages, ids, keep_going, .. } = self;
        let formats = formats(&self.formats);
        sets.inputs(&format!("{:?}", (editions, formats, ppi, pages, self.for_readers(), ids, keep_going)))
    }
}

fn formats(given: &[Format]) -> Option<Formats> {
    let has = |format| given.contains(&format);
    (!given.is_empty()).then(|| Formats { pdf: has(Format::Pdf), svg: has(Format::Svg), png: has(Format::Png) })
}

/// The threads asked for, or one for each processor.
pub(super) fn jobs(given: Option<u16>) -> NonZeroUsize {
    let given = given.and_then(|jobs| NonZeroUsize::new(usize::from(jobs)));
    given.or_else(|| std::thread::available_parallelism().ok()).unwrap_or(NonZeroUsize::MIN)
}

/// A bar on stderr, if there is someone to watch it.
fn progress(watched: bool) -> ProgressBar {
    let bar = if watched { ProgressBar::new(0) } else { ProgressBar::hidden() };
    match ProgressStyle::with_template("{bar:30} {pos} of {len} files") {
        Ok(style) => bar.with_style(style),
        Err(_) => bar,
    }
}

#[expect(clippy::disallowed_methods, reason = "the time a run took is told on stderr and goes into no file")]
pub(super) fn now() -> Instant {
    Instant::now()
}

/// "a4: 14 pages, 29 files, 3.2 MB in out/harbour-lights/a4".
fn summary(written: &Written) -> String {
    let bytes: u64 = written.files.iter().map(|(_, bytes)| bytes).sum();
    let pages = match written.pages.as_slice() {
        [(only, _)] if !written.whole => format!("page {only} of {}", written.book_pages),
        [(first, _), .., (last, _)] if written.pages.len() < written.book_pages as usize => {
            format!("pages {first}-{last} of {}", written.book_pages)
        }
        all => count(all.len(), "page"),
    };
    format!(
        "{}: {pages}, {}, {} in {}",
        written.edition,
        count(written.files.len(), "file"),
        size(bytes),
        written.folder.display()
    )
}

/// Bytes for people.
pub(super) fn size(bytes: u64) -> String {
    #[expect(clippy::cast_precision_loss, reason = "shown with two digits")]
    let kilobytes = bytes as f64 / 1000.0;
    if kilobytes < 1000.0 {
        format!("{} kB", plain(kilobytes, 0))
    } else {
        format!("{} MB", plain(kilobytes / 1000.0, 1))
    }
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    written: Vec<EditionPart<'a>>,
    findings: Vec<Record>,
}

#[derive(Serialize)]
struct EditionPart<'a> {
    set: &'a str,
    edition: &'a str,
    folder: &'a Path,
    /// Whether the folder was replaced as a whole.
    whole: bool,
    book_pages: u32,
    pages: Vec<PagePart<'a>>,
    files: Vec<FilePart<'a>>,
}

#[derive(Serialize)]
struct PagePart<'a> {
    number: u32,
    id: &'a str,
}

#[derive(Serialize)]
struct FilePart<'a> {
    /// As it can be opened from here.
    path: PathBuf,
    bytes: u64,
    /// Below the folder of the edition.
    name: &'a str,
}

impl<'a> Report<'a> {
    fn new(sets: &Sets, written: &'a [Written]) -> Self {
        Self {
            schema: 1,
            written: written.iter().map(EditionPart::new).collect(),
            findings: sets.0.iter().flat_map(Sets::records).collect(),
        }
    }
}

impl<'a> EditionPart<'a> {
    fn new(written: &'a Written) -> Self {
        let file = |(name, bytes): &'a (String, u64)| FilePart { path: written.folder.join(name), bytes: *bytes, name };
        Self {
            set: &written.set,
            edition: &written.edition,
            folder: &written.folder,
            whole: written.whole,
            book_pages: written.book_pages,
            pages: written.pages.iter().map(|(number, id)| PagePart { number: *number, id }).collect(),
            files: written.files.iter().map(file).collect(),
        }
    }
}
