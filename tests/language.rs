//! The messages of each language: the same ids everywhere, no variable that English does not have, nothing that no code
//! says, nothing said that is not there, and no character without a glyph.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use depthpress::bundle::pictures::Folder;
use depthpress::diagnostics::{Diagnostics, Sources};
use depthpress::exercise::words::Words;
use depthpress::exercise::{KINDS, Kind, Page, pages, read_exercise};
use depthpress::language::{Language, Tongue};
use depthpress::spec::reader::Reader;

const TAGS: [&str; 4] = ["en", "de", "es", "fr"];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

/// The messages of a language: by file and id, their whole text.
fn messages(tag: &str) -> BTreeMap<(String, String), String> {
    let mut found = BTreeMap::new();
    for entry in std::fs::read_dir(root().join("language").join(tag)).unwrap() {
        let path = entry.unwrap().path();
        let file = path.file_stem().unwrap().to_string_lossy().into_owned();
        let mut last = None;
        for line in std::fs::read_to_string(&path).unwrap().lines() {
            let id = line.split_once(" =").map(|(id, _)| id).filter(|_| line.starts_with(|c: char| c.is_alphabetic()));
            if let Some(id) = id {
                let known = found.insert((file.clone(), id.to_owned()), line.to_owned());
                assert!(known.is_none(), "{tag}/{file}: `{id}` twice");
                last = Some((file.clone(), id.to_owned()));
            } else if line.starts_with([' ', '}']) && !line.trim().is_empty() {
                let text = last.as_ref().and_then(|last| found.get_mut(last)).expect("a message before its lines");
                text.push('\n');
                text.push_str(line);
            } else {
                assert!(
                    line.is_empty() || line.starts_with('#'),
                    "{tag}/{file}: `{line}` is not Fluent as we write it"
                );
            }
        }
    }
    found
}

/// The variables of a message, the forms of a noun under its name.
fn variables(text: &str) -> BTreeSet<String> {
    let name = |rest: &str| rest.split(|c: char| !(c.is_ascii_alphanumeric() || c == '_')).next().unwrap().to_owned();
    text.split('$').skip(1).map(name).collect()
}

#[test]
fn every_language_has_the_same_messages_with_no_variables_of_its_own() {
    let english = messages("en");
    assert!(!english.is_empty());
    for tag in &TAGS[1..] {
        let own = messages(tag);
        let missing: Vec<_> = english.keys().filter(|id| !own.contains_key(*id)).collect();
        let more: Vec<_> = own.keys().filter(|id| !english.contains_key(*id)).collect();
        assert!(missing.is_empty() && more.is_empty(), "{tag} lacks {missing:?} and has besides {more:?}");
        for (id, text) in &own {
            let (here, there) = (variables(text), variables(&english[id]));
            assert!(here.is_subset(&there), "{tag}: {id:?} asks for {:?}", here.difference(&there).collect::<Vec<_>>());
        }
    }
}

#[test]
fn every_file_is_fluent_without_an_error() {
    for tag in TAGS {
        for entry in std::fs::read_dir(root().join("language").join(tag)).unwrap() {
            let path = entry.unwrap().path();
            let text = std::fs::read_to_string(&path).unwrap();
            let read = fluent_bundle::FluentResource::try_new(text);
            assert!(read.is_ok(), "{}: {:?}", path.display(), read.err().map(|(_, problems)| problems));
        }
    }
}

/// The texts in quotes of every source file, with the files of texts that build ids at the front.
fn quoted() -> BTreeSet<String> {
    fn gather(folder: &Path, found: &mut BTreeSet<String>) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                gather(&path, found);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let text = std::fs::read_to_string(&path).unwrap();
                found.extend(text.split('"').map(str::to_owned));
            }
        }
    }
    let mut found = BTreeSet::new();
    gather(&root(), &mut found);
    found
}

/// Beginnings of ids that the code puts together: `format!("shape-{name}")`.
const PUT_TOGETHER: &[&str] = &[
    "shape-",
    "thing-",
    "filter-",
    "kind-",
    "strand-",
    "reading-",
    "bundle-column-",
    "bundle-ground-",
    "bundle-text-",
    "bundle-hand-",
];

#[test]
fn every_message_is_said_somewhere() {
    let said = quoted();
    let unsaid: Vec<_> = messages("en")
        .into_keys()
        .map(|(_, id)| id)
        .filter(|id| !said.contains(id) && !PUT_TOGETHER.iter().any(|start| id.starts_with(start)))
        .collect();
    assert!(unsaid.is_empty(), "no code says {unsaid:?}");
}

#[test]
fn every_message_that_code_says_is_there() {
    fn gather(folder: &Path, found: &mut Vec<(String, String)>) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                gather(&path, found);
            } else if path.extension().is_some_and(|e| e == "rs") && !path.ends_with("tongue.rs") {
                let text = std::fs::read_to_string(&path).unwrap();
                for call in ["say(\"", "tell(\"", "noun(\""] {
                    let ids = text.split(call).skip(1).filter_map(|rest| rest.split('"').next());
                    let ids = ids.filter(|id| !id.contains(' '));
                    found.extend(ids.map(|id| (path.display().to_string(), id.to_owned())));
                }
            }
        }
    }
    let known: BTreeSet<String> = messages("en").into_keys().map(|(_, id)| id).collect();
    let mut said = Vec::new();
    gather(&root(), &mut said);
    let missing: Vec<_> = said.into_iter().filter(|(_, id)| !known.contains(id)).collect();
    assert!(missing.is_empty(), "{missing:?}");
}

#[test]
fn every_character_of_every_language_has_a_glyph() {
    let mut setter = depthpress::layout::text::Typesetter::new();
    let style = depthpress::layout::grid::BODY;
    for tag in TAGS {
        for ((file, id), text) in messages(tag) {
            let set = setter.width_of(&text, &style);
            assert!(set.is_ok(), "{tag}/{file}: {id}: {}", set.unwrap_err());
        }
    }
}

/// The pages of a kind's example in a language.
fn told(kind: &Kind, language: Language) -> Vec<Page> {
    let (mut problems, mut sources) = (Diagnostics::new(), Sources::default());
    let file = sources.add("a.toml", kind.example);
    let pictures = Folder::new(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery"));
    let exercise = read_exercise(&mut Reader::new(&sources, file, &mut problems).with_pictures(&pictures), "a");
    pages(&[exercise.unwrap()], "set", Tongue::of(language))
}

/// The sentences and labels of a page.
fn lines(words: &Words) -> Vec<&String> {
    let rows = words.one_part.iter().flat_map(|(seen, then)| [seen, then]);
    let all = [&words.goal, &words.setup, &words.see].into_iter().chain(&words.steps).chain(rows);
    all.filter(|line| !line.is_empty()).collect()
}

/// No message or variable is missing, nothing stays in English, and the answers are those of the page.
#[test]
fn every_kind_speaks_every_language() {
    let mut wrong = Vec::new();
    for kind in KINDS {
        let english = told(kind, Language::En);
        for language in Language::ALL {
            for (page, other) in told(kind, language).iter().zip(&english) {
                // What the example itself says stays as its author wrote it.
                let own = lines(&other.words);
                let is_author = |line: &str| kind.example.contains(line);
                let pairs = lines(&page.words).into_iter().enumerate().map(|(i, line)| (line, own.get(i)));
                let is_wrong = |(line, same): &(&String, Option<&&String>)| {
                    line.contains(['{', '}'])
                        || (language != Language::En && !is_author(line) && same.is_some_and(|same| same == line))
                };
                wrong.extend(pairs.filter(is_wrong).map(|(line, _)| format!("{} in {language:?}: {line}", kind.id)));
                for question in page.quiz.iter().flat_map(|quiz| &quiz.questions) {
                    let fits = question.choices.is_empty() || question.choices.contains(&question.answer);
                    assert!(fits && !question.answer.contains('{'), "{} in {language:?}: {question:?}", kind.id);
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// The place of the answer among the choices is the same in every language: the draw knows no words.
#[test]
fn answers_are_the_same_in_every_language() {
    let keys = |kind: &Kind, language| -> Vec<Option<usize>> {
        let pages = told(kind, language);
        let questions = pages.iter().filter_map(|page| page.quiz.as_ref()).flat_map(|quiz| &quiz.questions);
        questions.map(|q| q.choices.iter().position(|choice| *choice == q.answer)).collect()
    };
    let mut asked = 0;
    for kind in KINDS {
        let english = keys(kind, Language::En);
        asked += english.len();
        for language in Language::ALL {
            assert_eq!(keys(kind, language), english, "{} in {language:?}", kind.id);
        }
    }
    assert!(60 < asked, "{asked}");
}
