//! The author's own pictures: what becomes of them, against a renderer of others, and what is refused, how soon.

use std::fs;
use std::path::Path;
use std::sync::Arc;
use std::time::{Duration, Instant};

use depthpress::artwork::{drawing, grid, parts};
use depthpress::bundle::load::load;
use depthpress::bundle::pictures::Folder;
use depthpress::diagnostics::{Diagnostics, Sources};
use depthpress::exercise::{Page, pages, read_exercise};
use depthpress::language::{Language, Tongue};
use depthpress::scene::{Eyes, Form, Role, Shape, Size};
use depthpress::spec::picture::Pictures;
use depthpress::spec::reader::Reader;
use kurbo::{Affine, BezPath, PathEl, Shape as _};

/// The pictures of the gallery, for examples that name them.
pub fn gallery() -> Folder {
    Folder::new(&gallery_path())
}

fn gallery_path() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery")
}

fn svg(inner: &str) -> String {
    format!("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\">{inner}</svg>")
}

/// The area of a drawing whose longer side is `longer`, in the units of its file.
fn area(inner: &str, longer: f64) -> f64 {
    drawing("case", svg(inner).as_bytes()).unwrap().outline.area() * longer * longer
}

/// Why a picture is refused; it must be said within two seconds, in a build without optimisation.
fn refused(text: &str) -> String {
    let start = Instant::now();
    let refusal = drawing("case", text.as_bytes()).unwrap_err();
    assert!(start.elapsed() < Duration::from_secs(2), "{:?} for {}", start.elapsed(), refusal.message);
    assert!(refusal.message.len() < 300 && !refusal.help.is_empty(), "{}", refusal.message);
    refusal.message
}

/// Areas by plane geometry.
#[test]
fn fills_strokes_rules_and_copies_make_the_areas_they_should() {
    let close = |found: f64, wanted: f64| assert!((found - wanted).abs() < 0.002 * wanted, "{found} {wanted}");
    let pi = std::f64::consts::PI;
    close(area("<rect x='10' y='10' width='40' height='20'/>", 40.0), 800.0);
    close(area("<circle cx='50' cy='50' r='20'/>", 40.0), pi * 400.0);
    close(area("<circle cx='50' cy='50' r='20' fill='none' stroke='red' stroke-width='4'/>", 44.0), pi * 160.0);
    let nested = "d='M0 0H60V60H0Z M10 10H50V50H10Z'";
    close(area(&format!("<path {nested}/>"), 60.0), 3600.0);
    close(area(&format!("<path {nested} fill-rule='evenodd'/>"), 60.0), 2000.0);
    // Fill and stroke of one shape, shapes that overlap the other way round, and a shape laid over a hole.
    close(area("<rect x='10' y='10' width='40' height='40' stroke='black' stroke-width='10' />", 50.0), 2500.0);
    close(area("<path d='M0 0H40V40H0Z'/><path d='M20 0V40H60V0Z'/>", 60.0), 2400.0);
    close(area(&format!("<path {nested} fill-rule='evenodd'/><path d='M10 10H50V30H10Z'/>"), 60.0), 2800.0);
    // Transforms, copies, classes, inherited paint, gradients.
    close(area("<g transform='translate(5 5) scale(2)'><rect width='10' height='10'/></g>", 20.0), 400.0);
    close(area("<rect id='a' width='10' height='10'/><use href='#a' x='20'/><use href='#a' x='40'/>", 50.0), 300.0);
    let styled = "<style>.a{fill:none} #b{stroke:#123;stroke-width:2}</style><path id='b' class='a' d='M0 0H50'/>";
    let drawn = area(&format!("{styled}<rect y='20' width='50' height='10'/>"), 50.0);
    close(drawn, 600.0);
    close(area("<g fill='none'><g fill='#333'><rect width='9' height='9'/></g><circle r='50'/></g>", 9.0), 81.0);
    let gradient = "<linearGradient id='g'><stop stop-color='red'/><stop offset='1'/></linearGradient>";
    close(area(&format!("{gradient}<rect width='30' height='30' fill='url(#g)'/>"), 30.0), 900.0);
    // Three dashes of 10 by 4.
    close(area("<path d='M0 5H50' stroke='black' stroke-width='4' stroke-dasharray='10'/>", 50.0), 120.0);
    // What is not shown is not drawn.
    close(area("<rect width='9' height='9'/><g display='none'><circle r='50'/></g>", 9.0), 81.0);
}

/// Pixels of the outline against those of resvg, a renderer of others, over the same square.
#[test]
fn gallery_drawings_cover_what_a_renderer_of_others_covers() {
    const SIDE: u32 = 600;
    for name in ["gull", "harbour", "lighthouse"] {
        let bytes = fs::read(gallery_path().join(format!("art/{name}.svg"))).unwrap();
        let tree = usvg::Tree::from_data(&bytes, &usvg::Options::default()).unwrap();
        let bounds = tree.root().abs_stroke_bounding_box();
        let longer = bounds.width().max(bounds.height());
        let (scale, half) = ((SIDE as f32 - 8.0) / longer, SIDE as f32 / 2.0);
        let middle = (bounds.x() + bounds.width() / 2.0, bounds.y() + bounds.height() / 2.0);
        let mut theirs = tiny_skia::Pixmap::new(SIDE, SIDE).unwrap();
        let place = tiny_skia::Transform::from_translate(-middle.0, -middle.1)
            .post_scale(scale, scale)
            .post_translate(half, half);
        resvg::render(&tree, place, &mut theirs.as_mut());
        let ours = raster(&drawing(name, &bytes).unwrap().outline, f64::from(scale * longer), SIDE);
        let pairs = ours.pixels().iter().zip(theirs.pixels());
        let far = pairs.filter(|(a, b)| 64 < a.alpha().abs_diff(b.alpha())).count();
        let inked = theirs.pixels().iter().filter(|p| 0 < p.alpha()).count();
        assert!(5_000 < inked && far * 2_000 < inked, "{name}: {far} of {inked} pixels differ");
    }
}

fn raster(path: &BezPath, size: f64, side: u32) -> tiny_skia::Pixmap {
    let half = f64::from(side) / 2.0;
    let placed = Affine::translate((half, half)) * Affine::scale(size) * path;
    let mut builder = tiny_skia::PathBuilder::new();
    for element in placed.elements() {
        match element {
            PathEl::MoveTo(p) => builder.move_to(p.x as f32, p.y as f32),
            PathEl::LineTo(p) => builder.line_to(p.x as f32, p.y as f32),
            PathEl::ClosePath => builder.close(),
            other => panic!("{other:?}"),
        }
    }
    let mut pixmap = tiny_skia::Pixmap::new(side, side).unwrap();
    let (paint, rule) = (tiny_skia::Paint { anti_alias: true, ..Default::default() }, tiny_skia::FillRule::Winding);
    pixmap.fill_path(&builder.finish().unwrap(), &paint, rule, tiny_skia::Transform::identity(), None);
    pixmap
}

#[test]
fn a_drawing_lies_about_its_middle_with_a_longer_side_of_one() {
    let bytes = fs::read(gallery_path().join("art/gull.svg")).unwrap();
    let gull = drawing("gull", &bytes).unwrap();
    let bounds = gull.outline.bounding_box();
    assert!((bounds.width() - 1.0).abs() < 1e-5 && bounds.center().to_vec2().hypot() < 1e-5, "{bounds:?}");
    assert!((bounds.height() - gull.extent.1).abs() < 1e-5 && gull.extent.0 == 1.0);
    assert!(0.0 < gull.outline.area());
    assert_eq!(gull, drawing("gull", &bytes).unwrap());
}

#[test]
fn parts_keep_their_places_in_the_whole() {
    let two = svg("<g id='a'><rect x='10' y='10' width='20' height='10'/></g>\
                   <g id='b'><rect x='70' y='40' width='20' height='20'/></g>");
    let picture = parts("two", two.as_bytes()).unwrap();
    // The whole is 80 by 50, its middle at (50, 35).
    let near = |found: (f64, f64), wanted: (f64, f64)| {
        assert!((found.0 - wanted.0).abs() < 1e-5 && (found.1 - wanted.1).abs() < 1e-5, "{found:?} {wanted:?}");
    };
    near(picture.extent, (1.0, 50.0 / 80.0));
    near(picture.parts[0].at, (-30.0 / 80.0, -20.0 / 80.0));
    near(picture.parts[1].at, (30.0 / 80.0, 15.0 / 80.0));
    near((picture.parts[0].size, picture.parts[1].size), (0.25, 0.25));
    let wrong = |inner: &str| parts("case", svg(inner).as_bytes()).unwrap_err().message;
    assert_eq!(wrong("<g><circle r='9'/></g>"), "has a group without `id` at its top");
    assert_eq!(wrong("<circle r='9'/>"), "has a `<circle>` outside the groups at its top");
    assert_eq!(wrong("<g id='a'><circle r='9'/></g><g id='b'/>"), "the group `b` draws nothing");
    assert_eq!(wrong("<g id='a'><circle r='9'/></g><g id='a'><circle r='9'/></g>"), "has two elements with the id `a`");
}

#[test]
fn what_an_outline_cannot_show_is_refused_by_name() {
    for (inner, expected) in [
        ("<text>Boje</text>", "has an element `<text>`, which an outline cannot show"),
        ("<image href='gull.png'/>", "has an element `<image>`, which an outline cannot show"),
        ("<image href='file:///etc/passwd'/>", "has an element `<image>`, which an outline cannot show"),
        ("<script>1</script>", "has an element `<script>`, which an outline cannot show"),
        ("<filter id='f'/>", "has an element `<filter>`, which an outline cannot show"),
        ("<mask id='m'/>", "has an element `<mask>`, which an outline cannot show"),
        ("<pattern id='p'/>", "has an element `<pattern>`, which an outline cannot show"),
        ("<svg/>", "has an element `<svg>` inside another, which an outline cannot show"),
        ("<circle r='9' filter='url(#f)'/>", "has a `filter` on `<circle>`, which an outline cannot show"),
        ("<circle r='9' style='clip-path:url(#c)'/>", "has a `clip-path` on `<circle>`, which an outline cannot show"),
        ("<circle r='9' onclick='x()'/>", "has a script in `onclick` of `<circle>`"),
        ("<circle r='9' fill='url(#x)'/>", "has `fill: url(#x)`, which names no gradient of the file"),
        ("<use href='other.svg#a'/>", "has a `<use>` of `other.svg#a`, outside the file"),
        ("<use href='http://127.0.0.1/a.svg#a'/>", "has a `<use>` of `http://127.0.0.1/a.svg#a`, outside the file"),
        ("<use href='#gone'/>", "has a `<use>` of `#gone`, which no shape or group of the file is"),
        ("<style>@import url(a.css);</style>", "has `@import` in its style sheet"),
        ("<style>g g g a{fill:red}</style>", "has the selector `g g g a` in its style sheet"),
        (
            "<style>.a{fill:url(http://127.0.0.1/)}</style>",
            "has `fill: url(http://127.0.0.1/)`, which names no gradient of the file",
        ),
        (
            "<rect width='9' height='9' fill='white'/>",
            "paints something white: every paint is ink here, so it would not cover what lies under it",
        ),
        ("", "draws nothing"),
        ("<path d='M0 0H9' fill='none'/>", "draws nothing"),
        (
            "<path d='M0 0H9e9V9Z'/>",
            "has the coordinate `9e9` in `d` of `<path>`, beyond the limit of 100000 either way",
        ),
        (
            "<path d='M0 0H1e999V9Z'/>",
            "has the coordinate `1e999` in `d` of `<path>`, beyond the limit of 100000 either way",
        ),
        (
            "<path d='M0 0H90' stroke='black' stroke-width='1' stroke-dasharray='1e-7'/>",
            "has a line of more than 2000 dashes",
        ),
    ] {
        assert_eq!(refused(&svg(inner)), expected, "{inner}");
    }
    assert_eq!(refused("<html/>"), "is not an SVG");
    assert_eq!(refused("\u{1f}\u{8b}x"), "cannot be read as XML: unknown token at 1:1");
    assert_eq!(drawing("z", &[0x1f, 0x8b, 8]).unwrap_err().message, "is compressed");
    assert_eq!(drawing("z", b"<svg>\xff</svg>").unwrap_err().message, "is not UTF-8");
}

/// Each bomb ends with its reason within two seconds: see [`refused`].
#[test]
fn bombs_are_refused_in_time() {
    let (open, close) = ("<g>".repeat(100_000), "</g>".repeat(100_000));
    assert_eq!(refused(&svg(&format!("{open}{close}"))), "has elements nested more than 64 deep");
    assert_eq!(refused(&svg(&open)), "has elements nested more than 64 deep");
    assert_eq!(refused(&svg(&"<g/>".repeat(1_000_000))), "has more than 20000 elements");
    assert_eq!(refused(&svg(&"<!---->".repeat(500_000))), "has more than 20000 elements");
    let wide: String = (0..300_000).map(|i| format!(" a{i}=''")).collect();
    assert_eq!(refused(&svg(&format!("<g{wide}/>"))), "has an element of more than 100 attributes");
    let names: String = (0..90).map(|i| format!(" xmlns:a{i}='a{i}'")).collect();
    assert_eq!(refused(&svg(&format!("<g{names}/>"))), "has more than 64 namespace declarations");
    let laughs = "<!DOCTYPE svg [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><svg>&b;</svg>";
    assert!(refused(laughs).starts_with("has a `<!DOCTYPE …>`"));
    assert!(refused("<!DOCTYPE svg SYSTEM 'file:///dev/zero'><svg/>").starts_with("has a `<!DOCTYPE …>`"));
    assert!(refused("<?xml-stylesheet href='http://127.0.0.1/a.css'?><svg/>").starts_with("names a style sheet"));
    // Copies of copies: of themselves, in a ring, doubling forty times, and one after another.
    assert_eq!(refused(&svg("<g id='a'><use href='#a'/></g>")), "has a `<use>` of `#a` inside itself");
    let ring = "<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>";
    assert!(refused(&svg(ring)).ends_with("inside itself"));
    let doubling: String =
        (1..30).map(|i| format!("<g id='a{i}'><use href='#a{0}'/><use href='#a{0}'/></g>", i - 1)).collect();
    let doubling = refused(&svg(&format!("<path id='a0' d='M0 0H9V9Z'/>{doubling}")));
    assert!(doubling.starts_with("has ") && doubling.contains("once every `<use>` is written out"), "{doubling}");
    let chain: String = (1..9_000).map(|i| format!("<g id='a{i}'><use href='#a{}'/></g>", i - 1)).collect();
    let chain = refused(&svg(&format!("<path id='a0' d='M0 0H9V9Z'/>{chain}")));
    assert_eq!(chain, "has elements nested more than 64 deep, every `<use>` written out");
    // A large path, copied often; paths of many corners; lines that cross everywhere.
    let long = format!("<path id='a' d='M0 0{}Z'/>", "L1 2 3 4".repeat(2_000));
    let copied = refused(&svg(&format!("{long}{}", "<use href='#a'/>".repeat(5_000))));
    assert!(copied.starts_with("has 40") && copied.ends_with("above the limit of 200000"), "{copied}");
    let corners: String = (0..60_000).map(|i| format!("L{} {}", i % 300, i / 300)).collect();
    assert!(refused(&svg(&format!("<path d='M0 0{corners}Z'/>"))).starts_with("has more than 50000 corners"));
    let web: String = (0..6_000).map(|i| format!("M0 {i}L6000 {}", 6_000 - i)).collect();
    assert!(refused(&svg(&format!("<path d='{web}' stroke='black'/>"))).starts_with("is too dense"));
    // Styles: too long, and many for many.
    let long = refused(&svg(&format!("<style>{}</style>", "a{b:c}".repeat(100_000))));
    assert_eq!(long, "has a style sheet of 600000 bytes, above the limit of 16384 bytes");
    let many = format!("<style>{}</style>{}", "a{b:c}".repeat(400), "<g/>".repeat(19_000));
    assert!(refused(&svg(&many)).ends_with("of style sheet for 19002 elements"));
}

proptest::proptest! {
    #[test]
    fn random_pictures_never_crash(bytes: Vec<u8>) {
        let _ = drawing("case", &bytes);
        let _ = grid("case", &bytes);
    }

    #[test]
    fn edited_pictures_never_crash(
        edits in proptest::collection::vec((0.0..1.0, 0..9usize, "[ -~]{0,6}"), 1..5),
    ) {
        let mut bytes = fs::read(gallery_path().join("art/harbour.svg")).unwrap();
        let mut png = fs::read(gallery_path().join("art/sand-banks.png")).unwrap();
        for (share, remove, piece) in &edits {
            for bytes in [&mut bytes, &mut png] {
                let at = (share * bytes.len() as f64) as usize;
                let end = (at + remove).min(bytes.len());
                bytes.splice(at..end, piece.bytes());
            }
        }
        let _ = parts("case", &bytes);
        let _ = grid("case", &png);
    }
}

/// A PNG of these rows of bytes.
fn png(width: u32, height: u32, colour: png::ColorType, depth: png::BitDepth, data: &[u8]) -> Vec<u8> {
    let mut out = Vec::new();
    let mut encoder = png::Encoder::new(&mut out, width, height);
    encoder.set_color(colour);
    encoder.set_depth(depth);
    if colour == png::ColorType::Indexed {
        encoder.set_palette(vec![0; 6]);
    }
    encoder.write_header().unwrap().write_image_data(data).unwrap();
    out
}

#[test]
fn greys_are_shares_of_white() {
    use png::{BitDepth, ColorType};
    let shares = |depth, data: &[u8]| grid("g", &png(3, 2, ColorType::Grayscale, depth, data)).unwrap().shares;
    let eight = shares(BitDepth::Eight, &[0, 51, 255, 102, 204, 153]);
    assert_eq!(eight, [0.0, 0.2, 1.0, 0.4, 0.8, 0.6]);
    let sixteen = shares(BitDepth::Sixteen, &[0, 0, 0x33, 0x33, 255, 255, 0, 1, 0, 0, 0, 0]);
    assert_eq!(sixteen, [0.0, 0.2, 1.0, 1.0 / 65535.0, 0.0, 0.0]);
    assert_eq!(shares(BitDepth::One, &[0b1010_0000, 0b0100_0000]), [1.0, 0.0, 1.0, 0.0, 1.0, 0.0]);
    let four = shares(BitDepth::Four, &[0x0f, 0x30, 0x69, 0xc0]);
    assert_eq!(four, [0.0, 1.0, 0.2, 0.4, 0.6, 0.8]);
    let banks = gallery().grid("art/sand-banks.png").unwrap();
    assert_eq!((banks.name.as_str(), banks.columns, banks.shares.len()), ("sand banks", 90, 90 * 60));
}

#[test]
fn pictures_that_are_no_grey_maps_are_refused() {
    use png::{BitDepth, ColorType};
    let refused = |bytes: &[u8]| grid("g", bytes).unwrap_err().message;
    let eight = |colour, samples: usize| refused(&png(2, 2, colour, BitDepth::Eight, &vec![0; 4 * samples]));
    assert_eq!(eight(ColorType::Rgb, 3), "is in colour");
    assert_eq!(eight(ColorType::Rgba, 4), "is in colour with transparency");
    assert_eq!(eight(ColorType::GrayscaleAlpha, 2), "is grey with transparency");
    assert_eq!(eight(ColorType::Indexed, 1), "has a palette");
    assert_eq!(
        refused(&png(1, 3, ColorType::Grayscale, BitDepth::Eight, &[0; 3])),
        "has 1 by 3 pixels, below the least, 2 by 2"
    );
    // A header that promises more pixels than there are bytes in the world: refused before anything is made ready.
    let mut huge = png(2, 2, ColorType::Grayscale, BitDepth::Eight, &[0; 4]);
    huge[16..24].copy_from_slice(&[0x7f, 0xff, 0xff, 0xff, 0x7f, 0xff, 0xff, 0xff]);
    let mut crc = flate2::Crc::new();
    crc.update(&huge[12..29]);
    huge[29..33].copy_from_slice(&crc.sum().to_be_bytes());
    assert_eq!(refused(&huge), "has 2147483647 by 2147483647 pixels, above the limit of 1000000 in all");
    let whole = png(2, 2, ColorType::Grayscale, BitDepth::Eight, &[0; 4]);
    for length in [0, 8, 20, 40, whole.len() - 20] {
        assert!(refused(&whole[..length]).starts_with("cannot be read as PNG"), "{length}");
    }
}

#[test]
fn a_picture_is_read_once() {
    let pictures = gallery();
    let first = pictures.drawing("art/gull.svg").unwrap();
    assert!(Arc::ptr_eq(&first, &pictures.drawing("art/gull.svg").unwrap()));
}

const SET: &str = include_str!("../specs/gallery/set.toml");

/// The problems of a set whose one exercise is a `hold` of this drawing.
fn problems(file: &str, put: impl Fn(&Path)) -> Vec<(String, String)> {
    let dir = tempfile::tempdir().unwrap();
    let list = SET.split_once("exercises = [").unwrap();
    let rest = list.1.split_once(']').unwrap().1;
    fs::write(dir.path().join("set.toml"), format!("{}exercises = [\"a.toml\"]{rest}", list.0)).unwrap();
    let target = format!("[[target]]\nshape = \"drawing\"\nfile = \"{file}\"\nsize = \"40 mm\"\ndepth = \"page\"\n");
    fs::write(dir.path().join("a.toml"), format!("[exercise]\nkind = \"hold\"\ntitle = \"T\"\n\n{target}")).unwrap();
    put(dir.path());
    let loaded = load(dir.path()).unwrap();
    let shown = loaded.diagnostics.iter().map(|p| {
        let place = p.place.unwrap();
        let path = loaded.sources.path(place.file).rsplit('/').next().unwrap().to_owned();
        (format!("{path}:{}", loaded.sources.line(place).unwrap().number), p.message.clone())
    });
    shown.collect()
}

#[test]
fn a_picture_that_cannot_be_used_is_reported_where_it_is_named() {
    let at = |message: &str| vec![("a.toml:7".to_owned(), message.to_owned())];
    let circle = svg("<circle r='9'/>");
    assert_eq!(problems("b.svg", |dir| fs::write(dir.join("b.svg"), &circle).unwrap()), []);
    assert_eq!(problems("b.svg", |_| {}), at("`b.svg`: there is no such file"));
    assert_eq!(problems("b.svg", |dir| fs::create_dir(dir.join("b.svg")).unwrap()), at("`b.svg`: is not a plain file"));
    let large = |dir: &Path| fs::File::create(dir.join("b.svg")).unwrap().set_len(100 << 20).unwrap();
    assert_eq!(problems("b.svg", large), at("`b.svg`: has 104857600 bytes, above the limit of 4194304 bytes"));
    assert_eq!(problems("../b.svg", |_| {}), at("`file` is `../b.svg`, which leads out of the folder"));
    assert_eq!(problems("/etc/b.svg", |_| {}), at("`file` is the absolute path `/etc/b.svg`"));
    assert_eq!(problems("b.png", |_| {}), at("`file` is `b.png`, not a `.svg` file"));
}

#[cfg(unix)]
#[test]
fn a_picture_behind_a_link_out_of_the_folder_is_refused() {
    let outside = tempfile::tempdir().unwrap();
    fs::write(outside.path().join("c.svg"), svg("<circle r='9'/>")).unwrap();
    let link = |dir: &Path| std::os::unix::fs::symlink(outside.path().join("c.svg"), dir.join("b.svg")).unwrap();
    let expected = ("a.toml:7".to_owned(), "`b.svg`: is a link that leads out of the folder of the set".to_owned());
    assert_eq!(problems("b.svg", link), [expected]);
}

/// An exercise of one page with the pictures of the gallery.
fn page_of(text: &str) -> Page {
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("case.toml", text);
    let pictures = gallery();
    let read = read_exercise(&mut Reader::new(&sources, file, &mut problems).with_pictures(&pictures), "case");
    assert_eq!(problems.iter().map(|p| &p.message).collect::<Vec<_>>(), Vec::<&String>::new(), "{text}");
    pages(&[read.unwrap()], "set", Tongue::of(Language::En)).remove(0)
}

#[test]
fn layers_keep_their_places_in_the_picture_at_its_size_on_the_page() {
    let page = page_of(&fs::read_to_string(gallery_path().join("harbour-mouth.toml")).unwrap());
    let bounds = page.scene.features.iter().filter(|f| f.role == Role::Target).map(|feature| {
        let Form::Shape { shape: Shape::Drawing(drawing), at, size: Size::Length(size), .. } = &feature.form else {
            panic!("{feature:?}")
        };
        let placed = Affine::translate((at.x.0, at.y.0)) * Affine::scale(size.0) * &drawing.outline;
        placed.bounding_box()
    });
    let bounds: Vec<_> = bounds.collect();
    let whole = bounds.iter().copied().reduce(|a, b| a.union(b)).unwrap();
    assert_eq!(bounds.len(), 4);
    assert!((whole.width() - 150.0).abs() < 1e-3 && whole.center().to_vec2().hypot() < 1e-3, "{whole:?}");
    // In the file the hull is 80 wide and the line of the hills, with its ends, 150 and a little: both as drawn.
    let share = bounds[0].width() / bounds[3].width();
    assert!((share - 80.0 / f64::from(bounds_of_hills().width())).abs() < 1e-3, "{share}");
    let eyes: Vec<_> = page.scene.features.iter().filter(|f| f.role == Role::Watch).map(|f| f.eyes).collect();
    assert_eq!(eyes, [Eyes::Left, Eyes::Right]);
}

/// The box of the hills as the renderer of others measures it, in units of the file.
fn bounds_of_hills() -> usvg::Rect {
    let bytes = fs::read(gallery_path().join("art/harbour.svg")).unwrap();
    let tree = usvg::Tree::from_data(&bytes, &usvg::Options::default()).unwrap();
    tree.node_by_id("hills").unwrap().abs_stroke_bounding_box()
}

#[test]
fn a_drawing_goes_by_its_label_or_by_the_name_of_its_file() {
    let target = |more: &str| {
        format!(
            "[[target]]\nshape = \"drawing\"\nfile = \"art/gull.svg\"\nsize = \"20 mm\"\ndepth = \"page\"\n{more}\n"
        )
    };
    let targets = [target(""), target("eyes = \"left\""), target("label = \"old-gull\"")].concat();
    let page = page_of(&format!("[exercise]\nkind = \"jump\"\ntitle = \"T\"\n{targets}"));
    let ids: Vec<_> = page.scene.features.iter().map(|f| (f.id.as_str(), f.eyes)).collect();
    assert_eq!(ids, [("gull", Eyes::Both), ("target-2", Eyes::Left), ("old-gull", Eyes::Both)]);
}

/// Tables offer shapes of their own: each word must mean the same in all of them.
#[test]
fn letters_hidden_in_dots_are_letters() {
    let page = page_of(
        "[exercise]\nkind = \"hidden\"\ntitle = \"T\"\n[dots]\nground = \"page\"\n[[figure]]\nshape = \"text\"\n\
         text = \"K\"\nsize = \"60 mm\"\ndepth = \"600 arcsec toward\"\n",
    );
    let figures = page.scene.features.iter().filter_map(|f| if let Form::Dots(d) = &f.form { Some(d) } else { None });
    let shapes: Vec<_> = figures.flat_map(|dots| &dots.figures).map(|figure| &figure.shape).collect();
    assert_eq!(shapes, [&Shape::Text("K".into())]);
}

/// A field of dots lies under the targets of a scene, and keeps its names to itself.
#[test]
fn a_scene_may_have_a_field_of_dots() {
    let spec = |label: &str| {
        format!(
            "[exercise]\nkind = \"scene\"\ntitle = \"T\"\ngoal = \"G\"\ndo = [\"D\"]\nsee = \"S\"\n\n\
             [dots]\nground = \"300 arcsec away\"\n\n\
             [[target]]\nlabel = \"{label}\"\nshape = \"ring\"\nsize = \"30 mm\"\ndepth = \"1 pd toward\"\n"
        )
    };
    let read = |text: &str| {
        let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
        let file = sources.add("case.toml", text);
        let read = read_exercise(&mut Reader::new(&sources, file, &mut problems), "case");
        (read, problems.iter().map(|problem| problem.message.clone()).collect::<Vec<_>>())
    };
    let (exercise, problems) = read(&spec("buoy"));
    assert_eq!(problems, [] as [&str; 0]);
    let page = pages(&[exercise.unwrap()], "quay", Tongue::of(Language::En)).remove(0);
    let ids: Vec<&str> = page.scene.features.iter().map(|feature| feature.id.as_str()).collect();
    assert_eq!(ids, ["dots", "border-left", "border-right", "border-corners", "buoy"]);
    assert_eq!(page.seed, Some(1));
    let (exercise, problems) = read(&spec("border-left"));
    assert!(exercise.is_none());
    assert_eq!(problems, ["`border-left` is a part of the field of dots"]);
}
