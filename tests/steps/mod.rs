//! The kinds that lead from depth to depth, from their specs to their pages: even steps, signs, orders, and numbers
//! against published formulas.

mod pages;
mod scenes;
mod solids;

use std::fs;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::diagnostics::render::{Paint, text};
use depthpress::layout::LaidOut;
use depthpress::scene::{Eyes, Role};
use depthpress::solve::{SolvedFeature, SolvedForm};

/// A set of one exercise in every page format.
fn set(viewer: &str) -> String {
    let edition = |id: &str, page: &str| {
        format!("[[edition]]\nid = \"{id}\"\npage = \"{page}\"\nground = \"white\"\nppi = 600\n")
    };
    format!(
        "[set]\nid = \"quay\"\ntitle = \"Quay\"\nversion = \"1.0.0\"\ndate = \"2026-05-04\"\nlanguage = \"en\"\n\
         exercises = [\"quay-page.toml\"]\n[viewer]\n{viewer}\n[glasses]\nleft = \"cyan\"\nright = \"red\"\n{}{}{}",
        edition("a4", "A4"),
        edition("letter", "Letter"),
        edition("wide", "16:9"),
    )
}

/// The viewer of most examples.
const VIEWER: &str = "distance = \"40 cm\"\nipd = \"63 mm\"\nipd_range = [\"50 mm\", \"75 mm\"]";

/// The pages of an exercise file for a viewer; fails on any error.
fn prepared(viewer: &str, exercise: &str) -> Prepared {
    let dir = tempfile::tempdir().unwrap();
    fs::write(dir.path().join("set.toml"), set(viewer)).unwrap();
    fs::write(dir.path().join("quay-page.toml"), exercise).unwrap();
    let prepared = prepare(load(dir.path()).unwrap(), None);
    assert!(!prepared.diagnostics.has_errors(), "{}", problems(&prepared));
    prepared
}

/// Every problem as printed.
fn problems(prepared: &Prepared) -> String {
    text(prepared.diagnostics.sorted(), &prepared.sources, Paint::Plain)
}

/// The solved features of the first page.
fn features(exercise: &str) -> Vec<SolvedFeature> {
    prepared(VIEWER, exercise).pages.remove(0).features
}

/// Lays the pages out in every format.
fn laid_out(prepared: &Prepared) -> Vec<LaidOut> {
    let book = prepared.book().unwrap();
    let lay = |edition| book.lay_out(edition, &Inked::of(edition)).unwrap();
    book.set.editions.iter().map(lay).collect()
}

/// What is looked at, in order.
fn targets(features: &[SolvedFeature]) -> Vec<&SolvedFeature> {
    features.iter().filter(|f| f.role == Role::Target).collect()
}

/// Parallax on the page for a demand at 40 cm: 1 pd deviates 1 cm at 1 m (ISO 13666), crossed below 0.
fn parallax(demand: f64) -> f64 {
    0.0 - demand * 400.0 / 100.0
}

/// What the solver rounds to, mm.
const GRID: f64 = 1.000_001e-6;

fn assert_close(seen: &[f64], expected: &[f64], within: f64) {
    let close = seen.len() == expected.len() && seen.iter().zip(expected).all(|(a, b)| (a - b).abs() <= within);
    assert!(close, "{seen:?} is not {expected:?}");
}

fn parallaxes(features: &[SolvedFeature]) -> Vec<f64> {
    targets(features).iter().map(|f| f.stand.parallax.0).collect()
}

/// The words of a drawn label.
fn letters(feature: &SolvedFeature) -> &str {
    match &feature.form {
        SolvedForm::Shape { shape: depthpress::scene::Shape::Text(text), .. } => text,
        other => panic!("{other:?}"),
    }
}

/// Every page has a mark that the left eye alone sees and one for the right eye alone.
fn assert_marks(features: &[SolvedFeature]) {
    for eyes in [Eyes::Left, Eyes::Right] {
        assert!(features.iter().any(|f| f.role == Role::Watch && f.eyes == eyes), "{eyes:?}");
    }
}
