//! `kinds`: the kinds of exercise by family, and all that one kind takes; from the tables that the reader works from.

use serde::Serialize;

use crate::exercise::reference::ramp_takes;
use crate::exercise::{COMMON, FAMILIES, KINDS, Kind, ramp};
use crate::spec::field::{Field, Limits, Need, TableForm, TableSpec, Takes};
use crate::spec::reference::{meaning, need};
use crate::spec::suggest::nearest;
use crate::units::Quantity;

use super::console::Console;
use super::{Status, Stop};

/// Print the kinds of exercise, or what one of them takes
#[derive(Debug, clap::Args)]
pub(super) struct Args {
    /// A kind [default: all, by family]
    #[arg(value_name = "NAME")]
    name: Option<String>,
    /// Print JSON: everything about each kind
    #[arg(long)]
    json: bool,
}

/// Width of the text on a terminal, in characters.
const WIDTH: usize = 100;

/// Runs the command.
pub(super) fn run(args: &Args, console: &Console) -> Result<Status, Stop> {
    let one = args.name.as_deref().map(find).transpose()?;
    if args.json {
        let chosen = KINDS.iter().filter(|kind| one.is_none_or(|one| one.id == kind.id));
        console.print_json(&Report { schema: 1, kinds: chosen.map(KindPart::new).collect() })?;
    } else {
        console.print(&one.map_or_else(list, page))?;
    }
    Ok(Status::Fine)
}

/// The kind of this name.
fn find(name: &str) -> Result<&'static Kind, Stop> {
    KINDS.iter().find(|kind| kind.id == name).ok_or_else(|| {
        let near = nearest(name, KINDS.iter().map(|kind| kind.id));
        let way = near.map_or("`depthpress kinds` lists them".to_owned(), |near| format!("did you mean `{near}`?"));
        Stop(format!("there is no kind `{name}`; {way}"))
    })
}

/// Every kind with one line, by family.
fn list() -> String {
    let longest = KINDS.iter().map(|kind| kind.id.len()).max().unwrap_or(0);
    let mut out = String::new();
    for family in FAMILIES {
        let kinds: Vec<_> = KINDS.iter().filter(|kind| kind.family() == family.id).collect();
        if kinds.is_empty() {
            continue;
        }
        out.push_str(&format!("{}: {}\n", family.id, family.doc));
        for kind in kinds {
            let gate = if kind.gated { " Needs a `[gate]`." } else { "" };
            let text = format!("{}{gate}", first_sentence(kind.doc));
            out.push_str(&hang(&format!("  {:<longest$}  ", kind.id), &text));
        }
    }
    out.push_str("`depthpress kinds NAME` tells what a kind takes.\n");
    out
}

fn first_sentence(doc: &str) -> String {
    doc.split_once(". ").map_or(doc.to_owned(), |(first, _)| format!("{first}."))
}

/// Everything about one kind.
fn page(kind: &Kind) -> String {
    let gate = if kind.gated { ", needs a `[gate]` in `set.toml`" } else { "" };
    let mut out = format!("{} ({}{gate})\n{}", kind.id, kind.family(), hang("  ", kind.doc));
    for section in sections(kind) {
        out.push_str(&format!("\n{}\n", section.title));
        out.push_str(&hang("  ", section.doc));
        for field in section.fields {
            out.push_str(&format!("  {}  {}; {}\n", field.key, (section.takes)(field), need_words(field)));
            out.push_str(&hang("      ", &meaning(field)));
        }
    }
    out.push_str("\nexample\n");
    for line in kind.example.lines() {
        out.push_str(&format!("{}\n", format!("  {line}").trim_end()));
    }
    out
}

/// "required", "may be left out", "left out: `2 mm`".
fn need_words(field: &Field) -> String {
    match field.need {
        Need::Required => need(field),
        Need::Optional => "may be left out".to_owned(),
        Need::Default(_) => format!("left out: {}", need(field)),
    }
}

/// A table as it is told.
struct Section {
    title: String,
    doc: &'static str,
    fields: Vec<&'static Field>,
    /// What a key of it takes, in words.
    takes: fn(&Field) -> String,
}

impl Section {
    fn of(table: &'static TableSpec) -> Self {
        Self::new(&table.title(), table.doc, table.fields().collect())
    }

    fn new(title: &str, doc: &'static str, fields: Vec<&'static Field>) -> Self {
        Self { title: title.to_owned(), doc, fields, takes: |field| field.takes.words() }
    }
}

/// The tables of a kind, then the tables in their values, then what is the same for every kind.
fn sections(kind: &Kind) -> Vec<Section> {
    let own = Section::new("`[exercise]`", "Keys of its own.", kind.own_keys().collect());
    let tables = kind.tables.iter().skip(1).map(|table| Section::of(table));
    let mut sections: Vec<_> = [own].into_iter().filter(|own| !own.fields.is_empty()).chain(tables).collect();
    let common =
        Section::new("`[exercise]` of every kind", "What it is called, and its words.", COMMON.iter().collect());
    let fields = sections.iter().chain([&common]).flat_map(|section| &section.fields);
    let inner: Vec<_> = fields.clone().flat_map(|field| inline(&field.takes)).collect();
    let ramps = fields.into_iter().any(|field| matches!(field.takes, Takes::Ramp(_)));
    for table in inner {
        if sections.iter().all(|known| known.title != table.title()) {
            sections.push(Section::of(table));
        }
    }
    if ramps {
        sections.push(Section { takes: ramp_takes, ..Section::of(&ramp::RAMP) });
    }
    sections.push(common);
    sections
}

/// The tables in the value of a key, and in theirs.
fn inline(takes: &'static Takes) -> Vec<&'static TableSpec> {
    match takes {
        Takes::Table(table) => std::iter::once(*table).chain(table.fields().flat_map(|f| inline(&f.takes))).collect(),
        Takes::List { of, .. } | Takes::Ramp(of) => inline(of),
        _ => Vec::new(),
    }
}

/// Text in lines after a first indent; later lines stand below where it starts.
fn hang(indent: &str, text: &str) -> String {
    let left = indent.chars().count();
    let mut lines = vec![indent.to_owned()];
    for word in text.split_whitespace() {
        let Some(line) = lines.last_mut() else { continue };
        let used = line.chars().count();
        if left < used && WIDTH < used + 1 + word.chars().count() {
            lines.push(format!("{}{word}", " ".repeat(left)));
        } else {
            line.push_str(if left < used { " " } else { "" });
            line.push_str(word);
        }
    }
    lines.iter().map(|line| format!("{}\n", line.trim_end())).collect()
}

#[derive(Serialize)]
struct Report {
    schema: u32,
    kinds: Vec<KindPart>,
}

#[derive(Serialize)]
struct KindPart {
    id: &'static str,
    family: &'static str,
    /// Whether it needs a `[gate]`.
    gated: bool,
    doc: &'static str,
    tables: Vec<TablePart>,
    /// A whole exercise file.
    example: &'static str,
}

#[derive(Serialize)]
struct TablePart {
    name: &'static str,
    /// `single`, `many` or `inline`.
    form: &'static str,
    doc: &'static str,
    keys: Vec<KeyPart>,
}

#[derive(Serialize)]
struct KeyPart {
    key: &'static str,
    required: bool,
    /// The TOML value that holds where the key is left out.
    default: Option<&'static str>,
    takes: TakesPart,
    /// The words of the table's `form` key that it belongs to; empty for all.
    forms: &'static [&'static str],
    doc: &'static str,
}

/// What a key takes. Limits are quantities as an author would write them, or numbers of characters, entries or things.
#[derive(Serialize, Default)]
struct TakesPart {
    /// `text`, `name`, `count`, `length`, `depth`, `list`, `table`, …
    is: &'static str,
    /// The same in words.
    words: String,
    /// Whether it may change from level to level.
    ramp: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    min: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    max: Option<String>,
    /// The words to choose from.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    choices: Vec<&'static str>,
    /// What each entry of a list takes, or what a size may be besides a length.
    #[serde(skip_serializing_if = "Option::is_none")]
    of: Option<Box<TakesPart>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    table: Option<TablePart>,
}

impl KindPart {
    fn new(kind: &'static Kind) -> Self {
        Self {
            id: kind.id,
            family: kind.family(),
            gated: kind.gated,
            doc: kind.doc,
            tables: kind.tables.iter().map(|table| TablePart::new(table)).collect(),
            example: kind.example,
        }
    }
}

impl TablePart {
    fn new(table: &'static TableSpec) -> Self {
        let form = match table.form {
            TableForm::Single => "single",
            TableForm::Many => "many",
            TableForm::Inline => "inline",
        };
        Self { name: table.name, form, doc: table.doc, keys: table.fields().map(KeyPart::new).collect() }
    }
}

impl KeyPart {
    fn new(field: &'static Field) -> Self {
        let default = match field.need {
            Need::Default(text) => Some(text),
            Need::Required | Need::Optional => None,
        };
        let required = field.need == Need::Required;
        Self {
            key: field.key,
            required,
            default,
            takes: TakesPart::new(&field.takes),
            forms: field.forms,
            doc: field.doc,
        }
    }
}

impl TakesPart {
    fn new(takes: &'static Takes) -> Self {
        Self { words: takes.words(), ..Self::bare(takes) }
    }

    fn bare(takes: &'static Takes) -> Self {
        match takes {
            Takes::Text(max) => Self { max: Some(max.to_string()), ..Self::is("text") },
            Takes::Id => Self::is("name"),
            Takes::Version => Self::is("version"),
            Takes::Date => Self::is("date"),
            Takes::File | Takes::Picture(_) | Takes::Data([]) => Self::is("file"),
            Takes::Data(words) => Self { choices: words.to_vec(), ..Self::is("file") },
            Takes::Colour => Self::is("colour"),
            Takes::Flag => Self::is("flag"),
            Takes::Count { min, max } => Self::between("count", min, max),
            Takes::Choice(words) => Self { choices: words.to_vec(), ..Self::is("choice") },
            Takes::Length(limits) => Self::within("length", limits),
            Takes::Size { length, angle } => {
                Self { of: Some(Box::new(Self::within("angle", angle))), ..Self::within("length", length) }
            }
            Takes::Depth => Self::is("depth"),
            Takes::Point(reach) => Self { max: Some(written(reach)), ..Self::is("point") },
            Takes::Time(limits) => Self::within("time", limits),
            Takes::Prism(limits) => Self::within("prism demand", limits),
            Takes::Share(limits) => Self::within("share", limits),
            Takes::List { of, min, max } => {
                Self { of: Some(Box::new(Self::new(of))), ..Self::between("list", min, max) }
            }
            Takes::OneOrMore(of) => Self::bare(of),
            Takes::Ramp(of) => Self { ramp: true, ..Self::bare(of) },
            Takes::Table(table) => Self { table: Some(TablePart::new(table)), ..Self::is("table") },
        }
    }

    fn is(is: &'static str) -> Self {
        Self { is, ..Self::default() }
    }

    fn between(is: &'static str, min: &u32, max: &u32) -> Self {
        Self { min: Some(min.to_string()), max: Some(max.to_string()), ..Self::is(is) }
    }

    fn within(is: &'static str, limits: &Limits) -> Self {
        Self { words: limits.words(), min: Some(written(&limits.min)), max: Some(written(&limits.max)), ..Self::is(is) }
    }
}

/// A quantity as an author would write it.
fn written(quantity: &Quantity) -> String {
    quantity.to_string()
}
