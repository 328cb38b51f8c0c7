//! A set from disk: `set.toml` and the exercise files it lists, read once, with every problem of every file.
//!
//! Whatever is wrong with an author's files is a diagnostic. Only a set that is not there at all is an I/O error.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::fs::File;
use std::io::{self, Read as _};
use std::path::{Path, PathBuf};

use crate::diagnostics::{Diagnostic, Diagnostics, FileId, Place, Sources, codes};
use crate::exercise::{Exercise, parts_of_series, read_exercise};
use crate::layout::parts::{is_own, page_of_words};
use crate::spec::SetSpec;
use crate::spec::data::{Data, DataRef, apply, contradictions, measured, read_data};
use crate::spec::publish::unknown_previews;
use crate::spec::read::Placed;
use crate::spec::reader::{Plan, Reader, SeriesPart};
use crate::spec::readers::{MOST_BYTES as MOST_READER_BYTES, ReaderSpec, ReadersRead};
use crate::spec::set::{SetRead, read_set};
use crate::spec::text::shown;
use crate::spec::translation::Translation;

use super::orphans::{self, Found};
use super::pictures::{Folder, inside};
use super::translate::{Listed, Translated, Work, orphan, unset, wanted};

/// The largest spec file that is read, in bytes (1 MiB). Design choice: a hundred times the largest exercise we know.
pub const MOST_BYTES: u64 = 1 << 20;

/// A set as read, with everything that is wrong with it.
#[derive(Debug)]
pub struct Loaded {
    /// `set.toml`, if all of it could be read.
    pub set: Option<SetSpec>,
    /// The exercises that could be read, in the order of the book.
    pub exercises: Vec<Exercise>,
    /// The same set in the other languages of its editions and readers.
    pub translated: Vec<Translated>,
    /// The readers that could be read: tables first, then rows.
    pub readers: Vec<ReaderSpec>,
    /// The texts of all files, to show problems with.
    pub sources: Sources,
    /// The folder of `set.toml`; empty for the working folder.
    pub home: PathBuf,
    /// The pictures that its exercises name, by their paths from there.
    pub pictures: BTreeSet<String>,
    /// The problems of all files. Without an error, `set` is there and no exercise is missing.
    pub diagnostics: Diagnostics,
}

/// The set itself is not there or cannot be reached.
#[derive(Debug)]
pub struct LoadError {
    /// The path that was tried.
    pub path: PathBuf,
    /// Why it failed.
    pub source: io::Error,
}

impl fmt::Display for LoadError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "cannot read the set `{}`: {}", self.path.display(), self.source)
    }
}

impl std::error::Error for LoadError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        Some(&self.source)
    }
}

/// Reads a set. `path` is its folder, or its `set.toml`.
pub fn load(path: &Path) -> Result<Loaded, LoadError> {
    let failed = |path: &Path| {
        let path = path.to_owned();
        move |source| LoadError { path, source }
    };
    let folder = path.metadata().map_err(failed(path))?.is_dir();
    let file = if folder { path.join("set.toml") } else { path.to_owned() };
    file.metadata().map_err(failed(&file))?;
    let home = file.parent().map(Path::to_owned).unwrap_or_default();
    let pictures = Folder::new(&home);
    let mut loading = Loading { home, pictures, sources: Sources::default(), diagnostics: Diagnostics::new() };
    let Some(own) = loading.read_file(&file, None, (MOST_BYTES, false)).map_err(failed(&file))? else {
        return Ok(loading.into_loaded(None));
    };
    let SetRead { mut set, exercises, series, gated, mut readers, translations, data } = loading.parse(own, read_set);
    loading.read_data(&mut set, &mut readers.list, &data);
    loading.read_readers(&mut readers);
    let paths: Vec<String> = exercises.iter().map(|entry| entry.value.clone()).collect();
    let (listed, series) = loading.find_exercises(exercises, series);
    let exercises = loading.read_exercises(&listed);
    let translated = loading.read_translations((own, set.as_ref()), &readers.list, &translations, &listed);
    if !gated {
        loading.diagnostics.extend(exercises.iter().filter_map(ungated));
        loading.diagnostics.extend_new(set.iter().flat_map(nothing_gated));
    }
    loading.check_previews(set.as_ref(), &exercises);
    if !loading.diagnostics.has_errors() {
        let words = translations.iter().map(|translation| &translation.file.value);
        let found = Found::below(&loading.home, paths.iter().chain(&loading.pictures.paths()).chain(words));
        loading.diagnostics.extend(orphans::check(&found, &series));
    }
    let loaded = loading.into_loaded(set);
    Ok(Loaded { exercises, translated, readers: readers.list, ..loaded })
}

/// What is known while a set is read.
struct Loading {
    /// The folder of `set.toml`; empty for the working folder.
    home: PathBuf,
    /// The pictures that exercises may name.
    pictures: Folder,
    sources: Sources,
    diagnostics: Diagnostics,
}

/// What keeps a listed file from being used.
type Refusal = (String, &'static str);

impl Loading {
    /// What was read of the files, without what they list.
    fn into_loaded(self, set: Option<SetSpec>) -> Loaded {
        let Self { home, pictures, sources, diagnostics } = self;
        let (exercises, translated, readers, pictures) = (Vec::new(), Vec::new(), Vec::new(), pictures.paths());
        Loaded { set, exercises, translated, readers, sources, home, pictures, diagnostics }
    }

    fn parse<T>(&mut self, file: FileId, read: impl FnOnce(&mut Reader<'_>) -> T) -> T {
        let mut reader = Reader::new(&self.sources, file, &mut self.diagnostics).with_pictures(&self.pictures);
        let value = read(&mut reader);
        let unset = unset(reader.texts());
        self.diagnostics.extend_new(unset);
        value
    }

    /// Reads the file of readers, if the set names one.
    fn read_readers(&mut self, readers: &mut ReadersRead) {
        let Some(listed) = readers.file.clone() else { return };
        let Some(file) = self.read_listed(&listed, NAMED, MOST_READER_BYTES) else { return };
        self.parse(file, |reader| readers.rows(reader));
    }

    /// Reads the files of numbers that the set names, each once, and puts them into its editions and the glasses of its
    /// readers. A set that names a file that cannot be used is none.
    fn read_data(&mut self, set: &mut Option<SetSpec>, readers: &mut [ReaderSpec], wanted: &[DataRef]) {
        let mut known: BTreeMap<(&str, &str), Option<Data>> = BTreeMap::new();
        for one in wanted {
            let key = (one.path.value.as_str(), one.word());
            let read = known.entry(key).or_insert_with(|| {
                let file = self.read_listed(&one.path, NAMED, MOST_BYTES);
                file.and_then(|file| self.parse(file, |reader| read_data(reader, one.kind)))
            });
            let read = read.as_ref();
            let problems = read.and_then(|data| Some(fit(set.as_mut()?, readers, one, data))).unwrap_or_default();
            if read.is_none() || !problems.is_empty() {
                *set = None;
            }
            self.diagnostics.extend(problems);
        }
    }

    /// Reads the listed files in their order, each to be understood later; one that cannot be read leaves its problem. The
    /// series come back with their levels counted.
    fn find_exercises(
        &mut self,
        listed: Vec<Placed<String>>,
        series: BTreeMap<String, SeriesPart>,
    ) -> (Vec<Listed>, BTreeMap<String, SeriesPart>) {
        let mut stems = BTreeMap::new();
        let mut files = Vec::new();
        for entry in listed {
            let name = entry.value.rsplit('/').next().unwrap_or("");
            let stem = name.strip_suffix(".toml").unwrap_or(name).to_owned();
            if self.is_repeated(&entry, &stem, &mut stems) {
                continue;
            }
            let Some(file) = self.read_listed(&entry, LISTED, MOST_BYTES) else { continue };
            files.push(Listed { file, stem, place: entry.place, plan: Plan::default() });
        }
        let mut plan = Plan { series, ..Plan::default() };
        self.count_series(&files, &mut plan);
        for listed in &mut files {
            listed.plan = plan.clone();
            self.go_on(listed.file, &mut plan);
        }
        (files, plan.series)
    }

    /// The exercises of these files; each broken one leaves its problems and no exercise.
    fn read_exercises(&mut self, files: &[Listed]) -> Vec<Exercise> {
        let mut exercises = Vec::new();
        for listed in files {
            let read = self.parse(listed.file, |reader| {
                reader.plan = listed.plan.clone();
                read_exercise(reader, &listed.stem)
            });
            exercises.extend(read.map(|exercise| (exercise, listed.place)));
        }
        self.check_page_ids(&exercises);
        exercises.into_iter().map(|(exercise, _)| exercise).collect()
    }

    /// The set in the other languages that its editions and readers ask for. A translation that none of them asks for is
    /// read for its problems.
    fn read_translations(
        &mut self,
        (own, set): (FileId, Option<&SetSpec>),
        readers: &[ReaderSpec],
        translations: &[Translation],
        listed: &[Listed],
    ) -> Vec<Translated> {
        let wanted = set.map(|set| wanted(set, readers)).unwrap_or_default();
        let mut languages: BTreeMap<_, _> =
            wanted.iter().map(|(tag, (language, _))| (*tag, (*language, None))).collect();
        for translation in translations {
            let language = translation.language;
            if set.is_some() && !wanted.contains_key(language.tag()) {
                self.diagnostics.push(orphan(translation));
            }
            let path = translation.file.value.as_str();
            let file = self.read_listed(&translation.file, NAMED_WORDS, MOST_BYTES);
            if file.is_some() || matches!(self.home.join(path).try_exists(), Ok(false)) {
                languages.insert(language.tag(), (language, Some((file, path))));
            } else {
                // Its problem is told, and not all the texts that are in it.
                languages.remove(language.tag());
            }
        }
        let Self { sources, pictures, diagnostics, .. } = self;
        let work = Work { sources, pictures, set: own, exercises: listed };
        let read = languages.into_iter().map(|(tag, (language, words))| {
            work.read(language, words, wanted.get(tag).map(|(_, place)| *place), diagnostics)
        });
        read.collect::<Vec<_>>().into_iter().filter(|told| wanted.contains_key(told.language.tag())).collect()
    }

    /// Counts the levels of each series over all files.
    fn count_series(&mut self, files: &[Listed], plan: &mut Plan) {
        for listed in files {
            for (series, levels) in self.parts(listed.file, plan) {
                if let Some(part) = plan.series.get_mut(&series) {
                    part.of += levels;
                }
            }
        }
    }

    /// Moves every series past the levels that a file has taken.
    fn go_on(&mut self, file: FileId, plan: &mut Plan) {
        for (series, levels) in self.parts(file, plan) {
            if let Some(part) = plan.series.get_mut(&series) {
                part.first += levels;
            }
        }
    }

    /// The levels of each series that a file takes.
    fn parts(&self, file: FileId, plan: &Plan) -> Vec<(String, u32)> {
        if plan.series.is_empty() {
            return Vec::new();
        }
        let mut untold = Diagnostics::new();
        let mut reader = Reader::new(&self.sources, file, &mut untold);
        reader.plan = plan.clone();
        parts_of_series(&mut reader)
    }

    /// Pushes a file listed twice, or a second file with the same stem: stems are the ids of exercises.
    fn is_repeated(
        &mut self,
        entry: &Placed<String>,
        stem: &str,
        stems: &mut BTreeMap<String, Placed<String>>,
    ) -> bool {
        let Some(first) = stems.get(stem) else {
            stems.insert(stem.to_owned(), entry.clone());
            return false;
        };
        let line = self.sources.line(first.place).map_or(0, |l| l.number);
        let (message, help) = if first.value == entry.value {
            (format!("`{}` is listed twice, first on line {line}", entry.value), "list each exercise once")
        } else {
            let message = format!("`{}` and `{}` on line {line} have the same stem `{stem}`", entry.value, first.value);
            (message, "the stem is the id of an exercise: rename one of the files")
        };
        let problem = Diagnostic::error(codes::DUPLICATE, entry.place, message).with_label("again").with_help(help);
        self.diagnostics.push(problem);
        true
    }

    /// Reads a listed file, or pushes why it cannot be used, at the place where it is listed.
    fn read_listed(&mut self, entry: &Placed<String>, else_do: &WaysOut, most: u64) -> Option<FileId> {
        let path = self.home.join(&entry.value);
        let refusal = match inside(&self.home, &path) {
            Ok(true) => match self.read_file(&path, Some(entry.place), (most, else_do.blank)) {
                Ok(file) => return file,
                Err(problem) => refuse_io(&entry.value, &problem, else_do),
            },
            Ok(false) => (
                format!("`{}` is a link that leads out of the folder of the set", shown(&entry.value)),
                "copy the file into the folder",
            ),
            Err(problem) => refuse_io(&entry.value, &problem, else_do),
        };
        self.refuse(Some(entry.place), refusal);
        None
    }

    fn refuse(&mut self, place: Option<Place>, (message, help): Refusal) {
        let label = if place.is_some() { "listed here" } else { "" };
        self.diagnostics.push(Diagnostic::error(codes::FILE, place, message).with_label(label).with_help(help));
    }

    /// Reads a file of at most so many bytes into the sources, `blank` or not. `Ok(None)`: it is there but cannot be used,
    /// and its problem has been pushed at `place`.
    fn read_file(
        &mut self,
        path: &Path,
        place: Option<Place>,
        (most, blank): (u64, bool),
    ) -> io::Result<Option<FileId>> {
        let name = path.display().to_string();
        let meta = path.metadata()?;
        let refusal = if meta.is_dir() {
            Some((format!("`{name}` is a folder, not a file"), "list the exercise files in it one by one"))
        } else if !meta.is_file() {
            Some((format!("`{name}` is not a plain file"), "put a plain text file there"))
        } else if most < meta.len() {
            Some((
                format!("`{name}` has {} bytes, above the limit of {most} bytes", meta.len()),
                "a spec file is a short text; split it, or check that it is the right file",
            ))
        } else {
            None
        };
        if let Some(refusal) = refusal {
            self.refuse(place, refusal);
            return Ok(None);
        }
        let mut bytes = Vec::new();
        // The file may grow after its size was asked for.
        File::open(path)?.take(most).read_to_end(&mut bytes)?;
        Ok(self.keep(name, bytes, blank))
    }

    /// Keeps the text of a file, if it is text; `may_be_blank` takes one without any.
    fn keep(&mut self, name: String, bytes: Vec<u8>, may_be_blank: bool) -> Option<FileId> {
        let text = match String::from_utf8(bytes) {
            Ok(text) => text,
            Err(problem) => {
                self.push_not_utf8(name, &problem);
                return None;
            }
        };
        let blank = text.trim_start_matches('\u{feff}').trim().is_empty();
        let file = self.sources.add(name, text);
        if blank && !may_be_blank {
            let message = format!("`{}` is empty", self.sources.path(file));
            let problem = Diagnostic::error(codes::FILE, Place::start_of(file), message)
                .with_help("see the spec reference for an example of each file");
            self.diagnostics.push(problem);
            return None;
        }
        Some(file)
    }

    fn push_not_utf8(&mut self, name: String, problem: &std::string::FromUtf8Error) {
        let offset = problem.utf8_error().valid_up_to();
        let byte = problem.as_bytes().get(offset).copied().unwrap_or(0);
        let message = format!("`{name}` is not UTF-8: byte {offset} is 0x{byte:02x}");
        let file = self.sources.add(name, String::from_utf8_lossy(problem.as_bytes()));
        let start = u32::try_from(offset).unwrap_or(u32::MAX);
        let width = u32::try_from(char::REPLACEMENT_CHARACTER.len_utf8()).unwrap_or(0);
        let problem = Diagnostic::error(codes::FILE, Place { file, start, end: start + width }, message)
            .with_label("not text from here")
            .with_help("save the file as UTF-8");
        self.diagnostics.push(problem);
    }

    /// The book has pages of its own, such as `cover`, and the words of a page `rope` may stand on `rope-words`. Pages are named by exercise, level and variant, so `rope` with
    /// two levels and an exercise `rope-2` would both make a page `rope-2`.
    fn check_page_ids(&mut self, exercises: &[(Exercise, Place)]) {
        for (exercise, place) in exercises.iter().filter(|(e, _)| is_own(&e.id)) {
            let message = format!("`{}` is the name of a page that every book has", exercise.id);
            let problem = Diagnostic::error(codes::DUPLICATE, *place, message)
                .with_label("the same name")
                .with_help("rename the file");
            self.diagnostics.push(problem);
        }
        let by_id: BTreeMap<&str, Place> = exercises.iter().map(|(e, place)| (e.id.as_str(), *place)).collect();
        for (exercise, _) in exercises {
            for (page, number) in exercise.page_ids().filter(|page| *page != exercise.id).zip(1..) {
                let Some(place) = by_id.get(page.as_str()) else { continue };
                let message = format!("`{page}` is also the name of page {number} of `{}`", exercise.id);
                let problem = Diagnostic::error(codes::DUPLICATE, *place, message)
                    .with_label("the same name")
                    .with_help("rename one of the files");
                self.diagnostics.push(problem);
            }
        }
        let pages: BTreeSet<String> = exercises.iter().flat_map(|(e, _)| e.page_ids()).collect();
        for (exercise, place) in exercises {
            let clash = exercise.page_ids().find(|page| page_of_words(page).is_some_and(|of| pages.contains(of)));
            let Some((page, of)) = clash.as_ref().and_then(|page| Some((page, page_of_words(page)?))) else { continue };
            let message = format!("`{page}` is also the name of the sheet of words of page `{of}`");
            let problem = Diagnostic::error(codes::DUPLICATE, *place, message)
                .with_label("the same name")
                .with_help("rename one of the files");
            self.diagnostics.push(problem);
        }
    }

    /// Pages that `[publish]` names must be there; what is not known because a file is broken is not told twice.
    fn check_previews(&mut self, set: Option<&SetSpec>, exercises: &[Exercise]) {
        let Some(set) = set.filter(|_| !self.diagnostics.has_errors()) else { return };
        let pages: Vec<String> = exercises.iter().flat_map(Exercise::page_ids).collect();
        self.diagnostics.extend(unknown_previews(&set.publish, &pages));
    }
}

/// What to do where a named file is not there or cannot be read, and whether it may be blank.
struct WaysOut {
    missing: &'static str,
    unreadable: &'static str,
    blank: bool,
}

/// Of a listed exercise.
const LISTED: &WaysOut = &WaysOut {
    missing: "write the file, or take it out of the list",
    unreadable: "make the file readable, or take it out of the list",
    blank: false,
};
/// Of a file of translations: a blank one is a start, and what it lacks is told.
const NAMED_WORDS: &WaysOut = &WaysOut {
    missing: "write the file, or leave the translation out",
    unreadable: "make the file readable, or leave the translation out",
    blank: true,
};
/// Of a file of numbers.
const NAMED: &WaysOut = &WaysOut {
    missing: "write the file, or leave the key out",
    unreadable: "make the file readable, or leave the key out",
    blank: false,
};

fn refuse_io(listed: &str, problem: &io::Error, else_do: &WaysOut) -> Refusal {
    if problem.kind() == io::ErrorKind::NotFound {
        (format!("there is no file `{}`", shown(listed)), else_do.missing)
    } else {
        (format!("cannot read `{}`: {problem}", shown(listed)), else_do.unreadable)
    }
}

/// The problem of an exercise that needs a `[gate]`, in a set without one.
fn ungated(exercise: &Exercise) -> Option<Diagnostic> {
    let gated_kind = exercise.kind().filter(|kind| kind.gated);
    let (place, message, leave_out) = match (&exercise.balance, gated_kind) {
        (Some(balance), _) => {
            let message =
                "`balance` needs a `[gate]`: whether one eye gets less is for an eye-care professional to decide";
            (balance.place, message.to_owned(), "`balance`")
        }
        (None, Some(kind)) => {
            let message = format!("a `{}` needs a `[gate]`: it is for an eye-care professional to set", kind.id);
            (exercise.place, message, "the exercise")
        }
        (None, None) => return None,
    };
    let help = format!(
        "leave {leave_out} out, or, if a professional decided it, name them in `set.toml`: `[gate]` with `set_by`"
    );
    Some(Diagnostic::error(codes::GATE, place, message).with_label("`set.toml` has no `[gate]`").with_help(help))
}

/// The warnings of editions that leave gated pages out of a set without a `[gate]`, one for each table that asks for them.
fn nothing_gated(set: &SetSpec) -> Vec<Diagnostic> {
    let mut places: Vec<Place> = set.editions.iter().filter(|e| !e.gated).map(|edition| edition.place).collect();
    places.dedup();
    let warning = |place| {
        Diagnostic::warning(
            codes::NOT_GATED,
            place,
            "`gated` has nothing to leave out: a set without a `[gate]` has no gated pages",
        )
        .with_label("asks for an edition without them")
        .with_help("leave `gated` out")
    };
    places.into_iter().map(warning).collect()
}

/// Puts numbers into the editions and the glasses that use them; the problems, where they do not fit.
fn fit(set: &mut SetSpec, readers: &mut [ReaderSpec], wanted: &DataRef, data: &Data) -> Vec<Diagnostic> {
    let mut problems = contradictions(wanted, data);
    let glasses = wanted.reader.and_then(|index| readers.get_mut(index)?.glasses.as_mut());
    if let (Some(glasses), Data::Filters(spectra)) = (glasses, data) {
        *glasses = measured(glasses, spectra);
    }
    problems.extend(apply(set, wanted, data).err().into_iter().flatten());
    problems
}
