//! What lies in the folder of a set, or stands in `set.toml`, and is used by nothing: exercise files, pictures, files of
//! translations, series.
//!
//! All of it is harmless, so these are warnings; most are slips: a file that was renamed, a line that was forgotten.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use crate::diagnostics::{Diagnostic, codes};
use crate::spec::reader::SeriesPart;

/// How deep folders are looked into, and how many entries are looked at. Design choice: more than any set has.
const DEEPEST: usize = 4;
const MOST_ENTRIES: usize = 5000;
/// How many names a warning tells. Design choice.
const MOST_NAMES: usize = 5;

/// Files that stand in folders which are no part of the set: another set, or what was made of one.
const NOT_OURS: &[&str] = &["set.toml", "report.json", "manifest.json"];

/// The files in the folder of a set that nothing names, by their paths from there.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Found {
    exercises: BTreeSet<String>,
    pictures: BTreeSet<String>,
    translations: BTreeSet<String>,
    /// The files that are used, links followed.
    used: BTreeSet<PathBuf>,
    entries: usize,
}

impl Found {
    /// Looks through a folder; `used` are the paths of the files that the set names. What cannot be read is left out, for
    /// it is no part of the set.
    pub(super) fn below<'a>(home: &Path, used: impl Iterator<Item = &'a String>) -> Self {
        let home = if home.as_os_str().is_empty() { Path::new(".") } else { home };
        let used = used.filter_map(|path| home.join(path).canonicalize().ok()).collect();
        let mut found = Self { used, ..Self::default() };
        found.walk(home, "", DEEPEST);
        found
    }

    fn is_used(&self, path: &Path) -> bool {
        path.canonicalize().is_ok_and(|path| self.used.contains(&path))
    }

    fn walk(&mut self, folder: &Path, below: &str, deeper: usize) {
        let Ok(entries) = fs::read_dir(folder) else { return };
        for entry in entries.flatten() {
            self.entries += 1;
            let (Ok(kind), Ok(name)) = (entry.file_type(), entry.file_name().into_string()) else { continue };
            if MOST_ENTRIES < self.entries || name.starts_with('.') {
                continue;
            }
            let (path, listed) = (entry.path(), format!("{below}{name}"));
            if kind.is_dir() && 0 < deeper && !NOT_OURS.iter().any(|file| path.join(file).exists()) {
                self.walk(&path, &format!("{listed}/"), deeper - 1);
            } else if !kind.is_file() || self.is_used(&path) {
                // A folder of something else, a link, or a part of the set.
            } else if name.ends_with(".svg") || name.ends_with(".png") {
                self.pictures.insert(listed);
            } else if name.ends_with(".toml") {
                match holds(&path) {
                    Some(Holds::Exercise) => self.exercises.insert(listed),
                    Some(Holds::Words) => self.translations.insert(listed),
                    None => false,
                };
            }
        }
    }
}

/// What a file of a set may hold.
enum Holds {
    Exercise,
    Words,
}

/// What a file holds, as far as its text tells: an exercise, or words for some in another language.
fn holds(path: &Path) -> Option<Holds> {
    let text = fs::read_to_string(path).ok().filter(|text| text.len() as u64 <= super::load::MOST_BYTES)?;
    let mut headers = text.lines().map(str::trim).filter(|line| line.starts_with('['));
    headers.find_map(|header| match header {
        "[exercise]" => Some(Holds::Exercise),
        _ => header.starts_with("[exercise.").then_some(Holds::Words),
    })
}

/// The warnings about what nothing uses; `series` are those of the set with their levels counted.
pub(super) fn check(found: &Found, series: &BTreeMap<String, SeriesPart>) -> Vec<Diagnostic> {
    let files = names(&found.exercises).map(|(count, names)| {
        let (is, them) = if count == 1 { ("exercise file is", "it") } else { ("exercise files are", "them") };
        Diagnostic::warning(codes::ORPHAN, None, format!("{count} {is} not in the list of `exercises`: {names}"))
            .with_help(format!("list {them}, or move {them} out of the folder of the set"))
    });
    let art = names(&found.pictures).map(|(count, names)| {
        let (is, them) = if count == 1 { ("picture is", "it") } else { ("pictures are", "them") };
        Diagnostic::warning(codes::ORPHAN, None, format!("{count} {is} named by no exercise: {names}"))
            .with_help(format!("use {them}, or move {them} out of the folder of the set"))
    });
    let words = names(&found.translations).map(|(count, names)| {
        let (is, them) =
            if count == 1 { ("file of translations is", "it") } else { ("files of translations are", "them") };
        Diagnostic::warning(codes::ORPHAN, None, format!("{count} {is} named by no `[[translation]]`: {names}"))
            .with_help(format!("name {them}, or move {them} out of the folder of the set"))
    });
    let unused = series.iter().filter(|(_, part)| part.of == 0).map(|(id, part)| {
        Diagnostic::warning(codes::ORPHAN, part.place, format!("no exercise is a part of the series `{id}`"))
            .with_label("used by nothing")
            .with_help(format!("write `series = \"{id}\"` in a ramp, or leave the series out"))
    });
    files.into_iter().chain(art).chain(words).chain(unused).collect()
}

/// How many there are, and the first of them in words; `None` for none.
fn names(all: &BTreeSet<String>) -> Option<(usize, String)> {
    let first: Vec<_> = all.iter().take(MOST_NAMES).map(|name| format!("`{name}`")).collect();
    let more = if first.len() < all.len() { format!(" and {} more", all.len() - first.len()) } else { String::new() };
    (!all.is_empty()).then(|| (all.len(), format!("{}{more}", first.join(", "))))
}
