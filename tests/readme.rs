//! What README.md shows is what happens: its exercise reads, and its error screen is the tool's own.

use std::fs;
use std::path::Path;

use depthpress::bundle::load::load;
use depthpress::diagnostics::render::{self, Paint};

fn readme() -> String {
    fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md")).unwrap()
}

/// The first block of this language.
fn block(language: &str) -> String {
    let readme = readme();
    let start = readme.split_once(&format!("```{language}\n")).unwrap().1;
    start.split_once("```").unwrap().0.to_owned()
}

/// The messages of a set with this one exercise, for the folder name `set`.
fn messages(exercise: &str) -> String {
    let set = crate::demo_set::first_editions();
    let (before, rest) = set.split_once("exercises = [").unwrap();
    let after = rest.split_once("]\n").unwrap().1;
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("set.toml"), format!("{before}exercises = [\"a.toml\"]\n{after}")).unwrap();
    fs::write(folder.path().join("a.toml"), exercise).unwrap();
    let loaded = load(folder.path()).unwrap();
    let text = render::text(loaded.diagnostics.sorted(), &loaded.sources, Paint::Plain);
    text.replace(&format!("{}/", folder.path().display()), "set/")
}

#[test]
fn the_exercise_shown_reads_without_a_problem() {
    assert_eq!(messages(&block("toml")), "");
}

#[test]
fn the_error_shown_is_the_one_told() {
    let exercise = block("toml").replace("depth = { values", "dept = { values");
    let told = messages(&exercise);
    assert!(told.contains(block("text").trim()), "{told}");
}
