//! The names of facts in plain words, and their values with units. The unit of a fact is the end of its name, as in the
//! report: `_mm`, `_pd`, `_arcsec`, `_s`.

use serde_json::Value;

use crate::language::Language;
use crate::units::plain;

/// Names that their letters do not explain.
const LABELS: &[(&str, &str)] = &[
    ("at_mm", "middle, from that of the art field,"),
    ("place_mm", "place from the eyes"),
    ("place_range_mm", "place over the ipds"),
    ("weight_mm", "width of lines"),
    ("draw", "the draw of the dots"),
    ("outline", "the drawing"),
    ("points", "the line of points"),
    ("strokes", "the strokes"),
    ("dots.dot_mm", "side of a dot"),
    ("dots.density", "density of the dots"),
    ("dots.correlation", "correlation of the dots"),
    ("dots.key", "key of the draw"),
    ("features", "what is asked about"),
    ("pass.right", "right answers to pass"),
    ("pass.of", "questions that count"),
    ("pass.luck", "chance to pass by luck"),
    ("time_s", "time for the plan"),
    ("difficulty.total", "difficulty"),
    ("difficulty.grade", "grade"),
    ("balance.share", "what the stronger eye keeps"),
    ("balance.stronger", "the stronger eye"),
    ("balance.set_by", "who set the balance"),
    ("words.goal", "the goal"),
    ("words.setup", "the setup"),
    ("words.do", "what to do"),
    ("words.see", "what to see"),
    ("words.one_part", "what it means when one part is missing"),
    ("inks.left", "ink for the left eye"),
    ("inks.right", "ink for the right eye"),
    ("inks.both", "ink where both overlap"),
    ("inks.ground", "colour of the ground"),
    ("inks.text", "ink of the words"),
    ("glasses.left", "filter before the left eye"),
    ("glasses.right", "filter before the right eye"),
    ("cmyk", "process inks in the pdf"),
    ("colour.ghost", "forecast of the ghost"),
    ("colour.left.ghost", "forecast of the ghost to the left eye"),
    ("colour.right.ghost", "forecast of the ghost to the right eye"),
    ("page", "page format"),
    ("text", "size of text"),
    ("answers", "where the answers stand"),
    ("gate", "who decided what is for a professional to decide"),
    ("parts.back", "parts after the exercises"),
    ("gated", "pages that a professional sets"),
    ("publish.previews", "pages that are previewed"),
    ("publish.edition", "edition that is previewed"),
    ("licence.name", "licence"),
    ("licence.text", "text of the licence"),
    ("parts.front", "parts before the exercises"),
    ("viewer.base.horizontal_pd", "base"),
    ("viewer.base.vertical_pd", "base in height"),
];

/// Facts that an author wrote as sentences.
const SENTENCES: &[&str] = &[
    "title",
    "summary",
    "author",
    "words.",
    "answer",
    "choices",
    "gate",
    "licence",
    "contact",
    "releases",
    "publish.watermark",
];
/// Facts of which the values say nothing to a reader.
const OPAQUE: &[&str] = &["draw", "outline", "strokes"];
/// Facts with a side.
const SIDED: &[&str] = &["demand_pd", "disparity_arcsec", "horizontal_pd"];

/// A name in words.
pub(super) fn label(name: &str) -> String {
    if let Some((_, words)) = LABELS.iter().find(|(known, _)| *known == name) {
        return (*words).to_owned();
    }
    if let Some((first, language, rest)) = in_language(name) {
        let name = if rest.is_empty() { first.to_owned() } else { format!("{first}.{rest}") };
        return format!("{} ({})", label(&name), language.tag());
    }
    if let Some(version) = name.strip_prefix("releases.") {
        return format!("what is told of version {version}");
    }
    let (bare, _) = unit(name);
    let bare = bare.replacen("colour.glasses.1.", "left filter ", 1).replacen("colour.glasses.2.", "right filter ", 1);
    let bare = bare.replacen("colour.medium.", "medium ", 1).replacen("colour.", "forecast ", 1);
    bare.trim_start_matches("viewer.").replace(['.', '_'], " ")
}

/// The parts of a name whose second part is a language.
fn in_language(name: &str) -> Option<(&str, Language, &str)> {
    let (first, rest) = name.split_once('.')?;
    let (tag, rest) = rest.split_once('.').unwrap_or((rest, ""));
    let language = Language::ALL.into_iter().find(|language| language.tag() == tag)?;
    Some((first, language, rest))
}

/// A name without its unit, and the unit.
fn unit(name: &str) -> (&str, &'static str) {
    let units = [("_mm", " mm"), ("_pd", " pd"), ("_arcsec", " arcsec"), ("_s", " s")];
    let found = units.into_iter().find_map(|(end, words)| Some((name.strip_suffix(end)?, words)));
    found.unwrap_or((name, ""))
}

/// A value in words; empty where it tells nothing but that it is another. `written` is done to what an author wrote.
pub(super) fn said(name: &str, value: &Value, written: &dyn Fn(&str) -> String) -> String {
    let own = SENTENCES.iter().any(|start| name.starts_with(start));
    match value {
        _ if OPAQUE.contains(&name) => String::new(),
        Value::Null => "none".to_owned(),
        Value::Bool(true) => "yes".to_owned(),
        Value::Bool(false) => "no".to_owned(),
        Value::Number(number) => number.as_f64().map_or_else(|| number.to_string(), |n| amount(name, n)),
        Value::String(text) if own => format!("“{}”", written(text)),
        Value::String(text) => text.clone(),
        Value::Array(list) if name == "points" => points(list),
        Value::Array(list) if list.is_empty() => "none".to_owned(),
        Value::Array(list) if list.iter().all(|one| one.is_number() || one.is_null()) => numbers(name, list),
        Value::Array(list) => list.iter().map(|one| said(name, one, written)).collect::<Vec<_>>().join(", "),
        Value::Object(_) => value.to_string(),
    }
}

/// A number with its unit, and its side where it has one.
fn amount(name: &str, number: f64) -> String {
    let (_, unit) = unit(name);
    if !SIDED.iter().any(|end| name.ends_with(end)) {
        return format!("{}{unit}", plain(number, 6));
    }
    let side = if number < 0.0 { "away" } else { "toward" };
    if number == 0.0 { "on the page".to_owned() } else { format!("{}{unit} {side}", plain(number.abs(), 6)) }
}

/// Numbers that belong together. A place that is none lies beyond every place.
fn numbers(name: &str, list: &[Value]) -> String {
    let (_, unit) = unit(name);
    let number = |one: &Value| one.as_f64().map_or_else(|| "beyond".to_owned(), |number| plain(number, 6));
    let joint = if name.ends_with("size_mm") {
        " × "
    } else if name.ends_with("range_mm") {
        " to "
    } else {
        ", "
    };
    format!("{}{unit}", list.iter().map(number).collect::<Vec<_>>().join(joint))
}

/// How many points there are, and between which parallaxes.
fn points(list: &[Value]) -> String {
    let parallax = |point: &Value| point.get(2)?.as_f64();
    let low = list.iter().filter_map(parallax).fold(f64::INFINITY, f64::min);
    let high = list.iter().filter_map(parallax).fold(f64::NEG_INFINITY, f64::max);
    format!("{} points with a parallax of {} to {} mm", list.len(), plain(low, 4), plain(high, 4))
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn told(name: &str, value: Value) -> String {
        said(name, &value, &str::to_owned)
    }

    #[test]
    fn values_have_units_and_sides() {
        assert_eq!(told("demand_pd", json!(2.5)), "2.5 pd toward");
        assert_eq!(told("farthest.demand_pd", json!(-2.0)), "2 pd away");
        assert_eq!(told("demand_pd", json!(0.0)), "on the page");
        assert_eq!(told("parallax_mm", json!(-10)), "-10 mm");
        assert_eq!(told("size_mm", json!([34.0, 12.5])), "34 × 12.5 mm");
        assert_eq!(told("place_range_mm", json!([344.8, null])), "344.8 to beyond mm");
        assert_eq!(told("inks.left", json!("#ff0000")), "#ff0000");
        assert_eq!(told("words.do", json!(["Look.", "Rest."])), "“Look.”, “Rest.”");
        assert_eq!(told("points", json!([[0, 0, -1.5], [1, 0, 2]])), "2 points with a parallax of -1.5 to 2 mm");
        assert_eq!(told("draw", json!("12ab")), "");
    }

    #[test]
    fn names_without_words_of_their_own_are_read_as_they_are() {
        assert_eq!(label("viewer.ipd_range_mm"), "ipd range");
        assert_eq!(label("farthest.parallax_mm"), "farthest parallax");
        assert_eq!(label("plan.block_s"), "plan block");
        assert_eq!(label("words.de.goal"), "the goal (de)");
        assert_eq!(label("title.es"), "title (es)");
        assert_eq!(label("releases.1.2.0"), "what is told of version 1.2.0");
        assert_eq!(label("colour.glasses.1.leak"), "left filter leak");
        assert_eq!(label("colour.medium.lamp"), "medium lamp");
    }
}
