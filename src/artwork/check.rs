//! What an SVG may hold: an outline knows shapes, groups and copies, and nothing else. What cannot be shown is refused
//! by name, never left out in silence.

use std::collections::BTreeSet;

use usvg::roxmltree::{Document, Node};

use crate::spec::picture::Refusal;
use crate::spec::text::shown;

use super::FARTHEST;
use super::sheet;

/// The namespace of SVG.
///
/// Source: `[SVG2]`, section on the document structure.
const SVG: &str = "http://www.w3.org/2000/svg";
/// The namespace of links before SVG 2.
///
/// Source: `[SVG2]`, section on linking.
const XLINK: &str = "http://www.w3.org/1999/xlink";

/// Elements that draw or hold what draws.
const DRAWN: &[&str] = &["svg", "g", "use", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon"];
/// Elements that draw nothing by themselves.
const HELD: &[&str] = &["defs", "style", "title", "desc", "metadata", "linearGradient", "radialGradient", "stop"];
/// Attributes that hold coordinates.
const COORDINATES: &[&str] = &[
    "d",
    "points",
    "transform",
    "viewBox",
    "x",
    "y",
    "x1",
    "y1",
    "x2",
    "y2",
    "cx",
    "cy",
    "r",
    "rx",
    "ry",
    "width",
    "height",
    "stroke-width",
];
/// The most gradients: each is looked up for whatever names it. Design choice.
const MOST_GRADIENTS: usize = 500;

/// Whether a node is an element of SVG, and not something that a drawing program keeps for itself.
pub(super) fn is_svg(node: &Node<'_, '_>) -> bool {
    node.is_element() && matches!(node.tag_name().namespace(), None | Some(SVG))
}

/// Whether an element of SVG draws, or holds what draws.
pub(super) fn is_drawn(node: &Node<'_, '_>) -> bool {
    is_svg(node) && DRAWN.contains(&node.tag_name().name())
}

/// Refuses whatever an outline cannot show.
pub(super) fn check(document: &Document<'_>) -> Result<(), Refusal> {
    let root = document.root_element();
    if !is_svg(&root) || root.tag_name().name() != "svg" {
        return Err(Refusal::new("is not an SVG", "save the drawing as SVG"));
    }
    let gradient = |node: &Node<'_, '_>| is_svg(node) && node.tag_name().name().ends_with("Gradient");
    let gradients: BTreeSet<&str> =
        root.descendants().filter(gradient).filter_map(|node| node.attribute("id")).collect();
    if MOST_GRADIENTS < root.descendants().filter(gradient).count() {
        let message = format!("has more than {MOST_GRADIENTS} gradients");
        return Err(Refusal::new(message, "fill with plain colours: a drawing has one ink"));
    }
    walk(root, &gradients)
}

fn walk(node: Node<'_, '_>, gradients: &BTreeSet<&str>) -> Result<(), Refusal> {
    let name = node.tag_name().name();
    let nested = name == "svg" && node.parent_element().is_some();
    if nested || !(DRAWN.contains(&name) || HELD.contains(&name)) {
        return Err(unknown(name));
    }
    for attribute in node.attributes() {
        match attribute.namespace() {
            None if attribute.name() != "href" => property(name, attribute.name(), attribute.value(), gradients)?,
            None | Some(XLINK) if attribute.name() == "href" => link(name, attribute.value())?,
            _ => {}
        }
    }
    match name {
        "style" => {
            let text: String = node.children().filter_map(|child| child.text()).collect();
            return sheet::check(&text, |key, value| property("style", key, value, gradients));
        }
        "title" | "desc" | "metadata" => return Ok(()),
        _ => {}
    }
    node.children().filter(is_svg).try_for_each(|child| walk(child, gradients))
}

/// Why an element is refused, with the way out where there is one.
fn unknown(name: &str) -> Refusal {
    let help = match name {
        "text" | "tspan" | "textPath" => "convert the letters to outlines",
        "image" | "feImage" => "draw its outline with paths",
        "script" => "save it without scripts",
        "filter" => "save it without filters",
        "mask" | "clipPath" => "cut the shapes themselves",
        "pattern" => "fill with a plain colour, or draw the pattern with paths",
        "marker" => "draw the ends of lines with paths",
        "symbol" | "svg" => "use a `<g>` with an `id` in its place",
        _ => "use paths, basic shapes, `<g>` and `<use>` alone",
    };
    let inner = if name == "svg" { " inside another" } else { "" };
    Refusal::new(format!("has an element `<{}>`{inner}, which an outline cannot show", shown(name)), help)
}

/// A link may lead to a place in the same file alone.
fn link(element: &str, target: &str) -> Result<(), Refusal> {
    if element == "use" || element.ends_with("Gradient") {
        if target.trim().starts_with('#') {
            return Ok(());
        }
        let message = format!("has a `<{element}>` of `{}`, outside the file", shown(target));
        return Err(Refusal::new(message, "copy what it names into the picture"));
    }
    let message = format!("has a link to `{}` in `<{}>`", shown(target), shown(element));
    Err(Refusal::new(message, "save the picture without links"))
}

/// Checks an attribute, or the same property of a style.
fn property(element: &str, key: &str, value: &str, gradients: &BTreeSet<&str>) -> Result<(), Refusal> {
    let written = value.split('!').next().unwrap_or(value).trim();
    match key {
        "style" => sheet::declarations(value, |key, value| property(element, key, value, gradients)),
        "filter" | "mask" | "clip-path" if written != "none" => {
            let message = format!("has a `{key}` on `<{element}>`, which an outline cannot show");
            Err(Refusal::new(message, "draw the shape as it should look"))
        }
        _ if key.starts_with("marker") && written != "none" => {
            let message = format!("has a `{key}` on `<{element}>`, which an outline cannot show");
            Err(Refusal::new(message, "draw the ends of lines with paths"))
        }
        _ if key.starts_with("on") => {
            let message = format!("has a script in `{}` of `<{element}>`", shown(key));
            Err(Refusal::new(message, "save it without scripts"))
        }
        _ if written.contains("url(") => paint(key, written, gradients),
        _ if COORDINATES.contains(&key) => numbers(value).try_for_each(|number| near(element, key, number)),
        _ => Ok(()),
    }
}

/// Paint by name must name a gradient of the same file; it counts as solid.
fn paint(key: &str, value: &str, gradients: &BTreeSet<&str>) -> Result<(), Refusal> {
    let name = value.strip_prefix("url(").and_then(|rest| rest.split_once(')')).map(|(name, _)| name);
    let name = name.map(|name| name.trim().trim_matches(['"', '\'']));
    let known = name.and_then(|name| name.strip_prefix('#')).is_some_and(|id| gradients.contains(id));
    if matches!(key, "fill" | "stroke") && known {
        return Ok(());
    }
    let message = format!("has `{}: {}`, which names no gradient of the file", shown(key), shown(value));
    Err(Refusal::new(message, "paint with a plain colour: a drawing has one ink"))
}

fn near(element: &str, key: &str, (text, value): (&str, f64)) -> Result<(), Refusal> {
    if value.abs() <= FARTHEST {
        return Ok(());
    }
    let message = format!(
        "has the coordinate `{}` in `{key}` of `<{element}>`, beyond the limit of {FARTHEST} either way",
        shown(text)
    );
    Err(Refusal::new(message, "scale the drawing down"))
}

/// How many numbers the coordinates of an element hold.
pub(super) fn count_numbers(node: &Node<'_, '_>) -> usize {
    let held = node.attributes().filter(|attribute| COORDINATES.contains(&attribute.name()));
    held.map(|attribute| numbers(attribute.value()).count()).sum()
}

/// The numbers in a list of coordinates or in path data, as written and as read: a sign or a second point begins the
/// next number.
///
/// Source: `[SVG2]`, the grammar of path data.
fn numbers(text: &str) -> impl Iterator<Item = (&str, f64)> {
    let mut rest = text;
    std::iter::from_fn(move || {
        loop {
            let start = rest.find(|c: char| c.is_ascii_digit() || matches!(c, '.' | '+' | '-'))?;
            let length = number_length(&rest.as_bytes()[start..]);
            let written = &rest[start..start + length];
            rest = &rest[start + length..];
            if let Ok(value) = written.parse() {
                return Some((written, value));
            }
        }
    })
}

/// The bytes of the number that begins here, at least 1.
fn number_length(bytes: &[u8]) -> usize {
    let digits = |from: usize| bytes[from..].iter().take_while(|b| b.is_ascii_digit()).count();
    let mut end = usize::from(matches!(bytes.first(), Some(b'+' | b'-')));
    end += digits(end);
    if bytes.get(end) == Some(&b'.') {
        end += 1 + digits(end + 1);
    }
    if matches!(bytes.get(end), Some(b'e' | b'E')) {
        let sign = usize::from(matches!(bytes.get(end + 1), Some(b'+' | b'-')));
        let power = digits((end + 1 + sign).min(bytes.len()));
        end += if 0 < power { 1 + sign + power } else { 0 };
    }
    end.max(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_as_path_data_packs_them() {
        let read = |text: &str| numbers(text).map(|(_, value)| value).collect::<Vec<_>>();
        assert_eq!(read("M1-2.5.5,3e2L4e-1+7z"), [1.0, -2.5, 0.5, 300.0, 0.4, 7.0]);
        assert_eq!(read("10mm 2em 5."), [10.0, 2.0, 5.0]);
        assert_eq!(read("- . + e"), Vec::<f64>::new());
        assert_eq!(read("1e999"), [f64::INFINITY]);
    }
}
