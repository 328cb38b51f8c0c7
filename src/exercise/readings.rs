//! Numbers on a page that depend on the viewer. A kind asks for them; whoever knows the viewer works them out.

use crate::units::Mm;

/// What a page should tell of one of its targets.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    /// The id of the target.
    pub target: String,
    /// What is told.
    pub form: ReadingsForm,
}

/// What [`Readings`] tell.
#[derive(Debug, Clone, PartialEq)]
pub enum ReadingsForm {
    /// A table: from each of these distances, the demand and the place where the target should seem to stand.
    Distances(Vec<Mm>),
    /// A ruler in true size: how far from the page the target should seem to stand, over the ipds of the audience.
    Ruler,
}
