//! The claim words of each language, with what denies them.
//!
//! The lists are our own, after what rules on medical claims commonly look for; no source. Local rules may ask for more.
//! Accents count: `curé` (a priest) is not `cure`.

use crate::language::Language;

/// A beginning of words with the endings that make a word of it.
pub(super) type Stem = (&'static str, &'static [&'static str]);

/// Verbs with what they claim an effect on.
pub(super) type Effect = (&'static [Stem], &'static [&'static str]);

/// What counts as a claim in a language.
pub(super) struct Lists {
    /// Treat, cure, diagnose: words that are errors.
    pub refused: &'static [Stem],
    /// Test, heal, therapy, normal: words that are warnings.
    pub doubtful: &'static [Stem],
    /// Correct, fix, repair: warnings too, but not where the book speaks of itself.
    pub mending: &'static [Stem],
    /// Improve, restore, strengthen, and what they are a warning with, a few words before or after them.
    pub effects: &'static [Effect],
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
        ("test", &["", "s", "ed", "ing"]),
        ("heal", &["", "s", "ed", "ing"]),
        ("therap", &["y", "ies", "eutic"]),
        ("remed", &["y", "ies", "ied", "ying", "ial"]),
        ("normal", &[""]),
        ("abnormal", &[""]),
    ],
    // `fix` alone is what eyes do to a target.
    mending: &[
        ("correct", &["", "s", "ed", "ing", "ion", "ive"]),
        ("fix", &["es"]),
        ("repair", &["", "s", "ed", "ing"]),
    ],
    effects: &[
        (
            &[
                ("improv", &["e", "es", "ed", "ing", "ement", "ements"]),
                ("restor", &["e", "es", "ed", "ing", "ation"]),
                ("strengthen", &["", "s", "ed", "ing"]),
            ],
            &["vision", "sight", "eyesight", "eye", "eyes", "stereo", "stereopsis", "acuity", "squint", "amblyopia"],
        ),
        (
            &[("fix", &["", "ed", "ing"]), ("train", &["", "s", "ed", "ing"])],
            &["vision", "eyesight", "stereo", "stereopsis", "squint", "amblyopia"],
        ),
    ],
    joined: &[],
    pairs: (
        &["clinically", "scientifically", "train", "trains", "trained", "training"],
        &[("proven", &[""]), ("away", &[""])],
    ),
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
        ("test", &["", "s", "e", "en", "et", "ete", "eten"]),
        ("getestet", ADJECTIVE),
        ("sehtest", &["", "s"]),
        ("augentest", &["", "s"]),
        ("stereotest", &["", "s"]),
        ("kur", &["", "en"]),
        ("therap", &["ie", "ien", "ieren", "iert", "ierte", "ierten"]),
        ("therapeutisch", ADJECTIVE),
        ("wegtrainier", &["en", "e", "t", "te", "ten"]),
        ("wegzutrainieren", &[""]),
        ("normal", ADJECTIVE),
        ("abnormal", ADJECTIVE),
        ("anormal", ADJECTIVE),
    ],
    mending: &[
        ("korrigier", &["en", "e", "t", "te", "ten", "end"]),
        ("korrektur", &["", "en"]),
        ("korrekt", ADJECTIVE),
        ("beheb", &["en", "e", "t", "ung"]),
        ("behob", &["", "en"]),
        ("reparier", &["en", "e", "t", "te", "ten"]),
        ("repariert", ADJECTIVE),
    ],
    effects: &[
        (
            &[
                ("verbesser", &["n", "e", "t", "te", "ten", "nd", "ung", "ungen"]),
                ("verbessert", ADJECTIVE),
                ("stärk", &["en", "e", "t", "te", "ten", "end", "ung"]),
                ("gestärkt", ADJECTIVE),
                ("wiederherstell", &["en", "e", "t", "te", "ten", "ung"]),
                ("wiederhergestellt", ADJECTIVE),
                ("wiederherzustellen", &[""]),
                ("trainier", &["en", "e", "t", "te", "ten"]),
            ],
            &[
                "sehen",
                "sehkraft",
                "sehvermögen",
                "sehleistung",
                "sehschärfe",
                "augenlicht",
                "stereosehen",
                "tiefensehen",
                "raumsehen",
                "schielen",
            ],
        ),
        (&[("trainier", &["en", "e", "t", "te", "ten"])], &["weg"]),
        (&[("verbesser", &["n", "t", "te", "ten"]), ("stärk", &["en", "t", "te", "ten"])], &["auge", "augen"]),
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
        ("test", &["", "s"]),
        ("prueba", &["", "s"]),
        ("san", &["ar", "ará", "arán", "ación", "aciones"]),
        ("terapia", &["", "s"]),
        ("terapéutic", O),
        ("remedi", &["o", "os", "ar", "a", "an", "ará", "arán"]),
        ("normal", &["", "es"]),
        ("anormal", &["", "es"]),
    ],
    mending: &[
        ("correg", &["ir", "imos", "irá", "irán"]),
        ("corr", &["ige", "igen", "ija", "ijan", "igiendo", "ección", "ecciones"]),
        ("corregid", O),
        ("correct", O),
        ("correctiv", O),
        ("corrector", &["", "a", "es", "as"]),
        ("arregl", &["ar", "a", "an", "ó", "ará", "arán", "ando"]),
        ("arreglad", O),
        ("repar", &["ar", "a", "an", "ó", "ará", "arán", "ando", "ación"]),
        ("reparad", O),
    ],
    effects: &[(
        &[
            ("mejor", &["ar", "a", "an", "ó", "ará", "arán", "ando", "as"]),
            ("mejorad", O),
            ("restaur", &["ar", "a", "an", "ó", "ará", "arán", "ando"]),
            ("recuper", &["ar", "a", "ará", "arán", "ando"]),
            ("restablec", &["er", "e", "en", "erá", "erán", "iendo"]),
            ("fortalec", &["er", "e", "en", "erá", "erán", "iendo"]),
            ("refuerz", &["a", "an"]),
            ("reforz", &["ar", "ará", "arán", "ando"]),
            ("devuelv", &["e", "en"]),
            ("devolver", &["", "á", "án"]),
            ("entren", &["ar", "a", "an"]),
            ("san", &["a", "an"]),
            ("elimin", &["ar", "a", "an", "ará", "arán"]),
        ],
        &["vista", "visión", "ojo", "ojos", "estereopsis", "estrabismo", "ambliopía"],
    )],
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
        ("test", &["", "s", "er", "e", "es", "ent", "ons", "ez"]),
        ("test", E),
        ("soign", E),
        ("thérapi", &["e", "es"]),
        ("thérapeutique", &["", "s"]),
        ("remède", &["", "s"]),
        ("remédi", &["er", "e", "ent", "era", "eront"]),
        ("norma", &["l", "le", "les", "ux"]),
        ("anorma", &["l", "le", "les", "ux"]),
    ],
    mending: &[
        // `corrigé` is what the key is called: it is left out.
        ("corrig", &["er", "e", "es", "ent", "eons", "ez", "era", "eront", "ée", "ées"]),
        ("correct", &["", "e", "s", "es", "ion", "ions", "if", "ifs", "ive", "ives", "eur", "eurs", "rice"]),
        ("répar", &["er", "e", "ent", "era", "eront", "ant", "ation"]),
        ("répar", E),
    ],
    effects: &[(
        &[
            ("amélior", &["er", "e", "ent", "ons", "ez", "era", "eront", "ant", "ation", "ations"]),
            ("amélior", E),
            ("restaur", &["er", "e", "ent", "era", "eront", "ant", "ation"]),
            ("restaur", E),
            ("récupér", &["er", "era", "eront"]),
            ("récupèr", &["e", "ent"]),
            ("rétabli", &["", "r", "t", "ssent", "ra", "ront", "ssant", "e", "s", "es"]),
            ("renforc", &["er", "e", "ent", "era", "eront", "ant"]),
            ("rend", &["", "re", "ra", "ent", "ront"]),
            ("entraîn", &["er", "e", "ent"]),
            ("élimin", &["er", "e", "ent", "era", "eront"]),
        ],
        &["vue", "vision", "œil", "yeux", "stéréo", "stéréopsie", "strabisme", "amblyopie"],
    )],
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
