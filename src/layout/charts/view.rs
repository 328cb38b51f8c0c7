//! What of a page a plan shows: each thing that is looked at, as points straight across and straight ahead.

use crate::optics::Viewer;
use crate::optics::geometry::{HalfImages, Viewing};
use crate::scene::{Eye, Eyes};
use crate::solve::{SolvedFeature, SolvedForm, half_x, is_looked_at};
use crate::units::Mm;

/// Seen from above: to the right of the midpoint of the eyes, and straight ahead of them, mm.
pub type Place = (f64, f64);

/// Something that is looked at, as it stands in space.
#[derive(Debug, Clone, PartialEq)]
pub struct Spot {
    /// Its id on the page.
    pub id: String,
    /// Who sees it.
    pub eyes: Eyes,
    /// What it is seen from above.
    pub form: Seen,
    /// Nearest and farthest parallax, mm.
    pub parallax: (f64, f64),
    /// Where a label points to, and eyes that look at it: its middle, or of a line that changes its depth the point
    /// farthest from the page.
    pub middle: Place,
}

/// A thing seen from above.
#[derive(Debug, Clone, PartialEq)]
pub enum Seen {
    /// It faces the reader: a line from its left to its right end.
    Across(Place, Place),
    /// A line that may change its depth.
    Line(Vec<Place>),
    /// Anything between two depths: near left, near right, far right, far left.
    Strip([Place; 4]),
}

impl Spot {
    /// All its corners.
    pub fn corners(&self) -> Vec<Place> {
        match &self.form {
            Seen::Across(a, b) => vec![*a, *b],
            Seen::Line(points) => points.clone(),
            Seen::Strip(corners) => corners.to_vec(),
        }
    }
}

/// What is looked at on a page, in the order of its features. `None` for a viewer that is none.
///
/// The solver refuses what would stand at or past parallel eyes, so everything has a place.
pub fn spots(features: &[SolvedFeature], viewer: &Viewer) -> Option<Vec<Spot>> {
    let viewing = viewer.viewing()?;
    let looked = features.iter().filter(|feature| is_looked_at(feature));
    Some(looked.flat_map(|feature| of_feature(feature, &viewing)).collect())
}

fn of_feature(feature: &SolvedFeature, viewing: &Viewing) -> Vec<Spot> {
    let spot = |id: &str, form: Option<Seen>, parallax| {
        let middle = middle(form.as_ref()?, viewing.distance().0);
        Some(Spot { id: id.to_owned(), eyes: feature.eyes, form: form?, parallax, middle })
    };
    let own = |form, parallax| spot(&feature.id, form, parallax).into_iter().collect();
    let p = feature.stand.parallax.0;
    let ends = |low: f64, high: f64| Some(Seen::Across(place(viewing, low, p)?, place(viewing, high, p)?));
    match &feature.form {
        SolvedForm::Shape { extent, .. } => {
            own(ends(feature.at.0 - extent.0 / 2.0, feature.at.0 + extent.0 / 2.0), (p, p))
        }
        SolvedForm::Strokes { strokes, .. } => {
            let (low, high) = span(strokes.iter().flatten().map(|end| end.0));
            own(ends(low, high), (p, p))
        }
        SolvedForm::Path { points, closed, .. } => {
            let first = points.first().filter(|_| *closed);
            let places = points.iter().chain(first).map(|point| place(viewing, point.x, point.parallax));
            own(places.collect::<Option<_>>().map(Seen::Line), span(points.iter().map(|point| point.parallax)))
        }
        SolvedForm::Dots(dots) => {
            let ground = dots.ground.map(|stand| stand.parallax.0);
            let field = spot(&feature.id, strip(viewing, feature.at.0, dots.extent.0, ground), ground.into());
            let figures = dots.figures.iter().filter_map(|figure| {
                let depths = figure.stands.map(|stand| stand.parallax.0);
                spot(&figure.id, strip(viewing, figure.at.0, figure.extent.0, depths), depths.into())
            });
            field.into_iter().chain(figures).collect()
        }
    }
}

/// The strip of something `wide` on the page between two parallaxes.
fn strip(viewing: &Viewing, middle: f64, wide: f64, [near, far]: [f64; 2]) -> Option<Seen> {
    let (left, right) = (middle - wide / 2.0, middle + wide / 2.0);
    let at = |x, p| place(viewing, x, p);
    Some(Seen::Strip([at(left, near)?, at(right, near)?, at(right, far)?, at(left, far)?]))
}

/// Where a point stands whose half-images lie about `x` on the page.
fn place(viewing: &Viewing, x: f64, parallax: f64) -> Option<Place> {
    let half = |eye| Mm(half_x(x, parallax, eye));
    let point = viewing.intersect(HalfImages { left_x: half(Eye::Left), right_x: half(Eye::Right), y: Mm(0.0) })?;
    Some((point.x.0, point.z.0))
}

/// The middle of a thing seen from above; of a line that changes its depth, its point farthest from the page.
fn middle(form: &Seen, page: f64) -> Place {
    let between = |a: &Place, b: &Place| ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0);
    match form {
        Seen::Across(a, b) => between(a, b),
        Seen::Strip([a, _, c, _]) => between(a, c),
        Seen::Line(points) => {
            let (near, far) = span(points.iter().map(|&(_, z)| z));
            if far - near < FLAT {
                let (left, right) = span(points.iter().map(|&(x, _)| x));
                return ((left + right) / 2.0, (near + far) / 2.0);
            }
            let away = |point: &Place| (point.1 - page).abs();
            let farther = |best: Place, point: Place| if away(&best) < away(&point) { point } else { best };
            points.iter().copied().reduce(farther).unwrap_or_default()
        }
    }
}

/// A line whose places differ by less than this in depth is flat, mm.
const FLAT: f64 = 1e-3;

/// The least and the greatest.
fn span(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(value), high.max(value)))
}
