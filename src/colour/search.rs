//! The bounded search of the ink solver: which marks, in which tints, on which ground.

use super::eye_map::{channels, mark};
use super::judge::{GHOST_REFUSE, GHOST_WARN, IMBALANCE_WARN};
use super::null::{Plane, Wanted};
use super::plan::{Pins, Wishes};
use super::print::without_blue;
use super::view::{Medium, Views};
use super::{Glasses, Ground, Inks, Srgb8, inks};

/// How much of the signal of the eye map's full ink a mark must keep, to count as seen.
/// Source: design choice; a third.
const KEPT: f64 = 1.0 / 3.0;

/// How much better the signal must be for another ink or tint to be taken.
/// Source: design choice, about the smallest step in luminance that an eye sees.
const WORTH: f64 = 0.01;

/// The tints that the search tries, as shares of the full mark to its own eye.
/// Source: design choice; below half a mark is too faint, and finer steps change the ghost less than a print varies.
const TINTS: [f64; 10] = [0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5];

/// The marks other than that of the eye map: every choice of channels, most of them first.
const FAMILIES: [[bool; 3]; 6] = [
    [false, true, true],
    [true, false, false],
    [true, true, false],
    [false, false, true],
    [true, false, true],
    [false, true, false],
];

/// What the inks are for.
pub(super) struct Question<'a> {
    pub(super) glasses: &'a Glasses,
    pub(super) views: &'a Views,
    /// The plain ground.
    pub(super) ground: Ground,
    print: bool,
    /// The signal and the ghost of the eye map's full inks on the plain ground, for each eye.
    full: [(f64, f64); 2],
}

/// How good a choice is: compared from the first field to the last.
#[derive(Debug, Clone, Copy)]
struct Score {
    /// Marks faint, or much stronger for one eye.
    faint: bool,
    /// How many ghost limits are passed.
    limits: usize,
    /// The weaker eye's signal; past all limits the signal less the ghost, of the eye for which that is less.
    worth: f64,
}

/// A mark with its luminance to both eyes.
#[derive(Debug, Clone, Copy)]
struct Mark {
    colour: Srgb8,
    seen: [f64; 2],
}

impl Score {
    fn better_than(&self, other: &Score) -> bool {
        let (this, that) = ((self.faint, self.limits), (other.faint, other.limits));
        this < that || (this == that && other.worth + WORTH < self.worth)
    }
}

impl<'a> Question<'a> {
    pub(super) fn new(glasses: &'a Glasses, medium: &Medium, views: &'a Views, ground: Ground) -> Self {
        let print = matches!(medium, Medium::Print(_));
        let mut question = Self { glasses, views, ground, print, full: [(0.0, 0.0); 2] };
        let Inks { left, right, ground, .. } = inks(glasses, ground);
        let marks = [question.allowed(left), question.allowed(right), ground].map(|colour| question.mark(colour));
        question.full = question.signals(marks);
        question
    }

    /// The best answer to the wishes.
    pub(super) fn best(&self, wishes: &Wishes) -> Inks {
        let plain = self.mark(wishes.pins.ground.unwrap_or(self.ground.colour()));
        let tinted = wishes.tinted_ground && wishes.pins.ground.is_none();
        let pairs = self.pairs(&wishes.pins);
        let mut best: Option<(Score, [Mark; 3])> = None;
        for [left, right] in &pairs {
            self.keep(wishes, [*left, *right, plain], &mut best);
        }
        if tinted && best.is_none_or(|(score, _): (Score, _)| score.faint || 0 < score.limits) {
            self.tinted(wishes, &pairs, &mut best);
        }
        self.finished(wishes, best)
    }

    /// Every pair of marks to try, the fullest first. The brighter eye's marks lead, so that glasses worn the other way
    /// round get the same inks.
    fn pairs(&self, pins: &Pins) -> Vec<[Mark; 2]> {
        let (lefts, rights) = (self.marks(0, pins.left), self.marks(1, pins.right));
        if self.views.left.white() < self.views.right.white() {
            rights.iter().flat_map(|right| lefts.iter().map(|left| [*left, *right])).collect()
        } else {
            lefts.iter().flat_map(|left| rights.iter().map(|right| [*left, *right])).collect()
        }
    }

    /// Tries the ground that hides the ghosts of each pair of marks, where a perfect one would be the best so far.
    fn tinted(&self, wishes: &Wishes, pairs: &[[Mark; 2]], best: &mut Option<(Score, [Mark; 3])>) {
        let Some(plane) = Plane::new(self.views, channels(self.glasses), self.ground) else { return };
        for [left, right] in pairs {
            let perfect = Mark { colour: self.ground.colour(), seen: [right.seen[0], left.seen[1]] };
            let bound = self.score(wishes, [*left, *right, perfect]);
            if best.is_none_or(|(before, _)| bound.better_than(&before)) {
                let wanted = Wanted { left: perfect.seen[0], right: perfect.seen[1] };
                self.keep(wishes, [*left, *right, self.mark(plane.nearest(wanted))], best);
            }
        }
    }

    fn keep(&self, wishes: &Wishes, marks: [Mark; 3], best: &mut Option<(Score, [Mark; 3])>) {
        let score = self.score(wishes, marks);
        if best.is_none_or(|(before, _)| score.better_than(&before)) {
            *best = Some((score, marks));
        }
    }

    fn score(&self, wishes: &Wishes, marks: [Mark; 3]) -> Score {
        let eyes = self.signals(marks);
        let full = self.full.map(|(signal, _)| signal);
        let faint = (0..2).any(|eye| eyes[eye].0 < KEPT * full[eye]);
        let ratio = |[a, b]: [f64; 2]| a.max(b) / a.min(b);
        let uneven = IMBALANCE_WARN.max(ratio(full)) < ratio(eyes.map(|(signal, _)| signal));
        let ghost = eyes.map(|(signal, ghost)| if 0.0 < signal { ghost / signal } else { f64::INFINITY });
        let worse = ghost[0].max(ghost[1]);
        let limits = [wishes.ghost, GHOST_WARN.max(wishes.ghost), GHOST_REFUSE.max(wishes.ghost)];
        let passed = limits.iter().filter(|limit| **limit < worse).count();
        let worth = eyes.map(|(signal, ghost)| if passed == limits.len() { signal - ghost } else { signal });
        Score { faint: faint || uneven, limits: passed, worth: worth[0].min(worth[1]) }
    }

    /// For each eye how far its own mark and the other's stand off the ground, in shares of white behind its filter;
    /// the own one counts to the side that the ground asks for.
    fn signals(&self, [left, right, ground]: [Mark; 3]) -> [(f64, f64); 2] {
        let whites = [self.views.left.white(), self.views.right.white()];
        [(0, left, right), (1, right, left)].map(|(eye, own, other)| {
            let step = match self.ground {
                Ground::White => ground.seen[eye] - own.seen[eye],
                Ground::Black => own.seen[eye] - ground.seen[eye],
            };
            (step / whites[eye], (other.seen[eye] - ground.seen[eye]).abs() / whites[eye])
        })
    }

    /// The marks to try for an eye: that of the eye map in full, its tints, then the other families.
    fn marks(&self, eye: usize, pin: Option<Srgb8>) -> Vec<Mark> {
        if let Some(pin) = pin {
            return vec![self.mark(pin)];
        }
        let own = channels(self.glasses)[eye];
        let mut families = vec![own];
        families.extend(FAMILIES.into_iter().filter(|family| *family != own));
        let view = [&self.views.left, &self.views.right][eye];
        let ground = self.ground.colour();
        let mut colours: Vec<Srgb8> = Vec::new();
        for family in families {
            let full = self.allowed(mark(family, self.ground));
            for colour in std::iter::once(full).chain(view.tints(ground, full, &TINTS)) {
                if !colours.contains(&colour) {
                    colours.push(colour);
                }
            }
        }
        colours.into_iter().map(|colour| self.mark(colour)).collect()
    }

    /// The colour as the medium may have it.
    fn allowed(&self, colour: Srgb8) -> Srgb8 {
        if self.print { without_blue(colour) } else { colour }
    }

    fn mark(&self, colour: Srgb8) -> Mark {
        Mark { colour, seen: [self.views.left.luminance(colour), self.views.right.luminance(colour)] }
    }

    /// The choice with its overlap and its words.
    fn finished(&self, wishes: &Wishes, best: Option<(Score, [Mark; 3])>) -> Inks {
        let plain = inks(self.glasses, self.ground);
        let Some((_, [left, right, ground])) = best else { return plain };
        let wanted = Wanted { left: left.seen[0], right: right.seen[1] };
        let plane = || Plane::new(self.views, channels(self.glasses), self.ground);
        let both = wishes.pins.both.or_else(|| plane().map(|plane| plane.nearest(wanted)));
        Inks {
            left: left.colour,
            right: right.colour,
            both: both.unwrap_or(plain.both),
            ground: ground.colour,
            text: plain.text,
        }
    }
}
