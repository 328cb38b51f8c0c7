//! Read → solve → lint: a set up to the point where its pages can be laid out.
//!
//! Goes on after problems as far as it can, so that one run names them all.

use std::collections::BTreeSet;
use std::path::PathBuf;
use std::sync::Arc;

use crate::diagnostics::{Diagnostic, Diagnostics, Place, Severity, Sources, codes};
use crate::exercise::balance::Balance;
use crate::exercise::{self, Exercise, Page};
use crate::language::{Language, Tongue};
use crate::layout::grid::ART_FIELD;
use crate::layout::{self, BookPage, LaidOut};
use crate::lint;
use crate::optics::Viewer;
use crate::optics::grading::{Asked, Difficulty, difficulty};
use crate::scene::Strand;
use crate::solve::{self, SolvedFeature};
use crate::spec::readers::ReaderSpec;
use crate::spec::{Edition, MediumSource, SetSpec};
use crate::units::{Mm, Ppi, plain};

use super::inked::{Inked, has_same_inks};
use super::issue::{self, Told};
use super::load::Loaded;
use super::planned;
use super::translate::Translated;

/// A set with everything that is known of its pages, and every problem found so far.
#[derive(Debug)]
pub struct Prepared {
    /// `set.toml`, where it could be understood.
    pub set: Option<SetSpec>,
    /// The exercise pages that could be solved, in book order.
    pub pages: Vec<SolvedPage>,
    /// Set and pages in the other languages of its editions.
    pub others: Vec<Told>,
    /// Whether these are all pages of the set.
    pub complete: bool,
    /// The texts of all files, for messages.
    pub sources: Sources,
    /// Every problem found.
    pub diagnostics: Diagnostics,
    /// What the files left open and a default decides, where that shapes depth.
    pub defaults: Vec<Diagnostic>,
    /// The exercises that could be read, in book order.
    pub exercises: Vec<Exercise>,
    /// The set in its other languages, as far as it could be read.
    pub translated: Vec<Translated>,
    /// The readers that could be read.
    pub readers: Vec<ReaderSpec>,
    /// The folder of `set.toml`; empty for the working folder.
    pub home: PathBuf,
    /// The pictures that its exercises name, by their paths from there.
    pub pictures: BTreeSet<String>,
}

/// An exercise page with its offsets.
#[derive(Debug)]
pub struct SolvedPage {
    /// The page.
    pub page: Page,
    /// Its features with their offsets.
    pub features: Vec<SolvedFeature>,
    /// The strand it belongs to: `check`, `toward`, `away`, `jump`, `smooth` or `depth`.
    pub strand: &'static str,
    /// What it asks of the eyes; `None` where a number is none.
    pub asked: Option<Asked>,
    /// How hard it is for the viewer; `None` where a number is none.
    pub difficulty: Option<Difficulty>,
    /// What the checks found on it.
    pub lints: Vec<Diagnostic>,
}

/// A set without errors: what may be rendered.
#[derive(Debug, Clone, Copy)]
pub struct Book<'a> {
    /// The set.
    pub set: &'a SetSpec,
    /// Its exercise pages, in its own language.
    pub pages: &'a [SolvedPage],
    /// The same in the other languages of its editions.
    pub others: &'a [Told],
    /// What a default decides, where that shapes depth.
    pub defaults: &'a [Diagnostic],
}

impl SolvedPage {
    /// A solved page with its strand and its difficulty, before any check.
    pub fn graded(page: Page, features: Vec<SolvedFeature>, viewer: &Viewer) -> Self {
        let asked = solve::asked(&features, page.effort, page.strand, viewer);
        let strand = solve::strand_name(page.strand, asked.as_ref());
        let difficulty = asked.and_then(|asked| difficulty(&asked, viewer.zone.as_ref()));
        Self { page, features, strand, asked, difficulty, lints: Vec::new() }
    }
}

impl SolvedPage {
    /// The page as layout takes it.
    fn in_book(&self) -> BookPage<'_> {
        let grade = self.difficulty.as_ref().map(Difficulty::badge);
        BookPage { page: &self.page, solved: &self.features, strand: self.strand, grade }
    }
}

impl Prepared {
    /// The set as a book; `None` while there is an error in any of its files.
    pub fn book(&self) -> Option<Book<'_>> {
        self.draft().filter(|_| !self.diagnostics.has_errors())
    }

    /// The set as a book to look at, not to render: the checks may have found errors. `None` while a page is missing.
    pub fn draft(&self) -> Option<Book<'_>> {
        let set = self.set.as_ref().filter(|_| self.complete)?;
        Some(Book { set, pages: &self.pages, others: &self.others, defaults: &self.defaults })
    }
}

impl Book<'_> {
    /// Lays out one edition of the book, or says what does not fit in it.
    pub fn lay_out(&self, edition: &Edition, inked: &Inked) -> Result<LaidOut, Vec<Diagnostic>> {
        let issue = self.issue(edition);
        let pages: Vec<_> = issue.pages.iter().map(|page| page.in_book()).collect();
        let Inked { plan, views } = inked;
        let laid = layout::lay_out(&layout::Book {
            set: issue.set,
            edition,
            plan,
            views,
            pages: &pages,
            tongue: Tongue::of(edition.language),
        });
        laid.map_err(|problems| problems.into_iter().map(|problem| in_edition(problem, edition)).collect())
    }
}

/// The same page may fit in one edition and not in another: the message says which.
fn in_edition(problem: Diagnostic, edition: &Edition) -> Diagnostic {
    Diagnostic { message: format!("edition `{}`: {}", edition.id, problem.message), ..problem }
}

/// Takes what was read, and solves nothing. A resolution given here stands in for that of every edition, so that the
/// checks see the dots that will be printed.
pub fn gather(loaded: Loaded, ppi: Option<Ppi>) -> Prepared {
    let Loaded { mut set, exercises, translated, readers, sources, home, pictures, diagnostics } = loaded;
    let defaults = diagnostics.iter().filter(|d| d.severity == Severity::Note).cloned().collect();
    for edition in set.iter_mut().flat_map(|set| &mut set.editions) {
        edition.ppi = ppi.unwrap_or(edition.ppi);
    }
    Prepared {
        set,
        pages: Vec::new(),
        others: Vec::new(),
        complete: false,
        sources,
        diagnostics,
        defaults,
        exercises,
        translated,
        readers,
        home,
        pictures,
    }
}

/// Expands, solves and checks what was read, for the viewer of the set.
pub fn prepare(loaded: Loaded, ppi: Option<Ppi>) -> Prepared {
    let mut prepared = gather(loaded, ppi);
    if let Some(set) = &prepared.set {
        let inked = Inked::of_all(set.editions.iter());
        let pages = exercise::pages(&prepared.exercises, &set.id, Tongue::of(set.language));
        let diagnostics = &mut prepared.diagnostics;
        let Solved { pages, complete } = solve_set((set, &[]), (&prepared.exercises, pages), &inked, diagnostics);
        (prepared.pages, prepared.complete) = (pages, complete);
        for translated in &prepared.translated {
            let Some(words) = &translated.words else { continue };
            let set = set.told(translated.language, words);
            let pages = exercise::pages(&translated.exercises, &set.id, Tongue::of(set.language));
            let (inked, mut found) = (inked.as_slice(), Diagnostics::new());
            let Solved { pages, complete } =
                solve_set((&set, &words.texts), (&translated.exercises, pages), inked, &mut found);
            prepared.complete &= complete;
            tell_news(diagnostics, found);
            prepared.others.push(Told { set, pages });
        }
    }
    prepared
}

/// The pages of a set, solved and checked for one viewer.
pub(super) struct Solved {
    /// Those that could be solved.
    pub pages: Vec<SolvedPage>,
    /// Whether nothing was wrong before the checks.
    pub complete: bool,
}

/// Solves and checks pages for the viewer of a set; `told` are the texts that stand in a translation, and `inked` the inks
/// of its editions.
pub(super) fn solve_set(
    (set, told): (&SetSpec, &[(String, Place)]),
    (exercises, pages): (&[Exercise], Vec<Page>),
    inked: &[Arc<Inked>],
    diagnostics: &mut Diagnostics,
) -> Solved {
    let mut pages = solve_pages(pages, set, diagnostics);
    let complete = !diagnostics.has_errors();
    lint_pages((set, told), exercises, inked, &mut pages, diagnostics);
    if complete {
        diagnostics.extend(planned::check(set, &pages));
        diagnostics.extend(issue::check(set, &pages));
    }
    Solved { pages, complete }
}

/// Solves every page; those that cannot be solved leave their problems instead.
fn solve_pages(pages: Vec<Page>, set: &SetSpec, diagnostics: &mut Diagnostics) -> Vec<SolvedPage> {
    let mut solved = Vec::new();
    for mut page in pages {
        page.balance = page.balance.or(balance_of_reader(&page, set));
        if let Some(problem) = off_distance(&page, set) {
            push_once(diagnostics, problem);
            continue;
        }
        match solve::solve(&page.scene, &set.viewer) {
            Ok(features) => solved.push(SolvedPage::graded(page, features, &set.viewer)),
            Err(problems) => problems.into_iter().for_each(|problem| push_once(diagnostics, problem.into())),
        }
    }
    solved
}

/// The balance that the reader can use, on pages without one of their own. Pages about fine depth keep equal eyes, and kinds
/// that a professional sets have their own way with them.
fn balance_of_reader(page: &Page, set: &SetSpec) -> Option<Balance> {
    let balance = set.known.balance?;
    (page.strand != Strand::Depth && !page.gated).then(|| balance.into())
}

/// The problem of a page that tells places, or demands at other distances, in a set with a base: from another distance the
/// same print is another base, and where something seems to stand before turned eyes nobody can promise.
fn off_distance(page: &Page, set: &SetSpec) -> Option<Diagnostic> {
    let readings = page.readings.as_ref().filter(|_| !set.viewer.base.is_none())?;
    let key = if set.viewer.base.horizontal.0 == 0.0 { "base_vertical" } else { "base" };
    let place = page.scene.features.iter().find(|feature| feature.id == readings.target).and_then(|f| f.place);
    Some(Diagnostic {
        severity: Severity::Error,
        code: codes::CONFLICT,
        place,
        message: format!(
            "a `{}` tells places or other distances, and `{key}` holds at {} cm alone and for no place",
            page.kind,
            plain(set.viewer.distance.0 / 10.0, 1)
        ),
        label: format!("not with a `{key}`"),
        help: format!("leave the exercise out of a set with `{key}`"),
        replacement: None,
    })
}

/// Runs the checks and hands each finding to its page and to the whole.
fn lint_pages(
    (set, told): (&SetSpec, &[(String, Place)]),
    exercises: &[Exercise],
    inked: &[Arc<Inked>],
    pages: &mut [SolvedPage],
    diagnostics: &mut Diagnostics,
) {
    let graded = |p: &SolvedPage| lint::Graded {
        strand: p.strand,
        asked: p.asked,
        total: p.difficulty.as_ref().map(|d| d.total),
    };
    let solved: Vec<_> =
        pages.iter().map(|p| lint::Page { id: &p.page.id, features: &p.features, graded: graded(p) }).collect();
    let rasters = set.editions.iter().filter(|edition| edition.formats.png);
    let devices: Vec<_> = rasters.map(|e| lint::Device { edition: &e.id, ppi: e.ppi }).collect();
    let first_pages: Vec<String> = exercises.iter().filter_map(|exercise| exercise.page_ids().next()).collect();
    let mut texts = set_texts(set);
    texts.extend(
        exercises.iter().zip(&first_pages).flat_map(|(exercise, page)| exercise_texts(exercise, page, set.language)),
    );
    let editions = unlike(set).map(|index| painted(&set.editions[index], &inked[index])).collect::<Vec<_>>();
    let input = lint::Input {
        viewer: &set.viewer,
        near_point: set.known.near_point,
        free_order: set.free_order,
        field: (Mm(ART_FIELD.width), Mm(ART_FIELD.height)),
        devices: &devices,
        pages: &solved,
        language: set.language,
        texts: &texts,
        told,
        editions: &editions,
    };
    for finding in lint::check(&input) {
        if let Some(page) = pages.iter_mut().find(|p| p.page.id == finding.page) {
            page.lints.push(finding.diagnostic.clone());
        }
        push_once(diagnostics, finding.diagnostic);
    }
}

/// The editions whose inks differ from those of all before them: what is found of the others is the same.
fn unlike(set: &SetSpec) -> impl Iterator<Item = usize> {
    let all = &set.editions;
    let same = |one: &Edition, other: &Edition| has_same_inks(one, other) && one.colour == other.colour;
    (0..all.len()).filter(move |&index| all[..index].iter().all(|before| !same(before, &all[index])))
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

/// What the author wrote about the whole set, in the book or in what is published with it.
fn set_texts(set: &SetSpec) -> Vec<lint::Text<'_>> {
    let text = |text, place, of_book| lint::Text { page: "", text, place, language: set.language, of_book };
    let own = [Some(&set.title), set.summary.as_ref(), set.author.as_ref(), set.gate.as_ref()];
    let licence = set.licence.iter().flat_map(|licence| {
        [&licence.name].into_iter().chain(&licence.text).chain(&licence.credits).map(String::as_str)
    });
    let accepted = set.editions.iter().filter_map(|edition| edition.colour.accepted.as_ref());
    let history = set.contact.iter().chain(set.releases.iter().flat_map(|release| &release.changes));
    let mut texts: Vec<_> = own.into_iter().flatten().map(|own| text(own, None, false)).collect();
    texts.extend(licence.map(|licence| text(licence, None, false)));
    texts.extend(set.publish.watermark.iter().map(|mark| text(&mark.value, Some(mark.place), false)));
    texts.extend(accepted.map(|accepted| text(&accepted.reason, None, false)));
    texts.extend(history.map(|change| text(change, None, true)));
    texts
}

/// What the author wrote about an exercise; `page` is its first.
fn exercise_texts<'a>(exercise: &'a Exercise, page: &'a str, language: Language) -> Vec<lint::Text<'a>> {
    let words = &exercise.words;
    let single = [Some(&exercise.title), words.goal.as_ref(), words.setup.as_ref(), words.see.as_ref()];
    let texts = single.into_iter().flatten().chain(words.steps.iter().flatten());
    texts.map(|text| lint::Text { page, text, place: Some(exercise.place), language, of_book: false }).collect()
}

/// Tells what was found in one more language, but for what is known from another one.
pub(super) fn tell_news(diagnostics: &mut Diagnostics, found: Diagnostics) {
    let news: Vec<_> = found.into_iter().filter(|one| diagnostics.iter().all(|known| !is_same(known, one))).collect();
    diagnostics.extend(news);
}

/// Whether two languages have one finding: the same rule at the same place, or the same words.
fn is_same(known: &Diagnostic, other: &Diagnostic) -> bool {
    let placed = known.place.is_some() && known.place == other.place;
    known == other || (placed && known.code == other.code && known.severity == other.severity)
}

/// Tells a problem once that several levels of an exercise share.
fn push_once(diagnostics: &mut Diagnostics, diagnostic: Diagnostic) {
    if diagnostics.iter().all(|known| *known != diagnostic) {
        diagnostics.push(diagnostic);
    }
}
