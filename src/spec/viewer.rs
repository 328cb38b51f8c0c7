//! `[viewer]`: who looks and from where, and what is known of their two eyes.
//!
//! What is not written stays unknown: a norm holds only where the author names it.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::optics::reserves::{Norms, Phoria, Reserve, Reserves};
use crate::optics::{Base, Viewer, Zone};
use crate::scene::{Depth, Eye, Side};
use crate::units::{Mm, PrismDioptre, Quantity, Unit};

use super::field::{Field, Limits, TableForm, TableSpec, Takes, mm, pd, percent};
use super::quantity::Share;
use super::read::Placed;
use super::reader::Reader;
use super::table::Table;

/// Interpupillary distances of people: nearly all adults 45 to 80 mm, children from five years down to 40 mm.
///
/// Source: `[Dodgson2004]`, abstract.
pub const IPD: Limits = mm(40.0, 80.0);

/// Viewing distances from a book held close to the far end of a room. Design choice.
pub const DISTANCE: Limits =
    Limits { min: Quantity { value: 200.0, unit: Unit::Mm }, max: Quantity { value: 6.0, unit: Unit::M } };

/// What a reserve or a phoria may be. Design choice: beyond it lies a slip of the pen.
const PRISM: Limits = pd(0.0, 60.0);

/// The steps of a base across and of one in height, and the most of each, pd. Design choice: the steps of trial prisms;
/// 20 pd at 40 cm take 80 mm of the page.
const STEP: f64 = 1.0;
const STEP_VERTICAL: f64 = 0.5;
const MOST: f64 = 20.0;
const MOST_VERTICAL: f64 = 10.0;

/// `[viewer]`.
pub const VIEWER: TableSpec = TableSpec {
    name: "viewer",
    form: TableForm::Single,
    groups: &[PLACE, EYES],
    doc: "Who looks, and from where. Nothing here has a default: these numbers shape all depth.",
};

pub(super) const PLACE: &[Field] = &[
    Field::required(
        "distance",
        Takes::Length(DISTANCE),
        "From the eyes to the page. Every offset is computed for this distance.",
    ),
    Field::required("ipd", Takes::Length(IPD), "Distance between the pupils that places in space are computed for."),
    Field::required(
        "ipd_range",
        Takes::List { of: &Takes::Length(IPD), min: 2, max: 2 },
        "Smallest and largest pupil distance among the readers, around `ipd`: promised places are printed as a range \
         over these, and the smallest sets the limit for what stands away.",
    ),
];

pub(super) const EYES: &[Field] = &[
    Field::optional(
        "norms",
        Takes::Choice(Norms::WORDS),
        "A published set of fusional reserves that stands in for those of the reader. Left out, with no reserves of their \
         own either: no range is known, and none is guessed.",
    ),
    Field::optional("toward", Takes::Table(&RESERVE), "The reader's base-out reserve, as a professional found it."),
    Field::optional("away", Takes::Table(&RESERVE), "The reader's base-in reserve, as a professional found it."),
    Field::optional(
        "phoria",
        Takes::Table(&PHORIA),
        "The resting turn that fusion holds in check, as a professional found it. It narrows the range on the side that \
         works against it.",
    ),
    Field::optional(
        "near_point",
        Takes::Length(mm(20.0, 400.0)),
        "Nearest place that the reader's two eyes hold single, from the eyes. Nothing is drawn to stand nearer.",
    ),
    Field::optional(
        "balance",
        Takes::Table(&EYE_BALANCE),
        "The balance between the eyes that the reader can use. It holds on every page without one of its own, but for pages \
         about fine depth, which unequal eyes would spoil. Only under `[gate]`.",
    ),
    Field::default(
        "zone",
        Takes::Choice(&["everyday", "whole"]),
        r#""everyday""#,
        "How much of the reserves pages may ask: `everyday`, the middle third, or `whole`, up to the blur; `whole` only \
         under `[gate]`.",
    ),
    Field::optional(
        "base",
        Takes::Depth,
        "A demand that the whole page rides on, for an eye turn, such as `\"3 pd toward\"`, in steps of 1 pd up to \
         20 pd. All demands count from it; places are then not told. Printed in every footer. Only under `[gate]`.",
    ),
    Field::optional(
        "base_vertical",
        Takes::Table(&VERTICAL),
        "The same up and down: how much one eye's picture lies higher, in steps of 0.5 pd. Only under `[gate]`.",
    ),
];

/// A reserve.
pub const RESERVE: TableSpec = TableSpec {
    name: "reserve",
    form: TableForm::Inline,
    groups: &[&[
        Field::optional("blur", Takes::Prism(PRISM), "Where it blurs; left out where it breaks first."),
        Field::required("break", Takes::Prism(PRISM), "Where it breaks in two."),
        Field::optional("recovery", Takes::Prism(PRISM), "Where it is one again on the way back."),
    ]],
    doc: "How far the eyes can turn from the page on one side.",
};

/// A phoria.
pub const PHORIA: TableSpec = TableSpec {
    name: "phoria",
    form: TableForm::Inline,
    groups: &[&[
        Field::required("amount", Takes::Prism(PRISM), "How much."),
        Field::required("direction", Takes::Choice(&["exo", "eso"]), "Outward or inward."),
    ]],
    doc: "A resting turn of the eyes.",
};

/// A balance of the reader.
pub const EYE_BALANCE: TableSpec = TableSpec {
    name: "balance",
    form: TableForm::Inline,
    groups: &[&[
        Field::required(
            "share",
            Takes::Share(percent(20.0, 100.0)),
            "What the stronger eye keeps, at the most at which both eyes take part.",
        ),
        Field::required("stronger", Takes::Choice(&["left", "right"]), "The stronger eye: it gets less."),
    ]],
    doc: "What the stronger eye keeps.",
};

/// A vertical base.
pub const VERTICAL: TableSpec = TableSpec {
    name: "vertical base",
    form: TableForm::Inline,
    groups: &[&[
        Field::required("amount", Takes::Prism(pd(0.0, MOST_VERTICAL)), "How much, in steps of 0.5 pd."),
        Field::required("higher", Takes::Choice(&["left", "right"]), "Whose picture lies higher."),
    ]],
    doc: "A difference in height between the two pictures.",
};

/// What a table of a viewer says; what it leaves out is unknown.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Known {
    /// From the eyes to the page.
    pub distance: Option<Mm>,
    /// Between the pupils.
    pub ipd: Option<Mm>,
    /// Smallest and largest of the readers.
    pub ipd_range: Option<(Mm, Mm)>,
    /// A published norm that stands in for reserves.
    pub norms: Option<Norms>,
    /// Base-out reserve.
    pub toward: Option<Reserve>,
    /// Base-in reserve.
    pub away: Option<Reserve>,
    /// Resting turn.
    pub phoria: Option<Phoria>,
    /// Nearest single place.
    pub near_point: Option<Mm>,
    /// What the reader's stronger eye keeps, of 1, and which eye that is.
    pub balance: Option<(Eye, f64)>,
    /// Whether the whole reserves are open.
    pub whole: Option<bool>,
    /// Horizontal base, toward positive.
    pub base: Option<PrismDioptre>,
    /// Vertical base, positive where the right eye's picture lies higher.
    pub base_vertical: Option<PrismDioptre>,
}

impl Known {
    /// These facts, with what they leave out from `other`. Reserves go together: one side measured and the other from
    /// another reader would be nobody's.
    pub fn or(self, other: Self) -> Self {
        let own = self.toward.is_some() || self.away.is_some() || self.norms.is_some();
        let (toward, away, norms) =
            if own { (self.toward, self.away, self.norms) } else { (other.toward, other.away, other.norms) };
        // One reader has one pupil distance.
        let ipd_range = self.ipd_range.or(self.ipd.map(|ipd| (ipd, ipd))).or(other.ipd_range);
        Self {
            distance: self.distance.or(other.distance),
            ipd: self.ipd.or(other.ipd),
            ipd_range,
            norms,
            toward,
            away,
            phoria: self.phoria.or(other.phoria),
            near_point: self.near_point.or(other.near_point),
            balance: self.balance.or(other.balance),
            whole: self.whole.or(other.whole),
            base: self.base.or(other.base),
            base_vertical: self.base_vertical.or(other.base_vertical),
        }
    }

    /// The reserves: the reader's own side by side with those of the norm.
    pub fn reserves(&self) -> Option<Reserves> {
        let norm = self.norms.map(Norms::reserves);
        Some(Reserves { away: self.away.or(norm.map(|n| n.away))?, toward: self.toward.or(norm.map(|n| n.toward))? })
    }

    /// The viewer that pages are computed for; `None` where distance or ipds are unknown.
    pub fn viewer(&self) -> Option<Viewer> {
        let reserves = self.reserves();
        let zone = reserves.and_then(|reserves| match self.whole {
            Some(true) => Some(Zone::whole(&reserves)),
            _ => Zone::everyday(&reserves, self.phoria),
        });
        let base = Base { horizontal: self.base.unwrap_or_default(), vertical: self.base_vertical.unwrap_or_default() };
        Some(Viewer { zone, base, ..Viewer::new(self.distance?, self.ipd?, self.ipd_range?) })
    }
}

/// Reads `[viewer]`. `None`: a problem has been pushed.
pub(super) fn read_viewer(reader: &mut Reader<'_>, mut table: Table<'_>, gated: bool) -> Option<Known> {
    table.check_keys(reader);
    let distance = table.get(reader, "distance").map(Some);
    let ipd: Option<Mm> = table.get(reader, "ipd");
    let range: Option<Vec<Mm>> = table.get(reader, "ipd_range");
    let whole = read_zone(reader, &table).map(Some);
    let eyes = read_eyes(reader, &table, whole);
    let range = check_range(reader, &table, ipd, range);
    check_gate(reader, &table, whole, gated)?;
    Some(Known { distance: distance?, ipd: Some(ipd?), ipd_range: range?, ..eyes? })
}

/// Reads what a table of a reader says of its viewer: all of it may be left out, for `set` says it. `None`: a problem has
/// been pushed.
pub(super) fn read_known(
    reader: &mut Reader<'_>,
    table: &Table<'_>,
    set: Option<&Known>,
    gated: bool,
) -> Option<Known> {
    let distance = table.maybe(reader, "distance");
    let ipd: Option<Option<Mm>> = table.maybe(reader, "ipd");
    let range: Option<Option<Vec<Mm>>> = table.maybe(reader, "ipd_range");
    let whole = if table.has("zone") { read_zone(reader, table).map(Some) } else { Some(None) };
    let eyes = read_eyes(reader, table, whole);
    let own = ipd.and_then(|ipd| ipd.or(set?.ipd));
    let range = match range {
        Some(Some(range)) => check_range(reader, table, own, Some(range)),
        other => other.map(|_| None),
    };
    check_gate(reader, table, whole, gated)?;
    Some(Known { distance: distance?, ipd: ipd?, ipd_range: range?, ..eyes? })
}

/// Whether the whole of the reserves is open.
fn read_zone(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<bool> {
    table.one_of(reader, "zone", &[false, true])
}

/// The range of ipds, around `ipd`.
fn check_range(
    reader: &mut Reader<'_>,
    table: &Table<'_>,
    ipd: Option<Mm>,
    range: Option<Vec<Mm>>,
) -> Option<Option<(Mm, Mm)>> {
    let range = range?;
    let (low, high) = range.first().copied().zip(range.get(1).copied())?;
    let Some(ipd) = ipd.filter(|ipd| !(low <= *ipd && *ipd <= high)) else { return Some(Some((low, high))) };
    let message = format!("`ipd_range` from {} to {} mm does not hold `ipd`, {} mm", low.0, high.0, ipd.0);
    let problem = Diagnostic::error(codes::RANGE, table.place_of(reader, "ipd_range"), message)
        .with_label("low end <= `ipd` <= high end")
        .with_help("write the smallest and the largest pupil distance of the readers, in this order, around `ipd`");
    reader.push(problem);
    None
}

/// What is known of the eyes; nothing of it must be there.
fn read_eyes(reader: &mut Reader<'_>, table: &Table<'_>, whole: Option<Option<bool>>) -> Option<Known> {
    let norms = if table.has("norms") { table.one_of(reader, "norms", &Norms::ALL).map(Some) } else { Some(None) };
    let toward = read_reserve(reader, table, "toward");
    let away = read_reserve(reader, table, "away");
    let phoria = read_phoria(reader, table);
    let near_point = table.maybe(reader, "near_point");
    let balance = read_balance(reader, table);
    let base = read_base(reader, table);
    let base_vertical = read_vertical(reader, table);
    let known = Known {
        norms: norms?,
        toward: toward?,
        away: away?,
        phoria: phoria?,
        near_point: near_point?,
        balance: balance?,
        whole: whole?,
        base: base?,
        base_vertical: base_vertical?,
        ..Known::default()
    };
    check_sides(reader, table, &known)?;
    Some(known)
}

fn read_reserve(reader: &mut Reader<'_>, table: &Table<'_>, key: &'static str) -> Option<Option<Reserve>> {
    let Some(mut inner) = table.inline_table(reader, key)? else { return Some(None) };
    inner.check_keys(reader);
    let (blur, breaks) = (inner.maybe::<PrismDioptre>(reader, "blur"), inner.get::<PrismDioptre>(reader, "break"));
    let recovery = inner.maybe::<PrismDioptre>(reader, "recovery");
    let reserve = Reserve { blur: blur?, breaks: breaks?, recovery: recovery? };
    if let Some(blur) = reserve.blur.filter(|blur| reserve.breaks < *blur) {
        let message = format!("it blurs at `{}` pd, after it breaks at `{}` pd", blur.0, reserve.breaks.0);
        let problem = Diagnostic::error(codes::RANGE, inner.place_of(reader, "blur"), message)
            .with_label("at most `break`")
            .with_help("leave `blur` out where it breaks first");
        reader.push(problem);
        return None;
    }
    Some(Some(reserve))
}

fn read_phoria(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Option<Phoria>> {
    let Some(mut inner) = table.inline_table(reader, "phoria")? else { return Some(None) };
    inner.check_keys(reader);
    let amount: Option<PrismDioptre> = inner.get(reader, "amount");
    let sign = inner.one_of(reader, "direction", &[1.0, -1.0]);
    Some(Some(Phoria(PrismDioptre(amount?.0 * sign?))))
}

fn read_balance(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Option<(Eye, f64)>> {
    let Some(mut inner) = table.inline_table(reader, "balance")? else { return Some(None) };
    inner.check_keys(reader);
    let share: Option<Share> = inner.get(reader, "share");
    let stronger = inner.one_of(reader, "stronger", &[Eye::Left, Eye::Right]);
    Some(Some((stronger?, share?.0)))
}

fn read_vertical(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Option<PrismDioptre>> {
    let Some(mut inner) = table.inline_table(reader, "base_vertical")? else { return Some(None) };
    inner.check_keys(reader);
    let amount: Option<Placed<PrismDioptre>> = inner.get(reader, "amount");
    let sign = inner.one_of(reader, "higher", &[-1.0, 1.0]);
    let amount =
        amount.and_then(|a| in_steps(reader, "base_vertical", a.place, (a.value, STEP_VERTICAL, MOST_VERTICAL)));
    Some(Some(PrismDioptre(amount?.0 * sign? + 0.0)))
}

/// A base comes in steps, as prisms do, and stays below the most that pages have room for.
fn in_steps(
    reader: &mut Reader<'_>,
    key: &str,
    place: Place,
    (amount, step, most): (PrismDioptre, f64, f64),
) -> Option<PrismDioptre> {
    let (label, help) = if most < amount.0 {
        (format!("at most {most} pd"), "so much is not for printed pages: ask the professional who set it".to_owned())
    } else if (amount.0 / step).fract() != 0.0 {
        let near = (amount.0 / step).floor() * step;
        (format!("whole steps of {step} pd"), format!("ask for `{near} pd` or `{} pd`", near + step))
    } else {
        return Some(amount);
    };
    let message = format!("`{key}` of `{}` pd is not in steps of `{step}` pd from `0` to `{most}` pd", amount.0);
    reader.push(Diagnostic::error(codes::RANGE, place, message).with_label(label).with_help(help));
    None
}

/// A base is a demand: a place or an angle would shift with the distance.
fn read_base(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Option<PrismDioptre>> {
    let Some(base): Option<Placed<Depth>> = table.maybe(reader, "base")? else { return Some(None) };
    let place = base.place;
    match base.value {
        Depth::Demand(amount, side) => {
            let amount = in_steps(reader, "base", place, (amount, STEP, MOST))?;
            Some(Some(if side == Side::Toward { amount } else { PrismDioptre(0.0 - amount.0) }))
        }
        _ => {
            let problem = Diagnostic::error(codes::UNIT, base.place, "`base` takes a demand in pd and a side")
                .with_label("not a demand")
                .with_help("write for example `\"3 pd toward\"`");
            reader.push(problem);
            None
        }
    }
}

/// A reserve on one side alone gives no range.
fn check_sides(reader: &mut Reader<'_>, table: &Table<'_>, known: &Known) -> Option<()> {
    if known.reserves().is_some() || (known.toward.is_none() && known.away.is_none()) {
        return Some(());
    }
    let (written, missing) = if known.toward.is_some() { ("toward", "away") } else { ("away", "toward") };
    let message =
        format!("the reserve `{written}` is known, the reserve `{missing}` is not: together they make a range");
    let problem = Diagnostic::error(codes::MISSING_KEY, table.place_of(reader, written), message)
        .with_label("one side alone")
        .with_help(format!("add `{missing}`, or name `norms` to stand in for it"));
    reader.push(problem);
    None
}

/// What only a professional may set needs a `[gate]`.
fn check_gate(reader: &mut Reader<'_>, table: &Table<'_>, whole: Option<Option<bool>>, gated: bool) -> Option<()> {
    let is_whole = whole.flatten() == Some(true);
    let asks = |key: &'static str| (key, table.has(key));
    let keys = [("zone", is_whole), asks("base"), asks("base_vertical"), asks("balance")];
    let Some((key, _)) = keys.into_iter().find(|(_, asked)| *asked && !gated) else { return Some(()) };
    let message = format!("`{key}` needs a `[gate]`: it is for an eye-care professional to set");
    let problem = Diagnostic::error(codes::GATE, table.place_of(reader, key), message)
        .with_label("`set.toml` has no `[gate]`")
        .with_help("leave it out, or, if a professional decided it, name them in `set.toml`: `[gate]` with `set_by`");
    reader.push(problem);
    None
}
