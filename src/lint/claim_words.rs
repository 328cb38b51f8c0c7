//! What: words of an author that claim an effect on eyes: treat, cure, diagnose, correct, test, clinically proven,
//! normal and their kin, in the language that the text is written in. A word that is denied is fine: "not a test",
//! "kein Test", "no es un test", "ne soigne pas". So is a verb that means something else with the word after it:
//! "tratar de" (to try), "traiter de" (to be about). Some verbs claim only with what they act on: "improves your vision",
//! not "improves the print". What a new version of the book corrected is a page. A word that only contains a claim word is
//! another word.
//!
//! Why: these are practice pages. In many places the purpose that words state decides whether a booklet counts as a
//! regulated medical product, and a reader may put off proper care for a promise.
//!
//! Limit: none of treat, cure, diagnose (errors); the rest are everyday words too (warnings). Source: design choice; the
//! lists are our own after the trade's common practice, and local rules may ask for more.
//!
//! Way out: say what the page shows and asks for. What may be claimed is for licensed professionals and local rules.

use super::{Finding, Input, Rule, Text, Words, finding};
use crate::diagnostics::{Place, Severity};
use crate::scene::{Role, Shape};
use crate::solve::SolvedForm;

mod lists;

use lists::{Lists, Stem};

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "claim-words", doc: "an author's words claim an effect on eyes", codes: &[ERROR, WARNING], check };

const ERROR: &str = "E-CLAIM";
const WARNING: &str = "W-CLAIM";

/// How many words from its verb the object of a claim may stand. Design choice.
const REACH: usize = 3;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let on_targets = target_texts(input);
    input.texts.iter().chain(&on_targets).flat_map(|text| check_text(input, text)).collect()
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
                    texts.push(Text {
                        page: page.id,
                        text,
                        place: feature.place,
                        language: input.language,
                        of_book: false,
                    });
                }
            }
        }
    }
    texts
}

/// Each claim word of a text once.
fn check_text(input: &Input<'_>, text: &Text<'_>) -> Vec<Finding> {
    let lower = text.text.to_lowercase();
    let lists = Lists::of(text.language);
    let mut seen: Vec<(String, bool)> = Vec::new();
    // What denies a claim stands in its own sentence.
    for sentence in lower.split(['.', '!', '?', ':', ';']) {
        let words: Vec<&str> = sentence.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
        for claim in (0..words.len()).filter_map(|i| claim_at(lists, &words, i, text.of_book)) {
            if !seen.contains(&claim) {
                seen.push(claim);
            }
        }
    }
    let told = input.told.iter().find(|(told, _)| told == text.text).map(|(_, place)| *place);
    seen.into_iter().map(|(word, refused)| report(text, told, &word, refused)).collect()
}

/// The claim that starts at a word, and whether it is refused.
fn claim_at(lists: &Lists, words: &[&str], i: usize, of_book: bool) -> Option<(String, bool)> {
    let (before, after) = (words.get(..i)?, words.get(i + 1..)?);
    let word = *words.get(i)?;
    if is_denied(lists, before, after) || is_harmless(lists, word, after) {
        return None;
    }
    let (firsts, seconds) = lists.pairs;
    if let Some(next) = after.first().filter(|next| firsts.contains(&word) && is_one(seconds, next)) {
        return Some((format!("{word} {next}"), false));
    }
    let refused = is_one(lists.refused, word) || lists.joined.iter().any(|end| word.ends_with(end));
    if let Some(object) = object_of(lists, word, before, after) {
        return Some((format!("{word} … {object}"), false));
    }
    let doubtful = is_one(lists.doubtful, word) || (!of_book && is_one(lists.mending, word));
    (refused || doubtful).then(|| (word.to_owned(), refused))
}

/// What a verb acts on, among the few words around it, where the two claim an effect together.
fn object_of<'a>(lists: &Lists, word: &str, before: &[&'a str], after: &[&'a str]) -> Option<&'a str> {
    let near = || after.iter().take(REACH).chain(before.iter().rev().take(REACH));
    let effects = lists.effects.iter().filter(|(verbs, _)| is_one(verbs, word));
    effects.flat_map(|(_, objects)| near().find(|near| objects.contains(near))).next().copied()
}

/// Whether a word is one of these stems with one of its endings.
fn is_one(stems: &[Stem], word: &str) -> bool {
    stems.iter().any(|(stem, endings)| word.strip_prefix(stem).is_some_and(|ending| endings.contains(&ending)))
}

/// Whether the words around a claim say that it is not meant.
fn is_denied(lists: &Lists, before: &[&str], after: &[&str]) -> bool {
    let is_only = |word: Option<&&str>| word.is_some_and(|word| lists.only.contains(word));
    let ahead = before.iter().rev().find(|word| !lists.between.contains(word));
    let by_one_before = ahead.is_some_and(|word| lists.negations.contains(word)) && !is_only(after.first());
    let by_one_behind = after.first().is_some_and(|word| lists.behind.contains(word)) && !is_only(after.get(1));
    by_one_before || by_one_behind
}

/// Whether the word after a verb gives it a meaning that is no claim.
fn is_harmless(lists: &Lists, word: &str, after: &[&str]) -> bool {
    let (verbs, next) = lists.harmless;
    is_one(verbs, word) && after.first().is_some_and(|word| next.contains(word))
}

/// The finding about a word of a text, which a translation may have at the place `told`.
fn report(text: &Text<'_>, told: Option<Place>, word: &str, refused: bool) -> Finding {
    let language = told.map_or_else(String::new, |_| format!(" (`{}`)", text.language.tag()));
    let (severity, code, message) = if refused {
        (
            Severity::Error,
            ERROR,
            format!("`{word}`{language} claims an effect on eyes: practice pages make no such claim"),
        )
    } else {
        (
            Severity::Warning,
            WARNING,
            format!("`{word}`{language} may read as a claim about eyes: practice pages make none"),
        )
    };
    let help =
        "say what the page shows and asks for; what may be claimed is for licensed professionals and local rules";
    let words = Words { message, label: "claim word", help: help.to_owned() };
    finding(text.page, severity, code, told.or(text.place), words)
}
