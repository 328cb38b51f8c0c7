//! What each eye sees of rendered pages: the filters are simulated on the pixels of PNG files and held against the
//! forecast that reports print.

use std::path::Path;

use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::colour::{
    EyeReport, Filter, Glasses, Ground, InkPlan, Inks, Lamp, Medium, NamedScreen, Print, Screen, Solids, Srgb8, Views,
    Wishes, inks, solve_inks,
};
use depthpress::layout::art;
use depthpress::layout::sheet::{Art, Node, Sheet};
use depthpress::optics::Viewer;
use depthpress::render::png::{Scratch, png};
use depthpress::scene::{At, Companions, Depth, Eye, Eyes, Feature, Form, Role, Scaling, Scene, Shape, Side, Size};
use depthpress::solve::{SolvedFeature, solve};
use depthpress::units::{Mm, Ppi};
use kurbo::{Point, Rect, Shape as _};

/// The accuracy that the reports promise, absolute.
const PROMISED: f64 = 0.005;

/// Luminance shares of the sRGB primaries (IEC 61966-2-1).
const SHARES: [f64; 3] = [0.2126, 0.7152, 0.0722];

/// A decoded page.
struct Picture {
    width: usize,
    rgb: Vec<[u8; 3]>,
}

impl Picture {
    fn of(size: kurbo::Size, inks: Inks, art: Art, ppi: Ppi) -> Self {
        let sheet = Sheet {
            number: 1,
            id: "quay".into(),
            title: "Quay".into(),
            description: "Marks.".into(),
            language: "en",
            outline_level: 0,
            size,
            inks,
            nodes: vec![Node::Art(art)],
        };
        let bytes = png(&sheet, ppi, &mut Scratch::default()).unwrap();
        let mut decoder = ::png::Decoder::new(std::io::Cursor::new(bytes));
        decoder.set_transformations(::png::Transformations::EXPAND);
        let mut reader = decoder.read_info().unwrap();
        let mut data = vec![0; reader.output_buffer_size().unwrap()];
        let info = reader.next_frame(&mut data).unwrap();
        Self { width: info.width as usize, rgb: data.chunks_exact(3).map(|c| [c[0], c[1], c[2]]).collect() }
    }

    fn at(&self, x: usize, y: usize) -> [u8; 3] {
        self.rgb[y * self.width + x]
    }
}

/// A page of 16 x 4 mm with a left mark, a right mark and an overlap, 2 mm each, 10 px a mm.
fn marks(inks: Inks) -> [[u8; 3]; 4] {
    let square = |x: f64| Rect::new(x, 1.0, x + 2.0, 3.0).to_path(0.1);
    let art = Art {
        left: vec![square(1.0), square(9.0)],
        right: vec![square(5.0), square(9.0)],
        overlap: vec![square(9.0)],
        ..Art::default()
    };
    let picture = Picture::of(kurbo::Size::new(16.0, 4.0), inks, art, Ppi(254));
    [20, 60, 100, 140].map(|x| picture.at(x, 20))
}

/// Light of a channel value: IEC 61966-2-1, written apart from the code under test.
fn light(value: u8) -> f64 {
    let c = f64::from(value) / 255.0;
    if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
}

/// The contrast and the ghost of one eye from the luminances of its own mark, the other's and the ground.
fn contrast_and_ghost(own: f64, other: f64, ground: f64) -> (f64, f64) {
    let step = (own - ground).abs();
    (step / own.max(ground), (other - ground).abs() / step)
}

/// What the pixels give to the two eyes, through `see`.
fn measured(pixels: [[u8; 3]; 4], see: impl Fn(usize, [u8; 3]) -> f64) -> [(f64, f64); 2] {
    let [left, right, _, ground] = pixels;
    [
        contrast_and_ghost(see(0, left), see(0, right), see(0, ground)),
        contrast_and_ghost(see(1, right), see(1, left), see(1, ground)),
    ]
}

/// Every pair of different filters, as worn.
fn pairs() -> Vec<(Filter, Filter)> {
    let all = Filter::ALL.into_iter();
    all.flat_map(|a| Filter::ALL.into_iter().filter(move |b| a != *b).map(move |b| (a, b))).collect()
}

/// Every medium that comes with the program.
fn media() -> Vec<(&'static str, Medium)> {
    let print = |lamp: Lamp| Medium::Print(Print::new(&Solids::fogra39l(), &lamp.spectrum()).unwrap());
    let screens = NamedScreen::ALL.map(|name| (name.name(), Medium::Screen(Screen::named(name))));
    screens.into_iter().chain([("print d50", print(Lamp::D50)), ("print led", print(Lamp::Led))]).collect()
}

/// Whether the two agree to what reports promise; infinite ghosts agree with each other.
fn agree(seen: f64, told: f64) -> bool {
    (seen - told).abs() <= PROMISED || (seen.is_infinite() && told.is_infinite()) || (seen.is_nan() && told == 0.0)
}

#[test]
fn every_pair_of_filters_sees_on_the_page_what_the_report_says() {
    let mut wrong = Vec::new();
    let mut cases = 0;
    for (name, medium) in media() {
        for (left, right) in pairs() {
            for ground in [Ground::White, Ground::Black] {
                let glasses = Glasses::ideal(left, right);
                let plan = solve_inks(&glasses, &medium, ground, &Wishes::default());
                let views = Views::new(&glasses, &medium);
                let see = |eye: usize, rgb| [&views.left, &views.right][eye].luminance(Srgb8(rgb));
                let seen = measured(marks(plan.inks), see);
                for ((contrast, ghost), told) in seen.into_iter().zip([&plan.left, &plan.right]) {
                    cases += 1;
                    if !agree(contrast, told.contrast) || !agree(ghost, told.ghost) {
                        wrong.push(format!(
                            "{name} {} {} {}: saw {contrast} {ghost}, told {} {}",
                            left.name(),
                            right.name(),
                            ground.name(),
                            told.contrast,
                            told.ghost
                        ));
                    }
                }
            }
        }
    }
    assert_eq!(cases, 5 * 30 * 2 * 2);
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The luminance that an eye sees on an ideal screen, written apart from the code under test: an ideal filter passes
/// whole channels.
fn ideal_eye(filter: Filter, rgb: [u8; 3]) -> f64 {
    let passes = match filter {
        Filter::Red => [1.0, 0.0, 0.0],
        Filter::Cyan => [0.0, 1.0, 1.0],
        Filter::Green => [0.0, 1.0, 0.0],
        Filter::Blue => [0.0, 0.0, 1.0],
        Filter::Magenta => [1.0, 0.0, 1.0],
        Filter::Amber => [1.0, 1.0, 0.0],
    };
    (0..3).map(|c| SHARES[c] * passes[c] * light(rgb[c])).sum()
}

/// What is wrong with a page for two ideal filters on an ideal screen: each eye must see its own mark, darker than a
/// white ground and lighter than a black one, and not the other's. `None`: nothing.
fn fault(glasses: (Filter, Filter), ground: Ground, inks: Inks) -> Option<String> {
    let filters = [glasses.0, glasses.1];
    let pixels = marks(inks);
    for (eye, filter) in filters.into_iter().enumerate() {
        let [own, other, ground_seen] = [eye, 1 - eye, 3].map(|mark| ideal_eye(filter, pixels[mark]));
        let step = match ground {
            Ground::White => ground_seen - own,
            Ground::Black => own - ground_seen,
        };
        let white = ideal_eye(filter, [255; 3]);
        if step < 0.3 * white {
            return Some(format!("eye {eye}: its own mark has a step of {:.3} of white", step / white));
        }
        if 0.02 * step < (other - ground_seen).abs() {
            return Some(format!("eye {eye}: a ghost of {:.3}", (other - ground_seen).abs() / step));
        }
    }
    None
}

/// Pairs without a channel in common: the other pairs cannot keep the eyes apart.
fn separating() -> impl Iterator<Item = (Filter, Filter)> {
    let apart = |(a, b): &(Filter, Filter)| (0..3).all(|c| !(a.passes()[c] && b.passes()[c]));
    pairs().into_iter().filter(apart)
}

#[test]
fn filters_without_a_channel_in_common_separate_the_eyes_on_an_ideal_screen() {
    let screen = Medium::Screen(Screen::named(NamedScreen::Ideal));
    let mut cases = 0;
    for pair in separating() {
        for ground in [Ground::White, Ground::Black] {
            let plan = solve_inks(&Glasses::ideal(pair.0, pair.1), &screen, ground, &Wishes::default());
            assert_eq!(fault(pair, ground, plan.inks), None, "{pair:?} {ground:?}");
            cases += 1;
        }
    }
    // Red, green and blue with each other, and each with the colour of the other two: 12 as worn, on 2 grounds.
    assert_eq!(cases, 24);
}

/// The pairs that share a channel are told to be refused, never passed over.
#[test]
fn filters_with_a_channel_in_common_are_refused() {
    let screen = Medium::Screen(Screen::named(NamedScreen::Ideal));
    let apart: Vec<_> = separating().collect();
    for pair in pairs().into_iter().filter(|pair| !apart.contains(pair)) {
        for ground in [Ground::White, Ground::Black] {
            let plan = solve_inks(&Glasses::ideal(pair.0, pair.1), &screen, ground, &Wishes::default());
            let clean = fault(pair, ground, plan.inks).is_none();
            assert!(clean || 0.02 < plan.ghost() || short_of_signal(&plan), "{pair:?} {ground:?} {plan:?}");
        }
    }
}

/// Whether an eye's own mark is told to be faint.
fn short_of_signal(plan: &InkPlan) -> bool {
    let faint = |eye: &EyeReport| eye.signal < 0.3;
    faint(&plan.left) || faint(&plan.right)
}

/// The checks above can fail: inks for the other ground, or for glasses worn the other way round, do.
#[test]
fn a_wrong_eye_map_is_seen_on_the_page() {
    for pair in separating() {
        for ground in [Ground::White, Ground::Black] {
            let right = inks(&Glasses::ideal(pair.0, pair.1), ground);
            assert_eq!(fault(pair, ground, right), None);
            let turned = inks(&Glasses::ideal(pair.1, pair.0), ground);
            assert!(fault(pair, ground, turned).is_some(), "sides swapped: {pair:?} {ground:?}");
            let other = inks(&Glasses::ideal(pair.0, pair.1), ground.opposite());
            let swapped = Inks { ground: right.ground, ..other };
            // Filters whose ink on white is their own light on black look the same on both: none of ours does.
            assert!(fault(pair, ground, swapped).is_some(), "ground swapped: {pair:?} {ground:?}");
        }
    }
}

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(64.0), (Mm(50.0), Mm(75.0)));

/// A ring of 20 mm at this side of the page, offset 6 mm.
fn ring(side: Side) -> Vec<SolvedFeature> {
    let feature = Feature {
        id: "ring".into(),
        role: Role::Target,
        eyes: Eyes::Both,
        form: Form::Shape {
            shape: Shape::Ring,
            at: At { x: Mm(0.0), y: Mm(0.0) },
            size: Size::Length(Mm(20.0)),
            weight: Mm(2.0),
            depth: Depth::Parallax(Mm(6.0), side),
        },
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    };
    solve(&Scene { features: vec![feature] }, &VIEWER).unwrap()
}

/// The middle of what an eye sees stand off the ground, mm from the left edge.
fn centre(picture: &Picture, filter: Filter, ppi: Ppi) -> f64 {
    let ground = ideal_eye(filter, picture.at(0, 0));
    let (mut sum, mut weight) = (0.0, 0.0);
    for (i, rgb) in picture.rgb.iter().enumerate() {
        let off = (ideal_eye(filter, *rgb) - ground).abs();
        sum += off * ((i % picture.width) as f64 + 0.5);
        weight += off;
    }
    sum / weight * 25.4 / f64::from(ppi.0)
}

#[test]
fn black_and_white_pages_give_the_same_depth_through_glasses() {
    let (size, middle, ppi) = (kurbo::Size::new(60.0, 30.0), Point::new(30.0, 15.0), Ppi(150));
    for (left, right) in separating() {
        for (side, expected) in [(Side::Toward, -6.0), (Side::Away, 6.0)] {
            let solved = ring(side);
            let parallax = [Ground::White, Ground::Black].map(|ground| {
                let inks = inks(&Glasses::ideal(left, right), ground);
                let picture = Picture::of(size, inks, art::compose(&solved, middle), ppi);
                centre(&picture, right, ppi) - centre(&picture, left, ppi)
            });
            for seen in parallax {
                // A fifth of a pixel; crossed is negative (x_R - x_L), so a swap of eyes cannot pass.
                assert!((seen - expected).abs() < 0.034, "{left:?} {right:?} {side:?}: {parallax:?}");
            }
        }
    }
}

/// The gallery: a page for each kind.
fn gallery() -> Prepared {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery");
    prepare(load(&folder).unwrap(), None)
}

/// The art of these features on a page a little larger than the art field.
fn picture(features: &[SolvedFeature], inks: Inks) -> Picture {
    Picture::of(kurbo::Size::new(190.0, 130.0), inks, art::compose(features, Point::new(95.0, 65.0)), Ppi(40))
}

/// The dots that an eye sees otherwise on two pictures: by more than two steps of a channel, which is what a dot on the
/// edge of a mark may be rounded by.
fn differences(filter: Filter, a: &Picture, b: &Picture) -> usize {
    let passed = |rgb: [u8; 3]| {
        let passes = filter.passes();
        (0..3).filter(move |&c| passes[c]).map(move |c| rgb[c])
    };
    let differ = |(a, b): &(&[u8; 3], &[u8; 3])| passed(**a).zip(passed(**b)).any(|(a, b)| 2 < a.abs_diff(b));
    a.rgb.iter().zip(&b.rgb).filter(differ).count()
}

/// What is for one eye alone never reaches the other: behind its ideal filter an eye sees of the whole page just what it
/// sees of a page that holds its own parts alone.
#[test]
fn the_parts_of_one_eye_never_reach_the_other() {
    let gallery = gallery();
    let mut seen = 0;
    for page in &gallery.pages {
        for (glasses, ground) in
            [((Filter::Cyan, Filter::Red), Ground::White), ((Filter::Red, Filter::Cyan), Ground::Black)]
        {
            let inks = inks(&Glasses::ideal(glasses.0, glasses.1), ground);
            let whole = picture(&page.features, inks);
            for (eye, filter) in Eye::ALL.into_iter().zip([glasses.0, glasses.1]) {
                let of = |keep: &dyn Fn(Eyes) -> bool| -> Vec<SolvedFeature> {
                    page.features.iter().filter(|f| keep(f.eyes)).cloned().collect()
                };
                let own = picture(&of(&|eyes| eyes.include(eye)), inks);
                let id = &page.page.id;
                assert_eq!(differences(filter, &whole, &own), 0, "{id} {eye:?} {ground:?}");
                // And its own parts are there to be seen.
                let shared = picture(&of(&|eyes| eyes == Eyes::Both), inks);
                if page.features.iter().any(|f| f.eyes != Eyes::Both && f.eyes.include(eye)) {
                    assert!(10 < differences(filter, &whole, &shared), "{id} {eye:?} {ground:?}");
                    seen += 1;
                }
            }
        }
    }
    // Both eyes have parts of their own on most pages, on two grounds.
    assert!(40 < seen, "{seen}");
}

/// The check above can fail: through glasses that are worn the other way round, parts of the other eye are seen.
#[test]
fn glasses_worn_the_other_way_round_show_the_other_eyes_parts() {
    let gallery = gallery();
    let page = gallery.pages.iter().find(|page| page.page.kind == "who").unwrap();
    let inks = inks(&Glasses::ideal(Filter::Cyan, Filter::Red), Ground::White);
    let left: Vec<_> = page.features.iter().filter(|f| f.eyes.include(Eye::Left)).cloned().collect();
    let (whole, own) = (picture(&page.features, inks), picture(&left, inks));
    assert_eq!(differences(Filter::Cyan, &whole, &own), 0);
    assert!(100 < differences(Filter::Red, &whole, &own));
}
