//! The rules about what a page asks of the reader, and about the order of the pages.

use super::*;
use crate::optics::Zone;
use crate::optics::grading::{Asked, difficulty};
use crate::optics::reserves::Norms;
use crate::scene::{Effort, Strand};
use crate::solve::{asked, strand_name};

/// Before a viewer with the middle third of the near norms: 3 away to 7 toward (P32).
fn known() -> Viewer {
    Viewer { zone: Zone::everyday(&Norms::MorganNear.reserves(), None), ..VIEWER }
}

/// The findings about pages of a strand, each with its features.
fn lint_strand(strand: Strand, pages: &[&[SolvedFeature]], viewer: &Viewer, near_point: Option<Mm>) -> Vec<Diagnostic> {
    let graded = |features: &[SolvedFeature]| {
        let asked: Option<Asked> = asked(features, Effort::default(), strand, viewer);
        let total = asked.and_then(|asked| difficulty(&asked, viewer.zone.as_ref())).map(|found| found.total);
        Graded { strand: strand_name(strand, asked.as_ref()), asked, total }
    };
    let ids = ["first", "second", "third"];
    let pages: Vec<_> =
        ids.iter().zip(pages).map(|(id, features)| Page { id, features, graded: graded(features) }).collect();
    let field = (Mm(180.0), Mm(120.0));
    let input = Input {
        viewer,
        near_point,
        free_order: false,
        field,
        devices: &[],
        pages: &pages,
        language: Language::En,
        texts: &[],
        told: &[],
        editions: &[],
    };
    check(&input).into_iter().map(|f| f.diagnostic).collect()
}

fn alone(demand: f64) -> [SolvedFeature; 1] {
    [target("lamp", (0.0, 0.0), -4.0 * demand)]
}

/// Before a near point of 30 cm, which a parallax of 21 mm toward reaches: 400 · 63 / (63 + 21) = 300.
pub(super) fn at_near_point(parallax: f64) -> Vec<Diagnostic> {
    lint_strand(Strand::Hold, &[&[target("lamp", (0.0, 0.0), -parallax)]], &VIEWER, Some(Mm(300.0)))
}

/// One target of this demand before the near norms.
pub(super) fn in_zone(demand: f64) -> Vec<Diagnostic> {
    lint_strand(Strand::Hold, &[&alone(demand)], &known(), None)
}

/// Pages of these demands, one after the other.
pub(super) fn in_order(demands: [f64; 2]) -> Vec<Diagnostic> {
    let [first, second] = demands.map(alone);
    lint_strand(Strand::Hold, &[&first, &second], &known(), None)
}

/// Two targets of 30 mm, 4.3 degrees, so far apart in disparity; they fuse over 2.15 degrees.
pub(super) fn apart(arcmin: f64) -> Vec<Diagnostic> {
    let viewing = VIEWER.viewing().unwrap();
    let parallax = |share: f64| {
        let angle = crate::units::Angle::from_arcmin(arcmin * share);
        viewing.parallax_of_disparity(angle).unwrap().0
    };
    let pair = [target("a", (-17.0, 0.0), parallax(0.5)), target("b", (17.0, 0.0), parallax(-0.5))];
    lint_strand(Strand::Depth, &[&pair], &VIEWER, None)
}

fn found(findings: Vec<Diagnostic>, code: &str) -> Vec<String> {
    findings.into_iter().filter(|d| d.code == code).map(|d| format!("{}; {}", d.message, d.help)).collect()
}

#[test]
fn a_demand_past_the_range_names_its_bound() {
    let told = found(in_zone(7.5), "E-ZONE");
    let wanted = "`lamp` on `first` asks for `7.5` pd toward: past the reader's limit by `percival`, `7` pd toward; ask \
                  for at most `7 pd toward`";
    assert_eq!(told, [wanted]);
    assert_eq!(found(in_zone(-3.2), "E-ZONE").len(), 1);
    assert_eq!(found(in_zone(-3.0), "E-ZONE"), [] as [String; 0]);
}

/// A base moves what the reader is asked.
#[test]
fn the_range_counts_from_the_base() {
    let mut viewer = known();
    viewer.base.horizontal = PrismDioptre(2.0);
    let codes_of = |demand| codes(&lint_strand(Strand::Hold, &[&alone(demand)], &viewer, None)).contains(&"E-ZONE");
    assert!(!codes_of(9.0) && codes_of(9.1) && !codes_of(-1.0) && codes_of(-1.1));
}

/// 3.34 degrees are 5.84 prism dioptres (`[Nagata2002]`), the published break is 21 (`[Morgan1944]`).
#[test]
fn without_a_range_the_published_ones_are_named() {
    let of = |demand| lint_strand(Strand::Hold, &[&alone(demand)], &VIEWER, None);
    assert_eq!(found(of(5.8), "N-ZONE"), [] as [String; 0]);
    assert!(found(of(5.9), "N-ZONE")[0].contains("[Nagata2002], as no range is known, `5.84` pd toward"));
    assert_eq!((found(of(20.9), "N-ZONE").len(), found(of(20.9), "W-ZONE").len()), (1, 0));
    let worst = of(21.1);
    assert!(found(worst.clone(), "W-ZONE")[0].contains("[Morgan1944]"));
    assert_eq!(found(worst, "N-ZONE"), [] as [String; 0]);
}

#[test]
fn jumps_have_limits_of_their_own() {
    let of = |strand, demand| {
        let pair = [target("a", (-40.0, 0.0), 0.0), target("b", (40.0, 0.0), -4.0 * demand)];
        found(lint_strand(strand, &[&pair], &VIEWER, None), "W-JUMP").len()
    };
    assert_eq!((of(Strand::Jump, 12.0), of(Strand::Jump, 12.1), of(Strand::Smooth, 12.1)), (0, 1, 0));
    assert_eq!((of(Strand::Jump, -3.0), of(Strand::Jump, -3.1)), (0, 1));
}

/// The page that the message proposes is as hard as the one before it.
#[test]
fn a_step_back_names_both_pages_and_what_mends_it() {
    let told = found(in_order([4.0, 2.0]), "W-RISE");
    assert_eq!(told.len(), 1);
    assert!(
        told[0].starts_with("`second` is easier than `first`, the page before it on the strand `toward`"),
        "{told:?}"
    );
    assert!(told[0].contains("; ask for about `4 pd toward` with all else as it is"), "{told:?}");
    assert_eq!(found(in_order([2.0, 2.0]), "W-RISE"), [] as [String; 0]);
}

#[test]
fn too_high_a_step_names_the_limit() {
    let told = found(in_order([1.0, 6.0]), "W-RISE");
    assert!(told[0].starts_with("`second` is much harder than `first`"), "{told:?}");
    assert!(told[0].contains(", limit `"), "{told:?}");
    assert_eq!(found(in_order([1.0, 2.0]), "W-RISE"), [] as [String; 0]);
}

/// Toward and away rise side by side, and check pages stand in no order.
#[test]
fn strands_rise_one_by_one() {
    let (near, far) = (alone(4.0), alone(-0.5));
    assert_eq!(found(lint_strand(Strand::Hold, &[&near, &far, &near], &known(), None), "W-RISE"), [] as [String; 0]);
    let back = [&alone(4.0)[..], &alone(0.5)];
    assert_eq!(found(lint_strand(Strand::Check, &back, &known(), None), "W-RISE"), [] as [String; 0]);
}

#[test]
fn targets_far_from_each_other_on_the_page_are_no_neighbours() {
    let pair = [target("a", (-50.0, 0.0), 9.0), target("b", (50.0, 0.0), -9.0)];
    assert_eq!(found(lint_strand(Strand::Depth, &[&pair], &VIEWER, None), "W-FUSION"), [] as [String; 0]);
}
