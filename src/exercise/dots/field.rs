//! The `[dots]` of an exercise: the keys that every field of dots has, and the features they make.

use crate::diagnostics::Place;
use crate::exercise::Rung;
use crate::exercise::ramp::Ramp;
use crate::scene::{
    At, Companions, Depth, DotField, DotFigure, Eyes, Feature, Form, Relief, Role, Scaling, Shape, Size,
};
use crate::spec::Share;
use crate::spec::field::{Field, Takes, arcmin, mm, percent};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use super::border;

/// What `[dots]` says of the field itself.
#[derive(Debug, Clone, PartialEq)]
pub struct Dots {
    /// Its width; left out: `WIDTH`.
    pub width: Mm,
    /// Its height, where it is written.
    pub height: Option<Mm>,
    /// The side of a dot.
    pub dot: Ramp<Size>,
    /// The share of the field that dots cover.
    pub density: Ramp<Share>,
    /// The correlation between what the two eyes get.
    pub correlation: Ramp<Share>,
    /// How much a drawn line helps, 0 to 3.
    pub cue: Ramp<u32>,
    /// Where it is written.
    pub place: Place,
}

/// Width of a field where none is written, mm: with its border it leaves a margin of 4 mm in the art field.
const WIDTH: &str = "\"164 mm\"";
/// Height of a field where none is written, mm: with its border it leaves a margin of 3 mm in the art field.
const HEIGHT: f64 = 105.0;
/// Height of a number beside a field, mm, and of the band in which it stands.
const NUMBER: f64 = 4.5;
const BAND: f64 = 8.0;
/// Width of a cue's line, mm: faint at cue 1, strong at 2 and 3 (design choice: 0.05 and 0.2 degrees at 40 cm).
const FAINT: f64 = 0.35;
const STRONG: f64 = 1.4;

/// What each level of a cue draws, for the spec reference.
const CUE_DOC: &str = "How much a drawn line helps. 0: dots alone. 1: a thin line of 0.35 mm along the edge of each \
                       figure, at its depth. 2: a strong line of 1.4 mm. 3: the strong line with a clear margin that \
                       hides the dots beside it.";

/// Keys of `[dots]` that every kind has.
pub const KEYS: &[Field] = &[
    Field::default("width", Takes::Length(mm(40.0, 172.0)), WIDTH, "Width of the field, without its border."),
    Field::optional(
        "height",
        Takes::Length(mm(30.0, 112.0)),
        "Height of the field, without its border. Left out: as high as fits, 105 mm without numbers beside it.",
    ),
    Field::default(
        "dot",
        Takes::Ramp(&Takes::Size { length: mm(0.2, 5.0), angle: arcmin(2.0, 40.0) }),
        r#""0.8 mm""#,
        "The side of a dot.",
    ),
    Field::default(
        "density",
        Takes::Ramp(&Takes::Share(percent(1.0, 75.0))),
        r#""30 %""#,
        "The share of the field that dots cover.",
    ),
    Field::default(
        "correlation",
        Takes::Ramp(&Takes::Share(percent(10.0, 100.0))),
        r#""100 %""#,
        "The correlation between what the two eyes get: at `100 %` both get the same dots, below it some are drawn anew for each \
         eye. Less is harder.",
    ),
];

/// How much a drawn line helps, of kinds with figures.
pub const CUE: Field = Field::default("cue", Takes::Ramp(&Takes::Count { min: 0, max: 3 }), "0", CUE_DOC);

/// The depth of the ground.
pub const GROUND: Field = Field::required(
    "ground",
    Takes::Ramp(&Takes::Depth),
    "The depth of the dots around the figures; the border is on the page. On the page the dots are black, and without \
     glasses a figure shows by its colours: put ground and figure on either side of the page, as far each.",
);

/// How many pages of the same task a level has.
pub const VARIANTS: Field = Field::default(
    "variants",
    Takes::Count { min: 1, max: 6 },
    "1",
    "How many pages a level has: the same task with other draws, so that no answer is learned by heart.",
);

/// Where numbers stand beside a field: in a band above it, and in one below it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Numbers {
    /// Their places above the field, from its middle, with what is written there.
    pub above: Vec<(f64, String)>,
    /// The same below it.
    pub below: Vec<(f64, String)>,
}

impl Dots {
    /// Reads the keys of [`KEYS`].
    pub fn read(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Self> {
        let (width, height) = (table.get(reader, "width"), table.maybe(reader, "height"));
        let (dot, density) = (table.get(reader, "dot"), table.get(reader, "density"));
        let (correlation, cue) = (table.get(reader, "correlation"), Self::read_cue(reader, table));
        Some(Self {
            width: width?,
            height: height?,
            dot: dot?,
            density: density?,
            correlation: correlation?,
            cue: cue?,
            place: table.place(),
        })
    }

    /// Kinds without figures have no cue.
    fn read_cue(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Ramp<u32>> {
        if table.knows("cue") { table.get(reader, "cue") } else { Some(Ramp::Same(0)) }
    }

    /// How many levels its ramps have; `None` without a ramp.
    pub fn levels(&self) -> Option<u32> {
        let looks = self.dot.levels().or(self.density.levels());
        looks.or(self.correlation.levels()).or(self.cue.levels())
    }

    /// Width and height of the field with so many bands of numbers beside it, mm.
    pub fn extent(&self, bands: u32) -> (f64, f64) {
        let height = self.height.map_or(HEIGHT - 2.0 * BAND * f64::from(bands.min(1)), |mm| mm.0);
        (self.width.0, height)
    }

    /// A page of figures on a flat ground: the dots, the lines that help, the numbers, the border.
    pub fn with_figures(
        &self,
        rung: &Rung<'_>,
        ground: Depth,
        figures: Vec<DotFigure>,
        numbers: &Numbers,
    ) -> Vec<Feature> {
        let cues = self.cues(rung.level, &figures);
        self.page(rung, Relief::Flat(ground), figures, cues, numbers)
    }

    /// A page whose ground itself has a form: the dots and the border.
    pub fn with_relief(&self, rung: &Rung<'_>, relief: Relief) -> Vec<Feature> {
        self.page(rung, relief, Vec::new(), Vec::new(), &Numbers::default())
    }

    fn page(
        &self,
        rung: &Rung<'_>,
        ground: Relief,
        figures: Vec<DotFigure>,
        cues: Vec<Feature>,
        numbers: &Numbers,
    ) -> Vec<Feature> {
        let numbered = !numbers.above.is_empty() || !numbers.below.is_empty();
        let (width, height) = self.extent(u32::from(numbered));
        let field = DotField {
            at: At::default(),
            width: Mm(width),
            height: Mm(height),
            dot: self.dot.at(rung.level),
            density: self.density.at(rung.level).0,
            correlation: self.correlation.at(rung.level).0,
            ground,
            figures,
            key: format!("{}/dots", rung.key),
        };
        let mut features = vec![self.feature("dots", Role::Field, Form::Dots(Box::new(field)))];
        features.extend(cues);
        let side = |places: &[(f64, String)], y: f64| -> Vec<Feature> {
            places.iter().map(|(x, words)| self.number(words, *x, y)).collect()
        };
        let reach = (height + BAND) / 2.0;
        features.extend(side(&numbers.above, -reach));
        features.extend(side(&numbers.below, reach));
        let height = if numbered { height + 2.0 * BAND } else { height };
        features.extend(border::features(width, height, self.place));
        features
    }

    /// The lines along the edges of figures, as the level's cue asks for.
    fn cues(&self, level: u32, figures: &[DotFigure]) -> Vec<Feature> {
        let Some((weight, solid)) = line_of(self.cue.at(level)) else { return Vec::new() };
        let line = |figure: &DotFigure| {
            let Relief::Flat(depth) = &figure.depth else { return None };
            let form = Form::Shape {
                shape: Shape::Outline(Box::new(figure.shape.clone())),
                at: figure.at,
                size: figure.size,
                weight,
                depth: depth.clone(),
            };
            Some(Feature { solid, ..self.feature(&format!("{}-edge", figure.id), Role::Guide, form) })
        };
        figures.iter().filter_map(line).collect()
    }

    fn number(&self, words: &str, x: f64, y: f64) -> Feature {
        let form = Form::Shape {
            shape: Shape::Text(words.to_owned()),
            at: At { x: Mm(x), y: Mm(y) },
            size: Size::Length(Mm(NUMBER)),
            weight: Mm(NUMBER),
            depth: Depth::Page,
        };
        self.feature(&format!("number-{words}"), Role::Number, form)
    }

    fn feature(&self, id: &str, role: Role, form: Form) -> Feature {
        Feature {
            id: id.to_owned(),
            role,
            eyes: Eyes::Both,
            form,
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }
}

/// The width of a cue's line and whether it hides the dots beside it; `None` without a line.
fn line_of(cue: u32) -> Option<(Mm, bool)> {
    match cue {
        0 => None,
        1 => Some((Mm(FAINT), false)),
        2 => Some((Mm(STRONG), false)),
        _ => Some((Mm(STRONG), true)),
    }
}
