//! Charts about a set, for its author: how its pages rise, and where the targets of each page stand, seen from above.
//!
//! They are sheets like any other, in black on white, and no pages of the book. They say something about pages, never
//! about a reader.

mod climb;
mod demand;
mod labels;
mod ladder;
mod marks;
mod plan;
#[cfg(test)]
mod tests;
mod view;

use kurbo::{Rect, Size};

use super::TYPESETTER;
use super::compose::{Composer, Piece, rule};
use super::grid::{CAPTION, SMALL};
use super::sheet::{Furniture, Node, Role, Sheet};
use crate::colour::{Inks, Srgb8};
use crate::diagnostics::Diagnostic;
use crate::exercise;
use crate::language::Tongue;
use crate::solve::SolvedFeature;
use crate::spec::{SetSpec, TextSize};

pub use view::{Place, Seen, Spot, spots};

/// An A4 sheet on its long side, mm.
pub const SIZE: Size = Size::new(297.0, 210.0);

/// Inside the margins, mm.
const SAFE: Rect = Rect::new(12.0, 9.0, 285.0, 201.0);
/// Where a chart may begin: below title and lead, mm.
const TOP: f64 = SAFE.y0 + 8.4 + 4.4 + 2.0;
/// Where the footer begins, mm.
const FOOT: f64 = SAFE.y1 - 8.8;

const WHITE: Srgb8 = Srgb8([255; 3]);
const BLACK: Srgb8 = Srgb8([0; 3]);
/// Black on white; there is no art.
const INKS: Inks = Inks { left: BLACK, right: BLACK, both: BLACK, ground: WHITE, text: BLACK };

/// What charts are drawn from.
#[derive(Debug, Clone, Copy)]
pub struct Charts<'a> {
    /// The set.
    pub set: &'a SetSpec,
    /// All its exercise pages in the order of the book.
    pub pages: &'a [ChartPage<'a>],
}

/// A page in a chart.
#[derive(Debug, Clone, Copy)]
pub struct ChartPage<'a> {
    /// Its number in the book.
    pub number: u32,
    /// The page.
    pub page: &'a exercise::Page,
    /// Its features with their offsets.
    pub solved: &'a [SolvedFeature],
    /// The name of its strand.
    pub strand: &'static str,
    /// How hard it is, 0 to 100; `None` where that is not known.
    pub difficulty: Option<f64>,
}

/// The ladder of a set: one sheet, or several with the same scales. Their ids are `ladder`, or `ladder-1` and on.
///
/// # Errors
/// What does not fit, with the sheet.
pub fn ladder(charts: &Charts<'_>) -> Result<Vec<Sheet>, Vec<Diagnostic>> {
    with_composer(charts, |composer| ladder::sheets(composer, charts))
}

/// The plan view of one page. Its id is that of the page.
///
/// # Errors
/// What does not fit, with the sheet.
pub fn plan(charts: &Charts<'_>, page: &ChartPage<'_>) -> Result<Sheet, Vec<Diagnostic>> {
    with_composer(charts, |composer| plan::sheet(composer, charts, page))
}

fn with_composer<T>(charts: &Charts<'_>, draw: impl FnOnce(&mut Composer<'_>) -> T) -> Result<T, Vec<Diagnostic>> {
    TYPESETTER.with_borrow_mut(|setter| {
        let mut composer = Composer::new(setter, Tongue::of(charts.set.language), TextSize::Standard);
        let drawn = draw(&mut composer);
        if composer.problems.is_empty() { Ok(drawn) } else { Err(composer.problems) }
    })
}

/// The words around a chart.
struct Frame<'a> {
    id: String,
    number: u32,
    title: String,
    lead: String,
    alt: String,
    set: &'a SetSpec,
}

impl Frame<'_> {
    /// The sheet around the nodes of a chart.
    fn sheet(self, composer: &mut Composer<'_>, chart: Vec<Node>) -> Sheet {
        let width = SAFE.width();
        let title = short(composer, &self.title, &super::grid::TITLE, width);
        let mut nodes = composer.title(&title, width).moved(SAFE.x0, SAFE.y0).nodes;
        let lead = short(composer, &self.lead, &CAPTION, width);
        let lead = composer.lines(&lead, &CAPTION, width).role(Role::Paragraph);
        nodes.extend(lead.moved(SAFE.x0, SAFE.y0 + 8.4).nodes);
        let area = Rect::new(SAFE.x0, TOP, SAFE.x1, FOOT);
        nodes.push(Node::Group(Role::Figure { alt: self.alt.clone(), area }, chart));
        nodes.push(self.footer(composer));
        Sheet {
            number: self.number,
            id: self.id,
            title: self.title,
            description: self.alt,
            language: composer.tongue.language().tag(),
            outline_level: 0,
            size: SIZE,
            inks: INKS,
            nodes,
        }
    }

    fn footer(&self, composer: &mut Composer<'_>) -> Node {
        let (set, viewer, tongue) = (self.set, &self.set.viewer, composer.tongue);
        let (low, high) = viewer.ipd_range;
        let facts = [
            ("title", (&set.title).into()),
            ("version", (&set.version).into()),
            ("date", (&set.date).into()),
            ("distance", tongue.cm(viewer.distance, 1).into()),
            ("ipd", tongue.mm(viewer.ipd, 1).into()),
            ("low", tongue.number(low.0, 1).into()),
            ("high", tongue.mm(high, 1).into()),
        ];
        let facts = tongue.tell("chart-facts", &facts);
        let mut nodes = vec![rule(Rect::new(SAFE.x0, FOOT + 0.9, SAFE.x1, FOOT + 1.1))];
        let base = super::base::note(set, tongue);
        let facts = match base.is_empty() {
            true => facts,
            false => tongue.tell("chart-facts-base", &[("facts", facts.into()), ("base", base.into())]),
        };
        let facts = short(composer, &facts, &SMALL, SAFE.width());
        let numbers = tongue.say("chart-numbers");
        let lines = [facts.as_str(), numbers.as_str()];
        for (text, index) in lines.into_iter().zip(0_u32..) {
            let y = FOOT + 1.6 + SMALL.leading.0 * f64::from(index);
            nodes.extend(composer.lines(text, &SMALL, SAFE.width()).moved(SAFE.x0, y).nodes);
        }
        Node::Group(Role::Artifact(Furniture::Footer), nodes)
    }
}

/// A text that fits a width on one line: whole, or cut with an ellipsis at its end.
fn short(composer: &mut Composer<'_>, text: &str, style: &super::text::Style, width: f64) -> String {
    if composer.width_of(text, style) <= width {
        return text.to_owned();
    }
    let mut kept: Vec<char> = text.chars().collect();
    loop {
        kept.pop();
        let cut = format!("{}…", kept.iter().collect::<String>().trim_end());
        if kept.is_empty() || composer.width_of(&cut, style) <= width {
            return cut;
        }
    }
}

/// A line of text with its left end at `x` and the middle of its figures at `y`.
fn beside(composer: &mut Composer<'_>, text: &str, style: &super::text::Style, (x, y): (f64, f64)) -> Vec<Node> {
    let width = composer.width_of(text, style) + 1.0;
    composer.lines(text, style, width).moved(x, y - style.leading.0 * HALF).nodes
}

/// From the top of a line to the middle of its figures, as a share of the leading.
const HALF: f64 = 0.48;

/// The entries of a legend, each a sample of this width and its words, set one after the other in lines that fit the
/// width. Gives the nodes with the first line at the origin.
fn legend(composer: &mut Composer<'_>, entries: Vec<(Vec<Node>, String)>, width: f64) -> Piece {
    let (mut x, mut y, mut nodes) = (0.0, 0.0, Vec::new());
    let leading = CAPTION.leading.0;
    for (sample, words) in entries {
        let start = if sample.is_empty() { 0.0 } else { SAMPLE };
        let words = short(composer, &words, &CAPTION, width - start);
        let needs = start + composer.width_of(&words, &CAPTION);
        if 0.0 < x && width < x + needs {
            (x, y) = (0.0, y + leading);
        }
        let sample = Piece { height: leading, nodes: sample }.moved(x, y + leading * HALF);
        nodes.extend(sample.nodes);
        nodes.extend(beside(composer, &words, &CAPTION, (x + start, y + leading * HALF)));
        x += needs + 5.0;
    }
    Piece { height: y + leading, nodes }
}

/// Width of the sample of a legend with the space after it, mm.
const SAMPLE: f64 = 11.0;
