//! What: a parallax away that comes within 10 % of parallel eyes for the smallest ipd of the audience.
//!
//! Why: at parallel eyes the place is infinitely far; a print that comes out a little large, or a reader with smaller
//! eyes than the set promises, is then past it. The solver refuses what reaches the limit itself.
//!
//! Limit: nine tenths of the smallest ipd. Source: design choice; a print "fitted" to another page size is off by up to
//! 6 %.
//!
//! Way out: ask for less depth away.

use super::{Finding, Input, Rule, Words, finding, largest_by_place, parallax_range};
use crate::diagnostics::Severity;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "parallel-axes",
    doc: "a depth away comes within 10 % of parallel eyes for the smallest ipd of the audience",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-NEAR-PARALLEL";

/// Share of the smallest ipd from which the rule speaks.
const SHARE: f64 = 0.9;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let smallest = input.viewer.ipd_range.0.0;
    let pd = |mm: f64| plain(100.0 * mm / input.viewer.distance.0, 2);
    // What the author writes counts from the base.
    let base = input.viewer.base.horizontal.0;
    let mut findings = Vec::new();
    for page in input.pages {
        let farthest = |feature: &_| Some(parallax_range(feature).1).filter(|&p| SHARE * smallest <= p);
        for (feature, parallax) in largest_by_place(page, farthest) {
            let with_base = if base == 0.0 { "" } else { ", the base in it" };
            let message = format!(
                "`{}`: parallax of `{}` mm (`{}` pd away{with_base}) is within 10 % of parallel eyes, which the smallest ipd of \
                 `{}` mm reaches at `{}` pd away",
                feature.id,
                plain(parallax, 3),
                pd(parallax),
                plain(smallest, 3),
                pd(smallest),
            );
            let room = SHARE * smallest * 100.0 / input.viewer.distance.0 + base;
            let help = if 0.0 < room {
                format!("ask for less than `{} pd away`", plain(room, 2))
            } else {
                "set a smaller `base`".to_owned()
            };
            let words = Words { message, label: "close to parallel eyes", help };
            findings.push(finding(page.id, Severity::Warning, CODE, feature.place, words));
        }
    }
    findings
}
