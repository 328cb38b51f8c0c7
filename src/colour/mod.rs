//! Inks: which colour a mark takes so that one eye sees it and the other does not.
//!
//! Eyes come first, colours last: specs, scenes and the solver speak of left, right and both. Nothing here knows a
//! page or a depth.

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

/// A colour of the sRGB space, 8 bits a channel (IEC 61966-2-1).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Srgb8(pub [u8; 3]);

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
