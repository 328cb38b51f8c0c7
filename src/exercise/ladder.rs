//! How the ramps of one exercise go together: all at once, or one after the other.

use std::collections::BTreeMap;

use crate::diagnostics::{Diagnostic, Diagnostics, codes};
use crate::spec::document::Document;
use crate::spec::read::Placed;
use crate::spec::reader::{RampSeen, Reader};
use crate::spec::table::Table;

use super::Kind;

/// Looks ahead at the ramps of a file and gives each its turn, where `in_turn` asks for it. False: a problem has been
/// pushed.
pub(super) fn plan(reader: &mut Reader<'_>, document: &Document<'_>, kind: &Kind, table: &Table<'_>) -> bool {
    let Some(listed) = table.maybe::<Vec<Placed<String>>>(reader, "in_turn") else { return false };
    let Some(order) = listed else { return true };
    let ramps = look_ahead(reader, document, kind, table);
    let (mut after, mut turns) = (0, BTreeMap::new());
    for key in &order {
        let Some(ramp) = ramps.iter().find(|ramp| ramp.key == key.value) else {
            return refuse(reader, key, &ramps, "is not the key of a ramp of this exercise");
        };
        if turns.insert(ramp.key, after).is_some() {
            return refuse(reader, key, &ramps, "is listed twice");
        }
        after += ramp.levels - 1;
    }
    if let Some(left) = ramps.iter().find(|ramp| !turns.contains_key(ramp.key)) {
        let message = format!("`in_turn` leaves out the ramp of `{}`", left.key);
        let problem = Diagnostic::error(codes::RAMP, left.place, message)
            .with_label("when does it change?")
            .with_help(format!("add `{}` to `in_turn`", left.key));
        reader.push(problem);
        return false;
    }
    reader.plan.turns = turns;
    reader.plan.levels = Some(after + 1);
    true
}

/// The ramps of a file; what is wrong with them is told when they are read in earnest.
pub(super) fn look_ahead(
    reader: &Reader<'_>,
    document: &Document<'_>,
    kind: &Kind,
    table: &Table<'_>,
) -> Vec<RampSeen> {
    let mut untold = Diagnostics::new();
    let mut ahead = reader.ahead(&mut untold);
    super::balance::read(&mut ahead, table);
    (kind.read)(&mut ahead, document, table);
    ahead.ramps().to_vec()
}

fn refuse(reader: &mut Reader<'_>, key: &Placed<String>, ramps: &[RampSeen], why: &str) -> bool {
    let keys: std::collections::BTreeSet<_> = ramps.iter().map(|ramp| format!("`{}`", ramp.key)).collect();
    let keys: Vec<_> = keys.into_iter().collect();
    let problem = Diagnostic::error(codes::RAMP, key.place, format!("`{}` in `in_turn` {why}", key.value))
        .with_label("no turn for it")
        .with_help(if keys.is_empty() {
            "leave `in_turn` out: nothing here changes from level to level".to_owned()
        } else {
            format!("the ramps are those of {}", keys.join(", "))
        });
    reader.push(problem);
    false
}

/// Ramps that change together have the same number of levels: all of an exercise, or, in turn, all of one key. Pushes
/// each that differs from the first.
pub(super) fn check(reader: &mut Reader<'_>) -> bool {
    let in_turn = !reader.plan.turns.is_empty();
    let ramps = reader.ramps().to_vec();
    let mut fine = true;
    for (index, ramp) in ramps.iter().enumerate() {
        let first = ramps[..index].iter().find(|first| !in_turn || first.key == ramp.key);
        let Some(first) = first.filter(|first| first.levels != ramp.levels) else { continue };
        let message = format!(
            "this ramp of `{}` has {} levels, the ramp of `{}` on line {} has {}",
            ramp.key,
            ramp.levels,
            first.key,
            reader.line(first.place),
            first.levels
        );
        let problem = Diagnostic::error(codes::RAMP, ramp.place, message)
            .with_label(format!("{} levels", ramp.levels))
            .with_help("give all ramps of an exercise the same number of levels, or let them go `in_turn`");
        reader.push(problem);
        fine = false;
    }
    fine
}
