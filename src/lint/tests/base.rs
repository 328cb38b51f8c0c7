//! Tests of the rules on a base: depths count from it, room on the page does not.

use crate::optics::Base;
use crate::units::PrismDioptre;

use super::*;

pub(super) fn lint_on(horizontal: f64, vertical: f64, features: &[SolvedFeature]) -> Vec<Diagnostic> {
    let base = Base { horizontal: PrismDioptre(horizontal), vertical: PrismDioptre(vertical) };
    let pages = [Page { id: "page", features, graded: Graded::default() }];
    let devices = [Device { edition: "screen", ppi: Ppi(96) }];
    let field = (Mm(180.0), Mm(120.0));
    let viewer = Viewer { base, ..VIEWER };
    let input = Input {
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
    };
    check(&input).into_iter().map(|f| f.diagnostic).collect()
}

/// 30 x 20 mm at 45 mm below the middle: 5 mm from the edge of 60. 2 pd at 40 cm are 8 mm, half of them each eye.
#[test]
fn a_vertical_base_takes_room_above_and_below() {
    let low = [target("a", (0.0, 45.0), 0.0)];
    assert!(lint_on(0.0, 2.0, &low).is_empty());
    let message = "`a` reaches `1` mm past the bottom edge of the art field of `180` x `120` mm, with the base";
    assert_eq!(lint_on(0.0, 3.0, &low)[0].message, message);
    // The right eye's picture lies higher: what it alone sees has more room below.
    let right = [SolvedFeature { eyes: Eyes::Right, ..low[0].clone() }];
    assert!(!codes(&lint_on(0.0, 3.0, &right)).contains(&"E-ART-FIELD"));
    assert!(codes(&lint_on(0.0, -3.0, &right)).contains(&"E-ART-FIELD"));
}

/// A tenth of 180 mm and of 120 mm are 18 mm and 12 mm: 4.5 pd and 3 pd at 40 cm.
#[test]
fn a_large_base_is_told_in_millimetres() {
    assert!(lint_on(4.0, 3.0, &[]).is_empty());
    let found = lint_on(-20.0, 3.5, &[]);
    assert_eq!(codes(&found), ["W-BASE-ROOM", "W-BASE-ROOM"]);
    assert_eq!(found[0].message, "`base` of `20` pd takes `80` mm of the width of the art field, `180` mm");
    assert_eq!(found[1].message, "`base_vertical` of `3.5` pd takes `14` mm of the height of the art field, `120` mm");
}

#[test]
fn small_depths_and_near_places_count_from_the_base() {
    // 0.1 mm from the base is finer than a dot of 0.265 mm; the base itself is no depth.
    assert_eq!(codes(&lint_on(3.0, 0.0, &[target("a", (0.0, 0.0), -12.1)])), ["W-DEVICE-DOT"]);
    assert!(lint_on(3.0, 0.0, &[target("a", (0.0, 0.0), -12.0)]).is_empty());
    // -72 mm is nearer than half the distance; 12 mm of it are the base.
    assert!(!codes(&lint_on(3.0, 0.0, &[target("a", (0.0, 0.0), -72.0)])).contains(&"W-NEAR-PLACE"));
    assert!(codes(&lint_on(0.0, 0.0, &[target("a", (0.0, 0.0), -72.0)])).contains(&"W-NEAR-PLACE"));
}

/// The least base (1 pd across, 0.5 pd in height), at the shortest distance of a spec, 20 cm, before its coarsest raster, 72 ppi.
#[test]
fn no_base_is_finer_than_a_dot() {
    let base = Base { horizontal: PrismDioptre(1.0), vertical: PrismDioptre(0.5) };
    let viewer = Viewer { base, distance: Mm(200.0), ..VIEWER };
    let dot = Ppi(72).pixel().0;
    assert!(dot < viewer.base_parallax().0.abs() && dot < viewer.base_rise().0);
}

/// Nine tenths of 50 mm are 45 mm, 11.25 pd away at 40 cm; 3 pd of them are the base.
#[test]
fn parallel_eyes_come_near_with_the_base() {
    let found = lint_on(-3.0, 0.0, &[target("a", (0.0, 0.0), 46.0)]);
    let near = found.iter().find(|d| d.code == "W-NEAR-PARALLEL").unwrap();
    assert!(near.message.contains("(`11.5` pd away, the base in it)"), "{near:?}");
    assert_eq!(near.help, "ask for less than `8.25 pd away`");
}
