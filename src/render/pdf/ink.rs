//! Marks on a PDF page: the only place that draws. Sheet millimetres become points here.

mod bars;

use std::collections::BTreeMap;

use krilla::color::{Color, cmyk, rgb};
use krilla::geom::{Path, PathBuilder, Point, Rect, Transform};
use krilla::paint::Fill;
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph};
use kurbo::{BezPath, PathEl};
use skrifa::MetadataProvider;

use super::PdfError;
use crate::colour::{Cmyk, Inks, Srgb8};
use crate::layout::fonts;
use crate::layout::sheet::{Art, Face, Glyph, Node, TextRun, Tone};
use crate::units::Mm;

/// The bundled faces as the PDF library holds them, and how many glyphs each has.
pub(crate) struct Fonts([(Font, u32); 2]);

impl Fonts {
    /// Reads the bundled fonts; fails only if the library cannot.
    pub(crate) fn new() -> Result<Self, PdfError> {
        Ok(Self([load(Face::Regular)?, load(Face::Bold)?]))
    }

    fn face(&self, face: Face) -> &(Font, u32) {
        &self.0[usize::from(face == Face::Bold)]
    }
}

fn load(face: Face) -> Result<(Font, u32), PdfError> {
    let font = Font::new(fonts::bytes(face).into(), 0);
    let font = font.ok_or_else(|| PdfError::Refused("the bundled font cannot be read".to_owned()))?;
    Ok((font, fonts::font(face).glyph_names().num_glyphs()))
}

/// What all pages of a book are drawn with.
pub(crate) struct Style<'a> {
    /// The bundled faces.
    pub(crate) fonts: Fonts,
    /// The process inks of each ink and each patch; `None` draws in sRGB.
    pub(crate) process: Option<&'a BTreeMap<Srgb8, Cmyk>>,
}

/// The right to draw, handed out within a tag alone: see `page::Canvas::tagged`.
pub(crate) struct Ink<'a, 'b> {
    surface: &'a mut Surface<'b>,
    inks: &'a Inks,
    style: &'a Style<'a>,
}

impl<'a, 'b> Ink<'a, 'b> {
    /// Draws on `surface` in the colours `inks`. The caller has opened a tag.
    pub(crate) fn new(surface: &'a mut Surface<'b>, inks: &'a Inks, style: &'a Style<'a>) -> Self {
        Self { surface, inks, style }
    }

    /// Draws nodes and everything in them, whatever their roles. Errors say what cannot be drawn.
    pub(crate) fn draw(&mut self, nodes: &[Node]) -> Result<(), &'static str> {
        for node in nodes {
            match node {
                Node::Group(_, inner) => self.draw(inner)?,
                Node::Text(run) => self.text(run)?,
                Node::Fill(fill) => self.fill(&fill.path, self.tone(fill.tone)?)?,
                Node::Patch(patch) => self.fill(&patch.path, self.solid(patch.colour)?)?,
                Node::Art(art) => self.art(art)?,
            }
        }
        Ok(())
    }

    /// Fills the whole page.
    pub(crate) fn ground(&mut self, page: Rect) -> Result<(), &'static str> {
        let mut builder = PathBuilder::new();
        builder.push_rect(page);
        self.colour(self.solid(self.inks.ground)?);
        builder.finish().iter().for_each(|path| self.surface.draw_path(path));
        Ok(())
    }

    /// Left, right, overlap, flat: later ones cover earlier ones, so the page needs no blending.
    fn art(&mut self, art: &Art) -> Result<(), &'static str> {
        let Inks { left, right, both, .. } = *self.inks;
        for (paths, ink) in [(&art.left, left), (&art.right, right), (&art.overlap, both), (&art.flat, both)] {
            for path in paths {
                self.fill(path, self.solid(ink)?)?;
            }
        }
        art.dots.iter().try_for_each(|dots| self.dots(dots))?;
        art.over.iter().try_for_each(|path| self.fill(path, self.solid(both)?))
    }

    fn fill(&mut self, path: &BezPath, colour: Color) -> Result<(), &'static str> {
        if let Some(path) = outline(path)? {
            self.colour(colour);
            self.surface.draw_path(&path);
        }
        Ok(())
    }

    fn text(&mut self, run: &TextRun) -> Result<(), &'static str> {
        let (font, count) = self.style.fonts.face(run.face);
        let finite = [run.origin.x, run.origin.y, run.size].iter().all(|value| value.is_finite());
        if !finite || run.size <= 0.0 {
            return Err("a run of text has no place or no size");
        }
        if !run.glyphs.iter().all(|glyph| fits(glyph, &run.text, *count)) {
            return Err("a glyph does not fit its text or its font");
        }
        let glyphs: Vec<KrillaGlyph> = run.glyphs.iter().map(|glyph| em(glyph, run.size)).collect();
        let origin = Point::from_xy(points(run.origin.x), points(run.origin.y));
        self.colour(self.tone(run.tone)?);
        if run.turned {
            let about = Transform::from_row(-1.0, 0.0, 0.0, -1.0, 2.0 * origin.x, 2.0 * origin.y);
            self.surface.push_transform(&about);
        }
        self.surface.draw_glyphs(origin, &glyphs, font.clone(), &run.text, points(run.size), false);
        if run.turned {
            self.surface.pop();
        }
        Ok(())
    }

    fn colour(&mut self, colour: Color) {
        self.surface.set_fill(Some(Fill { paint: colour.into(), ..Fill::default() }));
    }

    /// An ink or the colour of a patch, as the book draws it.
    fn solid(&self, colour: Srgb8) -> Result<Color, &'static str> {
        Ok(match self.style.process {
            None => plain(colour),
            Some(process) => inked(recipe(process, colour)?),
        })
    }

    /// A tone between ground and words: mixed in process inks where the book is drawn in them.
    fn tone(&self, tone: Tone) -> Result<Color, &'static str> {
        let Some(process) = self.style.process else { return Ok(plain(tone.mixed(self.inks))) };
        let (ground, text) = (recipe(process, self.inks.ground)?, recipe(process, self.inks.text)?);
        let mix = |from: f64, to: f64| from + (to - from) * f64::from(tone.0);
        let [c, m, y] = [mix(ground.c, text.c), mix(ground.m, text.m), mix(ground.y, text.y)];
        Ok(inked(Cmyk { c, m, y, k: mix(ground.k, text.k) }))
    }
}

fn recipe(process: &BTreeMap<Srgb8, Cmyk>, colour: Srgb8) -> Result<Cmyk, &'static str> {
    process.get(&colour).copied().ok_or("a colour has no process inks")
}

fn plain(Srgb8([red, green, blue]): Srgb8) -> Color {
    rgb::Color::new(red, green, blue).into()
}

fn inked(Cmyk { c, m, y, k }: Cmyk) -> Color {
    let [c, m, y, k] = [c, m, y, k].map(byte);
    cmyk::Color::new(c, m, y, k).into()
}

/// A share of 0 to 1 on the 256 steps that the library has.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "rounded and clamped to what eight bits hold"
)]
fn byte(share: f64) -> u8 {
    (share * 255.0).round().clamp(0.0, 255.0) as u8
}

fn fits(glyph: &Glyph, text: &str, count: u32) -> bool {
    let finite = [glyph.offset.0, glyph.offset.1, glyph.advance].iter().all(|value| value.is_finite());
    let known = (1..count).contains(&u32::from(glyph.id));
    finite && known && text.get(glyph.range.clone()).is_some_and(|words| !words.is_empty())
}

/// A glyph in em, y up, on whole hundredths of a design unit: kerning then has short numbers.
fn em(glyph: &Glyph, size: f64) -> KrillaGlyph {
    let of = |mm: f64| single((mm / size * 1e5).round() / 1e5);
    let id = GlyphId::new(u32::from(glyph.id));
    let offset = (of(glyph.offset.0), -of(glyph.offset.1));
    KrillaGlyph::new(id, of(glyph.advance), offset.0, offset.1, 0.0, glyph.range.clone(), None)
}

/// Millimetres in points, to a thousandth: 0.35 µm.
pub(crate) fn points(mm: f64) -> f32 {
    single((Mm(mm).to_pt().0 * 1e3).round() / 1e3)
}

/// A number as the file format holds it.
#[expect(
    clippy::cast_possible_truncation,
    reason = "PDF numbers are written from single precision; the values are rounded before"
)]
fn single(value: f64) -> f32 {
    value as f32
}

/// An area in points, if it has finite sides and some extent.
pub(crate) fn rect(area: kurbo::Rect) -> Option<Rect> {
    let known = area.x0 < area.x1 && area.y0 < area.y1;
    Rect::from_ltrb(points(area.x0), points(area.y0), points(area.x1), points(area.y1)).filter(|_| known)
}

/// A path in points; `None` if there is nothing to draw.
fn outline(path: &BezPath) -> Result<Option<Path>, &'static str> {
    if !path.is_finite() {
        return Err("a path has a point that is no number");
    }
    let mut builder = PathBuilder::new();
    for element in path.elements() {
        match *element {
            PathEl::MoveTo(a) => builder.move_to(points(a.x), points(a.y)),
            PathEl::LineTo(a) => builder.line_to(points(a.x), points(a.y)),
            PathEl::QuadTo(a, b) => builder.quad_to(points(a.x), points(a.y), points(b.x), points(b.y)),
            PathEl::CurveTo(a, b, c) => {
                builder.cubic_to(points(a.x), points(a.y), points(b.x), points(b.y), points(c.x), points(c.y));
            }
            PathEl::ClosePath => builder.close(),
        }
    }
    Ok(builder.finish())
}
