//! An exercise page on two sheets and more: the art with what is needed before it, and its words.
//!
//! The art sheet has the stop rule and says where the words stand. The words are black on the ground alone, to be read
//! with or without the glasses; where one sheet does not hold them they run on.

use kurbo::Rect;

use crate::layout::Draft;
use crate::layout::compose::{Composer, PAD, Piece};
use crate::layout::flow::{Section, divided, stacked};
use crate::layout::grid::{BODY, CAPTION, GUTTER, Grid, TITLE};
use crate::layout::parts::answers::KeyAt;
use crate::layout::parts::{WORDS, log, opening, sheet as sheet_of, text_columns, text_width, words};
use crate::layout::sheet::{Face, Node};
use crate::layout::text::{BASELINE_SHARE, Style};
use crate::spec::TextSize;

use super::text::{Names, link, links, sections, stop_box};
use super::{ABOVE_ART, Head, Parts, head, neighbours, set_up, whole};

/// Between the texts at the foot of a sheet, mm.
const GAP: f64 = 2.6;
/// A page number as wide as they come.
const WIDE: usize = 888;

/// What stands on the sheets besides the art.
pub(super) struct Apart {
    /// The grid of the art sheet.
    grid: Grid,
    head: Piece,
    stop: Piece,
    /// The words of each later sheet.
    words: Vec<Vec<Node>>,
    /// The links and the log, which the last of these sheets has, and the stop rule, where they have it.
    foot: Foot,
}

/// The foot of a sheet of words.
#[derive(Clone)]
struct Foot {
    links: Piece,
    /// Left off where the words would need a sheet more for it alone: it stands beside the art.
    stop: Option<Piece>,
    log: Piece,
}

/// The id of the first sheet of the words of a page.
pub(super) fn words_id(page: &str) -> String {
    format!("{page}{WORDS}")
}

impl Apart {
    /// Sets a page on as many sheets as it takes.
    pub(super) fn new(composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Self {
        let grid = parts.grid;
        let width = column(&grid).width();
        let way = way(composer, parts, WIDE).height;
        let below = |stop: &Piece| GAP + way + GAP + stop.height;
        let mut stop = stop_box(composer, (&BODY, PAD), width);
        let known = composer.problems.len();
        let (mut lines, mut head, mut grid) = placed(composer, parts, below(&stop));
        if known < composer.problems.len() && composer.text == TextSize::Large {
            // In large text the stop rule has 16 pt instead of 18 before anything is refused; its words sheet has 18.
            composer.problems.truncate(known);
            stop = stop_box(composer, (&CAPTION, PAD), width);
            (lines, head, grid) = placed(composer, parts, below(&stop));
        }
        composer.sheet = words_id(&parts.page().id);
        let (foot, words) = Foot::with_words(composer, parts, key, lines);
        Self { grid, head, stop, words, foot }
    }

    /// How many sheets the words take.
    pub(super) fn sheets(&self) -> usize {
        self.words.len()
    }

    /// The sheets, the first with this number.
    pub(super) fn drafts(
        self,
        composer: &mut Composer<'_>,
        parts: Parts<'_>,
        number: usize,
        key: Option<&KeyAt>,
    ) -> Vec<Draft> {
        let Self { grid, head, stop, words, foot } = self;
        let column = column(&parts.grid);
        let mut nodes = head.moved(column.x0, column.y0).nodes;
        nodes.extend(parts.figure(composer, &grid));
        let stop_top = parts.bottom() - stop.height;
        let way = way(composer, &parts, number + 1);
        let way_top = stop_top - GAP - way.height;
        nodes.extend(way.moved(column.x0, way_top).nodes);
        nodes.extend(stop.moved(column.x0, stop_top).nodes);
        let foot = Foot { links: Foot::new(composer, &parts, key).links, ..foot };
        let last = words.len() - 1;
        let mut sheets = Vec::new();
        for (index, body) in words.into_iter().enumerate() {
            let foot = foot.nodes(&parts, index == last);
            sheets.push(sheet(composer, &parts, (index, number), body.into_iter().chain(foot).collect()));
        }
        std::iter::once(parts.draft(composer, &grid, nodes)).chain(sheets).collect()
    }
}

/// The sections of the words, below goal and set-up, but for those of them that are `told` beside the art.
fn texts(composer: &mut Composer<'_>, parts: &Parts<'_>, told: Head) -> Vec<Section> {
    let (page, width) = (parts.page(), text_width(composer, &parts.grid));
    let goal = (told != Head::Full).then(|| composer.paragraph(&page.words.goal, width));
    let set_up = (told == Head::Bare).then(|| set_up(composer, parts.book, page, width));
    let first: Vec<Piece> = goal.into_iter().chain(set_up).collect();
    let first = (!first.is_empty()).then(|| Section::new(Piece::default(), first));
    first.into_iter().chain(sections(composer, &page.words, [width; 3], Names::Headings)).collect()
}

/// The sections for several sheets: each as a whole, where every one of them fits in a column, so that no sheet has but a
/// line.
fn unbroken(sections: Vec<Section>, areas: &[Rect]) -> Vec<Section> {
    let room = areas.iter().map(Rect::height).fold(f64::INFINITY, f64::min);
    if sections.iter().any(|section| room < section.height()) {
        return sections;
    }
    sections.into_iter().map(|section| Section::new(Piece::default(), [stacked(section)])).collect()
}

/// The text column of the art sheet.
fn column(grid: &Grid) -> Rect {
    if grid.beside { whole::beside(grid) } else { grid.safe }
}

/// The head of the art sheet with as much of it as fits, and the grid with the art in the middle of what is left; `below`
/// is the height of the texts at the foot.
fn placed(composer: &mut Composer<'_>, parts: &Parts<'_>, below: f64) -> (Head, Piece, Grid) {
    let grid = parts.grid;
    let (top, bottom, figure) = (grid.safe.y0, parts.bottom(), parts.figure_height());
    let width = column(&grid).width();
    // From the longest head to the shortest, each with the room that it leaves the art.
    let mut tried = Vec::new();
    for lines in [Head::Full, Head::SetUp, Head::Bare] {
        let head = head(composer, parts, lines, width);
        let free = if grid.beside {
            (bottom - top - figure).min(bottom - top - below - head.height)
        } else {
            bottom - top - below - head.height - ABOVE_ART - figure
        };
        let fits = 0.0 <= free;
        tried.push((lines, head, free));
        if fits {
            break;
        }
    }
    let (lines, head, free) = tried.pop().unwrap_or((Head::Bare, Piece::default(), 0.0));
    if free < 0.0 {
        let message = format!("its art and what stands around it are {:.1} mm higher than the page", -free);
        composer.problem(message, "shorten `title`");
    }
    let above = if grid.beside { (bottom - top - figure) / 2.0 } else { head.height + ABOVE_ART + free.max(0.0) / 2.0 };
    (lines, head, grid.lowered(top + above.max(0.0) - grid.art.y0))
}

/// Where the words stand.
fn way(composer: &mut Composer<'_>, parts: &Parts<'_>, number: usize) -> Piece {
    let target = words_id(&parts.page().id);
    let name = composer.say("page-words-at");
    let page = composer.tell("page-number", &[("n", number.to_string().into())]);
    link(composer, (&name, &page), Some(&target), column(&parts.grid).width())
}

/// The title of a sheet of words, with the way to its picture at the end of the line or below it; and the height at which
/// its text may start.
fn top(composer: &mut Composer<'_>, parts: &Parts<'_>, number: usize) -> (Vec<Node>, f64) {
    let title = title(composer, parts);
    let safe = parts.grid.safe;
    let (mut nodes, top) = opening(composer, &parts.grid, &title, "");
    let name = composer.say("page-picture-at");
    let page = composer.tell("page-number", &[("n", number.to_string().into())]);
    let bold = Style { face: Face::Bold, ..BODY };
    let own = composer.width_of(&format!("{name} {page}"), &bold);
    let is_beside = composer.width_of(&title, &TITLE) + GUTTER + own <= safe.width();
    let way = link(composer, (&name, &page), Some(&parts.page().id), own);
    if is_beside {
        // On the line of the title.
        let down = (composer.leading(&TITLE) - composer.leading(&BODY)) * BASELINE_SHARE;
        nodes.extend(way.moved(safe.x1 - own, safe.y0 + down).nodes);
        return (nodes, top);
    }
    let below = top - TO_TITLE + way.height + GAP;
    nodes.extend(way.moved(safe.x0, top - TO_TITLE).nodes);
    (nodes, below)
}

/// How much closer the way to the picture stands to the title than text does, mm.
const TO_TITLE: f64 = 3.4;

/// "Two buoys, level 2: words"
fn title(composer: &Composer<'_>, parts: &Parts<'_>) -> String {
    let title = words::full_title(composer.tongue, parts.page());
    composer.tell("page-words-title", &[("title", title.into())])
}

/// The log of a page whose answers belong into the reader's own, where it has boxes.
fn least_log(composer: &mut Composer<'_>, parts: &Parts<'_>, log: &Piece) -> Piece {
    let (quiz, hand) = (parts.page().quiz.as_ref(), parts.book.edition.hand);
    if parts.grid.beside { log.clone() } else { log::boxes(composer, (quiz, hand), (parts.grid.safe.width(), 0.0)) }
}

/// The text columns of a sheet of words.
fn areas(composer: &mut Composer<'_>, parts: &Parts<'_>, foot: &Foot) -> Vec<Rect> {
    let (_, top) = top(composer, parts, WIDE);
    let y1 = parts.bottom() - foot.height();
    text_columns(composer, &parts.grid, top).into_iter().map(|area| Rect { y1, ..area }).collect()
}

fn sheet(composer: &mut Composer<'_>, parts: &Parts<'_>, (index, number): (usize, usize), body: Vec<Node>) -> Draft {
    let (mut nodes, _) = top(composer, parts, number);
    nodes.extend(body);
    let title = title(composer, parts);
    let of_page = words::full_title(composer.tongue, parts.page());
    let description = composer.tell("page-words-description", &[("title", of_page.into())]);
    let draft = sheet_of(composer, &words_id(&parts.page().id), (&title, &description), index, nodes);
    Draft { outline_level: 1, note: parts.note.clone(), footer: parts.facts.clone(), ..draft }
}

impl Foot {
    fn new(composer: &mut Composer<'_>, parts: &Parts<'_>, key: Option<&KeyAt>) -> Self {
        let (quiz, width) = (parts.page().quiz.as_ref(), parts.grid.safe.width());
        let links = links(composer, neighbours(parts.book, parts.index), key, width);
        let log = if parts.grid.beside {
            let line = log::line(composer.tongue, quiz);
            composer.paragraph(&line, width)
        } else {
            log::boxes(composer, (quiz, parts.book.edition.hand), (width, f64::INFINITY))
        };
        let stop = Some(stop_box(composer, (&BODY, PAD), width));
        Self { links, stop, log }
    }

    /// The foot and the words above it, on one sheet where that can be: first as a whole, then without what stands
    /// beside the art of goal and set-up, then without the stop rule, which always stands there, and at last with answers in
    /// the reader's own log in place of boxes for them. Where all of that is too long, on as many sheets as it takes.
    fn with_words(
        composer: &mut Composer<'_>,
        parts: &Parts<'_>,
        key: Option<&KeyAt>,
        head: Head,
    ) -> (Self, Vec<Vec<Node>>) {
        let known = composer.problems.len();
        let whole = Self::new(composer, parts, key);
        let set = composer.problems.len();
        let without = Self { stop: None, ..whole.clone() };
        let least = Self { log: least_log(composer, parts, &whole.log), ..without.clone() };
        for own in [&whole, &without, &least] {
            let areas = areas(composer, parts, own);
            for told in [Head::Bare, head] {
                let all = texts(composer, parts, told);
                let words = divided(composer, &areas, all);
                if words.len() == 1 {
                    return (own.clone(), words);
                }
                composer.problems.truncate(set);
            }
        }
        composer.problems.truncate(known);
        let foot = Self::new(composer, parts, key);
        let set = composer.problems.len();
        let areas = areas(composer, parts, &foot);
        let all = unbroken(texts(composer, parts, Head::Bare), &areas);
        let unbroken = divided(composer, &areas, all);
        let told = composer.problems.split_off(set);
        let all = texts(composer, parts, Head::Bare);
        let words = divided(composer, &areas, all);
        if words.len() < unbroken.len() {
            return (foot, words);
        }
        composer.problems.truncate(set);
        composer.problems.extend(told);
        (foot, unbroken)
    }

    /// With the clear space above it.
    fn height(&self) -> f64 {
        1.5 * GAP + self.links.height + self.stop.as_ref().map_or(0.0, |stop| GAP + stop.height) + GAP + self.log.height
    }

    /// The stop rule; on the last sheet links and log with it.
    fn nodes(&self, parts: &Parts<'_>, is_last: bool) -> Vec<Node> {
        let pieces: Vec<&Piece> = if is_last {
            [&self.links].into_iter().chain(&self.stop).chain([&self.log]).collect()
        } else {
            self.stop.iter().collect()
        };
        let gaps = GAP * pieces.len().saturating_sub(1) as f64;
        let mut top = parts.bottom() - gaps - pieces.iter().map(|piece| piece.height).sum::<f64>();
        let mut nodes = Vec::new();
        for piece in pieces {
            nodes.extend(piece.clone().moved(parts.grid.safe.x0, top).nodes);
            top += piece.height + GAP;
        }
        nodes
    }
}
