//! A value that may change from level to level.

use crate::diagnostics::{Diagnostic, codes};
use crate::scene::{Depth, Size};
use crate::spec::Share;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::read::{Placed, Raw, Read, Slot};
use crate::spec::reader::{RampSeen, Reader};
use crate::spec::table::Table;
use crate::units::{Angle, Mm};

/// One value, or one a level.
#[derive(Debug, Clone, PartialEq)]
pub enum Ramp<T> {
    /// The same on every level.
    Same(T),
    /// Even steps from the first to the last level.
    Even {
        /// On the first level.
        from: T,
        /// On the last level.
        to: T,
        /// How many levels, at least 2.
        levels: u32,
    },
    /// Listed, one a level.
    Listed(Vec<T>),
}

/// What a ramp can hold.
pub trait Blend: Clone {
    /// The value at share `t` of the way from `self` to `to`: 0 gives `self`, 1 gives `to`, exactly.
    fn blend(&self, to: &Self, t: f64) -> Self;

    /// Whether the two are of one kind, so that there is a way from one to the other.
    fn blends_with(&self, to: &Self) -> bool;
}

/// The most levels of a ramp. Design choice.
pub const MOST_LEVELS: u32 = 20;

/// The inline table of a ramp. What `from`, `to` and `values` take is what the ramped key takes; the types here stand
/// for it in the tables of the language.
pub const RAMP: TableSpec = TableSpec {
    name: "ramp",
    form: TableForm::Inline,
    groups: &[&[
        Field::optional("from", Takes::Depth, "Value on the first level; with `to` and `levels`."),
        Field::optional(
            "to",
            Takes::Depth,
            "Value on the last level. Levels between are even steps; depths step evenly in demand.",
        ),
        Field::optional("levels", Takes::Count { min: 2, max: MOST_LEVELS }, "Number of levels, one page each."),
        Field::optional(
            "values",
            Takes::List { of: &Takes::Depth, min: 2, max: MOST_LEVELS },
            "The value on each level, in place of the other keys.",
        ),
    ]],
    doc: "A value that changes from level to level.",
};

impl<T: Read + Blend> Read for Ramp<T> {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Ramp(of) = *slot.takes else { return None };
        if !raw.is_table() {
            return T::read(reader, Slot { takes: of, ..slot }, raw).map(Ramp::Same);
        }
        let table = Table::inline(reader, &RAMP, raw)?;
        let ramp = if table.has("values") {
            read_listed(reader, slot.key, &table, of)
        } else {
            read_even(reader, slot.key, &table, of)
        }?;
        let levels = ramp.levels()?;
        reader.note_ramp(RampSeen { key: slot.key, place: raw.place(reader), levels });
        Some(ramp)
    }
}

fn read_even<T: Read + Blend>(
    reader: &mut Reader<'_>,
    key: &'static str,
    table: &Table<'_>,
    of: &Takes,
) -> Option<Ramp<T>> {
    let from: Option<T> = table.get_as(reader, "from", of);
    let to: Option<Placed<T>> = table.get_as(reader, "to", of);
    let levels = table.get(reader, "levels");
    let (from, to) = (from?, to?);
    if !from.blends_with(&to.value) {
        return mixed(reader, key, &to);
    }
    Some(Ramp::Even { from, to: to.value, levels: levels? })
}

fn read_listed<T: Read + Blend>(
    reader: &mut Reader<'_>,
    key: &'static str,
    table: &Table<'_>,
    of: &'static Takes,
) -> Option<Ramp<T>> {
    let list = Takes::List { of, min: 2, max: MOST_LEVELS };
    let values: Option<Vec<Placed<T>>> = table.get_as(reader, "values", &list);
    if let Some(other) = ["from", "to", "levels"].into_iter().find(|k| table.has(k)) {
        let message = format!("a ramp has `values`, or `from`, `to` and `levels`: `{other}` does not go with `values`");
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, other), message)
            .with_label("beside `values`")
            .with_help(format!("leave out `{other}`, or leave out `values`"));
        reader.push(problem);
        return None;
    }
    let values = values?;
    let first = values.first()?.value.clone();
    if let Some(other) = values.iter().find(|v| !first.blends_with(&v.value)) {
        return mixed(reader, key, other);
    }
    Some(Ramp::Listed(values.into_iter().map(|v| v.value).collect()))
}

/// Pushes that a ramp goes from one kind of quantity to another.
fn mixed<T, U>(reader: &mut Reader<'_>, key: &str, other: &Placed<T>) -> Option<U> {
    let message = format!("the ramp of `{key}` mixes lengths and angles");
    let problem = Diagnostic::error(codes::RAMP, other.place, message)
        .with_label("not like the first value")
        .with_help("write all values of a ramp as lengths, or all as angles");
    reader.push(problem);
    None
}

impl<T: Blend> Ramp<T> {
    /// How many levels the ramp has; `None` where it is the same on any number of levels.
    pub fn levels(&self) -> Option<u32> {
        match self {
            Ramp::Same(_) => None,
            Ramp::Even { levels, .. } => Some(*levels),
            Ramp::Listed(values) => Some(u32::try_from(values.len()).unwrap_or(u32::MAX)),
        }
    }

    /// The value on a level, counted from 1. Past the last level the last value holds.
    pub fn at(&self, level: u32) -> T {
        match self {
            Ramp::Same(value) => value.clone(),
            Ramp::Even { from, to, levels } => {
                from.blend(to, f64::from(level.saturating_sub(1)) / f64::from(levels.saturating_sub(1).max(1)))
            }
            Ramp::Listed(values) => values[(level.max(1) as usize - 1).min(values.len() - 1)].clone(),
        }
    }
}

impl Blend for Depth {
    fn blend(&self, to: &Self, t: f64) -> Self {
        if t <= 0.0 {
            self.clone()
        } else if 1.0 <= t {
            to.clone()
        } else {
            Depth::Between(Box::new((self.clone(), to.clone())), t)
        }
    }

    /// Any two depths have a way between them, even in demand.
    fn blends_with(&self, _: &Self) -> bool {
        true
    }
}

impl Blend for Mm {
    fn blend(&self, to: &Self, t: f64) -> Self {
        if 1.0 <= t { *to } else { Mm(self.0 + (to.0 - self.0) * t) }
    }

    fn blends_with(&self, _: &Self) -> bool {
        true
    }
}

impl Blend for Size {
    /// Sizes of one kind blend evenly. The reader refuses a ramp from a length to an angle, so the last arm only ever
    /// holds the start.
    fn blend(&self, to: &Self, t: f64) -> Self {
        match (*self, *to) {
            (Size::Length(a), Size::Length(b)) => Size::Length(Mm(a.0 + (b.0 - a.0) * t)),
            (Size::Angle(a), Size::Angle(b)) => {
                Size::Angle(Angle::from_radians(a.to_radians() + (b.to_radians() - a.to_radians()) * t))
            }
            (from, _) => from,
        }
    }

    fn blends_with(&self, to: &Self) -> bool {
        matches!((self, to), (Size::Length(_), Size::Length(_)) | (Size::Angle(_), Size::Angle(_)))
    }
}

impl Blend for Share {
    fn blend(&self, to: &Self, t: f64) -> Self {
        Share(self.0 + (to.0 - self.0) * t)
    }

    fn blends_with(&self, _: &Self) -> bool {
        true
    }
}

impl Blend for u32 {
    /// The nearest whole number; halfway, the one farther from 0.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between two numbers of this type")]
    fn blend(&self, to: &Self, t: f64) -> Self {
        let (from, to) = (f64::from(*self), f64::from(*to));
        (from + (to - from) * t.clamp(0.0, 1.0)).round() as u32
    }

    fn blends_with(&self, _: &Self) -> bool {
        true
    }
}
