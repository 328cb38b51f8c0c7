//! What the solver refuses, as data; the wording is in one place, the way to a [`Diagnostic`].

use super::dots::DotProblem;
use crate::diagnostics::{Diagnostic, Place, Severity};
use crate::optics::Viewer;
use crate::scene::Side;
use crate::units::{Angle, Mm, PrismDioptre, plain};

/// One refusal.
#[derive(Debug, Clone, PartialEq)]
pub struct SolveProblem {
    /// The id of the feature; empty where the viewer itself is at fault.
    pub feature: String,
    /// Where the author asked for it.
    pub place: Option<Place>,
    /// What is wrong.
    pub kind: ProblemKind,
}

/// What is wrong with a depth, a place, a size or the viewer.
#[derive(Debug, Clone, PartialEq)]
pub enum ProblemKind {
    /// The parallax is at or past parallel eyes for the smallest ipd of the audience.
    PastParallel {
        /// The parallax asked for, with the base in it.
        parallax: Mm,
        /// The horizontal base: toward positive.
        base: PrismDioptre,
        /// The viewing distance.
        distance: Mm,
        /// The limit.
        smallest_ipd: Mm,
    },
    /// A place toward the reader at or behind the eyes.
    BehindEyes {
        /// Distance from the page asked for.
        amount: Mm,
        /// The limit.
        distance: Mm,
    },
    /// A disparity that no place has.
    TooMuchDisparity {
        /// The disparity asked for.
        amount: Angle,
        /// Its side.
        side: Side,
        /// The limit.
        limit: Angle,
    },
    /// A share of a range that is not known.
    NoRange {
        /// The share asked for, of 1.
        share: f64,
        /// Its side.
        side: Side,
    },
    /// An amount of depth below 0.
    NegativeAmount,
    /// A size or line width of 0 or less.
    NoExtent {
        /// The size on the page.
        length: Mm,
    },
    /// A path of fewer than two points.
    ShortPath {
        /// How many it has.
        points: usize,
    },
    /// A field of dots that cannot be.
    Dots(DotProblem),
    /// A number that is not finite, or a share outside 0 to 1.
    NotFinite,
    /// A viewer whose distance and ipds are not finite, greater than 0 and in order.
    BadViewer {
        /// The viewer.
        viewer: Viewer,
    },
}

impl ProblemKind {
    /// Stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            ProblemKind::PastParallel { .. } => "E-PAST-PARALLEL",
            ProblemKind::BehindEyes { .. } | ProblemKind::TooMuchDisparity { .. } => "E-DEPTH-RANGE",
            ProblemKind::NoRange { .. } => "E-NO-RANGE",
            ProblemKind::NegativeAmount => "E-DEPTH-SIGN",
            ProblemKind::NoExtent { .. } => "E-NO-EXTENT",
            ProblemKind::ShortPath { .. } => "E-SHORT-PATH",
            ProblemKind::Dots(problem) => problem.code(),
            ProblemKind::NotFinite => "E-NOT-FINITE",
            ProblemKind::BadViewer { .. } => "E-VIEWER",
        }
    }

    /// What is wrong, and one way out.
    fn words(&self) -> (String, String) {
        match self {
            ProblemKind::PastParallel { parallax, base, distance, smallest_ipd } => {
                let demand = |mm: &Mm| 100.0 * mm.0 / distance.0;
                let (seen, limit) = (plain(parallax.0, 3), plain(smallest_ipd.0, 3));
                let with_base = match base.0 {
                    0.0 => String::new(),
                    pd if pd < 0.0 => format!(", with the base of `{}` pd away", plain(-pd, 2)),
                    pd => format!(", with the base of `{}` pd toward", plain(pd, 2)),
                };
                // What the author writes counts from the base.
                let room = demand(smallest_ipd) + base.0;
                (
                    format!(
                        "parallax of `{seen}` mm away (`{}` pd{with_base}) turns the eyes to parallel or past it: it \
                         must stay below `{limit}` mm (`{}` pd), the smallest ipd of the audience",
                        plain(demand(parallax), 2),
                        plain(demand(smallest_ipd), 2),
                    ),
                    if 0.0 < room {
                        format!("ask for less than `{} pd away`", plain(room, 2))
                    } else {
                        "set a smaller `base`".to_owned()
                    },
                )
            }
            ProblemKind::BehindEyes { amount, distance } => (
                format!(
                    "`{}` mm toward the reader is at or behind the eyes: it must stay below the viewing distance of \
                     `{}` mm",
                    plain(amount.0, 3),
                    plain(distance.0, 3),
                ),
                format!("ask for less than `{} mm toward`", plain(distance.0, 3)),
            ),
            ProblemKind::TooMuchDisparity { amount, side, limit } => (
                format!(
                    "disparity of `{}` deg {} has no place: it must stay below `{}` deg at this distance and ipd",
                    plain(amount.to_degrees(), 3),
                    side.name(),
                    plain(limit.to_degrees(), 3),
                ),
                "ask for a smaller disparity, or write the depth as a place or in pd".to_owned(),
            ),
            ProblemKind::NoRange { share, side } => (
                format!(
                    "`{} %` of the range {} has no meaning: no range is known",
                    plain(share * 100.0, 2),
                    side.name()
                ),
                "give `[viewer]` the reserves `toward` and `away`, or name `norms` to stand in for them".to_owned(),
            ),
            ProblemKind::NegativeAmount => (
                "an amount of depth is below `0`: the side says which way it goes".to_owned(),
                "drop the sign and write `toward` or `away`".to_owned(),
            ),
            ProblemKind::NoExtent { length } => (
                format!("a size or line width is `{}` mm on the page: it must be above `0` mm", plain(length.0, 6)),
                "ask for a larger size or line width".to_owned(),
            ),
            ProblemKind::ShortPath { points } => (
                format!("a path has `{points}` points: it needs at least `2`"),
                "give the path a start and an end".to_owned(),
            ),
            ProblemKind::Dots(problem) => problem.words(),
            ProblemKind::NotFinite => (
                "a depth, place or size is not a finite number on the page".to_owned(),
                "ask for a smaller number".to_owned(),
            ),
            ProblemKind::BadViewer { viewer } => (
                format!(
                    "distance `{}` mm and ipds `{}`, `{}`, `{}` mm (smallest, own, largest) must be above `0` mm and \
                     in order",
                    viewer.distance.0, viewer.ipd_range.0.0, viewer.ipd.0, viewer.ipd_range.1.0,
                ),
                "let `ipd_range` hold `ipd` between its two values".to_owned(),
            ),
        }
    }
}

impl From<SolveProblem> for Diagnostic {
    fn from(problem: SolveProblem) -> Self {
        let (message, help) = problem.kind.words();
        let message = if problem.feature.is_empty() { message } else { format!("`{}`: {message}", problem.feature) };
        Diagnostic {
            severity: Severity::Error,
            code: problem.kind.code(),
            place: problem.place,
            message,
            label: String::new(),
            help,
            replacement: None,
        }
    }
}
