//! What: two shapes of one row of a spec that stand side by side and whose half-images run into each other in one eye.
//!
//! Why: with so much depth in so little room an eye cannot tell which outline belongs to which shape, the wrong pair may
//! fuse, and the sideways places that are drawn by lot no longer hide the depth from one eye alone.
//!
//! Limit: no overlap of their boxes, unless one stands inside the other. Source: design choice.
//!
//! Way out: ask for less depth, make the shapes smaller, or put fewer of them on a page.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::scene::{Eye, Eyes, Role};
use crate::solve::{SolvedFeature, SolvedForm, half_x};
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "crowd", doc: "two shapes side by side run into each other in one eye", codes: &[CODE], check };

const CODE: &str = "W-CROWD";

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.pages.iter().filter_map(check_page).collect()
}

/// Two shapes that run into each other, and how far, mm.
struct Pair<'a> {
    a: &'a SolvedFeature,
    b: &'a SolvedFeature,
    by: f64,
}

/// The worst pair of a page, with the number of the others.
fn check_page(page: &Page<'_>) -> Option<Finding> {
    let shown = |f: &&SolvedFeature| {
        matches!(f.role, Role::Target | Role::Reference) && f.eyes == Eyes::Both && f.place.is_some()
    };
    let shapes: Vec<&SolvedFeature> = page.features.iter().filter(shown).collect();
    let mut pairs = Vec::new();
    for (i, &a) in shapes.iter().enumerate() {
        for &b in shapes[i + 1..].iter().filter(|b| b.place == a.place) {
            let by = Eye::ALL.into_iter().filter_map(|eye| overlap(&Span::of(a, eye)?, &Span::of(b, eye)?));
            pairs.extend(by.reduce(f64::max).map(|by| Pair { a, b, by }));
        }
    }
    let Pair { a, b, by } = pairs.iter().reduce(|a, b| if a.by < b.by { b } else { a })?;
    let others = match pairs.len() - 1 {
        0 => String::new(),
        1 => "; so does 1 other pair of this page".to_owned(),
        n => format!("; so do {n} other pairs of this page"),
    };
    let message = format!("`{}` runs `{}` mm into `{}` in one eye{others}", a.id, plain(*by, 3), b.id);
    let help = "ask for less depth, make the shapes smaller, or put fewer of them on a page".to_owned();
    let words = Words { message, label: "shapes run into each other", help };
    Some(finding(page.id, Severity::Warning, CODE, a.place, words))
}

/// The box of a half-image, mm.
struct Span {
    x: (f64, f64),
    y: (f64, f64),
}

impl Span {
    fn of(feature: &SolvedFeature, eye: Eye) -> Option<Self> {
        let shift = half_x(0.0, feature.stand.parallax.0, eye);
        let (x, y) = match &feature.form {
            SolvedForm::Shape { extent, .. } => {
                let around = |middle: f64, size: f64| (middle - size / 2.0, middle + size / 2.0);
                (around(feature.at.0, extent.0), around(feature.at.1, extent.1))
            }
            SolvedForm::Strokes { strokes, weight } => {
                let reach = |of: fn(&(f64, f64)) -> f64| {
                    let all = strokes.iter().flatten().map(of);
                    let ends = all.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), v| (a.min(v), b.max(v)));
                    (ends.0 - weight / 2.0, ends.1 + weight / 2.0)
                };
                (reach(|end| end.0), reach(|end| end.1))
            }
            SolvedForm::Path { .. } | SolvedForm::Dots(_) => return None,
        };
        Some(Self { x: (x.0 + shift, x.1 + shift), y })
    }
}

/// How far two boxes side by side run into each other; `None` where they do not, or one spans the other's width.
fn overlap(a: &Span, b: &Span) -> Option<f64> {
    let common = |a: (f64, f64), b: (f64, f64)| a.1.min(b.1) - a.0.max(b.0);
    let inside = |a: (f64, f64), b: (f64, f64)| b.0 <= a.0 && a.1 <= b.1;
    let (across, down) = (common(a.x, b.x), common(a.y, b.y));
    (0.0 < across && 0.0 < down && !inside(a.x, b.x) && !inside(b.x, a.x)).then_some(across)
}
