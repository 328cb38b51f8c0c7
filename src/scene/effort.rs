//! What a page works on, as its kind says it: what the solved art alone cannot tell.
//!
//! Nothing here is a measure; that is made of it, and of the solved art, in the solver.

use crate::units::Seconds;

/// What pages of a kind work on. Pages of one strand rise in difficulty from the first to the last of the book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Strand {
    /// Whether both eyes and the glasses are ready: a look, and no step of any order.
    Check,
    /// One depth is held.
    Hold,
    /// The eyes jump between depths.
    Jump,
    /// The eyes follow a depth that changes bit by bit.
    Smooth,
    /// Small differences of depth are seen.
    Depth,
}

/// What a kind says of the effort of a page.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Effort {
    /// How much drawn lines help to find what stands in depth, 0 (dots alone) to 3; `None` where lines draw everything.
    pub cue: Option<u32>,
    /// How long one depth is held; `None` where the words name no time.
    pub dwell: Option<Seconds>,
}

impl Effort {
    /// The effort of holding each depth for so long.
    pub const fn held(dwell: Seconds) -> Self {
        Self { cue: None, dwell: Some(dwell) }
    }

    /// The effort of finding a figure in dots with so much help.
    pub const fn cued(cue: u32) -> Self {
        Self { cue: Some(cue), dwell: None }
    }
}
