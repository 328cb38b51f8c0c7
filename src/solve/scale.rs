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

#[cfg(test)]
mod tests {
    use crate::optics::Viewer;
    use crate::scene::{Companions, Eyes, Feature, Scaling, Scene};
    use crate::solve::solve;

    use super::*;

    /// Number, prism dioptres or millimetres, and where it stands along the scale.
    fn read(distance: f64, scale: Scale) -> Vec<(String, String, f64)> {
        let feature = Feature {
            id: "scale".into(),
            role: Role::Reference,
            eyes: Eyes::Both,
            form: Form::Scale(scale),
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: None,
        };
        let viewer = Viewer::new(Mm(distance), Mm(63.0), (Mm(50.0), Mm(75.0)));
        let solved = solve(&Scene { features: vec![feature] }, &viewer).unwrap();
        let text = |f: &SolvedFeature| match &f.form {
            SolvedForm::Shape { shape: Shape::Text(text), .. } => {
                let name = f.id.trim_start_matches("scale-")[..2].to_owned();
                Some((name, text.clone(), if scale.is_level { f.at.0 } else { f.at.1 }))
            }
            _ => None,
        };
        solved.iter().filter_map(text).collect()
    }

    /// A prism dioptre is 1 cm at 1 m: 4 mm at 40 cm, 6 mm at 60 cm. Source: `[ISO13666]`.
    #[test]
    fn numbers_stand_at_what_they_say() {
        for (distance, pd_mm) in [(400.0, 4.0), (600.0, 6.0)] {
            for is_level in [true, false] {
                let scale = Scale { zero: At::default(), is_level, step: Mm(3.0), ticks: 8 };
                let numbers = read(distance, scale);
                let values = numbers.iter().filter_map(|(unit, text, at)| Some((unit, text.parse::<f64>().ok()?, at)));
                let mut count = 0;
                for (unit, value, at) in values {
                    let told = if unit == "pd" { value * pd_mm } else { value };
                    assert!((told - at.abs()).abs() < 0.021, "{unit} {value} at {at}");
                    count += 1;
                }
                // Every fifth tick of 3 mm, both ways and the zero, in two units.
                assert_eq!(count, 6, "{numbers:?}");
            }
        }
    }

    #[test]
    fn ticks_step_evenly_about_the_zero() {
        let zero = At { x: Mm(5.0), y: Mm(-2.0) };
        let (ticks, _) = ticks(&Scale { zero, is_level: true, step: Mm(4.0), ticks: 2 });
        for ((from, to), told) in ticks.iter().zip([-3.0, 1.0, 5.0, 9.0, 13.0]) {
            assert!((from.x.0 - told).abs() < 1e-9 && (to.x.0 - told).abs() < 1e-9);
            assert!((f64::midpoint(from.y.0, to.y.0) + 2.0).abs() < 1e-9);
        }
        assert_eq!(ticks.len(), 5);
    }
}
