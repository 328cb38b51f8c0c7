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

/// The one problem of a set, as printed.
fn only(files: &[(&str, &[u8])]) -> String {
    let (dir, loaded) = load_with(files);
    assert_eq!(loaded.diagnostics.len(), 1);
    printed(dir.path(), &loaded)
}

#[test]
fn the_set_under_the_cases_has_no_problems() {
    let (dir, loaded) = load_with(&[]);
    assert_eq!(printed(dir.path(), &loaded), "");
    assert!(loaded.set.is_some());
    assert_eq!(loaded.exercises.len(), 1);
}

#[test]
fn a_set_that_is_not_there_is_no_author_mistake() {
    let dir = tempfile::tempdir().unwrap();
    let gone = load(&dir.path().join("gone")).unwrap_err();
    assert!(gone.to_string().contains("gone"), "{gone}");
    // A folder without a set.toml.
    let bare = load(dir.path()).unwrap_err();
    assert!(bare.path.ends_with("set.toml"), "{bare}");
}

#[test]
fn a_set_is_named_by_its_file_too() {
    let (dir, _) = load_with(&[]);
    let loaded = load(&dir.path().join("set.toml")).unwrap();
    assert_eq!(loaded.exercises.len(), 1);
}

#[test]
fn a_byte_order_mark_and_windows_line_ends_are_fine() {
    let text = format!("\u{feff}{}", SET.replace('\n', "\r\n"));
    let (dir, loaded) = load_with(&[("set.toml", text.as_bytes())]);
    assert_eq!(printed(dir.path(), &loaded), "");
}

#[test]
fn a_file_that_is_not_utf8_is_marked_at_its_first_bad_byte() {
    let text = b"[exercise]\ntitle = \"Caf\xe9\"\n";
    let expected = "\
error[E-FILE]: `a.toml` is not UTF-8: byte 23 is 0xe9
 --> a.toml:2:13
  |
2 | title = \"Caf\u{fffd}\"
  |             ^ not text from here
  |
  = help: save the file as UTF-8
";
    assert_eq!(only(&[("a.toml", text)]), expected);
    let set = only(&[("set.toml", b"\xff")]);
    assert!(set.starts_with("error[E-FILE]: `set.toml` is not UTF-8: byte 0 is 0xff\n"), "{set}");
}

#[test]
fn a_file_of_a_hundred_megabytes_is_refused_unread() {
    let (dir, _) = load_with(&[]);
    let size = 100 * 1024 * 1024;
    fs::File::create(dir.path().join("a.toml")).unwrap().set_len(size).unwrap();
    let loaded = load(dir.path()).unwrap();
    let expected = "\
error[E-FILE]: `a.toml` has 104857600 bytes, above the limit of 1048576 bytes
 --> set.toml:7:14
  |
7 | exercises = [\"a.toml\"]
  |              ^^^^^^^^ listed here
  |
  = help: a spec file is a short text; split it, or check that it is the right file
";
    assert_eq!(printed(dir.path(), &loaded), expected);
    fs::File::create(dir.path().join("set.toml")).unwrap().set_len(size).unwrap();
    let loaded = load(dir.path()).unwrap();
    let shown = printed(dir.path(), &loaded);
    assert!(shown.starts_with("error[E-FILE]: `set.toml` has 104857600 bytes"), "{shown}");
}

#[test]
fn a_folder_in_place_of_a_file_is_refused() {
    let (dir, _) = load_with(&[]);
    fs::remove_file(dir.path().join("a.toml")).unwrap();
    fs::create_dir(dir.path().join("a.toml")).unwrap();
    let shown = printed(dir.path(), &load(dir.path()).unwrap());
    assert!(shown.starts_with("error[E-FILE]: `a.toml` is a folder, not a file\n --> set.toml:7:14\n"), "{shown}");
    fs::remove_file(dir.path().join("set.toml")).unwrap();
    fs::create_dir(dir.path().join("set.toml")).unwrap();
    let shown = printed(dir.path(), &load(dir.path()).unwrap());
    assert!(shown.starts_with("error[E-FILE]: `set.toml` is a folder, not a file\n"), "{shown}");
}

#[cfg(unix)]
#[test]
fn links_may_not_leave_the_folder() {
    let outside = tempfile::tempdir().unwrap();
    fs::write(outside.path().join("b.toml"), EXERCISE).unwrap();
    let (dir, _) = load_with(&[("inside/c.toml", EXERCISE.as_bytes())]);
    let link = dir.path().join("a.toml");
    fs::remove_file(&link).unwrap();
    std::os::unix::fs::symlink(outside.path().join("b.toml"), &link).unwrap();
    let shown = printed(dir.path(), &load(dir.path()).unwrap());
    assert!(
        shown.starts_with("error[E-FILE]: `a.toml` is a link that leads out of the folder of the set\n"),
        "{shown}"
    );
    // A link that stays inside is a file like any other.
    fs::remove_file(&link).unwrap();
    std::os::unix::fs::symlink("inside/c.toml", &link).unwrap();
    assert_eq!(printed(dir.path(), &load(dir.path()).unwrap()), "");
    // A link to itself cannot be read.
    fs::remove_file(&link).unwrap();
    std::os::unix::fs::symlink("a.toml", &link).unwrap();
    let shown = printed(dir.path(), &load(dir.path()).unwrap());
    assert!(shown.starts_with("error[E-FILE]: cannot read `a.toml`: "), "{shown}");
}

#[test]
fn deep_nesting_is_refused_without_a_crash() {
    let deep = 200_000;
    let bombs = [
        format!("x = {}", "[".repeat(deep)),
        format!("x = {}{}", "[".repeat(deep), "]".repeat(deep)),
        format!("x = {}", "{a=".repeat(deep)),
        format!("{}x = 1", "a.".repeat(deep)),
        format!("[{}x]", "a.".repeat(deep)),
        format!("[exercise]\nkind = {}\"hold\"{}", "[".repeat(50), "]".repeat(50)),
    ];
    for bomb in &bombs {
        let (dir, loaded) = load_with(&[("a.toml", bomb.as_bytes())]);
        assert!(loaded.diagnostics.has_errors());
        // One line of a megabyte is never shown whole.
        assert!(printed(dir.path(), &loaded).len() < 20_000, "{}", &bomb[..20]);
    }
}

#[test]
fn a_file_that_is_no_toml_is_not_quoted_whole() {
    let lines = "hold the lamp\n".repeat(60_000);
    let (dir, loaded) = load_with(&[("a.toml", lines.as_bytes())]);
    let shown = printed(dir.path(), &loaded);
    assert_eq!(loaded.diagnostics.len(), 51);
    assert!(shown.ends_with(
        "error[E-SYNTAX]: `a.toml`: 59950 more lines are not valid TOML\n |\n = help: mend the first ones and run again\n"
    ), "{shown}");
}

#[test]
fn a_megabyte_of_the_same_label_is_read_in_time() {
    let targets = "[[target]]\nlabel = \"a\"\n".repeat(20_000);
    let (_, loaded) =
        load_with(&[("a.toml", format!("[exercise]\nkind = \"jump\"\ntitle = \"T\"\n{targets}").as_bytes())]);
    // Each has no shape, size and depth; all but the first repeat the label; and there are too many.
    assert_eq!(loaded.diagnostics.len(), 3 * 20_000 + 19_999 + 1);
}

#[test]
fn thousands_of_unknown_keys_are_all_reported() {
    let keys: String = (0..5000).map(|i| format!("depth{i} = {i}\n")).collect();
    let (dir, loaded) = load_with(&[("a.toml", format!("{EXERCISE}{keys}").as_bytes())]);
    assert_eq!(loaded.diagnostics.len(), 5000);
    assert_eq!(printed(dir.path(), &loaded).matches("error[E-UNKNOWN-KEY]").count(), 5000);
    // The same in one line: an inline table.
    let keys: String = (0..5000).map(|i| format!("k{i} = 1, ")).collect();
    let inline = EXERCISE.replace("\"2 pd toward\"", &format!("{{ {keys} }}"));
    let (dir, loaded) = load_with(&[("a.toml", inline.as_bytes())]);
    assert!(5000 <= loaded.diagnostics.len());
    assert!(printed(dir.path(), &loaded).len() < 5_000_000);
}

/// Pieces that edits put into specs.
const PIECES: &[&str] = &[
    "",
    "\"",
    "[",
    "]",
    "{",
    "}",
    "=",
    "\n",
    "#",
    "'",
    "\"\"\"",
    ",",
    "nan",
    "-1",
    "1e999",
    "0x7fffffffffffffffffff",
    "true",
    "\"page\"",
    "\"9 pd away\"",
    "\"-1 mm\"",
    "2026-01-01",
    "[[target]]",
    "[arrangement]",
    "levels = 3",
    "\u{0}",
    "ä",
    "\u{202e}",
    "{ values = [\"1 pd away\", \"page\"] }",
    "{ from = \"2 mm\", to = \"1 deg\", levels = 4 }",
];

/// A text with some edits: at a share of its length, remove some bytes and put a piece there.
fn edited(text: &str, edits: &[(f64, usize, usize)]) -> Vec<u8> {
    let mut bytes = text.as_bytes().to_vec();
    for (share, remove, piece) in edits {
        let at = (share * bytes.len() as f64) as usize;
        let end = (at + remove).min(bytes.len());
        bytes.splice(at..end, PIECES[piece % PIECES.len()].bytes());
    }
    bytes
}

/// What must hold whatever the files are: no crash, and no exercise or set goes missing without an error.
fn check_any(files: &[(&str, &[u8])]) {
    let (dir, loaded) = load_with(files);
    let shown = printed(dir.path(), &loaded);
    if !loaded.diagnostics.has_errors() {
        assert!(loaded.set.is_some() && !loaded.exercises.is_empty(), "{shown}");
    }
    assert_eq!(shown.is_empty(), loaded.diagnostics.is_empty());
}

proptest::proptest! {
    #[test]
    fn random_bytes_never_crash_the_reader(set: Vec<u8>, exercise: Vec<u8>) {
        check_any(&[("set.toml", &set)]);
        check_any(&[("a.toml", &exercise)]);
    }

    #[test]
    fn edited_specs_never_crash_the_reader(
        kind in 0..depthpress::exercise::KINDS.len(),
        exercise in proptest::collection::vec((0.0..1.0, 0..12usize, 0..PIECES.len()), 1..4),
        set in proptest::collection::vec((0.0..1.0, 0..12usize, 0..PIECES.len()), 0..3),
    ) {
        let exercise = edited(depthpress::exercise::KINDS[kind].example, &exercise);
        check_any(&[("a.toml", &exercise), ("set.toml", &edited(SET, &set))]);
    }
}
