//! The codes of problems in spec files. A code never changes its meaning; rules of other rooms keep their own.

/// The file is not valid TOML.
pub const SYNTAX: &str = "E-SYNTAX";
/// A key that its table does not have.
pub const UNKNOWN_KEY: &str = "E-UNKNOWN-KEY";
/// A table that the file does not have, or a table written in the wrong form.
pub const UNKNOWN_TABLE: &str = "E-UNKNOWN-TABLE";
/// A required key is not there.
pub const MISSING_KEY: &str = "E-MISSING-KEY";
/// A required table is not there.
pub const MISSING_TABLE: &str = "E-MISSING-TABLE";
/// A value of another type than its key takes.
pub const TYPE: &str = "E-TYPE";
/// A quantity without a unit, or with one that its key does not take.
pub const UNIT: &str = "E-UNIT";
/// A number that cannot be read.
pub const NUMBER: &str = "E-NUMBER";
/// A value outside its limits.
pub const RANGE: &str = "E-RANGE";
/// A word that is not among those its key takes.
pub const CHOICE: &str = "E-CHOICE";
/// A text that is not a depth.
pub const DEPTH: &str = "E-DEPTH";
/// A text that its key does not take: empty, too long, or not in the form asked for.
pub const TEXT: &str = "E-TEXT";
/// A list with too few or too many entries.
pub const LIST: &str = "E-LIST";
/// A ramp that does not fit in itself or with the other ramps of its exercise.
pub const RAMP: &str = "E-RAMP";
/// The same name, file or entry twice.
pub const DUPLICATE: &str = "E-DUPLICATE";
/// Keys or tables that exclude each other.
pub const CONFLICT: &str = "E-CONFLICT";
/// Questions that luck alone passes too easily.
pub const LUCK: &str = "E-LUCK";
/// What only a professional may decide, without one named in `[gate]`.
pub const GATE: &str = "E-GATE";
/// Gated pages are to be left out of a set that has none.
pub const NOT_GATED: &str = "W-NOT-GATED";
/// A row of a file of numbers, or such a file as a whole, that cannot be used.
pub const DATA: &str = "E-DATA";
/// Pages that do not fit in the `[plan]`.
pub const PLAN: &str = "E-PLAN";
/// A page that comes on too few days of the `[plan]`.
pub const PLAN_DAYS: &str = "W-PLAN-DAYS";
/// Fewer new pages than the `[plan]` has weeks.
pub const PLAN_REPEATS: &str = "N-PLAN-REPEATS";
/// A file of the set that cannot be used.
pub const FILE: &str = "E-FILE";
/// Words of the author that an edition needs in another language, and that no translation has.
pub const UNTRANSLATED: &str = "E-UNTRANSLATED";
/// Something of the set that nothing uses: a file, a name, a translation.
pub const ORPHAN: &str = "W-ORPHAN";
