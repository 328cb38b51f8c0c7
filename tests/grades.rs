//! Ramps, ranges and difficulty over whole specs: what is written as a share stays in the range, ramps do what they say,
//! and the demo set rises.

use std::path::Path;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::bundle::run::{Request, run};
use depthpress::diagnostics::{Diagnostics, Severity, Sources};
use depthpress::exercise::fusion::hold::Hold;
use depthpress::exercise::{Body, read_exercise};
use depthpress::language::{Language, Tongue};
use depthpress::layout::sheet::{Node, Role};
use depthpress::optics::reserves::{Norms, Phoria, Reserve, Reserves, Zone};
use depthpress::optics::{Viewer, limits};
use depthpress::scene::{Depth, Side, Size};
use depthpress::solve::stand_of;
use depthpress::spec::reader::Reader;
use depthpress::units::{Mm, PrismDioptre, Quantity};
use proptest::prelude::*;

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));

/// A `hold` with these values of size and depth.
fn hold(size: &str, depth: &str) -> Hold {
    let text = format!(
        "[exercise]\nkind = \"hold\"\ntitle = \"T\"\n[[target]]\nshape = \"ring\"\nsize = {size}\ndepth = {depth}\n"
    );
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("case.toml", &text);
    let read = read_exercise(&mut Reader::new(&sources, file, &mut problems), "case");
    assert_eq!(problems.iter().map(|p| &p.message).collect::<Vec<_>>(), Vec::<&String>::new(), "{text}");
    let Body::Hold(hold) = read.unwrap().body else { panic!("no hold") };
    hold
}

fn demand(depth: &Depth, viewer: &Viewer) -> f64 {
    stand_of(depth, viewer).unwrap().demand.0
}

fn length(size: Size) -> f64 {
    let Size::Length(mm) = size else { panic!("no length") };
    mm.0
}

/// Reserves of a reader, a phoria, and what pages may ask of them.
fn reader() -> impl Strategy<Value = Viewer> {
    let side = (2.0..25.0_f64, 0.0..10.0_f64, any::<bool>()).prop_map(|(blur, more, blurs)| Reserve {
        blur: blurs.then_some(PrismDioptre(blur)),
        breaks: PrismDioptre(blur + more),
        recovery: None,
    });
    (side.clone(), side, prop::option::of(-8.0..8.0_f64)).prop_map(|(away, toward, phoria)| {
        let phoria = phoria.map(|turn| Phoria(PrismDioptre(turn)));
        Viewer { zone: Zone::everyday(&Reserves { away, toward }, phoria), ..VIEWER }
    })
}

proptest! {
    /// The middle third, worked out anew from the limits of clear vision (Percival 1928), and no share of a ramp past it.
    #[test]
    fn a_share_of_the_range_never_leaves_it(
        viewer in reader(), from in 0..=100_u32, to in 0..=100_u32, levels in 2..=20_u32, away in any::<bool>(),
    ) {
        let zone = viewer.zone.unwrap();
        let side = if away { "away" } else { "toward" };
        let text =
            format!("{{ from = \"{from} % of range {side}\", to = \"{to} % of range {side}\", levels = {levels} }}");
        let hold = hold("\"40 mm\"", &text);
        let end = if away { zone.away.0 } else { zone.toward.0 };
        // Past parallel eyes nothing is solved at all.
        prop_assume!(!away || limits::within_parallel(Mm(4.0 * end), VIEWER.ipd_range.0));
        for level in 1..=levels {
            let asked = demand(&hold.target.depth.at(level), &viewer);
            prop_assert!(zone.holds(PrismDioptre(asked)), "{asked} in {zone:?}");
            prop_assert!((0.0..=end + 1e-6).contains(&asked.abs()));
        }
    }

    /// Both ends as written, each level on from the one before, whatever the curve.
    #[test]
    fn ramps_are_monotone_and_hit_both_ends(
        from in 1..=60_u32, to in 1..=60_u32, levels in 2..=20_u32, curve in 0..3_usize,
    ) {
        prop_assume!(from != to);
        let curve = ["even", "geometric", "difficulty"][curve];
        let ramp = |unit: &str, scale: u32| {
            let ends = [from * scale, to * scale].map(|end| format!("\"{end} {unit}\""));
            format!("{{ from = {}, to = {}, levels = {levels}, curve = \"{curve}\" }}", ends[0], ends[1])
        };
        let sized = hold(&ramp("mm", 2), "\"page\"");
        let sizes: Vec<f64> = (1..=levels).map(|level| length(sized.target.size.at(level))).collect();
        prop_assert_eq!(sizes.first().copied(), Some(f64::from(from * 2)));
        prop_assert_eq!(sizes.last().copied(), Some(f64::from(to * 2)));
        let rises = |values: &[f64]| values.windows(2).all(|pair| (pair[0] < pair[1]) == (from < to));
        prop_assert!(rises(&sizes), "{sizes:?}");

        let deep = hold("\"40 mm\"", &ramp("arcmin toward", 4));
        prop_assert_eq!(deep.target.depth.at(1), Depth::Disparity(angle(f64::from(from * 4)), Side::Toward));
        prop_assert_eq!(deep.target.depth.at(levels), Depth::Disparity(angle(f64::from(to * 4)), Side::Toward));
        let demands: Vec<f64> = (1..=levels).map(|level| demand(&deep.target.depth.at(level), &VIEWER)).collect();
        prop_assert!(rises(&demands), "{demands:?}");
    }

    /// 1 cm are 10 mm, 1 pd at 400 mm is 4 mm of parallax (`[ISO13666]`): the levels between are the same.
    #[test]
    fn ramps_do_not_depend_on_the_unit(from in 2..=12_u32, to in 2..=12_u32, levels in 2..=20_u32) {
        let ramp = |unit: &str, scale: f64| {
            let ends = [from, to].map(|end| format!("\"{} {unit}\"", f64::from(end) * scale));
            format!("{{ from = {}, to = {}, levels = {levels} }}", ends[0], ends[1])
        };
        let one = hold(&ramp("cm", 1.0), &ramp("pd toward", 1.0));
        let other = hold(&ramp("mm", 10.0), &ramp("mm parallax toward", 4.0));
        for level in 1..=levels {
            let sizes = [&one, &other].map(|hold| length(hold.target.size.at(level)));
            prop_assert!((sizes[0] - sizes[1]).abs() < 1e-9, "{sizes:?}");
            let demands = [&one, &other].map(|hold| demand(&hold.target.depth.at(level), &VIEWER));
            prop_assert!((demands[0] - demands[1]).abs() < 1e-6, "{demands:?}");
        }
    }
}

fn angle(arcmin: f64) -> depthpress::units::Angle {
    Quantity::parse(&format!("{arcmin} arcmin")).unwrap().to_angle().unwrap()
}

fn prepared(set: &str) -> Prepared {
    prepare(load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs").join(set)).unwrap(), None)
}

/// The demo sets are examples of books that rise: nothing about them is worth a warning.
#[test]
fn the_demo_sets_rise() {
    for (name, least) in [("harbour-lights", 20), ("tide-ladder", 40)] {
        let set = prepared(name);
        let above_note: Vec<_> = set.diagnostics.iter().filter(|d| d.severity != Severity::Note).collect();
        assert!(above_note.is_empty(), "{name}: {above_note:?}");
        assert!(least <= set.pages.len(), "{name}: {}", set.pages.len());
        for strand in ["toward", "away", "jump", "smooth", "depth"] {
            let grades = set.pages.iter().filter(|page| page.strand == strand);
            let totals: Vec<f64> = grades.map(|page| page.difficulty.as_ref().unwrap().total).collect();
            assert!(!totals.is_empty(), "{name}: no page of the strand `{strand}`");
            assert!(totals.windows(2).all(|pair| pair[0] <= pair[1] + 1e-9), "{name}, {strand}: {totals:?}");
        }
    }
}

/// Backwards it falls, and the rule says so; a collection may stand in any order.
#[test]
fn the_demo_set_backwards_does_not_rise() {
    let dir = tempfile::tempdir().unwrap();
    crate::demo_set::copy_to(dir.path());
    let file = dir.path().join("set.toml");
    let text = std::fs::read_to_string(&file).unwrap();
    let turned = text.replace("\"pier-lamp.toml\"", "\"x\"").replace("\"boat-name.toml\"", "\"pier-lamp.toml\"");
    std::fs::write(&file, turned.replace("\"x\"", "\"boat-name.toml\"")).unwrap();
    let rises = || {
        let set = prepare(load(dir.path()).unwrap(), None);
        set.diagnostics.iter().filter(|d| d.code == "W-RISE").count()
    };
    assert!(0 < rises());
    let text = std::fs::read_to_string(&file).unwrap();
    std::fs::write(&file, text.replace("[set]\n", "[set]\norder = \"free\"\n")).unwrap();
    assert_eq!(rises(), 0);
}

fn links(nodes: &[Node], found: &mut Vec<String>) {
    for node in nodes {
        let Node::Group(role, inner) = node else { continue };
        if let Role::Link { target, .. } = role {
            found.push(target.clone());
        }
        links(inner, found);
    }
}

/// From the last lamp the next step toward is the name of the boat, many pages on; at the end of a strand, and after its
/// beginning, the book goes on.
#[test]
fn links_lead_along_the_strand() {
    let set = prepared("harbour-lights");
    let book = set.book().unwrap();
    let edition = &book.set.editions[0];
    let laid = book.lay_out(edition, &Inked::of(edition)).unwrap();
    let links_of = |id: &str| {
        let mut found = Vec::new();
        links(&laid.sheets.iter().find(|sheet| sheet.id == id).unwrap().nodes, &mut found);
        found
    };
    assert_eq!(links_of("pier-lamp-4"), ["pier-lamp-3", "boat-name-1"]);
    assert_eq!(links_of("harbour-mouth-3"), ["harbour-mouth-2", "boat-house"]);
    assert_eq!(links_of("bollard-row"), ["mooring-rings-4", "net-floats"]);
    assert_eq!(links_of("pier-lamp-1"), ["pier-lamp-2"]);
}

/// A set of one `hold` before the near norms, with more keys for its exercise.
fn small_set(keys: &str) -> tempfile::TempDir {
    let dir = tempfile::tempdir().unwrap();
    let set = "[set]\nid = \"quay\"\ntitle = \"Quay\"\nversion = \"1.0.0\"\ndate = \"2026-05-04\"\nlanguage = \"en\"\n\
               exercises = [\"lamp.toml\"]\n[gate]\nset_by = \"the harbour clinic\"\n[viewer]\ndistance = \"40 cm\"\n\
               ipd = \"63 mm\"\nipd_range = [\"50 mm\", \"75 mm\"]\nnorms = \"morgan near\"\n\
               away = { blur = \"12 pd\", break = \"20 pd\" }\nphoria = { amount = \"4 pd\", direction = \"exo\" }\n\
               near_point = \"9 cm\"\n[glasses]\nleft = \"cyan\"\nright = \"red\"\n[[edition]]\nid = \"a4\"\n\
               page = \"A4\"\nground = \"white\"\nppi = 72\nformats = [\"svg\"]\n";
    let lamp = format!(
        "[exercise]\nkind = \"hold\"\ntitle = \"Lamp\"\n{keys}\n[[target]]\nshape = \"ring\"\nsize = \"40 mm\"\n\
         depth = \"2 pd toward\"\n"
    );
    std::fs::write(dir.path().join("set.toml"), set).unwrap();
    std::fs::write(dir.path().join("lamp.toml"), lamp).unwrap();
    dir
}

/// Nothing that is known of the reader is silent: the zone, what it was made of, and what a page is graded against.
/// Sheard with 4 exo and a blur of 17: (17 - 8) / 3 = 3 toward; the middle third of 12 and 17: 12 - 29/3 = 7/3 away.
#[test]
fn the_report_says_what_a_grade_rests_on() {
    let (dir, out) = (small_set(""), tempfile::tempdir().unwrap());
    let set = prepare(load(dir.path()).unwrap(), None);
    let request = Request {
        out: out.path(),
        editions: &[],
        formats: None,
        pages: None,
        jobs: std::num::NonZeroUsize::MIN,
        sharded: None,
    };
    run(&[set.book().unwrap()], &request, &|_| ()).unwrap();
    let text = std::fs::read_to_string(out.path().join("quay/a4/report.json")).unwrap();
    let report: serde_json::Value = serde_json::from_str(&text).unwrap();
    let viewer = &report["viewer"];
    let zone = serde_json::json!({
        "away_pd": 2.3333, "away_bound": "percival", "toward_pd": 3.0, "toward_bound": "sheard"
    });
    assert_eq!(viewer["zone"], zone);
    assert_eq!(viewer["reserves"]["away"]["from"], "reader");
    assert_eq!(viewer["reserves"]["toward"]["from"], "norms");
    assert_eq!(viewer["reserves"]["toward"]["break_pd"], 21.0);
    assert_eq!((&viewer["norms"], &viewer["phoria_pd"]), (&"morgan near".into(), &4.0.into()));
    assert_eq!((&viewer["near_point_mm"], &viewer["base"]), (&90.0.into(), &serde_json::Value::Null));
    let page = report["pages"].as_array().unwrap().iter().find(|page| page["id"] == "lamp").unwrap();
    assert_eq!((&page["strand"], &page["difficulty"]["against"]), (&"toward".into(), &"zone".into()));
    let terms = page["difficulty"]["terms"].as_array().unwrap();
    let number = |term: &serde_json::Value, key: &str| term[key].as_f64().unwrap();
    let sum: f64 = terms.iter().map(|term| number(term, "value") * number(term, "weight")).sum();
    assert!((100.0 * sum - number(&page["difficulty"], "total")).abs() < 0.05);
    assert_eq!(terms[0]["name"], "demand");
    assert!((number(&terms[0], "value") - 2.0 / 3.0).abs() < 1e-4);
}

/// A balance may lead from less to all, alone or in turn with another ramp.
#[test]
fn a_balance_makes_levels_of_its_own() {
    let dir = small_set("balance = { stronger = \"left\", share = { from = \"40 %\", to = \"100 %\", levels = 4 } }");
    let set = prepare(load(dir.path()).unwrap(), None);
    let shares: Vec<f64> = set.pages.iter().map(|page| page.page.balance.unwrap().share).collect();
    assert_eq!(set.pages.iter().map(|page| page.page.levels).collect::<Vec<_>>(), [4; 4]);
    assert!(
        shares.iter().zip([0.4, 0.6, 0.8, 1.0]).all(|(share, wanted)| (share - wanted).abs() < 1e-12),
        "{shares:?}"
    );
}

/// Stops may come closer and become more: each level has its own number of them, evenly spaced about the middle.
#[test]
fn arranged_stops_change_in_number_and_spacing() {
    let text = "[exercise]\nkind = \"jump\"\ntitle = \"T\"\nin_turn = [\"count\", \"spacing\"]\n[arrangement]\n\
                form = \"row\"\ncount = { from = 2, to = 4, levels = 3 }\n\
                spacing = { from = \"40 mm\", to = \"30 mm\", levels = 2 }\nshape = \"disc\"\nsize = \"9 mm\"\n\
                depths = [\"page\", \"1 pd toward\"]\n";
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("case.toml", text);
    let read = read_exercise(&mut Reader::new(&sources, file, &mut problems), "case").unwrap();
    let places: Vec<Vec<f64>> = depthpress::exercise::pages(&[read], "set", Tongue::of(Language::En))
        .iter()
        .map(|page| page.scene.features.iter().map(x_of).collect())
        .collect();
    let expected =
        [vec![-20.0, 20.0], vec![-40.0, 0.0, 40.0], vec![-60.0, -20.0, 20.0, 60.0], vec![-45.0, -15.0, 15.0, 45.0]];
    assert_eq!(places, expected);
}

fn x_of(feature: &depthpress::scene::Feature) -> f64 {
    let depthpress::scene::Form::Shape { at, .. } = &feature.form else { panic!("no shape") };
    at.x.0
}

/// The near norms stand in where the author names them, and every number of them is in the zone (P32).
#[test]
fn a_norm_gives_the_zone_that_pages_are_graded_against() {
    let zone = Zone::everyday(&Norms::MorganNear.reserves(), None).unwrap();
    let viewer = Viewer { zone: Some(zone), ..VIEWER };
    let half = hold("\"40 mm\"", "\"50 % of range toward\"");
    assert!((demand(&half.target.depth.at(1), &viewer) - 3.5).abs() < 1e-6);
}
