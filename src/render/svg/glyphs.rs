//! Glyph outlines: each one defined once, then placed by reference.

use std::collections::BTreeMap;

use super::data;
use crate::layout::fonts;
use crate::layout::sheet::{Face, TextRun};

/// Units of an outline in one em: those of the font files, so that outlines have short numbers.
pub(crate) const UNITS: f64 = 1000.0;

/// Decimals of an outline: points between two points of a font lie on halves.
const DECIMALS: u32 = 1;

/// The glyphs of a page that were placed so far, with their path data; blanks have none.
#[derive(Default)]
pub(crate) struct Glyphs(BTreeMap<(Face, u16), String>);

impl Glyphs {
    /// Writes the glyphs of a run, in units, from the start of its baseline.
    pub(crate) fn place(&mut self, run: &TextRun, out: &mut String) {
        let scale = UNITS / run.size;
        let mut pen = 0.0;
        for glyph in &run.glyphs {
            let shape = self.0.entry((run.face, glyph.id)).or_insert_with(|| outline(run.face, glyph.id));
            if !shape.is_empty() {
                out.push_str("<use xlink:href=\"#");
                name(out, run.face, glyph.id);
                out.push('"');
                coordinate(out, " x=\"", (pen + glyph.offset.0) * scale);
                coordinate(out, " y=\"", glyph.offset.1 * scale);
                out.push_str("/>");
            }
            pen += glyph.advance;
        }
    }

    /// Writes the outlines of all placed glyphs.
    pub(crate) fn define(&self, out: &mut String) {
        out.push_str("<defs>\n");
        for ((face, glyph), shape) in self.0.iter().filter(|(_, shape)| !shape.is_empty()) {
            out.push_str("<path id=\"");
            name(out, *face, *glyph);
            out.push_str("\" d=\"");
            out.push_str(shape);
            out.push_str("\"/>\n");
        }
        out.push_str("</defs>\n");
    }
}

/// An attribute, unless it is 0 and may be left out.
fn coordinate(out: &mut String, start: &str, value: f64) {
    let before = out.len();
    out.push_str(start);
    let digits = out.len();
    data::number(out, value, DECIMALS);
    if &out[digits..] == "0" { out.truncate(before) } else { out.push('"') }
}

/// Names depend on the font alone, so several pages can stand in one document.
fn name(out: &mut String, face: Face, glyph: u16) {
    out.push(match face {
        Face::Regular => 'r',
        Face::Bold => 'b',
    });
    data::integer(out, u64::from(glyph));
}

fn outline(face: Face, glyph: u16) -> String {
    let mut shape = String::new();
    data::path(&mut shape, &fonts::outline(face, glyph), UNITS, DECIMALS);
    shape
}
