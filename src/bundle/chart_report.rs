//! The report beside the charts: what they show, in numbers.
//!
//! Like the report of an edition, the structs here are the file format and nothing else uses them.

use serde::Serialize;

use crate::layout::charts::Spot;
use crate::scene::Eyes;
use crate::spec::SetSpec;

use super::charts::Charting;
use super::grade_report::ViewerPart;
use super::json;
use super::report::fine;

/// The report as bytes.
pub(super) fn report(set: &SetSpec, pages: &[Charting]) -> Result<Vec<u8>, serde_json::Error> {
    json::to_vec(&Report {
        schema: 1,
        set: SetPart { id: &set.id, version: &set.version },
        viewer: ViewerPart::new(&set.viewer, &set.known, set.gate.as_deref()),
        pages: pages.iter().map(PagePart::new).collect(),
    })
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    set: SetPart<'a>,
    viewer: ViewerPart<'a>,
    pages: Vec<PagePart<'a>>,
}

#[derive(Serialize)]
struct SetPart<'a> {
    id: &'a str,
    version: &'a str,
}

/// A page of the charts.
#[derive(Debug, Serialize)]
pub struct PagePart<'a> {
    number: u32,
    id: &'a str,
    strand: &'static str,
    difficulty: Option<f64>,
    targets: Vec<TargetPart<'a>>,
}

#[derive(Debug, Serialize)]
struct TargetPart<'a> {
    id: &'a str,
    eyes: &'static str,
    /// Nearest and farthest.
    parallax_mm: [f64; 2],
    /// Its corners or the points along it: to the right of the midpoint of the eyes, and straight ahead of them.
    from_above_mm: Vec<[f64; 2]>,
}

impl<'a> PagePart<'a> {
    /// What the charts show of a page.
    pub fn new(page: &'a Charting) -> Self {
        Self {
            number: page.number,
            id: &page.id,
            strand: page.strand,
            difficulty: page.difficulty.map(fine),
            targets: page.spots.iter().map(TargetPart::new).collect(),
        }
    }
}

impl<'a> TargetPart<'a> {
    fn new(spot: &'a Spot) -> Self {
        let (near, far) = spot.parallax;
        Self {
            id: &spot.id,
            eyes: match spot.eyes {
                Eyes::Left => "left",
                Eyes::Right => "right",
                Eyes::Both => "both",
            },
            parallax_mm: [fine(near), fine(far)],
            from_above_mm: spot.corners().into_iter().map(|(x, z)| [fine(x), fine(z)]).collect(),
        }
    }
}
