//! Arguments that are more than a word: page ranges, lengths, sets.

use std::ops::RangeInclusive;
use std::path::PathBuf;

use crate::bundle::shard::{MOST_SHARDS, Shard};
use crate::spec::editions::EDITION;
use crate::spec::field::{Limits, Takes};
use crate::spec::viewer::VIEWER;
use crate::units::{Dimension, Mm, Ppi, Quantity, QuantityError};

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

/// Reads `2/3`.
pub(super) fn shard(text: &str) -> Result<Shard, String> {
    let number = |part: &str| part.trim().parse::<u32>().ok();
    let shard = text.split_once('/').and_then(|(k, n)| Shard::new(number(k)?, number(n)?));
    shard.ok_or_else(|| format!("a shard is its number and how many there are, at most {MOST_SHARDS}; write `1/4`"))
}

/// Reads a length such as `40 cm` within the limits of a key of `[viewer]`.
pub(super) fn viewer_length(text: &str, key: &str) -> Result<Mm, String> {
    match VIEWER.field(key).map(|field| field.takes) {
        Some(Takes::Length(limits)) => length(text, limits),
        _ => Err(format!("`[viewer]` has no length `{key}`")),
    }
}

fn length(text: &str, limits: Limits) -> Result<Mm, String> {
    let units = Dimension::Length.units();
    let quantity = Quantity::parse(text).map_err(|error| match error {
        QuantityError::NoNumber => "no number at its start; write a length such as `40 cm`".to_owned(),
        QuantityError::BadNumber(number) => format!("`{number}` is not a number; write a length such as `40 cm`"),
        QuantityError::NoUnit => format!("the unit is missing; add one of {units}"),
        QuantityError::UnknownUnit(unit) => format!("unknown unit `{unit}`; use one of {units}"),
    })?;
    let kind = quantity.unit.dimension().name();
    let mm = quantity.to_mm().ok_or_else(|| format!("`{quantity}` is {kind}, not a length; use one of {units}"))?;
    let inside = limits.min.to_mm() <= Some(mm) && Some(mm) <= limits.max.to_mm();
    if inside { Ok(mm) } else { Err(format!("`{quantity}` is outside the limits of {}", limits.words())) }
}

/// Reads a resolution within the limits of `ppi` in `[[edition]]`.
pub(super) fn ppi(text: &str) -> Result<Ppi, String> {
    let Some(Takes::Count { min, max }) = EDITION.field("ppi").map(|field| field.takes) else {
        return Err("`[[edition]]` has no whole number `ppi`".to_owned());
    };
    let ppi = text.parse().ok().filter(|ppi| (min..=max).contains(ppi));
    ppi.map(Ppi).ok_or_else(|| format!("a resolution is a whole number from `{min}` to `{max}`"))
}

/// Reads a resolution of small pictures that are only looked at.
pub(super) fn picture_ppi(text: &str) -> Result<Ppi, String> {
    let (min, max) = (20, 300);
    let ppi = text.parse().ok().filter(|ppi| (min..=max).contains(ppi));
    ppi.map(Ppi).ok_or_else(|| format!("a resolution of pictures is a whole number from `{min}` to `{max}`"))
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
    fn shards_count_from_one() {
        assert_eq!(shard("2/3"), Ok(Shard { number: 2, of: 3 }));
        for bad in ["0/3", "4/3", "2", "2/", "/3", "a/b", "-1/3", "1/10001"] {
            assert!(shard(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn lengths_name_what_is_wrong() {
        let read = |text| viewer_length(text, "distance");
        assert_eq!(read("40 cm"), Ok(Mm(400.0)));
        assert_eq!(read("40").unwrap_err(), "the unit is missing; add one of mm, cm, m, in, pt");
        assert_eq!(read("40 pd").unwrap_err(), "`40 pd` is a prism demand, not a length; use one of mm, cm, m, in, pt");
        assert_eq!(read("4 cm").unwrap_err(), "`4 cm` is outside the limits of 200 mm to 6 m");
        assert!(read("-40 cm").is_err());
        assert!(viewer_length("40 cm", "glasses").is_err());
    }

    #[test]
    fn resolutions_keep_to_the_limits_of_the_spec() {
        assert_eq!(ppi("300"), Ok(Ppi(300)));
        for bad in ["0", "71", "1201", "300 ppi", "-72", ""] {
            assert!(ppi(bad).is_err(), "{bad}");
        }
    }
}
