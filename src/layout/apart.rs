//! Words about pages on which each eye has parts of its own: what each eye gets alone, and what both together make.

use crate::language::{Noun, Tongue};
use crate::scene::{Eyes, Role, Shape};
use crate::solve::{SolvedFeature, SolvedForm};

use super::things;

/// Whether any part that is looked at is for one eye alone.
pub fn is_apart(features: &[SolvedFeature]) -> bool {
    features.iter().any(|feature| feature.role == Role::Target && feature.eyes != Eyes::Both)
}

/// "Left eye: 3 rings. Right eye: 3 crosses. Both: 3 squares."
pub fn alone(features: &[SolvedFeature], tongue: &Tongue) -> String {
    let of = |eyes: Eyes| Some(told(features, |seen| seen == eyes, tongue)).filter(|things| !things.is_empty());
    let left = of(Eyes::Left).map(|things| tongue.tell("eye-left-alone", &[("things", things.into())]));
    let right = of(Eyes::Right).map(|things| tongue.tell("eye-right-alone", &[("things", things.into())]));
    let both = of(Eyes::Both).map(|things| tongue.tell("eye-both-alone", &[("things", things.into())]));
    [left, right, both].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// "Left eye: a ring and a square. Right eye: a cross and a square. Both eyes together: a ring, a cross and a square."
pub fn figure(features: &[SolvedFeature], tongue: &Tongue) -> String {
    let left = told(features, |seen| seen != Eyes::Right, tongue);
    let right = told(features, |seen| seen != Eyes::Left, tongue);
    let together = told(features, |_| true, tongue);
    let args = [("left", left.into()), ("right", right.into()), ("together", together.into())];
    tongue.tell("picture-eyes", &args)
}

/// What stands on a page for these eyes, alike things counted together, in the order of the page.
fn told(features: &[SolvedFeature], keep: impl Fn(Eyes) -> bool, tongue: &Tongue) -> String {
    let parts = features.iter().filter(|feature| is_named(feature) && keep(feature.eyes));
    tongue.list(&things::inventory(parts.map(|feature| noun(feature, tongue)), tongue))
}

/// Numbers are signposts, no part of the picture.
fn is_named(feature: &SolvedFeature) -> bool {
    match feature.role {
        Role::Target | Role::Bead | Role::Trail | Role::Watch | Role::Lock | Role::Reference | Role::Field => true,
        Role::Number | Role::Guide => false,
    }
}

/// A part in one or two words: its name without its number; of letters and of what rides with a target, what it is.
fn noun(feature: &SolvedFeature, tongue: &Tongue) -> Noun {
    match &feature.form {
        SolvedForm::Shape { shape, .. }
            if matches!(shape, Shape::Text(_)) || matches!(feature.role, Role::Watch | Role::Lock) =>
        {
            things::shape(shape, tongue)
        }
        _ => {
            let stem = feature.id.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end_matches('-');
            things::thing(stem, tongue)
        }
    }
}
