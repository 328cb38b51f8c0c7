//! What parts of several sheets share: their drafts, links to pages, and times in words.

use kurbo::Rect;

use crate::language::Tongue;
use crate::layout::Draft;
use crate::layout::compose::{Composer, Piece};
use crate::layout::sheet::{Node, Role};
use crate::layout::text::Style;

/// A part of the back matter: the id of its first sheet, its title, what its later sheets are called in the
/// contents, and what it holds.
pub(super) struct BackPart {
    pub id: &'static str,
    pub title: &'static str,
    pub later: &'static str,
    pub description: &'static str,
}

impl BackPart {
    /// The id of a sheet, counted from 0.
    pub(super) fn id(&self, sheet: usize) -> String {
        if sheet == 0 { self.id.to_owned() } else { format!("{}-{}", self.id, sheet + 1) }
    }

    /// A sheet with this content.
    pub(super) fn draft(&self, sheet: usize, nodes: Vec<Node>) -> Draft {
        Draft {
            id: self.id(sheet),
            title: if sheet == 0 { self.title.to_owned() } else { format!("{}, sheet {}", self.later, sheet + 1) },
            description: self.description.to_owned(),
            outline_level: u8::from(0 < sheet),
            inks: None,
            note: String::new(),
            nodes,
            footer: String::new(),
            placed: Vec::new(),
        }
    }
}

/// A sheet of a part, counted from 0: the part's title is that of the first, and tells later ones apart.
pub(crate) fn sheet(
    composer: &Composer<'_>,
    id: &str,
    (title, description): (&str, &str),
    sheet: usize,
    nodes: Vec<Node>,
) -> Draft {
    let later = || composer.tell("part-sheet", &[("title", title.into()), ("n", (sheet + 1).into())]);
    Draft {
        id: sheet_id(id, sheet),
        title: if sheet == 0 { title.to_owned() } else { later() },
        description: description.to_owned(),
        outline_level: u8::from(0 < sheet),
        inks: None,
        note: String::new(),
        nodes,
        footer: String::new(),
        placed: Vec::new(),
    }
}

/// The id of a sheet of a part, counted from 0: `plan`, `plan-2`.
pub(crate) fn sheet_id(id: &str, sheet: usize) -> String {
    if sheet == 0 { id.to_owned() } else { format!("{id}-{}", sheet + 1) }
}

/// The id of a page as a link to it, in as many lines as it needs: ids have no blanks to break at.
pub(super) fn page_link(composer: &mut Composer<'_>, id: &str, style: &Style, width: f64) -> Piece {
    let mut piece = Piece::default();
    let mut rest = id;
    while !rest.is_empty() {
        let fits = |composer: &mut Composer<'_>, end: &usize| composer.width_of(&rest[..*end], style) <= width;
        // Ids are ASCII, so every index is the border of a letter.
        let ends: Vec<usize> = (1..=rest.len()).filter(|end| rest.is_char_boundary(*end)).collect();
        let whole = ends.last().copied().filter(|end| fits(composer, end));
        let hyphens = || ends.iter().rev().filter(|end| rest[..**end].ends_with('-')).copied();
        let at_hyphen = hyphens().find(|end| fits(composer, end));
        let anywhere = ends.iter().rev().copied().find(|end| fits(composer, end));
        let end = whole.or(at_hyphen).or(anywhere).or(ends.first().copied()).unwrap_or(rest.len());
        let (line, later) = rest.split_at(end);
        piece.stack(composer.lines(line, style, width), 0.0);
        rest = later;
    }
    let area = Rect::new(0.0, 0.0, width, piece.height);
    let alt = composer.tell("page-go-to", &[("page", id.into())]);
    piece.role(Role::Link { target: id.to_owned(), area, alt })
}

/// A time in words: "3 minutes", "90 seconds", "1 minute".
pub(super) fn time(tongue: &Tongue, seconds: u32) -> String {
    if seconds.is_multiple_of(60) {
        tongue.tell("time-minutes", &[("n", (seconds / 60).into())])
    } else {
        tongue.tell("time-seconds", &[("n", seconds.into())])
    }
}
