//! `compare` from outside: prepared changes on a small set, each with its class, its numbers and what the version has to
//! be; and what holds for any two sets.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use depthpress::bundle::compare::class::Class;
use depthpress::bundle::compare::diff::{Comparison, compare};
use depthpress::bundle::compare::facts::{SetFacts, facts};
use depthpress::bundle::load::load;
use depthpress::bundle::prepare::prepare;
use serde_json::{Value, json};
use tempfile::TempDir;

const PROGRAM: &str = env!("CARGO_BIN_EXE_depthpress");

const SET: &str = r#"
[set]
id = "slipway"
title = "Slipway"
summary = "A slip at low water."
version = "1.2.3"
date = "2026-05-04"
language = "en"
order = "free"
exercises = ["bollard.toml", "float.toml", "star.toml", "lamp.toml"]

[viewer]
distance = "40 cm"
ipd = "63 mm"
ipd_range = ["50 mm", "75 mm"]

[glasses]
left = "cyan"
right = "red"

[[edition]]
id = "a4"
page = "A4"
ground = "white"
ppi = 72

[[edition]]
id = "screen"
page = "16:9"
ground = "black"
ppi = 72
"#;

const BOLLARD: &str = r#"
[exercise]
kind = "jump"
title = "Bollards"
goal = "Look from the near ring to the far ring and back."

[[target]]
shape = "ring"
size = "30 mm"
at = ["-40 mm", "0 mm"]
depth = "2 pd toward"
label = "near"

[[target]]
shape = "ring"
size = "30 mm"
at = ["40 mm", "0 mm"]
depth = "1 pd away"
label = "far"
"#;

const FLOAT: &str = r#"
[exercise]
kind = "odd"
title = "The loose float"
questions = 10
choices = 4
step = "800 arcsec toward"
"#;

const STAR: &str = r#"
[exercise]
kind = "hidden"
title = "Star over the breakwater"

[dots]
ground = "page"
cue = 0

[[figure]]
label = "star"
shape = "star"
size = "64 mm"
depth = "600 arcsec toward"
"#;

const LAMP: &str = r#"
[exercise]
kind = "hold"
title = "The lamp on the pier"
hold = "12 s"

[[target]]
label = "lamp"
shape = "ring"
size = "45 mm"
depth = "1 pd toward"
"#;

/// Folders with an old and a new set.
struct Pair(TempDir);

impl Pair {
    /// Twice the same set.
    fn new() -> Self {
        let pair = Self(tempfile::tempdir().unwrap());
        for side in ["old", "new"] {
            let folder = pair.path(side);
            fs::create_dir_all(&folder).unwrap();
            let files = [("set", SET), ("bollard", BOLLARD), ("float", FLOAT), ("star", STAR), ("lamp", LAMP)];
            for (name, text) in files {
                fs::write(folder.join(format!("{name}.toml")), text).unwrap();
            }
        }
        pair
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }

    /// Changes a file of the new set.
    fn change(&self, file: &str, from: &str, to: &str) -> &Self {
        let path = self.path("new").join(file);
        let text = fs::read_to_string(&path).unwrap();
        assert!(text.contains(from), "{file}: {from}");
        fs::write(path, text.replacen(from, to, 1)).unwrap();
        self
    }

    fn version(&self, version: &str) -> &Self {
        let path = self.path("new/set.toml");
        let text = fs::read_to_string(&path).unwrap();
        let old = text.lines().find(|line| line.starts_with("version = ")).unwrap().to_owned();
        fs::write(path, text.replacen(&old, &format!("version = \"{version}\""), 1)).unwrap();
        self
    }

    fn run(&self, args: &[&str]) -> Output {
        run(&self.path("old"), &self.path("new"), args)
    }

    fn json(&self) -> (Value, Option<i32>) {
        let output = self.run(&["--json"]);
        (serde_json::from_slice(&output.stdout).unwrap(), output.status.code())
    }

    /// The comparison, which has to be of this class and to ask for this version.
    fn is(&self, class: &str, lowest: &str) -> Value {
        let (report, code) = self.json();
        assert_eq!((&report["comparison"]["class"], code), (&json!(class), Some(1)), "{report:#}");
        assert_eq!(
            (&report["version"]["outcome"], &report["version"]["lowest"]),
            (&json!("not-raised"), &json!(lowest))
        );
        let (report, code) = self.version(lowest).json();
        assert_eq!((&report["version"]["outcome"], code), (&json!("fits"), Some(0)), "{report:#}");
        report["comparison"].clone()
    }
}

fn run(old: &Path, new: &Path, args: &[&str]) -> Output {
    Command::new(PROGRAM).arg("compare").args([old, new]).args(args).output().unwrap()
}

fn said(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// The entry with this id.
fn of<'a>(list: &'a Value, id: &str) -> &'a Value {
    list.as_array().unwrap().iter().find(|entry| entry["id"] == id).unwrap_or_else(|| panic!("no {id} in {list:#}"))
}

fn ids(list: &Value) -> Vec<&str> {
    list.as_array().unwrap().iter().map(|entry| entry["id"].as_str().unwrap()).collect()
}

/// Old and new value of a difference.
fn values<'a>(differences: &'a Value, name: &str) -> (&'a Value, &'a Value) {
    let list = differences.as_array().unwrap();
    let found = list.iter().find(|change| change["name"] == name);
    let change = found.unwrap_or_else(|| panic!("no {name} in {differences:#}"));
    (&change["old"], &change["new"])
}

/// What a demand is on the page, in numbers as the report rounds them: parallax mm, disparity arcsec, place mm.
///
/// Source: ISO 13666, prism dioptre (1 cm at 1 m): p = -demand D / 100. Similar triangles: Z = D E / (E - p). Vergence of
/// a point straight ahead at Z: 2 atan(E / 2 Z).
fn stand(demand: f64, distance: f64, ipd: f64) -> (f64, f64, f64) {
    let parallax = -demand * distance / 100.0;
    let place = distance * ipd / (ipd - parallax);
    let vergence = |z: f64| 2.0 * (ipd / (2.0 * z)).atan();
    let arcsec = (vergence(place) - vergence(distance)).to_degrees() * 3600.0;
    let round = |value: f64, parts: f64| (value * parts).round() / parts + 0.0;
    (round(parallax, 1e4), round(arcsec, 1e2), round(place, 1e4))
}

/// That a feature changed from one stand to another.
fn stands(feature: &Value, (old, new): ((f64, f64), (f64, f64))) {
    let differences = &feature["differences"];
    let [old, new] = [old, new].map(|(demand, distance)| stand(demand, distance, 63.0));
    assert_eq!(values(differences, "parallax_mm"), (&json!(old.0), &json!(new.0)));
    assert_eq!(values(differences, "disparity_arcsec"), (&json!(old.1), &json!(new.1)));
    assert_eq!(values(differences, "place_mm"), (&json!(old.2), &json!(new.2)));
}

#[test]
fn a_depth_is_major_and_told_in_all_units() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward");
    let found = pair.is("major", "2.0.0");
    assert_eq!(ids(&found["pages"]), ["bollard"]);
    let page = &found["pages"][0];
    assert_eq!(
        (&page["happened"], &page["moved"], &page["class"]),
        (&json!("changed"), &json!(false), &json!("major"))
    );
    let near = of(&page["features"], "near");
    assert_eq!(values(&near["differences"], "demand_pd"), (&json!(2.0), &json!(2.5)));
    stands(near, ((2.0, 400.0), (2.5, 400.0)));
    // By hand: 2 pd at 400 mm are 8 mm, 2.5 pd are 10 mm, crossed.
    assert_eq!(values(&near["differences"], "parallax_mm"), (&json!(-8.0), &json!(-10.0)));
    // What rides with the near ring moved with it; the far ring did not.
    assert!(ids(&page["features"]).iter().all(|id| id.starts_with("near")), "{page:#}");
    assert!(found["set"].as_array().unwrap().is_empty() && found["editions"].as_array().unwrap().is_empty());
    let text = said(&pair.run(&[]).stdout);
    assert!(text.contains("demand was 2 pd toward, now 2.5 pd toward; parallax was -8 mm, now -10 mm"), "{text}");
}

#[test]
fn a_pinned_ink_is_major_in_its_edition_alone() {
    let pair = Pair::new();
    let a4 = "page = \"A4\"\nground = \"white\"";
    pair.change("set.toml", a4, &format!("{a4}\ninks = {{ left = \"#ee0000\" }}"));
    let found = pair.is("major", "2.0.0");
    assert_eq!((ids(&found["editions"]), ids(&found["pages"])), (vec!["a4"], vec![]));
    // On white, the left eye behind cyan gets red marks.
    let differences = &found["editions"][0]["differences"];
    assert_eq!(values(differences, "inks.left"), (&json!("#ff0000"), &json!("#ee0000")));
    let major: Vec<&Value> =
        differences.as_array().unwrap().iter().filter(|c| c["class"] == "major").map(|c| &c["name"]).collect();
    assert_eq!(major, ["inks.left"], "the forecast that follows from it is a patch");
}

#[test]
fn other_glasses_are_major_and_swap_the_inks_of_every_edition() {
    let pair = Pair::new();
    pair.change("set.toml", "left = \"cyan\"\nright = \"red\"", "left = \"red\"\nright = \"cyan\"");
    let found = pair.is("major", "2.0.0");
    assert_eq!((ids(&found["editions"]), ids(&found["pages"])), (vec!["a4", "screen"], vec![]));
    let (red, cyan) = (&json!("#ff0000"), &json!("#00ffff"));
    // A filter absorbs the ink of its eye on white and lets it through on black.
    for (edition, left) in [("a4", (red, cyan)), ("screen", (cyan, red))] {
        let differences = &of(&found["editions"], edition)["differences"];
        assert_eq!(values(differences, "inks.left"), left);
        assert_eq!(values(differences, "inks.right"), (left.1, left.0));
        assert_eq!(values(differences, "glasses.left"), (&json!("cyan"), &json!("red")));
    }
}

/// The answers are those of the two reports.
#[test]
fn another_seed_is_major_where_answers_follow_from_it() {
    let pair = Pair::new();
    pair.change("float.toml", "kind = \"odd\"", "kind = \"odd\"\nseed = 7");
    let answers = ["old", "new"].map(|side| answers(&pair, side));
    let found = pair.is("major", "2.0.0");
    assert_eq!(ids(&found["pages"]), ["float"]);
    let page = &found["pages"][0];
    let seed = page["differences"].as_array().unwrap().iter().find(|change| change["name"] == "seed").unwrap();
    assert_eq!((&seed["class"], &seed["old"], &seed["new"]), (&json!("patch"), &json!(1), &json!(7)));
    let differing: Vec<_> = answers[0].iter().zip(&answers[1]).filter(|(old, new)| old.1 != new.1).collect();
    assert!(!differing.is_empty());
    let told = page["questions"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|q| q["differences"].as_array().unwrap().iter().any(|d| d["name"] == "answer"));
    assert_eq!(told.count(), differing.len());
    for ((id, old), (_, new)) in differing {
        assert_eq!(values(&of(&page["questions"], id)["differences"], "answer"), (old, new));
    }
    // A release is printed in the book: it says which questions, and no answer.
    let release = pair.json().0["release"]["toml"].as_str().unwrap().to_owned();
    assert!(release.contains("(`float`): other answers to questions "), "{release}");
    assert!(release.contains("; other depths; ") && !release.contains("toward"), "{release}");
    assert!(erratum(&pair).contains("It tells answers"));
}

/// Ids and answers of the questions of the page `float`, from the report of a rendered edition.
fn answers(pair: &Pair, side: &str) -> Vec<(String, Value)> {
    let out = pair.path(&format!("out-{side}"));
    let args = ["--edition", "a4", "--format", "svg", "--out"];
    let output = Command::new(PROGRAM).arg("render").arg(pair.path(side)).args(args).arg(&out).output().unwrap();
    assert!(output.status.success(), "{}", said(&output.stderr));
    let report: Value = serde_json::from_slice(&fs::read(out.join("slipway/a4/report.json")).unwrap()).unwrap();
    let questions = of(&report["pages"], "float")["questions"].as_array().unwrap().clone();
    questions.iter().map(|q| (q["id"].as_str().unwrap().to_owned(), q["answer"].clone())).collect()
}

#[test]
fn a_new_page_is_minor_and_moves_the_numbers_after_it() {
    let pair = Pair::new();
    pair.change("set.toml", "\"bollard.toml\", ", "\"bollard.toml\", \"post.toml\", ");
    fs::write(pair.path("new/post.toml"), LAMP.replace("The lamp on the pier", "The post")).unwrap();
    let found = pair.is("minor", "1.3.0");
    assert_eq!(ids(&found["pages"]), ["post"]);
    let page = &found["pages"][0];
    assert_eq!((&page["happened"], &page["class"]), (&json!("added"), &json!("minor")));
    let [before, after] = page["numbers"]["a4"].as_array().unwrap().clone().try_into().unwrap();
    assert_eq!(before, Value::Null);
    let number = after.as_u64().unwrap();
    let renumbered: Vec<&Value> =
        found["renumbered"].as_array().unwrap().iter().filter(|one| one["edition"] == "a4").collect();
    // Three pages stand after it, each one number on.
    assert_eq!(renumbered.len(), 3);
    assert_eq!(renumbered[0], &json!({ "edition": "a4", "id": "float", "numbers": [number, number + 1] }));
    let text = said(&pair.run(&[]).stdout);
    assert!(text.contains(&format!(
        "in `a4`: pages {number} to {} are now {} to {}",
        number + 2,
        number + 1,
        number + 3
    )));
}

#[test]
fn a_page_that_is_gone_is_major() {
    let pair = Pair::new();
    pair.change("set.toml", ", \"lamp.toml\"", "");
    let found = pair.is("major", "2.0.0");
    assert_eq!(ids(&found["pages"]), ["lamp"]);
    assert_eq!(found["pages"][0]["happened"], "removed");
    assert_eq!(found["pages"][0]["numbers"]["a4"][1], Value::Null);
}

#[test]
fn a_goal_is_a_patch_and_both_texts_are_told() {
    let pair = Pair::new();
    pair.change("bollard.toml", "to the far ring and back.", "to the *far* ring, and back.");
    let found = pair.is("patch", "1.2.4");
    assert_eq!(ids(&found["pages"]), ["bollard"]);
    let page = &found["pages"][0];
    let (old, new) = values(&page["differences"], "words.goal");
    assert_eq!(old, "Look from the near ring to the far ring and back.");
    assert_eq!(new, "Look from the near ring to the *far* ring, and back.");
    assert_eq!(page["differences"].as_array().unwrap().len(), 1);
    let erratum = erratum(&pair);
    assert!(erratum.contains("now “Look from the near ring to the \\*far\\* ring, and back.”"), "{erratum}");
}

fn erratum(pair: &Pair) -> String {
    let file = pair.path("words/erratum.md");
    let output = pair.run(&["--erratum", file.to_str().unwrap()]);
    assert_ne!(output.status.code(), Some(2), "{}", said(&output.stderr));
    fs::read_to_string(file).unwrap()
}

/// The same demand at another distance is another parallax.
#[test]
fn another_distance_is_major_on_every_page() {
    let pair = Pair::new();
    pair.change("set.toml", "distance = \"40 cm\"", "distance = \"50 cm\"");
    let found = pair.is("major", "2.0.0");
    assert_eq!(values(&found["set"], "viewer.distance_mm"), (&json!(400.0), &json!(500.0)));
    assert_eq!(ids(&found["pages"]), ["bollard", "float", "star", "lamp"]);
    let page = of(&found["pages"], "bollard");
    stands(of(&page["features"], "near"), ((2.0, 400.0), (2.0, 500.0)));
    stands(of(&page["features"], "far"), ((-1.0, 400.0), (-1.0, 500.0)));
    let same = of(&page["features"], "near")["differences"].as_array().unwrap();
    assert!(same.iter().all(|change| change["name"] != "demand_pd"), "the demand stays");
}

#[test]
fn another_order_is_minor_and_names_the_page_that_moved() {
    let pair = Pair::new();
    let old = r#"["bollard.toml", "float.toml", "star.toml", "lamp.toml"]"#;
    pair.change("set.toml", old, r#"["lamp.toml", "bollard.toml", "float.toml", "star.toml"]"#);
    let found = pair.is("minor", "1.3.0");
    assert_eq!(ids(&found["pages"]), ["lamp"]);
    assert_eq!((&found["pages"][0]["moved"], &found["pages"][0]["class"]), (&json!(true), &json!("minor")));
    // All four have other numbers in both editions.
    assert_eq!(found["renumbered"].as_array().unwrap().len(), 8);
}

#[test]
fn a_new_edition_is_minor_and_one_that_is_gone_is_major() {
    let pair = Pair::new();
    let letter = "\n[[edition]]\nid = \"letter\"\npage = \"Letter\"\nground = \"white\"\nppi = 72\n";
    pair.change("set.toml", "\n[[edition]]\nid = \"screen\"", &format!("{letter}\n[[edition]]\nid = \"screen\""));
    let found = pair.is("minor", "1.3.0");
    assert_eq!((ids(&found["editions"]), ids(&found["pages"])), (vec!["letter"], vec![]));
    assert_eq!(found["editions"][0]["happened"], "added");
    let gone = run(&pair.path("new"), &pair.path("old"), &["--json"]);
    let gone: Value = serde_json::from_slice(&gone.stdout).unwrap();
    assert_eq!((&gone["comparison"]["class"], &gone["version"]["outcome"]), (&json!("major"), &json!("lower")));
}

#[test]
fn title_summary_and_resolution_are_patches() {
    for (from, to, name) in [
        ("title = \"Slipway\"", "title = \"The Slipway\"", "title"),
        ("summary = \"A slip at low water.\"\n", "", "summary"),
    ] {
        let pair = Pair::new();
        pair.change("set.toml", from, to);
        let found = pair.is("patch", "1.2.4");
        let names: Vec<&Value> = found["set"].as_array().unwrap().iter().map(|change| &change["name"]).collect();
        assert_eq!(names, [name]);
        assert!(found["pages"].as_array().unwrap().is_empty());
    }
    let pair = Pair::new();
    pair.change("set.toml", "ppi = 72", "ppi = 96");
    assert_eq!(values(&pair.is("patch", "1.2.4")["editions"][0]["differences"], "ppi"), (&json!(72), &json!(96)));
}

/// What a raise is told by is no difference; what was told before is.
#[test]
fn releases_are_history_and_the_licence_is_words() {
    let pair = Pair::new();
    let release = |version: &str, what: &str| {
        format!("\n[[release]]\nversion = \"{version}\"\ndate = \"2026-05-04\"\nchanges = [\"{what}\"]\n")
    };
    let before = release("1.2.3", "The lamp came in.");
    fs::write(pair.path("old/set.toml"), format!("{SET}{before}")).unwrap();
    fs::write(pair.path("new/set.toml"), format!("{SET}{}{before}", release("1.2.4", "A word."))).unwrap();
    let (report, code) = pair.version("1.2.4").json();
    assert_eq!((&report["version"]["outcome"], code), (&json!("raised-for-nothing"), Some(0)), "{report:#}");
    pair.change("set.toml", "The lamp came in.", "The lamp came in again.");
    pair.change("set.toml", "[viewer]", "[licence]\nname = \"One household\"\n\n[viewer]");
    let (report, _) = pair.json();
    let found = &report["comparison"];
    assert_eq!(found["class"], "patch");
    assert_eq!(values(&found["set"], "licence.name"), (&Value::Null, &json!("One household")));
    let changes = values(&found["set"], "releases.1.2.3");
    assert_eq!(changes, (&json!(["The lamp came in."]), &json!(["The lamp came in again."])));
}

const GERMAN: &str = r#"
[set]
title = "Slip"
summary = "Ein Slip bei Ebbe."

[exercise.bollard]
title = "Poller"
goal = "Sehen Sie vom nahen Ring zum fernen und zurück."
labels = { near = "nah", far = "fern" }

[exercise.float]
title = "Der lose Schwimmer"

[exercise.star]
title = "Stern über der Mole"

[exercise.lamp]
title = "Die Lampe auf dem Pier"
labels = { lamp = "Lampe" }
"#;

/// A word in German is a patch; a depth is told once, though the labels, and with them the ids, are others in German.
#[test]
fn other_languages_have_words_of_their_own_and_the_same_depths() {
    let pair = Pair::new();
    for side in ["old", "new"] {
        let edition = "[[edition]]\nid = \"a4-de\"\npage = \"A4\"\nground = \"white\"\nppi = 72\nlanguage = \"de\"\n";
        let translation = "[[translation]]\nlanguage = \"de\"\nfile = \"de.toml\"\n";
        fs::write(pair.path(side).join("set.toml"), format!("{SET}\n{edition}\n{translation}")).unwrap();
        fs::write(pair.path(side).join("de.toml"), GERMAN).unwrap();
    }
    pair.change("de.toml", "zum fernen und zurück.", "zum fernen Ring und zurück.");
    let found = pair.is("patch", "1.2.4");
    let [change] = found["pages"][0]["differences"].as_array().unwrap().clone().try_into().unwrap();
    assert_eq!((&found["pages"][0]["id"], &change["name"]), (&json!("bollard"), &json!("words.de.goal")));
    assert_eq!(change["new"], "Sehen Sie vom nahen Ring zum fernen Ring und zurück.");
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward");
    let (report, _) = pair.json();
    let page = &report["comparison"]["pages"][0];
    assert!(ids(&page["features"]).contains(&"near"));
    let names = page["differences"].as_array().unwrap().iter().map(|change| change["name"].as_str().unwrap());
    let of_german: Vec<&str> = names.filter(|name| name.contains(".de.")).collect();
    assert_eq!(of_german, ["words.de.goal"]);
}

#[test]
fn dots_are_compared_by_their_draw_and_their_figures() {
    let pair = Pair::new();
    pair.change("star.toml", "kind = \"hidden\"", "kind = \"hidden\"\nseed = 2");
    let found = pair.is("major", "2.0.0");
    let [field] = found["pages"][0]["features"].as_array().unwrap().clone().try_into().unwrap();
    let names: Vec<&Value> = field["differences"].as_array().unwrap().iter().map(|change| &change["name"]).collect();
    assert_eq!(names, ["dots.key", "draw"], "another draw, and nothing else");
    let pair = Pair::new();
    pair.change("star.toml", "600 arcsec toward", "600 arcsec away");
    let found = pair.is("major", "2.0.0");
    let (old, new) = values(&of(&found["pages"][0]["features"], "star")["differences"], "demand_pd");
    assert!(0.0 < old.as_f64().unwrap() && new.as_f64().unwrap() < 0.0);
}

#[test]
fn without_a_difference_the_version_may_stay_or_rise_but_not_fall() {
    let pair = Pair::new();
    for (version, outcome, expected) in
        [("1.2.3", "same", 0), ("1.2.4", "raised-for-nothing", 0), ("1.2.2", "lower", 1)]
    {
        let (report, code) = pair.version(version).json();
        assert_eq!((&report["version"]["outcome"], code), (&json!(outcome), Some(expected)), "{version}");
        let found = &report["comparison"];
        assert_eq!((&found["class"], &report["release"]), (&Value::Null, &Value::Null));
        assert!(["set", "editions", "pages", "renumbered"].iter().all(|key| found[key] == json!([])), "{found:#}");
    }
    assert!(erratum(&pair).contains("Nothing changed."));
}

#[test]
fn a_version_that_does_not_fit_is_told_with_the_lowest_that_would() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward").version("1.9.0");
    let output = pair.run(&[]);
    assert_eq!(output.status.code(), Some(1));
    let text = said(&output.stdout);
    let message = "version `1.9.0` is too low after `1.2.3` for major differences; raise it to `2.0.0` or higher";
    assert!(text.contains(message), "{text}");
    assert!(text.contains("[[release]]\nversion = \"2.0.0\"\ndate = \"2026-05-04\"\nchanges = [\n"), "{text}");
    let (report, code) = pair.version("3.0.0").json();
    assert_eq!((&report["version"]["fits"], code), (&json!(true), Some(0)), "a larger raise is fine");
}

#[test]
fn a_bundle_stands_for_the_set_in_it() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward");
    let bundle = pair.path("out/slipway-1.2.3");
    fs::create_dir_all(&bundle).unwrap();
    fs::rename(pair.path("old"), bundle.join("spec")).unwrap();
    let output = run(&bundle, &pair.path("new/set.toml"), &["--json"]);
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(ids(&report["comparison"]["pages"]), ["bollard"]);
}

#[test]
fn a_set_that_does_not_read_is_no_comparison() {
    let pair = Pair::new();
    pair.change("bollard.toml", "depth = \"2 pd toward\"", "dept = \"2 pd toward\"");
    let output = pair.run(&[]);
    assert_eq!(output.status.code(), Some(1));
    let told = said(&output.stderr);
    assert!(told.contains("error[E-UNKNOWN-KEY]") && told.contains("nothing was compared: "), "{told}");
    assert!(output.stdout.is_empty());
    let output = pair.run(&["--json"]);
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!((output.status.code(), &report["comparison"]), (Some(1), &Value::Null));
    let errors = report["findings"].as_array().unwrap().iter().filter(|finding| finding["severity"] == "error");
    assert!(0 < errors.count());
    assert_eq!(run(&pair.path("nowhere"), &pair.path("new"), &[]).status.code(), Some(2));
    assert_eq!(pair.run(&["--ppi", "10"]).status.code(), Some(2));
}

/// Files of the sets, files beside them that are none of ours, and a way round through folders and links.
#[test]
fn an_erratum_replaces_an_erratum_and_nothing_else() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward");
    let mine = "# Changes in Slipway\n\n## 1.2.3 (2026-05-04)\n";
    fs::write(pair.path("letter.md"), mine).unwrap();
    fs::write(pair.path("empty.md"), "").unwrap();
    let refused = |name: &str, why: &str| {
        let path = pair.path(name);
        let before = fs::read(&path).ok();
        let pictures = pair.path("pictures");
        let args = ["--erratum", path.to_str().unwrap(), "--pictures", pictures.to_str().unwrap()];
        let output = pair.run(&args);
        let told = said(&output.stderr);
        assert_eq!(output.status.code(), Some(2), "{name}: {told}");
        assert!(told.contains(why) && told.contains("nothing was written; name "), "{name}: {told}");
        assert!(fs::read(&path).ok() == before && !pictures.exists(), "{name}");
    };
    for name in ["old/set.toml", "new/set.toml", "new/erratum.md", "new/words/erratum.md", "old/../new/erratum.md"] {
        refused(name, "would lie inside `");
    }
    refused("nowhere/../new/erratum.md", "would lie inside `");
    fs::create_dir(pair.path("folder")).unwrap();
    for name in ["letter.md", "empty.md", "folder"] {
        refused(name, "is no erratum");
    }
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(pair.path("new"), pair.path("link")).unwrap();
        refused("link/erratum.md", "would lie inside `");
        std::os::unix::fs::symlink(pair.path("old/set.toml"), pair.path("link.md")).unwrap();
        refused("link.md", "would lie inside `");
    }
    // The folder of a set is meant where its file is named.
    let path = pair.path("old/erratum.md");
    let output = run(&pair.path("old/set.toml"), &pair.path("new"), &["--erratum", path.to_str().unwrap()]);
    assert_eq!((output.status.code(), path.exists()), (Some(2), false));
    let first = erratum(&pair);
    pair.version("2.0.0");
    assert_ne!(first, erratum(&pair), "an earlier erratum is replaced");
}

#[test]
fn an_erratum_has_the_version_of_the_new_set_and_says_that_it_is_too_low() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward").version("1.9.0");
    let low = erratum(&pair);
    assert!(low.contains("| new | 1.9.0 | 2026-05-04 |\n"), "{low}");
    assert!(low.contains("\nThe version of the new book must be raised to at least 2.0.0.\n"), "{low}");
    pair.version("2.0.0");
    assert!(!erratum(&pair).contains("must be raised"));
}

#[test]
fn a_quiet_comparison_says_nothing_but_errors() {
    let pair = Pair::new();
    let said = |pair: &Pair| {
        let output = pair.run(&["-q"]);
        (output.status.code(), said(&output.stdout), said(&output.stderr))
    };
    assert_eq!(said(&pair), (Some(0), String::new(), String::new()));
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward");
    let (code, out, err) = said(&pair);
    assert_eq!((code, out.as_str(), err.lines().count()), (Some(1), "", 1), "{err}");
    assert!(err.contains("raise it to `2.0.0` or higher"), "{err}");
    pair.version("2.0.0");
    assert_eq!(said(&pair), (Some(0), String::new(), String::new()));
}

#[test]
fn the_release_is_toml_that_the_spec_takes() {
    let pair = Pair::new();
    pair.change("set.toml", "distance = \"40 cm\"", "distance = \"50 cm\"");
    pair.change("set.toml", "title = \"Slipway\"", "title = 'The \"new\" slipway'");
    let (report, _) = pair.json();
    let table: toml::Table = report["release"]["toml"].as_str().unwrap().parse().unwrap();
    let release = &table["release"].as_array().unwrap()[0];
    assert_eq!((release["version"].as_str(), release["date"].as_str()), (Some("2.0.0"), Some("2026-05-04")));
    let changes = release["changes"].as_array().unwrap();
    // The book, and its four pages.
    assert_eq!(changes.len(), 5);
    assert!(changes.iter().all(|change| change.as_str().unwrap().chars().count() <= 300));
    assert!(changes[0].as_str().unwrap().contains("distance was 400 mm, now 500 mm"), "{changes:?}");
}

/// The erratum has the sentences of the text output, and set, versions and dates.
#[test]
fn the_erratum_says_what_the_text_says() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward").change("set.toml", "2026-05-04", "2026-06-01");
    pair.version("2.0.0");
    let (erratum, text) = (erratum(&pair), said(&pair.run(&[]).stdout));
    for part in ["# Changes in Slipway", "| old | 1.2.3 | 2026-05-04 |", "| new | 2.0.0 | 2026-06-01 |"] {
        assert!(erratum.contains(part), "{erratum}");
    }
    let lines: Vec<&str> = text.lines().filter_map(|line| line.trim_start().strip_prefix("- ")).collect();
    assert!(!lines.is_empty());
    assert!(lines.iter().all(|line| erratum.contains(&format!("- {line}\n"))), "{erratum}\n{text}");
}

#[test]
fn pictures_show_the_pages_that_changed() {
    let pair = Pair::new();
    pair.change("bollard.toml", "2 pd toward", "2.5 pd toward");
    let folder = pair.path("pictures");
    pair.run(&["--pictures", folder.to_str().unwrap()]);
    let files: Vec<PathBuf> = fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    let [file] = &files[..] else { panic!("{files:?}") };
    assert!(file.to_str().unwrap().ends_with("-bollard.png"));
    let mut reader = png::Decoder::new(std::io::Cursor::new(fs::read(file).unwrap())).read_info().unwrap();
    let mut bytes = vec![0; reader.output_buffer_size().unwrap()];
    let frame = reader.next_frame(&mut bytes).unwrap();
    // Three A4 pages of 210 mm at 60 pixels per inch, 496 pixels wide, with four gaps of 8 pixels.
    assert_eq!(frame.width, 3 * 496 + 4 * 8);
    let pixel = |x: usize, y: usize| {
        let at = 3 * (y * frame.width as usize + x);
        [bytes[at], bytes[at + 1], bytes[at + 2]]
    };
    let panel = |index: usize| 8 + index * 504..8 + index * 504 + 496;
    let count = |index: usize, wanted: [u8; 3]| {
        let pixels = (60..frame.height as usize).flat_map(|y| panel(index).map(move |x| (x, y)));
        pixels.filter(|(x, y)| pixel(*x, *y) == wanted).count()
    };
    // The inks of both pages, and the two tones where a ring moved.
    for index in [0, 1] {
        assert!(100 < count(index, [255, 0, 0]) && 100 < count(index, [0, 255, 255]));
    }
    let (before, after) = (count(2, [224, 138, 24]), count(2, [22, 58, 140]));
    assert!(100 < before && 100 < after, "{before} {after}");
    assert_eq!((count(2, [255, 0, 0]), count(2, [0, 255, 255])), (0, 0), "no ink of the page in the difference");
}

/// The facts of a set, with its first three editions.
fn told(path: &Path) -> SetFacts {
    let mut prepared = prepare(load(path).unwrap(), None);
    prepared.set.as_mut().unwrap().editions.truncate(3);
    facts(&prepared.draft().unwrap(), &prepared.readers).unwrap()
}

#[test]
fn no_demo_set_differs_from_itself() {
    let demo = tempfile::tempdir().unwrap();
    crate::demo_set::copy_to(demo.path());
    let specs = Path::new(env!("CARGO_MANIFEST_DIR")).join("specs");
    for path in [demo.path().to_owned(), specs.join("tide-ladder"), specs.join("gallery")] {
        let facts = told(&path);
        assert!(!facts.pages.is_empty());
        let Comparison { class, set, editions, pages, renumbered, .. } = compare(&facts, &facts);
        assert!(class.is_none() && set.is_empty() && editions.is_empty() && pages.is_empty() && renumbered.is_empty());
    }
}

/// What changed back is as weighty as what changed, and its values are the other way round.
#[test]
fn a_change_and_its_opposite_have_the_same_class() {
    let changes = [
        ("bollard.toml", "2 pd toward", "2.5 pd toward", Class::Major),
        ("bollard.toml", "30 mm", "31 mm", Class::Major),
        ("bollard.toml", "shape = \"ring\"", "shape = \"disc\"", Class::Major),
        ("set.toml", "ipd = \"63 mm\"", "ipd = \"64 mm\"", Class::Major),
        ("set.toml", "page = \"A4\"", "page = \"Letter\"", Class::Minor),
        ("lamp.toml", "12 s", "14 s", Class::Patch),
        ("set.toml", "ppi = 72", "ppi = 96", Class::Patch),
    ];
    for (file, from, to, class) in changes {
        let pair = Pair::new();
        pair.change(file, from, to);
        let (old, new) = (told(&pair.path("old")), told(&pair.path("new")));
        let (there, back) = (compare(&old, &new), compare(&new, &old));
        assert_eq!((there.class, back.class), (Some(class), Some(class)), "{from} to {to}");
        let swapped = |comparison: &Comparison| -> Vec<_> {
            let of_pages = comparison.pages.iter().flat_map(|page| {
                page.differences.iter().chain(page.features.iter().flat_map(|feature| &feature.differences))
            });
            let of_editions = comparison.editions.iter().flat_map(|edition| &edition.differences);
            let all = comparison.set.iter().chain(of_editions).chain(of_pages);
            all.map(|change| (change.name.clone(), change.old.clone(), change.new.clone())).collect()
        };
        let turned: Vec<_> = swapped(&back).into_iter().map(|(name, old, new)| (name, new, old)).collect();
        assert_eq!(swapped(&there), turned);
    }
}
