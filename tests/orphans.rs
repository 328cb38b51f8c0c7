//! What lies in the folder of a set and is used by nothing is told, and nothing else is.

use std::fs;
use std::path::Path;

use depthpress::bundle::load::load;
use depthpress::diagnostics::Severity;

const SET: &str = r#"[set]
id = "shed"
title = "Shed"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["ring.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[[series]]
id = "flood"
from = "1 pd toward"
to = "4 pd toward"

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 72
"#;

const RING: &str = "[exercise]\nkind = \"hold\"\ntitle = \"Ring\"\n\n[[target]]\nshape = \"ring\"\nsize = \"40 mm\"\n\
                    depth = { series = \"flood\", levels = 3 }\n";

/// The warnings of a set with these files besides; no problem is worse.
fn warnings(files: &[(&str, &str)]) -> Vec<String> {
    let dir = tempfile::tempdir().unwrap();
    for (name, body) in [("set.toml", SET), ("ring.toml", RING)].iter().chain(files) {
        let path = dir.path().join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, body).unwrap();
    }
    let loaded = load(dir.path()).unwrap();
    assert!(loaded.diagnostics.iter().all(|d| d.severity == Severity::Warning && d.code == "W-ORPHAN"));
    loaded.diagnostics.iter().map(|d| d.message.clone()).collect()
}

#[test]
fn files_that_nothing_names_are_told() {
    assert_eq!(warnings(&[]), Vec::<String>::new());
    assert_eq!(
        warnings(&[("old/rope.toml", RING), ("notes.toml", "[notes]\nring = 1\n"), ("read.md", "[exercise]\n")]),
        ["1 exercise file is not in the list of `exercises`: `old/rope.toml`"]
    );
    assert_eq!(
        warnings(&[("words/de.toml", "[set]\ntitle = \"Schuppen\"\n\n[exercise.ring]\ntitle = \"Ring\"\n")]),
        ["1 file of translations is named by no `[[translation]]`: `words/de.toml`"]
    );
    let art: Vec<String> = (1..=7).map(|n| format!("art/{n}.svg")).collect();
    let art: Vec<_> = art.iter().map(|name| (name.as_str(), "<svg/>")).collect();
    let told = "7 pictures are named by no exercise: `art/1.svg`, `art/2.svg`, `art/3.svg`, `art/4.svg`, `art/5.svg` and \
                2 more";
    assert_eq!(warnings(&art), [told]);
}

#[test]
fn a_series_that_no_exercise_follows_is_told() {
    let ring = RING.replace("{ series = \"flood\", levels = 3 }", "\"2 pd toward\"");
    assert_eq!(warnings(&[("ring.toml", &ring)]), ["no exercise is a part of the series `flood`"]);
}

#[test]
fn other_sets_and_what_was_made_are_left_alone() {
    let made = [("out/shed/a4/report.json", "{}"), ("out/shed/a4/png/001-cover.png", "x")];
    let other = [("more/set.toml", SET), ("more/rope.toml", RING), (".hidden/gull.svg", "<svg/>")];
    assert_eq!(warnings(&[made.as_slice(), &other].concat()), Vec::<String>::new());
}

#[test]
fn nothing_in_the_sets_of_the_house_is_an_orphan() {
    for set in ["harbour-lights", "tide-ladder", "gallery"] {
        let loaded = load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(set)).unwrap();
        let orphans: Vec<_> = loaded.diagnostics.iter().filter(|d| d.code == "W-ORPHAN").collect();
        assert!(orphans.is_empty(), "{set}: {orphans:?}");
    }
}
