//! `hoop`: one thick, large hoop toward or away, judged against a thin hoop that both eyes see on the page.

use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Companions, Depth, Effort, Eyes, Feature, Form, Role, Scaling, Scene, Shape, Size, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, deg, mm, seconds};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Angle, Mm, Seconds};

use crate::exercise::pace;
use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `hoop` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Hoop {
    /// Its outer width, as the angle that it fills at the viewing distance.
    pub size: Ramp<Size>,
    /// Its depth.
    pub depth: Ramp<Depth>,
    /// The width of its line.
    pub weight: Mm,
    /// Where the hoop on the page stands.
    pub reference: Beside,
    /// Whether it carries watch marks.
    pub watch: bool,
    /// How long to look, for the words.
    pub hold: Seconds,
    /// Where the `[hoop]` table is written.
    pub place: Place,
}

/// Where the hoop on the page stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Beside {
    /// Around the other, half as large again.
    Around,
    /// To its right, of the same size.
    Right {
        /// Between the two middles.
        apart: Mm,
    },
}

/// How large the hoop around is against the hoop inside it: leaves room for the sideways offsets of both half-images.
/// Design choice.
const AROUND: f64 = 1.5;
/// Width of the line of the hoop on the page, mm.
const THIN: f64 = 1.2;

/// The kind.
pub const KIND: Kind = Kind {
    id: "hoop",
    gated: false,
    strand: Strand::Depth,
    doc: "One thick hoop of at least 8 degrees floats toward or away. A thin hoop that both eyes see on the page stands \
          around it or beside it.",
    tables: &[&EXERCISE, &HOOP],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[
    COMMON,
    &[Field::default("hold", Takes::Time(seconds(1.0, 60.0)), r#""15 s""#, "How long to look, for the words.")],
]);

const HOOP: TableSpec = TableSpec {
    name: "hoop",
    form: TableForm::Single,
    groups: &[&[
        Field::required(
            "size",
            Takes::Ramp(&Takes::Size { length: mm(1.0, 160.0), angle: deg(8.0, 22.0) }),
            "Its outer width: an angle, which it fills at the viewing distance. A length is refused, since it may be \
             less than 8 degrees.",
        ),
        Field::required("depth", Takes::Ramp(&Takes::Depth), "How deep it stands."),
        Field::default("weight", Takes::Length(mm(2.0, 12.0)), r#""5 mm""#, "Width of its line."),
        Field::default(
            "reference",
            Takes::Choice(&["around", "beside"]),
            r#""around""#,
            "Where the thin hoop on the page stands: around the other, half as large again; or to its right, of the \
             same size.",
        ),
        Field::default(
            "apart",
            Takes::Length(mm(20.0, 150.0)),
            r#""90 mm""#,
            "Between the middles of the two hoops, where the reference stands beside.",
        ),
        Field::default("marks", Takes::Flag, "true", "Whether it carries watch marks, one for each eye."),
    ]],
    doc: "The hoop.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "hoop"
title = "The life ring"

[hoop]
size = "10 deg"
depth = { from = "2 pd toward", to = "0.5 pd toward", levels = 4 }
"#;

impl Draws for Hoop {
    fn levels(&self) -> Option<u32> {
        self.size.levels().or(self.depth.levels())
    }

    fn time(&self, _level: u32) -> Option<Seconds> {
        Some(Seconds(self.hold.0 + pace::FAR_LOOK))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn {
            effort: Effort::held(self.hold),
            ..Drawn::plain(self.scene(rung.level), self.words(rung.level, rung.tongue))
        }
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, exercise: &Table<'_>) -> Option<Body> {
    let hold = exercise.get(reader, "hold");
    let mut table = document.table(reader, &HOOP)?;
    table.check_keys(reader);
    let size = read_size(reader, &table);
    let (depth, weight) = (table.get(reader, "depth"), table.get(reader, "weight"));
    let apart = table.get(reader, "apart");
    let beside = table.one_of(reader, "reference", &[false, true]);
    let watch = table.get(reader, "marks");
    if beside == Some(false) && table.has("apart") {
        let problem = Diagnostic::error(
            codes::CONFLICT,
            table.place_of(reader, "apart"),
            "`apart` goes with `reference = \"beside\"` alone",
        )
        .with_label("the reference stands around")
        .with_help("leave out `apart`, or write `reference = \"beside\"`");
        reader.push(problem);
        return None;
    }
    let reference = if beside? { Beside::Right { apart: apart? } } else { Beside::Around };
    let place = table.place();
    Some(Body::Hoop(Hoop { size: size?, depth: depth?, weight: weight?, reference, watch: watch?, hold: hold?, place }))
}

/// A size that is an angle on every level.
fn read_size(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Ramp<Size>> {
    let size: Ramp<Size> = table.get(reader, "size")?;
    let is_angle = |level| matches!(size.at(level), Size::Angle(_));
    if (1..=size.levels().unwrap_or(1)).all(is_angle) {
        return Some(size);
    }
    let message = "`size` of `[hoop]` is an angle: a length may fill less than 8 deg at the viewing distance";
    let problem = Diagnostic::error(codes::UNIT, table.place_of(reader, "size"), message)
        .with_label("a length")
        .with_help("write for example `\"10 deg\"`, which is 70 mm at 40 cm");
    reader.push(problem);
    None
}

impl Hoop {
    /// The art of one level: the hoop and the reference.
    fn scene(&self, level: u32) -> Scene {
        let size = self.size.at(level);
        let (left, right) = match self.reference {
            Beside::Around => (0.0, 0.0),
            Beside::Right { apart } => (-apart.0 / 2.0, apart.0 / 2.0),
        };
        let around = match (self.reference, size) {
            (Beside::Around, Size::Angle(angle)) => Size::Angle(Angle::from_radians(angle.to_radians() * AROUND)),
            (_, size) => size,
        };
        let mut hoop = self.ring("hoop", Role::Target, left, size, self.weight, self.depth.at(level));
        hoop.companions = Companions { watch: self.watch, ..Companions::default() };
        Scene { features: vec![hoop, self.ring("reference", Role::Reference, right, around, Mm(THIN), Depth::Page)] }
    }

    fn ring(&self, id: &str, role: Role, x: f64, size: Size, weight: Mm, depth: Depth) -> Feature {
        Feature {
            id: id.to_owned(),
            role,
            eyes: Eyes::Both,
            form: Form::Shape { shape: Shape::Ring, at: At { x: Mm(x), y: Mm(0.0) }, size, weight, depth },
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }

    /// The words of one level.
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let see = tongue.tell("hoop-see", &[words::side(self.depth.at(level).side())]);
        Words {
            goal: tongue.say("hoop-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say("hoop-rest"),
                words::check_both(self.watch, tongue),
                tongue.say("hoop-thin"),
                tongue.tell("hoop-hold", &[words::time(self.hold, tongue)]),
            ],
            see: words::with_marks(see, self.watch, tongue),
            one_part: words::one_part(self.watch, tongue),
        }
    }
}
