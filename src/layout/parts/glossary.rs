//! The glossary: the words of the trade that the book uses, each explained in a plain sentence or two.

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::{BODY, Grid};
use crate::layout::{Book, Draft};

use super::text_width;

/// The words; each message has its explanation as its form `means`.
const WORDS: &[&str] = &[
    "glossary-anaglyph",
    "glossary-arc-second",
    "glossary-away",
    "glossary-base",
    "glossary-base-in-out",
    "glossary-comfort",
    "glossary-convergence",
    "glossary-demand",
    "glossary-divergence",
    "glossary-double",
    "glossary-eye-turn",
    "glossary-fusion",
    "glossary-ghost",
    "glossary-grade",
    "glossary-jump",
    "glossary-level",
    "glossary-lock-frame",
    "glossary-parallax",
    "glossary-prism-dioptre",
    "glossary-random-dots",
    "glossary-reserve",
    "glossary-single",
    "glossary-stereopsis",
    "glossary-stop-rule",
    "glossary-strand",
    "glossary-suppression",
    "glossary-toward",
    "glossary-vergence",
    "glossary-watch-marks",
];

/// The sheets of the part.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, _: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "glossary",
        title: composer.say("glossary-title"),
        lead: composer.say("glossary-lead"),
        description: composer.say("glossary-description"),
    };
    let width = text_width(composer, grid);
    let mut entries: Vec<(String, String)> = WORDS
        .iter()
        .map(|id| composer.tongue.noun(id))
        .map(|word| (word.one.clone(), word.form("means").to_owned()))
        .collect();
    entries.sort_by_key(|(word, _)| sorted_as(word));
    let sections = entries.iter().map(|(word, means)| {
        let word = composer.tell("glossary-word", &[("word", word.into())]);
        let entry = composer.lead(&word, means, &BODY, width);
        Section { body: vec![entry], ..Section::default() }
    });
    let sections = sections.collect();
    pour(composer, grid, &opening, sections)
}

/// A word as dictionaries of these languages sort it: without accents and capitals.
fn sorted_as(word: &str) -> String {
    let plain = |letter: char| match letter {
        'à' | 'á' | 'â' | 'ä' => 'a',
        'ç' => 'c',
        'è' | 'é' | 'ê' | 'ë' => 'e',
        'í' | 'î' | 'ï' => 'i',
        'ñ' => 'n',
        'ó' | 'ô' | 'ö' => 'o',
        'ù' | 'ú' | 'û' | 'ü' => 'u',
        other => other,
    };
    word.chars().flat_map(char::to_lowercase).map(plain).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Language, Tongue};

    #[test]
    fn every_word_is_explained_in_every_language() {
        for language in Language::ALL {
            for id in WORDS {
                let word = Tongue::of(language).noun(id);
                let means = word.form("means");
                assert!(means != word.one && means.ends_with('.'), "{}: {id}", language.tag());
            }
        }
    }

    #[test]
    fn words_with_accents_stand_beside_those_without() {
        assert!(sorted_as("Écart") < sorted_as("fusion") && sorted_as("doppelt") < sorted_as("Übung"));
    }
}
