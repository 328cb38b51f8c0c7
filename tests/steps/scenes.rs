//! What stands where on the pages of steps.

use std::collections::BTreeSet;

use depthpress::exercise::KINDS;
use depthpress::scene::Role;
use depthpress::solve::SolvedForm;

use super::*;

fn example(kind: &str) -> &'static str {
    KINDS.iter().find(|k| k.id == kind).unwrap().example
}

/// The examples of all kinds of steps pass every check without a warning, fit every page format and carry watch marks.
#[test]
fn examples_fit_every_page_and_carry_marks() {
    for kind in ["hoop", "tiles", "posts", "solids", "nest", "rungs", "jump", "pairs", "tour", "walk", "point"] {
        let prepared = prepared(VIEWER, example(kind));
        assert!(!problems(&prepared).contains("warning["), "{kind}: {}", problems(&prepared));
        assert_eq!(laid_out(&prepared).len(), 3, "{kind}");
        prepared.pages.iter().for_each(|page| assert_marks(&page.features));
    }
}

#[test]
fn rungs_rise_in_even_steps_with_number_and_demand() {
    let all = features(example("rungs"));
    let demands = [0.5, 1.0, 1.5, 2.0, 2.5, 3.0];
    assert_close(&parallaxes(&all), &demands.map(parallax), GRID);
    let label = |end: &str| all.iter().filter(|f| f.id.ends_with(end)).map(letters).collect::<Vec<_>>();
    assert_eq!(label("-number"), ["1", "2", "3", "4", "5", "6"]);
    let words = ["0.5 pd toward", "1 pd toward", "1.5 pd toward", "2 pd toward", "2.5 pd toward", "3 pd toward"];
    assert_eq!(label("-demand"), words);
    // The words lie on the page; numbers ride.
    let flat = |end: &str| all.iter().filter(|f| f.id.ends_with(end)).all(|f| f.stand.parallax.0 == 0.0);
    assert!(flat("-demand") && !flat("-number"));
    // In the order of reading.
    let places: Vec<_> = targets(&all).iter().map(|f| f.at).collect();
    assert!(places.windows(2).all(|pair| pair[0].1 < pair[1].1 || pair[0].0 < pair[1].0));
}

#[test]
fn a_row_that_is_not_full_stands_in_the_middle() {
    let spec = example("rungs").replace("count = 6", "count = 5");
    let places: Vec<f64> = targets(&features(&spec)).iter().map(|f| f.at.0).collect();
    assert_close(&places, &[-58.0, 0.0, 58.0, -29.0, 29.0], GRID);
}

const POSTS: &str = "[exercise]\nkind = \"posts\"\ntitle = \"Posts\"\n[posts]\n";

#[test]
fn posts_stand_whole_steps_off_the_page() {
    let of = |keys: &str| parallaxes(&features(&format!("{POSTS}{keys}")));
    assert_close(&of("step = \"0.5 pd toward\"\n"), &[0.0, 0.5, 1.0, 1.5, 2.0].map(parallax), GRID);
    assert_close(&of("step = \"0.5 pd away\"\ncount = 3\n"), &[0.0, -0.5, -1.0].map(parallax), GRID);
    let both = of("step = \"0.5 pd toward\"\nsides = \"both\"\n");
    assert_close(&both, &[-1.0, -0.5, 0.0, 0.5, 1.0].map(parallax), GRID);
    let mixed = of("step = \"0.5 pd toward\"\nsides = \"both\"\norder = [2, 5, 1, 4, 3]\n");
    assert_close(&mixed, &[-0.5, 1.0, -1.0, 0.5, 0.0].map(parallax), GRID);
}

/// A step written as a place is even in demand all the same, on both sides of the page: the first post of `both` stands
/// as far past the page, in demand, as the last stands before it.
#[test]
fn steps_are_even_in_demand_in_every_unit() {
    for step in ["1 cm toward", "20 arcmin toward", "2 mm parallax toward"] {
        let all = parallaxes(&features(&format!("{POSTS}step = \"{step}\"\nsides = \"both\"\n")));
        let one = all[4] / 2.0;
        assert!(one < 0.0, "{step}");
        assert_close(&all, &[-2.0, -1.0, 0.0, 1.0, 2.0].map(|k| k * one), 4.0 * GRID);
    }
}

#[test]
fn posts_are_drawn_unevenly_on_a_line_that_lies_on_the_page() {
    let rows = |seed: u32| {
        let keys = format!("seed = {seed}\n[posts]\ncount = 6\nstep = \"0.5 pd toward\"\nwidth = \"140 mm\"\n");
        let all = features(&POSTS.replace("[posts]\n", &keys));
        let base = all.iter().find(|f| f.role == Role::Reference).unwrap();
        assert_eq!(base.stand.parallax.0, 0.0);
        let foot = |f: &SolvedFeature| match &f.form {
            SolvedForm::Strokes { strokes, .. } => strokes[0][1].1,
            other => panic!("{other:?}"),
        };
        assert!(targets(&all).iter().all(|post| foot(post) == foot(base)));
        targets(&all).iter().map(|f| f.at.0).collect::<Vec<_>>()
    };
    for seed in 1..40 {
        let row = rows(seed);
        let gaps: Vec<f64> = row.windows(2).map(|pair| pair[1] - pair[0]).collect();
        assert!((row[5] - row[0] - 140.0).abs() < 1e-5);
        assert!(gaps.iter().all(|gap| 0.6 * 28.0 - 1e-5 <= *gap), "{gaps:?}");
        let span = gaps.iter().copied().fold(0.0, f64::max) - gaps.iter().copied().fold(200.0, f64::min);
        assert!(2.0 < span, "{gaps:?}");
    }
    assert_ne!(rows(1), rows(2));
    assert_eq!(rows(1), rows(1));
}

#[test]
fn tiles_shrink_and_rise_evenly() {
    let spec = |step: &str| {
        format!(
            "[exercise]\nkind = \"tiles\"\ntitle = \"Dock\"\n[tiles]\nouter = \"110 mm\"\ninner = \"30 mm\"\nstep = \"{step}\"\n"
        )
    };
    let pit = features(&spec("0.25 pd away"));
    assert_close(&parallaxes(&pit), &[0.0, 0.25, 0.5, 0.75, 1.0].map(|pd| parallax(-pd)), GRID);
    let size = |f: &&SolvedFeature| match &f.form {
        SolvedForm::Shape { size, .. } => *size,
        other => panic!("{other:?}"),
    };
    assert_close(&targets(&pit).iter().map(size).collect::<Vec<_>>(), &[110.0, 90.0, 70.0, 50.0, 30.0], GRID);
    assert!(targets(&pit).iter().all(|f| f.at == (0.0, 0.0)));
    let tower = features(&spec("0.25 pd toward"));
    assert!(parallaxes(&tower)[1..].iter().all(|p| *p < 0.0));
    // The marks ride on the innermost tile.
    let marks = tower.iter().filter(|f| f.role == Role::Watch);
    assert!(marks.map(|f| f.stand).all(|stand| stand == targets(&tower)[4].stand));
}

#[test]
fn pairs_go_in_and_out_in_turn() {
    let row = features(example("pairs"));
    assert_close(&parallaxes(&row), &[3.0, -1.0, 3.0, -1.0].map(parallax), GRID);
    let places: Vec<f64> = targets(&row).iter().map(|f| f.at.0).collect();
    assert_close(&places, &[-67.5, -22.5, 22.5, 67.5], GRID);
    let column = example("pairs").replace("\"row\"", "\"column\"").replace("count = 2", "count = 1");
    let column = features(&column);
    let places: Vec<(f64, f64)> = targets(&column).iter().map(|f| f.at).collect();
    assert_eq!(places, [(0.0, -22.5), (0.0, 22.5)]);
}

#[test]
fn a_tour_visits_every_depth_once_along_its_numbers() {
    let depths = [3.0, -1.0, 1.0, -0.5].map(parallax);
    let corners = [(-63.0, -33.0), (63.0, -33.0), (63.0, 25.0), (-63.0, 25.0)];
    let listed = features(&example("tour").replace("[tour]\n", "[tour]\nroute = [2, 4, 1, 3]\n"));
    assert_close(&parallaxes(&listed), &[1, 3, 0, 2].map(|i: usize| depths[i]), GRID);
    assert_eq!(targets(&listed).iter().map(|f| f.at).collect::<Vec<_>>(), [1, 3, 0, 2].map(|i: usize| corners[i]));
    let numbers: Vec<_> = listed.iter().filter(|f| f.role == Role::Number).map(letters).collect();
    assert_eq!(numbers, ["1", "2", "3", "4"]);
    let mut routes = BTreeSet::new();
    for seed in 1..30 {
        let drawn = features(&example("tour").replace("title", &format!("seed = {seed}\ntitle")));
        let route: Vec<usize> =
            targets(&drawn).iter().map(|f| corners.iter().position(|corner| *corner == f.at).unwrap()).collect();
        assert_close(&parallaxes(&drawn), &route.iter().map(|&i| depths[i]).collect::<Vec<_>>(), GRID);
        routes.insert(route);
    }
    // 29 draws of 24 orders: fewer than 8 different ones would be a stuck die.
    assert!(8 <= routes.len(), "{routes:?}");
}

/// Source of the size: ISO 8596 gives the angle of a thing by its size and distance, s = 2 D tan(a/2).
#[test]
fn a_hoop_fills_its_angle_and_the_page_has_one_too() {
    let all = features(
        &example("hoop").replace("{ from = \"2 pd toward\", to = \"0.5 pd toward\", levels = 4 }", "\"2 pd toward\""),
    );
    let extent = |f: &SolvedFeature| match &f.form {
        SolvedForm::Shape { extent, .. } => extent.0,
        other => panic!("{other:?}"),
    };
    let size = |degrees: f64| 800.0 * (degrees / 2.0).to_radians().tan();
    assert!((extent(&all[0]) - size(10.0)).abs() < GRID && size(8.0) < extent(&all[0]));
    let reference = all.iter().find(|f| f.role == Role::Reference).unwrap();
    assert_eq!((reference.stand.parallax.0, reference.at), (0.0, (0.0, 0.0)));
    // Both half-images of the hoop stay inside it.
    assert!(extent(&all[0]) / 2.0 + all[0].stand.parallax.0.abs() / 2.0 < extent(reference) / 2.0 - 1.2);
}
