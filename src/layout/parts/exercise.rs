//! An exercise page: what it is for, its art, what to do, what should be seen, and when to stop.

use kurbo::{Circle, Point, Rect, Shape as _, Size, Vec2};

use crate::colour::Inks;
use crate::exercise::Page;
use crate::exercise::balance::Balance;
use crate::exercise::quiz::Quiz;
use crate::layout::base::{self, Ride};
use crate::layout::compose::{Column, Composer, Piece, RULE, inside};
use crate::layout::grid::{BODY, CAPTION, GUTTER, Grid, LEADING, SMALL};
use crate::layout::sheet::{Art, Face, Fill, Furniture, Node, Role, Tone};
use crate::layout::text::Style;
use crate::layout::{Book, BookPage, Draft, Placed, alt, art, balance};
use crate::solve::{PathPoint, SolvedFeature, SolvedForm};
use crate::units::plain;

use super::answers::KeyAt;
use super::{asked, footer, log, readings, words};

/// Clear space between the head of a page and its art, mm.
const ABOVE_ART: f64 = 2.5;

/// The sheets of all exercises; `key` tells where the answers of a page stand.
pub(crate) fn drafts(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    key: impl Fn(usize) -> Option<KeyAt>,
) -> Vec<Draft> {
    (0..book.pages.len()).map(|index| draft(composer, grid, book, index, key(index))).collect()
}

fn draft(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, index: usize, key: Option<KeyAt>) -> Draft {
    let BookPage { page, solved, grade, .. } = book.pages[index];
    composer.sheet.clone_from(&page.id);
    let viewer = &book.set.viewer;
    let Balanced { words: balance, thin, inks, mut nodes } = balance_of(grid, book, page);
    let mut grid = *grid;
    let note = note(page, &balance);
    grid.safe.y1 -= footer::rise(composer, &grid, book, &note);
    let (head, head_foot) = head(composer, &grid, book, page, grade);
    nodes.extend(head);
    let grid = &grid.lowered((head_foot + ABOVE_ART - grid.art.y0).max(0.0));
    let (mut picture, caption) = match &page.quiz {
        Some(quiz) => (
            asked::picture(quiz, &page.words.goal, book.edition.answers, book.tongue),
            asked::caption(solved, viewer, book.tongue),
        ),
        None => (alt::figure(solved, viewer, book.tongue), alt::caption(solved, viewer, book.tongue)),
    };
    if !balance.is_empty() {
        picture = format!("{picture} {}", words::sentence(&balance));
    }
    picture.push_str(&base::sentence(viewer.base, book.tongue));
    let art = art::page(solved, grid.middle(), thin, Ride::of(viewer));
    let (figure, caption_foot) = figure(composer, grid, art, &picture, &caption);
    nodes.push(figure);
    nodes.extend(readings::nodes(composer, grid, page, solved, viewer));
    if grid.safe.y1 - footer::HEIGHT + 1e-6 < caption_foot {
        composer.problem("its art runs into the footer".to_owned(), "shorten `goal` or `setup`");
    }
    let sections = Sections {
        steps: &page.words.steps,
        see: &page.words.see,
        one_part: &page.words.one_part,
        links: neighbours(book, index),
        quiz: page.quiz.as_ref(),
        key: key.as_ref(),
    };
    nodes.extend(if grid.beside {
        beside(composer, grid, &sections)
    } else {
        below(composer, grid, caption_foot, &sections)
    });
    Draft {
        id: page.id.clone(),
        title: page.full_title(),
        description: picture,
        outline_level: 1,
        inks,
        note,
        nodes,
        footer: facts(book, solved),
        placed: solved.iter().map(|feature| place(feature, grid.middle())).collect(),
    }
}

/// What the footer says of a balance and of a seed.
fn note(page: &Page, balance: &str) -> String {
    match page.seed {
        Some(seed) if balance.is_empty() => format!("seed {seed}"),
        Some(seed) => format!("seed {seed} · {balance}"),
        None => balance.to_owned(),
    }
}

/// What a balance between the eyes, or a kind that a professional sets, makes of a page; nothing without one.
#[derive(Default)]
struct Balanced {
    /// What the page says of it.
    words: String,
    /// On paper: whose marks are thinner.
    thin: Option<Balance>,
    /// On a screen: the inks with one eye's dimmed.
    inks: Option<Inks>,
    /// The frame.
    nodes: Vec<Node>,
}

/// Pages that a professional sets have the same frame, whether for a balance or for their kind.
fn balance_of(grid: &Grid, book: &Book<'_>, page: &Page) -> Balanced {
    let Some(set_by) = &book.set.gate else { return Balanced::default() };
    let Some(balance) = page.balance else {
        let gated = Balanced {
            words: balance::set_by(set_by, book.tongue),
            nodes: vec![balance::frame(grid)],
            ..Balanced::default()
        };
        return if page.gated { gated } else { Balanced::default() };
    };
    let printed = words::printed(book.edition);
    Balanced {
        words: balance::words(balance, set_by, book.tongue),
        thin: printed.then_some(balance),
        inks: (!printed).then(|| balance::inks(balance, &book.plan.inks, book.views)),
        nodes: vec![balance::frame(grid)],
    }
}

/// The words of the text columns.
struct Sections<'a> {
    steps: &'a [String],
    see: &'a str,
    one_part: &'a [(String, String)],
    /// Ids of the easier and the harder page.
    links: (Option<&'a str>, Option<&'a str>),
    /// What is asked.
    quiz: Option<&'a Quiz>,
    /// Where the answers stand.
    key: Option<&'a KeyAt>,
}

/// The pages before and after on the same strand, else in the book: an easier and a harder one. Check pages are no steps,
/// and in a set without an order only the book itself has one.
fn neighbours<'a>(book: &Book<'a>, index: usize) -> (Option<&'a str>, Option<&'a str>) {
    let strand = book.pages[index].strand;
    let ordered = strand != "check" && !book.set.free_order;
    let same = |page: &&BookPage<'_>| ordered && page.strand == strand;
    let (before, after) = (&book.pages[..index], &book.pages[index + 1..]);
    let easier = before.iter().rfind(same).or(before.last());
    let harder = after.iter().find(same).or(after.first());
    let id = |page: &BookPage<'a>| page.page.id.as_str();
    (easier.map(id), harder.map(id))
}

/// Id, level and grade, title, goal and set-up, above the art; and the height at which they end.
fn head(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    page: &Page,
    grade: Option<u32>,
) -> (Vec<Node>, f64) {
    let width = if grid.beside { grid.art.width() } else { grid.safe.width() };
    let mut column = Column::new(Rect::new(grid.safe.x0, grid.safe.y0, grid.safe.x0 + width, grid.art.y0));
    let level = if page.levels == 1 { String::new() } else { format!(" · level {} of {}", page.level, page.levels) };
    let grade = grade.map_or(String::new(), |grade| format!(" · grade {grade}"));
    let badge = format!("{} · {}{level}{}{grade}", page.id, page.kind, page.variant_words());
    column.add(composer.lines(&badge, &SMALL, width).role(Role::Paragraph), 0.0);
    column.nodes.push(level_dots(grid.safe.x0 + width, grid.safe.y0 + 2.0, page));
    column.add(composer.title(&page.title, width), 0.3);
    column.add(composer.paragraph(&page.words.goal, width), 0.6);
    let mut setup =
        format!("{} from your eyes, {}. Page flat and level.", words::distance(book.set), words::glasses(book.edition));
    if !page.words.setup.is_empty() {
        setup = format!("{setup} {}", page.words.setup);
    }
    column.add(composer.lead("Set up:", &setup, &BODY, width), 0.6);
    (column.nodes, column.y)
}

/// A row of dots that ends at `x`: one a level, filled up to this level.
fn level_dots(x: f64, y: f64, page: &Page) -> Node {
    let mut fills = Vec::new();
    for level in 1..=if page.levels == 1 { 0 } else { page.levels } {
        let centre = Point::new(x - 1.3 - f64::from(page.levels - level) * 4.0, y);
        let mut path = Circle::new(centre, 1.3).to_path(0.001);
        if page.level < level {
            path.extend(Circle::new(centre, 1.3 - RULE * 1.4).to_path(0.001).reverse_subpaths());
        }
        fills.push(Node::Fill(Fill { path, tone: Tone::QUIET }));
    }
    Node::Group(Role::Artifact(Furniture::Layout), fills)
}

/// The art with its caption, and the height at which the caption ends.
fn figure(composer: &mut Composer<'_>, grid: &Grid, art: Art, alt: &str, caption: &str) -> (Node, f64) {
    let caption = composer.lines(caption, &CAPTION, grid.art.width()).role(Role::Caption);
    let top = grid.art.y1 + 1.2;
    let foot = top + caption.height;
    let mut nodes = vec![Node::Art(art)];
    nodes.extend(caption.moved(grid.art.x0, top).nodes);
    (Node::Group(Role::Figure { alt: alt.to_owned(), area: grid.art }, nodes), foot)
}

/// Text in two columns below the art and its caption.
fn below(composer: &mut Composer<'_>, grid: &Grid, top: f64, sections: &Sections<'_>) -> Vec<Node> {
    let width = grid.safe.width();
    let stop = stop_box(composer, width);
    let links = links(composer, sections.links, sections.key, width);
    let (bottom, column_width) = (grid.safe.y1 - footer::HEIGHT, grid.columns(top, top)[0].width());
    let left = do_section(composer, sections.steps, column_width);
    let mut right = see_section(composer, sections.see, column_width);
    right.stack(one_part_section(composer, sections.one_part, column_width), 1.6);
    let columns_top = top + 1.8;
    let room = bottom - 2.0 - stop.height - 1.8 - links.height - columns_top - left.height.max(right.height);
    let log = log::boxes(composer, sections.quiz, (width, room));
    let log_top = bottom - log.height;
    let stop_top = log_top - 2.0 - stop.height;
    let links_top = stop_top - 1.8 - links.height;
    let mut nodes = Vec::new();
    for (area, piece) in grid.columns(columns_top, links_top).into_iter().zip([left, right]) {
        let mut column = Column::new(area);
        column.add(piece, 0.0);
        nodes.extend(column.finish(composer));
    }
    for (piece, top) in [(links, links_top), (stop, stop_top), (log, log_top)] {
        nodes.extend(piece.moved(grid.safe.x0, top).nodes);
    }
    nodes
}

/// Text in one column beside the art. A screen page has no boxes to write into: it names what belongs in the log.
fn beside(composer: &mut Composer<'_>, grid: &Grid, sections: &Sections<'_>) -> Vec<Node> {
    let area = Rect::new(grid.art.x1 + 10.0, grid.safe.y0, grid.safe.x1, grid.safe.y1 - footer::HEIGHT);
    let width = area.width();
    let stop = stop_box(composer, width);
    let log = composer.paragraph(&log::line(sections.quiz), width);
    let (log_top, stop_top) = (area.y1 - log.height, area.y1 - log.height - 2.4 - stop.height);
    let mut column = Column::new(Rect::new(area.x0, area.y0, area.x1, stop_top));
    column.add(do_section(composer, sections.steps, width), 0.0);
    column.add(see_section(composer, sections.see, width), 1.6);
    column.add(one_part_section(composer, sections.one_part, width), 1.6);
    column.add(links(composer, sections.links, None, width), 1.6);
    if let Some(key) = sections.key {
        column.add(key_link(composer, key, width), 0.0);
    }
    let mut nodes = column.finish(composer);
    nodes.extend(stop.moved(area.x0, stop_top).nodes);
    nodes.extend(log.moved(area.x0, log_top).nodes);
    nodes
}

fn do_section(composer: &mut Composer<'_>, steps: &[String], width: f64) -> Piece {
    let mut piece = composer.heading("Do", width);
    piece.stack(composer.steps(steps, width), 0.6);
    piece
}

fn see_section(composer: &mut Composer<'_>, see: &str, width: f64) -> Piece {
    let mut piece = composer.heading("You should see", width);
    piece.stack(composer.paragraph(see, width), 0.6);
    piece
}

fn one_part_section(composer: &mut Composer<'_>, rows: &[(String, String)], width: f64) -> Piece {
    let mut piece = composer.heading("If you see only …", width);
    for (seen, then) in rows {
        piece.stack(composer.lead(&format!("{seen}:"), then, &BODY, width), 0.6);
    }
    piece
}

/// Where to go from here, naming pages of this book; and at the end of the line where the answers stand.
fn links(
    composer: &mut Composer<'_>,
    (easier, harder): (Option<&str>, Option<&str>),
    key: Option<&KeyAt>,
    width: f64,
) -> Piece {
    let mut nodes = Vec::new();
    let mut height = LEADING;
    let mut width = width;
    if let Some(key) = key {
        let room = composer.width_of(&format!("Answers: {} ", key.words), &Style { face: Face::Bold, ..BODY });
        nodes.extend(key_link(composer, key, room).moved(width - room, 0.0).nodes);
        width -= room + GUTTER;
    }
    // Without a key the second stands where the second text column starts.
    let half = (width + GUTTER) / 2.0;
    let mut ways = Vec::new();
    let ends = [("Easier:", easier, "this is the first page", 0.0), ("Harder:", harder, "this is the last page", half)];
    for (name, target, end, x) in ends {
        let way = link(composer, (name, target.unwrap_or(end)), target, half - GUTTER);
        height = way.height.max(height);
        ways.extend(way.moved(x, 0.0).nodes);
    }
    ways.extend(nodes);
    Piece { height, nodes: ways }
}

/// Where the answers stand.
fn key_link(composer: &mut Composer<'_>, key: &KeyAt, width: f64) -> Piece {
    link(composer, ("Answers:", &key.words), key.sheet.as_deref(), width)
}

/// A name and where it leads; a link where that is a sheet of this book.
fn link(composer: &mut Composer<'_>, (name, words): (&str, &str), target: Option<&str>, width: f64) -> Piece {
    let label = composer.lead(name, words, &BODY, width);
    let area = Rect::new(0.0, 0.0, width, label.height);
    match target {
        Some(id) => {
            let alt = if words == id { format!("{name} page {id}") } else { format!("{name} {words}") };
            label.role(Role::Link { target: id.to_owned(), area, alt })
        }
        None => label,
    }
}

fn stop_box(composer: &mut Composer<'_>, width: f64) -> Piece {
    let rule = composer.lead("Stop rule.", words::STOP, &BODY, inside(width));
    composer.panel(rule, width)
}

/// What the footer says of a page: demand, distance, glasses, ground.
fn facts(book: &Book<'_>, solved: &[SolvedFeature]) -> String {
    let viewer = &book.set.viewer;
    format!(
        "{} · {}, eyes {} mm apart · {} · {} ground · true size (100 %)",
        alt::demand_words(solved, viewer, book.tongue),
        words::distance(book.set),
        plain(viewer.ipd.0, 1),
        words::glasses(book.edition),
        book.edition.ground.name(),
    )
}

/// A feature as the report lists it.
fn place(feature: &SolvedFeature, middle: Point) -> Placed {
    Placed { feature: feature.clone(), at: middle + Vec2::from(feature.at), size: size(feature) }
}

/// Width and height of the drawn bounding box of a feature, mm; of a path: of its cyclopean line and its weight.
pub(in crate::layout) fn size(feature: &SolvedFeature) -> Size {
    match &feature.form {
        SolvedForm::Shape { extent, .. } => Size::from(*extent),
        SolvedForm::Dots(dots) => Size::from(dots.extent),
        SolvedForm::Strokes { strokes, weight } => strokes_size(strokes, *weight),
        SolvedForm::Path { points, weight, .. } => path_size(points, *weight),
    }
}

fn strokes_size(strokes: &[[(f64, f64); 2]], weight: f64) -> Size {
    art::strokes(strokes, weight).bounding_box().size()
}

fn path_size(points: &[PathPoint], weight: f64) -> Size {
    let span = |value: fn(&PathPoint) -> f64| {
        let low = points.iter().map(value).fold(f64::INFINITY, f64::min);
        points.iter().map(value).fold(f64::NEG_INFINITY, f64::max) - low
    };
    Size::new(span(|p| p.x) + weight, span(|p| p.y) + weight)
}
