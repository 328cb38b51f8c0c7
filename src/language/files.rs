//! The Fluent files, bound into the program.

use super::Language;

/// Every file of every language: one line a file.
macro_rules! files {
    ($($file:literal),* $(,)?) => {
        /// The texts of the files of a language, each with its name.
        pub(super) const fn of(language: Language) -> &'static [(&'static str, &'static str)] {
            match language {
                Language::En => &[$(($file, include_str!(concat!("en/", $file, ".ftl")))),*],
                Language::De => &[$(($file, include_str!(concat!("de/", $file, ".ftl")))),*],
                Language::Es => &[$(($file, include_str!(concat!("es/", $file, ".ftl")))),*],
                Language::Fr => &[$(($file, include_str!(concat!("fr/", $file, ".ftl")))),*],
            }
        }
    };
}

files! {
    "common",
    "things",
    "kinds",
    "readiness",
    "fusion",
    "steps",
    "choice",
    "dots",
    "artwork",
    "gated",
    "page",
    "pictures",
    "front",
    "checks",
    "back",
    "parts",
    "professional",
    "charts",
    "inks",
    "bundle",
}
