//! The plan of a book: which pages come on which week and day, so that they rise and no day takes more time than it has.
//!
//! Whole numbers alone: pages are known by their place in the book and by the seconds that they take. The room knows no
//! exercise, no sheet and no reader; what a reader does with a page is for them to decide.

use std::ops::Range;

/// What an author asks of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Practice {
    /// How many weeks, 1 or more.
    pub weeks: u32,
    /// Days of practice a week, 1 to 7.
    pub days: u32,
    /// The most minutes a day, rests included.
    pub minutes: u32,
    /// The longest time without a rest, s; 1 or more.
    pub block: u32,
    /// The rest after each block, looking far away, s.
    pub rest: u32,
}

/// Days on which a page has to go well before the next one is due.
///
/// Source: design choice; one good day may be luck or a good night's sleep.
pub const DAYS_TO_GO_ON: u32 = 3;

/// Comfort, 0 (all well) to 10 (bad), up to which a day counts as one on which a page went well.
/// Source: design choice.
pub const COMFORT_TO_GO_ON: u32 = 2;

/// Comfort from which a reader goes one page back.
/// Source: design choice.
pub const COMFORT_TO_STEP_BACK: u32 = 4;

/// The most weeks of a plan: half a year.
/// Source: design choice.
pub const MOST_WEEKS: u32 = 26;

/// One day of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Day {
    /// From 1.
    pub week: u32,
    /// The day of practice in its week, from 1.
    pub day: u32,
    /// The pages of the day, by their places in the book: those that were there before, then the new ones.
    pub pages: Range<usize>,
    /// The place of the first page that was on no day before; the end of `pages` where there is none.
    pub new: usize,
    /// What they take with their rests, s.
    pub seconds: u32,
}

/// Why pages do not make a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unfit {
    /// One page alone takes more time than a day has.
    Page {
        /// Its place in the book.
        page: usize,
        /// What it takes with its rests, s.
        seconds: u32,
    },
    /// All pages once take more days than there are.
    Days {
        /// How many weeks would hold them; may be more than a plan can have.
        weeks: u32,
    },
}

impl Practice {
    /// How many days of practice there are.
    pub fn all_days(&self) -> usize {
        self.weeks as usize * self.days as usize
    }

    /// The time of a day, s.
    fn limit(&self) -> u32 {
        self.minutes.saturating_mul(60)
    }

    /// What a page of so many seconds takes: its blocks, and a rest after each.
    pub fn with_rests(&self, seconds: u32) -> u32 {
        seconds.saturating_add(seconds.div_ceil(self.block.max(1)).saturating_mul(self.rest))
    }
}

/// The plan of pages that take so many seconds each, in the order of the book.
///
/// The pages of a day are neighbours in the book. New pages come at an even pace, so that the last one comes early enough
/// for [`DAYS_TO_GO_ON`] days; where pages are long the pace follows the time they take. What is left of a day goes to the
/// pages just before the new ones. Neither the first nor the last page of a day ever goes back.
pub fn schedule(practice: &Practice, times: &[u32]) -> Result<Vec<Day>, Unfit> {
    let costs: Vec<u32> = times.iter().map(|&seconds| practice.with_rests(seconds)).collect();
    let (limit, days) = (practice.limit(), practice.all_days());
    if let Some((page, &seconds)) = costs.iter().enumerate().find(|(_, cost)| limit < **cost) {
        return Err(Unfit::Page { page, seconds });
    }
    let due = due(&costs, limit, days);
    if due.first().is_some_and(|&first| 0 < first) {
        return Err(Unfit::Days { weeks: weeks_for(&costs, limit, practice.days) });
    }
    let pace = days.saturating_sub(DAYS_TO_GO_ON as usize - 1).max(1);
    let mut plan = Vec::with_capacity(days);
    let mut known = 0;
    for (index, &due) in due.iter().skip(1).enumerate() {
        let even = (costs.len() * (index + 1)).div_ceil(pace).min(costs.len());
        let end = even.max(due).max(known).min(known + fitting(costs[known..].iter(), limit));
        let start = end - fitting(costs[..end].iter().rev(), limit);
        let (week, day) = (index / practice.days.max(1) as usize, index % practice.days.max(1) as usize);
        let seconds = costs[start..end].iter().sum();
        plan.push(Day { week: number(week), day: number(day), pages: start..end, new: known, seconds });
        known = end;
    }
    Ok(plan)
}

/// The number of something counted from 0.
fn number(index: usize) -> u32 {
    u32::try_from(index + 1).unwrap_or(u32::MAX)
}

/// How many of these pages, from the first on, a day holds.
fn fitting<'a>(costs: impl Iterator<Item = &'a u32>, limit: u32) -> usize {
    let mut used = 0_u32;
    costs
        .take_while(|&&cost| {
            used = used.saturating_add(cost);
            used <= limit
        })
        .count()
}

/// How many pages must be known before each day, and after the last, so that the rest still fits; the first is 0 where
/// all fit. Filled from the last day back, each day as full as it can be.
fn due(costs: &[u32], limit: u32, days: usize) -> Vec<usize> {
    let mut due = vec![costs.len()];
    for _ in 0..days {
        let later = due.last().copied().unwrap_or(0);
        due.push(later - fitting(costs[..later].iter().rev(), limit));
    }
    due.reverse();
    due
}

/// How many weeks hold every page once; each page fits in a day.
fn weeks_for(costs: &[u32], limit: u32, days: u32) -> u32 {
    let (mut known, mut full) = (0, 0_usize);
    while known < costs.len() {
        known += fitting(costs[known..].iter(), limit).max(1);
        full += 1;
    }
    u32::try_from(full.div_ceil(days.max(1) as usize)).unwrap_or(u32::MAX)
}

/// The page that comes on the fewest days, with their number; the first of several. `None` without pages.
pub fn rarest(plan: &[Day], pages: usize) -> Option<(usize, u32)> {
    let days = |page| plan.iter().filter(|day| day.pages.contains(&page)).count();
    (0..pages)
        .map(|page| (page, days(page)))
        .min_by_key(|&(_, days)| days)
        .map(|(page, days)| (page, u32::try_from(days).unwrap_or(u32::MAX)))
}

/// The fewest weeks, from those asked for on, in which every page comes on [`DAYS_TO_GO_ON`] days; `None` where no plan
/// has so many.
pub fn weeks_to_go_on(practice: &Practice, times: &[u32]) -> Option<u32> {
    (practice.weeks..=MOST_WEEKS).find(|&weeks| {
        let plan = schedule(&Practice { weeks, ..*practice }, times).unwrap_or_default();
        rarest(&plan, times.len()).is_some_and(|(_, days)| DAYS_TO_GO_ON <= days)
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    const WEEK: Practice = Practice { weeks: 2, days: 2, minutes: 5, block: 120, rest: 30 };

    fn days(plan: &[Day]) -> Vec<Range<usize>> {
        plan.iter().map(|day| day.pages.clone()).collect()
    }

    /// By hand: pages of 60 s take 90 s with their rest, so a day of 300 s holds three.
    #[test]
    fn new_pages_come_evenly_and_old_ones_fill_the_day() {
        let plan = schedule(&WEEK, &[60; 4]).unwrap();
        assert_eq!(days(&plan), [0..2, 1..4, 1..4, 1..4]);
        assert_eq!(plan.iter().map(|day| (day.week, day.day)).collect::<Vec<_>>(), [(1, 1), (1, 2), (2, 1), (2, 2)]);
        assert_eq!(plan.iter().map(|day| day.new).collect::<Vec<_>>(), [0, 2, 4, 4]);
        assert_eq!(plan.iter().map(|day| day.seconds).collect::<Vec<_>>(), [180, 270, 270, 270]);
        assert_eq!(rarest(&plan, 4), Some((0, 1)));
    }

    /// By hand: 121 s are two blocks of at most 120 s, so two rests.
    #[test]
    fn a_rest_follows_each_block() {
        assert_eq!(WEEK.with_rests(0), 0);
        assert_eq!(WEEK.with_rests(120), 150);
        assert_eq!(WEEK.with_rests(121), 181);
    }

    #[test]
    fn what_does_not_fit_is_told() {
        assert_eq!(schedule(&WEEK, &[60, 300]), Err(Unfit::Page { page: 1, seconds: 390 }));
        // Each fills a day of its own; five days are three weeks of two.
        assert_eq!(schedule(&WEEK, &[150; 5]), Err(Unfit::Days { weeks: 3 }));
        assert_eq!(weeks_to_go_on(&WEEK, &[300]), None);
    }

    #[test]
    fn one_page_comes_every_day() {
        assert_eq!(days(&schedule(&WEEK, &[60]).unwrap()), [0..1, 0..1, 0..1, 0..1]);
        assert_eq!(days(&schedule(&WEEK, &[]).unwrap()), [0..0, 0..0, 0..0, 0..0]);
    }

    /// The fewest days by trying every way to divide the pages: a second opinion on what fits.
    fn fewest_days(costs: &[u32], limit: u32) -> Option<usize> {
        let mut best: Vec<Option<usize>> = vec![Some(0)];
        for end in 1..=costs.len() {
            let ways = (0..end).filter(|&start| costs[start..end].iter().sum::<u32>() <= limit);
            best.push(ways.filter_map(|start| best[start]).min().map(|days| days + 1));
        }
        best[costs.len()]
    }

    proptest! {
        /// No day is longer than asked; every page comes; pages rise; what cannot be is told, with what would do.
        #[test]
        fn plans_hold_what_they_promise(
            times in prop::collection::vec(1..400_u32, 1..80),
            (weeks, days, minutes) in (1..=26_u32, 1..=7_u32, 2..=20_u32),
            (block, rest) in (60..=300_u32, 10..=120_u32),
        ) {
            let practice = Practice { weeks, days, minutes, block, rest };
            let costs: Vec<u32> = times.iter().map(|&seconds| practice.with_rests(seconds)).collect();
            let fewest = fewest_days(&costs, minutes * 60);
            let found = schedule(&practice, &times);
            prop_assert_eq!(&found, &schedule(&practice, &times));
            let plan = match found {
                Err(Unfit::Page { page, seconds }) => {
                    prop_assert!(minutes * 60 < seconds && seconds == costs[page] && fewest.is_none());
                    return Ok(());
                }
                Err(Unfit::Days { weeks: enough }) => {
                    let fewest = fewest.unwrap();
                    prop_assert!(((weeks * days) as usize) < fewest);
                    prop_assert!((((enough - 1) * days) as usize) < fewest && fewest <= (enough * days) as usize);
                    return Ok(());
                }
                Ok(plan) => plan,
            };
            prop_assert!(fewest.unwrap() <= (weeks * days) as usize);
            prop_assert_eq!(plan.len(), (weeks * days) as usize);
            let mut known = 0;
            for (day, index) in plan.iter().zip(0_u32..) {
                prop_assert_eq!((day.week, day.day), (index / days + 1, index % days + 1));
                prop_assert_eq!(day.seconds, costs[day.pages.clone()].iter().sum::<u32>());
                prop_assert!(day.seconds <= minutes * 60 && !day.pages.is_empty());
                prop_assert!(day.new == known && day.pages.start <= known && known <= day.pages.end);
                // Nothing is left out that would still fit before the first page of the day.
                prop_assert!(day.pages.start == 0 || minutes * 60 < day.seconds + costs[day.pages.start - 1]);
                known = day.pages.end;
            }
            prop_assert_eq!(known, times.len());
            for pair in plan.windows(2) {
                prop_assert!(pair[0].pages.start <= pair[1].pages.start && pair[0].pages.end <= pair[1].pages.end);
            }
        }

        /// Weeks that are named as enough are, and one less is not.
        #[test]
        fn the_weeks_named_for_three_days_a_page_would_do(times in prop::collection::vec(20..200_u32, 1..40)) {
            let practice = Practice { weeks: 1, days: 5, minutes: 10, block: 180, rest: 30 };
            let fewest = |weeks| {
                let plan = schedule(&Practice { weeks, ..practice }, &times).unwrap_or_default();
                rarest(&plan, times.len()).map_or(0, |(_, days)| days)
            };
            match weeks_to_go_on(&practice, &times) {
                Some(1) => prop_assert!(3 <= fewest(1)),
                Some(weeks) => prop_assert!(3 <= fewest(weeks) && fewest(weeks - 1) < 3),
                None => prop_assert!((1..=26).all(|weeks| fewest(weeks) < 3)),
            }
        }
    }
}
