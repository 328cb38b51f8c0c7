//! Numbers of an exercise page that depend on the viewer: a table of distances, or a ruler in true size. They stand at
//! the foot of the art field, in the ink of the text; the target has to leave them room.

use kurbo::{Rect, Shape as _};

use crate::exercise::Page;
use crate::exercise::readings::ReadingsForm;
use crate::layout::alt;
use crate::layout::compose::{CELL_PAD, Composer, Piece};
use crate::layout::grid::{CAPTION, Grid};
use crate::layout::sheet::{Face, Fill, Node, Role, Tone};
use crate::layout::text::{Align, Style};
use crate::optics::Viewer;
use crate::solve::{self, SolvedFeature, Stand};
use crate::spec::TextSize;
use crate::units::{Mm, Pt, plain};

/// Width of the first column of the table, mm.
const HEAD: f64 = 30.0;
/// The longest ruler, mm: the art field without a margin for its numbers.
const LONGEST: f64 = 170.0;
/// From the left edge of the art field to the page end of the ruler, mm.
const MARGIN: f64 = 5.0;
/// Lengths of the ticks at whole and at half centimetres, mm.
const TICKS: (f64, f64) = (3.0, 1.8);
/// Thickness of the band that marks the range, mm.
const BAND: f64 = 2.4;
/// Thickness of the lines of the ruler, mm.
const LINE: f64 = 0.3;

/// One target as seen from one distance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Eye plane to page.
    pub distance: Mm,
    /// How the target stands from there.
    pub stand: Stand,
}

impl Reading {
    /// How far from the page the target seems to stand, over the ipds of the audience: the nearest to the page and the
    /// farthest from it, mm. `None` at or past parallel eyes.
    pub fn from_page(&self) -> Option<(f64, f64)> {
        let (Some(a), Some(b)) = self.stand.place_range else { return None };
        let (a, b) = ((a.0 - self.distance.0).abs(), (b.0 - self.distance.0).abs());
        Some((a.min(b), a.max(b)))
    }
}

/// What a page tells of its target; nothing where it tells nothing. Pages of a set with a base tell nothing of this kind:
/// they are refused before, see `bundle::prepare`.
///
/// The print fixes the parallax, so the same parallax is asked of every distance.
/// Source: `[Woods1993]`, similar triangles.
pub fn of(page: &Page, solved: &[SolvedFeature], viewer: &Viewer) -> Vec<Reading> {
    let Some(readings) = &page.readings else { return Vec::new() };
    let Some(target) = solved.iter().find(|feature| feature.id == readings.target) else { return Vec::new() };
    let distances = match &readings.form {
        ReadingsForm::Distances(distances) => distances.clone(),
        ReadingsForm::Ruler => vec![viewer.distance],
    };
    let from = |distance| {
        let stand = solve::stand(target.stand.parallax, &Viewer { distance, ..*viewer })?;
        Some(Reading { distance, stand })
    };
    distances.into_iter().filter_map(from).collect()
}

/// The numbers of a page, and a problem where the art reaches into them.
pub(super) fn nodes(
    composer: &mut Composer<'_>,
    grid: &Grid,
    page: &Page,
    solved: &[SolvedFeature],
    viewer: &Viewer,
) -> Vec<Node> {
    let readings = of(page, solved, viewer);
    let (Some(asked), Some(first)) = (&page.readings, readings.first()) else { return Vec::new() };
    let (name, piece) = match asked.form {
        ReadingsForm::Distances(_) => ("table of distances", table(composer, &readings, viewer, grid.art.width())),
        ReadingsForm::Ruler => ("ruler", ruler(composer, first, grid.art.width())),
    };
    let top = grid.art.y1 - piece.height;
    let foot = solved.iter().map(|f| grid.middle().y + f.at.1 + super::exercise::size(f).height / 2.0);
    let past = foot.fold(f64::NEG_INFINITY, f64::max) - top;
    if 0.0 < past {
        let message = format!("its art reaches `{}` mm into the {name}", plain(past, 1));
        composer.problem(message, "move the target up (`at`), or make it smaller");
    }
    piece.moved(grid.art.x0, top).nodes
}

/// Distances across, demands and places below them.
fn table(composer: &mut Composer<'_>, readings: &[Reading], viewer: &Viewer, width: f64) -> Piece {
    let tongue = composer.tongue;
    let names = ["readings-distance", "readings-demand", "readings-place"].map(|id| tongue.say(id));
    let heads: Vec<String> = readings.iter().map(|reading| tongue.cm(reading.distance, 1)).collect();
    let head: Vec<&str> = std::iter::once(&names[0]).chain(&heads).map(String::as_str).collect();
    let row = |name: &String, cell: &dyn Fn(&Reading) -> String| -> Vec<String> {
        std::iter::once(name.clone()).chain(readings.iter().map(cell)).collect()
    };
    let place =
        |reading: &Reading| alt::place(&reading.stand, &Viewer { distance: reading.distance, ..*viewer }, tongue);
    let demand = |reading: &Reading| alt::stand_words(&reading.stand, viewer, tongue);
    let rows = [row(&names[1], &demand), row(&names[2], &place)];
    let bold = Style { face: Face::Bold, ..CAPTION };
    let first = names.iter().map(|name| composer.widest_word(name, &bold) + CELL_PAD).fold(HEAD, f64::max);
    let share = (width - first) / readings.len() as f64;
    let widths: Vec<f64> = std::iter::once(first).chain(readings.iter().map(|_| share)).collect();
    // The art leaves the table the height that it has in standard text, so large text has 13 pt here and not 16.
    let text = std::mem::replace(&mut composer.text, TextSize::Standard);
    let large = Style { size: Pt(13.0), leading: Mm(5.8), ..CAPTION };
    let table = composer.table(&head, &rows, &widths, if text == TextSize::Large { &large } else { &CAPTION });
    composer.text = text;
    table
}

/// A ruler from the page on, with a band where the target should seem to stand.
fn ruler(composer: &mut Composer<'_>, reading: &Reading, width: f64) -> Piece {
    let Some((near, far)) = reading.from_page() else { return Piece::default() };
    let centimetres = (far / 10.0).ceil() + 1.0;
    let length = centimetres * 10.0;
    if LONGEST < length {
        let message = format!(
            "the target seems to stand up to `{}` mm from the page: a ruler in true size has room for `{}` mm",
            plain(far, 1),
            plain(LONGEST - 10.0, 1)
        );
        composer.problem(message, "ask for less depth");
        return Piece::default();
    }
    let [low, high] = [near, far].map(|mm| composer.tongue.number(mm / 10.0, 1));
    let range = match low == high {
        true => low,
        false => composer.tell("readings-ruler-range", &[("near", low.into()), ("far", high.into())]),
    };
    let title = composer.tell("readings-ruler", &[("range", (&range).into())]);
    let heading = composer.lines(&title, &CAPTION, width - MARGIN).moved(MARGIN, 0.0);
    let (mut nodes, top) = (heading.nodes, heading.height + 1.6);
    let line = top + BAND;
    let mut fill = |area: Rect| nodes.push(Node::Fill(Fill { path: area.to_path(0.1), tone: Tone::FULL }));
    fill(Rect::new(MARGIN + near, top, MARGIN + far.max(near + LINE), line));
    fill(Rect::new(MARGIN - LINE / 2.0, line, MARGIN + length + LINE / 2.0, line + LINE));
    let mut half = 0.0;
    while half <= 2.0 * centimetres {
        let (x, tick) = (MARGIN + half * 5.0, if half % 2.0 == 0.0 { TICKS.0 } else { TICKS.1 });
        fill(Rect::new(x - LINE / 2.0, line, x + LINE / 2.0, line + tick));
        half += 1.0;
    }
    nodes.extend(numbers(composer, centimetres, line + TICKS.0 + 0.4));
    let height = line + TICKS.0 + 0.4 + composer.leading(&CAPTION);
    let area = Rect::new(0.0, 0.0, width, height);
    let length = composer.tongue.number(centimetres, 0);
    let alt = composer.tell("readings-ruler-picture", &[("length", length.into()), ("range", range.into())]);
    Piece { height, nodes: vec![Node::Group(Role::Figure { alt, area }, nodes)] }
}

/// A number below each whole centimetre; the page itself is 0.
fn numbers(composer: &mut Composer<'_>, centimetres: f64, y: f64) -> Vec<Node> {
    let style = Style { align: Align::Center, ..CAPTION };
    let mut nodes = Vec::new();
    let mut number = 0.0;
    while number <= centimetres {
        nodes.extend(composer.lines(&plain(number, 0), &style, 8.0).moved(MARGIN + number * 10.0 - 4.0, y).nodes);
        number += 1.0;
    }
    nodes
}
