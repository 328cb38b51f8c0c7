//! Claim words: found whole, in the language of the text, and not where they are denied.

use super::*;

#[test]
fn claim_words_are_found_whole_and_in_any_case() {
    let severe = |text| lint_text(text).into_iter().map(|d| (d.code, d.severity)).collect::<Vec<_>>();
    let (error, warning) = (("E-CLAIM", Severity::Error), ("W-CLAIM", Severity::Warning));
    for text in ["TREAT it", "a treatment.", "we cure, fast", "Diagnosis", "treats\u{a0}eyes", "(treat)", "pre-treat"] {
        assert_eq!(severe(text), [error], "{text}");
    }
    for text in ["improves your vision", "It restores stereo.", "your sight improves", "Trains away a squint", "fixes"]
    {
        assert_eq!(severe(text), [warning], "{text}");
    }
    for text in ["a remedy", "it heals", "fixing the vision", "repairs", "strengthened eyes"] {
        assert_eq!(severe(text), [warning], "{text}");
    }
    for text in [
        "Fix your eyes on the mast.",
        "The print improves. Your eyes rest.",
        "Train far away",
        "does not improve sight",
    ] {
        assert_eq!(severe(text), [], "{text}");
    }
    for text in ["corrects", "Test yourself", "clinically proven", "Clinically\nproven", "normal eyes", "therapy"] {
        assert_eq!(severe(text), [warning], "{text}");
    }
    for text in ["retreat", "secure", "curel", "contest", "incorrectly", "proven", "enormous", "", "¿…?", "maltreated"]
    {
        assert_eq!(severe(text), [], "{text}");
    }
    assert_eq!(severe("Treat, treat and cure a test"), [error, error, warning]);
}

#[test]
fn a_claim_that_is_denied_is_no_claim() {
    for text in
        ["This is not a test.", "no treatment", "It does not treat.", "never a cure", "It cannot cure", "not any test"]
    {
        assert_eq!(lint_text(text), [], "{text}");
    }
    for text in ["not only treats", "a treatment", "no pain, just a cure", "treat not"] {
        assert_eq!(codes(&lint_text(text)), ["E-CLAIM"], "{text}");
    }
}

#[test]
fn a_claim_has_its_place_and_defers_to_others() {
    let found = lint_text("It treats.");
    assert_eq!(found[0].place, place(7));
    assert!(found[0].help.contains("licensed professionals and local rules"));
}

/// A text with the codes of what is found in it.
type Case = (&'static str, &'static [&'static str]);

const REFUSED: &[&str] = &["E-CLAIM"];
const DOUBTFUL: &[&str] = &["W-CLAIM"];
const FINE: &[&str] = &[];

fn hold(language: Language, cases: &[Case]) {
    for (text, wanted) in cases {
        assert_eq!(codes(&lint_text_in(language, text)), *wanted, "{text}");
    }
}

#[test]
fn german_claims_have_their_own_forms_compounds_and_denials() {
    hold(
        Language::De,
        &[
            ("Diese Seiten heilen.", REFUSED),
            ("Die BEHANDLUNG der Augen", REFUSED),
            ("eine Augenbehandlung für zu Hause", REFUSED),
            ("diagnostiziert", REFUSED),
            ("Das heilt nicht nur, es hilft.", REFUSED),
            ("Keine Angst. Diese Seiten heilen.", REFUSED),
            ("ein Sehtest", DOUBTFUL),
            ("klinisch erprobt", DOUBTFUL),
            ("normales Sehen", DOUBTFUL),
            ("verbessert Ihr Sehen", DOUBTFUL),
            ("um die Sehkraft zu stärken", DOUBTFUL),
            ("trainiert das Schielen weg", DOUBTFUL),
            ("Das Sehen wird wiederhergestellt.", DOUBTFUL),
            ("behebt Schwächen", DOUBTFUL),
            ("Der Druck ist verbessert. Blinzeln, dann in die Ferne sehen.", FINE),
            ("Das ist kein Test.", FINE),
            ("Diese Seiten heilen nicht und sind nie eine Behandlung.", FINE),
            ("Diese Seite behandelt nichts.", FINE),
            ("Normalerweise möchtest du heiter bleiben, auf der Abteilung am heiligen Abend.", FINE),
            // English words are no claims in German, nor the other way round.
            ("treat, cure", FINE),
        ],
    );
    assert_eq!(lint_text("heilen"), []);
}

/// `tratar de` is to try, `se trata de` is to be about: neither is a claim. `tratamiento de` stays one.
#[test]
fn spanish_claims_leave_trying_alone() {
    hold(
        Language::Es,
        &[
            ("Estas páginas curan.", REFUSED),
            ("Tratan los ojos", REFUSED),
            ("un tratamiento de los ojos", REFUSED),
            ("DIAGNÓSTICO", REFUSED),
            ("No solo cura.", REFUSED),
            ("una prueba de la vista", DOUBTFUL),
            ("clínicamente probado", DOUBTFUL),
            ("corrige la vista", DOUBTFUL),
            ("mejora su vista", DOUBTFUL),
            ("devuelve la visión", DOUBTFUL),
            ("sana los ojos", DOUBTFUL),
            ("lo arregla", DOUBTFUL),
            ("Mejora el papel. Mire con los dos ojos.", FINE),
            ("Trate de ver un solo anillo. Se trata de un faro.", FINE),
            ("Esto no es un tratamiento.", FINE),
            ("No cura.", FINE),
            ("Normalmente, procure mirar con curiosidad al oscurecer; pruebe otra vez.", FINE),
        ],
    );
}

/// `traiter de` is to be about, `traits` are strokes, `corrigé` is the answer key, and `avec soin` is with care.
#[test]
fn french_claims_leave_strokes_and_keys_alone() {
    hold(
        Language::Fr,
        &[
            ("Ces pages guérissent.", REFUSED),
            ("le traitement des yeux", REFUSED),
            ("soigne l’œil", REFUSED),
            ("Un DIAGNOSTIC", REFUSED),
            ("Elle ne soigne que l’œil.", REFUSED),
            ("cliniquement prouvée", DOUBTFUL),
            ("corrige la vue", DOUBTFUL),
            ("améliore votre vue", DOUBTFUL),
            ("rend la vision", DOUBTFUL),
            ("la stéréo rétablie", DOUBTFUL),
            ("répare", DOUBTFUL),
            ("Améliore le papier. Regardez des deux yeux.", FINE),
            ("un test", DOUBTFUL),
            ("Ce n’est pas un traitement.", FINE),
            ("Cela ne soigne pas et ne corrige rien.", FINE),
            ("Cette page traite d’un port. Suivez les traits avec soin, puis lisez le corrigé du curé.", FINE),
        ],
    );
}
