//! The labels of a plan view: what each target is called and how deep it stands, beside the drawing, clear of one another.

use kurbo::{Point, Rect};

use super::HALF;
use super::marks::{apart, line};
use super::short;
use super::view::{Place, Seen, Spot};
use crate::language::Tongue;
use crate::layout::compose::{Composer, Piece};
use crate::layout::grid::CAPTION;
use crate::layout::plot::Line;
use crate::layout::sheet::{Node, Tone};
use crate::optics::Viewer;
use crate::scene::Eyes;
use crate::units::{Mm, PrismDioptre, plain};

/// Room for the labels at the right, mm.
pub(super) const LABELS: f64 = 78.0;
/// The most labels; past that those of one depth share one.
const MOST: usize = 14;
/// The most names in one label.
const NAMED: usize = 3;
/// Between two labels, mm.
const GAP: f64 = 0.8;

/// The words beside a spot, or beside all spots of one depth.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Label {
    /// At least one.
    ids: Vec<String>,
    eyes: Eyes,
    depth: String,
    /// What it points to.
    pub(super) at: Place,
    /// Whether that is an area.
    pub(super) is_strip: bool,
}

impl Label {
    /// The label on one line.
    pub(super) fn words(&self, tongue: &Tongue) -> String {
        let args = [("names", self.names(NAMED, tongue).into()), ("depth", (&self.depth).into())];
        tongue.tell("chart-label", &args)
    }

    /// So many of the names at most, and how many there are besides.
    fn names(&self, most: usize, tongue: &Tongue) -> String {
        let named: Vec<&str> = self.ids.iter().take(most).map(String::as_str).collect();
        self.told(&named, tongue)
    }

    /// These names for all: "a, b and 7 more (left eye)".
    fn told(&self, named: &[&str], tongue: &Tongue) -> String {
        let (names, more) = (named.join(", "), self.ids.len() - named.len());
        let names = match more {
            0 => names,
            _ => tongue.tell("chart-names-more", &[("names", names.into()), ("count", more.into())]),
        };
        match self.eyes {
            Eyes::Both => names,
            Eyes::Left => tongue.tell("chart-names-left", &[("names", names.into())]),
            Eyes::Right => tongue.tell("chart-names-right", &[("names", names.into())]),
        }
    }

    /// The label, with the depth on a line of its own where one line is too short for both; where one is too short for
    /// the names, with fewer of them.
    fn set(&self, composer: &mut Composer<'_>) -> Piece {
        let tongue = composer.tongue;
        let words = self.words(tongue);
        if composer.width_of(&words, &CAPTION) <= LABELS {
            return composer.lines(&words, &CAPTION, LABELS);
        }
        let line = |names: String| tongue.tell("chart-label-names", &[("names", names.into())]);
        let fits = |most: &usize| composer.width_of(&line(self.names(*most, tongue)), &CAPTION) <= LABELS;
        let names = match (1..=NAMED).rev().find(fits) {
            Some(most) => self.names(most, tongue),
            None => {
                let room = LABELS - composer.width_of(&line(self.told(&[""], tongue)), &CAPTION) - 1.0;
                let first = self.ids.first().map_or("", String::as_str);
                self.told(&[&short(composer, first, &CAPTION, room)], tongue)
            }
        };
        composer.lines(&format!("{}\n{}", line(names), self.depth), &CAPTION, LABELS)
    }
}

/// One label a spot, while there is room; else one for each depth.
pub(super) fn of(spots: &[Spot], viewer: &Viewer, tongue: &Tongue) -> Vec<Label> {
    let depth = |spot: &Spot| (depth_words(spot, viewer, tongue), spot.eyes);
    let mut groups: Vec<Vec<&Spot>> = Vec::new();
    for spot in spots {
        let shared = MOST < spots.len();
        match groups.iter_mut().find(|group| shared && group.first().is_some_and(|first| depth(first) == depth(spot))) {
            Some(group) => group.push(spot),
            None => groups.push(vec![spot]),
        }
    }
    groups.iter().filter_map(|group| label(group, viewer, tongue)).collect()
}

/// Sets the labels in a column, each with a leader to what it points to. Where the column is too short for all of them,
/// some that are spread evenly stand for the rest, and a line says how many there are.
pub(super) fn place(
    composer: &mut Composer<'_>,
    labels: &[Label],
    end: impl Fn(&Label) -> Point,
    column: Rect,
) -> Vec<Node> {
    let mut set: Vec<(Point, Piece)> = labels.iter().map(|label| (end(label), label.set(composer))).collect();
    set.sort_by(|(a, _), (b, _)| a.y.total_cmp(&b.y).then(a.x.total_cmp(&b.x)));
    let (mut nodes, mut foot) = (Vec::new(), column.y1);
    let height = |set: &[(Point, Piece)]| set.iter().map(|(_, piece)| piece.height + GAP).sum::<f64>();
    if column.height() < height(&set) {
        foot -= CAPTION.leading.0 + GAP;
        let (all, room) = (set.len(), foot - column.y0);
        while 1 < set.len() && room < height(&set) {
            set = every_other(set, room);
        }
        let args = [("count", set.len().into()), ("all", all.into())];
        let words = composer.tell("chart-labels-left-out", &args);
        nodes.extend(composer.lines(&words, &CAPTION, column.width()).moved(column.x0, foot + GAP).nodes);
    }
    let wanted: Vec<(f64, f64)> = set.iter().map(|(at, piece)| (at.y, piece.height + GAP)).collect();
    for ((at, piece), top) in set.into_iter().zip(apart(&wanted, (column.y0, foot))) {
        let y = top + CAPTION.leading.0 * HALF;
        let leader = [at, Point::new(column.x0 - 4.0, y), Point::new(column.x0 - 1.2, y)];
        nodes.push(line(&leader, Line::Solid, 0.1, Tone::LINE));
        nodes.extend(piece.moved(column.x0, top).nodes);
    }
    nodes
}

/// Fewer labels, evenly from first to last: as many as surely fit, and at least one less than there were.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a few labels of some mm")]
fn every_other(set: Vec<(Point, Piece)>, room: f64) -> Vec<(Point, Piece)> {
    let tallest = set.iter().map(|(_, piece)| piece.height + GAP).fold(1.0, f64::max);
    let keep = ((room / tallest) as usize).clamp(1, set.len() - 1);
    let last = set.len() - 1;
    let kept = |index: usize| (0..keep).any(|k| k * last / (keep - 1).max(1) == index);
    set.into_iter().zip(0..).filter(|&(_, index)| kept(index)).map(|(one, _)| one).collect()
}

fn label(group: &[&Spot], viewer: &Viewer, tongue: &Tongue) -> Option<Label> {
    let first = group.first()?;
    Some(Label {
        ids: group.iter().map(|spot| spot.id.clone()).collect(),
        eyes: first.eyes,
        depth: depth_words(first, viewer, tongue),
        at: first.middle,
        is_strip: matches!(first.form, Seen::Strip(_)),
    })
}

/// How deep a spot stands: "4.5 cm toward (2 pd)", "3 cm toward (1.2 pd) to 2 cm away (0.7 pd)".
fn depth_words(spot: &Spot, viewer: &Viewer, tongue: &Tongue) -> String {
    let (near, far) = spot.parallax;
    let Some(viewing) = viewer.viewing() else { return String::new() };
    let one = |parallax: f64| {
        let depth = viewing.depth_of_parallax(Mm(parallax)).map_or(0.0, |mm| mm.0);
        let demand = viewing.demand_of_parallax(Mm(parallax)).map_or(0.0, |pd| pd.0.abs());
        if plain(depth.abs() / 10.0, 1) == "0" && plain(demand, 2) == "0" {
            return tongue.say("demand-on-page");
        }
        let cm = tongue.cm(Mm(depth.abs()), 1);
        let args = [("cm", cm.into()), ("pd", tongue.pd(PrismDioptre(demand), 2).into())];
        match depth < 0.0 {
            true => tongue.tell("chart-depth-toward", &args),
            false => tongue.tell("chart-depth-away", &args),
        }
    };
    let (near, far) = (one(near), one(far));
    if near == far { near } else { tongue.tell("chart-depths", &[("near", near.into()), ("far", far.into())]) }
}
