//! What `report.json` says of the viewer and of how hard a page is for them.
//!
//! Like the report, the structs here are the file format and nothing else uses them. Nothing about the eyes is silent:
//! what is not known is null.

use serde::Serialize;

use crate::exercise::balance::Balance;
use crate::optics::Viewer;
use crate::optics::grading::{Difficulty, Term};
use crate::optics::reserves::{Norms, Reserve};
use crate::spec::viewer::Known;
use crate::units::PrismDioptre;

use super::report::{fine, round};

/// The viewer, with what is known of their eyes.
#[derive(Serialize)]
pub(super) struct ViewerPart<'a> {
    distance_mm: f64,
    ipd_mm: f64,
    ipd_range_mm: [f64; 2],
    /// What pages may ask; null where no range is known.
    zone: Option<ZonePart>,
    /// The reserves that the zone was made of; null where none are known.
    reserves: Option<ReservesPart>,
    /// The published norms that stand in for reserves that are not the reader's own; null where none are named.
    norms: Option<&'static str>,
    /// Positive outward (exo), negative inward (eso); null where it is not known.
    phoria_pd: Option<f64>,
    near_point_mm: Option<f64>,
    /// What the stronger eye keeps on pages without a balance of their own; null where it is not known.
    balance: Option<EyeBalancePart>,
    /// What the pages ride on; null without.
    base: Option<BasePart<'a>>,
}

/// The most that pages may ask on each side, as amounts, with the name of what bounds it.
#[derive(Serialize)]
struct ZonePart {
    away_pd: f64,
    away_bound: &'static str,
    toward_pd: f64,
    toward_bound: &'static str,
}

#[derive(Serialize)]
struct ReservesPart {
    away: ReservePart,
    toward: ReservePart,
}

#[derive(Serialize)]
struct ReservePart {
    /// `norms` where a published set stands in for the reader's own.
    from: &'static str,
    blur_pd: Option<f64>,
    break_pd: f64,
    recovery_pd: Option<f64>,
}

#[derive(Serialize)]
struct EyeBalancePart {
    stronger: &'static str,
    /// Of one.
    share: f64,
}

/// What every page rides on. It is part of each parallax and demand of the report: less `horizontal_pd`, a demand is what
/// was asked for.
#[derive(Serialize)]
struct BasePart<'a> {
    /// Positive toward.
    horizontal_pd: f64,
    /// Positive where the right eye's picture lies higher: each eye's half-image lies half of it off `at_mm`.
    vertical_pd: f64,
    /// The professional who set it.
    set_by: Option<&'a str>,
}

/// How hard a page is.
#[derive(Serialize)]
pub(super) struct DifficultyPart {
    /// 0 to 100.
    total: f64,
    /// As its badge says it, 1 to 10.
    grade: u32,
    terms: Vec<TermPart>,
    /// What demands were counted against: `zone`, or `unknown range`.
    against: &'static str,
}

#[derive(Serialize)]
struct TermPart {
    name: &'static str,
    /// 0 to 1.
    value: f64,
    /// The weights of a page add up to 1.
    weight: f64,
}

impl<'a> ViewerPart<'a> {
    /// Of a viewer, and of what the spec says of their eyes and of who set their base.
    pub(super) fn new(viewer: &Viewer, known: &Known, set_by: Option<&'a str>) -> Self {
        let (low, high) = viewer.ipd_range;
        let base = viewer.base;
        Self {
            distance_mm: fine(viewer.distance.0),
            ipd_mm: fine(viewer.ipd.0),
            ipd_range_mm: [low, high].map(|mm| fine(mm.0)),
            zone: viewer.zone.map(|zone| ZonePart {
                away_pd: fine(zone.away.0),
                away_bound: zone.away_bound.name(),
                toward_pd: fine(zone.toward.0),
                toward_bound: zone.toward_bound.name(),
            }),
            reserves: known.reserves().map(|reserves| ReservesPart {
                away: ReservePart::new(&reserves.away, known.away.is_some()),
                toward: ReservePart::new(&reserves.toward, known.toward.is_some()),
            }),
            norms: known.norms.map(Norms::name),
            phoria_pd: known.phoria.map(|phoria| fine(phoria.0.0)),
            near_point_mm: known.near_point.map(|mm| fine(mm.0)),
            balance: known
                .balance
                .map(|(eye, share)| EyeBalancePart { stronger: Balance::from((eye, share)).eye(), share: fine(share) }),
            base: (!base.is_none()).then(|| BasePart {
                horizontal_pd: fine(base.horizontal.0),
                vertical_pd: fine(base.vertical.0),
                set_by,
            }),
        }
    }
}

impl ReservePart {
    fn new(reserve: &Reserve, own: bool) -> Self {
        let pd = |demand: PrismDioptre| fine(demand.0);
        Self {
            from: if own { "reader" } else { "norms" },
            blur_pd: reserve.blur.map(pd),
            break_pd: pd(reserve.breaks),
            recovery_pd: reserve.recovery.map(pd),
        }
    }
}

impl DifficultyPart {
    /// Of a page before this viewer.
    pub(super) fn new(difficulty: &Difficulty, viewer: &Viewer) -> Self {
        let term = |term: &Term| TermPart { name: term.name, value: fine(term.value), weight: fine(term.weight) };
        Self {
            total: round(difficulty.total, 100.0),
            grade: difficulty.badge(),
            terms: difficulty.terms.iter().map(term).collect(),
            against: if viewer.zone.is_some() { "zone" } else { "unknown range" },
        }
    }
}
