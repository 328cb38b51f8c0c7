//! What a run writes of answers: files of their own or none, and what the report says of questions.

use std::collections::BTreeSet;
use std::fs;
use std::num::NonZeroUsize;
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};

use depthpress::bundle::run::{Request, Step, Written, run};
use depthpress::spec::{Answers, Formats, PageFormat};
use serde_json::{Value, json};
use tempfile::TempDir;

use crate::answers::Set;

const PAGES: [(usize, usize); 3] = [(12, 1), (8, 0), (5, 2)];

fn request(out: &Path) -> Request<'_> {
    Request { out, editions: &[], formats: None, pages: None, jobs: NonZeroUsize::new(2).unwrap(), sharded: None }
}

fn set(answers: Answers) -> Set {
    Set::new(PageFormat::A4, answers, &PAGES)
}

fn go(set: &Set, request: &Request<'_>) -> Written {
    run(&[set.book()], request, &|_| ()).unwrap().remove(0)
}

/// Files of answers that a run tells of.
fn told(written: &Written) -> Vec<&str> {
    written.files.iter().map(|(name, _)| name.as_str()).filter(|name| name.contains("answers")).collect()
}

/// Files of answers on the disk.
fn there(written: &Written) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for folder in ["", "svg", "png"] {
        for entry in fs::read_dir(written.folder.join(folder)).into_iter().flatten() {
            let name = entry.unwrap().file_name().into_string().unwrap();
            if name.contains("answers") {
                found.insert(format!("{folder}{}{name}", if folder.is_empty() { "" } else { "/" }));
            }
        }
    }
    found
}

fn report(written: &Written) -> Value {
    serde_json::from_slice(&fs::read(written.folder.join("report.json")).unwrap()).unwrap()
}

const FILES: [&str; 3] = ["slipway-answers.pdf", "svg/answers-001-slipway.svg", "png/answers-001-slipway.png"];

#[test]
fn answers_get_files_of_their_own_beside_the_book() {
    let dir = TempDir::new().unwrap();
    let (planned, made) = (AtomicU64::new(0), AtomicU64::new(0));
    let written = run(&[set(Answers::File).book()], &request(dir.path()), &|step| match step {
        Step::Planned(files) => drop(planned.fetch_add(files, Ordering::Relaxed)),
        Step::Made => drop(made.fetch_add(1, Ordering::Relaxed)),
    });
    let written = written.unwrap().remove(0);
    assert_eq!(told(&written), FILES);
    assert_eq!(there(&written), FILES.map(str::to_owned).into());
    assert_eq!(report(&written)["answers"], json!({"place": "file", "files": FILES}));
    let files = written.files.len() as u64;
    assert_eq!((planned.into_inner(), made.into_inner()), (files, files));
    assert!(written.pages.iter().all(|(_, id)| !id.starts_with("answers")));
    let pdf = fs::read(written.folder.join(FILES[0])).unwrap();
    assert!(pdf.windows(8).any(|word| word == b"/Count 1"));
}

#[test]
fn a_turned_key_is_pages_of_the_book() {
    let dir = TempDir::new().unwrap();
    let written = go(&set(Answers::Turned), &request(dir.path()));
    let number = written.book_pages;
    assert_eq!(written.pages.last(), Some(&(number, "answers".to_owned())));
    assert_eq!(told(&written), [format!("svg/{number:03}-answers.svg"), format!("png/{number:03}-answers.png")]);
    let report = report(&written);
    assert_eq!(report["answers"], json!({"place": "turned"}));
    let last = report["pages"].as_array().unwrap().last().unwrap();
    assert_eq!((&last["id"], &last["kind"]), (&json!("answers"), &json!("back")));
}

#[test]
fn left_out_answers_stand_in_the_report_alone() {
    let dir = TempDir::new().unwrap();
    // Files of an earlier run do not outlive a whole one.
    go(&set(Answers::File), &request(dir.path()));
    let written = go(&set(Answers::None), &request(dir.path()));
    assert!(told(&written).is_empty() && there(&written).is_empty());
    assert_eq!(report(&written)["answers"], json!({"place": "none"}));
    assert_eq!(report(&written)["pages"][7]["questions"].as_array().map(Vec::len), Some(12));
}

/// Some pages of the book are not the answers: they stay as they are.
#[test]
fn a_run_of_some_pages_leaves_the_answers() {
    let dir = TempDir::new().unwrap();
    let whole = go(&set(Answers::File), &request(dir.path()));
    let before = FILES.map(|name| fs::read(whole.folder.join(name)).unwrap());
    let part = go(&set(Answers::File), &Request { pages: Some(2..=3), ..request(dir.path()) });
    assert!(told(&part).is_empty());
    assert_eq!(report(&part)["answers"], json!({"place": "file"}));
    assert_eq!(FILES.map(|name| fs::read(whole.folder.join(name)).unwrap()), before);
}

#[test]
fn answers_come_in_the_formats_asked_for() {
    let dir = TempDir::new().unwrap();
    let svg = Some(Formats { pdf: false, svg: true, png: false });
    let written = go(&set(Answers::File), &Request { formats: svg, ..request(dir.path()) });
    assert_eq!(told(&written), [FILES[1]]);
    assert_eq!(there(&written), [FILES[1].to_owned()].into());
}

#[test]
fn the_report_tells_what_each_page_asks() {
    let dir = TempDir::new().unwrap();
    let set = set(Answers::Turned);
    let report = report(&go(&set, &request(dir.path())));
    assert_eq!(report["schema"], 1);
    let pages = report["pages"].as_array().unwrap();
    for solved in &set.pages {
        let page = &solved.page;
        let told = pages.iter().find(|told| told["id"] == page.id.as_str()).unwrap();
        assert_eq!(told["variant"], page.variant.unwrap().to_string());
        assert_eq!(told["seed"], 7);
        let quiz = page.quiz.as_ref().unwrap();
        let pass = quiz.pass.unwrap();
        assert_eq!(told["pass"], json!({"right": pass.right, "of": pass.of, "luck": 0.003_174}));
        let questions: Vec<Value> = quiz
            .questions
            .iter()
            .map(|q| json!({"id": q.id, "choices": q.choices, "answer": q.answer, "features": q.features}))
            .collect();
        assert_eq!(told["questions"], Value::Array(questions));
    }
    for told in pages.iter().filter(|told| told["kind"] == "front" || told["kind"] == "back") {
        for key in ["questions", "pass", "variant", "seed"] {
            assert!(told.get(key).is_none(), "{told}");
        }
    }
}
