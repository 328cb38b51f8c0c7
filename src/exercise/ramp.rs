//! A value that may change from level to level.

mod blend;

use crate::diagnostics::{Diagnostic, codes};
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::read::{Placed, Raw, Read, Slot};
use crate::spec::reader::{RampSeen, Reader};
use crate::spec::suggest::nearest;
use crate::spec::table::Table;
use crate::spec::text::shown;
use crate::units::{Quantity, plain};

/// One value, or one a level.
#[derive(Debug, Clone, PartialEq)]
pub enum Ramp<T> {
    /// The same on every level.
    Same(T),
    /// From the first to the last level along a curve.
    Even {
        /// On the first level.
        from: T,
        /// On the last level.
        to: T,
        /// How the levels between are spaced.
        curve: Curve,
        /// Over which levels.
        span: Span,
    },
    /// Listed, one a level.
    Listed {
        /// The values.
        values: Vec<T>,
        /// Over which levels.
        span: Span,
    },
}

/// How the levels of a ramp are spaced.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Curve {
    /// In equal steps; depths in equal steps of demand.
    Even,
    /// In equal ratios, as octaves are.
    Geometric,
    /// In equal steps of the difficulty that this quantity adds: equal ratios for sizes and for disparities in angles,
    /// equal steps for all else. See [`crate::optics::grading`].
    Difficulty,
}

/// The words of [`Curve`], in its order.
pub const CURVES: &[&str] = &["even", "geometric", "difficulty"];

/// Over which levels of an exercise a ramp runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span {
    /// Its own levels.
    pub own: u32,
    /// How many levels pass before it begins to change.
    pub after: u32,
    /// The levels of the whole exercise.
    pub levels: u32,
    /// The place of its first level among those of its series, from 0.
    pub first: u32,
    /// The levels of its series; its own where it is in none.
    pub of: u32,
}

impl Span {
    /// A ramp that is the whole exercise.
    pub const fn whole(levels: u32) -> Self {
        Self { own: levels, after: 0, levels, first: 0, of: levels }
    }

    /// Its own level, from 0, on a level of the exercise, from 1. Before its first and past its last level it holds.
    fn local(self, level: u32) -> u32 {
        level.saturating_sub(1).saturating_sub(self.after).min(self.own.saturating_sub(1))
    }

    /// The share of the way from start to end.
    fn share(self, level: u32) -> f64 {
        f64::from(self.first + self.local(level)) / f64::from(self.of.saturating_sub(1).max(1))
    }
}

/// What a ramp can hold.
pub trait Blend: Clone {
    /// The value at share `t` of the way from `self` to `to`: 0 gives `self`, 1 gives `to`, exactly.
    fn blend(&self, to: &Self, t: f64) -> Self;

    /// Whether the two are of one kind, so that there is a way from one to the other.
    fn blends_with(&self, to: &Self) -> bool;

    /// The same in equal ratios; `None` where there are none, as across 0.
    fn geometric(&self, _to: &Self, _t: f64) -> Option<Self> {
        None
    }

    /// The same in equal steps of difficulty.
    fn by_difficulty(&self, to: &Self, t: f64) -> Self {
        self.blend(to, t)
    }

    /// How many steps of this quantity lie between the two; `None` where it is of another kind.
    fn steps(&self, _to: &Self, _step: Quantity) -> Option<f64> {
        None
    }
}

/// The most levels of a ramp. Design choice.
pub const MOST_LEVELS: u32 = 20;

/// The inline table of a ramp. What `from`, `to` and `values` take is what the ramped key takes; the types here stand
/// for it in the tables of the language.
pub const RAMP: TableSpec = TableSpec {
    name: "ramp",
    form: TableForm::Inline,
    groups: &[&[
        Field::optional("from", Takes::Depth, "Value on the first level; with `to`, and `levels` or `step`."),
        Field::optional("to", Takes::Depth, "Value on the last level."),
        Field::optional("levels", Takes::Count { min: 2, max: MOST_LEVELS }, "Number of levels, one page each."),
        Field::optional(
            "step",
            Takes::Text(40),
            "The step from level to level, in place of `levels`: a whole number of them must lead from `from` to `to`.",
        ),
        Field::optional(
            "curve",
            Takes::Choice(CURVES),
            "How the levels between are spaced. `even`, also where it is left out: equal steps, depths in demand. \
             `geometric`: equal ratios. `difficulty`: equal steps of the difficulty that this quantity adds, which is \
             equal ratios for sizes and for disparities in angles.",
        ),
        Field::optional(
            "values",
            Takes::List { of: &Takes::Depth, min: 2, max: MOST_LEVELS },
            "The value on each level, in place of the other keys.",
        ),
        Field::optional(
            "series",
            Takes::Id,
            "A `[[series]]` of `set.toml` that this exercise is a part of; with `levels`, its share of it, 1 or more.",
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
        let own = OWN_WAYS.iter().copied().find(|way| table.has(way));
        let mut ramp = match own {
            Some("values") => read_listed(reader, slot.key, &table, of),
            Some("series") => read_part(reader, slot, &table, of),
            _ => read_even(reader, slot.key, &table, of),
        }?;
        let own = ramp.span()?.own;
        let series = table.maybe::<String>(reader, "series").flatten();
        reader.note_ramp(RampSeen { key: slot.key, place: raw.place(reader), levels: own, series });
        let turn = reader.plan.turn(slot.key, own);
        if let Ramp::Even { span, .. } | Ramp::Listed { span, .. } = &mut ramp {
            (span.after, span.levels) = (turn.after, turn.levels);
        }
        Some(ramp)
    }
}

/// Keys that stand in for `from` and `to`.
const OWN_WAYS: [&str; 2] = ["values", "series"];

/// Pushes keys that do not go with `way`.
fn alone(reader: &mut Reader<'_>, table: &Table<'_>, way: &str, others: &[&'static str]) -> Option<()> {
    let Some(other) = others.iter().find(|key| table.has(key)) else { return Some(()) };
    let message = format!("a ramp has `{way}`, or `from`, `to` and `levels`: `{other}` does not go with `{way}`");
    let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, other), message)
        .with_label(format!("beside `{way}`"))
        .with_help(format!("leave out `{other}`, or leave out `{way}`"));
    reader.push(problem);
    None
}

fn read_even<T: Read + Blend>(
    reader: &mut Reader<'_>,
    key: &'static str,
    table: &Table<'_>,
    of: &Takes,
) -> Option<Ramp<T>> {
    let from: Option<T> = table.get_as(reader, "from", of);
    let to: Option<Placed<T>> = table.get_as(reader, "to", of);
    let curve = read_curve(reader, table);
    let by_step = table.has("step");
    let levels: Option<u32> = if by_step { None } else { table.get(reader, "levels") };
    let (from, to, curve) = (from?, to?, curve?);
    if !from.blends_with(&to.value) {
        return mixed(reader, key, &to);
    }
    let levels = if by_step { levels_of_step(reader, table, &from, &to.value) } else { levels };
    if curve == Curve::Geometric && from.geometric(&to.value, 0.5).is_none() {
        return no_ratio(reader, table);
    }
    Some(Ramp::Even { from, to: to.value, curve, span: Span::whole(levels?) })
}

fn read_curve(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Curve> {
    if !table.has("curve") {
        return Some(Curve::Even);
    }
    table.one_of(reader, "curve", &[Curve::Even, Curve::Geometric, Curve::Difficulty])
}

/// How many levels a step makes.
fn levels_of_step<T: Blend>(reader: &mut Reader<'_>, table: &Table<'_>, from: &T, to: &T) -> Option<u32> {
    alone(reader, table, "step", &["levels", "curve"])?;
    let written: Placed<String> = table.get(reader, "step")?;
    let steps = Quantity::parse(&written.value).ok().and_then(|step| from.steps(to, step));
    let whole = steps.map(f64::round).filter(|n| (1.0..f64::from(MOST_LEVELS)).contains(n));
    let close = |n: &f64| steps.is_some_and(|steps| (steps - n).abs() < 1e-6);
    if let Some(n) = whole.filter(close) {
        return (2..=MOST_LEVELS).find(|levels| (f64::from(levels - 1) - n).abs() < 0.5);
    }
    let message = match steps {
        Some(steps) => format!(
            "`from` and `to` lie `{}` steps apart: not a whole number up to {}",
            plain(steps, 3),
            MOST_LEVELS - 1
        ),
        None => format!("`{}` is no step between `from` and `to`: all three take the same unit", shown(&written.value)),
    };
    let problem = Diagnostic::error(codes::RAMP, written.place, message)
        .with_label("not a whole number of steps")
        .with_help("write another `step`, or `levels`");
    reader.push(problem);
    None
}

fn no_ratio<T>(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<T> {
    let message = "a geometric ramp goes in equal ratios: both ends must be above 0, on one side and in one unit";
    let problem = Diagnostic::error(codes::RAMP, table.place_of(reader, "curve"), message)
        .with_label("no ratio between the ends")
        .with_help("write `curve = \"even\"`, or other ends");
    reader.push(problem);
    None
}

fn read_listed<T: Read + Blend>(
    reader: &mut Reader<'_>,
    key: &'static str,
    table: &Table<'_>,
    of: &'static Takes,
) -> Option<Ramp<T>> {
    let list = Takes::List { of, min: 2, max: MOST_LEVELS };
    let values: Option<Vec<Placed<T>>> = table.get_as(reader, "values", &list);
    alone(reader, table, "values", &["from", "to", "levels", "step", "curve", "series"])?;
    let values = values?;
    let first = values.first()?.value.clone();
    if let Some(other) = values.iter().find(|v| !first.blends_with(&v.value)) {
        return mixed(reader, key, other);
    }
    let levels = u32::try_from(values.len()).unwrap_or(u32::MAX);
    Some(Ramp::Listed { values: values.into_iter().map(|v| v.value).collect(), span: Span::whole(levels) })
}

/// This exercise's part of a series of the set.
fn read_part<T: Read + Blend>(
    reader: &mut Reader<'_>,
    slot: Slot<'_>,
    table: &Table<'_>,
    of: &Takes,
) -> Option<Ramp<T>> {
    let id: Option<Placed<String>> = table.get(reader, "series");
    let own: Option<u32> = table.get_as(reader, "levels", &Takes::Count { min: 1, max: MOST_LEVELS });
    alone(reader, table, "series", &["from", "to", "step", "curve"])?;
    let (id, own) = (id?, own?);
    let Some(part) = reader.plan.series.get(&id.value).cloned() else {
        let message = format!("`set.toml` has no `[[series]]` of the id `{}`", id.value);
        let problem = Diagnostic::error(codes::CHOICE, id.place, message).with_label("unknown series");
        let near = nearest(&id.value, reader.plan.series.keys().map(String::as_str));
        reader.push(match near {
            Some(near) => problem.with_help(format!("did you mean `{near}`?")),
            None => problem.with_help("add it to `set.toml`, or write `from`, `to` and `levels`"),
        });
        return None;
    };
    let slot = Slot { takes: of, ..slot };
    let (from, to): (Option<T>, Option<T>) =
        (reader.read_elsewhere(slot, &part.from, id.place), reader.read_elsewhere(slot, &part.to, id.place));
    let (from, to) = (from?, to?);
    let curve = CURVES.iter().position(|word| *word == part.curve);
    let curve = curve.and_then(|i| [Curve::Even, Curve::Geometric, Curve::Difficulty].get(i).copied())?;
    if !from.blends_with(&to) {
        return mixed(reader, slot.key, &Placed { value: to, place: id.place });
    }
    if curve == Curve::Geometric && from.geometric(&to, 0.5).is_none() {
        return no_ratio(reader, table);
    }
    let span = Span { first: part.first, of: part.of.max(own), ..Span::whole(own) };
    Some(Ramp::Even { from, to, curve, span })
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

impl<T> Ramp<T> {
    /// Over which levels it runs; `None` where it is the same on any number of levels.
    pub fn span(&self) -> Option<Span> {
        match self {
            Ramp::Same(_) => None,
            Ramp::Even { span, .. } | Ramp::Listed { span, .. } => Some(*span),
        }
    }

    /// The same ramp with every value turned into another.
    pub fn map<U>(self, of: impl Fn(T) -> U) -> Ramp<U> {
        match self {
            Ramp::Same(value) => Ramp::Same(of(value)),
            Ramp::Even { from, to, curve, span } => Ramp::Even { from: of(from), to: of(to), curve, span },
            Ramp::Listed { values, span } => Ramp::Listed { values: values.into_iter().map(of).collect(), span },
        }
    }

    /// How many levels the exercise of the ramp has; `None` where it is the same on any number of levels.
    pub fn levels(&self) -> Option<u32> {
        self.span().map(|span| span.levels)
    }
}

impl<T: Blend> Ramp<T> {
    /// The value on a level, counted from 1. Past the last level the last value holds.
    pub fn at(&self, level: u32) -> T {
        match self {
            Ramp::Same(value) => value.clone(),
            Ramp::Even { from, to, curve, span } => {
                let t = span.share(level);
                match curve {
                    Curve::Even => from.blend(to, t),
                    Curve::Difficulty => from.by_difficulty(to, t),
                    // The reader lets no geometric ramp through that has no ratio.
                    Curve::Geometric => from.geometric(to, t).unwrap_or_else(|| from.blend(to, t)),
                }
            }
            Ramp::Listed { values, span } => values[span.local(level) as usize].clone(),
        }
    }
}
