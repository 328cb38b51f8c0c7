//! A noun with its forms, so that a sentence can take the one that its language needs.

/// The name of a thing with its forms: those that the message of the noun has as attributes, such as `a`, `the`, `many`
/// and `gender`. Told as an argument `x`, the name itself is `$x` and each form is `$x-form`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Noun {
    /// One of it, without an article.
    pub one: String,
    /// Its other forms by name.
    pub(super) forms: Vec<(String, String)>,
}

impl Noun {
    /// A noun whose other forms are all this one: a word of an author's.
    pub fn bare(one: impl Into<String>) -> Self {
        let one = one.into();
        let forms = ["a", "the", "many"].map(|form| (form.to_owned(), one.clone())).into();
        Self { one, forms }
    }

    /// A noun with these forms by name.
    pub fn new<const N: usize>(one: impl Into<String>, forms: [(&str, String); N]) -> Self {
        Self { one: one.into(), forms: forms.map(|(form, words)| (form.to_owned(), words)).into() }
    }

    /// One of its forms; the name itself where it has none of that name.
    pub fn form(&self, name: &str) -> &str {
        self.forms.iter().find(|(form, _)| form == name).map_or(&self.one, |(_, words)| words)
    }
}
