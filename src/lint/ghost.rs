//! What: an eye that is forecast to see the other eye's marks, against its own.
//!
//! Why: a ghost gives one eye what only the other should have; depth gets weak, and a suppressed eye is not missed.
//!
//! Limit: a note from the edition's own aim (2 % unless the author asks for another), a warning from 5 %, an error from
//! 15 % that the author may accept with a reason. Source: design choices, from the levels of `[Seuntiens2005]`; for
//! ghosts in general `[Woods2012]`.
//!
//! Way out: tint the ground, take other glasses, paper or screen, or accept the ghost with a reason.

use super::{Finding, Input, Painted, Rule, Words, finding};
use crate::colour::Trade;
use crate::colour::judge::{GHOST_REFUSE, GHOST_WARN};
use crate::diagnostics::Severity;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "ghost",
    doc: "an eye is forecast to see the marks of the other eye",
    codes: &[NOTE, WARNING, ERROR],
    check,
};

const NOTE: &str = "N-GHOST";
const WARNING: &str = "W-GHOST";
const ERROR: &str = "E-GHOST";

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.editions.iter().filter_map(check_edition).collect()
}

fn check_edition(edition: &Painted<'_>) -> Option<Finding> {
    let ghost = edition.plan.ghost();
    let accepted = edition.accepted.filter(|accepted| ghost <= accepted.limit);
    let (severity, code, limit) = if GHOST_REFUSE < ghost && accepted.is_none() {
        (Severity::Error, ERROR, GHOST_REFUSE)
    } else if GHOST_WARN < ghost {
        (Severity::Warning, WARNING, GHOST_WARN)
    } else if edition.aim < ghost {
        (Severity::Note, NOTE, edition.aim)
    } else {
        return None;
    };
    let (left, right) = (edition.plan.left.ghost, edition.plan.right.ghost);
    let eyes = format!("`{}` to the left eye and `{}` to the right", percent(left), percent(right));
    let mut message = format!("edition `{}`: the ghost is {eyes}, limit `{}`", edition.edition, percent(limit));
    if let Some(accepted) = accepted.filter(|_| GHOST_REFUSE < ghost) {
        message.push_str(&format!("; accepted up to `{}`: {}", percent(accepted.limit), accepted.reason));
    }
    let words = Words { message, label: "ghost", help: help(edition, severity) };
    Some(finding("", severity, code, edition.place, words))
}

fn help(edition: &Painted<'_>, severity: Severity) -> String {
    let tinted = edition.plan.traded.iter().find_map(|trade| match trade {
        Trade::Ghost { tinted, .. } => *tinted,
        _ => None,
    });
    let pinned = edition.plan.traded.iter().any(|trade| matches!(trade, Trade::Pinned { .. }));
    match (tinted, severity) {
        _ if pinned => "leave out the pinned inks, so that they are solved".to_owned(),
        (Some(ghost), _) => {
            format!("write `tinted_ground = true` under `inks`: it would bring the ghost to `{}`", percent(ghost))
        }
        (None, Severity::Error) => "use other glasses or another medium, or accept it with `accept_ghost = { limit = \
                                    \"20 %\", reason = \"…\" }` under `inks`"
            .to_owned(),
        (None, _) => "use other glasses or another medium, and look at the ghost page".to_owned(),
    }
}

/// A share for people.
fn percent(share: f64) -> String {
    if share.is_finite() { format!("{} %", plain(share * 100.0, 1)) } else { "without end".to_owned() }
}
