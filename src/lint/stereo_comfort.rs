//! What: a field of dots that stands more than 1 degree of disparity before or behind the page.
//!
//! Why: pages of dots are for depth, not for turning the eyes far. Past that the conflict between focus and vergence is
//! no longer a minor cause of discomfort, and what does not fuse is not seen in depth.
//!
//! Limit: 1 degree, in `optics::limits`. Source: `[Lambooij2009]`.
//!
//! Way out: ask for less depth; for larger demands there are the kinds that turn the eyes.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::optics::{Viewing, limits};
use crate::solve::{SolvedFeature, SolvedForm, Stand};
use crate::units::{Mm, plain};

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "stereo-comfort",
    doc: "a field of dots stands past the disparity of comfortable depth",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-STEREO-COMFORT";

fn check(input: &Input<'_>) -> Vec<Finding> {
    let features = input.pages.iter().flat_map(|page| page.features.iter().map(move |feature| (page, feature)));
    let Some(viewing) = input.viewer.viewing() else { return Vec::new() };
    let base = input.viewer.base_parallax();
    features.filter_map(|(page, feature)| check_feature(page, feature, &viewing, base)).collect()
}

fn check_feature(page: &Page<'_>, feature: &SolvedFeature, viewing: &Viewing, base: Mm) -> Option<Finding> {
    let SolvedForm::Dots(dots) = &feature.form else { return None };
    let limit = limits::comfort().to_degrees();
    // Counted from the base, which makes up for an eye turn.
    let from_base = |stand: Stand| viewing.disparity_of_parallax(Mm(stand.parallax.0 - base.0));
    let disparity = dots.stands().filter_map(from_base).map(|angle| angle.to_degrees().abs()).fold(0.0, f64::max);
    if disparity <= limit {
        return None;
    }
    let message = format!(
        "`{}` stands up to `{}` deg of disparity from the page, limit `{}` deg",
        feature.id,
        plain(disparity, 2),
        plain(limit, 2)
    );
    let help = format!("ask for at most `{} arcsec` on either side of the page", plain(limit * 3600.0, 0));
    let words = Words { message, label: "deeper than comfortable", help };
    Some(finding(page.id, Severity::Warning, CODE, feature.place, words))
}
