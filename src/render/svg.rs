//! SVG: one sheet as one file that looks the same in every viewer.
//!
//! Lengths are millimetres. Text is drawn as glyph outlines, each glyph defined once and placed by reference, and is
//! told in words beside them. Colours are solid: no opacity, no blending, no style sheet, no script, no outside file.
//! A link is a group of words only: a sheet does not know the files of the others.

mod data;
mod glyphs;

use std::fmt::Write;

use kurbo::BezPath;

use self::data::{MM, number};
use self::glyphs::Glyphs;
use crate::colour::Srgb8;
use crate::layout::sheet::{Art, Bars, Dots, HeadScope, Node, Role, Sheet, TextRun, words};

/// The sheet as an SVG 1.1 document. Numbers have at most three decimals, but the scale of text has eight.
pub fn svg(sheet: &Sheet) -> String {
    let mut page = Page { sheet, glyphs: Glyphs::default(), out: String::with_capacity(1 << 16) };
    page.nodes(&sheet.nodes);
    let Page { glyphs, out: body, .. } = page;
    let mut out = String::with_capacity(body.len() + (1 << 16));
    head(&mut out, sheet);
    glyphs.define(&mut out);
    out.push_str(&body);
    out.push_str("</svg>\n");
    out
}

/// Everything before the content: size, title, description and ground.
fn head(out: &mut String, sheet: &Sheet) {
    let (mut width, mut height) = (String::new(), String::new());
    number(&mut width, sheet.size.width, MM);
    number(&mut height, sheet.size.height, MM);
    out.push_str("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"");
    push(out, format_args!(" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\""));
    push(out, format_args!(" lang=\"{0}\" xml:lang=\"{0}\"", sheet.language));
    push(out, format_args!(" role=\"graphics-document document\" fill=\"{}\">\n<title>", Hex(sheet.inks.text)));
    escape(out, &sheet.title);
    out.push_str("</title>\n<desc>");
    escape(out, &sheet.description);
    let ground = Hex(sheet.inks.ground);
    push(out, format_args!("</desc>\n<rect width=\"{width}\" height=\"{height}\" fill=\"{ground}\"/>\n"));
}

struct Page<'a> {
    sheet: &'a Sheet,
    glyphs: Glyphs,
    out: String,
}

impl Page<'_> {
    fn nodes(&mut self, nodes: &[Node]) {
        for node in nodes {
            match node {
                Node::Group(role, inner) => self.group(role, inner),
                Node::Text(run) => self.text(run),
                Node::Fill(fill) => {
                    let colour = fill.tone.mixed(&self.sheet.inks);
                    self.out.push_str("<path");
                    self.fill(colour);
                    self.path(&fill.path);
                }
                Node::Patch(patch) => {
                    self.out.push_str("<path");
                    self.fill(patch.colour);
                    self.path(&patch.path);
                }
                Node::Art(art) => self.art(art),
            }
        }
    }

    fn group(&mut self, role: &Role, inner: &[Node]) {
        let spoken = inner.iter().any(|node| matches!(node, Node::Text(_))) && !matches!(role, Role::Artifact(_));
        push(&mut self.out, format_args!("<g{}", aria(role, spoken)));
        if spoken && !matches!(role, Role::Figure { .. }) {
            self.out.push_str(" aria-label=\"");
            escape(&mut self.out, &words(inner));
            self.out.push('"');
        }
        self.out.push('>');
        if let Role::Figure { alt, .. } = role {
            self.out.push_str("<title>");
            escape(&mut self.out, alt);
            self.out.push_str("</title>");
        }
        self.nodes(inner);
        self.out.push_str("</g>\n");
    }

    fn text(&mut self, run: &TextRun) {
        self.out.push_str("<g transform=\"translate(");
        number(&mut self.out, run.origin.x, MM);
        self.out.push(' ');
        number(&mut self.out, run.origin.y, MM);
        self.out.push_str(")scale(");
        let scale = run.size / glyphs::UNITS;
        number(&mut self.out, if run.turned { -scale } else { scale }, 8);
        self.out.push_str(")\"");
        self.fill(run.tone.mixed(&self.sheet.inks));
        self.out.push('>');
        self.glyphs.place(run, &mut self.out);
        self.out.push_str("</g>");
    }

    /// Left, right, overlap, flat: later ones cover earlier ones, so the page needs no blending.
    fn art(&mut self, art: &Art) {
        let inks = self.sheet.inks;
        for (paths, ink) in
            [(&art.left, inks.left), (&art.right, inks.right), (&art.overlap, inks.both), (&art.flat, inks.both)]
        {
            self.paths(paths, ink);
        }
        for Dots { left, right, overlap, flat } in &art.dots {
            self.bars(left, inks.left);
            self.bars(right, inks.right);
            self.bars(overlap, inks.both);
            self.bars(flat, inks.both);
        }
        self.paths(&art.over, inks.both);
    }

    /// Filled areas of one ink as one group.
    fn paths(&mut self, paths: &[BezPath], ink: Srgb8) {
        if paths.is_empty() {
            return;
        }
        push(&mut self.out, format_args!("<g fill=\"{}\">", Hex(ink)));
        for path in paths {
            self.out.push_str("<path");
            self.path(path);
        }
        self.out.push_str("</g>\n");
    }

    /// Bars as one path of level strokes: half as long as rectangles.
    fn bars(&mut self, Bars { height, bars }: &Bars, ink: Srgb8) {
        if bars.is_empty() {
            return;
        }
        push(&mut self.out, format_args!("<path fill=\"none\" stroke=\"{}\" stroke-width=\"", Hex(ink)));
        number(&mut self.out, *height, MM);
        self.out.push_str("\" d=\"");
        data::bars(&mut self.out, bars);
        self.out.push_str("\"/>\n");
    }

    /// The fill attribute, where it is not the one of the whole page.
    fn fill(&mut self, colour: Srgb8) {
        if colour != self.sheet.inks.text {
            push(&mut self.out, format_args!(" fill=\"{}\"", Hex(colour)));
        }
    }

    fn path(&mut self, path: &BezPath) {
        self.out.push_str(" d=\"");
        data::path(&mut self.out, path, 1.0, MM);
        self.out.push_str("\"/>");
    }
}

/// What a group is for assistive technology (WAI-ARIA 1.2). Outlines that are `spoken` are a picture with a label,
/// and nothing in a picture is read apart from it; a group around such groups is none itself.
fn aria(role: &Role, spoken: bool) -> &'static str {
    match role {
        Role::Heading(1) => " role=\"heading\" aria-level=\"1\"",
        Role::Heading(2) => " role=\"heading\" aria-level=\"2\"",
        Role::Heading(_) => " role=\"heading\" aria-level=\"3\"",
        Role::List => " role=\"list\"",
        Role::ListItem => " role=\"listitem\"",
        Role::Table => " role=\"table\"",
        Role::Row => " role=\"row\"",
        Role::HeadCell(HeadScope::Column) => " role=\"columnheader\"",
        Role::HeadCell(HeadScope::Row) => " role=\"rowheader\"",
        Role::Cell => " role=\"cell\"",
        Role::Figure { .. } => " role=\"figure\"",
        Role::Artifact(_) => " aria-hidden=\"true\"",
        Role::Paragraph | Role::ListLabel | Role::ListBody | Role::Caption | Role::Link { .. } if spoken => {
            " role=\"img\""
        }
        Role::Paragraph | Role::ListLabel | Role::ListBody | Role::Caption | Role::Link { .. } => "",
    }
}

/// A colour as `#rrggbb`.
struct Hex(Srgb8);

impl std::fmt::Display for Hex {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Srgb8([red, green, blue]) = self.0;
        write!(f, "#{red:02x}{green:02x}{blue:02x}")
    }
}

/// Writes formatted text; writing to a string cannot fail.
fn push(out: &mut String, text: std::fmt::Arguments<'_>) {
    out.write_fmt(text).unwrap_or_default();
}

/// Writes text for an element or an attribute in double quotes. Characters that XML 1.0 does not know become blanks.
fn escape(out: &mut String, text: &str) {
    for character in text.chars() {
        match character {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\0'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => out.push(' '),
            other => out.push(other),
        }
    }
}
