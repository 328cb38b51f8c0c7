//! Scene + viewer → half-images and demands. The one place where an intended depth becomes an offset.
//!
//! Nothing here draws or knows a colour. Parallax, places and sizes leave this room in whole millionths of a
//! millimetre, so that the last bit of a formula never reaches a page.

mod asked;
mod companions;
mod depth;
mod dots;
mod problem;
mod scale;

pub use asked::{asked, is_looked_at, strand_name};
pub use depth::{stand, stand_of};
pub use dots::{DotProblem, DotRow, SolvedDots, SolvedFigure};
pub use problem::{ProblemKind, SolveProblem};

use std::sync::Arc;

use crate::diagnostics::Place;
use crate::optics::{Viewer, Viewing};
use crate::outline;
use crate::scene::{At, Depth, Eye, Eyes, Feature, Form, Role, Scaling, Scene, Shape, Size, Vertex};
use crate::units::{Angle, Mm, PrismDioptre};

use depth::{Solver, quantise};

/// How one point stands in space, in every unit that a page or a report prints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stand {
    /// Page parallax, `x_R - x_L`: negative toward.
    pub parallax: Mm,
    /// Demand against the page: positive toward.
    pub demand: PrismDioptre,
    /// Exact vergence difference against the page: positive toward.
    pub disparity: Angle,
    /// Eye plane to the place where it stands; `None` at or past parallel eyes.
    pub place: Option<Mm>,
    /// The same for the smallest and the largest ipd of the audience.
    pub place_range: (Option<Mm>, Option<Mm>),
}

/// Demands smaller than this read as "on the page", pd: they print as 0.
pub const FLAT: f64 = 0.005;

impl Stand {
    /// The demand counted from a base, pd: toward positive; exactly 0 where it reads as "on the page".
    pub fn demand_from(&self, base: PrismDioptre) -> f64 {
        let demand = self.demand.0 - base.0;
        if demand.abs() < FLAT { 0.0 } else { demand }
    }
}

/// A point of a solved path: its cyclopean place on the page and its parallax.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathPoint {
    /// To the right of the middle of the art field, mm.
    pub x: f64,
    /// Below the middle of the art field, mm.
    pub y: f64,
    /// Page parallax, mm.
    pub parallax: f64,
}

/// What is drawn, at its size on the page.
#[derive(Debug, Clone, PartialEq)]
pub enum SolvedForm {
    /// A shape at one parallax.
    Shape {
        /// The outline.
        shape: Shape,
        /// The longer side of its bounding box on the page (text: height of a capital), mm.
        size: f64,
        /// Width and height of its drawn bounding box on the page, mm.
        extent: (f64, f64),
        /// Width of its lines on the page, mm.
        weight: f64,
    },
    /// A path whose parallax may change along it.
    Path {
        /// At least two points.
        points: Vec<PathPoint>,
        /// Whether the last point joins the first.
        closed: bool,
        /// Whether the line bends smoothly through its points.
        smooth: bool,
        /// Width of the line on the page, mm.
        weight: f64,
    },
    /// Straight strokes with square ends at one parallax.
    Strokes {
        /// The cyclopean ends of each, mm from the middle of the art field.
        strokes: Vec<[(f64, f64); 2]>,
        /// Their width on the page, mm.
        weight: f64,
    },
    /// A field of random dots.
    Dots(Arc<SolvedDots>),
}

/// A feature with its offsets.
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedFeature {
    /// Unique on its page.
    pub id: String,
    /// What it is for.
    pub role: Role,
    /// Who sees it.
    pub eyes: Eyes,
    /// What is drawn.
    pub form: SolvedForm,
    /// Middle between its two half-images, in mm from the middle of the art field. For a path: the middle of its
    /// bounding box.
    pub at: (f64, f64),
    /// How it stands. For a path: its first point.
    pub stand: Stand,
    /// Whether it hides what stands behind it.
    pub solid: bool,
    /// Where the author asked for it.
    pub place: Option<Place>,
}

/// Where the half-image of one eye lies, of a feature whose middle is `x`: x - p/2 for the left eye, x + p/2 for the
/// right. A feature that one eye alone sees lies where that eye's half-image would.
pub fn half_x(x: f64, parallax: f64, eye: Eye) -> f64 {
    match eye {
        Eye::Left => x - parallax / 2.0,
        Eye::Right => x + parallax / 2.0,
    }
}

/// Solves a scene for a viewer: one solved feature for each feature, in order, or every problem of all of them.
///
/// A depth is refused where it would turn the eyes of the smallest ipd of the audience to parallel or past it, where
/// it lies at or behind the reader's eyes, and wherever a number is not one; nothing is clamped.
pub fn solve(scene: &Scene, viewer: &Viewer) -> Result<Vec<SolvedFeature>, Vec<SolveProblem>> {
    let problem = |kind| SolveProblem { feature: String::new(), place: None, kind };
    let solver = Solver::new(viewer).map_err(|kind| vec![problem(kind)])?;
    let page = solver.parallax(&Depth::Page).map_err(|kind| vec![problem(kind)])?;
    let page = solver.stand(page).ok_or_else(|| vec![problem(ProblemKind::NotFinite)])?;
    let (mut solved, mut problems) = (Vec::new(), Vec::new());
    for feature in &scene.features {
        match solve_feature(feature, &solver) {
            Ok(target) => {
                let companions = companions::of(&target, &feature.companions, page, solver.base_demand);
                let numbers = scale::numbers(&target, &feature.form, viewer.distance);
                solved.push(target);
                solved.extend(companions.into_iter().chain(numbers));
            }
            Err(kinds) => problems.extend(kinds.into_iter().map(|kind| SolveProblem {
                feature: feature.id.clone(),
                place: feature.place,
                kind,
            })),
        }
    }
    if problems.is_empty() { Ok(solved) } else { Err(problems) }
}

/// Solves one feature.
fn solve_feature(feature: &Feature, solver: &Solver) -> Result<SolvedFeature, Vec<ProblemKind>> {
    let (form, at, stand) = solve_form(&feature.form, feature.scaling, solver)?;
    Ok(SolvedFeature {
        id: feature.id.clone(),
        role: feature.role,
        eyes: feature.eyes,
        form,
        at,
        stand,
        solid: feature.solid,
        place: feature.place,
    })
}

/// Solves a form: what is drawn, its middle on the page, and how it stands.
fn solve_form(
    form: &Form,
    scaling: Scaling,
    solver: &Solver,
) -> Result<(SolvedForm, (f64, f64), Stand), Vec<ProblemKind>> {
    Ok(match form {
        Form::Shape { shape, at, size, weight, depth } => {
            let point = solve_point(*at, depth, scaling, solver).map_err(|kind| vec![kind])?;
            let drawn = |mm: f64| length_on_page(mm * point.magnification);
            let size = length_of(*size, &solver.own).and_then(drawn).map_err(|kind| vec![kind])?;
            let weight = drawn(weight.0).map_err(|kind| vec![kind])?;
            let extent = outline::extent(shape, size);
            let form = SolvedForm::Shape { shape: shape.clone(), size, extent, weight };
            (form, (point.on_page.x, point.on_page.y), point.stand)
        }
        Form::Scale(scale) => {
            let (ticks, weight) = scale::ticks(scale);
            solve_strokes(&ticks, weight, &Depth::Page, Scaling::ConstantAngle, solver).map_err(|kind| vec![kind])?
        }
        Form::Strokes { strokes, weight, depth } => {
            solve_strokes(strokes, *weight, depth, scaling, solver).map_err(|kind| vec![kind])?
        }
        Form::Dots(field) => {
            let (dots, stand) = dots::solve(field, solver)?;
            (SolvedForm::Dots(Arc::new(dots)), (field.at.x.0, field.at.y.0), stand)
        }
        Form::Path { vertices, closed, smooth, weight } => {
            let (points, stand) = solve_path(vertices, scaling, solver)?;
            let weight = length_on_page(weight.0).map_err(|kind| vec![kind])?;
            let at = middle_of(&points);
            (SolvedForm::Path { points, closed: *closed, smooth: *smooth, weight }, at, stand)
        }
        Form::Aside { form, by } => {
            let (form, at, stand) = solve_form(form, scaling, solver)?;
            let by = solver.half(by).map_err(|kind| vec![kind])?;
            let x = quantise(at.0 + by).ok_or_else(|| vec![ProblemKind::NotFinite])?;
            (moved(form, by), (x, at.1), stand)
        }
    })
}

/// A form with its places moved to the right; a shape has no places of its own.
fn moved(form: SolvedForm, by: f64) -> SolvedForm {
    match form {
        SolvedForm::Shape { .. } => form,
        SolvedForm::Dots(dots) => {
            let mut dots = Arc::unwrap_or_clone(dots);
            dots.figures.iter_mut().for_each(|figure| figure.at.0 += by);
            SolvedForm::Dots(Arc::new(dots))
        }
        SolvedForm::Strokes { strokes, weight } => {
            let strokes = strokes.into_iter().map(|ends| ends.map(|(x, y)| (x + by, y))).collect();
            SolvedForm::Strokes { strokes, weight }
        }
        SolvedForm::Path { points, closed, smooth, weight } => {
            let points = points.into_iter().map(|p| PathPoint { x: p.x + by, ..p }).collect();
            SolvedForm::Path { points, closed, smooth, weight }
        }
    }
}

/// Solves strokes: all at one depth, in true perspective where the scaling asks for it.
fn solve_strokes(
    strokes: &[(At, At)],
    weight: Mm,
    depth: &Depth,
    scaling: Scaling,
    solver: &Solver,
) -> Result<(SolvedForm, (f64, f64), Stand), ProblemKind> {
    if strokes.is_empty() {
        return Err(ProblemKind::ShortPath { points: 0 });
    }
    let origin = solve_point(At::default(), depth, scaling, solver)?;
    let end = |at: At| {
        let on = |mm: f64| quantise(mm * origin.magnification).ok_or(ProblemKind::NotFinite);
        Ok((on(at.x.0)?, on(at.y.0)?))
    };
    let solved = strokes.iter().map(|&(from, to)| Ok([end(from)?, end(to)?])).collect::<Result<Vec<_>, _>>()?;
    let flat = |&(x, y): &(f64, f64)| PathPoint { x, y, parallax: origin.on_page.parallax };
    let at = middle_of(&solved.iter().flatten().map(flat).collect::<Vec<_>>());
    let weight = length_on_page(weight.0 * origin.magnification)?;
    Ok((SolvedForm::Strokes { strokes: solved, weight }, at, origin.stand))
}

/// A point with its depth solved.
struct SolvedPoint {
    on_page: PathPoint,
    stand: Stand,
    /// Drawn size against written size.
    magnification: f64,
}

/// Solves one point. In true perspective its cyclopean place is (X D/Z, Y D/Z), which is the midpoint of the two
/// half-images of the point in space.
fn solve_point(at: At, depth: &Depth, scaling: Scaling, solver: &Solver) -> Result<SolvedPoint, ProblemKind> {
    let intended = solver.intended(depth)?;
    let parallax = solver.drawn(intended)?;
    let stand = solver.stand(parallax).ok_or(ProblemKind::NotFinite)?;
    let magnification = match scaling {
        Scaling::ConstantAngle => 1.0,
        // A base moves the whole scene and changes no size in it.
        Scaling::ConstantObject => solver.own.magnification(intended).ok_or(ProblemKind::NotFinite)?,
    };
    let x = quantise(at.x.0 * magnification).ok_or(ProblemKind::NotFinite)?;
    let y = quantise(at.y.0 * magnification).ok_or(ProblemKind::NotFinite)?;
    Ok(SolvedPoint { on_page: PathPoint { x, y, parallax: parallax.0 }, stand, magnification })
}

/// Solves the points of a path, each at its own depth; its stand is that of the first.
fn solve_path(
    vertices: &[Vertex],
    scaling: Scaling,
    solver: &Solver,
) -> Result<(Vec<PathPoint>, Stand), Vec<ProblemKind>> {
    let (mut points, mut problems, mut first) = (Vec::with_capacity(vertices.len()), Vec::new(), None);
    for vertex in vertices {
        match solve_point(vertex.at, &vertex.depth, scaling, solver) {
            Ok(point) => {
                first.get_or_insert(point.stand);
                points.push(point.on_page);
            }
            Err(kind) => problems.push(kind),
        }
    }
    match first {
        _ if !problems.is_empty() => Err(first_of_each(problems)),
        Some(stand) if 2 <= points.len() => Ok((points, stand)),
        _ => Err(vec![ProblemKind::ShortPath { points: vertices.len() }]),
    }
}

/// One problem of each code: a sampled path that strays would repeat itself at every point.
fn first_of_each(problems: Vec<ProblemKind>) -> Vec<ProblemKind> {
    let mut kept: Vec<ProblemKind> = Vec::new();
    for problem in problems {
        if kept.iter().all(|k| k.code() != problem.code()) {
            kept.push(problem);
        }
    }
    kept
}

/// A written size as a length in the plane where it is measured.
fn length_of(size: Size, viewing: &Viewing) -> Result<f64, ProblemKind> {
    match size {
        Size::Length(mm) => Ok(mm.0),
        Size::Angle(angle) => viewing.length_of_angle(angle).map(|mm| mm.0).ok_or(ProblemKind::NotFinite),
    }
}

/// A drawn size or line width: finite and greater than 0.
fn length_on_page(mm: f64) -> Result<f64, ProblemKind> {
    match quantise(mm) {
        Some(length) if 0.0 < length => Ok(length),
        Some(length) => Err(ProblemKind::NoExtent { length: Mm(length) }),
        None => Err(ProblemKind::NotFinite),
    }
}

/// The middle of the bounding box of the cyclopean points.
fn middle_of(points: &[PathPoint]) -> (f64, f64) {
    let middle = |value: fn(&PathPoint) -> f64| {
        let low = points.iter().map(value).fold(f64::INFINITY, f64::min);
        let high = points.iter().map(value).fold(f64::NEG_INFINITY, f64::max);
        quantise((low + high) / 2.0).unwrap_or_default()
    };
    (middle(|p| p.x), middle(|p| p.y))
}

#[cfg(test)]
mod tests;
