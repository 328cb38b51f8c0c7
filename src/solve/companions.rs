//! What rides with a target: watch marks, lock frame and number. Each takes the target's own parallax, so it can never
//! stand at another depth; only its demand in words lies on the page, where it can be read without the target. Sizes are on the page and do not change with depth.

use crate::outline;
use crate::scene::{Companions, DemandWords, Eyes, Role, Shape};
use crate::units::{PrismDioptre, plain};

use super::{PathPoint, SolvedFeature, SolvedForm, Stand};

/// Width of a watch mark, mm: 0.6 degrees at 40 cm, so that a small blind spot of one eye in the middle of its sight
/// cannot hide behind it (design choice).
const MARK: f64 = 4.2;
/// From the middle of a hollow target to the middle of each mark, mm.
const INSIDE: f64 = 4.0;
/// Free radius a hollow target needs to hold both marks, mm.
const ROOM: f64 = 8.0;
/// Clear space between a target and a mark beside it, mm.
const BESIDE: f64 = 3.0;
/// Clear space between a target with its marks and its lock frame, mm.
const FRAME_GAP: f64 = 5.0;
/// Width of the lines of a lock frame, mm.
const FRAME_WEIGHT: f64 = 1.2;
/// Height of a number, mm, and the clear space above it.
const NUMBER: f64 = 4.5;
const NUMBER_GAP: f64 = 3.0;
/// Height of a capital of the demand in words, mm (about 12 pt), and the clear space above it.
const WORDS: f64 = 2.9;
const WORDS_GAP: f64 = 2.6;

/// The companions of a solved target, in the order of drawing; `page` is how the page itself stands, on the
/// base that demands are counted from.
pub(super) fn of(
    target: &SolvedFeature,
    companions: &Companions,
    page: Stand,
    base: PrismDioptre,
) -> Vec<SolvedFeature> {
    let Some(Body { extent, free_radius }) = body(&target.form) else { return Vec::new() };
    let inside = ROOM <= free_radius;
    let (half_width, mut half_height) = (extent.0 / 2.0, extent.1 / 2.0);
    let mut out = Vec::new();
    if companions.watch {
        let bar_height = outline::extent(&Shape::Bar, MARK).1;
        let wedge_height = outline::extent(&Shape::Wedge, MARK).1;
        let reach = if inside { INSIDE } else { half_height + BESIDE };
        let (up, down) = if inside { (-reach, reach) } else { (-reach - bar_height / 2.0, reach + wedge_height / 2.0) };
        out.push(companion(target, "bar", Role::Watch, Eyes::Left, up, shaped(Shape::Bar, MARK)));
        out.push(companion(target, "wedge", Role::Watch, Eyes::Right, down, shaped(Shape::Wedge, MARK)));
        if !inside {
            half_height += BESIDE + wedge_height;
        }
    }
    if companions.lock {
        let extent = (2.0 * (half_width + FRAME_GAP), 2.0 * (half_height + FRAME_GAP));
        let form =
            SolvedForm::Shape { shape: Shape::Brackets, size: extent.0.max(extent.1), extent, weight: FRAME_WEIGHT };
        out.push(companion(target, "frame", Role::Lock, target.eyes, 0.0, form));
        half_height += FRAME_GAP;
    }
    if let Some(number) = companions.number {
        let form = shaped(Shape::Text(number.to_string()), NUMBER);
        out.push(companion(target, "number", Role::Number, target.eyes, half_height + NUMBER_GAP + NUMBER / 2.0, form));
        half_height += NUMBER_GAP + NUMBER;
    }
    if let Some(words) = &companions.demand {
        let form = shaped(Shape::Text(worded(words, target.stand.demand_from(base))), WORDS);
        let down = half_height + WORDS_GAP + WORDS / 2.0;
        out.push(SolvedFeature { stand: page, ..companion(target, "demand", Role::Number, Eyes::Both, down, form) });
    }
    out
}

/// A demand, pd, in words: "2 pd toward".
fn worded(words: &DemandWords, demand: f64) -> String {
    let [before, after] = match demand {
        0.0 => return words.page.clone(),
        demand if 0.0 < demand => &words.toward,
        _ => &words.away,
    };
    format!("{before}{}{after}", plain(demand.abs(), 2).replace('.', words.decimal_mark))
}

/// The box of a target about its middle, mm, and the radius of the free circle inside it.
struct Body {
    extent: (f64, f64),
    free_radius: f64,
}

/// `None` where nothing can ride with it: a line that changes its depth, and a field of dots.
fn body(form: &SolvedForm) -> Option<Body> {
    match form {
        SolvedForm::Shape { shape, size, extent, weight } => {
            Some(Body { extent: *extent, free_radius: outline::free_radius(shape, *size, *weight) })
        }
        SolvedForm::Strokes { strokes, weight } => {
            let ends: Vec<_> = strokes.iter().flatten().copied().collect();
            let level = strokes.iter().all(|[from, to]| from.1.to_bits() == to.1.to_bits());
            let (width, height) = spans(&ends);
            // Square ends: a stroke reaches past its line to its sides alone.
            let extent = if level { (width, height + weight) } else { (width + weight, height) };
            Some(Body { extent, free_radius: 0.0 })
        }
        SolvedForm::Path { points, closed, weight, .. } if is_flat(points) => {
            let (width, height) = spans(&points.iter().map(|p| (p.x, p.y)).collect::<Vec<_>>());
            let free = if *closed { (width.min(height) / 2.0 - weight / 2.0).max(0.0) } else { 0.0 };
            Some(Body { extent: (width + weight, height + weight), free_radius: free })
        }
        SolvedForm::Path { .. } | SolvedForm::Dots(_) => None,
    }
}

/// Whether all points stand at one depth.
fn is_flat(points: &[PathPoint]) -> bool {
    points.windows(2).all(|pair| pair[0].parallax.to_bits() == pair[1].parallax.to_bits())
}

/// Width and height of the box of some points.
fn spans(points: &[(f64, f64)]) -> (f64, f64) {
    let span = |value: fn(&(f64, f64)) -> f64| {
        let low = points.iter().map(value).fold(f64::INFINITY, f64::min);
        points.iter().map(value).fold(f64::NEG_INFINITY, f64::max) - low
    };
    (span(|p| p.0), span(|p| p.1))
}

fn shaped(shape: Shape, size: f64) -> SolvedForm {
    let extent = outline::extent(&shape, size);
    SolvedForm::Shape { shape, size, extent, weight: size }
}

fn companion(target: &SolvedFeature, name: &str, role: Role, eyes: Eyes, dy: f64, form: SolvedForm) -> SolvedFeature {
    SolvedFeature {
        id: format!("{}-{name}", target.id),
        role,
        eyes,
        form,
        at: (target.at.0, target.at.1 + dy),
        stand: target.stand,
        // Lines behind a mark would make it hard to tell.
        solid: role == Role::Watch,
        place: target.place,
    }
}
