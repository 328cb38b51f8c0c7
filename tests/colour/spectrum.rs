//! Spectra and colour spaces against published values.

use depthpress::colour::spectrum::{Between, TableError};
use depthpress::colour::{Filter, Lab, Lamp, LinearRgb, Spectrum, Srgb8, Xyz};

use super::{gelatin, near};

/// Chromaticities of the illuminants for 2 degrees: CIE 015:2018, tables of the illuminants; LED-B3 as printed there.
#[test]
fn lamps_have_their_published_chromaticities() {
    for (lamp, x, y) in [
        (Lamp::A, 0.44758, 0.40745),
        (Lamp::C, 0.31006, 0.31616),
        (Lamp::D50, 0.34567, 0.35851),
        (Lamp::D65, 0.31272, 0.32903),
        (Lamp::Led, 0.3756, 0.3723),
    ] {
        let [tx, ty, tz] = lamp.spectrum().tristimulus();
        let sum = tx + ty + tz;
        near(tx / sum, x, 2e-4, lamp.name());
        near(ty / sum, y, 2e-4, lamp.name());
    }
}

/// No. 25 under illuminant C: X, Y, Z of 0.3038, 0.1425, 0.0001 are printed by MacAdam 1945, JOSA 35, p. 670. The
/// filters were two pieces of one make, and our table is coarser: 1.4 % apart.
#[test]
fn a_measured_filter_under_illuminant_c_has_its_published_colour() {
    let lamp = Lamp::C.spectrum();
    let seen = lamp.times(&gelatin(1)).tristimulus().map(|value| value / lamp.luminance());
    for (value, published) in seen.into_iter().zip([0.3038, 0.1425, 0.0001]) {
        near(value, published, 0.015 * published + 0.00005, "No. 25 under C");
    }
}

/// Luminous transmittance of No. 44 under D65: 16.1 %, computed with colour-science 0.4.7 from the same table.
#[test]
fn the_measured_cyan_filter_passes_its_share_of_daylight() {
    let lamp = Lamp::D65.spectrum();
    near(lamp.times(&gelatin(2)).luminance() / lamp.luminance(), 0.161, 0.0005, "No. 44 under D65");
}

/// IEC 61966-2-1: the white and the primaries of sRGB in X, Y, Z; Lab of white and of the three primaries from the
/// formulas of CIE 015, as printed in many tables (red 53.24, 80.09, 67.20).
#[test]
fn srgb_primaries_have_their_published_colours() {
    for (colour, xyz, lab) in [
        ([255, 0, 0], [0.4124, 0.2126, 0.0193], [53.24, 80.09, 67.20]),
        ([0, 255, 0], [0.3576, 0.7152, 0.1192], [87.73, -86.18, 83.18]),
        ([0, 0, 255], [0.1805, 0.0722, 0.9505], [32.30, 79.19, -107.86]),
        ([255, 255, 255], [0.9505, 1.0, 1.0890], [100.0, 0.0, 0.0]),
        ([0, 0, 0], [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]),
    ] {
        let seen = Srgb8(colour).to_linear().to_xyz();
        let Lab(seen_lab) = seen.to_lab(Xyz::D65);
        for k in 0..3 {
            near(seen.0[k], xyz[k], 2e-4, "XYZ");
            near(seen_lab[k], lab[k], 0.05, "Lab");
        }
        near(seen.0[1], Srgb8(colour).luminance(), 1e-12, "Y is the luminance");
    }
    near(Lab([50.0, 3.0, 4.0]).distance(Lab([50.0, 0.0, 0.0])), 5.0, 1e-12, "distance");
}

#[test]
fn light_outside_the_gamut_is_no_colour() {
    assert_eq!(LinearRgb([1.0, 0.0, 0.5]).to_srgb8(), Some(Srgb8([255, 0, 188])));
    assert_eq!(LinearRgb([1.001, 0.0, 0.5]).to_srgb8(), None);
    assert_eq!(LinearRgb([0.0, -0.001, 0.5]).to_srgb8(), None);
    assert_eq!(LinearRgb([f64::NAN, 0.0, 0.5]).to_srgb8(), None);
    near(LinearRgb::WHITE.luminance() - LinearRgb::BLACK.luminance(), 1.0, 1e-12, "white less black");
}

#[test]
fn a_table_is_read_straight_between_rows_and_held_outside() {
    let spectrum = Spectrum::from_table(&[(400.0, 0.2), (500.0, 0.4), (720.0, 0.0)], Between::Straight).unwrap();
    let at = |nm: usize| spectrum.values()[nm - 380];
    assert_eq!((at(380), at(400), at(780)), (0.2, 0.2, 0.0));
    near(at(450), 0.3, 1e-12, "half way");
    near(at(610), 0.2, 1e-12, "half way down");
}

/// A polynomial of the fourth degree comes back exactly inside, where no row had to be added: the slopes and curvatures
/// that Sprague's polynomial meets are exact for it (CIE 167:2005).
#[test]
fn a_smooth_table_returns_a_smooth_curve() {
    let curve = |nm: f64| {
        let x = (nm - 380.0) / 400.0;
        0.3 + x - 1.7 * x * x + 0.9 * x * x * x + 0.2 * x * x * x * x
    };
    let table: Vec<_> = (0..=40).map(|i| 380.0 + 10.0 * f64::from(i)).map(|nm| (nm, curve(nm))).collect();
    let spectrum = Spectrum::from_table(&table, Between::Smooth).unwrap();
    spectrum
        .points()
        .filter(|(nm, _)| (400.0..=760.0).contains(nm))
        .for_each(|(nm, value)| near(value, curve(nm), 1e-9, "polynomial"));
}

#[test]
fn light_is_never_negative() {
    let table: Vec<_> =
        (0..=40).map(|i| 380.0 + 10.0 * f64::from(i)).map(|nm| (nm, if nm == 600.0 { 1.0 } else { 0.0 })).collect();
    let spectrum = Spectrum::from_table(&table, Between::Smooth).unwrap();
    assert!(spectrum.values().iter().all(|value| 0.0 <= *value));
    assert_eq!(spectrum.values()[220], 1.0);
}

#[test]
fn a_bad_table_says_which_row_is_wrong() {
    let read = |rows: &[(f64, f64)]| Spectrum::from_table(rows, Between::Straight).unwrap_err();
    let full = |bad: (f64, f64)| [(390.0, 0.1), bad, (710.0, 0.3)];
    assert_eq!(read(&[]), TableError::TooFew { rows: 0 });
    assert_eq!(read(&[(500.0, 1.0)]), TableError::TooFew { rows: 1 });
    assert!(matches!(read(&full((f64::NAN, 0.2))), TableError::NotFinite { row: 1 }));
    assert!(matches!(read(&full((500.0, f64::INFINITY))), TableError::NotFinite { row: 1 }));
    assert_eq!(read(&full((500.0, -0.2))), TableError::Negative { row: 1, value: -0.2 });
    assert_eq!(read(&full((390.0, 0.2))), TableError::Order { row: 1 });
    let short = read(&[(400.0, 0.1), (690.0, 0.2)]);
    assert_eq!(short.to_string(), "the rows reach from 400 to 690 nm, needed 400 to 700 nm");
    assert_eq!(read(&full((380.0, 0.2))).to_string(), "the wavelength of row 2 is not above the one before");
}

/// Tables compiled by Peed call No. 25 a red and No. 44 a minus-red (cyan) filter.
#[test]
fn measured_filters_are_named_by_what_they_pass() {
    assert_eq!(Filter::of(&gelatin(1)), Some(Filter::Red));
    assert_eq!(Filter::of(&gelatin(2)), Some(Filter::Cyan));
    assert!(Filter::ALL.iter().all(|filter| Filter::of(&filter.transmittance()) == Some(*filter)));
    assert_eq!(Filter::of(&Spectrum::from_fn(|_| 0.5)), None);
    assert_eq!(Filter::of(&Spectrum::from_fn(|_| 0.0)), None);
}
