//! Measuring: where an outline, a box of letters or a line stands in what one eye gets of a page.
//!
//! **An outline** is met at many places. At each, the ink along the normal is summed up from 0.35 mm inside to 0.35 mm
//! outside of where the edge should be; the sum is 0.35 mm plus what the edge lies farther out. That is right for every
//! straight edge at any angle and any part of a dot, since a dot holds the share of ink that covers it; the bend of a
//! circle of 6 mm changes it by less than 0.001 mm. Corners and points are left out: there the grid of dots would bias
//! the edge. From all edge places, least squares give how far the shape lies to the side, how far down, and how
//! much larger it is. Where another feature comes near, the place is left out, and nothing is lost but that place.
//!
//! **Letters** have no outline that we know: the four sides of their box are found as the outermost edges of ink.
//!
//! **A line** is crossed at right angles: the sum of ink is its width and the centre of the ink its place.

use super::outline::{Area, Sample};
use super::seen::Seen;

/// How deep on both sides of an edge ink is summed up, mm.
const DEPTH: f64 = 0.35;
/// How near the ink of another feature may come to a place that is used, mm: a dot at 300 ppi and a half.
pub(super) const CLEAR: f64 = 0.13;
/// From one look along a normal to the next, mm: an eighth of a dot at 300 ppi.
const STEP: f64 = 0.01;

/// A box as measured.
#[derive(Debug, Clone, Copy)]
pub(super) struct Measured {
    /// Its middle, page mm.
    pub(super) at: [f64; 2],
    /// How much longer its longer side is than it should be, mm.
    pub(super) longer: f64,
    /// The farthest that a place of the outline lies from where the report has it, mm.
    pub(super) farthest: f64,
}

/// The share of an outline that must be free for a measure.
const ENOUGH: f64 = 0.4;
/// How well the free places must tie down the shape: as if this share of them faced each way. The ends of a cross, which
/// alone tell its size, are a twelfth of its outline.
const FACING: f64 = 0.05;

/// Finds an outline that should stand about `at`, the longer side of its box as given. `None`: too much of it is not free.
pub(super) fn outline(
    seen: &Seen<'_>,
    samples: &[Sample],
    at: [f64; 2],
    longer: f64,
    others: &[Area],
) -> Option<Measured> {
    let near = |p: [f64; 2]| others.iter().any(|area| area.holds(p, CLEAR));
    let mut fit = Fit::default();
    let mut farthest: f64 = 0.0;
    for sample in samples {
        let on_normal =
            |t: f64| [at[0] + sample.at[0] + sample.normal[0] * t, at[1] + sample.at[1] + sample.normal[1] * t];
        if [-DEPTH, 0.0, DEPTH].into_iter().any(|t| near(on_normal(t))) {
            continue;
        }
        let farther_out = across(seen, on_normal, DEPTH).0 - DEPTH;
        farthest = farthest.max(farther_out.abs());
        let ([x, y], [nx, ny]) = (sample.at, sample.normal);
        // A shape that grows moves each of its sides by the side's distance from the middle.
        fit.add([nx, ny, (nx * x + ny * y) / (longer / 2.0)], farther_out);
    }
    let used = fit.count / samples.len() as f64;
    let [dx, dy, half_longer] = fit.solve().filter(|_| ENOUGH <= used)?;
    Some(Measured { at: [at[0] + dx, at[1] + dy], longer: 2.0 * half_longer, farthest })
}

/// The sum of ink along a normal from `-depth` to `depth`, mm, and its centre, if there is any.
fn across(seen: &Seen<'_>, on_normal: impl Fn(f64) -> [f64; 2], depth: f64) -> (f64, Option<f64>) {
    let steps = (2.0 * depth / STEP).round();
    let step = 2.0 * depth / steps;
    let (mut sum, mut moment) = (0.0, 0.0);
    for i in 0..steps as usize {
        let t = -depth + step * (i as f64 + 0.5);
        let ink = seen.share(on_normal(t)) * step;
        sum += ink;
        moment += ink * t;
    }
    (sum, (0.0 < sum).then_some(moment / sum))
}

/// Least squares for three unknowns.
#[derive(Default)]
struct Fit {
    matrix: [[f64; 3]; 3],
    right: [f64; 3],
    count: f64,
}

impl Fit {
    fn add(&mut self, row: [f64; 3], value: f64) {
        for (i, a) in row.into_iter().enumerate() {
            self.right[i] += a * value;
            for (j, b) in row.into_iter().enumerate() {
                self.matrix[i][j] += a * b;
            }
        }
        self.count += 1.0;
    }

    /// Gauss elimination with the largest pivot. `None` where the rows do not tie down every unknown.
    fn solve(mut self) -> Option<[f64; 3]> {
        for i in 0..3 {
            let pivot = (i..3).max_by(|&a, &b| self.matrix[a][i].abs().total_cmp(&self.matrix[b][i].abs()))?;
            self.matrix.swap(i, pivot);
            self.right.swap(i, pivot);
            if self.matrix[i][i].abs() <= FACING * self.count {
                return None;
            }
            for row in i + 1..3 {
                let factor = self.matrix[row][i] / self.matrix[i][i];
                for column in i..3 {
                    self.matrix[row][column] -= factor * self.matrix[i][column];
                }
                self.right[row] -= factor * self.right[i];
            }
        }
        let mut found = [0.0; 3];
        for i in (0..3).rev() {
            let known: f64 = (i + 1..3).map(|j| self.matrix[i][j] * found[j]).sum();
            found[i] = (self.right[i] - known) / self.matrix[i][i];
        }
        Some(found)
    }
}

/// How far around a box of letters ink is looked for, mm.
const AROUND: f64 = 0.6;
/// How far into a box of letters the edge of a letter may lie, mm.
const INTO: f64 = 1.5;

/// Finds a box of letters that should stand about `at` with this size. `None`: it is not free.
pub(super) fn letters(seen: &Seen<'_>, at: [f64; 2], size: [f64; 2], others: &[Area]) -> Option<Measured> {
    let [half_width, half_height] = size.map(|s| s / 2.0 + AROUND);
    let meets = |area: &Area| {
        let steps = |half: f64| (0..=20).map(move |i| half * (f64::from(i) / 10.0 - 1.0));
        steps(half_width).any(|dx| steps(half_height).any(|dy| area.holds([at[0] + dx, at[1] + dy], half_width / 20.0)))
    };
    if others.iter().any(meets) {
        return None;
    }
    let mut sides = [[0.0; 2]; 2];
    for axis in 0..2 {
        let (half, across) = (size[axis] / 2.0, size[1 - axis] / 2.0);
        for (side, sign) in [-1.0, 1.0].into_iter().enumerate() {
            let mut start = at;
            start[axis] += sign * (half + AROUND);
            // Whole rows of dots inside of the box.
            let count = (2.0 * across / seen.dot()).floor() as usize;
            let edges = (0..count).filter_map(|i| {
                let mut from = start;
                from[1 - axis] += -across + (i as f64 + 0.5) * seen.dot();
                edge(seen, from, axis, -sign, AROUND + INTO)
            });
            // The outermost edge: the first that is met on the way in.
            sides[axis][side] = edges.reduce(if sign < 0.0 { f64::min } else { f64::max })?;
        }
    }
    let found = [0, 1].map(|axis| (sides[axis][0] + sides[axis][1]) / 2.0);
    let longer = [0, 1].map(|axis| sides[axis][1] - sides[axis][0] - size[axis]);
    let longer = if longer[0].abs() < longer[1].abs() { longer[1] } else { longer[0] };
    let off = |axis: usize, side: usize| {
        let should = at[axis] + [-0.5, 0.5][side] * size[axis];
        (sides[axis][side] - should).abs()
    };
    let farthest = off(0, 0).max(off(0, 1)).max(off(1, 0)).max(off(1, 1));
    Some(Measured { at: found, longer, farthest })
}

/// Full ink, with room for the colour arithmetic of foreign renderers.
const FULL: u8 = 250;

/// Walks along a row (`axis` 0) or column (1) of dots from a bare place until full ink; gives where the ink begins on
/// that axis, page mm. `None`: there is no full ink within `reach` mm.
pub(super) fn edge(seen: &Seen<'_>, from: [f64; 2], axis: usize, sign: f64, reach: f64) -> Option<f64> {
    let mut dot = seen.dot_at(from);
    let start = seen.middle(dot[0], dot[1])[axis] - sign * seen.dot() / 2.0;
    let mut bare = 0.0;
    for _ in 0..(reach / seen.dot()).ceil() as usize {
        let ink = seen.ink(dot[0], dot[1]);
        if FULL <= ink {
            return Some(start + sign * bare);
        }
        bare += (1.0 - f64::from(ink) / 255.0) * seen.dot();
        dot[axis] = if sign < 0.0 { dot[axis].checked_sub(1)? } else { dot[axis] + 1 };
        if seen.size()[axis] <= dot[axis] {
            return None;
        }
    }
    None
}

/// A line crossed at one place.
#[derive(Debug, Clone, Copy)]
pub(super) struct Crossed {
    /// From where it should be to the middle of its ink, along the normal, mm.
    pub(super) off: f64,
    /// The width of its ink, mm.
    pub(super) width: f64,
}

/// How far on both sides of a line ink is looked for, mm.
const BESIDE: f64 = 0.4;

/// Crosses a line at `at`, which runs in `direction` and should be `weight` wide. `None`: another feature is near.
pub(super) fn line(
    seen: &Seen<'_>,
    at: [f64; 2],
    direction: [f64; 2],
    weight: f64,
    others: &[Area],
) -> Option<Crossed> {
    let length = direction[0].hypot(direction[1]);
    let on_normal = |t: f64| [at[0] + direction[1] / length * t, at[1] - direction[0] / length * t];
    let depth = weight / 2.0 + BESIDE;
    let near = |p: [f64; 2]| others.iter().any(|area| area.holds(p, CLEAR));
    if [-1.0, -0.5, 0.0, 0.5, 1.0].into_iter().any(|share| near(on_normal(share * depth))) {
        return None;
    }
    let (width, middle) = across(seen, on_normal, depth);
    // Where there is no ink at all, the line is as far off as was looked.
    Some(Crossed { off: middle.unwrap_or(depth), width })
}
