//! The demo set reads without a problem and holds what it promises: every kind, both sides, easy to hard.

use std::fs;
use std::path::{Path, PathBuf};

use depthpress::bundle::load::{Loaded, load};
use depthpress::colour::Ground;
use depthpress::diagnostics::render::{Paint, text};
use depthpress::language::Language;
use depthpress::spec::{Edition, Hand, TextSize};

/// The folder of the demo set.
pub(crate) fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/harbour-lights")
}

/// Its `set.toml` with the first three editions alone: those in English, one for each page format.
pub(crate) fn first_editions() -> String {
    let text = fs::read_to_string(folder().join("set.toml")).unwrap();
    text.split_once("# The same book in large print").unwrap().0.to_owned()
}

/// Writes the demo set with its first three editions alone.
pub(crate) fn copy_to(home: &Path) {
    for entry in fs::read_dir(folder()).unwrap() {
        let path = entry.unwrap().path();
        if path.is_file() {
            fs::copy(&path, home.join(path.file_name().unwrap())).unwrap();
        }
    }
    fs::write(home.join("set.toml"), first_editions()).unwrap();
}

fn demo() -> Loaded {
    load(&folder()).unwrap()
}

#[test]
fn the_demo_set_has_no_problems() {
    let loaded = demo();
    let problems = text(loaded.diagnostics.sorted(), &loaded.sources, Paint::Plain);
    assert_eq!(problems, "");
    assert!(loaded.set.is_some());
}

#[test]
fn the_demo_set_comes_in_every_language_size_ground_hand_and_way_round() {
    let loaded = demo();
    let editions = loaded.set.unwrap().editions;
    let has = |wanted: &dyn Fn(&Edition) -> bool| editions.iter().any(wanted);
    assert!(12 <= editions.len(), "{}", editions.len());
    assert_eq!(editions[..3].iter().map(|edition| edition.id.as_str()).collect::<Vec<_>>(), ["a4", "letter", "screen"]);
    for language in Language::ALL {
        for text in TextSize::ALL {
            assert!(has(&|edition| edition.language == language && edition.text == text), "{}", language.tag());
        }
        let translated = loaded.translated.iter().any(|told| told.language == language && told.words.is_some());
        assert_eq!(translated, language != Language::En);
    }
    for left in ["cyan", "red"] {
        assert!(has(&|edition| edition.glasses.left.name() == left), "{left}");
    }
    assert!(has(&|edition| edition.ground == Ground::Black) && has(&|edition| edition.hand == Hand::Left));
}

#[test]
fn the_demo_set_says_the_same_in_every_language() {
    let loaded = demo();
    for told in &loaded.translated {
        assert_eq!(told.exercises.len(), loaded.exercises.len());
        for (own, other) in loaded.exercises.iter().zip(&told.exercises) {
            assert!(own.title != other.title, "{}: `{}` in {}", own.id, own.title, told.language.tag());
            assert_eq!(own.words.goal.is_some(), other.words.goal.is_some());
        }
    }
}

#[test]
fn the_demo_set_has_its_kinds_twice_over_some_twenty_pages() {
    let loaded = demo();
    let pages: u32 = loaded.exercises.iter().map(|e| e.levels()).sum();
    assert!((18..=30).contains(&pages), "{pages}");
    for kind in ["hold", "jump", "trail", "nest"] {
        let count = loaded.exercises.iter().filter(|e| e.body.kind() == kind).count();
        assert!(2 <= count, "{kind}: {count}");
    }
}
