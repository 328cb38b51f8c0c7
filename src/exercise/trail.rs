//! `trail`: a path whose depth changes all along it, followed by eye from bead to bead.

use crate::diagnostics::Place;
use crate::scene::{At, Depth, Size};
use crate::units::Mm;

use super::ramp::Ramp;

/// The parameters of a `trail` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Trail {
    /// The path on the page.
    pub path: TrailPath,
    /// Depths along the path, at least two: spread evenly by length from its start to its end; on a polyline with as
    /// many depths as points, one at each point. A loop returns to its first depth by itself.
    pub depths: Vec<Ramp<Depth>>,
    /// Width of the line.
    pub weight: Mm,
    /// How many beads sit on the path, its ends included; 0 for none, else at least 2.
    pub beads: u32,
    /// The size of a bead.
    pub bead_size: Size,
    /// Whether the beads at the two ends carry watch marks.
    pub watch: bool,
    /// How many times to follow the path, for the words.
    pub rounds: u32,
    /// Where the `[trail]` table is written.
    pub place: Place,
}

/// The path of a trail, in mm from the middle of the art field.
#[derive(Debug, Clone, PartialEq)]
pub enum TrailPath {
    /// A straight line at any angle.
    Line {
        /// Its start.
        from: At,
        /// Its end.
        to: At,
    },
    /// A wave about a straight line.
    Wave {
        /// Its start.
        from: At,
        /// Its end.
        to: At,
        /// How many whole waves.
        waves: u32,
        /// From crest to trough.
        height: Mm,
    },
    /// A spiral about the middle of the field, from its outer to its inner end.
    Spiral {
        /// How many turns.
        turns: u32,
        /// Radius at the start.
        outer: Mm,
        /// Radius at the end.
        inner: Mm,
    },
    /// An oval about the middle of the field, clockwise from its top, back to its start.
    Loop {
        /// Its width.
        width: Mm,
        /// Its height.
        height: Mm,
    },
    /// Straight pieces from point to point.
    Polyline {
        /// At least two points.
        points: Vec<At>,
    },
}
