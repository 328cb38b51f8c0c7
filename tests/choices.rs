//! Choice pages: the key against what the eyes get, the evenness of answers, and what one eye alone can guess.

use std::collections::BTreeMap;
use std::num::NonZeroUsize;

use depthpress::bundle::load::load;
use depthpress::bundle::prepare::prepare;
use depthpress::bundle::run::{Request, run};
use depthpress::chance::{MOST_LUCK, tail};
use depthpress::diagnostics::{Diagnostics, Sources};
use depthpress::exercise::quiz::Question;
use depthpress::exercise::{Exercise, Page, pages, read_exercise};
use depthpress::language::{Language, Tongue};
use depthpress::optics::Viewer;
use depthpress::scene::{Eye, Eyes, Role};
use depthpress::solve::{SolvedFeature, half_x, solve};
use depthpress::spec::reader::Reader;
use depthpress::units::Mm;
use serde_json::Value;
use tempfile::TempDir;

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));
const SEEDS: u32 = 100;

/// One spec of each kind and form, each on both sides of the page.
const ODD: &str = "kind = \"odd\"\nchoices = 4\nstep = \"1600 arcsec toward\"";
const SPECS: &[&str] = &[
    ODD,
    "kind = \"odd\"\nquestions = 8\nchoices = 3\nstep = \"2 mm parallax away\"\nshape = \"disc\"",
    "kind = \"odd\"\nquestions = 12\nchoices = 5\nsize = \"9 mm\"\nstep = \"600 arcsec toward\"\nshape = \"star\"",
    "kind = \"side\"\nstep = \"1600 arcsec toward\"",
    "kind = \"side\"\nquestions = 16\nstep = \"0.4 pd away\"\nshape = \"triangle\"",
    "kind = \"order\"\nstep = \"1200 arcsec toward\"\nsizes = \"drawn\"",
    "kind = \"order\"\nquestions = 8\nshapes = 4\nstep = \"5 mm away\"",
    "kind = \"order\"\nquestions = 4\nshapes = 5\nsize = \"9 mm\"\nstep = \"400 arcsec away\"\nsizes = \"drawn\"",
    "kind = \"match\"\nstep = \"800 arcsec toward\"",
    "kind = \"match\"\nquestions = 8\nheight = \"8 mm\"\nstep = \"400 arcsec away\"",
];

fn read(keys: &str, seed: u32) -> Result<Exercise, Vec<String>> {
    let text = format!("[exercise]\ntitle = \"T\"\nseed = {seed}\n{keys}\n");
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("case.toml", &text);
    let read = read_exercise(&mut Reader::new(&sources, file, &mut problems), "case");
    read.ok_or_else(|| problems.iter().map(|p| format!("{}: {}", p.code, p.message)).collect())
}

/// The first page of a spec with this seed, with its solved features by id.
fn drawn(keys: &str, seed: u32) -> (Page, BTreeMap<String, SolvedFeature>) {
    let page = pages(&[read(keys, seed).unwrap()], "quay", Tongue::of(Language::En)).remove(0);
    let solved = solve(&page.scene, &VIEWER).unwrap();
    let count = solved.len();
    let by_id: BTreeMap<_, _> = solved.into_iter().map(|f| (f.id.clone(), f)).collect();
    assert_eq!(by_id.len(), count, "ids of a page differ");
    (page, by_id)
}

fn questions(page: &Page) -> &[Question] {
    &page.quiz.as_ref().unwrap().questions
}

/// The answer to a question as a reader with exact depth vision would give it: from the parallaxes of its features, in
/// their order, and from nothing else. Negative parallax is toward.
fn seen_answer(kind: &str, parallaxes: &[f64]) -> String {
    let letter = |i: usize| char::from(b'A' + u8::try_from(i).unwrap()).to_string();
    match kind {
        "odd" => {
            let alone = |&i: &usize| parallaxes.iter().filter(|&&p| (p - parallaxes[i]).abs() < 1e-9).count() == 1;
            let odd: Vec<usize> = (0..parallaxes.len()).filter(alone).collect();
            assert_eq!(odd.len(), 1, "{parallaxes:?}");
            letter(odd[0])
        }
        "side" => if parallaxes[0] < parallaxes[1] { "near" } else { "far" }.to_owned(),
        "order" => {
            let mut order: Vec<usize> = (0..parallaxes.len()).collect();
            order.sort_by(|&a, &b| parallaxes[b].total_cmp(&parallaxes[a]));
            order.into_iter().map(letter).collect::<Vec<_>>().join(" ")
        }
        "match" => {
            let same: Vec<usize> =
                (1..parallaxes.len()).filter(|&i| (parallaxes[i] - parallaxes[0]).abs() < 1e-9).collect();
            assert_eq!(same.len(), 1, "{parallaxes:?}");
            same[0].to_string()
        }
        _ => panic!("{kind}"),
    }
}

#[test]
fn the_key_is_what_the_depths_say() {
    for (keys, seed) in SPECS.iter().flat_map(|keys| (1..=SEEDS).map(move |seed| (keys, seed))) {
        let (page, solved) = drawn(keys, seed);
        for (number, question) in (1..).zip(questions(&page)) {
            assert_eq!(question.id, number.to_string());
            let parallaxes: Vec<f64> = question.features.iter().map(|id| solved[id].stand.parallax.0).collect();
            assert_eq!(question.answer, seen_answer(page.kind, &parallaxes), "{keys} seed {seed} question {number}");
            assert!(question.choices.is_empty() || question.choices.contains(&question.answer));
        }
    }
}

/// The same through the program, from `report.json` alone: a hundred pages of each kind, in variants of four seeds.
#[test]
fn the_key_is_what_the_report_says() {
    const KINDS: [(&str, &str); 4] = [
        ("odd", "1600 arcsec toward"),
        ("side", "800 arcsec toward"),
        ("order", "1200 arcsec toward"),
        ("match", "800 arcsec toward"),
    ];
    let dir = TempDir::new().unwrap();
    let mut files = Vec::new();
    for ((kind, step), seed) in KINDS.into_iter().flat_map(|kind| (1..=4).map(move |seed| (kind, seed))) {
        let name = format!("{kind}-of-seed-{seed}.toml");
        let text =
            format!("[exercise]\nkind = \"{kind}\"\ntitle = \"T\"\nseed = {seed}\nvariants = 25\nstep = \"{step}\"\n");
        std::fs::write(dir.path().join(&name), text).unwrap();
        files.push(format!("\"{name}\""));
    }
    let head = format!(
        "[set]\nid = \"quay\"\ntitle = \"Quay\"\nversion = \"1.0.0\"\ndate = \"2026-05-04\"\nlanguage = \"en\"\n\
         order = \"free\"\nexercises = [{}]\n[viewer]\ndistance = \"40 cm\"\nipd = \"63 mm\"\n\
         ipd_range = [\"50 mm\", \"75 mm\"]\n[glasses]\nleft = \"cyan\"\nright = \"red\"\n\
         [[edition]]\nid = \"a4\"\npage = \"A4\"\nground = \"white\"\nppi = 300\nformats = [\"svg\"]\n",
        files.join(", ")
    );
    std::fs::write(dir.path().join("set.toml"), head).unwrap();
    let prepared = prepare(load(dir.path()).unwrap(), None);
    let out = dir.path().join("out");
    let jobs = NonZeroUsize::new(2).unwrap();
    // The report tells of all pages, also where one alone is drawn.
    let request = Request { out: &out, editions: &[], formats: None, pages: Some(1..=1), jobs, sharded: None };
    run(&[prepared.book().unwrap()], &request, &|_| ()).unwrap();
    let report: Value = serde_json::from_slice(&std::fs::read(out.join("quay/a4/report.json")).unwrap()).unwrap();
    let mut pages = BTreeMap::new();
    for page in report["pages"].as_array().unwrap().iter().filter(|page| page.get("questions").is_some()) {
        let kind = page["kind"].as_str().unwrap();
        *pages.entry(kind).or_insert(0) += 1;
        let entries = ["targets", "marks"].into_iter().flat_map(|list| page[list].as_array().unwrap());
        let parallax: BTreeMap<&str, f64> =
            entries.map(|e| (e["id"].as_str().unwrap(), e["parallax_mm"].as_f64().unwrap())).collect();
        for question in page["questions"].as_array().unwrap() {
            let features = question["features"].as_array().unwrap().iter();
            let parallaxes: Vec<f64> = features.map(|id| parallax[id.as_str().unwrap()]).collect();
            assert_eq!(question["answer"], seen_answer(kind, &parallaxes), "{} {}", page["id"], question["id"]);
        }
        assert!(page["pass"]["luck"].as_f64().unwrap() <= MOST_LUCK);
    }
    assert_eq!(pages, BTreeMap::from(KINDS.map(|(kind, _)| (kind, 100))));
}

/// Each answer comes as often as the count allows on every page; and over the seeds each question has each answer as
/// likely: chi-square below its limit of 0.5 %. Source: "The Chi-Square Distribution", table of critical values,
/// exampapers.nust.na, column .005: 7.879, 12.838, 14.860, 16.750 for 1, 3, 4 and 5 degrees of freedom.
#[test]
fn answers_are_spread_evenly() {
    let cases = [(SPECS[0], 4, 12.838), (SPECS[3], 2, 7.879), (SPECS[5], 6, 16.750), (SPECS[8], 5, 14.860)];
    for (keys, choices, limit) in cases {
        let pages: Vec<Page> = (1..=SEEDS).map(|seed| drawn(keys, seed).0).collect();
        let of = questions(&pages[0]).len();
        for page in pages.iter().filter(|page| page.kind != "order") {
            let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
            questions(page).iter().for_each(|q| *counts.entry(&q.answer).or_default() += 1);
            assert_eq!(counts.len(), choices, "{counts:?}");
            assert!(counts.values().all(|&n| n == of / choices || n == of.div_ceil(choices)), "{counts:?}");
        }
        for number in [0, of - 1] {
            let mut counts: BTreeMap<&str, f64> = BTreeMap::new();
            pages.iter().for_each(|page| *counts.entry(&questions(page)[number].answer).or_default() += 1.0);
            let expected = f64::from(SEEDS) / choices as f64;
            assert_eq!(counts.len(), choices);
            let chi: f64 = counts.values().map(|n| (n - expected).powi(2) / expected).sum();
            assert!(chi < limit, "{keys} question {}: {counts:?}, {chi}", number + 1);
        }
    }
}

/// Where one eye finds a shape, from the fixed place of its letter, mm.
fn offset(solved: &BTreeMap<String, SolvedFeature>, id: &str, eye: Eye) -> f64 {
    let feature = &solved[id];
    half_x(feature.at.0, feature.stand.parallax.0, eye) - solved[&format!("{id}-letter")].at.0
}

/// The largest distance between the distributions of two samples.
fn kolmogorov(a: &mut [f64], b: &mut [f64]) -> f64 {
    a.sort_by(f64::total_cmp);
    b.sort_by(f64::total_cmp);
    let share = |list: &[f64], x: f64| list.partition_point(|&y| y <= x) as f64 / list.len() as f64;
    a.iter().chain(b.iter()).map(|&x| (share(a, x) - share(b, x)).abs()).fold(0.0, f64::max)
}

/// The places of odd shapes and of the others come from one distribution, for each eye: two-sample test of Kolmogorov
/// and Smirnov at 0.5 %, limit 1.73 sqrt((n + m) / (n m)) (from memory).
#[test]
fn one_eye_finds_odd_shapes_where_it_finds_others() {
    for keys in &SPECS[..3] {
        for eye in Eye::ALL {
            let (mut odd, mut others) = (Vec::new(), Vec::new());
            for (page, solved) in (1..=SEEDS).map(|seed| drawn(keys, seed)) {
                for question in questions(&page) {
                    for (letter, id) in question.choices.iter().zip(&question.features) {
                        let list = if *letter == question.answer { &mut odd } else { &mut others };
                        list.push(offset(&solved, id, eye));
                    }
                }
            }
            let (n, m) = (odd.len() as f64, others.len() as f64);
            let distance = kolmogorov(&mut odd, &mut others);
            assert!(distance < 1.73 * ((n + m) / (n * m)).sqrt(), "{keys} {eye:?}: {distance}");
        }
    }
}

/// Six ways to guess the odd shape with one eye: each is right no more often than luck allows in 1 of 1000 runs.
#[test]
fn one_eye_guesses_odd_shapes_by_luck_alone() {
    type Way = fn(f64) -> f64;
    let ways: [Way; 3] = [|x| x, |x| -x, |x| x.abs()];
    for (way, eye) in ways.into_iter().flat_map(|way| Eye::ALL.map(|eye| (way, eye))) {
        let (mut right, mut all) = (0, 0);
        for (page, solved) in (1..=SEEDS).map(|seed| drawn(ODD, seed)) {
            for question in questions(&page) {
                let value = |i: &usize| way(offset(&solved, &question.features[*i], eye));
                let guess = (0..4).max_by(|a, b| value(a).total_cmp(&value(b))).unwrap();
                right += u32::from(question.choices[guess] == question.answer);
                all += 1;
            }
        }
        assert!(0.001 < tail(all, right, 0.25), "{right} of {all} by {eye:?}");
    }
}

/// One eye that knows the middle of all places tells near from far with a chance of at most 1/2 + h / (2 (free - h)),
/// h half the parallax: see `spread` in `exercise/choice/board.rs`. Numbers by hand: an item of 42.75 mm keeps
/// (42.75 - 10.5 - 4 - 11) / 2 = 8.625 mm free, and 1600 arcsec toward are h = 1.562 mm: 0.6106.
#[test]
fn one_eye_tells_near_from_far_little_better_than_luck() {
    for eye in Eye::ALL {
        let mut places = Vec::new();
        for (page, solved) in (1..=SEEDS).map(|seed| drawn(SPECS[3], seed)) {
            for question in questions(&page) {
                let [shape, post] = [0, 1].map(|i| &solved[&question.features[i]]);
                places.push((half_x(shape.at.0, shape.stand.parallax.0, eye) - post.at.0, question.answer.clone()));
            }
        }
        let middle = places.iter().map(|(x, _)| x).sum::<f64>() / places.len() as f64;
        // Near is moved to the right for the left eye.
        let guess = |x: f64| if (middle < x) == (eye == Eye::Left) { "near" } else { "far" };
        let right = places.iter().filter(|(x, answer)| guess(*x) == answer).count();
        let all = places.len();
        assert!(0.001 < tail(all as u32, right as u32, 0.6106), "{right} of {all} by {eye:?}");
    }
}

/// Whatever the numbers of questions and choices, a page that the reader accepts is passed by guesses in at most 1 of
/// 200 cases, counted here by all ways to answer; and every page that is refused has no such pass mark.
#[test]
fn no_page_is_passed_by_luck() {
    let step = "step = \"800 arcsec toward\"\n";
    let mut accepted = 0;
    for questions in 1..=12_u32 {
        let kinds = (3..=5).map(|c| (format!("kind = \"odd\"\nsize = \"5 mm\"\nchoices = {c}"), c));
        let orders = [(3, 6), (4, 24), (5, 120)];
        let orders = orders.map(|(n, c)| (format!("kind = \"order\"\nsize = \"5 mm\"\nshapes = {n}"), c));
        let two = ("kind = \"side\"\nsize = \"5 mm\"".to_owned(), 2);
        let five = ("kind = \"match\"\nheight = \"5 mm\"".to_owned(), 5);
        for (keys, choices) in kinds.chain(orders).chain([two, five]) {
            let read = read(&format!("{keys}\n{step}questions = {questions}"), 1);
            let choose = |k: u32| (0..k).fold(1_f64, |c, i| c * f64::from(questions - i) / f64::from(i + 1));
            let ways = |k: u32| choose(k) * f64::from(choices - 1_u32).powi((questions - k) as i32);
            let luck =
                |right: u32| (right..=questions).map(ways).sum::<f64>() / f64::from(choices).powi(questions as i32);
            match read {
                Ok(exercise) => {
                    let pass =
                        pages(&[exercise], "quay", Tongue::of(Language::En))[0].quiz.as_ref().unwrap().pass.unwrap();
                    assert!((pass.luck - luck(pass.right)).abs() < 1e-12, "{keys} {questions}: {pass:?}");
                    assert!(pass.luck <= MOST_LUCK && pass.of == questions && pass.right < questions, "{pass:?}");
                    assert!(MOST_LUCK < luck(pass.right - 1), "{keys} {questions}: {pass:?}");
                    accepted += 1;
                }
                Err(problems) => {
                    let other = problems.iter().any(|p| p.starts_with("E-RANGE"));
                    assert!(other || MOST_LUCK < luck(questions - 1), "{keys} {questions}: {problems:?}");
                }
            }
        }
    }
    assert!(40 < accepted, "{accepted}");
}

#[test]
fn variants_and_levels_ask_the_same_with_other_answers() {
    let keys = "kind = \"odd\"\nvariants = 3\nstep = { values = [\"1600 arcsec toward\", \"800 arcsec toward\"] }";
    let pages = pages(&[read(keys, 1).unwrap()], "quay", Tongue::of(Language::En));
    let ids: Vec<&str> = pages.iter().map(|page| page.id.as_str()).collect();
    assert_eq!(ids, ["case-1-a", "case-1-b", "case-1-c", "case-2-a", "case-2-b", "case-2-c"]);
    assert!(pages.iter().all(|page| page.seed == Some(1)));
    let keys: Vec<String> = pages.iter().map(|p| questions(p).iter().map(|q| q.answer.as_str()).collect()).collect();
    let mut different = keys.clone();
    different.sort();
    different.dedup();
    assert_eq!(different.len(), keys.len(), "{keys:?}");
}

/// Every page has a watch mark for each eye, and nothing but targets and marks; no shape lies flat on the page, where it
/// would be one dark mark.
#[test]
fn pages_have_watch_marks_and_no_flat_shapes() {
    for (keys, seed) in SPECS.iter().flat_map(|keys| (1..=5).map(move |seed| (keys, seed))) {
        let (_, solved) = drawn(keys, seed);
        for eyes in [Eyes::Left, Eyes::Right] {
            assert_eq!(solved.values().filter(|f| f.role == Role::Watch && f.eyes == eyes).count(), 1);
        }
        assert!(solved.values().filter(|f| f.role == Role::Target).all(|f| 0.0 < f.stand.parallax.0.abs()));
    }
}
