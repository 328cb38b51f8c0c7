//! The art of a page against its report: every feature at its place in each eye that sees it, and nothing of it in the
//! other.

use std::fmt;

use super::edition::Corners;
use super::outline::Area;
use super::page::{EYES, Eye, Feature, Form, Page};
use super::place::{self, CLEAR, Measured};
use super::seen::{Picture, Seen, View};

/// How far anything may stand from where the report has it, mm: the promise of the design for all three formats.
pub(super) const TOLERANCE: f64 = 0.05;

/// How far an edge may be off before all that is known is that it is not there, mm: edges are looked for 0.35 mm deep.
const LOST: f64 = 0.3;

/// What was found on some pages.
#[derive(Default)]
pub(super) struct Findings {
    /// Whether what one eye gets does not depend on the marks of the other, dot by dot. Viewers of vector pages that
    /// smooth edges lose up to a quarter of the ink of a dot where the edge of a mark of one eye crosses a mark of the
    /// other: that moves no shape and no line, but the single places of an outline and the widths of lines say little.
    pub(super) apart: bool,
    /// Whatever is not as it should be.
    pub(super) complaints: Vec<String>,
    /// Features whose place could not be measured, since too much of them lies under others.
    pub(super) covered: Vec<String>,
    /// Where shapes and letters stand, in the order of the report: name, left eye, right eye.
    pub(super) places: Vec<(String, Option<Measured>, Option<Measured>)>,
    /// The farthest from the report, mm.
    pub(super) place: Worst,
    pub(super) letters: Worst,
    pub(super) size: Worst,
    pub(super) parallax: Worst,
    pub(super) outline: Worst,
    pub(super) line: Worst,
    pub(super) width: Worst,
    /// How many dots of ink were looked at for marks of the other eye, and the strongest ink there, 0 to 255.
    pub(super) ghost_dots: usize,
    pub(super) ghost: u8,
}

/// The largest of many deviations, with its name.
#[derive(Default)]
pub(super) struct Worst {
    pub(super) count: usize,
    pub(super) mm: f64,
    name: String,
}

impl Worst {
    fn add(&mut self, mm: f64, name: &str) {
        self.count += 1;
        if self.mm < mm {
            self.mm = mm;
            name.clone_into(&mut self.name);
        }
    }
}

impl fmt::Display for Worst {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:.4} mm over {} ({})", self.mm, self.count, self.name)
    }
}

impl fmt::Display for Findings {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "  place    {}", self.place)?;
        writeln!(f, "  letters  {}", self.letters)?;
        writeln!(f, "  size     {}", self.size)?;
        writeln!(f, "  parallax {}", self.parallax)?;
        writeln!(f, "  outline  {}", self.outline)?;
        writeln!(f, "  line     {}", self.line)?;
        writeln!(f, "  width    {}", self.width)?;
        writeln!(f, "  ghost    {} of 255 over {} dots", self.ghost, self.ghost_dots)?;
        write!(f, "  covered  {:?}", self.covered)
    }
}

/// Clear space around the art that is looked at, mm.
const MARGIN: f64 = 2.0;

/// The box that holds all art of a page.
pub(super) fn bounds(page: &Page) -> Corners {
    let (mut low, mut high) = ([f64::INFINITY; 2], [f64::NEG_INFINITY; 2]);
    for area in EYES.into_iter().flat_map(|eye| page.features.iter().flat_map(move |f| f.ink(eye))) {
        let (l, h) = area.bounds();
        for axis in 0..2 {
            low[axis] = low[axis].min(l[axis] - MARGIN);
            high[axis] = high[axis].max(h[axis] + MARGIN);
        }
    }
    (low, high)
}

impl Findings {
    /// Measures all that the report lists on a page.
    pub(super) fn look_at(&mut self, page: &Page, picture: &Picture, view: &View) {
        let eyes = EYES.map(|eye| picture.seen(view, eye));
        for feature in &page.features {
            let name = format!("{}/{}", page.id, feature.id);
            let line = matches!(feature.form, Form::Line { .. });
            if !line {
                self.find(page, feature, &eyes, &name);
            }
            for (eye, seen) in EYES.into_iter().zip(&eyes) {
                if !feature.is_for(eye) {
                    self.miss(page, feature, eye, seen, &name);
                } else if line {
                    self.follow(page, feature, eye, seen, &name);
                }
            }
        }
    }

    /// A shape or letters: the place in each eye, and the parallax between the two.
    fn find(&mut self, page: &Page, feature: &Feature, eyes: &[Seen<'_>; 2], name: &str) {
        let found = [0, 1].map(|i| {
            let (eye, seen) = (EYES[i], &eyes[i]);
            if !feature.is_for(eye) {
                return None;
            }
            let others = others(page, feature, eye);
            let at = feature.half_image(eye);
            let found = match feature.form {
                Form::Shape(shape, weight) => {
                    place::outline(seen, &shape.samples(feature.size, weight), at, feature.longer(), &others)
                }
                Form::Text | Form::Line { .. } => place::letters(seen, at, feature.size, &others),
            };
            match found {
                Some(found) => self.compare(feature, eye, &found, &format!("{name} {eye:?}")),
                None => self.covered.push(format!("{name} {eye:?}")),
            }
            found
        });
        if let [Some(left), Some(right)] = found {
            self.compare_parallax(feature, right.at[0] - left.at[0], name);
        }
        self.places.push((name.to_owned(), found[0], found[1]));
    }

    fn compare(&mut self, feature: &Feature, eye: Eye, found: &Measured, name: &str) {
        if LOST < found.farthest {
            self.complaints.push(format!("{name}: is not where the report has it"));
            return;
        }
        let should = feature.half_image(eye);
        let place = if matches!(feature.form, Form::Text) { &mut self.letters } else { &mut self.place };
        let off = [0, 1].map(|axis| (found.at[axis] - should[axis]).abs());
        place.add(off[0].max(off[1]), name);
        self.hold(off[0].max(off[1]), name, "place");
        self.size.add(found.longer.abs(), name);
        self.hold(found.longer.abs(), name, "size");
        self.outline.add(found.farthest, name);
        if self.apart {
            self.hold(found.farthest, name, "outline");
        }
    }

    fn compare_parallax(&mut self, feature: &Feature, parallax: f64, name: &str) {
        let off = (parallax - feature.parallax).abs();
        self.parallax.add(off, name);
        self.hold(off, name, "parallax");
        // What stands toward the reader lies farther to the right for the left eye.
        if TOLERANCE < feature.parallax.abs() && (parallax < 0.0) != (feature.parallax < 0.0) {
            self.complaints.push(format!("{name}: parallax {parallax} has the wrong sign"));
        }
    }

    fn hold(&mut self, off: f64, name: &str, what: &str) {
        if off.is_nan() || TOLERANCE < off {
            self.complaints.push(format!("{name}: {what} is {off:.3} mm off"));
        }
    }

    /// A line: crossed at its points and between them.
    fn follow(&mut self, page: &Page, feature: &Feature, eye: Eye, seen: &Seen<'_>, name: &str) {
        let Form::Line { closed, weight, .. } = feature.form else { return };
        let others = others(page, feature, eye);
        let places = crossings(&feature.line(eye), closed);
        let mut used = 0;
        for &(at, direction) in &places {
            let Some(crossed) = place::line(seen, at, direction, weight, &others) else { continue };
            used += 1;
            let name = format!("{name} {eye:?} at {:.1}, {:.1}", at[0], at[1]);
            self.line.add(crossed.off.abs(), &name);
            self.hold(crossed.off.abs(), &name, "line");
            self.width.add((crossed.width - weight).abs(), &name);
            if self.apart {
                self.hold((crossed.width - weight).abs(), &name, "width of line");
            }
        }
        if 4 * used < places.len() {
            self.covered.push(format!("{name} {eye:?}"));
        }
    }

    /// A mark of the other eye: where it stands, this eye sees nothing but what is its own.
    fn miss(&mut self, page: &Page, feature: &Feature, eye: Eye, seen: &Seen<'_>, name: &str) {
        let other = if eye == Eye::Left { Eye::Right } else { Eye::Left };
        let own: Vec<Area> = page.features.iter().filter(|f| f.is_for(eye)).flat_map(|f| f.ink(eye)).collect();
        let [at, half] = [feature.half_image(other), feature.size.map(|s| s / 2.0)];
        let [columns, rows] = seen.dots([at[0] - half[0], at[1] - half[1]], [at[0] + half[0], at[1] + half[1]]);
        let mut dots = 0;
        for (x, y) in rows.flat_map(|y| columns.clone().map(move |x| (x, y))) {
            if !own.iter().any(|area| area.holds(seen.middle(x, y), CLEAR)) {
                dots += 1;
                self.ghost = self.ghost.max(seen.ink(x, y));
            }
        }
        self.ghost_dots += dots;
        if dots == 0 {
            self.covered.push(format!("{name} not in {eye:?}"));
        }
    }
}

/// What other features do in one eye near a feature: their ink, and where they hide what is behind them. Nothing hides
/// a watch mark, and a watch mark hides lines alone.
fn others(page: &Page, feature: &Feature, eye: Eye) -> Vec<Area> {
    let others = || page.features.iter().filter(|f| f.id != feature.id && f.is_for(eye));
    let mut areas: Vec<_> = others().flat_map(|f| f.ink(eye)).collect();
    let is_line = matches!(feature.role.as_str(), "trail" | "guide");
    if feature.role != "watch" {
        areas.extend(others().filter(|f| is_line || f.role != "watch").flat_map(|f| f.shadow(eye)));
    }
    areas
}

/// How near to a bend or an end a line is not crossed, mm.
const BEND: f64 = 3.0;
/// From crossing to crossing on a long straight piece, mm.
const PIECE: f64 = 2.0;

/// Where to cross a line, with its direction there: between the points of long pieces, at the points of short ones.
fn crossings(line: &[[f64; 2]], closed: bool) -> Vec<([f64; 2], [f64; 2])> {
    let count = line.len();
    let mut places = Vec::new();
    for i in 0..if closed { count } else { count - 1 } {
        let (from, to) = (line[i], line[(i + 1) % count]);
        let direction = [to[0] - from[0], to[1] - from[1]];
        let length = direction[0].hypot(direction[1]);
        if 2.0 * BEND < length {
            let steps = ((length - 2.0 * BEND) / PIECE).ceil();
            let share = |k: usize| (BEND + (length - 2.0 * BEND) * k as f64 / steps) / length;
            places.extend(
                (0..=steps as usize)
                    .map(|k| ([from[0] + direction[0] * share(k), from[1] + direction[1] * share(k)], direction)),
            );
        } else if 0 < i || closed {
            let before = line[(i + count - 1) % count];
            places.push((from, [to[0] - before[0], to[1] - before[1]]));
        }
    }
    places
}
