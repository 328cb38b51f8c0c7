//! What a set for many readers costs, as a user runs it: CPU and wall seconds, pages a second and peak memory of the
//! whole program, for 50 and for 500 readers with 12 exercise pages each, PDF alone.
//!
//! `cargo bench --bench readers`; numbers after `--` are other counts of readers. Memory must not grow with them. CPU
//! time and memory are the system's own counts (Linux).

#![allow(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    reason = "a bench may stop at the first surprise, and a clock is its business"
)]

use std::fmt::Write as _;
use std::fs;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::thread::sleep;
use std::time::{Duration, Instant};

/// Clock ticks a second in `/proc`, a constant of the Linux interface.
const TICKS: f64 = 100.0;

/// An invented set: three exercises of four levels, one edition.
const SET: &str = r#"[set]
id = "slipway"
title = "Slipway"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["bollard.toml", "tide-post.toml", "swell.toml"]
readers = "readers.csv"
[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]
[glasses]
left = "cyan"
right = "red"
[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 300
formats = ["pdf"]
"#;

const BOLLARD: &str = r#"[exercise]
kind = "jump"
title = "Bollards"
[[target]]
label = "near"
shape = "ring"
size = "30 mm"
at = ["-45 mm", "0 mm"]
depth = { from = "10 % of range toward", to = "80 % of range toward", levels = 4 }
[[target]]
label = "far"
shape = "ring"
size = "30 mm"
at = ["45 mm", "0 mm"]
depth = "10 % of range away"
"#;

const TIDE_POST: &str = r#"[exercise]
kind = "hold"
title = "Tide post"
[[target]]
shape = "square"
size = "40 mm"
depth = { from = "10 % of range toward", to = "40 % of range toward", levels = 4 }
"#;

const SWELL: &str = r#"[exercise]
kind = "nest"
title = "Swell"
[room]
form = "frames"
width = "12 cm"
height = "8 cm"
front = "20 % of range toward"
back = { from = "page", to = "30 % of range away", levels = 4 }
[[target]]
shape = "disc"
size = "9 mm"
depth = "page"
"#;

fn main() {
    let given: Vec<u32> = std::env::args().filter_map(|a| a.parse().ok()).collect();
    let counts = if given.is_empty() { vec![50, 500] } else { given };
    let folder = tempfile::tempdir().unwrap();
    for (name, text) in
        [("set.toml", SET), ("bollard.toml", BOLLARD), ("tide-post.toml", TIDE_POST), ("swell.toml", SWELL)]
    {
        fs::write(folder.path().join(name), text).unwrap();
    }
    println!(
        "{:>8}{:>8}{:>10}{:>10}{:>12}{:>12}{:>14}",
        "readers", "pages", "CPU s", "wall s", "pages/s", "CPU ms/page", "peak RSS MB"
    );
    for count in counts {
        fs::write(folder.path().join("readers.csv"), readers(count)).unwrap();
        let out = folder.path().join("out");
        let Run { cpu, wall, peak } = run(folder.path(), &out);
        let pages = pages(&out);
        println!(
            "{count:>8}{pages:>8}{cpu:>10.1}{wall:>10.1}{:>12.0}{:>12.2}{peak:>14.1}",
            pages / wall,
            cpu / pages * 1e3
        );
    }
}

/// Readers who differ in all that shapes depth, and in how they wear the glasses.
fn readers(count: u32) -> String {
    let mut rows = "id,ipd,toward_blur,toward_break,away_blur,away_break,left,right\n".to_owned();
    for i in 0..count {
        let (ipd, toward, away) = (52 + i % 22, 12 + i % 9, 9 + i % 7);
        let glasses = if i % 3 == 0 { "red,cyan" } else { "cyan,red" };
        let (toward_break, away_break) = (toward + 4, away + 3);
        let _ = writeln!(rows, "r-{i},{ipd} mm,{toward} pd,{toward_break} pd,{away} pd,{away_break} pd,{glasses}");
    }
    rows
}

/// What one run took: seconds, and MB at the most.
struct Run {
    cpu: f64,
    wall: f64,
    peak: f64,
}

fn run(set: &Path, out: &Path) -> Run {
    drop(fs::remove_dir_all(out));
    let (before, start) = (children_s(), Instant::now());
    let mut child = Command::new(env!("CARGO_BIN_EXE_depthpress"))
        .args(["--quiet", "render", "--readers", "--out"])
        .args([out, set])
        .stdout(Stdio::null())
        .spawn()
        .unwrap();
    let mut peak = 0.0_f64;
    let status = loop {
        peak = peak.max(peak_mb(&child).unwrap_or(0.0));
        if let Some(status) = child.try_wait().unwrap() {
            break status;
        }
        sleep(Duration::from_millis(20));
    };
    assert!(status.success());
    Run { cpu: children_s() - before, wall: start.elapsed().as_secs_f64(), peak }
}

/// The most memory a child has held so far: `VmHWM` of `/proc/PID/status`.
fn peak_mb(child: &Child) -> Option<f64> {
    let status = fs::read_to_string(format!("/proc/{}/status", child.id())).ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    Some(line.split_whitespace().next()?.parse::<f64>().ok()? / 1024.0)
}

/// User and system time of all finished children: fields 16 and 17 of `/proc/self/stat`.
fn children_s() -> f64 {
    let stat = fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields: Vec<&str> = stat.rsplit_once(')').map_or("", |(_, rest)| rest).split_whitespace().collect();
    let ticks = |i: usize| fields.get(i).and_then(|field| field.parse::<f64>().ok()).unwrap_or(0.0);
    (ticks(13) + ticks(14)) / TICKS
}

/// All pages of all readers, by the report over all.
fn pages(out: &Path) -> f64 {
    let report = fs::read_to_string(out.join("slipway/readers/report.json")).unwrap();
    let report: serde_json::Value = serde_json::from_str(&report).unwrap();
    let readers = report["readers"].as_array().unwrap().iter();
    readers.flat_map(|reader| reader["editions"].as_array().unwrap()).map(|e| e["pages"].as_f64().unwrap()).sum()
}
