//! Tests of the solver.

mod base;

use proptest::prelude::*;

use super::*;
use crate::diagnostics::{Diagnostic, FileId, Severity};
use crate::optics::geometry::SpacePoint;
use crate::scene::{Companions, Side};

fn viewer() -> Viewer {
    Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)))
}

fn at(x: f64, y: f64) -> At {
    At { x: Mm(x), y: Mm(y) }
}

fn shape(id: &str, depth: Depth) -> Feature {
    let place = Some(Place { file: FileId(0), start: 3, end: 9 });
    let form =
        Form::Shape { shape: Shape::Ring, at: at(-45.0, 12.0), size: Size::Length(Mm(34.0)), weight: Mm(2.0), depth };
    Feature {
        id: id.into(),
        role: Role::Target,
        eyes: Eyes::Both,
        form,
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place,
    }
}

fn path(vertices: Vec<Vertex>, scaling: Scaling) -> Feature {
    let form = Form::Path { vertices, closed: false, smooth: true, weight: Mm(1.5) };
    Feature { form, scaling, role: Role::Trail, ..shape("path", Depth::Page) }
}

fn solve_one(feature: Feature) -> Result<SolvedFeature, Vec<SolveProblem>> {
    solve(&Scene { features: vec![feature] }, &viewer()).map(|mut solved| solved.remove(0))
}

fn parallax_of(depth: Depth) -> f64 {
    stand_of(&depth, &viewer()).unwrap().parallax.0
}

fn depth_with(side: Side) -> [Depth; 4] {
    [
        Depth::Place(Mm(50.0), side),
        Depth::Demand(PrismDioptre(2.0), side),
        Depth::Disparity(Angle::from_arcmin(68.0), side),
        Depth::Parallax(Mm(8.0), side),
    ]
}

#[test]
fn toward_is_crossed_and_away_is_uncrossed_in_every_unit() {
    for depth in depth_with(Side::Toward) {
        assert!(parallax_of(depth.clone()) < 0.0, "{depth:?}");
    }
    for depth in depth_with(Side::Away) {
        assert!(0.0 < parallax_of(depth.clone()), "{depth:?}");
    }
    assert_eq!(parallax_of(Depth::Page).to_bits(), 0.0_f64.to_bits());
}

/// The worked example of the report: 2 pd toward for 63 mm at 400 mm, places by Z = DE/(E-p) for 63, 50 and 75 mm.
#[test]
fn a_stand_has_every_unit() {
    let stand = stand_of(&Depth::Demand(PrismDioptre(2.0), Side::Toward), &viewer()).unwrap();
    assert_eq!(stand.parallax, Mm(-8.0));
    assert!((stand.demand.0 - 2.0).abs() < 1e-12);
    assert!((stand.place.unwrap().0 - 400.0 * 63.0 / 71.0).abs() < 1e-9);
    let (near, far) = (stand.place_range.0.unwrap().0, stand.place_range.1.unwrap().0);
    assert!((near - 400.0 * 50.0 / 58.0).abs() < 1e-9 && (far - 400.0 * 75.0 / 83.0).abs() < 1e-9);
    let exact = 2.0 * libm::atan(71.0 / 800.0) - 2.0 * libm::atan(63.0 / 800.0);
    assert!((stand.disparity.to_radians() - exact).abs() < 1e-12);
}

#[test]
fn a_place_may_be_out_of_reach_for_small_eyes_alone() {
    let stand = stand(Mm(55.0), &viewer()).unwrap();
    assert!(stand.place.is_some() && stand.place_range.1.is_some());
    assert_eq!(stand.place_range.0, None);
}

#[test]
fn between_is_even_in_demand() {
    let ends = (Depth::Demand(PrismDioptre(1.0), Side::Toward), Depth::Demand(PrismDioptre(4.0), Side::Away));
    for (share, demand) in [(0.0, 1.0), (0.2, 0.0), (0.5, -1.5), (1.0, -4.0)] {
        let stand = stand_of(&Depth::Between(Box::new(ends.clone()), share), &viewer()).unwrap();
        assert!((stand.demand.0 - demand).abs() < 1e-9, "{share}");
    }
    for share in [-0.1, 1.1, f64::NAN] {
        let depth = Depth::Between(Box::new(ends.clone()), share);
        assert_eq!(stand_of(&depth, &viewer()), Err(ProblemKind::NotFinite));
    }
}

#[test]
fn times_counts_steps_and_mirrors() {
    for (times, demand) in [(2.0, 3.0), (0.5, 0.75), (0.0, 0.0), (-1.0, -1.5)] {
        let depth = Depth::Times(Box::new(Depth::Demand(PrismDioptre(1.5), Side::Toward)), times);
        assert!((stand_of(&depth, &viewer()).unwrap().demand.0 - demand).abs() < 1e-9, "{times}");
        let side = if demand == 0.0 { None } else { Some(if 0.0 < demand { Side::Toward } else { Side::Away }) };
        assert_eq!(depth.side(), side, "{times}");
    }
    let depth = Depth::Times(Box::new(Depth::Parallax(Mm(4.0), Side::Away)), f64::NAN);
    assert_eq!(stand_of(&depth, &viewer()), Err(ProblemKind::NotFinite));
}

/// By hand: 6 mm of parallax away move by 3 mm to the right, so that the left eye finds what lies flat where the right
/// eye finds what stands 6 mm away.
#[test]
fn what_is_moved_aside_lies_where_a_half_image_would() {
    let aside = |form: Form, amount: f64, side| {
        let form = Form::Aside { form: Box::new(form), by: Depth::Parallax(Mm(amount), side) };
        let mut feature = shape("a", Depth::Page);
        feature.form = form;
        solve_one(feature).unwrap()
    };
    let ring = |depth| Form::Shape {
        shape: Shape::Ring,
        at: at(10.0, 5.0),
        size: Size::Length(Mm(8.0)),
        weight: Mm(1.0),
        depth,
    };
    let deep = solve_one(Feature { form: ring(Depth::Parallax(Mm(6.0), Side::Away)), ..shape("a", Depth::Page) });
    let deep = deep.unwrap();
    let flat = aside(ring(Depth::Page), 6.0, Side::Away);
    assert_eq!((flat.at, flat.stand.parallax), ((13.0, 5.0), Mm(0.0)));
    assert_eq!(half_x(flat.at.0, 0.0, Eye::Left), half_x(deep.at.0, deep.stand.parallax.0, Eye::Right));
    assert_eq!(aside(ring(Depth::Page), 6.0, Side::Toward).at, (7.0, 5.0));
    let stroke = Form::Strokes { strokes: vec![(at(0.0, 0.0), at(0.0, 9.0))], weight: Mm(1.0), depth: Depth::Page };
    let moved = aside(stroke, 6.0, Side::Away);
    let SolvedForm::Strokes { strokes, .. } = moved.form else { unreachable!() };
    assert_eq!((strokes, moved.at), (vec![[(3.0, 0.0), (3.0, 9.0)]], (3.0, 4.5)));
}

#[test]
fn divergence_past_parallel_is_refused_for_the_smallest_eyes() {
    for (parallax, fine) in [(49.999_999, true), (50.0, false), (50.000_000_4, false), (62.0, false), (70.0, false)] {
        let got = stand_of(&Depth::Parallax(Mm(parallax), Side::Away), &viewer());
        assert_eq!(got.is_ok(), fine, "{parallax}");
    }
    let problems = solve_one(shape("far", Depth::Place(Mm(1e9), Side::Away))).unwrap_err();
    let diagnostic = Diagnostic::from(problems[0].clone());
    assert_eq!(
        diagnostic.message,
        "`far`: parallax of `63` mm away (`15.75` pd) turns the eyes to parallel or past it: it must stay below \
         `50` mm (`12.5` pd), the smallest ipd of the audience"
    );
    assert_eq!(diagnostic.help, "ask for less than `12.5 pd away`");
    assert_eq!((diagnostic.code, diagnostic.severity), ("E-PAST-PARALLEL", Severity::Error));
    assert_eq!(diagnostic.place.map(Place::range), Some(3..9));
}

#[test]
fn a_place_behind_the_eyes_is_refused() {
    for amount in [400.0, 401.0, 1e300] {
        let got = stand_of(&Depth::Place(Mm(amount), Side::Toward), &viewer());
        assert_eq!(got, Err(ProblemKind::BehindEyes { amount: Mm(amount), distance: Mm(400.0) }));
    }
    assert!(stand_of(&Depth::Place(Mm(399.0), Side::Toward), &viewer()).is_ok());
    let disparity = |degrees| stand_of(&Depth::Disparity(Angle::from_degrees(degrees), Side::Toward), &viewer());
    assert!(disparity(170.0).is_ok());
    assert!(matches!(disparity(172.0), Err(ProblemKind::TooMuchDisparity { .. })));
}

/// 9.0 degrees of vergence on the page leave 171 toward and 189 away before the eyes point straight at or from each
/// other.
#[test]
fn a_disparity_without_a_place_is_told_with_its_limit() {
    let page = 2.0 * libm::atan(63.0 / 800.0);
    for (side, expected) in [(Side::Toward, std::f64::consts::PI - page), (Side::Away, std::f64::consts::PI + page)] {
        let problem = stand_of(&Depth::Disparity(Angle::from_degrees(190.0), side), &viewer()).unwrap_err();
        let ProblemKind::TooMuchDisparity { limit, .. } = problem else { panic!("{problem:?}") };
        assert!((limit.to_radians() - expected).abs() < 1e-12, "{side:?}");
    }
}

#[test]
fn amounts_that_are_none_are_refused() {
    for side in [Side::Toward, Side::Away] {
        for (bad, kind) in [
            (f64::NAN, ProblemKind::NotFinite),
            (f64::INFINITY, ProblemKind::NotFinite),
            (f64::NEG_INFINITY, ProblemKind::NotFinite),
            (-1.0, ProblemKind::NegativeAmount),
        ] {
            for depth in [
                Depth::Place(Mm(bad), side),
                Depth::Demand(PrismDioptre(bad), side),
                Depth::Disparity(Angle::from_radians(bad), side),
                Depth::Parallax(Mm(bad), side),
            ] {
                assert_eq!(stand_of(&depth, &viewer()), Err(kind.clone()), "{depth:?}");
            }
        }
        for zero in depth_with(side).map(|depth| match depth {
            Depth::Place(..) => Depth::Place(Mm(0.0), side),
            Depth::Demand(..) => Depth::Demand(PrismDioptre(0.0), side),
            Depth::Disparity(..) => Depth::Disparity(Angle::from_radians(0.0), side),
            _ => Depth::Parallax(Mm(0.0), side),
        }) {
            assert_eq!(parallax_of(zero).to_bits(), 0.0_f64.to_bits());
        }
    }
}

#[test]
fn a_viewer_that_is_none_is_refused() {
    let good = viewer();
    for bad in [f64::NAN, f64::INFINITY, 0.0, -63.0] {
        for viewer in [
            Viewer { distance: Mm(bad), ..good },
            Viewer { ipd: Mm(bad), ..good },
            Viewer { ipd_range: (Mm(bad), Mm(75.0)), ..good },
            Viewer { ipd_range: (Mm(50.0), Mm(bad)), ..good },
            Viewer { ipd_range: (Mm(64.0), Mm(75.0)), ..good },
            Viewer { ipd_range: (Mm(50.0), Mm(62.0)), ..good },
        ] {
            assert_eq!(stand(Mm(1.0), &viewer), None, "{viewer:?}");
            let problems = solve(&Scene::default(), &viewer).unwrap_err();
            assert!(matches!(problems[..], [SolveProblem { kind: ProblemKind::BadViewer { .. }, .. }]));
        }
    }
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(stand(Mm(bad), &good), None);
    }
}

#[test]
fn every_problem_of_every_feature_is_told() {
    let mut thin = shape("thin", Depth::Page);
    thin.form = Form::Shape {
        shape: Shape::Disc,
        at: at(0.0, 0.0),
        size: Size::Length(Mm(0.0)),
        weight: Mm(1.0),
        depth: Depth::Page,
    };
    let far = |share| Vertex { at: at(share, 0.0), depth: Depth::Parallax(Mm(60.0 + share), Side::Away) };
    let scene = Scene {
        features: vec![
            shape("behind", Depth::Place(Mm(500.0), Side::Toward)),
            shape("fine", Depth::Page),
            thin,
            path(vec![far(0.0), far(1.0), far(2.0)], Scaling::ConstantAngle),
            path(vec![Vertex { at: at(0.0, 0.0), depth: Depth::Page }], Scaling::ConstantAngle),
            path(vec![], Scaling::ConstantAngle),
        ],
    };
    let problems = solve(&scene, &viewer()).unwrap_err();
    let told: Vec<_> = problems.iter().map(|p| (p.feature.as_str(), p.kind.code())).collect();
    assert_eq!(
        told,
        [
            ("behind", "E-DEPTH-RANGE"),
            ("thin", "E-NO-EXTENT"),
            ("path", "E-PAST-PARALLEL"),
            ("path", "E-SHORT-PATH"),
            ("path", "E-SHORT-PATH"),
        ]
    );
    for problem in problems {
        let diagnostic = Diagnostic::from(problem);
        assert!(diagnostic.message.contains('`') && !diagnostic.message.ends_with('.') && !diagnostic.help.is_empty());
    }
}

#[test]
fn places_and_sizes_that_are_none_are_refused() {
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        for (x, size, weight) in [(bad, 34.0, 2.0), (0.0, bad, 2.0), (0.0, 34.0, bad)] {
            let mut feature = shape("bad", Depth::Page);
            feature.form = Form::Shape {
                shape: Shape::Ring,
                at: at(x, 0.0),
                size: Size::Length(Mm(size)),
                weight: Mm(weight),
                depth: Depth::Page,
            };
            assert_eq!(solve_one(feature).unwrap_err()[0].kind, ProblemKind::NotFinite);
        }
    }
}

#[test]
fn at_constant_angle_places_and_sizes_are_those_of_the_page() {
    let solved = solve_one(shape("near", Depth::Place(Mm(100.0), Side::Toward))).unwrap();
    assert_eq!(solved.at, (-45.0, 12.0));
    assert_eq!(solved.form, SolvedForm::Shape { shape: Shape::Ring, size: 34.0, extent: (34.0, 34.0), weight: 2.0 });
    assert_eq!(solved.stand.parallax, Mm(-21.0));
}

#[test]
fn an_angular_size_fills_its_angle_at_the_viewing_distance() {
    let mut feature = shape("near", Depth::Page);
    let Form::Shape { size, .. } = &mut feature.form else { unreachable!() };
    *size = Size::Angle(Angle::from_degrees(5.0));
    let SolvedForm::Shape { size, .. } = solve_one(feature).unwrap().form else { unreachable!() };
    assert!((size - 2.0 * 400.0 * libm::tan(2.5_f64.to_radians())).abs() < 1e-6);
}

/// D/Z = 4/3 at 300 mm: place, size and line width of a thing that stands there grow by a third on the page.
#[test]
fn at_constant_object_size_all_is_drawn_in_perspective() {
    let mut feature = shape("near", Depth::Place(Mm(100.0), Side::Toward));
    feature.scaling = Scaling::ConstantObject;
    let solved = solve_one(feature).unwrap();
    assert_eq!(solved.at, (-60.0, 16.0));
    let SolvedForm::Shape { size, weight, .. } = solved.form else { unreachable!() };
    assert!((size - 34.0 * 4.0 / 3.0).abs() < 1e-6 && (weight - 2.0 * 4.0 / 3.0).abs() < 1e-6);
}

#[test]
fn a_path_has_each_point_at_its_own_depth() {
    let vertices = vec![
        Vertex { at: at(-30.0, 0.0), depth: Depth::Place(Mm(100.0), Side::Toward) },
        Vertex { at: at(30.0, 40.0), depth: Depth::Place(Mm(400.0), Side::Away) },
    ];
    let flat = solve_one(path(vertices.clone(), Scaling::ConstantAngle)).unwrap();
    let SolvedForm::Path { points, weight, closed, smooth } = &flat.form else { unreachable!() };
    assert_eq!(points[0], PathPoint { x: -30.0, y: 0.0, parallax: -21.0 });
    assert_eq!(points[1], PathPoint { x: 30.0, y: 40.0, parallax: 31.5 });
    assert_eq!((flat.at, flat.stand.parallax), ((0.0, 20.0), Mm(-21.0)));
    assert_eq!((weight.to_bits(), *closed, *smooth), (1.5_f64.to_bits(), false, true));

    let deep = solve_one(path(vertices, Scaling::ConstantObject)).unwrap();
    let SolvedForm::Path { points, weight, .. } = &deep.form else { unreachable!() };
    assert_eq!(points[0], PathPoint { x: -40.0, y: 0.0, parallax: -21.0 });
    assert_eq!(points[1], PathPoint { x: 15.0, y: 20.0, parallax: 31.5 });
    assert_eq!((deep.at, weight.to_bits()), ((-12.5, 10.0), 1.5_f64.to_bits()));
}

#[test]
fn half_images_lie_half_a_parallax_to_each_side() {
    // Crossed: what the left eye sees lies to the right.
    assert!(half_x(10.0, -4.0, Eye::Right) < half_x(10.0, -4.0, Eye::Left));
    assert_eq!((half_x(10.0, -4.0, Eye::Left), half_x(10.0, -4.0, Eye::Right)), (12.0, 8.0));
    assert!(Eyes::Left.include(Eye::Left) && !Eyes::Left.include(Eye::Right));
    assert!(!Eyes::Right.include(Eye::Left) && Eye::ALL.into_iter().all(|eye| Eyes::Both.include(eye)));
}

/// In perspective a drawn bounding box grows with the size, whatever the shape.
#[test]
fn the_extent_is_that_of_the_drawn_size() {
    let mut feature = shape("near", Depth::Place(Mm(100.0), Side::Toward));
    feature.scaling = Scaling::ConstantObject;
    let SolvedForm::Shape { size, extent, .. } = solve_one(feature).unwrap().form else { unreachable!() };
    assert_eq!(extent, (size, size));
}

/// Whatever rides with a target takes its depth, in the order of drawing, and each watch mark has one eye.
#[test]
fn companions_ride_at_the_depth_of_their_target() {
    let mut feature = shape("near", Depth::Demand(PrismDioptre(2.0), Side::Toward));
    feature.companions = Companions { watch: true, lock: true, number: Some(3), demand: None };
    let solved = solve(&Scene { features: vec![feature] }, &viewer()).unwrap();
    let told: Vec<_> = solved.iter().map(|f| (f.id.as_str(), f.role, f.eyes)).collect();
    assert_eq!(
        told,
        [
            ("near", Role::Target, Eyes::Both),
            ("near-bar", Role::Watch, Eyes::Left),
            ("near-wedge", Role::Watch, Eyes::Right),
            ("near-frame", Role::Lock, Eyes::Both),
            ("near-number", Role::Number, Eyes::Both),
        ]
    );
    assert!(solved.iter().all(|f| f.stand == solved[0].stand && f.at.0.to_bits() == solved[0].at.0.to_bits()));
}

#[test]
fn one_eye_alone_keeps_the_parallax() {
    let mut feature = shape("mark", Depth::Demand(PrismDioptre(2.0), Side::Toward));
    feature.eyes = Eyes::Left;
    assert_eq!(solve_one(feature).unwrap().stand.parallax, Mm(-8.0));
}

proptest! {
    /// The cyclopean place of a point in perspective is the midpoint of its two half-images in space: two ways to one
    /// number.
    #[test]
    fn perspective_is_the_projection_of_space(x in -100.0..100.0, y in -80.0..80.0, z in 150.0..1500.0) {
        let (side, amount) = if z < 400.0 { (Side::Toward, 400.0 - z) } else { (Side::Away, z - 400.0) };
        let mut feature = shape("p", Depth::Place(Mm(amount), side));
        feature.scaling = Scaling::ConstantObject;
        let Form::Shape { at: place, .. } = &mut feature.form else { unreachable!() };
        *place = at(x, y);
        let solved = solve_one(feature).unwrap();
        let images = viewer().viewing().unwrap().project(SpacePoint { x: Mm(x), y: Mm(y), z: Mm(z) }).unwrap();
        for (eye, expected) in [(Eye::Left, images.left_x.0), (Eye::Right, images.right_x.0)] {
            prop_assert!((half_x(solved.at.0, solved.stand.parallax.0, eye) - expected).abs() < 3e-6);
        }
        prop_assert!((solved.at.1 - images.y.0).abs() < 2e-6);
    }

    /// What a stand says in one unit is, asked for in that unit, the same stand.
    #[test]
    fn every_unit_leads_back_to_the_same_parallax(parallax in -150.0..49.0) {
        let stand = stand(Mm(parallax), &viewer()).unwrap();
        let side = if parallax < 0.0 { Side::Toward } else { Side::Away };
        for depth in [
            Depth::Place(Mm((stand.place.unwrap().0 - 400.0).abs()), side),
            Depth::Demand(PrismDioptre(stand.demand.0.abs()), side),
            Depth::Disparity(Angle::from_radians(stand.disparity.to_radians().abs()), side),
            Depth::Parallax(Mm(stand.parallax.0.abs()), side),
        ] {
            let back = stand_of(&depth, &viewer()).unwrap().parallax.0;
            prop_assert!((back - stand.parallax.0).abs() <= 1.000_001e-6, "{:?} {}", depth, back);
        }
    }

    /// All that leaves the solver is a whole number of millionths of a millimetre.
    #[test]
    fn numbers_leave_on_the_grid(x in -90.0..90.0, amount in 0.0..399.0) {
        let mut feature = shape("p", Depth::Place(Mm(amount), Side::Toward));
        feature.scaling = Scaling::ConstantObject;
        let Form::Shape { at: place, .. } = &mut feature.form else { unreachable!() };
        *place = at(x, 1.0 / 3.0);
        let solved = solve_one(feature).unwrap();
        for value in [solved.at.0, solved.at.1, solved.stand.parallax.0] {
            let text = format!("{value:.6}");
            prop_assert_eq!(text.parse::<f64>().unwrap().to_bits(), value.to_bits());
        }
    }
}
