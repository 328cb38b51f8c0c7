//! What: a figure in a field of dots that one eye alone can find: by how many dots there are, how many edges they have, or
//! by a stretch of dots that is repeated beside it.
//!
//! Why: the figure is then no work for two eyes together. A page that helps with a drawn line is not judged.
//!
//! Limit: 4 standard errors between the figure and the field around it, each estimated from the scatter of the rows, which
//! are drawn apart from one another. Source: `[Julesz1960]` for what each eye must not show; the limit is a design choice.
//!
//! Way out: another seed, or a cue that shows the figure anyway.

use super::{Finding, Input, Page, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::scene::{Eye, Role};
use crate::solve::{SolvedDots, SolvedFeature, SolvedFigure, SolvedForm, half_x};
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "monocular-giveaway", doc: "one eye alone can find a figure in its dots", codes: &[CODE], check };

const CODE: &str = "W-ONE-EYE";
/// Standard errors apart.
const LIMIT: f64 = 4.0;
/// Fewest rows to judge by (design choice: fewer have no scatter to speak of).
const FEWEST: usize = 12;

/// From and to, mm.
type Span = (f64, f64);
/// What of some runs counts within some spans, and the length of these, mm.
type Measure = dyn Fn(&[Span], &[Span]) -> (f64, f64);

fn check(input: &Input<'_>) -> Vec<Finding> {
    input.pages.iter().flat_map(|page| check_page(page, input.viewer.base_parallax().0)).collect()
}

fn check_page(page: &Page<'_>, base: f64) -> Vec<Finding> {
    if page.features.iter().any(|feature| feature.role == Role::Guide) {
        return Vec::new();
    }
    let mut findings = Vec::new();
    for feature in page.features {
        let SolvedForm::Dots(dots) = &feature.form else { continue };
        for figure in &dots.figures {
            findings.extend(worst(dots, figure, base).map(|worst| report(page, feature, figure, &worst)));
        }
    }
    findings
}

/// The measure that tells a figure most.
struct Giveaway {
    eye: Eye,
    what: &'static str,
    inside: f64,
    outside: f64,
    errors: f64,
}

fn worst(dots: &SolvedDots, figure: &SolvedFigure, base: f64) -> Option<Giveaway> {
    let eyes = Eye::ALL.into_iter().flat_map(|eye| View::new(dots, figure, eye, base).giveaways());
    eyes.filter(|giveaway| LIMIT < giveaway.errors).reduce(|a, b| if a.errors < b.errors { b } else { a })
}

fn report(page: &Page<'_>, feature: &SolvedFeature, figure: &SolvedFigure, worst: &Giveaway) -> Finding {
    let eye = match worst.eye {
        Eye::Left => "left",
        Eye::Right => "right",
    };
    let message = format!(
        "`{}` shows to the {eye} eye alone: {} `{}` against `{}` around it, `{}` standard errors apart, limit `{}`",
        figure.id,
        worst.what,
        plain(worst.inside, 3),
        plain(worst.outside, 3),
        plain(worst.errors, 1),
        plain(LIMIT, 0),
    );
    let words = Words {
        message,
        label: "one eye is enough",
        help: "write another `seed`, or a cue that shows the figure to both eyes".to_owned(),
    };
    finding(page.id, Severity::Warning, CODE, feature.place, words)
}

/// What one eye gets of a figure: for each row its dots, where the figure lies and where the ground is clear of all.
struct View<'a> {
    eye: Eye,
    dots: &'a SolvedDots,
    /// How far the half-images of the figure move against those of the ground, mm.
    shift: f64,
    rows: Vec<Row<'a>>,
}

struct Row<'a> {
    runs: &'a [Span],
    figure: Vec<Span>,
    ground: Vec<Span>,
}

impl<'a> View<'a> {
    /// On a base of this parallax, mm: the ground is found as without it and then moved with the eye's rows.
    fn new(dots: &'a SolvedDots, figure: &SolvedFigure, eye: Eye, base: f64) -> Self {
        let middle = |stands: [f64; 2]| (stands[0] + stands[1]) / 2.0;
        let parallax = middle(figure.stands.map(|stand| stand.parallax.0));
        let shift = parallax - middle(dots.ground.map(|stand| stand.parallax.0));
        let edges = field_edges(dots, base);
        let row = |(index, row): (usize, &'a crate::solve::DotRow)| {
            let chords = |figure: &SolvedFigure| figure.chords.get(index).cloned().unwrap_or_default();
            let place = |(from, to): Span| (half_x(from, parallax, eye), half_x(to, parallax, eye));
            let taken: Vec<Span> = dots.figures.iter().flat_map(chords).collect();
            let reach = dots.parallax_range();
            let beyond = dots.dot + (reach.0 - base).abs().max((reach.1 - base).abs());
            let on_base = |(from, to): Span| (half_x(from, base, eye), half_x(to, base, eye));
            Row {
                runs: if eye == Eye::Left { &row.left } else { &row.right },
                figure: chords(figure).into_iter().map(place).collect(),
                ground: without(edges, &taken, beyond).into_iter().map(on_base).collect(),
            }
        };
        Self { eye, dots, shift: shift.abs(), rows: dots.rows.iter().enumerate().map(row).collect() }
    }

    fn giveaways(self) -> Vec<Giveaway> {
        let dot = self.dots.dot;
        let inner = |row: &Row<'_>| shrunk(&row.figure, dot);
        let covered = |spans: &[Span], runs: &[Span]| (covered(spans, runs), length(spans));
        let starts = |spans: &[Span], runs: &[Span]| (starts(spans, runs), length(spans));
        let compare = |what, measure: &Measure| {
            let inside = Mean::of(self.rows.iter().map(|row| measure(&inner(row), row.runs)));
            let outside = Mean::of(self.rows.iter().map(|row| measure(&row.ground, row.runs)));
            self.told(what, inside, outside)
        };
        let mut found: Vec<Option<Giveaway>> =
            vec![compare("a density of", &covered), compare("edges a mm of", &starts)];
        found.extend(self.repeats());
        found.into_iter().flatten().collect()
    }

    /// Dots beside the figure against those one shift away, and one figure away, towards it.
    fn repeats(&self) -> Vec<Option<Giveaway>> {
        if self.shift < self.dots.dot / 4.0 {
            return Vec::new();
        }
        let lags: [&dyn Fn(Span) -> f64; 3] = [&|_| self.shift, &|(a, b)| b - a, &|(a, b)| b - a + self.shift];
        lags.into_iter()
            .map(|lag| {
                let beside = |row: &Row<'_>| {
                    row.figure.iter().map(|&span| self.alike_beside(row, span, lag(span))).fold((0.0, 0.0), add)
                };
                let away = |row: &Row<'_>| {
                    row.figure.iter().map(|&span| self.alike(row, &row.ground, lag(span))).fold((0.0, 0.0), add)
                };
                let inside = Mean::of(self.rows.iter().map(beside));
                self.told("a repeat of", inside, Mean::of(self.rows.iter().map(away)))
            })
            .collect()
    }

    /// The strips on both sides of a stretch of the figure, each with what lies `lag` towards the figure.
    fn alike_beside(&self, row: &Row<'_>, (from, to): Span, lag: f64) -> (f64, f64) {
        let left = self.alike(row, &[(from - self.shift, from)], lag);
        add(left, self.alike(row, &[(to, to + self.shift)], -lag))
    }

    /// The sum of products of cover at places of these spans and `lag` beyond them, both less their mean, over the
    /// variance of cover; and the number of places.
    fn alike(&self, row: &Row<'_>, spans: &[Span], lag: f64) -> (f64, f64) {
        let density = self.dots.density;
        let step = self.dots.dot / 2.0;
        let cover = |x: f64| f64::from(u8::from(row.runs.iter().any(|&(a, b)| a <= x && x < b))) - density;
        let mut sum = (0.0, 0.0);
        for &(from, to) in spans {
            let mut x = from + step / 2.0;
            while x < to {
                sum = add(sum, (cover(x) * cover(x + lag) / (density * (1.0 - density)), 1.0));
                x += step;
            }
        }
        sum
    }

    fn told(&self, what: &'static str, inside: Option<Mean>, outside: Option<Mean>) -> Option<Giveaway> {
        let (inside, outside) = (inside?, outside?);
        let error = libm::hypot(inside.error, outside.error);
        let apart = (inside.mean - outside.mean).abs();
        let errors = if apart <= 0.0 { 0.0 } else { apart / error };
        Some(Giveaway { eye: self.eye, what, inside: inside.mean, outside: outside.mean, errors })
    }
}

/// A mean over rows of unlike weight, with its standard error from their scatter. Source: the ratio estimator of sampling,
/// from memory.
struct Mean {
    mean: f64,
    error: f64,
}

impl Mean {
    fn of(rows: impl Iterator<Item = (f64, f64)>) -> Option<Self> {
        let rows: Vec<(f64, f64)> = rows.filter(|(_, weight)| 0.0 < *weight).collect();
        let (sum, weight) = rows.iter().copied().fold((0.0, 0.0), add);
        let mean = sum / weight;
        let scatter: f64 = rows.iter().map(|(sum, weight)| (sum - mean * weight) * (sum - mean * weight)).sum();
        let small = rows.len() as f64 / (rows.len() as f64 - 1.0);
        (FEWEST <= rows.len()).then(|| Self { mean, error: (scatter * small).sqrt() / weight })
    }
}

fn add(a: (f64, f64), b: (f64, f64)) -> (f64, f64) {
    (a.0 + b.0, a.1 + b.1)
}

/// The left and the right edge of a field whose middle is the middle of its points, as without a base of this parallax, mm.
fn field_edges(dots: &SolvedDots, base: f64) -> Span {
    let off_base = |eye| move |run: &Span| (half_x(run.0, -base, eye), half_x(run.1, -base, eye));
    let of_row = |row: &'_ crate::solve::DotRow| -> Vec<Span> {
        let left = row.left.iter().map(off_base(Eye::Left));
        left.chain(row.right.iter().map(off_base(Eye::Right))).collect()
    };
    let runs = dots.rows.iter().flat_map(of_row);
    runs.fold((f64::INFINITY, f64::NEG_INFINITY), |edges, run| (edges.0.min(run.0), edges.1.max(run.1)))
}

/// What is left of a row outside these spans, each grown by `beyond`.
fn without(edges: Span, taken: &[Span], beyond: f64) -> Vec<Span> {
    let mut taken: Vec<Span> = taken.iter().map(|span| (span.0 - beyond, span.1 + beyond)).collect();
    taken.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (mut out, mut at) = (Vec::new(), edges.0 + beyond);
    for (from, to) in taken {
        if at < from {
            out.push((at, from));
        }
        at = at.max(to);
    }
    if at < edges.1 - beyond {
        out.push((at, edges.1 - beyond));
    }
    out
}

fn shrunk(spans: &[Span], by: f64) -> Vec<Span> {
    spans.iter().map(|span| (span.0 + by, span.1 - by)).filter(|span| span.0 < span.1).collect()
}

fn length(spans: &[Span]) -> f64 {
    spans.iter().map(|span| span.1 - span.0).sum()
}

fn covered(spans: &[Span], runs: &[Span]) -> f64 {
    let common = |a: &Span, b: &Span| (a.1.min(b.1) - a.0.max(b.0)).max(0.0);
    spans.iter().map(|span| runs.iter().map(|run| common(span, run)).sum::<f64>()).sum()
}

fn starts(spans: &[Span], runs: &[Span]) -> f64 {
    spans.iter().map(|span| runs.iter().filter(|run| span.0 <= run.0 && run.0 < span.1).count() as f64).sum()
}
