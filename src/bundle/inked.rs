//! The inks of an edition, solved from its glasses, medium, ground and the wishes of the author.

use std::sync::Arc;

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
    /// Solves the inks of editions, each kind of inks once.
    pub fn of_all<'a>(editions: impl Iterator<Item = &'a Edition>) -> Vec<Arc<Self>> {
        let mut known: Vec<(&Edition, Arc<Self>)> = Vec::new();
        for edition in editions {
            let same = known.iter().find(|(other, _)| has_same_inks(other, edition));
            let inked = same.map_or_else(|| Arc::new(Self::of(edition)), |(_, inked)| Arc::clone(inked));
            known.push((edition, inked));
        }
        known.into_iter().map(|(_, inked)| inked).collect()
    }

    /// Solves the inks of an edition. The same edition has the same inks, always.
    pub fn of(edition: &Edition) -> Self {
        let (glasses, colour) = (&edition.glasses, &edition.colour);
        Self {
            plan: solve_inks(glasses, &colour.medium, edition.ground, &colour.wishes),
            views: Views::new(glasses, &colour.medium),
        }
    }
}

/// Whether two editions have the same inks: all that they are solved from is the same.
pub fn has_same_inks(one: &Edition, other: &Edition) -> bool {
    one.ground == other.ground
        && one.glasses == other.glasses
        && one.colour.wishes == other.colour.wishes
        && one.colour.medium == other.colour.medium
}
