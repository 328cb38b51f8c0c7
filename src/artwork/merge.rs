//! Many filled paths → one outline under the non-zero rule, about the middle of its box.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::float::simplify::SimplifyShape;
use kurbo::{Affine, BezPath, Point, Rect, Shape as _};

use crate::spec::picture::Refusal;

use super::MOST_POINTS;

/// The most pairs of straight pieces of an outline at one height: bounds the work of joining it, here and wherever the
/// page cuts it. Design choice.
const MOST_PAIRS: usize = 20_000_000;
/// The most places where pieces may cross. Design choice: crossings become corners.
const MOST_CROSSINGS: usize = 100_000;
/// Places are kept in this part of the longer side. Design choice: finer than any printer at the largest size.
const STEP: f64 = 1e-6;
/// The least share of the longer side that the other side may have. Design choice: below it nothing can be seen.
const THINNEST: f64 = 1e-4;

/// Closed contours, each a list of corners.
type Contours = Vec<Vec<[f64; 2]>>;

/// Filled areas while they are collected.
#[derive(Debug, Default)]
pub(super) struct Ink {
    contours: Contours,
    points: usize,
}

impl Ink {
    /// Adds what a path fills under a rule; curves become straight pieces that stay within `accuracy`.
    pub(super) fn fill(&mut self, path: &BezPath, rule: FillRule, accuracy: f64) -> Result<(), Refusal> {
        let contours = flatten(path, accuracy, MOST_POINTS - self.points.min(MOST_POINTS))?;
        check_density(&contours)?;
        let shapes = contours.simplify_shape(rule);
        self.add(shapes.into_iter().flatten().collect())
    }

    fn add(&mut self, contours: Contours) -> Result<(), Refusal> {
        self.points += contours.iter().map(Vec::len).sum::<usize>();
        self.contours.extend(contours);
        if MOST_POINTS < self.points { Err(too_many()) } else { Ok(()) }
    }

    /// All areas as one: outer contours one way round, holes the other; `None` where nothing is filled.
    pub(super) fn joined(self) -> Result<Option<BezPath>, Refusal> {
        check_density(&self.contours)?;
        let shapes = self.contours.simplify_shape(FillRule::NonZero);
        let mut path = BezPath::new();
        for contour in shapes.iter().flatten() {
            for (i, &[x, y]) in contour.iter().enumerate() {
                if i == 0 { path.move_to((x, y)) } else { path.line_to((x, y)) }
            }
            path.close_path();
        }
        Ok((!path.elements().is_empty()).then(|| if path.area() < 0.0 { path.reverse_subpaths() } else { path }))
    }
}

/// An outline moved and scaled so that the middle of its box is the origin and its longer side 1, with its extent.
pub(super) fn unit(path: &BezPath, what: &str) -> Result<(BezPath, (f64, f64)), Refusal> {
    let bounds = path.bounding_box();
    let longer = bounds.width().max(bounds.height());
    if !bounds.is_finite() || longer <= 0.0 || bounds.width().min(bounds.height()) < THINNEST * longer {
        return Err(Refusal::new(format!("{what} is too thin to be seen"), "give its lines a width"));
    }
    let unit = Affine::scale(1.0 / longer) * Affine::translate(-bounds.center().to_vec2());
    let path = rounded(&(unit * path));
    Ok((path, (bounds.width() / longer, bounds.height() / longer)))
}

/// The box around all paths; `None` without any.
pub(super) fn bounds<'a>(paths: impl Iterator<Item = &'a BezPath>) -> Option<Rect> {
    paths.map(kurbo::Shape::bounding_box).reduce(|a, b| a.union(b))
}

fn rounded(path: &BezPath) -> BezPath {
    let round = |p: Point| Point::new((p.x / STEP).round() * STEP, (p.y / STEP).round() * STEP);
    let mut path = path.clone();
    for element in path.elements_mut() {
        if let kurbo::PathEl::MoveTo(p) | kurbo::PathEl::LineTo(p) = element {
            *p = round(*p);
        }
    }
    path
}

/// The corners of a path, at most `most`.
fn flatten(path: &BezPath, accuracy: f64, most: usize) -> Result<Contours, Refusal> {
    let (mut contours, mut count): (Contours, usize) = (Vec::new(), 0);
    kurbo::flatten(path.elements().iter().copied(), accuracy, |element| {
        count += 1;
        match element {
            _ if most < count => {}
            kurbo::PathEl::MoveTo(p) => contours.push(vec![[p.x, p.y]]),
            kurbo::PathEl::LineTo(p) => contours.last_mut().into_iter().for_each(|c| c.push([p.x, p.y])),
            _ => {}
        }
    });
    if most < count { Err(too_many()) } else { Ok(contours) }
}

fn too_many() -> Refusal {
    let message = format!("has more than {MOST_POINTS} corners once its curves are straight pieces");
    Refusal::new(message, "simplify the paths")
}

/// A straight piece, its upper end first.
#[derive(Clone, Copy)]
struct Piece {
    top: Point,
    foot: Point,
}

/// Refuses contours that would take very long to join: a sweep downwards counts the pieces that share a height, and
/// the places where they cross.
fn check_density(contours: &Contours) -> Result<(), Refusal> {
    let mut pieces: Vec<Piece> = contours.iter().flat_map(|contour| pieces_of(contour)).collect();
    pieces.sort_by(|a, b| a.top.y.total_cmp(&b.top.y));
    let (mut open, mut pairs, mut crossings): (Vec<Piece>, usize, usize) = (Vec::new(), 0, 0);
    for piece in pieces {
        open.retain(|other| piece.top.y < other.foot.y);
        pairs += open.len();
        crossings += open.iter().filter(|other| cross(&piece, other)).count();
        if MOST_PAIRS < pairs || MOST_CROSSINGS < crossings {
            let message = "is too dense: its lines run beside and across one another too often".to_owned();
            return Err(Refusal::new(message, "draw fewer lines, or simplify the paths"));
        }
        open.push(piece);
    }
    Ok(())
}

fn pieces_of(contour: &[[f64; 2]]) -> impl Iterator<Item = Piece> {
    let next = contour.iter().cycle().skip(1);
    contour.iter().zip(next).map(|(&[ax, ay], &[bx, by])| {
        let (a, b) = (Point::new(ax, ay), Point::new(bx, by));
        if a.y <= b.y { Piece { top: a, foot: b } } else { Piece { top: b, foot: a } }
    })
}

/// Whether two pieces cross inside both.
fn cross(a: &Piece, b: &Piece) -> bool {
    let side = |piece: &Piece, p: Point| (piece.foot - piece.top).cross(p - piece.top);
    side(a, b.top) * side(a, b.foot) < 0.0 && side(b, a.top) * side(b, a.foot) < 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn area(paths: &[(&str, FillRule)]) -> f64 {
        let mut ink = Ink::default();
        for (data, rule) in paths {
            ink.fill(&BezPath::from_svg(data).unwrap(), *rule, 0.01).unwrap();
        }
        ink.joined().unwrap().map_or(0.0, |path| path.area())
    }

    /// Areas by counting unit squares.
    #[test]
    fn areas_join_whichever_way_round_they_run() {
        let (right, left) = ("M0 0H4V4H0Z", "M2 0V4H6V0Z");
        for pair in [[right, left], [left, right]] {
            assert!((area(&pair.map(|data| (data, FillRule::NonZero))) - 24.0).abs() < 1e-6);
        }
        let nested = "M0 0H6V6H0Z M1 1H5V5H1Z";
        assert!((area(&[(nested, FillRule::NonZero)]) - 36.0).abs() < 1e-6);
        assert!((area(&[(nested, FillRule::EvenOdd)]) - 20.0).abs() < 1e-6);
        // A hole stays a hole under another path, and is closed by what lies over it.
        assert!((area(&[(nested, FillRule::EvenOdd), ("M1 1H3V5H1Z", FillRule::NonZero)]) - 28.0).abs() < 1e-6);
        assert!(area(&[("M0 0H4", FillRule::NonZero)]).abs() < 1e-9);
    }

    #[test]
    fn a_web_of_lines_is_refused_in_time() {
        // A star polygon of many points crosses itself nearly n²/2 times.
        let point = |i: u32| {
            let angle = f64::from(i) * 2.399_963;
            format!("L{:.3} {:.3}", 100.0 * libm::cos(angle), 100.0 * libm::sin(angle))
        };
        let data = format!("M100 0{}Z", (1..20_000).map(point).collect::<String>());
        let refused = Ink::default().fill(&BezPath::from_svg(&data).unwrap(), FillRule::EvenOdd, 0.01);
        assert!(refused.unwrap_err().message.starts_with("is too dense"));
    }
}
