//! Integration tests: what the rooms do together, seen from outside.

mod render_png;
