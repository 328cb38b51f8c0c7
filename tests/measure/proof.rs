//! The measuring itself, tried on pictures whose truth is known: shapes at known parts of a dot, drawn here with exact
//! shares of ink, in the colours of both eyes one over the other.

use super::outline::{Area, Shape};
use super::page::{EYES, Eye};
use super::place;
use super::seen::{Filter, INCH, Picture, View};

const DOT: f64 = INCH / 300.0;
/// Side of the picture in dots, and its first dot on the page: a picture is a part of a page.
const SIDE: usize = 330;
const ORIGIN: [u32; 2] = [200, 100];
/// How near the measure must come to the truth, mm: a tenth of what is promised of pages.
const NEAR: f64 = 0.005;

const VIEWS: [View; 4] = [
    View { left: Filter::Red, right: Filter::Cyan, ground: [255; 3] },
    View { left: Filter::Cyan, right: Filter::Red, ground: [255; 3] },
    View { left: Filter::Red, right: Filter::Cyan, ground: [0; 3] },
    View { left: Filter::Cyan, right: Filter::Red, ground: [0; 3] },
];

/// The share of each dot that polygons cover: exact along rows, over twenty lines a row.
fn cover(polygons: &[Vec<[f64; 2]>]) -> Vec<f64> {
    const LINES: usize = 20;
    let mut shares = vec![0.0; SIDE * SIDE];
    for line in 0..SIDE * LINES {
        let y = (f64::from(ORIGIN[1]) + (line as f64 + 0.5) / LINES as f64) * DOT;
        let mut crossings = Vec::new();
        for polygon in polygons {
            for (i, a) in polygon.iter().enumerate() {
                let b = polygon[(i + 1) % polygon.len()];
                if (a[1] <= y) != (b[1] <= y) {
                    crossings.push(a[0] + (y - a[1]) / (b[1] - a[1]) * (b[0] - a[0]));
                }
            }
        }
        crossings.sort_by(f64::total_cmp);
        for pair in crossings.chunks_exact(2) {
            let [start, end] = [pair[0], pair[1]].map(|x| x / DOT - f64::from(ORIGIN[0]));
            for x in start.max(0.0) as usize..(end.ceil().max(0.0) as usize).min(SIDE) {
                let covered = end.min(x as f64 + 1.0) - start.max(x as f64);
                shares[line / LINES * SIDE + x] += covered.max(0.0) / LINES as f64;
            }
        }
    }
    shares
}

/// A picture of what the left eye and what the right eye gets, in light: red and the rest go to one eye each.
fn picture(view: &View, left: &[f64], right: &[f64]) -> Picture {
    let dot = |(left, right): (&f64, &f64)| {
        let (red, rest) = if view.left == Filter::Red { (left, right) } else { (right, left) };
        let code = |share: f64, ground: u8| (f64::from(ground) + share * (255.0 - 2.0 * f64::from(ground))).round();
        [(red, 0), (rest, 1), (rest, 2)].map(|(share, channel)| code(*share, view.ground[channel]) as u8)
    };
    let bytes = left.iter().zip(right).flat_map(dot).collect();
    Picture { ppi: 300.0, origin: ORIGIN, size: [SIDE; 2], bytes, dot: 3, row: 3 * SIDE, start: 0 }
}

/// A circle as drawn, about as true as the dots allow: sides within 0.001 mm of it.
fn round([w, h]: [f64; 2]) -> Vec<[f64; 2]> {
    let corner = |i: usize| (std::f64::consts::TAU * i as f64 / 400.0).sin_cos();
    (0..400).map(corner).map(|(sin, cos)| [cos * w / 2.0, sin * h / 2.0]).collect()
}

/// A shape about `at`, with a hole that leaves lines of `weight`.
fn drawn(shape: Shape, at: [f64; 2], size: [f64; 2], weight: f64) -> Vec<Vec<[f64; 2]>> {
    let outlines = |size| if shape == Shape::Round { vec![round(size)] } else { shape.outlines(size, weight) };
    let smaller = size.map(|s| s - 4.0 * weight);
    let hole = matches!(shape, Shape::Round | Shape::Square | Shape::Diamond).then(|| outlines(smaller));
    let outlines = outlines(size).into_iter().chain(hole.into_iter().flatten());
    outlines.map(|outline| outline.iter().map(|p| [p[0] + at[0], p[1] + at[1]]).collect()).collect()
}

const SHAPES: [(Shape, [f64; 2]); 8] = [
    (Shape::Round, [18.0, 18.0]),
    (Shape::Square, [16.0, 16.0]),
    (Shape::Diamond, [18.0, 18.0]),
    (Shape::Star, [18.0, 17.119]),
    (Shape::Cross, [18.0, 18.0]),
    (Shape::Triangle, [4.2, 3.637]),
    (Shape::Bar, [4.2, 1.512]),
    (Shape::Brackets, [18.0, 16.0]),
];

#[test]
fn known_places_are_found_for_each_eye() {
    for (number, (shape, size)) in SHAPES.into_iter().enumerate() {
        let view = VIEWS[number % VIEWS.len()];
        // The truth, at odd parts of a dot, and what a report would say instead, off by known amounts.
        let truth = [[31.337, 22.771], [30.204, 22.771]];
        let [left, right] = truth.map(|at| cover(&drawn(shape, at, size, 2.0)));
        let picture = picture(&view, &left, &right);
        for (eye, at) in EYES.into_iter().zip(truth) {
            for off in [[0.0, 0.0], [0.05, 0.0], [-0.03, 0.05], [0.1, -0.1]] {
                let reported = [at[0] - off[0], at[1] - off[1]];
                let samples = shape.samples(size, 2.0);
                let seen = picture.seen(&view, eye);
                let found = place::outline(&seen, &samples, reported, size[0], &[]).expect("nothing is in the way");
                let wrong = (found.at[0] - at[0]).hypot(found.at[1] - at[1]);
                assert!(wrong < NEAR, "{shape:?} {eye:?} off by {off:?}: {wrong} mm");
                assert!(found.longer.abs() < NEAR, "{shape:?} {eye:?}: {} mm", found.longer);
                let farthest = off[0].hypot(off[1]);
                assert!((found.farthest - farthest).abs() < 0.3 * farthest + 2.0 * NEAR, "{shape:?}: {found:?}");
            }
        }
    }
}

#[test]
fn a_shape_of_another_size_is_told() {
    for (shape, size) in SHAPES {
        let ink = cover(&drawn(shape, [30.6, 22.4], size.map(|s| s * 1.01), 2.02));
        let picture = picture(&VIEWS[0], &ink, &ink);
        let seen = picture.seen(&VIEWS[0], Eye::Left);
        let found = place::outline(&seen, &shape.samples(size, 2.0), [30.6, 22.4], size[0], &[]).unwrap();
        assert!((found.longer - 0.01 * size[0]).abs() < 2.0 * NEAR, "{shape:?}: {}", found.longer);
    }
}

/// A foreign bar through a ring moves nothing where its area is known, and moves the ring where it is not.
#[test]
fn what_lies_near_does_not_disturb() {
    let (size, at) = ([18.0, 18.0], [30.61, 22.43]);
    let foreign = Shape::Bar.outlines([5.0, 1.5], 0.0);
    let moved: Vec<_> = foreign[0].iter().map(|p| [p[0] + at[0] + 9.2, p[1] + at[1] + 1.0]).collect();
    // As much ink as covers either of the two.
    let (ring, bar) = (cover(&drawn(Shape::Round, at, size, 2.0)), cover(std::slice::from_ref(&moved)));
    let ink: Vec<_> = ring.iter().zip(&bar).map(|(a, b)| a.max(*b)).collect();
    let picture = picture(&VIEWS[2], &ink, &vec![0.0; ink.len()]);
    let seen = picture.seen(&VIEWS[2], Eye::Left);
    let samples = Shape::Round.samples(size, 2.0);
    let area = Area::closed(&moved, [0.0, 0.0], f64::INFINITY, 0.0);
    let masked = place::outline(&seen, &samples, at, size[0], &[area]).unwrap();
    assert!((masked.at[0] - at[0]).hypot(masked.at[1] - at[1]) < NEAR && masked.farthest < NEAR, "{masked:?}");
    let bare = place::outline(&seen, &samples, at, size[0], &[]).unwrap();
    assert!(0.1 < bare.farthest, "{bare:?}");
    // Covered on most of its outline, it is not measured at all.
    let wall = Area::line(vec![[at[0], at[1] - 20.0], [at[0], at[1] + 20.0]], false, 7.5);
    assert!(place::outline(&seen, &samples, at, size[0], &[wall]).is_none());
}

#[test]
fn an_eye_sees_nothing_of_the_other_eyes_mark() {
    let ink = cover(&drawn(Shape::Bar, [30.6, 22.4], [4.2, 1.5], 0.0));
    let none = vec![0.0; ink.len()];
    for view in VIEWS {
        let most = |picture: &Picture, eye| {
            let seen = picture.seen(&view, eye);
            (0..SIDE * SIDE).map(|i| seen.ink(i % SIDE, i / SIDE)).max().unwrap()
        };
        let (for_left, for_right) = (picture(&view, &ink, &none), picture(&view, &none, &ink));
        assert_eq!((most(&for_left, Eye::Left), most(&for_left, Eye::Right)), (255, 0), "{view:?}");
        assert_eq!((most(&for_right, Eye::Left), most(&for_right, Eye::Right)), (0, 255), "{view:?}");
    }
}

#[test]
fn boxes_of_letters_are_found() {
    // An E and a T of straight strokes fill a box of 12 by 6 mm.
    let at = [30.673, 22.418];
    let strokes = [
        [-6.0, -3.0, -5.0, 3.0],
        [-5.0, -3.0, -1.0, -2.0],
        [-5.0, -0.5, -2.0, 0.5],
        [-5.0, 2.0, -1.0, 3.0],
        [1.0, -3.0, 6.0, -2.0],
        [3.0, -2.0, 4.0, 3.0],
    ];
    let corner = |x: f64, y: f64| [x + at[0], y + at[1]];
    let polygons: Vec<_> = strokes
        .iter()
        .map(|&[x0, y0, x1, y1]| vec![corner(x0, y0), corner(x1, y0), corner(x1, y1), corner(x0, y1)])
        .collect();
    let ink = cover(&polygons);
    let picture = picture(&VIEWS[1], &ink, &ink);
    let seen = picture.seen(&VIEWS[1], Eye::Right);
    let found = place::letters(&seen, [at[0] + 0.04, at[1] - 0.03], [12.0, 6.0], &[]).unwrap();
    assert!((found.at[0] - at[0]).hypot(found.at[1] - at[1]) < NEAR && found.longer.abs() < NEAR, "{found:?}");
    let near = Area::line(vec![corner(6.5, -4.0), corner(6.5, 4.0)], false, 0.2);
    assert!(place::letters(&seen, at, [12.0, 6.0], &[near]).is_none());
}

#[test]
fn a_line_is_crossed_at_its_middle() {
    // A line of 1.6 mm that runs down to the right at 30 degrees.
    let (along, out) = ([0.75_f64.sqrt(), 0.5], [0.5, -0.75_f64.sqrt()]);
    let at = [30.61, 22.43];
    let place = |s: f64, t: f64| [at[0] + along[0] * s + out[0] * t, at[1] + along[1] * s + out[1] * t];
    let band = vec![place(-9.0, -0.8), place(9.0, -0.8), place(9.0, 0.8), place(-9.0, 0.8)];
    let ink = cover(&[band]);
    let picture = picture(&VIEWS[3], &ink, &ink);
    let seen = picture.seen(&VIEWS[3], Eye::Left);
    for off in [0.0, 0.04, -0.08] {
        let crossed = place::line(&seen, place(2.0, -off), along, 1.6, &[]).unwrap();
        assert!((crossed.off - off).abs() < NEAR && (crossed.width - 1.6).abs() < NEAR, "{off}: {crossed:?}");
    }
    let bare = place::line(&seen, place(2.0, 5.0), along, 1.6, &[]).unwrap();
    assert!(1.0 < bare.off, "{bare:?}");
}
