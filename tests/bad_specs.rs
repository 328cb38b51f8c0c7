//! Broken specs: each case is a small set with the exact text of its problems.
//!
//! A case file holds sections: `--- NAME` starts the file NAME of the set, `=== expected` starts the problems as
//! printed. Set `DEPTHPRESS_BLESS` to write the problems as printed now into every case; read each before you keep it.

use std::fs;
use std::path::Path;

use depthpress::bundle::load::{Loaded, load};
use depthpress::diagnostics::render::{Paint, text};

/// Files that a case does not bring itself.
const SET: &str = r#"[set]
id = "case"
title = "Case"
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
id = "a4"
page = "A4"
ground = "white"
ppi = 300
"#;

const EXERCISE: &str = r#"[exercise]
kind = "hold"
title = "Lamp"

[[target]]
shape = "ring"
size = "40 mm"
depth = "2 pd toward"
"#;

/// Writes the files over a set without fault and loads it.
fn load_with(files: &[(&str, &[u8])]) -> (tempfile::TempDir, Loaded) {
    let dir = tempfile::tempdir().unwrap();
    let base = [("set.toml", SET.as_bytes()), ("a.toml", EXERCISE.as_bytes())];
    for (name, bytes) in base.iter().chain(files) {
        let path = dir.path().join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, bytes).unwrap();
    }
    let loaded = load(dir.path()).unwrap();
    (dir, loaded)
}

/// The problems as printed, with paths from the folder of the set.
fn printed(dir: &Path, loaded: &Loaded) -> String {
    let shown = text(loaded.diagnostics.sorted(), &loaded.sources, Paint::Plain);
    shown.replace(&format!("{}/", dir.display()), "")
}

/// The files and the expected text of a case.
fn sections(case: &str) -> (Vec<(&str, &[u8])>, &str) {
    let (files, expected) = case.split_once("=== expected\n").unwrap_or((case, ""));
    let files = files.split("--- ").skip(1).filter_map(|part| part.split_once('\n'));
    (files.map(|(name, body)| (name, body.as_bytes())).collect(), expected)
}

#[test]
fn every_case_prints_its_problems_exactly() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/bad_specs");
    let mut paths: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    assert!(45 <= paths.len(), "{}", paths.len());
    let bless = std::env::var_os("DEPTHPRESS_BLESS").is_some();
    let mut wrong = Vec::new();
    for path in paths {
        let case = fs::read_to_string(&path).unwrap();
        let (files, expected) = sections(&case);
        let (dir, loaded) = load_with(&files);
        let found = printed(dir.path(), &loaded);
        assert!(loaded.diagnostics.has_errors(), "{}: no error", path.display());
        if bless {
            let head = case.split("=== expected\n").next().unwrap();
            fs::write(&path, format!("{head}=== expected\n{found}")).unwrap();
        } else if found != expected {
            wrong.push(format!("{}\n--- found\n{found}", path.display()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
