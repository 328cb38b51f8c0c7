//! Tests of the rules: each has a page that fails it and one that passes it, and the table holds no surprises.

mod base;
mod claims;
mod dots;
mod grades;
mod stripes;

use std::collections::BTreeSet;

use super::*;
use crate::colour::{Filter, Glasses, Pins, Srgb8, Wishes, solve_inks};
use crate::optics::Viewer;
use crate::scene::{Eyes, Shape};
use crate::solve::{PathPoint, stand};
use crate::spec::Colours;
use crate::units::PrismDioptre;

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));

fn place(start: u32) -> Option<Place> {
    Some(Place { file: crate::diagnostics::FileId(0), start, end: start + 1 })
}

/// A target of 30 × 20 mm.
fn target(id: &str, at: (f64, f64), parallax: f64) -> SolvedFeature {
    SolvedFeature {
        id: id.into(),
        role: Role::Target,
        eyes: Eyes::Both,
        form: SolvedForm::Shape { shape: Shape::Ring, size: 30.0, extent: (30.0, 20.0), weight: 2.0 },
        at,
        stand: stand(Mm(parallax), &VIEWER).unwrap(),
        solid: false,
        place: None,
    }
}

/// A line with these points (x, y, parallax).
fn trail(points: &[(f64, f64, f64)]) -> SolvedFeature {
    let points: Vec<_> = points.iter().map(|&(x, y, parallax)| PathPoint { x, y, parallax }).collect();
    let form = SolvedForm::Path { points, closed: false, smooth: false, weight: 2.0 };
    SolvedFeature { form, role: Role::Trail, ..target("trail", (0.0, 0.0), 0.0) }
}

fn lint_page(features: &[SolvedFeature]) -> Vec<Diagnostic> {
    let pages = [Page { id: "page", features, graded: Graded::default() }];
    let devices = [Device { edition: "a4", ppi: Ppi(300) }, Device { edition: "screen", ppi: Ppi(96) }];
    let input = Input {
        viewer: &VIEWER,
        near_point: None,
        free_order: false,
        field: (Mm(180.0), Mm(120.0)),
        devices: &devices,
        pages: &pages,
        language: Language::En,
        texts: &[],
        told: &[],
        editions: &[],
    };
    check(&input).into_iter().inspect(|f| assert_eq!(f.page, "page")).map(|f| f.diagnostic).collect()
}

fn lint_text(text: &str) -> Vec<Diagnostic> {
    lint_text_in(Language::En, text)
}

fn lint_text_in(language: Language, text: &str) -> Vec<Diagnostic> {
    let texts = [Text { page: "page", text, place: place(7), language, of_book: false }];
    let input = Input {
        viewer: &VIEWER,
        near_point: None,
        free_order: false,
        field: (Mm(180.0), Mm(120.0)),
        devices: &[],
        pages: &[],
        language: Language::En,
        texts: &texts,
        told: &[],
        editions: &[],
    };
    check(&input).into_iter().map(|f| f.diagnostic).collect()
}

fn codes(found: &[Diagnostic]) -> Vec<&'static str> {
    found.iter().map(|d| d.code).collect()
}

/// What an edition with these inks gives; the medium is named.
fn lint_plan(plan: &InkPlan, ground: Ground, accepted: Option<Accepted<'_>>) -> Vec<Diagnostic> {
    let edition = Painted { edition: "a4", place: place(3), ground, plan, is_known: true, aim: 0.02, accepted };
    let field = (Mm(180.0), Mm(120.0));
    let input = Input {
        viewer: &VIEWER,
        near_point: None,
        free_order: false,
        field,
        devices: &[],
        pages: &[],
        language: Language::En,
        texts: &[],
        told: &[],
        editions: &[edition],
    };
    check(&input).into_iter().inspect(|f| assert_eq!(f.page, "")).map(|f| f.diagnostic).collect()
}

/// Cyan and red ideal glasses on the ideal screen.
fn plan(wishes: &Wishes) -> InkPlan {
    solve_inks(&Glasses::ideal(Filter::Cyan, Filter::Red), &Colours::default().medium, Ground::White, wishes)
}

/// With this ghost for the left eye.
fn leaking(ghost: f64) -> InkPlan {
    let mut plan = plan(&Wishes::default());
    plan.left.ghost = ghost;
    plan
}

/// With worlds equally bright, but for the limit.
fn even() -> InkPlan {
    InkPlan { imbalance: 2.0, ..plan(&Wishes::default()) }
}

/// With overlaps so much short of the left eye's own mark.
fn overlap_of(short: f64) -> InkPlan {
    let mut plan = plan(&Wishes::default());
    plan.left.overlap = plan.left.own + short * (plan.left.ground - plan.left.own);
    plan
}

fn left_ink(ink: [u8; 3]) -> InkPlan {
    plan(&Wishes { pins: Pins { left: Some(Srgb8(ink)), ..Pins::default() }, ..Wishes::default() })
}

fn ground(colour: [u8; 3]) -> InkPlan {
    plan(&Wishes { pins: Pins { ground: Some(Srgb8(colour)), ..Pins::default() }, ..Wishes::default() })
}

/// For each rule: what fails it, and what barely passes it.
fn examples() -> Vec<(&'static str, Vec<Diagnostic>, Vec<Diagnostic>)> {
    let near_pair = |x: f64| [target("a", (-x, 0.0), -8.0), target("b", (x, 0.0), 2.0)];
    let row =
        |pitch: f64| [-pitch, 0.0, pitch].map(|x| SolvedFeature { place: place(1), ..target("a", (x, 0.0), 4.0) });
    vec![
        ("art-field", lint_page(&[target("a", (75.0, 0.0), -0.5)]), lint_page(&[target("a", (74.75, 0.0), -0.5)])),
        ("base-room", base::lint_on(5.0, 0.0, &[]), base::lint_on(4.0, 0.0, &[])),
        ("parallel-axes", lint_page(&[target("a", (0.0, 0.0), 45.0)]), lint_page(&[target("a", (0.0, 0.0), 44.9)])),
        ("near-place", lint_page(&[target("a", (0.0, 0.0), -63.1)]), lint_page(&[target("a", (0.0, 0.0), -63.0)])),
        ("near-point", grades::at_near_point(21.1), grades::at_near_point(21.0)),
        ("range", grades::in_zone(7.01), grades::in_zone(7.0)),
        ("rise", grades::in_order([2.1, 2.0]), grades::in_order([2.0, 2.1])),
        ("disparity-gradient", lint_page(&near_pair(4.9)), lint_page(&near_pair(5.0))),
        ("crowd", lint_page(&row(29.9)), lint_page(&row(30.0))),
        ("device-dot", lint_page(&[target("a", (0.0, 0.0), -0.2)]), lint_page(&[target("a", (0.0, 0.0), -0.265)])),
        ("roll", lint_page(&[target("a", (0.0, 0.0), -13.4)]), lint_page(&[target("a", (0.0, 0.0), -13.3)])),
        (
            "stripes",
            lint_page(&[stripes::fence(&stripes::even(7, 8.0), 21.0)]),
            lint_page(&[stripes::fence(&stripes::even(6, 8.0), 21.0)]),
        ),
        ("claim-words", lint_text("It cures nothing."), lint_text("A curved quay.")),
        ("ghost", lint_plan(&leaking(0.151), Ground::White, None), lint_plan(&leaking(0.019), Ground::White, None)),
        ("eye-brightness", lint_plan(&leaking(0.0), Ground::White, None), lint_plan(&even(), Ground::White, None)),
        (
            "overlap",
            lint_plan(&overlap_of(0.06), Ground::White, None),
            lint_plan(&overlap_of(0.05), Ground::White, None),
        ),
        (
            "text-ink",
            lint_plan(&left_ink([20; 3]), Ground::White, None),
            lint_plan(&left_ink([255, 0, 0]), Ground::White, None),
        ),
        (
            "text-contrast",
            lint_plan(&ground([116; 3]), Ground::White, None),
            lint_plan(&ground([118; 3]), Ground::White, None),
        ),
        ("dot-figure", lint_page(&[dots::square(6.3, 0.4, "dots")]), lint_page(&[dots::square(6.5, 0.4, "dots")])),
        ("monocular-giveaway", lint_page(&[dots::denser()]), lint_page(&[dots::square(40.0, 2.0, "dots")])),
        // 2 atan((63 + p)/800) - 2 atan(63/800) is one degree at p = 7.03 mm toward (definition of vergence).
        (
            "stereo-comfort",
            lint_page(&[dots::square(40.0, 7.04, "dots")]),
            lint_page(&[dots::square(40.0, 7.02, "dots")]),
        ),
        // 30 mm at 400 mm fill 4.295 degrees; a quarter of the period whose half they are is 128.9 arcmin.
        ("fusion", grades::apart(129.5), grades::apart(128.5)),
    ]
}

#[test]
fn every_rule_has_docs_codes_of_its_own_and_both_examples() {
    let (mut ids, mut all_codes) = (BTreeSet::new(), BTreeSet::new());
    let examples = examples();
    assert_eq!(examples.len(), RULES.len());
    for (rule, (id, failing, passing)) in RULES.iter().zip(examples) {
        assert_eq!(rule.id, id, "examples stand in the order of the rules");
        assert!(ids.insert(rule.id) && !rule.doc.is_empty() && !rule.doc.ends_with('.'), "{id}");
        assert!(!rule.codes.is_empty() && rule.codes.iter().all(|code| all_codes.insert(*code)), "{id}");
        assert!(failing.iter().any(|d| rule.codes.contains(&d.code)), "{id}: nothing found in {failing:?}");
        assert!(passing.iter().all(|d| !rule.codes.contains(&d.code)), "{id}: found {passing:?}");
        for d in failing {
            assert!(d.message.contains('`') && !d.message.ends_with('.') && !d.help.ends_with('.'), "{d:?}");
            assert!(d.message.starts_with(|c: char| c == '`' || c.is_lowercase()) && !d.label.is_empty(), "{d:?}");
        }
    }
}

/// The file of each rule says what, why, limit, source and way out.
#[test]
fn every_rule_is_documented_in_its_file() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src/lint");
    for rule in RULES {
        let text = std::fs::read_to_string(folder.join(rule.id.replace('-', "_") + ".rs")).unwrap();
        for part in ["What:", "Why:", "Limit:", "Source:", "Way out:"] {
            assert!(text.contains(part), "{}: no {part}", rule.id);
        }
    }
}

#[test]
fn nothing_is_said_about_an_easy_page() {
    let easy = [
        target("a", (-50.0, 0.0), -4.0),
        target("b", (50.0, 0.0), 4.0),
        trail(&[(-80.0, 50.0, 0.0), (80.0, 50.0, -4.0)]),
    ];
    assert_eq!(lint_page(&easy), []);
    assert_eq!(lint_page(&[]), []);
}

#[test]
fn each_half_image_and_each_mark_stays_in_the_field() {
    // At 70 mm with 12 mm toward, the left eye's half-image ends at 70 + 6 + 15 = 91 mm.
    let found = lint_page(&[target("a", (70.0, 0.0), -12.0)]);
    assert_eq!(codes(&found), ["E-ART-FIELD"]);
    assert_eq!(found[0].message, "`a` reaches `1` mm past the right edge of the art field of `180` x `120` mm");
    // A mark for the right eye alone has its half-image on the other side.
    let mut mark = target("mark", (70.0, 0.0), -12.0);
    (mark.role, mark.eyes) = (Role::Watch, Eyes::Right);
    assert_eq!(lint_page(&[mark.clone()]), []);
    mark.eyes = Eyes::Left;
    assert_eq!(codes(&lint_page(&[mark])), ["E-ART-FIELD"]);
    assert_eq!(codes(&lint_page(&[target("a", (0.0, -50.1), 0.0)])), ["E-ART-FIELD"]);
    assert_eq!(codes(&lint_page(&[target("a", (-75.1, 50.1), 0.0)])), ["E-ART-FIELD", "E-ART-FIELD"]);
    // A path reaches half its width past its points.
    assert_eq!(codes(&lint_page(&[trail(&[(-89.1, 0.0, 0.0), (0.0, 0.0, 0.0)])])), ["E-ART-FIELD"]);
    assert_eq!(lint_page(&[trail(&[(-89.0, 0.0, 0.0), (0.0, 0.0, 0.0)])]), []);
}

#[test]
fn shapes_run_into_each_other_in_one_eye() {
    let of = |id: &str, x: f64, y: f64, parallax| SolvedFeature { place: place(1), ..target(id, (x, y), parallax) };
    // 30 mm wide, 31 mm apart: the half-images for the right eye are 31 - 6 mm apart.
    let found = lint_page(&[of("a", -15.5, 0.0, 6.0), of("b", 15.5, 0.0, -6.0), of("c", 0.0, 40.0, -6.0)]);
    assert_eq!(codes(&found), ["W-CROWD"]);
    assert_eq!(found[0].message, "`a` runs `5` mm into `b` in one eye");
    // One inside the other, and targets of their own places, are another matter.
    let mut inner = of("inner", 0.0, 0.0, 0.0);
    inner.form = SolvedForm::Shape { shape: Shape::Disc, size: 10.0, extent: (10.0, 10.0), weight: 2.0 };
    assert_eq!(lint_page(&[of("a", 0.0, 0.0, 4.0), inner]), []);
    assert_eq!(lint_page(&[of("a", -10.0, 0.0, 0.0), target("b", (10.0, 0.0), 0.0)]), []);
}

#[test]
fn a_target_and_its_frame_are_one_finding_for_each_edge() {
    let (mut ring, mut frame) = (target("a", (80.0, 58.0), 0.0), target("a-frame", (80.0, 58.0), 0.0));
    frame.form = SolvedForm::Shape { shape: Shape::Brackets, size: 40.0, extent: (40.0, 30.0), weight: 1.2 };
    (ring.place, frame.place) = (place(1), place(1));
    let messages: Vec<_> = lint_page(&[ring, frame]).into_iter().map(|d| d.message).collect();
    let starts = ["`a-frame` reaches `10` mm past the right edge", "`a-frame` reaches `13` mm past the bottom edge"];
    assert_eq!(messages.len(), 2);
    assert!(messages.iter().zip(starts).all(|(message, start)| message.starts_with(start)), "{messages:?}");
}

#[test]
fn a_path_counts_by_its_extreme_points() {
    let found = lint_page(&[trail(&[(-40.0, 0.0, -70.0), (0.0, 0.0, 0.0), (40.0, 0.0, 46.0)])]);
    assert_eq!(codes(&found), ["W-NEAR-PARALLEL", "W-NEAR-PLACE", "N-ZONE", "N-LEVEL"]);
}

#[test]
fn lines_of_one_place_are_one_finding_about_the_worst() {
    let line = |id: &str, parallax, start| {
        let mut guide = target(id, (0.0, 0.0), parallax);
        (guide.role, guide.place) = (Role::Guide, place(start));
        guide
    };
    let found =
        lint_page(&[line("front", 45.0, 1), line("back", 49.0, 1), line("edge", 47.0, 1), line("other", 46.0, 2)]);
    let parallel: Vec<_> = found.iter().filter(|d| d.code == "W-NEAR-PARALLEL").collect();
    assert_eq!(parallel.len(), 2);
    assert!(parallel[0].message.starts_with("`back`: parallax of `49` mm (`12.25` pd away)"), "{parallel:?}");
    assert_eq!(parallel[0].help, "ask for less than `11.25 pd away`");
    // Without a place, each is told.
    let found = lint_page(&[target("a", (-50.0, 0.0), 45.0), target("b", (50.0, 0.0), 46.0)]);
    assert_eq!(codes(&found), ["W-NEAR-PARALLEL", "W-NEAR-PARALLEL", "N-ZONE", "N-LEVEL"]);
}

#[test]
fn what_rides_with_a_target_is_not_told_again() {
    let mut frame = target("a-frame", (0.0, 0.0), -64.0);
    frame.role = Role::Lock;
    assert_eq!(lint_page(&[frame]), []);
}

#[test]
fn a_near_place_is_told_in_millimetres() {
    // Z = 400 x 63 / (63 + 84).
    let found = lint_page(&[target("a", (0.0, 0.0), -84.0)]);
    let message = "`a` stands `171.4` mm before the eyes: nearer than half the viewing distance, `200` mm";
    assert!(found.iter().any(|d| d.message == message), "{found:?}");
}

#[test]
fn the_steepest_pair_is_told_with_the_number_of_the_others() {
    let row = [target("a", (0.0, 0.0), 0.0), target("b", (4.0, 0.0), -5.0), target("c", (9.0, 0.0), -11.0)];
    let found = lint_page(&row);
    assert_eq!(codes(&found), ["W-GRADIENT"]);
    assert_eq!(
        found[0].message,
        "`a` and `b` differ by `5` mm of parallax over `4` mm: a disparity gradient of `1.25` is past the limit of \
         `1`; so are 2 other pairs of this page"
    );
    // One inside the other: their outlines are 10 mm apart.
    let mut inner = target("inner", (0.0, 0.0), 0.0);
    let outer = target("outer", (0.0, 0.0), -9.0);
    inner.form = SolvedForm::Shape { shape: Shape::Ring, size: 10.0, extent: (10.0, 10.0), weight: 2.0 };
    assert_eq!(lint_page(&[outer.clone(), inner]), []);
    // At the same place and of the same size there is no space at all.
    let found = lint_page(&[outer, target("twin", (0.0, 0.0), 0.0)]);
    assert!(found[0].message.contains("a disparity gradient of `infinite`"), "{found:?}");
}

#[test]
fn one_eye_alone_and_equal_depths_have_no_gradient() {
    let mut alone = target("b", (1.0, 0.0), -8.0);
    alone.eyes = Eyes::Left;
    assert_eq!(lint_page(&[target("a", (0.0, 0.0), 0.0), alone]), []);
    assert_eq!(lint_page(&[target("a", (0.0, 0.0), -8.0), target("b", (0.0, 0.0), -8.0)]), []);
}

#[test]
fn a_depth_finer_than_a_dot_names_what_would_do() {
    // Dots of 25.4/300 = 0.0847 and 25.4/96 = 0.2646 mm.
    let found = lint_page(&[target("a", (0.0, 0.0), -0.05)]);
    assert_eq!(codes(&found), ["W-DEVICE-DOT"]);
    assert_eq!(
        found[0].message,
        "`a`: parallax of `0.05` mm is less than one dot of edition `a4` (300 ppi), `screen` (96 ppi); the coarsest \
         dot is `0.2646` mm"
    );
    assert_eq!(found[0].help, "set `ppi` to at least `508`, or ask for at least `136 arcsec`");
    let found = lint_page(&[target("a", (0.0, 0.0), 0.1)]);
    assert!(found[0].message.contains("of edition `screen` (96 ppi);"), "{found:?}");
    assert_eq!(lint_page(&[target("a", (0.0, 0.0), 0.0)]), []);
    assert_eq!(codes(&lint_page(&[trail(&[(0.0, 0.0, 0.01), (9.0, 0.0, -0.02)])])), ["W-DEVICE-DOT"]);
    assert_eq!(lint_page(&[trail(&[(0.0, 0.0, 0.01), (9.0, 0.0, -2.0)])]), []);
}

/// The 80 mm of the reference sheet: 7.0 mm, about 60 arcmin at 400 mm for 5 degrees.
#[test]
fn a_wide_separation_asks_for_a_level_page() {
    let mut guide = target("a", (0.0, 0.0), -80.0);
    guide.role = Role::Guide;
    let found: Vec<_> =
        lint_page(&[target("b", (50.0, 0.0), 0.0), guide]).into_iter().filter(|d| d.code == "N-LEVEL").collect();
    assert_eq!(found.len(), 1);
    assert!(found[0].message.contains("into `6.97` mm of vertical parallax, `59.9` arcmin"), "{found:?}");
    assert!(found[0].help.contains(roll::WORDING) && found[0].severity == Severity::Note);
}

#[test]
fn labels_and_drawn_letters_are_words_too() {
    let mut letters = target("lamp", (0.0, 0.0), 0.0);
    letters.form = SolvedForm::Shape { shape: Shape::Text("CURE".into()), size: 9.0, extent: (30.0, 9.0), weight: 9.0 };
    assert_eq!(codes(&lint_page(&[letters.clone()])), ["E-CLAIM"]);
    letters.id = "test-lamp".into();
    // The same target on the next level is not told again.
    assert_eq!(codes(&lint_page(&[letters.clone(), letters])), ["W-CLAIM", "E-CLAIM"]);
}

#[test]
fn findings_come_in_the_order_of_the_book() {
    let wide = [target("a", (80.0, 0.0), 0.0)];
    let pages = [
        Page { id: "second-in-name", features: &wide, graded: Graded::default() },
        Page { id: "a-first-in-name", features: &wide, graded: Graded::default() },
    ];
    let texts = ["a-first-in-name", "", "second-in-name"].map(|page| Text {
        page,
        text: "cure",
        place: None,
        language: Language::En,
        of_book: false,
    });
    let input = Input {
        viewer: &VIEWER,
        near_point: None,
        free_order: false,
        field: (Mm(180.0), Mm(120.0)),
        devices: &[],
        pages: &pages,
        language: Language::En,
        texts: &texts,
        told: &[],
        editions: &[],
    };
    let order: Vec<_> = check(&input).into_iter().map(|f| (f.page, f.diagnostic.code)).collect();
    let expected = [
        ("", "E-CLAIM"),
        ("second-in-name", "E-ART-FIELD"),
        ("second-in-name", "E-CLAIM"),
        ("a-first-in-name", "E-ART-FIELD"),
        ("a-first-in-name", "E-CLAIM"),
    ];
    assert_eq!(order, expected.map(|(page, code)| (page.to_owned(), code)));
}

#[test]
fn a_viewer_that_is_none_makes_no_rule_panic() {
    let features = [target("a", (0.0, 0.0), -80.0), trail(&[(f64::NAN, 0.0, f64::NAN), (0.0, 0.0, f64::INFINITY)])];
    for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
        let viewer = Viewer::new(Mm(bad), Mm(bad), (Mm(bad), Mm(bad)));
        let pages = [Page { id: "page", features: &features, graded: Graded::default() }];
        let devices = [Device { edition: "none", ppi: Ppi(0) }];
        let field = (Mm(180.0), Mm(120.0));
        check(&Input {
            viewer: &viewer,
            near_point: None,
            free_order: false,
            field,
            devices: &devices,
            pages: &pages,
            language: Language::En,
            texts: &[],
            told: &[],
            editions: &[],
        });
    }
}

#[test]
fn a_ghost_is_noted_warned_about_refused_or_accepted() {
    let codes_of = |ghost, accepted| {
        let found = lint_plan(&leaking(ghost), Ground::White, accepted);
        codes(&found).into_iter().filter(|code| code.ends_with("-GHOST")).collect::<Vec<_>>()
    };
    let accepted = |limit| Some(Accepted { limit, reason: "only these glasses are at hand" });
    assert_eq!(codes_of(0.02, None), [] as [&str; 0]);
    assert_eq!(codes_of(0.021, None), ["N-GHOST"]);
    assert_eq!(codes_of(0.05, None), ["N-GHOST"]);
    assert_eq!(codes_of(0.051, None), ["W-GHOST"]);
    assert_eq!(codes_of(0.15, None), ["W-GHOST"]);
    assert_eq!(codes_of(0.2, None), ["E-GHOST"]);
    assert_eq!(codes_of(0.2, accepted(0.19)), ["E-GHOST"]);
    assert_eq!(codes_of(0.2, accepted(0.2)), ["W-GHOST"]);
    assert_eq!(codes_of(f64::INFINITY, accepted(1.0)), ["E-GHOST"]);
    let found = lint_plan(&leaking(0.2), Ground::White, accepted(0.25));
    assert_eq!(
        found[0].message,
        "edition `a4`: the ghost is `20 %` to the left eye and `0 %` to the right, limit `5 %`; accepted up to `25 %`: \
         only these glasses are at hand"
    );
}

/// Red and cyan ideal filters pass 0.2126 and 0.7874 of an sRGB white (`[SRGB]`): 3.7 to 1.
#[test]
fn unequal_eyes_are_a_note_where_no_medium_is_named() {
    let plan = plan(&Wishes::default());
    let found = lint_plan(&plan, Ground::White, None);
    assert_eq!(codes(&found), ["W-EYE-BRIGHTNESS"]);
    assert_eq!(found[0].message, "edition `a4`: the left eye's world is brighter by `3.7` to 1, limit `2` to 1");
    let edition = Painted {
        edition: "a4",
        place: None,
        ground: Ground::White,
        plan: &plan,
        is_known: false,
        aim: 0.02,
        accepted: None,
    };
    let field = (Mm(180.0), Mm(120.0));
    let input = Input {
        viewer: &VIEWER,
        near_point: None,
        free_order: false,
        field,
        devices: &[],
        pages: &[],
        language: Language::En,
        texts: &[],
        told: &[],
        editions: &[edition],
    };
    assert_eq!(check(&input)[0].diagnostic.code, "N-EYE-BRIGHTNESS");
}

#[test]
fn overlaps_are_held_to_the_side_of_the_ground() {
    let found = lint_plan(&overlap_of(-0.2), Ground::White, None);
    assert!(!codes(&found).contains(&"W-OVERLAP"), "darker than the mark is dark enough: {found:?}");
    let found = lint_plan(&overlap_of(0.2), Ground::White, None);
    let found = found.iter().find(|d| d.code == "W-OVERLAP").unwrap();
    assert!(
        found.message.ends_with("not dark enough to the left eye: `20` % short of its own mark, limit `5` %"),
        "{found:?}"
    );
}
