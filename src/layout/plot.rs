//! A plot of spectra over the wavelength: axes, ticks, and curves told apart by their line, not by a colour.

use kurbo::{BezPath, Cap, Join, Point, Rect, Shape as _, Stroke, StrokeOpts, dash, stroke};

use super::compose::{Composer, Piece};
use super::grid::CAPTION;
use super::sheet::{Face, Fill, Node, Role, Tone};
use super::text::{Align, Style};
use crate::colour::Spectrum;

/// Width of a curve, mm.
const WEIGHT: f64 = 0.5;
/// Width of axes and of the lines across the plot, mm.
const HAIR: f64 = 0.15;
/// Room for the numbers of the upright axis, mm.
const LABELS: f64 = 12.0;
/// Length of the sample of a line in the key, mm.
const SAMPLE: f64 = 11.0;
/// Accuracy of strokes, mm.
const ACCURACY: f64 = 0.02;
/// The ends of the level axis, nm.
const RANGE: (f64, f64) = (380.0, 780.0);

/// How a curve is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Line {
    /// Without a gap.
    Solid,
    /// In long strokes.
    Dashed,
    /// In dots.
    Dotted,
    /// In long strokes and dots.
    DashDotted,
    /// In strokes with wide gaps.
    Sparse,
}

impl Line {
    /// All, from the plainest on.
    pub const ALL: [Line; 5] = [Line::Solid, Line::Dashed, Line::Dotted, Line::DashDotted, Line::Sparse];

    /// Lengths of strokes and gaps in turn, mm; none for a whole line.
    const fn pattern(self) -> &'static [f64] {
        match self {
            Line::Solid => &[],
            Line::Dashed => &[2.6, 1.5],
            Line::Dotted => &[0.05, 1.1],
            Line::DashDotted => &[3.2, 1.2, 0.3, 1.2],
            Line::Sparse => &[1.4, 3.0],
        }
    }
}

/// One curve.
#[derive(Debug, Clone)]
pub struct Curve {
    /// What it is, for the key.
    pub label: String,
    /// How it is drawn.
    pub line: Line,
    /// Its values, 0 to 1.
    pub spectrum: Spectrum,
}

/// A plot with its title and key.
#[derive(Debug, Clone)]
pub struct Plot {
    /// Stands above it.
    pub title: String,
    /// What the upright axis counts.
    pub measure: String,
    /// The curves.
    pub curves: Vec<Curve>,
}

impl Plot {
    /// The plot as a figure of this size, mm.
    pub fn draw(&self, composer: &mut Composer<'_>, width: f64, height: f64) -> Piece {
        let line = CAPTION.leading.0;
        let bold = Style { face: Face::Bold, ..CAPTION };
        let caption = Style { align: Align::End, ..CAPTION };
        let mut nodes = composer.lines(&self.title, &bold, width).nodes;
        // Where title and measure are too long for one line, the measure takes one of its own.
        let beside = composer.width_of(&self.title, &bold) + 4.0 + composer.width_of(&self.measure, &caption) < width;
        let top = if beside { 0.0 } else { line };
        nodes.extend(composer.lines(&self.measure, &caption, width - 3.0).moved(0.0, top).nodes);
        let (key, foot) = self.key(composer, top + line, width);
        nodes.extend(key);
        let frame = Rect::new(LABELS, foot + 1.6, width - 3.0, height - 2.0 * line - 1.4);
        nodes.extend(upright_axis(composer, frame));
        nodes.extend(level_axis(composer, frame));
        for curve in &self.curves {
            nodes.push(fill(stroked(&curve_path(&curve.spectrum, frame), curve.line, WEIGHT), Tone::FULL));
        }
        let labels: Vec<&str> = self.curves.iter().map(|curve| curve.label.as_str()).collect();
        let args = [("title", (&self.title).into()), ("curves", labels.join("; ").into())];
        let alt = composer.tell("spectra-picture", &args);
        let figure = Role::Figure { alt, area: Rect::new(0.0, 0.0, width, height) };
        Piece { height, nodes: vec![Node::Group(figure, nodes)] }
    }

    /// A sample of each line with its label, in as many lines of text as they take, and where the last of them ends.
    fn key(&self, composer: &mut Composer<'_>, top: f64, width: f64) -> (Vec<Node>, f64) {
        let mut nodes = Vec::new();
        let (mut x, mut y) = (LABELS, top);
        for curve in &self.curves {
            let needs = SAMPLE + composer.width_of(&curve.label, &CAPTION);
            if LABELS < x && width < x + needs {
                (x, y) = (LABELS, y + CAPTION.leading.0);
            }
            let middle = y + CAPTION.leading.0 * 0.52;
            let sample = polyline(&[Point::new(x, middle), Point::new(x + SAMPLE - 2.0, middle)]);
            nodes.push(fill(stroked(&sample, curve.line, WEIGHT), Tone::FULL));
            x += SAMPLE;
            let label = composer.lines(&curve.label, &CAPTION, width - x);
            nodes.extend(label.moved(x, y).nodes);
            x += needs - SAMPLE + 6.0;
        }
        (nodes, y + CAPTION.leading.0)
    }
}

/// Lines at none, half and all, with their numbers.
fn upright_axis(composer: &mut Composer<'_>, frame: Rect) -> Vec<Node> {
    let style = Style { align: Align::End, ..CAPTION };
    let mut nodes = Vec::new();
    for (share, percent) in [(0.0, "0"), (0.5, "50"), (1.0, "100")] {
        let label = composer.tell("inks-percent", &[("n", percent.into())]);
        let y = frame.y1 - share * frame.height();
        let tone = if share == 0.0 { Tone::QUIET } else { Tone::LINE };
        nodes.push(fill(Rect::new(frame.x0, y - HAIR / 2.0, frame.x1, y + HAIR / 2.0).to_path(0.1), tone));
        // The middle of the figures, not of the line of text, stands at the tick.
        let label = composer.lines(&label, &style, LABELS - 1.6).moved(0.0, y - CAPTION.leading.0 * 0.48);
        nodes.extend(label.nodes);
    }
    nodes
}

/// Ticks every 50 nm with their numbers, and the name of the axis.
fn level_axis(composer: &mut Composer<'_>, frame: Rect) -> Vec<Node> {
    let style = Style { align: Align::Center, ..CAPTION };
    let mut nodes = Vec::new();
    for step in 0..8_u32 {
        let nm = 400 + 50 * step;
        let x = across(frame, f64::from(nm));
        let tick = Rect::new(x - HAIR / 2.0, frame.y1, x + HAIR / 2.0, frame.y1 + 1.2);
        nodes.push(fill(tick.to_path(0.1), Tone::QUIET));
        nodes.extend(composer.lines(&nm.to_string(), &style, 16.0).moved(x - 8.0, frame.y1 + 1.2).nodes);
    }
    let name = composer.say("spectra-wavelength");
    let name = composer.lines(&name, &style, frame.width());
    nodes.extend(name.moved(frame.x0, frame.y1 + 1.2 + CAPTION.leading.0).nodes);
    nodes
}

fn across(frame: Rect, nm: f64) -> f64 {
    frame.x0 + (nm - RANGE.0) / (RANGE.1 - RANGE.0) * frame.width()
}

/// A curve through its points, without those in the middle of a straight run.
fn curve_path(spectrum: &Spectrum, frame: Rect) -> BezPath {
    let all: Vec<Point> =
        spectrum.points().map(|(nm, value)| Point::new(across(frame, nm), frame.y1 - value * frame.height())).collect();
    let bends = |points: &[Point]| ((points[1] - points[0]).cross(points[2] - points[1])).abs() > 1e-9;
    let inner = all.windows(3).filter(|points| bends(points)).map(|points| points[1]);
    let kept: Vec<Point> = all.first().copied().into_iter().chain(inner).chain(all.last().copied()).collect();
    polyline(&kept)
}

/// The open path through points.
pub(super) fn polyline(points: &[Point]) -> BezPath {
    let mut path = BezPath::new();
    for (point, index) in points.iter().zip(0_usize..) {
        if index == 0 { path.move_to(*point) } else { path.line_to(*point) }
    }
    path
}

/// A line as a filled area.
pub(super) fn stroked(path: &BezPath, line: Line, weight: f64) -> BezPath {
    let cap = if matches!(line, Line::Solid | Line::Dotted) { Cap::Round } else { Cap::Butt };
    let weight = if line == Line::Dotted { weight * 1.3 } else { weight };
    let style = Stroke::new(weight).with_caps(cap).with_join(Join::Round);
    let pattern = line.pattern();
    if pattern.is_empty() {
        return stroke(path, &style, &StrokeOpts::default(), ACCURACY);
    }
    let pieces: BezPath = dash(path.elements().iter().copied(), 0.0, pattern).collect();
    stroke(&pieces, &style, &StrokeOpts::default(), ACCURACY)
}

/// An area in the text ink.
pub(super) fn fill(path: BezPath, tone: Tone) -> Node {
    Node::Fill(Fill { path, tone })
}
