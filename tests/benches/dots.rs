//! What a page with a field of 40 000 random dots costs: CPU milliseconds and bytes of its solving, its layout and its
//! three formats. Density 0.5 on 170 x 112 mm.
//!
//! `cargo bench --bench dots`; a number after `--` changes the rounds, of which the least is printed.

#![allow(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    reason = "a bench may stop at the first surprise, and a clock is its business"
)]

use std::fs;
use std::hint::black_box;
use std::time::Instant;

use depthpress::colour::{Filter, Glasses, Ground, inks};
use depthpress::layout::art;
use depthpress::layout::sheet::{Node, Role, Sheet};
use depthpress::optics::Viewer;
use depthpress::render::pdf::{PdfBook, pdf};
use depthpress::render::png::{Scratch, png};
use depthpress::render::svg::svg;
use depthpress::scene::{
    At, Companions, Depth, DotField, DotFigure, Eyes, Feature, Form, Relief, Role as Part, Scaling, Scene, Shape, Side,
    Size, Surface,
};
use depthpress::solve::{SolvedFeature, SolvedForm, solve};
use depthpress::units::{Mm, Ppi};
use kurbo::{Point, Rect};

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));
const WIDTH: f64 = 170.0;
const HEIGHT: f64 = 112.0;
const DOTS: f64 = 40_000.0;
const MIDDLE: Point = Point::new(105.0, 150.0);

fn main() {
    let rounds = std::env::args().filter_map(|a| a.parse().ok()).next().unwrap_or(9);
    println!("{:<22}{:>10}{:>10}{:>12}", "40 000 dots", "step", "CPU ms", "bytes");
    let away = |mm: f64| Depth::Parallax(Mm(mm), Side::Away);
    let waves = Surface::Waves { count: 3, down: false };
    for (name, ground) in [
        ("figure on the page", Relief::Flat(Depth::Page)),
        ("figure off the page", Relief::Flat(away(3.0))),
        ("waves", Relief::Between { from: Depth::Page, to: away(8.0), share: waves }),
    ] {
        let scene = field(ground);
        let solved = solve(&scene, &VIEWER).unwrap();
        let row = |step: &str, run: &mut dyn FnMut() -> usize| {
            let (ms, bytes) = measure(rounds, run);
            println!("{name:<22}{step:>10}{ms:>10.2}{bytes:>12}");
        };
        row("solve", &mut || black_box(solve(&scene, &VIEWER).unwrap()).len());
        row("lay out", &mut || black_box(sheet(&solved)).nodes.len());
        let page = sheet(&solved);
        let mut scratch = Scratch::default();
        row("png", &mut || black_box(png(&page, Ppi(300), &mut scratch).unwrap()).len());
        row("svg", &mut || black_box(svg(&page)).len());
        row("pdf", &mut || black_box(pdf(&book(), std::slice::from_ref(&page)).unwrap()).len());
        if let Ok(folder) = std::env::var("DEPTHPRESS_BENCH_OUT") {
            let file = |end: &str| format!("{folder}/{}.{end}", name.replace(' ', "-"));
            fs::write(file("png"), png(&page, Ppi(300), &mut scratch).unwrap()).unwrap();
            fs::write(file("svg"), svg(&page)).unwrap();
            fs::write(file("pdf"), pdf(&book(), std::slice::from_ref(&page)).unwrap()).unwrap();
        }
    }
}

/// A field of so many dots with a disc in it.
fn field(ground: Relief) -> Scene {
    let disc = DotFigure {
        id: "disc".into(),
        shape: Shape::Disc,
        at: At::default(),
        size: Size::Length(Mm(60.0)),
        depth: Relief::Flat(Depth::Parallax(Mm(4.0), Side::Toward)),
    };
    // At half cover a row has ln 2 dots a dot's width.
    let dot = libm::sqrt(WIDTH * HEIGHT * std::f64::consts::LN_2 / DOTS);
    let form = DotField {
        at: At::default(),
        width: Mm(WIDTH),
        height: Mm(HEIGHT),
        dot: Size::Length(Mm(dot)),
        density: 0.5,
        correlation: 1.0,
        ground,
        figures: vec![disc],
        key: "bench".into(),
    };
    let feature = Feature {
        id: "field".into(),
        role: Part::Field,
        eyes: Eyes::Both,
        form: Form::Dots(Box::new(form)),
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    };
    Scene { features: vec![feature] }
}

fn sheet(solved: &[SolvedFeature]) -> Sheet {
    assert!(matches!(&solved[0].form, SolvedForm::Dots(dots) if 150 < dots.rows.len()));
    let area = Rect::from_center_size(MIDDLE, (WIDTH, HEIGHT));
    let figure = Role::Figure { alt: "A field of random dots.".into(), area };
    Sheet {
        number: 1,
        id: "quay".into(),
        title: "Quay".into(),
        description: "A field of random dots.".into(),
        language: "en",
        outline_level: 0,
        size: kurbo::Size::new(210.0, 297.0),
        inks: inks(&Glasses::ideal(Filter::Cyan, Filter::Red), Ground::White),
        nodes: vec![Node::Group(figure, vec![Node::Art(art::compose(solved, MIDDLE))])],
    }
}

fn book() -> PdfBook {
    PdfBook {
        title: "Quay".into(),
        author: None,
        subject: "A page of dots.".into(),
        keywords: Vec::new(),
        language: "en".into(),
        date: (2026, 5, 4),
        id: "bench".into(),
        process: None,
    }
}

/// Least CPU milliseconds of a run, and what it gave.
fn measure(rounds: usize, run: &mut dyn FnMut() -> usize) -> (f64, usize) {
    // The system counts CPU time in steps of some milliseconds, so a round should last far longer than one.
    const REPEATS: u32 = 8;
    let (mut best, mut bytes) = (f64::INFINITY, 0);
    for _ in 0..=rounds {
        let start = cpu_ms();
        (0..REPEATS).for_each(|_| bytes = run());
        best = best.min(cpu_ms() - start);
    }
    (best / f64::from(REPEATS), bytes)
}

/// CPU time of this thread where the system tells it, else the time of day.
fn cpu_ms() -> f64 {
    thread_local!(static START: Instant = Instant::now());
    let ns =
        fs::read_to_string("/proc/thread-self/schedstat").ok().and_then(|s| s.split(' ').next()?.parse::<f64>().ok());
    ns.map_or_else(|| START.with(|s| s.elapsed().as_secs_f64() * 1e3), |ns| ns / 1e6)
}
