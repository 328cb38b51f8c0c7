//! What two eyes can do: published limits and norms, each with the place where it was published.
//!
//! These are numbers about groups of people, never about the reader. They feed warnings and refusals; none of them is
//! a score.

use super::finite;
use super::geometry::Viewing;
use super::vergence::angle_of_prism;
use crate::units::{Angle, Mm, Ppi, PrismDioptre};

/// True where every pair of eyes of the audience can look without turning to parallel or past it: `p < E` must hold
/// for the smallest ipd. False for anything that is not a number.
/// Source: `[Woods1993]`: at p = E the image point is infinitely far, past it there is none.
pub fn within_parallel(parallax: Mm, smallest_ipd: Mm) -> bool {
    parallax.0 < smallest_ipd.0
}

/// The middle third of the range of clear single vision, as demands: (most away, most toward).
///
/// ```text
/// [-b + (b + c)/3,  c - (b + c)/3]
/// ```
///
/// `blur_in` b and `blur_out` c are the base-in and base-out blur limits, both 0 or more.
/// Source: `[Percival1928]`, middle third.
pub fn percival_zone(blur_in: PrismDioptre, blur_out: PrismDioptre) -> Option<(PrismDioptre, PrismDioptre)> {
    let (b, c) = (not_negative(blur_in)?, not_negative(blur_out)?);
    let third = finite((b + c) / 3.0)?;
    Some((PrismDioptre(third - b), PrismDioptre(c - third)))
}

/// Prism that moves the demand to the edge of the middle third; 0 or less: none needed.
///
/// ```text
/// P = G/3 - 2L/3
/// ```
///
/// `greater` G and `lesser` L are the two blur limits, `0 <= L <= G`.
/// Source: `[Percival1928]`, middle third.
pub fn percival_prism(greater: PrismDioptre, lesser: PrismDioptre) -> Option<PrismDioptre> {
    let (g, l) = (not_negative(greater)?, not_negative(lesser)?);
    if g < l {
        return None;
    }
    Some(PrismDioptre(g / 3.0 - 2.0 * l / 3.0))
}

/// Prism after which the compensating reserve is twice the phoria; 0 or less: none needed.
///
/// ```text
/// P = (2 phoria - reserve) / 3
/// ```
///
/// Both 0 or more; the reserve is the blur limit of the opposing side (else the break).
/// Source: `[Sheard1930]`, reserve of twice the phoria.
pub fn sheard_prism(phoria: PrismDioptre, reserve: PrismDioptre) -> Option<PrismDioptre> {
    let (phoria, reserve) = (not_negative(phoria)?, not_negative(reserve)?);
    finite((2.0 * phoria - reserve) / 3.0).map(PrismDioptre)
}

/// Horizontal disparity fused at the fovea without eye movement: the smallest and largest limit found.
/// Source: `[Qin2006]`, abstract.
pub fn fusion_horizontal() -> (Angle, Angle) {
    (Angle::from_arcmin(32.0), Angle::from_arcmin(40.0))
}

/// Vertical disparity fused at the fovea without eye movement: the smallest and largest limit found.
/// Source: `[Qin2006]`, abstract.
pub fn fusion_vertical() -> (Angle, Angle) {
    (Angle::from_arcmin(19.2), Angle::from_arcmin(25.6))
}

/// Disparity fused in detail of `frequency` cycles per degree: a quarter of a period. Coarse detail fuses over more.
///
/// ```text
/// limit = 15 / f arcmin
/// ```
///
/// `None` unless the frequency is finite and greater than 0.
/// Source: `[Schor1984]`, 90 degree phase limit.
pub fn fusion_of_detail(frequency: f64) -> Option<Angle> {
    let f = finite(frequency).filter(|&f| 0.0 < f)?;
    finite(15.0 / f).map(Angle::from_arcmin)
}

/// Disparity that half of 392 people of 18 to 40 years fused on a stereo display with their eyes free to turn: away, toward.
/// Source: `[Nagata2002]`, abstract.
pub fn fused_on_screen() -> (Angle, Angle) {
    (Angle::from_degrees(3.05), Angle::from_degrees(3.34))
}

/// Disparity up to which the conflict of focus and vergence is a minor cause of discomfort.
/// Source: `[Lambooij2009]`, abstract.
pub fn comfort() -> Angle {
    Angle::from_degrees(1.0)
}

/// Disparity gradient above which the nearer of two neighbours keeps the other from fusing.
/// Source: `[Burt1980]`; the value of about 1 is from memory, the abstract gives the effect alone.
pub const GRADIENT_LIMIT: f64 = 1.0;

/// Disparity gradient of two neighbours: the difference of their disparities over their cyclopean separation, both in
/// the same unit (angles, or millimetres on one page). `None` unless both are finite and `0 < separation`.
/// Source: `[Burt1980]`, definition.
pub fn disparity_gradient(difference: f64, separation: f64) -> Option<f64> {
    let separation = finite(separation).filter(|&s| 0.0 < s)?;
    finite(difference.abs() / separation)
}

/// A Landolt ring: gap and stroke are a fifth of the diameter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Landolt {
    /// Width of the gap and of the stroke.
    pub gap: Mm,
    /// Outer diameter.
    pub diameter: Mm,
}

/// The ring of a decimal acuity grade on a page: grade 1 fills 5 arcmin, its gap 1 arcmin.
///
/// `None` unless the grade is finite and greater than 0 and the ring fits before the eye.
/// Source: `[ISO8596]`, Landolt ring.
pub fn landolt(viewing: &Viewing, grade: f64) -> Option<Landolt> {
    let grade = finite(grade).filter(|&g| 0.0 < g)?;
    let size = |arcmin: f64| viewing.length_of_angle(Angle::from_arcmin(arcmin / grade));
    Some(Landolt { gap: size(1.0)?, diameter: size(5.0)? })
}

/// One dot of a device, seen from the viewing distance: the smallest step of parallax that a raster can show.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dot {
    /// Its side.
    pub side: Mm,
    /// The angle it fills.
    pub angle: Angle,
    /// As a demand.
    pub demand: PrismDioptre,
}

/// The dot of a raster of this resolution. `None` for 0 pixels per inch.
/// Source: `[ISO13666]` for the demand; the rest is the definition of the inch.
pub fn device_dot(viewing: &Viewing, ppi: Ppi) -> Option<Dot> {
    let side = Mm(finite(ppi.pixel().0)?);
    let demand = PrismDioptre(finite(100.0 * side.0 / viewing.distance().0)?);
    Some(Dot { side, angle: angle_of_prism(demand)?, demand })
}

/// Lets a demand through if it is finite and 0 or more.
fn not_negative(demand: PrismDioptre) -> Option<f64> {
    finite(demand.0).filter(|&pd| 0.0 <= pd)
}

#[cfg(test)]
mod tests {
    use super::super::NOT_FINITE;
    use super::*;

    #[test]
    fn numbers_that_are_none_are_refused() {
        let viewing = Viewing::new(Mm(400.0), Mm(64.0)).unwrap();
        let one = PrismDioptre(1.0);
        for bad in NOT_FINITE.into_iter().chain([-1.0]) {
            let pd = PrismDioptre(bad);
            assert_eq!(percival_zone(pd, one), None);
            assert_eq!(percival_zone(one, pd), None);
            assert_eq!(percival_prism(pd, one), None);
            assert_eq!(percival_prism(one, pd), None);
            assert_eq!(sheard_prism(pd, one), None);
            assert_eq!(sheard_prism(one, pd), None);
            assert_eq!(fusion_of_detail(bad), None);
            assert_eq!(disparity_gradient(1.0, bad), None);
            assert_eq!(landolt(&viewing, bad), None);
        }
        for bad in NOT_FINITE {
            assert_eq!(disparity_gradient(bad, 1.0), None);
        }
        assert!(!within_parallel(Mm(f64::NAN), Mm(64.0)) && !within_parallel(Mm(1.0), Mm(f64::NAN)));
        assert!(!within_parallel(Mm(f64::INFINITY), Mm(64.0)));
    }

    #[test]
    fn nothing_is_divided_by_zero() {
        let viewing = Viewing::new(Mm(400.0), Mm(64.0)).unwrap();
        assert_eq!(fusion_of_detail(0.0), None);
        assert_eq!(disparity_gradient(1.0, 0.0), None);
        assert_eq!(landolt(&viewing, 0.0), None);
        assert_eq!(device_dot(&viewing, Ppi(0)), None);
        // A ring that would fill half of all that the eye can see.
        assert_eq!(landolt(&viewing, 1e-5), None);
    }

    #[test]
    fn the_greater_limit_is_not_the_lesser() {
        assert_eq!(percival_prism(PrismDioptre(7.0), PrismDioptre(19.0)), None);
    }
}
