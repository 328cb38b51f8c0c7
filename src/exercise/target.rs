//! A target as every kind uses it: a shape at a depth, with its watch marks and its lock frame.

use std::collections::BTreeMap;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::scene::{At, Companions, Depth, Direction, Eyes, Feature, Form, Role, Scaling, Shape, Size};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableSpec, Takes, deg, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, Quantity, Unit};

use super::ramp::Ramp;

/// A `[[target]]` of an exercise file.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// Names the target in words, alt text and report; unique in its file.
    pub label: String,
    /// Its outline.
    pub shape: Shape,
    /// The longer side of its bounding box (text: the height of a capital letter).
    pub size: Ramp<Size>,
    /// Its middle, from the middle of the art field. With [`Scaling::ConstantObject`] this is measured in the target's
    /// own plane in space.
    pub at: At,
    /// How deep it stands.
    pub depth: Ramp<Depth>,
    /// Who sees it.
    pub eyes: Eyes,
    /// How its size is measured.
    pub scaling: Scaling,
    /// Width of its lines.
    pub weight: Mm,
    /// Whether it carries watch marks, one for each eye.
    pub watch: bool,
    /// Whether a lock frame rides with it.
    pub lock: bool,
    /// Where it is written.
    pub place: Place,
}

/// How far a place may be from the middle of the art field, for keys. Whether it fits the field is checked on the
/// solved page: in a room a place far behind the page may lie far out and still be drawn inside. Design choice.
pub const REACH: Quantity = Quantity { value: 500.0, unit: Unit::Mm };

/// The keys of a target of its own.
pub const OWN: &[Field] = &[
    Field::optional(
        "label",
        Takes::Id,
        "Names the target in words and report; unique in the file. Left out: `target-1` and so on; of a drawing: the \
         name of its file, where that is free.",
    )
    .said(),
    Field::required("depth", Takes::Ramp(&Takes::Depth), "How deep it stands."),
    Field::default("eyes", Takes::Choice(&["both", "left", "right"]), r#""both""#, "Which eye sees it."),
];

/// The words of `shape`.
const SHAPES: &[&str] =
    &["ring", "disc", "square", "diamond", "star", "cross", "triangle", "hexagon", "open ring", "drawing", "text"];

/// Keys that belong to one shape, with what the others lack.
const ONE_SHAPE: &[(&str, &str, &str)] = &[
    ("text", "text", "this shape has no letters"),
    ("gap", "open ring", "this shape has no gap"),
    ("file", "drawing", "this shape is no drawing"),
];

/// The keys of how a target looks, shared with `[arrangement]`.
pub const LOOK: &[Field] = &[
    Field::required(
        "shape",
        Takes::Choice(SHAPES),
        "Its outline. A `disc` and a `hexagon` are solid, a `cross` is two bars, an `open ring` has a gap, a `drawing` \
         is the author's own; the others are lines.",
    ),
    Field::optional("text", Takes::Text(24), "The letters or words of `shape = \"text\"`; of no other shape.").said(),
    Field::optional(
        "gap",
        Takes::Choice(&["up", "right", "down", "left"]),
        "The side of the gap of `shape = \"open ring\"`; of no other shape.",
    ),
    Field::optional(
        "file",
        Takes::Picture("svg"),
        "The drawing of `shape = \"drawing\"`, from the folder of the set; of no other shape. Every paint in it is the \
         one ink. Letters, images and effects are refused.",
    ),
    Field::required(
        "size",
        Takes::Ramp(&Takes::Size { length: mm(2.0, 160.0), angle: deg(0.2, 22.0) }),
        "The longer side of its bounding box; of a text: the height of a capital letter. An angle is what it fills at \
         the viewing distance.",
    ),
    Field::default(
        "at",
        Takes::Point(REACH),
        r#"["0 mm", "0 mm"]"#,
        "Its middle: to the right of, and below, the middle of the art field.",
    ),
    Field::default("weight", Takes::Length(mm(0.2, 10.0)), r#""2 mm""#, "Width of its lines."),
    Field::default("marks", Takes::Flag, "true", "Whether it carries watch marks, one for each eye."),
];

const SCALINGS: Takes = Takes::Choice(&["constant angle", "constant object"]);
const SCALING_DOC: &str = "`constant angle`: place and size are measured on the page, whatever the depth. \
                           `constant object`: they are measured in space at its own depth, so that what stands nearer \
                           is drawn larger.";
const LOCK_DOC: &str = "Whether a lock frame rides with it.";

/// Scaling and lock frame of a target that stands free.
pub const FREE: &[Field] = &[
    Field::default("scaling", SCALINGS, r#""constant angle""#, SCALING_DOC),
    Field::default("lock", Takes::Flag, "true", LOCK_DOC),
];

/// Scaling and lock frame of a target inside a drawn room.
pub const INSIDE: &[Field] = &[
    Field::default("scaling", SCALINGS, r#""constant object""#, SCALING_DOC),
    Field::default("lock", Takes::Flag, "false", LOCK_DOC),
];

impl Target {
    /// How many levels its ramps have; `None` without a ramp.
    pub fn levels(&self) -> Option<u32> {
        self.depth.levels().or(self.size.levels())
    }
}

/// Reads the `[[target]]`s of a file: at least `min`, at most `max`. `None`: a problem has been pushed.
pub fn read_all(
    reader: &mut Reader<'_>,
    document: &Document<'_>,
    spec: &'static TableSpec,
    kind: &str,
    (min, max): (usize, usize),
) -> Option<Vec<Target>> {
    if !document.has(spec.name) {
        document.table(reader, spec);
        return None;
    }
    let tables = document.tables(reader, spec);
    let places: Vec<_> = tables.iter().map(Table::place).collect();
    let mut labels = BTreeMap::new();
    let targets: Vec<_> = (1..).zip(tables).map(|(number, t)| read(reader, t, number, &mut labels)).collect();
    let wrong = if targets.len() < min { places.last() } else { places.get(max) };
    if let Some(place) = wrong {
        let wanted = match (min, max) {
            (1, 1) => "exactly one `[[target]]`".to_owned(),
            _ => format!("{min} to {max} `[[target]]`s"),
        };
        let problem =
            Diagnostic::error(codes::LIST, *place, format!("a `{kind}` takes {wanted}, found {}", targets.len()))
                .with_label(if targets.len() < min { "the only one" } else { "one too many" })
                .with_help(if targets.len() < min { "add another `[[target]]`" } else { "leave it out" });
        reader.push(problem);
        return None;
    }
    if targets.is_empty() {
        return None;
    }
    targets.into_iter().collect()
}

/// Reads one `[[target]]`, the `number`th of its file.
fn read(
    reader: &mut Reader<'_>,
    mut table: Table<'_>,
    number: usize,
    labels: &mut BTreeMap<String, Place>,
) -> Option<Target> {
    table.check_keys(reader);
    let written: Option<Option<Placed<String>>> = table.maybe(reader, "label");
    let depth = table.get(reader, "depth");
    let eyes = table.one_of(reader, "eyes", &[Eyes::Both, Eyes::Left, Eyes::Right]);
    let place = table.place_of(reader, "depth");
    let look = read_look(reader, &table);
    let own = || Placed { value: own_label(look.as_ref(), number, labels), place: table.place() };
    let label = written?.unwrap_or_else(own);
    let label = crate::spec::unique(reader, "label", label, labels);
    Some(Target { label: label?, depth: depth?, eyes: eyes?, place, ..look? })
}

/// What a target without a label is called.
fn own_label(look: Option<&Target>, number: usize, taken: &BTreeMap<String, Place>) -> String {
    match look.map(|look| &look.shape) {
        Some(Shape::Drawing(drawing)) => Some(drawing.name.replace(' ', "-")),
        _ => None,
    }
    .filter(|label| !taken.contains_key(label))
    .unwrap_or_else(|| format!("target-{number}"))
}

/// Reads the keys of [`LOOK`] with scaling and lock frame. Label, depth and eyes are filled in by the caller.
pub fn read_look(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Target> {
    let shape = read_shape(reader, table);
    let size = table.get(reader, "size");
    let at = table.get(reader, "at");
    let scaling = table.one_of(reader, "scaling", &[Scaling::ConstantAngle, Scaling::ConstantObject]);
    let weight = table.get(reader, "weight");
    let watch = table.get(reader, "marks");
    let lock = table.get(reader, "lock");
    Some(Target {
        label: String::new(),
        shape: shape?,
        size: size?,
        at: at?,
        depth: Ramp::Same(Depth::Page),
        eyes: Eyes::Both,
        scaling: scaling?,
        weight: weight?,
        watch: watch?,
        lock: lock?,
        place: table.place(),
    })
}

/// Reads the shape with the keys that belong to one shape alone.
pub fn read_shape(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Shape> {
    let word = table.word(reader, "shape")?;
    let fits = ONE_SHAPE.iter().filter(|(key, shape, _)| *shape != word && table.has(key) && table.knows(key));
    let strays: Vec<_> = fits.collect();
    for (key, shape, label) in &strays {
        let message = format!("`{key}` goes with `shape = \"{shape}\"` alone");
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, key), message)
            .with_label(*label)
            .with_help(format!("leave out `{key}`, or write `shape = \"{shape}\"`"));
        reader.push(problem);
    }
    let shape = match word {
        "text" => table.get(reader, "text").map(Shape::Text),
        "drawing" => table.get(reader, "file").map(Shape::Drawing),
        "open ring" => table.one_of(reader, "gap", &Direction::ALL).map(Shape::OpenRing),
        "hexagon" => Some(Shape::Polygon(6)),
        "ring" => Some(Shape::Ring),
        "disc" => Some(Shape::Disc),
        "square" => Some(Shape::Square),
        "diamond" => Some(Shape::Diamond),
        "star" => Some(Shape::Star),
        "cross" => Some(Shape::Cross),
        "triangle" => Some(Shape::Triangle),
        _ => None,
    };
    if strays.is_empty() { shape } else { None }
}

impl Target {
    /// The feature of this target on a level, named by its label.
    pub fn feature(&self, level: u32) -> Feature {
        Feature {
            id: self.label.clone(),
            role: Role::Target,
            eyes: self.eyes,
            form: Form::Shape {
                shape: self.shape.clone(),
                at: self.at,
                size: self.size.at(level),
                weight: self.weight,
                depth: self.depth.at(level),
            },
            scaling: self.scaling,
            companions: Companions { watch: self.watch, lock: self.lock, ..Companions::default() },
            solid: false,
            place: Some(self.place),
        }
    }
}
