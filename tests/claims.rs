//! Claim words in what is printed or published besides the exercises: each text of a set is looked at, in every language.

use std::fs;

use depthpress::bundle::load::load;
use depthpress::bundle::prepare::prepare;

const SET: &str = r#"[set]
id = "case"
title = "Case"
version = "1.1.0"
date = "2026-05-04"
language = "en"
exercises = ["a.toml"]
author = "AUTHOR"
contact = "CONTACT"

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[licence]
name = "NAME"
text = "TEXT"
credits = ["Paper: the harbour club", "CREDIT"]

[[release]]
version = "1.1.0"
date = "2026-05-04"
changes = ["A first change.", "CHANGE"]

[publish]
watermark = "MARK"

[[translation]]
language = "de"
file = "de.toml"

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 300

[[edition]]
id = "de"
from = "a4"
language = "de"
"#;

const WORDS: &str = r#"[set]
title = "Fall"

[licence]
text = "LIZENZ"
credits = ["Papier: der Hafenverein", "DANK"]

[release]
"1.1.0" = ["Eine Änderung.", "NEUES"]

[exercise.a]
title = "Lampe"
"#;

const EXERCISE: &str = r#"[exercise]
kind = "hold"
title = "Lamp"

[[target]]
shape = "ring"
size = "40 mm"
depth = "2 pd toward"
"#;

/// The codes of the claims in a set with one word written as this text.
fn claims(word: &str, text: &str) -> Vec<&'static str> {
    let dir = tempfile::tempdir().unwrap();
    for (name, body) in [("set.toml", SET), ("de.toml", WORDS), ("a.toml", EXERCISE)] {
        fs::write(dir.path().join(name), body.replace(&format!("{word}\""), &format!("{text}\""))).unwrap();
    }
    let prepared = prepare(load(dir.path()).unwrap(), None);
    assert!(prepared.set.is_some(), "{word}");
    let codes = prepared.diagnostics.iter().map(|found| found.code);
    codes.filter(|code| code.ends_with("-CLAIM")).collect()
}

#[test]
fn every_text_of_a_set_is_looked_at() {
    assert_eq!(claims("NONE", ""), [""; 0]);
    for word in ["AUTHOR", "CONTACT", "NAME", "TEXT", "CREDIT", "CHANGE", "MARK"] {
        assert_eq!(claims(word, "It treats eyes."), ["E-CLAIM"], "{word}");
        assert_eq!(claims(word, "It improves your sight."), ["W-CLAIM"], "{word}");
        assert_eq!(claims(word, "It lights the quay."), [""; 0], "{word}");
    }
}

#[test]
fn translations_are_looked_at_in_their_own_language() {
    for word in ["LIZENZ", "DANK", "NEUES"] {
        assert_eq!(claims(word, "Es heilt die Augen."), ["E-CLAIM"], "{word}");
        assert_eq!(claims(word, "Es verbessert das Sehen."), ["W-CLAIM"], "{word}");
        assert_eq!(claims(word, "Es leuchtet am Kai."), [""; 0], "{word}");
    }
}

/// What was corrected in a book is a page of it; anywhere else the word may be meant of eyes.
#[test]
fn corrections_of_the_book_are_no_claims() {
    for word in ["CONTACT", "CHANGE"] {
        assert_eq!(claims(word, "Corrected the number; fixes a text."), [""; 0], "{word}");
    }
    assert_eq!(claims("NEUES", "Die Zahl ist korrigiert."), [""; 0]);
    assert_eq!(claims("AUTHOR", "It corrects."), ["W-CLAIM"]);
}
