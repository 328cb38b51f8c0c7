//! The entries of `report.json`: one a feature, and one a figure that dots alone make.
//!
//! Like the report, the structs here are the file format and nothing else uses them.

use kurbo::Vec2;
use serde::Serialize;

use crate::layout::Placed;
use crate::layout::sheet::Sheet;
use crate::scene::{Eyes, Role};
use crate::solve::{SolvedDots, SolvedForm, Stand};
use crate::units::Mm;

use super::extent::Extent;
use super::report::{fine, round};

/// A feature on a page. Where its depth varies, the stand is that of its first point; of a field of dots and its
/// figures: the nearest.
#[derive(Serialize)]
pub(super) struct Entry<'a> {
    id: &'a str,
    role: &'static str,
    eyes: &'static str,
    /// Middle between its two half-images.
    at_mm: [f64; 2],
    size_mm: [f64; 2],
    #[serde(flatten)]
    stand: StandPart,
    /// The farthest stand of a field or figure whose depth varies.
    #[serde(skip_serializing_if = "Option::is_none")]
    farthest: Option<StandPart>,
    /// What the dots of a field are.
    #[serde(skip_serializing_if = "Option::is_none")]
    dots: Option<DotsPart<'a>>,
    /// `[x, y, parallax]` along a path, or over a grid of a field with its figures.
    #[serde(skip_serializing_if = "Option::is_none")]
    points: Option<Vec<[f64; 3]>>,
}

#[derive(Serialize)]
struct StandPart {
    parallax_mm: f64,
    demand_pd: f64,
    disparity_arcsec: f64,
    /// From the eye plane; null where the eyes stand parallel.
    place_mm: Option<f64>,
    /// Nearest and farthest place over the ipds of the audience; null is beyond every place.
    place_range_mm: [Option<f64>; 2],
}

#[derive(Serialize)]
struct DotsPart<'a> {
    dot_mm: f64,
    /// The share that dots cover.
    density: f64,
    /// The correlation between what the two eyes get.
    correlation: f64,
    /// Names the draws.
    key: &'a str,
}

/// The sheet with the words of an exercise page, where they stand apart from its art.
#[derive(Serialize)]
pub(super) struct WordsEntry {
    number: u32,
    #[serde(skip_serializing_if = "Option::is_none")]
    svg: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    png: Option<String>,
    /// The sheets on which the words run on.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    more: Vec<WordsEntry>,
}

impl WordsEntry {
    /// The entry of the sheets of words of a page; `None` without any.
    pub(super) fn of(sheets: &[&Sheet], extent: &Extent) -> Option<Self> {
        let one = |sheet: &Sheet| Self {
            number: sheet.number,
            svg: extent.svg(sheet),
            png: extent.png(sheet),
            more: Vec::new(),
        };
        let (first, rest) = sheets.split_first()?;
        Some(Self { more: rest.iter().map(|sheet| one(sheet)).collect(), ..one(first) })
    }
}

/// The entry of a feature; of a field, those of its figures after it.
pub(super) fn entries(placed: &Placed) -> Vec<Entry<'_>> {
    let mut entries = vec![Entry::new(placed)];
    if let SolvedForm::Dots(dots) = &placed.feature.form {
        entries.extend(figures(placed, dots));
    }
    entries
}

impl<'a> Entry<'a> {
    fn new(placed: &'a Placed) -> Self {
        let feature = &placed.feature;
        let (dots, farthest) = match &feature.form {
            SolvedForm::Dots(dots) => (Some(DotsPart::new(dots)), farthest(&dots.ground)),
            _ => (None, None),
        };
        Self {
            id: &feature.id,
            role: role_name(feature.role),
            eyes: eyes_name(feature.eyes),
            at_mm: [fine(placed.at.x), fine(placed.at.y)],
            size_mm: [fine(placed.size.width), fine(placed.size.height)],
            stand: StandPart::new(&feature.stand),
            farthest,
            dots,
            points: points(placed),
        }
    }
}

/// The figures of a field: both eyes see them together, neither alone.
fn figures<'a>(placed: &'a Placed, dots: &'a SolvedDots) -> impl Iterator<Item = Entry<'a>> {
    let shift = placed.at.to_vec2() - Vec2::from(placed.feature.at);
    dots.figures.iter().map(move |figure| Entry {
        id: &figure.id,
        role: "figure",
        eyes: eyes_name(Eyes::Both),
        at_mm: [fine(figure.at.0 + shift.x), fine(figure.at.1 + shift.y)],
        size_mm: [fine(figure.extent.0), fine(figure.extent.1)],
        stand: StandPart::new(&figure.stands[0]),
        farthest: farthest(&figure.stands),
        dots: None,
        points: None,
    })
}

impl StandPart {
    fn new(stand: &Stand) -> Self {
        let Stand { parallax, demand, disparity, place, place_range } = stand;
        Self {
            parallax_mm: fine(parallax.0),
            demand_pd: fine(demand.0),
            disparity_arcsec: round(disparity.to_arcsec(), 100.0),
            place_mm: place.map(|mm| fine(mm.0)),
            place_range_mm: near_to_far(*place_range),
        }
    }
}

/// The farther of two stands, if it is another than the nearer.
fn farthest([nearest, farthest]: &[Stand; 2]) -> Option<StandPart> {
    (nearest.parallax < farthest.parallax).then(|| StandPart::new(farthest))
}

impl<'a> DotsPart<'a> {
    fn new(dots: &'a SolvedDots) -> Self {
        let SolvedDots { dot, density, correlation, key, .. } = dots;
        Self { dot_mm: fine(*dot), density: fine(*density), correlation: fine(*correlation), key }
    }
}

/// The points of a path or a field in page mm, each with its parallax.
fn points(placed: &Placed) -> Option<Vec<[f64; 3]>> {
    let points: Vec<[f64; 3]> = match &placed.feature.form {
        SolvedForm::Path { points, .. } => points.iter().map(|p| [p.x, p.y, p.parallax]).collect(),
        SolvedForm::Dots(dots) => dots.points.clone(),
        SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } => return None,
    };
    // The middle is known in both frames, which differ by a shift alone.
    let (dx, dy) = (placed.at.x - placed.feature.at.0, placed.at.y - placed.feature.at.1);
    Some(points.into_iter().map(|[x, y, p]| [fine(x + dx), fine(y + dy), fine(p)]).collect())
}

/// The two places in order; no place at all lies beyond every place.
pub(super) fn near_to_far((a, b): (Option<Mm>, Option<Mm>)) -> [Option<f64>; 2] {
    let beyond = |place: Option<Mm>| place.map_or(f64::INFINITY, |mm| mm.0);
    let (near, far) = if beyond(b) < beyond(a) { (b, a) } else { (a, b) };
    [near, far].map(|place| place.map(|mm| fine(mm.0)))
}

const fn role_name(role: Role) -> &'static str {
    match role {
        Role::Target => "target",
        Role::Bead => "bead",
        Role::Trail => "trail",
        Role::Watch => "watch",
        Role::Lock => "lock",
        Role::Number => "number",
        Role::Guide => "guide",
        Role::Reference => "reference",
        Role::Field => "field",
    }
}

const fn eyes_name(eyes: Eyes) -> &'static str {
    match eyes {
        Eyes::Left => "left",
        Eyes::Right => "right",
        Eyes::Both => "both",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_far_end_of_a_range_may_have_no_place() {
        assert_eq!(near_to_far((Some(Mm(476.0)), Some(Mm(448.0)))), [Some(448.0), Some(476.0)]);
        assert_eq!(near_to_far((None, Some(Mm(4000.0)))), [Some(4000.0), None]);
        assert_eq!(near_to_far((Some(Mm(344.8)), Some(Mm(361.4)))), [Some(344.8), Some(361.4)]);
    }
}
