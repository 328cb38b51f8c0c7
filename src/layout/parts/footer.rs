//! The running footer, and the step from a draft to a numbered sheet.

use kurbo::Rect;

use crate::layout::base;
use crate::layout::compose::{Composer, Piece, rule};
use crate::layout::grid::{Grid, SMALL};
use crate::layout::sheet::{Furniture, Node, Role, Sheet};
use crate::layout::text::{Align, Style};
use crate::layout::{Book, Draft, Placed};
use crate::spec::TextSize;
use crate::units::{Mm, Pt};

/// Height of a footer of two lines in standard text with the clear space above it, mm.
pub const HEIGHT: f64 = 10.8;
/// Clear space above the rule of the footer, and from the rule to its words, mm.
const ABOVE: f64 = 2.4;
const BELOW_RULE: f64 = 0.9;

/// Gives a draft its number and its footer.
pub fn finish(
    composer: &mut Composer<'_>,
    grid: &Grid,
    book: &Book<'_>,
    number: u32,
    draft: Draft,
) -> (Sheet, Vec<Placed>) {
    let mut nodes = draft.nodes;
    if draft.id != "cover" {
        nodes.push(footer(composer, grid, book, number, (&draft.footer, &draft.note)));
    }
    let sheet = Sheet {
        number,
        id: draft.id,
        title: draft.title,
        description: draft.description,
        language: composer.tongue.language().tag(),
        outline_level: draft.outline_level,
        size: grid.size,
        inks: draft.inks.unwrap_or(book.plan.inks),
        nodes,
    };
    (sheet, draft.placed)
}

/// How the footer is set. In large text it has 13 pt, not the 16 pt of other small words: nothing in it is needed for the
/// exercise, and at 16 pt it would take the room of the stop rule.
fn style(text: TextSize) -> Style {
    match text {
        TextSize::Standard => SMALL,
        TextSize::Large => Style { size: Pt(13.0), leading: Mm(5.6), ..SMALL },
    }
}

/// Room for the page number at the end of the line, mm.
const NUMBER: f64 = 20.0;

/// The line of the set, with its base and the note of a page.
fn set_line(composer: &Composer<'_>, book: &Book<'_>, note: &str) -> String {
    let (set, edition) = (book.set, book.edition);
    let mut args = vec![
        ("title", (&set.title).into()),
        ("version", (&set.version).into()),
        ("edition", (&edition.id).into()),
        ("date", (&set.date).into()),
    ];
    let line = match &set.reader {
        Some(reader) => {
            args.push(("reader", reader.into()));
            composer.tell("footer-set-reader", &args)
        }
        None => composer.tell("footer-set", &args),
    };
    let note = base::with_note(set, note, book.tongue);
    if note.is_empty() { line } else { format!("{line} · {note}") }
}

/// Between two things that the footer says.
const BETWEEN: &str = " · ";

/// The facts of a page, and the line of the set. In standard text the line of the set stands at one height on all pages,
/// whether there are facts above it or not. The last of the facts stands at the end of that line where theirs is full.
fn lines(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, (facts, note): (&str, &str)) -> (Piece, Piece) {
    let style = style(composer.text);
    let width = grid.safe.width();
    let set_line = set_line(composer, book, note);
    if let Some((facts, last)) = facts.rsplit_once(BETWEEN).filter(|_| !is_line(composer, facts, &style, width)) {
        let with_last = format!("{set_line}{BETWEEN}{last}");
        if is_line(composer, facts, &style, width) && is_line(composer, &with_last, &style, width - NUMBER) {
            return (composer.exact(facts, &style, width), composer.exact(&with_last, &style, width - NUMBER));
        }
    }
    let facts = match composer.text {
        TextSize::Large if facts.is_empty() => Piece::default(),
        _ => balanced(composer, facts, &style, width),
    };
    (facts, whole_items(composer, &set_line, &style, width - NUMBER))
}

/// Whether words stand on one line.
fn is_line(composer: &mut Composer<'_>, words: &str, style: &Style, width: f64) -> bool {
    composer.exact(words, style, width).height < 1.5 * style.leading.0
}

/// Words in lines that end between two things, where each of them fits in a line.
fn whole_items(composer: &mut Composer<'_>, words: &str, style: &Style, width: f64) -> Piece {
    let mut lines: Vec<String> = Vec::new();
    for item in words.split(BETWEEN) {
        let longer = lines.last().map(|line| format!("{line}{BETWEEN}{item}"));
        match longer.filter(|line| is_line(composer, line, style, width)) {
            Some(longer) => {
                lines.pop();
                lines.push(longer);
            }
            None => lines.push(item.to_owned()),
        }
    }
    composer.exact(&lines.join("\n"), style, width)
}

/// The same with lines of nearly one length: no single fact stands on a line of its own below a full one.
fn balanced(composer: &mut Composer<'_>, words: &str, style: &Style, width: f64) -> Piece {
    let mut piece = whole_items(composer, words, style, width);
    if piece.height < 1.5 * style.leading.0 {
        return piece;
    }
    for share in [0.9, 0.8, 0.7, 0.6, 0.5] {
        let narrower = whole_items(composer, words, style, width * share);
        if piece.height + 1e-6 < narrower.height {
            break;
        }
        piece = narrower;
    }
    piece
}

/// How much higher than [`HEIGHT`] the footer of a page with these facts and this note is, mm: words that take a line more,
/// such as a base or a balance with a long name, or large text.
pub fn rise(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, said: (&str, &str)) -> f64 {
    let (facts, set_line) = lines(composer, grid, book, said);
    (facts.height + set_line.height - 2.0 * SMALL.leading.0).max(0.0)
}

fn footer(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>, number: u32, said: (&str, &str)) -> Node {
    let (facts, set_line) = lines(composer, grid, book, said);
    let top = grid.safe.y1 - HEIGHT + 2.0 * SMALL.leading.0 - facts.height - set_line.height + ABOVE;
    let line = rule(Rect::new(grid.safe.x0, top - 0.1, grid.safe.x1, top + 0.1));
    let right = Style { align: Align::End, ..style(composer.text) };
    let number = composer.exact(&number.to_string(), &right, grid.safe.width());
    let below = top + BELOW_RULE + facts.height;
    let mut nodes = vec![line];
    nodes.extend(facts.moved(grid.safe.x0, top + BELOW_RULE).nodes);
    nodes.extend(set_line.moved(grid.safe.x0, below).nodes);
    nodes.extend(number.moved(grid.safe.x0, below).nodes);
    Node::Group(Role::Artifact(Furniture::Footer), nodes)
}
