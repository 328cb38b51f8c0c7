//! Inks: which colour a mark takes so that one eye sees it and the other does not.
//!
//! Eyes come first, colours last: specs, scenes and the solver speak of left, right and both. Nothing here knows a
//! page or a depth.

pub mod srgb;

pub use srgb::Srgb8;

/// The colour of one filter of the glasses.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Filter {
    /// Passes red light.
    Red,
    /// Passes green and blue light.
    Cyan,
}

/// The filters as worn: what is before the left and before the right eye.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Glasses {
    /// Before the left eye.
    pub left: Filter,
    /// Before the right eye.
    pub right: Filter,
}

/// The colour of the empty page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// White: paper, or a white screen page. Marks take light away.
    White,
    /// Black: a screen page. Marks are light.
    Black,
}

/// The colours of one edition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Inks {
    /// Of a mark for the left eye alone.
    pub left: Srgb8,
    /// Of a mark for the right eye alone.
    pub right: Srgb8,
    /// Where marks for both eyes overlap.
    pub both: Srgb8,
    /// Of the empty page.
    pub ground: Srgb8,
    /// Of words and page furniture.
    pub text: Srgb8,
}

impl Filter {
    /// The filter in plain words, as pages and specs write it.
    pub const fn name(self) -> &'static str {
        match self {
            Filter::Red => "red",
            Filter::Cyan => "cyan",
        }
    }

    /// Which of red, green and blue light passes.
    /// Source: `[Hobyrne]`, what looks dark and light through a red filter; idealised to whole channels.
    pub const fn passes(self) -> [bool; 3] {
        match self {
            Filter::Red => [true, false, false],
            Filter::Cyan => [false, true, true],
        }
    }
}

impl Glasses {
    /// Whether the two filters differ. Glasses with the same filter twice separate nothing.
    pub fn separate(self) -> bool {
        self.left != self.right
    }
}

impl Ground {
    /// The ground in plain words, as specs and reports write it.
    pub const fn name(self) -> &'static str {
        match self {
            Ground::White => "white",
            Ground::Black => "black",
        }
    }

    /// The colour of the empty page.
    pub const fn colour(self) -> Srgb8 {
        match self {
            Ground::White => Srgb8::WHITE,
            Ground::Black => Srgb8::BLACK,
        }
    }
}

/// The inks for glasses as worn on a ground.
///
/// One rule covers both grounds: an eye sees only the channels that its filter passes, so a mark for this eye changes
/// just these channels of the ground. On white the mark takes away the light that the filter passes (red filter, cyan
/// ink); on black it is that light (red filter, red ink). Where marks for both eyes overlap, all channels change.
///
/// The glasses must [`separate`](Glasses::separate) the eyes; with the same filter twice, both eyes see every mark.
/// Source: `[Proofing]` for white; for black, `[Hobyrne]`: the red filter shows red light and stops cyan.
///
/// ```
/// use depthpress::colour::{Filter, Glasses, Ground, inks};
/// let glasses = Glasses { left: Filter::Red, right: Filter::Cyan };
/// assert_eq!(inks(glasses, Ground::White).left.hex(), "#00ffff");
/// assert_eq!(inks(glasses, Ground::Black).left.hex(), "#ff0000");
/// ```
pub fn inks(glasses: Glasses, ground: Ground) -> Inks {
    let text = opposite(ground);
    Inks {
        left: mark(glasses.left, ground),
        right: mark(glasses.right, ground),
        both: text,
        ground: ground.colour(),
        text,
    }
}

/// The ground with the channels changed that the filter passes.
fn mark(filter: Filter, ground: Ground) -> Srgb8 {
    let (mut colour, changed) = (ground.colour().0, opposite(ground).0);
    for (channel, passes) in filter.passes().into_iter().enumerate() {
        if passes {
            colour[channel] = changed[channel];
        }
    }
    Srgb8(colour)
}

/// The colour that differs from the ground in every channel.
fn opposite(ground: Ground) -> Srgb8 {
    match ground {
        Ground::White => Ground::Black.colour(),
        Ground::Black => Ground::White.colour(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const RED_LEFT: Glasses = Glasses { left: Filter::Red, right: Filter::Cyan };
    const CYAN_LEFT: Glasses = Glasses { left: Filter::Cyan, right: Filter::Red };
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
            assert_eq!(inks(glasses, ground), expected, "{glasses:?} {ground:?}");
        }
    }

    #[test]
    fn each_mark_is_seen_by_its_own_eye_alone_and_an_overlap_by_both() {
        for glasses in [RED_LEFT, CYAN_LEFT] {
            for ground in [Ground::White, Ground::Black] {
                let inks = inks(glasses, ground);
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
        assert!(!Glasses { left: Filter::Red, right: Filter::Red }.separate());
    }
}
