//! Style sheets inside an SVG, as far as drawing programs write them: classes, ids and element names with their
//! properties. Selectors that look along the tree are refused: matching them can take any time.

use crate::spec::picture::Refusal;
use crate::spec::text::shown;

/// The longest style sheet, in bytes. Design choice.
const MOST_BYTES: usize = 16_384;
/// The most selectors. Design choice.
const MOST_SELECTORS: usize = 500;

/// Checks a style sheet; `property` gets each property with its value.
pub(super) fn check(text: &str, property: impl Fn(&str, &str) -> Result<(), Refusal>) -> Result<(), Refusal> {
    if MOST_BYTES < text.len() {
        let message = format!("has a style sheet of {} bytes, above the limit of {MOST_BYTES} bytes", text.len());
        return Err(Refusal::new(message, "save it with presentation attributes in place of styles"));
    }
    let text = without_comments(text);
    if let Some(rule) = text.split('@').nth(1) {
        let rule = rule.split(|c: char| !c.is_ascii_alphabetic() && c != '-').next().unwrap_or("");
        let message = format!("has `@{}` in its style sheet", shown(rule));
        return Err(Refusal::new(message, "keep plain rules alone: nothing outside the file is read"));
    }
    let mut selectors = 0;
    for rule in text.split('}') {
        let Some((list, body)) = rule.split_once('{') else { continue };
        for selector in list.split(',').map(str::trim) {
            selectors += 1;
            let plain = |c: char| c.is_alphanumeric() || matches!(c, '.' | '#' | '-' | '_' | '*');
            if !selector.chars().all(plain) {
                let message = format!("has the selector `{}` in its style sheet", shown(selector));
                return Err(Refusal::new(message, "use classes, ids and element names alone, as in `.hull`"));
            }
        }
        declarations(body, &property)?;
    }
    if MOST_SELECTORS < selectors {
        let message = format!("has {selectors} selectors in its style sheet, above the limit of {MOST_SELECTORS}");
        return Err(Refusal::new(message, "save it with presentation attributes in place of styles"));
    }
    Ok(())
}

/// Hands on each `property: value` of a style.
pub(super) fn declarations(text: &str, property: impl Fn(&str, &str) -> Result<(), Refusal>) -> Result<(), Refusal> {
    let pairs = text.split(';').filter_map(|one| one.split_once(':'));
    pairs.map(|(key, value)| (key.trim(), value.trim())).try_for_each(|(key, value)| property(key, value))
}

fn without_comments(text: &str) -> String {
    let (mut out, mut rest) = (String::new(), text);
    while let Some((before, after)) = rest.split_once("/*") {
        out.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    out + rest
}
