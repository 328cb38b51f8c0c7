//! `hold`: one large target held single and clear at one demand; a ramp over levels makes a slow slide from page to page.

use crate::scene::{Scene, Side};
use crate::units::Seconds;

use super::target::Target;
use super::words::{self, Words};

/// The parameters of a `hold` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Hold {
    /// The one target.
    pub target: Target,
    /// How long to hold it, for the words.
    pub hold: Seconds,
    /// How often, for the words.
    pub repeats: u32,
}

impl Hold {
    /// The art of one level.
    pub fn scene(&self, level: u32) -> Scene {
        Scene { features: vec![self.target.feature(level)] }
    }

    /// The words of one level.
    pub fn words(&self, level: u32) -> Words {
        let name = words::shape_name(&self.target.shape);
        let see = match self.target.depth.at(level).side() {
            Some(Side::Toward) => format!("One {name} that seems to float in front of the page."),
            Some(Side::Away) => format!("One {name} that seems to lie behind the page, as if seen through a window."),
            None => format!("One {name}, flat on the page."),
        };
        Words {
            goal: format!("Keep one {name} single and clear while your eyes hold still."),
            setup: String::new(),
            steps: vec![
                format!("Look softly at the {name} until you see only one."),
                words::check_step(self.target.watch, "Check that", "are both there."),
                format!("Hold it single and clear for {}.", words::seconds(self.hold)),
                format!("Look far away for five seconds. Do this {}.", words::times(self.repeats)),
            ],
            see: words::with_marks(see, self.target.watch),
            one_part: words::one_part(self.target.watch),
        }
    }
}
