//! Arguments that are more than a word: page ranges, lengths, sets.

use std::ops::RangeInclusive;
use std::path::PathBuf;

use crate::units::{Dimension, Mm, Quantity, QuantityError, plain};

/// The set that is meant where none is given.
pub(super) const DEFAULT_SET: &str = "specs/harbour-lights";

/// The sets given, or the one that is meant without.
pub(super) fn sets(given: &[PathBuf]) -> Vec<PathBuf> {
    if given.is_empty() { vec![PathBuf::from(DEFAULT_SET)] } else { given.to_vec() }
}

/// Reads `7` or `7-9`.
pub(super) fn page_range(text: &str) -> Result<RangeInclusive<u32>, String> {
    let (first, last) = text.split_once('-').unwrap_or((text, text));
    let number = |part: &str| part.trim().parse::<u32>().ok().filter(|n| 0 < *n);
    match (number(first), number(last)) {
        (Some(first), Some(last)) if first <= last => Ok(first..=last),
        (Some(first), Some(last)) => Err(format!("the range runs backwards; write `{last}-{first}`")),
        _ => Err("a page is a whole number from `1`; write `7` or `7-9`".to_owned()),
    }
}

/// Reads a length within limits in mm, such as `40 cm`.
pub(super) fn length(text: &str, min: f64, max: f64) -> Result<Mm, String> {
    let units = Dimension::Length.units();
    let quantity = Quantity::parse(text).map_err(|error| match error {
        QuantityError::NoNumber => "no number at its start; write a length such as `40 cm`".to_owned(),
        QuantityError::BadNumber(number) => format!("`{number}` is not a number; write a length such as `40 cm`"),
        QuantityError::NoUnit => format!("the unit is missing; add one of {units}"),
        QuantityError::UnknownUnit(unit) => format!("unknown unit `{unit}`; use one of {units}"),
    })?;
    let mm = quantity.to_mm().ok_or_else(|| {
        format!("`{quantity}` is {}, not a length; use one of {units}", quantity.unit.dimension().name())
    })?;
    if min <= mm.0 && mm.0 <= max {
        return Ok(mm);
    }
    Err(format!("`{}` mm is outside the limits of `{}` mm to `{}` mm", plain(mm.0, 3), plain(min, 3), plain(max, 3)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn page_ranges_count_from_one_and_run_forwards() {
        assert_eq!(page_range("7"), Ok(7..=7));
        assert_eq!(page_range("7-9"), Ok(7..=9));
        for bad in ["0", "", "-3", "3-", "a", "1-2-3", "9-7", "4294967296"] {
            assert!(page_range(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn lengths_name_what_is_wrong() {
        assert_eq!(length("40 cm", 100.0, 6000.0), Ok(Mm(400.0)));
        let message = |text| length(text, 100.0, 6000.0).unwrap_err();
        assert_eq!(message("40"), "the unit is missing; add one of mm, cm, m, in, pt");
        assert_eq!(message("40 pd"), "`40 pd` is a prism demand, not a length; use one of mm, cm, m, in, pt");
        assert_eq!(message("4 cm"), "`40` mm is outside the limits of `100` mm to `6000` mm");
        assert_eq!(message("-40 cm"), "`-400` mm is outside the limits of `100` mm to `6000` mm");
    }
}
