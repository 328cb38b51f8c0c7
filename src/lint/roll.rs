//! What: half-images so far apart that a page held 5 degrees out of level gives more than 10 arcmin of vertical
//! parallax.
//!
//! Why: eyes hardly turn up and down against each other; the picture doubles, and the reader blames their eyes.
//!
//! Limit: 10 arcmin at a roll of 5 degrees, both a design choice; about half of the smallest vertical fusion limit.
//! Source: `[Qin2006]` for that limit.
//!
//! Way out: say on the page to keep it level, in the words of [`WORDING`].

use super::{Finding, Input, Page, Rule, Words, finding, has_own_depth, parallax_range};
use crate::diagnostics::Severity;
use crate::optics::Viewing;
use crate::optics::geometry::roll_parallax;
use crate::units::{Angle, Mm, plain};

/// What a page says to its reader where this rule speaks.
pub const WORDING: &str = "Keep the page level: its lower edge runs along with the line between your eyes.";

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "roll",
    doc: "half-images are so far apart that a page out of level doubles them vertically",
    codes: &[CODE],
    check,
};

const CODE: &str = "N-LEVEL";
const ROLL_DEGREES: f64 = 5.0;
const LIMIT_ARCMIN: f64 = 10.0;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let Some(viewing) = input.viewer.viewing() else { return Vec::new() };
    input.pages.iter().filter_map(|page| check_page(&viewing, page)).collect()
}

/// One note a page, about its widest separation.
fn check_page(viewing: &Viewing, page: &Page<'_>) -> Option<Finding> {
    let separation = |feature: &_| {
        let (low, high) = parallax_range(feature);
        low.abs().max(high.abs())
    };
    let own = page.features.iter().filter(|f| has_own_depth(f)).map(|f| (f, separation(f)));
    let (feature, widest) = own.reduce(|a, b| if a.1 < b.1 { b } else { a })?;
    let vertical = roll_parallax(Mm(widest), Angle::from_degrees(ROLL_DEGREES))?;
    let arcmin = viewing.angle_of_length(vertical)?.to_arcmin();
    if arcmin <= LIMIT_ARCMIN {
        return None;
    }
    let message = format!(
        "`{}`: a roll of {} degrees turns its separation of `{}` mm into `{}` mm of vertical parallax, `{}` arcmin; \
         limit `{}` arcmin",
        feature.id,
        plain(ROLL_DEGREES, 1),
        plain(widest, 3),
        plain(vertical.0, 2),
        plain(arcmin, 1),
        plain(LIMIT_ARCMIN, 1),
    );
    let words = Words { message, label: "needs a level page", help: format!("say on the page: `{WORDING}`") };
    Some(finding(page.id, Severity::Note, CODE, feature.place, words))
}
