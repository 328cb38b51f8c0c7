//! The border of a field of dots: a frame on the page whose dashes belong to the left and to the right eye in turn.
//!
//! It is what the depth of the dots is judged against, drawn in the same two inks, so that a shift between the inks moves
//! it with the dots. And it is the watch mark of a page that has no other: one eye alone sees every second dash.

use crate::diagnostics::Place;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling};
use crate::units::Mm;

/// Between the dots and the middle of the frame's line, mm (design choice: near enough to be seen together).
pub const GAP: f64 = 3.6;
/// Width of the frame's line, mm (design choice: 0.17 degrees at 40 cm, plain to see at the edge of sight).
pub const WEIGHT: f64 = 1.2;
/// The arm of a corner mark, mm.
const ARM: f64 = 6.0;
/// From dash to dash, mm, before it is fitted to the side; and the share of it that is drawn.
const PITCH: f64 = 8.0;
const DASH: f64 = 0.7;

/// A straight stroke.
type Stroke = (At, At);

/// The frame around an area of this width and height about the middle of the art field: the dashes of the left eye, those
/// of the right eye, and the corner marks that both see.
pub fn features(width: f64, height: f64, place: Place) -> Vec<Feature> {
    let (x, y) = (width / 2.0 + GAP, height / 2.0 + GAP);
    let (left, right) = dashes(x, y);
    [
        ("border-left", Role::Watch, Eyes::Left, left),
        ("border-right", Role::Watch, Eyes::Right, right),
        ("border-corners", Role::Reference, Eyes::Both, corners(x, y)),
    ]
    .into_iter()
    .map(|(id, role, eyes, strokes)| feature(id, role, eyes, strokes, place))
    .collect()
}

fn feature(id: &str, role: Role, eyes: Eyes, strokes: Vec<Stroke>, place: Place) -> Feature {
    Feature {
        id: id.to_owned(),
        role,
        eyes,
        form: Form::Strokes { strokes, weight: Mm(WEIGHT), depth: Depth::Page },
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: Some(place),
    }
}

/// The dashes of the left and of the right eye, clockwise from the upper left. Each side has an even number, so they
/// alternate all the way round.
fn dashes(x: f64, y: f64) -> (Vec<Stroke>, Vec<Stroke>) {
    let sides =
        [((-x, -y), (1.0, 0.0), x), ((x, -y), (0.0, 1.0), y), ((x, y), (-1.0, 0.0), x), ((-x, y), (0.0, -1.0), y)];
    let (mut left, mut right) = (Vec::new(), Vec::new());
    for ((x0, y0), (dx, dy), half) in sides {
        let clear = 2.0 * (half - ARM);
        let pairs = (clear / (2.0 * PITCH)).round().max(1.0);
        let pitch = clear / (2.0 * pairs);
        let mut start = ARM + pitch * (1.0 - DASH) / 2.0;
        while start < ARM + clear {
            for dashes in [&mut left, &mut right] {
                let point = |along: f64| at(x0 + dx * along, y0 + dy * along);
                dashes.push((point(start), point(start + pitch * DASH)));
                start += pitch;
            }
        }
    }
    (left, right)
}

/// Two arms at each corner.
fn corners(x: f64, y: f64) -> Vec<Stroke> {
    let half = WEIGHT / 2.0;
    let mut strokes = Vec::new();
    for (sx, sy) in [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)] {
        strokes.push((at(sx * (x + half), sy * y), at(sx * (x - ARM + 1.0), sy * y)));
        strokes.push((at(sx * x, sy * (y + half)), at(sx * x, sy * (y - ARM + 1.0))));
    }
    strokes
}

fn at(x: f64, y: f64) -> At {
    At { x: Mm(x), y: Mm(y) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diagnostics::FileId;

    /// One eye alone sees every second dash: as many for each, alternating all the way round, none over another.
    #[test]
    fn dashes_alternate_all_the_way_round() {
        let features = features(164.0, 106.0, Place::start_of(FileId(0)));
        let strokes = |id: &str| {
            let feature = features.iter().find(|f| f.id == id).unwrap();
            let Form::Strokes { strokes, .. } = &feature.form else { panic!() };
            strokes.iter().map(|(a, b)| ((a.x.0 + b.x.0) / 2.0, (a.y.0 + b.y.0) / 2.0)).collect::<Vec<_>>()
        };
        let (left, right) = (strokes("border-left"), strokes("border-right"));
        assert_eq!(left.len(), right.len());
        // By angle about the middle of the field.
        let mut round: Vec<(f64, char)> = left.iter().map(|&(x, y)| (libm::atan2(y, x), 'l')).collect();
        round.extend(right.iter().map(|&(x, y)| (libm::atan2(y, x), 'r')));
        round.sort_by(|a, b| a.0.total_cmp(&b.0));
        for pair in round.windows(2) {
            assert_ne!(pair[0].1, pair[1].1, "{pair:?}");
        }
        assert_ne!(round.first().unwrap().1, round.last().unwrap().1);
        assert!(left.iter().chain(&right).all(|&(x, y)| x.abs() <= 90.0 && y.abs() <= 60.0));
    }
}
