//! The ink solver: the inks and the ground that show each eye its own marks and hide the other's.
//!
//! The result is explained in numbers: what each eye sees, and what was given up for it.

use std::fmt;

use super::judge::{EyeReport, GHOST_AIM, Ghost, imbalance, judge};
use super::print::Cmyk;
use super::search::Question;
use super::view::{Medium, Views};
use super::{Glasses, Ground, Inks, Srgb8, inks};

/// The role of an ink on the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Marks for the left eye.
    Left,
    /// Marks for the right eye.
    Right,
    /// Where marks for both eyes overlap.
    Both,
    /// The empty page.
    Ground,
}

/// What the author asks of the solver.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wishes {
    /// The ghost to stay below, a share of each eye's own contrast; 0 or more.
    pub ghost: f64,
    /// Whether the ground may be tinted to hide ghosts.
    pub tinted_ground: bool,
    /// Inks that the author has chosen.
    pub pins: Pins,
}

/// Inks that the author has chosen. They are taken as they are and judged like all others.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Pins {
    /// Of marks for the left eye.
    pub left: Option<Srgb8>,
    /// Of marks for the right eye.
    pub right: Option<Srgb8>,
    /// Of overlaps.
    pub both: Option<Srgb8>,
    /// Of the empty page.
    pub ground: Option<Srgb8>,
}

/// The inks of an edition, with what each eye sees of them.
#[derive(Debug, Clone, PartialEq)]
pub struct InkPlan {
    /// The inks, as page colours.
    pub inks: Inks,
    /// What the left eye sees.
    pub left: EyeReport,
    /// What the right eye sees.
    pub right: EyeReport,
    /// How much brighter the world of one eye is than that of the other: 1 or more.
    pub imbalance: f64,
    /// Contrast ratio of words on the ground, without glasses: 1 to 21.
    pub text_contrast: f64,
    /// The inks as process inks, for a print shop.
    pub recipes: Recipes,
    /// What was given up, and what could not be had.
    pub traded: Vec<Trade>,
}

/// The inks of a plan as process inks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Recipes {
    /// Of marks for the left eye.
    pub left: Cmyk,
    /// Of marks for the right eye.
    pub right: Cmyk,
    /// Of overlaps.
    pub both: Cmyk,
    /// Of the empty page.
    pub ground: Cmyk,
    /// Of words.
    pub text: Cmyk,
}

/// One thing that was given up, or could not be had. `left` and `right` are numbers for the two eyes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Trade {
    /// The ground is tinted: each eye keeps this share of the light of the plain ground (on white), or has the ground
    /// lit to this share of its white (on black).
    Tint {
        /// The ground.
        ground: Srgb8,
        /// Share for the left eye.
        left: f64,
        /// Share for the right eye.
        right: f64,
        /// The worse ghost without the tint.
        ghost_before: f64,
        /// The worse ghost with it.
        ghost_after: f64,
    },
    /// A mark has not the full ink of the eye map.
    Ink {
        /// Whose mark.
        role: Role,
        /// The full ink.
        full: Srgb8,
        /// What its signal would be.
        signal_full: f64,
        /// What its signal is.
        signal: f64,
    },
    /// The author's ink stands where the solver would take another.
    Pinned {
        /// Which ink.
        role: Role,
        /// What the solver would take if nothing were pinned.
        solved: Srgb8,
        /// The worse ghost of the solver's own inks.
        ghost_solved: f64,
        /// The worse ghost as pinned.
        ghost_pinned: f64,
    },
    /// The ghost limit was not reached.
    Ghost {
        /// The ghost of the left eye.
        left: f64,
        /// The ghost of the right eye.
        right: f64,
        /// What was asked for.
        limit: f64,
        /// The worse ghost that a tinted ground would leave, where the ground may not be tinted.
        tinted: Option<f64>,
    },
}

impl Default for Wishes {
    fn default() -> Self {
        Self { ghost: GHOST_AIM, tinted_ground: false, pins: Pins::default() }
    }
}

impl InkPlan {
    /// The worse ghost of the two eyes.
    pub fn ghost(&self) -> f64 {
        self.left.ghost.max(self.right.ghost)
    }

    /// How bad the worse ghost is.
    pub fn verdict(&self) -> Ghost {
        Ghost::of(self.ghost())
    }
}

/// Finds the inks for glasses on a medium and a ground.
///
/// First come the inks of the [eye map](inks), which are exact for ideal filters. Other inks, tints of them and, where
/// it is allowed, a tinted ground are taken only where they do better: fewer ghost limits passed (the wish, then the
/// limits of [`Ghost`]), and among equals the stronger signal of the weaker eye. Past all limits the signal less the
/// ghost counts. A choice whose marks are faint, or much stronger for one eye than for the other, loses against any
/// that is not.
///
/// Always gives a plan: when no inks separate the eyes, its numbers say so. The search is bounded and its order is
/// fixed: the same question has the same answer everywhere.
///
/// ```
/// use depthpress::colour::{Filter, Glasses, Ground, Medium, NamedScreen, Screen, Wishes, solve_inks};
/// let glasses = Glasses::ideal(Filter::Cyan, Filter::Red);
/// let screen = Medium::Screen(Screen::named(NamedScreen::Ideal));
/// let plan = solve_inks(&glasses, &screen, Ground::White, &Wishes::default());
/// assert_eq!((plan.inks.left.hex().as_str(), plan.left.ghost), ("#ff0000", 0.0));
/// ```
pub fn solve_inks(glasses: &Glasses, medium: &Medium, ground: Ground, wishes: &Wishes) -> InkPlan {
    let views = Views::new(glasses, medium);
    let question = Question::new(glasses, medium, &views, ground);
    let chosen = question.best(wishes);
    let mut plan = describe(&views, chosen);
    plan.traded = trades(&question, &plan, wishes);
    plan
}

fn describe(views: &Views, inks: Inks) -> InkPlan {
    let [left, right] = judge(views, &inks);
    InkPlan {
        inks,
        left,
        right,
        imbalance: imbalance(left.brightness, right.brightness),
        text_contrast: inks.text.contrast(inks.ground),
        recipes: Recipes {
            left: Cmyk::of(inks.left),
            right: Cmyk::of(inks.right),
            both: Cmyk::of(inks.both),
            ground: Cmyk::of(inks.ground),
            text: Cmyk::of(inks.text),
        },
        traded: Vec::new(),
    }
}

fn trades(question: &Question<'_>, plan: &InkPlan, wishes: &Wishes) -> Vec<Trade> {
    let mut trades = Vec::new();
    let unpinned = Wishes { pins: Pins::default(), ..*wishes };
    if wishes.pins != Pins::default() {
        pinned(&describe(question.views, question.best(&unpinned)), plan, &wishes.pins, &mut trades);
    }
    let full = inks(question.glasses, question.ground);
    if wishes.pins.ground.is_none() && plan.inks.ground != full.ground {
        trades.push(tint(question, plan, full.ground));
    }
    let [left, right] = judge(question.views, &Inks { both: plan.inks.both, ..full });
    if wishes.pins.left.is_none() && plan.inks.left != full.left {
        let (signal_full, signal) = (left.signal, plan.left.signal);
        trades.push(Trade::Ink { role: Role::Left, full: full.left, signal_full, signal });
    }
    if wishes.pins.right.is_none() && plan.inks.right != full.right {
        let (signal_full, signal) = (right.signal, plan.right.signal);
        trades.push(Trade::Ink { role: Role::Right, full: full.right, signal_full, signal });
    }
    if wishes.ghost < plan.ghost() {
        let allowed = Wishes { tinted_ground: true, ..*wishes };
        let could = wishes.pins.ground.is_none() && !wishes.tinted_ground;
        let tinted = could.then(|| describe(question.views, question.best(&allowed)).ghost());
        let tinted = tinted.filter(|ghost| *ghost < plan.ghost());
        trades.push(Trade::Ghost { left: plan.left.ghost, right: plan.right.ghost, limit: wishes.ghost, tinted });
    }
    trades
}

fn pinned(solved: &InkPlan, plan: &InkPlan, pins: &Pins, trades: &mut Vec<Trade>) {
    let by_role = [
        (Role::Left, pins.left, solved.inks.left),
        (Role::Right, pins.right, solved.inks.right),
        (Role::Both, pins.both, solved.inks.both),
        (Role::Ground, pins.ground, solved.inks.ground),
    ];
    for (role, pin, own) in by_role {
        if pin.is_some_and(|pin| pin != own) {
            let (ghost_solved, ghost_pinned) = (solved.ghost(), plan.ghost());
            trades.push(Trade::Pinned { role, solved: own, ghost_solved, ghost_pinned });
        }
    }
}

fn tint(question: &Question<'_>, plan: &InkPlan, plain: Srgb8) -> Trade {
    let [left, right] = judge(question.views, &Inks { ground: plain, ..plan.inks });
    let share = |view: &super::View| view.luminance(plan.inks.ground) / view.white();
    Trade::Tint {
        ground: plan.inks.ground,
        left: share(&question.views.left),
        right: share(&question.views.right),
        ghost_before: left.ghost.max(right.ghost),
        ghost_after: plan.ghost(),
    }
}

impl Role {
    /// The role in plain words, as specs and reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            Role::Left => "left",
            Role::Right => "right",
            Role::Both => "both",
            Role::Ground => "ground",
        }
    }
}

/// One plain sentence without a final stop; shares in per cent.
impl fmt::Display for Trade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let percent = |share: f64| format!("{:.1} %", share * 100.0);
        match self {
            Trade::Tint { ground, left, right, ghost_before, ghost_after } => write!(
                f,
                "the ground is tinted to {}: it has {} of white to the left eye and {} to the right; the ghost goes from {} to {}",
                ground.hex(),
                percent(*left),
                percent(*right),
                percent(*ghost_before),
                percent(*ghost_after)
            ),
            Trade::Ink { role, full, signal_full, signal } => write!(
                f,
                "the {} ink is not the full {}: its signal is {} instead of {}",
                role.name(),
                full.hex(),
                percent(*signal),
                percent(*signal_full)
            ),
            Trade::Pinned { role, solved, ghost_solved, ghost_pinned } => write!(
                f,
                "the {} ink is the author's; solved it would be {}, with a ghost of {} instead of {}",
                role.name(),
                solved.hex(),
                percent(*ghost_solved),
                percent(*ghost_pinned)
            ),
            Trade::Ghost { left, right, limit, tinted } => {
                let (left, right, limit) = (percent(*left), percent(*right), percent(*limit));
                write!(f, "the ghost is {left} to the left eye and {right} to the right, limit {limit}")?;
                tinted.map_or(Ok(()), |ghost| write!(f, "; a tinted ground would bring it to {}", percent(ghost)))
            }
        }
    }
}
