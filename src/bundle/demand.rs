//! What a solved page asks of the eyes: how the things stand that are looked at.

use crate::optics::Viewer;
use crate::solve::{SolvedForm, Stand, is_looked_at, stand};
use crate::units::Mm;

use super::prepare::SolvedPage;

/// How the targets of a page stand; a path counts with every point.
pub fn stands(page: &SolvedPage, viewer: &Viewer) -> Vec<Stand> {
    let mut stands = Vec::new();
    for feature in page.features.iter().filter(|feature| is_looked_at(feature)) {
        match &feature.form {
            SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } => stands.push(feature.stand),
            SolvedForm::Dots(dots) => stands.extend(dots.stands()),
            SolvedForm::Path { points, .. } => {
                stands.extend(points.iter().filter_map(|p| stand(Mm(p.parallax), viewer)));
            }
        }
    }
    stands
}

/// The least and the greatest, to 4 decimals; `None` of nothing.
pub fn span(values: impl Iterator<Item = f64>) -> Option<[f64; 2]> {
    let mut span: Option<[f64; 2]> = None;
    for value in values {
        let [low, high] = span.unwrap_or([value; 2]);
        span = Some([low.min(value), high.max(value)]);
    }
    span.map(|ends| ends.map(|end| (end * 1e4).round() / 1e4 + 0.0))
}
