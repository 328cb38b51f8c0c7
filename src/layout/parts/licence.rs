//! A part that has no sheets yet.

use crate::layout::compose::Composer;
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

/// No sheets yet.
pub(crate) fn drafts(_: &mut Composer<'_>, _: &Grid, _: &Book<'_>) -> Vec<Draft> {
    Vec::new()
}
