//! `columns`: lines of text at stepped depths, so that reading down a column leads toward the reader or away.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{Depth, Eyes, Feature, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::lines;
use crate::exercise::parts::{self, Part};
use crate::exercise::ramp::{Blend, Ramp};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `columns` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Columns {
    /// One or two, from the left.
    pub columns: Vec<Column>,
    /// The height of a capital letter.
    pub size: Ramp<Mm>,
    /// Whether each carries watch marks.
    pub marks: bool,
}

/// A column of lines.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// At least two, from the top.
    pub lines: Vec<String>,
    /// How deep the first line stands.
    pub first: Ramp<Depth>,
    /// How deep the last line stands; those between step evenly in demand.
    pub last: Ramp<Depth>,
    /// Where it is written.
    pub place: Place,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "columns",
    gated: false,
    strand: Strand::Smooth,
    doc: "Lines of text stand at stepped depths: reading down a column leads toward the reader or away, in even steps of \
          demand.",
    tables: &[&EXERCISE, &COLUMN],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[
        lines::SIZE,
        lines::LARGE,
        Field::default(
            "marks",
            Takes::Flag,
            "true",
            "Whether each column carries watch marks: a bar at its first line, a wedge at its last.",
        ),
    ],
]);

const COLUMN: TableSpec = TableSpec {
    name: "column",
    form: TableForm::Many,
    groups: &[&[
        Field::required("lines", Takes::List { of: &Takes::Text(40), min: 2, max: 12 }, "Its lines, from the top.")
            .said(),
        Field::required("first", Takes::Ramp(&Takes::Depth), "How deep its first line stands."),
        Field::required("last", Takes::Ramp(&Takes::Depth), "How deep its last line stands."),
    ]],
    doc: "A column of text; one, or two side by side.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "columns"
title = "Down the quay steps"
size = "4.3 mm"

[[column]]
lines = ["The last boat", "comes in at dusk.", "A lamp is lit", "on the pier."]
first = "0.5 pd away"
last = "2 pd toward"
"#;

/// The room of a column where there is one and where there are two, mm: the field less what depth takes.
const ROOM: [f64; 2] = [150.0, 78.0];
/// From the middle of the field to the left edge of each of two columns, mm.
const LEFT: [f64; 2] = [-82.0, 4.0];

impl Draws for Columns {
    fn levels(&self) -> Option<u32> {
        let of = |column: &Column| column.first.levels().or(column.last.levels());
        self.size.levels().or_else(|| self.columns.iter().find_map(of))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let size = lines::read_size(reader, exercise);
    let marks = exercise.get(reader, "marks");
    if !document.has(COLUMN.name) {
        document.table(reader, &COLUMN);
        return None;
    }
    let tables = document.tables(reader, &COLUMN);
    if let Some(third) = tables.get(2) {
        let message = format!("a `columns` takes 1 to 2 `[[column]]`s, found {}", tables.len());
        let problem =
            Diagnostic::error(codes::LIST, third.place(), message).with_label("one too many").with_help("leave it out");
        reader.push(problem);
        return None;
    }
    let room = ROOM[tables.len().saturating_sub(1).min(1)];
    let columns: Vec<_> = tables.into_iter().map(|table| read_column(reader, table, size.as_ref(), room)).collect();
    let columns = columns.into_iter().collect::<Option<Vec<_>>>();
    Some(Body::Columns(Columns { columns: columns?, size: size?, marks: marks? }))
}

fn read_column(reader: &mut Reader<'_>, mut table: Table<'_>, size: Option<&Ramp<Mm>>, room: f64) -> Option<Column> {
    table.check_keys(reader);
    let lines: Option<Vec<Placed<String>>> = table.get(reader, "lines");
    let (first, last) = (table.get(reader, "first"), table.get(reader, "last"));
    let lines = lines?;
    let fine = lines::can_be_set(reader, &lines) && lines::fit(reader, &lines, size?, room);
    let lines = lines.into_iter().map(|line| line.value).collect();
    let column = Column { lines, first: first?, last: last?, place: table.place() };
    fine.then_some(column)
}

impl Columns {
    fn scene(&self, level: u32) -> Scene {
        let size = self.size.at(level).0;
        let alone = self.columns.len() == 1;
        let draw = |(index, column): (usize, &Column)| {
            let width = column.lines.iter().map(|line| lines::line_width(line, size)).fold(0.0, f64::max);
            let left = if alone { -width / 2.0 } else { LEFT[index] };
            let name = if alone { String::new() } else { format!("column-{}-", index + 1) };
            column.features(level, &name, left, size, self.marks)
        };
        Scene { features: self.columns.iter().enumerate().flat_map(draw).collect() }
    }

    fn words(&self, tongue: &Tongue) -> Words {
        Words {
            goal: tongue.say("columns-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say("columns-start"),
                tongue.tell("columns-check", &[words::marks(self.marks)]),
                tongue.say("columns-aloud"),
                tongue.say("columns-rest"),
            ],
            see: words::with_marks(tongue.say("columns-see"), self.marks, tongue),
            one_part: words::one_part(self.marks, tongue),
        }
    }
}

impl Column {
    fn features(&self, level: u32, name: &str, left: f64, size: f64, marks: bool) -> Vec<Feature> {
        let (first, last) = (self.first.at(level), self.last.at(level));
        let count = self.lines.len();
        let (above, below) = parts::WATCH_ROOM;
        let middle = if marks { (above - below) / 2.0 } else { 0.0 };
        let baselines: Vec<f64> = lines::baselines(count, size, middle).collect();
        let mut features = Vec::new();
        for ((index, line), &baseline) in self.lines.iter().enumerate().zip(&baselines) {
            let depth = first.blend(&last, index as f64 / (count - 1) as f64);
            let part = Part::target(format!("{name}text-line-{}", index + 1), Eyes::Both, &depth, self.place);
            features.push(lines::line(part, line, (left, baseline), size));
        }
        if marks {
            let (top, bottom) = (baselines[0] - size, baselines[count - 1] + size * 0.3);
            // Above and below the beginnings of the lines, where reading starts.
            let at = (left + 4.0, top);
            let marks = parts::watch_marks(at, &first, bottom, &last, self.place);
            features.extend(marks.map(|mark| Feature { id: format!("{name}{}", mark.id), ..mark }));
        }
        features
    }
}

#[cfg(test)]
mod tests {
    use crate::diagnostics::Sources;
    use crate::outline;
    use crate::scene::Shape;

    use super::*;

    fn place() -> Place {
        Place::start_of(Sources::default().add("a.toml", ""))
    }

    #[test]
    fn lines_step_evenly_from_the_first_depth_to_the_last_and_start_at_one_edge() {
        use crate::scene::{Form, Side};
        use crate::units::PrismDioptre;
        let lines = ["A lamp", "jib", "is lit"].map(str::to_owned).to_vec();
        let of = |pd, side| Ramp::Same(Depth::Demand(PrismDioptre(pd), side));
        let column = Column { lines, first: of(1.0, Side::Away), last: of(3.0, Side::Toward), place: place() };
        let columns = Columns { columns: vec![column], size: Ramp::Same(Mm(5.0)), marks: true };
        let scene = columns.scene(1);
        let mut shares = Vec::new();
        for (feature, text) in scene.features.iter().zip(["A lamp", "jib", "is lit"]) {
            let Form::Shape { shape, at, depth, .. } = &feature.form else { panic!() };
            assert_eq!(*shape, Shape::Text(text.to_owned()));
            let left = at.x.0 - outline::line_box(text).width() * 2.5;
            shares.push((left, depth.clone()));
        }
        assert!(shares.iter().all(|(left, _)| (left - shares[0].0).abs() < 1e-9), "{shares:?}");
        let ends = (Depth::Demand(PrismDioptre(1.0), Side::Away), Depth::Demand(PrismDioptre(3.0), Side::Toward));
        assert_eq!(shares[0].1, ends.0);
        assert_eq!(shares[1].1, Depth::Between(Box::new(ends.clone()), 0.5));
        assert_eq!(shares[2].1, ends.1);
        let marks: Vec<_> = scene.features[3..].iter().map(|f| (f.id.as_str(), f.eyes)).collect();
        assert_eq!(marks, [("bar", Eyes::Left), ("wedge", Eyes::Right)]);
    }
}
