//! A `[[figure]]` that dots alone make.

use std::collections::BTreeMap;
use std::sync::Arc;

use kurbo::{BezPath, Circle, Rect, Shape as _};

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::exercise::ramp::Ramp;
use crate::exercise::target;
use crate::scene::{At, Depth, DotFigure, Drawing, Relief, Shape, Size};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, deg, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;

/// A figure as written.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// Names it in the report; unique in its file.
    pub label: String,
    /// Its outline, filled with dots.
    pub shape: Shape,
    /// The longer side of its bounding box (text: the height of a capital letter).
    pub size: Ramp<Size>,
    /// Its middle, from the middle of the art field.
    pub at: At,
    /// How deep it stands.
    pub depth: Ramp<Depth>,
}

/// The most figures of a page. Design choice.
const MOST: usize = 8;

/// `[[figure]]`.
pub const FIGURE: TableSpec = TableSpec {
    name: "figure",
    form: TableForm::Many,
    groups: &[&[
        Field::optional(
            "label",
            Takes::Id,
            "Names it in the report; unique in the file. Left out: `figure-1` and so on.",
        ),
        Field::required(
            "shape",
            Takes::Choice(&[
                "ring", "disc", "square", "diamond", "star", "cross", "triangle", "hexagon", "drawing", "text",
            ]),
            "Its outline. All are filled with dots but the `ring`: its line is a fifth of its size.",
        ),
        Field::optional("file", Takes::Picture("svg"), "The picture of `shape = \"drawing\"`; of no other shape."),
        Field::optional("text", Takes::Text(12), "The letters of `shape = \"text\"`; of no other shape.").said(),
        Field::required(
            "size",
            Takes::Ramp(&Takes::Size { length: mm(8.0, 150.0), angle: deg(1.0, 22.0) }),
            "The longer side of its bounding box; of a text: the height of a capital letter.",
        ),
        Field::default(
            "at",
            Takes::Point(target::REACH),
            r#"["0 mm", "0 mm"]"#,
            "Its middle: to the right of, and below, the middle of the art field.",
        ),
        Field::required("depth", Takes::Ramp(&Takes::Depth), "How deep it stands."),
    ]],
    doc: "What is hidden in the dots, one to eight; a later figure covers an earlier one.",
};

/// Reads all `[[figure]]`s. `None`: a problem has been pushed.
pub fn read_all(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Vec<Figure>> {
    if !document.has(FIGURE.name) {
        document.table(reader, &FIGURE);
        return None;
    }
    let tables = document.tables(reader, &FIGURE);
    let count = tables.len();
    let surplus = tables.get(MOST).map(Table::place);
    let mut labels = BTreeMap::new();
    let figures: Vec<_> = (1..).zip(tables).map(|(number, t)| read(reader, t, number, &mut labels)).collect();
    if let Some(place) = surplus {
        let message = format!("a page takes 1 to {MOST} `[[figure]]`s, found {count}");
        let problem = Diagnostic::error(codes::LIST, place, message).with_label("one too many");
        reader.push(problem.with_help("leave it out"));
        return None;
    }
    if figures.is_empty() {
        return None;
    }
    figures.into_iter().collect()
}

fn read(
    reader: &mut Reader<'_>,
    mut table: Table<'_>,
    number: usize,
    labels: &mut BTreeMap<String, Place>,
) -> Option<Figure> {
    table.check_keys(reader);
    let label =
        table.maybe(reader, "label")?.unwrap_or(Placed { value: format!("figure-{number}"), place: table.place() });
    let label = crate::spec::unique(reader, "label", label, labels);
    let shape = target::read_shape(reader, &table);
    let (size, at, depth) = (table.get(reader, "size"), table.get(reader, "at"), table.get(reader, "depth"));
    Some(Figure { label: label?, shape: shape?, size: size?, at: at?, depth: depth? })
}

impl Figure {
    /// How many levels its ramps have; `None` without a ramp.
    pub fn levels(&self) -> Option<u32> {
        self.depth.levels().or(self.size.levels())
    }

    /// The figure on a level.
    pub fn on(&self, level: u32) -> DotFigure {
        // A ring needs room for dots in its line.
        let shape = if self.shape == Shape::Ring { ring() } else { self.shape.clone() };
        flat(self.label.clone(), shape, self.at, self.size.at(level), self.depth.at(level))
    }
}

/// A figure at one depth.
pub fn flat(id: String, shape: Shape, at: At, size: Size, depth: Depth) -> DotFigure {
    DotFigure { id, shape, at, size, depth: Relief::Flat(depth) }
}

/// A ring wide enough for dots: its line is a fifth of its diameter.
fn ring() -> Shape {
    let circle = |radius: f64| Circle::new((0.0, 0.0), radius).to_path(1e-5);
    let mut outline = circle(0.5);
    outline.extend(circle(0.3).reverse_subpaths());
    drawing("ring", outline, (1.0, 1.0))
}

/// An upright rectangle of these proportions.
pub fn rectangle(width: f64, height: f64) -> Shape {
    let longer = width.max(height);
    let (width, height) = (width / longer, height / longer);
    drawing("plane", Rect::from_center_size((0.0, 0.0), (width, height)).to_path(1e-5), (width, height))
}

fn drawing(name: &str, outline: BezPath, extent: (f64, f64)) -> Shape {
    Shape::Drawing(Arc::new(Drawing { name: name.to_owned(), outline, extent }))
}
