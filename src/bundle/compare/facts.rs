//! What a set says, as facts with names: numbers and words that can be laid beside those of another set.
//!
//! Numbers come from the parts of `report.json`, under its names and rounded as there; what the report does not say
//! (words, shapes, weights, draws) is added. A key that comes into the report is compared from then on.
//!
//! To compare one more thing of the whole set: one line in `of_set`, and a rule in `class` if it is not major.

use std::collections::BTreeMap;

use kurbo::Point;
use serde::Serialize;
use serde_json::{Map, Value, json};

use crate::bundle::colour_report::{ColourPart, InksPart};
use crate::bundle::entry::entries;
use crate::bundle::grade_report::{DifficultyPart, ViewerPart};
use crate::bundle::inked::Inked;
use crate::bundle::issue::Told;
use crate::bundle::prepare::{Book, SolvedPage};
use crate::bundle::report::{fine, page_facts};
use crate::bundle::shard::inputs;
use crate::diagnostics::Diagnostic;
use crate::exercise::words::{Words, shape_noun};
use crate::language::{Language, Tongue};
use crate::layout::{LaidOut, Placed};
use crate::scene::Shape;
use crate::solve::{SolvedFeature, SolvedForm};
use crate::spec::readers::ReaderSpec;
use crate::spec::{Edition, SetSpec};

/// Facts by name; parts of a thing have its name and a point before their own. Nothing is null: what is not there has
/// no name.
pub type Facts = BTreeMap<String, Value>;

/// A thing with an id: an edition, a feature or a question.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// Unique among its like.
    pub id: String,
    /// What is said of it.
    pub facts: Facts,
}

/// An exercise page.
#[derive(Debug, Clone, PartialEq)]
pub struct PageFacts {
    /// Unique in the book.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Its number in each edition.
    pub numbers: BTreeMap<String, u32>,
    /// What is said of it.
    pub facts: Facts,
    /// What stands on it. Places (`at_mm`, `points`) count from the middle of the art field, which is the same in all
    /// editions.
    pub features: Vec<Item>,
    /// What it asks.
    pub questions: Vec<Item>,
    /// What is other in the other languages of its editions: its words, and art and answers that are words.
    pub languages: Languages,
}

/// Facts by the tag of a language.
pub type Languages = BTreeMap<&'static str, Facts>;

/// A set.
#[derive(Debug, Clone, PartialEq)]
pub struct SetFacts {
    /// Its name.
    pub head: Head,
    /// What is said of the whole of it.
    pub facts: Facts,
    /// Its editions.
    pub editions: Vec<Item>,
    /// Its exercise pages in the order of the book.
    pub pages: Vec<PageFacts>,
    /// What is said of it in the other languages of its editions.
    pub languages: Languages,
}

/// What names a set: none of it but the id is a difference.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Head {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Its version.
    pub version: String,
    /// Its date.
    pub date: String,
}

/// The facts of a book, in all its languages; `readers` are those of the set, by id alone.
///
/// # Errors
/// What does not fit the pages of an edition.
pub fn facts(book: &Book<'_>, readers: &[ReaderSpec]) -> Result<SetFacts, Vec<Diagnostic>> {
    let set = book.set;
    let (mut editions, mut numbers, mut problems) = (Vec::new(), BTreeMap::new(), Vec::new());
    for edition in &set.editions {
        let inked = Inked::of(edition);
        match book.lay_out(edition, &inked) {
            Ok(laid) => numbers.extend(numbered(&edition.id, &laid)),
            Err(more) => problems.extend(more),
        }
        editions.push(Item { id: edition.id.clone(), facts: of_edition(edition, &inked) });
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let number = |page: &str| {
        let of = |edition: &Edition| Some((edition.id.clone(), *numbers.get(&(edition.id.clone(), page.to_owned()))?));
        set.editions.iter().filter_map(of).collect()
    };
    Ok(SetFacts {
        head: Head {
            id: set.id.clone(),
            title: set.title.clone(),
            version: set.version.clone(),
            date: set.date.clone(),
        },
        facts: flat(&of_set(set, readers)),
        editions,
        pages: book.pages.iter().map(|page| of_page(book, page, number(&page.page.id))).collect(),
        languages: book.others.iter().map(|told| in_language(&told.set, &said(&told.set))).collect(),
    })
}

/// What is said in a language: its tag follows the first part of each name.
fn in_language(set: &SetSpec, tree: &Value) -> (&'static str, Facts) {
    let tag = set.language.tag();
    let name = |name: String| match name.split_once('.') {
        Some((first, rest)) => format!("{first}.{tag}.{rest}"),
        None => format!("{name}.{tag}"),
    };
    (tag, flat(tree).into_iter().map(|(known, value)| (name(known), value)).collect())
}

/// The numbers of the sheets of an edition.
fn numbered(edition: &str, laid: &LaidOut) -> Vec<((String, String), u32)> {
    laid.sheets.iter().map(|sheet| ((edition.to_owned(), sheet.id.clone()), sheet.number)).collect()
}

/// What an author says of the whole set. Releases go by their versions.
fn said(set: &SetSpec) -> Value {
    let licence = set.licence.as_ref();
    let releases = set.releases.iter().map(|release| (release.version.clone(), json!(release.changes)));
    json!({
        "title": set.title,
        "summary": set.summary,
        "author": set.author,
        "gate": set.gate,
        "contact": set.contact,
        "licence": licence.map(|l| json!({ "name": l.name, "text": l.text, "credits": l.credits })),
        "releases": releases.collect::<Map<String, Value>>(),
    })
}

/// The whole set. Version and date are its name, and no difference.
fn of_set(set: &SetSpec, readers: &[ReaderSpec]) -> Value {
    let plan = set.plan.as_ref().map(|plan| plan.value);
    let publish = &set.publish;
    let mut tree = json!({
        "id": set.id,
        "language": set.language.tag(),
        "order": if set.free_order { "free" } else { "rising" },
        "viewer": value(&ViewerPart::new(&set.viewer, &set.known, None)),
        "plan": plan.map(|plan| json!({
            "weeks": plan.weeks,
            "days": plan.days,
            "minutes": plan.minutes,
            "block_s": plan.block,
            "rest_s": plan.rest,
        })),
        "parts": {
            "front": set.front.iter().map(|part| part.word()).collect::<Vec<_>>(),
            "back": set.back.iter().map(|part| part.word()).collect::<Vec<_>>(),
        },
        "publish": {
            "previews": publish.previews.iter().map(|page| &page.value).collect::<Vec<_>>(),
            "watermark": publish.watermark.as_ref().map(|text| &text.value),
            "edition": publish.edition.as_ref().map(|edition| &edition.value),
        },
        "readers": readers.iter().map(|reader| &reader.id).collect::<Vec<_>>(),
    });
    if let (Some(tree), Value::Object(said)) = (tree.as_object_mut(), said(set)) {
        tree.extend(said);
    }
    tree
}

/// An edition with its inks.
fn of_edition(edition: &Edition, inked: &Inked) -> Facts {
    let mut colour = value(&ColourPart::new(edition, &inked.plan, &[]));
    let mut take = |key: &str| colour.as_object_mut().and_then(|colour| colour.remove(key)).unwrap_or_default();
    let (cmyk, recipes) = (take("cmyk"), take("recipes"));
    // Follows from `cmyk`.
    take("pdf");
    flat(&json!({
        "page": edition.page.name(),
        "ground": edition.ground.name(),
        "glasses": { "left": edition.glasses.left.name(), "right": edition.glasses.right.name() },
        "inks": value(&InksPart::new(&inked.plan.inks)),
        "colour": colour,
        // sRGB is what all other files have: process inks are a fact where the PDF is drawn in them.
        "recipes": if edition.colour.cmyk { recipes } else { Value::Null },
        "cmyk": cmyk,
        "ppi": edition.ppi.0,
        "formats": { "pdf": edition.formats.pdf, "svg": edition.formats.svg, "png": edition.formats.png },
        "answers": edition.answers.name(),
        "language": edition.language.tag(),
        "text": edition.text.name(),
        "hand": edition.hand.name(),
        "gated": edition.gated,
    }))
}

fn of_page(book: &Book<'_>, solved: &SolvedPage, numbers: BTreeMap<String, u32>) -> PageFacts {
    let page = &solved.page;
    let mut told = page_facts(book.set, solved);
    let questions = told.as_object_mut().and_then(|told| told.remove("questions")).unwrap_or_default();
    let grade = solved.difficulty.as_ref().map(|difficulty| value(&DifficultyPart::new(difficulty, &book.set.viewer)));
    let mut facts = flat(&told);
    let features: Vec<Item> = solved.features.iter().flat_map(of_feature).collect();
    facts.extend(flat(&json!({
        "kind": page.kind,
        "title": page.title,
        "strand": solved.strand,
        "seed": page.seed,
        "time_s": page.time,
        "difficulty": grade.map(|grade| json!({ "total": grade["total"], "grade": grade["grade"] })),
        "words": of_words(&page.words),
    })));
    PageFacts {
        id: page.id.clone(),
        title: page.title.clone(),
        numbers,
        facts,
        languages: elsewhere(book, &page.id, &features),
        features,
        questions: items(questions),
    }
}

/// A page in the other languages: words and answers, and what stands on it otherwise than in `own`.
fn elsewhere(book: &Book<'_>, id: &str, own: &[Item]) -> Languages {
    let of = |told: &Told| {
        let solved = told.pages.iter().find(|page| page.page.id == id)?;
        let page = &solved.page;
        let questions = page.quiz.iter().flat_map(|quiz| &quiz.questions);
        let art: Vec<Item> = solved.features.iter().flat_map(of_feature).collect();
        let tree = json!({
            "title": page.title,
            "words": of_words(&page.words),
            "art": otherwise(own, &art),
            "questions": questions
                .map(|question| (question.id.clone(), json!({ "choices": question.choices, "answer": question.answer })))
                .collect::<Map<String, Value>>(),
        });
        Some(in_language(&told.set, &tree))
    };
    book.others.iter().filter_map(of).collect()
}

/// The facts of the art in another language that are not as in the set's own, under the ids that it has there: ids come from
/// labels, and labels are translated.
fn otherwise(own: &[Item], art: &[Item]) -> Map<String, Value> {
    let nothing = Facts::new();
    let alike = own.len() == art.len();
    let pairs = art.iter().zip(0..).map(|(item, index)| match own.get(index).filter(|_| alike) {
        Some(same) => (&same.id, &same.facts, &item.facts),
        None => (&item.id, &nothing, &item.facts),
    });
    let differing = pairs.map(|(id, own, facts)| {
        let other = facts.iter().filter(|(name, value)| own.get(*name) != Some(*value));
        (id.clone(), other.map(|(name, value)| (name.clone(), value.clone())).collect::<Map<String, Value>>().into())
    });
    differing.collect()
}

fn of_words(words: &Words) -> Value {
    let parts = words.one_part.iter().map(|(seen, meaning)| format!("{seen}: {meaning}"));
    json!({
        "goal": words.goal,
        "setup": words.setup,
        "do": words.steps,
        "see": words.see,
        "one_part": parts.collect::<Vec<_>>(),
    })
}

/// A feature as the report lists it, and what more is drawn; of a field of dots, its figures after it.
fn of_feature(feature: &SolvedFeature) -> Vec<Item> {
    let placed = Placed::new(feature, Point::from(feature.at));
    let mut items = items(Value::Array(entries(&placed).iter().map(value).collect()));
    if let Some(first) = items.first_mut() {
        first.facts.extend(flat(&drawn(feature)));
    }
    items
}

/// What the report does not say of a feature.
fn drawn(feature: &SolvedFeature) -> Value {
    let solid = feature.solid.then_some(true);
    match &feature.form {
        SolvedForm::Shape { shape, weight, .. } => json!({
            "shape": shape_words(shape),
            "outline": drawing(shape),
            "weight_mm": fine(*weight),
            "solid": solid,
        }),
        SolvedForm::Path { closed, smooth, weight, .. } => {
            json!({ "shape": "path", "closed": closed, "smooth": smooth, "weight_mm": fine(*weight), "solid": solid })
        }
        SolvedForm::Strokes { strokes, weight } => {
            let ends = strokes.iter().map(|[(x0, y0), (x1, y1)]| [x0, y0, x1, y1].map(|mm| fine(*mm)));
            json!({
                "shape": "strokes",
                "strokes": ends.collect::<Vec<_>>(),
                "weight_mm": fine(*weight),
                "solid": solid,
            })
        }
        SolvedForm::Dots(dots) => json!({ "shape": "dots", "draw": digest(&dots.rows) }),
    }
}

/// A shape in words that tell it from every other: letters with what they say, a gap with its side.
fn shape_words(shape: &Shape) -> String {
    let name = shape_noun(shape, Tongue::of(Language::En)).one;
    match shape {
        Shape::Text(text) => format!("{name} `{text}`"),
        Shape::OpenRing(side) => format!("{name}, gap {}", side.name()),
        Shape::Polygon(sides) => format!("{name} of {sides} sides"),
        Shape::Drawing(drawing) => format!("drawing `{}`", drawing.name),
        Shape::Outline(inner) => format!("outline of a {}", shape_words(inner)),
        _ => name,
    }
}

/// What tells an author's drawing from another of the same name.
fn drawing(shape: &Shape) -> Option<String> {
    match shape {
        Shape::Drawing(drawing) => Some(digest(&drawing.outline)),
        Shape::Outline(inner) => drawing(inner),
        _ => None,
    }
}

/// Sixteen digits that are others where the thing is another.
fn digest(thing: &dyn std::fmt::Debug) -> String {
    inputs("compare", std::iter::empty(), thing).chars().take(16).collect()
}

/// A part of the report as a tree. The parts hold numbers and texts alone, so that this cannot fail; if it did, the fact
/// would be missing on both sides.
fn value<T: Serialize>(part: &T) -> Value {
    serde_json::to_value(part).unwrap_or_default()
}

/// The entries of a list, by their ids.
fn items(list: Value) -> Vec<Item> {
    let Value::Array(list) = list else { return Vec::new() };
    let item = |mut entry: Value| {
        let id = entry.as_object_mut().and_then(|entry| entry.remove("id"));
        Item { id: id.as_ref().and_then(Value::as_str).unwrap_or_default().to_owned(), facts: flat(&entry) }
    };
    list.into_iter().map(item).collect()
}

/// A tree as facts.
fn flat(tree: &Value) -> Facts {
    let mut facts = Facts::new();
    if let Value::Object(map) = tree {
        gather("", map, &mut facts);
    }
    facts
}

fn gather(before: &str, map: &Map<String, Value>, facts: &mut Facts) {
    for (key, value) in map {
        let name = if before.is_empty() { key.clone() } else { format!("{before}.{key}") };
        match value {
            Value::Null => {}
            Value::Object(inner) => gather(&name, inner, facts),
            Value::Array(list) if list.iter().any(Value::is_object) => {
                for (index, entry) in list.iter().enumerate() {
                    if let Value::Object(inner) = entry {
                        gather(&format!("{name}.{}", index + 1), inner, facts);
                    }
                }
            }
            value => {
                facts.insert(name, value.clone());
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn art_in_another_language_is_told_where_it_is_other_art() {
        let item = |id: &str, shape: &str| Item {
            id: id.to_owned(),
            facts: Facts::from([("shape".to_owned(), shape.into()), ("parallax_mm".to_owned(), json!(-8.0))]),
        };
        let own = [item("near", "ring"), item("word", "word `boat`")];
        let found = otherwise(&own, &[item("nah", "ring"), item("wort", "word `Boot`")]);
        assert_eq!(Value::Object(found), json!({ "near": {}, "word": { "shape": "word `Boot`" } }));
        let found = otherwise(&own, &[item("nah", "ring")]);
        assert_eq!(Value::Object(found), json!({ "nah": { "shape": "ring", "parallax_mm": -8.0 } }));
    }

    #[test]
    fn a_tree_is_told_by_names_with_points() {
        let facts = flat(&json!({ "a": { "b_mm": 1.5, "c": null }, "d": [{ "e": 1 }, { "e": 2 }], "f": [1, null] }));
        let names: Vec<&str> = facts.keys().map(String::as_str).collect();
        assert_eq!(names, ["a.b_mm", "d.1.e", "d.2.e", "f"]);
    }
}
