//! What a solved page asks of the eyes: the facts that its difficulty is made of.
//!
//! Demands count against the base of the viewer, which only makes up for an eye turn. Nothing here judges: limits are
//! for the lints, weights for [`grading`](crate::optics::grading).

use super::{SolvedFeature, SolvedForm};
use crate::optics::grading::Asked;
use crate::optics::{Viewer, Viewing};
use crate::scene::{Effort, Eyes, Role, Shape, Strand};
use crate::units::{Angle, Mm, PrismDioptre};

/// Differences of disparity below this are none, arcsec. Source: design choice, far below what anyone sees and far above
/// the grid of the solver.
const SAME: f64 = 1.0;

/// Whether a feature is looked at, and not a mark, a frame or a number that rides along.
pub fn is_looked_at(feature: &SolvedFeature) -> bool {
    match feature.role {
        Role::Target | Role::Bead | Role::Trail | Role::Field => true,
        Role::Watch | Role::Lock | Role::Number | Role::Guide | Role::Reference => false,
    }
}

/// What a page of a strand asks of the eyes of a viewer; `None` for a viewer that is none, and where a number is none.
pub fn asked(features: &[SolvedFeature], effort: Effort, strand: Strand, viewer: &Viewer) -> Option<Asked> {
    let viewing = viewer.viewing()?;
    let base = viewer.base_parallax();
    let looked: Vec<&SolvedFeature> = features.iter().filter(|feature| is_looked_at(feature)).collect();
    let parallaxes: Vec<f64> = looked.iter().flat_map(|feature| parallaxes(feature)).map(|p| p - base.0).collect();
    let demand = |parallax: f64| viewing.demand_of_parallax(Mm(parallax)).map(|pd| pd.0);
    let nearest = demand(parallaxes.iter().copied().fold(0.0, f64::min))?;
    let farthest = demand(parallaxes.iter().copied().fold(0.0, f64::max))?;
    let jump = if strand == Strand::Jump { demand(-largest_step(&looked))? } else { 0.0 };
    Some(Asked {
        toward: PrismDioptre(nearest.max(0.0)),
        away: PrismDioptre((0.0 - farthest).max(0.0)),
        jump: PrismDioptre(jump.max(0.0)),
        finest: if strand == Strand::Depth { finest(&parallaxes, &viewing) } else { None },
        size: smallest(&looked).and_then(|mm| viewing.angle_of_length(Mm(mm))),
        cue: effort.cue,
        correlation: correlation(&looked),
        dwell: effort.dwell,
    })
}

/// The name of the strand of a page, as report, ladder and lints write it: a page that holds belongs to the side of its
/// strongest demand, and on the page to `toward`.
pub fn strand_name(strand: Strand, asked: Option<&Asked>) -> &'static str {
    match strand {
        Strand::Check => "check",
        Strand::Hold if asked.is_some_and(|asked| asked.toward.0 < asked.away.0) => "away",
        Strand::Hold => "toward",
        Strand::Jump => "jump",
        Strand::Smooth => "smooth",
        Strand::Depth => "depth",
    }
}

/// Every parallax of a feature; of a field of dots: the ends of its ground and of each figure.
fn parallaxes(feature: &SolvedFeature) -> Vec<f64> {
    match &feature.form {
        SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } => vec![feature.stand.parallax.0],
        SolvedForm::Dots(dots) => dots.stands().map(|stand| stand.parallax.0).collect(),
        SolvedForm::Path { points, .. } => points.iter().map(|point| point.parallax).collect(),
    }
}

/// The largest change of parallax from one target to the next, in the order of looking. The way from the last back to
/// the first does not count: not every route is closed.
fn largest_step(looked: &[&SolvedFeature]) -> f64 {
    let stops: Vec<f64> =
        looked.iter().filter(|feature| feature.eyes == Eyes::Both).map(|feature| feature.stand.parallax.0).collect();
    stops.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0.0, f64::max)
}

/// The least difference of disparity that is not none, the page itself included; `None` where all stands on the page.
fn finest(parallaxes: &[f64], viewing: &Viewing) -> Option<Angle> {
    let disparity = |parallax: f64| viewing.disparity_of_parallax(Mm(parallax)).map(Angle::to_arcsec);
    let mut all: Vec<f64> = parallaxes.iter().copied().chain([0.0]).map(disparity).collect::<Option<Vec<_>>>()?;
    all.sort_by(f64::total_cmp);
    let steps = all.windows(2).map(|pair| pair[1] - pair[0]).filter(|step| SAME <= *step);
    steps.reduce(f64::min).map(Angle::from_arcsec)
}

/// The size of the smallest thing to look at, mm: the longer side of a shape, the height of a capital letter, a figure in
/// dots or, without one, their field. A line that is followed has none.
fn smallest(looked: &[&SolvedFeature]) -> Option<f64> {
    looked.iter().flat_map(|feature| sizes(feature)).reduce(f64::min)
}

fn sizes(feature: &SolvedFeature) -> Vec<f64> {
    match &feature.form {
        SolvedForm::Shape { shape: Shape::Text(_), size, .. } => vec![*size],
        SolvedForm::Shape { extent, .. } => vec![extent.0.max(extent.1)],
        SolvedForm::Strokes { strokes, .. } => vec![longer_side(strokes)],
        SolvedForm::Path { .. } => Vec::new(),
        SolvedForm::Dots(dots) if dots.figures.is_empty() => vec![dots.extent.0.max(dots.extent.1)],
        SolvedForm::Dots(dots) => dots.figures.iter().map(|figure| figure.extent.0.max(figure.extent.1)).collect(),
    }
}

/// The longer side of the box around the middles of strokes, mm.
fn longer_side(strokes: &[[(f64, f64); 2]]) -> f64 {
    let span = |value: fn(&(f64, f64)) -> f64| {
        let values = || strokes.iter().flatten().map(value);
        values().fold(f64::NEG_INFINITY, f64::max) - values().fold(f64::INFINITY, f64::min)
    };
    span(|end| end.0).max(span(|end| end.1))
}

/// The least correlation of the fields of dots.
fn correlation(looked: &[&SolvedFeature]) -> Option<f64> {
    let fields = looked.iter().filter_map(|feature| match &feature.form {
        SolvedForm::Dots(dots) => Some(dots.correlation),
        SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } | SolvedForm::Path { .. } => None,
    });
    fields.reduce(f64::min)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::{At, Companions, Depth, Feature, Form, Scaling, Scene, Side, Size};
    use crate::solve::solve;
    use crate::units::Seconds;

    fn viewer() -> Viewer {
        Viewer::new(Mm(400.0), Mm(64.0), (Mm(50.0), Mm(75.0)))
    }

    fn ring(id: &str, size: f64, depth: Depth) -> Feature {
        Feature {
            id: id.to_owned(),
            role: Role::Target,
            eyes: Eyes::Both,
            form: Form::Shape {
                shape: Shape::Ring,
                at: At::default(),
                size: Size::Length(Mm(size)),
                weight: Mm(1.0),
                depth,
            },
            scaling: Scaling::ConstantAngle,
            companions: Companions { watch: true, lock: true, number: Some(1), demand: None },
            solid: false,
            place: None,
        }
    }

    fn of(depths: &[Depth], strand: Strand, viewer: &Viewer) -> Asked {
        let features = depths.iter().zip([20.0, 30.0, 40.0]).map(|(depth, size)| ring("a", size, depth.clone()));
        let solved = solve(&Scene { features: features.collect() }, viewer).unwrap();
        asked(&solved, Effort::held(Seconds(3.0)), strand, viewer).unwrap()
    }

    fn pd(amount: f64, side: Side) -> Depth {
        Depth::Demand(PrismDioptre(amount), side)
    }

    #[test]
    fn demands_and_jumps_are_those_of_the_targets() {
        let depths = [pd(1.0, Side::Toward), pd(2.0, Side::Away), pd(4.0, Side::Toward)];
        let asked = of(&depths, Strand::Jump, &viewer());
        assert!((asked.toward.0 - 4.0).abs() < 1e-9 && (asked.away.0 - 2.0).abs() < 1e-9, "{asked:?}");
        assert!((asked.jump.0 - 6.0).abs() < 1e-9, "{asked:?}");
        assert_eq!((asked.finest, asked.dwell, asked.cue), (None, Some(Seconds(3.0)), None));
        // 2 atan(10/400)
        assert!((asked.size.unwrap().to_degrees() - 2.0 * (10.0_f64 / 400.0).atan().to_degrees()).abs() < 1e-9);
        assert_eq!(of(&depths, Strand::Hold, &viewer()).jump, PrismDioptre(0.0));
    }

    /// Between 2 and 3 arcmin toward lies the least step, and below 1 arcmin that of the page.
    #[test]
    fn the_finest_step_counts_the_page() {
        let arcsec = |amount| Depth::Disparity(Angle::from_arcsec(amount), Side::Toward);
        let finest = |depths: &[Depth]| of(depths, Strand::Depth, &viewer()).finest.map(Angle::to_arcsec);
        let near = |found: Option<f64>, wanted: f64| (found.unwrap() - wanted).abs() < 1e-3;
        assert!(near(finest(&[arcsec(120.0), arcsec(180.0)]), 60.0));
        assert!(near(finest(&[arcsec(40.0), arcsec(180.0)]), 40.0));
        assert_eq!(finest(&[Depth::Page, Depth::Page]), None);
    }

    /// The page rides on the base; what is asked stays as written.
    #[test]
    fn a_base_asks_nothing_of_the_reader() {
        let mut viewer = viewer();
        viewer.base.horizontal = PrismDioptre(3.0);
        let depths = [pd(4.0, Side::Toward), pd(2.0, Side::Away)];
        let asked = of(&depths, Strand::Jump, &viewer);
        assert!((asked.toward.0 - 4.0).abs() < 1e-6 && (asked.away.0 - 2.0).abs() < 1e-6, "{asked:?}");
        assert!((asked.jump.0 - 6.0).abs() < 1e-6, "{asked:?}");
    }

    #[test]
    fn a_page_that_holds_belongs_to_its_strongest_side() {
        let name = |depths: &[Depth]| strand_name(Strand::Hold, Some(&of(depths, Strand::Hold, &viewer())));
        assert_eq!(name(&[Depth::Page]), "toward");
        assert_eq!(name(&[pd(1.0, Side::Toward), pd(2.0, Side::Away)]), "away");
        assert_eq!(strand_name(Strand::Hold, None), "toward");
    }
}
