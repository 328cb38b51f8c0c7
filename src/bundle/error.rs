//! Why a run stopped, apart from problems in the author's files: those are diagnostics.

use std::error::Error as StdError;
use std::fmt;
use std::io;
use std::path::{Path, PathBuf};

use crate::diagnostics::Diagnostic;
use crate::render::pdf::PdfError;
use crate::render::png::PngError;

use super::shard::Shard;

/// Why nothing was written.
#[derive(Debug)]
pub enum Error {
    /// An edition does not fit its pages: problems in the files of the set with this index.
    Layout {
        /// Index of the set, in the order given.
        set: usize,
        /// What is wrong.
        diagnostics: Vec<Diagnostic>,
    },
    /// A set has no edition of this name.
    UnknownEdition {
        /// Id of the set.
        set: String,
        /// The name asked for.
        asked: String,
        /// The names it has.
        known: Vec<String>,
        /// The known name that is nearest to the one asked for.
        nearest: Option<String>,
    },
    /// The pages asked for are not all in the book.
    PageRange {
        /// Id of the set.
        set: String,
        /// Id of the edition.
        edition: String,
        /// First and last page asked for.
        asked: (u32, u32),
        /// How many pages the book has.
        pages: u32,
    },
    /// Pages asked for have no exercise.
    NoExercise {
        /// Id of the set.
        set: String,
        /// What was asked for, in words: "page `3` is no exercise".
        what: String,
        /// Numbers of the first and the last page with an exercise, if there is one.
        span: Option<(u32, u32)>,
        /// The page id that is nearest to the one asked for.
        nearest: Option<String>,
    },
    /// Two sets would be written to the same folder.
    SameSet(String),
    /// A set is asked for its readers and has none.
    NoReaders(String),
    /// A set has no reader of this name.
    UnknownReader {
        /// Id of the set.
        set: String,
        /// The name asked for.
        asked: String,
        /// The known name that is nearest to the one asked for.
        nearest: Option<String>,
    },
    /// There is no report of any shard.
    NoParts(PathBuf),
    /// Some shards left no report.
    MissingParts {
        /// Where they would be.
        folder: PathBuf,
        /// Which.
        missing: Vec<Shard>,
    },
    /// The report of a shard that does not belong to the run.
    Part {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        why: String,
    },
    /// Another run is writing to the folder.
    Busy(PathBuf),
    /// The folder of an edition holds something that no run of ours wrote.
    Foreign(PathBuf),
    /// The threads could not be started.
    Threads(String),
    /// The PDF of an edition could not be made.
    Pdf {
        /// Id of the edition.
        edition: String,
        /// Why.
        source: PdfError,
    },
    /// A PNG page could not be made.
    Png {
        /// Id of the page.
        page: String,
        /// Why.
        source: PngError,
    },
    /// A set that would be published tells of its readers.
    OfReaders {
        /// Id of the set.
        set: String,
        /// How many there are.
        readers: usize,
    },
    /// A preview could not be made.
    Picture {
        /// Id of the page.
        page: String,
        /// Why.
        source: io::Error,
    },
    /// A set has no manifest to compare with, where one would be.
    NoManifest(PathBuf),
    /// A manifest has a line that is of another form.
    Manifest {
        /// The file.
        path: PathBuf,
        /// Number of the line.
        line: usize,
    },
    /// The date of a set is none. The reader refuses such a set before.
    Date(String),
    /// The report could not be put into words.
    Report(serde_json::Error),
    /// The system refused to read or write.
    Io {
        /// What was tried: "write".
        action: &'static str,
        /// On which file or folder.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
}

impl Error {
    /// Puts the file and the deed to what the system said.
    pub(super) fn io(action: &'static str, path: &Path) -> impl FnOnce(io::Error) -> Self {
        move |source| Self::Io { action, path: path.to_owned(), source }
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Layout { diagnostics, .. } => {
                write!(f, "the pages cannot be laid out: {} found", count(diagnostics.len(), "problem"))
            }
            Self::UnknownEdition { set, asked, known, nearest } => {
                write!(f, "set `{set}` has no edition `{asked}`; it has {}", list(known))?;
                nearest.iter().try_for_each(|name| write!(f, "; did you mean `{name}`?"))
            }
            Self::PageRange { set, edition, asked, pages } => write!(
                f,
                "{} not in edition `{edition}` of set `{set}`; choose within `1-{pages}`",
                if asked.0 == asked.1 {
                    format!("page `{}` is", asked.0)
                } else {
                    format!("pages `{}-{}` are", asked.0, asked.1)
                }
            ),
            Self::NoExercise { set, what, span, nearest } => {
                write!(f, "{what} of set `{set}`")?;
                match (nearest, span) {
                    (Some(id), _) => write!(f, "; did you mean `{id}`?"),
                    (None, Some((first, last))) => write!(f, "; its exercises are on pages `{first}-{last}`"),
                    (None, None) => write!(f, "; it has none"),
                }
            }
            Self::SameSet(id) => {
                write!(
                    f,
                    "two sets have the id `{id}` and would overwrite each other; render them one by one with \
                     different `--out`"
                )
            }
            Self::NoReaders(set) => write!(
                f,
                "set `{set}` has no readers; add `[[reader]]` tables to `set.toml`, or name a file of them as `readers` \
                 in `[set]`"
            ),
            Self::UnknownReader { set, asked, nearest } => {
                write!(f, "set `{set}` has no reader `{asked}`")?;
                nearest.iter().try_for_each(|name| write!(f, "; did you mean `{name}`?"))
            }
            Self::NoParts(folder) => {
                write!(f, "`{}` holds no report of a shard; run `--shard 1/N` to `--shard N/N` first", folder.display())
            }
            Self::MissingParts { folder, missing } => {
                let named: Vec<_> = missing.iter().take(5).map(|s| format!("`{}/{}`", s.number, s.of)).collect();
                let more = missing.len().saturating_sub(named.len());
                let more = if 0 < more { format!(" and {more} more") } else { String::new() };
                let (are, them) = if missing.len() == 1 { ("shard", "it") } else { ("shards", "them") };
                let (named, folder) = (named.join(", "), folder.display());
                write!(f, "{are} {named}{more} left no report in `{folder}`; run {them} with `--shard`, then `--merge`")
            }
            Self::Part { path, why } => {
                write!(f, "`{}` {why}; run that shard again, or take the file away", path.display())
            }
            Self::Busy(path) => write!(f, "another run is writing to `{}`; wait for it to end", path.display()),
            Self::Foreign(path) => write!(
                f,
                "`{}` has no `report.json` and holds other files, so it is not replaced; move it away or choose \
                 another `--out`",
                path.display()
            ),
            Self::Threads(reason) => write!(f, "cannot start the threads: {reason}; try a lower `--jobs`"),
            Self::Pdf { edition, source } => write!(f, "cannot make the pdf of edition `{edition}`: {source}"),
            Self::Png { page, source } => write!(f, "cannot make the png of page `{page}`: {source}"),
            Self::OfReaders { set, readers } => write!(
                f,
                "set `{set}` tells of {}, and a bundle holds the files of its set; take them out, into a set of their own",
                count(*readers, "reader")
            ),
            Self::Picture { page, source } => write!(f, "cannot make the preview of page `{page}`: {source}"),
            Self::NoManifest(path) => write!(
                f,
                "there is no `{}` to compare with; make it with `depthpress bundle --freeze` and keep it with the set",
                path.display()
            ),
            Self::Manifest { path, line } => write!(
                f,
                "line {line} of `{}` is not a digest, two blanks and a name; make the file anew with `--freeze`",
                path.display()
            ),
            Self::Date(date) => write!(f, "date `{date}` is not of the form `YYYY-MM-DD`"),
            Self::Report(source) => write!(f, "cannot write the report: {source}"),
            Self::Io { action, path, source } => write!(f, "cannot {action} `{}`: {source}", path.display()),
        }
    }
}

impl StdError for Error {
    fn source(&self) -> Option<&(dyn StdError + 'static)> {
        match self {
            Self::Pdf { source, .. } => Some(source),
            Self::Png { source, .. } => Some(source),
            Self::Report(source) => Some(source),
            Self::Picture { source, .. } | Self::Io { source, .. } => Some(source),
            _ => None,
        }
    }
}

/// "1 problem", "3 problems".
pub fn count(n: usize, noun: &str) -> String {
    format!("{n} {noun}{}", if n == 1 { "" } else { "s" })
}

/// Names in backticks, with commas between.
fn list(names: &[String]) -> String {
    names.iter().map(|name| format!("`{name}`")).collect::<Vec<_>>().join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_unknown_edition_names_those_there_are() {
        let error = Error::UnknownEdition {
            set: "quay".into(),
            asked: "a5".into(),
            known: vec!["a4".into(), "screen".into()],
            nearest: Some("a4".into()),
        };
        assert_eq!(error.to_string(), "set `quay` has no edition `a5`; it has `a4`, `screen`; did you mean `a4`?");
    }

    #[test]
    fn a_page_out_of_range_names_the_range() {
        let error = |asked| Error::PageRange { set: "quay".into(), edition: "a4".into(), asked, pages: 12 }.to_string();
        assert_eq!(error((13, 13)), "page `13` is not in edition `a4` of set `quay`; choose within `1-12`");
        assert_eq!(error((9, 14)), "pages `9-14` are not in edition `a4` of set `quay`; choose within `1-12`");
    }
}
