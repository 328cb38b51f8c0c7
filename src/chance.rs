//! Chance: draws that are the same for the same name, and what mere luck can do.
//!
//! A draw depends on its name alone, never on a clock, on the order of pages or on the number of threads.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};
use sha2::{Digest, Sha256};

/// A stream of draws, known by its name.
#[derive(Debug, Clone)]
pub struct Dice(ChaCha8Rng);

impl Dice {
    /// The stream of this name: the ChaCha8 stream whose key is the SHA-256 hash of the name.
    pub fn new(name: &str) -> Self {
        Self(ChaCha8Rng::from_seed(Sha256::digest(name.as_bytes()).into()))
    }

    /// A whole number below `n`, each as likely; 0 where `n` is 0.
    #[expect(clippy::cast_possible_truncation, reason = "the upper half of a product of two 32-bit numbers")]
    pub fn below(&mut self, n: u32) -> u32 {
        // Multiply and take the upper half; draws that would favour some numbers are drawn again.
        let surplus = n.wrapping_neg().checked_rem(n).unwrap_or(0);
        loop {
            let product = u64::from(self.0.next_u32()) * u64::from(n);
            if surplus <= product as u32 {
                return (product >> 32) as u32;
            }
        }
    }

    /// A number from 0 to below 1, in steps of 2⁻⁵³.
    pub fn unit(&mut self) -> f64 {
        (self.0.next_u64() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Whether an event of this chance, 0 to 1, comes about.
    pub fn happens(&mut self, chance: f64) -> bool {
        self.unit() < chance
    }

    /// Puts a list in a drawn order, each order as likely (Fisher and Yates). Source: from memory.
    pub fn shuffle<T>(&mut self, list: &mut [T]) {
        for last in (1..list.len()).rev() {
            let other = self.below(u32::try_from(last + 1).unwrap_or(u32::MAX)) as usize;
            list.swap(last, other);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_gives_its_own_draws_again_and_again() {
        let draws = |name: &str| {
            let mut dice = Dice::new(name);
            (0..50).map(|_| dice.below(1000)).collect::<Vec<_>>()
        };
        assert_eq!(draws("pier/1"), draws("pier/1"));
        assert_ne!(draws("pier/1"), draws("pier/2"));
    }

    /// 60 000 draws of six: the chi-square of five degrees of freedom stays below 20.5 in 999 of 1000 cases (table of the
    /// chi-square distribution, from memory). The stream is fixed, so the test does not flicker.
    #[test]
    fn faces_come_up_evenly() {
        let mut dice = Dice::new("faces");
        let mut counts = [0_u32; 6];
        (0..60_000).for_each(|_| counts[dice.below(6) as usize] += 1);
        let chi: f64 = counts.iter().map(|&n| (f64::from(n) - 10_000.0).powi(2) / 10_000.0).sum();
        assert!(chi < 20.5, "{counts:?}");
        assert_eq!(dice.below(0), 0);
        assert_eq!(dice.below(1), 0);
    }

    #[test]
    fn a_shuffle_keeps_every_member() {
        let mut list: Vec<u32> = (0..40).collect();
        Dice::new("deck").shuffle(&mut list);
        assert_ne!(list, (0..40).collect::<Vec<_>>());
        list.sort_unstable();
        assert_eq!(list, (0..40).collect::<Vec<_>>());
    }
}
