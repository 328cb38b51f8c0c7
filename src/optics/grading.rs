//! How hard a page is: one number from 0 to 100, from terms that each say one thing.
//!
//! The measure orders pages. It says nothing about a reader, and it is no score.
//!
//! Each term is a share from 0 (as easy as a page can be) to 1, and each rises with what its name says, so the whole is
//! monotone in each. The weights are a design choice: they put what the eyes have to hold first. What each term rests on:
//!
//! | term | 0 | 1 | rests on |
//! |---|---|---|---|
//! | `demand` | on the page | at the end of the range on that side | `[Percival1928]`, `[Sheard1930]`: strain grows with the share of the reserve that is used |
//! | `jump` | one depth | a jump over the whole range | jump limits lie below ramp limits: `[McCormack2019]` |
//! | `fineness` | 3200 arcsec | 60 arcsec | each halving of the disparity is one step; range: design choice |
//! | `size` | 10 degrees and more | 0.5 degrees | fusion is wider for large targets: `[McCormack2021]` |
//! | `cues` | outline, size and overlap agree | dots alone | outlines before dots: design choice |
//! | `noise` | both eyes get the same | half is alike | threshold grows as correlation falls: `[Cormack1991]` |
//! | `mix` | one side of the page | both sides | the two signs are seen by mechanisms of their own: `[Richards1970]` |
//! | `dwell` | a glance | half a minute | design choice |
//!
//! Source: `[McCormack2019]` for jumps, `[McCormack2021]` for sizes; what they found is a direction, the numbers are a
//! design choice. Source: `[Richards1970]` for the two signs.
//! Source: `[Cormack1991]` for noise.

use crate::units::{Angle, PrismDioptre, Seconds};

use super::reserves::Zone;

/// What a page asks, as far as it counts for the measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    /// The most demand toward, 0 or more.
    pub toward: PrismDioptre,
    /// The most demand away, 0 or more.
    pub away: PrismDioptre,
    /// The largest change of demand that the eyes are asked to make at once.
    pub jump: PrismDioptre,
    /// On pages about fine depth: the smallest disparity that has to be seen.
    pub finest: Option<Angle>,
    /// The angle that the smallest target fills.
    pub size: Option<Angle>,
    /// Cue level, 0 to 3, on pages that have one.
    pub cue: Option<u32>,
    /// Correlation between what the two eyes get, 0 to 1.
    pub correlation: Option<f64>,
    /// How long one depth is held.
    pub dwell: Option<Seconds>,
}

/// The ends that demands count against where no range is known, pd: toward and away. Design choice: about twice the
/// everyday range of the published near norms, so that no page of a first book reaches the top of the scale.
pub const UNKNOWN_RANGE: (f64, f64) = (14.0, 6.0);

/// One term of the measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Term {
    /// Its name.
    pub name: &'static str,
    /// Its value, 0 to 1.
    pub value: f64,
    /// Its weight; the weights of a page add up to 1.
    pub weight: f64,
}

/// How hard a page is.
#[derive(Debug, Clone, PartialEq)]
pub struct Difficulty {
    /// 0 to 100.
    pub total: f64,
    /// Its terms.
    pub terms: Vec<Term>,
}

/// The steps of the badge: level 1 to 10.
pub const BADGES: u32 = 10;

impl Difficulty {
    /// The level of the badge, 1 to [`BADGES`]: a tenth of the scale each.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped to the few levels there are")]
    pub fn badge(&self) -> u32 {
        ((self.total / 100.0 * f64::from(BADGES)).floor() as u32 + 1).min(BADGES)
    }
}

/// The measure of a page, against the zone of its reader, or against [`UNKNOWN_RANGE`] where none is known.
///
/// `None` where a number is none.
pub fn difficulty(asked: &Asked, zone: Option<&Zone>) -> Option<Difficulty> {
    let (toward_end, away_end) = ends(zone);
    let demand = share(asked.toward.0, toward_end)?.max(share(asked.away.0, away_end)?);
    let jump = share(asked.jump.0, toward_end + away_end)?;
    let mixed = 0.0 < asked.toward.0 && 0.0 < asked.away.0;
    let mut terms = vec![];
    let mut term = |name, weight, value| terms.push(Term { name, value, weight });
    match asked.finest {
        // Fine depth: how small it is counts, not how far the eyes turn.
        Some(finest) => term("fineness", 45.0, octaves(COARSE / finest.to_arcsec(), COARSE / FINE)?),
        None => {
            term("demand", 45.0, demand);
            term("jump", 15.0, jump);
        }
    }
    if let Some(size) = asked.size {
        term("size", 15.0, octaves(LARGE / size.to_degrees(), LARGE / SMALL)?);
    }
    if let Some(cue) = asked.cue {
        term("cues", 15.0, 1.0 - f64::from(cue.min(3)) / 3.0);
    }
    if let Some(correlation) = asked.correlation {
        term("noise", 10.0, share(1.0 - correlation, 0.5)?);
    }
    term("mix", 5.0, f64::from(u8::from(mixed)));
    if let Some(dwell) = asked.dwell {
        term("dwell", 5.0, share(dwell.0, LONG)?);
    }
    let whole: f64 = terms.iter().map(|term| term.weight).sum();
    terms.iter_mut().for_each(|term| term.weight /= whole);
    let total: f64 = terms.iter().map(|term| term.weight * term.value).sum();
    total.is_finite().then_some(Difficulty { total: 100.0 * total, terms })
}

/// What one quantity of a page would have to be for the page to have another difficulty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mend {
    /// The strongest demand, toward positive.
    Demand(PrismDioptre),
    /// The finest disparity.
    Finest(Angle),
}

/// What the main quantity of a page would have to be for its difficulty to be `total`, with all else as it is: the demand,
/// or on pages about fine depth the finest disparity. `None` where no value of it reaches that total.
pub fn mend(asked: &Asked, zone: Option<&Zone>, total: f64) -> Option<Mend> {
    let found = difficulty(asked, zone)?;
    let term = found.terms.iter().find(|term| matches!(term.name, "demand" | "fineness"))?;
    let value = term.value + (total - found.total) / 100.0 / term.weight;
    if !(0.0..=1.0).contains(&value) {
        return None;
    }
    if asked.finest.is_some() {
        let octaves = value * libm::log2(COARSE / FINE);
        return Some(Mend::Finest(Angle::from_arcsec(COARSE / libm::exp2(octaves))));
    }
    let (toward_end, away_end) = ends(zone);
    let (toward, away) = (share(asked.toward.0, toward_end)?, share(asked.away.0, away_end)?);
    let demand = if toward < away { -value * away_end } else { value * toward_end };
    Some(Mend::Demand(PrismDioptre(demand)))
}

/// The ends that demands count against, toward and away.
fn ends(zone: Option<&Zone>) -> (f64, f64) {
    zone.map_or(UNKNOWN_RANGE, |zone| (zone.toward.0, zone.away.0))
}

/// Disparity that counts as coarsest, arcsec. Design choice: the first of eight octaves.
const COARSE: f64 = 3200.0;
/// Disparity that counts as finest, arcsec. Design choice.
const FINE: f64 = 60.0;
/// Size that counts as largest, degrees. Design choice.
const LARGE: f64 = 10.0;
/// Size that counts as smallest, degrees. Design choice.
const SMALL: f64 = 0.5;
/// Dwell that counts as longest, seconds. Design choice.
const LONG: f64 = 30.0;

/// The share of a whole, at most 1; of nothing, any amount is all.
fn share(amount: f64, whole: f64) -> Option<f64> {
    match amount {
        a if !a.is_finite() || !whole.is_finite() => None,
        a if a <= 0.0 => Some(0.0),
        a if whole <= 0.0 || whole <= a => Some(1.0),
        a => Some(a / whole),
    }
}

/// The octaves of a ratio as a share of those of the largest, 0 to 1.
fn octaves(ratio: f64, largest: f64) -> Option<f64> {
    let share = libm::log2(ratio) / libm::log2(largest);
    share.is_finite().then(|| share.clamp(0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::optics::reserves::{Norms, Zone};

    fn pd(value: f64) -> PrismDioptre {
        PrismDioptre(value)
    }

    fn page() -> Asked {
        Asked {
            toward: pd(2.0),
            away: pd(0.0),
            jump: pd(1.0),
            finest: None,
            size: Some(Angle::from_degrees(5.0)),
            cue: None,
            correlation: None,
            dwell: Some(Seconds(10.0)),
        }
    }

    fn zone() -> Zone {
        Zone::everyday(&Norms::MorganNear.reserves(), None).unwrap()
    }

    fn total(asked: &Asked) -> f64 {
        difficulty(asked, Some(&zone())).unwrap().total
    }

    /// By hand: 45 · 2/7 + 15 · 1/10 + 15 · 1/log2(20) + 5 · 0 + 5 · 1/3, over the weights of 85.
    #[test]
    fn the_terms_add_up() {
        let by_hand = (45.0 * 2.0 / 7.0 + 1.5 + 15.0 / 20.0_f64.log2() + 5.0 / 3.0) / 85.0 * 100.0;
        let found = difficulty(&page(), Some(&zone())).unwrap();
        assert!((found.total - by_hand).abs() < 1e-9, "{found:?}");
        assert!((found.terms.iter().map(|t| t.weight).sum::<f64>() - 1.0).abs() < 1e-12);
        assert_eq!(found.badge(), 3);
    }

    #[test]
    fn the_ends_of_the_scale_are_reached() {
        let easiest =
            Asked { toward: pd(0.0), jump: pd(0.0), size: Some(Angle::from_degrees(20.0)), dwell: None, ..page() };
        assert_eq!(total(&easiest), 0.0);
        let hardest = Asked {
            finest: Some(Angle::from_arcsec(30.0)),
            size: Some(Angle::from_degrees(0.1)),
            cue: Some(0),
            correlation: Some(0.3),
            away: pd(1.0),
            dwell: Some(Seconds(60.0)),
            ..page()
        };
        assert!((total(&hardest) - 100.0).abs() < 1e-9);
        assert_eq!(difficulty(&hardest, None).unwrap().badge(), BADGES);
        assert_eq!(difficulty(&Asked { toward: pd(f64::NAN), ..page() }, None), None);
    }

    /// A page with what `mend` says has the difficulty that was asked for.
    #[test]
    fn what_mends_a_page_mends_it() {
        let flat = Asked { jump: pd(0.0), ..page() };
        for wanted in [15.0, 30.0, 50.0] {
            let Some(Mend::Demand(demand)) = mend(&flat, Some(&zone()), wanted) else { panic!("no demand") };
            assert!((total(&Asked { toward: demand, ..flat }) - wanted).abs() < 1e-9);
            let fine = Asked { finest: Some(Angle::from_arcsec(400.0)), ..flat };
            let Some(Mend::Finest(finest)) = mend(&fine, Some(&zone()), wanted) else { panic!("no disparity") };
            assert!((total(&Asked { finest: Some(finest), ..fine }) - wanted).abs() < 1e-9);
        }
        let away = Asked { toward: pd(0.5), away: pd(2.0), ..flat };
        assert!(matches!(mend(&away, Some(&zone()), 40.0), Some(Mend::Demand(demand)) if demand.0 < 0.0));
        assert_eq!(mend(&flat, Some(&zone()), 99.0), None);
    }

    proptest! {
        /// Making one thing harder never makes the page easier.
        #[test]
        fn it_is_monotone_in_each_term(
            (toward, away, jump) in (0.0..20.0_f64, 0.0..10.0_f64, 0.0..20.0_f64),
            (size, finest, cue) in (0.2..20.0_f64, 20.0..4000.0_f64, 0..4_u32),
            (correlation, dwell, more) in (0.2..1.0_f64, 1.0..60.0_f64, 1.0..3.0_f64),
            deep in any::<bool>(),
        ) {
            let page = Asked {
                toward: pd(toward),
                away: pd(away),
                jump: pd(jump),
                finest: deep.then(|| Angle::from_arcsec(finest)),
                size: Some(Angle::from_degrees(size)),
                cue: Some(cue),
                correlation: Some(correlation),
                dwell: Some(Seconds(dwell)),
            };
            let harder = [
                Asked { toward: pd(toward * more), ..page },
                Asked { away: pd(away * more), ..page },
                Asked { jump: pd(jump * more), ..page },
                Asked { finest: page.finest.map(|a| Angle::from_arcsec(a.to_arcsec() / more)), ..page },
                Asked { size: Some(Angle::from_degrees(size / more)), ..page },
                Asked { cue: Some(cue.saturating_sub(1)), ..page },
                Asked { correlation: Some(correlation / more), ..page },
                Asked { dwell: Some(Seconds(dwell * more)), ..page },
            ];
            for (i, harder) in harder.iter().enumerate() {
                prop_assert!(total(&page) <= total(harder) + 1e-9, "term {i}");
            }
            prop_assert!((0.0..=100.0 + 1e-9).contains(&total(&page)));
        }
    }
}
