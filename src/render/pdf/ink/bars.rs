//! Fields of dots as level strokes.
//!
//! Row by row, each in a frame of its own whose unit is a micrometre: whole numbers are short, the same ends come again
//! in the overlap while the packer still knows them, and no place is off by more than a micrometre. Against one
//! path an ink in points, 60 000 bars take 0.3 instead of 0.6 MB.

use krilla::color::Color;
use krilla::geom::{PathBuilder, Transform};
use krilla::paint::Stroke;

use super::{Ink, points, single};
use crate::colour::Inks;
use crate::layout::sheet::{Bar, Dots};
use crate::units::Mm;

/// Units of a row's frame in a millimetre.
const UNITS: f64 = 1e3;

/// How far the first bar of a path leans, in units: poppler moves the ends of strokes to whole pixels, but only where all
/// strokes of a path are level or upright. A depth below a pixel would be lost by that.
const LEAN: f32 = 1.0;

impl Ink<'_, '_> {
    /// Draws a field: in each row left, right, overlap, flat, later ones over earlier ones.
    pub(super) fn dots(&mut self, dots: &Dots) -> Result<(), &'static str> {
        let lists = [&dots.left, &dots.right, &dots.overlap, &dots.flat];
        let known = |bar: &Bar| [bar.x0, bar.x1, bar.y].iter().all(|value| value.is_finite());
        if !lists.iter().all(|list| list.height.is_finite() && list.bars.iter().all(known)) {
            return Err("a dot has an end that is no number");
        }
        let Inks { left, right, both, .. } = *self.inks;
        let colours = [left, right, both, both].iter().map(|ink| self.solid(*ink)).collect::<Result<Vec<_>, _>>()?;
        let origin = lists.iter().flat_map(|list| &list.bars).map(|bar| bar.x0).fold(f64::INFINITY, f64::min);
        let mut rest = lists.map(|list| list.bars.as_slice());
        while let Some(y) = rest.iter().filter_map(|bars| bars.first()).map(|bar| bar.y).min_by(f64::total_cmp) {
            self.surface.push_transform(&frame(origin, y));
            for ((bars, list), colour) in rest.iter_mut().zip(lists).zip(&colours) {
                let (row, below) = bars.split_at(bars.partition_point(|bar| bar.y <= y));
                self.row(row, origin, list.height, colour.clone());
                *bars = below;
            }
            self.surface.pop();
        }
        Ok(())
    }

    /// Draws bars of one row and one ink.
    fn row(&mut self, bars: &[Bar], origin: f64, height: f64, colour: Color) {
        let units = |mm: f64| single((mm * UNITS).round());
        let mut builder = PathBuilder::new();
        for (index, bar) in bars.iter().enumerate() {
            builder.move_to(units(bar.x0 - origin), 0.0);
            builder.line_to(units(bar.x1 - origin), if index == 0 { LEAN } else { 0.0 });
        }
        if let Some(path) = builder.finish() {
            self.surface.set_fill(None);
            self.surface.set_stroke(Some(Stroke { paint: colour.into(), width: units(height), ..Stroke::default() }));
            self.surface.draw_path(&path);
            self.surface.set_stroke(None);
        }
    }
}

/// From the units of a row to points.
fn frame(x: f64, y: f64) -> Transform {
    let scale = single(Mm(1.0 / UNITS).to_pt().0);
    Transform::from_row(scale, 0.0, 0.0, scale, points(x), points(y))
}
