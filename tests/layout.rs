//! No sheet of any edition is crowded: in every page format, size of text and language, and in one that is longer than all
//! of them, words keep clear of words and of art, nothing leaves the margins, and no heading stands alone.
//!
//! What is held apart: lines of text from one another, and lines of text from what is drawn for the eyes. Words of a page may
//! stand in the field of the art (a table, a ruler), never on its marks. Text in the boxes and panels of the page is meant.

use std::collections::BTreeSet;
use std::path::Path;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::exercise::{self, Page};
use depthpress::language::{Language, Tongue};
use depthpress::layout::grid::Grid;
use depthpress::layout::sheet::{Art, Dots, Node, Role, Sheet, TextRun, words};
use depthpress::layout::{self, BookPage};
use depthpress::spec::{Back, Edition, Front, Hand, PageFormat, TextSize};
use kurbo::{BezPath, Point, Rect, Shape};

use crate::answers::{apart, area, fills, runs, within};

const FORMATS: [PageFormat; 3] = [PageFormat::A4, PageFormat::Letter, PageFormat::Wide];
/// The frame of a page that a professional set stands this far outside the margins, mm.
const FRAME: f64 = 2.6;

/// A set with every part of a book, and one page of each of its kinds.
struct Subject {
    prepared: Prepared,
    name: &'static str,
}

impl Subject {
    fn new(name: &'static str) -> Self {
        let mut loaded = load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(name)).unwrap();
        let set = loaded.set.as_mut().unwrap();
        set.front = Front::ALL.to_vec();
        set.back = Back::ALL.into_iter().filter(|part| *part != Back::Plan || set.plan.is_some()).collect();
        let prepared = prepare(loaded, None);
        assert!(prepared.complete, "{name}");
        Self { prepared, name }
    }

    /// The pages that are laid out: the first of each kind, and those whose kind has been met are left out.
    fn chosen(&self, tongue: &Tongue) -> Vec<(usize, Page)> {
        let set = self.prepared.set.as_ref().unwrap();
        let mut kinds = BTreeSet::new();
        let pages = exercise::pages(&self.prepared.exercises, &set.id, tongue).into_iter().enumerate();
        let mut chosen: Vec<(usize, Page)> = pages.filter(|(_, page)| kinds.insert(page.kind)).collect();
        for (index, page) in &mut chosen {
            page.balance = self.prepared.pages[*index].page.balance;
        }
        chosen
    }

    /// What is wrong with an edition of the set in a language.
    fn check(&self, edition: &Edition, tongue: &Tongue, wrong: &mut BTreeSet<String>) {
        let set = self.prepared.set.as_ref().unwrap();
        let chosen = self.chosen(tongue);
        let of = |(index, page): &'_ (usize, Page)| {
            let solved = &self.prepared.pages[*index];
            assert_eq!(solved.page.id, page.id);
            (solved.features.as_slice(), solved.strand, solved.difficulty.as_ref().map(|d| d.badge()))
        };
        let pages: Vec<BookPage<'_>> = chosen
            .iter()
            .map(|chosen| {
                let (solved, strand, grade) = of(chosen);
                BookPage { page: &chosen.1, solved, strand, grade }
            })
            .collect();
        let Inked { plan, views } = &Inked::of(edition);
        let laid = layout::lay_out(&layout::Book { set, edition, plan, views, pages: &pages, tongue });
        let name = format!("{} {}", self.name, edition.id);
        match laid {
            Ok(laid) => {
                let sheets = laid.sheets.iter().chain(&laid.answers);
                wrong.extend(
                    sheets.flat_map(|sheet| faults(sheet, edition.page)).map(|fault| format!("{name}: {fault}")),
                );
            }
            Err(problems) => wrong.extend(problems.into_iter().map(|p| format!("{name}: {}", p.message))),
        }
    }

    /// An edition like the first of the set.
    fn edition(&self, page: PageFormat, text: TextSize, language: Language, tag: &str) -> Edition {
        let first = &self.prepared.set.as_ref().unwrap().editions[0];
        // Left-handed pages are checked along with the German ones.
        let hand = if language == Language::De { Hand::Left } else { Hand::Right };
        let id = format!("{}-{}-{tag}", page.name().to_lowercase().replace(':', "x"), text.name());
        Edition { id, page, text, language, hand, ..first.clone() }
    }
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
    for (index, run) in runs.iter().enumerate() {
        // A message or a variable that is missing comes out as `{name}` or `{$name}`; specs have a blank after the brace.
        if run.text.split('{').skip(1).any(|rest| rest.starts_with(|c: char| c.is_ascii_lowercase() || c == '$')) {
            faults.push(format!("a message is missing: `{}`", run.text));
        }
        if !within(area(run), safe) {
            faults.push(format!("`{}` leaves the margins", run.text.trim()));
        }
        let met = runs[index + 1..].iter().filter(|other| !apart(area(run), area(other)));
        faults.extend(met.map(|other| format!("`{}` meets `{}`", run.text.trim(), other.text.trim())));
    }
    for art in arts(&sheet.nodes) {
        let met = runs.iter().filter(|run| covers(art, area(run)));
        faults.extend(met.map(|run| format!("`{}` stands on the art", run.text.trim())));
    }
    faults.extend(lonely(&sheet.nodes).into_iter().map(|heading| format!("`{heading}` has nothing below it")));
    faults.into_iter().map(|fault| format!("page `{}`: {fault}", sheet.id)).collect()
}

fn arts(nodes: &[Node]) -> Vec<&Art> {
    let of = |node| match node {
        &Node::Group(_, ref inner) => arts(inner),
        Node::Art(art) => vec![art],
        Node::Text(_) | Node::Fill(_) | Node::Patch(_) => Vec::new(),
    };
    nodes.iter().flat_map(of).collect()
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

/// What is wrong in these formats and the languages of these tags.
fn check(subject: &Subject, formats: &[PageFormat], tags: &[&str]) -> BTreeSet<String> {
    let mut wrong = BTreeSet::new();
    for &page in formats {
        for text in TextSize::ALL {
            for (language, tongue, tag) in tongues().into_iter().filter(|(.., tag)| tags.contains(tag)) {
                subject.check(&subject.edition(page, text, language, tag), tongue, &mut wrong);
            }
        }
    }
    wrong
}

fn told(wrong: BTreeSet<String>) {
    let all: Vec<String> = wrong.into_iter().collect();
    assert!(all.is_empty(), "{} faults\n{}", all.len(), all.join("\n"));
}

/// A whole book with all of its parts.
#[test]
fn every_sheet_of_the_demo_set_has_room_in_every_edition_and_language() {
    told(check(&Subject::new("harbour-lights"), &FORMATS, &["en", "de", "es", "fr", "long"]));
}

/// A page of every kind, where there is the least room: in the longest languages, on the lowest sheets.
#[test]
fn a_page_of_every_kind_has_room_where_there_is_least() {
    told(check(&Subject::new("gallery"), &[PageFormat::Letter, PageFormat::Wide], &["de", "fr", "long"]));
}

/// Series, questions and dots of the long set, on the page with the least room.
#[test]
fn the_long_set_has_room_on_the_smallest_sheet() {
    told(check(&Subject::new("tide-ladder"), &[PageFormat::Letter], &["de", "long"]));
}
