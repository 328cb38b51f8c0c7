//! The parts at the end of a book: plan, log and the sheets for a professional, for small and large books in every page
//! format.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use depthpress::bundle::extent::Extent;
use depthpress::bundle::inked::Inked;
use depthpress::bundle::report::report;
use depthpress::diagnostics::{FileId, Place};
use depthpress::exercise::balance::Balance;
use depthpress::layout::LaidOut;
use depthpress::layout::grid::Grid;
use depthpress::layout::parts::footer;
use depthpress::layout::sheet::{Node, Role, Sheet, words};
use depthpress::optics::reserves::{Norms, Phoria, Reserve};
use depthpress::plan::Practice;
use depthpress::scene::Eye;
use depthpress::spec::read::Placed;
use depthpress::spec::viewer::Known;
use depthpress::spec::{Answers, Back, PageFormat};
use depthpress::units::{Mm, PrismDioptre};
use kurbo::Rect;

use crate::answers::{Set, apart, area, fills, runs, within};

const FORMATS: [PageFormat; 3] = [PageFormat::A4, PageFormat::Letter, PageFormat::Wide];
/// 8.5 pt in mm: the smallest type of the book.
const SMALLEST: f64 = 8.5 * 25.4 / 72.0;

/// A set of so many pages with every part at its end.
fn planned(format: PageFormat, pages: usize, practice: Practice) -> Set {
    let mut set = Set::new(format, Answers::Turned, &vec![(10, 0); pages]);
    set.spec.plan = Some(Placed { value: practice, place: Place::start_of(FileId(0)) });
    set.spec.back = vec![Back::Plan, Back::Log, Back::Professional, Back::Words];
    set
}

const SHORT: Practice = Practice { weeks: 1, days: 2, minutes: 6, block: 60, rest: 20 };
const LONG: Practice = Practice { weeks: 26, days: 7, minutes: 20, block: 300, rest: 10 };

/// One page; and the most weeks and days with many pages, the longest names, a balance, and all that can be known.
fn books(format: PageFormat) -> [Set; 2] {
    let mut large = planned(format, 70, LONG);
    for (page, number) in large.pages.iter_mut().zip(1..) {
        // With places to break at, and with none that its column reaches.
        let name = if number % 2 == 0 { "old-names-of-harbour-pages" } else { "nnnnnnnnnnnnnnnnn" };
        page.page.id = format!("{name}-{number}");
        page.page.time = 40;
        page.page.gated = number % 7 == 0;
        page.page.effort.cue = Some(number % 4);
    }
    large.pages[3].page.balance = Some(Balance { stronger: Eye::Right, share: 0.605 });
    large.spec.gate = Some("Dr. Wilhelmina Fischer, harbour clinic".to_owned());
    let own =
        Reserve { blur: Some(PrismDioptre(17.25)), breaks: PrismDioptre(21.25), recovery: Some(PrismDioptre(11.25)) };
    large.spec.known = Known {
        norms: Some(Norms::MorganNear),
        toward: Some(own),
        away: None,
        phoria: Some(Phoria(PrismDioptre(2.5))),
        balance: Some((Eye::Right, 0.605)),
        near_point: Some(Mm(87.5)),
        base: Some(PrismDioptre(1.5)),
        base_vertical: Some(PrismDioptre(-0.5)),
        distance: Some(large.spec.viewer.distance),
        ipd: Some(large.spec.viewer.ipd),
        ipd_range: Some(large.spec.viewer.ipd_range),
        whole: Some(true),
    };
    large.spec.viewer = large.spec.known.viewer().unwrap();
    [planned(format, 1, SHORT), large]
}

/// The same laid out, in every format.
fn every_book() -> &'static [(PageFormat, Set, LaidOut)] {
    static ALL: LazyLock<Vec<(PageFormat, Set, LaidOut)>> = LazyLock::new(|| {
        let sets = FORMATS.into_iter().flat_map(|format| books(format).map(|set| (format, set)));
        sets.map(|(format, set)| (format, set.lay_out(), set)).map(|(format, laid, set)| (format, set, laid)).collect()
    });
    &ALL
}

fn stem(id: &str) -> &str {
    id.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end_matches('-')
}

/// The sheets of a part, in order.
fn part<'a>(laid: &'a LaidOut, id: &str) -> Vec<&'a Sheet> {
    laid.sheets.iter().filter(|sheet| sheet.id == id || stem(&sheet.id) == id).collect()
}

fn part_words(laid: &LaidOut, id: &str) -> String {
    part(laid, id).iter().map(|sheet| words(&sheet.nodes)).collect::<Vec<_>>().join(" ")
}

/// Every group of a sheet with a role that `keep` takes.
fn groups<'a>(nodes: &'a [Node], keep: &dyn Fn(&Role) -> bool, found: &mut Vec<(&'a Role, &'a [Node])>) {
    for node in nodes {
        if let Node::Group(role, inner) = node {
            if keep(role) {
                found.push((role, inner));
            }
            groups(inner, keep, found);
        }
    }
}

fn all<'a>(sheet: &'a Sheet, keep: &dyn Fn(&Role) -> bool) -> Vec<(&'a Role, &'a [Node])> {
    let mut found = Vec::new();
    groups(&sheet.nodes, keep, &mut found);
    found
}

#[test]
fn every_part_fits_on_every_page() {
    for (format, _, laid) in every_book() {
        let grid = Grid::of(*format);
        let body = Rect { y1: grid.safe.y1 - footer::HEIGHT, ..grid.safe };
        for sheet in ["plan", "log", "professional"].iter().flat_map(|id| part(laid, id)) {
            let told = |what: &str| format!("{} {}: {what}", format.name(), sheet.id);
            let content: Vec<Node> = sheet.nodes[..sheet.nodes.len() - 1].to_vec();
            let own = Sheet { nodes: content, ..sheet.clone() };
            let runs = runs(&own);
            for (index, run) in runs.iter().enumerate() {
                assert!(within(area(run), body), "{}", told(&run.text));
                assert!(SMALLEST - 1e-9 <= run.size, "{}", told(&run.text));
                for other in &runs[index + 1..] {
                    assert!(apart(area(run), area(other)), "{} over {}", told(&run.text), other.text);
                }
            }
            let mut areas = Vec::new();
            fills(&own.nodes, &mut areas);
            assert!(areas.iter().all(|area| within(*area, body.inflate(0.3, 0.3))), "{}", told("a rule"));
        }
    }
}

#[test]
fn parts_stand_between_the_exercises_and_the_key_and_in_the_contents() {
    for (_, set, laid) in every_book() {
        let mut order: Vec<&str> = Vec::new();
        for sheet in &laid.sheets {
            let is_exercise = set.pages.iter().any(|page| page.page.id == sheet.id);
            let name = if is_exercise { "exercise" } else { stem(&sheet.id) };
            if order.last() != Some(&name) {
                order.push(name);
            }
        }
        let back = order.iter().position(|name| *name == "exercise").unwrap();
        assert_eq!(order[back..], ["exercise", "plan", "log", "professional", "words", "answers"]);
        let contents = part_words(laid, "contents");
        for title in ["Your plan", "Your log", "For your eye-care professional", "Every exercise in words"] {
            assert!(contents.contains(title), "{title}");
        }
        // The key numbers its entries by the pages they are about.
        for (sheet, number) in laid.sheets.iter().zip(1..) {
            assert_eq!(sheet.number, number);
        }
        let key = part(laid, "answers")[0].number;
        let asks = laid.sheets.iter().find(|sheet| sheet.id == set.pages[0].page.id).unwrap();
        assert!(words(&asks.nodes).contains(&format!("page {key}")));
    }
}

#[test]
fn a_set_without_parts_has_none_and_the_author_chooses_their_order() {
    let mut set = Set::new(PageFormat::A4, Answers::Turned, &[(10, 0)]);
    let ids = |set: &Set| set.lay_out().sheets.iter().map(|sheet| sheet.id.clone()).collect::<Vec<_>>();
    assert!(!ids(&set).iter().any(|id| ["plan", "log", "professional"].contains(&stem(id))));
    set.spec.back = vec![Back::Professional, Back::Log];
    let found: Vec<String> =
        ids(&set).into_iter().filter(|id| ["log", "professional"].contains(&id.as_str())).collect();
    assert_eq!(found, ["professional", "log"]);
}

/// A row of a table has a cell for each of its heads, and every link leads to a page of the book.
#[test]
fn tables_are_whole_and_links_lead_somewhere() {
    for (_, set, laid) in every_book() {
        let ids: BTreeSet<&str> = laid.sheets.iter().map(|sheet| sheet.id.as_str()).collect();
        for sheet in ["plan", "log", "professional"].iter().flat_map(|id| part(laid, id)) {
            for (_, rows) in all(sheet, &|role| *role == Role::Table) {
                let cells = |row: &Node| match row {
                    Node::Group(Role::Row, cells) => cells.len(),
                    other => panic!("{other:?} in a table"),
                };
                assert!(2 <= rows.len() && rows.iter().all(|row| cells(row) == cells(&rows[0])), "{}", sheet.id);
            }
            for (role, _) in all(sheet, &|role| matches!(role, Role::Link { .. })) {
                let Role::Link { target, .. } = role else { unreachable!() };
                assert!(ids.contains(target.as_str()), "{target}");
            }
        }
        let linked = |id: &str| -> BTreeSet<String> {
            let links = part(laid, id).into_iter().flat_map(|sheet| all(sheet, &|r| matches!(r, Role::Link { .. })));
            links
                .filter_map(|(role, _)| if let Role::Link { target, .. } = role { Some(target.clone()) } else { None })
                .collect()
        };
        let pages: BTreeSet<String> = set.pages.iter().map(|page| page.page.id.clone()).collect();
        assert_eq!(linked("plan"), pages);
        assert_eq!(linked("professional"), pages);
    }
}

#[test]
fn the_words_that_keep_readers_safe_are_there() {
    for (_, set, laid) in every_book() {
        let plan = part_words(laid, "plan");
        for words in [
            "on 3 different days",
            "comfort stayed at 0 to 2 of 10",
            "comfort reaches 4 of 10",
            "Stop at once if you feel pain",
            "ask your eye-care professional",
        ] {
            assert!(plan.contains(words), "{words}: {plan}");
        }
        assert!(part_words(laid, "log").contains("ask your eye-care professional"));
        assert!(part_words(laid, "professional").contains("not a test and not a treatment"));
        assert_eq!(plan.contains("A page in a frame"), set.spec.gate.is_some());
    }
}

#[test]
fn a_log_has_thirty_lines_on_paper_and_none_on_a_screen() {
    for format in FORMATS {
        let laid = planned(format, 1, SHORT).lay_out();
        let tables = all(part(&laid, "log")[0], &|role| *role == Role::Table);
        let lines: Vec<usize> = tables.iter().map(|(_, rows)| rows.len() - 1).collect();
        assert_eq!(lines, if format == PageFormat::Wide { vec![] } else { vec![30] });
    }
}

/// Rings of 30 mm at 6 mm of parallax on both sides of a page at 400 mm, ipd 63 mm: by the formulas of the trade,
/// 100 p/D prism dioptres, p = E(Z-D)/Z, 2 atan(E/2Z) - 2 atan(E/2D), and 2 atan(s/2D).
#[test]
fn the_professional_reads_the_numbers_of_a_page() {
    let mut set = planned(PageFormat::A4, 1, SHORT);
    set.pages[0].page.effort.cue = Some(2);
    let text = part_words(&set.lay_out(), "professional");
    let place = |ipd: f64, p: f64| 400.0 * ipd / (ipd - p);
    let arcsec = |p: f64| {
        let turn = |z: f64| 2.0 * (63.0 / (2.0 * z)).atan();
        (turn(place(63.0, p)) - turn(400.0)).to_degrees() * 3600.0
    };
    let row = format!(
        "sea-birds-1-a side 1/4 · A {} 1.5 away to 1.5 toward −{:.0} to +{:.0} {:.1} to {:.1} {:.1} 2 – 2/2/2",
        set.pages[0].difficulty.as_ref().unwrap().badge(),
        arcsec(6.0).abs(),
        arcsec(-6.0),
        place(50.0, -6.0) / 10.0,
        place(50.0, 6.0) / 10.0,
        2.0 * (30.0_f64 / 800.0).atan().to_degrees(),
    );
    assert!(text.contains(&row), "{row}\n{text}");
    for fact in ["40 cm", "63 mm; of the readers 50 to 75 mm", "cyan left, red right", "not known; none is guessed"] {
        assert!(text.contains(fact), "{fact}");
    }
}

#[test]
fn the_professional_reads_what_is_known_and_where_it_came_from() {
    let text = part_words(&every_book()[1].2, "professional");
    for fact in [
        "blur 17.25, break 21.25, recovery 11.25 pd; as found in the reader",
        "blur 13, break 21, recovery 13 pd; published means of a group, morgan near",
        "13 pd away (reserve) to 17.25 pd toward (reserve): all of the reserves",
        "2.5 pd exo",
        "87.5 mm",
        "1.5 pd toward (base-out), 0.5 pd left picture higher",
        "set by Dr. Wilhelmina",
        "60.5 % right eye",
        "by kind",
        "Demand and disparity are counted from the base; no place is told",
    ] {
        assert!(text.contains(fact), "{fact}: {text}");
    }
}

/// What the report lists of a plan is what its sheet shows.
#[test]
fn the_report_has_the_plan_of_the_sheet() {
    let practice = Practice { weeks: 2, days: 3, minutes: 9, block: 120, rest: 30 };
    let set = planned(PageFormat::A4, 5, practice);
    let edition = &set.spec.editions[0];
    let (laid, inked) = (set.lay_out(), Inked::of(edition));
    let count = u32::try_from(laid.sheets.len()).unwrap();
    let extent = Extent::new(edition, count, None, None).unwrap();
    let json = report(&set.book(), edition, &inked, &laid, &extent).unwrap();
    let json: serde_json::Value = serde_json::from_slice(&json).unwrap();
    let plan = &json["plan"];
    let facts = ["weeks", "days", "minutes", "block_s", "rest_s"].map(|key| plan[key].as_u64().unwrap());
    assert_eq!(facts, [2, 3, 9, 120, 30]);
    let days = plan["schedule"].as_array().unwrap();
    assert_eq!(days.len(), 6);
    let text = part_words(&laid, "plan");
    for day in days {
        let ids: Vec<&str> = day["pages"].as_array().unwrap().iter().map(|id| id.as_str().unwrap()).collect();
        let minutes = day["minutes"].as_f64().unwrap();
        assert!(minutes <= 9.0);
        let row = format!("Week {}, day {} {} {:.0}", day["week"], day["day"], ids.join(", "), minutes.ceil());
        assert!(text.contains(&row), "{row}: {text}");
    }
}
