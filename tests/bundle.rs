//! Runs of `bundle` on sets made in memory: the output tree, what survives a failure, equal bytes, the report.

use std::collections::BTreeMap;
use std::fs;
use std::num::NonZeroUsize;
use std::ops::RangeInclusive;
use std::path::Path;

use depthpress::bundle::error::Error;
use depthpress::bundle::prepare::{Book, SolvedPage};
use depthpress::bundle::run::{Request, Step, Written, run};
use depthpress::colour::{Filter, Glasses, Ground};
use depthpress::diagnostics::{FileId, Place};
use depthpress::exercise::Page;
use depthpress::exercise::words::Words;
use depthpress::language::Language;
use depthpress::optics::Viewer;
use depthpress::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Scene, Shape, Side, Size, Vertex};
use depthpress::solve::solve;
use depthpress::spec::viewer::Known;
use depthpress::spec::{Answers, Colours, Edition, Formats, Front, Hand, PageFormat, SetSpec, TextSize};
use depthpress::units::{Mm, Ppi};
use serde_json::Value;
use tempfile::TempDir;

const ALL: Formats = Formats { pdf: true, svg: true, png: true };
const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(64.0), (Mm(50.0), Mm(75.0)));

/// A set in memory, with the parts that a [`Book`] borrows.
struct Set {
    spec: SetSpec,
    pages: Vec<SolvedPage>,
}

impl Set {
    /// Two exercise pages, two editions.
    fn new() -> Self {
        let edition = |id: &str, page, ground| Edition {
            id: id.to_owned(),
            page,
            ground,
            glasses: Glasses::ideal(Filter::Cyan, Filter::Red),
            colour: Colours::default(),
            ppi: Ppi(72),
            formats: ALL,
            answers: Answers::Turned,
            language: Language::En,
            text: TextSize::Standard,
            hand: Hand::Right,
            gated: true,
            place: Place::start_of(FileId(0)),
        };
        let spec = SetSpec {
            known: Known::default(),
            id: "slipway".to_owned(),
            title: "Slipway".to_owned(),
            summary: None,
            author: None,
            version: "1.2.0".to_owned(),
            date: "2026-05-04".to_owned(),
            language: Language::En,
            free_order: false,
            viewer: VIEWER,
            reader: None,
            gate: None,
            plan: None,
            licence: None,
            releases: Vec::new(),
            contact: None,
            front: Front::USUAL.to_vec(),
            back: Vec::new(),
            publish: depthpress::spec::Publish::default(),
            editions: vec![
                edition("a4", PageFormat::A4, Ground::White),
                edition("screen", PageFormat::Wide, Ground::Black),
            ],
        };
        Self { spec, pages: vec![page("bollard-1", 1, 4.0), page("bollard-2", 2, 8.0)] }
    }

    fn book(&self) -> Book<'_> {
        Book { set: &self.spec, pages: &self.pages, others: &[], defaults: &[] }
    }
}

/// A page with a ring toward, one away, a watch mark, a path and a guide; `parallax` in mm.
fn page(id: &str, level: u32, parallax: f64) -> SolvedPage {
    let depth = |side| Depth::Parallax(Mm(parallax), side);
    let at = |x: f64, y: f64| At { x: Mm(x), y: Mm(y) };
    let shape = |shape, x: f64, side| Form::Shape {
        shape,
        at: at(x, 0.0),
        size: Size::Length(Mm(24.0)),
        weight: Mm(1.5),
        depth: depth(side),
    };
    let path = |y: f64| Form::Path {
        vertices: vec![
            Vertex { at: at(-20.0, y), depth: Depth::Page },
            Vertex { at: at(40.0, y), depth: depth(Side::Toward) },
        ],
        closed: false,
        smooth: false,
        weight: Mm(1.0),
    };
    let feature = |id: &str, role, eyes, form| Feature {
        id: id.to_owned(),
        role,
        eyes,
        form,
        scaling: Scaling::ConstantAngle,
        companions: Companions::default(),
        solid: false,
        place: None,
    };
    let scene = Scene {
        features: vec![
            feature("near", Role::Target, Eyes::Both, shape(Shape::Ring, -30.0, Side::Toward)),
            feature("far", Role::Target, Eyes::Both, shape(Shape::Ring, 30.0, Side::Away)),
            feature("near-left", Role::Watch, Eyes::Left, shape(Shape::Disc, -30.0, Side::Toward)),
            feature("line", Role::Trail, Eyes::Both, path(25.0)),
            feature("edge", Role::Guide, Eyes::Both, path(-25.0)),
        ],
    };
    let features = solve(&scene, &VIEWER).unwrap();
    let words = Words {
        goal: "Feel your eyes change.".to_owned(),
        steps: vec!["Look at the near ring.".to_owned()],
        see: "One ring before the page and one behind it.".to_owned(),
        ..Words::default()
    };
    let page = Page {
        id: id.to_owned(),
        kind: "jump",
        title: "Bollard".to_owned(),
        level,
        levels: 2,
        variant: None,
        seed: None,
        quiz: None,
        readings: None,
        time: 120,
        gated: false,
        strand: depthpress::scene::Strand::Jump,
        effort: depthpress::scene::Effort::default(),
        scene,
        words,
        balance: None,
        place: Place::start_of(FileId(0)),
    };
    SolvedPage::graded(page, features, &VIEWER)
}

/// A request for everything, to be narrowed by the tests.
fn request(out: &Path) -> Request<'_> {
    Request { out, editions: &[], formats: None, pages: None, jobs: NonZeroUsize::new(2).unwrap(), sharded: None }
}

fn go(set: &Set, request: &Request<'_>) -> Result<Vec<Written>, Error> {
    run(&[set.book()], request, &|_| ())
}

fn pages(range: RangeInclusive<u32>) -> Option<RangeInclusive<u32>> {
    Some(range)
}

/// Every file below a folder with its bytes.
fn tree(root: &Path) -> BTreeMap<String, Vec<u8>> {
    fn walk(root: &Path, folder: &Path, files: &mut BTreeMap<String, Vec<u8>>) {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                walk(root, &path, files);
            } else {
                let name = path.strip_prefix(root).unwrap().to_str().unwrap().replace('\\', "/");
                files.insert(name, fs::read(&path).unwrap());
            }
        }
    }
    let mut files = BTreeMap::new();
    if root.is_dir() {
        walk(root, root, &mut files);
    }
    files
}

fn report(out: &Path, edition: &str) -> Value {
    let path = out.join("slipway").join(edition).join("report.json");
    serde_json::from_slice(&fs::read(path).unwrap()).unwrap()
}

/// Folders and files directly below a folder.
fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<_> =
        fs::read_dir(folder).unwrap().map(|e| e.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    names
}

#[test]
fn a_run_writes_the_tree_of_the_design() {
    let dir = TempDir::new().unwrap();
    let written = go(&Set::new(), &request(dir.path())).unwrap();
    assert_eq!(names(dir.path()), ["slipway"]);
    assert_eq!(names(&dir.path().join("slipway")), ["a4", "screen"]);
    for edition in &written {
        let folder = dir.path().join("slipway").join(&edition.edition);
        assert_eq!(edition.folder, folder);
        assert_eq!(names(&folder), ["png", "report.json", "slipway.pdf", "svg"]);
        let mut expected = vec!["report.json".to_owned(), "slipway.pdf".to_owned()];
        for (number, id) in &edition.pages {
            expected.push(format!("svg/{number:03}-{id}.svg"));
            expected.push(format!("png/{number:03}-{id}.png"));
        }
        expected.sort();
        let tree = tree(&folder);
        assert_eq!(tree.keys().cloned().collect::<Vec<_>>(), expected);
        for (name, bytes) in &edition.files {
            assert_eq!(tree[name].len() as u64, *bytes);
        }
        assert!(tree["slipway.pdf"].starts_with(b"%PDF-"));
        assert!(tree.iter().all(|(name, bytes)| !name.ends_with(".png") || bytes.starts_with(b"\x89PNG\r\n\x1a\n")));
        assert!(tree["report.json"].ends_with(b"}\n"));
    }
}

#[cfg(unix)]
#[test]
fn files_are_plain_and_readable() {
    use std::os::unix::fs::PermissionsExt;
    let dir = TempDir::new().unwrap();
    let written = go(&Set::new(), &request(dir.path())).unwrap();
    // Under an umask that takes more away than 0o022, less is expected.
    let probe = dir.path().join("probe");
    fs::write(&probe, "").unwrap();
    let ordinary = fs::metadata(&probe).unwrap().permissions().mode();
    for (name, _) in &written[0].files {
        let mode = fs::metadata(written[0].folder.join(name)).unwrap().permissions().mode();
        assert_eq!(mode & 0o777, ordinary & 0o644, "{name}");
    }
}

#[test]
fn bytes_do_not_depend_on_jobs_or_folder() {
    let (one, two) = (TempDir::new().unwrap(), TempDir::new().unwrap());
    let deep = two.path().join("a").join("b");
    go(&Set::new(), &Request { jobs: NonZeroUsize::MIN, ..request(one.path()) }).unwrap();
    go(&Set::new(), &Request { jobs: NonZeroUsize::new(4).unwrap(), ..request(&deep) }).unwrap();
    let (one, two) = (tree(one.path()), tree(&deep));
    assert!(!one.is_empty());
    assert_eq!(one.keys().collect::<Vec<_>>(), two.keys().collect::<Vec<_>>());
    one.iter().for_each(|(name, bytes)| assert!(*bytes == two[name], "{name} differs"));
}

#[test]
fn every_file_is_told_as_progress() {
    let dir = TempDir::new().unwrap();
    let (planned, made) = (std::sync::atomic::AtomicU64::new(0), std::sync::atomic::AtomicU64::new(0));
    let relaxed = std::sync::atomic::Ordering::Relaxed;
    let written = run(&[Set::new().book()], &request(dir.path()), &|step| match step {
        Step::Planned(files) => drop(planned.fetch_add(files, relaxed)),
        Step::Made => drop(made.fetch_add(1, relaxed)),
    });
    let files: usize = written.unwrap().iter().map(|edition| edition.files.len()).sum();
    assert_eq!((planned.into_inner(), made.into_inner()), (files as u64, files as u64));
}

#[test]
fn a_whole_run_leaves_no_stale_page() {
    let dir = TempDir::new().unwrap();
    let mut set = Set::new();
    go(&set, &request(dir.path())).unwrap();
    set.pages.pop();
    let written = go(&set, &request(dir.path())).unwrap();
    assert!(tree(dir.path()).keys().all(|name| !name.contains("bollard-2")));
    assert_eq!(tree(&written[0].folder).len(), written[0].files.len());
    assert_eq!(names(&dir.path().join("slipway")), ["a4", "screen"]);
}

#[test]
fn a_run_of_one_edition_leaves_the_other() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let before = tree(dir.path());
    let mut set = Set::new();
    set.spec.title = "Slipway at dusk".to_owned();
    set.spec.version = "1.2.1".to_owned();
    go(&set, &Request { editions: &["screen".to_owned()], ..request(dir.path()) }).unwrap();
    let after = tree(dir.path());
    let same = |part: &str| after.iter().filter(|(n, _)| n.starts_with(part)).all(|(n, bytes)| before[n] == *bytes);
    assert!(same("slipway/a4/"));
    assert!(!same("slipway/screen/"));
}

#[test]
fn a_run_of_some_pages_replaces_their_files_alone() {
    let dir = TempDir::new().unwrap();
    let whole = go(&Set::new(), &request(dir.path())).unwrap();
    let last = whole[0].book_pages;
    let before = tree(&whole[0].folder);
    let changed = Set { pages: vec![page("bollard-1", 1, 2.0), page("bollard-2", 2, 2.0)], ..Set::new() };
    let formats = Some(Formats { pdf: false, svg: true, png: true });
    let editions = ["a4".to_owned()];
    let part = Request { editions: &editions, formats, pages: pages(last..=last), ..request(dir.path()) };
    let written = go(&changed, &part).unwrap();
    let mut names: Vec<_> = written[0].files.iter().map(|(name, _)| name.clone()).collect();
    names.sort();
    let id = &written[0].pages[0].1;
    let expected = [format!("png/{last:03}-{id}.png"), "report.json".to_owned(), format!("svg/{last:03}-{id}.svg")];
    assert_eq!(names, expected);
    let after = tree(&written[0].folder);
    assert_eq!(before.keys().collect::<Vec<_>>(), after.keys().collect::<Vec<_>>());
    let others = after.iter().filter(|(name, _)| !names.contains(name));
    others.for_each(|(name, bytes)| assert!(before[name] == *bytes, "{name} was touched"));
}

/// A report vouches for the files of its own run and for no others.
#[test]
fn a_report_names_the_files_that_its_run_wrote() {
    let dir = TempDir::new().unwrap();
    let svg = Some(Formats { pdf: false, svg: true, png: false });
    let written = go(&Set::new(), &Request { formats: svg, pages: pages(2..=2), ..request(dir.path()) }).unwrap();
    let report = report(dir.path(), "a4");
    let listed = report["pages"].as_array().unwrap();
    assert_eq!(listed.len() as u64, u64::from(written[0].book_pages));
    for page in listed {
        assert_eq!(page.get("svg").is_some(), page["number"] == 2, "{page}");
        assert!(page.get("png").is_none());
    }
    let name = listed[1]["svg"].as_str().unwrap();
    assert!(written[0].folder.join(name).is_file());
    assert!(!written[0].folder.join("png").exists());
}

/// The contents link to pages that an excerpt does not hold.
#[test]
fn an_excerpt_is_a_document_of_its_own() {
    let dir = TempDir::new().unwrap();
    let formats = Some(Formats { pdf: true, svg: false, png: false });
    go(&Set::new(), &Request { formats, pages: pages(1..=3), ..request(dir.path()) }).unwrap();
    let bytes = fs::read(dir.path().join("slipway").join("a4").join("slipway.pdf")).unwrap();
    assert!(bytes.windows(8).any(|word| word == b"/Count 3"));
}

#[test]
fn a_failing_run_changes_nothing() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let before = tree(dir.path());
    // The second set fails after the first is rendered.
    let (mut first, mut second) = (Set::new(), Set::new());
    first.spec.title = "Changed".to_owned();
    second.spec.id = "quay".to_owned();
    second.spec.date = "no date".to_owned();
    let done = run(&[first.book(), second.book()], &request(dir.path()), &|_| ());
    assert!(matches!(done, Err(Error::Date(_))), "{done:?}");
    assert!(before == tree(dir.path()));
    assert_eq!(names(dir.path()), ["slipway"]);
    assert_eq!(names(&dir.path().join("slipway")), ["a4", "screen"]);
}

#[test]
fn a_first_run_that_fails_leaves_no_folder() {
    let dir = TempDir::new().unwrap();
    let out = dir.path().join("new").join("out");
    let done = go(&Set::new(), &Request { pages: pages(1..=999), ..request(&out) });
    assert!(matches!(done, Err(Error::PageRange { asked: (1, 999), .. })), "{done:?}");
    assert_eq!(names(dir.path()), Vec::<String>::new());
}

#[test]
fn what_a_killed_run_left_is_put_right_by_the_next() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let before = tree(dir.path());
    let folder = dir.path().join("slipway");
    // Killed between the two renames of the swap: the old edition waits aside, the new one is still in staging.
    fs::create_dir(folder.join(".previous")).unwrap();
    fs::rename(folder.join("a4"), folder.join(".previous").join("a4")).unwrap();
    fs::create_dir_all(folder.join(".staging").join("a4").join("svg")).unwrap();
    fs::write(folder.join(".staging").join("a4").join("svg").join("001-cover.svg"), "<svg").unwrap();
    let done = go(&Set::new(), &Request { pages: pages(999..=999), ..request(dir.path()) });
    assert!(matches!(done, Err(Error::PageRange { .. })));
    assert!(before == tree(dir.path()));
    assert_eq!(names(&folder), ["a4", "screen"]);
}

/// The report vouches for pages, so it must not stand there before they do.
#[test]
fn a_page_that_cannot_be_replaced_leaves_the_old_report() {
    let dir = TempDir::new().unwrap();
    let whole = go(&Set::new(), &request(dir.path())).unwrap();
    let page = whole[0].folder.join(&whole[0].files.iter().find(|(name, _)| name.starts_with("svg/")).unwrap().0);
    fs::remove_file(&page).unwrap();
    fs::create_dir(&page).unwrap();
    let before = tree(&whole[0].folder);
    let formats = Some(Formats { pdf: false, svg: true, png: false });
    let done = go(&Set::new(), &Request { formats, pages: pages(1..=1), ..request(dir.path()) });
    assert!(matches!(done, Err(Error::Io { .. })), "{done:?}");
    assert!(before == tree(&whole[0].folder));
    assert_eq!(names(&dir.path().join("slipway")), ["a4", "screen"]);
}

#[test]
fn a_folder_that_is_not_ours_is_left_alone() {
    let dir = TempDir::new().unwrap();
    let folder = dir.path().join("slipway").join("a4");
    fs::create_dir_all(&folder).unwrap();
    fs::write(folder.join("holiday.jpg"), "mine").unwrap();
    let done = go(&Set::new(), &request(dir.path()));
    assert!(matches!(&done, Err(Error::Foreign(path)) if *path == folder), "{done:?}");
    assert_eq!(tree(dir.path()).keys().collect::<Vec<_>>(), ["slipway/a4/holiday.jpg"]);
    // Pages of a run without its report are ours all the same.
    fs::remove_file(folder.join("holiday.jpg")).unwrap();
    fs::create_dir(folder.join("svg")).unwrap();
    fs::write(folder.join("svg").join("099-old.svg"), "<svg").unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    assert!(!folder.join("svg").join("099-old.svg").exists());
}

#[test]
fn two_runs_do_not_write_to_one_folder_at_once() {
    let dir = TempDir::new().unwrap();
    let folder = dir.path().join("slipway");
    fs::create_dir(&folder).unwrap();
    let other = fs::File::open(&folder).unwrap();
    other.lock().unwrap();
    assert!(matches!(go(&Set::new(), &request(dir.path())), Err(Error::Busy(_))));
    drop(other);
    go(&Set::new(), &request(dir.path())).unwrap();
}

#[test]
fn sets_of_one_id_are_refused() {
    let dir = TempDir::new().unwrap();
    let done = run(&[Set::new().book(), Set::new().book()], &request(dir.path()), &|_| ());
    assert!(matches!(done, Err(Error::SameSet(id)) if id == "slipway"));
    assert!(tree(dir.path()).is_empty());
}

#[test]
fn an_unknown_edition_names_the_known_ones() {
    let dir = TempDir::new().unwrap();
    let done = go(&Set::new(), &Request { editions: &["screan".to_owned()], ..request(dir.path()) });
    let message = done.unwrap_err().to_string();
    assert_eq!(message, "set `slipway` has no edition `screan`; it has `a4`, `screen`; did you mean `screen`?");
}

/// The entry of a page by its id.
fn page_of<'a>(report: &'a Value, id: &str) -> &'a Value {
    report["pages"].as_array().unwrap().iter().find(|p| p["id"] == id).unwrap()
}

fn entry<'a>(page: &'a Value, list: &str, id: &str) -> &'a Value {
    page[list].as_array().unwrap().iter().find(|e| e["id"] == id).unwrap()
}

/// Tolerance of a length in the report: it is printed with 4 decimals.
const PRINTED: f64 = 0.000_051;

fn near(value: &Value, expected: f64) {
    let value = value.as_f64().unwrap();
    assert!((value - expected).abs() <= PRINTED, "{value} against {expected}");
}

#[test]
fn the_report_says_what_was_solved() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let report = report(dir.path(), "a4");
    assert_eq!(report["schema"], 1);
    assert_eq!(report["set"], serde_json::json!({"id": "slipway", "version": "1.2.0"}));
    assert_eq!(report["edition"]["page_mm"], serde_json::json!([210.0, 297.0]));
    assert_eq!(report["edition"]["glasses"], serde_json::json!({"left": "cyan", "right": "red"}));
    assert_eq!(report["viewer"]["ipd_range_mm"], serde_json::json!([50.0, 75.0]));
    let reading = &report["reading"];
    assert_eq!((&reading["language"], &reading["limit"]), (&Value::from("en"), &Value::from(8.0)));
    assert!(reading["score"].as_f64().unwrap() < 8.0, "{reading}");
    let page = page_of(&report, "bollard-1");
    assert_eq!((&page["kind"], &page["level"]), (&Value::from("jump"), &Value::from(1)));
    // 4 mm at 400 mm and an ipd of 64 mm stands 23.5294 mm before the page and 26.6667 mm behind it.
    // Source: Jones, Lee, Holliman & Ezra 2001, "Controlling perceived depth in stereoscopic images", Proc SPIE 4297:
    // D / (E/p + 1) and D / (E/p - 1).
    near(&entry(page, "targets", "near")["place_mm"], 400.0 - 23.5294);
    near(&entry(page, "targets", "far")["place_mm"], 400.0 + 26.6667);
    near(&entry(page, "targets", "near")["parallax_mm"], -4.0);
    // 4 mm at 400 mm is 1 prism dioptre by its definition, 1 cm at 1 m; toward is positive.
    near(&entry(page, "targets", "near")["demand_pd"], 1.0);
    near(&entry(page, "targets", "far")["demand_pd"], -1.0);
}

/// The two ends are the places for the ends of the audience's ipds, Z = D E / (E - p), the nearer first.
/// Source: Woods, Docherty & Koch 1993, "Image distortions in stereoscopic video systems", Proc SPIE 1915.
#[test]
fn promised_places_are_ranges_from_near_to_far() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let report = report(dir.path(), "a4");
    let page = page_of(&report, "bollard-2");
    let near_range = &entry(page, "targets", "near")["place_range_mm"];
    near(&near_range[0], 400.0 * 50.0 / 58.0);
    near(&near_range[1], 400.0 * 75.0 / 83.0);
    let far_range = &entry(page, "targets", "far")["place_range_mm"];
    near(&far_range[0], 400.0 * 75.0 / 67.0);
    near(&far_range[1], 400.0 * 50.0 / 42.0);
}

#[test]
fn features_are_listed_by_what_they_are_for() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let report = report(dir.path(), "a4");
    let page = page_of(&report, "bollard-1");
    let ids = |list: &str| -> Vec<String> {
        page[list].as_array().unwrap().iter().map(|e| e["id"].as_str().unwrap().to_owned()).collect()
    };
    assert_eq!(ids("targets"), ["near", "far", "line"]);
    assert_eq!(ids("marks"), ["near-left"]);
    assert_eq!(ids("guides"), ["edge"]);
    assert_eq!(entry(page, "marks", "near-left")["eyes"], "left");
    // A path keeps its shape; its middle is the middle of its bounding box.
    let line = entry(page, "targets", "line");
    let points = line["points"].as_array().unwrap();
    let (first, last) = (&points[0], &points[points.len() - 1]);
    near(&first[2], 0.0);
    near(&last[2], -4.0);
    let number = |value: &Value| value.as_f64().unwrap();
    assert!((number(&last[0]) - number(&first[0]) - 60.0).abs() <= 2.0 * PRINTED);
    assert!(((number(&first[0]) + number(&last[0])) / 2.0 - number(&line["at_mm"][0])).abs() <= 2.0 * PRINTED);
    near(&first[1], number(&line["at_mm"][1]));
}

#[test]
fn every_sheet_of_the_book_is_listed() {
    let dir = TempDir::new().unwrap();
    let written = go(&Set::new(), &request(dir.path())).unwrap();
    let report = report(dir.path(), "screen");
    let listed = report["pages"].as_array().unwrap();
    for (index, page) in listed.iter().enumerate() {
        assert_eq!(page["number"], index as u64 + 1);
        assert_eq!(page["svg"].as_str().unwrap(), format!("svg/{:03}-{}.svg", index + 1, page["id"].as_str().unwrap()));
    }
    let front: Vec<_> = listed.iter().take_while(|p| p["kind"] == "front").collect();
    assert!(!front.is_empty());
    assert!(front.iter().all(|p| p["level"].is_null()));
    assert_eq!(front[0]["targets"], serde_json::json!([]));
    assert_eq!(listed[front.len()]["id"], "bollard-1");
    assert_eq!(listed.len(), written[1].book_pages as usize);
}

/// Exactly the keys of the design, in its order, whatever else is added between.
#[test]
fn keys_stand_in_the_order_of_the_design() {
    let dir = TempDir::new().unwrap();
    go(&Set::new(), &request(dir.path())).unwrap();
    let text = fs::read_to_string(dir.path().join("slipway").join("a4").join("report.json")).unwrap();
    let page = &text[text.find("\"id\": \"bollard-1\"").unwrap()..];
    let in_order = |text: &str, keys: &[&str]| {
        let places: Vec<_> = keys.iter().map(|key| text.find(&format!("\"{key}\": ")).expect(key)).collect();
        assert!(places.is_sorted(), "{keys:?} stand at {places:?}");
    };
    in_order(&text, &["schema", "set", "edition", "viewer", "pages"]);
    in_order(&text, &["page_mm", "ground", "ppi", "glasses", "inks"]);
    in_order(&text, &["distance_mm", "ipd_mm", "ipd_range_mm"]);
    in_order(page, &["kind", "level", "svg", "png", "targets", "lints"]);
    let keys =
        ["eyes", "at_mm", "size_mm", "parallax_mm", "demand_pd", "disparity_arcsec", "place_mm", "place_range_mm"];
    in_order(page, &keys);
}
