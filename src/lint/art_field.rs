//! What: a half-image, mark or frame that reaches past the art field.
//!
//! Why: half-images move apart with depth, so a target that fits by its middle can still leave the field with one eye's
//! part alone; that part would then run into words, or be cut off where one eye still needs it. A base moves the
//! pictures of both eyes as wholes, sideways and in height, and counts in full.
//!
//! Limit: the art field, the same on every page format. Source: design choice.
//!
//! Way out: move it, make it smaller, or bring it nearer to the page.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::optics::Viewer;
use crate::scene::Eye;
use crate::solve::{PathPoint, SolvedFeature, SolvedForm, half_x};
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "art-field", doc: "a half-image, mark or frame reaches past the art field", codes: &[CODE], check };

const CODE: &str = "E-ART-FIELD";

/// The grid of the solver, mm: less than that is no overhang.
const GRID: f64 = 1e-6;

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.pages.iter().flat_map(|page| check_page(input, page)).collect()
}

/// How far a feature reaches past an edge of the field, mm.
struct Overhang<'a> {
    feature: &'a SolvedFeature,
    edge: &'static str,
    past: f64,
}

/// For each edge that is passed, the feature that reaches farthest of all that one place in the spec asked for: a
/// target and its frame are one finding.
fn check_page(input: &Input<'_>, page: &Page<'_>) -> Vec<Finding> {
    let mut farthest: Vec<Overhang<'_>> = Vec::new();
    for over in page.features.iter().flat_map(|feature| overhangs(input, feature)) {
        let place = over.feature.place;
        let known = farthest.iter_mut().find(|o| place.is_some() && o.feature.place == place && o.edge == over.edge);
        match known {
            Some(known) if known.past < over.past => *known = over,
            Some(_) => {}
            None => farthest.push(over),
        }
    }
    farthest.iter().map(|over| report(input, page, over)).collect()
}

fn overhangs<'a>(input: &Input<'_>, feature: &'a SolvedFeature) -> Vec<Overhang<'a>> {
    let (half_width, half_height) = (input.field.0.0 / 2.0, input.field.1.0 / 2.0);
    let Some(area) = area(feature, input.viewer) else { return Vec::new() };
    let edges = [
        ("left", -half_width - area.left),
        ("right", area.right - half_width),
        ("top", -half_height - area.top),
        ("bottom", area.bottom - half_height),
    ];
    let past = edges.into_iter().filter(|&(_, past)| GRID < past);
    past.map(|(edge, past)| Overhang { feature, edge, past }).collect()
}

fn report(input: &Input<'_>, page: &Page<'_>, over: &Overhang<'_>) -> Finding {
    let (Overhang { feature, edge, .. }, past) = (over, plain(over.past, 3));
    let with_base = if input.viewer.base.is_none() { "" } else { ", with the base" };
    let message = format!(
        "`{}` reaches `{past}` mm past the {edge} edge of the art field of `{}` x `{}` mm{with_base}",
        feature.id,
        plain(input.field.0.0, 3),
        plain(input.field.1.0, 3),
    );
    let help = format!("move it `{past}` mm off the {edge} edge, make it smaller, or bring it nearer to the page");
    let words = Words { message, label: "reaches past the art field", help };
    finding(page.id, Severity::Error, CODE, feature.place, words)
}

/// What the half-images of a feature cover together, mm from the middle of the field.
struct Area {
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
}

/// The area of a feature over all eyes that see it, with the base.
fn area(feature: &SolvedFeature, viewer: &Viewer) -> Option<Area> {
    let eyes = || Eye::ALL.into_iter().filter(|&eye| feature.eyes.include(eye));
    let base = viewer.base_parallax().0;
    let boxes: Vec<Area> = match &feature.form {
        SolvedForm::Shape { extent, .. } => {
            let x = |eye| half_x(feature.at.0, feature.stand.parallax.0, eye);
            eyes().map(|eye| around(x(eye), feature.at.1, extent.0 / 2.0, extent.1 / 2.0)).collect()
        }
        SolvedForm::Strokes { strokes, weight } => {
            let reach = weight / 2.0;
            let x = |eye, x: f64| half_x(x, feature.stand.parallax.0, eye);
            let ends = |eye| strokes.iter().flatten().map(move |end| around(x(eye, end.0), end.1, reach, reach));
            eyes().flat_map(ends).collect()
        }
        // Rows end where the field ends; the field rides on the base.
        SolvedForm::Dots(dots) => {
            let x = |eye| half_x(feature.at.0, base, eye);
            eyes().map(|eye| around(x(eye), feature.at.1, dots.extent.0 / 2.0, dots.extent.1 / 2.0)).collect()
        }
        SolvedForm::Path { points, weight, .. } => {
            let reach = weight / 2.0;
            let of_point = |eye, p: &PathPoint| around(half_x(p.x, p.parallax, eye), p.y, reach, reach);
            eyes().flat_map(|eye| points.iter().map(move |p| of_point(eye, p))).collect()
        }
    };
    let whole = boxes.into_iter().reduce(|a, b| Area {
        left: a.left.min(b.left),
        right: a.right.max(b.right),
        top: a.top.min(b.top),
        bottom: a.bottom.max(b.bottom),
    })?;
    // The left eye's picture lies lower by half of the rise, the right eye's higher.
    let rise = viewer.base_rise().0 / 2.0;
    let downs = || eyes().map(|eye| if eye == Eye::Left { rise } else { -rise });
    let (up, down) = (downs().fold(f64::INFINITY, f64::min), downs().fold(f64::NEG_INFINITY, f64::max));
    Some(Area { top: whole.top + up, bottom: whole.bottom + down, ..whole })
}

fn around(x: f64, y: f64, across: f64, down: f64) -> Area {
    Area { left: x - across, right: x + across, top: y - down, bottom: y + down }
}
