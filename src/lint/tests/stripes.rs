//! Tests of the rule on striped panels.

use super::*;

/// Upright strokes of this length at these places.
pub(super) fn fence(places: &[f64], length: f64) -> SolvedFeature {
    let strokes = places.iter().map(|&x| [(x, -length / 2.0), (x, length / 2.0)]).collect();
    SolvedFeature { form: SolvedForm::Strokes { strokes, weight: 1.0 }, ..target("fence", (0.0, 0.0), 0.0) }
}

pub(super) fn even(count: u32, period: f64) -> Vec<f64> {
    (0..count).map(|i| f64::from(i) * period - 40.0).collect()
}

fn found(features: &[SolvedFeature]) -> Vec<&'static str> {
    codes(&lint_page(features)).into_iter().filter(|code| code.ends_with("STRIPES")).collect()
}

/// 0.006 sr at 400 mm are 960 mm²: six spaces of 8 mm, 20 mm high, are just 960; 21 mm are more.
#[test]
fn more_than_five_pairs_over_a_large_field_are_refused() {
    assert_eq!(found(&[fence(&even(7, 8.0), 21.0)]), ["E-STRIPES"]);
    assert_eq!(found(&[fence(&even(7, 8.0), 19.9)]), [] as [&str; 0]);
    assert_eq!(found(&[fence(&even(6, 8.0), 60.0)]), [] as [&str; 0]);
}

/// One degree is 6.98 mm at 400 mm, so stripes of 2.33 mm are the 3 cycles a degree that are most unpleasant.
#[test]
fn fine_stripes_are_told_at_any_size() {
    assert_eq!(found(&[fence(&even(6, 2.33), 12.0)]), ["W-STRIPES"]);
    assert_eq!(found(&[fence(&even(5, 2.33), 12.0)]), [] as [&str; 0]);
    assert_eq!(found(&[fence(&even(6, 0.9), 12.0)]), [] as [&str; 0]);
    assert_eq!(found(&[fence(&even(21, 2.0), 4.0)]), [] as [&str; 0], "a scale");
}

#[test]
fn uneven_spaces_make_no_stripes() {
    let places = [-60.0, -52.0, -41.0, -35.0, -20.0, -13.0, 2.0, 8.0, 20.0];
    assert_eq!(found(&[fence(&places, 60.0)]), [] as [&str; 0]);
}

/// Nested squares: their sides are stripes as well.
#[test]
fn squares_within_squares_are_stripes() {
    let square = |size: f64| SolvedFeature {
        form: SolvedForm::Shape { shape: Shape::Square, size, extent: (size, size), weight: 1.0 },
        ..target("square", (0.0, 0.0), 0.0)
    };
    let nest = |count: u32| (0..count).map(|i| square(30.0 + f64::from(i) * 12.0)).collect::<Vec<_>>();
    assert_eq!(found(&nest(7)), ["E-STRIPES"]);
    assert_eq!(found(&nest(5)), [] as [&str; 0]);
}
