//! Drawn solids in true two-eye perspective: boxes, stairs, posts and tunnels as lines with a depth at each of their
//! points. The kinds that build rooms and things share them.
//!
//! Hidden lines. The solids are set square to the page, so a side face turns towards the point midway between the eyes
//! exactly where the line of sight runs on its outer side: a box draws its front and those of its four side faces that
//! turn this way, stairs their risers, the treads below the eyes and the side wall that turns this way. Front faces and risers are solid, so that each eye by itself loses what lies behind them. What
//! only a side face would hide is drawn: an author keeps solids apart that stand one behind the other's side.

use crate::diagnostics::Place;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Vertex};
use crate::units::Mm;

use super::ramp::{Blend, Ramp};

/// A solid, with places and sizes in space.
#[derive(Debug, Clone, PartialEq)]
pub struct Solid {
    /// Begins the ids of its lines; the line that stands for the whole has it as its id. May be empty for guides alone.
    pub label: String,
    /// What it is.
    pub form: SolidForm,
    /// The middle of its front, in the plane of the front.
    pub at: At,
    /// Its width.
    pub width: Mm,
    /// Its height.
    pub height: Mm,
    /// Depth of its front.
    pub front: Ramp<Depth>,
    /// Depth of its back; not used by a post.
    pub back: Ramp<Depth>,
    /// Width of its lines on the page.
    pub weight: Mm,
    /// Whether it is looked at: then it has a target, the front face, the lowest riser, the post or the end of the tunnel.
    pub watch: Watch,
    /// Where it is written.
    pub place: Place,
}

/// Whether a solid is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Watch {
    /// No: its lines are all guides.
    Guide,
    /// Yes, without watch marks.
    Plain,
    /// Yes, with watch marks.
    Marked,
}

/// What a [`Solid`] is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SolidForm {
    /// A box with a closed front. `open` draws every edge, as of wire.
    Box {
        /// Whether one looks through it.
        open: bool,
    },
    /// Stairs that climb away from the reader.
    Stairs {
        /// How many, at least 1.
        steps: u32,
    },
    /// A filled upright post at the depth of the front.
    Post,
    /// Frames one behind the other, to look into.
    Tunnel {
        /// How many, front and back included; at least 2.
        frames: u32,
        /// Whether the long edges join them.
        edges: bool,
        /// Whether a line runs along the middle of floor and ceiling.
        middle: bool,
    },
}

impl Solid {
    /// How many levels its ramps have; `None` without a ramp.
    pub fn levels(&self) -> Option<u32> {
        self.front.levels().or(self.back.levels())
    }

    /// Its lines on a level, the nearest last where they hide one another.
    pub fn features(&self, level: u32) -> Vec<Feature> {
        match self.form {
            SolidForm::Box { open } => self.crate_box(level, open),
            SolidForm::Stairs { steps } => self.stairs(level, steps),
            SolidForm::Post => vec![self.post(level)],
            SolidForm::Tunnel { frames, edges, middle } => self.tunnel(level, frames, edges, middle),
        }
    }

    /// The depth this share of the way from front to back, even in demand.
    fn depth(&self, level: u32, share: f64) -> Depth {
        self.front.at(level).blend(&self.back.at(level), share)
    }

    /// Left, top, right and bottom in space.
    fn sides(&self) -> (f64, f64, f64, f64) {
        let (x, y) = (self.at.x.0, self.at.y.0);
        let (half_width, half_height) = (self.width.0 / 2.0, self.height.0 / 2.0);
        (x - half_width, y - half_height, x + half_width, y + half_height)
    }

    /// Clockwise from the upper left.
    fn corners(&self) -> [(&'static str, At); 4] {
        let (left, top, right, bottom) = self.sides();
        [
            ("top-left", at(left, top)),
            ("top-right", at(right, top)),
            ("bottom-right", at(right, bottom)),
            ("bottom-left", at(left, bottom)),
        ]
    }

    fn crate_box(&self, level: u32, open: bool) -> Vec<Feature> {
        let (front, back) = (self.depth(level, 0.0), self.depth(level, 1.0));
        let corners = self.corners();
        let (left, top, right, bottom) = self.sides();
        // The face from each corner to the next one turns this way where it lies beyond the line of sight.
        let faces = [0.0 < top, right < 0.0, bottom < 0.0, 0.0 < left].map(|turned| turned || open);
        let mut features = Vec::new();
        for i in 0..4 {
            let (before, next) = ((i + 3) % 4, (i + 1) % 4);
            let (name, corner) = corners[i];
            if faces[before] || faces[i] {
                let line = vec![vertex(corner, &front), vertex(corner, &back)];
                features.push(self.line(&format!("edge-{name}"), line, false));
            }
            if faces[i] {
                let line = vec![vertex(corner, &back), vertex(corners[next].1, &back)];
                features.push(self.line(&format!("back-{}", i + 1), line, false));
            }
        }
        let face = corners.map(|(_, corner)| vertex(corner, &front)).to_vec();
        features.push(Feature { solid: !open, ..self.main(self.line("", face, true)) });
        features
    }

    /// Riser by riser, each solid; the treads between them as lines from front to back; the side wall that turns this way.
    fn stairs(&self, level: u32, steps: u32) -> Vec<Feature> {
        let (left, top, right, bottom) = self.sides();
        let rise = (bottom - top) / f64::from(steps);
        let sides = [("left", left, 0.0 < left), ("right", right, right < 0.0)];
        let (near, far) = (self.depth(level, 0.0), self.depth(level, 1.0));
        let mut features = Vec::new();
        for (name, x, _) in sides.into_iter().filter(|&(_, _, turned)| turned) {
            let wall = vec![vertex(at(x, bottom), &near), vertex(at(x, bottom), &far), vertex(at(x, top), &far)];
            features.push(self.line(&format!("wall-{name}"), wall, false));
        }
        for step in (0..steps).rev() {
            let share = |step: u32| f64::from(step) / f64::from(steps);
            let (front, back) = (self.depth(level, share(step)), self.depth(level, share(step + 1)));
            let (foot, head) = (bottom - rise * f64::from(step), bottom - rise * f64::from(step + 1));
            for (name, x, turned) in sides {
                if turned || 0.0 < head {
                    let line = vec![vertex(at(x, head), &front), vertex(at(x, head), &back)];
                    features.push(self.line(&format!("tread-{}-{name}", step + 1), line, false));
                }
            }
            if step + 1 == steps && 0.0 < head {
                let line = vec![vertex(at(left, head), &back), vertex(at(right, head), &back)];
                features.push(self.line("landing", line, false));
            }
            let corners = [(left, head), (right, head), (right, foot), (left, foot)];
            let face = corners.map(|(x, y)| vertex(at(x, y), &front)).to_vec();
            let name = if step == 0 { String::new() } else { format!("riser-{}", step + 1) };
            let riser = self.line(&name, face, true);
            features.push(Feature { solid: true, ..if step == 0 { self.main(riser) } else { riser } });
        }
        features
    }

    fn post(&self, level: u32) -> Feature {
        let (_, top, _, bottom) = self.sides();
        let x = self.at.x.0;
        let strokes = vec![(at(x, top), at(x, bottom))];
        let form = Form::Strokes { strokes, weight: self.width, depth: self.front.at(level) };
        self.main(Feature { form, ..self.line("", Vec::new(), false) })
    }

    fn tunnel(&self, level: u32, frames: u32, edges: bool, middle: bool) -> Vec<Feature> {
        let depths: Vec<Depth> = (0..frames).map(|i| self.depth(level, f64::from(i) / f64::from(frames - 1))).collect();
        let corners = self.corners();
        let mut features = Vec::new();
        for (number, depth) in (1..).zip(&depths) {
            let frame = corners.map(|(_, corner)| vertex(corner, depth)).to_vec();
            let is_end = number == frames && self.watch != Watch::Guide;
            let name = if is_end { String::new() } else { format!("frame-{number}") };
            let frame = self.line(&name, frame, true);
            features.push(if is_end { self.main(frame) } else { frame });
        }
        let (_, top, _, bottom) = self.sides();
        let long = corners.iter().filter(|_| edges).map(|&(name, corner)| (format!("edge-{name}"), corner));
        let lines = [("ceiling-line", at(self.at.x.0, top)), ("floor-line", at(self.at.x.0, bottom))];
        let lines = lines.into_iter().filter(|_| middle).map(|(name, place)| (name.to_owned(), place));
        for (name, place) in long.chain(lines) {
            // Pieces from frame to frame, so that a target hides only those pieces that stand behind it.
            let line = depths.iter().map(|depth| vertex(place, depth)).collect();
            features.push(self.line(&name, line, false));
        }
        features
    }

    /// The line that is looked at.
    fn main(&self, line: Feature) -> Feature {
        let watch = self.watch == Watch::Marked;
        let role = if self.watch == Watch::Guide { Role::Guide } else { Role::Target };
        Feature { role, companions: Companions { watch, ..Companions::default() }, ..line }
    }

    /// A line of the solid; without a name it stands for the whole.
    fn line(&self, name: &str, vertices: Vec<Vertex>, closed: bool) -> Feature {
        let id = [self.label.as_str(), name].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("-");
        Feature {
            id,
            role: Role::Guide,
            eyes: Eyes::Both,
            form: Form::Path { vertices, closed, smooth: false, weight: self.weight },
            scaling: Scaling::ConstantObject,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }
}

fn at(x: f64, y: f64) -> At {
    At { x: Mm(x), y: Mm(y) }
}

fn vertex(at: At, depth: &Depth) -> Vertex {
    Vertex { at, depth: depth.clone() }
}
