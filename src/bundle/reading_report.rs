//! What `report.json` says of how easy the words of an edition are to read.
//!
//! The words are the sentences of the exercise pages as they are printed, the author's own among them; titles, labels and
//! answers are no sentences.

use serde::Serialize;

use crate::exercise::words::Words;
use crate::language::Language;
use crate::language::reading::{self, Reading};

use super::report::round;

/// The score of the words of an edition, by the formula of its language.
#[derive(Debug, PartialEq, Serialize)]
pub(super) struct EasePart {
    language: &'static str,
    formula: &'static str,
    /// A school grade, easier when lower, in English and German; an ease of about 0 to 100, easier when higher, in Spanish
    /// and French.
    score: f64,
    /// The score of words that just do.
    limit: f64,
    words_a_sentence: f64,
}

impl EasePart {
    /// Measures the words of pages in this language; `None` where there are none.
    pub(super) fn new<'a>(language: Language, pages: impl Iterator<Item = &'a Words>) -> Option<Self> {
        let reading = measured(language, pages)?;
        Some(Self {
            language: language.tag(),
            formula: reading.formula,
            score: round(reading.score, 10.0),
            limit: reading.limit,
            words_a_sentence: round(reading.counts.words_a_sentence(), 10.0),
        })
    }
}

/// How easy the sentences of these pages are to read; `None` where there are none.
pub(super) fn measured<'a>(language: Language, pages: impl Iterator<Item = &'a Words>) -> Option<Reading> {
    let lines: Vec<&str> = pages.flat_map(lines).collect();
    reading::ease(&lines.join("\n"), language)
}

/// The sentences of a page.
fn lines(words: &Words) -> impl Iterator<Item = &str> {
    let single = [&words.goal, &words.setup, &words.see];
    let then = words.one_part.iter().map(|(_, then)| then);
    single.into_iter().chain(&words.steps).chain(then).map(String::as_str)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 0.39 * 4 + 11.8 * 9 / 8 - 15.59 is -0.755, by hand: eight words of which one has two syllables, in two sentences.
    #[test]
    fn the_sentences_of_all_pages_are_measured_as_one_text() {
        let page = |goal: &str, then: &str| Words {
            goal: goal.to_owned(),
            one_part: vec![("an author's unbelievably complicated designation".to_owned(), then.to_owned())],
            ..Words::default()
        };
        let pages = [page("Look at the ring.", ""), page("", "Rest, then look again.")];
        let part = EasePart::new(Language::En, pages.iter()).unwrap();
        let wanted = EasePart {
            language: "en",
            formula: "Flesch-Kincaid grade level",
            score: -0.8,
            limit: 8.0,
            words_a_sentence: 4.0,
        };
        assert_eq!(part, wanted);
        assert_eq!(EasePart::new(Language::De, [].iter()), None);
    }
}
