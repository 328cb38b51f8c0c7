//! The ladder of a set: what each page asks of the eyes, from the first page to the last.

use serde::Serialize;

use crate::bundle::demand::{span, stands};
use crate::bundle::prepare::{Prepared, SolvedPage};
use crate::optics::Viewer;
use crate::optics::grading::Difficulty;
use crate::units::plain;

/// One page of the ladder.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(super) struct Rung {
    /// Page number in the book; `None` while the book cannot be laid out.
    pub(super) number: Option<u32>,
    pub(super) id: String,
    pub(super) kind: &'static str,
    /// The strand in which it stands.
    pub(super) strand: &'static str,
    pub(super) level: u32,
    pub(super) levels: u32,
    /// How hard it is, 0 to 100, to 1 decimal; `None` where a number is none.
    pub(super) difficulty: Option<f64>,
    /// The same as its badge says it, 1 to 10.
    pub(super) grade: Option<u32>,
    /// The letter of the variant, where a level has more than one.
    pub(super) variant: Option<char>,
    /// How many questions it asks.
    pub(super) questions: usize,
    pub(super) title: String,
    /// Lowest and highest demand of its targets: positive toward.
    pub(super) demand_pd: Option<[f64; 2]>,
    /// Nearest and farthest place of its targets; no far place where the eyes stand parallel.
    pub(super) place_mm: Option<[Option<f64>; 2]>,
}

/// The rungs of a set. `number` tells where a page stands in the book.
pub(super) fn rungs(set: &Prepared, number: impl Fn(&str) -> Option<u32>) -> Vec<Rung> {
    let Some(spec) = &set.set else { return Vec::new() };
    set.pages.iter().map(|page| rung(page, &spec.viewer, number(&page.page.id))).collect()
}

fn rung(solved: &SolvedPage, viewer: &Viewer, number: Option<u32>) -> Rung {
    let stands = stands(solved, viewer);
    let page = &solved.page;
    Rung {
        number,
        id: page.id.clone(),
        kind: page.kind,
        strand: solved.strand,
        level: page.level,
        levels: page.levels,
        difficulty: solved.difficulty.as_ref().map(|d| (d.total * 10.0).round() / 10.0 + 0.0),
        grade: solved.difficulty.as_ref().map(Difficulty::badge),
        variant: page.variant,
        questions: page.quiz.as_ref().map_or(0, |quiz| quiz.questions.len()),
        title: page.title.clone(),
        // Counted from the base, as written; before turned eyes no place is told.
        demand_pd: span(stands.iter().map(|s| s.demand.0 - viewer.base.horizontal.0)),
        place_mm: span(
            stands.iter().filter(|_| viewer.base.is_none()).map(|s| s.place.map_or(f64::INFINITY, |mm| mm.0)),
        )
        .map(|ends| ends.map(|end| Some(end).filter(|mm| mm.is_finite()))),
    }
}

/// Columns of the table.
const COLUMNS: usize = 9;

/// The ladder as a table for people. A grade stands with the difficulty that it is a tenth of.
pub(super) fn table(rungs: &[Rung]) -> String {
    let asks = if rungs.iter().any(|rung| 0 < rung.questions) { "asks" } else { "" };
    let head = ["page", "id", "kind", "strand", "level", "grade", "demand, pd", "place, mm", asks].map(str::to_owned);
    let rows: Vec<_> = std::iter::once(head).chain(rungs.iter().map(cells)).collect();
    let width = |column: usize| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0);
    let widths: [usize; COLUMNS] = std::array::from_fn(width);
    rows.iter().map(|row| line(row, &widths)).collect()
}

fn cells(rung: &Rung) -> [String; COLUMNS] {
    let variant = rung.variant.map_or(String::new(), |letter| format!(" {}", letter.to_ascii_uppercase()));
    [
        rung.number.map_or_else(|| "-".to_owned(), |n| n.to_string()),
        rung.id.clone(),
        rung.kind.to_owned(),
        rung.strand.to_owned(),
        format!("{}/{}{variant}", rung.level, rung.levels),
        rung.grade.zip(rung.difficulty).map_or_else(|| "-".to_owned(), |(g, d)| format!("{g:>2} ({d:.1})")),
        rung.demand_pd.map_or_else(|| "-".to_owned(), |ends| demand_words(ends).replace(" pd ", " ")),
        rung.place_mm.map_or_else(|| "-".to_owned(), place_words),
        if rung.questions == 0 { String::new() } else { rung.questions.to_string() },
    ]
}

/// The page number stands to the right, all else to the left.
fn line(row: &[String; COLUMNS], widths: &[usize; COLUMNS]) -> String {
    let mut line = format!("{:>1$}", row[0], widths[0]);
    for (cell, width) in row.iter().zip(widths).skip(1) {
        line.push_str(&format!("  {cell:<width$}"));
    }
    format!("{}\n", line.trim_end())
}

/// "1 to 4 toward", "2 away to 4 toward", "on the page".
pub(super) fn demand_words([low, high]: [f64; 2]) -> String {
    let amount = |pd: f64| plain(pd.abs(), 2);
    let side = |pd: f64| if pd < 0.0 { "away" } else { "toward" };
    match (amount(low), amount(high)) {
        (low, high) if low == "0" && high == "0" => "on the page".to_owned(),
        (a, b) if a == b && side(low) == side(high) => format!("{a} pd {}", side(low)),
        (a, b) if 0.0 <= low => format!("{a} to {b} pd toward"),
        (a, b) if high <= 0.0 => format!("{b} to {a} pd away"),
        (a, b) => format!("{a} pd away to {b} pd toward"),
    }
}

/// "355 to 381", "448 to parallel".
fn place_words([near, far]: [Option<f64>; 2]) -> String {
    let amount = |mm: f64| plain(mm, 0);
    match (near.map(amount), far.map(amount)) {
        (Some(near), Some(far)) if near == far => near,
        (Some(near), Some(far)) => format!("{near} to {far}"),
        (Some(near), None) => format!("{near} to parallel"),
        (None, _) => "parallel".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exercise::Page;
    use crate::exercise::words::Words;
    use crate::scene::{Effort, Eyes, Role, Scene, Shape, Strand};
    use crate::solve::{PathPoint, SolvedFeature, SolvedForm, stand};
    use crate::units::Mm;

    #[test]
    fn demands_are_told_from_small_to_large() {
        assert_eq!(demand_words([0.0, 0.0]), "on the page");
        assert_eq!(demand_words([1.0, 4.0]), "1 to 4 pd toward");
        assert_eq!(demand_words([-4.0, -1.0]), "1 to 4 pd away");
        assert_eq!(demand_words([-2.0, -2.0]), "2 pd away");
        assert_eq!(demand_words([-2.0, 2.0]), "2 pd away to 2 pd toward");
    }

    /// A mark may stand deeper than its target; a path goes to and fro between its ends.
    #[test]
    fn only_what_is_looked_at_counts() {
        let viewer = Viewer::new(Mm(400.0), Mm(64.0), (Mm(50.0), Mm(75.0)));
        let feature = |role, parallax: f64, form| SolvedFeature {
            id: String::new(),
            role,
            eyes: Eyes::Both,
            form,
            at: (0.0, 0.0),
            stand: stand(Mm(parallax), &viewer).unwrap(),
            solid: false,
            place: None,
        };
        let ring = || SolvedForm::Shape { shape: Shape::Ring, size: 20.0, weight: 1.0, extent: (20.0, 20.0) };
        let points = [0.0, -8.0, 4.0, 0.0].map(|parallax| PathPoint { x: parallax, y: 0.0, parallax });
        let path = || SolvedForm::Path { points: points.to_vec(), closed: false, smooth: false, weight: 1.0 };
        let span_of = |features| {
            let page = Page {
                id: String::new(),
                kind: "hold",
                title: String::new(),
                level: 1,
                levels: 1,
                variant: None,
                seed: None,
                quiz: None,
                readings: None,
                time: 120,
                gated: false,
                strand: Strand::Hold,
                effort: Effort::default(),
                scene: Scene::default(),
                words: Words::default(),
                balance: None,
                place: crate::diagnostics::Place::start_of(crate::diagnostics::FileId(0)),
            };
            rung(&SolvedPage::graded(page, features, &viewer), &viewer, None).demand_pd
        };
        let marks = || vec![feature(Role::Lock, -12.0, ring()), feature(Role::Guide, 0.0, path())];
        assert_eq!(span_of(marks()), None);
        let with = |more| marks().into_iter().chain([more]).collect();
        assert_eq!(span_of(with(feature(Role::Target, -4.0, ring()))), Some([1.0, 1.0]));
        assert_eq!(span_of(with(feature(Role::Trail, 0.0, path()))), Some([-1.0, 2.0]));
    }

    #[test]
    fn a_table_keeps_its_columns() {
        let rung = |number, id: &str, demand_pd| Rung {
            number,
            id: id.to_owned(),
            kind: "hold",
            strand: "toward",
            level: 1,
            levels: 2,
            difficulty: Some(12.34),
            grade: Some(2),
            variant: None,
            questions: 0,
            title: String::new(),
            demand_pd,
            place_mm: Some([Some(380.0), None]),
        };
        let text = table(&[rung(Some(7), "bollard-1", Some([1.0, 1.0])), rung(None, "quay", None)]);
        let expected = "page  id         kind  strand  level  grade      demand, pd  place, mm\n\
                        \x20  7  bollard-1  hold  toward  1/2     2 (12.3)  1 toward    380 to parallel\n\
                        \x20  -  quay       hold  toward  1/2     2 (12.3)  -           380 to parallel\n";
        assert_eq!(text, expected);
        let asking = Rung { variant: Some('b'), questions: 12, ..rung(Some(12), "buoys-2-b", Some([1.0, 1.0])) };
        let text = table(&[rung(Some(7), "quay", None), asking]);
        let expected = "page  id         kind  strand  level  grade      demand, pd  place, mm        asks\n\
                        \x20  7  quay       hold  toward  1/2     2 (12.3)  -           380 to parallel\n\
                        \x20 12  buoys-2-b  hold  toward  1/2 B   2 (12.3)  1 toward    380 to parallel  12\n";
        assert_eq!(text, expected);
    }
}
