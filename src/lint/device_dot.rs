//! What: a parallax that is not zero, yet smaller than one dot of an edition's raster; in a field of random dots, a figure
//! or a relief that differs by less than that from its ground, or random dots smaller than two dots of the raster.
//!
//! Why: the raster cannot show the two half-images apart in sharp edges; the depth may look flat, and nobody can check
//! it with a ruler. Vector pages carry it as it is.
//!
//! Depths count from the base. A base is never finer than a dot itself: its least step, half a prism dioptre at 20 cm, is
//! 1 mm.
//!
//! Limit: one dot; two for the side of a random dot. Source: design choice; the dot itself is 25.4 mm over the resolution.
//!
//! Way out: raise the resolution of the edition, or ask for more depth.

use super::{Device, Finding, Input, Rule, Words, finding, intended_range};
use crate::diagnostics::Severity;
use crate::optics::{Viewing, limits};
use crate::scene::Role;
use crate::solve::{SolvedDots, SolvedFeature, SolvedFigure, SolvedForm, Stand};
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
            let (low, high) = intended_range(feature, input.viewer);
            let parallax = low.abs().max(high.abs());
            let too_coarse: Vec<&Device<'_>> =
                input.devices.iter().filter(|d| 0.0 < parallax && parallax < d.ppi.pixel().0).collect();
            if let Some(coarsest) = too_coarse.iter().map(|d| d.ppi).min_by_key(|ppi| ppi.0) {
                let words = words(&viewing, feature, parallax, &too_coarse, coarsest);
                findings.push(finding(page.id, Severity::Warning, CODE, feature.place, words));
            }
        }
        for feature in page.features {
            let SolvedForm::Dots(dots) = &feature.form else { continue };
            let tell = |words| finding(page.id, Severity::Warning, CODE, feature.place, words);
            findings.extend(in_field(input, &feature.id, dots).into_iter().map(tell));
        }
    }
    findings
}

/// What a raster cannot show of a field of random dots.
fn in_field(input: &Input<'_>, id: &str, dots: &SolvedDots) -> Vec<Words> {
    let ground = dots.ground.map(|stand| stand.parallax.0);
    let apart = |figure: &SolvedFigure| -> (String, f64) {
        let from_ground = |stand: Stand| ground.iter().map(|p| (stand.parallax.0 - p).abs()).fold(0.0, f64::max);
        (figure.id.clone(), figure.stands.map(from_ground).into_iter().fold(0.0, f64::max))
    };
    let mut offsets: Vec<(String, f64)> = dots.figures.iter().map(apart).collect();
    offsets.push((id.to_owned(), (ground[0] - ground[1]).abs()));
    let mut found = Vec::new();
    for device in input.devices {
        let pixel = device.ppi.pixel().0;
        let edition = format!("edition `{}` ({} ppi)", device.edition, device.ppi.0);
        for (name, offset) in &offsets {
            if 0.0 < *offset && *offset < pixel {
                found.push(Words {
                    message: format!(
                        "`{name}`: an offset of `{}` mm between the dots is less than one dot of {edition}, `{}` mm",
                        plain(*offset, 4),
                        plain(pixel, 4)
                    ),
                    label: "finer than a dot",
                    help: "raise `ppi`, or ask for more depth between figure and ground".to_owned(),
                });
            }
        }
        if dots.dot < 2.0 * pixel {
            found.push(Words {
                message: format!(
                    "`{id}`: random dots of `{}` mm are smaller than two dots of {edition}, `{}` mm",
                    plain(dots.dot, 4),
                    plain(2.0 * pixel, 4)
                ),
                label: "finer than the raster",
                help: format!(
                    "raise `ppi` to at least `{}`, or ask for larger dots",
                    plain((2.0 * Mm::PER_INCH / dots.dot).ceil(), 0)
                ),
            });
        }
    }
    found
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
