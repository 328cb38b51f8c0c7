//! Colour against numbers from outside the project: published tables, standards, and a second computation elsewhere.

mod cases;
mod least_squares;
mod print;
mod screen;
mod solver;
mod spectrum;

use depthpress::colour::spectrum::Between;
use depthpress::colour::{
    Filter, FilterModel, Glasses, Lamp, Medium, NamedScreen, Print, Screen, Solids, Spectrum, Srgb8, View, Views,
};

/// The rows of a table: comments and the heading left out.
fn rows(table: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    table.lines().filter(|line| !line.starts_with('#')).skip(1).map(|line| line.split(',').collect())
}

fn number(cell: &str) -> f64 {
    cell.parse().unwrap()
}

#[track_caller]
fn near(value: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((value - expected).abs() <= tolerance, "{what}: {value}, expected {expected} within {tolerance}");
}

/// A measured gelatin filter: No. 25 is the first column, No. 44 the second.
fn gelatin(column: usize) -> Spectrum {
    let table: Vec<_> =
        rows(include_str!("../data/filters.csv")).map(|row| (number(row[0]), number(row[column]) / 100.0)).collect();
    Spectrum::from_table(&table, Between::Straight).unwrap()
}

fn measured(colour: Filter, transmittance: Spectrum) -> FilterModel {
    FilterModel::Measured { colour, transmittance }
}

/// The measured red filter before the left eye, the measured cyan one before the right.
fn gelatin_glasses() -> Glasses {
    Glasses { left: measured(Filter::Red, gelatin(1)), right: measured(Filter::Cyan, gelatin(2)) }
}

fn screen(name: NamedScreen) -> Medium {
    Medium::Screen(Screen::named(name))
}

fn print(lamp: Lamp) -> Medium {
    Medium::Print(Print::new(&Solids::fogra39l(), &lamp.spectrum()).unwrap())
}

/// What one eye sees of a medium through one filter.
fn view(filter: impl Into<FilterModel>, medium: &Medium) -> View {
    Views::new(&Glasses { left: filter.into(), right: Filter::Cyan.into() }, medium).left
}

fn hex(text: &str) -> Srgb8 {
    let [_, r, g, b] = u32::from_str_radix(text.trim_start_matches('#'), 16).unwrap().to_be_bytes();
    Srgb8([r, g, b])
}
