//! `solids`: boxes, stairs, posts and tunnels in true two-eye perspective, looked at from the front to the back.

use std::collections::BTreeMap;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{Depth, Feature, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, choices, mm};
use crate::spec::read::{Placed, Word};
use crate::spec::reader::Reader;
use crate::spec::table::Table;

use crate::exercise::ramp::Ramp;
use crate::exercise::solids::{Solid, SolidForm, Watch};
use crate::exercise::target::{self, REACH, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `solids` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Solids {
    /// The solids, at least one.
    pub solids: Vec<Solid>,
    /// What else stands among them; may be empty.
    pub targets: Vec<Target>,
}

/// The most solids of a page. Design choice.
const MOST: usize = 9;

/// The kind.
pub const KIND: Kind = Kind {
    id: "solids",
    gated: false,
    strand: Strand::Depth,
    doc: "Boxes, stairs, posts and tunnels stand in true two-eye perspective: what is nearer is larger and hides what is \
          behind it.",
    tables: &[&EXERCISE, &SOLID, &TARGET],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const FORMS: &[&str] = &["box", "stairs", "post", "tunnel"];

const SOLID: TableSpec = TableSpec {
    name: "solid",
    form: TableForm::Many,
    groups: &[&[
        Field::optional(
            "label",
            Takes::Id,
            "Names the solid in words and report; unique in the file. Left out: `solid-1` and so on.",
        )
        .said(),
        Field::required(
            "form",
            Takes::Choice(FORMS),
            "A closed box; stairs that climb away from the reader; a filled upright post; or frames to look into.",
        ),
        Field::default(
            "at",
            Takes::Point(REACH),
            r#"["0 mm", "0 mm"]"#,
            "The middle of its front, in space: to the right of, and below, the middle of the art field.",
        ),
        Field::required("width", Takes::Length(mm(1.0, 1000.0)), "Its width in space."),
        Field::required("height", Takes::Length(mm(5.0, 1000.0)), "Its height in space."),
        Field::required("front", Takes::Ramp(&Takes::Depth), "Depth of its front; of a post: its depth."),
        Field::required("back", Takes::Ramp(&Takes::Depth), "Depth of its back.").only(&["box", "stairs", "tunnel"]),
        Field::default("open", Takes::Flag, "false", "Whether every edge is drawn, as of wire.").only(&["box"]),
        Field::default("steps", Takes::Count { min: 1, max: 8 }, "3", "How many steps.").only(&["stairs"]),
        Field::default(
            "frames",
            Takes::Count { min: 2, max: 20 },
            "4",
            "How many frames stand along it, front and back included.",
        )
        .only(&["tunnel"]),
        Field::default("weight", Takes::Length(mm(0.2, 6.0)), r#""0.8 mm""#, "Width of its lines on the page."),
        Field::optional(
            "marks",
            Takes::Flag,
            "Whether its front, or the end of a tunnel, carries watch marks. Left out: all but stairs do, whose \
             lowest riser has room for them inside it only where it is some 20 mm high.",
        ),
    ]],
    doc: "The solids, one to nine, in space.",
};

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::INSIDE],
    doc: "What else stands among them, none to twelve.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "solids"
title = "Crates on the quay"

[[solid]]
label = "crate"
form = "box"
at = ["-38 mm", "28 mm"]
width = "44 mm"
height = "34 mm"
front = "2 pd toward"
back = "0.5 pd away"

[[solid]]
label = "post"
form = "post"
at = ["40 mm", "4 mm"]
width = "6 mm"
height = "60 mm"
front = "0.5 pd away"
"#;

impl Draws for Solids {
    fn levels(&self) -> Option<u32> {
        self.solids.iter().find_map(Solid::levels).or_else(|| self.targets.iter().find_map(Target::levels))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    if !document.has(SOLID.name) {
        document.table(reader, &SOLID);
        return None;
    }
    let tables = document.tables(reader, &SOLID);
    if let Some(table) = tables.get(MOST) {
        let message = format!("a `solids` takes 1 to {MOST} `[[solid]]`s, found {}", tables.len());
        let problem = Diagnostic::error(codes::LIST, table.place(), message).with_label("one too many");
        reader.push(problem.with_help("leave it out"));
    }
    let mut labels = BTreeMap::new();
    let read: Vec<_> =
        (1..).zip(tables).map(|(number, table)| read_solid(reader, table, number, &mut labels)).collect();
    let targets = if document.has(TARGET.name) {
        target::read_all(reader, document, &TARGET, KIND.id, (1, 12))
    } else {
        Some(Vec::new())
    };
    let (solids, targets) = (read.into_iter().collect::<Option<Vec<_>>>()?, targets?);
    if MOST < solids.len() {
        return None;
    }
    check_labels(reader, &targets, &labels)?;
    check_marks(reader, &solids, &targets)?;
    Some(Body::Solids(Solids { solids, targets }))
}

/// Reads one `[[solid]]`, the `number`th of its file.
fn read_solid(
    reader: &mut Reader<'_>,
    mut table: Table<'_>,
    number: usize,
    labels: &mut BTreeMap<String, Place>,
) -> Option<Solid> {
    table.check_keys(reader);
    let label =
        table.maybe(reader, "label")?.unwrap_or(Placed { value: format!("solid-{number}"), place: table.place() });
    let label = crate::spec::unique(reader, "label", label, labels);
    let Word(form) = table.get(reader, "form")?;
    let word = FORMS.get(form).copied()?;
    table.check_form(reader, word);
    let (at, width, height) = (table.get(reader, "at"), table.get(reader, "width"), table.get(reader, "height"));
    let front: Option<Ramp<Depth>> = table.get(reader, "front");
    let back = if word == "post" { front.clone() } else { table.get(reader, "back") };
    let form = match word {
        "box" => table.get(reader, "open").map(|open| SolidForm::Box { open }),
        "stairs" => table.get(reader, "steps").map(|steps| SolidForm::Stairs { steps }),
        "post" => Some(SolidForm::Post),
        _ => table.get(reader, "frames").map(|frames| SolidForm::Tunnel { frames, edges: true, middle: false }),
    };
    let weight = table.get(reader, "weight");
    let marks: Option<bool> = table.maybe(reader, "marks")?;
    let watch = if marks.unwrap_or(word != "stairs") { Watch::Marked } else { Watch::Plain };
    Some(Solid {
        label: label?,
        form: form?,
        at: at?,
        width: width?,
        height: height?,
        front: front?,
        back: back?,
        weight: weight?,
        watch,
        place: table.place(),
    })
}

/// A target has no label that a solid has.
fn check_labels(reader: &mut Reader<'_>, targets: &[Target], labels: &BTreeMap<String, Place>) -> Option<()> {
    let Some(target) = targets.iter().find(|target| labels.contains_key(&target.label)) else { return Some(()) };
    let message = format!("a `[[solid]]` and a `[[target]]` have the same label, `{}`", target.label);
    let problem = Diagnostic::error(codes::DUPLICATE, target.place, message)
        .with_label("a solid has this label")
        .with_help("give each a label of its own");
    reader.push(problem);
    None
}

/// Something on the page carries watch marks: else nobody notices that an eye has dropped out.
fn check_marks(reader: &mut Reader<'_>, solids: &[Solid], targets: &[Target]) -> Option<()> {
    let marked = solids.iter().any(|s| s.watch == Watch::Marked) || targets.iter().any(|target| target.watch);
    if marked {
        return Some(());
    }
    let place = solids.first()?.place;
    let forms = choices(&["box", "post", "tunnel"]);
    let problem = Diagnostic::error(codes::CONFLICT, place, "nothing on this page carries watch marks")
        .with_label("without marks")
        .with_help(format!("add a `[[target]]`, or another `[[solid]]` of form {forms}, with `marks = true`"));
    reader.push(problem);
    None
}

impl Solids {
    /// The art of one level: the solids, then the targets, which hide what stands behind them.
    fn scene(&self, level: u32) -> Scene {
        let mut features: Vec<Feature> = self.solids.iter().flat_map(|solid| solid.features(level)).collect();
        features.extend(self.targets.iter().map(|target| Feature { solid: true, ..target.feature(level) }));
        Scene { features }
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let marks = |watch| watch == Watch::Marked;
        let watch = self.solids.iter().any(|s| marks(s.watch)) || self.targets.iter().any(|target| target.watch);
        let count = self.solids.len() + self.targets.len();
        Words {
            goal: tongue.say("solids-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say("solids-window"),
                tongue.say("solids-nearest"),
                tongue.tell("solids-check", &[("count", count.into()), words::marks(watch)]),
                tongue.say("solids-edges"),
                tongue.say("solids-again"),
            ],
            see: words::with_marks(tongue.say("solids-see"), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}
