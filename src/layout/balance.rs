//! A balance between the eyes on the page: the inks of a dimmed eye on screens, and what every such page shows.
//!
//! On paper the art is thinner for the stronger eye, see [`art`](super::art): tints would be halftoned, and their dots
//! are edges of their own.

use kurbo::Shape as _;

use crate::colour::{Inks, Srgb8, View, Views};
use crate::exercise::balance::Balance;
use crate::language::Tongue;
use crate::scene::Eye;

use super::compose::RULE;
use super::grid::Grid;
use super::sheet::{Fill, Furniture, Node, Role, Tone};

/// Between the frame of a page and its safe area, mm (design choice: inside the margins of every format).
const CLEAR: f64 = 2.5;

/// The inks of a page on a screen: the stronger eye sees its mark as `share` of its step from the ground, alone and
/// where marks overlap; the other eye's ink stays.
pub fn inks(balance: Balance, full: &Inks, views: &Views) -> Inks {
    match balance.stronger {
        Eye::Left => {
            let left = views.left.toward(full.ground, full.left, balance.share);
            Inks { left, both: overlap(&views.left, full, full.right, left), ..*full }
        }
        Eye::Right => {
            let right = views.right.toward(full.ground, full.right, balance.share);
            Inks { right, both: overlap(&views.right, full, full.left, right), ..*full }
        }
    }
}

/// The overlap colour with the stronger eye's mark dimmed: on the way from the other eye's ink, which this eye hardly
/// sees, to the full overlap, which the other eye sees as its own ink; there where this eye sees its dimmed ink.
fn overlap(view: &View, full: &Inks, other: Srgb8, dimmed: Srgb8) -> Srgb8 {
    let (start, end) = (view.luminance(other), view.luminance(full.both));
    view.toward(other, full.both, (view.luminance(dimmed) - start) / (end - start))
}

/// What the stronger eye keeps: "60 % left eye"
pub fn share(balance: Balance, tongue: &Tongue) -> String {
    let share = [("share", tongue.number(balance.share * 100.0, 2).into())];
    match balance.stronger {
        Eye::Left => tongue.tell("balance-left", &share),
        Eye::Right => tongue.tell("balance-right", &share),
    }
}

/// What a page says of its balance: "balance 60 % left eye, set by NAME"
pub fn words(balance: Balance, name: &str, tongue: &Tongue) -> String {
    let balance = tongue.tell("balance-words", &[("share", share(balance, tongue).into())]);
    format!("{balance}, {}", set_by(name, tongue))
}

/// Who set a page or a base: "set by NAME"
pub fn set_by(name: &str, tongue: &Tongue) -> String {
    tongue.tell("set-by", &[("name", name.into())])
}

/// The frame of a page that a professional set: around everything, in the text ink.
pub fn frame(grid: &Grid) -> Node {
    let outer = grid.safe.inflate(CLEAR, CLEAR);
    let mut path = outer.to_path(0.1);
    path.extend(outer.inset(-2.0 * RULE).to_path(0.1).reverse_subpaths());
    Node::Group(Role::Artifact(Furniture::Layout), vec![Node::Fill(Fill { path, tone: Tone::FULL })])
}
