//! JSON as people read it: one entry a line, but lists of numbers on one line. Equal values give equal bytes.

use std::io::{self, Write};

use serde::Serialize;
use serde_json::ser::{CompactFormatter, Formatter, Serializer};

/// A value as JSON text that ends with a newline.
pub fn to_vec<T: Serialize>(value: &T) -> Result<Vec<u8>, serde_json::Error> {
    let mut out = Vec::new();
    value.serialize(&mut Serializer::with_formatter(&mut out, Lines::default()))?;
    out.push(b'\n');
    Ok(out)
}

/// Breaks lines before objects, keys, texts and lists, and never before a number.
#[derive(Default)]
struct Lines {
    /// For each open object or list: whether something in it began a line.
    open: Vec<bool>,
    /// An entry of a list is about to be written; true for the first.
    entry: Option<bool>,
}

impl Lines {
    fn line<W: ?Sized + Write>(&self, out: &mut W) -> io::Result<()> {
        out.write_all(b"\n")?;
        (0..self.open.len()).try_for_each(|_| out.write_all(b"  "))
    }

    /// Before a number, true, false or null: stays on the line.
    fn plain<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        match self.entry.take() {
            Some(false) => out.write_all(b", "),
            _ => Ok(()),
        }
    }

    /// Before anything else: begins a line where it is an entry of a list.
    fn block<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        match self.entry.take() {
            Some(first) => self.begin_line(out, first),
            None => Ok(()),
        }
    }

    fn begin_line<W: ?Sized + Write>(&mut self, out: &mut W, first: bool) -> io::Result<()> {
        if !first {
            out.write_all(b",")?;
        }
        if let Some(broken) = self.open.last_mut() {
            *broken = true;
        }
        self.line(out)
    }

    fn begin<W: ?Sized + Write>(&mut self, out: &mut W, bracket: &[u8]) -> io::Result<()> {
        self.block(out)?;
        self.open.push(false);
        out.write_all(bracket)
    }

    fn end<W: ?Sized + Write>(&mut self, out: &mut W, bracket: &[u8]) -> io::Result<()> {
        if self.open.pop() == Some(true) {
            self.line(out)?;
        }
        out.write_all(bracket)
    }
}

impl Formatter for Lines {
    fn begin_array<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        self.begin(out, b"[")
    }

    fn end_array<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        self.end(out, b"]")
    }

    fn begin_array_value<W: ?Sized + Write>(&mut self, _: &mut W, first: bool) -> io::Result<()> {
        self.entry = Some(first);
        Ok(())
    }

    fn begin_object<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        self.begin(out, b"{")
    }

    fn end_object<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        self.end(out, b"}")
    }

    fn begin_object_key<W: ?Sized + Write>(&mut self, out: &mut W, first: bool) -> io::Result<()> {
        self.begin_line(out, first)
    }

    fn begin_object_value<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        out.write_all(b": ")
    }

    fn begin_string<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        self.block(out)?;
        out.write_all(b"\"")
    }

    fn write_null<W: ?Sized + Write>(&mut self, out: &mut W) -> io::Result<()> {
        self.plain(out)?;
        CompactFormatter.write_null(out)
    }

    fn write_bool<W: ?Sized + Write>(&mut self, out: &mut W, value: bool) -> io::Result<()> {
        self.plain(out)?;
        CompactFormatter.write_bool(out, value)
    }

    fn write_u32<W: ?Sized + Write>(&mut self, out: &mut W, value: u32) -> io::Result<()> {
        self.plain(out)?;
        CompactFormatter.write_u32(out, value)
    }

    fn write_u64<W: ?Sized + Write>(&mut self, out: &mut W, value: u64) -> io::Result<()> {
        self.plain(out)?;
        CompactFormatter.write_u64(out, value)
    }

    fn write_f64<W: ?Sized + Write>(&mut self, out: &mut W, value: f64) -> io::Result<()> {
        self.plain(out)?;
        CompactFormatter.write_f64(out, value)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lists_of_numbers_stay_on_one_line() {
        let value = serde_json::json!({"a": [1.5, null, -2.0], "b": [[1.0, 2.0], [3.0, 4.0]], "c": [], "d": ["x"]});
        let text = String::from_utf8(to_vec(&value).unwrap()).unwrap();
        let expected = "{\n  \"a\": [1.5, null, -2.0],\n  \"b\": [\n    [1.0, 2.0],\n    [3.0, 4.0]\n  ],\n  \"c\": [],\n  \
                        \"d\": [\n    \"x\"\n  ]\n}\n";
        assert_eq!(text, expected);
        assert_eq!(serde_json::from_str::<serde_json::Value>(&text).unwrap(), value);
    }
}
