//! The only code that writes files.
//!
//! A run writes everything of a set into `<out>/<set id>/.staging` and puts it in place at the end, when nothing can
//! fail any more but a rename. So there is never half a file under its final name, and an earlier output survives an
//! error, a full disk and a kill at any moment:
//!
//! - A whole edition is swapped in: the old folder moves to `.previous`, the new one takes its name, the old one is
//!   removed. A kill between the two renames leaves the old folder in `.previous`; the next run moves it back first.
//! - A part of an edition is moved in file by file, the report last.
//!
//! A bundle is the same with `<out>` in place of the folder of a set, and its own folder in place of an edition's.
//!
//! Editions of readers are the same, a few folders deeper. Ids hold no `+`, so it stands for `/` in the names of what
//! waits.
//!
//! One run at a time writes to the folder of a set; shards of a run may write at the same time, each with folders of its
//! own for what waits. Nothing is synced to the disk: a power cut may still lose what was
//! written last.
#![expect(clippy::disallowed_methods, reason = "this is the room that writes")]

use std::collections::BTreeSet;
use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use super::error::Error;
use super::extent::{INKS, REPORT, answers_file, pdf_file};
use super::shard::{Shard, is_part};

/// New files until they are put in place.
const STAGING: &str = ".staging";
/// Old folders of editions until the new ones stand in their place.
const PREVIOUS: &str = ".previous";

/// The folder of a set while a run writes to it. Dropped without [`Output::commit`], it leaves everything as it was.
#[derive(Debug)]
pub struct Output {
    folder: PathBuf,
    /// Names of the PDFs in the folder of each edition: the book and its answers.
    documents: [String; 2],
    /// Folders that this run made, the innermost first.
    made: Vec<PathBuf>,
    staged: Mutex<Vec<Stage>>,
    /// Follows the names of the folders for what waits: of one shard, or nothing.
    suffix: String,
    /// Held, not read: the locks end with them.
    _locks: Vec<File>,
}

/// Where the files of one edition wait. Files may be written from many threads.
#[derive(Debug, Clone)]
pub struct Stage {
    folder: PathBuf,
    edition: String,
    whole: bool,
}

impl Output {
    /// Takes the folder of a set for this run, makes it where it is missing, and tidies what a killed run left. A shard
    /// shares the folder with the other shards.
    pub fn open(out: &Path, set_id: &str, shard: Option<Shard>) -> Result<Self, Error> {
        Self::at(out.join(set_id), [pdf_file(set_id), answers_file(set_id)], shard)
    }

    /// Takes the folder that bundles go into: each is swapped in as one folder below it.
    pub fn of_bundles(out: &Path) -> Result<Self, Error> {
        Self::at(out.to_owned(), [String::new(), String::new()], None)
    }

    fn at(folder: PathBuf, documents: [String; 2], shard: Option<Shard>) -> Result<Self, Error> {
        let suffix = shard.map_or(String::new(), |shard| format!("-{}", shard.name()));
        let missing = |path: &&Path| !path.as_os_str().is_empty() && !path.exists();
        let made = folder.ancestors().take_while(missing).map(Path::to_owned).collect();
        fs::create_dir_all(&folder).map_err(Error::io("make", &folder))?;
        let mut locks: Vec<File> = lock(&folder, shard.is_some())?.into_iter().collect();
        if shard.is_some() {
            let staging = folder.join(format!("{STAGING}{suffix}"));
            fs::create_dir_all(&staging).map_err(Error::io("make", &staging))?;
            locks.extend(lock(&staging, false)?);
        }
        let output = Self { folder, documents, made, staged: Mutex::default(), suffix, _locks: locks };
        if shard.is_none() {
            leftovers(&output.folder)?.iter().try_for_each(|suffix| output.tidy(suffix))?;
        }
        output.clear(&output.suffix)?;
        Ok(output)
    }

    /// A place for the files of one edition; `edition` is its folder below that of the set, or empty for the folder of
    /// the set itself. `whole`: they take the place of the edition's folder; else each takes the
    /// place of its own earlier version.
    pub fn stage(&self, edition: &str, whole: bool) -> Result<Stage, Error> {
        if whole {
            refuse_foreign(&self.folder.join(edition), &self.documents)?;
        }
        let folder = self.staging(&self.suffix).join(flat(edition));
        for part in ["svg", "png"] {
            let path = folder.join(part);
            fs::create_dir_all(&path).map_err(Error::io("make", &path))?;
        }
        let stage = Stage { folder, edition: edition.to_owned(), whole };
        self.waiting().push(stage.clone());
        Ok(stage)
    }

    /// Gives up what waits for the folders below this one.
    pub fn forget(&self, folder: &str) {
        self.waiting().retain(|stage| !stage.edition.strip_prefix(folder).is_some_and(|rest| rest.starts_with('/')));
    }

    fn waiting(&self) -> MutexGuard<'_, Vec<Stage>> {
        self.staged.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn staging(&self, suffix: &str) -> PathBuf {
        self.folder.join(format!("{STAGING}{suffix}"))
    }

    fn previous(&self, suffix: &str) -> PathBuf {
        self.folder.join(format!("{PREVIOUS}{suffix}"))
    }

    /// Puts everything in place.
    pub fn commit(mut self) -> Result<(), Error> {
        let staged = std::mem::take(&mut *self.waiting());
        for stage in &staged {
            remove_if_empty(&stage.folder.join("svg"));
            remove_if_empty(&stage.folder.join("png"));
            let target = self.folder.join(&stage.edition);
            if let Some(parent) = target.parent() {
                fs::create_dir_all(parent).map_err(Error::io("make", parent))?;
            }
            if stage.whole {
                self.swap_in(stage, &target)?
            } else {
                move_in(&stage.folder, &target)?
            }
            // From here on the folder holds an edition and stays.
            self.made.clear();
        }
        self.tidy(&self.suffix)
    }

    /// Puts a whole edition in the place of its folder.
    fn swap_in(&self, stage: &Stage, target: &Path) -> Result<(), Error> {
        if !target.exists() {
            return rename(&stage.folder, target);
        }
        let previous = self.previous(&self.suffix);
        fs::create_dir_all(&previous).map_err(Error::io("make", &previous))?;
        let old = previous.join(flat(&stage.edition));
        rename(target, &old)?;
        rename(&stage.folder, target).inspect_err(|_| {
            // The first error is the one to tell; if this rename fails too, the next run tries it again.
            drop(fs::rename(&old, target));
        })
    }

    /// Moves old editions back whose place is empty, and removes what is left of a run.
    fn tidy(&self, suffix: &str) -> Result<(), Error> {
        self.clear(suffix)?;
        remove(&self.staging(suffix))
    }

    /// The same, but for the folder of what waits, which may be locked.
    fn clear(&self, suffix: &str) -> Result<(), Error> {
        let (staging, previous) = (self.staging(suffix), self.previous(suffix));
        if previous.exists() {
            for entry in fs::read_dir(&previous).map_err(Error::io("read", &previous))? {
                let entry = entry.map_err(Error::io("read", &previous))?;
                let target = self.folder.join(entry.file_name().to_string_lossy().replace('+', "/"));
                if !target.exists() {
                    rename(&entry.path(), &target)?;
                }
            }
            // `.previous` holds complete folders only: it is taken away in one step before it is emptied.
            fs::create_dir_all(&staging).map_err(Error::io("make", &staging))?;
            let away = staging.join(PREVIOUS);
            remove(&away)?;
            rename(&previous, &away)?;
        }
        names(&staging)?.iter().try_for_each(|name| remove(&staging.join(name)))
    }
}

impl Drop for Output {
    /// Takes away what is not in place. What cannot be taken away now is tidied by the next run.
    fn drop(&mut self) {
        drop(self.tidy(&self.suffix));
        for folder in &self.made {
            remove_if_empty(folder);
        }
    }
}

impl Stage {
    /// A folder below this one, put in place with it.
    pub fn below(&self, folder: &str) -> Self {
        Self { folder: self.folder.join(folder), ..self.clone() }
    }

    /// A new file to write into; `name` as for [`Stage::write`].
    pub fn create(&self, name: &str) -> Result<File, Error> {
        let path = self.path(name);
        create(&path).map_err(Error::io("write", &path))
    }

    /// A file that waits, to read it again.
    pub fn open(&self, name: &str) -> Result<File, Error> {
        let path = self.path(name);
        File::open(&path).map_err(Error::io("read", &path))
    }

    /// A copy of a file from elsewhere, byte for byte.
    pub fn copy(&self, name: &str, from: &Path) -> Result<(), Error> {
        let bytes = fs::read(from).map_err(Error::io("read", from))?;
        self.write(name, &bytes)
    }

    /// Where a file of this name waits.
    pub fn path(&self, name: &str) -> PathBuf {
        self.folder.join(name)
    }

    /// Writes one file; `name` is its path below the folder of the edition.
    pub fn write(&self, name: &str, bytes: &[u8]) -> Result<(), Error> {
        let path = self.folder.join(name);
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder).map_err(Error::io("make", folder))?;
        }
        create(&path).and_then(|mut file| file.write_all(bytes)).map_err(Error::io("write", &path))
    }
}

/// Writes one file that belongs to no set, or replaces it as a whole. Its folder is made where it is missing.
pub fn put(path: &Path, bytes: &[u8]) -> Result<(), Error> {
    if let Some(folder) = path.parent().filter(|folder| !folder.as_os_str().is_empty()) {
        fs::create_dir_all(folder).map_err(Error::io("make", folder))?;
    }
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let waiting = path.with_file_name(format!(".{name}.part"));
    create(&waiting).and_then(|mut file| file.write_all(bytes)).map_err(Error::io("write", path))?;
    fs::rename(&waiting, path).map_err(|error| {
        drop(fs::remove_file(&waiting));
        Error::io("write", path)(error)
    })
}

/// The text of a file; `None` where it is not there.
pub fn read_text(path: &Path) -> Result<Option<String>, Error> {
    match fs::read_to_string(path) {
        Ok(text) => Ok(Some(text)),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(Error::io("read", path)(error)),
    }
}

/// Makes a file that its owner may write and everyone may read, less what the umask takes away.
fn create(path: &Path) -> io::Result<File> {
    let mut options = OpenOptions::new();
    options.write(true).create(true).truncate(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o644);
    options.open(path)
}

/// The name of a folder that waits.
fn flat(edition: &str) -> String {
    if edition.is_empty() { "+".to_owned() } else { edition.replace('/', "+") }
}

/// What follows the names of folders that killed shards left.
fn leftovers(folder: &Path) -> Result<BTreeSet<String>, Error> {
    let suffix = |name: &str| {
        let rest = name.strip_prefix(STAGING).or(name.strip_prefix(PREVIOUS))?;
        rest.starts_with('-').then(|| rest.to_owned())
    };
    Ok(names(folder)?.iter().filter_map(|name| suffix(name)).collect())
}

/// The names of what is in a folder, sorted; none where it is missing.
fn names(folder: &Path) -> Result<Vec<String>, Error> {
    let entries = match fs::read_dir(folder) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(Vec::new()),
        entries => entries.and_then(Iterator::collect::<io::Result<Vec<_>>>).map_err(Error::io("read", folder))?,
    };
    let mut names: Vec<_> = entries.iter().map(|entry| entry.file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    Ok(names)
}

/// The reports of the shards that wait in a folder: names and texts, sorted by name.
pub fn read_parts(folder: &Path) -> Result<Vec<(String, String)>, Error> {
    let parts = names(folder)?.into_iter().filter(|name| is_part(name));
    parts
        .map(|name| {
            let path = folder.join(&name);
            let text = fs::read_to_string(&path).map_err(Error::io("read", &path))?;
            Ok((name, text))
        })
        .collect()
}

/// Takes the reports of shards away.
pub fn remove_parts(folder: &Path, names: &[String]) -> Result<(), Error> {
    names.iter().try_for_each(|name| {
        let path = folder.join(name);
        fs::remove_file(&path).map_err(Error::io("remove", &path))
    })
}

/// Locks a folder for this run, or for this run among others that share it. Where the system cannot lock a folder there
/// is no lock.
fn lock(folder: &Path, shared: bool) -> Result<Option<File>, Error> {
    let Ok(file) = File::open(folder) else { return Ok(None) };
    match if shared { file.try_lock_shared() } else { file.try_lock() } {
        Ok(()) => Ok(Some(file)),
        Err(TryLockError::WouldBlock) => Err(Error::Busy(folder.to_owned())),
        Err(TryLockError::Error(_)) => Ok(None),
    }
}

/// Refuses to replace a folder that has no report and holds something that no run of ours puts there.
fn refuse_foreign(target: &Path, [book, answers]: &[String; 2]) -> Result<(), Error> {
    let found = names(target)?;
    let ours = [book, answers, "svg", "png", INKS];
    let ours = found.iter().any(|name| name == REPORT) || found.iter().all(|name| ours.contains(&name.as_str()));
    if ours { Ok(()) } else { Err(Error::Foreign(target.to_owned())) }
}

/// Moves every file below `from` to the same place below `to`, the report last.
fn move_in(from: &Path, to: &Path) -> Result<(), Error> {
    fs::create_dir_all(to).map_err(Error::io("make", to))?;
    let entries = fs::read_dir(from).and_then(Iterator::collect::<io::Result<Vec<_>>>);
    let mut names: Vec<_> = entries.map_err(Error::io("read", from))?.iter().map(fs::DirEntry::file_name).collect();
    names.sort_by_key(|name| (name == REPORT, name.clone()));
    for name in names {
        let (from, to) = (from.join(&name), to.join(&name));
        if from.is_dir() { move_in(&from, &to)? } else { rename(&from, &to)? }
    }
    Ok(())
}

fn rename(from: &Path, to: &Path) -> Result<(), Error> {
    fs::rename(from, to).map_err(Error::io("replace", to))
}

fn remove(folder: &Path) -> Result<(), Error> {
    match fs::remove_dir_all(folder) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(Error::io("remove", folder)(error)),
        _ => Ok(()),
    }
}

/// Removes a folder if nothing is in it.
fn remove_if_empty(folder: &Path) {
    // Fails where something is in it, and then it stays.
    drop(fs::remove_dir(folder));
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An edition that is in place, and one that waits to replace it.
    fn waiting(out: &Path) -> Output {
        for text in ["old", "new"] {
            let output = Output::open(out, "slipway", None).unwrap();
            let stage = output.stage("a4", true).unwrap();
            stage.write("svg/001-cover.svg", text.as_bytes()).unwrap();
            stage.write(REPORT, text.as_bytes()).unwrap();
            if text == "new" {
                return output;
            }
            output.commit().unwrap();
        }
        unreachable!("the second text returns")
    }

    fn cover(out: &Path) -> String {
        fs::read_to_string(out.join("slipway/a4/svg/001-cover.svg")).unwrap()
    }

    #[test]
    fn a_new_edition_takes_the_place_of_the_old() {
        let dir = tempfile::tempdir().unwrap();
        waiting(dir.path()).commit().unwrap();
        assert_eq!(cover(dir.path()), "new");
    }

    #[test]
    fn an_edition_that_waits_changes_nothing() {
        let dir = tempfile::tempdir().unwrap();
        let output = waiting(dir.path());
        assert_eq!(cover(dir.path()), "old");
        drop(output);
        assert_eq!(cover(dir.path()), "old");
        assert_eq!(fs::read_dir(dir.path().join("slipway")).unwrap().count(), 1);
    }

    /// The second of the two renames fails, for the new edition is gone.
    #[test]
    fn the_old_edition_comes_back_where_the_new_one_cannot_be_put_in_place() {
        let dir = tempfile::tempdir().unwrap();
        let output = waiting(dir.path());
        fs::remove_dir_all(dir.path().join("slipway").join(STAGING)).unwrap();
        assert!(matches!(output.commit(), Err(Error::Io { .. })));
        assert_eq!(cover(dir.path()), "old");
    }

    /// A kill between the two renames of a reader's edition, in a whole run and in a shard.
    #[test]
    fn an_edition_of_a_reader_comes_back_after_a_kill() {
        for shard in [None, Shard::new(1, 2)] {
            let dir = tempfile::tempdir().unwrap();
            let write = |text: &str| {
                let output = Output::open(dir.path(), "slipway", shard).unwrap();
                let stage = output.stage("readers/pier/a4", true).unwrap();
                stage.write(REPORT, text.as_bytes()).unwrap();
                output
            };
            write("old").commit().unwrap();
            let output = write("new");
            let (target, old) = (output.folder.join("readers/pier/a4"), output.previous(&output.suffix));
            fs::create_dir_all(&old).unwrap();
            fs::rename(&target, old.join("readers+pier+a4")).unwrap();
            // A killed run drops nothing.
            std::mem::forget(output);
            // The locks of a killed run go with it; here they are still held, so a copy stands in for its folder.
            let copy = tempfile::tempdir().unwrap();
            copy_all(dir.path(), copy.path());
            drop(Output::open(copy.path(), "slipway", None).unwrap());
            let found = fs::read_to_string(copy.path().join("slipway/readers/pier/a4/report.json")).unwrap();
            assert_eq!(found, "old");
            assert_eq!(fs::read_dir(copy.path().join("slipway")).unwrap().count(), 1);
        }
    }

    fn copy_all(from: &Path, to: &Path) {
        fs::create_dir_all(to).unwrap();
        for entry in fs::read_dir(from).unwrap() {
            let entry = entry.unwrap();
            let (from, to) = (entry.path(), to.join(entry.file_name()));
            if from.is_dir() {
                copy_all(&from, &to);
            } else {
                fs::copy(&from, &to).unwrap();
            }
        }
    }

    /// Shards share the folder with each other, but not with a whole run, and not with themselves.
    #[test]
    #[cfg(unix)]
    fn shards_write_side_by_side() {
        let dir = tempfile::tempdir().unwrap();
        let open = |shard| Output::open(dir.path(), "slipway", shard);
        let (first, second) = (open(Shard::new(1, 2)).unwrap(), open(Shard::new(2, 2)).unwrap());
        assert!(matches!(open(None), Err(Error::Busy(_))));
        assert!(matches!(open(Shard::new(1, 2)), Err(Error::Busy(_))));
        drop((first, second));
        assert!(open(None).is_ok());
    }
}
