//! Scene + viewer → half-images and demands. The one place where an intended depth becomes an offset.
//!
//! Nothing here draws or knows a colour.

use crate::diagnostics::Place;
use crate::scene::{Eyes, Role, Shape};
use crate::units::{Angle, Mm, PrismDioptre};

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

/// One eye.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Eye {
    /// The left eye.
    Left,
    /// The right eye.
    Right,
}

/// Where an eye's half-image of a point stands: half the parallax to the left of its cyclopean place for the left
/// eye, to the right for the right eye.
pub fn half_x(x: f64, parallax: f64, eye: Eye) -> f64 {
    match eye {
        Eye::Left => x - parallax / 2.0,
        Eye::Right => x + parallax / 2.0,
    }
}
