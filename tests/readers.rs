//! Many readers: what a table and a row say, what each reader gets, and shards that join to the same bytes.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Child, Command, Stdio};

use depthpress::bundle::load::{Loaded, load};
use depthpress::spec::readers::ReaderSpec;
use serde_json::Value;
use tempfile::TempDir;

const SET: &str = r#"[set]
id = "slipway"
title = "Slipway"
version = "1.2.0"
date = "2026-05-04"
language = "en"
exercises = ["bollard.toml"]
readers = "readers.csv"

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"
leak = { left = "4 %", right = "7 %" }

[gate]
set_by = "the harbour clinic"

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
formats = ["svg"]
"#;

const BOLLARD: &str = r#"[exercise]
kind = "jump"
title = "Bollards"

[[target]]
shape = "ring"
size = "30 mm"
at = ["-40 mm", "0 mm"]
depth = { from = "10 % of range toward", to = "40 % of range toward", levels = 2 }
label = "near"

[[target]]
shape = "ring"
size = "30 mm"
at = ["40 mm", "0 mm"]
depth = "20 % of range away"
label = "far"
"#;

/// Two readers in tables; in the file, two more, of whom `quay` differs from `pier` in the glasses alone.
const TABLES: &str = r#"
[[reader]]
id = "pier"
norms = "morgan near"

[[reader]]
id = "mole"
ipd = "58 mm"
toward = { blur = "9 pd", break = "15 pd" }
away = { break = "9 pd" }
"#;

const ROWS: &str = "# ids only\nleft,id,right,norms\nred,quay,cyan,morgan near\n,reef,,\"morgan far\"\n";

/// A folder with the set in `s`.
struct Dock(TempDir);

impl Dock {
    fn new() -> Self {
        let dock = Self(TempDir::new().unwrap());
        fs::create_dir(dock.0.path().join("s")).unwrap();
        dock.put("set.toml", &format!("{SET}{TABLES}"));
        dock.put("bollard.toml", BOLLARD);
        dock.put("readers.csv", ROWS);
        dock
    }

    fn put(&self, name: &str, text: &str) {
        fs::write(self.0.path().join("s").join(name), text).unwrap();
    }

    fn load(&self) -> Loaded {
        load(&self.0.path().join("s")).unwrap()
    }

    fn start(&self, args: &[&str]) -> Child {
        let mut command = Command::new(env!("CARGO_BIN_EXE_depthpress"));
        command.current_dir(self.0.path()).args(args).stdin(Stdio::null());
        command.stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap()
    }

    /// Exit code and both streams.
    fn run(&self, args: &[&str]) -> (i32, String, String) {
        let output = self.start(args).wait_with_output().unwrap();
        let text = |bytes| String::from_utf8(bytes).unwrap();
        (output.status.code().unwrap(), text(output.stdout), text(output.stderr))
    }

    /// Runs without errors.
    #[track_caller]
    fn fine(&self, args: &[&str]) -> String {
        let (code, out, err) = self.run(args);
        assert_eq!(code, 0, "{err}");
        out
    }

    /// Every file below a folder with its bytes.
    fn tree(&self, name: &str) -> BTreeMap<String, Vec<u8>> {
        let mut files = BTreeMap::new();
        walk(&self.0.path().join(name), "", &mut files);
        files
    }

    fn json(&self, name: &str) -> Value {
        serde_json::from_slice(&fs::read(self.0.path().join(name)).unwrap()).unwrap()
    }
}

fn walk(folder: &Path, prefix: &str, files: &mut BTreeMap<String, Vec<u8>>) {
    for entry in fs::read_dir(folder).into_iter().flatten() {
        let entry = entry.unwrap();
        let name = format!("{prefix}{}", entry.file_name().to_str().unwrap());
        if entry.path().is_dir() {
            // A folder without a file is part of the tree too.
            files.insert(format!("{name}/"), Vec::new());
            walk(&entry.path(), &format!("{name}/"), files);
        } else {
            files.insert(name, fs::read(entry.path()).unwrap());
        }
    }
}

/// The demands of the targets of the exercise pages, by page and target.
fn demands(report: &Value) -> BTreeMap<(String, String), f64> {
    let text = |value: &Value| value.as_str().unwrap().to_owned();
    let pages = report["pages"].as_array().unwrap().iter().filter(|page| page["kind"] == "jump");
    let all = pages.flat_map(|page| page["targets"].as_array().unwrap().iter().map(move |target| (page, target)));
    all.map(|(page, target)| ((text(&page["id"]), text(&target["id"])), target["demand_pd"].as_f64().unwrap()))
        .collect()
}

#[test]
fn a_row_says_what_a_table_says() {
    let tables = r#"
[[reader]]
id = "a-1"
distance = "50 cm"
ipd = "60 mm"
ipd_range = ["58 mm", "62 mm"]
norms = "morgan far"
toward = { blur = "9 pd", break = "15 pd", recovery = "8 pd" }
away = { break = "9 pd", recovery = "5 pd" }
phoria = { amount = "4 pd", direction = "exo" }
near_point = "9 cm"
zone = "whole"
base = "3 pd away"
base_vertical = { amount = "1 pd", higher = "left" }
glasses = { left = "green", right = "magenta" }
language = "en"

[[reader]]
id = "a-2"
"#;
    let rows = "\u{feff}id,distance,ipd,ipd_high,ipd_low,norms,toward_blur,toward_break,toward_recovery,away_blur,\
                away_break,away_recovery,phoria,near_point,zone,base,base_vertical,left,right,language\r\n\
                a-1, 50 cm ,60 mm,62 mm,58 mm,morgan far,9 pd,15 pd,8 pd,,9 pd,5 pd,4 pd exo,\"9 cm\",whole,3 pd away,\
                1 pd left,green,magenta,en\r\n\r\n# the other one\r\na-2,,,,,,,,,,,,,,,,,,,\r\n";
    let read = |set: String, rows: &str| {
        let dock = Dock::new();
        dock.put("set.toml", &set);
        dock.put("readers.csv", rows);
        let loaded = dock.load();
        assert!(!loaded.diagnostics.has_errors(), "{:?}", loaded.diagnostics);
        let place = loaded.readers[0].place;
        loaded.readers.into_iter().map(|reader| ReaderSpec { place, ..reader }).collect::<Vec<_>>()
    };
    let of_tables = read(format!("{}{tables}", SET.replace("readers = \"readers.csv\"\n", "")), "");
    let mut of_rows = read(SET.to_owned(), rows);
    of_rows.iter_mut().for_each(|reader| reader.place = of_tables[0].place);
    assert_eq!(of_tables.len(), 2);
    assert_eq!(of_tables, of_rows);
}

#[test]
fn ten_thousand_rows_are_read_and_no_more() {
    let dock = Dock::new();
    dock.put("set.toml", SET);
    let rows = |count: usize| (0..count).fold("id,ipd\n".to_owned(), |rows, i| format!("{rows}r-{i},61 mm\n"));
    dock.put("readers.csv", &rows(10_000));
    let loaded = dock.load();
    assert_eq!((loaded.readers.len(), loaded.diagnostics.has_errors()), (10_000, false));
    dock.put("readers.csv", &rows(10_003));
    let loaded = dock.load();
    let told: Vec<_> = loaded.diagnostics.iter().map(|d| d.message.as_str()).collect();
    assert_eq!(told, ["a set has at most 10000 readers"]);
}

/// The zones are the middle thirds of 13 to 17 and of 9 to 9 prism dioptres of clear vision.
/// Source of both: `[Percival1928]`; the first is the published case of the norms of `[Morgan1944]`.
#[test]
fn a_share_of_the_range_is_the_same_share_of_every_readers_own() {
    let dock = Dock::new();
    dock.fine(&["render", "--readers", "s"]);
    for (reader, toward, away) in [("pier", 7.0, 3.0), ("quay", 7.0, 3.0), ("mole", 3.0, 3.0)] {
        let demands = demands(&dock.json(&format!("out/slipway/readers/{reader}/a4/report.json")));
        let of = |page: &str, target: &str| demands[&(page.to_owned(), target.to_owned())];
        for (page, share) in [("bollard-1", 0.1), ("bollard-2", 0.4)] {
            assert!((of(page, "near") - share * toward).abs() < 1e-4, "{reader} {page}: {demands:?}");
            assert!((of(page, "far") + 0.2 * away).abs() < 1e-4, "{reader} {page}: {demands:?}");
        }
    }
    let report = dock.json("out/slipway/readers/report.json");
    let ids: Vec<_> = report["readers"].as_array().unwrap().iter().map(|reader| reader["id"].clone()).collect();
    assert_eq!(ids, ["pier", "mole", "quay", "reef"]);
    let mole = &report["readers"][1];
    assert_eq!(mole["viewer"]["ipd_range_mm"], serde_json::json!([58.0, 58.0]));
    assert_eq!(mole["viewer"]["zone"]["toward_pd"], 3.0);
    assert_eq!(mole["demand_pd"], serde_json::json!([-0.6, 1.2]));
    assert_eq!(mole["editions"][1]["report"], "mole/screen/report.json");
    assert_eq!(mole["errors"], 0);
}

#[test]
fn each_reader_has_a_folder_that_says_whose_it_is() {
    let dock = Dock::new();
    dock.fine(&["render", "--reader", "reef", "--reader", "pier", "s"]);
    let tree = dock.tree("out/slipway");
    let folders: Vec<_> = tree.keys().filter(|name| name.matches('/').count() == 3 && name.ends_with('/')).collect();
    assert_eq!(folders, ["readers/pier/a4/", "readers/pier/screen/", "readers/reef/a4/", "readers/reef/screen/"]);
    assert!(tree.contains_key("readers/reef/a4/slipway.pdf") && !tree.contains_key("readers/mole/"));
    assert_eq!(dock.json("out/slipway/readers/reef/a4/report.json")["reader"], "reef");
    let cover = String::from_utf8(tree["readers/reef/screen/svg/001-cover.svg"].clone()).unwrap();
    assert!(cover.contains("made for reader reef"), "{cover}");
    // The set's own pages are of nobody.
    assert!(!tree.contains_key("a4/"));
}

/// The art stays, the inks change sides, and so does what is known of the filters.
#[test]
fn swapped_glasses_swap_the_inks_and_keep_the_art() {
    let dock = Dock::new();
    dock.fine(&["render", "--readers", "s"]);
    for edition in ["a4", "screen"] {
        let [pier, quay] =
            ["pier", "quay"].map(|reader| dock.json(&format!("out/slipway/readers/{reader}/{edition}/report.json")));
        assert_eq!(quay["edition"]["glasses"], serde_json::json!({"left": "red", "right": "cyan"}));
        let inks = |report: &Value| report["edition"]["inks"].clone();
        let (pier_inks, quay_inks) = (inks(&pier), inks(&quay));
        assert_eq!((&pier_inks["left"], &pier_inks["right"]), (&quay_inks["right"], &quay_inks["left"]));
        assert_ne!(pier_inks["left"], pier_inks["right"]);
        let jumps = |report: &Value| {
            let pages = report["pages"].as_array().unwrap().iter().filter(|page| page["kind"] == "jump");
            pages.map(|page| [page["targets"].clone(), page["marks"].clone()]).collect::<Vec<_>>()
        };
        assert_eq!(jumps(&pier), jumps(&quay));
        assert!(!jumps(&pier).is_empty());
    }
    // The pages are the same picture in the other inks.
    let swap = |svg: &str| {
        let inks = dock.json("out/slipway/readers/pier/a4/report.json")["edition"]["inks"].clone();
        let (left, right) = (inks["left"].as_str().unwrap().to_owned(), inks["right"].as_str().unwrap().to_owned());
        svg.replace(&left, "#swap").replace(&right, &left).replace("#swap", &right)
    };
    let art = |reader: &str| {
        let path = format!("out/slipway/readers/{reader}/a4/svg/009-bollard-2.svg");
        let svg = fs::read_to_string(dock.0.path().join(path)).unwrap();
        let art = svg.lines().filter(|line| line.starts_with("<g role=\"figure\"") || line.starts_with("<g fill=\"#"));
        art.map(str::to_owned).collect::<Vec<_>>()
    };
    let swapped: Vec<_> = art("pier").iter().map(|line| swap(line)).collect();
    assert!(2 < swapped.len() && swapped == art("quay"), "the art is another one");
    assert!(art("pier") != art("quay"), "the inks are the same");
}

#[test]
fn shards_join_to_the_bytes_of_one_run() {
    let dock = Dock::new();
    dock.fine(&["render", "--readers", "s", "--jobs", "1"]);
    let whole = dock.tree("out");
    for (shards, jobs) in [(1, "3"), (2, "1"), (3, "2"), (3, "5")] {
        let out = format!("out-{shards}-{jobs}");
        let common = ["render", "--readers", "s", "--jobs", jobs, "--out", &out];
        // The last one first: their order is nobody's business.
        for shard in (1..=shards).rev() {
            dock.fine(&[&common[..], &["--shard", &format!("{shard}/{shards}")]].concat());
        }
        let parts = dock.tree(&out).into_keys().filter(|name| name.contains("report.part-")).count();
        assert_eq!(parts, shards);
        dock.fine(&[&common[..], &["--merge"]].concat());
        assert!(dock.tree(&out) == whole, "{shards} shards, {jobs} jobs");
    }
}

#[test]
fn shards_may_run_at_the_same_time() {
    let dock = Dock::new();
    dock.fine(&["render", "--readers", "s"]);
    let shards: Vec<_> = ["1/3", "2/3", "3/3"]
        .iter()
        .map(|shard| dock.start(&["render", "--readers", "s", "--out", "side-by-side", "--shard", shard]))
        .collect();
    for shard in shards {
        let output = shard.wait_with_output().unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    }
    dock.fine(&["render", "--readers", "s", "--out", "side-by-side", "--merge"]);
    assert!(dock.tree("side-by-side") == dock.tree("out"));
}

#[test]
fn a_run_for_the_set_itself_can_be_sharded_too() {
    let dock = Dock::new();
    // Without readers, a share of a range needs a range of the set.
    let set = SET
        .replace("ipd_range = [\"50 mm\", \"75 mm\"]", "ipd_range = [\"50 mm\", \"75 mm\"]\nnorms = \"morgan near\"");
    dock.put("set.toml", &set);
    dock.fine(&["render", "s"]);
    for shard in ["1/2", "2/2"] {
        dock.fine(&["render", "s", "--out", "parts", "--shard", shard]);
    }
    assert!(dock.tree("parts/slipway").contains_key("report.part-2-of-2.json"));
    dock.fine(&["render", "s", "--out", "parts", "--merge"]);
    assert!(dock.tree("parts") == dock.tree("out"));
}

#[test]
fn shards_that_do_not_belong_together_are_not_joined() {
    let dock = Dock::new();
    let merge = |expected: &str| {
        let (code, _, err) = dock.run(&["render", "--readers", "s", "--merge"]);
        assert_eq!(code, 2, "{err}");
        assert!(err.contains(expected), "{err}");
    };
    merge("holds no report of a shard");
    dock.fine(&["render", "--readers", "s", "--shard", "1/3"]);
    dock.fine(&["render", "--readers", "s", "--shard", "3/3"]);
    merge("shard `2/3` left no report");
    // Another argument makes other files.
    dock.fine(&["render", "--readers", "s", "--format", "svg", "--shard", "2/3"]);
    merge("report.part-2-of-3.json` was made from other files, with other arguments or by another version");
    dock.fine(&["render", "--readers", "s", "--shard", "2/3"]);
    // So does another spec.
    dock.put("readers.csv", &ROWS.replace("quay", "kaye"));
    merge("report.part-1-of-3.json` was made from other files");
    dock.put("readers.csv", ROWS);
    dock.fine(&["render", "--readers", "s", "--shard", "1/2"]);
    merge("another report there of one in 2");
    fs::remove_file(dock.0.path().join("out/slipway/readers/report.part-1-of-2.json")).unwrap();
    dock.fine(&["render", "--readers", "s", "--merge"]);
    assert!(!dock.tree("out").keys().any(|name| name.contains("report.part-")));
}

/// Adds two readers for whom the far ring would turn the eyes past parallel: 60 mm at 40 cm are 15 prism dioptres.
fn with_two_refused(dock: &Dock) {
    let wide = "zone,id,toward_break,away_break\nwhole,skua,20 pd,60 pd\nwhole,tern,20 pd,60 pd\n";
    dock.put("readers.csv", wide);
    dock.put("bollard.toml", &BOLLARD.replace("20 % of range away", "40 % of range away"));
}

#[test]
fn all_refused_readers_are_named_and_nothing_is_written() {
    let dock = Dock::new();
    dock.fine(&["render", "--readers", "s"]);
    let before = dock.tree("out");
    with_two_refused(&dock);
    let (code, _, err) = dock.run(&["render", "--readers", "s"]);
    assert_eq!(code, 1, "{err}");
    assert!(err.contains("error[E-PAST-PARALLEL]: readers `skua`, `tern`: `far`: parallax"), "{err}");
    assert!(err.contains("nothing was written"), "{err}");
    assert!(dock.tree("out") == before);
}

#[test]
fn the_other_readers_are_written_where_that_is_asked_for() {
    let dock = Dock::new();
    with_two_refused(&dock);
    let (code, _, err) = dock.run(&["render", "--readers", "--keep-going", "s"]);
    assert_eq!(code, 1, "{err}");
    assert!(err.contains("2 readers, 4 editions") && err.contains("2 readers left out"), "{err}");
    let tree = dock.tree("out/slipway/readers");
    assert!(tree.contains_key("pier/a4/slipway.pdf") && tree.contains_key("mole/a4/slipway.pdf"));
    assert!(!tree.keys().any(|name| name.starts_with("skua") || name.starts_with("tern")));
    let report = dock.json("out/slipway/readers/report.json");
    assert_eq!(report["readers"][2]["editions"], serde_json::json!([]));
    assert!(0 < report["readers"][2]["errors"].as_u64().unwrap());
    // Shards leave out the same ones.
    for shard in ["1/2", "2/2"] {
        let (code, ..) = dock.run(&["render", "--readers", "--keep-going", "s", "--out", "parts", "--shard", shard]);
        assert_eq!(code, 1);
    }
    dock.run(&["render", "--readers", "--keep-going", "s", "--out", "parts", "--merge"]);
    assert!(dock.tree("parts") == dock.tree("out"));
}

#[test]
fn check_prints_one_line_a_reader() {
    let dock = Dock::new();
    let out = dock.fine(&["check", "--readers", "s"]);
    let lines: Vec<_> = out.lines().collect();
    assert_eq!(lines.len(), 6, "{out}");
    assert!(lines[2].starts_with("pier") && lines[2].contains("3 pd away to 7 pd toward"), "{out}");
    assert!(lines[3].starts_with("mole") && lines[3].contains("0.6 pd away to 1.2 pd toward"), "{out}");
    assert!(dock.tree("out").is_empty());
    let json: Value = serde_json::from_str(&dock.fine(&["check", "--reader", "mole", "--json", "s"])).unwrap();
    assert_eq!(json["sets"][0]["readers"].as_array().unwrap().len(), 1);
    assert_eq!(json["sets"][0]["readers"][0]["demand_pd"], serde_json::json!([-0.6, 1.2]));
}

#[test]
fn readers_that_are_not_there_are_named() {
    let dock = Dock::new();
    let told = |args: &[&str], expected: &str| {
        let (code, _, err) = dock.run(args);
        assert_eq!(code, 2, "{err}");
        assert!(err.contains(expected), "{err}");
    };
    told(&["render", "--reader", "peer", "s"], "set `slipway` has no reader `peer`; did you mean `pier`?");
    told(&["render", "--keep-going", "s"], "`--keep-going` is for the readers of a set");
    told(&["render", "--readers", "--shard", "4/3", "s"], "a shard is its number and how many there are");
    dock.put("set.toml", &SET.replace("readers = \"readers.csv\"\n", ""));
    told(&["render", "--readers", "s"], "set `slipway` has no readers");
}
