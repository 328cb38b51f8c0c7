//! Zip files of a bundle: from files that wait, into a file that waits, in pieces. The same files give the same bytes: sorted
//! entries, the first time that the format knows, fixed permissions, and what is compressed already is stored.

use std::collections::BTreeMap;
use std::io::{self, BufWriter, Write as _};

use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, System, ZipWriter};

use super::super::error::Error;
use super::super::write::Stage;
use super::manifest::{Digests, MANIFEST, digest_of, text};

/// Packs files and, by their names, texts that are in this zip alone into `name`, below one folder called as the zip, with a
/// manifest of their own.
pub(super) fn pack(stage: &Stage, name: &str, files: &Digests, texts: &BTreeMap<String, String>) -> Result<(), Error> {
    let failed = |source: zip::result::ZipError| Error::io("write", &stage.path(name))(source.into());
    let folder = name.strip_suffix(".zip").unwrap_or(name);
    let mut zip = ZipWriter::new(BufWriter::new(stage.create(name)?));
    let mut all = files.clone();
    all.extend(texts.iter().map(|(name, text)| (name.clone(), digest_of(text))));
    let manifest = text(&all);
    let mut entries: Vec<&str> = all.keys().map(String::as_str).chain([MANIFEST]).collect();
    entries.sort_unstable();
    for entry in entries {
        zip.start_file(format!("{folder}/{entry}"), options(entry)).map_err(failed)?;
        let copied = if entry == MANIFEST {
            zip.write_all(manifest.as_bytes())
        } else if let Some(text) = texts.get(entry) {
            zip.write_all(text.as_bytes())
        } else {
            io::copy(&mut stage.open(entry)?, &mut zip).map(|_| ())
        };
        copied.map_err(Error::io("write", &stage.path(name)))?;
    }
    let mut file = zip.finish().map_err(failed)?;
    file.flush().map_err(Error::io("write", &stage.path(name)))
}

fn options(name: &str) -> SimpleFileOptions {
    let packed = [".pdf", ".png"].iter().any(|ending| name.ends_with(ending));
    let method = if packed { CompressionMethod::Stored } else { CompressionMethod::Deflated };
    SimpleFileOptions::default()
        .last_modified_time(DateTime::default())
        .unix_permissions(0o644)
        .system(System::Unix)
        .compression_method(method)
}
