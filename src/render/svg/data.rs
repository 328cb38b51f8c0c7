//! Numbers and path data in their shortest exact form. Knows nothing of sheets.

use kurbo::{BezPath, PathEl, Point};

use crate::layout::sheet::Bar;

/// Decimals of a length in millimetres: a thousandth is far below any printer dot.
pub(crate) const MM: u32 = 3;

/// Writes `value`, rounded to `decimals`, without trailing zeros, leading zero or "-0". Values are finite.
pub(crate) fn number(out: &mut String, value: f64, decimals: u32) {
    fixed(out, quantise(value, decimals), decimals);
}

/// `value` in whole steps of the last decimal.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a place on a page in its smallest steps stays far below the largest i64"
)]
fn quantise(value: f64, decimals: u32) -> i64 {
    debug_assert!(value.is_finite(), "{value} on a sheet");
    (value * 10_u32.pow(decimals) as f64).round() as i64
}

/// Writes a whole number of steps as a decimal number.
fn fixed(out: &mut String, steps: i64, decimals: u32) {
    if steps < 0 {
        out.push('-');
    }
    let unit = 10_u64.pow(decimals);
    let (whole, mut part) = (steps.unsigned_abs() / unit, steps.unsigned_abs() % unit);
    if whole != 0 || part == 0 {
        integer(out, whole);
    }
    if part != 0 {
        out.push('.');
        let mut unit = unit / 10;
        while part != 0 {
            out.push(digit(part / unit));
            part %= unit;
            unit /= 10;
        }
    }
}

/// Writes a whole number.
pub(crate) fn integer(out: &mut String, value: u64) {
    let mut unit = 1;
    while unit <= value / 10 {
        unit *= 10;
    }
    while unit != 0 {
        out.push(digit(value / unit % 10));
        unit /= 10;
    }
}

/// The last digit of a whole number.
fn digit(value: u64) -> char {
    char::from(b"0123456789"[(value % 10) as usize])
}

/// Writes path data: coordinates times `scale`, with `decimals`. Steps are relative and exact in whole units of the
/// last decimal, so that roundings do not add up.
pub(crate) fn path(out: &mut String, path: &BezPath, scale: f64, decimals: u32) {
    let mut pen = Pen { out, scale, decimals, at: (0, 0), start: (0, 0), command: ' ' };
    for element in path.elements() {
        match *element {
            PathEl::MoveTo(to) => {
                pen.curve('m', &[to]);
                pen.start = pen.at;
            }
            PathEl::LineTo(to) => pen.line(to),
            PathEl::QuadTo(a, to) => pen.curve('q', &[a, to]),
            PathEl::CurveTo(a, b, to) => pen.curve('c', &[a, b, to]),
            PathEl::ClosePath => {
                pen.out.push('z');
                (pen.at, pen.command) = (pen.start, 'z');
            }
        }
    }
}

/// Writes bars as level strokes, from left ends to right ends, in millimetres. Steps are exact as in [`path`].
pub(crate) fn bars(out: &mut String, bars: &[Bar]) {
    let mut at = (0, 0);
    for bar in bars {
        let [x0, x1, y] = [bar.x0, bar.x1, bar.y].map(|value| quantise(value, MM));
        out.push('m');
        fixed(out, x0 - at.0, MM);
        if at.1 <= y {
            out.push(' ');
        }
        fixed(out, y - at.1, MM);
        out.push('h');
        fixed(out, x1 - x0, MM);
        at = (x1, y);
    }
}

struct Pen<'a> {
    out: &'a mut String,
    scale: f64,
    decimals: u32,
    at: (i64, i64),
    start: (i64, i64),
    command: char,
}

impl Pen<'_> {
    fn steps(&self, to: Point) -> (i64, i64) {
        let of = |value: f64| quantise(value * self.scale, self.decimals);
        (of(to.x) - self.at.0, of(to.y) - self.at.1)
    }

    fn line(&mut self, to: Point) {
        let (x, y) = self.steps(to);
        match (x, y) {
            (0, 0) => {}
            (x, 0) => self.numbers('h', &[x]),
            (0, y) => self.numbers('v', &[y]),
            (x, y) => self.numbers('l', &[x, y]),
        }
        self.go(x, y);
    }

    /// A command whose points are all relative to where it starts.
    fn curve(&mut self, command: char, points: &[Point]) {
        let mut last = (0, 0);
        for (index, &point) in points.iter().enumerate() {
            last = self.steps(point);
            self.numbers(if index == 0 { command } else { self.command }, &[last.0, last.1]);
        }
        self.go(last.0, last.1);
    }

    fn go(&mut self, x: i64, y: i64) {
        self.at = (self.at.0 + x, self.at.1 + y);
    }

    /// Writes a command letter, if it is a new one, and its numbers. A move is always written: numbers alone after a
    /// move are lines.
    fn numbers(&mut self, command: char, numbers: &[i64]) {
        let mut first = command != self.command || command == 'm';
        if first {
            self.out.push(command);
            self.command = command;
        }
        for &steps in numbers {
            if !first && 0 <= steps {
                self.out.push(' ');
            }
            fixed(self.out, steps, self.decimals);
            first = false;
        }
    }
}

#[cfg(test)]
mod tests {
    use kurbo::{Circle, Rect, Shape};
    use proptest::prelude::*;

    use super::*;

    fn written(value: f64, decimals: u32) -> String {
        let mut out = String::new();
        number(&mut out, value, decimals);
        out
    }

    #[test]
    fn numbers_are_short() {
        for (value, text) in [
            (0.0, "0"),
            (-0.0, "0"),
            (-0.0004, "0"),
            (0.5, ".5"),
            (-0.25, "-.25"),
            (210.0, "210"),
            (100.04, "100.04"),
            (-12.3456, "-12.346"),
            (0.007, ".007"),
            (1e6, "1000000"),
        ] {
            assert_eq!(written(value, 3), text);
        }
    }

    proptest! {
        /// The standard library reads back what was written, to half a step.
        #[test]
        fn numbers_read_back(value in -1e6..1e6_f64, decimals in 0..6_u32) {
            let read: f64 = written(value, decimals).parse().unwrap();
            prop_assert!((read - value).abs() <= 0.5 * 10_f64.powi(-(decimals as i32)) + 1e-9);
        }
    }

    #[test]
    fn rectangles_take_five_commands() {
        let mut out = String::new();
        path(&mut out, &Rect::new(1.0, 2.0, 3.5, 4.0).to_path(0.1), 1.0, MM);
        assert_eq!(out, "m1 2h2.5v2h-2.5z");
    }

    /// Bars are read back by kurbo as lines from end to end.
    #[test]
    fn bars_read_back() {
        let bar = |y: f64, x0: f64, x1: f64| Bar { y, x0, x1 };
        let list = [bar(1.25, 2.0, 3.5), bar(1.25, 4.0004, 4.5), bar(1.75, 0.25, 9.0), bar(0.5, 1.0, 2.0)];
        let mut out = String::new();
        bars(&mut out, &list);
        assert_eq!(out, "m2 1.25h1.5m.5 0h.5m-4.25 .5h8.75m-8-1.25h1");
        let read = points(&BezPath::from_svg(&out).unwrap());
        for (ends, bar) in read.chunks(2).zip(&list) {
            let near = |p: Point, x: f64| (p.x - x).abs() <= 0.000_500_1 && (p.y - bar.y).abs() < 1e-9;
            assert!(near(ends[0], bar.x0) && near(ends[1], bar.x1), "{ends:?} {bar:?}");
        }
    }

    fn points(path: &BezPath) -> Vec<Point> {
        let of = |element: &PathEl| match *element {
            PathEl::MoveTo(a) | PathEl::LineTo(a) => vec![a],
            PathEl::QuadTo(a, b) => vec![a, b],
            PathEl::CurveTo(a, b, c) => vec![a, b, c],
            PathEl::ClosePath => vec![],
        };
        path.elements().iter().flat_map(of).collect()
    }

    /// The published grammar (SVG 1.1, 8.3) as read by kurbo: no point strays by more than half a step.
    #[test]
    fn path_data_reads_back() {
        let mut shape = BezPath::new();
        for index in 0..200 {
            let centre = (f64::from(index) * 0.77, f64::from(index % 7) * 3.1);
            shape.extend(Circle::new(centre, 0.4 + f64::from(index) * 0.01).to_path(1e-3).elements().to_vec());
            shape.move_to((f64::from(index) * 0.37, 200.0));
            shape.line_to((f64::from(index) * 1.01, 300.0));
            shape.quad_to((0.0, f64::from(index) * -1.13), (-7.0, 8.0));
        }
        let mut out = String::new();
        path(&mut out, &shape, 1.0, MM);
        let read = BezPath::from_svg(&out).unwrap();
        let (read, shape) = (points(&read), points(&shape));
        assert_eq!(read.len(), shape.len());
        for (a, b) in read.iter().zip(&shape) {
            assert!((a.x - b.x).abs() <= 0.000_500_1 && (a.y - b.y).abs() <= 0.000_500_1, "{a:?} {b:?}");
        }
    }
}
