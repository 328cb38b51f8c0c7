//! What: something to look at that stands nearer than the reader's near point.
//!
//! Why: nearer than their near point the two eyes of this reader do not hold anything single; the page cannot be done. Places count from the base.
//!
//! Limit: `near_point` of `[viewer]`, a professional's finding. Source: `[Howard2012]` for the place of a parallax.
//!
//! Way out: ask for less depth toward.

use super::{Finding, Input, Rule, Words, finding, intended_range, largest_by_place};
use crate::diagnostics::Severity;
use crate::optics::reserves::is_nearer_than_near_point;
use crate::solve::is_looked_at;
use crate::units::{Mm, plain};

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "near-point",
    doc: "something to look at stands nearer than the reader's near point",
    codes: &[CODE],
    check,
};

const CODE: &str = "E-NEAR-POINT";
/// Rounding that a place may have against the limit, mm: the grid of the solver at the nearest place of a page.
const ROUNDING: f64 = 1e-3;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let (Some(viewing), Some(limit)) = (input.viewer.viewing(), input.near_point) else { return Vec::new() };
    let mut findings = Vec::new();
    for page in input.pages {
        // Larger is nearer, so that the nearest of a place is kept.
        let nearness = |feature: &_| {
            let place = viewing.place_of_parallax(Mm(intended_range(feature, input.viewer).0))?;
            let nearer = is_nearer_than_near_point(Mm(place.0 + ROUNDING), limit);
            (nearer && is_looked_at(feature)).then_some(limit.0 - place.0)
        };
        for (feature, nearer) in largest_by_place(page, nearness) {
            let message = format!(
                "`{}` stands `{}` mm before the eyes: nearer than the near point of the reader, `{}` mm",
                feature.id,
                plain(limit.0 - nearer, 1),
                plain(limit.0, 1),
            );
            let help = format!("ask for at most `{} mm toward`", plain((viewing.distance().0 - limit.0).max(0.0), 1));
            let words = Words { message, label: "nearer than the near point", help };
            findings.push(finding(page.id, Severity::Error, CODE, feature.place, words));
        }
    }
    findings
}
