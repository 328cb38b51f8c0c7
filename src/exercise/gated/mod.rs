//! Kinds that a professional sets: they ask the eyes for unequal work, and are refused without `[gate]` in `set.toml`.

pub mod contrast;
pub mod shared;
