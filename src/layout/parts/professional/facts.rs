//! The facts of the book: what it is, whose eyes it was computed for, and through which glasses it is seen.

use kurbo::Size;

use crate::colour::Ground;
use crate::exercise::balance::Balance;
use crate::language::Tongue;
use crate::layout::compose::{CELL_PAD, Composer, Piece};
use crate::layout::flow::Section;
use crate::layout::grid::{CAPTION, HEADING};
use crate::layout::parts::words;
use crate::layout::sheet::{Face, Role};
use crate::layout::text::Style;
use crate::layout::{Book, balance, swatch};
use crate::optics::reserves::{Bound, Reserve};
use crate::optics::{Viewer, Zone};
use crate::spec::MediumSource;
use crate::spec::viewer::Known;
use crate::units::PrismDioptre;

/// Share of the width that names of facts take.
const NAMES: f64 = 0.36;

/// A fact: the id of its name, and its value.
type Fact = (&'static str, String);

/// The sections of the first sheets, for columns of this size.
pub(super) fn sections(composer: &mut Composer<'_>, book: &Book<'_>, column: Size) -> Vec<Section> {
    let tongue = composer.tongue;
    let text = |composer: &mut Composer<'_>, id: &str| {
        let text = composer.say(id);
        vec![composer.lines(&text, &CAPTION, column.width).role(Role::Paragraph)]
    };
    let what = text(composer, "professional-what-text");
    let please = text(composer, "professional-please-text");
    let mut columns = text(composer, "professional-columns-text");
    if !book.set.viewer.base.is_none() {
        let together = ["professional-columns-text", "professional-columns-base"].map(|id| composer.say(id)).join(" ");
        columns = vec![composer.lines(&together, &CAPTION, column.width).role(Role::Paragraph)];
    }
    let viewer = facts(composer, &viewer(book, tongue), column);
    let findings = facts(composer, &findings(book, tongue), column);
    let glasses = facts(composer, &glasses(book, tongue), column);
    let bodies = [
        ("professional-what", what),
        ("professional-please", please),
        ("professional-viewer", viewer),
        ("professional-findings", findings),
        ("professional-glasses", glasses),
        ("professional-columns", columns),
    ];
    let section = |(heading, body): (&str, Vec<Piece>)| {
        let heading = composer.say(heading);
        Section::new(composer.heading(&heading, column.width), body)
    };
    bodies.into_iter().map(section).collect()
}

/// A table of facts, divided where it is higher than a column.
fn facts(composer: &mut Composer<'_>, facts: &[Fact], column: Size) -> Vec<Piece> {
    let bold = Style { face: Face::Bold, ..CAPTION };
    let head = ["professional-head-what", "professional-head-value"].map(|id| composer.say(id));
    let rows: Vec<Vec<String>> = facts.iter().map(|(id, value)| vec![composer.say(id), value.clone()]).collect();
    let widest = rows.iter().map(|row| composer.widest_word(&row[0], &bold) + CELL_PAD);
    let names = widest.fold(column.width * NAMES, f64::max);
    let widths = [names, column.width - names];
    let rows = rows.iter().map(|row| composer.cells(row, &widths, &CAPTION)).collect();
    let room = column.height - 2.0 * composer.leading(&HEADING);
    composer.tables((&[&head[0], &head[1]], &CAPTION), rows, &widths, room)
}

/// What is said of what nobody found.
fn unknown(tongue: &Tongue) -> String {
    tongue.say("professional-unknown")
}

/// Whose eyes, as far as the author said.
fn viewer(book: &Book<'_>, tongue: &Tongue) -> Vec<Fact> {
    let (viewer, known) = (&book.set.viewer, &book.set.known);
    let (low, high) = viewer.ipd_range;
    let ipd = [
        ("ipd", tongue.mm(viewer.ipd, 1).into()),
        ("low", tongue.number(low.0, 1).into()),
        ("high", tongue.mm(high, 1).into()),
    ];
    let unknown = || unknown(tongue);
    let reserves = known.reserves();
    let side = |of: &Reserve, own| reserve(of, own, known, tongue);
    let mut rows: Vec<Fact> = book.set.reader.iter().map(|reader| ("professional-reader", reader.clone())).collect();
    rows.extend([
        ("professional-distance", tongue.cm(viewer.distance, 1)),
        ("professional-ipd", tongue.tell("professional-ipd-value", &ipd)),
        ("professional-reserve-toward", reserves.map_or_else(unknown, |r| side(&r.toward, known.toward))),
        ("professional-reserve-away", reserves.map_or_else(unknown, |r| side(&r.away, known.away))),
        ("professional-zone", viewer.zone.as_ref().map_or_else(unknown, |zone| self::zone(zone, known, tongue))),
    ]);
    rows
}

/// A professional's findings, and what follows from them.
fn findings(book: &Book<'_>, tongue: &Tongue) -> Vec<Fact> {
    let (viewer, known) = (&book.set.viewer, &book.set.known);
    let phoria = known.phoria.map(|turn| {
        let pd = [("pd", tongue.pd(turn.0, 2).into())];
        if turn.0.0 < 0.0 {
            tongue.tell("professional-phoria-eso", &pd)
        } else {
            tongue.tell("professional-phoria-exo", &pd)
        }
    });
    let balance = known.balance.map(|balance| balance::share(Balance::from(balance), tongue));
    let unknown = || unknown(tongue);
    let mut rows = vec![
        ("professional-phoria", phoria.unwrap_or_else(unknown)),
        ("professional-near-point", known.near_point.map_or_else(unknown, |near| tongue.mm(near, 1))),
        ("professional-balance", balance.unwrap_or_else(unknown)),
        ("professional-base", base(viewer, tongue)),
    ];
    let framed = book.pages.iter().any(|page| page.page.gated || page.page.balance.is_some());
    let decided = known.whole == Some(true) || !viewer.base.is_none();
    if let Some(set_by) = book.set.gate.as_ref().filter(|_| framed || decided) {
        let what = if framed { "professional-framed" } else { "professional-decided" };
        rows.push((what, balance::set_by(set_by, tongue)));
    }
    rows
}

/// "blur 17, break 21, recovery 11 pd; published means of a group, morgan near": with where it came from.
fn reserve(reserve: &Reserve, own: Option<Reserve>, known: &Known, tongue: &Tongue) -> String {
    let part = |id: &str, amount: Option<PrismDioptre>| {
        amount.map(|amount| tongue.tell(id, &[("n", tongue.number(amount.0, 2).into())]))
    };
    let parts = [
        part("professional-blur", reserve.blur),
        part("professional-break", Some(reserve.breaks)),
        part("professional-recovery", reserve.recovery),
    ];
    let amounts = parts.into_iter().flatten().collect::<Vec<_>>().join(", ");
    let source = match (own, known.norms) {
        (None, Some(norms)) => tongue.tell("professional-source-norm", &[("norm", norms.name().into())]),
        _ => tongue.say("professional-source-found"),
    };
    let amounts = tongue.tell("unit-pd", &[("n", amounts.into())]);
    tongue.tell("professional-reserve", &[("amounts", amounts.into()), ("source", source.into())])
}

/// "3 pd away (percival) to 7 pd toward (percival): the everyday part".
fn zone(zone: &Zone, known: &Known, tongue: &Tongue) -> String {
    let whole = known.whole == Some(true);
    let which = tongue.say(if whole { "professional-zone-whole" } else { "professional-zone-everyday" });
    let bound = |bound| {
        tongue.say(match bound {
            Bound::Percival => "professional-bound-percival",
            Bound::Sheard => "professional-bound-sheard",
            Bound::Reserve => "professional-bound-reserve",
        })
    };
    let away = tongue.tell("demand-away", &[("pd", tongue.pd(zone.away, 2).into())]);
    let toward = tongue.tell("demand-toward", &[("pd", tongue.pd(zone.toward, 2).into())]);
    let args = [
        ("from", away.into()),
        ("first", bound(zone.away_bound).into()),
        ("to", toward.into()),
        ("second", bound(zone.toward_bound).into()),
        ("which", which.into()),
    ];
    tongue.tell("professional-zone-value", &args)
}

/// What the whole page rides on.
fn base(viewer: &Viewer, tongue: &Tongue) -> String {
    let base = viewer.base;
    if base.is_none() {
        return tongue.say("professional-base-none");
    }
    let side = |amount: PrismDioptre, [above, below]: [&str; 2]| {
        let id = if 0.0 < amount.0 { above } else { below };
        (amount.0 != 0.0).then(|| tongue.tell(id, &[("pd", tongue.pd(amount, 2).into())]))
    };
    let across = side(base.horizontal, ["professional-base-out", "professional-base-in"]);
    let upright = side(base.vertical, ["professional-base-right", "professional-base-left"]);
    across.into_iter().chain(upright).collect::<Vec<_>>().join(", ")
}

fn glasses(book: &Book<'_>, tongue: &Tongue) -> Vec<Fact> {
    let (edition, plan) = (book.edition, book.plan);
    let percent = |share: f64| tongue.number(share * 100.0, 1);
    let ghost = [("left", percent(plan.left.ghost).into()), ("right", percent(plan.right.ghost).into())];
    let forecast = match edition.colour.source {
        MediumSource::Unsaid => tongue.tell("professional-ghost-ideal", &ghost),
        _ => tongue.tell("professional-ghost-value", &ghost),
    };
    let about = [("id", (&edition.id).into()), ("page", edition.page.name().into())];
    let about = match edition.ground {
        Ground::White => tongue.tell("professional-edition-white", &about),
        Ground::Black => tongue.tell("professional-edition-black", &about),
    };
    let inks = [("left", plan.inks.left.hex().into()), ("right", plan.inks.right.hex().into())];
    vec![
        ("professional-filters", words::glasses(tongue, edition)),
        ("professional-edition", about),
        ("professional-seen-on", swatch::medium(&edition.colour.source, tongue)),
        ("professional-inks", tongue.tell("professional-inks-value", &inks)),
        ("professional-ghost", forecast),
    ]
}
