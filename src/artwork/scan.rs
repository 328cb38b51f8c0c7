//! A first look at the bytes of an SVG, before anything is built from them: how many tags there are and how deep.
//!
//! This is no parser: it only bounds what the parser after it can be made to do.

use crate::spec::picture::Refusal;

use super::{MOST_DEPTH, MOST_ELEMENTS};

/// The most comments, instructions and closing tags besides the elements. Design choice.
const MOST_MARKS: usize = 3 * MOST_ELEMENTS;
/// The most attributes of one element. Design choice.
const MOST_ATTRIBUTES: usize = 100;
/// The most names of namespaces. Design choice: drawing programs write about a dozen.
const MOST_NAMESPACES: usize = 64;

/// Refuses an SVG whose tags are too many, too deep or too wide, or that brings a document type.
pub(super) fn scan(text: &str) -> Result<(), Refusal> {
    if MOST_NAMESPACES < text.matches("xmlns").take(MOST_NAMESPACES + 1).count() {
        let message = format!("has more than {MOST_NAMESPACES} namespace declarations");
        return Err(Refusal::new(message, "save it as a plain SVG"));
    }
    let (mut rest, mut marks, mut elements, mut depth) = (text, 0_usize, 0_usize, 0_usize);
    while let Some(start) = rest.find('<') {
        let tag = &rest[start..];
        marks += 1;
        let length = if let Some(kind) = skipped(tag)? {
            kind
        } else if tag.starts_with("</") {
            depth = depth.saturating_sub(1);
            end_of(tag, ">")
        } else {
            elements += 1;
            let (length, attributes, closed) = open_tag(tag);
            if MOST_ATTRIBUTES < attributes {
                let message = format!("has an element of more than {MOST_ATTRIBUTES} attributes");
                return Err(Refusal::new(message, "save it as a plain SVG"));
            }
            depth += usize::from(!closed);
            length
        };
        if MOST_DEPTH < depth {
            let message = format!("has elements nested more than {MOST_DEPTH} deep");
            return Err(Refusal::new(message, "ungroup what need not be grouped"));
        }
        if MOST_ELEMENTS < elements || MOST_MARKS < marks {
            let message = format!("has more than {MOST_ELEMENTS} elements");
            return Err(Refusal::new(message, "join the paths, or simplify the drawing"));
        }
        rest = &tag[length..];
    }
    Ok(())
}

/// The length of a comment, of character data or of an instruction; `None` where the tag is an element's.
fn skipped(tag: &str) -> Result<Option<usize>, Refusal> {
    if tag.starts_with("<!--") {
        return Ok(Some(end_of(tag, "-->")));
    }
    if tag.starts_with("<![CDATA[") {
        return Ok(Some(end_of(tag, "]]>")));
    }
    if tag.starts_with("<!") {
        let message = "has a `<!DOCTYPE …>`, which can name other files and grow without end";
        return Err(Refusal::new(message, "delete that part of the file; a picture needs none"));
    }
    if tag.starts_with("<?xml-stylesheet") {
        return Err(Refusal::new("names a style sheet outside the file", "save the styles inside the picture"));
    }
    Ok(tag.starts_with("<?").then(|| end_of(tag, "?>")))
}

/// One past the next `mark`, or all that is left.
fn end_of(text: &str, mark: &str) -> usize {
    text.find(mark).map_or(text.len(), |at| at + mark.len())
}

/// The length of an opening tag, its attributes, and whether it closes itself. A `>` in quotes is text.
fn open_tag(tag: &str) -> (usize, usize, bool) {
    let (mut quote, mut attributes) = (None, 0);
    let bytes = tag.as_bytes();
    for (i, &byte) in bytes.iter().enumerate() {
        match (quote, byte) {
            (Some(open), _) if open == byte => quote = None,
            (Some(_), _) => {}
            (None, b'"' | b'\'') => quote = Some(byte),
            (None, b'=') => attributes += 1,
            (None, b'>') => return (i + 1, attributes, bytes[i - 1] == b'/'),
            (None, _) => {}
        }
    }
    (tag.len(), attributes, true)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tags_in_comments_quotes_and_data_do_not_count() {
        let inner = "<g>".repeat(MOST_DEPTH + 10);
        for fine in [
            format!("<svg><!-- {inner} --></svg>"),
            format!("<svg><desc><![CDATA[{inner}]]></desc></svg>"),
            "<svg><g a='>' b=\"/>\"/></svg>".to_owned(),
            format!("<svg>{}</svg>", "<g/>".repeat(MOST_DEPTH + 10)),
            format!("<svg>{}</svg>", "<g></g>".repeat(MOST_DEPTH + 10)),
        ] {
            assert_eq!(scan(&fine), Ok(()), "{fine:.60}");
        }
        assert!(scan(&format!("<svg>{inner}")).is_err());
        assert_eq!(open_tag("<g a='>' b=\"/>\"/>x"), (17, 2, true));
    }
}
