//! The strip of words over a picture that compares two issues of a page. No page of the book.

use kurbo::{Rect, Shape as _, Size};

use super::TYPESETTER;
use super::compose::Composer;
use super::grid::TITLE;
use super::sheet::{Face, Node, Patch, Role, Sheet};
use super::text::Style;
use crate::colour::{Inks, Srgb8};
use crate::diagnostics::Diagnostic;
use crate::language::{Language, Tongue};
use crate::spec::TextSize;
use crate::units::{Mm, Pt};

/// Height of the strip, mm.
pub const HEIGHT: f64 = 19.0;

/// Large enough to be read at 60 pixels per inch.
const HEAD: Style = Style { size: Pt(17.0), leading: Mm(8.0), ..TITLE };
const NOTE: Style = Style { face: Face::Regular, size: Pt(14.0), leading: Mm(7.0), ..TITLE };
/// Side of a swatch, mm.
const SWATCH: f64 = 4.0;

/// What stands in a column of the strip.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Column {
    /// Its heading.
    pub head: String,
    /// Below it: words, each after a swatch of a colour where it has one.
    pub notes: Vec<(Option<Srgb8>, String)>,
}

/// The strip over so many columns of the same width, for a picture of this width in mm.
///
/// # Errors
/// What cannot be set.
pub fn strip(columns: &[Column], width: f64, inks: Inks) -> Result<Sheet, Vec<Diagnostic>> {
    TYPESETTER.with_borrow_mut(|setter| {
        let mut composer = Composer::new(setter, Tongue::of(Language::En), TextSize::Standard);
        let mut nodes = Vec::new();
        let each = width / f64::from(u32::try_from(columns.len().max(1)).unwrap_or(1));
        for (column, index) in columns.iter().zip(0_u32..) {
            nodes.extend(self::column(&mut composer, column, each * f64::from(index) + 4.0, each));
        }
        let area = Rect::new(0.0, 0.0, width, HEIGHT);
        let words = columns.iter().map(|column| column.head.as_str()).collect::<Vec<_>>().join("; ");
        let sheet = Sheet {
            number: 1,
            id: "strip".to_owned(),
            title: words.clone(),
            description: words.clone(),
            language: Language::En.tag(),
            outline_level: 0,
            size: Size::new(width, HEIGHT),
            inks,
            nodes: vec![Node::Group(Role::Figure { alt: words, area }, nodes)],
        };
        if composer.problems.is_empty() { Ok(sheet) } else { Err(composer.problems) }
    })
}

fn column(composer: &mut Composer<'_>, column: &Column, left: f64, width: f64) -> Vec<Node> {
    let mut nodes = composer.lines(&column.head, &HEAD, width).moved(left, 1.5).nodes;
    let (mut x, top) = (left, 10.0);
    for (colour, words) in &column.notes {
        if let Some(colour) = colour {
            let middle = top + NOTE.leading.0 * 0.48;
            let area = Rect::new(x, middle - SWATCH / 2.0, x + SWATCH, middle + SWATCH / 2.0);
            nodes.push(Node::Patch(Patch { path: area.to_path(0.1), colour: *colour }));
            x += SWATCH + 1.5;
        }
        let wide = composer.width_of(words, &NOTE) + 1.0;
        nodes.extend(composer.lines(words, &NOTE, wide).moved(x, top).nodes);
        x += wide + 4.0;
    }
    nodes
}
