//! `report.json`: what was solved, so that anyone can check a page with a ruler or a program.
//!
//! The structs here are the file format and nothing else uses them. Lengths and places are page mm, origin top left,
//! y down. Numbers are rounded in one fixed way, so that equal pages give equal bytes: lengths and demands to 4
//! decimals, arcsec to 2.

use serde::Serialize;

use crate::diagnostics::{Diagnostic, Severity};
use crate::exercise::quiz::{Pass, Question};
use crate::layout::parts::page_of_words;
use crate::layout::parts::readings::{self, Reading};
use crate::layout::sheet::Sheet;
use crate::layout::{LaidOut, Placed};
use crate::scene::Role;
use crate::solve::Stand;
use crate::spec::SetSpec;
use crate::spec::{Edition, Hand, MediumSource, PageFormat};

use super::colour_report::{ColourPart, InksPart};
use super::entry::{Entry, WordsEntry, entries, near_to_far};
use super::extent::Extent;
use super::grade_report::{DifficultyPart, ViewerPart};
use super::inked::Inked;
use super::issue::Issue;
use super::json;
use super::planned::PlanPart;
use super::prepare::{Book, SolvedPage};
use super::reading_report::EasePart;

/// Version of the format: raised when a key changes its meaning or goes away.
const SCHEMA: u32 = 1;

/// The report of one edition as JSON. Every sheet is listed; files are named where this run wrote them.
pub fn report(
    book: &Book<'_>,
    edition: &Edition,
    inked: &Inked,
    laid: &LaidOut,
    extent: &Extent,
) -> Result<Vec<u8>, serde_json::Error> {
    let own = unsaid_medium(edition).into_iter().chain(process_inks(edition)).chain(idle_hand(edition));
    let own: Vec<_> = own.collect();
    let book = &book.issue(edition);
    json::to_vec(&Report {
        schema: SCHEMA,
        tool: Tool::THIS,
        set: SetPart { id: &book.set.id, version: &book.set.version },
        reader: book.set.reader.as_deref(),
        edition: EditionPart::new(edition, inked, laid),
        viewer: ViewerPart::new(&book.set.viewer, &book.set.known, book.set.gate.as_deref()),
        defaults: book.defaults.iter().chain(&own).map(Finding::new).collect(),
        pages: pages(book, laid, extent),
        answers: AnswersPart::new(book, edition, laid, extent),
        plan: PlanPart::new(book),
        reading: EasePart::new(edition.language, book.pages.iter().map(|page| &page.page.words)),
    })
}

/// That the inks are those for an ideal screen, where the edition names no medium.
fn unsaid_medium(edition: &Edition) -> Option<Diagnostic> {
    let unsaid = edition.colour.source == MediumSource::Unsaid;
    unsaid.then(|| {
        let message = format!("edition `{}` names no medium: its inks are those for an ideal screen", edition.id);
        Diagnostic::note("N-MEDIUM", edition.place, message)
            .with_help("write `medium = \"screen\"` or `medium = \"print\"` for a forecast of the ghosts")
    })
}

/// That the PDF is not the archival one, where it has process inks.
fn process_inks(edition: &Edition) -> Option<Diagnostic> {
    edition.colour.cmyk.then(|| {
        let message = format!(
            "edition `{}` has process inks without a profile of the press: its pdf is PDF/UA-1, not PDF/A-2a",
            edition.id
        );
        Diagnostic::note("N-CMYK", edition.place, message)
            .with_help("leave out `cmyk` in an edition that is to be kept, and give this one to the print shop")
    })
}

/// That nothing is written into on a screen page, where the edition is for the left hand.
fn idle_hand(edition: &Edition) -> Option<Diagnostic> {
    (edition.hand == Hand::Left && edition.page == PageFormat::Wide).then(|| {
        let message = format!("edition `{}` is of screen pages: `hand = \"left\"` changes nothing there", edition.id);
        Diagnostic::note("N-HAND", edition.place, message)
            .with_help("leave `hand` out in an edition of screen pages: nothing is written into them")
    })
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    tool: Tool,
    set: SetPart<'a>,
    /// The reader it is made for, where it is made for one.
    #[serde(skip_serializing_if = "Option::is_none")]
    reader: Option<&'a str>,
    edition: EditionPart<'a>,
    viewer: ViewerPart<'a>,
    /// What the files left open and a default decides, where that shapes depth.
    defaults: Vec<Finding<'a>>,
    pages: Vec<PagePart<'a>>,
    /// Where the answers stand, if any page asks something.
    #[serde(skip_serializing_if = "Option::is_none")]
    answers: Option<AnswersPart>,
    /// Which pages come on which day, where the set has a plan.
    #[serde(skip_serializing_if = "Option::is_none")]
    plan: Option<PlanPart<'a>>,
    /// How easy the words are to read, where there are any.
    #[serde(skip_serializing_if = "Option::is_none")]
    reading: Option<EasePart>,
}

/// The program, as every report names it.
#[derive(Serialize)]
pub(super) struct Tool {
    name: &'static str,
    version: &'static str,
}

impl Tool {
    /// This program.
    pub(super) const THIS: Self = Self { name: env!("CARGO_PKG_NAME"), version: env!("CARGO_PKG_VERSION") };
}

#[derive(Serialize)]
struct SetPart<'a> {
    id: &'a str,
    version: &'a str,
}

#[derive(Serialize)]
struct EditionPart<'a> {
    id: &'a str,
    page_mm: [f64; 2],
    ground: &'static str,
    ppi: u32,
    language: &'static str,
    text: &'static str,
    hand: &'static str,
    gated: &'static str,
    glasses: GlassesPart,
    inks: InksPart,
    colour: ColourPart<'a>,
}

#[derive(Serialize)]
struct GlassesPart {
    left: &'static str,
    right: &'static str,
}

#[derive(Serialize)]
struct PagePart<'a> {
    number: u32,
    id: &'a str,
    /// The kind of exercise; `front` before the first exercise page, `back` after it on sheets that are none.
    kind: &'a str,
    level: Option<u32>,
    /// The strand in which it stands: `check`, `toward`, `away`, `jump`, `smooth` or `depth`.
    #[serde(skip_serializing_if = "Option::is_none")]
    strand: Option<&'static str>,
    /// How hard it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    difficulty: Option<DifficultyPart>,
    /// The letter of the variant, where a level has more than one.
    #[serde(skip_serializing_if = "Option::is_none")]
    variant: Option<String>,
    /// What the draws by lot depend on, where there are any.
    #[serde(skip_serializing_if = "Option::is_none")]
    seed: Option<u32>,
    title: &'a str,
    /// What is asked, with the answers, on pages that ask something.
    #[serde(skip_serializing_if = "Option::is_none")]
    questions: Option<Vec<QuestionPart<'a>>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pass: Option<PassPart>,
    /// What the stronger eye keeps, on pages with a balance.
    #[serde(skip_serializing_if = "Option::is_none")]
    balance: Option<BalancePart<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    svg: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    png: Option<String>,
    /// The sheet with its words, where they stand apart from its art.
    #[serde(skip_serializing_if = "Option::is_none")]
    words: Option<WordsEntry>,
    targets: Vec<Entry<'a>>,
    marks: Vec<Entry<'a>>,
    guides: Vec<Entry<'a>>,
    /// The target of the page from other distances, or from the page, where the page tells so.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    readings: Vec<ReadingPart>,
    lints: Vec<Finding<'a>>,
}

#[derive(Serialize)]
struct QuestionPart<'a> {
    id: &'a str,
    /// Empty where there is nothing to choose from.
    choices: &'a [String],
    answer: &'a str,
    /// The features it asks about.
    features: &'a [String],
}

/// How many right answers are more than luck.
#[derive(Serialize)]
struct PassPart {
    right: u32,
    of: u32,
    /// The chance that guesses alone reach it, to 6 decimals.
    luck: f64,
}

/// Where the answers stand: `turned` on the last pages, `file` in files of their own, `none` here alone.
#[derive(Serialize)]
struct AnswersPart {
    place: &'static str,
    /// The files of this run, where the answers have files of their own.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    files: Vec<String>,
}

#[derive(Serialize)]
struct BalancePart<'a> {
    stronger: &'static str,
    /// Of one.
    share: f64,
    set_by: &'a str,
}

/// One target as seen from one distance.
#[derive(Serialize)]
struct ReadingPart {
    distance_mm: f64,
    parallax_mm: f64,
    demand_pd: f64,
    place_mm: Option<f64>,
    /// Nearest and farthest place over the ipds of the audience; null is beyond every place.
    place_range_mm: [Option<f64>; 2],
    /// The same from the page on, whichever side; null where there is no such place.
    from_page_mm: Option<[f64; 2]>,
}

#[derive(Serialize)]
struct Finding<'a> {
    severity: &'static str,
    code: &'static str,
    message: &'a str,
    help: &'a str,
}

impl<'a> EditionPart<'a> {
    fn new(edition: &'a Edition, inked: &Inked, laid: &LaidOut) -> Self {
        let size = laid.sheets.first().map_or([0.0; 2], |sheet| [sheet.size.width, sheet.size.height]);
        Self {
            id: &edition.id,
            page_mm: size.map(fine),
            ground: edition.ground.name(),
            ppi: edition.ppi.0,
            language: edition.language.tag(),
            text: edition.text.name(),
            hand: edition.hand.name(),
            gated: if edition.gated { "in" } else { "out" },
            glasses: GlassesPart { left: edition.glasses.left.name(), right: edition.glasses.right.name() },
            inks: InksPart::new(&inked.plan.inks),
            colour: ColourPart::new(edition, &inked.plan, &laid.ghost),
        }
    }
}

/// Every sheet, with the exercise page it shows, if it shows one; the words of a page are told with its art. Exercise pages
/// stand in book order.
fn pages<'a>(book: &Issue<'a>, laid: &'a LaidOut, extent: &Extent) -> Vec<PagePart<'a>> {
    let mut next = book.pages.iter().copied().peekable();
    let mut sheets = laid.sheets.iter().zip(&laid.placed).peekable();
    let mut pages = Vec::new();
    while let Some((sheet, placed)) = sheets.next() {
        let exercise = next.next_if(|page| page.page.id == sheet.id);
        let around = if next.len() == book.pages.len() { "front" } else { "back" };
        let is_words = |(later, _): &(&Sheet, _)| exercise.is_some() && page_of_words(&later.id) == Some(&*sheet.id);
        let words: Vec<&Sheet> = std::iter::from_fn(|| sheets.next_if(is_words)).map(|(sheet, _)| sheet).collect();
        pages.push(PagePart {
            difficulty: difficulty(book, exercise),
            balance: balance(book.set, exercise),
            readings: readings(book.set, exercise),
            words: WordsEntry::of(&words, extent),
            ..page(sheet, placed, exercise, around, extent)
        });
    }
    pages
}

fn page<'a>(
    sheet: &'a Sheet,
    placed: &'a [Placed],
    exercise: Option<&'a SolvedPage>,
    around: &'static str,
    extent: &Extent,
) -> PagePart<'a> {
    let of = |roles: &[Role]| placed.iter().filter(|p| roles.contains(&p.feature.role)).flat_map(entries).collect();
    let quiz = exercise.and_then(|e| e.page.quiz.as_ref());
    PagePart {
        number: sheet.number,
        id: &sheet.id,
        kind: exercise.map_or(around, |e| e.page.kind),
        level: exercise.map(|e| e.page.level),
        strand: exercise.map(|e| e.strand),
        difficulty: None,
        variant: exercise.and_then(|e| e.page.variant).map(String::from),
        seed: exercise.and_then(|e| e.page.seed),
        questions: quiz.map(|quiz| quiz.questions.iter().map(QuestionPart::new).collect()),
        pass: quiz.and_then(|quiz| quiz.pass.as_ref()).map(PassPart::new),
        title: &sheet.title,
        balance: None,
        svg: extent.svg(sheet),
        png: extent.png(sheet),
        words: None,
        targets: of(&[Role::Target, Role::Bead, Role::Trail, Role::Field]),
        marks: of(&[Role::Watch, Role::Lock, Role::Number, Role::Reference]),
        guides: of(&[Role::Guide]),
        readings: Vec::new(),
        lints: exercise.map_or(&[][..], |e| &e.lints).iter().map(Finding::new).collect(),
    }
}

/// What is said of an exercise page besides its features, as a tree: `questions`, `pass`, `balance`, `readings`.
pub(super) fn page_facts(set: &SetSpec, page: &SolvedPage) -> serde_json::Value {
    let quiz = page.page.quiz.as_ref();
    serde_json::json!({
        "questions": quiz.map(|quiz| quiz.questions.iter().map(QuestionPart::new).collect::<Vec<_>>()),
        "pass": quiz.and_then(|quiz| quiz.pass.as_ref()).map(PassPart::new),
        "balance": balance(set, Some(page)),
        "readings": readings(set, Some(page)),
    })
}

fn difficulty(book: &Issue<'_>, exercise: Option<&SolvedPage>) -> Option<DifficultyPart> {
    Some(DifficultyPart::new(exercise?.difficulty.as_ref()?, &book.set.viewer))
}

fn balance<'a>(set: &'a SetSpec, exercise: Option<&SolvedPage>) -> Option<BalancePart<'a>> {
    let (balance, set_by) = (exercise?.page.balance?, set.gate.as_ref()?);
    Some(BalancePart { stronger: balance.eye(), share: fine(balance.share), set_by })
}

impl<'a> QuestionPart<'a> {
    fn new(question: &'a Question) -> Self {
        let Question { id, choices, answer, features } = question;
        Self { id, choices, answer, features }
    }
}

impl PassPart {
    fn new(pass: &Pass) -> Self {
        Self { right: pass.right, of: pass.of, luck: round(pass.luck, 1e6) }
    }
}

impl AnswersPart {
    fn new(book: &Issue<'_>, edition: &Edition, laid: &LaidOut, extent: &Extent) -> Option<Self> {
        let asks = book.pages.iter().any(|page| page.page.quiz.is_some());
        asks.then(|| Self { place: edition.answers.name(), files: extent.answers_files(&laid.answers, &book.set.id) })
    }
}

fn readings(set: &SetSpec, exercise: Option<&SolvedPage>) -> Vec<ReadingPart> {
    let all = exercise.map(|e| readings::of(&e.page, &e.features, &set.viewer)).unwrap_or_default();
    all.iter().map(ReadingPart::new).collect()
}

impl ReadingPart {
    fn new(reading: &Reading) -> Self {
        let Stand { parallax, demand, place, place_range, .. } = reading.stand;
        Self {
            distance_mm: fine(reading.distance.0),
            parallax_mm: fine(parallax.0),
            demand_pd: fine(demand.0),
            place_mm: place.map(|mm| fine(mm.0)),
            place_range_mm: near_to_far(place_range),
            from_page_mm: reading.from_page().map(|(near, far)| [fine(near), fine(far)]),
        }
    }
}

impl<'a> Finding<'a> {
    fn new(diagnostic: &'a Diagnostic) -> Self {
        Self {
            severity: severity_name(diagnostic.severity),
            code: diagnostic.code,
            message: &diagnostic.message,
            help: &diagnostic.help,
        }
    }
}

const fn severity_name(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => "error",
        Severity::Warning => "warning",
        Severity::Note => "note",
    }
}

/// Lengths and demands: 4 decimals.
pub(super) fn fine(value: f64) -> f64 {
    round(value, 1e4)
}

/// The nearest multiple of one part in `parts`, never -0.
pub(super) fn round(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts + 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_rounded_in_one_way() {
        assert_eq!(fine(354.902_949_9).to_string(), "354.9029");
        assert_eq!(fine(-0.000_01).to_string(), "0");
        assert_eq!(round(4096.456, 100.0).to_string(), "4096.46");
    }
}
