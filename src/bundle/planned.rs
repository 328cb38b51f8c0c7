//! The plan of a set: what is wrong with it, and its part of the report.
//!
//! Like the report, the structs here are the file format and nothing else uses them.

use serde::Serialize;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::plan::{DAYS_TO_GO_ON, MOST_WEEKS, Practice, Unfit, rarest, schedule, weeks_to_go_on};
use crate::spec::SetSpec;
use crate::spec::read::Placed;

use super::issue::Issue;
use super::prepare::SolvedPage;

/// What is wrong with the plan of a set, or is worth a word. Nothing where it has none.
pub(super) fn check(set: &SetSpec, pages: &[SolvedPage]) -> Vec<Diagnostic> {
    let Some(Placed { value: practice, place }) = &set.plan else { return Vec::new() };
    let times: Vec<u32> = pages.iter().map(|page| page.page.time).collect();
    let plan = match schedule(practice, &times) {
        Ok(plan) => plan,
        Err(unfit) => return vec![refusal(practice, pages, unfit, *place)],
    };
    let rare = rarest(&plan, pages.len()).filter(|(_, days)| *days < DAYS_TO_GO_ON);
    let rare = rare.map(|(page, days)| {
        let message = format!(
            "page `{}` comes on `{days}` day{}, below the `{DAYS_TO_GO_ON}` good days that the book asks for before the \
             next page",
            pages[page].page.id,
            if days == 1 { "" } else { "s" },
        );
        let help = match weeks_to_go_on(practice, &times) {
            Some(weeks) => would_do(weeks),
            None => "give the day more `minutes`, or divide the set".to_owned(),
        };
        Diagnostic::warning(codes::PLAN_DAYS, *place, message).with_label("few days a page").with_help(help)
    });
    let note = repeats(practice, pages.len())
        .map(|(message, help)| Diagnostic::note(codes::PLAN_REPEATS, *place, message).with_help(help));
    rare.into_iter().chain(note).collect()
}

/// Why there is no plan.
fn refusal(practice: &Practice, pages: &[SolvedPage], unfit: Unfit, place: Place) -> Diagnostic {
    let (message, label, help) = match unfit {
        Unfit::Page { page, seconds } => (
            format!(
                "page `{}` takes about `{}` min with its rests, above the `{}` min of a day",
                pages[page].page.id,
                seconds.div_ceil(60),
                practice.minutes,
            ),
            "a day is too short",
            "give the day more `minutes`, or the exercise shorter times, fewer rounds or fewer repeats".to_owned(),
        ),
        Unfit::Days { weeks } => (
            format!(
                "`{}` pages do not fit in `{}` days of `{}` min, even if each comes only once",
                pages.len(),
                practice.all_days(),
                practice.minutes,
            ),
            "too few days",
            match weeks {
                weeks if weeks <= MOST_WEEKS => would_do(weeks),
                _ => "give it more `days` and `minutes`, or divide the set".to_owned(),
            },
        ),
    };
    Diagnostic::error(codes::PLAN, place, message).with_label(label).with_help(help)
}

fn would_do(weeks: u32) -> String {
    format!("`weeks = {weeks}` would do, or more `days` or `minutes`")
}

/// That some weeks bring no new page.
fn repeats(practice: &Practice, pages: usize) -> Option<(String, String)> {
    (pages < practice.weeks as usize).then(|| {
        let message = format!(
            "the plan has `{}` weeks for `{pages}` pages: some weeks bring no new page, the known ones come again",
            practice.weeks
        );
        (message, "add levels or exercises, or take fewer `weeks`".to_owned())
    })
}

/// The plan as the report lists it.
#[derive(Serialize)]
pub(super) struct PlanPart<'a> {
    weeks: u32,
    days: u32,
    minutes: u32,
    block_s: u32,
    rest_s: u32,
    schedule: Vec<DayPart<'a>>,
}

/// A day of practice.
#[derive(Serialize)]
struct DayPart<'a> {
    week: u32,
    day: u32,
    /// What its pages take with their rests, to 2 decimals.
    minutes: f64,
    pages: Vec<&'a str>,
    /// Those of them that were on no day before.
    new: Vec<&'a str>,
}

impl<'a> PlanPart<'a> {
    /// The plan of an edition, if it has one.
    pub(super) fn new(book: &Issue<'a>) -> Option<Self> {
        let Practice { weeks, days, minutes, block, rest } = book.set.plan.as_ref()?.value;
        let times: Vec<u32> = book.pages.iter().map(|page| page.page.time).collect();
        let plan = schedule(&Practice { weeks, days, minutes, block, rest }, &times).ok()?;
        let ids = |range: std::ops::Range<usize>| book.pages[range].iter().map(|page| page.page.id.as_str()).collect();
        let schedule = plan.into_iter().map(|day| DayPart {
            week: day.week,
            day: day.day,
            minutes: super::report::round(f64::from(day.seconds) / 60.0, 100.0),
            new: ids(day.new..day.pages.end),
            pages: ids(day.pages),
        });
        Some(Self { weeks, days, minutes, block_s: block, rest_s: rest, schedule: schedule.collect() })
    }
}
