//! The colours of an edition as written: glasses, medium, inks.
//!
//! Files of numbers are named here and read later: see [`data`](super::data). No ink is chosen here.

use std::collections::BTreeMap;

use crate::colour::{
    Filter, FilterModel, Glasses, Lamp, Medium, NamedScreen, Pins, Print, Screen, Solids, Srgb8, Wishes,
};
use crate::diagnostics::{Diagnostic, codes};

use super::data::{DataKind, DataRef, FilterWords};
use super::field::{Field, TableForm, TableSpec, Takes, percent};
use super::quantity::Share;
use super::read::{Named, Placed};
use super::reader::Reader;
use super::table::Table;

/// The colour side of an edition, but for its glasses.
#[derive(Debug, Clone, PartialEq)]
pub struct Colours {
    /// What the pages are shown on.
    pub medium: Medium,
    /// What was written of it.
    pub source: MediumSource,
    /// What is asked of the inks.
    pub wishes: Wishes,
    /// A ghost above the limit that the author accepts.
    pub accepted: Option<Accepted>,
    /// Whether the PDF is drawn in process inks; only for a print.
    pub cmyk: bool,
}

/// A ghost that the author accepts, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Accepted {
    /// Up to which ghost, a share of the eye's own contrast.
    pub limit: f64,
    /// Why, in the author's words.
    pub reason: String,
}

/// What the spec says of a medium, in words for pages and reports.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum MediumSource {
    /// Nothing: taken as an ideal screen.
    Unsaid,
    /// A screen: its name, or the path of its spectra.
    Screen(String),
    /// A print.
    Print {
        /// The name of the inks, or the path of the measured solids.
        solids: String,
        /// The lamp.
        lamp: Lamp,
    },
}

impl Default for Colours {
    fn default() -> Self {
        Self {
            medium: Medium::Screen(Screen::named(NamedScreen::Ideal)),
            source: MediumSource::Unsaid,
            wishes: Wishes::default(),
            accepted: None,
            cmyk: false,
        }
    }
}

impl MediumSource {
    /// Whether the pages are printed.
    pub const fn is_print(&self) -> bool {
        matches!(self, MediumSource::Print { .. })
    }

    /// In plain words: "screen `crt`", "print `fogra39l` under lamp `d50`".
    pub fn words(&self) -> String {
        match self {
            MediumSource::Unsaid => "an ideal screen, as nothing is said".to_owned(),
            MediumSource::Screen(name) => format!("screen `{name}`"),
            MediumSource::Print { solids, lamp } => format!("print `{solids}` under lamp `{}`", lamp.name()),
        }
    }
}

const FILTERS: &[&str] = &["red", "cyan", "green", "blue", "magenta", "amber"];

const LEAK: TableSpec = TableSpec {
    name: "leak",
    form: TableForm::Inline,
    groups: &[&[
        Field::required(
            "left",
            Takes::Share(percent(0.0, 100.0)),
            "How strong the right eye's mark shows to the left eye, against the left eye's own mark.",
        ),
        Field::required("right", Takes::Share(percent(0.0, 100.0)), "The same for the right eye."),
    ]],
    doc: "What the ghost page gave for each eye.",
};

const GLASSES_KEYS: &[Field] = &[
    Field::required("left", Takes::Choice(FILTERS), "Filter before the left eye."),
    Field::required("right", Takes::Choice(FILTERS), "Filter before the right eye; not the same as `left`."),
    Field::optional(
        "transmittance",
        Takes::Data(&[]),
        "Measured filters: a line for each wavelength in nm with the per cent that pass before the left and the right \
         eye, from 400 nm or below to 700 nm or above. Left out: ideal filters.",
    ),
    Field::optional(
        "leak",
        Takes::Table(&LEAK),
        "What the ghost page gave for each eye, as `{ left = \"4 %\", right = \"12 %\" }`. Not together with \
         `transmittance`.",
    ),
];

/// `[glasses]`.
pub const GLASSES: TableSpec = TableSpec {
    name: "glasses",
    form: TableForm::Single,
    groups: &[GLASSES_KEYS],
    doc: "The two-colour glasses as worn. Inks follow from them and from the ground of each edition.",
};

/// Glasses of an edition.
pub const EDITION_GLASSES: TableSpec =
    TableSpec { name: "glasses", form: TableForm::Inline, groups: &[GLASSES_KEYS], doc: "Glasses of one edition." };

const ACCEPT_GHOST: TableSpec = TableSpec {
    name: "accept_ghost",
    form: TableForm::Inline,
    groups: &[&[
        Field::required("limit", Takes::Share(percent(15.0, 100.0)), "Up to which ghost."),
        Field::required("reason", Takes::Text(200), "Why; the report keeps it."),
    ]],
    doc: "A ghost above 15 % that is accepted.",
};

const INKS_KEYS: &[Field] = &[
    Field::optional("left", Takes::Colour, "Ink of marks for the left eye. Left out: solved."),
    Field::optional("right", Takes::Colour, "Ink of marks for the right eye. Left out: solved."),
    Field::optional("both", Takes::Colour, "Where marks for both eyes overlap. Left out: solved."),
    Field::optional("ground", Takes::Colour, "Colour of the empty page. Left out: that of `ground`, or solved."),
    Field::default(
        "tinted_ground",
        Takes::Flag,
        "false",
        "Whether the empty page may be tinted, at the cost of contrast, to hide ghosts.",
    ),
    Field::default(
        "ghost",
        Takes::Share(percent(0.0, 15.0)),
        r#""2 %""#,
        "The ghost to stay below: how strong the other eye's mark shows, against the eye's own.",
    ),
    Field::optional(
        "accept_ghost",
        Takes::Table(&ACCEPT_GHOST),
        "Accepts a ghost above 15 %, as `{ limit = \"20 %\", reason = \"…\" }`. Left out: it is an error.",
    ),
];

/// `[inks]`.
pub const INKS: TableSpec = TableSpec {
    name: "inks",
    form: TableForm::Single,
    groups: &[INKS_KEYS],
    doc: "What is asked of the inks. May be left out: they are solved from glasses, medium and ground.",
};

/// What an edition asks of its inks.
pub const EDITION_INKS: TableSpec =
    TableSpec { name: "inks", form: TableForm::Inline, groups: &[INKS_KEYS], doc: "Inks of one edition." };

/// Keys of `[[edition]]` that say what its pages are shown on.
pub const MEDIUM_KEYS: &[Field] = &[
    Field::optional(
        "medium",
        Takes::Choice(&["screen", "print"]),
        "What the pages are shown on. Left out: inks are those for an ideal screen, and the report says so.",
    ),
    Field::optional(
        "screen",
        Takes::Data(&["ideal", "crt", "lcd"]),
        "For `medium = \"screen\"`: the kind of screen, or the spectra of its primaries: a line for each wavelength in \
         nm with the light of red, green and blue. Left out: `ideal`.",
    ),
    Field::optional(
        "solids",
        Takes::Data(&["fogra39l"]),
        "For `medium = \"print\"`: the printing inks, or measured solids: lines `paper`, `C`, `M`, `Y`, `M+Y`, `C+Y`, \
         `C+M` and `K` with X, Y, Z under D50, 100 for white; `C+Y` may be missing, and tints grow as with `fogra39l`. Left out: `fogra39l`, offset on coated paper.",
    ),
    Field::optional(
        "lamp",
        Takes::Choice(&["A", "C", "D50", "D65", "LED"]),
        "For `medium = \"print\"`: the light to read by. Left out: `D50`.",
    ),
    Field::default(
        "cmyk",
        Takes::Flag,
        "false",
        "For `medium = \"print\"`: whether the PDF has process inks for a print shop in place of sRGB: pure \
         cyan has no magenta and no black. No profile of the press comes with it, so that PDF is PDF/UA-1 alone, not PDF/A-2a. \
         SVG and PNG stay sRGB.",
    ),
];

/// Glasses as read, with what still has to come from a file.
#[derive(Debug, Clone)]
pub(super) struct GlassesRead {
    pub(super) glasses: Glasses,
    /// The path of the transmittances, with the two colour words and their places.
    pub(super) table: Option<(Placed<String>, FilterWords)>,
}

/// Reads glasses.
pub(super) fn read_glasses(reader: &mut Reader<'_>, mut table: Table<'_>) -> Option<GlassesRead> {
    table.check_keys(reader);
    let left = table.one_of(reader, "left", &Filter::ALL);
    let right = table.one_of(reader, "right", &Filter::ALL);
    let transmittance: Option<Option<Placed<Named>>> = table.maybe(reader, "transmittance");
    let leak = read_leak(reader, &table);
    if left.is_some() && left == right {
        let message = "`left` and `right` are the same filter: both eyes would see both pictures";
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "right"), message)
            .with_label("the same as `left`")
            .with_help("write the two colours of the glasses, for example `red` and `cyan`");
        reader.push(problem);
        return None;
    }
    if table.has("transmittance") && table.has("leak") {
        let message = "`transmittance` and `leak` both say what the filters pass";
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "leak"), message)
            .with_label("one too many")
            .with_help("keep `leak` if the ghost page gave it for these glasses on this medium, else `transmittance`");
        reader.push(problem);
        return None;
    }
    let (left, right, leak) = (left?, right?, leak?);
    let model = |colour, leak: Option<f64>| match leak {
        Some(leak) => FilterModel::Leak { colour, leak },
        None => FilterModel::Ideal(colour),
    };
    let glasses = Glasses { left: model(left, leak.map(|l| l[0])), right: model(right, leak.map(|l| l[1])) };
    let words = [(left, table.place_of(reader, "left")), (right, table.place_of(reader, "right"))];
    let file = |named: Placed<Named>| match named.value {
        Named::File(path) => Some((Placed { value: path, place: named.place }, words)),
        Named::Word(_) => None,
    };
    Some(GlassesRead { glasses, table: transmittance?.and_then(file) })
}

fn read_leak(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Option<[f64; 2]>> {
    let Some(mut leak) = table.inline_table(reader, "leak")? else { return Some(None) };
    leak.check_keys(reader);
    let (left, right) = (leak.get(reader, "left"), leak.get(reader, "right"));
    let (Share(left), Share(right)) = (left?, right?);
    Some(Some([left, right]))
}

/// What an inks table asks for.
#[derive(Debug, Clone, Default)]
pub(super) struct InksRead {
    wishes: Wishes,
    accepted: Option<Accepted>,
}

/// Reads what is asked of inks.
pub(super) fn read_inks(reader: &mut Reader<'_>, mut table: Table<'_>) -> Option<InksRead> {
    table.check_keys(reader);
    let mut pin = |key| table.maybe::<Srgb8>(reader, key);
    let (left, right, both, ground) = (pin("left"), pin("right"), pin("both"), pin("ground"));
    let tinted_ground = table.get(reader, "tinted_ground");
    let ghost = table.get(reader, "ghost").map(|Share(ghost)| ghost);
    let accepted = read_accepted(reader, &table);
    let pins = Pins { left: left?, right: right?, both: both?, ground: ground? };
    if tinted_ground == Some(true) && pins.ground.is_some() {
        let message = "`ground` is pinned, so `tinted_ground` has nothing to tint";
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "tinted_ground"), message)
            .with_label("no use beside `ground`")
            .with_help("leave out one of the two");
        reader.push(problem);
        return None;
    }
    let wishes = Wishes { ghost: ghost?, tinted_ground: tinted_ground?, pins };
    Some(InksRead { wishes, accepted: accepted? })
}

fn read_accepted(reader: &mut Reader<'_>, table: &Table<'_>) -> Option<Option<Accepted>> {
    let Some(mut accept) = table.inline_table(reader, "accept_ghost")? else { return Some(None) };
    accept.check_keys(reader);
    let (limit, reason) = (accept.get(reader, "limit"), accept.get(reader, "reason"));
    let Share(limit) = limit?;
    Some(Some(Accepted { limit, reason: reason? }))
}

/// Reads the medium of an edition; files of numbers that it names go to `data`.
pub(super) fn read_colours(
    reader: &mut Reader<'_>,
    table: &Table<'_>,
    inks: InksRead,
    edition: usize,
    data: &mut Vec<DataRef>,
) -> Option<Colours> {
    let medium = match table.has("medium") {
        true => Some(table.one_of(reader, "medium", &[Kind::Screen, Kind::Print])?),
        false => None,
    };
    let fits = check_medium(reader, table, medium);
    let InksRead { wishes, accepted } = inks;
    let screen: Option<Option<Placed<Named>>> = table.maybe(reader, "screen");
    let solids: Option<Option<Placed<Named>>> = table.maybe(reader, "solids");
    let lamp = if table.has("lamp") { table.one_of(reader, "lamp", &Lamp::ALL) } else { Some(Lamp::D50) };
    let (screen, solids, lamp) = (screen?, solids?, lamp?);
    let cmyk = read_cmyk(reader, table, medium)?;
    let rest = Colours { wishes, accepted, cmyk, ..Colours::default() };
    let colours = match medium.filter(|_| fits) {
        None => rest,
        Some(Kind::Screen) => Colours { source: MediumSource::Screen(name_of(&screen, SCREENS[0].name())), ..rest }
            .with_screen(screen, edition, data),
        Some(Kind::Print) => {
            let source = MediumSource::Print { solids: name_of(&solids, "fogra39l"), lamp };
            Colours { source, ..rest }.with_solids(solids, lamp, edition, data)?
        }
    };
    fits.then_some(colours)
}

/// Whether the PDF has process inks; `None`, with its problem, where there is no print to have them.
fn read_cmyk(reader: &mut Reader<'_>, table: &Table<'_>, medium: Option<Kind>) -> Option<bool> {
    let cmyk: bool = table.get(reader, "cmyk")?;
    if cmyk && medium != Some(Kind::Print) {
        let message = "`cmyk = true` is for `medium = \"print\"`: no screen has process inks";
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "cmyk"), message)
            .with_label("only for a print")
            .with_help("write `medium = \"print\"` in this edition, or leave `cmyk` out");
        reader.push(problem);
        return None;
    }
    Some(cmyk)
}

const SCREENS: [NamedScreen; 3] = NamedScreen::ALL;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Screen,
    Print,
}

fn name_of(named: &Option<Placed<Named>>, default: &str) -> String {
    match named.as_ref().map(|named| &named.value) {
        Some(Named::File(path)) => path.clone(),
        Some(Named::Word(word)) => (*word).to_owned(),
        None => default.to_owned(),
    }
}

impl Colours {
    fn with_screen(mut self, screen: Option<Placed<Named>>, edition: usize, data: &mut Vec<DataRef>) -> Self {
        match screen {
            Some(Placed { value: Named::File(path), place }) => {
                data.push(DataRef::new(Placed { value: path, place }, DataKind::Primaries, vec![edition]));
            }
            Some(Placed { value: Named::Word(word), .. }) => {
                let named = SCREENS.into_iter().find(|screen| screen.name() == word);
                self.medium = Medium::Screen(Screen::named(named.unwrap_or(NamedScreen::Ideal)));
            }
            None => {}
        }
        self
    }

    /// `None` where the built-in solids make no print, which a test rules out.
    fn with_solids(
        mut self,
        solids: Option<Placed<Named>>,
        lamp: Lamp,
        edition: usize,
        data: &mut Vec<DataRef>,
    ) -> Option<Self> {
        self.medium = Medium::Print(Print::new(&Solids::fogra39l(), &lamp.spectrum()).ok()?);
        if let Some(Placed { value: Named::File(path), place }) = solids {
            data.push(DataRef::new(Placed { value: path, place }, DataKind::Solids(lamp), vec![edition]));
        }
        Some(self)
    }
}

/// Whether the keys of the edition fit its medium; pushes each that belongs to the other one, or to none.
fn check_medium(reader: &mut Reader<'_>, table: &Table<'_>, medium: Option<Kind>) -> bool {
    let owners: BTreeMap<&'static str, (Kind, &str)> = BTreeMap::from([
        ("screen", (Kind::Screen, "screen")),
        ("solids", (Kind::Print, "print")),
        ("lamp", (Kind::Print, "print")),
    ]);
    let mut fits = true;
    for (key, (owner, word)) in owners {
        if !table.has(key) || medium == Some(owner) {
            continue;
        }
        fits = false;
        let (message, help) = match medium {
            Some(_) => (
                format!("`{key}` belongs to `medium = \"{word}\"`, this edition has the other medium"),
                format!("leave it out, or write `medium = \"{word}\"`"),
            ),
            None => (
                format!("`{key}` belongs to `medium = \"{word}\"`, this edition has no `medium`"),
                format!("add `medium = \"{word}\"`, or leave `{key}` out"),
            ),
        };
        let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, key), message)
            .with_label(format!("only for a {word}"))
            .with_help(help);
        reader.push(problem);
    }
    fits
}
