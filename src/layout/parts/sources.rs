//! The published works that numbers and rules of the book rest on. Titles stay in their own language.

use crate::layout::compose::Composer;
use crate::layout::flow::{Opening, Section, pour};
use crate::layout::grid::Grid;
use crate::layout::{Book, Draft};

use super::text_width;

/// What they back, and the works. A work stands here only if a page of a book shows a number or follows a rule from it;
/// the facts that the code takes from it stand in `src/references.md`.
const WORKS: &[(&str, &[&str])] = &[
    (
        "sources-depth",
        &[
            "ISO 13666: Ophthalmic optics. Spectacle lenses. Vocabulary.",
            "I. P. Howard and B. J. Rogers: Perceiving in Depth. Oxford University Press, 2012.",
            "N. A. Dodgson: Variation and extrema of human interpupillary distance. Proceedings of SPIE 5291, 2004, p.\u{a0}36.",
            "A. Woods, T. Docherty and R. Koch: Image distortions in stereoscopic video systems. Proceedings of SPIE 1915, 1993.",
        ],
    ),
    (
        "sources-limits",
        &[
            "C. Schor, I. Wood and J. Ogawa: Binocular sensory fusion is limited by spatial resolution. Vision Research 24, 1984, \
             p.\u{a0}661.",
            "D. Qin, M. Takamatsu and Y. Nakashima: Disparity limit for binocular fusion in fovea. Optical Review 13, 2006, \
             p.\u{a0}34.",
            "P. Burt and B. Julesz: A disparity gradient limit for binocular fusion. Science 208, 1980, p.\u{a0}615.",
            "M. W. Morgan: The clinical aspects of accommodation and convergence. American Journal of Optometry 21, 1944.",
            "A. S. Percival: The Prescribing of Spectacles. Third edition, 1928.",
            "C. Sheard: Zones of ocular comfort. American Journal of Optometry 7, 1930.",
        ],
    ),
    (
        "sources-grades",
        &[
            "G. McCormack and J. Hogan, Optometry and Vision Science 96, 2019, p.\u{a0}850.",
            "G. McCormack and K. Kulowski: Image size and the range of clear and single binocular vision in 3D displays. \
             Optometry and Vision Science, 2021.",
            "W. Richards, Experimental Brain Research 10, 1970, p.\u{a0}380.",
        ],
    ),
    (
        "sources-dots",
        &[
            "B. Julesz: Binocular depth perception of computer-generated patterns. Bell System Technical Journal 39, 1960, \
             p.\u{a0}1125.",
            "L. K. Cormack, S. B. Stevenson and C. M. Schor: Interocular correlation, luminance contrast and cyclopean \
             processing. Vision Research 31, 1991, p.\u{a0}2195.",
        ],
    ),
    (
        "sources-ghost",
        &[
            "A. J. Woods: Crosstalk in stereoscopic displays: a review. Journal of Electronic Imaging 21(4), 2012, 040902.",
            "A. J. Woods, C. R. Harris, D. B. Leggo and T. M. Rourke: Characterizing and reducing crosstalk in printed anaglyph \
             stereoscopic 3D images. Optical Engineering 52(4), 2013, 043203.",
            "P. J. H. Seuntiëns, L. M. J. Meesters and W. A. IJsselsteijn: Perceptual attributes of crosstalk in 3D images. \
             Displays 26, 2005, p.\u{a0}177.",
        ],
    ),
    (
        "sources-safety",
        &[
            "G. Harding, A. J. Wilkins, G. Erba, G. L. Barkley and R. S. Fisher: Photic- and pattern-induced seizures. Epilepsia \
             46, 2005, p.\u{a0}1423.",
            "A. Wilkins et al.: A neurological basis for visual discomfort. Brain 107, 1984, p.\u{a0}989.",
        ],
    ),
    (
        "sources-page",
        &[
            "ISO/IEC 7810: Identification cards. Physical characteristics.",
            "W3C: Web Content Accessibility Guidelines 2.",
        ],
    ),
];

/// The sheets of the part.
pub(super) fn drafts(composer: &mut Composer<'_>, grid: &Grid, _: &Book<'_>) -> Vec<Draft> {
    let opening = Opening {
        id: "sources",
        title: composer.say("sources-title"),
        lead: composer.say("sources-lead"),
        description: composer.say("sources-description"),
    };
    let width = text_width(composer, grid);
    let mut sections = Vec::new();
    for (heading, works) in WORKS {
        let heading = composer.heading(&composer.say(heading), width);
        let works: Vec<String> = works.iter().map(|&work| work.to_owned()).collect();
        sections.push(Section::new(heading, composer.items(&works, width)));
    }
    let heading = composer.heading(&composer.say("sources-none"), width);
    let without = composer.say("sources-none-words");
    sections.push(Section::new(heading, [composer.paragraph(&without, width)]));
    pour(composer, grid, &opening, sections)
}
