//! Where a pair of half-images seems to stand: parallax and place, on and off the line of sight.
//!
//! [`Viewing::parallax_of_place`] and [`Viewing::place_of_parallax`] are the one pair of formulas that everything else
//! calls. Angles and demands are in `vergence`.
//!
//! Frame in space: origin midway between the eyes, x to the right, y down, z straight ahead to the page, millimetres.

use super::finite;
use crate::units::{Angle, Mm};

/// A pair of eyes before a page: what every formula needs, checked once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Viewing {
    distance: f64,
    ipd: f64,
}

/// A point in space, in the frame of this module.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpacePoint {
    /// To the right of the midpoint of the eyes.
    pub x: Mm,
    /// Below the eyes.
    pub y: Mm,
    /// Straight ahead of the eye plane.
    pub z: Mm,
}

/// The two half-images of one point, on a page that faces the eyes. Both lie at the same height.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfImages {
    /// Across, for the left eye.
    pub left_x: Mm,
    /// Across, for the right eye.
    pub right_x: Mm,
    /// Down, for both.
    pub y: Mm,
}

impl HalfImages {
    /// `x_R - x_L`: negative toward, positive away.
    pub fn parallax(&self) -> Mm {
        Mm(self.right_x.0 - self.left_x.0)
    }
}

impl Viewing {
    /// A page at `distance` before eyes `ipd` apart. Both must be finite and greater than 0.
    pub fn new(distance: Mm, ipd: Mm) -> Option<Self> {
        let positive = |mm: Mm| mm.0.is_finite() && 0.0 < mm.0;
        (positive(distance) && positive(ipd)).then_some(Self { distance: distance.0, ipd: ipd.0 })
    }

    /// Eye plane to page, D.
    pub fn distance(&self) -> Mm {
        Mm(self.distance)
    }

    /// Interpupillary distance, E.
    pub fn ipd(&self) -> Mm {
        Mm(self.ipd)
    }

    /// Parallax on the page for a point whose distance straight ahead of the eye plane is `place`.
    ///
    /// ```text
    /// p = E (Z - D) / Z
    /// ```
    ///
    /// `place` is Z: finite and greater than 0. Sign: positive away. The parallax does not depend on how far the point
    /// lies to the side or up.
    /// Source: `[Woods1993]`, similar triangles.
    ///
    /// ```
    /// use depthpress::optics::Viewing;
    /// use depthpress::units::Mm;
    /// let viewing = Viewing::new(Mm(400.0), Mm(63.0)).unwrap();
    /// assert_eq!(viewing.parallax_of_place(Mm(350.0)), Some(Mm(-9.0)));
    /// ```
    pub fn parallax_of_place(&self, place: Mm) -> Option<Mm> {
        let z = finite(place.0).filter(|&z| 0.0 < z)?;
        finite(self.ipd * (z - self.distance) / z).map(Mm)
    }

    /// Distance of the eye plane to the point where a pair of half-images seems to stand.
    ///
    /// ```text
    /// Z = D E / (E - p)
    /// ```
    ///
    /// `None` at `p = E`, where the eyes are parallel and the place is infinitely far, and past it, where no place
    /// exists. The print fixes p; this same formula, asked of another viewing, tells where another reader, or the same
    /// reader from another distance, sees the point.
    /// Source: `[Woods1993]`, similar triangles.
    pub fn place_of_parallax(&self, parallax: Mm) -> Option<Mm> {
        let p = finite(parallax.0).filter(|&p| p < self.ipd)?;
        finite(self.distance * self.ipd / (self.ipd - p)).filter(|&z| 0.0 < z).map(Mm)
    }

    /// Perceived depth from the page: positive behind, negative in front. Not symmetric: the same parallax gives more
    /// depth behind than in front.
    ///
    /// ```text
    /// behind D / (E/p - 1), in front D / (E/|p| + 1), both as Z - D
    /// ```
    ///
    /// `None` as for [`Self::place_of_parallax`].
    /// Source: `[Jones2001]`.
    pub fn depth_of_parallax(&self, parallax: Mm) -> Option<Mm> {
        self.place_of_parallax(parallax).map(|place| Mm(place.0 - self.distance))
    }

    /// How large a thing that stands at this parallax is on the page, against its true size: D/Z, without a detour
    /// over Z.
    ///
    /// ```text
    /// D/Z = (E - p) / E
    /// ```
    ///
    /// `None` at or past parallel eyes, where it would be 0 or less.
    /// Source: `[Woods1993]`, similar triangles.
    pub fn magnification(&self, parallax: Mm) -> Option<f64> {
        let p = finite(parallax.0).filter(|&p| p < self.ipd)?;
        finite((self.ipd - p) / self.ipd)
    }

    /// The half-images of a point in space, off the line of sight too.
    ///
    /// ```text
    /// x_L = -E/2 + (X + E/2) D/Z,  x_R = E/2 + (X - E/2) D/Z,  y = Y D/Z
    /// ```
    ///
    /// Z must be greater than 0; all must be finite. The parallax is that of [`Self::parallax_of_place`] for every X
    /// and Y, and the midpoint of the half-images is (X D/Z, Y D/Z).
    /// Source: `[Woods1993]`, image-point equations.
    pub fn project(&self, point: SpacePoint) -> Option<HalfImages> {
        let z = finite(point.z.0).filter(|&z| 0.0 < z)?;
        let (scale, half) = (self.distance / z, self.ipd / 2.0);
        Some(HalfImages {
            left_x: Mm(finite(-half + (point.x.0 + half) * scale)?),
            right_x: Mm(finite(half + (point.x.0 - half) * scale)?),
            y: Mm(finite(point.y.0 * scale)?),
        })
    }

    /// The point in space where a pair of half-images seems to stand.
    ///
    /// ```text
    /// X = E (x_L + x_R) / (2 (E - p)),  Y = E y / (E - p),  Z = D E / (E - p)
    /// ```
    ///
    /// `None` at or past parallel eyes and for numbers that are not finite.
    /// Source: `[Woods1993]`, image-point equations.
    pub fn intersect(&self, images: HalfImages) -> Option<SpacePoint> {
        let p = images.parallax();
        let z = self.place_of_parallax(p)?;
        let gain = self.ipd / (self.ipd - p.0);
        Some(SpacePoint {
            x: Mm(finite((images.left_x.0 + images.right_x.0) / 2.0 * gain)?),
            y: Mm(finite(images.y.0 * gain)?),
            z,
        })
    }

    /// Parallax on a page that leans: its top edge away by `lean` about a horizontal axis through the point straight
    /// ahead. `up` is the way up the page, `depth` how far behind the page (positive) or in front of it (negative) the
    /// point should stand, along z.
    ///
    /// ```text
    /// z_s = D + up sin(lean),  p = E depth / (z_s + depth)
    /// ```
    ///
    /// The half-images stay in one row, so a lean makes no vertical parallax; a turn about a vertical axis would, and
    /// is no part of this. `None` unless `|lean| < 90` degrees and both the page there and the point lie before the
    /// eyes.
    /// Source: derived from similar triangles at the distance z_s; no publication found.
    pub fn parallax_on_leaning_page(&self, lean: Angle, up: Mm, depth: Mm) -> Option<Mm> {
        finite(lean.to_degrees()).filter(|degrees| degrees.abs() < 90.0)?;
        let surface = self.distance + up.0 * libm::sin(lean.to_radians());
        Self::new(Mm(surface), self.ipd())?.parallax_of_place(Mm(surface + depth.0))
    }
}

/// Vertical parallax that appears between two half-images `separation` apart when the head or the page rolls by `roll`.
///
/// ```text
/// v = separation sin(roll)
/// ```
///
/// Any finite numbers; the sign only tells the direction.
/// Source: derived from plane rotation; no publication found.
pub fn roll_parallax(separation: Mm, roll: Angle) -> Option<Mm> {
    let roll = finite(roll.to_radians())?;
    finite(separation.0 * libm::sin(roll)).map(Mm)
}

#[cfg(test)]
mod tests {
    use super::super::NOT_FINITE;
    use super::*;
    use proptest::prelude::*;

    fn viewing() -> Viewing {
        Viewing::new(Mm(400.0), Mm(64.0)).unwrap()
    }

    fn any_viewing() -> impl Strategy<Value = Viewing> {
        (200.0..6000.0, 40.0..80.0).prop_map(|(d, e)| Viewing::new(Mm(d), Mm(e)).unwrap())
    }

    /// Relative error that double precision leaves after a handful of operations.
    fn close(a: f64, b: f64) -> bool {
        (a - b).abs() <= 1e-9 * (1.0 + a.abs().max(b.abs()))
    }

    proptest! {
        #[test]
        fn place_and_parallax_are_inverse(v in any_viewing(), share in 0.05..20.0) {
            let place = Mm(v.distance().0 * share);
            let p = v.parallax_of_place(place).unwrap();
            prop_assert!(p < v.ipd());
            prop_assert_eq!(p.0 < 0.0, place < v.distance());
            prop_assert!(close(v.place_of_parallax(p).unwrap().0, place.0));
            prop_assert!(close(v.magnification(p).unwrap(), v.distance().0 / place.0));
        }

        #[test]
        fn projection_and_intersection_are_inverse(
            v in any_viewing(), x in -200.0..200.0, y in -200.0..200.0, share in 0.2..4.0
        ) {
            let point = SpacePoint { x: Mm(x), y: Mm(y), z: Mm(v.distance().0 * share) };
            let images = v.project(point).unwrap();
            let back = v.intersect(images).unwrap();
            prop_assert!(close(back.x.0, x) && close(back.y.0, y) && close(back.z.0, point.z.0));
            // The parallax is that of the place alone, and the middle of the pair is the scaled point.
            prop_assert!(close(images.parallax().0, v.parallax_of_place(point.z).unwrap().0));
            prop_assert!(close((images.left_x.0 + images.right_x.0) / 2.0, x / share));
        }

        #[test]
        fn depth_follows_the_published_pair_of_formulas(v in any_viewing(), p in 0.1..39.0) {
            let (e, d) = (v.ipd().0, v.distance().0);
            prop_assert!(close(v.depth_of_parallax(Mm(p)).unwrap().0, d / (e / p - 1.0)));
            prop_assert!(close(-v.depth_of_parallax(Mm(-p)).unwrap().0, d / (e / p + 1.0)));
        }
    }

    #[test]
    fn a_viewing_needs_a_distance_and_an_ipd() {
        for bad in NOT_FINITE.into_iter().chain([0.0, -0.0, -64.0]) {
            assert_eq!(Viewing::new(Mm(bad), Mm(64.0)), None, "{bad}");
            assert_eq!(Viewing::new(Mm(400.0), Mm(bad)), None, "{bad}");
        }
    }

    #[test]
    fn numbers_that_are_none_are_refused() {
        let v = viewing();
        for bad in NOT_FINITE {
            let point = |x, y, z| SpacePoint { x: Mm(x), y: Mm(y), z: Mm(z) };
            let pair = |l, r, y| HalfImages { left_x: Mm(l), right_x: Mm(r), y: Mm(y) };
            assert_eq!(v.parallax_of_place(Mm(bad)), None);
            assert_eq!(v.place_of_parallax(Mm(bad)), None);
            assert_eq!(v.depth_of_parallax(Mm(bad)), None);
            assert_eq!(v.magnification(Mm(bad)), None);
            for point in [point(bad, 0.0, 300.0), point(0.0, bad, 300.0), point(0.0, 0.0, bad)] {
                assert_eq!(v.project(point), None);
            }
            for pair in [pair(bad, 0.0, 0.0), pair(0.0, bad, 0.0), pair(0.0, 0.0, bad)] {
                assert_eq!(v.intersect(pair), None);
            }
            let (lean, bad_lean) = (Angle::from_degrees(30.0), Angle::from_degrees(bad));
            assert_eq!(v.parallax_on_leaning_page(bad_lean, Mm(1.0), Mm(1.0)), None);
            assert_eq!(v.parallax_on_leaning_page(lean, Mm(bad), Mm(1.0)), None);
            assert_eq!(v.parallax_on_leaning_page(lean, Mm(1.0), Mm(bad)), None);
            assert_eq!(roll_parallax(Mm(bad), lean), None);
            assert_eq!(roll_parallax(Mm(1.0), bad_lean), None);
        }
    }

    #[test]
    fn nothing_is_seen_at_or_behind_the_eyes() {
        let v = viewing();
        for behind in [0.0, -0.0, -1.0, -1e300] {
            assert_eq!(v.parallax_of_place(Mm(behind)), None);
            assert_eq!(v.project(SpacePoint { x: Mm(0.0), y: Mm(0.0), z: Mm(behind) }), None);
        }
        let lean = Angle::from_degrees(30.0);
        assert_eq!(v.parallax_on_leaning_page(lean, Mm(-801.0), Mm(1.0)), None);
        assert_eq!(v.parallax_on_leaning_page(lean, Mm(0.0), Mm(-400.0)), None);
        assert_eq!(v.parallax_on_leaning_page(Angle::from_degrees(90.0), Mm(1.0), Mm(1.0)), None);
    }

    #[test]
    fn the_page_itself_has_no_parallax() {
        let v = viewing();
        assert_eq!(v.parallax_of_place(v.distance()), Some(Mm(0.0)));
        assert_eq!(v.place_of_parallax(Mm(0.0)), Some(v.distance()));
        assert_eq!(v.depth_of_parallax(Mm(0.0)), Some(Mm(0.0)));
        assert_eq!(v.magnification(Mm(0.0)), Some(1.0));
        assert_eq!(v.magnification(Mm(64.0)), None);
        assert_eq!(v.intersect(HalfImages { left_x: Mm(0.0), right_x: Mm(64.0), y: Mm(0.0) }), None);
        assert_eq!(roll_parallax(Mm(0.0), Angle::from_degrees(5.0)), Some(Mm(0.0)));
    }
}
