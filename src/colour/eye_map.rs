//! The eye map: which channels of the page carry the mark of which eye.
//!
//! The one place where eyes become colours. Swapping the ground or the glasses here turns near into far for every
//! reader.

use super::{Glasses, Ground, Inks, Srgb8};

/// Which of red, green and blue carry the marks of the left and of the right eye.
///
/// An eye owns the channels that its filter passes and the other filter stops; when the other filter passes all of them
/// too, it owns what it passes, and the other eye will see its marks. A channel that neither filter passes goes with
/// its neighbour, so that no mark shows a third colour: red and blue with green, green with blue. So glasses with a
/// blue filter take cyan ink, not blue.
/// Source: design choice; for red/blue glasses the measured filters leak least this way.
pub fn channels(glasses: &Glasses) -> [[bool; 3]; 2] {
    const NEIGHBOUR: [usize; 3] = [1, 2, 1];
    let passes = [glasses.left.colour().passes(), glasses.right.colour().passes()];
    let own = |eye: usize| {
        let alone = [0, 1, 2].map(|c| passes[eye][c] && !passes[1 - eye][c]);
        if alone == [false; 3] { passes[eye] } else { alone }
    };
    let owns = [own(0), own(1)];
    owns.map(|own| [0, 1, 2].map(|c| own[c] || (!passes[0][c] && !passes[1][c] && own[NEIGHBOUR[c]])))
}

/// The inks for ideal filters as worn on a ground.
///
/// One rule covers both grounds: an eye sees only the channels that its filter passes, so a mark for this eye changes
/// just its own [`channels`] of the ground. On white the mark takes away the light that the filter passes (red filter,
/// cyan ink); on black it is that light (red filter, red ink). Where marks for both eyes overlap, all channels change.
///
/// The glasses must [`separate`](Glasses::separate) the eyes; with the same filter twice, both eyes see every mark.
/// Source: `[Proofing]` for white; for black, `[Hobyrne]`: the red filter shows red light and stops cyan.
///
/// ```
/// use depthpress::colour::{Filter, Glasses, Ground, inks};
/// let glasses = Glasses::ideal(Filter::Red, Filter::Cyan);
/// assert_eq!(inks(&glasses, Ground::White).left.hex(), "#00ffff");
/// assert_eq!(inks(&glasses, Ground::Black).left.hex(), "#ff0000");
/// ```
pub fn inks(glasses: &Glasses, ground: Ground) -> Inks {
    let [left, right] = channels(glasses);
    let text = ground.opposite().colour();
    Inks { left: mark(left, ground), right: mark(right, ground), both: text, ground: ground.colour(), text }
}

/// The ground with these channels changed to the opposite.
pub(super) fn mark(channels: [bool; 3], ground: Ground) -> Srgb8 {
    let (colour, changed) = (ground.colour().0, ground.opposite().colour().0);
    Srgb8([0, 1, 2].map(|c| if channels[c] { changed[c] } else { colour[c] }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::colour::Filter::{Amber, Blue, Cyan, Green, Magenta, Red};
    use crate::colour::{EyeReport, Filter, Medium, NamedScreen, Screen, Views, judge};

    /// Every pair of different filters with its inks, written by hand from what each filter stops and passes: the inks
    /// of the first and of the second filter's eye on white, then on black. Sources: the lexicon at proofing.de for
    /// red/cyan on white, hobyrne at everything2.com for what filters darken; shared and unused channels as
    /// [`channels`] says.
    const TABLE: [(Filter, Filter, [&str; 2], [&str; 2]); 15] = [
        (Red, Cyan, ["#00ffff", "#ff0000"], ["#ff0000", "#00ffff"]),
        (Red, Green, ["#00ffff", "#ff0000"], ["#ff0000", "#00ffff"]),
        (Red, Blue, ["#00ffff", "#ff0000"], ["#ff0000", "#00ffff"]),
        (Red, Magenta, ["#00ffff", "#ff0000"], ["#ff0000", "#00ffff"]),
        (Red, Amber, ["#00ffff", "#ff0000"], ["#ff0000", "#00ffff"]),
        (Cyan, Green, ["#ffff00", "#0000ff"], ["#0000ff", "#ffff00"]),
        (Cyan, Blue, ["#0000ff", "#ffff00"], ["#ffff00", "#0000ff"]),
        (Cyan, Magenta, ["#ff00ff", "#00ffff"], ["#00ff00", "#ff0000"]),
        (Cyan, Amber, ["#ffff00", "#00ffff"], ["#0000ff", "#ff0000"]),
        (Green, Blue, ["#0000ff", "#ffff00"], ["#ffff00", "#0000ff"]),
        (Green, Magenta, ["#ff00ff", "#00ff00"], ["#00ff00", "#ff00ff"]),
        (Green, Amber, ["#ff0000", "#00ffff"], ["#00ffff", "#ff0000"]),
        (Blue, Magenta, ["#ff0000", "#00ffff"], ["#00ffff", "#ff0000"]),
        (Blue, Amber, ["#ffff00", "#0000ff"], ["#0000ff", "#ffff00"]),
        (Magenta, Amber, ["#ffff00", "#ff00ff"], ["#0000ff", "#00ff00"]),
    ];

    /// Pairs of which no filter passes what the other does.
    const APART: [(Filter, Filter); 6] =
        [(Red, Cyan), (Red, Green), (Red, Blue), (Green, Blue), (Green, Magenta), (Blue, Amber)];

    fn pair(a: Filter, b: Filter, ground: Ground) -> [String; 2] {
        let Inks { left, right, .. } = inks(&Glasses::ideal(a, b), ground);
        [left.hex(), right.hex()]
    }

    #[test]
    fn every_pair_on_every_ground_has_its_inks_whichever_way_round() {
        for (a, b, white, black) in TABLE {
            for (ground, [of_a, of_b]) in [(Ground::White, white), (Ground::Black, black)] {
                assert_eq!(pair(a, b, ground), [of_a, of_b], "{a:?} left, {b:?} right, {ground:?}");
                assert_eq!(pair(b, a, ground), [of_b, of_a], "{b:?} left, {a:?} right, {ground:?}");
            }
        }
        let named = |a, b| TABLE.iter().any(|row| (row.0, row.1) == (a, b) || (row.1, row.0) == (a, b));
        assert!(Filter::ALL.iter().all(|a| Filter::ALL.iter().all(|b| a == b || named(*a, *b))));
    }

    #[test]
    fn ground_overlap_and_words_are_plain() {
        for (a, b, ..) in TABLE {
            for (ground, empty, ink) in [(Ground::White, "#ffffff", "#000000"), (Ground::Black, "#000000", "#ffffff")] {
                let inks = inks(&Glasses::ideal(a, b), ground);
                assert_eq!([inks.ground.hex(), inks.both.hex(), inks.text.hex()], [empty, ink, ink]);
            }
        }
    }

    /// What ideal filters show on a screen of three bands, computed from spectra: apart from the map.
    fn seen(a: Filter, b: Filter, inks: &Inks) -> [EyeReport; 2] {
        let screen = Medium::Screen(Screen::named(NamedScreen::Ideal));
        judge::judge(&Views::new(&Glasses::ideal(a, b), &screen), inks)
    }

    #[test]
    fn each_mark_is_seen_by_its_own_eye_alone_and_an_overlap_like_the_own_mark() {
        for (a, b) in APART.into_iter().flat_map(|(a, b)| [(a, b), (b, a)]) {
            for ground in [Ground::White, Ground::Black] {
                for eye in seen(a, b, &inks(&Glasses::ideal(a, b), ground)) {
                    assert!(eye.shows_on(ground), "{a:?} {b:?} {ground:?}");
                    assert_eq!((eye.contrast, eye.signal), (1.0, 1.0), "{a:?} {b:?} {ground:?}");
                    assert_eq!((eye.ghost, eye.overlap_ghost), (0.0, 0.0), "{a:?} {b:?} {ground:?}");
                }
            }
        }
    }

    /// A map with its sides or its grounds swapped shows every eye the mark of the other.
    #[test]
    fn a_map_with_sides_or_grounds_swapped_shows_in_what_the_eyes_see() {
        for (a, b) in APART {
            for ground in [Ground::White, Ground::Black] {
                let right = inks(&Glasses::ideal(a, b), ground);
                let sides = Inks { left: right.right, right: right.left, ..right };
                let other = inks(&Glasses::ideal(a, b), ground.opposite());
                let grounds = Inks { left: other.left, right: other.right, ..right };
                for wrong in [sides, grounds] {
                    for eye in seen(a, b, &wrong) {
                        assert!(!eye.shows_on(ground) && eye.contrast == 0.0, "{a:?} {b:?} {ground:?} {eye:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn the_same_filter_twice_separates_nothing() {
        for filter in Filter::ALL {
            let glasses = Glasses::ideal(filter, filter);
            assert!(!glasses.separate());
            let inks = inks(&glasses, Ground::White);
            assert_eq!(inks.left, inks.right);
        }
        assert!(TABLE.iter().all(|(a, b, ..)| Glasses::ideal(*a, *b).separate()));
    }
}
