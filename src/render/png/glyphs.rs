//! Coverage of glyphs, rastered once for each face, size and quarter of a pixel, and kept.
//!
//! It knows no page: positions and tones belong to [`super::words`].

use std::collections::BTreeMap;

use kurbo::{Affine, Point, Rect, Shape, Vec2};

use super::outline::{self, NotFinite, ToPixels, index, real};
use super::pad::{Levels, Pad};
use super::sweep::Sweep;
use crate::layout::fonts;
use crate::layout::sheet::Face;

/// Positions a pixel is divided into, in x and in y.
const PHASES: i64 = 4;

/// Bytes of coverage kept from one page to the next; beyond it the cache starts anew.
const KEPT: usize = 4 << 20;

/// Grades of the coverage of a glyph: as many as a page of words alone can show.
const GRADES: Levels = Levels { steps: 15, unit: 17 };

/// Glyphs of the size of more pixels than this are drawn as plain outlines.
pub(super) const MAX_SIZE: f64 = 256.0;

/// The glyphs seen so far.
#[derive(Debug, Default)]
pub(super) struct Cache {
    bitmaps: BTreeMap<Key, Bitmap>,
    coverage: Vec<u8>,
    sweep: Sweep,
    pad: Pad,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Key {
    face: Face,
    /// Bits of the size in pixels.
    size: u64,
    glyph: u16,
    phase: (i64, i64),
}

/// A rastered glyph: where its coverage is kept, its extent, and its upper left pixel from the pixel of its origin.
#[derive(Debug, Clone, Copy)]
pub(super) struct Bitmap {
    start: usize,
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) left: i64,
    pub(super) top: i64,
}

impl Cache {
    /// Call between pages: bounds what is kept.
    pub(super) fn tidy(&mut self) {
        if self.coverage.len() > KEPT {
            self.bitmaps.clear();
            self.coverage.clear();
        }
    }

    /// The glyph with its origin at the quarter pixel nearest to `at`, and the pixel that its offsets count from.
    /// Size and place in pixels, the size at most [`MAX_SIZE`]; a glyph of a negative size stands on its head.
    pub(super) fn place(
        &mut self,
        face: Face,
        size: f64,
        glyph: u16,
        at: Point,
    ) -> Result<(Bitmap, (i64, i64)), NotFinite> {
        let quarters = (quarters(at.x)?, quarters(at.y)?);
        let phase = (quarters.0.rem_euclid(PHASES), quarters.1.rem_euclid(PHASES));
        let key = Key { face, size: size.to_bits(), glyph, phase };
        let bitmap = match self.bitmaps.get(&key) {
            Some(&bitmap) => bitmap,
            None => {
                let bitmap = self.raster(key, size)?;
                self.bitmaps.insert(key, bitmap);
                bitmap
            }
        };
        Ok((bitmap, (quarters.0.div_euclid(PHASES), quarters.1.div_euclid(PHASES))))
    }

    /// One row of the coverage of a glyph.
    pub(super) fn row(&self, bitmap: &Bitmap, row: usize) -> &[u8] {
        let start = bitmap.start + row * bitmap.width;
        &self.coverage[start..start + bitmap.width]
    }

    fn raster(&mut self, key: Key, size: f64) -> Result<Bitmap, NotFinite> {
        let start = self.coverage.len();
        let path = fonts::outline(key.face, key.glyph);
        let shift = Vec2::new(quarter(key.phase.0), quarter(key.phase.1));
        let bounds = (Affine::translate(shift) * Affine::scale(size) * &path).bounding_box();
        if path.is_empty() {
            return Ok(Bitmap { start, width: 0, height: 0, left: 0, top: 0 });
        }
        let Rect { x0, y0, x1, y1 } = bounds;
        let (left, top) = (x0.floor(), y0.floor());
        let (width, height) = (index(x1.ceil() - left), index(y1.ceil() - top));
        self.sweep.clear();
        let (edges, number) = self.sweep.add_path();
        let to = ToPixels { scale: size, shift: shift - Vec2::new(left, top) };
        outline::edges(&path, to, real(height), number, edges)?;
        self.sweep.rewind(height);
        self.coverage.resize(start + width * height, 0);
        for (y, row) in self.coverage[start..].chunks_exact_mut(width.max(1)).enumerate() {
            self.sweep.row(y, &mut self.pad, row, GRADES);
        }
        Ok(Bitmap { start, width, height, left: whole(left), top: whole(top) })
    }
}

/// A place in quarters of a pixel, to the nearest.
fn quarters(place: f64) -> Result<i64, NotFinite> {
    let quarters = (place * real(4)).round();
    if quarters.abs() < 1e12 { Ok(whole(quarters)) } else { Err(NotFinite) }
}

fn quarter(phase: i64) -> f64 {
    f64::from(i32::try_from(phase).unwrap_or(0)) / 4.0
}

#[allow(clippy::cast_possible_truncation, reason = "callers pass whole numbers far below 2^53")]
fn whole(x: f64) -> i64 {
    x as i64
}
