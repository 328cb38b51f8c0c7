//! An exercise page: what it is for, its art, what to do, what should be seen, and when to stop.
//!
//! It stands on one sheet where all of that has room, and else on two: the art, and after it its words, in black only.
//! Large text always takes two. Which it is follows from the heights of what is set, before any number is known.

mod apart;
mod text;
mod whole;

use kurbo::{Circle, Point, Shape as _, Size, Vec2};

use crate::colour::Inks;
use crate::exercise::Page;
use crate::exercise::balance::Balance;
use crate::language::Tongue;
use crate::layout::base::{self, Ride};
use crate::layout::compose::{Composer, Piece, RULE};
use crate::layout::grid::{BODY, CAPTION, Grid, SMALL};
use crate::layout::sheet::{Art, Fill, Furniture, Node, Role, Tone};
use crate::layout::{Book, BookPage, Draft, Placed, alt, art, balance};
use crate::solve::{PathPoint, SolvedFeature, SolvedForm};
use crate::spec::TextSize;

use super::answers::KeyAt;
use super::contents::Entry;
use super::{asked, footer, readings, words};
use apart::Apart;
pub(super) use text::{Names, sections};
use whole::Whole;

/// Clear space between the head of a page and its art, and between the art and its caption, mm.
const ABOVE_ART: f64 = 2.5;
const BELOW_ART: f64 = 1.2;

/// What an exercise page is made of, set but not yet placed.
struct Parts<'a> {
    book: &'a Book<'a>,
    index: usize,
    /// The grid with its foot raised by what the footer says.
    grid: Grid,
    /// What a balance, or a kind that a professional sets, makes of it.
    balanced: Balanced,
    /// Of a balance and a seed, for the footer.
    note: String,
    /// Of demand, distance, glasses and ground, for the footer.
    facts: String,
    /// What its art shows, for those who do not see it.
    picture: String,
    /// The caption of its art.
    caption: Piece,
}

/// An exercise page in its form.
pub(super) struct Made<'a> {
    parts: Parts<'a>,
    form: Form,
}

/// One sheet, or a sheet of art and sheets of words.
enum Form {
    Whole(Whole),
    Apart(Apart),
}

impl<'a> Made<'a> {
    /// Sets a page of the book; `key` tells where its answers stand, with a number as long as they come.
    pub(super) fn new(
        composer: &mut Composer<'_>,
        grid: &Grid,
        book: &'a Book<'a>,
        index: usize,
        key: Option<&KeyAt>,
    ) -> Self {
        let page = book.pages[index].page;
        composer.sheet.clone_from(&page.id);
        composer.place = Some(page.place);
        let parts = Parts::new(composer, grid, book, index);
        let known = composer.problems.len();
        let whole = (composer.text == TextSize::Standard).then(|| Whole::new(composer, &parts, key)).flatten();
        let form = whole.map_or_else(
            || {
                // What does not fit on one sheet is set once more, and says again what is wrong with its letters.
                composer.problems.truncate(known);
                Form::Apart(Apart::new(composer, &parts, key))
            },
            Form::Whole,
        );
        composer.place = None;
        Self { parts, form }
    }

    /// Its line in the contents: its words have none of their own.
    pub(super) fn entry(&self, tongue: &Tongue) -> Entry {
        let page = self.parts.page();
        Entry { id: page.id.clone(), title: words::full_title(tongue, page), inside: true }
    }

    /// How many sheets it takes.
    pub(super) fn sheets(&self) -> usize {
        match &self.form {
            Form::Whole(_) => 1,
            Form::Apart(apart) => 1 + apart.sheets(),
        }
    }

    /// Its sheets, the first with this number.
    pub(super) fn drafts(self, composer: &mut Composer<'_>, number: usize, key: Option<&KeyAt>) -> Vec<Draft> {
        let Self { parts, form } = self;
        composer.sheet.clone_from(&parts.page().id);
        composer.place = Some(parts.page().place);
        let drafts = match form {
            Form::Whole(whole) => whole.draft(composer, parts, key).into_one(),
            Form::Apart(apart) => apart.drafts(composer, parts, number, key),
        };
        composer.place = None;
        drafts
    }
}

impl<'a> Parts<'a> {
    fn new(composer: &mut Composer<'_>, grid: &Grid, book: &'a Book<'a>, index: usize) -> Self {
        let BookPage { page, solved, .. } = book.pages[index];
        let viewer = &book.set.viewer;
        let balanced = balance_of(grid, book, page);
        let mut grid = *grid;
        let note = note(composer, page, &balanced.words);
        let facts = facts(composer, book, solved);
        grid.safe.y1 -= footer::rise(composer, &grid, book, (&facts, &note));
        let (mut picture, caption) = match &page.quiz {
            Some(quiz) => (
                asked::picture(quiz, &page.words.goal, book.edition.answers, book.tongue),
                asked::caption(solved, viewer, book.tongue),
            ),
            None => (alt::figure(solved, viewer, book.tongue), alt::caption(solved, viewer, book.tongue)),
        };
        if !balanced.words.is_empty() {
            picture = format!("{picture} {}", words::sentence(&balanced.words));
        }
        picture.push_str(&base::sentence(viewer.base, book.tongue));
        let caption = composer.lines(&caption, &CAPTION, grid.art.width()).role(Role::Caption);
        Self { book, index, grid, balanced, note, facts, picture, caption }
    }

    fn page(&self) -> &'a Page {
        self.book.pages[self.index].page
    }

    fn solved(&self) -> &'a [SolvedFeature] {
        self.book.pages[self.index].solved
    }

    /// Where content ends, above the footer.
    fn bottom(&self) -> f64 {
        self.grid.safe.y1 - footer::HEIGHT
    }

    /// The height of the art with its caption, mm.
    fn figure_height(&self) -> f64 {
        self.grid.art.height() + BELOW_ART + self.caption.height
    }

    /// The art, its caption and its readings, with the art where this grid has it.
    fn figure(&self, composer: &mut Composer<'_>, grid: &Grid) -> Vec<Node> {
        let (page, solved, viewer) = (self.page(), self.solved(), &self.book.set.viewer);
        let art: Art = art::page(solved, grid.middle(), self.balanced.thin, Ride::of(viewer));
        let mut nodes = vec![Node::Art(art)];
        let top = grid.art.y1 + BELOW_ART;
        nodes.extend(self.caption.clone().moved(grid.art.x0, top).nodes);
        let figure = Node::Group(Role::Figure { alt: self.picture.clone(), area: grid.art }, nodes);
        std::iter::once(figure).chain(readings::nodes(composer, grid, page, solved, viewer)).collect()
    }

    /// The sheet with the art.
    fn draft(self, composer: &Composer<'_>, grid: &Grid, nodes: Vec<Node>) -> Draft {
        let page = self.page();
        let placed = self.solved().iter().map(|feature| place(feature, grid.middle())).collect();
        Draft {
            id: page.id.clone(),
            title: words::full_title(composer.tongue, page),
            description: self.picture,
            outline_level: 1,
            inks: self.balanced.inks,
            note: self.note,
            nodes: self.balanced.nodes.into_iter().chain(nodes).collect(),
            footer: self.facts,
            placed,
        }
    }
}

/// What the footer says of a balance and of a seed.
fn note(composer: &Composer<'_>, page: &Page, balance: &str) -> String {
    let seed = page.seed.map(|seed| composer.tell("footer-seed", &[("n", seed.to_string().into())]));
    let balance = (!balance.is_empty()).then(|| balance.to_owned());
    seed.into_iter().chain(balance).collect::<Vec<_>>().join(" · ")
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

/// Which of the lines above the art stand there besides badge and title.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Head {
    /// Goal and set-up.
    Full,
    /// The set-up.
    SetUp,
    /// Neither.
    Bare,
}

/// Id, level and grade, title, goal and set-up, in this width.
fn head(composer: &mut Composer<'_>, parts: &Parts<'_>, head: Head, width: f64) -> Piece {
    let BookPage { page, grade, .. } = parts.book.pages[parts.index];
    let badge = badge(composer, page, grade);
    let beside = if page.levels == 1 { 0.0 } else { f64::from(page.levels) * DOT_STEP };
    let mut piece = composer.lines(&badge, &SMALL, width - beside).role(Role::Paragraph);
    piece.nodes.push(level_dots(width, composer.leading(&SMALL) * 0.54, page));
    piece.stack(composer.title(&page.title, width), 0.3);
    if head == Head::Full {
        piece.stack(composer.paragraph(&page.words.goal, width), 0.6);
    }
    if head != Head::Bare {
        piece.stack(set_up(composer, parts.book, page, width), 0.6);
    }
    piece
}

/// "mooring-rings-2 · jump · level 2 of 4 · grade 3"
fn badge(composer: &Composer<'_>, page: &Page, grade: Option<u32>) -> String {
    let mut badge = format!("{} · {}", page.id, page.kind);
    if page.levels != 1 {
        badge.push_str(" · ");
        badge.push_str(&composer.tell("page-badge-level", &[("n", page.level.into()), ("of", page.levels.into())]));
    }
    badge.push_str(&page.variant_words());
    if let Some(grade) = grade {
        badge.push_str(" · ");
        badge.push_str(&composer.tell("page-badge-grade", &[("n", grade.into())]));
    }
    badge
}

/// Distance, glasses and what else is prepared.
pub(super) fn set_up(composer: &mut Composer<'_>, book: &Book<'_>, page: &Page, width: f64) -> Piece {
    let mut words = composer.tell(
        "page-set-up-words",
        &[
            ("distance", words::distance(composer.tongue, book.set).into()),
            ("glasses", words::glasses(composer.tongue, book.edition).into()),
        ],
    );
    let own = &page.words.setup;
    if !own.is_empty() {
        words = format!("{words} {own}");
    }
    let name = composer.say("page-set-up");
    composer.lead(&name, &words, &BODY, width)
}

/// From one dot of the levels to the next, mm.
const DOT_STEP: f64 = 4.0;

/// A row of dots that ends at `x`: one a level, filled up to this level.
fn level_dots(x: f64, y: f64, page: &Page) -> Node {
    let mut fills = Vec::new();
    for level in 1..=if page.levels == 1 { 0 } else { page.levels } {
        let centre = Point::new(x - 1.3 - f64::from(page.levels - level) * DOT_STEP, y);
        let mut path = Circle::new(centre, 1.3).to_path(0.001);
        if page.level < level {
            path.extend(Circle::new(centre, 1.3 - RULE * 1.4).to_path(0.001).reverse_subpaths());
        }
        fills.push(Node::Fill(Fill { path, tone: Tone::QUIET }));
    }
    Node::Group(Role::Artifact(Furniture::Layout), fills)
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

/// What the footer says of a page: demand, distance, glasses, ground, and that it is of true size.
fn facts(composer: &Composer<'_>, book: &Book<'_>, solved: &[SolvedFeature]) -> String {
    let viewer = &book.set.viewer;
    let tongue = composer.tongue;
    let facts = tongue.tell(
        "footer-facts",
        &[
            ("depth", alt::demand_words(solved, viewer, tongue).into()),
            ("distance", words::distance(tongue, book.set).into()),
            ("ipd", tongue.mm(viewer.ipd, 1).into()),
            ("glasses", words::glasses(tongue, book.edition).into()),
            ("ground", words::ground(tongue, book.edition.ground).into()),
        ],
    );
    format!("{facts} · {}", tongue.say("footer-true-size"))
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
