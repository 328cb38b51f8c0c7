//! Colour spaces as types, and the ways between them.
//!
//! Light adds in [`LinearRgb`] and [`Xyz`]; equal steps look equal in [`Lab`]. Nothing here knows a filter or an eye.

use super::srgb::{Srgb8, encode};

/// Red, green and blue light of the sRGB primaries, each 0 to 1 of full drive. Any number is legal: sums of light may
/// leave the gamut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LinearRgb(pub [f64; 3]);

/// Tristimulus values of the CIE 1931 observer; Y is 1 for the white that they are relative to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Xyz(pub [f64; 3]);

/// CIE 1976 L*, a*, b*: L* is 0 for black and 100 for the white that it is relative to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lab(pub [f64; 3]);

/// How far outside 0 to 1 a channel may be and still count as rounding.
/// Source: design choice, far below one step of eight bits and far above the rounding of `f64`.
const ROUNDING: f64 = 1e-9;

impl LinearRgb {
    /// All channels at full drive.
    pub const WHITE: LinearRgb = LinearRgb([1.0; 3]);
    /// No light.
    pub const BLACK: LinearRgb = LinearRgb([0.0; 3]);

    /// Relative luminance: 0 is black, 1 is white.
    /// Source: `[SRGB]`, weights of the primaries.
    pub fn luminance(self) -> f64 {
        let [r, g, b] = self.0;
        let [yr, yg, yb] = SHARES;
        yr * r + yg * g + yb * b
    }

    /// The nearest 8-bit colour; `None` when a channel is outside 0 to 1 or no number.
    pub fn to_srgb8(self) -> Option<Srgb8> {
        let inside = |c: &f64| (-ROUNDING..=1.0 + ROUNDING).contains(c);
        self.0.iter().all(inside).then(|| Srgb8(self.0.map(encode)))
    }

    /// In tristimulus values, relative to [`Xyz::D65`].
    /// Source: `[SRGB]`, matrix of the primaries, as rounded there.
    pub fn to_xyz(self) -> Xyz {
        let [r, g, b] = self.0;
        Xyz(TO_XYZ.map(|[x, y, z]| x * r + y * g + z * b))
    }
}

/// Share of the luminance of white that each sRGB primary has.
/// Source: `[SRGB]`.
pub const SHARES: [f64; 3] = [0.2126, 0.7152, 0.0722];

/// Rows X, Y, Z; columns red, green, blue.
/// Source: `[SRGB]`.
const TO_XYZ: [[f64; 3]; 3] = [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]];

impl Srgb8 {
    /// The light of this colour.
    pub fn to_linear(self) -> LinearRgb {
        LinearRgb(self.linear())
    }
}

impl Xyz {
    /// The white of sRGB.
    /// Source: `[SRGB]`, white D65.
    pub const D65: Xyz = Xyz([0.9505, 1.0, 1.0890]);
    /// The white of measured prints.
    /// Source: `[ISO13655]`, tristimulus values of D50 for 2 degrees.
    pub const D50: Xyz = Xyz([0.9642, 1.0, 0.8249]);

    /// In L*, a*, b* relative to a white.
    ///
    /// ```text
    /// f(t) = cbrt(t) above (6/29)^3, else t / (3 (6/29)^2) + 4/29
    /// L* = 116 f(Y/Yn) - 16,  a* = 500 (f(X/Xn) - f(Y/Yn)),  b* = 200 (f(Y/Yn) - f(Z/Zn))
    /// ```
    ///
    /// Source: `[CIE15]`, CIE 1976 L*a*b* colour space.
    pub fn to_lab(self, white: Xyz) -> Lab {
        let f = |i: usize| lab_step(self.0[i] / white.0[i]);
        let (x, y, z) = (f(0), f(1), f(2));
        Lab([116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)])
    }
}

/// The cube root of L*a*b*, straight near black.
fn lab_step(t: f64) -> f64 {
    let edge = 6.0 / 29.0;
    if edge * edge * edge < t { libm::cbrt(t) } else { t / (3.0 * edge * edge) + 4.0 / 29.0 }
}

impl Lab {
    /// Colour difference of 1976: the straight distance. About 2 is just visible side by side.
    /// Source: `[CIE15]`, CIE 1976 L*a*b* colour difference.
    pub fn distance(self, other: Lab) -> f64 {
        let squares = self.0.iter().zip(other.0).map(|(a, b)| (a - b) * (a - b));
        squares.sum::<f64>().sqrt()
    }
}
