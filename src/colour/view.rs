//! What each eye sees of a page through its filter.
//!
//! A [`View`] is the whole colour model of one eye, boiled down to a few numbers: three for a screen, sixteen for a
//! print. Light is counted in shares of the medium's white without a filter.

use super::eye_map::{channels, mark};
use super::print::{OVERPRINTS, STRAY, without_blue};
use super::{Cmyk, FilterModel, Glasses, Ground, Inks, Print, Screen, Srgb8, inks};

/// What a page is shown on. Cheap to clone.
#[derive(Debug, Clone, PartialEq)]
pub enum Medium {
    /// A screen.
    Screen(Screen),
    /// A print.
    Print(Print),
}

/// What one eye sees: the luminance of every page colour behind its filter.
#[derive(Debug, Clone, PartialEq)]
pub struct View(Model);

#[derive(Debug, Clone, PartialEq)]
enum Model {
    /// The luminance of red, green and blue at full drive: light adds.
    Screen([f64; 3]),
    /// The luminance of each combination of full inks to the power 1 / [`STRAY`]: areas add in this measure.
    Print { roots: [f64; OVERPRINTS], gain: [f64; 4] },
}

/// The views of the two eyes.
#[derive(Debug, Clone, PartialEq)]
pub struct Views {
    /// Of the left eye.
    pub left: View,
    /// Of the right eye.
    pub right: View,
}

impl Views {
    /// Looks at a medium through glasses.
    ///
    /// An eye known by its leak sees its own channels as through the ideal filter of its colour, and so much of the
    /// other eye's that a full mark for the other eye shows as measured.
    /// Source: `[Woods2010]` for screens, `[Woods2013]` for prints.
    pub fn new(glasses: &Glasses, medium: &Medium) -> Self {
        let [left, right] = channels(glasses);
        let eye = |filter: &FilterModel, own, other| {
            let transmittance = filter.transmittance();
            let model = match medium {
                Medium::Screen(screen) => {
                    let seen = screen.behind(&transmittance);
                    Model::Screen(filter.leak().map_or(seen, |leak| leaking(seen, screen.shares(), own, other, leak)))
                }
                Medium::Print(print) => {
                    let seen = print.behind(&transmittance);
                    let solids = filter.leak().map_or(seen, |leak| leaking_print(seen, own, other, leak));
                    Model::Print { roots: solids.map(|light| libm::pow(light, 1.0 / STRAY)), gain: print.gain() }
                }
            };
            View(model)
        };
        Self { left: eye(&glasses.left, left, right), right: eye(&glasses.right, right, left) }
    }
}

impl Medium {
    /// The colour as the medium may have it: a print never has cyan and magenta on each other.
    pub fn allowed(&self, colour: Srgb8) -> Srgb8 {
        match self {
            Medium::Screen(_) => colour,
            Medium::Print(_) => without_blue(colour),
        }
    }

    /// The full inks of the glasses as this medium has them: those that a leak is measured with.
    pub fn full_inks(&self, glasses: &Glasses, ground: Ground) -> Inks {
        let full = inks(glasses, ground);
        Inks { left: self.allowed(full.left), right: self.allowed(full.right), ..full }
    }
}

impl View {
    /// The shortcut for a screen: the luminance of red, green and blue at full drive behind the filter, as shares of
    /// the screen's white without it.
    pub fn from_channels(seen: [f64; 3]) -> Self {
        Self(Model::Screen(seen))
    }

    /// The luminance of a page colour to this eye, as a share of the medium's white without a filter.
    ///
    /// ```text
    /// screen: F_R r + F_G g + F_B b, decoded channels
    /// print:  (sum of a_i L_i^(1/n))^n, a_i the share of each overprint, n the exponent of stray light
    /// ```
    ///
    /// Source: `[Woods2010]` for screens; `[Neugebauer1937]` and `[Yule1951]` for prints.
    pub fn luminance(&self, colour: Srgb8) -> f64 {
        match &self.0 {
            Model::Screen(seen) => seen.iter().zip(colour.linear()).map(|(share, light)| share * light).sum(),
            Model::Print { roots, gain } => {
                let mean = Cmyk::of(colour).shares(*gain).iter().zip(roots).map(|(share, root)| share * root).sum();
                libm::pow(mean, STRAY)
            }
        }
    }

    /// The luminance of white to this eye: how bright the world behind this filter is.
    pub fn white(&self) -> f64 {
        self.luminance(Srgb8::WHITE)
    }

    /// The luminance of red, green and blue at full drive; `None` on a print.
    pub fn channels(&self) -> Option<[f64; 3]> {
        match self.0 {
            Model::Screen(seen) => Some(seen),
            Model::Print { .. } => None,
        }
    }

    /// The colour on the straight way from one to another at which this eye sees a share of the step, 0 to 1; the
    /// nearest of those that eight bits hold. For tints, for dimmed marks, and for the patches of a ghost page.
    pub fn toward(&self, from: Srgb8, to: Srgb8, share: f64) -> Srgb8 {
        self.tints(from, to, &[share]).next().unwrap_or(from)
    }

    /// As [`toward`](View::toward), for many shares of one way.
    pub(super) fn tints(&self, from: Srgb8, to: Srgb8, shares: &[f64]) -> impl Iterator<Item = Srgb8> {
        let way: Vec<_> = (0..=255).map(|step| on_the_way(from, to, step)).map(|c| (c, self.luminance(c))).collect();
        let (start, end) = (self.luminance(from), self.luminance(to));
        shares.iter().filter_map(move |share| {
            let wanted = start + (end - start) * share;
            let off = |(_, seen): &(Srgb8, f64)| (seen - wanted).abs();
            way.iter().min_by(|a, b| off(a).total_cmp(&off(b))).map(|(colour, _)| *colour)
        })
    }
}

/// A colour so many of 255 steps on the way, channel by channel in code values.
#[expect(clippy::cast_possible_truncation, reason = "between two values of eight bits")]
fn on_the_way(from: Srgb8, to: Srgb8, step: u32) -> Srgb8 {
    let channel = |i: usize| (u32::from(from.0[i]) * (255 - step) + u32::from(to.0[i]) * step + 127) / 255;
    Srgb8([0, 1, 2].map(|i| channel(i) as u8))
}

/// A screen's three numbers for an eye known by its leak: of its own channels as through the ideal filter; of the
/// other's, so much in all that their sum is the leak times the sum of its own.
fn leaking(seen: [f64; 3], shares: [f64; 3], own: [bool; 3], other: [bool; 3], leak: f64) -> [f64; 3] {
    let leaks = [0, 1, 2].map(|c| other[c] && !own[c]);
    let sum = |of: [f64; 3], which: [bool; 3]| -> f64 { (0..3).filter(|c| which[*c]).map(|c| of[c]).sum() };
    let (signal, all) = (sum(seen, own), sum(shares, leaks));
    [0, 1, 2].map(|c| if leaks[c] { leak * signal * shares[c] / all } else { seen[c] })
}

/// A print's numbers for an eye known by its leak: inks of the other eye's mark alone are so dark that the full mark
/// shows as measured, but none darker than black; everything else as through the ideal filter.
fn leaking_print(seen: [f64; OVERPRINTS], own: [bool; 3], other: [bool; 3], leak: f64) -> [f64; OVERPRINTS] {
    let dark = |i: usize| seen[0] - seen[i];
    let (own, other) = (inks_of(own), inks_of(other));
    if dark(other).abs() < f64::EPSILON {
        return seen;
    }
    let factor = leak * dark(own) / dark(other);
    std::array::from_fn(
        |i| if i & !other == 0 && i & own == 0 { (seen[0] - factor * dark(i)).max(0.0) } else { seen[i] },
    )
}

/// The process inks of a full mark on paper: the sum of 1 for C, 2 for M, 4 for Y.
fn inks_of(channels: [bool; 3]) -> usize {
    let colour = without_blue(mark(channels, Ground::White));
    (0..3).filter(|c| colour.0[*c] == 0).map(|c| 1 << c).sum()
}
