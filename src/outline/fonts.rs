//! The bundled type family: font bytes, vertical metrics and glyph outlines. No system font is ever read.

use std::sync::OnceLock;

use kurbo::{Affine, BezPath};
use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlineGlyphCollection, OutlinePen};
use skrifa::{FontRef, GlyphId, MetadataProvider};

/// A face of the bundled family.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Face {
    /// Regular.
    Regular,
    /// Bold.
    Bold,
}

/// The family name inside the font files.
pub const FAMILY: &str = "Atkinson Hyperlegible Next";

/// Height of a capital letter, in em (OS/2 table of the bundled fonts: 668 of 1000 units).
pub const CAP_HEIGHT: f64 = 0.668;

/// Design units in one em, the same in every bundled face.
const UNITS_PER_EM: f64 = 1000.0;

/// The licence of the bundled family, to go wherever its files go.
pub const LICENCE: &str = include_str!("fonts/LICENSE_FONT");

static REGULAR: &[u8] = include_bytes!("fonts/AtkinsonHyperlegibleNext_400Regular.ttf");
static BOLD: &[u8] = include_bytes!("fonts/AtkinsonHyperlegibleNext_700Bold.ttf");

/// The font file of a face.
pub fn bytes(face: Face) -> &'static [u8] {
    match face {
        Face::Regular => REGULAR,
        Face::Bold => BOLD,
    }
}

/// The outline of a glyph in em, y down, baseline at 0. Empty for blanks and for ids the face does not have.
pub fn outline(face: Face, glyph: u16) -> BezPath {
    let mut pen = Pen::default();
    if let Some(outline) = collection(face).get(GlyphId::from(glyph)) {
        let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
        // A bundled, unhinted outline cannot fail to draw; a failure would leave the glyph empty, and the tests that
        // look at every glyph of the repertoire would see it.
        drop(outline.draw(settings, &mut pen));
    }
    Affine::scale_non_uniform(1.0 / UNITS_PER_EM, -1.0 / UNITS_PER_EM) * pen.0
}

/// The glyph of a character, if the face has one.
pub fn glyph(face: Face, character: char) -> Option<u16> {
    font(face).charmap().map(character).and_then(|id| u16::try_from(id.to_u32()).ok())
}

/// How far the pen moves after a glyph, in em.
pub fn advance(face: Face, glyph: u16) -> f64 {
    let metrics = font(face).glyph_metrics(Size::unscaled(), LocationRef::default());
    f64::from(metrics.advance_width(GlyphId::from(glyph)).unwrap_or(0.0)) / UNITS_PER_EM
}

fn collection(face: Face) -> &'static OutlineGlyphCollection<'static> {
    static CELLS: [OnceLock<OutlineGlyphCollection<'static>>; 2] = [const { OnceLock::new() }; 2];
    CELLS[face as usize].get_or_init(|| font(face).outline_glyphs())
}

/// The parsed font of a face.
pub fn font(face: Face) -> FontRef<'static> {
    // The files are part of the program; `bundled_fonts_parse` proves that this holds.
    FontRef::new(bytes(face)).unwrap_or_else(|error| unreachable!("bundled font: {error}"))
}

#[derive(Default)]
struct Pen(BezPath);

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.0.move_to((f64::from(x), f64::from(y)));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.0.line_to((f64::from(x), f64::from(y)));
    }

    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        self.0.quad_to((f64::from(cx), f64::from(cy)), (f64::from(x), f64::from(y)));
    }

    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        self.0.curve_to((f64::from(ax), f64::from(ay)), (f64::from(bx), f64::from(by)), (f64::from(x), f64::from(y)));
    }

    fn close(&mut self) {
        self.0.close_path();
    }
}

#[cfg(test)]
mod tests {
    use kurbo::Shape;

    use super::*;

    #[test]
    fn bundled_fonts_parse() {
        for face in [Face::Regular, Face::Bold] {
            let glyph = font(face).charmap().map('H').map(|id| id.to_u32());
            let outline = outline(face, u16::try_from(glyph.unwrap_or(0)).unwrap_or(0));
            let bounds = outline.bounding_box();
            assert!((bounds.y0 + CAP_HEIGHT).abs() < 1e-6, "{face:?}: {bounds:?}");
            assert!(bounds.y1.abs() < 1e-6);
        }
    }
}
