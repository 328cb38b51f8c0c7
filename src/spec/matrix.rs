//! `[[matrix]]`: many editions from one, by lists of what differs between them.
//!
//! An edition of a matrix is read as if it were an `[[edition]]` with the values of its combination; this file says which
//! combinations there are and what they are called.

use std::collections::{BTreeMap, BTreeSet};

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Language;

use super::colours::{EDITION_GLASSES, read_glasses};
use super::editions::{Base, GATED, base_of, named};
use super::field::{Field, TableForm, TableSpec, Takes};
use super::read::{Placed, Raw, Read, Slot, text};
use super::reader::Reader;
use super::suggest::nearest;
use super::table::{Layer, Table, all, open};
use super::text::{is_id, shown};
use super::{Hand, TextSize};

/// `[[matrix]]`.
pub const MATRIX: TableSpec = TableSpec {
    name: "matrix",
    form: TableForm::Many,
    groups: &[&[FROM, ID], AXES, &[ONLY, EXCLUDE]],
    doc: "Many editions at once: one for each combination of the words in its lists. What the lists do not say is as in the \
          edition that it is made from. May be left out.",
};

const FROM: Field = Field::required("from", Takes::Id, "The `[[edition]]` that gives every key without a list here.");

const ID: Field = Field::required(
    "id",
    Takes::Text(120),
    "The pattern of the names of the editions, such as `\"{page}-{ground}-{glasses}\"`: each `{…}` is a list of this \
     matrix and gives its word, in small letters; `16:9` is `wide`, and glasses are left, then right: `cyan-red`. No two \
     names may be the same.",
);

/// What may differ between the editions of a matrix; the last changes first.
const AXES: &[Field] = &[
    Field::optional("page", words(&PAGES), "Page formats, as for `[[edition]]`."),
    Field::optional("ground", words(&GROUNDS), "Grounds."),
    Field::optional(
        "glasses",
        Takes::List { of: &Takes::Table(&EDITION_GLASSES), min: 1, max: 12 },
        "Glasses: `[{ left = \"cyan\", right = \"red\" }, { left = \"red\", right = \"cyan\" }]`.",
    ),
    Field::optional("text", words(&TEXTS), "Sizes of the words."),
    Field::optional("language", words(&LANGUAGES), "Languages."),
    Field::optional("hand", words(&HANDS), "Writing hands."),
    Field::optional("answers", words(&ANSWERS), "Places of the answers."),
    Field::optional("gated", words(&GATES), "With the gated pages, or without them."),
];

const PAGES: Takes = Takes::Choice(&["A4", "Letter", "16:9"]);
const GROUNDS: Takes = Takes::Choice(&["white", "black"]);
const PAIR: Takes = Takes::Text(20);
const TEXTS: Takes = Takes::Choice(&TextSize::NAMES);
const LANGUAGES: Takes = Takes::Choice(&Language::TAGS);
const HANDS: Takes = Takes::Choice(&Hand::NAMES);
const ANSWERS: Takes = super::editions::ANSWERS;
const GATES: Takes = Takes::Choice(&GATED);

/// A list of some of the words.
const fn words(of: &'static Takes) -> Takes {
    Takes::List { of, min: 1, max: 4 }
}

const ONLY: Field = Field::optional(
    "only",
    Takes::List { of: &Takes::Table(&ONE), min: 1, max: 40 },
    "Combinations to keep, such as `[{ language = \"de\", text = \"large\" }]`: a list and its word, or several words; \
     glasses as `\"cyan-red\"`. Left out: all.",
);

const EXCLUDE: Field =
    Field::optional("exclude", Takes::List { of: &Takes::Table(&ONE), min: 1, max: 40 }, "Combinations to leave out.");

/// An entry of `only` or `exclude`.
const ONE: TableSpec = TableSpec {
    name: "combination",
    form: TableForm::Inline,
    groups: &[&[
        Field::optional("page", Takes::OneOrMore(&PAGES), "Of these page formats."),
        Field::optional("ground", Takes::OneOrMore(&GROUNDS), "On these grounds."),
        Field::optional("glasses", Takes::OneOrMore(&PAIR), "For these glasses."),
        Field::optional("text", Takes::OneOrMore(&TEXTS), "In these sizes."),
        Field::optional("language", Takes::OneOrMore(&LANGUAGES), "In these languages."),
        Field::optional("hand", Takes::OneOrMore(&HANDS), "For these hands."),
        Field::optional("answers", Takes::OneOrMore(&ANSWERS), "With the answers there."),
        Field::optional("gated", Takes::OneOrMore(&GATES), "With or without gated pages."),
    ]],
    doc: "Some of the combinations of a matrix.",
};

/// A list of a matrix.
struct Axis<'a> {
    key: &'static str,
    points: Vec<Point<'a>>,
}

/// One of its entries.
#[derive(Clone)]
struct Point<'a> {
    key: &'static str,
    /// As `only` and `exclude` name it.
    word: String,
    raw: Raw<'a>,
}

/// An entry of `only` or `exclude`.
struct Rule {
    words: BTreeMap<&'static str, Vec<String>>,
    place: Place,
}

impl Rule {
    fn fits(&self, points: &[Point<'_>]) -> bool {
        self.words.iter().all(|(key, words)| points.iter().any(|p| p.key == *key && words.contains(&p.word)))
    }
}

/// The names and the tables of the editions of a matrix. `None`: a problem has been pushed.
pub(super) fn read<'a>(
    reader: &mut Reader<'_>,
    mut table: Table<'a>,
    bases: &[Base<'a>],
    names: &mut BTreeMap<String, Place>,
) -> Option<Vec<(String, Table<'a>)>> {
    table.check_keys(reader);
    let base = base_of(reader, &table, bases);
    let pattern: Option<Placed<String>> = table.get(reader, "id");
    let axes = read_axes(reader, &table)?;
    let pattern = pattern.and_then(|pattern| read_pattern(reader, pattern, &axes));
    let (only, exclude) = (read_rules(reader, &table, "only", &axes), read_rules(reader, &table, "exclude", &axes));
    let (only, exclude, base) = (only?, exclude?, bases.get(base?)?);
    let kept = choose(reader, &table, &axes, (&only, &exclude))?;
    let ids = name(reader, &pattern?, &axes, &kept, names)?;
    let under = base.under.clone()?;
    let made = ids.into_iter().zip(kept).map(|(id, points)| {
        let over: Layer<'a> = points.into_iter().map(|point| (point.key, point.raw.value)).collect();
        (id, base.table.at(table.place()).layered(over, under.clone()))
    });
    Some(made.collect())
}

/// The lists of a matrix, at least one.
fn read_axes<'a>(reader: &mut Reader<'_>, table: &Table<'a>) -> Option<Vec<Axis<'a>>> {
    let written: Vec<_> = AXES.iter().filter(|axis| table.has(axis.key)).collect();
    if written.is_empty() {
        let keys: Vec<_> = AXES.iter().map(|axis| axis.key).collect();
        let problem = Diagnostic::error(codes::MISSING_KEY, table.place(), "the `[[matrix]]` has no list")
            .with_label("nothing differs")
            .with_help(format!("add one or more of {}, or write an `[[edition]]`", all(&keys)));
        reader.push(problem);
        return None;
    }
    let axes: Vec<_> = written.into_iter().map(|axis| read_axis(reader, table, axis.key)).collect();
    axes.into_iter().collect()
}

fn read_axis<'a>(reader: &mut Reader<'_>, table: &Table<'a>, key: &'static str) -> Option<Axis<'a>> {
    let words: Vec<PointWord> = table.get(reader, key)?;
    let mut seen = BTreeSet::new();
    let mut points = Vec::new();
    for (PointWord(word), raw) in words.into_iter().zip(table.list(key)) {
        if !seen.insert(word.clone()) {
            let problem =
                Diagnostic::error(codes::DUPLICATE, raw.place(reader), format!("`{key}` lists `{word}` twice"))
                    .with_label("listed before")
                    .with_help("leave one of them out");
            reader.push(problem);
            return None;
        }
        points.push(Point { key, word, raw });
    }
    Some(Axis { key, points })
}

/// What an entry of a list is called: itself, or the two colours of glasses.
struct PointWord(String);

impl Read for PointWord {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        match slot.takes {
            Takes::Table(spec) => {
                let glasses = open(reader, spec, raw).and_then(|table| read_glasses(reader, table))?.glasses;
                Some(Self(format!("{}-{}", glasses.left.name(), glasses.right.name())))
            }
            Takes::Choice(words) => {
                let super::read::Word(number) = Read::read(reader, slot, raw)?;
                words.get(number).map(|word| Self((*word).to_owned()))
            }
            _ => None,
        }
    }
}

/// A pattern: pieces of text with the list that follows each.
type Pattern = (Vec<(String, Option<&'static str>)>, Place);

fn read_pattern(reader: &mut Reader<'_>, written: Placed<String>, axes: &[Axis<'_>]) -> Option<Pattern> {
    let mut pieces = Vec::new();
    let mut rest = written.value.as_str();
    while let Some((before, after)) = rest.split_once('{') {
        let Some((variable, after)) = after.split_once('}') else {
            let problem = Diagnostic::error(codes::TEXT, written.place, "`id` has `{` without `}`")
                .with_label("not closed")
                .with_help("write each list as `{page}`");
            reader.push(problem);
            return None;
        };
        let Some(axis) = axes.iter().find(|axis| axis.key == variable) else {
            reader.push(unknown_variable(variable, written.place, axes));
            return None;
        };
        pieces.push((before.to_owned(), Some(axis.key)));
        rest = after;
    }
    pieces.push((rest.to_owned(), None));
    Some((pieces, written.place))
}

fn unknown_variable(variable: &str, place: Place, axes: &[Axis<'_>]) -> Diagnostic {
    let keys: Vec<_> = axes.iter().map(|axis| axis.key).collect();
    let is_axis = AXES.iter().any(|axis| axis.key == variable);
    let message = match is_axis {
        true => format!("`{{{variable}}}` stands in `id`, and the matrix has no list `{variable}`"),
        false => format!("`{{{}}}` in `id` is no list of a matrix", shown(variable)),
    };
    let problem = Diagnostic::error(codes::CHOICE, place, message).with_label("unknown list");
    problem.with_help(match nearest(variable, keys.iter().copied()).filter(|_| !is_axis) {
        Some(near) => format!("did you mean `{{{near}}}`?"),
        None => format!("this matrix has {}", all(&keys)),
    })
}

/// A word in a name.
fn in_name(word: &str) -> String {
    if word == "16:9" { "wide".to_owned() } else { word.to_lowercase() }
}

fn read_rules(reader: &mut Reader<'_>, table: &Table<'_>, key: &'static str, axes: &[Axis<'_>]) -> Option<Vec<Rule>> {
    let Some(written): Option<Vec<RuleRead>> = table.maybe(reader, key)? else { return Some(Vec::new()) };
    let rules: Vec<_> = written.into_iter().map(|rule| check_rule(reader, rule, axes)).collect();
    rules.into_iter().collect()
}

/// An entry of `only` or `exclude` as written.
struct RuleRead {
    words: Vec<(&'static str, Vec<Placed<String>>, Place)>,
    place: Place,
}

impl Read for RuleRead {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let Takes::Table(spec) = slot.takes else { return None };
        let table = Table::inline(reader, spec, raw)?;
        let mut words = Vec::new();
        for field in spec.fields().filter(|field| table.has(field.key)) {
            let Words(of) = table.get(reader, field.key)?;
            words.push((field.key, of, table.place_of(reader, field.key)));
        }
        let place = raw.place(reader);
        if words.is_empty() && !table.is_empty() {
            return None;
        }
        if words.is_empty() {
            let problem = Diagnostic::error(codes::MISSING_KEY, place, format!("an entry of `{}` is empty", slot.key))
                .with_label("says nothing")
                .with_help("write a list and its word, such as `{ text = \"large\" }`");
            reader.push(problem);
            return None;
        }
        Some(Self { words, place })
    }
}

/// A word or a list of words.
struct Words(Vec<Placed<String>>);

impl Read for Words {
    fn read(reader: &mut Reader<'_>, slot: Slot<'_>, raw: Raw<'_>) -> Option<Self> {
        let one = |reader: &mut Reader<'_>, slot, raw: Raw<'_>| {
            let value = text(reader, slot, raw)?.to_owned();
            Some(Placed { value, place: raw.place(reader) })
        };
        let Some(list) = raw.value.get_ref().as_array() else { return Some(Self(vec![one(reader, slot, raw)?])) };
        let entry = slot.of_entry(slot.takes);
        let read: Vec<_> = list.iter().map(|value| one(reader, entry, Raw::new(value))).collect();
        read.into_iter().collect::<Option<_>>().map(Self)
    }
}

/// The rule, each of whose words must be one of the matrix.
fn check_rule(reader: &mut Reader<'_>, rule: RuleRead, axes: &[Axis<'_>]) -> Option<Rule> {
    let mut words = BTreeMap::new();
    for (key, of, place) in rule.words {
        let Some(axis) = axes.iter().find(|axis| axis.key == key) else {
            let keys: Vec<_> = axes.iter().map(|axis| axis.key).collect();
            let message = format!("the matrix has no list `{key}`, so nothing differs in it");
            let problem = Diagnostic::error(codes::CHOICE, place, message)
                .with_label("no list of this matrix")
                .with_help(format!("this matrix has {}", all(&keys)));
            reader.push(problem);
            return None;
        };
        let known: Vec<_> = axis.points.iter().map(|point| point.word.as_str()).collect();
        for Placed { value, place } in &of {
            if known.contains(&value.as_str()) {
                continue;
            }
            let message = format!("`{}` is not in the list `{key}` of the matrix", shown(value));
            let problem = Diagnostic::error(codes::CHOICE, *place, message).with_label("matches nothing");
            reader.push(match nearest(value, known.iter().copied()) {
                Some(near) => {
                    problem.with_help(format!("did you mean `{near}`?")).with_replacement(format!("\"{near}\""))
                }
                None => problem.with_help(format!("the list has {}", all(&known))),
            });
            return None;
        }
        words.insert(key, of.into_iter().map(|word| word.value).collect());
    }
    Some(Rule { words, place: rule.place })
}

/// The combinations that are kept; every rule must matter.
fn choose<'a>(
    reader: &mut Reader<'_>,
    table: &Table<'_>,
    axes: &[Axis<'a>],
    (only, exclude): (&[Rule], &[Rule]),
) -> Option<Vec<Vec<Point<'a>>>> {
    let every = axes.iter().fold(vec![Vec::new()], |every: Vec<Vec<Point<'a>>>, axis| {
        let longer =
            |points: &Vec<Point<'a>>, next: &Point<'a>| [points.as_slice(), std::slice::from_ref(next)].concat();
        every.iter().flat_map(|points| axis.points.iter().map(move |next| longer(points, next))).collect()
    });
    let asked = |points: &[Point<'a>]| only.is_empty() || only.iter().any(|rule| rule.fits(points));
    let spared = |points: &[Point<'a>]| exclude.iter().all(|rule| !rule.fits(points));
    let idle_only = only.iter().find(|rule| !every.iter().any(|points| rule.fits(points) && spared(points)));
    let idle_exclude = exclude.iter().find(|rule| !every.iter().any(|points| rule.fits(points) && asked(points)));
    let idle = idle_exclude
        .map(|rule| (rule.place, "this `exclude` leaves out nothing that `only` keeps"))
        .or_else(|| idle_only.map(|rule| (rule.place, "this `only` keeps nothing: `exclude` leaves all of it out")));
    if let Some((place, message)) = idle {
        let problem = Diagnostic::error(codes::CONFLICT, place, message)
            .with_label("matches nothing")
            .with_help("leave it out, or correct its words");
        reader.push(problem);
        return None;
    }
    let kept: Vec<_> = every.into_iter().filter(|points| asked(points) && spared(points)).collect();
    if kept.is_empty() {
        let problem = Diagnostic::error(codes::LIST, table.place(), "the `[[matrix]]` has no combination left")
            .with_label("all are left out")
            .with_help("leave an entry of `exclude` out");
        reader.push(problem);
        return None;
    }
    Some(kept)
}

/// The names of the combinations, all different.
fn name(
    reader: &mut Reader<'_>,
    (pieces, place): &Pattern,
    axes: &[Axis<'_>],
    kept: &[Vec<Point<'_>>],
    names: &mut BTreeMap<String, Place>,
) -> Option<Vec<String>> {
    let word = |points: &[Point<'_>], key: &str| points.iter().find(|p| p.key == key).map(|p| in_name(&p.word));
    let piece = |points: &[Point<'_>], (before, key): &(String, Option<&'static str>)| {
        format!("{before}{}", key.and_then(|key| word(points, key)).unwrap_or_default())
    };
    let ids: Vec<String> = kept.iter().map(|points| pieces.iter().map(|p| piece(points, p)).collect()).collect();
    if let Some(id) = ids.iter().find(|id| !is_id(id)) {
        let message = format!("the pattern gives `{}`, which cannot name an edition", shown(id));
        let problem = Diagnostic::error(codes::TEXT, *place, message)
            .with_label("not a name")
            .with_help(format!("a name is {}", Takes::Id.words().trim_start_matches("a name ")));
        reader.push(problem);
        return None;
    }
    let mut seen = BTreeSet::new();
    if let Some(twice) = ids.iter().find(|id| !seen.insert(id.as_str())) {
        let missing = axes.iter().filter(|axis| 1 < axis.points.len());
        let missing = missing.filter(|axis| pieces.iter().all(|(_, key)| *key != Some(axis.key)));
        let missing: Vec<_> = missing.map(|axis| format!("`{{{}}}`", axis.key)).collect();
        let help = match missing.as_slice() {
            [] => "separate the lists in the pattern, for example with `-`".to_owned(),
            missing => format!("put {} into the pattern", missing.join(" and ")),
        };
        let problem = Diagnostic::error(codes::DUPLICATE, *place, format!("the pattern gives `{twice}` twice"))
            .with_label("not one name for each")
            .with_help(help);
        reader.push(problem);
        return None;
    }
    let kept = ids.into_iter().map(|id| named(reader, Placed { value: id, place: *place }, names));
    let kept: Vec<_> = kept.map(|id| id.map(|id| id.value)).collect();
    kept.into_iter().collect()
}
