//! Lines of an author's text in the art: set below one another from a common left edge, on even baselines.
//!
//! Letters stand at one depth a line; how far their half-images lie apart is the solver's business.

use crate::diagnostics::{Diagnostic, codes};
use crate::outline;
use crate::scene::{Feature, Shape};
use crate::spec::field::{Field, Takes, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, plain};

use super::parts::{Part, Point};
use super::ramp::Ramp;

/// `size` of kinds that set text: from 10-point to 60-point type.
pub const SIZE: Field = Field::required(
    "size",
    Takes::Ramp(&Takes::Length(mm(2.3, 14.2))),
    "The height of a capital letter: `\"2.4 mm\"` is 10-point type, `\"4.3 mm\"` 18-point, `\"6.6 mm\"` 28-point.",
);

/// `large_print` of kinds that set text.
pub const LARGE: Field = Field::default(
    "large_print",
    Takes::Flag,
    "false",
    "Sets every letter half as high again, on every level: large print from the same file.",
);

/// How much higher letters are in large print (design choice: 12-point becomes 18-point, which guides call large).
const LARGER: f64 = 1.5;

/// From baseline to baseline, in heights of a capital (design choice: half as much again as the type is high).
pub const PITCH: f64 = 2.2;

/// Reads [`SIZE`] with [`LARGE`].
pub fn read_size(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Ramp<Mm>> {
    let size: Option<Ramp<Mm>> = table.get(reader, "size");
    let large: bool = table.get(reader, "large_print")?;
    let larger = |size: Mm| if large { Mm(size.0 * LARGER) } else { size };
    Some(size?.map(larger))
}

/// Whether every character can be set; pushes the first of each line that cannot.
pub fn can_be_set(reader: &mut Reader<'_>, lines: &[Placed<String>]) -> bool {
    let missing: Vec<_> =
        lines.iter().filter_map(|line| outline::missing(&line.value).map(|c| (c, line.place))).collect();
    for &(character, place) in &missing {
        let problem = Diagnostic::error(codes::TEXT, place, format!("the typeface has no `{character}`"))
            .with_label("cannot be set")
            .with_help("write it with letters of the Latin alphabet");
        reader.push(problem);
    }
    missing.is_empty()
}

/// Whether every line fits a width on every level; pushes each that does not, at the first level where it does not.
pub fn fit(reader: &mut Reader<'_>, lines: &[Placed<String>], size: &Ramp<Mm>, width: f64) -> bool {
    let levels = 1..=size.levels().unwrap_or(1);
    let mut fits = true;
    for line in lines {
        let wide = |level| line_width(&line.value, size.at(level).0);
        let Some(level) = levels.clone().find(|&level| width < wide(level)) else { continue };
        let message = format!(
            "this line is `{}` mm wide on level {level}, limit `{}` mm",
            plain(wide(level), 1),
            plain(width, 1)
        );
        let problem = Diagnostic::error(codes::RANGE, line.place, message)
            .with_label("too wide")
            .with_help("shorten it, break it in two, or write a smaller `size`");
        reader.push(problem);
        fits = false;
    }
    fits
}

/// How wide a line is, mm.
pub fn line_width(line: &str, size: f64) -> f64 {
    outline::line_box(line).width() * size
}

/// A line as a part, its ink from a left edge on, on a baseline.
pub fn line(part: Part<'_>, text: &str, (left, baseline): Point, size: f64) -> Feature {
    let area = outline::line_box(text).scale_from_origin(size);
    let at = (left + area.width() / 2.0, baseline + area.center().y);
    part.shape(Shape::Text(text.to_owned()), at, size, size)
}

/// The baselines of so many lines of this size about the height `middle`, mm.
pub fn baselines(count: usize, size: f64, middle: f64) -> impl Iterator<Item = f64> {
    let pitch = size * PITCH;
    let first = middle + size / 2.0 - pitch * (count.saturating_sub(1)) as f64 / 2.0;
    (0..count).map(move |line| first + pitch * line as f64)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// All capitals stand on the baseline and are `size` high, whatever hangs below it in the same line.
    #[test]
    fn lines_stand_on_their_baselines() {
        let place = crate::diagnostics::Place::start_of(crate::diagnostics::Sources::default().add("a.toml", ""));
        for text in ["HE", "Hg", "Hj,"] {
            let depth = crate::scene::Depth::Page;
            let part = Part::target("line", crate::scene::Eyes::Both, &depth, place);
            let feature = line(part, text, (-20.0, 7.0), 6.0);
            let crate::scene::Form::Shape { shape, at, .. } = &feature.form else { panic!() };
            let drawn = outline::path(shape, 6.0, (0.0, 0.0), 1.0);
            // The stem of the H reaches from a capital above the baseline down to it.
            let inked =
                |y: f64| kurbo::Shape::winding(&drawn, kurbo::Point::new(-20.0 + 0.4 - at.x.0, y - at.y.0)) != 0;
            assert!(inked(6.95) && !inked(7.05) && inked(1.05) && !inked(0.95), "{text}");
        }
    }
}
