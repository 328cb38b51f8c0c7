//! The numbers of the ghost page: which patch hides a ghost of which strength from which eye.
//!
//! On the patch of number n, a mark for the other eye vanishes to this eye if so much leaks through this eye's filter
//! as n stands for. Data alone: the page is a part of the book, and the report lists the same numbers.

use crate::colour::{Glasses, Ground, Srgb8, View, Views, inks};
use crate::scene::Eye;

/// Leaks on a white ground, per cent. Steps of at least 2 %: a mark on a bright patch is told from it from about 1 %
/// on. Source: design choice, after Weber's law.
const ON_WHITE: [f64; 10] = [0.0, 2.0, 4.0, 6.0, 8.0, 11.0, 14.0, 18.0, 23.0, 28.0];

/// Leaks on a black ground, per cent. Against the dark, steps are seen by their ratio. Source: design choice, after
/// Weber's law.
const ON_BLACK: [f64; 10] = [0.0, 1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 14.0, 20.0, 28.0];

/// One numbered patch of the ghost page.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GhostPatch {
    /// The eye that looks at it, alone.
    pub eye: Eye,
    /// Its number, from 1.
    pub number: u32,
    /// What leaks through this eye's filter if the mark vanishes: a share of what this eye's own full mark shows, in
    /// whole thousandths, as the page prints it.
    pub leak: f64,
    /// The colour of the patch: the plain ground, dimmed (on black: lit) by so much to this eye.
    pub patch: Srgb8,
    /// The colour of the mark on it: the other eye's full ink.
    pub mark: Srgb8,
}

/// The patches for the left eye, then those for the right, each in the order of their numbers.
///
/// `views` are those of the glasses on the medium of the edition. Patches are made for the full inks of the glasses on
/// the plain ground, since that is what a leak is measured against.
pub fn patches(glasses: &Glasses, views: &Views, ground: Ground) -> Vec<GhostPatch> {
    let full = inks(glasses, ground);
    let left = row(&views.left, Eye::Left, [full.ground, full.left, full.right], ground);
    left.into_iter().chain(row(&views.right, Eye::Right, [full.ground, full.right, full.left], ground)).collect()
}

fn row(view: &View, eye: Eye, [plain, own, other]: [Srgb8; 3], ground: Ground) -> Vec<GhostPatch> {
    let levels = match ground {
        Ground::White => ON_WHITE,
        Ground::Black => ON_BLACK,
    };
    let patch = |(number, percent): (u32, f64)| {
        let patch = view.toward(plain, own, percent / 100.0);
        GhostPatch { eye, number, leak: thousandths(share(view, patch, plain, own)), patch, mark: other }
    };
    (1..).zip(levels).map(patch).collect()
}

/// How far a patch stands off the ground to this eye, as a share of how far its own mark does. Eight bits hold not
/// every patch that was asked for, so this is what the patch really stands for.
fn share(view: &View, patch: Srgb8, ground: Srgb8, own: Srgb8) -> f64 {
    let [patch, ground, own] = [patch, ground, own].map(|colour| view.luminance(colour));
    let signal = (own - ground).abs();
    if 0.0 < signal { (patch - ground).abs() / signal } else { 0.0 }
}

fn thousandths(share: f64) -> f64 {
    (share * 1000.0).round() / 1000.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::colour::{Filter, FilterModel, Lamp, Medium, NamedScreen, Print, Screen, Solids};

    fn media() -> Vec<Medium> {
        let print = Print::new(&Solids::fogra39l(), &Lamp::D50.spectrum()).unwrap();
        let screens = NamedScreen::ALL.map(|name| Medium::Screen(Screen::named(name)));
        screens.into_iter().chain([Medium::Print(print)]).collect()
    }

    fn pairs() -> Vec<Glasses> {
        let all = Filter::ALL.into_iter().flat_map(|left| Filter::ALL.map(|right| Glasses::ideal(left, right)));
        all.filter(Glasses::separate).collect()
    }

    /// The same glasses, measured: `leak` through both filters.
    fn leaking(glasses: &Glasses, leak: f64) -> Glasses {
        let eye = |model: &FilterModel| FilterModel::Leak { colour: model.colour(), leak };
        Glasses { left: eye(&glasses.left), right: eye(&glasses.right) }
    }

    /// Contrast of mark and patch to the eye that looks at them, of the lighter of the two.
    fn contrast(view: &View, patch: &GhostPatch) -> f64 {
        let (mark, patch) = (view.luminance(patch.mark), view.luminance(patch.patch));
        if mark.max(patch) < 1e-9 { 0.0 } else { (mark - patch).abs() / mark.max(patch) }
    }

    /// The model that reads the number back is the one of the ink solver, so this holds the round trip: the number that
    /// a reader with a known leak picks is the leak that inks are then solved for.
    #[test]
    fn the_mark_vanishes_on_its_number_alone() {
        for medium in media() {
            for glasses in pairs() {
                for ground in [Ground::White, Ground::Black] {
                    let all = patches(&glasses, &Views::new(&glasses, &medium), ground);
                    assert_eq!(all.len(), 20);
                    for picked in &all {
                        let views = Views::new(&leaking(&glasses, picked.leak), &medium);
                        let view = if picked.eye == Eye::Left { &views.left } else { &views.right };
                        for patch in all.iter().filter(|patch| patch.eye == picked.eye) {
                            let seen = contrast(view, patch);
                            assert_eq!(
                                seen < 0.01,
                                patch.number == picked.number,
                                "{medium:?} {glasses:?} {ground:?}: leak {} on {patch:?}: {seen}",
                                picked.leak
                            );
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn numbers_rise_with_the_leak() {
        for medium in media() {
            for glasses in pairs() {
                for ground in [Ground::White, Ground::Black] {
                    let all = patches(&glasses, &Views::new(&glasses, &medium), ground);
                    let rises = |row: &[GhostPatch]| row.windows(2).all(|w| w[0].leak + 0.008 < w[1].leak);
                    assert!(rises(&all[..10]) && rises(&all[10..]), "{glasses:?} {ground:?}: {all:?}");
                    assert!(all.iter().all(|patch| (patch.number == 1) == (patch.leak == 0.0)));
                }
            }
        }
    }
}
