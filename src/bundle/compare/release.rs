//! A `[[release]]` for `set.toml`: one sentence for each thing that differs, short enough for the page of versions.
//!
//! That page is part of the book, so nothing in it may tell an answer: of pages that ask something neither answers nor
//! depths are told. All numbers are in the erratum.

use super::diff::{Change, Comparison, Happened, ItemChange, PageChange};
use super::name::label;
use super::version::Verdict;
use super::words::{Markup, edition_title, page_title, sentence};

/// The longest sentence of a `[[release]]`, in characters, and the most of them: what the spec takes.
const LONGEST: usize = 300;
const MOST: usize = 40;

/// The table. Where the version has to be raised, the lowest that would do stands in it.
pub fn release(comparison: &Comparison, verdict: &Verdict) -> String {
    let version = if verdict.fits() { comparison.new.version.clone() } else { verdict.lowest.to_string() };
    let mut table = format!("[[release]]\nversion = \"{version}\"\ndate = \"{}\"\nchanges = [\n", comparison.new.date);
    sentences(comparison).iter().for_each(|sentence| table.push_str(&format!("  {},\n", quoted(sentence))));
    table.push_str("]\n");
    table
}

/// A text as a TOML value.
fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}

/// The sentences, no more and no longer than the spec takes.
pub fn sentences(comparison: &Comparison) -> Vec<String> {
    let set = (!comparison.set.is_empty()).then(|| told("The whole book", &facts(&comparison.set)));
    let editions = comparison.editions.iter().map(|edition| {
        let parts = match edition.happened {
            Happened::Added => vec!["new".to_owned()],
            Happened::Removed => vec!["gone".to_owned()],
            Happened::Changed => facts(&edition.differences),
        };
        told(&edition_title(edition), &parts)
    });
    let edition = comparison.edition.as_deref();
    let pages = comparison.pages.iter().map(|page| told(&page_title(page, edition, Markup::Plain), &page_parts(page)));
    let mut sentences: Vec<String> = set.into_iter().chain(editions).chain(pages).collect();
    if MOST < sentences.len() {
        let more = sentences.len() + 1 - MOST;
        sentences.truncate(MOST - 1);
        sentences.push(format!("{more} more pages changed; the erratum has them all."));
    }
    sentences
}

/// "Page 16 (was 15): …; …." As many parts as there is room for; what is left out is in the erratum, and that is said.
fn told(title: &str, parts: &[String]) -> String {
    let sentence = |kept: usize| {
        let more = if kept < parts.len() { ["more in the erratum".to_owned()].to_vec() } else { Vec::new() };
        format!("{title}: {}.", [&parts[..kept], &more].concat().join("; "))
    };
    let fits = |kept: &usize| sentence(*kept).chars().count() <= LONGEST;
    (0..=parts.len()).rev().find(fits).map_or_else(|| "More in the erratum.".to_owned(), sentence)
}

fn page_parts(page: &PageChange) -> Vec<String> {
    match page.happened {
        Happened::Added => return vec!["new".to_owned()],
        Happened::Removed => return vec!["gone".to_owned()],
        Happened::Changed => {}
    }
    let mut parts: Vec<String> = page.moved.then(|| "at another place in the book".to_owned()).into_iter().collect();
    parts.extend(questions(&page.questions));
    parts.extend(if page.asks { veiled(&page.features) } else { features(&page.features) });
    // Answers in other languages, and art that is words.
    let veiled = |change: &&Change| change.name.starts_with("questions.") || change.name.starts_with("art.");
    let open: Vec<Change> = page.differences.iter().filter(|change| !veiled(change)).cloned().collect();
    parts.extend((open.len() < page.differences.len()).then(|| "other art or answers in another language".to_owned()));
    parts.extend(facts(&open));
    parts
}

/// That the art changed, on a page where more would tell answers.
fn veiled(items: &[ItemChange]) -> Vec<String> {
    let deep = |item: &ItemChange| item.differences.iter().any(|change| change.name.ends_with("demand_pd"));
    let words = if items.iter().any(deep) { "other depths" } else { "other art" };
    if items.is_empty() { Vec::new() } else { vec![words.to_owned()] }
}

/// "`near` and 4 with it: demand was 2 pd toward, now 3 pd toward", one for all that changed alike.
fn features(items: &[ItemChange]) -> Vec<String> {
    let mut groups: Vec<(String, &str, usize)> = Vec::new();
    for item in items {
        let words = feature(item);
        match groups.iter_mut().find(|(known, ..)| *known == words) {
            Some((.., more)) => *more += 1,
            None => groups.push((words, &item.id, 0)),
        }
    }
    let group = |(words, id, more): (String, &str, usize)| match more {
        0 => format!("`{id}`: {words}"),
        more => format!("`{id}` and {more} with it: {words}"),
    };
    groups.into_iter().map(group).collect()
}

fn feature(item: &ItemChange) -> String {
    let demand = item.differences.iter().find(|change| change.name == "demand_pd");
    match (item.happened, demand) {
        (Happened::Added, _) => "new".to_owned(),
        (Happened::Removed, _) => "gone".to_owned(),
        (Happened::Changed, Some(change)) => sentence(change, Markup::Plain),
        (Happened::Changed, None) => format!("other {}", names(&item.differences)),
    }
}

/// The names of facts, each once.
fn names(differences: &[Change]) -> String {
    let name = |change: &Change| {
        let words = label(&change.name);
        words.split(',').next().unwrap_or_default().trim_start_matches("the ").to_owned()
    };
    differences.iter().map(name).collect::<Vec<_>>().join(", ")
}

/// Which questions have other answers, never which.
fn questions(items: &[ItemChange]) -> Option<String> {
    let ids: Vec<&str> = items.iter().map(|item| item.id.as_str()).collect();
    match ids[..] {
        [] => None,
        [id] => Some(format!("another answer to question {id}")),
        _ => Some(format!("other answers to questions {}", ids.join(", "))),
    }
}

/// Facts, each with its values where these are short; words by their names alone.
fn facts(differences: &[Change]) -> Vec<String> {
    let is_words = |change: &&Change| change.old.as_str().or(change.new.as_str()).is_some_and(|s| 24 < s.len());
    let words: Vec<Change> = differences.iter().filter(is_words).cloned().collect();
    let lists = |change: &&Change| change.old.is_array() || change.new.is_array();
    let (many, plain): (Vec<&Change>, Vec<&Change>) =
        differences.iter().filter(|change| !is_words(change)).partition(lists);
    let others: Vec<Change> = words.into_iter().chain(many.into_iter().cloned()).collect();
    let mut parts: Vec<String> = plain.into_iter().map(|change| sentence(change, Markup::Plain)).collect();
    if !others.is_empty() {
        parts.push(format!("other {}", names(&others)));
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::super::class::Class;
    use super::*;

    #[test]
    fn a_sentence_never_passes_its_length_and_says_what_it_left_out() {
        let parts: Vec<String> = (0..40).map(|i| format!("part number {i}")).collect();
        let sentence = told("Page 3: Ring (`ring`)", &parts);
        assert!(sentence.chars().count() <= LONGEST);
        assert!(
            sentence.starts_with("Page 3: Ring (`ring`): part number 0; ")
                && sentence.ends_with("; more in the erratum.")
        );
        assert_eq!(told("Page 3", &["new".to_owned()]), "Page 3: new.");
    }

    #[test]
    fn no_answer_is_told() {
        let change =
            |name: &str| Change { name: name.to_owned(), class: Class::Major, old: "up".into(), new: "left".into() };
        let item = |id: &str, name: &str| ItemChange {
            id: id.to_owned(),
            happened: Happened::Changed,
            class: Class::Major,
            differences: vec![change(name)],
        };
        let page = PageChange {
            id: "gap".to_owned(),
            title: "Gap".to_owned(),
            happened: Happened::Changed,
            moved: false,
            asks: true,
            class: Class::Major,
            numbers: std::collections::BTreeMap::new(),
            differences: vec![change("questions.de.1.answer")],
            features: vec![item("star", "demand_pd"), item("ring", "at_mm")],
            questions: vec![item("1", "answer")],
        };
        let parts = page_parts(&page);
        assert_eq!(parts, ["another answer to question 1", "other depths", "other art or answers in another language"]);
    }

    #[test]
    fn texts_are_toml() {
        assert_eq!(quoted(r#"a "b" \c"#), r#""a \"b\" \\c""#);
    }
}
