//! `bundle`: a set as a product, or a check that it is still the one that was kept.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use serde::Serialize;

use crate::bundle::error::{Error, count};
use crate::bundle::prepare::Prepared;
use crate::bundle::publish::manifest::Change;
use crate::bundle::publish::{Bundled, Order, SPEC, Source, Then, bundle};
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;
use crate::units::plain;

use super::console::Console;
use super::findings::Sets;
use super::options::sets;
use super::render::{jobs, now, size, watched};
use super::{Status, Stop};

/// Make a set ready to publish: every edition, previews, README, licence, check sums and zips
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// A folder with set.toml, or the file [default: specs/harbour-lights]
    #[arg(value_name = "SET")]
    sets: Vec<PathBuf>,
    /// Where the folders of the bundles go; each is replaced as a whole
    #[arg(long, value_name = "DIR", default_value = "out")]
    out: PathBuf,
    /// This edition alone, in a folder of its own name; may be given more than once [default: all]
    #[arg(long = "edition", value_name = "ID", conflicts_with_all = ["frozen", "freeze"])]
    editions: Vec<String>,
    /// How many threads [default: one for each processor]
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=512))]
    jobs: Option<u16>,
    /// Keep nothing, and fail where a file differs from the manifest beside set.toml
    #[arg(long, conflicts_with = "freeze")]
    frozen: bool,
    /// Write the manifest beside set.toml too, for `--frozen`
    #[arg(long)]
    freeze: bool,
    /// Print what was made as JSON
    #[arg(long)]
    json: bool,
}

/// How many changed files are told in words.
const TOLD: usize = 20;

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    let start = now();
    let mut sets = Sets::read(&sets(&args.sets), None)?;
    let made = match make(args, console, &sets) {
        Ok(made) => made,
        Err(Error::Layout { set, diagnostics }) => {
            diagnostics.into_iter().for_each(|problem| sets.0[set].diagnostics.push(problem));
            Vec::new()
        }
        Err(error) => {
            sets.tell(console, Severity::Error);
            return Err(error.into());
        }
    };
    if args.json {
        let findings = sets.0.iter().flat_map(Sets::records).collect();
        let bundles = made.iter().map(|made| BundlePart::new(made, args.frozen)).collect();
        console.print_json(&Report { schema: 1, bundles, findings })?;
    } else {
        sets.tell(console, Severity::Warning);
    }
    if sets.status() == Status::Errors {
        console.say(&format!("{}; nothing was written", sets.tally(Severity::Warning)));
        return Ok(Status::Errors);
    }
    made.iter().for_each(|made| tell(args, console, made));
    console.say(&format!("done in {} s", plain(start.elapsed().as_secs_f64(), 2)));
    Ok(if made.iter().all(|made| made.changes.is_empty()) { Status::Fine } else { Status::Errors })
}

/// Makes all bundles, or none while any set has an error.
fn make(args: &Args, console: &Console, sets: &Sets) -> Result<Vec<Bundled>, Error> {
    let Some(sources) = sets.0.iter().map(source).collect::<Option<Vec<_>>>() else { return Ok(Vec::new()) };
    let then = match (args.frozen, args.freeze) {
        (true, _) => Then::Compare,
        (false, true) => Then::Freeze,
        (false, false) => Then::Keep,
    };
    let order = Order { out: &args.out, editions: &args.editions, jobs: jobs(args.jobs), then };
    watched(console.watched() && !args.json, |watch| bundle(&sources, &order, watch))
}

fn source(read: &Prepared) -> Option<Source<'_>> {
    Some(Source { book: read.book()?, read })
}

/// Says what was made, or what is not as it was.
fn tell(args: &Args, console: &Console, made: &Bundled) {
    if !made.changes.is_empty() {
        console.error(&changed(made));
        return;
    }
    let files = count(made.files.len() + 1, "file");
    let editions = count(made.editions.len(), "edition");
    let bytes = size(made.files.iter().map(|(_, bytes, _)| bytes).sum());
    let (set, version) = (&made.set, &made.version);
    if args.frozen {
        console.say(&format!("{set} {version}: {editions}, {files}, as in `{}`", made.committed.display()));
    } else {
        console.say(&format!("{set} {version}: {editions}, {files}, {bytes} in {}", made.folder.display()));
    }
    if args.freeze {
        console.say(&format!("manifest: {}", made.committed.display()));
    }
}

/// What is not as in the committed manifest, and the way out.
fn changed(made: &Bundled) -> String {
    let differ = if made.changes.len() == 1 { "file differs" } else { "files differ" };
    let mut text = format!("{} {differ} from `{}`", made.changes.len(), made.committed.display());
    // The set's own files first: they are why others changed.
    let mut changes: Vec<&Change> = made.changes.iter().collect();
    changes.sort_by_key(|change| !change.file.starts_with(SPEC));
    for Change { file, committed, made } in changes.into_iter().take(TOLD) {
        let _ = match (committed.as_deref().map(short), made.as_deref().map(short)) {
            (Some(committed), Some(made)) => write!(text, "\n  differs  {file}: {committed} there, {made} now"),
            (Some(committed), None) => write!(text, "\n  missing  {file}: {committed} there"),
            (None, made) => write!(text, "\n  new      {file}: {} now", made.unwrap_or_default()),
        };
    }
    if TOLD < made.changes.len() {
        let _ = write!(text, "\n  and {} more; `--json` has all", made.changes.len() - TOLD);
    }
    text.push_str(
        "\n  if this is meant, raise the version, run `depthpress bundle --freeze` and keep the new manifest",
    );
    text
}

/// The beginning of a digest.
fn short(digest: &str) -> &str {
    digest.get(..12).unwrap_or(digest)
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    bundles: Vec<BundlePart<'a>>,
    findings: Vec<Record>,
}

#[derive(Serialize)]
struct BundlePart<'a> {
    set: &'a str,
    version: &'a str,
    /// Whether it has all editions of the set.
    whole: bool,
    /// Null where nothing is kept.
    folder: Option<&'a Path>,
    editions: &'a [String],
    /// Every file but the manifest.
    files: Vec<FilePart<'a>>,
    /// What is not as in the manifest beside `set.toml`; null where nothing is compared.
    changes: Option<Vec<ChangePart<'a>>>,
}

#[derive(Serialize)]
struct FilePart<'a> {
    /// Below the folder of the bundle.
    name: &'a str,
    bytes: u64,
    sha256: &'a str,
}

#[derive(Serialize)]
struct ChangePart<'a> {
    name: &'a str,
    /// Null for a new file.
    committed: Option<&'a str>,
    /// Null for a missing file.
    made: Option<&'a str>,
}

impl<'a> BundlePart<'a> {
    fn new(made: &'a Bundled, frozen: bool) -> Self {
        let change = |change: &'a Change| ChangePart {
            name: &change.file,
            committed: change.committed.as_deref(),
            made: change.made.as_deref(),
        };
        Self {
            set: &made.set,
            version: &made.version,
            whole: made.whole,
            folder: (!frozen).then_some(made.folder.as_path()),
            editions: &made.editions,
            files: made.files.iter().map(|(name, bytes, sha256)| FilePart { name, bytes: *bytes, sha256 }).collect(),
            changes: frozen.then(|| made.changes.iter().map(change).collect()),
        }
    }
}
