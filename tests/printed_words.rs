//! Every word of every sheet of the demo set, for a program from outside that reads them from the PDF again
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
fn write_words_of_the_demo_set() {
    let file = std::env::var("DEPTHPRESS_WORDS").unwrap();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/harbour-lights");
    let prepared = prepare(load(&folder).unwrap(), None);
    let book = prepared.book().unwrap();
    let of_sheet = |sheet: &Sheet| {
        let mut words = Vec::new();
        printed(&sheet.nodes, &mut words);
        words
    };
    let of_edition = |edition| {
        let laid = book.lay_out(edition, &Inked::of(edition)).unwrap();
        laid.sheets.iter().map(of_sheet).collect::<Vec<_>>()
    };
    let all: BTreeMap<&str, Vec<Vec<String>>> =
        book.set.editions.iter().map(|e| (e.id.as_str(), of_edition(e))).collect();
    std::fs::write(file, serde_json::to_string(&all).unwrap()).unwrap();
}
