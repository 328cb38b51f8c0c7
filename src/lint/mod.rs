//! Room `lint`.
