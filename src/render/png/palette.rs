//! The palette: exact mixes of the inks of an edition, and how coverage becomes an index into it.
//!
//! A page with art has 256 entries: 0 to 224 are the pairs of 15 levels of coverage of the left eye's and the right
//! eye's art, 225 to 255 are 31 levels of the text ink on the ground. A page of words alone has 16 entries, from the bare
//! ground to the full text ink; it takes half the bytes. A page with patches has pairs of 13 levels, 0 to 168, so that
//! the colours of its patches have room behind the text, from 200 on.
//!
//! Mixes are made in sRGB code values, not in linear light. The partly covered pixels at the two borders of a mark are
//! then as far from the ground, in the numbers of the file, as their covered area says; so the centre of a mark
//! measured in one channel of the file is its true centre, and a page looks the same as when a common SVG or PDF
//! viewer, which mixes in code values too, rasterises the vector editions. Measured in linear light instead, both borders
//! of a mark move by the same amount: its centre keeps its place. Mixed in linear light, marks would look bolder on one
//! ground and thinner on the other, and the three formats would not agree.

use super::pad::Levels;
use crate::colour::{Inks, Srgb8};
#[cfg(doc)]
use crate::layout::sheet::Patch;

/// Levels of coverage above none, of the art of one eye.
const ART: u8 = 14;

/// The same on a page with patches.
const ART_BESIDE_PATCHES: u8 = 12;

/// Levels of the text ink above none, on a page with art or patches.
const TEXT: u8 = 31;

/// Levels of the text ink above none, on a page of words alone.
const TEXT_ALONE: u8 = 15;

/// The colours of one page by index.
#[derive(Debug, Clone)]
pub(super) struct Palette {
    colours: Vec<[u8; 3]>,
    text: Srgb8,
    /// Levels of coverage above none, of the art of one eye.
    art: u8,
    /// Levels of the text ink above none.
    levels: u8,
    /// Where the colours of patches begin.
    patches: usize,
    /// The index of text of each strength on bare ground.
    on_ground: [u8; 256],
}

impl Palette {
    /// The palette of a page with art, or of words alone. With patches it has their colours too, which are at most
    /// [`Patch::MOST`] and all different.
    pub(super) fn new(inks: &Inks, has_art: bool, patches: &[Srgb8]) -> Self {
        let (art, levels) = match (has_art, patches) {
            (_, [_, ..]) => (ART_BESIDE_PATCHES, TEXT),
            (true, []) => (ART, TEXT),
            (false, []) => (0, TEXT_ALONE),
        };
        // The index of full coverage for both eyes; the text entries follow it.
        let last_pair = (art + 1) * (art + 1) - 1;
        let share = |level: u8| f64::from(level) / f64::from(art.max(1));
        let pairs = (0..=last_pair).map(|i| pair(inks, share(i / (art + 1)), share(i % (art + 1))));
        let text = (1..=levels).map(|i| mix(inks.ground.0, inks.text.0, f64::from(i) / f64::from(levels)));
        let mut colours: Vec<_> = pairs.chain(text).collect();
        let first_patch = colours.len();
        colours.extend(patches.iter().map(|colour| colour.0));
        let mut on_ground = [0; 256];
        for (strength, index) in (0..=u8::MAX).zip(&mut on_ground) {
            let level = nearest_level(strength, levels);
            *index = if level == 0 { 0 } else { last_pair + level };
        }
        Self { colours, text: inks.text, art, levels, patches: first_patch, on_ground }
    }

    /// How the coverage of the left eye's art enters an index.
    pub(super) fn left(&self) -> Levels {
        Levels { steps: self.art, unit: self.art + 1 }
    }

    /// How the coverage of the right eye's art enters an index.
    pub(super) fn right(&self) -> Levels {
        Levels { steps: self.art, unit: 1 }
    }

    /// The index of a patch by the place of its colour among those of all patches.
    pub(super) fn patch(&self, colour: usize) -> u8 {
        u8::try_from(self.patches + colour).unwrap_or(u8::MAX)
    }

    /// Whether an index takes 4 bits, not 8.
    pub(super) fn is_small(&self) -> bool {
        self.colours.len() <= 16
    }

    /// The colours in the order of their indices: red, green, blue.
    pub(super) fn bytes(&self) -> Vec<u8> {
        self.colours.concat()
    }

    /// The index of text of this strength (0 to 255) on bare ground.
    pub(super) fn text(&self, strength: u8) -> u8 {
        self.on_ground[usize::from(strength)]
    }

    /// The index of a pixel where text of this strength (0 to 255) stands on the art index `art`.
    ///
    /// On bare ground it is a text entry. On art it is the entry nearest to the true mix, so that letters on a figure
    /// have no halo.
    pub(super) fn text_over(&self, art: u8, strength: u8) -> u8 {
        let level = nearest_level(strength, self.levels);
        if art == 0 || level == self.levels {
            self.text(strength)
        } else if level == 0 {
            art
        } else {
            let share = f64::from(level) / f64::from(self.levels);
            self.nearest(mix(self.colours[usize::from(art)], self.text.0, share))
        }
    }

    /// The first of the entries nearest to a colour.
    fn nearest(&self, wanted: [u8; 3]) -> u8 {
        let distance =
            |c: &[u8; 3]| -> u32 { c.iter().zip(wanted).map(|(&a, b)| u32::from(a.abs_diff(b)).pow(2)).sum() };
        (0..=u8::MAX).zip(&self.colours).min_by_key(|(_, colour)| distance(colour)).map_or(0, |(i, _)| i)
    }
}

/// The nearest of so many levels to a strength from 0 to 255.
fn nearest_level(strength: u8, levels: u8) -> u8 {
    // At most `levels`, which one byte holds.
    ((u16::from(strength) * u16::from(levels) + 127) / 255).to_le_bytes()[0]
}

/// Colour of a pixel of which these shares are covered by the left eye's and the right eye's art.
///
/// The two borders are taken as independent: the share a·b shows the overlap colour, a·(1 - b) the left ink,
/// (1 - a)·b the right ink and (1 - a)·(1 - b) the ground.
fn pair(inks: &Inks, a: f64, b: f64) -> [u8; 3] {
    let channel = |i: usize| {
        let [ground, left, right, both] = [inks.ground, inks.left, inks.right, inks.both].map(|c| f64::from(c.0[i]));
        code((1.0 - a) * (1.0 - b) * ground + a * (1.0 - b) * left + (1.0 - a) * b * right + a * b * both)
    };
    [channel(0), channel(1), channel(2)]
}

fn mix(from: [u8; 3], to: [u8; 3], share: f64) -> [u8; 3] {
    let channel = |i: usize| code((1.0 - share) * f64::from(from[i]) + share * f64::from(to[i]));
    [channel(0), channel(1), channel(2)]
}

/// The nearest code value.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a mix of code values lies within 0..=255")]
fn code(value: f64) -> u8 {
    (value + 0.5) as u8
}
