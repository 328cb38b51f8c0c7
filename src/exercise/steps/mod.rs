//! Kinds that lead the eyes from one depth to the next.

pub mod jump;
pub mod nest;
pub mod trail;
