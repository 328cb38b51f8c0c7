//! What: a half-image, mark or frame that reaches past the art field.
//!
//! Why: half-images move apart with depth, so a target that fits by its middle can still leave the field with one eye's
//! part alone; that part would then run into words, or be cut off where one eye still needs it.
//!
//! Limit: the art field, the same on every page format. Source: design choice.
//!
//! Way out: move it, make it smaller, or bring it nearer to the page.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::scene::Eye;
use crate::solve::{SolvedFeature, SolvedForm, half_x};
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "art-field", doc: "a half-image, mark or frame reaches past the art field", codes: &[CODE], check };

const CODE: &str = "E-ART-FIELD";

/// The grid of the solver, mm: less than that is no overhang.
const GRID: f64 = 1e-6;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let features = input.pages.iter().flat_map(|page| page.features.iter().map(move |feature| (page, feature)));
    features.flat_map(|(page, feature)| check_feature(input, page, feature)).collect()
}

/// One finding for each edge of the field that the feature reaches past.
fn check_feature(input: &Input<'_>, page: &Page<'_>, feature: &SolvedFeature) -> Vec<Finding> {
    let (half_width, half_height) = (input.field.0.0 / 2.0, input.field.1.0 / 2.0);
    let Some(area) = area(feature) else { return Vec::new() };
    let edges = [
        ("left", -half_width - area.left),
        ("right", area.right - half_width),
        ("top", -half_height - area.top),
        ("bottom", area.bottom - half_height),
    ];
    let past = edges.into_iter().filter(|&(_, over)| GRID < over);
    past.map(|(edge, over)| {
        let over = plain(over, 3);
        let message = format!(
            "`{}` reaches `{over}` mm past the {edge} edge of the art field of `{}` x `{}` mm",
            feature.id,
            plain(input.field.0.0, 3),
            plain(input.field.1.0, 3),
        );
        let help = format!("move it `{over}` mm off the {edge} edge, make it smaller, or bring it nearer to the page");
        let words = Words { message, label: "reaches past the art field", help };
        finding(page.id, Severity::Error, CODE, feature.place, words)
    })
    .collect()
}

/// What the half-images of a feature cover together, mm from the middle of the field.
struct Area {
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
}

/// The area of a feature over all eyes that see it.
fn area(feature: &SolvedFeature) -> Option<Area> {
    let eyes = || Eye::ALL.into_iter().filter(|&eye| feature.eyes.include(eye));
    let boxes: Vec<Area> = match &feature.form {
        SolvedForm::Shape { extent, .. } => {
            let x = |eye| half_x(feature.at.0, feature.stand.parallax.0, eye);
            eyes().map(|eye| around(x(eye), feature.at.1, extent.0 / 2.0, extent.1 / 2.0)).collect()
        }
        SolvedForm::Path { points, weight, .. } => {
            let reach = weight / 2.0;
            let of_point = |eye, p: &crate::solve::PathPoint| around(half_x(p.x, p.parallax, eye), p.y, reach, reach);
            eyes().flat_map(|eye| points.iter().map(move |p| of_point(eye, p))).collect()
        }
    };
    boxes.into_iter().reduce(|a, b| Area {
        left: a.left.min(b.left),
        right: a.right.max(b.right),
        top: a.top.min(b.top),
        bottom: a.bottom.max(b.bottom),
    })
}

fn around(x: f64, y: f64, across: f64, down: f64) -> Area {
    Area { left: x - across, right: x + across, top: y - down, bottom: y + down }
}
