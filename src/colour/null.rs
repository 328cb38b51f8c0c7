//! The colour that shows each eye a wanted luminance: a ground on which the other eye's mark vanishes, or an overlap
//! that looks like the eye's own mark.

use super::view::Views;
use super::{LinearRgb, Srgb8};

/// Luminances wanted by the left and by the right eye.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wanted {
    /// By the left eye.
    pub left: f64,
    /// By the right eye.
    pub right: f64,
}

/// The light that shows each eye of a screen what it wants: one level for the channels of `left`, one for those of
/// `right`, none elsewhere.
///
/// ```text
/// u Fl.left + v Fl.right = wanted by the left eye
/// u Fr.left + v Fr.right = wanted by the right eye
/// ```
///
/// With the wanted luminances of the other eye's full mark this is the null ground. For marks (1,0,0) and (0,1,1) and
/// crosstalks X it has `r = (1 - Xr)/(1 - Xr Xc)`, `g = b = (1 - Xc)/(1 - Xr Xc)` on white, and
/// `r = Xr (1 - Xc)/(1 - Xr Xc)`, `g = b = Xc (1 - Xr)/(1 - Xr Xc)` on black.
///
/// `None` when the eyes see both groups of channels alike. The light may leave the gamut.
/// Source: derived; cancelling crosstalk in general: `[Woods2012]`.
pub fn null_light(seen: [[f64; 3]; 2], channels: [[bool; 3]; 2], wanted: Wanted) -> Option<LinearRgb> {
    let sum = |eye: usize, group: usize| -> f64 { (0..3).filter(|c| channels[group][*c]).map(|c| seen[eye][c]).sum() };
    let (a, b, c, d) = (sum(0, 0), sum(0, 1), sum(1, 0), sum(1, 1));
    let scale = (a.abs() + b.abs()) * (c.abs() + d.abs());
    let determinant = a * d - b * c;
    if determinant.abs() <= 1e-9 * scale {
        return None;
    }
    let u = (wanted.left * d - b * wanted.right) / determinant;
    let v = (a * wanted.right - c * wanted.left) / determinant;
    Some(LinearRgb([0, 1, 2].map(|k| {
        if channels[0][k] {
            u
        } else if channels[1][k] {
            v
        } else {
            0.0
        }
    })))
}

/// The page colour that comes nearest to what each eye wants, with one value for the channels of `left` and one for
/// those of `right`; `None` when the two share a channel.
///
/// On a screen in closed form where the light is in the gamut. Otherwise searched: the whole plane of the two values in
/// coarse steps, then finer around the best; the order of the search is fixed, and so is its result.
pub fn null_colour(views: &Views, channels: [[bool; 3]; 2], wanted: Wanted) -> Option<Srgb8> {
    if (0..3).any(|c| channels[0][c] == channels[1][c]) {
        return None;
    }
    if let (Some(left), Some(right)) = (views.left.channels(), views.right.channels())
        && let Some(colour) = null_light([left, right], channels, wanted).and_then(LinearRgb::to_srgb8)
    {
        return Some(colour);
    }
    let mut best = (f64::INFINITY, [0_u8; 2]);
    for u in (0..=255).step_by(COARSE) {
        for v in (0..=255).step_by(COARSE) {
            keep_nearer(views, channels, wanted, [u, v], &mut best);
        }
    }
    for step in [8, 4, 2, 1] {
        let around = best.1;
        for u in near(around[0], step) {
            for v in near(around[1], step) {
                keep_nearer(views, channels, wanted, [u, v], &mut best);
            }
        }
    }
    Some(colour(channels, best.1))
}

/// Steps of the first round: 18 values from 0 to 255, both ends among them.
const COARSE: usize = 15;

fn near(value: u8, step: u8) -> [u8; 3] {
    [value.saturating_sub(step), value, value.saturating_add(step)]
}

fn colour(channels: [[bool; 3]; 2], [u, v]: [u8; 2]) -> Srgb8 {
    Srgb8([0, 1, 2].map(|c| if channels[0][c] { u } else { v }))
}

fn keep_nearer(views: &Views, channels: [[bool; 3]; 2], wanted: Wanted, at: [u8; 2], best: &mut (f64, [u8; 2])) {
    let colour = colour(channels, at);
    let off = |view: &super::View, wanted: f64| (view.luminance(colour) - wanted).abs() / view.white();
    let worst = off(&views.left, wanted.left).max(off(&views.right, wanted.right));
    if worst < best.0 {
        *best = (worst, at);
    }
}
