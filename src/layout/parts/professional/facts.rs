//! The facts of the book: what it is, whose eyes it was computed for, and through which glasses it is seen.

use crate::colour::EyeReport;
use crate::exercise::balance::Balance;
use crate::layout::Book;
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::CAPTION;
use crate::layout::parts::{section, words};
use crate::optics::reserves::Reserve;
use crate::optics::{Viewer, Zone};
use crate::spec::MediumSource;
use crate::spec::viewer::Known;
use crate::units::{Mm, PrismDioptre, plain};

/// Share of the width that names of facts take.
const NAMES: f64 = 0.36;

const WHAT: &str = "Practice pages for two eyes through red and cyan filters, for adults who practise on their own. They are \
    not a test and not a treatment; they measure nothing and promise nothing. They were computed from the numbers below \
    and from nothing else. Your advice comes before anything that is written here.";

const PLEASE: &str = "Is practice of this kind safe for this reader? Which pages, from where, for how long? Is there a reason not \
    to weaken a suppression? Please write it beside the table, and cross out what the reader should leave alone.";

const COLUMNS: &str = "Grade: how hard a page is beside the others, 1 to 10; it says nothing about the reader. Demand: against the page, in prism dioptres; toward is base-out, away is base-in. Disparity: exact \
    vergence difference against the page; + is crossed. Place: from the eyes, over all pupil distances. Size: of the smallest and \
    the largest thing that is looked at. Cue: 0 is dots alone, 3 an outline and more. Parts: seen by the left eye alone, the right eye alone, \
    both. Balance: what the stronger eye keeps.";

/// What is told besides, where the whole page rides on a base.
const ON_BASE: &str = " Demand and disparity are counted from the base; no place is told, since the eyes are turned.";

/// The sections of the first sheet.
pub(super) fn sections(composer: &mut Composer<'_>, book: &Book<'_>, width: f64) -> Vec<Piece> {
    let viewer = facts(composer, &viewer(book), width);
    let findings = facts(composer, &findings(book), width);
    let glasses = facts(composer, &glasses(book), width);
    let text = |composer: &mut Composer<'_>, text: &str| {
        composer.lines(text, &CAPTION, width).role(crate::layout::sheet::Role::Paragraph)
    };
    let on_base = if book.set.viewer.base.is_none() { "" } else { ON_BASE };
    let columns = format!("{COLUMNS}{on_base}");
    let bodies = [
        ("What this book is", text(composer, WHAT)),
        ("What we ask you", text(composer, PLEASE)),
        ("What it was computed for", viewer),
        ("What else is known of the eyes", findings),
        ("Glasses and inks", glasses),
        ("What the table tells", text(composer, &columns)),
    ];
    bodies.into_iter().map(|(heading, body)| section(composer.heading(heading, width), [body])).collect()
}

fn facts(composer: &mut Composer<'_>, rows: &[[String; 2]], width: f64) -> Piece {
    let rows: Vec<Vec<String>> = rows.iter().map(|row| row.to_vec()).collect();
    composer.table(&["What", "Value"], &rows, &[width * NAMES, width * (1.0 - NAMES)], &CAPTION)
}

fn row(name: &str, value: impl Into<String>) -> [String; 2] {
    [name.to_owned(), value.into()]
}

fn mm(length: Mm) -> String {
    format!("{} mm", plain(length.0, 1))
}

fn pd(PrismDioptre(amount): PrismDioptre) -> String {
    format!("{} pd", plain(amount.abs(), 2))
}

/// What is said of what nobody found.
fn unknown() -> String {
    "not known; none is guessed".to_owned()
}

/// Whose eyes, as far as the author said.
fn viewer(book: &Book<'_>) -> Vec<[String; 2]> {
    let (viewer, known) = (&book.set.viewer, &book.set.known);
    let (low, high) = viewer.ipd_range;
    let mut rows: Vec<_> = book.set.reader.iter().map(|reader| row("Reader", reader.clone())).collect();
    rows.extend([
        row("Eyes to page", words::distance(book.tongue, book.set)),
        row("Pupil distance", format!("{}; of the readers {} to {}", mm(viewer.ipd), plain(low.0, 1), mm(high))),
        row("Reserve toward", known.reserves().map_or_else(unknown, |r| reserve(&r.toward, known.toward, known))),
        row("Reserve away", known.reserves().map_or_else(unknown, |r| reserve(&r.away, known.away, known))),
        row("Asked at most", viewer.zone.as_ref().map_or_else(unknown, |zone| self::zone(zone, known))),
    ]);
    rows
}

/// A professional's findings, and what follows from them.
fn findings(book: &Book<'_>) -> Vec<[String; 2]> {
    let (viewer, known) = (&book.set.viewer, &book.set.known);
    let phoria = known.phoria.map(|turn| format!("{} {}", pd(turn.0), if turn.0.0 < 0.0 { "eso" } else { "exo" }));
    let balance = known.balance.map(|balance| Balance::from(balance).words());
    let mut rows = vec![
        row("Phoria", phoria.unwrap_or_else(unknown)),
        row("Near point", known.near_point.map_or_else(unknown, mm)),
        row("Balance", balance.unwrap_or_else(unknown)),
        row("Base", base(viewer)),
    ];
    let framed = book.pages.iter().any(|page| page.page.gated || page.page.balance.is_some());
    let decided = known.whole == Some(true) || !viewer.base.is_none();
    if let Some(set_by) = book.set.gate.as_ref().filter(|_| framed || decided) {
        let what = if framed { "Framed pages" } else { "Zone and base" };
        rows.push(row(what, format!("set by {set_by}")));
    }
    rows
}

/// "17 blur, 21 break, 11 recovery pd; norm morgan near": with where it came from.
fn reserve(reserve: &Reserve, own: Option<Reserve>, known: &Known) -> String {
    let part = |value: Option<PrismDioptre>, name: &str| value.map(|value| format!("{name} {}", plain(value.0, 2)));
    let parts = [part(reserve.blur, "blur"), part(Some(reserve.breaks), "break"), part(reserve.recovery, "recovery")];
    let source = match (own, known.norms) {
        (None, Some(norms)) => format!("published means of a group, {}", norms.name()),
        _ => "as found in the reader".to_owned(),
    };
    format!("{} pd; {source}", parts.into_iter().flatten().collect::<Vec<_>>().join(", "))
}

/// "3 pd away (percival) to 7 pd toward (percival)".
fn zone(zone: &Zone, known: &Known) -> String {
    let which = if known.whole == Some(true) { "all of the reserves" } else { "the everyday part" };
    format!(
        "{} away ({}) to {} toward ({}): {which}",
        pd(zone.away),
        zone.away_bound.name(),
        pd(zone.toward),
        zone.toward_bound.name()
    )
}

/// What the whole page rides on.
fn base(viewer: &Viewer) -> String {
    let base = viewer.base;
    if base.is_none() {
        return "none".to_owned();
    }
    let side = |amount: PrismDioptre, [above, below]: [&str; 2]| {
        (amount.0 != 0.0).then(|| format!("{} {}", pd(amount), if 0.0 < amount.0 { above } else { below }))
    };
    let across = side(base.horizontal, ["toward (base-out)", "away (base-in)"]);
    let upright = side(base.vertical, ["right picture higher", "left picture higher"]);
    across.into_iter().chain(upright).collect::<Vec<_>>().join(", ")
}

fn glasses(book: &Book<'_>) -> Vec<[String; 2]> {
    let (edition, plan) = (book.edition, book.plan);
    let ghost = |eye: &EyeReport| format!("{} %", plain(eye.ghost * 100.0, 1));
    let forecast = format!("left eye {}, right eye {}", ghost(&plan.left), ghost(&plan.right));
    let forecast = match edition.colour.source {
        MediumSource::Unsaid => format!("{forecast}, if screen and filters were ideal"),
        _ => forecast,
    };
    vec![
        row("Glasses", words::glasses(book.tongue, edition)),
        row("Edition", format!("{}, {}, {} ground", edition.id, edition.page.name(), edition.ground.name())),
        row("Seen on", edition.colour.source.words().replace('`', "")),
        row("Inks", format!("left eye {}, right eye {}", plan.inks.left.hex(), plan.inks.right.hex())),
        row("Forecast ghost", forecast),
    ]
}
