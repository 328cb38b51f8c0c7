//! Outlines: what each shape and letter looks like at its size, as a filled area about its own middle.
//!
//! This room knows shapes and letters, not depths, eyes or pages. Paths wind clockwise on the page (y down), holes the
//! other way, so that every path fills under the non-zero rule. The drawn bounding box is centred on the origin.

pub mod fonts;

use kurbo::{Affine, Arc, BezPath, Cap, Join, Point, Rect, Shape as _, Stroke, StrokeOpts, Vec2};

use crate::scene::{Direction, Shape};
use fonts::Face;

/// Height of the watch bar as a share of its width (design choice: reads as lying flat at 4 mm).
const BAR_HEIGHT: f64 = 0.36;
/// How far a lock bracket reaches along each side, as a share of the shorter side of its frame (design choice).
const BRACKET_ARM: f64 = 0.2;
/// Accuracy of circles as Bézier curves, mm: far below the hundredth of a millimetre that pages promise.
const CIRCLE_ACCURACY: f64 = 1e-4;
/// Accuracy of a line along a contour, mm: a tenth of a device dot at 600 ppi.
const STROKE_ACCURACY: f64 = 0.004;

/// Width and height of the drawn bounding box of a shape whose longer side is `size` mm (text: capital height).
pub fn extent(shape: &Shape, size: f64) -> (f64, f64) {
    match shape {
        Shape::Bar => (size, size * BAR_HEIGHT),
        Shape::Text(text) => {
            let bounds = text_outline(text).bounding_box();
            let em = size / fonts::CAP_HEIGHT;
            (bounds.width() * em, bounds.height() * em)
        }
        Shape::Star | Shape::Triangle | Shape::Wedge | Shape::Polygon(_) => {
            let bounds = bounds_of(&corners(shape));
            let scale = size / bounds.width().max(bounds.height());
            (bounds.width() * scale, bounds.height() * scale)
        }
        Shape::Ring
        | Shape::Disc
        | Shape::Square
        | Shape::Diamond
        | Shape::Cross
        | Shape::Brackets
        | Shape::OpenRing(_) => (size, size),
        Shape::Drawing(drawing) => (drawing.extent.0 * size, drawing.extent.1 * size),
        Shape::Outline(inner) => extent(inner, size),
    }
}

/// The filled outline of a shape, mm, about the middle of its bounding box. `extent` is what [`extent`] says, or the
/// frame's own width and height for brackets; `weight` is the width of its lines.
pub fn path(shape: &Shape, size: f64, extent: (f64, f64), weight: f64) -> BezPath {
    match shape {
        Shape::Ring => ring(size / 2.0, weight),
        Shape::Disc => circle(size / 2.0),
        Shape::Square | Shape::Diamond | Shape::Star | Shape::Triangle => banded(shape, size, weight),
        Shape::Wedge | Shape::Polygon(_) => banded(shape, size, f64::INFINITY),
        Shape::OpenRing(side) => open_ring(size / 2.0, *side),
        Shape::Drawing(drawing) => Affine::scale(size) * &drawing.outline,
        Shape::Cross => cross(size / 2.0, weight / 2.0),
        Shape::Bar => rectangle(extent.0 / 2.0, extent.1 / 2.0),
        Shape::Brackets => brackets(extent.0 / 2.0, extent.1 / 2.0, weight),
        Shape::Text(text) => centred(text_outline(text), size / fonts::CAP_HEIGHT),
        Shape::Outline(inner) => along(&filled(inner, size), weight),
    }
}

/// A shape without the holes of its lines, about the middle of its box: what it is where dots fill it. A cross has arms a
/// third of its size wide, an open ring and letters keep their holes.
pub fn filled(shape: &Shape, size: f64) -> BezPath {
    match shape {
        Shape::Ring => circle(size / 2.0),
        Shape::Cross => cross(size / 2.0, size / 6.0),
        _ => path(shape, size, extent(shape, size), f64::INFINITY),
    }
}

/// A line of this width along a contour.
fn along(contour: &BezPath, weight: f64) -> BezPath {
    let style = Stroke::new(weight).with_join(Join::Round);
    kurbo::stroke(contour, &style, &StrokeOpts::default(), STROKE_ACCURACY)
}

/// The same outline with less ink inside its outer edge, `share` 0 to 1: lines have that share of their width, solid
/// shapes get a hole of their own form that leaves that share of their area. Letters, open rings and drawings stay whole:
/// they would be others.
pub fn thinned(shape: &Shape, size: f64, extent: (f64, f64), weight: f64, share: f64) -> BezPath {
    let hole = (1.0 - share).sqrt();
    match shape {
        Shape::Disc => ring(size / 2.0, size / 2.0 * (1.0 - hole)),
        Shape::Wedge | Shape::Polygon(_) => banded(shape, size, side_distance(shape, size) * (1.0 - hole)),
        Shape::Bar => {
            let (width, height) = (extent.0 / 2.0, extent.1 / 2.0);
            let mut path = rectangle(width, height);
            path.extend(rectangle(width * hole, height * hole).reverse_subpaths());
            path
        }
        Shape::Text(_) | Shape::Drawing(_) | Shape::OpenRing(_) => path(shape, size, extent, weight),
        _ => path(shape, size, extent, weight * share),
    }
}

/// The area a shape hides when it stands before something: its outer outline without holes, moved out by `halo` mm.
/// What stands behind the holes of a drawing shows through them.
pub fn silhouette(shape: &Shape, size: f64, extent: (f64, f64), halo: f64) -> BezPath {
    match shape {
        Shape::Ring | Shape::Disc | Shape::OpenRing(_) => circle(size / 2.0 + halo),
        Shape::Square | Shape::Diamond | Shape::Star | Shape::Triangle | Shape::Polygon(_) => grown(shape, size, halo),
        Shape::Drawing(drawing) => around(&(Affine::scale(size) * &drawing.outline), halo),
        Shape::Cross | Shape::Bar | Shape::Wedge | Shape::Brackets | Shape::Text(_) => {
            rectangle(extent.0 / 2.0 + halo, extent.1 / 2.0 + halo)
        }
        // A wide band along its line alone: what it goes around stays.
        Shape::Outline(inner) => along(&filled(inner, size), 4.0 * halo),
    }
}

/// A drawing with its outer edges moved out by `halo` mm; its holes stay as they are.
fn around(path: &BezPath, halo: f64) -> BezPath {
    let style = Stroke::new(2.0 * halo).with_caps(Cap::Round).with_join(Join::Round);
    let mut out = BezPath::new();
    let pieces = |path: &BezPath| path.subpaths().map(|p| p.iter().copied().collect()).collect::<Vec<BezPath>>();
    for contour in pieces(path) {
        if contour.area() <= 0.0 {
            out.extend(contour);
            continue;
        }
        let band = kurbo::stroke(contour.iter(), &style, &StrokeOpts::default(), CIRCLE_ACCURACY.max(halo / 100.0));
        // Of the two sides of the band the outer one encloses the whole; holes are taken out of that once.
        let outer = pieces(&band).into_iter().max_by(|a, b| a.area().abs().total_cmp(&b.area().abs()));
        let outer = outer.unwrap_or_default();
        out.extend(if outer.area() < 0.0 { outer.reverse_subpaths() } else { outer });
    }
    out
}

/// The radius of the free circle inside a line shape about the middle of its box; 0 where a shape has none.
pub fn free_radius(shape: &Shape, size: f64, weight: f64) -> f64 {
    match shape {
        Shape::Ring | Shape::Square => (size / 2.0 - weight).max(0.0),
        Shape::Diamond => (size / 2.0 * std::f64::consts::FRAC_1_SQRT_2 - weight).max(0.0),
        _ => 0.0,
    }
}

/// A letter of a line, at its place in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Letter {
    /// Which.
    pub character: char,
    /// Its drawn box in heights of a capital. The pen starts at the left, at 0 on the baseline; y down.
    pub area: Rect,
}

/// The letters of a line as [`Shape::Text`] sets it, blanks left out: for letters that are features of their own.
pub fn letters(line: &str) -> Vec<Letter> {
    let (mut letters, mut pen) = (Vec::new(), 0.0);
    for character in line.chars() {
        let glyph = fonts::glyph(Face::Bold, character).unwrap_or(0);
        let area = fonts::outline(Face::Bold, glyph).bounding_box() + Vec2::new(pen, 0.0);
        if 0.0 < area.width() {
            letters.push(Letter { character, area: area.scale_from_origin(1.0 / fonts::CAP_HEIGHT) });
        }
        pen += fonts::advance(Face::Bold, glyph);
    }
    letters
}

/// The drawn box of a line of letters, in the frame of [`Letter::area`]; of no size where it has none.
pub fn line_box(line: &str) -> Rect {
    letters(line).into_iter().map(|letter| letter.area).reduce(|a, b| a.union(b)).unwrap_or(Rect::ZERO)
}

/// The first character of a line that the bold face does not have.
pub fn missing(line: &str) -> Option<char> {
    line.chars().find(|&character| fonts::glyph(Face::Bold, character).is_none())
}

/// The unit outline of a line of bold letters: em units, baseline at 0, y down.
fn text_outline(text: &str) -> BezPath {
    let mut out = BezPath::new();
    let mut pen = 0.0;
    for character in text.chars() {
        let glyph = fonts::glyph(Face::Bold, character).unwrap_or(0);
        out.extend(Affine::translate((pen, 0.0)) * fonts::outline(Face::Bold, glyph));
        pen += fonts::advance(Face::Bold, glyph);
    }
    out
}

fn centred(path: BezPath, scale: f64) -> BezPath {
    let middle = path.bounding_box().center();
    Affine::scale(scale) * (Affine::translate(-middle.to_vec2()) * path)
}

fn circle(radius: f64) -> BezPath {
    kurbo::Circle::new(Point::ORIGIN, radius).to_path(CIRCLE_ACCURACY)
}

fn ring(radius: f64, weight: f64) -> BezPath {
    let mut path = circle(radius);
    if weight < radius {
        path.extend(circle(radius - weight).reverse_subpaths());
    }
    path
}

/// A ring whose line and gap are a fifth of its diameter; the gap has straight, parallel sides. Source: `[ISO8596]`.
fn open_ring(radius: f64, side: Direction) -> BezPath {
    let (half_gap, inner) = (radius / 5.0, radius * 3.0 / 5.0);
    // Drawn with the gap to the right, then turned.
    let (outer_turn, inner_turn) = (libm::asin(half_gap / radius), libm::asin(half_gap / inner));
    let sweep = |turn: f64| std::f64::consts::TAU - 2.0 * turn;
    let arc = |radius: f64, start: f64, sweep: f64| Arc::new(Point::ORIGIN, (radius, radius), start, sweep, 0.0);
    let there = arc(radius, outer_turn, sweep(outer_turn)).append_iter(CIRCLE_ACCURACY);
    let back = arc(inner, -inner_turn, -sweep(inner_turn)).append_iter(CIRCLE_ACCURACY);
    let at = |radius: f64, turn: f64| Point::new(radius * libm::cos(turn), radius * libm::sin(turn));
    let mut path = BezPath::new();
    path.move_to(at(radius, outer_turn));
    path.extend(there);
    path.line_to(at(inner, -inner_turn));
    path.extend(back);
    path.close_path();
    let quarters = match side {
        Direction::Right => 0.0,
        Direction::Down => 1.0,
        Direction::Left => 2.0,
        Direction::Up => 3.0,
    };
    Affine::rotate(quarters * std::f64::consts::FRAC_PI_2) * path
}

fn rectangle(half_width: f64, half_height: f64) -> BezPath {
    Rect::new(-half_width, -half_height, half_width, half_height).to_path(CIRCLE_ACCURACY)
}

fn cross(arm: f64, half: f64) -> BezPath {
    let corners = [
        (-half, -arm),
        (half, -arm),
        (half, -half),
        (arm, -half),
        (arm, half),
        (half, half),
        (half, arm),
        (-half, arm),
        (-half, half),
        (-arm, half),
        (-arm, -half),
        (-half, -half),
    ];
    polygon(corners.map(Point::from))
}

fn brackets(half_width: f64, half_height: f64, weight: f64) -> BezPath {
    let arm = half_width.min(half_height) * 2.0 * BRACKET_ARM;
    let corner = [(0.0, 0.0), (arm, 0.0), (arm, weight), (weight, weight), (weight, arm), (0.0, arm)];
    let mut path = BezPath::new();
    for (sx, sy) in [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)] {
        let points = corner.map(|(x, y)| Point::new(sx * (half_width - x), sy * (half_height - y)));
        let piece = polygon(points);
        path.extend(if sx * sy < 0.0 { piece.reverse_subpaths() } else { piece });
    }
    path
}

/// The corners of a straight-sided shape about the centre of its inscribed circle, at any scale.
fn corners(shape: &Shape) -> Vec<Point> {
    let around = |count: u32, start_degrees: f64, radius: &dyn Fn(u32) -> f64| {
        (0..count)
            .map(|i| {
                let angle = (start_degrees + 360.0 * f64::from(i) / f64::from(count)).to_radians();
                Point::new(libm::cos(angle) * radius(i), libm::sin(angle) * radius(i))
            })
            .collect()
    };
    match shape {
        Shape::Star => {
            // In a regular five-pointed star the inner corners lie at cos 72° / cos 36° of the outer radius.
            let inner = libm::cos(72_f64.to_radians()) / libm::cos(36_f64.to_radians());
            around(10, -90.0, &|i| if i % 2 == 0 { 1.0 } else { inner })
        }
        Shape::Triangle | Shape::Wedge => around(3, -90.0, &|_| 1.0),
        // Half a step from the lowest point: it stands on a side.
        Shape::Polygon(sides) => around((*sides).max(3), 90.0 + 180.0 / f64::from((*sides).max(3)), &|_| 1.0),
        Shape::Diamond => around(4, -90.0, &|_| 1.0),
        _ => around(4, -135.0, &|_| 1.0),
    }
}

/// A straight-sided shape as a band of width `weight` inside its outer outline; solid where the band fills it.
fn banded(shape: &Shape, size: f64, weight: f64) -> BezPath {
    let mut path = grown(shape, size, 0.0);
    if weight < side_distance(shape, size) {
        path.extend(grown(shape, size, -weight).reverse_subpaths());
    }
    path
}

/// The outer outline of a straight-sided shape with its sides moved out by `by` mm (in, where negative).
///
/// All sides of these shapes lie at the same distance from their centre, so the moved outline is the same figure made
/// larger about that centre.
fn grown(shape: &Shape, size: f64, by: f64) -> BezPath {
    let unit = corners(shape);
    let bounds = bounds_of(&unit);
    let scale = size / bounds.width().max(bounds.height());
    let factor = 1.0 + by / side_distance(shape, size);
    let middle = bounds.center().to_vec2();
    polygon(unit.iter().map(|p| ((p.to_vec2() * factor - middle) * scale).to_point()))
}

/// How far the sides of a straight-sided shape lie from the centre of its inscribed circle, mm.
fn side_distance(shape: &Shape, size: f64) -> f64 {
    let unit = corners(shape);
    let bounds = bounds_of(&unit);
    distance_to_line(unit[0], unit[1]) * size / bounds.width().max(bounds.height())
}

/// Distance from the origin to the line through two points.
fn distance_to_line(a: Point, b: Point) -> f64 {
    let along: Vec2 = b - a;
    (a.to_vec2().cross(along) / along.hypot()).abs()
}

fn bounds_of(points: &[Point]) -> Rect {
    points.iter().fold(Rect::from_points(points[0], points[0]), |bounds, &p| bounds.union_pt(p))
}

fn polygon(points: impl IntoIterator<Item = Point>) -> BezPath {
    let mut path = BezPath::new();
    for (i, point) in points.into_iter().enumerate() {
        if i == 0 { path.move_to(point) } else { path.line_to(point) }
    }
    path.close_path();
    path
}

#[cfg(test)]
mod tests {
    use crate::scene::Drawing;

    use super::*;

    const ALL: [Shape; 11] = [
        Shape::Ring,
        Shape::Disc,
        Shape::Square,
        Shape::Diamond,
        Shape::Star,
        Shape::Cross,
        Shape::Triangle,
        Shape::Bar,
        Shape::Wedge,
        Shape::Brackets,
        Shape::Polygon(6),
    ];

    #[test]
    fn drawn_box_is_centred_and_has_its_extent() {
        for shape in ALL.into_iter().chain([Shape::Text("Boje 7".into())]) {
            let extent = extent(&shape, 30.0);
            let bounds = path(&shape, 30.0, extent, 2.0).bounding_box();
            assert!((bounds.width() - extent.0).abs() < 1e-3, "{shape:?}: {bounds:?} {extent:?}");
            assert!((bounds.height() - extent.1).abs() < 1e-3, "{shape:?}");
            assert!(bounds.center().to_vec2().hypot() < 1e-3, "{shape:?}: {:?}", bounds.center());
        }
    }

    /// Five parts across: line 1, hole 3, line 1, and a gap of 1. Source: `[ISO8596]`.
    #[test]
    fn an_open_ring_has_its_proportions_and_its_gap_on_the_side_it_names() {
        for (side, towards) in Direction::ALL.into_iter().zip([(0.0, -1.0), (1.0, 0.0), (0.0, 1.0), (-1.0, 0.0)]) {
            let ring = path(&Shape::OpenRing(side), 50.0, (50.0, 50.0), 2.0);
            let inked = |along: f64, across: f64| {
                let (x, y) = towards;
                ring.winding(Point::new(x * along - y * across, y * along + x * across)) != 0
            };
            assert!([-4.9, 0.0, 4.9].iter().all(|&across| !inked(20.0, across)), "{side:?}");
            assert!(inked(20.0, 5.1) && inked(20.0, -5.1), "{side:?}");
            assert!(inked(-15.1, 0.0) && inked(-24.9, 0.0) && !inked(-14.9, 0.0) && !inked(-25.1, 0.0), "{side:?}");
        }
    }

    #[test]
    fn the_longer_side_is_the_size() {
        for shape in ALL {
            let (width, height) = extent(&shape, 30.0);
            assert!((width.max(height) - 30.0).abs() < 1e-9, "{shape:?}");
        }
    }

    #[test]
    fn outer_outlines_wind_the_same_way_and_lines_have_their_width() {
        for shape in ALL {
            assert!(0.0 < path(&shape, 30.0, extent(&shape, 30.0), 2.0).area(), "{shape:?}");
        }
        // Area of a ring by the circle formula; of a square band by squares.
        let area = |shape| path(&shape, 30.0, (30.0, 30.0), 2.0).area();
        assert!((area(Shape::Ring) - std::f64::consts::PI * (225.0 - 169.0)).abs() < 0.01);
        assert!((area(Shape::Square) - (900.0 - 676.0)).abs() < 1e-9);
        let diamond_side = 30.0 / std::f64::consts::SQRT_2;
        assert!((area(Shape::Diamond) - (diamond_side.powi(2) - (diamond_side - 4.0).powi(2))).abs() < 1e-9);
    }

    /// Distances by plane geometry: the L has a notch, and its square hole lets through what stands behind.
    #[test]
    fn a_drawing_hides_its_ink_and_a_rim_and_not_its_holes() {
        let outline = BezPath::from_svg("M-0.5 -0.5H0.1V0.1H0.5V0.5H-0.5ZM-0.4 -0.4V0H-0.1V-0.4Z").unwrap();
        let drawing = Shape::Drawing(std::sync::Arc::new(Drawing { name: "l".into(), outline, extent: (1.0, 1.0) }));
        let area = silhouette(&drawing, 40.0, (40.0, 40.0), 1.2);
        let hides = |x: f64, y: f64| area.winding(Point::new(x, y)) != 0;
        assert!(hides(-20.0 - 1.1, 0.0) && !hides(-20.0 - 1.3, 0.0));
        assert!(hides(4.0 + 1.1, -5.0) && !hides(4.0 + 1.3, -5.0) && hides(15.0, 4.0 - 1.1) && !hides(15.0, 4.0 - 1.3));
        // The corner of the notch, and the ink beside it.
        assert!(hides(4.5, 3.5) && hides(0.0, 10.0) && hides(10.0, 10.0) && hides(-3.9, -10.0));
        assert!(!hides(-10.0, -8.0) && hides(-4.0 + 0.1, -8.0) && !hides(-4.0 - 0.1, -8.0));
    }

    #[test]
    fn thinned_shapes_keep_their_box_and_the_share_that_is_promised() {
        for share in [0.2, 0.6, 0.95] {
            for shape in ALL.into_iter().chain([Shape::Text("Boje 7".into())]) {
                let extent = extent(&shape, 30.0);
                let (whole, thin) = (path(&shape, 30.0, extent, 2.0), thinned(&shape, 30.0, extent, 2.0, share));
                assert_eq!(thin.bounding_box(), whole.bounding_box(), "{shape:?}");
                let left = thin.area() / whole.area();
                match shape {
                    // By similar figures: areas go with the square of lengths.
                    Shape::Disc | Shape::Wedge | Shape::Bar | Shape::Polygon(_) => {
                        assert!((left - share).abs() < 1e-4, "{shape:?} {left}")
                    }
                    Shape::Text(_) => assert_eq!(thin, whole),
                    // Two strips of length l and width w that cross, or meet at their ends, cover w (2 l - w).
                    Shape::Cross | Shape::Brackets => {
                        let length = if shape == Shape::Cross { 30.0 } else { 6.0 };
                        let strips = |w: f64| w * (2.0 * length - w);
                        assert!((left - strips(2.0 * share) / strips(2.0)).abs() < 1e-9, "{shape:?} {left}");
                    }
                    // Around an inscribed circle of radius d: the hole is the same figure, 1 - w/d as large.
                    _ => {
                        let solid = path(&shape, 30.0, extent, 40.0).area();
                        let depth = 1.0 - (1.0 - whole.area() / solid).sqrt();
                        let hole = 1.0 - share * depth;
                        assert!((thin.area() / solid - (1.0 - hole * hole)).abs() < 1e-4, "{shape:?} {left}");
                    }
                }
            }
        }
    }

    #[test]
    fn letters_by_themselves_cover_what_the_line_covers() {
        let line = "Boje g7";
        let whole = path(&Shape::Text(line.into()), 10.0, (0.0, 0.0), 1.0);
        let middle = line_box(line).scale_from_origin(10.0).center().to_vec2();
        let parts: BezPath = letters(line)
            .iter()
            .flat_map(|letter| {
                let own = path(&Shape::Text(letter.character.to_string()), 10.0, (0.0, 0.0), 1.0);
                let to = letter.area.scale_from_origin(10.0).center().to_vec2() - middle;
                (Affine::translate(to) * own).into_iter().collect::<Vec<_>>()
            })
            .collect();
        assert!((whole.area() - parts.area()).abs() < 1e-6);
        let (a, b) = (whole.bounding_box(), parts.bounding_box());
        assert!((a.origin() - b.origin()).hypot() < 1e-6 && (a.size() - b.size()).to_vec2().hypot() < 1e-6, "{a} {b}");
        assert_eq!(letters(line).iter().map(|l| l.character).collect::<String>(), "Bojeg7");
        assert_eq!((missing("Boje ж"), missing(line)), (Some('ж'), None));
    }

    #[test]
    fn a_line_wider_than_its_shape_makes_it_solid() {
        assert!((path(&Shape::Square, 30.0, (30.0, 30.0), 40.0).area() - 900.0).abs() < 1e-9);
    }
}
