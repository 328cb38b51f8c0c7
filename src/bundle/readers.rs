//! One set made over for many readers: solve → check → lay out → render for each, in parallel, one report over all.
//!
//! Pages are read and drawn once. What is made for a reader waits on the disk and only a summary stays in memory, which
//! does not grow with their number otherwise. Everything is put in place at the end: either all readers' sets, or, on
//! request, those without errors, or nothing.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};

use rayon::prelude::*;

use crate::diagnostics::{Diagnostic, Diagnostics, Place, Severity};
use crate::exercise::{self, Exercise, Page};
use crate::language::{Language, Tongue};
use crate::spec::readers::{FOLDER, ReaderSpec};
use crate::spec::set::SetWords;
use crate::spec::suggest::nearest;
use crate::spec::{Edition, SetSpec};

use super::demand::{span, stands};
use super::error::Error;
use super::extent::REPORT;
use super::inked::{Inked, has_same_inks};
use super::issue::Told;
use super::prepare::{Book, Prepared, solve_set, tell_news};
use super::run::{Job, Request, Run, Step, choose, refuse_same_set};
use super::shard::parts;
use super::summary::{EditionSummary, ReaderSummary, ViewerSummary, join, report};
use super::write::{Output, remove_parts};

/// Inks that are kept for other readers with the same glasses. Design choice: no set has more pairs in use, and a
/// reader with measured glasses of their own has theirs made again.
const MOST_INKS: usize = 64;

/// Readers whose names a shared finding tells. Design choice.
const MOST_NAMES: usize = 3;

/// Which readers, and what happens to those whose set has errors.
#[derive(Debug, Clone, Copy)]
pub struct Whom<'a> {
    /// Their ids; none: all of each set.
    pub ids: &'a [String],
    /// Whether the others are written all the same.
    pub keep_going: bool,
}

/// What became of the readers of one set.
#[derive(Debug)]
pub struct Done {
    /// In the order of the spec; of a shard, those with an item in it.
    pub readers: Vec<ReaderSummary>,
    /// What was found, with the readers it was found for.
    pub findings: Vec<Diagnostic>,
}

impl Done {
    /// Whether any reader has errors.
    pub fn has_errors(&self) -> bool {
        self.readers.iter().any(|reader| 0 < reader.errors)
    }
}

/// Renders the sets of readers and writes them, with one report over all readers of a set. Where a reader has errors
/// nothing is written, unless `whom` says to keep going: then that reader alone is left out.
pub fn run(
    sets: &[Prepared],
    whom: Whom<'_>,
    request: &Request<'_>,
    watch: &(dyn Fn(Step) + Sync),
) -> Result<Vec<Done>, Error> {
    let groups = groups(sets, whom, request)?;
    let run = Run::new(request, watch);
    let failed = AtomicBool::new(false);
    run.threads()?.install(|| {
        let (mut outputs, mut done, mut first) = (Vec::new(), Vec::new(), 0);
        for group in &groups {
            let output = Output::open(request.out, &group.set.id, run.shard())?;
            let making = Making { run: &run, output: &output, failed: &failed, keep_going: whom.keep_going };
            done.push(group.all(first, &run, Some(&making))?);
            first += group.readers.len() * group.editions.len();
            outputs.push(output);
        }
        if whom.keep_going || !failed.load(Ordering::Relaxed) {
            for ((group, done), output) in groups.iter().zip(&done).zip(outputs) {
                group.report(&run, &done.readers, &output)?;
                output.commit()?;
            }
        }
        Ok(done)
    })
}

/// Solves, checks and lays out the sets of readers, and writes nothing.
pub fn check(sets: &[Prepared], whom: Whom<'_>, request: &Request<'_>) -> Result<Vec<Done>, Error> {
    let groups = groups(sets, whom, request)?;
    let run = Run::new(request, &|_| ());
    run.threads()?.install(|| groups.iter().map(|group| group.all(0, &run, None)).collect())
}

/// Joins the reports of the shards of a run for readers into the one over all, and takes them away.
pub fn merge(sets: &[Prepared], whom: Whom<'_>, request: &Request<'_>, inputs: &str) -> Result<Vec<Done>, Error> {
    let groups = groups(sets, whom, request)?;
    let mut ready = Vec::new();
    for group in &groups {
        let output = Output::open(request.out, &group.set.id, None)?;
        let folder = request.out.join(&group.set.id).join(FOLDER);
        let (names, parts) = parts(&folder, inputs)?;
        let ids = group.readers.iter().map(|reader| reader.id.as_str());
        let readers = join(group.set, ids, parts.into_iter().map(|part| part.readers).collect());
        ready.push((group, output, folder, names, readers));
    }
    let mut done = Vec::new();
    for (group, output, folder, names, readers) in ready {
        write_report(group.set, &readers, &output)?;
        output.commit()?;
        remove_parts(&folder, &names)?;
        done.push(Done { readers, findings: Vec::new() });
    }
    Ok(done)
}

/// The sets with the readers and the editions that are asked for.
fn groups<'a>(sets: &'a [Prepared], whom: Whom<'_>, request: &Request<'_>) -> Result<Vec<Group<'a>>, Error> {
    let sets: Vec<_> = sets.iter().filter_map(|prepared| Some((prepared, prepared.set.as_ref()?))).collect();
    refuse_same_set(&sets.iter().map(|(_, set)| *set).collect::<Vec<_>>())?;
    sets.into_iter().map(|(prepared, set)| Group::new(prepared, set, whom, request)).collect()
}

/// A set with its readers, and what they share.
struct Group<'a> {
    set: &'a SetSpec,
    readers: Vec<&'a ReaderSpec>,
    editions: Vec<&'a Edition>,
    /// The set in every language that is read, its own first.
    spoken: Vec<Spoken<'a>>,
    defaults: &'a [Diagnostic],
    inks: Mutex<Vec<(Edition, Arc<Inked>)>>,
}

/// The pages of a set in one language.
struct Spoken<'a> {
    language: Language,
    /// The words of the set, but for its own language.
    words: Option<&'a SetWords>,
    exercises: &'a [Exercise],
    pages: Vec<Page>,
}

impl<'a> Spoken<'a> {
    fn new(set: &str, language: Language, words: Option<&'a SetWords>, exercises: &'a [Exercise]) -> Self {
        Self { language, words, exercises, pages: exercise::pages(exercises, set, Tongue::of(language)) }
    }
}

/// What makes files, and whether any reader has failed so far.
struct Making<'a> {
    run: &'a Run<'a>,
    output: &'a Output,
    failed: &'a AtomicBool,
    keep_going: bool,
}

impl<'a> Group<'a> {
    fn new(prepared: &'a Prepared, set: &'a SetSpec, whom: Whom<'_>, request: &Request<'_>) -> Result<Self, Error> {
        let own = Spoken::new(&set.id, set.language, None, &prepared.exercises);
        let others = prepared.translated.iter();
        let others = others.map(|t| Spoken::new(&set.id, t.language, t.words.as_ref(), &t.exercises));
        let spoken = [own].into_iter().chain(others).collect();
        let editions = choose(set, request.editions)?;
        let readers = chosen(set, &prepared.readers, whom.ids)?;
        Ok(Self { set, readers, editions, spoken, defaults: &prepared.defaults, inks: Mutex::default() })
    }

    /// Goes through all readers that have an item in this run; `first` is the number of the first item.
    fn all(&self, first: usize, run: &Run<'_>, making: Option<&Making<'_>>) -> Result<Done, Error> {
        let item = |reader: usize, edition: usize| first + reader * self.editions.len() + edition;
        let mine = |reader: usize| (0..self.editions.len()).filter(move |e| run.has(item(reader, *e))).collect();
        let readers: Vec<(&ReaderSpec, Vec<usize>)> =
            self.readers.iter().enumerate().map(|(i, reader)| (*reader, mine(i))).collect();
        let readers: Vec<_> = readers.into_iter().filter(|(_, mine)| !mine.is_empty()).collect();
        // With fewer readers than threads the pages of one reader share the threads.
        let alone = readers.len() < run.request.jobs.get();
        let findings = Mutex::new(Findings::default());
        let one = |(index, (reader, mine)): (usize, &(&ReaderSpec, Vec<usize>))| {
            let (summary, found) = self.one(reader, mine, alone, making)?;
            findings.lock().unwrap_or_else(PoisonError::into_inner).add(index, found);
            Ok(summary)
        };
        let summaries: Vec<ReaderSummary> = if alone {
            readers.iter().enumerate().map(one).collect::<Result<_, Error>>()?
        } else {
            readers.par_iter().enumerate().with_max_len(1).map(one).collect::<Result<_, Error>>()?
        };
        let findings = findings.into_inner().unwrap_or_else(PoisonError::into_inner).told(&summaries);
        Ok(Done { readers: summaries, findings })
    }

    /// Makes the set of one reader: of the editions, those with these numbers.
    fn one(
        &self,
        reader: &ReaderSpec,
        mine: &[usize],
        alone: bool,
        making: Option<&Making<'_>>,
    ) -> Result<(ReaderSummary, Diagnostics), Error> {
        let set = self.set.made_for(reader);
        let inked: Vec<Arc<Inked>> = set.editions.iter().map(|edition| self.inked(edition)).collect();
        let mut found = Diagnostics::new();
        let (told, complete) = self.told(&set, &inked, &mut found);
        let demands = told.first().into_iter().flat_map(|told| &told.pages).flat_map(|page| stands(page, &set.viewer));
        let demand_pd = span(demands.map(|stand| stand.demand.0));
        let (first, others) = told.split_first().map_or((None, &[][..]), |(first, others)| (Some(first), others));
        let pages = first.map_or(&[][..], |told| &told.pages);
        let book = Book { set: first.map_or(&set, |told| &told.set), pages, others, defaults: self.defaults };
        let below = format!("{FOLDER}/{}/", reader.id);
        let mut editions = Vec::new();
        for (number, chosen) in self.editions.iter().enumerate().filter(|_| complete) {
            let mine = mine.contains(&number);
            // A reader is refused as a whole: by every shard, where the others are written.
            if !mine && making.is_none_or(|making| !making.keep_going) {
                continue;
            }
            let worn = set.editions.iter().zip(&inked).find(|(edition, _)| edition.id == chosen.id);
            let Some((edition, inked)) = worn else { continue };
            let laid = match book.lay_out(edition, inked) {
                Ok(laid) => laid,
                Err(problems) => {
                    found.extend(problems);
                    continue;
                }
            };
            let Some(making) = making.filter(|making| mine && !making.stops(&found)) else { continue };
            let written =
                making.run.edition(&Job { book: &book, edition, inked, below: &below, alone }, &laid, making.output)?;
            let report = format!("{}/{}/{REPORT}", reader.id, edition.id);
            editions.push(EditionSummary { id: edition.id.clone(), report, pages: written.pages.len() as u64 });
        }
        if found.has_errors() {
            editions.clear();
            if let Some(making) = making {
                making.failed.store(true, Ordering::Relaxed);
                making.output.forget(&format!("{FOLDER}/{}", reader.id));
            }
        }
        let count = |severity| found.count(severity) as u64;
        let (errors, warnings) = (count(Severity::Error), count(Severity::Warning));
        let viewer = ViewerSummary::new(&set.viewer);
        Ok((ReaderSummary { id: reader.id.clone(), viewer, demand_pd, errors, warnings, editions }, found))
    }

    /// The set of a reader, solved in every language of the editions that are made, the first of them first; and whether
    /// nothing was wrong before the checks.
    fn told(&self, set: &SetSpec, inked: &[Arc<Inked>], found: &mut Diagnostics) -> (Vec<Told>, bool) {
        let made = |edition: &&Edition| self.editions.iter().any(|chosen| chosen.id == edition.id);
        let mut told: Vec<Told> = Vec::new();
        let mut complete = true;
        for edition in set.editions.iter().filter(made) {
            let spoken = self.spoken.iter().find(|spoken| spoken.language == edition.language);
            let Some(spoken) = spoken.filter(|_| told.iter().all(|t| t.set.language != edition.language)) else {
                continue;
            };
            let own = || SetSpec { language: spoken.language, ..set.clone() };
            let set = spoken.words.map_or_else(own, |words| set.told(spoken.language, words));
            let mut news = Diagnostics::new();
            let texts = spoken.words.map_or(&[][..], |words| &words.texts);
            let solved = solve_set((&set, texts), (spoken.exercises, spoken.pages.clone()), inked, &mut news);
            tell_news(found, news);
            complete &= solved.complete;
            told.push(Told { set, pages: solved.pages });
        }
        (told, complete)
    }

    /// The inks of an edition as a reader wears its glasses. Readers with the same glasses share them.
    fn inked(&self, edition: &Edition) -> Arc<Inked> {
        let inks = || self.inks.lock().unwrap_or_else(PoisonError::into_inner);
        let known = inks().iter().find(|(known, _)| has_same_inks(known, edition)).map(|(_, inked)| Arc::clone(inked));
        known.unwrap_or_else(|| {
            let inked = Arc::new(Inked::of(edition));
            let mut inks = inks();
            if inks.len() < MOST_INKS {
                inks.push((edition.clone(), Arc::clone(&inked)));
            }
            inked
        })
    }

    /// Leaves the report over all readers waiting, or that of the shard.
    fn report(&self, run: &Run<'_>, readers: &[ReaderSummary], output: &Output) -> Result<(), Error> {
        match &run.request.sharded {
            Some(sharded) => sharded.write(output, FOLDER, readers),
            None => write_report(self.set, readers, output),
        }
    }
}

impl Making<'_> {
    /// Whether there is no use in more files: of this reader, or of anyone.
    fn stops(&self, found: &Diagnostics) -> bool {
        found.has_errors() || (!self.keep_going && self.failed.load(Ordering::Relaxed))
    }
}

/// The report is the last to be put in place.
fn write_report(set: &SetSpec, readers: &[ReaderSummary], output: &Output) -> Result<(), Error> {
    let stage = output.stage(FOLDER, false)?;
    stage.write(REPORT, &report(set, readers).map_err(Error::Report)?)
}

/// The readers asked for, in the order of the set; all if none was.
fn chosen<'a>(set: &SetSpec, readers: &'a [ReaderSpec], asked: &[String]) -> Result<Vec<&'a ReaderSpec>, Error> {
    if readers.is_empty() {
        return Err(Error::NoReaders(set.id.clone()));
    }
    let by_id: BTreeMap<&str, &ReaderSpec> = readers.iter().map(|reader| (reader.id.as_str(), reader)).collect();
    if let Some(unknown) = asked.iter().find(|id| !by_id.contains_key(id.as_str())) {
        let nearest = nearest(unknown, by_id.keys().copied()).map(str::to_owned);
        return Err(Error::UnknownReader { set: set.id.clone(), asked: unknown.clone(), nearest });
    }
    Ok(readers.iter().filter(|reader| asked.is_empty() || asked.contains(&reader.id)).collect())
}

/// What was found for several readers, told once where it is the same: an error in the same words; anything else of the
/// same code at the same place, for their reports hold the words of each. What is told does not depend on the order in which readers are done.
#[derive(Default)]
struct Findings(BTreeMap<(Option<Place>, &'static str, String), Shared>);

/// A finding of several readers.
struct Shared {
    /// The first of them and the place among the findings of that reader.
    first: (usize, usize),
    /// As found for that one.
    one: Diagnostic,
    /// Whether it has the same words for all.
    same: bool,
    /// All of them.
    readers: BTreeSet<usize>,
}

impl Findings {
    fn add(&mut self, reader: usize, found: Diagnostics) {
        for (number, one) in found.into_iter().enumerate() {
            let words = if one.severity == Severity::Error { one.message.clone() } else { String::new() };
            let (first, key) = ((reader, number), (one.place, one.code, words));
            match self.0.get_mut(&key) {
                Some(known) => {
                    known.readers.insert(reader);
                    known.same &= known.one.message == one.message;
                    if first < known.first {
                        (known.first, known.one) = (first, one);
                    }
                }
                None => {
                    self.0.insert(key, Shared { first, one, same: true, readers: BTreeSet::from([reader]) });
                }
            }
        }
    }

    /// Each with the readers it is about.
    fn told(self, readers: &[ReaderSummary]) -> Vec<Diagnostic> {
        let mut shared: Vec<Shared> = self.0.into_values().collect();
        shared.sort_by_key(|shared| shared.first);
        let told = shared.into_iter().map(|Shared { first: (first, _), one, same, readers: of }| {
            let whom = match readers.get(first) {
                Some(first) if !same && 1 < of.len() => {
                    format!("reader `{}`, and {} more in other words", first.id, of.len() - 1)
                }
                _ => names(&of, readers),
            };
            Diagnostic { message: format!("{whom}: {}", one.message), ..one }
        });
        told.collect()
    }
}

/// "reader `a`", "readers `a`, `b`, `c` and 4 more", "all 12 readers".
fn names(of: &BTreeSet<usize>, readers: &[ReaderSummary]) -> String {
    let ids = of.iter().filter_map(|index| readers.get(*index)).take(MOST_NAMES);
    let named = ids.map(|reader| format!("`{}`", reader.id)).collect::<Vec<_>>().join(", ");
    match of.len() {
        1 => format!("reader {named}"),
        count if count <= MOST_NAMES => format!("readers {named}"),
        count if count == readers.len() => format!("all {count} readers"),
        count => format!("readers {named} and {} more", count - MOST_NAMES),
    }
}
