//! The rooms of the house and the edges between them, read from the source: an edge that the table does not name fails
//! with its file and line. Tests at the foot of a file may look wherever they need to.

use std::fs;
use std::path::{Path, PathBuf};

/// Which rooms each room may use. A room that is not here does not exist.
const ALLOWED: &[(&str, &[&str])] = &[
    ("units", &[]),
    // Named draws, and what luck alone can do.
    ("chance", &[]),
    // Which pages come on which day: places in the book and seconds, nothing else.
    ("plan", &[]),
    ("optics", &["units"]),
    ("colour", &["units"]),
    ("diagnostics", &[]),
    // Features keep the place in the spec that asked for them.
    ("scene", &["units", "diagnostics"]),
    // Checked values of the spec are those of the rooms that use them.
    // Messages of each language; numbers are written as `units` writes them, with the decimal mark changed.
    ("language", &["units"]),
    ("spec", &["units", "diagnostics", "scene", "colour", "optics", "plan", "language"]),
    // Outlines of shapes and glyphs, about their own middle: the solver and the layout need the same extents.
    ("outline", &["scene"]),
    // The author's own pictures as outlines and grids; a picture is refused in the words of the spec.
    ("artwork", &["scene", "spec"]),
    // A kind that sets letters one by one needs to know how wide they are; it still knows no offset.
    ("exercise", &["spec", "scene", "outline", "chance", "language", "units", "diagnostics"]),
    ("solve", &["scene", "outline", "optics", "chance", "units", "diagnostics"]),
    // The claim words that count in a text are those of its language.
    ("lint", &["solve", "scene", "optics", "colour", "language", "units", "diagnostics"]),
    (
        "layout",
        &[
            "spec",
            "exercise",
            "plan",
            "scene",
            "solve",
            "outline",
            "optics",
            "colour",
            "language",
            "units",
            "diagnostics",
        ],
    ),
    ("render", &["layout", "outline", "colour", "units"]),
    (
        "bundle",
        &[
            "artwork",
            "spec",
            "outline",
            "exercise",
            "plan",
            "scene",
            "solve",
            "lint",
            "layout",
            "render",
            "optics",
            "colour",
            "language",
            "units",
            "diagnostics",
        ],
    ),
    ("proof", &["optics", "colour", "units"]),
    (
        "cli",
        &[
            "bundle",
            "spec",
            "exercise",
            "scene",
            "solve",
            "lint",
            "layout",
            "render",
            "proof",
            "optics",
            "colour",
            "units",
            "diagnostics",
        ],
    ),
];

/// Where else a path may lead from some rooms: a narrower door than the table's.
const DOORS: &[(&str, &str, &[&str])] = &[("render", "layout", &["sheet", "fonts"])];

/// Which files may name a library, or a part of the standard library: beginnings of paths below `src`.
const LIBRARIES: &[(&[&str], &[&str])] = &[
    (&["clap"], &["cli/"]),
    (&["indicatif"], &["cli/"]),
    (&["krilla"], &["render/pdf"]),
    (&["tiny_skia"], &["render/png"]),
    (&["flate2"], &["render/png", "render/pdf"]),
    (&["parley"], &["layout/"]),
    (&["rand_chacha"], &["chance.rs"]),
    (&["sha2"], &["chance.rs", "bundle/shard.rs", "bundle/publish/manifest.rs"]),
    (&["skrifa"], &["outline/", "layout/", "render/pdf"]),
    // The layout cuts areas where they meet; an author's paths become one outline before they are a shape at all.
    (&["i_overlay"], &["artwork/", "layout/"]),
    (&["usvg"], &["artwork/"]),
    (&["fluent_bundle"], &["language/"]),
    (&["unic_langid"], &["language/"]),
    (&["zip"], &["bundle/publish/pack.rs"]),
    // Previews are put together from pages as pictures.
    (&["png"], &["artwork/grey.rs", "render/png", "bundle/publish/picture.rs"]),
    (&["annotate_snippets"], &["diagnostics/"]),
    (&["toml"], &["spec/", "exercise/mod.rs"]),
    (
        &["serde"],
        &[
            "bundle/report.rs",
            "bundle/chart_report.rs",
            "bundle/colour_report.rs",
            "bundle/planned.rs",
            "bundle/entry.rs",
            "bundle/grade_report.rs",
            "bundle/reading_report.rs",
            "bundle/shard.rs",
            "bundle/summary.rs",
            "bundle/json.rs",
            "bundle/compare/",
            "bundle/publish/about.rs",
            "cli/",
            "diagnostics/render.rs",
        ],
    ),
    (
        &["serde_json"],
        &[
            "bundle/report.rs",
            "bundle/chart_report.rs",
            "bundle/summary.rs",
            "bundle/shard.rs",
            "bundle/json.rs",
            "bundle/compare/",
            "bundle/error.rs",
            "cli/",
        ],
    ),
    (&["rayon"], &["bundle/run.rs", "bundle/readers.rs", "bundle/publish/mod.rs"]),
    (&["std", "fs"], &["bundle/load.rs", "bundle/orphans.rs", "bundle/pictures.rs", "bundle/write.rs"]),
    (&["std", "env"], &["cli/console.rs", "main.rs"]),
    (&["std", "time"], &["cli/"]),
    (&["std", "process"], &["cli/mod.rs", "main.rs"]),
];

/// The longest that a file may be, in lines: past this, look for the seam.
const LONGEST: usize = 600;

/// A source file: its path below `src`, its whole text, and its code without comments, texts and tests.
struct Source {
    path: String,
    text: String,
    code: String,
}

/// A path in the code, with the line where it stands.
#[derive(Debug, PartialEq, Eq)]
struct Found {
    line: usize,
    path: Vec<String>,
}

fn sources() -> Vec<Source> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let (mut folders, mut files): (Vec<PathBuf>, Vec<PathBuf>) = (vec![root.clone()], Vec::new());
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") && !path.ends_with("tests.rs") {
                files.push(path);
            }
        }
    }
    files.sort();
    files
        .into_iter()
        .map(|file| {
            let text = fs::read_to_string(&file).unwrap();
            let path = file.strip_prefix(&root).unwrap().to_str().unwrap().replace('\\', "/");
            Source { path, code: code_of(&text), text }
        })
        .collect()
}

/// The code before the tests at the foot, with comments and texts blanked out; lines keep their numbers.
fn code_of(text: &str) -> String {
    let code = text.split("\n#[cfg(test)]\nmod ").next().unwrap_or_default();
    let chars: Vec<char> = code.chars().collect();
    let (mut out, mut i) = (String::new(), 0);
    while i < chars.len() {
        let rest = &chars[i..];
        let end = match rest {
            ['/', '/', ..] => rest.iter().position(|&c| c == '\n').unwrap_or(rest.len()),
            ['r', '"', ..] => 2 + rest[2..].iter().position(|&c| c == '"').map_or(rest.len() - 2, |p| p + 1),
            ['"', ..] => text_end(rest),
            ['\'', '"', '\'', ..] | ['\'', '\\', _, '\'', ..] => {
                rest.iter().skip(2).position(|&c| c == '\'').unwrap() + 3
            }
            _ => 0,
        };
        if end == 0 {
            out.push(chars[i]);
            i += 1;
        } else {
            out.extend(rest[..end].iter().map(|&c| if c == '\n' { '\n' } else { ' ' }));
            i += end;
        }
    }
    out
}

/// One past the closing quote of the text that begins here.
fn text_end(chars: &[char]) -> usize {
    let mut i = 1;
    while i < chars.len() && chars[i] != '"' {
        i += if chars[i] == '\\' { 2 } else { 1 };
    }
    (i + 1).min(chars.len())
}

/// Every path in the code that begins with the word `root`, with groups written out: `root::{a, b::c}`.
fn paths(code: &str, root: &str) -> Vec<Found> {
    let mut found = Vec::new();
    for (start, _) in code.match_indices(root) {
        let (before, after) = (&code[..start], &code[start + root.len()..]);
        let word = |c: char| c.is_alphanumeric() || c == '_';
        let begins = !before.ends_with(|c: char| word(c) || c == ':' || c == '.');
        let used = before.trim_end().ends_with("use") && after.starts_with([';', ' ']);
        if begins && (used || after.starts_with("::")) {
            let line = before.matches('\n').count() + 1;
            let mut tails = Vec::new();
            tree(after.strip_prefix("::").unwrap_or_default(), Vec::new(), &mut tails);
            found.extend(tails.into_iter().map(|path| Found { line, path }));
        }
    }
    found
}

/// Reads one path or group after `::`; returns what follows it.
fn tree<'a>(code: &'a str, mut path: Vec<String>, out: &mut Vec<Vec<String>>) -> &'a str {
    let mut rest = code.trim_start();
    loop {
        if let Some(group) = rest.strip_prefix('{') {
            rest = group.trim_start();
            while !rest.starts_with('}') && !rest.is_empty() {
                rest = tree(rest, path.clone(), out).trim_start();
                rest = rest.strip_prefix(',').unwrap_or(rest).trim_start();
            }
            return rest.strip_prefix('}').unwrap_or(rest);
        }
        let end = rest.find(|c: char| !(c.is_alphanumeric() || c == '_' || c == '*')).unwrap_or(rest.len());
        if end == 0 {
            // Nothing that a path holds: step over it, or a group would be read for ever.
            let step = rest.chars().next().map_or(0, char::len_utf8);
            out.push(path);
            return if rest.starts_with(['}', ',']) { rest } else { &rest[step..] };
        }
        path.push(rest[..end].to_owned());
        rest = &rest[end..];
        match rest.strip_prefix("::") {
            Some(more) => rest = more.trim_start(),
            None => break,
        }
    }
    // `name as other`
    let alias = rest.trim_start().strip_prefix("as ");
    out.push(path);
    alias.map_or(rest, |a| a.trim_start().trim_start_matches(|c: char| c.is_alphanumeric() || c == '_'))
}

/// The module that a file holds: `render/svg/data.rs` is `render`, `svg`, `data`.
fn module(path: &str) -> Vec<String> {
    let stem = path.trim_end_matches(".rs");
    let stem = stem.strip_suffix("/mod").unwrap_or(stem);
    stem.split('/').filter(|part| *part != "lib").map(str::to_owned).collect()
}

/// Every path of a file from the root of the crate: written with `crate::` or climbing with `super::`.
fn edges(source: &Source) -> Vec<Found> {
    let mut found = paths(&source.code, "crate");
    let module = module(&source.path);
    for Found { line, path } in paths(&source.code, "super") {
        let climbs = 1 + path.iter().take_while(|part| *part == "super").count();
        let Some(kept) = module.len().checked_sub(climbs) else { continue };
        let path = module[..kept].iter().chain(&path[climbs - 1..]).cloned().collect();
        found.push(Found { line, path });
    }
    found
}

/// Fails with every complaint at once.
fn none(complaints: &[String]) {
    assert!(complaints.is_empty(), "\n{}\n", complaints.join("\n"));
}

#[test]
fn rooms_use_only_the_rooms_that_the_table_allows() {
    let mut complaints = Vec::new();
    for source in sources().iter().filter(|s| s.path != "main.rs") {
        let Some(room) = module(&source.path).first().cloned() else { continue };
        let Some((_, allowed)) = ALLOWED.iter().find(|(name, _)| *name == room) else {
            complaints.push(format!("src/{}: `{room}` is no room of the table", source.path));
            continue;
        };
        for Found { line, path } in edges(source) {
            let Some(other) = path.first() else { continue };
            if *other != room && *other != "*" && !allowed.contains(&other.as_str()) {
                complaints.push(format!("src/{}:{line}: `{room}` may not use `{other}`", source.path));
            }
            let door = DOORS.iter().find(|(from, to, _)| *from == room && to == other);
            if let (Some((.., parts)), Some(part)) = (door, path.get(1))
                && !parts.contains(&part.as_str())
            {
                complaints.push(format!("src/{}:{line}: `{room}` may not use `{other}::{part}`", source.path));
            }
        }
    }
    none(&complaints);
}

#[test]
fn formats_never_see_one_another() {
    const FORMATS: [&str; 3] = ["pdf", "png", "svg"];
    let mut complaints = Vec::new();
    for source in sources() {
        let module = module(&source.path);
        let [room, format, ..] = module.as_slice() else { continue };
        if room != "render" {
            continue;
        }
        for Found { line, path } in edges(&source) {
            if path.first().is_some_and(|p| p == "render")
                && path.get(1).is_some_and(|p| FORMATS.contains(&p.as_str()) && p != format)
            {
                complaints.push(format!("src/{}:{line}: `{format}` may not use `{}`", source.path, path[1]));
            }
        }
    }
    none(&complaints);
}

#[test]
fn libraries_are_named_only_where_they_belong() {
    let mut complaints = Vec::new();
    for source in sources() {
        for (library, places) in LIBRARIES {
            let (root, tail) = library.split_first().unwrap();
            let allowed = places.iter().any(|place| source.path.starts_with(place));
            for Found { line, path } in paths(&source.code, root) {
                if !allowed && path.iter().map(String::as_str).take(tail.len()).eq(tail.iter().copied()) {
                    complaints.push(format!("src/{}:{line}: `{}` has no place here", source.path, library.join("::")));
                }
            }
        }
    }
    none(&complaints);
}

#[test]
fn every_file_says_what_it_is_for() {
    let silent = |s: &Source| !s.text.starts_with("//! ") || s.text.starts_with("//! Room `");
    none(&sources().iter().filter(|s| silent(s)).map(|s| format!("src/{}: no `//!`", s.path)).collect::<Vec<_>>());
}

#[test]
fn no_file_is_too_long() {
    let long = |s: &Source| Some(s.text.lines().count()).filter(|lines| LONGEST < *lines);
    let complaint = |s: &Source| long(s).map(|lines| format!("src/{}: {lines} lines, limit {LONGEST}", s.path));
    none(&sources().iter().filter_map(complaint).collect::<Vec<_>>());
}

#[test]
fn main_is_a_shell() {
    let main = sources().into_iter().find(|s| s.path == "main.rs").unwrap();
    assert!(main.text.lines().count() <= 40);
}

/// The reader of the source itself: what it must and must not find.
#[test]
fn paths_are_read_from_code_alone() {
    let read = |code: &str, root: &str| -> Vec<String> {
        paths(&code_of(code), root).into_iter().map(|f| format!("{}:{}", f.line, f.path.join("::"))).collect()
    };
    assert_eq!(
        read("use crate::units::{Mm, Pt};\nfn f(x: crate::scene::At) {}", "crate"),
        ["1:units::Mm", "1:units::Pt", "2:scene::At"]
    );
    assert_eq!(read("use crate::{\n    a::{self, b as c},\n    d::*,\n};", "crate"), ["1:a::self", "1:a::b", "1:d::*"]);
    assert!(read("// crate::spec\n/// [`x`](crate::spec)\nlet s = \"crate::spec \\\" crate::a\";", "crate").is_empty());
    assert!(read("let c = '\"'; // crate::spec\npub(crate) fn f() {}", "crate").is_empty());
    assert!(read("fn f() {}\n\n#[cfg(test)]\nmod tests {\n    use crate::spec::x;\n}", "crate").is_empty());
    assert_eq!(read("use std::{fs, io};\nlet x = std::env::args();", "std"), ["1:fs", "1:io", "2:env::args"]);
    assert_eq!(read("crate::render::clap::x(); use clap;", "clap"), ["1:"]);
}

#[test]
fn climbing_paths_are_followed_to_the_root() {
    let at = |path: &str, code: &str| -> Vec<String> {
        let source = Source { path: path.to_owned(), text: String::new(), code: code_of(code) };
        edges(&source).into_iter().map(|f| f.path.join("::")).collect()
    };
    assert_eq!(at("optics/mod.rs", "use super::spec::X;"), ["spec::X"]);
    assert_eq!(at("optics/geometry.rs", "use super::super::spec::X;"), ["spec::X"]);
    assert_eq!(
        at("render/svg/data.rs", "use super::super::png::Y; use super::glyphs;"),
        ["render::png::Y", "render::svg::glyphs"]
    );
}
