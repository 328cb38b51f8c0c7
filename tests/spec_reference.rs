//! `specs/README.md` is written from the tables of the language, and the tables hold together.

use std::collections::BTreeSet;
use std::path::Path;

use depthpress::diagnostics::{Diagnostics, Sources};
use depthpress::exercise::{KINDS, read_exercise, reference};
use depthpress::spec::field::{Need, TableSpec, Takes};
use depthpress::spec::reader::Reader;
use depthpress::spec::set;

/// Set to write the reference anew instead of comparing it.
const BLESS: &str = "DEPTHPRESS_BLESS";

#[test]
fn the_reference_is_as_generated() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/README.md");
    let now = reference::markdown();
    if std::env::var_os(BLESS).is_some() {
        std::fs::write(&path, &now).unwrap();
    }
    let then = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(then == now, "specs/README.md is out of date: run the tests once with {BLESS}=1 and read the difference");
}

fn tables() -> Vec<&'static TableSpec> {
    let kinds = KINDS.iter().flat_map(|kind| kind.tables.iter().copied());
    set::TABLES.iter().copied().chain(kinds).collect()
}

#[test]
fn every_key_stands_once_in_its_table_and_is_explained() {
    for spec in tables() {
        let mut keys = BTreeSet::new();
        for field in spec.fields() {
            assert!(keys.insert(field.key), "{} twice in {}", field.key, spec.title());
            assert!(field.doc.ends_with('.'), "{} in {}", field.key, spec.title());
            if let Need::Default(text) = field.need {
                let is_depth = matches!(field.takes, Takes::Depth | Takes::Ramp(Takes::Depth));
                assert!(!is_depth, "{}: depth has no default", field.key);
                assert!(toml::de::DeValue::parse(text).is_ok(), "{text}");
            }
        }
        assert!(spec.doc.ends_with('.'), "{}", spec.title());
    }
}

#[test]
fn the_kinds_are_the_words_of_the_kind_key() {
    for kind in KINDS {
        let Takes::Choice(words) = kind.tables[0].field("kind").unwrap().takes else { panic!() };
        assert_eq!(words, KINDS.iter().map(|k| k.id).collect::<Vec<_>>());
    }
}

#[test]
fn every_example_reads_as_its_kind() {
    for kind in KINDS {
        let mut problems = Diagnostics::new();
        let mut sources = Sources::default();
        let file = sources.add("example.toml", kind.example);
        let pictures = crate::artwork::gallery();
        let mut reader = Reader::new(&sources, file, &mut problems).with_pictures(&pictures);
        let read = read_exercise(&mut reader, kind.id);
        assert_eq!(problems.iter().map(|p| p.message.as_str()).collect::<Vec<_>>(), Vec::<&str>::new());
        assert_eq!(read.unwrap().id, kind.id);
    }
}
