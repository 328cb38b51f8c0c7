//! A reflectance for a measured colour: many spectra have one colour, this is the smoothest of them.
//!
//! An estimate, where only tristimulus values of an ink are known. It has the measured colour exactly under the lamp of
//! the measurement; through a filter it may differ from the true ink by some per cent of the paper.

use super::Xyz;
use super::spectrum::Spectrum;

/// Spacing of the free values, nm; between them the reflectance is straight.
/// Source: design choice, fine against the width of any ink's edges, and small enough to solve directly.
const STEP_NM: f64 = 10.0;
/// How many free values there are, from 380 to 780 nm.
const NODES: usize = 41;
/// Unknowns: the free values, and a multiplier for each tristimulus value.
const SIZE: usize = NODES + 3;
/// How far out of 0 to 1 counts as rounding.
const ROUNDING: f64 = 1e-12;

/// The reflectance with the least sum of squared slopes that has a colour under a lamp and stays from 0 to 1.
///
/// `colour` is relative to the perfect diffuser under this lamp (Y of it is 1). Values that would leave 0 to 1 are held
/// at that end and the rest is solved again, until none leaves. `None` when no reflectance has this colour, such as a
/// colour lighter than the diffuser.
///
/// Source: `[Meng2015]`, least slopes within 0 to 1; `[Burns2020]`, bounds by holding the values that leave them.
pub fn smoothest(colour: Xyz, lamp: &Spectrum) -> Option<Spectrum> {
    let sums = node_sums(lamp);
    let mut held = [None; NODES];
    for _ in 0..=NODES {
        let nodes = solve(&sums, colour, &held)?;
        let mut leaves = false;
        for (node, hold) in nodes.iter().zip(&mut held).filter(|(_, hold)| hold.is_none()) {
            let end = if *node < -ROUNDING { Some(0.0) } else { (1.0 + ROUNDING < *node).then_some(1.0) };
            leaves |= end.is_some();
            *hold = end;
        }
        if !leaves {
            return Some(Spectrum::from_fn(|nm| between(&nodes, nm).clamp(0.0, 1.0)));
        }
    }
    None
}

/// How much each free value adds to X, Y and Z: lamp times observer times the hat of the node, over the white's Y.
fn node_sums(lamp: &Spectrum) -> [[f64; 3]; NODES] {
    let white = lamp.luminance();
    let mut sums = [[0.0; 3]; NODES];
    for (i, sum) in sums.iter_mut().enumerate() {
        let mut hat = [0.0; NODES];
        hat[i] = 1.0;
        let hat = Spectrum::from_fn(|nm| between(&hat, nm));
        *sum = lamp.times(&hat).tristimulus().map(|value| value / white);
    }
    sums
}

/// The value at a wavelength, straight between the free values.
fn between(nodes: &[f64; NODES], nm: f64) -> f64 {
    let place = (nm - 380.0) / STEP_NM;
    let low = place.floor();
    let value = |at: f64| (0..NODES).find(|&i| at <= i as f64).map_or(0.0, |i| nodes[i]);
    value(low) + (value(low + 1.0) - value(low)) * (place - low)
}

/// The free values of least slope: the normal equations with the three colour conditions; a held value has an equation
/// of its own.
fn solve(sums: &[[f64; 3]; NODES], colour: Xyz, held: &[Option<f64>; NODES]) -> Option<[f64; NODES]> {
    let mut rows = vec![[0.0; SIZE + 1]; SIZE];
    for i in 0..NODES {
        if let Some(end) = held[i] {
            rows[i][i] = 1.0;
            rows[i][SIZE] = end;
        } else {
            for j in [i.checked_sub(1), Some(i + 1).filter(|j| *j < NODES)].into_iter().flatten() {
                rows[i][i] += 1.0;
                rows[i][j] -= 1.0;
            }
            rows[i][NODES..SIZE].copy_from_slice(&sums[i]);
        }
        for k in 0..3 {
            rows[NODES + k][i] = sums[i][k];
        }
    }
    for k in 0..3 {
        rows[NODES + k][SIZE] = colour.0[k];
    }
    let solution = eliminate(rows)?;
    let mut nodes = [0.0; NODES];
    nodes.copy_from_slice(&solution[..NODES]);
    Some(nodes)
}

/// Solves linear equations by elimination with row exchange; `None` when they have no single solution. The last column
/// is the right side.
fn eliminate(mut rows: Vec<[f64; SIZE + 1]>) -> Option<[f64; SIZE]> {
    for step in 0..SIZE {
        let pivot = (step..SIZE).max_by(|a, b| rows[*a][step].abs().total_cmp(&rows[*b][step].abs()))?;
        rows.swap(step, pivot);
        let lead = rows[step];
        if lead[step].abs() < 1e-14 || !lead[step].is_finite() {
            return None;
        }
        for row in rows.iter_mut().skip(step + 1) {
            let factor = row[step] / lead[step];
            if factor.abs() > 0.0 {
                row.iter_mut().zip(lead).skip(step).for_each(|(value, from)| *value -= factor * from);
            }
        }
    }
    let mut solution = [0.0; SIZE];
    for step in (0..SIZE).rev() {
        let known: f64 = (step + 1..SIZE).map(|j| rows[step][j] * solution[j]).sum();
        solution[step] = (rows[step][SIZE] - known) / rows[step][step];
    }
    solution.iter().all(|value| value.is_finite()).then_some(solution)
}
