//! The inks of an edition, solved from its glasses, medium, ground and the wishes of the author.

use crate::colour::{InkPlan, Views, solve_inks};
use crate::spec::Edition;

/// An edition's inks, and what each eye sees through its glasses.
#[derive(Debug, Clone, PartialEq)]
pub struct Inked {
    /// The inks, judged.
    pub plan: InkPlan,
    /// What each eye sees of any colour of the medium.
    pub views: Views,
}

impl Inked {
    /// Solves the inks of an edition. The same edition has the same inks, always.
    pub fn of(edition: &Edition) -> Self {
        let (glasses, colour) = (&edition.glasses, &edition.colour);
        Self {
            plan: solve_inks(glasses, &colour.medium, edition.ground, &colour.wishes),
            views: Views::new(glasses, &colour.medium),
        }
    }
}
