//! What things on a page are called: the names of features, alike things counted together, and lists of them.
//!
//! Ids of features are built from stems: `line-3` is line 3. A stem that the kinds make, or that says where a thing is, is
//! a word of the language; any other is the author's own and stays as it is written.

use crate::exercise::words::shape_noun;
use crate::language::{Language, Noun, Tongue};
use crate::scene::Shape;

/// The name of a feature: "line 3", "column 1 line 2", "middle crate".
pub fn name(id: &str, tongue: &Tongue) -> String {
    let is_number = |part: &str| !part.is_empty() && part.chars().all(|c| c.is_ascii_digit());
    let mut names: Vec<String> = Vec::new();
    let mut stem: Vec<&str> = Vec::new();
    for part in id.split('-') {
        if !is_number(part) {
            stem.push(part);
        } else if stem.is_empty() {
            names.push(part.to_owned());
        } else {
            let thing = thing(&stem.join("-"), tongue).one;
            stem.clear();
            names.push(tongue.tell("thing-numbered", &[("thing", thing.into()), ("number", part.into())]));
        }
    }
    if !stem.is_empty() {
        names.push(thing(&stem.join("-"), tongue).one);
    }
    names.join(" ")
}

/// The stem of an id as a noun.
pub fn thing(stem: &str, tongue: &Tongue) -> Noun {
    let known = ["thing", "shape"].map(|kind| format!("{kind}-{stem}"));
    match known.iter().find(|id| tongue.has(id)) {
        Some(id) => tongue.noun(id),
        None => own(&stem.replace('-', " "), tongue.language()),
    }
}

/// A shape as a noun: of a drawing, what its author calls it.
pub fn shape(shape: &Shape, tongue: &Tongue) -> Noun {
    match shape {
        Shape::Drawing(drawing) => thing(&drawing.name.replace(' ', "-"), tongue),
        Shape::Outline(inner) => self::shape(inner, tongue),
        _ => shape_noun(shape, tongue),
    }
}

/// An author's own name, with the forms that the rules of English give it; of other languages nobody knows them.
fn own(name: &str, language: Language) -> Noun {
    if language != Language::En {
        return Noun::bare(name);
    }
    let is_many = name.ends_with('s') && !name.ends_with("ss");
    let a = match name {
        _ if is_many => name.to_owned(),
        _ if name.ends_with(" half") => format!("the {name}"),
        _ if name.starts_with(['a', 'e', 'i', 'o', 'u']) => format!("an {name}"),
        _ => format!("a {name}"),
    };
    let many = match name.split_once(" of ") {
        Some((head, tail)) => format!("{head}s of {tail}"),
        None if name.ends_with("ss") => format!("{name}es"),
        None => format!("{name}s"),
    };
    Noun::new(name, [("a", a), ("the", format!("the {name}")), ("many", many)])
}

/// "a ring", "an arc", "the upper half", "3 crosses"; what is many by its name, such as "walls", stays as it is.
pub fn counted(noun: &Noun, count: u32, tongue: &Tongue) -> String {
    match count {
        1 => noun.form("a").to_owned(),
        _ => tongue.tell("thing-count", &[("count", count.into()), ("thing", noun.into())]),
    }
}

/// Alike things counted together, in the order in which they come.
pub fn inventory(nouns: impl Iterator<Item = Noun>, tongue: &Tongue) -> Vec<String> {
    let mut counts: Vec<(Noun, u32)> = Vec::new();
    for noun in nouns {
        match counts.iter_mut().find(|(known, _)| *known == noun) {
            Some((_, count)) => *count += 1,
            None => counts.push((noun, 1)),
        }
    }
    counts.into_iter().map(|(noun, count)| counted(&noun, count, tongue)).collect()
}

/// Parts of a sentence that hold commas of their own: "a, b; c, d".
pub fn apart(parts: &[String], tongue: &Tongue) -> String {
    let joined = |before: String, after: &String| {
        tongue.tell("list-apart", &[("before", before.into()), ("after", after.into())])
    };
    match parts.split_first() {
        Some((first, rest)) => rest.iter().fold(first.clone(), joined),
        None => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn things_are_counted_in_plain_words() {
        let cases = [
            ("ring", 1),
            ("arc", 1),
            ("walls", 1),
            ("upper-half", 1),
            ("cross", 1),
            ("cross", 3),
            ("line-of-words", 2),
            ("star", 2),
            ("owl", 1),
            ("hills", 1),
            ("mess", 2),
        ];
        let english = Tongue::of(Language::En);
        assert_eq!(
            cases.map(|(stem, count)| counted(&thing(stem, english), count, english)),
            [
                "a ring",
                "an arc",
                "walls",
                "the upper half",
                "a cross",
                "3 crosses",
                "2 lines of words",
                "2 stars",
                "an owl",
                "hills",
                "2 messes"
            ]
        );
    }

    #[test]
    fn names_are_words_of_the_language_and_labels_stay_the_authors() {
        let names = |language| {
            ["line-3", "column-1-line-2", "middle-crate", "near", "7"].map(|id| name(id, Tongue::of(language)))
        };
        assert_eq!(names(Language::En), ["line 3", "column 1 line 2", "middle crate", "near", "7"]);
        assert_eq!(names(Language::De), ["Linie 3", "Spalte 1 Linie 2", "middle crate", "nah", "7"]);
    }
}
