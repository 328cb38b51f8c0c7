//! Did-you-mean: the known word nearest to one that is not known.

/// Longest word that is compared; nobody means a longer one.
const LONGEST: usize = 32;

/// The known word nearest to `word`: one slip for every three letters, at least one.
pub fn nearest<'a>(word: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    if LONGEST < word.len() {
        return None;
    }
    let word = word.to_lowercase();
    known
        .into_iter()
        .map(|k| (strsim::osa_distance(&word, &k.to_lowercase()), k))
        .filter(|(slips, k)| *slips <= (k.len().min(word.len()) / 3).max(1) && *slips < k.len())
        .min_by_key(|(slips, _)| *slips)
        .map(|(_, k)| k)
}

#[cfg(test)]
mod tests {
    use super::nearest;

    #[test]
    fn near_words_are_found_and_far_ones_are_not() {
        let known = ["depth", "shape", "size", "at"];
        assert_eq!(nearest("dpeth", known), Some("depth"));
        assert_eq!(nearest("Shape", known), Some("shape"));
        assert_eq!(nearest("sizes", known), Some("size"));
        assert_eq!(nearest("colour", known), None);
        assert_eq!(nearest("", known), None);
        assert_eq!(nearest(&"depth".repeat(100_000), known), None);
    }
}
