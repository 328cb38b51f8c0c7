//! Kinds that lead the eyes from one depth to the next.

pub mod hoop;
pub mod jump;
pub mod nest;
pub mod pairs;
pub mod point;
pub mod posts;
pub mod rungs;
pub mod solids;
pub mod tiles;
pub mod tour;
pub mod trail;
pub mod walk;

use std::collections::BTreeSet;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::scene::Depth;
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use super::ramp::Ramp;

/// Reads the `step` of a table: a depth that leaves the page on every level, always to the same side.
fn read_step(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Ramp<Depth>> {
    let step: Ramp<Depth> = table.get(reader, "step")?;
    let side = step.at(1).side();
    if side.is_some() && (1..=step.levels().unwrap_or(1)).all(|level| step.at(level).side() == side) {
        return Some(step);
    }
    let message = "`step` leaves the page, to the same side on every level";
    let problem = Diagnostic::error(codes::DEPTH, table.place_of(reader, "step"), message)
        .with_label("no step, or not always to one side")
        .with_help("write an amount above 0 and a side, for example `\"0.5 pd toward\"`");
    reader.push(problem);
    None
}

/// A list that names each number from 1 to `count` once; `words` are what the list and its entries are called.
fn check_once(
    reader: &mut Reader<'_>,
    place: Place,
    words: (&str, &str),
    list: &[Placed<u32>],
    count: usize,
) -> Option<Vec<u32>> {
    let (name, entry) = words;
    let mut seen = BTreeSet::new();
    let wrong = list.iter().find(|n| count < n.value as usize || !seen.insert(n.value));
    let (place, message) = match wrong {
        Some(n) if count < n.value as usize => {
            (n.place, format!("`{name}` names {entry} `{}`, there are {count}", n.value))
        }
        Some(n) => (n.place, format!("`{name}` names {entry} `{}` twice", n.value)),
        None if seen.len() < count => (place, format!("`{name}` names {} of {count} {entry}s", seen.len())),
        None => return Some(list.iter().map(|n| n.value).collect()),
    };
    let problem = Diagnostic::error(codes::LIST, place, message)
        .with_label(format!("not every {entry} once"))
        .with_help(format!("name each {entry} from 1 to {count} once"));
    reader.push(problem);
    None
}
