//! What: a demand outside what the reader's eyes may be asked; where no range is known, one that many or most people do not
//! reach; and a jump to a depth past the prisms of a common check of jumps.
//!
//! Why: past the range there is strain and then two of everything. Where nothing is known of the reader, silence would
//! say that any demand will do. Demands count from the base.
//!
//! Limit: the zone of `[viewer]`, else the break of the published near reserves (warning) and what half of a large group
//! fused on a screen (note); jumps count to 12 prism dioptres toward and 3 away (design choice: the prisms with which
//! jumps at near are commonly checked), for jump limits lie below those of slow change.
//! Source: `[Percival1928]`, `[Sheard1930]`, `[Morgan1944]`.
//! Source: `[Nagata2002]`, `[McCormack2019]`.
//!
//! Way out: ask for less, or write down what is known of the reader.

use super::{Finding, Input, Page, Rule, Words, finding, intended_range};
use crate::diagnostics::Severity;
use crate::optics::reserves::Norms;
use crate::optics::vergence::prism_of_angle;
use crate::optics::{Viewer, Viewing, Zone, limits};
use crate::solve::{SolvedFeature, is_looked_at};
use crate::units::{Mm, plain};

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "range",
    doc: "a demand lies outside what the reader's eyes may be asked, or outside the published ranges where none is known",
    codes: &[OUTSIDE, UNKNOWN, MANY, JUMP],
    check,
};

const OUTSIDE: &str = "E-ZONE";
const UNKNOWN: &str = "W-ZONE";
const MANY: &str = "N-ZONE";
const JUMP: &str = "W-JUMP";
/// The prisms of the jump limit: toward and away.
const JUMPS: (f64, f64) = (12.0, 3.0);

/// One end of a demand, with what bounds it.
struct Bound {
    toward: f64,
    away: f64,
    code: &'static str,
    severity: Severity,
    /// Says whose limit it is, toward and away.
    whose: [String; 2],
    label: &'static str,
}

impl Bound {
    /// The limit beside a demand, as an amount, and whose it is.
    fn beside(&self, demand: f64) -> (f64, &str) {
        let [toward, away] = &self.whose;
        if demand < 0.0 { (self.away, away) } else { (self.toward, toward) }
    }
}

fn check(input: &Input<'_>) -> Vec<Finding> {
    let Some(viewing) = input.viewer.viewing() else { return Vec::new() };
    let bounds = input.viewer.zone.as_ref().map_or_else(published, |zone| vec![of_zone(zone)]);
    let jumps = jumps();
    let mut findings = Vec::new();
    for page in input.pages {
        let found = bounds.iter().find_map(|bound| check_page(page, bound, &viewing, input.viewer));
        findings.extend(found);
        if page.graded.strand == "jump" {
            findings.extend(check_page(page, &jumps, &viewing, input.viewer));
        }
    }
    findings
}

/// The zone of the reader.
fn of_zone(zone: &Zone) -> Bound {
    let whose = |bound: &str| format!("the reader's limit by `{bound}`");
    Bound {
        toward: zone.toward.0,
        away: zone.away.0,
        code: OUTSIDE,
        severity: Severity::Error,
        whose: [whose(zone.toward_bound.name()), whose(zone.away_bound.name())],
        label: "outside the range of the reader",
    }
}

/// The published limits, the wider first: the worst alone is told.
fn published() -> Vec<Bound> {
    let norm = Norms::MorganNear.reserves();
    let whose = |text: &str| [text.to_owned(), text.to_owned()];
    let screen = limits::fused_on_screen();
    let half = |angle| prism_of_angle(angle).unwrap_or_default().0;
    vec![
        Bound {
            toward: norm.toward.breaks.0,
            away: norm.away.breaks.0,
            code: UNKNOWN,
            severity: Severity::Warning,
            whose: whose("the break of the published near reserves [Morgan1944], as no range is known"),
            label: "past what most people hold",
        },
        Bound {
            toward: half(screen.1),
            away: half(screen.0),
            code: MANY,
            severity: Severity::Note,
            whose: whose("what half of 392 people fused on a screen [Nagata2002], as no range is known"),
            label: "past what half of a group held",
        },
    ]
}

fn jumps() -> Bound {
    let whose = |prism: &str| format!("the prism of {prism} with which jumps at near are commonly checked");
    Bound {
        toward: JUMPS.0,
        away: JUMPS.1,
        code: JUMP,
        severity: Severity::Warning,
        whose: [whose("12 pd base-out"), whose("3 pd base-in")],
        label: "far for a jump",
    }
}

/// The strongest demand of a page past a bound.
fn check_page(page: &Page<'_>, bound: &Bound, viewing: &Viewing, viewer: &Viewer) -> Option<Finding> {
    let mut worst: Option<(&SolvedFeature, f64, f64)> = None;
    for feature in page.features.iter().filter(|feature| is_looked_at(feature)) {
        let (near, far) = intended_range(feature, viewer);
        for parallax in [near, far] {
            let demand = viewing.demand_of_parallax(Mm(parallax))?.0;
            let past = demand.abs() - bound.beside(demand).0;
            if ROUNDING < past && worst.is_none_or(|(_, _, known)| known < past) {
                worst = Some((feature, demand, past));
            }
        }
    }
    let (feature, demand, _) = worst?;
    let (limit, whose) = bound.beside(demand);
    let side = if demand < 0.0 { "away" } else { "toward" };
    let pd = |demand: f64| plain(demand.abs(), 2);
    let message = format!(
        "`{}` on `{}` asks for `{}` pd {side}: past {whose}, `{}` pd {side}",
        feature.id,
        page.id,
        pd(demand),
        pd(limit)
    );
    let more = match bound.code {
        UNKNOWN | MANY => ", or write down what is known of the reader in `[viewer]`",
        _ => "",
    };
    let most = plain((limit * 100.0).floor() / 100.0, 2);
    let help = format!("ask for at most `{most} pd {side}`{more}");
    Some(finding(page.id, bound.severity, bound.code, feature.place, Words { message, label: bound.label, help }))
}

/// Rounding that a demand may have against its limit, pd: the grid of the solver at any distance of a page.
const ROUNDING: f64 = 1e-6;
