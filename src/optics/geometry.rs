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
    ///     p = E (Z - D) / Z
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
    ///     Z = D E / (E - p)
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
    ///     behind D / (E/p - 1), in front D / (E/|p| + 1), both as Z - D
    ///
    /// `None` as for [`Self::place_of_parallax`].
    /// Source: `[Jones2001]`.
    pub fn depth_of_parallax(&self, parallax: Mm) -> Option<Mm> {
        self.place_of_parallax(parallax).map(|place| Mm(place.0 - self.distance))
    }

    /// How large a thing that stands at this parallax is on the page, against its true size: D/Z, without a detour
    /// over Z.
    ///
    ///     D/Z = (E - p) / E
    ///
    /// `None` at or past parallel eyes, where it would be 0 or less.
    /// Source: `[Woods1993]`, similar triangles.
    pub fn magnification(&self, parallax: Mm) -> Option<f64> {
        let p = finite(parallax.0).filter(|&p| p < self.ipd)?;
        finite((self.ipd - p) / self.ipd)
    }

    /// The half-images of a point in space, off the line of sight too.
    ///
    ///     x_L = -E/2 + (X + E/2) D/Z,  x_R = E/2 + (X - E/2) D/Z,  y = Y D/Z
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
    ///     X = E (x_L + x_R) / (2 (E - p)),  Y = E y / (E - p),  Z = D E / (E - p)
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
    ///     z_s = D + up sin(lean),  p = E depth / (z_s + depth)
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
///     v = separation sin(roll)
///
/// Any finite numbers; the sign only tells the direction.
/// Source: derived from plane rotation; no publication found.
pub fn roll_parallax(separation: Mm, roll: Angle) -> Option<Mm> {
    let roll = finite(roll.to_radians())?;
    finite(separation.0 * libm::sin(roll)).map(Mm)
}
