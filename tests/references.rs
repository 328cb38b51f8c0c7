//! Every number of the code has a source: the keys in `Source:` lines and those of `src/references.md` are the same.

use std::collections::BTreeSet;
use std::path::Path;

/// Words with which a `Source:` line may say that there is no publication.
const WITHOUT_KEY: [&str; 2] = ["derived", "design choice"];

/// The keys of a text, written as `[Key]` in backticks.
fn keys(text: &str) -> BTreeSet<String> {
    text.split("`[").skip(1).filter_map(|rest| rest.split_once("]`")).map(|(key, _)| key.to_owned()).collect()
}

/// Every source line of the code, with its file, the next doc line joined on.
fn source_lines(folder: &Path, found: &mut Vec<(String, String)>) {
    let mut entries: Vec<_> = std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            source_lines(&path, found);
        } else if path.extension().is_some_and(|e| e == "rs") {
            let text = std::fs::read_to_string(&path).unwrap();
            let lines: Vec<_> = text.lines().map(|l| l.trim().trim_start_matches(['/', '!', ' '])).collect();
            for pair in lines.windows(2).filter(|pair| pair[0].starts_with("Source: ")) {
                found.push((path.display().to_string(), pair.join(" ")));
            }
        }
    }
}

#[test]
fn sources_named_in_the_code_and_sources_listed_are_the_same() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let listed = keys(&std::fs::read_to_string(root.join("references.md")).unwrap());
    let mut lines = Vec::new();
    source_lines(&root, &mut lines);
    assert!(30 < lines.len(), "the reader of source lines found {}", lines.len());
    let mut used = BTreeSet::new();
    for (file, line) in &lines {
        let named = keys(line);
        assert!(!named.is_empty() || WITHOUT_KEY.iter().any(|w| line.contains(w)), "{file}: no key in `{line}`");
        for key in named {
            assert!(listed.contains(&key), "{file}: `{key}` is not in src/references.md");
            used.insert(key);
        }
    }
    assert_eq!(listed, used, "src/references.md lists a source that no code names");
}
