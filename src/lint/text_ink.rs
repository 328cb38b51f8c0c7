//! What: words in a colour that is, or nearly is, the ink of a mark for one eye.
//!
//! Why: behind the glasses such words vanish for one eye, and are taken for a part of the art.
//!
//! Limit: a colour difference of 20 units of CIELAB. Source: design choice, far above what is just told apart; the
//! measure is `[CIE15]`.
//!
//! Way out: leave out the pin, or pin an ink with more colour.

use super::{Finding, Input, Painted, Rule, Words, finding};
use crate::colour::{Srgb8, Xyz};
use crate::diagnostics::Severity;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "text-ink", doc: "words have nearly the ink of a mark", codes: &[CODE], check };

const CODE: &str = "W-TEXT-INK";
const LIMIT: f64 = 20.0;

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.editions.iter().flat_map(check_edition).collect()
}

fn check_edition(edition: &Painted<'_>) -> Vec<Finding> {
    let inks = &edition.plan.inks;
    let near = |ink: Srgb8| {
        let lab = |colour: Srgb8| colour.to_linear().to_xyz().to_lab(Xyz::D65);
        lab(ink).distance(lab(inks.text)) < LIMIT
    };
    let marks = [("left", inks.left), ("right", inks.right)];
    marks.into_iter().filter(|(_, ink)| near(*ink)).map(|(eye, ink)| report(edition, eye, ink)).collect()
}

fn report(edition: &Painted<'_>, eye: &str, ink: Srgb8) -> Finding {
    let message = format!(
        "edition `{}`: words are `{}`, nearly the ink of the {eye} eye's marks, `{}`",
        edition.edition,
        edition.plan.inks.text.hex(),
        ink.hex()
    );
    let help = format!("leave out `{eye}` under `inks`, or pin an ink with more colour");
    finding("", Severity::Warning, CODE, edition.place, Words { message, label: "words in a training ink", help })
}
