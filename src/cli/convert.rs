//! `convert`: one depth in every unit.

use serde::Serialize;

use crate::diagnostics::Diagnostic;
use crate::optics::Viewer;
use crate::scene::Depth;
use crate::solve::{ProblemKind, SolveProblem, Stand, stand, stand_of};
use crate::spec::depth::parse_depth;
use crate::units::{Mm, plain};

use super::console::Console;
use super::options::viewer_length;
use super::{Status, Stop};

/// Print one depth in every unit
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// The depth, such as `6 cm toward`, `2 pd away`, `400 arcsec toward`, `4 mm parallax away` or `page`
    #[arg(value_name = "DEPTH", allow_hyphen_values = true)]
    depth: String,
    /// More words of the depth, where it is not quoted
    #[arg(hide = true)]
    words: Vec<String>,
    /// From the eyes to the page, such as `40 cm`
    #[arg(long, value_name = "LENGTH", value_parser = distance, allow_hyphen_values = true)]
    distance: Mm,
    /// Between the pupils, such as `63 mm`
    #[arg(long, value_name = "LENGTH", value_parser = ipd, allow_hyphen_values = true)]
    ipd: Mm,
    /// Print JSON
    #[arg(long)]
    json: bool,
}

/// Reads `--distance` within the limits of `distance` in `[viewer]`.
fn distance(text: &str) -> Result<Mm, String> {
    viewer_length(text, "distance")
}

/// Reads `--ipd` within the limits of `ipd` in `[viewer]`.
fn ipd(text: &str) -> Result<Mm, String> {
    viewer_length(text, "ipd")
}

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    let text = std::iter::once(&args.depth).chain(&args.words).cloned().collect::<Vec<_>>().join(" ");
    let viewer = Viewer::new(args.distance, args.ipd, (args.ipd, args.ipd));
    let depth = parse_depth(&text).map_err(|error| Stop(format!("{}; {}", error.message, error.help)))?;
    let stand = stand_of_any(&depth, &viewer)?;
    let beyond = || Stop(format!("`{text}` has no finite value in every unit; ask for a smaller depth"));
    let units = Units::new(&stand, &viewer).ok_or_else(beyond)?;
    if args.json {
        console.print_json(&units)?
    } else {
        console.print(&units.table())?
    }
    Ok(Status::Fine)
}

/// How a depth stands. Exactly parallel eyes can be converted, though no set may ask for them.
fn stand_of_any(depth: &Depth, viewer: &Viewer) -> Result<Stand, Stop> {
    let parallel = |parallax: Mm| stand(parallax, viewer).filter(|_| parallax == viewer.ipd);
    stand_of(depth, viewer)
        .or_else(|kind| match kind {
            ProblemKind::PastParallel { parallax, .. } => parallel(parallax).ok_or(kind),
            _ => Err(kind),
        })
        .map_err(|kind| {
            let problem = Diagnostic::from(SolveProblem { feature: String::new(), place: None, kind });
            Stop(format!("{}; {}", problem.message, problem.help))
        })
}

/// One depth in every unit; names and signs as in `report.json`.
#[derive(Debug, Serialize)]
struct Units {
    distance_mm: f64,
    ipd_mm: f64,
    /// `toward`, `away` or `page`.
    side: &'static str,
    parallax_mm: f64,
    demand_pd: f64,
    /// Counted from parallel eyes instead of from the page.
    total_demand_pd: f64,
    disparity_arcsec: f64,
    disparity_arcmin: f64,
    disparity_deg: f64,
    /// The angle between the two lines of sight.
    convergence_deg: f64,
    /// From the eye plane; null where the eyes stand parallel.
    place_mm: Option<f64>,
    /// From the page, positive behind it; null where the eyes stand parallel.
    depth_mm: Option<f64>,
}

impl Units {
    fn new(stand: &Stand, viewer: &Viewer) -> Option<Self> {
        let viewing = viewer.viewing()?;
        let parallax = stand.parallax;
        Some(Self {
            distance_mm: round(viewer.distance.0, 1e4),
            ipd_mm: round(viewer.ipd.0, 1e4),
            side: if parallax.0 < 0.0 {
                "toward"
            } else if 0.0 < parallax.0 {
                "away"
            } else {
                "page"
            },
            parallax_mm: round(parallax.0, 1e4),
            demand_pd: round(stand.demand.0, 1e4),
            total_demand_pd: round(viewing.total_demand(parallax)?.0, 1e4),
            disparity_arcsec: round(stand.disparity.to_arcsec(), 1e2),
            disparity_arcmin: round(stand.disparity.to_arcmin(), 1e4),
            disparity_deg: round(stand.disparity.to_degrees(), 1e6),
            convergence_deg: round(viewing.vergence(parallax)?.to_degrees(), 1e6),
            place_mm: stand.place.map(|mm| round(mm.0, 1e4)),
            depth_mm: viewing.depth_of_parallax(parallax).map(|mm| round(mm.0, 1e4)),
        })
    }

    /// For people: amounts without signs, sides in words.
    fn table(&self) -> String {
        let amount = |value: f64, decimals| plain(value.abs(), decimals);
        let base = match self.side {
            "toward" => " (crossed, base-out)",
            "away" => " (uncrossed, base-in)",
            _ => "",
        };
        let beyond = || "none, the eyes stand parallel".to_owned();
        let place = self.place_mm.map_or_else(beyond, |mm| format!("{} mm from the eyes", plain(mm, 4)));
        let depth = self.depth_mm.map_or_else(beyond, |mm| format!("{} mm from the page", amount(mm, 4)));
        let rows = [
            ("viewer", format!("{} mm away, ipd {} mm", plain(self.distance_mm, 4), plain(self.ipd_mm, 4))),
            ("side", format!("{}{base}", self.side)),
            ("place", place),
            ("depth", depth),
            ("parallax", format!("{} mm on the page", amount(self.parallax_mm, 4))),
            ("demand", format!("{} pd against the page", amount(self.demand_pd, 4))),
            ("total demand", format!("{} pd from parallel eyes", plain(self.total_demand_pd, 4))),
            (
                "disparity",
                format!(
                    "{} arcsec = {} arcmin = {} deg",
                    amount(self.disparity_arcsec, 2),
                    amount(self.disparity_arcmin, 4),
                    amount(self.disparity_deg, 6)
                ),
            ),
            ("convergence", format!("{} deg between the lines of sight", plain(self.convergence_deg, 6))),
        ];
        rows.iter().map(|(name, value)| format!("{name:<12}  {value}\n")).collect()
    }
}

/// The nearest multiple of one part in `parts`, never -0.
fn round(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts + 0.0
}
