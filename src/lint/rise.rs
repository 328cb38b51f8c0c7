//! What: a page that is easier than the one before it of its strand, or harder by much.
//!
//! Why: a reader goes from page to page and takes each as the next step. A step back teaches nothing, and a step that is
//! too high ends the way for many.
//!
//! Limit: easier by no amount that shows; harder by at most 20 points of the difficulty from 0 to 100, two steps of its
//! badge. Source: design choice. Check pages stand in no order, and a set may say that its pages are in none.
//!
//! Way out: reorder the pages, change what they ask, or write `order = "free"` in `[set]`.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::optics::Zone;
use crate::optics::grading::{Asked, Mend, mend};
use crate::solve::is_looked_at;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "rise",
    doc: "a page is easier than the one before it of its strand, or harder by much",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-RISE";
/// The most points that a page may be harder than the one before it.
const STEP: f64 = 20.0;
/// Points that do not show: numbers are told to a tenth.
const ALIKE: f64 = 0.05;
/// The strands that stand in an order.
const STRANDS: [&str; 5] = ["toward", "away", "jump", "smooth", "depth"];

fn check(input: &Input<'_>) -> Vec<Finding> {
    if input.free_order {
        return Vec::new();
    }
    let zone = input.viewer.zone.as_ref();
    let mut findings = Vec::new();
    for strand in STRANDS {
        let pages: Vec<_> = input.pages.iter().filter(|page| page.graded.strand == strand).collect();
        findings.extend(pages.windows(2).filter_map(|pair| check_pair(pair[0], pair[1], zone)));
    }
    findings
}

fn check_pair(before: &Page<'_>, page: &Page<'_>, zone: Option<&Zone>) -> Option<Finding> {
    let (asked, total, earlier) = (page.graded.asked?, page.graded.total?, before.graded.total?);
    let (word, wanted, label) = if total < earlier - ALIKE {
        ("easier than", earlier, "a step back")
    } else if earlier + STEP + ALIKE < total {
        ("much harder than", earlier + STEP, "too high a step")
    } else {
        return None;
    };
    let points = |total: f64| plain(total, 1);
    let message = format!(
        "`{}` is {word} `{}`, the page before it on the strand `{}`: difficulty `{}` after `{}`{}",
        page.id,
        before.id,
        page.graded.strand,
        points(total),
        points(earlier),
        if wanted > total { String::new() } else { format!(", limit `{}`", points(wanted)) },
    );
    let help =
        format!("{}, reorder them, or write `order = \"free\"` in `[set]`", way_out(&asked, zone, total, wanted));
    let place = page.features.iter().find(|feature| is_looked_at(feature)).and_then(|feature| feature.place);
    Some(finding(page.id, Severity::Warning, CODE, place, Words { message, label, help }))
}

/// The number at which the page would have the difficulty that is wanted.
fn way_out(asked: &Asked, zone: Option<&Zone>, total: f64, wanted: f64) -> String {
    match mend(asked, zone, wanted) {
        Some(Mend::Demand(demand)) => {
            let side = if demand.0 < 0.0 { "away" } else { "toward" };
            format!("ask for about `{} pd {side}` with all else as it is", plain(demand.0.abs(), 2))
        }
        Some(Mend::Finest(finest)) => {
            format!("make the finest step about `{} arcsec` with all else as it is", plain(finest.to_arcsec(), 0))
        }
        None if wanted < total => format!("make it easier by `{}` points", plain(total - wanted, 1)),
        None => format!("make it harder by `{}` points", plain(wanted - total, 1)),
    }
}
