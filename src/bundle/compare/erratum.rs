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
