//! What: a figure in a field of dots that the dots cannot carry: too few dots across it, its strips as wide as itself, or
//! two figures that lie partly over one another.
//!
//! Why: an edge is drawn by dots alone. With too few of them the form is lost, and where the strips that one eye alone
//! sees are as wide as the figure, the two eyes have next to nothing of it in common.
//!
//! Limit: 8 dots across its box, 3 dots across its widest part (the gap of an open ring is as wide as its line), a strip
//! no wider than that part. Source: design choice.
//!
//! Way out: smaller dots, a larger figure, less depth against the ground; or figures moved apart.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::solve::{SolvedDots, SolvedFeature, SolvedFigure, SolvedForm};
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule = Rule {
    id: "dot-figure",
    doc: "a figure in a field of dots is too small, too deep or too close to another for its dots",
    codes: &[CODE],
    check,
};

const CODE: &str = "W-DOT-FIGURE";
/// Fewest dots across the shorter side of a figure's box.
const ACROSS: f64 = 8.0;
/// Fewest dots across its widest part.
const PART: f64 = 3.0;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let fields = input.pages.iter().flat_map(|page| page.features.iter().map(move |feature| (page, feature)));
    fields.flat_map(|(page, feature)| check_feature(page, feature)).collect()
}

fn check_feature(page: &Page<'_>, feature: &SolvedFeature) -> Vec<Finding> {
    let SolvedForm::Dots(dots) = &feature.form else { return Vec::new() };
    let tell = |words| finding(page.id, Severity::Warning, CODE, feature.place, words);
    let alone = dots.figures.iter().filter_map(|figure| of_figure(dots, figure));
    alone.chain(crossing(dots)).map(tell).collect()
}

fn of_figure(dots: &SolvedDots, figure: &SolvedFigure) -> Option<Words> {
    let across = figure.extent.0.min(figure.extent.1) / dots.dot;
    let part = widest_part(dots, figure);
    let strip = widest_strip(dots, figure) / dots.dot;
    let (seen, limit) = if across < ACROSS {
        (format!("is `{}` dots across", plain(across, 1)), format!("limit `{}` dots", plain(ACROSS, 0)))
    } else if part < PART {
        (
            format!("is about `{}` dots wide at its widest part", plain(part, 0)),
            format!("limit `{}` dots", plain(PART, 0)),
        )
    } else if part < strip {
        (
            format!("has strips of `{}` dots that one eye alone sees", plain(strip, 1)),
            format!("its widest part has about `{}` dots", plain(part, 0)),
        )
    } else {
        return None;
    };
    Some(Words {
        message: format!("`{}` {seen}, {limit}", figure.id),
        label: "more than the dots can carry",
        help: "ask for smaller dots, a larger figure, or less depth against the ground".to_owned(),
    })
}

/// How far a figure's half-images move against the ground, at most, mm: the width of the strips at its sides.
fn widest_strip(dots: &SolvedDots, figure: &SolvedFigure) -> f64 {
    let apart = |a: usize, b: usize| (figure.stands[a].parallax.0 - dots.ground[b].parallax.0).abs();
    [apart(0, 0), apart(0, 1), apart(1, 0), apart(1, 1)].into_iter().fold(0.0, f64::max)
}

/// The side of the largest upright square of dots whose middles lie inside a figure: its width in dots, to one dot.
fn widest_part(dots: &SolvedDots, figure: &SolvedFigure) -> f64 {
    let left = figure.at.0 - figure.extent.0 / 2.0;
    let mut above: Vec<u32> = Vec::new();
    let mut largest = 0;
    for row in &figure.chords {
        let cells = cells(row, left, figure.extent.0, dots.dot);
        let mut sides = vec![0; cells.len()];
        for (i, inside) in cells.into_iter().enumerate().filter(|(_, inside)| *inside) {
            let (over, before) = (above.get(i).copied().unwrap_or(0), if i == 0 { 0 } else { sides[i - 1] });
            let corner = if i == 0 { 0 } else { above.get(i - 1).copied().unwrap_or(0) };
            sides[i] = u32::from(inside) + over.min(before).min(corner);
            largest = largest.max(sides[i]);
        }
        above = sides;
    }
    f64::from(largest)
}

/// Which places of a row, one dot apart, lie inside.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a field has few dots in a row")]
fn cells(row: &[(f64, f64)], left: f64, width: f64, dot: f64) -> Vec<bool> {
    let count = (width / dot).max(0.0) as u32;
    let middle = |i: u32| left + (f64::from(i) + 0.5) * dot;
    (0..count).map(|i| row.iter().any(|&(from, to)| from <= middle(i) && middle(i) < to)).collect()
}

/// Pairs of figures whose boxes overlap while neither lies inside the other.
fn crossing(dots: &SolvedDots) -> Vec<Words> {
    let mut found = Vec::new();
    for (i, a) in dots.figures.iter().enumerate() {
        for b in &dots.figures[i + 1..] {
            let apart = [a.at.0 - b.at.0, a.at.1 - b.at.1].map(f64::abs);
            let reach = [(a.extent.0 + b.extent.0) / 2.0, (a.extent.1 + b.extent.1) / 2.0];
            let inside = [(a.extent.0 - b.extent.0).abs() / 2.0, (a.extent.1 - b.extent.1).abs() / 2.0];
            // A grid step of the solver is no overlap.
            let overlap = (0..2).all(|axis| apart[axis] + 1e-5 < reach[axis]);
            let nested = (0..2).all(|axis| apart[axis] <= inside[axis]);
            if overlap && !nested {
                found.push(Words {
                    message: format!("`{}` and `{}` lie partly over one another", a.id, b.id),
                    label: "figures that cross",
                    help: "move them apart, or put one wholly inside the other".to_owned(),
                });
            }
        }
    }
    found
}
