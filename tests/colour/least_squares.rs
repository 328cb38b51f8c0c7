//! The projection of two pictures into one by least squares: a published computation, and what it says of the eye map.
//!
//! Pages of lines and dots do not use it: it mixes the views on purpose.

use depthpress::colour::judge::{EyeReport, crosstalk};
use depthpress::colour::{Filter, Glasses, Ground, View, channels, inks};

use super::{near, number, rows};

const TABLE: &str = include_str!("../data/least_squares.csv");

fn matrix(name: &str) -> Vec<Vec<f64>> {
    rows(TABLE)
        .filter(|row| row[0] == name)
        .map(|row| row[2..].iter().filter(|cell| !cell.is_empty()).map(|cell| number(cell)).collect())
        .collect()
}

fn times(a: &[Vec<f64>], b: &[Vec<f64>]) -> Vec<Vec<f64>> {
    let cell = |row: &[f64], k: usize| -> f64 { row.iter().zip(b).map(|(x, other)| x * other[k]).sum() };
    a.iter().map(|row| (0..b[0].len()).map(|k| cell(row, k)).collect()).collect()
}

fn turned(a: &[Vec<f64>]) -> Vec<Vec<f64>> {
    (0..a[0].len()).map(|k| a.iter().map(|row| row[k]).collect()).collect()
}

/// The inverse of a 3 by 3 matrix by cofactors.
fn inverse(a: &[Vec<f64>]) -> Vec<Vec<f64>> {
    let cofactor = |i: usize, j: usize| {
        let at = |k: usize, l: usize| a[(i + k) % 3][(j + l) % 3];
        at(1, 1) * at(2, 2) - at(1, 2) * at(2, 1)
    };
    let determinant: f64 = (0..3).map(|j| a[0][j] * cofactor(0, j)).sum();
    (0..3).map(|i| (0..3).map(|j| cofactor(j, i) / determinant).collect()).collect()
}

/// `(RᵀR)⁻¹ Rᵀ D` with R both filters' matrices and D the display's for each eye, rows divided by their sums.
fn projection() -> Vec<Vec<f64>> {
    let both = [matrix("red"), matrix("cyan")].concat();
    let display = matrix("display");
    let zero = vec![0.0; 3];
    let wide: Vec<Vec<f64>> = display
        .iter()
        .map(|row| [row.clone(), zero.clone()].concat())
        .chain(display.iter().map(|row| [zero.clone(), row.clone()].concat()))
        .collect();
    let across = turned(&both);
    let raw = times(&inverse(&times(&across, &both)), &times(&across, &wide));
    raw.iter().map(|row| row.iter().map(|cell| cell / row.iter().sum::<f64>()).collect()).collect()
}

/// P52 and P53: the computation gives the printed output to 1e-5, the integers of FFmpeg's stereo3d filter over 65536
/// within 0.0005, and rows that sum to 1.
#[test]
fn the_projection_is_the_printed_one() {
    let ours = projection();
    for (row, (printed, integers)) in ours.iter().zip(matrix("printed").iter().zip(matrix("ffmpeg"))) {
        near(row.iter().sum(), 1.0, 1e-12, "sum of a row");
        near(integers.iter().sum::<f64>() / 65536.0, 1.0, 0.002, "sum of an integer row");
        for k in 0..6 {
            near(row[k], printed[k], 1e-5, "printed cell");
            near(row[k], integers[k] / 65536.0, 5e-4, "integer cell");
        }
    }
}

/// Light for one eye alone, projected, grows in this eye's own channels and falls or stays in the others: the eye map
/// on black, found by least squares.
#[test]
fn the_projection_lights_the_channels_of_the_eye_map() {
    let [left, right] = channels(&Glasses::ideal(Filter::Red, Filter::Cyan));
    for (row, (own_left, own_right)) in projection().iter().zip(left.into_iter().zip(right)) {
        let (from_left, from_right): (f64, f64) = (row[..3].iter().sum(), row[3..].iter().sum());
        assert_eq!((0.5 < from_left, 0.5 < from_right), (own_left, own_right));
        assert!(from_left.min(from_right) < 0.0);
    }
}

/// The Y rows of the two matrices are the luminances of the primaries behind the filters: crosstalk and ghosts follow
/// by hand: (0.50201 + 0.02505)/2.70972 and 0.448214/(6.31551 + 1.35757).
#[test]
fn luminances_of_the_matrices_give_their_crosstalk() {
    let glasses = Glasses::ideal(Filter::Red, Filter::Cyan);
    let [own_left, own_right] = channels(&glasses);
    for (name, own, other, expected) in [("red", own_left, own_right, 0.19451), ("cyan", own_right, own_left, 0.05841)]
    {
        let row = &matrix(name)[1];
        let seen = [row[0], row[1], row[2]];
        near(crosstalk(seen, own, other).unwrap(), expected, 1e-5, name);
        let eye = View::from_channels(seen);
        for ground in [Ground::White, Ground::Black] {
            let i = inks(&glasses, ground);
            let (mine, theirs) = if name == "red" { (i.left, i.right) } else { (i.right, i.left) };
            near(EyeReport::new(&eye, mine, theirs, i.both, i.ground).ghost, expected, 1e-5, name);
        }
    }
}
