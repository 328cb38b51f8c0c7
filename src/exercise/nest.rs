//! `nest`: targets inside a drawn box or corridor in true two-eye perspective, so that outline, size and overlap agree
//! with the depth and make it easier to see.

use crate::diagnostics::Place;
use crate::scene::Depth;
use crate::units::Mm;

use super::ramp::Ramp;
use super::target::Target;

/// The parameters of a `nest` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Nest {
    /// The drawn room.
    pub room: Room,
    /// The targets in it, at least one. Their places and sizes are measured in the room, at their own depth, unless
    /// they ask for a constant angle.
    pub targets: Vec<Target>,
}

/// A `[room]`: a box or corridor that runs straight away from the eyes.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// How it is drawn.
    pub form: RoomForm,
    /// Its width in space.
    pub width: Mm,
    /// Its height in space.
    pub height: Mm,
    /// Depth of its front opening.
    pub front: Ramp<Depth>,
    /// Depth of its back wall.
    pub back: Ramp<Depth>,
    /// How many frames stand along it, front and back included; at least 2.
    pub frames: u32,
    /// Width of its lines on the page.
    pub weight: Mm,
    /// Where it is written.
    pub place: Place,
}

/// How a [`Room`] is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RoomForm {
    /// Frames joined by the four long edges.
    Box,
    /// Frames alone, standing free one behind the other.
    Frames,
    /// Frames joined by the long edges, with a line along the middle of floor and ceiling.
    Corridor,
}
