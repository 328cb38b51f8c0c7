//! `jump`: two or more targets at different depths, looked at in turn along a numbered route.

use crate::diagnostics::Place;
use crate::scene::Depth;
use crate::units::{Mm, Seconds};

use super::ramp::Ramp;
use super::target::Target;

/// The parameters of a `jump` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Jump {
    /// The stops in the order of the route: written out as `[[target]]`, or laid out by an arrangement.
    pub stops: Stops,
    /// Whether each stop carries its number in the route.
    pub numbers: bool,
    /// How long to stay at each stop, for the words.
    pub stay: Seconds,
    /// How many rounds, for the words.
    pub rounds: u32,
}

/// Where the stops come from.
#[derive(Debug, Clone, PartialEq)]
pub enum Stops {
    /// Each written out; at least two.
    Listed(Vec<Target>),
    /// Copies of one target, laid out evenly.
    Arranged(Arrangement),
}

/// An `[arrangement]`: copies of one target in a row, a column or a ring, with depths that cycle along the route.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrangement {
    /// The layout.
    pub form: ArrangementForm,
    /// How many stops, at least 2.
    pub count: u32,
    /// Between the middles of neighbours; for a ring: its radius.
    pub spacing: Mm,
    /// The order in which the places are visited, each place from 1 to `count` once. Without one: in the order of the
    /// places (left to right, top to bottom, clockwise from the top).
    pub route: Option<Vec<u32>>,
    /// Depths taken in turn along the places; at least 2.
    pub depths: Vec<Ramp<Depth>>,
    /// The target that is copied; its place is the middle of the arrangement and its depth is not used.
    pub target: Target,
    /// Where it is written.
    pub place: Place,
}

/// The layouts of an [`Arrangement`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ArrangementForm {
    /// Left to right.
    Row,
    /// Top to bottom.
    Column,
    /// Clockwise from the top.
    Ring,
}
