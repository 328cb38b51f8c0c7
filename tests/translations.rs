//! The author's words in other languages: what an edition says and draws, what stays the same, and what is told of it.

use std::fs;
use std::path::Path;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::{Loaded, load};
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::bundle::readers::{Whom, run as run_for_readers};
use depthpress::bundle::run::{Request, run};
use depthpress::diagnostics::Severity;
use depthpress::diagnostics::render::{Paint, text};
use depthpress::language::Language;
use depthpress::layout::sheet::{Node, Role};
use depthpress::scene::{Form, Shape};
use serde_json::Value;
use tempfile::TempDir;

const SET: &str = r#"[set]
id = "basin"
title = "The Basin"
summary = "Two rings and a sign."
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["rings.toml", "sign.toml"]
order = "free"

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 72
formats = ["svg"]

[[edition]]
id = "a4-de"
from = "a4"
language = "de"

[[translation]]
language = "de"
file = "words/de.toml"
"#;

const RINGS: &str = r#"[exercise]
kind = "jump"
title = "Two rings"
goal = "Look from the near ring to the far one."

[[target]]
label = "near"
shape = "ring"
size = "20 mm"
at = ["-30 mm", "0 mm"]
depth = { from = "1 pd toward", to = "2 pd toward", levels = 2 }

[[target]]
label = "far"
shape = "text"
text = "OUT"
size = "12 mm"
at = ["30 mm", "0 mm"]
depth = { from = "1 pd away", to = "2 pd away", levels = 2 }
"#;

const SIGN: &str = r#"[exercise]
kind = "words"
title = "The sign"
lines = ["Slow boats", "keep left"]
size = "6.6 mm"
depth = "2 pd toward"
"#;

const DE: &str = r#"[set]
title = "Das Hafenbecken"
summary = "Zwei Ringe und ein Schild."

[exercise.rings]
title = "Zwei Ringe"
goal = "Sehen Sie vom nahen Ring zum fernen."
labels = { near = "nah", far = "fern drüben" }
texts = { OUT = "RAUS" }

[exercise.sign]
title = "Das Schild"
lines = ["Langsame Boote", "halten sich links"]
"#;

/// The set on the disk, with one of its texts changed.
fn yard(change: (&str, &str, &str)) -> TempDir {
    let dir = tempfile::tempdir().unwrap();
    fs::create_dir(dir.path().join("words")).unwrap();
    for (name, body) in [("set.toml", SET), ("rings.toml", RINGS), ("sign.toml", SIGN), ("words/de.toml", DE)] {
        let (file, from, to) = change;
        let body = if file == name { body.replacen(from, to, 1) } else { body.to_owned() };
        fs::write(dir.path().join(name), body).unwrap();
    }
    dir
}

fn told(loaded: &Loaded) -> String {
    text(loaded.diagnostics.sorted(), &loaded.sources, Paint::Plain)
}

fn prepared(dir: &Path) -> Prepared {
    let loaded = load(dir).unwrap();
    assert!(!loaded.diagnostics.has_errors(), "{}", told(&loaded));
    prepare(loaded, None)
}

/// The words on the sheets of an edition, sheet by sheet.
fn words(set: &Prepared, edition: &str) -> Vec<(String, String)> {
    let book = set.book().unwrap();
    let edition = book.set.editions.iter().find(|e| e.id == edition).unwrap();
    let laid = book.lay_out(edition, &Inked::of(edition)).unwrap();
    laid.sheets.iter().map(|sheet| (sheet.id.clone(), format!("{}\n{}", sheet.title, of(&sheet.nodes)))).collect()
}

fn of(nodes: &[Node]) -> String {
    let mut out = String::new();
    for node in nodes {
        match node {
            Node::Group(Role::Figure { alt, .. }, inner) => {
                out.push_str(alt);
                out.push('\n');
                out.push_str(&of(inner));
            }
            Node::Group(_, inner) => out.push_str(&of(inner)),
            Node::Text(run) => {
                out.push_str(&run.text);
                out.push('\n');
            }
            _ => {}
        }
    }
    out
}

/// The shapes of text on the pages of a set, in order.
fn drawn(pages: &[depthpress::bundle::prepare::SolvedPage]) -> Vec<String> {
    let features = pages.iter().flat_map(|page| &page.page.scene.features);
    let text = features.filter_map(|feature| match &feature.form {
        Form::Shape { shape: Shape::Text(text), .. } => Some(text.clone()),
        _ => None,
    });
    text.collect()
}

#[test]
fn an_edition_has_the_words_of_its_translation() {
    let dir = yard(("", "", ""));
    let set = prepared(dir.path());
    let [en, de] = ["a4", "a4-de"].map(|edition| words(&set, edition));
    let all = |pages: &[(String, String)]| pages.iter().map(|(_, words)| words.as_str()).collect::<String>();
    // Where the words of a page are too long for it, they have a sheet of their own.
    let ids = |pages: &[(String, String)]| {
        pages.iter().map(|(id, _)| id.clone()).filter(|id| !id.ends_with("-words")).collect::<Vec<_>>()
    };
    assert_eq!(ids(&en), ids(&de));
    for (english, german) in [("The Basin", "Das Hafenbecken"), ("Two rings", "Zwei Ringe"), ("The sign", "Das Schild")]
    {
        assert!(all(&en).contains(english) && !all(&en).contains(german), "{german}");
        assert!(all(&de).contains(german) && !all(&de).contains(english), "{english}");
    }
}

#[test]
fn words_that_are_drawn_and_labels_are_those_of_the_language() {
    let dir = yard(("", "", ""));
    let set = prepared(dir.path());
    assert_eq!(set.others.len(), 1);
    let german = &set.others[0];
    assert_eq!((german.set.language, german.set.title.as_str()), (Language::De, "Das Hafenbecken"));
    assert_eq!(drawn(&set.pages), ["OUT", "OUT", "Slow boats", "keep left"]);
    assert_eq!(drawn(&german.pages), ["RAUS", "RAUS", "Langsame Boote", "halten sich links"]);
    let labels: Vec<_> = german.pages[0].features.iter().map(|feature| feature.id.as_str()).collect();
    assert!(labels.contains(&"nah") && labels.contains(&"fern drüben"), "{labels:?}");
    // Depths are those of the author, in any language.
    let depths = |pages: &[depthpress::bundle::prepare::SolvedPage]| {
        pages.iter().flat_map(|page| &page.features).map(|f| f.stand.parallax.0.to_bits()).collect::<Vec<_>>()
    };
    assert_eq!(depths(&set.pages), depths(&german.pages));
}

#[test]
fn the_report_names_the_language_and_the_titles_in_it() {
    let (dir, out) = (yard(("", "", "")), tempfile::tempdir().unwrap());
    let set = prepared(dir.path());
    let request = Request {
        out: out.path(),
        editions: &[],
        formats: None,
        pages: None,
        jobs: std::num::NonZeroUsize::MIN,
        sharded: None,
    };
    run(&[set.book().unwrap()], &request, &|_| ()).unwrap();
    let report = |edition: &str| -> Value {
        let path = out.path().join("basin").join(edition).join("report.json");
        serde_json::from_slice(&fs::read(path).unwrap()).unwrap()
    };
    let [en, de] = ["a4", "a4-de"].map(report);
    assert_eq!((&en["edition"]["language"], &de["edition"]["language"]), (&"en".into(), &"de".into()));
    let said = ["text", "hand", "gated"].map(|key| de["edition"][key].as_str().unwrap());
    assert_eq!(said, ["standard", "right", "in"]);
    let title = |report: &Value| {
        let page = report["pages"].as_array().unwrap().iter().find(|page| page["kind"] == "words").unwrap();
        page["title"].as_str().unwrap().to_owned()
    };
    assert_eq!((title(&en).as_str(), title(&de).as_str()), ("The sign", "Das Schild"));
}

#[test]
fn everything_that_is_missing_is_told_at_once_with_what_to_add() {
    let dir = yard(("words/de.toml", "title = \"Das Schild\"\n", ""));
    let loaded = load(dir.path()).unwrap();
    let problem = loaded.diagnostics.iter().find(|d| d.code == "E-UNTRANSLATED").unwrap();
    assert_eq!(problem.message, "1 text of the author without a translation into `de`");
    assert!(problem.help.ends_with(":\n[exercise.sign]\ntitle = \"The sign\""), "{}", problem.help);
    // What is told can be pasted: with it, nothing is missing.
    fs::remove_file(dir.path().join("words/de.toml")).unwrap();
    fs::write(dir.path().join("words/de.toml"), "[set]\n").unwrap();
    let loaded = load(dir.path()).unwrap();
    let problem = loaded.diagnostics.iter().find(|d| d.code == "E-UNTRANSLATED").unwrap();
    assert_eq!(problem.message, "9 texts of the author without a translation into `de`");
    fs::write(dir.path().join("words/de.toml"), problem.help.split_once('\n').unwrap().1).unwrap();
    let loaded = load(dir.path()).unwrap();
    assert!(!loaded.diagnostics.has_errors(), "{}", told(&loaded));
}

#[test]
fn a_translation_that_nothing_asks_for_is_a_warning() {
    let dir = yard(("set.toml", "language = \"de\"\n\n[[translation]]", "text = \"large\"\n\n[[translation]]"));
    let loaded = load(dir.path()).unwrap();
    let found: Vec<_> = loaded.diagnostics.iter().map(|d| (d.code, d.severity)).collect();
    assert_eq!(found, [("W-ORPHAN", Severity::Warning)], "{}", told(&loaded));
    assert!(loaded.translated.is_empty());
}

#[test]
fn a_finding_that_all_languages_have_is_told_once() {
    let dir = yard(("rings.toml", "to = \"2 pd toward\"", "to = \"30 pd toward\""));
    let set = prepared(dir.path());
    let messages: Vec<_> = set.diagnostics.iter().filter(|d| d.place.is_some()).map(|d| (d.code, d.place)).collect();
    let mut once = messages.clone();
    once.sort();
    once.dedup();
    assert!(!messages.is_empty());
    assert_eq!(messages.len(), once.len(), "{messages:?}");
}

#[test]
fn a_reader_has_the_book_in_their_language() {
    let readers = "[[reader]]\nid = \"anke\"\nlanguage = \"de\"\n\n[[reader]]\nid = \"bill\"\n\n[[translation]]";
    let (dir, out) = (yard(("set.toml", "[[translation]]", readers)), tempfile::tempdir().unwrap());
    let loaded = load(dir.path()).unwrap();
    assert!(!loaded.diagnostics.has_errors(), "{}", told(&loaded));
    let sets = [depthpress::bundle::prepare::gather(loaded, None)];
    let request = Request {
        out: out.path(),
        editions: &[],
        formats: None,
        pages: None,
        jobs: std::num::NonZeroUsize::MIN,
        sharded: None,
    };
    let done = run_for_readers(&sets, Whom { ids: &[], keep_going: false }, &request, &|_| ()).unwrap();
    assert!(!done[0].has_errors(), "{:?}", done[0].findings);
    for (reader, edition, language) in
        [("anke", "a4", "de"), ("anke", "a4-de", "de"), ("bill", "a4", "en"), ("bill", "a4-de", "de")]
    {
        let path = out.path().join("basin/readers").join(reader).join(edition).join("report.json");
        let report: Value = serde_json::from_slice(&fs::read(path).unwrap()).unwrap();
        assert_eq!(report["edition"]["language"], language, "{reader} {edition}");
        let title = if language == "de" { "Das Schild" } else { "The sign" };
        assert!(report["pages"].as_array().unwrap().iter().any(|page| page["title"] == title), "{reader} {edition}");
    }
}

/// The stub that is printed with what is not translated.
fn stub(loaded: &Loaded) -> String {
    let missing = loaded.diagnostics.iter().find(|problem| problem.code == "E-UNTRANSLATED");
    missing.unwrap().help.split_once(":\n").unwrap().1.to_owned()
}

#[test]
fn the_stub_of_the_gallery_is_a_translation_that_loads() {
    let dir = tempfile::tempdir().unwrap();
    let gallery = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery");
    fs::create_dir(dir.path().join("art")).unwrap();
    for part in ["", "art"] {
        for entry in fs::read_dir(gallery.join(part)).unwrap() {
            let path = entry.unwrap().path();
            if path.is_file() {
                fs::copy(&path, dir.path().join(part).join(path.file_name().unwrap())).unwrap();
            }
        }
    }
    let own = fs::read_to_string(dir.path().join("set.toml")).unwrap();
    let edition = "[[edition]]\nid = \"a4-de\"\nfrom = \"a4\"\nlanguage = \"de\"\n";
    fs::write(dir.path().join("set.toml"), format!("{own}\n{edition}")).unwrap();
    let stub = stub(&load(dir.path()).unwrap());
    for line in ["1 = [\"The last boat\"", "2 = [\"The harbour\""] {
        assert!(stub.contains(line), "{line} in\n{stub}");
    }

    let named = "[[translation]]\nlanguage = \"de\"\nfile = \"de.toml\"\n";
    fs::write(dir.path().join("set.toml"), format!("{own}\n{edition}\n{named}")).unwrap();
    fs::write(dir.path().join("de.toml"), stub.replace("The harbour", "Der Hafen")).unwrap();
    let loaded = load(dir.path()).unwrap();
    assert!(!loaded.diagnostics.has_errors(), "{}", told(&loaded));
    let steps = loaded.translated[0].exercises.iter().find(|exercise| exercise.id == "quay-steps").unwrap();
    let drawn = format!("{:?}", steps.body);
    assert!(drawn.contains("The last boat") && drawn.contains("Der Hafen"), "{drawn}");
}

#[test]
fn a_claim_in_a_translation_is_told_where_it_stands_there() {
    for (own, claim) in [
        ("\"Das Hafenbecken\"", "\"Das heilt Augen\""),
        ("\"Sehen Sie vom nahen Ring zum fernen.\"", "\"Das heilt Augen.\""),
        ("\"fern drüben\"", "\"heilt\""),
        ("texts = { OUT = \"RAUS\" }", "texts = { OUT = \"HEILT\" }"),
        ("\"Langsame Boote\"", "\"Das heilt\""),
    ] {
        let dir = yard(("words/de.toml", own, claim));
        let prepared = prepared_with_errors(dir.path());
        let claims: Vec<_> = prepared.diagnostics.iter().filter(|d| d.code == "E-CLAIM").collect();
        let [found] = claims[..] else { panic!("{claim}: {claims:?}") };
        let line = prepared.sources.line(found.place.unwrap()).unwrap();
        let text = fs::read_to_string(dir.path().join("words/de.toml")).unwrap();
        assert!(prepared.sources.path(found.place.unwrap().file).ends_with("words/de.toml"), "{found:?}");
        assert!(text.lines().nth(line.number - 1).unwrap().contains(claim), "{claim}: line {}", line.number);
        assert!(found.message.starts_with("`heilt` (`de`) claims"), "{}", found.message);
    }
}

/// The set, whatever is wrong with its words.
fn prepared_with_errors(dir: &Path) -> Prepared {
    prepare(load(dir).unwrap(), None)
}
