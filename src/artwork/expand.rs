//! How much an SVG becomes once every `use` is written out: a few lines that copy copies can stand for billions.

use std::collections::BTreeMap;

use usvg::roxmltree::{Document, Node};

use crate::spec::picture::Refusal;
use crate::spec::text::shown;

use super::check::{count_numbers, is_drawn, is_svg};
use super::{MOST_DEPTH, MOST_ELEMENTS, MOST_NUMBERS};

/// The most bytes of styles, over all elements that they are matched with. Design choice.
const MOST_STYLING: usize = 20_000_000;

/// What an element and all that it holds amount to.
#[derive(Debug, Clone, Copy, Default)]
struct Weight {
    elements: usize,
    numbers: usize,
    /// Levels below and including it.
    depth: usize,
}

/// What is known of the elements that a `use` names; `None` while one is being weighed.
type Known<'a> = BTreeMap<&'a str, Option<Weight>>;

/// Refuses an SVG that grows too large, too deep or without end.
pub(super) fn check(document: &Document<'_>) -> Result<(), Refusal> {
    let svg = document.descendants().filter(is_svg);
    let mut ids: BTreeMap<&str, Node<'_, '_>> = BTreeMap::new();
    for node in svg {
        if let Some(id) = node.attribute("id")
            && ids.insert(id, node).is_some()
        {
            let message = format!("has two elements with the id `{}`", shown(id));
            return Err(Refusal::new(message, "give each its own id"));
        }
    }
    let weight = weigh(document.root_element(), 1, &ids, &mut Known::new())?;
    if MOST_ELEMENTS < weight.elements {
        let message = format!(
            "has {} elements once every `<use>` is written out, above the limit of {MOST_ELEMENTS}",
            weight.elements
        );
        return Err(Refusal::new(message, "use fewer copies of copies"));
    }
    if MOST_NUMBERS < weight.numbers {
        let message = format!("has {} numbers in its paths, above the limit of {MOST_NUMBERS}", weight.numbers);
        return Err(Refusal::new(message, "simplify the paths"));
    }
    let styles = document.descendants().filter(|node| is_svg(node) && node.tag_name().name() == "style");
    let bytes: usize = styles.filter_map(|node| node.text()).map(str::len).sum();
    if MOST_STYLING < bytes.saturating_mul(weight.elements) {
        let message = format!("has {bytes} bytes of style sheet for {} elements", weight.elements);
        return Err(Refusal::new(message, "save it with presentation attributes in place of styles"));
    }
    Ok(())
}

fn weigh<'a, 'i>(
    node: Node<'a, 'i>,
    level: usize,
    ids: &BTreeMap<&'a str, Node<'a, 'i>>,
    known: &mut Known<'a>,
) -> Result<Weight, Refusal> {
    if MOST_DEPTH < level {
        return Err(too_deep());
    }
    let mut weight = Weight { elements: 1, numbers: count_numbers(&node), depth: 1 };
    let copied = if node.tag_name().name() == "use" { Some(target(node, ids)?) } else { None };
    for child in node.children().filter(is_svg) {
        weight.add(weigh(child, level + 1, ids, known)?);
    }
    if let Some((id, copied)) = copied {
        weight.add(copy(id, copied, level + 1, ids, known)?);
    }
    Ok(weight)
}

/// What a `use` copies, weighed once.
fn copy<'a, 'i>(
    id: &'a str,
    node: Node<'a, 'i>,
    level: usize,
    ids: &BTreeMap<&'a str, Node<'a, 'i>>,
    known: &mut Known<'a>,
) -> Result<Weight, Refusal> {
    match known.get(id) {
        Some(Some(weight)) if level + weight.depth <= MOST_DEPTH + 1 => return Ok(*weight),
        Some(Some(_)) => return Err(too_deep()),
        Some(None) => {
            let message = format!("has a `<use>` of `#{}` inside itself", shown(id));
            return Err(Refusal::new(message, "let no copy hold its own original"));
        }
        None => {}
    }
    known.insert(id, None);
    let weight = weigh(node, level, ids, known)?;
    known.insert(id, Some(weight));
    Ok(weight)
}

/// What a `use` names. `check` has seen that the name is in the file; here it must be there and draw.
fn target<'a, 'i>(
    node: Node<'a, 'i>,
    ids: &BTreeMap<&'a str, Node<'a, 'i>>,
) -> Result<(&'a str, Node<'a, 'i>), Refusal> {
    // SVG 2: an `href` without prefix holds before the older one.
    let bare = node.attributes().find(|a| a.name() == "href" && a.namespace().is_none());
    let link = bare.or_else(|| node.attributes().find(|a| a.name() == "href"));
    let Some(link) = link else {
        return Err(Refusal::new("has a `<use>` without `href`", "leave it out"));
    };
    let id = link.value().trim().trim_start_matches('#');
    match ids.get_key_value(id) {
        Some((id, node)) if is_drawn(node) && node.tag_name().name() != "svg" => Ok((id, *node)),
        _ => {
            let message = format!("has a `<use>` of `#{}`, which no shape or group of the file is", shown(id));
            Err(Refusal::new(message, "give what it should copy that id"))
        }
    }
}

impl Weight {
    fn add(&mut self, inner: Self) {
        self.elements = self.elements.saturating_add(inner.elements);
        self.numbers = self.numbers.saturating_add(inner.numbers);
        self.depth = self.depth.max(inner.depth + 1);
    }
}

fn too_deep() -> Refusal {
    let message = format!("has elements nested more than {MOST_DEPTH} deep, every `<use>` written out");
    Refusal::new(message, "use fewer groups in groups and copies of copies")
}
