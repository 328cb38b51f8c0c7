//! What stands around and across the previews of a bundle: a card with words on it, and a watermark.
//!
//! The sheets here are no pages of a book and carry no art. Pages are laid on the cards as pictures, by `bundle`.

use kurbo::{Affine, BezPath, Point, Rect, Size};

use super::sheet::{Face, Fill, Node, Sheet, Tone};
use super::text::{Align, MissingGlyph, Style, Typesetter};
use super::{TYPESETTER, fonts};
use crate::colour::{Inks, Srgb8};
use crate::language::Language;
use crate::units::{Mm, Pt};

/// The ground of a card: a pale grey, so that white and black pages both stand off. Design choice.
pub const GROUND: Srgb8 = Srgb8([0xe9, 0xec, 0xee]);
/// The words on a card.
const INK: Srgb8 = Srgb8([0x22, 0x2b, 0x33]);

/// Some words on a card: one line.
#[derive(Debug, Clone)]
pub struct Label {
    /// The words.
    pub words: String,
    /// Where the line stands: its middle across, or its left end, and its baseline, mm.
    pub at: Point,
    /// The widest that it may be, mm: longer words are set smaller.
    pub width: f64,
    /// Type size.
    pub size: Pt,
    /// Whether it is bold, and centred; else regular, quiet and from the left.
    pub strong: bool,
    /// Whether a box is drawn around it.
    pub boxed: bool,
}

/// A card of this size, mm, with these words.
///
/// # Errors
/// A character that the typeface does not have.
pub fn card(size: Size, labels: &[Label]) -> Result<Sheet, MissingGlyph> {
    let mut nodes = Vec::new();
    TYPESETTER.with_borrow_mut(|setter| labels.iter().try_for_each(|label| add(setter, label, &mut nodes)))?;
    let inks = Inks { left: INK, right: INK, both: INK, ground: GROUND, text: INK };
    Ok(sheet(size, inks, nodes))
}

fn sheet(size: Size, inks: Inks, nodes: Vec<Node>) -> Sheet {
    let (title, description, language) = (String::new(), String::new(), Language::En.tag());
    Sheet { number: 1, id: "preview".to_owned(), title, description, language, outline_level: 0, size, inks, nodes }
}

fn style(size: Pt, strong: bool) -> Style {
    let (face, tone) = if strong { (Face::Bold, Tone::FULL) } else { (Face::Regular, Tone(0.75)) };
    Style { face, size, leading: size.to_mm(), tone, align: Align::Start }
}

fn add(setter: &mut Typesetter, label: &Label, nodes: &mut Vec<Node>) -> Result<(), MissingGlyph> {
    let full = setter.width_of(&label.words, &style(label.size, label.strong))?.0;
    let factor = (label.width / full).min(1.0);
    let style = style(Pt(label.size.0 * factor), label.strong);
    let paragraph = setter.paragraph(&label.words, &style, Mm(f64::from(f32::MAX)))?;
    let (width, high) = (paragraph.widest.0, style.size.to_mm().0);
    let baseline = paragraph.lines.first().map_or(0.0, |line| line.baseline.0);
    let left = if label.strong { label.at.x - width / 2.0 } else { label.at.x };
    nodes.extend(paragraph.place(left, label.at.y - baseline));
    if label.boxed {
        let middle = label.at.y - fonts::CAP_HEIGHT * high / 2.0;
        let area = Rect::from_center_size((left + width / 2.0, middle), (width + 2.2 * high, 2.0 * high));
        nodes.push(ring(area, high * 0.07));
    }
    Ok(())
}

/// The outline of a box as a filled frame of this weight.
fn ring(area: Rect, weight: f64) -> Node {
    let mut path = BezPath::new();
    for (rect, forward) in [(area, true), (area.inset(-weight), false)] {
        let corners = [(rect.x0, rect.y0), (rect.x1, rect.y0), (rect.x1, rect.y1), (rect.x0, rect.y1)];
        let order = if forward { [0, 1, 2, 3] } else { [0, 3, 2, 1] };
        path.move_to(corners[order[0]]);
        order[1..].iter().for_each(|&corner| path.line_to(corners[corner]));
        path.close_path();
    }
    Node::Fill(Fill { path, tone: Tone::FULL })
}

/// How the watermark stands: up to the right, in degrees.
const ANGLE: f64 = 30.0;
/// Its type size, mm.
const SIZE: f64 = 9.0;
/// Between two lines of it, mm.
const APART: f64 = 34.0;
/// Between two of them in a line, mm.
const GAP: f64 = 18.0;

/// The words over and over across a sheet of this size, mm: black on white, to be laid over a page as a shade.
///
/// # Errors
/// A character that the typeface does not have.
pub fn watermark(words: &str, size: Size) -> Result<Sheet, MissingGlyph> {
    let style =
        Style { face: Face::Bold, size: Mm(SIZE).to_pt(), leading: Mm(SIZE), tone: Tone::FULL, align: Align::Start };
    let line = TYPESETTER.with_borrow_mut(|setter| setter.paragraph(words, &style, Mm(f64::from(f32::MAX))))?;
    let (outline, step) = (outline(line.lines.iter().flat_map(|line| &line.runs)), line.widest.0 + GAP);
    // Turned about the middle of the sheet; lines as long as its diagonal cover every corner.
    let (middle, reach) = (size.to_rect().center(), libm::hypot(size.width, size.height) / 2.0);
    let (sin, cos) = libm::sincos(-ANGLE.to_radians());
    let turn = Affine::translate(middle.to_vec2()) * Affine::new([cos, sin, -sin, cos, 0.0, 0.0]);
    let mut nodes = Vec::new();
    let rows = (reach / APART).ceil();
    let mut row = -rows;
    while row <= rows {
        // Every other line is moved by half a step.
        let start = -(reach / step).ceil() * step - if row.rem_euclid(2.0) < 1.0 { 0.0 } else { step / 2.0 };
        let mut x = start;
        while x < reach {
            let path = turn * Affine::translate((x, row * APART)) * outline.clone();
            nodes.push(Node::Fill(Fill { path, tone: Tone::FULL }));
            x += step;
        }
        row += 1.0;
    }
    let [black, white] = [Srgb8([0; 3]), Srgb8([255; 3])];
    Ok(sheet(size, Inks { left: black, right: black, both: black, ground: white, text: black }, nodes))
}

/// The outline of some runs, mm, their first baseline at 0.
fn outline<'a>(runs: impl Iterator<Item = &'a super::sheet::TextRun>) -> BezPath {
    let mut path = BezPath::new();
    for run in runs {
        let mut pen = run.origin.x;
        for glyph in &run.glyphs {
            let to = Affine::translate((pen + glyph.offset.0, glyph.offset.1)) * Affine::scale(run.size);
            path.extend(to * fonts::outline(run.face, glyph.id));
            pen += glyph.advance;
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use kurbo::Shape as _;

    use super::*;

    fn fills(sheet: &Sheet) -> Vec<Rect> {
        let area = |node: &Node| match node {
            Node::Fill(fill) => Some(fill.path.bounding_box()),
            _ => None,
        };
        sheet.nodes.iter().filter_map(area).collect()
    }

    /// A square of 80 mm anywhere on the page holds a part of the watermark: no half of an art field goes without.
    #[test]
    fn a_watermark_reaches_every_part_of_a_page() {
        for size in [Size::new(210.0, 297.0), Size::new(320.0, 180.0)] {
            let marks = fills(&watermark("Quay", size).unwrap());
            for x in 0..=(size.width as u32 - 80) / 10 {
                for y in 0..=(size.height as u32 - 80) / 10 {
                    let square =
                        Rect::from_origin_size((f64::from(x) * 10.0, f64::from(y) * 10.0), Size::new(80.0, 80.0));
                    let middle = |mark: &Rect| square.contains(mark.center());
                    assert!(marks.iter().any(middle), "{square:?}");
                }
            }
        }
    }

    #[test]
    fn long_words_are_set_smaller() {
        let label = |width| Label {
            words: "Harbour Lights".to_owned(),
            at: Point::new(50.0, 50.0),
            width,
            size: Pt(20.0),
            strong: true,
            boxed: false,
        };
        let widths = [100.0, 20.0].map(|width| {
            let card = card(Size::new(100.0, 100.0), &[label(width)]).unwrap();
            let Some(Node::Text(run)) = card.nodes.first() else { panic!() };
            run.glyphs.iter().map(|glyph| glyph.advance).sum::<f64>()
        });
        assert!(widths[1] <= 20.0 + 1e-6 && widths[1] < widths[0], "{widths:?}");
    }

    #[test]
    fn a_letter_without_a_glyph_is_told() {
        assert_eq!(watermark("港", Size::new(100.0, 100.0)).unwrap_err().character, '港');
    }
}
