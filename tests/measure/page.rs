//! What a report promises: the features of each page with their places, read from `report.json`; and the shape of each,
//! read from the spec, since a report gives boxes alone.

use std::fs;
use std::path::Path;

use serde_json::Value;
use toml::Table;

use super::outline::{Area, Shape};

/// An eye.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Eye {
    Left,
    Right,
}

pub(super) const EYES: [Eye; 2] = [Eye::Left, Eye::Right];

/// A page of an edition as its report describes it.
#[derive(Debug)]
pub(super) struct Page {
    pub(super) number: u32,
    pub(super) id: String,
    pub(super) size: [f64; 2],
    pub(super) features: Vec<Feature>,
}

/// Something on a page for one eye or both.
#[derive(Debug)]
pub(super) struct Feature {
    pub(super) id: String,
    pub(super) role: String,
    pub(super) eyes: Vec<Eye>,
    pub(super) at: [f64; 2],
    pub(super) size: [f64; 2],
    pub(super) parallax: f64,
    pub(super) form: Form,
    /// Hides what stands behind it, so that a clear rim lies around it.
    pub(super) solid: bool,
}

/// What a feature looks like.
#[derive(Debug)]
pub(super) enum Form {
    /// A shape with the width of its lines, mm.
    Shape(Shape, f64),
    /// Letters, known by their box alone.
    Text,
    /// A line through points of `x`, `y` and parallax, with its width, mm.
    Line { points: Vec<[f64; 3]>, closed: bool, weight: f64 },
}

/// Width of the clear rim around what is solid, mm.
const RIM: f64 = 1.2;
/// Width of the lines of a lock frame, mm.
const FRAME_WEIGHT: f64 = 1.2;
/// Width of a line where the spec names none, mm.
const WEIGHT: f64 = 2.0;

impl Feature {
    /// Whether an eye sees it.
    pub(super) fn is_for(&self, eye: Eye) -> bool {
        self.eyes.contains(&eye)
    }

    /// Where the middle of the half-image of an eye should stand: half the parallax to the left of the cyclopean place
    /// for the left eye, half of it to the right for the right eye, and never up or down.
    pub(super) fn half_image(&self, eye: Eye) -> [f64; 2] {
        half_image(self.at, self.parallax, eye)
    }

    /// The line that an eye should get.
    pub(super) fn line(&self, eye: Eye) -> Vec<[f64; 2]> {
        let Form::Line { points, .. } = &self.form else { return Vec::new() };
        points.iter().map(|&[x, y, parallax]| half_image([x, y], parallax, eye)).collect()
    }

    /// The longer side of its box, mm.
    pub(super) fn longer(&self) -> f64 {
        self.size[0].max(self.size[1])
    }

    /// Every place that its ink in one eye may touch.
    pub(super) fn ink(&self, eye: Eye) -> Vec<Area> {
        match &self.form {
            Form::Line { closed, weight, .. } => vec![Area::line(self.line(eye), *closed, weight / 2.0)],
            Form::Shape(_, weight) => self.areas(eye, *weight, 0.0),
            Form::Text => self.areas(eye, f64::INFINITY, 0.0),
        }
    }

    /// Every place where it may hide what stands behind it.
    pub(super) fn shadow(&self, eye: Eye) -> Vec<Area> {
        if self.solid { self.areas(eye, f64::INFINITY, RIM) } else { Vec::new() }
    }

    fn areas(&self, eye: Eye, depth: f64, reach: f64) -> Vec<Area> {
        let (shape, weight) = match self.form {
            Form::Shape(shape, weight) => (shape, weight),
            Form::Text | Form::Line { .. } => (Shape::Bar, 0.0),
        };
        let at = self.half_image(eye);
        shape.outlines(self.size, weight).iter().map(|outline| Area::closed(outline, at, depth, reach)).collect()
    }
}

pub(super) fn half_image([x, y]: [f64; 2], parallax: f64, eye: Eye) -> [f64; 2] {
    match eye {
        Eye::Left => [x - parallax / 2.0, y],
        Eye::Right => [x + parallax / 2.0, y],
    }
}

/// The pages of a report, those without features too. `set` is the folder of the spec.
pub(super) fn pages(report: &Value, set: &Path) -> Vec<Page> {
    let size = pair(&report["edition"]["page_mm"]);
    let distance = report["viewer"]["distance_mm"].as_f64().unwrap();
    let page = |page: &Value| {
        let id = page["id"].as_str().unwrap();
        let spec = spec_of(set, id);
        let lists = ["targets", "marks", "guides"].map(|list| page[list].as_array().unwrap());
        let features = lists.into_iter().flatten().map(|entry| feature(entry, spec.as_ref(), distance));
        let number = page["number"].as_u64().unwrap().try_into().unwrap();
        Page { number, id: id.to_owned(), size, features: features.collect() }
    };
    report["pages"].as_array().unwrap().iter().map(page).collect()
}

fn feature(entry: &Value, spec: Option<&Table>, distance: f64) -> Feature {
    let text = |key: &str| entry[key].as_str().unwrap().to_owned();
    let (id, role) = (text("id"), text("role"));
    let eyes = match entry["eyes"].as_str().unwrap() {
        "left" => vec![Eye::Left],
        "right" => vec![Eye::Right],
        "both" => EYES.to_vec(),
        other => panic!("`{other}` is no eye"),
    };
    let size = pair(&entry["size_mm"]);
    // What stands nearer than the page may be drawn larger, line and all.
    let magnified = entry["place_mm"].as_f64().map_or(1.0, |place| (distance / place).max(1.0));
    let nest = spec.is_some_and(|s| s["exercise"]["kind"].as_str() == Some("nest"));
    let form = match role.as_str() {
        "target" => match spec {
            Some(spec) => of_spec(spec, &id, magnified),
            None => Form::Shape(on_glasses_check(&id), 4.0),
        },
        "bead" => Form::Shape(Shape::Round, size[0]),
        // The bar is for the left eye and the wedge for the right, alone.
        "watch" if id.ends_with("-bar") && eyes == [Eye::Left] => Form::Shape(Shape::Bar, size[0]),
        "watch" if id.ends_with("-wedge") && eyes == [Eye::Right] => Form::Shape(Shape::Triangle, size[0]),
        "lock" => Form::Shape(Shape::Brackets, FRAME_WEIGHT),
        "number" => Form::Text,
        "trail" | "guide" => line(entry, size, spec),
        other => panic!("`{id}` for {eyes:?}: no shape is known for the role `{other}`"),
    };
    let solid = role == "bead" || role == "watch" || (role == "target" && nest);
    Feature { id, role, eyes, at: pair(&entry["at_mm"]), size, parallax: number(&entry["parallax_mm"]), form, solid }
}

/// The file of an exercise page; `None` for a page of the front matter.
fn spec_of(set: &Path, id: &str) -> Option<Table> {
    let without_level = id.rsplit_once('-').map_or(id, |(stem, _)| stem);
    let read = |stem: &str| fs::read_to_string(set.join(format!("{stem}.toml"))).ok();
    let text = read(id).or_else(|| read(without_level))?;
    Some(text.parse().unwrap())
}

/// The shape of a target as its spec file says.
fn of_spec(spec: &Table, id: &str, magnified: f64) -> Form {
    let written = spec.get("arrangement").and_then(toml::Value::as_table);
    let targets = spec.get("target").and_then(toml::Value::as_array).into_iter().flatten();
    let named = targets.filter_map(toml::Value::as_table).find(|t| t["label"].as_str() == Some(id));
    let target = written.or(named).unwrap_or_else(|| panic!("no target `{id}` is written"));
    let weight = target.get("weight").map_or(WEIGHT, |w| w.as_str().unwrap().trim_end_matches(" mm").parse().unwrap());
    let shape = match target["shape"].as_str().unwrap() {
        "disc" => return Form::Shape(Shape::Round, f64::INFINITY),
        "ring" => Shape::Round,
        "square" => Shape::Square,
        "diamond" => Shape::Diamond,
        "star" => Shape::Star,
        "cross" => Shape::Cross,
        "triangle" => Shape::Triangle,
        "text" => return Form::Text,
        other => panic!("no outline is known for `{other}`"),
    };
    Form::Shape(shape, weight * magnified)
}

/// The shapes of the glasses check, which has no spec.
fn on_glasses_check(id: &str) -> Shape {
    match id {
        "left-bar" => Shape::Bar,
        "ring" => Shape::Round,
        "right-wedge" => Shape::Triangle,
        other => panic!("no outline is known for `{other}`"),
    }
}

/// A line with its points. Its box is as wide as its points and its weight together.
fn line(entry: &Value, size: [f64; 2], spec: Option<&Table>) -> Form {
    let triple = |point: &Value| [0, 1, 2].map(|i| number(&point[i]));
    let points: Vec<_> = entry["points"].as_array().unwrap().iter().map(triple).collect();
    let xs = || points.iter().map(|p| p[0]);
    let weight = size[0] - (xs().fold(f64::NEG_INFINITY, f64::max) - xs().fold(f64::INFINITY, f64::min));
    let looped = spec.is_some_and(|s| s.get("trail").is_some_and(|t| t["form"].as_str() == Some("loop")));
    let framed = entry["id"].as_str().unwrap().starts_with("frame-");
    Form::Line { points, closed: looped || framed, weight }
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("`{value}` is no number"))
}

fn pair(value: &Value) -> [f64; 2] {
    [number(&value[0]), number(&value[1])]
}
