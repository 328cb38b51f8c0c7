//! The spectra sheet: the light of the medium, the two filters, and what of that light passes to each eye.

use kurbo::Rect;

use crate::colour::{Medium, Spectrum};
use crate::layout::compose::{Column, Composer, Piece};
use crate::layout::grid::{CAPTION, Grid};
use crate::layout::plot::{Curve, Line, Plot};
use crate::layout::sheet::Role;
use crate::layout::{Book, Draft};
use crate::units::plain;

use super::{columns, foot, opening, words};

const TITLE: &str = "Light, filters and what passes";

/// A kind of light that the page sends, with its share of the page's white to each eye.
struct Light {
    name: &'static str,
    spectrum: Spectrum,
    line: Line,
    shares: [f64; 2],
}

/// The one sheet of plots.
pub(crate) fn draft(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Draft {
    composer.sheet = "ink-spectra".to_owned();
    let lead = words::seen_on(composer.tongue, book.edition);
    let (mut nodes, top) = opening(composer, grid, TITLE, &lead);
    let areas = if grid.beside {
        columns(grid, top)
    } else {
        let whole = Rect::new(grid.safe.x0, top, grid.safe.x1, foot(grid));
        [whole, whole]
    };
    let width = areas[0].width();
    let note = composer.lines(note(book), &CAPTION, width).role(Role::Paragraph);
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
        title: TITLE.to_owned(),
        description: "Four plots over the wavelength: the light, the filters, and what passes to each eye.".to_owned(),
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
    let views = [&book.views.left, &book.views.right];
    match &book.edition.colour.medium {
        Medium::Screen(screen) => {
            let shares = |i: usize| views.map(|view| view.channels().map_or(0.0, |channels| channels[i]));
            let names = ["red", "green", "blue"];
            let primaries = screen.primaries().iter().zip(names).zip(Line::ALL).enumerate();
            primaries
                .map(|(i, ((spectrum, name), line))| Light {
                    name,
                    spectrum: spectrum.clone(),
                    line,
                    shares: shares(i),
                })
                .collect()
        }
        Medium::Print(print) => {
            let inks = &book.plan.inks;
            let surfaces = [("ground", inks.ground), ("left mark", inks.left), ("right mark", inks.right)];
            let light = |((name, colour), line)| Light {
                name,
                spectrum: print.surface(colour).times(print.lamp()),
                line,
                shares: views.map(|view| view.luminance(colour)),
            };
            surfaces.into_iter().zip(Line::ALL).map(light).collect()
        }
    }
}

fn plots(book: &Book<'_>) -> [Plot; 4] {
    let lights = lights(book);
    let peak = lights.iter().flat_map(|light| light.spectrum.values()).fold(0.0, |peak: f64, &value| peak.max(value));
    let scale = if 0.0 < peak { 1.0 / peak } else { 0.0 };
    let glasses = &book.edition.glasses;
    let curve = |light: &Light| Curve {
        label: light.name.to_owned(),
        line: light.line,
        spectrum: light.spectrum.scaled(scale),
    };
    let sends = Plot {
        title: if words::printed(book.edition) { "What the page sends" } else { "What the screen sends" }.to_owned(),
        measure: "light, share of its peak",
        curves: lights.iter().map(curve).collect(),
    };
    let filters = [("left", &glasses.left, Line::Solid), ("right", &glasses.right, Line::Dashed)];
    let filters = Plot {
        title: "What the filters let through".to_owned(),
        measure: "share that passes",
        curves: filters
            .map(|(eye, filter, line)| Curve {
                label: format!("{eye}: {}", filter.name()),
                line,
                spectrum: filter.transmittance(),
            })
            .into(),
    };
    let passes = |eye: usize, name: &str, filter: Spectrum| Plot {
        title: format!("What passes to the {name} eye"),
        measure: "light, same scale",
        curves: lights
            .iter()
            .map(|light| Curve {
                label: format!("{} {} %", light.name, plain(light.shares[eye] * 100.0, 1)),
                line: light.line,
                spectrum: light.spectrum.times(&filter).scaled(scale),
            })
            .collect(),
    };
    let left = passes(0, "left", glasses.left.transmittance());
    let right = passes(1, "right", glasses.right.transmittance());
    [sends, filters, left, right]
}

fn note(book: &Book<'_>) -> &'static str {
    let glasses = &book.edition.glasses;
    if glasses.left.leak().is_some() || glasses.right.leak().is_some() {
        "Per cents: how bright that light is to the eye, of the page’s white without a filter. An eye that is known by its leak \
         has the curve of an ideal filter; its per cents count the leak."
    } else {
        "Per cents: how bright that light is to the eye, of the page’s white without a filter."
    }
}
