//! What stands where: the features of one page with their intended depth, and which eye sees them.
//!
//! A scene knows depth, never offsets or colours. Its frame is millimetres with the origin at the middle of the art
//! field, x to the right, y down. The eyes look straight at the middle of the field.

mod effort;

pub use effort::{Effort, Strand};

use std::sync::Arc;

use crate::diagnostics::Place;
use crate::units::{Angle, Mm, PrismDioptre};

/// The side of the page on which something stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// In front of the page: crossed, base-out demand.
    Toward,
    /// Behind the page: uncrossed, base-in demand.
    Away,
}

impl Side {
    /// The other side.
    pub const fn other(self) -> Self {
        match self {
            Side::Toward => Side::Away,
            Side::Away => Side::Toward,
        }
    }

    /// The side word of specs and messages.
    pub const fn name(self) -> &'static str {
        match self {
            Side::Toward => "toward",
            Side::Away => "away",
        }
    }
}

/// An intended depth, as the author wrote it. Amounts are never negative: the side says which way.
#[derive(Debug, Clone, PartialEq)]
pub enum Depth {
    /// On the page.
    Page,
    /// Distance from the page, along the line of sight.
    Place(Mm, Side),
    /// Demand relative to the page.
    Demand(PrismDioptre, Side),
    /// Exact vergence difference against the page.
    Disparity(Angle, Side),
    /// Parallax on the page.
    Parallax(Mm, Side),
    /// A share, 0 to 1, of what the reader's eyes may be asked on this side.
    Range(f64, Side),
    /// Between two depths, even in demand: 0 is the first, 1 the second.
    Between(Box<(Depth, Depth)>, f64),
    /// So many times a depth, even in demand; below 0 it is mirrored at the page. For steps that a kind counts.
    Times(Box<Depth>, f64),
}

impl Depth {
    /// The side of the page; `None` on the page. Between two depths: the side of the nearer end of the blend.
    pub fn side(&self) -> Option<Side> {
        match self {
            Depth::Page => None,
            Depth::Place(Mm(amount), side)
            | Depth::Demand(PrismDioptre(amount), side)
            | Depth::Parallax(Mm(amount), side) => (0.0 < *amount).then_some(*side),
            Depth::Range(share, side) => (0.0 < *share).then_some(*side),
            Depth::Disparity(angle, side) => (0.0 < angle.to_radians()).then_some(*side),
            Depth::Times(depth, times) if 0.0 < *times => depth.side(),
            Depth::Times(depth, times) => depth.side().filter(|_| *times < 0.0).map(Side::other),
            Depth::Between(ends, share) => {
                let (near_end, far_end) = if *share < 0.5 { (&ends.0, &ends.1) } else { (&ends.1, &ends.0) };
                near_end.side().or(far_end.side())
            }
        }
    }
}

/// Who sees a feature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Eyes {
    /// The left eye alone.
    Left,
    /// The right eye alone.
    Right,
    /// Both, each its own half-image.
    Both,
}

/// One eye.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Eye {
    /// The left eye.
    Left,
    /// The right eye.
    Right,
}

impl Eye {
    /// Both, in the order of drawing.
    pub const ALL: [Eye; 2] = [Eye::Left, Eye::Right];
}

impl Eyes {
    /// Whether this eye is among them.
    pub fn include(self, eye: Eye) -> bool {
        match self {
            Eyes::Left => eye == Eye::Left,
            Eyes::Right => eye == Eye::Right,
            Eyes::Both => true,
        }
    }
}

/// A place in the frame of the scene.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct At {
    /// To the right of the middle of the art field.
    pub x: Mm,
    /// Below the middle of the art field.
    pub y: Mm,
}

/// In which plane places and sizes are measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scaling {
    /// On the page: the drawn size stays, so the angle at the eye is constant.
    ConstantAngle,
    /// At the feature's own place in space, in true perspective: what stands nearer is drawn larger.
    ConstantObject,
}

/// A size as written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Size {
    /// A length.
    Length(Mm),
    /// The angle that it fills at the viewing distance.
    Angle(Angle),
}

/// The outline of a target. All are drawn so that the longer side of their bounding box is the target's size.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A circle line.
    Ring,
    /// A solid circle.
    Disc,
    /// An upright square line.
    Square,
    /// A square line standing on a corner.
    Diamond,
    /// A five-pointed star line.
    Star,
    /// Two crossing bars.
    Cross,
    /// A triangle line, point up.
    Triangle,
    /// A short flat bar: the watch mark of the left eye.
    Bar,
    /// A small solid triangle, point up: the watch mark of the right eye.
    Wedge,
    /// Four corner brackets: the lock frame.
    Brackets,
    /// A ring with a gap towards one side, in the proportions of ISO 8596: the line and the gap are a fifth of the outer
    /// diameter, whatever its weight.
    OpenRing(Direction),
    /// A solid regular polygon of so many sides, 3 to 12, standing on a side.
    Polygon(u32),
    /// The author's own drawing, solid.
    Drawing(Arc<Drawing>),
    /// The contour of another shape, filled as in a field of dots, as a line of its weight: half of the line lies outside.
    Outline(Box<Shape>),
    /// Letters or words in the page's bold face; the size is the height of a capital letter.
    Text(String),
}

/// One of the four sides of something upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Direction {
    /// Up on the page.
    Up,
    /// To the right.
    Right,
    /// Down.
    Down,
    /// To the left.
    Left,
}

impl Direction {
    /// All four, clockwise from the top.
    pub const ALL: [Direction; 4] = [Direction::Up, Direction::Right, Direction::Down, Direction::Left];

    /// The word of specs and pages.
    pub const fn name(self) -> &'static str {
        match self {
            Direction::Up => "up",
            Direction::Right => "right",
            Direction::Down => "down",
            Direction::Left => "left",
        }
    }
}

/// An outline drawn by the author: filled contours under the non-zero rule, about the middle of their bounding box,
/// whose longer side is 1.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// What it is called in words, alt text and report.
    pub name: String,
    /// Its contours.
    pub outline: kurbo::BezPath,
    /// Width and height of its bounding box, the longer of them 1.
    pub extent: (f64, f64),
}

/// Several outlines by the author in one frame, to be set at depths of their own.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// What it is called in words, alt text and report.
    pub name: String,
    /// Width and height of the bounding box of all parts together, the longer of them 1.
    pub extent: (f64, f64),
    /// From the back to the front of the drawing.
    pub parts: Vec<Part>,
}

/// One outline of a [`Picture`].
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// Names it, unique in its picture.
    pub id: String,
    /// What it looks like.
    pub drawing: Arc<Drawing>,
    /// The middle of its bounding box, from the middle of the picture, in units of the picture's longer side.
    pub at: (f64, f64),
    /// The longer side of its bounding box, in the same units; above 0.
    pub size: f64,
}

/// A point of a path, with its own depth.
#[derive(Debug, Clone, PartialEq)]
pub struct Vertex {
    /// Where.
    pub at: At,
    /// How deep.
    pub depth: Depth,
}

/// What a feature looks like.
#[derive(Debug, Clone, PartialEq)]
pub enum Form {
    /// A shape standing upright at one depth.
    Shape {
        /// The outline.
        shape: Shape,
        /// The middle of its bounding box.
        at: At,
        /// The longer side of its bounding box (text: height of a capital).
        size: Size,
        /// The width of its lines, measured like the size.
        weight: Mm,
        /// Its depth.
        depth: Depth,
    },
    /// A line through points, each with its own depth.
    Path {
        /// At least two points.
        vertices: Vec<Vertex>,
        /// Whether the last point joins the first.
        closed: bool,
        /// Whether the line bends smoothly through its points.
        smooth: bool,
        /// The width of the line on the page.
        weight: Mm,
    },
    /// A scale on the page, with its numbers.
    Scale(Scale),
    /// Straight strokes with square ends, all at one depth: scales, ticks, posts, borders.
    Strokes {
        /// Each from one end to the other.
        strokes: Vec<(At, At)>,
        /// Their width, measured like their places.
        weight: Mm,
        /// Their depth.
        depth: Depth,
    },
    /// A field of random dots in which depth alone makes a figure.
    Dots(Box<DotField>),
    /// A form of another kind moved sideways by half the parallax of a depth, so that each eye finds it where one
    /// half-image of something at that depth would lie: sideways places then tell one eye alone nothing.
    Aside {
        /// What is moved.
        form: Box<Form>,
        /// The depth: away moves it to the right, toward to the left.
        by: Depth,
    },
}

/// A scale on the page: even ticks about a zero in its middle. The solver adds the numbers, in prism dioptres on one side
/// and in millimetres on the other: what they are depends on the viewing distance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    /// Its zero.
    pub zero: At,
    /// Whether it runs from left to right; else from top to bottom.
    pub is_level: bool,
    /// From tick to tick.
    pub step: Mm,
    /// How many ticks stand on each side of the zero.
    pub ticks: u32,
}

/// A random-dot stereogram: bars of one height in rows, at random places, so that each eye alone sees an even field.
///
/// Construction after Julesz 1960: both eyes get the same random dots, moved apart by the depth of what they belong to;
/// strips that one eye alone sees are filled with fresh dots. Source: `[Julesz1960]`.
#[derive(Debug, Clone, PartialEq)]
pub struct DotField {
    /// The middle of the field.
    pub at: At,
    /// Its width on the page.
    pub width: Mm,
    /// Its height on the page, a whole number of dots after rounding down.
    pub height: Mm,
    /// The side of a dot.
    pub dot: Size,
    /// The share of the field that dots cover, above 0 and below 1.
    pub density: f64,
    /// The correlation between what the two eyes get, 0 to 1: 1 gives both the same dots.
    pub correlation: f64,
    /// The depth of the ground.
    pub ground: Relief,
    /// Figures in front of or behind the ground; a later one covers an earlier one.
    pub figures: Vec<DotFigure>,
    /// Names its draws.
    pub key: String,
}

/// The depth of a field, place by place.
#[derive(Debug, Clone, PartialEq)]
pub enum Relief {
    /// The same everywhere.
    Flat(Depth),
    /// Between two depths, even in demand.
    Between {
        /// Where the share is 0.
        from: Depth,
        /// Where it is 1.
        to: Depth,
        /// The share at each place.
        share: Surface,
    },
}

/// A share from 0 to 1 over a field. `u` and `v` run from 0 at its left and upper edge to 1 at the other.
#[derive(Debug, Clone, PartialEq)]
pub enum Surface {
    /// Rises evenly towards one edge, where it is 1.
    Tilt(Direction),
    /// Upright ridges that rise smoothly and fall again: a raised cosine about each middle.
    Ridges {
        /// The middle of each ridge, as `u`.
        middles: Vec<f64>,
        /// The width of each at its foot, as a share of the field's width.
        width: f64,
    },
    /// Smooth waves from left to right or from top to bottom, beginning and ending at 0.
    Waves {
        /// How many whole waves.
        count: u32,
        /// Whether they follow one another downwards instead of to the right.
        down: bool,
    },
    /// A grid of shares, row by row from the top, read off between its points in straight lines.
    Grid(Arc<Grid>),
}

/// A grid of shares.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// What it is called in words, alt text and report.
    pub name: String,
    /// Points in a row.
    pub columns: usize,
    /// The shares, 0 to 1, row by row from the top.
    pub shares: Vec<f64>,
}

/// A figure that dots alone make.
#[derive(Debug, Clone, PartialEq)]
pub struct DotFigure {
    /// Unique on its page.
    pub id: String,
    /// Its outline, filled without its holes where it is a line.
    pub shape: Shape,
    /// The middle of its bounding box.
    pub at: At,
    /// The longer side of its bounding box.
    pub size: Size,
    /// Its depth.
    pub depth: Relief,
}

/// What rides with a target, at the target's own depth where nothing else is said.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Companions {
    /// Watch marks: a bar for the left eye alone and a wedge for the right eye alone.
    pub watch: bool,
    /// A lock frame of four corner brackets.
    pub lock: bool,
    /// A number below it.
    pub number: Option<u32>,
    /// Its demand in these words below that, flat on the page.
    pub demand: Option<DemandWords>,
}

/// How a demand is worded where it is drawn: the words of a language without their number, which only the solver knows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DemandWords {
    /// At no demand: "on the page".
    pub page: String,
    /// Before and after the amount of a demand toward.
    pub toward: [String; 2],
    /// Before and after the amount of a demand away.
    pub away: [String; 2],
    /// What stands in an amount before its decimals.
    pub decimal_mark: &'static str,
}

/// What a feature is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Looked at; listed in the report.
    Target,
    /// A station along a trail; listed in the report.
    Bead,
    /// A trail: a path followed by eye; listed in the report with its points.
    Trail,
    /// A small one-eye mark that shows whether its eye takes part.
    Watch,
    /// A frame that rides at a target's depth and helps the eyes to stay on it.
    Lock,
    /// A number beside a target, at the target's depth.
    Number,
    /// A line that makes depth easier to see: the edge of a room or corridor.
    Guide,
    /// A mark that depth is judged against: a scale, a frame, the border of a field of dots.
    Reference,
    /// A field of random dots; listed in the report with its figures.
    Field,
}

/// One thing on the page.
#[derive(Debug, Clone, PartialEq)]
pub struct Feature {
    /// Unique on its page.
    pub id: String,
    /// What it is for.
    pub role: Role,
    /// Who sees it.
    pub eyes: Eyes,
    /// What it looks like and where it stands.
    pub form: Form,
    /// How places and sizes are measured.
    pub scaling: Scaling,
    /// What rides with it; the solver adds these as features of their own.
    pub companions: Companions,
    /// Whether it hides what stands behind it.
    pub solid: bool,
    /// Where the author asked for it.
    pub place: Option<Place>,
}

/// The art of one page.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Scene {
    /// In the order of looking.
    pub features: Vec<Feature>,
}
