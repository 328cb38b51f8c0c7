//! From shaped clusters to the runs of a line: glyphs with their place and the bytes that they stand for.

use std::ops::Range;

use kurbo::Point;
use parley::{Cluster, Run};
use skrifa::MetadataProvider;
use skrifa::instance::{LocationRef, Size};

use super::{MissingGlyph, SOFT_HYPHEN, Style};
use crate::layout::fonts;
use crate::layout::sheet::{Face, Glyph, TextRun};
use crate::units::Mm;

/// Walks the runs of one line from left to right.
pub(crate) struct Pen<'a> {
    text: &'a str,
    style: &'a Style,
    baseline: Mm,
    /// Where the next glyph stands, mm from the left end of the line.
    x: f64,
    /// Where the last glyph that is no blank ends.
    pub visible: f64,
}

impl<'a> Pen<'a> {
    /// At the left end of the line with this baseline, to walk runs of `text`.
    pub(crate) fn new(text: &'a str, style: &'a Style, baseline: Mm) -> Self {
        Self { text, style, baseline, x: 0.0, visible: 0.0 }
    }

    /// The run as it is drawn; `None` if there is nothing to draw.
    pub(crate) fn run(&mut self, run: &Run<'_, ()>, face: Face) -> Result<Option<TextRun>, MissingGlyph> {
        let origin = Point::new(self.x, self.baseline.0);
        let (mut words, mut glyphs) = (String::new(), Vec::with_capacity(run.len()));
        for cluster in run.visual_clusters() {
            self.cluster(&cluster, face, &mut words, &mut glyphs)?;
        }
        let size = self.style.size.to_mm().0;
        let run = TextRun { face, size, origin, turned: false, glyphs, text: words.into(), tone: self.style.tone };
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
            // All glyphs of the cluster stand for all of its characters.
            let first = glyphs.last().map_or(0, |glyph| glyph.range.start);
            let parts = glyphs.iter_mut().rev().take_while(|glyph| glyph.range.start == first);
            parts.for_each(|glyph| glyph.range.end = words.len());
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
    pub(crate) fn hyphen(&mut self, runs: &mut [TextRun]) {
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

/// Format characters that guide line breaks and shaping and are never painted within a line.
fn is_unseen(character: char) -> bool {
    matches!(character, SOFT_HYPHEN | '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{feff}')
}

/// Id and advance (em) of the glyph of a character that the family surely has.
pub(crate) fn plain_glyph(face: Face, character: char) -> (u16, f64) {
    let font = fonts::font(face);
    let id = font.charmap().map(character).unwrap_or_default();
    let metrics = font.glyph_metrics(Size::new(1.0), LocationRef::default());
    (u16::try_from(id.to_u32()).unwrap_or(0), f64::from(metrics.advance_width(id).unwrap_or(0.0)))
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
pub(crate) fn check_covered(text: &str, seen: usize, run: Range<usize>) -> Result<usize, MissingGlyph> {
    if seen < run.start { Err(missing(text, seen..run.start)) } else { Ok(run.end) }
}
