//! Editions from others and from a matrix, and editions without the gated pages.

use std::collections::BTreeMap;
use std::fs;
use std::num::NonZeroUsize;
use std::path::{Path, PathBuf};

use depthpress::bundle::inked::Inked;
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::{Prepared, prepare};
use depthpress::bundle::run::{Request, run};
use depthpress::colour::Ground;
use depthpress::diagnostics::render::{Paint, text};
use depthpress::spec::{Answers, Edition, Formats, Hand, PageFormat, SetSpec, TextSize};

const HEAD: &str = r#"[set]
id = "quay"
title = "Quay"
version = "1.0.0"
date = "2026-05-04"
language = "en"
exercises = ["ring.toml", "lamp.toml"]
order = "free"

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[gate]
set_by = "the quay clinic"

"#;

const A4: &str = "[[edition]]\nid = \"a4\"\npage = \"A4\"\nground = \"white\"\nppi = 300\nanswers = \"none\"\n\n";

const HOLD: &str = r#"[exercise]
kind = "hold"
title = "A ring"

[[target]]
shape = "ring"
size = "40 mm"
depth = "2 pd toward"
"#;

/// The set with these tables after its head.
fn set(tables: &str) -> Prepared {
    let dir = tempfile::tempdir().unwrap();
    let write = |name: &str, body: &str| fs::write(dir.path().join(name), body).unwrap();
    write("set.toml", &format!("{HEAD}{tables}"));
    write("ring.toml", HOLD);
    write("lamp.toml", &HOLD.replace("title", "balance = { share = \"60 %\", stronger = \"left\" }\ntitle"));
    let prepared = prepare(load(dir.path()).unwrap(), None);
    let told = text(prepared.diagnostics.sorted(), &prepared.sources, Paint::Plain);
    assert!(prepared.set.is_some(), "{told}");
    prepared
}

fn spec(prepared: &Prepared) -> &SetSpec {
    prepared.set.as_ref().unwrap()
}

fn edition<'a>(prepared: &'a Prepared, id: &str) -> &'a Edition {
    spec(prepared).editions.iter().find(|edition| edition.id == id).unwrap()
}

fn ids(prepared: &Prepared) -> Vec<&str> {
    spec(prepared).editions.iter().map(|edition| edition.id.as_str()).collect()
}

#[test]
fn an_edition_takes_what_it_leaves_out_from_another_one() {
    let tables = "[[edition]]\nid = \"left\"\nfrom = \"large\"\nhand = \"left\"\n\n\
                  [[edition]]\nid = \"large\"\nfrom = \"a4\"\ntext = \"large\"\nppi = 150\n\n";
    let set = set(&format!("{tables}{A4}"));
    assert_eq!(ids(&set), ["left", "large", "a4"]);
    let [left, large, a4] = ["left", "large", "a4"].map(|id| edition(&set, id));
    assert_eq!((left.page, left.ground, left.answers), (PageFormat::A4, Ground::White, Answers::None));
    assert_eq!((left.text, left.ppi.0, left.hand), (TextSize::Large, 150, Hand::Left));
    assert_eq!((large.text, large.ppi.0, large.hand), (TextSize::Large, 150, Hand::Right));
    assert_eq!((a4.text, a4.ppi.0, a4.hand), (TextSize::Standard, 300, Hand::Right));
    assert!(left.place != large.place && large.place != a4.place);
}

#[test]
fn a_medium_of_its_own_leaves_the_keys_of_the_other_one_behind() {
    let print = A4.replace("ppi", "medium = \"print\"\nlamp = \"A\"\ncmyk = true\nppi");
    let set = set(&format!(
        "{print}[[edition]]\nid = \"screen\"\nfrom = \"a4\"\nmedium = \"screen\"\n\n\
         [[edition]]\nid = \"again\"\nfrom = \"screen\"\npage = \"Letter\"\n\n\
         [[edition]]\nid = \"print\"\nfrom = \"a4\"\npage = \"Letter\"\n"
    ));
    assert!(!edition(&set, "screen").colour.cmyk && !edition(&set, "screen").colour.source.is_print());
    assert_eq!(edition(&set, "again").colour, edition(&set, "screen").colour);
    assert_eq!(edition(&set, "print").colour, edition(&set, "a4").colour);
}

#[test]
fn a_matrix_gives_every_combination_the_last_list_first() {
    let set = set(&format!(
        "{A4}[[matrix]]\nfrom = \"a4\"\nid = \"{{page}}-{{ground}}-{{glasses}}\"\npage = [\"Letter\", \"16:9\"]\n\
         ground = [\"black\"]\n\
         glasses = [{{ left = \"cyan\", right = \"red\" }}, {{ left = \"red\", right = \"cyan\" }}]\n"
    ));
    let made = ["letter-black-cyan-red", "letter-black-red-cyan", "wide-black-cyan-red", "wide-black-red-cyan"];
    assert_eq!(ids(&set), [&["a4"], made.as_slice()].concat());
    let last = edition(&set, "wide-black-red-cyan");
    assert_eq!((last.page, last.ground, last.ppi.0), (PageFormat::Wide, Ground::Black, 300));
    assert_eq!((last.glasses.left.name(), last.glasses.right.name()), ("red", "cyan"));
    assert_eq!(last.answers, Answers::None);
    // Its glasses decide its inks as those of an edition of its own would.
    assert_eq!(Inked::of(last).plan.inks.left, Inked::of(edition(&set, "wide-black-cyan-red")).plan.inks.right);
}

#[test]
fn only_and_exclude_choose_among_the_combinations() {
    let matrix = |rules: &str| {
        set(&format!(
            "{A4}[[matrix]]\nfrom = \"a4\"\nid = \"{{page}}-{{text}}-{{hand}}\"\npage = [\"Letter\", \"16:9\"]\n\
             text = [\"standard\", \"large\"]\nhand = [\"right\", \"left\"]\n{rules}"
        ))
    };
    assert_eq!(ids(&matrix("")).len(), 1 + 8);
    let only = matrix("only = [{ page = \"16:9\", hand = \"left\" }, { text = \"large\", hand = \"left\" }]");
    assert_eq!(ids(&only), ["a4", "letter-large-left", "wide-standard-left", "wide-large-left"]);
    let rules = "only = [{ hand = \"left\" }]\nexclude = [{ page = [\"Letter\"], text = [\"standard\", \"large\"] }]";
    assert_eq!(ids(&matrix(rules)), ["a4", "wide-standard-left", "wide-large-left"]);
}

#[test]
fn two_hundred_editions_are_allowed() {
    let list = |n: usize| (0..n).map(|i| format!("[[edition]]\nid = \"e{i}\"\nfrom = \"a4\"\n\n")).collect::<String>();
    assert_eq!(ids(&set(&format!("{A4}{}", list(199)))).len(), 200);
}

/// The ids of the sheets of an edition.
fn sheets(set: &Prepared, id: &str) -> Vec<String> {
    let edition = edition(set, id);
    let laid = set.book().unwrap().lay_out(edition, &Inked::of(edition)).unwrap();
    laid.sheets.into_iter().map(|sheet| sheet.id).collect()
}

#[test]
fn an_edition_without_gated_pages_is_numbered_without_them() {
    let set = set(&format!("{A4}[[matrix]]\nfrom = \"a4\"\nid = \"{{gated}}\"\ngated = [\"in\", \"out\"]\n"));
    let (whole, solo) = (sheets(&set, "in"), sheets(&set, "out"));
    assert_eq!(whole, sheets(&set, "a4"));
    assert!(whole.contains(&"lamp".to_owned()) && !solo.contains(&"lamp".to_owned()));
    assert!(solo.contains(&"ring".to_owned()) && solo.len() < whole.len());
}

#[test]
fn nothing_can_be_left_out_where_every_page_is_for_a_professional() {
    let dir = tempfile::tempdir().unwrap();
    let problems = |viewer: &str, path: &Path| {
        let solo = "[[edition]]\nid = \"solo\"\nfrom = \"a4\"\ngated = \"out\"\n";
        let head = HEAD.replace("[viewer]\n", &format!("[viewer]\n{viewer}")).replace("\"ring.toml\", ", "");
        fs::write(path.join("set.toml"), format!("{head}{A4}{solo}")).unwrap();
        let balance = "balance = { share = \"60 %\", stronger = \"left\" }\ntitle";
        fs::write(path.join("lamp.toml"), HOLD.replace("title", balance)).unwrap();
        let prepared = prepare(load(path).unwrap(), None);
        prepared.diagnostics.iter().map(|d| d.message.clone()).collect::<Vec<_>>().join("\n")
    };
    let none = problems("", dir.path());
    assert!(none.contains("edition `solo` leaves the gated pages out, and the set has no others"), "{none}");
    let base = problems("base = \"2 pd toward\"\n", dir.path());
    assert!(base.contains("`base` of `[viewer]` makes every page one"), "{base}");
}

/// Every file of a run with so many threads, by its path.
fn made(set: &Prepared, jobs: usize) -> BTreeMap<PathBuf, Vec<u8>> {
    let out = tempfile::tempdir().unwrap();
    let formats = Formats { pdf: true, svg: true, png: false };
    let request = Request {
        out: out.path(),
        editions: &[],
        formats: Some(formats),
        pages: None,
        jobs: NonZeroUsize::new(jobs).unwrap(),
        sharded: None,
    };
    let written = run(&[set.book().unwrap()], &request, &|_| ()).unwrap();
    assert_eq!(written.iter().map(|edition| edition.edition.as_str()).collect::<Vec<_>>(), ids(set));
    let files = written.iter().flat_map(|edition| edition.files.iter().map(|(name, _)| edition.folder.join(name)));
    files.map(|path| (path.strip_prefix(out.path()).unwrap().to_owned(), fs::read(&path).unwrap())).collect()
}

/// With fewer editions than threads their pages are made in parallel, else the editions themselves.
#[test]
fn many_editions_are_the_same_bytes_on_any_number_of_threads() {
    let matrix = "[[matrix]]\nfrom = \"a4\"\nid = \"{ground}-{gated}\"\nground = [\"white\", \"black\"]\n\
                  gated = [\"in\", \"out\"]\n";
    let set = set(&format!("{A4}{matrix}"));
    let one = made(&set, 1);
    assert!(5 * 10 < one.len(), "{}", one.len());
    for jobs in [3, 8] {
        assert!(made(&set, jobs) == one, "{jobs} threads");
    }
}
