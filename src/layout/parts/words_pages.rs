//! The words of every exercise once more, in the one colour of all words: to read without the glasses, or to have them read aloud. Levels
//! that share their words share a section.

use std::ops::RangeInclusive;

use kurbo::Rect;

use crate::colour::Ground;
use crate::exercise::Page;
use crate::language::Arg;
use crate::layout::compose::{Composer, Piece, RULE, rule};
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::{Grid, HEADING};
use crate::layout::sheet::{Furniture, Node, Role};
use crate::layout::text::Style;
use crate::layout::{Book, Draft};
use crate::units::{Mm, Pt};

use super::{exercise, text_width};

/// The name of an exercise: above the names of its parts.
const NAME: Style = Style { size: Pt(15.0), leading: Mm(6.4), ..HEADING };

/// As many sheets as the words take.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, book: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "words",
        title: composer.say("words-title"),
        lead: composer.say(if book.edition.ground == Ground::Black { "words-lead-dark" } else { "words-lead" }),
        description: composer.say("words-description"),
    };
    composer.sheet = opening.id.to_owned();
    let width = text_width(composer, grid);
    let sections = runs(book).into_iter().map(|run| section(composer, book, run, width)).collect();
    pour(composer, grid, &opening, sections)
}

/// The pages of the book, those together that follow one another with one title and the same words.
fn runs(book: &Book<'_>) -> Vec<RangeInclusive<usize>> {
    let same = |a: &Page, b: &Page| {
        (&a.title, a.kind, a.levels, &a.words) == (&b.title, b.kind, b.levels, &b.words) && a.level <= b.level
    };
    let mut runs: Vec<RangeInclusive<usize>> = Vec::new();
    for index in 0..book.pages.len() {
        match runs.last_mut() {
            Some(run) if same(book.pages[*run.end()].page, book.pages[index].page) => *run = *run.start()..=index,
            _ => runs.push(index..=index),
        }
    }
    runs
}

/// Goal and set-up below the title of an exercise, then its words as on its own pages, each below its name.
fn section(composer: &mut Composer<'_>, book: &Book<'_>, run: RangeInclusive<usize>, width: f64) -> Section {
    let page = book.pages[*run.start()].page;
    let title = heading(composer, book, run);
    let mut opened = Piece { height: RULE, nodes: vec![above(width)] };
    opened.stack(composer.lines(&title, &NAME, width).role(Role::Heading(2)), 1.4);
    let goal = composer.paragraph(&page.words.goal, width);
    let set_up = exercise::set_up(composer, book, page, width);
    let mut body = vec![goal, set_up];
    for part in exercise::sections(composer, &page.words, [width; 3], exercise::Names::Words) {
        let mut pieces = part.body.into_iter();
        // The name of a part stands clear of what is above it and stays with the first of its words.
        let mut first = Piece { height: 1.4, nodes: Vec::new() };
        first.stack(part.heading, 0.0);
        if let Some(piece) = pieces.next() {
            first.stack(piece, 0.4);
        }
        body.push(first);
        body.extend(pieces);
    }
    Section::new(opened, body)
}

/// A line above the name of an exercise.
fn above(width: f64) -> Node {
    let line = rule(Rect::new(0.0, 0.0, width, RULE));
    Node::Group(Role::Artifact(Furniture::Layout), vec![line])
}

/// "Mooring rings, levels 1 to 4, pages 9 to 12"
fn heading(composer: &Composer<'_>, book: &Book<'_>, run: RangeInclusive<usize>) -> String {
    let [first, last] = [*run.start(), *run.end()].map(|index| book.pages[index].page);
    let number = |index: usize| composer.numbers.get(index).copied().unwrap_or_default();
    let (page, last_page) = (number(*run.start()), number(*run.end()));
    let args: [(&str, Arg<'_>); 5] = [
        ("title", (&first.title).into()),
        ("level", first.level.into()),
        ("last_level", last.level.into()),
        ("page", page.to_string().into()),
        ("last_page", last_page.to_string().into()),
    ];
    let id = match (first.levels, first.level == last.level, page == last_page) {
        (1, _, true) => "words-page",
        (1, _, false) => "words-pages",
        (_, true, true) => "words-level",
        (_, true, false) => "words-level-pages",
        (_, false, _) => "words-levels",
    };
    composer.tell(id, &args)
}
