//! The lower chart of the ladder: the demand of each page as a bar, over the viewer's range and the zone of comfort.
//!
//! Demands are prism dioptres against the page, toward up. Where a professional set a base, all demands count from it.

use kurbo::{Point, Rect};

use super::ladder::{Rung, Slots};
use super::marks::{HAIR, apart, bar, hatch, line, step, ticks};
use crate::language::Tongue;
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::SMALL;
use crate::layout::plot::Line;
use crate::layout::sheet::{Node, Tone};
use crate::layout::text::{Align, Style};
use crate::optics::Viewing;
use crate::optics::limits::comfort;
use crate::optics::reserves::{Bound, Reserve};
use crate::spec::SetSpec;
use crate::spec::viewer::Known;
use crate::units::{Angle, Mm, PrismDioptre};

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
    /// What it is, at its right end: the id of a message.
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
    zone: Option<Zone>,
    comfort: Option<(f64, f64)>,
    pub(super) levels: Vec<Level>,
    /// What is known of the viewer, where there are reserves.
    known: Option<Known>,
    smallest_ipd: Mm,
}

impl Scale {
    /// The scale that holds all pages and what is known of the viewer.
    pub(super) fn of(set: &SetSpec, rungs: &[Rung]) -> Self {
        let viewer = &set.viewer;
        let zone = viewer.zone.map(|zone| Zone {
            away: 0.0 - zone.away.0,
            toward: zone.toward.0,
            bounds: [zone.away_bound, zone.toward_bound],
        });
        let comfort = viewer.viewing().and_then(|viewing| comfort_zone(&viewing));
        let mut levels = reserves(set);
        let known = rungs.iter().filter_map(|rung| rung.demand).flat_map(|(low, high)| [low, high]);
        let zones = zone.iter().flat_map(|zone| [zone.away, zone.toward]);
        let comforts = comfort.iter().flat_map(|&(low, high)| [low, high]);
        let all = known.chain(zones).chain(comforts).chain(levels.iter().map(|level| level.at));
        let (low, high) = all.fold((0.0_f64, 0.0_f64), |(low, high), pd| (low.min(pd), high.max(pd)));
        let step = step(high - low, 10.0);
        let ends = ((low / step - 0.25).floor() * step, (high / step + 0.25).ceil() * step);
        let smallest_ipd = viewer.ipd_range.0;
        let parallel = viewer.viewing().and_then(|viewing| viewing.demand_of_parallax(smallest_ipd));
        // Eyes are parallel at what is drawn, the base included.
        let parallel = parallel.map(|pd| pd.0 - viewer.base.horizontal.0);
        if let Some(pd) = parallel.filter(|pd| ends.0 <= *pd) {
            levels.push(Level { at: pd, name: PARALLEL, line: Line::DashDotted });
        }
        let known = set.known.reserves().map(|_| set.known);
        Self { ends, step, zone, comfort, levels, known, smallest_ipd }
    }

    /// Where a demand lies in a frame, mm down the page.
    pub(super) fn y(&self, frame: Rect, demand: f64) -> f64 {
        frame.y1 - (demand - self.ends.0) / (self.ends.1 - self.ends.0) * frame.height()
    }

    /// The range of the viewer in words.
    pub(super) fn words(&self, tongue: &Tongue) -> String {
        let Some(Zone { away, toward, bounds }) = self.zone else { return tongue.say("chart-no-range") };
        let [first, second] = bounds.map(|bound| tongue.say(bound_words(bound)));
        let args = [
            ("away", side(away, tongue).into()),
            ("first", first.into()),
            ("toward", side(toward, tongue).into()),
            ("second", second.into()),
        ];
        tongue.tell("chart-range", &args)
    }

    /// Room for the names of lines at the right end, mm.
    pub(super) fn names(&self, composer: &mut Composer<'_>) -> f64 {
        let width = |level: &Level| {
            let name = composer.say(level.name);
            composer.width_of(&name, &SMALL) + NAME_GAP + 0.4
        };
        self.levels.iter().map(width).fold(0.0, f64::max)
    }

    /// What the shades and lines mean.
    pub(super) fn legend(&self, composer: &mut Composer<'_>, width: f64) -> Piece {
        let block = |tone| bar(Rect::new(0.0, -1.5, 9.0, 1.5), tone);
        let stroke = |style| line(&[Point::ZERO, Point::new(9.0, 0.0)], style, LINE, Tone::FULL);
        let tongue = composer.tongue;
        let mut entries = vec![(vec![bar(Rect::new(3.0, -1.6, 6.0, 1.6), BAR)], tongue.say("chart-bar"))];
        let sample = if self.zone.is_some() { vec![block(RANGE)] } else { Vec::new() };
        entries.push((sample, self.words(tongue)));
        if self.comfort.is_some() {
            entries.push((vec![hatch(Rect::new(0.0, -1.5, 9.0, 1.5))], tongue.say("chart-comfort")));
        }
        if let Some(known) = &self.known {
            let ends = |name| {
                let ends = self.ends_of(name, tongue)?;
                Some(tongue.tell("chart-reserve-ends", &[("name", tongue.say(name).into()), ("ends", ends.into())]))
            };
            let ends: Vec<String> = [BLUR, BREAK].into_iter().filter_map(ends).collect();
            let args = [("source", source(known, tongue).into()), ("ends", ends.join(", ").into())];
            entries.push((vec![stroke(Line::Dashed)], tongue.tell("chart-reserves", &args)));
        }
        if self.levels.iter().any(|level| level.name == PARALLEL) {
            let words = tongue.tell("chart-parallel-eyes", &[("ipd", tongue.mm(self.smallest_ipd, 1).into())]);
            entries.push((vec![stroke(Line::DashDotted)], words));
        }
        super::legend(composer, entries, width)
    }

    /// The two ends of a kind of reserve: "13 pd away and 17 pd toward".
    fn ends_of(&self, name: &str, tongue: &Tongue) -> Option<String> {
        let ends: Vec<String> =
            self.levels.iter().filter(|level| level.name == name).map(|level| side(level.at, tongue)).collect();
        (!ends.is_empty()).then(|| tongue.list(&ends))
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
            let label = composer.tongue.number(pd.abs(), 1);
            let label = composer.lines(&label, &style, 8.0);
            nodes.extend(label.moved(frame.x0 - 9.4, y - SMALL.leading.0 * super::HALF).nodes);
        }
        let inside = Style { tone: Tone::QUIET, ..SMALL };
        let foot = frame.y1 - SMALL.leading.0 - 0.2;
        for (id, y) in [("chart-toward", frame.y0 + 0.2), ("chart-away", foot)] {
            let side = composer.say(id);
            nodes.extend(composer.lines(&side, &inside, frame.width()).moved(frame.x0 + 0.6, y).nodes);
        }
        nodes
    }

    /// The lines of reserves and of parallel eyes, with their names at the right end.
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
            let name = composer.say(level.name);
            let room = composer.width_of(&name, &style) + 0.4;
            nodes.extend(composer.lines(&name, &style, room).moved(frame.x1 + NAME_GAP, top).nodes);
        }
        nodes
    }
}

/// Width of the lines of reserves, mm.
const LINE: f64 = 0.22;
/// From the right end of a line to its name, mm.
const NAME_GAP: f64 = 1.2;
/// Messages of the names of lines.
const BLUR: &str = "chart-blur";
const BREAK: &str = "chart-break";
const PARALLEL: &str = "chart-parallel";

/// Demands of 1 degree of disparity on either side.
/// Source: `[Lambooij2009]`.
fn comfort_zone(viewing: &Viewing) -> Option<(f64, f64)> {
    let demand = |degrees: f64| {
        let parallax: Mm = viewing.parallax_of_disparity(Angle::from_degrees(degrees))?;
        viewing.demand_of_parallax(parallax).map(|pd| pd.0)
    };
    let limit = comfort().to_degrees();
    Some((demand(-limit)?, demand(limit)?))
}

/// The blurs and breaks that are known.
fn reserves(set: &SetSpec) -> Vec<Level> {
    let Some(reserves) = set.known.reserves() else { return Vec::new() };
    let levels = |reserve: Reserve, sign: f64| {
        let blur = reserve.blur.map(|pd| Level { at: sign * pd.0, name: BLUR, line: Line::Dashed });
        let breaks = Level { at: sign * reserve.breaks.0, name: BREAK, line: Line::Dashed };
        blur.into_iter().chain([breaks])
    };
    levels(reserves.away, -1.0).chain(levels(reserves.toward, 1.0)).collect()
}

/// Whose reserves they are.
fn source(known: &Known, tongue: &Tongue) -> String {
    match known.norms.map(|norms| norms.name()) {
        Some(name) if known.toward.is_none() && known.away.is_none() => {
            tongue.tell("chart-source-norm", &[("norm", name.into())])
        }
        Some(name) => tongue.tell("chart-source-one-side", &[("norm", name.into())]),
        None => tongue.say("chart-source-found"),
    }
}

/// "3 pd away", "0 pd".
fn side(pd: f64, tongue: &Tongue) -> String {
    let amount = tongue.pd(PrismDioptre(pd), 1);
    match pd {
        _ if tongue.number(pd.abs(), 1) == "0" => amount,
        pd if pd < 0.0 => tongue.tell("demand-away", &[("pd", amount.into())]),
        _ => tongue.tell("demand-toward", &[("pd", amount.into())]),
    }
}

/// What bounds an end, as the id of a message.
fn bound_words(bound: Bound) -> &'static str {
    match bound {
        Bound::Percival => "chart-bound-percival",
        Bound::Sheard => "chart-bound-sheard",
        Bound::Reserve => "chart-bound-reserve",
    }
}
