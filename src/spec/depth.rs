//! The depth language: an amount with its unit and a side, or `"page"`. One function reads it, for files and for the
//! command line alike.

use crate::scene::{Depth, Side};
use crate::units::{Dimension, Mm, PrismDioptre, Quantity};

use super::field::{Limits, amount};
use super::quantity::quantity_problem;
use super::text::shown;

/// Why a text is not a depth.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DepthError {
    /// What is wrong, with the text as seen.
    pub message: String,
    /// One way out.
    pub help: String,
}

/// A depth of more than this is a slip of the pen. The limits of eyes and pages are far below and checked later, where
/// the viewer is known. Design choice.
const MOST_LENGTH: Limits = super::field::mm(0.0, 10_000.0);
/// The same for an angle.
const MOST_ANGLE: Limits = super::field::deg(0.0, 45.0);
/// The same for a prism demand, in prism dioptres.
const MOST_DEMAND: f64 = 100.0;

const SIDES: &str = "the side is `toward` (before the page) or `away` (behind it)";

/// Reads `"6 cm toward"`, `"2 pd away"`, `"400 arcsec toward"`, `"4 mm parallax away"`, `"40 % of range toward"` or
/// `"page"`.
///
/// A length is a place relative to the page; with the word `parallax` it is the offset on the page. Amounts are never
/// negative: the side says which way.
pub fn parse_depth(text: &str) -> Result<Depth, DepthError> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let (&last, before) = words.split_last().ok_or_else(|| error("a depth must not be empty", example()))?;
    if last == "page" && before.is_empty() {
        return Ok(Depth::Page);
    }
    if words.first() == Some(&"page") {
        return Err(error(format!("`{}`: `page` takes no side", shown(text)), "write `\"page\"` alone"));
    }
    let side = match last {
        "toward" => Side::Toward,
        "away" => Side::Away,
        _ => return Err(side_error(text, last, before)),
    };
    match before.split_last() {
        None => Err(error(format!("`{}` has no amount", shown(text)), example())),
        Some((&"range", share)) => read_share(text, share, side),
        Some((&"parallax", amount)) => read_amount(text, &amount.join(" "), side, true),
        _ => read_amount(text, &before.join(" "), side, false),
    }
}

fn error(message: impl Into<String>, help: impl Into<String>) -> DepthError {
    DepthError { message: message.into(), help: help.into() }
}

fn example() -> &'static str {
    "write an amount and a side, for example `\"2 pd toward\"`, or `\"page\"`"
}

/// The last word is no side: it is missing, or another word stands there.
fn side_error(text: &str, last: &str, before: &[&str]) -> DepthError {
    let all = Quantity::parse(text).is_ok() || Quantity::parse(text.trim_end_matches("parallax")).is_ok();
    let starts_with_number = text.trim_start().starts_with(|c: char| c.is_ascii_digit() || "+-.".contains(c));
    if all {
        error(format!("`{}` says no side", shown(text)), format!("add a side: {SIDES}"))
    } else if before.is_empty() && !starts_with_number {
        error(format!("`{}` is not a depth", shown(text)), example())
    } else {
        error(format!("`{}` is not a side", shown(last)), SIDES)
    }
}

/// The share before `of range`.
fn read_share(text: &str, words: &[&str], side: Side) -> Result<Depth, DepthError> {
    let Some((&"of", amount)) = words.split_last() else {
        return Err(error(format!("`{}` is not a depth", shown(text)), "write for example `\"40 % of range toward\"`"));
    };
    let written = amount.join(" ");
    let share = Quantity::parse(&written).map_err(|problem| {
        error(quantity_problem(&problem, &written, "a share"), "a share of the range is written in %, 0 to 100")
    })?;
    if share.unit.dimension() != Dimension::Share || !(0.0..=100.0).contains(&share.value) {
        let message = format!("`{written}` is not a share of the range: 0 % to 100 %");
        return Err(error(message, "write for example `\"40 % of range toward\"`"));
    }
    Ok(Depth::Range(share.value / 100.0, side))
}

/// The amount before the side.
fn read_amount(text: &str, written: &str, side: Side, parallax: bool) -> Result<Depth, DepthError> {
    let quantity = Quantity::parse(written).map_err(|problem| {
        let problem = quantity_problem(&problem, written, "a depth");
        error(problem, "a depth takes a length (mm, cm, m, in, pt), an angle (deg, arcmin, arcsec) or a demand (pd)")
    })?;
    if quantity.value < 0.0 {
        let (positive, other) = (Quantity { value: -quantity.value, ..quantity }, other_side(side));
        let help = format!("an amount is never negative; for the other side write `\"{} {other}\"`", amount(positive));
        return Err(error(format!("`{}` has a negative amount", shown(text)), help));
    }
    // Adding zero turns the "-0" of a file into 0.
    let quantity = Quantity { value: quantity.value + 0.0, ..quantity };
    let dimension = quantity.unit.dimension();
    if parallax && dimension != Dimension::Length {
        let message = format!("`{}` is {}; a parallax takes a length", amount(quantity), dimension.name());
        return Err(error(message, "leave out `parallax`, or give the offset on the page in mm"));
    }
    let depth = match (quantity.to_mm(), quantity.to_angle(), dimension) {
        (Some(length), ..) if parallax => Depth::Parallax(within(length, quantity)?, side),
        (Some(length), ..) => Depth::Place(within(length, quantity)?, side),
        (_, Some(angle), _) if angle.to_degrees() <= MOST_ANGLE.max.value => Depth::Disparity(angle, side),
        (_, Some(_), _) => return Err(too_much(quantity, &amount(MOST_ANGLE.max))),
        (.., Dimension::Prism) if quantity.value <= MOST_DEMAND => Depth::Demand(PrismDioptre(quantity.value), side),
        (.., Dimension::Prism) => return Err(too_much(quantity, &format!("{MOST_DEMAND} pd"))),
        _ => {
            let message = format!("`{}` is {}, not a depth", amount(quantity), dimension.name());
            return Err(error(message, "a depth takes a length, an angle or a prism demand (pd)"));
        }
    };
    Ok(depth)
}

fn other_side(side: Side) -> &'static str {
    match side {
        Side::Toward => "away",
        Side::Away => "toward",
    }
}

fn within(length: Mm, written: Quantity) -> Result<Mm, DepthError> {
    if length.0 <= MOST_LENGTH.max.value { Ok(length) } else { Err(too_much(written, "10 m")) }
}

fn too_much(seen: Quantity, limit: &str) -> DepthError {
    error(format!("a depth of `{}` is above the limit of {limit}", amount(seen)), "write a smaller amount")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Angle;

    #[test]
    fn depths_read_amount_and_side() {
        let read = |text| parse_depth(text).unwrap();
        assert_eq!(read("page"), Depth::Page);
        assert_eq!(read("6 cm toward"), Depth::Place(Mm(60.0), Side::Toward));
        assert_eq!(read("2 pd away"), Depth::Demand(PrismDioptre(2.0), Side::Away));
        assert_eq!(read("400arcsec toward"), Depth::Disparity(Angle::from_arcsec(400.0), Side::Toward));
        assert_eq!(read(" 4  mm parallax  away "), Depth::Parallax(Mm(4.0), Side::Away));
        assert_eq!(read("40 % of range away"), Depth::Range(0.4, Side::Away));
        assert_eq!(read("0 pd toward"), Depth::Demand(PrismDioptre(0.0), Side::Toward));
        let Depth::Demand(zero, _) = read("-0 pd toward") else { panic!() };
        assert!(zero.0.is_sign_positive());
    }

    #[test]
    fn texts_that_are_no_depth_say_why() {
        let message = |text: &str| parse_depth(text).unwrap_err().message;
        assert_eq!(message(""), "a depth must not be empty");
        assert_eq!(message("6 cm"), "`6 cm` says no side");
        assert_eq!(message("6 cm parallax"), "`6 cm parallax` says no side");
        assert_eq!(message("6 cm behind"), "`behind` is not a side");
        assert_eq!(message("-2 pd away"), "`-2 pd away` has a negative amount");
        assert_eq!(message("2 pd parallax away"), "`2 pd` is a prism demand; a parallax takes a length");
        assert_eq!(message("3 s away"), "`3 s` is a time, not a depth");
        assert_eq!(message("12 m away"), "a depth of `12 m` is above the limit of 10 m");
        assert_eq!(message("101 pd away"), "a depth of `101 pd` is above the limit of 100 pd");
        assert_eq!(message("46 deg away"), "a depth of `46 deg` is above the limit of 45 deg");
        assert_eq!(message("page away"), "`page away`: `page` takes no side");
        assert_eq!(message("120 % of range toward"), "`120 %` is not a share of the range: 0 % to 100 %");
        assert_eq!(message("40 % range toward"), "`40 % range toward` is not a depth");
        assert_eq!(message("far"), "`far` is not a depth");
        assert_eq!(message("toward"), "`toward` has no amount");
        assert_eq!(message("parallax toward"), "`` does not start with a number");
    }
}
