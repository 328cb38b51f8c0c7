//! The glasses: the filter before each eye, by name, by measurement or by what leaks through it.
//!
//! A filter knows no ink, no ground and no screen.

use super::spectrum::Spectrum;

/// The colour of a filter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Filter {
    /// Passes red light.
    Red,
    /// Passes green and blue light.
    Cyan,
    /// Passes green light.
    Green,
    /// Passes blue light.
    Blue,
    /// Passes red and blue light.
    Magenta,
    /// Passes red and green light.
    Amber,
}

/// What is known of one filter. Cheap to clone.
#[derive(Debug, Clone, PartialEq)]
pub enum FilterModel {
    /// Nothing but its colour: an ideal filter with steep edges.
    Ideal(Filter),
    /// Its transmittance, 0 to 1.
    Measured {
        /// The colour in words.
        colour: Filter,
        /// Transmittance at each wavelength.
        transmittance: Spectrum,
    },
    /// What the reader found on the ghost page.
    Leak {
        /// The colour in words.
        colour: Filter,
        /// How strong a mark for the other eye alone, in its full ink on the plain ground, shows to this eye: a share
        /// of what this eye's own full mark shows, 0 (not at all) to 1 (as strong as its own).
        leak: f64,
    },
}

/// The filters as worn: what is before the left and before the right eye. Cheap to clone.
#[derive(Debug, Clone, PartialEq)]
pub struct Glasses {
    /// Before the left eye.
    pub left: FilterModel,
    /// Before the right eye.
    pub right: FilterModel,
}

/// Where ideal filters have their edges, nm: blue below the first, green between, red from the second on.
/// Source: design choice, the usual idealisation: red from 600 nm, cyan below 600 nm, blue below 500 nm.
pub const EDGES_NM: [f64; 2] = [500.0, 600.0];

/// How much of a band's mean must pass, against the strongest band, for a filter to be named after the band.
/// Source: design choice, half.
const NAMED_FROM: f64 = 0.5;

impl Filter {
    /// Every colour, in the order of the spec reference.
    pub const ALL: [Filter; 6] =
        [Filter::Red, Filter::Cyan, Filter::Green, Filter::Blue, Filter::Magenta, Filter::Amber];

    /// The filter in plain words, as pages and specs write it.
    pub const fn name(self) -> &'static str {
        match self {
            Filter::Red => "red",
            Filter::Cyan => "cyan",
            Filter::Green => "green",
            Filter::Blue => "blue",
            Filter::Magenta => "magenta",
            Filter::Amber => "amber",
        }
    }

    /// Which of red, green and blue light passes.
    /// Source: `[Hobyrne]`, what looks dark and light through a red filter; idealised to whole channels.
    pub const fn passes(self) -> [bool; 3] {
        match self {
            Filter::Red => [true, false, false],
            Filter::Cyan => [false, true, true],
            Filter::Green => [false, true, false],
            Filter::Blue => [false, false, true],
            Filter::Magenta => [true, false, true],
            Filter::Amber => [true, true, false],
        }
    }

    /// The ideal filter: all of the bands that it [`passes`](Filter::passes), nothing of the others.
    pub fn transmittance(self) -> Spectrum {
        let passes = self.passes();
        Spectrum::from_fn(|nm| if passes[band(nm)] { 1.0 } else { 0.0 })
    }

    /// The colour that a measured filter is best called by; `None` when it passes all bands alike, or none.
    pub fn of(transmittance: &Spectrum) -> Option<Filter> {
        let mut sums = [(0.0, 0.0); 3];
        for (nm, value) in transmittance.points().filter(|(nm, _)| (400.0..=700.0).contains(nm)) {
            let (sum, count) = &mut sums[band(nm)];
            *sum += value;
            *count += 1.0;
        }
        let means = sums.map(|(sum, count)| sum / count);
        let most = means.iter().copied().fold(0.0, f64::max);
        let passes = means.map(|mean| 0.0 < most && NAMED_FROM * most <= mean);
        Filter::ALL.into_iter().find(|filter| filter.passes() == passes)
    }
}

/// The channel whose band holds a wavelength: 0 red, 1 green, 2 blue.
pub(super) fn band(nm: f64) -> usize {
    let [blue_end, red_start] = EDGES_NM;
    if red_start <= nm {
        0
    } else if blue_end <= nm {
        1
    } else {
        2
    }
}

impl FilterModel {
    /// The colour of the filter.
    pub const fn colour(&self) -> Filter {
        match self {
            FilterModel::Ideal(colour) | FilterModel::Measured { colour, .. } | FilterModel::Leak { colour, .. } => {
                *colour
            }
        }
    }

    /// The colour in plain words, as pages and specs write it.
    pub const fn name(&self) -> &'static str {
        self.colour().name()
    }

    /// The transmittance that stands for this filter: the measured one, or the ideal one of its colour. What leaks
    /// through a filter known by its leak is no spectrum and comes on top of this.
    pub fn transmittance(&self) -> Spectrum {
        match self {
            FilterModel::Measured { transmittance, .. } => transmittance.clone(),
            FilterModel::Ideal(colour) | FilterModel::Leak { colour, .. } => colour.transmittance(),
        }
    }

    /// The measured leak, if that is how the filter is known.
    pub const fn leak(&self) -> Option<f64> {
        match self {
            FilterModel::Leak { leak, .. } => Some(*leak),
            FilterModel::Ideal(_) | FilterModel::Measured { .. } => None,
        }
    }
}

impl From<Filter> for FilterModel {
    fn from(colour: Filter) -> Self {
        FilterModel::Ideal(colour)
    }
}

impl Glasses {
    /// Glasses of two ideal filters.
    pub const fn ideal(left: Filter, right: Filter) -> Self {
        Self { left: FilterModel::Ideal(left), right: FilterModel::Ideal(right) }
    }

    /// The two colours in one order, however the glasses are worn: red before cyan.
    pub fn pair(&self) -> [Filter; 2] {
        let (left, right) = (self.left.colour(), self.right.colour());
        if right < left { [right, left] } else { [left, right] }
    }

    /// Whether the two filters differ. Glasses with the same filter twice separate nothing.
    pub fn separate(&self) -> bool {
        self.left != self.right
    }
}
