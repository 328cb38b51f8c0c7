//! A field of random dots: what each eye gets of it, row by row.

use super::Stand;
use super::depth::Solver;
use super::problem::ProblemKind;
use crate::scene::DotField;

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

/// Solves a field.
pub(super) fn solve(_field: &DotField, _solver: &Solver) -> Result<(SolvedDots, Stand), Vec<ProblemKind>> {
    Err(vec![ProblemKind::NotFinite])
}
