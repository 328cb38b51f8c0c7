//! How easy a text is to read: one published formula for each language, on counts by plain rules.
//!
//! A formula sees the length of sentences and of words, and nothing of what they say: it is a floor under plain words, and
//! no proof of them.
//!
//! Words are what stands between spaces and has a letter or a figure; `l’anneau` and `demi-minute` are one word. A
//! sentence ends at a full stop, a question mark, an exclamation mark or an ellipsis that no letter or figure follows, and
//! at the end of a line.

use super::{Language, syllables};

/// The highest school grade that words on pages may ask for: a reading age of about 12 to 14 years.
/// Source: `[Trials2022]`, national advice on health leaflets.
const GRADE: f64 = 8.0;
/// The lowest ease of the band that holds grade 8, of 0 to 100.
/// Source: `[Flesch1948]` gives 60 to 70 to grades 8 and 9, `[FernandezHuerta1959]` to 7 and 8.
const EASE: f64 = 60.0;

/// How easy a text is to read.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The language by whose formula.
    pub language: Language,
    /// The name of the formula.
    pub formula: &'static str,
    /// What it gives: a school grade, easier when lower, for English and German; an ease of about 0 to 100, easier when
    /// higher, for Spanish and French.
    pub score: f64,
    /// The score of words that just do for pages: grade 8, or the lower end of the band of ease that holds it.
    pub limit: f64,
    /// What was counted.
    pub counts: Counts,
}

/// What a text is made of.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Counts {
    /// Its sentences.
    pub sentences: usize,
    /// Its words.
    pub words: usize,
    /// Their syllables.
    pub syllables: usize,
    /// Words of one syllable.
    pub short: usize,
    /// Words of three syllables or more.
    pub many: usize,
    /// Words of more than six letters.
    pub long: usize,
}

impl Reading {
    /// Whether the text is as easy as the limit asks, or easier.
    pub fn is_easy(&self) -> bool {
        match self.language {
            Language::En | Language::De => self.score <= self.limit,
            Language::Es | Language::Fr => self.limit <= self.score,
        }
    }
}

/// How easy a text of a language is to read; `None` for a text without words.
pub fn ease(text: &str, language: Language) -> Option<Reading> {
    let counts = Counts::of(text, language);
    (0 < counts.words).then(|| Reading {
        language,
        formula: match language {
            Language::En => "Flesch-Kincaid grade level",
            Language::De => "first Wiener Sachtextformel",
            Language::Es => "Fernández Huerta",
            Language::Fr => "Kandel-Moles",
        },
        score: counts.score(language),
        limit: match language {
            Language::En | Language::De => GRADE,
            Language::Es | Language::Fr => EASE,
        },
        counts,
    })
}

/// The sentences of a text, each as its words.
pub fn sentences(text: &str) -> Vec<Vec<&str>> {
    let ends = |(i, c): &(usize, char)| {
        let next = text[i + c.len_utf8()..].chars().next();
        *c == '\n' || (matches!(c, '.' | '!' | '?' | '…') && !next.is_some_and(char::is_alphanumeric))
    };
    let mut found = Vec::new();
    let mut start = 0;
    for (i, c) in text.char_indices().filter(ends).chain([(text.len(), '\n')]) {
        let words: Vec<&str> = words(&text[start..i]).collect();
        start = (i + c.len_utf8()).min(text.len());
        if !words.is_empty() {
            found.push(words);
        }
    }
    found
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split_whitespace().filter(|word| word.contains(char::is_alphanumeric))
}

impl Counts {
    /// Counts a text.
    pub fn of(text: &str, language: Language) -> Self {
        let mut counts = Self::default();
        for sentence in sentences(text) {
            counts.sentences += 1;
            for word in sentence {
                let syllables = syllables::count(word, language);
                counts.words += 1;
                counts.syllables += syllables;
                counts.short += usize::from(syllables == 1);
                counts.many += usize::from(3 <= syllables);
                counts.long += usize::from(6 < word.chars().filter(|c| c.is_alphabetic()).count());
            }
        }
        counts
    }

    /// The mean number of words in a sentence.
    pub fn words_a_sentence(&self) -> f64 {
        self.words as f64 / self.sentences as f64
    }

    fn syllables_a_word(&self) -> f64 {
        self.syllables as f64 / self.words as f64
    }

    fn score(&self, language: Language) -> f64 {
        match language {
            Language::En => self.kincaid(),
            Language::De => self.wiener(),
            Language::Es => self.fernandez_huerta(),
            Language::Fr => self.kandel_moles(),
        }
    }

    /// The school grade in the United States that an English text asks for, from about -3; easier when lower.
    /// Source: `[Kincaid1975]`.
    fn kincaid(&self) -> f64 {
        0.39 * self.words_a_sentence() + 11.8 * self.syllables_a_word() - 15.59
    }

    /// The school year that a German text asks for, 4 to 15 for common texts; easier when lower.
    /// Source: `[Bamberger1984]`, the first of four formulas.
    fn wiener(&self) -> f64 {
        let percent = |count: usize| 100.0 * count as f64 / self.words as f64;
        0.1935 * percent(self.many) + 0.1672 * self.words_a_sentence() + 0.1297 * percent(self.long)
            - 0.0327 * percent(self.short)
            - 0.875
    }

    /// The ease of a Spanish text, about 0 to 100; easier when higher. The formula is often printed with the number of
    /// sentences where the length of a sentence belongs.
    /// Source: `[FernandezHuerta1959]`, mended by `[Law2011]`.
    fn fernandez_huerta(&self) -> f64 {
        206.84 - 60.0 * self.syllables_a_word() - 1.02 * self.words_a_sentence()
    }

    /// The ease of a French text, about 0 to 100; easier when higher.
    /// Source: `[KandelMoles1958]`.
    fn kandel_moles(&self) -> f64 {
        207.0 - 1.015 * self.words_a_sentence() - 73.6 * self.syllables_a_word()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Tongue, files};

    fn score(text: &str, language: Language) -> f64 {
        ease(text, language).unwrap().score
    }

    /// 13 words, 24 syllables, grade 11.3: the example of the encyclopedia article on the formula (read in an excerpt).
    #[test]
    fn the_english_example_has_its_published_grade() {
        let text = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
        let counts = Counts::of(text, Language::En);
        assert_eq!((counts.words, counts.syllables, counts.sentences), (13, 24, 1));
        assert!((score(text, Language::En) - 11.3).abs() < 0.05);
        // Words of one syllable, 6 in a sentence: 0.39 * 6 + 11.8 - 15.59 by hand.
        assert!((score("The cat sat on the mat.", Language::En) + 1.45).abs() < 1e-9);
    }

    /// The values that the tests of the package wortsalat hold, to one decimal; counted by hand too.
    #[test]
    fn german_examples_have_their_published_school_year() {
        assert!((score("Ein einzelner Satz.", Language::De) - 8.2).abs() < 0.05);
        let two = "Das hier ist ein Beispielsatz. Hier kommt der nächste.";
        assert!((score(two, Language::De) - 2.4).abs() < 0.05);
        let counts = Counts::of(two, Language::De);
        let by_hand = Counts { sentences: 2, words: 9, syllables: 12, short: 7, many: 1, long: 2 };
        assert_eq!(counts, by_hand);
    }

    /// The values that the tests of the package yoastseo hold: 100 sentences of 10 words of 2.5 syllables in Spanish, 20
    /// sentences of 20 words of 1.5 syllables in French.
    #[test]
    fn spanish_and_french_counts_have_their_published_ease() {
        let spanish = Counts { sentences: 100, words: 1000, syllables: 2500, ..Counts::default() };
        assert!((spanish.score(Language::Es) - 46.6).abs() < 0.05);
        let french = Counts { sentences: 20, words: 400, syllables: 600, ..Counts::default() };
        assert!((french.score(Language::Fr) - 76.3).abs() < 0.05);
    }

    #[test]
    fn sentences_end_at_marks_and_at_lines() {
        let of = |text| sentences(text).iter().map(Vec::len).collect::<Vec<_>>();
        assert_eq!(of("Look. Wait 2.5 s, then look again!\nA title\n\n“Is it there?” Yes … no."), [1, 6, 2, 3, 1, 1]);
        assert_eq!(of("Est-ce loin\u{a0}? Oui\u{a0}: très loin."), [2, 3]);
        assert_eq!(of(" … ?\n"), [0; 0]);
        assert_eq!(ease("…", Language::En), None);
    }

    /// Files whose words readers of a book see; what professionals and makers read may be harder.
    const FOR_READERS: &[&str] = &[
        "kinds",
        "readiness",
        "fusion",
        "steps",
        "choice",
        "dots",
        "artwork",
        "gated",
        "page",
        "front",
        "checks",
        "parts",
        "back",
    ];

    /// The built-in sentences of a language, a line each, with a common noun for what a message leaves open.
    fn built_in(language: Language) -> Vec<String> {
        let tongue = Tongue::of(language);
        let noun = tongue.say("shape-ring");
        let files = files::of(language).iter().filter(|(name, _)| FOR_READERS.contains(name));
        let ids = files.flat_map(|(_, text)| text.lines().filter_map(|line| line.split_once(" = ").map(|(id, _)| id)));
        let told = ids.filter(|id| id.starts_with(char::is_alphabetic)).map(|id| tongue.say(id));
        // Labels and names are no sentences: they would only shorten the mean.
        let whole = told.filter(|text| text.ends_with(['.', '!', '?']));
        whole
            .map(|text| {
                text.split("{$")
                    .map(|part| part.split_once('}').map_or(part.to_owned(), |(_, rest)| format!("{noun}{rest}")))
                    .collect()
            })
            .collect()
    }

    #[test]
    fn built_in_words_are_easy_to_read_in_every_language() {
        for language in Language::ALL {
            let lines = built_in(language);
            let reading = ease(&lines.join("\n"), language).unwrap();
            assert!(100 < lines.len(), "{language:?}: {}", lines.len());
            let longest = lines.iter().flat_map(|line| sentences(line)).max_by_key(Vec::len).unwrap_or_default();
            assert!(reading.is_easy(), "{reading:?}");
            assert!(reading.counts.words_a_sentence() < 20.0, "{reading:?}, longest: {}", longest.join(" "));
        }
    }
}
