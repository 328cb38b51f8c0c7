//! Lamps to read a printed page by.

use super::Spectrum;
use super::data::lamps;

/// A light source by the name of its standard spectrum.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lamp {
    /// An incandescent lamp, CIE A.
    A,
    /// Average daylight as older tables use it, CIE C.
    C,
    /// The daylight of the printing trade, CIE D50.
    D50,
    /// Average daylight, CIE D65.
    D65,
    /// A white LED lamp of 4103 K, CIE LED-B3.
    Led,
}

impl Lamp {
    /// Every lamp, in the order of the spec reference.
    pub const ALL: [Lamp; 5] = [Lamp::A, Lamp::C, Lamp::D50, Lamp::D65, Lamp::Led];

    /// The lamp as specs and reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            Lamp::A => "a",
            Lamp::C => "c",
            Lamp::D50 => "d50",
            Lamp::D65 => "d65",
            Lamp::Led => "led",
        }
    }

    /// Its relative spectral power.
    /// Source: `[CIE15]`, tables of the illuminants.
    pub fn spectrum(self) -> Spectrum {
        Spectrum::from_even(match self {
            Lamp::A => &lamps::A,
            Lamp::C => &lamps::C,
            Lamp::D50 => &lamps::D50,
            Lamp::D65 => &lamps::D65,
            Lamp::Led => &lamps::LED_B3,
        })
    }
}
