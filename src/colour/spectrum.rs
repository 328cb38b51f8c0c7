//! Spectra on one fixed grid: light, lamps, filters and inks can be multiplied value by value.
//!
//! The grid is 380 to 780 nm in steps of 1 nm. The step is that fine because ideal filters have an edge at a whole
//! wavelength: on a grid of 5 nm an edge at 600 nm moves the light of a narrow red primary by some per cent. The ends
//! are those of the bundled tables; the eye sees next to nothing outside.

use std::fmt;
use std::sync::Arc;

use super::data::observer::{X_BAR, Y_BAR, Z_BAR};

/// First wavelength of the grid, nm.
pub const FIRST_NM: u16 = 380;
/// Last wavelength of the grid, nm.
pub const LAST_NM: u16 = 780;
/// How many values a spectrum has, one a nm.
pub const COUNT: usize = 401;

/// A quantity for each wavelength of the grid: power, transmittance or reflectance. Cheap to clone.
#[derive(Debug, Clone, PartialEq)]
pub struct Spectrum(Arc<[f64]>);

/// How to read a table between its rows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Between {
    /// On straight lines. For filters and inks: a value never leaves the range of its two neighbours.
    Straight,
    /// On smooth curves through six rows. For light, in tables with even steps; other tables are read as
    /// [`Straight`](Between::Straight). Light is never negative: an overshoot below zero is zero.
    Smooth,
}

/// Why a table is no spectrum. Rows are counted from 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TableError {
    /// Fewer than two rows.
    TooFew {
        /// How many there are.
        rows: usize,
    },
    /// A wavelength or a value that is not finite.
    NotFinite {
        /// The row.
        row: usize,
    },
    /// A value below zero.
    Negative {
        /// The row.
        row: usize,
        /// The value.
        value: f64,
    },
    /// A wavelength that is not above the one before.
    Order {
        /// The row.
        row: usize,
    },
    /// The table does not reach from [`NEEDED_NM`]'s first to its last wavelength.
    Short {
        /// First wavelength of the table, nm.
        first: f64,
        /// Last wavelength of the table, nm.
        last: f64,
    },
}

/// The wavelengths that a table must cover, nm. The eye has 99.9 % of its sensitivity inside; outside of its own rows a
/// table holds its end values.
/// Source: `[CIE15]`, nearest measured value where data are missing; the limits are those of common tables.
pub const NEEDED_NM: (f64, f64) = (400.0, 700.0);

impl Spectrum {
    /// The value of a function at each wavelength in nm.
    pub fn from_fn(value: impl Fn(f64) -> f64) -> Self {
        Self((FIRST_NM..=LAST_NM).map(|nm| value(f64::from(nm))).collect())
    }

    /// From rows of wavelength in nm and value, in rising order.
    ///
    /// # Errors
    /// A [`TableError`] when the rows are too few, out of order, not finite, negative, or too short a range.
    pub fn from_table(rows: &[(f64, f64)], between: Between) -> Result<Self, TableError> {
        check(rows)?;
        Ok(match (between, even_step(rows)) {
            (Between::Smooth, Some(step)) if 6 <= rows.len() => smooth(rows, step),
            _ => Self::from_fn(|nm| straight(rows, nm)),
        })
    }

    /// From values at even steps from 380 to 780 nm, read smoothly: the form of the bundled tables.
    pub(super) fn from_even(values: &[f64]) -> Self {
        let step = f64::from(LAST_NM - FIRST_NM) / (values.len().max(2) - 1) as f64;
        let nm = |i: usize| f64::from(FIRST_NM) + step * i as f64;
        let rows: Vec<_> = values.iter().enumerate().map(|(i, &v)| (nm(i), v)).collect();
        smooth(&rows, step)
    }

    /// The values, from [`FIRST_NM`] to [`LAST_NM`].
    pub fn values(&self) -> &[f64] {
        &self.0
    }

    /// Wavelength in nm and value, for plots and reports.
    pub fn points(&self) -> impl Iterator<Item = (f64, f64)> + '_ {
        (FIRST_NM..=LAST_NM).map(f64::from).zip(self.0.iter().copied())
    }

    /// The product at each wavelength: light through a filter, a lamp on an ink.
    #[must_use]
    pub fn times(&self, other: &Spectrum) -> Spectrum {
        Self(self.0.iter().zip(other.0.iter()).map(|(a, b)| a * b).collect())
    }

    /// The sum at each wavelength: light added to light.
    #[must_use]
    pub fn plus(&self, other: &Spectrum) -> Spectrum {
        Self(self.0.iter().zip(other.0.iter()).map(|(a, b)| a + b).collect())
    }

    /// So many times the value at each wavelength.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Spectrum {
        self.map(|value| value * factor)
    }

    /// A function of the value at each wavelength.
    #[must_use]
    pub(super) fn map(&self, of: impl Fn(f64) -> f64) -> Spectrum {
        Self(self.0.iter().map(|value| of(*value)).collect())
    }

    /// The quotient at each wavelength; zero where the other is zero.
    #[must_use]
    pub(super) fn over(&self, other: &Spectrum) -> Spectrum {
        let quotient = |(a, b): (&f64, &f64)| if 0.0 < *b { a / b } else { 0.0 };
        Self(self.0.iter().zip(other.0.iter()).map(quotient).collect())
    }

    /// The luminance of this light, in a unit of its own: only ratios mean something.
    ///
    /// ```text
    /// L ~ sum of S(l) V(l) over the grid
    /// ```
    ///
    /// Source: `[CIE15]`, luminous efficiency V of the 1931 observer; the factor 683 lm/W falls out of every ratio.
    pub fn luminance(&self) -> f64 {
        weighted(&self.0, &Y_BAR)
    }

    /// The tristimulus values of this light, in a unit of its own: divide by [`luminance`](Spectrum::luminance) of the
    /// white.
    /// Source: `[CIE15]`, colour-matching functions of the 1931 observer.
    pub fn tristimulus(&self) -> [f64; 3] {
        [&X_BAR, &Y_BAR, &Z_BAR].map(|function| weighted(&self.0, function))
    }
}

fn weighted(values: &[f64], weights: &[f64; COUNT]) -> f64 {
    values.iter().zip(weights).map(|(value, weight)| value * weight).sum()
}

fn check(rows: &[(f64, f64)]) -> Result<(), TableError> {
    let (Some(&(first, _)), Some(&(last, _)), 2..) = (rows.first(), rows.last(), rows.len()) else {
        return Err(TableError::TooFew { rows: rows.len() });
    };
    let mut before = f64::NEG_INFINITY;
    for (row, &(nm, value)) in rows.iter().enumerate() {
        if !nm.is_finite() || !value.is_finite() {
            return Err(TableError::NotFinite { row });
        }
        if value < 0.0 {
            return Err(TableError::Negative { row, value });
        }
        if nm <= before {
            return Err(TableError::Order { row });
        }
        before = nm;
    }
    if first <= NEEDED_NM.0 && NEEDED_NM.1 <= last { Ok(()) } else { Err(TableError::Short { first, last }) }
}

/// The step of a table whose steps are all the same.
fn even_step(rows: &[(f64, f64)]) -> Option<f64> {
    let step = rows.get(1)?.0 - rows.first()?.0;
    rows.windows(2).all(|pair| ((pair[1].0 - pair[0].0) - step).abs() < 1e-6).then_some(step)
}

/// The value on the straight line between two rows; the end value outside.
fn straight(rows: &[(f64, f64)], nm: f64) -> f64 {
    let after = rows.partition_point(|row| row.0 <= nm);
    match (after.checked_sub(1).and_then(|i| rows.get(i)), rows.get(after)) {
        (Some(&(x0, y0)), Some(&(x1, y1))) => y0 + (y1 - y0) * (nm - x0) / (x1 - x0),
        (Some(&(_, end)), None) | (None, Some(&(_, end))) => end,
        (None, None) => 0.0,
    }
}

/// The value on a curve of the fifth degree through six rows, with two rows added at each end; the end value outside.
/// Source: `[CIE167]`, Sprague interpolation for even steps.
fn smooth(rows: &[(f64, f64)], step: f64) -> Spectrum {
    let values: Vec<f64> = rows.iter().map(|row| row.1).collect();
    let padded = padded(&values);
    let (first, last) = (rows.first().map_or(0.0, |r| r.0), rows.last().map_or(0.0, |r| r.0));
    Spectrum::from_fn(|nm| {
        let place = (nm.clamp(first, last) - first) / step;
        let cell = (0..values.len().saturating_sub(1)).rev().find(|&i| i as f64 <= place).unwrap_or(0);
        padded.get(cell..cell + 6).map_or(0.0, |six| sprague(six, place - cell as f64).max(0.0))
    })
}

/// The values with two more at each end, so that the first and the last cell have six around them.
/// Source: `[CIE167]`, boundary coefficients over 209.
fn padded(values: &[f64]) -> Vec<f64> {
    const OUTER: [f64; 6] = [884.0, -1960.0, 3033.0, -2648.0, 1080.0, -180.0];
    const INNER: [f64; 6] = [508.0, -540.0, 488.0, -367.0, 144.0, -24.0];
    let at = |weights: [f64; 6], end: &mut dyn Iterator<Item = &f64>| -> f64 {
        weights.iter().zip(end).map(|(weight, value)| weight * value).sum::<f64>() / 209.0
    };
    let mut all = vec![at(OUTER, &mut values.iter()), at(INNER, &mut values.iter())];
    all.extend_from_slice(values);
    all.extend([at(INNER, &mut values.iter().rev()), at(OUTER, &mut values.iter().rev())]);
    all
}

/// Between the third and the fourth of six even values; `x` from 0 to 1.
/// Source: `[CIE167]`, coefficients of the Sprague polynomial.
fn sprague(r: &[f64], x: f64) -> f64 {
    let a = [
        r[2],
        (2.0 * r[0] - 16.0 * r[1] + 16.0 * r[3] - 2.0 * r[4]) / 24.0,
        (-r[0] + 16.0 * r[1] - 30.0 * r[2] + 16.0 * r[3] - r[4]) / 24.0,
        (-9.0 * r[0] + 39.0 * r[1] - 70.0 * r[2] + 66.0 * r[3] - 33.0 * r[4] + 7.0 * r[5]) / 24.0,
        (13.0 * r[0] - 64.0 * r[1] + 126.0 * r[2] - 124.0 * r[3] + 61.0 * r[4] - 12.0 * r[5]) / 24.0,
        (-5.0 * r[0] + 25.0 * r[1] - 50.0 * r[2] + 50.0 * r[3] - 25.0 * r[4] + 5.0 * r[5]) / 24.0,
    ];
    a.iter().rev().fold(0.0, |sum, coefficient| sum * x + coefficient)
}

impl fmt::Display for TableError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooFew { rows } => write!(f, "a spectrum needs at least 2 rows, found {rows}"),
            Self::NotFinite { row } => write!(f, "row {} holds something that is no finite number", row + 1),
            Self::Negative { row, value } => write!(f, "row {} holds `{value}`, limit 0 or more", row + 1),
            Self::Order { row } => write!(f, "the wavelength of row {} is not above the one before", row + 1),
            Self::Short { first, last } => {
                let (from, to) = NEEDED_NM;
                write!(f, "the rows reach from {first} to {last} nm, needed {from} to {to} nm")
            }
        }
    }
}

impl std::error::Error for TableError {}
