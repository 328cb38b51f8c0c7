//! Colours of the sRGB space: light, luminance, contrast, and how they are written.
//!
//! Nothing here knows a filter or an eye.

use std::sync::OnceLock;

/// A colour of the sRGB space, 8 bits a channel (IEC 61966-2-1).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Srgb8(pub [u8; 3]);

impl Srgb8 {
    /// White, the lightest colour.
    pub const WHITE: Srgb8 = Srgb8([255; 3]);
    /// Black, the darkest colour.
    pub const BLACK: Srgb8 = Srgb8([0; 3]);

    /// As `#rrggbb`, lower case.
    pub fn hex(self) -> String {
        let [r, g, b] = self.0;
        format!("#{r:02x}{g:02x}{b:02x}")
    }

    /// Red, green and blue light, each 0 to 1.
    pub fn linear(self) -> [f64; 3] {
        static LIGHT: OnceLock<[f64; 256]> = OnceLock::new();
        let light = LIGHT.get_or_init(|| {
            let mut light = [0.0; 256];
            light.iter_mut().zip(0..=255).for_each(|(light, channel)| *light = decode(channel));
            light
        });
        self.0.map(|channel| light[usize::from(channel)])
    }

    /// Relative luminance: 0 is black, 1 is white.
    /// Source: `[SRGB]`, weights of the primaries.
    pub fn luminance(self) -> f64 {
        let [r, g, b] = self.linear();
        0.2126 * r + 0.7152 * g + 0.0722 * b
    }

    /// Contrast ratio against another colour: 1 (the same luminance) to 21 (black on white); the order does not matter.
    ///
    /// ```text
    /// (L_lighter + 0.05) / (L_darker + 0.05)
    /// ```
    ///
    /// Source: `[WCAG2]`, contrast ratio.
    pub fn contrast(self, other: Srgb8) -> f64 {
        let (a, b) = (self.luminance(), other.luminance());
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }
}

/// The 8-bit channel value nearest to a light from 0 to 1; light outside takes the nearer end.
///
/// ```text
/// 12.92 l up to 0.0031308, else 1.055 l^(1/2.4) - 0.055
/// ```
///
/// Source: `[SRGB]`, transfer function.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "rounded and clamped to what eight bits hold"
)]
pub fn encode(light: f64) -> u8 {
    let c = if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * libm::pow(light, 1.0 / 2.4) - 0.055 };
    (c * 255.0).round().clamp(0.0, 255.0) as u8
}

/// The light of one 8-bit channel value, 0 to 1.
///
/// ```text
/// c / 12.92 up to 0.04045, else ((c + 0.055) / 1.055)^2.4
/// ```
///
/// Source: `[SRGB]`, transfer function.
pub fn decode(channel: u8) -> f64 {
    let c = f64::from(channel) / 255.0;
    if c <= 0.04045 { c / 12.92 } else { libm::pow((c + 0.055) / 1.055, 2.4) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn light_grows_with_the_value_from_none_to_all() {
        let light: Vec<f64> = (0..=255).map(decode).collect();
        assert!(light.windows(2).all(|pair| pair[0] < pair[1]));
        assert!(light[0].abs() < f64::EPSILON && (light[255] - 1.0).abs() < f64::EPSILON);
    }

    #[test]
    fn every_value_survives_the_way_to_light_and_back() {
        assert!((0..=255).all(|value| encode(decode(value)) == value));
    }

    #[test]
    fn contrast_does_not_depend_on_the_order() {
        let (a, b) = (Srgb8([12, 200, 7]), Srgb8([90, 3, 250]));
        assert!((a.contrast(b) - b.contrast(a)).abs() < f64::EPSILON);
        assert!((a.contrast(a) - 1.0).abs() < f64::EPSILON);
    }

    #[test]
    fn hex_keeps_its_zeros() {
        assert_eq!(Srgb8([0, 10, 255]).hex(), "#000aff");
    }
}
