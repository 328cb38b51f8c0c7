//! Words about what stands where, from the solved features: captions, alternative text and footers.

use crate::exercise::words::shape_name;
use crate::optics::Viewer;
use crate::scene::{Eyes, Role};
use crate::solve::{FLAT, SolvedFeature, SolvedForm, Stand};
use crate::units::plain;

use super::apart;

/// A distance from the eyes over the ipd range: "34.5 to 36.1 cm".
pub fn place(stand: &Stand, viewer: &Viewer) -> String {
    let cm = |mm: f64| plain(mm / 10.0, 1);
    match stand.place_range {
        _ if stand.demand.0.abs() < FLAT => format!("{} cm", cm(viewer.distance.0)),
        (Some(a), Some(b)) if cm(a.0) == cm(b.0) => format!("{} cm", cm(a.0)),
        (Some(a), Some(b)) => format!("{} to {} cm", cm(a.0.min(b.0)), cm(a.0.max(b.0))),
        _ => "very far away".to_owned(),
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

/// The demand range in words: "4 pd toward", "from 2 pd toward to 1 pd away".
pub fn demand_words(features: &[SolvedFeature], viewer: &Viewer) -> String {
    let (high, low) = demand_range(features, viewer);
    let words = |demand: f64| {
        if demand.abs() < FLAT {
            "the page".to_owned()
        } else {
            format!("{} pd {}", plain(demand.abs(), 2), if 0.0 < demand { "toward" } else { "away" })
        }
    };
    let (from, to) = (words(high), words(low));
    if from == to { from } else { format!("from {from} to {to}") }
}

/// "All on the page, at 40 cm.", "Depths: from 2 pd toward to the page, at 40 cm."
fn stands(features: &[SolvedFeature], viewer: &Viewer) -> String {
    let cm = plain(viewer.distance.0 / 10.0, 1);
    match demand_words(features, viewer).as_str() {
        "the page" => format!("All on the page{}, at {cm} cm.", counted(viewer)),
        words => format!("Depths{}: {words}; page at {cm} cm.", counted(viewer)),
    }
}

/// What demands are counted from, where that is not the page as it is drawn.
fn counted(viewer: &Viewer) -> &'static str {
    if viewer.base.is_none() { "" } else { ", counted from the base" }
}

/// The caption of many depths: their range.
pub fn range_caption(features: &[SolvedFeature], viewer: &Viewer) -> String {
    let page = plain(viewer.distance.0 / 10.0, 1);
    format!("Depths{}: {}. From your eyes: page {page} cm.", counted(viewer), demand_words(features, viewer))
}

/// The caption on a base: demands alone. Where something seems to stand before turned eyes nobody can promise.
fn on_base(seen: &[&SolvedFeature], viewer: &Viewer) -> String {
    let base = viewer.base.horizontal;
    let parts: Vec<String> = match seen.split_first() {
        Some((first, rest)) if !rest.is_empty() && rest.iter().all(|f| f.stand == first.stand) => {
            vec![format!("all {}", first.stand.demand_words(base))]
        }
        _ => seen.iter().map(|f| format!("{} {}", f.id.replace('-', " "), f.stand.demand_words(base))).collect(),
    };
    let page = plain(viewer.distance.0 / 10.0, 1);
    format!("Depths{}: {}. From your eyes: page {page} cm.", counted(viewer), parts.join("; "))
}

/// The caption under the art: where the targets should seem to stand, counted from the eyes.
pub fn caption(features: &[SolvedFeature], viewer: &Viewer) -> String {
    if apart::is_apart(features) {
        return format!("{} {}", apart::alone(features), stands(features, viewer));
    }
    let seen: Vec<&SolvedFeature> = looked_at(features).collect();
    if seen.is_empty() || 3 < seen.len() {
        return range_caption(features, viewer);
    }
    if !viewer.base.is_none() {
        return on_base(&seen, viewer);
    }
    let page = format!("page {} cm", plain(viewer.distance.0 / 10.0, 1));
    let words = |stand: &Stand| format!("{} ({})", place(stand, viewer), stand.demand_words(viewer.base.horizontal));
    let of = |feature: &&SolvedFeature| {
        let name = feature.id.replace('-', " ");
        format!("{name} {}", words(&feature.stand))
    };
    let parts: Vec<String> = match seen.split_first() {
        Some((first, rest)) if !rest.is_empty() && rest.iter().all(|f| f.stand == first.stand) => {
            vec![format!("all {}", words(&first.stand))]
        }
        _ => seen.iter().map(of).collect(),
    };
    format!("From your eyes: {}; {page}.", parts.join("; "))
}

/// Alternative text for the art: what each eye gets, and what both together should see. A base is told
/// [besides](super::base::sentence).
pub fn figure(features: &[SolvedFeature], viewer: &Viewer) -> String {
    if features.iter().any(|f| f.role == Role::Field) {
        return dots(features, viewer);
    }
    if apart::is_apart(features) {
        return format!("{} {}", apart::figure(features), stands(features, viewer));
    }
    let things = inventory(features);
    let marks = |eyes: Eyes, name: &str| {
        let count = features.iter().filter(|f| f.role == Role::Watch && f.eyes == eyes).count();
        match count {
            0 => String::new(),
            1 => format!(" and a {name}"),
            n => format!(" and {n} {name}s"),
        }
    };
    let together = together(features, viewer);
    let moved = if demand_words(features, viewer) == "the page" { "" } else { " moved sideways by their depth" };
    format!(
        "Left eye: {things}{}. Right eye: the same shapes{moved}{}. Both eyes together: {}.",
        marks(Eyes::Left, "bar"),
        marks(Eyes::Right, "wedge"),
        if together.is_empty() {
            format!("one line that runs {}", demand_words(features, viewer))
        } else {
            together.join("; ")
        }
    )
}

/// Where the first twelve targets stand.
fn together(features: &[SolvedFeature], viewer: &Viewer) -> Vec<String> {
    let stands = |f: &SolvedFeature| {
        let name = format!("{} {}", f.id.replace('-', " "), f.stand.demand_words(viewer.base.horizontal));
        if viewer.base.is_none() { format!("{name}, {} from the eyes", place(&f.stand, viewer)) } else { name }
    };
    looked_at(features).take(12).map(stands).collect()
}

/// The same for a field of random dots: what is hidden in it stays hidden, what is drawn on it is told.
fn dots(features: &[SolvedFeature], viewer: &Viewer) -> String {
    let lines =
        if features.iter().any(|f| f.role == Role::Guide) { " Drawn lines show where depth changes." } else { "" };
    let drawn = match together(features, viewer) {
        all if all.is_empty() => String::new(),
        all => format!(" Among them: {}.", all.join("; ")),
    };
    format!(
        "Left eye: random dots inside a frame, every second dash of it. Right eye: the same dots, moved sideways by their \
         depth, and the other dashes. Both eyes together: dots that stand {}, in a whole frame.{lines}{drawn}",
        demand_words(features, viewer)
    )
}

/// "a ring, 2 stars, a trail with 9 beads": alike shapes are counted together.
fn inventory(features: &[SolvedFeature]) -> String {
    let guides = features.iter().any(|f| f.role == Role::Guide);
    let beads = features.iter().filter(|f| f.role == Role::Bead).count();
    let mut shapes: Vec<(&str, u32)> = Vec::new();
    let mut others = Vec::new();
    for feature in features {
        match (&feature.form, feature.role) {
            (SolvedForm::Shape { shape, .. }, Role::Target) => {
                let name = shape_name(shape);
                match shapes.iter_mut().find(|(known, _)| *known == name) {
                    Some((_, count)) => *count += 1,
                    None => shapes.push((name, 1)),
                }
            }
            (_, Role::Target) => others.push(feature.id.replace('-', " ")),
            (_, Role::Trail) if 0 < beads => others.push(format!("a trail with {beads} beads")),
            (_, Role::Trail) => others.push("a trail".to_owned()),
            _ => {}
        }
    }
    let depth = guides.then(|| "lines that run into the depth".to_owned());
    let shapes = shapes.into_iter().map(|(name, count)| apart::counted(name, count));
    depth.into_iter().chain(shapes).chain(others).collect::<Vec<_>>().join(", ")
}
