//! An exercise page on one sheet: its text below the art, on wide pages beside it.

use kurbo::Rect;

use crate::layout::Draft;
use crate::layout::compose::{Column, Composer, Piece};
use crate::layout::flow::stacked;
use crate::layout::grid::Grid;
use crate::layout::parts::answers::KeyAt;
use crate::layout::parts::log;
use crate::layout::sheet::Node;

use super::text::{key_link, links, sections, stop_box};
use super::{ABOVE_ART, Head, Parts, head, neighbours};

/// Between two of the texts, mm.
const BETWEEN: f64 = 1.6;
/// Between the caption and the texts below it, mm.
const ABOVE_TEXT: f64 = 1.8;
/// Between the texts and the links, mm.
const ABOVE_LINKS: f64 = 1.8;
/// Above and below the stop rule, mm: below the art, and beside it.
const AROUND_STOP: [f64; 2] = [2.0, 2.4];
/// Between the art and the text beside it, mm.
pub(super) const BESIDE_ART: f64 = 10.0;

/// What stands on the sheet besides the art.
pub(super) struct Whole {
    grid: Grid,
    head: Piece,
    /// The columns of text: two below the art, or one beside it.
    columns: Vec<Piece>,
    stop: Piece,
}

impl Whole {
    /// Sets a page on one sheet; `None` where it has no room for all of it.
    pub(super) fn new(composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Option<Self> {
        let grid = parts.grid;
        let wide = grid.beside;
        let text = if wide { beside(&grid).width() } else { grid.columns(0.0, 0.0)[0].width() };
        let head = head(composer, parts, Head::Full, if wide { grid.art.width() } else { grid.safe.width() });
        let grid = grid.lowered((grid.safe.y0 + head.height + ABOVE_ART - grid.art.y0).max(0.0));
        let [steps, see, only] = sections(composer, &parts.page().words, text, 2).map(stacked);
        let mut column = if wide { steps.clone() } else { see.clone() };
        if wide {
            column.stack(see, BETWEEN);
        }
        column.stack(only, BETWEEN);
        let stop = stop_box(composer, if wide { text } else { grid.safe.width() });
        let columns = if wide { vec![column] } else { vec![steps, column] };
        let whole = Self { grid, head, columns, stop };
        whole.fits(composer, parts, key).then_some(whole)
    }

    fn fits(&self, composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> bool {
        let caption_foot = self.grid.art.y0 + parts.figure_height();
        let text = self.columns.iter().map(|column| column.height).fold(0.0, f64::max);
        let end = if self.grid.beside {
            let links = self.links_beside(composer, parts, key).height;
            let log = self.log_line(composer, parts).height;
            let below = BETWEEN + links + self.stop.height + AROUND_STOP[1] + log;
            caption_foot.max(self.grid.safe.y0 + text + below)
        } else {
            let width = self.grid.safe.width();
            let links = links(composer, neighbours(parts.book, parts.index), key, width).height;
            let log = log::least(composer, (parts.page().quiz.as_ref(), parts.book.edition.hand), width);
            let below = ABOVE_LINKS + links + 2.0 * AROUND_STOP[0] - ABOVE_LINKS + self.stop.height + log;
            caption_foot + ABOVE_TEXT + text + below
        };
        end <= parts.bottom() + 1e-6
    }

    /// The sheet.
    pub(super) fn draft(self, composer: &mut Composer<'_>, parts: Parts<'_>, key: Option<&KeyAt>) -> Draft {
        let grid = self.grid;
        let mut nodes = self.head.clone().moved(grid.safe.x0, grid.safe.y0).nodes;
        nodes.extend(parts.figure(composer, &grid));
        nodes.extend(if grid.beside { self.beside(composer, &parts, key) } else { self.below(composer, &parts, key) });
        parts.draft(composer, &grid, nodes)
    }

    /// Text in two columns below the art and its caption.
    fn below(self, composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Vec<Node> {
        let (grid, bottom) = (self.grid, parts.bottom());
        let width = grid.safe.width();
        let links = links(composer, neighbours(parts.book, parts.index), key, width);
        let top = grid.art.y0 + parts.figure_height() + ABOVE_TEXT;
        let text = self.columns.iter().map(|column| column.height).fold(0.0, f64::max);
        let room = bottom - AROUND_STOP[0] - self.stop.height - ABOVE_LINKS - links.height - top - text;
        let log = log::boxes(composer, (parts.page().quiz.as_ref(), parts.book.edition.hand), (width, room));
        let log_top = bottom - log.height;
        let stop_top = log_top - AROUND_STOP[0] - self.stop.height;
        let links_top = stop_top - ABOVE_LINKS - links.height;
        let mut nodes = Vec::new();
        for (area, piece) in grid.columns(top, links_top).into_iter().zip(self.columns) {
            let mut column = Column::new(area);
            column.add(piece, 0.0);
            nodes.extend(column.finish(composer));
        }
        for (piece, top) in [(links, links_top), (self.stop, stop_top), (log, log_top)] {
            nodes.extend(piece.moved(grid.safe.x0, top).nodes);
        }
        nodes
    }

    /// Text in one column beside the art. A screen page has no boxes to write into: it names what belongs in the log.
    fn beside(self, composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Vec<Node> {
        let area = Rect { y1: parts.bottom(), ..beside(&self.grid) };
        let links = self.links_beside(composer, parts, key);
        let log = self.log_line(composer, parts);
        let (log_top, stop_top) = (area.y1 - log.height, area.y1 - log.height - AROUND_STOP[1] - self.stop.height);
        let mut column = Column::new(Rect { y1: stop_top, ..area });
        self.columns.into_iter().chain([links]).for_each(|piece| column.add(piece, BETWEEN));
        let mut nodes = column.finish(composer);
        nodes.extend(self.stop.moved(area.x0, stop_top).nodes);
        nodes.extend(log.moved(area.x0, log_top).nodes);
        nodes
    }

    fn links_beside(&self, composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Piece {
        let width = beside(&self.grid).width();
        let mut piece = links(composer, neighbours(parts.book, parts.index), None, width);
        if let Some(key) = key {
            piece.stack(key_link(composer, key, width), 0.0);
        }
        piece
    }

    fn log_line(&self, composer: &mut Composer<'_>, parts: &Parts<'_>) -> Piece {
        let line = log::line(composer.tongue, parts.page().quiz.as_ref());
        composer.paragraph(&line, beside(&self.grid).width())
    }
}

/// The column beside the art.
pub(super) fn beside(grid: &Grid) -> Rect {
    Rect { x0: grid.art.x1 + BESIDE_ART, ..grid.safe }
}
