//! One row of a field: which surface lies where, and where each eye gets its dots.
//!
//! The dots of a row are a Poisson process of their middles, of one intensity everywhere. What an eye sees of a surface
//! is that process moved along the row, one to one and in order. Moving keeps a Poisson process one; where the move
//! squeezes it, a share of the dots is left out, and where it stretches it or nothing moves to, fresh dots come in for
//! that eye alone, so that the intensity stays the same. Pieces of an eye's row come from different places of the
//! process, or from fresh ones, and so know nothing of each other: each eye alone gets the very process that a field
//! without any depth would have, without an edge, a gap or a repeat (derived). Moving one field's dots and filling the
//! bare strips afresh is the published way.
//! Source: `[Julesz1960]`.

use super::profile::{Area, Profile};
use crate::chance::Dice;
use crate::scene::Eye;
use crate::solve::depth::quantise;
use crate::solve::half_x;

/// What the dots of a row are drawn with.
#[derive(Debug, Clone, Copy)]
pub(super) struct Draws {
    /// Dots a mm that both eyes get.
    pub(super) shared: f64,
    /// Dots a mm that each eye gets for itself.
    pub(super) own: f64,
    /// The first and the last place of the middle of a dot that shows in the field, mm.
    pub(super) frame: (f64, f64),
}

/// The middles of the dots of one eye, mm, in no order.
pub(super) type Middles = Vec<f64>;

/// A stretch of a row, as both eyes together see it, on one surface.
#[derive(Debug)]
pub(super) struct Chain<'a> {
    /// The index of its surface: 0 for the ground, then the figures.
    surface: usize,
    profile: &'a Profile<'a>,
    y: f64,
    /// Places and parallax, mm, from left to right; straight between them.
    knots: Vec<(f64, f64)>,
}

/// Cuts a row between surfaces: the ground from end to end, and for each figure the stretches inside its outline; a
/// later figure lies over an earlier one. Gives stretches with the index of their surface, from left to right.
pub(super) fn cut(ends: (f64, f64), figures: &[Vec<(f64, f64)>]) -> Vec<(f64, f64, usize)> {
    let mut parts = vec![(ends.0, ends.1, 0)];
    for (surface, stretches) in (1..).zip(figures) {
        for &(from, to) in stretches {
            let rest = |&(a, b, of): &(f64, f64, usize)| [(a, b.min(from), of), (a.max(to), b, of)];
            parts = parts.iter().flat_map(rest).filter(|(a, b, _)| a < b).collect();
            parts.push((from, to, surface));
        }
    }
    parts.sort_by(|a, b| a.0.total_cmp(&b.0));
    parts
}

impl<'a> Chain<'a> {
    /// A stretch of the row at `y` on a surface.
    pub(super) fn new((from, to): (f64, f64), y: f64, surface: usize, profile: &'a Profile<'a>) -> Self {
        let bends = profile.bends();
        let inside = bends.partition_point(|&x| x <= from)..bends.partition_point(|&x| x < to);
        let places = std::iter::once(from).chain(bends[inside].iter().copied()).chain([to]);
        Self { surface, profile, y, knots: places.map(|x| (x, profile.parallax(x, y))).collect() }
    }

    /// The index of its surface: 0 for the ground, then the figures.
    pub(super) fn surface(&self) -> usize {
        self.surface
    }

    /// The largest change of parallax along the row, mm a mm.
    pub(super) fn steepest(&self) -> f64 {
        self.pieces().map(|piece| piece.slope().abs()).fold(0.0, f64::max)
    }

    fn pieces(&self) -> impl Iterator<Item = Piece> + '_ {
        self.knots.windows(2).map(|w| Piece { from: w[0], to: w[1] })
    }

    /// Where it begins and ends for an eye.
    fn span(&self, eye: Eye) -> (f64, f64) {
        let at = |knot: Option<&(f64, f64)>| knot.map_or(0.0, |&(x, p)| half_x(x, p, eye));
        (at(self.knots.first()), at(self.knots.last()))
    }

    /// Its parallax at a place of an eye's row, if it reaches there.
    fn parallax_seen(&self, place: f64, eye: Eye) -> Option<f64> {
        let (from, to) = self.span(eye);
        if place < from || to <= place {
            return None;
        }
        let seen = |&(x, p): &(f64, f64)| half_x(x, p, eye);
        let next = self.knots.partition_point(|knot| seen(knot) <= place).clamp(1, self.knots.len() - 1);
        let (a, b) = (self.knots[next - 1], self.knots[next]);
        Some(a.1 + (b.1 - a.1) * (place - seen(&a)) / (seen(&b) - seen(&a)))
    }
}

/// A stretch on which parallax runs straight.
#[derive(Debug, Clone, Copy)]
struct Piece {
    from: (f64, f64),
    to: (f64, f64),
}

impl Piece {
    /// Change of parallax along the row, mm a mm.
    fn slope(&self) -> f64 {
        (self.to.1 - self.from.1) / (self.to.0 - self.from.0)
    }

    /// How many times as long it is for an eye.
    fn stretch(&self, eye: Eye) -> f64 {
        half_x(1.0, self.slope(), eye)
    }
}

/// Draws the dots of a row for both eyes.
pub(super) fn draw(chains: &[Chain<'_>], draws: &Draws, dice: &mut Dice) -> [Middles; 2] {
    let mut seen = [Middles::new(), Middles::new()];
    for (index, chain) in chains.iter().enumerate() {
        for piece in chain.pieces() {
            draw_piece((index, piece), chains, draws, dice, &mut seen);
        }
    }
    for (eye, middles) in Eye::ALL.into_iter().zip(&mut seen) {
        for gap in gaps(chains, draws.frame, eye) {
            scatter(draws.shared, gap, dice, |_, x| middles.push(x));
        }
        scatter(draws.own, draws.frame, dice, |_, x| middles.push(x));
    }
    seen
}

/// Draws the dots of one piece of one chain: those of both eyes, then those that fill up where an eye's row is longer.
fn draw_piece(
    (index, piece): (usize, Piece),
    chains: &[Chain<'_>],
    draws: &Draws,
    dice: &mut Dice,
    seen: &mut [Middles; 2],
) {
    let Chain { profile, y, .. } = &chains[index];
    let stretch = Eye::ALL.map(|eye| piece.stretch(eye));
    let mut put = |eye: usize, x: f64, parallax: f64| {
        let place = half_x(x, parallax, Eye::ALL[eye]);
        let (first, last) = draws.frame;
        if (first..last).contains(&place) && !is_hidden((index, parallax), place, chains, Eye::ALL[eye]) {
            seen[eye].push(place);
        }
    };
    let along = (piece.from.0, piece.to.0);
    scatter(draws.shared, along, dice, |dice, x| {
        let parallax = profile.parallax(x, *y);
        for (eye, &stretch) in stretch.iter().enumerate() {
            if 1.0 <= stretch || dice.happens(stretch) {
                put(eye, x, parallax);
            }
        }
    });
    for (eye, stretch) in stretch.into_iter().enumerate() {
        scatter(draws.shared * (stretch - 1.0), along, dice, |_, x| put(eye, x, profile.parallax(x, *y)));
    }
}

/// Whether a nearer stretch lies over a place of an eye's row.
fn is_hidden((index, parallax): (usize, f64), place: f64, chains: &[Chain<'_>], eye: Eye) -> bool {
    let over = |(other, chain): (usize, &Chain<'_>)| {
        let before = |p: f64| p < parallax || (p <= parallax && index < other);
        other != index && chain.parallax_seen(place, eye).is_some_and(before)
    };
    chains.iter().enumerate().any(over)
}

/// The stretches of an eye's row that no surface reaches.
fn gaps(chains: &[Chain<'_>], frame: (f64, f64), eye: Eye) -> Vec<(f64, f64)> {
    let mut spans: Vec<(f64, f64)> = chains.iter().map(|chain| chain.span(eye)).collect();
    spans.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (mut gaps, mut reached) = (Vec::new(), frame.0);
    for (from, to) in spans {
        if reached < from {
            gaps.push((reached, from.min(frame.1)));
        }
        reached = reached.max(to);
    }
    gaps.push((reached, frame.1));
    gaps
}

/// The places of a Poisson process between two ends: the steps between neighbours are exponential, a textbook fact.
fn scatter(rate: f64, (from, to): (f64, f64), dice: &mut Dice, mut put: impl FnMut(&mut Dice, f64)) {
    if rate <= 0.0 {
        return;
    }
    let mut x = from;
    loop {
        x -= libm::log(1.0 - dice.unit()) / rate;
        if to <= x || x.is_nan() {
            return;
        }
        put(dice, x);
    }
}

/// The bars of dots of this width about their middles, cut at the edges of the field: runs that do not touch.
pub(super) fn bars(mut middles: Middles, dot: f64, field: &Area) -> Vec<(f64, f64)> {
    middles.sort_by(f64::total_cmp);
    let mut runs: Vec<(f64, f64)> = Vec::with_capacity(middles.len());
    for middle in middles {
        let cut = |x: f64| quantise(x.clamp(field.left, field.right()));
        let (Some(from), Some(to)) = (cut(middle - dot / 2.0), cut(middle + dot / 2.0)) else { continue };
        match runs.last_mut() {
            Some(last) if from <= last.1 => last.1 = to,
            _ if from < to => runs.push((from, to)),
            _ => {}
        }
    }
    runs
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn later_figures_lie_over_earlier_ones() {
        let parts = cut((0.0, 10.0), &[vec![(1.0, 3.0), (5.0, 8.0)], vec![(2.0, 6.0)]]);
        assert_eq!(parts, [(0.0, 1.0, 0), (1.0, 2.0, 1), (2.0, 6.0, 2), (6.0, 8.0, 1), (8.0, 10.0, 0)]);
        assert_eq!(cut((0.0, 1.0), &[]), [(0.0, 1.0, 0)]);
    }

    #[test]
    fn bars_merge_and_end_at_the_field() {
        let field = Area { left: 0.0, top: 0.0, width: 10.0, height: 1.0 };
        let runs = bars(vec![10.2, 0.2, 4.0, 4.5, 6.0, -0.5], 1.0, &field);
        assert_eq!(runs, [(0.0, 0.7), (3.5, 5.0), (5.5, 6.5), (9.7, 10.0)]);
    }
}
