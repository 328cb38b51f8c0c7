//! What: a parallax that is not zero, yet smaller than one dot of an edition's raster.
//!
//! Why: the raster cannot show the two half-images apart in sharp edges; the depth may look flat, and nobody can check
//! it with a ruler. Vector pages carry it as it is.
//!
//! Limit: one dot. Source: design choice; the dot itself is 25.4 mm over the resolution.
//!
//! Way out: raise the resolution of the edition, or ask for more depth.

use super::{Device, Finding, Input, Rule, Words, finding, parallax_range};
use crate::diagnostics::Severity;
use crate::optics::{Viewing, limits};
use crate::scene::Role;
use crate::solve::SolvedFeature;
use crate::units::{Mm, Ppi, plain};

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "device-dot", doc: "a depth is smaller than one dot of an edition's raster", codes: &[CODE], check };

const CODE: &str = "W-DEVICE-DOT";

fn check(input: &Input<'_>) -> Vec<Finding> {
    let Some(viewing) = input.viewer.viewing() else { return Vec::new() };
    let mut findings = Vec::new();
    for page in input.pages {
        for feature in page.features.iter().filter(|f| matches!(f.role, Role::Target | Role::Trail)) {
            let (low, high) = parallax_range(feature);
            let parallax = low.abs().max(high.abs());
            let too_coarse: Vec<&Device<'_>> =
                input.devices.iter().filter(|d| 0.0 < parallax && parallax < d.ppi.pixel().0).collect();
            if let Some(coarsest) = too_coarse.iter().map(|d| d.ppi).min_by_key(|ppi| ppi.0) {
                let words = words(&viewing, feature, parallax, &too_coarse, coarsest);
                findings.push(finding(page.id, Severity::Warning, CODE, feature.place, words));
            }
        }
    }
    findings
}

fn words(
    viewing: &Viewing,
    feature: &SolvedFeature,
    parallax: f64,
    too_coarse: &[&Device<'_>],
    coarsest: Ppi,
) -> Words {
    let editions: Vec<String> = too_coarse.iter().map(|d| format!("`{}` ({} ppi)", d.edition, d.ppi.0)).collect();
    let arcsec = |mm: f64| {
        let disparity = viewing.disparity_of_parallax(Mm(-mm)).map_or(0.0, |angle| angle.to_arcsec());
        plain(disparity.ceil(), 0)
    };
    let dot = limits::device_dot(viewing, coarsest).map_or(0.0, |dot| dot.side.0);
    let message = format!(
        "`{}`: parallax of `{}` mm is less than one dot of edition {}; the coarsest dot is `{}` mm",
        feature.id,
        plain(parallax, 4),
        editions.join(", "),
        plain(dot, 4),
    );
    let help = format!(
        "set `ppi` to at least `{}`, or ask for at least `{} arcsec`",
        plain((Mm::PER_INCH / parallax).ceil(), 0),
        arcsec(dot),
    );
    Words { message, label: "finer than a dot", help }
}
