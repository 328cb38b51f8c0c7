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
ppi = 200

[[edition]]
id = "swapped"
page = "A4"
ground = "white"
ppi = 200
glasses = { left = "red", right = "cyan" }

[[edition]]
id = "black"
page = "16:9"
ground = "black"
ppi = 200
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

/// Renders the set with these lines; the folder of its editions.
fn rendered(base: &str) -> (TempDir, PathBuf) {
    let home = set_with(base, |text| text);
    let out = home.path().join("out");
    let ended = Command::new(env!("CARGO_BIN_EXE_depthpress"))
        .args(["render", "--quiet", "--out"])
        .args([&out, &home.path().to_owned()])
        .stdin(Stdio::null())
        .output()
        .unwrap();
    assert!(ended.status.success(), "{}", String::from_utf8_lossy(&ended.stderr));
    (home, out.join("quay"))
}

/// A picture in red, green and blue, at 200 dots an inch.
struct Picture {
    width: usize,
    bytes: Vec<u8>,
    samples: usize,
}

const PPI: f64 = 200.0;

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
    let scale = PPI as f32 / 96.0;
    let size = [tree.size().width(), tree.size().height()].map(|px| (px * scale).round() as u32);
    let mut pixmap = tiny_skia::Pixmap::new(size[0], size[1]).unwrap();
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut pixmap.as_mut());
    Picture { width: size[0] as usize, bytes: pixmap.take(), samples: 4 }
}

fn pdf(path: &Path, page: usize) -> Picture {
    let number = page.to_string();
    let ended = Command::new("pdftoppm").args(["-r", "200", "-f", &number, "-l", &number]).arg(path).output();
    let ended = ended.expect("pdftoppm of the package poppler-utils");
    let head = ended.stdout.iter().enumerate().filter(|(_, byte)| **byte == b'\n').nth(2).unwrap().0 + 1;
    let words = String::from_utf8_lossy(&ended.stdout[..head]).into_owned();
    let width = words.split_whitespace().nth(1).unwrap().parse().unwrap();
    Picture { width, bytes: ended.stdout[head..].to_vec(), samples: 3 }
}

/// What an eye sees of the art: the middle of its ink, page mm, and how much there is, mm².
#[derive(Debug, Clone, Copy)]
struct Ink {
    at: [f64; 2],
    area: f64,
}

/// Looks at a box of a page through a filter: on either ground an eye's ink differs from it in the light that its filter
/// passes, and the other eye's does not. The red filter passes the first channel, cyan the second and third.
fn seen(picture: &Picture, filter: &str, ground: u8, [x0, y0, x1, y1]: [f64; 4]) -> Ink {
    let channel = if filter == "red" { 0 } else { 1 };
    let dots = |mm: f64| (mm / 25.4 * PPI).round() as usize;
    let (mut sum, mut x_sum, mut y_sum) = (0.0, 0.0, 0.0);
    for (y, x) in (dots(y0)..dots(y1)).flat_map(|y| (dots(x0)..dots(x1)).map(move |x| (y, x))) {
        let at = (y * picture.width + x) * picture.samples;
        let ink = f64::from(picture.bytes[at + if picture.samples < 3 { 0 } else { channel }].abs_diff(ground)) / 255.0;
        sum += ink;
        x_sum += ink * (x as f64 + 0.5);
        y_sum += ink * (y as f64 + 0.5);
    }
    let mm = 25.4 / PPI;
    Ink { at: [x_sum / sum * mm, y_sum / sum * mm], area: sum * mm * mm }
}

/// The art fields of A4 and of a screen page, page mm: nothing but art stands there.
const A4_ART: [f64; 4] = [15.0, 46.0, 195.0, 166.0];
const WIDE_ART: [f64; 4] = [10.0, 33.0, 190.0, 153.0];

/// What both eyes see of every exercise page of an edition, left and right.
fn both_eyes(folder: &Path, edition: &str, format: &str) -> Vec<(String, [Ink; 2])> {
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
                _ => pdf(&folder.join("quay.pdf"), page["number"].as_u64().unwrap() as usize),
            };
            let eyes = glasses.each_ref().map(|filter| seen(&picture, filter, ground, art));
            (page["id"].as_str().unwrap().to_owned(), eyes)
        })
        .collect()
}

/// The promise of the design for all three formats, mm.
const TOLERANCE: f64 = 0.05;

/// Toward moves the left eye's picture to the right and the right eye's to the left, by half of 12 mm each; the right eye's
/// lies higher, by half of 4 mm each.
fn moved_as_asked(edition: &str, format: &str) {
    let ((_a, without), (_b, with)) = (rendered(""), rendered(BASE));
    let (without, with) = (both_eyes(&without, edition, format), both_eyes(&with, edition, format));
    assert_eq!(without.len(), 3);
    for ((id, a), (other, b)) in without.iter().zip(&with) {
        assert_eq!(id, other);
        for (eye, [dx, dy]) in [(0, [6.0, 2.0]), (1, [-6.0, -2.0])] {
            let moved = [0, 1].map(|axis| b[eye].at[axis] - a[eye].at[axis]);
            println!("{edition} {format} {id} {eye}: {moved:.4?}, area {:.2} to {:.2}", a[eye].area, b[eye].area);
            let off = (moved[0] - dx).abs().max((moved[1] - dy).abs());
            assert!(off < TOLERANCE, "{edition} {format} {id} eye {eye}: moved by {moved:?}, not by {dx}, {dy}");
        }
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
}

/// The formats agree dot by dot: where an overlap were missing, an eye would lose ink in the vector formats alone.
#[test]
fn formats_agree_on_a_base() {
    let (_home, folder) = rendered(BASE);
    for edition in ["white", "black"] {
        for ((id, a), (_, b)) in both_eyes(&folder, edition, "png").iter().zip(both_eyes(&folder, edition, "svg")) {
            for (a, b) in a.iter().zip(b) {
                println!("{edition} {id}: {:.2} against {:.2} mm²", a.area, b.area);
                assert!((a.at[0] - b.at[0]).hypot(a.at[1] - b.at[1]) < TOLERANCE, "{edition} {id}: {a:?} {b:?}");
            }
        }
    }
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
                    all.contains("Depths, counted from the base: target-1 2 pd toward. From your eyes: page 40 cm."),
                    "{all}"
                );
            }
        }
    }
}

#[test]
fn the_report_names_the_base_and_check_marks_ride_on_it() {
    let (_home, folder) = rendered(BASE);
    let report: Value = serde_json::from_slice(&fs::read(folder.join("white/report.json")).unwrap()).unwrap();
    let viewer = &report["viewer"];
    assert_eq!((&viewer["base_pd"], &viewer["base_vertical_pd"]), (&3.0.into(), &1.0.into()));
    assert_eq!(viewer["set_by"], "the harbour clinic");
    let page = |id: &str| report["pages"].as_array().unwrap().iter().find(|page| page["id"] == id).unwrap();
    for mark in page("glasses-check")["targets"].as_array().unwrap() {
        assert_eq!((&mark["parallax_mm"], &mark["demand_pd"]), (&(-12.0).into(), &3.0.into()));
    }
    // 2 pd toward, and the base.
    assert_eq!(page("lamp")["targets"][0]["demand_pd"], 5.0);
    let without: Value =
        serde_json::from_slice(&fs::read(rendered("").1.join("white/report.json")).unwrap_or_default())
            .unwrap_or_default();
    assert!(without["viewer"].get("base_pd").is_none());
}

/// The marks of the glasses check are measured: the bar for the left eye and the wedge for the right.
#[test]
fn check_marks_move_as_asked() {
    let ((_a, without), (_b, with)) = (rendered(""), rendered(BASE));
    // From below the line over the picture to above the names under it.
    let art = [15.0, 30.0, 195.0, 95.0];
    let eyes = |folder: &Path| {
        let picture = png(&folder.join("white/png/005-glasses-check.png"));
        ["cyan", "red"].map(|filter| seen(&picture, filter, 255, art))
    };
    let (a, b) = (eyes(&without), eyes(&with));
    // The row of marks is 4 mm narrower from mark to mark: the middle of bar and ring goes 2 mm in, of ring and wedge too.
    let narrower = 12.0 / 3.0;
    for (eye, dy) in [(0, 2.0), (1, -2.0)] {
        assert!((b[eye].at[1] - a[eye].at[1] - dy).abs() < TOLERANCE, "{a:?} {b:?}");
        assert!((b[eye].area - a[eye].area).abs() < 0.01 * a[eye].area, "{narrower} {a:?} {b:?}");
    }
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
