//! What: words of an author that claim an effect on eyes: treat, cure, diagnose, correct, test, clinically proven,
//! normal and their kin. A word right after "not", "no", "never" or "cannot" (with or without an article) is fine:
//! "not a test".
//!
//! Why: these are practice pages. In many places the purpose that words state decides whether a booklet counts as a
//! regulated medical product, and a reader may put off proper care for a promise.
//!
//! Limit: none of treat, cure, diagnose (errors); the rest are everyday words too (warnings). Source: design choice; the
//! law differs from place to place.
//!
//! Way out: say what the page shows and asks for. What may be claimed is for licensed professionals and local rules.

use super::{Finding, Input, Rule, Text, Words, finding};
use crate::diagnostics::Severity;
use crate::scene::{Role, Shape};
use crate::solve::SolvedForm;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "claim-words", doc: "an author's words claim an effect on eyes", codes: &[ERROR, WARNING], check };

const ERROR: &str = "E-CLAIM";
const WARNING: &str = "W-CLAIM";

/// Words that are errors.
const REFUSED: &[&str] = &[
    "treat",
    "treats",
    "treated",
    "treating",
    "treatment",
    "treatments",
    "cure",
    "cures",
    "cured",
    "curing",
    "diagnose",
    "diagnoses",
    "diagnosed",
    "diagnosing",
    "diagnosis",
    "diagnostic",
];
/// Words that are warnings.
const DOUBTFUL: &[&str] = &[
    "correct",
    "corrects",
    "corrected",
    "correcting",
    "correction",
    "corrective",
    "test",
    "tests",
    "tested",
    "testing",
    "heal",
    "heals",
    "healed",
    "healing",
    "therapy",
    "therapies",
    "therapeutic",
    "normal",
    "abnormal",
];
/// Two words that are a warning together.
const DOUBTFUL_PAIRS: &[(&str, &str)] = &[("clinically", "proven"), ("scientifically", "proven")];
/// Words that turn a claim into its opposite.
const NEGATIONS: &[&str] = &["not", "no", "never", "cannot"];
/// What may stand between the two.
const ARTICLES: &[&str] = &["a", "an", "any", "the"];

fn check(input: &Input<'_>) -> Vec<Finding> {
    let on_targets = target_texts(input);
    input.texts.iter().chain(&on_targets).flat_map(check_text).collect()
}

/// Labels of targets, which their pages speak of, and letters that are drawn: each once, on its first page.
fn target_texts<'a>(input: &Input<'a>) -> Vec<Text<'a>> {
    let mut texts: Vec<Text<'_>> = Vec::new();
    for page in input.pages {
        for feature in page.features.iter().filter(|feature| feature.role == Role::Target) {
            let drawn = match &feature.form {
                SolvedForm::Shape { shape: Shape::Text(text), .. } => Some(text.as_str()),
                _ => None,
            };
            for text in [Some(feature.id.as_str()), drawn].into_iter().flatten() {
                if texts.iter().all(|known| known.place != feature.place || known.text != text) {
                    texts.push(Text { page: page.id, text, place: feature.place });
                }
            }
        }
    }
    texts
}

/// Each claim word of a text once.
fn check_text(text: &Text<'_>) -> Vec<Finding> {
    let lower = text.text.to_lowercase();
    let words: Vec<&str> = lower.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    let mut seen: Vec<(String, bool)> = Vec::new();
    for i in 0..words.len() {
        if let Some(claim) = claim_at(&words, i).filter(|claim| !seen.contains(claim)) {
            seen.push(claim);
        }
    }
    seen.into_iter().map(|(word, refused)| report(text, &word, refused)).collect()
}

/// The claim that starts at a word, and whether it is refused.
fn claim_at(words: &[&str], i: usize) -> Option<(String, bool)> {
    if is_negated(&words[..i]) {
        return None;
    }
    let word = words[i];
    if let Some(next) = words.get(i + 1).filter(|next| DOUBTFUL_PAIRS.contains(&(word, next))) {
        return Some((format!("{word} {next}"), false));
    }
    let refused = REFUSED.contains(&word);
    (refused || DOUBTFUL.contains(&word)).then(|| (word.to_owned(), refused))
}

/// Whether the words before a claim say that it is not meant.
fn is_negated(before: &[&str]) -> bool {
    let before = match before {
        [rest @ .., last] if ARTICLES.contains(last) => rest,
        all => all,
    };
    before.last().is_some_and(|last| NEGATIONS.contains(last))
}

fn report(text: &Text<'_>, word: &str, refused: bool) -> Finding {
    let (severity, code, message) = if refused {
        (Severity::Error, ERROR, format!("`{word}` claims an effect on eyes: practice pages make no such claim"))
    } else {
        (Severity::Warning, WARNING, format!("`{word}` may read as a claim about eyes: practice pages make none"))
    };
    let help =
        "say what the page shows and asks for; what may be claimed is for licensed professionals and local rules";
    let words = Words { message, label: "claim word", help: help.to_owned() };
    finding(text.page, severity, code, text.place, words)
}
