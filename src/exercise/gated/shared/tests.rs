//! The maze: every cell is reached in one way, the route is one of them, and the same name draws the same maze.

use std::collections::BTreeSet;

use super::*;
use crate::language::{Language, Tongue};

fn shared(left_handed: bool) -> Shared {
    let place = Place::start_of(crate::diagnostics::Sources::default().add("a.toml", ""));
    Shared {
        walls: Eye::Left,
        columns: 7,
        rows: 5,
        hazards: 3,
        weight: Ramp::Same(Mm(1.6)),
        left_handed,
        variants: 1,
        place,
    }
}

fn rung(key: &str) -> Rung<'_> {
    Rung { level: 1, variant: 1, key, tongue: Tongue::of(Language::En) }
}

/// A tree on n cells has n - 1 passages; a grid of c by r cells has (c - 1) r + c (r - 1) places for a wall. Source: graph
/// theory, common knowledge.
#[test]
fn every_cell_is_reached_in_exactly_one_way() {
    for key in ["quay", "pier", "mole", "slip"] {
        let maze = Maze::new(&mut Dice::new(key), 7, 5);
        let open = |a: Cell, b: Cell| maze.is_open(a, b);
        let right = maze.cells().filter(|&(x, y)| x < 6 && open((x, y), (x + 1, y))).count();
        let down = maze.cells().filter(|&(x, y)| y < 4 && open((x, y), (x, y + 1))).count();
        assert_eq!(right + down, 7 * 5 - 1, "{key}");
        let mut reached = BTreeSet::from([maze.start()]);
        for _ in maze.cells() {
            let near: Vec<Cell> = maze.cells().filter(|&cell| reached.iter().any(|&known| open(known, cell))).collect();
            reached.extend(near);
        }
        assert_eq!(reached.len(), 35, "{key}");
        let length: u32 = maze.walls().iter().map(|(a, b)| b.0 - a.0 + b.1 - a.1).sum();
        assert_eq!(length, 6 * 5 + 7 * 4 - 34, "{key}");
    }
}

#[test]
fn the_route_leads_from_start_to_goal_through_open_passages() {
    for key in ["quay", "pier", "mole"] {
        let maze = shared(false).maze(&rung(key));
        let route = maze.route();
        assert_eq!((route.first(), route.last()), (Some(&(0, 0)), Some(&(6, 4))));
        assert!(route.windows(2).all(|pair| maze.is_open(pair[0], pair[1])), "{key}: {route:?}");
        let hazards = shared(false).hazards(&maze, &rung(key));
        assert!(hazards.len() == 3 && hazards.iter().all(|cell| !route.contains(cell)), "{key}: {hazards:?}");
    }
}

#[test]
fn each_eye_has_its_part_and_the_edge_is_for_both() {
    let scene = shared(false).draw(&rung("quay")).scene;
    let seen =
        |eyes| -> Vec<String> { scene.features.iter().filter(|f| f.eyes == eyes).map(|f| f.id.clone()).collect() };
    assert_eq!(seen(Eyes::Left), ["walls"]);
    assert_eq!(seen(Eyes::Right), ["start", "goal", "hazard-1", "hazard-2", "hazard-3"]);
    assert_eq!(seen(Eyes::Both), ["outer-edge"]);
}

#[test]
fn the_same_name_draws_the_same_route_and_another_name_another() {
    let scene = |key| shared(false).draw(&rung(key)).scene;
    assert_eq!(scene("quay"), scene("quay"));
    assert_ne!(scene("quay"), scene("pier"));
}

/// For a left hand the way is the same, from right to left.
#[test]
fn a_left_handed_page_is_the_mirror_of_the_other() {
    let places = |left_handed: bool| -> Vec<(f64, f64)> {
        let scene = shared(left_handed).draw(&rung("quay")).scene;
        let at = |f: &crate::scene::Feature| match &f.form {
            crate::scene::Form::Shape { at, .. } => Some((at.x.0, at.y.0)),
            _ => None,
        };
        scene.features.iter().filter_map(at).collect()
    };
    let mirrored: Vec<_> = places(true).into_iter().map(|(x, y)| (-x, y)).collect();
    assert_eq!(places(false), mirrored);
    assert!(places(false)[0].0 < 0.0);
}
