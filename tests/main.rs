//! Integration tests in one binary: what the rooms do together, seen from outside.
#![allow(
    unreachable_pub,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::disallowed_methods,
    clippy::disallowed_types,
    clippy::float_cmp,
    clippy::cast_possible_truncation,
    reason = "tests may unwrap, write files of their own and compare with literals"
)]

mod answer_files;
mod answers;
mod architecture;
mod artwork;
mod back_matter;
mod bad_specs;
mod balance;
mod base;
mod bundle;
mod bundles;
mod check_pages;
mod choices;
mod claims;
mod cli;
mod colour;
mod compare;
mod demo_set;
mod dots;
mod edition_notes;
mod editions;
mod gate;
mod grades;
mod inks;
mod kinds;
mod language;
mod layout;
mod measure;
mod oracles;
mod orphans;
mod parts;
mod plans;
mod plot;
mod printed_words;
mod reading;
mod reading_order;

mod readers;
mod readme;
mod references;
mod render_png;
mod render_vector;
mod seen;
mod spec_reference;
mod steps;
mod translations;
mod turned;
