//! What is written of a comparison: the text for a terminal, and the erratum as Markdown.

use super::diff::{Comparison, PageChange};
use super::facts::Head;
use super::release::release;
use super::version::Verdict;
use super::words::{Entry, Markup, renumbered, sections, written};

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

/// How every erratum begins, and what its third line is.
const TITLE: &str = "# Changes in ";
const COLUMNS: &str = "| edition | version | date |";

/// Whether a text begins like an erratum.
pub(super) fn is_erratum(text: &str) -> bool {
    text.starts_with(TITLE) && text.lines().nth(2) == Some(COLUMNS)
}

/// The erratum: what changed for the reader, page by page. Where the version has to be raised, it says by how much.
pub fn erratum(comparison: &Comparison, verdict: &Verdict) -> String {
    let (old, new) = (&comparison.old, &comparison.new);
    let mut page = format!("{TITLE}{}\n\n", written(&new.title, Markup::Markdown));
    page.push_str(&format!("{COLUMNS}\n|---|---|---|\n| old | {} | {} |\n", old.version, old.date));
    page.push_str(&format!("| new | {} | {} |\n", new.version, new.date));
    if !verdict.fits() {
        page.push_str(&format!("\nThe version of the new book must be raised to at least {}.\n", verdict.lowest));
    }
    page.push_str(
        "\nPage numbers are those of the new book; where a page had another number, that stands beside it. Demands, depths \
         and sizes are those of the pages printed at 100 % and looked at from the distance in their footer.\n",
    );
    let tells = |page: &PageChange| page.asks && !(page.features.is_empty() && page.questions.is_empty());
    if comparison.pages.iter().any(tells) {
        page.push_str("\nIt tells answers: read it after the pages with questions are done.\n");
    }
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
