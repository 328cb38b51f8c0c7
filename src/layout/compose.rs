//! Building blocks of a page: paragraphs, lists, tables, panels and columns, as pieces that know their height.
//!
//! A piece is set with its top left corner at the origin and moved to its place later. Text that does not fit is a
//! problem with a name, never a page that is quietly cut off.

use kurbo::{Affine, Point, Rect, RoundedRect, Shape as _};

use crate::diagnostics::{Diagnostic, Place, Severity};
use crate::language::{Arg, Tongue};
use crate::spec::TextSize;
use crate::units::Mm;

use super::grid::{BODY, HEADING, LEADING, TITLE, scaled};
use super::sheet::{Face, Fill, Furniture, HeadScope, Node, Role, Tone};
use super::text::{Span, Style, Typesetter};

/// Width of the numbers and bullets of a list, mm.
const LABEL: f64 = 6.5;
/// Clear space inside a panel, mm.
pub const PAD: f64 = 2.6;
/// Clear space left and right of the text of a table cell, mm.
pub const CELL_PAD: f64 = 2.0;
/// Thickness of rules and box outlines, mm.
pub const RULE: f64 = 0.25;

/// Content with its height, relative to its top left corner.
#[derive(Debug, Clone, Default)]
pub struct Piece {
    /// Height, mm.
    pub height: f64,
    /// What is drawn.
    pub nodes: Vec<Node>,
}

/// Sets pieces and collects what does not fit.
pub struct Composer<'a> {
    setter: &'a mut Typesetter,
    /// The language of the words.
    pub tongue: &'a Tongue,
    /// How large the words are; styles are given as for standard text.
    pub text: TextSize,
    /// The sheet that is being composed, for messages.
    pub sheet: String,
    /// The page numbers of the exercises, in the order of the book: of the sheet with the art. Empty until they are known.
    pub numbers: Vec<usize>,
    /// What in the spec it comes from, where one place wrote it.
    pub place: Option<Place>,
    /// What went wrong so far.
    pub problems: Vec<Diagnostic>,
}

impl<'a> Composer<'a> {
    /// A composer that sets its text with `setter`, in this language and size.
    pub fn new(setter: &'a mut Typesetter, tongue: &'a Tongue, text: TextSize) -> Self {
        Self { setter, tongue, text, sheet: String::new(), place: None, numbers: Vec::new(), problems: Vec::new() }
    }

    /// The words of a message.
    pub fn say(&self, id: &str) -> String {
        self.tongue.say(id)
    }

    /// The words of a message with these variables.
    pub fn tell(&self, id: &str, args: &[(&str, Arg<'_>)]) -> String {
        self.tongue.tell(id, args)
    }

    /// How much larger than standard the words are: what stands beside them grows with them.
    pub fn scale(&self) -> f64 {
        self.leading(&BODY) / LEADING
    }

    /// Distance between the baselines of a style in this size of text, mm.
    pub fn leading(&self, style: &Style) -> f64 {
        scaled(style, self.text).leading.0
    }

    /// Lines of text without a role.
    pub fn lines(&mut self, text: &str, style: &Style, width: f64) -> Piece {
        self.spans(&[Span { text, face: style.face }], style, width)
    }

    /// Lines of text in which some words are in another face.
    pub fn spans(&mut self, spans: &[Span<'_>], style: &Style, width: f64) -> Piece {
        self.set(spans, &scaled(style, self.text), width)
    }

    /// Lines of text in exactly this style, however large the words of the edition are.
    pub fn exact(&mut self, text: &str, style: &Style, width: f64) -> Piece {
        self.set(&[Span { text, face: style.face }], style, width)
    }

    fn set(&mut self, spans: &[Span<'_>], style: &Style, width: f64) -> Piece {
        match self.setter.paragraph_of(spans, style, Mm(width)) {
            Ok(paragraph) => {
                if paragraph.overflow {
                    let words: String = spans.iter().map(|span| span.text).collect();
                    self.problem(
                        format!("a word of `{words}` is wider than its column of {width:.0} mm"),
                        "shorten the word, or divide it with a soft hyphen (U+00AD)",
                    );
                }
                Piece { height: paragraph.height.0, nodes: paragraph.place(0.0, 0.0) }
            }
            Err(missing) => {
                self.problem(missing.to_string(), "write it with letters of the Latin alphabet");
                Piece::default()
            }
        }
    }

    /// How wide a line of text is, mm; 0 where a glyph is missing.
    pub fn width_of(&mut self, text: &str, style: &Style) -> f64 {
        self.setter.width_of(text, &scaled(style, self.text)).map_or(0.0, |width| width.0)
    }

    /// How wide the widest word of a text is, mm: the least width of a column that holds it.
    pub fn widest_word(&mut self, text: &str, style: &Style) -> f64 {
        let mut widest = 0.0_f64;
        for word in text.split([' ', '\n']) {
            let mut parts = word.split('\u{ad}').peekable();
            while let Some(part) = parts.next() {
                // A part that is not the last takes a hyphen where a line ends after it.
                let hyphen = if parts.peek().is_some() { self.width_of("-", style) } else { 0.0 };
                widest = widest.max(self.width_of(part, style) + hyphen);
            }
        }
        widest
    }

    /// Notes a problem of the current sheet.
    pub fn problem(&mut self, message: String, help: &str) {
        self.problems.push(Diagnostic {
            severity: Severity::Error,
            code: "E-LAYOUT",
            place: self.place,
            message: format!("page `{}`: {message}", self.sheet),
            label: if self.place.is_some() { "does not fit on its page".to_owned() } else { String::new() },
            help: help.to_owned(),
            replacement: None,
        });
    }

    /// The title of a page.
    pub fn title(&mut self, text: &str, width: f64) -> Piece {
        self.lines(text, &TITLE, width).role(Role::Heading(1))
    }

    /// A heading inside a page.
    pub fn heading(&mut self, text: &str, width: f64) -> Piece {
        self.lines(text, &HEADING, width).role(Role::Heading(2))
    }

    /// A paragraph of body text.
    pub fn paragraph(&mut self, text: &str, width: f64) -> Piece {
        self.lines(text, &BODY, width).role(Role::Paragraph)
    }

    /// A paragraph that opens with bold words.
    pub fn lead(&mut self, bold: &str, text: &str, style: &Style, width: f64) -> Piece {
        let text = format!(" {text}");
        let spans = [Span { text: bold, face: Face::Bold }, Span { text: &text, face: Face::Regular }];
        self.spans(&spans, style, width).role(Role::Paragraph)
    }

    /// A numbered list.
    pub fn steps(&mut self, steps: &[String], width: f64) -> Piece {
        list(self.numbered(steps, width))
    }

    /// A list with bullets.
    pub fn bullets(&mut self, items: &[&str], width: f64) -> Piece {
        let items: Vec<String> = items.iter().map(|&item| item.to_owned()).collect();
        list(self.items(&items, width))
    }

    /// The items of a list with bullets, each a piece of its own between which a column may end. Whoever places them makes
    /// lists of them again, as [`pour`](super::flow::pour) does.
    pub fn items(&mut self, items: &[String], width: f64) -> Vec<Piece> {
        items.iter().map(|item| self.item("•", item, width)).collect()
    }

    /// The same for a numbered list.
    pub fn numbered(&mut self, items: &[String], width: f64) -> Vec<Piece> {
        (1..).zip(items).map(|(number, item)| self.item(&format!("{number}."), item, width)).collect()
    }

    fn item(&mut self, label: &str, item: &str, width: f64) -> Piece {
        // As wide as the text is large.
        let indent = LABEL * self.scale();
        let label = self.lines(label, &BODY, indent);
        let body = self.lines(item, &BODY, width - indent).moved(indent, 0.0);
        let height = body.height;
        let parts = vec![Node::Group(Role::ListLabel, label.nodes), Node::Group(Role::ListBody, body.nodes)];
        Piece { height, nodes: vec![Node::Group(Role::ListItem, parts)] }
    }

    /// A table with a head row; `widths` are the widths of its columns, mm. The first cell of a row heads the row.
    pub fn table(&mut self, head: &[&str], rows: &[Vec<String>], widths: &[f64], style: &Style) -> Piece {
        let rows = rows.iter().map(|row| self.cells(row, widths, style)).collect();
        self.tables((head, style), rows, widths, f64::INFINITY).pop().unwrap_or_default()
    }

    /// The same with the rows set already, as [`cells`](Self::cells), and divided so that no table is higher than `room`,
    /// mm, unless a single row is; each has the head.
    pub fn tables(
        &mut self,
        (head, style): (&[&str], &Style),
        rows: Vec<Vec<Piece>>,
        widths: &[f64],
        room: f64,
    ) -> Vec<Piece> {
        let bold = Style { face: Face::Bold, ..*style };
        let head: Vec<String> = head.iter().map(|&cell| cell.to_owned()).collect();
        let total = widths.iter().sum();
        let mut tables = Vec::new();
        let mut table = Rows::default().with(self.head(&head, widths, &bold), total);
        for cells in rows {
            let row = row(cells, widths, false);
            if 1 < table.count && room < table.piece.height + row.height {
                let next = Rows::default().with(self.head(&head, widths, &bold), total);
                tables.push(std::mem::replace(&mut table, next).finish());
            }
            table = table.with(row, total);
        }
        tables.push(table.finish());
        tables
    }

    fn head(&mut self, head: &[String], widths: &[f64], bold: &Style) -> Piece {
        row(self.cells(head, widths, bold), widths, true)
    }

    /// The texts of a row, each set in its column.
    pub fn cells(&mut self, row: &[String], widths: &[f64], style: &Style) -> Vec<Piece> {
        row.iter().zip(widths).map(|(cell, width)| self.lines(cell, style, width - CELL_PAD)).collect()
    }

    /// A soft panel around a piece that was set [`inside`] a panel of this width.
    pub fn panel(&mut self, inner: Piece, width: f64) -> Piece {
        panel(inner, width, PAD)
    }
}

/// A soft panel around a piece that was set [`inside`] a panel of this width, with so much clear space at its top and its
/// foot, mm.
pub fn panel(inner: Piece, width: f64, pad: f64) -> Piece {
    let height = inner.height + 2.0 * pad;
    let shape = RoundedRect::new(0.0, 0.0, width, height, 2.0).to_path(0.01);
    let fill = Node::Fill(Fill { path: shape, tone: Tone::PANEL });
    let mut nodes = vec![Node::Group(Role::Artifact(Furniture::Layout), vec![fill])];
    nodes.extend(inner.moved(PAD * 1.4, pad).nodes);
    Piece { height, nodes }
}

/// Items below one another, as one list.
fn list(items: Vec<Piece>) -> Piece {
    let mut list = Piece::default();
    items.into_iter().for_each(|item| list.stack(item, 0.0));
    list.role(Role::List)
}

/// The rows of a table so far.
#[derive(Default)]
struct Rows {
    piece: Piece,
    count: usize,
    rules: Vec<Node>,
}

impl Rows {
    fn with(mut self, row: Piece, width: f64) -> Self {
        self.piece.stack(row, 0.0);
        self.count += 1;
        self.rules.push(rule(Rect::new(0.0, self.piece.height - RULE / 2.0, width, self.piece.height + RULE / 2.0)));
        self
    }

    fn finish(self) -> Piece {
        let mut table = self.piece.role(Role::Table);
        table.nodes.push(Node::Group(Role::Artifact(Furniture::Layout), self.rules));
        table
    }
}

/// Cells side by side as a row of a table.
fn row(cells: Vec<Piece>, widths: &[f64], is_head: bool) -> Piece {
    let (mut x, mut height, mut nodes) = (0.0, 0.0_f64, Vec::new());
    for (column, (cell, width)) in cells.into_iter().zip(widths).enumerate() {
        height = height.max(cell.height + 1.4);
        let role = match (is_head, column) {
            (true, _) => Role::HeadCell(HeadScope::Column),
            (false, 0) => Role::HeadCell(HeadScope::Row),
            (false, _) => Role::Cell,
        };
        nodes.push(Node::Group(role, cell.moved(x, 0.7).nodes));
        x += width;
    }
    Piece { height, nodes: vec![Node::Group(Role::Row, nodes)] }
}

/// The width for the content of a panel this wide, mm.
pub fn inside(width: f64) -> f64 {
    width - 2.0 * PAD * 1.4
}

/// A thin line as a filled box.
pub fn rule(area: Rect) -> Node {
    Node::Fill(Fill { path: area.to_path(0.1), tone: Tone::LINE })
}

/// An outlined box for writing into.
pub fn outline_box(area: Rect) -> Node {
    let mut path = area.to_path(0.1);
    path.extend(area.inset(-RULE).to_path(0.1).reverse_subpaths());
    Node::Fill(Fill { path, tone: Tone::LINE })
}

impl Piece {
    /// The piece as one group with a role.
    pub fn role(self, role: Role) -> Self {
        Self { height: self.height, nodes: vec![Node::Group(role, self.nodes)] }
    }

    /// The piece moved right and down, mm.
    pub fn moved(mut self, dx: f64, dy: f64) -> Self {
        move_nodes(&mut self.nodes, dx, dy);
        self
    }

    /// Puts another piece below this one, after a gap.
    pub fn stack(&mut self, below: Piece, gap: f64) {
        let below_height = below.height;
        let y = self.height + gap;
        self.nodes.extend(below.moved(0.0, y).nodes);
        self.height = y + below_height;
    }
}

/// A column of a page that is filled from its top.
#[derive(Debug)]
pub struct Column {
    /// Where it stands.
    pub area: Rect,
    /// Where the next piece starts.
    pub y: f64,
    /// What is in it.
    pub nodes: Vec<Node>,
}

impl Column {
    /// An empty column.
    pub fn new(area: Rect) -> Self {
        Self { area, y: area.y0, nodes: Vec::new() }
    }

    /// Adds a piece below what is there, after a gap that the first piece does not take.
    pub fn add(&mut self, piece: Piece, gap: f64) {
        if !self.nodes.is_empty() {
            self.y += gap;
        }
        let height = piece.height;
        self.nodes.extend(piece.moved(self.area.x0, self.y).nodes);
        self.y += height;
    }

    /// Width, mm.
    pub fn width(&self) -> f64 {
        self.area.width()
    }

    /// How much room is left, mm.
    pub fn room(&self) -> f64 {
        self.area.y1 - self.y
    }

    /// The content, with a problem if it runs past the foot of the column.
    pub fn finish(self, composer: &mut Composer<'_>) -> Vec<Node> {
        if self.room() < -1e-6 {
            composer.problem(
                format!("its text is {:.1} mm longer than its column of {:.0} mm", -self.room(), self.area.height()),
                "shorten the author's words (`goal`, `setup`, `do`, `see`)",
            );
        }
        self.nodes
    }
}

/// Between two sections of a column, mm.
const BETWEEN: f64 = LEADING * 0.8;

/// Height of sections in two columns of one height, as [`flow`] fills them, mm.
pub fn flow_height(sections: &[Piece]) -> f64 {
    let height = |pieces: &[Piece]| pieces.iter().map(|piece| piece.height + BETWEEN).sum::<f64>();
    let longer = |split: usize| height(&sections[..split]).max(height(&sections[split..]));
    (0..=sections.len()).map(longer).fold(f64::INFINITY, f64::min)
}

/// Fills two columns with whole sections, in order, so that the longer column is as short as it can be.
pub fn flow(composer: &mut Composer<'_>, areas: [Rect; 2], sections: Vec<Piece>) -> Vec<Node> {
    let height = |pieces: &[Piece]| pieces.iter().map(|piece| piece.height + BETWEEN).sum::<f64>();
    let longer = |split: usize| {
        let (left, right) = sections.split_at(split);
        // Against the column's own room, since the two may start at different heights.
        (height(left) - areas[0].height()).max(height(right) - areas[1].height())
    };
    let split = (0..=sections.len()).min_by(|&a, &b| longer(a).total_cmp(&longer(b))).unwrap_or(sections.len());
    let mut nodes = Vec::new();
    let mut columns = areas.map(Column::new);
    for (index, section) in sections.into_iter().enumerate() {
        columns[usize::from(split <= index)].add(section, BETWEEN);
    }
    for column in columns {
        nodes.extend(column.finish(composer));
    }
    nodes
}

fn move_nodes(nodes: &mut [Node], dx: f64, dy: f64) {
    for node in nodes {
        match node {
            Node::Group(role, children) => {
                if let Role::Figure { area, .. } | Role::Link { area, .. } = role {
                    *area = *area + kurbo::Vec2::new(dx, dy);
                }
                move_nodes(children, dx, dy);
            }
            Node::Text(run) => run.origin += (dx, dy),
            Node::Fill(fill) => fill.path.apply_affine(Affine::translate((dx, dy))),
            Node::Patch(patch) => patch.path.apply_affine(Affine::translate((dx, dy))),
            Node::Art(art) => art.shift(dx, dy),
        }
    }
}

/// Turns content by 180 degrees about a point of the page: words stand on their heads, the order of reading stays. Art
/// stays as it is: turned, what stands toward the reader would stand away.
pub fn turn(nodes: &mut [Node], about: Point) {
    let corner = about.to_vec2() * 2.0;
    let over = Affine::new([-1.0, 0.0, 0.0, -1.0, corner.x, corner.y]);
    for node in nodes {
        match node {
            Node::Group(role, children) => {
                if let Role::Figure { area, .. } | Role::Link { area, .. } = role {
                    *area = over.transform_rect_bbox(*area);
                }
                turn(children, about);
            }
            Node::Text(run) => (run.origin, run.turned) = (over * run.origin, !run.turned),
            Node::Fill(fill) => fill.path.apply_affine(over),
            Node::Patch(patch) => patch.path.apply_affine(over),
            Node::Art(_) => {}
        }
    }
}
