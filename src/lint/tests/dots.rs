//! Tests of the rules about fields of random dots, on fields of the solver and on fields made worse by hand.

use std::sync::Arc;

use super::*;
use crate::scene::{At, Companions, Depth, DotField, DotFigure, Feature, Form, Relief, Scaling, Scene, Side, Size};
use crate::solve::{DotRow, SolvedDots, solve};

fn figure(id: &str, shape: Shape, x: f64, size: f64, toward: f64) -> DotFigure {
    let depth = Relief::Flat(Depth::Parallax(Mm(toward), Side::Toward));
    DotFigure { id: id.into(), shape, at: At { x: Mm(x), y: Mm(0.0) }, size: Size::Length(Mm(size)), depth }
}

/// A field of 120 × 80 mm on the page with dots of this side.
fn field(figures: Vec<DotFigure>, dot: f64, key: &str) -> SolvedFeature {
    let dots = DotField {
        at: At::default(),
        width: Mm(120.0),
        height: Mm(80.0),
        dot: Size::Length(Mm(dot)),
        density: 0.3,
        correlation: 1.0,
        ground: Relief::Flat(Depth::Page),
        figures,
        key: key.into(),
    };
    let feature = Feature {
        id: "dots".into(),
        role: Role::Field,
        eyes: Eyes::Both,
        form: Form::Dots(Box::new(dots)),
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    };
    solve(&Scene { features: vec![feature] }, &VIEWER).unwrap().remove(0)
}

/// A square of this size, so many millimetres of parallax toward the reader.
pub(super) fn square(size: f64, toward: f64, key: &str) -> SolvedFeature {
    field(vec![figure("square", Shape::Square, 0.0, size, toward)], 0.8, key)
}

/// The same field with other dots for the left eye in the rows of its first figure; `change` gets a row and the half-image
/// of the figure in it.
fn changed(feature: &SolvedFeature, change: impl Fn(&[(f64, f64)], (f64, f64)) -> Vec<(f64, f64)>) -> SolvedFeature {
    let SolvedForm::Dots(dots) = &feature.form else { panic!("no dots") };
    let toward = -dots.figures[0].stands[0].parallax.0;
    let mut dots: SolvedDots = (**dots).clone();
    for (row, chords) in dots.rows.iter_mut().zip(&dots.figures[0].chords) {
        for chord in chords {
            let place = (chord.0 + toward / 2.0, chord.1 + toward / 2.0);
            *row = DotRow { left: change(&row.left, place), ..row.clone() };
        }
    }
    SolvedFeature { form: SolvedForm::Dots(Arc::new(dots)), ..feature.clone() }
}

/// The parts of runs between two places.
fn between(runs: &[(f64, f64)], (from, to): (f64, f64)) -> Vec<(f64, f64)> {
    runs.iter().map(|run| (run.0.max(from), run.1.min(to))).filter(|run| run.0 < run.1).collect()
}

/// Runs with a stretch replaced by others.
fn replaced(runs: &[(f64, f64)], (from, to): (f64, f64), by: Vec<(f64, f64)>) -> Vec<(f64, f64)> {
    let mut all = between(runs, (f64::NEG_INFINITY, from));
    all.extend(by);
    all.extend(between(runs, (to, f64::INFINITY)));
    all
}

/// A figure with a tenth of its width inked on top.
pub(super) fn denser() -> SolvedFeature {
    changed(&square(40.0, 2.0, "dots"), |runs, (from, _)| {
        replaced(runs, (from + 8.0, from + 12.0), vec![(from + 8.0, from + 12.0)])
    })
}

fn found(features: &[SolvedFeature], code: &str) -> Vec<Diagnostic> {
    lint_page(features).into_iter().filter(|d| d.code == code).collect()
}

/// At 4 standard errors a measure fires in 1 of 16 000 even fields; some ten measures a field leave 40 fields silent.
#[test]
fn the_solver_gives_nothing_away_to_one_eye() {
    for seed in 0..40 {
        for toward in [1.0, 4.0] {
            let found = found(&[square(40.0, toward, &format!("field/{seed}"))], "W-ONE-EYE");
            assert_eq!(found, [], "{seed}");
        }
    }
}

#[test]
fn a_denser_figure_shows_to_one_eye() {
    let found = found(&[denser()], "W-ONE-EYE");
    assert_eq!(found.len(), 1);
    assert!(found[0].message.starts_with("`square` shows to the left eye alone: a density of `0.3"), "{found:?}");
}

/// A strip that holds what lies one figure width away, as when a moved region is wrapped around: `[Julesz1960]` fills it
/// with fresh dots.
#[test]
fn a_wrapped_strip_shows_to_one_eye() {
    let wrapped = changed(&square(40.0, 4.0, "dots"), |runs, (from, to)| {
        let width = to - from;
        let copy = between(runs, (to - 4.0, to)).into_iter().map(|run| (run.0 - width, run.1 - width)).collect();
        replaced(runs, (from - 4.0, from), copy)
    });
    let found = found(&[wrapped], "W-ONE-EYE");
    assert!(found[0].message.starts_with("`square` shows to the left eye alone: a repeat of `"), "{found:?}");
}

/// Dots left where they were when their copy was moved: the strip repeats the edge of the figure one shift away.
#[test]
fn dots_left_behind_show_to_one_eye() {
    let left = changed(&square(40.0, 4.0, "dots"), |runs, (from, _)| {
        let copy = between(runs, (from, from + 4.0)).into_iter().map(|run| (run.0 - 4.0, run.1 - 4.0)).collect();
        replaced(runs, (from - 4.0, from), copy)
    });
    assert_eq!(found(&[left], "W-ONE-EYE").len(), 1);
}

#[test]
fn a_page_with_a_drawn_line_is_not_judged() {
    let mut line = target("edge", (0.0, 0.0), 0.0);
    line.role = Role::Guide;
    assert_eq!(found(&[denser(), line], "W-ONE-EYE"), []);
}

#[test]
fn a_figure_needs_dots_across_it() {
    let ring =
        |size| field(vec![figure("ring", Shape::OpenRing(crate::scene::Direction::Up), 0.0, size, 0.4)], 0.8, "r");
    // Its line has 7 / 5 / 0.8 = 1.75 dots, or 16 / 5 / 0.8 = 4.
    assert!(
        found(&[ring(7.0)], "W-DOT-FIGURE")[0].message.contains("is about `"),
        "{:?}",
        found(&[ring(7.0)], "W-DOT-FIGURE")
    );
    assert_eq!(found(&[ring(16.0)], "W-DOT-FIGURE"), []);
    let small = found(&[square(6.0, 0.4, "dots")], "W-DOT-FIGURE");
    assert_eq!(small[0].message, "`square` is `7.5` dots across, limit `8` dots");
}

#[test]
fn a_strip_is_narrower_than_its_figure() {
    assert_eq!(found(&[square(8.0, 7.0, "dots")], "W-DOT-FIGURE"), []);
    let deep = found(&[square(8.0, 12.0, "dots")], "W-DOT-FIGURE");
    assert_eq!(
        deep[0].message,
        "`square` has strips of `15` dots that one eye alone sees, its widest part has about `10` dots"
    );
}

#[test]
fn figures_lie_apart_or_inside_one_another() {
    let pair = |x: f64, size: f64| {
        let a = figure("a", Shape::Square, 0.0, 30.0, 1.0);
        found(&[field(vec![a, figure("b", Shape::Square, x, size, 2.0)], 0.8, "pair")], "W-DOT-FIGURE")
    };
    assert_eq!(pair(30.0, 30.0), []);
    assert_eq!(pair(5.0, 20.0), []);
    assert_eq!(pair(12.0, 20.0)[0].message, "`a` and `b` lie partly over one another");
}

/// Dots of 25.4/300 = 0.0847 and 25.4/96 = 0.2646 mm.
#[test]
fn a_raster_must_show_dots_and_offsets() {
    let fine = found(&[square(40.0, 0.2, "dots")], "W-DEVICE-DOT");
    assert_eq!(fine.len(), 1);
    assert_eq!(
        fine[0].message,
        "`square`: an offset of `0.2` mm between the dots is less than one dot of edition `screen` (96 ppi), `0.2646` mm"
    );
    let small = field(vec![figure("square", Shape::Square, 0.0, 40.0, 1.0)], 0.5, "dots");
    let small = found(&[small], "W-DEVICE-DOT");
    assert_eq!(small.len(), 1);
    assert_eq!(small[0].help, "raise `ppi` to at least `102`, or ask for larger dots");
}
