//! `layers`: one picture by the author whose groups stand at depths of their own, one behind the other.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{
    At, Companions, Depth, Eyes, Feature, Form, Part, Picture, Role, Scaling, Scene, Shape, Side, Size, Strand,
};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::suggest::nearest;
use crate::spec::table::Table;
use crate::spec::text::{is_id, shown};
use crate::units::Mm;

use crate::exercise::ramp::Ramp;
use crate::exercise::target::REACH;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `layers` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Layers {
    /// What pages call the picture.
    pub name: String,
    /// The middle of the picture.
    pub at: At,
    /// Width and height of the whole picture on the page, mm.
    pub extent: (f64, f64),
    /// The layers in the order of the file, at least one.
    pub layers: Vec<Layer>,
    /// Whether nearer layers hide what stands behind them.
    pub solid: bool,
    /// Whether a watch mark for each eye stands above and below the picture, at the depth of the first layer.
    pub watch: bool,
}

/// A part of the picture at its depth.
#[derive(Debug, Clone, PartialEq)]
pub struct Layer {
    /// What is drawn, and where in the picture.
    pub part: Part,
    /// How deep it stands.
    pub depth: Ramp<Depth>,
    /// Who sees it.
    pub eyes: Eyes,
    /// Where its depth is written.
    pub place: Place,
}

/// The most layers. Design choice: more depths than this cannot be told apart on a page.
const MOST_LAYERS: usize = 12;
/// Width of a watch mark, mm, as beside a target.
const MARK: f64 = 4.2;
/// Clear space between the picture and the middle of a watch mark, mm.
const BESIDE: f64 = 5.0;

/// The kind.
pub const KIND: Kind = Kind {
    id: "layers",
    gated: false,
    strand: Strand::Depth,
    doc: "A picture of the author's own stands in layers: each group at the top of an SVG file at a depth of its own.",
    tables: &[&EXERCISE, &PICTURE, &LAYER],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const PICTURE: TableSpec = TableSpec {
    name: "picture",
    form: TableForm::Single,
    groups: &[&[
        Field::required(
            "file",
            Takes::Picture("svg"),
            "The picture, from the folder of the set. Each group at its top has an `id` and is a layer. Every paint in \
             it is the one ink. Letters, images and effects are refused.",
        ),
        Field::optional(
            "width",
            Takes::Length(mm(20.0, 180.0)),
            "Width of the whole picture on the page; or write `height`.",
        ),
        Field::optional(
            "height",
            Takes::Length(mm(20.0, 120.0)),
            "Height of the whole picture on the page; or write `width`.",
        ),
        Field::default(
            "at",
            Takes::Point(REACH),
            r#"["0 mm", "0 mm"]"#,
            "The middle of the whole picture: to the right of, and below, the middle of the art field.",
        ),
        Field::default(
            "solid",
            Takes::Flag,
            "true",
            "Whether the ink of nearer layers hides what stands behind it. What is not painted is open.",
        ),
        Field::optional(
            "rest",
            Takes::Depth,
            "How deep groups without a `[[layer]]` stand. Left out: each group needs one.",
        ),
        Field::default(
            "marks",
            Takes::Flag,
            "true",
            "Whether watch marks stand above and below the picture, at the depth of the first `[[layer]]`.",
        ),
    ]],
    doc: "The picture.",
};

const LAYER: TableSpec = TableSpec {
    name: "layer",
    form: TableForm::Many,
    groups: &[&[
        Field::required("id", Takes::Id, "The `id` of a group at the top of the picture."),
        Field::required("depth", Takes::Ramp(&Takes::Depth), "How deep it stands."),
        Field::default("eyes", Takes::Choice(&["both", "left", "right"]), r#""both""#, "Which eye sees it."),
    ]],
    doc: "A layer of the picture, one to twelve.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "layers"
title = "The harbour mouth"

[picture]
file = "art/harbour.svg"
width = "150 mm"

[[layer]]
id = "hull"
depth = "2 pd toward"

[[layer]]
id = "sail"
depth = "1 pd toward"

[[layer]]
id = "pier"
depth = "page"

[[layer]]
id = "hills"
depth = "1 pd away"
"#;

impl Draws for Layers {
    fn levels(&self) -> Option<u32> {
        self.layers.iter().find_map(|layer| layer.depth.levels())
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.level, rung.tongue))
    }
}

/// A `[[layer]]` as written.
struct Entry {
    id: Placed<String>,
    depth: Ramp<Depth>,
    eyes: Eyes,
    place: Place,
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let mut table = document.table(reader, &PICTURE)?;
    table.check_keys(reader);
    let entries = read_entries(reader, document);
    let picture: Option<Arc<Picture>> = table.get(reader, "file");
    let longer = read_extent(reader, &table, picture.as_deref());
    let (at, solid) = (table.get(reader, "at"), table.get(reader, "solid"));
    let watch = table.get(reader, "marks");
    let rest: Option<Option<Depth>> = table.maybe(reader, "rest");
    let file = table.place_of(reader, "file");
    let layers = match_layers(reader, picture.as_deref()?, entries?, rest?, file);
    let (extent, name) = (longer?, picture?.name.clone());
    Some(Body::Layers(Layers { name, at: at?, extent, layers: layers?, solid: solid?, watch: watch? }))
}

fn read_entries(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Vec<Entry>> {
    if !document.has(LAYER.name) {
        document.table(reader, &LAYER);
        return None;
    }
    let tables = document.tables(reader, &LAYER);
    if let Some(table) = tables.get(MOST_LAYERS) {
        let message = format!("a `layers` takes 1 to {MOST_LAYERS} `[[layer]]`s, found {}", tables.len());
        let problem = Diagnostic::error(codes::LIST, table.place(), message)
            .with_label("one too many")
            .with_help("join groups that may stand at one depth");
        reader.push(problem);
        return None;
    }
    let mut ids = BTreeMap::new();
    let read: Vec<_> = tables.into_iter().map(|table| read_entry(reader, table, &mut ids)).collect();
    read.into_iter().collect()
}

fn read_entry(reader: &mut Reader<'_>, mut table: Table<'_>, ids: &mut BTreeMap<String, Place>) -> Option<Entry> {
    table.check_keys(reader);
    let id: Option<Placed<String>> = table.get(reader, "id");
    let depth = table.get(reader, "depth");
    let eyes = table.one_of(reader, "eyes", &[Eyes::Both, Eyes::Left, Eyes::Right]);
    let place = table.place_of(reader, "depth");
    let id = id?;
    crate::spec::unique(reader, "id", id.clone(), ids)?;
    Some(Entry { id, depth: depth?, eyes: eyes?, place })
}

/// Width and height of the whole picture on the page, from the one of them that is written.
fn read_extent(reader: &mut Reader<'_>, table: &Table<'_>, picture: Option<&Picture>) -> Option<(f64, f64)> {
    let width: Option<Mm> = table.maybe(reader, "width")?;
    let height: Option<Mm> = table.maybe(reader, "height")?;
    let (whole_width, whole_height) = picture?.extent;
    match (width, height) {
        (Some(Mm(width)), None) => Some((width, width / whole_width * whole_height)),
        (None, Some(Mm(height))) => Some((height / whole_height * whole_width, height)),
        (Some(_), Some(_)) => {
            let message = "the picture has `width` and `height`: one follows from the other";
            let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "height"), message)
                .with_label("beside `width`")
                .with_help("leave one of them out");
            reader.push(problem);
            None
        }
        (None, None) => {
            let problem = Diagnostic::error(codes::MISSING_KEY, table.place(), "`[picture]` has no `width`")
                .with_label("`width` or `height` is missing")
                .with_help("add `width`: a length, 20 mm to 180 mm; or `height`");
            reader.push(problem);
            None
        }
    }
}

/// Gives each group its layer; pushes each group without one, and each layer without a group.
fn match_layers(
    reader: &mut Reader<'_>,
    picture: &Picture,
    entries: Vec<Entry>,
    rest: Option<Depth>,
    file: Place,
) -> Option<Vec<Layer>> {
    let ids: Vec<&str> = picture.parts.iter().map(|part| part.id.as_str()).collect();
    let strays: Vec<_> = entries.iter().filter(|entry| !ids.contains(&entry.id.value.as_str())).collect();
    let free = |id: &&str| entries.iter().all(|entry| entry.id.value != **id);
    for entry in &strays {
        let near = nearest(&entry.id.value, ids.iter().copied().filter(free));
        reader.push(no_group(&entry.id, near, &ids));
    }
    // A group that a misspelt layer was taken for is not reported twice.
    let mended: Vec<&str> =
        strays.iter().filter_map(|entry| nearest(&entry.id.value, ids.iter().copied().filter(free))).collect();
    let bare: Vec<&str> = ids.iter().copied().filter(free).filter(|id| !mended.contains(id)).collect();
    if rest.is_none() {
        bare.iter().for_each(|id| reader.push(no_layer(id, file)));
    }
    if !strays.is_empty() || (rest.is_none() && !bare.is_empty()) {
        return None;
    }
    let mut layers: Vec<Layer> = Vec::new();
    for entry in entries {
        let part = picture.parts.iter().find(|part| part.id == entry.id.value)?.clone();
        layers.push(Layer { part, depth: entry.depth, eyes: entry.eyes, place: entry.place });
    }
    let others = picture.parts.iter().filter(|part| bare.contains(&part.id.as_str()));
    let others = others.zip(std::iter::repeat(rest.unwrap_or(Depth::Page)));
    layers.extend(others.map(|(part, depth)| Layer {
        part: part.clone(),
        depth: Ramp::Same(depth),
        eyes: Eyes::Both,
        place: file,
    }));
    Some(layers)
}

/// A layer that names no group.
fn no_group(id: &Placed<String>, near: Option<&str>, ids: &[&str]) -> Diagnostic {
    let message = format!("the picture has no group `{}` at its top", id.value);
    let problem = Diagnostic::error(codes::CHOICE, id.place, message).with_label("no such group");
    match near {
        Some(near) => problem
            .with_help(format!("did you mean `{}`?", shown(near)))
            .with_replacement(format!("\"{}\"", shown(near))),
        None => {
            let few: Vec<_> = ids.iter().take(MOST_LAYERS).map(|id| format!("`{}`", shown(id))).collect();
            problem.with_help(format!("its groups are {}", few.join(", ")))
        }
    }
}

/// A group that no layer names.
fn no_layer(id: &str, file: Place) -> Diagnostic {
    let message = format!("the group `{}` of the picture has no `[[layer]]`", shown(id));
    let help = if is_id(id) {
        format!("add a `[[layer]]` with `id = \"{id}\"`, or say with `rest` how deep the others stand")
    } else {
        "give the group an `id` of `a`-`z`, `0`-`9` and `-`, or say with `rest` how deep the others stand".to_owned()
    };
    Diagnostic::error(codes::MISSING_TABLE, file, message).with_label("a group without a depth").with_help(help)
}

impl Layers {
    /// The art of one level.
    fn scene(&self, level: u32) -> Scene {
        let mut features: Vec<Feature> = self.layers.iter().map(|layer| self.feature(layer, level)).collect();
        if let Some(first) = self.layers.first().filter(|_| self.watch) {
            let reach = self.extent.1 / 2.0 + BESIDE;
            features.push(self.mark(first, level, Eyes::Left, -reach));
            features.push(self.mark(first, level, Eyes::Right, reach));
        }
        Scene { features }
    }

    fn feature(&self, layer: &Layer, level: u32) -> Feature {
        let longer = self.extent.0.max(self.extent.1);
        let Part { drawing, at, size, .. } = &layer.part;
        let at = At { x: Mm(self.at.x.0 + at.0 * longer), y: Mm(self.at.y.0 + at.1 * longer) };
        let form = Form::Shape {
            shape: Shape::Drawing(Arc::clone(drawing)),
            at,
            size: Size::Length(Mm(size * longer)),
            // A drawing has no lines of its own weight.
            weight: Mm(1.0),
            depth: layer.depth.at(level),
        };
        Feature {
            id: layer.part.id.clone(),
            role: Role::Target,
            eyes: layer.eyes,
            form,
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: self.solid,
            place: Some(layer.place),
        }
    }

    /// A watch mark above or below the picture, at the depth of a layer.
    fn mark(&self, layer: &Layer, level: u32, eyes: Eyes, dy: f64) -> Feature {
        let (shape, name) = if eyes == Eyes::Left { (Shape::Bar, "bar") } else { (Shape::Wedge, "wedge") };
        let form = Form::Shape {
            shape,
            at: At { x: Mm(self.at.x.0 + layer.part.at.0 * self.extent.0.max(self.extent.1)), y: Mm(self.at.y.0 + dy) },
            size: Size::Length(Mm(MARK)),
            weight: Mm(MARK),
            depth: layer.depth.at(level),
        };
        Feature {
            id: format!("{}-{name}", layer.part.id),
            role: Role::Watch,
            eyes,
            form,
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: true,
            place: Some(layer.place),
        }
    }

    /// The words of one level.
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let see = [(Some(Side::Toward), "layers-front"), (None, "layers-page"), (Some(Side::Away), "layers-behind")];
        let see: Vec<String> =
            see.into_iter().filter_map(|(side, id)| self.parts_on(level, side, id, tongue)).collect();
        Words {
            goal: tongue.tell("layers-goal", &[("picture", (&self.name).into())]),
            setup: String::new(),
            steps: vec![
                tongue.say("layers-look"),
                tongue.say("layers-nearest"),
                tongue.say("layers-back"),
                words::check_there(self.watch, tongue),
                tongue.say("layers-repeat"),
            ],
            see: words::with_marks(see.join(" "), self.watch, tongue),
            one_part: words::one_part(self.watch, tongue),
        }
    }

    /// Which parts stand on a side of the page, told by this message; `None` where there are none.
    fn parts_on(&self, level: u32, side: Option<Side>, id: &str, tongue: &Tongue) -> Option<String> {
        let there = self.layers.iter().filter(|layer| layer.depth.at(level).side() == side);
        let names: Vec<String> = there.map(|layer| layer.part.drawing.name.replace('-', " ")).collect();
        let first = names.first()?;
        let second = names.get(1).unwrap_or(first);
        Some(tongue.tell(id, &[("n", names.len().into()), ("first", first.into()), ("second", second.into())]))
    }
}
