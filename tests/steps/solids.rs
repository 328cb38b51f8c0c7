//! Drawn solids: true perspective, and what hides what.

use depthpress::layout::art;
use depthpress::scene::Eye;
use depthpress::solve::{PathPoint, half_x};
use kurbo::{Point, Rect, Shape};

use super::*;

fn page(solid: &str) -> String {
    format!("[exercise]\nkind = \"solids\"\ntitle = \"Crates\"\n[[solid]]\n{solid}\n")
}

fn crate_at(x: f64, y: f64) -> String {
    page(&format!(
        "label = \"crate\"\nform = \"box\"\nat = [\"{x} mm\", \"{y} mm\"]\nwidth = \"40 mm\"\nheight = \"30 mm\"\n\
         front = \"8 cm toward\"\nback = \"5 cm away\""
    ))
}

fn points(features: &[SolvedFeature], id: &str) -> Vec<PathPoint> {
    match &features.iter().find(|f| f.id == id).unwrap().form {
        SolvedForm::Path { points, .. } => points.clone(),
        other => panic!("{other:?}"),
    }
}

fn ids(features: &[SolvedFeature]) -> Vec<&str> {
    let lines = features.iter().filter(|f| f.role != Role::Watch);
    lines.map(|f| f.id.strip_prefix("crate-").unwrap_or(&f.id)).collect()
}

/// Half-images of a point (X, Y, Z): x_L = -E/2 + (X + E/2) D/Z, x_R = E/2 + (X - E/2) D/Z, y = Y D/Z (Woods, Docherty &
/// Koch 1993), with E = 63 and D = 400.
fn assert_projects(point: &PathPoint, (x, y, z): (f64, f64, f64)) {
    let half = 63.0 / 2.0;
    let expected = [-half + (x + half) * 400.0 / z, half + (x - half) * 400.0 / z, y * 400.0 / z];
    let seen = [half_x(point.x, point.parallax, Eye::Left), half_x(point.x, point.parallax, Eye::Right), point.y];
    assert_close(&seen, &expected, 3e-6);
}

#[test]
fn every_corner_of_a_box_is_projected_from_space() {
    let all = features(&crate_at(-40.0, 30.0));
    let (left, top, right, bottom) = (-60.0, 15.0, -20.0, 45.0);
    let front = points(&all, "crate");
    for (point, (x, y)) in front.iter().zip([(left, top), (right, top), (right, bottom), (left, bottom)]) {
        assert_projects(point, (x, y, 320.0));
    }
    let edge = points(&all, "crate-edge-top-right");
    assert_projects(&edge[0], (right, top, 320.0));
    assert_projects(&edge[1], (right, top, 450.0));
}

/// A side face turns towards a point exactly where the point lies on the outer side of its plane.
#[test]
fn a_box_draws_the_faces_that_turn_to_the_reader() {
    assert_eq!(ids(&features(&crate_at(0.0, 0.0))), ["crate"]);
    let low_left = features(&crate_at(-40.0, 30.0));
    assert_eq!(ids(&low_left), ["edge-top-left", "back-1", "edge-top-right", "back-2", "edge-bottom-right", "crate"]);
    let high_right = features(&crate_at(40.0, -30.0));
    assert_eq!(
        ids(&high_right),
        ["edge-top-left", "edge-bottom-right", "back-3", "edge-bottom-left", "back-4", "crate"]
    );
    let wire = features(&crate_at(0.0, 0.0).replace("width", "open = true\nwidth"));
    assert_eq!(ids(&wire).len(), 9);
}

/// The right side of a box whose right face lies 20 mm to the left of the line of sight: the left eye stands 31.5 mm to
/// the left, on its other side, and sees the front alone; the right eye sees the face as well.
#[test]
fn each_eye_loses_what_lies_behind_a_front() {
    let all = features(&crate_at(-40.0, 30.0));
    let bounds = |paths: &[kurbo::BezPath]| paths.iter().map(Shape::bounding_box).reduce(|a, b| a.union(b)).unwrap();
    let art = art::compose(&all, Point::ORIGIN);
    let corner = |eye| {
        let point = points(&all, "crate")[1];
        half_x(point.x, point.parallax, eye)
    };
    let (left, right): (Rect, Rect) = (bounds(&art.left), bounds(&art.right));
    assert!((left.x1 - corner(Eye::Left) - 0.4).abs() < 0.01, "{left:?}");
    // The back edge of the right face is at X = -20, Z = 450: 31.5 + (-51.5) 400/450.
    assert!((right.x1 - (31.5 - 51.5 * 400.0 / 450.0) - 0.4).abs() < 0.01, "{right:?}");
}

#[test]
fn what_stands_behind_a_front_is_hidden() {
    let behind = "\n[[solid]]\nlabel = \"rod\"\nform = \"post\"\nat = [\"-40 mm\", \"30 mm\"]\nwidth = \"4 mm\"\nheight = \"20 mm\"\n\
                  marks = false\nfront = \"DEPTH\"\n";
    let ink = |depth: &str| {
        let spec = format!("{}{}", crate_at(-40.0, 30.0), behind.replace("DEPTH", depth));
        art::compose(&features(&spec), Point::ORIGIN).left.iter().map(|p| p.area().abs()).sum::<f64>()
    };
    let alone = art::compose(&features(&crate_at(-40.0, 30.0)), Point::ORIGIN);
    let alone = alone.left.iter().map(|p| p.area().abs()).sum::<f64>();
    // In front of the crate, the post is drawn whole: 4 x 20 mm at 300 mm are 80 (400/300)^2 mm² on the page.
    assert!((ink("10 cm toward") - alone - 80.0 * (400.0_f64 / 300.0).powi(2)).abs() < 0.01);
    assert!((ink("2 cm away") - alone).abs() < 0.01);
}

/// Stairs climb away: each riser stands a step deeper and a step higher.
#[test]
fn stairs_climb_away_in_even_steps() {
    let stairs = page(
        "label = \"stairs\"\nform = \"stairs\"\nat = [\"0 mm\", \"22 mm\"]\nwidth = \"50 mm\"\nheight = \"45 mm\"\n\
         front = \"1.5 pd toward\"\nback = \"1.5 pd away\"\nmarks = true",
    );
    let all = features(&stairs);
    let risers: Vec<PathPoint> =
        ["stairs", "stairs-riser-2", "stairs-riser-3"].iter().map(|id| points(&all, id)[3]).collect();
    let depths: Vec<f64> = risers.iter().map(|p| p.parallax).collect();
    assert_close(&depths, &[1.5, 0.5, -0.5].map(parallax), GRID);
    // The foot of each riser in space: y Z/D, with D/Z = (E - p)/E.
    let feet: Vec<f64> = risers.iter().map(|p| p.y * 63.0 / (63.0 - p.parallax)).collect();
    assert_close(&feet, &[44.5, 29.5, 14.5], 1e-5);
}

/// A tunnel is what a room of a nest is made of: the same lines.
#[test]
fn a_tunnel_is_a_room_with_an_end() {
    let tunnel = features(&page(
        "label = \"crate\"\nform = \"tunnel\"\nwidth = \"120 mm\"\nheight = \"80 mm\"\nfront = \"1 pd toward\"\n\
         back = \"2 pd away\"\nframes = 3",
    ));
    let nest = features(
        "[exercise]\nkind = \"nest\"\ntitle = \"House\"\n[room]\nform = \"box\"\nwidth = \"120 mm\"\nheight = \"80 mm\"\n\
         front = \"1 pd toward\"\nback = \"2 pd away\"\nframes = 3\n[[target]]\nshape = \"disc\"\nsize = \"10 mm\"\n\
         depth = \"page\"\n",
    );
    let lines = |all: &[SolvedFeature]| {
        let paths = all.iter().filter(|f| matches!(f.form, SolvedForm::Path { .. }));
        paths
            .map(|f| f.form.clone())
            .map(|form| match form {
                SolvedForm::Path { points, .. } => points,
                other => panic!("{other:?}"),
            })
            .collect::<Vec<_>>()
    };
    assert_eq!(lines(&tunnel), lines(&nest));
    assert_eq!(targets(&tunnel).len(), 1);
}
