//! Prints: paper, process inks, tints and overprints, and the lamp.
//!
//! A page colour is separated into cyan, magenta, yellow and black the plain way; a printer driver may do it otherwise,
//! and another ink set has other solids. So a forecast for a print is an estimate, and the ghost page measures it.

use std::sync::Arc;

use super::data::solids::{FOGRA39L, FOGRA39L_GAIN};
use super::reflectance::smoothest;
use super::{Lamp, Spectrum, Srgb8, Xyz};

/// How much of the sheet each process ink covers as ordered, 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cmyk {
    /// Cyan.
    pub c: f64,
    /// Magenta.
    pub m: f64,
    /// Yellow.
    pub y: f64,
    /// Black.
    pub k: f64,
}

/// Measured tristimulus values of paper and full inks under D50, white backing; Y of the perfect diffuser is 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Solids {
    /// The bare paper.
    pub paper: Xyz,
    /// Cyan.
    pub c: Xyz,
    /// Magenta.
    pub m: Xyz,
    /// Yellow.
    pub y: Xyz,
    /// Magenta and yellow: red.
    pub my: Xyz,
    /// Cyan and yellow: green. Left out: each ink takes its share of the light that the other leaves.
    pub cy: Option<Xyz>,
    /// Cyan and magenta: blue.
    pub cm: Xyz,
    /// Black.
    pub k: Xyz,
    /// How much larger than its nominal 50 % a tint of C, M, Y and K covers, as a share of the sheet, once light that
    /// strays in the paper is counted apart ([`STRAY`]).
    pub gain: [f64; 4],
}

/// A print: reflectances of every combination of full inks, and the lamp. Cheap to clone.
#[derive(Debug, Clone, PartialEq)]
pub struct Print {
    /// Indexed by the sum of 1 for C, 2 for M, 4 for Y, 8 for K.
    overprints: Arc<[Spectrum; OVERPRINTS]>,
    gain: [f64; 4],
    lamp: Spectrum,
}

/// How many combinations of four inks there are.
pub const OVERPRINTS: usize = 16;

/// The exponent of stray light: light that enters the paper between dots leaves it under dots, so tints look darker than
/// their areas. 1 for none.
/// Source: `[Yule1951]`; the value is the best for the cyan tints of `[FOGRA39L]` behind five filters.
pub const STRAY: f64 = 1.4;

/// Why measured solids make no print.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NoReflectance {
    /// The solid that no reflectance can have: `paper`, `C`, `M`, `Y`, `M+Y`, `C+Y`, `C+M` or `K`.
    pub solid: &'static str,
}

impl Solids {
    /// Offset on coated paper.
    /// Source: `[FOGRA39L]`.
    pub fn fogra39l() -> Self {
        let [paper, c, m, y, my, cy, cm, k] = FOGRA39L.map(Xyz);
        Self { paper, c, m, y, my, cy: Some(cy), cm, k, gain: FOGRA39L_GAIN }
    }
}

impl Print {
    /// From measured solids, read by a lamp. Reflectances are estimated with [`smoothest`].
    ///
    /// Overprints with black, and those that were not measured, take at each wavelength the product of what their inks
    /// leave of the paper's light.
    ///
    /// # Errors
    /// [`NoReflectance`] when a solid has a colour that no surface can have under D50.
    pub fn new(solids: &Solids, lamp: &Spectrum) -> Result<Self, NoReflectance> {
        let d50 = Lamp::D50.spectrum();
        let ink = |colour: Xyz, solid| smoothest(colour, &d50).ok_or(NoReflectance { solid });
        let paper = ink(solids.paper, "paper")?;
        let (c, m, y) = (ink(solids.c, "C")?, ink(solids.m, "M")?, ink(solids.y, "Y")?);
        let over = |a: &Spectrum, b: &Spectrum| overprint(a, b, &paper);
        let cy = match solids.cy {
            Some(colour) => ink(colour, "C+Y")?,
            None => over(&c, &y),
        };
        let (my, cm, k) = (ink(solids.my, "M+Y")?, ink(solids.cm, "C+M")?, ink(solids.k, "K")?);
        let cmy = over(&cm, &y);
        let plain = [paper.clone(), c, m, cm, y, cy, my, cmy];
        let black = [0, 1, 2, 3, 4, 5, 6, 7].map(|i: usize| if i == 0 { k.clone() } else { over(&plain[i], &k) });
        let [p0, p1, p2, p3, p4, p5, p6, p7] = plain;
        let [b0, b1, b2, b3, b4, b5, b6, b7] = black;
        let overprints = Arc::new([p0, p1, p2, p3, p4, p5, p6, p7, b0, b1, b2, b3, b4, b5, b6, b7]);
        Ok(Self { overprints, gain: solids.gain, lamp: lamp.clone() })
    }

    /// The lamp's spectrum, for plots.
    pub fn lamp(&self) -> &Spectrum {
        &self.lamp
    }

    /// The reflectance of a combination of full inks: the sum of 1 for C, 2 for M, 4 for Y, 8 for K; `None` past 15.
    pub fn reflectance(&self, inks: usize) -> Option<&Spectrum> {
        self.overprints.get(inks)
    }

    /// The reflectance of a page colour: at each wavelength the mean of its overprints, with stray light.
    ///
    /// ```text
    /// R = (sum of share times R_i ^ (1 / n)) ^ n
    /// ```
    ///
    /// Source: `[Neugebauer1937]` and `[Yule1951]`, at each wavelength; `[Demichel1924]` for the shares.
    pub fn surface(&self, colour: Srgb8) -> Spectrum {
        let shares = Cmyk::of(colour).shares(self.gain);
        let mean = shares.iter().zip(self.overprints.iter()).fold(Spectrum::from_fn(|_| 0.0), |sum, (share, ink)| {
            sum.plus(&ink.map(|r| share * libm::pow(r, 1.0 / STRAY)))
        });
        mean.map(|root| libm::pow(root, STRAY))
    }

    /// How much tints grow at 50 %.
    pub(super) fn gain(&self) -> [f64; 4] {
        self.gain
    }

    /// The luminance of each combination of full inks behind a filter, as a share of the paper without it.
    ///
    /// ```text
    /// L_i = sum(S R_i T V) / sum(S R_paper V)
    /// ```
    ///
    /// Source: `[Woods2013]`, light of a printed anaglyph: lamp, paper and ink, filter.
    pub fn behind(&self, transmittance: &Spectrum) -> [f64; OVERPRINTS] {
        let paper = self.lamp.times(&self.overprints[0]).luminance();
        let seen = self.lamp.times(transmittance);
        std::array::from_fn(|i| seen.times(&self.overprints[i]).luminance() / paper)
    }
}

/// The colour as it may be printed: blue becomes cyan. Cyan with magenta looks dark to both eyes, whatever the filters.
/// Source: design choice, from the luminances of `[FOGRA39L]` behind filters.
pub(super) fn without_blue(colour: Srgb8) -> Srgb8 {
    let [r, g, b] = colour.0;
    if r == g && g < b { Srgb8([r, b, b]) } else { colour }
}

/// What two layers leave of the paper's light, one over the other.
/// Source: design choice, each layer a filter on the paper; exact for clear inks that do not scatter.
fn overprint(a: &Spectrum, b: &Spectrum, paper: &Spectrum) -> Spectrum {
    a.times(b).over(paper)
}

impl Cmyk {
    /// The plain separation of a page colour: black takes what all three channels lack, the other inks what is left.
    /// A pure cyan has no magenta and no black.
    ///
    /// ```text
    /// k = 1 - max(r, g, b),  c = 1 - r - k, m and y likewise, on code values 0 to 1
    /// ```
    ///
    /// Source: `[ISO32000]`, conversion from DeviceRGB to DeviceCMYK, all black taken out; drivers differ.
    pub fn of(colour: Srgb8) -> Self {
        let [r, g, b] = colour.0.map(|value| f64::from(value) / 255.0);
        let most = r.max(g).max(b);
        Self { c: most - r, m: most - g, y: most - b, k: 1.0 - most }
    }

    /// How much of the sheet each combination of inks covers, when tints grow and fall on each other by chance.
    ///
    /// ```text
    /// a' = a + 4 g a (1 - a);  the share of a combination is the product of a' for its inks and 1 - a' for the others
    /// ```
    ///
    /// Source: `[Demichel1924]`, shares of overprints; the growth is a parabola with the measured value at 50 %, a design
    /// choice.
    pub(super) fn shares(self, gain: [f64; 4]) -> [f64; OVERPRINTS] {
        let ordered = [self.c, self.m, self.y, self.k];
        let covers: [f64; 4] = std::array::from_fn(|i| ordered[i] + 4.0 * gain[i] * ordered[i] * (1.0 - ordered[i]));
        std::array::from_fn(|combination| {
            let factor = |i: usize| if combination >> i & 1 == 1 { covers[i] } else { 1.0 - covers[i] };
            (0..4).map(factor).product()
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::colour::{Filter, Glasses, Medium, Views};

    /// The light that a surface sends through a filter is the luminance that a view of that filter finds where full inks
    /// stand. In tints the view counts stray light on luminances, not at each wavelength; by Minkowski's inequality that
    /// is never less.
    #[test]
    fn surfaces_send_the_light_that_views_see() {
        let lamp = Lamp::A.spectrum();
        let print = Print::new(&Solids::fogra39l(), &lamp).unwrap();
        let white = lamp.times(&print.surface(Srgb8::WHITE)).luminance();
        let glasses = Glasses::ideal(Filter::Cyan, Filter::Red);
        let view = Views::new(&glasses, &Medium::Print(print.clone())).left;
        let sent = |colour| lamp.times(&print.surface(colour)).times(&glasses.left.transmittance()).luminance() / white;
        for full in [[255, 255, 255], [0, 255, 255], [255, 0, 0], [0, 0, 0]].map(Srgb8) {
            assert!((sent(full) - view.luminance(full)).abs() < 1e-9, "{full:?}");
        }
        for tint in [[255, 120, 90], [31, 64, 8], [250, 240, 240]].map(Srgb8) {
            assert!(sent(tint) < view.luminance(tint) && sent(Srgb8::BLACK) < sent(tint), "{tint:?}");
        }
    }
}
