//! Two sheets that hold one of everything a renderer may meet.

use std::f64::consts::TAU;

use depthpress::colour::{Inks, Srgb8};
use depthpress::layout::sheet::{Art, Face, Fill, Furniture, HeadScope, Node, Role, Sheet, TextRun, Tone};
use depthpress::layout::text::{Align, Span, Style, Typesetter};
use depthpress::units::{Mm, Pt};
use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::float::single::SingleFloatOverlay;
use kurbo::{BezPath, Point, Rect, Shape, Size};

/// Where the rings of the figure stand, and how they are drawn: mm.
pub const LEFT: Point = Point::new(99.0, 150.0);
pub const RIGHT: Point = Point::new(111.0, 150.0);
pub const RADIUS: f64 = 20.0;
pub const LINE: f64 = 4.0;
pub const FIGURE: Rect = Rect::new(20.0, 110.0, 190.0, 190.0);

/// Red before the right eye, cyan before the left: on white each mark takes the ink that its filter absorbs.
pub const WHITE: Inks = Inks {
    left: Srgb8([255, 0, 0]),
    right: Srgb8([0, 255, 255]),
    both: Srgb8([0, 0, 0]),
    ground: Srgb8([255, 255, 255]),
    text: Srgb8([0, 0, 0]),
};

/// The same glasses on a black ground: each mark is the light that its filter passes.
pub const BLACK: Inks = Inks {
    left: Srgb8([0, 255, 255]),
    right: Srgb8([255, 0, 0]),
    both: Srgb8([255, 255, 255]),
    ground: Srgb8([0, 0, 0]),
    text: Srgb8([255, 255, 255]),
};

const BODY: Style =
    Style { face: Face::Regular, size: Pt(11.0), leading: Mm(5.5), tone: Tone::FULL, align: Align::Start };

/// The book: a sheet with everything, and a second one to lead to.
pub fn book(inks: Inks) -> Vec<Sheet> {
    let set = &mut Typesetter::new();
    vec![first(set, inks), second(set, inks)]
}

fn first(set: &mut Typesetter, inks: Inks) -> Sheet {
    let mut nodes = vec![
        heading(set, 1, "Mooring rings", 20.0, 20.0),
        Node::Group(Role::Artifact(Furniture::Layout), vec![fill(Rect::new(20.0, 30.0, 190.0, 30.3), Tone::LINE)]),
        goal(set),
        list(set),
        table(set),
        figure(set),
    ];
    nodes.push(Node::Group(
        Role::Paragraph,
        vec![Node::Group(
            Role::Link {
                target: "answer-key".to_owned(),
                area: Rect::new(20.0, 205.0, 90.0, 210.5),
                alt: "To the answer key".to_owned(),
            },
            text(set, "What you should have seen: page 2", BODY, 20.0, 205.0, 170.0),
        )],
    ));
    nodes.push(footer(set, "Harbour Lights · page 1"));
    sheet("mooring-rings", "Mooring rings & lines <1>", 1, 0, inks, nodes)
}

fn second(set: &mut Typesetter, inks: Inks) -> Sheet {
    let nodes = vec![
        heading(set, 2, "Answer key", 20.0, 20.0),
        paragraph(
            set,
            "One ring before the page. Angle 30′ is written 30 arcmin, 5 µm, ½ ≤ 1.".replace('′', "'"),
            40.0,
        ),
        footer(set, "Harbour Lights · page 2"),
    ];
    sheet("answer-key", "Answer key", 2, 1, inks, nodes)
}

fn sheet(id: &str, title: &str, number: u32, outline_level: u8, inks: Inks, nodes: Vec<Node>) -> Sheet {
    let description = "A ring for each eye; together one ring before the page.".to_owned();
    let (id, title, size) = (id.to_owned(), title.to_owned(), Size::new(210.0, 297.0));
    Sheet { number, id, title, description, language: "en", outline_level, size, inks, nodes }
}

/// Words as a place for them, without a role.
pub fn text(set: &mut Typesetter, words: &str, style: Style, x: f64, y: f64, width: f64) -> Vec<Node> {
    set.paragraph(words, &style, Mm(width)).unwrap().place(x, y)
}

/// A few words as one run.
pub fn run(set: &mut Typesetter, words: &str) -> TextRun {
    set.paragraph(words, &BODY, Mm(100.0)).unwrap().lines.remove(0).runs.remove(0)
}

/// A body paragraph at the left margin.
pub fn paragraph(set: &mut Typesetter, words: impl AsRef<str>, y: f64) -> Node {
    Node::Group(Role::Paragraph, text(set, words.as_ref(), BODY, 20.0, y, 170.0))
}

fn heading(set: &mut Typesetter, level: u8, words: &str, x: f64, y: f64) -> Node {
    let style = Style { face: Face::Bold, size: Pt(20.0), leading: Mm(9.0), ..BODY };
    Node::Group(Role::Heading(level), text(set, words, style, x, y, 170.0))
}

fn goal(set: &mut Typesetter) -> Node {
    let spans = [
        Span {
            text: "Look from the near ring to the far ring and back, and feel your eyes change. ",
            face: Face::Regular,
        },
        Span { text: "Stop if it strains", face: Face::Bold },
        Span {
            text: ", rest, and come back another day; the office is first-floor, difficult to find.",
            face: Face::Regular,
        },
    ];
    Node::Group(Role::Paragraph, set.paragraph_of(&spans, &BODY, Mm(110.0)).unwrap().place(20.0, 34.0))
}

fn list(set: &mut Typesetter) -> Node {
    let mut item = |index: usize, words: &str| {
        let y = 56.0 + index as f64 * 5.5;
        let label = text(set, &format!("{}.", index + 1), BODY, 20.0, y, 8.0);
        let body = text(set, words, BODY, 28.0, y, 160.0);
        let parts = vec![Node::Group(Role::ListLabel, label), Node::Group(Role::ListBody, body)];
        Node::Group(Role::ListItem, parts)
    };
    Node::Group(Role::List, vec![item(0, "Put on the glasses."), item(1, "Hold the page at 40 cm.")])
}

/// A log with an empty cell to write in.
fn table(set: &mut Typesetter) -> Node {
    let mut cell = |role: Role, words: &str, column: f64, row: f64| {
        let style = if role == Role::Cell { BODY } else { Style { face: Face::Bold, ..BODY } };
        Node::Group(role, text(set, words, style, 20.0 + column * 40.0, 72.0 + row * 7.0, 38.0))
    };
    let column = Role::HeadCell(HeadScope::Column);
    let head = vec![cell(column.clone(), "Day", 0.0, 0.0), cell(column, "Clear after", 1.0, 0.0)];
    let mut first = vec![cell(Role::HeadCell(HeadScope::Row), "1", 0.0, 1.0), cell(Role::Cell, "12 s", 1.0, 1.0)];
    first.push(fill(Rect::new(20.0, 78.5, 100.0, 78.7), Tone::LINE));
    let second = vec![cell(Role::HeadCell(HeadScope::Row), "2", 0.0, 2.0), cell(Role::Cell, "", 1.0, 2.0)];
    Node::Group(Role::Table, [head, first, second].map(|row| Node::Group(Role::Row, row)).to_vec())
}

fn figure(set: &mut Typesetter) -> Node {
    let caption = text(set, "Near ring", Style { align: Align::Center, ..BODY }, 20.0, 190.0, 170.0);
    let alt = "A ring for the left eye 12 mm left of a ring for the right eye: one ring before the page.".to_owned();
    let inner = vec![Node::Art(rings()), Node::Group(Role::Caption, caption)];
    Node::Group(Role::Figure { alt, area: FIGURE }, inner)
}

/// Two ring lines that cross, and a dot that both eyes see at the page.
fn rings() -> Art {
    let (left, right) = (ring(LEFT), ring(RIGHT));
    let shared = left.overlay(&right, OverlayRule::Intersect, FillRule::NonZero);
    Art {
        left: vec![closed(&left)],
        right: vec![closed(&right)],
        overlap: shared.iter().map(|shape| closed(shape)).collect(),
        flat: vec![kurbo::Circle::new((105.0, 150.0), 1.0).to_path(1e-4)],
        ..Art::default()
    }
}

/// A ring line as two contours of 720 points, the inner one the other way round.
fn ring(centre: Point) -> Vec<Vec<[f64; 2]>> {
    let circle = |radius: f64, turn: f64| {
        let point = |index: u32| {
            let angle = turn * f64::from(index) / 720.0 * TAU;
            [centre.x + radius * angle.cos(), centre.y + radius * angle.sin()]
        };
        (0..720).map(point).collect()
    };
    vec![circle(RADIUS + LINE / 2.0, 1.0), circle(RADIUS - LINE / 2.0, -1.0)]
}

fn closed(contours: &[Vec<[f64; 2]>]) -> BezPath {
    let mut path = BezPath::new();
    for contour in contours {
        path.move_to((contour[0][0], contour[0][1]));
        contour[1..].iter().for_each(|point| path.line_to((point[0], point[1])));
        path.close_path();
    }
    path
}

fn fill(area: Rect, tone: Tone) -> Node {
    Node::Fill(Fill { path: area.to_path(0.1), tone })
}

fn footer(set: &mut Typesetter, words: &str) -> Node {
    let style = Style { size: Pt(8.0), tone: Tone::QUIET, align: Align::End, ..BODY };
    Node::Group(Role::Artifact(Furniture::Footer), text(set, words, style, 20.0, 282.0, 170.0))
}
