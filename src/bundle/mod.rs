//! Room `bundle`.
