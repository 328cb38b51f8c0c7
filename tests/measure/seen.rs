//! What one eye gets of a page: how much ink each dot holds behind an ideal filter.
//!
//! The rule is stated here anew, apart from `src/colour`. A red filter passes the red light of a dot and a cyan filter
//! its green and blue light; an eye sees a mark where the light that its filter passes differs from that of the ground.
//! It holds on white ground, where marks take light away, and on black ground, where marks are light.
//! Published: "Anaglyphs", lexicon at proofing.de (white ground); hobyrne, "Anaglyph", everything2.com (what looks dark
//! and light through a red filter).

use super::page::Eye;

/// Millimetres in an inch.
pub(super) const INCH: f64 = 25.4;

/// A filter of the glasses.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Filter {
    Red,
    Cyan,
}

/// What a picture is read with: glasses as worn, and the colour of the bare page.
#[derive(Debug, Clone, Copy)]
pub(super) struct View {
    pub(super) left: Filter,
    pub(super) right: Filter,
    pub(super) ground: [u8; 3],
}

/// A part of a page in colour, row by row.
#[derive(Debug, Clone)]
pub(super) struct Picture {
    pub(super) ppi: f64,
    /// Dots between the corner of the page and the corner of this part.
    pub(super) origin: [u32; 2],
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) rgb: Vec<[u8; 3]>,
}

/// Ink as one eye sees it: 0 is ground, 255 is full ink.
#[derive(Debug, Clone)]
pub(super) struct Plane {
    /// Dots a millimetre.
    scale: f64,
    /// The corner of this part, page mm.
    origin: [f64; 2],
    width: usize,
    height: usize,
    ink: Vec<u8>,
}

impl Picture {
    /// The page behind the filter of one eye.
    pub(super) fn seen(&self, view: &View, eye: Eye) -> Plane {
        let filter = match eye {
            Eye::Left => view.left,
            Eye::Right => view.right,
        };
        let channels = match filter {
            Filter::Red => 0..1,
            Filter::Cyan => 1..3,
        };
        let differs = |dot: &[u8; 3]| channels.clone().map(|c| dot[c].abs_diff(view.ground[c])).max().unwrap();
        let scale = self.ppi / INCH;
        Plane {
            scale,
            origin: self.origin.map(|dots| f64::from(dots) / scale),
            width: self.width,
            height: self.height,
            ink: self.rgb.iter().map(differs).collect(),
        }
    }
}

impl Plane {
    /// The side of a dot, mm.
    pub(super) fn dot(&self) -> f64 {
        1.0 / self.scale
    }

    pub(super) fn size(&self) -> [usize; 2] {
        [self.width, self.height]
    }

    /// The middle of a dot, page mm.
    pub(super) fn middle(&self, x: usize, y: usize) -> [f64; 2] {
        [self.origin[0] + (x as f64 + 0.5) / self.scale, self.origin[1] + (y as f64 + 0.5) / self.scale]
    }

    /// Ink of a dot, 0 to 255. Outside of the part there is nothing to see, and asking for it is a mistake.
    pub(super) fn ink(&self, x: usize, y: usize) -> u8 {
        assert!(x < self.width && y < self.height, "dot {x}, {y} of {} × {}", self.width, self.height);
        self.ink[y * self.width + x]
    }

    /// The dot that holds a place.
    pub(super) fn dot_at(&self, [x, y]: [f64; 2]) -> [usize; 2] {
        let [x, y] = [(x - self.origin[0]) * self.scale, (y - self.origin[1]) * self.scale];
        assert!(0.0 <= x && 0.0 <= y, "{x}, {y} lies outside of the part that was read");
        [x as usize, y as usize]
    }

    /// The dots of a box, page mm, that lie in this part: from the first to one past the last.
    pub(super) fn dots(&self, low: [f64; 2], high: [f64; 2]) -> [std::ops::Range<usize>; 2] {
        let range = |axis: usize, most: usize| {
            let place = |mm: f64| ((mm - self.origin[axis]) * self.scale).round().clamp(0.0, most as f64) as usize;
            place(low[axis])..place(high[axis])
        };
        [range(0, self.width), range(1, self.height)]
    }

    /// The share of ink at a place, from 0 to 1, between the middles of the four dots around it.
    pub(super) fn share(&self, [x, y]: [f64; 2]) -> f64 {
        let x = (x - self.origin[0]) * self.scale - 0.5;
        let y = (y - self.origin[1]) * self.scale - 0.5;
        assert!(0.0 <= x && 0.0 <= y, "{x}, {y} lies outside of the part that was read");
        let (column, row) = (x as usize, y as usize);
        let (u, v) = (x - column as f64, y - row as f64);
        let ink = |dx: usize, dy: usize| f64::from(self.ink(column + dx, row + dy));
        let upper = ink(0, 0) * (1.0 - u) + ink(1, 0) * u;
        let lower = ink(0, 1) * (1.0 - u) + ink(1, 1) * u;
        (upper * (1.0 - v) + lower * v) / 255.0
    }
}
