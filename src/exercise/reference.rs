//! The spec reference as Markdown, written from the same tables that the reader works from.

use std::fmt::Write as _;

use crate::spec::field::{Field, TableSpec, Takes};
use crate::spec::reference::{KEYS_HEAD, row, table, units};
use crate::spec::set;
use crate::spec::translation::FILES;

use super::balance::BALANCE;
use super::{COMMON, KINDS, Kind, ramp};

const INTRO: &str = "\
# The spec language

A set is a folder: `set.toml`, and one TOML file for each exercise that it lists. Every problem of every file is
reported in one run, at its line. Nothing is guessed, and no value is bent to fit: a value outside its limits is an
error. Keys that a table does not have are errors too.

This page is written from the tables that the reader works from. `harbour-lights` is a set to start from.

What is written here makes practice pages. They are not a test and not a treatment.

## Quantities

A quantity is a text with its unit: `\"40 cm\"`, `\"12.5 mm\"`, `\"30 arcmin\"`. Decimals have a point. A number without
a unit is an error, and so is a unit of another kind.

";

const DEPTHS: &str = "
## Depths

A depth is an amount and a side: `toward` (before the page, toward the reader) or `away` (behind the page). Amounts are
never negative.

| written | means |
|---|---|
| `\"page\"` | on the page |
| `\"6 cm toward\"` | 6 cm before the page, along the line of sight |
| `\"2 pd away\"` | 2 prism dioptres of demand against the page (1 pd is 4 mm of offset at 40 cm) |
| `\"400 arcsec toward\"` | a vergence difference of 400 arcsec against the page |
| `\"4 mm parallax away\"` | an offset of 4 mm between the two half-images on the page |

";

const PUBLISHING: &str = "
## Publishing

`depthpress bundle` makes a set ready to publish, as [README.md](../README.md) tells. The same set and the same version of the
program give the same bytes on every machine, so a check sum is enough to see that nothing has changed by chance:
`--freeze` writes `MANIFEST.sha256` beside `set.toml`, to be kept with the set, and `--frozen` makes the bundle again and fails
where a file differs. As steps of a continuous integration, in plain shell, with the sets in `sets/`:

```sh
set -eu
cargo install --locked --path depthpress     # the version that the sets are kept with
depthpress check sets/*/                     # every problem of every file
depthpress bundle --frozen sets/*/           # exit code 1: a file is not as in the kept manifest
```

A change that is meant takes three steps: raise `version` in `[set]`, run `depthpress bundle --freeze`, and keep the new
manifest together with the change. The last two for one set:

```sh
depthpress bundle sets/quay --freeze --out publish
(cd publish/quay-1.3.0 && sha256sum -c MANIFEST.sha256)
git add sets/quay && git commit -m \"Publish quay 1.3.0\"
```

";

/// The whole reference.
pub fn markdown() -> String {
    let mut out = String::from(INTRO);
    out.push_str(&units());
    out.push_str(DEPTHS);
    push_ramps(&mut out);
    out.push_str("\n## `set.toml`\n");
    for spec in set::TABLES {
        push_table(&mut out, 3, spec);
    }
    push_common(&mut out);
    let _ = write!(out, "\n## Translation files\n\n{FILES}");
    out.push_str(PUBLISHING.trim_end());
    out.push('\n');
    for kind in KINDS {
        push_kind(&mut out, kind);
    }
    out
}

fn push_table(out: &mut String, level: usize, spec: &TableSpec) {
    let _ = write!(out, "\n{} {}\n\n{}", "#".repeat(level), spec.title(), table(spec));
}

fn push_ramps(out: &mut String) {
    out.push_str(
        "## Ramps\n\nWhere a key takes a ramp, its value may change from level to level; each level is a page of its \
         own. All ramps of an\nexercise have the same number of levels. A size does not ramp from a length to an \
         angle.\n\n```toml\ndepth = { from = \"1 pd toward\", to = \"4 pd toward\", levels = 4 }\nsize = { values = \
         [\"40 mm\", \"34 mm\", \"30 mm\", \"28 mm\"] }\n```\n\n| key | takes | meaning |\n|---|---|---|\n",
    );
    for field in ramp::RAMP.fields() {
        let _ = writeln!(out, "| `{}` | {} | {} |", field.key, ramp_takes(field), field.doc);
    }
}

/// What a key of a ramp takes, in words: what a ramp holds is what the ramped key takes.
pub fn ramp_takes(field: &Field) -> String {
    match field.takes {
        Takes::Depth => "one value".to_owned(),
        Takes::List { min, max, .. } => format!("a list of {min} to {max} values"),
        takes => takes.words(),
    }
}

fn push_common(out: &mut String) {
    let _ = write!(
        out,
        "\n## Exercise files\n\nA file holds one `[exercise]` and the tables of its kind. The stem of its name is the \
         id of the exercise. These keys of\n`[exercise]` are the same for every kind:\n\n{KEYS_HEAD}"
    );
    for field in COMMON {
        let _ = writeln!(out, "{}", row(field));
    }
    let _ = write!(out, "\n### `balance`\n\n{}", table(&BALANCE));
}

fn push_kind(out: &mut String, kind: &Kind) {
    let _ = write!(out, "\n## Kind `{}`\n\n{}\n\n```toml\n{}```\n", kind.id, kind.doc, kind.example);
    let Some((_, tables)) = kind.tables.split_first() else { return };
    let own: Vec<_> = kind.own_keys().collect();
    if !own.is_empty() {
        let _ = write!(out, "\n### `[exercise]` of kind `{}`\n\n{KEYS_HEAD}", kind.id);
    }
    for field in own {
        let _ = writeln!(out, "{}", row(field));
    }
    for spec in tables {
        push_table(out, 3, spec);
    }
}
