//! The table of the exercise pages: what each asks of the eyes, in numbers.

use crate::exercise::Page;
use crate::language::Tongue;
use crate::layout::compose::{CELL_PAD, Composer, Piece};
use crate::layout::grid::SMALL;
use crate::layout::parts::back::page_link;
use crate::layout::parts::exercise::size;
use crate::layout::sheet::{Face, Tone};
use crate::layout::text::Style;
use crate::layout::{Book, BookPage, alt, balance};
use crate::optics::Viewer;
use crate::scene::{Eyes, Role};
use crate::solve::{FLAT, SolvedFeature, SolvedForm, Stand, stand};
use crate::units::{Mm, plain};

/// The heads of the columns, and their widths in mm of a portrait page; wider pages widen them all.
const COLUMNS: [(&str, f64); 11] = [
    ("professional-page", 31.0),
    ("professional-kind", 15.0),
    ("professional-level", 11.5),
    ("professional-grade", 11.5),
    ("professional-demand", 24.0),
    ("professional-disparity", 19.5),
    ("professional-place", 17.5),
    ("professional-size", 15.5),
    ("professional-cue", 8.5),
    ("professional-balance", 14.5),
    ("professional-parts", 14.0),
];

/// The share of its width, as large as the text is, that a column has where the table is divided between columns.
const COMFORT: f64 = 0.75;

/// The table, divided so that each part fits in this room: first between its columns where they are too many, each part
/// with the page, then between its pages.
pub(super) fn tables(composer: &mut Composer<'_>, book: &Book<'_>, (width, room): (f64, f64)) -> Vec<Piece> {
    let style = Style { tone: Tone::FULL, ..SMALL };
    let heads: Vec<String> = COLUMNS.iter().map(|(id, _)| composer.say(id)).collect();
    let rows: Vec<[String; 10]> =
        book.pages.iter().map(|page| texts(page, &book.set.viewer, composer.tongue)).collect();
    let needs = needs(composer, &heads, &rows, &style);
    let mut tables = Vec::new();
    // Where they are divided, no column is left with its widest word alone.
    let grown = COMFORT * composer.leading(&SMALL) / SMALL.leading.0;
    let comfort: Vec<f64> = COLUMNS.iter().zip(&needs).map(|((_, own), need)| need.max(own * grown)).collect();
    let divided = width < needs.iter().sum();
    for columns in groups(if divided { &comfort } else { &needs }, width) {
        let (own, need): (Vec<f64>, Vec<f64>) = columns.iter().map(|&c| (COLUMNS[c].1, needs[c])).unzip();
        let widths = fitted(&own, &need, width);
        let heads: Vec<&str> = columns.iter().map(|&c| heads[c].as_str()).collect();
        let mut set = Vec::new();
        for (page, row) in book.pages.iter().zip(&rows) {
            let mut cells = vec![page_link(composer, &page.page.id, &style, widths[0] - CELL_PAD)];
            let texts: Vec<String> = columns[1..].iter().map(|&c| row[c - 1].clone()).collect();
            cells.extend(composer.cells(&texts, &widths[1..], &style));
            set.push(cells);
        }
        tables.extend(composer.tables((&heads, &style), set, &widths, room));
    }
    tables
}

/// The least width of each column, mm: its widest word. Ids of pages may be divided anywhere.
fn needs(composer: &mut Composer<'_>, heads: &[String], rows: &[[String; 10]], style: &Style) -> Vec<f64> {
    let bold = Style { face: Face::Bold, ..*style };
    let mut needs: Vec<f64> = heads.iter().map(|head| composer.widest_word(head, &bold)).collect();
    needs[0] = needs[0].max(composer.width_of("moorings-", style));
    for row in rows {
        for (cell, need) in row.iter().zip(&mut needs[1..]) {
            *need = need.max(composer.widest_word(cell, style));
        }
    }
    needs.into_iter().map(|need| need + CELL_PAD).collect()
}

/// The columns of each table: all of them in one if they fit, else in as many as they take, each with the first column.
fn groups(needs: &[f64], width: f64) -> Vec<Vec<usize>> {
    let mut groups = vec![vec![0]];
    let mut used = needs[0];
    for (column, need) in needs.iter().enumerate().skip(1) {
        if width < used + need && groups.last().is_some_and(|group| 1 < group.len()) {
            groups.push(vec![0]);
            used = needs[0];
        }
        used += need;
        groups.last_mut().into_iter().for_each(|group| group.push(column));
    }
    groups
}

/// Widths in these proportions that fill a table, none less than what its column needs.
fn fitted(own: &[f64], needs: &[f64], width: f64) -> Vec<f64> {
    let mut fixed = vec![false; own.len()];
    loop {
        let of = |is: bool, widths: &[f64]| -> f64 {
            widths.iter().zip(&fixed).filter(|(_, fixed)| **fixed == is).map(|(width, _)| width).sum()
        };
        let (room, whole) = (width - of(true, needs), of(false, own));
        let widths = own.iter().zip(needs).zip(&fixed);
        let widths: Vec<f64> =
            widths.map(|((own, need), fixed)| if *fixed { *need } else { own * room / whole }).collect();
        let short = widths.iter().zip(needs).position(|(width, need)| width + 1e-9 < *need);
        match short {
            Some(column) if !fixed[column] => fixed[column] = true,
            _ => return widths,
        }
    }
}

/// The cells of a page, without its id.
fn texts(&BookPage { page, solved, grade, .. }: &BookPage<'_>, viewer: &Viewer, tongue: &Tongue) -> [String; 10] {
    // Counted from the base, where there is one, and so is the disparity.
    let (high, low) = alt::demand_range(solved, viewer);
    let at = |demand: f64| stand(Mm(0.0 - demand * viewer.distance.0 / 100.0), viewer);
    let ends = [at(low), at(high)];
    let none = || none(tongue);
    [
        page.kind.to_owned(),
        format!("{}/{}{}", page.level, page.levels, page.variant_words()),
        grade.map_or_else(none, |grade| grade.to_string()),
        range(demand(low, tongue), demand(high, tongue), tongue),
        arcsec(&ends, tongue),
        // Before turned eyes nobody can promise a place.
        if viewer.base.is_none() { places(&ends, tongue) } else { none() },
        angles(solved, viewer, tongue),
        page.effort.cue.map_or_else(none, |cue| cue.to_string()),
        balance(page, tongue),
        parts(solved),
    ]
}

/// What stands where a page has nothing of the kind.
fn none(tongue: &Tongue) -> String {
    tongue.say("professional-none")
}

/// "1 away to 4 toward"; one of them where both are the same.
fn range(from: String, to: String, tongue: &Tongue) -> String {
    if from == to { from } else { tongue.tell("professional-range", &[("from", from.into()), ("to", to.into())]) }
}

fn demand(demand: f64, tongue: &Tongue) -> String {
    let amount = [("n", tongue.number(demand.abs(), 2).into())];
    match demand {
        _ if demand.abs() < FLAT => tongue.say("professional-flat"),
        demand if demand < 0.0 => tongue.tell("professional-away", &amount),
        _ => tongue.tell("professional-toward", &amount),
    }
}

fn arcsec([low, high]: &[Option<Stand>; 2], tongue: &Tongue) -> String {
    let words = |stand: &Stand| {
        let arcsec = plain(stand.disparity.to_arcsec(), 0);
        if arcsec.starts_with(['-', '0']) { arcsec.replace('-', "−") } else { format!("+{arcsec}") }
    };
    let both = low.as_ref().zip(high.as_ref());
    both.map_or_else(|| none(tongue), |(low, high)| range(words(low), words(high), tongue))
}

/// The nearest and the farthest place over the ends and all pupil distances.
fn places(ends: &[Option<Stand>; 2], tongue: &Tongue) -> String {
    let places = ends.iter().flatten().flat_map(|stand| [stand.place_range.0, stand.place_range.1]);
    let far = |place: Option<Mm>| place.map_or(f64::INFINITY, |place| place.0);
    let (near, far) = places
        .map(far)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(near, most), place| (near.min(place), most.max(place)));
    let words = |place: f64| match place.is_finite() {
        true => tongue.number(place / 10.0, 1),
        false => tongue.say("professional-very-far"),
    };
    range(words(near), words(far), tongue)
}

/// The angles that the smallest and the largest thing to look at fill.
fn angles(solved: &[SolvedFeature], viewer: &Viewer, tongue: &Tongue) -> String {
    let looked_at = alt::looked_at(solved).map(|feature| size(feature).max_side());
    let figures = solved.iter().filter_map(|feature| match &feature.form {
        SolvedForm::Dots(dots) => Some(dots.figures.iter().map(|figure| figure.extent.0.max(figure.extent.1))),
        _ => None,
    });
    let sizes: Vec<f64> = looked_at.chain(figures.flatten()).collect();
    let small = sizes.iter().copied().fold(f64::INFINITY, f64::min);
    let large = sizes.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let angle = |size: f64| viewer.viewing().and_then(|viewing| viewing.angle_of_length(Mm(size)));
    let none = || none(tongue);
    let words = |size: f64| angle(size).map_or_else(none, |angle| tongue.number(angle.to_degrees(), 1));
    if sizes.is_empty() { none() } else { range(words(small), words(large), tongue) }
}

fn balance(page: &Page, tongue: &Tongue) -> String {
    match page.balance {
        Some(balance) => balance::share(balance, tongue),
        None if page.gated => tongue.say("professional-by-kind"),
        None => none(tongue),
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
