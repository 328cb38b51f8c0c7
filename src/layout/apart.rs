//! Words about pages on which each eye has parts of its own: what each eye gets alone, and what both together make.

use crate::exercise::words::shape_name;
use crate::scene::{Eyes, Role, Shape};
use crate::solve::{SolvedFeature, SolvedForm};

/// Whether any part that is looked at is for one eye alone.
pub fn is_apart(features: &[SolvedFeature]) -> bool {
    features.iter().any(|feature| feature.role == Role::Target && feature.eyes != Eyes::Both)
}

/// "Left eye: 3 rings. Right eye: 3 crosses. Both: 3 squares."
pub fn alone(features: &[SolvedFeature]) -> String {
    let rows = [("Left eye", Eyes::Left), ("Right eye", Eyes::Right), ("Both", Eyes::Both)];
    let row = |(name, eyes): (&str, Eyes)| {
        let things = things(features, |seen| seen == eyes);
        (!things.is_empty()).then(|| format!("{name}: {things}."))
    };
    rows.into_iter().filter_map(row).collect::<Vec<_>>().join(" ")
}

/// "Left eye: a ring and a square. Right eye: a cross and a square. Both eyes together: a ring, a cross and a square."
pub fn figure(features: &[SolvedFeature]) -> String {
    format!(
        "Left eye: {}. Right eye: {}. Both eyes together: {}.",
        things(features, |seen| seen != Eyes::Right),
        things(features, |seen| seen != Eyes::Left),
        things(features, |_| true),
    )
}

/// What stands on a page for these eyes, alike things counted together, in the order of the page.
fn things(features: &[SolvedFeature], keep: impl Fn(Eyes) -> bool) -> String {
    let mut counts: Vec<(String, u32)> = Vec::new();
    let parts = features.iter().filter(|feature| is_named(feature) && keep(feature.eyes));
    for name in parts.map(noun) {
        match counts.iter_mut().find(|(known, _)| *known == name) {
            Some((_, count)) => *count += 1,
            None => counts.push((name, 1)),
        }
    }
    let words: Vec<String> = counts.into_iter().map(|(name, count)| counted(&name, count)).collect();
    match words.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, rest)) => format!("{} and {last}", rest.join(", ")),
        None => String::new(),
    }
}

/// Numbers are signposts, no part of the picture.
fn is_named(feature: &SolvedFeature) -> bool {
    match feature.role {
        Role::Target | Role::Bead | Role::Trail | Role::Watch | Role::Lock | Role::Reference | Role::Field => true,
        Role::Number | Role::Guide => false,
    }
}

/// A part in one or two words: its name without its number; of letters and of what rides with a target, what it is.
fn noun(feature: &SolvedFeature) -> String {
    match &feature.form {
        SolvedForm::Shape { shape, .. }
            if matches!(shape, Shape::Text(_)) || matches!(feature.role, Role::Watch | Role::Lock) =>
        {
            shape_name(shape).to_owned()
        }
        _ => {
            let name = feature.id.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end_matches('-');
            name.replace('-', " ")
        }
    }
}

/// "a ring", "an arc", "the upper half", "3 crosses"; what is many by its name, such as "walls", stays as it is.
pub fn counted(name: &str, count: u32) -> String {
    let is_many = name.ends_with('s') && !name.ends_with("ss");
    match count {
        1 if is_many => name.to_owned(),
        1 if name.ends_with(" half") => format!("the {name}"),
        1 if name.starts_with(['a', 'e', 'i', 'o', 'u']) => format!("an {name}"),
        1 => format!("a {name}"),
        _ => match name.split_once(" of ") {
            Some((head, tail)) => format!("{count} {head}s of {tail}"),
            None if name.ends_with("ss") => format!("{count} {name}es"),
            None => format!("{count} {name}s"),
        },
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
            ("upper half", 1),
            ("cross", 1),
            ("cross", 3),
            ("line of words", 2),
            ("star", 2),
        ];
        assert_eq!(
            cases.map(|(name, count)| counted(name, count)),
            ["a ring", "an arc", "walls", "the upper half", "a cross", "3 crosses", "2 lines of words", "2 stars"]
        );
    }
}
