//! `plot`: the ladder of a set as a chart, and a plan view of each page.

use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};

use clap::ValueEnum;
use serde::Serialize;

use crate::bundle::chart_report::PagePart;
use crate::bundle::charts::{Asked, ChartRequest, Charted, write};
use crate::bundle::error::{Error, count};
use crate::bundle::prepare::Prepared;
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;
use crate::units::Ppi;

use super::console::Console;
use super::findings::Sets;
use super::options::{page_range, ppi, sets};
use super::{Status, Stop};

/// Draw what each page asks, and where its targets stand
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// A folder with set.toml, or the file [default: specs/harbour-lights]
    #[arg(value_name = "SET")]
    set: Option<PathBuf>,
    /// Where the folder of the set is; the charts go into `plot` there
    #[arg(long, value_name = "DIR", default_value = "out")]
    out: PathBuf,
    /// These formats
    #[arg(long = "format", value_name = "FORMAT", value_delimiter = ',', default_value = "svg,png")]
    formats: Vec<Format>,
    /// Plan views of these pages alone, numbered as in the book of the first edition; may be given more than once
    #[arg(long = "page", value_name = "N|A-B", value_parser = page_range)]
    pages: Vec<RangeInclusive<u32>>,
    /// Plan view of this page alone; may be given more than once
    #[arg(long = "page-id", value_name = "ID")]
    ids: Vec<String>,
    /// Pixels per inch of the PNG files
    #[arg(long, value_name = "N", value_parser = ppi, default_value = "150")]
    ppi: Ppi,
    /// Print what was written and what it shows as JSON
    #[arg(long)]
    json: bool,
}

/// A kind of chart file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Format {
    /// Vectors
    Svg,
    /// Pixels
    Png,
}

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    let given: Vec<PathBuf> = args.set.iter().cloned().collect();
    let mut found = Sets::read(&sets(&given), None)?;
    let drawn = match draw(args, &found) {
        Ok(drawn) => drawn,
        Err(Error::Layout { set, diagnostics }) => {
            diagnostics.into_iter().for_each(|problem| found.0[set].diagnostics.push(problem));
            None
        }
        Err(error) => return Err(error.into()),
    };
    if args.json {
        let findings = found.0.iter().flat_map(Sets::records).collect();
        console.print_json(&Report { schema: 1, written: drawn.as_ref().map(WrittenPart::new), findings })?;
    } else {
        found.tell(console, Severity::Error);
    }
    match &drawn {
        Some(charted) => {
            let files = count(charted.files.len(), "file");
            console.say(&format!("charts: {files} in {}", charted.folder.display()));
        }
        None => console.say(&format!("{}; nothing was written", found.tally(Severity::Error))),
    }
    Ok(found.status())
}

/// Draws and writes the charts; `None` while a page is missing. What the checks found is no hindrance: a page that asks
/// too much is best seen in a chart.
fn draw(args: &Args, found: &Sets) -> Result<Option<Charted>, Error> {
    let Some(book) = found.0.first().and_then(Prepared::draft) else { return Ok(None) };
    let numbers = args.pages.iter().cloned().map(Asked::Numbers);
    let pages: Vec<Asked> = numbers.chain(args.ids.iter().cloned().map(Asked::Id)).collect();
    let request = ChartRequest {
        out: &args.out,
        svg: args.formats.contains(&Format::Svg),
        png: args.formats.contains(&Format::Png),
        pages: &pages,
        ppi: args.ppi,
    };
    write(0, &book, &request).map(Some)
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    /// Null where nothing was written.
    written: Option<WrittenPart<'a>>,
    findings: Vec<Record>,
}

#[derive(Serialize)]
struct WrittenPart<'a> {
    folder: &'a Path,
    /// Whether the folder was replaced as a whole.
    whole: bool,
    files: Vec<FilePart<'a>>,
    pages: Vec<PagePart<'a>>,
}

#[derive(Serialize)]
struct FilePart<'a> {
    /// As it can be opened from here.
    path: PathBuf,
    bytes: u64,
    /// Below the folder of the charts.
    name: &'a str,
}

impl<'a> WrittenPart<'a> {
    fn new(charted: &'a Charted) -> Self {
        let file = |(name, bytes): &'a (String, u64)| FilePart { path: charted.folder.join(name), bytes: *bytes, name };
        Self {
            folder: &charted.folder,
            whole: charted.whole,
            files: charted.files.iter().map(file).collect(),
            pages: charted.pages.iter().map(PagePart::new).collect(),
        }
    }
}
