//! Renderers: a finished [`Sheet`](crate::layout::sheet::Sheet) in, the bytes of one format out. None of them knows a
//! spec, computes an offset, picks a colour or sees another renderer.

pub mod png;
