//! What each eye sees of a screen, against published fractions.

use depthpress::colour::judge::{EyeReport, crosstalk};
use depthpress::colour::null::{Wanted, null_light};
use depthpress::colour::{Filter, NamedScreen, Screen, Srgb8, View, channels, inks};
use depthpress::colour::{Glasses, Ground};

use super::{gelatin, hex, measured, near, screen, view};

const RED_CYAN: [[bool; 3]; 2] = [[true, false, false], [false, true, true]];

/// P54: the tube of Brainard 1997 behind ideal filters with an edge at 600 nm, computed with colour-science 0.4.7.
#[test]
fn the_tube_behind_ideal_filters_has_its_published_fractions() {
    let tube = Screen::named(NamedScreen::Crt);
    let shares = tube.shares();
    let red = view(Filter::Red, &screen(NamedScreen::Crt)).channels().unwrap();
    let cyan = view(Filter::Cyan, &screen(NamedScreen::Crt)).channels().unwrap();
    for (k, (share, passes)) in [(0.2162, 0.6460), (0.6975, 0.0236), (0.0863, 0.0182)].into_iter().enumerate() {
        near(shares[k], share, 0.0001, "share of luminance");
        near(red[k] / shares[k], passes, 0.0003, "fraction through red");
        near(red[k] + cyan[k], shares[k], 1e-12, "red and cyan pass all of it");
    }
    let [own, other] = RED_CYAN;
    near(crosstalk(red, own, other).unwrap(), 0.1293, 0.0003, "crosstalk of the red eye");
    near(crosstalk(cyan, other, own).unwrap(), 0.1000, 0.0003, "crosstalk of the cyan eye");
}

/// The tube behind the gelatin filters No. 25 and No. 44, computed with colour-science 0.4.7 from the same table.
#[test]
fn the_tube_behind_measured_filters_has_its_computed_fractions() {
    let tube = screen(NamedScreen::Crt);
    let shares = Screen::named(NamedScreen::Crt).shares();
    let red = view(measured(Filter::Red, gelatin(1)), &tube).channels().unwrap();
    for (k, passes) in [0.5616, 0.0247, 0.0165].into_iter().enumerate() {
        near(red[k] / shares[k], passes, 0.0003, "fraction through No. 25");
    }
    let cyan = view(measured(Filter::Cyan, gelatin(2)), &tube).channels().unwrap();
    let [own, other] = RED_CYAN;
    near(crosstalk(red, own, other).unwrap(), 0.154, 0.0005, "crosstalk behind No. 25");
    near(crosstalk(cyan, other, own).unwrap(), 0.039, 0.0005, "crosstalk behind No. 44");
}

/// Darkness of marks on white, `1 - L(mark)/L(ground)`, on a panel with a fluorescent lamp: the fractions of its
/// primaries behind No. 25 (0.5764, 0.0207, 0.0081 of 0.2400, 0.6598, 0.1002) and the darkness of six marks, both
/// computed with colour-science 0.4.7 from spectra of Mantiuk et al 2011. The spectra are not ours to ship, so the test
/// starts from the fractions.
#[test]
fn marks_on_white_are_as_dark_as_computed_elsewhere() {
    let red = View::from_channels([0.2400 * 0.5764, 0.6598 * 0.0207, 0.1002 * 0.0081]);
    // From the darkness of the blue, green and red mark behind No. 44: what the three primaries give.
    let cyan = View::from_channels([1.0 - 0.997, 1.0 - 0.278, 1.0 - 0.724]);
    for (mark, dark_to_red, dark_to_cyan) in [
        ("00ffff", 0.905, 0.003),
        ("0000ff", 0.995, 0.724),
        ("00ff00", 0.911, 0.278),
        ("ff0000", 0.095, 0.997),
        ("ff00ff", 0.089, 0.722),
    ] {
        for (view, dark) in [(&red, dark_to_red), (&cyan, dark_to_cyan)] {
            near(1.0 - view.luminance(hex(mark)) / view.white(), dark, 0.001, mark);
        }
    }
}

/// P58: what looks dark and light through a red filter, hobyrne at everything2.com: here from spectra, on a real tube.
#[test]
fn the_red_filter_darkens_what_is_published() {
    let red = view(Filter::Red, &screen(NamedScreen::Crt));
    let light = |colours: [&str; 4]| colours.map(|colour| red.luminance(hex(colour)) / red.white());
    assert!(light(["000000", "00ff00", "0000ff", "00ffff"]).iter().all(|seen| *seen < 0.2));
    assert!(light(["ff0000", "ff00ff", "ffff00", "ffffff"]).iter().all(|seen| 0.8 < *seen));
}

/// P55 and P59: the null grounds for crosstalks of 0.1293 and 0.1000. The levels follow from the two equations; then
/// the ghost mark has the luminance of the ground for both eyes.
#[test]
fn the_null_grounds_hide_both_ghosts() {
    let (x_red, x_cyan) = (0.1293, 0.1000);
    let seen = [[1.0, 0.7 * x_red, 0.3 * x_red], [x_cyan, 0.7, 0.3]];
    let light = |eye: usize, rgb: [f64; 3]| -> f64 { (0..3).map(|k| seen[eye][k] * rgb[k]).sum() };
    let (red, cyan) = ([1.0, 0.0, 0.0], [0.0, 1.0, 1.0]);
    for (to_red_eye, to_cyan_eye, r, t) in [(cyan, red, 0.8821, 0.9118), (red, cyan, 0.1179, 0.0882)] {
        let wanted = Wanted { left: light(0, to_cyan_eye), right: light(1, to_red_eye) };
        let ground = null_light(seen, RED_CYAN, wanted).unwrap().0;
        near(ground[0], r, 1e-4, "red level");
        near(ground[1], t, 1e-4, "green level");
        near(ground[2], t, 1e-4, "blue level");
        near(light(0, ground), wanted.left, 1e-12, "ghost to the red eye");
        near(light(1, ground), wanted.right, 1e-12, "ghost to the cyan eye");
    }
}

/// Nothing hides a ghost from eyes that see the same.
#[test]
fn equal_filters_have_no_null_ground() {
    let seen = [[0.5, 0.3, 0.2]; 2];
    assert_eq!(null_light(seen, RED_CYAN, Wanted { left: 0.4, right: 0.4 }), None);
    assert_eq!(crosstalk([0.0; 3], RED_CYAN[0], RED_CYAN[1]), None);
}

/// Without a tint, the ghost of the eye map's inks is the crosstalk, on white and on black, and so is what the contrast
/// lacks (references of P54 and P55: mark contrast is 1 - X).
#[test]
fn the_ghost_of_plain_inks_is_the_crosstalk_on_both_grounds() {
    let glasses = Glasses::ideal(Filter::Red, Filter::Cyan);
    let red = view(Filter::Red, &screen(NamedScreen::Crt));
    for ground in [Ground::White, Ground::Black] {
        let i = inks(&glasses, ground);
        let eye = EyeReport::new(&red, i.left, i.right, i.both, i.ground);
        near(eye.ghost, 0.1293, 0.0003, ground.name());
        near(eye.signal, 1.0 / 1.1293, 0.0003, ground.name());
    }
}

#[test]
fn a_mark_that_does_not_show_has_an_endless_ghost() {
    let red = view(Filter::Red, &screen(NamedScreen::Ideal));
    let eye = EyeReport::new(&red, hex("ff0000"), hex("00ffff"), hex("000000"), Srgb8::WHITE);
    assert_eq!((eye.contrast, eye.signal, eye.ghost), (0.0, 0.0, f64::INFINITY));
    assert!(!eye.shows_on(Ground::White));
}

/// Two measured numbers instead of spectra: the ghost of the full inks comes out as measured, on both grounds and
/// whichever way round the glasses are worn.
#[test]
fn measured_leaks_come_back_as_ghosts() {
    use depthpress::colour::{FilterModel, Views, judge::judge};
    let leak = |colour, leak| FilterModel::Leak { colour, leak };
    for (a, b) in [(Filter::Red, Filter::Cyan), (Filter::Red, Filter::Green), (Filter::Magenta, Filter::Green)] {
        for (left, right) in [(a, b), (b, a)] {
            let glasses = Glasses { left: leak(left, 0.04), right: leak(right, 0.12) };
            for medium in [screen(NamedScreen::Ideal), screen(NamedScreen::Crt)] {
                for ground in [Ground::White, Ground::Black] {
                    let eyes = judge(&Views::new(&glasses, &medium), &inks(&glasses, ground));
                    near(eyes[0].ghost, 0.04, 1e-9, "left leak");
                    near(eyes[1].ghost, 0.12, 1e-9, "right leak");
                }
            }
        }
    }
    assert_eq!(channels(&Glasses::ideal(Filter::Red, Filter::Green)), RED_CYAN);
}

/// The patch on which the other eye's mark vanishes names the leak: a ghost page in numbers.
#[test]
fn the_patch_that_hides_the_ghost_is_the_one_of_the_leak() {
    let glasses = Glasses::ideal(Filter::Red, Filter::Cyan);
    let nominal = view(Filter::Red, &screen(NamedScreen::Ideal));
    let real = View::from_channels([0.2, 0.2 * 0.09 * 0.8, 0.2 * 0.09 * 0.2]);
    for ground in [Ground::White, Ground::Black] {
        let i = inks(&glasses, ground);
        let off = |share: f64| {
            let patch = nominal.toward(i.ground, i.left, share);
            (real.luminance(patch) - real.luminance(i.right)).abs()
        };
        let best = (0..=20).map(|n| f64::from(n) / 100.0).min_by(|a, b| off(*a).total_cmp(&off(*b))).unwrap();
        near(best, 0.09, 0.0051, ground.name());
    }
}
