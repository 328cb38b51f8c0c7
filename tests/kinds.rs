//! The `kinds` command from outside: the list by family, one kind, JSON, and a name that there is not.

use std::process::{Command, Output};

use depthpress::exercise::{FAMILIES, IDS, KINDS};
use depthpress::spec::field::Need;
use serde_json::Value;

fn run(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_depthpress")).arg("kinds").args(args).output().unwrap()
}

fn told(args: &[&str]) -> String {
    let output = run(args);
    assert_eq!(output.status.code(), Some(0), "{args:?}");
    assert!(output.stderr.is_empty(), "{args:?}");
    String::from_utf8(output.stdout).unwrap()
}

/// Words without line breaks and indents.
fn flat(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn every_kind_stands_in_a_family_that_is_told() {
    for kind in KINDS {
        assert!(FAMILIES.iter().any(|family| family.id == kind.family()), "{} in `{}`", kind.id, kind.family());
    }
}

#[test]
fn the_list_has_each_kind_once_below_its_family() {
    let list = told(&[]);
    for kind in KINDS {
        let lines =
            list.lines().filter(|line| line.split_whitespace().next() == Some(kind.id) && line.starts_with("  "));
        assert_eq!(lines.count(), 1, "{}", kind.id);
        let (before, _) = list.split_once(&format!("\n  {} ", kind.id)).unwrap();
        let family = before.lines().rfind(|line| !line.starts_with(' ')).unwrap();
        assert!(family.starts_with(&format!("{}: ", kind.family())), "{} below `{family}`", kind.id);
    }
    assert!(list.lines().all(|line| line.chars().count() <= 100), "{list}");
}

#[test]
fn a_kind_tells_every_key_and_an_example_that_reads() {
    for kind in KINDS {
        let page = told(&[kind.id]);
        let words = flat(&page);
        assert!(words.contains(&flat(kind.doc)), "{}", kind.id);
        for field in kind.tables.iter().flat_map(|table| table.fields()) {
            assert!(
                page.contains(&format!("\n  {}  {}; ", field.key, field.takes.words())),
                "{} {}",
                kind.id,
                field.key
            );
            assert!(words.contains(&flat(field.doc)), "{} {}", kind.id, field.key);
            if let Need::Default(value) = field.need {
                assert!(page.contains(&format!("left out: `{value}`")), "{} {}", kind.id, field.key);
            }
        }
        let example: Vec<&str> = kind.example.lines().collect();
        let shown: Vec<&str> = page.split_once("\nexample\n").unwrap().1.lines().map(str::trim_start).collect();
        assert_eq!(shown, example.iter().map(|line| line.trim_start()).collect::<Vec<_>>());
    }
}

#[test]
fn json_tells_the_same_of_all_and_of_one() {
    let all: Value = serde_json::from_str(&told(&["--json"])).unwrap();
    let ids: Vec<&str> = all["kinds"].as_array().unwrap().iter().map(|kind| kind["id"].as_str().unwrap()).collect();
    assert_eq!((all["schema"].as_u64(), ids.as_slice()), (Some(1), IDS));
    for (kind, part) in KINDS.iter().zip(all["kinds"].as_array().unwrap()) {
        let one: Value = serde_json::from_str(&told(&[kind.id, "--json"])).unwrap();
        assert_eq!(one["kinds"], Value::Array(vec![part.clone()]));
        assert_eq!((part["family"].as_str(), part["gated"].as_bool()), (Some(kind.family()), Some(kind.gated)));
        assert_eq!(part["example"].as_str(), Some(kind.example));
        for (table, told) in kind.tables.iter().zip(part["tables"].as_array().unwrap()) {
            assert_eq!(told["name"].as_str(), Some(table.name));
            let keys = told["keys"].as_array().unwrap();
            assert_eq!(keys.len(), table.fields().count());
            for (field, key) in table.fields().zip(keys) {
                assert_eq!(key["key"].as_str(), Some(field.key));
                assert_eq!(key["required"].as_bool(), Some(field.need == Need::Required));
                assert_eq!(key["takes"]["words"].as_str(), Some(field.takes.words().as_str()));
            }
        }
    }
}

/// Units, ranges, words and defaults as a program finds them.
#[test]
fn json_has_limits_words_and_defaults() {
    let jump: Value = serde_json::from_str(&told(&["jump", "--json"])).unwrap();
    let find = |table: &str, key: &str| -> Value {
        let tables = jump["kinds"][0]["tables"].as_array().unwrap();
        let table = tables.iter().find(|part| part["name"] == table).unwrap();
        table["keys"].as_array().unwrap().iter().find(|part| part["key"] == key).unwrap().clone()
    };
    let size = find("target", "size");
    assert_eq!((&size["takes"]["is"], &size["takes"]["ramp"]), (&Value::from("length"), &Value::from(true)));
    assert_eq!((&size["takes"]["min"], &size["takes"]["max"]), (&Value::from("2 mm"), &Value::from("160 mm")));
    assert_eq!(size["takes"]["of"]["max"], "22 deg");
    assert_eq!(find("target", "eyes")["takes"]["choices"], serde_json::json!(["both", "left", "right"]));
    assert_eq!(find("exercise", "stay")["default"], "\"3 s\"");
    assert_eq!(find("exercise", "balance")["takes"]["table"]["keys"][0]["key"], "stronger");
}

#[test]
fn a_name_that_is_none_ends_with_a_way_out() {
    for (name, told) in [
        ("jum", "error: there is no kind `jum`; did you mean `jump`?\n"),
        ("aquarium", "error: there is no kind `aquarium`; `depthpress kinds` lists them\n"),
    ] {
        let output = run(&[name]);
        assert_eq!(output.status.code(), Some(2));
        assert_eq!(String::from_utf8(output.stderr).unwrap(), told);
        assert!(output.stdout.is_empty());
    }
}
