//! Random cases for a second computation: `tests/outside/colour_check.py` works them out with colour-science.

use std::fmt::Write as _;
use std::path::Path;

use depthpress::colour::judge::judge;
use depthpress::colour::spectrum::Between;
use depthpress::colour::{
    Filter, FilterModel, Glasses, Inks, Lamp, Medium, NamedScreen, Print, Screen, Solids, Spectrum, Srgb8, Views,
};

use super::{gelatin, measured};

/// Where the cases are written: a folder.
const FOLDER: &str = "DEPTHPRESS_COLOUR_CASES";
const CASES: usize = 240;

/// A fixed sequence of even numbers from 0 to 1.
/// Source: xorshift64*, Vigna 2016, "An experimental exploration of Marsaglia's xorshift generators, scrambled".
struct Draw(u64);

impl Draw {
    fn next(&mut self) -> f64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        (self.0.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn below(&mut self, n: usize) -> usize {
        (self.next() * n as f64) as usize
    }

    fn colour(&mut self) -> Srgb8 {
        Srgb8([0; 3].map(|_: u8| self.below(256) as u8))
    }
}

/// A filter with the words that tell the other program what it is.
fn filter(draw: &mut Draw) -> (FilterModel, String) {
    match draw.below(8) {
        n @ 0..6 => (Filter::ALL[n].into(), format!(r#"{{"ideal": "{}"}}"#, Filter::ALL[n].name())),
        6 => {
            let column = 1 + draw.below(2);
            (measured(Filter::Red, gelatin(column)), format!(r#"{{"gelatin": {column}}}"#))
        }
        _ => {
            let rows: Vec<(f64, f64)> = (0..=16).map(|i| (390.0 + 20.0 * f64::from(i), draw.next())).collect();
            let model = measured(Filter::Red, Spectrum::from_table(&rows, Between::Straight).unwrap());
            (model, format!(r#"{{"rows": {}}}"#, list(&rows)))
        }
    }
}

/// A screen: one of the bundled sets, or three bumps of random place and width.
fn screen(draw: &mut Draw) -> (Screen, String) {
    match draw.below(4) {
        0 => (Screen::named(NamedScreen::Crt), r#"{"named": "Typical CRT Brainard 1997"}"#.to_owned()),
        1 => (Screen::named(NamedScreen::Lcd), r#"{"named": "Apple Studio Display"}"#.to_owned()),
        _ => {
            let tables = [610.0, 540.0, 460.0].map(|middle| {
                let (middle, width) = (middle + 30.0 * (draw.next() - 0.5), 8.0 + 30.0 * draw.next());
                let power = |nm: f64| (-0.5 * ((nm - middle) / width).powi(2)).exp();
                (0..=80).map(|i| 380.0 + 5.0 * f64::from(i)).map(|nm| (nm, power(nm))).collect::<Vec<_>>()
            });
            let spectra = tables.each_ref().map(|rows| Spectrum::from_table(rows, Between::Smooth).unwrap());
            let words = tables.each_ref().map(|rows| list(rows)).join(", ");
            (Screen::new(spectra).unwrap(), format!(r#"{{"primaries": [{words}]}}"#))
        }
    }
}

fn list(rows: &[(f64, f64)]) -> String {
    let cells: Vec<_> = rows.iter().map(|(nm, value)| format!("[{nm}, {value}]")).collect();
    format!("[{}]", cells.join(", "))
}

fn screen_case(draw: &mut Draw) -> String {
    let ((left, left_words), (right, right_words)) = (filter(draw), filter(draw));
    let (screen, screen_words) = screen(draw);
    let glasses = Glasses { left, right };
    let views = Views::new(&glasses, &Medium::Screen(screen));
    let [left, right, both, ground] = [(); 4].map(|()| draw.colour());
    let eyes = judge(&views, &Inks { left, right, both, ground, text: both });
    let eyes = eyes.map(|e| format!("[{}, {}, {}, {}, {}]", e.own, e.other, e.ground, e.contrast, e.ghost.min(1e9)));
    format!(
        r#"{{"left": {left_words}, "right": {right_words}, "screen": {screen_words}, "inks": ["{}", "{}", "{}"], "eyes": [{}]}}"#,
        left.hex(),
        right.hex(),
        ground.hex(),
        eyes.join(", ")
    )
}

/// Full inks of the bundled print behind every ideal filter and every lamp.
fn print_cases() -> Vec<String> {
    let inks = [("c", "00ffff"), ("m", "ff00ff"), ("y", "ffff00"), ("my", "ff0000"), ("cy", "00ff00"), ("k", "000000")];
    let mut cases = Vec::new();
    for lamp in Lamp::ALL {
        let medium = Medium::Print(Print::new(&Solids::fogra39l(), &lamp.spectrum()).unwrap());
        for filter in Filter::ALL {
            let view = super::view(filter, &medium);
            for (ink, colour) in inks {
                let seen = view.luminance(super::hex(colour)) / view.white();
                let (filter, lamp) = (filter.name(), lamp.name());
                cases.push(format!(r#"{{"lamp": "{lamp}", "filter": "{filter}", "ink": "{ink}", "seen": {seen}}}"#));
            }
        }
    }
    cases
}

/// Writes the cases into the folder that `DEPTHPRESS_COLOUR_CASES` names.
#[test]
#[ignore = "writes cases for tests/outside/colour_check.py"]
fn write_colour_cases() {
    let folder = std::env::var(FOLDER).unwrap_or_else(|_| panic!("{FOLDER} names no folder"));
    let mut draw = Draw(0x9E37_79B9_7F4A_7C15);
    let screens: Vec<_> = (0..CASES).map(|_| screen_case(&mut draw)).collect();
    let mut json = String::new();
    write!(json, "{{\"screens\": [\n{}\n], \"prints\": [\n{}\n]}}\n", screens.join(",\n"), print_cases().join(",\n"))
        .unwrap();
    std::fs::write(Path::new(&folder).join("colour-cases.json"), json).unwrap();
}
