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

    const RED_LEFT: Glasses = Glasses::ideal(Filter::Red, Filter::Cyan);
    const CYAN_LEFT: Glasses = Glasses::ideal(Filter::Cyan, Filter::Red);
    const RED: Srgb8 = Srgb8([255, 0, 0]);
    const CYAN: Srgb8 = Srgb8([0, 255, 255]);

    /// Reads the light behind an ideal filter, written apart from the code under test: the red filter shows the red
    /// channel, the cyan filter the other two. Source: `[Hobyrne]`.
    fn seen(filter: Filter, colour: Srgb8) -> Vec<u8> {
        match filter {
            Filter::Red => vec![colour.0[0]],
            Filter::Cyan => vec![colour.0[1], colour.0[2]],
        }
    }

    #[test]
    fn every_combination_has_its_published_inks() {
        let (black, white) = (Srgb8([0; 3]), Srgb8([255; 3]));
        for (glasses, ground, left, right, both) in [
            (RED_LEFT, Ground::White, CYAN, RED, black),
            (CYAN_LEFT, Ground::White, RED, CYAN, black),
            (RED_LEFT, Ground::Black, RED, CYAN, white),
            (CYAN_LEFT, Ground::Black, CYAN, RED, white),
        ] {
            let expected = Inks { left, right, both, ground: ground.colour(), text: both };
            assert_eq!(inks(&glasses, ground), expected, "{glasses:?} {ground:?}");
        }
    }

    #[test]
    fn each_mark_is_seen_by_its_own_eye_alone_and_an_overlap_by_both() {
        for glasses in [RED_LEFT, CYAN_LEFT] {
            for ground in [Ground::White, Ground::Black] {
                let inks = inks(&glasses, ground);
                let visible = |filter, ink| seen(filter, ink) != seen(filter, inks.ground);
                let by = |ink| (visible(glasses.left, ink), visible(glasses.right, ink));
                assert_eq!(by(inks.left), (true, false), "{glasses:?} {ground:?}");
                assert_eq!(by(inks.right), (false, true), "{glasses:?} {ground:?}");
                assert_eq!(by(inks.both), (true, true), "{glasses:?} {ground:?}");
                // An overlap is as dark (or as light) to each eye as that eye's own mark.
                assert_eq!(seen(glasses.left, inks.both), seen(glasses.left, inks.left));
                assert_eq!(seen(glasses.right, inks.both), seen(glasses.right, inks.right));
            }
        }
    }

    #[test]
    fn swapping_the_glasses_or_the_ground_swaps_the_two_inks() {
        for ground in [Ground::White, Ground::Black] {
            let (a, b) = (inks(RED_LEFT, ground), inks(CYAN_LEFT, ground));
            assert_eq!((a.left, a.right), (b.right, b.left));
        }
        let (white, black) = (inks(RED_LEFT, Ground::White), inks(RED_LEFT, Ground::Black));
        assert_eq!((white.left, white.right), (black.right, black.left));
    }

    #[test]
    fn the_same_filter_twice_separates_nothing() {
        assert!(RED_LEFT.separate() && CYAN_LEFT.separate());
        assert!(!Glasses::ideal(Filter::Red, Filter::Red).separate());
    }
}
