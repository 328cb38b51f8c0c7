//! A set as a product: one folder with every edition, previews, words about it, its own files, digests and zips.
//!
//! The editions are made as `render` makes them ([`run`](super::run)); what is added here says what they are. Everything waits
//! in one folder and is put in place as one: an earlier bundle is replaced as a whole or not at all. Files are read back in
//! pieces to be hashed and packed, so that memory does not grow with their number.

mod about;
pub mod manifest;
mod pack;
mod picture;
pub mod preview;
mod prose;

use std::collections::BTreeMap;
use std::num::NonZeroUsize;
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use crate::language::{Language, Tongue};
use crate::spec::{Edition, SetSpec};

use super::error::Error;
use super::extent::REPORT;
use super::inked::Inked;
use super::prepare::{Book, Prepared};
use super::reading_report::measured;
use super::run::{Job, Request, Run, Step, Written, choose, refuse_same_set};
use super::write::{self, Output, Stage};
use manifest::{Change, Digests, MANIFEST, changes, committed, digest, text};
use preview::{CONTACT_SHEET, Preview};
use prose::With;

/// The folder of the editions, below that of the bundle.
pub const EDITIONS: &str = "editions";
/// The folder of the set's own files, below that of the bundle.
pub const SPEC: &str = "spec";
const LICENCE: &str = "LICENSE";
const CHANGELOG: &str = "CHANGELOG.md";

/// What to bundle, and where to.
#[derive(Debug)]
pub struct Order<'a> {
    /// The folder for the folders of the bundles.
    pub out: &'a Path,
    /// Ids of the editions; none: all of each set.
    pub editions: &'a [String],
    /// How many threads.
    pub jobs: NonZeroUsize,
    /// What becomes of them.
    pub then: Then,
}

/// What becomes of bundles when they are made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Then {
    /// They are put in place.
    Keep,
    /// The same, and the manifest of each is written beside its `set.toml`.
    Freeze,
    /// They are compared with the manifests beside `set.toml` and thrown away.
    Compare,
}

/// A bundle as made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Bundled {
    /// Id of the set.
    pub set: String,
    /// Its version.
    pub version: String,
    /// Its folder.
    pub folder: PathBuf,
    /// The ids of its editions.
    pub editions: Vec<String>,
    /// Whether these are all editions of the set.
    pub whole: bool,
    /// Every file but the manifest, by its name below the folder, with its size in bytes and its digest: sorted by name.
    pub files: Vec<(String, u64, String)>,
    /// The manifest beside `set.toml`.
    pub committed: PathBuf,
    /// What is not as there; empty where nothing is compared.
    pub changes: Vec<Change>,
}

/// The names of a bundle: `ID-VERSION`, and with an edition `ID-VERSION-EDITION`. A bundle of some editions alone is called
/// `ID-VERSION-only-EDITION_EDITION`, so that it never takes the place of the whole one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Names {
    issue: String,
    folder: String,
}

impl Names {
    /// Those of a set, with these of its editions.
    pub fn of(set: &SetSpec, editions: &[&Edition]) -> Self {
        let issue = format!("{}-{}", set.id, set.version);
        // Ids hold no `_`, so that no two choices have the same name.
        let ids = || editions.iter().map(|edition| edition.id.as_str()).collect::<Vec<_>>().join("_");
        let folder = if is_whole(set, editions) { issue.clone() } else { format!("{issue}-only-{}", ids()) };
        Self { issue, folder }
    }

    /// The folder of the bundle.
    pub fn folder(&self) -> &str {
        &self.folder
    }

    /// The zip of an edition, or of all in the bundle.
    pub fn zip(&self, edition: Option<&str>) -> String {
        edition.map_or_else(|| format!("{}.zip", self.folder), |edition| format!("{}-{edition}.zip", self.issue))
    }
}

/// Whether these are all editions of a set.
fn is_whole(set: &SetSpec, editions: &[&Edition]) -> bool {
    editions.len() == set.editions.len()
}

/// `README.txt`, or `README-de.txt` for a language that is not that of the set.
fn readme_of(set: &SetSpec, language: Language) -> String {
    if language == set.language { "README.txt".to_owned() } else { format!("README-{}.txt", language.tag()) }
}

/// A set to bundle.
#[derive(Debug, Clone, Copy)]
pub struct Source<'a> {
    /// Its book.
    pub book: Book<'a>,
    /// Its files.
    pub read: &'a Prepared,
}

/// Makes bundles, and puts all of them in place or none. With [`Then::Compare`] nothing is left. A set with readers is refused:
/// its files would be in the bundle, and what is known of readers is for nobody else.
pub fn bundle(sources: &[Source<'_>], order: &Order<'_>, watch: &(dyn Fn(Step) + Sync)) -> Result<Vec<Bundled>, Error> {
    refuse_same_set(&sources.iter().map(|source| source.book.set).collect::<Vec<_>>())?;
    if let Some(source) = sources.iter().find(|source| !source.read.readers.is_empty()) {
        return Err(Error::OfReaders { set: source.book.set.id.clone(), readers: source.read.readers.len() });
    }
    let manifests: Vec<PathBuf> = sources.iter().map(|source| source.read.home.join(MANIFEST)).collect();
    // A missing manifest is told before anything is made.
    let wanted = match order.then {
        Then::Compare => manifests.iter().map(|path| committed(path).map(Some)).collect::<Result<Vec<_>, _>>()?,
        Then::Keep | Then::Freeze => vec![None; sources.len()],
    };
    let request = Request {
        out: order.out,
        editions: order.editions,
        formats: None,
        pages: None,
        jobs: order.jobs,
        sharded: None,
    };
    let run = Run::new(&request, watch);
    let output = Output::of_bundles(order.out)?;
    let mut made = Vec::new();
    run.threads()?.install(|| -> Result<(), Error> {
        for (index, (source, manifest)) in sources.iter().zip(&manifests).enumerate() {
            let set = source.book.set;
            let names = Names::of(set, &choose(set, order.editions)?);
            let stage = output.stage(names.folder(), true)?;
            let maker = Maker { index, source, run: &run, watch, stage: &stage, names };
            made.push(Bundled { committed: manifest.clone(), ..maker.make()? });
        }
        Ok(())
    })?;
    for (bundled, wanted) in made.iter_mut().zip(&wanted) {
        bundled.changes = wanted.as_ref().map(|wanted| changes(wanted, &bundled.digests())).unwrap_or_default();
    }
    if order.then != Then::Compare {
        output.commit()?;
    }
    if order.then == Then::Freeze {
        made.iter().try_for_each(|made| write::put(&made.committed, text(&made.digests()).as_bytes()))?;
    }
    Ok(made)
}

impl Bundled {
    /// The digests of its files, by name.
    pub fn digests(&self) -> Digests {
        self.files.iter().map(|(name, _, digest)| (name.clone(), digest.clone())).collect()
    }
}

/// Makes one bundle.
struct Maker<'a> {
    /// Of the set, for errors.
    index: usize,
    source: &'a Source<'a>,
    run: &'a Run<'a>,
    watch: &'a (dyn Fn(Step) + Sync),
    stage: &'a Stage,
    names: Names,
}

impl Maker<'_> {
    fn make(&self) -> Result<Bundled, Error> {
        let set = self.source.book.set;
        let editions = choose(set, self.run.request.editions)?;
        (self.watch)(Step::Planned(editions.len() as u64 + 1));
        let mut written = Vec::new();
        let mut previews = None;
        let shown = self.previewed();
        for &edition in &editions {
            let (made, seen) = self.edition(edition, shown == Some(edition))?;
            written.push(made);
            previews = previews.or(seen);
        }
        let previews = match (previews, shown) {
            (Some(previews), _) => previews,
            (None, Some(edition)) => self.previews(edition)?,
            (None, None) => Vec::new(),
        };
        let of_all = self.words(&editions, &written, &previews)?;
        let files = self.pack(&editions, &written, of_all)?;
        let digests = files.iter().map(|(name, _, digest)| (name.clone(), digest.clone())).collect();
        self.stage.write(MANIFEST, text(&digests).as_bytes())?;
        Ok(Bundled {
            set: set.id.clone(),
            version: set.version.clone(),
            folder: self.run.request.out.join(self.names.folder()),
            editions: editions.iter().map(|edition| edition.id.clone()).collect(),
            whole: is_whole(set, &editions),
            files,
            committed: PathBuf::new(),
            changes: Vec::new(),
        })
    }

    /// The edition whose pages are previewed.
    fn previewed(&self) -> Option<&Edition> {
        let set = self.source.book.set;
        let asked = set.publish.edition.as_ref();
        let asked = asked.and_then(|asked| set.editions.iter().find(|edition| edition.id == asked.value));
        asked.or(set.editions.first())
    }

    /// Makes an edition, and the previews from it where it is the one.
    fn edition(&self, edition: &Edition, is_shown: bool) -> Result<(Written, Option<Vec<Preview>>), Error> {
        let book = &self.source.book;
        let inked = Inked::of(edition);
        let laid = book.lay_out(edition, &inked);
        let laid = laid.map_err(|diagnostics| Error::Layout { set: self.index, diagnostics })?;
        let job = Job { book, edition, inked: &inked, below: "", alone: true };
        let folder = self.stage.below(&format!("{EDITIONS}/{}", edition.id));
        let preview = || preview::write(self.index, &book.issue(edition), (edition, &laid), self.stage);
        let (made, seen) =
            rayon::join(|| self.run.edition_in(&job, &laid, &folder), || is_shown.then(preview).transpose());
        Ok((made?, seen?))
    }

    /// The previews from an edition that is not in the bundle.
    fn previews(&self, edition: &Edition) -> Result<Vec<Preview>, Error> {
        let laid = self.source.book.lay_out(edition, &Inked::of(edition));
        let laid = laid.map_err(|diagnostics| Error::Layout { set: self.index, diagnostics })?;
        preview::write(self.index, &self.source.book.issue(edition), (edition, &laid), self.stage)
    }

    /// Writes what is said about the editions, and the files of the set; gives the names of all files outside the editions.
    fn words(&self, editions: &[&Edition], written: &[Written], previews: &[Preview]) -> Result<Vec<String>, Error> {
        let set = self.source.book.set;
        let mut texts = vec![(LICENCE.to_owned(), prose::licence(set)), (CHANGELOG.to_owned(), prose::changelog(set))];
        texts.extend(self.readmes(editions));
        let mut names: Vec<String> = previews.iter().map(|preview| preview.file.clone()).collect();
        names.push(CONTACT_SHEET.to_owned());
        for (name, text) in texts {
            self.stage.write(&name, text.as_bytes())?;
            names.push(name);
        }
        let spec = self.spec()?;
        let pairs: Vec<_> = editions.iter().copied().zip(written).collect();
        self.stage.write(REPORT, &about::report(set, &pairs, previews, &spec, &self.names)?)?;
        names.push(REPORT.to_owned());
        names.extend(spec);
        Ok(names)
    }

    /// A README in the language of the set, and one in each other language of the editions; by their names.
    fn readmes(&self, editions: &[&Edition]) -> BTreeMap<String, String> {
        let book = &self.source.book;
        let own = (book.set, book.set.language, book.pages.iter().collect());
        let issues = editions.iter().map(|edition| {
            let issue = book.issue(edition);
            (issue.set, edition.language, issue.pages)
        });
        let mut readmes = BTreeMap::new();
        for (told, language, pages) in [own].into_iter().chain(issues) {
            readmes.entry(readme_of(book.set, language)).or_insert_with(|| {
                let reading = measured(language, pages.iter().map(|page| &page.page.words));
                prose::readme(told, Tongue::of(language), (editions, With::Bundle(&self.names)), reading.as_ref())
            });
        }
        readmes
    }

    /// The README of an edition alone, for its zip.
    fn own_readme(&self, edition: &Edition, written: &Written) -> String {
        let (issue, language) = (self.source.book.issue(edition), edition.language);
        let reading = measured(language, issue.pages.iter().map(|page| &page.page.words));
        prose::readme(issue.set, Tongue::of(language), (&[edition], With::Zip(written)), reading.as_ref())
    }

    /// Copies every file that the set was read from, as it was read.
    fn spec(&self) -> Result<Vec<String>, Error> {
        let Prepared { home, sources, pictures, .. } = self.source.read;
        let mut names = Vec::new();
        for (path, text) in sources.files() {
            let below = Path::new(path).strip_prefix(home).unwrap_or(Path::new(path));
            let name = format!("{SPEC}/{}", below.display().to_string().replace('\\', "/"));
            self.stage.write(&name, text.as_bytes())?;
            names.push(name);
        }
        for picture in pictures {
            let name = format!("{SPEC}/{picture}");
            self.stage.copy(&name, &home.join(picture))?;
            names.push(name);
        }
        names.sort();
        names.dedup();
        Ok(names)
    }

    /// Hashes all files, packs the zips and hashes them: every file with its size and its digest, sorted by name.
    fn pack(
        &self,
        editions: &[&Edition],
        written: &[Written],
        of_all: Vec<String>,
    ) -> Result<Vec<(String, u64, String)>, Error> {
        let below = |edition: &Edition, name: &str| format!("{EDITIONS}/{}/{name}", edition.id);
        let of_editions = editions.iter().zip(written).flat_map(|(edition, written)| {
            written.files.iter().map(|(name, _)| below(edition, name)).collect::<Vec<_>>()
        });
        let mut files = self.hashed(of_all.into_iter().chain(of_editions).collect())?;
        let digests: Digests = files.iter().map(|(name, _, digest)| (name.clone(), digest.clone())).collect();
        let mut zips = vec![(self.names.zip(None), digests.clone(), BTreeMap::new())];
        for (edition, written) in editions.iter().zip(written) {
            let own = below(edition, "");
            let is_in = |name: &str| name.starts_with(&own) || [LICENCE, CHANGELOG].contains(&name);
            let of_one = digests.iter().filter(|(name, _)| is_in(name));
            let of_one = of_one.map(|(name, digest)| (name.clone(), digest.clone())).collect();
            let readme = readme_of(self.source.book.set, edition.language);
            let texts = BTreeMap::from([(readme, self.own_readme(edition, written))]);
            zips.push((self.names.zip(Some(&edition.id)), of_one, texts));
        }
        zips.par_iter().with_max_len(1).try_for_each(|(name, files, texts)| {
            pack::pack(self.stage, name, files, texts)?;
            (self.watch)(Step::Made);
            Ok(())
        })?;
        files.extend(self.hashed(zips.into_iter().map(|(name, ..)| name).collect())?);
        files.sort();
        Ok(files)
    }

    /// Files that wait, each with its size and its digest.
    fn hashed(&self, names: Vec<String>) -> Result<Vec<(String, u64, String)>, Error> {
        let one = |name: String| digest(self.stage, &name).map(|(bytes, digest)| (name, bytes, digest));
        names.into_par_iter().map(one).collect()
    }
}
