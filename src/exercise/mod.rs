//! Kinds of exercise: one file each, with its parameters and its words; spec → scene.
//!
//! A kind knows depth, never offsets or colours.

pub mod hold;
pub mod jump;
pub mod nest;
pub mod ramp;
pub mod target;
pub mod trail;
pub mod words;

use crate::diagnostics::Place;
use crate::scene::Scene;

use words::{AuthorWords, Words};

/// One exercise of the set, read and checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Exercise {
    /// The stem of its file name, unique in the set.
    pub id: String,
    /// Its title.
    pub title: String,
    /// The author's own words.
    pub words: AuthorWords,
    /// What it draws.
    pub body: Body,
    /// Its `[exercise]` header.
    pub place: Place,
}

/// The parameters of an exercise, by kind.
#[derive(Debug, Clone, PartialEq)]
pub enum Body {
    /// See [`hold`].
    Hold(hold::Hold),
    /// See [`jump`].
    Jump(jump::Jump),
    /// See [`trail`].
    Trail(trail::Trail),
    /// See [`nest`].
    Nest(nest::Nest),
}

/// One page of an exercise: one level.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// Unique in the book: the exercise id, with the level where there is more than one.
    pub id: String,
    /// The kind's id.
    pub kind: &'static str,
    /// The exercise title.
    pub title: String,
    /// From 1.
    pub level: u32,
    /// How many levels the exercise has.
    pub levels: u32,
    /// What stands where.
    pub scene: Scene,
    /// What is said.
    pub words: Words,
}

impl Body {
    /// The id of its kind.
    pub fn kind(&self) -> &'static str {
        match self {
            Body::Hold(_) => "hold",
            Body::Jump(_) => "jump",
            Body::Trail(_) => "trail",
            Body::Nest(_) => "nest",
        }
    }

    fn scene(&self, level: u32) -> Scene {
        match self {
            Body::Hold(hold) => hold.scene(level),
            Body::Jump(jump) => jump.scene(level),
            Body::Trail(trail) => trail.scene(level),
            Body::Nest(nest) => nest.scene(level),
        }
    }

    fn words(&self, level: u32) -> Words {
        match self {
            Body::Hold(hold) => hold.words(level),
            Body::Jump(jump) => jump.words(level),
            Body::Trail(trail) => trail.words(level),
            Body::Nest(nest) => nest.words(level),
        }
    }
}

/// Every page of the exercises, one a level, in the order of the book.
pub fn pages(exercises: &[Exercise]) -> Vec<Page> {
    let of_one = |exercise: &Exercise| {
        let levels = exercise.levels();
        (1..=levels).map(|level| exercise.page(level, levels)).collect::<Vec<_>>()
    };
    exercises.iter().flat_map(of_one).collect()
}

impl Exercise {
    /// stand-in
    pub fn levels(&self) -> u32 {
        1
    }

    fn page(&self, level: u32, levels: u32) -> Page {
        Page {
            id: if levels == 1 { self.id.clone() } else { format!("{}-{level}", self.id) },
            kind: self.body.kind(),
            title: self.title.clone(),
            level,
            levels,
            scene: self.body.scene(level),
            words: self.body.words(level).with(&self.words),
        }
    }
}
