//! The plan view of a page: eyes, page and targets seen from above, to one scale in both directions.
//!
//! The reader looks from left to right, so that the long way of a sheet is the way ahead; the left eye is the upper one.

use kurbo::{Circle, Point, Rect, Shape as _};

use super::labels::{self, LABELS, Label};
use super::marks::{bar, hair, line, ring, step, ticks};
use super::view::{Place, Seen, Spot, spots};
use super::{ChartPage, Charts, FOOT, Frame, SAFE, TOP, short};
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::{ART_FIELD, CAPTION, SMALL};
use crate::layout::plot::{self, Line, polyline};
use crate::layout::sheet::{Node, Sheet, Tone};
use crate::layout::text::{Align, Style};
use crate::layout::things;
use crate::optics::{Viewer, Viewing};
use crate::scene::{Eye, Eyes};
use crate::solve::half_x;
use crate::units::{Mm, PrismDioptre};

/// Between the drawing and the labels, mm.
const GAP: f64 = 7.0;
/// Room left of the eyes, mm.
const LEAD: f64 = 11.0;
/// Room for the ruler at the foot, mm.
const RULER: f64 = 12.0;
/// Where the legend ends, mm.
const LEGEND: f64 = FOOT - 1.4;
/// Places past this many page distances lie beyond the sheet.
const FAR: f64 = 1.5;
/// The least way behind the page that is shown, in page distances.
const BEHIND: f64 = 1.1;
/// Radius of an eye, mm. Source: design choice, about that of an adult's eye.
const EYE: f64 = 12.0;
/// What a scale may be: 1 to this.
const SCALES: [f64; 17] = [1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 40.0, 60.0];
/// Width of a target's line, mm.
const TARGET: f64 = 0.9;
/// Radius of a dot that stands for a target too narrow to be seen, mm.
const DOT: f64 = 0.8;
/// The shade of a field of dots.
const SHADE: Tone = Tone(0.16);
/// The shade of the viewer's range.
const RANGE: Tone = Tone(0.06);

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
    let two_lines = 2.0 * CAPTION.leading.0;
    let mut drawing = Drawing::above(two_lines, viewer, &spots);
    let mut legend = drawing.legend(composer);
    if two_lines < legend.height - 1e-6 {
        // Once more with the room that the words of the legend take.
        drawing = Drawing::above(legend.height, viewer, &spots);
        legend = drawing.legend(composer);
    }
    let (plan, area) = (drawing.plan, drawing.area);
    let foot = LEGEND - legend.height.max(two_lines);
    let tongue = composer.tongue;
    let labels = labels::of(&spots, viewer, tongue);
    let mut nodes = drawing.backdrop();
    nodes.extend(drawing.ways());
    nodes.extend(spots.iter().flat_map(|spot| drawing.spot(spot)));
    nodes.extend(drawing.words(composer));
    nodes.extend(legend.moved(SAFE.x0, foot).nodes);
    let middle = |label: &Label| plan.at(label.at) + (if label.is_strip { 0.0 } else { TARGET / 2.0 }, 0.0);
    nodes.extend(labels::place(composer, &labels, middle, Rect::new(SAFE.x1 - LABELS, area.y0, SAFE.x1, foot - 0.4)));
    let all: Vec<String> = labels.iter().map(|label| label.words(tongue)).collect();
    let lead = [
        ("id", (&page.page.id).into()),
        ("kind", page.page.kind.into()),
        ("scale", tongue.number(plan.scale, 1).into()),
    ];
    let picture = [("distance", tongue.cm(Mm(plan.page), 1).into()), ("labels", things::apart(&all, tongue).into())];
    Frame {
        id: page.page.id.clone(),
        number: page.number,
        title: format!("{} · {}", page.number, page.page.full_title()),
        lead: tongue.tell("chart-plan-lead", &lead),
        alt: tongue.tell("chart-plan-picture", &picture),
        set: charts.set,
    }
    .sheet(composer, nodes)
}

/// A plan while it is drawn.
struct Drawing<'a> {
    plan: Plan,
    viewer: &'a Viewer,
    spots: &'a [Spot],
    area: Rect,
}

impl<'a> Drawing<'a> {
    /// The drawing above a legend of this height, mm.
    fn above(legend: f64, viewer: &'a Viewer, spots: &'a [Spot]) -> Self {
        let area = Rect::new(SAFE.x0, TOP, SAFE.x1 - LABELS - GAP, LEGEND - legend - RULER);
        Self { plan: Plan::fit(area, spots, viewer), viewer, spots, area }
    }

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
        let (near, far) = range(self.viewer)?;
        let x = |z: f64| self.plan.at((0.0, z.min(self.plan.far))).x;
        (near < self.plan.far).then(|| bar(Rect::new(x(near), self.area.y0, x(far), self.area.y1), RANGE))
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
            let target = self.plan.at(spot.middle);
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
        let (x, z) = spot.middle;
        let parallax = viewing.parallax_of_place(Mm(z))?.0;
        let across = x * self.plan.page / z;
        Some(self.eyes().map(|(eye, at)| (at, self.plan.at((half_x(across, parallax, eye), self.plan.page)))))
    }

    /// A target, with its bar for the ipds of the audience.
    fn spot(&self, spot: &Spot) -> Vec<Node> {
        let mut nodes = Vec::new();
        if self.plan.is_beyond(spot) {
            let (tip, eyes) = (self.plan.at(spot.middle), self.plan.eyes);
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
        if matches!(spot.form, Seen::Across(..)) && (points[1] - points[0]).hypot() < 2.0 * DOT {
            nodes.push(plot::fill(Circle::new(self.plan.at(spot.middle), DOT).to_path(0.02), Tone::FULL));
        }
        nodes.push(line(&points, style, if alone { weight * 0.6 } else { weight }, Tone::FULL));
        if !alone {
            nodes.extend(self.spread(spot));
        }
        nodes
    }

    /// Where the middle of a spot stands for the smallest and the largest ipd: a bar along the line of sight, with ends.
    fn spread(&self, spot: &Spot) -> Vec<Node> {
        let middle = spot.middle;
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

    /// The numbers of the ruler, and the names of the eyes.
    fn words(&self, composer: &mut Composer<'_>) -> Vec<Node> {
        let centre = Style { align: Align::Center, tone: Tone::FULL, ..SMALL };
        let y = self.ruler() + 1.2;
        let mut nodes = Vec::new();
        for tick in self.ticks() {
            let x = self.plan.at((0.0, tick.max(f64::MIN_POSITIVE))).x;
            let number = composer.tongue.number(tick / 10.0, 1);
            nodes.extend(composer.lines(&number, &centre, 10.0).moved(x - 5.0, y).nodes);
        }
        let distance = composer.tongue.cm(Mm(self.plan.page), 1);
        let ruler = composer.tell("chart-ruler", &[("distance", distance.into())]);
        nodes.extend(composer.lines(&ruler, &centre, self.area.width()).moved(self.area.x0, y + 3.5).nodes);
        let radius = (EYE / self.plan.scale).max(0.6);
        let [(_, left), (_, right)] = self.eyes();
        let start = Style { tone: Tone::FULL, ..SMALL };
        let above = left.y - radius - SMALL.leading.0 - 0.3;
        for (id, y) in [("chart-left-eye", above), ("chart-right-eye", right.y + radius + 0.3)] {
            let eye = composer.say(id);
            nodes.extend(composer.lines(&eye, &start, self.area.width()).moved(self.area.x0, y).nodes);
        }
        nodes
    }

    /// What lines and shades mean.
    fn legend(&self, composer: &mut Composer<'_>) -> Piece {
        let (low, high) = self.viewer.ipd_range;
        let tongue = composer.tongue;
        let cm = |mm: f64| tongue.cm(Mm(mm), 1);
        let mut parts = vec![tongue.tell("chart-art-field", &[("width", cm(ART_FIELD.width).into())])];
        if low != high {
            let ends = [("low", tongue.number(low.0, 1).into()), ("high", tongue.mm(high, 1).into())];
            parts.push(tongue.tell("chart-ipds", &ends));
        }
        if let Some(spot) = shown(self.spots, &self.plan) {
            let name = short(composer, &spot.id, &CAPTION, 60.0);
            parts.push(tongue.tell("chart-lines", &[("name", name.into())]));
        }
        if self.spots.iter().any(|spot| spot.eyes != Eyes::Both) {
            parts.push(tongue.say("chart-dotted"));
        }
        if self.spots.iter().any(|spot| self.plan.is_beyond(spot)) {
            parts.push(tongue.say("chart-arrowhead"));
        }
        if let Some((near, far)) = range(self.viewer) {
            let near = ("near", cm(near).into());
            parts.push(match far.is_finite() {
                true => tongue.tell("chart-shade", &[near, ("far", cm(far).into())]),
                false => tongue.tell("chart-shade-parallel", &[near]),
            });
        }
        composer.lines(&format!("{}.", things::apart(&parts, tongue)), &CAPTION, SAFE.width())
    }
}

/// The target that the lines of sight lead to: of those that both eyes see and that the sheet holds, the one that asks
/// most.
fn shown<'a>(spots: &'a [Spot], plan: &Plan) -> Option<&'a Spot> {
    let ask = |spot: &Spot| (spot.middle.1 - plan.page).abs();
    let held = |spot: &&Spot| spot.eyes == Eyes::Both && spot.middle.1 <= plan.far;
    spots.iter().filter(held).reduce(|best, spot| if ask(best) < ask(spot) - 1e-9 { spot } else { best })
}

/// The nearest and the farthest place within the range of the viewer, mm from the eyes. Past parallel eyes there is no
/// place: then the far end is infinite.
fn range(viewer: &Viewer) -> Option<(f64, f64)> {
    let (zone, viewing) = (viewer.zone?, viewer.viewing()?);
    let place = |pd: f64| viewing.place_of_parallax(viewing.parallax_of_demand(PrismDioptre(pd))?);
    Some((place(zone.toward.0)?.0, place(0.0 - zone.away.0).map_or(f64::INFINITY, |mm| mm.0)))
}

/// An arrowhead with its tip at a point.
fn arrow(tip: Point, way: kurbo::Vec2) -> Node {
    let across = kurbo::Vec2::new(-way.y, way.x);
    let mut path = polyline(&[tip, tip - way * 3.2 + across * 1.3, tip - way * 3.2 - across * 1.3]);
    path.close_path();
    plot::fill(path, Tone::FULL)
}
