//! Shaping against the tables of the font file and against the words that went in.

use skrifa::MetadataProvider;
use skrifa::instance::{LocationRef, Size};

use super::pen::plain_glyph;
use super::*;

const STYLE: Style =
    Style { face: Face::Regular, size: Pt(11.0), leading: Mm(5.5), tone: Tone::FULL, align: Align::Start };

const WORDS: &str = "Look from the near ring to the far ring and back, and feel your eyes change; stop if it strains.";

fn words(paragraph: &Paragraph) -> String {
    paragraph.lines.iter().flat_map(|line| &line.runs).map(|run| &*run.text).collect()
}

/// Ranges must tile the text of their run, in order and at character borders, or readers of a PDF lose letters.
fn check_ranges(paragraph: &Paragraph) {
    for run in paragraph.lines.iter().flat_map(|line| &line.runs) {
        let (mut end, mut last) = (0, 0..0);
        for glyph in &run.glyphs {
            assert!(glyph.range.start == end || glyph.range == last, "{run:?}");
            last = glyph.range.clone();
            end = last.end;
            assert!(run.text.is_char_boundary(end));
        }
        assert_eq!(end, run.text.len());
    }
}

#[test]
fn lines_keep_every_word_and_their_width() {
    let paragraph = Typesetter::new().paragraph(WORDS, &STYLE, Mm(50.0)).unwrap();
    assert_eq!(words(&paragraph), WORDS);
    check_ranges(&paragraph);
    assert!(2 < paragraph.lines.len());
    assert!(!paragraph.overflow);
    assert!(paragraph.lines.iter().all(|line| line.width.0 <= 50.0));
    assert_eq!(paragraph.height, Mm(5.5 * paragraph.lines.len() as f64));
    for line in &paragraph.lines[..paragraph.lines.len() - 1] {
        assert!(line.runs.last().unwrap().text.ends_with(' '));
    }
}

/// Against the `hmtx` table of the font file; these letters do not kern.
#[test]
fn widths_are_the_advances_of_the_font() {
    let mut typesetter = Typesetter::new();
    let font = fonts::font(Face::Bold);
    let style = Style { face: Face::Bold, ..STYLE };
    let id = font.charmap().map('H').unwrap();
    let em = f64::from(font.glyph_metrics(Size::unscaled(), LocationRef::default()).advance_width(id).unwrap());
    let expected = 3.0 * em / 1000.0 * 11.0 * 25.4 / 72.0;
    assert!((typesetter.width_of("HHH  ", &style).unwrap().0 - expected).abs() < 1e-4);
    let paragraph = typesetter.paragraph("H", &style, Mm(10.0)).unwrap();
    assert_eq!(paragraph.lines[0].runs[0].face, Face::Bold);
}

#[test]
fn kerning_is_on() {
    let mut typesetter = Typesetter::new();
    let mut width = |text| typesetter.width_of(text, &STYLE).unwrap().0;
    assert!(width("AV") < width("A") + width("V") - 0.05);
}

#[test]
fn text_as_wide_as_its_column_stays_on_one_line() {
    let mut typesetter = Typesetter::new();
    for size in [7.3, 9.0, 11.0, 18.7] {
        let style = Style { size: Pt(size), ..STYLE };
        let width = typesetter.width_of(WORDS, &style).unwrap();
        let paragraph = typesetter.paragraph(WORDS, &style, width).unwrap();
        assert_eq!(paragraph.lines.len(), 1);
        assert!(!paragraph.overflow);
    }
}

#[test]
fn baselines_do_not_depend_on_size_or_face() {
    let mut typesetter = Typesetter::new();
    for (size, face) in [(8.0, Face::Regular), (11.0, Face::Bold), (14.0, Face::Regular)] {
        let style = Style { size: Pt(size), face, ..STYLE };
        let paragraph = typesetter.paragraph(WORDS, &style, Mm(60.0)).unwrap();
        for (index, line) in paragraph.lines.iter().enumerate() {
            let expected = 5.5 * (index as f64 + BASELINE_SHARE);
            assert!((line.baseline.0 - expected).abs() < 1e-9);
            assert!(line.runs.iter().all(|run| run.origin.y == line.baseline.0));
        }
    }
}

#[test]
fn spans_take_their_face_and_follow_one_another() {
    let spans = [
        Span { text: "Stop ", face: Face::Bold },
        Span { text: "if it strains, and ", face: Face::Regular },
        Span { text: "rest.", face: Face::Bold },
    ];
    let paragraph = Typesetter::new().paragraph_of(&spans, &STYLE, Mm(200.0)).unwrap();
    check_ranges(&paragraph);
    let runs = &paragraph.lines[0].runs;
    assert_eq!(runs.iter().map(|run| (&*run.text, run.face)).collect::<Vec<_>>(), spans.map(|s| (s.text, s.face)));
    let end = runs[0].origin.x + runs[0].glyphs.iter().map(|glyph| glyph.advance).sum::<f64>();
    assert!((runs[1].origin.x - end).abs() < 1e-9);
}

#[test]
fn alignment_counts_no_blank_at_the_end() {
    let mut typesetter = Typesetter::new();
    let width = typesetter.width_of("near  ", &STYLE).unwrap().0;
    for (align, left) in [(Align::Start, 0.0), (Align::Center, (40.0 - width) / 2.0), (Align::End, 40.0 - width)] {
        let paragraph = typesetter.paragraph("near  ", &Style { align, ..STYLE }, Mm(40.0)).unwrap();
        assert!((paragraph.lines[0].runs[0].origin.x - left).abs() < 1e-6, "{align:?}");
    }
}

#[test]
fn long_words_are_kept_and_reported() {
    let paragraph = Typesetter::new().paragraph("a Harbourmastersoffice b", &STYLE, Mm(12.0)).unwrap();
    assert!(paragraph.overflow);
    assert_eq!(words(&paragraph), "a Harbourmastersoffice b");
    assert_eq!(paragraph.lines.len(), 3);
}

#[test]
fn soft_hyphens_show_at_line_ends_alone() {
    let mut typesetter = Typesetter::new();
    let text = "har\u{ad}bour\u{ad}mas\u{ad}ter";
    let whole = typesetter.paragraph(text, &STYLE, Mm(100.0)).unwrap();
    assert_eq!(words(&whole), "harbourmaster");
    // The longest part, `bour-`, is 9.3 mm wide.
    for width in 10..26 {
        let paragraph = typesetter.paragraph(text, &STYLE, Mm(f64::from(width))).unwrap();
        check_ranges(&paragraph);
        assert!(!paragraph.overflow, "{width}: {paragraph:?}");
        assert_eq!(words(&paragraph).replace('\u{ad}', ""), "harbourmaster");
        for line in &paragraph.lines[..paragraph.lines.len() - 1] {
            let run = line.runs.last().unwrap();
            assert!(run.text.ends_with('\u{ad}'));
            assert_eq!(run.glyphs.last().unwrap().id, plain_glyph(Face::Regular, '-').0);
        }
    }
}

#[test]
fn line_feeds_break_and_read_as_blanks() {
    let paragraph = Typesetter::new().paragraph("one\r\ntwo\n\nthree", &STYLE, Mm(100.0)).unwrap();
    assert_eq!(paragraph.lines.len(), 4);
    assert_eq!(words(&paragraph), "one two  three");
    check_ranges(&paragraph);
}

#[test]
fn micro_and_increment_become_greek_and_tabs_blanks() {
    let paragraph = Typesetter::new().paragraph("5\tµm ∆ 2", &STYLE, Mm(100.0)).unwrap();
    assert_eq!(words(&paragraph), "5 μm Δ 2");
}

#[test]
fn missing_characters_are_named_with_their_place() {
    let mut typesetter = Typesetter::new();
    let error = typesetter.paragraph("∆\r at → end", &STYLE, Mm(100.0)).unwrap_err();
    assert_eq!(error, MissingGlyph { character: '→', at: "∆\r at ".len() });
    assert_eq!(error.to_string(), "the bundled typeface has no glyph for `→` (U+2192)");
    assert!(typesetter.paragraph("a\u{200b}b\u{2060}c\u{feff}", &STYLE, Mm(100.0)).is_ok());
    for text in ["漢", "\u{7}", "a\u{5d0}b", "\u{1f600}", "\u{2011}", "\u{0}"] {
        assert!(typesetter.paragraph(text, &STYLE, Mm(100.0)).is_err(), "{text:?}");
    }
}

#[test]
fn accents_of_the_languages_shape() {
    let text = "ÄÖÜß àéîõñ çł ąęś řšž őű ăîșț åøæ þð ģķļ „Quote“ ½ ² ° × ± ≤ ≈ … – — • fi fl ffi e\u{301} q\u{301} x";
    let paragraph = Typesetter::new().paragraph(text, &STYLE, Mm(300.0)).unwrap();
    check_ranges(&paragraph);
    assert_eq!(words(&paragraph), text);
}

#[test]
fn no_words_make_one_empty_line() {
    let paragraph = Typesetter::new().paragraph("", &STYLE, Mm(100.0)).unwrap();
    assert_eq!((paragraph.lines.len(), paragraph.height, paragraph.widest), (1, Mm(5.5), Mm(0.0)));
    assert!(paragraph.place(1.0, 2.0).is_empty());
}

#[test]
fn placing_moves_every_run() {
    let paragraph = Typesetter::new().paragraph(WORDS, &STYLE, Mm(60.0)).unwrap();
    let nodes = paragraph.clone().place(20.0, 30.0);
    let Node::Text(last) = nodes.last().unwrap() else { panic!("{nodes:?}") };
    let line = paragraph.lines.last().unwrap();
    assert_eq!(last.origin, line.runs[0].origin + kurbo::Vec2::new(20.0, 30.0));
}

#[test]
fn a_line_never_ends_at_a_no_break_space() {
    let mut typesetter = Typesetter::new();
    for text in ["the eyes together\u{a0}? Yes", "walls 12\u{a0}mm high", "one long two\u{a0}three\u{a0}four five"] {
        // What holds together fits: every width from there at which a line might end just before a no-break space, and
        // those around it.
        let held = text.split(' ').map(|held| typesetter.width_of(held, &STYLE).unwrap().0).fold(0.0, f64::max);
        let mut tried = 0;
        for (at, _) in text.match_indices('\u{a0}') {
            let width = typesetter.width_of(&text[..at], &STYLE).unwrap().0;
            for width in [-0.5, 0.0, 0.1, 0.5, 1.0, 1.5].map(|more| width + more).into_iter().filter(|&w| held <= w) {
                tried += 1;
                let paragraph = typesetter.paragraph(text, &STYLE, Mm(width)).unwrap();
                let lines =
                    paragraph.lines.iter().map(|line| line.runs.iter().map(|run| &*run.text).collect::<String>());
                for line in lines {
                    assert!(!line.ends_with('\u{a0}') && !line.starts_with('\u{a0}'), "{width}: {line:?}");
                }
                assert_eq!(words(&paragraph), text);
            }
        }
        assert!(3 < tried, "{text}");
    }
}
