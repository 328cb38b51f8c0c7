//! Plans of sets on disk: what is told of one that does not hold its pages, and how long pages are taken to be.

use std::fs;
use std::path::Path;

use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::diagnostics::render::{Paint, text};
use depthpress::exercise::KINDS;
use depthpress::plan::{DAYS_TO_GO_ON, rarest, schedule};
use depthpress::spec::Back;

const SET: &str = r#"[set]
id = "case"
title = "Case"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["lamp.toml"]
[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]
[glasses]
left = "cyan"
right = "red"
[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 300
"#;

/// Four pages: five times 10 s and a look of 5 s into the distance, and 20 s to settle; 125 s each with a rest of 30 s.
const LAMP: &str = r#"[exercise]
kind = "hold"
title = "Lamp"
hold = "10 s"
repeats = 5
[[target]]
shape = "ring"
size = "40 mm"
depth = { from = "1 pd toward", to = "2.5 pd toward", levels = 4 }
"#;

/// A set with this plan, and its problems about the plan as printed.
fn planned(plan: &str, lamp: &str) -> (Prepared, String) {
    let dir = tempfile::tempdir().unwrap();
    fs::write(dir.path().join("set.toml"), format!("{SET}[plan]\n{plan}")).unwrap();
    fs::write(dir.path().join("lamp.toml"), lamp).unwrap();
    let prepared = prepare(load(dir.path()).unwrap(), None);
    let about = prepared.diagnostics.sorted().into_iter().filter(|found| found.code.contains("PLAN"));
    let shown = text(about, &prepared.sources, Paint::Plain);
    let shown = shown.replace(&format!("{}/", dir.path().display()), "");
    (prepared, shown)
}

#[test]
fn a_plan_that_holds_its_pages_is_silent() {
    let (prepared, problems) = planned("weeks = 2\ndays = 4\nminutes = 7\n", LAMP);
    assert_eq!(problems, "");
    assert_eq!(prepared.set.as_ref().unwrap().back, Back::PLANNED);
    assert!(prepared.book().is_some());
    assert_eq!(prepared.pages.iter().map(|page| page.page.time).collect::<Vec<_>>(), [95; 4]);
}

/// By hand: a day of 4 min holds one page of 125 s, so four pages take four days.
#[test]
fn too_few_days_are_an_error_that_names_enough_weeks() {
    let (prepared, problems) = planned("weeks = 1\ndays = 3\nminutes = 4\n", LAMP);
    assert!(prepared.book().is_none());
    assert_eq!(
        problems,
        "error[E-PLAN]: `4` pages do not fit in `3` days of `4` min, even if each comes only once\n  \
         --> set.toml:20:1\n   |\n20 | [plan]\n   | ^^^^^^ too few days\n   |\n   = help: `weeks = 2` would do, or more \
         `days` or `minutes`\n"
    );
}

#[test]
fn a_page_longer_than_a_day_is_an_error() {
    let long = LAMP.replace("repeats = 5", "repeats = 20");
    let (prepared, problems) = planned("weeks = 26\ndays = 7\nminutes = 5\n", &long);
    assert!(prepared.book().is_none());
    // 20 s and 20 times 15 s are two blocks of 3 min, so 380 s with their rests.
    assert!(
        problems.contains("page `lamp-1` takes about `7` min with its rests, above the `5` min of a day"),
        "{problems}"
    );
}

#[test]
fn few_days_a_page_are_a_warning_and_weeks_without_a_new_page_a_note() {
    let (prepared, problems) = planned("weeks = 1\ndays = 5\nminutes = 5\n", LAMP);
    assert!(prepared.book().is_some());
    assert!(problems.starts_with("warning[W-PLAN-DAYS]: page `lamp-1` comes on `1` day, below the `3`"), "{problems}");
    assert!(problems.contains("would do"), "{problems}");
    let (_, problems) = planned("weeks = 5\ndays = 5\nminutes = 10\n", LAMP);
    assert!(problems.starts_with("note[N-PLAN-REPEATS]: the plan has `5` weeks for `4` pages"), "{problems}");
}

/// The demo set promises a plan in which every page comes often enough to go on from it.
#[test]
fn the_demo_set_keeps_its_own_rule() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/harbour-lights");
    let prepared = prepare(load(&path).unwrap(), None);
    let times: Vec<u32> = prepared.pages.iter().map(|page| page.page.time).collect();
    let plan = schedule(&prepared.set.unwrap().plan.unwrap().value, &times).unwrap();
    assert!(DAYS_TO_GO_ON <= rarest(&plan, times.len()).unwrap().1);
}

/// Every kind of the gallery has a time that a day of the longest plan holds, and a brief check is brief.
#[test]
fn every_kind_has_a_time() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery");
    let prepared = prepare(load(&path).unwrap(), None);
    for kind in KINDS {
        let page = prepared.pages.iter().find(|page| page.page.kind == kind.id).unwrap();
        let time = page.page.time;
        assert!((30..=600).contains(&time), "{}: {time} s", kind.id);
        assert!(kind.family() != "readiness" || time == 80, "{}: {time} s", kind.id);
    }
}
