//! depthpress: TOML specs in, graded sets of two-colour (red/cyan) anaglyph exercise pages out, as PDF, SVG and PNG.
//!
//! The data walks one way: `spec` → `exercise` → `scene` → `solve` → `layout` → `render` → `bundle`.
//!
//! Out of scope: these are practice pages. Nothing here tests eyes, diagnoses or treats.

#![cfg_attr(
    test,
    allow(
        clippy::float_cmp,
        clippy::disallowed_methods,
        clippy::cast_possible_truncation,
        reason = "tests compare with literals and may use the standard library's mathematics as a second opinion"
    )
)]

pub mod artwork;
pub mod bundle;
pub mod chance;
pub mod cli;
pub mod colour;
pub mod diagnostics;
pub mod exercise;
pub mod language;
pub mod layout;
pub mod lint;
pub mod optics;
pub mod outline;
pub mod plan;
pub mod render;
pub mod scene;
pub mod solve;
pub mod spec;
pub mod units;
