//! A base for an eye turn, from the spec to the page: both pictures of every page moved as wholes, by what was asked, in each
//! format; the limits count it; every page says so; and kinds that tell of other distances are refused.
//!
//! A prism dioptre moves by 1 cm at 1 m: at 40 cm 3 pd are 12 mm and 1 pd is 4 mm. Source: `[ISO13666]`.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::layout::sheet::{Furniture, Node, Role, words};
use serde_json::Value;
use tempfile::TempDir;

const SET: &str = r#"[set]
id = "quay"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["lamp.toml", "mast.toml", "star.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]
BASE

[glasses]
left = "cyan"
right = "red"

[gate]
set_by = "the harbour clinic"

[[edition]]
id = "white"
page = "A4"
ground = "white"
ppi = 254

[[edition]]
id = "swapped"
page = "A4"
ground = "white"
ppi = 254
glasses = { left = "red", right = "cyan" }

[[edition]]
id = "black"
page = "16:9"
ground = "black"
ppi = 254
"#;

const LAMP: &str = r#"[exercise]
kind = "hold"
title = "Lamp"

[[target]]
shape = "ring"
size = "40 mm"
depth = "2 pd toward"
"#;

const MAST: &str = r#"[exercise]
kind = "nonius"
title = "Mast"
form = "upright"
step = "4 mm"
"#;

const STAR: &str = r#"[exercise]
kind = "hidden"
title = "Star"

[dots]
width = "100 mm"
height = "80 mm"
ground = "300 arcsec away"
cue = 3

[[figure]]
label = "star"
shape = "star"
size = "50 mm"
depth = "300 arcsec toward"
"#;

const BASE: &str = "base = \"3 pd toward\"\nbase_vertical = { amount = \"1 pd\", higher = \"right\" }";

/// The set with these lines in `[viewer]`, changed as asked.
fn set_with(base: &str, change: impl Fn(String) -> String) -> TempDir {
    let home = tempfile::tempdir().unwrap();
    fs::write(home.path().join("set.toml"), change(SET.replace("BASE", base))).unwrap();
    for (name, text) in [("lamp.toml", LAMP), ("mast.toml", MAST), ("star.toml", STAR)] {
        fs::write(home.path().join(name), text).unwrap();
    }
    home
}

fn prepared(base: &str, change: impl Fn(String) -> String) -> Prepared {
    prepare(load(set_with(base, change).path()).unwrap(), None)
}

/// Renders an edition of the set with these lines; the folder of its editions.
fn rendered(base: &str, edition: &str, formats: &str) -> (TempDir, PathBuf) {
    let home = set_with(base, |text| text);
    let out = home.path().join("out");
    let ended = Command::new(env!("CARGO_BIN_EXE_depthpress"))
        .args(["render", "--quiet", "--edition", edition, "--format", formats, "--out"])
        .args([&out, &home.path().to_owned()])
        .stdin(Stdio::null())
        .output()
        .unwrap();
    assert!(ended.status.success(), "{}", String::from_utf8_lossy(&ended.stderr));
    (home, out.join("quay"))
}

/// Dots a millimetre, at 254 an inch: whole millimetres are whole dots, so that pictures can be laid over one another.
const DOTS: usize = 10;

/// A picture in red, green and blue, or in grey.
struct Picture {
    width: usize,
    bytes: Vec<u8>,
    samples: usize,
}

fn png(path: &Path) -> Picture {
    let mut decoder = png::Decoder::new(std::io::BufReader::new(fs::File::open(path).unwrap()));
    decoder.set_transformations(png::Transformations::EXPAND);
    let mut reader = decoder.read_info().unwrap();
    let mut bytes = vec![0; reader.output_buffer_size().unwrap()];
    let info = reader.next_frame(&mut bytes).unwrap();
    Picture { width: info.width as usize, bytes, samples: info.color_type.samples() }
}

fn svg(path: &Path) -> Picture {
    let tree = usvg::Tree::from_data(&fs::read(path).unwrap(), &usvg::Options::default()).unwrap();
    let scale = 254.0 / 96.0;
    let size = [tree.size().width(), tree.size().height()].map(|px| (px * scale).round() as u32);
    let mut pixmap = tiny_skia::Pixmap::new(size[0], size[1]).unwrap();
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut pixmap.as_mut());
    Picture { width: size[0] as usize, bytes: pixmap.take(), samples: 4 }
}

fn pdf(path: &Path, page: u64) -> Picture {
    let number = page.to_string();
    let ended = Command::new("pdftoppm").args(["-r", "254", "-f", &number, "-l", &number]).arg(path).output();
    let ended = ended.expect("pdftoppm of the package poppler-utils");
    let head = ended.stdout.iter().enumerate().filter(|(_, byte)| **byte == b'\n').nth(2).unwrap().0 + 1;
    let words = String::from_utf8_lossy(&ended.stdout[..head]).into_owned();
    let width = words.split_whitespace().nth(1).unwrap().parse().unwrap();
    Picture { width, bytes: ended.stdout[head..].to_vec(), samples: 3 }
}

/// What an eye gets of a box of a page: the ink of each dot, row by row.
struct Seen {
    width: usize,
    ink: Vec<u8>,
}

/// A box of a page, mm: left, top, right, bottom.
type Area = [usize; 4];

/// Looks through a filter: on either ground an eye's ink differs from it in the light that its filter passes, and the
/// other eye's does not. The red filter passes the first channel, cyan the second and third.
fn seen(picture: &Picture, filter: &str, ground: u8, [x0, y0, x1, y1]: Area) -> Seen {
    let channel = if filter == "red" || picture.samples < 3 { 0 } else { 1 };
    let row = |y: usize| (x0 * DOTS..x1 * DOTS).map(move |x| (y * picture.width + x) * picture.samples + channel);
    let ink = (y0 * DOTS..y1 * DOTS).flat_map(row).map(|at| picture.bytes[at].abs_diff(ground)).collect();
    Seen { width: (x1 - x0) * DOTS, ink }
}

impl Seen {
    /// The ink of a dot; there is none beyond the box.
    fn at(&self, x: isize, y: isize) -> u8 {
        match (usize::try_from(x), usize::try_from(y)) {
            (Ok(x), Ok(y)) if x < self.width => self.ink.get(y * self.width + x).copied().unwrap_or(0),
            _ => 0,
        }
    }

    /// The middle of its ink, dots.
    fn middle(&self) -> [f64; 2] {
        let (mut sum, mut at) = (0.0, [0.0; 2]);
        for (index, ink) in self.ink.iter().enumerate().filter(|(_, ink)| 0 < **ink) {
            let ink = f64::from(*ink);
            sum += ink;
            at[0] += ink * (index % self.width) as f64;
            at[1] += ink * (index / self.width) as f64;
        }
        at.map(|moment| moment / sum)
    }

    /// How much this and another picture, moved by so many dots, differ, in every eleventh dot.
    fn differs(&self, other: &Seen, [dx, dy]: [isize; 2]) -> u64 {
        let mut sum = 0;
        for (index, ink) in self.ink.iter().enumerate().step_by(11) {
            let (x, y) = ((index % self.width) as isize, (index / self.width) as isize);
            sum += u64::from(ink.abs_diff(other.at(x + dx, y + dy)));
        }
        sum
    }

    /// By how many dots another picture must have moved against this one: where the two differ least, looked for about
    /// where the middles of their ink say. A dot is 0.1 mm, so that a whole number of them is right within 0.05 mm.
    fn moved(&self, other: &Seen) -> [isize; 2] {
        let (a, b) = (self.middle(), other.middle());
        let about = [0, 1].map(|axis| (b[axis] - a[axis]).round() as isize);
        let near = (-3..=3).flat_map(|dx| (-3..=3).map(move |dy| [about[0] + dx, about[1] + dy]));
        near.min_by_key(|by| self.differs(other, *by)).unwrap()
    }
}

/// The art fields of A4 and of a screen page: nothing but art stands there.
const A4_ART: Area = [15, 46, 195, 166];
const WIDE_ART: Area = [10, 33, 190, 153];

/// What both eyes see of every exercise page of an edition, left and right.
fn both_eyes(folder: &Path, edition: &str, format: &str) -> Vec<(String, [Seen; 2])> {
    let folder = folder.join(edition);
    let report: Value = serde_json::from_slice(&fs::read(folder.join("report.json")).unwrap()).unwrap();
    let glasses = ["left", "right"].map(|eye| report["edition"]["glasses"][eye].as_str().unwrap().to_owned());
    let (ground, art) = if edition == "black" { (0, WIDE_ART) } else { (255, A4_ART) };
    let pages = report["pages"].as_array().unwrap().iter().filter(|page| page["level"].is_number());
    pages
        .map(|page| {
            let picture = match format {
                "png" => png(&folder.join(page["png"].as_str().unwrap())),
                "svg" => svg(&folder.join(page["svg"].as_str().unwrap())),
                _ => pdf(&folder.join("quay.pdf"), page["number"].as_u64().unwrap()),
            };
            let eyes = glasses.each_ref().map(|filter| seen(&picture, filter, ground, art));
            (page["id"].as_str().unwrap().to_owned(), eyes)
        })
        .collect()
}

/// Toward moves the left eye's picture to the right and the right eye's to the left, by half of 12 mm each; the right eye's
/// lies higher, by half of 4 mm each.
const MOVED: [[isize; 2]; 2] = [[60, 20], [-60, -20]];

fn moved_as_asked(edition: &str, format: &str) {
    let ((_a, without), (_b, with)) = (rendered("", edition, format), rendered(BASE, edition, format));
    let (without, with) = (both_eyes(&without, edition, format), both_eyes(&with, edition, format));
    assert_eq!(without.len(), 3);
    for ((id, a), (other, b)) in without.iter().zip(&with) {
        assert_eq!(id, other);
        assert_eq!([0, 1].map(|eye| a[eye].moved(&b[eye])), MOVED, "{edition} {format} {id}");
    }
}

#[test]
fn pixels_of_white_pages_move_as_asked() {
    moved_as_asked("white", "png");
}

#[test]
fn pixels_of_pages_for_swapped_glasses_move_as_asked() {
    moved_as_asked("swapped", "png");
}

#[test]
fn pixels_of_black_pages_move_as_asked() {
    moved_as_asked("black", "png");
}

#[test]
fn drawings_move_as_asked() {
    moved_as_asked("white", "svg");
    moved_as_asked("black", "svg");
}

#[test]
#[ignore = "needs pdftoppm of poppler-utils"]
fn documents_move_as_asked() {
    moved_as_asked("white", "pdf");
    moved_as_asked("black", "pdf");
    formats_agree("white", "pdf");
}

/// Two formats show the same, dot by dot. Edges are smoothed in other ways, so that a dot counts where one format has full ink
/// over it and around it and the other has none: what a lost overlap looks like to its eye.
fn formats_agree(edition: &str, format: &str) {
    let (_home, folder) = rendered(BASE, edition, &format!("png,{format}"));
    for ((id, a), (_, b)) in both_eyes(&folder, edition, "png").iter().zip(both_eyes(&folder, edition, format)) {
        for (eye, (a, b)) in a.iter().zip(&b).enumerate() {
            assert_eq!(a.moved(b), [0, 0], "{edition} {id} eye {eye}");
            let around = |x: isize, y: isize| (-1..=1).flat_map(move |dx| (-1..=1).map(move |dy| (x + dx, y + dy)));
            let full = |x, y| around(x, y).all(|(x, y)| a.at(x, y) == 255);
            let none = |x, y| b.at(x, y) < 128;
            let places = (0..a.ink.len()).map(|i| ((i % a.width) as isize, (i / a.width) as isize));
            let (whole, lost) = places
                .filter(|&(x, y)| full(x, y))
                .fold((0, 0), |(whole, lost), (x, y)| (whole + 1, lost + usize::from(none(x, y))));
            println!("{edition} {format} {id} eye {eye}: {lost} of {whole} dots lost");
            assert!(1000 < whole && lost == 0, "{edition} {format} {id} eye {eye}: {lost} of {whole} dots lost");
        }
    }
}

#[test]
fn drawings_lose_no_overlap_on_a_base() {
    formats_agree("white", "svg");
    formats_agree("black", "svg");
}

fn footer(nodes: &[Node]) -> String {
    let inner = |node: &Node| match node {
        Node::Group(Role::Artifact(Furniture::Footer), inner) => Some(words(inner)),
        _ => None,
    };
    nodes.iter().filter_map(inner).collect()
}

#[test]
fn every_page_says_the_base_and_who_set_it() {
    let set = prepared(BASE, |text| text);
    let book = set.book().unwrap_or_else(|| panic!("{:?}", set.diagnostics));
    let told = "base 3 pd toward, right picture 1 pd higher, set by the harbour clinic";
    for edition in &book.set.editions {
        let laid = book.lay_out(edition, &Inked::of(edition)).unwrap();
        for sheet in &laid.sheets {
            let all = words(&sheet.nodes);
            if sheet.id == "cover" {
                assert!(
                    all.contains("Base 3 pd toward, right picture 1 pd higher, set by the harbour clinic."),
                    "{all}"
                );
            } else {
                assert!(footer(&sheet.nodes).contains(told), "{}: {}", sheet.id, footer(&sheet.nodes));
            }
            match sheet.id.as_str() {
                "cautions" => assert!(all.contains("All pictures ride on a base (3 pd toward, right picture"), "{all}"),
                "ghost-check" | "scale-check" => assert!(all.contains("This page does not ride on the base"), "{all}"),
                "glasses-check" | "lamp" | "mast" | "star" => {
                    let rides = "All of it rides on a base: 3 pd toward, right picture 1 pd higher.";
                    assert!(sheet.description.contains(rides), "{}: {}", sheet.id, sheet.description);
                }
                _ => {}
            }
            if sheet.id == "lamp" {
                assert!(
                    all.contains("Depths, counted from the base: target 1 2 pd toward. From your eyes: page 40 cm."),
                    "{all}"
                );
            }
        }
    }
}

#[test]
fn the_report_names_the_base_and_check_marks_ride_on_it() {
    let report = |base: &str| -> Value {
        let (_home, folder) = rendered(base, "white", "svg");
        serde_json::from_slice(&fs::read(folder.join("white/report.json")).unwrap()).unwrap()
    };
    let (with, without) = (report(BASE), report(""));
    let viewer = &with["viewer"];
    let base = &viewer["base"];
    assert_eq!((&base["horizontal_pd"], &base["vertical_pd"]), (&3.0.into(), &1.0.into()));
    assert_eq!(base["set_by"], "the harbour clinic");
    assert!(without["viewer"]["base"].is_null());
    let page = |id: &str| with["pages"].as_array().unwrap().iter().find(|page| page["id"] == id).unwrap();
    for mark in page("glasses-check")["targets"].as_array().unwrap() {
        assert_eq!((&mark["parallax_mm"], &mark["demand_pd"]), (&(-12.0).into(), &3.0.into()));
    }
    // 2 pd toward, and the base.
    assert_eq!(page("lamp")["targets"][0]["demand_pd"], 5.0);
}

/// The marks of the glasses check: bar and ring of the left eye, ring and wedge of the right. The ring, in the middle of
/// both, moves as the art does.
#[test]
fn the_ring_of_the_glasses_check_moves_as_asked() {
    // About the ring, which is 36 mm wide, away from bar and wedge.
    let area = [78, 33, 132, 87];
    let eyes = |base: &str| {
        let (_home, folder) = rendered(base, "white", "png");
        let picture = png(&folder.join("white/png/005-glasses-check.png"));
        ["cyan", "red"].map(|filter| seen(&picture, filter, 255, area))
    };
    let (a, b) = (eyes(""), eyes(BASE));
    assert_eq!([0, 1].map(|eye| a[eye].moved(&b[eye])), MOVED);
}

#[test]
fn limits_count_the_base() {
    let codes = |base: &str, change: &dyn Fn(String) -> String| -> Vec<(&'static str, String)> {
        prepared(base, change).diagnostics.iter().map(|d| (d.code, d.message.clone())).collect()
    };
    let same = |text: String| text;
    // 13 pd away are 52 mm: past the smallest ipd of 50 mm, whatever is asked.
    let found = codes("base = \"13 pd away\"", &same);
    assert!(found.iter().any(|(code, _)| *code == "E-PAST-PARALLEL"), "{found:?}");
    // 20 pd toward are 80 mm: half of it to each side, past the field for the dots of 100 mm with their frame, not the ring.
    let found = codes("base = \"20 pd toward\"", &same);
    assert!(found.iter().any(|(code, words)| *code == "W-BASE-ROOM" && words.contains("`80` mm")), "{found:?}");
    assert!(found.iter().any(|(code, words)| *code == "E-ART-FIELD" && words.contains("with the base")), "{found:?}");
}

#[test]
fn kinds_that_tell_of_other_distances_are_refused() {
    let gallery = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery");
    for (file, kind) in [("back-along-the-jetty", "walk"), ("where-is-the-float", "point")] {
        let home = set_with("base_vertical = { amount = \"0.5 pd\", higher = \"left\" }", |text| {
            text.replace("lamp.toml", &format!("{file}.toml"))
        });
        fs::copy(gallery.join(format!("{file}.toml")), home.path().join(format!("{file}.toml"))).unwrap();
        let set = prepare(load(home.path()).unwrap(), None);
        let found: Vec<_> = set.diagnostics.iter().filter(|d| d.code == "E-CONFLICT").collect();
        assert_eq!(found.len(), 1, "{:?}", set.diagnostics);
        let told = format!("a `{kind}` tells places or other distances, and `base_vertical` holds at 40 cm alone");
        assert!(found[0].message.starts_with(&told) && found[0].place.is_some(), "{:?}", found[0]);
    }
}
