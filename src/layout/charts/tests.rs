//! Charts against the numbers they are drawn from, and against the words of one another.

use std::path::Path;

use kurbo::{Point, Rect, Shape as _};

use super::demand::Scale;
use super::labels;
use super::ladder::{Rung, Slots};
use super::plan::Plan;
use super::*;
use crate::bundle::load::load;
use crate::bundle::prepare::{Prepared, prepare};
use crate::language::Language;
use crate::layout::sheet::TextRun;
use crate::optics::reserves::{Norms, Phoria};
use crate::optics::{Base, Viewer, Zone};
use crate::scene::{Eyes, Role as FeatureRole, Shape};
use crate::solve::{SolvedForm, stand};
use crate::units::{Mm, PrismDioptre};

fn harbour() -> Prepared {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/harbour-lights");
    prepare(load(&folder).unwrap(), None)
}

/// The set with the zone of Morgan's near norms.
fn with_norms(set: &SetSpec) -> SetSpec {
    let mut set = set.clone();
    set.known.norms = Some(Norms::MorganNear);
    set.viewer.zone = Zone::everyday(&Norms::MorganNear.reserves(), None);
    set
}

fn pages(prepared: &Prepared) -> Vec<ChartPage<'_>> {
    let page = |(number, solved)| {
        let solved: &crate::bundle::prepare::SolvedPage = solved;
        ChartPage {
            number,
            page: &solved.page,
            solved: &solved.features,
            strand: solved.strand,
            difficulty: solved.difficulty.as_ref().map(|difficulty| difficulty.total),
        }
    };
    (100..).zip(&prepared.pages).map(page).collect()
}

fn viewer() -> Viewer {
    Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)))
}

/// A ring of 20 mm on the page at this place and parallax.
fn ring(id: &str, x: f64, parallax: f64) -> SolvedFeature {
    SolvedFeature {
        id: id.to_owned(),
        role: FeatureRole::Target,
        eyes: Eyes::Both,
        form: SolvedForm::Shape { shape: Shape::Ring, size: 20.0, extent: (20.0, 20.0), weight: 1.0 },
        at: (x, 0.0),
        stand: stand(Mm(parallax), &viewer()).unwrap(),
        solid: false,
        place: None,
    }
}

fn english() -> &'static Tongue {
    Tongue::of(Language::En)
}

fn runs<'a>(nodes: &'a [Node]) -> Vec<&'a TextRun> {
    let texts = |node: &'a Node| if let Node::Text(run) = node { Some(run) } else { None };
    flat(nodes).into_iter().filter_map(texts).collect()
}

/// The box of the letters of a run: from the top of its capitals to the foot of its descenders. Where a line is broken a
/// blank hangs over its end, and nobody sees it.
fn text_box(run: &TextRun) -> Rect {
    let letters = run.text.trim_end().len();
    let width: f64 = run.glyphs.iter().filter(|glyph| glyph.range.start < letters).map(|glyph| glyph.advance).sum();
    Rect::new(run.origin.x, run.origin.y - 0.7 * run.size, run.origin.x + width, run.origin.y + 0.22 * run.size)
}

/// No words stand on others, and none outside the margins.
fn check_words(sheet: &Sheet) {
    let runs = runs(&sheet.nodes);
    assert!(!runs.is_empty());
    for (index, run) in runs.iter().enumerate() {
        let own = text_box(run);
        assert!(SAFE.inflate(0.3, 1.0).union(own) == SAFE.inflate(0.3, 1.0), "{}: `{}` {own:?}", sheet.id, run.text);
        for other in &runs[..index] {
            let common = own.intersect(text_box(other));
            assert!(
                common.width() < 0.05 || common.height() < 0.05,
                "{}: `{}` on `{}`",
                sheet.id,
                run.text,
                other.text
            );
        }
    }
}

/// The doc example of the solver's formula: at 400 mm and 63 mm a parallax of -9 mm stands at 350 mm. The place lies on
/// both lines of sight, and on the sheet both directions have one scale.
/// Source: `[Woods1993]`, similar triangles.
#[test]
fn a_target_stands_at_its_place_and_scale() {
    let spots = spots(&[ring("a", 30.0, -9.0)], &viewer()).unwrap();
    let (x, z) = spots[0].middle;
    assert!((z - 350.0).abs() < 1e-6 && (x - 30.0 * 350.0 / 400.0).abs() < 1e-6, "{x} {z}");
    for (eye, half_image) in [(-31.5, 30.0 + 4.5), (31.5, 30.0 - 4.5)] {
        let on_the_way = eye + (half_image - eye) * z / 400.0;
        assert!((on_the_way - x).abs() < 1e-6);
    }
    let plan = Plan::fit(Rect::new(0.0, 0.0, 200.0, 150.0), &spots, &viewer());
    let (eyes, target) = (plan.at((0.0, 1e-9)), plan.at((x, z)));
    assert!((target.x - eyes.x - 350.0 / plan.scale).abs() < 1e-6);
    assert!((target.y - eyes.y - x / plan.scale).abs() < 1e-6);
}

/// 440 mm before an area of 200 mm less the lead leaves 1 : 2.5.
#[test]
fn the_scale_is_the_largest_that_fits() {
    let spots = spots(&[ring("a", 0.0, -9.0)], &viewer()).unwrap();
    assert_eq!(Plan::fit(Rect::new(0.0, 0.0, 200.0, 150.0), &spots, &viewer()).scale, 2.5);
    assert_eq!(Plan::fit(Rect::new(0.0, 0.0, 200.0, 50.0), &spots, &viewer()).scale, 4.0);
}

/// A parallax of 42 mm stands at 400 * 63 / 21 = 1200 mm, past the sheet: it is drawn on its way, and told with its number.
#[test]
fn what_stands_beyond_the_sheet_is_told_with_its_number() {
    let spots = spots(&[ring("far", 20.0, 42.0)], &viewer()).unwrap();
    let area = Rect::new(0.0, 0.0, 200.0, 150.0);
    let plan = Plan::fit(area, &spots, &viewer());
    let (x, z) = spots[0].middle;
    assert!((x - 60.0).abs() < 1e-6 && (z - 1200.0).abs() < 1e-6);
    let drawn = plan.at((x, z));
    assert!(area.contains(drawn));
    assert!((drawn - plan.at((x / 2.0, z / 2.0))).hypot() < 1e-9, "600 mm is the border");
    assert_eq!(labels::of(&spots, &viewer(), english())[0].words(english()), "far: 80 cm away (10.5 pd)");
}

#[test]
fn many_targets_of_one_depth_share_a_label() {
    let features = |count: i32| -> Vec<_> {
        (0..count).map(|i| ring(&format!("r{i}"), f64::from(i), if i == 0 { -9.0 } else { 0.0 })).collect()
    };
    let words = |count| -> Vec<String> {
        labels::of(&spots(&features(count), &viewer()).unwrap(), &viewer(), english())
            .into_iter()
            .map(|label| label.words(english()))
            .collect()
    };
    assert_eq!(words(14).len(), 14);
    assert_eq!(words(30), ["r0: 5 cm toward (2.25 pd)", "r1, r2, r3 and 26 more: on the page"]);
}

fn scale(set: &SetSpec, demands: &[(f64, f64)]) -> (Scale, Slots) {
    let rung = |&demand| Rung { number: 1, id: String::new(), strand: "jump", difficulty: None, demand: Some(demand) };
    let rungs: Vec<Rung> = demands.iter().map(rung).collect();
    let frame = Rect::new(20.0, 50.0, 220.0, 150.0);
    (Scale::of(set, &rungs), Slots { frame, count: demands.len() })
}

/// P32: near limits of 13 and 17 give 3 away to 7 toward, and that is where the shade ends; so does a bar of a page that
/// asks just that.
#[test]
fn bars_end_at_their_demands_and_the_shade_at_the_zone() {
    let prepared = harbour();
    let set = with_norms(prepared.set.as_ref().unwrap());
    let (scale, slots) = scale(&set, &[(-3.0, 7.0), (1.0, 4.0), (2.0, 2.0)]);
    let (band, bar) = (scale.band(slots.frame).unwrap(), scale.bar(&slots, 0, (-3.0, 7.0)));
    assert!((band.y0 - bar.y0).abs() < 1e-9 && (band.y1 - bar.y1).abs() < 1e-9);
    let pd = bar.height() / 10.0;
    let second = scale.bar(&slots, 1, (1.0, 4.0));
    assert!((second.y0 - bar.y0 - 3.0 * pd).abs() < 1e-9 && (bar.y1 - second.y1 - 4.0 * pd).abs() < 1e-9);
    let stroke = scale.bar(&slots, 2, (2.0, 2.0));
    assert!((stroke.center().y - bar.y0 - 5.0 * pd).abs() < 1e-9 && 0.5 < stroke.height());
    let levels: Vec<f64> = scale.levels.iter().map(|level| level.at).collect();
    assert_eq!(levels, [-13.0, -21.0, 17.0, 21.0, -12.5], "blurs, breaks, and parallel eyes 50 mm apart at 400 mm");
}

/// Depths and demands count from a base for an eye turn; eyes are parallel at what is drawn, which holds the base.
#[test]
fn everything_counts_from_the_base() {
    let prepared = harbour();
    let mut set = with_norms(prepared.set.as_ref().unwrap());
    set.viewer.base = Base { horizontal: PrismDioptre(4.0), vertical: PrismDioptre(0.0) };
    let (scale, _) = scale(&set, &[(0.0, 0.0)]);
    assert_eq!(scale.levels.last().unwrap().at, -12.5 - 4.0);
    // 4 pd at 400 mm are 16 mm of parallax.
    let spots = spots(&[ring("a", 0.0, -16.0 - 9.0)], &set.viewer).unwrap();
    assert!((spots[0].middle.1 - 350.0).abs() < 1e-6 && (spots[0].parallax.0 + 9.0).abs() < 1e-9);
}

/// The ends of the comfort zone stand where the eyes turn by 1 degree more or less than to the page, by the definition of
/// disparity. Source: `[Lambooij2009]` for the degree.
#[test]
fn comfort_ends_at_one_degree() {
    let prepared = harbour();
    let (scale, slots) = scale(prepared.set.as_ref().unwrap(), &[(-1.0, 2.0)]);
    let band = scale.comfort_band(slots.frame).unwrap();
    let (zero, one) = (scale.y(slots.frame, 0.0), scale.y(slots.frame, 1.0));
    for (y, degrees) in [(band.y0, 1.0_f64), (band.y1, -1.0)] {
        let parallax = -(y - zero) / (one - zero) * 4.0;
        let place = 400.0 * 63.0 / (63.0 - parallax);
        let turn = |z: f64| 2.0 * (31.5 / z).atan();
        assert!((turn(place) - turn(400.0) - degrees.to_radians()).abs() < 1e-9, "{degrees}");
    }
}

#[test]
fn sheard_and_a_missing_range_are_named() {
    let prepared = harbour();
    let mut set = prepared.set.clone().unwrap();
    assert!(scale(&set, &[]).0.words(english()).starts_with("no range of the viewer is known"));
    set.viewer.zone = Zone::everyday(&Norms::MorganNear.reserves(), Some(Phoria(PrismDioptre(4.0))));
    assert_eq!(
        scale(&set, &[]).0.words(english()),
        "range of the viewer: 3 pd away (Percival, middle third) to 3 pd toward (Sheard, twice the phoria)"
    );
}

/// Ladders of one page, of a sheet, of two sheets, and of numbers with three digits, in every language.
#[test]
fn ladders_of_any_length_keep_their_words_apart() {
    let prepared = harbour();
    let plain = prepared.set.clone().unwrap();
    let mut named = with_norms(&plain);
    named.title = "A title that goes on and on, past the end of any line that a sheet has room for, and further".into();
    let all: Vec<ChartPage<'_>> = pages(&prepared).into_iter().cycle().take(45).collect();
    let named = Language::ALL.map(|language| SetSpec { language, ..named.clone() });
    for set in named.iter().chain([&plain]) {
        for (count, ids) in
            [(1, &["ladder"][..]), (40, &["ladder"]), (41, &["ladder-1", "ladder-2"]), (45, &["ladder-1", "ladder-2"])]
        {
            let sheets = ladder(&Charts { set, pages: &all[..count] }).unwrap();
            assert_eq!(sheets.iter().map(|sheet| sheet.id.as_str()).collect::<Vec<_>>(), ids);
            sheets.iter().for_each(check_words);
        }
    }
    let sheets = ladder(&Charts { set: &plain, pages: &[] }).unwrap();
    assert_eq!(sheets.len(), 1);
}

/// Every page of the demo set, without a range, and with one in every language.
#[test]
fn plans_keep_their_words_apart() {
    let prepared = harbour();
    let plain = prepared.set.clone().unwrap();
    let all = pages(&prepared);
    let normed = Language::ALL.map(|language| SetSpec { language, ..with_norms(&plain) });
    for set in normed.iter().chain([&plain]) {
        let charts = Charts { set, pages: &all };
        for page in &all {
            check_words(&plan(&charts, page).unwrap());
        }
    }
}

/// Forty depths of their own have no room for forty labels: some stand for all, and the sheet says so.
#[test]
fn labels_that_do_not_fit_are_counted() {
    let prepared = harbour();
    let set = prepared.set.clone().unwrap();
    let all = pages(&prepared);
    let features: Vec<_> =
        (0..40).map(|i| ring(&format!("r{i}"), f64::from(2 * i) - 40.0, -0.5 * f64::from(i))).collect();
    let sheet = plan(&Charts { set: &set, pages: &all }, &ChartPage { solved: &features, ..all[0] }).unwrap();
    check_words(&sheet);
    let words: Vec<&str> = runs(&sheet.nodes).into_iter().map(|run| &*run.text).collect();
    let labels = words.iter().filter(|words| words.contains(" pd)") || words.ends_with("on the page")).count();
    assert!((20..40).contains(&labels));
    assert!(words.contains(&format!("{labels} of 40 labels; the report has the rest").as_str()), "{words:?}");
    assert!(words.iter().any(|w| w.starts_with("r0:")) && words.iter().any(|w| w.starts_with("r39:")));
}

/// At 6 m and at 20 cm, in every language, with twelve targets at depths of their own, one of them beyond the sheet.
#[test]
fn plans_hold_any_distance_and_many_depths() {
    let prepared = harbour();
    let all = pages(&prepared);
    for (distance, language) in [200.0, 6000.0].into_iter().flat_map(|d| Language::ALL.map(|language| (d, language))) {
        let mut set = prepared.set.clone().unwrap();
        set.language = language;
        set.viewer = Viewer::new(Mm(distance), Mm(63.0), (Mm(50.0), Mm(75.0)));
        let features: Vec<_> =
            (0..12).map(|i| ring(&format!("target-with-a-long-name-{i}"), 0.0, 45.0 - 5.0 * f64::from(i))).collect();
        let page = ChartPage { solved: &features, ..all[0] };
        let sheet = plan(&Charts { set: &set, pages: &all }, &page).unwrap();
        check_words(&sheet);
        let area = Rect::from_origin_size(Point::ZERO, SIZE);
        for node in flat(&sheet.nodes) {
            let Node::Fill(fill) = node else { continue };
            assert_eq!(area.union(fill.path.bounding_box()), area);
        }
    }
}

fn flat(nodes: &[Node]) -> Vec<&Node> {
    let mut all = Vec::new();
    for node in nodes {
        match node {
            Node::Group(_, inner) => all.extend(flat(inner)),
            other => all.push(other),
        }
    }
    all
}

/// Every strand that a page can have has its marker.
#[test]
fn every_strand_has_a_marker() {
    use crate::scene::Strand;
    for strand in [Strand::Check, Strand::Hold, Strand::Jump, Strand::Smooth, Strand::Depth] {
        let name = crate::solve::strand_name(strand, None);
        assert!(climb::STRANDS.iter().any(|(known, ..)| *known == name), "{name}");
    }
    assert!(climb::STRANDS.iter().any(|(known, ..)| *known == "away"));
}

#[test]
fn difficulty_rises_up_the_chart() {
    let slots = Slots { frame: Rect::new(0.0, 10.0, 100.0, 60.0), count: 4 };
    assert_eq!(climb::point(&slots, 0, 0.0), Point::new(12.5, 60.0));
    assert_eq!(climb::point(&slots, 3, 50.0), Point::new(87.5, 35.0));
    assert_eq!(climb::point(&slots, 1, 100.0).y, 10.0);
}
