//! The colour side of an edition in reports: what was known, what each eye is forecast to see, and what was traded.
//!
//! The structs here are the file format of `report.json` and of `depthpress inks --json`. Shares have 4 decimals; a
//! number that is infinite is null.

use serde::Serialize;

use crate::colour::{Cmyk, EyeReport, FilterModel, Ghost, InkPlan, Inks};
use crate::layout::GhostPatch;
use crate::scene::Eye;
use crate::spec::{Edition, MediumSource};

use super::report::fine;

/// What is known of the colours of an edition, and what was solved.
#[derive(Debug, Serialize)]
pub struct ColourPart<'a> {
    glasses: [FilterPart; 2],
    medium: MediumPart<'a>,
    left: EyePart,
    right: EyePart,
    /// How much brighter the world of one eye is.
    imbalance: Option<f64>,
    /// The worse ghost of the two eyes.
    ghost: Option<f64>,
    /// `fine`, `faint`, `strong` or `refused`.
    verdict: &'static str,
    /// The ghost that was asked for.
    ghost_aim: f64,
    /// Contrast ratio of words on the ground without glasses.
    text_contrast: f64,
    /// What was given up, and what could not be had: sentences.
    traded: Vec<String>,
    recipes: RecipesPart,
    /// Whether the PDF has these recipes in place of sRGB; left out where it has not.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    cmyk: bool,
    /// What the PDF conforms to, where that is less than it is in sRGB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pdf: Option<&'static str>,
    /// A ghost above the limit that the author accepts.
    #[serde(skip_serializing_if = "Option::is_none")]
    accepted: Option<AcceptedPart<'a>>,
    /// What the numbers of the ghost page stand for, where there is one.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    ghost_page: Vec<PatchPart>,
}

#[derive(Debug, Serialize)]
struct FilterPart {
    eye: &'static str,
    colour: &'static str,
    /// `ideal`, `measured` or `leak`.
    model: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    leak: Option<f64>,
}

#[derive(Debug, Serialize)]
struct MediumPart<'a> {
    /// `screen` or `print`.
    kind: &'static str,
    /// Whether the spec leaves it open.
    default: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    screen: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    solids: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    lamp: Option<&'static str>,
}

/// Luminances are shares of the white of the medium without a filter.
#[derive(Debug, Serialize)]
struct EyePart {
    ground: f64,
    own: f64,
    other: f64,
    overlap: f64,
    contrast: f64,
    signal: f64,
    ghost: Option<f64>,
    overlap_ghost: Option<f64>,
    brightness: f64,
}

/// Cyan, magenta, yellow and black, 0 to 1.
#[derive(Debug, Serialize)]
struct RecipesPart {
    left: [f64; 4],
    right: [f64; 4],
    both: [f64; 4],
    ground: [f64; 4],
    text: [f64; 4],
}

/// The patch on which the other eye's mark vanishes to this eye, if so much leaks through its filter.
#[derive(Debug, Serialize)]
struct PatchPart {
    eye: &'static str,
    number: u32,
    /// For `leak` in `[glasses]`, as a share of one.
    leak: f64,
    patch: String,
    mark: String,
    /// The ghost that this eye then has on the pages of the edition.
    ghost: Option<f64>,
}

#[derive(Debug, Serialize)]
struct AcceptedPart<'a> {
    limit: f64,
    reason: &'a str,
}

/// The inks, as `#rrggbb`.
#[derive(Debug, Serialize)]
pub struct InksPart {
    left: String,
    right: String,
    both: String,
    ground: String,
    text: String,
}

impl InksPart {
    /// These inks.
    pub fn new(inks: &Inks) -> Self {
        Self {
            left: inks.left.hex(),
            right: inks.right.hex(),
            both: inks.both.hex(),
            ground: inks.ground.hex(),
            text: inks.text.hex(),
        }
    }
}

impl<'a> ColourPart<'a> {
    /// The colours of an edition, with the patches of its ghost page.
    pub fn new(edition: &'a Edition, plan: &InkPlan, patches: &[GhostPatch]) -> Self {
        let colour = &edition.colour;
        let accepted = colour.accepted.as_ref();
        Self {
            glasses: [filter("left", &edition.glasses.left), filter("right", &edition.glasses.right)],
            medium: medium(&colour.source),
            left: eye(&plan.left),
            right: eye(&plan.right),
            imbalance: finite(plan.imbalance),
            ghost: finite(plan.ghost()),
            verdict: verdict(plan.verdict()),
            ghost_aim: fine(colour.wishes.ghost),
            text_contrast: fine(plan.text_contrast),
            traded: plan.traded.iter().map(ToString::to_string).collect(),
            recipes: RecipesPart {
                left: recipe(plan.recipes.left),
                right: recipe(plan.recipes.right),
                both: recipe(plan.recipes.both),
                ground: recipe(plan.recipes.ground),
                text: recipe(plan.recipes.text),
            },
            cmyk: colour.cmyk,
            pdf: colour.cmyk.then_some("PDF/UA-1"),
            ghost_page: patches.iter().map(patch).collect(),
            accepted: accepted.map(|a| AcceptedPart { limit: fine(a.limit), reason: &a.reason }),
        }
    }
}

fn filter(eye: &'static str, model: &FilterModel) -> FilterPart {
    let (name, leak) = match model {
        FilterModel::Ideal(_) => ("ideal", None),
        FilterModel::Measured { .. } => ("measured", None),
        FilterModel::Leak { leak, .. } => ("leak", Some(fine(*leak))),
    };
    FilterPart { eye, colour: model.name(), model: name, leak }
}

fn medium(source: &MediumSource) -> MediumPart<'_> {
    let screen = |default, name| MediumPart { kind: "screen", default, screen: Some(name), solids: None, lamp: None };
    match source {
        MediumSource::Unsaid => screen(true, "ideal"),
        MediumSource::Screen(name) => screen(false, name),
        MediumSource::Print { solids, lamp } => {
            MediumPart { kind: "print", default: false, screen: None, solids: Some(solids), lamp: Some(lamp.name()) }
        }
    }
}

fn eye(report: &EyeReport) -> EyePart {
    EyePart {
        ground: fine(report.ground),
        own: fine(report.own),
        other: fine(report.other),
        overlap: fine(report.overlap),
        contrast: fine(report.contrast),
        signal: fine(report.signal),
        ghost: finite(report.ghost),
        overlap_ghost: finite(report.overlap_ghost),
        brightness: fine(report.brightness),
    }
}

fn recipe(Cmyk { c, m, y, k }: Cmyk) -> [f64; 4] {
    [c, m, y, k].map(fine)
}

fn patch(patch: &GhostPatch) -> PatchPart {
    PatchPart {
        eye: eye_name(patch.eye),
        number: patch.number,
        leak: fine(patch.leak),
        patch: patch.patch.hex(),
        mark: patch.mark.hex(),
        ghost: finite(patch.ghost),
    }
}

const fn eye_name(eye: Eye) -> &'static str {
    match eye {
        Eye::Left => "left",
        Eye::Right => "right",
    }
}

fn finite(value: f64) -> Option<f64> {
    value.is_finite().then(|| fine(value))
}

/// How bad a ghost is, as a word.
pub const fn verdict(ghost: Ghost) -> &'static str {
    match ghost {
        Ghost::Fine => "fine",
        Ghost::Faint => "faint",
        Ghost::Strong => "strong",
        Ghost::Refused => "refused",
    }
}
