//! Room `cli`.
