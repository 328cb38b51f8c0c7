//! Every word of every sheet of the demo sets, for a program from outside that reads them from the PDF again
//! (`tests/outside/words_check.py`).

use std::collections::BTreeMap;
use std::path::Path;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::prepare;
use depthpress::layout::sheet::{Node, Sheet};

/// What is printed on a sheet, run by run in the order of its nodes, footer and all.
fn printed(nodes: &[Node], words: &mut Vec<String>) {
    for node in nodes {
        match node {
            Node::Group(_, inner) => printed(inner, words),
            Node::Text(run) => words.push(run.text.to_string()),
            Node::Fill(_) | Node::Patch(_) | Node::Art(_) => {}
        }
    }
}

#[test]
#[ignore = "writes what an outside program reads again"]
fn write_words_of_the_demo_sets() {
    let out = std::env::var("DEPTHPRESS_WORDS").unwrap();
    for set in ["harbour-lights", "tide-ladder"] {
        let words = serde_json::to_string(&words_of(set)).unwrap();
        std::fs::write(Path::new(&out).join(format!("words-{set}.json")), words).unwrap();
    }
}

/// The words of a set: by edition, sheet by sheet.
fn words_of(set: &str) -> BTreeMap<String, Vec<Vec<String>>> {
    words_in(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(set))
}

/// The same of the set in a folder.
fn words_in(folder: &Path) -> BTreeMap<String, Vec<Vec<String>>> {
    let prepared = prepare(load(folder).unwrap(), None);
    assert!(prepared.book().is_some(), "{:?}", prepared.diagnostics);
    let book = prepared.book().unwrap();
    let of_sheet = |sheet: &Sheet| {
        let mut words = Vec::new();
        printed(&sheet.nodes, &mut words);
        words
    };
    let of_edition = |edition| {
        let laid = book.lay_out(edition, &Inked::of(edition)).unwrap();
        laid.sheets.iter().map(of_sheet).collect()
    };
    book.set.editions.iter().map(|edition| (edition.id.clone(), of_edition(edition))).collect()
}

/// The kinds that have answers, in a book that leaves the answers out.
const NO_KEY: &str = r#"[set]
id = "no-key"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "LANGUAGE"
order = "free"
answers = "none"
back = ["words", "plan", "log", "glossary"]
exercises = ["names-on-the-boats.toml", "loose-float.toml", "before-the-pile.toml", "last-boat.toml", "five-piles.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[plan]
weeks = 2
days = 3
minutes = 15

[[edition]]
id = "a4"
page = "A4"
ground = "GROUND"
ppi = 300
hand = "HAND"

[[edition]]
id = "screen"
from = "a4"
page = "16:9"
"#;

/// All words of a book without answers, by edition.
fn without_key(language: &str, ground: &str, hand: &str) -> BTreeMap<String, Vec<Vec<String>>> {
    let dir = tempfile::tempdir().unwrap();
    let gallery = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery");
    for name in ["names-on-the-boats", "loose-float", "before-the-pile", "last-boat", "five-piles"] {
        let name = format!("{name}.toml");
        std::fs::copy(gallery.join(&name), dir.path().join(&name)).unwrap();
    }
    let set = NO_KEY.replace("LANGUAGE", language).replace("GROUND", ground).replace("HAND", hand);
    std::fs::write(dir.path().join("set.toml"), set).unwrap();
    words_in(dir.path())
}

#[test]
fn a_book_without_answers_names_no_key() {
    for (language, keys) in [
        ("en", &["the key", "answer key", "answers:", "as its answers"] as &[&str]),
        ("de", &["lösung", "schlüssel"]),
        ("es", &["clave", "solucion"]),
        ("fr", &["corrigé", "solution", "la clé"]),
    ] {
        for (edition, sheets) in without_key(language, "white", "right") {
            assert!(5 < sheets.len());
            for words in sheets.iter().map(|words| words.join(" ").to_lowercase()) {
                assert!(keys.iter().all(|key| !words.contains(key)), "{language} {edition}: {words}");
            }
        }
    }
}

/// On black ground the words are no black.
#[test]
fn words_on_black_ground_are_not_called_black() {
    for (ground, told, other) in
        [("white", "in black alone", "without colour"), ("black", "without colour", "in black")]
    {
        let words = without_key("en", ground, "right")["a4"].concat().join(" ");
        let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(words.contains(&format!("once more, {told}.")) && !words.contains(&format!("once more, {other}")));
    }
}

/// The column that is ticked stands at the side of the hand that ticks.
#[test]
fn the_left_hand_ticks_at_the_left() {
    let heads = |hand| {
        let words = without_key("en", "white", hand)["a4"].concat();
        let at = |head: &str| words.iter().position(|word| word.trim() == head).unwrap();
        (at("Done"), at("When"), at("Minutes"))
    };
    let (done, day, minutes) = heads("right");
    assert!(day < minutes && minutes < done);
    let (done, day, minutes) = heads("left");
    assert!(done < day && day < minutes);
}
