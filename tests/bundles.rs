//! The command `bundle` from outside: what is in a bundle, that it is the same wherever and however it is made, that a changed
//! digit is caught, and that a broken set leaves an earlier bundle alone.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::Read as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::OnceLock;

use serde_json::Value;
use sha2::{Digest, Sha256};
use tempfile::TempDir;

const SET: &str = r#"[set]
id = "slipway"
title = "Slipway"
version = "1.2.0"
date = "2026-05-04"
language = "en"
exercises = ["tide-post.toml", "bollard.toml", "gull.toml", "odd.toml"]
order = "free"
contact = "slipway@example.org"

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[licence]
name = "Free to print for one household"
text = "Print as many copies as you like for your own home."
credits = ["Drawings: the harbour club"]

[[release]]
version = "1.2.0"
date = "2026-05-04"
changes = ["The gull came in."]

[[release]]
version = "1.1.0"
date = "2026-03-01"
changes = ["A bollard was put right."]

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 72
formats = ["pdf", "svg"]

[[edition]]
id = "screen"
page = "16:9"
ground = "black"
ppi = 72
formats = ["png"]
glasses = { left = "red", right = "cyan" }
"#;

const TIDE_POST: &str = r#"[exercise]
kind = "hold"
title = "Tide post"

[[target]]
shape = "square"
size = "40 mm"
depth = { from = "1 pd toward", to = "3 pd toward", levels = 5 }
"#;

const BOLLARD: &str = r#"[exercise]
kind = "jump"
title = "Bollards"

[[target]]
shape = "ring"
size = "30 mm"
at = ["-40 mm", "0 mm"]
depth = "1 pd toward"
label = "near"

[[target]]
shape = "ring"
size = "30 mm"
at = ["40 mm", "0 mm"]
depth = "1 pd away"
label = "far"
"#;

/// A folder with the set `slipway` in it.
struct Yard(TempDir);

impl Yard {
    fn new() -> Self {
        let yard = Self(TempDir::new().unwrap());
        yard.build("slipway");
        yard
    }

    /// Puts the set into a folder.
    fn build(&self, folder: &str) {
        let gallery = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery");
        let read = |name: &str| fs::read(gallery.join(name)).unwrap();
        fs::create_dir_all(self.path(folder).join("art")).unwrap();
        let files: [(&str, Vec<u8>); 7] = [
            ("set.toml", SET.into()),
            ("tide-post.toml", TIDE_POST.into()),
            ("bollard.toml", BOLLARD.into()),
            ("gull.toml", read("gull-over-the-wires.toml")),
            ("odd.toml", read(ODD)),
            ("art/gull.svg", read("art/gull.svg")),
            ("art/lighthouse.svg", read("art/lighthouse.svg")),
        ];
        for (name, bytes) in files {
            fs::write(self.path(folder).join(name), bytes).unwrap();
        }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }

    /// Replaces a text in a file, which must hold it.
    fn change(&self, name: &str, from: &str, to: &str) {
        let text = fs::read_to_string(self.path(name)).unwrap();
        assert!(text.contains(from), "{from}");
        fs::write(self.path(name), text.replacen(from, to, 1)).unwrap();
    }

    fn run(&self, args: &[&str]) -> Ended {
        self.run_where(args, &[])
    }

    fn run_where(&self, args: &[&str], env: &[(&str, &str)]) -> Ended {
        let mut command = Command::new(env!("CARGO_BIN_EXE_depthpress"));
        command.current_dir(self.0.path()).arg("bundle").args(args).envs(env.iter().copied()).stdin(Stdio::null());
        let output = command.output().unwrap();
        let text = |bytes| String::from_utf8(bytes).unwrap();
        Ended { code: output.status.code(), out: text(output.stdout), err: text(output.stderr) }
    }

    /// Every file below a folder, by its name from there.
    fn tree(&self, folder: &str) -> BTreeMap<String, Vec<u8>> {
        let (root, mut files) = (self.path(folder), BTreeMap::new());
        let mut folders = vec![root.clone()];
        while let Some(folder) = folders.pop() {
            for entry in fs::read_dir(folder).into_iter().flatten() {
                let path = entry.unwrap().path();
                if path.is_dir() {
                    folders.push(path);
                } else {
                    let name = path.strip_prefix(&root).unwrap().to_str().unwrap().replace('\\', "/");
                    files.insert(name, fs::read(&path).unwrap());
                }
            }
        }
        files
    }

    /// The bundle of the set as it is above, made once for all tests that only look at it.
    fn made() -> &'static BTreeMap<String, Vec<u8>> {
        static MADE: OnceLock<BTreeMap<String, Vec<u8>>> = OnceLock::new();
        MADE.get_or_init(|| {
            let yard = Self::new();
            let tree = yard.bundle();
            // Nothing of the run is left beside it.
            assert_eq!(fs::read_dir(yard.path("out")).unwrap().count(), 1);
            tree
        })
    }

    /// The bundle, made as usual.
    fn bundle(&self) -> BTreeMap<String, Vec<u8>> {
        self.run_where(&["slipway", "--jobs", "2"], &[("TZ", "UTC"), ("LANG", "C")]).ends(0);
        self.tree(BUNDLE)
    }
}

/// A page with a question, so that the book has an answer key.
const ODD: &str = "loose-float.toml";
const BUNDLE: &str = "out/slipway-1.2.0";

struct Ended {
    code: Option<i32>,
    out: String,
    err: String,
}

impl Ended {
    /// Ended with this code; gives what was said.
    #[track_caller]
    fn ends(&self, code: i32) -> &str {
        assert_eq!(self.code, Some(code), "{}{}", self.err, self.out);
        &self.err
    }
}

fn text<'a>(tree: &'a BTreeMap<String, Vec<u8>>, name: &str) -> &'a str {
    std::str::from_utf8(&tree[name]).unwrap()
}

/// A text without its line ends.
fn flowing(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A file in a zip, by its name below the folder in it.
fn unpacked(tree: &BTreeMap<String, Vec<u8>>, zip: &str, name: &str) -> String {
    let mut archive = zip::ZipArchive::new(std::io::Cursor::new(&tree[&format!("{zip}.zip")])).unwrap();
    let mut text = String::new();
    archive.by_name(&format!("{zip}/{name}")).unwrap().read_to_string(&mut text).unwrap();
    text
}

fn json(tree: &BTreeMap<String, Vec<u8>>, name: &str) -> Value {
    serde_json::from_slice(&tree[name]).unwrap()
}

fn hex(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Width and height of a PNG. Source: ISO/IEC 15948, 11.2.2: the header comes first.
fn size(png: &[u8]) -> (u32, u32) {
    let number = |at: usize| u32::from_be_bytes(png[at..at + 4].try_into().unwrap());
    (number(16), number(20))
}

#[test]
fn a_bundle_holds_everything_that_a_reader_needs() {
    let tree = Yard::made();
    for name in [
        "README.txt",
        "LICENSE",
        "CHANGELOG.md",
        "MANIFEST.sha256",
        "report.json",
        "contact-sheet.png",
        "previews/0-cover.png",
        "editions/a4/slipway.pdf",
        "editions/a4/report.json",
        "editions/screen/report.json",
        "editions/screen/png/001-cover.png",
        "slipway-1.2.0-a4.zip",
        "slipway-1.2.0-screen.zip",
        "slipway-1.2.0.zip",
    ] {
        assert!(tree.contains_key(name), "{name}: {:?}", tree.keys());
    }
    let readme = text(tree, "README.txt");
    for words in [
        "Version 1.2.0, 2026-05-04",
        "a4       A4    white   cyan      red        English",
        "screen   16:9  black   red       cyan       English",
        "editions/EDITION/slipway.pdf",
        "100 %",
        "Stop at once if you feel pain",
        "Flesch-Kincaid grade level",
        "Free to print for one household",
        "slipway@example.org",
        "sha256sum -c MANIFEST.sha256",
    ] {
        assert!(readme.contains(words), "{words}\n{readme}");
    }
    let glasses = "Two-colour glasses, one of these pairs, as your edition says: cyan before the left eye, red before the \
                   right eye; or red before the left eye, cyan before the right eye. ";
    assert!(flowing(readme).contains(glasses), "{readme}");
    assert!(!readme.contains("This bundle has "), "{readme}");
    assert_eq!(json(tree, "report.json")["whole"], true);
    assert!(readme.lines().all(|line| line.chars().count() <= 80), "{readme}");
    for name in ["README.txt", "LICENSE", "CHANGELOG.md"] {
        assert!(!text(tree, name).contains(['{', '}']), "{}", text(tree, name));
    }
    let licence = text(tree, "LICENSE");
    assert!(
        licence.contains("for your own home") && licence.contains("SIL OPEN FONT LICENSE Version 1.1"),
        "{licence}"
    );
    let changes = text(tree, "CHANGELOG.md");
    assert!(changes.find("1.2.0 (2026-05-04)\n\n- The gull") < changes.find("1.1.0 (2026-03-01)"), "{changes}");
}

#[test]
fn the_editions_of_a_bundle_are_those_of_render_and_the_spec_is_as_written() {
    let (yard, tree) = (Yard::new(), Yard::made());
    let program = env!("CARGO_BIN_EXE_depthpress");
    let render = Command::new(program).current_dir(yard.0.path()).args(["-q", "render", "slipway"]).status().unwrap();
    assert!(render.success());
    let below = |folder: &str| -> BTreeMap<String, Vec<u8>> {
        let named = |(name, bytes): (&String, &Vec<u8>)| Some((name.strip_prefix(folder)?.to_owned(), bytes.clone()));
        tree.iter().filter_map(named).collect()
    };
    assert_eq!(below("editions/"), yard.tree("out/slipway"));
    assert_eq!(below("spec/"), yard.tree("slipway"));
}

/// The form that `sha256sum` writes: 64 digits of 0-9 and a-f, two blanks, the name; every file but itself, sorted.
#[test]
fn the_manifest_names_every_file_with_its_digest() {
    let tree = Yard::made();
    let lines: Vec<String> = text(tree, "MANIFEST.sha256").lines().map(str::to_owned).collect();
    let others = tree.iter().filter(|(name, _)| *name != "MANIFEST.sha256");
    assert_eq!(lines, others.map(|(name, bytes)| format!("{}  {name}", hex(bytes))).collect::<Vec<_>>());
}

#[test]
fn zips_hold_the_files_sorted_stored_and_without_a_time() {
    let tree = Yard::made();
    let common = ["README.txt", "LICENSE", "CHANGELOG.md"];
    for (zip, edition) in [
        ("slipway-1.2.0-a4.zip", Some("a4")),
        ("slipway-1.2.0-screen.zip", Some("screen")),
        ("slipway-1.2.0.zip", None),
    ] {
        let mut archive = zip::ZipArchive::new(std::io::Cursor::new(&tree[zip])).unwrap();
        let root = format!("{}/", zip.strip_suffix(".zip").unwrap());
        let mut names = Vec::new();
        let mut manifest = String::new();
        let mut listed = String::new();
        for index in 0..archive.len() {
            let mut entry = archive.by_index(index).unwrap();
            let name = entry.name().unwrap().strip_prefix(&root).unwrap().to_owned();
            let mut bytes = Vec::new();
            entry.read_to_end(&mut bytes).unwrap();
            let stored = entry.compression() == zip::CompressionMethod::Stored;
            assert_eq!(stored, name.ends_with(".pdf") || name.ends_with(".png"), "{name}");
            let time = entry.last_modified().unwrap();
            let date = (time.year(), time.month(), time.day(), time.hour(), time.minute(), time.second());
            assert_eq!(date, (1980, 1, 1, 0, 0, 0));
            assert_eq!(entry.unix_mode().map(|mode| mode & 0o777), Some(0o644));
            if name == "MANIFEST.sha256" {
                manifest = String::from_utf8(bytes).unwrap();
            } else {
                // An edition alone has a README of its own.
                let own = edition.is_some() && name == "README.txt";
                assert_eq!(bytes == tree[&name], !own, "{name}");
                listed += &format!("{}  {name}\n", hex(&bytes));
                names.push(name);
            }
        }
        assert_eq!(manifest, listed);
        let is_in = |name: &str| match edition {
            Some(id) => name.starts_with(&format!("editions/{id}/")) || common.contains(&name),
            None => !name.ends_with(".zip") && name != "MANIFEST.sha256",
        };
        let expected: Vec<&String> = tree.keys().filter(|name| is_in(name)).collect();
        assert_eq!(names.iter().collect::<Vec<_>>(), expected, "{zip}");
    }
}

/// Only its row, its pair of glasses and its files, every one of which is there.
#[test]
fn the_readme_of_an_edition_alone_tells_of_that_edition() {
    let tree = Yard::made();
    for (id, (there, gone), row) in [
        ("a4", (&["slipway.pdf", "svg/"][..], "png/"), "    a4       A4    white   cyan      red        English"),
        ("screen", (&["png/"][..], "slipway.pdf"), "    screen   16:9  black   red       cyan       English"),
    ] {
        let readme = unpacked(tree, &format!("slipway-1.2.0-{id}"), "README.txt");
        let other = if id == "a4" { "screen " } else { "a4 " };
        assert!(readme.contains(row) && !readme.contains(&format!("    {other}")), "{readme}");
        for file in there {
            assert!(readme.contains(&format!("- editions/{id}/{file}: ")), "{file}\n{readme}");
            assert!(tree.keys().any(|name| name.starts_with(&format!("editions/{id}/{file}"))));
        }
        for word in ["EDITION", ".zip", "spec/", "one of these pairs", gone] {
            assert!(!readme.contains(word), "{word}\n{readme}");
        }
        assert_eq!(readme.matches("before the left eye").count(), 1, "{readme}");
        assert_eq!(readme.contains("How to print"), id == "a4", "{readme}");
    }
}

#[test]
fn previews_show_the_cover_and_some_exercises_and_no_answer() {
    let tree = Yard::made();
    let report = json(tree, "report.json");
    let pages = json(tree, "editions/a4/report.json");
    let of_kind = |id: &str| pages["pages"].as_array().unwrap().iter().find(|p| p["id"] == id).unwrap()["kind"].clone();
    // The book has an answer key, or this test would show nothing.
    assert_eq!(of_kind("answers"), "back");
    let shown: Vec<&str> = report["previews"].as_array().unwrap().iter().map(|p| p["page"].as_str().unwrap()).collect();
    assert_eq!(shown[0], "cover");
    assert!((3..=6).contains(&(shown.len() - 1)), "{shown:?}");
    for id in &shown[1..] {
        assert!(!["front", "back"].contains(&of_kind(id).as_str().unwrap()), "{id}");
    }
    let files: BTreeSet<&str> = tree.keys().map(String::as_str).filter(|n| n.starts_with("previews/")).collect();
    let named = report["previews"].as_array().unwrap().iter().map(|p| p["file"].as_str().unwrap());
    assert_eq!(files, named.collect());
    for file in files {
        assert_eq!(size(&tree[file]), (1600, 1200), "{file}");
    }
}

/// The page on a preview is not the page as it is: words stand across it, and it is smaller than on a screen at true size.
#[test]
fn a_preview_is_reduced_and_marked() {
    let yard = Yard::new();
    yard.change("slipway/set.toml", "[licence]", "[publish]\npreviews = [\"bollard\"]\n\n[licence]");
    let plain = yard.bundle();
    yard.change("slipway/set.toml", "previews", "watermark = \"Quay\"\npreviews");
    let marked = yard.bundle();
    let name = "previews/1-bollard.png";
    assert_eq!(plain.keys().filter(|name| name.starts_with("previews/")).count(), 2);
    assert_ne!(plain[name], marked[name]);
    // The page is the part without the colour of the card at its edges: 210 mm at 80 pixels an inch at most.
    let image = decode(&plain[name]);
    let card = image[0][0];
    let row = &image[400];
    let across = row.iter().filter(|pixel| **pixel != card).count();
    assert!(across <= 664, "{across}");
    // Under the page stand the words; a card without them would be bare.
    assert!(image[1060..].iter().flatten().any(|pixel| *pixel != card));
    // Greys across a blank part of the page, at its upper right: the watermark.
    let corner = |image: &[Vec<[u8; 3]>]| -> BTreeSet<[u8; 3]> {
        image[150..300].iter().flat_map(|row| row[600..1000].iter().copied()).collect()
    };
    assert!(corner(&image).iter().any(|[r, g, b]| r == g && g == b && (190..230).contains(r)));
}

fn decode(png: &[u8]) -> Vec<Vec<[u8; 3]>> {
    let mut reader = png::Decoder::new(std::io::Cursor::new(png)).read_info().unwrap();
    let mut bytes = vec![0; reader.output_buffer_size().unwrap()];
    let info = reader.next_frame(&mut bytes).unwrap();
    assert_eq!(info.color_type, png::ColorType::Rgb);
    let pixels: Vec<[u8; 3]> = bytes.chunks_exact(3).map(|p| [p[0], p[1], p[2]]).collect();
    pixels.chunks_exact(info.width as usize).map(<[_]>::to_vec).collect()
}

#[test]
fn the_same_set_gives_the_same_bytes_wherever_and_however_it_is_made() {
    let yard = Yard::new();
    let first = Yard::made();
    yard.build("yard/elsewhere/boat");
    for name in yard.tree("yard/elsewhere/boat").keys() {
        let file = fs::File::options().write(true).open(yard.path("yard/elsewhere/boat").join(name)).unwrap();
        let long_ago = std::time::SystemTime::UNIX_EPOCH + std::time::Duration::from_secs(1_000_000_000);
        file.set_modified(long_ago).unwrap();
    }
    let boat = yard.path("yard/elsewhere/boat");
    let args = [boat.to_str().unwrap(), "--jobs", "1", "--out", "another/place"];
    yard.run_where(&args, &[("TZ", "Pacific/Auckland"), ("LANG", "de_DE.UTF-8"), ("LC_ALL", "de_DE.UTF-8")]).ends(0);
    let second = yard.tree("another/place/slipway-1.2.0");
    assert_eq!(first.keys().collect::<Vec<_>>(), second.keys().collect::<Vec<_>>());
    for (name, bytes) in first {
        assert!(*bytes == second[name], "{name}");
    }
}

#[test]
fn a_frozen_bundle_catches_one_changed_digit() {
    let yard = Yard::new();
    let told = yard.run(&["slipway", "--frozen"]);
    assert!(told.ends(2).contains("`slipway/MANIFEST.sha256`") && told.err.contains("--freeze"), "{}", told.err);
    assert!(!yard.path("out").exists());
    yard.run(&["slipway", "--freeze"]).ends(0);
    let manifest = fs::read_to_string(yard.path("slipway/MANIFEST.sha256")).unwrap();
    assert_eq!(manifest, text(&yard.tree(BUNDLE), "MANIFEST.sha256"));
    // The manifest is no file of the set, so that it does not change itself.
    yard.run(&["slipway", "--frozen"]).ends(0);
    fs::remove_dir_all(yard.path("out")).unwrap();
    yard.change("slipway/tide-post.toml", "3 pd", "2 pd");
    // A page less, too: a file that is missing.
    yard.change("slipway/set.toml", "\"bollard.toml\", ", "");
    let told = yard.run(&["slipway", "--frozen"]);
    let err = told.ends(1);
    for words in ["differs  spec/tide-post.toml: ", "missing  spec/bollard.toml: ", " there, ", " now", "--freeze"] {
        assert!(err.contains(words), "{words}\n{err}");
    }
    assert!(!err.contains("spec/gull.toml"), "{err}");
    assert!(!yard.path("out").exists());
    // The list in words is cut off, that for programs is not; one digit is enough for it.
    yard.change("slipway/set.toml", "\"tide-post.toml\", ", "\"tide-post.toml\", \"bollard.toml\", ");
    let told = yard.run(&["slipway", "--frozen", "--json"]);
    told.ends(1);
    let report: Value = serde_json::from_str(&told.out).unwrap();
    let changes = report["bundles"][0]["changes"].as_array().unwrap();
    let change = changes.iter().find(|change| change["name"] == "spec/tide-post.toml").unwrap();
    let old = manifest.lines().find_map(|line| line.strip_suffix("  spec/tide-post.toml")).unwrap();
    let new = hex(&fs::read(yard.path("slipway/tide-post.toml")).unwrap());
    assert_eq!((change["committed"].as_str(), change["made"].as_str()), (Some(old), Some(new.as_str())));
}

#[test]
fn a_manifest_that_is_none_is_told() {
    let yard = Yard::new();
    fs::write(yard.path("slipway/MANIFEST.sha256"), "nonsense\n").unwrap();
    let told = yard.run(&["slipway", "--frozen"]);
    assert!(told.ends(2).contains("line 1 of `slipway/MANIFEST.sha256`"), "{}", told.err);
}

#[test]
fn a_broken_set_leaves_the_earlier_bundle_alone() {
    let yard = Yard::new();
    let before = yard.bundle();
    yard.change("slipway/bollard.toml", "1 pd away", "90 pd away");
    assert!(yard.run(&["slipway"]).ends(1).contains("nothing was written"));
    assert!(yard.tree(BUNDLE) == before);
    // Put right, and with a file less: the old folder goes as a whole.
    yard.change("slipway/bollard.toml", "90 pd away", "1 pd away");
    yard.change("slipway/set.toml", "\"bollard.toml\", ", "");
    let after = yard.bundle();
    assert!(!after.contains_key("spec/bollard.toml"));
    assert_eq!(fs::read_dir(yard.path("out")).unwrap().count(), 1);
}

#[test]
fn a_folder_that_is_no_bundle_is_not_replaced() {
    let yard = Yard::new();
    fs::create_dir_all(yard.path(BUNDLE)).unwrap();
    fs::write(yard.path(BUNDLE).join("letter.txt"), "mine").unwrap();
    assert!(yard.run(&["slipway"]).ends(2).contains("is not replaced"));
    assert_eq!(yard.tree(BUNDLE).len(), 1);
}

#[test]
fn one_edition_alone_makes_a_bundle_with_previews_of_the_first() {
    let yard = Yard::new();
    let told = yard.run(&["slipway", "--edition", "screan"]);
    assert!(told.ends(2).contains("did you mean `screen`?"), "{}", told.err);
    // The whole bundle of the same version stays as it is.
    fs::create_dir_all(yard.path(BUNDLE)).unwrap();
    fs::write(yard.path(BUNDLE).join("report.json"), "{}").unwrap();
    let told = yard.run(&["slipway", "--edition", "screen", "--json"]);
    told.ends(0);
    assert_eq!(serde_json::from_str::<Value>(&told.out).unwrap()["bundles"][0]["whole"], false);
    assert_eq!(yard.tree(BUNDLE).len(), 1);
    let tree = yard.tree("out/slipway-1.2.0-only-screen");
    assert_eq!(json(&tree, "report.json")["whole"], false);
    assert!(text(&tree, "README.txt").contains("This bundle has 1 of the 2 editions of the book."));
    assert!(!tree.keys().any(|name| name.contains("a4")), "{:?}", tree.keys());
    let zips: Vec<_> = tree.keys().filter(|name| name.ends_with(".zip")).collect();
    assert_eq!(zips, ["slipway-1.2.0-only-screen.zip", "slipway-1.2.0-screen.zip"]);
    assert_eq!(json(&tree, "report.json")["zip"], "slipway-1.2.0-only-screen.zip");
    assert!(tree["slipway-1.2.0-screen.zip"] == Yard::made()["slipway-1.2.0-screen.zip"], "the edition is the same");
    // An A4 page stands upright: the first edition, which has other glasses, is the one that is shown.
    let image = decode(&tree["previews/0-cover.png"]);
    assert_eq!(image[600][450], image[0][0]);
    for flag in ["--frozen", "--freeze"] {
        yard.run(&["slipway", "--edition", "screen", flag]).ends(2);
    }
}

/// The author's words for an edition in English of a set in French.
const ENGLISH: &str = r#"[set]
title = "The slipway"

[licence]
text = "Print as many copies as you like for your own home."
credits = ["Drawings: the harbour club"]

[release]
"1.2.0" = ["The gull came in."]
"1.1.0" = ["A bollard was put right."]

[exercise.tide-post]
title = "Tide post"
"#;

#[test]
fn texts_are_in_the_language_of_the_set() {
    let yard = Yard::new();
    yard.change("slipway/set.toml", "language = \"en\"", "language = \"fr\"");
    yard.change("slipway/set.toml", ", \"bollard.toml\", \"gull.toml\", \"odd.toml\"", "");
    yard.change("slipway/set.toml", "formats = [\"png\"]", "formats = [\"pdf\"]\nlanguage = \"en\"");
    yard.change("slipway/set.toml", "[licence]", "[[translation]]\nlanguage = \"en\"\nfile = \"en.toml\"\n\n[licence]");
    fs::write(yard.path("slipway/en.toml"), ENGLISH).unwrap();
    let tree = yard.bundle();
    let readme = text(&tree, "README.txt");
    assert!(
        flowing(readme).contains("cyan devant l’œil gauche")
            && flowing(readme).contains("de Kandel et Moles, les mots")
    );
    assert!(readme.contains("editions/ÉDITION/"), "{readme}");
    // And for an edition in another language once more in that.
    let other = text(&tree, "README-en.txt");
    assert!(other.starts_with("The slipway\n") && flowing(other).contains("cyan before the left eye"), "{other}");
    assert!(tree.contains_key("spec/en.toml"));
    let archive = |name: &str| zip::ZipArchive::new(std::io::Cursor::new(tree[name].clone())).unwrap();
    let has = |zip: &str, name: &str| archive(&format!("{zip}.zip")).index_for_name(&format!("{zip}/{name}")).is_some();
    assert!(has("slipway-1.2.0-screen", "README-en.txt") && !has("slipway-1.2.0-screen", "README.txt"));
    assert!(has("slipway-1.2.0-a4", "README.txt") && !has("slipway-1.2.0-a4", "README-en.txt"));
}

/// The files of a set are in its bundle, and what is known of readers is for nobody else.
#[test]
fn a_set_with_readers_is_not_bundled() {
    let yard = Yard::new();
    yard.change("slipway/set.toml", "[licence]", "[[reader]]\nid = \"w-017\"\nipd = \"61 mm\"\n\n[licence]");
    let told = yard.run(&["slipway"]);
    assert!(told.ends(2).contains("set `slipway` tells of 1 reader, "), "{}", told.err);
    assert!(!yard.path("out").exists());
}
