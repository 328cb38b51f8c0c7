//! A finished sheet: everything a renderer needs and nothing else. Three renderers walk this one tree.
//!
//! A sheet knows no spec, no depth and no eye distance: positions are final. Coordinates are millimetres, origin at the
//! top left of the page, y down. Art comes as filled areas for each eye; colours are named by role ([`Inks`]).

use std::ops::Range;
use std::sync::Arc;

use kurbo::{Affine, BezPath, Point, Rect, Size};

use crate::colour::{Inks, Srgb8};
pub use crate::outline::fonts::Face;

/// One page of one edition.
#[derive(Debug, Clone)]
pub struct Sheet {
    /// Page number in the book, from 1.
    pub number: u32,
    /// Unique in the book, for example `mooring-rings-2`.
    pub id: String,
    /// Title for bookmarks and for the SVG title.
    pub title: String,
    /// One sentence that says what the page shows, for the SVG description.
    pub description: String,
    /// The language of its words, as a BCP 47 tag.
    pub language: &'static str,
    /// Bookmark level: 0 for a part of the book, 1 for a page inside it.
    pub outline_level: u8,
    /// Page size, mm.
    pub size: Size,
    /// The colours of this edition.
    pub inks: Inks,
    /// Content in reading order.
    pub nodes: Vec<Node>,
}

/// A piece of content.
#[derive(Debug, Clone)]
pub enum Node {
    /// Content with a role in the structure of the document.
    Group(Role, Vec<Node>),
    /// A line of shaped text.
    Text(TextRun),
    /// A filled area in the text ink: rules, boxes, symbols, solid panels.
    Fill(Fill),
    /// A solid area in a colour of its own. Stands in a figure.
    Patch(Patch),
    /// The art for the two eyes.
    Art(Art),
}

/// The structural role of a group; names follow the standard structure types of ISO 32000-1, 14.8.4.
#[derive(Debug, Clone, PartialEq)]
pub enum Role {
    /// A heading, level 1 to 3.
    Heading(u8),
    /// A paragraph.
    Paragraph,
    /// A list; holds list items.
    List,
    /// A list item; holds a label and a body.
    ListItem,
    /// The number or bullet of a list item.
    ListLabel,
    /// The text of a list item.
    ListBody,
    /// A table; holds rows.
    Table,
    /// A table row; holds cells.
    Row,
    /// A head cell.
    HeadCell(HeadScope),
    /// A data cell.
    Cell,
    /// A picture, with words for those who do not see it.
    Figure {
        /// What each eye gets and what both should see together.
        alt: String,
        /// The area it fills, mm.
        area: Rect,
    },
    /// The caption of a figure.
    Caption,
    /// A link to another sheet of the book.
    Link {
        /// Id of the sheet it leads to.
        target: String,
        /// The area to click, mm.
        area: Rect,
        /// Words for those who do not see it.
        alt: String,
    },
    /// Page furniture that is not read aloud: rules, boxes, running header and footer.
    Artifact(Furniture),
}

/// Which cells a table head speaks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeadScope {
    /// The cells below it.
    Column,
    /// The cells beside it.
    Row,
}

/// Kinds of page furniture.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Furniture {
    /// Running text at the top.
    Header,
    /// Running text at the foot.
    Footer,
    /// Rules, boxes and other marks that only order the page.
    Layout,
}

/// How strong page furniture and text stand against the ground: 1 is the full text ink, 0 the bare ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tone(pub f32);

impl Tone {
    /// Text and symbols.
    pub const FULL: Tone = Tone(1.0);
    /// Quiet text such as the footer. Against white this is about #595959, contrast 7:1.
    pub const QUIET: Tone = Tone(0.65);
    /// Hairlines and box outlines.
    pub const LINE: Tone = Tone(0.45);
    /// A soft panel behind text.
    pub const PANEL: Tone = Tone(0.07);

    /// The solid colour of this tone: between ground and text ink, channel by channel in code values.
    #[expect(clippy::cast_possible_truncation, reason = "rounded and clamped to what eight bits hold")]
    pub fn mixed(self, inks: &Inks) -> Srgb8 {
        let channel = |i: usize| {
            let (ground, text) = (f64::from(inks.ground.0[i]), f64::from(inks.text.0[i]));
            (ground + (text - ground) * f64::from(self.0)).round().clamp(0.0, 255.0) as u8
        };
        Srgb8([channel(0), channel(1), channel(2)])
    }
}

/// The words of some content in reading order, with single blanks where parts meet.
pub fn words(nodes: &[Node]) -> String {
    let mut words = String::new();
    gather(nodes, &mut words);
    words.truncate(words.trim_end().len());
    words
}

fn gather(nodes: &[Node], words: &mut String) {
    for node in nodes {
        match node {
            Node::Text(run) => words.push_str(&run.text),
            Node::Group(Role::Artifact(_), _) | Node::Fill(_) | Node::Patch(_) | Node::Art(_) => {}
            Node::Group(_, inner) => {
                if !words.is_empty() && !words.ends_with(' ') {
                    words.push(' ');
                }
                gather(inner, words);
            }
        }
    }
}

/// One shaped line, or part of one, in one face.
#[derive(Debug, Clone)]
pub struct TextRun {
    /// The face.
    pub face: Face,
    /// Type size in mm.
    pub size: f64,
    /// Start of the baseline, mm.
    pub origin: Point,
    /// Whether it stands on its head: turned by 180 degrees about its origin, so that it runs to the left.
    pub turned: bool,
    /// The glyphs in drawing order.
    pub glyphs: Vec<Glyph>,
    /// The text they stand for; glyph ranges index into it.
    pub text: Arc<str>,
    /// Strength of the ink.
    pub tone: Tone,
}

/// One glyph of a run.
#[derive(Debug, Clone)]
pub struct Glyph {
    /// Glyph index in the face.
    pub id: u16,
    /// Offset of the glyph from the pen, mm.
    pub offset: (f64, f64),
    /// How far the pen moves, mm.
    pub advance: f64,
    /// Bytes of the run's text.
    pub range: Range<usize>,
}

/// A filled area in the text ink. Non-zero winding.
#[derive(Debug, Clone)]
pub struct Fill {
    /// The outline, mm.
    pub path: BezPath,
    /// Strength of the ink.
    pub tone: Tone,
}

/// A filled area in a colour that is no ink of the edition: swatches, and the patches of a ghost page. Non-zero winding.
///
/// A later patch covers an earlier one. Text and fills may stand on a patch, art may not: the raster renderer lays
/// patches over art, gives them whole pixels without soft edges, and has room for [`Patch::MOST`] colours on a page.
#[derive(Debug, Clone)]
pub struct Patch {
    /// The outline, mm.
    pub path: BezPath,
    /// Its colour.
    pub colour: Srgb8,
}

impl Patch {
    /// The most colours that the patches of one sheet may have.
    pub const MOST: usize = 56;
}

/// The art of a page as filled areas, mm. Non-zero winding within each path; paths of one list may overlap.
///
/// Vector renderers draw `left`, `right`, `overlap`, `flat`, the dots and `over` in this order and never blend. The raster renderer takes
/// the coverage of `left` + `flat` for the left eye and of `right` + `flat` for the right eye, per pixel.
#[derive(Debug, Clone, Default)]
pub struct Art {
    /// Half-images and marks of the left eye.
    pub left: Vec<BezPath>,
    /// Half-images and marks of the right eye.
    pub right: Vec<BezPath>,
    /// Where `left` and `right` cover the same ground: drawn once more in the overlap colour.
    pub overlap: Vec<BezPath>,
    /// Seen by both eyes at the same place: at page depth.
    pub flat: Vec<BezPath>,
    /// Fields of random dots; each eye's lie clear of its paths, and without a base clear of all paths.
    pub dots: Vec<Dots>,
    /// Where `left` or `right` covers the same ground as the other eye's dots: drawn last, in the overlap colour.
    pub over: Vec<BezPath>,
}

impl Art {
    /// Moves everything right and down, mm.
    pub fn shift(&mut self, dx: f64, dy: f64) {
        for paths in [&mut self.left, &mut self.right, &mut self.overlap, &mut self.flat, &mut self.over] {
            paths.iter_mut().for_each(|path| path.apply_affine(Affine::translate((dx, dy))));
        }
        for bar in self.dots.iter_mut().flat_map(Dots::lists_mut).flat_map(|bars| &mut bars.bars) {
            *bar = Bar { y: bar.y + dy, x0: bar.x0 + dx, x1: bar.x1 + dx };
        }
    }
}

/// A field of random dots, with the parts of [`Art`]: `left` and `right` in full but for what both eyes get alike,
/// their `overlap`, and `flat`. Bars of one list do not touch within a row, and rows do not overlap.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Dots {
    /// The left eye's.
    pub left: Bars,
    /// The right eye's.
    pub right: Bars,
    /// Where these two cover the same ground.
    pub overlap: Bars,
    /// What both eyes get at the same place.
    pub flat: Bars,
}

impl Dots {
    fn lists_mut(&mut self) -> [&mut Bars; 4] {
        [&mut self.left, &mut self.right, &mut self.overlap, &mut self.flat]
    }
}

/// Level bars of one height.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Bars {
    /// Height of each bar, mm.
    pub height: f64,
    /// Row by row from the top, in each row from left to right.
    pub bars: Vec<Bar>,
}

/// A level bar, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bar {
    /// The middle of its height; the same number all along a row.
    pub y: f64,
    /// Left end.
    pub x0: f64,
    /// Right end.
    pub x1: f64,
}

impl Bar {
    /// What it covers at this height, mm.
    pub fn area(&self, height: f64) -> Rect {
        Rect::new(self.x0, self.y - height / 2.0, self.x1, self.y + height / 2.0)
    }
}
