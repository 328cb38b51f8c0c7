//! Text shaping: words in, lines of glyphs out, at fixed baselines. Every renderer draws what comes out of here.
//!
//! Only the bundled family is known. A character that it lacks is an error, never a blank or a box: a page that loses
//! words without a sound is worse than no page. This room places nothing on a page and knows no language of the words.

mod pen;
mod prepare;
#[cfg(test)]
mod tests;

use std::fmt;
use std::ops::Range;
use std::sync::Arc;

use parley::fontique::{Blob, Collection, CollectionOptions, SourceCache};
use parley::{FontContext, FontFamily, FontFamilyName, FontWeight, Layout, LayoutContext, Run, StyleProperty};

use self::pen::{Pen, check_covered, plain_glyph};
use self::prepare::{before_prepare, prepare};
use super::fonts;
use super::sheet::{Face, Node, TextRun, Tone};
use crate::units::{Mm, Pt};

/// Where the baseline stands in a line, as a share of the leading from its top. It is the same for every type size, so
/// that columns with one leading share one grid; for type set at 1.4 of its size capitals stand in the middle of it.
pub const BASELINE_SHARE: f64 = 0.74;

/// A line may pass its width by this much before it counts as too wide, mm: above the rounding of single precision,
/// below anything that can be seen.
const SLACK: f64 = 1e-3;

const SOFT_HYPHEN: char = '\u{ad}';
const NO_BREAK_SPACE: char = '\u{a0}';
/// How much too narrow a line is made for its last word, mm: more than the rounding of single precision.
const TOO_NARROW: f32 = 0.01;

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
        builder.push_default(StyleProperty::FontSize(single(style.size.to_mm().0)));
        builder.push_default(StyleProperty::FontWeight(weight(style.face)));
        for range in other {
            builder.push(StyleProperty::FontWeight(weight(inverse)), range.clone());
        }
        builder.build_into(&mut self.layout, text);
    }

    /// Breaks the shaped text. A line that ends at a soft hyphen is broken again, narrower by the hyphen, if the hyphen
    /// would not fit. A line that ends at a no-break space, which the line breaker lets hang over like any other, is broken
    /// again before the word that it holds on to.
    fn break_lines(&mut self, text: &str, style: &Style, width: Mm) {
        let full = single((width.0 + SLACK).min(f64::from(f32::MAX)));
        break_all(&mut self.layout, full, &[]);
        if !text.contains([SOFT_HYPHEN, NO_BREAK_SPACE]) {
            return;
        }
        let advance = f64::max(plain_glyph(Face::Regular, '-').1, plain_glyph(Face::Bold, '-').1);
        let hyphen = single(advance * style.size.to_mm().0);
        let mut narrower = Vec::new();
        while narrower.len() < self.layout.len() {
            let line = self.layout.get(narrower.len());
            let width = line.map_or(full, |line| {
                let (end, metrics) = (line.text_range().end, line.metrics());
                if ends_soft(text, end) && full < metrics.advance + hyphen {
                    full - hyphen
                } else if ends_held(text, end) {
                    metrics.advance - metrics.trailing_whitespace - TOO_NARROW
                } else {
                    full
                }
            });
            narrower.push(width);
            if width < full {
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
            let mut pen = Pen::new(text, style, baseline);
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

/// A length for the shaper, which works in single precision: to a millionth of a page, far below a micrometre.
#[expect(clippy::cast_possible_truncation, reason = "the shaper takes single precision")]
fn single(mm: f64) -> f32 {
    mm as f32
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

/// Whether a line that ends at this byte divides a word at a soft hyphen.
fn ends_soft(text: &str, end: usize) -> bool {
    end < text.len() && text[..end].ends_with(SOFT_HYPHEN)
}

/// Whether a line that ends at this byte leaves a no-break space at its end.
fn ends_held(text: &str, end: usize) -> bool {
    end < text.len() && text[..end].ends_with(NO_BREAK_SPACE)
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
