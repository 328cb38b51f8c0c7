//! Pictures of the front pages: shapes on the page itself, or on the base, each for one eye or for both.

use kurbo::{Affine, Rect};

use crate::layout::art::{lift, overlap};
use crate::layout::base::Ride;
use crate::layout::compose::Piece;
use crate::layout::sheet::{Art, Node, Role};
use crate::outline;
use crate::scene::{Eye, Eyes, Shape};
use crate::solve::half_x;

/// A shape at the depth of the page.
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

/// A picture of marks that rides on a base, with words for those who do not see it.
pub(crate) fn figure(width: f64, height: f64, alt: &str, marks: &[Mark], ride: Ride) -> Piece {
    let mut art = Art::default();
    for mark in marks {
        let extent = outline::extent(&mark.shape, mark.size);
        let path = |eye| {
            let at = (half_x(mark.at.0, ride.parallax, eye), mark.at.1);
            Affine::translate(at) * outline::path(&mark.shape, mark.size, extent, mark.weight)
        };
        match mark.eyes {
            Eyes::Both if ride.is_none() => art.flat.push(path(Eye::Left)),
            eyes => {
                art.left.extend(eyes.include(Eye::Left).then(|| path(Eye::Left)));
                art.right.extend(eyes.include(Eye::Right).then(|| path(Eye::Right)));
            }
        }
    }
    lift(&mut art, ride);
    art.overlap = overlap(&art.left, &art.right);
    let area = Rect::new(0.0, 0.0, width, height);
    let figure = Role::Figure { alt: alt.to_owned(), area };
    Piece { height, nodes: vec![Node::Group(figure, vec![Node::Art(art)])] }
}
