//! Which of two depths is nearer, where that can be told without a viewer.

use std::cmp::Ordering;

use crate::diagnostics::{Diagnostic, codes};
use crate::exercise::ramp::Ramp;
use crate::scene::{Depth, Side};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::{Mm, PrismDioptre};

/// How much nearer to the reader `a` stands than `b`: greater is nearer. `None` where it hangs on the viewer: two amounts
/// of different units on one side of the page.
pub fn compare(a: &Depth, b: &Depth) -> Option<Ordering> {
    match (a, b) {
        // Two ramps of one exercise are at the same share of their way on every level.
        (Depth::Between(ends, share), Depth::Between(others, same)) if share.total_cmp(same).is_eq() => {
            together(compare(&ends.0, &others.0)?, compare(&ends.1, &others.1)?)
        }
        (Depth::Between(ends, _), other) => together(compare(&ends.0, other)?, compare(&ends.1, other)?),
        (other, Depth::Between(ends, _)) => together(compare(other, &ends.0)?, compare(other, &ends.1)?),
        _ => compare_plain(a, b),
    }
}

/// What holds at both ends of a blend holds within it.
fn together(from: Ordering, to: Ordering) -> Option<Ordering> {
    (from == to).then_some(from)
}

fn compare_plain(a: &Depth, b: &Depth) -> Option<Ordering> {
    let sign = |depth: &Depth| match depth.side() {
        Some(Side::Toward) => 1,
        None => 0,
        Some(Side::Away) => -1,
    };
    let (sign_a, sign_b) = (sign(a), sign(b));
    if sign_a != sign_b || sign_a == 0 {
        return Some(sign_a.cmp(&sign_b));
    }
    let farther = match (a, b) {
        (Depth::Place(Mm(a), _), Depth::Place(Mm(b), _)) | (Depth::Parallax(Mm(a), _), Depth::Parallax(Mm(b), _)) => {
            a.partial_cmp(b)
        }
        (Depth::Demand(PrismDioptre(a), _), Depth::Demand(PrismDioptre(b), _)) => a.partial_cmp(b),
        (Depth::Disparity(a, _), Depth::Disparity(b, _)) => a.to_radians().partial_cmp(&b.to_radians()),
        _ => None,
    }?;
    Some(if sign_a == 1 { farther } else { farther.reverse() })
}

/// How the depths of two keys of a table stand to one another on every level: greater where the first is nearer.
///
/// `None`: a problem has been pushed, for there is no one answer.
pub fn order(
    reader: &mut Reader<'_>,
    table: &Table<'_>,
    (first, a): (&'static str, &Ramp<Depth>),
    (second, b): (&'static str, &Ramp<Depth>),
) -> Option<Ordering> {
    let levels = a.levels().or(b.levels()).unwrap_or(1);
    let mut orders = (1..=levels).map(|level| compare(&a.at(level), &b.at(level)));
    let seen = orders.next().flatten();
    if let Some(seen) = seen.filter(|seen| *seen != Ordering::Equal && orders.all(|other| other == Some(*seen))) {
        return Some(seen);
    }
    let message = match seen {
        Some(Ordering::Equal) => format!("`{first}` and `{second}` are the same depth"),
        _ => format!("`{first}` and `{second}`: which is nearer cannot be told"),
    };
    let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, first), message)
        .with_label("nearer on every level, or farther on every level")
        .with_help("write both in one unit and keep one of them nearer on every level");
    reader.push(problem);
    None
}

/// Holds that `near` is nearer than `far` on every level.
pub fn near_and_far(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<(Ramp<Depth>, Ramp<Depth>)> {
    let near = table.get(reader, "near");
    let far = table.get(reader, "far");
    let (near, far): (Ramp<Depth>, Ramp<Depth>) = (near?, far?);
    if order(reader, table, ("near", &near), ("far", &far))? == Ordering::Greater {
        return Some((near, far));
    }
    let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "near"), "`near` is farther than `far`")
        .with_label("the farther of the two")
        .with_help("let `near` and `far` change places");
    reader.push(problem);
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Angle;

    fn arcsec(amount: f64, side: Side) -> Depth {
        Depth::Disparity(Angle::from_arcsec(amount), side)
    }

    #[test]
    fn nearer_is_greater_on_both_sides_of_the_page() {
        use Ordering::{Equal, Greater, Less};
        use Side::{Away, Toward};
        let pd = |amount, side| Depth::Demand(PrismDioptre(amount), side);
        assert_eq!(compare(&arcsec(400.0, Toward), &arcsec(200.0, Toward)), Some(Greater));
        assert_eq!(compare(&arcsec(400.0, Away), &arcsec(200.0, Away)), Some(Less));
        assert_eq!(compare(&arcsec(1.0, Toward), &pd(9.0, Away)), Some(Greater));
        assert_eq!(compare(&Depth::Page, &pd(9.0, Toward)), Some(Less));
        assert_eq!(compare(&Depth::Page, &pd(0.0, Toward)), Some(Equal));
        assert_eq!(compare(&pd(1.0, Toward), &arcsec(1.0, Toward)), None);
        let blend = Depth::Between(Box::new((pd(1.0, Away), pd(2.0, Toward))), 0.5);
        assert_eq!(compare(&blend, &pd(2.0, Away)), Some(Greater));
        assert_eq!(compare(&blend, &Depth::Page), None);
    }
}
