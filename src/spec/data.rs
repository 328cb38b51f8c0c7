//! Files of numbers that a set names: filters, the primaries of a screen, the solids of a print.
//!
//! A file has one row a line with commas between its values. Blank lines and lines that begin with `#` are skipped, and
//! the first row may name the columns. Every bad row is a problem at its line.

use std::ops::Range;

use crate::colour::spectrum::{Between, NEEDED_NM, TableError};
use crate::colour::{Filter, FilterModel, Glasses, Lamp, Medium, Print, Screen, Solids, Spectrum, Xyz};
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::units::plain;

use super::SetSpec;
use super::read::Placed;
use super::reader::Reader;
use super::text::shown;

/// Bad rows of one file that are quoted. Design choice.
const MOST_ROWS: usize = 20;

/// The most that a filter passes, per cent.
const ALL_LIGHT: f64 = 100.0;

/// What a file holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DataKind {
    /// Transmittances of the left and the right filter, with their colour words and where those stand.
    Filters(FilterWords),
    /// The light of red, green and blue.
    Primaries,
    /// Measured solids, to be read by a lamp.
    Solids(Lamp),
}

/// The colour words of the left and the right filter, and where they stand.
pub type FilterWords = [(Filter, Place); 2];

/// A file that a set names, and what for.
#[derive(Debug, Clone)]
pub struct DataRef {
    /// Its path from the folder of the set, and where it is named.
    pub path: Placed<String>,
    /// What it holds.
    pub kind: DataKind,
    /// The editions that use it, by their place in the set.
    pub editions: Vec<usize>,
    /// The reader that uses it, by their place in the list.
    pub reader: Option<usize>,
}

impl DataRef {
    /// A file for some editions.
    pub const fn new(path: Placed<String>, kind: DataKind, editions: Vec<usize>) -> Self {
        Self { path, kind, editions, reader: None }
    }

    /// A file for the glasses of a reader.
    pub const fn of_reader(path: Placed<String>, kind: DataKind, reader: usize) -> Self {
        Self { path, kind, editions: Vec::new(), reader: Some(reader) }
    }

    /// What it holds, as a word: files of one path and word are the same.
    pub const fn word(&self) -> &'static str {
        match self.kind {
            DataKind::Filters(_) => "filters",
            DataKind::Primaries => "primaries",
            DataKind::Solids(_) => "solids",
        }
    }
}

/// What was read from a file.
#[derive(Debug, Clone)]
pub enum Data {
    /// Transmittances of the left and the right filter, 0 to 1.
    Filters([Spectrum; 2]),
    /// A screen.
    Primaries(Screen),
    /// Measured solids, and where each stands in the file.
    Solids(Box<Solids>, Vec<(&'static str, Place)>),
}

/// Reads a file of numbers. `None`: the problems have been pushed.
pub fn read_data(reader: &mut Reader<'_>, kind: DataKind) -> Option<Data> {
    let mut rows = Rows::new(reader, kind);
    match kind {
        DataKind::Filters(_) => {
            let [left, right] = rows.spectra(Between::Straight, 0.01)?;
            Some(Data::Filters([left, right]))
        }
        DataKind::Primaries => {
            let primaries = rows.spectra(Between::Smooth, 1.0)?;
            let dark = primaries.iter().position(|p| p.luminance() <= 0.0);
            let screen = Screen::new(primaries).map(Data::Primaries);
            if let Some(dark) = dark {
                let name = ["red", "green", "blue"][dark];
                let message = format!("the column of {name} has no light that an eye can see");
                rows.whole(message, "write the spectrum of each primary at full drive");
            }
            screen
        }
        DataKind::Solids(_) => rows.solids(),
    }
}

/// Puts what was read into the editions that use it, or says what does not fit.
pub fn apply(set: &mut SetSpec, wanted: &DataRef, data: &Data) -> Result<(), Vec<Diagnostic>> {
    let mut problems = Vec::new();
    for index in &wanted.editions {
        let Some(edition) = set.editions.get_mut(*index) else { continue };
        match (data, wanted.kind) {
            (Data::Filters(spectra), _) => edition.glasses = measured(&edition.glasses, spectra),
            (Data::Primaries(screen), _) => edition.colour.medium = Medium::Screen(screen.clone()),
            (Data::Solids(solids, places), DataKind::Solids(lamp)) => match Print::new(solids, &lamp.spectrum()) {
                Ok(print) => edition.colour.medium = Medium::Print(print),
                Err(error) => problems.push(no_reflectance(error.solid, places)),
            },
            (Data::Solids(..), _) => {}
        }
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

/// Glasses with measured filters.
pub fn measured(glasses: &Glasses, [left, right]: &[Spectrum; 2]) -> Glasses {
    let filter = |model: &FilterModel, transmittance: &Spectrum| FilterModel::Measured {
        colour: model.colour(),
        transmittance: transmittance.clone(),
    };
    Glasses { left: filter(&glasses.left, left), right: filter(&glasses.right, right) }
}

/// What two measured filters say against the colour words of the glasses.
pub fn contradictions(wanted: &DataRef, data: &Data) -> Vec<Diagnostic> {
    let (Data::Filters(spectra), DataKind::Filters(words)) = (data, wanted.kind) else { return Vec::new() };
    let (colours, places) = (words.map(|(colour, _)| colour), words.map(|(_, place)| place));
    let looks = [0, 1].map(|eye| Filter::of(&spectra[eye]));
    let turned = looks == [Some(colours[1]), Some(colours[0])];
    let eyes = [0, 1].into_iter().filter(|eye| looks[*eye] != Some(colours[*eye]));
    eyes.map(|eye| {
        let side = ["left", "right"][eye];
        let (path, word) = (shown(&wanted.path.value), colours[eye].name());
        let seen = match looks[eye] {
            Some(filter) => format!("looks {}", filter.name()),
            None => "has no colour: it passes all light alike, or none".to_owned(),
        };
        let message = format!("`{side}` is `{word}`, but the {side} filter in `{path}` {seen}");
        let help = match looks[eye] {
            _ if turned => "swap the two words, or swap the two columns of the file".to_owned(),
            Some(filter) => format!("write `{side} = \"{}\"`, or mend the file", filter.name()),
            None => "mend the file, or leave `transmittance` out".to_owned(),
        };
        Diagnostic::error(codes::CONFLICT, places[eye], message).with_label("not what was measured").with_help(help)
    })
    .collect()
}

fn no_reflectance(solid: &'static str, places: &[(&'static str, Place)]) -> Diagnostic {
    let place = places.iter().find(|(name, _)| *name == solid).map(|(_, place)| *place);
    let message = format!("no surface can have the X, Y, Z of `{solid}` under D50");
    Diagnostic::error(codes::DATA, place, message)
        .with_label("not a colour of a surface")
        .with_help("write X, Y, Z under D50 with 100 for the perfect white, as instruments give them")
}

/// The names of measured solids; the one that may be left out is last.
const SOLIDS: [&str; 8] = ["paper", "C", "M", "Y", "M+Y", "C+M", "K", "C+Y"];

/// The rows of a file while they are read.
struct Rows<'r, 'd> {
    reader: &'r mut Reader<'d>,
    /// The range of each row in the text, but for blank lines, comments and the head.
    rows: Vec<Range<usize>>,
    kind: DataKind,
    bad: usize,
}

impl<'r, 'd> Rows<'r, 'd> {
    fn new(reader: &'r mut Reader<'d>, kind: DataKind) -> Self {
        let text = reader.text();
        let mut rows = Vec::new();
        let mut start = 0;
        for line in text.split_inclusive('\n') {
            let inner = line.trim_start_matches('\u{feff}').trim();
            let skip = inner.is_empty() || inner.starts_with('#');
            if !skip {
                let from = start + line.find(inner).unwrap_or(0);
                rows.push(from..from + inner.len());
            }
            start += line.len();
        }
        let is_head = |row: &Range<usize>| {
            let row = &text[row.clone()];
            let values = row.split(',').skip(usize::from(matches!(kind, DataKind::Solids(_))));
            values.clone().count() > 0 && values.into_iter().all(|v| v.trim().starts_with(|c: char| c.is_alphabetic()))
        };
        if rows.first().is_some_and(is_head) {
            rows.remove(0);
        }
        Self { reader, rows, kind, bad: 0 }
    }

    /// A problem of the file as a whole.
    fn whole(&mut self, message: String, help: &str) {
        let place = self.rows.last().map_or(0..0, Clone::clone);
        let place = self.reader.place(place);
        self.reader.push(Diagnostic::error(codes::DATA, place, message).with_label("up to here").with_help(help));
    }

    /// A problem of some bytes of a row.
    fn bad(&mut self, at: Range<usize>, message: String, label: &str, help: &str) {
        self.bad += 1;
        if self.bad <= MOST_ROWS {
            let place = self.reader.place(at);
            self.reader.push(Diagnostic::error(codes::DATA, place, message).with_label(label).with_help(help));
        }
    }

    /// Whether no row was bad; says how many bad ones were not quoted.
    fn close(&mut self) -> bool {
        let more = self.bad.saturating_sub(MOST_ROWS);
        if 0 < more {
            let rows = if more == 1 { "1 more row is bad".to_owned() } else { format!("{more} more rows are bad") };
            self.whole(rows, "mend the first ones and run again");
        }
        self.bad == 0
    }

    /// The values of a row with their ranges; pushes a wrong number of them.
    fn values(&mut self, row: &Range<usize>, names: &str, count: usize) -> Option<Vec<(Range<usize>, &'d str)>> {
        let text = &self.reader.text()[row.clone()];
        let mut start = row.start;
        let mut values = Vec::new();
        for part in text.split(',') {
            let value = part.trim();
            let from = start + part.find(value).unwrap_or(0);
            values.push((from..from + value.len(), value));
            start += part.len() + 1;
        }
        if values.len() == count {
            return Some(values);
        }
        let found = if values.len() == 1 { "1 value".to_owned() } else { format!("{} values", values.len()) };
        let message = format!("a row has {names}, found {found}");
        self.bad(row.clone(), message, "not such a row", "put commas between the values; decimals have a point");
        None
    }

    /// A number from zero up; pushes what is none.
    fn number(&mut self, (at, text): &(Range<usize>, &str), most: f64) -> Option<f64> {
        let number = text.parse::<f64>().ok().filter(|n| n.is_finite());
        let Some(number) = number else {
            let message = format!("`{}` is not a number", shown(text));
            self.bad(at.clone(), message, "not a number", "write a number without a unit; decimals have a point");
            return None;
        };
        if number < 0.0 {
            let message = format!("`{}` is below zero", shown(text));
            self.bad(at.clone(), message, "limit 0", "a measured light cannot be negative: write 0 for noise below it");
            None
        } else if most < number {
            let message = format!("`{}` is above the most that a filter passes, {} %", shown(text), plain(most, 0));
            self.bad(at.clone(), message, "limit 100 %", "write per cent of the light, 0 to 100");
            None
        } else {
            Some(number)
        }
    }

    /// One spectrum for each column after the wavelength.
    fn spectra<const N: usize>(&mut self, between: Between, scale: f64) -> Option<[Spectrum; N]> {
        let (names, most) = match self.kind {
            DataKind::Filters(_) => ("3 values: wavelength in nm, per cent left, per cent right", ALL_LIGHT),
            _ => ("4 values: wavelength in nm, red, green, blue", f64::INFINITY),
        };
        let mut columns: [Vec<(f64, f64)>; N] = std::array::from_fn(|_| Vec::new());
        let mut before: Option<f64> = None;
        for row in self.rows.clone() {
            let Some(values) = self.values(&row, names, N + 1) else { continue };
            let nm = self.number(&values[0], f64::INFINITY);
            let rest: Vec<_> = values[1..].iter().map(|value| self.number(value, most)).collect();
            let Some(nm) = nm else { continue };
            if let Some(before) = before.filter(|before| nm <= *before) {
                let message = format!("{} nm comes after {} nm", plain(nm, 3), plain(before, 3));
                self.bad(values[0].0.clone(), message, "does not rise", "sort the rows by wavelength, each once");
                continue;
            }
            before = Some(nm);
            for (column, value) in columns.iter_mut().zip(rest) {
                column.extend(value.map(|value| (nm, value * scale)));
            }
        }
        if !self.close() {
            return None;
        }
        let read: Vec<_> = columns.iter().map(|rows| Spectrum::from_table(rows, between)).collect();
        let mut spectra = Vec::new();
        for spectrum in read {
            match spectrum {
                Ok(spectrum) => spectra.push(spectrum),
                Err(error) => {
                    self.refused(error);
                    return None;
                }
            }
        }
        spectra.try_into().ok()
    }

    /// Says why rows that are fine one by one are no spectrum.
    fn refused(&mut self, error: TableError) {
        let (low, high) = NEEDED_NM;
        let message = match error {
            TableError::Short { first, last } => format!(
                "the rows go from {} to {} nm, they must cover {low} to {high} nm",
                plain(first, 3),
                plain(last, 3)
            ),
            other => other.to_string(),
        };
        self.whole(message, "add the missing wavelengths; at least every 10 nm is good");
    }

    fn solids(&mut self) -> Option<Data> {
        let mut found: Vec<(&'static str, Place, Xyz)> = Vec::new();
        for row in self.rows.clone() {
            let Some(values) = self.values(&row, "4 values: name, X, Y, Z", 4) else { continue };
            let (at, name) = values[0].clone();
            let Some(known) = SOLIDS.into_iter().find(|known| known.eq_ignore_ascii_case(name)) else {
                let message = format!("`{}` is no solid", shown(name));
                self.bad(
                    at,
                    message,
                    "unknown name",
                    "the solids are `paper`, `C`, `M`, `Y`, `M+Y`, `C+Y`, `C+M`, `K`",
                );
                continue;
            };
            if found.iter().any(|(other, ..)| *other == known) {
                self.bad(at, format!("`{known}` is there twice"), "again", "leave one of them out");
                continue;
            }
            let xyz: Vec<_> = values[1..].iter().map(|value| self.number(value, f64::INFINITY)).collect();
            if let [Some(x), Some(y), Some(z)] = xyz[..] {
                let place = self.reader.place(row.clone());
                found.push((known, place, Xyz([x / 100.0, y / 100.0, z / 100.0])));
            }
        }
        if !self.close() {
            return None;
        }
        let get = |name: &str| found.iter().find(|(known, ..)| *known == name).map(|(.., xyz)| *xyz);
        let missing: Vec<_> = SOLIDS[..7].iter().filter(|name| get(name).is_none()).map(|n| format!("`{n}`")).collect();
        if !missing.is_empty() {
            let message = format!("the solids have no {}", missing.join(", "));
            self.whole(message, "measure each of them; only `C+Y` may be left out");
            return None;
        }
        let solids = Solids {
            paper: get("paper")?,
            c: get("C")?,
            m: get("M")?,
            y: get("Y")?,
            my: get("M+Y")?,
            cy: get("C+Y"),
            cm: get("C+M")?,
            k: get("K")?,
            gain: Solids::fogra39l().gain,
        };
        Some(Data::Solids(Box::new(solids), found.into_iter().map(|(name, place, _)| (name, place)).collect()))
    }
}
