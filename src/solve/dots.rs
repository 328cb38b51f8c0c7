//! A field of random dots: what each eye gets of it, row by row.
//!
//! A field is drawn as without a base; then each eye's rows move by half of it, frame and all.
//!
//! Here stand the field as a whole, its surfaces and what is refused; how a row is drawn stands in `row`.
//!
//! A row of a density d has dots of width w whose middles are a Poisson process of intensity λ; a place is left bare
//! where no middle lies within w/2 of it, which has the chance v = exp(-λ w), and so λ = -ln(1 - d) / w. Source: derived.
//!
//! For a correlation c below 1 a share s of the dots is each eye's own. At matched places both eyes are bare with the
//! chance exp(-λ(1-s)w) exp(-λsw)² = v^(1+s), and the correlation coefficient of their cover is
//! (v^(1+s) - v²) / (v(1-v)) = (v^s - v) / (1-v); so v^s = c(1-v) + v. Source: derived.

mod outline;
mod problem;
mod profile;
mod row;

use super::depth::{Solver, quantise};
use super::problem::ProblemKind;
use super::{Stand, half_x, length_of, length_on_page};
use crate::chance::Dice;
use crate::scene::{DotField, DotFigure, Eye};
use crate::units::Mm;

pub use problem::DotProblem;

use outline::Outline;
use profile::{Area, Profile};
use row::{Chain, Draws};

/// The fewest dots across a field and down it (design choice: fewer make no field).
const FEWEST: f64 = 4.0;
/// The most dots of a field: they take about 100 bytes each on the way to a page.
const MOST: f64 = 400_000.0;
/// Parallax must change by less than this along a row, mm a mm. At 2 the dots of one eye would fall on one place and
/// beyond it change their order (derived); the rest is a margin (design choice).
const STEEPEST: f64 = 1.5;
/// Overhang that counts as none: the grid of the solver, mm.
const GRID: f64 = 1e-6;
/// The points that a report lists: their distance, mm, and the most of them.
const POINT_STEP: f64 = 4.0;
const MOST_POINTS: f64 = 1500.0;

/// A solved field of random dots.
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedDots {
    /// Width and height of the field on the page, mm.
    pub extent: (f64, f64),
    /// Height of a row and side of a dot, mm.
    pub dot: f64,
    /// The share of the field that dots cover, for each eye.
    pub density: f64,
    /// The correlation between what the two eyes get.
    pub correlation: f64,
    /// Names its draws.
    pub key: String,
    /// The rows from the top.
    pub rows: Vec<DotRow>,
    /// The figures, in the order of the scene.
    pub figures: Vec<SolvedFigure>,
    /// The nearest and the farthest stand of the ground.
    pub ground: [Stand; 2],
    /// The relief over a grid of the field: `[x, y, parallax]`, mm from the middle of the art field, figures included.
    pub points: Vec<[f64; 3]>,
}

/// The dots of one row, mm from the middle of the art field.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DotRow {
    /// The middle of the row.
    pub y: f64,
    /// What the left eye gets: runs that do not touch, from left to right.
    pub left: Vec<(f64, f64)>,
    /// What the right eye gets.
    pub right: Vec<(f64, f64)>,
}

/// A figure in a field of dots.
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedFigure {
    /// Unique on its page.
    pub id: String,
    /// The middle of its bounding box, mm from the middle of the art field.
    pub at: (f64, f64),
    /// Width and height of its bounding box, mm.
    pub extent: (f64, f64),
    /// Its nearest and its farthest stand.
    pub stands: [Stand; 2],
    /// Where its outline covers each row of the field, from left to right; empty where it does not.
    pub chords: Vec<Vec<(f64, f64)>>,
}

impl SolvedDots {
    /// The ends of the depths of the ground and of each figure.
    pub fn stands(&self) -> impl Iterator<Item = Stand> + '_ {
        self.ground.into_iter().chain(self.figures.iter().flat_map(|figure| figure.stands))
    }

    /// The smallest and the largest parallax, mm.
    pub fn parallax_range(&self) -> (f64, f64) {
        self.stands().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), stand| {
            (low.min(stand.parallax.0), high.max(stand.parallax.0))
        })
    }
}

/// Solves a field; its stand is the nearest one of its ground.
pub(super) fn solve(field: &DotField, solver: &Solver) -> Result<(SolvedDots, Stand), Vec<ProblemKind>> {
    let frame = Frame::new(field, solver)?;
    let ground = Profile::new(&field.ground, frame.area, solver).map_err(|kind| vec![kind])?;
    let figures = figures(field, &frame, solver)?;
    let rows: Vec<Row<'_>> = frame.middles().map(|y| Row { y, chains: chains(&frame, y, &ground, &figures) }).collect();
    check_slopes(&rows, &figures)?;
    let own = own_share(field.density, field.correlation);
    let draws = Draws {
        shared: frame.intensity * (1.0 - own),
        own: frame.intensity * own,
        frame: (frame.area.left - frame.dot / 2.0, frame.area.right() + frame.dot / 2.0),
    };
    let dots = SolvedDots {
        extent: (frame.area.width, frame.area.height),
        dot: frame.dot,
        density: field.density,
        correlation: field.correlation,
        key: field.key.clone(),
        rows: rows.iter().zip(0..).map(|(row, number)| draw_row(row, number, &frame, &draws, &field.key)).collect(),
        figures: figures
            .iter()
            .map(|figure| figure.solved(&frame, solver))
            .collect::<Result<_, _>>()
            .map_err(|kind| vec![kind])?,
        ground: ends(&ground, solver).map_err(|kind| vec![kind])?,
        points: points(&frame, &ground, &figures),
    };
    let dots = on_base(dots, solver).map_err(|kind| vec![kind])?;
    let nearest = dots.ground[0];
    Ok((dots, nearest))
}

/// The rows of each eye moved by half of the base, and the base in the parallax of every point.
fn on_base(mut dots: SolvedDots, solver: &Solver) -> Result<SolvedDots, ProblemKind> {
    let base = solver.drawn(Mm(0.0))?.0;
    for row in &mut dots.rows {
        for (eye, bars) in [(Eye::Left, &mut row.left), (Eye::Right, &mut row.right)] {
            for end in bars.iter_mut().flat_map(|(from, to)| [from, to]) {
                *end = quantise(half_x(*end, base, eye)).ok_or(ProblemKind::NotFinite)?;
            }
        }
    }
    for point in &mut dots.points {
        point[2] = solver.drawn(Mm(point[2]))?.0;
    }
    Ok(dots)
}

/// The share of an eye's dots that are its own: see the module. With no correlation at all it is 1.
fn own_share(density: f64, correlation: f64) -> f64 {
    let bare = 1.0 - density;
    libm::log(correlation * density + bare) / libm::log(bare)
}

/// A field on its page.
struct Frame {
    area: Area,
    /// Height of a row and side of a dot, mm.
    dot: f64,
    rows: u32,
    /// Dots a mm of a row.
    intensity: f64,
}

/// A row before its dots are drawn.
struct Row<'a> {
    /// Its middle, mm.
    y: f64,
    /// Its surfaces from left to right.
    chains: Vec<Chain<'a>>,
}

impl Frame {
    /// Checks the numbers of a field.
    fn new(field: &DotField, solver: &Solver) -> Result<Self, Vec<ProblemKind>> {
        let (density, correlation) = (field.density, field.correlation);
        let mut problems = Vec::new();
        if !(0.0 < density && density < 1.0) {
            problems.push(ProblemKind::Dots(DotProblem::Density { density }));
        }
        if !(0.0..=1.0).contains(&correlation) {
            problems.push(ProblemKind::Dots(DotProblem::Correlation { correlation }));
        }
        let measured = length_of(field.dot, &solver.own).and_then(length_on_page).and_then(|dot| {
            let number = |mm: f64| quantise(mm).ok_or(ProblemKind::NotFinite);
            let (width, height) = (number(field.width.0)?, number(field.height.0)?);
            Ok((dot, width, height, (number(field.at.x.0)?, number(field.at.y.0)?)))
        });
        match measured {
            Err(kind) => problems.push(kind),
            Ok((dot, width, height, _)) if width < FEWEST * dot || height < FEWEST * dot => {
                let (width, height, dot) = (Mm(width), Mm(height), Mm(dot));
                problems.push(ProblemKind::Dots(DotProblem::Small { width, height, dot, fewest: FEWEST }));
            }
            Ok((dot, width, height, at)) if problems.is_empty() => {
                return Self::counted((dot, density), (width, height), at).map_err(|kind| vec![kind]);
            }
            Ok(_) => {}
        }
        Err(problems)
    }

    /// Counts the dots before any is drawn.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "at most `MOST` dots, and so rows")]
    fn counted((dot, density): (f64, f64), (width, height): (f64, f64), at: (f64, f64)) -> Result<Self, ProblemKind> {
        let intensity = -libm::log1p(-density) / dot;
        let rows = ((height + GRID) / dot).floor();
        let dots = rows * width * intensity;
        // A row of next to no dots costs as much as one dot.
        if MOST < dots.max(rows) {
            return Err(ProblemKind::Dots(DotProblem::Count { dots: dots.max(rows), most: MOST }));
        }
        Ok(Self { area: Area::about(at, (width, rows * dot)), dot, rows: rows as u32, intensity })
    }

    /// The middles of the rows from the top, mm.
    fn middles(&self) -> impl Iterator<Item = f64> + '_ {
        (0..self.rows).map(|n| self.area.top + (f64::from(n) + 0.5) * self.dot)
    }
}

/// A figure with its outline and its depth.
struct Figure<'a> {
    id: &'a str,
    at: (f64, f64),
    extent: (f64, f64),
    outline: Outline,
    profile: Profile<'a>,
}

/// The figures of a field, each once and inside it.
fn figures<'a>(field: &'a DotField, frame: &Frame, solver: &Solver) -> Result<Vec<Figure<'a>>, Vec<ProblemKind>> {
    let (mut figures, mut problems): (Vec<Figure<'a>>, Vec<ProblemKind>) = (Vec::new(), Vec::new());
    for figure in &field.figures {
        if figures.iter().any(|known| known.id == figure.id) {
            problems.push(ProblemKind::Dots(DotProblem::Twice { id: figure.id.clone() }));
        }
        match place_figure(figure, frame, solver) {
            Ok(placed) => figures.push(placed),
            Err(kind) => problems.push(kind),
        }
    }
    if problems.is_empty() { Ok(figures) } else { Err(problems) }
}

fn place_figure<'a>(figure: &'a DotFigure, frame: &Frame, solver: &Solver) -> Result<Figure<'a>, ProblemKind> {
    let number = |mm: f64| quantise(mm).ok_or(ProblemKind::NotFinite);
    let at = (number(figure.at.x.0)?, number(figure.at.y.0)?);
    let size = length_of(figure.size, &solver.own).and_then(length_on_page)?;
    let extent = crate::outline::extent(&figure.shape, size);
    let extent = (length_on_page(extent.0)?, length_on_page(extent.1)?);
    let area = Area::about(at, extent);
    let profile = Profile::new(&figure.depth, area, solver)?;
    let (near, far) = profile.range();
    let reach = near.abs().max(far.abs()) / 2.0;
    let field = &frame.area;
    let sides = (field.left - (area.left - reach)).max(area.right() + reach - field.right());
    let past = sides.max(field.top - area.top).max(area.bottom() - field.bottom());
    if GRID < past {
        return Err(ProblemKind::Dots(DotProblem::Outside { id: figure.id.clone(), past: Mm(past) }));
    }
    Ok(Figure { id: &figure.id, at, extent, outline: Outline::new(&figure.shape, size, at), profile })
}

impl Figure<'_> {
    fn solved(&self, frame: &Frame, solver: &Solver) -> Result<SolvedFigure, ProblemKind> {
        let stands = ends(&self.profile, solver)?;
        let chords = frame.middles().map(|y| self.outline.inside(y)).collect();
        Ok(SolvedFigure { id: self.id.to_owned(), at: self.at, extent: self.extent, stands, chords })
    }
}

/// The stretches of a row on their surfaces, from left to right.
fn chains<'a>(frame: &Frame, y: f64, ground: &'a Profile<'a>, figures: &'a [Figure<'a>]) -> Vec<Chain<'a>> {
    let (near, far) = ground.range();
    // As far beyond the frame as the ground moves for either eye.
    let beyond = frame.dot / 2.0 + near.abs().max(far.abs()) / 2.0;
    let inside: Vec<Vec<(f64, f64)>> = figures.iter().map(|figure| figure.outline.inside(y)).collect();
    let parts = row::cut((frame.area.left - beyond, frame.area.right() + beyond), &inside);
    let profile = |surface: usize| surface.checked_sub(1).map_or(ground, |index| &figures[index].profile);
    parts.into_iter().map(|(from, to, surface)| Chain::new((from, to), y, surface, profile(surface))).collect()
}

/// Refuses surfaces that are too steep along a row, each once.
fn check_slopes(rows: &[Row<'_>], figures: &[Figure<'_>]) -> Result<(), Vec<ProblemKind>> {
    let mut steepest = vec![0.0_f64; figures.len() + 1];
    for chain in rows.iter().flat_map(|row| &row.chains) {
        steepest[chain.surface()] = steepest[chain.surface()].max(chain.steepest());
    }
    let names = std::iter::once("").chain(figures.iter().map(|figure| figure.id));
    let problems: Vec<ProblemKind> = names
        .zip(steepest)
        .filter(|(_, slope)| STEEPEST <= *slope)
        .map(|(figure, slope)| DotProblem::Steep { figure: figure.to_owned(), slope, limit: STEEPEST })
        .map(ProblemKind::Dots)
        .collect();
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

/// Draws one row. Its draws hang on its own name, so that no row depends on another.
fn draw_row(row: &Row<'_>, number: u32, frame: &Frame, draws: &Draws, key: &str) -> DotRow {
    let mut dice = Dice::new(&format!("{key}/row/{number}"));
    let [left, right] = row::draw(&row.chains, draws, &mut dice);
    let bars = |middles| row::bars(middles, frame.dot, &frame.area);
    DotRow { y: quantise(row.y).unwrap_or(row.y), left: bars(left), right: bars(right) }
}

/// The nearest and the farthest stand of a surface.
fn ends(profile: &Profile<'_>, solver: &Solver) -> Result<[Stand; 2], ProblemKind> {
    let (near, far) = profile.range();
    let stand = |intended: f64| solver.stand(solver.drawn(Mm(intended))?).ok_or(ProblemKind::NotFinite);
    Ok([stand(near)?, stand(far)?])
}

/// The relief on an even grid, about [`POINT_STEP`] apart.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "at most `MOST_POINTS`")]
fn points(frame: &Frame, ground: &Profile<'_>, figures: &[Figure<'_>]) -> Vec<[f64; 3]> {
    let Area { left, top, width, height } = frame.area;
    let step = POINT_STEP.max((width * height / MOST_POINTS).sqrt());
    let columns = (width / step).floor().clamp(1.0, MOST_POINTS);
    let rows = (height / step).floor().clamp(1.0, (MOST_POINTS / columns).floor());
    let mut points = Vec::new();
    for row in 0..rows as u32 {
        let y = top + (f64::from(row) + 0.5) * height / rows;
        let inside: Vec<Vec<(f64, f64)>> = figures.iter().map(|figure| figure.outline.inside(y)).collect();
        for column in 0..columns as u32 {
            let x = left + (f64::from(column) + 0.5) * width / columns;
            let over = |stretches: &Vec<(f64, f64)>| stretches.iter().any(|&(a, b)| a <= x && x < b);
            let figure = inside.iter().rposition(over).map(|index| &figures[index].profile);
            let parallax = figure.unwrap_or(ground).parallax(x, y);
            points.push([x, y, parallax].map(|value| quantise(value).unwrap_or_default()));
        }
    }
    points
}

#[cfg(test)]
mod tests;
