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

/// A part of a page in colour, as another program gave it.
#[derive(Debug)]
pub(super) struct Picture {
    pub(super) ppi: f64,
    /// Dots between the corner of the page and the corner of this part.
    pub(super) origin: [u32; 2],
    /// Columns and rows.
    pub(super) size: [usize; 2],
    pub(super) bytes: Vec<u8>,
    /// Bytes a dot: one of grey, or red, green, blue and perhaps more. Bytes a row. Bytes before the first dot.
    pub(super) dot: usize,
    pub(super) row: usize,
    pub(super) start: usize,
}

/// A part of a page as one eye sees it.
#[derive(Debug)]
pub(super) struct Seen<'a> {
    picture: &'a Picture,
    /// Dots a millimetre.
    scale: f64,
    /// The corner of this part, page mm.
    origin: [f64; 2],
    ground: [u8; 3],
    /// The first and the last channel that the filter passes.
    channels: [usize; 2],
}

impl Picture {
    /// The page behind the filter of one eye.
    pub(super) fn seen(&self, view: &View, eye: Eye) -> Seen<'_> {
        let filter = match eye {
            Eye::Left => view.left,
            Eye::Right => view.right,
        };
        let channels = match filter {
            Filter::Red => [0, 0],
            Filter::Cyan => [1, 2],
        };
        let scale = self.ppi / INCH;
        let origin = self.origin.map(|dots| f64::from(dots) / scale);
        Seen { picture: self, scale, origin, ground: view.ground, channels }
    }
}

impl Seen<'_> {
    /// The side of a dot, mm.
    pub(super) fn dot(&self) -> f64 {
        1.0 / self.scale
    }

    /// Columns and rows.
    pub(super) fn size(&self) -> [usize; 2] {
        self.picture.size
    }

    /// The middle of a dot, page mm.
    pub(super) fn middle(&self, x: usize, y: usize) -> [f64; 2] {
        [self.origin[0] + (x as f64 + 0.5) / self.scale, self.origin[1] + (y as f64 + 0.5) / self.scale]
    }

    /// Ink of a dot: 0 is ground, 255 is full ink. Outside of the part there is nothing to see, and asking for it is a
    /// mistake.
    pub(super) fn ink(&self, x: usize, y: usize) -> u8 {
        let Picture { size: [width, height], bytes, dot, row, start, .. } = self.picture;
        assert!(x < *width && y < *height, "dot {x}, {y} of {width} × {height}");
        let at = start + y * row + x * dot;
        let [first, last] = self.channels;
        if *dot == 1 {
            return bytes[at].abs_diff(self.ground[first]);
        }
        bytes[at + first].abs_diff(self.ground[first]).max(bytes[at + last].abs_diff(self.ground[last]))
    }

    /// The dot that holds a place.
    pub(super) fn dot_at(&self, [x, y]: [f64; 2]) -> [usize; 2] {
        let [x, y] = [(x - self.origin[0]) * self.scale, (y - self.origin[1]) * self.scale];
        assert!(0.0 <= x && 0.0 <= y, "{x}, {y} lies outside of the part that was read");
        [x as usize, y as usize]
    }

    /// The dots of a box, page mm, that lie in this part: from the first to one past the last.
    pub(super) fn dots(&self, low: [f64; 2], high: [f64; 2]) -> [std::ops::Range<usize>; 2] {
        let range = |axis: usize| {
            let most = self.size()[axis] as f64;
            let place = |mm: f64| ((mm - self.origin[axis]) * self.scale).round().clamp(0.0, most) as usize;
            place(low[axis])..place(high[axis])
        };
        [range(0), range(1)]
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
