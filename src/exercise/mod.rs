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

/// One page a level, in book order. Stand-in.
pub fn pages(exercises: &[Exercise]) -> Vec<Page> {
    exercises
        .iter()
        .map(|exercise| Page {
            id: exercise.id.clone(),
            kind: "hold",
            title: exercise.title.clone(),
            level: 1,
            levels: 1,
            scene: Scene::default(),
            words: Words::default(),
        })
        .collect()
}
