//! The level map: each exercise page as a circle with its number, strand by strand, along a line that rises with the
//! reader. A circle is for colouring in; nothing else is asked.

use kurbo::{Circle, Rect, Shape as _};

use crate::layout::compose::{Column, Composer, Piece, rule};
use crate::layout::grid::{BODY, CAPTION, Grid, LEADING};
use crate::layout::sheet::{Face, Fill, Furniture, Node, Role, Tone};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft, parts};

use super::{foot, opening, sheet_id};

/// Name of the first sheet; later ones are numbered.
const ID: &str = "map";
/// Clear space around the number in its circle, mm.
const PAD: f64 = 2.2;
/// Between the words below two circles, mm.
const GAP: f64 = 3.0;
/// Width of the outline of a circle, mm.
const LINE: f64 = 0.4;
/// Between two strands, mm.
const STRANDS: f64 = LEADING * 0.8;
/// Between two rows of circles, mm.
const ROWS: f64 = 2.6;

/// How large circles and the steps between them are, the same on every sheet.
#[derive(Clone, Copy)]
struct Stations {
    radius: f64,
    step: f64,
    in_row: usize,
}

/// A circle on the map.
struct Station {
    id: String,
    number: usize,
    grade: Option<u32>,
}

/// The sheets of the map, with the numbers of the exercise pages that the composer knows.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    composer.sheet = ID.to_owned();
    let width = areas(grid, 0.0)[0].width();
    let stations = Stations::new(composer, width);
    let mut rows = std::collections::VecDeque::new();
    for (strand, pages) in strands(composer, book) {
        let rows_of = pages.chunks(stations.in_row).collect::<Vec<_>>();
        for (index, row) in rows_of.iter().enumerate() {
            let goes_on = index + 1 < rows_of.len();
            let circles = stations.row(composer, row, (0 < index, goes_on), width);
            let piece = if index == 0 { headed(composer, strand, circles, width) } else { circles };
            rows.push_back((if index == 0 { STRANDS } else { ROWS }, piece));
        }
    }
    let mut drafts = Vec::new();
    while drafts.is_empty() || !rows.is_empty() {
        drafts.push(sheet(composer, grid, drafts.len(), &mut rows));
    }
    drafts
}

/// The pages of each strand in the order of the book; strands in the order of their first pages.
fn strands(composer: &Composer<'_>, book: &Book<'_>) -> Vec<(&'static str, Vec<Station>)> {
    let mut strands: Vec<(&'static str, Vec<Station>)> = Vec::new();
    for (page, &number) in book.pages.iter().zip(&composer.numbers) {
        let station = Station { id: page.page.id.clone(), number, grade: page.grade };
        match strands.iter_mut().find(|(strand, _)| *strand == page.strand) {
            Some((_, stations)) => stations.push(station),
            None => strands.push((page.strand, vec![station])),
        }
    }
    strands
}

/// The name of a strand, and what its pages have in common.
fn heading(composer: &Composer<'_>, strand: &str) -> (String, String) {
    let (name, about) = match strand {
        "check" => ("map-check", "map-check-about"),
        "toward" => ("map-toward", "map-toward-about"),
        "away" => ("map-away", "map-away-about"),
        "jump" => ("map-jump", "map-jump-about"),
        "smooth" => ("map-smooth", "map-smooth-about"),
        _ => ("map-depth", "map-depth-about"),
    };
    (composer.say(name), composer.say(about))
}

/// A row of circles below the name of its strand and what its pages have in common.
fn headed(composer: &mut Composer<'_>, strand: &str, circles: Piece, width: f64) -> Piece {
    let (name, about) = heading(composer, strand);
    let mut piece = composer.heading(&name, width);
    piece.stack(composer.lines(&about, &CAPTION, width).role(Role::Paragraph), 0.2);
    piece.stack(circles, 1.4);
    piece
}

/// Where rows may stand below this height: all across, and on wide pages in two columns.
fn areas(grid: &Grid, top: f64) -> Vec<Rect> {
    if grid.beside {
        return grid.columns(top, foot(grid)).into();
    }
    vec![Rect { y0: top, y1: foot(grid), ..grid.safe }]
}

/// A sheet with as many rows as it has room for.
fn sheet(
    composer: &mut Composer<'_>,
    grid: &Grid,
    index: usize,
    rows: &mut std::collections::VecDeque<(f64, Piece)>,
) -> Draft {
    composer.sheet = sheet_id(ID, index);
    let title = composer.say("map-title");
    let lead = if index == 0 { composer.say("map-lead") } else { String::new() };
    let (mut nodes, top) = opening(composer, grid, &title, &lead);
    for area in areas(grid, top) {
        let mut column = Column::new(area);
        while let Some((gap, piece)) = rows.pop_front() {
            let needs = piece.height + if column.nodes.is_empty() { 0.0 } else { gap };
            if column.room() + 1e-6 < needs && !column.nodes.is_empty() {
                rows.push_front((gap, piece));
                break;
            }
            column.add(piece, gap);
        }
        nodes.extend(column.finish(composer));
    }
    parts::sheet(composer, ID, (&title, &composer.say("map-description")), index, nodes)
}

impl Stations {
    /// Large enough for a page number of three figures, and for the words below.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a row holds a few dozen circles")]
    fn new(composer: &mut Composer<'_>, width: f64) -> Self {
        let radius = composer.width_of("888", &bold()) / 2.0 + PAD;
        let widest = (1_u32..=10).map(|grade| grade_words(composer, grade)).collect::<Vec<_>>();
        let words = widest.iter().map(|words| composer.width_of(words, &CAPTION)).fold(0.0, f64::max);
        let least = words.max(2.0 * radius) + GAP;
        let in_row = ((width / least) as usize).max(1);
        Self { radius, step: width / in_row as f64, in_row }
    }

    /// Circles along a line, which comes from the row above or goes on to the next one.
    fn row(self, composer: &mut Composer<'_>, row: &[Station], (comes, goes_on): (bool, bool), width: f64) -> Piece {
        let (radius, step) = (self.radius, self.step);
        let middle = |index: usize| (index as f64 + 0.5) * step;
        let mut height = 2.0 * radius;
        let (mut items, mut marks) = (Vec::new(), Vec::new());
        for (index, station) in row.iter().enumerate() {
            let x = middle(index);
            marks.push(circle(x, radius));
            let from = if index == 0 { if comes { 0.0 } else { x } } else { middle(index - 1) + radius };
            marks.extend((from + 1.0 < x - radius).then(|| line(from, x - radius, radius)));
            let item = self.item(composer, station);
            height = height.max(item.height);
            items.extend(item.moved(x - step / 2.0, 0.0).nodes);
        }
        if goes_on {
            marks.push(line(middle(row.len() - 1) + radius, width, radius));
        }
        let nodes = vec![Node::Group(Role::List, items), Node::Group(Role::Artifact(Furniture::Layout), marks)];
        Piece { height, nodes }
    }

    /// The number in its circle and the grade below, as a link to the page.
    fn item(self, composer: &mut Composer<'_>, station: &Station) -> Piece {
        let number = Style { align: Align::Center, ..bold() };
        let below = Style { align: Align::Center, ..CAPTION };
        // The blank keeps number and grade apart for those who hear the page.
        let leading = composer.leading(&BODY);
        let mut piece = composer.lines(&format!("{} ", station.number), &number, self.step);
        piece = piece.moved(0.0, self.radius - leading / 2.0);
        piece.height = 2.0 * self.radius;
        if let Some(grade) = station.grade {
            let words = grade_words(composer, grade);
            piece.stack(composer.lines(&format!("{words} "), &below, self.step), 0.8);
        }
        let area = Rect::new(self.step / 2.0 - self.radius, 0.0, self.step / 2.0 + self.radius, 2.0 * self.radius);
        let alt = composer.tell("map-go", &[("n", station.number.to_string().into())]);
        let height = piece.height;
        let link = piece.role(Role::Link { target: station.id.clone(), area, alt });
        let body = Node::Group(Role::ListBody, link.nodes);
        Piece { height, nodes: vec![Node::Group(Role::ListItem, vec![body])] }
    }
}

fn bold() -> Style {
    Style { face: Face::Bold, ..BODY }
}

fn grade_words(composer: &Composer<'_>, grade: u32) -> String {
    composer.tell("map-grade", &[("n", grade.to_string().into())])
}

/// An empty circle with its middle at this height of a row.
fn circle(x: f64, radius: f64) -> Node {
    let mut path = Circle::new((x, radius), radius - 0.2).to_path(0.005);
    path.extend(Circle::new((x, radius), radius - 0.2 - LINE).to_path(0.005).reverse_subpaths());
    Node::Fill(Fill { path, tone: Tone::LINE })
}

/// A thin line between two circles.
fn line(from: f64, to: f64, y: f64) -> Node {
    rule(Rect::new(from, y - LINE / 2.0, to, y + LINE / 2.0))
}
