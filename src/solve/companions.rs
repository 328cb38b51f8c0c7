//! What rides with a target: watch marks, lock frame and number. Each takes the target's own parallax, so it can never
//! stand at another depth. Sizes are on the page and do not change with depth.

use crate::outline;
use crate::scene::{Companions, Eyes, Role, Shape};

use super::{SolvedFeature, SolvedForm};

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

/// The companions of a solved target, in the order of drawing.
pub(super) fn of(target: &SolvedFeature, companions: Companions) -> Vec<SolvedFeature> {
    let SolvedForm::Shape { shape, size, extent, weight } = &target.form else { return Vec::new() };
    let inside = ROOM <= outline::free_radius(shape, *size, *weight);
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
    }
    out
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
