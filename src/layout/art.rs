//! From solved features to the filled areas that each eye gets, with their overlap.
//!
//! Every offset comes from the solver; this file only draws outlines at the places it is given, lets solid features
//! hide what stands behind them, and computes where the two eyes' areas cover the same ground. A vertical base comes in
//! here and nowhere else: as two whole pictures that differ in height.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::float::single::SingleFloatOverlay;
use kurbo::{Affine, BezPath, Cap, Join, Point, Rect, Shape as _, Stroke, StrokeOpts, Vec2};

use crate::exercise::balance::Balance;
use crate::outline;
use crate::scene::{Eye, Eyes, Role, Shape};
use crate::solve::{self, PathPoint, SolvedFeature, SolvedForm};

use super::base::Ride;
use super::dots::{self, Cover};
use super::sheet::Art;

/// Clear space around a solid feature, mm (design choice: keeps an outline readable against lines behind it).
const HALO: f64 = 1.2;
/// Accuracy of flattened curves and of strokes, mm: a tenth of a device dot at 600 ppi.
const ACCURACY: f64 = 0.004;

/// A polygon of several closed contours.
type Contours = Vec<Vec<[f64; 2]>>;

/// The art of a page; `middle` is the middle of the art field, page mm.
pub fn compose(features: &[SolvedFeature], middle: Point) -> Art {
    page(features, middle, None, Ride::NONE)
}

/// The same as a page asks for it.
///
/// With a balance: thinner marks for the stronger eye, in solid ink: nothing moves, and the other eye's part stays.
/// Letters and watch marks stay whole: a thinner letter is another letter, and a watch mark tells of its eye.
///
/// With a base: the horizontal part is in the parallax of the features, the vertical part comes in here.
pub fn page(features: &[SolvedFeature], middle: Point, balance: Option<Balance>, ride: Ride) -> Art {
    let (mut art, mut cover) = (Art::default(), Cover::new(ride));
    let solids: Vec<Solid<'_>> = features.iter().filter(|f| f.solid).map(|f| Solid::new(f, middle)).collect();
    for feature in features {
        let seen = |eye| {
            if sees(feature.eyes, eye) {
                visible(feature, eye, middle, &solids, left_of(feature, eye, balance))
            } else {
                Visible::default()
            }
        };
        let (left, right) = (seen(Eye::Left), seen(Eye::Right));
        let halo = if feature.solid { HALO } else { dots::HALO };
        cover.add(Eye::Left, &left.paths, halo);
        cover.add(Eye::Right, &right.paths, halo);
        let alike = !is_thinned(feature, Eye::Left, balance) && !is_thinned(feature, Eye::Right, balance);
        if alike && ride.is_none() && is_flat(feature) && !left.cut && !right.cut {
            art.flat.extend(left.paths);
        } else {
            art.left.extend(left.paths);
            art.right.extend(right.paths);
        }
    }
    lift(&mut art, ride);
    art.overlap = overlap(&art.left, &art.right);
    for feature in features {
        if let SolvedForm::Dots(field) = &feature.form {
            let shares = Eye::ALL.map(|eye| left_of(feature, eye, balance));
            art.dots.extend(dots::bars(feature, field, middle, (shares, ride), &cover));
        }
    }
    if !ride.is_none() {
        art.over = over_dots(&art);
    }
    art
}

/// Moves the left eye's outlines down and the right eye's up, by half of the rise each.
pub fn lift(art: &mut Art, ride: Ride) {
    if ride.rise == 0.0 {
        return;
    }
    for (paths, down) in [(&mut art.left, ride.rise / 2.0), (&mut art.right, -ride.rise / 2.0)] {
        paths.iter_mut().for_each(|path| path.apply_affine(Affine::translate((0.0, down))));
    }
}

/// Where an outline of one eye and dots of the other cover the same ground: with a base they may.
fn over_dots(art: &Art) -> Vec<BezPath> {
    let mut out = Vec::new();
    for dots in &art.dots {
        for (paths, bars) in [(&art.left, &dots.right), (&art.right, &dots.left)] {
            let boxes: Vec<Rect> = bars.bars.iter().map(|bar| bar.area(bars.height)).collect();
            for path in paths {
                let bounds = path.bounding_box();
                let near: Contours = boxes.iter().filter(|area| touches(bounds, **area)).map(corners).collect();
                if !near.is_empty() {
                    out.extend(combine(&flatten(path), &near, OverlayRule::Intersect));
                }
            }
        }
    }
    out
}

fn corners(area: &Rect) -> Vec<[f64; 2]> {
    vec![[area.x0, area.y0], [area.x1, area.y0], [area.x1, area.y1], [area.x0, area.y1]]
}

/// The share of a feature's ink that is left for an eye.
fn left_of(feature: &SolvedFeature, eye: Eye, balance: Option<Balance>) -> f64 {
    balance.filter(|b| b.stronger == eye && feature.role != Role::Watch && !is_text(feature)).map_or(1.0, |b| b.share)
}

fn is_thinned(feature: &SolvedFeature, eye: Eye, balance: Option<Balance>) -> bool {
    left_of(feature, eye, balance) < 1.0
}

fn is_text(feature: &SolvedFeature) -> bool {
    matches!(&feature.form, SolvedForm::Shape { shape: Shape::Text(_), .. })
}

/// What one eye sees of a feature.
#[derive(Default)]
struct Visible {
    paths: Vec<BezPath>,
    /// Whether something before it hides a part.
    cut: bool,
}

fn visible(feature: &SolvedFeature, eye: Eye, middle: Point, solids: &[Solid<'_>], share: f64) -> Visible {
    let mut visible = Visible::default();
    for piece in pieces(feature, eye, middle, share) {
        let bounds = piece.path.bounding_box();
        let before = solids.iter().filter(|solid| solid.hides(feature, piece.parallax));
        let near = before.map(|solid| solid.shadow(eye)).filter(|(area, _)| touches(bounds, *area));
        let cover: Contours = near.flat_map(|(_, contours)| contours.iter().cloned()).collect();
        if cover.is_empty() {
            visible.paths.push(piece.path);
        } else {
            visible.cut = true;
            visible.paths.extend(combine(&flatten(&piece.path), &cover, OverlayRule::Difference));
        }
    }
    visible
}

/// A feature that hides what stands behind it, with the area in which each eye sees nothing behind it.
struct Solid<'a> {
    feature: &'a SolvedFeature,
    left: (Rect, Contours),
    right: (Rect, Contours),
}

impl<'a> Solid<'a> {
    fn new(feature: &'a SolvedFeature, middle: Point) -> Self {
        let shadow = |eye| {
            let path = match &feature.form {
                _ if !sees(feature.eyes, eye) => return Default::default(),
                SolvedForm::Shape { shape, size, extent, .. } => {
                    place(feature, eye, middle) * outline::silhouette(shape, *size, *extent, HALO)
                }
                // The face of a drawn solid: without clear space around it, so that its own edges reach its corners.
                SolvedForm::Path { points, closed: true, smooth: false, .. } => {
                    polyline(&points.iter().map(|p| half_image(p, eye, middle)).collect::<Vec<_>>(), true)
                }
                SolvedForm::Path { .. } | SolvedForm::Strokes { .. } | SolvedForm::Dots(_) => {
                    return Default::default();
                }
            };
            (path.bounding_box(), flatten(&path))
        };
        Self { feature, left: shadow(Eye::Left), right: shadow(Eye::Right) }
    }

    /// Whether it hides a piece of another feature that stands at this parallax: what is farther away, and of a trail
    /// everything, since beads and marks sit on it. A watch mark hides lines alone, never another target.
    fn hides(&self, feature: &SolvedFeature, parallax: f64) -> bool {
        let behind = self.feature.stand.parallax.0 < parallax;
        match (self.feature.role, feature.role) {
            (_, Role::Trail) => true,
            (Role::Watch, Role::Guide) => behind,
            (Role::Watch, _) | (_, Role::Watch) => false,
            _ => behind && self.feature.id != feature.id,
        }
    }

    fn shadow(&self, eye: Eye) -> &(Rect, Contours) {
        match eye {
            Eye::Left => &self.left,
            Eye::Right => &self.right,
        }
    }
}

/// A filled part of a feature and the parallax it stands at, mm.
struct Piece {
    path: BezPath,
    parallax: f64,
}

fn sees(eyes: Eyes, eye: Eye) -> bool {
    match eyes {
        Eyes::Both => true,
        Eyes::Left => eye == Eye::Left,
        Eyes::Right => eye == Eye::Right,
    }
}

/// True where both half-images fall on the same place.
fn is_flat(feature: &SolvedFeature) -> bool {
    let zero = |parallax: f64| parallax == 0.0;
    feature.eyes == Eyes::Both
        && match &feature.form {
            SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } => zero(feature.stand.parallax.0),
            SolvedForm::Dots(_) => false,
            SolvedForm::Path { points, .. } => points.iter().all(|p| zero(p.parallax)),
        }
}

/// What one eye gets of a feature, with this share of its ink.
fn pieces(feature: &SolvedFeature, eye: Eye, middle: Point, share: f64) -> Vec<Piece> {
    match &feature.form {
        SolvedForm::Shape { shape, size, extent, weight } => {
            let own = if share < 1.0 {
                outline::thinned(shape, *size, *extent, *weight, share)
            } else {
                outline::path(shape, *size, *extent, *weight)
            };
            let path = place(feature, eye, middle) * own;
            vec![Piece { path, parallax: feature.stand.parallax.0 }]
        }
        SolvedForm::Strokes { strokes: list, weight } => {
            let x = solve::half_x(0.0, feature.stand.parallax.0, eye);
            let path = Affine::translate(middle.to_vec2() + Vec2::new(x, 0.0)) * strokes(list, weight * share);
            vec![Piece { path, parallax: feature.stand.parallax.0 }]
        }
        SolvedForm::Dots(_) => Vec::new(),
        SolvedForm::Path { points, closed, smooth, weight } => {
            let weight = weight * share;
            let line: Vec<Point> = points.iter().map(|p| half_image(p, eye, middle)).collect();
            let mean = points.iter().map(|p| p.parallax).sum::<f64>() / points.len() as f64;
            if *smooth {
                vec![Piece { path: band(&line, *closed, weight), parallax: mean }]
            } else if feature.role == Role::Guide {
                segments(points, &line, *closed, weight)
            } else {
                vec![Piece { path: stroke(&polyline(&line, *closed), weight), parallax: mean }]
            }
        }
    }
}

/// Straight strokes with square ends as filled rectangles.
pub fn strokes(list: &[[(f64, f64); 2]], weight: f64) -> BezPath {
    let mut path = BezPath::new();
    for &[from, to] in list {
        let (from, to) = (Point::from(from), Point::from(to));
        let side = (to - from).normalize().turn_90() * (weight / 2.0);
        path.extend(polyline(&[from - side, to - side, to + side, from + side], true));
    }
    path
}

/// Each straight piece by itself, with the parallax of its middle, so that a target hides only what is behind it.
fn segments(points: &[PathPoint], line: &[Point], closed: bool, weight: f64) -> Vec<Piece> {
    let count = if closed { line.len() } else { line.len() - 1 };
    (0..count)
        .map(|i| {
            let next = (i + 1) % line.len();
            Piece {
                path: stroke(&polyline(&[line[i], line[next]], false), weight),
                parallax: (points[i].parallax + points[next].parallax) / 2.0,
            }
        })
        .collect()
}

/// Where an eye's half-image of a shape stands.
fn place(feature: &SolvedFeature, eye: Eye, middle: Point) -> Affine {
    let x = solve::half_x(feature.at.0, feature.stand.parallax.0, eye);
    Affine::translate(middle.to_vec2() + Vec2::new(x, feature.at.1))
}

fn half_image(point: &PathPoint, eye: Eye, middle: Point) -> Point {
    middle + Vec2::new(solve::half_x(point.x, point.parallax, eye), point.y)
}

fn polyline(line: &[Point], closed: bool) -> BezPath {
    let mut path = BezPath::new();
    for (i, &point) in line.iter().enumerate() {
        if i == 0 { path.move_to(point) } else { path.line_to(point) }
    }
    if closed {
        path.close_path();
    }
    path
}

fn stroke(path: &BezPath, weight: f64) -> BezPath {
    let style = Stroke::new(weight).with_caps(Cap::Round).with_join(Join::Round);
    kurbo::stroke(path, &style, &StrokeOpts::default(), ACCURACY)
}

/// A smooth line through points as a filled band with round ends.
///
/// The two sides run through the points moved by half the weight at right angles to the line. With points every 2 mm
/// both sides stay within 0.01 mm of the true offset curves for every radius that exceeds the weight.
fn band(line: &[Point], closed: bool, weight: f64) -> BezPath {
    let last = line.len() - 1;
    let neighbours = |i: usize| match (i, closed) {
        (0, true) => (line[last], line[1]),
        (0, false) => (line[0], line[1]),
        (i, true) if i == last => (line[last - 1], line[0]),
        (i, false) if i == last => (line[last - 1], line[last]),
        (i, _) => (line[i - 1], line[i + 1]),
    };
    let side = |sign: f64| -> Vec<Point> {
        (0..=last)
            .map(|i| {
                let (before, after) = neighbours(i);
                line[i] + (after - before).normalize().turn_90() * (sign * weight / 2.0)
            })
            .collect()
    };
    let (left, mut right) = (side(1.0), side(-1.0));
    right.reverse();
    let mut path = BezPath::new();
    path.move_to(left[0]);
    curve_through(&mut path, &left, closed);
    if closed {
        path.close_path();
        path.move_to(right[0]);
        curve_through(&mut path, &right, true);
    } else {
        round_end(&mut path, line[last], left[last], right[0]);
        curve_through(&mut path, &right, false);
        round_end(&mut path, line[0], right[last], left[0]);
    }
    path.close_path();
    path
}

/// Appends cubic curves through the points (Catmull–Rom tangents); the path already stands at the first point.
fn curve_through(path: &mut BezPath, points: &[Point], closed: bool) {
    let count = points.len();
    let tangent = |i: usize| {
        let (before, after) = if closed {
            (points[(i + count - 1) % count], points[(i + 1) % count])
        } else {
            (points[i.saturating_sub(1)], points[(i + 1).min(count - 1)])
        };
        let spans = if closed || (0 < i && i < count - 1) { 2.0 } else { 1.0 };
        (after - before) / spans
    };
    for i in 0..if closed { count } else { count - 1 } {
        let next = (i + 1) % count;
        path.curve_to(points[i] + tangent(i) / 3.0, points[next] - tangent(next) / 3.0, points[next]);
    }
}

/// Appends a half circle about `centre` from one side of a band to the other.
fn round_end(path: &mut BezPath, centre: Point, from: Point, to: Point) {
    let radius = from - centre;
    let outward = Vec2::new(radius.y, -radius.x);
    // Two quarter circles by the usual cubic approximation.
    let k = 4.0 / 3.0 * (std::f64::consts::SQRT_2 - 1.0);
    let top = centre + outward;
    path.curve_to(from + outward * k, top + radius * k, top);
    path.curve_to(top - radius * k, to + outward * k, to);
}

/// Where areas of the two lists cover the same ground.
pub fn overlap(left: &[BezPath], right: &[BezPath]) -> Vec<BezPath> {
    let prepare = |list: &[BezPath]| -> Vec<(Rect, Contours)> {
        list.iter().map(|path| (path.bounding_box(), flatten(path))).collect()
    };
    let (left, right) = (prepare(left), prepare(right));
    let mut out = Vec::new();
    for (left_bounds, left_contours) in &left {
        for (right_bounds, right_contours) in &right {
            if touches(*left_bounds, *right_bounds) {
                out.extend(combine(left_contours, right_contours, OverlayRule::Intersect));
            }
        }
    }
    out
}

fn combine(subject: &Contours, clip: &Contours, rule: OverlayRule) -> Vec<BezPath> {
    let shapes = subject.overlay(clip, rule, FillRule::NonZero);
    let path_of = |shape: Contours| {
        let mut path = BezPath::new();
        for contour in &shape {
            path.extend(polyline(&contour.iter().map(|&[x, y]| Point::new(x, y)).collect::<Vec<_>>(), true));
        }
        path
    };
    shapes.into_iter().map(path_of).collect()
}

fn flatten(path: &BezPath) -> Contours {
    let mut contours: Contours = Vec::new();
    kurbo::flatten(path.elements().iter().copied(), ACCURACY, |element| match element {
        kurbo::PathEl::MoveTo(p) => contours.push(vec![[p.x, p.y]]),
        kurbo::PathEl::LineTo(p) => {
            if let Some(contour) = contours.last_mut() {
                contour.push([p.x, p.y]);
            }
        }
        _ => {}
    });
    contours
}

fn touches(a: Rect, b: Rect) -> bool {
    a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1
}

#[cfg(test)]
mod tests {
    use crate::optics::Viewer;
    use crate::scene::{At, Companions, Depth, Feature, Form, Scaling, Scene, Shape, Side, Size, Vertex};
    use crate::units::Mm;

    use super::*;

    const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));

    fn disc(x: f64, depth: Depth, solid: bool) -> Feature {
        let form = Form::Shape {
            shape: Shape::Disc,
            at: At { x: Mm(x), y: Mm(0.0) },
            size: Size::Length(Mm(20.0)),
            weight: Mm(2.0),
            depth,
        };
        feature(&format!("disc{x}"), Role::Target, form, solid)
    }

    fn feature(id: &str, role: Role, form: Form, solid: bool) -> Feature {
        Feature {
            id: id.into(),
            role,
            eyes: Eyes::Both,
            form,
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid,
            place: None,
        }
    }

    fn art_of(features: Vec<Feature>) -> Art {
        compose(&solve::solve(&Scene { features }, &VIEWER).unwrap(), Point::new(100.0, 100.0))
    }

    fn area(paths: &[BezPath]) -> f64 {
        paths.iter().map(|path| path.area().abs()).sum()
    }

    /// The lens that two circles of radius r share when their middles are d apart is
    /// 2 r² acos(d / 2r) − d/2 √(4r² − d²): a textbook formula of plane geometry.
    #[test]
    fn the_overlap_is_what_both_half_images_cover() {
        let (r, d) = (10.0, 8.0);
        let art = art_of(vec![disc(0.0, Depth::Parallax(Mm(d), Side::Toward), false)]);
        let lens = 2.0 * r * r * libm::acos(d / (2.0 * r)) - d / 2.0 * libm::sqrt(4.0 * r * r - d * d);
        // Chords stand inside the circles by at most the accuracy, all along the edge of the lens.
        let edge = 4.0 * r * libm::acos(d / (2.0 * r));
        assert!((area(&art.overlap) - lens).abs() < edge * ACCURACY, "{} against {lens}", area(&art.overlap));
        assert!(art.flat.is_empty());
    }

    #[test]
    fn the_left_half_image_of_a_crossed_target_lies_on_the_right() {
        let art = art_of(vec![disc(0.0, Depth::Parallax(Mm(8.0), Side::Toward), false)]);
        assert!((art.left[0].bounding_box().center().x - 104.0).abs() < 1e-6);
        assert!((art.right[0].bounding_box().center().x - 96.0).abs() < 1e-6);
    }

    #[test]
    fn what_stands_on_the_page_is_drawn_once() {
        let art = art_of(vec![disc(0.0, Depth::Page, false), disc(40.0, Depth::Page, true)]);
        assert_eq!((art.flat.len(), art.left.len(), art.right.len(), art.overlap.len()), (2, 0, 0, 0));
    }

    #[test]
    fn a_solid_target_hides_the_line_behind_it_and_not_the_one_before_it() {
        let line = |depth: Depth| {
            let vertex = |x: f64| Vertex { at: At { x: Mm(x), y: Mm(0.0) }, depth: depth.clone() };
            let vertices = vec![vertex(-50.0), vertex(50.0)];
            let form = Form::Path { vertices, closed: false, smooth: false, weight: Mm(1.0) };
            feature("line", Role::Guide, form, false)
        };
        let left_of = |line: Feature| area(&art_of(vec![line, disc(0.0, Depth::Page, true)]).left);
        // A bar of 100 mm by 1 mm with round ends, less the disc with its halo on both sides.
        let whole = 100.0 + std::f64::consts::PI / 4.0;
        let behind = left_of(line(Depth::Parallax(Mm(2.0), Side::Away)));
        assert!((behind - (whole - (20.0 + 2.0 * HALO))).abs() < 0.1, "{behind}");
        let before = left_of(line(Depth::Parallax(Mm(2.0), Side::Toward)));
        assert!((before - whole).abs() < 0.01, "{before}");
    }
}
