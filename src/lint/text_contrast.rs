//! What: words that hardly stand off the ground.
//!
//! Why: cautions and the stop rule are read without glasses, in any light, by any eye.
//!
//! Limit: a contrast ratio of 4.5 to 1. Source: `[WCAG2]`, success criterion for contrast at level AA.
//!
//! Way out: a lighter ground on white, a darker one on black.

use super::{Finding, Input, Painted, Rule, Words, finding};
use crate::colour::Ground;
use crate::diagnostics::Severity;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "text-contrast", doc: "words hardly stand off the ground", codes: &[CODE], check };

const CODE: &str = "E-TEXT-CONTRAST";
const LIMIT: f64 = 4.5;

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.editions.iter().filter(|edition| edition.plan.text_contrast < LIMIT).map(report).collect()
}

fn report(edition: &Painted<'_>) -> Finding {
    let message = format!(
        "edition `{}`: words have a contrast of `{}` to 1 on the ground `{}`, limit `{LIMIT}` to 1",
        edition.edition,
        plain(edition.plan.text_contrast, 2),
        edition.plan.inks.ground.hex(),
    );
    let help = match edition.ground {
        Ground::White => "pin a lighter `ground` under `inks`, or leave it out",
        Ground::Black => "pin a darker `ground` under `inks`, or leave it out",
    };
    let words = Words { message, label: "hard to read", help: help.to_owned() };
    finding("", Severity::Error, CODE, edition.place, words)
}
