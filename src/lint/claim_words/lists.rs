//! The claim words of each language, with what denies them.
//!
//! The lists are our own, after what rules on medical claims commonly look for; no source. Local rules may ask for more.
//! Accents count: `curé` (a priest) is not `cure`.

use crate::language::Language;

/// A beginning of words with the endings that make a word of it.
pub(super) type Stem = (&'static str, &'static [&'static str]);

/// What counts as a claim in a language.
pub(super) struct Lists {
    /// Treat, cure, diagnose: words that are errors.
    pub refused: &'static [Stem],
    /// Correct, test, heal, therapy, normal: words that are warnings.
    pub doubtful: &'static [Stem],
    /// Refused at the end of longer words too, in a language that joins its nouns.
    pub joined: &'static [&'static str],
    /// Two words that are a warning together: any of the first with any of the second.
    pub pairs: (&'static [&'static str], &'static [Stem]),
    /// Words that turn a claim after them into its opposite.
    pub negations: &'static [&'static str],
    /// What may stand between the two.
    pub between: &'static [&'static str],
    /// Words that deny a verb before them.
    pub behind: &'static [&'static str],
    /// Words after a negation or a claim that take the denial back: not *only*.
    pub only: &'static [&'static str],
    /// Verbs that mean something else with one of these words right after them.
    pub harmless: (&'static [Stem], &'static [&'static str]),
}

impl Lists {
    /// The lists of a language.
    pub(super) const fn of(language: Language) -> &'static Self {
        match language {
            Language::En => &ENGLISH,
            Language::De => &GERMAN,
            Language::Es => &SPANISH,
            Language::Fr => &FRENCH,
        }
    }
}

/// Endings of Spanish words in `-o`, and of French participles in `-é`.
const O: &[&str] = &["o", "a", "os", "as"];
const E: &[&str] = &["é", "ée", "és", "ées"];
/// Endings of German adjectives.
const ADJECTIVE: &[&str] = &["", "e", "en", "er", "es", "em"];

const ENGLISH: Lists = Lists {
    refused: &[
        ("treat", &["", "s", "ed", "ing", "ment", "ments"]),
        ("cur", &["e", "es", "ed", "ing"]),
        ("diagnos", &["e", "es", "ed", "ing", "is", "tic"]),
    ],
    doubtful: &[
        ("correct", &["", "s", "ed", "ing", "ion", "ive"]),
        ("test", &["", "s", "ed", "ing"]),
        ("heal", &["", "s", "ed", "ing"]),
        ("therap", &["y", "ies", "eutic"]),
        ("normal", &[""]),
        ("abnormal", &[""]),
    ],
    joined: &[],
    pairs: (&["clinically", "scientifically"], &[("proven", &[""])]),
    negations: &["not", "no", "never", "cannot"],
    between: &["a", "an", "any", "the"],
    behind: &[],
    only: &[],
    harmless: (&[], &[]),
};

const GERMAN: Lists = Lists {
    refused: &[
        ("behand", &["eln", "le", "elst", "elt", "elte", "elten", "elnd", "elbar", "lung", "lungen"]),
        ("behandelt", ADJECTIVE),
        ("heil", &["e", "en", "st", "t", "te", "ten", "end", "ende", "bar", "ung", "ungen"]),
        ("geheilt", ADJECTIVE),
        ("kurier", &["en", "e", "t", "te", "ten"]),
        ("diagnos", &["e", "en", "tik", "tisch", "tische", "tischen", "tischer", "tisches"]),
        ("diagnostizier", &["en", "e", "t", "te", "ten"]),
    ],
    doubtful: &[
        ("korrigier", &["en", "e", "t", "te", "ten", "end"]),
        ("korrektur", &["", "en"]),
        ("korrekt", ADJECTIVE),
        ("test", &["", "s", "e", "en", "et", "ete", "eten"]),
        ("getestet", ADJECTIVE),
        ("sehtest", &["", "s"]),
        ("augentest", &["", "s"]),
        ("stereotest", &["", "s"]),
        ("kur", &["", "en"]),
        ("therap", &["ie", "ien", "ieren", "iert", "ierte", "ierten"]),
        ("therapeutisch", ADJECTIVE),
        ("normal", ADJECTIVE),
        ("abnormal", ADJECTIVE),
        ("anormal", ADJECTIVE),
    ],
    joined: &["behandlung", "behandlungen", "heilung", "heilungen", "diagnose", "diagnosen"],
    pairs: (
        &["klinisch", "wissenschaftlich"],
        &[
            ("bewiesen", ADJECTIVE),
            ("belegt", ADJECTIVE),
            ("erwiesen", ADJECTIVE),
            ("erprobt", ADJECTIVE),
            ("geprüft", ADJECTIVE),
            ("getestet", ADJECTIVE),
        ],
    ),
    negations: &["nicht", "kein", "keine", "keinen", "keinem", "keiner", "keines", "nie", "niemals"],
    between: &["ein", "eine", "einen", "einem", "einer", "eines", "der", "die", "das", "den", "dem", "des"],
    behind: &["nicht", "nichts", "nie", "niemals", "niemanden", "kein", "keine", "keinen"],
    only: &["nur", "allein", "bloß"],
    harmless: (&[], &[]),
};

const SPANISH: Lists = Lists {
    refused: &[
        ("trat", &["ar", "a", "an", "amos", "e", "en", "ando", "ará", "arán", "amiento", "amientos"]),
        ("tratad", O),
        ("cur", &["ar", "a", "as", "an", "amos", "e", "en", "ando", "ará", "arán", "ación", "aciones"]),
        ("curad", O),
        ("curativ", O),
        ("diagnostic", &["ar", "o", "a", "an", "amos", "ando", "ará", "arán"]),
        ("diagnostique", &["", "n"]),
        ("diagnosticad", O),
        ("diagnóstic", O),
        ("diagnosis", &[""]),
    ],
    doubtful: &[
        ("correg", &["ir", "imos", "irá", "irán"]),
        ("corr", &["ige", "igen", "ija", "ijan", "igiendo", "ección", "ecciones"]),
        ("corregid", O),
        ("correct", O),
        ("correctiv", O),
        ("corrector", &["", "a", "es", "as"]),
        ("test", &["", "s"]),
        ("prueba", &["", "s"]),
        ("san", &["ar", "ará", "arán", "ación", "aciones"]),
        ("terapia", &["", "s"]),
        ("terapéutic", O),
        ("normal", &["", "es"]),
        ("anormal", &["", "es"]),
    ],
    joined: &[],
    pairs: (&["clínicamente", "científicamente"], &[("probad", O), ("comprobad", O), ("demostrad", O), ("validad", O)]),
    negations: &["no", "ni", "nunca", "jamás", "ningún", "ninguna", "tampoco"],
    between: &["un", "una", "unos", "unas", "el", "la", "los", "las", "es", "son", "se", "le", "de"],
    behind: &[],
    only: &[],
    // Tratar de: to try to; se trata de: it is about.
    harmless: (&[("trat", &["ar", "a", "an", "amos", "e", "en", "ando", "ará", "arán", "ado"])], &["de", "del"]),
};

const FRENCH: Lists = Lists {
    refused: &[
        ("trait", &["er", "e", "es", "ent", "ons", "ez", "ait", "aient", "era", "eront", "ement", "ements"]),
        ("trait", E),
        ("soign", &["er", "e", "ent", "ons", "ez", "ait", "aient", "era", "eront"]),
        ("guéri", &["", "r", "t", "e", "s", "es", "ssent", "ssons", "ssez", "ssant", "ra", "ront", "son", "sons"]),
        ("cure", &["", "s"]),
        ("curati", &["f", "fs", "ve", "ves"]),
        ("diagnosti", &["c", "cs"]),
        ("diagnostiqu", &["er", "e", "es", "ent", "ons", "ez", "era", "eront"]),
        ("diagnostiqu", E),
    ],
    doubtful: &[
        // `corrigé` is what the key is called: it is left out.
        ("corrig", &["er", "e", "es", "ent", "eons", "ez", "era", "eront", "ée", "ées"]),
        ("correct", &["", "e", "s", "es", "ion", "ions", "if", "ifs", "ive", "ives", "eur", "eurs", "rice"]),
        ("test", &["", "s", "er", "e", "es", "ent", "ons", "ez"]),
        ("test", E),
        ("soign", E),
        ("thérapi", &["e", "es"]),
        ("thérapeutique", &["", "s"]),
        ("norma", &["l", "le", "les", "ux"]),
        ("anorma", &["l", "le", "les", "ux"]),
    ],
    joined: &[],
    pairs: (
        &["cliniquement", "scientifiquement"],
        &[("prouv", E), ("éprouv", E), ("test", E), ("valid", E), ("démontr", E)],
    ),
    negations: &["pas", "ne", "n", "ni", "jamais", "aucun", "aucune"],
    between: &["un", "une", "des", "le", "la", "les", "l", "de", "d", "du"],
    behind: &[],
    only: &["que", "qu"],
    // Traiter de: to be about.
    harmless: (
        &[("trait", &["er", "e", "es", "ent", "ons", "ez", "ait", "aient", "era", "eront", "é"])],
        &["de", "du", "d"],
    ),
};
