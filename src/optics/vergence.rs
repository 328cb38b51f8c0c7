//! How far the eyes turn: exact vergence angles, disparity, prism dioptres, metre angles.
//!
//! Exact forms only. The small-angle form `E dd / D^2` is 24 % low already for a depth step of a quarter of the viewing
//! distance, so it has no place here.

use super::finite;
use super::geometry::{SpacePoint, Viewing};
use crate::units::{Angle, Mm, PrismDioptre};

impl Viewing {
    /// Demand against the page: positive toward (base-out), negative away (base-in).
    ///
    /// ```text
    /// pd = -100 p / D
    /// ```
    ///
    /// Any finite parallax. At 400 mm, 4 mm are 1 prism dioptre.
    /// Source: `[ISO13666]`, definition of the prism dioptre (1 cm at 1 m).
    pub fn demand_of_parallax(&self, parallax: Mm) -> Option<PrismDioptre> {
        finite(-100.0 * parallax.0 / self.distance().0).map(unsigned_zero).map(PrismDioptre)
    }

    /// Parallax on the page for a demand against the page; the inverse of [`Self::demand_of_parallax`].
    /// Source: `[ISO13666]`, definition of the prism dioptre (1 cm at 1 m).
    pub fn parallax_of_demand(&self, demand: PrismDioptre) -> Option<Mm> {
        finite(-demand.0 * self.distance().0 / 100.0).map(unsigned_zero).map(Mm)
    }

    /// Demand of the pair itself, counted from parallel eyes: the bare page has 100 E/D, and 0 is parallel.
    ///
    /// ```text
    /// pd = 100 (E - p) / D
    /// ```
    ///
    /// This clinical number is twice 100 tan(half angle), not 100 tan(angle). Negative past parallel eyes.
    /// Source: `[ISO13666]`, definition of the prism dioptre (1 cm at 1 m).
    pub fn total_demand(&self, parallax: Mm) -> Option<PrismDioptre> {
        finite(100.0 * (self.ipd().0 - parallax.0) / self.distance().0).map(PrismDioptre)
    }

    /// The exact angle between the two lines of sight on the median line; negative past parallel eyes.
    ///
    /// ```text
    /// gamma = 2 atan(E / 2Z) = 2 atan((E - p) / 2D)
    /// ```
    ///
    /// Any finite parallax.
    /// Source: `[Howard2012]`, vergence angle on the median line.
    pub fn vergence(&self, parallax: Mm) -> Option<Angle> {
        let half = libm::atan(finite((self.ipd().0 - parallax.0) / (2.0 * self.distance().0))?);
        Some(Angle::from_radians(2.0 * half))
    }

    /// Disparity against the page: the exact difference of two vergence angles, positive toward.
    ///
    /// ```text
    /// eta = 2 atan(E / 2Z) - 2 atan(E / 2D)
    /// ```
    ///
    /// Any finite parallax.
    /// Source: `[Howard2012]`, disparity as a difference of vergence angles.
    pub fn disparity_of_parallax(&self, parallax: Mm) -> Option<Angle> {
        let page = self.vergence(Mm(0.0))?;
        Some(Angle::from_radians(self.vergence(parallax)?.to_radians() - page.to_radians()))
    }

    /// Parallax on the page for an exact disparity; the inverse of [`Self::disparity_of_parallax`].
    ///
    /// ```text
    /// p = E - 2 D tan((eta + 2 atan(E / 2D)) / 2)
    /// ```
    ///
    /// `None` unless the whole vergence angle lies between -180 and 180 degrees.
    /// Source: `[Howard2012]`, solved for the parallax.
    pub fn parallax_of_disparity(&self, disparity: Angle) -> Option<Mm> {
        let eta = disparity.to_radians();
        if eta == 0.0 {
            return Some(Mm(0.0));
        }
        let whole = finite(eta + self.vergence(Mm(0.0))?.to_radians())?;
        if std::f64::consts::PI <= whole.abs() {
            return None;
        }
        finite(self.ipd().0 - 2.0 * self.distance().0 * libm::tan(whole / 2.0)).map(Mm)
    }

    /// The exact angle between the two lines of sight to any point before the eyes, off the median line too: smaller
    /// to the side and up than straight ahead.
    ///
    /// `None` unless all are finite and 0 < z.
    /// Source: derived: the angle between the rays (X + E/2, Y, Z) and (X - E/2, Y, Z).
    pub fn vergence_at(&self, point: SpacePoint) -> Option<Angle> {
        let (y, z) = (point.y.0, finite(point.z.0).filter(|&z| 0.0 < z)?);
        let (left, right) = (point.x.0 + self.ipd().0 / 2.0, point.x.0 - self.ipd().0 / 2.0);
        // The cross product of the two rays is E (0, z, -y): the eyes differ in x alone.
        let cross = self.ipd().0 * libm::hypot(y, z);
        let dot = left * right + y * y + z * z;
        Some(Angle::from_radians(libm::atan2(finite(cross)?, finite(dot)?)))
    }

    /// The angle that a length on the page fills at the eye, centred straight ahead.
    ///
    /// ```text
    /// a = 2 atan(s / 2D)
    /// ```
    ///
    /// Any finite length.
    /// Source: `[ISO8596]`, angular size of an optotype.
    pub fn angle_of_length(&self, length: Mm) -> Option<Angle> {
        Some(Angle::from_radians(2.0 * libm::atan(finite(length.0 / (2.0 * self.distance().0))?)))
    }

    /// The length on the page that fills an angle at the eye; the inverse of [`Self::angle_of_length`].
    ///
    /// ```text
    /// s = 2 D tan(a / 2)
    /// ```
    ///
    /// `None` unless `|a| < 180` degrees.
    /// Source: `[ISO8596]`, angular size of an optotype.
    pub fn length_of_angle(&self, angle: Angle) -> Option<Mm> {
        finite(angle.to_radians()).filter(|a| a.abs() < std::f64::consts::PI)?;
        finite(2.0 * self.distance().0 * libm::tan(angle.to_radians() / 2.0)).map(Mm)
    }
}

/// Prism dioptres of an angle of deviation.
///
/// ```text
/// pd = 100 tan(a)
/// ```
///
/// `None` unless `|a| < 90` degrees.
/// Source: `[ISO13666]`, definition of the prism dioptre (1 cm at 1 m).
pub fn prism_of_angle(angle: Angle) -> Option<PrismDioptre> {
    finite(angle.to_radians()).filter(|a| a.abs() < std::f64::consts::FRAC_PI_2)?;
    finite(100.0 * libm::tan(angle.to_radians())).map(PrismDioptre)
}

/// Angle of deviation of a prism; the inverse of [`prism_of_angle`]. Any finite number.
/// Source: `[ISO13666]`, definition of the prism dioptre (1 cm at 1 m).
pub fn angle_of_prism(prism: PrismDioptre) -> Option<Angle> {
    Some(Angle::from_radians(libm::atan(finite(prism.0)? / 100.0)))
}

/// Metre angles of a place: 1 at 1 m, 2 at 50 cm. `None` unless the place is finite and greater than 0.
///
/// ```text
/// MA = 1000 / Z,  pd = MA x ipd in cm
/// ```
///
/// Source: `[Howard2012]`, definition of the metre angle.
pub fn metre_angles(place: Mm) -> Option<f64> {
    finite(place.0).filter(|&z| 0.0 < z).and_then(|z| finite(1000.0 / z))
}

/// Turns -0 into 0, so that no page prints a sign before nothing.
fn unsigned_zero(value: f64) -> f64 {
    value + 0.0
}

#[cfg(test)]
mod tests {
    use super::super::NOT_FINITE;
    use super::*;
    use proptest::prelude::*;

    fn any_viewing() -> impl Strategy<Value = Viewing> {
        (200.0..6000.0, 40.0..80.0).prop_map(|(d, e)| Viewing::new(Mm(d), Mm(e)).unwrap())
    }

    proptest! {
        #[test]
        fn demand_and_parallax_are_inverse(v in any_viewing(), p in -200.0..80.0) {
            let back = v.parallax_of_demand(v.demand_of_parallax(Mm(p)).unwrap()).unwrap();
            prop_assert!((back.0 - p).abs() < 1e-9);
        }

        #[test]
        fn disparity_and_parallax_are_inverse(v in any_viewing(), p in -200.0..80.0) {
            let back = v.parallax_of_disparity(v.disparity_of_parallax(Mm(p)).unwrap()).unwrap();
            prop_assert!((back.0 - p).abs() < 1e-7, "{} {}", back.0, p);
        }

        #[test]
        fn disparity_is_the_difference_of_the_angles_at_the_two_places(v in any_viewing(), share in 0.2..4.0) {
            let (e, d) = (v.ipd().0, v.distance().0);
            let p = v.parallax_of_place(Mm(d * share)).unwrap();
            let atan = libm::atan;
            let expected = 2.0 * atan(e / (2.0 * d * share)) - 2.0 * atan(e / (2.0 * d));
            prop_assert!((v.disparity_of_parallax(p).unwrap().to_radians() - expected).abs() < 1e-12);
        }

        #[test]
        fn on_the_median_line_both_angles_agree(v in any_viewing(), share in 0.2..4.0) {
            let z = Mm(v.distance().0 * share);
            let point = SpacePoint { x: Mm(0.0), y: Mm(0.0), z };
            let on_line = v.vergence(v.parallax_of_place(z).unwrap()).unwrap();
            prop_assert!((v.vergence_at(point).unwrap().to_radians() - on_line.to_radians()).abs() < 1e-12);
        }

        #[test]
        fn lengths_and_angles_are_inverse(v in any_viewing(), s in -500.0..500.0) {
            let back = v.length_of_angle(v.angle_of_length(Mm(s)).unwrap()).unwrap();
            prop_assert!((back.0 - s).abs() < 1e-9);
        }

        #[test]
        fn prisms_and_angles_are_inverse(pd in -500.0..500.0) {
            let back = prism_of_angle(angle_of_prism(PrismDioptre(pd)).unwrap()).unwrap();
            prop_assert!((back.0 - pd).abs() < 1e-9);
        }
    }

    #[test]
    fn numbers_that_are_none_are_refused() {
        let v = Viewing::new(Mm(400.0), Mm(64.0)).unwrap();
        for bad in NOT_FINITE {
            let (mm, angle) = (Mm(bad), Angle::from_radians(bad));
            assert_eq!(v.demand_of_parallax(mm), None);
            assert_eq!(v.parallax_of_demand(PrismDioptre(bad)), None);
            assert_eq!(v.total_demand(mm), None);
            assert_eq!(v.vergence(mm), None);
            assert_eq!(v.disparity_of_parallax(mm), None);
            assert_eq!(v.parallax_of_disparity(angle), None);
            assert_eq!(v.angle_of_length(mm), None);
            assert_eq!(v.length_of_angle(angle), None);
            assert_eq!(prism_of_angle(angle), None);
            assert_eq!(angle_of_prism(PrismDioptre(bad)), None);
            assert_eq!(metre_angles(mm), None);
            for (x, y, z) in [(bad, 0.0, 1.0), (0.0, bad, 1.0), (0.0, 0.0, bad)] {
                assert_eq!(v.vergence_at(SpacePoint { x: Mm(x), y: Mm(y), z: Mm(z) }), None);
            }
        }
    }

    #[test]
    fn angles_past_their_range_are_refused() {
        let v = Viewing::new(Mm(400.0), Mm(64.0)).unwrap();
        assert_eq!(v.parallax_of_disparity(Angle::from_degrees(171.0)), None);
        assert_eq!(v.parallax_of_disparity(Angle::from_degrees(-190.0)), None);
        assert!(v.parallax_of_disparity(Angle::from_degrees(170.0)).is_some());
        assert_eq!(v.length_of_angle(Angle::from_radians(std::f64::consts::PI)), None);
        assert_eq!(prism_of_angle(Angle::from_radians(std::f64::consts::FRAC_PI_2)), None);
        assert_eq!(v.vergence_at(SpacePoint { x: Mm(0.0), y: Mm(0.0), z: Mm(0.0) }), None);
        for none in [0.0, -400.0] {
            assert_eq!(metre_angles(Mm(none)), None);
        }
    }

    #[test]
    fn the_page_has_no_demand_and_no_sign() {
        let v = Viewing::new(Mm(400.0), Mm(64.0)).unwrap();
        for zero in [0.0, -0.0] {
            assert!(v.demand_of_parallax(Mm(zero)).unwrap().0.is_sign_positive());
            assert!(v.parallax_of_demand(PrismDioptre(zero)).unwrap().0.is_sign_positive());
            assert_eq!(v.disparity_of_parallax(Mm(zero)), Some(Angle::from_radians(0.0)));
            assert_eq!(v.parallax_of_disparity(Angle::from_radians(zero)), Some(Mm(0.0)));
        }
    }

    #[test]
    fn past_parallel_eyes_the_angle_is_negative() {
        let v = Viewing::new(Mm(400.0), Mm(64.0)).unwrap();
        assert!(v.vergence(Mm(65.0)).unwrap().to_radians() < 0.0);
        assert!(v.total_demand(Mm(65.0)).unwrap().0 < 0.0);
    }
}
