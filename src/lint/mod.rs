//! Lints: what a solved set should not do to its readers. One file for each rule, one line for each in [`RULES`].
//!
//! A rule reads solved pages and words and gives findings; it changes nothing and knows no layout and no file. The
//! module doc of each rule says what it looks for, why, where its limit comes from, and the way out.

mod art_field;
mod base_room;
mod claim_words;
mod crowd;
mod device_dot;
mod disparity_gradient;
mod dot_figure;
mod eye_brightness;
mod fusion;
mod ghost;
mod monocular_giveaway;
mod near_place;
mod near_point;
mod overlap;
mod parallel_axes;
mod range;
mod rise;
pub mod roll;
mod stereo_comfort;
mod stripes;
mod text_contrast;
mod text_ink;

use crate::colour::{Ground, InkPlan};
use crate::diagnostics::{Diagnostic, Place, Severity};
use crate::language::Language;
use crate::optics::Viewer;
use crate::optics::grading::Asked;
use crate::scene::Role;
use crate::solve::{SolvedFeature, SolvedForm};
use crate::units::{Mm, Ppi};

/// What the rules read.
#[derive(Debug, Clone, Copy)]
pub struct Input<'a> {
    /// The viewer that the pages were solved for.
    pub viewer: &'a Viewer,
    /// The nearest place that the reader's two eyes hold single, where it is known.
    pub near_point: Option<Mm>,
    /// Whether the pages stand in no order of difficulty.
    pub free_order: bool,
    /// Width and height of the art field.
    pub field: (Mm, Mm),
    /// The rasters that the pages are shown on.
    pub devices: &'a [Device<'a>],
    /// The exercise pages in the order of the book.
    pub pages: &'a [Page<'a>],
    /// The language of the set: that of labels and of letters that are drawn.
    pub language: Language,
    /// The author's own words, each once.
    pub texts: &'a [Text<'a>],
    /// Those of all words that stand in a translation, each where it stands there.
    pub told: &'a [(String, Place)],
    /// The inks of each edition.
    pub editions: &'a [Painted<'a>],
}

/// The inks of an edition, and what was asked of them.
#[derive(Debug, Clone, Copy)]
pub struct Painted<'a> {
    /// The edition.
    pub edition: &'a str,
    /// Its header.
    pub place: Option<Place>,
    /// Its plain ground.
    pub ground: Ground,
    /// Its inks, with what each eye is forecast to see.
    pub plan: &'a InkPlan,
    /// Whether the medium is named, so that the forecast is of a real one.
    pub is_known: bool,
    /// The ghost that the author asks to stay below.
    pub aim: f64,
    /// A ghost that the author accepts.
    pub accepted: Option<Accepted<'a>>,
}

/// A ghost that the author accepts, with the reason.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accepted<'a> {
    /// Up to which share.
    pub limit: f64,
    /// Why.
    pub reason: &'a str,
}

/// The raster of an edition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Device<'a> {
    /// The edition.
    pub edition: &'a str,
    /// Its resolution.
    pub ppi: Ppi,
}

/// A solved exercise page.
#[derive(Debug, Clone, Copy)]
pub struct Page<'a> {
    /// Unique in the book.
    pub id: &'a str,
    /// What stands on it.
    pub features: &'a [SolvedFeature],
    /// How hard it is.
    pub graded: Graded,
}

/// The difficulty of a page. The default is that of a check page without one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Graded {
    /// Its strand.
    pub strand: &'static str,
    /// What it asks of the eyes, where all numbers are known.
    pub asked: Option<Asked>,
    /// Its difficulty, 0 to 100.
    pub total: Option<f64>,
}

impl Default for Graded {
    fn default() -> Self {
        Self { strand: "check", asked: None, total: None }
    }
}

/// Words that an author wrote.
#[derive(Debug, Clone, Copy)]
pub struct Text<'a> {
    /// The first page that shows them; empty where they belong to the set.
    pub page: &'a str,
    /// The words.
    pub text: &'a str,
    /// Where they are written.
    pub place: Option<Place>,
    /// The language they are written in.
    pub language: Language,
    /// Whether they speak of the book itself, as the changes of a version do: what was corrected there is a page.
    pub of_book: bool,
}

/// One finding of one rule.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// The page; empty for words of the set.
    pub page: String,
    /// What was found.
    pub diagnostic: Diagnostic,
}

/// A rule.
#[derive(Debug, Clone, Copy)]
pub struct Rule {
    /// Unique name.
    pub id: &'static str,
    /// What it looks for, in one sentence.
    pub doc: &'static str,
    /// The codes of its findings; no two rules share one.
    pub codes: &'static [&'static str],
    /// The rule itself.
    pub check: fn(&Input<'_>) -> Vec<Finding>,
}

/// All rules.
pub const RULES: &[Rule] = &[
    art_field::RULE,
    base_room::RULE,
    parallel_axes::RULE,
    near_place::RULE,
    near_point::RULE,
    range::RULE,
    rise::RULE,
    disparity_gradient::RULE,
    crowd::RULE,
    device_dot::RULE,
    roll::RULE,
    stripes::RULE,
    claim_words::RULE,
    ghost::RULE,
    eye_brightness::RULE,
    overlap::RULE,
    text_ink::RULE,
    text_contrast::RULE,
    dot_figure::RULE,
    monocular_giveaway::RULE,
    stereo_comfort::RULE,
    fusion::RULE,
];

/// The findings of all rules: words of the set first, then page by page, in the order of [`RULES`].
pub fn check(input: &Input<'_>) -> Vec<Finding> {
    let mut findings: Vec<Finding> = RULES.iter().flat_map(|rule| (rule.check)(input)).collect();
    findings.sort_by_key(|finding| input.pages.iter().position(|page| page.id == finding.page));
    findings
}

/// What a rule says about one spot.
struct Words {
    message: String,
    label: &'static str,
    help: String,
}

/// Builds a finding.
fn finding(page: &str, severity: Severity, code: &'static str, place: Option<Place>, words: Words) -> Finding {
    let Words { message, label, help } = words;
    let diagnostic = Diagnostic { severity, code, place, message, label: label.to_owned(), help, replacement: None };
    Finding { page: page.to_owned(), diagnostic }
}

/// Whether the depth of a feature is its own: marks, frames and numbers ride with a target, beads sit on a trail, and
/// what is said of these is said of them.
fn has_own_depth(feature: &SolvedFeature) -> bool {
    match feature.role {
        Role::Target | Role::Trail | Role::Guide | Role::Reference | Role::Field => true,
        Role::Bead | Role::Watch | Role::Lock | Role::Number => false,
    }
}

/// The smallest and the largest parallax of a feature counted from the base, mm: what the author asked for.
fn intended_range(feature: &SolvedFeature, viewer: &Viewer) -> (f64, f64) {
    let (low, high) = parallax_range(feature);
    let base = viewer.base_parallax().0;
    (low - base, high - base)
}

/// The smallest and the largest parallax of a feature as drawn, mm.
fn parallax_range(feature: &SolvedFeature) -> (f64, f64) {
    match &feature.form {
        SolvedForm::Shape { .. } | SolvedForm::Strokes { .. } => (feature.stand.parallax.0, feature.stand.parallax.0),
        SolvedForm::Dots(dots) => dots.parallax_range(),
        SolvedForm::Path { points, .. } => points
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| (low.min(p.parallax), high.max(p.parallax))),
    }
}

/// The features of a page with a depth of their own that have a measure, each place in the spec once, with its largest
/// measure: a room of twelve lines is one finding.
fn largest_by_place<'a>(
    page: &Page<'a>,
    measure: impl Fn(&SolvedFeature) -> Option<f64>,
) -> Vec<(&'a SolvedFeature, f64)> {
    let mut largest: Vec<(&SolvedFeature, f64)> = Vec::new();
    for feature in page.features.iter().filter(|feature| has_own_depth(feature)) {
        let Some(value) = measure(feature) else { continue };
        match largest.iter_mut().find(|(known, _)| known.place.is_some() && known.place == feature.place) {
            Some(known) if known.1 < value => *known = (feature, value),
            Some(_) => {}
            None => largest.push((feature, value)),
        }
    }
    largest
}

#[cfg(test)]
mod tests;
