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
    let prepared = prepare(load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(set)).unwrap(), None);
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
