//! One row of coverage in the making: signed areas in, bytes out.
//!
//! It knows no winding rule: what starts and what ends where is told by [`super::cover`].

use std::ops::Range;

use super::outline::{index, real};

/// The work space of a row, shared by all shapes of a page.
#[derive(Debug, Default)]
pub(super) struct Pad {
    /// By how much the coverage of a pixel differs from its left neighbour.
    steps: Vec<f64>,
    /// Pixels where `steps` may differ from zero; in the end from left to right.
    touched: Vec<Range<usize>>,
}

/// How coverage becomes bytes: `unit` times the nearest of the whole numbers 0 to `steps`.
#[derive(Debug, Clone, Copy)]
pub(super) struct Levels {
    pub(super) steps: u8,
    pub(super) unit: u8,
}

impl Levels {
    /// Plain 8-bit coverage.
    pub(super) const FULL: Levels = Levels { steps: 255, unit: 1 };

    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "bounded by `steps`; rounding is meant")]
    fn of(self, coverage: f64) -> u8 {
        let steps = f64::from(self.steps);
        (coverage * steps + 0.5).min(steps) as u8 * self.unit
    }
}

impl Pad {
    /// Begins a row of so many pixels.
    pub(super) fn open(&mut self, width: usize) {
        self.steps.resize(width + 2, 0.0);
        self.touched.clear();
    }

    /// Marks the pixels that an edge from `left` to `right` may change. Best called with rising `left`.
    pub(super) fn touch(&mut self, left: f64, right: f64) {
        let width = self.steps.len() - 2;
        let (first, end) = (index(left).min(width), (index(right) + 2).min(width + 1));
        match self.touched.last_mut() {
            Some(last) if last.start <= first && first <= last.end => last.end = last.end.max(end),
            _ => self.touched.push(first..end),
        }
    }

    /// Adds the coverage of all that lies right of an edge piece between `x0` and `x1` of this height, which is
    /// negative where the shape ends.
    ///
    /// The coverage of a pixel right of the piece is the height; of a pixel that the piece crosses, the area right of
    /// the piece. With u the distance from the left end and L the extent of the piece, the area up to u is u²/2L within
    /// the piece and u - L/2 beyond it; a pixel takes the difference of two such areas.
    pub(super) fn add(&mut self, x0: f64, x1: f64, height: f64) {
        let width = self.steps.len() - 2;
        let (left, right) = (x0.min(x1), x0.max(x1));
        if right <= 0.0 {
            self.steps[0] += height;
            return;
        }
        if height == 0.0 || real(width) <= left {
            return;
        }
        let (first, extent) = (index(left), right - left);
        if 0.0 <= left && right <= real(first + 1) {
            let beyond = height * (0.5 * (left + right) - real(first));
            self.steps[first] += height - beyond;
            self.steps[first + 1] += beyond;
            return;
        }
        let area = |u: f64| if u < extent { u * u / (2.0 * extent) } else { u - 0.5 * extent };
        let (mut before, mut last) = (area((real(first) - left).max(0.0)), 0.0);
        let end = index(right).min(width - 1) + 1;
        for x in first..end {
            let after = area(real(x + 1) - left);
            let cover = height * (after - before);
            self.steps[x] += cover - last;
            (before, last) = (after, cover);
        }
        self.steps[end] += height - last;
    }

    /// Puts what was touched in order, each pixel once.
    fn sort(&mut self) {
        self.touched.sort_unstable_by_key(|touched| touched.start);
        self.touched.dedup_by(|next, last| {
            let meets = next.start <= last.end;
            if meets {
                last.end = last.end.max(next.end);
            }
            meets
        });
    }

    /// Sums the steps to coverage, writes it, tells from which pixel to which, and leaves the pad clean.
    pub(super) fn close(&mut self, out: &mut [u8], levels: Levels) -> Range<usize> {
        let width = out.len();
        if !self.touched.is_sorted_by_key(|touched| touched.start) {
            self.sort();
        }
        let start = self.touched.first().map_or(0, |touched| touched.start);
        let (mut cover, mut x) = (0.0, start);
        for touched in self.touched.drain(..) {
            out[x..touched.start].fill(levels.of(cover));
            x = touched.end.min(width);
            for (step, pixel) in self.steps[touched.start..x].iter_mut().zip(&mut out[touched.start..x]) {
                cover += std::mem::take(step);
                *pixel = levels.of(cover);
            }
        }
        self.steps[width..].fill(0.0);
        if levels.of(cover) > 0 {
            // The shape goes on beyond the right edge of the page.
            out[x..].fill(levels.of(cover));
            x = width;
        }
        start..x
    }
}
