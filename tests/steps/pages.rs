//! Numbers on pages and in reports that depend on the viewer.

use depthpress::bundle::extent::Extent;
use depthpress::layout::parts::readings::{self, Reading};
use depthpress::layout::sheet::{Node, Sheet, words};
use kurbo::Shape;

use super::*;

/// Viewer of the worked numbers of wrong viewing conditions.
const WORKED: &str = "distance = \"40 cm\"\nipd = \"64 mm\"\nipd_range = [\"58 mm\", \"70 mm\"]";

const WALK: &str = "[exercise]\nkind = \"walk\"\ntitle = \"Jetty\"\ndistances = [\"33 cm\", \"40 cm\", \"50 cm\"]\n\
                    [[target]]\nlabel = \"lamp\"\nshape = \"ring\"\nsize = \"40 mm\"\nat = [\"0 mm\", \"-12 mm\"]\n\
                    depth = \"4 mm parallax toward\"\n";

fn readings_of(viewer: &str, exercise: &str) -> Vec<Reading> {
    let prepared = prepared(viewer, exercise);
    let page = &prepared.pages[0];
    readings::of(&page.page, &page.features, &prepared.set.as_ref().unwrap().viewer)
}

/// Z = D E/(E - p) with the p of the print (Woods, Docherty & Koch 1993), and demand = 100 p/D (ISO 13666). The depths
/// are worked numbers for p = -4: in front by 19.412, 23.529 and 29.412 mm from 330, 400 and 500 mm at E = 64; from 400 mm
/// by 25.806 at E = 58 and 21.622 at E = 70.
#[test]
fn a_walk_keeps_its_parallax_and_loses_demand() {
    let all = readings_of(WORKED, WALK);
    assert!(all.iter().all(|r| r.stand.parallax.0 == -4.0));
    let demands: Vec<f64> = all.iter().map(|r| r.stand.demand.0).collect();
    assert_close(&demands, &[4.0 / 3.3, 1.0, 0.8], 1e-9);
    let front: Vec<f64> = all.iter().map(|r| r.distance.0 - r.stand.place.unwrap().0).collect();
    assert_close(&front, &[19.412, 23.529, 29.412], 0.0005);
    let (near, far) = all[1].from_page().unwrap();
    assert_close(&[near, far], &[21.622, 25.806], 0.0005);
}

/// A target past parallel eyes is so from everywhere, and the solver refuses it: what is left has a place at each distance.
#[test]
fn a_walk_has_a_place_at_every_distance() {
    let away = WALK.replace("4 mm parallax toward", "40 mm parallax away").replace("\"50 cm\"", "\"4 m\"");
    let all = readings_of(WORKED, &away);
    assert!(all.iter().all(|r| r.stand.place_range.0.is_some() && r.stand.place_range.1.is_some()));
    // E = 64, p = 40: Z/D = 64/24.
    let shares: Vec<f64> = all.iter().map(|r| r.stand.place.unwrap().0 / r.distance.0).collect();
    assert_close(&shares, &[64.0 / 24.0; 3], 1e-9);
}

fn exercise_sheet(laid: &LaidOut) -> &Sheet {
    laid.sheets.iter().find(|sheet| sheet.id.starts_with("quay-page")).unwrap()
}

#[test]
fn the_table_of_a_walk_stands_on_every_page_format() {
    for laid in laid_out(&prepared(WORKED, WALK)) {
        let words = words(&exercise_sheet(&laid).nodes);
        assert!(words.contains("Eyes to page 33 cm 40 cm 50 cm"), "{words}");
        assert!(words.contains("Demand 1.21 pd toward 1 pd toward 0.8 pd toward"), "{words}");
        assert!(words.contains("Eyes to shape 30.9 to 31.2 cm 37.4 to 37.8 cm 46.8 to 47.3 cm"), "{words}");
    }
}

#[test]
fn the_report_lists_what_a_walk_tells() {
    let prepared = prepared(WORKED, WALK);
    let book = prepared.book().unwrap();
    let edition = &book.set.editions[0];
    let inked = Inked::of(edition);
    let laid = book.lay_out(edition, &inked).unwrap();
    let count = u32::try_from(laid.sheets.len()).unwrap();
    let extent = Extent::new(edition, count, None, None).unwrap();
    let bytes = depthpress::bundle::report::report(&book, edition, &inked, &laid, &extent).unwrap();
    let report: serde_json::Value = serde_json::from_slice(&bytes).unwrap();
    let pages = report["pages"].as_array().unwrap();
    let page = pages.iter().find(|page| page["id"] == "quay-page").unwrap();
    let list = page["readings"].as_array().unwrap();
    let column = |key: &str| list.iter().map(|r| r[key].as_f64().unwrap()).collect::<Vec<_>>();
    assert_eq!(column("distance_mm"), [330.0, 400.0, 500.0]);
    assert_eq!(column("demand_pd"), [1.2121, 1.0, 0.8]);
    assert_close(&column("place_mm"), &[330.0 - 19.412, 400.0 - 23.529, 500.0 - 29.412], 0.0006);
    assert!(pages.iter().filter(|page| page["id"] != "quay-page").all(|page| page.get("readings").is_none()));
}

const POINT: &str = "[exercise]\nkind = \"point\"\ntitle = \"Float\"\n[[target]]\nlabel = \"float\"\nshape = \"ring\"\n\
                     size = \"36 mm\"\nat = [\"0 mm\", \"-14 mm\"]\ndepth = \"4 mm parallax toward\"\n";

/// The filled boxes of a page, in the order of drawing.
fn boxes(nodes: &[Node], out: &mut Vec<kurbo::Rect>) {
    for node in nodes {
        match node {
            Node::Group(_, inner) => boxes(inner, out),
            Node::Fill(fill) => out.push(fill.path.bounding_box()),
            _ => {}
        }
    }
}

/// The thick bar of the ruler runs from 21.622 to 25.806 mm from the tick of the page, in true size (numbers as above).
#[test]
fn the_ruler_is_drawn_in_true_size() {
    for laid in laid_out(&prepared(WORKED, POINT)) {
        let mut all = Vec::new();
        boxes(&exercise_sheet(&laid).nodes, &mut all);
        // Nothing else is a millimetre or two high and a few wide; the ruler's line follows.
        let bar = all.iter().position(|r| (r.width() - 4.184).abs() < 0.001 && (r.height() - 2.4).abs() < 1e-9);
        let (bar, first_tick) = (all[bar.unwrap()], all[bar.unwrap() + 2]);
        let zero = first_tick.center().x;
        assert_close(&[bar.x0 - zero, bar.x1 - zero], &[21.622, 25.806], 0.0005);
        let second_cm = all[all.iter().position(|r| *r == first_tick).unwrap() + 4].center().x;
        assert!((second_cm - zero - 20.0).abs() < 1e-9);
        let words = words(&exercise_sheet(&laid).nodes);
        assert!(words.contains("the pencil belongs 2.2 to 2.6 cm from the page"), "{words}");
    }
}

#[test]
fn a_place_off_the_ruler_and_art_in_its_room_are_said() {
    let problem = |exercise: &str| {
        let prepared = prepared(VIEWER, exercise);
        let book = prepared.book().unwrap();
        let edition = &book.set.editions[0];
        book.lay_out(edition, &Inked::of(edition)).unwrap_err()[0].message.clone()
    };
    let far = problem(&POINT.replace("4 mm parallax toward", "5 pd away"));
    // E = 50, p = 20, D = 400: Z = 666.667.
    let expected =
        "the target seems to stand up to `266.7` mm from the page: a ruler in true size has room for `160` mm";
    assert!(far.contains(expected), "{far}");
    let low = problem(&POINT.replace("\"-14 mm\"", "\"30 mm\""));
    assert!(low.contains("mm into the ruler"), "{low}");
    let low = problem(&WALK.replace("\"-12 mm\"", "\"24 mm\""));
    assert!(low.contains("mm into the table of distances"), "{low}");
}
