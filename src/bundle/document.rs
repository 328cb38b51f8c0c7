//! The PDF of an edition: what it says about itself, and an excerpt where a run asks for some pages alone.

use std::collections::{BTreeMap, BTreeSet};

use crate::colour::{Cmyk, InkPlan, Srgb8};
use crate::language::Tongue;
use crate::layout::sheet::{Node, Role, Sheet};
use crate::render::pdf::{PdfBook, pdf};
use crate::spec::{Edition, SetSpec};

use super::error::Error;

/// Which document of an edition it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Part {
    /// The book.
    Book,
    /// The answers, where they are a book of their own.
    Answers,
}

/// The PDF of these sheets of an edition with these inks: of all of them, or of some alone.
pub(super) fn document(
    set: &SetSpec,
    (edition, plan): (&Edition, &InkPlan),
    part: Part,
    (all, sheets): (&[Sheet], &[Sheet]),
) -> Result<Vec<u8>, Error> {
    let tongue = Tongue::of(edition.language);
    let book = about(set, edition, tongue)
        .map(|book| part.named(book, tongue))
        .ok_or_else(|| Error::Date(set.date.clone()))?;
    let book = PdfBook { process: edition.colour.cmyk.then(|| process(plan, sheets)), ..book };
    let made = if sheets.len() == all.len() { pdf(&book, sheets) } else { pdf(&book, &excerpt(sheets)) };
    made.map_err(|source| Error::Pdf { edition: edition.id.clone(), source })
}

impl Part {
    /// What the part says of itself, from what the book says.
    fn named(self, book: PdfBook, tongue: &Tongue) -> PdfBook {
        match self {
            Part::Book => book,
            Part::Answers => PdfBook {
                title: tongue.tell("document-answers", &[("title", (&book.title).into())]),
                subject: tongue.tell("document-answers-subject", &[("title", (&book.title).into())]),
                id: format!("{}/answers", book.id),
                ..book
            },
        }
    }
}

/// What the document says about itself; `None` where the date of the set is none.
fn about(set: &SetSpec, edition: &Edition, tongue: &Tongue) -> Option<PdfBook> {
    let [first, second] = edition.glasses.pair().map(|filter| tongue.say(&format!("filter-{}", filter.name())));
    let glasses = [("first", first.into()), ("second", second.into())];
    let subject = set.summary.clone();
    Some(PdfBook {
        title: set.title.clone(),
        author: set.author.clone(),
        subject: subject.unwrap_or_else(|| tongue.tell("document-subject", &glasses)),
        keywords: vec![
            tongue.say("document-practice"),
            tongue.say("document-anaglyph"),
            tongue.tell("document-glasses", &glasses),
        ],
        language: edition.language.tag().to_owned(),
        date: date(&set.date)?,
        id: match &set.reader {
            Some(reader) => format!("{}/{}/{reader}/{}", set.id, set.version, edition.id),
            None => format!("{}/{}/{}", set.id, set.version, edition.id),
        },
        process: None,
    })
}

/// The process inks of every colour on the sheets: the recipes of the plan, and the separation of each patch.
fn process(plan: &InkPlan, sheets: &[Sheet]) -> BTreeMap<Srgb8, Cmyk> {
    let mut process = BTreeMap::new();
    sheets.iter().for_each(|sheet| separate(&sheet.nodes, &mut process));
    let (inks, recipes) = (&plan.inks, &plan.recipes);
    process.extend([
        (inks.left, recipes.left),
        (inks.right, recipes.right),
        (inks.both, recipes.both),
        (inks.ground, recipes.ground),
        (inks.text, recipes.text),
    ]);
    process
}

fn separate(nodes: &[Node], process: &mut BTreeMap<Srgb8, Cmyk>) {
    for node in nodes {
        match node {
            Node::Group(_, inner) => separate(inner, process),
            Node::Patch(patch) => {
                process.insert(patch.colour, Cmyk::of(patch.colour));
            }
            Node::Text(_) | Node::Fill(_) | Node::Art(_) => {}
        }
    }
}

/// Year, month and day of `YYYY-MM-DD`.
fn date(text: &str) -> Option<(u16, u8, u8)> {
    let mut parts = text.split('-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let date = (year.parse().ok()?, month.parse().ok()?, day.parse().ok()?);
    parts.next().is_none().then_some(date)
}

/// The sheets as a document of their own: links that lead out of it become plain content.
fn excerpt(sheets: &[Sheet]) -> Vec<Sheet> {
    let inside: BTreeSet<_> = sheets.iter().map(|s| s.id.as_str()).collect();
    let unlinked = |sheet: &Sheet| Sheet { nodes: unlink(&sheet.nodes, &inside), ..sheet.clone() };
    sheets.iter().map(unlinked).collect()
}

fn unlink(nodes: &[Node], inside: &BTreeSet<&str>) -> Vec<Node> {
    let mut kept = Vec::with_capacity(nodes.len());
    for node in nodes {
        match node {
            Node::Group(Role::Link { target, .. }, inner) if !inside.contains(target.as_str()) => {
                kept.extend(unlink(inner, inside));
            }
            Node::Group(role, inner) => kept.push(Node::Group(role.clone(), unlink(inner, inside))),
            other => kept.push(other.clone()),
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use kurbo::Rect;

    use super::*;

    fn link(target: &str, inner: Vec<Node>) -> Node {
        Node::Group(Role::Link { target: target.into(), area: Rect::ZERO, alt: String::new() }, inner)
    }

    #[test]
    fn links_out_of_an_excerpt_become_plain_content() {
        let line = || Node::Group(Role::Paragraph, Vec::new());
        let nodes = [Node::Group(Role::List, vec![link("near", vec![line()]), link("far", vec![line()])])];
        let kept = unlink(&nodes, &BTreeSet::from(["near"]));
        let [Node::Group(Role::List, entries)] = kept.as_slice() else { panic!("{kept:?}") };
        assert!(matches!(&entries[0], Node::Group(Role::Link { target, .. }, _) if target == "near"));
        assert!(matches!(&entries[1], Node::Group(Role::Paragraph, _)));
    }

    #[test]
    fn dates_have_three_numbers() {
        assert_eq!(date("2026-05-04"), Some((2026, 5, 4)));
        for bad in ["", "2026-05", "2026-05-04-01", "4 May"] {
            assert_eq!(date(bad), None, "{bad}");
        }
    }
}
