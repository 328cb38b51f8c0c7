//! Syllables of a word by its vowels: one rule a language, in a few lines, no word list.
//!
//! A run of vowels is one syllable, but for the vowels that a language keeps apart, and its mute `e`. A figure is a
//! syllable. Rules of this size miss some words; a readability formula is a mean over many.
//!
//! Source: design choice; each rule is common practice, held by counts by hand in the tests.

use super::Language;

/// How many syllables a word has, at least 1.
pub(super) fn count(word: &str, language: Language) -> usize {
    let lower = word.to_lowercase();
    let figures = lower.chars().filter(char::is_ascii_digit).count();
    let whole = lower.replace(['’', '\''], "");
    let pieces = whole.split(|c: char| !c.is_alphabetic());
    let spoken: usize = pieces.map(|piece| of_letters(&piece.chars().collect::<Vec<_>>(), language)).sum();
    (figures + spoken).max(1)
}

/// The syllables of a piece of a word without figures or marks; 0 without a vowel.
fn of_letters(letters: &[char], language: Language) -> usize {
    let heard = heard(letters, language);
    let mut syllables = 0;
    // The vowel before, and whether it has joined with the one before it.
    let mut last: Option<(char, bool)> = None;
    for (i, &letter) in heard.iter().enumerate() {
        if !is_vowel(&heard, i, language) {
            last = None;
            continue;
        }
        let joins = last.is_some_and(|(before, joined)| join((before, joined), letter, &heard[i..], language));
        syllables += usize::from(!joins);
        last = Some((letter, joins));
    }
    let mute = usize::from(1 < syllables && ends_mute(&heard, language));
    syllables - mute
}

/// The letters without a `u` that is only written: after `q`, and after `g` before `e` and `i` in Spanish and French.
fn heard(letters: &[char], language: Language) -> Vec<char> {
    let before = |i: usize| i.checked_sub(1).and_then(|i| letters.get(i));
    let is_written = |i: usize| match before(i) {
        Some('q') => true,
        Some('g') if matches!(language, Language::Es | Language::Fr) => {
            matches!(letters.get(i + 1), Some('e' | 'é' | 'è' | 'ê' | 'i' | 'í'))
        }
        _ => false,
    };
    letters
        .iter()
        .enumerate()
        .filter(|&(i, &letter)| letter != 'u' || !is_written(i))
        .map(|(_, &letter)| letter)
        .collect()
}

/// Whether the letter here is a vowel. A `y` between vowels is none but in `eye`, nor any Spanish `y` but the last.
fn is_vowel(letters: &[char], i: usize, language: Language) -> bool {
    let plain = |i: usize| letters.get(i).is_some_and(|letter| "aeiouäöüàâéèêëîïôùûœæáíóú".contains(*letter));
    match letters.get(i) {
        Some('y') if language == Language::Es => i + 1 == letters.len(),
        Some('y')
            if language == Language::En && letters[..i].ends_with(&['e']) && letters[i..].starts_with(&['y', 'e']) =>
        {
            true
        }
        Some('y') => !(0 < i && plain(i - 1) && plain(i + 1)),
        _ => plain(i),
    }
}

/// Whether a vowel is in one syllable with the vowel before it; `rest` begins with it.
fn join((before, joined): (char, bool), vowel: char, rest: &[char], language: Language) -> bool {
    match language {
        // Being, seeing.
        Language::En => !matches!(rest, ['i', 'n', 'g'] | ['i', 'n', 'g', 's']),
        // Two vowels that are one sound.
        Language::De => {
            !joined
                && ["ie", "ei", "ai", "au", "eu", "äu", "aa", "ee", "oo"]
                    .iter()
                    .any(|pair| pair.chars().eq([before, vowel]))
        }
        // Two strong vowels stand apart; a weak one with an accent is strong.
        Language::Es => {
            let is_weak = |vowel: char| matches!(vowel, 'i' | 'u' | 'ü' | 'y');
            is_weak(before) || is_weak(vowel)
        }
        // É stands apart from what follows, but for a mute end; so do vowels with two dots, and o before é and a.
        Language::Fr => match (before, vowel) {
            ('é', 'e') => true,
            ('é', _) | (_, 'ï' | 'ë' | 'ü') | ('o', 'é' | 'è' | 'a') => false,
            _ => true,
        },
    }
}

/// Whether the last `e` is not heard.
fn ends_mute(letters: &[char], language: Language) -> bool {
    let is_consonant = |letter: char| !"aeiouyäöüàâéèêëîïôùûœæ".contains(letter);
    match (language, letters) {
        // People, circles: heard.
        (Language::En, [.., before, 'l', 'e'] | [.., before, 'l', 'e', 's']) if is_consonant(*before) => false,
        (Language::En, [.., 'c' | 's', 'h', 'e', 's']) => false,
        (Language::En, [.., before, 'e', 's']) => is_consonant(*before) && !"sxzcg".contains(*before),
        (Language::En, [.., before, 'e', 'd']) => is_consonant(*before) && !"td".contains(*before),
        (Language::En | Language::Fr, [.., before, 'e']) | (Language::Fr, [.., before, 'e', 's']) => {
            is_consonant(*before)
        }
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Counts by hand: words of one syllable, of two, of three and so on.
    fn hold(language: Language, counts: &[&str]) {
        for (syllables, words) in (1..).zip(counts) {
            for word in words.split(' ') {
                assert_eq!(count(word, language), syllables, "{word}");
            }
        }
    }

    #[test]
    fn english_words_have_the_syllables_that_are_heard() {
        hold(
            Language::En,
            &[
                "the eye eyes shapes look whole one lines queen moved 7 you’re side edge dropped yes",
                "wedges being single player circles ended table faces picture away behind seeing",
                "another together remember nearer-by",
            ],
        );
    }

    #[test]
    fn german_words_have_the_syllables_that_are_heard() {
        hold(
            Language::De,
            &[
                "Ring Sie auf schräg Punkt vier Quarz reißt",
                "Schauen neue Bauer Auge Beide Seite sehen Quadrat",
                "Dreiecke Übungen Gegenstand",
                "Gegenüber beobachten Nationen",
            ],
        );
    }

    #[test]
    fn spanish_words_have_the_syllables_that_are_heard() {
        hold(
            Language::Es,
            &[
                "y muy que bien dos",
                "ojos leer guía cuña quiere",
                "página anillo mirada veía",
                "todavía diferente señaladas",
            ],
        );
    }

    #[test]
    fn french_words_have_the_syllables_that_are_heard() {
        hold(
            Language::Fr,
            &[
                "les une œil vue yeux qu’un vagues quatre grande",
                "anneau l’anneau jusqu’à néon partie naïf étoile",
                "essayez regardez vérifiez",
            ],
        );
    }
}
