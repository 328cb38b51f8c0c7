//! Colours from spec to files: what is written of glasses, medium and inks arrives on the pages and in the reports.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::{Command, Output};

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::{Loaded, load};
use depthpress::colour::{Filter, FilterModel, Glasses, Medium, NamedScreen, Pins, Screen, Srgb8};
use depthpress::spec::{Edition, MediumSource};
use serde_json::Value;
use tempfile::TempDir;

use crate::render_vector::inflated;

const HEAD: &str = r#"[set]
id = "quay"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["lamp.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]
"#;

const LAMP: &str = "[exercise]\nkind = \"hold\"\ntitle = \"Lamp\"\n[[target]]\nshape = \"ring\"\nsize = \"40 mm\"\ndepth = \
                    \"2 pd toward\"\n";

/// A set with these tables, and one edition with these keys.
fn set(tables: &str, edition: &str, files: &[(&str, &str)]) -> TempDir {
    let dir = tempfile::tempdir().unwrap();
    let glasses = if tables.contains("[glasses]") { "" } else { "[glasses]\nleft = \"cyan\"\nright = \"red\"\n" };
    let edition = format!("[[edition]]\nid = \"a4\"\npage = \"A4\"\nground = \"white\"\nppi = 72\n{edition}\n");
    let text = format!("{HEAD}{glasses}{tables}\n{edition}");
    for (name, text) in [("set.toml", text.as_str()), ("lamp.toml", LAMP)].iter().chain(files) {
        let path = dir.path().join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
    dir
}

fn loaded(dir: &TempDir) -> Loaded {
    let loaded = load(dir.path()).unwrap();
    let problems: Vec<_> = loaded.diagnostics.iter().map(|d| &d.message).collect();
    assert_eq!(problems, Vec::<&String>::new());
    loaded
}

fn edition(tables: &str, keys: &str, files: &[(&str, &str)]) -> Edition {
    loaded(&set(tables, keys, files)).set.unwrap().editions.remove(0)
}

fn depthpress(dir: &Path, args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_depthpress")).current_dir(dir).args(args).output().unwrap()
}

fn json(path: &Path) -> Value {
    serde_json::from_slice(&fs::read(path).unwrap()).unwrap()
}

/// A line each 10 nm from 400 to 700 nm.
fn table(row: impl Fn(u32) -> String) -> String {
    (40..=70).map(|i| format!("{}, {}\n", i * 10, row(i * 10))).collect()
}

/// 80 and 4 per cent for the left filter, 2 and 90 for the right one, below and from 600 nm on.
fn pair() -> String {
    format!("nm, left, right\n# an invented pair\n{}", table(|nm| if nm < 600 { "80, 2" } else { "4, 90" }.to_owned()))
}

#[test]
fn every_filter_word_means_itself() {
    for filter in Filter::ALL {
        let other = if filter == Filter::Red { Filter::Cyan } else { Filter::Red };
        let glasses = format!("[glasses]\nleft = \"{}\"\nright = \"{}\"\n", filter.name(), other.name());
        assert_eq!(edition(&glasses, "", &[]).glasses, Glasses::ideal(filter, other));
    }
}

#[test]
fn leaks_arrive_as_shares() {
    let glasses = "[glasses]\nleft = \"cyan\"\nright = \"red\"\nleak = { left = \"4 %\", right = \"12.5 %\" }\n";
    let read = edition(glasses, "", &[]).glasses;
    assert_eq!(read.left, FilterModel::Leak { colour: Filter::Cyan, leak: 0.04 });
    assert_eq!(read.right, FilterModel::Leak { colour: Filter::Red, leak: 0.125 });
}

#[test]
fn measured_filters_arrive_for_the_set_and_for_an_edition() {
    let own = "glasses = { left = \"cyan\", right = \"red\", transmittance = \"filters/pair.csv\" }";
    let shared = "[glasses]\nleft = \"cyan\"\nright = \"red\"\ntransmittance = \"filters/pair.csv\"\n";
    let text = pair();
    let files = [("filters/pair.csv", text.as_str())];
    for read in [edition("", own, &files), edition(shared, "", &files)] {
        let FilterModel::Measured { colour: Filter::Cyan, transmittance: left } = read.glasses.left else { panic!() };
        let FilterModel::Measured { colour: Filter::Red, transmittance: right } = read.glasses.right else { panic!() };
        let at = |spectrum: &depthpress::colour::Spectrum, nm: f64| spectrum.points().find(|p| p.0 == nm).unwrap().1;
        assert_eq!((at(&left, 500.0), at(&left, 650.0)), (0.8, 0.04));
        assert_eq!((at(&right, 500.0), at(&right, 650.0)), (0.02, 0.9));
        // Between rows on a straight line, outside the rows as at their ends.
        assert!((at(&left, 595.0) - 0.42).abs() < 1e-12 && (at(&left, 390.0) - 0.8).abs() < 1e-12);
    }
}

#[test]
fn media_arrive_by_name_and_by_file() {
    let unsaid = edition("", "", &[]).colour;
    assert_eq!(
        (unsaid.source, unsaid.medium),
        (MediumSource::Unsaid, Medium::Screen(Screen::named(NamedScreen::Ideal)))
    );
    for name in NamedScreen::ALL {
        let read = edition("", &format!("medium = \"screen\"\nscreen = \"{}\"", name.name()), &[]).colour;
        assert_eq!(
            (read.source, read.medium),
            (MediumSource::Screen(name.name().into()), Medium::Screen(Screen::named(name)))
        );
    }
    let text = table(|nm| {
        if nm < 500 {
            "0, 0, 1"
        } else if nm < 600 {
            "0, 2, 0"
        } else {
            "3, 0, 0"
        }
        .to_owned()
    });
    let read = edition("", "medium = \"screen\"\nscreen = \"lamp.csv\"", &[("lamp.csv", &text)]).colour;
    assert_eq!(read.source, MediumSource::Screen("lamp.csv".into()));
    let Medium::Screen(screen) = read.medium else { panic!() };
    assert_ne!(screen, Screen::named(NamedScreen::Ideal));
    let print = |keys: &str, files: &[(&str, &str)]| edition("", &format!("medium = \"print\"\n{keys}"), files).colour;
    let Medium::Print(built_in) = print("", &[]).medium else { panic!() };
    let Medium::Print(led) = print("lamp = \"LED\"", &[]).medium else { panic!() };
    assert_ne!(built_in, led);
    let solids = "name, X, Y, Z\npaper, 81, 84, 70\nC, 13, 19, 43\nM, 28, 14, 12\nY, 61, 67, 6\nM+Y, 27, 14, 2\nC+M, 5, 4, 15\n\
                  K, 2, 2, 1.6\n";
    let Medium::Print(own) = print("solids = \"press.csv\"", &[("press.csv", solids)]).medium else { panic!() };
    assert_ne!(built_in, own);
}

#[test]
fn inks_of_an_edition_stand_in_for_those_of_the_set() {
    let table = "[inks]\nleft = \"#fe0102\"\nghost = \"3 %\"\n";
    let of_set = edition(table, "", &[]).colour;
    assert_eq!((of_set.wishes.pins.left, of_set.wishes.ghost), (Some(Srgb8([254, 1, 2])), 0.03));
    let own = edition(
        table,
        "inks = { ground = \"#FFEEEE\", accept_ghost = { limit = \"20 %\", reason = \"none other at hand\" } }",
        &[],
    );
    let pins = Pins { ground: Some(Srgb8([255, 238, 238])), ..Pins::default() };
    assert_eq!((own.colour.wishes.pins, own.colour.wishes.ghost), (pins, 0.02));
    let accepted = own.colour.accepted.unwrap();
    assert_eq!((accepted.limit, accepted.reason.as_str()), (0.2, "none other at hand"));
}

#[test]
fn pinned_inks_are_on_the_pages_and_in_the_report() {
    let dir = set("", "inks = { left = \"#ee1122\" }\nformats = [\"svg\"]", &[]);
    let out = depthpress(dir.path(), &["render", ".", "--quiet"]);
    assert!(out.status.success(), "{out:?}");
    let folder = dir.path().join("out/quay/a4");
    let report = json(&folder.join("report.json"));
    assert_eq!(report["edition"]["inks"]["left"], "#ee1122");
    let traded = &report["edition"]["colour"]["traded"];
    assert!(traded.to_string().contains("the left ink is the author's"), "{traded}");
    let pages =
        fs::read_dir(folder.join("svg")).unwrap().map(|entry| fs::read_to_string(entry.unwrap().path()).unwrap());
    let lamp = pages.into_iter().find(|page| page.contains("Lamp") && page.contains("#ee1122"));
    assert!(lamp.is_some_and(|page| !page.contains("#ff0000")));
}

/// Filters that leak a quarter: refused, unless the author accepts it with a reason, which the report keeps.
#[test]
fn a_strong_ghost_stops_the_run_unless_it_is_accepted() {
    let glasses = "[glasses]\nleft = \"cyan\"\nright = \"red\"\nleak = { left = \"25 %\", right = \"25 %\" }\n";
    let keys = "medium = \"screen\"\nformats = [\"svg\"]\n";
    let refused = set(glasses, keys, &[]);
    let out = depthpress(refused.path(), &["render", "."]);
    assert_eq!(out.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&out.stderr).contains("error[E-GHOST]"), "{out:?}");
    assert!(!refused.path().join("out").exists());
    let reason = "only these glasses are at hand";
    let accepted = format!("{keys}inks = {{ accept_ghost = {{ limit = \"30 %\", reason = \"{reason}\" }} }}");
    let accepted = set(glasses, &accepted, &[]);
    let out = depthpress(accepted.path(), &["render", "."]);
    assert_eq!(out.status.code(), Some(0), "{out:?}");
    assert!(String::from_utf8_lossy(&out.stderr).contains("warning[W-GHOST]"), "{out:?}");
    let colour = &json(&accepted.path().join("out/quay/a4/report.json"))["edition"]["colour"];
    assert_eq!((&colour["accepted"]["reason"], &colour["verdict"]), (&reason.into(), &"refused".into()));
}

#[test]
fn the_command_inks_tells_what_the_report_tells_and_leaves_the_pages_alone() {
    let keys = "medium = \"print\"\nformats = [\"svg\"]\ninks = { tinted_ground = true }";
    let dir = set("", keys, &[]);
    let run = |args: &[&str]| {
        let out = depthpress(dir.path(), args);
        assert!(out.status.success(), "{out:?}");
        String::from_utf8(out.stdout).unwrap()
    };
    let told: Value = serde_json::from_str(&run(&["inks", ".", "--json"])).unwrap();
    let folder = dir.path().join("out/quay/a4");
    let mut names: Vec<_> =
        fs::read_dir(folder.join("inks")).unwrap().map(|e| e.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    assert!(names.contains(&"inks.pdf".to_owned()) && names.contains(&"report.json".to_owned()), "{names:?}");
    assert!(names.iter().any(|n| n.ends_with(".svg")) && names.iter().any(|n| n.ends_with(".png")), "{names:?}");
    // A whole run after it takes the place of the folder; inks after that goes beside the pages.
    run(&["render", ".", "--quiet"]);
    let report = json(&folder.join("report.json"));
    let text = run(&["inks", ".", "--quiet"]);
    assert_eq!(json(&folder.join("report.json")), report);
    let one = &told["editions"][0];
    assert_eq!(one["inks"], report["edition"]["inks"]);
    for key in ["glasses", "medium", "left", "right", "imbalance", "ghost", "verdict", "traded", "recipes"] {
        assert_eq!(one["colour"][key], report["edition"]["colour"][key], "{key}");
    }
    assert!(
        text.contains("edition a4: cyan left, red right, white ground, print `fogra39l` under lamp `d50`"),
        "{text}"
    );
    let missing = depthpress(dir.path(), &["inks", ".", "--edition", "a5"]);
    assert_eq!(missing.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&missing.stderr).contains("did you mean `a4`?"), "{missing:?}");
}

/// The operands of an operator of a page's content, each once.
fn operands<const N: usize>(content: &str, operator: &str) -> BTreeSet<[i32; N]> {
    let words: Vec<&str> = content.split_ascii_whitespace().collect();
    let found = words.windows(N + 1).filter(|w| w[N] == operator);
    let step = |word: &str| word.parse::<f64>().map(|share| (share * 255.0).round() as i32);
    found.map(|w| std::array::from_fn(|i| step(w[i]).unwrap_or(-1))).collect()
}

/// The operator `k` sets DeviceCMYK, `rg` and `g` DeviceRGB and DeviceGray, `scn` any other space: ISO 32000-1, table
/// 74. The recipes are written out: full cyan against full magenta and yellow on bare paper, words in black alone.
#[test]
fn the_pdf_for_a_print_shop_has_process_inks_alone() {
    let accept = "accept_ghost = { limit = \"100 %\", reason = \"to look at the inks\" }";
    let pins = "left = \"#ff0000\", right = \"#00ffff\", both = \"#000000\", ground = \"#ffffff\"";
    let keys = format!("medium = \"print\"\ninks = {{ {pins}, {accept} }}");
    let made = |more: &str| {
        let dir = set("", &format!("{keys}\n{more}"), &[]);
        let out = depthpress(dir.path(), &["render", ".", "--quiet"]);
        assert!(out.status.success(), "{out:?}");
        let folder = dir.path().join("out/quay/a4");
        (fs::read(folder.join("quay.pdf")).unwrap(), json(&folder.join("report.json")), dir)
    };
    let (pdf, report, process) = made("cmyk = true");
    let content = inflated(&pdf);
    let inks = operands::<4>(&content, "k");
    for recipe in [[0, 255, 255, 0], [255, 0, 0, 0], [0, 0, 0, 255]] {
        assert!(inks.contains(&recipe), "{recipe:?} in {inks:?}");
    }
    // A tone of words is 65 % of black, not a mix of the other three.
    assert!(inks.contains(&[0, 0, 0, 166]), "{inks:?}");
    assert!(inks.iter().all(|[c, m, _, k]| *c != 255 || (*m, *k) == (0, 0)), "{inks:?}");
    assert!(operands::<3>(&content, "rg").is_empty() && operands::<1>(&content, "g").is_empty());
    assert!(operands::<3>(&content, "scn").is_empty());
    let colour = &report["edition"]["colour"];
    assert_eq!((&colour["cmyk"], &colour["pdf"]), (&true.into(), &"PDF/UA-1".into()));
    assert!(report["defaults"].to_string().contains("N-CMYK"), "{}", report["defaults"]);
    let archival = |pdf: &[u8]| String::from_utf8_lossy(pdf).contains("pdfaid:part");
    let (plain, report, screen) = made("cmyk = false");
    assert!(archival(&plain) && !archival(&pdf));
    assert!(operands::<4>(&inflated(&plain), "k").is_empty());
    assert!(report["edition"]["colour"].get("cmyk").is_none() && report["edition"]["colour"].get("pdf").is_none());
    assert_eq!(made("").0, plain);
    // The other formats are the same with process inks and without.
    for name in ["svg", "png"] {
        let files = |dir: &TempDir| {
            let folder = dir.path().join("out/quay/a4").join(name);
            let mut files: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
            files.sort();
            files.iter().map(|path| fs::read(path).unwrap()).collect::<Vec<_>>()
        };
        assert!(!files(&process).is_empty() && files(&process) == files(&screen), "{name}");
    }
}

/// Feeding the numbers of the ghost page back re-inks the set.
#[test]
fn leaks_re_ink_an_edition() {
    let leak = "[glasses]\nleft = \"cyan\"\nright = \"red\"\nleak = { left = \"6 %\", right = \"10 %\" }\n";
    let keys = "medium = \"screen\"\ninks = { tinted_ground = true }";
    let plan = Inked::of(&edition(leak, keys, &[])).plan;
    let plain = Inked::of(&edition("", keys, &[])).plan;
    assert_ne!(plan.inks, plain.inks);
    assert!(plan.ghost() <= 0.02 && plain.ghost() == 0.0, "{plan:?}");
}
