//! Inks: which colour a mark takes so that one eye sees it and the other does not.
//!
//! The walk of light: [`Spectrum`]s of a [`Screen`], or of a lamp on a [`Print`]; the filters of [`Glasses`]; a [`View`]
//! for each eye, a few numbers; and from those the [ink solver](solve_inks). For ideal filters the [eye map](inks) is
//! all of it.
//!
//! Eyes come first, colours last: specs, scenes and the solver speak of left, right and both. Nothing here knows a
//! page or a depth.

mod data;
mod eye_map;
pub mod filter;
pub mod judge;
pub mod lamp;
pub mod null;
pub mod plan;
pub mod print;
pub mod reflectance;
pub mod screen;
mod search;
pub mod space;
pub mod spectrum;
pub mod srgb;
pub mod view;

pub use eye_map::{channels, inks};
pub use filter::{Filter, FilterModel, Glasses};
pub use judge::{EyeReport, Ghost};
pub use lamp::Lamp;
pub use plan::{InkPlan, Pins, Recipes, Role, Trade, Wishes, solve_inks};
pub use print::{Cmyk, Print, Solids};
pub use screen::{NamedScreen, Screen};
pub use space::{Lab, LinearRgb, Xyz};
pub use spectrum::Spectrum;
pub use srgb::Srgb8;
pub use view::{Medium, View, Views};

/// The colour of the empty page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// White: paper, or a white screen page. Marks take light away.
    White,
    /// Black: a screen page. Marks are light.
    Black,
}

/// The colours of one edition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Inks {
    /// Of a mark for the left eye alone.
    pub left: Srgb8,
    /// Of a mark for the right eye alone.
    pub right: Srgb8,
    /// Where marks for both eyes overlap.
    pub both: Srgb8,
    /// Of the empty page.
    pub ground: Srgb8,
    /// Of words and page furniture.
    pub text: Srgb8,
}

impl Ground {
    /// The ground in plain words, as specs and reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            Ground::White => "white",
            Ground::Black => "black",
        }
    }

    /// The colour of the empty page.
    pub const fn colour(self) -> Srgb8 {
        match self {
            Ground::White => Srgb8::WHITE,
            Ground::Black => Srgb8::BLACK,
        }
    }

    /// The other ground.
    pub const fn opposite(self) -> Ground {
        match self {
            Ground::White => Ground::Black,
            Ground::Black => Ground::White,
        }
    }
}
