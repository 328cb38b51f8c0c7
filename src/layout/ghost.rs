//! The numbers of the ghost page: which patch hides a ghost of which strength from which eye.
//!
//! On the patch of number n, a mark for the other eye vanishes to this eye if so much leaks through this eye's filter
//! as n stands for. Data alone: the page is a part of the book, and the report lists the same numbers.

use crate::colour::judge::judge;
use crate::colour::{EyeReport, FilterModel, Glasses, Ground, Inks, Medium, Srgb8, View, Views};
use crate::scene::Eye;

use super::Book;

/// Leaks on a white screen, per cent. Steps of at least 2 %: a mark on a bright patch is told from it from about 1 %
/// on. Source: design choice, after Weber's law.
const ON_WHITE: [f64; 10] = [0.0, 2.0, 4.0, 6.0, 8.0, 11.0, 14.0, 18.0, 23.0, 28.0];

/// Leaks on a print, per cent: process inks dim both eyes' light, so far more leaks than on a screen. Source: design
/// choice; full inks of `[FOGRA39L]` behind ideal filters leak 12 to 80 % for most pairs of filters.
const ON_PRINT: [f64; 14] = [0.0, 3.0, 6.0, 10.0, 15.0, 20.0, 26.0, 32.0, 39.0, 46.0, 54.0, 62.0, 71.0, 80.0];

/// Leaks on a black screen, per cent. Against the dark, steps are seen by their ratio. Source: design choice, after
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
    /// hundredths of a per cent; the page prints tenths.
    pub leak: f64,
    /// The colour of the patch: the plain ground, dimmed (on black: lit) by so much to this eye.
    pub patch: Srgb8,
    /// The colour of the mark on it: the other eye's full ink.
    pub mark: Srgb8,
    /// The ghost that this eye then has on the pages of the edition, which need not have full inks or a plain ground.
    pub ghost: f64,
}

/// The patches for the left eye, then those for the right, each in the order of their numbers.
///
/// Patches are made for the full inks of the glasses on the plain ground, since that is what a leak is measured against.
/// `used` are the inks of the edition.
pub fn patches(glasses: &Glasses, medium: &Medium, ground: Ground, used: &Inks) -> Vec<GhostPatch> {
    let views = Views::new(glasses, medium);
    let full = medium.full_inks(glasses, ground);
    let levels: &[f64] = match (medium, ground) {
        (Medium::Print(_), _) => &ON_PRINT,
        (Medium::Screen(_), Ground::White) => &ON_WHITE,
        (Medium::Screen(_), Ground::Black) => &ON_BLACK,
    };
    let patch = |eye: Eye, number: u32, percent: f64| {
        let (view, own, mark) = match eye {
            Eye::Left => (&views.left, full.left, full.right),
            Eye::Right => (&views.right, full.right, full.left),
        };
        let patch = view.toward(full.ground, own, percent / 100.0);
        let leak = hundredths_of_a_percent(share(view, patch, full.ground, own));
        let ghost = with_leak(glasses, medium, eye, leak, used).ghost;
        GhostPatch { eye, number, leak, patch, mark, ghost }
    };
    let numbers = |eye| (1..).zip(levels).map(move |(number, percent)| (eye, number, *percent));
    Eye::ALL.into_iter().flat_map(numbers).map(|(eye, number, percent)| patch(eye, number, percent)).collect()
}

/// The patches of an edition.
pub(super) fn of(book: &Book<'_>) -> Vec<GhostPatch> {
    patches(&book.edition.glasses, &book.edition.colour.medium, book.edition.ground, &book.plan.inks)
}

/// What an eye sees of inks if so much leaks through its filter.
fn with_leak(glasses: &Glasses, medium: &Medium, eye: Eye, leak: f64, used: &Inks) -> EyeReport {
    let leaking = |filter: &FilterModel| FilterModel::Leak { colour: filter.colour(), leak };
    let glasses = Glasses { left: leaking(&glasses.left), right: leaking(&glasses.right) };
    let [left, right] = judge(&Views::new(&glasses, medium), used);
    match eye {
        Eye::Left => left,
        Eye::Right => right,
    }
}

/// How far a patch stands off the ground to this eye, as a share of how far its own mark does. Eight bits hold not
/// every patch that was asked for, so this is what the patch really stands for.
fn share(view: &View, patch: Srgb8, ground: Srgb8, own: Srgb8) -> f64 {
    let [patch, ground, own] = [patch, ground, own].map(|colour| view.luminance(colour));
    let signal = (own - ground).abs();
    if 0.0 < signal { (patch - ground).abs() / signal } else { 0.0 }
}

fn hundredths_of_a_percent(share: f64) -> f64 {
    (share * 1e4).round() / 1e4
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::colour::{Filter, FilterModel, Lamp, Medium, NamedScreen, Print, Screen, Solids};

    /// Every pair of filters on a screen of either ground, with its patches; on paper those that share no light, since
    /// process inks of the others share an ink, and such an eye is not known by one number.
    fn cases() -> Vec<(Glasses, Medium, Ground, Vec<GhostPatch>)> {
        let print = Medium::Print(Print::new(&Solids::fogra39l(), &Lamp::D50.spectrum()).unwrap());
        let screen = Medium::Screen(Screen::named(NamedScreen::Crt));
        let media = [(screen.clone(), Ground::White), (screen, Ground::Black), (print, Ground::White)];
        let pairs = Filter::ALL.into_iter().flat_map(|left| Filter::ALL.map(|right| Glasses::ideal(left, right)));
        let pairs = pairs.filter(Glasses::separate);
        let known = |(glasses, medium, ..): &(Glasses, Medium, Ground, Vec<GhostPatch>)| {
            matches!(medium, Medium::Screen(_)) || !share_light(glasses)
        };
        let case = |glasses: Glasses, (medium, ground): &(Medium, Ground)| {
            let patches = patches(&glasses, medium, *ground, &medium.full_inks(&glasses, *ground));
            (glasses, medium.clone(), *ground, patches)
        };
        pairs.flat_map(|glasses| media.each_ref().map(|place| case(glasses.clone(), place))).filter(known).collect()
    }

    fn share_light(glasses: &Glasses) -> bool {
        let [left, right] = [&glasses.left, &glasses.right].map(|filter| filter.colour().passes());
        (0..3).any(|channel| left[channel] && right[channel])
    }

    /// Mark and patch to the eye that looks at them: their contrast, of the lighter of the two, and their distance as a
    /// share of the eye's own full mark, which is so far off the ground.
    fn seen(view: &View, patch: &GhostPatch, signal: f64) -> (f64, f64) {
        let (mark, patch) = (view.luminance(patch.mark), view.luminance(patch.patch));
        let apart = (mark - patch).abs();
        (if mark.max(patch) < 1e-9 { 0.0 } else { apart / mark.max(patch) }, apart / signal)
    }

    /// Known to a reader's eye by the leak of a number, the mark on that number is within 1 % of its patch, and the marks
    /// on all others are not. Filters that share a part of the light leave an eye so little of its own that the steps
    /// are small against the ground; there they are counted against the eye's own mark.
    #[test]
    fn the_mark_vanishes_on_its_number_alone() {
        for (glasses, medium, ground, all) in cases() {
            let (shared, full) = (share_light(&glasses), medium.full_inks(&glasses, ground));
            for picked in &all {
                let leaking = |filter: &FilterModel| FilterModel::Leak { colour: filter.colour(), leak: picked.leak };
                let glasses = Glasses { left: leaking(&glasses.left), right: leaking(&glasses.right) };
                let views = Views::new(&glasses, &medium);
                let (view, own) =
                    if picked.eye == Eye::Left { (&views.left, full.left) } else { (&views.right, full.right) };
                let signal = (view.luminance(own) - view.luminance(full.ground)).abs();
                for patch in all.iter().filter(|patch| patch.eye == picked.eye) {
                    let (contrast, apart) = seen(view, patch, signal);
                    let told = format!("{glasses:?}: leak {} on {patch:?}: {contrast} {apart}", picked.leak);
                    if patch.number == picked.number {
                        assert!(contrast < 0.01, "{told}");
                    } else {
                        assert!(0.01 <= contrast || (shared && 0.008 <= apart), "{told}");
                    }
                }
            }
        }
    }

    /// Pages in full inks have as much ghost as the number says; the two come from the model by different ways.
    #[test]
    fn full_inks_have_the_ghost_that_the_number_says() {
        for (glasses, _, _, all) in cases() {
            for patch in all {
                assert!((patch.ghost - patch.leak).abs() < 1e-9, "{glasses:?}: {patch:?}");
            }
        }
    }

    #[test]
    fn numbers_rise_with_the_leak() {
        for (glasses, _, _, all) in cases() {
            let rises = |row: &[GhostPatch]| row.windows(2).all(|w| w[0].leak + 0.008 < w[1].leak);
            let (left, right) = all.split_at(all.len() / 2);
            assert!(10 <= left.len() && rises(left) && rises(right), "{glasses:?}: {all:?}");
            assert!(all.iter().all(|patch| (patch.number == 1) == (patch.leak == 0.0)));
        }
    }
}
