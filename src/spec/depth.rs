//! Reads a depth such as `6 cm toward`. Stand-in.

use crate::scene::{Depth, Side};
use crate::units::{Quantity, Unit};

/// Why a text is not a depth.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DepthError {
    /// What is wrong, with the text as seen.
    pub message: String,
    /// One way out.
    pub help: String,
}

/// Reads a depth as it is written in a spec.
pub fn parse_depth(text: &str) -> Result<Depth, DepthError> {
    parse(text).map_err(|message| DepthError { message, help: "write an amount and a side".to_owned() })
}

fn parse(text: &str) -> Result<Depth, String> {
    let text = text.trim();
    if text == "page" {
        return Ok(Depth::Page);
    }
    let (rest, side) = if let Some(rest) = text.strip_suffix(" toward") {
        (rest, Side::Toward)
    } else if let Some(rest) = text.strip_suffix(" away") {
        (rest, Side::Away)
    } else {
        return Err(format!("depth `{text}` has no side"));
    };
    let (rest, parallax) = match rest.strip_suffix(" parallax") {
        Some(rest) => (rest, true),
        None => (rest, false),
    };
    let quantity = Quantity::parse(rest).map_err(|e| format!("depth `{text}`: {e:?}"))?;
    if quantity.value < 0.0 {
        return Err(format!("depth `{text}` is below the limit of 0"));
    }
    match (quantity.to_mm(), parallax) {
        (Some(mm), true) => Ok(Depth::Parallax(mm, side)),
        (Some(mm), false) => Ok(Depth::Place(mm, side)),
        (None, _) if quantity.unit == Unit::Pd => Ok(Depth::Demand(crate::units::PrismDioptre(quantity.value), side)),
        (None, _) => {
            quantity.to_angle().map(|a| Depth::Disparity(a, side)).ok_or_else(|| format!("depth `{text}` is not one"))
        }
    }
}
