//! Room `bundle`: the only room that reads and writes files.

pub mod load;
