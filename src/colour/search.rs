//! The bounded search of the ink solver: which marks, in which tints, on which ground.

use super::eye_map::{channels, mark};
use super::judge::{GHOST_REFUSE, GHOST_WARN, IMBALANCE_WARN};
use super::null::{Wanted, null_colour};
use super::plan::Wishes;
use super::view::{Medium, View, Views};
use super::{Glasses, Ground, Inks, Srgb8, inks};

/// The least signal that a mark must have, a share of white behind the filter, to count as seen.
/// Source: design choice; below a third of the range thin strokes fade.
const LEAST_SIGNAL: f64 = 0.3;

/// How much better a signal must be to count as better: less than any step of eight bits.
const SAME: f64 = 1e-9;

/// The tints that the search tries, as shares of the full mark to its own eye.
/// Source: design choice; below half a mark is too faint, and finer steps change the ghost less than a print varies.
const TINTS: [f64; 11] = [1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5];

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
    /// The glasses as worn.
    pub(super) glasses: &'a Glasses,
    /// What the page is shown on.
    pub(super) medium: &'a Medium,
    /// What the eyes see of the medium.
    pub(super) views: &'a Views,
    /// The plain ground.
    pub(super) ground: Ground,
}

/// How good a choice is: compared from the first field to the last.
#[derive(Debug, Clone, Copy)]
struct Score {
    /// Marks faint, or much stronger for one eye.
    faint: bool,
    /// How many ghost limits are passed.
    limits: usize,
    /// The worse ghost, where all limits are passed; else 0.
    ghost: f64,
    /// The weaker eye's signal.
    signal: f64,
}

/// A mark with its luminance to both eyes.
#[derive(Debug, Clone, Copy)]
struct Mark {
    colour: Srgb8,
    seen: [f64; 2],
}

impl Score {
    fn better_than(&self, other: &Score) -> bool {
        let this = (self.faint, self.limits);
        let that = (other.faint, other.limits);
        if this != that {
            return this < that;
        }
        if SAME < (self.ghost - other.ghost).abs() {
            return self.ghost < other.ghost;
        }
        other.signal + SAME < self.signal
    }
}

impl Question<'_> {
    /// The best answer to the wishes.
    pub(super) fn best(&self, wishes: &Wishes) -> Inks {
        let (lefts, rights) = (self.marks(0, wishes.pins.left), self.marks(1, wishes.pins.right));
        let plain = self.mark(wishes.pins.ground.unwrap_or(self.ground.colour()));
        let tinted = wishes.tinted_ground && wishes.pins.ground.is_none();
        let mut best: Option<(Score, [Mark; 3])> = None;
        for left in &lefts {
            for right in &rights {
                self.keep(wishes, [*left, *right, plain], &mut best);
            }
        }
        if tinted && best.is_none_or(|(score, _)| score.faint || 0 < score.limits) {
            self.tinted(wishes, [&lefts, &rights], &mut best);
        }
        self.finished(wishes, best)
    }

    /// Tries the ground that hides the ghosts of each pair of marks.
    fn tinted(&self, wishes: &Wishes, [lefts, rights]: [&[Mark]; 2], best: &mut Option<(Score, [Mark; 3])>) {
        for left in lefts.iter() {
            for right in rights.iter() {
                let wanted = Wanted { left: right.seen[0], right: left.seen[1] };
                let null = null_colour(self.views, channels(self.glasses), wanted);
                if let Some(ground) = null {
                    self.keep(wishes, [*left, *right, self.mark(ground)], best);
                }
            }
        }
    }

    fn keep(&self, wishes: &Wishes, marks: [Mark; 3], best: &mut Option<(Score, [Mark; 3])>) {
        let score = self.score(wishes, marks);
        if best.is_none_or(|(before, _)| score.better_than(&before)) {
            *best = Some((score, marks));
        }
    }

    fn score(&self, wishes: &Wishes, [left, right, ground]: [Mark; 3]) -> Score {
        let eye = |i: usize, own: Mark, other: Mark, view: &View| {
            let step = match self.ground {
                Ground::White => ground.seen[i] - own.seen[i],
                Ground::Black => own.seen[i] - ground.seen[i],
            };
            let ghost = (other.seen[i] - ground.seen[i]).abs();
            let shows = 0.0 < step;
            (if shows { step / view.white() } else { 0.0 }, if shows { ghost / step } else { f64::INFINITY })
        };
        let (a, b) = (eye(0, left, right, &self.views.left), eye(1, right, left, &self.views.right));
        let (signal, stronger, ghost) = (a.0.min(b.0), a.0.max(b.0), a.1.max(b.1));
        let limits = [wishes.ghost, GHOST_WARN.max(wishes.ghost), GHOST_REFUSE.max(wishes.ghost)];
        let passed = limits.iter().filter(|limit| **limit < ghost).count();
        Score {
            faint: signal < LEAST_SIGNAL || IMBALANCE_WARN * signal < stronger,
            limits: passed,
            ghost: if passed == limits.len() { ghost } else { 0.0 },
            signal,
        }
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
            let full = self.medium.allowed(mark(family, self.ground));
            for share in TINTS {
                let colour = if share < 1.0 { view.toward(ground, full, share) } else { full };
                if !colours.contains(&colour) {
                    colours.push(colour);
                }
            }
        }
        colours.into_iter().map(|colour| self.mark(colour)).collect()
    }

    fn mark(&self, colour: Srgb8) -> Mark {
        Mark { colour, seen: [self.views.left.luminance(colour), self.views.right.luminance(colour)] }
    }

    /// The choice with its overlap and its words.
    fn finished(&self, wishes: &Wishes, best: Option<(Score, [Mark; 3])>) -> Inks {
        let plain = inks(self.glasses, self.ground);
        let Some((_, [left, right, ground])) = best else { return plain };
        let wanted = Wanted { left: left.seen[0], right: right.seen[1] };
        let both = wishes.pins.both.or_else(|| null_colour(self.views, channels(self.glasses), wanted));
        Inks {
            left: left.colour,
            right: right.colour,
            both: both.unwrap_or(plain.both),
            ground: ground.colour,
            text: plain.text,
        }
    }
}
