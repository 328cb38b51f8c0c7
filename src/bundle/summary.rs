//! The one report over all readers: who the sets are made for, by id, and what each asks.
//!
//! The structs here are the file format, and that of the parts that shards leave: they are read back to be joined.

use serde::{Deserialize, Serialize};

use crate::optics::Viewer;
use crate::spec::SetSpec;

use super::json;
use super::report::{Tool, fine};

/// What was made for one reader.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ReaderSummary {
    /// Their id.
    pub id: String,
    /// Their viewer, with what `[viewer]` fills in.
    pub viewer: ViewerSummary,
    /// Lowest and highest demand of all targets of all pages: positive toward; null without a target.
    pub demand_pd: Option<[f64; 2]>,
    /// Problems that keep their set from being made.
    pub errors: u64,
    /// Findings that the author should look at.
    pub warnings: u64,
    /// Their editions in the order of the set; none where there are errors.
    pub editions: Vec<EditionSummary>,
}

/// The viewer of a reader.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ViewerSummary {
    /// From the eyes to the page.
    pub distance_mm: f64,
    /// Between the pupils.
    pub ipd_mm: f64,
    /// Smallest and largest.
    pub ipd_range_mm: [f64; 2],
    /// What pages may ask; null where it is not known.
    pub zone: Option<ZoneSummary>,
    /// What the pages ride on; null without.
    pub base: Option<BaseSummary>,
}

/// The zone of a reader, as amounts on both sides.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ZoneSummary {
    /// The most away.
    pub away_pd: f64,
    /// What bounds it.
    pub away_bound: String,
    /// The most toward.
    pub toward_pd: f64,
    /// What bounds it.
    pub toward_bound: String,
}

/// The base of a reader.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BaseSummary {
    /// Positive toward.
    pub horizontal_pd: f64,
    /// Positive where the right eye's picture lies higher.
    pub vertical_pd: f64,
}

/// An edition of a reader.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct EditionSummary {
    /// Its id.
    pub id: String,
    /// Its own report, from the folder of this one.
    pub report: String,
    /// How many pages were written.
    pub pages: u64,
}

impl ViewerSummary {
    /// Of a viewer, rounded as all reports are.
    pub fn new(viewer: &Viewer) -> Self {
        let (low, high) = viewer.ipd_range;
        let base = viewer.base;
        Self {
            distance_mm: fine(viewer.distance.0),
            ipd_mm: fine(viewer.ipd.0),
            ipd_range_mm: [low, high].map(|mm| fine(mm.0)),
            zone: viewer.zone.map(|zone| ZoneSummary {
                away_pd: fine(zone.away.0),
                away_bound: zone.away_bound.name().to_owned(),
                toward_pd: fine(zone.toward.0),
                toward_bound: zone.toward_bound.name().to_owned(),
            }),
            base: (!base.is_none())
                .then(|| BaseSummary { horizontal_pd: fine(base.horizontal.0), vertical_pd: fine(base.vertical.0) }),
        }
    }
}

#[derive(Serialize)]
struct Report<'a> {
    schema: u32,
    tool: Tool,
    set: SetPart<'a>,
    readers: &'a [ReaderSummary],
}

#[derive(Serialize)]
struct SetPart<'a> {
    id: &'a str,
    version: &'a str,
}

/// The report as JSON.
pub(super) fn report(set: &SetSpec, readers: &[ReaderSummary]) -> Result<Vec<u8>, serde_json::Error> {
    json::to_vec(&Report { schema: 1, tool: Tool::THIS, set: SetPart { id: &set.id, version: &set.version }, readers })
}

/// Joins what shards made: one summary a reader, in this order, with all their editions in the order of the set.
pub(super) fn join<'a>(
    set: &SetSpec,
    ids: impl Iterator<Item = &'a str>,
    parts: Vec<Vec<ReaderSummary>>,
) -> Vec<ReaderSummary> {
    let mut made: std::collections::BTreeMap<String, ReaderSummary> = std::collections::BTreeMap::new();
    for reader in parts.into_iter().flatten() {
        match made.get_mut(&reader.id) {
            Some(known) => known.editions.extend(reader.editions),
            None => {
                made.insert(reader.id.clone(), reader);
            }
        }
    }
    let order = |edition: &EditionSummary| set.editions.iter().position(|e| e.id == edition.id);
    let mut joined: Vec<_> = ids.filter_map(|id| made.remove(id)).collect();
    joined.iter_mut().for_each(|reader| reader.editions.sort_by_key(order));
    joined
}
