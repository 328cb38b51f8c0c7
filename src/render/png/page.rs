//! One page on its way to the packer: what stands on it, and its rows from the top down.

use std::ops::Range;

use kurbo::{BezPath, Vec2};

use super::bars::Bars;
use super::file::{self, Packer};
use super::glyphs::Cache;
use super::outline::{self, NotFinite, ToPixels, real};
use super::pad::{Levels, Pad};
use super::palette::Palette;
use super::patches::Patches;
use super::sweep::Sweep;
use super::words::Words;
use crate::colour::Srgb8;
use crate::layout::sheet::{Art, Node, Sheet};
use crate::units::{Mm, Ppi};

/// What stands on a page, in pixels.
#[derive(Debug, Default)]
pub(super) struct Page {
    width: usize,
    height: usize,
    /// Pixels a mm.
    scale: f64,
    left: Half,
    right: Half,
    patches: Patches,
    words: Words,
}

/// What one eye gets: outlines, and bars that lie clear of them.
#[derive(Debug, Default)]
struct Half {
    outlines: Sweep,
    bars: Bars,
}

/// The buffers of one row.
#[derive(Debug, Default)]
pub(super) struct Rows {
    /// The filter type and the palette indices.
    line: Vec<u8>,
    right: Vec<u8>,
    words: Vec<u8>,
    patch: Vec<u8>,
    pad: Pad,
}

impl Page {
    /// Takes the content of a sheet, and puts the page at its first row.
    pub(super) fn load(
        &mut self,
        sheet: &Sheet,
        ppi: Ppi,
        (width, height): (usize, usize),
        cache: &mut Cache,
    ) -> Result<(), NotFinite> {
        (self.width, self.height) = (width, height);
        self.scale = Mm(1.0).to_pixels(ppi);
        self.left.clear();
        self.right.clear();
        self.patches.clear();
        self.words.clear();
        cache.tidy();
        self.add_nodes(&sheet.nodes, cache)?;
        self.left.rewind(height);
        self.right.rewind(height);
        self.patches.rewind(height);
        self.words.rewind(width);
        Ok(())
    }

    fn add_nodes(&mut self, nodes: &[Node], cache: &mut Cache) -> Result<(), NotFinite> {
        nodes.iter().try_for_each(|node| match node {
            Node::Group(_, nodes) => self.add_nodes(nodes, cache),
            Node::Text(run) => self.words.add_run(run, self.scale, self.height, cache),
            Node::Fill(fill) => self.words.add_fill(fill, self.scale, self.height),
            Node::Patch(patch) => self.patches.add(patch, self.scale, self.height),
            Node::Art(art) => self.add_art(art),
        })
    }

    fn add_art(&mut self, art: &Art) -> Result<(), NotFinite> {
        let (scale, height) = (self.scale, real(self.height));
        self.left.add([&art.left, &art.flat], scale, height)?;
        self.right.add([&art.right, &art.flat], scale, height)?;
        art.dots.iter().try_for_each(|dots| {
            [&dots.left, &dots.flat].into_iter().try_for_each(|bars| self.left.bars.add(bars, scale))?;
            [&dots.right, &dots.flat].into_iter().try_for_each(|bars| self.right.bars.add(bars, scale))
        })
    }

    /// Whether it has art, and so not words alone.
    pub(super) fn has_art(&self) -> bool {
        !(self.left.is_empty() && self.right.is_empty())
    }

    /// The colours of its patches.
    pub(super) fn patch_colours(&self) -> &[Srgb8] {
        self.patches.colours()
    }

    /// Sends all rows to the packer.
    pub(super) fn draw(
        &mut self,
        rows: &mut Rows,
        cache: &Cache,
        palette: &Palette,
        packer: &mut Packer,
    ) -> std::io::Result<()> {
        rows.resize(self.width, file::line_len(self.width, palette));
        let mut y = 0;
        while y < self.height {
            if palette.is_small() {
                self.row_of_words(y, rows, cache, palette);
            } else {
                self.row(y, rows, cache, palette);
            }
            packer.row(&rows.line)?;
            let next = self.same_until(y).min(self.height);
            packer.repeat(next - y - 1)?;
            y = next;
        }
        Ok(())
    }

    /// Leaves the palette indices of row `y` in `rows.line`, one a byte.
    fn row(&mut self, y: usize, rows: &mut Rows, cache: &Cache, palette: &Palette) {
        let Rows { line, right, words, patch, pad } = rows;
        let line = &mut line[1..];
        line.fill(0);
        self.left.row(y, pad, line, palette.left());
        let marked = self.right.row(y, pad, &mut right[..self.width], palette.right());
        line[marked.clone()].iter_mut().zip(&right[marked]).for_each(|(index, right)| *index += right);
        self.patches.row(y, pad, &mut patch[..self.width], palette, line);
        let inked = self.words.row(y, cache, pad, &mut words[..self.width]);
        for (index, &strength) in line[inked.clone()].iter_mut().zip(&words[inked.clone()]) {
            *index = if *index == 0 { palette.text(strength) } else { palette.text_over(*index, strength) };
        }
        words[inked].fill(0);
    }

    /// Leaves the palette indices of row `y` in `rows.line`, two a byte.
    fn row_of_words(&mut self, y: usize, rows: &mut Rows, cache: &Cache, palette: &Palette) {
        let Rows { line, words, pad, .. } = rows;
        let line = &mut line[1..];
        line.fill(0);
        let inked = self.words.row(y, cache, pad, &mut words[..self.width]);
        let (start, end) = (inked.start / 2, inked.end.div_ceil(2));
        let pairs = words[2 * start..].chunks_exact(2);
        for (byte, pair) in line[start..end.max(start)].iter_mut().zip(pairs) {
            *byte = palette.text(pair[0]) << 4 | palette.text(pair[1]);
        }
        words[inked].fill(0);
    }

    fn same_until(&self, y: usize) -> usize {
        let art = self.left.same_until(y).min(self.right.same_until(y));
        art.min(self.patches.same_until(y)).min(self.words.same_until(y))
    }
}

impl Half {
    fn clear(&mut self) {
        self.outlines.clear();
        self.bars.clear();
    }

    fn add(&mut self, lists: [&Vec<BezPath>; 2], scale: f64, height: f64) -> Result<(), NotFinite> {
        let to = ToPixels { scale, shift: Vec2::ZERO };
        lists.into_iter().flatten().try_for_each(|path| {
            let (edges, number) = self.outlines.add_path();
            outline::edges(path, to, height, number, edges)
        })
    }

    fn rewind(&mut self, height: usize) {
        self.outlines.rewind(height);
        self.bars.rewind();
    }

    fn is_empty(&self) -> bool {
        self.outlines.rows().is_empty() && self.bars.is_empty()
    }

    /// Writes the coverage of row `y` and tells to which pixels; see [`Sweep::row`].
    fn row(&mut self, y: usize, pad: &mut Pad, out: &mut [u8], levels: Levels) -> Range<usize> {
        pad.open(out.len());
        self.outlines.cover(y, pad);
        self.bars.cover(y, pad);
        pad.close(out, levels)
    }

    fn same_until(&self, y: usize) -> usize {
        self.outlines.same_until(y).min(self.bars.same_until(y))
    }
}

impl Rows {
    fn resize(&mut self, width: usize, line: usize) {
        self.line.clear();
        self.line.resize(line, 0);
        self.line[0] = file::NONE;
        for row in [&mut self.right, &mut self.words, &mut self.patch] {
            row.clear();
            // A whole number of pairs, for indices that go two a byte.
            row.resize(width.next_multiple_of(2), 0);
        }
    }
}
