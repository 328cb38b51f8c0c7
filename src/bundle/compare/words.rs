//! Differences in plain words: one set of sentences for the screen, the erratum and the list of releases.
//!
//! Nothing is compared here, and nothing left out: every difference has its words, under its class.

use serde_json::Value;

use super::class::Class;
use super::diff::{Change, Comparison, Happened, ItemChange, PageChange};
use super::name::{label, said};

/// How sentences are marked up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Markup {
    /// For a terminal.
    Plain,
    /// For a Markdown file: what an author wrote is kept from being read as markup.
    Markdown,
}

/// The differences of one class.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Section {
    /// The class.
    pub class: Class,
    /// What differs: of the book, then of its editions, then of its pages.
    pub entries: Vec<Entry>,
}

/// The differences of one thing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// What it is.
    pub title: String,
    /// Short sentences without a final stop.
    pub lines: Vec<String>,
}

impl Section {
    /// What its differences are about.
    pub const fn heading(&self) -> &'static str {
        match self.class {
            Class::Major => "Depths, inks, answers: what the eyes are asked (major)",
            Class::Minor => "Pages, editions and their order (minor)",
            Class::Patch => "Words, parts and resolution (patch)",
        }
    }
}

/// Every difference, by class, the weightiest first. A class without any is left out.
pub fn sections(comparison: &Comparison, markup: Markup) -> Vec<Section> {
    let section = |class| Section { class, entries: entries(comparison, class, markup) };
    Class::ALL.into_iter().map(section).filter(|section| !section.entries.is_empty()).collect()
}

fn entries(comparison: &Comparison, class: Class, markup: Markup) -> Vec<Entry> {
    let set = Entry { title: "The whole book".to_owned(), lines: each(&comparison.set, class, markup) };
    let editions = comparison.editions.iter().map(|edition| Entry {
        title: edition_title(edition),
        lines: match edition.happened {
            Happened::Added if edition.class == class => vec!["is new".to_owned()],
            Happened::Removed if edition.class == class => vec!["is gone; its name is not used again".to_owned()],
            Happened::Changed => each(&edition.differences, class, markup),
            Happened::Added | Happened::Removed => Vec::new(),
        },
    });
    let pages = comparison.pages.iter().map(|page| Entry {
        title: page_title(page, comparison.edition.as_deref(), markup),
        lines: page_lines(page, class, markup),
    });
    std::iter::once(set).chain(editions).chain(pages).filter(|entry| !entry.lines.is_empty()).collect()
}

/// "Edition `a4`".
pub(super) fn edition_title(edition: &ItemChange) -> String {
    format!("Edition `{}`", edition.id)
}

/// "Page 16 (was 15): Mooring rings (`mooring-rings-2`)". Where editions number it otherwise, the number is that in `edition`,
/// which is then named.
pub(super) fn page_title(page: &PageChange, edition: Option<&str>, markup: Markup) -> String {
    let title = written(&page.title, markup);
    format!("{}: {title} (`{}`)", page_number(page, edition), page.id)
}

fn page_number(page: &PageChange, edition: Option<&str>) -> String {
    let known = edition.and_then(|edition| page.numbers.get_key_value(edition));
    let Some((edition, pair)) = known.or_else(|| page.numbers.first_key_value()) else { return "Page".to_owned() };
    let place = match pair {
        [Some(old), Some(new)] if old == new => format!("Page {new}"),
        [Some(old), Some(new)] => format!("Page {new} (was {old})"),
        [None, Some(new)] => format!("Page {new} (new)"),
        [Some(old), None] => format!("Page {old} of the old edition"),
        [None, None] => return "Page".to_owned(),
    };
    if page.numbers.values().all(|other| other == pair) { place } else { format!("{place} in `{edition}`") }
}

fn page_lines(page: &PageChange, class: Class, markup: Markup) -> Vec<String> {
    match page.happened {
        Happened::Added if page.class == class => return vec!["the page is new".to_owned()],
        Happened::Removed if page.class == class => {
            return vec!["the page is gone; its name is not used again".to_owned()];
        }
        Happened::Added | Happened::Removed => return Vec::new(),
        Happened::Changed => {}
    }
    let moved =
        (page.moved && class == Class::Minor).then(|| "the page stands elsewhere in the order of the book".into());
    let mut lines: Vec<String> = moved.into_iter().collect();
    if class == Class::Major {
        lines.extend(item_lines(&page.features, "", markup));
        lines.extend(item_lines(&page.questions, "question ", markup));
    }
    lines.extend(each(&page.differences, class, markup));
    lines
}

/// A line for each difference of this class.
fn each(differences: &[Change], class: Class, markup: Markup) -> Vec<String> {
    differences.iter().filter(|change| change.class == class).map(|change| sentence(change, markup)).collect()
}

/// A line for all items with the same differences: "`near`, `far`: demand was 2 pd toward, now 3 pd toward; …".
fn item_lines(items: &[ItemChange], noun: &str, markup: Markup) -> Vec<String> {
    let mut groups: Vec<(String, Vec<String>)> = Vec::new();
    for item in items {
        let told = item_words(item, markup);
        let name = if noun.is_empty() { format!("`{}`", item.id) } else { format!("{noun}{}", item.id) };
        match groups.iter_mut().find(|(known, _)| *known == told) {
            Some((_, names)) => names.push(name),
            None => groups.push((told, vec![name])),
        }
    }
    groups.into_iter().map(|(told, names)| format!("{}: {told}", names.join(", "))).collect()
}

/// What is told of an item that is new or gone.
const TOLD: [&str; 6] = ["role", "shape", "eyes", "demand_pd", "parallax_mm", "answer"];
/// What is told first of one that differs.
const FIRST: [&str; 8] =
    ["answer", "shape", "eyes", "demand_pd", "parallax_mm", "disparity_arcsec", "place_mm", "place_range_mm"];

fn item_words(item: &ItemChange, markup: Markup) -> String {
    let (word, side): (_, fn(&Change) -> &Value) = match item.happened {
        Happened::Added => ("new", |change| &change.new),
        Happened::Removed => ("gone", |change| &change.old),
        Happened::Changed => return sorted(&item.differences, markup),
    };
    let of = |name: &&str| item.differences.iter().find(|change| change.name == *name);
    let facts = TOLD.iter().filter_map(of).map(|change| match change.name.as_str() {
        name @ ("demand_pd" | "parallax_mm" | "answer") => {
            format!("{} {}", label(name), value(name, side(change), markup))
        }
        name => value(name, side(change), markup),
    });
    format!("{word} ({})", facts.collect::<Vec<_>>().join(", "))
}

/// The differences of an item, what matters most first.
fn sorted(differences: &[Change], markup: Markup) -> String {
    let rank = |change: &&Change| FIRST.iter().position(|name| *name == change.name).unwrap_or(FIRST.len());
    let mut ordered: Vec<&Change> = differences.iter().collect();
    ordered.sort_by_key(rank);
    ordered.into_iter().map(|change| sentence(change, markup)).collect::<Vec<_>>().join("; ")
}

/// "goal was “…”, now “…”".
pub(super) fn sentence(change: &Change, markup: Markup) -> String {
    let (name, of) = (change.name.as_str(), label(&change.name));
    match (&change.old, &change.new) {
        (Value::Null, new) => match value(name, new, markup) {
            told if told.is_empty() => format!("{of} is new"),
            told => format!("{of} is new: {told}"),
        },
        (old, Value::Null) => match value(name, old, markup) {
            told if told.is_empty() => format!("{of} is gone"),
            told => format!("{of} was {told}, now there is none"),
        },
        (old, new) => match (value(name, old, markup), value(name, new, markup)) {
            (old, new) if old == new => format!("{of} changed"),
            (old, new) => format!("{of} was {old}, now {new}"),
        },
    }
}

/// A value in words. Empty where it tells nothing but that it is another.
fn value(name: &str, value: &Value, markup: Markup) -> String {
    said(name, value, &|text| written(text, markup))
}

/// What an author wrote, kept from being read as markup.
pub(super) fn written(text: &str, markup: Markup) -> String {
    if markup == Markup::Plain {
        return text.to_owned();
    }
    let mut kept = String::with_capacity(text.len());
    for letter in text.chars() {
        if "\\`*_[]<>#|".contains(letter) {
            kept.push('\\');
        }
        kept.push(letter);
    }
    kept
}

/// "in `a4`: pages 12 to 20 are now 13 to 21", one a run of pages.
pub fn renumbered(comparison: &Comparison) -> Vec<String> {
    let mut runs: Vec<(&str, [u32; 2], u32)> = Vec::new();
    let mut all: Vec<_> = comparison.renumbered.iter().collect();
    all.sort_by_key(|one| (&one.edition, one.numbers));
    for one in all {
        match runs.last_mut() {
            Some((edition, [old, new], length))
                if *edition == one.edition && one.numbers == [*old + *length, *new + *length] =>
            {
                *length += 1;
            }
            _ => runs.push((&one.edition, one.numbers, 1)),
        }
    }
    let run = |(edition, [old, new], length): (&str, [u32; 2], u32)| match length - 1 {
        0 => format!("in `{edition}`: page {old} is now page {new}"),
        more => format!("in `{edition}`: pages {old} to {} are now {new} to {}", old + more, new + more),
    };
    runs.into_iter().map(run).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_an_author_wrote_is_no_markup() {
        assert_eq!(written("a *b* [c] `d`", Markup::Markdown), r"a \*b\* \[c\] \`d\`");
        assert_eq!(written("a *b*", Markup::Plain), "a *b*");
    }

    #[test]
    fn differences_are_told_with_what_matters_most_first() {
        let change =
            |name: &str, old: Value, new: Value| Change { name: name.to_owned(), class: Class::Major, old, new };
        let all = [
            change("at_mm", serde_json::json!([0, 1.5]), serde_json::json!([0, 2])),
            change("demand_pd", 2.into(), serde_json::json!(-2.5)),
        ];
        let told = sorted(&all, Markup::Plain);
        assert_eq!(
            told,
            "demand was 2 pd toward, now 2.5 pd away; middle, from that of the art field, was 0, 1.5 mm, now 0, 2 mm"
        );
    }
}
