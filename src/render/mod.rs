//! Room `render`.
