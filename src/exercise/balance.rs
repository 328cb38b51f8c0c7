//! The balance between the eyes: how much the stronger one keeps. Read here; drawn by layout.
//!
//! Unequal eyes are for a professional to decide: without `[gate]` in `set.toml` a set with a balance is refused.

use super::ramp::Ramp;
use crate::scene::Eye;
use crate::spec::Share;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, percent};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::plain;

/// The balance of a page.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Balance {
    /// The eye that gets less.
    pub stronger: Eye,
    /// What it keeps, 0.2 to 1: of line widths and areas on paper, of luminance steps on a screen.
    pub share: f64,
}

impl From<(Eye, f64)> for Balance {
    fn from((stronger, share): (Eye, f64)) -> Self {
        Self { stronger, share }
    }
}

/// A balance that may change from level to level.
#[derive(Debug, Clone, PartialEq)]
pub struct BalanceRamp {
    /// The eye that gets less.
    pub stronger: Eye,
    /// What it keeps.
    pub share: Ramp<Share>,
}

impl BalanceRamp {
    /// The balance on a level.
    pub fn at(&self, level: u32) -> Balance {
        Balance { stronger: self.stronger, share: self.share.at(level).0 }
    }
}

/// `balance = { … }`. Source of the limits: design choice.
pub const BALANCE: TableSpec = TableSpec {
    name: "balance",
    form: TableForm::Inline,
    groups: &[&[
        Field::required("stronger", Takes::Choice(&["left", "right"]), "The stronger eye: it gets less."),
        Field::required(
            "share",
            Takes::Ramp(&Takes::Share(percent(20.0, 100.0))),
            "What the stronger eye keeps. On paper its lines have so much of their width, and its discs a hole that \
             leaves so much of their area; letters, drawings and watch marks stay whole, ink stays solid. On a screen its ink \
             has so much of its luminance step from the ground. Places and the outer edges of shapes stay, and so does the other eye's \
             picture. A ghost weighs more beside a weaker mark.",
        ),
    ]],
    doc: "What the stronger eye keeps.",
};

impl Balance {
    /// In words: "60 % left eye".
    pub fn words(&self) -> String {
        format!("{} % {} eye", plain(self.share * 100.0, 2), self.eye())
    }

    /// The stronger eye as specs write it.
    pub const fn eye(&self) -> &'static str {
        match self.stronger {
            Eye::Left => "left",
            Eye::Right => "right",
        }
    }
}

/// Reads `balance` of `[exercise]`. `None`: a problem has been pushed.
pub(super) fn read(reader: &mut Reader<'_>, exercise: &Table<'_>) -> Option<Option<Placed<BalanceRamp>>> {
    let Some(mut table) = exercise.inline_table(reader, "balance")? else { return Some(None) };
    table.check_keys(reader);
    let stronger = table.one_of(reader, "stronger", &[Eye::Left, Eye::Right]);
    let share = table.get(reader, "share");
    let value = BalanceRamp { stronger: stronger?, share: share? };
    Some(Some(Placed { value, place: table.place() }))
}
