//! What each eye sees of a print, against measured patches and a second estimate.

use depthpress::colour::print::NoReflectance;
use depthpress::colour::reflectance::smoothest;
use depthpress::colour::{Cmyk, Filter, FilterModel, Lamp, Print, Solids, Spectrum, Srgb8, Xyz};

use super::{gelatin, measured, near, number, print, rows, view};

const PATCHES: &str = include_str!("../data/fogra39l.csv");

/// A patch of FOGRA39L: ordered inks in per cent, measured X, Y, Z over 100, and L*, a*, b*.
fn patches() -> impl Iterator<Item = ([f64; 4], [f64; 3], [f64; 3])> {
    rows(PATCHES).map(|row| {
        let at = |i: usize| number(row[i]);
        ([0, 1, 2, 3].map(at), [4, 5, 6].map(|i| at(i) / 100.0), [7, 8, 9].map(at))
    })
}

/// The page colour that is separated into these inks; black comes alone.
fn page_colour([c, m, y, k]: [f64; 4]) -> Srgb8 {
    let value = |ink: f64| 255.0 * (1.0 - ink.max(k) / 100.0);
    Srgb8([c, m, y].map(|ink| value(ink).round() as u8))
}

/// P68: L*, a*, b* of the solids as Fogra prints them, from its X, Y, Z. The table gives both to two decimals, and near
/// black one step of X, Y, Z is 0.1 of a*: the tolerance is what half a step of each can do.
#[test]
fn measured_patches_have_their_published_lab() {
    for (_, xyz, lab) in patches() {
        let at = |shift: [f64; 3]| Xyz([0, 1, 2].map(|k| xyz[k] + 0.00005 * shift[k])).to_lab(Xyz::D50).0;
        let seen = at([0.0; 3]);
        let reach = [at([1.0, -1.0, 1.0]), at([-1.0, 1.0, -1.0])];
        for k in 0..3 {
            let slack = reach.iter().map(|end| (end[k] - seen[k]).abs()).fold(0.0, f64::max);
            near(seen[k], lab[k], slack + 0.005, &format!("{xyz:?}"));
        }
    }
}

/// The bundled solids are those of the table.
#[test]
fn bundled_solids_are_the_measured_ones() {
    let solids = Solids::fogra39l();
    let named = [solids.paper, solids.c, solids.m, solids.y, solids.my, solids.cy.unwrap(), solids.cm, solids.k];
    for ((_, xyz, _), bundled) in patches().zip(named) {
        (0..3).for_each(|k| near(bundled.0[k], xyz[k], 1e-12, "solid"));
    }
}

/// Every reflectance gives back the measured colour under D50 and stays within what a surface can reflect.
#[test]
fn reflectances_have_the_measured_colour_and_stay_from_0_to_1() {
    let d50 = Lamp::D50.spectrum();
    for (inks, xyz, _) in patches() {
        let reflectance = smoothest(Xyz(xyz), &d50).unwrap();
        assert!(reflectance.values().iter().all(|value| (0.0..=1.0).contains(value)), "{inks:?}");
        let seen = d50.times(&reflectance).tristimulus().map(|value| value / d50.luminance());
        (0..3).for_each(|k| near(seen[k], xyz[k], 1e-9, &format!("{inks:?}")));
    }
}

#[test]
fn impossible_surfaces_have_no_reflectance() {
    let d50 = Lamp::D50.spectrum();
    assert_eq!(smoothest(Xyz([1.2, 1.2, 1.0]), &d50), None);
    assert_eq!(smoothest(Xyz([0.1, -0.1, 0.1]), &d50), None);
    assert_eq!(smoothest(Xyz([f64::NAN, 0.1, 0.1]), &d50), None);
    let solids = Solids { my: Xyz([0.9, 0.1, 0.9]), ..Solids::fogra39l() };
    assert_eq!(Print::new(&solids, &d50), Err(NoReflectance { solid: "M+Y" }));
}

/// Full inks behind five filters: the estimate of another program (Meng et al 2015 in colour-science 0.4.7, minimised in
/// steps on a grid of 5 nm), to its two digits. Tints differ more: ours come from full inks, theirs from measured
/// tints.
#[test]
fn inks_behind_filters_are_as_light_as_estimated_elsewhere() {
    let medium = print(Lamp::D50);
    let filters: [FilterModel; 5] = [
        Filter::Red.into(),
        Filter::Cyan.into(),
        Filter::Blue.into(),
        measured(Filter::Red, gelatin(1)),
        measured(Filter::Cyan, gelatin(2)),
    ];
    for row in rows(include_str!("../data/ink_luminance.csv")) {
        let ink = [1, 2, 3].map(|i| number(row[i]));
        let colour = page_colour([ink[0], ink[1], ink[2], 0.0]);
        let full = ink.iter().all(|share| *share == 0.0 || *share == 100.0);
        for (filter, cell) in filters.iter().zip(&row[4..]) {
            let view = view(filter.clone(), &medium);
            let tolerance = if full { 0.006 } else { 0.05 };
            near(
                view.luminance(colour) / view.white(),
                number(cell),
                tolerance,
                &format!("{} {}", row[0], filter.name()),
            );
        }
    }
}

/// Tints and overprints of tints against the measured patches, without a filter: within 3 % of the paper.
#[test]
fn tints_are_as_light_as_measured() {
    let clear = measured(Filter::Red, Spectrum::from_fn(|_| 1.0));
    let eye = view(clear, &print(Lamp::D50));
    let paper = patches().next().unwrap().1[1];
    for (ordered, xyz, _) in patches() {
        near(eye.luminance(page_colour(ordered)), xyz[1] / paper, 0.03, &format!("{ordered:?}"));
    }
}

/// The lamp changes what an eye sees of the inks by less than 0.05 of the paper (computed elsewhere for A, D50, LED-B3).
#[test]
fn the_lamp_changes_little() {
    let lamps = [Lamp::A, Lamp::D50, Lamp::Led].map(print);
    for filter in [Filter::Red, Filter::Cyan, Filter::Blue] {
        for (ordered, ..) in patches() {
            let seen = lamps.each_ref().map(|medium| {
                let eye = view(filter, medium);
                eye.luminance(page_colour(ordered)) / eye.white()
            });
            let spread = seen.iter().copied().fold(0.0, f64::max) - seen.iter().copied().fold(1.0, f64::min);
            assert!(spread < 0.05, "{filter:?} {ordered:?}: {seen:?}");
        }
    }
}

/// A shop gets pure process inks: no magenta and no black in a cyan mark, no cyan and no black in a red one.
#[test]
fn separations_are_pure() {
    let inks = |hex| {
        let Cmyk { c, m, y, k } = Cmyk::of(super::hex(hex));
        [c, m, y, k].map(|share| (share * 1000.0).round() / 1000.0)
    };
    assert_eq!(inks("00ffff"), [1.0, 0.0, 0.0, 0.0]);
    assert_eq!(inks("66ffff"), [0.6, 0.0, 0.0, 0.0]);
    assert_eq!(inks("ff0000"), [0.0, 1.0, 1.0, 0.0]);
    assert_eq!(inks("000000"), [0.0, 0.0, 0.0, 1.0]);
    assert_eq!(inks("ffffff"), [0.0, 0.0, 0.0, 0.0]);
    assert_eq!(inks("333333"), [0.0, 0.0, 0.0, 0.8]);
}

/// A leak measured on paper comes back as the ghost of the full inks.
#[test]
fn measured_leaks_come_back_as_ghosts_on_paper() {
    use depthpress::colour::{Glasses, Ground, Views, inks, judge::judge};
    let leak = |colour, leak| FilterModel::Leak { colour, leak };
    for (left, right) in [(Filter::Red, Filter::Cyan), (Filter::Cyan, Filter::Red), (Filter::Red, Filter::Blue)] {
        let glasses = Glasses { left: leak(left, 0.08), right: leak(right, 0.25) };
        let eyes = judge(&Views::new(&glasses, &print(Lamp::D65)), &inks(&glasses, Ground::White));
        near(eyes[0].ghost, 0.08, 1e-9, "left leak");
        near(eyes[1].ghost, 0.25, 1e-9, "right leak");
    }
}
