//! The lower chart of the ladder: the demand of each page as a bar, over the viewer's range and the zone of comfort.
//!
//! Demands are prism dioptres against the page, toward up. Range, zone and reserves count from the base of the viewer,
//! where a professional set one.

use kurbo::{Point, Rect};

use super::ladder::{Rung, Slots};
use super::marks::{HAIR, apart, bar, hatch, line, step, ticks};
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::SMALL;
use crate::layout::plot::Line;
use crate::layout::sheet::{Node, Tone};
use crate::layout::text::{Align, Style};
use crate::optics::Viewing;
use crate::optics::limits::comfort;
use crate::optics::reserves::{Bound, Reserve};
use crate::spec::SetSpec;
use crate::units::{Angle, Mm, plain};

/// The shade of the viewer's range.
const RANGE: Tone = Tone(0.13);
/// The bars.
const BAR: Tone = Tone(0.85);
/// The least height of a bar, mm: a page at one depth is a stroke.
const STROKE: f64 = 1.0;
/// The widest that a bar may be, mm.
const WIDEST: f64 = 7.0;

/// A line across the chart.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Level {
    /// Where it lies, pd.
    pub(super) at: f64,
    /// What it is, at its right end.
    name: &'static str,
    line: Line,
}

/// The range of the viewer in the chart.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Zone {
    away: f64,
    toward: f64,
    bounds: [Bound; 2],
}

/// What all sheets of a ladder share.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Scale {
    /// Least and most, pd.
    ends: (f64, f64),
    step: f64,
    base: f64,
    zone: Option<Zone>,
    comfort: Option<(f64, f64)>,
    pub(super) levels: Vec<Level>,
    /// Where the reserves come from.
    source: Option<String>,
    smallest_ipd: f64,
}

impl Scale {
    /// The scale that holds all pages and what is known of the viewer.
    pub(super) fn of(set: &SetSpec, rungs: &[Rung]) -> Self {
        let viewer = &set.viewer;
        let base = viewer.base.horizontal.0;
        let zone = viewer.zone.map(|zone| Zone {
            away: base - zone.away.0,
            toward: base + zone.toward.0,
            bounds: [zone.away_bound, zone.toward_bound],
        });
        let comfort = viewer.viewing().and_then(|viewing| comfort_zone(&viewing, base));
        let mut levels = reserves(set, base);
        let known = rungs.iter().filter_map(|rung| rung.demand).flat_map(|(low, high)| [low, high]);
        let zones = zone.iter().flat_map(|zone| [zone.away, zone.toward]);
        let comforts = comfort.iter().flat_map(|&(low, high)| [low, high]);
        let all = known.chain(zones).chain(comforts).chain(levels.iter().map(|level| level.at)).chain([0.0, base]);
        let (low, high) = all.fold((0.0_f64, 0.0_f64), |(low, high), pd| (low.min(pd), high.max(pd)));
        let step = step(high - low, 10.0);
        let ends = ((low / step - 0.25).floor() * step, (high / step + 0.25).ceil() * step);
        let smallest_ipd = viewer.ipd_range.0;
        let parallel = viewer.viewing().and_then(|viewing| viewing.demand_of_parallax(smallest_ipd));
        if let Some(pd) = parallel.filter(|pd| ends.0 <= pd.0) {
            levels.push(Level { at: pd.0, name: "parallel", line: Line::DashDotted });
        }
        if base != 0.0 {
            levels.push(Level { at: base, name: "base", line: Line::Sparse });
        }
        let source = set.known.reserves().map(|_| source(set));
        Self { ends, step, base, zone, comfort, levels, source, smallest_ipd: smallest_ipd.0 }
    }

    /// Where a demand lies in a frame, mm down the page.
    pub(super) fn y(&self, frame: Rect, demand: f64) -> f64 {
        frame.y1 - (demand - self.ends.0) / (self.ends.1 - self.ends.0) * frame.height()
    }

    /// The range of the viewer in words.
    pub(super) fn words(&self) -> String {
        let Some(Zone { away, toward, bounds }) = self.zone else {
            return "no range of the viewer is known: the set names neither reserves nor norms".to_owned();
        };
        let end = |pd: f64, bound: Bound| format!("{} ({})", side(pd), bound_words(bound));
        format!("range of the viewer: {} to {}", end(away, bounds[0]), end(toward, bounds[1]))
    }

    /// What the shades and lines mean.
    pub(super) fn legend(&self, composer: &mut Composer<'_>, width: f64) -> Piece {
        let block = |tone| bar(Rect::new(0.0, -1.5, 9.0, 1.5), tone);
        let stroke = |style| line(&[Point::ZERO, Point::new(9.0, 0.0)], style, LINE, Tone::FULL);
        let mut entries = vec![(
            vec![bar(Rect::new(3.0, -1.6, 6.0, 1.6), BAR)],
            "from the least to the most demand of a page; 0 is the page itself".to_owned(),
        )];
        let sample = if self.zone.is_some() { vec![block(RANGE)] } else { Vec::new() };
        entries.push((sample, self.words()));
        if self.comfort.is_some() {
            let words = "comfort: at most 1 degree of disparity".to_owned();
            entries.push((vec![hatch(Rect::new(0.0, -1.5, 9.0, 1.5))], words));
        }
        if let Some(source) = &self.source {
            let ends = |name| self.ends_of(name).map(|words| format!("{name} at {words}"));
            let known: Vec<String> = ["blur", "break"].into_iter().filter_map(ends).collect();
            entries.push((vec![stroke(Line::Dashed)], format!("{source}: {}", known.join(", "))));
        }
        if self.levels.iter().any(|level| level.name == "parallel") {
            let words = format!("parallel eyes for an ipd of {} mm", plain(self.smallest_ipd, 1));
            entries.push((vec![stroke(Line::DashDotted)], words));
        }
        if self.base != 0.0 {
            entries.push((vec![stroke(Line::Sparse)], format!("base, {}", side(self.base))));
        }
        super::legend(composer, entries, width)
    }

    /// The two ends of a kind of reserve: "13 pd away and 17 pd toward".
    fn ends_of(&self, name: &str) -> Option<String> {
        let ends: Vec<String> =
            self.levels.iter().filter(|level| level.name == name).map(|level| side(level.at)).collect();
        (!ends.is_empty()).then(|| ends.join(" and "))
    }

    /// Shades, scale, lines and bars.
    pub(super) fn draw(&self, composer: &mut Composer<'_>, slots: &Slots, rungs: &[Rung]) -> Vec<Node> {
        let frame = slots.frame;
        let mut nodes: Vec<Node> = self.band(frame).map(|area| bar(area, RANGE)).into_iter().collect();
        nodes.extend(self.comfort_band(frame).map(hatch));
        nodes.extend(self.grid(composer, frame));
        nodes.extend(self.lines(composer, frame));
        nodes.extend(
            rungs.iter().zip(0..).filter_map(|(rung, index)| Some(bar(self.bar(slots, index, rung.demand?), BAR))),
        );
        nodes
    }

    /// The bar of a page: from its least to its most demand.
    pub(super) fn bar(&self, slots: &Slots, index: usize, (least, most): (f64, f64)) -> Rect {
        let half = (slots.width() * 0.46).min(WIDEST) / 2.0;
        let (x, top, foot) = (slots.x(index), self.y(slots.frame, most), self.y(slots.frame, least));
        let more = (STROKE - (foot - top)).max(0.0) / 2.0;
        Rect::new(x - half, top - more, x + half, foot + more)
    }

    /// The range of the viewer.
    pub(super) fn band(&self, frame: Rect) -> Option<Rect> {
        let zone = self.zone?;
        Some(Rect::new(frame.x0, self.y(frame, zone.toward), frame.x1, self.y(frame, zone.away)))
    }

    /// The zone of comfort.
    pub(super) fn comfort_band(&self, frame: Rect) -> Option<Rect> {
        let (away, toward) = self.comfort?;
        Some(Rect::new(frame.x0, self.y(frame, toward), frame.x1, self.y(frame, away)))
    }

    /// The scale, with its sides.
    fn grid(&self, composer: &mut Composer<'_>, frame: Rect) -> Vec<Node> {
        let style = Style { align: Align::End, tone: Tone::FULL, ..SMALL };
        let mut nodes = Vec::new();
        for pd in ticks(self.ends.0, self.ends.1, self.step) {
            let y = self.y(frame, pd);
            let (half, tone) = if pd == 0.0 { (0.12, Tone::FULL) } else { (HAIR / 2.0, super::climb::GRID) };
            nodes.push(bar(Rect::new(frame.x0, y - half, frame.x1, y + half), tone));
            // The side stands in words in the legend and above the scale; a sign would be read as less.
            let label = composer.lines(&plain(pd.abs(), 1), &style, 8.0);
            nodes.extend(label.moved(frame.x0 - 9.4, y - SMALL.leading.0 * super::HALF).nodes);
        }
        let inside = Style { tone: Tone::QUIET, ..SMALL };
        nodes.extend(composer.lines("toward", &inside, 16.0).moved(frame.x0 + 0.6, frame.y0 + 0.2).nodes);
        let foot = frame.y1 - SMALL.leading.0 - 0.2;
        nodes.extend(composer.lines("away", &inside, 16.0).moved(frame.x0 + 0.6, foot).nodes);
        nodes
    }

    /// The lines of reserves, parallel eyes and base, with their names at the right end.
    fn lines(&self, composer: &mut Composer<'_>, frame: Rect) -> Vec<Node> {
        let mut levels: Vec<&Level> = self.levels.iter().collect();
        levels.sort_by(|a, b| b.at.total_cmp(&a.at));
        let height = SMALL.leading.0;
        let wanted: Vec<(f64, f64)> = levels.iter().map(|level| (self.y(frame, level.at), height)).collect();
        let tops = apart(&wanted, (frame.y0 - height, frame.y1 + height));
        let style = Style { tone: Tone::FULL, ..SMALL };
        let mut nodes = Vec::new();
        for ((level, (y, _)), top) in levels.into_iter().zip(wanted).zip(tops) {
            nodes.push(line(&[Point::new(frame.x0, y), Point::new(frame.x1, y)], level.line, LINE, Tone::FULL));
            nodes.extend(composer.lines(level.name, &style, 14.0).moved(frame.x1 + 1.2, top).nodes);
        }
        nodes
    }
}

/// Width of the lines of reserves, mm.
const LINE: f64 = 0.22;

/// Demands of 1 degree of disparity on either side, around the base.
/// Source: `[Lambooij2009]`.
fn comfort_zone(viewing: &Viewing, base: f64) -> Option<(f64, f64)> {
    let demand = |degrees: f64| {
        let parallax: Mm = viewing.parallax_of_disparity(Angle::from_degrees(degrees))?;
        Some(base + viewing.demand_of_parallax(parallax)?.0)
    };
    let limit = comfort().to_degrees();
    Some((demand(-limit)?, demand(limit)?))
}

/// The blurs and breaks that are known.
fn reserves(set: &SetSpec, base: f64) -> Vec<Level> {
    let Some(reserves) = set.known.reserves() else { return Vec::new() };
    let levels = |reserve: Reserve, sign: f64| {
        let blur = reserve.blur.map(|pd| Level { at: base + sign * pd.0, name: "blur", line: Line::Dashed });
        let breaks = Level { at: base + sign * reserve.breaks.0, name: "break", line: Line::Dashed };
        blur.into_iter().chain([breaks])
    };
    levels(reserves.away, -1.0).chain(levels(reserves.toward, 1.0)).collect()
}

/// Whose reserves they are.
fn source(set: &SetSpec) -> String {
    let known = &set.known;
    match known.norms.map(|norms| norms.name()) {
        Some(name) if known.toward.is_none() && known.away.is_none() => format!("reserves of the norm {name}"),
        Some(name) => format!("reserves, one side of the norm {name}"),
        None => "reserves as a professional found them".to_owned(),
    }
}

/// "3 pd away", "0 pd".
fn side(pd: f64) -> String {
    let amount = plain(pd.abs(), 1);
    match pd {
        _ if amount == "0" => "0 pd".to_owned(),
        pd if pd < 0.0 => format!("{amount} pd away"),
        _ => format!("{amount} pd toward"),
    }
}

/// What bounds an end, in words.
fn bound_words(bound: Bound) -> &'static str {
    match bound {
        Bound::Percival => "Percival, middle third",
        Bound::Sheard => "Sheard, twice the phoria",
        Bound::Reserve => "the whole reserve",
    }
}
