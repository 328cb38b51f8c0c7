//! Properties of solved fields. Limits of chance are four standard errors; draws are fixed, so no test flickers.

use std::sync::Arc;

use super::*;
use crate::optics::Viewer;
use crate::scene::{At, Depth, Direction, Grid, Relief, Shape, Side, Size, Surface};

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));
const WIDTH: f64 = 150.0;
const HEIGHT: f64 = 100.0;
const DOT: f64 = 0.5;

fn toward(parallax: f64) -> Depth {
    Depth::Parallax(Mm(parallax), Side::Toward)
}

fn away(parallax: f64) -> Depth {
    Depth::Parallax(Mm(parallax), Side::Away)
}

fn field(ground: Relief, figures: Vec<DotFigure>) -> DotField {
    DotField {
        at: At::default(),
        width: Mm(WIDTH),
        height: Mm(HEIGHT),
        dot: Size::Length(Mm(DOT)),
        density: 0.5,
        correlation: 1.0,
        ground,
        figures,
        key: "quay".into(),
    }
}

fn figure(shape: Shape, size: f64, depth: Relief) -> DotFigure {
    DotFigure { id: "crate".into(), shape, at: At::default(), size: Size::Length(Mm(size)), depth }
}

fn solved(field: &DotField) -> SolvedDots {
    solve(field, &Solver::new(&VIEWER).unwrap()).unwrap().0
}

fn refused(field: &DotField) -> Vec<ProblemKind> {
    solve(field, &Solver::new(&VIEWER).unwrap()).unwrap_err()
}

type Runs = [(f64, f64)];

/// The length that runs cover between two places.
fn covered(runs: &Runs, from: f64, to: f64) -> f64 {
    runs.iter().map(|&(a, b)| (b.min(to) - a.max(from)).max(0.0)).sum()
}

fn eyes(row: &DotRow) -> [&Runs; 2] {
    [&row.left, &row.right]
}

/// The share of a zone that dots cover for each eye. The zone is a stretch of each row with a middle within `rows`.
fn density(dots: &SolvedDots, rows: (f64, f64), zone: (f64, f64)) -> [f64; 2] {
    let inside: Vec<&DotRow> = dots.rows.iter().filter(|row| rows.0 <= row.y && row.y < rows.1).collect();
    [0, 1].map(|eye| {
        let sum: f64 = inside.iter().map(|row| covered(eyes(row)[eye], zone.0, zone.1)).sum();
        sum / (inside.len() as f64 * (zone.1 - zone.0))
    })
}

/// Each zone has the density that was asked for. The standard error counts one dot's area as one independent draw,
/// which is more than the truth: the variance of the cover of a long row of this process is
/// 2 v² w/L (expm1(λw)/(λw) - 1), at most v (1 - v) w/L.
fn assert_even(dots: &SolvedDots, rows: (f64, f64), zones: &[(f64, f64)]) {
    for &zone in zones {
        let count = (rows.1 - rows.0) * (zone.1 - zone.0) / (dots.dot * dots.dot);
        let limit = 4.0 * (dots.density * (1.0 - dots.density) / count).sqrt();
        for (eye, share) in density(dots, rows, zone).into_iter().enumerate() {
            assert!((share - dots.density).abs() < limit, "{zone:?}, eye {eye}: {share}, limit {limit}");
        }
    }
}

const WHOLE: (f64, f64) = (-HEIGHT / 2.0, HEIGHT / 2.0);

/// Every stretch of 2.5 mm across the field, edges included.
fn stretches() -> Vec<(f64, f64)> {
    (0..60).map(|i| -WIDTH / 2.0 + 2.5 * f64::from(i)).map(|x| (x, x + 2.5)).collect()
}

/// The oracle for random-dot stereograms: density in figure, strips and surround as it was set.
#[test]
fn a_step_does_not_show_to_one_eye() {
    for depth in [toward(3.0), away(3.0), toward(0.37)] {
        for share in [0.5, 0.25, 0.9] {
            let crate_ = figure(Shape::Square, 60.0, Relief::Flat(depth.clone()));
            let dots = solved(&DotField { density: share, ..field(Relief::Flat(Depth::Page), vec![crate_]) });
            // The strips stand at either edge of the figure, ±30 mm ± half the parallax.
            let strips = [(-31.5, -28.5), (28.5, 31.5), (-30.2, -29.8), (29.8, 30.2)];
            assert_even(&dots, (-30.0, 30.0), &strips);
            assert_even(&dots, (-30.0, 30.0), &stretches());
            assert_even(&dots, WHOLE, &stretches());
        }
    }
}

#[test]
fn slopes_and_waves_and_drawn_reliefs_do_not_show_to_one_eye() {
    let grid = Grid { name: "hill".into(), columns: 3, shares: vec![0.0, 1.0, 0.2, 0.3, 0.0, 1.0] };
    let surfaces = [
        Surface::Tilt(Direction::Right),
        Surface::Tilt(Direction::Up),
        Surface::Waves { count: 3, down: false },
        Surface::Waves { count: 2, down: true },
        Surface::Ridges { middles: vec![0.3, 0.7], width: 0.3 },
        Surface::Grid(Arc::new(grid)),
    ];
    for share in surfaces {
        let dots = solved(&field(Relief::Between { from: toward(6.0), to: away(6.0), share: share.clone() }, vec![]));
        assert_even(&dots, WHOLE, &stretches());
        assert_eq!(dots.parallax_range(), (-6.0, 6.0), "{share:?}");
    }
}

/// What the left eye sees of the inside of a flat figure is what the right eye sees of it, moved by the parallax to
/// the last digit, however small it is.
#[test]
fn parallax_is_never_rounded_to_a_dot() {
    for parallax in [0.013, 0.25, 1.7, 7.93] {
        for depth in [toward(parallax), away(parallax)] {
            let dots = solved(&field(Relief::Flat(depth.clone()), vec![]));
            let p = dots.ground[0].parallax.0;
            let edges = |runs: &Runs| -> Vec<f64> { runs.iter().flat_map(|run| [run.0, run.1]).collect() };
            let mut seen = 0;
            for row in &dots.rows {
                let right = edges(&row.right);
                for x in edges(&row.left).into_iter().filter(|x| x.abs() < 60.0) {
                    seen += 1;
                    // Two roundings to a millionth.
                    assert!(right.iter().any(|other| (x + p - other).abs() < 1.1e-6), "{p}: {x}");
                }
            }
            assert!(20_000 < seen);
        }
    }
}

/// The cover of two eyes at places that match, sampled along rows: pairs of 0 and 1.
fn pairs(dots: &SolvedDots, parallax: f64, zone: (f64, f64), step: f64) -> Vec<(f64, f64)> {
    let at = |runs: &Runs, x: f64| f64::from(u8::from(runs.iter().any(|&(a, b)| a <= x && x < b)));
    let mut out = Vec::new();
    for row in &dots.rows {
        let mut x = zone.0;
        while x < zone.1 {
            out.push((at(&row.left, x - parallax / 2.0), at(&row.right, x + parallax / 2.0)));
            x += step;
        }
    }
    out
}

/// The product-moment correlation coefficient, a textbook formula.
fn correlation(pairs: &[(f64, f64)]) -> f64 {
    let n = pairs.len() as f64;
    let mean = |of: fn(&(f64, f64)) -> f64| pairs.iter().map(of).sum::<f64>() / n;
    let (ma, mb) = (mean(|p| p.0), mean(|p| p.1));
    let sum = |f: &dyn Fn(&(f64, f64)) -> f64| pairs.iter().map(f).sum::<f64>();
    let ab = sum(&|p| (p.0 - ma) * (p.1 - mb));
    ab / (sum(&|p| (p.0 - ma).powi(2)) * sum(&|p| (p.1 - mb).powi(2))).sqrt()
}

/// The oracle for re-randomised dots: a share q of fresh dots leaves r = 1 - q. Samples two dots apart are independent
/// in a row, so a standard error is (1 - r²)/√N.
#[test]
fn the_eyes_agree_as_much_as_was_asked() {
    for share in [0.5, 0.25, 0.8] {
        for asked in [1.0, 0.75, 0.4, 0.0] {
            let dots =
                solved(&DotField { density: share, correlation: asked, ..field(Relief::Flat(toward(2.3)), vec![]) });
            let pairs = pairs(&dots, -2.3, (-70.0, 70.0), 2.0 * DOT);
            let r = correlation(&pairs);
            let limit = 4.0 * (1.0 - asked * asked) / (pairs.len() as f64).sqrt() + 1e-9;
            assert!((r - asked).abs() < limit, "{share} {asked}: {r}");
            assert_even(&dots, WHOLE, &stretches());
        }
    }
}

#[test]
fn both_eyes_get_the_same_on_the_page_and_other_keys_get_other_dots() {
    let page = field(Relief::Flat(Depth::Page), vec![]);
    let dots = solved(&page);
    assert!(dots.rows.iter().all(|row| row.left == row.right && !row.left.is_empty()));
    assert_eq!(dots, solved(&page));
    let other = solved(&DotField { key: "pier".into(), ..page });
    assert!(dots.rows.iter().zip(&other.rows).all(|(a, b)| a.left != b.left));
}

#[test]
fn runs_lie_in_the_field_and_do_not_touch() {
    let relief = Relief::Between { from: toward(9.0), to: away(9.0), share: Surface::Waves { count: 2, down: false } };
    let dots = solved(&field(relief, vec![figure(Shape::Star, 70.0, Relief::Flat(toward(12.0)))]));
    assert_eq!(dots.rows.len(), 200);
    for runs in dots.rows.iter().flat_map(eyes) {
        assert!(runs.iter().all(|r| r.0 < r.1 && -WIDTH / 2.0 <= r.0 && r.1 <= WIDTH / 2.0));
        assert!(runs.windows(2).all(|w| w[0].1 < w[1].0));
    }
}

/// A strip that one eye alone sees is fresh: it repeats nothing that stands at the distances where a moved or wrapped
/// copy would be.
#[test]
fn strips_are_fresh() {
    let dots = solved(&field(Relief::Flat(Depth::Page), vec![figure(Shape::Square, 60.0, Relief::Flat(toward(6.0)))]));
    // Toward: the left eye's strip lies right of where the figure began, from -30 to -27 mm.
    for lag in [60.0, 6.0, 3.0, -40.0] {
        let of_left = SolvedDots {
            rows: dots.rows[40..160].iter().map(|r| DotRow { right: r.left.clone(), ..r.clone() }).collect(),
            ..dots.clone()
        };
        let middle = -28.5 + lag / 2.0;
        let pairs = pairs(&of_left, lag, (middle - 1.5, middle + 1.5), 2.0 * DOT);
        assert!(correlation(&pairs).abs() < 4.0 / (pairs.len() as f64).sqrt(), "{lag}: {}", correlation(&pairs));
    }
}

#[test]
fn fields_that_cannot_be_are_refused_with_their_numbers() {
    let page = || field(Relief::Flat(Depth::Page), vec![]);
    let codes = |field: DotField| refused(&field).iter().map(ProblemKind::code).collect::<Vec<_>>();
    for density in [0.0, 1.0, -0.2, f64::NAN] {
        assert_eq!(codes(DotField { density, ..page() }), ["E-DOT-DENSITY"]);
    }
    for correlation in [-0.1, 1.1, f64::NAN] {
        assert_eq!(codes(DotField { correlation, ..page() }), ["E-DOT-CORRELATION"]);
    }
    assert_eq!(codes(DotField { density: 2.0, correlation: 2.0, ..page() }), ["E-DOT-DENSITY", "E-DOT-CORRELATION"]);
    assert_eq!(codes(DotField { dot: Size::Length(Mm(0.0)), ..page() }), ["E-NO-EXTENT"]);
    assert_eq!(codes(DotField { height: Mm(1.9), ..page() }), ["E-DOT-FIELD"]);
    assert_eq!(codes(DotField { width: Mm(f64::INFINITY), ..page() }), ["E-NOT-FINITE"]);
    assert_eq!(codes(DotField { dot: Size::Length(Mm(0.01)), ..page() }), ["E-DOT-COUNT"]);
    assert_eq!(codes(DotField { ground: Relief::Flat(away(50.0)), ..page() }), ["E-PAST-PARALLEL"]);
    let grid = |shares: Vec<f64>| {
        let share = Surface::Grid(Arc::new(Grid { name: "hill".into(), columns: 2, shares }));
        field(Relief::Between { from: Depth::Page, to: toward(1.0), share }, vec![])
    };
    for shares in [vec![], vec![0.0, 1.0, 0.5], vec![0.0, 1.5], vec![f64::NAN, 0.0]] {
        assert_eq!(codes(grid(shares)), ["E-NOT-FINITE"]);
    }
    assert_eq!(solved(&grid(vec![0.2, 0.6])).parallax_range(), (-0.6, -0.2));
}

#[test]
fn figures_that_cannot_be_are_refused_with_their_numbers() {
    let at = |x: f64, parallax: f64| DotFigure {
        at: At { x: Mm(x), y: Mm(0.0) },
        ..figure(Shape::Square, 50.0, Relief::Flat(toward(parallax)))
    };
    let of = |figures: Vec<DotFigure>| field(Relief::Flat(Depth::Page), figures);
    assert_eq!(solved(&of(vec![at(49.0, 2.0)])).figures.len(), 1);
    let outside = |past: f64| ProblemKind::Dots(DotProblem::Outside { id: "crate".into(), past: Mm(past) });
    assert_eq!(refused(&of(vec![at(49.0, 4.0)])), [outside(1.0)]);
    assert_eq!(refused(&of(vec![at(-51.0, 0.0)])), [outside(1.0)]);
    let twice = ProblemKind::Dots(DotProblem::Twice { id: "crate".into() });
    assert_eq!(refused(&of(vec![at(0.0, 1.0), at(10.0, 1.0)])), [twice]);
    // A raised cosine of height h over a wave of length l is steepest at π h / l.
    let share = Surface::Waves { count: 5, down: false };
    let waves = |height: f64| {
        let ends = (toward(height), Depth::Page);
        field(Relief::Between { from: ends.0, to: ends.1, share: share.clone() }, vec![])
    };
    let limit = 1.5 * (WIDTH / 5.0) / std::f64::consts::PI;
    assert!(solve(&waves(limit * 0.99), &Solver::new(&VIEWER).unwrap()).is_ok());
    let problems = refused(&waves(limit * 1.01));
    let [ProblemKind::Dots(DotProblem::Steep { figure, slope, .. })] = &problems[..] else { panic!("{problems:?}") };
    assert!(figure.is_empty() && (slope / 1.515 - 1.0).abs() < 0.002, "{slope}");
}

#[test]
fn the_report_gets_the_relief_and_the_ends_of_each_depth() {
    let dots = solved(&field(Relief::Flat(away(2.0)), vec![figure(Shape::Disc, 40.0, Relief::Flat(toward(4.0)))]));
    assert_eq!(dots.figures[0].stands.map(|stand| stand.parallax.0), [-4.0, -4.0]);
    assert_eq!(dots.ground.map(|stand| stand.parallax.0), [2.0, 2.0]);
    assert!(500 < dots.points.len() && dots.points.len() <= 1500);
    for [x, y, p] in &dots.points {
        let from_middle = libm::hypot(*x, *y);
        if (from_middle - 20.0).abs() < 0.05 {
            continue;
        }
        assert_eq!(*p, if from_middle < 20.0 { -4.0 } else { 2.0 }, "{x} {y}");
    }
}
