//! The colour that shows each eye a wanted luminance: a ground on which the other eye's mark vanishes, or an overlap
//! that looks like the eye's own mark.

use super::view::Views;
use super::{Ground, LinearRgb, Srgb8};

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

/// The page colours with one value for the channels of the left eye and one for those of the right; a channel that is
/// nobody's stays as in the plain ground.
pub(super) struct Plane<'a> {
    views: &'a Views,
    channels: [[bool; 3]; 2],
    plain: Srgb8,
    /// Every value in coarse steps, with its luminance to both eyes.
    coarse: Vec<([u8; 2], [f64; 2])>,
}

/// Steps of the first round of a search: 18 values from 0 to 255, both ends among them.
const COARSE: usize = 15;

impl<'a> Plane<'a> {
    /// `None` when the two eyes share a channel.
    pub(super) fn new(views: &'a Views, channels: [[bool; 3]; 2], ground: Ground) -> Option<Self> {
        if (0..3).any(|c| channels[0][c] && channels[1][c]) {
            return None;
        }
        let mut plane = Self { views, channels, plain: ground.colour(), coarse: Vec::new() };
        let values = || (0..=255).step_by(COARSE);
        plane.coarse = values().flat_map(|u| values().map(move |v| [u, v])).map(|at| (at, plane.seen(at))).collect();
        Some(plane)
    }

    /// The colour that comes nearest to what each eye wants.
    ///
    /// On a screen in closed form where the light is in the gamut. Otherwise searched: the whole plane in coarse steps,
    /// then finer around the best; the order of the search is fixed, and so is its result.
    pub(super) fn nearest(&self, wanted: Wanted) -> Srgb8 {
        if let Some(colour) = self.closed_form(wanted) {
            return colour;
        }
        let whites = [self.views.left.white(), self.views.right.white()];
        let off = |seen: [f64; 2]| {
            ((seen[0] - wanted.left).abs() / whites[0]).max((seen[1] - wanted.right).abs() / whites[1])
        };
        let mut best = (f64::INFINITY, [0_u8; 2]);
        let mut keep = |at, seen| {
            if off(seen) < best.0 {
                best = (off(seen), at);
            }
            best.1
        };
        let mut around = self.coarse.iter().fold([0; 2], |_, (at, seen)| keep(*at, *seen));
        for step in [8, 4, 2, 1] {
            let [u, v] = around;
            for at in near(u, step).into_iter().flat_map(|u| near(v, step).map(|v| [u, v])) {
                around = keep(at, self.seen(at));
            }
        }
        self.colour(around)
    }

    fn closed_form(&self, wanted: Wanted) -> Option<Srgb8> {
        let seen = [self.views.left.channels()?, self.views.right.channels()?];
        let plain = self.plain.to_linear().0;
        let rest = [0, 1, 2].map(|c| if self.channels[0][c] || self.channels[1][c] { 0.0 } else { plain[c] });
        let base = |eye: usize| -> f64 { (0..3).map(|c| seen[eye][c] * rest[c]).sum() };
        let wanted = Wanted { left: wanted.left - base(0), right: wanted.right - base(1) };
        let LinearRgb(light) = null_light(seen, self.channels, wanted)?;
        LinearRgb([0, 1, 2].map(|c| light[c] + rest[c])).to_srgb8()
    }

    fn colour(&self, [u, v]: [u8; 2]) -> Srgb8 {
        let [left, right] = self.channels;
        Srgb8([0, 1, 2].map(|c| {
            if left[c] {
                u
            } else if right[c] {
                v
            } else {
                self.plain.0[c]
            }
        }))
    }

    fn seen(&self, at: [u8; 2]) -> [f64; 2] {
        let colour = self.colour(at);
        [self.views.left.luminance(colour), self.views.right.luminance(colour)]
    }
}

fn near(value: u8, step: u8) -> [u8; 3] {
    [value.saturating_sub(step), value, value.saturating_add(step)]
}
