//! What is refused of a field of dots, as data and in words.

use crate::units::{Mm, plain};

/// What is wrong with a field of dots.
#[derive(Debug, Clone, PartialEq)]
pub enum DotProblem {
    /// A share of dots that leaves no field: nothing, or all.
    Density {
        /// The share asked for.
        density: f64,
    },
    /// A correlation outside 0 to 1.
    Correlation {
        /// The correlation asked for.
        correlation: f64,
    },
    /// A field of too few dots across or down.
    Small {
        /// Its width.
        width: Mm,
        /// Its height.
        height: Mm,
        /// The side of a dot.
        dot: Mm,
        /// The fewest dots.
        fewest: f64,
    },
    /// A field of more dots than memory is kept for.
    Count {
        /// How many it would have, or its rows where there are more of these.
        dots: f64,
        /// The limit.
        most: f64,
    },
    /// A surface whose parallax changes so fast along a row that dots would change their order.
    Steep {
        /// The figure; empty for the ground.
        figure: String,
        /// The change, mm a mm.
        slope: f64,
        /// The limit.
        limit: f64,
    },
    /// Two figures of a field with one id.
    Twice {
        /// The id.
        id: String,
    },
    /// A figure that reaches past the edge of its field, for one eye at least.
    Outside {
        /// The figure.
        id: String,
        /// How far.
        past: Mm,
    },
}

impl DotProblem {
    /// Stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            DotProblem::Density { .. } => "E-DOT-DENSITY",
            DotProblem::Correlation { .. } => "E-DOT-CORRELATION",
            DotProblem::Small { .. } => "E-DOT-FIELD",
            DotProblem::Count { .. } => "E-DOT-COUNT",
            DotProblem::Steep { .. } => "E-DOT-STEEP",
            DotProblem::Twice { .. } | DotProblem::Outside { .. } => "E-DOT-FIGURE",
        }
    }

    /// What is wrong, and one way out.
    pub(in crate::solve) fn words(&self) -> (String, String) {
        match self {
            DotProblem::Density { density } => (
                format!("dots cover `{}` of the field: it must be above `0` and below `1`", plain(*density, 4)),
                "ask for a share such as `0.5`".to_owned(),
            ),
            DotProblem::Correlation { correlation } => (
                format!("a correlation of `{}` between the eyes: it must be from `0` to `1`", plain(*correlation, 4)),
                "leave it at `1` for the same dots in both eyes".to_owned(),
            ),
            DotProblem::Small { width, height, dot, fewest } => (
                format!(
                    "a field of `{}` x `{}` mm is too small for dots of `{}` mm: it needs at least `{fewest}` of them \
                     across and down",
                    plain(width.0, 3),
                    plain(height.0, 3),
                    plain(dot.0, 3),
                ),
                "make the field larger or the dots smaller".to_owned(),
            ),
            DotProblem::Count { dots, most } => (
                format!("a field of `{}` dots: it must stay at or below `{most}`", plain(*dots, 0)),
                "make the dots larger or the field smaller".to_owned(),
            ),
            DotProblem::Steep { figure, slope, limit } => (
                format!(
                    "the parallax of {} changes by `{}` mm a mm along a row: it must stay below `{}`, or dots would \
                     change their order",
                    if figure.is_empty() { "the ground".to_owned() } else { format!("the figure `{figure}`") },
                    plain(*slope, 3),
                    plain(*limit, 3),
                ),
                "bring its depths together, or give them more room from left to right".to_owned(),
            ),
            DotProblem::Twice { id } => {
                (format!("two figures are called `{id}`"), "give each figure a name of its own".to_owned())
            }
            DotProblem::Outside { id, past } => (
                format!(
                    "the figure `{id}` reaches `{}` mm past the edge of its field for one eye or both",
                    plain(past.0, 3)
                ),
                "move it inwards, make it smaller, or bring it nearer to the page".to_owned(),
            ),
        }
    }
}
