//! The upper chart of the ladder: how hard each page is, with a marker and a line for each strand.

use kurbo::Point;

use super::ladder::{Rung, Slots};
use super::marks::{HAIR, Marker, bar, line, marker};
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::SMALL;
use crate::layout::plot::Line;
use crate::layout::sheet::{Node, Tone};
use crate::layout::text::{Align, Style};

/// The strands by the names of reports: the message of the legend, marker and line. Checks stand outside of any order.
pub(super) const STRANDS: [(&str, &str, Marker, Option<Line>); 6] = [
    ("check", "chart-strand-check", Marker::Cross, None),
    ("toward", "chart-strand-toward", Marker::Disc, Some(Line::Solid)),
    ("away", "chart-strand-away", Marker::Circle, Some(Line::Dashed)),
    ("jump", "chart-strand-jump", Marker::Triangle, Some(Line::Dotted)),
    ("smooth", "chart-strand-smooth", Marker::Square, Some(Line::DashDotted)),
    ("depth", "chart-strand-depth", Marker::Diamond, Some(Line::Sparse)),
];

/// Width of the lines that join the pages of a strand, mm.
const WEIGHT: f64 = 0.28;

/// The strands that are there.
pub(super) fn legend(composer: &mut Composer<'_>, rungs: &[Rung], width: f64) -> Piece {
    let mut entries = Vec::new();
    for (name, words, shape, style) in STRANDS {
        if rungs.iter().any(|rung| rung.strand == name && rung.difficulty.is_some()) {
            let stroke = style.map(|style| line(&[Point::ZERO, Point::new(9.0, 0.0)], style, WEIGHT, Tone::QUIET));
            let sample = stroke.into_iter().chain([marker(Point::new(4.5, 0.0), shape)]).collect();
            entries.push((sample, composer.say(words)));
        }
    }
    if rungs.iter().any(|rung| rung.difficulty.is_none()) {
        entries.push((Vec::new(), composer.say("chart-no-marker")));
    }
    super::legend(composer, entries, width)
}

/// The place of a page in the chart.
pub(super) fn point(slots: &Slots, index: usize, difficulty: f64) -> Point {
    Point::new(slots.x(index), slots.frame.y1 - difficulty / 100.0 * slots.frame.height())
}

/// Scale, lines and markers.
pub(super) fn draw(composer: &mut Composer<'_>, slots: &Slots, rungs: &[Rung]) -> Vec<Node> {
    let mut nodes = scale(composer, slots);
    for (name, _, shape, style) in STRANDS {
        let pages = rungs.iter().zip(0..).filter(|(rung, _)| rung.strand == name);
        let points: Vec<Point> =
            pages.filter_map(|(rung, index)| Some(point(slots, index, rung.difficulty?))).collect();
        if let Some(style) = style.filter(|_| 2 <= points.len()) {
            nodes.push(line(&points, style, WEIGHT, Tone::QUIET));
        }
        nodes.extend(points.into_iter().map(|at| marker(at, shape)));
    }
    nodes
}

/// Lines across the chart with their numbers.
fn scale(composer: &mut Composer<'_>, slots: &Slots) -> Vec<Node> {
    let style = Style { align: Align::End, tone: Tone::FULL, ..SMALL };
    let (frame, mut nodes) = (slots.frame, Vec::new());
    for number in [0.0, 25.0, 50.0, 75.0, 100.0] {
        let y = frame.y1 - number / 100.0 * frame.height();
        let tone = if number == 0.0 { Tone::QUIET } else { GRID };
        let rule = kurbo::Rect::new(frame.x0, y - HAIR / 2.0, frame.x1, y + HAIR / 2.0);
        nodes.push(bar(rule, tone));
        let label = composer.lines(&number.to_string(), &style, 8.0);
        nodes.extend(label.moved(frame.x0 - 9.4, y - SMALL.leading.0 * super::HALF).nodes);
    }
    nodes
}

/// Lines across a chart that only guide the eye.
pub(super) const GRID: Tone = Tone(0.22);
