//! One sheet as one page: draws it and returns its part of the structure tree, in the order of the nodes.

use std::collections::{BTreeMap, VecDeque};
use std::num::NonZeroU32;

use krilla::Document;
use krilla::annotation::{Annotation, LinkAnnotation, Target};
use krilla::destination::{Destination, XyzDestination};
use krilla::geom::{Point, Rect};
use krilla::page::{NumberingStyle, Page, PageLabel, PageSettings};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, Identifier, Node as TagNode, Tag, TagGroup};

use super::ink::{Ink, Style, points, rect};
use super::{PdfError, tags};
use crate::colour::Srgb8;
use crate::layout::sheet::{Furniture, Node, Role, Sheet};

const WHITE: Srgb8 = Srgb8([255, 255, 255]);

/// Writes `sheet` as page `index` of the document. `places` are the page indices by sheet id.
pub(crate) fn write(
    document: &mut Document,
    sheet: &Sheet,
    index: usize,
    places: &BTreeMap<&str, usize>,
    style: &Style<'_>,
) -> Result<Vec<TagNode>, PdfError> {
    let size = kurbo::Rect::from_origin_size((0.0, 0.0), sheet.size);
    let area = rect(size).ok_or_else(|| content(sheet, "the page has no size"))?;
    let label = PageLabel::new(Some(NumberingStyle::Arabic), None, NonZeroU32::new(sheet.number));
    let settings = PageSettings::from_wh(points(sheet.size.width), points(sheet.size.height))
        .ok_or_else(|| content(sheet, "the page has no size"))?
        .with_page_label(label);
    let mut page = document.start_page_with(settings);
    let mut links = VecDeque::new();
    annotate(&mut page, sheet, &sheet.nodes, places, &mut links)?;
    let mut canvas = Canvas { surface: page.surface(), sheet, style, index, links };
    canvas.ground(area)?;
    canvas.nodes(&sheet.nodes, None)
}

/// Puts the links of a sheet on its page, in the order of the nodes. (The page cannot be drawn on at the same time.)
fn annotate(
    page: &mut Page<'_>,
    sheet: &Sheet,
    nodes: &[Node],
    places: &BTreeMap<&str, usize>,
    links: &mut VecDeque<Identifier>,
) -> Result<(), PdfError> {
    for node in nodes {
        let Node::Group(role, inner) = node else { continue };
        match role {
            Role::Artifact(_) if holds_link(inner) => return Err(structure(sheet, "a link stands in page furniture")),
            Role::Link { target, area, alt } => {
                let unknown = || PdfError::UnknownTarget { sheet: sheet.id.clone(), target: target.clone() };
                let place = *places.get(target.as_str()).ok_or_else(unknown)?;
                let area = rect(*area).ok_or_else(|| content(sheet, "a link has no area"))?;
                let destination = Destination::Xyz(XyzDestination::new(place, Point::from_xy(0.0, 0.0)));
                let link = LinkAnnotation::new_with_quad_points(vec![area.into()], Target::Destination(destination));
                links.push_back(page.add_tagged_annotation(Annotation::new_link(link, Some(alt.clone()))));
            }
            _ => {}
        }
        annotate(page, sheet, inner, places, links)?;
    }
    Ok(())
}

fn holds_link(nodes: &[Node]) -> bool {
    nodes.iter().any(|node| match node {
        Node::Group(role, inner) => matches!(role, Role::Link { .. }) || holds_link(inner),
        _ => false,
    })
}

fn structure(sheet: &Sheet, problem: &'static str) -> PdfError {
    PdfError::Structure { sheet: sheet.id.clone(), problem }
}

fn content(sheet: &Sheet, problem: &'static str) -> PdfError {
    PdfError::Content { sheet: sheet.id.clone(), problem }
}

struct Canvas<'a> {
    surface: Surface<'a>,
    sheet: &'a Sheet,
    style: &'a Style<'a>,
    index: usize,
    links: VecDeque<Identifier>,
}

/// What marks outside a group are to a reader.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// Part of the text or of a figure.
    Content,
    /// Rules, boxes and panels between them.
    Furniture,
    /// A group, which says itself what it is.
    Group,
}

impl Canvas<'_> {
    /// The one way to draw: within a tag. Tags do not nest, since drawing has no access to the canvas.
    fn tagged(
        &mut self,
        tag: ContentTag<'_>,
        draw: impl FnOnce(&mut Ink<'_, '_>) -> Result<(), &'static str>,
    ) -> Result<Identifier, PdfError> {
        let id = self.surface.start_tagged(tag);
        let drawn = draw(&mut Ink::new(&mut self.surface, &self.sheet.inks, self.style));
        self.surface.end_tagged();
        drawn.map(|()| id).map_err(|problem| content(self.sheet, problem))
    }

    /// Paper is white by itself.
    fn ground(&mut self, area: Rect) -> Result<(), PdfError> {
        if self.sheet.inks.ground != WHITE {
            let background = Artifact::new(ArtifactType::Background, Some(area));
            self.tagged(ContentTag::Artifact(background), |ink| ink.ground(area))?;
        }
        Ok(())
    }

    /// Draws the content of `role` (of the page, if `None`) and returns what it adds to the structure.
    fn nodes(&mut self, nodes: &[Node], role: Option<&Role>) -> Result<Vec<TagNode>, PdfError> {
        let in_figure = matches!(role, Some(Role::Figure { .. }));
        let kind = |node: &Node| match node {
            Node::Group(..) => Kind::Group,
            Node::Text(_) => Kind::Content,
            Node::Fill(_) | Node::Patch(_) | Node::Art(_) if in_figure => Kind::Content,
            Node::Fill(_) | Node::Patch(_) | Node::Art(_) => Kind::Furniture,
        };
        let mut children = Vec::new();
        for part in nodes.chunk_by(|a, b| kind(a) == kind(b)) {
            match part.first().map_or(Kind::Group, kind) {
                Kind::Group => self.groups(part, &mut children)?,
                Kind::Furniture if part.iter().any(|node| matches!(node, Node::Art(_) | Node::Patch(_))) => {
                    return Err(structure(self.sheet, "art stands outside a figure, so no words tell what it shows"));
                }
                Kind::Furniture => {
                    self.tagged(tags::furniture(Furniture::Layout), |ink| ink.draw(part))?;
                }
                Kind::Content if role.is_some_and(tags::holds_no_text) => {
                    return Err(structure(self.sheet, "text stands in a list, a table or a row, but in no part of it"));
                }
                Kind::Content => {
                    let id = self.tagged(ContentTag::Other, |ink| ink.draw(part))?;
                    children.push(match role {
                        Some(_) => id.into(),
                        None => TagGroup::with_children(Tag::P, vec![id.into()]).into(),
                    });
                }
            }
        }
        Ok(children)
    }

    fn groups(&mut self, groups: &[Node], children: &mut Vec<TagNode>) -> Result<(), PdfError> {
        for node in groups {
            let Node::Group(role, inner) = node else { continue };
            if let Role::Artifact(kind) = role {
                self.tagged(tags::furniture(*kind), |ink| ink.draw(inner))?;
            } else {
                children.extend(self.group(role, inner)?);
            }
        }
        Ok(())
    }

    /// A group with a place in the structure. One without content has none, but for cells: rows keep their columns.
    fn group(&mut self, role: &Role, inner: &[Node]) -> Result<Option<TagNode>, PdfError> {
        let area = match role {
            Role::Figure { area, .. } => Some(rect(*area).ok_or_else(|| content(self.sheet, "a figure has no area"))?),
            _ => None,
        };
        let link = if matches!(role, Role::Link { .. }) { self.links.pop_front() } else { None };
        let mut children = self.nodes(inner, Some(role))?;
        children.extend(link.map(TagNode::from));
        if matches!(role, Role::Table) {
            children = tags::sections(children);
        }
        let keep = !children.is_empty() || matches!(role, Role::Cell | Role::HeadCell(_));
        let tag = tags::tag(role, inner, area, self.index).filter(|_| keep);
        Ok(tag.map(|tag| TagGroup::with_children(tag, children).into()))
    }
}
