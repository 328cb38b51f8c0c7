//! Parts of a page that kinds draw themselves: a shape, strokes or a line with its purpose, its eyes and its depth.
//!
//! Places are in millimetres from the middle of the art field. Nothing here knows an offset or a colour.

use crate::diagnostics::Place;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Shape, Size, Vertex};
use crate::spec::field::{Field, Takes};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use super::ramp::{Blend, Ramp};

/// A point, mm from the middle of the art field.
pub type Point = (f64, f64);

/// `depth` of kinds whose parts stand on the page unless the author asks for more.
pub const DEPTH: Field =
    Field::optional("depth", Takes::Ramp(&Takes::Depth), "How deep everything stands. Left out: on the page.");

/// Width of a watch mark, mm: as wide as those that ride with targets.
const MARK: f64 = 4.2;
/// Height of a watch bar and of a watch wedge, as they are drawn, mm.
const BAR_HEIGHT: f64 = 1.5;
const WEDGE_HEIGHT: f64 = 3.7;
/// Clear space between a mark and what it watches, mm.
const CLEAR: f64 = 3.5;
/// Length and width of the strokes of a lock frame, mm.
const LOCK_ARM: f64 = 7.0;
const LOCK_WEIGHT: f64 = 1.2;

/// What a part is, besides its look.
#[derive(Debug, Clone)]
pub struct Part<'a> {
    /// Unique on its page.
    pub id: String,
    /// What it is for.
    pub role: Role,
    /// Who sees it.
    pub eyes: Eyes,
    /// How deep it stands.
    pub depth: &'a Depth,
    /// Where the author asked for it.
    pub place: Place,
}

impl<'a> Part<'a> {
    /// A part that is looked at.
    pub fn target(id: impl Into<String>, eyes: Eyes, depth: &'a Depth, place: Place) -> Self {
        Self { id: id.into(), role: Role::Target, eyes, depth, place }
    }

    /// The same part with another purpose.
    pub fn role(self, role: Role) -> Self {
        Self { role, ..self }
    }

    /// A shape of this size about a point; `weight` is the width of its lines.
    pub fn shape(self, shape: Shape, at: Point, size: f64, weight: f64) -> Feature {
        let (at, size, depth) = (place(at), Size::Length(Mm(size)), self.depth.clone());
        self.feature(Form::Shape { shape, at, size, weight: Mm(weight), depth })
    }

    /// Straight strokes with square ends.
    pub fn strokes(self, strokes: Vec<(Point, Point)>, weight: f64) -> Feature {
        let strokes = strokes.into_iter().map(|(from, to)| (place(from), place(to))).collect();
        let depth = self.depth.clone();
        self.feature(Form::Strokes { strokes, weight: Mm(weight), depth })
    }

    /// A line through points; `smooth` where it bends through them.
    pub fn line(self, points: &[Point], smooth: bool, weight: f64) -> Feature {
        let vertex = |&at: &Point| Vertex { at: place(at), depth: self.depth.clone() };
        let vertices = points.iter().map(vertex).collect();
        self.feature(Form::Path { vertices, closed: false, smooth, weight: Mm(weight) })
    }

    fn feature(self, form: Form) -> Feature {
        Feature {
            id: self.id,
            role: self.role,
            eyes: self.eyes,
            form,
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }
}

/// A place in the frame of the scene.
pub fn place((x, y): Point) -> At {
    At { x: Mm(x), y: Mm(y) }
}

/// The watch marks of a block: the left eye's bar above it and the right eye's wedge below it.
pub fn watch_marks((x, top): Point, above: &Depth, bottom: f64, below: &Depth, place: Place) -> [Feature; 2] {
    let bar = Part::target("bar", Eyes::Left, above, place).role(Role::Watch);
    let wedge = Part::target("wedge", Eyes::Right, below, place).role(Role::Watch);
    [
        bar.shape(Shape::Bar, (x, top - CLEAR - BAR_HEIGHT / 2.0), MARK, MARK),
        wedge.shape(Shape::Wedge, (x, bottom + CLEAR + WEDGE_HEIGHT / 2.0), MARK, MARK),
    ]
}

/// How far the watch marks reach beyond a block, above and below, mm.
pub const WATCH_ROOM: Point = (CLEAR + BAR_HEIGHT, CLEAR + WEDGE_HEIGHT);

/// The strokes of a lock frame, four corners about a middle, with their width.
pub fn lock_frame((x, y): Point, half_width: f64, half_height: f64) -> (Vec<(Point, Point)>, f64) {
    let corner = |sx: f64, sy: f64| {
        let at = (x + sx * half_width, y + sy * half_height);
        // The square ends meet at the outer corner.
        let outer = at.0 + sx * LOCK_WEIGHT / 2.0;
        [((outer, at.1), (at.0 - sx * LOCK_ARM, at.1)), (at, (at.0, at.1 - sy * LOCK_ARM))]
    };
    let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
    (corners.into_iter().flat_map(|(sx, sy)| corner(sx, sy)).collect(), LOCK_WEIGHT)
}

/// A rectangle about a middle as four strokes whose ends make full corners.
pub fn rectangle((x, y): Point, half_width: f64, half_height: f64, weight: f64) -> Vec<(Point, Point)> {
    let (left, right, top, bottom) = (x - half_width, x + half_width, y - half_height, y + half_height);
    let past = weight / 2.0;
    vec![
        ((left - past, top), (right + past, top)),
        ((left - past, bottom), (right + past, bottom)),
        ((left, top), (left, bottom)),
        ((right, top), (right, bottom)),
    ]
}

/// A ramp that may be left out, with what holds then. `None`: a problem has been pushed.
pub fn ramp_or<T>(reader: &mut Reader<'_>, table: &Table<'_>, key: &'static str, otherwise: T) -> Option<Ramp<T>>
where
    T: Blend,
    Ramp<T>: crate::spec::read::Read,
{
    Some(table.maybe(reader, key)?.unwrap_or(Ramp::Same(otherwise)))
}
