//! What: two neighbouring targets of one page whose depths differ by more than the space between them.
//!
//! Why: past a disparity gradient of about 1 one neighbour keeps the other from fusing, however small each disparity
//! is by itself.
//!
//! Limit: 1, in `optics::limits`. Source: `[Burt1980]`. The space between two targets counts between their middles;
//! where one stands inside the other, between their outlines (design choice).
//!
//! Way out: move them apart or bring their depths together.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::optics::limits::{GRADIENT_LIMIT, disparity_gradient};
use crate::scene::{Eyes, Role};
use crate::solve::{SolvedFeature, SolvedForm};
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "disparity-gradient",
    doc: "two neighbouring targets differ in depth by more than the space between them",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-GRADIENT";

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.pages.iter().filter_map(check_page).collect()
}

/// Two targets past the limit.
struct Pair<'a> {
    a: &'a SolvedFeature,
    b: &'a SolvedFeature,
    difference: f64,
    separation: f64,
    /// Infinite where there is no space at all between them.
    gradient: f64,
}

/// The steepest pair of a page, with the number of the others.
fn check_page(page: &Page<'_>) -> Option<Finding> {
    let pairs = steep_pairs(page);
    let steepest = pairs.iter().reduce(|a, b| if a.gradient < b.gradient { b } else { a })?;
    let Pair { a, b, difference, separation, gradient } = steepest;
    let others = match pairs.len() - 1 {
        0 => String::new(),
        1 => "; so is 1 other pair of this page".to_owned(),
        n => format!("; so are {n} other pairs of this page"),
    };
    let gradient = if gradient.is_finite() { plain(*gradient, 2) } else { "infinite".to_owned() };
    let message = format!(
        "`{}` and `{}` differ by `{}` mm of parallax over `{}` mm: a disparity gradient of `{gradient}` is past the \
         limit of `{}`{others}",
        a.id,
        b.id,
        plain(*difference, 3),
        plain(*separation, 3),
        plain(GRADIENT_LIMIT, 2),
    );
    let help = format!("put at least `{}` mm between them, or bring their depths together", plain(*difference, 3));
    let words = Words { message, label: "too steep to its neighbour", help };
    Some(finding(page.id, Severity::Warning, CODE, b.place.or(a.place), words))
}

fn steep_pairs<'a>(page: &Page<'a>) -> Vec<Pair<'a>> {
    let fused = |f: &&SolvedFeature| matches!(f.role, Role::Target | Role::Bead) && f.eyes == Eyes::Both;
    let targets: Vec<&SolvedFeature> = page.features.iter().filter(fused).collect();
    let mut pairs = Vec::new();
    for (i, &a) in targets.iter().enumerate() {
        for &b in &targets[i + 1..] {
            let difference = (a.stand.parallax.0 - b.stand.parallax.0).abs();
            let separation = separation(a, b);
            let gradient = disparity_gradient(difference, separation).unwrap_or(f64::INFINITY);
            if 0.0 < difference && GRADIENT_LIMIT < gradient {
                pairs.push(Pair { a, b, difference, separation, gradient });
            }
        }
    }
    pairs
}

/// The space between two targets, mm: see the module.
fn separation(a: &SolvedFeature, b: &SolvedFeature) -> f64 {
    let between_middles = libm::hypot(a.at.0 - b.at.0, a.at.1 - b.at.1);
    let between_outlines = (longer_side(a) - longer_side(b)).abs() / 2.0;
    between_middles.max(between_outlines)
}

fn longer_side(feature: &SolvedFeature) -> f64 {
    match &feature.form {
        SolvedForm::Shape { extent, .. } => extent.0.max(extent.1),
        SolvedForm::Path { .. } | SolvedForm::Strokes { .. } | SolvedForm::Dots(_) => 0.0,
    }
}
