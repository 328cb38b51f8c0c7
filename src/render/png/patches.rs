//! Patches: solid areas in colours of their own, on whole pixels.
//!
//! A pixel belongs to a patch if at least half of it is covered: its colour is then exact everywhere, which is what
//! swatches and ghost patches are for, and its edges are not soft. It knows no art and no words.

use kurbo::Vec2;

use super::outline::{self, NotFinite, ToPixels, real};
use super::pad::{Levels, Pad};
use super::palette::Palette;
use super::sweep::Sweep;
use crate::colour::Srgb8;
use crate::layout::sheet::Patch;

/// The coverage, of 255, from which a pixel belongs to a patch.
const HALF: u8 = 128;

/// All patches of one page.
#[derive(Debug, Default)]
pub(super) struct Patches {
    /// Their colours, each once, in the order in which they come.
    colours: Vec<Srgb8>,
    /// The place of each patch's colour among the colours.
    of: Vec<usize>,
    /// Their shapes; those past the number of patches are spare.
    shapes: Vec<Sweep>,
}

impl Patches {
    pub(super) fn clear(&mut self) {
        self.colours.clear();
        self.of.clear();
    }

    /// Adds a patch. `scale` is in pixels a mm, `height` the rows of the page.
    pub(super) fn add(&mut self, patch: &Patch, scale: f64, height: usize) -> Result<(), NotFinite> {
        let known = self.colours.iter().position(|colour| *colour == patch.colour);
        let colour = known.unwrap_or(self.colours.len());
        if known.is_none() {
            self.colours.push(patch.colour);
        }
        if self.of.len() == self.shapes.len() {
            self.shapes.push(Sweep::default());
        }
        let shape = &mut self.shapes[self.of.len()];
        self.of.push(colour);
        shape.clear();
        let (edges, number) = shape.add_path();
        outline::edges(&patch.path, ToPixels { scale, shift: Vec2::ZERO }, real(height), number, edges)
    }

    /// The colours, each once.
    pub(super) fn colours(&self) -> &[Srgb8] {
        &self.colours
    }

    /// Call after the last patch and before the first row.
    pub(super) fn rewind(&mut self, height: usize) {
        self.shapes.iter_mut().take(self.of.len()).for_each(|shape| shape.rewind(height));
    }

    /// Lays the patches of row `y` over a line of palette indices; `cover` is a buffer as long as the line.
    pub(super) fn row(&mut self, y: usize, pad: &mut Pad, cover: &mut [u8], palette: &Palette, line: &mut [u8]) {
        for (shape, &colour) in self.shapes.iter_mut().zip(&self.of) {
            let marked = shape.row(y, pad, cover, Levels::FULL);
            for (index, &covered) in line[marked.clone()].iter_mut().zip(&cover[marked]) {
                if HALF <= covered {
                    *index = palette.patch(colour);
                }
            }
        }
    }

    /// The first row after `y` that may differ from row `y`, which was drawn last.
    pub(super) fn same_until(&self, y: usize) -> usize {
        let shapes = self.shapes.iter().zip(&self.of);
        shapes.map(|(shape, _)| shape.same_until(y)).min().unwrap_or(usize::MAX)
    }
}
