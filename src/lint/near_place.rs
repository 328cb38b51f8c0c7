//! What: a depth toward the reader that stands nearer than half the viewing distance.
//!
//! Why: there the eyes turn in by more than twice as much as for the page while they still have to focus on the page;
//! few beginners get there, and a printed promise of such a place will fail for most.
//!
//! A base makes up for an eye turn and asks nothing of its own: places count from it.
//!
//! Limit: half the viewing distance, which is a parallax of one ipd. Source: design choice.
//!
//! Way out: ask for less depth toward, or a longer viewing distance.

use super::{Finding, Input, Rule, Words, finding, intended_range, largest_by_place};
use crate::diagnostics::Severity;
use crate::units::{Mm, plain};

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "near-place",
    doc: "a depth toward the reader stands nearer than half the viewing distance",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-NEAR-PLACE";

fn check(input: &Input<'_>) -> Vec<Finding> {
    let Some(viewing) = input.viewer.viewing() else { return Vec::new() };
    let half = viewing.distance().0 / 2.0;
    let mut findings = Vec::new();
    for page in input.pages {
        // Larger is nearer, so that the nearest of a place is kept.
        let nearness = |feature: &_| {
            let place = viewing.place_of_parallax(Mm(intended_range(feature, input.viewer).0))?;
            Some(half - place.0).filter(|&nearer| 0.0 < nearer)
        };
        for (feature, nearer) in largest_by_place(page, nearness) {
            let message = format!(
                "`{}` stands `{}` mm before the eyes: nearer than half the viewing distance, `{}` mm",
                feature.id,
                plain(half - nearer, 1),
                plain(half, 1),
            );
            let help = format!("ask for at most `{} mm toward`", plain(half, 1));
            let words = Words { message, label: "very near", help };
            findings.push(finding(page.id, Severity::Warning, CODE, feature.place, words));
        }
    }
    findings
}
