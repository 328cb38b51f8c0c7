//! `jump`: two or more targets at different depths, looked at in turn along a numbered route.

use crate::diagnostics::Place;
use crate::scene::{At, Depth, Feature, Scene};
use crate::units::{Mm, Seconds};

use super::ramp::Ramp;
use super::target::Target;
use super::words::{self, Words};

/// The parameters of a `jump` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Jump {
    /// The stops in the order of the route: written out as `[[target]]`, or laid out by an arrangement.
    pub stops: Stops,
    /// Whether each stop carries its number in the route.
    pub numbers: bool,
    /// How long to stay at each stop, for the words.
    pub stay: Seconds,
    /// How many rounds, for the words.
    pub rounds: u32,
}

/// Where the stops come from.
#[derive(Debug, Clone, PartialEq)]
pub enum Stops {
    /// Each written out; at least two.
    Listed(Vec<Target>),
    /// Copies of one target, laid out evenly.
    Arranged(Arrangement),
}

/// An `[arrangement]`: copies of one target in a row, a column or a ring, with depths that cycle along the route.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrangement {
    /// The layout.
    pub form: ArrangementForm,
    /// How many stops, at least 2.
    pub count: u32,
    /// Between the middles of neighbours; for a ring: its radius.
    pub spacing: Mm,
    /// The order in which the places are visited, each place from 1 to `count` once. Without one: in the order of the
    /// places (left to right, top to bottom, clockwise from the top).
    pub route: Option<Vec<u32>>,
    /// Depths taken in turn along the places; at least 2.
    pub depths: Vec<Ramp<Depth>>,
    /// The target that is copied; its place is the middle of the arrangement and its depth is not used.
    pub target: Target,
    /// Where it is written.
    pub place: Place,
}

/// The layouts of an [`Arrangement`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ArrangementForm {
    /// Left to right.
    Row,
    /// Top to bottom.
    Column,
    /// Clockwise from the top.
    Ring,
}

impl Jump {
    /// The art of one level: the stops in the order of the route.
    pub fn scene(&self, level: u32) -> Scene {
        let mut features = match &self.stops {
            Stops::Listed(targets) => targets.iter().map(|target| target.feature(level)).collect(),
            Stops::Arranged(arrangement) => arrangement.features(level),
        };
        if self.numbers {
            for (number, feature) in (1..).zip(&mut features) {
                feature.companions.number = Some(number);
            }
        }
        Scene { features }
    }

    /// The words; they are the same on every level.
    pub fn words(&self, _level: u32) -> Words {
        let watch = match &self.stops {
            Stops::Listed(targets) => targets.iter().any(|target| target.watch),
            Stops::Arranged(arrangement) => arrangement.target.watch,
        };
        let (start, next) = if self.numbers {
            ("number 1".to_owned(), "the next number".to_owned())
        } else {
            match &self.stops {
                Stops::Listed(targets) => (format!("“{}”", targets[0].label), format!("“{}”", targets[1].label)),
                Stops::Arranged(_) => ("the first shape".to_owned(), "the next shape".to_owned()),
            }
        };
        Words {
            goal: "Jump from one depth to another and make each stop single.".to_owned(),
            setup: String::new(),
            steps: vec![
                format!("Look at {start} until it is single and clear."),
                format!("Jump to {next}. Wait until that one is single."),
                words::check_step(
                    watch,
                    &format!("Stay for {} at each stop and check that", words::seconds(self.stay)),
                    "are there.",
                ),
                format!("Go round {}. Then look far away.", words::times(self.rounds)),
            ],
            see: words::with_marks(
                "The stop you look at is single. The others may look double for now: that is fine.".to_owned(),
                watch,
            ),
            one_part: words::one_part(watch),
        }
    }
}

impl Arrangement {
    /// The stops on a level, in the order of the route.
    fn features(&self, level: u32) -> Vec<Feature> {
        let in_place_order = (1..=self.count).collect::<Vec<_>>();
        let route = self.route.as_ref().unwrap_or(&in_place_order);
        route.iter().zip(1..).map(|(&place, stop): (&u32, u32)| self.stop(place, stop, level)).collect()
    }

    /// The copy of the target at a place (from 1), which is this stop (from 1) of the route.
    fn stop(&self, place: u32, stop: u32, level: u32) -> Feature {
        let index = place as usize - 1;
        let (dx, dy) = self.offset(index);
        let target = Target {
            label: format!("{}-{stop}", self.target.label),
            at: At { x: Mm(self.target.at.x.0 + dx), y: Mm(self.target.at.y.0 + dy) },
            depth: self.depths[index % self.depths.len()].clone(),
            ..self.target.clone()
        };
        target.feature(level)
    }

    /// From the middle of the arrangement to a place, mm.
    fn offset(&self, index: usize) -> (f64, f64) {
        let along = (index as f64 - f64::from(self.count - 1) / 2.0) * self.spacing.0;
        match self.form {
            ArrangementForm::Row => (along, 0.0),
            ArrangementForm::Column => (0.0, along),
            ArrangementForm::Ring => {
                let angle = (360.0 * index as f64 / f64::from(self.count) - 90.0).to_radians();
                (self.spacing.0 * libm::cos(angle), self.spacing.0 * libm::sin(angle))
            }
        }
    }
}
