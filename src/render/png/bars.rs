//! Level bars on their way down a page: the dots of a field, for one eye.
//!
//! Bars of a row do not touch and rows do not overlap, so the coverage of a pixel is the sum of what the bars cover of
//! it: there is nothing to wind around.

use std::ops::Range;

use super::outline::{BOUND, NotFinite, index, real};
use super::pad::Pad;
use crate::layout::sheet::Bars as SheetBars;

/// The bars of a page, in pixels.
#[derive(Debug, Default)]
pub(super) struct Bars {
    /// From the top, once the page is at its first row.
    rows: Vec<Row>,
    /// Left and right ends.
    ends: Vec<(f64, f64)>,
    /// The first row that does not lie wholly above the present row of the page.
    first: usize,
}

/// Bars side by side.
#[derive(Debug, Clone, PartialEq)]
struct Row {
    top: f64,
    bottom: f64,
    /// Which of `ends`.
    bars: Range<usize>,
}

impl Bars {
    /// Forgets all bars and keeps its buffers.
    pub(super) fn clear(&mut self) {
        self.rows.clear();
        self.ends.clear();
    }

    /// Takes bars, at so many pixels a mm.
    #[expect(clippy::float_cmp, reason = "one row has one number")]
    pub(super) fn add(&mut self, bars: &SheetBars, scale: f64) -> Result<(), NotFinite> {
        let half = bars.height / 2.0;
        for row in bars.bars.chunk_by(|a, b| a.y == b.y) {
            let start = self.ends.len();
            self.ends.extend(row.iter().map(|bar| (bar.x0 * scale, bar.x1 * scale)));
            let y = row[0].y;
            let (top, bottom) = ((y - half) * scale, (y + half) * scale);
            // Written so that NaN is refused as well.
            let known = |value: f64| value.abs() <= BOUND;
            if !(known(top) && known(bottom) && self.ends[start..].iter().all(|bar| known(bar.0) && known(bar.1))) {
                return Err(NotFinite);
            }
            self.rows.push(Row { top, bottom, bars: start..self.ends.len() });
        }
        Ok(())
    }

    /// Puts the bars at the top of their page. Call after the last bars and before the first row.
    pub(super) fn rewind(&mut self) {
        self.rows.sort_by(|a, b| a.top.total_cmp(&b.top));
        self.first = 0;
    }

    /// Whether there are none.
    pub(super) fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// Adds the coverage of row `y` of the page to a pad. Rows are asked for from the top down.
    pub(super) fn cover(&mut self, y: usize, pad: &mut Pad) {
        let top = real(y);
        self.first += self.rows[self.first..].iter().take_while(|row| row.bottom <= top).count();
        for row in self.live(y) {
            let height = row.bottom.min(top + 1.0) - row.top.max(top);
            for &(left, right) in &self.ends[row.bars.clone()] {
                pad.touch(left, left);
                pad.add(left, left, height);
                pad.touch(right, right);
                pad.add(right, right, -height);
            }
        }
    }

    /// The rows of bars that reach into row `y` of the page, which was covered last.
    fn live(&self, y: usize) -> impl Iterator<Item = &Row> {
        let top = real(y);
        let rest = self.rows[self.first..].iter();
        rest.take_while(move |row| row.top < top + 1.0).filter(move |row| top < row.bottom)
    }

    /// The first row of the page after `y` that may differ from row `y`, which was covered last.
    pub(super) fn same_until(&self, y: usize) -> usize {
        let (top, mut next) = (real(y), usize::MAX);
        for row in self.live(y) {
            if top < row.top || row.bottom < top + 1.0 {
                return y + 1;
            }
            next = next.min(index(row.bottom));
        }
        let below = self.rows[self.first..].iter().find(|row| top + 1.0 <= row.top);
        next.min(below.map_or(usize::MAX, |row| index(row.top))).max(y + 1)
    }
}

#[cfg(test)]
mod tests {
    use kurbo::{Rect, Shape as _, Vec2};
    use proptest::prelude::*;

    use super::super::outline::{ToPixels, edges};
    use super::super::pad::Levels;
    use super::super::sweep::Sweep;
    use super::*;
    use crate::layout::sheet::Bar;

    const SIDE: usize = 40;

    /// Rows of bars of this height from this top, from steps between ends.
    fn field(top: f64, height: f64, rows: &[Vec<(f64, f64)>]) -> SheetBars {
        let row = |(n, steps): (usize, &Vec<(f64, f64)>)| {
            let y = top + (n as f64 + 0.5) * height;
            let mut x = -3.0;
            let bar = |&(gap, length): &(f64, f64)| {
                let x0 = x + gap;
                x = x0 + length;
                Bar { y, x0, x1: x }
            };
            steps.iter().map(bar).collect::<Vec<_>>()
        };
        SheetBars { height, bars: rows.iter().enumerate().flat_map(row).collect() }
    }

    fn page(mut row: impl FnMut(usize, &mut Pad), mut same_until: impl FnMut(usize) -> usize) -> Vec<u8> {
        let (mut page, mut pad, mut y) = (vec![0; SIDE * SIDE], Pad::default(), 0);
        while y < SIDE {
            pad.open(SIDE);
            row(y, &mut pad);
            pad.close(&mut page[y * SIDE..(y + 1) * SIDE], Levels::FULL);
            let next = same_until(y).min(SIDE);
            (y + 1..next).for_each(|row| page.copy_within(y * SIDE..(y + 1) * SIDE, row * SIDE));
            y = next;
        }
        page
    }

    /// The same bars as rectangles, through the general way.
    fn swept(bars: &SheetBars) -> Vec<u8> {
        let sweep = std::cell::RefCell::new(Sweep::default());
        for bar in &bars.bars {
            let half = bars.height / 2.0;
            let path = Rect::new(bar.x0, bar.y - half, bar.x1, bar.y + half).to_path(0.1);
            let mut sweep = sweep.borrow_mut();
            let (out, number) = sweep.add_path();
            edges(&path, ToPixels { scale: 1.0, shift: Vec2::ZERO }, real(SIDE), number, out).unwrap();
        }
        sweep.borrow_mut().rewind(SIDE);
        page(|y, pad| sweep.borrow_mut().cover(y, pad), |y| sweep.borrow().same_until(y))
    }

    proptest! {
        #[test]
        fn bars_cover_what_rectangles_cover(
            top in -5.0..30.0_f64,
            height in 0.3..9.0_f64,
            rows in prop::collection::vec(prop::collection::vec((0.01..9.0_f64, 0.01..9.0_f64), 0..6), 1..9),
        ) {
            let bars = field(top, height, &rows);
            let mut ours = Bars::default();
            ours.add(&bars, 1.0).unwrap();
            ours.rewind();
            let ours = std::cell::RefCell::new(ours);
            let covered = page(|y, pad| ours.borrow_mut().cover(y, pad), |y| ours.borrow().same_until(y));
            for (i, (a, b)) in covered.iter().zip(swept(&bars)).enumerate() {
                // Sums in another order may round to the other side.
                prop_assert!(a.abs_diff(b) <= 1, "pixel {} {}: {a} {b}", i % SIDE, i / SIDE);
            }
        }
    }

    #[test]
    fn bars_that_are_nowhere_are_refused() {
        for x in [f64::NAN, f64::INFINITY, 1e300] {
            let bars = SheetBars { height: 1.0, bars: vec![Bar { y: 1.0, x0: 0.0, x1: x }] };
            assert_eq!(Bars::default().add(&bars, 1.0), Err(NotFinite));
        }
    }
}
