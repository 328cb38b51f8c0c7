//! The author's words in other languages: each exercise is read once more with the words of a translation in place of its
//! own, and everything that is missing is told at once.

use std::collections::BTreeMap;

use crate::diagnostics::{Diagnostic, Diagnostics, FileId, Place, Sources, codes};
use crate::exercise::{Exercise, read_exercise};
use crate::language::Language;
use crate::outline;
use crate::spec::SetSpec;
use crate::spec::picture::Pictures;
use crate::spec::read::Placed;
use crate::spec::reader::{Plan, Reader};
use crate::spec::readers::ReaderSpec;
use crate::spec::set::{SetWords, read_words};
use crate::spec::translation::{PLURALS, Said, Translation, Words, WordsFile, stray};

/// A set in one more language than its own.
#[derive(Debug)]
pub struct Translated {
    /// The language.
    pub language: Language,
    /// What the set says of itself, where it could be read.
    pub words: Option<SetWords>,
    /// The exercises that could be read, in the order of the book.
    pub exercises: Vec<Exercise>,
}

/// An exercise file that the set lists.
#[derive(Debug)]
pub(super) struct Listed {
    pub(super) file: FileId,
    /// The id of the exercise.
    pub(super) stem: String,
    /// Where it is listed.
    pub(super) place: Place,
    /// How far the series of the set have come before it.
    pub(super) plan: Plan,
}

/// What is read in other languages.
pub(super) struct Work<'a> {
    pub(super) sources: &'a Sources,
    pub(super) pictures: &'a dyn Pictures,
    /// `set.toml`.
    pub(super) set: FileId,
    pub(super) exercises: &'a [Listed],
}

/// The languages of editions and readers, but for that of the set, each with the first place that asks for it.
pub(super) fn wanted(set: &SetSpec, readers: &[ReaderSpec]) -> BTreeMap<&'static str, (Language, Place)> {
    let editions = set.editions.iter().map(|edition| (edition.language, edition.place));
    let readers = readers.iter().filter_map(|reader| Some((reader.language?, reader.place)));
    let mut wanted = BTreeMap::new();
    for (language, place) in editions.chain(readers).filter(|(language, _)| *language != set.language) {
        wanted.entry(language.tag()).or_insert((language, place));
    }
    wanted
}

/// That a translation is there and nothing asks for its language.
pub(super) fn orphan(translation: &Translation) -> Diagnostic {
    let message = format!("no edition and no reader is in `{}`", translation.language.tag());
    Diagnostic::warning(codes::ORPHAN, translation.place, message)
        .with_label("used by nothing")
        .with_help(format!("add an edition with `language = \"{}\"`, or leave it out", translation.language.tag()))
}

/// Words without a translation: of the set, or of an exercise, with what holds them and the words.
type Missing = (String, Vec<Said>);

impl Work<'_> {
    /// Reads everything in a language; `words` is its file, if there is one, and its path, if one is named; `asked` is where
    /// it is asked for. Problems that are known are not told again.
    pub(super) fn read(
        &self,
        language: Language,
        words: Option<(Option<FileId>, &str)>,
        asked: Option<Place>,
        known: &mut Diagnostics,
    ) -> Translated {
        let (mut found, mut in_words) = (Diagnostics::new(), Diagnostics::new());
        let ids: Vec<&str> = self.exercises.iter().map(|listed| listed.stem.as_str()).collect();
        let (id, path) = (words.and_then(|(file, _)| file), words.map(|(_, path)| path));
        let file = id.map(|file| WordsFile::parse(&mut Reader::new(self.sources, file, &mut in_words), &ids));
        let none = |of_set| Words { file: self.set, table: None, of_set };
        let mut missing = Vec::new();
        let mut note = |head: String, said: &[Said]| {
            let gaps: Vec<Said> = said.iter().filter(|said| !said.translated).cloned().collect();
            missing.extend((!gaps.is_empty()).then_some((head, gaps)));
        };
        let of_set = file.as_ref().map_or(none(true), WordsFile::of_set);
        let mut reader = Reader::new(self.sources, self.set, &mut found).in_words(of_set);
        let mut set = read_words(&mut reader);
        for table in ["set", "licence", "release"] {
            note(table.to_owned(), &below(table, reader.said()));
        }
        let mut texts = told_in(id, &reader);
        finish(reader, of_set, "the set", set.is_some());
        let mut exercises = Vec::new();
        for listed in self.exercises {
            let words = file.as_ref().map_or(none(false), |file| file.of_exercise(&listed.stem));
            let reader = Reader::new(self.sources, listed.file, &mut found).in_words(words);
            let mut reader = reader.with_pictures(self.pictures);
            reader.plan = listed.plan.clone();
            let read = read_exercise(&mut reader, &listed.stem);
            note(format!("exercise.{}", listed.stem), reader.said());
            texts.extend(told_in(id, &reader));
            finish(reader, words, &format!("exercise `{}`", listed.stem), read.is_some());
            exercises.extend(read);
        }
        found.extend(asked.and_then(|place| untranslated(language, path, place, &missing)));
        drop(file);
        if let Some(set) = &mut set {
            set.texts = texts;
        }
        known.extend_new(in_words.into_iter().chain(found));
        Translated { language, words: set, exercises }
    }
}

/// The texts that a reader took from a file of translations.
fn told_in(file: Option<FileId>, reader: &Reader<'_>) -> Vec<(String, Place)> {
    let told = reader.texts().iter().filter(|text| Some(text.place.file) == file);
    told.map(|text| (text.value.clone(), text.place)).collect()
}

/// Tells of words that nothing asks for, where all of the file was `read`, and of letters that cannot be set.
fn finish(mut reader: Reader<'_>, words: Words<'_>, whose: &str, read: bool) {
    let strays = if read { stray(&reader, words, whose, reader.said()) } else { Vec::new() };
    let unset = unset(reader.texts());
    strays.into_iter().chain(unset).for_each(|problem| reader.push(problem));
}

/// The problems of texts with a letter that the typeface does not have.
pub(super) fn unset(texts: &[Placed<String>]) -> Vec<Diagnostic> {
    // What stands for another character, shows at line ends alone, or is joined to the letter before it. A control
    // character is a problem of its own.
    let aside = |c: char| c.is_control() || matches!(c, 'µ' | '∆' | '\u{ad}' | '\u{300}'..='\u{36f}');
    let plain = |text: &str| text.replace(aside, "");
    let missing = texts.iter().filter_map(|text| Some((outline::missing(&plain(&text.value))?, text.place)));
    let problem = |(character, place): (char, Place)| {
        Diagnostic::error(codes::TEXT, place, format!("the typeface has no `{character}`"))
            .with_label("cannot be set")
            .with_help("write it with letters of the Latin alphabet")
    };
    missing.map(problem).collect()
}

/// All words that have no translation into a language, as one problem with what to add.
fn untranslated(language: Language, path: Option<&str>, place: Place, missing: &[Missing]) -> Option<Diagnostic> {
    let count: usize = missing.iter().map(|(_, said)| said.len()).sum();
    let tag = language.tag();
    let texts = if count == 1 { "1 text".to_owned() } else { format!("{count} texts") };
    let to = match path {
        Some(path) => format!("translate them in `{path}`"),
        None => format!("add `[[translation]]` with `language = \"{tag}\"` and a `file`, and translate them there"),
    };
    let stub: String = missing.iter().map(stub).collect();
    (0 < count).then(|| {
        let message = format!("{texts} of the author without a translation into `{tag}`");
        Diagnostic::error(codes::UNTRANSLATED, place, message)
            .with_label(format!("in `{tag}`"))
            .with_help(format!("{to}:\n{}", stub.trim_end()))
    })
}

/// Those of the words of the set that stand in one table, by their keys in it.
fn below(table: &str, said: &[Said]) -> Vec<Said> {
    let key = |said: &Said| Some(said.key.strip_prefix(table)?.strip_prefix('.')?.to_owned());
    said.iter().filter_map(|said| Some(Said { key: key(said)?, ..said.clone() })).collect()
}

/// What is missing of one table, to be pasted and translated.
fn stub((head, said): &Missing) -> String {
    let mut out = format!("[{head}]\n");
    let single = said.iter().filter(|said| said.key.split_once('.').is_none_or(|(first, _)| !PLURALS.contains(&first)));
    out.extend(single.map(|said| format!("{} = {}\n", said.key, said.written)));
    for plural in PLURALS {
        let pairs: Vec<_> = below(plural, said).iter().map(|said| format!("{} = {}", said.key, said.written)).collect();
        if !pairs.is_empty() {
            out.push_str(&format!("{plural} = {{ {} }}\n", pairs.join(", ")));
        }
    }
    out
}
