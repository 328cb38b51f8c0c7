//! What: glasses, medium and ground that make the world of one eye much brighter than that of the other.
//!
//! Why: the dimmer eye lags behind, and is the easier one to suppress.
//!
//! Limit: 2:1. Source: design choice; `[PacificU1984]` measured up to 1.33:1 and links imbalance to suppression. Where
//! an edition names no medium the numbers are those of an ideal screen, and the finding is a note.
//!
//! Way out: a tinted ground, glasses whose filters are nearer to each other, or a black ground with dimmer inks.

use super::{Finding, Input, Painted, Rule, Words, finding};
use crate::colour::judge::IMBALANCE_WARN;
use crate::diagnostics::Severity;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "eye-brightness",
    doc: "the world of one eye is much brighter than that of the other",
    codes: &[WARNING, NOTE],
    check,
};

const WARNING: &str = "W-EYE-BRIGHTNESS";
const NOTE: &str = "N-EYE-BRIGHTNESS";

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.editions.iter().filter(|edition| IMBALANCE_WARN < edition.plan.imbalance).map(report).collect()
}

fn report(edition: &Painted<'_>) -> Finding {
    let plan = edition.plan;
    let brighter = if plan.left.brightness < plan.right.brightness { "right" } else { "left" };
    let ratio = if plan.imbalance.is_finite() { plain(plan.imbalance, 1) } else { "without end".to_owned() };
    let medium = if edition.is_known { "" } else { " on an ideal screen, as no medium is named" };
    let message = format!(
        "edition `{}`: the {brighter} eye's world is brighter by `{ratio}` to 1{medium}, limit `{}` to 1",
        edition.edition,
        plain(IMBALANCE_WARN, 1),
    );
    let (severity, code) = if edition.is_known { (Severity::Warning, WARNING) } else { (Severity::Note, NOTE) };
    let help = "use glasses whose two filters are nearer in brightness, or pin a ground that is dimmer to that eye";
    let words = Words { message, label: "unequal eyes", help: help.to_owned() };
    finding("", severity, code, edition.place, words)
}
