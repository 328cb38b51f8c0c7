//! The words and furniture of a page: glyphs and fills in the text ink, drawn over each other in reading order.
//!
//! It gives one row of ink strength, 0 (bare ground) to 255 (full text ink). It knows no art and no colour.

use std::ops::Range;

use kurbo::{Point, Vec2};

use super::glyphs::{self, Bitmap, Cache};
use super::outline::{self, NotFinite, ToPixels, index, real};
use super::pad::{Levels, Pad};
use super::sweep::Sweep;
use crate::layout::fonts;
use crate::layout::sheet::{Fill, TextRun, Tone};

/// All glyphs and fills of one page.
#[derive(Debug, Default)]
pub(super) struct Words {
    items: Vec<Item>,
    /// Items by their first row.
    queue: Vec<u32>,
    next: usize,
    /// Items of the present row, in reading order.
    live: Vec<u32>,
    /// Shapes of the fills; those from `shapes` on are spare.
    pool: Vec<Sweep>,
    shapes: usize,
    cover: Vec<u8>,
}

#[derive(Debug)]
struct Item {
    rows: Range<usize>,
    /// Ink strength, 0 to 255.
    tone: u8,
    mark: Mark,
}

#[derive(Debug)]
enum Mark {
    /// Index of its shape in the pool.
    Shape(usize),
    /// A kept glyph and the page pixel of its upper left corner.
    Glyph(Bitmap, (i64, i64)),
}

impl Words {
    pub(super) fn clear(&mut self) {
        self.items.clear();
        self.shapes = 0;
    }

    /// Adds a fill. `scale` is in pixels a mm, `height` the rows of the page.
    pub(super) fn add_fill(&mut self, fill: &Fill, scale: f64, height: usize) -> Result<(), NotFinite> {
        self.add_shape(&fill.path, ToPixels { scale, shift: Vec2::ZERO }, fill.tone, height)
    }

    /// Adds the glyphs of a run.
    pub(super) fn add_run(
        &mut self,
        run: &TextRun,
        scale: f64,
        height: usize,
        cache: &mut Cache,
    ) -> Result<(), NotFinite> {
        // Outlines of a negative size stand on their heads.
        let turn = if run.turned { -1.0 } else { 1.0 };
        let size = turn * run.size * scale;
        let mut pen = run.origin.x;
        for glyph in &run.glyphs {
            let (x, y) = (pen + turn * glyph.offset.0, run.origin.y + turn * glyph.offset.1);
            let at = Point::new(x * scale, y * scale);
            pen += turn * glyph.advance;
            if size.abs() <= glyphs::MAX_SIZE {
                let (bitmap, (x, y)) = cache.place(run.face, size, glyph.id, at)?;
                self.add_glyph(bitmap, (x + bitmap.left, y + bitmap.top), run.tone, height);
            } else {
                let to = ToPixels { scale: size, shift: at.to_vec2() };
                self.add_shape(&fonts::outline(run.face, glyph.id), to, run.tone, height)?;
            }
        }
        Ok(())
    }

    fn add_shape(&mut self, path: &kurbo::BezPath, to: ToPixels, tone: Tone, height: usize) -> Result<(), NotFinite> {
        if self.shapes == self.pool.len() {
            self.pool.push(Sweep::default());
        }
        let shape = &mut self.pool[self.shapes];
        shape.clear();
        let (edges, number) = shape.add_path();
        outline::edges(path, to, real(height), number, edges)?;
        shape.rewind(height);
        self.items.push(Item { rows: shape.rows(), tone: strength(tone), mark: Mark::Shape(self.shapes) });
        self.shapes += 1;
        Ok(())
    }

    fn add_glyph(&mut self, bitmap: Bitmap, (left, top): (i64, i64), tone: Tone, height: usize) {
        let row = |y: i64| usize::try_from(y).unwrap_or(0).min(height);
        let rows = row(top)..row(top.saturating_add_unsigned(bitmap.height as u64));
        self.items.push(Item { rows, tone: strength(tone), mark: Mark::Glyph(bitmap, (left, top)) });
    }

    /// Call after the last item and before the first row.
    pub(super) fn rewind(&mut self, width: usize) {
        self.items.retain(|item| !item.rows.is_empty());
        self.queue.clear();
        self.queue.extend((0u32..).zip(&self.items).map(|(i, _)| i));
        self.queue.sort_by_key(|&i| self.items[i as usize].rows.start);
        self.next = 0;
        self.live.clear();
        self.cover.resize(width, 0);
    }

    /// Draws row `y` over `out`, which is bare, and tells which pixels it may have drawn.
    pub(super) fn row(&mut self, y: usize, cache: &Cache, pad: &mut Pad, out: &mut [u8]) -> Range<usize> {
        self.advance(y);
        let Self { items, live, pool, cover, .. } = self;
        let (mut start, mut end) = (out.len(), 0);
        for &i in live.iter() {
            let item = &items[i as usize];
            let drawn = match &item.mark {
                Mark::Shape(shape) => {
                    let marked = pool[*shape].row(y, pad, cover, Levels::FULL);
                    let left = i64::try_from(marked.start).unwrap_or(0);
                    stamp(out, &cover[marked], left, item.tone)
                }
                Mark::Glyph(bitmap, (left, top)) => {
                    let row = y.checked_add_signed(-isize::try_from(*top).unwrap_or(0)).unwrap_or(0);
                    stamp(out, cache.row(bitmap, row), *left, item.tone)
                }
            };
            (start, end) = (start.min(drawn.start), end.max(drawn.end));
        }
        start.min(end)..end
    }

    /// The first row after `y` that may differ from row `y`, which was drawn last.
    pub(super) fn same_until(&self, y: usize) -> usize {
        let next = self.queue.get(self.next).map_or(usize::MAX, |&i| self.items[i as usize].rows.start);
        let live = self.live.iter().map(|&i| match self.items[i as usize].mark {
            Mark::Shape(shape) => self.pool[shape].same_until(y),
            Mark::Glyph(..) => y + 1,
        });
        live.min().unwrap_or(usize::MAX).min(next).max(y + 1)
    }

    fn advance(&mut self, y: usize) {
        let Self { items, live, queue, next, .. } = self;
        live.retain(|&i| items[i as usize].rows.contains(&y));
        while let Some(&i) = queue.get(*next) {
            if items[i as usize].rows.start > y {
                break;
            }
            *next += 1;
            live.insert(live.partition_point(|&other| other < i), i);
        }
    }
}

/// Lays ink of one tone, by coverage, over the pixels of a row from pixel `left` on. Tells which pixels it drew.
fn stamp(out: &mut [u8], cover: &[u8], left: i64, tone: u8) -> Range<usize> {
    let skip = usize::try_from(left.saturating_neg()).unwrap_or(0).min(cover.len());
    let start = usize::try_from(left).unwrap_or(0).min(out.len());
    let end = (start + cover.len() - skip).min(out.len());
    for (pixel, &cover) in out[start..end].iter_mut().zip(&cover[skip..]) {
        *pixel = over(*pixel, tone, cover);
    }
    start..end
}

/// The strength of a pixel of strength `below` of which a share of `cover` / 255 takes the strength `tone`.
fn over(below: u8, tone: u8, cover: u8) -> u8 {
    let (below, tone, cover) = (u16::from(below), u16::from(tone), u16::from(cover));
    // At most 255 * 255 + 127, so 16 bits hold it, and the result is at most 255.
    ((below * (255 - cover) + tone * cover + 127) / 255).to_le_bytes()[0]
}

/// A tone as ink strength: 0 to 255.
fn strength(tone: Tone) -> u8 {
    index((f64::from(tone.0).clamp(0.0, 1.0) * 255.0).round()).to_le_bytes()[0]
}
