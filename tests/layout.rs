//! No sheet of any edition is crowded: in every page format, size of text and language, and in one that is longer than all
//! of them, words keep clear of words and of art, nothing leaves the margins, no heading stands alone, and every sheet with
//! the art of an exercise has the stop rule.
//!
//! What is held apart: lines of text from one another, and lines of text from what is drawn for the eyes. Words of a page may
//! stand in the field of the art (a table, a ruler), never on its marks. Text in the boxes and panels of the page is meant.

use std::collections::BTreeSet;
use std::path::Path;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, SolvedPage, prepare};
use depthpress::exercise::{self, Page};
use depthpress::language::{Language, Tongue};
use depthpress::layout::grid::Grid;
use depthpress::layout::sheet::{Art, Dots, Node, Role, Sheet, TextRun, words};
use depthpress::layout::{self, BookPage};
use depthpress::spec::{Back, Edition, Front, Hand, PageFormat, SetSpec, TextSize};
use kurbo::{BezPath, Point, Rect, Shape};
use rayon::prelude::*;

use crate::answers::{apart, area, fills, runs, within};

const FORMATS: [PageFormat; 3] = [PageFormat::A4, PageFormat::Letter, PageFormat::Wide];
/// The frame of a page that a professional set stands this far outside the margins, mm.
const FRAME: f64 = 2.6;

/// A set with every part of a book, solved once.
struct Subject {
    prepared: Prepared,
    name: &'static str,
    /// Whether every page is laid out, or the first of each kind.
    whole: bool,
}

/// An edition and the words that its pages are laid out with.
struct Case {
    edition: Edition,
    tongue: &'static Tongue,
    pages: Vec<(usize, Page)>,
}

impl Subject {
    fn new(name: &'static str, whole: bool) -> Self {
        let mut loaded = load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(name)).unwrap();
        let set = loaded.set.as_mut().unwrap();
        set.front = Front::ALL.to_vec();
        set.back = Back::ALL.into_iter().filter(|part| *part != Back::Plan || set.plan.is_some()).collect();
        let prepared = prepare(loaded, None);
        assert!(prepared.complete, "{name}");
        Self { prepared, name, whole }
    }

    /// The author's words: those of the set in the language of the tongue, where it has them.
    fn told(&self, tongue: &Tongue) -> (&SetSpec, &[SolvedPage]) {
        let told = self.prepared.others.iter().find(|told| told.set.language == tongue.language());
        let own = (self.prepared.set.as_ref().unwrap(), self.prepared.pages.as_slice());
        told.map_or(own, |told| (&told.set, told.pages.as_slice()))
    }

    /// The pages in a tongue: all, or the first of each kind.
    fn pages(&self, tongue: &Tongue) -> Vec<(usize, Page)> {
        let (set, solved) = self.told(tongue);
        let pages: Vec<Page> = if set.language == tongue.language() && !std::ptr::eq(tongue, Tongue::stretched()) {
            solved.iter().map(|solved| solved.page.clone()).collect()
        } else {
            let mut pages = exercise::pages(&self.prepared.exercises, &set.id, tongue);
            pages.iter_mut().zip(solved).for_each(|(page, solved)| page.balance = solved.page.balance);
            pages
        };
        let mut kinds = BTreeSet::new();
        pages.into_iter().enumerate().filter(|(_, page)| kinds.insert(page.kind) || self.whole).collect()
    }

    /// What is wrong with an edition of the set.
    fn faults(&self, Case { edition, tongue, pages }: &Case) -> Vec<String> {
        let (set, solved) = self.told(tongue);
        let of = |(index, page): &'_ (usize, Page)| {
            assert_eq!(solved[*index].page.id, page.id);
            &solved[*index]
        };
        let pages: Vec<BookPage<'_>> = pages
            .iter()
            .map(|chosen| {
                let own = of(chosen);
                let grade = own.difficulty.as_ref().map(|difficulty| difficulty.badge());
                BookPage { page: &chosen.1, solved: &own.features, strand: own.strand, grade }
            })
            .collect();
        let Inked { plan, views } = &Inked::of(edition);
        let laid = layout::lay_out(&layout::Book { set, edition, plan, views, pages: &pages, tongue });
        let wrong: Vec<String> = match laid {
            Ok(laid) => {
                let sheets = laid.sheets.iter().chain(&laid.answers);
                let stop = plain(&tongue.say("page-stop"));
                let without = laid.sheets.iter().filter(|sheet| pages.iter().any(|page| page.page.id == sheet.id));
                let without = without.filter(|sheet| !plain(&words(&sheet.nodes)).contains(&stop));
                let without = without.map(|sheet| format!("page `{}`: the stop rule is missing", sheet.id));
                sheets.flat_map(|sheet| faults(sheet, edition.page)).chain(without).collect()
            }
            Err(problems) => problems.into_iter().map(|problem| problem.message).collect(),
        };
        wrong.into_iter().map(|fault| format!("{} {}: {fault}", self.name, edition.id)).collect()
    }

    /// An edition like the first of the set.
    fn edition(&self, page: PageFormat, text: TextSize, language: Language, tag: &str) -> Edition {
        let first = &self.prepared.set.as_ref().unwrap().editions[0];
        // Left-handed pages are checked along with the German ones.
        let hand = if language == Language::De { Hand::Left } else { Hand::Right };
        let id = format!("{}-{}-{tag}", page.name().to_lowercase().replace(':', "x"), text.name());
        Edition { id, page, text, language, hand, ..first.clone() }
    }

    /// What is wrong in these formats, in each size of text, in the languages of these tags; and in the set's own editions.
    fn check(&self, formats: &[PageFormat], tags: &[&str]) {
        let mut cases = Vec::new();
        for (language, tongue, tag) in tongues().into_iter().filter(|(.., tag)| tags.contains(tag)) {
            let pages = self.pages(tongue);
            let sizes = formats.iter().flat_map(|page| TextSize::ALL.map(|text| (*page, text)));
            let own = sizes.map(|(page, text)| self.edition(page, text, language, tag));
            let of_set = self.prepared.set.as_ref().unwrap().editions.iter();
            let of_set = of_set.filter(|own| self.whole && own.language == language && tag != "long").cloned();
            cases.extend(own.chain(of_set).map(|edition| Case { edition, tongue, pages: pages.clone() }));
        }
        let wrong: BTreeSet<String> = cases.par_iter().flat_map_iter(|case| self.faults(case)).collect();
        let all: Vec<String> = wrong.into_iter().collect();
        assert!(all.is_empty(), "{} faults\n{}", all.len(), all.join("\n"));
    }
}

/// Words with one blank between them.
fn plain(words: &str) -> String {
    words.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// What is wrong with a sheet.
fn faults(sheet: &Sheet, format: PageFormat) -> Vec<String> {
    let safe = Grid::of(format).safe;
    let mut faults = Vec::new();
    let runs: Vec<&TextRun> = runs(sheet).into_iter().filter(|run| !run.text.trim().is_empty()).collect();
    let mut boxes = Vec::new();
    fills(&sheet.nodes, &mut boxes);
    if let Some(out) = boxes.iter().find(|own| !within(**own, safe.inflate(FRAME, FRAME))) {
        faults.push(format!("a filled area leaves the page: {out:?}"));
    }
    let areas: Vec<Rect> = runs.iter().map(|run| area(run)).collect();
    for (index, (run, own)) in runs.iter().zip(&areas).enumerate() {
        // A message or a variable that is missing comes out as `{name}` or `{$name}`; specs have a blank after the brace.
        if run.text.split('{').skip(1).any(|rest| rest.starts_with(|c: char| c.is_ascii_lowercase() || c == '$')) {
            faults.push(format!("a message is missing: `{}`", run.text));
        }
        if !within(*own, safe) {
            faults.push(format!("`{}` leaves the margins", run.text.trim()));
        }
        for (other, its) in runs[index + 1..].iter().zip(&areas[index + 1..]) {
            if !apart(*own, *its) {
                faults.push(format!("`{}` meets `{}`", run.text.trim(), other.text.trim()));
            }
        }
    }
    for art in arts(&sheet.nodes) {
        let all = bounds(art);
        for (run, own) in runs.iter().zip(&areas).filter(|(_, own)| !apart(all, **own)) {
            if covers(art, *own) {
                faults.push(format!("`{}` stands on the art", run.text.trim()));
            }
        }
    }
    let mut levels = Vec::new();
    headings(&sheet.nodes, &mut levels);
    // Every sheet begins anew, so one that leaves a level out does so in the whole document.
    if levels.first() != Some(&1) || levels.windows(2).any(|pair| pair[0] + 1 < pair[1]) {
        faults.push(format!("levels of headings are left out: {levels:?}"));
    }
    faults.extend(lonely(&sheet.nodes).into_iter().map(|heading| format!("`{heading}` has nothing below it")));
    faults.into_iter().map(|fault| format!("page `{}`: {fault}", sheet.id)).collect()
}

/// The levels of the headings in the order of reading. Source: ISO 14289-1, 7.4.2: none may be left out.
fn headings(nodes: &[Node], levels: &mut Vec<u8>) {
    for node in nodes {
        let Node::Group(role, inner) = node else { continue };
        levels.extend(if let Role::Heading(level) = role { Some(*level) } else { None });
        headings(inner, levels);
    }
}

fn arts(nodes: &[Node]) -> Vec<&Art> {
    let mut found = Vec::new();
    for node in nodes {
        match node {
            Node::Group(_, inner) => found.extend(arts(inner)),
            Node::Art(art) => found.push(art),
            Node::Text(_) | Node::Fill(_) | Node::Patch(_) => {}
        }
    }
    found
}

/// What holds all of the art.
fn bounds(art: &Art) -> Rect {
    let paths = [&art.left, &art.right, &art.flat].into_iter().flatten().map(Shape::bounding_box);
    let lists = art.dots.iter().flat_map(|dots| [&dots.left, &dots.right, &dots.flat]);
    let bars = lists.flat_map(|list| list.bars.iter().map(|bar| bar.area(list.height)));
    paths.chain(bars).reduce(|all, own| all.union(own)).unwrap_or_default()
}

/// Whether anything of the art stands in this area.
fn covers(art: &Art, area: Rect) -> bool {
    let paths = [&art.left, &art.right, &art.flat].into_iter().flatten();
    paths.into_iter().any(|path| touches(path, area)) || art.dots.iter().any(|dots| holds(dots, area))
}

/// Whether the outline of a filled path goes through an area, or the area lies in it.
fn touches(path: &BezPath, area: Rect) -> bool {
    !apart(path.bounding_box(), area)
        && (path.winding(area.center()) != 0
            || path.segments().any(|segment| !apart(segment.bounding_box(), area) && crosses(&segment, area)))
}

/// Whether a segment has a point in an area: at steps far below a stroke of a letter.
fn crosses(segment: &kurbo::PathSeg, area: Rect) -> bool {
    use kurbo::ParamCurve;
    (0..=64).map(|step| segment.eval(f64::from(step) / 64.0)).any(|at: Point| area.contains(at))
}

fn holds(dots: &Dots, area: Rect) -> bool {
    let lists = [&dots.left, &dots.right, &dots.flat];
    lists.into_iter().any(|list| list.bars.iter().any(|bar| !apart(bar.area(list.height), area)))
}

/// The headings inside a page that stand alone: what follows them in the order of reading is another heading, or stands no
/// lower because it opens a new column, or is not there.
fn lonely(nodes: &[Node]) -> Vec<String> {
    let mut blocks = Vec::new();
    gather(nodes, &mut blocks);
    let alone = |(index, (role, run, text)): (usize, &(Role, TextRun, String))| {
        let Role::Heading(2..) = role else { return None };
        let below = blocks.get(index + 1).filter(|(role, next, _)| {
            let deeper = !matches!((role, &blocks[index].0), (Role::Heading(a), Role::Heading(b)) if a <= b);
            // Lower, or beside it on its own line.
            let down = if run.turned { run.origin.y - next.origin.y } else { next.origin.y - run.origin.y };
            let lower = -1.0 < down;
            deeper && lower
        });
        below.is_none().then(|| text.clone())
    };
    blocks.iter().enumerate().filter_map(alone).collect()
}

/// The innermost groups with words, in the order of reading, each with its last run for a heading and its first for others.
fn gather(nodes: &[Node], blocks: &mut Vec<(Role, TextRun, String)>) {
    for node in nodes {
        let Node::Group(role, inner) = node else { continue };
        if matches!(role, Role::Artifact(_)) {
            continue;
        }
        let own: Vec<&TextRun> =
            inner.iter().filter_map(|node| if let Node::Text(run) = node { Some(run) } else { None }).collect();
        let run = if matches!(role, Role::Heading(_)) { own.last() } else { own.first() };
        if let Some(run) = run {
            blocks.push((role.clone(), (*run).clone(), words(inner)));
        }
        gather(inner, blocks);
    }
}

/// Every language, and one that is two letters in five longer than English.
fn tongues() -> Vec<(Language, &'static Tongue, &'static str)> {
    let own = Language::ALL.map(|language| (language, Tongue::of(language), language.tag()));
    own.into_iter().chain([(Language::En, Tongue::stretched(), "long")]).collect()
}

/// Whole books, all sheets of all editions of the demo set, and of editions in every format, size of text and language.
#[test]
fn every_sheet_of_the_demo_set_has_room_in_every_edition_and_language() {
    Subject::new("harbour-lights", true).check(&FORMATS, &["en", "de", "es", "fr", "long"]);
}

/// A page of every kind. A4 has as wide columns as Letter, and higher ones.
#[test]
fn a_page_of_every_kind_has_room_in_every_edition_and_language() {
    Subject::new("gallery", false).check(&[PageFormat::Letter, PageFormat::Wide], &["en", "de", "es", "fr", "long"]);
}

/// Series, questions and dots of the long set, on the page with the least room.
#[test]
fn the_long_set_has_room_on_the_smallest_sheet() {
    Subject::new("tide-ladder", false).check(&[PageFormat::Letter], &["de", "long"]);
}
