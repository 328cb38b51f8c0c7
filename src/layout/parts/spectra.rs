//! The spectra sheet: the light of the medium, the two filters, and what of that light passes to each eye.

use kurbo::Rect;

use crate::colour::{FilterModel, Medium, Spectrum};
use crate::layout::compose::{Column, Composer, Piece};
use crate::layout::grid::{CAPTION, Grid};
use crate::layout::plot::{Curve, Line, Plot};
use crate::layout::sheet::Role;
use crate::layout::{Book, Draft};

use super::{columns, foot, opening, swatches, words};

/// A kind of light that the page sends, with its share of the page's white to each eye.
struct Light {
    name: String,
    spectrum: Spectrum,
    line: Line,
    shares: [f64; 2],
}

/// The one sheet of plots.
pub(crate) fn draft(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Draft {
    composer.sheet = "ink-spectra".to_owned();
    let lead = swatches::seen_on(book.edition, composer.tongue);
    let title = composer.say("spectra-title");
    let (mut nodes, top) = opening(composer, grid, &title, &lead);
    let areas = if grid.beside {
        columns(grid, top)
    } else {
        let whole = Rect::new(grid.safe.x0, top, grid.safe.x1, foot(grid));
        [whole, whole]
    };
    let width = areas[0].width();
    let note = composer.say(note(book));
    let note = composer.lines(&note, &CAPTION, width).role(Role::Paragraph);
    let plots = plots(book);
    let rows = if grid.beside { 2.0 } else { 4.0 };
    let height = (foot(grid) - top - note.height - 2.0) / rows - GAP;
    let [mut first, mut second] = areas.map(Column::new);
    for (plot, index) in plots.into_iter().zip(0_usize..) {
        let plot: Piece = plot.draw(composer, width, height);
        let column = if grid.beside && 2 <= index { &mut second } else { &mut first };
        column.add(plot, GAP);
    }
    if grid.beside {
        second.add(note, 2.0)
    } else {
        first.add(note, 2.0)
    };
    nodes.extend(first.finish(composer));
    nodes.extend(second.finish(composer));
    Draft {
        id: "ink-spectra".to_owned(),
        title,
        description: composer.say("spectra-description"),
        outline_level: 0,
        inks: None,
        note: String::new(),
        nodes,
        footer: words::glasses(composer.tongue, book.edition),
        placed: Vec::new(),
    }
}

/// Between two plots, mm.
const GAP: f64 = 4.0;

/// The lights of a screen are its primaries; those of a print are what the paper and the two marks send back.
fn lights(book: &Book<'_>) -> Vec<Light> {
    let tongue = book.tongue;
    let views = [&book.views.left, &book.views.right];
    match &book.edition.colour.medium {
        Medium::Screen(screen) => {
            let shares = |i: usize| views.map(|view| view.channels().map_or(0.0, |channels| channels[i]));
            let names = ["spectra-red", "spectra-green", "spectra-blue"];
            let primaries = screen.primaries().iter().zip(names).zip(Line::ALL).enumerate();
            primaries
                .map(|(i, ((spectrum, name), line))| Light {
                    name: tongue.say(name),
                    spectrum: spectrum.clone(),
                    line,
                    shares: shares(i),
                })
                .collect()
        }
        Medium::Print(print) => {
            let inks = &book.plan.inks;
            let surfaces =
                [("spectra-ground", inks.ground), ("spectra-left-mark", inks.left), ("spectra-right-mark", inks.right)];
            let light = |((name, colour), line): ((&str, _), _)| Light {
                name: tongue.say(name),
                spectrum: print.surface(colour).times(print.lamp()),
                line,
                shares: views.map(|view| view.luminance(colour)),
            };
            surfaces.into_iter().zip(Line::ALL).map(light).collect()
        }
    }
}

fn plots(book: &Book<'_>) -> [Plot; 4] {
    let tongue = book.tongue;
    let lights = lights(book);
    let peak = lights.iter().flat_map(|light| light.spectrum.values()).fold(0.0, |peak: f64, &value| peak.max(value));
    let scale = if 0.0 < peak { 1.0 / peak } else { 0.0 };
    let glasses = &book.edition.glasses;
    let curve =
        |light: &Light| Curve { label: light.name.clone(), line: light.line, spectrum: light.spectrum.scaled(scale) };
    let sends = Plot {
        title: tongue.say(if words::printed(book.edition) { "spectra-page-sends" } else { "spectra-screen-sends" }),
        measure: tongue.say("spectra-peak"),
        curves: lights.iter().map(curve).collect(),
    };
    let filters =
        [("spectra-left-filter", &glasses.left, Line::Solid), ("spectra-right-filter", &glasses.right, Line::Dashed)];
    let name = |filter: &FilterModel| tongue.say(&format!("filter-{}", filter.name()));
    let filters = Plot {
        title: tongue.say("spectra-filters"),
        measure: tongue.say("spectra-share"),
        curves: filters
            .map(|(eye, filter, line)| Curve {
                label: tongue.tell(eye, &[("filter", name(filter).into())]),
                line,
                spectrum: filter.transmittance(),
            })
            .into(),
    };
    let label = |light: &Light, eye: usize| {
        let share = tongue.number(light.shares[eye] * 100.0, 1);
        tongue.tell("spectra-light", &[("light", (&light.name).into()), ("share", share.into())])
    };
    let passes = |eye: usize, title: &str, filter: Spectrum| Plot {
        title: tongue.say(title),
        measure: tongue.say("spectra-scale"),
        curves: lights
            .iter()
            .map(|light| Curve {
                label: label(light, eye),
                line: light.line,
                spectrum: light.spectrum.times(&filter).scaled(scale),
            })
            .collect(),
    };
    let left = passes(0, "spectra-passes-left", glasses.left.transmittance());
    let right = passes(1, "spectra-passes-right", glasses.right.transmittance());
    [sends, filters, left, right]
}

/// Below the plots: what their per cents are, as the id of a message.
fn note(book: &Book<'_>) -> &'static str {
    let glasses = &book.edition.glasses;
    if glasses.left.leak().is_some() || glasses.right.leak().is_some() { "spectra-note-leak" } else { "spectra-note" }
}
