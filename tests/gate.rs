//! Kinds that a professional sets: refused without `[gate]`, marked with it, and nothing else changes.

use std::fs;
use std::path::{Path, PathBuf};

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::exercise::KINDS;
use depthpress::layout::LaidOut;
use depthpress::layout::sheet::{Furniture, Node, Role, words};
use tempfile::TempDir;

const GATE: &str = "[gate]\nset_by = \"the harbour clinic\"\n";

fn specs(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(name)
}

/// A copy of a set with a changed `set.toml`.
fn changed(name: &str, change: impl Fn(&str) -> String) -> TempDir {
    let dir = tempfile::tempdir().unwrap();
    copy(&specs(name), dir.path());
    let set = dir.path().join("set.toml");
    let text = change(&fs::read_to_string(&set).unwrap());
    fs::write(&set, text).unwrap();
    dir
}

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap() {
        let path = entry.unwrap().path();
        let to = to.join(path.file_name().unwrap());
        if path.is_dir() { copy(&path, &to) } else { fs::copy(&path, to).map(drop).unwrap() }
    }
}

fn laid_out(prepared: &Prepared) -> Vec<LaidOut> {
    let book = prepared.book().unwrap();
    book.set.editions.iter().map(|edition| book.lay_out(edition, &Inked::of(edition)).unwrap()).collect()
}

#[test]
fn gated_kinds_are_refused_without_a_gate_and_no_other_is() {
    let dir = changed("gallery", |text| {
        assert!(text.contains(GATE));
        text.replace(GATE, "")
    });
    let loaded = load(dir.path()).unwrap();
    let refused: Vec<_> = loaded.diagnostics.iter().filter(|d| d.code == "E-GATE").map(|d| d.message.clone()).collect();
    let gated: Vec<_> = KINDS.iter().filter(|kind| kind.gated).collect();
    assert_eq!(gated.iter().map(|kind| kind.id).collect::<Vec<_>>(), ["contrast", "shared"]);
    assert_eq!(refused.len(), gated.len());
    for (kind, message) in gated.iter().zip(&refused) {
        assert!(message.contains(&format!("a `{}` needs a `[gate]`", kind.id)), "{message}");
    }
    assert!(prepare(load(dir.path()).unwrap(), None).book().is_none());
}

#[test]
fn a_gate_changes_no_page_of_a_set_without_gated_kinds() {
    let dir = tempfile::tempdir().unwrap();
    crate::demo_set::copy_to(dir.path());
    let without = prepare(load(dir.path()).unwrap(), None);
    let gated = crate::demo_set::first_editions().replacen("[viewer]", &format!("{GATE}\n[viewer]"), 1);
    fs::write(dir.path().join("set.toml"), gated).unwrap();
    let with = prepare(load(dir.path()).unwrap(), None);
    assert_eq!(with.set.as_ref().unwrap().gate.as_deref(), Some("the harbour clinic"));
    assert_eq!(without.set.as_ref().unwrap().gate, None);
    for (a, b) in laid_out(&without).iter().zip(laid_out(&with)) {
        assert_eq!(a.sheets.len(), b.sheets.len());
        for (a, b) in a.sheets.iter().zip(&b.sheets) {
            assert_eq!(format!("{a:?}"), format!("{b:?}"));
        }
    }
}

/// A frame around everything, and who set it in the footer: on pages of gated kinds, and on no other.
#[test]
fn pages_of_gated_kinds_say_who_set_them() {
    let prepared = prepare(load(&specs("gallery")).unwrap(), None);
    for laid in laid_out(&prepared) {
        for sheet in &laid.sheets {
            let gated = prepared.pages.iter().any(|page| page.page.id == sheet.id && page.page.gated);
            assert_eq!(footer(&sheet.nodes).contains("set by the harbour clinic"), gated, "{}", sheet.id);
            assert_eq!(sheet.description.contains("Set by the harbour clinic."), gated, "{}", sheet.id);
            let framed = matches!(sheet.nodes.first(), Some(Node::Group(Role::Artifact(Furniture::Layout), parts))
                if matches!(parts.as_slice(), [Node::Fill(fill)] if sheet.size.width * 0.8 < kurbo::Shape::bounding_box(&fill.path).width()));
            assert_eq!(framed, gated, "{}", sheet.id);
        }
    }
}

/// The words of the footer.
fn footer(nodes: &[Node]) -> String {
    let inner = |node: &Node| match node {
        Node::Group(Role::Artifact(Furniture::Footer), inner) => Some(words(inner)),
        _ => None,
    };
    nodes.iter().filter_map(inner).collect()
}
