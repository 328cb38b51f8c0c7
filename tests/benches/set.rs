//! What the demo set costs, as a user runs it: CPU milliseconds and bytes a page of the whole program, by format, with
//! one thread and with all.
//!
//! `cargo bench --bench set`; a number after `--` changes the rounds, of which the least is printed. The CPU time is
//! the system's own count for the finished runs (Linux); elsewhere wall time stands in for it.

#![allow(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    clippy::cast_possible_truncation,
    reason = "a bench may stop at the first surprise, and a clock is its business"
)]

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Instant;

/// Clock ticks a second in `/proc`, a constant of the Linux interface.
const TICKS: f64 = 100.0;

fn main() {
    let rounds = std::env::args().filter_map(|a| a.parse().ok()).next().unwrap_or(5);
    let out = tempfile::tempdir().unwrap();
    println!("{:<14}{:>6}{:>14}{:>14}{:>12}", "format", "jobs", "CPU ms/page", "wall ms/page", "bytes/page");
    let all = std::thread::available_parallelism().map_or(1, usize::from);
    for jobs in [1, all] {
        for format in ["pdf", "svg", "png", "pdf,svg,png"] {
            let (cpu, wall) = (0..=rounds)
                .map(|_| run(out.path(), format, jobs))
                .skip(1)
                .fold((f64::INFINITY, f64::INFINITY), |best, (cpu, wall)| (best.0.min(cpu), best.1.min(wall)));
            let (pages, bytes) = count(out.path());
            let pages = f64::from(pages);
            println!("{format:<14}{jobs:>6}{:>14.2}{:>14.2}{:>12.0}", cpu / pages, wall / pages, bytes as f64 / pages);
        }
    }
}

/// CPU and wall milliseconds of one run of the program over the demo set.
fn run(out: &Path, format: &str, jobs: usize) -> (f64, f64) {
    fs::remove_dir_all(out).unwrap();
    let (cpu, start) = (children_ms(), Instant::now());
    let status = Command::new(env!("CARGO_BIN_EXE_depthpress"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(["--quiet", "render", "--format", format, "--jobs", &jobs.to_string()])
        .args(["--edition", "a4", "--edition", "letter", "--edition", "screen", "--out"])
        .arg(out)
        .stdout(Stdio::null())
        .status()
        .unwrap();
    assert!(status.success());
    let wall = start.elapsed().as_secs_f64() * 1e3;
    (children_ms().zip(cpu).map_or(wall, |(after, before)| after - before), wall)
}

/// User and system time of all finished children: fields 16 and 17 of `/proc/self/stat`.
fn children_ms() -> Option<f64> {
    let stat = fs::read_to_string("/proc/self/stat").ok()?;
    let fields: Vec<&str> = stat.rsplit_once(')')?.1.split_whitespace().collect();
    let ticks = |i: usize| fields.get(i)?.parse::<f64>().ok();
    Some((ticks(13)? + ticks(14)?) / TICKS * 1e3)
}

/// Pages of all editions, and bytes of the files that a format gives, without the reports.
fn count(out: &Path) -> (u32, u64) {
    let (mut pages, mut bytes) = (0, 0);
    for edition in fs::read_dir(out.join("harbour-lights")).unwrap() {
        let edition = edition.unwrap().path();
        let report = fs::read_to_string(edition.join("report.json")).unwrap();
        let report: serde_json::Value = serde_json::from_str(&report).unwrap();
        pages += report["pages"].as_array().unwrap().len() as u32;
        let mut folders = vec![edition];
        while let Some(folder) = folders.pop() {
            for entry in fs::read_dir(folder).unwrap() {
                let path = entry.unwrap().path();
                if path.is_dir() {
                    folders.push(path);
                } else if path.file_name().is_some_and(|name| name != "report.json") {
                    bytes += fs::metadata(path).unwrap().len();
                }
            }
        }
    }
    (pages, bytes)
}
