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

/// The chance that guesses alone may have of passing a page, at most. Design choice: about one page in 200.
pub const MOST_LUCK: f64 = 0.005;

/// The fewest right answers of a page that are more than luck.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PassMark {
    /// So many right answers, fewer than there are questions.
    pub right: u32,
    /// The chance that guesses alone reach it, at most [`MOST_LUCK`].
    pub luck: f64,
}

/// A page that luck passes too easily, or whose only safe pass mark forgives no slip.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Weak {
    /// How many questions of as many choices would do; `None` where there is nothing to choose from.
    pub would_do: Option<u32>,
}

/// The chance of at least `right` right answers to `of` questions, each answered by a guess that is right with the
/// chance `p`, 0 to 1: the upper tail of the binomial distribution.
///
/// ```text
/// P(X >= r) = sum over k from r to n of n! / (k! (n - k)!) p^k (1 - p)^(n - k)
/// ```
///
/// The sum is built question by question, so that no factorial overflows and no power vanishes before its time.
/// Not a number where `p` is no chance. Source: the definition of the distribution; the recurrence is derived.
/// Example (by hand): 13 of the 4096 ways to answer 12 questions of two choices have 11 right or more.
pub fn tail(of: u32, right: u32, p: f64) -> f64 {
    if !(0.0..=1.0).contains(&p) {
        return f64::NAN;
    }
    distribution(of, p).iter().rev().take((of + 1).saturating_sub(right) as usize).sum()
}

/// The chance of 0, 1, … `of` right answers.
fn distribution(of: u32, p: f64) -> Vec<f64> {
    let mut chances = vec![0.0; of as usize + 1];
    chances[0] = 1.0;
    for asked in 1..=of as usize {
        for right in (0..=asked).rev() {
            let one_fewer = if right == 0 { 0.0 } else { chances[right - 1] };
            chances[right] = chances[right] * (1.0 - p) + one_fewer * p;
        }
    }
    chances
}

/// The pass mark of a page of `of` questions with `choices` equally likely answers each: the fewest right answers that
/// guesses alone reach with a chance of at most [`MOST_LUCK`]. One slip at least must be forgiven; a page that cannot
/// is [`Weak`]. Source: design choice; practice pages repeat, and luck would let a reader move on too early.
pub fn pass_mark(of: u32, choices: u32) -> Result<PassMark, Weak> {
    if choices < 2 {
        return Err(Weak { would_do: None });
    }
    let p = 1.0 / f64::from(choices);
    let marks = (0..of).map(|right| PassMark { right, luck: tail(of, right, p) });
    // With more questions one slip matters less, so that the first number that will do is the least.
    let would_do = || (of..).find(|&n| 0 < n && tail(n, n - 1, p) <= MOST_LUCK);
    marks.into_iter().find(|mark| mark.luck <= MOST_LUCK).ok_or_else(|| Weak { would_do: would_do() })
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

    /// The tail as an exact fraction: its numerator over `choices` to the power `of`, by counting the ways to answer.
    fn ways(of: u32, right: u32, choices: u32) -> (u128, u128) {
        let choose = |k: u32| (0..k).fold(1_u128, |c, i| c * u128::from(of - i) / u128::from(i + 1));
        let ways = |k: u32| choose(k) * u128::from(choices - 1).pow(of - k);
        ((right..=of).map(ways).sum(), u128::from(choices).pow(of))
    }

    /// Nearest doubles of two exact whole numbers, a division and at most 24 roundings in the sum: far below 1e-12.
    #[test]
    fn the_tail_is_the_exact_fraction() {
        for (of, choices) in (1..=24).flat_map(|n| (2..=6).map(move |c| (n, c))) {
            for right in 0..=of {
                let (ways, all) = ways(of, right, choices);
                let exact = ways as f64 / all as f64;
                let seen = tail(of, right, 1.0 / f64::from(choices));
                assert!((seen - exact).abs() <= 1e-12 * exact, "{right} of {of}, {choices} choices: {seen}, {exact}");
            }
        }
    }

    /// Cumulative values for five questions, as printed to five places: each lies within half a unit of the last place.
    /// Source: `[BinomialTable]`, n = 5, columns 0.20, 0.25 and 0.50.
    #[test]
    fn the_tail_is_that_of_a_printed_table() {
        let printed = [
            (0.20, [0.32768, 0.73728, 0.94208, 0.99328, 0.99968]),
            (0.25, [0.23730, 0.63281, 0.89648, 0.98438, 0.99902]),
            (0.50, [0.03125, 0.18750, 0.50000, 0.81250, 0.96875]),
        ];
        for (p, column) in printed {
            for (at_most, cumulative) in (0..).zip(column) {
                let seen = 1.0 - tail(5, at_most + 1, p);
                assert!((seen - cumulative).abs() < 5.1e-6, "{at_most} at {p}: {seen}");
            }
        }
    }

    #[test]
    fn the_tail_has_its_ends() {
        assert_eq!(tail(7, 0, 0.5), 1.0);
        assert_eq!(tail(7, 8, 0.5), 0.0);
        assert_eq!(tail(0, 0, 0.5), 1.0);
        assert_eq!((tail(4, 4, 1.0), tail(4, 1, 0.0)), (1.0, 0.0));
        for wrong in [f64::NAN, -0.1, 1.1, f64::INFINITY] {
            assert!(tail(5, 2, wrong).is_nan(), "{wrong}");
        }
    }

    /// The designs worked out for this project, to two figures: 4 choices of 10 and of 8, 2 choices of 12. Each mark is
    /// the fewest: one right answer less is luck too often.
    #[test]
    fn known_designs_have_their_pass_marks() {
        for (of, choices, right, luck) in [(10, 4, 7, 0.0035), (8, 4, 6, 0.0042), (12, 2, 11, 0.0032)] {
            let mark = pass_mark(of, choices).unwrap();
            assert_eq!(mark.right, right, "{of} of {choices}");
            assert!((mark.luck - luck).abs() < 5e-5, "{of} of {choices}: {}", mark.luck);
            assert!(MOST_LUCK < tail(of, right - 1, 1.0 / f64::from(choices)));
        }
        // Eight of ten coin tosses: 56 of 1024 ways, once in 18.
        assert_eq!((1.0 / tail(10, 8, 0.5)).round(), 18.0);
    }

    #[test]
    fn weak_designs_say_how_many_questions_would_do() {
        for (of, choices, would_do) in [(10, 2, 12), (11, 2, 12), (0, 2, 12), (7, 3, 8), (5, 4, 6), (1, 24, 4)] {
            assert_eq!(pass_mark(of, choices), Err(Weak { would_do: Some(would_do) }), "{of} of {choices}");
            assert!(pass_mark(would_do, choices).is_ok());
            assert!(pass_mark(would_do - 1, choices).is_err());
        }
        assert_eq!(pass_mark(100, 1), Err(Weak { would_do: None }));
        assert_eq!(pass_mark(100, 0), Err(Weak { would_do: None }));
    }

    #[test]
    fn every_pass_mark_forgives_a_slip_and_keeps_luck_low() {
        for (of, choices) in (0..=60).flat_map(|n| (0..=30).map(move |c| (n, c))) {
            let Ok(mark) = pass_mark(of, choices) else { continue };
            assert!(mark.right < of && mark.luck <= MOST_LUCK, "{of} of {choices}: {mark:?}");
        }
    }
}
