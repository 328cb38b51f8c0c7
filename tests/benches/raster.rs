//! What a page costs as PNG: CPU milliseconds and bytes a page, by kind of page, and the peak memory of the process.
//!
//! The pages are alike to a set of 24 A4 pages at 300 ppi: ring pairs, slanted traces, box outlines and random dots,
//! six of each, with a heading, a hundred words and a footer. `cargo bench --bench raster`; a number after `--` changes the
//! rounds, of which the least is printed, and a word keeps the pages whose name has it.

#![allow(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    clippy::cast_possible_truncation,
    reason = "a bench may stop at the first surprise, and a clock is its business"
)]

use std::fs;
use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;

use depthpress::colour::{Inks, Srgb8};
use depthpress::layout::fonts;
use depthpress::layout::sheet::{Art, Face, Glyph, Node, Sheet, TextRun, Tone};
use depthpress::render::png::{Scratch, png};
use depthpress::units::Ppi;
use kurbo::{BezPath, Circle, Line, Point, Rect, Shape, Size, Stroke, StrokeOpts};
use skrifa::MetadataProvider;

const WORDS: [&str; 6] = [
    "Sit square to the sheet with the lamp behind your shoulder and the two filters on. Let",
    "the left rope and the right rope drift until they lie on one another, and wait there",
    "for a slow breath before you go on. Say to yourself whether the joined rope hangs over",
    "the deck or under it, and touch the place with a finger to be sure. When one of the two",
    "fades, blink once and begin again with the last pair that was easy. Leave the sheet for",
    "a minute after each row, and put it away at once if your eyes or your head begin to ache.",
];

const PT: f64 = 25.4 / 72.0;

fn main() {
    let rounds = std::env::args().filter_map(|a| a.parse().ok()).next().unwrap_or(9);
    let wanted = std::env::args().skip(1).find(|a| !a.starts_with('-') && a.parse::<usize>().is_err());
    let wanted = |name: &str| wanted.as_ref().is_none_or(|word| name.contains(word.as_str()));
    let mut scratch = Scratch::default();
    println!("{:<16}{:>12}{:>12}", "pages", "CPU ms/page", "bytes/page");
    let (mut time, mut size) = (0.0, 0);
    for (name, kind) in
        [("ring pairs", rings as fn(usize) -> Art), ("traces", traces), ("boxes", boxes), ("dots", dots)]
    {
        if !wanted(name) {
            continue;
        }
        let pages: Vec<Sheet> = (0..6).map(|step| sheet(step, name, Some(kind(step)))).collect();
        let (ms, bytes) = measure(&pages, rounds, &mut scratch);
        println!("{name:<16}{ms:>12.2}{bytes:>12}");
        time += ms;
        size += bytes;
    }
    println!("{:<16}{:>12.2}{:>12}", "the set", time / 4.0, size / 4);
    for (name, page) in
        [("words alone", sheet(0, "words", None)), ("blank", Sheet { nodes: vec![], ..sheet(0, "blank", None) })]
    {
        if !wanted(name) {
            continue;
        }
        let (ms, bytes) = measure(&[page], rounds, &mut scratch);
        println!("{name:<16}{ms:>12.2}{bytes:>12}");
    }
    if let Some(peak) = peak_memory() {
        println!("peak memory {peak}");
    }
}

/// Least CPU milliseconds and mean bytes a page.
fn measure(pages: &[Sheet], rounds: usize, scratch: &mut Scratch) -> (f64, usize) {
    let mut best = f64::INFINITY;
    let mut bytes = 0;
    // The system counts CPU time in steps of some milliseconds, so a round should last far longer than one.
    let repeats = 24 / pages.len();
    for _ in 0..=rounds {
        let start = cpu_ms();
        for _ in 0..repeats {
            bytes = pages.iter().map(|page| black_box(png(page, Ppi(300), scratch).unwrap()).len()).sum();
        }
        best = best.min(cpu_ms() - start);
    }
    (best / (repeats * pages.len()) as f64, bytes / pages.len())
}

/// CPU time of this thread where the system tells it, else the time of day.
fn cpu_ms() -> f64 {
    thread_local!(static START: Instant = Instant::now());
    let ns =
        fs::read_to_string("/proc/thread-self/schedstat").ok().and_then(|s| s.split(' ').next()?.parse::<f64>().ok());
    ns.map_or_else(|| START.with(|s| s.elapsed().as_secs_f64() * 1e3), |ns| ns / 1e6)
}

fn peak_memory() -> Option<String> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    Some(status.lines().find_map(|l| l.strip_prefix("VmHWM:"))?.trim().to_owned())
}

fn sheet(step: usize, name: &str, art: Option<Art>) -> Sheet {
    let mut nodes = vec![line(Face::Bold, 18.0, 24.0, &format!("Page of {name}, step {}", step + 1))];
    nodes.extend(WORDS.iter().enumerate().map(|(i, text)| line(Face::Regular, 10.0, 33.0 + 5.0 * i as f64, text)));
    nodes.extend(art.map(Node::Art));
    let foot = format!("Bench set, page {} of 24. Print at 100 % (no fit to page). Viewing distance 40 cm.", step + 1);
    nodes.push(line(Face::Regular, 8.0, 288.0, &foot));
    Sheet {
        number: 1,
        id: format!("{name}-{step}"),
        title: format!("{name} {step}"),
        description: String::new(),
        language: "en",
        outline_level: 1,
        size: Size::new(210.0, 297.0),
        inks: Inks {
            left: Srgb8([255, 0, 0]),
            right: Srgb8([0, 255, 255]),
            both: Srgb8([0, 0, 0]),
            ground: Srgb8([255, 255, 255]),
            text: Srgb8([0, 0, 0]),
        },
        nodes,
    }
}

fn line(face: Face, pt: f64, y: f64, text: &str) -> Node {
    let font = fonts::font(face);
    let (charmap, size) = (font.charmap(), pt * PT);
    let metrics =
        font.glyph_metrics(skrifa::instance::Size::new(size as f32), skrifa::instance::LocationRef::default());
    let glyphs = text
        .char_indices()
        .map(|(i, c)| {
            let id = charmap.map(c).unwrap_or_default();
            let advance = f64::from(metrics.advance_width(id).unwrap_or(0.0));
            Glyph { id: id.to_u32() as u16, offset: (0.0, 0.0), advance, range: i..i + c.len_utf8() }
        })
        .collect();
    Node::Text(TextRun {
        face,
        size,
        origin: Point::new(20.0, y),
        turned: false,
        glyphs,
        text: Arc::from(text),
        tone: Tone::FULL,
    })
}

fn ring(x: f64, y: f64, radius: f64, width: f64) -> BezPath {
    let mut path = Circle::new((x, y), radius + width / 2.0).to_path(1e-3);
    path.extend(Circle::new((x, y), radius - width / 2.0).to_path(1e-3).reverse_subpaths());
    path
}

fn stroke(path: impl Shape, width: f64) -> BezPath {
    kurbo::stroke(path.path_elements(1e-3), &Stroke::new(width), &StrokeOpts::default(), 1e-3)
}

fn rings(step: usize) -> Art {
    let mut art = Art::default();
    for i in 0..8 {
        let (x, y) = (62.0 + 86.0 * (i % 2) as f64, 88.0 + 50.0 * (i / 2) as f64);
        let side = if (i + step) % 2 == 1 { 1.0 } else { -1.0 };
        let p = (0.6 + 0.35 * i as f64 + 0.8 * step as f64) * side;
        art.left.push(ring(x - p / 2.0, y, 19.0, 2.4));
        art.right.push(ring(x + p / 2.0, y, 19.0, 2.4));
    }
    art
}

fn traces(step: usize) -> Art {
    let mut art = Art::default();
    let k = step as f64;
    for j in 0..10 {
        let (mut left, mut right) = (BezPath::new(), BezPath::new());
        let (p0, p1) = (-1.0 - 0.3 * k, 2.0 + 0.4 * k + 0.1 * j as f64);
        for n in 0..200 {
            let t = n as f64 / 199.0;
            let slant = if j % 2 == 1 { 12.0 } else { -12.0 };
            let wave = 4.0 * libm::sin(std::f64::consts::TAU * t * (1 + (j + step) % 4) as f64);
            let (x, y, p) = (25.0 + 160.0 * t, 80.0 + 19.0 * j as f64 + slant * t + wave, p0 + (p1 - p0) * t);
            for (path, x) in [(&mut left, x - p / 2.0), (&mut right, x + p / 2.0)] {
                if n == 0 { path.move_to((x, y)) } else { path.line_to((x, y)) }
            }
        }
        art.left.push(stroke(left, 0.9));
        art.right.push(stroke(right, 0.9));
    }
    art
}

fn boxes(step: usize) -> Art {
    const EDGES: [(usize, usize); 12] =
        [(0, 1), (1, 3), (3, 2), (2, 0), (4, 5), (5, 7), (7, 6), (6, 4), (0, 4), (1, 5), (2, 6), (3, 7)];
    let mut art = Art::default();
    let k = step as f64;
    for b in 0..4 {
        let (x, y) = (62.0 + 86.0 * (b % 2) as f64, 112.0 + 100.0 * (b / 2) as f64);
        let (z0, z1) = (5.0 + 4.0 * k, -(12.0 + 5.0 * b as f64 + 3.0 * k));
        let (w, h) = (30.0 - k, 34.0 - k);
        for (eye, out) in [(-1.0, &mut art.left), (1.0, &mut art.right)] {
            let from = Point::new(105.0 + eye * 31.0, 148.5);
            let project = |x: f64, y: f64, z: f64| from + (Point::new(x, y) - from) * (400.0 / (400.0 - z));
            let corner = |i: usize| {
                let side = |bit: usize| if i & bit == 0 { -1.0 } else { 1.0 };
                project(x + side(1) * w, y + side(2) * h, if i & 4 == 0 { z0 } else { z1 })
            };
            out.extend(EDGES.iter().map(|&(a, b)| stroke(Line::new(corner(a), corner(b)), 0.7)));
            let target = project(x, y, z1 + (z0 - z1) * 0.4);
            out.push(Circle::new(target, 4.0).to_path(1e-3));
            out.push(ring(target.x, target.y, 7.0, 0.7));
        }
    }
    art
}

fn dots(step: usize) -> Art {
    const CELLS: usize = 200;
    let mut state = 1000 + step as u64;
    let mut bit = move || {
        state = state.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
        state >> 63 == 1
    };
    let rows: Vec<Vec<bool>> = (0..CELLS).map(|_| (0..CELLS).map(|_| bit()).collect()).collect();
    let (shift, inner) = (1 + step, 60..140);
    let moved: Vec<Vec<bool>> = (0..CELLS)
        .map(|y| {
            let mut row = rows[y].clone();
            if inner.contains(&y) {
                row[inner.start + shift..inner.end + shift].copy_from_slice(&rows[y][inner.clone()]);
                row[inner.start..inner.start + shift].fill_with(&mut bit);
            }
            row
        })
        .collect();
    Art { left: vec![runs(&rows)], right: vec![runs(&moved)], ..Art::default() }
}

/// The dark cells as one rectangle a run.
fn runs(rows: &[Vec<bool>]) -> BezPath {
    let mut path = BezPath::new();
    for (y, row) in rows.iter().enumerate() {
        let mut x = 0;
        for run in row.chunk_by(|a, b| a == b) {
            if run[0] {
                let corner = Point::new(30.0 + 0.75 * x as f64, 70.0 + 0.75 * y as f64);
                path.extend(Rect::from_origin_size(corner, (0.75 * run.len() as f64, 0.75)).to_path(0.1));
            }
            x += run.len();
        }
    }
    path
}
