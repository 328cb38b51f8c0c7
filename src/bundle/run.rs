//! Lay out → render → write: the books of one run, in parallel: its editions, or, of few editions, the pages of each in
//! turn.
//!
//! The sheets of one edition a thread live at a time and every file is written by the task that made it, so memory does not
//! grow with the number of editions or files. What is made does not depend on the number of threads.

use std::num::NonZeroUsize;
use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use rayon::prelude::*;

use crate::layout::LaidOut;
use crate::layout::sheet::Sheet;
use crate::render::png::{Scratch, png};
use crate::render::svg::svg;
use crate::spec::suggest::nearest;
use crate::spec::{Edition, Formats, SetSpec};
use crate::units::Ppi;

use super::document::{Part, document};
use super::error::Error;
use super::extent::{Extent, REPORT, pdf_file};
use super::inked::Inked;
use super::prepare::Book;
use super::report::report;
use super::shard::{Shard, Sharded};
use super::write::{Output, Stage};

/// What to render, and where to.
#[derive(Debug)]
pub struct Request<'a> {
    /// The folder for the folders of the sets.
    pub out: &'a Path,
    /// Ids of the editions; none: all of each set.
    pub editions: &'a [String],
    /// The formats; without: those of each edition.
    pub formats: Option<Formats>,
    /// First and last page; without: all.
    pub pages: Option<RangeInclusive<u32>>,
    /// How many threads.
    pub jobs: NonZeroUsize,
    /// The shard of the run, where it is one.
    pub sharded: Option<Sharded>,
}

/// What is told while a run goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// So many more files will be made.
    Planned(u64),
    /// One is made.
    Made,
}

/// One edition as written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// Id of the set.
    pub set: String,
    /// Id of the edition.
    pub edition: String,
    /// Its folder.
    pub folder: PathBuf,
    /// How many pages the book has.
    pub book_pages: u32,
    /// The pages of this run: number and id.
    pub pages: Vec<(u32, String)>,
    /// Whether the folder was replaced as a whole.
    pub whole: bool,
    /// The files, by their names below the folder, with their sizes in bytes: PDF, SVG and PNG page by page,
    /// answers with files of their own, report.
    pub files: Vec<(String, u64)>,
}

/// Renders books and writes them. Either everything is put in place or, apart from a failing rename, nothing.
pub fn run(books: &[Book<'_>], request: &Request<'_>, watch: &(dyn Fn(Step) + Sync)) -> Result<Vec<Written>, Error> {
    refuse_same_set(&books.iter().map(|book| book.set).collect::<Vec<_>>())?;
    let chosen = books.iter().map(|b| choose(b.set, request.editions)).collect::<Result<Vec<_>, _>>()?;
    let run = Run::new(request, watch);
    run.threads()?.install(|| {
        let outputs = books.iter().map(|book| Output::open(request.out, &book.set.id, run.shard()));
        let outputs = outputs.collect::<Result<Vec<_>, _>>()?;
        let every = chosen.iter().enumerate().flat_map(|(set, editions)| editions.iter().map(move |e| (set, *e)));
        let mine: Vec<_> = every.enumerate().filter(|(item, _)| run.has(*item)).map(|(_, item)| item).collect();
        // With fewer editions than threads the pages of one edition share the threads.
        let alone = mine.len() < request.jobs.get();
        let one = |&(set, edition): &(usize, &Edition)| run.laid_out((set, &books[set]), edition, alone, &outputs[set]);
        let made: Vec<_> = match alone {
            true => mine.iter().map(one).collect(),
            false => mine.par_iter().with_max_len(1).map(one).collect(),
        };
        let written = all_or_first(made)?;
        for output in &outputs {
            if let Some(sharded) = &request.sharded {
                sharded.write(output, "", &[])?;
            }
        }
        outputs.into_iter().try_for_each(Output::commit)?;
        Ok(written)
    })
}

/// All editions; or what is wrong with the first set of which one cannot be laid out, or else the first error, in the
/// order of the editions, whichever thread came first.
fn all_or_first(made: Vec<Result<Written, Error>>) -> Result<Vec<Written>, Error> {
    let mut first = None;
    let mut written = Vec::new();
    for one in made {
        match (one, &mut first) {
            (Ok(one), _) => written.push(one),
            (Err(Error::Layout { set, diagnostics: more }), Some(Error::Layout { set: known, diagnostics }))
                if set == *known =>
            {
                diagnostics.extend(more);
            }
            (Err(error), None) => first = Some(error),
            (Err(_), Some(_)) => {}
        }
    }
    first.map_or(Ok(written), Err)
}

/// Two sets of one id would share a folder.
pub(super) fn refuse_same_set(sets: &[&SetSpec]) -> Result<(), Error> {
    let twice = (1..sets.len()).find(|&i| (0..i).any(|j| sets[i].id == sets[j].id));
    twice.map_or(Ok(()), |i| Err(Error::SameSet(sets[i].id.clone())))
}

/// The editions asked for, in the order of the set; all if none was.
pub(super) fn choose<'a>(set: &'a SetSpec, asked: &[String]) -> Result<Vec<&'a Edition>, Error> {
    let has = |id: &String| set.editions.iter().any(|e| e.id == *id);
    if let Some(unknown) = asked.iter().find(|id| !has(id)) {
        let known: Vec<_> = set.editions.iter().map(|e| e.id.clone()).collect();
        let nearest = nearest(unknown, known.iter().map(String::as_str)).map(str::to_owned);
        return Err(Error::UnknownEdition { set: set.id.clone(), asked: unknown.clone(), known, nearest });
    }
    Ok(set.editions.iter().filter(|e| asked.is_empty() || asked.contains(&e.id)).collect())
}

/// What the editions of one run share.
pub(super) struct Run<'a> {
    pub(super) request: &'a Request<'a>,
    watch: &'a (dyn Fn(Step) + Sync),
    scratches: Scratches,
}

/// One edition to make.
pub(super) struct Job<'a> {
    pub(super) book: &'a Book<'a>,
    pub(super) edition: &'a Edition,
    pub(super) inked: &'a Inked,
    /// The folder that takes the folder of the edition, below that of the set; empty or with `/` at its end.
    pub(super) below: &'a str,
    /// Whether no other edition is made meanwhile, so that its pages may take all threads.
    pub(super) alone: bool,
}

impl<'a> Run<'a> {
    pub(super) fn new(request: &'a Request<'a>, watch: &'a (dyn Fn(Step) + Sync)) -> Self {
        Self { request, watch, scratches: Scratches::default() }
    }

    pub(super) fn threads(&self) -> Result<rayon::ThreadPool, Error> {
        let threads = rayon::ThreadPoolBuilder::new().num_threads(self.request.jobs.get()).build();
        threads.map_err(|e| Error::Threads(e.to_string()))
    }

    pub(super) fn shard(&self) -> Option<Shard> {
        self.request.sharded.as_ref().map(|sharded| sharded.shard)
    }

    /// Whether this run makes the item of this number.
    pub(super) fn has(&self, item: usize) -> bool {
        self.shard().is_none_or(|shard| shard.has(item))
    }

    /// Lays out an edition of a set and makes its files.
    fn laid_out(
        &self,
        (set, book): (usize, &Book<'_>),
        edition: &Edition,
        alone: bool,
        output: &Output,
    ) -> Result<Written, Error> {
        let inked = Inked::of(edition);
        let laid = book.lay_out(edition, &inked).map_err(|diagnostics| Error::Layout { set, diagnostics })?;
        self.edition(&Job { book, edition, inked: &inked, below: "", alone }, &laid, output)
    }

    /// Makes every file of one edition and leaves them waiting in the output.
    pub(super) fn edition(&self, job: &Job<'_>, laid: &LaidOut, output: &Output) -> Result<Written, Error> {
        let extent = self.extent(job.book, job.edition, laid)?;
        let folder = format!("{}{}", job.below, job.edition.id);
        let stage = output.stage(&folder, extent.whole)?;
        self.made(job, laid, &extent, (&stage, &folder))
    }

    /// Makes every file of one edition and leaves them waiting in this folder.
    pub(super) fn edition_in(&self, job: &Job<'_>, laid: &LaidOut, stage: &Stage) -> Result<Written, Error> {
        let extent = self.extent(job.book, job.edition, laid)?;
        self.made(job, laid, &extent, (stage, &job.edition.id))
    }

    fn made(
        &self,
        job: &Job<'_>,
        laid: &LaidOut,
        extent: &Extent,
        (stage, folder): (&Stage, &str),
    ) -> Result<Written, Error> {
        let files = self.files(job, laid, extent, stage)?;
        Ok(Written {
            set: job.book.set.id.clone(),
            edition: job.edition.id.clone(),
            folder: self.request.out.join(&job.book.set.id).join(folder),
            book_pages: count(&laid.sheets),
            pages: within(&laid.sheets, &extent.pages).iter().map(|s| (s.number, s.id.clone())).collect(),
            whole: extent.whole,
            files,
        })
    }

    /// Makes every file of one edition; their names and sizes.
    fn files(
        &self,
        job: &Job<'_>,
        laid: &LaidOut,
        extent: &Extent,
        stage: &Stage,
    ) -> Result<Vec<(String, u64)>, Error> {
        let &Job { book, edition, inked, alone, .. } = job;
        let sheets = within(&laid.sheets, &extent.pages);
        let answers = extent.answers_files(&laid.answers, &book.set.id).len();
        (self.watch)(Step::Planned(planned(extent, sheets.len()) + answers as u64));
        let set = book.issue(edition).set;
        let pdf = || document(set, (edition, &inked.plan), Part::Book, (&laid.sheets, sheets));
        let pdf = || extent.formats.pdf.then(pdf).transpose();
        let page = |sheet| self.page(sheet, edition.ppi, [extent.svg(sheet), extent.png(sheet)], stage);
        // Pages differ much in cost, so each is a task of its own.
        let all_at_once = || sheets.par_iter().with_max_len(1).map(page).collect::<Result<Vec<_>, _>>();
        let (document, pages) =
            if alone { rayon::join(pdf, all_at_once) } else { (pdf(), sheets.iter().map(page).collect()) };
        let mut files = Vec::new();
        if let Some(bytes) = document? {
            files.push(self.write(stage, pdf_file(&book.set.id), &bytes)?);
        }
        files.extend(pages?.into_iter().flatten());
        files.extend(self.answers(set, edition, inked, (extent, &laid.answers), stage)?);
        let report = report(book, edition, inked, laid, extent).map_err(Error::Report)?;
        files.push(self.write(stage, REPORT.to_owned(), &report)?);
        Ok(files)
    }

    /// Makes the files of the answers, where they are a book of their own.
    fn answers(
        &self,
        set: &SetSpec,
        edition: &Edition,
        inked: &Inked,
        (extent, sheets): (&Extent, &[Sheet]),
        stage: &Stage,
    ) -> Result<Vec<(String, u64)>, Error> {
        let mut files = Vec::new();
        if let Some(name) = extent.answers_pdf(sheets, &set.id) {
            let bytes = document(set, (edition, &inked.plan), Part::Answers, (sheets, sheets))?;
            files.push(self.write(stage, name, &bytes)?);
        }
        for sheet in sheets {
            files.extend(self.page(sheet, edition.ppi, extent.answers_page(sheet, &set.id), stage)?);
        }
        Ok(files)
    }

    fn extent(&self, book: &Book<'_>, edition: &Edition, laid: &LaidOut) -> Result<Extent, Error> {
        let pages = count(&laid.sheets);
        let asked = self.request.pages.as_ref();
        Extent::new(edition, pages, self.request.formats, asked).ok_or_else(|| Error::PageRange {
            set: book.set.id.clone(),
            edition: edition.id.clone(),
            asked: asked.map_or((1, pages), |r| (*r.start(), *r.end())),
            pages,
        })
    }

    /// Makes a sheet as the SVG and the PNG file of these names.
    fn page(
        &self,
        sheet: &Sheet,
        ppi: Ppi,
        [svg_name, png_name]: [Option<String>; 2],
        stage: &Stage,
    ) -> Result<Vec<(String, u64)>, Error> {
        let mut files = Vec::new();
        if let Some(name) = svg_name {
            files.push(self.write(stage, name, svg(sheet).as_bytes())?);
        }
        if let Some(name) = png_name {
            let drawn = self.scratches.with(|scratch| png(sheet, ppi, scratch));
            let bytes = drawn.map_err(|source| Error::Png { page: sheet.id.clone(), source })?;
            files.push(self.write(stage, name, &bytes)?);
        }
        Ok(files)
    }

    fn write(&self, stage: &Stage, name: String, bytes: &[u8]) -> Result<(String, u64), Error> {
        stage.write(&name, bytes)?;
        (self.watch)(Step::Made);
        Ok((name, bytes.len() as u64))
    }
}

/// The sheets with these numbers; sheet `i` has number `i + 1`, and the range is within the book.
fn within<'a>(sheets: &'a [Sheet], pages: &RangeInclusive<u32>) -> &'a [Sheet] {
    sheets.get(*pages.start() as usize - 1..*pages.end() as usize).unwrap_or_default()
}

fn count(sheets: &[Sheet]) -> u32 {
    u32::try_from(sheets.len()).unwrap_or(u32::MAX)
}

/// How many files a run makes of the pages of an edition, the report among them.
fn planned(extent: &Extent, pages: usize) -> u64 {
    let a_page = u64::from(extent.formats.svg) + u64::from(extent.formats.png);
    1 + u64::from(extent.formats.pdf) + a_page * pages as u64
}

/// Drawing buffers, at most one a thread, used again from page to page and from edition to edition.
#[derive(Default)]
struct Scratches(Mutex<Vec<Scratch>>);

impl Scratches {
    fn with<T>(&self, draw: impl FnOnce(&mut Scratch) -> T) -> T {
        let mut scratch = self.free().pop().unwrap_or_default();
        let drawn = draw(&mut scratch);
        self.free().push(scratch);
        drawn
    }

    fn free(&self) -> std::sync::MutexGuard<'_, Vec<Scratch>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
