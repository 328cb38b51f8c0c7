//! A value that may change from level to level.

use crate::scene::{Depth, Size};
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
}
