//! Kinds that show the author's own composition: a picture in layers, and shapes and lines set freely.

pub mod layers;
pub mod scene;
