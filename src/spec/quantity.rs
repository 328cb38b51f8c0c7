//! Quantities, depths and places as values of keys: unit, dimension and limits.

use toml::de::DeValue;

use crate::diagnostics::{Diagnostic, codes};
use crate::scene::{At, Depth, Size};
use crate::units::{Dimension, Mm, PrismDioptre, Quantity, QuantityError, Seconds};

use super::depth::parse_depth;
use super::field::{Limits, Takes, amount, base};
use super::read::{Raw, Read, Slot, text};
use super::reader::Reader;
use super::text::shown;

impl Read for Mm {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Length(limits) = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Length])?;
        within(reader, slot, raw, seen, limits).then(|| seen.to_mm()).flatten()
    }
}

/// A share of a whole, 0 to 1; written in per cent.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share(pub f64);

impl Read for Share {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Share(limits) = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Share])?;
        within(reader, slot, raw, seen, limits).then_some(Share(seen.value / 100.0))
    }
}

impl Read for PrismDioptre {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Prism(limits) = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Prism])?;
        within(reader, slot, raw, seen, limits).then_some(PrismDioptre(seen.value))
    }
}

impl Read for Seconds {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Time(limits) = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Time])?;
        within(reader, slot, raw, seen, limits).then(|| seen.to_seconds()).flatten()
    }
}

impl Read for Size {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Size { length, angle } = slot.takes else { return None };
        let seen = quantity(reader, slot, raw, &[Dimension::Length, Dimension::Angle])?;
        let limits = if seen.unit.dimension() == Dimension::Length { length } else { angle };
        if !within(reader, slot, raw, seen, limits) {
            return None;
        }
        seen.to_mm().map(Size::Length).or(seen.to_angle().map(Size::Angle))
    }
}

impl Read for Depth {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        if is_number(raw) {
            unitless(reader, slot, raw, "a depth");
            return None;
        }
        let text = text(reader, slot, raw)?;
        match parse_depth(text) {
            Ok(depth) => Some(depth),
            Err(wrong) => {
                let problem = Diagnostic::error(codes::DEPTH, raw.place(reader), wrong.message)
                    .with_label("not a depth")
                    .with_help(wrong.help);
                reader.push(problem);
                None
            }
        }
    }
}

impl Read for At {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Point(reach) = *slot.takes else { return None };
        let least = Quantity { value: -reach.value, ..reach };
        let takes = Takes::Length(Limits { min: least, max: reach });
        match raw.value.get_ref().as_array().map(|list| &**list) {
            Some([x, y]) => {
                let slot = slot.of_entry(&takes);
                let (x, y) = (Mm::read(reader, slot, Raw::new(x)), Mm::read(reader, slot, Raw::new(y)));
                Some(At { x: x?, y: y? })
            }
            Some(list) => {
                let message = format!("`{}` takes two lengths, found a list of {}", slot.key, list.len());
                let problem = Diagnostic::error(codes::LIST, raw.place(reader), message)
                    .with_label("two lengths")
                    .with_help("the first goes to the right of the middle of the art field, the second down");
                reader.push(problem);
                None
            }
            None => {
                raw.mismatch(reader, slot);
                None
            }
        }
    }
}

fn is_number(raw: Raw<'_>) -> bool {
    matches!(raw.value.get_ref(), DeValue::Integer(_) | DeValue::Float(_))
}

fn unitless(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>, wanted: &str) {
    let seen = shown(reader.written(raw.place(reader)));
    let message = format!("{} takes {wanted}, found the bare number `{seen}`", slot.name());
    let problem = Diagnostic::error(codes::UNIT, raw.place(reader), message)
        .with_label("no unit")
        .with_help(format!("write it in quotes with its unit, for example `{}`", slot.takes.example()));
    reader.push(problem);
}

/// A quantity of one of the wanted dimensions.
fn quantity(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>, wanted: &[Dimension]) -> Option<Quantity> {
    let names: Vec<_> = wanted.iter().map(|d| d.name()).collect();
    let names = names.join(" or ");
    if is_number(raw) {
        unitless(reader, slot, raw, &names);
        return None;
    }
    let text = text(reader, slot, raw)?;
    let units: Vec<_> = wanted.iter().map(|d| format!("{} takes {}", d.name(), d.units())).collect();
    let units = units.join("; ");
    let problem = match Quantity::parse(text) {
        Ok(seen) if wanted.contains(&seen.unit.dimension()) => return Some(seen),
        Ok(seen) => {
            let of = seen.unit.dimension().name();
            let message = format!("`{}` is {of}; {} takes {names}", shown(text), slot.name());
            Diagnostic::error(codes::UNIT, raw.place(reader), message).with_label(format!("takes {names}"))
        }
        Err(wrong) => {
            let code = match wrong {
                QuantityError::NoUnit | QuantityError::UnknownUnit(_) => codes::UNIT,
                QuantityError::NoNumber | QuantityError::BadNumber(_) => codes::NUMBER,
            };
            let message = format!("{} takes {names}: {}", slot.name(), quantity_problem(&wrong, text, &names));
            Diagnostic::error(code, raw.place(reader), message).with_label(format!("not {names}"))
        }
    };
    reader.push(problem.with_help(units));
    None
}

/// Why a text is no quantity, in words.
pub(super) fn quantity_problem(problem: &QuantityError, text: &str, wanted: &str) -> String {
    match problem {
        QuantityError::NoNumber => format!("`{}` does not start with a number", shown(text)),
        QuantityError::BadNumber(number) => format!("`{}` is not a number that {wanted} can have", shown(number)),
        QuantityError::NoUnit => format!("`{}` has no unit", shown(text)),
        QuantityError::UnknownUnit(unit) if unit.starts_with(',') => {
            format!("`{}` has a decimal comma, decimals have a point", shown(text))
        }
        QuantityError::UnknownUnit(unit) => format!("unknown unit `{}`", shown(unit)),
    }
}

/// Whether a quantity is inside its limits, which have its dimension; pushes a problem where it is not.
fn within(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>, seen: Quantity, limits: &Limits) -> bool {
    if limits.contain(seen) {
        return true;
    }
    let low = base(seen) < base(limits.min);
    let (limit, side) = if low { (limits.min, "below the least") } else { (limits.max, "above the most") };
    let same = if seen.unit == limit.unit { String::new() } else { format!(" ({})", in_unit_of(seen, limit)) };
    let message = format!("{} is `{}`{same}, {side} it takes, {}", slot.name(), amount(seen), amount(limit));
    let problem = Diagnostic::error(codes::RANGE, raw.place(reader), message)
        .with_label(format!("limit {}", amount(limit)))
        .with_help(format!("{} takes {}", slot.name(), slot.takes.words()));
    reader.push(problem);
    false
}

/// A quantity in the unit of another of the same dimension.
fn in_unit_of(quantity: Quantity, other: Quantity) -> String {
    let one = base(Quantity { value: 1.0, unit: other.unit });
    amount(Quantity { value: base(quantity) / one, unit: other.unit })
}
