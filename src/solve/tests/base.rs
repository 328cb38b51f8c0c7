//! Tests of the base: everything of a page moves alike, and the limits count it in.
//!
//! A prism dioptre moves by 1 cm at 1 m: 3 pd at 40 cm are 12 mm. Source: `[ISO13666]`.

use super::*;
use crate::optics::Base;
use crate::scene::{DemandWords, DotField, DotFigure, Relief, Scale};

/// 12 mm of crossed parallax, and 4 mm in height, of which the solver knows nothing.
fn on_base() -> Viewer {
    Viewer { base: Base { horizontal: PrismDioptre(3.0), vertical: PrismDioptre(1.0) }, ..viewer() }
}

fn form(id: &str, form: Form) -> Feature {
    Feature { form, ..shape(id, Depth::Page) }
}

/// One of each form, at depths of every unit, with all companions.
fn scene() -> Scene {
    let vertex = |x: f64, depth: Depth| Vertex { at: at(x, 20.0), depth };
    let ends = [Depth::Place(Mm(30.0), Side::Toward), Depth::Demand(PrismDioptre(1.0), Side::Away)];
    let mut all = shape("all", Depth::Demand(PrismDioptre(2.0), Side::Toward));
    let side = |side: &str| [String::new(), format!(" pd {side}")];
    let words =
        DemandWords { page: "on the page".to_owned(), toward: side("toward"), away: side("away"), decimal_mark: "." };
    all.companions = Companions { watch: true, lock: true, number: Some(1), demand: Some(words) };
    let mut crate_ = shape("true-perspective", Depth::Place(Mm(60.0), Side::Toward));
    crate_.scaling = Scaling::ConstantObject;
    let [near, far] = ends.clone();
    let dots = DotField {
        at: At::default(),
        width: Mm(60.0),
        height: Mm(40.0),
        dot: Size::Length(Mm(1.0)),
        density: 0.5,
        correlation: 1.0,
        ground: Relief::Flat(Depth::Page),
        figures: vec![DotFigure {
            id: "float".into(),
            shape: Shape::Disc,
            at: At::default(),
            size: Size::Length(Mm(20.0)),
            depth: Relief::Flat(Depth::Disparity(Angle::from_arcmin(20.0), Side::Toward)),
        }],
        key: "quay".into(),
    };
    let strokes = vec![(at(0.0, 0.0), at(0.0, 10.0))];
    let aside = Form::Aside {
        form: Box::new(Form::Strokes { strokes: strokes.clone(), weight: Mm(1.0), depth: far.clone() }),
        by: Depth::Demand(PrismDioptre(1.0), Side::Away),
    };
    let scale = Scale { zero: At::default(), is_level: true, step: Mm(4.0), ticks: 4 };
    Scene {
        features: vec![
            all,
            crate_,
            path(vec![vertex(0.0, near.clone()), vertex(30.0, far.clone())], Scaling::ConstantAngle),
            form("strokes", Form::Strokes { strokes, weight: Mm(1.0), depth: near }),
            form("aside", aside),
            form("scale", Form::Scale(scale)),
            form("dots", Form::Dots(Box::new(dots))),
        ],
    }
}

#[test]
fn every_feature_moves_by_the_base_and_keeps_its_place_and_size() {
    let (without, with) = (solve(&scene(), &viewer()).unwrap(), solve(&scene(), &on_base()).unwrap());
    assert_eq!(without.len(), with.len());
    let moved = |from: f64, to: f64| assert!((to - from + 12.0).abs() < 1e-5, "{from} to {to}");
    for (a, b) in without.iter().zip(&with) {
        assert_eq!((&a.id, a.at), (&b.id, b.at));
        moved(a.stand.parallax.0, b.stand.parallax.0);
        // Demand is exact: 3 pd more, and the report's -100 p / D holds.
        assert!((b.stand.demand.0 - a.stand.demand.0 - 3.0).abs() < 1e-5);
        assert!((b.stand.demand.0 + 100.0 * b.stand.parallax.0 / 400.0).abs() < 1e-9);
        match (&a.form, &b.form) {
            (SolvedForm::Path { points: a, .. }, SolvedForm::Path { points: b, .. }) => {
                for (a, b) in a.iter().zip(b) {
                    assert_eq!((a.x, a.y), (b.x, b.y));
                    moved(a.parallax, b.parallax);
                }
            }
            (SolvedForm::Dots(a), SolvedForm::Dots(b)) => dots_moved(a, b, moved),
            (a, b) => assert_eq!(a, b),
        }
    }
}

/// The same dots, the left eye's 6 mm to the right and the right eye's 6 mm to the left, frame and all.
fn dots_moved(a: &SolvedDots, b: &SolvedDots, moved: impl Fn(f64, f64)) {
    assert_eq!((a.extent, a.rows.len()), (b.extent, b.rows.len()));
    for (a, b) in a.rows.iter().zip(&b.rows) {
        assert_eq!(a.y, b.y);
        for (a, b, by) in [(&a.left, &b.left, 6.0), (&a.right, &b.right, -6.0)] {
            assert_eq!(a.len(), b.len());
            for (a, b) in a.iter().zip(b) {
                assert!((b.0 - a.0 - by).abs() < 1e-5 && (b.1 - a.1 - by).abs() < 1e-5);
            }
        }
    }
    a.stands().zip(b.stands()).for_each(|(a, b)| moved(a.parallax.0, b.parallax.0));
    a.points.iter().zip(&b.points).for_each(|(a, b)| moved(a[2], b[2]));
}

#[test]
fn words_of_a_demand_count_from_the_base() {
    let solved = solve(&scene(), &on_base()).unwrap();
    let words = solved.iter().find(|f| f.id == "all-demand").unwrap();
    let SolvedForm::Shape { shape: Shape::Text(text), .. } = &words.form else { panic!("{words:?}") };
    assert_eq!(text, "2 pd toward");
}

/// Parallel eyes of 50 mm at 40 cm stand at 12.5 pd away: a base of 3 pd toward leaves 15.5, one of 3 pd away 9.5.
#[test]
fn the_base_counts_to_the_limit_of_parallel_eyes() {
    for (base, room, told) in [(3.0, 15.5, "toward"), (-3.0, 9.5, "away")] {
        let base = Base { horizontal: PrismDioptre(base), ..Base::default() };
        let viewer = Viewer { base, ..viewer() };
        let away = |pd| stand_of(&Depth::Demand(PrismDioptre(pd), Side::Away), &viewer);
        assert!(away(room - 0.01).is_ok());
        let kind = away(room).unwrap_err();
        assert_eq!(kind.code(), "E-PAST-PARALLEL");
        let told = [format!("with the base of `3` pd {told}"), format!("ask for less than `{room} pd away`")];
        let diagnostic = Diagnostic::from(SolveProblem { feature: "a".into(), place: None, kind });
        assert!(diagnostic.message.contains(&told[0]) && diagnostic.help == told[1], "{diagnostic:?}");
    }
}

#[test]
fn a_base_past_parallel_eyes_is_refused_by_itself() {
    let base = Base { horizontal: PrismDioptre(-13.0), ..Base::default() };
    let problems = solve(&Scene { features: vec![shape("a", Depth::Page)] }, &Viewer { base, ..viewer() }).unwrap_err();
    assert_eq!(problems.iter().map(|p| p.kind.code()).collect::<Vec<_>>(), ["E-PAST-PARALLEL"]);
    assert_eq!(Diagnostic::from(problems[0].clone()).help, "set a smaller `base`");
}
