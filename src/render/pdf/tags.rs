//! Roles as structure tags (ISO 32000-1, 14.8.4).

use std::num::NonZeroU16;

use krilla::geom::Rect;
use krilla::tagging::{
    Artifact, ArtifactType, BBox, ContentTag, ListNumbering, Node as TagNode, Placement, TableHeaderScope, Tag,
    TagGroup, TagKind,
};

use crate::layout::sheet::{Furniture, HeadScope, Node, Role, words};

/// Marked content that counts as page furniture.
pub(crate) fn furniture(kind: Furniture) -> ContentTag<'static> {
    ContentTag::Artifact(Artifact::with_kind(match kind {
        Furniture::Header => ArtifactType::Header,
        Furniture::Footer => ArtifactType::Footer,
        Furniture::Layout => ArtifactType::Layout,
    }))
}

/// The tag of a role, or `None` for page furniture. `area` is the figure's, in points, `page` its page index.
pub(crate) fn tag(role: &Role, inner: &[Node], area: Option<Rect>, page: usize) -> Option<TagKind> {
    Some(match role {
        Role::Heading(level) => {
            let level = NonZeroU16::new(u16::from(*level)).unwrap_or(NonZeroU16::MIN);
            Tag::Hn(level, Some(words(inner))).into()
        }
        Role::Paragraph => Tag::P.into(),
        Role::List => Tag::L(numbering(inner)).into(),
        Role::ListItem => Tag::LI.into(),
        Role::ListLabel => Tag::Lbl.into(),
        Role::ListBody => Tag::LBody.into(),
        Role::Table => Tag::Table.into(),
        Role::Row => Tag::TR.into(),
        Role::HeadCell(HeadScope::Column) => Tag::TH(TableHeaderScope::Column).into(),
        Role::HeadCell(HeadScope::Row) => Tag::TH(TableHeaderScope::Row).into(),
        Role::Cell => Tag::TD.into(),
        Role::Figure { alt, .. } => Tag::Figure(Some(alt.clone()))
            .with_bbox(area.map(|rect| BBox::new(page, rect)))
            .with_placement(Some(Placement::Block))
            .into(),
        Role::Caption => Tag::Caption.into(),
        Role::Link { .. } => Tag::Link.into(),
        Role::Artifact(_) => return None,
    })
}

/// How the items of a list are labelled, as its first label shows.
fn numbering(items: &[Node]) -> ListNumbering {
    match first_label(items).and_then(|label| label.chars().next()) {
        Some('0'..='9') => ListNumbering::Decimal,
        Some('•') => ListNumbering::Disc,
        _ => ListNumbering::None,
    }
}

fn first_label(nodes: &[Node]) -> Option<String> {
    nodes.iter().find_map(|node| match node {
        Node::Group(Role::ListLabel, inner) => Some(words(inner)),
        Node::Group(Role::ListItem, inner) => first_label(inner),
        _ => None,
    })
}

/// Whether a role holds groups alone, so that loose text in it would have no place.
pub(crate) fn holds_no_text(role: &Role) -> bool {
    matches!(role, Role::List | Role::ListItem | Role::Table | Role::Row)
}

/// The rows of a table: those at its top that hold column heads alone become its head.
pub(crate) fn sections(rows: Vec<TagNode>) -> Vec<TagNode> {
    let heads = rows.iter().take_while(|row| is_head(row)).count();
    let mut rows = rows.into_iter();
    let head: Vec<TagNode> = rows.by_ref().take(heads).collect();
    let body: Vec<TagNode> = rows.collect();
    if head.is_empty() || body.is_empty() {
        return head.into_iter().chain(body).collect();
    }
    vec![TagGroup::with_children(Tag::THead, head).into(), TagGroup::with_children(Tag::TBody, body).into()]
}

fn is_head(row: &TagNode) -> bool {
    matches!(row, TagNode::Group(row) if row.children.iter().all(is_column_head))
}

fn is_column_head(cell: &TagNode) -> bool {
    let TagNode::Group(TagGroup { tag: TagKind::TH(tag), .. }) = cell else { return false };
    tag.scope() == TableHeaderScope::Column
}
