//! What: where marks for both eyes overlap, a colour that is not as dark (on white) or as light (on black) to an eye as
//! its own mark.
//!
//! Why: that eye then sees the outline of the other eye's mark inside its own: a ghost where marks cross.
//!
//! Limit: 5 % of the step from the ground to the eye's own mark, as for ghosts. Source: design choice.
//!
//! Way out: pin black (on black: white) for overlaps.

use super::{Finding, Input, Painted, Rule, Words, finding};
use crate::colour::judge::GHOST_WARN;
use crate::colour::{EyeReport, Ground};
use crate::diagnostics::Severity;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "overlap",
    doc: "an overlap lets an eye see the other eye's mark inside its own",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-OVERLAP";

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.editions.iter().flat_map(check_edition).collect()
}

fn check_edition(edition: &Painted<'_>) -> Vec<Finding> {
    let eyes = [("left", &edition.plan.left), ("right", &edition.plan.right)];
    let short = |eye: &EyeReport| match edition.ground {
        Ground::White => (eye.overlap - eye.own) / (eye.ground - eye.own).abs(),
        Ground::Black => (eye.own - eye.overlap) / (eye.own - eye.ground).abs(),
    };
    eyes.into_iter()
        .map(|(name, eye)| (name, short(eye)))
        .filter(|(_, short)| GHOST_WARN < *short)
        .map(|(name, short)| report(edition, name, short))
        .collect()
}

fn report(edition: &Painted<'_>, eye: &str, short: f64) -> Finding {
    let side = match edition.ground {
        Ground::White => "dark",
        Ground::Black => "light",
    };
    let message = format!(
        "edition `{}`: overlaps of `{}` are not {side} enough to the {eye} eye: `{}` % short of its own mark, limit \
         `{}` %",
        edition.edition,
        edition.plan.inks.both.hex(),
        plain(short * 100.0, 1),
        plain(GHOST_WARN * 100.0, 1),
    );
    let help = format!("write `both = \"{}\"` under `inks`", edition.ground.opposite().colour().hex());
    finding("", Severity::Warning, CODE, edition.place, Words { message, label: "ghost in overlaps", help })
}
