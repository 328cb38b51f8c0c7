//! The text of an exercise page: what to do, what should be seen, where to go on, when to stop.

use kurbo::Rect;

use crate::exercise::words::Words;
use crate::layout::compose::{Composer, Piece, inside, panel};
use crate::layout::flow::Section;
use crate::layout::grid::{BODY, GUTTER, HEADING};
use crate::layout::parts::answers::KeyAt;
use crate::layout::parts::words;
use crate::layout::sheet::{Face, Role};
use crate::layout::text::Style;
use crate::spec::TextSize;

/// How the names of the parts of an exercise stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Names {
    /// As headings of the page.
    Headings,
    /// As bold words below a heading: a sheet that begins with one of them leaves no level of headings out.
    Words,
}

/// "Do", "You should see" and "If you see only …", each in its width, below its name.
pub(crate) fn sections(composer: &mut Composer<'_>, words: &Words, widths: [f64; 3], names: Names) -> [Section; 3] {
    let (style, role) = match names {
        Names::Headings => (HEADING, Role::Heading(2)),
        Names::Words => (Style { face: Face::Bold, ..BODY }, Role::Paragraph),
    };
    let heading = |composer: &mut Composer<'_>, id: &str, width: f64| {
        let words = composer.say(id);
        composer.lines(&words, &style, width).role(role.clone())
    };
    let steps = Section::new(heading(composer, "page-do", widths[0]), composer.numbered(&words.steps, widths[0]));
    let see = Section::new(heading(composer, "page-see", widths[1]), [composer.paragraph(&words.see, widths[1])]);
    let only = heading(composer, "page-only", widths[2]);
    let row = |(seen, then): &(String, String)| {
        let seen = composer.tell("page-only-row", &[("seen", seen.into())]);
        composer.lead(&seen, then, &BODY, widths[2])
    };
    let rows: Vec<Piece> = words.one_part.iter().map(row).collect();
    [steps, see, Section::new(only, rows)]
}

/// Where to go from here, naming pages of this book; and where the answers stand: at the end of the line, and in large
/// text below it.
pub(super) fn links(
    composer: &mut Composer<'_>,
    (easier, harder): (Option<&str>, Option<&str>),
    key: Option<&KeyAt>,
    width: f64,
) -> Piece {
    let is_large = composer.text == TextSize::Large;
    let mut room = width;
    let mut beside = None;
    if let Some(key) = key.filter(|_| !is_large) {
        let name = composer.say("page-answers");
        let own = composer.width_of(&format!("{name} {} ", key.words), &Style { face: Face::Bold, ..BODY });
        beside = Some(key_link(composer, key, own).moved(width - own, 0.0));
        room -= own + GUTTER;
    }
    // Without a key the second stands where the second text column starts.
    let half = (room + GUTTER) / 2.0;
    let mut ways = Piece { height: composer.leading(&BODY), nodes: Vec::new() };
    let ends = [("page-easier", easier, "page-first", 0.0), ("page-harder", harder, "page-last", half)];
    for (name, target, end, x) in ends {
        let (name, end) = (composer.say(name), composer.say(end));
        let way = link(composer, (&name, target.unwrap_or(&end)), target, half - GUTTER);
        ways.height = way.height.max(ways.height);
        ways.nodes.extend(way.moved(x, 0.0).nodes);
    }
    ways.nodes.extend(beside.into_iter().flat_map(|key| key.nodes));
    if let Some(key) = key.filter(|_| is_large) {
        ways.stack(key_link(composer, key, width), 0.0);
    }
    ways
}

/// Where the answers stand.
pub(super) fn key_link(composer: &mut Composer<'_>, key: &KeyAt, width: f64) -> Piece {
    let name = composer.say("page-answers");
    link(composer, (&name, &key.words), key.sheet.as_deref(), width)
}

/// A name and where it leads; a link where that is a sheet of this book.
pub(super) fn link(
    composer: &mut Composer<'_>,
    (name, words): (&str, &str),
    target: Option<&str>,
    width: f64,
) -> Piece {
    let label = composer.lead(name, words, &BODY, width);
    let area = Rect::new(0.0, 0.0, width, label.height);
    match target {
        Some(id) => {
            let alt = if words == id {
                composer.tell("page-way", &[("name", name.into()), ("page", id.into())])
            } else {
                format!("{name} {words}")
            };
            label.role(Role::Link { target: id.to_owned(), area, alt })
        }
        None => label,
    }
}

/// The stop rule in its panel, in this style and with so much clear space at its top and its foot, mm.
pub(super) fn stop_box(composer: &mut Composer<'_>, (style, pad): (&Style, f64), width: f64) -> Piece {
    let (name, rule) = (composer.say("page-stop-rule"), words::stop(composer.tongue));
    let rule = composer.lead(&name, &rule, style, inside(width));
    panel(rule, width, pad)
}
