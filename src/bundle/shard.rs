//! Shards: one run spread over machines, and what joins them again.
//!
//! The items of a run, one an edition of a set or of a reader, are numbered in their order; item `i` is made by shard
//! `i mod N + 1`. Each shard leaves a report of its own. They are joined when all are there, made from the same files,
//! by the same version, with the same arguments.

use std::fmt::{self, Write as _};
use std::path::Path;

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use crate::spec::SetSpec;

use super::error::Error;
use super::json;
use super::run::refuse_same_set;
use super::summary::ReaderSummary;
use super::write::{Output, read_parts, remove_parts};

/// Shard `number` of `of`, from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Shard {
    /// From 1.
    pub number: u32,
    /// How many there are.
    pub of: u32,
}

/// The most shards of a run. Design choice.
pub const MOST_SHARDS: u32 = 10_000;

impl Shard {
    /// `None` unless `1 <= number <= of`, and `of` is at most [`MOST_SHARDS`].
    pub fn new(number: u32, of: u32) -> Option<Self> {
        (1 <= number && number <= of && of <= MOST_SHARDS).then_some(Self { number, of })
    }

    /// Whether it makes the item of this number, from 0.
    pub fn has(self, item: usize) -> bool {
        item % self.of as usize == self.number as usize - 1
    }

    /// "2-of-3".
    pub fn name(self) -> String {
        format!("{}-of-{}", self.number, self.of)
    }
}

/// A run that is a shard.
#[derive(Debug, Clone)]
pub struct Sharded {
    /// Which.
    pub shard: Shard,
    /// What the run is made from: see [`inputs`].
    pub inputs: String,
}

/// The report of a shard.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(super) struct Part {
    schema: u32,
    version: String,
    shard: Shard,
    inputs: String,
    /// What it made for readers.
    pub(super) readers: Vec<ReaderSummary>,
}

impl Sharded {
    /// Leaves the report of the shard waiting in the output; `folder` is below that of the set.
    pub(super) fn write(&self, output: &Output, folder: &str, readers: &[ReaderSummary]) -> Result<(), Error> {
        let part = Part {
            schema: 1,
            version: env!("CARGO_PKG_VERSION").to_owned(),
            shard: self.shard,
            inputs: self.inputs.clone(),
            readers: readers.to_vec(),
        };
        let stage = output.stage(folder, false)?;
        stage.write(&part_file(self.shard), &json::to_vec(&part).map_err(Error::Report)?)
    }
}

const BEFORE: &str = "report.part-";

fn part_file(shard: Shard) -> String {
    format!("{BEFORE}{}.json", shard.name())
}

/// Whether a file of this name is the report of a shard.
pub(super) fn is_part(name: &str) -> bool {
    shard_of(name).is_some()
}

fn shard_of(name: &str) -> Option<Shard> {
    let (number, of) = name.strip_prefix(BEFORE)?.strip_suffix(".json")?.split_once("-of-")?;
    Shard::new(number.parse().ok()?, of.parse().ok()?)
}

/// A digest of what a run is made from: the version, the arguments that shape its files, the texts of all files of its
/// sets, and what was read from them, pictures among it.
pub fn inputs<'a>(arguments: &'a str, texts: impl Iterator<Item = &'a str>, read: &dyn fmt::Debug) -> String {
    let mut hash = Hash(Sha256::new());
    for text in [env!("CARGO_PKG_VERSION"), arguments].into_iter().chain(texts) {
        hash.0.update((text.len() as u64).to_le_bytes());
        hash.0.update(text.as_bytes());
    }
    let _ = write!(hash, "{read:?}");
    let mut hex = String::new();
    for byte in hash.0.finalize() {
        let _ = write!(hex, "{byte:02x}");
    }
    hex
}

/// Takes text into a digest as it is written.
struct Hash(Sha256);

impl fmt::Write for Hash {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        self.0.update(text.as_bytes());
        Ok(())
    }
}

/// The reports of all shards in a folder, with their names; an error where one is missing or of another run.
pub(super) fn parts(folder: &Path, inputs: &str) -> Result<(Vec<String>, Vec<Part>), Error> {
    let found = read_parts(folder)?;
    let odd = |name: &str, why: &str| Error::Part { path: folder.join(name), why: why.to_owned() };
    let Some(of) = found.first().and_then(|(name, _)| shard_of(name)).map(|shard| shard.of) else {
        return Err(Error::NoParts(folder.to_owned()));
    };
    let (mut names, mut parts) = (Vec::new(), Vec::new());
    for (name, text) in found {
        let part: Part =
            serde_json::from_str(&text).map_err(|_| odd(&name, "cannot be read as the report of a shard"))?;
        if shard_of(&name) != Some(part.shard) {
            return Err(odd(&name, "holds the report of another shard"));
        }
        if part.shard.of != of {
            return Err(odd(
                &name,
                &format!("is of a run in {} shards, another report there of one in {of}", part.shard.of),
            ));
        }
        if part.inputs != inputs || part.version != env!("CARGO_PKG_VERSION") {
            return Err(odd(&name, "was made from other files, with other arguments or by another version"));
        }
        names.push(name);
        parts.push(part);
    }
    let has = |number| parts.iter().any(|part: &Part| part.shard.number == number);
    let missing: Vec<Shard> = (1..=of).filter(|n| !has(*n)).map(|number| Shard { number, of }).collect();
    if missing.is_empty() {
        Ok((names, parts))
    } else {
        Err(Error::MissingParts { folder: folder.to_owned(), missing })
    }
}

/// Joins the shards of a run without readers: each edition has its report, so that all shards ran is all there is to
/// see. Then their reports go.
pub fn merge(out: &Path, sets: &[&SetSpec], inputs: &str) -> Result<(), Error> {
    refuse_same_set(sets)?;
    let mut done = Vec::new();
    for set in sets {
        let output = Output::open(out, &set.id, None)?;
        let folder = out.join(&set.id);
        let (names, _) = parts(&folder, inputs)?;
        done.push((output, folder, names));
    }
    done.iter().try_for_each(|(_, folder, names)| remove_parts(folder, names))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn items_go_round() {
        let of = |number| (0..7).filter(|item| Shard { number, of: 3 }.has(*item)).collect::<Vec<_>>();
        assert_eq!([of(1), of(2), of(3)], [vec![0, 3, 6], vec![1, 4], vec![2, 5]]);
    }

    #[test]
    fn names_lead_back_to_their_shards() {
        let shard = Shard { number: 2, of: 13 };
        assert_eq!(shard_of(&part_file(shard)), Some(shard));
        for other in ["report.json", "report.part-1.json", "report.part-a-of-b.json", "report.part-3-of-2.json"] {
            assert!(!is_part(other), "{other}");
        }
    }

    /// Text that moves from one file to the next is another input.
    #[test]
    fn inputs_are_told_apart() {
        let of = |arguments, texts: [&'static str; 2]| inputs(arguments, texts.into_iter(), &1);
        assert_eq!(of("a", ["b", "c"]), of("a", ["b", "c"]));
        assert_ne!(of("a", ["b", "c"]), of("a", ["bc", ""]));
        assert_ne!(of("a", ["b", "c"]), of("x", ["b", "c"]));
        assert_ne!(of("a", ["b", "c"]), inputs("a", ["b", "c"].into_iter(), &2));
    }
}
