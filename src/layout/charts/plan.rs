//! The plan view of a page: eyes, page and targets seen from above, to one scale in both directions.
//!
//! The reader looks from left to right, so that the long way of a sheet is the way ahead; the left eye is the upper one.

use kurbo::{Point, Rect};

use super::marks::{apart, bar, hair, line, ring, step, ticks};
use super::view::{Place, Seen, Spot, spots};
use super::{ChartPage, Charts, FOOT, Frame, HALF, SAFE, TOP};
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::{ART_FIELD, CAPTION, SMALL};
use crate::layout::plot::{self, Line, polyline};
use crate::layout::sheet::{Node, Sheet, Tone};
use crate::layout::text::{Align, Style};
use crate::optics::{Viewer, Viewing};
use crate::scene::{Eye, Eyes};
use crate::solve::half_x;
use crate::units::{Mm, PrismDioptre, plain};

/// Room for the labels at the right, mm.
const LABELS: f64 = 72.0;
/// Between the drawing and the labels, mm.
const GAP: f64 = 7.0;
/// Room left of the eyes, mm.
const LEAD: f64 = 11.0;
/// Room for the ruler at the foot, mm.
const RULER: f64 = 12.0;
/// Places past this many page distances lie beyond the sheet.
const FAR: f64 = 1.5;
/// The least way behind the page that is shown, in page distances.
const BEHIND: f64 = 1.1;
/// Radius of an eye, mm. Source: design choice, about that of an adult's eye.
const EYE: f64 = 12.0;
/// What a scale may be: 1 to this.
const SCALES: [f64; 17] = [1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 40.0, 60.0];
/// The most labels; past that those of one depth share one.
const MOST: usize = 14;
/// Width of a target's line, mm.
const TARGET: f64 = 0.9;
/// The shade of a field of dots and of the viewer's range.
const SHADE: Tone = Tone(0.13);

/// How space lies on the sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Plan {
    /// The midpoint of the eyes, sheet mm.
    eyes: Point,
    /// 1 to this.
    pub(super) scale: f64,
    /// The farthest place that is drawn, mm from the eyes.
    far: f64,
    /// The page, mm from the eyes.
    page: f64,
}

impl Plan {
    /// The largest scale at which all spots fit an area; places past [`FAR`] count as on its border.
    pub(super) fn fit(area: Rect, spots: &[Spot], viewer: &Viewer) -> Self {
        let page = viewer.distance.0;
        let farthest = spots.iter().flat_map(Spot::corners).map(|(_, z)| z).fold(page * BEHIND, f64::max);
        let far = farthest.min(page * FAR);
        let wide = spots.iter().flat_map(Spot::corners).map(|(x, z)| x.abs() * (far / z).min(1.0));
        let half = wide.fold((ART_FIELD.width / 2.0).max(viewer.ipd.0 / 2.0 + EYE), f64::max);
        let fits = |scale: &&f64| far / **scale <= area.width() - LEAD && 2.0 * half / **scale <= area.height();
        let scale = SCALES.iter().find(fits).or(SCALES.last()).copied().unwrap_or(1.0);
        Self { eyes: Point::new(area.x0 + LEAD, area.center().y), scale, far, page }
    }

    /// A place on the sheet. What lies beyond is drawn at the border, on its way from the middle of the eyes.
    pub(super) fn at(&self, (x, z): Place) -> Point {
        let share = (self.far / z).min(1.0);
        self.eyes + (z * share / self.scale, x * share / self.scale)
    }

    /// Whether a spot lies beyond the border as a whole.
    fn is_beyond(&self, spot: &Spot) -> bool {
        spot.corners().iter().all(|&(_, z)| self.far < z)
    }
}

/// The sheet of a page.
pub(super) fn sheet(composer: &mut Composer<'_>, charts: &Charts<'_>, page: &ChartPage<'_>) -> Sheet {
    let viewer = &charts.set.viewer;
    composer.sheet.clone_from(&page.page.id);
    let spots = spots(page.solved, viewer).unwrap_or_default();
    let area = Rect::new(SAFE.x0, TOP, SAFE.x1 - LABELS - GAP, FOOT - RULER - 2.0 * CAPTION.leading.0);
    let plan = Plan::fit(area, &spots, viewer);
    let drawing = Drawing { plan, viewer, spots: &spots, area };
    let labels = labels(&spots, viewer);
    let mut nodes = drawing.backdrop();
    nodes.extend(drawing.ways());
    nodes.extend(spots.iter().flat_map(|spot| drawing.spot(spot)));
    nodes.extend(drawing.words(composer));
    nodes.extend(drawing.labels(composer, &labels));
    let all: Vec<&str> = labels.iter().map(|label| label.words.as_str()).collect();
    Frame {
        id: page.page.id.clone(),
        number: page.number,
        title: format!("{} · {}", page.number, page.page.full_title()),
        lead: format!("{} · {} · seen from above, scale 1 : {}", page.page.id, page.page.kind, plain(plan.scale, 1)),
        alt: format!("The two eyes, the page at {} and where its targets stand. {}.", cm(plan.page), all.join("; ")),
        set: charts.set,
    }
    .sheet(composer, nodes)
}

/// Lengths in words: "40 cm".
fn cm(mm: f64) -> String {
    format!("{} cm", plain(mm / 10.0, 1))
}

/// A plan while it is drawn.
struct Drawing<'a> {
    plan: Plan,
    viewer: &'a Viewer,
    spots: &'a [Spot],
    area: Rect,
}

impl Drawing<'_> {
    /// The range of the viewer, the page and the ruler.
    fn backdrop(&self) -> Vec<Node> {
        let mut nodes: Vec<Node> = self.range().into_iter().collect();
        let half = ART_FIELD.width / 2.0;
        let (top, foot) = (self.plan.at((-half, self.plan.page)), self.plan.at((half, self.plan.page)));
        nodes.push(bar(Rect::new(top.x - 0.2, top.y, top.x + 0.2, foot.y), Tone::FULL));
        let y = self.ruler();
        let (start, end) = (Point::new(self.plan.eyes.x, y), Point::new(self.plan.at((0.0, self.plan.far)).x, y));
        nodes.push(hair(start, end, Tone::QUIET));
        for tick in self.ticks() {
            let x = self.plan.at((0.0, tick.max(f64::MIN_POSITIVE))).x;
            nodes.push(hair(Point::new(x, y), Point::new(x, y + 1.2), Tone::QUIET));
        }
        nodes
    }

    /// The places within the range of the viewer, as a shade across the drawing.
    fn range(&self) -> Option<Node> {
        let (zone, viewing, base) = (self.viewer.zone?, self.viewer.viewing()?, self.viewer.base.horizontal.0);
        let place = |pd: f64| viewing.place_of_parallax(viewing.parallax_of_demand(PrismDioptre(pd))?);
        let near = place(base + zone.toward.0)?.0;
        // Past parallel eyes there is no place: then the range goes on to the border and beyond.
        let far = place(base - zone.away.0).map_or(self.plan.far, |mm| mm.0).min(self.plan.far);
        let x = |z| self.plan.at((0.0, z)).x;
        (near < far).then(|| bar(Rect::new(x(near), self.area.y0, x(far), self.area.y1), Tone(0.06)))
    }

    /// How far down the ruler lies.
    fn ruler(&self) -> f64 {
        self.area.y1 + 2.0
    }

    /// The ticks of the ruler, mm from the eyes; its numbers are cm.
    fn ticks(&self) -> Vec<f64> {
        let cm = self.plan.far / 10.0;
        ticks(0.0, cm, step(cm, self.area.width() / 12.0)).into_iter().map(|cm| cm * 10.0).collect()
    }

    /// Eyes, and the lines of sight to the one target that asks most.
    fn ways(&self) -> Vec<Node> {
        let mut nodes = Vec::new();
        if let Some((spot, eyes)) = shown(self.spots, &self.plan).zip(self.half_images()) {
            let target = self.plan.at(spot.middle());
            for (eye, on_page) in eyes {
                nodes.push(hair(eye, target, Tone::QUIET));
                if target.x < on_page.x - 0.3 {
                    nodes.push(line(&[target, on_page], Line::Dotted, 0.15, Tone::QUIET));
                }
                nodes.push(bar(Rect::from_center_size(on_page, (0.5, 1.1)), Tone::FULL));
            }
        }
        let radius = (EYE / self.plan.scale).max(0.6);
        for (_, at) in self.eyes() {
            // The pupil of an eye, not its middle, is where lines of sight begin.
            nodes.push(ring(at - (radius, 0.0), radius, 0.3));
            nodes.push(bar(Rect::from_center_size(at, (0.5, radius * 0.7)), Tone::FULL));
        }
        nodes
    }

    /// The pupils.
    fn eyes(&self) -> [(Eye, Point); 2] {
        let half = self.viewer.ipd.0 / 2.0 / self.plan.scale;
        [(Eye::Left, self.plan.eyes - (0.0, half)), (Eye::Right, self.plan.eyes + (0.0, half))]
    }

    /// For each eye its pupil, and where its half-image of the shown target lies on the page.
    fn half_images(&self) -> Option<[(Point, Point); 2]> {
        let spot = shown(self.spots, &self.plan)?;
        let viewing = self.viewer.viewing()?;
        let (x, z) = spot.middle();
        let parallax = viewing.parallax_of_place(Mm(z))?.0;
        let across = x * self.plan.page / z;
        Some(self.eyes().map(|(eye, at)| (at, self.plan.at((half_x(across, parallax, eye), self.plan.page)))))
    }

    /// A target, with its bar for the ipds of the audience.
    fn spot(&self, spot: &Spot) -> Vec<Node> {
        let mut nodes = Vec::new();
        if self.plan.is_beyond(spot) {
            let (tip, eyes) = (self.plan.at(spot.middle()), self.plan.eyes);
            let way = (tip - eyes) / (tip - eyes).hypot().max(1e-9);
            nodes.push(arrow(tip, way));
            return nodes;
        }
        let alone = spot.eyes != Eyes::Both;
        let style = if alone { Line::Dotted } else { Line::Solid };
        let points: Vec<Point> = match &spot.form {
            Seen::Across(a, b) => vec![self.plan.at(*a), self.plan.at(*b)],
            Seen::Line(points) => points.iter().map(|&at| self.plan.at(at)).collect(),
            Seen::Strip(corners) => {
                let mut corners: Vec<Point> = corners.iter().map(|&at| self.plan.at(at)).collect();
                let mut path = polyline(&corners);
                path.close_path();
                nodes.push(plot::fill(path, SHADE));
                corners.extend(corners.first().copied());
                corners
            }
        };
        let weight = if matches!(spot.form, Seen::Strip(_)) { TARGET * 0.5 } else { TARGET };
        nodes.push(line(&points, style, if alone { weight * 0.6 } else { weight }, Tone::FULL));
        nodes.extend(self.spread(spot));
        nodes
    }

    /// Where the middle of a spot stands for the smallest and the largest ipd: a bar along the line of sight, with ends.
    fn spread(&self, spot: &Spot) -> Vec<Node> {
        let middle = spot.middle();
        let Some(parallax) = self.viewer.viewing().and_then(|viewing| viewing.parallax_of_place(Mm(middle.1))) else {
            return Vec::new();
        };
        let end = |viewing: Option<Viewing>| {
            let z = viewing?.place_of_parallax(parallax)?.0;
            Some(self.plan.at((middle.0 * z / middle.1, z)))
        };
        let (Some(a), Some(b)) = (end(self.viewer.smallest()), end(self.viewer.largest())) else { return Vec::new() };
        if (b - a).hypot() < 0.4 {
            return Vec::new();
        }
        let across = (b - a) / (b - a).hypot() * 1.0;
        let across = kurbo::Vec2::new(-across.y, across.x);
        let mut nodes = vec![line(&[a, b], Line::Solid, 0.25, Tone::FULL)];
        nodes.extend([a, b].map(|end| line(&[end - across, end + across], Line::Solid, 0.25, Tone::FULL)));
        nodes
    }

    /// The numbers of the ruler, the names of the eyes, and the legend.
    fn words(&self, composer: &mut Composer<'_>) -> Vec<Node> {
        let centre = Style { align: Align::Center, tone: Tone::FULL, ..SMALL };
        let y = self.ruler() + 1.2;
        let mut nodes = Vec::new();
        for tick in self.ticks() {
            let x = self.plan.at((0.0, tick.max(f64::MIN_POSITIVE))).x;
            nodes.extend(composer.lines(&plain(tick / 10.0, 1), &centre, 10.0).moved(x - 5.0, y).nodes);
        }
        let ruler = format!("cm from the eyes; the page at {}", cm(self.plan.page));
        nodes.extend(composer.lines(&ruler, &centre, self.area.width()).moved(self.area.x0, y + 3.5).nodes);
        let radius = (EYE / self.plan.scale).max(0.6);
        let [(_, left), (_, right)] = self.eyes();
        let start = Style { tone: Tone::FULL, ..SMALL };
        let above = left.y - radius - SMALL.leading.0 - 0.3;
        nodes.extend(composer.lines("left eye", &start, 20.0).moved(self.area.x0, above).nodes);
        nodes.extend(composer.lines("right eye", &start, 20.0).moved(self.area.x0, right.y + radius + 0.3).nodes);
        let legend = composer.lines(&self.legend(), &CAPTION, SAFE.width());
        nodes.extend(legend.moved(SAFE.x0, FOOT - 2.0 * CAPTION.leading.0 - 0.4).nodes);
        nodes
    }

    fn legend(&self) -> String {
        let (low, high) = self.viewer.ipd_range;
        let mut parts = vec![format!("Long line: the art field of the page, {} wide", cm(ART_FIELD.width))];
        if low != high {
            parts.push(format!("bars with ends: ipds from {} to {} mm", plain(low.0, 1), plain(high.0, 1)));
        }
        if let Some(spot) = shown(self.spots, &self.plan) {
            parts.push(format!("thin lines: both eyes look at {}", spot.id));
        }
        if self.spots.iter().any(|spot| spot.eyes != Eyes::Both) {
            parts.push("dotted: one eye alone".to_owned());
        }
        if self.viewer.zone.is_some() {
            parts.push("shade: the range of the viewer".to_owned());
        }
        format!("{}.", parts.join("; "))
    }

    /// The labels at the right, each with a leader to its spot.
    fn labels(&self, composer: &mut Composer<'_>, labels: &[Label]) -> Vec<Node> {
        let x = SAFE.x1 - LABELS;
        let mut set: Vec<(Point, Piece)> =
            labels.iter().map(|label| (self.end_of(label), composer.lines(&label.words, &CAPTION, LABELS))).collect();
        set.sort_by(|(a, _), (b, _)| a.y.total_cmp(&b.y).then(a.x.total_cmp(&b.x)));
        let wanted: Vec<(f64, f64)> = set.iter().map(|(at, piece)| (at.y, piece.height + 0.8)).collect();
        let tops = apart(&wanted, (self.area.y0, FOOT - 2.0 * CAPTION.leading.0 - 1.0));
        let mut nodes = Vec::new();
        if tops.first().is_some_and(|top| *top < self.area.y0 - 1e-6) {
            let help = "give the targets shorter labels, or fewer depths";
            composer.problem("its labels do not fit beside its plan view".to_owned(), help);
        }
        for ((at, piece), top) in set.into_iter().zip(tops) {
            let y = top + CAPTION.leading.0 * HALF;
            nodes.push(line(&[at, Point::new(x - 4.0, y), Point::new(x - 1.2, y)], Line::Solid, 0.1, Tone::LINE));
            nodes.extend(piece.moved(x, top).nodes);
        }
        nodes
    }

    /// Where the leader of a label ends: at the spot's end nearest to the labels.
    fn end_of(&self, label: &Label) -> Point {
        let middle = self.plan.at(label.at);
        if label.is_strip { middle } else { middle + (TARGET / 2.0, 0.0) }
    }
}

/// The target that the lines of sight lead to: of those that both eyes see and that the sheet holds, the one that asks
/// most.
fn shown<'a>(spots: &'a [Spot], plan: &Plan) -> Option<&'a Spot> {
    let ask = |spot: &Spot| (spot.middle().1 - plan.page).abs();
    let held = |spot: &&Spot| spot.eyes == Eyes::Both && spot.middle().1 <= plan.far;
    spots.iter().filter(held).reduce(|best, spot| if ask(best) < ask(spot) - 1e-9 { spot } else { best })
}

/// An arrowhead with its tip at a point.
fn arrow(tip: Point, way: kurbo::Vec2) -> Node {
    let across = kurbo::Vec2::new(-way.y, way.x);
    let mut path = polyline(&[tip, tip - way * 3.2 + across * 1.3, tip - way * 3.2 - across * 1.3]);
    path.close_path();
    plot::fill(path, Tone::FULL)
}

/// The words beside a spot, or beside all spots of one depth.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Label {
    pub(super) words: String,
    at: Place,
    is_strip: bool,
}

/// One label a spot, while there is room; else one for each depth.
pub(super) fn labels(spots: &[Spot], viewer: &Viewer) -> Vec<Label> {
    let depth = |spot: &Spot| (depth_words(spot, viewer), spot.eyes);
    let mut groups: Vec<Vec<&Spot>> = Vec::new();
    for spot in spots {
        let shared = MOST < spots.len();
        match groups.iter_mut().find(|group| shared && group.first().is_some_and(|first| depth(first) == depth(spot))) {
            Some(group) => group.push(spot),
            None => groups.push(vec![spot]),
        }
    }
    groups.iter().filter_map(|group| label(group, viewer)).collect()
}

fn label(group: &[&Spot], viewer: &Viewer) -> Option<Label> {
    let first = group.first()?;
    let names: Vec<&str> = group.iter().take(3).map(|spot| spot.id.as_str()).collect();
    let more =
        if names.len() < group.len() { format!(" and {} more", group.len() - names.len()) } else { String::new() };
    let eyes = match first.eyes {
        Eyes::Both => "",
        Eyes::Left => " (left eye)",
        Eyes::Right => " (right eye)",
    };
    let words = format!("{}{more}{eyes}: {}", names.join(", "), depth_words(first, viewer));
    Some(Label { words, at: first.middle(), is_strip: matches!(first.form, Seen::Strip(_)) })
}

/// How deep a spot stands: "4.5 cm toward, 2 pd", "3 cm toward to 2 cm away, 1.8 to -1 pd".
fn depth_words(spot: &Spot, viewer: &Viewer) -> String {
    let (near, far) = spot.parallax;
    let Some(viewing) = viewer.viewing() else { return String::new() };
    let one = |parallax: f64| {
        let depth = viewing.depth_of_parallax(Mm(parallax)).map_or(0.0, |mm| mm.0);
        let demand = viewing.demand_of_parallax(Mm(parallax)).map_or(0.0, |pd| pd.0.abs());
        match plain(depth.abs() / 10.0, 1) {
            amount if amount == "0" && plain(demand, 2) == "0" => "on the page".to_owned(),
            amount => {
                let side = if depth < 0.0 { "toward" } else { "away" };
                format!("{amount} cm {side} ({} pd)", plain(demand, 2))
            }
        }
    };
    let (near, far) = (one(near), one(far));
    if near == far { near } else { format!("{near} to {far}") }
}
