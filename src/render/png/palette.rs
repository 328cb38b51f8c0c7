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
        let pairs = (0..=last_pair).map(|i| pair(inks, i / (art + 1), i % (art + 1), art.max(1)));
        let text = (1..=levels).map(|level| mix(inks.ground.0, inks.text.0, level, levels));
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
            self.nearest(mix(self.colours[usize::from(art)], self.text.0, level, self.levels))
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

/// Colour of a pixel of which `a` of `all` parts are covered by the left eye's and `b` of `all` by the right eye's art.
///
/// The two borders are taken as independent: of `all` by `all` cells, a·b show the overlap colour, a·(all - b) the left
/// ink, (all - a)·b the right ink and the others the ground. The colour is their mean, to the nearest code value.
fn pair(inks: &Inks, a: u8, b: u8, all: u8) -> [u8; 3] {
    let channel = |i: usize| {
        let [a, b, all] = [a, b, all].map(u32::from);
        let [ground, left, right, both] = [inks.ground, inks.left, inks.right, inks.both].map(|c| u32::from(c.0[i]));
        let sum = (all - a) * (all - b) * ground + a * (all - b) * left + (all - a) * b * right + a * b * both;
        quotient(sum, all * all)
    };
    [channel(0), channel(1), channel(2)]
}

/// `level` of `levels` parts of the way from one colour to another.
fn mix(from: [u8; 3], to: [u8; 3], level: u8, levels: u8) -> [u8; 3] {
    let channel = |i: usize| {
        let [from, to, level, levels] = [from[i], to[i], level, levels].map(u32::from);
        quotient((levels - level) * from + level * to, levels)
    };
    [channel(0), channel(1), channel(2)]
}

/// A mean of code values, to the nearest; halves go up.
fn quotient(sum: u32, parts: u32) -> u8 {
    // At most 255, which one byte holds.
    ((2 * sum + parts) / (2 * parts)).to_le_bytes()[0]
}

#[cfg(test)]
mod tests {
    use super::*;

    const SOFT: Inks = Inks {
        left: Srgb8([250, 96, 81]),
        right: Srgb8([60, 201, 219]),
        both: Srgb8([48, 52, 60]),
        ground: Srgb8([241, 244, 239]),
        text: Srgb8([20, 21, 22]),
    };

    /// The bilinear mix of the four colours, in floating point.
    #[test]
    fn pairs_are_the_mean_of_the_areas() {
        let palette = Palette::new(&SOFT, true, &[]);
        for (a, b) in (0..=14u8).flat_map(|a| (0..=14u8).map(move |b| (a, b))) {
            let found = palette.colours[usize::from(a * 15 + b)];
            let (a, b) = (f64::from(a) / 14.0, f64::from(b) / 14.0);
            for (i, channel) in found.into_iter().enumerate() {
                let [ground, left, right, both] =
                    [SOFT.ground, SOFT.left, SOFT.right, SOFT.both].map(|ink| f64::from(ink.0[i]));
                let (with, without) = (left + (both - left) * b, ground + (right - ground) * b);
                let expected = without + (with - without) * a;
                assert!((f64::from(channel) - expected).abs() < 0.5 + 1e-9, "{a} {b}: {channel} {expected}");
            }
        }
    }

    #[test]
    fn text_on_art_takes_the_nearest_colour() {
        let palette = Palette::new(&SOFT, true, &[]);
        let colour = |i: u8| palette.colours[usize::from(i)];
        for art in [14 * 15, 14, 224, 7 * 15 + 3] {
            assert_eq!(palette.text_over(art, 0), art);
            assert_eq!(colour(palette.text_over(art, 255)), SOFT.text.0);
            for strength in [60u8, 130, 200] {
                let found = colour(palette.text_over(art, strength));
                let wanted = mix(colour(art), SOFT.text.0, strength, 255);
                let apart =
                    |c: [u8; 3]| c.iter().zip(wanted).map(|(a, b)| u32::from(a.abs_diff(b)).pow(2)).sum::<u32>();
                let on_ground = colour(palette.text(strength));
                assert!(apart(found) <= apart(on_ground) && apart(found) <= apart(colour(art)), "{art} {strength}");
            }
        }
    }

    #[test]
    fn words_alone_need_sixteen_colours() {
        let palette = Palette::new(&SOFT, false, &[]);
        assert!(palette.is_small());
        assert_eq!(palette.bytes().len(), 48);
        assert_eq!((palette.colours[0], palette.colours[15]), (SOFT.ground.0, SOFT.text.0));
        assert_eq!((palette.text(0), palette.text(255)), (0, 15));
    }
}
