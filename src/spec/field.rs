//! The spec language as data: which tables and keys there are, what each takes, and what holds where it is left out.
//!
//! Reader, did-you-mean and spec reference all work from these tables, so they cannot drift apart.

use crate::units::{Quantity, Unit, plain};

/// A table of a file.
#[derive(Debug, Clone, Copy)]
pub struct TableSpec {
    /// Its name as in the file.
    pub name: &'static str,
    /// How often it stands in the file.
    pub form: TableForm,
    /// Its keys, in groups that several tables may share.
    pub groups: &'static [&'static [Field]],
    /// What it is for, one sentence.
    pub doc: &'static str,
}

/// How a table is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TableForm {
    /// `[name]`, once.
    Single,
    /// `[[name]]`, once or more.
    Many,
    /// `{ … }`, as the value of a key.
    Inline,
}

impl TableSpec {
    /// All keys.
    pub fn fields(&self) -> impl Iterator<Item = &'static Field> {
        self.groups.iter().flat_map(|group| group.iter())
    }

    /// The key with this name.
    pub fn field(&self, key: &str) -> Option<&'static Field> {
        self.fields().find(|f| f.key == key)
    }

    /// The table in words, with its header as it is written: "`[viewer]`", "`[[target]]`", "the ramp".
    pub fn title(&self) -> String {
        match self.form {
            TableForm::Single => format!("`[{}]`", self.name),
            TableForm::Many => format!("`[[{}]]`", self.name),
            TableForm::Inline => format!("the {}", self.name),
        }
    }
}

/// A key of a table.
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// Its name.
    pub key: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// Whether it may be left out.
    pub need: Need,
    /// What it means, for the spec reference.
    pub doc: &'static str,
    /// The words of the table's `form` key that it belongs to; empty for all.
    pub forms: &'static [&'static str],
    /// Whether it holds words of the author that the reader of the book meets, so that they are translated.
    pub said: bool,
}

impl Field {
    /// A key that must be there.
    pub const fn required(key: &'static str, takes: Takes, doc: &'static str) -> Self {
        Self { key, takes, need: Need::Required, doc, forms: &[], said: false }
    }

    /// A key that may be left out; the meaning of that is in its doc.
    pub const fn optional(key: &'static str, takes: Takes, doc: &'static str) -> Self {
        Self { key, takes, need: Need::Optional, doc, forms: &[], said: false }
    }

    /// A key that holds `value`, a TOML value as an author would write it, where it is left out.
    pub const fn default(key: &'static str, takes: Takes, value: &'static str, doc: &'static str) -> Self {
        Self { key, takes, need: Need::Default(value), doc, forms: &[], said: false }
    }

    /// The same key, but one that may be left out.
    pub const fn left_out(mut self) -> Self {
        self.need = Need::Optional;
        self
    }

    /// The same key, with words that the reader of the book meets.
    pub const fn said(mut self) -> Self {
        self.said = true;
        self
    }

    /// The same key, but of these forms alone.
    pub const fn only(mut self, forms: &'static [&'static str]) -> Self {
        self.forms = forms;
        self
    }
}

/// Whether a key may be left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Need {
    /// It must be there.
    Required,
    /// It may be left out.
    Optional,
    /// Where it is left out, this TOML value is read exactly as if it had been written.
    Default(&'static str),
}

/// What a key takes.
#[derive(Debug, Clone, Copy)]
pub enum Takes {
    /// One line of text, at most so many characters.
    Text(u32),
    /// A name: lower-case letters, digits and hyphens.
    Id,
    /// `x.y.z`.
    Version,
    /// `YYYY-MM-DD`, in quotes.
    Date,
    /// The path of an exercise file, from the folder of the set.
    File,
    /// A file of numbers, by its path from the folder of the set, or one of some words.
    Data(&'static [&'static str]),
    /// A picture file with this ending, by its path from the folder of the set.
    Picture(&'static str),
    /// A colour, `"#rrggbb"`.
    Colour,
    /// `true` or `false`.
    Flag,
    /// A whole number.
    Count {
        /// The least.
        min: u32,
        /// The most.
        max: u32,
    },
    /// One of some words.
    Choice(&'static [&'static str]),
    /// A length.
    Length(Limits),
    /// A length or an angle.
    Size {
        /// Of a length.
        length: Limits,
        /// Of an angle.
        angle: Limits,
    },
    /// A depth: an amount and a side, or `"page"`.
    Depth,
    /// A place: two lengths, to the right and down from the middle of the art field, each at most this far.
    Point(Quantity),
    /// A time.
    Time(Limits),
    /// A prism demand, without a side.
    Prism(Limits),
    /// A share, in per cent.
    Share(Limits),
    /// A list.
    List {
        /// What each entry takes.
        of: &'static Takes,
        /// The least number of entries.
        min: u32,
        /// The most.
        max: u32,
    },
    /// A word, or a list of such words.
    OneOrMore(&'static Takes),
    /// A value, or a ramp of such values over the levels.
    Ramp(&'static Takes),
    /// An inline table.
    Table(&'static TableSpec),
}

/// The least and the greatest value of a quantity, in the unit that messages and reference show.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// The least.
    pub min: Quantity,
    /// The greatest.
    pub max: Quantity,
}

/// The longest name that [`Takes::Id`] allows, in characters.
pub const ID_LENGTH: usize = 40;

/// Limits in millimetres.
pub const fn mm(min: f64, max: f64) -> Limits {
    limits(min, max, Unit::Mm)
}

/// Limits in degrees.
pub const fn deg(min: f64, max: f64) -> Limits {
    limits(min, max, Unit::Deg)
}

/// Limits in prism dioptres.
pub const fn pd(min: f64, max: f64) -> Limits {
    limits(min, max, Unit::Pd)
}

/// Limits in minutes of arc.
pub const fn arcmin(min: f64, max: f64) -> Limits {
    limits(min, max, Unit::Arcmin)
}

/// Limits in per cent.
pub const fn percent(min: f64, max: f64) -> Limits {
    limits(min, max, Unit::Percent)
}

/// Limits in seconds.
pub const fn seconds(min: f64, max: f64) -> Limits {
    limits(min, max, Unit::S)
}

const fn limits(min: f64, max: f64, unit: Unit) -> Limits {
    Limits { min: Quantity { value: min, unit }, max: Quantity { value: max, unit } }
}

impl Limits {
    /// Whether a quantity of the same dimension is inside.
    pub fn contain(&self, quantity: Quantity) -> bool {
        (base(self.min)..=base(self.max)).contains(&base(quantity))
    }

    /// The first of some round values that is inside, else the least, in quotes.
    fn example(&self, round: &[(f64, Unit)]) -> String {
        let round = round.iter().map(|&(value, unit)| Quantity { value, unit });
        format!("\"{}\"", amount(round.into_iter().find(|q| self.contain(*q)).unwrap_or(self.min)))
    }

    /// "2 mm to 160 mm".
    pub fn words(&self) -> String {
        format!("{} to {}", amount(self.min), amount(self.max))
    }
}

impl Takes {
    /// What it takes, with its limits, for the spec reference and for help texts.
    pub fn words(&self) -> String {
        match self {
            Takes::Text(max) => format!("text, at most {max} characters"),
            Takes::Id => format!("a name of `a`-`z`, `0`-`9` and `-`, at most {ID_LENGTH} characters"),
            Takes::Version => "a version `\"x.y.z\"`".to_owned(),
            Takes::Date => "a date `\"YYYY-MM-DD\"`".to_owned(),
            Takes::File => "a path ending in `.toml`".to_owned(),
            Takes::Data([]) => "a path ending in `.csv`".to_owned(),
            Takes::Data(words) => format!("{}, or a path ending in `.csv`", choices(words)),
            Takes::Picture(ending) => format!("a path ending in `.{ending}`"),
            Takes::Colour => "a colour `\"#rrggbb\"`".to_owned(),
            Takes::Flag => "`true` or `false`".to_owned(),
            Takes::Count { min, max } => format!("a whole number, {min} to {max}"),
            Takes::Choice(words) => choices(words),
            Takes::Length(limits) => format!("a length, {}", limits.words()),
            Takes::Size { length, angle } => {
                format!("a length, {}, or an angle, {}", length.words(), angle.words())
            }
            Takes::Depth => "a depth".to_owned(),
            Takes::Point(reach) => format!("two lengths, each at most {} from the middle", amount(*reach)),
            Takes::Time(limits) => format!("a time, {}", limits.words()),
            Takes::Prism(limits) => format!("a prism demand, {}", limits.words()),
            Takes::Share(limits) => format!("a share, {}", limits.words()),
            Takes::List { of, min, max } if min == max => format!("a list of {min}, each {}", of.words()),
            Takes::List { of, min, max } => format!("a list of {min} to {max}, each {}", of.words()),
            Takes::OneOrMore(of) => format!("{}; or a list of them", of.words()),
            Takes::Ramp(of) => format!("{}; or a ramp", of.words()),
            Takes::Table(table) => {
                let keys: Vec<_> = table.fields().map(|f| f.key).collect();
                format!("a table `{{ {} }}`", keys.join(", "))
            }
        }
    }

    /// What it takes in a few words, for "`size` takes …".
    pub fn noun(&self) -> String {
        match self {
            Takes::Text(_) | Takes::Version | Takes::Date | Takes::File | Takes::Data(_) | Takes::Picture(_) => {
                "a text in quotes".to_owned()
            }
            Takes::Colour => "a colour in quotes".to_owned(),
            Takes::Id => "a name in quotes".to_owned(),
            Takes::Count { .. } => "a whole number".to_owned(),
            Takes::Length(_) => "a length in quotes".to_owned(),
            Takes::Size { .. } => "a length or an angle in quotes".to_owned(),
            Takes::Depth => "a depth in quotes".to_owned(),
            Takes::Point(_) => "a list of two lengths".to_owned(),
            Takes::Time(_) => "a time in quotes".to_owned(),
            Takes::Prism(_) => "a prism demand in quotes".to_owned(),
            Takes::Share(_) => "a share in quotes".to_owned(),
            Takes::List { .. } => "a list".to_owned(),
            Takes::OneOrMore(_) => "a word or a list of words".to_owned(),
            Takes::Ramp(of) => of.noun(),
            Takes::Flag | Takes::Choice(_) | Takes::Table(_) => self.words(),
        }
    }

    /// A value that it takes, as an author would write it, for help texts. Nobody's value is guessed from it.
    pub fn example(&self) -> String {
        match self {
            Takes::Text(_) => "\"Harbour Lights\"".to_owned(),
            Takes::Id => "\"harbour-lights\"".to_owned(),
            Takes::Version => "\"1.0.0\"".to_owned(),
            Takes::Date => "\"2026-05-04\"".to_owned(),
            Takes::File => "\"mooring-rings.toml\"".to_owned(),
            Takes::Data(words) => format!("\"{}\"", words.first().unwrap_or(&"filters/pair.csv")),
            Takes::Picture(ending) => format!("\"art/gull.{ending}\""),
            Takes::Colour => "\"#00ffff\"".to_owned(),
            Takes::Flag => "true".to_owned(),
            Takes::Count { min, .. } => min.to_string(),
            Takes::Choice(words) => format!("\"{}\"", words.first().unwrap_or(&"")),
            Takes::Length(limits) | Takes::Size { length: limits, .. } => {
                limits.example(&[(40.0, Unit::Mm), (40.0, Unit::Cm), (2.0, Unit::Mm)])
            }
            Takes::Time(limits) => limits.example(&[(10.0, Unit::S)]),
            Takes::Prism(limits) => limits.example(&[(4.0, Unit::Pd)]),
            Takes::Share(limits) => limits.example(&[(4.0, Unit::Percent)]),
            Takes::Depth => "\"2 pd toward\"".to_owned(),
            Takes::Point(_) => "[\"10 mm\", \"0 mm\"]".to_owned(),
            Takes::List { of, .. } => format!("[{}]", of.example()),
            Takes::OneOrMore(of) | Takes::Ramp(of) => of.example(),
            Takes::Table(table) => {
                let keys: Vec<_> = table.fields().map(|f| format!("{} = {}", f.key, f.takes.example())).collect();
                format!("{{ {} }}", keys.join(", "))
            }
        }
    }
}

/// A quantity in the base unit of its dimension: millimetre, radian, second, or itself.
pub fn base(quantity: Quantity) -> f64 {
    let length = quantity.to_mm().map(|l| l.0);
    let angle = quantity.to_angle().map(|a| a.to_radians());
    length.or(angle).or(quantity.to_seconds().map(|s| s.0)).unwrap_or(quantity.value)
}

/// A quantity for messages: no trailing zeros.
pub fn amount(quantity: Quantity) -> String {
    format!("{} {}", plain(quantity.value, 6), quantity.unit.symbol())
}

/// "`red` or `cyan`", "`row`, `column` or `ring`".
pub fn choices(words: &[&str]) -> String {
    let quoted: Vec<_> = words.iter().map(|w| format!("`{w}`")).collect();
    match quoted.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, rest)) => format!("{} or {last}", rest.join(", ")),
        None => String::new(),
    }
}
