//! Quantities with their unit: lengths, angles, prism dioptres, resolutions.
//!
//! This room parses and prints quantities and converts between units of the same kind. It knows nothing of eyes, pages
//! or specs: a conversion that needs a viewing distance lives in `optics`.

use std::fmt;

/// A length in millimetres. Any finite value is legal; ranges belong to the key that holds it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Mm(pub f64);

/// A type size or a PDF length in points, 1/72 inch.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Pt(pub f64);

/// A raster resolution in pixels per inch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ppi(pub u32);

/// A prism demand: 1 prism dioptre deviates 1 cm at 1 m. Positive: toward (base-out); negative: away (base-in).
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct PrismDioptre(pub f64);

/// An angle, held in radians.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Angle(f64);

/// A span of time in seconds, for words such as "hold for 10 seconds".
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Seconds(pub f64);

impl Mm {
    /// Millimetres in one inch, exact by definition.
    pub const PER_INCH: f64 = 25.4;

    /// The same length in points, 1/72 inch.
    pub fn to_pt(self) -> Pt {
        Pt(self.0 / Self::PER_INCH * 72.0)
    }

    /// The same length in pixels of a raster of this resolution.
    pub fn to_pixels(self, ppi: Ppi) -> f64 {
        self.0 / Self::PER_INCH * f64::from(ppi.0)
    }
}

impl Pt {
    /// The same length in millimetres.
    pub fn to_mm(self) -> Mm {
        Mm(self.0 / 72.0 * Mm::PER_INCH)
    }
}

impl Ppi {
    /// The side of one pixel in millimetres.
    pub fn pixel(self) -> Mm {
        Mm(Mm::PER_INCH / f64::from(self.0))
    }
}

impl Angle {
    /// From radians.
    pub const fn from_radians(radians: f64) -> Self {
        Self(radians)
    }

    /// From degrees.
    pub fn from_degrees(degrees: f64) -> Self {
        Self(degrees.to_radians())
    }

    /// From minutes of arc, 1/60 degree.
    pub fn from_arcmin(arcmin: f64) -> Self {
        Self((arcmin / 60.0).to_radians())
    }

    /// From seconds of arc, 1/3600 degree.
    pub fn from_arcsec(arcsec: f64) -> Self {
        Self((arcsec / 3600.0).to_radians())
    }

    /// In radians.
    pub const fn to_radians(self) -> f64 {
        self.0
    }

    /// In degrees.
    pub fn to_degrees(self) -> f64 {
        self.0.to_degrees()
    }

    /// In minutes of arc.
    pub fn to_arcmin(self) -> f64 {
        self.0.to_degrees() * 60.0
    }

    /// In seconds of arc.
    pub fn to_arcsec(self) -> f64 {
        self.0.to_degrees() * 3600.0
    }
}

/// What kind of thing a unit measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dimension {
    /// A length: mm, cm, m, in, pt.
    Length,
    /// An angle: deg, arcmin, arcsec.
    Angle,
    /// A prism demand: pd.
    Prism,
    /// A time: s, min.
    Time,
    /// A share: %.
    Share,
}

/// A unit as it may be written in a spec.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// Millimetre.
    Mm,
    /// Centimetre.
    Cm,
    /// Metre.
    M,
    /// Inch, 25.4 mm.
    In,
    /// Point, 1/72 inch.
    Pt,
    /// Degree.
    Deg,
    /// Minute of arc.
    Arcmin,
    /// Second of arc.
    Arcsec,
    /// Prism dioptre.
    Pd,
    /// Second of time.
    S,
    /// Minute of time.
    Min,
    /// Per cent.
    Percent,
}

impl Unit {
    /// Every unit, in the order of the spec reference.
    pub const ALL: [Unit; 12] = [
        Unit::Mm,
        Unit::Cm,
        Unit::M,
        Unit::In,
        Unit::Pt,
        Unit::Deg,
        Unit::Arcmin,
        Unit::Arcsec,
        Unit::Pd,
        Unit::S,
        Unit::Min,
        Unit::Percent,
    ];

    /// The unit as it is written in a spec.
    pub const fn symbol(self) -> &'static str {
        match self {
            Unit::Mm => "mm",
            Unit::Cm => "cm",
            Unit::M => "m",
            Unit::In => "in",
            Unit::Pt => "pt",
            Unit::Deg => "deg",
            Unit::Arcmin => "arcmin",
            Unit::Arcsec => "arcsec",
            Unit::Pd => "pd",
            Unit::S => "s",
            Unit::Min => "min",
            Unit::Percent => "%",
        }
    }

    /// What the unit measures.
    pub const fn dimension(self) -> Dimension {
        match self {
            Unit::Mm | Unit::Cm | Unit::M | Unit::In | Unit::Pt => Dimension::Length,
            Unit::Deg | Unit::Arcmin | Unit::Arcsec => Dimension::Angle,
            Unit::Pd => Dimension::Prism,
            Unit::S | Unit::Min => Dimension::Time,
            Unit::Percent => Dimension::Share,
        }
    }
}

impl Dimension {
    /// The dimension in plain words, for messages: "a length".
    pub const fn name(self) -> &'static str {
        match self {
            Dimension::Length => "a length",
            Dimension::Angle => "an angle",
            Dimension::Prism => "a prism demand",
            Dimension::Time => "a time",
            Dimension::Share => "a share",
        }
    }

    /// The units of this dimension, written out for messages: "mm, cm, m, in, pt".
    pub fn units(self) -> String {
        let names: Vec<_> = Unit::ALL.iter().filter(|u| u.dimension() == self).map(|u| u.symbol()).collect();
        names.join(", ")
    }
}

/// A number with its unit, as written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// The number, finite.
    pub value: f64,
    /// The unit it was written in.
    pub unit: Unit,
}

/// Why a text is not a quantity.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum QuantityError {
    /// There is no number at the start.
    NoNumber,
    /// The number is not finite or not readable.
    BadNumber(String),
    /// There is a number but no unit.
    NoUnit,
    /// The unit is not known.
    UnknownUnit(String),
}

impl Quantity {
    /// Reads `"40 cm"`: a number, optional blanks, a unit. Signs, decimals with a point and exponents are read;
    /// `nan` and `inf` are refused.
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let text = text.trim();
        let end = text
            .char_indices()
            .find(|&(i, c)| !(c.is_ascii_digit() || c == '.' || is_sign_or_exponent(text, i, c)))
            .map_or(text.len(), |(i, _)| i);
        let (number, unit) = (&text[..end], text[end..].trim());
        if number.is_empty() {
            return Err(QuantityError::NoNumber);
        }
        let value: f64 = number.parse().map_err(|_| QuantityError::BadNumber(number.to_owned()))?;
        if !value.is_finite() {
            return Err(QuantityError::BadNumber(number.to_owned()));
        }
        if unit.is_empty() {
            return Err(QuantityError::NoUnit);
        }
        let unit = Unit::ALL
            .into_iter()
            .find(|u| u.symbol() == unit)
            .ok_or_else(|| QuantityError::UnknownUnit(unit.to_owned()))?;
        Ok(Self { value, unit })
    }

    /// As a length, if it is one.
    pub fn to_mm(self) -> Option<Mm> {
        Some(Mm(match self.unit {
            Unit::Mm => self.value,
            Unit::Cm => self.value * 10.0,
            Unit::M => self.value * 1000.0,
            Unit::In => self.value * Mm::PER_INCH,
            Unit::Pt => Pt(self.value).to_mm().0,
            _ => return None,
        }))
    }

    /// As an angle, if it is one.
    pub fn to_angle(self) -> Option<Angle> {
        match self.unit {
            Unit::Deg => Some(Angle::from_degrees(self.value)),
            Unit::Arcmin => Some(Angle::from_arcmin(self.value)),
            Unit::Arcsec => Some(Angle::from_arcsec(self.value)),
            _ => None,
        }
    }

    /// As a time, if it is one.
    pub fn to_seconds(self) -> Option<Seconds> {
        match self.unit {
            Unit::S => Some(Seconds(self.value)),
            Unit::Min => Some(Seconds(self.value * 60.0)),
            _ => None,
        }
    }
}

/// True where `c` at byte `i` belongs to a number: a sign at its start or after an exponent, or the exponent itself.
fn is_sign_or_exponent(text: &str, i: usize, c: char) -> bool {
    let before = text[..i].chars().next_back();
    match c {
        '+' | '-' => before.is_none_or(|b| b == 'e' || b == 'E'),
        'e' | 'E' => {
            before.is_some_and(|b| b.is_ascii_digit() || b == '.')
                && text[i + 1..].starts_with(|n: char| n.is_ascii_digit() || n == '-' || n == '+')
        }
        _ => false,
    }
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.value, self.unit.symbol())
    }
}

/// A number for a page or a message: at most `decimals` decimals, no trailing zeros, never "-0".
pub fn plain(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantities_read_number_and_unit() {
        assert_eq!(Quantity::parse("40 cm"), Ok(Quantity { value: 40.0, unit: Unit::Cm }));
        assert_eq!(Quantity::parse("1e-1mm"), Ok(Quantity { value: 0.1, unit: Unit::Mm }));
        assert_eq!(Quantity::parse("-2.5 pd"), Ok(Quantity { value: -2.5, unit: Unit::Pd }));
        assert_eq!(Quantity::parse("60 %"), Ok(Quantity { value: 60.0, unit: Unit::Percent }));
    }

    #[test]
    fn quantities_refuse_what_is_not_one() {
        assert_eq!(Quantity::parse("cm"), Err(QuantityError::NoNumber));
        assert_eq!(Quantity::parse("nan mm"), Err(QuantityError::NoNumber));
        assert_eq!(Quantity::parse("1e999 mm"), Err(QuantityError::BadNumber("1e999".into())));
        assert_eq!(Quantity::parse("40"), Err(QuantityError::NoUnit));
        assert_eq!(Quantity::parse("40 furlong"), Err(QuantityError::UnknownUnit("furlong".into())));
        assert_eq!(Quantity::parse("1.2.3 mm"), Err(QuantityError::BadNumber("1.2.3".into())));
    }

    #[test]
    fn plain_numbers_have_no_trailing_zeros() {
        assert_eq!(plain(4.0, 2), "4");
        assert_eq!(plain(-0.001, 2), "0");
        assert_eq!(plain(12.345, 2), "12.35");
        assert_eq!(plain(120.0, 0), "120");
    }
}
