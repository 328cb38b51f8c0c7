//! The ticks of a scale on the page, and its numbers: what a tick stands for in prism dioptres depends on the distance.

use crate::outline;
use crate::scene::{At, Form, Role, Scale, Shape};
use crate::units::{Mm, plain};

use super::{SolvedFeature, SolvedForm};

/// Width of the ticks, mm (design choice).
const WEIGHT: f64 = 0.4;
/// How far a tick reaches to each side of the scale, mm; where a number stands, and elsewhere.
const LONG: f64 = 2.6;
const SHORT: f64 = 1.4;
/// From the scale to the near edge of its numbers, and the height of a number, mm (design choice: 11-point type).
const CLEAR: f64 = 3.8;
const NUMBER: f64 = 2.6;
/// The least space between two numbers along the scale, mm: the widest is some 7 mm.
const APART: f64 = 10.0;
/// From the last tick to the middle of the name of the unit, mm.
const UNIT: f64 = 8.0;

/// The strokes of a scale, and their width.
pub(super) fn ticks(scale: &Scale) -> (Vec<(At, At)>, Mm) {
    let every = numbered_every(scale);
    let one = |number: i64| {
        let reach = if number % every == 0 { LONG } else { SHORT };
        (place(scale, along(scale, number), -reach), place(scale, along(scale, number), reach))
    };
    (numbers_of(scale).map(one).collect(), Mm(WEIGHT))
}

/// The numbers of a scale, about its solved ticks; none where `form` is no scale.
pub(super) fn numbers(ticks: &SolvedFeature, form: &Form, distance: Mm) -> Vec<SolvedFeature> {
    let Form::Scale(scale) = form else { return Vec::new() };
    let every = numbered_every(scale);
    let mut out = Vec::new();
    for number in numbers_of(scale).filter(|number| number % every == 0) {
        let mm = (number.abs() as f64) * scale.step.0;
        // A prism dioptre is a hundredth of the distance.
        let pd = mm * 100.0 / distance.0;
        out.push(text(ticks, scale, format!("pd-{number}"), plain(pd, 2), along(scale, number), -1.0));
        out.push(text(ticks, scale, format!("mm-{number}"), plain(mm, 2), along(scale, number), 1.0));
    }
    let end = -along(scale, i64::from(scale.ticks)) - UNIT;
    out.push(text(ticks, scale, "pd-unit".to_owned(), "pd".to_owned(), end, -1.0));
    out.push(text(ticks, scale, "mm-unit".to_owned(), "mm".to_owned(), end, 1.0));
    out
}

/// One number or name of a unit: above or left of the scale where `side` is -1, below or right of it where it is 1.
fn text(ticks: &SolvedFeature, scale: &Scale, name: String, words: String, along: f64, side: f64) -> SolvedFeature {
    let shape = Shape::Text(words);
    let extent = outline::extent(&shape, NUMBER);
    // All numbers start at the same distance from the scale.
    let depth = if scale.is_level { NUMBER } else { extent.0 };
    let at = place(scale, along, side * (CLEAR + depth / 2.0));
    SolvedFeature {
        id: format!("{}-{name}", ticks.id),
        role: Role::Number,
        form: SolvedForm::Shape { shape, size: NUMBER, extent, weight: NUMBER },
        at: (at.x.0, at.y.0),
        ..ticks.clone()
    }
}

fn numbers_of(scale: &Scale) -> impl Iterator<Item = i64> + use<> {
    let last = i64::from(scale.ticks);
    -last..=last
}

/// Every which tick has a number: the closest round spacing that leaves room.
fn numbered_every(scale: &Scale) -> i64 {
    [1, 2, 5, 10, 20].into_iter().find(|&every| APART <= every as f64 * scale.step.0).unwrap_or(50)
}

/// How far along the scale a tick stands from the zero, mm.
fn along(scale: &Scale, number: i64) -> f64 {
    number as f64 * scale.step.0
}

fn place(scale: &Scale, along: f64, across: f64) -> At {
    let (x, y) = if scale.is_level { (along, across) } else { (across, along) };
    At { x: Mm(scale.zero.x.0 + x), y: Mm(scale.zero.y.0 + y) }
}
