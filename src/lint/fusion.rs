//! What: on a page about depth, neighbours whose depths differ by more than fuses without a turn of the eyes.
//!
//! Why: such a page asks which of two stands nearer. Where the difference is too large for both to be single at once, the
//! answer comes from double images and not from depth.
//!
//! Limit: the disparity that fuses for the size of the smaller of the two, and at least the 1 degree of comfortable depth;
//! that the larger of both counts is a design choice, and so is that neighbours lie within 5 degrees, near enough to be
//! seen at one glance. What dots show past 1 degree from the page is told by another rule.
//! Source: `[Schor1984]`, `[Qin2006]`, `[Lambooij2009]`.
//!
//! Way out: bring their depths together, or draw them larger.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::optics::reserves::fusion_of_target;
use crate::optics::{Viewing, limits};
use crate::scene::{Eyes, Role};
use crate::solve::{SolvedDots, SolvedFeature, SolvedForm, Stand};
use crate::units::{Angle, Mm, plain};

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "fusion",
    doc: "on a page about depth, neighbours differ by more than fuses without a turn of the eyes",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-FUSION";
/// How far apart the middles of neighbours are at most, degrees.
const GLANCE: f64 = 5.0;

/// Two neighbours.
struct Pair<'a> {
    names: [&'a str; 2],
    /// Between their disparities, arcsec.
    difference: f64,
    /// What fuses, arcsec.
    limit: f64,
    feature: &'a SolvedFeature,
}

fn check(input: &Input<'_>) -> Vec<Finding> {
    let Some(viewing) = input.viewer.viewing() else { return Vec::new() };
    let depth = input.pages.iter().filter(|page| page.graded.strand == "depth");
    depth.filter_map(|page| check_page(page, &viewing, input.viewer.base_parallax())).collect()
}

/// The pair of a page that is farthest past its limit.
fn check_page(page: &Page<'_>, viewing: &Viewing, base: Mm) -> Option<Finding> {
    let pairs = drawn(page, viewing).into_iter().chain(dots(page, viewing, base));
    let past = pairs.filter(|pair| pair.limit < pair.difference);
    let worst = past.reduce(|a, b| if a.difference / a.limit < b.difference / b.limit { b } else { a })?;
    let degrees = |arcsec: f64| plain(arcsec / 3600.0, 2);
    let message = format!(
        "`{}` and `{}` on `{}` differ by `{}` deg of disparity: past `{}` deg, which fuses at their size without a turn of the \
         eyes",
        worst.names[0],
        worst.names[1],
        page.id,
        degrees(worst.difference),
        degrees(worst.limit),
    );
    let help =
        format!("keep their difference at or below `{} arcsec`, or draw them larger", plain(worst.limit.floor(), 0));
    let words = Words { message, label: "too far apart in depth to be single at once", help };
    Some(finding(page.id, Severity::Warning, CODE, worst.feature.place, words))
}

/// Each target with the one that is nearest to it on the page.
fn drawn<'a>(page: &Page<'a>, viewing: &Viewing) -> Vec<Pair<'a>> {
    let fused = |f: &&SolvedFeature| {
        f.role == Role::Target && f.eyes == Eyes::Both && matches!(f.form, SolvedForm::Shape { .. })
    };
    let targets: Vec<&SolvedFeature> = page.features.iter().filter(fused).collect();
    let apart = |a: &SolvedFeature, b: &SolvedFeature| libm::hypot(a.at.0 - b.at.0, a.at.1 - b.at.1);
    let Some(glance) = viewing.length_of_angle(Angle::from_degrees(GLANCE)) else { return Vec::new() };
    let mut pairs = Vec::new();
    for (i, &a) in targets.iter().enumerate() {
        let others = targets.iter().enumerate().filter(|(j, _)| *j != i).map(|(_, b)| *b);
        let others = others.filter(|b| apart(a, b) <= glance.0);
        let Some(b) = others.min_by(|b, c| apart(a, b).total_cmp(&apart(a, c))) else { continue };
        let difference = (a.stand.disparity.to_arcsec() - b.stand.disparity.to_arcsec()).abs();
        let size = longer_side(a).min(longer_side(b));
        let Some(limit) = limit(size, viewing) else { continue };
        pairs.push(Pair { names: [&a.id, &b.id], difference, limit, feature: a });
    }
    pairs
}

/// Each figure in dots with the ground around it, where no depth is past that of comfort by itself.
fn dots<'a>(page: &Page<'a>, viewing: &Viewing, base: Mm) -> Vec<Pair<'a>> {
    let comfort = limits::comfort().to_arcsec();
    let mut pairs = Vec::new();
    for feature in page.features {
        let SolvedForm::Dots(dots) = &feature.form else { continue };
        let from_base = |stand: Stand| viewing.disparity_of_parallax(Mm(stand.parallax.0 - base.0));
        let comfortable = dots.stands().filter_map(from_base).all(|angle| angle.to_arcsec().abs() <= comfort);
        for figure in dots.figures.iter().filter(|_| comfortable) {
            let Some(limit) = limit(figure.extent.0.max(figure.extent.1), viewing) else { continue };
            let difference = difference(dots, figure.stands.map(|stand| stand.disparity.to_arcsec()));
            pairs.push(Pair { names: [&figure.id, &feature.id], difference, limit, feature });
        }
    }
    pairs
}

/// The largest difference between the ends of a figure and those of its ground, arcsec.
fn difference(dots: &SolvedDots, figure: [f64; 2]) -> f64 {
    let ground = dots.ground.map(|stand| stand.disparity.to_arcsec());
    let between = |a: f64| ground.map(|b| (a - b).abs()).into_iter().fold(0.0, f64::max);
    between(figure[0]).max(between(figure[1]))
}

/// What fuses at this size on the page, arcsec.
fn limit(size: f64, viewing: &Viewing) -> Option<f64> {
    let of_size = fusion_of_target(viewing.angle_of_length(Mm(size))?)?;
    Some(of_size.to_arcsec().max(limits::comfort().to_arcsec()))
}

fn longer_side(feature: &SolvedFeature) -> f64 {
    match &feature.form {
        SolvedForm::Shape { extent, .. } => extent.0.max(extent.1),
        SolvedForm::Path { .. } | SolvedForm::Strokes { .. } | SolvedForm::Dots(_) => 0.0,
    }
}
