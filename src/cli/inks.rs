//! `inks`: the solved inks of each edition with what each eye is forecast to see, and the swatch sheets.

use std::path::{Path, PathBuf};

use serde::Serialize;

use crate::bundle::colour_report::{ColourPart, InksPart, verdict};
use crate::bundle::error::Error;
use crate::bundle::swatch::{Swatch, swatches, write};
use crate::colour::{EyeReport, Inks};
use crate::diagnostics::Severity;
use crate::diagnostics::render::Record;
use crate::spec::SetSpec;
use crate::units::plain;

use super::console::Console;
use super::findings::Sets;
use super::options::sets;
use super::{Status, Stop};

/// Print the inks of each edition and what each eye should see of them; write swatch sheets
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// A folder with set.toml, or the file [default: specs/harbour-lights]
    #[arg(value_name = "SET")]
    set: Option<PathBuf>,
    /// This edition alone; may be given more than once [default: all]
    #[arg(long = "edition", value_name = "ID")]
    editions: Vec<String>,
    /// Where the folder of the set is; the sheets go into `inks` in the folder of each edition
    #[arg(long, value_name = "DIR", default_value = "out")]
    out: PathBuf,
    /// Print JSON
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    let given: Vec<PathBuf> = args.set.iter().cloned().collect();
    let mut found = Sets::read(&sets(&given), None)?;
    let Some(prepared) = found.0.first_mut() else { return Ok(Status::Fine) };
    let set = prepared.set.clone();
    let inks = set.as_ref().map_or(Ok(Vec::new()), |set| swatches(set, &args.editions))?;
    let folders = match set.as_ref().map_or(Ok(Vec::new()), |set| write(&args.out, 0, set, &inks)) {
        Ok(folders) => folders,
        Err(Error::Layout { diagnostics, .. }) => {
            prepared.diagnostics.extend(diagnostics);
            Vec::new()
        }
        Err(error) => return Err(error.into()),
    };
    if args.json {
        let part = |(index, one)| Some(EditionPart::new(set.as_ref()?, one, folders.get(index)));
        let editions = inks.iter().enumerate().filter_map(part).collect();
        let findings = found.0.iter().flat_map(Sets::records).collect();
        console.print_json(&Report { schema: 1, editions, findings })?;
    } else {
        found.tell(console, Severity::Warning);
        for (set, one) in set.iter().flat_map(|set| inks.iter().map(move |one| (set, one))) {
            console.print(&page(set, one))?;
        }
    }
    folders.iter().for_each(|folder| console.say(&format!("swatches in {}", folder.display())));
    Ok(found.status())
}

/// One edition for people.
fn page(set: &SetSpec, one: &Swatch<'_>) -> String {
    let (edition, plan) = (one.edition, &one.inked.plan);
    let Inks { left, right, both, ground, text } = plan.inks;
    let mut out = format!(
        "{} {}, edition {}: {} left, {} right, {} ground, {}\n",
        set.title,
        set.version,
        edition.id,
        edition.glasses.left.name(),
        edition.glasses.right.name(),
        edition.ground.name(),
        edition.colour.source.words(),
    );
    for (role, ink) in [("left", left), ("right", right), ("both", both), ("ground", ground), ("text", text)] {
        out.push_str(&format!("  {role:<8}{}\n", ink.hex()));
    }
    out.push_str("  eye      contrast   signal    ghost  in overlaps  brightness\n");
    for (name, eye) in [("left", &plan.left), ("right", &plan.right)] {
        out.push_str(&row(name, eye));
    }
    out.push_str(&format!(
        "  imbalance {} to 1; ghost {}, limit {}; words {} to 1\n",
        number(plan.imbalance),
        verdict(plan.verdict()),
        percent(edition.colour.wishes.ghost),
        plain(plan.text_contrast, 1),
    ));
    plan.traded.iter().for_each(|trade| out.push_str(&format!("  {trade}\n")));
    if let Some(accepted) = &edition.colour.accepted {
        out.push_str(&format!("  a ghost up to {} is accepted: {}\n", percent(accepted.limit), accepted.reason));
    }
    out
}

fn row(name: &str, eye: &EyeReport) -> String {
    let [contrast, signal, ghost, overlap, brightness] =
        [eye.contrast, eye.signal, eye.ghost, eye.overlap_ghost, eye.brightness].map(percent);
    format!("  {name:<8} {contrast:>8} {signal:>8} {ghost:>8} {overlap:>12} {brightness:>11}\n")
}

/// A share for people; what is infinite has no end.
fn percent(share: f64) -> String {
    if share.is_finite() { format!("{:.1} %", share * 100.0) } else { "endless".to_owned() }
}

fn number(value: f64) -> String {
    if value.is_finite() { plain(value, 2) } else { "endless".to_owned() }
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    editions: Vec<EditionPart<'a>>,
    findings: Vec<Record>,
}

#[derive(Serialize)]
struct EditionPart<'a> {
    set: &'a str,
    edition: &'a str,
    ground: &'static str,
    inks: InksPart,
    colour: ColourPart<'a>,
    /// Where the sheets are; null where they could not be made.
    folder: Option<&'a Path>,
}

impl<'a> EditionPart<'a> {
    fn new(set: &'a SetSpec, one: &'a Swatch<'_>, folder: Option<&'a PathBuf>) -> Self {
        Self {
            set: &set.id,
            edition: &one.edition.id,
            ground: one.edition.ground.name(),
            inks: InksPart::new(&one.inked.plan.inks),
            colour: ColourPart::new(one.edition, &one.inked.plan, &[]),
            folder: folder.map(PathBuf::as_path),
        }
    }
}
