//! What: straight marks side by side at even spaces: a striped panel.
//!
//! Why: even stripes of light and dark can bring on seizures in a few people, and make many more uneasy.
//!
//! Limit: an error where more than five pairs of light and dark fill more than 0.006 steradians: a panel of some 31 mm
//! square at 40 cm. A warning for any panel of more than four pairs at 1.5 to 6 cycles a degree, where stripes are found
//! most unpleasant.
//!
//! Source: `[Harding2005]`, more than five pairs over more than 0.006 sr; `[Wilkins1984]`, most unpleasant at
//! 3 cycles a degree; the band of the warning is a design choice.
//!
//! Marks of less than 10 mm count for none, as on a scale, nor do spaces that differ by more than a fifth. Design choice.
//!
//! Way out: fewer marks, uneven spaces, short or curved strokes.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::{Place, Severity};
use crate::scene::Shape;
use crate::solve::{SolvedFeature, SolvedForm};
use crate::units::{Mm, plain};

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "stripes", doc: "straight marks stand side by side at even spaces", codes: &[PANEL, FINE], check };

const PANEL: &str = "E-STRIPES";
const FINE: &str = "W-STRIPES";
/// Pairs of light and dark that a large panel may have.
const PAIRS: usize = 5;
/// The solid angle of a large panel, sr.
const LARGE: f64 = 0.006;
/// Cycles a degree at which any panel of more than [`FEW`] pairs is told.
const UNPLEASANT: (f64, f64) = (1.5, 6.0);
const FEW: usize = 4;
/// Length of a mark that counts, mm.
const LONG: f64 = 10.0;
/// How much a space may differ from the one before it, as a share.
const EVEN: f64 = 0.2;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let Some(degree) = input.viewer.viewing().and_then(|v| v.length_of_angle(crate::units::Angle::from_degrees(1.0)))
    else {
        return Vec::new();
    };
    let distance = input.viewer.distance.0;
    input.pages.iter().filter_map(|page| check_page(page, degree, distance)).collect()
}

fn check_page(page: &Page<'_>, degree: Mm, distance: f64) -> Option<Finding> {
    let bars: Vec<Bar> = page.features.iter().flat_map(bars_of).collect();
    let panels = [false, true].into_iter().filter_map(|upright| widest_panel(&bars, upright));
    let Panel { pairs, period, length, place } = panels.reduce(|a, b| if a.pairs < b.pairs { b } else { a })?;
    let angle = pairs as f64 * period * length / (distance * distance);
    let cycles = degree.0 / period;
    let (severity, code) = if PAIRS < pairs && LARGE < angle {
        (Severity::Error, PANEL)
    } else if FEW < pairs && (UNPLEASANT.0..=UNPLEASANT.1).contains(&cycles) {
        (Severity::Warning, FINE)
    } else {
        return None;
    };
    let message = format!(
        "a panel of `{pairs}` pairs of stripes, `{}` mm each, fills `{}` sr at `{}` cycles a degree: more than `{PAIRS}` \
         pairs over `{LARGE}` sr, or stripes of `{}` to `{}` cycles a degree, can do harm",
        plain(period, 2),
        plain(angle, 4),
        plain(cycles, 2),
        UNPLEASANT.0,
        UNPLEASANT.1,
    );
    let help = format!("draw at most `{PAIRS}` of them, or space them unevenly");
    Some(finding(page.id, severity, code, place, Words { message, label: "a striped panel", help }))
}

/// A straight mark along an axis of the page, mm.
#[derive(Debug, Clone, Copy)]
struct Bar {
    upright: bool,
    /// Where it stands across its direction.
    across: f64,
    /// Its ends along its direction.
    ends: (f64, f64),
    place: Option<Place>,
}

impl Bar {
    /// `None` for a short mark and for one that leans by more than 10 degrees.
    fn new(from: (f64, f64), to: (f64, f64), place: Option<Place>) -> Option<Self> {
        let (dx, dy) = ((to.0 - from.0).abs(), (to.1 - from.1).abs());
        let lean = 0.176 * dx.max(dy);
        let upright = dx < dy;
        let (across, a, b) =
            if upright { ((from.0 + to.0) / 2.0, from.1, to.1) } else { ((from.1 + to.1) / 2.0, from.0, to.0) };
        let straight = LONG <= dx.max(dy) && dx.min(dy) <= lean;
        straight.then_some(Self { upright, across, ends: (a.min(b), a.max(b)), place })
    }
}

/// The straight marks of a feature, at its cyclopean place.
fn bars_of(feature: &SolvedFeature) -> Vec<Bar> {
    let bar = |from, to| Bar::new(from, to, feature.place);
    match &feature.form {
        SolvedForm::Strokes { strokes, .. } => strokes.iter().filter_map(|&[from, to]| bar(from, to)).collect(),
        SolvedForm::Path { points, closed, smooth: false, .. } => {
            let ends = points.iter().map(|p| (p.x, p.y));
            let next = ends.clone().skip(1).chain(ends.clone().take(usize::from(*closed)));
            ends.zip(next).filter_map(|(from, to)| bar(from, to)).collect()
        }
        SolvedForm::Shape { shape: Shape::Square, extent, .. } => {
            let ((x, y), half) = (feature.at, (extent.0 / 2.0, extent.1 / 2.0));
            let corner = |sx: f64, sy: f64| (x + sx * half.0, y + sy * half.1);
            let corners = [corner(-1.0, -1.0), corner(1.0, -1.0), corner(1.0, 1.0), corner(-1.0, 1.0)];
            (0..4).filter_map(|i| bar(corners[i], corners[(i + 1) % 4])).collect()
        }
        SolvedForm::Shape { .. } | SolvedForm::Path { .. } | SolvedForm::Dots(_) => Vec::new(),
    }
}

/// A run of even stripes.
struct Panel {
    /// Pairs of light and dark: spaces between marks.
    pairs: usize,
    /// Mean distance from mark to mark, mm.
    period: f64,
    /// Length over which all marks stand side by side, mm.
    length: f64,
    place: Option<Place>,
}

/// The run of the most marks side by side at even spaces.
fn widest_panel(bars: &[Bar], upright: bool) -> Option<Panel> {
    let mut row: Vec<&Bar> = bars.iter().filter(|bar| bar.upright == upright).collect();
    row.sort_by(|a, b| a.across.total_cmp(&b.across));
    (0..row.len()).filter_map(|first| run_from(&row, first)).reduce(|a, b| if a.pairs < b.pairs { b } else { a })
}

/// The run that begins with a mark.
fn run_from(row: &[&Bar], first: usize) -> Option<Panel> {
    let (start, mut last, mut space) = (row.get(first)?, row.get(first)?, None);
    // Where all marks of the run stand side by side.
    let (mut pairs, mut common) = (0, start.ends);
    for bar in &row[first + 1..] {
        let gap = bar.across - last.across;
        let both = (common.0.max(bar.ends.0), common.1.min(bar.ends.1));
        if gap < 0.5 || both.1 - both.0 < LONG {
            continue;
        }
        if space.is_some_and(|space: f64| EVEN * space < (gap - space).abs()) {
            break;
        }
        (space, last, pairs, common) = (Some(gap), bar, pairs + 1, both);
    }
    let length = common.1 - common.0;
    let period = (last.across - start.across) / pairs.max(1) as f64;
    (0 < pairs).then_some(Panel { pairs, period, length, place: start.place })
}
