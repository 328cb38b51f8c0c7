//! Screens: the spectra of red, green and blue at full drive.

use super::Spectrum;
use super::data::displays;
use super::filter::band;
use super::space::SHARES;

/// A screen. Cheap to clone.
///
/// A page colour is decoded as sRGB says, and each channel drives its primary; black is dark.
#[derive(Debug, Clone, PartialEq)]
pub struct Screen {
    primaries: [Spectrum; 3],
}

/// The screens that come with the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NamedScreen {
    /// Three bands that meet at the edges of the ideal filters, with the luminance shares of sRGB: the shortcut that
    /// needs no spectra. Ideal filters separate its channels completely, which no real screen does.
    Ideal,
    /// A typical cathode-ray tube of 1997.
    Crt,
    /// A liquid-crystal panel with a fluorescent lamp, of 1998.
    Lcd,
}

impl NamedScreen {
    /// Every screen, in the order of the spec reference.
    pub const ALL: [NamedScreen; 3] = [NamedScreen::Ideal, NamedScreen::Crt, NamedScreen::Lcd];

    /// The screen as specs and reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            NamedScreen::Ideal => "ideal",
            NamedScreen::Crt => "crt",
            NamedScreen::Lcd => "lcd",
        }
    }
}

impl Screen {
    /// From the spectra of red, green and blue at full drive, all in one unit. `None` when one of them has no light
    /// that an eye can see.
    pub fn new(primaries: [Spectrum; 3]) -> Option<Self> {
        primaries.iter().all(|p| 0.0 < p.luminance()).then_some(Self { primaries })
    }

    /// One of the screens that come with the program.
    /// Source: `[Machado2010]`, spectra of the tube; `[Fairchild1998]`, of the panel.
    pub fn named(name: NamedScreen) -> Self {
        let primaries = match name {
            NamedScreen::Ideal => [0, 1, 2].map(ideal),
            NamedScreen::Crt => {
                [&displays::CRT_RED, &displays::CRT_GREEN, &displays::CRT_BLUE].map(|p| Spectrum::from_even(p))
            }
            NamedScreen::Lcd => {
                [&displays::LCD_RED, &displays::LCD_GREEN, &displays::LCD_BLUE].map(|p| Spectrum::from_even(p))
            }
        };
        Self { primaries }
    }

    /// The spectra of red, green and blue, for plots.
    pub fn primaries(&self) -> &[Spectrum; 3] {
        &self.primaries
    }

    /// The luminance of each primary as a share of white.
    ///
    /// ```text
    /// Y_k = sum(S_k V) / sum over all three
    /// ```
    ///
    /// Source: `[Woods2010]`, luminance of a display behind a filter.
    pub fn shares(&self) -> [f64; 3] {
        let each = [0, 1, 2].map(|k| self.primaries[k].luminance());
        let white: f64 = each.iter().sum();
        each.map(|luminance| luminance / white)
    }

    /// The luminance of each primary behind a filter, as a share of white without it.
    ///
    /// ```text
    /// F_k = Y_k f_k,  f_k = sum(S_k T V) / sum(S_k V)
    /// ```
    ///
    /// Source: `[Woods2010]`, luminance of a display behind a filter.
    pub fn behind(&self, transmittance: &Spectrum) -> [f64; 3] {
        let shares = self.shares();
        [0, 1, 2].map(|k| {
            let primary = &self.primaries[k];
            shares[k] * (primary.times(transmittance).luminance() / primary.luminance())
        })
    }
}

/// A band of even power with the luminance share of an sRGB primary.
fn ideal(channel: usize) -> Spectrum {
    let flat = Spectrum::from_fn(|nm| if band(nm) == channel { 1.0 } else { 0.0 });
    let power = SHARES[channel] / flat.luminance();
    Spectrum::from_fn(|nm| if band(nm) == channel { power } else { 0.0 })
}
