//! Two sets laid beside one another: what is in one and not in the other, and every fact that differs, with its class.
//!
//! Numbers are as the report rounds them and are compared as they stand: there is no tolerance. The structs here are
//! also the format of `compare --json`.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;
use serde_json::Value;

use super::class::{self, Class};
use super::facts::{Facts, Head, Item, Languages, PageFacts, SetFacts};

/// A fact that differs.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Change {
    /// As in `report.json`, with points where one thing is part of another.
    pub name: String,
    /// What it is worth.
    pub class: Class,
    /// As it was; null where it was not there.
    pub old: Value,
    /// As it is; null where it is not there.
    pub new: Value,
}

/// What happened to a thing with an id.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Happened {
    /// It is new.
    Added,
    /// It is gone.
    Removed,
    /// Facts of it differ, or, with a page, its place in the order.
    Changed,
}

/// An edition, a feature or a question that is not as it was.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemChange {
    /// Its id.
    pub id: String,
    /// What happened to it.
    pub happened: Happened,
    /// The weightiest of its differences.
    pub class: Class,
    /// The facts that differ; where it is new or gone, all of them.
    pub differences: Vec<Change>,
}

/// A page that is not as it was.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PageChange {
    /// Its id.
    pub id: String,
    /// Its title in the new set, or in the old one where it is gone.
    pub title: String,
    /// What happened to it.
    pub happened: Happened,
    /// Whether it stands elsewhere in the order of the book.
    pub moved: bool,
    /// Whether it asks something: its depths then tell answers.
    pub asks: bool,
    /// The weightiest of its differences.
    pub class: Class,
    /// For each edition: its number in the old set and in the new one.
    pub numbers: BTreeMap<String, [Option<u32>; 2]>,
    /// Facts of the page that differ.
    pub differences: Vec<Change>,
    /// What stands on it and is not as it was.
    pub features: Vec<ItemChange>,
    /// What it asks and did not ask like that.
    pub questions: Vec<ItemChange>,
}

/// A page that has another number, for whatever reason. No difference by itself.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Renumbered {
    /// In this edition.
    pub edition: String,
    /// This page.
    pub id: String,
    /// Its number in the old set and in the new one.
    pub numbers: [u32; 2],
}

/// Everything that differs between two sets.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Comparison {
    /// The old set.
    pub old: Head,
    /// The new set.
    pub new: Head,
    /// The weightiest difference; null where there is none.
    pub class: Option<Class>,
    /// The first edition of the new set that the old one has too; words and pictures show its pages.
    pub edition: Option<String>,
    /// Facts of the whole set.
    pub set: Vec<Change>,
    /// Editions.
    pub editions: Vec<ItemChange>,
    /// Pages in the order of the new book, those that are gone after them.
    pub pages: Vec<PageChange>,
    /// Pages with other numbers.
    pub renumbered: Vec<Renumbered>,
}

/// Lays two sets beside one another.
pub fn compare(old: &SetFacts, new: &SetFacts) -> Comparison {
    let mut set = changes(&old.facts, &new.facts, class::SET);
    set.extend(in_languages(&old.languages, &new.languages, class::SET));
    // A new release tells of the others; one that is told otherwise, or no more, is a difference.
    set.retain(|change| !(change.name.starts_with("releases.") && change.old.is_null()));
    let editions = items(&old.editions, &new.editions, class::EDITION, (Class::Minor, Class::Major));
    let pages = pages(&old.pages, &new.pages);
    let classes = set.iter().map(|c| c.class).chain(editions.iter().map(|e| e.class));
    let class = classes.chain(pages.iter().map(|p| p.class)).max();
    let renumbered = renumbered(old, new);
    let known = |edition: &&Item| old.editions.iter().any(|before| before.id == edition.id);
    let edition = new.editions.iter().find(known).map(|edition| edition.id.clone());
    Comparison { old: old.head.clone(), new: new.head.clone(), class, edition, set, editions, pages, renumbered }
}

/// The facts that differ, by name.
fn changes(old: &Facts, new: &Facts, rules: &[(&'static str, Class)]) -> Vec<Change> {
    let names: BTreeSet<&String> = old.keys().chain(new.keys()).collect();
    let differing = names.into_iter().filter(|name| old.get(*name) != new.get(*name));
    differing
        .map(|name| Change {
            name: name.clone(),
            class: class::of(rules, name),
            old: old.get(name).cloned().unwrap_or_default(),
            new: new.get(name).cloned().unwrap_or_default(),
        })
        .collect()
}

/// The facts that differ in the languages of both sets; a language that one of them has not comes or goes with its editions.
fn in_languages(old: &Languages, new: &Languages, rules: &[(&'static str, Class)]) -> Vec<Change> {
    let both = new.iter().filter_map(|(tag, facts)| Some((old.get(tag)?, facts)));
    both.flat_map(|(was, facts)| changes(was, facts, rules)).collect()
}

/// The items that differ: in the order of the new list, those that are gone after them. `come` and `gone` are what an
/// item is worth that is new, or gone.
fn items(old: &[Item], new: &[Item], rules: &[(&'static str, Class)], (come, gone): (Class, Class)) -> Vec<ItemChange> {
    let before: BTreeMap<&str, &Item> = old.iter().map(|item| (item.id.as_str(), item)).collect();
    let after: BTreeSet<&str> = new.iter().map(|item| item.id.as_str()).collect();
    let nothing = Facts::new();
    let whole = |id: &str, happened, class, differences| ItemChange { id: id.to_owned(), happened, class, differences };
    let mut found = Vec::new();
    for item in new {
        let Some(was) = before.get(item.id.as_str()) else {
            found.push(whole(&item.id, Happened::Added, come, changes(&nothing, &item.facts, rules)));
            continue;
        };
        let differences = changes(&was.facts, &item.facts, rules);
        if let Some(class) = differences.iter().map(|change| change.class).max() {
            found.push(whole(&item.id, Happened::Changed, class, differences));
        }
    }
    let lost = old.iter().filter(|item| !after.contains(item.id.as_str()));
    found.extend(lost.map(|item| whole(&item.id, Happened::Removed, gone, changes(&item.facts, &nothing, rules))));
    found
}

fn pages(old: &[PageFacts], new: &[PageFacts]) -> Vec<PageChange> {
    let before: BTreeMap<&str, &PageFacts> = old.iter().map(|page| (page.id.as_str(), page)).collect();
    let after: BTreeSet<&str> = new.iter().map(|page| page.id.as_str()).collect();
    let moved = moved(old, new);
    let mut found: Vec<PageChange> = new
        .iter()
        .filter_map(|page| match before.get(page.id.as_str()) {
            Some(was) => changed(was, page, moved.contains(page.id.as_str())),
            None => Some(whole(page, Happened::Added)),
        })
        .collect();
    found.extend(old.iter().filter(|page| !after.contains(page.id.as_str())).map(|p| whole(p, Happened::Removed)));
    found
}

/// A page that is new, or gone: its id is then never used again.
fn whole(page: &PageFacts, happened: Happened) -> PageChange {
    let (class, side) = if happened == Happened::Added { (Class::Minor, 1) } else { (Class::Major, 0) };
    let mut numbers = BTreeMap::new();
    for (edition, number) in &page.numbers {
        let mut pair = [None; 2];
        pair[side] = Some(*number);
        numbers.insert(edition.clone(), pair);
    }
    PageChange {
        id: page.id.clone(),
        title: page.title.clone(),
        happened,
        moved: false,
        asks: !page.questions.is_empty(),
        class,
        numbers,
        differences: Vec::new(),
        features: Vec::new(),
        questions: Vec::new(),
    }
}

/// What differs on a page that both have; `None` where nothing does.
fn changed(old: &PageFacts, new: &PageFacts, moved: bool) -> Option<PageChange> {
    let mut differences = changes(&old.facts, &new.facts, class::PAGE);
    differences.extend(in_languages(&old.languages, &new.languages, class::PAGE));
    let features = items(&old.features, &new.features, class::ART, (Class::Major, Class::Major));
    let questions = items(&old.questions, &new.questions, class::ART, (Class::Major, Class::Major));
    let of_items = features.iter().chain(&questions).map(|item| item.class);
    let classes = differences.iter().map(|change| change.class).chain(of_items);
    let class = classes.chain(moved.then_some(Class::Minor)).max()?;
    let editions: BTreeSet<&String> = old.numbers.keys().chain(new.numbers.keys()).collect();
    let pair = |edition: &String| [old.numbers.get(edition).copied(), new.numbers.get(edition).copied()];
    Some(PageChange {
        id: new.id.clone(),
        title: new.title.clone(),
        happened: Happened::Changed,
        moved,
        asks: !old.questions.is_empty() || !new.questions.is_empty(),
        class,
        numbers: editions.into_iter().map(|edition| (edition.clone(), pair(edition))).collect(),
        differences,
        features,
        questions,
    })
}

/// The fewest pages that have to be taken out for the others to stand in the same order in both sets.
fn moved<'a>(old: &'a [PageFacts], new: &'a [PageFacts]) -> BTreeSet<&'a str> {
    let places: BTreeMap<&str, usize> = old.iter().map(|page| page.id.as_str()).zip(0..).collect();
    let common: Vec<(&str, usize)> =
        new.iter().filter_map(|page| Some((page.id.as_str(), *places.get(page.id.as_str())?))).collect();
    let stay = longest_rise(&common.iter().map(|(_, place)| *place).collect::<Vec<_>>());
    common.iter().zip(stay).filter(|(_, stays)| !stays).map(|((id, _), _)| *id).collect()
}

/// Marks the longest rising run of some numbers, others between them left out. Of two of the same length the one found
/// first. There are at most a few hundred pages, so that comparing each with each will do.
fn longest_rise(numbers: &[usize]) -> Vec<bool> {
    let mut best: Vec<(usize, Option<usize>)> = Vec::with_capacity(numbers.len());
    for (at, number) in numbers.iter().enumerate() {
        let before = (0..at).filter(|&i| numbers[i] < *number).max_by_key(|&i| (best[i].0, at - i));
        best.push((before.map_or(1, |i| best[i].0 + 1), before));
    }
    let mut stay = vec![false; numbers.len()];
    let mut next = (0..numbers.len()).max_by_key(|&i| (best[i].0, numbers.len() - i));
    while let Some(at) = next {
        stay[at] = true;
        next = best[at].1;
    }
    stay
}

/// The pages of both sets that have another number in an edition that both have.
fn renumbered(old: &SetFacts, new: &SetFacts) -> Vec<Renumbered> {
    let before: BTreeMap<&str, &PageFacts> = old.pages.iter().map(|page| (page.id.as_str(), page)).collect();
    let pairs = new.pages.iter().filter_map(|page| Some((*before.get(page.id.as_str())?, page)));
    let numbers = pairs.flat_map(|(was, page)| {
        page.numbers.iter().filter_map(|(edition, number)| {
            let numbers = [*was.numbers.get(edition)?, *number];
            (numbers[0] != numbers[1]).then(|| Renumbered { edition: edition.clone(), id: page.id.clone(), numbers })
        })
    });
    numbers.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A page that says one thing in German.
    fn page(name: &str, value: Option<&str>) -> PageFacts {
        let facts = value.map(|value| Facts::from([(name.to_owned(), value.into())]));
        PageFacts {
            id: "lamp".to_owned(),
            title: "Lamp".to_owned(),
            numbers: BTreeMap::new(),
            facts: Facts::new(),
            features: Vec::new(),
            questions: Vec::new(),
            languages: facts.into_iter().map(|facts| ("de", facts)).collect(),
        }
    }

    #[test]
    fn other_languages_are_compared_where_both_have_them() {
        let class = |name, old, new| changed(&page(name, old), &page(name, new), false).map(|change| change.class);
        assert_eq!(class("words.de.goal", Some("hin"), Some("her")), Some(Class::Patch));
        assert_eq!(class("questions.de.1.answer", Some("hin"), Some("her")), Some(Class::Major));
        assert_eq!(class("words.de.goal", Some("hin"), Some("hin")), None);
        assert_eq!(class("words.de.goal", None, Some("her")), None);
    }

    #[test]
    fn as_few_pages_as_can_be_have_moved() {
        assert_eq!(longest_rise(&[0, 1, 2]), [true, true, true]);
        assert_eq!(longest_rise(&[2, 0, 1]), [false, true, true]);
        assert_eq!(longest_rise(&[1, 2, 0]), [true, true, false]);
        assert_eq!(longest_rise(&[0, 3, 1, 2, 4]), [true, false, true, true, true]);
        assert_eq!(longest_rise(&[1, 0]).iter().filter(|stays| **stays).count(), 1);
        assert!(longest_rise(&[]).is_empty());
    }
}
