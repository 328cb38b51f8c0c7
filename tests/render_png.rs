//! PNG pages, decoded again and measured: sizes, chunks, colours, places, clipping, reuse of buffers.

use std::sync::Arc;

use depthpress::colour::{Inks, Srgb8};
use depthpress::layout::fonts;
use depthpress::layout::sheet::{Art, Face, Fill, Glyph, Node, Patch, Sheet, TextRun, Tone};
use depthpress::render::png::{PngError, Scratch, png};
use depthpress::units::Ppi;
use kurbo::{BezPath, Circle, Point, Rect, Shape, Size, Vec2};
use proptest::prelude::*;
use skrifa::MetadataProvider;

const A4: Size = Size::new(210.0, 297.0);
const LETTER: Size = Size::new(215.9, 279.4);
const PPI: Ppi = Ppi(300);

/// One pixel at 300 ppi, mm.
const PIXEL: f64 = 25.4 / 300.0;

/// Left filter cyan, right filter red, on white: a mark takes the ink that its eye's filter absorbs.
const ON_WHITE: Inks = Inks {
    left: Srgb8([255, 0, 0]),
    right: Srgb8([0, 255, 255]),
    both: Srgb8([0, 0, 0]),
    ground: Srgb8([255, 255, 255]),
    text: Srgb8([0, 0, 0]),
};

/// The same glasses on black: a mark is the light that its eye's filter passes.
const ON_BLACK: Inks = Inks {
    left: Srgb8([0, 255, 255]),
    right: Srgb8([255, 0, 0]),
    both: Srgb8([255, 255, 255]),
    ground: Srgb8([0, 0, 0]),
    text: Srgb8([230, 230, 230]),
};

/// Inks that multiply to no black and whose channels are not separate.
const SOFT: Inks = Inks {
    left: Srgb8([250, 96, 81]),
    right: Srgb8([60, 201, 219]),
    both: Srgb8([48, 52, 60]),
    ground: Srgb8([241, 244, 239]),
    text: Srgb8([20, 21, 22]),
};

fn sheet(size: Size, inks: Inks, nodes: Vec<Node>) -> Sheet {
    Sheet {
        number: 1,
        id: "quay-1".into(),
        title: "Quay — dusk".into(),
        description: "Rings above the water.".into(),
        language: "en",
        outline_level: 0,
        size,
        inks,
        nodes,
    }
}

fn render(sheet: &Sheet) -> Vec<u8> {
    png(sheet, PPI, &mut Scratch::default()).unwrap()
}

/// A decoded page.
struct Picture {
    width: usize,
    height: usize,
    rgb: Vec<[u8; 3]>,
}

impl Picture {
    fn decode(bytes: &[u8]) -> Self {
        let mut decoder = ::png::Decoder::new(std::io::Cursor::new(bytes));
        decoder.set_transformations(::png::Transformations::EXPAND);
        let mut reader = decoder.read_info().unwrap();
        let mut data = vec![0; reader.output_buffer_size().unwrap()];
        let info = reader.next_frame(&mut data).unwrap();
        assert_eq!((info.color_type, info.bit_depth), (::png::ColorType::Rgb, ::png::BitDepth::Eight));
        let rgb = data.chunks_exact(3).map(|c| [c[0], c[1], c[2]]).collect();
        Self { width: info.width as usize, height: info.height as usize, rgb }
    }

    fn of(sheet: &Sheet) -> Self {
        Self::decode(&render(sheet))
    }

    fn at(&self, x: usize, y: usize) -> [u8; 3] {
        self.rgb[y * self.width + x]
    }

    /// Area in pixels and centre in mm of what differs from the ground in one channel, full difference counting 1.
    fn mass(&self, channel: usize, ground: u8, ink: u8) -> (f64, Point) {
        let full = f64::from(ink) - f64::from(ground);
        let (mut mass, mut moment) = (0.0, Vec2::ZERO);
        for y in 0..self.height {
            for x in 0..self.width {
                let share = (f64::from(self.at(x, y)[channel]) - f64::from(ground)) / full;
                mass += share;
                moment += share * Vec2::new(x as f64 + 0.5, y as f64 + 0.5);
            }
        }
        (mass, (moment / mass * PIXEL).to_point())
    }
}

fn rect(x0: f64, y0: f64, x1: f64, y1: f64) -> BezPath {
    Rect::new(x0, y0, x1, y1).to_path(0.1)
}

fn ring(centre: Point, radius: f64, width: f64) -> BezPath {
    let mut path = Circle::new(centre, radius + width / 2.0).to_path(1e-4);
    path.extend(Circle::new(centre, radius - width / 2.0).to_path(1e-4).reverse_subpaths());
    path
}

fn fill(path: BezPath, tone: Tone) -> Node {
    Node::Fill(Fill { path, tone })
}

fn art(left: Vec<BezPath>, right: Vec<BezPath>, flat: Vec<BezPath>) -> Node {
    Node::Art(Art { left, right, flat, ..Art::default() })
}

fn words(text: &str, size: f64, origin: Point, tone: Tone) -> Node {
    let charmap = fonts::font(Face::Regular).charmap();
    let glyphs = text
        .char_indices()
        .map(|(i, c)| Glyph {
            id: charmap.map(c).map_or(0, |id| id.to_u32() as u16),
            offset: (0.0, 0.0),
            advance: size * 0.55,
            range: i..i + c.len_utf8(),
        })
        .collect();
    Node::Text(TextRun { face: Face::Regular, size, origin, turned: false, glyphs, text: Arc::from(text), tone })
}

/// The chunks of a PNG file in order.
fn chunks(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut rest = &bytes[8..];
    let mut out = Vec::new();
    while !rest.is_empty() {
        let len = u32::from_be_bytes(rest[..4].try_into().unwrap()) as usize;
        out.push((String::from_utf8(rest[4..8].to_vec()).unwrap(), rest[8..8 + len].to_vec()));
        rest = &rest[12 + len..];
    }
    out
}

/// ISO 216 and ANSI/ASME Y14.1 sheets at 300 ppi.
#[test]
fn pages_have_their_pixels() {
    for (size, pixels) in [(A4, (2480, 3508)), (LETTER, (2550, 3300)), (Size::new(85.60, 53.98), (1011, 638))] {
        let picture = Picture::of(&sheet(size, ON_WHITE, Vec::new()));
        assert_eq!((picture.width, picture.height), pixels);
        assert!(picture.rgb.iter().all(|&c| c == [255, 255, 255]));
    }
}

#[test]
fn a_page_without_pixels_or_with_too_many_is_an_error() {
    for (size, ppi) in [
        (Size::new(0.0, 100.0), PPI),
        (Size::new(100.0, -1.0), PPI),
        (Size::new(f64::NAN, 100.0), PPI),
        (Size::new(100.0, f64::INFINITY), PPI),
        (A4, Ppi(0)),
        (A4, Ppi(u32::MAX)),
    ] {
        let result = png(&sheet(size, ON_WHITE, Vec::new()), ppi, &mut Scratch::default());
        assert!(matches!(result, Err(PngError::Side { .. })), "{size:?} {ppi:?}");
    }
}

/// ISO/IEC 15948: 11.3.5.3 pHYs, 11.3.3.5 sRGB with the gAMA and cHRM values it recommends. 300 ppi is 11 811 px/m.
#[test]
fn chunks_tell_size_and_colour_space() {
    let chunks = chunks(&render(&sheet(Size::new(40.0, 30.0), ON_WHITE, Vec::new())));
    let names: Vec<_> = chunks.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(names, ["IHDR", "pHYs", "sRGB", "gAMA", "cHRM", "PLTE", "iTXt", "IDAT", "IEND"]);
    assert_eq!(chunks[0].1[8..], [4, 3, 0, 0, 0], "a page of words alone takes 4 bits a pixel");
    assert_eq!(chunks[1].1, [&11811u32.to_be_bytes()[..], &11811u32.to_be_bytes()[..], &[1]].concat());
    assert_eq!(chunks[2].1, [1]);
    assert_eq!(chunks[3].1, 45455u32.to_be_bytes());
    let primaries = [31270u32, 32900, 64000, 33000, 30000, 60000, 15000, 6000];
    assert_eq!(chunks[4].1, primaries.iter().flat_map(|v| v.to_be_bytes()).collect::<Vec<_>>());
    assert!(chunks[6].1.ends_with("Quay — dusk".as_bytes()));
}

#[test]
fn full_coverage_gives_exactly_the_inks() {
    for inks in [ON_WHITE, ON_BLACK, SOFT] {
        let nodes = vec![
            art(vec![rect(1.0, 1.0, 8.0, 8.0)], vec![rect(4.0, 1.0, 12.0, 8.0)], vec![rect(1.0, 12.0, 5.0, 16.0)]),
            fill(rect(14.0, 1.0, 18.0, 8.0), Tone::FULL),
            fill(rect(6.0, 2.0, 7.0, 3.0), Tone::FULL),
        ];
        let picture = Picture::of(&sheet(Size::new(20.0, 20.0), inks, nodes));
        let at = |x: f64, y: f64| Srgb8(picture.at((x / PIXEL) as usize, (y / PIXEL) as usize));
        assert_eq!(at(2.0, 4.0), inks.left);
        assert_eq!(at(10.0, 4.0), inks.right);
        assert_eq!(at(6.0, 6.0), inks.both);
        assert_eq!(at(3.0, 14.0), inks.both, "flat art is for both eyes");
        assert_eq!(at(16.0, 4.0), inks.text);
        assert_eq!(at(6.5, 2.5), inks.text, "words win over art");
        assert_eq!(at(19.0, 19.0), inks.ground);
    }
}

/// Area mixing: a pixel of which a share is covered has that share of the ink's code value, to half a level of 14 or 31.
#[test]
fn partial_coverage_mixes_code_values() {
    let x = |share: f64| (100.0 + share) * PIXEL;
    for (inks, ink, channel) in [(ON_WHITE, ON_WHITE.left, 1), (ON_BLACK, ON_BLACK.left, 1), (SOFT, SOFT.left, 0)] {
        for share in [0.1, 0.25, 0.5, 0.75, 0.9] {
            let node = art(vec![rect(0.0, 0.0, x(share), 5.0)], vec![], vec![]);
            let picture = Picture::of(&sheet(Size::new(20.0, 5.0), inks, vec![node]));
            let (ground, ink) = (f64::from(inks.ground.0[channel]), f64::from(ink.0[channel]));
            let expected = ground + share * (ink - ground);
            let half_level = (ink - ground).abs() / 28.0 + 0.5;
            assert!((f64::from(picture.at(100, 20)[channel]) - expected).abs() <= half_level, "{share}");
        }
    }
}

/// Contrast of quiet text against white is 7:1 at #595959 (WCAG 2.2, relative luminance).
#[test]
fn tones_stand_where_they_should() {
    for tone in [Tone::QUIET, Tone::LINE, Tone::PANEL] {
        let picture = Picture::of(&sheet(Size::new(5.0, 5.0), ON_WHITE, vec![fill(rect(1.0, 1.0, 4.0, 4.0), tone)]));
        let expected = 255.0 * (1.0 - f64::from(tone.0));
        assert!((f64::from(picture.at(30, 30)[0]) - expected).abs() <= 255.0 / 62.0 + 1.0, "{tone:?}");
    }
}

fn random_places() -> impl Strategy<Value = (f64, f64, f64)> {
    (10.0..20.0, 10.0..20.0, -3.0..3.0)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, ..ProptestConfig::default() })]

    /// A pair of rings at any part of a pixel: each eye's ring stands in its own channel within 0.01 mm of its place.
    #[test]
    fn rings_stand_at_their_place_for_each_eye((x, y, parallax) in random_places()) {
        let centres = [Point::new(x - parallax / 2.0, y), Point::new(x + parallax / 2.0, y)];
        let [left, right] = centres.map(|c| ring(c, 5.0, 1.2));
        for inks in [ON_WHITE, ON_BLACK] {
            let node = art(vec![left.clone()], vec![right.clone()], vec![]);
            let picture = Picture::of(&sheet(Size::new(30.0, 30.0), inks, vec![node]));
            for (eye, centre) in [inks.left, inks.right].into_iter().zip(centres) {
                let channel = (0..3).find(|&c| eye.0[c] != inks.ground.0[c]).unwrap();
                let (mass, found) = picture.mass(channel, inks.ground.0[channel], eye.0[channel]);
                prop_assert!((found - centre).hypot() < 0.01, "{found:?} for {centre:?}");
                let area = std::f64::consts::PI * 2.0 * 5.0 * 1.2;
                prop_assert!((mass * PIXEL * PIXEL - area).abs() < 0.01 * area);
            }
        }
    }

    /// The bar of the scale page is as long as it says.
    #[test]
    fn a_bar_of_100_mm_is_100_mm_long(x in 10.0..12.0, y in 5.0..6.0) {
        let size = Size::new(125.0, 12.0);
        let picture = Picture::of(&sheet(size, ON_WHITE, vec![fill(rect(x, y, x + 100.0, y + 2.0), Tone::FULL)]));
        let row = ((y + 1.0) / PIXEL) as usize;
        let dark = |x: usize| 1.0 - f64::from(picture.at(x, row)[0]) / 255.0;
        let length: f64 = (0..picture.width).map(dark).sum::<f64>() * PIXEL;
        prop_assert!((length - 100.0).abs() < 0.02, "{length}");
    }

    /// Whatever the outlines are, a page comes out, or a tidy refusal.
    #[test]
    fn any_outline_gives_a_page_or_an_error(
        path in any_path(), flat in any_path(), tone in any::<f32>(), size in any_number(), at in any_point(),
    ) {
        let nodes = vec![
            art(vec![path.clone()], vec![flat.clone(), path.clone()], vec![flat]),
            fill(path, Tone(tone)),
            words("Ebb", size, at, Tone(tone)),
        ];
        match png(&sheet(Size::new(12.0, 9.0), SOFT, nodes), PPI, &mut Scratch::default()) {
            Ok(bytes) => { let picture = Picture::decode(&bytes); prop_assert_eq!(picture.height, 106); }
            Err(error) => prop_assert!(matches!(error, PngError::Coordinate { .. }), "{error}"),
        }
    }
}

/// Numbers of any kind: on the page, on the borders of pixels, far out, and at times not finite.
fn any_number() -> impl Strategy<Value = f64> + Clone {
    prop_oneof![
        8 => -3.0..15.0f64,
        2 => (-40i32..160).prop_map(|n| f64::from(n) * PIXEL / 4.0),
        1 => -1e6..1e6f64,
        1 => prop::sample::select(vec![0.0, -0.0, 1e-300, 7.0, 1e8, -1e8, 1e300, -1e300, f64::NAN, f64::INFINITY]),
    ]
}

fn any_point() -> impl Strategy<Value = Point> + Clone {
    (any_number(), any_number()).prop_map(Point::from)
}

/// Paths of any shape: degenerate, not closed, without a start.
fn any_path() -> impl Strategy<Value = BezPath> {
    let point = any_point();
    prop::collection::vec((0..8u8, point.clone(), point.clone(), point), 0..12).prop_map(|steps| {
        let mut path = BezPath::new();
        for (kind, a, b, c) in steps {
            let start = path.elements().is_empty();
            match kind {
                _ if start => path.move_to(a),
                0 => path.move_to(a),
                1 => path.close_path(),
                2 => path.quad_to(a, b),
                3 => path.curve_to(a, b, c),
                _ => path.line_to(a),
            }
        }
        path
    })
}

#[test]
fn outlines_that_are_not_finite_are_refused_by_name() {
    let mut path = rect(1.0, 1.0, 2.0, 2.0);
    path.line_to((f64::NAN, 1.0));
    let error = png(&sheet(A4, ON_WHITE, vec![fill(path, Tone::FULL)]), PPI, &mut Scratch::default()).unwrap_err();
    assert!(error.to_string().contains("`quay-1`"));
}

#[test]
fn content_beyond_the_page_is_clipped() {
    let size = Size::new(20.0, 20.0);
    let nodes = vec![
        art(vec![rect(-5.0, -5.0, 10.0, 10.0)], vec![rect(15.0, 15.0, 1e5, 1e5)], vec![rect(-9.0, 4.0, -1.0, 9.0)]),
        words("Wide quay", 8.0, Point::new(-6.0, 22.0), Tone::FULL),
        words("Ropes", 60.0, Point::new(-20.0, 30.0), Tone::FULL),
    ];
    let picture = Picture::of(&sheet(size, ON_WHITE, nodes[..1].to_vec()));
    assert_eq!(picture.at(0, 0), ON_WHITE.left.0);
    assert_eq!(picture.at(117, 117), ON_WHITE.left.0);
    assert_eq!(picture.at(picture.width - 1, picture.height - 1), ON_WHITE.right.0);
    assert_eq!(picture.at(130, 100), ON_WHITE.ground.0);
    assert!(!render(&sheet(size, ON_WHITE, nodes)).is_empty());
}

fn busy(inks: Inks) -> Sheet {
    let nodes = vec![
        words("Mooring rings", 6.35, Point::new(20.0, 24.3), Tone::FULL),
        fill(rect(20.0, 30.0, 190.0, 60.0), Tone::PANEL),
        words("Look from the near ring to the far ring and back.", 4.2, Point::new(21.0, 40.0), Tone::QUIET),
        art(
            vec![ring(Point::new(70.3, 120.0), 19.0, 2.4), rect(20.0, 200.0, 40.0, 220.0)],
            vec![ring(Point::new(66.1, 120.0), 19.0, 2.4)],
            vec![rect(60.0, 200.0, 90.0, 210.0)],
        ),
    ];
    sheet(A4, inks, nodes)
}

#[test]
fn the_same_sheet_gives_the_same_bytes_whatever_came_before() {
    let (first, second) =
        (busy(ON_WHITE), sheet(LETTER, ON_BLACK, vec![words("Quay", 5.0, Point::new(9.0, 9.0), Tone::LINE)]));
    let (fresh_first, fresh_second) = (render(&first), render(&second));
    assert_eq!(fresh_first, render(&first));
    let mut scratch = Scratch::default();
    let small = sheet(Size::new(10.0, 10.0), SOFT, vec![art(vec![rect(0.0, 0.0, 10.0, 10.0)], vec![], vec![])]);
    for _ in 0..2 {
        assert!(png(&small, PPI, &mut scratch).is_ok());
        assert_eq!(png(&first, PPI, &mut scratch).unwrap(), fresh_first);
        assert!(
            png(&sheet(A4, SOFT, vec![fill(ring(Point::new(f64::NAN, 0.0), 1.0, 1.0), Tone::FULL)]), PPI, &mut scratch)
                .is_err()
        );
        assert_eq!(png(&second, PPI, &mut scratch).unwrap(), fresh_second);
    }
}

/// Letters stand where their outlines stand: the raster of a line has the area and the centre of its outlines.
#[test]
fn glyphs_stand_at_their_place() {
    for (size, x) in [(4.0, 3.02), (12.0, 3.07), (30.0, 2.96)] {
        let origin = Point::new(x, 28.03);
        let node = words("HO", size, origin, Tone::FULL);
        let Node::Text(run) = &node else { unreachable!() };
        let mut outline = BezPath::new();
        let mut pen = origin.to_vec2();
        for glyph in &run.glyphs {
            outline.extend(
                kurbo::Affine::translate(pen) * kurbo::Affine::scale(size) * fonts::outline(Face::Regular, glyph.id),
            );
            pen.x += glyph.advance;
        }
        let page = Size::new(50.0, 40.0);
        let glyphs = Picture::of(&sheet(page, ON_WHITE, vec![node])).mass(0, 255, 0);
        let fills = Picture::of(&sheet(page, ON_WHITE, vec![fill(outline, Tone::FULL)])).mass(0, 255, 0);
        assert!((glyphs.0 / fills.0 - 1.0).abs() < 0.02, "{size}: {} {}", glyphs.0, fills.0);
        // Glyphs snap to quarters of a pixel, so each may stand up to an eighth aside in x and in y.
        assert!((glyphs.1 - fills.1).hypot() < PIXEL * 0.18, "{size}: {:?} {:?}", glyphs.1, fills.1);
    }
}

/// The same art drawn by another renderer, from SVG with the same scale.
///
/// That renderer takes 4 by 4 samples a pixel, so one border may differ by a quarter there and by half a level of 14 here;
/// places must agree to 0.01 mm all the same.
#[test]
fn art_stands_where_another_renderer_puts_it() {
    let (size, pixels) = (Size::new(40.64, 25.4), (480, 300));
    let path: BezPath = ring(Point::new(17.31, 11.07), 6.0, 1.7)
        .iter()
        .chain(Rect::new(25.04, 5.55, 33.3, 21.22).to_path(0.1))
        .chain(Circle::new((33.0, 8.0), 5.2).to_path(1e-4))
        .collect();
    let picture = Picture::of(&sheet(size, ON_WHITE, vec![art(vec![path.clone()], vec![], vec![])]));
    assert_eq!((picture.width, picture.height), pixels);
    let svg = format!(
        r#"<svg xmlns="http://www.w3.org/2000/svg" width="480" height="300" viewBox="0 0 40.64 25.4"><path d="{}"/></svg>"#,
        path.to_svg()
    );
    let tree = usvg::Tree::from_str(&svg, &usvg::Options::default()).unwrap();
    let mut map = tiny_skia::Pixmap::new(480, 300).unwrap();
    resvg::render(&tree, tiny_skia::Transform::identity(), &mut map.as_mut());
    let (mut mass, mut moment) = (0.0, Vec2::ZERO);
    for y in 0..picture.height {
        for x in 0..picture.width {
            let theirs = f64::from(map.pixels()[y * picture.width + x].alpha()) / 255.0;
            let ours = 1.0 - f64::from(picture.at(x, y)[1]) / 255.0;
            assert!((ours - theirs).abs() <= 0.25 + 1.0 / 28.0, "{x} {y}: {ours} {theirs}");
            mass += theirs;
            moment += theirs * Vec2::new(x as f64 + 0.5, y as f64 + 0.5);
        }
    }
    let (our_mass, ours) = picture.mass(1, 255, 0);
    assert!((ours - (moment / mass * PIXEL).to_point()).hypot() < 0.01);
    assert!((our_mass / mass - 1.0).abs() < 0.005, "{our_mass} {mass}");
}

fn patch(path: BezPath, colour: [u8; 3]) -> Node {
    Node::Patch(Patch { path, colour: Srgb8(colour) })
}

/// A pixel is the patch's if at least half of it is: 1/4 pixel short on one side, 3/4 on the other.
#[test]
fn patches_are_exact_on_whole_pixels() {
    let px = |pixels: f64| pixels * PIXEL;
    let nodes = vec![
        patch(rect(px(10.25), px(10.75), px(40.25), px(40.75)), [251, 240, 239]),
        patch(rect(px(20.0), px(20.0), px(30.0), px(30.0)), [17, 130, 91]),
        fill(rect(px(24.0), px(24.0), px(26.0), px(26.0)), Tone::FULL),
    ];
    for inks in [ON_WHITE, ON_BLACK, SOFT] {
        let page = Picture::of(&sheet(Size::new(8.0, 8.0), inks, nodes.clone()));
        for y in 0..60 {
            for x in 0..60 {
                let within = |from: usize, to: usize| (from..to).contains(&x) && (from..to).contains(&y);
                let wanted = match (within(24, 26), within(20, 30), (10..40).contains(&x) && (11..41).contains(&y)) {
                    (true, ..) => inks.text.0,
                    (_, true, _) => [17, 130, 91],
                    (.., true) => [251, 240, 239],
                    _ => inks.ground.0,
                };
                assert_eq!(page.at(x, y), wanted, "{x} {y}");
            }
        }
    }
}

/// Beside patches the art has two levels of coverage less; its areas and places stay.
#[test]
fn art_beside_patches_keeps_its_place() {
    let centre = Point::new(12.31, 14.77);
    let art = Art { left: vec![ring(centre, 6.0, 2.0)], ..Art::default() };
    let nodes = vec![patch(rect(30.0, 30.0, 34.0, 34.0), ON_WHITE.ground.0), Node::Art(art)];
    let page = Picture::of(&sheet(Size::new(40.0, 40.0), ON_WHITE, nodes));
    let (mass, middle) = page.mass(1, 255, 0);
    let area = std::f64::consts::PI * (7.0_f64.powi(2) - 5.0_f64.powi(2)) / PIXEL.powi(2);
    assert!((mass / area - 1.0).abs() < 2e-3, "{mass} {area}");
    assert!((middle - centre).hypot() < 2e-3, "{middle:?}");
}

#[test]
fn a_page_has_room_for_so_many_colours_of_patches() {
    let page = |count: usize| {
        let one = |i: usize| {
            let x = i as f64;
            patch(rect(x, 1.0, x + 1.0, 3.0), [i as u8, 100, 200 - i as u8])
        };
        // The first colour comes again: it counts once.
        let nodes = (0..count).map(one).chain([patch(rect(0.0, 4.0, 9.0, 5.0), [0, 100, 200])]).collect();
        sheet(Size::new(60.0, 8.0), ON_WHITE, nodes)
    };
    let picture = Picture::of(&page(Patch::MOST));
    for i in 0..Patch::MOST {
        let x = ((i as f64 + 0.5) / PIXEL) as usize;
        assert_eq!(picture.at(x, 20), [i as u8, 100, 200 - i as u8]);
    }
    let refused = png(&page(Patch::MOST + 1), PPI, &mut Scratch::default());
    assert!(matches!(refused, Err(PngError::Colours { .. })));
}

/// A sheet with patches leaves nothing behind in the buffers for the next one.
#[test]
fn patches_do_not_stay_for_the_next_page() {
    let plain = sheet(LETTER, ON_BLACK, vec![fill(rect(3.0, 3.0, 9.0, 9.0), Tone::FULL)]);
    let patched = sheet(LETTER, ON_BLACK, vec![patch(rect(1.0, 1.0, 50.0, 50.0), [90, 20, 20])]);
    let mut scratch = Scratch::default();
    let first = png(&plain, PPI, &mut scratch).unwrap();
    png(&patched, PPI, &mut scratch).unwrap();
    assert_eq!(png(&plain, PPI, &mut scratch).unwrap(), first);
}
