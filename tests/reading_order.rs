//! What is read aloud, in its order: an outline of the sheets of a small edition in each language, as plain text.
//!
//! The outlines stand in `tests/reading_order`. Set `DEPTHPRESS_BLESS` to write them as they are now; read the difference
//! before you keep it.

use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::prepare;
use depthpress::language::Language;
use depthpress::layout::sheet::{HeadScope, Node, Role, Sheet, words};

/// Exercises of the graded demo set and their first pages: parts for each eye, a trail, one thing held, a page that asks.
const PAGES: [(&str, &str); 4] = [
    ("two-halves", "two-halves"),
    ("low-water", "low-water-1"),
    ("flood-lamp", "flood-lamp-1"),
    ("loose-float", "loose-float-1"),
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).to_path_buf()
}

/// The front matter and four exercise pages of the demo set on A4, in a language.
fn sheets(language: Language) -> Vec<Sheet> {
    let mut loaded = load(&root().join("specs/tide-ladder")).unwrap();
    let set = loaded.set.as_mut().unwrap();
    set.language = language;
    set.back.clear();
    set.editions.truncate(1);
    set.editions[0].language = language;
    loaded.exercises.retain(|exercise| PAGES.iter().any(|(id, _)| *id == exercise.id));
    let mut prepared = prepare(loaded, None);
    prepared.pages.retain(|page| PAGES.iter().any(|(_, id)| *id == page.page.id));
    assert_eq!(prepared.pages.len(), PAGES.len());
    let book = prepared.book().unwrap();
    let edition = &book.set.editions[0];
    book.lay_out(edition, &Inked::of(edition)).unwrap().sheets
}

/// The name of a role in the structure of a document.
fn name(role: &Role) -> String {
    match role {
        Role::Heading(level) => format!("H{level}"),
        Role::Paragraph => "P".to_owned(),
        Role::List => "L".to_owned(),
        Role::ListItem => "LI".to_owned(),
        Role::ListLabel => "Lbl".to_owned(),
        Role::ListBody => "LBody".to_owned(),
        Role::Table => "Table".to_owned(),
        Role::Row => "TR".to_owned(),
        Role::HeadCell(HeadScope::Column) => "TH column".to_owned(),
        Role::HeadCell(HeadScope::Row) => "TH row".to_owned(),
        Role::Cell => "TD".to_owned(),
        Role::Figure { alt, .. } => format!("Figure [{alt}]"),
        Role::Caption => "Caption".to_owned(),
        Role::Link { target, alt, .. } => format!("Link to {target} [{alt}]"),
        Role::Artifact(_) => "Artifact".to_owned(),
    }
}

/// What is read of these nodes, a line an element. Rows and items stand on one line with what is in them.
fn outline(nodes: &[Node], depth: usize, out: &mut String) {
    for node in nodes {
        let Node::Group(role, inner) = node else { continue };
        if matches!(role, Role::Artifact(_)) {
            continue;
        }
        let is_group = |node: &Node| matches!(node, Node::Group(role, _) if !matches!(role, Role::Artifact(_)));
        let indent = "  ".repeat(depth);
        match role {
            Role::Row | Role::ListItem => {
                let parts: Vec<String> = inner.iter().filter(|node| is_group(node)).map(part).collect();
                writeln!(out, "{indent}{} {}", name(role), parts.join(" | ")).unwrap();
            }
            _ if inner.iter().any(is_group) => {
                writeln!(out, "{indent}{}", name(role)).unwrap();
                outline(inner, depth + 1, out);
            }
            // Words in a picture are told by what stands for it.
            Role::Figure { .. } => writeln!(out, "{indent}{}", name(role)).unwrap(),
            _ => writeln!(out, "{indent}{} {}", name(role), words(inner)).unwrap(),
        }
    }
}

/// A cell of a row or a part of an item; of cells only those that head something say so.
fn part(node: &Node) -> String {
    let Node::Group(role, inner) = node else { return String::new() };
    let words = words(inner);
    match role {
        Role::HeadCell(_) => format!("{} {words}", name(role)),
        _ => words,
    }
}

fn told(sheets: &[Sheet]) -> String {
    let mut out = String::new();
    for sheet in sheets {
        writeln!(out, "== {} {} ({}): {}", sheet.number, sheet.id, sheet.language, sheet.title).unwrap();
        outline(&sheet.nodes, 0, &mut out);
        out.push('\n');
    }
    out
}

#[test]
fn sheets_are_read_in_their_order_in_every_language() {
    let bless = std::env::var_os("DEPTHPRESS_BLESS").is_some();
    let mut changed = Vec::new();
    for language in Language::ALL {
        let file = root().join("tests/reading_order").join(format!("{}.txt", language.tag()));
        let now = told(&sheets(language));
        let kept = fs::read_to_string(&file).unwrap_or_default();
        if bless {
            fs::create_dir_all(file.parent().unwrap()).unwrap();
            fs::write(&file, &now).unwrap();
        } else if now != kept {
            let line = now.lines().zip(kept.lines()).position(|(a, b)| a != b).unwrap_or_default();
            let line_of = |text: &str| text.lines().nth(line).unwrap_or_default().to_owned();
            changed.push(format!(
                "{}:{}:\n  now {}\n  was {}",
                file.display(),
                line + 1,
                line_of(&now),
                line_of(&kept)
            ));
        }
    }
    assert!(changed.is_empty(), "read the difference, then bless:\n{}", changed.join("\n"));
}

/// Headings open each sheet but the cover, no level is left out, and every picture has words.
#[test]
fn every_sheet_opens_with_its_heading_and_every_picture_is_told() {
    fn groups<'a>(nodes: &'a [Node], found: &mut Vec<&'a Role>) {
        for node in nodes {
            if let Node::Group(role, inner) = node {
                found.push(role);
                groups(inner, found);
            }
        }
    }
    for language in Language::ALL {
        for sheet in sheets(language) {
            assert_eq!(sheet.language, language.tag());
            let mut roles = Vec::new();
            groups(&sheet.nodes, &mut roles);
            let levels: Vec<u8> = roles
                .iter()
                .filter_map(|role| if let Role::Heading(level) = role { Some(*level) } else { None })
                .collect();
            assert_eq!(levels.first(), Some(&1), "{}", sheet.id);
            assert!(levels.windows(2).all(|pair| pair[1] <= pair[0] + 1), "{}: {levels:?}", sheet.id);
            for role in roles {
                if let Role::Figure { alt, .. } | Role::Link { alt, .. } = role {
                    assert!(!alt.trim().is_empty() && !alt.contains(['{', '}']), "{}: `{alt}`", sheet.id);
                }
            }
        }
    }
}
