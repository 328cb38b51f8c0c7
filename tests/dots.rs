//! Random-dot stereograms as each eye gets them: correlation, density and fresh strips, read from rendered pages.
//!
//! Each eye's picture is the channel of the PNG that its filter passes: cyan before the left eye and red before the
//! right, on white, so that the left eye reads green and the right eye red ("Anaglyphs", lexicon at proofing.de).
//! The construction is that of B. Julesz, "Binocular depth perception of computer-generated patterns", Bell System
//! Technical Journal 39, 1960; the properties and their values for re-randomised dots, r = 1 - q at any density, are
//! textbook statistics of such fields. Limits of chance are four standard errors that count each dot's area as one
//! independent draw; draws hang on names, so that no test flickers.

use std::sync::Arc;

use depthpress::colour::{Filter, Glasses, Ground, inks};
use depthpress::layout::art;
use depthpress::layout::sheet::{Node, Role as Part, Sheet};
use depthpress::optics::Viewer;
use depthpress::render::png::{Scratch, png};
use depthpress::render::svg::svg;
use depthpress::scene::{
    At, Companions, Depth, DotField, DotFigure, Eyes, Feature, Form, Relief, Role, Scaling, Scene, Shape, Side, Size,
};
use depthpress::solve::{SolvedDots, SolvedFeature, SolvedForm, solve};
use depthpress::units::{Mm, Ppi};
use kurbo::{Point, Rect};

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));
/// Ten pixels a millimetre.
const PPI: u32 = 254;
const PIXELS: f64 = 10.0;
const PAGE: (f64, f64) = (180.0, 130.0);
const FIELD: (f64, f64) = (160.0, 112.0);
/// Four pixels.
const DOT: f64 = 0.4;
const FIGURE: f64 = 60.0;

/// A box about the middle of the field, mm: left, top, right, bottom.
type Zone = [f64; 4];

fn toward(parallax: f64) -> Relief {
    Relief::Flat(Depth::Parallax(Mm(parallax), Side::Toward))
}

fn feature(id: &str, role: Role, form: Form) -> Feature {
    Feature {
        id: id.into(),
        role,
        eyes: Eyes::Both,
        form,
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    }
}

/// A field of this density and correlation, with a square figure in its middle where `figure` gives it a depth.
fn field(density: f64, correlation: f64, ground: Relief, figure: Option<Relief>) -> Feature {
    let square = |depth| DotFigure {
        id: "crate".into(),
        shape: Shape::Square,
        at: At::default(),
        size: Size::Length(Mm(FIGURE)),
        depth,
    };
    let dots = DotField {
        at: At::default(),
        width: Mm(FIELD.0),
        height: Mm(FIELD.1),
        dot: Size::Length(Mm(DOT)),
        density,
        correlation,
        ground,
        figures: figure.map(square).into_iter().collect(),
        key: "quay/dots".into(),
    };
    feature("field", Role::Field, Form::Dots(Box::new(dots)))
}

fn solved(features: Vec<Feature>) -> Vec<SolvedFeature> {
    solve(&Scene { features }, &VIEWER).unwrap()
}

/// The same field with its rows changed, for the faults that the checks must find.
fn changed(solved: &[SolvedFeature], change: impl Fn(&mut SolvedDots)) -> Vec<SolvedFeature> {
    let mut out = solved.to_vec();
    let SolvedForm::Dots(dots) = &mut out[0].form else { panic!("no field") };
    let mut rows = SolvedDots::clone(dots);
    change(&mut rows);
    *dots = Arc::new(rows);
    out
}

fn sheet(solved: &[SolvedFeature]) -> Sheet {
    let middle = Point::new(PAGE.0 / 2.0, PAGE.1 / 2.0);
    let figure = Part::Figure { alt: "A field of random dots.".into(), area: Rect::from_center_size(middle, FIELD) };
    Sheet {
        number: 1,
        id: "quay".into(),
        title: "Quay".into(),
        description: "A field of random dots.".into(),
        language: "en",
        outline_level: 0,
        size: kurbo::Size::from(PAGE),
        inks: inks(&Glasses::ideal(Filter::Cyan, Filter::Red), Ground::White),
        nodes: vec![Node::Group(figure, vec![Node::Art(art::compose(solved, middle))])],
    }
}

/// What each eye gets of a page: ink from 0 to 1 a pixel.
struct Seen {
    width: usize,
    /// Left eye, right eye.
    ink: [Vec<f64>; 2],
}

impl Seen {
    fn of(solved: &[SolvedFeature]) -> Self {
        let bytes = png(&sheet(solved), Ppi(PPI), &mut Scratch::default()).unwrap();
        let mut decoder = ::png::Decoder::new(std::io::Cursor::new(bytes));
        decoder.set_transformations(::png::Transformations::EXPAND);
        let mut reader = decoder.read_info().unwrap();
        let mut data = vec![0; reader.output_buffer_size().unwrap()];
        let info = reader.next_frame(&mut data).unwrap();
        Self::from_pixels(&data, info.width as usize, 3)
    }

    fn from_pixels(data: &[u8], width: usize, bytes: usize) -> Self {
        let ink = |channel: usize| data.chunks_exact(bytes).map(|c| 1.0 - f64::from(c[channel]) / 255.0).collect();
        Self { width, ink: [ink(1), ink(0)] }
    }

    /// The pixels of a zone moved to the right by whole pixels, row by row.
    fn zone(&self, eye: usize, zone: Zone, shift: i64) -> Vec<f64> {
        let pixel = |mm: f64, middle: f64| ((mm + middle) * PIXELS).round() as i64;
        let (left, right) = (pixel(zone[0], PAGE.0 / 2.0) + shift, pixel(zone[2], PAGE.0 / 2.0) + shift);
        let rows = pixel(zone[1], PAGE.1 / 2.0)..pixel(zone[3], PAGE.1 / 2.0);
        let row = |y: i64| &self.ink[eye][y as usize * self.width..][left as usize..right as usize];
        rows.flat_map(row).copied().collect()
    }

    /// The share of a zone that is inked for an eye.
    fn density(&self, eye: usize, zone: Zone) -> f64 {
        let ink = self.zone(eye, zone, 0);
        ink.iter().sum::<f64>() / ink.len() as f64
    }
}

/// The product-moment correlation coefficient, a textbook formula.
fn correlation(a: &[f64], b: &[f64]) -> f64 {
    assert_eq!(a.len(), b.len());
    let mean = |of: &[f64]| of.iter().sum::<f64>() / of.len() as f64;
    let (ma, mb) = (mean(a), mean(b));
    let ab: f64 = a.iter().zip(b).map(|(a, b)| (a - ma) * (b - mb)).sum();
    let square = |of: &[f64], mean: f64| of.iter().map(|x| (x - mean).powi(2)).sum::<f64>();
    ab / (square(a, ma) * square(b, mb)).sqrt()
}

/// How many dots a zone has room for.
fn count(zone: Zone) -> f64 {
    (zone[2] - zone[0]) * (zone[3] - zone[1]) / (DOT * DOT)
}

/// Inside the figure for both eyes, at a parallax of up to 6 mm.
const INSIDE: Zone = [-26.0, -29.6, 26.0, 29.6];

/// The correlation at matching places of the figure, whose parallax is a whole even number of pixels.
fn matched(seen: &Seen, zone: Zone, pixels: i64) -> f64 {
    correlation(&seen.zone(0, zone, -pixels / 2), &seen.zone(1, zone, pixels / 2))
}

/// P60: matching places agree entirely, and the same places of the page not at all.
#[test]
fn dots_of_the_figure_match_at_its_parallax_alone() {
    for (depth, pixels) in [(toward(2.0), -20), (Relief::Flat(Depth::Parallax(Mm(3.2), Side::Away)), 32)] {
        let page = solved(vec![field(0.5, 1.0, Relief::Flat(Depth::Page), Some(depth))]);
        let seen = Seen::of(&page);
        let limit = 4.0 / count(INSIDE).sqrt();
        // Both eyes' pixels are cut alike; where a cut falls between two steps of ink it may round either way.
        assert!(0.999 < matched(&seen, INSIDE, pixels), "{}", matched(&seen, INSIDE, pixels));
        assert!(matched(&seen, INSIDE, 0).abs() < limit);
        assert!(matched(&seen, INSIDE, -pixels).abs() < limit);
        // The ground lies on the page.
        let ground = [-78.0, -55.0, -36.0, 55.0];
        assert!(0.999 < matched(&seen, ground, 0));
        // A right eye with dots of its own is found out.
        let other = solved(vec![field(0.5, 0.0, Relief::Flat(Depth::Page), Some(toward(2.0)))]);
        assert!(matched(&Seen::of(&other), INSIDE, -20) < 0.1);
    }
}

/// P61: a quarter of the dots drawn anew for each eye leaves r = 0.75, at a density of a half and of a quarter. The zone
/// has room for more than 40 000 dots.
#[test]
fn dots_drawn_anew_lower_the_correlation_by_their_share() {
    for density in [0.5, 0.25] {
        for asked in [0.75, 0.5] {
            let seen = Seen::of(&solved(vec![field(density, asked, toward(2.0), None)]));
            let zone = [-70.0, -54.0, 70.0, 54.0];
            assert!(40_000.0 < count(zone));
            let r = matched(&seen, zone, -20);
            assert!((r - asked).abs() < 0.02, "{density} {asked}: {r}");
        }
    }
}

/// The zones of a field with a figure 6 mm toward: the strips beside the figure that one eye alone sees, inside, around.
fn zones() -> [(usize, Zone, &'static str); 8] {
    let (edge, half) = (FIGURE / 2.0, 3.0);
    // Toward: the left eye sees the figure moved to the right, and a strip of ground on its left.
    let strip_left = [-edge, -29.6, -edge + half, 29.6];
    let strip_right = [edge - half, -29.6, edge, 29.6];
    let around = [-79.6, -55.6, 79.6, -30.4];
    let beside = [-79.6, -29.6, -36.0, 29.6];
    [
        (0, INSIDE, "inside"),
        (1, INSIDE, "inside"),
        (0, strip_left, "strip"),
        (1, strip_right, "strip"),
        (0, around, "around"),
        (1, around, "around"),
        (0, beside, "beside"),
        (1, beside, "beside"),
    ]
}

/// The zones of a page whose density is not the one that was set.
fn uneven(seen: &Seen, density: f64) -> Vec<String> {
    let off = |(eye, zone, name): (usize, Zone, &str)| {
        let found = seen.density(eye, zone);
        let limit = 4.0 * (density * (1.0 - density) / count(zone)).sqrt();
        (limit <= (found - density).abs()).then(|| format!("eye {eye}, {name}: {found:.4}, limit {limit:.4}"))
    };
    zones().into_iter().filter_map(off).collect()
}

/// P62: figure, strips and surround have the density that was set, for each eye.
#[test]
fn no_zone_is_denser_for_one_eye() {
    for density in [0.5, 0.25] {
        let page = solved(vec![field(density, 1.0, Relief::Flat(Depth::Page), Some(toward(6.0)))]);
        assert_eq!(uneven(&Seen::of(&page), density), Vec::<String>::new());
        // Strips left bare are found out.
        let bare = changed(&page, |dots| {
            for row in &mut dots.rows {
                row.left.retain(|run| row.y.abs() > 30.0 || run.1 < -30.0 || -27.0 < run.0);
            }
        });
        assert_eq!(uneven(&Seen::of(&bare), density).len(), 1);
    }
}

/// How much each eye's strip repeats what stands a figure's width away in the same half-image.
fn repeats(seen: &Seen) -> [f64; 2] {
    let width = (FIGURE * PIXELS) as i64;
    let [_, _, (left, strip_left, _), (right, strip_right, _), ..] = zones();
    [(left, strip_left, width), (right, strip_right, -width)]
        .map(|(eye, strip, away)| correlation(&seen.zone(eye, strip, 0), &seen.zone(eye, strip, away)))
}

/// P63: strips are filled afresh. Filling them with what went out at the other side of the figure repeats it: 1.
#[test]
fn strips_repeat_nothing_of_their_picture() {
    let page = solved(vec![field(0.5, 1.0, Relief::Flat(Depth::Page), Some(toward(6.0)))]);
    let limit = 4.0 / count([0.0, -29.6, 3.0, 29.6]).sqrt();
    for r in repeats(&Seen::of(&page)) {
        assert!(r.abs() < limit, "{r}");
    }
    let wrapped = changed(&page, |dots| {
        for row in dots.rows.iter_mut().filter(|row| row.y.abs() < 30.0) {
            let outside = row.left.iter().flat_map(|&(a, b)| [(a, b.min(-30.0)), (a.max(-27.0), b)]);
            let copied = row.left.iter().map(|&(a, b)| (a.max(30.0) - FIGURE, b.min(33.0) - FIGURE));
            let mut runs: Vec<(f64, f64)> = outside.chain(copied).filter(|run| run.0 < run.1).collect();
            runs.sort_by(|a, b| a.0.total_cmp(&b.0));
            row.left = runs;
        }
    });
    let [left, right] = repeats(&Seen::of(&wrapped));
    assert!(0.999 < left && right.abs() < limit, "{left} {right}");
}

/// A ring on the field clears the dots under it with 0.6 mm of space, for both eyes alike, and no more.
#[test]
fn what_stands_on_a_field_stands_clear() {
    let form = Form::Shape {
        shape: Shape::Ring,
        at: At::default(),
        size: Size::Length(Mm(40.0)),
        weight: Mm(2.0),
        depth: Depth::Parallax(Mm(2.0), Side::Away),
    };
    let dots = field(0.5, 1.0, Relief::Flat(Depth::Page), None);
    let page = solved(vec![dots, feature("ring", Role::Target, form)]);
    let seen = Seen::of(&page);
    // The right eye's line stands from 19 to 21 mm right of the middle, the left eye's from 17 to 19: both make room.
    for (eye, line) in [(0, [17.1, 18.9]), (1, [19.1, 20.9])] {
        let zone = |x0: f64, x1: f64| [x0, -0.9, x1, 0.9];
        assert!(0.999 < seen.density(eye, zone(line[0], line[1])));
        for bare in [zone(16.5, 16.9), zone(21.1, 21.5)] {
            assert_eq!(seen.density(eye, bare), 0.0, "eye {eye}");
        }
        let inner = [-12.0, -8.0, 12.0, 8.0];
        assert!((seen.density(eye, inner) - 0.5).abs() < 4.0 * (0.25 / count(inner)).sqrt());
    }
}

/// How alike the two eyes' pictures are in two formats: the correlation of the field, left and right.
fn alike(one: &Seen, other: &Seen) -> [f64; 2] {
    let zone = [-FIELD.0 / 2.0, -FIELD.1 / 2.0, FIELD.0 / 2.0, FIELD.1 / 2.0];
    [0, 1].map(|eye| correlation(&one.zone(eye, zone, 0), &other.zone(eye, zone, 0)))
}

/// Along the ends of dots, pixels that are covered in part mix the inks in the order of drawing: half of the pixels
/// at four to a dot have such an end. A field one pixel off would give 0.7.
const ALIKE: f64 = 0.98;

#[test]
fn svg_has_the_dots_where_png_has_them() {
    let page = solved(vec![field(0.5, 1.0, toward(1.3), Some(toward(6.0)))]);
    let tree = usvg::Tree::from_str(&svg(&sheet(&page)), &usvg::Options::default()).unwrap();
    let (width, height) = (PAGE.0 * PIXELS, PAGE.1 * PIXELS);
    let mut pixmap = tiny_skia::Pixmap::new(width as u32, height as u32).unwrap();
    // usvg sizes the page in CSS pixels, 96 to the inch.
    let zoom = PPI as f32 / 96.0;
    resvg::render(&tree, tiny_skia::Transform::from_scale(zoom, zoom), &mut pixmap.as_mut());
    let (ours, theirs) = (Seen::of(&page), Seen::from_pixels(pixmap.data(), width as usize, 4));
    for r in alike(&ours, &theirs) {
        assert!(ALIKE < r, "{r}");
    }
    let mut moved = Seen::from_pixels(pixmap.data(), width as usize, 4);
    moved.ink.iter_mut().for_each(|ink| ink.rotate_right(1));
    assert!(alike(&ours, &moved).iter().all(|r| *r < 0.8));
}

/// Whole pixels would take the depth of a dot's ends from them; poppler pulls level strokes there unless told not to.
#[test]
#[ignore = "needs pdftoppm of poppler-utils"]
fn pdf_has_the_dots_where_png_has_them() {
    use depthpress::render::pdf::{PdfBook, pdf};
    let book = PdfBook {
        title: "Quay".into(),
        author: None,
        subject: "Dots.".into(),
        keywords: Vec::new(),
        language: "en".into(),
        date: (2026, 5, 4),
        id: "quay".into(),
        process: None,
    };
    let page = solved(vec![field(0.5, 1.0, toward(1.3), Some(toward(6.0)))]);
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("page.pdf");
    std::fs::write(&file, pdf(&book, &[sheet(&page)]).unwrap()).unwrap();
    let ran = std::process::Command::new("pdftoppm").args(["-r", "254", "-singlefile"]).arg(&file).output().unwrap();
    assert!(ran.status.success());
    // A portable pixmap: "P6", width, height, 255, then the pixels.
    let mut fields = ran.stdout.splitn(4, |byte| byte.is_ascii_whitespace());
    let _magic = fields.next().unwrap();
    let width: usize = std::str::from_utf8(fields.next().unwrap()).unwrap().parse().unwrap();
    let _height = fields.next().unwrap();
    let pixels = fields.next().unwrap().strip_prefix(b"255\n").unwrap();
    let theirs = Seen::from_pixels(pixels, width, 3);
    for r in alike(&Seen::of(&page), &theirs) {
        assert!(ALIKE < r, "{r}");
    }
}
