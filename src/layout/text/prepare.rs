//! Text before it is shaped: spans joined, characters mapped to those that the family has.

use std::ops::Range;

use super::{MissingGlyph, Span};
use crate::layout::sheet::Face;

/// Joins spans, changes what the family has under another code point, and finds the stretches that are not in `face`.
pub(crate) fn prepare(spans: &[Span<'_>], face: Face) -> (String, Vec<Range<usize>>) {
    let mut text = String::with_capacity(spans.iter().map(|span| span.text.len()).sum());
    let mut other = Vec::new();
    for span in spans {
        let start = text.len();
        text.extend(span.text.chars().filter_map(known_as));
        if span.face != face && start < text.len() {
            other.push(start..text.len());
        }
    }
    (text, other)
}

/// The character whose glyph stands for this one. The family has the Greek letters, not their compatibility twins
/// (Unicode: U+00B5 decomposes to U+03BC; U+2206 looks like U+0394), and no glyph for a tab.
fn known_as(character: char) -> Option<char> {
    match character {
        '\u{b5}' => Some('\u{3bc}'),
        '\u{2206}' => Some('\u{394}'),
        '\t' => Some(' '),
        '\r' => None,
        other => Some(other),
    }
}

/// Moves a place in prepared text back to where it was before.
pub(crate) fn before_prepare(missing: MissingGlyph, spans: &[Span<'_>]) -> MissingGlyph {
    let (mut before, mut after) = (0, 0);
    for character in spans.iter().flat_map(|span| span.text.chars()) {
        if missing.at <= after && known_as(character).is_some() {
            break;
        }
        before += character.len_utf8();
        after += known_as(character).map_or(0, char::len_utf8);
    }
    MissingGlyph { at: before, ..missing }
}
