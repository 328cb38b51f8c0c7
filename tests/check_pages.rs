//! The pages about glasses, ghosts and inks: nothing on them overlaps or leaves the page, in any edition.

use std::sync::LazyLock;

use depthpress::colour::{
    Filter, FilterModel, Glasses, Ground, InkPlan, Lamp, Medium, NamedScreen, Print, Screen, Solids, Views, Wishes,
    solve_inks,
};
use depthpress::diagnostics::{Diagnostics, Sources};
use depthpress::language::Tongue;
use depthpress::layout::grid::Grid;
use depthpress::layout::sheet::{Node, Role, Sheet, TextRun, words as words_of};
use depthpress::layout::{self, Book, LaidOut, swatch};
use depthpress::render::pdf::{PdfBook, pdf};
use depthpress::render::png::{Scratch, png};
use depthpress::scene::Eye;
use depthpress::spec::reader::Reader;
use depthpress::spec::set::read_set;
use depthpress::spec::{Colours, Edition, MediumSource, PageFormat, SetSpec};
use depthpress::units::{Ppi, plain};
use kurbo::{Rect, Shape};

const SET: &str = r#"
[set]
id = "quay"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["a.toml"]
[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]
[glasses]
left = "cyan"
right = "red"
[[edition]]
id = "harbour-edition"
page = "A4"
ground = "white"
ppi = 300
"#;

const CHECKS: [&str; 4] = ["glasses-check", "ghost-check", "ink-swatches", "ink-spectra"];

fn set() -> SetSpec {
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("set.toml", SET);
    read_set(&mut Reader::new(&sources, file, &mut problems)).set.unwrap()
}

/// An edition with its inks.
struct Case {
    set: SetSpec,
    edition: Edition,
    plan: InkPlan,
    views: Views,
}

impl Case {
    fn new(page: PageFormat, ground: Ground, glasses: Glasses, (medium, source): (Medium, MediumSource)) -> Self {
        let set = set();
        let of_set = set.editions[0].clone();
        let views = Views::new(&glasses, &medium);
        let plan = solve_inks(&glasses, &medium, ground, &Wishes { tinted_ground: true, ..Wishes::default() });
        let colour = Colours { medium, source, ..of_set.colour.clone() };
        Self { edition: Edition { page, ground, glasses, colour, ..of_set }, set, plan, views }
    }

    /// The same on another page.
    fn on(&self, page: PageFormat) -> Self {
        let edition = Edition { page, ..self.edition.clone() };
        Self { set: self.set.clone(), edition, plan: self.plan.clone(), views: self.views.clone() }
    }

    fn book(&self) -> Book<'_> {
        Book {
            set: &self.set,
            edition: &self.edition,
            plan: &self.plan,
            views: &self.views,
            pages: &[],
            tongue: Tongue::of(self.edition.language),
        }
    }

    fn name(&self) -> String {
        let Edition { page, ground, glasses, colour, .. } = &self.edition;
        let (left, right) = (glasses.left.name(), glasses.right.name());
        let leak = glasses.left.leak().map_or("", |_| "-leak");
        let medium = colour.source.words().replace(['`', ' '], "-");
        format!("{}-{}-{left}-{right}{leak}-{medium}", page.name().replace(':', "x"), ground.name())
    }

    /// The sheets about glasses and inks, as the book and the ink command lay them out.
    fn sheets(&self) -> Vec<Sheet> {
        let told = |laid: Result<LaidOut, _>| laid.unwrap_or_else(|problems| panic!("{}: {problems:?}", self.name()));
        let (book, inks) = (told(layout::lay_out(&self.book())), told(swatch::lay_out(&self.book())));
        let all = book.sheets.into_iter().chain(inks.sheets);
        all.filter(|sheet| CHECKS.contains(&sheet.id.as_str())).collect()
    }
}

fn leaking(left: f64, right: f64) -> Glasses {
    Glasses {
        left: FilterModel::Leak { colour: Filter::Cyan, leak: left },
        right: FilterModel::Leak { colour: Filter::Red, leak: right },
    }
}

fn screen(name: NamedScreen) -> (Medium, MediumSource) {
    (Medium::Screen(Screen::named(name)), MediumSource::Screen(name.name().to_owned()))
}

fn print() -> (Medium, MediumSource) {
    let lamp = Lamp::D50;
    let print = Print::new(&Solids::fogra39l(), &lamp.spectrum()).unwrap();
    (Medium::Print(print), MediumSource::Print { solids: "fogra39l".to_owned(), lamp })
}

/// Every page format and ground with some glasses and media; solved once.
fn cases() -> &'static [Case] {
    static CASES: LazyLock<Vec<Case>> = LazyLock::new(|| {
        let ideal = Glasses::ideal;
        let mut cases = Vec::new();
        for ground in [Ground::White, Ground::Black] {
            for (glasses, medium) in [
                (ideal(Filter::Cyan, Filter::Red), screen(NamedScreen::Lcd)),
                (leaking(0.04, 0.12), screen(NamedScreen::Crt)),
                (ideal(Filter::Magenta, Filter::Green), print()),
                (ideal(Filter::Amber, Filter::Blue), screen(NamedScreen::Ideal)),
            ] {
                let case = Case::new(PageFormat::A4, ground, glasses, medium);
                cases.extend([PageFormat::Letter, PageFormat::Wide].map(|page| case.on(page)));
                cases.push(case);
            }
        }
        cases
    });
    &CASES
}

/// The areas of a sheet that must stay apart, with what they are.
#[derive(Default)]
struct Areas {
    texts: Vec<(Rect, String)>,
    patches: Vec<Rect>,
    figures: Vec<Rect>,
    fills: Vec<Rect>,
}

/// The area of a run: from the top of its capitals to the foot of its descenders, a little less on all sides, since
/// lines may touch.
fn area(run: &TextRun) -> Rect {
    let seen = run.text.trim_end().len();
    let width: f64 = run.glyphs.iter().filter(|glyph| glyph.range.start < seen).map(|glyph| glyph.advance).sum();
    let (top, foot) = (run.origin.y - 0.72 * run.size, run.origin.y + 0.22 * run.size);
    Rect::new(run.origin.x, top, run.origin.x + width, foot).inset(-0.1)
}

fn gather(nodes: &[Node], areas: &mut Areas) {
    for node in nodes {
        match node {
            Node::Group(role, inner) => {
                if let Role::Figure { area, .. } = role {
                    areas.figures.push(*area);
                }
                gather(inner, areas);
            }
            Node::Text(run) if run.text.trim().is_empty() => {}
            Node::Text(run) => areas.texts.push((area(run), run.text.to_string())),
            Node::Fill(fill) => areas.fills.push(fill.path.bounding_box()),
            Node::Patch(patch) => areas.patches.push(patch.path.bounding_box()),
            Node::Art(art) => {
                let paths = [&art.left, &art.right, &art.flat].into_iter().flatten();
                areas.fills.extend(paths.map(Shape::bounding_box));
                let lists = art.dots.iter().flat_map(|dots| [&dots.left, &dots.right, &dots.flat]);
                let bars = lists.flat_map(|list| list.bars.iter().map(move |bar| (bar, list.height / 2.0)));
                areas.fills.extend(bars.map(|(bar, half)| Rect::new(bar.x0, bar.y - half, bar.x1, bar.y + half)));
            }
        }
    }
}

fn apart(a: Rect, b: Rect) -> bool {
    a.x1 <= b.x0 || b.x1 <= a.x0 || a.y1 <= b.y0 || b.y1 <= a.y0
}

fn within(inner: Rect, outer: Rect) -> bool {
    outer.inflate(0.2, 0.2).union(inner) == outer.inflate(0.2, 0.2)
}

#[test]
fn every_sheet_of_the_books_own_has_a_name_that_no_exercise_may_take() {
    let glasses = Glasses::ideal(Filter::Cyan, Filter::Red);
    let case = Case::new(PageFormat::A4, Ground::White, glasses, screen(NamedScreen::Ideal));
    let sheets = layout::lay_out(&case.book()).unwrap().sheets;
    assert!(7 <= sheets.len());
    for sheet in sheets {
        assert!(layout::parts::is_own(&sheet.id), "{}", sheet.id);
    }
    assert!(!layout::parts::is_own("pier-lamp-2") && !layout::parts::is_own("how-2-use"));
}

#[test]
fn nothing_overlaps_or_leaves_the_page() {
    for case in cases() {
        let safe = Grid::of(case.edition.page).safe;
        let sheets = case.sheets();
        assert_eq!(sheets.len(), CHECKS.len());
        for sheet in sheets {
            let told = format!("{} {}", case.name(), sheet.id);
            let mut areas = Areas::default();
            gather(&sheet.nodes, &mut areas);
            let texts = areas.texts.iter().map(|(area, text)| (*area, text.as_str()));
            let others = [&areas.patches, &areas.figures, &areas.fills].into_iter().flatten();
            for (area, what) in texts.chain(others.map(|area| (*area, "a picture"))) {
                assert!(within(area, safe), "{told}: `{what}` at {area:?} leaves {safe:?}");
            }
            for (i, (area, text)) in areas.texts.iter().enumerate() {
                for (other, words) in &areas.texts[i + 1..] {
                    assert!(apart(*area, *other), "{told}: `{text}` {area:?} and `{words}` {other:?} overlap");
                }
                for patch in &areas.patches {
                    assert!(apart(*area, *patch), "{told}: `{text}` stands on a patch");
                }
            }
            for (i, figure) in areas.figures.iter().enumerate() {
                assert!(areas.figures[i + 1..].iter().all(|other| apart(*figure, *other)), "{told}: figures overlap");
            }
        }
    }
}

#[test]
fn the_check_pages_can_be_written_and_end_in_a_decision() {
    for case in cases() {
        let sheets = case.sheets();
        for sheet in &sheets {
            png(sheet, Ppi(96), &mut Scratch::default()).unwrap();
            let words = words_of(&sheet.nodes);
            if ["glasses-check", "ghost-check"].contains(&sheet.id.as_str()) {
                assert!(["Go", "Fix", "Ask"].iter().all(|word| words.contains(word)), "{words}");
            }
        }
        let bytes = pdf(&about(), &sheets).unwrap();
        assert!(bytes.starts_with(b"%PDF-1.7"));
    }
}

/// What the page prints is what the report says, for each eye and number.
#[test]
fn the_printed_table_is_the_reported_one() {
    for case in cases() {
        let laid = layout::lay_out(&case.book()).unwrap();
        let page = laid.sheets.iter().find(|sheet| sheet.id == "ghost-check").unwrap();
        let words = words_of(&page.nodes);
        for (eye, name) in [(Eye::Left, "Left eye, %"), (Eye::Right, "Right eye, %")] {
            let row: Vec<String> =
                laid.ghost.iter().filter(|patch| patch.eye == eye).map(|patch| plain(patch.leak * 100.0, 1)).collect();
            assert!(10 <= row.len());
            let printed = format!("{name} {}", row.join(" "));
            assert!(words.contains(&printed), "{}: `{printed}` in `{words}`", case.name());
        }
        assert!(swatch::lay_out(&case.book()).unwrap().ghost.is_empty());
    }
}

fn about() -> PdfBook {
    PdfBook {
        title: "Quay".to_owned(),
        author: None,
        subject: "Check pages".to_owned(),
        keywords: Vec::new(),
        language: "en".to_owned(),
        date: (2026, 5, 4),
        id: "quay 1.0.0".to_owned(),
        process: None,
    }
}

#[test]
#[ignore = "writes files to look at by hand"]
fn samples() {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("check-pages");
    std::fs::create_dir_all(&folder).unwrap();
    for case in cases() {
        let sheets = case.sheets();
        std::fs::write(folder.join(format!("{}.pdf", case.name())), pdf(&about(), &sheets).unwrap()).unwrap();
        for sheet in &sheets {
            let bytes = png(sheet, Ppi(110), &mut Scratch::default()).unwrap();
            std::fs::write(folder.join(format!("{}-{}.png", case.name(), sheet.id)), bytes).unwrap();
        }
    }
}
