//! A target as every kind uses it: a shape at a depth, with its watch marks and its lock frame.

use crate::diagnostics::Place;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Shape, Size};
use crate::units::Mm;

use super::ramp::Ramp;

/// A `[[target]]` of an exercise file.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// Names the target in words, alt text and report; unique in its file.
    pub label: String,
    /// Its outline.
    pub shape: Shape,
    /// The longer side of its bounding box (text: the height of a capital letter).
    pub size: Ramp<Size>,
    /// Its middle, from the middle of the art field. With [`Scaling::ConstantObject`] this is measured in the target's
    /// own plane in space.
    pub at: At,
    /// How deep it stands.
    pub depth: Ramp<Depth>,
    /// Who sees it.
    pub eyes: Eyes,
    /// How its size is measured.
    pub scaling: Scaling,
    /// Width of its lines.
    pub weight: Mm,
    /// Whether it carries watch marks, one for each eye.
    pub watch: bool,
    /// Whether a lock frame rides with it.
    pub lock: bool,
    /// Where it is written.
    pub place: Place,
}

impl Target {
    /// The feature of this target on a level, named by its label.
    pub fn feature(&self, level: u32) -> Feature {
        Feature {
            id: self.label.clone(),
            role: Role::Target,
            eyes: self.eyes,
            form: Form::Shape {
                shape: self.shape.clone(),
                at: self.at,
                size: self.size.at(level),
                weight: self.weight,
                depth: self.depth.at(level),
            },
            scaling: self.scaling,
            companions: Companions { watch: self.watch, lock: self.lock, number: None },
            solid: false,
            place: Some(self.place),
        }
    }

    /// The levels of its ramps.
    pub fn levels(&self) -> impl Iterator<Item = u32> {
        self.size.levels().into_iter().chain(self.depth.levels())
    }
}
