//! `MANIFEST.sha256`: the digest of every file of a bundle, in the form that `sha256sum` writes and checks; and what has
//! changed from one manifest to another.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::io::Read as _;
use std::path::Path;

use sha2::{Digest, Sha256};

use super::super::error::Error;
use super::super::write::Stage;

/// The manifest, below the folder of a bundle and beside `set.toml`.
pub const MANIFEST: &str = "MANIFEST.sha256";

/// Names of files with their digests: 64 digits of `0`-`9` and `a`-`f`.
pub type Digests = BTreeMap<String, String>;

/// A file that waits, with its size and its digest. It is read in pieces.
pub(super) fn digest(stage: &Stage, name: &str) -> Result<(u64, String), Error> {
    let (mut file, mut hash) = (stage.open(name)?, Sha256::new());
    let (mut buffer, mut bytes) = (vec![0; 1 << 16], 0);
    loop {
        let read = file.read(&mut buffer).map_err(Error::io("read", &stage.path(name)))?;
        if read == 0 {
            return Ok((bytes, hex(&hash.finalize())));
        }
        hash.update(&buffer[..read]);
        bytes += read as u64;
    }
}

/// The digest of a text.
pub(super) fn digest_of(text: &str) -> String {
    hex(&Sha256::digest(text))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut hex, byte| {
        let _ = write!(hex, "{byte:02x}");
        hex
    })
}

/// The manifest of these files, sorted by name: digest, two blanks, name.
pub fn text(digests: &Digests) -> String {
    digests.iter().map(|(name, digest)| format!("{digest}  {name}\n")).collect()
}

/// The digests that a manifest names. The error is the number of the first line that is of another form.
pub fn parse(text: &str) -> Result<Digests, usize> {
    let line = |(number, line): (usize, &str)| {
        let (digest, name) = line.split_once("  ").ok_or(number)?;
        let is_digest = digest.len() == 64 && digest.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'));
        if is_digest && !name.is_empty() { Ok((name.to_owned(), digest.to_owned())) } else { Err(number) }
    };
    (1..).zip(text.lines()).map(line).collect()
}

/// A file that is not as in the committed manifest.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// Its name.
    pub file: String,
    /// Its digest in the committed manifest; `None`: it is new.
    pub committed: Option<String>,
    /// Its digest as made now; `None`: it is missing.
    pub made: Option<String>,
}

/// What differs, sorted by name.
pub fn changes(committed: &Digests, made: &Digests) -> Vec<Change> {
    let mut all: Vec<&String> = committed.keys().chain(made.keys()).collect();
    all.sort();
    all.dedup();
    let change = |file: &String| {
        let (committed, made) = (committed.get(file).cloned(), made.get(file).cloned());
        (committed != made).then(|| Change { file: file.clone(), committed, made })
    };
    all.into_iter().filter_map(change).collect()
}

/// The committed manifest of a set, from beside its `set.toml`.
pub(super) fn committed(path: &Path) -> Result<Digests, Error> {
    let text = super::super::write::read_text(path)?.ok_or_else(|| Error::NoManifest(path.to_owned()))?;
    parse(&text).map_err(|line| Error::Manifest { path: path.to_owned(), line })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The digest of "abc". Source: FIPS 180-4 example, as NIST publishes it.
    const ABC: &str = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    #[test]
    fn digests_are_those_of_the_standard() {
        assert_eq!(hex(&Sha256::digest(b"abc")), ABC);
    }

    #[test]
    fn a_manifest_is_read_as_written() {
        let digests = Digests::from([("b c".to_owned(), ABC.to_owned()), ("a".to_owned(), ABC.replace('b', "0"))]);
        assert_eq!(parse(&text(&digests)), Ok(digests));
        for bad in ["x  a\n", &format!("{ABC} a\n"), &format!("{ABC}  \n"), &format!("{}  a\n", ABC.to_uppercase())] {
            assert_eq!(parse(&format!("{ABC}  ok\n{bad}")), Err(2), "{bad}");
        }
    }

    #[test]
    fn changes_are_told_apart() {
        let of = |files: &[(&str, &str)]| -> Digests {
            files.iter().map(|(name, digest)| ((*name).to_owned(), (*digest).to_owned())).collect()
        };
        let found = changes(&of(&[("a", "1"), ("b", "1"), ("c", "1")]), &of(&[("b", "2"), ("c", "1"), ("d", "1")]));
        let told = |c: &Change| (c.file.clone(), c.committed.is_some(), c.made.is_some());
        let expected = [("a", true, false), ("b", true, true), ("d", false, true)];
        assert_eq!(found.iter().map(told).collect::<Vec<_>>(), expected.map(|(f, c, m)| (f.to_owned(), c, m)));
    }
}
