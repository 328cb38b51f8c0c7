//! The vector renderers against readers that are not ours: resvg for pictures, plain bytes for PDF structure.
//!
//! By hand, after `cargo test -- --ignored samples`: qpdf, poppler and veraPDF on the files in `target/tmp`.

mod sheets;
mod trees;

use std::collections::BTreeMap;
use std::io::Read;

use depthpress::colour::{Cmyk, Srgb8};
use depthpress::layout::sheet::{Art, Furniture, Node, Patch, Role, Sheet};
use depthpress::layout::text::Typesetter;
use depthpress::render::pdf::{PdfBook, PdfError, pdf};
use depthpress::render::svg::svg;
use kurbo::{Point, Rect, Shape};
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};

pub(crate) use sheets::WHITE;
use sheets::{BLACK, FIGURE, LEFT, LINE, RADIUS, RIGHT};

const PPI: f64 = 300.0;

fn about() -> PdfBook {
    PdfBook {
        title: "Harbour Lights".to_owned(),
        author: Some("depthpress".to_owned()),
        subject: "Practice pages for two eyes".to_owned(),
        keywords: vec!["anaglyph".to_owned(), "practice".to_owned()],
        language: "en".to_owned(),
        date: (2026, 5, 4),
        id: "harbour-lights 1.0.0 a4".to_owned(),
        process: None,
    }
}

/// The page as resvg draws it at 300 ppi.
fn raster(sheet: &Sheet) -> Pixmap {
    let tree = Tree::from_str(&svg(sheet), &Options::default()).unwrap();
    let scale = PPI / 25.4;
    let mut pixmap = Pixmap::new((210.0 * scale) as u32, (297.0 * scale) as u32).unwrap();
    // usvg sizes the page in CSS pixels, 96 to the inch.
    let zoom = (PPI / 96.0) as f32;
    resvg::render(&tree, Transform::from_scale(zoom, zoom), &mut pixmap.as_mut());
    pixmap
}

fn pixel(pixmap: &Pixmap, at: Point) -> Srgb8 {
    let index = |mm: f64| (mm / 25.4 * PPI) as u32;
    let pixel = pixmap.pixel(index(at.x), index(at.y)).unwrap();
    Srgb8([pixel.red(), pixel.green(), pixel.blue()])
}

/// Middle of the ink of one channel in an area: of its difference from the ground.
fn centroid(pixmap: &Pixmap, ground: Srgb8, channel: usize, area: Rect) -> Point {
    let pixels = |mm: f64| (mm / 25.4 * PPI) as u32;
    let (mut sum, mut x, mut y) = (0.0, 0.0, 0.0);
    for row in pixels(area.y0)..pixels(area.y1) {
        for column in pixels(area.x0)..pixels(area.x1) {
            let value = pixmap.data()[(row * pixmap.width() + column) as usize * 4 + channel];
            let ink = f64::from(value.abs_diff(ground.0[channel]));
            (sum, x, y) = (sum + ink, x + ink * (f64::from(column) + 0.5), y + ink * (f64::from(row) + 0.5));
        }
    }
    Point::new(x / sum * 25.4 / PPI, y / sum * 25.4 / PPI)
}

/// Each eye's filter passes one part of the light: red alone, or green and blue. What stands in that part is what the
/// eye sees, wherever the other eye's mark lies over or under it. At 300 ppi the middles come out 0.005 mm to the left:
/// along the edges of the overlap, pixels that are covered in part mix the inks in the order of drawing.
#[test]
fn each_eye_sees_its_ring_at_its_place() {
    for inks in [WHITE, BLACK] {
        let page = raster(&sheets::book(inks)[0]);
        let differs = |ink: Srgb8, channel: usize| ink.0[channel] != inks.ground.0[channel];
        for channel in 0..3 {
            let (ring, other) = if differs(inks.left, channel) { (LEFT, RIGHT) } else { (RIGHT, LEFT) };
            assert!(differs(inks.left, channel) != differs(inks.right, channel));
            // The dot at page depth stands in the middle of the figure and is taken out of the sum.
            let (all, dot) = (centroid(&page, inks.ground, channel, FIGURE), Point::new(105.0, 150.0));
            let (ring_area, dot_area) = (2.0 * RADIUS * LINE, 1.0);
            let seen = Point::ORIGIN + (all.to_vec2() * (ring_area + dot_area) - dot.to_vec2() * dot_area) / ring_area;
            assert!((seen - ring).hypot() < 0.02, "{channel}: {seen:?}, not {ring:?} (other {other:?})");
        }
    }
}

#[test]
fn where_rings_cross_the_ink_is_that_of_both() {
    let half = (RIGHT.x - LEFT.x) / 2.0;
    let rise = (RADIUS * RADIUS - half * half).sqrt();
    for inks in [WHITE, BLACK] {
        let page = raster(&sheets::book(inks)[0]);
        for y in [LEFT.y - rise, LEFT.y + rise] {
            assert_eq!(pixel(&page, Point::new(LEFT.x + half, y)), inks.both);
        }
        assert_eq!(pixel(&page, Point::new(LEFT.x - RADIUS, LEFT.y)), inks.left);
        assert_eq!(pixel(&page, Point::new(RIGHT.x + RADIUS, RIGHT.y)), inks.right);
        assert_eq!(pixel(&page, Point::new(105.0, 150.0)), inks.both);
        assert_eq!(pixel(&page, Point::new(5.0, 5.0)), inks.ground);
    }
}

/// Outside the figure there are words alone: shades between ground and text ink, some of them the full ink.
#[test]
fn words_are_drawn_in_the_text_ink() {
    for inks in [WHITE, BLACK] {
        let page = raster(&sheets::book(inks)[0]);
        let end = (20.0 / 25.4 * PPI) as u32..(100.0 / 25.4 * PPI) as u32;
        let pixels: Vec<_> = end.flat_map(|y| (0..page.width()).map(move |x| (x, y))).collect();
        let grey = |&(x, y): &(u32, u32)| page.pixel(x, y).map(|p| (p.red(), p.green(), p.blue())).unwrap();
        assert!(pixels.iter().map(grey).all(|(red, green, blue)| red == green && green == blue));
        let full = pixels.iter().map(grey).filter(|&(red, ..)| red == inks.text.0[0]).count();
        assert!(20_000 < full, "{full}");
    }
}

#[test]
fn svg_tells_its_words() {
    let page = svg(&sheets::book(WHITE)[0]);
    for part in [
        "width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\"",
        "lang=\"en\" xml:lang=\"en\"",
        "<title>Mooring rings &amp; lines &lt;1&gt;</title>",
        "<desc>A ring for each eye",
        "<g role=\"heading\" aria-level=\"1\" aria-label=\"Mooring rings\">",
        "change. Stop if it strains, rest",
        "<g role=\"figure\"><title>A ring for the left eye",
        "<g role=\"columnheader\" aria-label=\"Day\">",
        "<g role=\"img\" aria-label=\"Near ring\">",
        "<g><g role=\"img\" aria-label=\"What you should have seen: page 2\">",
        "<g aria-hidden=\"true\">",
    ] {
        assert!(page.contains(part), "{part}");
    }
    for banned in ["opacity", "blend", "style", "NaN", "inf", "-0\"", "-0 ", "<text", "script"] {
        assert!(!page.contains(banned), "{banned}");
    }
    assert!(page.len() < 160 * 1024, "{}", page.len());
}

#[test]
fn svg_and_pdf_are_the_same_on_every_run() {
    let (one, two) = (sheets::book(BLACK), sheets::book(BLACK));
    assert_eq!(svg(&one[0]), svg(&two[0]));
    assert_eq!(pdf(&about(), &one), pdf(&about(), &two));
}

fn holds(bytes: &[u8], text: &str) -> bool {
    bytes.windows(text.len()).any(|window| window == text.as_bytes())
}

/// Object dictionaries are not compressed, so their keys can be read as they stand.
#[test]
fn pdf_has_its_structure_and_no_blending() {
    let bytes = pdf(&about(), &sheets::book(WHITE)).unwrap();
    assert!(bytes.starts_with(b"%PDF-1.7"));
    for key in [
        "/StructTreeRoot",
        "/S/H1",
        "/S/H2",
        "/S/P",
        "/S/L",
        "/S/LI",
        "/S/Lbl",
        "/S/LBody",
        "/S/Table",
        "/S/THead",
        "/S/TBody",
        "/S/TR",
        "/S/TH",
        "/S/TD",
        "/S/Figure",
        "/S/Caption",
        "/S/Link",
        "/Scope/Column",
        "/Scope/Row",
        "/BBox",
        "/Alt",
        "/Outlines",
        "/PageLabels",
        "/DisplayDocTitle true",
        "/Lang",
        "/OutputIntents",
        "/ListNumbering/Decimal",
        "/Subtype/Link",
    ] {
        let spaced = key.replacen("/S/", "/S /", 1).replace("/Column", " /Column").replace("/Row", " /Row");
        let spaced = spaced.replace("/Decimal", " /Decimal").replace("/Subtype/", "/Subtype /");
        assert!(holds(&bytes, key) || holds(&bytes, &spaced), "{key}");
    }
    for banned in ["/BM", "/SMask", "/CA ", "/ca "] {
        assert!(!holds(&bytes, banned), "{banned}");
    }
}

/// A figure with two patches, the second on a part of the first.
fn patches() -> Node {
    let patch = |area: Rect, colour| Node::Patch(Patch { path: area.to_path(0.1), colour });
    let area = Rect::new(20.0, 110.0, 60.0, 140.0);
    let inner = vec![patch(area, TINT), patch(Rect::new(30.0, 120.0, 40.0, 130.0), SHADE)];
    Node::Group(Role::Figure { alt: "Two patches".to_owned(), area }, inner)
}

const TINT: Srgb8 = Srgb8([251, 240, 239]);
const SHADE: Srgb8 = Srgb8([17, 130, 91]);

#[test]
fn svg_patches_have_their_own_colours() {
    for inks in [WHITE, BLACK] {
        let page = raster(&Sheet { nodes: vec![patches()], ..sheets::book(inks).remove(0) });
        let places = [((25.0, 115.0), TINT), ((35.0, 125.0), SHADE), ((70.0, 125.0), inks.ground)];
        for (at, colour) in places {
            assert_eq!(pixel(&page, Point::from(at)), colour);
        }
    }
}

/// The page content is compressed, so its words for colours are read after it is inflated.
#[test]
fn pdf_patches_have_their_own_colours_in_a_figure() {
    let sheet = Sheet { nodes: vec![patches()], ..sheets::book(WHITE).remove(0) };
    let bytes = pdf(&about(), std::slice::from_ref(&sheet)).unwrap();
    assert!(holds(&bytes, "/S/Figure") || holds(&bytes, "/S /Figure"));
    let content = inflated(&bytes);
    for Srgb8(colour) in [TINT, SHADE] {
        let near = |number: &str, value: u8| {
            number.parse::<f64>().is_ok_and(|number| (number * 255.0 - f64::from(value)).abs() < 0.5)
        };
        let words: Vec<&str> = content.split_ascii_whitespace().collect();
        let set = words.windows(4).any(|w| w[3] == "scn" && (0..3).all(|i| near(w[i], colour[i])));
        assert!(set, "{colour:?} in {content}");
    }
    let bare = Sheet { nodes: vec![Node::Patch(Patch { path: FIGURE.to_path(0.1), colour: TINT })], ..sheet };
    assert!(matches!(pdf(&about(), &[bare]), Err(PdfError::Structure { .. })));
}

/// A book in process inks draws nothing whose process inks it was not handed.
#[test]
fn process_inks_must_be_handed_over() {
    let sheet = Sheet { nodes: vec![patches()], ..sheets::book(WHITE).remove(0) };
    let book = |process| PdfBook { process: Some(process), ..about() };
    let recipes = [TINT, SHADE].map(|colour| (colour, Cmyk::of(colour)));
    let drawn = pdf(&book(BTreeMap::from(recipes)), std::slice::from_ref(&sheet));
    assert!(drawn.is_ok(), "{drawn:?}");
    let missing = pdf(&book(BTreeMap::from([recipes[0]])), &[sheet]);
    assert!(matches!(missing, Err(PdfError::Content { problem: "a colour has no process inks", .. })), "{missing:?}");
}

/// All streams of a PDF that inflate to text, one after the other.
pub(crate) fn inflated(bytes: &[u8]) -> String {
    let mut out = String::new();
    let mut rest = bytes;
    while let Some(at) = rest.windows(7).position(|window| window == b"stream\n") {
        rest = &rest[at + 7..];
        let mut text = String::new();
        if flate2::read::ZlibDecoder::new(rest).read_to_string(&mut text).is_ok() {
            out.push_str(&text);
        }
    }
    out
}

#[test]
fn faults_in_sheets_are_errors() {
    let good = sheets::book(WHITE);
    let with = |node: Node| vec![Sheet { nodes: vec![node], ..good[0].clone() }];
    let link = |target: &str, area: Rect| {
        let (target, alt) = (target.to_owned(), "there".to_owned());
        Node::Group(Role::Paragraph, vec![Node::Group(Role::Link { target, area, alt }, vec![])])
    };
    let area = Rect::new(0.0, 0.0, 10.0, 10.0);
    let mut words = sheets::run(&mut Typesetter::new(), "far");
    let figure = |area| Node::Group(Role::Figure { alt: "a".to_owned(), area }, vec![Node::Art(Art::default())]);
    assert_eq!(pdf(&about(), &[]), Err(PdfError::Empty));
    assert!(matches!(pdf(&about(), &[good[0].clone(), good[0].clone()]), Err(PdfError::DuplicateSheet { .. })));
    assert!(matches!(pdf(&about(), &with(link("nowhere", area))), Err(PdfError::UnknownTarget { .. })));
    for node in [
        Node::Art(Art::default()),
        Node::Group(Role::List, vec![Node::Text(words.clone())]),
        Node::Group(Role::Artifact(Furniture::Header), vec![link("mooring-rings", area)]),
    ] {
        assert!(matches!(pdf(&about(), &with(node)), Err(PdfError::Structure { .. })));
    }
    words.origin.x = f64::NAN;
    let mut beyond = words.clone();
    (beyond.origin.x, beyond.glyphs[0].range) = (1.0, 0..9);
    for node in [
        Node::Text(words),
        Node::Text(beyond),
        figure(Rect::new(0.0, 0.0, f64::NAN, 1.0)),
        link("mooring-rings", Rect::ZERO),
    ] {
        assert!(matches!(pdf(&about(), &with(node)), Err(PdfError::Content { .. })));
    }
    let silent = Node::Group(Role::Figure { alt: String::new(), area }, vec![Node::Art(Art::default())]);
    assert!(matches!(pdf(&about(), &with(silent)), Err(PdfError::Refused(_))));
}

/// Writes the sample books for readers outside this program.
#[test]
#[ignore = "writes files to look at by hand"]
fn samples() {
    for (name, inks) in [("white", WHITE), ("black", BLACK)] {
        let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
        let sheets = sheets::book(inks);
        std::fs::write(folder.join(format!("{name}.svg")), svg(&sheets[0])).unwrap();
        std::fs::write(folder.join(format!("{name}.pdf")), pdf(&about(), &sheets).unwrap()).unwrap();
    }
}
