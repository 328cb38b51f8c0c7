//! Pages that ask something, from hand-made questions: boxes, answer key and files of answers, in every page format.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::prepare::{Book, SolvedPage};
use depthpress::colour::{Filter, Glasses, Ground};
use depthpress::diagnostics::{FileId, Place};
use depthpress::exercise::Page;
use depthpress::exercise::quiz::{Pass, Question, Quiz};
use depthpress::exercise::words::{Words, one_part};
use depthpress::language::{Language, Tongue};
use depthpress::layout::LaidOut;
use depthpress::layout::grid::Grid;
use depthpress::layout::sheet::{Node, Role, Sheet, TextRun, words as words_of};
use depthpress::optics::Viewer;
use depthpress::render::pdf::{PdfBook, pdf};
use depthpress::render::png::{Scratch, png};
use depthpress::render::svg::svg;
use depthpress::scene::{At, Companions, Depth, Eyes, Feature, Form, Scaling, Scene, Shape, Side, Size};
use depthpress::solve::solve;
use depthpress::spec::{Answers, Colours, Edition, Formats, Front, Hand, PageFormat, SetSpec, TextSize};
use depthpress::units::{Mm, Ppi};
use kurbo::{Rect, Shape as _};

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));
const FORMATS: [PageFormat; 3] = [PageFormat::A4, PageFormat::Letter, PageFormat::Wide];

/// Answers of each length that kinds have: letters, words, orders, dealt words, rows of words.
const STYLES: [&[&str]; 5] = [
    &["A", "B", "C", "D", "E"],
    &["near", "far"],
    &["C A B", "B C A", "A B C"],
    &["harbour", "lantern", "mooring", "rope", "breakwater"],
    &["grey gulls over the quay", "three lamps by the slip", "a boat comes home at dusk"],
];

/// Every number of questions with every length of answer, laid out on every page format with a turned key.
fn every_format() -> &'static [(Set, LaidOut)] {
    static ALL: LazyLock<Vec<(Set, LaidOut)>> = LazyLock::new(|| {
        let set = |format| Set::new(format, Answers::Turned, &every_size());
        FORMATS.map(set).into_iter().map(|set| (set.lay_out(), set)).map(|(laid, set)| (set, laid)).collect()
    });
    &ALL
}

/// A set in memory.
pub struct Set {
    pub spec: SetSpec,
    pub pages: Vec<SolvedPage>,
}

impl Set {
    /// Pages with so many questions each, in two variants a level; every answer is one of a style.
    pub fn new(page: PageFormat, answers: Answers, pages: &[(usize, usize)]) -> Self {
        let edition = Edition {
            id: "dusk".to_owned(),
            page,
            ground: Ground::White,
            glasses: Glasses::ideal(Filter::Cyan, Filter::Red),
            colour: Colours::default(),
            ppi: Ppi(72),
            formats: Formats { pdf: true, svg: true, png: true },
            answers,
            language: Language::En,
            text: TextSize::Standard,
            hand: Hand::Right,
            gated: true,
            place: Place::start_of(FileId(0)),
        };
        let spec = SetSpec {
            known: depthpress::spec::viewer::Known::default(),
            reader: None,
            id: "slipway".to_owned(),
            title: "Slipway".to_owned(),
            summary: None,
            author: None,
            version: "1.2.0".to_owned(),
            date: "2026-05-04".to_owned(),
            language: Language::En,
            free_order: false,
            viewer: VIEWER,
            gate: None,
            plan: None,
            licence: None,
            releases: Vec::new(),
            contact: None,
            front: Front::USUAL.to_vec(),
            back: Vec::new(),
            publish: depthpress::spec::Publish::default(),
            editions: vec![edition],
        };
        let pages = pages.iter().zip(0..).map(|(&(count, style), index)| asking(index, count, STYLES[style]));
        Self { spec, pages: pages.collect() }
    }

    pub fn book(&self) -> Book<'_> {
        Book { set: &self.spec, pages: &self.pages, others: &[], defaults: &[] }
    }

    pub fn lay_out(&self) -> LaidOut {
        let edition = &self.spec.editions[0];
        let laid = self.book().lay_out(edition, &Inked::of(edition));
        laid.unwrap_or_else(|problems| panic!("{problems:?}"))
    }
}

fn quiz(count: usize, choices: &[&str]) -> Quiz {
    let choices: Vec<String> = choices.iter().map(|&choice| choice.to_owned()).collect();
    let question = |number: usize| Question {
        id: number.to_string(),
        choices: choices.clone(),
        answer: choices[(number * 7 + count) % choices.len()].clone(),
        features: vec![format!("{number}-shape")],
    };
    let of = count as u32;
    Quiz { questions: (1..=count).map(question).collect(), pass: Some(Pass { right: of - 1, of, luck: 0.003_174 }) }
}

/// A page with two rings; its words are as long as those of the longest kinds.
fn asking(index: u32, count: usize, choices: &[&str]) -> SolvedPage {
    let feature = |id: &str, x: f64, side| Feature {
        id: id.to_owned(),
        role: depthpress::scene::Role::Target,
        eyes: Eyes::Both,
        form: Form::Shape {
            shape: Shape::Ring,
            at: At { x: Mm(x), y: Mm(0.0) },
            size: Size::Length(Mm(30.0)),
            weight: Mm(2.0),
            depth: Depth::Parallax(Mm(6.0), side),
        },
        scaling: Scaling::ConstantAngle,
        companions: Companions { watch: true, ..Companions::default() },
        solid: false,
        place: None,
    };
    let scene = Scene { features: vec![feature("tern", -40.0, Side::Toward), feature("heron", 40.0, Side::Away)] };
    let features = solve(&scene, &VIEWER).unwrap();
    let words = Words {
        goal: "Find out which shape stands nearer to you, and trust what you see.".to_owned(),
        setup: String::new(),
        steps: vec![
            "Look softly at the first row until each shape is single.".to_owned(),
            "For each number, ask yourself which one stands out. Write your answer into its box.".to_owned(),
            "Do not guess for long: ten seconds for each is enough.".to_owned(),
            "Look far away for half a minute, then look at the key.".to_owned(),
        ],
        see: "Single shapes, some before the page and some behind it.".to_owned(),
        one_part: one_part(true, Tongue::of(Language::En)),
    };
    let (level, letter) = (index / 2 % 4 + 1, if index.is_multiple_of(2) { 'a' } else { 'b' });
    let page = Page {
        id: format!("sea-birds-{}-{letter}", index / 2 + 1),
        kind: "side",
        title: "Sea birds".to_owned(),
        level,
        levels: 4,
        variant: Some(letter),
        seed: Some(7),
        quiz: Some(quiz(count, choices)),
        readings: None,
        gated: false,
        strand: depthpress::scene::Strand::Depth,
        effort: depthpress::scene::Effort::default(),
        scene,
        words,
        time: 120,
        balance: None,
        place: Place::start_of(FileId(0)),
    };
    SolvedPage::graded(page, features, &VIEWER)
}

fn every_run<'a>(nodes: &'a [Node], runs: &mut Vec<&'a TextRun>) {
    for node in nodes {
        match node {
            Node::Group(_, inner) => every_run(inner, runs),
            Node::Text(run) => runs.push(run),
            Node::Fill(_) | Node::Patch(_) | Node::Art(_) => {}
        }
    }
}

pub fn runs(sheet: &Sheet) -> Vec<&TextRun> {
    let mut runs = Vec::new();
    every_run(&sheet.nodes, &mut runs);
    runs
}

pub fn fills(nodes: &[Node], areas: &mut Vec<Rect>) {
    for node in nodes {
        match node {
            Node::Group(_, inner) => fills(inner, areas),
            Node::Fill(fill) => areas.push(fill.path.bounding_box()),
            Node::Text(_) | Node::Patch(_) | Node::Art(_) => {}
        }
    }
}

/// The area of a run from the top of its capitals to the foot of its descenders, a little less on all sides.
pub fn area(run: &TextRun) -> Rect {
    let seen = run.text.trim_end().len();
    let width: f64 = run.glyphs.iter().filter(|glyph| glyph.range.start < seen).map(|glyph| glyph.advance).sum();
    let turn = if run.turned { -1.0 } else { 1.0 };
    let (top, foot) = (run.origin.y - turn * 0.72 * run.size, run.origin.y + turn * 0.22 * run.size);
    Rect::from_points((run.origin.x, top), (run.origin.x + turn * width, foot)).inset(-0.1)
}

pub fn apart(a: Rect, b: Rect) -> bool {
    a.x1 <= b.x0 || b.x1 <= a.x0 || a.y1 <= b.y0 || b.y1 <= a.y0
}

pub fn within(inner: Rect, outer: Rect) -> bool {
    let outer = outer.inflate(0.3, 0.3);
    outer.union(inner) == outer
}

fn key(laid: &LaidOut) -> Vec<&Sheet> {
    laid.sheets.iter().filter(|sheet| sheet.id.starts_with("answers")).collect()
}

/// Every number of questions with every length of answer, as many pages as that makes.
fn every_size() -> Vec<(usize, usize)> {
    (2..=16).flat_map(|count| (0..STYLES.len()).map(move |style| (count, style))).collect()
}

#[test]
fn words_keep_apart_and_on_the_page_for_every_number_of_questions() {
    for (set, laid) in every_format() {
        let format = set.spec.editions[0].page;
        let safe = Grid::of(format).safe;
        let asked =
            laid.sheets.iter().filter(|sheet| sheet.id.starts_with("sea-birds") || sheet.id.starts_with("answers"));
        for sheet in asked {
            let told = |text: &str| format!("{} {}: `{text}`", format.name(), sheet.id);
            let mut areas: Vec<Rect> = Vec::new();
            fills(&sheet.nodes, &mut areas);
            areas.iter().for_each(|area| assert!(within(*area, safe), "{} {area:?}", told("a box")));
            let runs: Vec<_> = runs(sheet).into_iter().filter(|run| !run.text.trim().is_empty()).collect();
            for (index, run) in runs.iter().enumerate() {
                assert!(within(area(run), safe), "{} leaves the page", told(&run.text));
                for other in &runs[index + 1..] {
                    assert!(apart(area(run), area(other)), "{} meets `{}`", told(&run.text), other.text);
                }
            }
        }
    }
}

/// On paper each question has its box with its id, or the page sends the reader to the log; a screen page always does.
#[test]
fn every_question_has_its_box_on_paper() {
    for (format, boxes) in [(PageFormat::A4, true), (PageFormat::Letter, true), (PageFormat::Wide, false)] {
        let mut set = Set::new(format, Answers::None, &every_size());
        for page in &mut set.pages {
            page.page.words.steps.truncate(2);
            page.page.words.one_part = one_part(false, Tongue::of(Language::En));
        }
        let laid = set.lay_out();
        let asked = laid.sheets.iter().filter(|sheet| sheet.id.starts_with("sea-birds"));
        for (sheet, (count, style)) in asked.zip(every_size()) {
            let words = words_of(&sheet.nodes);
            let line = format!("your answers 1 to {count}");
            let ids: Vec<String> = (1..=count).map(|id| id.to_string()).collect();
            let labels = format!("Date Comfort 0–10 {}", ids.join(" "));
            // Beside words as few as these there is room for two rows: of six boxes for words, of two for rows of words.
            let has_boxes = boxes && count <= [16, 16, 16, 12, 4][style];
            assert_eq!(words.contains(&labels), has_boxes, "{} {count} {style}: {words}", format.name());
            assert_eq!(words.contains(&line), !has_boxes, "{} {count} {style}: {words}", format.name());
        }
    }
}

/// What the key tells is what was drawn: id and answer of every question, title, level, variant, page and pass mark.
#[test]
fn the_key_holds_every_answer() {
    for (set, laid) in every_format() {
        let words: Vec<String> = key(laid).iter().map(|sheet| words_of(&sheet.nodes)).collect();
        assert!(1 < words.len());
        let all = words.join(" ");
        for solved in &set.pages {
            let page = &solved.page;
            let number = laid.sheets.iter().find(|sheet| sheet.id == page.id).unwrap().number;
            let quiz = page.quiz.as_ref().unwrap();
            let pass = quiz.pass.unwrap();
            let head = format!("{} · {} of {} or more: more than luck", page.id, pass.right, pass.of);
            let (_, entry) = all.split_once(&head).unwrap_or_else(|| panic!("`{head}` in {all}"));
            let (entry, _) = entry.split_once("page ").unwrap();
            assert!(all.contains(&format!("{} {head}", page.full_title())));
            let told: Vec<&str> = entry.split_whitespace().collect();
            let mut wanted: Vec<&str> = Vec::new();
            for question in &quiz.questions {
                wanted.push(&question.id);
                wanted.extend(question.answer.split(' '));
            }
            // Strips tell questions first, then answers: the same words in another order.
            assert_eq!(sorted(&told), sorted(&wanted), "{}", page.id);
            assert!(all.contains(&format!("{entry}page {number}")), "{}: page {number}", page.id);
        }
    }
}

fn sorted<'a>(words: &[&'a str]) -> Vec<&'a str> {
    let mut words = words.to_vec();
    words.sort_unstable();
    words
}

/// Each answer stands under its question, whichever way up the sheet is.
#[test]
fn answers_stand_under_their_questions() {
    for answers in [Answers::Turned, Answers::File] {
        let set = Set::new(PageFormat::A4, answers, &[(10, 1)]);
        let laid = set.lay_out();
        let sheet = laid.sheets.iter().chain(&laid.answers).find(|sheet| sheet.id == "answers").unwrap();
        let turn = if answers == Answers::Turned { -1.0 } else { 1.0 };
        let runs = runs(sheet);
        for question in &set.pages[0].page.quiz.as_ref().unwrap().questions {
            let id = runs.iter().find(|run| *run.text == question.id).unwrap();
            let under = |run: &&&TextRun| {
                let below = (run.origin.y - id.origin.y) * turn;
                *run.text == question.answer && (run.origin.x - id.origin.x).abs() < 1e-6 && 0.0 < below && below < 8.0
            };
            assert_eq!(runs.iter().filter(under).count(), 1, "{}", question.id);
        }
    }
}

#[test]
fn the_words_of_a_turned_key_stand_on_their_heads_and_its_furniture_does_not() {
    let (_, laid) = &every_format()[1];
    for sheet in key(laid) {
        let upright: Vec<&str> = runs(sheet).iter().filter(|run| !run.turned).map(|run| run.text.trim_end()).collect();
        let number = sheet.number.to_string();
        assert_eq!(upright.first(), Some(&"Answers: turn the page round."));
        assert_eq!(upright.last(), Some(&number.as_str()));
        assert_eq!(upright.len(), 3, "{upright:?}");
        assert!(runs(sheet).iter().any(|run| run.turned));
    }
    assert!(laid.answers.is_empty());
}

#[test]
fn no_page_names_a_key_that_is_not_there() {
    for (place, told) in [(Answers::Turned, true), (Answers::File, false), (Answers::None, false)] {
        for format in FORMATS {
            let laid = Set::new(format, place, &[(10, 0), (12, 1)]).lay_out();
            let ids: BTreeSet<&str> = laid.sheets.iter().map(|sheet| sheet.id.as_str()).collect();
            assert_eq!(ids.contains("answers"), told);
            assert_eq!(laid.answers.len(), usize::from(place == Answers::File));
            for sheet in laid.sheets.iter().chain(&laid.answers) {
                every_link(&sheet.nodes, &mut |target| assert!(ids.contains(target), "{}: {target}", sheet.id));
            }
            let page = laid.sheets.iter().find(|sheet| sheet.id == "sea-birds-1-a").unwrap();
            let words = words_of(&page.nodes);
            let number = laid.sheets.iter().find(|sheet| sheet.id == "answers").map_or(0, |sheet| sheet.number);
            match place {
                Answers::Turned => assert!(words.contains(&format!("Answers: page {number}")), "{words}"),
                Answers::File => assert!(words.contains("Answers: a file apart"), "{words}"),
                Answers::None => assert!(!words.contains("nswers:"), "{words}"),
            }
        }
    }
}

fn every_link(nodes: &[Node], told: &mut impl FnMut(&str)) {
    for node in nodes {
        let Node::Group(role, inner) = node else { continue };
        if let Role::Link { target, .. } = role {
            told(target);
        }
        every_link(inner, told);
    }
}

/// A set that asks nothing has no key, whatever it says of one.
#[test]
fn pages_that_ask_nothing_make_no_key() {
    for place in [Answers::Turned, Answers::File, Answers::None] {
        let mut set = Set::new(PageFormat::A4, place, &[(10, 0)]);
        set.pages[0].page.quiz = None;
        let laid = set.lay_out();
        assert!(key(&laid).is_empty() && laid.answers.is_empty());
        assert!(laid.sheets.iter().all(|sheet| !words_of(&sheet.nodes).contains("Answers")));
    }
}

/// A page that asks says what it asks and which range its depths have, and nothing of where each feature stands.
#[test]
fn captions_and_descriptions_give_no_answer_away() {
    let laid = Set::new(PageFormat::A4, Answers::Turned, &[(10, 1)]).lay_out();
    let page = laid.sheets.iter().find(|sheet| sheet.id == "sea-birds-1-a").unwrap();
    let told = format!("{} {}", page.description, words_of(&page.nodes));
    assert!(page.description.contains("10 questions") && page.description.contains("near, far"), "{told}");
    assert!(page.description.contains("key at the end of the book"), "{told}");
    assert!(told.contains("Depths: from 1.5 pd toward to 1.5 pd away."), "{told}");
    for name in ["tern", "heron", "ring"] {
        assert!(!told.contains(name), "{name} in {told}");
    }
    assert!(told.contains("level 1 of 4 · A"));
    assert_eq!(page.title, "Sea birds, level 1 · A");
    assert!(runs(page).iter().any(|run| run.text.ends_with("2026-05-04 · seed 7")));
}

fn about() -> PdfBook {
    PdfBook {
        title: "Slipway".to_owned(),
        author: None,
        subject: "Answers".to_owned(),
        keywords: Vec::new(),
        language: "en".to_owned(),
        date: (2026, 5, 4),
        id: "slipway".to_owned(),
        process: None,
    }
}

#[test]
#[ignore = "writes files to look at by hand"]
fn samples() {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("answers");
    std::fs::create_dir_all(&folder).unwrap();
    let some = [(12, 1), (10, 0), (16, 0), (8, 2), (12, 3), (5, 4), (16, 3), (2, 1), (9, 2), (14, 1)];
    let many: Vec<_> = some.iter().cycle().take(30).copied().collect();
    for format in FORMATS {
        let laid = Set::new(format, Answers::Turned, &many).lay_out();
        let name = format.name().replace(':', "x");
        std::fs::write(folder.join(format!("{name}.pdf")), pdf(&about(), &laid.sheets).unwrap()).unwrap();
        let shown = |sheet: &&Sheet| sheet.id.starts_with("answers") || sheet.number < 30;
        for sheet in laid.sheets.iter().filter(shown) {
            let bytes = png(sheet, Ppi(90), &mut Scratch::default()).unwrap();
            std::fs::write(folder.join(format!("{name}-{}.png", sheet.id)), bytes).unwrap();
            std::fs::write(folder.join(format!("{name}-{}.svg", sheet.id)), svg(sheet)).unwrap();
        }
    }
}
