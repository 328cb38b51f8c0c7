//! An exercise page on one sheet: its text below the art, on wide pages beside it.
//!
//! Where the words are a little longer than the sheet, room is found before they go to a sheet of their own: the text
//! columns divide their width by need, the art stands right below its head, the stop rule has less space around it.

use kurbo::Rect;

use crate::exercise::quiz::Quiz;
use crate::layout::Draft;
use crate::layout::compose::{Column, Composer, PAD, Piece};
use crate::layout::flow::stacked;
use crate::layout::grid::{BODY, Grid};
use crate::layout::parts::answers::KeyAt;
use crate::layout::parts::log;
use crate::layout::sheet::Node;
use crate::spec::Hand;

use super::text::{Names, key_link, links, sections, stop_box};
use super::{ABOVE_ART, Head, Parts, head, neighbours};

/// The clear space between the texts of a sheet, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Gaps {
    /// Between two of the texts.
    between: f64,
    /// Above and below the stop rule beside the art; below the art it is a little less.
    around_stop: f64,
    /// Inside the panel of the stop rule, at its top and its foot.
    in_panel: f64,
    /// Whether the art stands right below its head, and not at the height that pages have in common.
    is_raised: bool,
}

const LOOSE: Gaps = Gaps { between: 1.6, around_stop: 2.4, in_panel: PAD, is_raised: false };
const TIGHT: Gaps = Gaps { between: 1.0, around_stop: 1.7, in_panel: 1.5, is_raised: true };
/// How much wider than the right column the left one is, mm: tried in this order.
const UNEVEN: [f64; 7] = [0.0, -6.0, 6.0, -12.0, 12.0, -20.0, 20.0];

/// Between the caption and the texts below it, mm.
const ABOVE_TEXT: f64 = 1.8;
/// Between the texts and the links, and between the links and the stop rule, mm.
const ABOVE_LINKS: f64 = 1.8;
/// The same below the art, where there is less room, mm.
const LESS_BELOW: f64 = 0.4;
/// The least space between the text columns and the links below them, mm.
const LEAST: f64 = 0.2;
/// Between the art and the text beside it, mm.
pub(super) const BESIDE_ART: f64 = 10.0;

/// What stands on the sheet besides the art.
#[derive(Clone)]
pub(super) struct Whole {
    grid: Grid,
    gaps: Gaps,
    head: Piece,
    /// The columns of text with their left edges: two below the art, or one beside it.
    columns: Vec<(f64, Piece)>,
    stop: Piece,
    /// What stands below them: the ways to other pages.
    links: Piece,
    /// On a wide page: the line about the log, and whether it stands below the caption.
    log_line: Option<(Piece, bool)>,
}

impl Whole {
    /// Sets a page on one sheet, as loosely as it has room; `None` where it has no room for all of it.
    pub(super) fn new(composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Option<Self> {
        let known = composer.problems.len();
        let uneven: &[f64] = if parts.grid.beside { &UNEVEN[..1] } else { &UNEVEN };
        for gaps in [LOOSE, TIGHT] {
            let open = Self::open(composer, parts, gaps, key);
            let opened = composer.problems.len();
            for &wider in uneven {
                let columns = columns(composer, parts, gaps, wider);
                let whole = Self { columns, ..open.clone() };
                if whole.fits(composer, parts) && (wider == 0.0 || composer.problems.len() == opened) {
                    return Some(whole);
                }
                composer.problems.truncate(opened);
            }
            composer.problems.truncate(known);
        }
        None
    }

    /// The sheet without its text columns.
    fn open(composer: &mut Composer<'_>, parts: &Parts<'_>, gaps: Gaps, key: Option<&KeyAt>) -> Self {
        let grid = parts.grid;
        let (above, text) = if grid.beside {
            (grid.art.width(), beside(&grid).width())
        } else {
            (grid.safe.width(), grid.safe.width())
        };
        let head = head(composer, parts, Head::Full, above);
        let lower = grid.safe.y0 + head.height + ABOVE_ART - grid.art.y0;
        let grid = grid.lowered(if gaps.is_raised { lower } else { lower.max(0.0) });
        let stop = stop_box(composer, (&BODY, gaps.in_panel), text);
        let mut links = links(composer, neighbours(parts.book, parts.index), key.filter(|_| !grid.beside), text);
        if let Some(key) = key.filter(|_| grid.beside) {
            links.stack(key_link(composer, key, text), 0.0);
        }
        let log_line = grid.beside.then(|| log_line(composer, parts, (&grid, gaps), text));
        Self { grid, gaps, head, columns: Vec::new(), stop, links, log_line }
    }

    fn fits(&self, composer: &mut Composer<'_>, parts: &Parts<'_>) -> bool {
        let caption_foot = self.grid.art.y0 + parts.figure_height();
        let text = self.columns.iter().map(|(_, column)| column.height).fold(0.0, f64::max);
        let around = self.gaps.around_stop;
        let end = if let Some((log, is_below)) = &self.log_line {
            let log = if *is_below { 0.0 } else { around + log.height };
            let below = self.gaps.between + self.links.height + self.stop.height + log;
            // A log below the caption stands where it does because it has room there.
            caption_foot.max(self.grid.safe.y0 + text + below)
        } else {
            let log = log::least(composer, log_of(parts), self.grid.safe.width());
            let around = around - LESS_BELOW;
            let below = LEAST + self.links.height + self.above_stop() + self.stop.height + around + log;
            caption_foot + ABOVE_TEXT + text + below
        };
        end <= parts.bottom() + 1e-6
    }

    /// Between the links and the stop rule below them, mm.
    fn above_stop(&self) -> f64 {
        if self.gaps == LOOSE { ABOVE_LINKS } else { self.gaps.between }
    }

    /// The sheet.
    pub(super) fn draft(self, composer: &mut Composer<'_>, parts: Parts<'_>, key: Option<&KeyAt>) -> Draft {
        let grid = self.grid;
        let mut nodes = self.head.clone().moved(grid.safe.x0, grid.safe.y0).nodes;
        nodes.extend(parts.figure(composer, &grid));
        // With the numbers that are known by now.
        let links = Self::open(composer, &parts, self.gaps, key).links;
        let whole = Self { links, ..self };
        nodes.extend(if grid.beside { whole.beside(composer, &parts) } else { whole.below(composer, &parts) });
        parts.draft(composer, &grid, nodes)
    }

    /// Text in two columns below the art and its caption.
    fn below(self, composer: &mut Composer<'_>, parts: &Parts<'_>) -> Vec<Node> {
        let (grid, bottom, above_stop) = (self.grid, parts.bottom(), self.above_stop());
        let width = grid.safe.width();
        let around = self.gaps.around_stop - LESS_BELOW;
        let top = grid.art.y0 + parts.figure_height() + ABOVE_TEXT;
        let text = self.columns.iter().map(|(_, column)| column.height).fold(0.0, f64::max);
        let room = bottom - around - self.stop.height - above_stop - self.links.height - top - text;
        let log = log::boxes(composer, log_of(parts), (width, room));
        let log_top = bottom - log.height;
        let stop_top = log_top - around - self.stop.height;
        let links_top = stop_top - above_stop - self.links.height;
        let mut nodes = Vec::new();
        for (x0, piece) in self.columns {
            let mut column = Column::new(Rect { x0, y0: top, y1: links_top, ..grid.safe });
            column.add(piece, 0.0);
            nodes.extend(column.finish(composer));
        }
        for (piece, top) in [(self.links, links_top), (self.stop, stop_top), (log, log_top)] {
            nodes.extend(piece.moved(grid.safe.x0, top).nodes);
        }
        nodes
    }

    /// Text in one column beside the art. A screen page has no boxes to write into: it names what belongs in the log.
    fn beside(self, composer: &mut Composer<'_>, parts: &Parts<'_>) -> Vec<Node> {
        let area = Rect { y1: parts.bottom(), ..beside(&self.grid) };
        let (log, is_below) = self.log_line.unwrap_or_default();
        let log_at = if is_below {
            (self.grid.safe.x0, self.grid.art.y0 + parts.figure_height() + BELOW_CAPTION)
        } else {
            (area.x0, area.y1 - log.height)
        };
        let stop_foot = if is_below { area.y1 } else { log_at.1 - self.gaps.around_stop };
        let stop_top = stop_foot - self.stop.height;
        let mut column = Column::new(Rect { y1: stop_top, ..area });
        let pieces = self.columns.into_iter().map(|(_, piece)| piece).chain([self.links]);
        pieces.for_each(|piece| column.add(piece, self.gaps.between));
        let mut nodes = column.finish(composer);
        nodes.extend(self.stop.moved(area.x0, stop_top).nodes);
        nodes.extend(log.moved(log_at.0, log_at.1).nodes);
        nodes
    }
}

/// Between the caption and the line about the log below it, mm.
const BELOW_CAPTION: f64 = 0.8;

/// The line about the log: below the text, or on a tight page below the caption where that has room for it.
fn log_line(composer: &mut Composer<'_>, parts: &Parts<'_>, (grid, gaps): (&Grid, Gaps), text: f64) -> (Piece, bool) {
    let words = log::line(composer.tongue, parts.page().quiz.as_ref());
    if gaps == TIGHT {
        let below = composer.paragraph(&words, grid.art.width());
        let foot = grid.art.y0 + parts.figure_height() + BELOW_CAPTION + below.height;
        if foot <= parts.bottom() {
            return (below, true);
        }
    }
    (composer.paragraph(&words, text), false)
}

/// What the log of a page hangs on.
fn log_of<'a>(parts: &Parts<'a>) -> (Option<&'a Quiz>, Hand) {
    (parts.page().quiz.as_ref(), parts.book.edition.hand)
}

/// The words of a page with their left edges: the steps and, so much narrower, what is seen; beside the art all of it.
fn columns(composer: &mut Composer<'_>, parts: &Parts<'_>, gaps: Gaps, wider: f64) -> Vec<(f64, Piece)> {
    let (grid, words) = (parts.grid, &parts.page().words);
    if grid.beside {
        let area = beside(&grid);
        let [mut column, see, only] = sections(composer, words, [area.width(); 3], Names::Headings).map(stacked);
        column.stack(see, gaps.between);
        column.stack(only, gaps.between);
        return vec![(area.x0, column)];
    }
    let even = grid.columns(0.0, 0.0)[0].width();
    let [left, right] = [even + wider / 2.0, even - wider / 2.0];
    let [steps, mut column, only] = sections(composer, words, [left, right, right], Names::Headings).map(stacked);
    column.stack(only, gaps.between);
    vec![(grid.safe.x0, steps), (grid.safe.x1 - right, column)]
}

/// The column beside the art.
pub(super) fn beside(grid: &Grid) -> Rect {
    Rect { x0: grid.art.x1 + BESIDE_ART, ..grid.safe }
}
