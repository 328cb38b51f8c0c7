//! Pictures of the front pages: shapes on the page itself, each for one eye or for both.

use kurbo::{Affine, Rect};

use crate::layout::compose::Piece;
use crate::layout::sheet::{Art, Node, Role};
use crate::outline;
use crate::scene::{Eyes, Shape};

/// A shape at page depth.
#[derive(Debug, Clone)]
pub(crate) struct Mark {
    /// Names it in the report.
    pub id: &'static str,
    /// Its outline.
    pub shape: Shape,
    /// Who sees it.
    pub eyes: Eyes,
    /// Its middle, mm from the top left of the picture.
    pub at: (f64, f64),
    /// The longer side of its box, mm.
    pub size: f64,
    /// Width of its lines, mm.
    pub weight: f64,
}

/// A picture of marks, with words for those who do not see it.
pub(crate) fn figure(width: f64, height: f64, alt: &str, marks: &[Mark]) -> Piece {
    let mut art = Art::default();
    for mark in marks {
        let extent = outline::extent(&mark.shape, mark.size);
        let path = Affine::translate(mark.at) * outline::path(&mark.shape, mark.size, extent, mark.weight);
        match mark.eyes {
            Eyes::Left => art.left.push(path),
            Eyes::Right => art.right.push(path),
            Eyes::Both => art.flat.push(path),
        }
    }
    art.overlap = crate::layout::art::overlap(&art.left, &art.right);
    let area = Rect::new(0.0, 0.0, width, height);
    let figure = Role::Figure { alt: alt.to_owned(), area };
    Piece { height, nodes: vec![Node::Group(figure, vec![Node::Art(art)])] }
}
