//! What is written of a comparison: the text for a terminal, the erratum as Markdown, and the table for `set.toml`.

use super::class::Class;
use super::diff::{Comparison, Happened, PageChange};
use super::facts::Head;
use super::name::label;
use super::version::Verdict;
use super::words::{Entry, Markup, renumbered, sections, written};

/// The longest sentence of a `[[release]]`, in characters, and the most of them: what the spec takes.
const LONGEST: usize = 300;
const MOST: usize = 40;

/// The comparison for a terminal: what changed, and what the version says of it.
pub fn text(comparison: &Comparison, verdict: &Verdict) -> String {
    let (old, new) = (&comparison.old, &comparison.new);
    let mut text = format!("{} (`{}`): {}, then {}\n", new.title, new.id, issue(old), issue(new));
    for section in sections(comparison, Markup::Plain) {
        text.push_str(&format!("\n{}\n", section.heading()));
        for Entry { title, lines } in &section.entries {
            text.push_str(&format!("  {title}\n"));
            lines.iter().for_each(|line| text.push_str(&format!("    - {line}\n")));
        }
    }
    let numbers = renumbered(comparison);
    if !numbers.is_empty() {
        text.push_str("\nOther page numbers\n");
        numbers.iter().for_each(|line| text.push_str(&format!("  - {line}\n")));
    }
    text.push_str(&format!("\n{}\n", verdict.words()));
    if comparison.class.is_some() {
        text.push_str(&format!("\nfor `set.toml`:\n\n{}", release(comparison, verdict)));
    }
    text
}

/// "1.0.0 of 2026-05-04".
fn issue(head: &Head) -> String {
    format!("{} of {}", head.version, head.date)
}

/// The erratum: what changed for the reader, page by page. Where the version has to be raised, the lowest that would do
/// stands in it.
pub fn erratum(comparison: &Comparison, verdict: &Verdict) -> String {
    let (old, new) = (&comparison.old, &comparison.new);
    let issued = if verdict.fits() { new.version.clone() } else { verdict.lowest.to_string() };
    let mut page = format!("# Changes in {}\n\n", written(&new.title, Markup::Markdown));
    page.push_str(&format!("| edition | version | date |\n|---|---|---|\n| old | {} | {} |\n", old.version, old.date));
    page.push_str(&format!("| new | {issued} | {} |\n", new.date));
    page.push_str(
        "\nPage numbers are those of the new book; where a page had another number, that stands beside it. Demands, depths \
         and sizes are those of the pages printed at 100 % and looked at from the distance in their footer.\n",
    );
    let sections = sections(comparison, Markup::Markdown);
    if sections.is_empty() {
        page.push_str("\nNothing changed.\n");
    }
    for section in sections {
        page.push_str(&format!("\n## {}\n", section.heading()));
        for Entry { title, lines } in &section.entries {
            page.push_str(&format!("\n### {title}\n\n"));
            lines.iter().for_each(|line| page.push_str(&format!("- {line}\n")));
        }
    }
    let numbers = renumbered(comparison);
    if !numbers.is_empty() {
        page.push_str("\n## Other page numbers\n\n");
        numbers.iter().for_each(|line| page.push_str(&format!("- {line}\n")));
    }
    page
}

/// A `[[release]]` with a sentence for each thing that differs, for `set.toml`.
pub fn release(comparison: &Comparison, verdict: &Verdict) -> String {
    let version = if verdict.fits() { comparison.new.version.clone() } else { verdict.lowest.to_string() };
    let mut table = format!("[[release]]\nversion = \"{version}\"\ndate = \"{}\"\nchanges = [\n", comparison.new.date);
    sentences(comparison).iter().for_each(|sentence| table.push_str(&format!("  {},\n", quoted(sentence))));
    table.push_str("]\n");
    table
}

/// Sentences for the list of versions in the book, no more and no longer than the spec takes.
pub fn sentences(comparison: &Comparison) -> Vec<String> {
    let mut sentences: Vec<String> = Vec::new();
    for section in sections(comparison, Markup::Plain) {
        for entry in section.entries {
            let whole = format!("{}: {}.", entry.title, entry.lines.join("; "));
            let short = || format!("{}: {}.", entry.title, section_words(section.class));
            sentences.push(if whole.chars().count() <= LONGEST {
                whole
            } else {
                shorter(comparison, &entry.title, section.class).unwrap_or_else(short)
            });
        }
    }
    if MOST < sentences.len() {
        let more = sentences.len() + 1 - MOST;
        sentences.truncate(MOST - 1);
        sentences.push(format!("{more} more changes stand in the erratum."));
    }
    sentences
}

/// What is said of differences that are too many for one sentence.
const fn section_words(class: Class) -> &'static str {
    match class {
        Class::Major => "what the eyes are asked changed; the erratum has the numbers",
        Class::Minor => "the layout changed; the erratum has the list",
        Class::Patch => "words changed; the erratum has them",
    }
}

/// What differs on a page or in an edition, by name alone, where that is short enough.
fn shorter(comparison: &Comparison, title: &str, class: Class) -> Option<String> {
    let page = comparison.pages.iter().find(|page| title.ends_with(&format!("(`{}`)", page.id)));
    let names = page.map(|page| page_names(page, class))?;
    let sentence = format!("{title}: changed: {}.", names.join(", "));
    (!names.is_empty() && sentence.chars().count() <= LONGEST).then_some(sentence)
}

fn page_names(page: &PageChange, class: Class) -> Vec<String> {
    let mut names: Vec<String> =
        page.differences.iter().filter(|change| change.class == class).map(|change| label(&change.name)).collect();
    if class == Class::Major {
        names.extend(page.features.iter().map(|feature| match feature.happened {
            Happened::Added => format!("`{}` (new)", feature.id),
            Happened::Removed => format!("`{}` (gone)", feature.id),
            Happened::Changed => format!("`{}`", feature.id),
        }));
        names.extend(page.questions.iter().map(|question| format!("question {}", question.id)));
    }
    names
}

/// A text as a TOML value.
fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}
