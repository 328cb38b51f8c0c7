//! Tests of the kinds of dots: draws are even, keys agree with what stands in the scene, words give nothing away.

use std::path::Path;

use crate::bundle::pictures::Folder;
use crate::diagnostics::{Diagnostics, Sources};
use crate::exercise::quiz::Quiz;
use crate::exercise::{Exercise, KINDS, Page, pages, read_exercise};
use crate::language::{Language, Tongue};
use crate::optics::Viewer;
use crate::scene::{DotField, Eyes, Form, Relief, Role, Shape, Surface};
use crate::solve::{SolvedForm, solve};
use crate::spec::reader::Reader;
use crate::units::Mm;

const VIEWER: Viewer = Viewer::new(Mm(400.0), Mm(63.0), (Mm(50.0), Mm(75.0)));

const GAP: &str = "[exercise]\nkind = \"gap\"\ntitle = \"Rings\"\n[dots]\nground = \"page\"\n[ring]\nsize = \"20 mm\"\n\
                   depth = \"500 arcsec toward\"\n";
const HILLS: &str = "[exercise]\nkind = \"hills\"\ntitle = \"Swell\"\n[dots]\nground = \"page\"\n\
                     crest = \"500 arcsec toward\"\n";
const BOARD: &str =
    "[exercise]\nkind = \"board\"\ntitle = \"Ramp\"\n[dots]\nnear = \"1 pd toward\"\nfar = \"1 pd away\"\n";
const PLANES: &str = "[exercise]\nkind = \"planes\"\ntitle = \"Steps\"\n[dots]\nground = \"page\"\n[planes]\n\
                      depths = [\"600 arcsec away\", \"200 arcsec toward\", \"400 arcsec toward\"]\n\
                      question = \"order\"\n";

fn read(text: &str) -> Exercise {
    let (mut problems, mut sources) = (Diagnostics::new(), Sources::default());
    let file = sources.add("a.toml", text);
    let pictures = Folder::new(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs/gallery"));
    let read = read_exercise(&mut Reader::new(&sources, file, &mut problems).with_pictures(&pictures), "a");
    assert_eq!(problems.iter().map(|p| p.message.clone()).collect::<Vec<_>>(), Vec::<String>::new());
    read.unwrap()
}

/// The only page of an exercise, under the seeds from 1 to 100.
fn seeded(text: &str) -> Vec<Page> {
    let exercise = read(text);
    let page = |seed| pages(&[Exercise { seed, ..exercise.clone() }], "set", Tongue::of(Language::En)).remove(0);
    (1..=100).map(page).collect()
}

fn field(page: &Page) -> &DotField {
    let field = page.scene.features.iter().find_map(|feature| match &feature.form {
        Form::Dots(field) => Some(&**field),
        _ => None,
    });
    field.unwrap()
}

fn quiz(page: &Page) -> &Quiz {
    page.quiz.as_ref().unwrap()
}

/// Chi-square of counts against an even spread.
fn chi_square(counts: &[f64]) -> f64 {
    let even = counts.iter().sum::<f64>() / counts.len() as f64;
    counts.iter().map(|n| (n - even).powi(2) / even).sum()
}

/// Chi-square of three degrees of freedom stays below 16.27 in 999 of 1000 cases (table of the chi-square distribution,
/// from memory). The seeds are fixed, so the test does not flicker.
#[test]
fn gaps_come_evenly_and_the_key_names_the_side_of_each_ring() {
    for count in [1, 2, 4, 6, 8] {
        let text = GAP.replace("[ring]", &format!("[ring]\ncount = \"{count}\""));
        let mut counts = [0.0; 4];
        for page in seeded(&text) {
            assert_eq!(quiz(&page).pass.is_some(), 6 <= count);
            let (figures, questions) = (&field(&page).figures, &quiz(&page).questions);
            assert_eq!((figures.len(), questions.len()), (count, count));
            let mut on_page = [0_usize; 4];
            for (figure, question) in figures.iter().zip(questions) {
                let Shape::OpenRing(side) = figure.shape else { panic!("{figure:?}") };
                assert_eq!((question.answer.as_str(), &question.features), (side.name(), &vec![figure.id.clone()]));
                let index = question.choices.iter().position(|choice| *choice == question.answer).unwrap();
                on_page[index] += 1;
                counts[index] += 1.0;
            }
            let (most, least) = (on_page.iter().max().unwrap(), on_page.iter().min().unwrap());
            assert!(most - least <= 1, "as even as can be: {on_page:?}");
        }
        assert!(chi_square(&counts) < 16.27, "{count}: {counts:?}");
    }
}

/// Chi-square of four degrees of freedom stays below 18.47 in 999 of 1000 cases (the same table, from memory).
#[test]
fn hills_come_evenly_and_the_key_counts_the_ridges() {
    let mut counts = [0.0; 5];
    for page in seeded(HILLS) {
        let Relief::Between { share: Surface::Ridges { middles, width }, .. } = &field(&page).ground else { panic!() };
        assert_eq!(quiz(&page).questions[0].answer, middles.len().to_string());
        assert!(middles.windows(2).all(|pair| pair[0] + width < pair[1]), "{middles:?}");
        assert!(middles.iter().all(|middle| width / 2.0 < *middle && middle + width / 2.0 < 1.0), "{middles:?}");
        counts[middles.len() - 1] += 1.0;
    }
    assert!(chi_square(&counts) < 18.47, "{counts:?}");
}

#[test]
fn boards_come_evenly_and_the_key_names_the_near_edge() {
    let mut counts = [0.0; 4];
    for page in seeded(BOARD) {
        let Relief::Between { share: Surface::Tilt(edge), .. } = &field(&page).ground else { panic!() };
        let question = &quiz(&page).questions[0];
        assert_eq!(question.answer, edge.name());
        counts[question.choices.iter().position(|choice| choice == edge.name()).unwrap()] += 1.0;
    }
    assert!(chi_square(&counts) < 16.27, "{counts:?}");
}

/// The key against the solved places: the nearest stands where the distance from the eyes is the least. Six orders: the
/// chi-square of five degrees of freedom stays below 20.52 in 999 of 1000 cases (the same table, from memory).
#[test]
fn orders_of_planes_come_evenly_and_the_key_goes_from_near_to_far() {
    let mut orders = std::collections::BTreeMap::<String, f64>::new();
    for page in seeded(PLANES) {
        let solved = solve(&page.scene, &VIEWER).unwrap();
        let SolvedForm::Dots(dots) = &solved[0].form else { panic!() };
        let mut planes: Vec<_> = dots.figures.iter().map(|f| (f.stands[0].place.unwrap().0, f.id.clone())).collect();
        planes.sort_by(|a, b| a.0.total_cmp(&b.0));
        let order: Vec<_> = planes.iter().map(|(_, id)| id.trim_start_matches("plane-").to_owned()).collect();
        let answer = &quiz(&page).questions[0].answer;
        assert_eq!(*answer, order.join(" "));
        *orders.entry(answer.clone()).or_default() += 1.0;
    }
    assert_eq!(orders.len(), 6);
    assert!(chi_square(&orders.into_values().collect::<Vec<_>>()) < 20.52);
}

/// Every page has watch marks for each eye, seen by that eye alone, though nothing else on it belongs to one eye.
#[test]
fn every_page_of_dots_has_watch_marks_in_its_border() {
    let dots = KINDS.iter().filter(|kind| kind.family() == "dots");
    let mut count = 0;
    for kind in dots {
        for page in pages(&[read(kind.example)], "set", Tongue::of(Language::En)) {
            for eyes in [Eyes::Left, Eyes::Right] {
                let of = page.scene.features.iter().filter(|f| f.eyes == eyes).collect::<Vec<_>>();
                assert_eq!(of.iter().map(|f| f.role).collect::<Vec<_>>(), [Role::Watch], "{}", page.id);
            }
            assert!(solve(&page.scene, &VIEWER).is_ok(), "{}", page.id);
            assert_eq!(page.seed, Some(1));
            count += 1;
        }
    }
    assert!(7 <= count);
}

#[test]
fn variants_and_levels_have_draws_of_their_own() {
    let text = GAP.replace("title", "variants = 3\ntitle").replace("[ring]", "[ring]\ncount = \"8\"");
    let all = pages(&[read(&text)], "set", Tongue::of(Language::En));
    let answers = |page: &Page| quiz(page).questions.iter().map(|q| q.answer.clone()).collect::<Vec<_>>();
    assert_eq!(all.len(), 3);
    assert!(answers(&all[0]) != answers(&all[1]) && answers(&all[1]) != answers(&all[2]));
    assert_ne!(field(&all[0]).key, field(&all[1]).key);
}

/// Without the answers in them, the words of two pages with other answers are the same.
#[test]
fn words_give_nothing_away() {
    for text in [GAP, HILLS, BOARD, PLANES] {
        let all = seeded(text);
        let apart =
            all.iter().find(|page| quiz(page).questions[0].answer != quiz(&all[0]).questions[0].answer).unwrap();
        assert_eq!(apart.words, all[0].words);
    }
}
