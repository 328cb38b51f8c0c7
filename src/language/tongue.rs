//! A language that can be told things in: its messages, its numbers and its nouns.

use std::borrow::Cow;
use std::fmt;
use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::units::{Mm, PrismDioptre, plain};

use super::{Language, Noun, files};

/// What stands in for a variable of a message.
#[derive(Debug, Clone)]
pub enum Arg<'a> {
    /// A whole number, which the plural forms of a message go by.
    Count(u32),
    /// A number with decimals, which plural forms go by; what is read comes [written](Tongue::number) beside it.
    Measure(f64),
    /// Words as they are; numbers with decimals come [written](Tongue::number).
    Words(Cow<'a, str>),
    /// A noun with all of its forms.
    Noun(&'a Noun),
}

impl From<u32> for Arg<'_> {
    fn from(count: u32) -> Self {
        Arg::Count(count)
    }
}

impl From<usize> for Arg<'_> {
    fn from(count: usize) -> Self {
        Arg::Count(u32::try_from(count).unwrap_or(u32::MAX))
    }
}

impl From<f64> for Arg<'_> {
    fn from(measure: f64) -> Self {
        Arg::Measure(measure)
    }
}

impl<'a> From<&'a str> for Arg<'a> {
    fn from(words: &'a str) -> Self {
        Arg::Words(Cow::Borrowed(words))
    }
}

impl<'a> From<&'a String> for Arg<'a> {
    fn from(words: &'a String) -> Self {
        Arg::Words(Cow::Borrowed(words))
    }
}

impl From<String> for Arg<'_> {
    fn from(words: String) -> Self {
        Arg::Words(Cow::Owned(words))
    }
}

impl<'a> From<&'a Noun> for Arg<'a> {
    fn from(noun: &'a Noun) -> Self {
        Arg::Noun(noun)
    }
}

/// The messages of a language.
pub struct Tongue {
    language: Language,
    bundle: FluentBundle<FluentResource>,
}

impl fmt::Debug for Tongue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Tongue({})", self.language.tag())
    }
}

impl Tongue {
    /// The messages of a language; its files are read once.
    pub fn of(language: Language) -> &'static Self {
        static TONGUES: [OnceLock<Tongue>; 4] = [const { OnceLock::new() }; 4];
        TONGUES[language as usize].get_or_init(|| Self::read(language, None))
    }

    /// English with every built-in word longer by two letters in five: a language that nobody speaks, to see that pages have room
    /// for one that takes more of it. For the tests of the layout.
    pub fn stretched() -> &'static Self {
        static STRETCHED: OnceLock<Tongue> = OnceLock::new();
        STRETCHED.get_or_init(|| Self::read(Language::En, Some(|words| Cow::Owned(stretch(words)))))
    }

    /// `written` is done to what stands in the files, not to what is told in its place.
    fn read(language: Language, written: Option<fn(&str) -> Cow<'_, str>>) -> Self {
        let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // Isolation marks have no glyph, and no language here runs from right to left.
        bundle.set_use_isolating(false);
        bundle.set_transform(written);
        for (_, text) in files::of(language) {
            // What cannot be read is left out, and a test of the files says where.
            let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(readable, _)| readable);
            bundle.add_resource_overriding(resource);
        }
        Self { language, bundle }
    }

    /// Its language.
    pub fn language(&self) -> Language {
        self.language
    }

    /// The words of a message without variables.
    pub fn say(&self, id: &str) -> String {
        self.tell(id, &[])
    }

    /// The words of a message with these variables. A message that is not there comes out as its id in braces, and so
    /// does a variable that is not given: the tests look for braces on every page.
    pub fn tell(&self, id: &str, args: &[(&str, Arg<'_>)]) -> String {
        let mut given = FluentArgs::new();
        for (name, arg) in args {
            give(&mut given, name, arg);
        }
        let pattern = self.bundle.get_message(id).and_then(|message| message.value());
        let words = pattern.map(|pattern| self.bundle.format_pattern(pattern, Some(&given), &mut Vec::new()));
        words.map_or_else(|| format!("{{{id}}}"), Cow::into_owned)
    }

    /// Whether there is a message of this id.
    pub fn has(&self, id: &str) -> bool {
        self.bundle.has_message(id)
    }

    /// A noun with its forms: the message of this id with its attributes.
    pub fn noun(&self, id: &str) -> Noun {
        let Some(message) = self.bundle.get_message(id) else { return Noun::bare(format!("{{{id}}}")) };
        let words = |pattern| self.bundle.format_pattern(pattern, None, &mut Vec::new()).into_owned();
        let one = message.value().map_or_else(|| format!("{{{id}}}"), words);
        let forms = message.attributes().map(|form| (form.id().to_owned(), words(form.value())));
        Noun { one, forms: forms.collect() }
    }

    /// What stands before the decimals of a number.
    pub fn decimal_mark(&self) -> &'static str {
        self.language.decimal_mark()
    }

    /// A number with at most so many decimals and the decimal mark of the language.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        plain(value, decimals).replace('.', self.language.decimal_mark())
    }

    /// A length in centimetres: "40.5 cm".
    pub fn cm(&self, length: Mm, decimals: usize) -> String {
        self.tell("unit-cm", &[("n", self.number(length.0 / 10.0, decimals).into())])
    }

    /// A length in millimetres: "3.2 mm".
    pub fn mm(&self, length: Mm, decimals: usize) -> String {
        self.tell("unit-mm", &[("n", self.number(length.0, decimals).into())])
    }

    /// A demand in prism dioptres, without its sign: "2.5 pd".
    pub fn pd(&self, demand: PrismDioptre, decimals: usize) -> String {
        self.tell("unit-pd", &[("n", self.number(demand.0.abs(), decimals).into())])
    }

    /// A disparity in arc seconds, without its sign: "800 arcsec".
    pub fn arcsec(&self, disparity: f64) -> String {
        self.tell("unit-arcsec", &[("n", self.number(disparity.abs(), 0).into())])
    }

    /// "a", "a and b", "a, b and c".
    pub fn list(&self, words: &[String]) -> String {
        match words {
            [] => String::new(),
            [only] => only.clone(),
            [first @ .., last] => self.tell("list-last", &[("first", first.join(", ").into()), ("last", last.into())]),
        }
    }
}

fn give<'a>(given: &mut FluentArgs<'a>, name: &str, arg: &'a Arg<'_>) {
    match arg {
        Arg::Count(count) => given.set(name.to_owned(), FluentValue::from(*count)),
        Arg::Measure(measure) => given.set(name.to_owned(), FluentValue::from(*measure)),
        Arg::Words(words) => given.set(name.to_owned(), FluentValue::from(&**words)),
        Arg::Noun(noun) => {
            given.set(name.to_owned(), FluentValue::from(noun.one.as_str()));
            for (form, words) in &noun.forms {
                given.set(format!("{name}-{form}"), FluentValue::from(words.as_str()));
            }
        }
    }
}

/// Every run of letters longer by two letters in five, with an accent, so that it is seen where it is not.
fn stretch(words: &str) -> String {
    let mut stretched = String::with_capacity(words.len() * 3 / 2);
    let mut letters = 0;
    for character in words.chars().chain([' ']) {
        if character.is_alphabetic() {
            letters += 1;
        } else {
            // Rounded up: short words grow more than long ones, as they do in German.
            stretched.extend(std::iter::repeat_n('ë', (letters * 2_usize).div_ceil(5)));
            letters = 0;
        }
        stretched.push(character);
    }
    stretched.pop();
    stretched
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_take_the_mark_of_their_language() {
        assert_eq!(Tongue::of(Language::En).number(40.5, 2), "40.5");
        assert_eq!(Tongue::of(Language::De).number(40.5, 2), "40,5");
        assert_eq!(Tongue::of(Language::Fr).number(40.0, 1), "40");
    }

    #[test]
    fn a_stretched_word_is_two_letters_in_five_longer() {
        assert_eq!(stretch("a boats, 40 cm"), "aë boatsëë, 40 cmë");
    }

    #[test]
    fn what_is_not_there_is_seen() {
        assert_eq!(Tongue::of(Language::En).say("no-such-message"), "{no-such-message}");
    }
}
