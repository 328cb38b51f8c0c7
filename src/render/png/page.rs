//! One page on its way to the packer: what stands on it, and its rows from the top down.

use kurbo::{BezPath, Vec2};

use super::file::{self, Packer};
use super::glyphs::Cache;
use super::outline::{self, NotFinite, ToPixels, real};
use super::palette::{self, Palette};
use super::sweep::{Pad, Sweep};
use super::words::Words;
use crate::layout::sheet::{Art, Node, Sheet};
use crate::units::{Mm, Ppi};

/// What stands on a page, in pixels.
#[derive(Debug, Default)]
pub(super) struct Page {
    width: usize,
    height: usize,
    /// Pixels a mm.
    scale: f64,
    left: Sweep,
    right: Sweep,
    words: Words,
}

/// The buffers of one row.
#[derive(Debug, Default)]
pub(super) struct Rows {
    /// The filter type and the palette indices.
    line: Vec<u8>,
    right: Vec<u8>,
    words: Vec<u8>,
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
        self.words.clear();
        cache.tidy();
        self.add_nodes(&sheet.nodes, cache)?;
        self.left.rewind(height);
        self.right.rewind(height);
        self.words.rewind(width);
        Ok(())
    }

    fn add_nodes(&mut self, nodes: &[Node], cache: &mut Cache) -> Result<(), NotFinite> {
        nodes.iter().try_for_each(|node| match node {
            Node::Group(_, nodes) => self.add_nodes(nodes, cache),
            Node::Text(run) => self.words.add_run(run, self.scale, self.height, cache),
            Node::Fill(fill) => self.words.add_fill(fill, self.scale, self.height),
            Node::Art(art) => self.add_art(art),
        })
    }

    fn add_art(&mut self, art: &Art) -> Result<(), NotFinite> {
        let to = ToPixels { scale: self.scale, shift: Vec2::ZERO };
        let height = real(self.height);
        let add = |eye: &mut Sweep, paths: &[BezPath]| {
            paths.iter().try_for_each(|path| {
                let (edges, number) = eye.add_path();
                outline::edges(path, to, height, number, edges)
            })
        };
        add(&mut self.left, &art.left)?;
        add(&mut self.left, &art.flat)?;
        add(&mut self.right, &art.right)?;
        add(&mut self.right, &art.flat)
    }

    /// Sends all rows to the packer.
    pub(super) fn draw(
        &mut self,
        rows: &mut Rows,
        cache: &Cache,
        palette: &Palette,
        packer: &mut Packer,
    ) -> std::io::Result<()> {
        rows.resize(self.width);
        let mut y = 0;
        while y < self.height {
            self.row(y, rows, cache, palette);
            packer.row(&rows.line)?;
            let next = self.same_until(y).min(self.height);
            packer.repeat(next - y - 1)?;
            y = next;
        }
        Ok(())
    }

    /// Leaves the palette indices of row `y` in `rows.line`.
    fn row(&mut self, y: usize, rows: &mut Rows, cache: &Cache, palette: &Palette) {
        let Rows { line, right, words, pad } = rows;
        let line = &mut line[1..];
        line.fill(0);
        self.left.row(y, pad, line, palette::LEFT);
        let marked = self.right.row(y, pad, right, palette::RIGHT);
        line[marked.clone()].iter_mut().zip(&right[marked]).for_each(|(index, right)| *index += right);
        let inked = self.words.row(y, cache, pad, words);
        for (index, strength) in line[inked.clone()].iter_mut().zip(&mut words[inked]) {
            *index = palette.text_over(*index, std::mem::take(strength));
        }
    }

    fn same_until(&self, y: usize) -> usize {
        self.left.same_until(y).min(self.right.same_until(y)).min(self.words.same_until(y))
    }
}

impl Rows {
    fn resize(&mut self, width: usize) {
        self.line.clear();
        self.line.resize(width + 1, 0);
        self.line[0] = file::NONE;
        for row in [&mut self.right, &mut self.words] {
            row.clear();
            row.resize(width, 0);
        }
    }
}
