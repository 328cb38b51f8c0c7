//! `scene`: a composition of the author's own: targets, lines and a field of dots at any depths, with the author's own words.

use std::collections::BTreeMap;

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Relief, Role, Scaling, Scene, Strand, Vertex};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::dots::field::{self, Dots};
use crate::exercise::ramp::Ramp;
use crate::exercise::target::{self, REACH, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung};

/// The parameters of a `scene` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Stage {
    /// What is looked at, at least one.
    pub targets: Vec<Target>,
    /// Lines around them.
    pub lines: Vec<Line>,
    /// A field of random dots around all of it, with the depth it lies at.
    pub dots: Option<(Dots, Ramp<Depth>)>,
    /// Whether targets hide what stands behind them.
    pub solid: bool,
}

/// A `[[line]]` through points with depths of their own.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Names it in the report.
    pub label: String,
    /// At least two points.
    pub points: Vec<At>,
    /// One for all points, or one for each.
    pub depths: Vec<Ramp<Depth>>,
    /// Whether the last point joins the first.
    pub closed: bool,
    /// Who sees it.
    pub eyes: Eyes,
    /// Its width on the page.
    pub weight: Mm,
    /// Where it is written.
    pub place: Place,
}

/// What a field of dots calls its own parts.
const OWN_IDS: [&str; 4] = ["dots", "border-left", "border-right", "border-corners"];
/// The most lines. Design choice.
const MOST_LINES: usize = 20;
/// The most points of a line. Design choice.
const MOST_POINTS: u32 = 40;

/// The kind.
pub const KIND: Kind = Kind {
    id: "scene",
    gated: false,
    strand: Strand::Depth,
    doc: "Targets, lines and a field of random dots stand where the author sets them. The kind cannot know what they are for: \
          `goal`, `do` and `see` must be written.",
    tables: &[&EXERCISE, &TARGET, &LINE, &DOTS],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = TableSpec {
    name: "exercise",
    form: TableForm::Single,
    groups: &[
        COMMON,
        &[Field::default("solid", Takes::Flag, "false", "Whether targets hide what stands behind them.")],
    ],
    doc: "What kind of exercise it is, and its words; `goal`, `do` and `see` are required.",
};

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::FREE],
    doc: "What is looked at, one to twelve.",
};

const LINE: TableSpec = TableSpec {
    name: "line",
    form: TableForm::Many,
    groups: &[&[
        Field::optional("label", Takes::Id, "Names the line in the report. Left out: `line-1` and so on."),
        Field::required(
            "points",
            Takes::List { of: &Takes::Point(REACH), min: 2, max: MOST_POINTS },
            "Where it runs: to the right of, and below, the middle of the art field.",
        ),
        Field::required(
            "depths",
            Takes::List { of: &Takes::Ramp(&Takes::Depth), min: 1, max: MOST_POINTS },
            "One depth for the whole line, or one for each point.",
        ),
        Field::default("closed", Takes::Flag, "false", "Whether the last point joins the first; then they differ."),
        Field::default("eyes", Takes::Choice(&["both", "left", "right"]), r#""both""#, "Which eye sees it."),
        Field::default("weight", Takes::Length(mm(0.2, 10.0)), r#""0.8 mm""#, "Width of the line on the page."),
    ]],
    doc: "A line around the targets, at most twenty.",
};

const DOTS: TableSpec = TableSpec {
    name: "dots",
    form: TableForm::Single,
    groups: &[field::KEYS, &[field::GROUND]],
    doc: "A flat field of random dots about the middle of the art field, with a border. Targets and lines stand clear in it. \
          Left out: there is none.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "scene"
title = "A gull over the wires"
goal = "Keep the gull single while your eyes follow the wires."
do = ["Look at the gull until you see only one.", "Follow a wire from left to right.", "Come back to the gull."]
see = "One gull in front of two wires that run away from you."

[[target]]
shape = "drawing"
file = "art/gull.svg"
size = "60 mm"
depth = "2 pd toward"

[[line]]
points = [["-80 mm", "34 mm"], ["80 mm", "26 mm"]]
depths = ["page", "2 pd away"]
"#;

impl Draws for Stage {
    fn levels(&self) -> Option<u32> {
        let lines = || self.lines.iter().flat_map(|line| &line.depths).find_map(Ramp::levels);
        let dots = || self.dots.as_ref().and_then(|(dots, ground)| ground.levels().or(dots.levels()));
        self.targets.iter().find_map(Target::levels).or_else(lines).or_else(dots)
    }

    fn is_seeded(&self) -> bool {
        self.dots.is_some()
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let said = ["goal", "do", "see"].map(|key| check_said(reader, exercise, key));
    let solid = exercise.get(reader, "solid");
    let targets = target::read_all(reader, document, &TARGET, KIND.id, (1, 12));
    let lines = read_lines(reader, document, targets.as_deref().unwrap_or_default());
    let dots = read_dots(reader, document);
    let stage = Stage { targets: targets?, lines: lines?, dots: dots?, solid: solid? };
    let named = check_labels(reader, &stage);
    (named && said.iter().all(|said| *said)).then_some(Body::Stage(stage))
}

/// Pushes the labels that a field of dots gives to its own parts.
fn check_labels(reader: &mut Reader<'_>, stage: &Stage) -> bool {
    let targets = stage.targets.iter().map(|target| (&target.label, target.place));
    let labels = targets.chain(stage.lines.iter().map(|line| (&line.label, line.place)));
    let taken: Vec<_> = labels.filter(|(label, _)| OWN_IDS.contains(&label.as_str())).collect();
    let taken = if stage.dots.is_some() { taken } else { Vec::new() };
    for (label, place) in &taken {
        let problem = Diagnostic::error(codes::DUPLICATE, *place, format!("`{label}` is a part of the field of dots"))
            .with_label("the same name again")
            .with_help("give it another `label`");
        reader.push(problem);
    }
    taken.is_empty()
}

/// Pushes that words are missing which the kind cannot find by itself.
fn check_said(reader: &mut Reader<'_>, exercise: &Table<'_>, key: &'static str) -> bool {
    if exercise.has(key) {
        return true;
    }
    let message = format!("a `scene` has no words of its own: `[exercise]` has no `{key}`");
    let takes = EXERCISE.field(key).map_or(String::new(), |field| field.takes.words());
    let problem = Diagnostic::error(codes::MISSING_KEY, exercise.place(), message)
        .with_label(format!("`{key}` is missing"))
        .with_help(format!("add `{key}`: {takes}"));
    reader.push(problem);
    false
}

/// The field of dots, where there is one. `None`: a problem has been pushed.
fn read_dots(reader: &mut Reader<'_>, document: &Document<'_>) -> Option<Option<(Dots, Ramp<Depth>)>> {
    if !document.has(DOTS.name) {
        return Some(None);
    }
    let mut table = document.optional_table(reader, &DOTS)?;
    table.check_keys(reader);
    let (dots, ground) = (Dots::read(reader, &table), table.get(reader, "ground"));
    Some(Some((dots?, ground?)))
}

fn read_lines(reader: &mut Reader<'_>, document: &Document<'_>, targets: &[Target]) -> Option<Vec<Line>> {
    let tables = document.tables(reader, &LINE);
    if let Some(table) = tables.get(MOST_LINES) {
        let message = format!("a `scene` takes at most {MOST_LINES} `[[line]]`s, found {}", tables.len());
        let problem =
            Diagnostic::error(codes::LIST, table.place(), message).with_label("one too many").with_help("leave it out");
        reader.push(problem);
        return None;
    }
    let mut labels: BTreeMap<String, Place> = targets.iter().map(|t| (t.label.clone(), t.place)).collect();
    let lines: Vec<_> = (1..).zip(tables).map(|(n, table)| read_line(reader, table, n, &mut labels)).collect();
    lines.into_iter().collect()
}

fn read_line(
    reader: &mut Reader<'_>,
    mut table: Table<'_>,
    number: usize,
    labels: &mut BTreeMap<String, Place>,
) -> Option<Line> {
    table.check_keys(reader);
    let label =
        table.maybe(reader, "label")?.unwrap_or(Placed { value: format!("line-{number}"), place: table.place() });
    let label = crate::spec::unique(reader, "label", label, labels);
    let points: Option<Vec<Placed<At>>> = table.get(reader, "points");
    let depths: Option<Vec<Ramp<Depth>>> = table.get(reader, "depths");
    let closed = table.get(reader, "closed");
    let eyes = table.one_of(reader, "eyes", &[Eyes::Both, Eyes::Left, Eyes::Right]);
    let weight = table.get(reader, "weight");
    let place = table.place_of(reader, "depths");
    let (points, depths) = (points?, depths?);
    check_points(reader, &points, closed?, depths.len(), place)?;
    Some(Line {
        label: label?,
        points: points.into_iter().map(|point| point.value).collect(),
        depths,
        closed: closed?,
        eyes: eyes?,
        weight: weight?,
        place,
    })
}

/// Points that follow one another differ, and depths are one, or as many as points.
fn check_points(
    reader: &mut Reader<'_>,
    points: &[Placed<At>],
    closed: bool,
    depths: usize,
    place: Place,
) -> Option<()> {
    let mut pairs = points.iter().zip(points.iter().skip(1)).collect::<Vec<_>>();
    if closed {
        pairs.extend(points.first().zip(points.last()));
    }
    if let Some((_, again)) = pairs.into_iter().find(|(a, b)| a.value == b.value) {
        let (x, y) = (again.value.x.0, again.value.y.0);
        let problem =
            Diagnostic::error(codes::LIST, again.place, format!("`points` lists ({x}, {y}) mm twice in a row"))
                .with_label("the same point again")
                .with_help("leave it out");
        reader.push(problem);
        return None;
    }
    if depths == 1 || depths == points.len() {
        return Some(());
    }
    let message = format!("`depths` takes 1 entry, or one for each of the {} points, found {depths}", points.len());
    let problem = Diagnostic::error(codes::LIST, place, message)
        .with_label(format!("{depths} entries"))
        .with_help("write one depth, or one for each point");
    reader.push(problem);
    None
}

impl Stage {
    /// The art of one level: the dots, the lines, then the targets.
    fn scene(&self, rung: &Rung<'_>) -> Scene {
        let level = rung.level;
        let dots = self.dots.iter().flat_map(|(dots, ground)| dots.with_relief(rung, Relief::Flat(ground.at(level))));
        let targets = self.targets.iter();
        let targets = targets.map(|target| Feature { solid: self.solid, ..target.feature(level) });
        let lines = self.lines.iter().map(|line| line.feature(level));
        Scene { features: dots.chain(lines).chain(targets).collect() }
    }

    /// The rows of what one eye alone sees; the other words are the author's.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = self.targets.iter().any(|target| target.watch);
        Words { one_part: words::one_part(watch, tongue), ..Words::default() }
    }
}

impl Line {
    fn feature(&self, level: u32) -> Feature {
        let depth = |i: usize| self.depths.get(i).or(self.depths.first()).map_or(Depth::Page, |ramp| ramp.at(level));
        let vertices = self.points.iter().enumerate().map(|(i, &at)| Vertex { at, depth: depth(i) }).collect();
        Feature {
            id: self.label.clone(),
            role: Role::Reference,
            eyes: self.eyes,
            form: Form::Path { vertices, closed: self.closed, smooth: false, weight: self.weight },
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }
}
