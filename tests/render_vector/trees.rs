//! Trees of content that no layout would make: the renderers must write them or name the fault, and never panic.

use depthpress::colour::Srgb8;
use depthpress::layout::sheet::{Art, Fill, Furniture, HeadScope, Node, Patch, Role, Sheet, Tone};
use depthpress::layout::text::Typesetter;
use depthpress::render::pdf::{PdfError, pdf};
use depthpress::render::svg::svg;
use kurbo::{BezPath, Rect, Shape};
use proptest::prelude::*;
use resvg::usvg::{Options, Tree};

use super::{about, sheets};

fn role() -> impl Strategy<Value = Role> {
    let area = (0.0..200.0_f64, 0.0..200.0_f64, -1.0..90.0_f64).prop_map(|(x, y, w)| Rect::new(x, y, x + w, y + w));
    let figure = (area.clone(), ".{0,3}").prop_map(|(area, alt)| Role::Figure { alt, area });
    let target = prop_oneof![8 => Just("mooring-rings".to_owned()), 1 => Just("nowhere".to_owned())];
    let link = (area, "[a-z]{1,9}", target).prop_map(|(area, alt, target)| Role::Link { alt, area, target });
    prop_oneof![
        (0..5_u8).prop_map(Role::Heading),
        Just(Role::Paragraph),
        Just(Role::List),
        Just(Role::ListItem),
        Just(Role::ListLabel),
        Just(Role::ListBody),
        Just(Role::Table),
        Just(Role::Row),
        Just(Role::HeadCell(HeadScope::Column)),
        Just(Role::HeadCell(HeadScope::Row)),
        Just(Role::Cell),
        Just(Role::Caption),
        Just(Role::Artifact(Furniture::Footer)),
        Just(Role::Artifact(Furniture::Layout)),
        figure,
        link,
    ]
}

fn leaf() -> impl Strategy<Value = Node> {
    let text = "a[ -~äµ\u{ad}]{0,30}".prop_map(|words| Node::Text(sheets::run(&mut Typesetter::new(), &words)));
    let path = prop_oneof![
        Just(BezPath::new()),
        (0.0..200.0_f64, 0.0..9.0_f64).prop_map(|(x, w)| Rect::new(x, x, x + w, x + w).to_path(0.1)),
        (0.0..200.0_f64).prop_map(|x| Rect::new(x, x, x, x).to_path(0.1)),
    ];
    let fill = (path.clone(), 0.0..1.0_f32).prop_map(|(path, tone)| Node::Fill(Fill { path, tone: Tone(tone) }));
    let patch = path.clone().prop_map(|path| Node::Patch(Patch { path, colour: Srgb8([9, 80, 200]) }));
    let art = path.prop_map(|path| Node::Art(Art { left: vec![path], ..Art::default() }));
    prop_oneof![4 => text, 2 => fill, 1 => patch, 1 => art]
}

fn tree() -> impl Strategy<Value = Node> {
    leaf().prop_recursive(4, 40, 6, |inner| {
        (role(), proptest::collection::vec(inner, 0..6)).prop_map(|(role, inner)| Node::Group(role, inner))
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(120))]

    #[test]
    fn any_tree_is_written_or_refused(nodes in proptest::collection::vec(tree(), 0..5)) {
        let sheet = Sheet { nodes, ..sheets::book(sheets::WHITE).remove(0) };
        prop_assert!(Tree::from_str(&svg(&sheet), &Options::default()).is_ok());
        match pdf(&about(), &[sheet]) {
            Ok(bytes) => prop_assert!(bytes.starts_with(b"%PDF-1.7")),
            Err(error) => prop_assert!(error != PdfError::Empty && !error.to_string().is_empty()),
        }
    }
}
