//! Published tables, as numbers. No reasoning here; each table names its source and its licence.

pub(super) mod displays;
pub(super) mod lamps;
pub(super) mod observer;
pub(super) mod solids;
