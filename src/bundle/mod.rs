//! Room `bundle`.

pub mod load;
