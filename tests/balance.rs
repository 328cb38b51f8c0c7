//! A balance between the eyes from spec to pages: the stronger eye gets the share that was asked for, nothing moves,
//! and the other eye gets what it always gets.

use std::fs;
use std::path::Path;
use std::process::Command;

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::colour::{Filter, Glasses, Ground, Inks, Medium, NamedScreen, Screen, View, Views, Wishes, solve_inks};
use depthpress::exercise::balance::Balance;
use depthpress::layout::sheet::{Art, Node, Role, Sheet};
use depthpress::layout::{LaidOut, balance};
use depthpress::scene::Eye;
use kurbo::{BezPath, Rect, Shape as _};
use serde_json::Value;
use tempfile::TempDir;

const SET: &str = r#"[set]
id = "quay"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["lamp.toml", "rope.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[gate]
set_by = "Optometrist M. Invented"

[[edition]]
id = "paper"
page = "A4"
ground = "white"
ppi = 150
formats = ["png"]

[[edition]]
id = "screen"
page = "16:9"
ground = "black"
ppi = 96
formats = ["png"]
"#;

const ROPE: &str = r#"[exercise]
kind = "trail"
title = "Rope"

[trail]
form = "wave"
from = ["-75 mm", "0 mm"]
to = ["75 mm", "0 mm"]
waves = 2
height = "50 mm"
depths = ["1 pd away", "1 pd toward"]
"#;

/// A lamp and a rope, the lamp with these keys.
fn set(shape: &str, depth: &str, keys: &str) -> TempDir {
    let dir = tempfile::tempdir().unwrap();
    let lamp = format!(
        "[exercise]\nkind = \"hold\"\ntitle = \"Lamp\"\n{keys}\n[[target]]\nshape = \"{shape}\"\nsize = \"40 mm\"\n\
         depth = \"{depth}\"\n"
    );
    for (name, text) in [("set.toml", SET), ("lamp.toml", lamp.as_str()), ("rope.toml", ROPE)] {
        fs::write(dir.path().join(name), text).unwrap();
    }
    dir
}

fn prepared(dir: &Path) -> Prepared {
    let prepared = prepare(load(dir).unwrap(), None);
    assert!(!prepared.diagnostics.has_errors(), "{:?}", prepared.diagnostics);
    prepared
}

/// One edition, laid out.
fn laid_out(dir: &TempDir, edition: &str) -> LaidOut {
    let prepared = prepared(dir.path());
    let book = prepared.book().unwrap();
    let edition = book.set.editions.iter().find(|e| e.id == edition).unwrap();
    book.lay_out(edition, &Inked::of(edition)).unwrap()
}

fn sheet<'a>(laid: &'a LaidOut, id: &str) -> &'a Sheet {
    laid.sheets.iter().find(|s| s.id == id).unwrap()
}

fn art(nodes: &[Node]) -> Option<&Art> {
    nodes.iter().find_map(|node| match node {
        Node::Art(found) => Some(found),
        Node::Group(_, inner) => art(inner),
        _ => None,
    })
}

fn alt(nodes: &[Node]) -> Option<&str> {
    nodes.iter().find_map(|node| match node {
        Node::Group(Role::Figure { alt, .. }, _) => Some(alt.as_str()),
        Node::Group(_, inner) => alt(inner),
        _ => None,
    })
}

fn area(paths: &[BezPath]) -> f64 {
    paths.iter().map(|path| path.area()).sum()
}

fn bounds(paths: &[BezPath]) -> Vec<Rect> {
    paths.iter().map(|path| path.bounding_box()).collect()
}

const LEFT: &str = "balance = { stronger = \"left\", share = \"60 %\" }";

/// The lamp without and with a balance, on paper.
fn on_paper(shape: &str) -> [Art; 2] {
    ["", LEFT].map(|keys| {
        let laid = laid_out(&set(shape, "2 pd toward", keys), "paper");
        art(&sheet(&laid, "lamp").nodes).unwrap().clone()
    })
}

/// On paper a disc keeps its share of area by similar figures (area goes with the square of the radius); the mark
/// beside it stays whole.
#[test]
fn a_disc_on_paper_keeps_the_share_of_its_area() {
    let [whole, thin] = on_paper("disc");
    let disc = |art: &Art| art.left.iter().map(|p| p.area()).fold(0.0, f64::max);
    assert!((disc(&thin) / disc(&whole) - 0.6).abs() < 1e-3, "{} {}", disc(&thin), disc(&whole));
    assert_eq!(thin.right, whole.right);
    assert_eq!(bounds(&thin.left), bounds(&whole.left));
}

/// A ring of outer radius r and line w has the area pi w (2 r - w): the width is what the share is of.
#[test]
fn a_ring_on_paper_keeps_the_share_of_its_width() {
    let [whole, thin] = on_paper("ring");
    let ring = |art: &Art| {
        let ring = art.left.iter().find(|p| (p.bounding_box().width() - 40.0).abs() < 0.01).unwrap();
        let radius = ring.bounding_box().width() / 2.0;
        radius - (radius * radius - ring.area() / std::f64::consts::PI).sqrt()
    };
    assert!((ring(&thin) / ring(&whole) - 0.6).abs() < 1e-3, "{} {}", ring(&thin), ring(&whole));
    assert_eq!(thin.right, whole.right);
    assert_eq!(bounds(&thin.left), bounds(&whole.left));
}

#[test]
fn at_page_depth_the_eyes_get_their_own_marks_where_they_differ() {
    let at_page = |keys: &str| {
        let laid = laid_out(&set("disc", "page", keys), "paper");
        art(&sheet(&laid, "lamp").nodes).unwrap().clone()
    };
    let (same, thin) = (at_page(""), at_page(LEFT));
    let disc = std::f64::consts::PI * 400.0;
    assert!(same.flat.iter().any(|p| (p.area() - disc).abs() < 0.1));
    assert!(thin.flat.iter().all(|p| (p.area() - disc).abs() > 0.1));
    assert!(thin.right.iter().any(|p| (p.area() - disc).abs() < 0.1));
    assert!(thin.left.iter().any(|p| (p.area() - 0.6 * disc).abs() < 0.1));
}

#[test]
fn pages_of_other_exercises_stay_as_they_are() {
    for edition in ["paper", "screen"] {
        let [plain, set] = ["", LEFT].map(|keys| laid_out(&set("ring", "2 pd toward", keys), edition));
        let told = |laid: &LaidOut| {
            let of = laid.sheets.iter().filter(|s| s.id != "lamp");
            of.map(|s| format!("{s:?}")).collect::<Vec<_>>()
        };
        assert_eq!(told(&plain), told(&set));
        assert_ne!(format!("{:?}", sheet(&plain, "lamp")), format!("{:?}", sheet(&set, "lamp")));
    }
}

/// A line's width is what is thinned: a long line's area goes with it, but for its round ends.
#[test]
fn a_trail_on_paper_keeps_its_middle_line() {
    let dir = set("ring", "2 pd toward", "");
    let art_of = || art(&sheet(&laid_out(&dir, "paper"), "rope").nodes).unwrap().clone();
    let whole = art_of();
    let balanced = ROPE.replace("title", "balance = { stronger = \"right\", share = \"50 %\" }\ntitle");
    fs::write(dir.path().join("rope.toml"), balanced).unwrap();
    let thin = art_of();
    assert!(seen(&thin.left, &thin.flat) == seen(&whole.left, &whole.flat));
    let (thin, whole) = (seen(&thin.right, &thin.flat), seen(&whole.right, &whole.flat));
    let lines =
        |paths: &[BezPath]| paths.iter().filter(|p| 10.0 < p.bounding_box().height()).cloned().collect::<Vec<_>>();
    let left = area(&lines(&thin)) / area(&lines(&whole));
    assert!((left - 0.5).abs() < 0.02, "{left}");
    let middle = |paths: &[BezPath]| paths.iter().map(|p| p.bounding_box()).reduce(|a, b| a.union(b)).unwrap().center();
    assert!((middle(&thin) - middle(&whole)).hypot() < 0.02);
}

/// What an eye gets: its own paths, and those at page depth, in an order of their own.
fn seen(own: &[BezPath], flat: &[BezPath]) -> Vec<BezPath> {
    let mut paths: Vec<BezPath> = own.iter().chain(flat).cloned().collect();
    paths.sort_by_cached_key(|path| format!("{path:?}"));
    paths
}

fn step(view: &View, inks: &Inks, of: depthpress::colour::Srgb8) -> f64 {
    view.luminance(of) - view.luminance(inks.ground)
}

/// On screens the stronger eye's mark has the share of its luminance step, to what eight bits hold (one code value of
/// 255 near white is 0.9 % of the step by IEC 61966-2-1), alone and in the overlap; the other eye's ink is the same.
#[test]
fn on_screens_the_stronger_eye_keeps_the_share_of_its_luminance() {
    for screen in NamedScreen::ALL {
        for ground in [Ground::White, Ground::Black] {
            for (glasses, stronger, share) in [
                (Glasses::ideal(Filter::Cyan, Filter::Red), Eye::Left, 0.6),
                (Glasses::ideal(Filter::Cyan, Filter::Red), Eye::Right, 0.2),
                (Glasses::ideal(Filter::Red, Filter::Cyan), Eye::Left, 0.35),
                (Glasses::ideal(Filter::Green, Filter::Magenta), Eye::Right, 0.8),
            ] {
                let medium = Medium::Screen(Screen::named(screen));
                let views = Views::new(&glasses, &medium);
                let full = solve_inks(&glasses, &medium, ground, &Wishes::default()).inks;
                let inks = balance::inks(Balance { stronger, share }, &full, &views);
                let (strong, weak, own, other, full_own) = match stronger {
                    Eye::Left => (&views.left, &views.right, inks.left, inks.right, full.left),
                    Eye::Right => (&views.right, &views.left, inks.right, inks.left, full.right),
                };
                let what = format!("{screen:?} {ground:?} {stronger:?} {share}");
                let whole = step(strong, &full, full_own);
                assert!((step(strong, &full, own) / whole - share).abs() < 0.009, "{what}");
                assert!((step(strong, &full, inks.both) / whole - share).abs() < 0.018, "{what}");
                let seen = step(weak, &full, inks.both) / step(weak, &full, other);
                let before = step(weak, &full, full.both) / step(weak, &full, other);
                assert!((seen - before).abs() < 0.06, "{what}: {seen} {before}");
                let kept = Inks { left: full.left, right: full.right, both: full.both, ..inks };
                assert_eq!(kept, full, "{what}");
                assert_eq!(other, if stronger == Eye::Left { full.right } else { full.left });
            }
        }
    }
}

#[test]
fn a_screen_page_has_the_same_art_in_its_own_inks() {
    let [whole, dim] = ["", LEFT].map(|keys| laid_out(&set("disc", "page", keys), "screen"));
    let (whole, dim) = (sheet(&whole, "lamp").clone(), sheet(&dim, "lamp").clone());
    let (a, b) = (art(&whole.nodes).unwrap(), art(&dim.nodes).unwrap());
    assert_eq!((&a.left, &a.right, &a.overlap, &a.flat), (&b.left, &b.right, &b.overlap, &b.flat));
    assert_eq!((whole.inks.left.hex(), whole.inks.right.hex()), ("#00ffff".to_owned(), "#ff0000".to_owned()));
    // 60 % of the light of a channel is code value 203 by IEC 61966-2-1: 1.055 * 0.6^(1/2.4) - 0.055 = 0.798.
    let inks = [dim.inks.left, dim.inks.right, dim.inks.both, dim.inks.text].map(|ink| ink.hex());
    assert_eq!(inks, ["#00cbcb", "#ff0000", "#ffcbcb", "#ffffff"]);
}

fn depthpress(dir: &Path, args: &[&str]) {
    let out = Command::new(env!("CARGO_BIN_EXE_depthpress")).current_dir(dir).args(args).output().unwrap();
    assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stderr));
}

fn pixels(path: &Path) -> (usize, Vec<[u8; 3]>) {
    let mut decoder = ::png::Decoder::new(std::io::Cursor::new(fs::read(path).unwrap()));
    decoder.set_transformations(::png::Transformations::EXPAND);
    let mut reader = decoder.read_info().unwrap();
    let mut data = vec![0; reader.output_buffer_size().unwrap()];
    let info = reader.next_frame(&mut data).unwrap();
    (info.width as usize, data.chunks_exact(3).map(|c| [c[0], c[1], c[2]]).collect())
}

/// The pages as rendered, inside the art: of what the weaker eye sees (on white through red: the red channel) not one
/// pixel changes; the stronger eye's ink shrinks.
#[test]
fn in_rendered_pages_the_weaker_eye_sees_every_pixel_as_before() {
    let pages = ["", LEFT].map(|keys| {
        let dir = set("disc", "2 pd toward", keys);
        depthpress(dir.path(), &["render", "."]);
        let find = |edition: &str| {
            let pages = dir.path().join("out/quay").join(edition).join("png");
            let files = fs::read_dir(pages).unwrap().map(|e| e.unwrap().path());
            files.into_iter().find(|p| p.to_string_lossy().contains("lamp")).unwrap()
        };
        let report = fs::read(dir.path().join("out/quay/paper/report.json")).unwrap();
        let report: Value = serde_json::from_slice(&report).unwrap();
        let page = report["pages"].as_array().unwrap().iter().find(|p| p["id"] == "lamp").unwrap().clone();
        (pixels(&find("paper")), pixels(&find("screen")), page)
    });
    let [(paper, screen, plain), (thin, dim, told)] = &pages;
    // A band through the middle of the disc, mm, with its resolution.
    for (whole, less, ppi, (top, foot)) in [(paper, thin, 150.0, (90.0, 125.0)), (screen, dim, 96.0, (80.0, 110.0))] {
        let rows = |mm: f64| (mm / 25.4 * ppi) as usize;
        let (mut changed, mut ink) = (0, 0);
        for y in rows(top)..rows(foot) {
            for x in whole.0 / 10..whole.0 / 2 {
                let (a, b) = (whole.1[y * whole.0 + x], less.1[y * whole.0 + x]);
                assert_eq!(a[0], b[0], "{x} {y}");
                changed += usize::from(a[1] != b[1]);
                ink += usize::from(a[1] != whole.1[y * whole.0 + whole.0 / 10][1]);
            }
        }
        assert!(0 < changed && changed <= ink, "{changed} of {ink}");
    }
    assert_eq!(plain.get("balance"), None);
    let wanted = serde_json::json!({ "stronger": "left", "share": 0.6, "set_by": "Optometrist M. Invented" });
    assert_eq!(told["balance"], wanted);
    assert_eq!((&plain["targets"], &plain["marks"]), (&told["targets"], &told["marks"]));
}

#[test]
fn a_page_with_a_balance_says_so_and_has_a_frame() {
    const WORDS: &str = "Balance 60 % left eye, set by Optometrist M. Invented";
    for edition in ["paper", "screen"] {
        let laid = laid_out(&set("ring", "2 pd toward", LEFT), edition);
        let lamp = sheet(&laid, "lamp");
        let told = |sheet: &Sheet| format!("{:?}", sheet.nodes).contains("balance 60 % left eye, set by");
        assert!(told(lamp) && !told(sheet(&laid, "rope")));
        assert!(alt(&lamp.nodes).unwrap().contains(WORDS) && lamp.description.contains(WORDS));
    }
}

/// The balance that a reader can use holds on every page but those about fine depth, and those with one of their own.
#[test]
fn the_balance_of_the_reader_holds_where_pages_have_none() {
    let dir = set("ring", "1 pd toward", "balance = { stronger = \"left\", share = \"80 %\" }");
    let side = "[exercise]\nkind = \"side\"\ntitle = \"Pile\"\nquestions = 12\nstep = \"800 arcsec toward\"\n";
    fs::write(dir.path().join("pile.toml"), side).unwrap();
    let written = fs::read_to_string(dir.path().join("set.toml")).unwrap();
    let own = "ipd_range = [\"50 mm\", \"75 mm\"]\nbalance = { share = \"60 %\", stronger = \"right\" }";
    let text = written
        .replace("ipd_range = [\"50 mm\", \"75 mm\"]", own)
        .replace("\"rope.toml\"]", "\"rope.toml\", \"pile.toml\"]");
    fs::write(dir.path().join("set.toml"), &text).unwrap();
    let found = prepared(dir.path());
    let balance = |id: &str| found.pages.iter().find(|page| page.page.id == id).unwrap().page.balance;
    assert_eq!(balance("lamp"), Some(Balance { stronger: Eye::Left, share: 0.8 }));
    assert_eq!(balance("rope"), Some(Balance { stronger: Eye::Right, share: 0.6 }));
    assert_eq!(balance("pile"), None);
    fs::write(dir.path().join("set.toml"), text.replace("[gate]\nset_by = \"Optometrist M. Invented\"\n", "")).unwrap();
    let loaded = load(dir.path()).unwrap();
    let messages: Vec<_> = loaded.diagnostics.iter().map(|problem| problem.message.clone()).collect();
    let refused = "`balance` needs a `[gate]`: it is for an eye-care professional to set";
    assert!(messages.iter().any(|message| message == refused), "{messages:?}");
}
