//! What a solved page asks of the eyes: how the things stand that are looked at.

use crate::optics::Viewer;
use crate::scene::Role;
use crate::solve::{SolvedForm, Stand, stand};
use crate::units::Mm;

use super::prepare::SolvedPage;

/// How the targets of a page stand; a path counts with every point.
pub fn stands(page: &SolvedPage, viewer: &Viewer) -> Vec<Stand> {
    let mut stands = Vec::new();
    for feature in &page.features {
        match (feature.role, &feature.form) {
            (
                Role::Target | Role::Bead | Role::Trail | Role::Field,
                SolvedForm::Shape { .. } | SolvedForm::Strokes { .. },
            ) => stands.push(feature.stand),
            (Role::Target | Role::Bead | Role::Trail | Role::Field, SolvedForm::Dots(dots)) => {
                stands.extend(dots.stands());
            }
            (Role::Target | Role::Bead | Role::Trail | Role::Field, SolvedForm::Path { points, .. }) => {
                stands.extend(points.iter().filter_map(|p| stand(Mm(p.parallax), viewer)));
            }
            (Role::Watch | Role::Lock | Role::Number | Role::Guide | Role::Reference, _) => {}
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
