//! Words about what stands where, from the solved features: captions, alternative text and footers.

use crate::language::{Arg, Tongue};
use crate::optics::Viewer;
use crate::scene::{Eyes, Role};
use crate::solve::{FLAT, SolvedFeature, SolvedForm, Stand};
use crate::units::PrismDioptre;

use super::{apart, things};

/// A distance from the eyes over the ipd range: "34.5 to 36.1 cm".
pub fn place(stand: &Stand, viewer: &Viewer, tongue: &Tongue) -> String {
    let cm = |mm: f64| tongue.number(mm / 10.0, 1);
    match stand.place_range {
        _ if stand.demand.0.abs() < FLAT => tongue.cm(viewer.distance, 1),
        (Some(a), Some(b)) if cm(a.0) == cm(b.0) => tongue.cm(a, 1),
        (Some(a), Some(b)) => {
            let (near, far) = (cm(a.0.min(b.0)), cm(a.0.max(b.0)));
            tongue.tell("place-between", &[("near", near.into()), ("far", far.into())])
        }
        _ => tongue.say("place-very-far"),
    }
}

/// The features that are looked at: targets, or the trail and its beads.
pub fn looked_at(features: &[SolvedFeature]) -> impl Iterator<Item = &SolvedFeature> {
    features.iter().filter(|f| matches!(f.role, Role::Target | Role::Bead))
}

/// The demands that a page asks for, counted from the base, from the most toward to the most away, every point of a path included. What is read flat on the
/// page beside a target does not count.
pub fn demand_range(features: &[SolvedFeature], viewer: &Viewer) -> (f64, f64) {
    let base = viewer.base.horizontal.0;
    let of = |parallax: f64| 0.0 - 100.0 * parallax / viewer.distance.0;
    let all = features.iter().filter(|f| !matches!(f.role, Role::Guide | Role::Number)).flat_map(|feature| {
        match &feature.form {
            SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } => vec![feature.stand.demand.0],
            SolvedForm::Dots(dots) => dots.stands().map(|stand| stand.demand.0).collect(),
            SolvedForm::Path { points, .. } => points.iter().map(|point| of(point.parallax)).collect(),
        }
    });
    all.map(|demand| demand - base)
        .fold((f64::NEG_INFINITY, f64::INFINITY), |(high, low), demand| (high.max(demand), low.min(demand)))
}

/// A demand with its side, "2 pd toward"; `None` where it prints as 0.
pub fn side(demand: f64, tongue: &Tongue) -> Option<String> {
    if demand.abs() < FLAT {
        return None;
    }
    let pd = tongue.pd(PrismDioptre(demand), 2);
    Some(match 0.0 < demand {
        true => tongue.tell("demand-toward", &[("pd", pd.into())]),
        false => tongue.tell("demand-away", &[("pd", pd.into())]),
    })
}

/// How a target stands, counted from the base: "2 pd toward", "on the page".
pub fn stand_words(stand: &Stand, viewer: &Viewer, tongue: &Tongue) -> String {
    side(stand.demand_from(viewer.base.horizontal), tongue).unwrap_or_else(|| tongue.say("demand-on-page"))
}

/// The demand range in words: "4 pd toward", "from 2 pd toward to 1 pd away"; `None` for what all is on the page.
fn depths(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> Option<String> {
    let (high, low) = demand_range(features, viewer);
    match (side(high, tongue), side(low, tongue)) {
        (None, None) => None,
        (Some(from), Some(to)) if from == to => Some(from),
        (Some(from), Some(to)) => Some(tongue.tell("demand-range", &[("from", from.into()), ("to", to.into())])),
        (Some(from), None) => Some(tongue.tell("demand-range-to-page", &[("from", from.into())])),
        (None, Some(to)) => Some(tongue.tell("demand-range-from-page", &[("to", to.into())])),
    }
}

/// The same, with "the page" for what all is there.
pub fn demand_words(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    depths(features, viewer, tongue).unwrap_or_else(|| tongue.say("demand-page"))
}

/// The message about the page as it is drawn, or the one that counts from a base.
fn counted<'a>(viewer: &Viewer, [plain, on_base]: [&'a str; 2]) -> &'a str {
    if viewer.base.is_none() { plain } else { on_base }
}

/// "All on the page, at 40 cm.", "Depths: from 2 pd toward to the page; page at 40 cm."
fn stands(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    let distance = ("distance", tongue.cm(viewer.distance, 1).into());
    match depths(features, viewer, tongue) {
        None => tongue.tell(counted(viewer, ["caption-flat", "caption-flat-base"]), &[distance]),
        Some(depths) => {
            let id = counted(viewer, ["caption-deep", "caption-deep-base"]);
            tongue.tell(id, &[("depths", depths.into()), distance])
        }
    }
}

/// The caption of many depths: their range.
pub fn range_caption(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    depths_caption(demand_words(features, viewer, tongue), viewer, tongue)
}

/// "Depths: 4 pd toward. From your eyes: page 40 cm."
fn depths_caption(depths: String, viewer: &Viewer, tongue: &Tongue) -> String {
    let args: [(&str, Arg<'_>); 2] = [("depths", depths.into()), ("distance", tongue.cm(viewer.distance, 1).into())];
    tongue.tell(counted(viewer, ["caption-range", "caption-range-base"]), &args)
}

/// The caption under the art: where the targets should seem to stand, counted from the eyes. On a base: demands alone.
/// Where something seems to stand before turned eyes nobody can promise.
pub fn caption(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    if apart::is_apart(features) {
        return format!("{} {}", apart::alone(features, tongue), stands(features, viewer, tongue));
    }
    let seen: Vec<&SolvedFeature> = looked_at(features).collect();
    if seen.is_empty() || 3 < seen.len() {
        return range_caption(features, viewer, tongue);
    }
    let on_base = !viewer.base.is_none();
    let words = |stand: &Stand, name: Option<String>| {
        let demand = stand_words(stand, viewer, tongue);
        let place = place(stand, viewer, tongue);
        let mut args: Vec<(&str, Arg<'_>)> = vec![("demand", demand.into()), ("place", place.into())];
        let id = match (&name, on_base) {
            (Some(_), true) => "caption-depth",
            (Some(_), false) => "caption-place",
            (None, true) => "caption-depth-all",
            (None, false) => "caption-place-all",
        };
        args.extend(name.map(|name| ("name", name.into())));
        tongue.tell(id, &args)
    };
    let parts: Vec<String> = match seen.split_first() {
        Some((first, rest)) if !rest.is_empty() && rest.iter().all(|f| f.stand == first.stand) => {
            vec![words(&first.stand, None)]
        }
        _ => seen.iter().map(|f| words(&f.stand, Some(things::name(&f.id, tongue)))).collect(),
    };
    let parts = things::apart(&parts, tongue);
    if on_base {
        return depths_caption(parts, viewer, tongue);
    }
    let distance = tongue.cm(viewer.distance, 1);
    tongue.tell("caption-places", &[("places", parts.into()), ("distance", distance.into())])
}

/// Alternative text for the art: what each eye gets, and what both together should see. A base is told
/// [besides](super::base::sentence).
pub fn figure(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    if features.iter().any(|f| f.role == Role::Field) {
        return dots(features, viewer, tongue);
    }
    if apart::is_apart(features) {
        return format!("{} {}", apart::figure(features, tongue), stands(features, viewer, tongue));
    }
    let depths = depths(features, viewer, tongue);
    let same = tongue.say(if depths.is_none() { "picture-same" } else { "picture-same-moved" });
    let marks = |eyes: Eyes, name: &str| {
        let marks = features.iter().filter(|f| f.role == Role::Watch && f.eyes == eyes);
        things::inventory(marks.map(|_| tongue.noun(name)), tongue)
    };
    let left = with_marks(inventory(features, tongue), marks(Eyes::Left, "shape-bar"), tongue);
    let right = with_marks(vec![same], marks(Eyes::Right, "shape-wedge"), tongue);
    let together = match (together(features, viewer, tongue), depths) {
        (all, _) if !all.is_empty() => things::apart(&all, tongue),
        (_, Some(depths)) => tongue.tell("picture-line", &[("depths", depths.into())]),
        (_, None) => tongue.say("picture-line-flat"),
    };
    let args = [("left", left.into()), ("right", right.into()), ("together", together.into())];
    tongue.tell("picture-eyes", &args)
}

/// Things in a row; the marks that ride with them come last.
fn with_marks(things: Vec<String>, marks: Vec<String>, tongue: &Tongue) -> String {
    if marks.is_empty() { things.join(", ") } else { tongue.list(&[things, marks].concat()) }
}

/// Where the first twelve targets stand.
fn together(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> Vec<String> {
    let stands = |f: &SolvedFeature| {
        let (name, demand) = (things::name(&f.id, tongue), stand_words(&f.stand, viewer, tongue));
        let place = place(&f.stand, viewer, tongue);
        let args = [("name", name.into()), ("demand", demand.into()), ("place", place.into())];
        tongue.tell(counted(viewer, ["picture-stand", "picture-stand-base"]), &args)
    };
    looked_at(features).take(12).map(stands).collect()
}

/// The same for a field of random dots: what is hidden in it stays hidden, what is drawn on it is told.
fn dots(features: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    let mut sentences = vec![match depths(features, viewer, tongue) {
        Some(depths) => tongue.tell("picture-dots", &[("depths", depths.into())]),
        None => tongue.say("picture-dots-flat"),
    }];
    if features.iter().any(|f| f.role == Role::Guide) {
        sentences.push(tongue.say("picture-dots-lines"));
    }
    let drawn = together(features, viewer, tongue);
    if !drawn.is_empty() {
        sentences.push(tongue.tell("picture-dots-drawn", &[("things", things::apart(&drawn, tongue).into())]));
    }
    sentences.join(" ")
}

/// "a ring", "2 stars", "a trail with 9 beads": alike shapes are counted together.
fn inventory(features: &[SolvedFeature], tongue: &Tongue) -> Vec<String> {
    let beads = features.iter().filter(|f| f.role == Role::Bead).count();
    let targets = || features.iter().filter(|f| f.role == Role::Target);
    let shapes = targets().filter_map(|feature| match &feature.form {
        SolvedForm::Shape { shape, .. } => Some(things::shape(shape, tongue)),
        _ => None,
    });
    let others = features.iter().filter_map(|feature| match (&feature.form, feature.role) {
        (SolvedForm::Shape { .. }, Role::Target) => None,
        (_, Role::Target) => Some(things::name(&feature.id, tongue)),
        (_, Role::Trail) if 0 < beads => Some(tongue.tell("picture-trail-beads", &[("count", beads.into())])),
        (_, Role::Trail) => Some(tongue.say("picture-trail")),
        _ => None,
    });
    let deep = features.iter().any(|f| f.role == Role::Guide).then(|| tongue.say("picture-lines"));
    deep.into_iter().chain(things::inventory(shapes, tongue)).chain(others).collect()
}
