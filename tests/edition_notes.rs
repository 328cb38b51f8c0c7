//! What is said of an edition as a whole: each problem of a page once, and a key that changes nothing.

use std::fs;
use std::num::NonZeroUsize;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::prepare;
use depthpress::bundle::run::{Request, run};
use serde_json::Value;

const SET: &str = r#"[set]
id = "quay"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["a.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[[edition]]
id = "screen"
page = "16:9"
ground = "white"
ppi = 72
formats = ["svg"]
hand = "left"

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 72
formats = ["svg"]
hand = "left"
"#;

const EXERCISE: &str = r#"[exercise]
kind = "hold"
title = "Lamp"
goal = "GOAL"

[[target]]
shape = "ring"
size = "40 mm"
depth = "2 pd toward"
"#;

fn written(goal: &str) -> tempfile::TempDir {
    let dir = tempfile::tempdir().unwrap();
    fs::write(dir.path().join("set.toml"), SET).unwrap();
    fs::write(dir.path().join("a.toml"), EXERCISE.replace("GOAL", goal)).unwrap();
    dir
}

/// A word that is too wide is met each time that a page is set anew until its words fit.
#[test]
fn a_problem_of_a_page_is_told_once() {
    let prepared = prepare(load(written(&"W".repeat(150)).path()).unwrap(), None);
    let book = prepared.book().unwrap();
    for edition in &book.set.editions {
        let problems = book.lay_out(edition, &Inked::of(edition)).unwrap_err();
        assert!(problems.iter().any(|problem| problem.code == "E-LAYOUT"));
        for (index, problem) in problems.iter().enumerate() {
            assert!(!problems[..index].contains(problem), "{}", problem.message);
        }
    }
}

/// Nothing is written into on a screen page.
#[test]
fn the_hand_changes_nothing_on_a_screen() {
    let dir = written("Look at the ring.");
    let prepared = prepare(load(dir.path()).unwrap(), None);
    let out = dir.path().join("out");
    let jobs = NonZeroUsize::new(1).unwrap();
    let request = Request { out: &out, editions: &[], formats: None, pages: None, jobs, sharded: None };
    run(&[prepared.book().unwrap()], &request, &|_| ()).unwrap();
    for (edition, count) in [("screen", 1), ("a4", 0)] {
        let report: Value =
            serde_json::from_slice(&fs::read(out.join(format!("quay/{edition}/report.json"))).unwrap()).unwrap();
        let notes = report["defaults"].as_array().unwrap().iter().filter(|note| note["code"] == "N-HAND");
        assert_eq!(notes.count(), count, "{edition}");
    }
}
