//! The demo set reads without a problem and holds what it promises: every kind, both sides, easy to hard.

use std::path::Path;

use depthpress::bundle::load::{Loaded, load};
use depthpress::diagnostics::render::{Paint, text};

fn demo() -> Loaded {
    load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/harbour-lights")).unwrap()
}

#[test]
fn the_demo_set_has_no_problems() {
    let loaded = demo();
    let problems = text(loaded.diagnostics.sorted(), &loaded.sources, Paint::Plain);
    assert_eq!(problems, "");
    assert_eq!(loaded.set.unwrap().editions.len(), 3);
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
