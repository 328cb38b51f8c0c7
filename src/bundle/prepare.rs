//! Read → solve → lint: a set up to the point where its pages can be laid out.
//!
//! Goes on after problems as far as it can, so that one run names them all.

use crate::diagnostics::{Diagnostic, Diagnostics, Severity, Sources};
use crate::exercise::{self, Exercise, Page};
use crate::layout::grid::ART_FIELD;
use crate::layout::{self, BookPage, LaidOut};
use crate::lint;
use crate::solve::{SolvedFeature, solve};
use crate::spec::{Edition, MediumSource, SetSpec};
use crate::units::{Mm, Ppi};

use super::inked::Inked;
use super::load::Loaded;
use super::planned;

/// A set with everything that is known of its pages, and every problem found so far.
#[derive(Debug)]
pub struct Prepared {
    /// `set.toml`, where it could be understood.
    pub set: Option<SetSpec>,
    /// The exercise pages that could be solved, in book order.
    pub pages: Vec<SolvedPage>,
    /// Whether these are all pages of the set.
    pub complete: bool,
    /// The texts of all files, for messages.
    pub sources: Sources,
    /// Every problem found.
    pub diagnostics: Diagnostics,
    /// What the files left open and a default decides, where that shapes depth.
    pub defaults: Vec<Diagnostic>,
}

/// An exercise page with its offsets.
#[derive(Debug)]
pub struct SolvedPage {
    /// The page.
    pub page: Page,
    /// Its features with their offsets.
    pub features: Vec<SolvedFeature>,
    /// What the checks found on it.
    pub lints: Vec<Diagnostic>,
}

/// A set without errors: what may be rendered.
#[derive(Debug, Clone, Copy)]
pub struct Book<'a> {
    /// The set.
    pub set: &'a SetSpec,
    /// Its exercise pages.
    pub pages: &'a [SolvedPage],
    /// What a default decides, where that shapes depth.
    pub defaults: &'a [Diagnostic],
}

impl Prepared {
    /// The set as a book; `None` while there is an error in any of its files.
    pub fn book(&self) -> Option<Book<'_>> {
        self.draft().filter(|_| !self.diagnostics.has_errors())
    }

    /// The set as a book to look at, not to render: the checks may have found errors. `None` while a page is missing.
    pub fn draft(&self) -> Option<Book<'_>> {
        let set = self.set.as_ref().filter(|_| self.complete)?;
        Some(Book { set, pages: &self.pages, defaults: &self.defaults })
    }
}

impl Book<'_> {
    /// Lays out one edition of the book, or says what does not fit in it.
    pub fn lay_out(&self, edition: &Edition, inked: &Inked) -> Result<LaidOut, Vec<Diagnostic>> {
        let pages: Vec<_> = self.pages.iter().map(|p| BookPage { page: &p.page, solved: &p.features }).collect();
        let Inked { plan, views } = inked;
        let laid = layout::lay_out(&layout::Book { set: self.set, edition, plan, views, pages: &pages });
        laid.map_err(|problems| problems.into_iter().map(|problem| in_edition(problem, edition)).collect())
    }
}

/// The same page may fit in one edition and not in another: the message says which.
fn in_edition(problem: Diagnostic, edition: &Edition) -> Diagnostic {
    Diagnostic { message: format!("edition `{}`: {}", edition.id, problem.message), ..problem }
}

/// Expands, solves and checks what was read. A resolution given here stands in for that of every edition, so that the
/// checks see the dots that will be printed.
pub fn prepare(loaded: Loaded, ppi: Option<Ppi>) -> Prepared {
    let Loaded { mut set, exercises, sources, mut diagnostics } = loaded;
    let defaults = diagnostics.iter().filter(|d| d.severity == Severity::Note).cloned().collect();
    let (mut pages, mut complete) = (Vec::new(), false);
    if let Some(set) = &mut set {
        for edition in &mut set.editions {
            edition.ppi = ppi.unwrap_or(edition.ppi);
        }
        pages = solve_pages(&exercises, set, &mut diagnostics);
        complete = !diagnostics.has_errors();
        lint_pages(set, &exercises, &mut pages, &mut diagnostics);
        if complete {
            diagnostics.extend(planned::check(set, &pages));
        }
    }
    Prepared { set, pages, complete, sources, diagnostics, defaults }
}

/// Solves every page; those that cannot be solved leave their problems instead.
fn solve_pages(exercises: &[Exercise], set: &SetSpec, diagnostics: &mut Diagnostics) -> Vec<SolvedPage> {
    let mut solved = Vec::new();
    for page in exercise::pages(exercises, &set.id) {
        match solve(&page.scene, &set.viewer) {
            Ok(features) => solved.push(SolvedPage { page, features, lints: Vec::new() }),
            Err(problems) => problems.into_iter().for_each(|problem| push_once(diagnostics, problem.into())),
        }
    }
    solved
}

/// Runs the checks and hands each finding to its page and to the whole.
fn lint_pages(set: &SetSpec, exercises: &[Exercise], pages: &mut [SolvedPage], diagnostics: &mut Diagnostics) {
    let solved: Vec<_> = pages.iter().map(|p| lint::Page { id: &p.page.id, features: &p.features }).collect();
    let rasters = set.editions.iter().filter(|edition| edition.formats.png);
    let devices: Vec<_> = rasters.map(|e| lint::Device { edition: &e.id, ppi: e.ppi }).collect();
    let first_pages: Vec<String> = exercises.iter().filter_map(|exercise| exercise.page_ids().next()).collect();
    let mut texts = set_texts(set);
    texts.extend(exercises.iter().zip(&first_pages).flat_map(|(exercise, page)| exercise_texts(exercise, page)));
    let inked: Vec<Inked> = set.editions.iter().map(Inked::of).collect();
    let editions: Vec<_> = set.editions.iter().zip(&inked).map(|(edition, inked)| painted(edition, inked)).collect();
    let input = lint::Input {
        viewer: &set.viewer,
        field: (Mm(ART_FIELD.width), Mm(ART_FIELD.height)),
        devices: &devices,
        pages: &solved,
        texts: &texts,
        editions: &editions,
    };
    for finding in lint::check(&input) {
        if let Some(page) = pages.iter_mut().find(|p| p.page.id == finding.page) {
            page.lints.push(finding.diagnostic.clone());
        }
        push_once(diagnostics, finding.diagnostic);
    }
}

/// The inks of an edition, for the checks.
fn painted<'a>(edition: &'a Edition, inked: &'a Inked) -> lint::Painted<'a> {
    let colour = &edition.colour;
    lint::Painted {
        edition: &edition.id,
        place: Some(edition.place),
        ground: edition.ground,
        plan: &inked.plan,
        is_known: colour.source != MediumSource::Unsaid,
        aim: colour.wishes.ghost,
        accepted: colour.accepted.as_ref().map(|a| lint::Accepted { limit: a.limit, reason: &a.reason }),
    }
}

/// What the author wrote about the whole set.
fn set_texts(set: &SetSpec) -> Vec<lint::Text<'_>> {
    let texts = [Some(&set.title), set.summary.as_ref(), set.gate.as_ref()];
    texts.into_iter().flatten().map(|text| lint::Text { page: "", text, place: None }).collect()
}

/// What the author wrote about an exercise; `page` is its first.
fn exercise_texts<'a>(exercise: &'a Exercise, page: &'a str) -> Vec<lint::Text<'a>> {
    let words = &exercise.words;
    let single = [Some(&exercise.title), words.goal.as_ref(), words.setup.as_ref(), words.see.as_ref()];
    let texts = single.into_iter().flatten().chain(words.steps.iter().flatten());
    texts.map(|text| lint::Text { page, text, place: Some(exercise.place) }).collect()
}

/// Tells a problem once that several levels of an exercise share.
fn push_once(diagnostics: &mut Diagnostics, diagnostic: Diagnostic) {
    if diagnostics.iter().all(|known| *known != diagnostic) {
        diagnostics.push(diagnostic);
    }
}
