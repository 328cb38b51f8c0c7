//! Parts of the spec reference, written from the tables of the language: units, depths, and one section for a table.

use std::fmt::Write as _;

use crate::units::{Dimension, Unit};

use super::field::{Field, Need, TableSpec, choices};

/// The units of every dimension as a Markdown table.
pub fn units() -> String {
    let mut out = String::from("| measures | units |\n|---|---|\n");
    for dimension in [Dimension::Length, Dimension::Angle, Dimension::Prism, Dimension::Time, Dimension::Share] {
        let units: Vec<_> =
            Unit::ALL.into_iter().filter(|u| u.dimension() == dimension).map(|u| format!("`{}`", u.symbol())).collect();
        let _ = writeln!(out, "| {} | {} |", dimension.name(), units.join(", "));
    }
    out
}

/// A table of the language: its sentence, and its keys as a Markdown table.
pub fn table(spec: &TableSpec) -> String {
    let mut out = format!("{}\n\n{KEYS_HEAD}", spec.doc);
    for field in spec.fields() {
        let _ = writeln!(out, "{}", row(field));
    }
    out
}

/// Head of a Markdown table of keys.
pub const KEYS_HEAD: &str = "| key | takes | default | meaning |\n|---|---|---|---|\n";

/// A key as a row of a Markdown table.
pub fn row(field: &Field) -> String {
    format!("| `{}` | {} | {} | {} |", field.key, field.takes.words(), need(field), meaning(field))
}

/// "required", "–" for a key that may be left out, or what holds then.
pub fn need(field: &Field) -> String {
    match field.need {
        Need::Required => "required".to_owned(),
        Need::Optional => "–".to_owned(),
        Need::Default(text) => format!("`{text}`"),
    }
}

/// What a key means, after the forms that it belongs to.
pub fn meaning(field: &Field) -> String {
    let forms = if field.forms.is_empty() { String::new() } else { format!("Form {}: ", choices(field.forms)) };
    format!("{forms}{}", field.doc)
}
