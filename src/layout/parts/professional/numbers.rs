//! The table of the exercise pages: what each asks of the eyes, in numbers.

use crate::exercise::Page;
use crate::layout::compose::{CELL_PAD, Composer, Piece};
use crate::layout::grid::SMALL;
use crate::layout::parts::back::page_link;
use crate::layout::parts::exercise::size;
use crate::layout::sheet::Tone;
use crate::layout::text::Style;
use crate::layout::{Book, BookPage, alt};
use crate::optics::Viewer;
use crate::scene::{Eyes, Role};
use crate::solve::{FLAT, SolvedFeature, SolvedForm, Stand, stand};
use crate::units::{Mm, plain};

/// The heads of the columns, and their widths in mm of a portrait page; wider pages widen them all.
const COLUMNS: &[(&str, f64)] = &[
    ("Page", 31.0),
    ("Kind", 15.0),
    ("Level", 11.5),
    ("Grade", 11.5),
    ("Demand, pd", 24.0),
    ("Disparity, arcsec", 19.5),
    ("Place, cm", 17.5),
    ("Size, degrees", 15.5),
    ("Cue", 8.5),
    ("Balance", 14.5),
    ("Parts", 14.0),
];

/// The table, divided so that each part fits in this room.
pub(super) fn tables(composer: &mut Composer<'_>, book: &Book<'_>, (width, room): (f64, f64)) -> Vec<Piece> {
    let style = Style { tone: Tone::FULL, ..SMALL };
    let whole: f64 = COLUMNS.iter().map(|(_, width)| width).sum();
    let widths: Vec<f64> = COLUMNS.iter().map(|(_, own)| own * width / whole).collect();
    let heads: Vec<&str> = COLUMNS.iter().map(|(head, _)| *head).collect();
    let mut rows = Vec::new();
    for page in book.pages {
        let mut cells = vec![page_link(composer, &page.page.id, &style, widths[0] - CELL_PAD)];
        cells.extend(composer.cells(&texts(page, &book.set.viewer), &widths[1..], &style));
        rows.push(cells);
    }
    composer.tables((&heads, &style), rows, &widths, room)
}

/// The cells of a page, without its id.
fn texts(&BookPage { page, solved, grade, .. }: &BookPage<'_>, viewer: &Viewer) -> [String; 10] {
    let (high, low) = alt::demand_range(solved, viewer);
    let at = |demand: f64| stand(Mm(0.0 - demand * viewer.distance.0 / 100.0), viewer);
    let ends = [at(low), at(high)];
    [
        page.kind.to_owned(),
        format!("{}/{}{}", page.level, page.levels, page.variant_words()),
        grade.map_or_else(none, |grade| grade.to_string()),
        range(demand(low), &demand(high)),
        arcsec(&ends),
        places(&ends),
        angles(solved, viewer),
        page.effort.cue.map_or_else(none, |cue| cue.to_string()),
        balance(page),
        parts(solved),
    ]
}

/// What stands where a page has nothing of the kind.
fn none() -> String {
    "–".to_owned()
}

/// "1 away to 4 toward"; one of them where both are the same.
fn range(from: String, to: &str) -> String {
    if from == to { from } else { format!("{from} to {to}") }
}

fn demand(demand: f64) -> String {
    match plain(demand.abs(), 2) {
        _ if demand.abs() < FLAT => "page".to_owned(),
        amount if demand < 0.0 => format!("{amount} away"),
        amount => format!("{amount} toward"),
    }
}

fn arcsec([low, high]: &[Option<Stand>; 2]) -> String {
    let words = |stand: &Stand| {
        let arcsec = plain(stand.disparity.to_arcsec(), 0);
        if arcsec.starts_with(['-', '0']) { arcsec.replace('-', "−") } else { format!("+{arcsec}") }
    };
    low.as_ref().zip(high.as_ref()).map_or_else(none, |(low, high)| range(words(low), &words(high)))
}

/// The nearest and the farthest place over the ends and all pupil distances.
fn places(ends: &[Option<Stand>; 2]) -> String {
    let places = ends.iter().flatten().flat_map(|stand| [stand.place_range.0, stand.place_range.1]);
    let far = |place: Option<Mm>| place.map_or(f64::INFINITY, |place| place.0);
    let (near, far) = places
        .map(far)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(near, most), place| (near.min(place), most.max(place)));
    let words = |place: f64| if place.is_finite() { plain(place / 10.0, 1) } else { "very far".to_owned() };
    range(words(near), &words(far))
}

/// The angles that the smallest and the largest thing to look at fill.
fn angles(solved: &[SolvedFeature], viewer: &Viewer) -> String {
    let looked_at = alt::looked_at(solved).map(|feature| size(feature).max_side());
    let figures = solved.iter().filter_map(|feature| match &feature.form {
        SolvedForm::Dots(dots) => Some(dots.figures.iter().map(|figure| figure.extent.0.max(figure.extent.1))),
        _ => None,
    });
    let sizes: Vec<f64> = looked_at.chain(figures.flatten()).collect();
    let small = sizes.iter().copied().fold(f64::INFINITY, f64::min);
    let large = sizes.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let angle = |size: f64| viewer.viewing().and_then(|viewing| viewing.angle_of_length(Mm(size)));
    let words = |size: f64| angle(size).map_or_else(none, |angle| plain(angle.to_degrees(), 1));
    if sizes.is_empty() { none() } else { range(words(small), &words(large)) }
}

fn balance(page: &Page) -> String {
    match page.balance {
        Some(balance) => balance.words(),
        None if page.gated => "by kind".to_owned(),
        None => none(),
    }
}

/// How many parts the left eye, the right eye and both see: "1/1/3". Numbers and guides are no part of the picture.
fn parts(solved: &[SolvedFeature]) -> String {
    let of = |eyes: Eyes| {
        let seen = solved.iter().filter(|f| f.eyes == eyes && !matches!(f.role, Role::Number | Role::Guide));
        seen.count()
    };
    format!("{}/{}/{}", of(Eyes::Left), of(Eyes::Right), of(Eyes::Both))
}
