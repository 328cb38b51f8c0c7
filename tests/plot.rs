//! `plot` from outside: its files, what it refuses, and what it prints.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Command, Output};

use serde_json::Value;
use tempfile::TempDir;

const SET: &str = r#"[set]
id = "slipway"
title = "Slipway"
version = "1.2.0"
date = "2026-05-04"
language = "en"
exercises = ["bollard.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]
norms = "morgan near"

[glasses]
left = "cyan"
right = "red"

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 72
"#;

const BOLLARD: &str = r#"[exercise]
kind = "jump"
title = "Bollards"

[[target]]
shape = "ring"
size = "30 mm"
at = ["-40 mm", "0 mm"]
depth = { values = ["5 cm toward", "2 pd toward"] }
label = "near"

[[target]]
shape = "ring"
size = "30 mm"
at = ["40 mm", "0 mm"]
depth = "1 pd away"
label = "far"
"#;

fn yard(set: &str) -> TempDir {
    let dir = tempfile::tempdir().unwrap();
    fs::write(dir.path().join("set.toml"), set).unwrap();
    fs::write(dir.path().join("bollard.toml"), BOLLARD).unwrap();
    dir
}

fn plot(dir: &Path, args: &[&str]) -> Output {
    let args = ["plot", "."].iter().chain(args);
    Command::new(env!("CARGO_BIN_EXE_depthpress")).current_dir(dir).args(args).output().unwrap()
}

fn done(dir: &Path, args: &[&str]) -> Output {
    let output = plot(dir, args);
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    output
}

/// The files of the charts with their bytes.
fn files(dir: &Path) -> BTreeMap<String, Vec<u8>> {
    let entries = fs::read_dir(dir.join("out/slipway/plot")).unwrap().map(Result::unwrap);
    entries.map(|e| (e.file_name().into_string().unwrap(), fs::read(e.path()).unwrap())).collect()
}

fn names(dir: &Path) -> Vec<String> {
    files(dir).into_keys().collect()
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// The two pages of the exercise have the numbers that `check` tells.
fn numbers(dir: &Path) -> Vec<u64> {
    let program = env!("CARGO_BIN_EXE_depthpress");
    let output = Command::new(program).current_dir(dir).args(["check", ".", "--json"]).output().unwrap();
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    report["sets"][0]["pages"].as_array().unwrap().iter().map(|page| page["number"].as_u64().unwrap()).collect()
}

#[test]
fn a_set_gets_its_ladder_and_a_plan_of_each_page() {
    let dir = yard(SET);
    let output = done(dir.path(), &[]);
    let [first, second] = numbers(dir.path())[..] else { panic!() };
    let plan = |number: u64, level: u32, format: &str| format!("plan-{number:03}-bollard-{level}.{format}");
    let mut expected = vec!["ladder.png".to_owned(), "ladder.svg".to_owned(), "report.json".to_owned()];
    for (number, level) in [(first, 1), (second, 2)] {
        expected.extend(["png", "svg"].map(|format| plan(number, level, format)));
    }
    expected.sort();
    assert_eq!(names(dir.path()), expected);
    assert!(said(&output).contains("charts: 7 files in out/slipway/plot"), "{}", said(&output));
    assert!(output.stdout.is_empty());
    // A4 on its long side at 150 pixels per inch.
    let png = &files(dir.path())["ladder.png"];
    let side = |at: usize| u32::from_be_bytes(png[at..at + 4].try_into().unwrap());
    assert_eq!((side(16), side(20)), (1754, 1240));
    let svg = String::from_utf8(files(dir.path())["ladder.svg"].clone()).unwrap();
    assert!(svg.contains("width=\"297mm\" height=\"210mm\""));
    assert!(svg.contains("range of the viewer: 3 pd away (Percival, middle third) to 7 pd toward"), "in its words");
}

#[test]
fn the_same_set_gives_the_same_bytes() {
    let (one, two) = (yard(SET), yard(SET));
    done(one.path(), &[]);
    done(two.path(), &[]);
    assert_eq!(files(one.path()), files(two.path()));
}

#[test]
fn formats_and_pages_can_be_chosen() {
    let dir = yard(SET);
    let last = numbers(dir.path())[1];
    done(dir.path(), &["--format", "svg", "--page", &last.to_string()]);
    assert_eq!(names(dir.path()), ["ladder.svg", &format!("plan-{last:03}-bollard-2.svg"), "report.json"]);
    // Part of a run leaves what is there; a whole one does not.
    fs::write(dir.path().join("out/slipway/plot/old.svg"), "old").unwrap();
    done(dir.path(), &["--format", "png", "--page-id", "bollard-1", "--ppi", "72"]);
    assert_eq!(names(dir.path()).len(), 6);
    done(dir.path(), &[]);
    assert!(!names(dir.path()).contains(&"old.svg".to_owned()));
    assert_eq!(names(dir.path()).len(), 7);
}

#[test]
fn pages_without_an_exercise_are_refused() {
    let dir = yard(SET);
    let pages = numbers(dir.path());
    let span = format!("its exercises are on pages `{}-{}`", pages[0], pages[1]);
    for (args, message) in [
        (["--page", "1"], format!("page `1` is no exercise of set `slipway`; {span}")),
        (["--page", "98-99"], format!("pages `98-99` are no exercises of set `slipway`; {span}")),
        (
            ["--page-id", "bolard-1"],
            "page `bolard-1` is no exercise of set `slipway`; did you mean `bollard-1`?".into(),
        ),
    ] {
        let output = plot(dir.path(), &args);
        assert_eq!(output.status.code(), Some(2));
        assert!(said(&output).contains(&message), "{}", said(&output));
    }
    assert!(!dir.path().join("out").exists());
}

#[test]
fn an_edition_called_plot_keeps_its_folder() {
    let dir = yard(&SET.replace("id = \"a4\"", "id = \"plot\""));
    let output = plot(dir.path(), &[]);
    assert_eq!(output.status.code(), Some(1));
    assert!(
        said(&output).contains("an edition cannot be `plot`: the charts of the set have that folder"),
        "{}",
        said(&output)
    );
    assert!(!dir.path().join("out").exists());
}

#[test]
fn a_set_that_is_not_there_or_has_errors_gets_no_charts() {
    let dir = yard(&SET.replace("63 mm", "63 cm"));
    let output = plot(dir.path(), &["--json"]);
    assert_eq!(output.status.code(), Some(1));
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert!(report["written"].is_null() && report["findings"][0]["severity"] == "error");
    assert!(!dir.path().join("out").exists());
    let empty = tempfile::tempdir().unwrap();
    assert_eq!(plot(empty.path(), &[]).status.code(), Some(2));
    assert_eq!(plot(dir.path(), &["--format", "pdf"]).status.code(), Some(2));
}

/// 1 pd away is past the third of a pd that is left of a base-in reserve of 9 pd and a phoria of 4 pd inward, at Sheard's bound:
/// the error is told, and the chart shows it.
#[test]
fn a_page_that_asks_too_much_is_drawn_all_the_same() {
    let known = "phoria = { amount = \"4 pd\", direction = \"eso\" }\ntoward = { break = \"12 pd\" }\naway = { break = \"9 pd\" }";
    let dir = yard(&SET.replace("norms = \"morgan near\"", known));
    let output = plot(dir.path(), &["--format", "svg"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(said(&output).contains("E-ZONE") && said(&output).contains("charts: 4 files"), "{}", said(&output));
    let svg = String::from_utf8(files(dir.path())["ladder.svg"].clone()).unwrap();
    assert!(svg.contains("0.3 pd away (Sheard, twice the phoria)"));
}

/// 5 cm toward stands at 350 mm; the ring of 30 mm there is as wide as its 30 mm on the page at 400 mm, seen from the
/// midpoint of the eyes. Source: `[Woods1993]`, similar triangles.
#[test]
fn json_tells_what_the_charts_show() {
    let dir = yard(SET);
    let output = done(dir.path(), &["--json"]);
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    let written = &report["written"];
    assert_eq!(written["whole"], true);
    assert_eq!(written["files"].as_array().unwrap().len(), 7);
    let stored: Value = serde_json::from_slice(&files(dir.path())["report.json"]).unwrap();
    assert_eq!(stored["pages"], written["pages"]);
    let zone = &stored["viewer"]["zone"];
    assert_eq!((&zone["away_pd"], &zone["toward_pd"]), (&3.0.into(), &7.0.into()));
    let page = &stored["pages"][0];
    assert_eq!((&page["id"], &page["strand"]), (&"bollard-1".into(), &"jump".into()));
    assert!((1.0..100.0).contains(&page["difficulty"].as_f64().unwrap()));
    let near = &page["targets"][0];
    assert_eq!(near["id"], "near");
    let ends: Vec<[f64; 2]> = serde_json::from_value(near["from_above_mm"].clone()).unwrap();
    let expected = [-55.0, -25.0].map(|x| x * 350.0 / 400.0);
    for (end, x) in ends.iter().zip(expected) {
        assert!((end[0] - x).abs() < 1e-3 && (end[1] - 350.0).abs() < 1e-3, "{ends:?}");
    }
}
