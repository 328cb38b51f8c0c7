//! The parts of a book that are words, and its check pages: in every page format, size of text and language, and in one
//! that is two letters in five longer, nothing overlaps, nothing leaves the page, and nothing is lost.

use depthpress::bundle::inked::Inked;
use depthpress::language::{Language, Tongue};
use depthpress::layout::grid::Grid;
use depthpress::layout::sheet::{Node, Role, Sheet, words};
use depthpress::layout::{self, Book, BookPage, LaidOut};
use depthpress::render::png::{Scratch, png};
use depthpress::spec::{Answers, Back, Front, Licence, PageFormat, Release, TextSize};
use depthpress::units::Ppi;
use kurbo::{Rect, Shape};

use crate::answers::{Set, apart, area, fills, runs, within};

const FORMATS: [PageFormat; 3] = [PageFormat::A4, PageFormat::Letter, PageFormat::Wide];
const SIZES: [TextSize; 2] = [TextSize::Standard, TextSize::Large];
const FRONT: [Front; 7] = [
    Front::Audience,
    Front::Cautions,
    Front::HowToUse,
    Front::Needs,
    Front::GlassesCheck,
    Front::GhostCheck,
    Front::ScaleCheck,
];
const BACK: [Back; 4] = [Back::Glossary, Back::Sources, Back::Licence, Back::Versions];

/// A set with these parts and no exercises.
fn set(format: PageFormat, text: TextSize, front: &[Front], back: &[Back]) -> Set {
    let mut set = Set::new(format, Answers::None, &[]);
    let spec = &mut set.spec;
    (spec.front, spec.back) = (front.to_vec(), back.to_vec());
    spec.author = Some("Ida Holm".to_owned());
    spec.contact = Some("errata@slipway.example".to_owned());
    spec.licence = Some(Licence {
        name: "CC BY-NC 4.0".to_owned(),
        text: Some("You may print the book as often as you like and give it away, with its name on it.".to_owned()),
        credits: vec!["Drawings: Ida Holm.".to_owned(), "Reading: the harbour choir.".to_owned()],
    });
    let release = |version: &str, date: &str, changes: usize| Release {
        version: version.to_owned(),
        date: date.to_owned(),
        changes: (1..=changes).map(|n| format!("Page {n} asks for a ring where it had asked for a disc.")).collect(),
    };
    spec.releases =
        vec![release("1.2.0", "2026-05-04", 3), release("1.1.0", "2026-01-04", 9), release("1.0.0", "2025-05-04", 1)];
    spec.editions[0].text = text;
    set
}

fn lay_out(set: &Set, tongue: &'static Tongue) -> LaidOut {
    let edition = &set.spec.editions[0];
    let Inked { plan, views } = &Inked::of(edition);
    let book = Book { set: &set.spec, edition, plan, views, pages: &[], tongue };
    layout::lay_out(&book).unwrap_or_else(|problems| panic!("{} {:?}: {problems:?}", edition.page.name(), edition.text))
}

/// Every format and size with a tongue.
fn every_edition(tongue: &'static Tongue) -> Vec<(String, PageFormat, LaidOut)> {
    let editions = FORMATS.into_iter().flat_map(|format| SIZES.map(|text| (format, text)));
    let laid = |(format, text): (PageFormat, TextSize)| {
        let name = format!("{}-{}", format.name().replace(':', "x"), text.name());
        (name, format, lay_out(&set(format, text, &FRONT, &BACK), tongue))
    };
    editions.map(laid).collect()
}

fn tongues() -> Vec<(&'static str, &'static Tongue)> {
    let known = Language::ALL.map(|language| (language.tag(), Tongue::of(language)));
    known.into_iter().chain([("stretched", Tongue::stretched())]).collect()
}

/// The areas of patches, and of what is drawn for the eyes.
fn drawn(nodes: &[Node], areas: &mut Vec<Rect>) {
    for node in nodes {
        match node {
            Node::Group(_, inner) => drawn(inner, areas),
            Node::Patch(patch) => areas.push(patch.path.bounding_box()),
            Node::Art(art) => {
                areas.extend([&art.left, &art.right, &art.flat].into_iter().flatten().map(Shape::bounding_box));
            }
            Node::Text(_) | Node::Fill(_) => {}
        }
    }
}

fn check(sheet: &Sheet, format: PageFormat, name: &str) {
    let safe = Grid::of(format).safe;
    let told = |what: &str| format!("{name} {}: `{what}`", sheet.id);
    let (mut boxes, mut pictures) = (Vec::new(), Vec::new());
    fills(&sheet.nodes, &mut boxes);
    drawn(&sheet.nodes, &mut pictures);
    for area in boxes.iter().chain(&pictures) {
        assert!(within(*area, safe), "{} {area:?}", told("a picture"));
    }
    let runs: Vec<_> = runs(sheet).into_iter().filter(|run| !run.text.trim().is_empty()).collect();
    for (index, run) in runs.iter().enumerate() {
        assert!(within(area(run), safe), "{} leaves the page", told(&run.text));
        // Braces are variables without a value, but in the line that goes into a spec.
        assert!(run.text.starts_with("leak = ") || !run.text.contains(['{', '}']), "{}", told(&run.text));
        for other in &runs[index + 1..] {
            assert!(apart(area(run), area(other)), "{} meets `{}`", told(&run.text), other.text);
        }
        for picture in &pictures {
            assert!(apart(area(run), *picture), "{} stands on a picture", told(&run.text));
        }
    }
}

#[test]
fn nothing_overlaps_or_leaves_the_page_in_any_edition() {
    for (tag, tongue) in tongues() {
        for (name, format, laid) in every_edition(tongue) {
            for sheet in &laid.sheets {
                check(sheet, format, &format!("{tag} {name}"));
            }
        }
    }
}

/// The sheets of a part, in their order.
fn part<'a>(laid: &'a LaidOut, id: &str) -> Vec<&'a Sheet> {
    let stem = |sheet: &Sheet| sheet.id.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end_matches('-').to_owned();
    laid.sheets.iter().filter(|sheet| stem(sheet) == id).collect()
}

#[test]
fn parts_stand_in_the_order_of_the_set() {
    for (name, _, laid) in every_edition(Tongue::of(Language::En)) {
        let ids = ["audience", "cautions", "how-to-use", "needs", "glasses-check", "ghost-check", "scale-check"];
        let ids = ids.into_iter().chain(["glossary", "sources", "licence", "versions"]);
        let mut next = 1;
        for id in ids {
            let sheets = part(&laid, id);
            assert!(!sheets.is_empty(), "{name}: {id}");
            for (sheet, index) in sheets.into_iter().zip(1..) {
                assert_eq!(sheet.number, next, "{name}: {id}");
                assert_eq!(sheet.id, if index == 1 { id.to_owned() } else { format!("{id}-{index}") });
                assert!(layout::parts::is_own(&sheet.id));
                next += 1;
            }
        }
        assert_eq!(laid.sheets.len() as u32 + 1, next);
    }
}

fn words_of(laid: &LaidOut, id: &str) -> String {
    part(laid, id).iter().map(|sheet| words(&sheet.nodes)).collect::<Vec<_>>().join(" ")
}

/// In every size of text every sentence is there.
#[test]
fn large_print_says_what_standard_print_says() {
    for format in FORMATS {
        let tongue = Tongue::of(Language::En);
        let [standard, large] = SIZES.map(|text| lay_out(&set(format, text, &FRONT, &BACK), tongue));
        for id in ["audience", "cautions", "how-to-use", "needs", "glasses-check", "ghost-check", "scale-check"] {
            let sorted = |laid: &LaidOut| {
                let sheets = part(laid, id);
                // Titles and footers come again on every sheet.
                let body = |sheet: &&Sheet| words(&sheet.nodes[1..sheet.nodes.len() - 1]);
                let all = sheets.iter().map(body).collect::<Vec<_>>().join(" ");
                let mut words: Vec<String> = all.split_whitespace().map(str::to_owned).collect();
                words.sort();
                words
            };
            assert_eq!(sorted(&standard), sorted(&large), "{} {id}", format.name());
        }
    }
}

#[test]
fn checks_end_in_a_decision_with_steps_to_mend() {
    for (name, _, laid) in every_edition(Tongue::of(Language::En)) {
        for id in ["glasses-check", "ghost-check", "scale-check"] {
            let words = words_of(&laid, id);
            let at = |word: &str| words.find(&format!(" {word} ")).unwrap_or_else(|| panic!("{name} {id}: no {word}"));
            assert!(at("Go") < at("Fix") && at("Fix") < at("Ask"), "{name} {id}");
            let mend = &words[at("Fix")..at("Ask")];
            assert!(mend.contains("1.") && mend.contains("2."), "{name} {id}: {mend}");
        }
    }
}

#[test]
fn licence_and_versions_say_what_the_author_wrote() {
    for (_, _, laid) in every_edition(Tongue::of(Language::De)) {
        let licence = words_of(&laid, "licence");
        for said in [
            "CC BY-NC 4.0",
            "with its name on it.",
            "the harbour choir",
            "SIL Open Font License 1.1",
            "errata@slipway.example",
        ] {
            assert!(licence.contains(said), "{said} in {licence}");
        }
        let versions = words_of(&laid, "versions");
        let at = |version: &str| versions.find(&format!("Version {version} ·")).unwrap();
        assert!(at("1.2.0") < at("1.1.0") && at("1.1.0") < at("1.0.0"));
        assert_eq!(versions.matches("asks for a ring").count(), 13);
    }
}

/// The words of a glossary stand in the order of the alphabet, in bold.
#[test]
fn the_glossary_is_in_order_in_every_language() {
    for language in Language::ALL {
        let laid = lay_out(&set(PageFormat::A4, TextSize::Standard, &FRONT, &BACK), Tongue::of(language));
        let mut first = Vec::new();
        for sheet in part(&laid, "glossary") {
            let paragraphs = sheet.nodes.iter().filter_map(|node| match node {
                Node::Group(Role::Paragraph, inner) => Some(words(inner)),
                _ => None,
            });
            first.extend(paragraphs.filter(|words| words.contains(':')).map(|words| words.to_lowercase()));
        }
        assert!(25 <= first.len(), "{}: {}", language.tag(), first.len());
        let unaccented =
            |words: &str| words.replace(['ä', 'á'], "a").replace(['é', 'è'], "e").replace('ú', "u").replace('ñ', "n");
        assert!(first.windows(2).all(|pair| unaccented(&pair[0]) < unaccented(&pair[1])), "{first:?}");
    }
}

#[test]
#[ignore = "writes files to look at by hand"]
fn samples() {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts");
    std::fs::create_dir_all(&folder).unwrap();
    for language in [Language::En, Language::De] {
        let maps = FORMATS.into_iter().flat_map(|format| SIZES.map(|text| (format, text))).map(|(format, text)| {
            let name = format!("{}-{}", format.name().replace(':', "x"), text.name());
            (name, format, mapped(format, text, Tongue::of(language), 40).1)
        });
        let mut all = every_edition(Tongue::of(language));
        all.extend(maps.map(|(name, format, laid)| {
            let sheets = laid.sheets.into_iter().filter(|sheet| sheet.id.starts_with("map")).collect();
            (name, format, LaidOut { sheets, ..laid })
        }));
        for (name, _, laid) in all {
            for sheet in &laid.sheets {
                let bytes = png(sheet, Ppi(72), &mut Scratch::default()).unwrap();
                std::fs::write(folder.join(format!("{}-{name}-{}.png", language.tag(), sheet.id)), bytes).unwrap();
            }
        }
    }
}

/// A book with its map, of so many pages.
fn mapped(format: PageFormat, text: TextSize, tongue: &'static Tongue, pages: usize) -> (Set, LaidOut) {
    let front = [&[Front::Cover, Front::Contents], &FRONT[..], &[Front::Map]].concat();
    let mut set = set(format, text, &front, &BACK);
    let asking = Set::new(format, Answers::None, &vec![(4, 0); pages]);
    set.pages = asking.pages;
    let edition = &set.spec.editions[0];
    let Inked { plan, views } = &Inked::of(edition);
    let strands = ["check", "toward", "away", "jump", "smooth", "depth"];
    let own: Vec<_> = set
        .pages
        .iter()
        .zip(0_u32..)
        .map(|(own, index)| {
            let strand = strands[(index as usize * 5 / pages.max(1)).min(5)];
            BookPage { page: &own.page, solved: &own.features, strand, grade: Some(index % 10 + 1) }
        })
        .collect();
    let book = Book { set: &set.spec, edition, plan, views, pages: &own, tongue };
    let laid = layout::lay_out(&book).unwrap_or_else(|problems| panic!("{} {text:?}: {problems:?}", format.name()));
    (set, laid)
}

/// Every link of some content: where it leads to, and its words.
fn links(nodes: &[Node], found: &mut Vec<(String, String)>) {
    for node in nodes {
        match node {
            Node::Group(Role::Link { target, .. }, inner) => found.push((target.clone(), words(inner))),
            Node::Group(_, inner) => links(inner, found),
            _ => {}
        }
    }
}

/// Every exercise page stands on the map once, with its own number, as a link; in any edition nothing overlaps.
#[test]
fn the_map_shows_every_page_with_its_number() {
    for format in FORMATS {
        for (text, tongue, pages) in [
            (TextSize::Standard, Tongue::of(Language::De), 120),
            (TextSize::Large, Tongue::of(Language::Fr), 30),
            (TextSize::Large, Tongue::stretched(), 7),
        ] {
            let (set, laid) = mapped(format, text, tongue, pages);
            let map = part(&laid, "map");
            let mut found = Vec::new();
            for sheet in &map {
                check(sheet, format, &format!("{} {text:?}", format.name()));
                links(&sheet.nodes, &mut found);
            }
            let targets: Vec<&str> = found.iter().map(|(target, _)| target.as_str()).collect();
            let own: Vec<&str> = set.pages.iter().map(|page| page.page.id.as_str()).collect();
            assert_eq!(targets, own);
            for (target, words) in &found {
                let sheet = laid.sheets.iter().find(|sheet| sheet.id == *target).unwrap();
                assert_eq!(words.split_whitespace().next(), Some(sheet.number.to_string().as_str()), "{target}");
            }
        }
    }
}

/// The contents list what comes after them, and a book may do without.
#[test]
fn a_book_may_have_its_cautions_before_its_contents_or_no_contents_at_all() {
    let order = |front: &[Front]| {
        let mut own = set(PageFormat::A4, TextSize::Standard, front, &BACK);
        own.pages = Set::new(PageFormat::A4, Answers::None, &[(4, 0); 3]).pages;
        let laid = own.lay_out();
        for (sheet, number) in laid.sheets.iter().zip(1..) {
            assert_eq!(sheet.number, number);
        }
        let asks = &own.pages[0].page.id;
        let number = laid.sheets.iter().find(|sheet| sheet.id == *asks).unwrap().number;
        (words_of(&laid, "contents"), laid.sheets.iter().map(|sheet| sheet.id.clone()).collect::<Vec<_>>(), number)
    };
    let checks = [Front::GlassesCheck, Front::GhostCheck, Front::ScaleCheck];
    let (contents, ids, number) =
        order(&[&[Front::Cover, Front::Cautions, Front::Contents], &checks[..], &[Front::Map]].concat());
    assert_eq!(ids[..7], ["cover", "cautions", "contents", "glasses-check", "ghost-check", "scale-check", "map"]);
    assert!(contents.contains("Check your glasses 4") && !contents.contains("Please read this first"), "{contents}");
    assert!(contents.contains("Sea birds") && number == 8, "{contents}");
    let (contents, ids, number) = order(&[&[Front::Cautions], &checks[..]].concat());
    assert!(contents.is_empty() && ids[0] == "cautions" && number == 5, "{ids:?}");
}
