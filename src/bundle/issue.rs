//! What one edition is made from: the set and its pages in the language of the edition, without what it leaves out.

use crate::diagnostics::{Diagnostic, codes};
use crate::spec::{Edition, SetSpec};

use super::prepare::{Book, SolvedPage};

/// A set and its pages in one more language than its own.
#[derive(Debug)]
pub struct Told {
    /// The set with the author's words in that language, which is its `language`.
    pub set: SetSpec,
    /// Its pages in book order, in that language.
    pub pages: Vec<SolvedPage>,
}

/// The set and the pages of one edition.
#[derive(Debug, Clone)]
pub struct Issue<'a> {
    /// The set in the language of the edition.
    pub set: &'a SetSpec,
    /// Its pages in book order.
    pub pages: Vec<&'a SolvedPage>,
    /// What a default decides, where that shapes depth.
    pub defaults: &'a [Diagnostic],
}

impl<'a> Book<'a> {
    /// What an edition is made from.
    pub fn issue(&self, edition: &Edition) -> Issue<'a> {
        let told = self.others.iter().find(|told| told.set.language == edition.language);
        let told = told.filter(|_| self.set.language != edition.language);
        let (set, pages) = told.map_or((self.set, self.pages), |told| (&told.set, &told.pages));
        let pages = pages.iter().filter(|page| edition.gated || !is_gated(page)).collect();
        Issue { set, pages, defaults: self.defaults }
    }
}

/// Whether a page needs the `[gate]` of its set.
pub(super) fn is_gated(page: &SolvedPage) -> bool {
    page.page.gated || page.page.balance.is_some()
}

/// The problems of editions without gated pages: where every page rides on what a professional set, or none is left.
pub(super) fn check(set: &SetSpec, pages: &[SolvedPage]) -> Vec<Diagnostic> {
    let known = &set.known;
    let key = if known.balance.is_some() {
        Some("balance")
    } else if !set.viewer.base.is_none() {
        Some(if set.viewer.base.horizontal.0 == 0.0 { "base_vertical" } else { "base" })
    } else if known.whole == Some(true) {
        Some("zone")
    } else {
        None
    };
    let empty = !pages.is_empty() && pages.iter().all(is_gated);
    let (message, label, help) = match key {
        Some(key) => (
            format!("`{key}` of `[viewer]` makes every page one"),
            "nothing can be left out",
            format!("leave out `gated = \"out\"`, or `{key}`"),
        ),
        None if empty => {
            ("the set has no others".to_owned(), "no page is left", "leave out `gated = \"out\"`".to_owned())
        }
        None => return Vec::new(),
    };
    let out = set.editions.iter().filter(|edition| !edition.gated);
    let problem = |edition: &Edition| {
        let message = format!("edition `{}` leaves the gated pages out, and {message}", edition.id);
        Diagnostic::error(codes::GATE, edition.place, message).with_label(label).with_help(help.clone())
    };
    out.map(problem).collect()
}
