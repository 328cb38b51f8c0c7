//! Text shaping: words in, lines of glyphs out, at fixed baselines. Every renderer draws what comes out of here.
//!
//! Only the bundled family is known. A character that it lacks is an error, never a blank or a box: a page that loses
//! words without a sound is worse than no page. This room places nothing on a page and knows no language of the words.

use std::fmt;
use std::ops::Range;
use std::sync::Arc;

use kurbo::Point;
use parley::fontique::{Blob, Collection, CollectionOptions, SourceCache};
use parley::{Cluster, FontContext, FontFamily, FontFamilyName, FontWeight, Layout, LayoutContext, Run, StyleProperty};
use skrifa::MetadataProvider;
use skrifa::instance::{LocationRef, Size};

use super::fonts;
use super::sheet::{Face, Glyph, Node, TextRun, Tone};
use crate::units::{Mm, Pt};

/// Where the baseline stands in a line, as a share of the leading from its top. It is the same for every type size, so
/// that columns with one leading share one grid; for type set at 1.4 of its size capitals stand in the middle of it.
pub const BASELINE_SHARE: f64 = 0.74;

/// A line may pass its width by this much before it counts as too wide, mm: above the rounding of single precision,
/// below anything that can be seen.
const SLACK: f64 = 1e-3;

const SOFT_HYPHEN: char = '\u{ad}';

/// How a paragraph is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Style {
    /// The face of text that names none itself.
    pub face: Face,
    /// Type size.
    pub size: Pt,
    /// Distance between baselines.
    pub leading: Mm,
    /// Strength of the ink.
    pub tone: Tone,
    /// Where lines stand in their width.
    pub align: Align,
}

/// Where lines stand in their width. A line that is too wide always starts at the left edge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Align {
    /// At the left edge.
    Start,
    /// In the middle.
    Center,
    /// At the right edge.
    End,
}

/// A stretch of text in one face, for bold words inside a paragraph.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span<'a> {
    /// The words; blanks between spans belong to one of them.
    pub text: &'a str,
    /// Their face.
    pub face: Face,
}

/// A paragraph as lines, relative to its own top left corner.
#[derive(Debug, Clone)]
pub struct Paragraph {
    /// The lines from the top; at least one, which is empty if there are no words.
    pub lines: Vec<Line>,
    /// Leading times lines.
    pub height: Mm,
    /// The widest line, without the blank at its end.
    pub widest: Mm,
    /// Whether a line is wider than it may be: a word was too long to break. Its words are all there.
    pub overflow: bool,
}

/// A line of text.
#[derive(Debug, Clone)]
pub struct Line {
    /// The runs from left to right. The blank that a line break replaces ends the last one, so that words of two lines
    /// do not run together for a reader of the text.
    pub runs: Vec<TextRun>,
    /// From the top of the paragraph to the baseline.
    pub baseline: Mm,
    /// Width without the blank at its end.
    pub width: Mm,
}

/// A character that no bundled face can draw.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MissingGlyph {
    /// The character.
    pub character: char,
    /// Its first byte in the text that was asked for; spans count as joined.
    pub at: usize,
}

impl fmt::Display for MissingGlyph {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "the bundled typeface has no glyph for `{}` (U+{:04X})", self.character, u32::from(self.character))
    }
}

impl std::error::Error for MissingGlyph {}

impl Paragraph {
    /// The paragraph with its top left corner at (`x`, `y`), mm.
    pub fn place(self, x: f64, y: f64) -> Vec<Node> {
        let mut nodes = Vec::with_capacity(self.lines.iter().map(|line| line.runs.len()).sum());
        for mut run in self.lines.into_iter().flat_map(|line| line.runs) {
            run.origin += (x, y);
            nodes.push(Node::Text(run));
        }
        nodes
    }
}

/// Sets text in the bundled family. Create one per thread and keep it: it holds the parsed fonts and work buffers.
pub struct Typesetter {
    fonts: FontContext,
    context: LayoutContext<()>,
    layout: Layout<()>,
    faces: [u64; 2],
}

impl Default for Typesetter {
    fn default() -> Self {
        Self::new()
    }
}

impl fmt::Debug for Typesetter {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Typesetter")
    }
}

impl Typesetter {
    /// A typesetter that knows the bundled family and no other font.
    pub fn new() -> Self {
        let mut collection = Collection::new(CollectionOptions { shared: false, system_fonts: false });
        let faces = [Face::Regular, Face::Bold].map(|face| {
            let blob = Blob::new(Arc::new(fonts::bytes(face)));
            let id = blob.id();
            collection.register_fonts(blob, None);
            id
        });
        let fonts = FontContext { collection, source_cache: SourceCache::default() };
        Self { fonts, context: LayoutContext::new(), layout: Layout::new(), faces }
    }

    /// Sets `text` in lines no wider than `width`. A line feed starts a new line; a soft hyphen shows where a line ends
    /// at it and nowhere else; a tab is a blank; the micro sign and the increment sign take the Greek letters' glyphs.
    pub fn paragraph(&mut self, text: &str, style: &Style, width: Mm) -> Result<Paragraph, MissingGlyph> {
        self.paragraph_of(&[Span { text, face: style.face }], style, width)
    }

    /// The same for text with spans in a face of their own.
    pub fn paragraph_of(&mut self, spans: &[Span<'_>], style: &Style, width: Mm) -> Result<Paragraph, MissingGlyph> {
        let (text, bold) = prepare(spans, style.face);
        self.shape(&text, &bold, style);
        self.break_lines(&text, style, width);
        self.collect(&text, style, width).map_err(|missing| before_prepare(missing, spans))
    }

    /// The width of `text` on one line, without blanks at its end.
    pub fn width_of(&mut self, text: &str, style: &Style) -> Result<Mm, MissingGlyph> {
        Ok(self.paragraph(text, style, Mm(f64::from(f32::MAX)))?.widest)
    }

    /// Shapes into `self.layout`. Sizes are mm: 1 unit of the layout is 1 mm.
    fn shape(&mut self, text: &str, other: &[Range<usize>], style: &Style) {
        let weight = |face| match face {
            Face::Regular => FontWeight::NORMAL,
            Face::Bold => FontWeight::BOLD,
        };
        let inverse = match style.face {
            Face::Regular => Face::Bold,
            Face::Bold => Face::Regular,
        };
        let mut builder = self.context.ranged_builder(&mut self.fonts, text, 1.0, false);
        let family = FontFamily::Single(FontFamilyName::Named(fonts::FAMILY.into()));
        builder.push_default(StyleProperty::FontFamily(family));
        builder.push_default(StyleProperty::FontSize(style.size.to_mm().0 as f32));
        builder.push_default(StyleProperty::FontWeight(weight(style.face)));
        for range in other {
            builder.push(StyleProperty::FontWeight(weight(inverse)), range.clone());
        }
        builder.build_into(&mut self.layout, text);
    }

    /// Breaks the shaped text. A line that ends at a soft hyphen is broken again, narrower by the hyphen, if the hyphen
    /// would not fit.
    fn break_lines(&mut self, text: &str, style: &Style, width: Mm) {
        let full = (width.0 + SLACK).min(f64::from(f32::MAX)) as f32;
        break_all(&mut self.layout, full, &[]);
        if !text.contains(SOFT_HYPHEN) {
            return;
        }
        let advance = f64::max(plain_glyph(Face::Regular, '-').1, plain_glyph(Face::Bold, '-').1);
        let hyphen = (advance * style.size.to_mm().0) as f32;
        let mut narrower = Vec::new();
        while narrower.len() < self.layout.len() {
            let line = self.layout.get(narrower.len());
            let late = line
                .is_some_and(|line| ends_soft(text, line.text_range().end) && full < line.metrics().advance + hyphen);
            narrower.push(if late { full - hyphen } else { full });
            if late {
                break_all(&mut self.layout, full, &narrower);
            }
        }
    }

    /// Turns the broken layout into lines, and proves that every character of `text` is there.
    fn collect(&self, text: &str, style: &Style, width: Mm) -> Result<Paragraph, MissingGlyph> {
        let mut lines = Vec::with_capacity(self.layout.len());
        let mut seen = 0;
        for (index, line) in self.layout.lines().enumerate() {
            let baseline = Mm((index as f64 + BASELINE_SHARE) * style.leading.0);
            let mut pen = Pen { text, style, x: 0.0, visible: 0.0, baseline };
            let mut runs = Vec::with_capacity(line.len());
            for run in line.runs() {
                seen = check_covered(text, seen, run.text_range())?;
                runs.extend(pen.run(&run, self.face_of(&run))?);
            }
            if ends_soft(text, line.text_range().end) {
                pen.hyphen(&mut runs);
            }
            let shift = style.align.shift(width.0 - pen.visible);
            runs.iter_mut().for_each(|run| run.origin.x += shift);
            lines.push(Line { runs, baseline, width: Mm(pen.visible) });
        }
        check_covered(text, seen, text.len()..text.len())?;
        let widest = lines.iter().fold(0.0, |widest: f64, line| widest.max(line.width.0));
        let height = Mm(lines.len() as f64 * style.leading.0);
        Ok(Paragraph { lines, height, widest: Mm(widest), overflow: width.0 + SLACK < widest })
    }

    fn face_of(&self, run: &Run<'_, ()>) -> Face {
        if run.font().data.id() == self.faces[1] { Face::Bold } else { Face::Regular }
    }
}

impl Align {
    /// How far a line moves right when this much of its width is left over.
    fn shift(self, spare: f64) -> f64 {
        match self {
            Align::Start => 0.0,
            Align::Center => spare.max(0.0) / 2.0,
            Align::End => spare.max(0.0),
        }
    }
}

/// Walks the runs of one line from left to right.
struct Pen<'a> {
    text: &'a str,
    style: &'a Style,
    baseline: Mm,
    /// Where the next glyph stands, mm from the left end of the line.
    x: f64,
    /// Where the last glyph that is no blank ends.
    visible: f64,
}

impl Pen<'_> {
    fn run(&mut self, run: &Run<'_, ()>, face: Face) -> Result<Option<TextRun>, MissingGlyph> {
        let origin = Point::new(self.x, self.baseline.0);
        let (mut words, mut glyphs) = (String::new(), Vec::with_capacity(run.len()));
        for cluster in run.visual_clusters() {
            self.cluster(&cluster, face, &mut words, &mut glyphs)?;
        }
        let size = self.style.size.to_mm().0;
        let run = TextRun { face, size, origin, glyphs, text: words.into(), tone: self.style.tone };
        Ok((!run.glyphs.is_empty()).then_some(run))
    }

    fn cluster(
        &mut self,
        cluster: &Cluster<'_, ()>,
        face: Face,
        words: &mut String,
        glyphs: &mut Vec<Glyph>,
    ) -> Result<(), MissingGlyph> {
        let at = cluster.text_range();
        let source = &self.text[at.clone()];
        if source == "\n" {
            glyphs.push(self.glyph(face, ' ', words));
            return Ok(());
        }
        if source.chars().all(is_unseen) {
            return Ok(());
        }
        let start = words.len();
        words.push_str(source);
        if cluster.is_ligature_continuation() {
            glyphs.iter_mut().next_back().into_iter().for_each(|ligature| ligature.range.end = words.len());
        } else {
            for glyph in cluster.glyphs() {
                let id = u16::try_from(glyph.id).ok().filter(|&id| id != 0);
                let id = id.ok_or_else(|| missing(self.text, at.clone()))?;
                let offset = (f64::from(glyph.x), f64::from(glyph.y));
                let advance = f64::from(glyph.advance);
                glyphs.push(Glyph { id, offset, advance, range: start..words.len() });
                self.x += advance;
            }
        }
        if !source.chars().all(char::is_whitespace) {
            self.visible = self.x;
        }
        Ok(())
    }

    /// Paints the hyphen of a word that a soft hyphen divides, at the end of the last run.
    fn hyphen(&mut self, runs: &mut [TextRun]) {
        let Some(run) = runs.last_mut() else { return };
        let mut words = run.text.to_string();
        let mut glyph = self.glyph(run.face, '-', &mut words);
        words.truncate(glyph.range.start);
        words.push(SOFT_HYPHEN);
        glyph.range.end = words.len();
        self.x += glyph.advance;
        self.visible = self.x;
        run.glyphs.push(glyph);
        run.text = words.into();
    }

    /// The unkerned glyph of a character, which is added to `words`.
    fn glyph(&self, face: Face, character: char, words: &mut String) -> Glyph {
        let start = words.len();
        words.push(character);
        let (id, advance) = plain_glyph(face, character);
        Glyph { id, offset: (0.0, 0.0), advance: advance * self.style.size.to_mm().0, range: start..words.len() }
    }
}

/// Joins spans, changes what the family has under another code point, and finds the stretches that are not in `face`.
fn prepare(spans: &[Span<'_>], face: Face) -> (String, Vec<Range<usize>>) {
    let mut text = String::with_capacity(spans.iter().map(|span| span.text.len()).sum());
    let mut other = Vec::new();
    for span in spans {
        let start = text.len();
        text.extend(span.text.chars().filter_map(known_as));
        if span.face != face && start < text.len() {
            other.push(start..text.len());
        }
    }
    (text, other)
}

/// The character whose glyph stands for this one. The family has the Greek letters, not their compatibility twins
/// (Unicode: U+00B5 decomposes to U+03BC; U+2206 looks like U+0394), and no glyph for a tab.
fn known_as(character: char) -> Option<char> {
    match character {
        '\u{b5}' => Some('\u{3bc}'),
        '\u{2206}' => Some('\u{394}'),
        '\t' => Some(' '),
        '\r' => None,
        other => Some(other),
    }
}

/// Moves a place in prepared text back to where it was before.
fn before_prepare(missing: MissingGlyph, spans: &[Span<'_>]) -> MissingGlyph {
    let (mut before, mut after) = (0, 0);
    for character in spans.iter().flat_map(|span| span.text.chars()) {
        if missing.at <= after && known_as(character).is_some() {
            break;
        }
        before += character.len_utf8();
        after += known_as(character).map_or(0, char::len_utf8);
    }
    MissingGlyph { at: before, ..missing }
}

/// Format characters that guide line breaks and shaping and are never painted within a line.
fn is_unseen(character: char) -> bool {
    matches!(character, SOFT_HYPHEN | '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{feff}')
}

/// The first character in a stretch that no glyph stands for.
fn missing(text: &str, range: Range<usize>) -> MissingGlyph {
    let charmaps = [Face::Regular, Face::Bold].map(|face| fonts::font(face).charmap());
    let lacks = |c: char| charmaps.iter().any(|charmap| charmap.map(c).is_none_or(|id| id.to_u32() == 0));
    let stretch = &text[range.clone()];
    let (offset, character) = stretch
        .char_indices()
        .find(|&(_, c)| lacks(c))
        .or_else(|| stretch.char_indices().next())
        .unwrap_or((0, char::REPLACEMENT_CHARACTER));
    MissingGlyph { character, at: range.start + offset }
}

/// The end of `run`, if it starts where the text before it ended: otherwise characters are missing.
fn check_covered(text: &str, seen: usize, run: Range<usize>) -> Result<usize, MissingGlyph> {
    if seen < run.start { Err(missing(text, seen..run.start)) } else { Ok(run.end) }
}

/// Id and advance (em) of the glyph of a character that the family surely has.
fn plain_glyph(face: Face, character: char) -> (u16, f64) {
    let font = fonts::font(face);
    let id = font.charmap().map(character).unwrap_or_default();
    let metrics = font.glyph_metrics(Size::new(1.0), LocationRef::default());
    (u16::try_from(id.to_u32()).unwrap_or(0), f64::from(metrics.advance_width(id).unwrap_or(0.0)))
}

/// Whether a line that ends at this byte divides a word at a soft hyphen.
fn ends_soft(text: &str, end: usize) -> bool {
    end < text.len() && text[..end].ends_with(SOFT_HYPHEN)
}

/// Breaks all lines at `full`, but the first ones at their own widths.
fn break_all(layout: &mut Layout<()>, full: f32, first: &[f32]) {
    let mut lines = layout.break_lines();
    lines.state_mut().set_layout_max_advance(full);
    let mut index = 0;
    loop {
        lines.state_mut().set_line_max_advance(first.get(index).copied().unwrap_or(full));
        if lines.break_next().is_none() {
            break;
        }
        index += 1;
    }
    lines.finish();
}

#[cfg(test)]
mod tests {
    use super::*;

    const STYLE: Style =
        Style { face: Face::Regular, size: Pt(11.0), leading: Mm(5.5), tone: Tone::FULL, align: Align::Start };

    const WORDS: &str =
        "Look from the near ring to the far ring and back, and feel your eyes change; stop if it strains.";

    fn words(paragraph: &Paragraph) -> String {
        paragraph.lines.iter().flat_map(|line| &line.runs).map(|run| &*run.text).collect()
    }

    /// Ranges must tile the text of their run, in order and at character borders, or readers of a PDF lose letters.
    fn check_ranges(paragraph: &Paragraph) {
        for run in paragraph.lines.iter().flat_map(|line| &line.runs) {
            let mut end = 0;
            for glyph in &run.glyphs {
                assert!(glyph.range.start == end || glyph.range == (end - glyph.range.len()..end), "{run:?}");
                end = glyph.range.end;
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
        for text in ["漢", "\u{7}", "a\u{5d0}b", "\u{1f600}", "\u{2011}", "\u{0}"] {
            assert!(typesetter.paragraph(text, &STYLE, Mm(100.0)).is_err(), "{text:?}");
        }
    }

    #[test]
    fn accents_of_the_languages_shape() {
        let text = "ÄÖÜß àéîõñ çł ąęś řšž őű ăîșț åøæ þð ģķļ „Quote“ ½ ² ° × ± ≤ ≈ … – — • fi fl ffi e\u{301}";
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
}
