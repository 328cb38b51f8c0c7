//! All integration tests, as one program.

mod render_vector;
