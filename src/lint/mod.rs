//! Checks over the solved pages. Stand-in.

use crate::diagnostics::Diagnostic;
use crate::optics::Viewer;
use crate::solve::SolvedFeature;

/// What the checks look at.
#[derive(Debug)]
pub struct Input<'a> {
    /// Who looks.
    pub viewer: &'a Viewer,
    /// Page ids with their features.
    pub pages: Vec<(&'a str, &'a [SolvedFeature])>,
}

/// One finding and the page it is about.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// Id of the page.
    pub page: String,
    /// The problem.
    pub diagnostic: Diagnostic,
}

/// Runs every check.
pub fn check(input: &Input) -> Vec<Finding> {
    let _ = input;
    Vec::new()
}
