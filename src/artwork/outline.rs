//! SVG → outlines: shapes, transforms and styles are resolved by the SVG library, fills and strokes become areas.

use i_overlay::core::fill_rule::FillRule;
use kurbo::{Affine, BezPath, Cap, Join, PathEl, Shape as _, Stroke, StrokeOpts};
use usvg::roxmltree::{Document, ParsingOptions};
use usvg::tiny_skia_path::PathSegment;
use usvg::{Group, LineCap, LineJoin, Node, Options, Paint, Tree};

use std::sync::Arc;

use crate::scene::{Drawing, Part, Picture};
use crate::spec::picture::Refusal;
use crate::spec::text::shown;

use super::merge::{self, Ink};
use super::{MOST_ELEMENTS, check, expand, scan};

/// How far straight pieces may stray from a curve, as a share of the picture's longer side: 0.01 mm at 160 mm, the
/// largest size. Design choice.
const ACCURACY: f64 = 6e-5;
/// The most dashes of one line. Design choice.
const MOST_DASHES: f64 = 2_000.0;

/// An SVG as one outline. `name` is what pages call it.
///
/// Every paint is the one ink, gradients too; what is painted white, or cannot be an outline, is refused.
pub fn drawing(name: &str, bytes: &[u8]) -> Result<Drawing, Refusal> {
    let text = read(bytes)?;
    let tree = tree(&parse(text)?)?;
    let path = joined(tree.root(), &tree)?.ok_or_else(empty)?;
    let (outline, extent) = merge::unit(&path, "the drawing")?;
    Ok(Drawing { name: name.to_owned(), outline, extent })
}

/// An SVG as one outline for each group at its top, in one frame. `name` is what pages call the whole.
pub fn parts(name: &str, bytes: &[u8]) -> Result<Picture, Refusal> {
    let text = read(bytes)?;
    let document = parse(text)?;
    let tree = tree(&document)?;
    let mut drawn = Vec::new();
    for id in top_groups(&document)? {
        let nothing = || Refusal::new(format!("the group `{}` draws nothing", shown(id)), "leave it out");
        let group = find(tree.root(), id).ok_or_else(nothing)?;
        drawn.push((id, joined(group, &tree)?.ok_or_else(nothing)?));
    }
    let bounds = merge::bounds(drawn.iter().map(|(_, path)| path)).ok_or_else(empty)?;
    let longer = bounds.width().max(bounds.height());
    let part = |(id, path): &(&str, BezPath)| {
        let own = path.bounding_box();
        let (outline, extent) = merge::unit(path, &format!("the group `{}`", shown(id)))?;
        let drawing = Arc::new(Drawing { name: (*id).to_owned(), outline, extent });
        let at = (own.center() - bounds.center()) / longer;
        let size = own.width().max(own.height()) / longer;
        Ok(Part { id: (*id).to_owned(), drawing, at: (at.x, at.y), size })
    };
    let parts = drawn.iter().map(part).collect::<Result<_, Refusal>>()?;
    let extent = (bounds.width() / longer, bounds.height() / longer);
    Ok(Picture { name: name.to_owned(), extent, parts })
}

fn empty() -> Refusal {
    Refusal::new("draws nothing", "fill a shape, or give a line a stroke")
}

/// The text of an SVG, after a first look at it.
fn read(bytes: &[u8]) -> Result<&str, Refusal> {
    if bytes.starts_with(&[0x1f, 0x8b]) {
        return Err(Refusal::new("is compressed", "save it as a plain SVG"));
    }
    let text = std::str::from_utf8(bytes).map_err(|_| Refusal::new("is not UTF-8", "save it as UTF-8"))?;
    scan::scan(text)?;
    Ok(text)
}

/// The elements of an SVG, all of them such as an outline can show.
fn parse(text: &str) -> Result<Document<'_>, Refusal> {
    let nodes_limit = u32::try_from(8 * MOST_ELEMENTS).unwrap_or(u32::MAX);
    let options = ParsingOptions { allow_dtd: false, nodes_limit, ..ParsingOptions::default() };
    let text = text.trim_start_matches('\u{feff}');
    let document = Document::parse_with_options(text, options).map_err(|problem| {
        let message = format!("cannot be read as XML: {}", shown(&problem.to_string()));
        Refusal::new(message, "save it again as SVG")
    })?;
    check::check(&document)?;
    expand::check(&document)?;
    Ok(document)
}

/// The SVG with every style, transform and copy resolved.
fn tree(document: &Document<'_>) -> Result<Tree, Refusal> {
    let tree = Tree::from_xmltree(document, &Options::default()).map_err(|problem| {
        let message = format!("cannot be read as SVG: {}", shown(&problem.to_string()));
        Refusal::new(message, "give it a width and a height, or a `viewBox`")
    })?;
    if reach(&tree).is_finite() {
        Ok(tree)
    } else {
        Err(Refusal::new("has places beyond every page", "scale the drawing down"))
    }
}

/// The longer side of all that is drawn, in the units of the picture.
fn reach(tree: &Tree) -> f64 {
    let bounds = tree.root().abs_stroke_bounding_box();
    f64::from(bounds.width().max(bounds.height()))
}

/// The ids of the groups at the top, in the order of drawing.
fn top_groups<'a>(document: &'a Document<'_>) -> Result<Vec<&'a str>, Refusal> {
    let top = document.root_element().children().filter(check::is_drawn);
    top.map(|node| match (node.tag_name().name(), node.attribute("id")) {
        ("g", Some(id)) => Ok(id),
        ("g", None) => Err(Refusal::new("has a group without `id` at its top", "give every group at the top an `id`")),
        (name, _) => {
            let message = format!("has a `<{name}>` outside the groups at its top");
            Err(Refusal::new(message, "put it into a group with an `id`"))
        }
    })
    .collect()
}

fn find<'a>(group: &'a Group, id: &str) -> Option<&'a Group> {
    let groups = group.children().iter().filter_map(|node| if let Node::Group(g) = node { Some(g) } else { None });
    groups.into_iter().find_map(|g| if g.id() == id { Some(&**g) } else { find(g, id) })
}

/// All that a group draws, as one outline.
fn joined(group: &Group, tree: &Tree) -> Result<Option<BezPath>, Refusal> {
    let mut ink = Ink::default();
    collect(group, reach(tree) * ACCURACY, &mut ink)?;
    ink.joined()
}

fn collect(group: &Group, accuracy: f64, ink: &mut Ink) -> Result<(), Refusal> {
    if group.clip_path().is_some() || group.mask().is_some() || !group.filters().is_empty() {
        return Err(Refusal::new("has a clip, a mask or a filter", "cut the shapes themselves"));
    }
    for node in group.children() {
        match node {
            Node::Group(inner) => collect(inner, accuracy, ink)?,
            Node::Path(path) if path.is_visible() => draw(path, accuracy, ink)?,
            Node::Path(_) => {}
            Node::Image(_) | Node::Text(_) => {
                return Err(Refusal::new("has an image or letters", "convert them to outlines"));
            }
        }
    }
    Ok(())
}

/// Adds what a path fills and strokes.
fn draw(path: &usvg::Path, accuracy: f64, ink: &mut Ink) -> Result<(), Refusal> {
    let transform = path.abs_transform();
    let [a, b, c, d, e, f] = [transform.sx, transform.ky, transform.kx, transform.sy, transform.tx, transform.ty];
    let transform = Affine::new([a, b, c, d, e, f].map(f64::from));
    let line = line(path);
    if let Some(fill) = path.fill().filter(|fill| 0.0 < fill.opacity().get()) {
        inked(fill.paint())?;
        let rule = match fill.rule() {
            usvg::FillRule::NonZero => FillRule::NonZero,
            usvg::FillRule::EvenOdd => FillRule::EvenOdd,
        };
        ink.fill(&(transform * &line), rule, accuracy)?;
    }
    if let Some(stroke) = path.stroke().filter(|stroke| 0.0 < stroke.opacity().get()) {
        inked(stroke.paint())?;
        let scale = transform.determinant().abs().sqrt();
        // A transform without area leaves a line without width.
        if 0.0 < scale {
            let accuracy_here = accuracy / scale;
            let style = style(stroke, &line, accuracy_here)?;
            let band = kurbo::stroke(line.elements().iter().copied(), &style, &StrokeOpts::default(), accuracy_here);
            ink.fill(&(transform * band), FillRule::NonZero, accuracy)?;
        }
    }
    Ok(())
}

/// White paint covers in a drawing program and would be ink here.
fn inked(paint: &Paint) -> Result<(), Refusal> {
    let white = usvg::Color { red: 255, green: 255, blue: 255 };
    match paint {
        Paint::Color(colour) if *colour == white => {
            let message = "paints something white: every paint is ink here, so it would not cover what lies under it";
            Err(Refusal::new(message, "leave it out, or cut a hole into the shape under it"))
        }
        Paint::Pattern(_) => Err(Refusal::new("has a pattern", "fill with a plain colour")),
        Paint::Color(_) | Paint::LinearGradient(_) | Paint::RadialGradient(_) => Ok(()),
    }
}

fn line(path: &usvg::Path) -> BezPath {
    let point = |p: usvg::tiny_skia_path::Point| kurbo::Point::new(f64::from(p.x), f64::from(p.y));
    let elements = path.data().segments().map(|segment| match segment {
        PathSegment::MoveTo(p) => PathEl::MoveTo(point(p)),
        PathSegment::LineTo(p) => PathEl::LineTo(point(p)),
        PathSegment::QuadTo(a, p) => PathEl::QuadTo(point(a), point(p)),
        PathSegment::CubicTo(a, b, p) => PathEl::CurveTo(point(a), point(b), point(p)),
        PathSegment::Close => PathEl::ClosePath,
    });
    elements.collect()
}

/// How a stroke is drawn; a line of very many dashes is refused.
fn style(stroke: &usvg::Stroke, line: &BezPath, accuracy: f64) -> Result<Stroke, Refusal> {
    let cap = match stroke.linecap() {
        LineCap::Butt => Cap::Butt,
        LineCap::Round => Cap::Round,
        LineCap::Square => Cap::Square,
    };
    let join = match stroke.linejoin() {
        LineJoin::Miter | LineJoin::MiterClip => Join::Miter,
        LineJoin::Round => Join::Round,
        LineJoin::Bevel => Join::Bevel,
    };
    let style = Stroke::new(f64::from(stroke.width().get()))
        .with_caps(cap)
        .with_join(join)
        .with_miter_limit(f64::from(stroke.miterlimit().get()));
    let Some(dashes) = stroke.dasharray() else { return Ok(style) };
    let dashes: Vec<f64> = dashes.iter().map(|&dash| f64::from(dash)).collect();
    let round = dashes.iter().sum::<f64>() / dashes.len() as f64;
    let count = line.perimeter(accuracy) / round;
    if count < MOST_DASHES {
        return Ok(style.with_dashes(f64::from(stroke.dashoffset()), dashes));
    }
    Err(Refusal::new(format!("has a line of more than {MOST_DASHES} dashes"), "make the dashes longer"))
}
