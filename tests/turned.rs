//! Text that stands on its head: at the same place in PNG, SVG and PDF, and still text.

use depthpress::layout::compose::turn;
use depthpress::layout::sheet::{Face, Fill, Node, Role, Sheet, Tone, words as words_of};
use depthpress::layout::text::{Align, Style, Typesetter};
use depthpress::render::pdf::{PdfBook, pdf};
use depthpress::render::png::{Scratch, png};
use depthpress::render::svg::svg;
use depthpress::units::{Mm, Ppi, Pt};
use kurbo::{Point, Rect, Shape, Size};
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};

use crate::render_vector::{WHITE, inflated};

/// A page with a whole number of pixels at 300 ppi: turned about its middle, pixels fall on pixels.
const SIDE: f64 = 127.0;
const PIXELS: usize = 1500;
const PPI: Ppi = Ppi(300);

const BODY: Style =
    Style { face: Face::Regular, size: Pt(12.0), leading: Mm(5.2), tone: Tone::FULL, align: Align::Start };

/// Lines in both faces, kerned and with an accent, and a fill that has no symmetry.
fn upright() -> Vec<Node> {
    let mut set = Typesetter::new();
    let bold = Style { face: Face::Bold, size: Pt(20.0), leading: Mm(8.4), ..BODY };
    let mut nodes = Vec::new();
    for (words, style, y) in [
        ("Two buoys, level 2", bold, 20.0),
        ("1 near  2 far  3 near  To Va AWAY", BODY, 40.0),
        ("Élan vital: 9 of 12", BODY, 60.0),
    ] {
        let lines = set.paragraph(words, &style, Mm(100.0)).unwrap().place(13.3, y);
        nodes.push(Node::Group(Role::Paragraph, lines));
    }
    let mut wedge = kurbo::BezPath::new();
    wedge.move_to((20.0, 80.0));
    wedge.line_to((60.0, 83.0));
    wedge.line_to((20.0, 95.0));
    wedge.close_path();
    nodes.push(Node::Fill(Fill { path: wedge, tone: Tone::FULL }));
    nodes
}

fn sheet(nodes: Vec<Node>) -> Sheet {
    Sheet {
        number: 1,
        id: "answers".to_owned(),
        title: "Answers".to_owned(),
        description: "Answers.".to_owned(),
        language: "en",
        outline_level: 0,
        size: Size::new(SIDE, SIDE),
        inks: WHITE,
        nodes,
    }
}

fn turned() -> Sheet {
    let mut nodes = upright();
    turn(&mut nodes, Point::new(SIDE / 2.0, SIDE / 2.0));
    sheet(nodes)
}

/// Ink of each pixel, 0 to 255, of the PNG page.
fn png_ink(sheet: &Sheet) -> Vec<u8> {
    let bytes = png(sheet, PPI, &mut Scratch::default()).unwrap();
    let mut decoder = png::Decoder::new(std::io::Cursor::new(bytes));
    decoder.set_transformations(png::Transformations::EXPAND);
    let mut reader = decoder.read_info().unwrap();
    let mut pixels = vec![0; reader.output_buffer_size().unwrap()];
    let frame = reader.next_frame(&mut pixels).unwrap();
    assert_eq!((frame.width as usize, frame.height as usize), (PIXELS, PIXELS));
    let channels = pixels.len() / (PIXELS * PIXELS);
    pixels.chunks(channels).map(|pixel| 255 - pixel[0]).collect()
}

/// The same of the SVG page, as resvg draws it.
fn svg_ink(sheet: &Sheet) -> Vec<u8> {
    let tree = Tree::from_str(&svg(sheet), &Options::default()).unwrap();
    let mut page = Pixmap::new(PIXELS as u32, PIXELS as u32).unwrap();
    let zoom = (f64::from(PPI.0) / 96.0) as f32;
    resvg::render(&tree, Transform::from_scale(zoom, zoom), &mut page.as_mut());
    page.pixels().iter().map(|pixel| 255 - pixel.red()).collect()
}

/// How much two pages differ in an area, one of them moved by so many pixels.
fn difference(one: &[u8], other: &[u8], area: Rect, (dx, dy): (isize, isize)) -> u64 {
    let index = |mm: f64| (mm / 25.4 * f64::from(PPI.0)) as usize;
    let mut sum = 0;
    for y in index(area.y0)..index(area.y1) {
        for x in index(area.x0).max(4)..index(area.x1).min(PIXELS - 4) {
            let moved = y.strict_add_signed(dy) * PIXELS + x.strict_add_signed(dx);
            sum += u64::from(one[y * PIXELS + x].abs_diff(other[moved]));
        }
    }
    sum
}

/// The lines of [`turned`], and its fill: where each stands on the page.
fn bands() -> [Rect; 4] {
    [(20.0, 32.0), (40.0, 46.0), (60.0, 66.0), (78.0, 97.0)]
        .map(|(top, foot)| Rect::new(0.0, SIDE - foot, SIDE, SIDE - top))
}

/// The one check that needs no other program: the turned page, turned back, is the page.
#[test]
fn a_turned_page_is_the_page_turned() {
    let (page, mut back) = (png_ink(&sheet(upright())), png_ink(&turned()));
    back.reverse();
    assert!(page.contains(&255));
    // Glyphs stand on quarters of a pixel and ink has 16 grades: places in the middle between two quarters may be
    // rounded to one side or the other, a quarter of a pixel of the edge of a glyph.
    let differ = page.iter().zip(&back).filter(|(a, b)| 64 + 17 < a.abs_diff(**b)).count();
    let inked = page.iter().filter(|&&ink| 0 < ink).count();
    assert_eq!(differ, 0, "of {inked}");
}

/// resvg draws the SVG; the PNG is ours. Of all places up to three pixels around, the two agree best where they stand:
/// to half a pixel.
#[test]
fn png_and_svg_put_turned_words_in_the_same_place() {
    let page = turned();
    let (ours, theirs) = (png_ink(&page), svg_ink(&page));
    for band in bands() {
        let all = difference(&ours, &vec![0; PIXELS * PIXELS], band, (0, 0));
        let here = difference(&ours, &theirs, band, (0, 0));
        assert!(here * 5 < all, "{band:?}: {here} of {all}");
        let places = (-3..=3).flat_map(|dx| (-3..=3).map(move |dy| (dx, dy))).filter(|place| *place != (0, 0));
        for place in places {
            let there = difference(&ours, &theirs, band, place);
            assert!(here < there, "{band:?}: {here} here, {there} at {place:?}");
        }
    }
}

fn book() -> PdfBook {
    PdfBook {
        title: "Answers".to_owned(),
        author: None,
        subject: "Answers".to_owned(),
        keywords: Vec::new(),
        language: "en".to_owned(),
        date: (2026, 5, 4),
        id: "answers".to_owned(),
        process: None,
    }
}

/// Start and direction of every run in page space, points, y up: the text matrix times the matrices around it
/// (ISO 32000-1, 8.3.3 and 9.4.2).
fn pdf_runs(content: &str) -> Vec<([f64; 2], [f64; 3])> {
    let content = content.replace("Tm[", "Tm [").replace("cm/", "cm /");
    let words: Vec<&str> = content.split_ascii_whitespace().collect();
    let matrix = |at: usize| -> [f64; 6] { std::array::from_fn(|i| words[at - 6 + i].parse().unwrap()) };
    let times = |m: [f64; 6], n: [f64; 6]| {
        let [a, b, c, d, e, f] = m;
        let [p, q, r, s, t, u] = n;
        [a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, e * p + f * r + t, e * q + f * s + u]
    };
    let (mut now, mut kept, mut runs) = ([1.0, 0.0, 0.0, 1.0, 0.0, 0.0], Vec::new(), Vec::new());
    for (index, word) in words.iter().enumerate() {
        match *word {
            "q" => kept.push(now),
            "Q" => now = kept.pop().unwrap(),
            "cm" => now = times(matrix(index), now),
            "Tm" => {
                let [a, b, _, d, e, f] = times(matrix(index), now);
                runs.push(([e, f], [a, b, d]));
            }
            _ => {}
        }
    }
    runs
}

/// Each run of the PDF starts where it starts on the sheet and runs to the left. A point of the file is rounded to a
/// thousandth.
#[test]
fn pdf_turns_its_runs_about_their_starts() {
    let page = turned();
    let content = inflated(&pdf(&book(), std::slice::from_ref(&page)).unwrap());
    let mut origins = Vec::new();
    for node in &page.nodes {
        let Node::Group(_, inner) = node else { continue };
        origins.extend(inner.iter().filter_map(|node| match node {
            Node::Text(run) => Some(run.origin),
            _ => None,
        }));
    }
    let runs = pdf_runs(&content);
    assert_eq!(runs.len(), origins.len(), "{content}");
    for ((start, along), origin) in runs.iter().zip(origins) {
        let wanted = Point::new(origin.x, SIDE - origin.y).to_vec2() * 72.0 / 25.4;
        assert!((start[0] - wanted.x).abs() < 0.003 && (start[1] - wanted.y).abs() < 0.003, "{start:?} {wanted:?}");
        // One to the left for one along the line, and one down for one up.
        assert!((along[0] + 1.0).abs() < 1e-6 && along[1].abs() < 1e-6 && (along[2] + 1.0).abs() < 1e-6, "{along:?}");
    }
}

/// Whoever hears the page hears it in the same order, turned or not.
#[test]
fn turned_words_are_read_as_they_were() {
    let page = turned();
    assert_eq!(words_of(&page.nodes), words_of(&upright()));
    let told = |sheet: &Sheet| -> Vec<String> {
        svg(sheet).split("aria-label=\"").skip(1).map(|rest| rest.split('"').next().unwrap().to_owned()).collect()
    };
    assert_eq!(told(&page), told(&sheet(upright())));
    assert_eq!(told(&page).len(), 3);
}

/// Turned twice, everything is as it was, links and figures too.
#[test]
fn turning_twice_is_nothing() {
    let area = Rect::new(10.0, 20.0, 30.0, 45.0);
    let link = Role::Link { target: "a".to_owned(), area, alt: "a".to_owned() };
    let mut nodes = vec![Node::Group(link.clone(), upright())];
    turn(&mut nodes, Point::new(63.5, 63.5));
    let [Node::Group(Role::Link { area: over, .. }, _)] = nodes.as_slice() else { panic!() };
    assert!((over.x0 - 97.0).abs() < 1e-9 && (over.y1 - 107.0).abs() < 1e-9, "{over:?}");
    turn(&mut nodes, Point::new(63.5, 63.5));
    let [Node::Group(back, inner)] = nodes.as_slice() else { panic!() };
    assert_eq!(*back, link);
    let Some(Node::Fill(fill)) = inner.last() else { panic!() };
    assert!((fill.path.bounding_box().x0 - 20.0).abs() < 1e-9);
    assert!(inner.iter().all(|node| match node {
        Node::Group(_, runs) => runs.iter().all(|run| matches!(run, Node::Text(run) if !run.turned)),
        _ => true,
    }));
}
