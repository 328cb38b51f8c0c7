//! `[plan]`: how long and how often the author would have the book practised.

use crate::diagnostics::{Diagnostic, codes};
use crate::plan::{MOST_WEEKS, Practice};
use crate::units::Seconds;

use super::document::Document;
use super::field::{Field, TableForm, TableSpec, Takes, seconds};
use super::read::Placed;
use super::reader::Reader;
use super::table::Table;

/// `[plan]`. Its limits and its defaults are a design choice: blocks of two to three minutes with short rests, as short
/// home sessions are common practice (no source).
pub const PLAN: TableSpec = TableSpec {
    name: "plan",
    form: TableForm::Single,
    groups: &[&[
        Field::required("weeks", Takes::Count { min: 1, max: MOST_WEEKS }, "How many weeks."),
        Field::required("days", Takes::Count { min: 1, max: 7 }, "Days of practice a week."),
        Field::required(
            "minutes",
            Takes::Count { min: 2, max: 20 },
            "The most minutes a day, rests included. No day of the plan is longer.",
        ),
        Field::default(
            "block",
            Takes::Time(seconds(60.0, 300.0)),
            r#""3 min""#,
            "The longest time without a rest, in whole seconds.",
        ),
        Field::default(
            "rest",
            Takes::Time(seconds(10.0, 120.0)),
            r#""30 s""#,
            "The rest after each block, looking far away, in whole seconds.",
        ),
    ]],
    doc: "Over how many weeks and days the pages come, from easy to hard. How long a page takes is worked out from its \
          kind: times and repeats where it has such keys, 10 s a question, a minute for a brief check, else two minutes. \
          Weeks, days and minutes have no default, since they shape the work; `block` and `rest` only divide it, and the \
          page of the plan prints them. Pages that do not all fit are an error; a page that comes on fewer than three \
          days is a warning. Left out: the book has no plan.",
};

/// Reads `[plan]`. `None`: a problem has been pushed; `Some(None)`: there is none.
pub(super) fn read_plan(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Option<Placed<Practice>>> {
    if !document.has(PLAN.name) {
        return Some(None);
    }
    let mut table = document.optional_table(reader, &PLAN)?;
    table.check_keys(reader);
    let (weeks, days) = (table.get(reader, "weeks"), table.get(reader, "days"));
    let minutes = table.get(reader, "minutes");
    let (block, rest) = (whole_seconds(reader, &table, "block"), whole_seconds(reader, &table, "rest"));
    let value = Practice { weeks: weeks?, days: days?, minutes: minutes?, block: block?, rest: rest? };
    Some(Some(Placed { value, place: table.place() }))
}

/// A time of whole seconds.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "the limits of the keys are a few minutes")]
fn whole_seconds(reader: &mut Reader<'_>, table: &Table<'_>, key: &'static str) -> Option<u32> {
    let Seconds(time) = table.get(reader, key)?;
    // Minutes with a decimal point are a little off in floating point.
    let whole = time.round();
    if 1e-6 < (time - whole).abs() {
        let message = format!("`{key}` takes whole seconds, found `{time}` s");
        let problem = Diagnostic::error(codes::NUMBER, table.place_of(reader, key), message)
            .with_label("a part of a second")
            .with_help(format!("write for example `\"{whole} s\"`"));
        reader.push(problem);
        return None;
    }
    Some(whole as u32)
}
